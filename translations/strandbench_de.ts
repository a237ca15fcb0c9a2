<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
<context>
    <name>Air</name>
    <message>
        <source>Styrene</source>
        <translation>Styrol</translation>
    </message>
    <message>
        <source>Acetone</source>
        <translation>Aceton</translation>
    </message>
    <message>
        <source>Wax remover, as naphtha</source>
        <translation>Silikonentferner, als Naphtha</translation>
    </message>
    <message>
        <source>mean of 8 hours</source>
        <translation>Mittel über 8 Stunden</translation>
    </message>
    <message>
        <source>mean of 15 minutes</source>
        <translation>Mittel über 15 Minuten</translation>
    </message>
    <message>
        <source>at any time</source>
        <translation>zu jeder Zeit</translation>
    </message>
    <message>
        <source>mean of 5 minutes</source>
        <translation>Mittel über 5 Minuten</translation>
    </message>
    <message>
        <source>danger to life at once</source>
        <translation>sofort lebensgefährlich</translation>
    </message>
    <message>
        <source>under %1 ppm</source>
        <extracomment>so much of a vapour in the air; %1 is a figure</extracomment>
        <translation>unter %1 ppm</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>from so much to so much of a vapour in the air</extracomment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <extracomment>a published limit: its name, what it is a mean of, how much</extracomment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Reckoned %1: above it. Ventilate now.</source>
        <translation>Errechnet %1: darüber. Jetzt lüften.</translation>
    </message>
    <message>
        <source>Reckoned %1: may be above it. Ventilate now.</source>
        <translation>Errechnet %1: vielleicht darüber. Jetzt lüften.</translation>
    </message>
    <message>
        <source>Reckoned %1: up to %2 of it</source>
        <translation>Errechnet %1: bis zu %2 davon</translation>
    </message>
    <message>
        <source>Spray can: it can be lit at any temperature.</source>
        <translation>Spraydose: bei jeder Temperatur entzündbar.</translation>
    </message>
    <message>
        <source>Flash point below %1 by its class: take it that it can be lit now.</source>
        <translation>Flammpunkt nach Klasse unter %1: damit rechnen, dass es jetzt entzündbar ist.</translation>
    </message>
    <message>
        <source>Flash point %1; air not read yet.</source>
        <translation>Flammpunkt %1; Luft noch nicht abgelesen.</translation>
    </message>
    <message>
        <source>Flash point %1; the air is %2 below it, a warm spot may not be.</source>
        <translation>Flammpunkt %1; die Luft liegt %2 darunter, eine warme Stelle vielleicht nicht.</translation>
    </message>
    <message>
        <source>Flash point %1: it can be lit now.</source>
        <translation>Flammpunkt %1: jetzt entzündbar.</translation>
    </message>
</context>
<context>
    <name>AirScreen</name>
    <message>
        <source>What about the air?</source>
        <translation>Was ist mit der Luft?</translation>
    </message>
    <message>
        <source>Dew</source>
        <translation>Tau</translation>
    </message>
    <message>
        <source>how far the panel was above its dew point, day by day</source>
        <translation>wie weit das Teil über dem Taupunkt lag, Tag für Tag</translation>
    </message>
    <message>
        <source>Vapour</source>
        <translation>Dämpfe</translation>
    </message>
    <message>
        <source>styrene and solvents in the room, beside published limits</source>
        <translation>Styrol und Lösemittel im Raum, neben veröffentlichten Grenzwerten</translation>
    </message>
    <message>
        <source>Fire</source>
        <translation>Feuer</translation>
    </message>
    <message>
        <source>flash points, and what can light them</source>
        <translation>Flammpunkte, und was zünden kann</translation>
    </message>
</context>
<context>
    <name>AnswerBar</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Stop and ask</source>
        <translation>Halt, fragen</translation>
    </message>
</context>
<context>
    <name>AnswersScreen</name>
    <message>
        <source>Which answer was wrong?</source>
        <translation>Welche Antwort war falsch?</translation>
    </message>
    <message>
        <source>These were the answers</source>
        <translation>Das waren die Antworten</translation>
    </message>
    <message>
        <source>All right: go on</source>
        <translation>Alles richtig: weiter</translation>
    </message>
    <message>
        <source>More answers</source>
        <translation>Mehr Antworten</translation>
    </message>
    <message>
        <source>Finishing filler is on: the answers stand.</source>
        <translation>Feinspachtel ist drauf: die Antworten gelten.</translation>
    </message>
    <message>
        <source>If one was wrong, stop and ask.</source>
        <translation>War eine falsch: anhalten und fragen.</translation>
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
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Change an answer</source>
        <translation>Antwort ändern</translation>
    </message>
    <message>
        <source>The mix on this panel goes on curing and its clock runs on.</source>
        <translation>Die Mischung auf diesem Teil härtet weiter, ihre Uhr läuft.</translation>
    </message>
    <message>
        <source>Nothing is lost: parked, it waits on the rail at this very step.</source>
        <translation>Nichts geht verloren: geparkt wartet es an genau diesem Schritt.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>Stop here and ask</source>
        <translation>Halt, hier fragen</translation>
    </message>
    <message>
        <source>Ask the supervisor before you go on.</source>
        <translation>Vor dem Weitermachen den Meister fragen.</translation>
    </message>
    <message>
        <source>The safety data sheet and the maker’s repair manual come first.</source>
        <translation>Sicherheitsdatenblatt und Herstelleranleitung gehen vor.</translation>
    </message>
    <message>
        <source>Answered: go on</source>
        <translation>Beantwortet: weiter</translation>
    </message>
    <message>
        <source>Park it</source>
        <translation>Parken</translation>
    </message>
    <message>
        <source>Why is it parked?</source>
        <translation>Warum wird es geparkt?</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Park it: where, or with whom?</source>
        <translation>Parken: wo oder bei wem?</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Geparkt</translation>
    </message>
    <message>
        <source>Parked: %1</source>
        <translation>Geparkt: %1</translation>
    </message>
    <message>
        <source>It was parked to ask.</source>
        <translation>Geparkt, um zu fragen.</translation>
    </message>
    <message>
        <source>Go on only when the answer is there.</source>
        <translation>Erst weitermachen, wenn die Antwort da ist.</translation>
    </message>
    <message>
        <source>Taken up again, it goes on at the very step where it was.</source>
        <translation>Wieder aufgenommen geht es an genau diesem Schritt weiter.</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>When what was wrong has been put right, assess it again from the first question.</source>
        <translation>Ist behoben, was falsch war, von der ersten Frage neu beurteilen.</translation>
    </message>
    <message>
        <source>Leave it parked</source>
        <translation>Geparkt lassen</translation>
    </message>
    <message>
        <source>Assess again</source>
        <translation>Neu beurteilen</translation>
    </message>
</context>
<context>
    <name>AssessScreen</name>
    <message>
        <source>Keep this answer</source>
        <translation>Antwort behalten</translation>
    </message>
    <message>
        <source>Show me how to tell</source>
        <translation>Woran erkenne ich es?</translation>
    </message>
    <message>
        <source>More answers</source>
        <translation>Mehr Antworten</translation>
    </message>
    <message>
        <source>Back to the question</source>
        <translation>Zurück zur Frage</translation>
    </message>
    <message>
        <source>What did you go by?</source>
        <translation>Woran wurde es erkannt?</translation>
    </message>
</context>
<context>
    <name>Assumptions</name>
    <message>
        <source>Kneading, until spreading begins</source>
        <translation>Kneten, bis das Auftragen beginnt</translation>
    </message>
    <message>
        <source>Spreading rate</source>
        <translation>Auftragen, Tempo</translation>
    </message>
    <message>
        <source>Clear the edges from, share of gel time</source>
        <translation>Ränder säubern ab, Anteil der Gelzeit</translation>
    </message>
    <message>
        <source>Laying puddle and bead</source>
        <translation>Kreis und Strang legen</translation>
    </message>
    <message>
        <source>Sanding one lift</source>
        <translation>Eine Lage schleifen</translation>
    </message>
    <message>
        <source>Turning the panel</source>
        <translation>Teil wenden</translation>
    </message>
    <message>
        <source>Cure before primer, at 20 °C</source>
        <translation>Härten vor Primer, bei 20 °C</translation>
    </message>
    <message>
        <source>Filler at the start, warmer than air by</source>
        <translation>Spachtel am Anfang wärmer als Luft um</translation>
    </message>
    <message>
        <source>Mixing board, side</source>
        <translation>Mischbrett, Seite</translation>
    </message>
    <message>
        <source>Mixing board, thickness</source>
        <translation>Mischbrett, Dicke</translation>
    </message>
    <message>
        <source>Mixing board, density</source>
        <translation>Mischbrett, Dichte</translation>
    </message>
    <message>
        <source>Mixing board, specific heat</source>
        <translation>Mischbrett, spezifische Wärme</translation>
    </message>
    <message>
        <source>Mixing board, conductivity</source>
        <translation>Mischbrett, Wärmeleitung</translation>
    </message>
    <message>
        <source>Left on the board, share</source>
        <translation>Rest auf dem Brett, Anteil</translation>
    </message>
    <message>
        <source>Left on the board, each batch</source>
        <translation>Rest auf dem Brett je Ansatz</translation>
    </message>
    <message>
        <source>Bridged first, share of a hole’s height</source>
        <translation>Zuerst überbrückt, Anteil der Lochhöhe</translation>
    </message>
    <message>
        <source>Built proud of the surface</source>
        <translation>Überhöhung über der Fläche</translation>
    </message>
    <message>
        <source>Fibre filler left low</source>
        <translation>Faserspachtel tiefer um</translation>
    </message>
    <message>
        <source>Skim beyond the opening</source>
        <translation>Feinspachtel über den Rand</translation>
    </message>
    <message>
        <source>Backing laps by</source>
        <translation>Hinterlage, Überstand</translation>
    </message>
    <message>
        <source>Backing, thickness</source>
        <translation>Hinterlage, Dicke</translation>
    </message>
    <message>
        <source>Panel below the cavity counts from</source>
        <translation>Wand unter der Mulde zählt ab</translation>
    </message>
    <message>
        <source>Hole filled without backing, up to</source>
        <translation>Loch ohne Hinterlage gefüllt, bis</translation>
    </message>
    <message>
        <source>The same without reach from behind</source>
        <translation>Dasselbe ohne Zugang von hinten</translation>
    </message>
    <message>
        <source>Greatest hole filled</source>
        <translation>Größtes gefülltes Loch</translation>
    </message>
    <message>
        <source>Greatest hole for dense short strand</source>
        <translation>Größtes Loch für dichte Kurzfaser</translation>
    </message>
    <message>
        <source>Deepest dent filled in metal</source>
        <translation>Tiefste gespachtelte Delle, Metall</translation>
    </message>
    <message>
        <source>Dent to aim at in metal</source>
        <translation>Ziel beim Ausbeulen, Metall</translation>
    </message>
    <message>
        <source>Panel, coldest</source>
        <translation>Teil, mindestens</translation>
    </message>
    <message>
        <source>Panel, caution below</source>
        <translation>Teil, Vorsicht unter</translation>
    </message>
    <message>
        <source>Panel, hottest</source>
        <translation>Teil, höchstens</translation>
    </message>
    <message>
        <source>Air, coldest</source>
        <translation>Luft, mindestens</translation>
    </message>
    <message>
        <source>Air, hottest</source>
        <translation>Luft, höchstens</translation>
    </message>
    <message>
        <source>Panel above dew point by</source>
        <translation>Teil über Taupunkt um</translation>
    </message>
    <message>
        <source>Peak on laminate and SMC</source>
        <translation>Spitze auf Laminat und SMC</translation>
    </message>
    <message>
        <source>Peak on a bond seam</source>
        <translation>Spitze auf Klebenaht</translation>
    </message>
    <message>
        <source>Heat to the air in front</source>
        <translation>Wärme an die Luft vorn</translation>
    </message>
    <message>
        <source>Heat to the air behind</source>
        <translation>Wärme an die Luft hinten</translation>
    </message>
    <message>
        <source>Laminate and SMC, density</source>
        <translation>Laminat und SMC, Dichte</translation>
    </message>
    <message>
        <source>Laminate and SMC, specific heat</source>
        <translation>Laminat und SMC, spezif. Wärme</translation>
    </message>
    <message>
        <source>Laminate and SMC, conductivity</source>
        <translation>Laminat und SMC, Wärmeleitung</translation>
    </message>
    <message>
        <source>Steel, density</source>
        <translation>Stahl, Dichte</translation>
    </message>
    <message>
        <source>Steel, specific heat</source>
        <translation>Stahl, spezifische Wärme</translation>
    </message>
    <message>
        <source>Steel, conductivity</source>
        <translation>Stahl, Wärmeleitung</translation>
    </message>
    <message>
        <source>Aluminium, density</source>
        <translation>Aluminium, Dichte</translation>
    </message>
    <message>
        <source>Aluminium, specific heat</source>
        <translation>Aluminium, spezif. Wärme</translation>
    </message>
    <message>
        <source>Aluminium, conductivity</source>
        <translation>Aluminium, Wärmeleitung</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>a range: &quot;10 to 180 s&quot;</extracomment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Air of the room</source>
        <translation>Raumluft</translation>
    </message>
    <message>
        <source>Air of the room, changes an hour</source>
        <translation>Raumluft, Wechsel je Stunde</translation>
    </message>
    <message>
        <source>Solvent, each wiping down</source>
        <translation>Lösemittel je Abwischen</translation>
    </message>
    <message>
        <source>Solvent, gone after</source>
        <translation>Lösemittel, verflogen nach</translation>
    </message>
</context>
<context>
    <name>BeadScreen</name>
    <message>
        <source>Key in the hardener weighed</source>
        <translation>Gewogenen Härter eintippen</translation>
    </message>
    <message>
        <source>Key in the length of the bead laid</source>
        <translation>Länge des gelegten Strangs eintippen</translation>
    </message>
    <message>
        <source>Hardener %1 of filler.</source>
        <translation>Härter %1 vom Spachtel.</translation>
    </message>
    <message>
        <source>Within the sheet’s %1 to %2.</source>
        <translation>Innerhalb des Blatts: %1 bis %2.</translation>
    </message>
    <message>
        <source>Little: it cures slowly and may stay soft at the edges.</source>
        <translation>Wenig: härtet langsam, kann am Rand weich bleiben.</translation>
    </message>
    <message>
        <source>Much: it gels early, and may bleed and pinhole.</source>
        <translation>Viel: geliert früh, kann ausbluten und Poren bilden.</translation>
    </message>
    <message>
        <source>Outside %1 to %2: do not use this mix. Spread it thin to cure, mix anew.</source>
        <translation>Außerhalb %1 bis %2: nicht verwenden. Dünn ausstreichen, härten lassen, neu mischen.</translation>
    </message>
    <message>
        <source>How much hardener was weighed?</source>
        <translation>Wie viel Härter wurde gewogen?</translation>
    </message>
    <message>
        <source>How long is the bead laid?</source>
        <translation>Wie lang ist der gelegte Strang?</translation>
    </message>
    <message>
        <source>Hardener in: start</source>
        <translation>Härter drin: Start</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>gewogen</translation>
    </message>
    <message>
        <source>laid</source>
        <translation>gelegt</translation>
    </message>
</context>
<context>
    <name>BeadTrial</name>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Key in the length of the bead</source>
        <translation>Länge des Strangs eintippen</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Key in the mass of the bead</source>
        <translation>Masse des Strangs eintippen</translation>
    </message>
    <message>
        <source>Lay it on card or foil, straight and at the usual push. Tare, then weigh.</source>
        <translation>Auf Karton oder Folie legen, gerade und mit üblichem Druck. Tarieren, dann wiegen.</translation>
    </message>
    <message>
        <source>%1 cannot be: look at length and mass again.</source>
        <translation>%1 kann nicht sein: Länge und Masse neu prüfen.</translation>
    </message>
    <message>
        <source>This bead: %1</source>
        <translation>Dieser Strang: %1</translation>
    </message>
    <message>
        <source>Hardener %1</source>
        <translation>Härter %1</translation>
    </message>
    <message>
        <source>bead %1</source>
        <translation>Strang %1</translation>
    </message>
    <message>
        <source>Lay a straight bead, measure and weigh it</source>
        <translation>Geraden Strang legen, messen und wiegen</translation>
    </message>
    <message>
        <source>Take this bead</source>
        <translation>Strang übernehmen</translation>
    </message>
    <message>
        <source>Bead by the calibration of %1: %2</source>
        <extracomment>%1 is a day, %2 a mass per length</extracomment>
        <translation>Strang nach Kalibrierung vom %1: %2</translation>
    </message>
    <message>
        <source>Bead by the sheet, not calibrated for this lot: %1</source>
        <translation>Strang nach Blatt, für diese Charge nicht kalibriert: %1</translation>
    </message>
    <message>
        <source>Bead by the sheet: %1</source>
        <translation>Strang nach Blatt: %1</translation>
    </message>
</context>
<context>
    <name>CalibrateScreen</name>
    <message>
        <source>Outline of a card, 85.6 by 54 mm</source>
        <translation>Umriss einer Karte, 85,6 mal 54 mm</translation>
    </message>
    <message>
        <source>Bank, identity or driving card: all have this width</source>
        <translation>Bankkarte, Ausweis, Führerschein: alle sind so breit</translation>
    </message>
    <message>
        <source>Make the outline as wide as a card</source>
        <translation>Den Umriss so breit wie eine Karte machen</translation>
    </message>
    <message>
        <source>The card covers it</source>
        <translation>Karte deckt ihn ab</translation>
    </message>
    <message>
        <source>wider</source>
        <translation>breiter</translation>
    </message>
    <message>
        <source>narrower</source>
        <translation>schmaler</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Safety data sheets first.</source>
        <translation>Erst die Sicherheitsdatenblätter.</translation>
    </message>
    <message>
        <source>Old paint dust.</source>
        <translation>Staub von Altlack.</translation>
    </message>
    <message>
        <source>Keep metal dusts apart.</source>
        <translation>Metallstäube getrennt halten.</translation>
    </message>
    <message>
        <source>Solvent burns.</source>
        <translation>Lösemittel brennt.</translation>
    </message>
    <message>
        <source>Rags into the lidded metal can.</source>
        <translation>Lappen in den Metallbehälter mit Deckel.</translation>
    </message>
    <message>
        <source>Acetone goes through thin gloves.</source>
        <translation>Aceton geht durch dünne Handschuhe.</translation>
    </message>
    <message>
        <source>No lamp, no grinder, no spark.</source>
        <translation>Kein Strahler, Schleifer, Funke.</translation>
    </message>
    <message>
        <source>Rotating tool.</source>
        <translation>Drehendes Werkzeug.</translation>
    </message>
    <message>
        <source>Goggles, dust mask.</source>
        <translation>Schutzbrille, Staubmaske.</translation>
    </message>
    <message>
        <source>Extraction on, dust mask.</source>
        <translation>Absaugung an, Staubmaske.</translation>
    </message>
    <message>
        <source>Hot metal.</source>
        <translation>Heißes Metall.</translation>
    </message>
    <message>
        <source>No heat on wet solvent.</source>
        <translation>Nasses Lösemittel nie wärmen.</translation>
    </message>
    <message>
        <source>Lay-up resin: its own catalyst.</source>
        <translation>Laminierharz: eigener Härter.</translation>
    </message>
    <message>
        <source>Styrene vapour.</source>
        <translation>Styroldampf.</translation>
    </message>
    <message>
        <source>Never at skin.</source>
        <translation>Nie auf die Haut.</translation>
    </message>
    <message>
        <source>Lamp before filling only.</source>
        <translation>Strahler nur vor dem Spachteln.</translation>
    </message>
    <message>
        <source>Fill within the hour.</source>
        <translation>Binnen 1 h spachteln.</translation>
    </message>
    <message>
        <source>Nothing goes back into the tub.</source>
        <translation>Nichts zurück in die Dose.</translation>
    </message>
    <message>
        <source>What is left over gets hot.</source>
        <translation>Reste werden heiß.</translation>
    </message>
    <message>
        <source>The vehicle maker’s repair manual and local codes come before this program.</source>
        <translation>Reparaturanleitung des Herstellers und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>It may hold lead or chromate: test it, and extraction on before sanding.</source>
        <translation>Kann Blei oder Chromat enthalten: prüfen, und Absaugung an vor dem Schleifen.</translation>
    </message>
    <message>
        <source>Aluminium and steel dust together can burn fiercely: own extractors.</source>
        <translation>Alu- und Stahlstaub zusammen können heftig brennen: getrennt absaugen.</translation>
    </message>
    <message>
        <source>Fresh air; no flame, no hot lamp, no grinding near it.</source>
        <translation>Frischluft; keine Flamme, kein heißer Strahler, kein Schleifen daneben.</translation>
    </message>
    <message>
        <source>Solvent rags can catch fire; never into the bin.</source>
        <translation>Lösemittellappen können sich entzünden; nie in den Müll.</translation>
    </message>
    <message>
        <source>Within minutes through thin nitrile: change them at once when wet.</source>
        <translation>In Minuten durch dünnes Nitril: nass sofort wechseln.</translation>
    </message>
    <message>
        <source>Wait until the vapour is gone, in the hollows too.</source>
        <translation>Warten, bis die Dämpfe weg sind, auch in Hohlräumen.</translation>
    </message>
    <message>
        <source>Goggles, no loose sleeves; let it stop before you put it down.</source>
        <translation>Brille, keine losen Ärmel; vor dem Ablegen auslaufen lassen.</translation>
    </message>
    <message>
        <source>Glass dust: extraction on first, sleeves closed.</source>
        <translation>Glasstaub: erst Absaugung an, Ärmel schließen.</translation>
    </message>
    <message>
        <source>Before the first stroke, not after.</source>
        <translation>Vor dem ersten Schliff, nicht danach.</translation>
    </message>
    <message>
        <source>Sparks fly: nothing that burns within reach, behind the panel too.</source>
        <translation>Funken fliegen: nichts Brennbares in der Nähe, auch dahinter nicht.</translation>
    </message>
    <message>
        <source>A lamp only after the solvent has flashed off.</source>
        <translation>Strahler erst, wenn das Lösemittel abgelüftet ist.</translation>
    </message>
    <message>
        <source>Never cream hardener in it; never peroxide onto an accelerator.</source>
        <translation>Nie Härterpaste hinein; nie Peroxid auf Beschleuniger.</translation>
    </message>
    <message>
        <source>It burns, and harms hearing and the unborn child: extraction, and the mask its sheet names.</source>
        <translation>Brennt, schadet Gehör und Ungeborenem: Absaugung und Maske laut Datenblatt.</translation>
    </message>
    <message>
        <source>Goggles and ear protection; guard others from chips.</source>
        <translation>Brille und Gehörschutz; andere vor Splittern schützen.</translation>
    </message>
    <message>
        <source>A lamp warms the panel before filling, never wet filler.</source>
        <translation>Der Strahler wärmt das Teil vor dem Spachteln, nie nassen Spachtel.</translation>
    </message>
    <message>
        <source>Bare metal rusts or tarnishes: after an hour, abrade again.</source>
        <translation>Blankes Metall rostet oder läuft an: nach einer Stunde neu schleifen.</translation>
    </message>
    <message>
        <source>It burns the eye and makes skin allergic; its safety data sheet says more.</source>
        <translation>Verätzt das Auge, macht Haut allergisch; mehr im Sicherheitsdatenblatt.</translation>
    </message>
    <message>
        <source>A trace of hardener sets the whole tub; close both.</source>
        <translation>Eine Spur Härter härtet die ganze Dose; beide schließen.</translation>
    </message>
    <message>
        <source>Spread it thin on metal or put it under water, never into the bin.</source>
        <translation>Dünn auf Metall streichen oder unter Wasser geben, nie in den Müll.</translation>
    </message>
    <message>
        <source>Peroxide: goggles, gloves.</source>
        <translation>Peroxid: Brille, Handschuhe.</translation>
    </message>
    <message>
        <source>In the eye: rinse, doctor.</source>
        <translation>Im Auge: spülen, Arzt.</translation>
    </message>
    <message>
        <source>At once and long, lids held open; its data sheet goes along.</source>
        <translation>Sofort und lange, Lider offen halten; Datenblatt mitnehmen.</translation>
    </message>
</context>
<context>
    <name>Consequences</name>
    <message>
        <source>It would be filled where it must stop: %1.</source>
        <translation>Es würde trotz Halt gespachtelt: %1.</translation>
    </message>
    <message>
        <source>It would stop for nothing: %1.</source>
        <translation>Es würde grundlos angehalten: %1.</translation>
    </message>
    <message>
        <source>It would be put right for the wrong reason: %1, not: %2.</source>
        <translation>Es würde aus falschem Grund behoben: %1, nicht: %2.</translation>
    </message>
    <message>
        <source>Another filler would go in: %1, not %2.</source>
        <translation>Ein anderer Spachtel käme hinein: %1, nicht %2.</translation>
    </message>
    <message>
        <source>%1 would be mixed, not %2.</source>
        <translation>%1 würden angemischt, nicht %2.</translation>
    </message>
    <message>
        <source>%1 of crack would stay, undrilled, and run on.</source>
        <translation>%1 Riss blieben ungebohrt und liefen weiter.</translation>
    </message>
    <message>
        <source>The plan would be the same; the record would be wrong.</source>
        <translation>Der Plan wäre gleich; die Akte wäre falsch.</translation>
    </message>
    <message>
        <source>It would lack: %1.</source>
        <translation>Es würde fehlen: %1.</translation>
    </message>
    <message>
        <source>Work for nothing: %1.</source>
        <translation>Umsonst gearbeitet: %1.</translation>
    </message>
    <message>
        <source>It spoils the bond or the panel: %1.</source>
        <translation>Das verdirbt Haftung oder Teil: %1.</translation>
    </message>
    <message>
        <source>%1: that comes before: %2.</source>
        <translation>%1: das kommt vor: %2.</translation>
    </message>
    <message>
        <source>The panel is only %1 above dew point, not %2: unseen dew, and no adhesion.</source>
        <translation>Das Teil ist nur %1 über Taupunkt, nicht %2: unsichtbarer Tau und keine Haftung.</translation>
    </message>
    <message>
        <source>Filler would hide it: %1.</source>
        <translation>Spachtel würde es verdecken: %1.</translation>
    </message>
    <message>
        <source>A panel that could be filled would wait.</source>
        <translation>Ein spachtelbares Teil würde warten.</translation>
    </message>
    <message>
        <source>It would still stand in the way: %1.</source>
        <translation>Es stünde noch im Weg: %1.</translation>
    </message>
    <message>
        <source>That does not put it right: %1.</source>
        <translation>Das behebt es nicht: %1.</translation>
    </message>
    <message>
        <source>%1 does not belong here: %2.</source>
        <translation>%1 gehört nicht hierher: %2.</translation>
    </message>
    <message>
        <source>%1 in one go reaches %2, above %3: it shrinks as it cools, and maps through.</source>
        <translation>%1 auf einmal erreichen %2, mehr als %3: es schrumpft beim Abkühlen und zeichnet sich ab.</translation>
    </message>
    <message>
        <source>%1 in one go; its sheet ends at %2: it shrinks and maps.</source>
        <translation>%1 auf einmal; sein Blatt endet bei %2: es schrumpft, zeichnet sich ab.</translation>
    </message>
    <message>
        <source>Nothing was laid: the damage is as it was.</source>
        <translation>Nichts wurde gelegt: der Schaden ist wie zuvor.</translation>
    </message>
    <message>
        <source>The face stays %1 too low.</source>
        <translation>Die Seite bleibt %1 zu tief.</translation>
    </message>
    <message>
        <source>The face stands %1 too high, all of it to sand off.</source>
        <translation>Die Seite steht %1 zu hoch, alles abzuschleifen.</translation>
    </message>
    <message>
        <source>%1 are missing: the next batch meets a cold joint.</source>
        <translation>%1 fehlen: der nächste Ansatz trifft auf eine kalte Fuge.</translation>
    </message>
    <message>
        <source>%1 are left over, and wasted.</source>
        <translation>%1 bleiben übrig, vergeudet.</translation>
    </message>
    <message>
        <source>The board gels after %1: %2 are wasted on it.</source>
        <translation>Auf dem Brett geliert es nach %1: %2 sind verloren.</translation>
    </message>
    <message>
        <source>It sands after %1, not after %2.</source>
        <translation>Schleifbar nach %1, nicht nach %2.</translation>
    </message>
    <message>
        <source>It gels after %1, not after %2.</source>
        <translation>Es geliert nach %1, nicht nach %2.</translation>
    </message>
    <message>
        <source>With %1 hardener it never cures hard enough to sand.</source>
        <translation>Mit %1 Härter wird es nie hart genug zum Schleifen.</translation>
    </message>
    <message>
        <source>%1 hardener: no sheet and no model goes there.</source>
        <translation>%1 Härter: so weit reicht kein Blatt und kein Modell.</translation>
    </message>
    <message>
        <source>The edges gel at %1: the repair grows, and must be ground back.</source>
        <translation>Die Ränder gelieren bei %1: die Stelle wächst, sie ist zurückzuschleifen.</translation>
    </message>
    <message>
        <source>Before %1 it still flows: the edges smear again.</source>
        <translation>Vor %1 fließt es noch: die Ränder verschmieren wieder.</translation>
    </message>
    <message>
        <source>Only %1 cured at the face, not %2: it drags and clogs until %3.</source>
        <translation>Oberfläche nur zu %1 gehärtet, nicht %2: es zieht und setzt zu bis %3.</translation>
    </message>
    <message>
        <source>After %1 it is hard as stone: the paper hardly bites.</source>
        <translation>Nach %1 ist es steinhart: das Papier greift kaum.</translation>
    </message>
    <message>
        <source>It was not sanded: nothing holds on it.</source>
        <translation>Es wurde nicht geschliffen: nichts hält darauf.</translation>
    </message>
    <message>
        <source>The other face stays open: water gets in, and it breaks out.</source>
        <translation>Die andere Seite bleibt offen: Wasser dringt ein, es bricht aus.</translation>
    </message>
    <message>
        <source>There is nothing to fill on the other face.</source>
        <translation>Auf der anderen Seite ist nichts zu spachteln.</translation>
    </message>
    <message>
        <source>A coat of %1 sinks and pinholes; at most %2.</source>
        <translation>%1 je Schicht fallen ein und bilden Poren; höchstens %2.</translation>
    </message>
    <message>
        <source>%1 of finishing filler in all; it cracks beyond %2.</source>
        <translation>%1 Feinspachtel im Ganzen; über %2 reißt er.</translation>
    </message>
    <message>
        <source>It stays %1 below the contour.</source>
        <translation>Es bleibt %1 unter der Kontur.</translation>
    </message>
    <message>
        <source>It was not finished: strands show through primer.</source>
        <translation>Ohne Finish: die Fasern zeichnen sich im Primer ab.</translation>
    </message>
    <message>
        <source>It goes to paint unseen: %1.</source>
        <translation>Geht ungeprüft zum Lack: %1.</translation>
    </message>
    <message>
        <source>Primed %1 too soon: what cures below shrinks, and maps.</source>
        <translation>%1 zu früh grundiert: es härtet darunter, schrumpft, zeichnet sich ab.</translation>
    </message>
    <message>
        <source>By its product sheet: below %2 the film stays soft.</source>
        <extracomment>%1 is the share of hardener mixed, %2 the least</extracomment>
        <translation>Laut seinem Blatt: unter %2 bleibt der Film weich.</translation>
    </message>
    <message>
        <source>By its product sheet: above %2 it bleeds and pinholes.</source>
        <extracomment>%1 is the share of hardener mixed, %2 the most</extracomment>
        <translation>Laut seinem Blatt: über %2 blutet er aus, bildet Poren.</translation>
    </message>
    <message>
        <source>It is damp: the filler does not hold on water.</source>
        <translation>Es ist feucht: Spachtel hält nicht auf Wasser.</translation>
    </message>
    <message>
        <source>At %1 the panel is colder than %2: it does not hold, nor cure through.</source>
        <extracomment>%1 is the panel&apos;s temperature, %2 the least</extracomment>
        <translation>Mit %1 ist das Teil kälter als %2: Es hält nicht und härtet nicht durch.</translation>
    </message>
</context>
<context>
    <name>Deviations</name>
    <message>
        <source>panel %1 above dew point; at least %2</source>
        <translation>Teil %1 über Taupunkt; mindestens %2</translation>
    </message>
    <message>
        <source>panel at %1; at least %2</source>
        <translation>Teil bei %1; mindestens %2</translation>
    </message>
    <message>
        <source>panel at %1; at most %2</source>
        <translation>Teil bei %1; höchstens %2</translation>
    </message>
    <message>
        <source>air at %1; at least %2</source>
        <translation>Luft bei %1; mindestens %2</translation>
    </message>
    <message>
        <source>air at %1; at most %2</source>
        <translation>Luft bei %1; höchstens %2</translation>
    </message>
    <message>
        <source>no reading before the hardener went in</source>
        <translation>keine Ablesung, bevor der Härter hineinkam</translation>
    </message>
    <message>
        <source>last reading %1 old; at most %2</source>
        <translation>letzte Ablesung %1 alt; höchstens %2</translation>
    </message>
    <message>
        <source>bare metal filled after %1; at most %2</source>
        <translation>blankes Metall nach %1 gespachtelt; höchstens %2</translation>
    </message>
    <message>
        <source>sands after %1; predicted %2</source>
        <translation>schleifbar nach %1; erwartet %2</translation>
    </message>
    <message>
        <source>edges clear after %1; gel predicted at %2</source>
        <translation>Ränder sauber nach %1; Gel erwartet bei %2</translation>
    </message>
    <message>
        <source>edges clear after %1; gel seen at %2</source>
        <translation>Ränder sauber nach %1; Gel gesehen bei %2</translation>
    </message>
    <message>
        <source>hardener %1; at least %2</source>
        <translation>Härter %1; mindestens %2</translation>
    </message>
    <message>
        <source>hardener %1; at most %2</source>
        <translation>Härter %1; höchstens %2</translation>
    </message>
    <message>
        <source>lot of the filler not told</source>
        <translation>Charge des Spachtels nicht genannt</translation>
    </message>
    <message>
        <source>lot of the hardener not told</source>
        <translation>Charge des Härters nicht genannt</translation>
    </message>
    <message>
        <source>mixed by a demo sheet: %1</source>
        <extracomment>%1 is the sheet&apos;s id</extracomment>
        <translation>nach einem Demoblatt gemischt: %1</translation>
    </message>
    <message>
        <source>changed after the plan: %1</source>
        <extracomment>%1 is a question: &quot;dry or damp&quot;</extracomment>
        <translation>nach dem Plan geändert: %1</translation>
    </message>
    <message>
        <source>planned again: plan %1</source>
        <extracomment>%1 is the number of the plan</extracomment>
        <translation>neu geplant: Plan %1</translation>
    </message>
    <message>
        <source>parked: %1</source>
        <extracomment>%1 is where: &quot;to the supervisor&quot;</extracomment>
        <translation>geparkt: %1</translation>
    </message>
    <message>
        <source>no photo: %1</source>
        <extracomment>%1 is a moment: &quot;as found&quot;</extracomment>
        <translation>kein Foto: %1</translation>
    </message>
    <message>
        <source>acts without a name: %1</source>
        <translation>Schritte ohne Namen: %1</translation>
    </message>
    <message>
        <source>bench started again while a mix ran; %1 between two acts</source>
        <translation>Platz bei laufender Mischung neu gestartet; %1 zwischen zwei Schritten</translation>
    </message>
    <message>
        <source>clock set forward by %1 while a mix ran</source>
        <translation>Uhr um %1 vorgestellt bei laufender Mischung</translation>
    </message>
    <message>
        <source>clock set back by %1 while a mix ran</source>
        <translation>Uhr um %1 zurückgestellt bei laufender Mischung</translation>
    </message>
    <message>
        <source>no deviations</source>
        <translation>keine Abweichungen</translation>
    </message>
    <message numerus="yes">
        <source>%n deviation(s)</source>
        <translation>
            <numerusform>%n Abweichung</numerusform>
            <numerusform>%n Abweichungen</numerusform>
        </translation>
    </message>
    <message>
        <source>overridden: %1. Reason: %2</source>
        <extracomment>%1 is a stop, %2 a reason: &quot;Damp&quot;, &quot;Proved by another test&quot;</extracomment>
        <translation>übergangen: %1. Grund: %2</translation>
    </message>
    <message>
        <source>laid %1 thick by its mass; at most %2 in one go</source>
        <translation>nach der Masse %1 dick aufgetragen; höchstens %2 auf einmal</translation>
    </message>
    <message>
        <source>steps told as done almost at once: %1, in %2; planned %3</source>
        <extracomment>%1 is a number of steps, %2 and %3 are times</extracomment>
        <translation>Schritte fast auf einmal als getan gemeldet: %1, in %2; geplant %3</translation>
    </message>
    <message>
        <source>wait cut short, %1: %2; it needs %3</source>
        <extracomment>%1 is a step</extracomment>
        <translation>Wartezeit verkürzt, %1: %2; nötig sind %3</translation>
    </message>
</context>
<context>
    <name>Events</name>
    <message>
        <source>air %1, panel %2, humidity %3</source>
        <translation>Luft %1, Teil %2, Feuchte %3</translation>
    </message>
    <message>
        <source>%1 deep</source>
        <translation>%1 tief</translation>
    </message>
    <message>
        <source>panel %1</source>
        <translation>Wand %1</translation>
    </message>
    <message>
        <source>bevel %1 : 1</source>
        <translation>Fase %1 : 1</translation>
    </message>
    <message>
        <source>Taken in: %1, %2</source>
        <translation>Angenommen: %1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Changed. %1</source>
        <extracomment>%1 is an answer: &quot;Dry or damp: damp&quot;</extracomment>
        <translation>Geändert. %1</translation>
    </message>
    <message>
        <source>Planned again: %1, %2, %3</source>
        <translation>Neu geplant: %1, %2, %3</translation>
    </message>
    <message>
        <source>Plan accepted: %1, %2, %3</source>
        <translation>Plan angenommen: %1, %2, %3</translation>
    </message>
    <message>
        <source>Read: %1; panel %2 above dew point</source>
        <translation>Abgelesen: %1; Teil %2 über Taupunkt</translation>
    </message>
    <message>
        <source>%1: hardener in, %2 + %3</source>
        <translation>%1: Härter drin, %2 + %3</translation>
    </message>
    <message>
        <source>%1: edges clear after %2</source>
        <translation>%1: Ränder sauber nach %2</translation>
    </message>
    <message>
        <source>%1: set on the board after %2</source>
        <translation>%1: auf dem Brett fest nach %2</translation>
    </message>
    <message>
        <source>%1: set on the panel after %2</source>
        <translation>%1: auf dem Teil fest nach %2</translation>
    </message>
    <message>
        <source>%1: sands after %2</source>
        <translation>%1: schleifbar nach %2</translation>
    </message>
    <message>
        <source>%1: sanded and dusted off</source>
        <translation>%1: geschliffen, abgesaugt</translation>
    </message>
    <message>
        <source>Panel turned</source>
        <translation>Teil gewendet</translation>
    </message>
    <message>
        <source>Parked: %1</source>
        <translation>Geparkt: %1</translation>
    </message>
    <message>
        <source>Parked: %1. %2</source>
        <translation>Geparkt: %1. %2</translation>
    </message>
    <message>
        <source>Assessed again from the first question</source>
        <translation>Von der ersten Frage neu beurteilt</translation>
    </message>
    <message>
        <source>Taken up again</source>
        <translation>Wieder aufgenommen</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Photo: %1</source>
        <translation>Foto: %1</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Notiz: %1</translation>
    </message>
    <message>
        <source>Finishing batch %1</source>
        <translation>Feinspachtel, Ansatz %1</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <translation>Ansatz %1</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>%1: by this reading sands from %2, before from %3</source>
        <translation>%1: nach dieser Ablesung schleifbar ab %2, vorher ab %3</translation>
    </message>
    <message>
        <source>%1: alarm answered: %2</source>
        <translation>%1: Alarm bestätigt: %2</translation>
    </message>
    <message>
        <source>Overridden by the supervisor: %1. Reason: %2</source>
        <translation>Vom Meister übergangen: %1. Grund: %2</translation>
    </message>
    <message>
        <source>Signed off by the supervisor</source>
        <translation>Vom Meister abgenommen</translation>
    </message>
    <message>
        <source>Correction of no. %1: %2</source>
        <extracomment>%1 is the number of the event that is put right, %2 what the supervisor wrote</extracomment>
        <translation>Berichtigung zu Nr. %1: %2</translation>
    </message>
    <message>
        <source>Changed. %1 (air by the instrument)</source>
        <translation>Geändert. %1 (Luft vom Messgerät)</translation>
    </message>
    <message>
        <source>%1 (air by the instrument)</source>
        <translation>%1 (Luft vom Messgerät)</translation>
    </message>
    <message>
        <source>Read, air by the instrument: %1; panel %2 above dew point</source>
        <translation>Abgelesen, Luft vom Messgerät: %1; Teil %2 über Taupunkt</translation>
    </message>
    <message>
        <source>%1: hardener in, %2 + %3 by the scale</source>
        <translation>%1: Härter drin, %2 + %3 nach Waage</translation>
    </message>
    <message>
        <source>Taken in as rework of what was returned: %1, %2</source>
        <translation>Angenommen als Nacharbeit des Zurückgegebenen: %1, %2</translation>
    </message>
    <message>
        <source>Returned by the supervisor: %1</source>
        <extracomment>%1 is the reason</extracomment>
        <translation>Vom Meister zurückgegeben: %1</translation>
    </message>
    <message>
        <source>Its rework is taken in</source>
        <translation>Ihre Nacharbeit ist angenommen</translation>
    </message>
</context>
<context>
    <name>Evidence</name>
    <message>
        <source>From the front</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>From behind</source>
        <translation>Von hinten</translation>
    </message>
    <message>
        <source>Broken edge</source>
        <translation>Bruchkante</translation>
    </message>
    <message>
        <source>Magnet</source>
        <translation>Magnet</translation>
    </message>
    <message>
        <source>Zinc gauge</source>
        <translation>Zink messen</translation>
    </message>
    <message>
        <source>Ohmmeter</source>
        <translation>Ohmmeter</translation>
    </message>
    <message>
        <source>Tap it</source>
        <translation>Abklopfen</translation>
    </message>
    <message>
        <source>80 grit, a spot</source>
        <translation>80er, eine Stelle</translation>
    </message>
    <message>
        <source>Bend the edge</source>
        <translation>Kante biegen</translation>
    </message>
    <message>
        <source>Drop of vinegar</source>
        <translation>Tropfen Essig</translation>
    </message>
    <message>
        <source>Cloth and solvent</source>
        <translation>Tuch und Lösemittel</translation>
    </message>
    <message>
        <source>Nail in film</source>
        <translation>Nagel in den Film</translation>
    </message>
    <message>
        <source>Tap and wet</source>
        <translation>Klopfen und nässen</translation>
    </message>
    <message>
        <source>Nail in adhesive</source>
        <translation>Nagel in den Kleber</translation>
    </message>
    <message>
        <source>Taped foil</source>
        <translation>Aufgeklebte Folie</translation>
    </message>
    <message>
        <source>What is near</source>
        <translation>Was in der Nähe ist</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>Air and panel</source>
        <translation>Luft und Teil</translation>
    </message>
    <message>
        <source>Since when bare</source>
        <translation>Seit wann blank</translation>
    </message>
    <message>
        <source>a crack</source>
        <translation>ein Riss</translation>
    </message>
    <message>
        <source>fine crazing in the paint</source>
        <translation>feine Haarrisse im Lack</translation>
    </message>
    <message>
        <source>a dish pressed in</source>
        <translation>eine eingedrückte Mulde</translation>
    </message>
    <message>
        <source>a furrow</source>
        <translation>eine Furche</translation>
    </message>
    <message>
        <source>a hole right through</source>
        <translation>ein Loch durch und durch</translation>
    </message>
    <message>
        <source>a hole with a brown, flaking rim</source>
        <translation>ein Loch mit braunem, blätterndem Rand</translation>
    </message>
    <message>
        <source>an unbroken weld bead</source>
        <translation>eine durchgehende Schweißnaht</translation>
    </message>
    <message>
        <source>a row of round pressed spots</source>
        <translation>eine Reihe runder, eingedrückter Punkte</translation>
    </message>
    <message>
        <source>the line of a seam</source>
        <translation>die Linie einer Naht</translation>
    </message>
    <message>
        <source>a line of adhesive</source>
        <translation>eine Klebelinie</translation>
    </message>
    <message>
        <source>adhesive squeezed out</source>
        <translation>herausgequollener Kleber</translation>
    </message>
    <message>
        <source>pores in the bead</source>
        <translation>Poren in der Naht</translation>
    </message>
    <message>
        <source>brown specks on bright metal</source>
        <translation>braune Punkte auf blankem Metall</translation>
    </message>
    <message>
        <source>nothing on it</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>even grey film, abraded</source>
        <translation>gleichmäßig grauer Film, angeschliffen</translation>
    </message>
    <message>
        <source>glossy film</source>
        <translation>glänzender Film</translation>
    </message>
    <message>
        <source>a patch of another colour in the film</source>
        <translation>ein Fleck anderer Farbe im Film</translation>
    </message>
    <message>
        <source>thick rubbery film</source>
        <translation>dicker gummiartiger Film</translation>
    </message>
    <message>
        <source>brown scale</source>
        <translation>braune Schuppen</translation>
    </message>
    <message>
        <source>smooth black film</source>
        <translation>glatter schwarzer Film</translation>
    </message>
    <message>
        <source>thin tinted film, metal shows through</source>
        <translation>dünner getönter Film, Metall scheint durch</translation>
    </message>
    <message>
        <source>glassy drops along the joint</source>
        <translation>glasige Tropfen an der Naht</translation>
    </message>
    <message>
        <source>A hand gets behind it.</source>
        <translation>Eine Hand kommt dahinter.</translation>
    </message>
    <message>
        <source>Only a mirror gets behind it.</source>
        <translation>Nur ein Spiegel kommt dahinter.</translation>
    </message>
    <message>
        <source>The back is closed: nothing is seen.</source>
        <translation>Hinten ist zu: Man sieht nichts.</translation>
    </message>
    <message>
        <source>rough, strands every way</source>
        <translation>rau, Fasern kreuz und quer</translation>
    </message>
    <message>
        <source>smooth, with moulded ribs</source>
        <translation>glatt, mit angeformten Rippen</translation>
    </message>
    <message>
        <source>black woven cloth</source>
        <translation>schwarzes Gewebe</translation>
    </message>
    <message>
        <source>thin pressed sheet</source>
        <translation>dünnes gepresstes Blech</translation>
    </message>
    <message>
        <source>thick cast ribs</source>
        <translation>dicke gegossene Rippen</translation>
    </message>
    <message>
        <source>short weld beads with gaps</source>
        <translation>kurze Schweißraupen mit Lücken</translation>
    </message>
    <message>
        <source>Marked: UP-GF</source>
        <extracomment>what is moulded into the back of a part, an abbreviation of ISO 1043</extracomment>
        <translation>Gekennzeichnet: UP-GF</translation>
    </message>
    <message>
        <source>Marked: PP-EPDM</source>
        <translation>Gekennzeichnet: PP-EPDM</translation>
    </message>
    <message>
        <source>Marked: PUR</source>
        <translation>Gekennzeichnet: PUR</translation>
    </message>
    <message>
        <source>Marked: PDCPD</source>
        <translation>Gekennzeichnet: PDCPD</translation>
    </message>
    <message>
        <source>Marked: Mg</source>
        <translation>Gekennzeichnet: Mg</translation>
    </message>
    <message>
        <source>layers, long strands stand out</source>
        <translation>Lagen, lange Fasern stehen heraus</translation>
    </message>
    <message>
        <source>short strands, evenly all through</source>
        <translation>kurze Fasern, gleichmäßig verteilt</translation>
    </message>
    <message>
        <source>no strand anywhere</source>
        <translation>nirgends eine Faser</translation>
    </message>
    <message>
        <source>black woven threads</source>
        <translation>schwarze gewebte Fäden</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>Metall</translation>
    </message>
    <message>
        <source>Solid all through.</source>
        <translation>Durchgehend massiv.</translation>
    </message>
    <message>
        <source>Between two skins: small cells.</source>
        <translation>Zwischen zwei Häuten: kleine Zellen.</translation>
    </message>
    <message>
        <source>Between two skins: pale dry wood.</source>
        <translation>Zwischen zwei Häuten: helles, trockenes Holz.</translation>
    </message>
    <message>
        <source>Between two skins: dark wood, wet to the finger.</source>
        <translation>Zwischen zwei Häuten: dunkles Holz, feucht am Finger.</translation>
    </message>
    <message>
        <source>no pull</source>
        <translation>zieht nicht</translation>
    </message>
    <message>
        <source>weak pull</source>
        <translation>zieht schwach</translation>
    </message>
    <message>
        <source>strong pull</source>
        <translation>zieht stark</translation>
    </message>
    <message>
        <source>It rings.</source>
        <translation>Es klingt.</translation>
    </message>
    <message>
        <source>A hard, short sound.</source>
        <translation>Ein harter, kurzer Ton.</translation>
    </message>
    <message>
        <source>A dull sound.</source>
        <translation>Ein dumpfer Ton.</translation>
    </message>
    <message>
        <source>Dead: no sound of its own.</source>
        <translation>Tot: kein eigener Klang.</translation>
    </message>
    <message>
        <source>It gives dry powder.</source>
        <translation>Es gibt trockenen Staub.</translation>
    </message>
    <message>
        <source>It smears and gives strings.</source>
        <translation>Es schmiert und zieht Fäden.</translation>
    </message>
    <message>
        <source>It gives soft crumbs.</source>
        <translation>Es gibt weiche Krümel.</translation>
    </message>
    <message>
        <source>It gives black dust.</source>
        <translation>Es gibt schwarzen Staub.</translation>
    </message>
    <message>
        <source>Bright metal comes up.</source>
        <translation>Blankes Metall kommt hervor.</translation>
    </message>
    <message>
        <source>The cloth stays clean.</source>
        <translation>Das Tuch bleibt sauber.</translation>
    </message>
    <message>
        <source>The cloth takes colour.</source>
        <translation>Das Tuch färbt sich.</translation>
    </message>
    <message>
        <source>The film softens and smears.</source>
        <translation>Der Film wird weich und schmiert.</translation>
    </message>
    <message>
        <source>Hard: the nail slides off.</source>
        <translation>Hart: Der Nagel gleitet ab.</translation>
    </message>
    <message>
        <source>Rubbery: the nail springs back.</source>
        <translation>Gummiartig: Der Nagel federt zurück.</translation>
    </message>
    <message>
        <source>Soft: the nail goes in and stays.</source>
        <translation>Weich: Der Nagel dringt ein und bleibt.</translation>
    </message>
    <message>
        <source>Dry below the foil.</source>
        <translation>Trocken unter der Folie.</translation>
    </message>
    <message>
        <source>Beads of water below the foil.</source>
        <translation>Wasserperlen unter der Folie.</translation>
    </message>
    <message>
        <source>pillar</source>
        <translation>Säule</translation>
    </message>
    <message>
        <source>chassis rail</source>
        <translation>Längsträger</translation>
    </message>
    <message>
        <source>brake mounting</source>
        <translation>Bremsbefestigung</translation>
    </message>
    <message>
        <source>steering mounting</source>
        <translation>Lenkungsbefestigung</translation>
    </message>
    <message>
        <source>suspension mounting</source>
        <translation>Fahrwerksaufnahme</translation>
    </message>
    <message>
        <source>belt mounting</source>
        <translation>Gurtbefestigung</translation>
    </message>
    <message>
        <source>seat mounting</source>
        <translation>Sitzbefestigung</translation>
    </message>
    <message>
        <source>flange that glass is bonded to</source>
        <translation>Flansch, an dem Glas klebt</translation>
    </message>
    <message>
        <source>airbag cover</source>
        <translation>Airbag-Abdeckung</translation>
    </message>
    <message>
        <source>high-voltage part, orange cable</source>
        <translation>Hochvoltteil, oranges Kabel</translation>
    </message>
    <message>
        <source>driver-assistance sensor behind it</source>
        <translation>Fahrerassistenzsensor dahinter</translation>
    </message>
    <message>
        <source>wall of a tank</source>
        <translation>Wand eines Tanks</translation>
    </message>
    <message>
        <source>It cannot be tried here.</source>
        <translation>Das lässt sich hier nicht prüfen.</translation>
    </message>
    <message>
        <source>On it: %1.</source>
        <translation>Darauf: %1.</translation>
    </message>
    <message>
        <source>Seen: %1. On it: %2.</source>
        <extracomment>both are lists: &quot;a crack, fine crazing in the paint&quot;, &quot;glossy film&quot;</extracomment>
        <translation>Zu sehen: %1. Darauf: %2.</translation>
    </message>
    <message>
        <source>Seen: %1.</source>
        <translation>Zu sehen: %1.</translation>
    </message>
    <message>
        <source>No edge is broken or cut open.</source>
        <translation>Keine Kante ist gebrochen oder aufgeschnitten.</translation>
    </message>
    <message>
        <source>At the damage: %1.</source>
        <translation>Am Schaden: %1.</translation>
    </message>
    <message>
        <source>At the damage: %1. On a spot ground bare: %2.</source>
        <translation>Am Schaden: %1. Auf einer blanken Stelle: %2.</translation>
    </message>
    <message>
        <source>%1 µm</source>
        <extracomment>a thickness: &quot;12 µm&quot;</extracomment>
        <translation>%1 µm</translation>
    </message>
    <message>
        <source>Beside it: %1.</source>
        <translation>Daneben: %1.</translation>
    </message>
    <message>
        <source>Nothing but skin within an arm’s length.</source>
        <translation>Im Umkreis einer Armlänge nur Außenhaut.</translation>
    </message>
    <message>
        <source>%1, %2 away</source>
        <extracomment>%1 is a part of a vehicle, %2 how far off: &quot;belt mounting, 120 mm away&quot;</extracomment>
        <translation>%1, %2 entfernt</translation>
    </message>
    <message>
        <source>%1, right here</source>
        <translation>%1, genau hier</translation>
    </message>
    <message>
        <source>Long, as the eye has it: %1.</source>
        <translation>Lang, nach Augenmaß: %1.</translation>
    </message>
    <message>
        <source>Wide: %1.</source>
        <translation>Breit: %1.</translation>
    </message>
    <message>
        <source>Deep: %1.</source>
        <translation>Tief: %1.</translation>
    </message>
    <message>
        <source>Panel: %1.</source>
        <translation>Wand: %1.</translation>
    </message>
    <message>
        <source>It conducts.</source>
        <translation>Es leitet.</translation>
    </message>
    <message>
        <source>Open: it does not conduct.</source>
        <translation>Offen: Es leitet nicht.</translation>
    </message>
    <message>
        <source>It bends by hand and springs back.</source>
        <translation>Es biegt sich von Hand und federt zurück.</translation>
    </message>
    <message>
        <source>It stays stiff.</source>
        <translation>Es bleibt steif.</translation>
    </message>
    <message>
        <source>It fizzes.</source>
        <translation>Es schäumt.</translation>
    </message>
    <message>
        <source>Nothing happens.</source>
        <translation>Nichts geschieht.</translation>
    </message>
    <message>
        <source>The nail leaves a mark.</source>
        <translation>Der Nagel hinterlässt eine Spur.</translation>
    </message>
    <message>
        <source>The nail leaves no mark.</source>
        <translation>Der Nagel hinterlässt keine Spur.</translation>
    </message>
    <message>
        <source>From tip to tip: %1.</source>
        <translation>Von Spitze zu Spitze: %1.</translation>
    </message>
    <message>
        <source>No crack opens.</source>
        <translation>Kein Riss öffnet sich.</translation>
    </message>
    <message>
        <source>Cut or ground bare %1 ago.</source>
        <translation>Vor %1 geschnitten oder blank geschliffen.</translation>
    </message>
    <message>
        <source>Nobody knows.</source>
        <translation>Das weiß niemand.</translation>
    </message>
    <message>
        <source>Bevel to cut: %1 : 1.</source>
        <extracomment>run to depth, told by the shop: &quot;Bevel to cut: 4 : 1.&quot;</extracomment>
        <translation>Soll-Fase: %1 : 1.</translation>
    </message>
</context>
<context>
    <name>Faults</name>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>wahr oder falsch</translation>
    </message>
    <message>
        <source>a file</source>
        <translation>eine Datei</translation>
    </message>
    <message>
        <source>Job number</source>
        <translation>Auftragsnummer</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Panel’s material</source>
        <translation>Werkstoff des Teils</translation>
    </message>
    <message>
        <source>Damage</source>
        <translation>Schaden</translation>
    </message>
    <message>
        <source>Kind of damage</source>
        <translation>Art des Schadens</translation>
    </message>
    <message>
        <source>Kind of weld</source>
        <translation>Schweißart</translation>
    </message>
    <message>
        <source>Adhesive cured</source>
        <translation>Kleber ausgehärtet</translation>
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
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Panel thickness</source>
        <translation>Wanddicke</translation>
    </message>
    <message>
        <source>Bevel</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>Reach from behind</source>
        <translation>Zugang von hinten</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>Core</source>
        <translation>Kern</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Lufttemperatur</translation>
    </message>
    <message>
        <source>Panel temperature</source>
        <translation>Teiltemperatur</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Spachtel</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Härter</translation>
    </message>
    <message>
        <source>Puddle</source>
        <translation>Kreis</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>%1: missing</source>
        <translation>%1: fehlt</translation>
    </message>
    <message>
        <source>%1: missing; it must be one of: %2</source>
        <translation>%1: fehlt; erlaubt ist eins von: %2</translation>
    </message>
    <message>
        <source>%1: missing; it must be %2</source>
        <translation>%1: fehlt; erlaubt ist %2</translation>
    </message>
    <message>
        <source>%1: %2 is out of range; allowed is %3 to %4</source>
        <translation>%1: %2 liegt außerhalb; erlaubt ist %3 bis %4</translation>
    </message>
    <message>
        <source>%1: not known; known here: %2</source>
        <translation>%1: unbekannt; bekannt ist hier: %2</translation>
    </message>
    <message>
        <source>%1: %2 does not fit; it must be %3</source>
        <translation>%1: %2 passt nicht; es muss %3 sein</translation>
    </message>
    <message>
        <source>%1: %2 is not one of: %3</source>
        <translation>%1: %2 ist keins von: %3</translation>
    </message>
    <message>
        <source>%1: %2 cannot be read; it looks like: %3</source>
        <translation>%1: %2 ist nicht lesbar; so sieht es aus: %3</translation>
    </message>
    <message>
        <source>%1: must not be empty</source>
        <translation>%1: darf nicht leer sein</translation>
    </message>
    <message>
        <source>%1: %2 is too long; at most %3 characters</source>
        <translation>%1: %2 ist zu lang; höchstens %3 Zeichen</translation>
    </message>
    <message>
        <source>%1: %2 does not agree with %3: %4</source>
        <translation>%1: %2 passt nicht zu %3: %4</translation>
    </message>
    <message>
        <source>%1: %2 is not there; there is: %3</source>
        <translation>%1: %2 gibt es nicht; es gibt: %3</translation>
    </message>
    <message>
        <source>Bead</source>
        <translation>Strang</translation>
    </message>
</context>
<context>
    <name>FigureChart</name>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>Not identified</source>
        <translation>Nicht bestimmt</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>&quot;9 of 12&quot;</extracomment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>took</source>
        <translation>gebraucht</translation>
    </message>
    <message>
        <source>how often</source>
        <translation>wie oft</translation>
    </message>
    <message>
        <source>share up to here</source>
        <translation>Anteil bis hier</translation>
    </message>
    <message>
        <source>Step from each gel to the next, with its limit</source>
        <translation>Sprung von Gel zu Gel, mit seiner Grenze</translation>
    </message>
    <message>
        <source>Gel times over those of the sheet, one after the other, with mean, limits and moving mean</source>
        <translation>Gelzeiten im Verhältnis zum Blatt, nacheinander, mit Mittel, Grenzen und gleitendem Mittel</translation>
    </message>
    <message numerus="yes">
        <source>+%n in the table</source>
        <translation>
            <numerusform>+%n in der Tabelle</numerusform>
            <numerusform>+%n in der Tabelle</numerusform>
        </translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>upper limit</source>
        <translation>obere Grenze</translation>
    </message>
    <message>
        <source>lower limit</source>
        <translation>untere Grenze</translation>
    </message>
    <message>
        <source>moving mean</source>
        <translation>gleitendes Mittel</translation>
    </message>
    <message>
        <source>its limit</source>
        <translation>dessen Grenze</translation>
    </message>
    <message>
        <source>gel</source>
        <translation>Gel</translation>
    </message>
    <message>
        <source>not by chance alone</source>
        <translation>nicht allein durch Zufall</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>angemischt</translation>
    </message>
    <message>
        <source>%1 too much</source>
        <extracomment>%1 is a share of what was mixed</extracomment>
        <translation>%1 zu viel</translation>
    </message>
    <message>
        <source>share, and where the true one may lie</source>
        <translation>Anteil, und wo der wahre liegen kann</translation>
    </message>
</context>
<context>
    <name>FigureTable</name>
    <message>
        <source>Marked in the chart</source>
        <translation>Im Diagramm markiert</translation>
    </message>
</context>
<context>
    <name>FigureTold</name>
    <message>
        <source>Nothing was mixed in these days.</source>
        <translation>In diesen Tagen wurde nichts angemischt.</translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation>geplant %1</translation>
    </message>
    <message>
        <source>mixed %1</source>
        <translation>angemischt %1</translation>
    </message>
    <message>
        <source>beyond the plan %1, %2</source>
        <translation>über den Plan %1, %2</translation>
    </message>
    <message>
        <source>Of %1 mixed, %2 went beyond the plan: %3. Most of that was %4.</source>
        <extracomment>%1 and %2 are masses, %3 a share, %4 a product</extracomment>
        <translation>Von %1 Angemischtem gingen %2 über den Plan: %3. Das meiste war %4.</translation>
    </message>
    <message>
        <source>Of %1 mixed, nothing went beyond the plan.</source>
        <translation>Von %1 Angemischtem ging nichts über den Plan.</translation>
    </message>
    <message>
        <source>Other batches fell short of it by %1.</source>
        <translation>Andere Ansätze blieben um %1 darunter.</translation>
    </message>
    <message>
        <source>Between the substrates no difference is larger than chance.</source>
        <translation>Zwischen den Untergründen ist kein Unterschied größer als der Zufall.</translation>
    </message>
    <message>
        <source>not identified</source>
        <translation>nicht bestimmt</translation>
    </message>
    <message>
        <source>Less often with %1 than with %2, by more than chance.</source>
        <extracomment>%1 and %2 are substrates</extracomment>
        <translation>Seltener bei %1 als bei %2, über den Zufall hinaus.</translation>
    </message>
    <message>
        <source>No repair of these days was signed off or returned yet.</source>
        <translation>Noch keine Reparatur dieser Tage wurde abgenommen oder zurückgegeben.</translation>
    </message>
    <message>
        <source>Not identified</source>
        <translation>Nicht bestimmt</translation>
    </message>
    <message>
        <source>%1 of %2 right the first time</source>
        <translation>%1 von %2 auf Anhieb richtig</translation>
    </message>
    <message>
        <source>may be %1 to %2</source>
        <extracomment>%1 and %2 are shares: the ends of an interval</extracomment>
        <translation>kann %1 bis %2 sein</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n repair(s) right the first time: %2. The true share may lie anywhere from %3 to %4.</source>
        <extracomment>%1 is a number, %2 to %4 are shares</extracomment>
        <translation>
            <numerusform>%1 von %n Reparatur auf Anhieb richtig: %2. Der wahre Anteil kann zwischen %3 und %4 liegen.</numerusform>
            <numerusform>%1 von %n Reparaturen auf Anhieb richtig: %2. Der wahre Anteil kann zwischen %3 und %4 liegen.</numerusform>
        </translation>
    </message>
    <message>
        <source>No repair of these days was handed over with its times told.</source>
        <translation>Keine Reparatur dieser Tage wurde mit gemeldeten Zeiten übergeben.</translation>
    </message>
    <message>
        <source>took %1</source>
        <translation>gebraucht %1</translation>
    </message>
    <message>
        <source>one in ten %1 or more</source>
        <translation>eine von zehn %1 oder mehr</translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s)</source>
        <translation>
            <numerusform>%n Reparatur</numerusform>
            <numerusform>%n Reparaturen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Most is lost at ‘%1’: half of %n repair(s) took %2 or more, the plan said %3.</source>
        <translation>
            <numerusform>Am meisten geht bei „%1“ verloren: die Hälfte von %n Reparatur brauchte %2 oder mehr, der Plan sagte %3.</numerusform>
            <numerusform>Am meisten geht bei „%1“ verloren: die Hälfte von %n Reparaturen brauchte %2 oder mehr, der Plan sagte %3.</numerusform>
        </translation>
    </message>
    <message>
        <source>No part takes longer than the plan says, by the middle one of its repairs.</source>
        <translation>Kein Arbeitsgang dauert länger, als der Plan sagt, nach der mittleren der Reparaturen.</translation>
    </message>
    <message>
        <source>The records of these days hold no deviation.</source>
        <translation>Die Akten dieser Tage enthalten keine Abweichung.</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s)</source>
        <translation>
            <numerusform>%n Mal</numerusform>
            <numerusform>%n Mal</numerusform>
        </translation>
    </message>
    <message>
        <source>up to here %1</source>
        <extracomment>%1 is a share: of this row and those above</extracomment>
        <translation>bis hier %1</translation>
    </message>
    <message numerus="yes">
        <source>Most often: %1, %2 of %n deviation(s), %3.</source>
        <extracomment>%1 is a kind of deviation, %2 a number, %3 a share</extracomment>
        <translation>
            <numerusform>Am häufigsten: %1, %2 von %n Abweichung, %3.</numerusform>
            <numerusform>Am häufigsten: %1, %2 von %n Abweichungen, %3.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The first %n kind(s) make up %1.</source>
        <translation>
            <numerusform>Die erste Art macht %1 aus.</numerusform>
            <numerusform>Die ersten %n Arten machen %1 aus.</numerusform>
        </translation>
    </message>
    <message>
        <source>Is a lot of hardener drifting?</source>
        <translation>Driftet eine Härtercharge?</translation>
    </message>
    <message>
        <source>How much is mixed beyond the plan?</source>
        <translation>Wie viel wird zu viel angemischt?</translation>
    </message>
    <message>
        <source>How often is it right the first time?</source>
        <translation>Wie oft stimmt es auf Anhieb?</translation>
    </message>
    <message>
        <source>Where does the time go?</source>
        <translation>Wo bleibt die Zeit?</translation>
    </message>
    <message>
        <source>What strays most often?</source>
        <translation>Was weicht am häufigsten ab?</translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s) cannot be read and are not counted.</source>
        <translation>
            <numerusform>%n Reparatur ist nicht lesbar und zählt nicht.</numerusform>
            <numerusform>%n Reparaturen sind nicht lesbar und zählen nicht.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FigureWords</name>
    <message>
        <source>Panel near dew point</source>
        <translation>Teil nah am Taupunkt</translation>
    </message>
    <message>
        <source>Panel too cold</source>
        <translation>Teil zu kalt</translation>
    </message>
    <message>
        <source>Panel too hot</source>
        <translation>Teil zu warm</translation>
    </message>
    <message>
        <source>Air too cold</source>
        <translation>Luft zu kalt</translation>
    </message>
    <message>
        <source>Air too hot</source>
        <translation>Luft zu warm</translation>
    </message>
    <message>
        <source>No reading</source>
        <translation>Keine Ablesung</translation>
    </message>
    <message>
        <source>Old reading</source>
        <translation>Alte Ablesung</translation>
    </message>
    <message>
        <source>Bare metal too long</source>
        <translation>Metall zu lange blank</translation>
    </message>
    <message>
        <source>Sanded early</source>
        <translation>Zu früh geschliffen</translation>
    </message>
    <message>
        <source>Edges after due gel</source>
        <translation>Ränder nach Soll-Gel</translation>
    </message>
    <message>
        <source>Edges after gel</source>
        <translation>Ränder nach dem Gel</translation>
    </message>
    <message>
        <source>Hardener low</source>
        <translation>Zu wenig Härter</translation>
    </message>
    <message>
        <source>Hardener high</source>
        <translation>Zu viel Härter</translation>
    </message>
    <message>
        <source>Lift too thick</source>
        <translation>Lage zu dick</translation>
    </message>
    <message>
        <source>Steps skimmed</source>
        <translation>Schritte überflogen</translation>
    </message>
    <message>
        <source>Wait cut short</source>
        <translation>Warten gekürzt</translation>
    </message>
    <message>
        <source>No filler lot</source>
        <translation>Spachtel ohne Charge</translation>
    </message>
    <message>
        <source>No hardener lot</source>
        <translation>Härter ohne Charge</translation>
    </message>
    <message>
        <source>Demo sheet</source>
        <translation>Demoblatt</translation>
    </message>
    <message>
        <source>Answer changed</source>
        <translation>Antwort geändert</translation>
    </message>
    <message>
        <source>Planned again</source>
        <translation>Neu geplant</translation>
    </message>
    <message>
        <source>Stop overridden</source>
        <translation>Halt übergangen</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Geparkt</translation>
    </message>
    <message>
        <source>No photo</source>
        <translation>Kein Foto</translation>
    </message>
    <message>
        <source>No name</source>
        <translation>Ohne Namen</translation>
    </message>
    <message>
        <source>Bench restarted</source>
        <translation>Platz neu gestartet</translation>
    </message>
    <message>
        <source>Clock set on</source>
        <translation>Uhr vorgestellt</translation>
    </message>
    <message>
        <source>Clock set back</source>
        <translation>Uhr zurückgestellt</translation>
    </message>
    <message>
        <source>Preparing</source>
        <translation>Vorbereiten</translation>
    </message>
    <message>
        <source>Laying</source>
        <translation>Auftragen</translation>
    </message>
    <message>
        <source>Curing</source>
        <translation>Härten</translation>
    </message>
    <message>
        <source>Sanding</source>
        <translation>Schleifen</translation>
    </message>
    <message>
        <source>Finishing</source>
        <translation>Finish</translation>
    </message>
    <message>
        <source>gel %1 lies outside the limits</source>
        <extracomment>%1 is the number of a gel, so in all of these</extracomment>
        <translation>Gel %1 liegt außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>gel %1: two of three lie far off to one side</source>
        <translation>Gel %1: zwei von drei weit auf einer Seite</translation>
    </message>
    <message>
        <source>gel %1: four of five lie off to one side</source>
        <translation>Gel %1: vier von fünf auf einer Seite</translation>
    </message>
    <message>
        <source>gel %1: eight in a row lie on one side of the mean</source>
        <translation>Gel %1: acht in Folge auf einer Seite des Mittels</translation>
    </message>
    <message>
        <source>gel %1: six in a row go the same way</source>
        <translation>Gel %1: sechs in Folge in dieselbe Richtung</translation>
    </message>
    <message>
        <source>gel %1: fourteen go up and down by turns</source>
        <translation>Gel %1: vierzehn gehen abwechselnd auf und ab</translation>
    </message>
    <message>
        <source>as fast as the sheet</source>
        <translation>so schnell wie das Blatt</translation>
    </message>
    <message>
        <source>%1 slower than the sheet</source>
        <translation>%1 langsamer als das Blatt</translation>
    </message>
    <message>
        <source>%1 faster than the sheet</source>
        <translation>%1 schneller als das Blatt</translation>
    </message>
</context>
<context>
    <name>FoundBy</name>
    <message>
        <source>magnet</source>
        <extracomment>what told one substrate from another, in a list: &quot;magnet, tap sound&quot;</extracomment>
        <translation>Magnet</translation>
    </message>
    <message>
        <source>zinc gauge</source>
        <translation>Zinkmessgerät</translation>
    </message>
    <message>
        <source>ohmmeter</source>
        <translation>Ohmmeter</translation>
    </message>
    <message>
        <source>broken edge</source>
        <translation>Bruchkante</translation>
    </message>
    <message>
        <source>marking on the back</source>
        <translation>Kennzeichnung hinten</translation>
    </message>
    <message>
        <source>tap sound</source>
        <translation>Klopfklang</translation>
    </message>
    <message>
        <source>%1 (told by %2)</source>
        <extracomment>%1 is what a panel is made of, %2 a list: &quot;SMC (told by broken edge, tap sound)&quot;</extracomment>
        <translation>%1 (erkannt an: %2)</translation>
    </message>
</context>
<context>
    <name>GelTold</name>
    <message numerus="yes">
        <source>%n gel(s) marked, the newest: %1.</source>
        <extracomment>%1 is what is unusual with the newest of them: &quot;gel 31 lies outside the limits&quot;</extracomment>
        <translation>
            <numerusform>%n Gelzeit markiert, neueste: %1.</numerusform>
            <numerusform>%n Gelzeiten markiert, neueste: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The moving mean was outside its limits until gel %1 and has come back.</source>
        <extracomment>%1 is the number of a gel</extracomment>
        <translation>Das gleitende Mittel lag bis Gel %1 außerhalb seiner Grenzen und ist zurück.</translation>
    </message>
    <message>
        <source>The moving mean is above its limits since gel %1: slower than the sheet.</source>
        <translation>Das gleitende Mittel liegt seit Gel %1 über seinen Grenzen: langsamer als das Blatt.</translation>
    </message>
    <message>
        <source>The moving mean is below its limits since gel %1: faster than the sheet.</source>
        <translation>Das gleitende Mittel liegt seit Gel %1 unter seinen Grenzen: schneller als das Blatt.</translation>
    </message>
    <message numerus="yes">
        <source>%n gel(s), on average %1.</source>
        <extracomment>%1: &quot;12 % slower than the sheet&quot;</extracomment>
        <translation>
            <numerusform>%n Gelzeit, Mittel %1.</numerusform>
            <numerusform>%n Gelzeiten, Mittel %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing says that it drifts.</source>
        <translation>Nichts spricht dafür, dass sie driftet.</translation>
    </message>
    <message>
        <source>With so few the limits are rough.</source>
        <translation>Bei so wenigen sind die Grenzen grob.</translation>
    </message>
    <message>
        <source>Gel %1</source>
        <translation>Gel %1</translation>
    </message>
    <message>
        <source>%1 of the sheet’s time</source>
        <translation>%1 der Zeit des Blatts</translation>
    </message>
    <message>
        <source>moving mean %1</source>
        <translation>gleitendes Mittel %1</translation>
    </message>
    <message>
        <source>step %1</source>
        <translation>Sprung %1</translation>
    </message>
    <message numerus="yes">
        <source>A control chart needs two gels of a lot; in these days %n was seen.</source>
        <translation>
            <numerusform>Eine Regelkarte braucht zwei Gelzeiten einer Charge; in diesen Tagen gab es %n.</numerusform>
            <numerusform>Eine Regelkarte braucht zwei Gelzeiten einer Charge; in diesen Tagen gab es %n.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Glossary</name>
    <message>
        <source>Tough yellow fibre that fuzzes instead of breaking; it cannot be sanded clean.</source>
        <translation>Zähe gelbe Faser, die ausfranst statt bricht; sie lässt sich nicht sauber schleifen.</translation>
    </message>
    <message>
        <source>Cloth and resin bonded behind a hole, so that the filler has something to lie on.</source>
        <translation>Gewebe und Harz, hinter ein Loch geklebt, damit der Spachtel aufliegt.</translation>
    </message>
    <message>
        <source>What is mixed at one time, with one bead of hardener.</source>
        <translation>Was auf einmal gemischt wird, mit einem Strang Härter.</translation>
    </message>
    <message>
        <source>The line of hardener paste pressed from its tube; its length is the measure.</source>
        <translation>Die Linie Härterpaste aus der Tube; ihre Länge ist das Maß.</translation>
    </message>
    <message>
        <source>The slope ground round a hole or crack, which gives the filler area to hold on.</source>
        <translation>Der geschliffene Auslauf um Loch oder Riss, an dem der Spachtel hält.</translation>
    </message>
    <message>
        <source>Two panels joined by adhesive; it moves a little with heat and load.</source>
        <translation>Zwei verklebte Teile; die Naht arbeitet etwas mit Wärme und Last.</translation>
    </message>
    <message>
        <source>Fine cracks like a net in paint, gel coat or a filler that got too hot.</source>
        <translation>Feines Rissnetz in Lack, Gelcoat oder zu heiß gewordenem Spachtel.</translation>
    </message>
    <message>
        <source>The reaction that makes the paste hard; it gives off heat.</source>
        <translation>Die Reaktion, die aus der Paste Festes macht; dabei wird Wärme frei.</translation>
    </message>
    <message>
        <source>Tape or card behind a hole that keeps the filler in; it carries nothing.</source>
        <translation>Band oder Karton hinter einem Loch, hält den Spachtel drin; trägt nichts.</translation>
    </message>
    <message>
        <source>Plies of a laminate that have come apart; they sound dull when tapped.</source>
        <translation>Gelöste Lagen eines Laminats; beim Klopfen klingt es dumpf.</translation>
    </message>
    <message>
        <source>Where the work left a limit; it stands in the record and is looked at.</source>
        <translation>Wo die Arbeit eine Grenze verließ; steht in der Akte, wird angesehen.</translation>
    </message>
    <message>
        <source>How much warmer the panel is than the dew point of the air round it.</source>
        <translation>Um wie viel das Teil wärmer ist als der Taupunkt der Luft.</translation>
    </message>
    <message>
        <source>The temperature at which water comes out of the air onto a surface.</source>
        <translation>Die Temperatur, bei der Wasser aus der Luft sich niederschlägt.</translation>
    </message>
    <message>
        <source>How sharply a painted surface mirrors; low spots and sand marks blur it.</source>
        <translation>Wie scharf eine lackierte Fläche spiegelt; Mulden und Riefen trüben sie.</translation>
    </message>
    <message>
        <source>The primer that a new metal part was dipped in; thin, hard, often grey or black.</source>
        <translation>Die Tauchgrundierung eines neuen Blechteils; dünn, hart, oft grau oder schwarz.</translation>
    </message>
    <message>
        <source>Two-part primer that keeps water off metal; cured and abraded it carries filler.</source>
        <translation>2K-Grundierung, die Wasser vom Metall hält; ausgehärtet und angeschliffen trägt sie Spachtel.</translation>
    </message>
    <message>
        <source>Primer with acid that bites metal; polyester does not hold on it.</source>
        <translation>Grundierung mit Säure, die Metall angreift; Polyester hält nicht darauf.</translation>
    </message>
    <message>
        <source>The heat of the cure; a thick lump gets hotter than a thin layer.</source>
        <translation>Die Wärme der Härtung; ein dicker Klumpen wird heißer als eine dünne Schicht.</translation>
    </message>
    <message>
        <source>One side of the panel: front is what the customer sees.</source>
        <translation>Eine Seite des Teils: vorn ist, was der Kunde sieht.</translation>
    </message>
    <message>
        <source>An edge sanded out until a hand cannot feel where it ends.</source>
        <translation>Ein Rand, so ausgeschliffen, dass die Hand das Ende nicht spürt.</translation>
    </message>
    <message>
        <source>Paste of polyester with powder or fibre that fills and is sanded.</source>
        <translation>Polyesterpaste mit Pulver oder Faser, die füllt und geschliffen wird.</translation>
    </message>
    <message>
        <source>The wait in which a solvent leaves a surface, until nothing smells or feels cold.</source>
        <translation>Die Wartezeit, in der Lösemittel verdunstet, bis nichts riecht oder kalt ist.</translation>
    </message>
    <message>
        <source>Steel with a skin of zinc; sanded through, it rusts there.</source>
        <translation>Stahl mit Zinkhaut; durchgeschliffen rostet er dort.</translation>
    </message>
    <message>
        <source>When the paste stops flowing and turns to rubber: no spreading from then on.</source>
        <translation>Wenn die Paste nicht mehr fließt und gummiartig wird: ab da kein Auftragen.</translation>
    </message>
    <message>
        <source>The unreinforced outer skin of a moulded laminate.</source>
        <translation>Die äußere, faserlose Haut eines geformten Laminats.</translation>
    </message>
    <message>
        <source>From hardener in to the gel; it follows from lot, warmth and share of hardener.</source>
        <translation>Vom Härter bis zum Gel; sie folgt aus Charge, Wärme und Härteranteil.</translation>
    </message>
    <message>
        <source>The number of an abrasive paper: the higher, the finer.</source>
        <translation>Die Zahl eines Schleifpapiers: je höher, desto feiner.</translation>
    </message>
    <message>
        <source>A thin veil over the repair that stays in low spots while sanding.</source>
        <translation>Ein dünner Schleier, der beim Schleifen in Mulden stehen bleibt.</translation>
    </message>
    <message>
        <source>Glass cloth or mat laid by hand in resin; the cloth shows at a broken edge.</source>
        <translation>Glasgewebe oder Matte, von Hand in Harz gelegt; an der Bruchkante zu sehen.</translation>
    </message>
    <message>
        <source>The paste with peroxide that starts the cure; more of it is not harder.</source>
        <translation>Die Paste mit Peroxid, die die Härtung startet; mehr macht nicht härter.</translation>
    </message>
    <message>
        <source>One layer of filler that is laid, cures and is sanded before the next.</source>
        <translation>Eine Spachtelschicht, die liegt, härtet und vor der nächsten geschliffen wird.</translation>
    </message>
    <message>
        <source>What was made at one time; its number stands on the package.</source>
        <translation>Was auf einmal hergestellt wurde; die Nummer steht auf dem Gebinde.</translation>
    </message>
    <message>
        <source>When edge or sand marks of the repair show through the paint later.</source>
        <translation>Wenn Rand oder Riefen der Reparatur später im Lack zu sehen sind.</translation>
    </message>
    <message>
        <source>What works in the hardener; it burns eyes and feeds fire.</source>
        <translation>Was im Härter wirkt; es verätzt Augen und nährt Feuer.</translation>
    </message>
    <message>
        <source>A small open bubble in the sanded surface.</source>
        <translation>Eine kleine offene Blase in der geschliffenen Fläche.</translation>
    </message>
    <message>
        <source>How long a batch can be worked on the board.</source>
        <translation>Wie lange ein Ansatz auf dem Brett zu verarbeiten ist.</translation>
    </message>
    <message>
        <source>The roughness that abrading leaves, for the filler to bite.</source>
        <translation>Die Rauheit nach dem Schleifen, in der der Spachtel greift.</translation>
    </message>
    <message>
        <source>The round of filler laid on the board; its width is the measure.</source>
        <translation>Der rund gelegte Spachtel auf dem Brett; seine Breite ist das Maß.</translation>
    </message>
    <message>
        <source>The firm support of the paper that keeps a surface flat.</source>
        <translation>Die feste Auflage des Papiers, die eine Fläche eben hält.</translation>
    </message>
    <message>
        <source>To dull a surface lightly, so that the next coat holds.</source>
        <translation>Eine Fläche leicht matt schleifen, damit die nächste Schicht hält.</translation>
    </message>
    <message>
        <source>What the maker says of a product, as the program reads it.</source>
        <translation>Was der Hersteller von einem Produkt sagt, wie es das Programm liest.</translation>
    </message>
    <message>
        <source>The thin last coat of finishing filler over lift and edge.</source>
        <translation>Die dünne letzte Schicht Feinspachtel über Lage und Rand.</translation>
    </message>
    <message>
        <source>Sheet moulding compound: short glass fibre pressed hot in a mould, flecks at the broken edge.</source>
        <translation>Heiß gepresste Formmasse mit kurzer Glasfaser; Sprenkel an der Bruchkante.</translation>
    </message>
    <message>
        <source>A hole at the tip of a crack, so that it runs no further.</source>
        <translation>Ein Loch am Ende eines Risses, damit er nicht weiterläuft.</translation>
    </message>
    <message>
        <source>The sticky film that air leaves on a cured face; it clogs paper.</source>
        <translation>Der klebrige Film, der an der Luft auf der Oberfläche bleibt; er setzt Papier zu.</translation>
    </message>
    <message>
        <source>One cloth wipes the solvent on, a clean dry one takes it off before it dries.</source>
        <translation>Ein Tuch trägt Lösemittel auf, ein sauberes trockenes nimmt es ab, bevor es trocknet.</translation>
    </message>
    <message>
        <source>Two panels joined by welding; only a solid, dressed one is ever filled over.</source>
        <translation>Zwei verschweißte Teile; nur eine volle, verschliffene Naht wird überspachtelt.</translation>
    </message>
    <message>
        <source>Working resin in until every fibre is wet and no white is left.</source>
        <translation>Harz einarbeiten, bis jede Faser nass und kein Weiß mehr da ist.</translation>
    </message>
</context>
<context>
    <name>Hands</name>
    <message>
        <source>Hands: job %1 is still being spread.</source>
        <translation>Hände: bei Auftrag %1 wird noch aufgetragen.</translation>
    </message>
    <message>
        <source>Hands: job %1 needs its edges cleared now.</source>
        <translation>Hände: bei Auftrag %1 jetzt Ränder säubern.</translation>
    </message>
    <message>
        <source>Hands: job %1 needs its edges cleared in %2.</source>
        <translation>Hände: bei Auftrag %1 in %2 Ränder säubern.</translation>
    </message>
    <message>
        <source>Hands: job %1 sands easily only until %2.</source>
        <translation>Hände: Auftrag %1 nur bis %2 leicht schleifbar.</translation>
    </message>
    <message>
        <source>spread it</source>
        <translation>auftragen</translation>
    </message>
    <message>
        <source>clear the edges</source>
        <translation>Ränder säubern</translation>
    </message>
    <message>
        <source>sand it</source>
        <translation>schleifen</translation>
    </message>
    <message>
        <source>Hold this batch back until %1: %2 to go.</source>
        <translation>Diesen Ansatz bis %1 zurückhalten: noch %2.</translation>
    </message>
    <message>
        <source>Two jobs need hands now: first job %1, %2, then job %3.</source>
        <translation>Zwei Aufträge brauchen Hände: erst %1, %2, dann %3.</translation>
    </message>
    <message>
        <source>In %1 two jobs need hands: first job %2, %3, then job %4.</source>
        <extracomment>%1 is a time, mm:ss; %2 and %4 job numbers; %3 what to do with the first</extracomment>
        <translation>In %1 brauchen zwei Aufträge Hände: erst %2, %3, dann %4.</translation>
    </message>
    <message>
        <source>two jobs need hands, turn %1</source>
        <translation>zwei Aufträge brauchen Hände, dieser als %1.</translation>
    </message>
    <message>
        <source>Too hot for this lift: %1 of %2. Let the panel cool and read again.</source>
        <translation>Zu heiß für diese Lage: %1, Grenze %2. Teil abkühlen lassen, neu ablesen.</translation>
    </message>
    <message>
        <source>Too thick for this product: %1 of %2. Choose the product planned with.</source>
        <translation>Zu dick für dieses Produkt: %1, Grenze %2. Das geplante Produkt nehmen.</translation>
    </message>
    <message>
        <source>The cure of this product cannot be worked out. Choose the product planned with.</source>
        <translation>Das Härten dieses Produkts ist nicht zu berechnen. Das geplante Produkt nehmen.</translation>
    </message>
    <message>
        <source>Not this product here: %1 Choose the product planned with.</source>
        <translation>Dieses Produkt hier nicht: %1 Das geplante Produkt nehmen.</translation>
    </message>
</context>
<context>
    <name>Harm</name>
    <message>
        <source>Polyester filler (styrene)</source>
        <translation>Polyesterspachtel (Styrol)</translation>
    </message>
    <message>
        <source>Hardener paste (peroxide)</source>
        <translation>Härterpaste (Peroxid)</translation>
    </message>
    <message>
        <source>Mixed filler left over</source>
        <translation>Angemischter Rest</translation>
    </message>
    <message>
        <source>Acetone</source>
        <translation>Aceton</translation>
    </message>
    <message>
        <source>Wax and grease remover</source>
        <translation>Silikonentferner</translation>
    </message>
    <message>
        <source>Glass and laminate dust</source>
        <translation>Glas- und Laminatstaub</translation>
    </message>
    <message>
        <source>Filler dust</source>
        <translation>Spachtelstaub</translation>
    </message>
    <message>
        <source>Old paint dust (lead, chromate)</source>
        <translation>Altlackstaub (Blei, Chromat)</translation>
    </message>
    <message>
        <source>Steel dust</source>
        <translation>Stahlstaub</translation>
    </message>
    <message>
        <source>Aluminium dust</source>
        <translation>Aluminiumstaub</translation>
    </message>
    <message>
        <source>Compressed air</source>
        <translation>Druckluft</translation>
    </message>
    <message>
        <source>Lay-up resin (styrene)</source>
        <translation>Laminierharz (Styrol)</translation>
    </message>
    <message>
        <source>Lay-up catalyst (peroxide)</source>
        <translation>Härter für Laminierharz (Peroxid)</translation>
    </message>
    <message>
        <source>Accelerator</source>
        <translation>Beschleuniger</translation>
    </message>
    <message>
        <source>Guide coat (spray can)</source>
        <translation>Kontrollschwarz (Spraydose)</translation>
    </message>
    <message>
        <source>Nitrile against splashes; styrene comes through: change when wet.</source>
        <translation>Nitril gegen Spritzer; Styrol geht durch: nass gleich wechseln.</translation>
    </message>
    <message>
        <source>Nitrile; change at once when wet.</source>
        <translation>Nitril; nass sofort wechseln.</translation>
    </message>
    <message>
        <source>Butyl rubber, or what its sheet names; thin nitrile lasts minutes.</source>
        <translation>Butyl, oder was das Datenblatt nennt; dünnes Nitril hält Minuten.</translation>
    </message>
    <message>
        <source>Heat-resistant gloves for a hot lump.</source>
        <translation>Hitzefeste Handschuhe für einen heißen Klumpen.</translation>
    </message>
    <message>
        <source>Against edges and fibres; nothing loose near a rotating tool.</source>
        <translation>Gegen Kanten und Fasern; nichts Loses am laufenden Werkzeug.</translation>
    </message>
    <message>
        <source>Thin gloves keep the dust off the skin.</source>
        <translation>Dünne Handschuhe halten den Staub von der Haut.</translation>
    </message>
    <message>
        <source>None for the air itself; goggles and ear protection.</source>
        <translation>Keine für die Luft selbst; Schutzbrille und Gehörschutz.</translation>
    </message>
    <message>
        <source>Extraction first; else a mask with organic vapour filters.</source>
        <translation>Erst Absaugung; sonst Maske mit Filtern gegen organische Dämpfe.</translation>
    </message>
    <message>
        <source>None for the paste alone; the filler beside it has its own.</source>
        <translation>Keine für die Paste allein; der Spachtel daneben hat seine.</translation>
    </message>
    <message>
        <source>Extraction first, and a particle mask (P2, N95 or better).</source>
        <translation>Erst Absaugung, dazu Partikelmaske (P2, N95 oder besser).</translation>
    </message>
    <message>
        <source>Extraction first, and a P3 or P100 particle filter.</source>
        <translation>Erst Absaugung, dazu Partikelfilter P3 oder P100.</translation>
    </message>
    <message>
        <source>Skin: soap and water. Eyes: rinse long. Dizzy: fresh air, doctor.</source>
        <translation>Haut: Wasser und Seife. Augen: lange spülen. Schwindel: frische Luft, Arzt.</translation>
    </message>
    <message>
        <source>Eyes: rinse at once, 15 minutes, lids open; doctor. Skin: wash off.</source>
        <translation>Augen: sofort spülen, 15 Minuten, Lider offen; Arzt. Haut: abwaschen.</translation>
    </message>
    <message>
        <source>Burn: cool under running water, 20 minutes; doctor.</source>
        <translation>Verbrennung: 20 Minuten unter fließendem Wasser kühlen; Arzt.</translation>
    </message>
    <message>
        <source>Swallowed: no vomiting, doctor at once. Skin: soap and water.</source>
        <translation>Verschluckt: kein Erbrechen, sofort Arzt. Haut: Wasser und Seife.</translation>
    </message>
    <message>
        <source>Eyes: rinse, do not rub. Skin: cool water, then wash.</source>
        <translation>Augen: spülen, nicht reiben. Haut: kühles Wasser, dann waschen.</translation>
    </message>
    <message>
        <source>Eyes: do not rub; a splinter that stays is the doctor’s.</source>
        <translation>Augen: nicht reiben; ein Splitter, der bleibt, ist Sache des Arztes.</translation>
    </message>
    <message>
        <source>Wash hands and face before you eat, drink or smoke. Unwell: doctor.</source>
        <translation>Vor Essen, Trinken, Rauchen Hände und Gesicht waschen. Unwohl: Arzt.</translation>
    </message>
    <message>
        <source>Air under the skin: hospital at once, however small it looks.</source>
        <translation>Luft unter der Haut: sofort ins Krankenhaus, wie klein es auch aussieht.</translation>
    </message>
    <message>
        <source>Let it cure, spread thin on metal. Uncured it is hazardous waste.</source>
        <translation>Dünn auf Metall aushärten lassen. Unausgehärtet ist es Sondermüll.</translation>
    </message>
    <message>
        <source>Never into the bin, never onto sawdust: apart, as its sheet says.</source>
        <translation>Nie in den Müll, nie auf Sägemehl: getrennt, wie das Datenblatt sagt.</translation>
    </message>
    <message>
        <source>Thin on metal or under water, watched till cold; never the bin.</source>
        <translation>Dünn auf Metall oder unter Wasser, bis kalt im Blick; nie in den Müll.</translation>
    </message>
    <message>
        <source>Rags into the lidded metal can; nothing down the drain.</source>
        <translation>Lappen in den Metallbehälter mit Deckel; nichts in den Abfluss.</translation>
    </message>
    <message>
        <source>A bag of its own, as hazardous waste.</source>
        <translation>Eigener Beutel, als Sondermüll.</translation>
    </message>
    <message>
        <source>Aluminium and steel dust apart and dry: own extractors, own cans.</source>
        <translation>Aluminium- und Stahlstaub getrennt und trocken: eigene Absaugung, eigene Behälter.</translation>
    </message>
    <message>
        <source>Nothing is left over.</source>
        <translation>Es bleibt nichts übrig.</translation>
    </message>
    <message>
        <source>A container of its own, far from every peroxide.</source>
        <translation>Eigener Behälter, weit weg von jedem Peroxid.</translation>
    </message>
    <message>
        <source>Empty cans: never pierced, never into a fire.</source>
        <translation>Leere Dosen: nie anstechen, nie ins Feuer.</translation>
    </message>
    <message>
        <source>Extraction on first.</source>
        <translation>Zuerst Absaugung an.</translation>
    </message>
    <message>
        <source>No lamp, no grinder, no spark.</source>
        <translation>Kein Strahler, Schleifer, Funke.</translation>
    </message>
    <message>
        <source>Fresh air.</source>
        <translation>Frische Luft.</translation>
    </message>
    <message>
        <source>Peroxide and accelerator: never together.</source>
        <translation>Peroxid und Beschleuniger: nie zusammen.</translation>
    </message>
    <message>
        <source>Never at skin.</source>
        <translation>Nie auf die Haut.</translation>
    </message>
    <message>
        <source>What is left over gets hot.</source>
        <translation>Reste werden heiß.</translation>
    </message>
    <message>
        <source>Before the first stroke, not after.</source>
        <translation>Vor dem ersten Schliff, nicht danach.</translation>
    </message>
    <message>
        <source>Until all of it has flashed off, in the hollows too.</source>
        <translation>Bis alles abgelüftet ist, auch in Hohlräumen.</translation>
    </message>
    <message>
        <source>Extraction where there is vapour.</source>
        <translation>Absaugung, wo Dämpfe sind.</translation>
    </message>
    <message>
        <source>Not in one cup, not on one shelf: it can go off.</source>
        <translation>Nicht in einem Becher, nicht in einem Regal: es kann hochgehen.</translation>
    </message>
    <message>
        <source>Below 30 psi (2 bar), chips guarded: 29 CFR 1910.242(b).</source>
        <translation>Unter 30 psi (2 bar), Splitterschutz: 29 CFR 1910.242(b).</translation>
    </message>
    <message>
        <source>Thin on metal, or under water; never into the bin.</source>
        <translation>Dünn auf Metall oder unter Wasser; nie in den Müll.</translation>
    </message>
    <message>
        <source>Danger</source>
        <translation>Gefahr</translation>
    </message>
    <message>
        <source>Warning</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <source>exploding bomb</source>
        <translation>explodierende Bombe</translation>
    </message>
    <message>
        <source>flame</source>
        <translation>Flamme</translation>
    </message>
    <message>
        <source>flame over circle</source>
        <translation>Flamme über einem Kreis</translation>
    </message>
    <message>
        <source>gas cylinder</source>
        <translation>Gasflasche</translation>
    </message>
    <message>
        <source>corrosion</source>
        <translation>Ätzwirkung</translation>
    </message>
    <message>
        <source>skull and crossbones</source>
        <translation>Totenkopf mit gekreuzten Knochen</translation>
    </message>
    <message>
        <source>exclamation mark</source>
        <translation>Ausrufezeichen</translation>
    </message>
    <message>
        <source>health hazard</source>
        <translation>Gesundheitsgefahr</translation>
    </message>
    <message>
        <source>environment</source>
        <translation>Umwelt</translation>
    </message>
    <message>
        <source>In the extractor’s bag, closed; extract first, never sweep.</source>
        <translation>Im Beutel der Absaugung, verschlossen; erst absaugen, nie kehren.</translation>
    </message>
</context>
<context>
    <name>HarmScreen</name>
    <message>
        <source>Hazards</source>
        <translation>Gefahren</translation>
    </message>
</context>
<context>
    <name>Headless</name>
    <message>
        <source>Dew point, margin, and whether filling may start.</source>
        <translation>Taupunkt, Abstand und ob das Spachteln beginnen darf.</translation>
    </message>
    <message>
        <source>Air temperature, −30 to 60 °C.</source>
        <translation>Lufttemperatur, −30 bis 60 °C.</translation>
    </message>
    <message>
        <source>Relative humidity, above 0 to 100 %.</source>
        <translation>Relative Luftfeuchte, über 0 bis 100 %.</translation>
    </message>
    <message>
        <source>Panel temperature, −30 to 100 °C.</source>
        <translation>Teiltemperatur, −30 bis 100 °C.</translation>
    </message>
    <message>
        <source>--%1: given %2 times; allowed is once</source>
        <translation>--%1: %2-mal angegeben; erlaubt ist einmal</translation>
    </message>
    <message>
        <source>--%1: must not be empty; it needs %2</source>
        <translation>--%1: darf nicht leer sein; nötig ist %2</translation>
    </message>
    <message>
        <source>--%1: missing; it needs %2</source>
        <translation>--%1: fehlt; nötig ist %2</translation>
    </message>
    <message>
        <source>FILE: missing; it is a file, or - for standard input</source>
        <translation>FILE: fehlt; eine Datei, oder - für die Standardeingabe</translation>
    </message>
    <message>
        <source>FILE: must not be empty; it is a file, or - for standard input</source>
        <translation>FILE: darf nicht leer sein; eine Datei, oder - für die Standardeingabe</translation>
    </message>
    <message>
        <source>&apos;%1&apos;: one word too many</source>
        <translation>&apos;%1&apos;: ein Wort zu viel</translation>
    </message>
    <message>
        <source>Language of the texts: %1; otherwise en.</source>
        <translation>Sprache der Texte: %1; sonst en.</translation>
    </message>
    <message>
        <source>This help.</source>
        <translation>Diese Hilfe.</translation>
    </message>
    <message>
        <source>The version.</source>
        <translation>Die Version.</translation>
    </message>
    <message>
        <source>&apos;%1&apos;: no such option; --help lists them</source>
        <translation>&apos;%1&apos;: keine solche Option; --help nennt sie</translation>
    </message>
    <message>
        <source>&apos;%1&apos;: its value is missing</source>
        <translation>&apos;%1&apos;: der Wert dazu fehlt</translation>
    </message>
    <message>
        <source>Usage: %1</source>
        <translation>Aufruf: %1</translation>
    </message>
    <message>
        <source>Without a command the bench opens.</source>
        <translation>Ohne Befehl öffnet sich der Arbeitsplatz.</translation>
    </message>
    <message>
        <source>The log that the bench opens.</source>
        <translation>Protokoll für den Arbeitsplatz.</translation>
    </message>
    <message>
        <source>A window of this size instead of the full screen.</source>
        <translation>Ein Fenster dieser Größe statt des ganzen Bildschirms.</translation>
    </message>
    <message>
        <source>standard output cannot be written</source>
        <translation>Standardausgabe ist nicht schreibbar</translation>
    </message>
    <message>
        <source>&apos;%1&apos;: no such command; there is: %2</source>
        <translation>&apos;%1&apos;: kein solcher Befehl; es gibt: %2</translation>
    </message>
    <message>
        <source>A defect of the program: %1</source>
        <translation>Ein Fehler des Programms: %1</translation>
    </message>
    <message>
        <source>FILE: &apos;%1&apos; cannot be read: %2</source>
        <translation>FILE: &apos;%1&apos; ist nicht lesbar: %2</translation>
    </message>
    <message>
        <source>%1: it breaks here: %2: %3</source>
        <translation>%1: es bricht hier: %2: %3</translation>
    </message>
    <message>
        <source>a name that no file has yet</source>
        <translation>ein Name, den noch keine Datei hat</translation>
    </message>
    <message>
        <source>--to: &apos;%1&apos; cannot be written: %2</source>
        <translation>--to: &apos;%1&apos; lässt sich nicht schreiben: %2</translation>
    </message>
    <message>
        <source>Whether a log holds, and the first place where it breaks.</source>
        <translation>Ob ein Protokoll stimmt, und wo es zuerst bricht.</translation>
    </message>
    <message>
        <source>The log.</source>
        <translation>Das Protokoll.</translation>
    </message>
    <message>
        <source>A head that the chain must hold: 64 hexadecimal digits.</source>
        <translation>Ein Kopf, den die Kette enthalten muss: 64 Hexadezimalziffern.</translation>
    </message>
    <message>
        <source>A consistent copy of a log, verified after writing.</source>
        <translation>Eine stimmige Kopie eines Protokolls, nach dem Schreiben geprüft.</translation>
    </message>
    <message>
        <source>The log; the program may be running on it.</source>
        <translation>Das Protokoll; das Programm darf darauf laufen.</translation>
    </message>
    <message>
        <source>The copy; a file that is there is never overwritten.</source>
        <translation>Die Kopie; eine vorhandene Datei wird nie überschrieben.</translation>
    </message>
    <message>
        <source>Bead and both masses for a puddle, or puddle and bead for a mass.</source>
        <translation>Härterstrang und beide Massen zu einem Kreis, oder Kreis und Strang zu einer Masse.</translation>
    </message>
    <message>
        <source>The puddle across, 5 to 500 mm.</source>
        <translation>Durchmesser des Kreises, 5 bis 500 mm.</translation>
    </message>
    <message>
        <source>The mass of filler instead, 0.1 to 20000 g.</source>
        <translation>Stattdessen die Spachtelmasse, 0,1 bis 20000 g.</translation>
    </message>
    <message>
        <source>The product sheet, by id or class; otherwise mixed strand.</source>
        <translation>Das Produktblatt, nach Kennung oder Klasse; sonst Mischfaser.</translation>
    </message>
    <message>
        <source>Plans the repair that FILE describes.</source>
        <translation>Plant die Reparatur, die FILE beschreibt.</translation>
    </message>
    <message>
        <source>At %1 s the reaction runs away faster than time can be told apart.</source>
        <translation>Bei %1 s geht die Reaktion schneller durch, als Zeit zu unterscheiden ist.</translation>
    </message>
    <message>
        <source>At %1 s the steps allowed were used up.</source>
        <translation>Bei %1 s waren die erlaubten Schritte aufgebraucht.</translation>
    </message>
    <message>
        <source>Solves the cure case in FILE.</source>
        <translation>Löst den Härtungsfall in FILE.</translation>
    </message>
    <message>
        <source>--pdf: &apos;%1&apos; cannot be written: %2</source>
        <translation>--pdf: &apos;%1&apos; lässt sich nicht schreiben: %2</translation>
    </message>
    <message>
        <source>One day&apos;s repairs with their records, as JSON, CSV or on paper.</source>
        <translation>Die Reparaturen eines Tages mit ihren Akten, als JSON, CSV oder auf Papier.</translation>
    </message>
    <message>
        <source>JSON on standard output: the whole records.</source>
        <translation>JSON auf Standardausgabe: die ganzen Akten.</translation>
    </message>
    <message>
        <source>CSV on standard output: one row a repair.</source>
        <translation>CSV auf Standardausgabe: eine Zeile je Reparatur.</translation>
    </message>
    <message>
        <source>A PDF; a file that is there is never overwritten.</source>
        <translation>Ein PDF; eine vorhandene Datei wird nie überschrieben.</translation>
    </message>
    <message>
        <source>Of the PDF: a4 or letter; otherwise a4.</source>
        <translation>Im PDF: a4 oder letter; sonst a4.</translation>
    </message>
    <message>
        <source>Of the PDF: metric or us; otherwise metric.</source>
        <translation>Im PDF: metric oder us; sonst metric.</translation>
    </message>
    <message>
        <source>%1: refused, %2</source>
        <translation>%1: verweigert, %2</translation>
    </message>
    <message>
        <source>; the next PIN is looked at in %1 s</source>
        <translation>; die nächste PIN wird in %1 s geprüft</translation>
    </message>
    <message>
        <source>the refusal could not be written into the log</source>
        <translation>die Verweigerung ließ sich nicht ins Protokoll schreiben</translation>
    </message>
    <message>
        <source>A supervisor&apos;s act on a log that no bench has open; the PIN on standard input.</source>
        <translation>Eine Handlung des Meisters an einem Protokoll, das kein Platz offen hat; die PIN auf der Standardeingabe.</translation>
    </message>
    <message>
        <source>Who does it.</source>
        <translation>Wer es tut.</translation>
    </message>
    <message>
        <source>Of override: the stop.</source>
        <translation>Zu override: der Halt.</translation>
    </message>
    <message>
        <source>Of correct: the entry that is put right.</source>
        <translation>Zu correct: der Eintrag, der berichtigt wird.</translation>
    </message>
    <message>
        <source>Of forget: the product&apos;s sheet.</source>
        <translation>Zu forget: das Blatt des Produkts.</translation>
    </message>
    <message>
        <source>Of forget: the hardener&apos;s lot.</source>
        <translation>Zu forget: die Charge des Härters.</translation>
    </message>
    <message>
        <source>%1: cannot be written</source>
        <translation>%1: lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>pin: allowed are %1 to %2 digits, neither all alike nor in their order</source>
        <translation>pin: erlaubt sind %1 bis %2 Ziffern, weder alle gleich noch der Reihe nach</translation>
    </message>
    <message>
        <source>bench %1: the two logs tell different things from entry %2 on; its entries were left as they are here</source>
        <translation>Platz %1: ab Eintrag %2 erzählen die beiden Protokolle Verschiedenes; seine Einträge blieben, wie sie hier sind</translation>
    </message>
    <message>
        <source>--folder: &apos;%1&apos; cannot be written: %2</source>
        <translation>--folder: &apos;%1&apos; lässt sich nicht schreiben: %2</translation>
    </message>
    <message>
        <source>not all of the log that was there could be taken along</source>
        <translation>nicht alles aus dem vorherigen Protokoll konnte mitgenommen werden</translation>
    </message>
    <message>
        <source>%1 entries do not follow on the rest; they are in %2</source>
        <translation>%1 Einträge schließen nicht an die übrigen an; sie stehen in %2</translation>
    </message>
    <message>
        <source>A verified backup into a folder; the oldest there are given up.</source>
        <translation>Eine geprüfte Sicherung in einen Ordner; die ältesten dort fallen weg.</translation>
    </message>
    <message>
        <source>The folder: a stick, a share.</source>
        <translation>Der Ordner: ein Stick, eine Freigabe.</translation>
    </message>
    <message>
        <source>How many backups stay: 2 to 1000, 14 if not told.</source>
        <translation>Wie viele Sicherungen bleiben: 2 bis 1000, ohne Angabe 14.</translation>
    </message>
    <message>
        <source>Brings another bench’s log in; a second time adds nothing.</source>
        <translation>Holt das Protokoll eines anderen Platzes herein; ein zweites Mal fügt nichts hinzu.</translation>
    </message>
    <message>
        <source>The log that takes in; no bench has it open.</source>
        <translation>Das Protokoll, das aufnimmt; kein Platz hat es offen.</translation>
    </message>
    <message>
        <source>The log that is brought in; it is only read.</source>
        <translation>Das Protokoll, das hereingeholt wird; es wird nur gelesen.</translation>
    </message>
    <message>
        <source>Only says what would be.</source>
        <translation>Sagt nur, was geschähe.</translation>
    </message>
    <message>
        <source>A backup in the place of the log; the PIN on standard input, if one is set.</source>
        <translation>Eine Sicherung an die Stelle des Protokolls; die PIN auf der Standardeingabe, falls eine gesetzt ist.</translation>
    </message>
    <message>
        <source>The log; it is kept in a folder beside.</source>
        <translation>Das Protokoll; es bleibt in einem Ordner daneben.</translation>
    </message>
    <message>
        <source>The backup.</source>
        <translation>Die Sicherung.</translation>
    </message>
    <message>
        <source>What can be read of a damaged log, as a new one.</source>
        <translation>Was von einem beschädigten Protokoll lesbar ist, als neues.</translation>
    </message>
    <message>
        <source>The damaged log; it is only read.</source>
        <translation>Das beschädigte Protokoll; es wird nur gelesen.</translation>
    </message>
    <message>
        <source>The new log; a file that is there is never overwritten.</source>
        <translation>Das neue Protokoll; eine vorhandene Datei wird nie überschrieben.</translation>
    </message>
    <message>
        <source>a folder that is there</source>
        <translation>ein Ordner, den es gibt</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; cannot be written: %3</source>
        <translation>%1: &apos;%2&apos; lässt sich nicht schreiben: %3</translation>
    </message>
    <message>
        <source>The day, by the bench&apos;s own clock; or today or yesterday, by this machine&apos;s.</source>
        <translation>Der Tag nach der Uhr des Platzes; oder today oder yesterday nach der dieses Rechners.</translation>
    </message>
    <message>
        <source>All three as day-YYYY-MM-DD.pdf, .csv and .json in a folder; none where one of them is there already.</source>
        <translation>Alle drei als day-YYYY-MM-DD.pdf, .csv und .json in einen Ordner; keine, wenn es eine davon schon gibt.</translation>
    </message>
    <message>
        <source>sign_off, return, override, correct, forget or new_pin.</source>
        <translation>sign_off, return, override, correct, forget oder new_pin.</translation>
    </message>
    <message>
        <source>Of sign_off, return, override, correct: the repair.</source>
        <translation>Zu sign_off, return, override, correct: die Reparatur.</translation>
    </message>
    <message>
        <source>Of correct: what is right; of return: what is to be mended.</source>
        <translation>Zu correct: was richtig ist; zu return: was zu beheben ist.</translation>
    </message>
    <message>
        <source>Of return, override and forget: why.</source>
        <translation>Zu return, override und forget: warum.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>The limits are the product sheet’s; where it is silent, the shop’s own assumptions.</source>
        <translation>Es gelten die Grenzen des Produktblatts; schweigt es, die Annahmen der Werkstatt.</translation>
    </message>
    <message>
        <source>The decision table says what is filled with what; each answer carries its reason.</source>
        <translation>Die Entscheidungstabelle sagt, was womit gespachtelt wird, jeweils mit Grund.</translation>
    </message>
    <message>
        <source>The limits are the shop’s own and stand in bench set-up with their reason.</source>
        <translation>Die Grenzen sind die der Werkstatt und stehen mit Grund unter „Platz einrichten“.</translation>
    </message>
    <message>
        <source>The safety data sheet says what protects you; it comes before this program.</source>
        <translation>Das Sicherheitsdatenblatt sagt, was schützt; es geht diesem Programm vor.</translation>
    </message>
    <message>
        <source>The vehicle maker’s repair manual, local codes and licensed practice come first.</source>
        <translation>Reparaturanleitung des Fahrzeugherstellers, örtliche Vorschriften und Fachkunde gehen vor.</translation>
    </message>
    <message>
        <source>What was tapped stays in the log; a mistake is put right by a new entry.</source>
        <translation>Angetipptes bleibt im Protokoll; ein Fehler wird durch einen neuen Eintrag berichtigt.</translation>
    </message>
    <message>
        <source>Dew margin and range stand in bench set-up; a product sheet may ask for more.</source>
        <translation>Taupunktabstand und Bereich stehen unter „Platz einrichten“; ein Blatt kann mehr verlangen.</translation>
    </message>
    <message>
        <source>Times come from sheet, air, panel and lot; what you see on the filler wins.</source>
        <translation>Zeiten folgen aus Blatt, Luft, Teil und Charge; was am Spachtel zu sehen ist, gilt.</translation>
    </message>
    <message>
        <source>Nothing of practice goes into the log of the shop.</source>
        <translation>Nichts vom Üben geht ins Protokoll der Werkstatt.</translation>
    </message>
    <message>
        <source>Where the bench stands</source>
        <translation>Wie es am Platz steht</translation>
    </message>
    <message>
        <source>Every open repair has a card here; the running ones come first.</source>
        <translation>Jede offene Reparatur hat hier ihre Karte; die laufenden stehen vorn.</translation>
    </message>
    <message>
        <source>Tap a card to go on at its next step, or take in a panel.</source>
        <translation>Eine Karte antippen und beim nächsten Schritt weitermachen, oder ein Teil annehmen.</translation>
    </message>
    <message>
        <source>With nobody named at the bench, the log cannot say who did it.</source>
        <translation>Steht niemand am Platz, weiß das Protokoll nicht, wer es war.</translation>
    </message>
    <message>
        <source>Taking in a panel</source>
        <translation>Ein Teil annehmen</translation>
    </message>
    <message>
        <source>A repair begins with the job number and the name of the panel.</source>
        <translation>Eine Reparatur beginnt mit Auftragsnummer und Namen des Teils.</translation>
    </message>
    <message>
        <source>Key the number or scan it, then tap the panel.</source>
        <translation>Nummer tippen oder scannen, dann das Teil antippen.</translation>
    </message>
    <message>
        <source>Two panels of one job are two repairs; one name for both mixes them up.</source>
        <translation>Zwei Teile eines Auftrags sind zwei Reparaturen; ein Name für beide bringt sie durcheinander.</translation>
    </message>
    <message>
        <source>Who is at the bench</source>
        <translation>Wer am Platz steht</translation>
    </message>
    <message>
        <source>Every act in the log carries the name that stands here.</source>
        <translation>Jeder Eintrag im Protokoll trägt den Namen, der hier steht.</translation>
    </message>
    <message>
        <source>Tap your name when you take the bench over.</source>
        <translation>Den eigenen Namen antippen, wenn man den Platz übernimmt.</translation>
    </message>
    <message>
        <source>A name left over from the last shift signs for work it did not do.</source>
        <translation>Ein Name von der letzten Schicht steht für fremde Arbeit.</translation>
    </message>
    <message>
        <source>What the panel is made of</source>
        <translation>Woraus das Teil ist</translation>
    </message>
    <message>
        <source>The material decides whether it is filled, and with which filler.</source>
        <translation>Der Werkstoff entscheidet, ob gespachtelt wird und womit.</translation>
    </message>
    <message>
        <source>Look at the broken edge and the rear face; use what tells it for sure.</source>
        <translation>Bruchkante und Rückseite ansehen; nehmen, was es sicher zeigt.</translation>
    </message>
    <message>
        <source>Paint hides it. Guessed wrong, the filler lets go later.</source>
        <translation>Lack verdeckt es. Falsch geraten, löst sich der Spachtel später.</translation>
    </message>
    <message>
        <source>What the damage is</source>
        <translation>Was der Schaden ist</translation>
    </message>
    <message>
        <source>Kind of damage, weld or bond decide between filling and another repair.</source>
        <translation>Schaden, Naht oder Klebung entscheiden zwischen Spachteln und anderer Reparatur.</translation>
    </message>
    <message>
        <source>Look from both faces where you can; a crack often runs on behind.</source>
        <translation>Wenn möglich von beiden Seiten ansehen; ein Riss läuft hinten oft weiter.</translation>
    </message>
    <message>
        <source>A joint is no damage: filler over it cracks.</source>
        <translation>Eine Verbindung ist kein Schaden: Spachtel darauf reißt.</translation>
    </message>
    <message>
        <source>How large it is</source>
        <translation>Wie groß er ist</translation>
    </message>
    <message>
        <source>From the size follow the opening, the lifts and the masses of the plan.</source>
        <translation>Aus der Größe folgen Öffnung, Lagen und Massen des Plans.</translation>
    </message>
    <message>
        <source>Measure the damage itself, not the bevel; the program adds that.</source>
        <translation>Den Schaden selbst messen, nicht die Fase; die rechnet das Programm dazu.</translation>
    </message>
    <message>
        <source>Measured too small, there is too little in the puddle and you mix again.</source>
        <translation>Zu klein gemessen, ist der Kreis zu klein und es wird noch einmal angesetzt.</translation>
    </message>
    <message>
        <source>What lies on it, and where it is</source>
        <translation>Was darauf liegt und wo es ist</translation>
    </message>
    <message>
        <source>Filler holds on sound, bare, dry material only; the place must carry no load.</source>
        <translation>Spachtel hält nur auf gesundem, blankem, trockenem Grund, der keine Last trägt.</translation>
    </message>
    <message>
        <source>Say what is there now; the plan takes it off in its steps.</source>
        <translation>Sagen, was jetzt da ist; der Plan nimmt es in seinen Schritten ab.</translation>
    </message>
    <message>
        <source>Damp or a soft coat below stays there, and the repair comes off.</source>
        <translation>Feuchte oder eine weiche Schicht bleibt darunter, und die Reparatur löst sich.</translation>
    </message>
    <message>
        <source>Air, panel and humidity</source>
        <translation>Luft, Teil und Feuchte</translation>
    </message>
    <message>
        <source>The reading says whether dew may form and how fast the filler gels.</source>
        <translation>Die Ablesung sagt, ob sich Tau bilden kann und wie schnell der Spachtel geliert.</translation>
    </message>
    <message>
        <source>Probe on the panel beside the damage; wait until it stands still.</source>
        <translation>Fühler neben dem Schaden auf das Teil; warten, bis er steht.</translation>
    </message>
    <message>
        <source>A reading of this morning says nothing about now.</source>
        <translation>Eine Ablesung von heute früh sagt nichts über jetzt.</translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>Der Plan</translation>
    </message>
    <message>
        <source>It says how many lifts and batches, with what, and how long it takes.</source>
        <translation>Er sagt, wie viele Lagen und Ansätze, womit und wie lange.</translation>
    </message>
    <message>
        <source>Read the reasons, look at the section, then accept it.</source>
        <translation>Gründe lesen, Schnitt ansehen, dann annehmen.</translation>
    </message>
    <message>
        <source>A wrong answer makes a wrong plan: change the answer, not the work.</source>
        <translation>Eine falsche Antwort macht einen falschen Plan: die Antwort ändern, nicht die Arbeit.</translation>
    </message>
    <message>
        <source>Stop: not to be filled</source>
        <translation>Halt: nicht spachteln</translation>
    </message>
    <message>
        <source>It names what is wrong, why, and what to do instead.</source>
        <translation>Hier steht, was nicht stimmt, warum, und was stattdessen zu tun ist.</translation>
    </message>
    <message>
        <source>Park the repair and hand it to the place that is named.</source>
        <translation>Die Reparatur parken und an die genannte Stelle geben.</translation>
    </message>
    <message>
        <source>Filled all the same it looks right and fails where nobody sees it.</source>
        <translation>Trotzdem gespachtelt sieht es gut aus und versagt, wo es keiner sieht.</translation>
    </message>
    <message>
        <source>Gear and tools</source>
        <translation>Ausrüstung und Werkzeug</translation>
    </message>
    <message>
        <source>What protects you is on before the first dust or vapour.</source>
        <translation>Was schützt, ist an, bevor erster Staub oder Dämpfe kommen.</translation>
    </message>
    <message>
        <source>Extraction on, then goggles, mask, gloves and closed sleeves.</source>
        <translation>Absaugung an, dann Brille, Maske, Handschuhe, Ärmel zu.</translation>
    </message>
    <message>
        <source>A disc that was on steel carries grit into aluminium, and it corrodes.</source>
        <translation>Eine Scheibe, die auf Stahl war, trägt Korn ins Aluminium, und es korrodiert.</translation>
    </message>
    <message>
        <source>Clean and dry</source>
        <translation>Sauber und trocken</translation>
    </message>
    <message>
        <source>Wax, dust and solvent left behind keep the filler from holding.</source>
        <translation>Wachs, Staub und Lösemittel, die bleiben, lassen den Spachtel nicht haften.</translation>
    </message>
    <message>
        <source>Two cloths, one way; then let it flash off until nothing smells.</source>
        <translation>Zwei Tücher, eine Richtung; dann ablüften lassen, bis nichts mehr riecht.</translation>
    </message>
    <message>
        <source>Sanding before degreasing rubs the wax in.</source>
        <translation>Schleifen vor dem Entfetten reibt das Wachs ein.</translation>
    </message>
    <message>
        <source>Down to sound material</source>
        <translation>Bis auf den gesunden Grund</translation>
    </message>
    <message>
        <source>Paint, loose fibre and crack tips come off, so that the filler sits on what holds.</source>
        <translation>Lack, lose Fasern und Rissenden kommen weg, damit der Spachtel auf Festem sitzt.</translation>
    </message>
    <message>
        <source>Cut until the edge is firm all round; drill the tips the light shows.</source>
        <translation>Schneiden, bis der Rand ringsum fest ist; die Enden bohren, die das Licht zeigt.</translation>
    </message>
    <message>
        <source>A tip that is missed runs on under the filler.</source>
        <translation>Ein übersehenes Ende läuft unter dem Spachtel weiter.</translation>
    </message>
    <message>
        <source>The bevel</source>
        <translation>Die Fase</translation>
    </message>
    <message>
        <source>A long, flat run gives the filler area to hold on and no step to show.</source>
        <translation>Ein langer, flacher Auslauf gibt dem Spachtel Halt und keine Kante.</translation>
    </message>
    <message>
        <source>Grind to the run on the screen, even all round, no deeper than the damage.</source>
        <translation>Auf das Maß am Bildschirm schleifen, ringsum gleich, nicht tiefer als der Schaden.</translation>
    </message>
    <message>
        <source>Too steep, and the edge maps through the paint later.</source>
        <translation>Zu steil, und der Rand zeichnet sich später im Lack ab.</translation>
    </message>
    <message>
        <source>Back-up and dam</source>
        <translation>Hinterlage und Damm</translation>
    </message>
    <message>
        <source>A hole needs something behind it before filler goes in.</source>
        <translation>Ein Loch braucht etwas dahinter, bevor Spachtel hineinkommt.</translation>
    </message>
    <message>
        <source>Abrade the back, lap the backing past the edge, let it cure first.</source>
        <translation>Rückseite anschleifen, Hinterlage mit Überstand, erst aushärten lassen.</translation>
    </message>
    <message>
        <source>A dam only holds the filler in; it carries nothing and comes off again.</source>
        <translation>Ein Damm hält nur den Spachtel; er trägt nichts und kommt wieder ab.</translation>
    </message>
    <message>
        <source>Abrading for grip</source>
        <translation>Anschleifen</translation>
    </message>
    <message>
        <source>Scratches of the grit named give the filler its hold.</source>
        <translation>Riefen der genannten Körnung geben dem Spachtel Halt.</translation>
    </message>
    <message>
        <source>Dull all over, into the corners and past the edge; then dust off.</source>
        <translation>Überall matt, bis in die Ecken und über den Rand; dann entstauben.</translation>
    </message>
    <message>
        <source>A shiny spot is a spot where it lets go.</source>
        <translation>An einer glänzenden Stelle löst er sich.</translation>
    </message>
    <message>
        <source>The mix</source>
        <translation>Der Ansatz</translation>
    </message>
    <message>
        <source>Puddle and bead give the mass and the share of hardener without guessing.</source>
        <translation>Kreis und Strang geben Masse und Härteranteil, ohne zu raten.</translation>
    </message>
    <message>
        <source>Lay both to size, tap hardener in, knead without air until one colour.</source>
        <translation>Beide nach Maß legen, „Härter drin“ tippen, ohne Luft kneten bis eine Farbe.</translation>
    </message>
    <message>
        <source>More hardener does not make it harder: it stains, gets hot and crazes.</source>
        <translation>Mehr Härter macht nicht härter: er fleckt, wird heiß und gibt Haarrisse.</translation>
    </message>
    <message>
        <source>Mixing by weight</source>
        <translation>Nach Gewicht ansetzen</translation>
    </message>
    <message>
        <source>The scale says what is on the board; the hardener follows from that.</source>
        <translation>Die Waage sagt, was auf dem Brett ist; daraus folgt der Härter.</translation>
    </message>
    <message>
        <source>Tare the board, lay the filler, take the figure over, weigh the hardener.</source>
        <translation>Brett tarieren, Spachtel auflegen, Wert übernehmen, Härter abwiegen.</translation>
    </message>
    <message>
        <source>Forgetting the tare makes every figure too large.</source>
        <translation>Ohne Tara ist jeder Wert zu groß.</translation>
    </message>
    <message>
        <source>Lots and what they teach</source>
        <translation>Chargen und was sie lehren</translation>
    </message>
    <message>
        <source>Every lot gels a little faster or slower than its sheet says.</source>
        <translation>Jede Charge geliert etwas schneller oder langsamer, als ihr Blatt sagt.</translation>
    </message>
    <message>
        <source>Tell which lot is in the hand; tap when it has gelled.</source>
        <translation>Sagen, welche Charge in der Hand ist; antippen, wenn sie geliert ist.</translation>
    </message>
    <message>
        <source>A wrong lot number teaches the wrong lot.</source>
        <translation>Eine falsche Nummer lehrt die falsche Charge.</translation>
    </message>
    <message>
        <source>Spreading</source>
        <translation>Auftragen</translation>
    </message>
    <message>
        <source>The filler has to be in place and its edges clear before it gels.</source>
        <translation>Der Spachtel muss liegen und die Ränder frei sein, bevor er geliert.</translation>
    </message>
    <message>
        <source>Press the first coat in, then build up; clear the edges when the clock says so.</source>
        <translation>Erst dünn eindrücken, dann aufbauen; Ränder frei machen, wenn die Uhr es sagt.</translation>
    </message>
    <message>
        <source>Worked past gel it tears and drags; what is on the board is waste by then.</source>
        <translation>Nach dem Gelieren reißt er; was noch auf dem Brett ist, ist Abfall.</translation>
    </message>
    <message>
        <source>Hands off while it cures</source>
        <translation>Hände weg, bis er fest ist</translation>
    </message>
    <message>
        <source>Between gel and sanding the filler gets warm and hard.</source>
        <translation>Zwischen Gelieren und Schleifen wird der Spachtel warm und hart.</translation>
    </message>
    <message>
        <source>Leave it alone, no lamp; look after another repair meanwhile.</source>
        <translation>In Ruhe lassen, kein Strahler; inzwischen eine andere Reparatur.</translation>
    </message>
    <message>
        <source>What is left over gets hot as well: spread it thin, away from what burns.</source>
        <translation>Auch der Rest wird heiß: dünn ausstreichen, weg von Brennbarem.</translation>
    </message>
    <message>
        <source>Sanding the lift</source>
        <translation>Die Lage schleifen</translation>
    </message>
    <message>
        <source>Each lift is sanded level so that the next one holds on it.</source>
        <translation>Jede Lage wird eben geschliffen, damit die nächste hält.</translation>
    </message>
    <message>
        <source>Try with the nail; sand on a block with extraction on; then dust off.</source>
        <translation>Mit dem Nagel prüfen; mit Klotz und Absaugung schleifen; dann entstauben.</translation>
    </message>
    <message>
        <source>Sanded too soon it clogs the paper and tears out at the edge.</source>
        <translation>Zu früh geschliffen, setzt er das Papier zu und reißt am Rand aus.</translation>
    </message>
    <message>
        <source>Turning the panel</source>
        <translation>Das Teil wenden</translation>
    </message>
    <message>
        <source>The other face is filled the same way; the dam comes off first.</source>
        <translation>Die andere Seite wird genauso gespachtelt; erst kommt der Damm ab.</translation>
    </message>
    <message>
        <source>Two people for a large panel; lay it on something soft.</source>
        <translation>Ein großes Teil zu zweit; auf etwas Weiches legen.</translation>
    </message>
    <message>
        <source>Residue of the dam below the filler is a place without hold.</source>
        <translation>Reste vom Damm unter dem Spachtel halten nicht.</translation>
    </message>
    <message>
        <source>To the contour</source>
        <translation>Auf Kontur</translation>
    </message>
    <message>
        <source>The guide coat shows what is high and low before the primer does.</source>
        <translation>Das Kontrollschwarz zeigt hoch und tief, bevor es der Primer tut.</translation>
    </message>
    <message>
        <source>Sand on a block until it is gone; go finer only when it is level.</source>
        <translation>Mit dem Klotz schleifen, bis es weg ist; feiner erst, wenn eben.</translation>
    </message>
    <message>
        <source>Bare hands and soft pads follow a low spot instead of showing it.</source>
        <translation>Hand und weicher Klotz folgen der Mulde, statt sie zu zeigen.</translation>
    </message>
    <message>
        <source>Looking before the primer</source>
        <translation>Vor dem Primer ansehen</translation>
    </message>
    <message>
        <source>What is found now costs minutes; under paint it costs the job.</source>
        <translation>Was jetzt auffällt, kostet Minuten; unter Lack die ganze Arbeit.</translation>
    </message>
    <message>
        <source>Raking light from the side, a clean dry hand, both ways.</source>
        <translation>Streiflicht von der Seite, saubere trockene Hand, beide Richtungen.</translation>
    </message>
    <message>
        <source>A pinhole that is painted over comes back as a crater.</source>
        <translation>Eine überlackierte Pore kommt als Krater wieder.</translation>
    </message>
    <message>
        <source>Handing over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Six tests say what was found; the paint shop goes by them.</source>
        <translation>Sechs Prüfungen sagen, was gefunden wurde; der Lackierer richtet sich danach.</translation>
    </message>
    <message>
        <source>Do each on the panel, then tap what you found.</source>
        <translation>Jede am Teil machen, dann antippen, was gefunden wurde.</translation>
    </message>
    <message>
        <source>Tapped without testing, the record tells something that nobody saw.</source>
        <translation>Ohne Prüfung angetippt, steht in der Akte, was keiner sah.</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Ist übergeben</translation>
    </message>
    <message>
        <source>The repair is closed; the supervisor looks through its record.</source>
        <translation>Die Reparatur ist abgeschlossen; der Meister sieht ihre Akte durch.</translation>
    </message>
    <message>
        <source>Its record and job sheet are under today’s work.</source>
        <translation>Akte und Auftragsblatt stehen unter „Heutige Arbeit“.</translation>
    </message>
    <message>
        <source>A fault that shows later is a rework, taken in anew.</source>
        <translation>Ein späterer Fehler ist eine Nacharbeit und wird neu angenommen.</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Geparkt</translation>
    </message>
    <message>
        <source>A repair that cannot go on here waits, with its reason and its place.</source>
        <translation>Eine Reparatur, die hier nicht weitergeht, wartet mit Grund und Ort.</translation>
    </message>
    <message>
        <source>Say why and where it goes; take it up again from its card.</source>
        <translation>Sagen, warum und wohin; über ihre Karte wieder aufnehmen.</translation>
    </message>
    <message>
        <source>A panel that was away may be damp or warm: it is read again.</source>
        <translation>Ein Teil, das weg war, kann feucht oder warm sein: neu ablesen.</translation>
    </message>
    <message>
        <source>Returned by the supervisor</source>
        <translation>Vom Meister zurückgegeben</translation>
    </message>
    <message>
        <source>The supervisor found something; what it was stands here.</source>
        <translation>Der Meister hat etwas gefunden; hier steht, was.</translation>
    </message>
    <message>
        <source>Begin the rework: it is a repair of its own, from the first question.</source>
        <translation>Nacharbeit beginnen: eine eigene Reparatur ab der ersten Frage.</translation>
    </message>
    <message>
        <source>Mended without a record it is not there at the next look.</source>
        <translation>Ohne Akte ausgebessert, fehlt es bei der nächsten Durchsicht.</translation>
    </message>
    <message>
        <source>Stop and ask</source>
        <translation>Anhalten und fragen</translation>
    </message>
    <message>
        <source>Whoever is in doubt stops here; running clocks go on.</source>
        <translation>Wer zweifelt, hält hier an; laufende Uhren laufen weiter.</translation>
    </message>
    <message>
        <source>Take a photo, write a note, or park the repair and fetch the supervisor.</source>
        <translation>Foto machen, Notiz schreiben, oder parken und den Meister holen.</translation>
    </message>
    <message>
        <source>Going on in doubt costs more than the wait.</source>
        <translation>Im Zweifel weitermachen kostet mehr als warten.</translation>
    </message>
    <message>
        <source>What can hurt here</source>
        <translation>Was hier schaden kann</translation>
    </message>
    <message>
        <source>It shows label, gloves, mask, first aid and waste of each material of this step.</source>
        <translation>Zeigt Kennzeichnung, Handschuhe, Maske, Erste Hilfe, Abfall der Stoffe hier.</translation>
    </message>
    <message>
        <source>Page through before you open the tin.</source>
        <translation>Durchblättern, bevor die Dose aufgeht.</translation>
    </message>
    <message>
        <source>What stands here in general does not replace the sheet of the product.</source>
        <translation>Was hier allgemein steht, ersetzt nicht das Blatt des Produkts.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Four photos show what no word does: as found, bare, filled, guide coat.</source>
        <translation>Vier Fotos zeigen, was kein Wort sagt: vorgefunden, blank, gespachtelt, Kontrollschwarz.</translation>
    </message>
    <message>
        <source>Same place, same light, something beside it for the size.</source>
        <translation>Gleiche Stelle, gleiches Licht, etwas daneben für die Größe.</translation>
    </message>
    <message>
        <source>A photo taken after the filler shows nothing of what lies below.</source>
        <translation>Ein Foto nach dem Spachtel zeigt nicht, was darunter ist.</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>A note keeps what no step asks: an old repair, a warmed panel.</source>
        <translation>Eine Notiz hält fest, wonach kein Schritt fragt: alte Reparatur, gewärmtes Teil.</translation>
    </message>
    <message>
        <source>Tap a sentence, or write your own words.</source>
        <translation>Einen Satz antippen oder eigene Worte schreiben.</translation>
    </message>
    <message>
        <source>A note cannot be taken back; write a second one.</source>
        <translation>Eine Notiz lässt sich nicht zurücknehmen; eine zweite schreiben.</translation>
    </message>
    <message>
        <source>Today’s work</source>
        <translation>Heutige Arbeit</translation>
    </message>
    <message>
        <source>Every repair that was worked on today, with how it stands.</source>
        <translation>Jede Reparatur, an der heute gearbeitet wurde, mit ihrem Stand.</translation>
    </message>
    <message>
        <source>Tap one for its record; look for older ones by a word or a lot.</source>
        <translation>Eine antippen für ihre Akte; ältere nach Wort oder Charge suchen.</translation>
    </message>
    <message>
        <source>A repair without a sign-off stays on the supervisor’s list.</source>
        <translation>Eine Reparatur ohne Abnahme bleibt auf der Liste des Meisters.</translation>
    </message>
    <message>
        <source>The record</source>
        <translation>Die Akte</translation>
    </message>
    <message>
        <source>It shows what was done, when and by whom, and where limits were left.</source>
        <translation>Sie zeigt, was wann wer tat und wo Grenzen verlassen wurden.</translation>
    </message>
    <message>
        <source>Page through; time line and lots are a tap away.</source>
        <translation>Durchblättern; Zeitverlauf und Chargen sind einen Tipp entfernt.</translation>
    </message>
    <message>
        <source>Nothing here can be wiped out; a correction stands beside what it corrects.</source>
        <translation>Nichts lässt sich löschen; eine Berichtigung steht neben dem Alten.</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Auf Papier</translation>
    </message>
    <message>
        <source>The same figures as on the glass, to go with the panel or into a folder.</source>
        <translation>Dieselben Zahlen wie am Bildschirm, fürs Teil oder für den Ordner.</translation>
    </message>
    <message>
        <source>Choose the paper, then a folder or the printer.</source>
        <translation>Papier wählen, dann einen Ordner oder den Drucker.</translation>
    </message>
    <message>
        <source>A paper is of the moment it was made; the log goes on.</source>
        <translation>Ein Papier ist vom Moment, in dem es entstand; das Protokoll geht weiter.</translation>
    </message>
    <message>
        <source>The air</source>
        <translation>Die Luft</translation>
    </message>
    <message>
        <source>It shows how far the panel is from dew, and what vapours do in this room.</source>
        <translation>Es zeigt den Abstand zum Tau und was Dämpfe in diesem Raum tun.</translation>
    </message>
    <message>
        <source>Read air, panel and humidity close to the repair.</source>
        <translation>Luft, Teil und Feuchte nah an der Reparatur ablesen.</translation>
    </message>
    <message>
        <source>The room is worked out as one box; near the tin it is always worse.</source>
        <translation>Der Raum ist als ein Kasten gerechnet; nah an der Dose ist es immer schlechter.</translation>
    </message>
    <message>
        <source>The supervisor’s acts</source>
        <translation>Was der Meister tut</translation>
    </message>
    <message>
        <source>Overriding, correcting and signing off are the supervisor’s, by PIN.</source>
        <translation>Übergehen, Berichtigen und Abnehmen macht der Meister mit PIN.</translation>
    </message>
    <message>
        <source>Say the reason first; it stands in the log with the act.</source>
        <translation>Erst den Grund sagen; er steht mit im Protokoll.</translation>
    </message>
    <message>
        <source>A PIN that is known to all signs for all.</source>
        <translation>Eine PIN, die alle kennen, zeichnet für alle.</translation>
    </message>
    <message>
        <source>Looking through the day</source>
        <translation>Den Tag durchsehen</translation>
    </message>
    <message>
        <source>What needs eyes stands on top: deviations, gaps, what is not signed off.</source>
        <translation>Oben steht, was Augen braucht: Abweichungen, Lücken, nicht Abgenommenes.</translation>
    </message>
    <message>
        <source>Open a repair, read what its record lacks, sign it off or return it.</source>
        <translation>Reparatur öffnen, lesen, was fehlt, abnehmen oder zurückgeben.</translation>
    </message>
    <message>
        <source>Signed off unread, a deviation is nobody’s any more.</source>
        <translation>Ungelesen abgenommen gehört eine Abweichung keinem mehr.</translation>
    </message>
    <message>
        <source>Figures over time</source>
        <translation>Zahlen über die Zeit</translation>
    </message>
    <message>
        <source>Each figure answers one question over many repairs.</source>
        <translation>Jede Zahl beantwortet eine Frage über viele Reparaturen.</translation>
    </message>
    <message>
        <source>Choose the period, tap a figure, then a bar to see its repairs.</source>
        <translation>Zeitraum wählen, Zahl antippen, dann einen Balken.</translation>
    </message>
    <message>
        <source>Few repairs say little: the count stands beside each figure.</source>
        <translation>Wenige Reparaturen sagen wenig: die Anzahl steht daneben.</translation>
    </message>
    <message>
        <source>Looking for a repair</source>
        <translation>Eine Reparatur suchen</translation>
    </message>
    <message>
        <source>Job, panel, person, lot and words of notes of every day are searched.</source>
        <translation>Gesucht wird in Auftrag, Teil, Person, Charge und Notizen aller Tage.</translation>
    </message>
    <message>
        <source>Key the beginning of a word, or scan a lot; tap what is found.</source>
        <translation>Wortanfang tippen oder Charge scannen; Gefundenes antippen.</translation>
    </message>
    <message>
        <source>The middle of a word finds nothing; fewer letters find more.</source>
        <translation>Die Mitte eines Wortes findet nichts; weniger Buchstaben finden mehr.</translation>
    </message>
    <message>
        <source>The shelf</source>
        <translation>Das Regal</translation>
    </message>
    <message>
        <source>It counts what is there, by lot, and tells what is short, old or dry.</source>
        <translation>Es zählt den Bestand je Charge und sagt, was knapp, alt oder leer ist.</translation>
    </message>
    <message>
        <source>Book in what comes; each batch is taken off by itself.</source>
        <translation>Zugang buchen; jeder Ansatz geht von selbst ab.</translation>
    </message>
    <message>
        <source>What is spilled and not told makes the shelf look fuller than it is.</source>
        <translation>Verschüttetes, das keiner meldet, lässt das Regal voller aussehen.</translation>
    </message>
    <message>
        <source>Booking in</source>
        <translation>Zugang buchen</translation>
    </message>
    <message>
        <source>A package gets its lot and its date, so that a batch can be traced to it.</source>
        <translation>Ein Gebinde bekommt Charge und Datum, damit ein Ansatz zurückzuverfolgen ist.</translation>
    </message>
    <message>
        <source>Scan or key the lot from the label, then its best-before day.</source>
        <translation>Charge vom Etikett scannen oder tippen, dann das Haltbarkeitsdatum.</translation>
    </message>
    <message>
        <source>A lot from memory is a lot that a recall does not find.</source>
        <translation>Eine Charge aus dem Kopf findet kein Rückruf.</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Was daraus wurde</translation>
    </message>
    <message>
        <source>Count, spill, move or throw away: the shelf is put right by telling.</source>
        <translation>Zählen, verschütten, umstellen, wegwerfen: Melden berichtigt den Bestand.</translation>
    </message>
    <message>
        <source>Say what happened and how much; nothing is wiped out.</source>
        <translation>Sagen, was war und wie viel; nichts wird gelöscht.</translation>
    </message>
    <message>
        <source>Old peroxide is waste of its own; never into the bin or a warm corner.</source>
        <translation>Altes Peroxid ist eigener Abfall; nie in die Tonne oder in eine warme Ecke.</translation>
    </message>
    <message>
        <source>Product sheets</source>
        <translation>Produktblätter</translation>
    </message>
    <message>
        <source>What a filler may and how fast it gels comes from its sheet.</source>
        <translation>Was ein Spachtel darf und wie schnell er geliert, kommt aus seinem Blatt.</translation>
    </message>
    <message>
        <source>Type it from the maker’s paper, or read it from a file.</source>
        <translation>Vom Papier des Herstellers abtippen oder aus einer Datei lesen.</translation>
    </message>
    <message>
        <source>A demo sheet is invented: never mend a customer’s panel by it.</source>
        <translation>Ein Demoblatt ist erfunden: nie ein Kundenteil danach reparieren.</translation>
    </message>
    <message>
        <source>Bench set-up</source>
        <translation>Platz einrichten</translation>
    </message>
    <message>
        <source>Language, units, glass, instruments and the shop’s own limits are set here.</source>
        <translation>Hier stehen Sprache, Einheiten, Bildschirm, Geräte und die Grenzen der Werkstatt.</translation>
    </message>
    <message>
        <source>Measure the glass once with a card; then the drawn sizes are true.</source>
        <translation>Bildschirm einmal mit einer Karte messen; dann stimmen gezeichnete Größen.</translation>
    </message>
    <message>
        <source>A limit changed here changes every plan from now on.</source>
        <translation>Eine hier geänderte Grenze ändert jeden Plan ab jetzt.</translation>
    </message>
    <message>
        <source>Keeping the log</source>
        <translation>Das Protokoll sichern</translation>
    </message>
    <message>
        <source>Backups, bringing in another bench’s log, and putting a backup back.</source>
        <translation>Sicherungen, Protokoll eines anderen Platzes, Sicherung zurückholen.</translation>
    </message>
    <message>
        <source>Choose the file; what would come of it is told before it is done.</source>
        <translation>Datei wählen; was daraus würde, steht da, bevor es geschieht.</translation>
    </message>
    <message>
        <source>A backup on the same disk is lost with the disk.</source>
        <translation>Eine Sicherung auf derselben Platte geht mit ihr verloren.</translation>
    </message>
    <message>
        <source>Practising</source>
        <translation>Üben</translation>
    </message>
    <message>
        <source>Invented panels to learn on: look, decide, mix by eye, and see what comes of it.</source>
        <translation>Erfundene Teile zum Lernen: ansehen, entscheiden, ansetzen, sehen, was daraus wird.</translation>
    </message>
    <message>
        <source>Answer from what the panel shows; marks and reasons come at the end.</source>
        <translation>Nach dem antworten, was das Teil zeigt; Bewertung und Gründe kommen am Ende.</translation>
    </message>
    <message>
        <source>Help does not say here what is asked; the bench’s own help does.</source>
        <translation>Die Hilfe sagt hier nicht, wonach gefragt wird; am Platz schon.</translation>
    </message>
</context>
<context>
    <name>Instruments</name>
    <message>
        <source>Nothing is plugged in at %1.</source>
        <translation>An %1 ist nichts angeschlossen.</translation>
    </message>
    <message>
        <source>Another program has %1.</source>
        <translation>Ein anderes Programm hat %1.</translation>
    </message>
    <message>
        <source>This account may not open %1.</source>
        <translation>Dieses Konto darf %1 nicht öffnen.</translation>
    </message>
    <message>
        <source>The instrument was pulled out.</source>
        <translation>Das Messgerät wurde abgezogen.</translation>
    </message>
    <message>
        <source>%1 does not open.</source>
        <translation>%1 lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>Plug it in and switch it on: it is taken up by itself.</source>
        <translation>Anstecken und einschalten: Es wird von selbst erkannt.</translation>
    </message>
    <message>
        <source>Close the other program: the port is taken up by itself.</source>
        <translation>Das andere Programm schließen: Der Anschluss wird von selbst erkannt.</translation>
    </message>
    <message>
        <source>Let the system’s keeper put this account in the group of serial ports.</source>
        <translation>Der Systembetreuer soll dieses Konto in die Gruppe der seriellen Anschlüsse nehmen.</translation>
    </message>
    <message>
        <source>The system says: %1.</source>
        <translation>Das System meldet: %1.</translation>
    </message>
    <message>
        <source>No instrument is set up.</source>
        <translation>Kein Messgerät ist eingerichtet.</translation>
    </message>
    <message>
        <source>No pattern is chosen for its lines.</source>
        <translation>Für seine Zeilen ist kein Muster gewählt.</translation>
    </message>
    <message>
        <source>The pattern cannot be used.</source>
        <translation>Das Muster ist nicht brauchbar.</translation>
    </message>
    <message>
        <source>Connected: waiting for its lines.</source>
        <translation>Verbunden: wartet auf Zeilen.</translation>
    </message>
    <message>
        <source>The instrument says nothing.</source>
        <translation>Das Messgerät sendet nichts.</translation>
    </message>
    <message>
        <source>What comes is no plain text.</source>
        <translation>Was kommt, ist kein Text.</translation>
    </message>
    <message>
        <source>What it says cannot be.</source>
        <translation>Was es meldet, kann nicht sein.</translation>
    </message>
    <message>
        <source>Its line does not fit the pattern.</source>
        <translation>Seine Zeile passt nicht zum Muster.</translation>
    </message>
    <message>
        <source>%1, not steady yet</source>
        <translation>%1, noch nicht ruhig</translation>
    </message>
    <message>
        <source>%1, steady</source>
        <translation>%1, ruhig</translation>
    </message>
    <message>
        <source>Its lines have stopped.</source>
        <translation>Es kommen keine Zeilen mehr.</translation>
    </message>
    <message>
        <source>Choose one, or write it.</source>
        <translation>Eines wählen oder schreiben.</translation>
    </message>
    <message>
        <source>Look at cable and switch, and set it to send by itself.</source>
        <translation>Kabel und Schalter prüfen, auf selbsttätiges Senden stellen.</translation>
    </message>
    <message>
        <source>Try another speed or frame.</source>
        <translation>Andere Rate oder anderen Rahmen versuchen.</translation>
    </message>
    <message>
        <source>Choose another pattern, or write one like the line.</source>
        <translation>Anderes Muster wählen oder eines wie die Zeile schreiben.</translation>
    </message>
</context>
<context>
    <name>JobSheet</name>
    <message>
        <source>The safety data sheet, the vehicle maker’s repair manual, local codes and licensed practice come first.</source>
        <translation>Sicherheitsdatenblatt, Reparaturanleitung des Herstellers, örtliche Vorschriften und Fachkunde gehen vor.</translation>
    </message>
    <message>
        <source>Log %1…, entries: %2</source>
        <extracomment>%1 is the beginning of a hash, %2 how many entries the log had</extracomment>
        <translation>Protokoll %1…, Einträge: %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of a sheet: &quot;1 of 3&quot;</extracomment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>End of the chain</source>
        <translation>Ende der Kette</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Work of %1</source>
        <extracomment>%1 is a day, &quot;2026-11-25&quot;</extracomment>
        <translation>Arbeit vom %1</translation>
    </message>
    <message>
        <source>Nothing was recorded on this day.</source>
        <translation>An diesem Tag wurde nichts erfasst.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Abweichungen</translation>
    </message>
    <message>
        <source>Job sheet · %1 · %2 · %3</source>
        <translation>Auftragsblatt · %1 · %2 · %3</translation>
    </message>
    <message>
        <source>Day sheet · %1</source>
        <translation>Tagesblatt · %1</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>From first to last act</source>
        <translation>Erster bis letzter Schritt</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>%1 (before: %2)</source>
        <translation>%1 (vorher: %2)</translation>
    </message>
    <message>
        <source>%1 (asked again later)</source>
        <translation>%1 (später neu gefragt)</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Taupunkt</translation>
    </message>
    <message>
        <source>Panel above it</source>
        <translation>Teil darüber</translation>
    </message>
    <message>
        <source>lift %1, %2</source>
        <translation>Lage %1, %2</translation>
    </message>
    <message>
        <source>coat %1</source>
        <translation>Schicht %1</translation>
    </message>
    <message>
        <source>%1 (demo sheet)</source>
        <translation>%1 (Demoblatt)</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>Batches: what was mixed</source>
        <translation>Ansätze: was gemischt wurde</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>Filler lot</source>
        <translation>Charge Spachtel</translation>
    </message>
    <message>
        <source>Hardener lot</source>
        <translation>Charge Härter</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Gemischt</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Härter</translation>
    </message>
    <message>
        <source>Hardener in</source>
        <translation>Härter drin</translation>
    </message>
    <message>
        <source>Batches: their clocks</source>
        <translation>Ansätze: ihre Uhren</translation>
    </message>
    <message>
        <source>From &apos;hardener in&apos;, as told / as predicted when it was mixed.</source>
        <translation>Ab „Härter drin“, wie gemeldet / wie beim Mischen erwartet.</translation>
    </message>
    <message>
        <source>Set on the board</source>
        <translation>Fest auf dem Brett</translation>
    </message>
    <message>
        <source>Edges clear</source>
        <translation>Ränder sauber</translation>
    </message>
    <message>
        <source>Set on the panel</source>
        <translation>Fest auf dem Teil</translation>
    </message>
    <message>
        <source>Sands</source>
        <translation>Schleifbar</translation>
    </message>
    <message>
        <source>Sanded</source>
        <translation>Geschliffen</translation>
    </message>
    <message>
        <source>What was laid</source>
        <translation>Aufgetragen</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>Schicht</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Spachtel</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Ansätze</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Turn the panel</source>
        <translation>Teil wenden</translation>
    </message>
    <message>
        <source>Panel turned</source>
        <translation>Teil gewendet</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Told</source>
        <translation>Gemeldet</translation>
    </message>
    <message>
        <source>still parked</source>
        <translation>noch geparkt</translation>
    </message>
    <message>
        <source>assessed again</source>
        <translation>neu beurteilt</translation>
    </message>
    <message>
        <source>taken up again</source>
        <translation>wieder aufgenommen</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Geparkt</translation>
    </message>
    <message>
        <source>When, who</source>
        <translation>Wann, wer</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>nicht getan</translation>
    </message>
    <message>
        <source>Hand-over tests</source>
        <translation>Übergabeprüfungen</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>To scale; depth drawn %1 times as large as width.</source>
        <translation>Maßstäblich; Tiefe %1-mal so groß wie Breite gezeichnet.</translation>
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
        <translation>Angenommen %1</translation>
    </message>
    <message>
        <source>Another plan took its place.</source>
        <translation>Ein anderer Plan trat an seine Stelle.</translation>
    </message>
    <message>
        <source>Filler in all</source>
        <translation>Spachtel gesamt</translation>
    </message>
    <message>
        <source>Hardener in all</source>
        <translation>Härter gesamt</translation>
    </message>
    <message>
        <source>Cavity</source>
        <translation>Mulde</translation>
    </message>
    <message>
        <source>Built proud</source>
        <translation>Überhöhung</translation>
    </message>
    <message>
        <source>Cure shrinkage</source>
        <translation>Härteschwund</translation>
    </message>
    <message>
        <source>Left on the board</source>
        <translation>Rest auf dem Brett</translation>
    </message>
    <message>
        <source>Heat limit</source>
        <translation>Wärmegrenze</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Finish</translation>
    </message>
    <message>
        <source>%1, %2 in all; coats: %3; at most %4 a coat and %5 in all; %6</source>
        <translation>%1, gesamt %2; Schichten: %3; höchstens %4 je Schicht und %5 gesamt; %6</translation>
    </message>
    <message>
        <source>Ready for primer</source>
        <translation>Bereit zum Grundieren</translation>
    </message>
    <message>
        <source>%1 after accepting</source>
        <translation>%1 nach Planannahme</translation>
    </message>
    <message>
        <source>Times from</source>
        <translation>Zeiten aus</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Hottest</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>Puddle</source>
        <translation>Kreis</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Bead</source>
        <translation>Strang</translation>
    </message>
    <message>
        <source>Board sets</source>
        <translation>Brett fest</translation>
    </message>
    <message>
        <source>Panel sets</source>
        <translation>Teil fest</translation>
    </message>
    <message>
        <source>Not %1: %2</source>
        <translation>Nicht %1: %2</translation>
    </message>
    <message>
        <source>%1: the picture cannot be read</source>
        <translation>%1: das Bild ist nicht lesbar</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>No photo: %1</source>
        <translation>Kein Foto: %1</translation>
    </message>
    <message>
        <source>No code: what it would hold is too long for one.</source>
        <translation>Kein Code: was er enthielte, ist zu lang für einen.</translation>
    </message>
    <message>
        <source>In the code: what this sheet is of, and the end of the log’s chain when it was printed.</source>
        <translation>Im Code: wovon dieses Blatt ist, und das Ende der Kette des Protokolls beim Druck.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Techniker</translation>
    </message>
    <message>
        <source>Supervisor</source>
        <translation>Meister</translation>
    </message>
    <message>
        <source>Signed off by %1, %2</source>
        <extracomment>%1 is a person, %2 a day and a time</extracomment>
        <translation>Abgenommen von %1, %2</translation>
    </message>
    <message>
        <source>Returned by %1, %2: %3</source>
        <extracomment>%1 is a person, %2 a day and a time, %3 why</extracomment>
        <translation>Zurückgegeben von %1, %2: %3</translation>
    </message>
    <message>
        <source>Its rework is not taken in yet</source>
        <extracomment>%1 is the id of a repair</extracomment>
        <translation>Die Nacharbeit ist noch nicht angenommen</translation>
    </message>
    <message>
        <source>Done again as repair %1</source>
        <translation>Nachgearbeitet als Reparatur %1</translation>
    </message>
    <message>
        <source>Not signed yet</source>
        <translation>Noch nicht abgenommen</translation>
    </message>
    <message>
        <source>Rework of repair %1</source>
        <extracomment>%1 is the id of a repair</extracomment>
        <translation>Nacharbeit der Reparatur %1</translation>
    </message>
    <message>
        <source>Sign-off</source>
        <translation>Abnahme</translation>
    </message>
    <message>
        <source>What the log says</source>
        <translation>Was das Protokoll sagt</translation>
    </message>
</context>
<context>
    <name>Keeping</name>
    <message numerus="yes">
        <source>%n act(s) do not follow on the restored log.</source>
        <translation>
            <numerusform>%n Schritt passt nicht zum zurückgeholten Protokoll.</numerusform>
            <numerusform>%n Schritte passen nicht zum zurückgeholten Protokoll.</numerusform>
        </translation>
    </message>
    <message>
        <source>Note them in the repair by hand.</source>
        <translation>Von Hand in der Reparatur notieren.</translation>
    </message>
</context>
<context>
    <name>KeepingScreens</name>
    <message>
        <source>The log there is damaged.</source>
        <translation>Das Protokoll dort ist beschädigt.</translation>
    </message>
    <message>
        <source>%1 of its entries can be read and do not follow.</source>
        <translation>%1 seiner Einträge sind lesbar, schließen aber nicht an.</translation>
    </message>
    <message>
        <source>From one entry on it tells other things than the backup.</source>
        <translation>Ab einem Eintrag erzählt es anderes als die Sicherung.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Which backup?</source>
        <translation>Welche Sicherung?</translation>
    </message>
    <message>
        <source>Which log is to be brought in?</source>
        <translation>Welches Protokoll hereinholen?</translation>
    </message>
    <message>
        <source>There is none in this folder.</source>
        <translation>In diesem Ordner ist keine.</translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation>Anderer Ordner</translation>
    </message>
    <message>
        <source>bench %1 · %2 entries</source>
        <extracomment>%1 is a bench&apos;s name, %2 a number</extracomment>
        <translation>Platz %1 · %2 Einträge</translation>
    </message>
    <message>
        <source>One moment …</source>
        <translation>Einen Moment …</translation>
    </message>
    <message>
        <source>Looking through both logs</source>
        <translation>Beide Protokolle werden durchgesehen</translation>
    </message>
    <message>
        <source>The backup takes the log’s place</source>
        <translation>Die Sicherung kommt an die Stelle des Protokolls</translation>
    </message>
    <message>
        <source>The log is brought in</source>
        <translation>Das Protokoll wird hereingeholt</translation>
    </message>
    <message>
        <source>Nothing is changed yet.</source>
        <translation>Noch wird nichts geändert.</translation>
    </message>
    <message>
        <source>Do not switch off. Running clocks go on.</source>
        <translation>Nicht ausschalten. Laufende Uhren gehen weiter.</translation>
    </message>
    <message>
        <source>Bring it in</source>
        <translation>Hereinholen</translation>
    </message>
    <message>
        <source>Bring this log in?</source>
        <translation>Dieses Protokoll hereinholen?</translation>
    </message>
    <message>
        <source>It was brought in</source>
        <translation>Es ist hereingeholt</translation>
    </message>
    <message>
        <source>There is nothing new in it</source>
        <translation>Darin ist nichts Neues</translation>
    </message>
    <message>
        <source>%1 entries, %2 repairs</source>
        <translation>%1 Einträge, %2 Reparaturen</translation>
    </message>
    <message>
        <source>Bench %1: both logs go on differently from entry %2. Its entries stay as they are here.</source>
        <translation>Platz %1: ab Eintrag %2 gehen beide Protokolle verschieden weiter. Seine Einträge bleiben, wie sie hier sind.</translation>
    </message>
    <message>
        <source>Open at two benches: %1, %2.</source>
        <translation>An zwei Plätzen offen: %1, %2.</translation>
    </message>
    <message>
        <source>Nothing that is here is changed. Repairs of another bench go on at that bench.</source>
        <translation>Nichts hier wird geändert. Reparaturen eines anderen Platzes gehen dort weiter.</translation>
    </message>
    <message>
        <source>Restore it</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Put this backup in the log’s place?</source>
        <translation>Diese Sicherung an die Stelle des Protokolls?</translation>
    </message>
    <message>
        <source>The backup is in its place</source>
        <translation>Die Sicherung ist an ihrer Stelle</translation>
    </message>
    <message>
        <source>Nothing is lost: %1 entries</source>
        <translation>Nichts geht verloren: %1 Einträge</translation>
    </message>
    <message>
        <source>Not all can be kept: %1 entries</source>
        <translation>Nicht alles bleibt: %1 Einträge</translation>
    </message>
    <message>
        <source>The backup has %1 entries.</source>
        <translation>Die Sicherung hat %1 Einträge.</translation>
    </message>
    <message>
        <source>%1 newer ones come along from the log.</source>
        <translation>%1 neuere kommen aus dem Protokoll mit.</translation>
    </message>
    <message>
        <source>The log that is there now is kept in a folder beside it, whole.</source>
        <translation>Das jetzige Protokoll bleibt ganz in einem Ordner daneben.</translation>
    </message>
    <message>
        <source>The earlier log lies in %1.</source>
        <translation>Das frühere Protokoll liegt in %1.</translation>
    </message>
    <message>
        <source>It was not restored</source>
        <translation>Es wurde nicht zurückgeholt</translation>
    </message>
    <message>
        <source>It was not brought in</source>
        <translation>Es wurde nicht hereingeholt</translation>
    </message>
</context>
<context>
    <name>KeyPad</name>
    <message>
        <source>Clear</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Decimal point</source>
        <translation>Dezimalkomma</translation>
    </message>
</context>
<context>
    <name>LetterKeys</name>
    <message>
        <source>Space</source>
        <extracomment>short: a key of 20 mm</extracomment>
        <translation>Leer</translation>
    </message>
    <message>
        <source>Erase</source>
        <extracomment>short: a key of 20 mm; takes the last letter away</extracomment>
        <translation>Löschen</translation>
    </message>
</context>
<context>
    <name>LogTrouble</name>
    <message>
        <source>the database file itself is damaged</source>
        <translation>die Datenbankdatei selbst ist beschädigt</translation>
    </message>
    <message>
        <source>its tables are not those of this program</source>
        <translation>ihre Tabellen sind nicht die dieses Programms</translation>
    </message>
    <message>
        <source>an entry was changed, removed or put in</source>
        <translation>ein Eintrag wurde geändert, entfernt oder eingefügt</translation>
    </message>
    <message>
        <source>an entry cannot be read, or cannot follow the one before</source>
        <translation>ein Eintrag ist unlesbar oder kann dem vorigen nicht folgen</translation>
    </message>
    <message>
        <source>a summary does not match its entries</source>
        <translation>eine Übersicht passt nicht zu den Einträgen</translation>
    </message>
    <message>
        <source>a stored sheet or table was changed</source>
        <translation>gespeichertes Blatt oder Tabelle geändert</translation>
    </message>
    <message>
        <source>the expected end of the chain is not in it</source>
        <translation>das erwartete Ende der Kette fehlt darin</translation>
    </message>
    <message>
        <source>The log cannot be opened.</source>
        <translation>Protokoll öffnet nicht.</translation>
    </message>
    <message>
        <source>Check that its folder is there and may be used.</source>
        <translation>Prüfen, ob der Ordner da ist und benutzt werden darf.</translation>
    </message>
    <message>
        <source>This file is not a log.</source>
        <translation>Datei ist kein Protokoll.</translation>
    </message>
    <message>
        <source>Choose another file; this one is left as it is.</source>
        <translation>Eine andere Datei wählen; diese bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>This database belongs to another program.</source>
        <translation>Diese Datenbank gehört einem anderen Programm.</translation>
    </message>
    <message>
        <source>A newer version of this program wrote the log.</source>
        <translation>Eine neuere Version hat das Protokoll geschrieben.</translation>
    </message>
    <message>
        <source>Use that version; the log is left as it is.</source>
        <translation>Jene Version benutzen; das Protokoll bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>The log can be read but not written.</source>
        <translation>Das Protokoll ist lesbar, aber nicht schreibbar.</translation>
    </message>
    <message>
        <source>Give the right to write to the file and its folder.</source>
        <translation>Schreibrecht für Datei und Ordner geben.</translation>
    </message>
    <message>
        <source>Another program holds the log.</source>
        <translation>Anderes Programm belegt das Protokoll.</translation>
    </message>
    <message>
        <source>Close it, then try again.</source>
        <translation>Schließen, dann noch einmal.</translation>
    </message>
    <message>
        <source>The disk is full.</source>
        <translation>Datenträger ist voll.</translation>
    </message>
    <message>
        <source>Make room, then try again. The last confirmed step is kept.</source>
        <translation>Platz schaffen, dann noch einmal. Der letzte bestätigte Schritt bleibt.</translation>
    </message>
    <message>
        <source>The log is damaged.</source>
        <translation>Protokoll ist beschädigt.</translation>
    </message>
    <message>
        <source>Keep the file as it is and fetch the last backup.</source>
        <translation>Datei lassen, wie sie ist, und die letzte Sicherung holen.</translation>
    </message>
    <message>
        <source>The disk does not answer.</source>
        <translation>Der Datenträger antwortet nicht.</translation>
    </message>
    <message>
        <source>Check disk and cable, then try again. The last confirmed step is kept.</source>
        <translation>Datenträger und Kabel prüfen, dann noch einmal. Der letzte bestätigte Schritt bleibt.</translation>
    </message>
    <message>
        <source>This panel is already open in this job.</source>
        <translation>Dieses Teil ist in diesem Auftrag schon offen.</translation>
    </message>
    <message>
        <source>Open its card, or give this panel another name.</source>
        <translation>Seine Karte öffnen oder dem Teil einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>This step does not follow the last one.</source>
        <translation>Dieser Schritt folgt nicht auf den letzten.</translation>
    </message>
    <message>
        <source>Go back home and open the card again.</source>
        <translation>Zum Anfang zurück und die Karte neu öffnen.</translation>
    </message>
    <message>
        <source>Another copy of the program has this bench.</source>
        <translation>Ein zweites Programm hat diesen Platz.</translation>
    </message>
    <message>
        <source>Work there, or close it and try again.</source>
        <translation>Dort arbeiten, oder es schließen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>This is the supervisor’s to do.</source>
        <translation>Das ist Sache des Meisters.</translation>
    </message>
    <message>
        <source>It needs the supervisor’s PIN.</source>
        <translation>Es braucht die PIN des Meisters.</translation>
    </message>
    <message>
        <source>The log’s file is not all there.</source>
        <translation>Die Datei des Protokolls ist nicht vollständig.</translation>
    </message>
    <message>
        <source>Copy it again from where it came, or fetch the last backup.</source>
        <translation>Noch einmal von der Quelle kopieren oder die letzte Sicherung holen.</translation>
    </message>
    <message>
        <source>The log is no longer where it was.</source>
        <translation>Das Protokoll ist nicht mehr an seinem Ort.</translation>
    </message>
    <message>
        <source>Put its disk or its folder back. The last confirmed step is kept.</source>
        <translation>Seinen Datenträger oder Ordner zurückbringen. Der letzte bestätigte Schritt bleibt.</translation>
    </message>
    <message>
        <source>Another log lies there now.</source>
        <translation>Dort liegt jetzt ein anderes Protokoll.</translation>
    </message>
    <message>
        <source>It lacks steps that were confirmed here. Put the right one back.</source>
        <translation>Ihm fehlen hier bestätigte Schritte. Das richtige zurücklegen.</translation>
    </message>
    <message>
        <source>An older version of this program wrote the log.</source>
        <translation>Eine ältere Version dieses Programms schrieb das Protokoll.</translation>
    </message>
    <message>
        <source>It can be brought up to this version. A copy as it is stays beside it, for the older program.</source>
        <translation>Es kann auf diese Version gebracht werden. Eine Kopie, wie es ist, bleibt daneben für das ältere Programm.</translation>
    </message>
</context>
<context>
    <name>LotListScreen</name>
    <message>
        <source>%1 · hardener lot %2</source>
        <translation>%1 · Härtercharge %2</translation>
    </message>
</context>
<context>
    <name>LotPageScreen</name>
    <message>
        <source>Why is it to be forgotten?</source>
        <translation>Warum soll es vergessen werden?</translation>
    </message>
    <message>
        <source>What it taught</source>
        <translation>Was sie lehrte</translation>
    </message>
</context>
<context>
    <name>Lots</name>
    <message>
        <source>Lots were mixed up</source>
        <translation>Chargen wurden verwechselt</translation>
    </message>
    <message>
        <source>Gels were told too late or too early</source>
        <translation>Gelieren zu spät oder zu früh gemeldet</translation>
    </message>
    <message>
        <source>Hardener was laid wrong</source>
        <translation>Härter falsch gelegt</translation>
    </message>
    <message>
        <source>The tube has been too hot or too cold</source>
        <translation>Die Tube war zu heiß oder zu kalt</translation>
    </message>
    <message>
        <source>as the sheet says</source>
        <translation>wie das Blatt sagt</translation>
    </message>
    <message>
        <source>cures as its sheet says</source>
        <translation>härtet, wie das Blatt sagt</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>of how fast a batch cures: &quot;6 % slower to 23 % faster&quot;</extracomment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>no gel told: teaches nothing</source>
        <translation>kein Gelieren gemeldet: lehrt nichts</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>zählt</translation>
    </message>
    <message>
        <source>counts: cured at least so fast</source>
        <translation>zählt: härtete mindestens so schnell</translation>
    </message>
    <message>
        <source>held: too far off, three in a row would count</source>
        <translation>zurückgestellt: zu weit daneben, drei in Folge würden zählen</translation>
    </message>
    <message>
        <source>no longer counts: the lot proved to be different</source>
        <translation>zählt nicht mehr: die Charge erwies sich als anders</translation>
    </message>
    <message>
        <source>Test pat</source>
        <translation>Probekreis</translation>
    </message>
    <message>
        <source>board set after %1, by the sheet %2</source>
        <translation>Brett fest nach %1, nach Blatt %2</translation>
    </message>
    <message>
        <source>panel set after %1, by the sheet %2</source>
        <translation>Teil fest nach %1, nach Blatt %2</translation>
    </message>
    <message>
        <source>sanded from %1, by the sheet %2</source>
        <translation>schleifbar ab %1, nach Blatt %2</translation>
    </message>
    <message>
        <source>%1 faster</source>
        <translation>%1 schneller</translation>
    </message>
    <message>
        <source>%1 slower</source>
        <translation>%1 langsamer</translation>
    </message>
    <message>
        <source>cures %1 faster than its sheet</source>
        <translation>härtet %1 schneller als das Blatt</translation>
    </message>
    <message>
        <source>cures %1 slower than its sheet</source>
        <translation>härtet %1 langsamer als das Blatt</translation>
    </message>
</context>
<context>
    <name>MeasureScreen</name>
    <message>
        <source>Humidity</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>Key in the humidity of the air</source>
        <translation>Luftfeuchte eintippen</translation>
    </message>
    <message>
        <source>Bevel</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>Key in the bevel, run to depth</source>
        <translation>Fase eintippen, Länge zu Tiefe</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Key in the length</source>
        <translation>Länge eintippen</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Key in the width</source>
        <translation>Breite eintippen</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Key in the depth</source>
        <translation>Tiefe eintippen</translation>
    </message>
    <message>
        <source>Panel thickness</source>
        <translation>Wanddicke</translation>
    </message>
    <message>
        <source>Key in the panel’s thickness</source>
        <translation>Wanddicke eintippen</translation>
    </message>
    <message>
        <source>Deeper than the panel is thick: that is a hole.</source>
        <translation>Tiefer, als die Wand dick ist: das ist ein Loch.</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Key in the air’s temperature</source>
        <translation>Lufttemperatur eintippen</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Key in the panel’s temperature</source>
        <translation>Teiltemperatur eintippen</translation>
    </message>
    <message>
        <source>Dew point: not yet known</source>
        <translation>Taupunkt: noch unbekannt</translation>
    </message>
    <message>
        <source>Dew point %1, panel %2 above it</source>
        <translation>Taupunkt %1, das Teil %2 darüber</translation>
    </message>
    <message>
        <source>Measured: go on</source>
        <translation>Gemessen: weiter</translation>
    </message>
    <message>
        <source>Read: go on</source>
        <translation>Abgelesen: weiter</translation>
    </message>
    <message>
        <source>Read air and panel again</source>
        <translation>Luft und Teil neu ablesen</translation>
    </message>
    <message>
        <source>Read air, and the panel beside the filler</source>
        <translation>Luft ablesen und das Teil neben dem Spachtel</translation>
    </message>
    <message>
        <source>Air and humidity</source>
        <translation>Luft und Feuchte</translation>
    </message>
</context>
<context>
    <name>MessageScreen</name>
    <message>
        <source>hold 1 s</source>
        <translation>1 s halten</translation>
    </message>
</context>
<context>
    <name>Names</name>
    <message>
        <source>laminate</source>
        <extracomment>FRP: glass-fibre laminate</extracomment>
        <translation>Laminat</translation>
    </message>
    <message>
        <source>SMC</source>
        <extracomment>sheet moulding compound; the trade&apos;s abbreviation</extracomment>
        <translation>SMC</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>galvanised steel</source>
        <translation>verzinkter Stahl</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>Aluminium</translation>
    </message>
    <message>
        <source>thermoplastic</source>
        <translation>Thermoplast</translation>
    </message>
    <message>
        <source>flexible polyurethane</source>
        <translation>flexibles Polyurethan</translation>
    </message>
    <message>
        <source>carbon fibre</source>
        <translation>Kohlefaser</translation>
    </message>
    <message>
        <source>cast plastic without fibre</source>
        <translation>Gießkunststoff ohne Faser</translation>
    </message>
    <message>
        <source>magnesium</source>
        <translation>Magnesium</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>gouge</source>
        <translation>Kerbe</translation>
    </message>
    <message>
        <source>dent</source>
        <translation>Delle</translation>
    </message>
    <message>
        <source>crack</source>
        <translation>Riss</translation>
    </message>
    <message>
        <source>through hole</source>
        <translation>Durchbruch</translation>
    </message>
    <message>
        <source>rust hole</source>
        <translation>Rostloch</translation>
    </message>
    <message>
        <source>weld seam</source>
        <translation>Schweißnaht</translation>
    </message>
    <message>
        <source>bond seam</source>
        <translation>Klebenaht</translation>
    </message>
    <message>
        <source>solid weld</source>
        <translation>volle Naht</translation>
    </message>
    <message>
        <source>spot welds</source>
        <translation>Schweißpunkte</translation>
    </message>
    <message>
        <source>stitch welds</source>
        <translation>Steppnähte</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>blank</translation>
    </message>
    <message>
        <source>abraded epoxy primer</source>
        <translation>Epoxidprimer, angeschliffen</translation>
    </message>
    <message>
        <source>paint</source>
        <translation>Lack</translation>
    </message>
    <message>
        <source>old filler</source>
        <translation>alter Spachtel</translation>
    </message>
    <message>
        <source>sealer or underseal</source>
        <translation>Dichtmasse, U-Schutz</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>Rost</translation>
    </message>
    <message>
        <source>rust converter</source>
        <translation>Rostumwandler</translation>
    </message>
    <message>
        <source>acid-etch primer</source>
        <translation>Säureprimer</translation>
    </message>
    <message>
        <source>uncured primer</source>
        <translation>Primer ungehärtet</translation>
    </message>
    <message>
        <source>solder with flux</source>
        <translation>Lot mit Flussmittel</translation>
    </message>
    <message>
        <source>looks only</source>
        <translation>nur Optik</translation>
    </message>
    <message>
        <source>carries load</source>
        <translation>trägt Last</translation>
    </message>
    <message>
        <source>belts, seats, airbags</source>
        <translation>Gurte, Sitze, Airbags</translation>
    </message>
    <message>
        <source>in front of a sensor</source>
        <translation>vor einem Sensor</translation>
    </message>
    <message>
        <source>holds fuel or pressure</source>
        <translation>hält Kraftstoff oder Druck</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>damp</source>
        <translation>feucht</translation>
    </message>
    <message>
        <source>no core</source>
        <extracomment>nothing between the skins of a laminate</extracomment>
        <translation>kein Kern</translation>
    </message>
    <message>
        <source>foam</source>
        <translation>Schaum</translation>
    </message>
    <message>
        <source>dry wood</source>
        <translation>trockenes Holz</translation>
    </message>
    <message>
        <source>wet wood</source>
        <translation>nasses Holz</translation>
    </message>
    <message>
        <source>short strand, dense</source>
        <translation>Kurzfaser, dicht</translation>
    </message>
    <message>
        <source>short strand, light</source>
        <translation>Kurzfaser, leicht</translation>
    </message>
    <message>
        <source>mixed strand</source>
        <translation>Mischfaser</translation>
    </message>
    <message>
        <source>long strand</source>
        <translation>Langfaser</translation>
    </message>
    <message>
        <source>finishing, smooth</source>
        <translation>Feinspachtel, glatt</translation>
    </message>
    <message>
        <source>finishing, fine</source>
        <translation>Feinspachtel, fein</translation>
    </message>
    <message>
        <source>front face</source>
        <translation>Vorderseite</translation>
    </message>
    <message>
        <source>back face</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>knead</source>
        <extracomment>the phase of a running mix, on the ribbon: keep it short</extracomment>
        <translation>kneten</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>auftragen</translation>
    </message>
    <message>
        <source>clear edges</source>
        <translation>Ränder säubern</translation>
    </message>
    <message>
        <source>hands off</source>
        <translation>Hände weg</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>schleifen</translation>
    </message>
    <message>
        <source>sands hard</source>
        <extracomment>it still sands, but harder than before</extracomment>
        <translation>wird hart</translation>
    </message>
    <message>
        <source>assess</source>
        <extracomment>what is next in a repair, on its job card: keep it short</extracomment>
        <translation>beurteilen</translation>
    </message>
    <message>
        <source>decide</source>
        <translation>entscheiden</translation>
    </message>
    <message>
        <source>prepare</source>
        <translation>vorbereiten</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mischen</translation>
    </message>
    <message>
        <source>turn the panel</source>
        <translation>Teil wenden</translation>
    </message>
    <message>
        <source>finish</source>
        <translation>Finish</translation>
    </message>
    <message>
        <source>hand over</source>
        <translation>übergeben</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>ist übergeben</translation>
    </message>
    <message>
        <source>parked</source>
        <translation>geparkt</translation>
    </message>
    <message>
        <source>what the panel is made of</source>
        <translation>Werkstoff des Teils</translation>
    </message>
    <message>
        <source>kind of damage</source>
        <translation>Art des Schadens</translation>
    </message>
    <message>
        <source>kind of weld</source>
        <translation>Schweißart</translation>
    </message>
    <message>
        <source>whether the adhesive has cured</source>
        <translation>ob der Kleber ausgehärtet ist</translation>
    </message>
    <message>
        <source>size of the damage</source>
        <translation>Größe des Schadens</translation>
    </message>
    <message>
        <source>reach from behind</source>
        <translation>Zugang von hinten</translation>
    </message>
    <message>
        <source>what is on the surface</source>
        <translation>was auf der Fläche ist</translation>
    </message>
    <message>
        <source>what the zone is for</source>
        <translation>wozu der Bereich dient</translation>
    </message>
    <message>
        <source>dry or damp</source>
        <translation>trocken/feucht</translation>
    </message>
    <message>
        <source>core of the laminate</source>
        <translation>Kern des Laminats</translation>
    </message>
    <message>
        <source>air, panel and humidity</source>
        <translation>Luft, Teil und Feuchte</translation>
    </message>
    <message>
        <source>returned</source>
        <extracomment>by the supervisor, to be done again</extracomment>
        <translation>zurückgegeben</translation>
    </message>
</context>
<context>
    <name>Notes</name>
    <message>
        <source>As found</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Bare</source>
        <translation>Blank</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Gespachtelt</translation>
    </message>
    <message>
        <source>Guide coat</source>
        <translation>Kontrollschwarz</translation>
    </message>
    <message>
        <source>as found</source>
        <extracomment>in a list of photos: &quot;as found, bare, filled&quot;</extracomment>
        <translation>Befund</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>blank</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>gespachtelt</translation>
    </message>
    <message>
        <source>guide coat</source>
        <translation>Kontrollschwarz</translation>
    </message>
    <message>
        <source>Deeper than it looked</source>
        <translation>Tiefer, als es aussah</translation>
    </message>
    <message>
        <source>Crack ran further</source>
        <translation>Riss lief weiter</translation>
    </message>
    <message>
        <source>Old repair found below</source>
        <translation>Alte Reparatur darunter</translation>
    </message>
    <message>
        <source>Panel warmed first</source>
        <translation>Teil erst erwärmt</translation>
    </message>
    <message>
        <source>Filler from a new tub</source>
        <translation>Spachtel aus neuer Dose</translation>
    </message>
    <message>
        <source>Hardener from a new tube</source>
        <translation>Härter aus neuer Tube</translation>
    </message>
    <message>
        <source>A mix was thrown away</source>
        <translation>Eine Mischung verworfen</translation>
    </message>
    <message>
        <source>Edge lifted: cut back</source>
        <translation>Rand hob sich: weggeschnitten</translation>
    </message>
    <message>
        <source>Pinholes opened and filled</source>
        <translation>Poren geöffnet und gefüllt</translation>
    </message>
    <message>
        <source>Second technician helped</source>
        <translation>Zweiter Techniker half</translation>
    </message>
    <message>
        <source>Supervisor had a look</source>
        <translation>Meister sah es an</translation>
    </message>
    <message>
        <source>Waits for a part</source>
        <translation>Wartet auf Ersatzteil</translation>
    </message>
    <message>
        <source>waits for a part</source>
        <translation>wartet auf Ersatzteil</translation>
    </message>
    <message>
        <source>waits for an answer</source>
        <translation>wartet auf eine Antwort</translation>
    </message>
    <message>
        <source>too cold or too damp</source>
        <translation>zu kalt oder zu feucht</translation>
    </message>
    <message>
        <source>metal-work comes first</source>
        <translation>erst Blecharbeit</translation>
    </message>
    <message>
        <source>other work comes first</source>
        <translation>andere Arbeit geht vor</translation>
    </message>
    <message>
        <source>the shift is over</source>
        <translation>Schicht ist zu Ende</translation>
    </message>
    <message>
        <source>stays at this bench</source>
        <translation>bleibt an diesem Platz</translation>
    </message>
    <message>
        <source>to %1</source>
        <extracomment>%1 is a person: goes on after &quot;Parked:&quot;</extracomment>
        <translation>zu %1</translation>
    </message>
</context>
<context>
    <name>NotesScreen</name>
    <message>
        <source>What is to be noted?</source>
        <translation>Was ist zu notieren?</translation>
    </message>
    <message>
        <source>To the present step</source>
        <translation>Zum jetzigen Schritt</translation>
    </message>
    <message>
        <source>More notes</source>
        <translation>Weitere Notizen</translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation>In eigenen Worten</translation>
    </message>
    <message>
        <source>No notes yet.</source>
        <translation>Noch keine Notizen.</translation>
    </message>
    <message>
        <source>Older notes</source>
        <translation>Ältere Notizen</translation>
    </message>
    <message>
        <source>Newest notes</source>
        <translation>Neueste Notizen</translation>
    </message>
    <message>
        <source>%1–%2 of %3</source>
        <extracomment>notes %1 to %2 of %3</extracomment>
        <translation>%1–%2 von %3</translation>
    </message>
    <message>
        <source>Write the note</source>
        <translation>Notiz schreiben</translation>
    </message>
    <message>
        <source>Keep this note</source>
        <translation>Notiz behalten</translation>
    </message>
    <message>
        <source>The code holds a control character.</source>
        <translation>Der Code enthält ein Steuerzeichen.</translation>
    </message>
    <message>
        <source>It is not written down.</source>
        <translation>Er wird nicht notiert.</translation>
    </message>
    <message>
        <source>The note is empty.</source>
        <translation>Die Notiz ist leer.</translation>
    </message>
    <message>
        <source>Write 1 to %1 characters.</source>
        <translation>1 bis %1 Zeichen schreiben.</translation>
    </message>
    <message>
        <source>Nothing written yet</source>
        <translation>Noch nichts geschrieben</translation>
    </message>
</context>
<context>
    <name>Outlooks</name>
    <message numerus="yes">
        <source>%n lift(s).</source>
        <translation>
            <numerusform>%n Lage.</numerusform>
            <numerusform>%n Lagen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Gels in %1, sands from %2.</source>
        <translation>Geliert in %1, schleifbar ab %2.</translation>
    </message>
    <message>
        <source>Its cure cannot be worked out.</source>
        <translation>Die Härtung lässt sich nicht berechnen.</translation>
    </message>
    <message>
        <source>Board sets in %1. Gels on the panel in %2, sands from %3. Hottest %4.</source>
        <translation>Brett fest in %1. Geliert am Teil in %2, schleifbar ab %3. Spitze %4.</translation>
    </message>
    <message>
        <source>Gels in %1, before %2. Sands from %3, before %4.</source>
        <translation>Geliert in %1, vorher %2. Schleifbar ab %3, vorher %4.</translation>
    </message>
</context>
<context>
    <name>PaperScreen</name>
    <message>
        <source>Documents</source>
        <translation>Dokumente</translation>
    </message>
    <message>
        <source>USB stick</source>
        <translation>USB-Stick</translation>
    </message>
</context>
<context>
    <name>PhotosScreen</name>
    <message>
        <source>cannot be shown</source>
        <translation>nicht darstellbar</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>wird gelesen</translation>
    </message>
    <message>
        <source>Tap what the photo shows</source>
        <translation>Antippen, was das Foto zeigt</translation>
    </message>
    <message>
        <source>To the present step</source>
        <translation>Zum jetzigen Schritt</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keins</translation>
    </message>
    <message>
        <source>Use this folder</source>
        <translation>Diesen Ordner nehmen</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>One up</source>
        <translation>Eins höher</translation>
    </message>
    <message>
        <source>camera or card</source>
        <translation>Kamera oder Karte</translation>
    </message>
</context>
<context>
    <name>Phrases</name>
    <message>
        <source>%1–%2 is fine</source>
        <translation>%1–%2 passt</translation>
    </message>
    <message>
        <source>batch %1 of %2</source>
        <translation>Ansatz %1 von %2</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message numerus="yes">
        <source>%n more mix(es) running</source>
        <translation>
            <numerusform>%n weitere Mischung läuft</numerusform>
            <numerusform>%n weitere Mischungen laufen</numerusform>
        </translation>
    </message>
    <message>
        <source>air not read yet</source>
        <translation>Luft noch offen</translation>
    </message>
    <message>
        <source>air %1, %2</source>
        <translation>Luft %1, %2</translation>
    </message>
    <message>
        <source>panel %1</source>
        <translation>Teil %1</translation>
    </message>
    <message>
        <source>%1 over dew point</source>
        <translation>%1 über Taupunkt</translation>
    </message>
    <message>
        <source>%1 ago · %2</source>
        <translation>vor %1 · %2</translation>
    </message>
    <message numerus="yes">
        <source>from %n batch(es) of this lot</source>
        <translation>
            <numerusform>nach %n Ansatz dieser Charge</numerusform>
            <numerusform>nach %n Ansätzen dieser Charge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>from %n other lot(s) of this product</source>
        <translation>
            <numerusform>nach %n anderer Charge dieses Produkts</numerusform>
            <numerusform>nach %n anderen Chargen dieses Produkts</numerusform>
        </translation>
    </message>
    <message>
        <source>from the sheet</source>
        <translation>nach Blatt</translation>
    </message>
</context>
<context>
    <name>PictureLabels</name>
    <message>
        <source>%1 over the bevel, %2 : 1</source>
        <translation>%1 über die Fase, %2 : 1</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>finish %1 (limit %2)</source>
        <translation>Feinspachtel %1 (bis %2)</translation>
    </message>
    <message>
        <source>%1 panel; depth drawn to the scale of the width</source>
        <translation>Wand %1; Tiefe im Maßstab der Breite</translation>
    </message>
    <message>
        <source>%1 panel; depth drawn %2 times as large as width</source>
        <translation>Wand %1; Tiefe %2-mal so groß wie die Breite</translation>
    </message>
    <message>
        <source>True size</source>
        <translation>Wahre Größe</translation>
    </message>
    <message>
        <source>not true size</source>
        <translation>nicht wahre Größe</translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message>
        <source>Fibre filler</source>
        <translation>Faserspachtel</translation>
    </message>
    <message>
        <source>Faces to fill</source>
        <translation>Zu spachtelnde Seiten</translation>
    </message>
    <message>
        <source>Lifts still to lay</source>
        <translation>Noch zu legende Lagen</translation>
    </message>
    <message>
        <source>Batches still to mix</source>
        <translation>Noch zu mischende Ansätze</translation>
    </message>
    <message>
        <source>Fibre filler still to mix</source>
        <translation>Faserspachtel noch zu mischen</translation>
    </message>
    <message>
        <source>Hardener for it</source>
        <translation>Härter dazu</translation>
    </message>
    <message>
        <source>Finishing filler, thickness</source>
        <translation>Feinspachtel, Dicke</translation>
    </message>
    <message>
        <source>Steps of preparing to do</source>
        <translation>Vorbereitung, offene Schritte</translation>
    </message>
    <message>
        <source>gear on</source>
        <extracomment>a step of preparing in two or three words, in a list</extracomment>
        <translation>Ausrüstung an</translation>
    </message>
    <message>
        <source>own tools</source>
        <translation>eigene Geräte</translation>
    </message>
    <message>
        <source>wash</source>
        <translation>waschen</translation>
    </message>
    <message>
        <source>degrease</source>
        <translation>entfetten</translation>
    </message>
    <message>
        <source>flash off</source>
        <translation>ablüften</translation>
    </message>
    <message>
        <source>strip paint</source>
        <translation>Lack ab</translation>
    </message>
    <message>
        <source>cut to sound</source>
        <translation>bis ins Feste</translation>
    </message>
    <message>
        <source>find cracks</source>
        <translation>Risse suchen</translation>
    </message>
    <message>
        <source>stop-drill</source>
        <translation>Rissende bohren</translation>
    </message>
    <message>
        <source>squeeze-out off</source>
        <translation>Ausgequollenes ab</translation>
    </message>
    <message>
        <source>dress the weld</source>
        <translation>Naht eben schleifen</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocknen</translation>
    </message>
    <message>
        <source>bevel</source>
        <translation>anfasen</translation>
    </message>
    <message>
        <source>bevel both faces</source>
        <translation>beide Seiten anfasen</translation>
    </message>
    <message>
        <source>open the gouge</source>
        <translation>Kerbe öffnen</translation>
    </message>
    <message>
        <source>bevel the upper panel</source>
        <translation>oberes Teil anfasen</translation>
    </message>
    <message>
        <source>abrade the back</source>
        <translation>Rückseite anschleifen</translation>
    </message>
    <message>
        <source>bond a backing</source>
        <translation>Hinterlage kleben</translation>
    </message>
    <message>
        <source>dam</source>
        <translation>Damm</translation>
    </message>
    <message>
        <source>80 grit</source>
        <translation>Korn 80</translation>
    </message>
    <message>
        <source>dust off</source>
        <translation>absaugen</translation>
    </message>
    <message>
        <source>wipe</source>
        <translation>abwischen</translation>
    </message>
    <message>
        <source>read the panel</source>
        <translation>Teil ablesen</translation>
    </message>
</context>
<context>
    <name>Practice</name>
    <message>
        <source>Rinse the open fibre with water</source>
        <translation>Offene Fasern mit Wasser spülen</translation>
    </message>
    <message>
        <source>Wipe the ground fibre with solvent</source>
        <translation>Geschliffene Fasern mit Lösemittel wischen</translation>
    </message>
    <message>
        <source>Blow it off at full line pressure</source>
        <translation>Mit vollem Leitungsdruck abblasen</translation>
    </message>
    <message>
        <source>Put the lamp on the wet filler</source>
        <translation>Strahler auf den nassen Spachtel richten</translation>
    </message>
    <message>
        <source>Grind it with the disc used on steel</source>
        <translation>Mit der Scheibe vom Stahl schleifen</translation>
    </message>
    <message>
        <source>Fill over the paint where it holds</source>
        <translation>Auf dem Lack spachteln, wo er hält</translation>
    </message>
    <message>
        <source>A weld seam cannot be on this material.</source>
        <translation>Auf diesem Werkstoff kann keine Schweißnaht sein.</translation>
    </message>
    <message>
        <source>A rust hole cannot be in this material.</source>
        <translation>In diesem Werkstoff kann kein Rostloch sein.</translation>
    </message>
    <message>
        <source>The adhesive has not cured.</source>
        <translation>Der Kleber ist nicht ausgehärtet.</translation>
    </message>
    <message>
        <source>It is a crack in metal.</source>
        <translation>Es ist ein Riss im Metall.</translation>
    </message>
    <message>
        <source>The dent is too deep for filler.</source>
        <translation>Die Delle ist zu tief für Spachtel.</translation>
    </message>
    <message>
        <source>The hole is too large for filler.</source>
        <translation>Das Loch ist zu groß für Spachtel.</translation>
    </message>
    <message>
        <source>It is damp.</source>
        <translation>Es ist feucht.</translation>
    </message>
    <message>
        <source>No filler fits here.</source>
        <translation>Kein Spachtel passt hier.</translation>
    </message>
    <message>
        <source>The panel is too near its dew point.</source>
        <translation>Das Teil ist zu nah an seinem Taupunkt.</translation>
    </message>
    <message>
        <source>The panel is too cold.</source>
        <translation>Das Teil ist zu kalt.</translation>
    </message>
    <message>
        <source>The panel is too hot.</source>
        <translation>Das Teil ist zu warm.</translation>
    </message>
    <message>
        <source>The air is too cold.</source>
        <translation>Die Luft ist zu kalt.</translation>
    </message>
    <message>
        <source>The air is too hot.</source>
        <translation>Die Luft ist zu warm.</translation>
    </message>
    <message>
        <source>It would gel before it is spread.</source>
        <translation>Es würde vor dem Auftragen gelieren.</translation>
    </message>
    <message>
        <source>Even a thin lift would overheat.</source>
        <translation>Selbst eine dünne Lage würde zu heiß.</translation>
    </message>
    <message>
        <source>It would not sand.</source>
        <translation>Nicht schleifbar.</translation>
    </message>
    <message>
        <source>Something was not answered.</source>
        <translation>Etwas blieb unbeantwortet.</translation>
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
        <source>fill</source>
        <translation>spachteln</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>anhalten</translation>
    </message>
    <message>
        <source>front face alone</source>
        <translation>nur Vorderseite</translation>
    </message>
    <message>
        <source>both faces</source>
        <translation>beide Seiten</translation>
    </message>
    <message>
        <source>zinc gauge</source>
        <translation>Zinkmessgerät</translation>
    </message>
    <message>
        <source>ohmmeter</source>
        <translation>Ohmmeter</translation>
    </message>
    <message>
        <source>broken edge</source>
        <translation>Bruchkante</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>tap sound</source>
        <translation>Klopfklang</translation>
    </message>
    <message>
        <source>80 grit</source>
        <translation>Korn 80</translation>
    </message>
    <message>
        <source>bending</source>
        <translation>Biegen</translation>
    </message>
    <message>
        <source>vinegar</source>
        <translation>Essig</translation>
    </message>
    <message>
        <source>magnet</source>
        <translation>Magnet</translation>
    </message>
    <message>
        <source>Guide coat gone</source>
        <translation>Kontrollschwarz weg</translation>
    </message>
    <message>
        <source>Straightedge, both ways</source>
        <translation>Lineal, über Kreuz</translation>
    </message>
    <message>
        <source>Pinholes in raking light</source>
        <translation>Poren im Streiflicht</translation>
    </message>
    <message>
        <source>Nail and paper test</source>
        <translation>Nagel- und Papierprobe</translation>
    </message>
    <message>
        <source>Even tap sound</source>
        <translation>Klopfklang gleich</translation>
    </message>
    <message>
        <source>No edge to be felt</source>
        <translation>Keine Kante fühlbar</translation>
    </message>
    <message>
        <source>identify</source>
        <translation>bestimmen</translation>
    </message>
    <message>
        <source>decide</source>
        <translation>entscheiden</translation>
    </message>
    <message>
        <source>prepare</source>
        <translation>vorbereiten</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mischen</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>finish</source>
        <translation>Finish</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>Kind of damage</source>
        <translation>Art des Schadens</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Kind of weld</source>
        <translation>Schweißart</translation>
    </message>
    <message>
        <source>Adhesive</source>
        <translation>Kleber</translation>
    </message>
    <message>
        <source>Reach from behind</source>
        <translation>Zugang von hinten</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Dry or damp</source>
        <translation>Trocken/feucht</translation>
    </message>
    <message>
        <source>Core</source>
        <translation>Kern</translation>
    </message>
    <message>
        <source>Fill or stop</source>
        <translation>Spachteln oder Halt</translation>
    </message>
    <message>
        <source>Why stop</source>
        <translation>Warum Halt</translation>
    </message>
    <message>
        <source>What instead</source>
        <translation>Was stattdessen</translation>
    </message>
    <message>
        <source>Which filler</source>
        <translation>Welcher Spachtel</translation>
    </message>
    <message>
        <source>Steps left out</source>
        <translation>Fehlende Schritte</translation>
    </message>
    <message>
        <source>Steps too many</source>
        <translation>Zu viele Schritte</translation>
    </message>
    <message>
        <source>Order of steps</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>Thickness in one go</source>
        <translation>Dicke auf einmal</translation>
    </message>
    <message>
        <source>Built up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Amount mixed</source>
        <translation>Mischmenge</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Härter</translation>
    </message>
    <message>
        <source>Edges cleared</source>
        <translation>Ränder gesäubert</translation>
    </message>
    <message>
        <source>When sanded</source>
        <translation>Wann geschliffen</translation>
    </message>
    <message>
        <source>Other face</source>
        <translation>Andere Seite</translation>
    </message>
    <message>
        <source>Finishing filler</source>
        <translation>Feinspachtel</translation>
    </message>
    <message>
        <source>Inspection</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Wait before primer</source>
        <translation>Wartezeit vor Primer</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>two times</extracomment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1, lift %2</source>
        <extracomment>%1 is a decision, %2 a number: &quot;Hardener, lift 2&quot;</extracomment>
        <translation>%1, Lage %2</translation>
    </message>
    <message>
        <source>Not passed: it was filled where it must stop.</source>
        <translation>Nicht bestanden: trotz Halt gespachtelt.</translation>
    </message>
    <message>
        <source>Not passed: it could have been filled.</source>
        <translation>Nicht bestanden: es war spachtelbar.</translation>
    </message>
    <message>
        <source>Not passed: the wrong filler went in.</source>
        <translation>Nicht bestanden: falscher Spachtel.</translation>
    </message>
    <message>
        <source>Not passed: one mistake that no care makes good.</source>
        <translation>Nicht bestanden: ein Fehler, den keine Sorgfalt wettmacht.</translation>
    </message>
    <message>
        <source>Passed.</source>
        <translation>Bestanden.</translation>
    </message>
    <message>
        <source>Not passed: more than one mistake in: %1.</source>
        <extracomment>%1 is a list of skills: &quot;mix, time&quot;</extracomment>
        <translation>Nicht bestanden: mehr als ein Fehler bei: %1.</translation>
    </message>
</context>
<context>
    <name>PracticeAsk</name>
    <message>
        <source>Look at the panel</source>
        <translation>Teil ansehen</translation>
    </message>
    <message>
        <source>More answers</source>
        <translation>Mehr Antworten</translation>
    </message>
    <message>
        <source>Fill it, or stop?</source>
        <translation>Spachteln oder anhalten?</translation>
    </message>
    <message>
        <source>Fill it</source>
        <translation>Spachteln</translation>
    </message>
    <message>
        <source>Stop here</source>
        <translation>Hier anhalten</translation>
    </message>
    <message>
        <source>What speaks against filling? All of it</source>
        <translation>Was spricht gegen Spachteln? Alles angeben</translation>
    </message>
    <message>
        <source>That is all</source>
        <translation>Das ist alles</translation>
    </message>
    <message>
        <source>What is done instead?</source>
        <translation>Was geschieht stattdessen?</translation>
    </message>
    <message>
        <source>Which filler is put on first?</source>
        <translation>Welcher Spachtel kommt zuerst?</translation>
    </message>
    <message>
        <source>Tap what is done, in its order</source>
        <translation>Antippen, was getan wird, der Reihe nach</translation>
    </message>
    <message>
        <source>Prepared</source>
        <translation>Vorbereitet</translation>
    </message>
    <message>
        <source>How thick is the next lift?</source>
        <translation>Wie dick wird die nächste Lage?</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Key in its thickness</source>
        <translation>Dicke eintippen</translation>
    </message>
    <message>
        <source>Mix for it</source>
        <translation>Dafür mischen</translation>
    </message>
    <message>
        <source>Another lift on this face</source>
        <translation>Noch eine Lage auf dieser Seite</translation>
    </message>
    <message>
        <source>Turn the panel, fill the back</source>
        <translation>Teil wenden, Rückseite spachteln</translation>
    </message>
    <message>
        <source>Finishing filler</source>
        <translation>Feinspachtel</translation>
    </message>
    <message>
        <source>It is sanded. What comes next?</source>
        <translation>Geschliffen. Was kommt als Nächstes?</translation>
    </message>
    <message>
        <source>Finishing filler: how many coats, how thick?</source>
        <translation>Feinspachtel: wie viele Schichten, wie dick?</translation>
    </message>
    <message>
        <source>Coats</source>
        <translation>Schichten</translation>
    </message>
    <message>
        <source>Key in how many</source>
        <translation>Anzahl eintippen</translation>
    </message>
    <message>
        <source>Each coat</source>
        <translation>Je Schicht</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>What do you look for before primer?</source>
        <translation>Was wird vor dem Primer geprüft?</translation>
    </message>
    <message>
        <source>How long after the last sanding comes primer?</source>
        <translation>Wie lange nach dem letzten Schleifen kommt Primer?</translation>
    </message>
    <message>
        <source>Wait</source>
        <translation>Warten</translation>
    </message>
    <message>
        <source>Key in the minutes</source>
        <translation>Minuten eintippen</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Practice panel</source>
        <translation>Übungsteil</translation>
    </message>
</context>
<context>
    <name>PracticeHome</name>
    <message>
        <source>Practice: nobody is at the bench</source>
        <translation>Übung: niemand am Platz</translation>
    </message>
    <message>
        <source>Practice: %1</source>
        <translation>Übung: %1</translation>
    </message>
    <message>
        <source>Practise: nothing here is in the shop’s record</source>
        <translation>Üben: nichts hiervon steht im Protokoll der Werkstatt</translation>
    </message>
    <message>
        <source>exercises: %1</source>
        <extracomment>%1 is a skill: &quot;mix&quot;</extracomment>
        <translation>übt: %1</translation>
    </message>
    <message>
        <source>Go on with the panel</source>
        <translation>Weiter mit dem Teil</translation>
    </message>
    <message>
        <source>Next panel</source>
        <translation>Nächstes Teil</translation>
    </message>
    <message>
        <source>A panel made up</source>
        <translation>Ein erfundenes Teil</translation>
    </message>
    <message>
        <source>never the same again</source>
        <translation>nie zweimal dasselbe</translation>
    </message>
    <message>
        <source>Skills</source>
        <translation>Können</translation>
    </message>
    <message>
        <source>what is mastered</source>
        <translation>was beherrscht wird</translation>
    </message>
    <message>
        <source>Tour</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>three minutes</source>
        <translation>drei Minuten</translation>
    </message>
    <message>
        <source>not tried yet</source>
        <translation>noch nicht geübt</translation>
    </message>
    <message>
        <source>%1 of %2 right</source>
        <translation>%1 von %2 richtig</translation>
    </message>
    <message>
        <source>%1, mastered</source>
        <extracomment>%1 is &quot;8 of 10 right&quot;</extracomment>
        <translation>%1, beherrscht</translation>
    </message>
    <message>
        <source>%1, not mastered yet</source>
        <translation>%1, noch nicht beherrscht</translation>
    </message>
</context>
<context>
    <name>PracticeRules</name>
    <message>
        <source>Every test on the panel must fit the material named.</source>
        <translation>Jede Probe am Teil muss zum genannten Werkstoff passen.</translation>
    </message>
    <message>
        <source>One test speaks against it: %1.</source>
        <extracomment>%1 is a test: &quot;tap sound&quot;</extracomment>
        <translation>Eine Probe spricht dagegen: %1.</translation>
    </message>
    <message>
        <source>No test tells %1 materials apart here: that is unknown.</source>
        <extracomment>%1 is a number</extracomment>
        <translation>Hier trennt keine Probe %1 Werkstoffe: das heißt unbekannt.</translation>
    </message>
    <message>
        <source>The kind of damage sets how it is cut and filled.</source>
        <translation>Die Schadensart bestimmt Ausschneiden und Spachteln.</translation>
    </message>
    <message>
        <source>A length within %1 or %2, a width or depth within %3 or %4. A crack counts from tip to tip.</source>
        <extracomment>%1 and %3 are percentages, %2 and %4 lengths</extracomment>
        <translation>Länge auf %1 oder %2 genau, Breite oder Tiefe auf %3 oder %4. Ein Riss zählt von Spitze zu Spitze.</translation>
    </message>
    <message>
        <source>Only a solid weld is filled; look at both sides.</source>
        <translation>Nur eine volle Naht wird gespachtelt; beide Seiten ansehen.</translation>
    </message>
    <message>
        <source>A nail tells whether the adhesive has cured.</source>
        <translation>Der Nagel zeigt, ob der Kleber ausgehärtet ist.</translation>
    </message>
    <message>
        <source>Reached from behind means by hand, not by a mirror.</source>
        <translation>Zugang von hinten heißt mit der Hand, nicht mit dem Spiegel.</translation>
    </message>
    <message>
        <source>What is on the surface is told by cloth and nail.</source>
        <translation>Was auf der Oberfläche ist, zeigen Tuch und Nagel.</translation>
    </message>
    <message>
        <source>What carries load, restrains or sees reaches %1 round it.</source>
        <extracomment>%1 is a length</extracomment>
        <translation>Was trägt, zurückhält oder sieht, reicht %1 weit ringsum.</translation>
    </message>
    <message>
        <source>A taped foil tells dry from damp.</source>
        <translation>Aufgeklebte Folie verrät Feuchte.</translation>
    </message>
    <message>
        <source>An open edge shows what lies between the skins.</source>
        <translation>Eine offene Kante zeigt, was zwischen den Häuten liegt.</translation>
    </message>
    <message>
        <source>The decision table says it for the answers given.</source>
        <translation>Die Entscheidungstabelle sagt es zu diesen Antworten.</translation>
    </message>
    <message>
        <source>By the answers given, this stops it: %1.</source>
        <translation>Nach den Antworten ist dies ein Halt: %1.</translation>
    </message>
    <message>
        <source>By the answers given, nothing stops it.</source>
        <translation>Nach den Antworten ist nichts ein Halt.</translation>
    </message>
    <message>
        <source>Whoever stops says what must be put right, all of it.</source>
        <translation>Wer anhält, sagt alles, was zu beheben ist.</translation>
    </message>
    <message>
        <source>Each stop has its own way out.</source>
        <translation>Jeder Halt hat seinen eigenen Ausweg.</translation>
    </message>
    <message>
        <source>Best for this damage on this material: %1.</source>
        <extracomment>%1 is a filler</extracomment>
        <translation>Am besten für diesen Schaden auf diesem Werkstoff: %1.</translation>
    </message>
    <message>
        <source>It may be used, but another is better: %1.</source>
        <translation>Er ist erlaubt, besser ist aber: %1.</translation>
    </message>
    <message>
        <source>The table refuses it here: %1.</source>
        <translation>Die Tabelle schließt ihn hier aus: %1.</translation>
    </message>
    <message>
        <source>No step of the plan is left out.</source>
        <translation>Kein Schritt des Plans fehlt.</translation>
    </message>
    <message>
        <source>Nothing is done that does not belong here.</source>
        <translation>Nichts wird getan, was nicht hierher gehört.</translation>
    </message>
    <message>
        <source>Each step comes before the one that would spoil it.</source>
        <translation>Jeder Schritt kommt vor dem, der ihn verderben würde.</translation>
    </message>
    <message>
        <source>At most %1 in one go, and no hotter than %2.</source>
        <extracomment>%1 is a thickness, %2 a temperature</extracomment>
        <translation>Höchstens %1 auf einmal und nicht heißer als %2.</translation>
    </message>
    <message>
        <source>The face is full to within %1.</source>
        <extracomment>%1 is a thickness</extracomment>
        <translation>Die Seite ist auf %1 genau gefüllt.</translation>
    </message>
    <message>
        <source>At most %1 too little or %2 too much.</source>
        <extracomment>%1 and %2 are percentages</extracomment>
        <translation>Höchstens %1 zu wenig oder %2 zu viel.</translation>
    </message>
    <message>
        <source>%1 hardener of filler mass, from %2 to %3.</source>
        <extracomment>three shares</extracomment>
        <translation>%1 Härter auf die Masse des Spachtels, %2 bis %3.</translation>
    </message>
    <message>
        <source>Edges are cleared from %1 of the gel time to the gel.</source>
        <extracomment>%1 is a share</extracomment>
        <translation>Ränder werden ab %1 der Gelzeit bis zum Gel gesäubert.</translation>
    </message>
    <message>
        <source>Sanding waits for %1 cured at the face, and is easy for a while.</source>
        <extracomment>%1 is a share</extracomment>
        <translation>Schleifen erst bei %1 Härtung der Oberfläche; eine Weile geht es leicht.</translation>
    </message>
    <message>
        <source>A hole through a laminate is filled from both faces.</source>
        <translation>Ein Loch durch Laminat wird von beiden Seiten gespachtelt.</translation>
    </message>
    <message>
        <source>A coat at most %1, in all at most %2, full to within %3.</source>
        <extracomment>two thicknesses, and a tolerance</extracomment>
        <translation>Schicht höchstens %1, im Ganzen höchstens %2, auf %3 genau gefüllt.</translation>
    </message>
    <message>
        <source>All tests are made before primer.</source>
        <translation>Alle Prüfungen kommen vor dem Primer.</translation>
    </message>
    <message>
        <source>Primer waits at least %1 after the last sanding.</source>
        <extracomment>%1 is a time</extracomment>
        <translation>Primer wartet mindestens %1 nach dem letzten Schleifen.</translation>
    </message>
</context>
<context>
    <name>ProductFiles</name>
    <message>
        <source>This file is no sheet that can be used</source>
        <translation>Diese Datei ist kein brauchbares Blatt</translation>
    </message>
    <message>
        <source>Another file</source>
        <translation>Andere Datei</translation>
    </message>
    <message>
        <source>Which product sheet is to be read?</source>
        <translation>Welches Produktblatt lesen?</translation>
    </message>
    <message>
        <source>There is no JSON and no CSV file in this folder.</source>
        <translation>In diesem Ordner liegt keine JSON- und keine CSV-Datei.</translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation>Anderer Ordner</translation>
    </message>
</context>
<context>
    <name>ProductSheets</name>
    <message>
        <source>Short name in files</source>
        <translation>Kurzname in Dateien</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Demo sheet</source>
        <translation>Demoblatt</translation>
    </message>
    <message>
        <source>Kind of filler</source>
        <translation>Art des Spachtels</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>Working time</source>
        <translation>Topfzeit</translation>
    </message>
    <message>
        <source>Working time, at least</source>
        <translation>Topfzeit, mindestens</translation>
    </message>
    <message>
        <source>Working time, at most</source>
        <translation>Topfzeit, höchstens</translation>
    </message>
    <message>
        <source>Sands after</source>
        <translation>Schleifbar nach</translation>
    </message>
    <message>
        <source>Sands after, at least</source>
        <translation>Schleifbar, frühestens</translation>
    </message>
    <message>
        <source>Sands after, at most</source>
        <translation>Schleifbar, spätestens</translation>
    </message>
    <message>
        <source>Sands easily for</source>
        <translation>Gut schleifbar für</translation>
    </message>
    <message>
        <source>Layer that was sanded</source>
        <translation>Geschliffene Schicht</translation>
    </message>
    <message>
        <source>Times stated at</source>
        <translation>Zeiten gelten bei</translation>
    </message>
    <message>
        <source>Heat of cure</source>
        <translation>Härtungswärme</translation>
    </message>
    <message>
        <source>Specific heat</source>
        <translation>Spezif. Wärme</translation>
    </message>
    <message>
        <source>Conductivity</source>
        <translation>Wärmeleitung</translation>
    </message>
    <message>
        <source>Greatest lift</source>
        <translation>Dickste Lage</translation>
    </message>
    <message>
        <source>Greatest in all coats</source>
        <translation>Größte Dicke im Ganzen</translation>
    </message>
    <message>
        <source>Shrinkage</source>
        <translation>Schwund</translation>
    </message>
    <message>
        <source>Styrene</source>
        <translation>Styrol</translation>
    </message>
    <message>
        <source>Hardener share</source>
        <translation>Härteranteil</translation>
    </message>
    <message>
        <source>Hardener, lowest</source>
        <translation>Härter, mindestens</translation>
    </message>
    <message>
        <source>Hardener, highest</source>
        <translation>Härter, höchstens</translation>
    </message>
    <message>
        <source>With a caution from</source>
        <translation>Mit Vorsicht ab</translation>
    </message>
    <message>
        <source>With a caution up to</source>
        <translation>Mit Vorsicht bis</translation>
    </message>
    <message>
        <source>Peroxide in hardener</source>
        <translation>Peroxid im Härter</translation>
    </message>
    <message>
        <source>Hardener in a bead</source>
        <translation>Härter je Strang</translation>
    </message>
    <message>
        <source>Panel, coldest</source>
        <translation>Teil, mindestens</translation>
    </message>
    <message>
        <source>Panel, hottest</source>
        <translation>Teil, höchstens</translation>
    </message>
    <message>
        <source>Panel, with a caution</source>
        <translation>Teil, mit Vorsicht</translation>
    </message>
    <message>
        <source>Peak in the filler</source>
        <translation>Spitze im Spachtel</translation>
    </message>
    <message>
        <source>Store from</source>
        <translation>Lagern ab</translation>
    </message>
    <message>
        <source>Store up to</source>
        <translation>Lagern bis</translation>
    </message>
    <message>
        <source>Months sealed</source>
        <translation>Monate verschlossen</translation>
    </message>
    <message>
        <source>Months opened</source>
        <translation>Monate geöffnet</translation>
    </message>
    <message>
        <source>Names zinc</source>
        <translation>Nennt Zink</translation>
    </message>
    <message>
        <source>Activation energy</source>
        <translation>Aktivierungsenergie</translation>
    </message>
    <message>
        <source>Exponent m</source>
        <translation>Exponent m</translation>
    </message>
    <message>
        <source>Exponent n</source>
        <translation>Exponent n</translation>
    </message>
    <message>
        <source>Hardener exponent</source>
        <translation>Exponent des Härters</translation>
    </message>
    <message>
        <source>Cures to at most</source>
        <translation>Härtet höchstens bis</translation>
    </message>
    <message>
        <source>And for each kelvin</source>
        <translation>Und je Kelvin</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Zeiten</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Härter</translation>
    </message>
    <message>
        <source>Limits and store</source>
        <translation>Grenzen und Lager</translation>
    </message>
    <message>
        <source>Heat and make-up</source>
        <translation>Wärme, Bestandteile</translation>
    </message>
    <message>
        <source>Law of cure</source>
        <translation>Härtungsgesetz</translation>
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
        <source>demo sheet</source>
        <translation>Demoblatt</translation>
    </message>
</context>
<context>
    <name>Questions</name>
    <message>
        <source>What is this panel made of?</source>
        <translation>Woraus ist dieses Teil?</translation>
    </message>
    <message>
        <source>What is wrong with it?</source>
        <translation>Welcher Schaden ist es?</translation>
    </message>
    <message>
        <source>How is this seam welded?</source>
        <translation>Wie ist diese Naht geschweißt?</translation>
    </message>
    <message>
        <source>Has the adhesive in this seam cured?</source>
        <translation>Ist der Kleber dieser Naht ausgehärtet?</translation>
    </message>
    <message>
        <source>How large is the damage?</source>
        <translation>Wie groß ist der Schaden?</translation>
    </message>
    <message>
        <source>Can you reach it from behind?</source>
        <translation>Ist die Rückseite zugänglich?</translation>
    </message>
    <message>
        <source>What is on the surface now?</source>
        <translation>Was ist jetzt auf der Fläche?</translation>
    </message>
    <message>
        <source>What is this part of the vehicle for?</source>
        <translation>Wozu dient dieser Teil des Fahrzeugs?</translation>
    </message>
    <message>
        <source>Is it dry right through?</source>
        <translation>Ist es durch und durch trocken?</translation>
    </message>
    <message>
        <source>What is inside the laminate?</source>
        <translation>Was steckt im Laminat?</translation>
    </message>
    <message>
        <source>Read the air, the panel and the humidity</source>
        <translation>Luft, Teil und Feuchte ablesen</translation>
    </message>
    <message>
        <source>glass cloth or mat at the broken edge</source>
        <extracomment>how to tell the answer: one line on its button</extracomment>
        <translation>Glasgewebe oder -matte an der Bruchkante</translation>
    </message>
    <message>
        <source>short loose strands, smooth on both faces</source>
        <translation>kurze lose Fasern, beide Seiten glatt</translation>
    </message>
    <message>
        <source>a magnet holds, the zinc gauge reads nothing</source>
        <translation>Magnet hält, Zinkmessgerät zeigt nichts</translation>
    </message>
    <message>
        <source>a magnet holds, the zinc gauge reads zinc</source>
        <translation>Magnet hält, Zinkmessgerät zeigt Zink</translation>
    </message>
    <message>
        <source>no magnet holds, bright and soft under a file</source>
        <translation>kein Magnet hält, glänzt, weich unter der Feile</translation>
    </message>
    <message>
        <source>marked on the back, such as &gt;PP&lt; or &gt;ABS&lt;</source>
        <translation>hinten gekennzeichnet, etwa &gt;PP&lt; oder &gt;ABS&lt;</translation>
    </message>
    <message>
        <source>bends in the hand, marked &gt;PUR&lt;</source>
        <translation>biegt sich in der Hand, Zeichen &gt;PUR&lt;</translation>
    </message>
    <message>
        <source>black strands, the ohmmeter shows a path</source>
        <translation>schwarze Fasern, das Ohmmeter zeigt Durchgang</translation>
    </message>
    <message>
        <source>breaks like china, no fibre at the edge</source>
        <translation>bricht wie Porzellan, keine Faser an der Kante</translation>
    </message>
    <message>
        <source>no magnet holds, very light, marked Mg</source>
        <translation>kein Magnet hält, sehr leicht, Zeichen Mg</translation>
    </message>
    <message>
        <source>none of these is certain</source>
        <translation>nichts davon ist gewiss</translation>
    </message>
    <message>
        <source>a groove that does not go through</source>
        <translation>eine Rinne, die nicht durchgeht</translation>
    </message>
    <message>
        <source>pushed in, not torn</source>
        <translation>eingedrückt, nicht gerissen</translation>
    </message>
    <message>
        <source>split, nothing missing</source>
        <translation>gespalten, nichts fehlt</translation>
    </message>
    <message>
        <source>goes right through, material is missing</source>
        <translation>geht ganz durch, Material fehlt</translation>
    </message>
    <message>
        <source>rust has eaten through</source>
        <translation>Rost hat es durchgefressen</translation>
    </message>
    <message>
        <source>sheets joined by welding</source>
        <translation>Bleche verschweißt</translation>
    </message>
    <message>
        <source>panels joined by adhesive</source>
        <translation>Teile verklebt</translation>
    </message>
    <message>
        <source>one weld without a gap from end to end</source>
        <translation>eine Naht ohne Lücke von Ende zu Ende</translation>
    </message>
    <message>
        <source>round spots, the sheets loose between them</source>
        <translation>runde Punkte, dazwischen liegt das Blech lose</translation>
    </message>
    <message>
        <source>short welds with gaps between them</source>
        <translation>kurze Nähte mit Lücken dazwischen</translation>
    </message>
    <message>
        <source>the panel itself, nothing on it</source>
        <translation>das Teil selbst, nichts darauf</translation>
    </message>
    <message>
        <source>cured right through and sanded dull</source>
        <translation>durchgehärtet und matt geschliffen</translation>
    </message>
    <message>
        <source>any paint where filler is to go</source>
        <translation>Lack, wo der Spachtel hinkommt</translation>
    </message>
    <message>
        <source>filler that nobody knows</source>
        <translation>Spachtel, den niemand kennt</translation>
    </message>
    <message>
        <source>soft, takes a nail mark</source>
        <translation>weich, Nagel drückt sich ein</translation>
    </message>
    <message>
        <source>brown or black, in the pits too</source>
        <translation>braun oder schwarz, auch in den Narben</translation>
    </message>
    <message>
        <source>black or blue film over old rust</source>
        <translation>schwarzer oder blauer Film auf altem Rost</translation>
    </message>
    <message>
        <source>thin, acid, often yellow or grey-green</source>
        <translation>dünn, sauer, oft gelb oder graugrün</translation>
    </message>
    <message>
        <source>smells, or smears under a solvent cloth</source>
        <translation>riecht oder schmiert unter dem Lösemitteltuch</translation>
    </message>
    <message>
        <source>soft grey metal, brown residue</source>
        <translation>weiches graues Metall, braune Reste</translation>
    </message>
    <message>
        <source>skin, skirt, fairing: nothing depends on it</source>
        <translation>Haut, Schürze, Verkleidung: nichts hängt daran</translation>
    </message>
    <message>
        <source>pillar, rail, or within 30 cm of brake, steering, suspension</source>
        <translation>Säule, Träger oder bis 30 cm um Bremse, Lenkung, Fahrwerk</translation>
    </message>
    <message>
        <source>belt or seat mounting, glass flange, airbag, high voltage</source>
        <translation>Gurt-/Sitzbefestigung, Glasflansch, Airbag, Hochvolt</translation>
    </message>
    <message>
        <source>radar, camera or ultrasound looks through it</source>
        <translation>Radar, Kamera oder Ultraschall schaut hindurch</translation>
    </message>
    <message>
        <source>tank, line or air vessel</source>
        <translation>Tank, Leitung oder Luftbehälter</translation>
    </message>
    <message>
        <source>no mist under taped film, front and back</source>
        <translation>kein Beschlag unter Folie, vorn und hinten</translation>
    </message>
    <message>
        <source>wet, dark, or mist under taped film</source>
        <translation>nass, dunkel oder Beschlag unter Folie</translation>
    </message>
    <message>
        <source>solid laminate, nothing between two skins</source>
        <translation>volles Laminat, nichts zwischen zwei Häuten</translation>
    </message>
    <message>
        <source>two skins with foam between them</source>
        <translation>zwei Häute mit Schaum dazwischen</translation>
    </message>
    <message>
        <source>two skins with sound, dry wood</source>
        <translation>zwei Häute mit gesundem, trockenem Holz</translation>
    </message>
    <message>
        <source>wood that is dark, soft or wet</source>
        <translation>Holz, das dunkel, weich oder nass ist</translation>
    </message>
    <message>
        <source>Cured</source>
        <translation>Ausgehärtet</translation>
    </message>
    <message>
        <source>Yes, both faces</source>
        <translation>Ja, beide Seiten</translation>
    </message>
    <message>
        <source>Not cured</source>
        <translation>Nicht ausgehärtet</translation>
    </message>
    <message>
        <source>No, one face only</source>
        <translation>Nein, nur eine Seite</translation>
    </message>
    <message>
        <source>its sheet’s time is over, a nail leaves no mark</source>
        <translation>Zeit laut Blatt ist um, der Nagel hinterlässt nichts</translation>
    </message>
    <message>
        <source>hand and tool get there</source>
        <translation>Hand und Werkzeug kommen hin</translation>
    </message>
    <message>
        <source>soft, or nobody knows when it was laid</source>
        <translation>weich, oder niemand weiß, seit wann</translation>
    </message>
    <message>
        <source>closed behind, or too tight to work</source>
        <translation>hinten zu, oder zu eng zum Arbeiten</translation>
    </message>
</context>
<context>
    <name>QuickCard</name>
    <message>
        <source>Quick card</source>
        <translation>Kurzkarte</translation>
    </message>
    <message>
        <source>Limits as they were set on %1; the glass shows those of now.</source>
        <extracomment>%1 is a day</extracomment>
        <translation>Grenzen, wie sie am %1 eingestellt waren; der Bildschirm zeigt die von jetzt.</translation>
    </message>
    <message>
        <source>The safety data sheets, the vehicle maker’s repair manual, local codes and licensed practice come before this card.</source>
        <translation>Sicherheitsdatenblätter, Reparaturanleitung des Fahrzeugherstellers, örtliche Vorschriften und Fachkunde gehen dieser Karte vor.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of several: &quot;1 of 3&quot;</extracomment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>The job in steps</source>
        <translation>Die Arbeit in Schritten</translation>
    </message>
    <message>
        <source>Limits of this bench; a product’s own apply where they are narrower</source>
        <translation>Grenzen dieses Platzes; engere eines Produkts gelten</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Eingestellt</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>a range: &quot;1 % to 3 %&quot;</extracomment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Products in use, by their sheets</source>
        <translation>Produkte im Gebrauch, nach ihren Blättern</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>Hardener, of the filler’s mass</source>
        <translation>Härter, von der Masse des Spachtels</translation>
    </message>
    <message>
        <source>Greatest lift</source>
        <translation>Dickste Lage</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Teil</translation>
    </message>
    <message numerus="yes">
        <source>%n more product(s) under bench set-up.</source>
        <translation>
            <numerusform>%n weiteres Produkt unter „Platz einrichten“.</numerusform>
            <numerusform>%n weitere Produkte unter „Platz einrichten“.</numerusform>
        </translation>
    </message>
    <message>
        <source>Signs</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>Stop: do not go on here.</source>
        <translation>Halt: hier nicht weitermachen.</translation>
    </message>
    <message>
        <source>Caution: it can hurt, or spoil the work.</source>
        <translation>Vorsicht: kann verletzen oder die Arbeit verderben.</translation>
    </message>
    <message>
        <source>Done: it was told and is in the log.</source>
        <translation>Getan: gemeldet und im Protokoll.</translation>
    </message>
</context>
<context>
    <name>Reasons</name>
    <message>
        <source>Its resin wets the glass of a laminate.</source>
        <translation>Sein Harz benetzt die Glasfaser eines Laminats.</translation>
    </message>
    <message>
        <source>It holds on SMC that is abraded and free of dust.</source>
        <translation>Hält auf SMC, das angeschliffen und staubfrei ist.</translation>
    </message>
    <message>
        <source>It holds on bare, abraded steel.</source>
        <translation>Hält auf blankem, angeschliffenem Stahl.</translation>
    </message>
    <message>
        <source>It holds on aluminium filled within the hour.</source>
        <translation>Hält auf Aluminium, binnen einer Stunde gespachtelt.</translation>
    </message>
    <message>
        <source>On zinc only if its sheet names zinc, or over abraded epoxy primer.</source>
        <translation>Auf Zink nur, wenn sein Blatt Zink nennt, oder über angeschliffenem Epoxidprimer.</translation>
    </message>
    <message>
        <source>Dense filler has the fewest pores over a ground weld.</source>
        <translation>Dichter Spachtel hat auf geschliffener Naht am wenigsten Poren.</translation>
    </message>
    <message>
        <source>Dense filler shows the bond line least when it swells.</source>
        <translation>Bei dichtem Spachtel zeichnet sich die Klebenaht am wenigsten ab.</translation>
    </message>
    <message>
        <source>Its short strands hold only in a small hole.</source>
        <translation>Seine kurzen Fasern halten nur in einem kleinen Loch.</translation>
    </message>
    <message>
        <source>Light filler holds poorly on SMC.</source>
        <translation>Leichter Spachtel hält schlecht auf SMC.</translation>
    </message>
    <message>
        <source>Light filler has pores that let water to the zinc.</source>
        <translation>Leichter Spachtel hat Poren, die Wasser ans Zink lassen.</translation>
    </message>
    <message>
        <source>Light filler has pores that let water to the aluminium.</source>
        <translation>Leichter Spachtel hat Poren, die Wasser ans Aluminium lassen.</translation>
    </message>
    <message>
        <source>Light filler only over a weld without pores.</source>
        <translation>Leichter Spachtel nur über einer Naht ohne Poren.</translation>
    </message>
    <message>
        <source>It takes a bond seam whose adhesive has cured.</source>
        <translation>Geht auf eine Klebenaht, deren Kleber ausgehärtet ist.</translation>
    </message>
    <message>
        <source>Light filler cannot bridge a hole.</source>
        <translation>Leichter Spachtel überbrückt kein Loch.</translation>
    </message>
    <message>
        <source>Mixed strand bonds best to SMC.</source>
        <translation>Mischfaser haftet auf SMC am besten.</translation>
    </message>
    <message>
        <source>It takes a solid weld that is ground level.</source>
        <translation>Geht auf eine volle Naht, die eben geschliffen ist.</translation>
    </message>
    <message>
        <source>Mixed strand bridges a hole and wets its edges.</source>
        <translation>Mischfaser überbrückt ein Loch und benetzt die Ränder.</translation>
    </message>
    <message>
        <source>Long strand builds bulk.</source>
        <translation>Langfaser baut Dicke auf.</translation>
    </message>
    <message>
        <source>Long strand has too little resin to wet SMC.</source>
        <translation>Langfaser hat zu wenig Harz, um SMC zu benetzen.</translation>
    </message>
    <message>
        <source>Long strand is coarse and lets water to the zinc.</source>
        <translation>Langfaser ist grob und lässt Wasser ans Zink.</translation>
    </message>
    <message>
        <source>Long strand is coarse and lets water to the aluminium.</source>
        <translation>Langfaser ist grob und lässt Wasser ans Aluminium.</translation>
    </message>
    <message>
        <source>Long strand leaves voids over a weld.</source>
        <translation>Langfaser lässt über einer Schweißnaht Hohlräume.</translation>
    </message>
    <message>
        <source>Long strand leaves voids over a bond line.</source>
        <translation>Langfaser lässt über einer Klebenaht Hohlräume.</translation>
    </message>
    <message>
        <source>Long strand only bridges; mixed strand must go over it.</source>
        <translation>Langfaser überbrückt nur; Mischfaser muss darüber.</translation>
    </message>
    <message>
        <source>The table does not say that it may be used here.</source>
        <translation>Die Tabelle sagt nicht, dass es hier erlaubt ist.</translation>
    </message>
    <message>
        <source>No product sheet of this class is loaded.</source>
        <translation>Kein Produktblatt dieser Klasse ist geladen.</translation>
    </message>
    <message>
        <source>%1 suits better here.</source>
        <extracomment>%1 is a filler class: &quot;mixed strand&quot;</extracomment>
        <translation>%1 passt hier besser.</translation>
    </message>
    <message>
        <source>The dent is %1 deep: metal-work aims at %2 or less.</source>
        <translation>Die Delle ist %1 tief: ausbeulen auf %2 oder weniger.</translation>
    </message>
    <message>
        <source>The panel is at %1, below %2: it cures slower and grips less.</source>
        <translation>Das Teil hat %1, unter %2: härtet langsamer, haftet weniger.</translation>
    </message>
    <message>
        <source>The hole is %1 across: bond a backing first, lapping %2.</source>
        <translation>Das Loch misst %1: erst eine Hinterlage kleben, %2 Überstand.</translation>
    </message>
    <message>
        <source>No bevel is given: filler cracks out of square edges.</source>
        <translation>Keine Fase angegeben: an scharfen Kanten reißt Spachtel aus.</translation>
    </message>
    <message>
        <source>%1 is too little to measure by a bead: weigh it to 0.01 g, or mix %2 and book the waste.</source>
        <translation>%1 ist zu wenig für einen Strang: auf 0,01 g wiegen, oder %2 mischen und den Rest buchen.</translation>
    </message>
    <message>
        <source>The puddle is only %1 across, below %2: weigh instead.</source>
        <translation>Der Kreis misst nur %1, unter %2: lieber wiegen.</translation>
    </message>
    <message>
        <source>The puddle is %1 across, above %2: split the batch.</source>
        <translation>Der Kreis misst %1, über %2: Ansatz teilen.</translation>
    </message>
    <message>
        <source>The puddle is %1 across, the board %2: split the batch.</source>
        <translation>Der Kreis misst %1, das Brett %2: Ansatz teilen.</translation>
    </message>
    <message>
        <source>Demo sheet: its values are invented, not for work.</source>
        <translation>Demoblatt: Werte erfunden, nicht zum Arbeiten.</translation>
    </message>
    <message>
        <source>%1 in one go reaches %2, limit %3: %4 lifts.</source>
        <extracomment>%1 is a thickness, %2 and %3 temperatures, %4 a number above one</extracomment>
        <translation>%1 auf einmal erreichen %2, Grenze %3: %4 Lagen.</translation>
    </message>
    <message>
        <source>At most %1 in one go today: more would pass %2.</source>
        <translation>Heute höchstens %1 auf einmal: mehr käme über %2.</translation>
    </message>
    <message>
        <source>Nobody reaches behind it: %1 bridges the backing, %2 goes over it.</source>
        <extracomment>%1 is the hole&apos;s size, %2 how far the backing laps its edge</extracomment>
        <translation>Von hinten kommt niemand hin: %1 überbrückt die Hinterlage, %2 kommt darüber.</translation>
    </message>
    <message>
        <source>The hardener lot in hand cures %1 faster than its sheet: planned for that.</source>
        <extracomment>%1 is a share: &quot;8 %&quot;</extracomment>
        <translation>Die Härtercharge in der Hand härtet %1 schneller als ihr Blatt: so geplant.</translation>
    </message>
    <message>
        <source>The hardener lot in hand cures %1 slower than its sheet: planned for that.</source>
        <translation>Die Härtercharge in der Hand härtet %1 langsamer als ihr Blatt: so geplant.</translation>
    </message>
    <message>
        <source>Overridden by the supervisor: %1.</source>
        <extracomment>%1 is a stop: &quot;Damp&quot;</extracomment>
        <translation>Vom Meister übergangen: %1.</translation>
    </message>
</context>
<context>
    <name>RecallList</name>
    <message>
        <source>Recall list · %1 · lot %2</source>
        <extracomment>%1 is a product, %2 a lot</extracomment>
        <translation>Rückrufliste · %1 · Charge %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of a list: &quot;1 of 3&quot;</extracomment>
        <translation>%1 von %2</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n Ansatz</numerusform>
            <numerusform>%n Ansätze</numerusform>
        </translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Every batch that this bench’s log names with this lot; batches whose lot was not told are not among them.</source>
        <translation>Jeder Ansatz, den das Protokoll dieses Platzes mit dieser Charge nennt; Ansätze ohne genannte Charge fehlen.</translation>
    </message>
</context>
<context>
    <name>RecordScreen</name>
    <message>
        <source>Deviation</source>
        <translation>Abweichung</translation>
    </message>
</context>
<context>
    <name>Review</name>
    <message>
        <source>at work</source>
        <translation>in Arbeit</translation>
    </message>
    <message>
        <source>to sign off or return</source>
        <translation>abzunehmen oder zurückzugeben</translation>
    </message>
    <message>
        <source>signed off</source>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>What the panel is made of was not found out.</source>
        <translation>Woraus das Teil besteht, wurde nicht festgestellt.</translation>
    </message>
    <message>
        <source>No photo: %1.</source>
        <extracomment>%1 is a moment: &quot;as found&quot;</extracomment>
        <translation>Kein Foto: %1.</translation>
    </message>
    <message>
        <source>Lot of the filler not told.</source>
        <translation>Charge des Spachtels nicht angegeben.</translation>
    </message>
    <message>
        <source>Lot of the hardener not told.</source>
        <translation>Charge des Härters nicht angegeben.</translation>
    </message>
    <message>
        <source>No reading of air and panel before the first hardener.</source>
        <translation>Keine Ablesung von Luft und Teil vor dem ersten Härter.</translation>
    </message>
    <message>
        <source>Air and humidity were keyed in, not read by an instrument.</source>
        <translation>Luft und Feuchte wurden eingetippt, nicht von einem Gerät gelesen.</translation>
    </message>
    <message>
        <source>Filler and hardener were not weighed.</source>
        <translation>Spachtel und Härter wurden nicht gewogen.</translation>
    </message>
    <message>
        <source>Not told when the edges were clear.</source>
        <translation>Nicht angegeben, wann die Ränder frei waren.</translation>
    </message>
    <message>
        <source>Nail and paper test not told.</source>
        <translation>Nagel- und Papierprobe nicht angegeben.</translation>
    </message>
    <message>
        <source>Tests of the hand-over not passed: %1.</source>
        <extracomment>%1 is a number</extracomment>
        <translation>Nicht bestandene Prüfungen der Übergabe: %1.</translation>
    </message>
    <message>
        <source>Acts without a name: %1.</source>
        <extracomment>%1 is a number</extracomment>
        <translation>Schritte ohne Namen: %1.</translation>
    </message>
    <message>
        <source>Not told who allowed: %1.</source>
        <extracomment>%1 is a stop: &quot;Damp&quot;</extracomment>
        <translation>Nicht angegeben, wer es erlaubte: %1.</translation>
    </message>
    <message>
        <source>assessing</source>
        <translation>Beurteilen</translation>
    </message>
    <message>
        <source>preparing</source>
        <translation>Vorbereiten</translation>
    </message>
    <message>
        <source>laying</source>
        <translation>Auftragen</translation>
    </message>
    <message>
        <source>curing</source>
        <translation>Härten</translation>
    </message>
    <message>
        <source>sanding</source>
        <translation>Schleifen</translation>
    </message>
    <message>
        <source>turning</source>
        <translation>Wenden</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation>Finish</translation>
    </message>
    <message>
        <source>parked</source>
        <translation>geparkt</translation>
    </message>
    <message>
        <source>All repairs</source>
        <translation>Alle Reparaturen</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>This bench</source>
        <translation>Dieser Platz</translation>
    </message>
    <message>
        <source>Bench %1</source>
        <translation>Platz %1</translation>
    </message>
    <message>
        <source>Not told by what the substrate was found out.</source>
        <translation>Woran der Untergrund erkannt wurde, ist nicht gesagt.</translation>
    </message>
</context>
<context>
    <name>ReviewChoices</name>
    <message>
        <source>Which repairs of the day?</source>
        <translation>Welche Reparaturen des Tages?</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s)</source>
        <translation>
            <numerusform>%n Reparatur</numerusform>
            <numerusform>%n Reparaturen</numerusform>
        </translation>
    </message>
    <message>
        <source>No repair of that day has one.</source>
        <translation>Keine Reparatur dieses Tages hat das.</translation>
    </message>
    <message>
        <source>Why is it returned?</source>
        <translation>Warum wird sie zurückgegeben?</translation>
    </message>
    <message>
        <source>More reasons</source>
        <translation>Weitere Gründe</translation>
    </message>
</context>
<context>
    <name>Roles</name>
    <message>
        <source>edges due soon</source>
        <translation>Ränder bald fällig</translation>
    </message>
    <message>
        <source>it gels</source>
        <translation>es geliert</translation>
    </message>
    <message>
        <source>it sands</source>
        <translation>es lässt sich schleifen</translation>
    </message>
    <message>
        <source>sanding time over</source>
        <translation>Schleifzeit vorbei</translation>
    </message>
    <message>
        <source>Hands off: it gels</source>
        <translation>Hände weg: es geliert</translation>
    </message>
    <message>
        <source>Sand: it is ready</source>
        <translation>Schleifen: es ist so weit</translation>
    </message>
    <message>
        <source>Sand now: it hardens</source>
        <translation>Jetzt schleifen: wird hart</translation>
    </message>
    <message>
        <source>sign-off</source>
        <translation>Abnahme</translation>
    </message>
    <message>
        <source>override of a stop</source>
        <translation>Übergehen eines Halts</translation>
    </message>
    <message>
        <source>change of a product sheet</source>
        <translation>Ändern eines Produktblatts</translation>
    </message>
    <message>
        <source>restoring a backup</source>
        <translation>Zurückholen einer Sicherung</translation>
    </message>
    <message>
        <source>forgetting a lot</source>
        <translation>Vergessen einer Charge</translation>
    </message>
    <message>
        <source>correction of a record</source>
        <translation>Berichtigung einer Akte</translation>
    </message>
    <message>
        <source>change of the PIN</source>
        <translation>Ändern der PIN</translation>
    </message>
    <message>
        <source>without a PIN</source>
        <translation>ohne PIN</translation>
    </message>
    <message>
        <source>wrong PIN</source>
        <translation>falsche PIN</translation>
    </message>
    <message>
        <source>within the wait after wrong PINs</source>
        <translation>in der Wartezeit nach falschen PINs</translation>
    </message>
    <message>
        <source>no PIN is set</source>
        <translation>keine PIN gesetzt</translation>
    </message>
    <message>
        <source>the try could not be counted</source>
        <translation>der Versuch ließ sich nicht zählen</translation>
    </message>
    <message>
        <source>Proved by another test</source>
        <translation>Durch andere Prüfung belegt</translation>
    </message>
    <message>
        <source>The vehicle maker’s manual allows it</source>
        <translation>Die Anleitung des Herstellers erlaubt es</translation>
    </message>
    <message>
        <source>A trial piece, not for a vehicle</source>
        <translation>Probestück, nicht für ein Fahrzeug</translation>
    </message>
    <message>
        <source>Clear the edges: %1</source>
        <extracomment>%1 is a time left: &quot;0:20&quot;</extracomment>
        <translation>Ränder säubern: %1</translation>
    </message>
    <message>
        <source>Clear the edges now</source>
        <translation>Jetzt Ränder säubern</translation>
    </message>
    <message numerus="yes">
        <source>+%n more</source>
        <translation>
            <numerusform>+%n weiterer</numerusform>
            <numerusform>+%n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Clock set on by %1. Mixes run on.</source>
        <translation>Uhr um %1 vorgestellt. Mischungen laufen weiter.</translation>
    </message>
    <message>
        <source>Clock set back by %1. Mixes run on.</source>
        <translation>Uhr um %1 zurückgestellt. Mischungen laufen weiter.</translation>
    </message>
    <message>
        <source>The machine slept %1. Mixes ran on.</source>
        <translation>Der Rechner schlief %1. Mischungen liefen weiter.</translation>
    </message>
    <message>
        <source>Local time goes on by %1. Mixes run on.</source>
        <translation>Ortszeit rückt um %1 vor. Mischungen laufen weiter.</translation>
    </message>
    <message>
        <source>Local time goes back by %1. Mixes run on.</source>
        <translation>Ortszeit geht um %1 zurück. Mischungen laufen weiter.</translation>
    </message>
    <message>
        <source>The machine restarted after %1. Mixes ran on.</source>
        <translation>Rechner nach %1 neu gestartet. Mischungen liefen weiter.</translation>
    </message>
    <message>
        <source>The clock stands %1 behind the log: set it.</source>
        <translation>Die Uhr geht dem Protokoll %1 nach: stellen.</translation>
    </message>
    <message>
        <source>Refused: %1, %2</source>
        <extracomment>%1 is an act, %2 why: &quot;sign-off&quot;, &quot;wrong PIN&quot;</extracomment>
        <translation>Verweigert: %1, %2</translation>
    </message>
    <message>
        <source>Supervisor’s PIN set at the machine</source>
        <translation>PIN des Meisters am Rechner gesetzt</translation>
    </message>
    <message>
        <source>Supervisor’s PIN set</source>
        <translation>PIN des Meisters gesetzt</translation>
    </message>
    <message>
        <source>Log restored from a backup, whole: %1 entries</source>
        <translation>Protokoll aus Sicherung zurückgeholt, vollständig: %1 Einträge</translation>
    </message>
    <message>
        <source>Log restored from a backup, as far as it could be read: %1 entries</source>
        <translation>Protokoll aus Sicherung zurückgeholt, soweit lesbar: %1 Einträge</translation>
    </message>
    <message>
        <source>Log of bench %1 brought in: %2 entries</source>
        <extracomment>%1 is a bench&apos;s name, %2 a number</extracomment>
        <translation>Protokoll von Platz %1 hereingeholt: %2 Einträge</translation>
    </message>
    <message>
        <source>Bead of hardener %1 calibrated: %2, scatter %3</source>
        <extracomment>%1 is a lot, %2 a mass per length, %3 a percentage</extracomment>
        <translation>Strang von Härter %1 kalibriert: %2, Streuung %3</translation>
    </message>
    <message>
        <source>Product sheet kept: %1</source>
        <extracomment>%1 is the sheet&apos;s id</extracomment>
        <translation>Produktblatt behalten: %1</translation>
    </message>
    <message>
        <source>Product sheet laid aside: %1</source>
        <translation>Produktblatt abgelegt: %1</translation>
    </message>
    <message>
        <source>return</source>
        <translation>Rückgabe</translation>
    </message>
    <message>
        <source>The contour is not true</source>
        <translation>Die Kontur stimmt nicht</translation>
    </message>
    <message>
        <source>Pinholes</source>
        <translation>Poren</translation>
    </message>
    <message>
        <source>An edge shows or maps</source>
        <translation>Ein Rand zeichnet sich ab</translation>
    </message>
    <message>
        <source>Filler is soft</source>
        <translation>Der Spachtel ist weich</translation>
    </message>
    <message>
        <source>Sounds hollow: it does not hold</source>
        <translation>Klingt hohl: er hält nicht</translation>
    </message>
    <message>
        <source>Strayed too far from plan or sheet</source>
        <translation>Zu weit von Plan oder Blatt abgewichen</translation>
    </message>
    <message>
        <source>The record lacks what it must hold</source>
        <translation>Der Akte fehlt, was sie enthalten muss</translation>
    </message>
    <message>
        <source>Something else: in words</source>
        <translation>Etwas anderes: in Worten</translation>
    </message>
</context>
<context>
    <name>Settings</name>
    <message>
        <source>bench.ini: not allowed and left out: %1</source>
        <translation>bench.ini: nicht erlaubt, weggelassen: %1</translation>
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
        <translation>aufgenommen %1</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keins</translation>
    </message>
</context>
<context>
    <name>SkillsPaper</name>
    <message>
        <source>filled where it must stop</source>
        <translation>trotz Halt gespachtelt</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>not passed</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>Practice · %1</source>
        <extracomment>%1 is a person</extracomment>
        <translation>Übung · %1</translation>
    </message>
    <message>
        <source>Practice panels alone; nothing of this is in the shop’s record. It says what was practised, not what somebody may do.</source>
        <translation>Nur Übungsteile; nichts davon steht im Protokoll der Werkstatt. Es sagt, was geübt wurde, nicht, was jemand darf.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of several: &quot;1 of 3&quot;</extracomment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Skill</source>
        <translation>Können</translation>
    </message>
    <message>
        <source>Panels</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Likely known</source>
        <translation>Wohl gekonnt</translation>
    </message>
    <message>
        <source>Mastered: known with a probability of 95 % by knowledge tracing (Corbett and Anderson, 1995).</source>
        <translation>Beherrscht: mit 95&#xa0;% Wahrscheinlichkeit gekonnt, nach „Knowledge Tracing“ (Corbett und Anderson, 1995).</translation>
    </message>
    <message>
        <source>Panels worked</source>
        <translation>Bearbeitete Teile</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>How it ended</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Mistakes</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Choose where the skills go</source>
        <translation>Wohin mit dem Übungsblatt?</translation>
    </message>
</context>
<context>
    <name>Statements</name>
    <message>
        <source>Extremely flammable aerosol.</source>
        <translation>Extrem entzündbares Aerosol.</translation>
    </message>
    <message>
        <source>Highly flammable liquid and vapour.</source>
        <translation>Flüssigkeit und Dampf leicht entzündbar.</translation>
    </message>
    <message>
        <source>Flammable liquid and vapour.</source>
        <translation>Flüssigkeit und Dampf entzündbar.</translation>
    </message>
    <message>
        <source>Flammable solid.</source>
        <translation>Entzündbarer Feststoff.</translation>
    </message>
    <message>
        <source>Pressurised container: may burst if heated.</source>
        <translation>Behälter steht unter Druck: Kann bei Erwärmung bersten.</translation>
    </message>
    <message>
        <source>Heating may cause a fire or explosion.</source>
        <translation>Erwärmung kann Brand oder Explosion verursachen.</translation>
    </message>
    <message>
        <source>Heating may cause a fire.</source>
        <translation>Erwärmung kann Brand verursachen.</translation>
    </message>
    <message>
        <source>In contact with water releases flammable gases.</source>
        <translation>In Berührung mit Wasser entstehen entzündbare Gase.</translation>
    </message>
    <message>
        <source>May be corrosive to metals.</source>
        <translation>Kann gegenüber Metallen korrosiv sein.</translation>
    </message>
    <message>
        <source>Toxic if swallowed.</source>
        <translation>Giftig bei Verschlucken.</translation>
    </message>
    <message>
        <source>Harmful if swallowed.</source>
        <translation>Gesundheitsschädlich bei Verschlucken.</translation>
    </message>
    <message>
        <source>May be fatal if swallowed and enters airways.</source>
        <translation>Kann bei Verschlucken und Eindringen in die Atemwege tödlich sein.</translation>
    </message>
    <message>
        <source>Harmful in contact with skin.</source>
        <translation>Gesundheitsschädlich bei Hautkontakt.</translation>
    </message>
    <message>
        <source>Causes severe skin burns and eye damage.</source>
        <translation>Verursacht schwere Verätzungen der Haut und schwere Augenschäden.</translation>
    </message>
    <message>
        <source>Causes skin irritation.</source>
        <translation>Verursacht Hautreizungen.</translation>
    </message>
    <message>
        <source>May cause an allergic skin reaction.</source>
        <translation>Kann allergische Hautreaktionen verursachen.</translation>
    </message>
    <message>
        <source>Causes serious eye damage.</source>
        <translation>Verursacht schwere Augenschäden.</translation>
    </message>
    <message>
        <source>Causes serious eye irritation.</source>
        <translation>Verursacht schwere Augenreizung.</translation>
    </message>
    <message>
        <source>Harmful if inhaled.</source>
        <translation>Gesundheitsschädlich bei Einatmen.</translation>
    </message>
    <message>
        <source>May cause allergy or asthma symptoms or breathing difficulties if inhaled.</source>
        <translation>Kann bei Einatmen Allergie, asthmaartige Symptome oder Atembeschwerden verursachen.</translation>
    </message>
    <message>
        <source>May cause respiratory irritation.</source>
        <translation>Kann die Atemwege reizen.</translation>
    </message>
    <message>
        <source>May cause drowsiness or dizziness.</source>
        <translation>Kann Schläfrigkeit und Benommenheit verursachen.</translation>
    </message>
    <message>
        <source>May cause cancer.</source>
        <translation>Kann Krebs erzeugen.</translation>
    </message>
    <message>
        <source>Suspected of causing cancer.</source>
        <translation>Kann vermutlich Krebs erzeugen.</translation>
    </message>
    <message>
        <source>May damage fertility or the unborn child.</source>
        <translation>Kann die Fruchtbarkeit beeinträchtigen oder das Kind im Mutterleib schädigen.</translation>
    </message>
    <message>
        <source>Suspected of damaging fertility or the unborn child.</source>
        <translation>Kann vermutlich die Fruchtbarkeit beeinträchtigen oder das Kind im Mutterleib schädigen.</translation>
    </message>
    <message>
        <source>Suspected of damaging the unborn child.</source>
        <translation>Kann vermutlich das Kind im Mutterleib schädigen.</translation>
    </message>
    <message>
        <source>Causes damage to organs through prolonged or repeated exposure.</source>
        <translation>Schädigt die Organe bei längerer oder wiederholter Exposition.</translation>
    </message>
    <message>
        <source>May cause damage to organs through prolonged or repeated exposure.</source>
        <translation>Kann die Organe schädigen bei längerer oder wiederholter Exposition.</translation>
    </message>
    <message>
        <source>Very toxic to aquatic life.</source>
        <translation>Sehr giftig für Wasserorganismen.</translation>
    </message>
    <message>
        <source>Very toxic to aquatic life with long lasting effects.</source>
        <translation>Sehr giftig für Wasserorganismen, mit langfristiger Wirkung.</translation>
    </message>
    <message>
        <source>Toxic to aquatic life with long lasting effects.</source>
        <translation>Giftig für Wasserorganismen, mit langfristiger Wirkung.</translation>
    </message>
    <message>
        <source>Harmful to aquatic life with long lasting effects.</source>
        <translation>Schädlich für Wasserorganismen, mit langfristiger Wirkung.</translation>
    </message>
    <message>
        <source>Repeated exposure may cause skin dryness or cracking.</source>
        <translation>Wiederholter Kontakt kann zu spröder oder rissiger Haut führen.</translation>
    </message>
    <message>
        <source>Obtain special instructions before use.</source>
        <translation>Vor Gebrauch besondere Anweisungen einholen.</translation>
    </message>
    <message>
        <source>Do not handle until all safety precautions have been read and understood.</source>
        <translation>Vor Gebrauch alle Sicherheitshinweise lesen und verstehen.</translation>
    </message>
    <message>
        <source>Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.</source>
        <translation>Von Hitze, heißen Oberflächen, Funken, offenen Flammen und anderen Zündquellen fernhalten. Nicht rauchen.</translation>
    </message>
    <message>
        <source>Do not allow contact with water.</source>
        <translation>Keinen Kontakt mit Wasser zulassen.</translation>
    </message>
    <message>
        <source>Keep container tightly closed.</source>
        <translation>Behälter dicht verschlossen halten.</translation>
    </message>
    <message>
        <source>Keep only in original packaging.</source>
        <translation>Nur in Originalverpackung aufbewahren.</translation>
    </message>
    <message>
        <source>Keep cool.</source>
        <translation>Kühl halten.</translation>
    </message>
    <message>
        <source>Do not breathe dust/fume/gas/mist/vapours/spray.</source>
        <translation>Staub/Rauch/Gas/Nebel/Dampf/Aerosol nicht einatmen.</translation>
    </message>
    <message>
        <source>Avoid breathing dust/fume/gas/mist/vapours/spray.</source>
        <translation>Einatmen von Staub/Rauch/Gas/Nebel/Dampf/Aerosol vermeiden.</translation>
    </message>
    <message>
        <source>Use only outdoors or in a well-ventilated area.</source>
        <translation>Nur im Freien oder in gut belüfteten Räumen verwenden.</translation>
    </message>
    <message>
        <source>Avoid release to the environment.</source>
        <translation>Freisetzung in die Umwelt vermeiden.</translation>
    </message>
    <message>
        <source>Wear protective gloves/protective clothing/eye protection/face protection.</source>
        <translation>Schutzhandschuhe/Schutzkleidung/Augenschutz/Gesichtsschutz tragen.</translation>
    </message>
    <message>
        <source>IF SWALLOWED: Immediately call a POISON CENTER/doctor.</source>
        <translation>BEI VERSCHLUCKEN: Sofort GIFTINFORMATIONSZENTRUM/Arzt anrufen.</translation>
    </message>
    <message>
        <source>IF ON SKIN: Wash with plenty of water.</source>
        <translation>BEI BERÜHRUNG MIT DER HAUT: Mit viel Wasser waschen.</translation>
    </message>
    <message>
        <source>IF INHALED: Remove person to fresh air and keep comfortable for breathing.</source>
        <translation>BEI EINATMEN: Die Person an die frische Luft bringen und für ungehinderte Atmung sorgen.</translation>
    </message>
    <message>
        <source>IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.</source>
        <translation>BEI KONTAKT MIT DEN AUGEN: Einige Minuten lang behutsam mit Wasser spülen. Eventuell vorhandene Kontaktlinsen nach Möglichkeit entfernen. Weiter spülen.</translation>
    </message>
    <message>
        <source>IF exposed or concerned: Get medical advice/attention.</source>
        <translation>BEI Exposition oder falls betroffen: Ärztlichen Rat einholen/ärztliche Hilfe hinzuziehen.</translation>
    </message>
    <message>
        <source>Do NOT induce vomiting.</source>
        <translation>KEIN Erbrechen herbeiführen.</translation>
    </message>
    <message>
        <source>If skin irritation or rash occurs: Get medical advice/attention.</source>
        <translation>Bei Hautreizung oder -ausschlag: Ärztlichen Rat einholen/ärztliche Hilfe hinzuziehen.</translation>
    </message>
    <message>
        <source>If eye irritation persists: Get medical advice/attention.</source>
        <translation>Bei anhaltender Augenreizung: Ärztlichen Rat einholen/ärztliche Hilfe hinzuziehen.</translation>
    </message>
    <message>
        <source>Store in a well-ventilated place. Keep cool.</source>
        <translation>An einem gut belüfteten Ort aufbewahren. Kühl halten.</translation>
    </message>
    <message>
        <source>Protect from sunlight. Do not expose to temperatures exceeding 50 °C/122 °F.</source>
        <translation>Vor Sonnenbestrahlung schützen. Nicht Temperaturen über 50 °C/122 °F aussetzen.</translation>
    </message>
    <message>
        <source>Store separately.</source>
        <translation>Getrennt aufbewahren.</translation>
    </message>
    <message>
        <source>Dispose of contents/container in accordance with local regulations.</source>
        <translation>Inhalt/Behälter gemäß den örtlichen Vorschriften der Entsorgung zuführen.</translation>
    </message>
</context>
<context>
    <name>StationScreens</name>
    <message>
        <source>Sanding block</source>
        <translation>Schleifklotz</translation>
    </message>
    <message>
        <source>Sand the skim to the contour, 180 grit</source>
        <translation>Feinspachtel in Form schleifen, Korn 180</translation>
    </message>
    <message>
        <source>Sand level, 80 grit, extraction on</source>
        <translation>Eben schleifen, Korn 80, Absaugung an</translation>
    </message>
    <message>
        <source>Feather it out beyond the filler.</source>
        <translation>Über den Spachtel hinaus auslaufen lassen.</translation>
    </message>
    <message>
        <source>Coarser paper only inside the filled area. Then dust off.</source>
        <translation>Gröberes Papier nur in der Spachtelfläche. Dann absaugen.</translation>
    </message>
    <message>
        <source>Sanded and dusted off</source>
        <translation>Geschliffen, staubfrei</translation>
    </message>
    <message>
        <source>Turn the panel</source>
        <translation>Teil wenden</translation>
    </message>
    <message>
        <source>Strip the dam, then turn the panel over</source>
        <translation>Damm abnehmen, dann das Teil wenden</translation>
    </message>
    <message>
        <source>Residue of the dam off, 80 grit, dust off.</source>
        <translation>Reste des Damms weg, Korn 80, absaugen.</translation>
    </message>
    <message>
        <source>The other face is filled the same way.</source>
        <translation>Die andere Seite wird ebenso gespachtelt.</translation>
    </message>
    <message>
        <source>Turned and clean</source>
        <translation>Gewendet und sauber</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>Hand over for primer</source>
        <translation>Übergabe zum Grundieren</translation>
    </message>
    <message>
        <source>All six tests are passed and in the log.</source>
        <translation>Alle sechs Prüfungen bestanden und im Protokoll.</translation>
    </message>
    <message>
        <source>Mixed: %1 of fibre filler, %2 of finishing filler, in %3.</source>
        <translation>Gemischt: %1 Faserspachtel, %2 Feinspachtel, in %3.</translation>
    </message>
    <message>
        <source>The paint system’s data sheet says when it may be primed.</source>
        <translation>Wann grundiert wird, sagt das Datenblatt des Lacksystems.</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>This repair is closed and in the log.</source>
        <translation>Reparatur ist abgeschlossen und im Protokoll.</translation>
    </message>
    <message>
        <source>The supervisor signs it off with the day’s work.</source>
        <translation>Der Meister nimmt sie mit der Tagesarbeit ab.</translation>
    </message>
    <message>
        <source>To the rail</source>
        <translation>Zur Leiste</translation>
    </message>
    <message>
        <source>No photo yet: %1.</source>
        <extracomment>%1 is a list of photos: &quot;as found, bare&quot;</extracomment>
        <translation>Noch kein Foto: %1.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Turn the panel over</source>
        <translation>Das Teil wenden</translation>
    </message>
    <message>
        <source>80 grit, dust off.</source>
        <translation>Korn 80, absaugen.</translation>
    </message>
    <message>
        <source>Returned</source>
        <translation>Zurückgegeben</translation>
    </message>
    <message>
        <source>Returned by the supervisor</source>
        <translation>Vom Meister zurückgegeben</translation>
    </message>
    <message>
        <source>%1, %2. The record of this repair stays as it is; its rework is taken in as a repair of its own, from the first question on.</source>
        <extracomment>%1 is a day, %2 a person</extracomment>
        <translation>%1, %2. Die Akte dieser Reparatur bleibt, wie sie ist; ihre Nacharbeit wird als eigene Reparatur angenommen, von der ersten Frage an.</translation>
    </message>
    <message>
        <source>Begin the rework</source>
        <translation>Nacharbeit beginnen</translation>
    </message>
</context>
<context>
    <name>StationWords</name>
    <message>
        <source>%1 since hardener</source>
        <translation>%1 seit Härter</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>noch %1</translation>
    </message>
    <message>
        <source>by choice</source>
        <translation>auf Wunsch</translation>
    </message>
</context>
<context>
    <name>StepScreen</name>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>To the present step</source>
        <translation>Zum jetzigen Schritt</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1: less</source>
        <translation>%1: weniger</translation>
    </message>
    <message>
        <source>%1: more</source>
        <translation>%1: mehr</translation>
    </message>
    <message>
        <source>not answered yet</source>
        <translation>noch nicht beantwortet</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, unit: %2</source>
        <translation>%1, Einheit: %2</translation>
    </message>
</context>
<context>
    <name>Steps</name>
    <message>
        <source>Put your gear on and start the extraction</source>
        <translation>Ausrüstung anlegen, Absaugung an</translation>
    </message>
    <message>
        <source>Goggles, mask, gloves, ear protection, closed sleeves. Read the safety data sheets of what you use.</source>
        <translation>Brille, Maske, Handschuhe, Gehörschutz, Ärmel zu. Sicherheitsdatenblätter lesen.</translation>
    </message>
    <message>
        <source>Gear is on</source>
        <translation>Ausrüstung an</translation>
    </message>
    <message>
        <source>Fetch the tools that touch only aluminium</source>
        <translation>Werkzeug nur für Aluminium holen</translation>
    </message>
    <message>
        <source>Own discs, own brush, own extractor. Steel grit in aluminium starts corrosion.</source>
        <translation>Eigene Scheiben, Bürste, Absaugung. Stahlkorn im Aluminium lässt es korrodieren.</translation>
    </message>
    <message>
        <source>Own tools are here</source>
        <translation>Eigenes Werkzeug da</translation>
    </message>
    <message>
        <source>Wash the panel with soap and water</source>
        <translation>Teil mit Wasser und Seife waschen</translation>
    </message>
    <message>
        <source>Keep water off open fibre. Rinse, wipe, and let it dry.</source>
        <translation>Kein Wasser an offene Fasern. Spülen, abwischen, trocknen lassen.</translation>
    </message>
    <message>
        <source>Washed and rinsed</source>
        <translation>Gewaschen, gespült</translation>
    </message>
    <message>
        <source>Wipe off wax and grease with solvent</source>
        <translation>Wachs und Fett mit Lösemittel abwischen</translation>
    </message>
    <message>
        <source>Two cloths: one wipes it on, the other takes it off. Before any abrasive.</source>
        <translation>Zwei Tücher: eins trägt auf, eins nimmt ab. Vor jedem Schleifen.</translation>
    </message>
    <message>
        <source>Degreased with two cloths</source>
        <translation>Mit zwei Tüchern entfettet</translation>
    </message>
    <message>
        <source>Degrease with little acetone, away from open fibre</source>
        <translation>Mit wenig Aceton entfetten, nicht an offene Fasern</translation>
    </message>
    <message>
        <source>Two cloths, wipe on and off. Slow solvents soak into open fibre and stay.</source>
        <translation>Zwei Tücher: auftragen, abnehmen. Langsame Lösemittel ziehen in offene Fasern und bleiben.</translation>
    </message>
    <message>
        <source>Let the solvent flash off</source>
        <translation>Lösemittel ablüften lassen</translation>
    </message>
    <message>
        <source>Wait until nothing smells and nothing feels cold.</source>
        <translation>Warten, bis nichts mehr riecht oder sich kalt anfühlt.</translation>
    </message>
    <message>
        <source>Solvent has flashed off</source>
        <translation>Lösemittel ist weg</translation>
    </message>
    <message>
        <source>Strip the paint well beyond the repair</source>
        <translation>Lack weit über die Stelle hinaus entfernen</translation>
    </message>
    <message>
        <source>%1 beyond the damage, edges feathered. Fibre filler never goes over paint.</source>
        <translation>%1 über den Schaden hinaus, Ränder auslaufend. Faserspachtel nie auf Lack.</translation>
    </message>
    <message>
        <source>Paint is off, edges feathered</source>
        <translation>Lack ab, Ränder laufen aus</translation>
    </message>
    <message>
        <source>Cut away everything loose, back to sound material</source>
        <translation>Alles Lose wegschneiden, bis es fest ist</translation>
    </message>
    <message>
        <source>What is white or rattles is loose. Tap: it must ring alike all round.</source>
        <translation>Was weiß ist oder klappert, ist lose. Klopfen: ringsum gleicher Klang.</translation>
    </message>
    <message>
        <source>Cut to sound material</source>
        <translation>Bis ins Feste geschnitten</translation>
    </message>
    <message>
        <source>Find every crack that runs out</source>
        <translation>Jeden auslaufenden Riss suchen</translation>
    </message>
    <message>
        <source>Light from the side, and press gently. Mark each tip.</source>
        <translation>Licht von der Seite, sacht drücken. Jede Spitze anzeichnen.</translation>
    </message>
    <message>
        <source>All tips are marked</source>
        <translation>Alle angezeichnet</translation>
    </message>
    <message>
        <source>Drill a small hole just beyond each crack tip</source>
        <translation>Kleines Loch knapp hinter jede Rissspitze bohren</translation>
    </message>
    <message>
        <source>Cracks run on under the gel coat. Hole %1 to %2, right through.</source>
        <translation>Risse laufen unter dem Gelcoat weiter. Loch %1 bis %2, ganz durch.</translation>
    </message>
    <message>
        <source>All tips drilled</source>
        <translation>Alle gebohrt</translation>
    </message>
    <message>
        <source>Take the squeezed-out adhesive off</source>
        <translation>Ausgequollenen Kleber abnehmen</translation>
    </message>
    <message>
        <source>Down to the panels, none pulled out of the joint.</source>
        <translation>Bis auf die Teile, keinen aus der Fuge ziehen.</translation>
    </message>
    <message>
        <source>Squeeze-out is off</source>
        <translation>Kleber ist ab</translation>
    </message>
    <message>
        <source>Grind the weld level with the contour</source>
        <translation>Naht eben zur Kontur schleifen</translation>
    </message>
    <message>
        <source>Let it cool first. No pore may remain: weld it again where one does.</source>
        <translation>Erst abkühlen lassen. Keine Pore darf bleiben: sonst nachschweißen.</translation>
    </message>
    <message>
        <source>Level, cool, free of pores</source>
        <translation>Eben, kalt, ohne Poren</translation>
    </message>
    <message>
        <source>Dry the panel and prove that it is dry</source>
        <translation>Teil trocknen und Trockenheit nachweisen</translation>
    </message>
    <message>
        <source>Front, edges and back. Tape clear film over it: no mist may form underneath.</source>
        <translation>Vorn, Kanten, hinten. Klare Folie aufkleben: kein Beschlag darunter.</translation>
    </message>
    <message>
        <source>Proved dry</source>
        <translation>Trocken: belegt</translation>
    </message>
    <message>
        <source>Bevel the edge of the damage</source>
        <translation>Rand des Schadens anfasen</translation>
    </message>
    <message>
        <source>Run the bevel out over %1 all round. No square edge may remain.</source>
        <translation>Fase ringsum %1 auslaufen lassen. Keine scharfe Kante darf bleiben.</translation>
    </message>
    <message>
        <source>Bevel is cut</source>
        <translation>Fase ist da</translation>
    </message>
    <message>
        <source>Bevel the edge on both faces</source>
        <translation>Rand auf beiden Seiten anfasen</translation>
    </message>
    <message>
        <source>On each face run the bevel out over %1 all round. The two meet in the middle.</source>
        <translation>Je Seite ringsum %1 auslaufen lassen. Beide treffen sich in der Mitte.</translation>
    </message>
    <message>
        <source>Both bevels are cut</source>
        <translation>Beide Fasen sind da</translation>
    </message>
    <message>
        <source>Open the gouge to a shallow V</source>
        <translation>Kerbe zum flachen V öffnen</translation>
    </message>
    <message>
        <source>No loose fibre and no square edge may remain.</source>
        <translation>Keine lose Faser und keine scharfe Kante darf bleiben.</translation>
    </message>
    <message>
        <source>Gouge is open</source>
        <translation>Kerbe ist offen</translation>
    </message>
    <message>
        <source>Bevel the upper panel’s edge slightly</source>
        <translation>Kante des oberen Teils leicht anfasen</translation>
    </message>
    <message>
        <source>At most %1 deep, half its thickness. Never into the bond line.</source>
        <translation>Höchstens %1 tief, die halbe Dicke. Nie bis in die Klebefuge.</translation>
    </message>
    <message>
        <source>Slight bevel is cut</source>
        <translation>Leichte Fase ist da</translation>
    </message>
    <message>
        <source>Abrade the back around the hole</source>
        <translation>Rückseite um das Loch anschleifen</translation>
    </message>
    <message>
        <source>80 grit, down to clean glass, then dust it off.</source>
        <translation>Korn 80, bis auf saubere Glasfaser, dann absaugen.</translation>
    </message>
    <message>
        <source>Back is abraded</source>
        <translation>Hinten geschliffen</translation>
    </message>
    <message>
        <source>Bond a backing behind the hole</source>
        <translation>Hinterlage hinter das Loch kleben</translation>
    </message>
    <message>
        <source>Cloth and resin, or an offcut, lapping %1 all round. Let it cure.</source>
        <translation>Gewebe und Harz, oder ein Reststück, ringsum %1 Überstand. Aushärten lassen.</translation>
    </message>
    <message>
        <source>Backing is on and cured</source>
        <translation>Hinterlage ist fest</translation>
    </message>
    <message>
        <source>Pull a backing in through the hole and bond it</source>
        <translation>Hinterlage durchs Loch ziehen und kleben</translation>
    </message>
    <message>
        <source>Close the hole with a dam of tape or card</source>
        <translation>Loch mit Damm aus Band oder Karton schließen</translation>
    </message>
    <message>
        <source>Behind the missing area; tape on clean surface only.</source>
        <translation>Hinter die Fehlstelle; Band nur auf saubere Fläche.</translation>
    </message>
    <message>
        <source>Dam is on</source>
        <translation>Damm sitzt</translation>
    </message>
    <message>
        <source>Abrade bevel and surround with 80 grit</source>
        <translation>Fase und Umgebung mit Korn 80 schleifen</translation>
    </message>
    <message>
        <source>Dull all over, no shine left. Coarser only inside the filled area.</source>
        <translation>Überall matt, kein Glanz. Gröber nur in der Spachtelfläche.</translation>
    </message>
    <message>
        <source>Dull all over</source>
        <translation>Überall matt</translation>
    </message>
    <message>
        <source>Abrade the bare metal with 80 grit</source>
        <translation>Blankes Metall mit Korn 80 schleifen</translation>
    </message>
    <message>
        <source>Bright all over, no rust in the pits. The hour until filling starts now.</source>
        <translation>Überall blank, kein Rost in Narben. Die Stunde bis zum Spachteln läuft.</translation>
    </message>
    <message>
        <source>Bright all over</source>
        <translation>Überall blank</translation>
    </message>
    <message>
        <source>Dust off with extraction, then with clean air</source>
        <translation>Absaugen, dann mit sauberer Luft abblasen</translation>
    </message>
    <message>
        <source>Dry, oil-free, below 30 psi (2 bar), with chip guarding. No solvent on ground fibre.</source>
        <translation>Trocken, ölfrei, unter 30 psi (2 bar), Splitterschutz. Kein Lösemittel auf geschliffene Fasern.</translation>
    </message>
    <message>
        <source>Free of dust</source>
        <translation>Staubfrei</translation>
    </message>
    <message>
        <source>Wipe the bare metal once, fast, and dry it</source>
        <translation>Blankes Metall einmal schnell wischen, trocknen</translation>
    </message>
    <message>
        <source>Solvent on one clean cloth, a dry one right behind it.</source>
        <translation>Lösemittel auf ein sauberes Tuch, ein trockenes gleich dahinter.</translation>
    </message>
    <message>
        <source>Wiped and dried</source>
        <translation>Gewischt, trocken</translation>
    </message>
    <message>
        <source>Let the metal flash off</source>
        <translation>Metall ablüften lassen</translation>
    </message>
    <message>
        <source>Metal has flashed off</source>
        <translation>Metall ist abgelüftet</translation>
    </message>
    <message>
        <source>Read air, panel and humidity again</source>
        <translation>Luft, Teil und Feuchte neu ablesen</translation>
    </message>
    <message>
        <source>Probe on the bare panel beside the damage. The dew margin is computed again.</source>
        <translation>Fühler aufs blanke Teil neben dem Schaden. Der Taupunktabstand wird neu gerechnet.</translation>
    </message>
    <message>
        <source>Reading is taken</source>
        <translation>Abgelesen</translation>
    </message>
    <message>
        <source>Probe on the bare metal beside the damage. The dew margin is computed again.</source>
        <translation>Fühler aufs blanke Metall neben dem Schaden. Der Taupunktabstand wird neu gerechnet.</translation>
    </message>
    <message>
        <source>Put a guide coat over the repair</source>
        <translation>Kontrollschwarz auf die Stelle geben</translation>
    </message>
    <message>
        <source>A thin, even veil; it shows what is high and what is low.</source>
        <translation>Ein dünner, gleichmäßiger Schleier; er zeigt hoch und tief.</translation>
    </message>
    <message>
        <source>Guide coat is on</source>
        <translation>Kontrollschwarz ist drauf</translation>
    </message>
    <message>
        <source>Sand to contour with 180 grit on a block</source>
        <translation>Mit Korn 180 am Klotz in Form schleifen</translation>
    </message>
    <message>
        <source>Stop when the guide coat is gone. Where it stays, it is low.</source>
        <translation>Aufhören, wenn das Kontrollschwarz weg ist. Wo es bleibt, ist es tief.</translation>
    </message>
    <message>
        <source>Sanded with 180</source>
        <translation>Mit 180 geschliffen</translation>
    </message>
    <message>
        <source>Sand out to the edges with 320 grit</source>
        <translation>Mit Korn 320 zum Rand ausschleifen</translation>
    </message>
    <message>
        <source>No scratch of the coarser grit and no edge may remain.</source>
        <translation>Kein Kratzer der gröberen Körnung und keine Kante darf bleiben.</translation>
    </message>
    <message>
        <source>Sanded with 320</source>
        <translation>Mit 320 geschliffen</translation>
    </message>
    <message>
        <source>Dust off the whole panel</source>
        <translation>Das ganze Teil entstauben</translation>
    </message>
    <message>
        <source>Extraction first, then clean, dry, oil-free air, below 30 psi (2 bar).</source>
        <translation>Erst absaugen, dann saubere, trockene, ölfreie Luft, unter 30 psi (2 bar).</translation>
    </message>
    <message>
        <source>Inspect the surface in raking light</source>
        <translation>Fläche im Streiflicht prüfen</translation>
    </message>
    <message>
        <source>No pinhole at half a metre, no edge, no guide coat. Pinholes are opened and filled, never buried.</source>
        <translation>Aus halbem Meter keine Pore, keine Kante, kein Kontrollschwarz. Poren öffnen und füllen, nie zudecken.</translation>
    </message>
    <message>
        <source>Inspected, nothing found</source>
        <translation>Geprüft, nichts gefunden</translation>
    </message>
    <message>
        <source>Let it cure before the primer</source>
        <translation>Vor dem Grundieren aushärten lassen</translation>
    </message>
    <message>
        <source>At least %1 after the last sanding, at this temperature.</source>
        <translation>Mindestens %1 nach dem letzten Schleifen, bei dieser Temperatur.</translation>
    </message>
    <message>
        <source>It has cured</source>
        <translation>Ausgehärtet</translation>
    </message>
    <message>
        <source>Look for guide coat that is left</source>
        <translation>Nach restlichem Kontrollschwarz suchen</translation>
    </message>
    <message>
        <source>What is left shows a low spot.</source>
        <translation>Was bleibt, zeigt eine tiefe Stelle.</translation>
    </message>
    <message>
        <source>Guide coat is gone</source>
        <translation>Kontrollschwarz ist weg</translation>
    </message>
    <message>
        <source>Lay the straightedge across the repair, both ways</source>
        <translation>Lineal über Kreuz auf die Stelle legen</translation>
    </message>
    <message>
        <source>On a curved panel, compare with the other side.</source>
        <translation>Bei gewölbtem Teil mit der anderen Seite vergleichen.</translation>
    </message>
    <message>
        <source>No gap, no rocking</source>
        <translation>Kein Spalt, kein Kippeln</translation>
    </message>
    <message>
        <source>Look for pinholes in raking light</source>
        <translation>Poren im Streiflicht suchen</translation>
    </message>
    <message>
        <source>From half a metre, light from the side. Pinholes are opened and filled, never buried.</source>
        <translation>Aus halbem Meter, Licht von der Seite. Poren öffnen und füllen, nie zudecken.</translation>
    </message>
    <message>
        <source>No pinhole</source>
        <translation>Keine Pore</translation>
    </message>
    <message>
        <source>Press a nail in, then rub with paper</source>
        <translation>Fingernagel eindrücken, mit Papier reiben</translation>
    </message>
    <message>
        <source>The nail leaves no mark, and the paper powders the filler rather than clogs.</source>
        <translation>Der Nagel hinterlässt nichts, Spachtel stäubt und setzt das Papier nicht zu.</translation>
    </message>
    <message>
        <source>No mark, it powders</source>
        <translation>Keine Spur, es stäubt</translation>
    </message>
    <message>
        <source>Tap with a coin over repair and surround</source>
        <translation>Mit einer Münze Stelle und Umgebung abklopfen</translation>
    </message>
    <message>
        <source>A dull spot is hollow.</source>
        <translation>Dumpf heißt hohl.</translation>
    </message>
    <message>
        <source>It rings alike all over</source>
        <translation>Überall gleicher Klang</translation>
    </message>
    <message>
        <source>Feel for the edge with a flat hand</source>
        <translation>Mit flacher Hand die Kante fühlen</translation>
    </message>
    <message>
        <source>Across it, through a thin cloth, eyes shut.</source>
        <translation>Quer darüber, durch ein dünnes Tuch, Augen zu.</translation>
    </message>
    <message>
        <source>No edge to feel</source>
        <translation>Keine Kante fühlbar</translation>
    </message>
    <message>
        <source>Abrade the inside first. Wet cloth on a card, pulled up with wire, lapping %1, held until it cures.</source>
        <translation>Innen erst anschleifen. Getränktes Gewebe auf Karton, mit Draht hochziehen, %1 Überstand, halten, bis es hart ist.</translation>
    </message>
</context>
<context>
    <name>Stock</name>
    <message>
        <source>Used up</source>
        <translation>Aufgebraucht</translation>
    </message>
    <message>
        <source>Skin on it</source>
        <translation>Haut darauf</translation>
    </message>
    <message>
        <source>Separated, kneading does not help</source>
        <translation>Entmischt, Kneten hilft nicht</translation>
    </message>
    <message>
        <source>Hard or crumbly</source>
        <translation>Hart oder krümelig</translation>
    </message>
    <message>
        <source>Past its date</source>
        <translation>Abgelaufen</translation>
    </message>
    <message>
        <source>Open for too long</source>
        <translation>Zu lange offen</translation>
    </message>
    <message>
        <source>Spoilt otherwise</source>
        <translation>Anders verdorben</translation>
    </message>
    <message>
        <source>Spilled</source>
        <translation>Verschüttet</translation>
    </message>
    <message>
        <source>Gone to another bench</source>
        <translation>An anderen Platz gegangen</translation>
    </message>
    <message>
        <source>Come from another bench</source>
        <translation>Von anderem Platz gekommen</translation>
    </message>
    <message>
        <source>Keyed in wrong</source>
        <translation>Falsch eingetippt</translation>
    </message>
    <message>
        <source>It was ended (%1): take another lot.</source>
        <extracomment>%1 is why: &quot;Skin on it&quot;</extracomment>
        <translation>Sie ist beendet (%1): andere Charge nehmen.</translation>
    </message>
    <message>
        <source>%1 more was used than was there: count it.</source>
        <translation>Es wurde %1 mehr verbraucht, als da war: zählen.</translation>
    </message>
    <message>
        <source>Too little: %1 is needed, %2 is left.</source>
        <translation>Zu wenig: %1 nötig, noch %2 da.</translation>
    </message>
    <message>
        <source>Its date is past: it was good until %1.</source>
        <extracomment>%1 is a day</extracomment>
        <translation>Abgelaufen: gut war sie bis %1.</translation>
    </message>
    <message>
        <source>Open too long: since %1, its sheet allows %2 months.</source>
        <extracomment>%1 is a day, %2 a number of months</extracomment>
        <translation>Zu lange offen: seit %1, das Blatt erlaubt %2 Monate.</translation>
    </message>
    <message>
        <source>It still evens out with the air: %1 to go.</source>
        <translation>Gleicht sich noch der Luft an: noch %1.</translation>
    </message>
    <message>
        <source>It came from a colder or hotter place: read the air first.</source>
        <translation>Es kommt aus der Kälte oder Hitze: erst die Luft messen.</translation>
    </message>
    <message>
        <source>Its middle was at %1: it is mixed from %2 to %3.</source>
        <translation>Die Mitte war bei %1: gemischt wird von %2 bis %3.</translation>
    </message>
    <message>
        <source>New lot: make a test pat before the first batch.</source>
        <translation>Neue Charge: Probekreis vor dem ersten Ansatz anlegen.</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Härter</translation>
    </message>
    <message>
        <source>%1 · lot %2</source>
        <extracomment>%1 is a product, %2 a lot</extracomment>
        <translation>%1 · Charge %2</translation>
    </message>
    <message>
        <source>Came in</source>
        <translation>Zugang</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Gezählt</translation>
    </message>
    <message>
        <source>Package ended: %1</source>
        <extracomment>%1 is why: &quot;skin on it&quot;</extracomment>
        <translation>Gebinde beendet: %1</translation>
    </message>
    <message>
        <source>A batch</source>
        <translation>Ein Ansatz</translation>
    </message>
    <message>
        <source>Batch of job %1</source>
        <extracomment>%1 is a job&apos;s number</extracomment>
        <translation>Ansatz von Auftrag %1</translation>
    </message>
    <message>
        <source>Test pat</source>
        <translation>Probekreis</translation>
    </message>
</context>
<context>
    <name>StockForms</name>
    <message>
        <source>Stock of filler and hardener</source>
        <translation>Bestand an Spachtel und Härter</translation>
    </message>
    <message>
        <source>What is booked in?</source>
        <translation>Was wird eingebucht?</translation>
    </message>
    <message>
        <source>More products</source>
        <translation>Weitere Produkte</translation>
    </message>
    <message>
        <source>How many packages, and how much in each?</source>
        <translation>Wie viele Gebinde, und wie viel in jedem?</translation>
    </message>
    <message>
        <source>So many came in</source>
        <translation>So viele kamen</translation>
    </message>
    <message>
        <source>Packages</source>
        <translation>Gebinde</translation>
    </message>
    <message>
        <source>Key in how many packages</source>
        <translation>Zahl der Gebinde eintippen</translation>
    </message>
    <message>
        <source>Net mass of one</source>
        <translation>Nettomasse je Gebinde</translation>
    </message>
    <message>
        <source>Key in the net mass of one</source>
        <translation>Nettomasse je Gebinde eintippen</translation>
    </message>
    <message>
        <source>Is a date printed on it?</source>
        <translation>Ist ein Datum aufgedruckt?</translation>
    </message>
    <message>
        <source>Yes, a date</source>
        <translation>Ja, ein Datum</translation>
    </message>
    <message>
        <source>best before, or use by</source>
        <translation>haltbar oder verwendbar bis</translation>
    </message>
    <message>
        <source>No date</source>
        <translation>Kein Datum</translation>
    </message>
    <message>
        <source>its sheet’s months count from today</source>
        <translation>die Monate des Blatts zählen ab heute</translation>
    </message>
    <message>
        <source>Which date is printed?</source>
        <translation>Welches Datum ist aufgedruckt?</translation>
    </message>
    <message>
        <source>This date</source>
        <translation>Dieses Datum</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>Key in the year</source>
        <translation>Jahr eintippen</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>Key in the month</source>
        <translation>Monat eintippen</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Key in the day; where none is printed, the last of the month</source>
        <translation>Tag eintippen; wo keiner steht, den letzten des Monats</translation>
    </message>
    <message>
        <source>Where no day is printed it is the last of the month.</source>
        <translation>Wo kein Tag steht, gilt der letzte des Monats.</translation>
    </message>
    <message>
        <source>There is no such day.</source>
        <translation>Diesen Tag gibt es nicht.</translation>
    </message>
    <message>
        <source>%1: past already</source>
        <translation>%1: schon vorbei</translation>
    </message>
    <message>
        <source>How much of this lot is there, without the tubs?</source>
        <translation>Wie viel ist von dieser Charge da, ohne Dosen?</translation>
    </message>
    <message>
        <source>So much is there</source>
        <translation>So viel ist da</translation>
    </message>
    <message>
        <source>Thought to be there: %1.</source>
        <translation>Gedacht: %1.</translation>
    </message>
    <message>
        <source>%1 less than thought</source>
        <translation>%1 weniger als gedacht</translation>
    </message>
    <message>
        <source>%1 more than thought</source>
        <translation>%1 mehr als gedacht</translation>
    </message>
    <message>
        <source>As thought.</source>
        <translation>Wie gedacht.</translation>
    </message>
    <message>
        <source>There</source>
        <translation>Da</translation>
    </message>
    <message>
        <source>Key in how much is there</source>
        <translation>Eintippen, wie viel da ist</translation>
    </message>
    <message>
        <source>Why is there more or less of it?</source>
        <translation>Warum ist mehr oder weniger da?</translation>
    </message>
    <message>
        <source>there is less</source>
        <translation>es ist weniger</translation>
    </message>
    <message>
        <source>there is more</source>
        <translation>es ist mehr</translation>
    </message>
    <message>
        <source>%1: how much less is there?</source>
        <translation>%1: Wie viel weniger ist da?</translation>
    </message>
    <message>
        <source>%1: how much more is there?</source>
        <translation>%1: Wie viel mehr ist da?</translation>
    </message>
    <message>
        <source>By so much</source>
        <translation>Um so viel</translation>
    </message>
    <message>
        <source>Key in by how much</source>
        <translation>Eintippen, um wie viel</translation>
    </message>
    <message>
        <source>Why does the open one end?</source>
        <translation>Warum endet das offene?</translation>
    </message>
    <message>
        <source>More reasons</source>
        <translation>Weitere Gründe</translation>
    </message>
    <message>
        <source>End this package</source>
        <translation>Dieses Gebinde beenden</translation>
    </message>
    <message>
        <source>Waste of its kind, by the safety data sheet and local codes: never down the drain.</source>
        <translation>Abfall nach Sicherheitsdatenblatt und örtlichen Vorschriften: nie in den Abfluss.</translation>
    </message>
    <message>
        <source>Thrown away</source>
        <translation>Weggeworfen</translation>
    </message>
    <message>
        <source>Key in how much</source>
        <translation>Menge eintippen</translation>
    </message>
    <message>
        <source>What does the probe in its middle read?</source>
        <translation>Was zeigt der Fühler in der Mitte?</translation>
    </message>
    <message>
        <source>How cold or hot was the place it came from?</source>
        <translation>Wie kalt oder heiß war es dort, wo es herkommt?</translation>
    </message>
    <message>
        <source>It reads this</source>
        <translation>Er zeigt dies</translation>
    </message>
    <message>
        <source>It came from there</source>
        <translation>Von dort kam es</translation>
    </message>
    <message>
        <source>Its middle</source>
        <translation>Seine Mitte</translation>
    </message>
    <message>
        <source>That place</source>
        <translation>Dieser Ort</translation>
    </message>
    <message>
        <source>Key in the temperature</source>
        <translation>Temperatur eintippen</translation>
    </message>
    <message>
        <source>Below how much is it reordered? Nothing: never</source>
        <translation>Unter wie viel wird nachbestellt? Nichts: nie</translation>
    </message>
    <message>
        <source>This is the level</source>
        <translation>Das ist die Schwelle</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Schwelle</translation>
    </message>
    <message>
        <source>Key in the level</source>
        <translation>Schwelle eintippen</translation>
    </message>
    <message>
        <source>Less by</source>
        <translation>Weniger um</translation>
    </message>
    <message>
        <source>More by</source>
        <translation>Mehr um</translation>
    </message>
    <message>
        <source>How much is thrown away with it?</source>
        <translation>Wie viel wird mit weggeworfen?</translation>
    </message>
</context>
<context>
    <name>StopWays</name>
    <message>
        <source>Look, measure, and answer the question.</source>
        <translation>Hinsehen, messen und die Frage beantworten.</translation>
    </message>
    <message>
        <source>Weld the plastic, or replace the part.</source>
        <translation>Kunststoff schweißen oder Teil ersetzen.</translation>
    </message>
    <message>
        <source>Repair it with a flexible system, or replace it.</source>
        <translation>Mit flexiblem System reparieren oder ersetzen.</translation>
    </message>
    <message>
        <source>Follow the vehicle maker’s method for carbon fibre.</source>
        <translation>Kohlefaser nach dem Verfahren des Fahrzeugherstellers.</translation>
    </message>
    <message>
        <source>Replace the part.</source>
        <translation>Teil ersetzen.</translation>
    </message>
    <message>
        <source>Find out what it is before you touch it.</source>
        <translation>Vor dem Anfassen klären, was es ist.</translation>
    </message>
    <message>
        <source>Follow the vehicle maker’s method for this part.</source>
        <translation>Dieses Teil nach dem Verfahren des Fahrzeugherstellers.</translation>
    </message>
    <message>
        <source>Follow the vehicle maker’s method for sensor areas.</source>
        <translation>Sensorbereich nach dem Verfahren des Fahrzeugherstellers.</translation>
    </message>
    <message>
        <source>Take it out of service and replace it.</source>
        <translation>Außer Betrieb nehmen und ersetzen.</translation>
    </message>
    <message>
        <source>Strip it to the bare panel.</source>
        <translation>Bis aufs blanke Teil entlacken.</translation>
    </message>
    <message>
        <source>Blast or cut it back to bright metal.</source>
        <translation>Bis aufs blanke Metall strahlen oder trennen.</translation>
    </message>
    <message>
        <source>Let the primer cure, or strip it.</source>
        <translation>Primer aushärten lassen oder entfernen.</translation>
    </message>
    <message>
        <source>Wash the flux off and grind to bright metal.</source>
        <translation>Flussmittel abwaschen, blank schleifen.</translation>
    </message>
    <message>
        <source>Dry it, and prove that it is dry.</source>
        <translation>Trocknen und Trockenheit nachweisen.</translation>
    </message>
    <message>
        <source>Clean, prime and seal it to the vehicle maker’s pattern.</source>
        <translation>Nach Herstellervorgabe reinigen, grundieren, abdichten.</translation>
    </message>
    <message>
        <source>Look at the seam and the panel again.</source>
        <translation>Naht und Teil noch einmal ansehen.</translation>
    </message>
    <message>
        <source>Look at the hole and the panel again.</source>
        <translation>Loch und Teil noch einmal ansehen.</translation>
    </message>
    <message>
        <source>Let the adhesive cure to its sheet.</source>
        <translation>Kleber nach seinem Blatt aushärten lassen.</translation>
    </message>
    <message>
        <source>Cut back to bright metal, then weld or patch.</source>
        <translation>Bis ins blanke Metall trennen, dann schweißen oder flicken.</translation>
    </message>
    <message>
        <source>Bring the metal up first.</source>
        <translation>Erst das Blech ausbeulen.</translation>
    </message>
    <message>
        <source>Laminate it, or let in a section.</source>
        <translation>Laminieren oder ein Stück einsetzen.</translation>
    </message>
    <message>
        <source>Ask for a filler whose sheet allows it.</source>
        <translation>Nach einem Spachtel fragen, dessen Blatt es erlaubt.</translation>
    </message>
    <message>
        <source>Wait for cooler air, or move to a cooler place.</source>
        <translation>Auf kühlere Luft warten oder umziehen.</translation>
    </message>
    <message>
        <source>Warm the panel right through, then read again.</source>
        <translation>Teil durchwärmen, dann neu ablesen.</translation>
    </message>
    <message>
        <source>Let the panel cool in the shade.</source>
        <translation>Teil im Schatten abkühlen lassen.</translation>
    </message>
    <message>
        <source>Warm the shop, the tub and the tube.</source>
        <translation>Halle, Dose und Tube wärmen.</translation>
    </message>
    <message>
        <source>If you cannot tell, stop and ask.</source>
        <translation>Im Zweifel anhalten und fragen.</translation>
    </message>
    <message>
        <source>The marking on the back names the plastic.</source>
        <translation>Das Zeichen hinten nennt den Kunststoff.</translation>
    </message>
    <message>
        <source>The repair must bend with the part.</source>
        <translation>Die Reparatur muss sich mit dem Teil biegen.</translation>
    </message>
    <message>
        <source>Damage inside must be found by those trained for it.</source>
        <translation>Schäden im Inneren müssen dafür Geschulte suchen.</translation>
    </message>
    <message>
        <source>Do not sand or drill it meanwhile.</source>
        <translation>Bis dahin nicht schleifen, nicht bohren.</translation>
    </message>
    <message>
        <source>Magnet, zinc gauge, ohmmeter, broken edge, back-face marking, tap sound.</source>
        <translation>Magnet, Zinkmessgerät, Ohmmeter, Bruchkante, Zeichen hinten, Klopfklang.</translation>
    </message>
    <message>
        <source>What carries load is restored, never filled over.</source>
        <translation>Was Last trägt, wird wiederhergestellt, nie zugespachtelt.</translation>
    </message>
    <message>
        <source>The sensor may need calibrating afterwards.</source>
        <translation>Der Sensor muss danach vielleicht kalibriert werden.</translation>
    </message>
    <message>
        <source>No grinding, drilling or heat near it.</source>
        <translation>Daneben nicht schleifen, bohren, erwärmen.</translation>
    </message>
    <message>
        <source>Well beyond the repair, edges feathered; then assess again.</source>
        <translation>Weit über die Stelle hinaus, Ränder auslaufend; dann neu beurteilen.</translation>
    </message>
    <message>
        <source>What is left thin or holed is cut out; then assess again.</source>
        <translation>Was dünn oder löchrig ist, ausschneiden; dann neu beurteilen.</translation>
    </message>
    <message>
        <source>Cured epoxy that is abraded may stay; then assess again.</source>
        <translation>Gehärtetes, angeschliffenes Epoxid darf bleiben; dann neu beurteilen.</translation>
    </message>
    <message>
        <source>Then assess again.</source>
        <translation>Dann neu beurteilen.</translation>
    </message>
    <message>
        <source>Only where the maker’s method calls for a continuous weld: weld, dress, then assess again.</source>
        <translation>Nur wo der Hersteller eine durchgehende Naht will: schweißen, verputzen, neu beurteilen.</translation>
    </message>
    <message>
        <source>One of the two answers is wrong.</source>
        <translation>Eine der beiden Antworten ist falsch.</translation>
    </message>
    <message>
        <source>Then take the squeeze-out off and assess again.</source>
        <translation>Dann Ausgequollenes abnehmen und neu beurteilen.</translation>
    </message>
    <message>
        <source>Then it is a seam or a low spot: assess again.</source>
        <translation>Dann ist es eine Naht oder tiefe Stelle: neu beurteilen.</translation>
    </message>
    <message>
        <source>What stays low after that can be assessed again.</source>
        <translation>Was dann noch tief ist, neu beurteilen.</translation>
    </message>
    <message>
        <source>On zinc, cured and abraded epoxy primer first is another way.</source>
        <translation>Auf Zink geht auch: zuerst Epoxidprimer, ausgehärtet und angeschliffen.</translation>
    </message>
    <message>
        <source>Temperature is never corrected with hardener.</source>
        <translation>Temperatur nie mit Härter ausgleichen.</translation>
    </message>
    <message>
        <source>A lamp warms the panel before filling, never wet filler.</source>
        <translation>Ein Strahler wärmt das Teil vor dem Spachteln, nie nassen Spachtel.</translation>
    </message>
    <message>
        <source>From the cold they need hours to even out.</source>
        <translation>Aus der Kälte brauchen sie Stunden zum Angleichen.</translation>
    </message>
    <message>
        <source>to the plastics bench</source>
        <extracomment>goes on after &quot;Park it —&quot;</extracomment>
        <translation>zum Kunststoffplatz</translation>
    </message>
    <message>
        <source>to the laminate shop</source>
        <translation>zur Laminierwerkstatt</translation>
    </message>
    <message>
        <source>to the parts counter</source>
        <translation>zur Teileausgabe</translation>
    </message>
    <message>
        <source>to the supervisor</source>
        <translation>zum Meister</translation>
    </message>
    <message>
        <source>to the body shop</source>
        <translation>zur Karosserie</translation>
    </message>
    <message>
        <source>to the stripping bay</source>
        <translation>zum Entlackplatz</translation>
    </message>
    <message>
        <source>to the metal shop</source>
        <translation>zur Blechwerkstatt</translation>
    </message>
    <message>
        <source>to the warm room</source>
        <translation>in den warmen Raum</translation>
    </message>
    <message>
        <source>to the welding shop</source>
        <translation>zur Schweißerei</translation>
    </message>
    <message>
        <source>to a cool place</source>
        <translation>ins Kühle</translation>
    </message>
    <message>
        <source>Check the sheet’s times against its maker’s data sheet.</source>
        <translation>Zeiten mit dem Datenblatt des Herstellers vergleichen.</translation>
    </message>
    <message>
        <source>Until it is right, use a filler whose sheet is.</source>
        <translation>Bis dahin einen Spachtel mit richtigem Blatt nehmen.</translation>
    </message>
    <message>
        <source>Follow the vehicle maker’s method for these parts.</source>
        <translation>Für diese Teile gilt das Verfahren des Fahrzeugherstellers.</translation>
    </message>
    <message>
        <source>Open it and renew the wet wood first.</source>
        <translation>Öffnen und nasses Holz zuerst ersetzen.</translation>
    </message>
    <message>
        <source>Have skin and core repaired as one.</source>
        <translation>Haut und Kern als Ganzes instand setzen lassen.</translation>
    </message>
    <message>
        <source>Airbags and high voltage only by those trained and licensed for them.</source>
        <translation>Airbag und Hochvolt nur durch dafür Geschulte und Befugte.</translation>
    </message>
    <message>
        <source>Tape clear film over it. When no mist forms underneath, assess again.</source>
        <translation>Klare Folie aufkleben. Bildet sich kein Beschlag darunter, neu beurteilen.</translation>
    </message>
    <message>
        <source>Laminate the skin shut and prove it dry; then assess again.</source>
        <translation>Haut zulaminieren, Trockenheit nachweisen; dann neu beurteilen.</translation>
    </message>
    <message>
        <source>By the vehicle maker’s method, with a resin that leaves the foam whole.</source>
        <translation>Nach dem Verfahren des Herstellers, mit Harz, das den Schaum nicht angreift.</translation>
    </message>
    <message>
        <source>Aim at half of that limit or less; then assess again.</source>
        <translation>Auf die Hälfte dieser Grenze oder weniger bringen; dann neu beurteilen.</translation>
    </message>
</context>
<context>
    <name>Stops</name>
    <message>
        <source>Do not fill this panel</source>
        <translation>Dieses Teil nicht spachteln</translation>
    </message>
    <message>
        <source>Do not fill in this zone</source>
        <translation>In dieser Zone nicht spachteln</translation>
    </message>
    <message>
        <source>Do not fill on this surface</source>
        <translation>Auf dieser Fläche nicht spachteln</translation>
    </message>
    <message>
        <source>Do not fill over this core</source>
        <translation>Über diesem Kern nicht spachteln</translation>
    </message>
    <message>
        <source>Do not fill this seam</source>
        <translation>Diese Naht nicht spachteln</translation>
    </message>
    <message>
        <source>Do not fill this hole</source>
        <translation>Dieses Loch nicht spachteln</translation>
    </message>
    <message>
        <source>Do not fill yet</source>
        <translation>Noch nicht spachteln</translation>
    </message>
    <message>
        <source>These answers do not fit together</source>
        <translation>Diese Antworten passen nicht zusammen</translation>
    </message>
    <message>
        <source>Not assessed yet</source>
        <translation>Noch nicht beurteilt</translation>
    </message>
    <message>
        <source>Not assessed: %1.</source>
        <extracomment>%1 is a question of the assessment: &quot;kind of weld&quot;</extracomment>
        <translation>Nicht beurteilt: %1.</translation>
    </message>
    <message>
        <source>A question without an answer never counts as yes.</source>
        <translation>Eine offene Frage gilt nie als Ja.</translation>
    </message>
    <message>
        <source>It is a thermoplastic.</source>
        <translation>Es ist ein Thermoplast.</translation>
    </message>
    <message>
        <source>Polyester does not bond to it and peels off as the panel bends.</source>
        <translation>Polyester haftet nicht darauf und schält sich beim Biegen ab.</translation>
    </message>
    <message>
        <source>It is a flexible plastic.</source>
        <translation>Es ist ein flexibler Kunststoff.</translation>
    </message>
    <message>
        <source>Hard filler cracks off a part that bends.</source>
        <translation>Harter Spachtel platzt von einem Teil, das sich biegt.</translation>
    </message>
    <message>
        <source>It is carbon fibre.</source>
        <translation>Es ist Kohlefaser.</translation>
    </message>
    <message>
        <source>Its fibres carry load, and filler hides damage between the plies.</source>
        <translation>Ihre Fasern tragen Last, und Spachtel verdeckt Schäden zwischen den Lagen.</translation>
    </message>
    <message>
        <source>It is cast plastic without fibre.</source>
        <translation>Es ist Gießkunststoff ohne Faser.</translation>
    </message>
    <message>
        <source>It is brittle: the crack runs on beside the filler.</source>
        <translation>Er ist spröde: der Riss läuft neben dem Spachtel weiter.</translation>
    </message>
    <message>
        <source>It is magnesium.</source>
        <translation>Es ist Magnesium.</translation>
    </message>
    <message>
        <source>Its dust burns, and it corrodes under filler.</source>
        <translation>Sein Staub brennt, und es korrodiert unter Spachtel.</translation>
    </message>
    <message>
        <source>Nobody knows what it is made of.</source>
        <translation>Niemand weiß, woraus es ist.</translation>
    </message>
    <message>
        <source>The filler, the solvent and the tools all depend on it.</source>
        <translation>Spachtel, Lösemittel und Werkzeug hängen davon ab.</translation>
    </message>
    <message>
        <source>This part carries load.</source>
        <translation>Dieses Teil trägt Last.</translation>
    </message>
    <message>
        <source>Filler has no strength in a crash and hides what failed.</source>
        <translation>Spachtel hat im Unfall keine Festigkeit und verdeckt, was brach.</translation>
    </message>
    <message>
        <source>Belts, seats, glass, airbags or high voltage are here.</source>
        <translation>Hier sind Gurte, Sitze, Glas, Airbags oder Hochvolt.</translation>
    </message>
    <message>
        <source>People depend on this part as it was built.</source>
        <translation>Menschen brauchen dieses Teil im Originalzustand.</translation>
    </message>
    <message>
        <source>A driver-assistance sensor looks through here.</source>
        <translation>Hier schaut ein Assistenzsensor hindurch.</translation>
    </message>
    <message>
        <source>Filler and thick paint bend or block its beam.</source>
        <translation>Spachtel und dicker Lack brechen oder sperren seinen Strahl.</translation>
    </message>
    <message>
        <source>It holds fuel or pressure.</source>
        <translation>Es hält Kraftstoff oder Druck.</translation>
    </message>
    <message>
        <source>Filler does not seal it, and grinding can set it alight.</source>
        <translation>Spachtel dichtet es nicht ab, und Schleifen kann es entzünden.</translation>
    </message>
    <message>
        <source>There is paint where the filler goes.</source>
        <translation>Wo der Spachtel hinkommt, ist Lack.</translation>
    </message>
    <message>
        <source>The filler holds only as well as the paint. Its edge shows later.</source>
        <translation>Der Spachtel hält nur so gut wie der Lack. Sein Rand zeichnet sich ab.</translation>
    </message>
    <message>
        <source>There is old filler of an unknown kind.</source>
        <translation>Da ist alter Spachtel unbekannter Art.</translation>
    </message>
    <message>
        <source>Nobody knows what it is or how it holds.</source>
        <translation>Niemand weiß, was es ist und wie es hält.</translation>
    </message>
    <message>
        <source>There is sealer or underseal.</source>
        <translation>Da ist Dichtmasse oder U-Schutz.</translation>
    </message>
    <message>
        <source>It stays soft, and filler slides on it.</source>
        <translation>Sie bleibt weich, und Spachtel gleitet darauf.</translation>
    </message>
    <message>
        <source>There is live rust.</source>
        <translation>Da ist aktiver Rost.</translation>
    </message>
    <message>
        <source>It goes on growing under the filler and lifts it off.</source>
        <translation>Er wächst unter dem Spachtel weiter und hebt ihn ab.</translation>
    </message>
    <message>
        <source>There is rust converter.</source>
        <translation>Da ist Rostumwandler.</translation>
    </message>
    <message>
        <source>Its acid keeps the filler above it from curing.</source>
        <translation>Seine Säure lässt den Spachtel nicht aushärten.</translation>
    </message>
    <message>
        <source>There is acid-etch primer.</source>
        <translation>Da ist Säureprimer.</translation>
    </message>
    <message>
        <source>The primer has not cured.</source>
        <translation>Der Primer ist nicht ausgehärtet.</translation>
    </message>
    <message>
        <source>The filler softens it, and both come off together.</source>
        <translation>Der Spachtel löst ihn an, und beide gehen ab.</translation>
    </message>
    <message>
        <source>There is solder with flux.</source>
        <translation>Da ist Lot mit Flussmittel.</translation>
    </message>
    <message>
        <source>Flux is acid and greasy: nothing holds on it.</source>
        <translation>Flussmittel ist sauer und fettig: nichts hält darauf.</translation>
    </message>
    <message>
        <source>Do not fill while it is damp</source>
        <translation>Feucht nicht spachteln</translation>
    </message>
    <message>
        <source>The panel is damp.</source>
        <translation>Das Teil ist feucht.</translation>
    </message>
    <message>
        <source>Water keeps the filler from wetting the surface, then makes blisters.</source>
        <translation>Wasser hindert das Benetzen und wirft dann Blasen.</translation>
    </message>
    <message>
        <source>There is a foam core under the laminate.</source>
        <translation>Unter dem Laminat ist ein Schaumkern.</translation>
    </message>
    <message>
        <source>Styrene and heat attack foam, and the skin loses its support.</source>
        <translation>Styrol und Wärme greifen Schaum an, und die Haut verliert ihren Halt.</translation>
    </message>
    <message>
        <source>There is a wet wood core under the laminate.</source>
        <translation>Unter dem Laminat ist ein nasser Holzkern.</translation>
    </message>
    <message>
        <source>The water stays in, and the wood rots on below.</source>
        <translation>Das Wasser bleibt drin, und das Holz fault darunter weiter.</translation>
    </message>
    <message>
        <source>It is spot-welded: a joint, not damage.</source>
        <translation>Punktgeschweißt: eine Verbindung, kein Schaden.</translation>
    </message>
    <message>
        <source>The panels move and hold water between the spots. The line shows through later, and rust creeps in.</source>
        <translation>Die Bleche bewegen sich und halten Wasser zwischen den Punkten. Die Linie zeichnet sich ab, Rost kriecht ein.</translation>
    </message>
    <message>
        <source>It is stitch-welded: a joint, not damage.</source>
        <translation>Steppnaht: eine Verbindung, kein Schaden.</translation>
    </message>
    <message>
        <source>The panels move and hold water in the gaps. The line shows through later, and rust creeps in.</source>
        <translation>Die Bleche bewegen sich und halten Wasser in den Lücken. Die Linie zeichnet sich ab, Rost kriecht ein.</translation>
    </message>
    <message>
        <source>A weld seam cannot be on %1.</source>
        <translation>Auf %1 kann keine Schweißnaht sein.</translation>
    </message>
    <message>
        <source>Either the seam is bonded, or the panel is metal.</source>
        <translation>Entweder ist die Naht geklebt, oder das Teil ist Metall.</translation>
    </message>
    <message>
        <source>A rust hole cannot be in %1.</source>
        <translation>In %1 kann kein Rostloch sein.</translation>
    </message>
    <message>
        <source>Either the hole has another cause, or the panel is metal.</source>
        <translation>Entweder hat das Loch eine andere Ursache, oder das Teil ist Metall.</translation>
    </message>
    <message>
        <source>Do not fill this seam yet</source>
        <translation>Diese Naht noch nicht spachteln</translation>
    </message>
    <message>
        <source>The adhesive has not cured.</source>
        <translation>Der Kleber ist nicht ausgehärtet.</translation>
    </message>
    <message>
        <source>It still shrinks and swells, and its line shows through the paint.</source>
        <translation>Er schrumpft und quillt noch, und seine Linie zeigt sich im Lack.</translation>
    </message>
    <message>
        <source>Do not fill this crack</source>
        <translation>Diesen Riss nicht spachteln</translation>
    </message>
    <message>
        <source>A crack in metal is fatigue or tearing.</source>
        <translation>Ein Riss im Metall ist Ermüdung oder Einreißen.</translation>
    </message>
    <message>
        <source>It runs on under the filler and opens again.</source>
        <translation>Er läuft unter dem Spachtel weiter und öffnet sich wieder.</translation>
    </message>
    <message>
        <source>It is a hole in metal.</source>
        <translation>Es ist ein Loch in Metall.</translation>
    </message>
    <message>
        <source>Sheet metal has no section to bevel, so nothing holds the filler.</source>
        <translation>Blech ist zu dünn zum Anfasen, nichts hält den Spachtel.</translation>
    </message>
    <message>
        <source>Rust has eaten through the metal.</source>
        <translation>Rost hat das Metall durchgefressen.</translation>
    </message>
    <message>
        <source>The metal around it is thin and goes on rusting from behind.</source>
        <translation>Das Metall ringsum ist dünn und rostet von hinten weiter.</translation>
    </message>
    <message>
        <source>Do not fill this dent yet</source>
        <translation>Diese Delle noch nicht spachteln</translation>
    </message>
    <message>
        <source>It is %1 deep; filling ends at %2.</source>
        <translation>Sie ist %1 tief; Spachteln nur bis %2.</translation>
    </message>
    <message>
        <source>Thick filler on sheet metal shrinks, cracks and shows.</source>
        <translation>Dicker Spachtel auf Blech schrumpft, reißt und zeichnet sich ab.</translation>
    </message>
    <message>
        <source>It is %1 across; filling ends at %2.</source>
        <translation>Sie misst %1; Spachteln nur bis %2.</translation>
    </message>
    <message>
        <source>Filler does not replace that much of a panel.</source>
        <translation>So viel von einem Teil ersetzt Spachtel nicht.</translation>
    </message>
    <message>
        <source>No filler fits here</source>
        <translation>Hier passt kein Spachtel</translation>
    </message>
    <message>
        <source>No loaded filler suits %1 with this damage: %2.</source>
        <extracomment>%1 is a substrate, %2 a damage</extracomment>
        <translation>Kein geladener Spachtel passt auf %1 bei diesem Schaden: %2.</translation>
    </message>
    <message>
        <source>No loaded sheet allows it, and nothing defaults to yes.</source>
        <translation>Kein geladenes Blatt erlaubt es, und ohne Blatt heißt es nie Ja.</translation>
    </message>
    <message>
        <source>It would gel in %1; kneading alone takes %2.</source>
        <translation>Es würde in %1 gelieren; das Kneten allein dauert %2.</translation>
    </message>
    <message>
        <source>It would set before it is spread. Less hardener is not the way.</source>
        <translation>Es würde fest, bevor es aufgetragen ist. Weniger Härter hilft nicht.</translation>
    </message>
    <message>
        <source>The panel’s margin over the dew point is %1; it needs %2.</source>
        <translation>Das Teil liegt %1 über dem Taupunkt; nötig sind %2.</translation>
    </message>
    <message>
        <source>Water you cannot see settles on it and keeps filler off.</source>
        <translation>Unsichtbares Wasser setzt sich ab und hält den Spachtel fern.</translation>
    </message>
    <message>
        <source>The panel is at %1; filling starts at %2.</source>
        <translation>Das Teil hat %1; Spachteln erst ab %2.</translation>
    </message>
    <message>
        <source>Filler on a cold panel stays soft and does not grip.</source>
        <translation>Spachtel auf kaltem Teil bleibt weich und haftet nicht.</translation>
    </message>
    <message>
        <source>The panel is at %1; filling ends at %2.</source>
        <translation>Das Teil hat %1; Spachteln nur bis %2.</translation>
    </message>
    <message>
        <source>Filler on a hot panel gels before it wets the surface.</source>
        <translation>Spachtel auf heißem Teil geliert, bevor er benetzt.</translation>
    </message>
    <message>
        <source>The air is at %1; filling starts at %2.</source>
        <translation>Die Luft hat %1; Spachteln erst ab %2.</translation>
    </message>
    <message>
        <source>Cold filler and hardener cure slowly and unevenly.</source>
        <translation>Kalter Spachtel und Härter härten langsam und ungleichmäßig.</translation>
    </message>
    <message>
        <source>The air is at %1; filling ends at %2.</source>
        <translation>Die Luft hat %1; Spachteln nur bis %2.</translation>
    </message>
    <message>
        <source>The mix gels on the board before it is spread.</source>
        <translation>Die Mischung geliert auf dem Brett vor dem Auftragen.</translation>
    </message>
    <message>
        <source>This sheet cannot be used</source>
        <translation>Dieses Blatt taugt nicht</translation>
    </message>
    <message>
        <source>Even a thin lift would pass %1 as it cures.</source>
        <translation>Selbst eine dünne Lage würde beim Härten über %1 heiß.</translation>
    </message>
    <message>
        <source>Too hot a lift shrinks, cracks and shows through later.</source>
        <translation>Eine zu heiße Lage schrumpft, reißt und zeichnet sich später ab.</translation>
    </message>
    <message>
        <source>Filler that cures so slowly may stay soft.</source>
        <translation>So langsam härtender Spachtel kann weich bleiben.</translation>
    </message>
    <message>
        <source>No cure runs like that: a slip in one of the two times is likely.</source>
        <translation>So härtet nichts: wohl ein Versehen in einer der beiden Zeiten.</translation>
    </message>
    <message>
        <source>By its sheet it never cures enough to be sanded.</source>
        <translation>Nach dem Blatt härtet es nie genug zum Schleifen.</translation>
    </message>
    <message>
        <source>Its greatest conversion is too low: a slip in the sheet is likely.</source>
        <translation>Sein größter Umsatz ist zu klein: wohl ein Versehen im Blatt.</translation>
    </message>
    <message>
        <source>Its cure could not be worked out beyond %1.</source>
        <translation>Die Härtung ließ sich nur bis %1 berechnen.</translation>
    </message>
    <message>
        <source>The sheet’s figures make it run away faster than can be told.</source>
        <translation>Mit den Werten des Blatts geht es zu schnell durch.</translation>
    </message>
    <message>
        <source>It would not sand within %1.</source>
        <translation>Es wäre in %1 nicht schleifbar.</translation>
    </message>
    <message>
        <source>Sanding from %1 to %2 would fit; its sheet says otherwise.</source>
        <extracomment>%1 and %2 are the earliest and the latest sanding time</extracomment>
        <translation>Schleifen nach %1 bis %2 würde passen; das Blatt sagt anderes.</translation>
    </message>
</context>
<context>
    <name>SupervisorScreens</name>
    <message>
        <source>Why is this stop overridden?</source>
        <translation>Warum wird dieser Halt übergangen?</translation>
    </message>
    <message>
        <source>Which entry is to be put right?</source>
        <translation>Welcher Eintrag ist zu berichtigen?</translation>
    </message>
    <message>
        <source>See what happened to the bench</source>
        <translation>Was am Platz geschah</translation>
    </message>
</context>
<context>
    <name>TakeInScreen</name>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Take in · %1</source>
        <translation>Annehmen · %1</translation>
    </message>
    <message>
        <source>Key in the job number</source>
        <translation>Auftragsnummer eintippen</translation>
    </message>
    <message>
        <source>That is the job</source>
        <translation>Das ist der Auftrag</translation>
    </message>
    <message>
        <source>The job number is empty.</source>
        <translation>Die Auftragsnummer ist leer.</translation>
    </message>
    <message>
        <source>Key in 1 to %1 digits.</source>
        <translation>1 bis %1 Ziffern eintippen.</translation>
    </message>
    <message>
        <source>Skirt panel, right rear</source>
        <translation>Schürze, hinten rechts</translation>
    </message>
    <message>
        <source>Skirt panel, left front</source>
        <translation>Schürze, vorn links</translation>
    </message>
    <message>
        <source>Bumper corner, left</source>
        <translation>Stoßfängerecke, links</translation>
    </message>
    <message>
        <source>Bumper corner, right</source>
        <translation>Stoßfängerecke, rechts</translation>
    </message>
    <message>
        <source>Roof cap, front</source>
        <translation>Dachkappe, vorn</translation>
    </message>
    <message>
        <source>Luggage door, left</source>
        <translation>Gepäckklappe, links</translation>
    </message>
    <message>
        <source>Luggage door, right</source>
        <translation>Gepäckklappe, rechts</translation>
    </message>
    <message>
        <source>Wheel arch, left</source>
        <translation>Radlauf, links</translation>
    </message>
    <message>
        <source>Wheel arch, right</source>
        <translation>Radlauf, rechts</translation>
    </message>
    <message>
        <source>Engine cover</source>
        <translation>Motorklappe</translation>
    </message>
    <message>
        <source>Front apron</source>
        <translation>Frontschürze</translation>
    </message>
    <message>
        <source>Battery door</source>
        <translation>Batterieklappe</translation>
    </message>
    <message>
        <source>Another panel</source>
        <translation>Ein anderes Teil</translation>
    </message>
    <message>
        <source>Technician 1</source>
        <translation>Techniker 1</translation>
    </message>
    <message>
        <source>Technician 2</source>
        <translation>Techniker 2</translation>
    </message>
    <message>
        <source>Technician 3</source>
        <translation>Techniker 3</translation>
    </message>
    <message>
        <source>Apprentice</source>
        <translation>Lehrling</translation>
    </message>
    <message>
        <source>Which panel is it?</source>
        <translation>Welches Teil ist es?</translation>
    </message>
    <message>
        <source>Who is at the bench?</source>
        <translation>Wer ist am Platz?</translation>
    </message>
    <message>
        <source>The code is empty.</source>
        <translation>Der Code ist leer.</translation>
    </message>
    <message>
        <source>The code holds a control character.</source>
        <translation>Der Code enthält ein Steuerzeichen.</translation>
    </message>
    <message>
        <source>The code has %1 characters.</source>
        <translation>Der Code hat %1 Zeichen.</translation>
    </message>
    <message>
        <source>Scan 1 to %1 letters and figures.</source>
        <translation>1 bis %1 Buchstaben und Ziffern scannen.</translation>
    </message>
</context>
<context>
    <name>Tour</name>
    <message>
        <source>One panel, one card, one step at a time</source>
        <translation>Ein Teil, eine Karte, Schritt für Schritt</translation>
    </message>
    <message>
        <source>Every repair hangs on the rail as a card. Tap it: the glass shows the one step that is next. Several run at once; none is lost.</source>
        <translation>Jede Reparatur hängt als Karte an der Leiste. Antippen: der Bildschirm zeigt den einen nächsten Schritt. Mehrere laufen zugleich; keine geht verloren.</translation>
    </message>
    <message>
        <source>First find out what it is</source>
        <translation>Erst herausfinden, was es ist</translation>
    </message>
    <message>
        <source>Magnet, gauge, edge and sound tell the material. What nobody can tell stays unknown, and unknown is a stop.</source>
        <translation>Magnet, Messgerät, Kante und Klang zeigen den Werkstoff. Was niemand sagen kann, bleibt unbekannt, und unbekannt heißt Halt.</translation>
    </message>
    <message>
        <source>A stop is an answer too</source>
        <translation>Auch ein Halt ist eine Antwort</translation>
    </message>
    <message>
        <source>Where filler does not belong, the glass says why, and what to do instead. You leave a stop by putting it right and assessing again.</source>
        <translation>Wo Spachtel nicht hingehört, sagt der Bildschirm, warum, und was stattdessen zu tun ist. Aus einem Halt führt nur beheben und neu beurteilen.</translation>
    </message>
    <message>
        <source>Prepare in order, gear first</source>
        <translation>Der Reihe nach, Ausrüstung zuerst</translation>
    </message>
    <message>
        <source>Each step is confirmed when it is done. Most repairs that fail were lost here.</source>
        <translation>Jeder Schritt wird nach dem Tun bestätigt. Die meisten Fehlschläge entstehen hier.</translation>
    </message>
    <message>
        <source>Puddle and bead are drawn at true size</source>
        <translation>Kreis und Strang, in wahrer Größe gezeichnet</translation>
    </message>
    <message>
        <source>Lay filler and hardener as drawn, or weigh them. The clock starts when the hardener meets the filler: tap &apos;Hardener in&apos;.</source>
        <translation>Spachtel und Härter wie gezeichnet legen oder wiegen. Die Uhr startet, wenn der Härter an den Spachtel kommt: „Härter drin“ antippen.</translation>
    </message>
    <message>
        <source>The clock counts to the next act</source>
        <translation>Die Uhr zählt bis zum nächsten Handgriff</translation>
    </message>
    <message>
        <source>Spread, clear the edges before it gels, then hands off. Every mix that runs stays in the dark bar at the top: tap it to go there.</source>
        <translation>Auftragen, Ränder vor dem Gelieren säubern, dann Hände weg. Jeder laufende Ansatz bleibt in der dunklen Leiste oben: antippen führt hin.</translation>
    </message>
    <message>
        <source>Sand when nail and paper say so</source>
        <translation>Schleifen, wenn Nagel und Papier es sagen</translation>
    </message>
    <message>
        <source>No mark by the nail, powder on the paper. Then the next lift, the other face, or the finish.</source>
        <translation>Keine Spur vom Nagel, Staub am Papier. Dann die nächste Lage, die andere Seite oder das Finish.</translation>
    </message>
    <message>
        <source>Now practise: nothing here is in the shop’s record</source>
        <translation>Jetzt üben: nichts hiervon steht im Protokoll der Werkstatt</translation>
    </message>
    <message>
        <source>On a practice panel you decide alone, and see what it would have come to. Safety data sheet and the vehicle maker’s manual come first, at the bench as here.</source>
        <translation>Am Übungsteil wird allein entschieden, und es zeigt sich, was daraus geworden wäre. Sicherheitsdatenblatt und Anleitung des Fahrzeugherstellers gehen vor, am Platz wie hier.</translation>
    </message>
    <message>
        <source>Tour, %1 of %2</source>
        <translation>Rundgang, %1 von %2</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Skip the tour</source>
        <translation>Ohne Rundgang</translation>
    </message>
</context>
<context>
    <name>Traps</name>
    <message>
        <source>The crack runs on past the crazing that is seen.</source>
        <translation>Der Riss läuft weiter als die sichtbaren Haarrisse.</translation>
    </message>
    <message>
        <source>SMC passes for hand laminate until its edge is looked at.</source>
        <translation>SMC geht als Handlaminat durch, bis man seine Kante ansieht.</translation>
    </message>
    <message>
        <source>It looks dry, and is too near its dew point.</source>
        <translation>Es sieht trocken aus und ist zu nah an seinem Taupunkt.</translation>
    </message>
    <message>
        <source>Just above the dew point is not enough.</source>
        <translation>Knapp über dem Taupunkt reicht nicht.</translation>
    </message>
    <message>
        <source>A weak magnet means old filler over steel.</source>
        <translation>Schwacher Magnetzug heißt alter Spachtel auf Stahl.</translation>
    </message>
    <message>
        <source>The weld is hot and full of pores.</source>
        <translation>Die Schweißnaht ist heiß und voller Poren.</translation>
    </message>
    <message>
        <source>A spot-welded seam invites welding up: it is a joint.</source>
        <translation>Eine Punktnaht verleitet zum Zuschweißen: sie ist eine Verbindung.</translation>
    </message>
    <message>
        <source>Only from behind it is seen that the weld is stitched.</source>
        <translation>Erst von hinten ist zu sehen, dass es Steppnähte sind.</translation>
    </message>
    <message>
        <source>Black rust converter looks sound, and a belt is mounted near.</source>
        <translation>Schwarzer Rostumwandler wirkt fest, und nahebei ist ein Gurt befestigt.</translation>
    </message>
    <message>
        <source>The zinc was ground away here; beside it the gauge finds it.</source>
        <translation>Hier ist das Zink weggeschliffen; daneben findet es das Messgerät.</translation>
    </message>
    <message>
        <source>Steel in aluminium corrodes overnight.</source>
        <translation>Stahl in Aluminium korrodiert über Nacht.</translation>
    </message>
    <message>
        <source>The squeezed-out adhesive is still soft.</source>
        <translation>Der ausgequollene Kleber ist noch weich.</translation>
    </message>
    <message>
        <source>It rings hard under its paint, and sands to strings.</source>
        <translation>Es klingt hart unter dem Lack und zieht beim Schleifen Fäden.</translation>
    </message>
    <message>
        <source>Carbon under paint: only the ohmmeter tells.</source>
        <translation>Kohlefaser unter Lack: nur das Ohmmeter zeigt sie.</translation>
    </message>
    <message>
        <source>It powders like SMC, and has no fibre in it.</source>
        <translation>Es stäubt wie SMC und hat keine Faser.</translation>
    </message>
    <message>
        <source>Etch primer looks good, and polyester does not hold on it.</source>
        <translation>Säureprimer sieht gut aus, und Polyester hält nicht darauf.</translation>
    </message>
    <message>
        <source>A sensor looks through here.</source>
        <translation>Hier schaut ein Sensor hindurch.</translation>
    </message>
    <message>
        <source>It is the wall of a tank.</source>
        <translation>Es ist die Wand eines Tanks.</translation>
    </message>
    <message>
        <source>Under the skin there is foam.</source>
        <translation>Unter der Haut ist Schaum.</translation>
    </message>
</context>
<context>
    <name>WeighScreen</name>
    <message>
        <source>Planned: %1. Tare the scale before each.</source>
        <translation>Geplant: %1. Waage vor jedem tarieren.</translation>
    </message>
    <message>
        <source>How much was weighed of each?</source>
        <translation>Wie viel wurde je gewogen?</translation>
    </message>
    <message>
        <source>Hardener in: start</source>
        <translation>Härter drin: Start</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Spachtel</translation>
    </message>
    <message>
        <source>Key in the filler weighed</source>
        <translation>Gewogenen Spachtel eintippen</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Härter</translation>
    </message>
    <message>
        <source>Key in the hardener weighed</source>
        <translation>Gewogenen Härter eintippen</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>prepare</source>
        <translation>vorbereiten</translation>
    </message>
    <message>
        <source>dry and flash off</source>
        <translation>trocknen, ablüften</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mischen</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>auftragen</translation>
    </message>
    <message>
        <source>hands off</source>
        <translation>Hände weg</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>schleifen</translation>
    </message>
    <message>
        <source>turn the panel</source>
        <translation>Teil wenden</translation>
    </message>
    <message>
        <source>finish</source>
        <translation>Finish</translation>
    </message>
    <message>
        <source>guide coat dries</source>
        <translation>Kontrollschwarz trocknet</translation>
    </message>
    <message>
        <source>cure before primer</source>
        <translation>härten vor Primer</translation>
    </message>
    <message>
        <source>Nobody may override this.</source>
        <translation>Das darf niemand übergehen.</translation>
    </message>
    <message>
        <source>Only the supervisor may override, with a reason.</source>
        <translation>Nur der Meister darf es übergehen, mit Begründung.</translation>
    </message>
    <message>
        <source>Park it</source>
        <translation>Parken</translation>
    </message>
    <message>
        <source>Park it — %1</source>
        <extracomment>%1 is where it goes: &quot;to the welding shop&quot;</extracomment>
        <translation>Parken – %1</translation>
    </message>
    <message>
        <source>Job %1</source>
        <extracomment>%1 is the job&apos;s number</extracomment>
        <translation>Auftrag %1</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n Ansatz</numerusform>
            <numerusform>%n Ansätze</numerusform>
        </translation>
    </message>
    <message>
        <source>The maker’s repair manual, local codes and licensed practice come first.</source>
        <translation>Reparaturanleitung des Herstellers, Vorschriften und Fachkunde gehen vor.</translation>
    </message>
    <message>
        <source>input</source>
        <translation>Eingabe</translation>
    </message>
</context>
<context>
    <name>strandbench::BeadTrialScreen</name>
    <message>
        <source>Bead of the hardener’s tube</source>
        <translation>Strang der Härtertube</translation>
    </message>
    <message>
        <source>Tell the hardener’s lot first</source>
        <translation>Zuerst die Härtercharge angeben</translation>
    </message>
    <message>
        <source>A nozzle belongs to its tube. Which lot of hardener is open was not told: tell it where a batch is mixed, then calibrate.</source>
        <translation>Eine Düse gehört zu ihrer Tube. Welche Härtercharge offen ist, wurde nicht angegeben: beim Mischen angeben, dann kalibrieren.</translation>
    </message>
    <message>
        <source>What the beads come to</source>
        <translation>Was die Stränge ergeben</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Nothing to keep yet</source>
        <translation>Noch nichts zu behalten</translation>
    </message>
    <message>
        <source>%1: %2, %3, %4</source>
        <extracomment>%1 is a number, %2 a length, %3 a mass, %4 a mass per length: &quot;1: 100 mm, 2.31 g, 23.1 mg/mm&quot;</extracomment>
        <translation>%1: %2, %3, %4</translation>
    </message>
    <message>
        <source>Scatter %1, at most %2. It holds for this lot until another is opened.</source>
        <translation>Streuung %1, höchstens %2. Gilt für diese Charge, bis eine andere geöffnet wird.</translation>
    </message>
    <message>
        <source>%1 of at least %2 beads are laid.</source>
        <translation>%1 von mindestens %2 Strängen sind gelegt.</translation>
    </message>
    <message>
        <source>The beads scatter by %1, at most %2 is of use. Lay them again, straight and at one push.</source>
        <translation>Die Stränge streuen um %1, höchstens %2 sind brauchbar. Neu legen, gerade und in einem Zug.</translation>
    </message>
    <message>
        <source>One more bead</source>
        <translation>Noch ein Strang</translation>
    </message>
    <message>
        <source>Begin anew</source>
        <translation>Neu beginnen</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>1 s halten</translation>
    </message>
</context>
<context>
    <name>strandbench::BenchWindow</name>
    <message>
        <source>The set-up could not be saved.</source>
        <translation>Die Einstellung wurde nicht gespeichert.</translation>
    </message>
    <message>
        <source>It holds until the program is closed.</source>
        <translation>Sie gilt, bis das Programm schließt.</translation>
    </message>
    <message>
        <source>Scanned %1: not wanted here.</source>
        <translation>Gescannt %1: hier nicht gebraucht.</translation>
    </message>
    <message>
        <source>A scan came without its Enter. Set the scanner to end with Enter.</source>
        <translation>Ein Scan kam ohne Enter. Scanner so einstellen, dass er mit Enter endet.</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to sign off</source>
        <translation>PIN des Meisters, zum Abnehmen</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to override</source>
        <translation>PIN des Meisters, zum Übergehen</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to forget them</source>
        <translation>PIN des Meisters, zum Vergessen</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to put it right</source>
        <translation>PIN des Meisters, zum Berichtigen</translation>
    </message>
    <message>
        <source>The supervisor’s PIN</source>
        <translation>Die PIN des Meisters</translation>
    </message>
    <message>
        <source>signs as %1</source>
        <translation>zeichnet als %1</translation>
    </message>
    <message>
        <source>Give the PIN</source>
        <translation>PIN eingeben</translation>
    </message>
    <message>
        <source>What is right?</source>
        <translation>Was ist richtig?</translation>
    </message>
    <message>
        <source>Put it right</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>The PIN that holds now</source>
        <translation>Die PIN, die jetzt gilt</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Key in the new PIN</source>
        <translation>Neue PIN eintippen</translation>
    </message>
    <message>
        <source>Key in the new PIN again</source>
        <translation>Neue PIN noch einmal eintippen</translation>
    </message>
    <message>
        <source>Set this PIN</source>
        <translation>Diese PIN setzen</translation>
    </message>
    <message>
        <source>The two are not the same.</source>
        <translation>Die beiden sind nicht gleich.</translation>
    </message>
    <message>
        <source>Go back and key it in anew.</source>
        <translation>Zurückgehen und neu eintippen.</translation>
    </message>
    <message>
        <source>This PIN is too easy to guess.</source>
        <translation>Diese PIN ist zu leicht zu erraten.</translation>
    </message>
    <message>
        <source>Go back and choose another.</source>
        <translation>Zurückgehen und eine andere wählen.</translation>
    </message>
    <message>
        <source>Only looking: another copy of the program has this bench.</source>
        <translation>Nur Ansicht: ein zweites Programm hat diesen Platz.</translation>
    </message>
    <message>
        <source>In which folder are the pictures?</source>
        <translation>In welchem Ordner sind die Bilder?</translation>
    </message>
    <message>
        <source>Into which folder do backups go?</source>
        <translation>In welchen Ordner kommen Sicherungen?</translation>
    </message>
    <message>
        <source>In which folder is it?</source>
        <translation>In welchem Ordner ist es?</translation>
    </message>
    <message>
        <source>Something is being kept just now.</source>
        <translation>Gerade wird etwas gesichert.</translation>
    </message>
    <message>
        <source>Try again in a moment.</source>
        <translation>Gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to restore</source>
        <translation>PIN des Meisters, zum Zurückholen</translation>
    </message>
    <message>
        <source>Only looking: the log cannot be written.</source>
        <translation>Nur Ansicht: das Protokoll ist nicht schreibbar.</translation>
    </message>
    <message>
        <source>Log damaged, nothing is written: restore a backup.</source>
        <translation>Protokoll beschädigt, nichts wird geschrieben: Sicherung holen.</translation>
    </message>
    <message numerus="yes">
        <source>%n act(s) wait.</source>
        <translation>
            <numerusform>%n Schritt wartet.</numerusform>
            <numerusform>%n Schritte warten.</numerusform>
        </translation>
    </message>
    <message>
        <source>Product sheets</source>
        <translation>Produktblätter</translation>
    </message>
    <message>
        <source>What kind of filler is it?</source>
        <translation>Welche Art Spachtel?</translation>
    </message>
    <message>
        <source>Into which folder does the sheet go?</source>
        <translation>In welchen Ordner kommt das Blatt?</translation>
    </message>
    <message>
        <source>Written into %1: %2 as JSON and CSV.</source>
        <extracomment>%1 is a folder, %2 a file&apos;s name without its ending</extracomment>
        <translation>Geschrieben nach %1: %2 als JSON und CSV.</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>Nicht geschrieben: %1</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, for the product sheet</source>
        <translation>PIN des Meisters, für das Blatt</translation>
    </message>
    <message>
        <source>No lot of hardener is known.</source>
        <translation>Keine Härtercharge ist bekannt.</translation>
    </message>
    <message>
        <source>Book in the tube that is open, then try.</source>
        <translation>Offene Tube einbuchen, dann versuchen.</translation>
    </message>
    <message>
        <source>Into which folder does the recall list go?</source>
        <translation>In welchen Ordner kommt die Rückrufliste?</translation>
    </message>
    <message>
        <source>Returned by the supervisor</source>
        <translation>Vom Meister zurückgegeben</translation>
    </message>
    <message>
        <source>What is to be mended?</source>
        <translation>Was ist zu beheben?</translation>
    </message>
    <message>
        <source>Return it</source>
        <translation>Zurückgeben</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to return it</source>
        <translation>PIN des Meisters, zum Zurückgeben</translation>
    </message>
</context>
<context>
    <name>strandbench::CameraScreen</name>
    <message>
        <source>Take it again</source>
        <translation>Neu aufnehmen</translation>
    </message>
    <message>
        <source>Another camera</source>
        <translation>Andere Kamera</translation>
    </message>
    <message>
        <source>No camera is there.</source>
        <translation>Keine Kamera da.</translation>
    </message>
    <message>
        <source>Plug the camera in again, or choose from a folder.</source>
        <translation>Kamera wieder anstecken oder aus einem Ordner wählen.</translation>
    </message>
    <message>
        <source>Point the camera: %1</source>
        <translation>Kamera ausrichten: %1</translation>
    </message>
    <message>
        <source>Waiting for the camera</source>
        <translation>Warten auf die Kamera</translation>
    </message>
    <message>
        <source>Take the photo</source>
        <translation>Foto aufnehmen</translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation>Was die Kamera sieht</translation>
    </message>
    <message>
        <source>Check the photo: %1</source>
        <translation>Foto prüfen: %1</translation>
    </message>
    <message>
        <source>Keep this photo</source>
        <translation>Foto behalten</translation>
    </message>
    <message>
        <source>The photo taken</source>
        <translation>Das aufgenommene Foto</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Erneut versuchen</translation>
    </message>
    <message>
        <source>%1 is not there any more.</source>
        <extracomment>%1 is what the camera calls itself</extracomment>
        <translation>%1 ist nicht mehr da.</translation>
    </message>
    <message>
        <source>%1 is in use elsewhere.</source>
        <translation>%1 wird anderswo benutzt.</translation>
    </message>
    <message>
        <source>End what uses it, or choose from a folder.</source>
        <translation>Beenden, was sie benutzt, oder aus einem Ordner wählen.</translation>
    </message>
    <message>
        <source>The bench may not use %1.</source>
        <translation>Der Platz darf %1 nicht benutzen.</translation>
    </message>
    <message>
        <source>Have it allowed, or choose from a folder.</source>
        <translation>Freigeben lassen oder aus einem Ordner wählen.</translation>
    </message>
    <message>
        <source>%1 gives no picture that can be kept.</source>
        <translation>%1 gibt kein Bild, das sich behalten lässt.</translation>
    </message>
    <message>
        <source>Take another camera, or choose from a folder.</source>
        <translation>Andere Kamera nehmen oder aus einem Ordner wählen.</translation>
    </message>
    <message>
        <source>%1 sends no picture.</source>
        <translation>%1 sendet kein Bild.</translation>
    </message>
    <message>
        <source>%1 failed: %2.</source>
        <extracomment>%1 is what the camera calls itself, %2 what the system says</extracomment>
        <translation>%1 versagt: %2.</translation>
    </message>
    <message>
        <source>Take it again, or choose from a folder.</source>
        <translation>Neu aufnehmen oder aus einem Ordner wählen.</translation>
    </message>
    <message>
        <source>The photo is larger than %1 MB.</source>
        <translation>Das Foto ist größer als %1 MB.</translation>
    </message>
    <message>
        <source>%1 gave no whole picture.</source>
        <translation>%1 gab kein ganzes Bild.</translation>
    </message>
</context>
<context>
    <name>strandbench::ClockScreen</name>
    <message>
        <source>clock runs on</source>
        <translation>Uhr läuft weiter</translation>
    </message>
    <message>
        <source>from the sheet, not yet from this panel’s heat</source>
        <translation>nach Blatt, noch nicht nach der Wärme dieses Teils</translation>
    </message>
    <message>
        <source>It has gelled</source>
        <translation>Es ist geliert</translation>
    </message>
    <message>
        <source>tap when it pulls and will not smear</source>
        <translation>tippen, wenn es anzieht und nicht mehr schmiert</translation>
    </message>
    <message>
        <source>It sands already</source>
        <translation>Schon schleifbar</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>1 s halten</translation>
    </message>
    <message>
        <source>On the board</source>
        <translation>Auf dem Brett</translation>
    </message>
    <message>
        <source>On the panel</source>
        <translation>Auf dem Teil</translation>
    </message>
    <message>
        <source>Phases of this batch to time scale</source>
        <translation>Phasen dieses Ansatzes, zeittreu</translation>
    </message>
    <message>
        <source>the board has set</source>
        <translation>das Brett ist fest</translation>
    </message>
    <message>
        <source>board sets in %1</source>
        <translation>Brett fest in %1</translation>
    </message>
    <message>
        <source>Edges are clear</source>
        <translation>Ränder sind sauber</translation>
    </message>
    <message>
        <source>Knead firmly: no air, no streaks</source>
        <translation>Fest kneten: keine Luft, keine Schlieren</translation>
    </message>
    <message>
        <source>until you spread</source>
        <translation>bis zum Auftragen</translation>
    </message>
    <message>
        <source>Press in firmly, wet the edges, fill to level</source>
        <translation>Fest eindrücken, Ränder benetzen, eben füllen</translation>
    </message>
    <message>
        <source>until the edges must be clear</source>
        <translation>bis die Ränder sauber sein müssen</translation>
    </message>
    <message>
        <source>Clear the edges now</source>
        <translation>Jetzt die Ränder säubern</translation>
    </message>
    <message>
        <source>until it gels</source>
        <translation>bis es geliert</translation>
    </message>
    <message>
        <source>since hardener in</source>
        <translation>seit Härter drin</translation>
    </message>
    <message>
        <source>Nail and paper say: it sands</source>
        <translation>Nagel und Papier: schleifbar</translation>
    </message>
    <message>
        <source>Hands off: let it cure</source>
        <translation>Hände weg: aushärten lassen</translation>
    </message>
    <message>
        <source>until it may be tested</source>
        <translation>bis zur Probe</translation>
    </message>
    <message>
        <source>Nail leaves no mark, paper powders: then sand</source>
        <translation>Nagel ohne Spur, Papier stäubt: schleifen</translation>
    </message>
    <message>
        <source>of easy sanding left</source>
        <translation>noch leicht schleifbar</translation>
    </message>
    <message>
        <source>since hardener in: it gets harder</source>
        <translation>seit Härter drin: es wird härter</translation>
    </message>
    <message>
        <source>from the sheet, for this layer on this panel</source>
        <translation>nach Blatt, für diese Lage auf diesem Teil</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Kurve</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>gels between %1 and %2</source>
        <translation>geliert zwischen %1 und %2</translation>
    </message>
    <message>
        <source>sands from between %1 and %2</source>
        <translation>Schleifbeginn %1 bis %2</translation>
    </message>
    <message>
        <source>As read at %1, before: %2.</source>
        <translation>Abgelesen um %1, vorher: %2.</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Neu ablesen</translation>
    </message>
    <message>
        <source>It may have gelled: hands off</source>
        <translation>Es kann geliert sein: Hände weg</translation>
    </message>
    <message>
        <source>until it sands, at the latest</source>
        <translation>bis spätestens schleifbar</translation>
    </message>
</context>
<context>
    <name>strandbench::ClosingScreen</name>
    <message>
        <source>Deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Reading …</source>
        <translation>Wird gelesen …</translation>
    </message>
    <message>
        <source>The record holds what is asked for</source>
        <translation>Die Akte enthält das Verlangte</translation>
    </message>
    <message numerus="yes">
        <source>The record lacks %n thing(s)</source>
        <translation>
            <numerusform>Der Akte fehlt %n Angabe</numerusform>
            <numerusform>Der Akte fehlen %n Angaben</numerusform>
        </translation>
    </message>
    <message>
        <source>Signed off: %1, %2</source>
        <translation>Abgenommen: %1, %2</translation>
    </message>
    <message>
        <source>Returned: %1. %2, %3</source>
        <extracomment>%1 is a reason, %2 a person, %3 a day and a time</extracomment>
        <translation>Zurückgegeben: %1. %2, %3</translation>
    </message>
    <message>
        <source>Sign off</source>
        <translation>Abnehmen</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>Meister</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Zurückgeben</translation>
    </message>
    <message>
        <source>What it does again</source>
        <translation>Was sie nacharbeitet</translation>
    </message>
    <message>
        <source>Its rework</source>
        <translation>Ihre Nacharbeit</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Berichtigen</translation>
    </message>
</context>
<context>
    <name>strandbench::CurveScreen</name>
    <message>
        <source>What goes on inside this layer</source>
        <translation>Was in dieser Lage geschieht</translation>
    </message>
    <message>
        <source>clock runs on</source>
        <translation>Uhr läuft weiter</translation>
    </message>
    <message>
        <source>Back to the clock</source>
        <translation>Zurück zur Uhr</translation>
    </message>
    <message>
        <source>hottest</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>face</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>cured</source>
        <translation>gehärtet</translation>
    </message>
    <message>
        <source>gel</source>
        <translation>Gel</translation>
    </message>
    <message>
        <source>sands</source>
        <translation>schleifbar</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>Temperatures and cure of this layer against time</source>
        <translation>Temperaturen und Härtung dieser Lage über der Zeit</translation>
    </message>
    <message>
        <source>Gels after</source>
        <translation>Geliert nach</translation>
    </message>
    <message>
        <source>Sands after</source>
        <translation>Schleifbar nach</translation>
    </message>
    <message>
        <source>Hottest, limit %1</source>
        <translation>Spitze, Grenze %1</translation>
    </message>
    <message>
        <source>Hottest</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>Cured by now</source>
        <translation>Bis jetzt gehärtet</translation>
    </message>
</context>
<context>
    <name>strandbench::DayReviewScreen</name>
    <message>
        <source>Reading …</source>
        <translation>Wird gelesen …</translation>
    </message>
    <message>
        <source>Nothing was worked on that day.</source>
        <translation>An diesem Tag wurde nichts bearbeitet.</translation>
    </message>
    <message>
        <source>Next to look through</source>
        <translation>Nächste ansehen</translation>
    </message>
    <message>
        <source>Day before</source>
        <translation>Tag davor</translation>
    </message>
    <message>
        <source>Day after</source>
        <translation>Tag danach</translation>
    </message>
    <message>
        <source>Narrow down</source>
        <translation>Eingrenzen</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>Day’s sheets</source>
        <translation>Tagesblätter</translation>
    </message>
    <message>
        <source>Reading %1 of %2 …</source>
        <extracomment>how many repairs of how many were read</extracomment>
        <translation>%1 von %2 gelesen …</translation>
    </message>
    <message numerus="yes">
        <source>%n to sign off or return</source>
        <translation>
            <numerusform>%n abzunehmen oder zurückzugeben</numerusform>
            <numerusform>%n abzunehmen oder zurückzugeben</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing to sign off</source>
        <translation>Nichts abzunehmen</translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s)</source>
        <translation>
            <numerusform>%n Reparatur</numerusform>
            <numerusform>%n Reparaturen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n need eyes first</source>
        <translation>
            <numerusform>%n zuerst ansehen</numerusform>
            <numerusform>%n zuerst ansehen</numerusform>
        </translation>
    </message>
    <message>
        <source>mixed %1, planned %2</source>
        <extracomment>two masses of filler</extracomment>
        <translation>gemischt %1, geplant %2</translation>
    </message>
    <message>
        <source>work %1, planned %2</source>
        <extracomment>two times of work</extracomment>
        <translation>Arbeit %1, geplant %2</translation>
    </message>
    <message>
        <source>A record that cannot be read</source>
        <translation>Eine Akte, die nicht lesbar ist</translation>
    </message>
    <message>
        <source>rework</source>
        <translation>Nacharbeit</translation>
    </message>
</context>
<context>
    <name>strandbench::DaySheetsScreen</name>
    <message>
        <source>Choose where the day’s sheets go</source>
        <translation>Wohin kommen die Tagesblätter?</translation>
    </message>
    <message>
        <source>A record of this day cannot be read.</source>
        <translation>Eine Akte dieses Tages ist nicht lesbar.</translation>
    </message>
</context>
<context>
    <name>strandbench::DewScreen</name>
    <message>
        <source>Panel above its dew point</source>
        <translation>Teil über seinem Taupunkt</translation>
    </message>
    <message>
        <source>The least margin follows the practice of ISO 8502-4 and ISO 12944-7; a sheet that asks for more comes first.</source>
        <translation>Der kleinste Abstand folgt der Praxis nach ISO 8502-4 und ISO 12944-7; verlangt ein Blatt mehr, geht es vor.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing was read in the last %n day(s).</source>
        <translation>
            <numerusform>Am letzten Tag wurde nichts abgelesen.</numerusform>
            <numerusform>In den letzten %n Tagen wurde nichts abgelesen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Margin over the dew point against the time of day, %1</source>
        <translation>Abstand zum Taupunkt über die Tageszeit, %1</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>Grenze %1</translation>
    </message>
    <message>
        <source>below the limit</source>
        <translation>unter der Grenze</translation>
    </message>
    <message>
        <source>%1, last read at %2</source>
        <extracomment>a day, and the time of its last reading</extracomment>
        <translation>%1, zuletzt abgelesen um %2</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>%1 above dew point</source>
        <translation>%1 über Taupunkt</translation>
    </message>
    <message>
        <source>air %1, %2; panel %3; dew point %4</source>
        <translation>Luft %1, %2; Teil %3; Taupunkt %4</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s), each within the limit of %1.</source>
        <translation>
            <numerusform>%n Ablesung, innerhalb der Grenze von %1.</numerusform>
            <numerusform>%n Ablesungen, jede innerhalb der Grenze von %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) below the limit of %1</source>
        <translation>
            <numerusform>%n Ablesung unter der Grenze von %1</numerusform>
            <numerusform>%n Ablesungen unter der Grenze von %1</numerusform>
        </translation>
    </message>
    <message>
        <source>least %1 at %2: no filling then</source>
        <translation>am wenigsten %1 um %2: dann nicht spachteln</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
</context>
<context>
    <name>strandbench::FigureListScreen</name>
    <message>
        <source>gels of a lot against its sheet</source>
        <translation>Gelzeiten einer Charge gegen ihr Blatt</translation>
    </message>
    <message>
        <source>planned and mixed, by product</source>
        <translation>geplant und angemischt, je Produkt</translation>
    </message>
    <message>
        <source>signed off, not returned, by substrate</source>
        <translation>abgenommen, nicht zurückgegeben, je Untergrund</translation>
    </message>
    <message>
        <source>planned and actual, by part of the job</source>
        <translation>geplant und gebraucht, je Arbeitsgang</translation>
    </message>
    <message>
        <source>deviations, the most frequent first</source>
        <translation>Abweichungen, die häufigsten zuerst</translation>
    </message>
    <message>
        <source>Figures of this bench’s log</source>
        <translation>Zahlen aus dem Protokoll dieses Platzes</translation>
    </message>
    <message>
        <source>What do you want to know?</source>
        <translation>Was ist gefragt?</translation>
    </message>
</context>
<context>
    <name>strandbench::FigureLotScreen</name>
    <message>
        <source>Which lot? The newest gel first</source>
        <translation>Welche Charge? Neuestes Gel zuerst</translation>
    </message>
    <message>
        <source>In these days no gel was told of a batch whose hardener lot is known.</source>
        <translation>In diesen Tagen wurde kein Gel eines Ansatzes gemeldet, dessen Härtercharge bekannt ist.</translation>
    </message>
    <message numerus="yes">
        <source>%n gel(s), the last on %1</source>
        <translation>
            <numerusform>%n Gelzeit, letzte am %1</numerusform>
            <numerusform>%n Gelzeiten, letzte am %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::FigureScreen</name>
    <message>
        <source>Is lot %1 drifting?</source>
        <extracomment>%1 is a lot of hardener</extracomment>
        <translation>Driftet Charge %1?</translation>
    </message>
    <message>
        <source>Show the chart</source>
        <translation>Diagramm zeigen</translation>
    </message>
    <message>
        <source>Show the table</source>
        <translation>Tabelle zeigen</translation>
    </message>
    <message>
        <source>Moving range</source>
        <translation>Spannweite</translation>
    </message>
    <message>
        <source>Single gels</source>
        <translation>Einzelwerte</translation>
    </message>
    <message>
        <source>the step from gel to gel</source>
        <translation>der Sprung von Gel zu Gel</translation>
    </message>
    <message>
        <source>with the moving mean</source>
        <translation>mit gleitendem Mittel</translation>
    </message>
</context>
<context>
    <name>strandbench::FiguresScreen</name>
    <message>
        <source>%1 is not measured yet.</source>
        <translation>%1 ist noch nicht gemessen.</translation>
    </message>
    <message>
        <source>Tap its figure to key it in.</source>
        <translation>Zahl antippen und eintippen.</translation>
    </message>
    <message>
        <source>Take this figure</source>
        <translation>Zahl übernehmen</translation>
    </message>
    <message>
        <source>%1: take over</source>
        <translation>%1: übernehmen</translation>
    </message>
    <message>
        <source>not within what is allowed here</source>
        <translation>außerhalb des hier Erlaubten</translation>
    </message>
    <message>
        <source>not steady yet</source>
        <translation>noch nicht ruhig</translation>
    </message>
</context>
<context>
    <name>strandbench::FindScreen</name>
    <message>
        <source>Job, panel, person, lot or words of a note</source>
        <translation>Auftrag, Teil, Person, Charge oder Worte einer Notiz</translation>
    </message>
    <message>
        <source>What is looked for?</source>
        <translation>Was wird gesucht?</translation>
    </message>
    <message>
        <source>Look for it</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>The code holds a control character.</source>
        <translation>Der Code enthält ein Steuerzeichen.</translation>
    </message>
    <message>
        <source>It is not looked for.</source>
        <translation>Er wird nicht gesucht.</translation>
    </message>
</context>
<context>
    <name>strandbench::FireScreen</name>
    <message>
        <source>What can burn here</source>
        <translation>Was hier brennen kann</translation>
    </message>
    <message>
        <source>The safety data sheet, local codes and licensed practice come first.</source>
        <translation>Sicherheitsdatenblatt, örtliche Vorschriften und Fachkunde gehen vor.</translation>
    </message>
    <message>
        <source>What lights vapour</source>
        <translation>Was Dämpfe entzündet</translation>
    </message>
    <message>
        <source>Sparks of grinder, drill, switch or plug.</source>
        <translation>Funken von Schleifer, Bohrer, Schalter oder Stecker.</translation>
    </message>
    <message>
        <source>Static of dry rags, foil and spray: earth can and panel.</source>
        <translation>Statische Ladung von trockenen Lappen, Folie, Sprühen: Dose und Teil erden.</translation>
    </message>
    <message>
        <source>Heater, lamp, hot pipe, flame, cigarette.</source>
        <translation>Heizung, Strahler, heißes Rohr, Flamme, Zigarette.</translation>
    </message>
    <message>
        <source>The vapours are heavier than air: they lie low and creep far.</source>
        <translation>Die Dämpfe sind schwerer als Luft: sie liegen am Boden und kriechen weit.</translation>
    </message>
    <message>
        <source>What heats up by itself</source>
        <translation>Was von selbst heiß wird</translation>
    </message>
</context>
<context>
    <name>strandbench::FoundScreen</name>
    <message>
        <source>Looked for: %1</source>
        <translation>Gesucht: %1</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation>Suche …</translation>
    </message>
    <message>
        <source>Look for something else</source>
        <translation>Etwas anderes suchen</translation>
    </message>
    <message>
        <source>Nothing found</source>
        <translation>Nichts gefunden</translation>
    </message>
    <message>
        <source>The newest first: tap one</source>
        <translation>Neueste zuerst: antippen</translation>
    </message>
    <message>
        <source>No repair holds all of these words. Fewer letters find more: words are found by their beginning.</source>
        <translation>Keine Reparatur enthält alle diese Wörter. Weniger Buchstaben finden mehr: der Anfang genügt.</translation>
    </message>
    <message>
        <source>every repair that took of this lot</source>
        <translation>jede Reparatur mit dieser Charge</translation>
    </message>
    <message>
        <source>Older ones</source>
        <translation>Ältere</translation>
    </message>
</context>
<context>
    <name>strandbench::GlossaryScreen</name>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Words of the trade</source>
        <translation>Wörter des Handwerks</translation>
    </message>
    <message>
        <source>Back to the job</source>
        <translation>Zurück zur Arbeit</translation>
    </message>
</context>
<context>
    <name>strandbench::HarmScreen</name>
    <message>
        <source>What can hurt here</source>
        <translation>Was hier schaden kann</translation>
    </message>
    <message>
        <source>The safety data sheet, local codes and licensed practice come first.</source>
        <translation>Sicherheitsdatenblatt, örtliche Vorschriften und Fachkunde gehen vor.</translation>
    </message>
    <message>
        <source>Back to the step</source>
        <translation>Zurück zum Schritt</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>By the safety data sheet of %1</source>
        <extracomment>%1 is a product as the shop calls it</extracomment>
        <translation>Nach dem Sicherheitsdatenblatt von %1</translation>
    </message>
    <message>
        <source>In general; the product’s own sheet may say more.</source>
        <translation>Im Allgemeinen; das Datenblatt des Produkts kann mehr sagen.</translation>
    </message>
    <message>
        <source>Gloves: %1</source>
        <translation>Handschuhe: %1</translation>
    </message>
    <message>
        <source>Mask: %1</source>
        <translation>Maske: %1</translation>
    </message>
    <message>
        <source>First aid: %1</source>
        <translation>Erste Hilfe: %1</translation>
    </message>
    <message>
        <source>Waste: %1</source>
        <translation>Abfall: %1</translation>
    </message>
    <message>
        <source>Its sheet states no hazard.</source>
        <translation>Sein Datenblatt nennt keine Gefahr.</translation>
    </message>
</context>
<context>
    <name>strandbench::HelpScreen</name>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Back to the job</source>
        <translation>Zurück zur Arbeit</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Wörter</translation>
    </message>
    <message>
        <source>of the trade</source>
        <translation>des Handwerks</translation>
    </message>
    <message>
        <source>Legend</source>
        <translation>Legende</translation>
    </message>
    <message>
        <source>hatches and signs</source>
        <translation>Schraffuren, Zeichen</translation>
    </message>
    <message>
        <source>Quick card</source>
        <translation>Kurzkarte</translation>
    </message>
    <message>
        <source>one page, to print</source>
        <translation>eine Seite, zum Drucken</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
</context>
<context>
    <name>strandbench::HomeScreen</name>
    <message>
        <source>Take in a panel</source>
        <translation>Teil annehmen</translation>
    </message>
    <message>
        <source>job number and panel</source>
        <translation>Auftrag und Teil</translation>
    </message>
    <message>
        <source>At the bench</source>
        <translation>Am Platz</translation>
    </message>
    <message>
        <source>nobody yet: tap</source>
        <translation>noch niemand: tippen</translation>
    </message>
    <message>
        <source>More jobs</source>
        <translation>Mehr Aufträge</translation>
    </message>
    <message>
        <source>Bench set-up</source>
        <translation>Platz einrichten</translation>
    </message>
    <message numerus="yes">
        <source>%n in all</source>
        <translation>
            <numerusform>%n insgesamt</numerusform>
            <numerusform>%n insgesamt</numerusform>
        </translation>
    </message>
    <message>
        <source>Today’s work</source>
        <translation>Heutige Arbeit</translation>
    </message>
    <message>
        <source>! backup overdue</source>
        <translation>! Sicherung überfällig</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>Practise</source>
        <translation>Üben</translation>
    </message>
    <message>
        <source>on a practice panel</source>
        <translation>an einem Übungsteil</translation>
    </message>
    <message>
        <source>No repair is open. Take in a panel: the program asks what there is, plans, and keeps time and record.</source>
        <translation>Keine Reparatur offen. Ein Teil annehmen: Das Programm fragt, plant, misst die Zeit, führt die Akte.</translation>
    </message>
</context>
<context>
    <name>strandbench::LegendScreen</name>
    <message>
        <source>crossed hatch</source>
        <translation>gekreuzte Schraffur</translation>
    </message>
    <message>
        <source>short flecks</source>
        <translation>kurze Sprenkel</translation>
    </message>
    <message>
        <source>close slanted hatch</source>
        <translation>enge schräge Schraffur</translation>
    </message>
    <message>
        <source>as steel, with a pale skin</source>
        <translation>wie Stahl, mit heller Haut</translation>
    </message>
    <message>
        <source>pale, rows of dashes</source>
        <translation>hell, Reihen von Strichen</translation>
    </message>
    <message>
        <source>pale, rows of dots</source>
        <translation>hell, Reihen von Punkten</translation>
    </message>
    <message>
        <source>Fibre filler</source>
        <translation>Faserspachtel</translation>
    </message>
    <message>
        <source>short strokes</source>
        <translation>kurze Striche</translation>
    </message>
    <message>
        <source>The next lift</source>
        <translation>Die nächste Lage</translation>
    </message>
    <message>
        <source>fewer strokes, paler</source>
        <translation>weniger Striche, heller</translation>
    </message>
    <message>
        <source>Not laid yet</source>
        <translation>Noch nicht gelegt</translation>
    </message>
    <message>
        <source>dashed outline</source>
        <translation>gestrichelter Umriss</translation>
    </message>
    <message>
        <source>Finishing filler</source>
        <translation>Feinspachtel</translation>
    </message>
    <message>
        <source>pale, without hatch</source>
        <translation>hell, ohne Schraffur</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Härter</translation>
    </message>
    <message>
        <source>the bead on the board</source>
        <translation>der Strang auf dem Brett</translation>
    </message>
    <message>
        <source>Adhesive</source>
        <translation>Kleber</translation>
    </message>
    <message>
        <source>upright strokes</source>
        <translation>senkrechte Striche</translation>
    </message>
    <message>
        <source>Weld</source>
        <translation>Schweißnaht</translation>
    </message>
    <message>
        <source>grey, without hatch</source>
        <translation>grau, ohne Schraffur</translation>
    </message>
    <message>
        <source>Paint</source>
        <translation>Lack</translation>
    </message>
    <message>
        <source>blue, without hatch</source>
        <translation>blau, ohne Schraffur</translation>
    </message>
    <message>
        <source>Tape of a dam</source>
        <translation>Band eines Damms</translation>
    </message>
    <message>
        <source>yellow, without hatch</source>
        <translation>gelb, ohne Schraffur</translation>
    </message>
    <message>
        <source>Octagon: stop</source>
        <translation>Achteck: Halt</translation>
    </message>
    <message>
        <source>Do not go on here.</source>
        <translation>Hier nicht weitermachen.</translation>
    </message>
    <message>
        <source>Triangle: caution</source>
        <translation>Dreieck: Vorsicht</translation>
    </message>
    <message>
        <source>It can hurt, or spoil the work.</source>
        <translation>Es kann verletzen oder die Arbeit verderben.</translation>
    </message>
    <message>
        <source>Blue key: do</source>
        <translation>Blaue Taste: tun</translation>
    </message>
    <message>
        <source>The way on; it records what was done.</source>
        <translation>Der Weg weiter; er schreibt auf, was getan ist.</translation>
    </message>
    <message>
        <source>Green key: go</source>
        <translation>Grüne Taste: los</translation>
    </message>
    <message>
        <source>The way on where all that is asked is there.</source>
        <translation>Der Weg weiter, wo alles Verlangte da ist.</translation>
    </message>
    <message>
        <source>Disc with a tick: done</source>
        <translation>Scheibe mit Haken: getan</translation>
    </message>
    <message>
        <source>It was told and is in the log.</source>
        <translation>Es ist gemeldet und steht im Protokoll.</translation>
    </message>
    <message>
        <source>A tap on a section leads here</source>
        <translation>Ein Tipp auf einen Schnitt führt hierher</translation>
    </message>
    <message>
        <source>Hatches and signs</source>
        <translation>Schraffuren und Zeichen</translation>
    </message>
    <message>
        <source>Back to the job</source>
        <translation>Zurück zur Arbeit</translation>
    </message>
    <message>
        <source>dark, in squares</source>
        <translation>dunkel, kariert</translation>
    </message>
</context>
<context>
    <name>strandbench::LotKeys</name>
    <message>
        <source>Clear</source>
        <translation>Löschen</translation>
    </message>
</context>
<context>
    <name>strandbench::LotListScreen</name>
    <message>
        <source>Hardener lots of this bench</source>
        <translation>Härterchargen dieses Platzes</translation>
    </message>
    <message>
        <source>Tap a lot to see what it taught</source>
        <translation>Charge antippen: was sie lehrte</translation>
    </message>
    <message>
        <source>No batch yet whose hardener lot was told. It is told at the mix.</source>
        <translation>Noch kein Ansatz mit genannter Härtercharge. Genannt wird sie beim Mischen.</translation>
    </message>
    <message>
        <source>its sheet is not loaded</source>
        <translation>ihr Blatt ist nicht geladen</translation>
    </message>
</context>
<context>
    <name>strandbench::LotPageScreen</name>
    <message>
        <source>What this lot taught</source>
        <translation>Was diese Charge lehrte</translation>
    </message>
    <message>
        <source>To the test pat</source>
        <translation>Zum Probekreis</translation>
    </message>
    <message>
        <source>Make a test pat</source>
        <translation>Probekreis anlegen</translation>
    </message>
    <message>
        <source>The sheet of this product is not loaded.</source>
        <translation>Das Blatt dieses Produkts ist nicht geladen.</translation>
    </message>
    <message>
        <source>forgotten</source>
        <translation>vergessen</translation>
    </message>
    <message>
        <source>Nothing was mixed of this lot yet.</source>
        <translation>Von dieser Charge wurde noch nichts gemischt.</translation>
    </message>
    <message>
        <source>The next batch, most likely:</source>
        <translation>Der nächste Ansatz, am ehesten:</translation>
    </message>
    <message>
        <source>%1 of batches: %2</source>
        <translation>%1 der Ansätze: %2</translation>
    </message>
    <message>
        <source>Forgotten on %1 by %2: %3</source>
        <translation>Vergessen am %1 von %2: %3</translation>
    </message>
    <message>
        <source>nobody told</source>
        <translation>Ungenannt</translation>
    </message>
    <message>
        <source>Forget these</source>
        <translation>Diese vergessen</translation>
    </message>
    <message>
        <source>supervisor: hold 1 s</source>
        <translation>Meister: 1 s halten</translation>
    </message>
    <message>
        <source>Calibrate its bead</source>
        <translation>Strang kalibrieren</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>by an earlier version of the sheet: it does not count</source>
        <translation>nach einer früheren Fassung des Blatts: zählt nicht</translation>
    </message>
</context>
<context>
    <name>strandbench::LotScreen</name>
    <message>
        <source>Which product is in your hand?</source>
        <translation>Welches Produkt ist in der Hand?</translation>
    </message>
    <message>
        <source>Which lot of filler is open?</source>
        <translation>Welche Charge Spachtel ist offen?</translation>
    </message>
    <message>
        <source>Which lot of hardener is open?</source>
        <translation>Welche Charge Härter ist offen?</translation>
    </message>
    <message>
        <source>These are in hand</source>
        <translation>Diese sind in der Hand</translation>
    </message>
    <message>
        <source>Key in or scan the lot of filler</source>
        <translation>Charge des Spachtels eintippen oder scannen</translation>
    </message>
    <message>
        <source>Key in or scan the lot of hardener</source>
        <translation>Charge des Härters eintippen oder scannen</translation>
    </message>
    <message>
        <source>Take this lot</source>
        <translation>Diese Charge nehmen</translation>
    </message>
    <message>
        <source>Scanned: lot %1. What is it?</source>
        <translation>Gescannt: Charge %1. Was ist es?</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>its sheet is not loaded</source>
        <translation>sein Blatt ist nicht geladen</translation>
    </message>
    <message>
        <source>Lot of filler</source>
        <translation>Charge Spachtel</translation>
    </message>
    <message>
        <source>Lot of hardener</source>
        <translation>Charge Härter</translation>
    </message>
    <message>
        <source>planned with</source>
        <translation>so geplant</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>in Gebrauch</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Another lot</source>
        <translation>Andere Charge</translation>
    </message>
    <message>
        <source>Remove lot %1</source>
        <translation>Charge %1 entfernen</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>1 s halten</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Spachtel</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Härter</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>beendet</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>noch %1</translation>
    </message>
</context>
<context>
    <name>strandbench::LotTraceScreen</name>
    <message>
        <source>Looking …</source>
        <translation>Suche …</translation>
    </message>
    <message>
        <source>Recall list as files</source>
        <translation>Rückrufliste als Dateien</translation>
    </message>
    <message>
        <source>Nothing was mixed of this lot</source>
        <extracomment>%1 is &quot;3 batches&quot;</extracomment>
        <translation>Aus dieser Charge wurde nichts gemischt</translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n repair(s)</source>
        <translation>
            <numerusform>%1 in %n Reparatur</numerusform>
            <numerusform>%1 in %n Reparaturen</numerusform>
        </translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>The recall list is being written …</source>
        <translation>Die Rückrufliste wird geschrieben …</translation>
    </message>
    <message>
        <source>Cancelled: nothing was written.</source>
        <translation>Abgebrochen: Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>Written as CSV and PDF: %1</source>
        <extracomment>%1 is a file’s name without its ending</extracomment>
        <translation>Als CSV und PDF geschrieben: %1</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>Nicht geschrieben: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::MarkScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Übungsteil</translation>
    </message>
    <message>
        <source>Back to the marks</source>
        <translation>Zurück zur Auswertung</translation>
    </message>
    <message>
        <source>You: %1</source>
        <extracomment>what the apprentice decided</extracomment>
        <translation>Antwort: %1</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation>Richtig: %1</translation>
    </message>
    <message>
        <source>It was not reached.</source>
        <translation>Nicht erreicht.</translation>
    </message>
    <message>
        <source>hottest</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>face</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>cured</source>
        <translation>gehärtet</translation>
    </message>
    <message>
        <source>gel</source>
        <translation>Gel</translation>
    </message>
    <message>
        <source>sands</source>
        <translation>schleifbar</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
</context>
<context>
    <name>strandbench::MarksScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Übungsteil</translation>
    </message>
    <message>
        <source>Working out what it comes to …</source>
        <translation>Es wird gerechnet, was daraus wird …</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Replay</source>
        <translation>Ablauf</translation>
    </message>
    <message>
        <source>beside the model answer</source>
        <translation>neben der Musterlösung</translation>
    </message>
    <message>
        <source>right</source>
        <translation>richtig</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>nicht erreicht</translation>
    </message>
</context>
<context>
    <name>strandbench::MixByEyeScreen</name>
    <message>
        <source>Lay filler and hardener on the board</source>
        <translation>Spachtel und Härter aufs Brett legen</translation>
    </message>
    <message>
        <source>Hardener in — start</source>
        <translation>Härter drin: Start</translation>
    </message>
    <message>
        <source>Puddle and bead at true size</source>
        <translation>Kreis und Strang in wahrer Größe</translation>
    </message>
    <message>
        <source>Puddle smaller</source>
        <translation>Kreis kleiner</translation>
    </message>
    <message>
        <source>Puddle larger</source>
        <translation>Kreis größer</translation>
    </message>
    <message>
        <source>Bead shorter</source>
        <translation>Strang kürzer</translation>
    </message>
    <message>
        <source>Bead longer</source>
        <translation>Strang länger</translation>
    </message>
    <message>
        <source>True size</source>
        <translation>Wahre Größe</translation>
    </message>
    <message>
        <source>not true size</source>
        <translation>nicht wahre Größe</translation>
    </message>
</context>
<context>
    <name>strandbench::MixScreen</name>
    <message>
        <source>Knead both, then weigh these two</source>
        <translation>Beide kneten, dann diese zwei wiegen</translation>
    </message>
    <message>
        <source>Knead both, then lay this puddle and bead</source>
        <translation>Beide kneten, dann Kreis und Strang legen</translation>
    </message>
    <message>
        <source>Hardener in: start</source>
        <translation>Härter drin: Start</translation>
    </message>
    <message>
        <source>Puddle and bead, drawn to size</source>
        <translation>Kreis und Strang, in wahrer Größe</translation>
    </message>
    <message>
        <source>Hold the board beside the glass. Straight bead, puddle %1 high.</source>
        <translation>Brett neben den Bildschirm halten. Gerader Strang, Kreis %1 hoch.</translation>
    </message>
    <message>
        <source>Weigh: filler + hardener</source>
        <translation>Spachtel + Härter</translation>
    </message>
    <message>
        <source>Under %1: bead too coarse</source>
        <translation>Unter %1: Strang zu grob</translation>
    </message>
    <message>
        <source>Puddle across</source>
        <translation>Kreis Ø</translation>
    </message>
    <message>
        <source>Hardener bead (%1)</source>
        <translation>Strang (%1)</translation>
    </message>
    <message>
        <source>or weigh</source>
        <translation>oder wiegen</translation>
    </message>
    <message>
        <source>board sets in about %1</source>
        <translation>Brett fest in etwa %1</translation>
    </message>
    <message>
        <source>More or less hardener?</source>
        <translation>Mehr oder weniger Härter?</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>%1 · lot not told: tap</source>
        <translation>%1 · Charge fehlt: tippen</translation>
    </message>
    <message>
        <source>%1 · lot %2 · hardener %3</source>
        <translation>%1 · Charge %2 · Härter %3</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>not the product planned with</source>
        <translation>nicht das geplante Produkt</translation>
    </message>
    <message>
        <source>Hold it back</source>
        <translation>Zurückhalten</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Neu ablesen</translation>
    </message>
    <message>
        <source>Plan again as read</source>
        <translation>Neu planen wie abgelesen</translation>
    </message>
    <message>
        <source>Hardener in anyway</source>
        <translation>Härter trotzdem drin</translation>
    </message>
    <message>
        <source>go to job %1</source>
        <translation>zu Auftrag %1</translation>
    </message>
    <message>
        <source>Hardener bead</source>
        <translation>Härterstrang</translation>
    </message>
    <message>
        <source>%1 · lot? · hardener %2</source>
        <extracomment>%1 is a product, %2 a lot of hardener; the filler&apos;s lot is asked for: a key of 29 mm</extracomment>
        <translation>%1 · Charge? · Härter %2</translation>
    </message>
    <message>
        <source>Scale: %1</source>
        <translation>Waage: %1</translation>
    </message>
    <message>
        <source>steady: take as filler</source>
        <translation>ruhig: als Spachtel</translation>
    </message>
    <message>
        <source>not steady yet</source>
        <translation>noch nicht ruhig</translation>
    </message>
    <message>
        <source>Weighed?</source>
        <translation>Gewogen?</translation>
    </message>
    <message>
        <source>nothing from the scale</source>
        <translation>nichts von der Waage</translation>
    </message>
</context>
<context>
    <name>strandbench::MixesScreen</name>
    <message>
        <source>Every mix that runs: the most urgent first</source>
        <translation>Alle laufenden Mischungen: dringendste zuerst</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message numerus="yes">
        <source>%n in all</source>
        <translation>
            <numerusform>%n insgesamt</numerusform>
            <numerusform>%n insgesamt</numerusform>
        </translation>
    </message>
    <message>
        <source>No mix runs</source>
        <translation>Keine Mischung</translation>
    </message>
</context>
<context>
    <name>strandbench::PagedKeys</name>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>strandbench::PagedRows</name>
    <message>
        <source>Before</source>
        <translation>Vorige</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of a list: &quot;1 of 3&quot;</extracomment>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>strandbench::PanelLookScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Übungsteil</translation>
    </message>
    <message>
        <source>Look at it, and try what you need</source>
        <translation>Ansehen und prüfen, was nötig ist</translation>
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
        <translation>US Letter</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>The sheet could not be written.</source>
        <translation>Das Blatt konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <extracomment>%1 is the path of a file</extracomment>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>The file beside the sheet could not be written.</source>
        <translation>Die Datei neben dem Blatt konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>Being written …</source>
        <translation>Wird geschrieben …</translation>
    </message>
    <message>
        <source>Cancelled: nothing was written.</source>
        <translation>Abgebrochen: Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>No printer is set up on this machine.</source>
        <translation>An diesem Rechner ist kein Drucker eingerichtet.</translation>
    </message>
    <message>
        <source>Write the sheet to a stick, and print it elsewhere.</source>
        <translation>Das Blatt auf einen Stick schreiben und anderswo drucken.</translation>
    </message>
    <message>
        <source>Being printed …</source>
        <translation>Wird gedruckt …</translation>
    </message>
    <message>
        <source>Cancelled: nothing was printed.</source>
        <translation>Abgebrochen: Es wurde nichts gedruckt.</translation>
    </message>
    <message>
        <source>The printer does not take the sheet.</source>
        <translation>Der Drucker nimmt das Blatt nicht an.</translation>
    </message>
    <message>
        <source>Look at the printer, and try again.</source>
        <translation>Nach dem Drucker sehen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Given to the printer</source>
        <extracomment>%1 is the name of a printer</extracomment>
        <translation>An den Drucker gegeben</translation>
    </message>
    <message>
        <source>Given to the printer: %1</source>
        <translation>An den Drucker gegeben: %1</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>strandbench::PatScreen</name>
    <message>
        <source>Watch the pat: tap when it pulls and will not smear</source>
        <translation>Probekreis: tippen, wenn er anzieht, nicht schmiert</translation>
    </message>
    <message>
        <source>Knead both, then lay this puddle and bead</source>
        <translation>Beide kneten, dann Kreis und Strang legen</translation>
    </message>
    <message>
        <source>Puddle and bead, drawn to size</source>
        <translation>Kreis und Strang, in wahrer Größe</translation>
    </message>
    <message>
        <source>A pat on the board tells how fast this lot gels before a panel hangs on it.</source>
        <translation>Ein Probekreis zeigt, wie schnell diese Charge geliert, bevor ein Teil daran hängt.</translation>
    </message>
    <message>
        <source>Reckoned for air of %1, read %2 ago.</source>
        <translation>Gerechnet für Luft von %1, abgelesen vor %2.</translation>
    </message>
    <message>
        <source>No air was read yet: read it at a repair first.</source>
        <translation>Luft noch nicht abgelesen: erst bei einer Reparatur ablesen.</translation>
    </message>
    <message>
        <source>Hardener in: start</source>
        <translation>Härter drin: Start</translation>
    </message>
    <message>
        <source>Expected between %1 and %2; by the sheet after %3.</source>
        <translation>Erwartet zwischen %1 und %2; nach Blatt nach %3.</translation>
    </message>
    <message>
        <source>It was thrown away: mix a new one</source>
        <translation>Weggeworfen: neu mischen</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>1 s halten</translation>
    </message>
    <message>
        <source>clock runs on</source>
        <translation>Uhr läuft weiter</translation>
    </message>
    <message>
        <source>It has gelled</source>
        <translation>Es ist geliert</translation>
    </message>
    <message>
        <source>since hardener in</source>
        <translation>seit Härter drin</translation>
    </message>
</context>
<context>
    <name>strandbench::PhotoPickScreen</name>
    <message>
        <source>Choose the photo: %1</source>
        <translation>Foto wählen: %1</translation>
    </message>
    <message>
        <source>Newer</source>
        <extracomment>short: keys of 20 mm, to the pictures taken later and earlier</extracomment>
        <translation>Neuer</translation>
    </message>
    <message>
        <source>Older</source>
        <translation>Älter</translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation>Anderer Ordner</translation>
    </message>
    <message>
        <source>Picture of %1, %2</source>
        <extracomment>%1 is when, %2 the file&apos;s name</extracomment>
        <translation>Bild von %1, %2</translation>
    </message>
    <message>
        <source>No pictures in this folder yet. New ones show by themselves.</source>
        <translation>Noch keine Bilder in diesem Ordner. Neue erscheinen von selbst.</translation>
    </message>
    <message>
        <source>This folder cannot be read. Choose another one.</source>
        <translation>Dieser Ordner ist nicht lesbar. Einen anderen wählen.</translation>
    </message>
    <message>
        <source>%1 cannot be read. %2</source>
        <translation>%1 ist nicht lesbar. %2</translation>
    </message>
    <message>
        <source>%1 is larger than %2 MB.</source>
        <translation>%1 ist größer als %2 MB.</translation>
    </message>
    <message>
        <source>%1 is a %2 file. Only JPEG and PNG are kept.</source>
        <translation>%1 ist eine %2-Datei. Nur JPEG und PNG werden behalten.</translation>
    </message>
    <message>
        <source>%1 is no whole picture. Take it again, or wait until it is written.</source>
        <translation>%1 ist kein ganzes Bild. Neu aufnehmen oder warten, bis es geschrieben ist.</translation>
    </message>
    <message>
        <source>no picture to be seen</source>
        <translation>kein Bild zu sehen</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>wird gelesen</translation>
    </message>
    <message>
        <source>Camera</source>
        <extracomment>short: a key of 20 mm, to the live picture of a camera</extracomment>
        <translation>Kamera</translation>
    </message>
</context>
<context>
    <name>strandbench::PickScreen</name>
    <message>
        <source>number %1</source>
        <translation>Nummer %1</translation>
    </message>
</context>
<context>
    <name>strandbench::PinScreen</name>
    <message numerus="yes">
        <source>%n digit(s)</source>
        <translation>
            <numerusform>%n Ziffer</numerusform>
            <numerusform>%n Ziffern</numerusform>
        </translation>
    </message>
    <message>
        <source>The PIN is looked at</source>
        <translation>Die PIN wird geprüft</translation>
    </message>
    <message>
        <source>No PIN is set on this bench.</source>
        <translation>An diesem Platz ist keine PIN gesetzt.</translation>
    </message>
    <message>
        <source>Set it: bench set-up, people.</source>
        <translation>Setzen: „Platz einrichten“, Leute.</translation>
    </message>
    <message>
        <source>The try cannot be counted, so it was not looked at.</source>
        <translation>Der Versuch lässt sich nicht zählen, also wurde er nicht geprüft.</translation>
    </message>
    <message>
        <source>Check the disk and the PIN’s file.</source>
        <translation>Platte und Datei der PIN prüfen.</translation>
    </message>
    <message>
        <source>The wait was not over: it was not looked at.</source>
        <translation>Die Wartezeit war nicht vorbei: nicht geprüft.</translation>
    </message>
    <message>
        <source>Key it in again.</source>
        <translation>Noch einmal eintippen.</translation>
    </message>
    <message>
        <source>That is not the PIN.</source>
        <translation>Das ist nicht die PIN.</translation>
    </message>
    <message>
        <source>The try is in the log.</source>
        <translation>Der Versuch steht im Protokoll.</translation>
    </message>
    <message>
        <source>Wrong PINs were given. The next in %1.</source>
        <translation>Falsche PINs wurden eingegeben. Die nächste in %1.</translation>
    </message>
</context>
<context>
    <name>strandbench::PlanScreen</name>
    <message>
        <source>%1, %2: fill both faces</source>
        <translation>%1, %2: beide Seiten spachteln</translation>
    </message>
    <message>
        <source>%1, %2: fill it</source>
        <translation>%1, %2: spachteln</translation>
    </message>
    <message>
        <source>To the present step</source>
        <translation>Zum jetzigen Schritt</translation>
    </message>
    <message>
        <source>Right: prepare it</source>
        <translation>Stimmt: vorbereiten</translation>
    </message>
    <message>
        <source>Section of this repair, to scale</source>
        <translation>Schnitt dieser Reparatur, maßstäblich</translation>
    </message>
    <message>
        <source>Mix of fibre and finishing filler</source>
        <translation>Mischung: Faser- und Feinspachtel</translation>
    </message>
    <message>
        <source>%1 + %2 in %3</source>
        <translation>%1 + %2 in %3</translation>
    </message>
    <message>
        <source>Ready for primer</source>
        <translation>Bereit zum Grundieren</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>ca. %1</translation>
    </message>
    <message>
        <source>why this one?</source>
        <translation>warum dieser?</translation>
    </message>
    <message>
        <source>Hottest as it cures %1, limit %2</source>
        <translation>Spitze %1, Grenze %2</translation>
    </message>
    <message>
        <source>Answers</source>
        <translation>Antworten</translation>
    </message>
    <message>
        <source>look, or change one</source>
        <translation>ansehen oder ändern</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Bestand</translation>
    </message>
    <message numerus="yes">
        <source>! %n to mind</source>
        <translation>
            <numerusform>! %n beachten</numerusform>
            <numerusform>! %n beachten</numerusform>
        </translation>
    </message>
    <message>
        <source>enough</source>
        <translation>genug</translation>
    </message>
</context>
<context>
    <name>strandbench::PracticeClockScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Übungsteil</translation>
    </message>
    <message>
        <source>Press it in, build it up, clear the edges</source>
        <translation>Eindrücken, aufbauen, Ränder säubern</translation>
    </message>
    <message>
        <source>Hands off until it sands</source>
        <translation>Hände weg, bis es schleifbar ist</translation>
    </message>
    <message>
        <source>Edges are clear</source>
        <translation>Ränder sind sauber</translation>
    </message>
    <message>
        <source>Sand it now</source>
        <translation>Jetzt schleifen</translation>
    </message>
    <message>
        <source>since the hardener went in</source>
        <translation>seit Härter drin</translation>
    </message>
    <message>
        <source>faster, or as in the shop</source>
        <translation>schneller oder in echter Zeit</translation>
    </message>
    <message>
        <source>Nail and paper</source>
        <translation>Nagel und Papier</translation>
    </message>
    <message>
        <source>try whether it sands</source>
        <translation>prüfen, ob schleifbar</translation>
    </message>
    <message>
        <source>Another batch</source>
        <translation>Noch ein Ansatz</translation>
    </message>
    <message>
        <source>for the same lift</source>
        <translation>für dieselbe Lage</translation>
    </message>
    <message>
        <source>Clock: %1 times</source>
        <extracomment>how many times as fast as the shop&apos;s clock</extracomment>
        <translation>Uhr: %1-fach</translation>
    </message>
    <message>
        <source>It spreads easily.</source>
        <translation>Trägt sich leicht auf.</translation>
    </message>
    <message>
        <source>It drags behind the spreader.</source>
        <translation>Es zieht hinter der Klinge nach.</translation>
    </message>
    <message>
        <source>What is left on the board has set: it tears.</source>
        <translation>Der Rest auf dem Brett ist fest: er reißt.</translation>
    </message>
    <message>
        <source>Try again in a moment.</source>
        <translation>Gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>It is wet: it smears.</source>
        <translation>Es ist nass: es schmiert.</translation>
    </message>
    <message>
        <source>The nail leaves a mark, the paper clogs.</source>
        <translation>Der Nagel macht Spuren, Papier setzt sich zu.</translation>
    </message>
    <message>
        <source>The nail leaves no mark, the paper powders it.</source>
        <translation>Der Nagel hinterlässt nichts, das Papier stäubt.</translation>
    </message>
    <message>
        <source>Hard as stone: the paper hardly bites.</source>
        <translation>Steinhart: das Papier greift kaum.</translation>
    </message>
</context>
<context>
    <name>strandbench::PracticeFlow</name>
    <message>
        <source>This line of the practice record is left out; it stays in its file.</source>
        <translation>Diese Zeile des Übungsprotokolls fällt weg; sie bleibt in ihrer Datei.</translation>
    </message>
    <message>
        <source>To the question</source>
        <translation>Zur Frage</translation>
    </message>
    <message>
        <source>The practice record was not written: %1</source>
        <translation>Übungsprotokoll nicht geschrieben: %1</translation>
    </message>
    <message>
        <source>The marks hold until the program is closed.</source>
        <translation>Die Auswertung gilt, bis das Programm schließt.</translation>
    </message>
</context>
<context>
    <name>strandbench::ProductEditScreen</name>
    <message>
        <source>Product sheets</source>
        <translation>Produktblätter</translation>
    </message>
    <message>
        <source>a new sheet</source>
        <translation>ein neues Blatt</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation>passt nicht</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>the model’s own</source>
        <translation>des Modells</translation>
    </message>
    <message>
        <source>What it comes to</source>
        <translation>Was es ergibt</translation>
    </message>
    <message>
        <source>next page</source>
        <translation>nächste Seite</translation>
    </message>
    <message>
        <source>What is assumed is common for such fillers, without a source. Put in what your data sheet says.</source>
        <translation>Angenommenes ist bei solchem Spachtel üblich, ohne Quelle. Eintragen, was das Datenblatt sagt.</translation>
    </message>
    <message>
        <source>What kind of filler is it?</source>
        <translation>Welche Art Spachtel?</translation>
    </message>
    <message>
        <source>Still missing or wrong: %1</source>
        <translation>Fehlt noch oder ist falsch: %1</translation>
    </message>
    <message>
        <source>What the engine makes of this sheet</source>
        <translation>Was dieses Blatt ergibt</translation>
    </message>
    <message>
        <source>Keep this sheet</source>
        <translation>Blatt behalten</translation>
    </message>
    <message>
        <source>asks for the supervisor’s PIN</source>
        <translation>braucht die PIN des Meisters</translation>
    </message>
    <message>
        <source>Allowed: %1 to %2</source>
        <extracomment>a range: &quot;0.3 g/ml to 4 g/ml&quot;</extracomment>
        <translation>Erlaubt: %1 bis %2</translation>
    </message>
    <message>
        <source>below 0: −</source>
        <translation>unter 0: −</translation>
    </message>
    <message>
        <source>Take it, or leave it empty</source>
        <translation>Nehmen oder leer lassen</translation>
    </message>
    <message>
        <source>Take this figure</source>
        <translation>Zahl übernehmen</translation>
    </message>
    <message>
        <source>Write the product’s name</source>
        <translation>Name des Produkts eintippen</translation>
    </message>
    <message>
        <source>Take this name</source>
        <translation>Namen übernehmen</translation>
    </message>
</context>
<context>
    <name>strandbench::ProductOutlook</name>
    <message>
        <source>One moment: the engine works out what this sheet means …</source>
        <translation>Einen Moment: Es wird gerechnet, was dieses Blatt bedeutet …</translation>
    </message>
    <message>
        <source>at</source>
        <translation>bei</translation>
    </message>
    <message>
        <source>gels after</source>
        <translation>geliert nach</translation>
    </message>
    <message>
        <source>sands after</source>
        <translation>schleifbar nach</translation>
    </message>
    <message>
        <source>greatest lift</source>
        <translation>dickste Lage</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <extracomment>a lift: &quot;20 mm or more&quot;</extracomment>
        <translation>%1 oder mehr</translation>
    </message>
    <message>
        <source>Reckoned on the sheet’s own test pieces, its peak below %1. The sheet allows %2 in one go; the lower of the two holds.</source>
        <translation>Gerechnet an den Prüfstücken des Blatts, Spitze unter %1. Das Blatt erlaubt %2 auf einmal; das Kleinere gilt.</translation>
    </message>
</context>
<context>
    <name>strandbench::ProductPageScreen</name>
    <message>
        <source>Product sheets</source>
        <translation>Produktblätter</translation>
    </message>
    <message>
        <source>What the engine makes of this sheet</source>
        <translation>Was dieses Blatt ergibt</translation>
    </message>
    <message>
        <source>Change this sheet</source>
        <translation>Blatt ändern</translation>
    </message>
    <message>
        <source>%1 min (%2 to %3)</source>
        <extracomment>a stated time with its range: &quot;5 min (4 to 6)&quot;</extracomment>
        <translation>%1 min (%2 bis %3)</translation>
    </message>
    <message>
        <source>It states, at %1: working time %2, sands after %3.</source>
        <translation>Es sagt, bei %1: Topfzeit %2, schleifbar nach %3.</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <extracomment>a version of a sheet: %1 when, %2 who</extracomment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>nobody told</source>
        <translation>Ungenannt</translation>
    </message>
    <message numerus="yes">
        <source>and %n earlier</source>
        <translation>
            <numerusform>und %n frühere</numerusform>
            <numerusform>und %n frühere</numerusform>
        </translation>
    </message>
    <message>
        <source>Demo sheet: invented values. Type in the sheet of the tub in your hand.</source>
        <translation>Demoblatt: erfundene Werte. Das Blatt der Dose in der Hand eintippen.</translation>
    </message>
    <message>
        <source>Versions:</source>
        <translation>Fassungen:</translation>
    </message>
    <message>
        <source>Laid aside. Versions:</source>
        <translation>Abgelegt. Fassungen:</translation>
    </message>
    <message>
        <source>Write to a folder</source>
        <translation>In Ordner schreiben</translation>
    </message>
    <message>
        <source>Lay aside</source>
        <translation>Ablegen</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>1 s halten</translation>
    </message>
</context>
<context>
    <name>strandbench::QuickCardScreen</name>
    <message>
        <source>Choose where the quick card goes</source>
        <translation>Wohin mit der Kurzkarte?</translation>
    </message>
</context>
<context>
    <name>strandbench::ReadingButton</name>
    <message>
        <source>Air: %1</source>
        <translation>Luft: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::RecordScreen</name>
    <message>
        <source>See what happened</source>
        <translation>Was geschehen ist</translation>
    </message>
    <message>
        <source>Job sheet as PDF</source>
        <translation>Auftragsblatt als PDF</translation>
    </message>
    <message>
        <source>This record cannot be read.</source>
        <translation>Diese Akte ist nicht lesbar.</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>Meister</translation>
    </message>
    <message>
        <source>Timeline</source>
        <translation>Zeitverlauf</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Chargen</translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation>Abgenommen</translation>
    </message>
    <message>
        <source>Returned</source>
        <translation>Zurückgegeben</translation>
    </message>
    <message>
        <source>Sign off, return</source>
        <translation>Abnehmen, zurück</translation>
    </message>
</context>
<context>
    <name>strandbench::RefusalScreen</name>
    <message>
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>Assess again</source>
        <translation>Neu beurteilen</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>1 s halten</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weiterer</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Also: %1</source>
        <translation>Auch: %1</translation>
    </message>
    <message>
        <source>What to do instead</source>
        <translation>Was stattdessen tun</translation>
    </message>
    <message>
        <source>Override</source>
        <translation>Übergehen</translation>
    </message>
    <message>
        <source>supervisor: hold 1 s</source>
        <translation>Meister: 1 s halten</translation>
    </message>
    <message>
        <source>There is nothing to plan here, whoever decides.</source>
        <translation>Hier gibt es nichts zu planen, wer auch entscheidet.</translation>
    </message>
</context>
<context>
    <name>strandbench::ReorderScreen</name>
    <message>
        <source>Stock of filler and hardener</source>
        <translation>Bestand an Spachtel und Härter</translation>
    </message>
    <message>
        <source>Reorder list: tap a product to set its level</source>
        <translation>Bestellliste: Produkt antippen, Schwelle setzen</translation>
    </message>
    <message>
        <source>Back to the stock</source>
        <translation>Zurück zum Bestand</translation>
    </message>
    <message>
        <source>reorder: %1 left, level %2</source>
        <extracomment>%1 and %2 are masses</extracomment>
        <translation>nachbestellen: noch %1, Schwelle %2</translation>
    </message>
    <message>
        <source>%1 left, level %2</source>
        <translation>noch %1, Schwelle %2</translation>
    </message>
    <message>
        <source>%1 left, never reordered</source>
        <translation>noch %1, nie nachbestellt</translation>
    </message>
</context>
<context>
    <name>strandbench::RepairLotsScreen</name>
    <message>
        <source>Lots that went into it</source>
        <translation>Chargen darin</translation>
    </message>
    <message>
        <source>No lot was told</source>
        <translation>Keine Charge angegeben</translation>
    </message>
    <message>
        <source>every repair of this lot</source>
        <translation>alle Reparaturen dieser Charge</translation>
    </message>
</context>
<context>
    <name>strandbench::RepairsScreen</name>
    <message>
        <source>Stop reading</source>
        <translation>Lesen abbrechen</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>up to today; tap: %n day(s)</source>
        <translation>
            <numerusform>bis heute; tippen: %n Tag</numerusform>
            <numerusform>bis heute; tippen: %n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>Repairs worked on from %1 to %2</source>
        <extracomment>%1 and %2 are days</extracomment>
        <translation>Reparaturen in Arbeit vom %1 bis %2</translation>
    </message>
    <message numerus="yes">
        <source>Reading the records: %1 of %n repair(s)</source>
        <translation>
            <numerusform>Akten werden gelesen: %1 von %n Reparatur</numerusform>
            <numerusform>Akten werden gelesen: %1 von %n Reparaturen</numerusform>
        </translation>
    </message>
    <message>
        <source>Reading the records …</source>
        <translation>Akten werden gelesen …</translation>
    </message>
</context>
<context>
    <name>strandbench::ReplanScreen</name>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>An answer changed: this is the plan now</source>
        <translation>Eine Antwort ist anders: so ist der Plan jetzt</translation>
    </message>
    <message>
        <source>Right: go on with it</source>
        <translation>Richtig: damit weiter</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <extracomment>what it was, and what it is now</extracomment>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>No figure changes.</source>
        <translation>Keine Zahl ändert sich.</translation>
    </message>
    <message>
        <source>Preparing to do, or to do again</source>
        <translation>Vorbereitung zu tun oder neu zu tun</translation>
    </message>
    <message>
        <source>No longer to do</source>
        <translation>Nicht mehr zu tun</translation>
    </message>
    <message>
        <source>Stays as it is laid</source>
        <translation>Bleibt wie aufgetragen</translation>
    </message>
    <message>
        <source>Why this plan</source>
        <translation>Warum dieser Plan</translation>
    </message>
    <message>
        <source>What was answered</source>
        <translation>Die Antworten</translation>
    </message>
</context>
<context>
    <name>strandbench::ReplayScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Übungsteil</translation>
    </message>
    <message>
        <source>What you did, below the model answer</source>
        <translation>Das Eigene unter der Musterlösung</translation>
    </message>
    <message>
        <source>Back to the marks</source>
        <translation>Zurück zur Auswertung</translation>
    </message>
    <message>
        <source>model</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>you</source>
        <translation>selbst</translation>
    </message>
    <message>
        <source>yours</source>
        <translation>eigene</translation>
    </message>
    <message>
        <source>edges clear</source>
        <translation>Ränder sauber</translation>
    </message>
    <message>
        <source>gelled</source>
        <translation>geliert</translation>
    </message>
    <message>
        <source>The model answer stops here: nothing is mixed.</source>
        <translation>Die Musterlösung hält hier an: nichts wird gemischt.</translation>
    </message>
    <message>
        <source>You stopped here: nothing was mixed.</source>
        <translation>Hier angehalten: nichts wurde gemischt.</translation>
    </message>
    <message>
        <source>From the first step on. Edges and gel of your batches are marked below.</source>
        <translation>Vom ersten Schritt an. Ränder und Gel der eigenen Ansätze sind unten markiert.</translation>
    </message>
</context>
<context>
    <name>strandbench::Ribbon</name>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>No sound</source>
        <translation>Kein Ton</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpAssumptionScreen</name>
    <message>
        <source>Bench set-up</source>
        <translation>Platz einrichten</translation>
    </message>
    <message>
        <source>tap to key it in</source>
        <translation>zum Eintippen antippen</translation>
    </message>
    <message>
        <source>A published figure; change it for another material.</source>
        <translation>Veröffentlichter Wert; für anderen Werkstoff ändern.</translation>
    </message>
    <message>
        <source>Ours: no source.</source>
        <translation>Eigene: ohne Quelle.</translation>
    </message>
    <message>
        <source>Allowed: %1. %2 New plans and clocks go by it; what runs keeps its times.</source>
        <translation>Erlaubt: %1. %2 Neue Pläne und Uhren gehen danach; was läuft, behält seine Zeiten.</translation>
    </message>
    <message>
        <source>Back to default</source>
        <translation>Zurück zum Standard</translation>
    </message>
    <message>
        <source>Key in the figure</source>
        <translation>Zahl eintippen</translation>
    </message>
    <message>
        <source>Change the figure, or put the default back</source>
        <translation>Zahl ändern oder Standard zurückholen</translation>
    </message>
    <message>
        <source>Take this figure</source>
        <translation>Zahl übernehmen</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>%1’s own: %2</source>
        <extracomment>%1 is a person, %2 a rate: &quot;Mara’s own: 38 g/min&quot;</extracomment>
        <translation>Eigener Wert %1: %2</translation>
    </message>
    <message>
        <source>the last %1 batches: %2 to %3</source>
        <translation>letzte %1 Ansätze: %2 bis %3</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpAssumptionsScreen</name>
    <message>
        <source>ours: no source; published: from a table</source>
        <translation>eigene: ohne Quelle; veröffentlicht: Tabelle</translation>
    </message>
    <message>
        <source>Tap an assumption to change it</source>
        <translation>Zum Ändern eine Annahme antippen</translation>
    </message>
    <message>
        <source>%1, was %2</source>
        <extracomment>a row of the assumptions that was changed: &quot;60 s, was 45 s&quot;</extracomment>
        <translation>%1, war %2</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>eigene</translation>
    </message>
    <message>
        <source>on each sheet</source>
        <translation>auf jedem Blatt</translation>
    </message>
    <message>
        <source>in each step</source>
        <translation>in jedem Schritt</translation>
    </message>
    <message>
        <source>Hardener for a length of bead: the nozzle’s</source>
        <translation>Härter je Stranglänge: Sache der Düse</translation>
    </message>
    <message>
        <source>Hands-on times</source>
        <translation>Handzeiten</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpBenchScreen</name>
    <message>
        <source>Set up the bench</source>
        <translation>Platz einrichten</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>Answers for</source>
        <translation>Antworten für</translation>
    </message>
    <message>
        <source>Right hand</source>
        <translation>Rechte Hand</translation>
    </message>
    <message>
        <source>Left hand</source>
        <translation>Linke Hand</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>Voll</translation>
    </message>
    <message>
        <source>In steps</source>
        <translation>In Stufen</translation>
    </message>
    <message>
        <source>Foot switch</source>
        <translation>Fußschalter</translation>
    </message>
    <message>
        <source>Any key</source>
        <translation>Jede Taste</translation>
    </message>
    <message>
        <source>One key</source>
        <translation>Eine Taste</translation>
    </message>
    <message>
        <source>Press now</source>
        <translation>Drücken</translation>
    </message>
    <message>
        <source>Press the foot switch now</source>
        <translation>Jetzt den Fußschalter drücken</translation>
    </message>
    <message>
        <source>This key has no name of its own.</source>
        <translation>Diese Taste hat keinen eigenen Namen.</translation>
    </message>
    <message>
        <source>Set the foot switch to send another one.</source>
        <translation>Den Fußschalter auf eine andere einstellen.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpInstrumentBase</name>
    <message>
        <source>Scale</source>
        <translation>Waage</translation>
    </message>
    <message>
        <source>Thermo-hygrometer</source>
        <translation>Thermo-Hygrometer</translation>
    </message>
    <message>
        <source>Bench set-up</source>
        <translation>Platz einrichten</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpInstrumentTextScreen</name>
    <message>
        <source>Write the line with names in braces</source>
        <translation>Zeile schreiben, Namen in { }</translation>
    </message>
    <message>
        <source>Write the path of the port</source>
        <translation>Pfad des Anschlusses schreiben</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>A path begins with a slash.</source>
        <translation>Ein Pfad beginnt mit einem Schrägstrich.</translation>
    </message>
    <message>
        <source>Such as /dev/ttyUSB0.</source>
        <translation>Etwa /dev/ttyUSB0.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpInstrumentsScreen</name>
    <message>
        <source>no line has come yet</source>
        <translation>noch keine Zeile gekommen</translation>
    </message>
    <message>
        <source>reads %1</source>
        <translation>liest %1</translation>
    </message>
    <message>
        <source>does not fit the line</source>
        <translation>passt nicht zur Zeile</translation>
    </message>
    <message>
        <source>Connect the scale</source>
        <translation>Waage anschließen</translation>
    </message>
    <message>
        <source>Connect the thermo-hygrometer</source>
        <translation>Thermo-Hygrometer anschließen</translation>
    </message>
    <message>
        <source>none: all is keyed in</source>
        <translation>keiner: alles wird eingetippt</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <translation>noch nicht gewählt</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Rate</translation>
    </message>
    <message>
        <source>Pattern of a line</source>
        <translation>Zeilenmuster</translation>
    </message>
    <message>
        <source>Calibrate the bead</source>
        <translation>Strang kalibrieren</translation>
    </message>
    <message>
        <source>No line has come yet.</source>
        <translation>Noch ist keine Zeile gekommen.</translation>
    </message>
    <message>
        <source>Last line: %1</source>
        <translation>Letzte Zeile: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpNameScreen</name>
    <message>
        <source>Bench set-up</source>
        <translation>Platz einrichten</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>Write the new name</source>
        <translation>Neuen Namen schreiben</translation>
    </message>
    <message>
        <source>Put it on the list</source>
        <translation>Auf die Liste</translation>
    </message>
    <message>
        <source>The name is empty.</source>
        <translation>Der Name ist leer.</translation>
    </message>
    <message>
        <source>Write 1 to %1 characters.</source>
        <translation>1 bis %1 Zeichen schreiben.</translation>
    </message>
    <message>
        <source>%1 is on the list already.</source>
        <translation>%1 steht schon auf der Liste.</translation>
    </message>
    <message>
        <source>Write it so that the two can be told apart.</source>
        <translation>So schreiben, dass man beide unterscheidet.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpPatternScreen</name>
    <message>
        <source>Which pattern fits its lines?</source>
        <translation>Welches Muster passt zu seinen Zeilen?</translation>
    </message>
    <message>
        <source>Write one, or change it</source>
        <translation>Eines schreiben oder ändern</translation>
    </message>
    <message>
        <source>No line has come yet.</source>
        <translation>Noch ist keine Zeile gekommen.</translation>
    </message>
    <message>
        <source>Last line: %1</source>
        <translation>Letzte Zeile: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpPeopleScreen</name>
    <message>
        <source>Who works here?</source>
        <translation>Wer arbeitet hier?</translation>
    </message>
    <message>
        <source>at the bench</source>
        <translation>am Platz</translation>
    </message>
    <message>
        <source>Add a name</source>
        <translation>Name dazu</translation>
    </message>
    <message>
        <source>%1 names are the most</source>
        <translation>höchstens %1 Namen</translation>
    </message>
    <message>
        <source>Take a name off the list</source>
        <translation>Einen Namen streichen</translation>
    </message>
    <message>
        <source>Take %1 off the list</source>
        <translation>%1 von der Liste streichen</translation>
    </message>
    <message>
        <source>tap a name first</source>
        <translation>erst Namen antippen</translation>
    </message>
    <message>
        <source>the last name stays</source>
        <translation>der letzte Name bleibt</translation>
    </message>
    <message>
        <source>hold 1 s; what is logged keeps the name</source>
        <translation>1 s halten; im Protokoll bleibt der Name</translation>
    </message>
    <message>
        <source>Supervisor’s PIN</source>
        <translation>PIN des Meisters</translation>
    </message>
    <message>
        <source>set: change it</source>
        <translation>gesetzt: ändern</translation>
    </message>
    <message>
        <source>not set yet</source>
        <translation>noch nicht gesetzt</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpPortScreen</name>
    <message>
        <source>Where is it plugged in?</source>
        <translation>Wo ist es angeschlossen?</translation>
    </message>
    <message>
        <source>None: all is keyed in</source>
        <translation>Keiner: alles wird eingetippt</translation>
    </message>
    <message>
        <source>Write its path</source>
        <translation>Pfad schreiben</translation>
    </message>
    <message>
        <source>No serial port is found on this machine now.</source>
        <translation>An diesem Rechner findet sich gerade kein serieller Anschluss.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpRecordScreen</name>
    <message>
        <source>By hand</source>
        <translation>Von Hand</translation>
    </message>
    <message>
        <source>How is the record kept safe?</source>
        <translation>Wie ist das Protokoll gesichert?</translation>
    </message>
    <message>
        <source>Folder for backups</source>
        <translation>Ordner für Sicherungen</translation>
    </message>
    <message>
        <source>none yet: a stick is best</source>
        <translation>noch keiner: am besten ein Stick</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Jetzt sichern</translation>
    </message>
    <message>
        <source>How often</source>
        <translation>Wie oft</translation>
    </message>
    <message>
        <source>How many stay</source>
        <translation>Wie viele bleiben</translation>
    </message>
    <message>
        <source>Check the log</source>
        <translation>Protokoll prüfen</translation>
    </message>
    <message>
        <source>Bring in a log</source>
        <translation>Hereinholen</translation>
    </message>
    <message>
        <source>of another bench</source>
        <translation>von anderem Platz</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>from a backup</source>
        <translation>aus Sicherung</translation>
    </message>
    <message>
        <source>choose a folder first</source>
        <translation>erst einen Ordner wählen</translation>
    </message>
    <message>
        <source>newest: %1</source>
        <translation>neueste: %1</translation>
    </message>
    <message>
        <source>none in this session yet</source>
        <translation>in dieser Sitzung noch keine</translation>
    </message>
    <message>
        <source>every entry, by its hash</source>
        <translation>jeder Eintrag, am Hash</translation>
    </message>
    <message>
        <source>%1: it holds, %2 entries</source>
        <translation>%1: es stimmt, %2 Einträge</translation>
    </message>
    <message>
        <source>one moment …</source>
        <translation>einen Moment …</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpScreen</name>
    <message>
        <source>Bench set-up</source>
        <translation>Platz einrichten</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>Sound and glass</source>
        <translation>Ton und Bildschirm</translation>
    </message>
    <message>
        <source>Assumptions</source>
        <translation>Annahmen</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>next part of the set-up</source>
        <translation>nächster Teil der Einrichtung</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Vorige Seite</translation>
    </message>
    <message>
        <source>Page after</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Messgeräte</translation>
    </message>
    <message>
        <source>Product sheets</source>
        <translation>Produktblätter</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpSheetsScreen</name>
    <message>
        <source>What the fillers of this shop are</source>
        <translation>Die Spachtel dieser Werkstatt</translation>
    </message>
    <message>
        <source>Type in a sheet</source>
        <translation>Blatt eintippen</translation>
    </message>
    <message>
        <source>Read one from a file</source>
        <translation>Aus einer Datei lesen</translation>
    </message>
    <message>
        <source>demo sheet</source>
        <translation>Demoblatt</translation>
    </message>
    <message numerus="yes">
        <source>%n version(s)</source>
        <translation>
            <numerusform>%n Fassung</numerusform>
            <numerusform>%n Fassungen</numerusform>
        </translation>
    </message>
    <message>
        <source>laid aside</source>
        <translation>abgelegt</translation>
    </message>
    <message>
        <source>Only demo sheets yet: type in your own</source>
        <translation>Nur erfundene Blätter: eigene eingeben</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpSoundScreen</name>
    <message>
        <source>Test the speaker and the size of the glass</source>
        <translation>Lautsprecher und Bildschirmgröße prüfen</translation>
    </message>
    <message>
        <source>Sound test</source>
        <translation>Tonprobe</translation>
    </message>
    <message>
        <source>three rising tones</source>
        <translation>drei steigende Töne</translation>
    </message>
    <message>
        <source>Calibrate the glass</source>
        <translation>Bildschirm kalibrieren</translation>
    </message>
    <message>
        <source>with a bank card</source>
        <translation>mit einer Bankkarte</translation>
    </message>
    <message>
        <source>This bench was started without sound.</source>
        <translation>Dieser Platz startete ohne Ton.</translation>
    </message>
    <message>
        <source>Go by the glass alone.</source>
        <translation>Nur nach dem Bildschirm gehen.</translation>
    </message>
    <message>
        <source>Not tested since the set-up was opened.</source>
        <translation>Seit Öffnen der Einrichtung nicht geprüft.</translation>
    </message>
    <message>
        <source>Sound is never the only alarm: what the glass shows counts, heard or not.</source>
        <translation>Ton ist nie der einzige Alarm: was der Bildschirm zeigt, gilt, gehört oder nicht.</translation>
    </message>
    <message>
        <source>Heard it</source>
        <translation>Gehört</translation>
    </message>
    <message>
        <source>Heard nothing</source>
        <translation>Nichts gehört</translation>
    </message>
    <message>
        <source>Heard: the speaker works.</source>
        <translation>Gehört: der Lautsprecher geht.</translation>
    </message>
    <message>
        <source>Sound only adds to what the glass shows.</source>
        <translation>Ton ergänzt nur, was der Bildschirm zeigt.</translation>
    </message>
    <message>
        <source>The device played it, but nobody heard it.</source>
        <translation>Das Gerät spielte, aber niemand hörte es.</translation>
    </message>
    <message>
        <source>Look at plug, switch and volume of the speaker and test again. Until then go by the glass alone.</source>
        <translation>Stecker, Schalter und Lautstärke ansehen, neu prüfen. Bis dahin nur nach dem Bildschirm gehen.</translation>
    </message>
    <message>
        <source>Playing. Listen.</source>
        <translation>Spielt. Hinhören.</translation>
    </message>
    <message>
        <source>Go by the glass alone until it is mended: no alarm will sound.</source>
        <translation>Bis es behoben ist, nur nach dem Bildschirm gehen: kein Alarm ertönt.</translation>
    </message>
    <message>
        <source>It says: %1.</source>
        <translation>Es meldet: %1.</translation>
    </message>
    <message>
        <source>The device says that it played. Heard it?</source>
        <translation>Das Gerät meldet: gespielt. Gehört?</translation>
    </message>
    <message>
        <source>No sound here: the sound library is missing.</source>
        <translation>Kein Ton hier: die Tonbibliothek fehlt.</translation>
    </message>
    <message>
        <source>No sound here: no sound device opens.</source>
        <translation>Kein Ton hier: kein Tongerät lässt sich öffnen.</translation>
    </message>
    <message>
        <source>Not played: the sound device opened and then failed.</source>
        <translation>Nicht gespielt: das Gerät ging auf und versagte dann.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpSpeedScreen</name>
    <message>
        <source>How fast does it send? See its manual</source>
        <translation>Wie schnell sendet es? Siehe Anleitung</translation>
    </message>
    <message>
        <source>bit/s</source>
        <translation>bit/s</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Rahmen</translation>
    </message>
</context>
<context>
    <name>strandbench::SheetScreen</name>
    <message>
        <source>Choose where the job sheet goes</source>
        <translation>Wohin mit dem Auftragsblatt?</translation>
    </message>
    <message>
        <source>This record cannot be read.</source>
        <translation>Diese Akte ist nicht lesbar.</translation>
    </message>
</context>
<context>
    <name>strandbench::SkillsScreen</name>
    <message>
        <source>Nobody named</source>
        <translation>Ohne Namen</translation>
    </message>
    <message numerus="yes">
        <source>%n panel(s) worked</source>
        <translation>
            <numerusform>%n Teil bearbeitet</numerusform>
            <numerusform>%n Teile bearbeitet</numerusform>
        </translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Auf Papier</translation>
    </message>
    <message>
        <source>To a panel</source>
        <translation>Zu einem Teil</translation>
    </message>
    <message>
        <source>No practice panel was worked yet. Each one that is, counts towards these skills.</source>
        <translation>Noch kein Übungsteil bearbeitet. Jedes zählt zu diesen Fertigkeiten.</translation>
    </message>
</context>
<context>
    <name>strandbench::StockListScreen</name>
    <message>
        <source>%1 left</source>
        <translation>noch %1</translation>
    </message>
    <message>
        <source>open since %1</source>
        <extracomment>%1 is a day</extracomment>
        <translation>offen seit %1</translation>
    </message>
    <message numerus="yes">
        <source>%n unopened</source>
        <translation>
            <numerusform>%n ungeöffnet</numerusform>
            <numerusform>%n ungeöffnet</numerusform>
        </translation>
    </message>
    <message>
        <source>Stock of filler and hardener</source>
        <translation>Bestand an Spachtel und Härter</translation>
    </message>
    <message>
        <source>Tap a lot, or scan it</source>
        <translation>Charge antippen oder scannen</translation>
    </message>
    <message>
        <source>Book in a package</source>
        <translation>Gebinde einbuchen</translation>
    </message>
    <message>
        <source>Nothing is on the shelf yet. Book in what stands there: from then on each batch is taken off, and what runs short, out of date or dry is told with the plan.</source>
        <translation>Noch ist nichts eingebucht. Einbuchen, was da steht: Von da an geht jeder Ansatz ab, und was knapp, abgelaufen oder leer ist, steht beim Plan.</translation>
    </message>
    <message>
        <source>Reorder list</source>
        <translation>Bestellliste</translation>
    </message>
    <message numerus="yes">
        <source>%n product(s) to reorder</source>
        <translation>
            <numerusform>%n Produkt nachbestellen</numerusform>
            <numerusform>%n Produkte nachbestellen</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing to reorder</source>
        <translation>nichts nachzubestellen</translation>
    </message>
    <message>
        <source>ended: %1</source>
        <translation>beendet: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::StockLotNumberScreen</name>
    <message>
        <source>Key in or scan its lot</source>
        <translation>Charge eintippen oder scannen</translation>
    </message>
    <message>
        <source>This is its lot</source>
        <translation>Das ist die Charge</translation>
    </message>
</context>
<context>
    <name>strandbench::StockLotScreen</name>
    <message>
        <source>Ended: %1</source>
        <translation>Beendet: %1</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>noch %1</translation>
    </message>
    <message>
        <source>Book in more of it</source>
        <translation>Mehr davon einbuchen</translation>
    </message>
    <message numerus="yes">
        <source>%n unopened</source>
        <translation>
            <numerusform>%n ungeöffnet</numerusform>
            <numerusform>%n ungeöffnet</numerusform>
        </translation>
    </message>
    <message>
        <source>open since %1</source>
        <extracomment>%1 is a day</extracomment>
        <translation>offen seit %1</translation>
    </message>
    <message>
        <source>A package: %1</source>
        <translation>Ein Gebinde: %1</translation>
    </message>
    <message>
        <source>Good until %1, as printed</source>
        <translation>Gut bis %1, laut Aufdruck</translation>
    </message>
    <message>
        <source>Good until %1, by the sheet’s months</source>
        <translation>Gut bis %1, nach den Monaten des Blatts</translation>
    </message>
    <message>
        <source>The open one until %1</source>
        <translation>Das offene bis %1</translation>
    </message>
    <message>
        <source>Open the next</source>
        <translation>Nächstes öffnen</translation>
    </message>
    <message>
        <source>Count it</source>
        <translation>Zählen</translation>
    </message>
    <message>
        <source>stock-take</source>
        <translation>Inventur</translation>
    </message>
    <message>
        <source>More or less</source>
        <translation>Mehr oder weniger</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>berichtigen</translation>
    </message>
    <message>
        <source>End this tube</source>
        <translation>Tube beenden</translation>
    </message>
    <message>
        <source>End this tub</source>
        <translation>Dose beenden</translation>
    </message>
    <message>
        <source>skin, hard, empty</source>
        <translation>Haut, hart, leer</translation>
    </message>
    <message>
        <source>From the cold</source>
        <translation>Aus der Kälte</translation>
    </message>
    <message>
        <source>or the heat</source>
        <translation>oder Hitze</translation>
    </message>
    <message>
        <source>Probe it</source>
        <translation>Fühler einstechen</translation>
    </message>
    <message>
        <source>its middle</source>
        <translation>die Mitte</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Was sich änderte</translation>
    </message>
    <message>
        <source>Test pat</source>
        <translation>Probekreis</translation>
    </message>
    <message>
        <source>tried</source>
        <translation>erprobt</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
</context>
<context>
    <name>strandbench::StockMovesScreen</name>
    <message>
        <source>What changed, the newest first</source>
        <translation>Was sich änderte, das Neueste zuerst</translation>
    </message>
    <message>
        <source>%1: %2, %3 left</source>
        <extracomment>%1 is what happened, %2 and %3 are masses: &quot;Batch of job 4421: − 43.0 g, 620 g left&quot;</extracomment>
        <translation>%1: %2, noch %3</translation>
    </message>
    <message>
        <source>Every repair of this lot</source>
        <translation>Jede Reparatur dieser Charge</translation>
    </message>
</context>
<context>
    <name>strandbench::StockNotesScreen</name>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message numerus="yes">
        <source>! %n to mind</source>
        <translation>
            <numerusform>! %n beachten</numerusform>
            <numerusform>! %n beachten</numerusform>
        </translation>
    </message>
    <message>
        <source>in order</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>What the shelf says of this plan</source>
        <translation>Was der Bestand zu diesem Plan sagt</translation>
    </message>
    <message>
        <source>Nothing is to be told of the lots in the hand. Of lots that were never booked in or counted nothing is known.</source>
        <translation>Zu den Chargen in der Hand ist nichts zu sagen. Von Chargen, die nie eingebucht oder gezählt wurden, ist nichts bekannt.</translation>
    </message>
    <message>
        <source>To the stock</source>
        <translation>Zum Bestand</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation>Zurück zum Plan</translation>
    </message>
</context>
<context>
    <name>strandbench::TimelineScreen</name>
    <message>
        <source>Planned and done</source>
        <translation>Geplant und getan</translation>
    </message>
    <message>
        <source>Section of the repair</source>
        <translation>Schnitt der Reparatur</translation>
    </message>
    <message>
        <source>The whole job</source>
        <translation>Die ganze Arbeit</translation>
    </message>
    <message>
        <source>Mix to sanding</source>
        <translation>Mischen bis Schleifen</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>done</source>
        <translation>getan</translation>
    </message>
    <message>
        <source>told</source>
        <translation>gemeldet</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>Abweichung</translation>
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
        <translation>Auftrag antippen für seine Akte</translation>
    </message>
    <message>
        <source>A record that cannot be read</source>
        <translation>Eine Akte, die nicht lesbar ist</translation>
    </message>
    <message>
        <source>Hardener lots</source>
        <translation>Härterchargen</translation>
    </message>
    <message>
        <source>signed off</source>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>to sign off</source>
        <translation>abzunehmen</translation>
    </message>
    <message>
        <source>This bench</source>
        <translation>Dieser Platz</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies): clocks, refused acts, PIN</source>
        <translation>
            <numerusform>%n Eintrag: Uhren, verweigerte Handlungen, PIN</numerusform>
            <numerusform>%n Einträge: Uhren, verweigerte Handlungen, PIN</numerusform>
        </translation>
    </message>
    <message>
        <source>Look for</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>a job, a lot, a word of any day</source>
        <translation>Auftrag, Charge, Wort von jedem Tag</translation>
    </message>
    <message>
        <source>Look through</source>
        <translation>Durchsehen</translation>
    </message>
    <message>
        <source>sign off, return, figures</source>
        <translation>abnehmen, zurückgeben, Zahlen</translation>
    </message>
    <message>
        <source>Nothing was worked on today. Every repair that is, stands here with its record.</source>
        <translation>Heute wurde an nichts gearbeitet. Jede Reparatur mit Arbeit von heute steht hier mit ihrer Akte.</translation>
    </message>
    <message>
        <source>Take in a panel</source>
        <translation>Teil annehmen</translation>
    </message>
    <message>
        <source>job number and panel</source>
        <translation>Auftragsnummer und Teil</translation>
    </message>
    <message>
        <source>No repair today</source>
        <translation>Heute keine Reparatur</translation>
    </message>
</context>
<context>
    <name>strandbench::TroubleWindow</name>
    <message>
        <source>The log cannot be opened</source>
        <translation>Protokoll öffnet nicht</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>Close the program</source>
        <translation>Programm schließen</translation>
    </message>
    <message>
        <source>This bench is in use</source>
        <translation>Dieser Platz ist in Gebrauch</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Look only</source>
        <translation>Nur ansehen</translation>
    </message>
    <message>
        <source>The log is of an older version</source>
        <translation>Das Protokoll ist älter als das Programm</translation>
    </message>
    <message>
        <source>Save what holds</source>
        <translation>Intaktes retten</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Sicherung holen</translation>
    </message>
    <message>
        <source>Bring it up</source>
        <translation>Anheben</translation>
    </message>
    <message>
        <source>One moment …</source>
        <translation>Einen Moment …</translation>
    </message>
    <message>
        <source>Nothing could be saved: %1</source>
        <translation>Nichts konnte gerettet werden: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n entries that hold are saved in %1.</source>
        <translation>
            <numerusform>%n intakter Eintrag ist in %1 gerettet.</numerusform>
            <numerusform>%n intakte Einträge sind in %1 gerettet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more can be read and stand as text beside it.</source>
        <translation>
            <numerusform>%n weiterer ist lesbar und steht als Text daneben.</numerusform>
            <numerusform>%n weitere sind lesbar und stehen als Text daneben.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::VapourScreen</name>
    <message>
        <source>A reason to ventilate, never a clearance</source>
        <translation>Ein Grund zu lüften, nie eine Freigabe</translation>
    </message>
    <message>
        <source>Beside the panel it is more. A measurement, the safety data sheet and local codes come first.</source>
        <translation>Nahe am Teil ist es mehr. Eine Messung, das Sicherheitsdatenblatt und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>now %1; highest mean of 15 min %2, of 8 h %3</source>
        <translation>jetzt %1; höchstes Mittel über 15 min %2, über 8 h %3</translation>
    </message>
    <message>
        <source>Nothing was mixed or wiped down here in the last 24 hours. What else gives off vapour is not known.</source>
        <translation>Hier wurde in den letzten 24 Stunden nichts gemischt und nichts abgewischt. Was sonst Dämpfe abgibt, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Together at most %1 of the OSHA PEL of a mixture.</source>
        <translation>Zusammen höchstens %1 des OSHA-PEL eines Gemischs.</translation>
    </message>
    <message>
        <source>Reckoned for %1 of well-mixed air that changes %2 times an hour: assumptions, see bench set-up.</source>
        <translation>Gerechnet für %1 gut gemischte Luft, die %2-mal in der Stunde wechselt: Annahmen, siehe „Platz einrichten“.</translation>
    </message>
    <message>
        <source>Styrene from what worked-in resin gives off to what gel coat does, by 40 CFR 63 VVVV Table 3; none was found for filler. Solvent: all of it.</source>
        <translation>Styrol: zwischen dem, was eingearbeitetes Harz abgibt, und dem von Gelcoat, nach 40 CFR 63 VVVV Tabelle 3; für Spachtel fand sich nichts. Lösemittel: alles.</translation>
    </message>
    <message>
        <source>Counted: batches, test pats and wiping down told here in the last 24 hours. Not guide coat, lay-up resin or other work.</source>
        <translation>Gezählt: hier gemeldete Ansätze, Probekreise und Abwischen der letzten 24 Stunden. Nicht: Kontrollschwarz, Laminierharz, andere Arbeit.</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es) whose sheet is not loaded: not counted.</source>
        <translation>
            <numerusform>%n Ansatz, dessen Blatt nicht geladen ist: nicht gezählt.</numerusform>
            <numerusform>%n Ansätze, deren Blatt nicht geladen ist: nicht gezählt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
</context>
<context>
    <name>strandbench::WhyScreen</name>
    <message>
        <source>Why %1</source>
        <translation>Warum %1</translation>
    </message>
    <message>
        <source>Why none of the others</source>
        <translation>Warum kein anderer</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation>Zurück zum Plan</translation>
    </message>
</context>
</TS>
