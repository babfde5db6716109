<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name></name>
    <message>
        <source>{fault} seen: {remedy}</source>
        <translation>{fault} gesehen: {remedy}</translation>
    </message>
    <message>
        <source>Advice, not a procedure: local codes, the equipment&apos;s and the vehicle&apos;s own manuals and your own test pieces come first. Anything whose failure can hurt someone belongs to a qualified welder.</source>
        <translation>Ein Rat, keine Schweißanweisung: örtliche Vorschriften, die Handbücher von Gerät und Fahrzeug und eigene Probestücke gehen vor. Alles, dessen Versagen jemanden verletzen kann, gehört in die Hände eines geprüften Schweißers.</translation>
    </message>
    <message>
        <source>other thickness</source>
        <translation>andere Dicke</translation>
    </message>
    <message>
        <source>above 0 to 1000 m</source>
        <translation>über 0 bis 1000 m</translation>
    </message>
    <message>
        <source>{joints}; plug with mig</source>
        <translation>{joints}; Lochnaht mit MIG/MAG</translation>
    </message>
    <message>
        <source>plug with mig</source>
        <translation>Lochnaht mit MIG/MAG</translation>
    </message>
    <message>
        <source>plug with tig</source>
        <translation>Lochnaht mit WIG</translation>
    </message>
    <message>
        <source>{thin} on {thick}</source>
        <translation>{thin} auf {thick}</translation>
    </message>
    <message>
        <source>the thin edge melts away before the thick piece does (more than {ratio:g} to 1); thin the thick edge down or fasten another way</source>
        <translation>die dünne Kante schmilzt weg, bevor das dicke Teil schmilzt (mehr als {ratio:g} zu 1); die dicke Kante abdünnen oder anders verbinden</translation>
    </message>
    <message>
        <source>{first} to {other}</source>
        <translation>{first} an {other}</translation>
    </message>
    <message>
        <source>bench file</source>
        <translation>Werkbankdatei</translation>
    </message>
    <message>
        <source>tungsten</source>
        <translation>Wolframelektrode</translation>
    </message>
    <message>
        <source>{diameter:g} mm tungsten stands {high:.0f} A</source>
        <translation>Wolframelektrode {diameter:g} mm verträgt {high:.0f} A</translation>
    </message>
    <message>
        <source>, less than the {wanted:.0f} A wanted: get a thicker one</source>
        <translation>, weniger als die gewünschten {wanted:.0f} A: eine dickere besorgen</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Spalt</translation>
    </message>
    <message>
        <source>gap {gap:.1f} mm; up to {widest:.1f} mm bridges without help</source>
        <translation>Spalt {gap:.1f} mm; bis {widest:.1f} mm lässt er sich ohne Hilfe überbrücken</translation>
    </message>
    <message>
        <source>: close it, or back it with copper and start at the low end</source>
        <translation>: schließen, oder mit Kupfer hinterlegen und am unteren Ende beginnen</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>Skala</translation>
    </message>
    <message>
        <source>any machine</source>
        <translation>jedes Gerät</translation>
    </message>
    <message>
        <source>the tables hold no gas for it</source>
        <translation>die Tabellen enthalten kein Gas dafür</translation>
    </message>
    <message>
        <source>{gases} for {asked}</source>
        <translation>{gases} für {asked}</translation>
    </message>
    <message>
        <source>the gas on the machine</source>
        <translation>das Gas am Gerät</translation>
    </message>
    <message>
        <source>{name} is not on the shelf; this one suits too</source>
        <translation>{name} ist nicht im Regal; dieses passt auch</translation>
    </message>
    <message>
        <source>the usual gas for this metal and process</source>
        <translation>das übliche Gas für dieses Metall und Verfahren</translation>
    </message>
    <message>
        <source>{process} on {metal}</source>
        <translation>{process} an {metal}</translation>
    </message>
    <message>
        <source>, {transfer} transfer</source>
        <translation>, {transfer}</translation>
    </message>
    <message>
        <source>too few rows print a wire feed</source>
        <translation>zu wenige Zeilen nennen einen Drahtvorschub</translation>
    </message>
    <message>
        <source>AC frequency: a higher one narrows the arc; no document puts a number on it</source>
        <translation>AC-Frequenz: eine höhere macht den Lichtbogen schmaler; kein Dokument gibt eine Zahl dafür</translation>
    </message>
    <message>
        <source>AC balance: more electrode negative heats the work more; the size is not published</source>
        <translation>AC-Balance: mehr Elektrode negativ erwärmt das Werkstück mehr; wie viel, ist nicht veröffentlicht</translation>
    </message>
    <message>
        <source>backing bar: it draws heat off, how much depends on the clamping</source>
        <translation>Badsicherung: sie zieht Wärme ab, wie viel, hängt vom Spannen ab</translation>
    </message>
    <message>
        <source>corner and edge: the bare edge melts away sooner than the model, which sees a sheet, says</source>
        <translation>Ecke und Stirnstoß: die freie Kante schmilzt früher weg, als das Modell sagt, das ein Blech sieht</translation>
    </message>
    <message>
        <source>plug</source>
        <translation>Lochnaht</translation>
    </message>
    <message>
        <source>a plug weld does not travel, and the heat picture is of a seam</source>
        <translation>eine Lochnaht wandert nicht, und das Wärmebild gilt für eine fortlaufende Naht</translation>
    </message>
    <message>
        <source>lap</source>
        <translation>Überlappstoß</translation>
    </message>
    <message>
        <source>current</source>
        <translation>Schweißstrom</translation>
    </message>
    <message>
        <source>travel</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>preheat</source>
        <translation>Vorwärmen</translation>
    </message>
    <message>
        <source>frequency</source>
        <translation>Frequenz</translation>
    </message>
    <message>
        <source>electrode negative</source>
        <translation>Elektrode negativ</translation>
    </message>
    <message>
        <source>only with TIG on aluminium or magnesium, which runs on AC</source>
        <translation>nur bei WIG an Aluminium oder Magnesium, das mit AC läuft</translation>
    </message>
    <message>
        <source>heat picture</source>
        <translation>Wärmebild</translation>
    </message>
    <message>
        <source>The heat picture disagrees: at {travel:.1f} mm/s it has the tables&apos; {low:.0f} to {high:.0f} A stay cold, and expects {least:.0f} to {most:.0f} A. Both are shown; try it on scrap.</source>
        <translation>Das Wärmebild widerspricht: bei {travel:.1f} mm/s bleiben ihm zufolge die {low:.0f} bis {high:.0f} A der Tabellen kalt, es erwartet {least:.0f} bis {most:.0f} A. Beides ist angegeben; an Abfallstücken probieren.</translation>
    </message>
    <message>
        <source>The heat picture disagrees: at {travel:.1f} mm/s it has the tables&apos; {low:.0f} to {high:.0f} A fall through, and expects {least:.0f} to {most:.0f} A. Both are shown; try it on scrap.</source>
        <translation>Das Wärmebild widerspricht: bei {travel:.1f} mm/s brennen ihm zufolge die {low:.0f} bis {high:.0f} A der Tabellen durch, es erwartet {least:.0f} bis {most:.0f} A. Beides ist angegeben; an Abfallstücken probieren.</translation>
    </message>
    <message>
        <source>{polarity} under {gas} gas</source>
        <translation>{polarity}, Gas: {gas}</translation>
    </message>
    <message>
        <source>AC under argon, fitted to sheet schedules; published 22 to 48 %</source>
        <translation>AC unter Argon, an Blechtabellen angepasst; veröffentlicht 22 bis 48 %</translation>
    </message>
    <message>
        <source>; its change with balance is a trend only</source>
        <translation>; die Änderung mit der Balance ist nur eine Tendenz</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>sicher</translation>
    </message>
    <message>
        <source>fairly sure</source>
        <translation>ziemlich sicher</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>no more than a hint</source>
        <translation>nicht mehr als ein Hinweis</translation>
    </message>
    <message>
        <source>1 past weld</source>
        <translation>1 frühere Schweißung</translation>
    </message>
    <message>
        <source>{welds} past welds</source>
        <translation>{welds} frühere Schweißungen</translation>
    </message>
    <message>
        <source>your log: {welds}, {alike} on this kind of joint ({sureness}; nine in ten that it lies between {low:.2f} and {high:.2f} times the tables)</source>
        <translation>Schweißbuch: {welds}, davon an dieser Stoßart {alike} ({sureness}; in neun von zehn Fällen liegt es zwischen dem {low:.2f}- und {high:.2f}-Fachen der Tabellen)</translation>
    </message>
    <message>
        <source>a like weld burned through at what would be {burnt:.0f} A here: stay below</source>
        <translation>eine ähnliche Schweißung brannte bei umgerechnet {burnt:.0f} A durch: darunter bleiben</translation>
    </message>
    <message>
        <source>a like weld stayed cold at what would be {cold:.0f} A here: stay above</source>
        <translation>eine ähnliche Schweißung blieb bei umgerechnet {cold:.0f} A kalt: darüber bleiben</translation>
    </message>
    <message>
        <source>the thickest tungsten on hand</source>
        <translation>die dickste vorhandene Wolframelektrode</translation>
    </message>
    <message>
        <source>snapped to {start:g} {unit}: {ways}</source>
        <translation>gerastet auf {start:g} {unit}: {ways}</translation>
    </message>
    <message>
        <source>clipped: {name} has {lowest:g} {unit} and no other</source>
        <translation>begrenzt: {name} hat {lowest:g} {unit} und sonst nichts</translation>
    </message>
    <message>
        <source>clipped: {name} stops at {highest:g} {unit}</source>
        <translation>begrenzt: {name} endet bei {highest:g} {unit}</translation>
    </message>
    <message>
        <source>clipped: {name} starts at {lowest:g} {unit}</source>
        <translation>begrenzt: {name} beginnt bei {lowest:g} {unit}</translation>
    </message>
    <message>
        <source>{name} goes in steps of {step:g} {unit}</source>
        <translation>{name} geht in Stufen von {step:g} {unit}</translation>
    </message>
    <message>
        <source>{name} has {number} positions from {lowest:g} to {highest:g} {unit}</source>
        <translation>{name} hat {number} Stellungen von {lowest:g} bis {highest:g} {unit}</translation>
    </message>
    <message>
        <source>{name} has {positions} {unit} only</source>
        <translation>{name} hat nur {positions} {unit}</translation>
    </message>
    <message>
        <source>; the range is {low} to {high}</source>
        <translation>; der Bereich ist {low} bis {high}</translation>
    </message>
    <message>
        <source>set {reading}{span}</source>
        <translation>{reading} einstellen{span}</translation>
    </message>
    <message>
        <source>{read} on this machine&apos;s {scale}</source>
        <translation>{read} an diesem Gerät ({scale})</translation>
    </message>
    <message>
        <source>tig; gtaw</source>
        <translation>wig; tig; wig-schweißen</translation>
    </message>
    <message>
        <source>mig; gmaw; mag</source>
        <translation>mig; mag; mig/mag; msg</translation>
    </message>
    <message>
        <source>butt</source>
        <translation>Stumpfstoß</translation>
    </message>
    <message>
        <source>tee; t; t joint; fillet</source>
        <translation>T-Stoß; T; T-Naht; Kehlnaht</translation>
    </message>
    <message>
        <source>outside corner; corner</source>
        <translation>Außenecke; Ecke; Eckstoß</translation>
    </message>
    <message>
        <source>inside corner</source>
        <translation>Innenecke</translation>
    </message>
    <message>
        <source>edge</source>
        <translation>Stirnstoß</translation>
    </message>
    <message>
        <source>indoors</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>im Freien</translation>
    </message>
    <message>
        <source>enclosed</source>
        <translation>enger Raum</translation>
    </message>
    <message>
        <source>unhurried</source>
        <translation>ruhig</translation>
    </message>
    <message>
        <source>brisk</source>
        <translation>zügig</translation>
    </message>
    <message>
        <source>low-carbon; mild; mild steel</source>
        <translation>unlegiert; unlegierter Stahl; weicher Stahl; Schwarzstahl; Schwarzblech</translation>
    </message>
    <message>
        <source>galvanised; galvanized</source>
        <translation>verzinkt; feuerverzinkt</translation>
    </message>
    <message>
        <source>structural; hot-rolled</source>
        <translation>Baustahl; warmgewalzt</translation>
    </message>
    <message>
        <source>weathering</source>
        <translation>wetterfest; wetterfester Stahl; wetterfester Baustahl</translation>
    </message>
    <message>
        <source>copper</source>
        <translation>Kupfer</translation>
    </message>
    <message>
        <source>titanium</source>
        <translation>Titan</translation>
    </message>
    <message>
        <source>magnesium</source>
        <translation>Magnesium</translation>
    </message>
    <message>
        <source>silicon bronze</source>
        <translation>Siliziumbronze</translation>
    </message>
    <message>
        <source>flat; downhand</source>
        <translation>Wannenlage; Wanne; flach</translation>
    </message>
    <message>
        <source>overhead; upside down</source>
        <translation>Überkopf; über Kopf</translation>
    </message>
    <message>
        <source>vertical up; uphill; upward</source>
        <translation>steigend; senkrecht steigend; aufwärts</translation>
    </message>
    <message>
        <source>vertical down; downhill; downward</source>
        <translation>fallend; senkrecht fallend; abwärts</translation>
    </message>
    <message>
        <source>plug in {metal}, top sheet {top}</source>
        <translation>Lochnaht in {metal}, oberes Blech {top}</translation>
    </message>
    <message>
        <source>the rows cover {thinnest} to {thickest}</source>
        <translation>die Zeilen reichen von {thinnest} bis {thickest}</translation>
    </message>
    <message>
        <source>duty cycle</source>
        <translation>Einschaltdauer</translation>
    </message>
    <message>
        <source>the plate of {name} says nothing above {top:g} A</source>
        <translation>das Typenschild sagt nichts über {top:g} A hinaus: {name}</translation>
    </message>
    <message>
        <source>{minutes:.1f} minutes of arc in ten at {amps:.0f} A</source>
        <translation>{minutes:.1f} von zehn Minuten Lichtbogen bei {amps:.0f} A</translation>
    </message>
    <message>
        <source>{text}: pause {pause:.1f} minutes before it trips</source>
        <translation>{text}: {pause:.1f} Minuten Pause, bevor es abschaltet</translation>
    </message>
    <message>
        <source>{text}; this weld takes {needed:.1f}</source>
        <translation>{text}; diese Schweißung braucht {needed:.1f}</translation>
    </message>
    <message>
        <source>{text}, this weld takes {needed:.1f}: it trips after {minutes:.1f}; stop before that and let it cool {pause:.1f} minutes</source>
        <translation>{text}, diese Schweißung braucht {needed:.1f}: es schaltet nach {minutes:.1f} ab; vorher aufhören und {pause:.1f} Minuten abkühlen lassen</translation>
    </message>
    <message>
        <source>the torch is air-cooled</source>
        <translation>der Brenner ist luftgekühlt</translation>
    </message>
    <message>
        <source>no torch stated</source>
        <translation>kein Brenner angegeben</translation>
    </message>
    <message>
        <source>torch cooling</source>
        <translation>Brennerkühlung</translation>
    </message>
    <message>
        <source>above {limit:g} A a water-cooled torch [{source}]; {torch}</source>
        <translation>über {limit:g} A ein wassergekühlter Brenner [{source}]; {torch}</translation>
    </message>
    <message>
        <source>torch</source>
        <translation>Brenner</translation>
    </message>
    <message>
        <source>gun</source>
        <translation>Brenner</translation>
    </message>
    <message>
        <source>{what} is rated {rated:g} A, {start:.0f} A wanted: it overheats</source>
        <translation>{what}: Nennstrom {rated:g} A, gewünscht {start:.0f} A: überhitzt</translation>
    </message>
    <message>
        <source>{what} rated {rated:g} A at {duty_percent:g} %: {duty:.1f} minutes in ten here</source>
        <translation>{what}: Nennstrom {rated:g} A bei {duty_percent:g} %: hier {duty:.1f} von zehn Minuten</translation>
    </message>
    <message>
        <source>open circuit {volts:g} V {output}; where shock is likelier than usual {high:g} V at most</source>
        <translation>Leerlauf {volts:g} V {output}; wo ein Stromschlag wahrscheinlicher ist als sonst, höchstens {high:g} V</translation>
    </message>
    <message>
        <source>open circuit</source>
        <translation>Leerlaufspannung</translation>
    </message>
    <message>
        <source>{text} ({grade} of the standard; {kind})</source>
        <translation>{text} (Norm: {grade}; {kind})</translation>
    </message>
    <message>
        <source>rms</source>
        <translation>Effektivwert</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>Scheitelwert</translation>
    </message>
    <message>
        <source>: not this machine in here</source>
        <translation>: dieses Gerät hier drin nicht verwenden</translation>
    </message>
    <message>
        <source>Look behind: plug only where the sheet behind is sound. Step-drill to round, take the burr off behind.</source>
        <translation>Dahinter schauen: Lochnaht nur, wo das Blech dahinter gesund ist. Mit Stufenbohrer rund bohren, dahinter entgraten.</translation>
    </message>
    <message>
        <source>Deburr, fit tight and clamp; return clamp on bare metal beside the joint.</source>
        <translation>Entgraten, dicht anpassen und spannen; Masseklemme auf blankes Metall neben dem Stoß.</translation>
    </message>
    <message>
        <source>Back it with copper, clamped tight.</source>
        <translation>Mit Kupfer hinterlegen, fest gespannt.</translation>
    </message>
    <message>
        <source>Run a test bead on scrap of the same sheet.</source>
        <translation>Eine Proberaupe auf Abfall vom gleichen Blech ziehen.</translation>
    </message>
    <message>
        <source>thinner sheet, or another machine</source>
        <translation>dünneres Blech oder ein anderes Gerät</translation>
    </message>
    <message>
        <source>a smaller fillet from both sides</source>
        <translation>eine kleinere Kehlnaht von beiden Seiten</translation>
    </message>
    <message>
        <source>a smaller fillet</source>
        <translation>eine kleinere Kehlnaht</translation>
    </message>
    <message>
        <source>{process} on {metal} with {machine}</source>
        <translation>{process} an {metal} mit {machine}</translation>
    </message>
    <message>
        <source>the joint wants at least {low:.0f} A, the machine ends at {highest:g} A: it would lie cold on the surface</source>
        <translation>der Stoß will mindestens {low:.0f} A, das Gerät endet bei {highest:g} A: die Naht läge kalt auf der Oberfläche</translation>
    </message>
    <message>
        <source>the joint stands at most {high:.0f} A, the machine starts at {lowest:g} A: it would burn through</source>
        <translation>der Stoß verträgt höchstens {high:.0f} A, das Gerät beginnt bei {lowest:g} A: es würde durchbrennen</translation>
    </message>
    <message>
        <source>thicker sheet, or a machine that goes lower</source>
        <translation>dickeres Blech oder ein Gerät, das tiefer hinabgeht</translation>
    </message>
    <message>
        <source>warm the parts, {most:g} degC at most</source>
        <translation>die Teile anwärmen, höchstens {most:g} degC</translation>
    </message>
    <message>
        <source>preheat within what the metal and its code allow</source>
        <translation>vorwärmen, soweit Metall und zuständiges Regelwerk es zulassen</translation>
    </message>
    <message>
        <source>a gas with helium ({gas}) makes the arc hotter</source>
        <translation>ein Gas mit Helium ({gas}) macht den Lichtbogen heißer</translation>
    </message>
    <message>
        <source>bevel and take more, smaller runs</source>
        <translation>anfasen und mehr, kleinere Raupen ziehen</translation>
    </message>
    <message>
        <source>ask for a card by {processes}: {name} is there</source>
        <translation>Karte für {processes} verlangen: {name} ist da</translation>
    </message>
    <message>
        <source>use {name}</source>
        <translation>nehmen: {name}</translation>
    </message>
    <message>
        <source>wire feed</source>
        <translation>Drahtvorschub</translation>
    </message>
    <message>
        <source>the arc will not burn as the card says: change wire diameter or current</source>
        <translation>der Lichtbogen brennt nicht, wie die Karte sagt: Drahtdurchmesser oder Strom ändern</translation>
    </message>
    <message>
        <source>expect a bead that lies wrong: choose current and wire to suit the nearest tap</source>
        <translation>mit schlecht liegender Raupe rechnen: Strom und Draht passend zur nächsten Stufe wählen</translation>
    </message>
    <message>
        <source>watch the oxide and the tip of the tungsten</source>
        <translation>auf das Oxid und die Elektrodenspitze achten</translation>
    </message>
    <message>
        <source>ac frequency</source>
        <translation>AC-Frequenz</translation>
    </message>
    <message>
        <source>only the width of the arc changes: hold it shorter or move a little slower</source>
        <translation>nur die Breite des Lichtbogens ändert sich: ihn kürzer halten oder etwas langsamer gehen</translation>
    </message>
    <message>
        <source>process</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>{name} does not do {process}</source>
        <translation>{name} kann kein {process}</translation>
    </message>
    <message>
        <source>reach</source>
        <translation>Strombereich</translation>
    </message>
    <message>
        <source>no machine stated: nothing was clipped to its limits</source>
        <translation>kein Gerät angegeben: nichts wurde auf dessen Grenzen gekürzt</translation>
    </message>
    <message>
        <source>the joint asks for {start:.0f} A, {name} gives {highest:g} A: {offers}</source>
        <translation>der Stoß verlangt {start:.0f} A, {name} gibt {highest:g} A: {offers}</translation>
    </message>
    <message>
        <source>the joint asks for {start:.0f} A, below the {lowest:g} A that {name} holds</source>
        <translation>der Stoß verlangt {start:.0f} A, weniger als die {lowest:g} A, die {name} hält</translation>
    </message>
    <message>
        <source>{text}: back it with copper and travel faster, or use thicker sheet</source>
        <translation>{text}: mit Kupfer hinterlegen und schneller gehen, oder dickeres Blech nehmen</translation>
    </message>
    <message>
        <source>{name} reaches it</source>
        <translation>{name} schafft es</translation>
    </message>
    <message>
        <source>{name} has no AC; this metal needs it under argon</source>
        <translation>{name} hat kein AC; dieses Metall braucht es unter Argon</translation>
    </message>
    <message>
        <source>helium on electrode negative is the other way</source>
        <translation>Helium mit Elektrode negativ ist der andere Weg</translation>
    </message>
    <message>
        <source>current type</source>
        <translation>Stromart</translation>
    </message>
    <message>
        <source>{current} is there</source>
        <translation>{current} ist da</translation>
    </message>
    <message>
        <source>rolls</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <source>rolls and gun take {wire:g} mm wire</source>
        <translation>Rollen und Brenner nehmen Draht {wire:g} mm</translation>
    </message>
    <message>
        <source>rolls and gun of {name} take {takes} mm, not {wire:g} mm</source>
        <translation>Rollen und Brenner von {name} nehmen {takes} mm, nicht {wire:g} mm</translation>
    </message>
    <message>
        <source>no pedal: the arc has the set current from the first moment; start at the low end, break off to let the pool freeze, and fill the crater by hand</source>
        <translation>kein Fußregler: der Lichtbogen hat vom ersten Moment an den eingestellten Strom; am unteren Ende beginnen, absetzen, damit das Bad erstarrt, und den Krater von Hand füllen</translation>
    </message>
    <message>
        <source>pedal</source>
        <translation>Fußregler</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Zünden</translation>
    </message>
    <message>
        <source>no hot start: begin on a run-on tab or wait for the pool to form</source>
        <translation>kein Hotstart: auf einem Anlaufblech beginnen oder warten, bis sich das Bad bildet</translation>
    </message>
    <message>
        <source>{setting}: {low:g} to {high:g} {unit} suits the joint, {name} gives {got:g} {unit}: {cost}</source>
        <translation>{setting}: {low:g} bis {high:g} {unit} passt zum Stoß, {name} gibt {got:g} {unit}: {cost}</translation>
    </message>
    <message>
        <source>from {rows} rows of 1 document</source>
        <translation>aus {rows} Zeilen von 1 Dokument</translation>
    </message>
    <message>
        <source>from {rows} rows of {documents} documents</source>
        <translation>aus {rows} Zeilen von {documents} Dokumenten</translation>
    </message>
    <message>
        <source>this document by itself says {current:.0f} A</source>
        <translation>dieses Dokument für sich sagt {current:.0f} A</translation>
    </message>
    <message>
        <source>lower frequency widens the arc, higher narrows it (a trend: no published figure ties width to hertz)</source>
        <translation>niedrigere Frequenz macht den Lichtbogen breiter, höhere schmaler (eine Tendenz: kein veröffentlichter Wert knüpft die Breite an Hertz)</translation>
    </message>
    <message>
        <source>thick plate: {note}</source>
        <translation>Grobblech: {note}</translation>
    </message>
    <message>
        <source>as set, less what the leads take</source>
        <translation>wie eingestellt, abzüglich der Leitungsverluste</translation>
    </message>
    <message>
        <source>conventional load line 10 V + 0.04 V/A</source>
        <translation>genormte Arbeitskennlinie 10 V + 0,04 V/A</translation>
    </message>
    <message>
        <source>helium adds about {volts:g} V</source>
        <translation>Helium bringt etwa {volts:g} V dazu</translation>
    </message>
    <message>
        <source>not set on the machine: it follows the arc length, about one tungsten diameter</source>
        <translation>am Gerät nicht einstellbar: sie folgt der Lichtbogenlänge, etwa ein Elektrodendurchmesser</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>copper bar</source>
        <translation>Kupferschiene</translation>
    </message>
    <message>
        <source>argon purge, 5 L/min</source>
        <translation>Argon-Formieren, 5 L/min</translation>
    </message>
    <message>
        <source>stainless or copper bar, clean and dry</source>
        <translation>Edelstahl- oder Kupferschiene, sauber und trocken</translation>
    </message>
    <message>
        <source>titanium takes up air on every hot face: purge the back and trail the bead</source>
        <translation>Titan nimmt an jeder heißen Fläche Luft auf: Rückseite formieren und Raupe mit Schleppdüse schützen</translation>
    </message>
    <message>
        <source>a copper bar behind the hole holds the pool and takes the heat</source>
        <translation>eine Kupferschiene hinter dem Loch hält das Bad und nimmt die Wärme auf</translation>
    </message>
    <message>
        <source>the root is closed by the other plate</source>
        <translation>die Wurzel ist durch das andere Blech geschlossen</translation>
    </message>
    <message>
        <source>the root of stainless sugars in air</source>
        <translation>die Wurzel von nichtrostendem Stahl verbrennt an der Luft zu grobem Oxid</translation>
    </message>
    <message>
        <source>thin sheet clamped tight: the bar shields most of the root</source>
        <translation>dünnes Blech fest gespannt: die Schiene schirmt den größten Teil der Wurzel ab</translation>
    </message>
    <message>
        <source>thin butt: a removable bar stops the root falling out</source>
        <translation>dünner Stumpfstoß: eine abnehmbare Schiene verhindert, dass die Wurzel durchfällt</translation>
    </message>
    <message>
        <source>with a tight fit and a light pedal</source>
        <translation>mit enger Passung und sanftem Fußregler</translation>
    </message>
    <message>
        <source>thick enough to carry its own root, or nothing can reach behind</source>
        <translation>dick genug, um die eigene Wurzel zu tragen, oder dahinter kommt nichts hin</translation>
    </message>
    <message>
        <source>where the edge drops through</source>
        <translation>wo die Kante durchfällt</translation>
    </message>
    <message>
        <source>; no {bar} on the shelf, so none</source>
        <translation>; {bar} nicht im Regal, also ohne</translation>
    </message>
    <message>
        <source>once it is there</source>
        <translation>sobald es da ist</translation>
    </message>
    <message>
        <source>bore at least {least:g} tungsten diameters</source>
        <translation>Innendurchmesser mindestens {least:g} Elektrodendurchmesser</translation>
    </message>
    <message>
        <source>{low:g} to {high:g} mm bore printed for this current</source>
        <translation>{low:g} bis {high:g} mm Innendurchmesser für diesen Strom gedruckt</translation>
    </message>
    <message>
        <source>with the lens two sizes larger: more cover, same flow</source>
        <translation>mit der Linse zwei Größen größer: mehr Abdeckung, gleicher Durchfluss</translation>
    </message>
    <message>
        <source>one size smaller reaches into the joint</source>
        <translation>eine Größe kleiner reicht in den Stoß hinein</translation>
    </message>
    <message>
        <source>{bore:.1f} mm bore</source>
        <translation>{bore:.1f} mm innen</translation>
    </message>
    <message>
        <source>more electrode negative melts deeper and spares the tungsten; more electrode positive lifts more oxide and rounds the tip (a trend; papers disagree on how much)</source>
        <translation>mehr Elektrode negativ schmilzt tiefer und schont die Wolframelektrode; mehr Elektrode positiv löst mehr Oxid und rundet die Spitze (eine Tendenz; die Arbeiten sind uneins, wie viel)</translation>
    </message>
    <message>
        <source>cleaning fades above about {high:g} % electrode negative</source>
        <translation>die Reinigung lässt über etwa {high:g} % Elektrode negativ nach</translation>
    </message>
    <message>
        <source>up to {high:g} %: {note}</source>
        <translation>bis {high:g} %: {note}</translation>
    </message>
    <message>
        <source>rods printed for sheet of about this thickness, nearest sold size</source>
        <translation>Stäbe, für Blech etwa dieser Dicke gedruckt, nächste verkaufte Größe</translation>
    </message>
    <message>
        <source>about three quarters of the sheet</source>
        <translation>etwa drei Viertel der Blechdicke</translation>
    </message>
    <message>
        <source>the shelf has no {free:g} mm {metal} rod: feed {pace}</source>
        <translation>im Regal fehlt ein Stab {free:g} mm für {metal}: zuführen – {pace}</translation>
    </message>
    <message>
        <source>a thinner one faster</source>
        <translation>einen dünneren schneller</translation>
    </message>
    <message>
        <source>a thicker one slower, it cools the pool more</source>
        <translation>einen dickeren langsamer, er kühlt das Bad mehr</translation>
    </message>
    <message>
        <source>edges of a corner can be tacked without filler but do not always fuse: keep the rod at hand</source>
        <translation>Kanten einer Ecke lassen sich ohne Zusatz heften, verschmelzen aber nicht immer: den Stab bereithalten</translation>
    </message>
    <message>
        <source>{chosen} is not on the shelf, nor is a second choice: buy it</source>
        <translation>{chosen} ist nicht im Regal, auch keine zweite Wahl: kaufen</translation>
    </message>
    <message>
        <source>{chosen} is not on the shelf; {swap} will do, but: {cost}</source>
        <translation>{chosen} ist nicht im Regal; {swap} geht, aber: {cost}</translation>
    </message>
    <message>
        <source>avoid {filler}</source>
        <translation>meiden: {filler}</translation>
    </message>
    <message>
        <source>the bead turns {colour} when anodised ({other_colour} before)</source>
        <translation>Farbe der Raupe nach dem Eloxieren: {colour} (davor: {other_colour})</translation>
    </message>
    <message>
        <source>not for service above {hottest:g} degC</source>
        <translation>nicht für Betrieb über {hottest:g} degC</translation>
    </message>
    <message>
        <source>it is for {use}</source>
        <translation>er ist für {use}</translation>
    </message>
    <message>
        <source>{colour} after anodising</source>
        <translation>nach dem Eloxieren: {colour}</translation>
    </message>
    <message>
        <source>never lighter than {floor}: the regulation&apos;s minimum</source>
        <translation>nie heller als {floor}: das Mindestmaß der Vorschrift</translation>
    </message>
    <message>
        <source>start at {start}; begin too dark, go lighter until the pool is clear, not below {floor}</source>
        <translation>mit {start} beginnen; zu dunkel anfangen, heller werden, bis das Bad klar zu sehen ist, nicht unter {floor}</translation>
    </message>
    <message>
        <source>{rows} rows of about this thickness; documents differ by up to a factor of two</source>
        <translation>{rows} Zeilen etwa dieser Dicke; Dokumente weichen bis zum Faktor zwei voneinander ab</translation>
    </message>
    <message>
        <source>usual flow for this process</source>
        <translation>üblicher Durchfluss für dieses Verfahren</translation>
    </message>
    <message>
        <source>open joint: nothing holds the gas</source>
        <translation>offener Stoß: nichts hält das Gas</translation>
    </message>
    <message>
        <source>outdoors; screen the joint first, flow alone does not help</source>
        <translation>im Freien; erst den Stoß abschirmen, Durchfluss allein hilft nicht</translation>
    </message>
    <message>
        <source>helium is light: more flow for the same cover</source>
        <translation>Helium ist leicht: mehr Durchfluss für gleiche Abdeckung</translation>
    </message>
    <message>
        <source>more is not better: above the band the stream turns rough and pulls air in</source>
        <translation>mehr ist nicht besser: über dem Bereich wird der Strom unruhig und zieht Luft an</translation>
    </message>
    <message>
        <source>the joint falls away from the arc, so argon does not pool: a lens keeps the stream whole</source>
        <translation>der Stoß fällt vom Lichtbogen weg ab, Argon sammelt sich also nicht: eine Linse hält den Gasstrom geschlossen</translation>
    </message>
    <message>
        <source>this metal colours where cover is thin</source>
        <translation>dieses Metall verfärbt sich, wo die Abdeckung dünn ist</translation>
    </message>
    <message>
        <source>moving air: a lens stands it a little better</source>
        <translation>bewegte Luft: eine Linse verträgt sie etwas besser</translation>
    </message>
    <message>
        <source>a standard cup serves, the plates hold the argon; a lens does no harm where fitted</source>
        <translation>eine normale Gasdüse genügt, die Bleche halten das Argon; eine Linse schadet nicht, wo sie sitzt</translation>
    </message>
    <message>
        <source>no lens on the shelf</source>
        <translation>keine Linse im Regal</translation>
    </message>
    <message>
        <source>no lens for {tungsten:g} mm tungsten</source>
        <translation>keine Linse für Wolframelektrode {tungsten:g} mm</translation>
    </message>
    <message>
        <source>{missing}: use the largest cup that goes in and shorten the stick-out</source>
        <translation>{missing}: die größte Gasdüse nehmen, die hineingeht, und den Überstand verkürzen</translation>
    </message>
    <message>
        <source>process factor times volts times amperes over travel</source>
        <translation>Verfahrensfaktor mal Volt mal Ampere durch Geschwindigkeit</translation>
    </message>
    <message>
        <source>no limit stated for this metal; sheet keeps its shape better below this</source>
        <translation>kein Grenzwert für dieses Metall angegeben; Blech behält darunter besser seine Form</translation>
    </message>
    <message>
        <source>at most, measured beside the bead before the next run</source>
        <translation>höchstens, neben der Raupe vor der nächsten Lage gemessen</translation>
    </message>
    <message>
        <source>set the machine as for about {thickness} and let the pedal take it down</source>
        <translation>das Gerät wie für etwa {thickness} einstellen und mit dem Fußregler zurücknehmen</translation>
    </message>
    <message>
        <source>kept between {least:g} and {most:g} times the working current, or the pedal gets too coarse</source>
        <translation>zwischen dem {least:g}- und {most:g}-Fachen des Arbeitsstroms gehalten, sonst wird der Fußregler zu grob</translation>
    </message>
    <message>
        <source>butt in {metal}, flat, {thickness}, {transfer}, {wire:g} mm wire: {current:.0f} A {where}</source>
        <translation>Stumpfstoß in {metal}, Wannenlage, {thickness}, {transfer}, Draht {wire:g} mm: {current:.0f} A {where}</translation>
    </message>
    <message>
        <source>{wire:g} mm wire instead of {usual:g} mm</source>
        <translation>Draht {wire:g} mm statt {usual:g} mm</translation>
    </message>
    <message>
        <source>{alloy} against the family: conductivity, heat capacity and melting range (a third of the computed difference)</source>
        <translation>{alloy} gegen die Familie: Leitfähigkeit, Wärmekapazität und Schmelzbereich (ein Drittel des berechneten Unterschieds)</translation>
    </message>
    <message>
        <source>position {position}: {why}</source>
        <translation>Position {position}: {why}</translation>
    </message>
    <message>
        <source>{wire:g} mm wire</source>
        <translation>Draht {wire:g} mm</translation>
    </message>
    <message>
        <source>{wire:g} mm wire is usual from {lowest:g} A: a thinner one burns steadier here</source>
        <translation>Draht {wire:g} mm ist ab {lowest:g} A üblich: ein dünnerer brennt hier ruhiger</translation>
    </message>
    <message>
        <source>plug rows for top sheets of {ends}</source>
        <translation>Lochnaht-Zeilen für obere Bleche von {ends}</translation>
    </message>
    <message>
        <source>filled in one go, from the middle outward</source>
        <translation>in einem Zug gefüllt, von der Mitte nach außen</translation>
    </message>
    <message>
        <source>one run up to this sheet</source>
        <translation>eine Lage bis zu diesem Blech</translation>
    </message>
    <message>
        <source>one run more for every few millimetres</source>
        <translation>eine Lage mehr je paar Millimeter</translation>
    </message>
    <message>
        <source>bevel to a V of about 60 degrees, or weld from both sides</source>
        <translation>zur V-Naht von etwa 60 Grad anfasen oder von beiden Seiten schweißen</translation>
    </message>
    <message>
        <source>smaller runs, less heat each</source>
        <translation>kleinere Raupen, jede mit weniger Wärme</translation>
    </message>
    <message>
        <source>sheet plug</source>
        <translation>Lochnaht in Blech</translation>
    </message>
    <message>
        <source>structural plug</source>
        <translation>Lochnaht im Stahlbau</translation>
    </message>
    <message>
        <source>plug in {metal}</source>
        <translation>Lochnaht in {metal}</translation>
    </message>
    <message>
        <source>no row gives a hole</source>
        <translation>keine Zeile nennt ein Loch</translation>
    </message>
    <message>
        <source>hole rows cover {thinnest} to {thickest}</source>
        <translation>Lochzeilen reichen von {thinnest} bis {thickest}</translation>
    </message>
    <message>
        <source>centres at least {distance} apart: {times:g} {unit}</source>
        <translation>Mitten mindestens {distance} auseinander: {times:g} {unit}</translation>
    </message>
    <message>
        <source>bright metal, drill to round, take the burr off behind, copper behind, weld from the front; only where the sheet behind is sound</source>
        <translation>blankes Metall, rund bohren, dahinter entgraten, Kupfer dahinter, von vorn schweißen; nur wo das Blech dahinter gesund ist</translation>
    </message>
    <message>
        <source>hole volume over wire volume at the start feed</source>
        <translation>Lochvolumen durch Drahtvolumen beim Startvorschub</translation>
    </message>
    <message>
        <source>longer to bite into the sheet behind</source>
        <translation>länger, um das Blech dahinter zu fassen</translation>
    </message>
    <message>
        <source>solid wire under gas runs electrode positive: steady arc, deep melting</source>
        <translation>Massivdraht unter Gas läuft mit Elektrode positiv: ruhiger Lichtbogen, tiefer Einbrand</translation>
    </message>
    <message>
        <source>electrode negative puts most of the heat into the work and keeps the tungsten sharp</source>
        <translation>Elektrode negativ bringt die meiste Wärme ins Werkstück und hält die Wolframelektrode spitz</translation>
    </message>
    <message>
        <source>helium is hot enough to melt through the oxide on electrode negative; it lifts none of it, so the joint must be freshly brushed</source>
        <translation>Helium ist heiß genug, mit Elektrode negativ durch das Oxid zu schmelzen; es löst davon nichts, also muss der Stoß frisch gebürstet sein</translation>
    </message>
    <message>
        <source>AC: the electrode-positive half lifts the oxide, the electrode-negative half melts the metal</source>
        <translation>AC: die Halbwelle Elektrode positiv löst das Oxid, die Halbwelle Elektrode negativ schmilzt das Metall</translation>
    </message>
    <message>
        <source>a second for every ten amperes, never under {least:g} s; hold the torch still</source>
        <translation>eine Sekunde je zehn Ampere, nie unter {least:g} s; den Brenner ruhig halten</translation>
    </message>
    <message>
        <source>titanium: until it is below {safe:g} degC, with a trailing shield</source>
        <translation>Titan: bis es unter {safe:g} degC ist, mit Schleppdüse</translation>
    </message>
    <message>
        <source>clears air from the torch before the arc</source>
        <translation>spült Luft aus dem Brenner, bevor gezündet wird</translation>
    </message>
    <message>
        <source>by the code that governs the job</source>
        <translation>nach dem Regelwerk, das für die Arbeit gilt</translation>
    </message>
    <message>
        <source>no row for this metal at this thickness: dry the joint and warm it to the hand</source>
        <translation>keine Zeile für dieses Metall bei dieser Dicke: den Stoß trocknen und handwarm machen</translation>
    </message>
    <message>
        <source>none needed; if you warm it, not above {ceiling:g} degC</source>
        <translation>nicht nötig; wird doch angewärmt, nicht über {ceiling:g} degC</translation>
    </message>
    <message>
        <source>the other metal stands {ceiling:g} degC at most: warm this side only</source>
        <translation>das andere Metall verträgt höchstens {ceiling:g} degC: nur diese Seite anwärmen</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>1 to 2 pulses per second, background 30 to 40 %</source>
        <translation>1 bis 2 Impulse je Sekunde, Grundstrom 30 bis 40 %</translation>
    </message>
    <message>
        <source>thick enough to carry a steady arc</source>
        <translation>dick genug für einen gleichmäßigen Lichtbogen</translation>
    </message>
    <message>
        <source>to pace the dabbing hand</source>
        <translation>als Takt für die tupfende Hand</translation>
    </message>
    <message>
        <source>thin sheet overheats: a slow pulse lets the pool freeze a little between dabs</source>
        <translation>dünnes Blech überhitzt: ein langsamer Impuls lässt das Bad zwischen den Tupfern etwas erstarren</translation>
    </message>
    <message>
        <source>{name} has no pulse: blip the current by hand</source>
        <translation>{name} hat keinen Impuls: den Strom von Hand tippen</translation>
    </message>
    <message>
        <source>with a pedal and a quick hand</source>
        <translation>mit Fußregler und schneller Hand</translation>
    </message>
    <message>
        <source>inert gas only: oxygen or carbon dioxide burns the tungsten at once</source>
        <translation>nur Inertgas: Sauerstoff oder Kohlendioxid verbrennt die Wolframelektrode sofort</translation>
    </message>
    <message>
        <source>long enough to see and reach the root</source>
        <translation>lang genug, um die Wurzel zu sehen und zu erreichen</translation>
    </message>
    <message>
        <source>short: best cover</source>
        <translation>kurz: beste Abdeckung</translation>
    </message>
    <message>
        <source>at most {most:g} mm with a gas lens</source>
        <translation>höchstens {most:g} mm mit Gaslinse</translation>
    </message>
    <message>
        <source>at most {most:g} mm without a gas lens</source>
        <translation>höchstens {most:g} mm ohne Gaslinse</translation>
    </message>
    <message>
        <source>ends first, then the middle, then halve each gap</source>
        <translation>erst die Enden, dann die Mitte, dann jede Lücke halbieren</translation>
    </message>
    <message>
        <source>20 to 30 sheet thicknesses apart</source>
        <translation>20 bis 30 Blechdicken auseinander</translation>
    </message>
    <message>
        <source>every {low:.0f} to {high:.0f} mm ({low_in:g} to {high_in:g} in), {shortest:.0f} to {longest:.0f} mm long</source>
        <translation>alle {low:.0f} bis {high:.0f} mm ({low_in:g} bis {high_in:g} in), {shortest:.0f} bis {longest:.0f} mm lang</translation>
    </message>
    <message>
        <source>spacing for this sheet; closer where the joint pulls open</source>
        <translation>Abstand für dieses Blech; enger, wo der Stoß aufgeht</translation>
    </message>
    <message>
        <source>unlike metals: the middle between the two</source>
        <translation>ungleiche Metalle: die Mitte zwischen beiden</translation>
    </message>
    <message>
        <source>brisk hand: start in the upper half of the band</source>
        <translation>zügige Hand: in der oberen Hälfte des Bereichs beginnen</translation>
    </message>
    <message>
        <source>{joint} in {metal}, flat, {thickness}{hand}: {current:.0f} A {where}</source>
        <translation>{joint} in {metal}, Wannenlage, {thickness}{hand}: {current:.0f} A {where}</translation>
    </message>
    <message>
        <source>{hand} hand at the nearest thickness both hands&apos; rows cover</source>
        <translation>Hand {hand}: bei der nächsten Dicke, die Zeilen für beide Hände haben</translation>
    </message>
    <message>
        <source>{hand} hand: these rows go with this travel</source>
        <translation>Hand {hand}: diese Zeilen gehören zu dieser Geschwindigkeit</translation>
    </message>
    <message>
        <source>; a {hand} one would take about {ratio:.2f} times the current</source>
        <translation>; Hand {hand}: etwa das {ratio:.2f}-Fache des Stroms</translation>
    </message>
    <message>
        <source>{polarity} TIG on {metal}</source>
        <translation>{polarity}, WIG an {metal}</translation>
    </message>
    <message>
        <source>no schedule is held; held are {held}</source>
        <translation>keine Schweißtabelle vorhanden; vorhanden sind {held}</translation>
    </message>
    <message>
        <source>the schedules cover {thinnest} to {thickest}</source>
        <translation>die Schweißtabellen reichen von {thinnest} bis {thickest}</translation>
    </message>
    <message>
        <source>T-joint</source>
        <translation>T-Stoß</translation>
    </message>
    <message>
        <source>, unhurried hand</source>
        <translation>, ruhige Hand</translation>
    </message>
    <message>
        <source>, brisk hand</source>
        <translation>, zügige Hand</translation>
    </message>
    <message>
        <source>30 to 45 deg cone, small flat</source>
        <translation>Kegel 30 bis 45 Grad, kleine Abflachung</translation>
    </message>
    <message>
        <source>20 to 30 deg cone, small flat</source>
        <translation>Kegel 20 bis 30 Grad, kleine Abflachung</translation>
    </message>
    <message>
        <source>{angle:.0f} deg cone, {flat:g} mm flat</source>
        <translation>Kegel {angle:.0f} Grad, Abflachung {flat:g} mm</translation>
    </message>
    <message>
        <source>a blunted point keeps its shape on a square wave; a large ball wanders and is for pure tungsten</source>
        <translation>eine gestumpfte Spitze behält an der Rechteckwelle ihre Form; eine große Kugel wandert und ist für reines Wolfram</translation>
    </message>
    <message>
        <source>flat of about a third of the diameter, ground lengthwise</source>
        <translation>Abflachung etwa ein Drittel des Durchmessers, längs geschliffen</translation>
    </message>
    <message>
        <source>about two and a half diameters long</source>
        <translation>etwa zweieinhalb Durchmesser lang</translation>
    </message>
    <message>
        <source>this cone is rated {low:.0f} to {high:.0f} A; a sharper one is softer on thin edges, a blunter one lasts</source>
        <translation>dieser Kegel verträgt {low:.0f} bis {high:.0f} A; ein spitzerer ist sanfter an dünnen Kanten, ein stumpferer hält länger</translation>
    </message>
    <message>
        <source>nozzle 13 to 16 mm off; the tip a little inside it</source>
        <translation>Gasdüse 13 bis 16 mm Abstand; die Stromdüse etwas darin zurück</translation>
    </message>
    <message>
        <source>close: the wire heats less before it melts, the current stays up</source>
        <translation>nah: der Draht erwärmt sich weniger, bevor er schmilzt, der Strom bleibt hoch</translation>
    </message>
    <message>
        <source>farther: the tip must not melt</source>
        <translation>weiter: die Stromdüse darf nicht schmelzen</translation>
    </message>
    <message>
        <source>the wire touches and melts off many times a second: little heat, all positions</source>
        <translation>der Draht berührt und schmilzt viele Male je Sekunde ab: wenig Wärme, alle Positionen</translation>
    </message>
    <message>
        <source>large drops: hot and spattery</source>
        <translation>große Tropfen: heiß und spritzend</translation>
    </message>
    <message>
        <source>a fine spray of drops: hot, smooth</source>
        <translation>feiner Sprühregen von Tropfen: heiß, glatt</translation>
    </message>
    <message>
        <source>one drop a pulse</source>
        <translation>ein Tropfen je Impuls</translation>
    </message>
    <message>
        <source>as asked</source>
        <translation>wie gewünscht</translation>
    </message>
    <message>
        <source>aluminium: short circuit stays cold on it, so spray</source>
        <translation>Aluminium: Kurzlichtbogen bleibt darauf kalt, also Sprühlichtbogen</translation>
    </message>
    <message>
        <source>above {thickness} and flat: spray melts in deeper</source>
        <translation>über {thickness} und Wannenlage: Sprühlichtbogen brennt tiefer ein</translation>
    </message>
    <message>
        <source>sheet and out-of-position work: short circuit</source>
        <translation>Blech und Zwangslagen: Kurzlichtbogen</translation>
    </message>
    <message>
        <source>thicker than the short-circuit schedules reach</source>
        <translation>dicker, als die Kurzlichtbogen-Tabellen reichen</translation>
    </message>
    <message>
        <source>MIG on {metal}, {thickness}</source>
        <translation>MIG/MAG an {metal}, {thickness}</translation>
    </message>
    <message>
        <source>TIG, as a lap</source>
        <translation>WIG, als Überlappstoß</translation>
    </message>
    <message>
        <source>no schedule is held for this metal</source>
        <translation>für dieses Metall ist keine Schweißtabelle vorhanden</translation>
    </message>
    <message>
        <source>schedules are held for {transfers}</source>
        <translation>Schweißtabellen sind vorhanden für {transfers}</translation>
    </message>
    <message>
        <source> by MIG, or {other}</source>
        <translation> mit MIG/MAG, oder {other}</translation>
    </message>
    <message>
        <source>no row prints a travel here: a hand&apos;s usual pace</source>
        <translation>keine Zeile nennt hier eine Geschwindigkeit: das übliche Tempo einer Hand</translation>
    </message>
    <message>
        <source>{rows} rows of about this thickness</source>
        <translation>{rows} Zeilen etwa dieser Dicke</translation>
    </message>
    <message>
        <source>{rows} rows print {speed:.1f} mm/s for a brisk hand</source>
        <translation>{rows} Zeilen nennen {speed:.1f} mm/s für eine zügige Hand</translation>
    </message>
    <message>
        <source>an unhurried hand has this share of their current, so by the thin-plate heat balance it travels slower over the same melted width</source>
        <translation>eine ruhige Hand hat diesen Anteil von deren Strom, nach der Wärmebilanz am dünnen Blech geht sie also bei gleicher Schmelzbreite langsamer</translation>
    </message>
    <message>
        <source>AC balanced</source>
        <translation>AC ausgeglichen</translation>
    </message>
    <message>
        <source>nearest to what schedules of this sheet print</source>
        <translation>am nächsten an dem, was Schweißtabellen für dieses Blech drucken</translation>
    </message>
    <message>
        <source>the thickest on hand; its rating ends at {highest:.0f} A: it will spit above that</source>
        <translation>die dickste vorhandene; ihre Belastbarkeit endet bei {highest:.0f} A: darüber spuckt sie</translation>
    </message>
    <message>
        <source>rated {lowest:.0f} to {highest:.0f} A on {polarity}; wanted {start:.0f} A, up to {high:.0f} A</source>
        <translation>belastbar {lowest:.0f} bis {highest:.0f} A bei {polarity}; gewünscht {start:.0f} A, bis {high:.0f} A</translation>
    </message>
    <message>
        <source>a sine wave</source>
        <translation>eine Sinuswelle</translation>
    </message>
    <message>
        <source>only {negative:.0f} % electrode negative</source>
        <translation>nur {negative:.0f} % Elektrode negativ</translation>
    </message>
    <message>
        <source>{what} heats the tungsten more than a balanced square wave: the printed rating less about a quarter is the bound; the farther towards electrode positive, the less it stands</source>
        <translation>{what}: erwärmt die Wolframelektrode mehr als eine ausgeglichene Rechteckwelle; die gedruckte Belastbarkeit abzüglich etwa einem Viertel ist die Grenze; je weiter zu Elektrode positiv, desto weniger verträgt sie</translation>
    </message>
    <message>
        <source>{negative:.0f} % electrode negative: only what balanced waves are rated for counts</source>
        <translation>{negative:.0f} % Elektrode negativ: nur die Belastbarkeit für ausgeglichene Wellen zählt</translation>
    </message>
    <message>
        <source>{oxide} serves AC and DC alike, starts well and is not radioactive</source>
        <translation>{oxide} taugt für AC wie DC, zündet gut und ist nicht radioaktiv</translation>
    </message>
    <message>
        <source>{oxide} is radioactive when ground: keep the dust out of you</source>
        <translation>{oxide} ist beim Schleifen radioaktiv: den Staub nicht in den Körper lassen</translation>
    </message>
    <message>
        <source>on the shelf; {tungsten} would be first choice</source>
        <translation>im Regal; erste Wahl wäre {tungsten}</translation>
    </message>
    <message>
        <source>{colour} band, {code}</source>
        <translation>Ring {colour}, {code}</translation>
    </message>
    <message>
        <source>{colour} band</source>
        <translation>Ring {colour}</translation>
    </message>
    <message>
        <source>, radioactive dust</source>
        <translation>, radioaktiver Staub</translation>
    </message>
    <message>
        <source>{volts:.1f} V and {slope:.1f} V per 100 A, a line through {rows} schedule rows for {transfer} transfer</source>
        <translation>{volts:.1f} V und {slope:.1f} V je 100 A, eine Gerade durch {rows} Tabellenzeilen für {transfer}</translation>
    </message>
    <message>
        <source>set by ear from there: crackle with too little, hiss and undercut with too much</source>
        <translation>von dort nach Gehör: Prasseln bei zu wenig, Zischen und Einbrandkerben bei zu viel</translation>
    </message>
    <message>
        <source>as printed for plugs</source>
        <translation>wie für Lochnähte gedruckt</translation>
    </message>
    <message>
        <source>no row prints a voltage</source>
        <translation>keine Zeile nennt eine Spannung</translation>
    </message>
    <message>
        <source>rows are for {printed}; {gas} runs about {shift:+.1f} V from there</source>
        <translation>Zeilen sind für {printed}; {gas} läuft von dort um etwa {shift:+.1f} V versetzt</translation>
    </message>
    <message>
        <source>{sizes} mm for {transfer} on {metal}</source>
        <translation>{sizes} mm für {transfer} an {metal}</translation>
    </message>
    <message>
        <source>the wire on the machine</source>
        <translation>der Draht am Gerät</translation>
    </message>
    <message>
        <source>the size that schedules of about this thickness use most</source>
        <translation>die Größe, die Schweißtabellen für etwa diese Dicke am häufigsten verwenden</translation>
    </message>
    <message>
        <source>schedules of about this thickness use {usual:g} mm; this one is there</source>
        <translation>Schweißtabellen für etwa diese Dicke verwenden {usual:g} mm; dieser ist da</translation>
    </message>
    <message>
        <source>melting law fitted to {rows} {transfer} rows: {arc:.2f} mm3 per ampere second and {resistance:.1e} mm4 per A2 s over {extension:g} mm of wire</source>
        <translation>Abschmelzgesetz an {rows} Zeilen ({transfer}) angepasst: {arc:.2f} mm3 je Amperesekunde und {resistance:.1e} mm4 je A2 s über {extension:g} mm Draht</translation>
    </message>
    <message>
        <source>at the start current; give or take {spread:.0%}, more with a longer stick-out</source>
        <translation>beim Startstrom; plus/minus {spread:.0%}, mehr bei längerem freiem Drahtende</translation>
    </message>
    <message>
        <source>brush</source>
        <translation>Bürste</translation>
    </message>
    <message>
        <source>wheel</source>
        <translation>Schleifscheibe</translation>
    </message>
    <message>
        <source>{left:.0f} L of {name} left: {minutes:.0f} minutes at {flow:g} L/min</source>
        <translation>noch {left:.0f} L {name}: {minutes:.0f} Minuten bei {flow:g} L/min</translation>
    </message>
    <message>
        <source>gas left</source>
        <translation>Restgas</translation>
    </message>
    <message>
        <source>{text}, this weld takes {needed:.0f}: refill first</source>
        <translation>{text}, diese Schweißung braucht {needed:.0f}: vorher nachfüllen</translation>
    </message>
    <message>
        <source>{text}: get it refilled</source>
        <translation>{text}: nachfüllen lassen</translation>
    </message>
    <message>
        <source>torch parts</source>
        <translation>Brennerteile</translation>
    </message>
    <message>
        <source>a collet for {tungsten:g} mm tungsten</source>
        <translation>eine Spannhülse für Wolframelektrode {tungsten:g} mm</translation>
    </message>
    <message>
        <source>no collet for {tungsten:g} mm tungsten</source>
        <translation>keine Spannhülse für Wolframelektrode {tungsten:g} mm</translation>
    </message>
    <message>
        <source>no helmet is as dark as shade {low:.0f}: do not strike this arc</source>
        <translation>kein Helm ist so dunkel wie Schutzstufe {low:.0f}: diesen Lichtbogen nicht zünden</translation>
    </message>
    <message>
        <source>helmet</source>
        <translation>Helm</translation>
    </message>
    <message>
        <source>a helmet has shade {start:.0f}</source>
        <translation>ein Helm hat Schutzstufe {start:.0f}</translation>
    </message>
    <message>
        <source>no helmet has shade {start:.0f}: use {nearest}, never lighter than {low:.0f}</source>
        <translation>kein Helm hat Schutzstufe {start:.0f}: {nearest} nehmen, nie heller als {low:.0f}</translation>
    </message>
    <message>
        <source>no {kind} kept for {metals}: one used on another metal dirties the joint</source>
        <translation>nicht eigens vorhanden für {metals}: {kind}; was an anderem Metall benutzt wurde, verschmutzt den Stoß</translation>
    </message>
    <message>
        <source>a {kind} kept for {metals} is there</source>
        <translation>eigens vorhanden für {metals}: {kind}</translation>
    </message>
    <message>
        <source>not on the shelf: {items}</source>
        <translation>nicht im Regal: {items}</translation>
    </message>
    <message>
        <source>the shelf serves</source>
        <translation>das Regal genügt</translation>
    </message>
    <message>
        <source>better, when you buy: {items}</source>
        <translation>besser, beim Kauf: {items}</translation>
    </message>
    <message>
        <source>shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>tungsten {name}, {size:g} mm</source>
        <translation>Wolframelektrode {name}, {size:g} mm</translation>
    </message>
    <message>
        <source>rod {name}, {size:g} mm</source>
        <translation>Schweißstab {name}, {size:g} mm</translation>
    </message>
    <message>
        <source>wire {name}, {size:g} mm</source>
        <translation>Draht {name}, {size:g} mm</translation>
    </message>
    <message>
        <source>gas: {name}</source>
        <translation>Gas: {name}</translation>
    </message>
    <message>
        <source>a gas lens</source>
        <translation>eine Gaslinse</translation>
    </message>
    <message>
        <source>cup {number}</source>
        <translation>Gasdüse {number}</translation>
    </message>
    <message>
        <source>who wires it goes by the local electrical code and the machine&apos;s own plate</source>
        <translation>wer anschließt, richtet sich nach der örtlichen Elektrovorschrift und dem Typenschild des Geräts</translation>
    </message>
    <message>
        <source>{share} {plate:g} as entered</source>
        <translation>{share} {plate:g} wie eingegeben</translation>
    </message>
    <message>
        <source>{share} {low:g} to {high:g} ({grade})</source>
        <translation>{share} {low:g} bis {high:g} ({grade})</translation>
    </message>
    <message>
        <source>{share} {low:g} ({low_grade}) to {high:g} ({high_grade})</source>
        <translation>{share} {low:g} ({low_grade}) bis {high:g} ({high_grade})</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <source> in each phase</source>
        <translation> in jeder Phase</translation>
    </message>
    <message>
        <source>about {taken} A{phases} from {volts:g} V at {amps:.0f} A ({known})</source>
        <translation>etwa {taken} A{phases} aus {volts:g} V bei {amps:.0f} A ({known})</translation>
    </message>
    <message>
        <source>; {name} is made for {made_for} V</source>
        <translation>; {name} ist für {made_for} V gebaut</translation>
    </message>
    <message>
        <source>supply</source>
        <translation>Netzanschluss</translation>
    </message>
    <message>
        <source>{rated:g} A breaker carries up to {taken:.0f} A at {top:.0f} A of arc</source>
        <translation>Automat {rated:g} A trägt bis {taken:.0f} A bei {top:.0f} A Schweißstrom</translation>
    </message>
    <message>
        <source>{rated:g} A breaker: up to {taken:.0f} A at {top:.0f} A of arc is more, {steady:.0f} A over a cycle of ten minutes is not: short beads run, a long one trips it</source>
        <translation>Automat {rated:g} A: bis {taken:.0f} A bei {top:.0f} A Schweißstrom ist mehr, {steady:.0f} A über einen Zyklus von zehn Minuten nicht: kurze Raupen gehen, eine lange löst ihn aus</translation>
    </message>
    <message>
        <source>{rated:g} A breaker trips: {steady:.0f} A over a cycle of ten minutes; less current, or a larger circuit</source>
        <translation>Automat {rated:g} A löst aus: {steady:.0f} A über einen Zyklus von zehn Minuten; weniger Strom oder ein größerer Stromkreis</translation>
    </message>
    <message>
        <source>breaker</source>
        <translation>Automat</translation>
    </message>
    <message>
        <source>cord</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>cord rated {rated:g} A; {taken:.0f} A x {factor:g} for this duty cycle = {needed:.0f} A [{source}]</source>
        <translation>Kabel belastbar {rated:g} A; {taken:.0f} A x {factor:g} für diese Einschaltdauer = {needed:.0f} A [{source}]</translation>
    </message>
    <message>
        <source>: take a thicker one, fully unrolled</source>
        <translation>: ein dickeres nehmen, ganz abgerollt</translation>
    </message>
    <message>
        <source>cord drop</source>
        <translation>Kabelverlust</translation>
    </message>
    <message>
        <source>{length:g} m of {area:g} mm2 takes {lost:.1f} V, {percent:.1f} %</source>
        <translation>{length:g} m von {area:g} mm2 kosten {lost:.1f} V, {percent:.1f} %</translation>
    </message>
    <message>
        <source>: the machine starves; shorter or thicker</source>
        <translation>: das Gerät bekommt zu wenig; kürzer oder dicker</translation>
    </message>
    <message>
        <source>generator: {kva:.1f} kVA at {top:.0f} A, it gives {given:g} kVA; some sets do not stand a generator at all: see the machine&apos;s manual, and run nothing else on it</source>
        <translation>Generator: {kva:.1f} kVA bei {top:.0f} A, er gibt {given:g} kVA; manche Geräte vertragen gar keinen Generator: Handbuch des Geräts beachten, und sonst nichts daran betreiben</translation>
    </message>
    <message>
        <source>generator</source>
        <translation>Generator</translation>
    </message>
    <message>
        <source>{thin} on {thick} draws heat like two pieces of {equal}; aim at the thicker one</source>
        <translation>{thin} auf {thick} zieht Wärme ab wie zwei Teile von {equal}; auf das dickere zielen</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>Metall</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>other_metal</source>
        <translation>anderes Metall</translation>
    </message>
    <message>
        <source>other_thickness</source>
        <translation>andere Dicke</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>Stoß</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>goal</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>Beschichtung</translation>
    </message>
    <message>
        <source>solvent</source>
        <translation>Lösemittel</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Bauteil</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>Hand</translation>
    </message>
    <message>
        <source>gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>Draht</translation>
    </message>
    <message>
        <source>transfer</source>
        <translation>Lichtbogenart</translation>
    </message>
    <message>
        <source>field</source>
        <translation>Feld</translation>
    </message>
    <message>
        <source>{field} once, under one name</source>
        <translation>{field} einmal, unter einem Namen</translation>
    </message>
    <message>
        <source>a metal such as 5052, low-carbon, 304</source>
        <translation>ein Metall wie 5052, low-carbon, 304</translation>
    </message>
    <message>
        <source>a length such as 2 mm, 0.080 in, 14 ga</source>
        <translation>eine Länge wie 2 mm, 0.080 in, 14 ga</translation>
    </message>
    <message>
        <source>a value</source>
        <translation>ein Wert</translation>
    </message>
    <message>
        <source>only with process mig</source>
        <translation>nur mit dem Verfahren mig</translation>
    </message>
    <message>
        <source>a position such as PA, 1G, flat</source>
        <translation>eine Position wie PA, 1G, flat</translation>
    </message>
    <message>
        <source>a gas such as argon, ar-18co2</source>
        <translation>ein Gas wie argon, ar-18co2</translation>
    </message>
    <message>
        <source>either {field} or {in_mm}, not both</source>
        <translation>entweder {field} oder {in_mm}, nicht beides</translation>
    </message>
    <message>
        <source>a number from {lowest:g} to {highest:g}, in mm</source>
        <translation>eine Zahl von {lowest:g} bis {highest:g}, in mm</translation>
    </message>
    <message>
        <source>{low:g} to {high:g} {unit}</source>
        <translation>{low:g} bis {high:g} {unit}</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>{error}; there is no last good copy, so no machine is stated</source>
        <translation>{error}; es gibt keine letzte gute Kopie, also ist kein Gerät angegeben</translation>
    </message>
    <message>
        <source>{error}; the last good bench, of {day}, stays in use</source>
        <translation>{error}; die letzte gute Werkbank, von {day}, bleibt in Gebrauch</translation>
    </message>
    <message>
        <source>was changed while it was read; try again</source>
        <translation>wurde während des Lesens geändert; nochmals versuchen</translation>
    </message>
    <message>
        <source>cannot be read: {error}</source>
        <translation>ist nicht lesbar: {error}</translation>
    </message>
    <message>
        <source>; nearest: {near}</source>
        <translation>; nächstliegend: {near}</translation>
    </message>
    <message>
        <source>unknown field {field}; allowed: {allowed}{hint}</source>
        <translation>unbekanntes Feld {field}; erlaubt: {allowed}{hint}</translation>
    </message>
    <message>
        <source>machines: at least one, with name and processes</source>
        <translation>machines: mindestens eins, mit name und processes</translation>
    </message>
    <message>
        <source>two machines are called {name}</source>
        <translation>zwei Geräte heißen {name}</translation>
    </message>
    <message>
        <source>lines such as - {current_a: 200, percent: 30}</source>
        <translation>Zeilen wie - {current_a: 200, percent: 30}</translation>
    </message>
    <message>
        <source>expected {example}</source>
        <translation>erwartet: {example}</translation>
    </message>
    <message>
        <source>is missing: a few words, such as 200 A AC/DC TIG, 230 V</source>
        <translation>fehlt: ein paar Wörter, wie 200 A AC/DC TIG, 230 V</translation>
    </message>
    <message>
        <source>{field}.name {words}</source>
        <translation>{field}.name {words}</translation>
    </message>
    <message>
        <source>missing; allowed: [tig], [mig] or [tig, mig]</source>
        <translation>fehlt; erlaubt: [tig], [mig] oder [tig, mig]</translation>
    </message>
    <message>
        <source>{field}.processes is {words}</source>
        <translation>{field}.processes ist {words}</translation>
    </message>
    <message>
        <source>{field}.{low_field} {low:g} is above {high_field} {high:g}</source>
        <translation>{field}.{low_field} {low:g} liegt über {high_field} {high:g}</translation>
    </message>
    <message>
        <source>{field} is missing</source>
        <translation>{field} fehlt</translation>
    </message>
    <message>
        <source>a few words, please</source>
        <translation>ein paar Wörter bitte</translation>
    </message>
    <message>
        <source>{shown} is not usable; allowed: yes, no</source>
        <translation>{shown} ist nicht brauchbar; erlaubt: yes, no</translation>
    </message>
    <message>
        <source>a number from {lowest:g} to {highest:g}</source>
        <translation>eine Zahl von {lowest:g} bis {highest:g}</translation>
    </message>
    <message>
        <source>{shown} is not usable; allowed: {allowed}</source>
        <translation>{shown} ist nicht brauchbar; erlaubt: {allowed}</translation>
    </message>
    <message>
        <source>{value} is not usable; allowed: {allowed}</source>
        <translation>{value} ist nicht brauchbar; erlaubt: {allowed}</translation>
    </message>
    <message>
        <source>{value} is not usable; allowed: a whole {what}</source>
        <translation>{value} ist nicht brauchbar; erlaubt: ganze Zahl: {what}</translation>
    </message>
    <message>
        <source>expected a list in brackets, such as [a, b]</source>
        <translation>eine Liste in Klammern erwartet, wie [a, b]</translation>
    </message>
    <message>
        <source>{value} is not sold; allowed: {sold}; nearest: {near} mm</source>
        <translation>{value} wird nicht verkauft; erlaubt: {sold}; nächstliegend: {near} mm</translation>
    </message>
    <message>
        <source>&apos;name: value&apos; lines below it</source>
        <translation>Zeilen &apos;name: value&apos; darunter</translation>
    </message>
    <message>
        <source>unknown field {field}; {allowed}</source>
        <translation>unbekanntes Feld {field}; {allowed}</translation>
    </message>
    <message>
        <source>{shown} is not usable; {allowed}</source>
        <translation>{shown} ist nicht brauchbar; {allowed}</translation>
    </message>
    <message>
        <source>allowed: {words}</source>
        <translation>erlaubt: {words}</translation>
    </message>
    <message>
        <source>such as {name: dial, marks: {1: 1.5, 10: 12}}</source>
        <translation>wie {name: dial, marks: {1: 1.5, 10: 12}}</translation>
    </message>
    <message>
        <source>marks are missing, {example}</source>
        <translation>marks fehlen, {example}</translation>
    </message>
    <message>
        <source>only wire_feed has a choice of units</source>
        <translation>nur wire_feed hat eine Wahl der Einheit</translation>
    </message>
    <message>
        <source>{value} is not usable; allowed: {lowest:g} to {highest:g} {unit}</source>
        <translation>{value} ist nicht brauchbar; erlaubt: {lowest:g} bis {highest:g} {unit}</translation>
    </message>
    <message>
        <source>at least two marks, so that what lies between can be read</source>
        <translation>mindestens zwei Marken, damit lesbar wird, was dazwischenliegt</translation>
    </message>
    <message>
        <source>two marks mean the same figure</source>
        <translation>zwei Marken bedeuten denselben Wert</translation>
    </message>
    <message>
        <source>figures must rise or fall all the way along a numbered scale</source>
        <translation>die Werte müssen entlang einer bezifferten Skala durchgehend steigen oder fallen</translation>
    </message>
    <message>
        <source>cup number</source>
        <translation>Gasdüsennummer</translation>
    </message>
    <message>
        <source>shade</source>
        <translation>Schutzstufe</translation>
    </message>
    <message>
        <source>{value!s:.40} is not usable; allowed: a shade such as 10, or a range such as 9-13</source>
        <translation>{value!s:.40} ist nicht brauchbar; erlaubt: eine Schutzstufe wie 10, oder ein Bereich wie 9-13</translation>
    </message>
    <message>
        <source>{value} runs backwards</source>
        <translation>{value} läuft rückwärts</translation>
    </message>
    <message>
        <source>options with their values; one with a blank in it in quotes, as in --thickness &quot;2 mm&quot;</source>
        <translation>Optionen mit ihren Werten; einer mit Leerzeichen in Anführungszeichen, wie in --thickness &quot;2 mm&quot;</translation>
    </message>
    <message>
        <source>usage: </source>
        <translation>Aufruf: </translation>
    </message>
    <message>
        <source>positional arguments</source>
        <translation>feste Argumente</translation>
    </message>
    <message>
        <source>options</source>
        <translation>Optionen</translation>
    </message>
    <message>
        <source>show this help message and exit</source>
        <translation>diese Hilfe zeigen und beenden</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>one value, as in {option}=VALUE</source>
        <translation>ein Wert, wie in {option}=VALUE</translation>
    </message>
    <message>
        <source>argument {option}: ignored explicit argument {value}</source>
        <translation>Argument {option}: überzählige Angabe {value}</translation>
    </message>
    <message>
        <source>the following arguments are required: {names}</source>
        <translation>folgende Argumente sind nötig: {names}</translation>
    </message>
    <message>
        <source>command line</source>
        <translation>Befehlszeile</translation>
    </message>
    <message>
        <source>{prog} --help lists what it takes</source>
        <translation>{prog} --help zählt auf, was angenommen wird</translation>
    </message>
    <message>
        <source>one of its options (--help lists them)</source>
        <translation>eine der Optionen (--help zählt sie auf)</translation>
    </message>
    <message>
        <source>given once</source>
        <translation>einmal angegeben</translation>
    </message>
    <message>
        <source>for every command</source>
        <translation>für jeden Befehl</translation>
    </message>
    <message>
        <source>print JSON, always metric</source>
        <translation>JSON ausgeben, immer metrisch</translation>
    </message>
    <message>
        <source>units to read bare numbers in and to show</source>
        <translation>Einheiten, in denen bloße Zahlen gelesen und Werte gezeigt werden</translation>
    </message>
    <message>
        <source>your machine and shelf, a YAML file</source>
        <translation>eigenes Gerät und Regal, eine YAML-Datei</translation>
    </message>
    <message>
        <source>another log than your own</source>
        <translation>ein anderes Schweißbuch als das eigene</translation>
    </message>
    <message>
        <source>language of the words</source>
        <translation>Sprache der Worte</translation>
    </message>
    <message>
        <source>one JSON object, such as {&quot;process&quot;: &quot;tig&quot;, &quot;metal&quot;: &quot;5052&quot;, &quot;thickness_mm&quot;: 2, &quot;joint&quot;: &quot;butt&quot;}</source>
        <translation>ein JSON-Objekt, wie {&quot;process&quot;: &quot;tig&quot;, &quot;metal&quot;: &quot;5052&quot;, &quot;thickness_mm&quot;: 2, &quot;joint&quot;: &quot;butt&quot;}</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>more than {longest_bytes} MB</source>
        <translation>mehr als {longest_bytes} MB</translation>
    </message>
    <message>
        <source>a byte that is not UTF-8 (byte {place})</source>
        <translation>ein Byte, das kein UTF-8 ist (Byte {place})</translation>
    </message>
    <message>
        <source>JSON nested too deeply</source>
        <translation>JSON zu tief verschachtelt</translation>
    </message>
    <message>
        <source>not JSON ({error})</source>
        <translation>kein JSON ({error})</translation>
    </message>
    <message>
        <source>standard input</source>
        <translation>Standardeingabe</translation>
    </message>
    <message>
        <source>is closed</source>
        <translation>ist geschlossen</translation>
    </message>
    <message>
        <source>the same key twice</source>
        <translation>derselbe Schlüssel zweimal</translation>
    </message>
    <message>
        <source>each key once</source>
        <translation>jeder Schlüssel einmal</translation>
    </message>
    <message>
        <source>finite numbers</source>
        <translation>endliche Zahlen</translation>
    </message>
    <message>
        <source>How wide and deep given settings melt in a joint, how near they are to burning through, and how fast the weld cools. Conduction only, with its error.</source>
        <translation>Wie breit und tief gegebene Einstellungen in einem Stoß aufschmelzen, wie nah am Durchbrand sie liegen und wie schnell die Schweißung abkühlt. Nur Wärmeleitung, mit ihrem Fehler.</translation>
    </message>
    <message>
        <source>a current such as 90 A</source>
        <translation>ein Strom wie 90 A</translation>
    </message>
    <message>
        <source>a voltage such as 12.5 V</source>
        <translation>eine Spannung wie 12.5 V</translation>
    </message>
    <message>
        <source>a temperature such as 100 C</source>
        <translation>eine Temperatur wie 100 C</translation>
    </message>
    <message>
        <source>a frequency such as 120 Hz</source>
        <translation>eine Frequenz wie 120 Hz</translation>
    </message>
    <message>
        <source>percent electrode negative, such as 70 %</source>
        <translation>Prozent Elektrode negativ, wie 70 %</translation>
    </message>
    <message>
        <source>settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>amperes</source>
        <translation>Ampere</translation>
    </message>
    <message>
        <source>travel speed: 5 mm/s, 12 ipm, 300 mm/min</source>
        <translation>Schweißgeschwindigkeit: 5 mm/s, 12 ipm, 300 mm/min</translation>
    </message>
    <message>
        <source>arc voltage (left out: the process&apos;s conventional load line)</source>
        <translation>Lichtbogenspannung (weggelassen: die genormte Arbeitskennlinie des Verfahrens)</translation>
    </message>
    <message>
        <source>temperature of the parts, in degrees C unless F is said (default 20 C)</source>
        <translation>Temperatur der Teile, in Grad C, sofern nicht F dabeisteht (Vorgabe 20 C)</translation>
    </message>
    <message>
        <source>none, or bar: a metal bar clamped behind the joint; a trend only</source>
        <translation>none, oder bar: eine Metallschiene, hinter dem Stoß gespannt; nur eine Tendenz</translation>
    </message>
    <message>
        <source>AC frequency, hertz; a trend only</source>
        <translation>AC-Frequenz, Hertz; nur eine Tendenz</translation>
    </message>
    <message>
        <source>AC balance, percent electrode negative; a trend only</source>
        <translation>AC-Balance, Prozent Elektrode negativ; nur eine Tendenz</translation>
    </message>
    <message>
        <source>a travel speed such as 5 mm/s, 12 ipm, 300 mm/min</source>
        <translation>eine Schweißgeschwindigkeit wie 5 mm/s, 12 ipm, 300 mm/min</translation>
    </message>
    <message>
        <source>Your machines and shelf: init, show, check. Every card is fitted to the machine in use.</source>
        <translation>Eigene Geräte und Regal: init, show, check. Jede Karte wird dem benutzten Gerät angepasst.</translation>
    </message>
    <message>
        <source>with init: a machine to start from; may be given more than once (a wrong name lists them)</source>
        <translation>mit init: ein Gerät als Anfang; mehrfach angebbar (ein falscher Name zählt sie auf)</translation>
    </message>
    <message>
        <source>only with init</source>
        <translation>nur mit init</translation>
    </message>
    <message>
        <source>a file that is not there yet; yours is left as it is</source>
        <translation>eine Datei, die es noch nicht gibt; die vorhandene bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>written: {path}
Edit it to match your rating plates and shelf, then: welds bench check</source>
        <translation>geschrieben: {path}
An eigene Typenschilder und Regal anpassen, dann: welds bench check</translation>
    </message>
    <message>
        <source>no bench yet, so no machine limits a card; welds bench init writes {path}</source>
        <translation>noch keine Werkbank, also begrenzt kein Gerät eine Karte; welds bench init schreibt {path}</translation>
    </message>
    <message>
        <source>no mistakes found: {path}</source>
        <translation>keine Fehler gefunden: {path}</translation>
    </message>
    <message>
        <source>Flat length of any sequence of bends, with bend lines, allowances and the least radius. Angles are turned through: 90 is a square bend, a minus bends the other way.</source>
        <translation>Gestreckte Länge beliebiger Biegefolgen, mit Biegelinien, Zugaben und kleinstem Radius. Winkel sind Biegewinkel: 90 ist eine rechtwinklige Biegung, ein Minus biegt andersherum.</translation>
    </message>
    <message>
        <source>written: {file}</source>
        <translation>geschrieben: {file}</translation>
    </message>
    <message>
        <source>the part</source>
        <translation>das Teil</translation>
    </message>
    <message>
        <source>catalogue id with its temper: 5052-H32, 6061-T6, low-carbon, 304</source>
        <translation>Katalogkennung mit Zustand: 5052-H32, 6061-T6, low-carbon, 304</translation>
    </message>
    <message>
        <source>2 mm, 0.080 in, 14 ga</source>
        <translation>2 mm, 0.080 in, 14 ga</translation>
    </message>
    <message>
        <source>inside radius, one for all bends or one each: 3 mm or 3,3,5 mm</source>
        <translation>Innenradius, einer für alle Biegungen oder je einer: 3 mm oder 3,3,5 mm</translation>
    </message>
    <message>
        <source>lengths in order: 30,300,30 mm</source>
        <translation>Längen der Reihe nach: 30,300,30 mm</translation>
    </message>
    <message>
        <source>angles in order: 90,90; a minus bends the other way</source>
        <translation>Winkel der Reihe nach: 90,90; ein Minus biegt andersherum</translation>
    </message>
    <message>
        <source>what the legs are measured to: outside, inside, overall (default outside)</source>
        <translation>worauf die Schenkel gemessen sind: outside, inside, overall (Vorgabe outside)</translation>
    </message>
    <message>
        <source>the side that is not folded, for the drawing</source>
        <translation>die nicht gebogene Seite, für die Zeichnung</translation>
    </message>
    <message>
        <source>bend line to the rolling direction: across or along (default across)</source>
        <translation>Biegelinie zur Walzrichtung: across (quer) oder along (längs) (Vorgabe across)</translation>
    </message>
    <message>
        <source>K, where you know it</source>
        <translation>K-Faktor, falls bekannt</translation>
    </message>
    <message>
        <source>one bend measured on your brake: flat=100 mm; legs=52 x 51.5 mm; angle=90; radius=2 mm</source>
        <translation>eine auf der eigenen Abkantbank gemessene Biegung: flat=100 mm; legs=52 x 51.5 mm; angle=90; radius=2 mm</translation>
    </message>
    <message>
        <source>a name for your brake: keeps the K of --test-bend, or uses the one kept</source>
        <translation>ein Name für die Abkantbank: merkt den K-Faktor von --test-bend, oder nimmt den gemerkten</translation>
    </message>
    <message>
        <source>how the blank comes out</source>
        <translation>wie der Zuschnitt ausgegeben wird</translation>
    </message>
    <message>
        <source>a page with every figure</source>
        <translation>eine Seite mit allen Werten</translation>
    </message>
    <message>
        <source>drawing at full size for a cutter</source>
        <translation>Zeichnung in Originalgröße für eine Schneidanlage</translation>
    </message>
    <message>
        <source>drawing at full size, with a ruler to check the print by</source>
        <translation>Zeichnung in Originalgröße, mit Lineal zum Prüfen des Ausdrucks</translation>
    </message>
    <message>
        <source>the same on one sheet as large as it needs</source>
        <translation>dasselbe auf einem Blatt, so groß wie nötig</translation>
    </message>
    <message>
        <source>metal, thickness, legs; and angles and radius for a bend</source>
        <translation>Metall, Dicke, Schenkel; und für eine Biegung Winkel und Radius</translation>
    </message>
    <message>
        <source>{angles} for {legs} legs, such as 90</source>
        <translation>{angles} für {legs} Schenkel, wie 90</translation>
    </message>
    <message>
        <source>the inside radius of the bends, such as 3 mm</source>
        <translation>der Innenradius der Biegungen, wie 3 mm</translation>
    </message>
    <message>
        <source>{number} radii</source>
        <translation>{number} Radien</translation>
    </message>
    <message>
        <source>one for all, or one for each of {number} bends</source>
        <translation>einer für alle, oder je einer für {number} Biegungen</translation>
    </message>
    <message>
        <source>K, or a test bend or brake, not both</source>
        <translation>K-Faktor, oder Probebiegung oder Abkantbank, nicht beides</translation>
    </message>
    <message>
        <source>given</source>
        <translation>gegeben</translation>
    </message>
    <message>
        <source>a number such as 0.42</source>
        <translation>eine Zahl wie 0.42</translation>
    </message>
    <message>
        <source>test bend</source>
        <translation>Probebiegung</translation>
    </message>
    <message>
        <source>test bend on {brake}</source>
        <translation>Probebiegung auf {brake}</translation>
    </message>
    <message>
        <source>A set-up for one joint, with ranges, reasons and sources. Read the cautions first.</source>
        <translation>Eine Einstellung für einen Stoß, mit Bereichen, Gründen und Quellen. Erst die Warnhinweise lesen.</translation>
    </message>
    <message>
        <source>requests on standard input only; leave that option out</source>
        <translation>Anfragen nur auf der Standardeingabe; diese Option weglassen</translation>
    </message>
    <message>
        <source>how the card comes out</source>
        <translation>wie die Karte ausgegeben wird</translation>
    </message>
    <message>
        <source>print plain text (what happens by itself)</source>
        <translation>reinen Text ausgeben (geschieht von selbst)</translation>
    </message>
    <message>
        <source>with the chain of reasons below each figure</source>
        <translation>mit der Begründungskette unter jedem Wert</translation>
    </message>
    <message>
        <source>write one page to tape to the machine</source>
        <translation>eine Seite schreiben, um sie ans Gerät zu kleben</translation>
    </message>
    <message>
        <source>write Markdown</source>
        <translation>Markdown schreiben</translation>
    </message>
    <message>
        <source>one JSON request a line on standard input, one answer a line out</source>
        <translation>je Zeile eine JSON-Anfrage auf der Standardeingabe, je Zeile eine Antwort</translation>
    </message>
    <message>
        <source>Start and range of current for one metal and process: thickness down, joint across.</source>
        <translation>Startwert und Bereich des Stroms für ein Metall und Verfahren: Dicke nach unten, Stoß quer.</translation>
    </message>
    <message>
        <source>how the chart comes out</source>
        <translation>wie die Tafel ausgegeben wird</translation>
    </message>
    <message>
        <source>one line a cell, metric</source>
        <translation>eine Zeile je Zelle, metrisch</translation>
    </message>
    <message>
        <source>a page to hang on the wall</source>
        <translation>eine Seite zum Aufhängen</translation>
    </message>
    <message>
        <source>a Markdown table</source>
        <translation>eine Markdown-Tabelle</translation>
    </message>
    <message>
        <source>Set-ups side by side: any option given more than once makes columns, as in --joint butt --joint tee. The first column is the base that the others are held against.</source>
        <translation>Einstellungen nebeneinander: jede mehrfach angegebene Option macht Spalten, wie in --joint butt --joint tee. Die erste Spalte ist die Basis, mit der die anderen verglichen werden.</translation>
    </message>
    <message>
        <source>how the comparison comes out</source>
        <translation>wie der Vergleich ausgegeben wird</translation>
    </message>
    <message>
        <source>leave out what is the same in all</source>
        <translation>weglassen, was in allen gleich ist</translation>
    </message>
    <message>
        <source>one line a setting and column, metric</source>
        <translation>eine Zeile je Einstellung und Spalte, metrisch</translation>
    </message>
    <message>
        <source>one page</source>
        <translation>eine Seite</translation>
    </message>
    <message>
        <source>Markdown tables</source>
        <translation>Markdown-Tabellen</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>2 or more: give an option twice, as in --joint butt --joint tee</source>
        <translation>2 oder mehr: eine Option zweimal angeben, wie in --joint butt --joint tee</translation>
    </message>
    <message>
        <source>at most {most} side by side; any number with --json or --csv</source>
        <translation>höchstens {most} nebeneinander; beliebig viele mit --json oder --csv</translation>
    </message>
    <message>
        <source>Without a name, the faults that a weld can have and what they look like; with one, causes and remedies, and what each would change on the card. A crack in what carries load is a qualified welder&apos;s.</source>
        <translation>Ohne Namen die Fehler, die eine Schweißung haben kann, und wie sie aussehen; mit Namen Ursachen und Abhilfen, und was jede auf der Karte ändern würde. Ein Riss in etwas, das Last trägt, ist Sache eines geprüften Schweißers.</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>with {process}: {allowed}</source>
        <translation>mit {process}: {allowed}</translation>
    </message>
    <message>
        <source>A whole job from a YAML file: pieces, joints, repairs, in the order to do them.</source>
        <translation>Ein ganzer Auftrag aus einer YAML-Datei: Teile, Stöße, Reparaturen, in der Reihenfolge der Arbeit.</translation>
    </message>
    <message>
        <source>say what is wrong in a job file</source>
        <translation>sagen, was in einer Auftragsdatei falsch ist</translation>
    </message>
    <message>
        <source>order, cut list, blanks, cards, tack plans, materials; --pdf writes the packet</source>
        <translation>Reihenfolge, Zuschnittliste, Zuschnitte, Karten, Heftpläne, Material; --pdf schreibt die Mappe</translation>
    </message>
    <message>
        <source>filler, gas, discs, time, power and cost</source>
        <translation>Zusatz, Gas, Scheiben, Zeit, Strom und Kosten</translation>
    </message>
    <message>
        <source>print the demo job (invented), or write it to FILE</source>
        <translation>den Demo-Auftrag (erfunden) ausgeben, oder in FILE schreiben</translation>
    </message>
    <message>
        <source>a file that is not there yet</source>
        <translation>eine Datei, die es noch nicht gibt</translation>
    </message>
    <message>
        <source>no faults found</source>
        <translation>keine Fehler gefunden</translation>
    </message>
    <message>
        <source>how the plan comes out</source>
        <translation>wie der Plan ausgegeben wird</translation>
    </message>
    <message>
        <source>one page without the cards</source>
        <translation>eine Seite ohne die Karten</translation>
    </message>
    <message>
        <source>the packet: everything, with cards and drawings</source>
        <translation>die Mappe: alles, mit Karten und Zeichnungen</translation>
    </message>
    <message>
        <source>how the list comes out</source>
        <translation>wie die Liste ausgegeben wird</translation>
    </message>
    <message>
        <source>a shopping list</source>
        <translation>eine Einkaufsliste</translation>
    </message>
    <message>
        <source>the job, a YAML file</source>
        <translation>der Auftrag, eine YAML-Datei</translation>
    </message>
    <message>
        <source>a job file; welds job demo prints one to begin with</source>
        <translation>eine Auftragsdatei; welds job demo gibt eine für den Anfang aus</translation>
    </message>
    <message>
        <source>log a weld: options, or JSON on standard input</source>
        <translation>eine Schweißung eintragen: Optionen, oder JSON auf der Standardeingabe</translation>
    </message>
    <message>
        <source>the welds, newest first; filter and page</source>
        <translation>die Schweißungen, neueste zuerst; filtern und blättern</translation>
    </message>
    <message>
        <source>one weld by number or uid</source>
        <translation>eine Schweißung nach Nummer oder uid</translation>
    </message>
    <message>
        <source>change fields of one weld</source>
        <translation>Felder einer Schweißung ändern</translation>
    </message>
    <message>
        <source>take one weld out; answers with how to undo it</source>
        <translation>eine Schweißung herausnehmen; die Antwort sagt, wie es rückgängig wird</translation>
    </message>
    <message>
        <source>take a change back by its token</source>
        <translation>eine Änderung mit ihrem Zeichen zurücknehmen</translation>
    </message>
    <message>
        <source>the past welds most like a request</source>
        <translation>die früheren Schweißungen, die einer Anfrage am ähnlichsten sind</translation>
    </message>
    <message>
        <source>a preliminary procedure sheet of one weld</source>
        <translation>eine vorläufige Schweißanweisung zu einer Schweißung</translation>
    </message>
    <message>
        <source>every weld into FILE.csv or FILE.json</source>
        <translation>alle Schweißungen in FILE.csv oder FILE.json</translation>
    </message>
    <message>
        <source>look at a CSV or JSON file; --accept writes it, all or nothing</source>
        <translation>eine CSV- oder JSON-Datei ansehen; --accept schreibt sie, alles oder nichts</translation>
    </message>
    <message>
        <source>the whole log with its pictures into one FILE</source>
        <translation>das ganze Schweißbuch mit Bildern in eine Datei FILE</translation>
    </message>
    <message>
        <source>make the log what a backup FILE holds; the old one is moved aside</source>
        <translation>das Schweißbuch zu dem machen, was eine Sicherung FILE enthält; das alte wird beiseitegelegt</translation>
    </message>
    <message>
        <source>is the log whole, and what waits to go in</source>
        <translation>ist das Schweißbuch unversehrt, und was wartet auf Eintragung</translation>
    </message>
    <message>
        <source>The log of welds that were made:</source>
        <translation>Das Buch der gemachten Schweißungen:</translation>
    </message>
    <message>
        <source>welds log ACTION --help says more.</source>
        <translation>welds log ACTION --help sagt mehr.</translation>
    </message>
    <message>
        <source>there is no log here yet</source>
        <translation>hier gibt es noch kein Schweißbuch</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>duplicate</source>
        <translation>doppelt</translation>
    </message>
    <message>
        <source>bad</source>
        <translation>fehlerhaft</translation>
    </message>
    <message>
        <source>written: {file} ({count} welds)</source>
        <translation>geschrieben: {file} (Schweißungen: {count})</translation>
    </message>
    <message>
        <source>row {place}: {standing}: {reason}</source>
        <translation>Zeile {place}: {standing}: {reason}</translation>
    </message>
    <message>
        <source>nothing written: put the bad rows right first</source>
        <translation>nichts geschrieben: erst die fehlerhaften Zeilen berichtigen</translation>
    </message>
    <message>
        <source>nothing written yet: repeat with --accept</source>
        <translation>noch nichts geschrieben: mit --accept wiederholen</translation>
    </message>
    <message>
        <source>written; welds log undo {token} takes them out again</source>
        <translation>geschrieben; welds log undo {token} nimmt sie wieder heraus</translation>
    </message>
    <message>
        <source>nothing to write</source>
        <translation>nichts zu schreiben</translation>
    </message>
    <message>
        <source>with restore</source>
        <translation>mit restore</translation>
    </message>
    <message>
        <source>without it</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>restored: {count} welds</source>
        <translation>wiederhergestellte Schweißungen: {count}</translation>
    </message>
    <message>
        <source>the log that was there is now {file}</source>
        <translation>das bisherige Schweißbuch heißt jetzt {file}</translation>
    </message>
    <message>
        <source>backup made: {file}</source>
        <translation>Sicherung gemacht: {file}</translation>
    </message>
    <message>
        <source>{first} to {last} of {total}</source>
        <translation>{first} bis {last} von {total}</translation>
    </message>
    <message>
        <source>none of {total}</source>
        <translation>keine von {total}</translation>
    </message>
    <message>
        <source>nothing alike in the log; {stated}</source>
        <translation>nichts Ähnliches im Schweißbuch; {stated}</translation>
    </message>
    <message>
        <source>family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>worked-well, worked, failed</source>
        <translation>worked-well, worked, failed</translation>
    </message>
    <message>
        <source>what the bead looked like, what you would change</source>
        <translation>wie die Raupe aussah, was zu ändern wäre</translation>
    </message>
    <message>
        <source>when: 2026-03-03 or 2026-03-03T14:05 (now)</source>
        <translation>wann: 2026-03-03 oder 2026-03-03T14:05 (jetzt)</translation>
    </message>
    <message>
        <source>which machine</source>
        <translation>welches Gerät</translation>
    </message>
    <message>
        <source>who</source>
        <translation>wer</translation>
    </message>
    <message>
        <source>lot or heat number of the material</source>
        <translation>Charge oder Schmelze des Werkstoffs</translation>
    </message>
    <message>
        <source>words that have to occur anywhere</source>
        <translation>Wörter, die irgendwo vorkommen müssen</translation>
    </message>
    <message>
        <source>tig or mig</source>
        <translation>tig oder mig</translation>
    </message>
    <message>
        <source>aluminium, carbon-steel, stainless, ...</source>
        <translation>aluminium, carbon-steel, stainless, ...</translation>
    </message>
    <message>
        <source>part of the metal&apos;s name</source>
        <translation>Teil des Metallnamens</translation>
    </message>
    <message>
        <source>butt, tee, lap, ...</source>
        <translation>butt, tee, lap, ...</translation>
    </message>
    <message>
        <source>PA, PB, ...</source>
        <translation>PA, PB, ...</translation>
    </message>
    <message>
        <source>plain name or ISO 6520-1 number</source>
        <translation>einfacher Name oder Nummer nach ISO 6520-1</translation>
    </message>
    <message>
        <source>part of the machine&apos;s name</source>
        <translation>Teil des Gerätenamens</translation>
    </message>
    <message>
        <source>part of the welder&apos;s name</source>
        <translation>Teil des Schweißernamens</translation>
    </message>
    <message>
        <source>part of the lot</source>
        <translation>Teil der Charge</translation>
    </message>
    <message>
        <source>a date, this day included</source>
        <translation>ein Datum, dieser Tag eingeschlossen</translation>
    </message>
    <message>
        <source>at least so thick</source>
        <translation>mindestens so dick</translation>
    </message>
    <message>
        <source>at most so thick</source>
        <translation>höchstens so dick</translation>
    </message>
    <message>
        <source>amperes, at least</source>
        <translation>Ampere, mindestens</translation>
    </message>
    <message>
        <source>amperes, at most</source>
        <translation>Ampere, höchstens</translation>
    </message>
    <message>
        <source>yes: with pictures, no: without</source>
        <translation>yes: mit Bildern, no: ohne</translation>
    </message>
    <message>
        <source>which log</source>
        <translation>welches Schweißbuch</translation>
    </message>
    <message>
        <source>open it to read, change nothing</source>
        <translation>nur zum Lesen öffnen, nichts ändern</translation>
    </message>
    <message>
        <source>what was set and what came of it</source>
        <translation>was eingestellt war und was dabei herauskam</translation>
    </message>
    <message>
        <source>one setting, as the card names it</source>
        <translation>eine Einstellung, wie die Karte sie nennt</translation>
    </message>
    <message>
        <source>short for --set current=A</source>
        <translation>kurz für --set current=A</translation>
    </message>
    <message>
        <source>burn-through, 401, ...</source>
        <translation>burn-through, 401, ...</translation>
    </message>
    <message>
        <source>a picture, copied</source>
        <translation>ein Bild, wird kopiert</translation>
    </message>
    <message>
        <source>which welds</source>
        <translation>welche Schweißungen</translation>
    </message>
    <message>
        <source>made_at (newest first), current_a, ...</source>
        <translation>made_at (neueste zuerst), current_a, ...</translation>
    </message>
    <message>
        <source>smallest or oldest first</source>
        <translation>kleinste oder älteste zuerst</translation>
    </message>
    <message>
        <source>skip so many (0)</source>
        <translation>so viele überspringen (0)</translation>
    </message>
    <message>
        <source>at most so many ({usual})</source>
        <translation>höchstens so viele ({usual})</translation>
    </message>
    <message>
        <source>write one page</source>
        <translation>eine Seite schreiben</translation>
    </message>
    <message>
        <source>write it, if no row is bad</source>
        <translation>schreiben, wenn keine Zeile fehlerhaft ist</translation>
    </message>
    <message>
        <source>a whole number from {least} on</source>
        <translation>eine ganze Zahl ab {least}</translation>
    </message>
    <message>
        <source>uid {uid}, version {version}</source>
        <translation>uid {uid}, Fassung {version}</translation>
    </message>
    <message>
        <source>to {metal}, {thickness}</source>
        <translation>an {metal}, {thickness}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation>Schweißgerät</translation>
    </message>
    <message>
        <source>welder</source>
        <translation>Schweißer</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>Anmerkungen</translation>
    </message>
    <message>
        <source>picture: {name}</source>
        <translation>Bild: {name}</translation>
    </message>
    <message>
        <source>already in the log as number {number}</source>
        <translation>schon im Schweißbuch als Nummer {number}</translation>
    </message>
    <message>
        <source>logged: {weld}</source>
        <translation>eingetragen: {weld}</translation>
    </message>
    <message>
        <source>changed: {weld}</source>
        <translation>geändert: {weld}</translation>
    </message>
    <message>
        <source>removed: {weld}</source>
        <translation>entfernt: {weld}</translation>
    </message>
    <message>
        <source>taken back; welds log undo {token} brings it again</source>
        <translation>zurückgenommen; welds log undo {token} bringt es wieder</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>new pictures</source>
        <translation>neue Bilder</translation>
    </message>
    <message>
        <source>none in a list: log those entries one by one</source>
        <translation>keine in einer Liste: diese Einträge einzeln eintragen</translation>
    </message>
    <message>
        <source>an empty list</source>
        <translation>eine leere Liste</translation>
    </message>
    <message>
        <source>one entry, or a list of some</source>
        <translation>ein Eintrag, oder eine Liste mit einigen</translation>
    </message>
    <message>
        <source>logged {number} welds; welds log undo {token} takes them out again</source>
        <translation>eingetragene Schweißungen: {number}; welds log undo {token} nimmt sie wieder heraus</translation>
    </message>
    <message>
        <source>to undo: welds log undo {token}</source>
        <translation>rückgängig machen: welds log undo {token}</translation>
    </message>
    <message>
        <source>NAME=VALUE, as in --set current=112</source>
        <translation>NAME=VALUE, wie in --set current=112</translation>
    </message>
    <message>
        <source>options, or JSON on standard input</source>
        <translation>Optionen, oder JSON auf der Standardeingabe</translation>
    </message>
    <message>
        <source>more than {size} MB</source>
        <translation>mehr als {size} MB</translation>
    </message>
    <message>
        <source>a set-up for one joint</source>
        <translation>eine Einstellung für einen Stoß</translation>
    </message>
    <message>
        <source>set-ups side by side: joints, metals, thicknesses, processes</source>
        <translation>Einstellungen nebeneinander: Stöße, Metalle, Dicken, Verfahren</translation>
    </message>
    <message>
        <source>a wall chart for one metal and process</source>
        <translation>eine Wandtafel für ein Metall und Verfahren</translation>
    </message>
    <message>
        <source>what given settings melt in a joint: width, depth, burn-through, cooling</source>
        <translation>was gegebene Einstellungen in einem Stoß aufschmelzen: Breite, Tiefe, Durchbrand, Abkühlung</translation>
    </message>
    <message>
        <source>from the looks of a bead to causes and the change of setting</source>
        <translation>vom Aussehen der Raupe zu Ursachen und zur Änderung der Einstellung</translation>
    </message>
    <message>
        <source>flat length of a folded part: bends, least radius, drawing</source>
        <translation>gestreckte Länge eines gebogenen Teils: Biegungen, kleinster Radius, Zeichnung</translation>
    </message>
    <message>
        <source>plug, patch or replace: with the arithmetic</source>
        <translation>Löcher füllen, flicken oder ersetzen: mit der Rechnung</translation>
    </message>
    <message>
        <source>a whole job from a file: check, plan, materials, demo</source>
        <translation>ein ganzer Auftrag aus einer Datei: check, plan, materials, demo</translation>
    </message>
    <message>
        <source>your machines and shelf: init, show, check</source>
        <translation>eigene Geräte und Regal: init, show, check</translation>
    </message>
    <message>
        <source>the log of welds made: add, list, show, edit, similar, export, backup, ...</source>
        <translation>das Buch der gemachten Schweißungen: add, list, show, edit, similar, export, backup, ...</translation>
    </message>
    <message>
        <source>the reference tables: list, show NAME, check [DIR], sources</source>
        <translation>die Nachschlagetabellen: list, show NAME, check [DIR], sources</translation>
    </message>
    <message>
        <source>standard output</source>
        <translation>Standardausgabe</translation>
    </message>
    <message>
        <source>{fault} at {place}</source>
        <translation>{fault} bei {place}</translation>
    </message>
    <message>
        <source>a fault of the program itself, please report it: {fault}</source>
        <translation>ein Fehler des Programms selbst, bitte melden: {fault}</translation>
    </message>
    <message>
        <source>tables {edition}</source>
        <translation>Tabellen {edition}</translation>
    </message>
    <message>
        <source>command</source>
        <translation>Befehl</translation>
    </message>
    <message>
        <source>Open the window.</source>
        <translation>Das Fenster öffnen.</translation>
    </message>
    <message>
        <source>welds opens the window (--log FILE|URL: on another log); with a command it answers here:</source>
        <translation>welds öffnet das Fenster (--log FILE|URL: mit einem anderen Schweißbuch); mit einem Befehl antwortet es hier:</translation>
    </message>
    <message>
        <source>welds COMMAND --help says more.</source>
        <translation>welds COMMAND --help sagt mehr.</translation>
    </message>
    <message>
        <source>{some} and {one}</source>
        <translation>{some} und {one}</translation>
    </message>
    <message>
        <source>output</source>
        <translation>Ausgabe</translation>
    </message>
    <message>
        <source>one of them; give the others a FILE</source>
        <translation>eins davon; den anderen eine FILE geben</translation>
    </message>
    <message>
        <source>Fill the holes, let in a patch or replace the panel: decided with its reasons and the arithmetic. Parts that carry load or whose failure can hurt someone are refused.</source>
        <translation>Löcher füllen, einen Flicken einsetzen oder das Feld ersetzen: entschieden mit Gründen und Rechnung. Teile, die Last tragen oder deren Versagen jemanden verletzen kann, werden abgelehnt.</translation>
    </message>
    <message>
        <source>what is wrong</source>
        <translation>was beschädigt ist</translation>
    </message>
    <message>
        <source>catalogue id: low-carbon, galvanised, 5052, 304</source>
        <translation>Katalogkennung: low-carbon, galvanised, 5052, 304</translation>
    </message>
    <message>
        <source>what the sheet was: 1.2 mm, 0.048 in, 18 ga</source>
        <translation>was das Blech war: 1.2 mm, 0.048 in, 18 ga</translation>
    </message>
    <message>
        <source>what is left of it beside the holes, by micrometer or ultrasound</source>
        <translation>was neben den Löchern davon übrig ist, mit Mikrometer oder Ultraschall</translation>
    </message>
    <message>
        <source>what the holes lie in: 120 x 80 mm</source>
        <translation>worin die Löcher liegen: 120 x 80 mm</translation>
    </message>
    <message>
        <source>sheet behind the holes: sound, thin, none (default none)</source>
        <translation>Blech hinter den Löchern: sound, thin, none (Vorgabe none)</translation>
    </message>
    <message>
        <source>the whole panel&apos;s size, to weigh a patch against a new one</source>
        <translation>Größe des ganzen Felds, um Flicken und neues abzuwägen</translation>
    </message>
    <message>
        <source>what it belongs to: bracket, tank, towing, ...</source>
        <translation>wozu es gehört: bracket, tank, towing, ...</translation>
    </message>
    <message>
        <source>process for the seam of a patch: tig or mig</source>
        <translation>Verfahren für die Naht eines Flickens: tig oder mig</translation>
    </message>
    <message>
        <source>what is on the metal: galvanised, old-paint, sealer, ...; may be given more than once</source>
        <translation>was auf dem Metall ist: galvanised, old-paint, sealer, ...; mehrfach angebbar</translation>
    </message>
    <message>
        <source>it carries load</source>
        <translation>es trägt Last</translation>
    </message>
    <message>
        <source>water stands in or behind it</source>
        <translation>Wasser steht darin oder dahinter</translation>
    </message>
    <message>
        <source>how the answer comes out</source>
        <translation>wie die Antwort ausgegeben wird</translation>
    </message>
    <message>
        <source>a page for the bench</source>
        <translation>eine Seite für die Werkbank</translation>
    </message>
    <message>
        <source>the cut-out at full size, for a cutter</source>
        <translation>der Ausschnitt in Originalgröße, für eine Schneidanlage</translation>
    </message>
    <message>
        <source>holes, cut-out and tacks at full size, with a ruler to check the print by</source>
        <translation>Löcher, Ausschnitt und Heftstellen in Originalgröße, mit Lineal zum Prüfen des Ausdrucks</translation>
    </message>
    <message>
        <source>metal, thickness, holes and region</source>
        <translation>Metall, Dicke, Löcher und Bereich</translation>
    </message>
    <message>
        <source>catalogue id, with or without temper: 5052, 6061-T6, low-carbon, 304</source>
        <translation>Katalogkennung, mit oder ohne Zustand: 5052, 6061-T6, low-carbon, 304</translation>
    </message>
    <message>
        <source>2 mm, 0.080 in, 1/8 in, 14 ga</source>
        <translation>2 mm, 0.080 in, 1/8 in, 14 ga</translation>
    </message>
    <message>
        <source>metal of the second piece, where it differs</source>
        <translation>Metall des zweiten Teils, wenn es abweicht</translation>
    </message>
    <message>
        <source>thickness of the second piece, where it differs</source>
        <translation>Dicke des zweiten Teils, wenn sie abweicht</translation>
    </message>
    <message>
        <source>butt, tee, lap, outside-corner, inside-corner, edge, plug</source>
        <translation>butt, tee, lap, outside-corner, inside-corner, edge, plug</translation>
    </message>
    <message>
        <source>PA, 1G, flat, ... (default PA)</source>
        <translation>PA, 1G, flat, ... (Vorgabe PA)</translation>
    </message>
    <message>
        <source>gap between the pieces</source>
        <translation>Spalt zwischen den Teilen</translation>
    </message>
    <message>
        <source>what the filler should favour: strength, ductility, least-cracking, ...</source>
        <translation>was der Zusatz begünstigen soll: strength, ductility, least-cracking, ...</translation>
    </message>
    <message>
        <source>what is on the metal: galvanised, paint, oil, ...; may be given more than once</source>
        <translation>was auf dem Metall ist: galvanised, paint, oil, ...; mehrfach angebbar</translation>
    </message>
    <message>
        <source>what it was or will be wiped with: acetone, alcohol, chlorinated, unknown-spray</source>
        <translation>womit es abgewischt wurde oder wird: acetone, alcohol, chlorinated, unknown-spray</translation>
    </message>
    <message>
        <source>what the joint belongs to: bracket, tank, towing, ...</source>
        <translation>wozu der Stoß gehört: bracket, tank, towing, ...</translation>
    </message>
    <message>
        <source>indoors, outdoors, enclosed (default indoors)</source>
        <translation>indoors, outdoors, enclosed (Vorgabe indoors)</translation>
    </message>
    <message>
        <source>length of the weld</source>
        <translation>Nahtlänge</translation>
    </message>
    <message>
        <source>unhurried or brisk (default unhurried)</source>
        <translation>unhurried oder brisk (Vorgabe unhurried)</translation>
    </message>
    <message>
        <source>the MIG wire on the machine</source>
        <translation>der MIG-Draht am Gerät</translation>
    </message>
    <message>
        <source>short-circuit, spray, globular, pulsed</source>
        <translation>short-circuit, spray, globular, pulsed</translation>
    </message>
    <message>
        <source>what is to be welded</source>
        <translation>was geschweißt werden soll</translation>
    </message>
    <message>
        <source>The reference tables: list, show NAME, check [DIR], sources [ID].</source>
        <translation>Die Nachschlagetabellen: list, show NAME, check [DIR], sources [ID].</translation>
    </message>
    <message>
        <source>a table&apos;s name, a folder for check, a source&apos;s id</source>
        <translation>Name einer Tabelle, ein Ordner für check, Kennung einer Quelle</translation>
    </message>
    <message>
        <source>with show: every column, as CSV</source>
        <translation>mit show: jede Spalte, als CSV</translation>
    </message>
    <message>
        <source>table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>a table&apos;s name: {names}</source>
        <translation>Name einer Tabelle: {names}</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>an id that `welds tables sources` lists</source>
        <translation>eine Kennung, die `welds tables sources` aufzählt</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Gelesen</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Rests on it</source>
        <translation>Beruht darauf</translation>
    </message>
    <message>
        <source>nothing more</source>
        <translation>nichts weiter</translation>
    </message>
    <message>
        <source>; nearest: {nearest}</source>
        <translation>; nächstliegend: {nearest}</translation>
    </message>
    <message>
        <source>{field}: {given!s:.80} is not usable; allowed: {allowed}{hint}</source>
        <translation>{field}: {given!s:.80} ist nicht brauchbar; erlaubt: {allowed}{hint}</translation>
    </message>
    <message>
        <source>one reading: {readings}</source>
        <translation>eine Lesart: {readings}</translation>
    </message>
    <message>
        <source>; nearest that can be answered: {nearest}</source>
        <translation>; nächstliegend und beantwortbar: {nearest}</translation>
    </message>
    <message>
        <source>stopped; nothing was changed</source>
        <translation>angehalten; nichts wurde geändert</translation>
    </message>
    <message>
        <source>{quantity}: {given} is outside the formula&apos;s range; allowed: {allowed}</source>
        <translation>{quantity}: {given} liegt außerhalb des Formelbereichs; erlaubt: {allowed}</translation>
    </message>
    <message>
        <source>, row {row}</source>
        <translation>, Zeile {row}</translation>
    </message>
    <message>
        <source>, column {column}</source>
        <translation>, Spalte {column}</translation>
    </message>
    <message>
        <source>; what can be done: {offers}</source>
        <translation>; was möglich ist: {offers}</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Umschalt+Tab</translation>
    </message>
    <message>
        <source>Next input, previous input</source>
        <translation>Nächste Eingabe, vorige Eingabe</translation>
    </message>
    <message>
        <source>Arrow keys</source>
        <translation>Pfeiltasten</translation>
    </message>
    <message>
        <source>Another joint, process, place or hand; a little more or less on the slider</source>
        <translation>Anderer Stoß, anderes Verfahren, anderer Ort, andere Hand; etwas mehr oder weniger am Schieber</translation>
    </message>
    <message>
        <source>Up, Down on the slider</source>
        <translation>Auf, Ab am Schieber</translation>
    </message>
    <message>
        <source>Next gauge mark</source>
        <translation>Nächste Lehrenmarke</translation>
    </message>
    <message>
        <source>Down in the metal field</source>
        <translation>Ab im Metallfeld</translation>
    </message>
    <message>
        <source>Open the list, go into it</source>
        <translation>Die Liste öffnen, hineingehen</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Tick a box, open or close a Why</source>
        <translation>Ein Kästchen ankreuzen, ein Warum öffnen oder schließen</translation>
    </message>
    <message>
        <source>Alt with an underlined letter</source>
        <translation>Alt mit unterstrichenem Buchstaben</translation>
    </message>
    <message>
        <source>Straight to that input</source>
        <translation>Direkt zu dieser Eingabe</translation>
    </message>
    <message>
        <source>Program: welds {version}</source>
        <translation>Programm: welds {version}</translation>
    </message>
    <message>
        <source>Python {python}, Qt {qt}</source>
        <translation>Python {python}, Qt {qt}</translation>
    </message>
    <message>
        <source>Licence: Apache-2.0. Qt and PySide6 are used under the LGPL version 3.</source>
        <translation>Lizenz: Apache-2.0. Qt und PySide6 werden unter der LGPL Version 3 verwendet.</translation>
    </message>
    <message>
        <source>Tables: {tables} with {rows} rows from {sources} sources</source>
        <translation>Tabellen: {tables} mit {rows} Zeilen aus {sources} Quellen</translation>
    </message>
    <message>
        <source>Tables as shipped: {edition}</source>
        <translation>Tabellen wie ausgeliefert: {edition}</translation>
    </message>
    <message>
        <source>printed source</source>
        <translation>gedruckte Quelle</translation>
    </message>
    <message>
        <source>quoted source</source>
        <translation>zitierte Quelle</translation>
    </message>
    <message>
        <source>worked out</source>
        <translation>hergeleitet</translation>
    </message>
    <message>
        <source>shop practice</source>
        <translation>Werkstattpraxis</translation>
    </message>
    <message>
        <source>{setting} now {figure}</source>
        <translation>{setting} jetzt {figure}</translation>
    </message>
    <message>
        <source>Changed for {faults}: {moved}.</source>
        <translation>Geändert wegen {faults}: {moved}.</translation>
    </message>
    <message>
        <source>picture file</source>
        <translation>Bilddatei</translation>
    </message>
    <message>
        <source>a name that ends in .png or .svg</source>
        <translation>ein Name, der auf .png oder .svg endet</translation>
    </message>
    <message>
        <source>stick-out</source>
        <translation>Überstand</translation>
    </message>
    <message>
        <source>arc length</source>
        <translation>Bogenlänge</translation>
    </message>
    <message>
        <source>cup, {size}</source>
        <translation>Gasdüse, {size}</translation>
    </message>
    <message>
        <source>no. {number}</source>
        <translation>Nr. {number}</translation>
    </message>
    <message>
        <source>gas lens</source>
        <translation>Gaslinse</translation>
    </message>
    <message>
        <source>tungsten, {angle}°</source>
        <translation>Wolfram, {angle}°</translation>
    </message>
    <message>
        <source>tip to work</source>
        <translation>Stromdüsenabst.</translation>
    </message>
    <message>
        <source>nozzle</source>
        <translation>Gasdüse</translation>
    </message>
    <message>
        <source>contact tip</source>
        <translation>Stromdüse</translation>
    </message>
    <message>
        <source>hole</source>
        <translation>Loch</translation>
    </message>
    <message>
        <source>backing bar</source>
        <translation>Badsicherung</translation>
    </message>
    <message>
        <source>argon</source>
        <translation>Argon</translation>
    </message>
    <message>
        <source>behind the joint</source>
        <translation>hinter dem Stoß</translation>
    </message>
    <message>
        <source>filler, at {angle}°</source>
        <translation>Zusatz, bei {angle}°</translation>
    </message>
    <message>
        <source>{tool} leans back</source>
        <translation>{tool} nach hinten geneigt</translation>
    </message>
    <message>
        <source>{tool} leans ahead</source>
        <translation>{tool} nach vorn geneigt</translation>
    </message>
    <message>
        <source>{angle}°, push</source>
        <translation>{angle}°, stechend</translation>
    </message>
    <message>
        <source>{angle}°, drag</source>
        <translation>{angle}°, schleppend</translation>
    </message>
    <message>
        <source>upright</source>
        <translation>senkrecht</translation>
    </message>
    <message>
        <source>to the face</source>
        <translation>zur Fläche</translation>
    </message>
    <message>
        <source>to the base</source>
        <translation>zum Grundblech</translation>
    </message>
    <message>
        <source>to lower sheet</source>
        <translation>zum unteren Blech</translation>
    </message>
    <message>
        <source>at the edge</source>
        <translation>an der Kante</translation>
    </message>
    <message>
        <source>halfway</source>
        <translation>mittig</translation>
    </message>
    <message>
        <source>{angle}° off halfway</source>
        <translation>{angle}° neben Mitte</translation>
    </message>
    <message>
        <source>Leans so that the thicker side gets more of the heat.</source>
        <translation>Geneigt, damit die dickere Seite mehr von der Wärme bekommt.</translation>
    </message>
    <message>
        <source>Drawn with {drawn} stick-out: at {given} the cup would touch the metal.</source>
        <translation>Mit {drawn} Überstand gezeichnet: bei {given} würde die Gasdüse das Metall berühren.</translation>
    </message>
    <message>
        <source>Nozzle drawn back: it would touch the metal.</source>
        <translation>Gasdüse zurückgesetzt gezeichnet: sie würde das Metall berühren.</translation>
    </message>
    <message>
        <source>Edges bevelled to {angle}°.</source>
        <translation>Kanten angefast auf {angle}°.</translation>
    </message>
    <message>
        <source>seen from above</source>
        <translation>von oben gesehen</translation>
    </message>
    <message>
        <source>across the weld</source>
        <translation>quer zur Naht</translation>
    </message>
    <message>
        <source>along the weld</source>
        <translation>längs der Naht</translation>
    </message>
    <message>
        <source>EN: melts the work</source>
        <translation>EN: schmilzt das Werkstück</translation>
    </message>
    <message>
        <source>EP: lifts the oxide</source>
        <translation>EP: löst das Oxid</translation>
    </message>
    <message>
        <source>DC, electrode negative: steady</source>
        <translation>DC, Elektrode negativ: gleichbleibend</translation>
    </message>
    <message>
        <source>DC, electrode positive: steady</source>
        <translation>DC, Elektrode positiv: gleichbleibend</translation>
    </message>
    <message>
        <source>ms</source>
        <translation>ms</translation>
    </message>
    <message>
        <source>{time:.3g} ms a cycle, {frequency:.0f} Hz</source>
        <translation>{time:.3g} ms je Zyklus, {frequency:.0f} Hz</translation>
    </message>
    <message>
        <source>{percent} % EN</source>
        <translation>{percent} % EN</translation>
    </message>
    <message>
        <source>{percent} % EP</source>
        <translation>{percent} % EP</translation>
    </message>
    <message>
        <source>PA, flat</source>
        <translation>PA, Wannenlage</translation>
    </message>
    <message>
        <source>PB, horizontal</source>
        <translation>PB, horizontal</translation>
    </message>
    <message>
        <source>PC, on a wall, level</source>
        <translation>PC, quer an der Wand</translation>
    </message>
    <message>
        <source>PD, overhead corner</source>
        <translation>PD, Überkopf-Kehlnaht</translation>
    </message>
    <message>
        <source>PE, overhead</source>
        <translation>PE, Überkopf</translation>
    </message>
    <message>
        <source>PF, vertical up</source>
        <translation>PF, steigend</translation>
    </message>
    <message>
        <source>PG, vertical down</source>
        <translation>PG, fallend</translation>
    </message>
    <message>
        <source>SET UP BEFORE WELDING ALUMINIUM CORNERS
1. Page Set-up: choose the metal, type the thickness as you would say it (0.080, 14 ga, 2 mm), click the joint.
2. Tick whatever may be on the metal, and what the part belongs to. Read what comes up on top; a red one has to be ticked before the card is ready.
3. Set the machine to the large figures; the range beside each is where to look if the first bead does not please. Why says where a figure comes from.
4. Print (Ctrl+P) puts it on one page; F9 shows the main figures across the bench.
5. Run a bead on scrap of the same sheet first.</source>
        <translation>EINSTELLEN VOR DEM SCHWEISSEN VON ALUMINIUM-ECKEN
1. Seite Einstellung: Metall wählen, die Dicke so eintippen, wie man sie sagt (0.080, 14 ga, 2 mm), den Stoß anklicken.
2. Alles ankreuzen, was auf dem Metall sein kann und wozu das Teil gehört. Lesen, was oben erscheint; ein roter Hinweis muss abgehakt werden, bevor die Karte bereit ist.
3. Das Gerät auf die großen Zahlen stellen; der Bereich neben jeder ist der Ort zum Suchen, wenn die erste Raupe nicht gefällt. Warum sagt, woher ein Wert kommt.
4. Drucken (Strg+P) bringt es auf eine Seite; F9 zeigt die Hauptwerte quer durch die Werkstatt.
5. Erst eine Raupe auf Abfall vom gleichen Blech ziehen.</translation>
    </message>
    <message>
        <source>LOG A SUCCESSFUL SETTING
1. With the card in front press Log this weld (Ctrl+L). It is filled in from the card.
2. Put right what you changed at the machine, add a picture if you like.
3. Press how it came out: that logs it, and the page Log can take it back. The next card for a like joint shows the weld and has learned from it.</source>
        <translation>EINE GELUNGENE EINSTELLUNG EINTRAGEN
1. Bei offener Karte „Schweißung eintragen“ (Strg+L) drücken. Ausgefüllt ist sie aus der Karte.
2. Berichtigen, was am Gerät geändert wurde, nach Wunsch ein Bild hinzufügen.
3. Drücken, wie es geworden ist: das trägt es ein, und die Seite Schweißbuch kann es zurücknehmen. Die nächste Karte für einen ähnlichen Stoß zeigt die Schweißung und hat daraus gelernt.</translation>
    </message>
    <message>
        <source>COMPARE JOINT TYPES SIDE BY SIDE
1. Page Side by side (Ctrl+2) starts with the card you came from.
2. Add columns: another joint, metal, thickness or process. Rows that differ stand out and say why.
3. Move the thickness slider: all columns follow, and the curve shows current over thickness.
4. A column can be opened as a card, logged or printed.</source>
        <translation>STOSSARTEN NEBENEINANDER VERGLEICHEN
1. Seite Vergleich (Strg+2) beginnt mit der Karte, von der man kommt.
2. Spalten hinzufügen: ein anderer Stoß, Metall, Dicke oder Verfahren. Abweichende Zeilen fallen auf und sagen, warum.
3. Den Dickenschieber bewegen: alle Spalten folgen, und die Kurve zeigt den Strom über der Dicke.
4. Eine Spalte lässt sich als Karte öffnen, eintragen oder drucken.</translation>
    </message>
    <message>
        <source>WHEN A BEAD WENT WRONG
Press What went wrong (F7), pick what it looks like, read the cause, and let the card take the change. Ctrl+K leads anywhere: type 5052 corner, bench, or undercut.</source>
        <translation>WENN EINE RAUPE MISSRATEN IST
„Was ging schief“ (F7) drücken, wählen, wie es aussieht, die Ursache lesen und die Karte die Änderung übernehmen lassen. Strg+K führt überallhin: 5052 corner, Werkbank oder Einbrandkerbe eintippen.</translation>
    </message>
    <message>
        <source>WHERE A FIGURE COMES FROM
Schedules out of handbooks and standards are brought to one case and pooled: better grades count more, each document has one vote, and the band is what the documents print for themselves together with how far they lie apart. Factors for joint, position, alloy and hand follow, each a line under Why. Then come your log, and the limits of your machine, wire and tungsten.</source>
        <translation>WOHER EIN WERT KOMMT
Schweißtabellen aus Handbüchern und Normen werden auf einen Fall gebracht und zusammengelegt: bessere Belegstufen zählen mehr, jedes Dokument hat eine Stimme, und der Bereich ist, was die Dokumente selbst drucken, samt dem, wie weit sie auseinanderliegen. Faktoren für Stoß, Position, Legierung und Hand folgen, jeder als Zeile unter Warum. Dann kommen das Schweißbuch und die Grenzen von Gerät, Draht und Wolframelektrode.</translation>
    </message>
    <message>
        <source>GRADES
Printed: read in the document itself. Quoted: read where another document cites it. Worked out: computed from such figures. Shop practice: common, with no published source. From memory: to be checked against print. The last two have a dashed edge.</source>
        <translation>BELEGSTUFEN
Gedruckt: im Dokument selbst gelesen. Zitiert: gelesen, wo ein anderes Dokument es zitiert. Hergeleitet: aus solchen Werten berechnet. Werkstattpraxis: üblich, ohne veröffentlichte Quelle. Aus dem Gedächtnis: am Druck zu prüfen. Die letzten zwei haben einen gestrichelten Rand.</translation>
    </message>
    <message>
        <source>HOW GOOD IT IS
The starting current lies within 4 % of the schedule rows at the median and within 13 % for nine in ten; a document left out and predicted from the others, within 6 and 17 %. Many MIG rows for thin sheet are from memory. The heat picture carries its own error as a band. The method, its assumptions and all scores stand in DEVELOPERS.md.</source>
        <translation>WIE GUT ES IST
Der Startstrom liegt im Median innerhalb 4 % der Tabellenzeilen und für neun von zehn innerhalb 13 %; ein weggelassenes und aus den anderen vorhergesagtes Dokument innerhalb 6 und 17 %. Viele MIG-Zeilen für dünnes Blech sind aus dem Gedächtnis. Das Wärmebild trägt seinen eigenen Fehler als Band. Methode, Annahmen und alle Bewertungen stehen in DEVELOPERS.md.</translation>
    </message>
    <message>
        <source>WHAT IT IS NOT
It is no welding procedure. Local codes, the equipment&apos;s and the vehicle&apos;s own manuals and your test pieces come first; what can hurt someone when it fails belongs to a qualified welder.</source>
        <translation>WAS ES NICHT IST
Es ist keine Schweißanweisung. Örtliche Vorschriften, die Handbücher von Gerät und Fahrzeug und die eigenen Probestücke gehen vor; was beim Versagen jemanden verletzen kann, gehört in die Hände eines geprüften Schweißers.</translation>
    </message>
    <message>
        <source>it is not text</source>
        <translation>es ist kein Text</translation>
    </message>
    <message>
        <source>The last request could not be read ({reason}); starting fresh.</source>
        <translation>Die letzten Angaben waren nicht lesbar ({reason}); neu begonnen.</translation>
    </message>
    <message>
        <source>This request will not be remembered: {reason}.</source>
        <translation>Diese Angaben werden nicht gemerkt: {reason}.</translation>
    </message>
    <message>
        <source>The last request is unreadable ({problem}) and stays where it is: {reason}.</source>
        <translation>Die letzten Angaben sind unlesbar ({problem}) und bleiben, wo sie sind: {reason}.</translation>
    </message>
    <message>
        <source>The last request was unreadable ({problem}); starting fresh. Kept as {name}.</source>
        <translation>Die letzten Angaben waren unlesbar ({problem}); neu begonnen. Behalten als {name}.</translation>
    </message>
    <message>
        <source>not a file of this program&apos;s version</source>
        <translation>keine Datei dieser Programmversion</translation>
    </message>
    <message>
        <source>the recent requests are not a list</source>
        <translation>die letzten Angaben sind keine Liste</translation>
    </message>
    <message>
        <source>units are {units!r:.40}</source>
        <translation>die Einheiten sind {units!r:.40}</translation>
    </message>
    <message>
        <source>the request is not a list of named texts</source>
        <translation>die Angaben sind keine Liste benannter Texte</translation>
    </message>
    <message>
        <source>the request holds something that is not text</source>
        <translation>die Angaben enthalten etwas, das kein Text ist</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <source>cubic feet</source>
        <translation>Kubikfuß</translation>
    </message>
    <message>
        <source>{given} is not usable; allowed: a number from {low} to {high} {unit}</source>
        <translation>{given} ist nicht brauchbar; erlaubt: eine Zahl von {low} bis {high} {unit}</translation>
    </message>
    <message>
        <source>{feed} {unit} is above the highest feed</source>
        <translation>{feed} {unit} liegt über dem höchsten Vorschub</translation>
    </message>
    <message>
        <source>schedule row, {grade}</source>
        <translation>Tabellenzeile, {grade}</translation>
    </message>
    <message>
        <source>your weld, {outcome}</source>
        <translation>eigene Schweißung, {outcome}</translation>
    </message>
    <message>
        <source>worked well</source>
        <translation>gut gelungen</translation>
    </message>
    <message>
        <source>worked</source>
        <translation>gelungen</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>misslungen</translation>
    </message>
    <message>
        <source>{title} {start:.0f} A ({low:.0f} to {high:.0f})</source>
        <translation>{title} {start:.0f} A ({low:.0f} bis {high:.0f})</translation>
    </message>
    <message>
        <source>{title}, {thickness}: {low:.0f} to {high:.0f} A, {grade}, {source}</source>
        <translation>{title}, {thickness}: {low:.0f} bis {high:.0f} A, {grade}, {source}</translation>
    </message>
    <message>
        <source>{current:.0f} A by its wire feed</source>
        <translation>{current:.0f} A nach dem Drahtvorschub</translation>
    </message>
    <message>
        <source>your weld of {made_on}</source>
        <translation>eigene Schweißung vom {made_on}</translation>
    </message>
    <message>
        <source>your weld</source>
        <translation>eigene Schweißung</translation>
    </message>
    <message>
        <source>{metal} {thickness}, position {position}</source>
        <translation>{metal} {thickness}, Position {position}</translation>
    </message>
    <message>
        <source>{title}: {frequency}, {percent:.0f} % EN, {current}</source>
        <translation>{title}: {frequency}, {percent:.0f} % EN, {current}</translation>
    </message>
    <message>
        <source>kept: {figures}</source>
        <translation>gemerkt: {figures}</translation>
    </message>
    <message>
        <source>Conduction only, give or take its error: to think with, not a procedure.</source>
        <translation>Nur Wärmeleitung, samt ihrem Fehler: zum Nachdenken, keine Schweißanweisung.</translation>
    </message>
    <message>
        <source>seen from above; ring: the arc&apos;s spot</source>
        <translation>von oben; Ring: Brennfleck</translation>
    </message>
    <message>
        <source>pool {length}</source>
        <translation>Bad {length}</translation>
    </message>
    <message>
        <source>nothing melts</source>
        <translation>nichts schmilzt</translation>
    </message>
    <message>
        <source>stays cold</source>
        <translation>bleibt kalt</translation>
    </message>
    <message>
        <source>melts the face</source>
        <translation>schmilzt die Oberfläche</translation>
    </message>
    <message>
        <source>melts through</source>
        <translation>schmilzt durch</translation>
    </message>
    <message>
        <source>burns through</source>
        <translation>brennt durch</translation>
    </message>
    <message>
        <source>the card&apos;s band</source>
        <translation>der Bereich der Karte</translation>
    </message>
    <message>
        <source>heat-affected, above {limit}</source>
        <translation>wärmebeeinflusst, über {limit}</translation>
    </message>
    <message>
        <source>melted, above {melting}</source>
        <translation>geschmolzen, über {melting}</translation>
    </message>
    <message>
        <source>edge if the heat is {error:.0%} off</source>
        <translation>Rand, wenn die Wärme um {error:.0%} danebenliegt</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>gemerkt</translation>
    </message>
    <message>
        <source>added metal, by the wire feed</source>
        <translation>Zusatz, nach dem Drahtvorschub</translation>
    </message>
    <message>
        <source>added metal, at a usual size</source>
        <translation>Zusatz, in üblicher Größe</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Schmelzbad</translation>
    </message>
    <message>
        <source>{length} long</source>
        <translation>{length} lang</translation>
    </message>
    <message>
        <source>real pools trail longer</source>
        <translation>echte Bäder ziehen länger nach</translation>
    </message>
    <message>
        <source>Heat-affected</source>
        <translation>Wärmebeeinflusst</translation>
    </message>
    <message>
        <source>{length} to each side</source>
        <translation>{length} auf jeder Seite</translation>
    </message>
    <message>
        <source>beside the melted metal, above {limit}</source>
        <translation>neben dem geschmolzenen Metall, über {limit}</translation>
    </message>
    <message>
        <source>Heat input</source>
        <translation>Wärmeeinbringung</translation>
    </message>
    <message>
        <source>EN 1011-1, arc energy times process factor</source>
        <translation>EN 1011-1, Lichtbogenenergie mal Verfahrensfaktor</translation>
    </message>
    <message>
        <source>Cooling t8/5</source>
        <translation>Abkühlzeit t8/5</translation>
    </message>
    <message>
        <source>from 800 to 500 °C, EN 1011-2</source>
        <translation>von 800 auf 500 °C, EN 1011-2</translation>
    </message>
    <message>
        <source>melts from {melts_a:.0f} A, falls out from {falls_a:.0f} A</source>
        <translation>schmilzt ab {melts_a:.0f} A, fällt heraus ab {falls_a:.0f} A</translation>
    </message>
    <message>
        <source>melts through from {through_a:.0f} A</source>
        <translation>schmilzt durch ab {through_a:.0f} A</translation>
    </message>
    <message>
        <source>; the card&apos;s band is {low:.0f} to {high:.0f} A</source>
        <translation>; der Bereich der Karte ist {low:.0f} bis {high:.0f} A</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Schweißstrom</translation>
    </message>
    <message>
        <source>Burns through: the pool falls out. {share:.0%} less current would hold it.</source>
        <translation>Brennt durch: das Bad fällt heraus. {share:.0%} weniger Strom würde es halten.</translation>
    </message>
    <message>
        <source>Likely burns through: the pool falls out. {share:.0%} less current would hold it.</source>
        <translation>Brennt wahrscheinlich durch: das Bad fällt heraus. {share:.0%} weniger Strom würde es halten.</translation>
    </message>
    <message>
        <source>Stays cold: at least one piece does not melt.</source>
        <translation>Bleibt kalt: mindestens ein Teil schmilzt nicht.</translation>
    </message>
    <message>
        <source>Near burning through: {near:.0%} more current and the pool falls out.</source>
        <translation>Nahe am Durchbrand: {near:.0%} mehr Strom, und das Bad fällt heraus.</translation>
    </message>
    <message>
        <source>Melts, but not through to the root.</source>
        <translation>Schmilzt, aber nicht durch bis zur Wurzel.</translation>
    </message>
    <message>
        <source>Just melts through: within the model&apos;s error it may stay cold.</source>
        <translation>Schmilzt gerade durch: im Rahmen des Modellfehlers kann es kalt bleiben.</translation>
    </message>
    <message>
        <source>Just melts both pieces: within the model&apos;s error it may stay cold.</source>
        <translation>Schmilzt gerade beide Teile: im Rahmen des Modellfehlers kann es kalt bleiben.</translation>
    </message>
    <message>
        <source>Melts right through and holds: {room:.0%} more current before the pool falls out.</source>
        <translation>Schmilzt ganz durch und hält: {room:.0%} mehr Strom, bis das Bad herausfällt.</translation>
    </message>
    <message>
        <source>Melts and holds: {room:.0%} more current before the pool falls out.</source>
        <translation>Schmilzt und hält: {room:.0%} mehr Strom, bis das Bad herausfällt.</translation>
    </message>
    <message>
        <source>up to {length} at the hot end of the error</source>
        <translation>bis {length} am heißen Ende des Fehlers</translation>
    </message>
    <message>
        <source>{length} to right through</source>
        <translation>{length} bis ganz durch</translation>
    </message>
    <message>
        <source>give or take {share:.0%}</source>
        <translation>plus/minus {share:.0%}</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Depth into the sheet</source>
        <translation>Tiefe im Blech</translation>
    </message>
    <message>
        <source>right through, {length} at the root</source>
        <translation>ganz durch, {length} an der Wurzel</translation>
    </message>
    <message>
        <source>right through, {length} on the back</source>
        <translation>ganz durch, {length} an der Rückseite</translation>
    </message>
    <message>
        <source>at the cold end of the error only {length} deep</source>
        <translation>am kalten Ende des Fehlers nur {length} tief</translation>
    </message>
    <message>
        <source>over the whole of the error</source>
        <translation>über den ganzen Fehler</translation>
    </message>
    <message>
        <source>Width on the face</source>
        <translation>Breite an der Oberfläche</translation>
    </message>
    <message>
        <source>From the edge</source>
        <translation>Von der Kante</translation>
    </message>
    <message>
        <source>From the root</source>
        <translation>Von der Wurzel</translation>
    </message>
    <message>
        <source>{length} along the face</source>
        <translation>{length} entlang der Oberfläche</translation>
    </message>
    <message>
        <source>{melted} melted, {leg} leg</source>
        <translation>{melted} geschmolzen, Schenkel {leg}</translation>
    </message>
    <message>
        <source>; the leg is the wire&apos;s metal, which fuses more beneath it</source>
        <translation>; der Schenkel ist das Metall des Drahts, das darunter mehr verschmilzt</translation>
    </message>
    <message>
        <source>{length} deep</source>
        <translation>{length} tief</translation>
    </message>
    <message>
        <source>read in the document itself</source>
        <translation>im Dokument selbst gelesen</translation>
    </message>
    <message>
        <source>read in another document that cites it</source>
        <translation>in einem anderen Dokument gelesen, das es zitiert</translation>
    </message>
    <message>
        <source>worked out from printed values</source>
        <translation>aus gedruckten Werten hergeleitet</translation>
    </message>
    <message>
        <source>shop practice, no document</source>
        <translation>Werkstattpraxis, kein Dokument</translation>
    </message>
    <message>
        <source>from memory, not checked against print</source>
        <translation>aus dem Gedächtnis, nicht am Druck geprüft</translation>
    </message>
    <message>
        <source>this program&apos;s own fit</source>
        <translation>eigene Anpassung dieses Programms</translation>
    </message>
    <message>
        <source>WHAT IS RECKONED</source>
        <translation>WAS GERECHNET WIRD</translation>
    </message>
    <message>
        <source>- Arc: {voltage:.1f} V times {current:.0f} A. Of that {middle:.0%} ({low:.0%} to {high:.0%}) reaches the work ({text}).</source>
        <translation>- Lichtbogen: {voltage:.1f} V mal {current:.0f} A. Davon erreichen {middle:.0%} ({low:.0%} bis {high:.0%}) das Werkstück ({text}).</translation>
    </message>
    <message>
        <source>  Grade: {grade}. Source: {citation}.</source>
        <translation>  Belegstufe: {grade}. Quelle: {citation}.</translation>
    </message>
    <message>
        <source>- The heat spreads by conduction only, from a round spot that travels steadily over a plate of finite thickness. Stirring in the pool is left out.</source>
        <translation>- Die Wärme breitet sich nur durch Leitung aus, von einem runden Fleck, der stetig über ein Blech endlicher Dicke wandert. Strömung im Bad bleibt außer Betracht.</translation>
    </message>
    <message>
        <source>- The metal&apos;s properties are means from room temperature to melting; the heat of fusion is spread over that rise. What melts is drawn at the solidus, {melting}: {conductivity:.0f} W/(m K), {density:.0f} kg/m3.</source>
        <translation>- Die Metallwerte sind Mittel von Raumtemperatur bis zum Schmelzen; die Schmelzwärme ist über diesen Anstieg verteilt. Was schmilzt, ist bei der Solidustemperatur gezeichnet, {melting}: {conductivity:.0f} W/(m K), {density:.0f} kg/m3.</translation>
    </message>
    <message>
        <source>- Each piece is seen as a plate of its own that takes a share of the heat by its ways out and its thickness; here {shares}. The figures below the picture are of the piece that melts through first.</source>
        <translation>- Jedes Teil gilt als eigenes Blech, das einen Anteil der Wärme nach seinen Abflusswegen und seiner Dicke nimmt; hier {shares}. Die Werte unter dem Bild gelten für das Teil, das zuerst durchschmilzt.</translation>
    </message>
    <message>
        <source>- Falling out: the sag of the liquid under its own weight over the open root, plus what arc and drops press in, against a quarter of the thickness (the limit of ISO 5817 level D).</source>
        <translation>- Herausfallen: der Durchhang der Schmelze unter dem eigenen Gewicht über der offenen Wurzel, plus was Lichtbogen und Tropfen eindrücken, gegen ein Viertel der Dicke (die Grenze von ISO 5817 Bewertungsgruppe D).</translation>
    </message>
    <message>
        <source>- Added metal: for MIG its section follows from the wire feed that the current melts, and the heat the wire takes is left out of the plate; for TIG, corner and edge it is drawn at a usual size.</source>
        <translation>- Zusatz: bei MIG/MAG folgt sein Querschnitt aus dem Drahtvorschub, den der Strom abschmilzt, und die Wärme, die der Draht aufnimmt, wird dem Blech nicht zugerechnet; bei WIG, Ecke und Stirnstoß ist er in üblicher Größe gezeichnet.</translation>
    </message>
    <message>
        <source>HOW GOOD IT IS</source>
        <translation>WIE GUT ES IST</translation>
    </message>
    <message>
        <source>- Error: {error:.0%} in the heat is typical. Two in three of 108 printed butts lie this near. The dotted lines and the smeared borders of the gauge show it.</source>
        <translation>- Fehler: {error:.0%} in der Wärme ist typisch. Zwei von drei von 108 gedruckten Stumpfstößen liegen so nah. Die gepunkteten Linien und die verwischten Ränder der Skala zeigen ihn.</translation>
    </message>
    <message>
        <source>- Fitted, once for all metals, on printed single-pass butt rows: AC efficiency {efficiency:g} (give or take {spread:g}; published values lie lower), spot {tig_spot:g} mm for TIG and {mig_spot:g} mm for MIG, dent of a MIG arc {mig_dent:g} mm at 100 A.</source>
        <translation>- Angepasst, einmal für alle Metalle, an gedruckte einlagige Stumpfstoß-Zeilen: AC-Wirkungsgrad {efficiency:g} (plus/minus {spread:g}; veröffentlichte Werte liegen niedriger), Fleck {tig_spot:g} mm bei WIG und {mig_spot:g} mm bei MIG/MAG, Mulde eines MIG-Lichtbogens {mig_dent:g} mm bei 100 A.</translation>
    </message>
    <message>
        <source>- Fillet, corner and edge joints were not fitted: the error there is not known and may be larger.</source>
        <translation>- Kehlnähte, Ecken und Stirnstöße wurden nicht angepasst: der Fehler ist dort nicht bekannt und kann größer sein.</translation>
    </message>
    <message>
        <source>TRENDS ONLY (a direction, no published size)</source>
        <translation>NUR TENDENZEN (eine Richtung, keine veröffentlichte Größe)</translation>
    </message>
    <message>
        <source>- AC frequency and balance, counted from the card&apos;s own figures: a higher frequency narrows the arc, more electrode negative leaves less heat in the tungsten and more in the work.</source>
        <translation>- AC-Frequenz und Balance, von den Werten der Karte aus gezählt: eine höhere Frequenz macht den Lichtbogen schmaler, mehr Elektrode negativ lässt weniger Wärme in der Wolframelektrode und mehr im Werkstück.</translation>
    </message>
    <message>
        <source>- Voltage: until it is moved by hand it follows the current along the load line of IEC 60974-1.</source>
        <translation>- Spannung: solange sie nicht von Hand verstellt wird, folgt sie dem Strom nach der Arbeitskennlinie von IEC 60974-1.</translation>
    </message>
    <message>
        <source>STANDARDS USED</source>
        <translation>VERWENDETE NORMEN</translation>
    </message>
    <message>
        <source>- Heat input: EN 1011-1. Cooling time t8/5 (carbon steel only): EN 1011-2, shape factors from memory.</source>
        <translation>- Wärmeeinbringung: EN 1011-1. Abkühlzeit t8/5 (nur unlegierter Stahl): EN 1011-2, Formfaktoren aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>To think with, not a procedure. Try it on scrap of the same metal and thickness, cut it and look.</source>
        <translation>Zum Nachdenken, keine Schweißanweisung. An Abfall vom gleichen Metall und gleicher Dicke probieren, aufschneiden und ansehen.</translation>
    </message>
    <message>
        <source>- Gap: the wire fills it, both edges melt back beside it, and the part of the spot that falls into it heats them over the whole thickness.</source>
        <translation>- Spalt: der Draht füllt ihn, beide Kanten schmelzen daneben zurück, und der Teil des Flecks, der hineinfällt, erwärmt sie über die ganze Dicke.</translation>
    </message>
    <message>
        <source>- The parts start at {warm}.</source>
        <translation>- Die Teile beginnen bei {warm}.</translation>
    </message>
    <message>
        <source>both the same</source>
        <translation>beide gleich</translation>
    </message>
    <message>
        <source>the first piece ({thickness:.2f} mm) {share:.0%} for each way out, the other ({other_thickness:.2f} mm) {other_share:.0%}</source>
        <translation>das erste Teil ({thickness:.2f} mm) {share:.0%} für jeden Abflussweg, das andere ({other_thickness:.2f} mm) {other_share:.0%}</translation>
    </message>
    <message>
        <source>- Corner and edge: a bare edge melts away sooner than this picture, which sees a sheet, says.</source>
        <translation>- Ecke und Stirnstoß: eine freie Kante schmilzt früher weg, als dieses Bild sagt, das ein Blech sieht.</translation>
    </message>
    <message>
        <source>- Fillets: what the arc itself melts is drawn. Liquid metal that flows out from under it fuses a little further, which is not reckoned.</source>
        <translation>- Kehlnähte: gezeichnet ist, was der Lichtbogen selbst schmilzt. Schmelze, die unter ihm hervorfließt, verschmilzt etwas weiter, das ist nicht gerechnet.</translation>
    </message>
    <message>
        <source>- Lap: the upper edge meets the arc from two sides and melts back sooner than drawn.</source>
        <translation>- Überlappstoß: die obere Kante trifft der Lichtbogen von zwei Seiten, sie schmilzt früher zurück als gezeichnet.</translation>
    </message>
    <message>
        <source>- No temperature is stated from which this metal changes: no heat-affected zone is drawn.</source>
        <translation>- Für dieses Metall ist keine Temperatur angegeben, ab der es sich verändert: keine Wärmeeinflusszone gezeichnet.</translation>
    </message>
    <message>
        <source>- Heat-affected: above {limit}, the metal is no longer what it was (limits from memory).</source>
        <translation>- Wärmebeeinflusst: über {limit} ist das Metall nicht mehr, was es war (Grenzen aus dem Gedächtnis).</translation>
    </message>
    <message>
        <source>metal temperature</source>
        <translation>Metalltemperatur</translation>
    </message>
    <message>
        <source>AC frequency</source>
        <translation>AC-Frequenz</translation>
    </message>
    <message>
        <source>a name ending in {kinds}</source>
        <translation>ein Name, der auf {kinds} endet</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>{waste:.0%} left over</source>
        <translation>{waste:.0%} Verschnitt</translation>
    </message>
    <message>
        <source>{length} flat</source>
        <translation>{length} gestreckt</translation>
    </message>
    <message>
        <source>{count} tacks</source>
        <translation>{count} Heftstellen</translation>
    </message>
    <message>
        <source>log, {joint}: {words}</source>
        <translation>Schweißbuch, {joint}: {words}</translation>
    </message>
    <message>
        <source>for {joints}</source>
        <translation>für {joints}</translation>
    </message>
    <message>
        <source>{name}, line {line}: {problem}</source>
        <translation>{name}, Zeile {line}: {problem}</translation>
    </message>
    <message>
        <source>not answered</source>
        <translation>nicht beantwortet</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>one leg</source>
        <translation>ein Schenkel</translation>
    </message>
    <message>
        <source>other leg</source>
        <translation>anderer Schenkel</translation>
    </message>
    <message>
        <source>inside radius</source>
        <translation>Innenradius</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>ISO 6520-1: {meant}</source>
        <translation>ISO 6520-1: {meant}</translation>
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
        <source>short-circuit</source>
        <translation>Kurzlichtbogen</translation>
    </message>
    <message>
        <source>spray</source>
        <translation>Sprühlichtbogen</translation>
    </message>
    <message>
        <source>globular</source>
        <translation>Übergangslichtbogen</translation>
    </message>
    <message>
        <source>pulsed</source>
        <translation>Impulslichtbogen</translation>
    </message>
    <message>
        <source>a figure, as in {example}</source>
        <translation>ein Wert, wie in {example}</translation>
    </message>
    <message>
        <source>January</source>
        <translation>Januar</translation>
    </message>
    <message>
        <source>February</source>
        <translation>Februar</translation>
    </message>
    <message>
        <source>March</source>
        <translation>März</translation>
    </message>
    <message>
        <source>April</source>
        <translation>April</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>June</source>
        <translation>Juni</translation>
    </message>
    <message>
        <source>July</source>
        <translation>Juli</translation>
    </message>
    <message>
        <source>August</source>
        <translation>August</translation>
    </message>
    <message>
        <source>September</source>
        <translation>September</translation>
    </message>
    <message>
        <source>October</source>
        <translation>Oktober</translation>
    </message>
    <message>
        <source>November</source>
        <translation>November</translation>
    </message>
    <message>
        <source>December</source>
        <translation>Dezember</translation>
    </message>
    <message>
        <source>{day} {month}</source>
        <translation>{day}. {month}</translation>
    </message>
    <message>
        <source>{day} {month} {year}</source>
        <translation>{day}. {month} {year}</translation>
    </message>
    <message>
        <source>{current:g} A</source>
        <translation>{current:g} A</translation>
    </message>
    <message>
        <source>{sheet} to {other}</source>
        <translation>{sheet} an {other}</translation>
    </message>
    <message>
        <source>{feed:g} m/min</source>
        <translation>{feed:g} m/min</translation>
    </message>
    <message>
        <source>You welded this on {day}: {outcome}</source>
        <translation>So am {day} geschweißt: {outcome}</translation>
    </message>
    <message>
        <source>You ran this at {figure} on {day}: {outcome}</source>
        <translation>Am {day} mit {figure} gefahren: {outcome}</translation>
    </message>
    <message>
        <source>Welded</source>
        <translation>Geschweißt</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Spalt</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Schweißgerät</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>1 past weld speaks</source>
        <translation>1 frühere Schweißung spricht</translation>
    </message>
    <message>
        <source>{welds} past welds speak</source>
        <translation>{welds} frühere Schweißungen sprechen</translation>
    </message>
    <message>
        <source>as the tables say</source>
        <translation>wie die Tabellen sagen</translation>
    </message>
    <message>
        <source>{percent} % above the tables</source>
        <translation>{percent} % über den Tabellen</translation>
    </message>
    <message>
        <source>{percent} % below the tables</source>
        <translation>{percent} % unter den Tabellen</translation>
    </message>
    <message>
        <source>{spoke}, {alike} on this kind of joint. This bench runs {side}: {sureness}. Nine in ten that the right start lies between {low:.0f} and {high:.0f} {unit}.</source>
        <translation>{spoke}, davon an dieser Stoßart {alike}. Diese Werkbank liegt {side}: {sureness}. In neun von zehn Fällen liegt der richtige Startwert zwischen {low:.0f} und {high:.0f} {unit}.</translation>
    </message>
    <message>
        <source>{start:.0f} {unit} ({low:.0f} to {high:.0f})</source>
        <translation>{start:.0f} {unit} ({low:.0f} bis {high:.0f})</translation>
    </message>
    <message>
        <source>From its next start on the window speaks this language.</source>
        <translation>Ab dem nächsten Start spricht das Fenster diese Sprache.</translation>
    </message>
    <message>
        <source>no plug time in the tables: time, gas and power are without it</source>
        <translation>keine Lochnahtzeit in den Tabellen: Zeit, Gas und Strom sind ohne sie</translation>
    </message>
    <message>
        <source>no travel speed in the tables: time, gas and power are without it</source>
        <translation>keine Schweißgeschwindigkeit in den Tabellen: Zeit, Gas und Strom sind ohne sie</translation>
    </message>
    <message>
        <source>{legs} legs and {bends} bends</source>
        <translation>{legs} Schenkel und {bends} Biegungen</translation>
    </message>
    <message>
        <source>one leg more than there are angles</source>
        <translation>einen Schenkel mehr als Winkel</translation>
    </message>
    <message>
        <source>above 0 to {largest:g} degrees turned through; a minus bends the other way</source>
        <translation>über 0 bis {largest:g} Grad Biegewinkel; ein Minus biegt andersherum</translation>
    </message>
    <message>
        <source>{least:.2f} mm or more, or a smaller radius: the bends beside it take that much</source>
        <translation>{least:.2f} mm oder mehr, oder ein kleinerer Radius: so viel nehmen die Biegungen daneben</translation>
    </message>
    <message>
        <source>leg {number}</source>
        <translation>Schenkel {number}</translation>
    </message>
    <message>
        <source>{least} to {most}, from the inside face</source>
        <translation>{least} bis {most}, von der Innenfläche aus</translation>
    </message>
    <message>
        <source>drawing school&apos;s rule</source>
        <translation>Regel aus der Zeichenschule</translation>
    </message>
    <message>
        <source>No table has a least radius for {metal} this thick: bend a test strip and look for cracks.</source>
        <translation>Keine Tabelle hat einen kleinsten Radius für {metal} in dieser Dicke: einen Probestreifen biegen und auf Risse achten.</translation>
    </message>
    <message>
        <source>The table advises against a cold bend in this thickness: have it formed, or weld the corner.</source>
        <translation>Die Tabelle rät bei dieser Dicke vom Kaltbiegen ab: formen lassen, oder die Ecke schweißen.</translation>
    </message>
    <message>
        <source>Another document asks for {radius}: bend a test strip first and look at the bend&apos;s outside.</source>
        <translation>Ein anderes Dokument verlangt {radius}: erst einen Probestreifen biegen und die Außenseite der Biegung ansehen.</translation>
    </message>
    <message>
        <source>{temperature:.0f} degC, {hold}, cooled {cooling}</source>
        <translation>{temperature:.0f} degC, {hold}, abkühlen: {cooling}</translation>
    </message>
    <message>
        <source>Annealed first ({how}) it bends tighter, at a cost: yield strength falls from about {before:.0f} to {after:.0f} MPa ({temper} to O, {grade}). A larger radius keeps the strength.</source>
        <translation>Vorher weichgeglüht ({how}) biegt es sich enger, aber zu einem Preis: die Streckgrenze fällt von etwa {before:.0f} auf {after:.0f} MPa ({temper} auf O, {grade}). Ein größerer Radius erhält die Festigkeit.</translation>
    </message>
    <message>
        <source>Where two bend lines cross, drill {hole} through the crossing before bending.</source>
        <translation>Wo sich zwei Biegelinien kreuzen, vor dem Biegen {hole} durch den Kreuzungspunkt bohren.</translation>
    </message>
    <message>
        <source>Bend lines across the rolling direction; along it the sheet cracks sooner and wants half as much radius again.</source>
        <translation>Biegelinien quer zur Walzrichtung; längs reißt das Blech früher und braucht den halben Radius noch dazu.</translation>
    </message>
    <message>
        <source>{angle:g} deg up, r {radius}</source>
        <translation>{angle:g} Grad hoch, r {radius}</translation>
    </message>
    <message>
        <source>{angle:g} deg down, r {radius}</source>
        <translation>{angle:g} Grad runter, r {radius}</translation>
    </message>
    <message>
        <source>check ruler, {length:g} mm long when printed at full size</source>
        <translation>Prüflineal, {length:g} mm lang bei Druck in Originalgröße</translation>
    </message>
    <message>
        <source>not as it was written ({error}); mend it or move it away</source>
        <translation>nicht wie geschrieben ({error}); reparieren oder woandershin legen</translation>
    </message>
    <message>
        <source>one that a test bend was kept for (--test-bend with --brake keeps it)</source>
        <translation>eine, für die eine Probebiegung gemerkt ist (--test-bend mit --brake merkt sie)</translation>
    </message>
    <message>
        <source>brake {brake}</source>
        <translation>Abkantbank {brake}</translation>
    </message>
    <message>
        <source>{tried}; or bend a test strip</source>
        <translation>{tried}; oder einen Probestreifen biegen</translation>
    </message>
    <message>
        <source>measurements that give {least} to {most}: measure strip and legs again, outside</source>
        <translation>Messwerte, die {least} bis {most} ergeben: Streifen und Schenkel nochmals messen, außen</translation>
    </message>
    <message>
        <source>{form} (missing: {names})</source>
        <translation>{form} (fehlt: {names})</translation>
    </message>
    <message>
        <source>degrees turned through, up to {largest:g}; 90 for a square bend</source>
        <translation>Grad Biegewinkel, bis {largest:g}; 90 für eine rechtwinklige Biegung</translation>
    </message>
    <message>
        <source>diameter and number, such as &quot;4 mm x 12&quot;, several separated by commas</source>
        <translation>Durchmesser und Anzahl, wie &quot;4 mm x 12&quot;, mehrere durch Kommas getrennt</translation>
    </message>
    <message>
        <source>steering-suspension</source>
        <translation>Lenkung/Fahrwerk</translation>
    </message>
    <message>
        <source>towing</source>
        <translation>Zugvorrichtung</translation>
    </message>
    <message>
        <source>lifting</source>
        <translation>Teil zum Heben</translation>
    </message>
    <message>
        <source>rollover</source>
        <translation>Überrollschutz</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>druckführendes Teil</translation>
    </message>
    <message>
        <source>sealed-item</source>
        <translation>verschlossenes Teil</translation>
    </message>
    <message>
        <source>a region that the holes fit into</source>
        <translation>ein Bereich, in den die Löcher passen</translation>
    </message>
    <message>
        <source>at most a quarter over the nominal {nominal:g} mm</source>
        <translation>höchstens ein Viertel über dem Nennmaß {nominal:g} mm</translation>
    </message>
    <message>
        <source>{task}: its drawing cannot be read: {problem}</source>
        <translation>{task}: die zugehörige Zeichnung ist nicht lesbar: {problem}</translation>
    </message>
    <message>
        <source>{task}: the photo of its drawing, {name}, is not beside the job file</source>
        <translation>{task}: das Foto der Zeichnung, {name}, liegt nicht neben der Auftragsdatei</translation>
    </message>
    <message>
        <source>the drawing has {holes}, the job file other holes; the file counts</source>
        <translation>die Zeichnung hat {holes}, die Auftragsdatei andere Löcher; die Datei gilt</translation>
    </message>
    <message>
        <source>the drawn holes take up {size} mm, more than the region in the job file</source>
        <translation>die gezeichneten Löcher brauchen {size} mm, mehr als der Bereich in der Auftragsdatei</translation>
    </message>
    <message>
        <source>{file}, line {line}</source>
        <translation>{file}, Zeile {line}</translation>
    </message>
    <message>
        <source> (and {number} more; `welds job check` lists all)</source>
        <translation> (und {number} weitere; `welds job check` zählt alle auf)</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>picture, scale and holes, as the Job page writes them</source>
        <translation>Bild, Maßstab und Löcher, wie sie die Seite Auftrag schreibt</translation>
    </message>
    <message>
        <source>a scale without length</source>
        <translation>ein Maßstab ohne Länge</translation>
    </message>
    <message>
        <source>two points that differ</source>
        <translation>zwei verschiedene Punkte</translation>
    </message>
    <message>
        <source>points such as [120.0, 84.5]</source>
        <translation>Punkte wie [120.0, 84.5]</translation>
    </message>
    <message>
        <source>a length above zero</source>
        <translation>eine Länge über null</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a job file that can be read; welds job check says where it cannot</source>
        <translation>eine lesbare Auftragsdatei; welds job check sagt, wo sie es nicht ist</translation>
    </message>
    <message>
        <source>job file</source>
        <translation>Auftragsdatei</translation>
    </message>
    <message>
        <source>no YAML any more</source>
        <translation>kein YAML mehr</translation>
    </message>
    <message>
        <source>an entry of this job</source>
        <translation>ein Eintrag dieses Auftrags</translation>
    </message>
    <message>
        <source>a repair of this job that has its holes written down</source>
        <translation>eine Reparatur dieses Auftrags, deren Löcher eingetragen sind</translation>
    </message>
    <message>
        <source>a UTF-8 text file</source>
        <translation>eine UTF-8-Textdatei</translation>
    </message>
    <message>
        <source>written in an unusual way</source>
        <translation>auf ungewöhnliche Weise geschrieben</translation>
    </message>
    <message>
        <source>this change by hand, in a text editor</source>
        <translation>diese Änderung von Hand, in einem Texteditor</translation>
    </message>
    <message>
        <source>either size (flat) or legs with angles and radius (folded)</source>
        <translation>entweder Größe (flach) oder Schenkel mit Winkeln und Radius (gebogen)</translation>
    </message>
    <message>
        <source>width is missing: the side that is not folded</source>
        <translation>Breite fehlt: die nicht gebogene Seite</translation>
    </message>
    <message>
        <source>k, or the brake whose test bend has it, not both</source>
        <translation>K-Faktor, oder die Abkantbank mit Probebiegung, nicht beides</translation>
    </message>
    <message>
        <source>length is missing: how long the seam is</source>
        <translation>Länge fehlt: wie lang die Naht ist</translation>
    </message>
    <message>
        <source>&apos;name: price&apos; lines below it</source>
        <translation>Zeilen &apos;name: price&apos; darunter</translation>
    </message>
    <message>
        <source>{name} is missing, here and in defaults</source>
        <translation>{name} fehlt, hier und in defaults</translation>
    </message>
    <message>
        <source>{radii} radii for {angles} angles; allowed: one for all or one each</source>
        <translation>{radii} Radien für {angles} Winkel; erlaubt: einer für alle oder je einer</translation>
    </message>
    <message>
        <source>an id from the stock section</source>
        <translation>eine Kennung aus dem Abschnitt stock</translation>
    </message>
    <message>
        <source>{name} is not in stock; allowed: {allowed}</source>
        <translation>{name} ist nicht im Bestand; erlaubt: {allowed}</translation>
    </message>
    <message>
        <source>unknown field; allowed: {names}{hint}</source>
        <translation>unbekanntes Feld; erlaubt: {names}{hint}</translation>
    </message>
    <message>
        <source>{name} is missing</source>
        <translation>{name} fehlt</translation>
    </message>
    <message>
        <source>{given!s:.60} is not usable; allowed: {allowed}</source>
        <translation>{given!s:.60} ist nicht brauchbar; erlaubt: {allowed}</translation>
    </message>
    <message>
        <source>{section}: expected a list of entries, each with &apos;- id:&apos;</source>
        <translation>{section}: eine Liste von Einträgen erwartet, jeder mit &apos;- id:&apos;</translation>
    </message>
    <message>
        <source>{section}[{number}]: expected &apos;name: value&apos; lines with an id</source>
        <translation>{section}[{number}]: Zeilen &apos;name: value&apos; mit einer id erwartet</translation>
    </message>
    <message>
        <source>id: small letters, digits and dashes are allowed, such as front-panel</source>
        <translation>id: Kleinbuchstaben, Ziffern und Bindestriche sind erlaubt, wie front-panel</translation>
    </message>
    <message>
        <source>a number such as 12.50</source>
        <translation>eine Zahl wie 12.50</translation>
    </message>
    <message>
        <source>a few words</source>
        <translation>ein paar Wörter</translation>
    </message>
    <message>
        <source>a whole number from 1 to {most}</source>
        <translation>eine ganze Zahl von 1 bis {most}</translation>
    </message>
    <message>
        <source>ids in brackets, such as [front, back]</source>
        <translation>ids in Klammern, wie [front, back]</translation>
    </message>
    <message>
        <source>is not there, or is not a file</source>
        <translation>ist nicht da oder keine Datei</translation>
    </message>
    <message>
        <source>job is missing: the name of the job</source>
        <translation>job fehlt: der Name des Auftrags</translation>
    </message>
    <message>
        <source>{name}: expected &apos;name: value&apos; lines below it</source>
        <translation>{name}: Zeilen &apos;name: value&apos; darunter erwartet</translation>
    </message>
    <message>
        <source>this id comes twice in the file</source>
        <translation>diese id kommt in der Datei zweimal vor</translation>
    </message>
    <message>
        <source>{name} is no piece of this job{hint}</source>
        <translation>{name} ist kein Teil dieses Auftrags{hint}</translation>
    </message>
    <message>
        <source>{name} is no task of this job{hint}</source>
        <translation>{name} ist keine Aufgabe dieses Auftrags{hint}</translation>
    </message>
    <message>
        <source>{name} names itself</source>
        <translation>{name} nennt sich selbst</translation>
    </message>
    <message>
        <source>tee</source>
        <translation>T-Stoß</translation>
    </message>
    <message>
        <source>outside corner</source>
        <translation>Außenecke</translation>
    </message>
    <message>
        <source>strength</source>
        <translation>Festigkeit</translation>
    </message>
    <message>
        <source>ductility</source>
        <translation>Biegbarkeit</translation>
    </message>
    <message>
        <source>least cracking</source>
        <translation>wenigste Risse</translation>
    </message>
    <message>
        <source>anodised colour</source>
        <translation>Farbe nach dem Eloxieren</translation>
    </message>
    <message>
        <source>warm service</source>
        <translation>warmer Betrieb</translation>
    </message>
    <message>
        <source>salt water</source>
        <translation>Salzwasser</translation>
    </message>
    <message>
        <source>acetone</source>
        <translation>Aceton</translation>
    </message>
    <message>
        <source>alcohol</source>
        <translation>Alkohol</translation>
    </message>
    <message>
        <source>chlorinated</source>
        <translation>chlorhaltig</translation>
    </message>
    <message>
        <source>unknown spray</source>
        <translation>unbekanntes Spray</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>Halter</translation>
    </message>
    <message>
        <source>vehicle</source>
        <translation>Fahrzeug</translation>
    </message>
    <message>
        <source>closed section</source>
        <translation>Hohlprofil</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>Tank</translation>
    </message>
    <message>
        <source>steering suspension</source>
        <translation>Lenkung/Fahrwerk</translation>
    </message>
    <message>
        <source>sealed item</source>
        <translation>verschlossenes Teil</translation>
    </message>
    <message>
        <source>short circuit</source>
        <translation>Kurzlichtbogen</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>overall</source>
        <translation>über alles</translation>
    </message>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>along</source>
        <translation>längs</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>gesund</translation>
    </message>
    <message>
        <source>thin</source>
        <translation>dünn</translation>
    </message>
    <message>
        <source>piece to cut</source>
        <translation>Teil zum Zuschneiden</translation>
    </message>
    <message>
        <source>joint to weld</source>
        <translation>Stoß zum Schweißen</translation>
    </message>
    <message>
        <source>repair</source>
        <translation>Reparatur</translation>
    </message>
    <message>
        <source>other step</source>
        <translation>anderer Schritt</translation>
    </message>
    <message>
        <source>sheet in stock</source>
        <translation>Blech im Bestand</translation>
    </message>
    <message>
        <source>Piece to cut</source>
        <translation>Teil zum Zuschneiden</translation>
    </message>
    <message>
        <source>Joint to weld</source>
        <translation>Stoß zum Schweißen</translation>
    </message>
    <message>
        <source>Repair</source>
        <translation>Reparatur</translation>
    </message>
    <message>
        <source>Other step</source>
        <translation>Anderer Schritt</translation>
    </message>
    <message>
        <source>Sheet in stock</source>
        <translation>Blech im Bestand</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>left mudguard, pinholes</source>
        <translation>Schutzblech links, Nadellöcher</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metall</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>How many alike</source>
        <translation>Wie viele gleiche</translation>
    </message>
    <message>
        <source>Size, where it is flat</source>
        <translation>Größe, wenn flach</translation>
    </message>
    <message>
        <source>Process</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Belongs to</source>
        <translation>Gehört zu</translation>
    </message>
    <message>
        <source>Coatings</source>
        <translation>Beschichtungen</translation>
    </message>
    <message>
        <source>Comes after</source>
        <translation>Kommt nach</translation>
    </message>
    <message>
        <source>short names: console-front, tank-wrap</source>
        <translation>Kurznamen: console-front, tank-wrap</translation>
    </message>
    <message>
        <source>Covers up</source>
        <translation>Deckt zu</translation>
    </message>
    <message>
        <source>short names of what is then out of reach</source>
        <translation>Kurznamen von dem, was dann nicht mehr erreichbar ist</translation>
    </message>
    <message>
        <source>Needs access before</source>
        <translation>Braucht Zugang vor</translation>
    </message>
    <message>
        <source>short names of what closes it</source>
        <translation>Kurznamen von dem, was ihn verschließt</translation>
    </message>
    <message>
        <source>Can wait</source>
        <translation>Kann warten</translation>
    </message>
    <message>
        <source>Welds in the log</source>
        <translation>Schweißungen im Buch</translation>
    </message>
    <message>
        <source>names or numbers of log entries</source>
        <translation>Namen oder Nummern von Einträgen</translation>
    </message>
    <message>
        <source>Cut from</source>
        <translation>Geschnitten aus</translation>
    </message>
    <message>
        <source>short name of a sheet in stock</source>
        <translation>Kurzname eines Blechs im Bestand</translation>
    </message>
    <message>
        <source>Legs, where it is folded</source>
        <translation>Schenkel, wenn gebogen</translation>
    </message>
    <message>
        <source>Angles turned through</source>
        <translation>Biegewinkel</translation>
    </message>
    <message>
        <source>90, 90; a minus bends down</source>
        <translation>90, 90; ein Minus biegt nach unten</translation>
    </message>
    <message>
        <source>Inside radius</source>
        <translation>Innenradius</translation>
    </message>
    <message>
        <source>3.2, or one each</source>
        <translation>3.2, oder je einer</translation>
    </message>
    <message>
        <source>Width, not folded</source>
        <translation>Breite, ungebogen</translation>
    </message>
    <message>
        <source>Legs are measured</source>
        <translation>Schenkel gemessen</translation>
    </message>
    <message>
        <source>Brake with a test bend</source>
        <translation>Abkantbank mit Probebiegung</translation>
    </message>
    <message>
        <source>its name, as kept</source>
        <translation>ihr Name, wie gemerkt</translation>
    </message>
    <message>
        <source>Bend line to the grain</source>
        <translation>Biegelinie zur Walzrichtung</translation>
    </message>
    <message>
        <source>Pieces it joins</source>
        <translation>Teile, die es verbindet</translation>
    </message>
    <message>
        <source>short names: tank-wrap, tank-end</source>
        <translation>Kurznamen: tank-wrap, tank-end</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Stoß</translation>
    </message>
    <message>
        <source>Other metal</source>
        <translation>Anderes Metall</translation>
    </message>
    <message>
        <source>Other thickness</source>
        <translation>Andere Dicke</translation>
    </message>
    <message>
        <source>Length of one seam</source>
        <translation>Länge einer Naht</translation>
    </message>
    <message>
        <source>Seam closes on itself</source>
        <translation>Naht schließt sich</translation>
    </message>
    <message>
        <source>Dry fit first</source>
        <translation>Erst trocken anpassen</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>Goal</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Solvent used</source>
        <translation>Lösemittel benutzt</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Hand</translation>
    </message>
    <message>
        <source>Gas on the machine</source>
        <translation>Gas am Gerät</translation>
    </message>
    <message>
        <source>Wire diameter</source>
        <translation>Drahtdurchmesser</translation>
    </message>
    <message>
        <source>Transfer</source>
        <translation>Lichtbogenart</translation>
    </message>
    <message>
        <source>Thickness when new</source>
        <translation>Dicke im Neuzustand</translation>
    </message>
    <message>
        <source>Measured beside the holes</source>
        <translation>Neben den Löchern gemessen</translation>
    </message>
    <message>
        <source>Holes</source>
        <translation>Löcher</translation>
    </message>
    <message>
        <source>Region they lie in</source>
        <translation>Bereich der Löcher</translation>
    </message>
    <message>
        <source>Sheet behind</source>
        <translation>Blech dahinter</translation>
    </message>
    <message>
        <source>Whole panel</source>
        <translation>Ganzes Feld</translation>
    </message>
    <message>
        <source>Carries load</source>
        <translation>Trägt Last</translation>
    </message>
    <message>
        <source>Water stands there</source>
        <translation>Wasser steht dort</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>two lengths with an x between, such as 120 x 80 mm</source>
        <translation>zwei Längen mit einem x dazwischen, wie 120 x 80 mm</translation>
    </message>
    <message>
        <source>two lengths above zero</source>
        <translation>zwei Längen über null</translation>
    </message>
    <message>
        <source>filler {filler}</source>
        <translation>Zusatz {filler}</translation>
    </message>
    <message>
        <source>gas {gas}</source>
        <translation>Gas {gas}</translation>
    </message>
    <message>
        <source>discs</source>
        <translation>Scheiben</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Netzstrom</translation>
    </message>
    <message>
        <source>time at the bench</source>
        <translation>Zeit an der Werkbank</translation>
    </message>
    <message>
        <source>shop rule by radius</source>
        <translation>Werkstattregel nach Radius</translation>
    </message>
    <message>
        <source>airframe handbook</source>
        <translation>Handbuch für Flugzeugzellen</translation>
    </message>
    <message>
        <source>middle of the sheet</source>
        <translation>Blechmitte</translation>
    </message>
    <message>
        <source>fit {name} together dry, mark, take apart</source>
        <translation>{name} trocken zusammenpassen, anzeichnen, zerlegen</translation>
    </message>
    <message>
        <source>{task} covers it up</source>
        <translation>{task} deckt es zu</translation>
    </message>
    <message>
        <source>{later} closes the access to {task}</source>
        <translation>{later} verschließt den Zugang zu {task}</translation>
    </message>
    <message>
        <source>said to come first</source>
        <translation>soll zuerst kommen</translation>
    </message>
    <message>
        <source>has to be cut before it is fitted</source>
        <translation>muss vor dem Anpassen geschnitten sein</translation>
    </message>
    <message>
        <source>has to be cut</source>
        <translation>muss geschnitten sein</translation>
    </message>
    <message>
        <source>welded only after a dry fit</source>
        <translation>erst nach trockenem Anpassen schweißen</translation>
    </message>
    <message>
        <source> before </source>
        <translation> vor </translation>
    </message>
    <message>
        <source>no circle: take one of these links out</source>
        <translation>kein Kreis: eine dieser Verknüpfungen herausnehmen</translation>
    </message>
    <message>
        <source> (done)</source>
        <translation> (erledigt)</translation>
    </message>
    <message>
        <source>What waits for what</source>
        <translation>Was worauf wartet</translation>
    </message>
    <message>
        <source>{task}: no card: {problem}</source>
        <translation>{task}: keine Karte: {problem}</translation>
    </message>
    <message>
        <source>{task}: no blank: {problem}</source>
        <translation>{task}: kein Zuschnitt: {problem}</translation>
    </message>
    <message>
        <source>{piece}: no room on {sheet}</source>
        <translation>{piece}: kein Platz auf {sheet}</translation>
    </message>
    <message>
        <source>{task}: the log has no entry {word}</source>
        <translation>{task}: das Schweißbuch hat keinen Eintrag {word}</translation>
    </message>
    <message>
        <source>holes are filled by MIG, and no machine on the bench does that</source>
        <translation>Löcher werden mit MIG/MAG gefüllt, und kein Gerät der Werkbank kann das</translation>
    </message>
    <message>
        <source>no figures for filling a hole in this sheet: {problem}</source>
        <translation>keine Werte für das Füllen eines Lochs in diesem Blech: {problem}</translation>
    </message>
    <message>
        <source>with a bar behind</source>
        <translation>mit Schiene dahinter</translation>
    </message>
    <message>
        <source>onto the sheet behind</source>
        <translation>auf das Blech dahinter</translation>
    </message>
    <message>
        <source>repair in {metal}</source>
        <translation>Reparatur in {metal}</translation>
    </message>
    <message>
        <source>patch in {metal}</source>
        <translation>Flicken in {metal}</translation>
    </message>
    <message>
        <source>a load-bearing part</source>
        <translation>ein lasttragendes Teil</translation>
    </message>
    <message>
        <source>repair of {part}</source>
        <translation>Reparatur: {part}</translation>
    </message>
    <message>
        <source>its failure can hurt someone: the maker&apos;s manual, local rules and a qualified welder decide</source>
        <translation>sein Versagen kann jemanden verletzen: Herstellerhandbuch, örtliche Vorschriften und ein geprüfter Schweißer entscheiden</translation>
    </message>
    <message>
        <source>the same damage in sheet that carries nothing</source>
        <translation>der gleiche Schaden in Blech, das nichts trägt</translation>
    </message>
    <message>
        <source>{left} is left of {nominal}, less than {share:.0%}: the holes are only where it broke through first</source>
        <translation>{left} ist übrig von {nominal}, weniger als {share:.0%}: die Löcher sind nur, wo es zuerst durchgebrochen ist</translation>
    </message>
    <message>
        <source>{left} all round burns away beside a weld (least {least}): no edge to join a patch to</source>
        <translation>{left} rundum brennt neben einer Naht weg (mindestens {least}): keine Kante, an die ein Flicken passt</translation>
    </message>
    <message>
        <source>the sheet behind is thin too: cut out, look, and mend that first, as it gets covered up</source>
        <translation>das Blech dahinter ist auch dünn: ausschneiden, ansehen und das zuerst ausbessern, denn es wird zugedeckt</translation>
    </message>
    <message>
        <source>the cut-out takes {part:.0%} of the panel; above {most:.0%} a new panel is less work</source>
        <translation>der Ausschnitt nimmt {part:.0%} des Felds ein; über {most:.0%} macht ein neues Feld weniger Arbeit</translation>
    </message>
    <message>
        <source>what is too much for a patch is too much for plugs</source>
        <translation>was für einen Flicken zu viel ist, ist für Lochfüllungen zu viel</translation>
    </message>
    <message>
        <source>the largest hole, {largest}, is drilled to {drilled}; up to {limit} can be filled {onto}</source>
        <translation>das größte Loch, {largest}, wird auf {drilled} gebohrt; bis {limit} lässt es sich füllen {onto}</translation>
    </message>
    <message>
        <source>the two nearest of {count} holes, as drawn, stand {distance} apart</source>
        <translation>die zwei nächsten von {count} Löchern, wie gezeichnet, stehen {distance} auseinander</translation>
    </message>
    <message>
        <source>{count} holes in the region stand about {distance} apart</source>
        <translation>{count} Löcher im Bereich stehen etwa {distance} auseinander</translation>
    </message>
    <message>
        <source>leaving {width} of sheet between</source>
        <translation>dazwischen bleiben {width} Blech</translation>
    </message>
    <message>
        <source>and run into each other when drilled</source>
        <translation>und laufen beim Bohren ineinander</translation>
    </message>
    <message>
        <source>{stand}, {between}; plugs want {distance} between middles</source>
        <translation>{stand}, {between}; Lochfüllungen brauchen {distance} zwischen den Mitten</translation>
    </message>
    <message>
        <source>{plugs:.1f} kJ of arc in the region ({per_area:.1f} J/mm2) for the plugs against {patch:.1f} kJ along the edge of a patch: the plugs would warp it more</source>
        <translation>{plugs:.1f} kJ Lichtbogen im Bereich ({per_area:.1f} J/mm2) für die Lochfüllungen gegen {patch:.1f} kJ am Rand eines Flickens: die Lochfüllungen würden es mehr verziehen</translation>
    </message>
    <message>
        <source>{plugs:.1f} kJ of arc in the region ({per_area:.1f} J/mm2) for the plugs against {patch:.1f} kJ along the edge of a patch: the patch would warp it more</source>
        <translation>{plugs:.1f} kJ Lichtbogen im Bereich ({per_area:.1f} J/mm2) für die Lochfüllungen gegen {patch:.1f} kJ am Rand eines Flickens: der Flicken würde es mehr verziehen</translation>
    </message>
    <message>
        <source>about {plugs:.0f} min for the plugs, {patch:.0f} min for a patch</source>
        <translation>etwa {plugs:.0f} min für die Lochfüllungen, {patch:.0f} min für einen Flicken</translation>
    </message>
    <message>
        <source>Tap and prick all round before cutting: mark where the metal is bright and full thickness.</source>
        <translation>Vor dem Schneiden rundum abklopfen und anstechen: anzeichnen, wo das Metall blank und voll dick ist.</translation>
    </message>
    <message>
        <source>Shine a lamp from behind in the dark: light through the seam is a missed spot.</source>
        <translation>Im Dunkeln von hinten mit der Lampe leuchten: Licht durch die Naht ist eine ausgelassene Stelle.</translation>
    </message>
    <message>
        <source>Water stands here: open a drain, and seal and paint the inside, or it comes back.</source>
        <translation>Hier steht Wasser: einen Abfluss öffnen und innen abdichten und streichen, sonst kommt es wieder.</translation>
    </message>
    <message>
        <source>Nothing behind: hold a copper bar tight against the back while filling.</source>
        <translation>Nichts dahinter: beim Füllen eine Kupferschiene fest an die Rückseite halten.</translation>
    </message>
    <message>
        <source>Clamp the sheet tight to what is behind: a gap blows the plug out.</source>
        <translation>Das Blech fest an das spannen, was dahinter ist: ein Spalt bläst die Füllung hinaus.</translation>
    </message>
    <message>
        <source>A vehicle&apos;s own rules may ask for a seam all round or forbid the repair: read them first.</source>
        <translation>Die Vorschriften eines Fahrzeugs können eine Naht ringsum verlangen oder die Reparatur verbieten: sie zuerst lesen.</translation>
    </message>
    <message>
        <source>region {size} (dotted)</source>
        <translation>Bereich {size} (gepunktet)</translation>
    </message>
    <message>
        <source>drill each hole to {diameter}</source>
        <translation>jedes Loch auf {diameter} bohren</translation>
    </message>
    <message>
        <source>fill them in the order of the numbers</source>
        <translation>in der Reihenfolge der Nummern füllen</translation>
    </message>
    <message>
        <source>holes spread evenly: their places were not drawn</source>
        <translation>Löcher gleichmäßig verteilt: ihre Plätze waren nicht gezeichnet</translation>
    </message>
    <message>
        <source>cut out {size}, corners {radius}</source>
        <translation>{size} ausschneiden, Ecken {radius}</translation>
    </message>
    <message>
        <source>{lap} over the edge (dashed)</source>
        <translation>{lap} über den Rand (gestrichelt)</translation>
    </message>
    <message>
        <source>ground to fit</source>
        <translation>passend geschliffen</translation>
    </message>
    <message>
        <source>patch {size}, {lap}</source>
        <translation>Flicken {size}, {lap}</translation>
    </message>
    <message>
        <source>tacks outside, runs inside, by number in their order</source>
        <translation>Heftstellen außen, Raupen innen, nach Nummern in ihrer Folge</translation>
    </message>
    <message>
        <source>{stock}, sheet {number}, {waste:.0%} left over</source>
        <translation>{stock}, Blech {number}, {waste:.0%} Verschnitt</translation>
    </message>
    <message>
        <source>back at the start</source>
        <translation>zurück am Anfang</translation>
    </message>
    <message>
        <source>The gap closes ahead of the torch: wedge it or set it wider at the far end, and lay weights on both sides of the seam.</source>
        <translation>Der Spalt schließt sich vor dem Brenner: keilen oder am fernen Ende weiter einstellen, und Gewichte auf beide Seiten der Naht legen.</translation>
    </message>
    <message>
        <source>The upright leans towards the first bead: prop it square, tack both sides in turn, weld them by turns.</source>
        <translation>Der Steg neigt sich zur ersten Raupe: rechtwinklig abstützen, beide Seiten abwechselnd heften, abwechselnd schweißen.</translation>
    </message>
    <message>
        <source>The upper edge lifts between tacks: clamp or weight it down beside each one.</source>
        <translation>Die obere Kante hebt sich zwischen den Heftstellen: neben jeder niederspannen oder beschweren.</translation>
    </message>
    <message>
        <source>The bead sits outside and opens the corner: hold it square from inside with a block until every run is cold.</source>
        <translation>Die Raupe sitzt außen und öffnet die Ecke: von innen mit einem Klotz rechtwinklig halten, bis jede Raupe kalt ist.</translation>
    </message>
    <message>
        <source>The bead sits inside and closes the corner: hold it square, or a degree open.</source>
        <translation>Die Raupe sitzt innen und schließt die Ecke: rechtwinklig halten, oder ein Grad offen.</translation>
    </message>
    <message>
        <source>Both edges bow along the seam: clamp them to something straight.</source>
        <translation>Beide Kanten biegen sich entlang der Naht: an etwas Geradem festspannen.</translation>
    </message>
    <message>
        <source>The sheet dishes round each plug: do opposite plugs by turns, and let each cool.</source>
        <translation>Das Blech wölbt sich um jede Lochfüllung: gegenüberliegende abwechselnd füllen und jede abkühlen lassen.</translation>
    </message>
    <message>
        <source>{first} or {other}</source>
        <translation>{first} oder {other}</translation>
    </message>
    <message>
        <source>distance: 1 for every quarter that one sheet is thicker than the other, 1 for another kind of joint (half of it among fillets), half for another position, 3 for another family of metal; another process is never alike</source>
        <translation>Abstand: 1 je Viertel, um das ein Blech dicker ist als das andere, 1 für eine andere Stoßart (die Hälfte unter Kehlnähten), einhalb für eine andere Position, 3 für eine andere Metallfamilie; ein anderes Verfahren ist nie ähnlich</translation>
    </message>
    <message>
        <source>1 to {most}, from an offset of 0 on</source>
        <translation>1 bis {most}, ab einem Versatz von 0</translation>
    </message>
    <message>
        <source>a name of 1 to 80 characters</source>
        <translation>ein Name von 1 bis 80 Zeichen</translation>
    </message>
    <message>
        <source>the token that a change was answered with</source>
        <translation>das Zeichen, mit dem auf eine Änderung geantwortet wurde</translation>
    </message>
    <message>
        <source>{log} (tables at {version})</source>
        <translation>{log} (Tabellen: {version})</translation>
    </message>
    <message>
        <source>damaged: {damage}</source>
        <translation>beschädigt: {damage}</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>unversehrt</translation>
    </message>
    <message>
        <source>{welds} welds, {pictures} pictures</source>
        <translation>{welds} Schweißungen, {pictures} Bilder</translation>
    </message>
    <message>
        <source>{pictures} pictures are missing; a backup may hold them</source>
        <translation>{pictures} Bilder fehlen; eine Sicherung kann sie enthalten</translation>
    </message>
    <message>
        <source>{welds} welds wait on this computer to go in</source>
        <translation>{welds} Schweißungen warten auf diesem Rechner auf Eintragung</translation>
    </message>
    <message>
        <source>{backups} dated backups, newest {name}</source>
        <translation>{backups} datierte Sicherungen, neueste {name}</translation>
    </message>
    <message>
        <source>{backups} dated backups</source>
        <translation>{backups} datierte Sicherungen</translation>
    </message>
    <message>
        <source>the columns {names}</source>
        <translation>die Spalten {names}</translation>
    </message>
    <message>
        <source>line {line}: {problem}</source>
        <translation>Zeile {line}: {problem}</translation>
    </message>
    <message>
        <source>comma-separated values, UTF-8</source>
        <translation>kommagetrennte Werte, UTF-8</translation>
    </message>
    <message>
        <source>a number from the list, or the first six characters of its uid</source>
        <translation>eine Nummer aus der Liste, oder die ersten sechs Zeichen ihrer uid</translation>
    </message>
    <message>
        <source>an entry of this log; welds log list shows them</source>
        <translation>ein Eintrag dieses Schweißbuchs; welds log list zeigt sie</translation>
    </message>
    <message>
        <source>an entry of this log; it may have been removed meanwhile</source>
        <translation>ein Eintrag dieses Schweißbuchs; er kann inzwischen entfernt worden sein</translation>
    </message>
    <message>
        <source>a file ending in .csv or .json</source>
        <translation>eine Datei, die auf .csv oder .json endet</translation>
    </message>
    <message>
        <source>settings and outcome (worked-well, worked, failed)</source>
        <translation>Einstellungen und Ergebnis (worked-well, worked, failed)</translation>
    </message>
    <message>
        <source>unchanged: it names the entry for ever</source>
        <translation>unverändert: sie benennt den Eintrag für immer</translation>
    </message>
    <message>
        <source>a UUID, or nothing for a new entry</source>
        <translation>eine UUID, oder nichts für einen neuen Eintrag</translation>
    </message>
    <message>
        <source>the SHA-256 of a picture: 64 hexadecimal digits</source>
        <translation>der SHA-256 eines Bilds: 64 Hexadezimalziffern</translation>
    </message>
    <message>
        <source>names of picture files, or {&quot;name&quot;: ..., &quot;sha256&quot;: ...}</source>
        <translation>Namen von Bilddateien, oder {&quot;name&quot;: ..., &quot;sha256&quot;: ...}</translation>
    </message>
    <message>
        <source>amperes, as in 80</source>
        <translation>Ampere, wie in 80</translation>
    </message>
    <message>
        <source>this is a folder, not a log</source>
        <translation>dies ist ein Ordner, kein Schweißbuch</translation>
    </message>
    <message>
        <source>the log is empty, but backups are there (newest: {name})</source>
        <translation>das Schweißbuch ist leer, aber es gibt Sicherungen (neueste: {name})</translation>
    </message>
    <message>
        <source>the log is missing, but backups are there (newest: {name})</source>
        <translation>das Schweißbuch fehlt, aber es gibt Sicherungen (neueste: {name})</translation>
    </message>
    <message>
        <source>the file is not a log</source>
        <translation>die Datei ist kein Schweißbuch</translation>
    </message>
    <message>
        <source>its folder cannot be made: {reason}</source>
        <translation>ihr Ordner lässt sich nicht anlegen: {reason}</translation>
    </message>
    <message>
        <source>the file is damaged ({found})</source>
        <translation>die Datei ist beschädigt ({found})</translation>
    </message>
    <message>
        <source>a file of up to {size} MB; a larger log moves by backup and restore</source>
        <translation>eine Datei bis {size} MB; ein größeres Schweißbuch zieht über Sicherung und Wiederherstellung um</translation>
    </message>
    <message>
        <source>a file in UTF-8</source>
        <translation>eine Datei in UTF-8</translation>
    </message>
    <message>
        <source>row {row} ({reason})</source>
        <translation>Zeile {row} ({reason})</translation>
    </message>
    <message>
        <source>a file without bad rows; nothing was written</source>
        <translation>eine Datei ohne fehlerhafte Zeilen; nichts wurde geschrieben</translation>
    </message>
    <message>
        <source>pictures the log holds (by SHA-256)</source>
        <translation>Bilder, die das Schweißbuch enthält (nach SHA-256)</translation>
    </message>
    <message>
        <source>the log holds an entry of this uid ({uid}) with another content; edit it there</source>
        <translation>das Schweißbuch enthält einen Eintrag dieser uid ({uid}) mit anderem Inhalt; dort ändern</translation>
    </message>
    <message>
        <source>already number {number} in the log</source>
        <translation>schon Nummer {number} im Schweißbuch</translation>
    </message>
    <message>
        <source>the same uid as row {row}</source>
        <translation>dieselbe uid wie Zeile {row}</translation>
    </message>
    <message>
        <source>the same as row {row}</source>
        <translation>gleich wie Zeile {row}</translation>
    </message>
    <message>
        <source>not JSON ({problem})</source>
        <translation>kein JSON ({problem})</translation>
    </message>
    <message>
        <source>a file with &quot;schema&quot;: &quot;{schema}&quot;</source>
        <translation>eine Datei mit &quot;schema&quot;: &quot;{schema}&quot;</translation>
    </message>
    <message>
        <source>a file with &quot;schema&quot;: &quot;{schema}&quot;, or a list of entries</source>
        <translation>eine Datei mit &quot;schema&quot;: &quot;{schema}&quot;, oder eine Liste von Einträgen</translation>
    </message>
    <message>
        <source>it was opened to read only</source>
        <translation>es wurde nur zum Lesen geöffnet</translation>
    </message>
    <message>
        <source>an entry the log does not hold yet (it holds {number} with another content: edit that, or leave the uid out)</source>
        <translation>ein Eintrag, den das Schweißbuch noch nicht enthält (es enthält {number} mit anderem Inhalt: diesen ändern, oder die uid weglassen)</translation>
    </message>
    <message>
        <source>a change after which the entry was left alone</source>
        <translation>eine Änderung, nach der der Eintrag nicht mehr angerührt wurde</translation>
    </message>
    <message>
        <source>a change that can be taken back</source>
        <translation>eine Änderung, die sich zurücknehmen lässt</translation>
    </message>
    <message>
        <source>one that no other bench has changed meanwhile; show it again and repeat</source>
        <translation>einer, den inzwischen keine andere Werkbank geändert hat; nochmals anzeigen und wiederholen</translation>
    </message>
    <message>
        <source>the log was written by a newer version of the program (its tables: {version}, known: {known})</source>
        <translation>das Schweißbuch wurde von einer neueren Programmversion geschrieben (Tabellen: {version}, bekannt: {known})</translation>
    </message>
    <message>
        <source>the database holds something else than a log</source>
        <translation>die Datenbank enthält etwas anderes als ein Schweißbuch</translation>
    </message>
    <message>
        <source>restore a backup (welds log restore)</source>
        <translation>eine Sicherung wiederherstellen (welds log restore)</translation>
    </message>
    <message>
        <source>open it to read only (--read-only)</source>
        <translation>nur zum Lesen öffnen (--read-only)</translation>
    </message>
    <message>
        <source>try again</source>
        <translation>nochmals versuchen</translation>
    </message>
    <message>
        <source>use the newer version of the program</source>
        <translation>die neuere Programmversion benutzen</translation>
    </message>
    <message>
        <source>bring it up to date</source>
        <translation>auf den neuen Stand bringen</translation>
    </message>
    <message>
        <source>name another log (--log)</source>
        <translation>ein anderes Schweißbuch nennen (--log)</translation>
    </message>
    <message>
        <source>no backup today: {problem}</source>
        <translation>heute keine Sicherung: {problem}</translation>
    </message>
    <message>
        <source>bringing it up to date was stopped; the log is as it was</source>
        <translation>das Aktualisieren wurde angehalten; das Schweißbuch ist, wie es war</translation>
    </message>
    <message>
        <source>1 weld that waited on this computer went into the log</source>
        <translation>1 wartende Schweißung auf diesem Rechner ging ins Schweißbuch</translation>
    </message>
    <message>
        <source>{count} welds that waited on this computer went into the log</source>
        <translation>{count} wartende Schweißungen auf diesem Rechner gingen ins Schweißbuch</translation>
    </message>
    <message>
        <source>{count} welds still wait on this computer: {problem}</source>
        <translation>{count} Schweißungen warten noch auf diesem Rechner: {problem}</translation>
    </message>
    <message>
        <source>there is no log to read</source>
        <translation>es gibt kein Schweißbuch zu lesen</translation>
    </message>
    <message>
        <source>read as the file stands: what was written last may be missing</source>
        <translation>so gelesen, wie die Datei steht: zuletzt Geschriebenes kann fehlen</translation>
    </message>
    <message>
        <source>the log holds nothing yet</source>
        <translation>das Schweißbuch enthält noch nichts</translation>
    </message>
    <message>
        <source>a log at version {version}; open it once to write</source>
        <translation>ein Schweißbuch der Fassung {version}; einmal zum Schreiben öffnen</translation>
    </message>
    <message>
        <source>{problem}; the entry could not be kept on this computer either ({other})</source>
        <translation>{problem}; auch auf diesem Rechner ließ sich der Eintrag nicht aufbewahren ({other})</translation>
    </message>
    <message>
        <source>{problem}; the entry is kept in {folder} and goes in when the log can be written again</source>
        <translation>{problem}; der Eintrag liegt in {folder} und kommt hinein, sobald das Schweißbuch wieder beschreibbar ist</translation>
    </message>
    <message>
        <source>a picture cannot be kept: {reason}</source>
        <translation>ein Bild lässt sich nicht aufbewahren: {reason}</translation>
    </message>
    <message>
        <source>a picture of up to {size} MB</source>
        <translation>ein Bild bis {size} MB</translation>
    </message>
    <message>
        <source>a picture: JPEG, PNG, WebP, TIFF, GIF, BMP or HEIC</source>
        <translation>ein Bild: JPEG, PNG, WebP, TIFF, GIF, BMP oder HEIC</translation>
    </message>
    <message>
        <source>a picture of up to {size} million points</source>
        <translation>ein Bild bis {size} Millionen Punkte</translation>
    </message>
    <message>
        <source>a file, or postgresql+psycopg://USER@HOST/DATABASE</source>
        <translation>eine Datei, oder postgresql+psycopg://USER@HOST/DATABASE</translation>
    </message>
    <message>
        <source>a file of `welds log backup`: this log is on a server</source>
        <translation>eine Datei von `welds log backup`: dieses Schweißbuch liegt auf einem Server</translation>
    </message>
    <message>
        <source>a file of `welds log backup`, whole</source>
        <translation>eine Datei von `welds log backup`, unversehrt</translation>
    </message>
    <message>
        <source>the backup failed ({problem})</source>
        <translation>die Sicherung misslang ({problem})</translation>
    </message>
    <message>
        <source>names and values, as in {&quot;current&quot;: 112, &quot;polarity&quot;: &quot;AC&quot;}</source>
        <translation>Namen und Werte, wie in {&quot;current&quot;: 112, &quot;polarity&quot;: &quot;AC&quot;}</translation>
    </message>
    <message>
        <source>a number from 0 to {largest:g}, in {unit}</source>
        <translation>eine Zahl von 0 bis {largest:g}, in {unit}</translation>
    </message>
    <message>
        <source>a number from 0 to {largest:g}</source>
        <translation>eine Zahl von 0 bis {largest:g}</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>it cannot be written: the file or its folder is read-only</source>
        <translation>nicht beschreibbar: die Datei oder ihr Ordner ist schreibgeschützt</translation>
    </message>
    <message>
        <source>it cannot be opened: folder or permission</source>
        <translation>nicht zu öffnen: Ordner oder Berechtigung</translation>
    </message>
    <message>
        <source>the file is damaged</source>
        <translation>die Datei ist beschädigt</translation>
    </message>
    <message>
        <source>another bench has been writing for too long</source>
        <translation>eine andere Werkbank schreibt schon zu lange</translation>
    </message>
    <message>
        <source>the disk does not read or write</source>
        <translation>der Datenträger liest oder schreibt nicht</translation>
    </message>
    <message>
        <source>permission is missing</source>
        <translation>die Berechtigung fehlt</translation>
    </message>
    <message>
        <source>the server cannot be used ({problem})</source>
        <translation>der Server ist nicht benutzbar ({problem})</translation>
    </message>
    <message>
        <source>a log on a server needs psycopg: pip install &apos;welds[shop]&apos;</source>
        <translation>ein Schweißbuch auf einem Server braucht psycopg: pip install &apos;welds[shop]&apos;</translation>
    </message>
    <message>
        <source>not an address of a log: {problem}</source>
        <translation>keine Adresse eines Schweißbuchs: {problem}</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>{count} characters</source>
        <translation>{count} Zeichen</translation>
    </message>
    <message>
        <source>up to {most}</source>
        <translation>bis {most}</translation>
    </message>
    <message>
        <source>a control character (code {code})</source>
        <translation>ein Steuerzeichen (Code {code})</translation>
    </message>
    <message>
        <source>readable text</source>
        <translation>lesbarer Text</translation>
    </message>
    <message>
        <source>a date such as 2026-03-03, or with a time: 2026-03-03T14:05</source>
        <translation>ein Datum wie 2026-03-03, oder mit Uhrzeit: 2026-03-03T14:05</translation>
    </message>
    <message>
        <source>plain names such as burn-through, or numbers of ISO 6520-1</source>
        <translation>einfache Namen wie burn-through, oder Nummern nach ISO 6520-1</translation>
    </message>
    <message>
        <source>above zero</source>
        <translation>über null</translation>
    </message>
    <message>
        <source>above 0 to 1</source>
        <translation>über 0 bis 1</translation>
    </message>
    <message>
        <source>above 0, up to 180</source>
        <translation>über 0, bis 180</translation>
    </message>
    <message>
        <source>above 0, up to {largest:g}</source>
        <translation>über 0, bis {largest:g}</translation>
    </message>
    <message>
        <source>a tenth of the thickness or more</source>
        <translation>ein Zehntel der Dicke oder mehr</translation>
    </message>
    <message>
        <source>zero or above</source>
        <translation>null oder darüber</translation>
    </message>
    <message>
        <source>below {hottest:g} degC</source>
        <translation>unter {hottest:g} degC</translation>
    </message>
    <message>
        <source>above {lowest:g} to {highest:g} degC</source>
        <translation>über {lowest:g} bis {highest:g} degC</translation>
    </message>
    <message>
        <source>1 and above</source>
        <translation>1 und darüber</translation>
    </message>
    <message>
        <source>above zero to {highest:g} A</source>
        <translation>über null bis {highest:g} A</translation>
    </message>
    <message>
        <source>{reach:.3g} mm and above</source>
        <translation>{reach:.3g} mm und darüber</translation>
    </message>
    <message>
        <source>zero or more</source>
        <translation>null oder mehr</translation>
    </message>
    <message>
        <source>0 to 300 bar</source>
        <translation>0 bis 300 bar</translation>
    </message>
    <message>
        <source>a length such as 2 mm, 0.080 in, 1/8 in</source>
        <translation>eine Länge wie 2 mm, 0.080 in, 1/8 in</translation>
    </message>
    <message>
        <source>, 14 ga</source>
        <translation>, 14 ga</translation>
    </message>
    <message>
        <source>, not negative</source>
        <translation>, nicht negativ</translation>
    </message>
    <message>
        <source>{lowest:g} mm to {highest:g} mm</source>
        <translation>{lowest:g} mm bis {highest:g} mm</translation>
    </message>
    <message>
        <source>a whole gauge number such as 14 ga</source>
        <translation>eine ganze Lehrennummer wie 14 ga</translation>
    </message>
    <message>
        <source>a gauge number only for a known metal (gauges differ by metal), mm or in</source>
        <translation>eine Lehrennummer nur bei bekanntem Metall (Lehren unterscheiden sich je Metall), mm oder in</translation>
    </message>
    <message>
        <source>{allowed}; a number without unit from {low:g} to {high:g} mm</source>
        <translation>{allowed}; eine Zahl ohne Einheit von {low:g} bis {high:g} mm</translation>
    </message>
    <message>
        <source>a travel speed such as 12 ipm, 5 mm/s, 300 mm/min</source>
        <translation>eine Schweißgeschwindigkeit wie 12 ipm, 5 mm/s, 300 mm/min</translation>
    </message>
    <message>
        <source>printed</source>
        <translation>gedruckt</translation>
    </message>
    <message>
        <source>quoted</source>
        <translation>zitiert</translation>
    </message>
    <message>
        <source>derived</source>
        <translation>hergeleitet</translation>
    </message>
    <message>
        <source>practice</source>
        <translation>Praxis</translation>
    </message>
    <message>
        <source>recalled</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>worked out from published figures</source>
        <translation>aus veröffentlichten Werten hergeleitet</translation>
    </message>
    <message>
        <source>common practice, no published source</source>
        <translation>gängige Praxis, keine veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>{text!r} is not a number (digits and a decimal point, no unit)</source>
        <translation>{text!r} ist keine Zahl (Ziffern und ein Dezimalpunkt, keine Einheit)</translation>
    </message>
    <message>
        <source>{text!r} is too large</source>
        <translation>{text!r} ist zu groß</translation>
    </message>
    <message>
        <source>{text!r} is not a whole number</source>
        <translation>{text!r} ist keine ganze Zahl</translation>
    </message>
    <message>
        <source>{text!r} is neither yes nor no</source>
        <translation>{text!r} ist weder yes noch no</translation>
    </message>
    <message>
        <source>{text!r} has an empty entry between its semicolons</source>
        <translation>{text!r} hat einen leeren Eintrag zwischen den Semikolons</translation>
    </message>
    <message>
        <source>{text!r} names an entry twice</source>
        <translation>{text!r} nennt einen Eintrag zweimal</translation>
    </message>
    <message>
        <source>{text} is not believable; allowed: {lowest:g} to {highest:g} {unit}</source>
        <translation>{text} ist nicht glaubhaft; erlaubt: {lowest:g} bis {highest:g} {unit}</translation>
    </message>
    <message>
        <source>{text!r} is not one of {choices}</source>
        <translation>{text!r} ist keins von {choices}</translation>
    </message>
    <message>
        <source>; nearest: {hint}</source>
        <translation>; nächstliegend: {hint}</translation>
    </message>
    <message>
        <source>no such folder</source>
        <translation>kein solcher Ordner</translation>
    </message>
    <message>
        <source>no tables here (files named like metals.csv)</source>
        <translation>keine Tabellen hier (Dateien mit Namen wie metals.csv)</translation>
    </message>
    <message>
        <source>only a header, no rows</source>
        <translation>nur eine Kopfzeile, keine Zeilen</translation>
    </message>
    <message>
        <source>not readable as CSV: {error}</source>
        <translation>nicht als CSV lesbar: {error}</translation>
    </message>
    <message>
        <source>cells are separated by semicolons here; use commas</source>
        <translation>Zellen sind hier durch Semikolons getrennt; Kommas verwenden</translation>
    </message>
    <message>
        <source>unknown column</source>
        <translation>unbekannte Spalte</translation>
    </message>
    <message>
        <source>the column comes {count} times</source>
        <translation>die Spalte kommt {count}-mal vor</translation>
    </message>
    <message>
        <source>the column is missing</source>
        <translation>die Spalte fehlt</translation>
    </message>
    <message>
        <source>columns are missing: {names}</source>
        <translation>Spalten fehlen: {names}</translation>
    </message>
    <message>
        <source>{named} comes twice (first in row {first_line})</source>
        <translation>{named} kommt zweimal vor (zuerst in Zeile {first_line})</translation>
    </message>
    <message>
        <source>{cells} cells, but the header has {columns}</source>
        <translation>{cells} Zellen, aber die Kopfzeile hat {columns}</translation>
    </message>
    <message>
        <source>the cell is empty</source>
        <translation>die Zelle ist leer</translation>
    </message>
    <message>
        <source>source {source_id!r} is not in sources.yaml</source>
        <translation>Quelle {source_id!r} steht nicht in sources.yaml</translation>
    </message>
    <message>
        <source>{low_column} {low:g} is above {high_column} {high:g}</source>
        <translation>{low_column} {low:g} liegt über {high_column} {high:g}</translation>
    </message>
    <message>
        <source>{column!r} is not a column of this table</source>
        <translation>{column!r} ist keine Spalte dieser Tabelle</translation>
    </message>
    <message>
        <source>{day}, digest {digest}</source>
        <translation>{day}, Prüfsumme {digest}</translation>
    </message>
    <message>
        <source>not a date like 2026-01-31: {text!r}</source>
        <translation>kein Datum wie 2026-01-31: {text!r}</translation>
    </message>
    <message>
        <source>{names}, or a number of ISO 6520-1</source>
        <translation>{names}, oder eine Nummer nach ISO 6520-1</translation>
    </message>
    <message>
        <source>the tables hold no filler for this pair</source>
        <translation>die Tabellen enthalten keinen Zusatz für dieses Paar</translation>
    </message>
    <message>
        <source>{pair} for {goal}</source>
        <translation>{pair} für {goal}</translation>
    </message>
    <message>
        <source>the same joint without this goal</source>
        <translation>der gleiche Stoß ohne dieses Ziel</translation>
    </message>
    <message>
        <source>no row answers {goal} for this pair; this is the general choice</source>
        <translation>keine Zeile antwortet für dieses Paar auf {goal}; dies ist die allgemeine Wahl</translation>
    </message>
    <message>
        <source>above 0 A</source>
        <translation>über 0 A</translation>
    </message>
    <message>
        <source>filter shade for {process} at {current_a:g} A</source>
        <translation>Schutzstufe für {process} bei {current_a:g} A</translation>
    </message>
    <message>
        <source>the regulation&apos;s table ends below this current</source>
        <translation>die Tabelle der Vorschrift endet unter diesem Strom</translation>
    </message>
    <message>
        <source>gauge system</source>
        <translation>Lehrensystem</translation>
    </message>
    <message>
        <source>{system} {lowest} to {highest}</source>
        <translation>{system} {lowest} bis {highest}</translation>
    </message>
    <message>
        <source>expected {fields}</source>
        <translation>erwartet: {fields}</translation>
    </message>
    <message>
        <source>unknown entry {unknown}</source>
        <translation>unbekannter Eintrag {unknown}</translation>
    </message>
    <message>
        <source>{key!r} must be one text</source>
        <translation>{key!r} muss ein einzelner Text sein</translation>
    </message>
    <message>
        <source>{key!r} is missing or empty</source>
        <translation>{key!r} fehlt oder ist leer</translation>
    </message>
    <message>
        <source>&apos;when&apos; is {always!r} or a list of cases</source>
        <translation>&apos;when&apos; ist {always!r} oder eine Liste von Fällen</translation>
    </message>
    <message>
        <source>a case is {attribute: [values]}</source>
        <translation>ein Fall ist {attribute: [values]}</translation>
    </message>
    <message>
        <source>nothing in a request is called {unknown}</source>
        <translation>nichts in einer Anfrage heißt {unknown}</translation>
    </message>
    <message>
        <source>{attribute!r} needs a list of words</source>
        <translation>{attribute!r} braucht eine Liste von Wörtern</translation>
    </message>
    <message>
        <source>{given!r}; allowed: {allowed}</source>
        <translation>{given!r}; erlaubt: {allowed}</translation>
    </message>
    <message>
        <source> (and {number} more; `welds tables check` lists all)</source>
        <translation> (und {number} weitere; `welds tables check` zählt alle auf)</translation>
    </message>
    <message>
        <source>its column sheet {name}.yaml is missing</source>
        <translation>ihr Spaltenblatt {name}.yaml fehlt</translation>
    </message>
    <message>
        <source>no table has this name</source>
        <translation>keine Tabelle heißt so</translation>
    </message>
    <message>
        <source>column sheets are fixed; own tables are CSV only</source>
        <translation>Spaltenblätter stehen fest; eigene Tabellen sind nur CSV</translation>
    </message>
    <message>
        <source>{alloy} in temper {tempers}</source>
        <translation>{alloy}, Zustand {tempers}</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>Aluminium</translation>
    </message>
    <message>
        <source>carbon steel</source>
        <translation>unlegierter Stahl</translation>
    </message>
    <message>
        <source>stainless</source>
        <translation>nichtrostender Stahl</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>general</source>
        <translation>allgemein</translation>
    </message>
    <message>
        <source>galvanised</source>
        <translation>verzinkt</translation>
    </message>
    <message>
        <source>zinc plated</source>
        <translation>galv. verzinkt</translation>
    </message>
    <message>
        <source>zinc primer</source>
        <translation>Zinkgrundierung</translation>
    </message>
    <message>
        <source>cadmium</source>
        <translation>Cadmium</translation>
    </message>
    <message>
        <source>chrome</source>
        <translation>Chrom</translation>
    </message>
    <message>
        <source>paint</source>
        <translation>Anstrich</translation>
    </message>
    <message>
        <source>old paint</source>
        <translation>alter Anstrich</translation>
    </message>
    <message>
        <source>powder coat</source>
        <translation>Pulverlack</translation>
    </message>
    <message>
        <source>sealer</source>
        <translation>Dichtmasse</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>Öl</translation>
    </message>
    <message>
        <source>anodised</source>
        <translation>eloxiert</translation>
    </message>
    <message>
        <source>mill scale</source>
        <translation>Walzzunder</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>Rost</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>lanthana</source>
        <translation>Lanthanoxid</translation>
    </message>
    <message>
        <source>ceria</source>
        <translation>Ceroxid</translation>
    </message>
    <message>
        <source>thoria</source>
        <translation>Thoriumoxid</translation>
    </message>
    <message>
        <source>zirconia</source>
        <translation>Zirkonoxid</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
    <message>
        <source>helium</source>
        <translation>Helium</translation>
    </message>
    <message>
        <source>argon helium</source>
        <translation>Argon-Helium</translation>
    </message>
    <message>
        <source>active</source>
        <translation>aktiv</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>Prozent</translation>
    </message>
    <message>
        <source>efficiency</source>
        <translation>Wirkungsgrad</translation>
    </message>
    <message>
        <source>power factor</source>
        <translation>Leistungsfaktor</translation>
    </message>
    <message>
        <source>inverter</source>
        <translation>Inverter</translation>
    </message>
    <message>
        <source>corrected inverter</source>
        <translation>Inverter mit PFC</translation>
    </message>
    <message>
        <source>transformer</source>
        <translation>Transformator</translation>
    </message>
    <message>
        <source>motor generator</source>
        <translation>Umformer</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>square</source>
        <translation>Rechteck</translation>
    </message>
    <message>
        <source>sine</source>
        <translation>Sinus</translation>
    </message>
    <message>
        <source>sheet</source>
        <translation>Blech</translation>
    </message>
    <message>
        <source>structural</source>
        <translation>Stahlbau</translation>
    </message>
    <message>
        <source>blackened tungsten</source>
        <translation>schwarze Wolframelektrode</translation>
    </message>
    <message>
        <source>burn through</source>
        <translation>Durchbrand</translation>
    </message>
    <message>
        <source>convex bead</source>
        <translation>überwölbte Raupe</translation>
    </message>
    <message>
        <source>crack</source>
        <translation>Riss</translation>
    </message>
    <message>
        <source>crater crack</source>
        <translation>Endkraterriss</translation>
    </message>
    <message>
        <source>distortion</source>
        <translation>Verzug</translation>
    </message>
    <message>
        <source>excess penetration</source>
        <translation>zu große Wurzelüberhöhung</translation>
    </message>
    <message>
        <source>heat tint</source>
        <translation>Anlauffarben</translation>
    </message>
    <message>
        <source>incomplete penetration</source>
        <translation>ungenügende Durchschweißung</translation>
    </message>
    <message>
        <source>lack of fusion</source>
        <translation>Bindefehler</translation>
    </message>
    <message>
        <source>oxide inclusion</source>
        <translation>Oxideinschluss</translation>
    </message>
    <message>
        <source>poor restart</source>
        <translation>Ansatzfehler</translation>
    </message>
    <message>
        <source>porosity</source>
        <translation>Poren</translation>
    </message>
    <message>
        <source>soot</source>
        <translation>Ruß</translation>
    </message>
    <message>
        <source>spatter</source>
        <translation>Spritzer</translation>
    </message>
    <message>
        <source>stray arc</source>
        <translation>Zündstelle</translation>
    </message>
    <message>
        <source>tungsten inclusion</source>
        <translation>Wolframeinschluss</translation>
    </message>
    <message>
        <source>undercut</source>
        <translation>Einbrandkerbe</translation>
    </message>
    <message>
        <source>underfill</source>
        <translation>Decklagenunterwölbung</translation>
    </message>
    <message>
        <source>uneven bead</source>
        <translation>ungleichmäßige Raupe</translation>
    </message>
    <message>
        <source>wandering arc</source>
        <translation>wandernder Lichtbogen</translation>
    </message>
    <message>
        <source>wide etch band</source>
        <translation>breiter Ätzsaum</translation>
    </message>
    <message>
        <source>wire feed trouble</source>
        <translation>Störung im Drahtvorschub</translation>
    </message>
    <message>
        <source>{words} and {last}</source>
        <translation>{words} und {last}</translation>
    </message>
    <message>
        <source>{words} or {last}</source>
        <translation>{words} oder {last}</translation>
    </message>
    <message>
        <source>the data folder is missing; install the program again</source>
        <translation>der Datenordner fehlt; das Programm neu installieren</translation>
    </message>
    <message>
        <source>{letters}, an AWS number such as 1G, or words such as flat</source>
        <translation>{letters}, eine AWS-Nummer wie 1G, oder Wörter wie flat</translation>
    </message>
    <message>
        <source>{part!r} is missing or empty</source>
        <translation>{part!r} fehlt oder ist leer</translation>
    </message>
    <message>
        <source>&apos;columns&apos; is missing</source>
        <translation>&apos;columns&apos; fehlt</translation>
    </message>
    <message>
        <source>this closing column is always of type {kind}</source>
        <translation>diese Schlussspalte ist immer vom Typ {kind}</translation>
    </message>
    <message>
        <source>a key column cannot be optional</source>
        <translation>eine Schlüsselspalte kann nicht optional sein</translation>
    </message>
    <message>
        <source>&apos;order&apos; is a list of pairs of columns</source>
        <translation>&apos;order&apos; ist eine Liste von Spaltenpaaren</translation>
    </message>
    <message>
        <source>&apos;order&apos; names no number column</source>
        <translation>&apos;order&apos; nennt keine Zahlenspalte</translation>
    </message>
    <message>
        <source>expected {type: ..., meaning: ...}</source>
        <translation>erwartet: {type: ..., meaning: ...}</translation>
    </message>
    <message>
        <source>&apos;meaning&apos; is missing</source>
        <translation>&apos;meaning&apos; fehlt</translation>
    </message>
    <message>
        <source>&apos;choices&apos; must be a list of words</source>
        <translation>&apos;choices&apos; muss eine Liste von Wörtern sein</translation>
    </message>
    <message>
        <source>&apos;choices&apos; belongs to a choice or a list</source>
        <translation>&apos;choices&apos; gehört zu einer Auswahl oder Liste</translation>
    </message>
    <message>
        <source>optional, min or max: {error}</source>
        <translation>optional, min oder max: {error}</translation>
    </message>
    <message>
        <source>a number needs its &apos;unit&apos; (1 for a plain ratio)</source>
        <translation>eine Zahl braucht ihre &apos;unit&apos; (1 für ein bloßes Verhältnis)</translation>
    </message>
    <message>
        <source>&apos;min&apos; must be below &apos;max&apos;</source>
        <translation>&apos;min&apos; muss unter &apos;max&apos; liegen</translation>
    </message>
    <message>
        <source>&apos;min&apos; and &apos;max&apos; belong to a number or an integer</source>
        <translation>&apos;min&apos; und &apos;max&apos; gehören zu einer Zahl oder ganzen Zahl</translation>
    </message>
    <message>
        <source>{part!r} is missing; it lists column names</source>
        <translation>{part!r} fehlt; es zählt Spaltennamen auf</translation>
    </message>
    <message>
        <source>{part!r} names no column of this sheet</source>
        <translation>{part!r} nennt keine Spalte dieses Blatts</translation>
    </message>
    <message>
        <source>unknown entry {key!r}; allowed: {allowed}</source>
        <translation>unbekannter Eintrag {key!r}; erlaubt: {allowed}</translation>
    </message>
    <message>
        <source>source {key}: expected citation, status, how_read</source>
        <translation>Quelle {key}: erwartet: citation, status, how_read</translation>
    </message>
    <message>
        <source>source {key}: {problem}</source>
        <translation>Quelle {key}: {problem}</translation>
    </message>
    <message>
        <source>{name!r} is missing or empty</source>
        <translation>{name!r} fehlt oder ist leer</translation>
    </message>
    <message>
        <source>unknown entry {name!r}</source>
        <translation>unbekannter Eintrag {name!r}</translation>
    </message>
    <message>
        <source>{name!r} must be one text</source>
        <translation>{name!r} muss ein einzelner Text sein</translation>
    </message>
    <message>
        <source>expected &apos;name: value&apos; lines at the top</source>
        <translation>oben Zeilen &apos;name: value&apos; erwartet</translation>
    </message>
    <message>
        <source>not readable as YAML: {problem}</source>
        <translation>nicht als YAML lesbar: {problem}</translation>
    </message>
    <message>
        <source>not readable as YAML: nested too deeply</source>
        <translation>nicht als YAML lesbar: zu tief verschachtelt</translation>
    </message>
    <message>
        <source>tags (!) are not used here</source>
        <translation>Tags (!) werden hier nicht verwendet</translation>
    </message>
    <message>
        <source>anchors and aliases (&amp; and *) are not used here; write it out</source>
        <translation>Anker und Aliase (&amp; und *) werden hier nicht verwendet; ausschreiben</translation>
    </message>
    <message>
        <source>a key must be a plain word</source>
        <translation>ein Schlüssel muss ein einfaches Wort sein</translation>
    </message>
    <message>
        <source>key {key!r} comes twice (first on line {line})</source>
        <translation>Schlüssel {key!r} kommt zweimal vor (zuerst in Zeile {line})</translation>
    </message>
    <message>
        <source>cannot be read: {problem}</source>
        <translation>nicht lesbar: {problem}</translation>
    </message>
    <message>
        <source>larger than {size} MB; no table is</source>
        <translation>größer als {size} MB; so groß ist keine Tabelle</translation>
    </message>
    <message>
        <source>not a UTF-8 text file (byte {start})</source>
        <translation>keine UTF-8-Textdatei (Byte {start})</translation>
    </message>
    <message>
        <source>not a text file: it holds zero bytes</source>
        <translation>keine Textdatei: sie enthält Nullbytes</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>melts right through ({width} wide at the root)</source>
        <translation>schmilzt ganz durch ({width} breit an der Wurzel)</translation>
    </message>
    <message>
        <source>Fused width    {length}</source>
        <translation>Schmelzbreite  {length}</translation>
    </message>
    <message>
        <source>Fused depth    {depth}</source>
        <translation>Schmelztiefe   {depth}</translation>
    </message>
    <message>
        <source>Burn-through   {margin}</source>
        <translation>Durchbrand     {margin}</translation>
    </message>
    <message>
        <source>Current        {through:.0f} A just melts through, {collapse:.0f} A falls out</source>
        <translation>Schweißstrom   {through:.0f} A schmilzt gerade durch, {collapse:.0f} A fällt heraus</translation>
    </message>
    <message>
        <source>Pool           {length} long</source>
        <translation>Schmelzbad     {length} lang</translation>
    </message>
    <message>
        <source>Heat input     {heat} (EN 1011-1)</source>
        <translation>Wärmeeinbring. {heat} (EN 1011-1)</translation>
    </message>
    <message>
        <source>Added metal    {area} by the wire feed</source>
        <translation>Zusatz         {area} nach dem Drahtvorschub</translation>
    </message>
    <message>
        <source>a fillet of {length} leg</source>
        <translation>eine Kehlnaht mit Schenkel {length}</translation>
    </message>
    <message>
        <source>Cooling        {time:.1f} s from 800 to 500 degC (EN 1011-2)</source>
        <translation>Abkühlung      {time:.1f} s von 800 auf 500 degC (EN 1011-2)</translation>
    </message>
    <message>
        <source>Heat-affected  {wide} beside the bead, above {limit}</source>
        <translation>Wärmeeinfluss  {wide} neben der Raupe, über {limit}</translation>
    </message>
    <message>
        <source>Reckoned with  {voltage:.1f} V, of which {middle:.0%} reach the work ({low:.0%} to {high:.0%}): {text}</source>
        <translation>Gerechnet mit  {voltage:.1f} V, davon erreichen {middle:.0%} das Werkstück ({low:.0%} bis {high:.0%}): {text}</translation>
    </message>
    <message>
        <source>Conduction only, give or take {error:.0%} in the heat: to think with, not a procedure.</source>
        <translation>Nur Wärmeleitung, plus/minus {error:.0%} in der Wärme: zum Nachdenken, keine Schweißanweisung.</translation>
    </message>
    <message>
        <source>Trend only: {text}</source>
        <translation>Nur Tendenz: {text}</translation>
    </message>
    <message>
        <source>falls out: {share:.0%} less current would hold it</source>
        <translation>fällt heraus: {share:.0%} weniger Strom würde es halten</translation>
    </message>
    <message>
        <source>{margin:.0%} more current before it falls out</source>
        <translation>{margin:.0%} mehr Strom, bis es herausfällt</translation>
    </message>
    <message>
        <source>{middle} ({low} to {high})</source>
        <translation>{middle} ({low} bis {high})</translation>
    </message>
    <message>
        <source>mig</source>
        <translation>MIG/MAG</translation>
    </message>
    <message>
        <source>tig</source>
        <translation>WIG</translation>
    </message>
    <message>
        <source>air-cooled</source>
        <translation>luftgekühlt</translation>
    </message>
    <message>
        <source>water-cooled</source>
        <translation>wassergekühlt</translation>
    </message>
    <message>
        <source>{name}  (in use)</source>
        <translation>{name}  (in Gebrauch)</translation>
    </message>
    <message>
        <source>all at once</source>
        <translation>alle zugleich</translation>
    </message>
    <message>
        <source>conductors for about {current:.0f} A [NEC_630_2008]; who wires it goes by the local code</source>
        <translation>Leiter für etwa {current:.0f} A [NEC_630_2008]; wer anschließt, richtet sich nach der örtlichen Vorschrift</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>Im Regal</translation>
    </message>
    <message>
        <source>nothing stated, so nothing is ruled out</source>
        <translation>nichts angegeben, also ist nichts ausgeschlossen</translation>
    </message>
    <message>
        <source>processes</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>AC</source>
        <translation>AC</translation>
    </message>
    <message>
        <source>no AC</source>
        <translation>kein AC</translation>
    </message>
    <message>
        <source>pulse</source>
        <translation>Impuls</translation>
    </message>
    <message>
        <source>no pulse</source>
        <translation>kein Impuls</translation>
    </message>
    <message>
        <source>no pedal</source>
        <translation>kein Fußregler</translation>
    </message>
    <message>
        <source>has</source>
        <translation>hat</translation>
    </message>
    <message>
        <source>wires</source>
        <translation>Drähte</translation>
    </message>
    <message>
        <source>{minutes:g} minutes in ten at {amps:g} A</source>
        <translation>{minutes:g} von zehn Minuten bei {amps:g} A</translation>
    </message>
    <message>
        <source>{amps:g} A at {duty:g} %</source>
        <translation>{amps:g} A bei {duty:g} %</translation>
    </message>
    <message>
        <source>{amps:g} A on AC</source>
        <translation>{amps:g} A bei AC</translation>
    </message>
    <message>
        <source>up to {drawn:.0f} A from {volts:g} V at {current:g} A ({known})</source>
        <translation>bis {drawn:.0f} A aus {volts:g} V bei {current:g} A ({known})</translation>
    </message>
    <message>
        <source>{figures} {unit} only</source>
        <translation>nur {figures} {unit}</translation>
    </message>
    <message>
        <source>{low:g} {unit}, fixed</source>
        <translation>{low:g} {unit}, fest</translation>
    </message>
    <message>
        <source>{low} to {high} {unit}</source>
        <translation>{low} bis {high} {unit}</translation>
    </message>
    <message>
        <source>in steps of {step:g}</source>
        <translation>in Stufen von {step:g}</translation>
    </message>
    <message>
        <source>rods</source>
        <translation>Schweißstäbe</translation>
    </message>
    <message>
        <source>{gas}, {litres:g} L left</source>
        <translation>{gas}, noch {litres:g} L</translation>
    </message>
    <message>
        <source>cups</source>
        <translation>Gasdüsen</translation>
    </message>
    <message>
        <source>cups for a lens</source>
        <translation>Gasdüsen für Linse</translation>
    </message>
    <message>
        <source>gas lenses</source>
        <translation>Gaslinsen</translation>
    </message>
    <message>
        <source>collets</source>
        <translation>Spannhülsen</translation>
    </message>
    <message>
        <source>backing bars</source>
        <translation>Badsicherungen</translation>
    </message>
    <message>
        <source>brushes for</source>
        <translation>Bürsten für</translation>
    </message>
    <message>
        <source>wheels for</source>
        <translation>Schleifscheiben für</translation>
    </message>
    <message>
        <source>tungsten types</source>
        <translation>Elektrodentypen</translation>
    </message>
    <message>
        <source>tungsten sizes</source>
        <translation>Elektrodengrößen</translation>
    </message>
    <message>
        <source>filler metals</source>
        <translation>Zusatzwerkstoffe</translation>
    </message>
    <message>
        <source>rod sizes</source>
        <translation>Stabgrößen</translation>
    </message>
    <message>
        <source>wire sizes</source>
        <translation>Drahtgrößen</translation>
    </message>
    <message>
        <source>shade {low}</source>
        <translation>Schutzstufe {low}</translation>
    </message>
    <message>
        <source>shades {low} to {high}</source>
        <translation>Schutzstufen {low} bis {high}</translation>
    </message>
    <message>
        <source>{first} and {second}</source>
        <translation>{first} und {second}</translation>
    </message>
    <message>
        <source>association&apos;s table</source>
        <translation>Tabelle des Verbands</translation>
    </message>
    <message>
        <source>design handbook, inches</source>
        <translation>Konstruktionshandbuch, Zoll</translation>
    </message>
    <message>
        <source>{number} legs</source>
        <translation>{number} Schenkel</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>gestreckt</translation>
    </message>
    <message>
        <source>Blank, {metal}, {thickness}, {legs}</source>
        <translation>Zuschnitt, {metal}, {thickness}, {legs}</translation>
    </message>
    <message>
        <source>legs measured {where}</source>
        <translation>Schenkel gemessen: {where}</translation>
    </message>
    <message>
        <source>Other methods</source>
        <translation>Andere Verfahren</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Flat length {length}</source>
        <translation>Gestreckte Länge {length}</translation>
    </message>
    <message>
        <source>  between {low} and {high} by the methods in use; one test bend on your brake narrows that</source>
        <translation>  zwischen {low} und {high} nach den benutzten Verfahren; eine Probebiegung an der eigenen Abkantbank grenzt das ein</translation>
    </message>
    <message>
        <source>Width {length}</source>
        <translation>Breite {length}</translation>
    </message>
    <message>
        <source>up</source>
        <translation>nach oben</translation>
    </message>
    <message>
        <source>down</source>
        <translation>nach unten</translation>
    </message>
    <message>
        <source>Bend {number}: {angle:g} deg {way}, line at {line}, inside radius {radius}, allowance {allowance}, deduction {deduction}, K {k:.3f} ({method}, {grade})</source>
        <translation>Biegung {number}: {angle:g} Grad {way}, Linie bei {line}, Innenradius {radius}, Zugabe {allowance}, Abzug {deduction}, K {k:.3f} ({method}, {grade})</translation>
    </message>
    <message>
        <source>Least inside radius, {verdict}: {radius} asked</source>
        <translation>Kleinster Innenradius, {verdict}: {radius} verlangt</translation>
    </message>
    <message>
        <source>bend line along the rolling direction</source>
        <translation>Biegelinie längs der Walzrichtung</translation>
    </message>
    <message>
        <source>advises against it</source>
        <translation>rät davon ab</translation>
    </message>
    <message>
        <source>joint wants {current}</source>
        <translation>Stoß will {current}</translation>
    </message>
    <message>
        <source>wire {figure}</source>
        <translation>Draht {figure}</translation>
    </message>
    <message>
        <source>Sources: {ids}; `welds tables sources` describes them</source>
        <translation>Quellen: {ids}; `welds tables sources` beschreibt sie</translation>
    </message>
    <message>
        <source>Joint wants: more or less than the machine gives; its card says what can be done</source>
        <translation>Stoß will: mehr oder weniger, als das Gerät gibt; seine Karte sagt, was sich tun lässt</translation>
    </message>
    <message>
        <source>* rests on practice or memory: no published source covers it</source>
        <translation>* beruht auf Praxis oder Gedächtnis: keine veröffentlichte Quelle deckt es ab</translation>
    </message>
    <message>
        <source>{metal} to {other}</source>
        <translation>{metal} an {other}</translation>
    </message>
    <message>
        <source>position {position}</source>
        <translation>Position {position}</translation>
    </message>
    <message>
        <source>For {machine}</source>
        <translation>Für {machine}</translation>
    </message>
    <message>
        <source>For {machine}.</source>
        <translation>Für {machine}.</translation>
    </message>
    <message>
        <source>{thickness} on {other}</source>
        <translation>{thickness} auf {other}</translation>
    </message>
    <message>
        <source>gap {length}</source>
        <translation>Spalt {length}</translation>
    </message>
    <message>
        <source>gap 0 mm</source>
        <translation>Spalt 0 mm</translation>
    </message>
    <message>
        <source>usual gas</source>
        <translation>übliches Gas</translation>
    </message>
    <message>
        <source>{length} wire</source>
        <translation>Draht {length}</translation>
    </message>
    <message>
        <source>usual wire</source>
        <translation>üblicher Draht</translation>
    </message>
    <message>
        <source>usual transfer</source>
        <translation>übliche Lichtbogenart</translation>
    </message>
    <message>
        <source>goal: {goal}</source>
        <translation>Ziel: {goal}</translation>
    </message>
    <message>
        <source>no goal</source>
        <translation>kein Ziel</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>blank</translation>
    </message>
    <message>
        <source>wiped with {solvent}</source>
        <translation>abgewischt mit {solvent}</translation>
    </message>
    <message>
        <source>no solvent</source>
        <translation>kein Lösemittel</translation>
    </message>
    <message>
        <source>loose piece</source>
        <translation>loses Teil</translation>
    </message>
    <message>
        <source>any length</source>
        <translation>beliebige Länge</translation>
    </message>
    <message>
        <source>{this} instead of {base}</source>
        <translation>{this} statt {base}</translation>
    </message>
    <message>
        <source>Figures are rounded as on the card; distances from the base are not.</source>
        <translation>Werte sind wie auf der Karte gerundet; Abstände zur Basis nicht.</translation>
    </message>
    <message>
        <source>tables alone</source>
        <translation>nur Tabellen</translation>
    </message>
    <message>
        <source>Tables alone</source>
        <translation>Nur Tabellen</translation>
    </message>
    <message>
        <source>tables and log</source>
        <translation>Tabellen und Buch</translation>
    </message>
    <message>
        <source>Tables and log</source>
        <translation>Tabellen und Buch</translation>
    </message>
    <message>
        <source>{words}; for {machine}</source>
        <translation>{words}; für {machine}</translation>
    </message>
    <message>
        <source>{text} (For {columns})</source>
        <translation>{text} (Für {columns})</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>nicht verwendet</translation>
    </message>
    <message>
        <source>instead of {base}</source>
        <translation>statt {base}</translation>
    </message>
    <message>
        <source>base {base}</source>
        <translation>Basis {base}</translation>
    </message>
    <message>
        <source>points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>follows {setting}: {this} instead of {base}</source>
        <translation>folgt aus {setting}: {this} statt {base}</translation>
    </message>
    <message>
        <source>follows the machine: {this} instead of {base}</source>
        <translation>folgt aus dem Gerät: {this} statt {base}</translation>
    </message>
    <message>
        <source>follows what is asked: {change}</source>
        <translation>folgt aus den Angaben: {change}</translation>
    </message>
    <message>
        <source>no card</source>
        <translation>keine Karte</translation>
    </message>
    <message>
        <source>All columns agree.</source>
        <translation>Alle Spalten stimmen überein.</translation>
    </message>
    <message>
        <source>Side by side: {columns}</source>
        <translation>Vergleich: {columns}</translation>
    </message>
    <message>
        <source>(base)</source>
        <translation>(Basis)</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>The same in all</source>
        <translation>In allen gleich</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>{title} (base)</source>
        <translation>{title} (Basis)</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Do first</source>
        <translation>Zuerst tun</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>task</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>when</source>
        <translation>wann</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>card</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>set-up</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>joints</source>
        <translation>Stöße</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Not answered</source>
        <translation>Nicht beantwortet</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation>Zuschnittliste</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Karten</translation>
    </message>
    <message>
        <source>Pauses</source>
        <translation>Pausen</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Bleche</translation>
    </message>
    <message>
        <source>Tacks: {key}</source>
        <translation>Heftstellen: {key}</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Werkstoffe</translation>
    </message>
    <message>
        <source>{done} of {number} tasks done</source>
        <translation>{done} von {number} Aufgaben erledigt</translation>
    </message>
    <message>
        <source>Repair: {key}</source>
        <translation>Reparatur: {key}</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>zuschneiden</translation>
    </message>
    <message>
        <source>mend</source>
        <translation>ausbessern</translation>
    </message>
    <message>
        <source>weld</source>
        <translation>schweißen</translation>
    </message>
    <message>
        <source>do</source>
        <translation>tun</translation>
    </message>
    <message>
        <source>fit</source>
        <translation>anpassen</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>can wait</source>
        <translation>kann warten</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>later</source>
        <translation>später</translation>
    </message>
    <message>
        <source>{task} (log {welds})</source>
        <translation>{task} (Schweißbuch {welds})</translation>
    </message>
    <message>
        <source>no blank</source>
        <translation>kein Zuschnitt</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>gekantet</translation>
    </message>
    <message>
        <source>{stock}, sheet {number}: {blanks} blanks, {waste:.0%} left over</source>
        <translation>{stock}, Blech {number}: {blanks} Zuschnitte, {waste:.0%} Rest</translation>
    </message>
    <message>
        <source>no card: {problem}</source>
        <translation>keine Karte: {problem}</translation>
    </message>
    <message>
        <source>(learned from 1 past weld)</source>
        <translation>(aus 1 früheren Schweißung gelernt)</translation>
    </message>
    <message>
        <source>(learned from {welds} past welds)</source>
        <translation>(aus {welds} früheren Schweißungen gelernt)</translation>
    </message>
    <message>
        <source>Card {number}: wait between runs until it is below {temperature}</source>
        <translation>Karte {number}: zwischen den Raupen warten bis unter {temperature}</translation>
    </message>
    <message>
        <source>Card {number}: {text}</source>
        <translation>Karte {number}: {text}</translation>
    </message>
    <message>
        <source>on the shelf</source>
        <translation>im Regal</translation>
    </message>
    <message>
        <source>not on the shelf: buy</source>
        <translation>nicht im Regal: kaufen</translation>
    </message>
    <message>
        <source>{litres:.0f} L left</source>
        <translation>noch {litres:.0f} L</translation>
    </message>
    <message>
        <source>buy up to {litres:.0f} L</source>
        <translation>bis zu {litres:.0f} L kaufen</translation>
    </message>
    <message>
        <source>arc time</source>
        <translation>Lichtbogenzeit</translation>
    </message>
    <message>
        <source>welding time at the bench</source>
        <translation>Schweißzeit an der Werkbank</translation>
    </message>
    <message>
        <source>power from the mains</source>
        <translation>Energie aus dem Netz</translation>
    </message>
    <message>
        <source>cost of {what}</source>
        <translation>Kosten: {what}</translation>
    </message>
    <message>
        <source>cost of all of that</source>
        <translation>Kosten von alldem</translation>
    </message>
    <message>
        <source>Sums of the drawn sections with what is lost and what welds come out over; lows and highs are added up by themselves. Cutting, folding, repairs and painting are in none of them; a patch&apos;s seam is where it stands as a joint of its own.</source>
        <translation>Summen der gezeichneten Querschnitte samt dem, was verloren geht und um was Schweißungen größer ausfallen; Unter- und Obergrenzen sind je für sich addiert. Zuschneiden, Kanten, Reparaturen und Lackieren stecken in keiner davon; die Naht eines Flickens zählt dort, wo sie als eigener Stoß steht.</translation>
    </message>
    <message>
        <source>Without a price in the file: {names}</source>
        <translation>Ohne Preis in der Datei: {names}</translation>
    </message>
    <message>
        <source>Buy: {item}</source>
        <translation>Kaufen: {item}</translation>
    </message>
    <message>
        <source>Better with: {item}</source>
        <translation>Besser mit: {item}</translation>
    </message>
    <message>
        <source>Light test: shine a lamp from behind in the dark; light through a seam is a missed spot.</source>
        <translation>Lichttest: im Dunkeln mit einer Lampe von hinten leuchten; Licht durch eine Naht ist eine ausgelassene Stelle.</translation>
    </message>
    <message>
        <source>Look at every crater, start and corner; mend cracks and holes before anything is covered up.</source>
        <translation>Jeden Krater, Ansatz und jede Ecke ansehen; Risse und Löcher ausbessern, bevor etwas verdeckt wird.</translation>
    </message>
    <message>
        <source>card {number}: {text}</source>
        <translation>Karte {number}: {text}</translation>
    </message>
    <message>
        <source>{thickness} to {other}</source>
        <translation>{thickness} an {other}</translation>
    </message>
    <message>
        <source>{conditions}. For {machine}.</source>
        <translation>{conditions}. Für {machine}.</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Belegstufe</translation>
    </message>
    <message>
        <source>Sources and grades</source>
        <translation>Quellen und Belegstufen</translation>
    </message>
    <message>
        <source>Overview</source>
        <translation>Übersicht</translation>
    </message>
    <message>
        <source>What the sums leave out, and what to buy</source>
        <translation>Was die Summen auslassen und was zu kaufen ist</translation>
    </message>
    <message>
        <source>Order of work</source>
        <translation>Arbeitsfolge</translation>
    </message>
    <message>
        <source>Blanks on their sheets</source>
        <translation>Zuschnitte auf ihren Blechen</translation>
    </message>
    <message>
        <source>Blank: {key}</source>
        <translation>Zuschnitt: {key}</translation>
    </message>
    <message>
        <source>Holes and cuts: {key}</source>
        <translation>Löcher und Schnitte: {key}</translation>
    </message>
    <message>
        <source>Card for repair: {key}</source>
        <translation>Karte zur Reparatur: {key}</translation>
    </message>
    <message>
        <source>Cards and their joints</source>
        <translation>Karten und ihre Stöße</translation>
    </message>
    <message>
        <source>Card {number}</source>
        <translation>Karte {number}</translation>
    </message>
    <message>
        <source>Tacks for card {number}: {joint}, {count} alike</source>
        <translation>Heftstellen zu Karte {number}: {joint}, gleiche: {count}</translation>
    </message>
    <message>
        <source>Tacks for card {number}</source>
        <translation>Heftstellen zu Karte {number}</translation>
    </message>
    <message>
        <source>Preliminary: what was done once, not a qualified procedure. Where a code, a customer or safety asks for a qualified one, it has to be qualified by test under the rules that apply.</source>
        <translation>Vorläufig: was einmal gemacht wurde, keine qualifizierte Schweißanweisung. Wo Regelwerk, Kunde oder Sicherheit eine qualifizierte verlangen, muss sie nach den geltenden Regeln durch Prüfung qualifiziert werden.</translation>
    </message>
    <message>
        <source>Preliminary welding procedure specification, log entry {which}</source>
        <translation>Vorläufige Schweißanweisung (pWPS), Schweißbucheintrag {which}</translation>
    </message>
    <message>
        <source>General</source>
        <translation>Allgemeines</translation>
    </message>
    <message>
        <source>Manufacturer</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>Number of this specification</source>
        <translation>Nummer dieser Schweißanweisung</translation>
    </message>
    <message>
        <source>log {entry}</source>
        <translation>Schweißbuch {entry}</translation>
    </message>
    <message>
        <source>Welding procedure qualification record</source>
        <translation>Bericht über die Qualifizierung (WPQR)</translation>
    </message>
    <message>
        <source>none: preliminary</source>
        <translation>keiner: vorläufig</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Welder</source>
        <translation>Schweißer</translation>
    </message>
    <message>
        <source>Parent metal</source>
        <translation>Grundwerkstoff</translation>
    </message>
    <message>
        <source>Designation</source>
        <translation>Bezeichnung</translation>
    </message>
    <message>
        <source>Group (ISO/TR 15608)</source>
        <translation>Gruppe (ISO/TR 15608)</translation>
    </message>
    <message>
        <source>Heat or lot</source>
        <translation>Schmelze oder Charge</translation>
    </message>
    <message>
        <source>Thickness, other piece</source>
        <translation>Dicke, anderes Teil</translation>
    </message>
    <message>
        <source>Outside diameter</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>Welding process (ISO 4063)</source>
        <translation>Schweißprozess (ISO 4063)</translation>
    </message>
    <message>
        <source>Type of joint and weld</source>
        <translation>Stoß- und Nahtart</translation>
    </message>
    <message>
        <source>Welding position (ISO 6947)</source>
        <translation>Schweißposition (ISO 6947)</translation>
    </message>
    <message>
        <source>Preparation, edges and gap</source>
        <translation>Vorbereitung, Kanten und Spalt</translation>
    </message>
    <message>
        <source>Method of preparation and cleaning</source>
        <translation>Art der Vorbereitung und Reinigung</translation>
    </message>
    <message>
        <source>Jigging, tack welds</source>
        <translation>Spannen, Heftstellen</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Raupen</translation>
    </message>
    <message>
        <source>Back gouging, backing</source>
        <translation>Ausfugen, Badsicherung</translation>
    </message>
    <message>
        <source>Filler and gas</source>
        <translation>Zusatz und Gas</translation>
    </message>
    <message>
        <source>Filler, designation</source>
        <translation>Zusatz, Bezeichnung</translation>
    </message>
    <message>
        <source>Filler, size</source>
        <translation>Zusatz, Abmessung</translation>
    </message>
    <message>
        <source>Filler, maker and lot, handling</source>
        <translation>Zusatz, Hersteller und Charge, Handhabung</translation>
    </message>
    <message>
        <source>Shielding gas (ISO 14175)</source>
        <translation>Schutzgas (ISO 14175)</translation>
    </message>
    <message>
        <source>Shielding gas flow</source>
        <translation>Schutzgasdurchfluss</translation>
    </message>
    <message>
        <source>Backing gas</source>
        <translation>Wurzelschutzgas</translation>
    </message>
    <message>
        <source>Electrical</source>
        <translation>Elektrische Werte</translation>
    </message>
    <message>
        <source>Current and polarity</source>
        <translation>Stromart und Polung</translation>
    </message>
    <message>
        <source>Arc voltage</source>
        <translation>Lichtbogenspannung</translation>
    </message>
    <message>
        <source>Balance, frequency, pulse</source>
        <translation>Balance, Frequenz, Impuls</translation>
    </message>
    <message>
        <source>Wire feed speed</source>
        <translation>Drahtvorschub</translation>
    </message>
    <message>
        <source>Mode of metal transfer</source>
        <translation>Art des Werkstoffübergangs</translation>
    </message>
    <message>
        <source>Tungsten electrode, type and size</source>
        <translation>Wolframelektrode, Typ und Größe</translation>
    </message>
    <message>
        <source>Nozzle</source>
        <translation>Gasdüse</translation>
    </message>
    <message>
        <source>Contact tip to work, stick-out</source>
        <translation>Stromdüsenabstand, Überstand</translation>
    </message>
    <message>
        <source>Technique and heat</source>
        <translation>Technik und Wärme</translation>
    </message>
    <message>
        <source>Travel speed</source>
        <translation>Schweißgeschwindigkeit</translation>
    </message>
    <message>
        <source>Weave, torch angle</source>
        <translation>Pendeln, Brennerwinkel</translation>
    </message>
    <message>
        <source>Sketch of the joint, order of runs</source>
        <translation>Skizze des Stoßes, Raupenfolge</translation>
    </message>
    <message>
        <source>Preheat temperature</source>
        <translation>Vorwärmtemperatur</translation>
    </message>
    <message>
        <source>Interpass temperature</source>
        <translation>Zwischenlagentemperatur</translation>
    </message>
    <message>
        <source>Post-heating</source>
        <translation>Nachwärmen</translation>
    </message>
    <message>
        <source>Post-weld heat treatment</source>
        <translation>Wärmenachbehandlung</translation>
    </message>
    <message>
        <source>What came of it</source>
        <translation>Was dabei herauskam</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Imperfections (ISO 6520-1)</source>
        <translation>Unregelmäßigkeiten (ISO 6520-1)</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>141, tungsten inert gas</source>
        <translation>141, WIG-Schweißen</translation>
    </message>
    <message>
        <source>131 or 135, by the gas</source>
        <translation>131 oder 135, je nach Gas</translation>
    </message>
    <message>
        <source>131, metal inert gas</source>
        <translation>131, MIG-Schweißen</translation>
    </message>
    <message>
        <source>135, metal active gas</source>
        <translation>135, MAG-Schweißen</translation>
    </message>
    <message>
        <source>not here: {text}{effect}</source>
        <translation>hier nicht: {text}{effect}</translation>
    </message>
    <message>
        <source>{text} ({factor}, base {base_factor})</source>
        <translation>{text} ({factor}, Basis {base_factor})</translation>
    </message>
    <message>
        <source>{text}{effect} (base: {base_text}{base_effect})</source>
        <translation>{text}{effect} (Basis: {base_text}{base_effect})</translation>
    </message>
    <message>
        <source>Drill and fill the holes</source>
        <translation>Löcher aufbohren und füllen</translation>
    </message>
    <message>
        <source>Cut out and let in a patch</source>
        <translation>Ausschneiden und Flicken einsetzen</translation>
    </message>
    <message>
        <source>Replace the panel</source>
        <translation>Blechfeld ersetzen</translation>
    </message>
    <message>
        <source>patch</source>
        <translation>Flicken</translation>
    </message>
    <message>
        <source>replace</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Plugs</source>
        <translation>Lochfüllungen</translation>
    </message>
    <message>
        <source>plugs</source>
        <translation>Lochfüllungen</translation>
    </message>
    <message>
        <source>Patch</source>
        <translation>Flicken</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Blechfeld</translation>
    </message>
    <message>
        <source>panel</source>
        <translation>Blechfeld</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>{choice}: {sheet}, region {region}</source>
        <translation>{choice}: {sheet}, Bereich {region}</translation>
    </message>
    <message>
        <source>Drill {diameter}, deburr, {count} holes</source>
        <translation>Bohren {diameter}, entgraten, Löcher: {count}</translation>
    </message>
    <message>
        <source>About {time:.1f} s of arc each; opposite ends of the region by turns</source>
        <translation>Je etwa {time:.1f} s Lichtbogen; abwechselnd an gegenüberliegenden Enden des Bereichs</translation>
    </message>
    <message>
        <source>Cut the new panel by the old one&apos;s edges; set up its seams with welds card</source>
        <translation>Das neue Blechfeld nach den Kanten des alten zuschneiden; seine Nähte mit welds card einstellen</translation>
    </message>
    <message>
        <source>against {choice}: {reason}</source>
        <translation>gegen {choice}: {reason}</translation>
    </message>
    <message>
        <source>Cut out {cut}, corners with {radius} radius</source>
        <translation>Ausschneiden {cut}, Ecken mit Radius {radius}</translation>
    </message>
    <message>
        <source>Cut the patch {blank}, corners alike, and grind it to fit</source>
        <translation>Flicken zuschneiden {blank}, Ecken ebenso, und passend schleifen</translation>
    </message>
    <message>
        <source>Lap joint, {overlap} over the edge all round</source>
        <translation>Überlappstoß, ringsum {overlap} über die Kante</translation>
    </message>
    <message>
        <source>Butt joint, gap up to {gap}</source>
        <translation>Stumpfstoß, Spalt bis {gap}</translation>
    </message>
    <message>
        <source>round the seam</source>
        <translation>entlang der Naht ringsum</translation>
    </message>
    <message>
        <source>from one end</source>
        <translation>von einem Ende aus</translation>
    </message>
    <message>
        <source>{number} tacks, {low:.0f} to {high:.0f} mm long, about {spacing} apart, in this order (places {where}, {unit}): {places} ({grade})</source>
        <translation>{number} Heftstellen, {low:.0f} bis {high:.0f} mm lang, etwa {spacing} auseinander, in dieser Folge (Stellen {where}, {unit}): {places} ({grade})</translation>
    </message>
    <message>
        <source>{start} to {end}</source>
        <translation>{start} bis {end}</translation>
    </message>
    <message>
        <source>Weld in {number} runs, in this order and direction ({unit}): {runs}</source>
        <translation>In {number} Abschnitten schweißen, in dieser Folge und Richtung ({unit}): {runs}</translation>
    </message>
    <message>
        <source>Weld in one run</source>
        <translation>In einem Zug schweißen</translation>
    </message>
    <message>
        <source>Free shrinkage about {across} mm across and {along} mm along (carbon steel; aluminium and stainless steel pull more)</source>
        <translation>Freie Schrumpfung etwa {across} mm quer und {along} mm längs (unlegierter Stahl; Aluminium und nichtrostender Stahl ziehen mehr)</translation>
    </message>
    <message>
        <source>Grades</source>
        <translation>Belegstufen</translation>
    </message>
    <message>
        <source>no citation</source>
        <translation>ohne Quellenangabe</translation>
    </message>
    <message>
        <source>or {alternative}</source>
        <translation>oder {alternative}</translation>
    </message>
    <message>
        <source>Machine maximum (pedal)</source>
        <translation>Höchststrom am Gerät (Pedal)</translation>
    </message>
    <message>
        <source>Polarity</source>
        <translation>Polung</translation>
    </message>
    <message>
        <source>Balance (electrode negative)</source>
        <translation>Balance (Elektrode negativ)</translation>
    </message>
    <message>
        <source>Pulse</source>
        <translation>Impuls</translation>
    </message>
    <message>
        <source>Wire feed</source>
        <translation>Drahtvorschub</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Metal transfer</source>
        <translation>Lichtbogenart</translation>
    </message>
    <message>
        <source>Tungsten</source>
        <translation>Wolframelektrode</translation>
    </message>
    <message>
        <source>Tungsten diameter</source>
        <translation>Elektrodendurchmesser</translation>
    </message>
    <message>
        <source>Tip</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>Stick-out</source>
        <translation>Überstand</translation>
    </message>
    <message>
        <source>Filler rod</source>
        <translation>Schweißstab</translation>
    </message>
    <message>
        <source>Rod diameter</source>
        <translation>Stabdurchmesser</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Draht</translation>
    </message>
    <message>
        <source>Contact tip to work</source>
        <translation>Stromdüsenabstand</translation>
    </message>
    <message>
        <source>Shielding gas</source>
        <translation>Schutzgas</translation>
    </message>
    <message>
        <source>Gas flow</source>
        <translation>Gasdurchfluss</translation>
    </message>
    <message>
        <source>Cup number</source>
        <translation>Gasdüsen-Nr.</translation>
    </message>
    <message>
        <source>Gas lens</source>
        <translation>Gaslinse</translation>
    </message>
    <message>
        <source>Gas before the arc</source>
        <translation>Gasvorströmzeit</translation>
    </message>
    <message>
        <source>Gas after the arc</source>
        <translation>Gasnachströmzeit</translation>
    </message>
    <message>
        <source>Back of the joint</source>
        <translation>Rückseite des Stoßes</translation>
    </message>
    <message>
        <source>Hole diameter</source>
        <translation>Lochdurchmesser</translation>
    </message>
    <message>
        <source>Time in each hole</source>
        <translation>Zeit je Loch</translation>
    </message>
    <message>
        <source>Filter shade</source>
        <translation>Schutzstufe</translation>
    </message>
    <message>
        <source>Preheat</source>
        <translation>Vorwärmen</translation>
    </message>
    <message>
        <source>Between passes at most</source>
        <translation>Zwischen Lagen höchstens</translation>
    </message>
    <message>
        <source>Tacks</source>
        <translation>Heftstellen</translation>
    </message>
    <message>
        <source>Passes</source>
        <translation>Lagen</translation>
    </message>
    <message>
        <source>machine maximum (pedal)</source>
        <translation>Höchststrom am Gerät (Pedal)</translation>
    </message>
    <message>
        <source>polarity</source>
        <translation>Polung</translation>
    </message>
    <message>
        <source>balance (electrode negative)</source>
        <translation>Balance (Elektrode negativ)</translation>
    </message>
    <message>
        <source>metal transfer</source>
        <translation>Lichtbogenart</translation>
    </message>
    <message>
        <source>tungsten diameter</source>
        <translation>Elektrodendurchmesser</translation>
    </message>
    <message>
        <source>filler rod</source>
        <translation>Schweißstab</translation>
    </message>
    <message>
        <source>rod diameter</source>
        <translation>Stabdurchmesser</translation>
    </message>
    <message>
        <source>wire diameter</source>
        <translation>Drahtdurchmesser</translation>
    </message>
    <message>
        <source>gas flow</source>
        <translation>Gasdurchfluss</translation>
    </message>
    <message>
        <source>hole diameter</source>
        <translation>Lochdurchmesser</translation>
    </message>
    <message>
        <source>time in each hole</source>
        <translation>Zeit je Loch</translation>
    </message>
    <message>
        <source>travel speed</source>
        <translation>Schweißgeschwindigkeit</translation>
    </message>
    <message>
        <source>arc voltage</source>
        <translation>Lichtbogenspannung</translation>
    </message>
    <message>
        <source>Before the arc</source>
        <translation>Vor dem Zünden</translation>
    </message>
    <message>
        <source>At the machine</source>
        <translation>Am Gerät</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Zusatz</translation>
    </message>
    <message>
        <source>Plug</source>
        <translation>Lochnaht</translation>
    </message>
    <message>
        <source>Gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>Along the joint</source>
        <translation>Entlang der Naht</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>TIG</source>
        <translation>WIG</translation>
    </message>
    <message>
        <source>MIG</source>
        <translation>MIG/MAG</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation>HALT</translation>
    </message>
    <message>
        <source>TAKE CARE</source>
        <translation>VORSICHT</translation>
    </message>
    <message>
        <source>NOTE</source>
        <translation>HINWEIS</translation>
    </message>
    <message>
        <source>unhurried hand</source>
        <translation>ruhige Hand</translation>
    </message>
    <message>
        <source>brisk hand</source>
        <translation>zügige Hand</translation>
    </message>
    <message>
        <source>DC, torch on minus</source>
        <translation>DC, Brenner am Minuspol</translation>
    </message>
    <message>
        <source>DC, torch on plus</source>
        <translation>DC, Brenner am Pluspol</translation>
    </message>
    <message>
        <source>DC, gun on plus</source>
        <translation>DC, Brenner am Pluspol</translation>
    </message>
    <message>
        <source>DC, gun on minus</source>
        <translation>DC, Brenner am Minuspol</translation>
    </message>
    <message>
        <source>ok</source>
        <translation>ok</translation>
    </message>
    <message>
        <source>NOT OK</source>
        <translation>NICHT OK</translation>
    </message>
    <message>
        <source>Annealing before a bend</source>
        <translation>Weichglühen vor dem Biegen</translation>
    </message>
    <message>
        <source>How a work-hardened or heat-treated aluminium sheet is softened so that it takes a tighter bend, and what that costs: the yield strength before and after. Heat-treated alloys do not get their strength back without a furnace and a quench.</source>
        <translation>Wie ein kaltverfestigtes oder wärmebehandeltes Aluminiumblech weich gemacht wird, damit es eine engere Biegung verträgt, und was das kostet: die Streckgrenze vorher und nachher. Ausgehärtete Legierungen bekommen ihre Festigkeit ohne Ofen und Abschrecken nicht zurück.</translation>
    </message>
    <message>
        <source>until it is warm through</source>
        <translation>bis es durchgewärmt ist</translation>
    </message>
    <message>
        <source>at any rate</source>
        <translation>beliebig schnell</translation>
    </message>
    <message>
        <source>2 to 3 h</source>
        <translation>2 bis 3 h</translation>
    </message>
    <message>
        <source>28 K an hour down to 260 degC then in air</source>
        <translation>28 K je Stunde bis 260 degC, dann an Luft</translation>
    </message>
    <message>
        <source>2 h</source>
        <translation>2 h</translation>
    </message>
    <message>
        <source>28 K an hour down to 230 degC and hold 6 h</source>
        <translation>28 K je Stunde bis 230 degC und 6 h halten</translation>
    </message>
    <message>
        <source>Least inside radius of a bend</source>
        <translation>Kleinster Innenradius einer Biegung</translation>
    </message>
    <message>
        <source>How tight sheet may be bent cold by 90 degrees across the rolling direction. A row holds above the next thinner row of its document, up to its own thickness. Rows for alloys and tempers the catalogue does not have are left out, and one row of the inch table is dropped as it cannot be right: soft sheet of 0.020 in asked for twice the radius of 0.025 to 0.032 in.</source>
        <translation>Wie eng Blech kalt um 90 Grad quer zur Walzrichtung gebogen werden darf. Eine Zeile gilt oberhalb der nächstdünneren Zeile ihres Dokuments bis zu ihrer eigenen Dicke. Zeilen für Legierungen und Zustände, die der Katalog nicht hat, sind weggelassen, und eine Zeile der Zolltabelle entfällt, weil sie nicht stimmen kann: weiches Blech von 0,020 in verlangte den doppelten Radius von 0,025 bis 0,032 in.</translation>
    </message>
    <message>
        <source>two copies agree</source>
        <translation>zwei Abdrucke stimmen überein</translation>
    </message>
    <message>
        <source>one copy seen</source>
        <translation>ein Abdruck gesehen</translation>
    </message>
    <message>
        <source>taken over from H321, which has the same least strength</source>
        <translation>übernommen von H321, das dieselbe Mindestfestigkeit hat</translation>
    </message>
    <message>
        <source>taken over from H32, which has nearly the same strength</source>
        <translation>übernommen von H32, das fast dieselbe Festigkeit hat</translation>
    </message>
    <message>
        <source>taken over from T6; stretching after quenching does not matter to a bend</source>
        <translation>übernommen von T6; Recken nach dem Abschrecken spielt für eine Biegung keine Rolle</translation>
    </message>
    <message>
        <source>usable at 1.5 thicknesses where necessary</source>
        <translation>notfalls mit 1,5 Dicken brauchbar</translation>
    </message>
    <message>
        <source>usable at 1 thickness where necessary</source>
        <translation>notfalls mit 1 Dicke brauchbar</translation>
    </message>
    <message>
        <source>printed for 1020 and 1025; zinc may flake at a tight radius</source>
        <translation>gedruckt für 1020 und 1025; bei engem Radius kann das Zink abblättern</translation>
    </message>
    <message>
        <source>normalised</source>
        <translation>normalgeglüht</translation>
    </message>
    <message>
        <source>annealed</source>
        <translation>weichgeglüht</translation>
    </message>
    <message>
        <source>printed for annealed 304</source>
        <translation>gedruckt für geglühtes 304</translation>
    </message>
    <message>
        <source>shop practice: 0.5 to 1 thickness</source>
        <translation>Werkstattpraxis: 0,5 bis 1 Dicke</translation>
    </message>
    <message>
        <source>shop practice, annealed: 0.5 to 1 thickness</source>
        <translation>Werkstattpraxis, weichgeglüht: 0,5 bis 1 Dicke</translation>
    </message>
    <message>
        <source>shop practice for 340 to 420 MPa: 1 to 2 thicknesses</source>
        <translation>Werkstattpraxis für 340 bis 420 MPa: 1 bis 2 Dicken</translation>
    </message>
    <message>
        <source>shop practice, normalised</source>
        <translation>Werkstattpraxis, normalgeglüht</translation>
    </message>
    <message>
        <source>Relief holes where bends meet</source>
        <translation>Entlastungslöcher, wo Biegungen sich treffen</translation>
    </message>
    <message>
        <source>The hole to drill where two bend lines cross, so that the corner neither tears nor buckles: twice the inside radius, and at least this.</source>
        <translation>Das Loch, das zu bohren ist, wo zwei Biegelinien sich kreuzen, damit die Ecke weder reißt noch beult: doppelter Innenradius, und mindestens dies.</translation>
    </message>
    <message>
        <source>Cleaning and preparation</source>
        <translation>Reinigen und Vorbereiten</translation>
    </message>
    <message>
        <source>One thing to do to the metal before, between or after welding, in our words. Steps with a case come on top of the plain steps of the family when the part has that coating or is a casting; where the order ties, the case comes first.</source>
        <translation>Eine Sache, die vor, zwischen oder nach dem Schweißen am Metall zu tun ist, in eigenen Worten. Schritte mit Fall kommen zu den einfachen Schritten der Familie hinzu, wenn das Teil diese Beschichtung hat oder ein Gussteil ist; bei gleicher Reihenfolge kommt der Fall zuerst.</translation>
    </message>
    <message>
        <source>Take paint off around the repair, 50 mm wide on every side.</source>
        <translation>Anstrich rund um die Reparatur entfernen, 50 mm breit auf jeder Seite.</translation>
    </message>
    <message>
        <source>Peel off the protective film; there is oxide under it too.</source>
        <translation>Schutzfolie abziehen; auch darunter ist Oxid.</translation>
    </message>
    <message>
        <source>Degrease before any brushing or scraping.</source>
        <translation>Entfetten vor jedem Bürsten oder Schaben.</translation>
    </message>
    <message>
        <source>brushing first rubs the oil into the metal and into the brush</source>
        <translation>erst bürsten reibt das Öl ins Metall und in die Bürste</translation>
    </message>
    <message>
        <source>Brush or scrape the oxide off with stainless tools kept for aluminium.</source>
        <translation>Oxid mit Edelstahlwerkzeug, nur für Aluminium, abbürsten oder abschaben.</translation>
    </message>
    <message>
        <source>carbon steel, brass and copper leave traces behind</source>
        <translation>unlegierter Stahl, Messing und Kupfer lassen Spuren zurück</translation>
    </message>
    <message>
        <source>Wipe the dust off with acetone or alcohol and let it dry fully before the arc.</source>
        <translation>Staub mit Aceton oder Alkohol abwischen und vor dem Zünden vollständig trocknen lassen.</translation>
    </message>
    <message>
        <source>Weld within about 4 hours; left overnight, clean again.</source>
        <translation>Innerhalb von etwa 4 Stunden schweißen; über Nacht gelegen, neu reinigen.</translation>
    </message>
    <message>
        <source>the oxide grows again, faster in damp air</source>
        <translation>das Oxid wächst nach, in feuchter Luft schneller</translation>
    </message>
    <message>
        <source>Brush each pass with stainless before the next.</source>
        <translation>Jede Lage vor der nächsten mit Edelstahl bürsten.</translation>
    </message>
    <message>
        <source>Brush the weld zone only, and stop when it is bright.</source>
        <translation>Nur den Nahtbereich bürsten und aufhören, wenn er blank ist.</translation>
    </message>
    <message>
        <source>Keep strong alkaline cleaners away.</source>
        <translation>Starke alkalische Reiniger fernhalten.</translation>
    </message>
    <message>
        <source>The oxide melts far above the metal.</source>
        <translation>Das Oxid schmilzt weit über dem Metall.</translation>
    </message>
    <message>
        <source>The metal itself melts here.</source>
        <translation>Das Metall selbst schmilzt hier.</translation>
    </message>
    <message>
        <source>Wipe the TIG rod before use.</source>
        <translation>WIG-Schweißstab vor Gebrauch abwischen.</translation>
    </message>
    <message>
        <source>Keep the wire spool covered and throw away the turns that stood exposed.</source>
        <translation>Drahtspule abgedeckt halten und die Windungen wegwerfen, die offen lagen.</translation>
    </message>
    <message>
        <source>Grind or etch the anodising off the joint and off the spot for the clamp.</source>
        <translation>Eloxalschicht am Stoß und an der Stelle für die Masseklemme abschleifen oder abbeizen.</translation>
    </message>
    <message>
        <source>anodising neither conducts nor melts</source>
        <translation>die Eloxalschicht leitet nicht und schmilzt nicht</translation>
    </message>
    <message>
        <source>Degrease hot, grind out, and repeat until nothing black weeps out.</source>
        <translation>Heiß entfetten, ausschleifen und wiederholen, bis nichts Schwarzes mehr austritt.</translation>
    </message>
    <message>
        <source>soaked-in oil makes pores</source>
        <translation>eingezogenes Öl macht Poren</translation>
    </message>
    <message>
        <source>Degrease first.</source>
        <translation>Zuerst entfetten.</translation>
    </message>
    <message>
        <source>Take rust and loose scale off by brush or grinder.</source>
        <translation>Rost und losen Zunder mit Bürste oder Schleifer entfernen.</translation>
    </message>
    <message>
        <source>Bright metal for 25 mm on each side of the joint.</source>
        <translation>Blankes Metall 25 mm weit auf jeder Seite des Stoßes.</translation>
    </message>
    <message>
        <source>Grind all mill scale to bright metal for 25 mm on each side, both faces.</source>
        <translation>Allen Walzzunder blank schleifen, 25 mm auf jeder Seite, beide Flächen.</translation>
    </message>
    <message>
        <source>Bring fillet parts into close contact; no gap above 4.8 mm without bridging it first.</source>
        <translation>Kehlnahtteile dicht aneinanderbringen; kein Spalt über 4,8 mm, ohne ihn erst zu überbrücken.</translation>
    </message>
    <message>
        <source>No brass or bronze brush on steel.</source>
        <translation>Keine Messing- oder Bronzebürste auf Stahl.</translation>
    </message>
    <message>
        <source>traces left behind harm the weld</source>
        <translation>zurückbleibende Spuren schaden der Naht</translation>
    </message>
    <message>
        <source>Grind the zinc off both faces, 25 to 100 mm on each side of the joint.</source>
        <translation>Zink von beiden Flächen abschleifen, 25 bis 100 mm auf jeder Seite des Stoßes.</translation>
    </message>
    <message>
        <source>Put zinc paint back on once it is cold.</source>
        <translation>Zinkfarbe wieder auftragen, sobald es kalt ist.</translation>
    </message>
    <message>
        <source>Degrease with a cleaner free of chlorine; leave no chlorides behind.</source>
        <translation>Mit chlorfreiem Reiniger entfetten; keine Chloride zurücklassen.</translation>
    </message>
    <message>
        <source>Brush with stainless bristles used on nothing else.</source>
        <translation>Mit Edelstahlborsten bürsten, die für nichts anderes benutzt werden.</translation>
    </message>
    <message>
        <source>iron dust, also from grinding nearby, starts rust</source>
        <translation>Eisenstaub, auch vom Schleifen in der Nähe, lässt Rost entstehen</translation>
    </message>
    <message>
        <source>Take the heat tint off with pickling gel, electro-cleaning or a fine abrasive.</source>
        <translation>Anlauffarben mit Beizpaste, elektrolytisch oder mit feinem Schleifmittel entfernen.</translation>
    </message>
    <message>
        <source>Degrease.</source>
        <translation>Entfetten.</translation>
    </message>
    <message>
        <source>Brush bright.</source>
        <translation>Blank bürsten.</translation>
    </message>
    <message>
        <source>Strip the coating and degrease.</source>
        <translation>Beschichtung entfernen und entfetten.</translation>
    </message>
    <message>
        <source>Brush with stainless, or rub with aluminium wool.</source>
        <translation>Mit Edelstahl bürsten oder mit Aluminiumwolle abreiben.</translation>
    </message>
    <message>
        <source>Collect the dust at once; never wet it.</source>
        <translation>Staub sofort aufnehmen; niemals nass machen.</translation>
    </message>
    <message>
        <source>Wipe with a solvent free of chlorides, with clean gloves on.</source>
        <translation>Mit chloridfreiem Lösemittel abwischen, mit sauberen Handschuhen.</translation>
    </message>
    <message>
        <source>Use a new stainless brush or file kept for titanium.</source>
        <translation>Neue Edelstahlbürste oder Feile nehmen, die nur für Titan da ist.</translation>
    </message>
    <message>
        <source>Weld in the same shift.</source>
        <translation>In derselben Schicht schweißen.</translation>
    </message>
    <message>
        <source>Clean to sound metal for at least 13 mm beside the joint.</source>
        <translation>Bis auf gesundes Metall reinigen, mindestens 13 mm neben dem Stoß.</translation>
    </message>
    <message>
        <source>In an enclosed place strip a toxic coating 100 mm back from the heated line, or breathe supplied air.</source>
        <translation>Im geschlossenen Raum eine giftige Beschichtung 100 mm von der erwärmten Linie zurück entfernen oder zugeführte Luft atmen.</translation>
    </message>
    <message>
        <source>Strip paint so far back that what is left does not get hot.</source>
        <translation>Anstrich so weit entfernen, dass der Rest nicht heiß wird.</translation>
    </message>
    <message>
        <source>No chlorinated cleaner within 61 m of the arc unless it is shielded; surfaces bone dry.</source>
        <translation>Kein chlorhaltiger Reiniger im Umkreis von 61 m um den Lichtbogen, wenn dieser nicht abgeschirmt ist; Flächen knochentrocken.</translation>
    </message>
    <message>
        <source>Let a flammable cleaner dry, and take can and rags at least 11 m away.</source>
        <translation>Brennbaren Reiniger abtrocknen lassen, Dose und Lappen mindestens 11 m wegbringen.</translation>
    </message>
    <message>
        <source>Degrease the brushes too.</source>
        <translation>Auch die Bürsten entfetten.</translation>
    </message>
    <message>
        <source>Grind crater cracks out before rewelding, and only the crack.</source>
        <translation>Kraterrisse vor dem Nachschweißen ausschleifen, und nur den Riss.</translation>
    </message>
    <message>
        <source>each repair leaves fewer that can follow</source>
        <translation>jede Reparatur lässt weniger weitere zu</translation>
    </message>
    <message>
        <source>Take the whole crack out, prove it gone with dye or magnetic powder, then weld.</source>
        <translation>Den ganzen Riss entfernen, mit Farbeindring- oder Magnetpulverprüfung nachweisen, dass er weg ist, dann schweißen.</translation>
    </message>
    <message>
        <source>what is left of it grows under repeated load</source>
        <translation>was davon bleibt, wächst unter wechselnder Last</translation>
    </message>
    <message>
        <source>What a weld uses up</source>
        <translation>Was eine Schweißung verbraucht</translation>
    </message>
    <message>
        <source>Shares for the shopping list: how much of the filler bought ends in the weld, how much of the time at the bench the arc burns, and how far a disc or a tungsten goes.</source>
        <translation>Anteile für die Einkaufsliste: wie viel vom gekauften Zusatz in der Naht endet, wie viel der Zeit an der Werkbank der Lichtbogen brennt und wie weit eine Scheibe oder eine Wolframelektrode reicht.</translation>
    </message>
    <message>
        <source>Gas cups</source>
        <translation>Gasdüsen</translation>
    </message>
    <message>
        <source>One cup number and the bore it stands for: the number counts sixteenths of an inch.</source>
        <translation>Eine Gasdüsennummer und die Bohrung, für die sie steht: die Nummer zählt Sechzehntelzoll.</translation>
    </message>
    <message>
        <source>Limits for what is breathed and seen</source>
        <translation>Grenzwerte für Atemluft und Augen</translation>
    </message>
    <message>
        <source>One limit of one authority for one substance, or a statement where the authority gives no figure. Limits change and differ between countries: the local one rules.</source>
        <translation>Ein Grenzwert einer Behörde für einen Stoff, oder eine Aussage, wo die Behörde keinen Wert nennt. Grenzwerte ändern sich und sind von Land zu Land verschieden: der örtliche gilt.</translation>
    </message>
    <message>
        <source>welding fume, total</source>
        <translation>Schweißrauch, gesamt</translation>
    </message>
    <message>
        <source>no limit for the fume as a whole</source>
        <translation>kein Grenzwert für den Rauch als Ganzes</translation>
    </message>
    <message>
        <source>in force</source>
        <translation>in Kraft</translation>
    </message>
    <message>
        <source>total dust</source>
        <translation>Gesamtstaub</translation>
    </message>
    <message>
        <source>respirable</source>
        <translation>alveolengängig</translation>
    </message>
    <message>
        <source>potential carcinogen</source>
        <translation>potenziell krebserzeugend</translation>
    </message>
    <message>
        <source>as low as can be reached</source>
        <translation>so niedrig wie erreichbar</translation>
    </message>
    <message>
        <source>total particulate</source>
        <translation>Gesamtpartikel</translation>
    </message>
    <message>
        <source>withdrawn (about 2004)</source>
        <translation>zurückgezogen (etwa 2004)</translation>
    </message>
    <message>
        <source>all welding fume</source>
        <translation>aller Schweißrauch</translation>
    </message>
    <message>
        <source>no safe level is assumed</source>
        <translation>kein sicherer Wert wird angenommen</translation>
    </message>
    <message>
        <source>fume and arc UV</source>
        <translation>Rauch und UV des Lichtbogens</translation>
    </message>
    <message>
        <source>causes cancer in people (group 1)</source>
        <translation>erzeugt beim Menschen Krebs (Gruppe 1)</translation>
    </message>
    <message>
        <source>2018 (vol. 118)</source>
        <translation>2018 (Bd. 118)</translation>
    </message>
    <message>
        <source>manganese fume (as Mn)</source>
        <translation>Manganrauch (als Mn)</translation>
    </message>
    <message>
        <source>fume</source>
        <translation>Rauch</translation>
    </message>
    <message>
        <source>inhalable</source>
        <translation>einatembar</translation>
    </message>
    <message>
        <source>2018 on</source>
        <translation>ab 2018</translation>
    </message>
    <message>
        <source>chromium VI</source>
        <translation>Chrom VI</translation>
    </message>
    <message>
        <source>as Cr(VI)</source>
        <translation>als Cr(VI)</translation>
    </message>
    <message>
        <source>nickel, metal and insoluble</source>
        <translation>Nickel, Metall und unlöslich</translation>
    </message>
    <message>
        <source>as Ni</source>
        <translation>als Ni</translation>
    </message>
    <message>
        <source>nickel</source>
        <translation>Nickel</translation>
    </message>
    <message>
        <source>as Ni, carcinogen</source>
        <translation>als Ni, krebserzeugend</translation>
    </message>
    <message>
        <source>nickel, elemental</source>
        <translation>Nickel, elementar</translation>
    </message>
    <message>
        <source>nickel, insoluble compounds</source>
        <translation>Nickel, unlösliche Verbindungen</translation>
    </message>
    <message>
        <source>zinc oxide fume</source>
        <translation>Zinkoxidrauch</translation>
    </message>
    <message>
        <source>delay before metal fume fever, after 320 to 580 mg/m3</source>
        <translation>Verzögerung bis zum Metallrauchfieber, nach 320 bis 580 mg/m3</translation>
    </message>
    <message>
        <source>historic study</source>
        <translation>historische Untersuchung</translation>
    </message>
    <message>
        <source>total</source>
        <translation>gesamt</translation>
    </message>
    <message>
        <source>welding fume as Al</source>
        <translation>Schweißrauch als Al</translation>
    </message>
    <message>
        <source>iron oxide fume</source>
        <translation>Eisenoxidrauch</translation>
    </message>
    <message>
        <source>as Fe</source>
        <translation>als Fe</translation>
    </message>
    <message>
        <source>iron oxide</source>
        <translation>Eisenoxid</translation>
    </message>
    <message>
        <source>copper fume</source>
        <translation>Kupferrauch</translation>
    </message>
    <message>
        <source>as Cu</source>
        <translation>als Cu</translation>
    </message>
    <message>
        <source>since 1975</source>
        <translation>seit 1975</translation>
    </message>
    <message>
        <source>fluorides (as F)</source>
        <translation>Fluoride (als F)</translation>
    </message>
    <message>
        <source>as F</source>
        <translation>als F</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>Blei</translation>
    </message>
    <message>
        <source>as Pb</source>
        <translation>als Pb</translation>
    </message>
    <message>
        <source>as Cd</source>
        <translation>als Cd</translation>
    </message>
    <message>
        <source>carcinogen</source>
        <translation>krebserzeugend</translation>
    </message>
    <message>
        <source>beryllium</source>
        <translation>Beryllium</translation>
    </message>
    <message>
        <source>as Be</source>
        <translation>als Be</translation>
    </message>
    <message>
        <source>ozone</source>
        <translation>Ozon</translation>
    </message>
    <message>
        <source>gas (0.2 mg/m3)</source>
        <translation>Gas (0,2 mg/m3)</translation>
    </message>
    <message>
        <source>gas, heavy work</source>
        <translation>Gas, schwere Arbeit</translation>
    </message>
    <message>
        <source>gas, moderate work</source>
        <translation>Gas, mittelschwere Arbeit</translation>
    </message>
    <message>
        <source>gas, light work</source>
        <translation>Gas, leichte Arbeit</translation>
    </message>
    <message>
        <source>gas, any work</source>
        <translation>Gas, jede Arbeit</translation>
    </message>
    <message>
        <source>nitrogen dioxide</source>
        <translation>Stickstoffdioxid</translation>
    </message>
    <message>
        <source>gas (9 mg/m3)</source>
        <translation>Gas (9 mg/m3)</translation>
    </message>
    <message>
        <source>gas (1.8 mg/m3)</source>
        <translation>Gas (1,8 mg/m3)</translation>
    </message>
    <message>
        <source>as archived 2008</source>
        <translation>Stand Archiv 2008</translation>
    </message>
    <message>
        <source>carbon monoxide</source>
        <translation>Kohlenmonoxid</translation>
    </message>
    <message>
        <source>carbon dioxide</source>
        <translation>Kohlendioxid</translation>
    </message>
    <message>
        <source>phosgene</source>
        <translation>Phosgen</translation>
    </message>
    <message>
        <source>gas (0.4 mg/m3)</source>
        <translation>Gas (0,4 mg/m3)</translation>
    </message>
    <message>
        <source>as of 1994</source>
        <translation>Stand 1994</translation>
    </message>
    <message>
        <source>first smelt; once used to it, known only near 1.5 ppm</source>
        <translation>erster Geruch; wer daran gewöhnt ist, bemerkt es erst bei etwa 1,5 ppm</translation>
    </message>
    <message>
        <source>thorium (thoriated tungsten)</source>
        <translation>Thorium (thorierte Wolframelektrode)</translation>
    </message>
    <message>
        <source>any quantity in welding rods</source>
        <translation>jede Menge in Schweißelektroden</translation>
    </message>
    <message>
        <source>no licence is needed</source>
        <translation>keine Genehmigung nötig</translation>
    </message>
    <message>
        <source>no limit of its own</source>
        <translation>kein eigener Grenzwert</translation>
    </message>
    <message>
        <source>control by oxygen</source>
        <translation>Überwachung über den Sauerstoff</translation>
    </message>
    <message>
        <source>no figure; judged by the oxygen left</source>
        <translation>kein Wert; nach dem verbleibenden Sauerstoff beurteilt</translation>
    </message>
    <message>
        <source>oxygen in air</source>
        <translation>Sauerstoff in der Luft</translation>
    </message>
    <message>
        <source>too little below this</source>
        <translation>darunter zu wenig</translation>
    </message>
    <message>
        <source>helium, nitrogen (purge gas)</source>
        <translation>Helium, Stickstoff (Formiergas)</translation>
    </message>
    <message>
        <source>isocyanates (heated polyurethane)</source>
        <translation>Isocyanate (erhitztes Polyurethan)</translation>
    </message>
    <message>
        <source>as NCO</source>
        <translation>als NCO</translation>
    </message>
    <message>
        <source>acetone vapour</source>
        <translation>Acetondampf</translation>
    </message>
    <message>
        <source>vapour</source>
        <translation>Dampf</translation>
    </message>
    <message>
        <source>magnesium oxide fume</source>
        <translation>Magnesiumoxidrauch</translation>
    </message>
    <message>
        <source>arc UV, GTAW of aluminium</source>
        <translation>Lichtbogen-UV, WIG an Aluminium</translation>
    </message>
    <message>
        <source>longest bare exposure a day, 0.5 m from the arc</source>
        <translation>längste ungeschützte Einwirkung je Tag, 0,5 m vom Lichtbogen</translation>
    </message>
    <message>
        <source>Faults and remedies</source>
        <translation>Fehler und Abhilfen</translation>
    </message>
    <message>
        <source>One change that answers one cause of one fault; a cause with several changes has several rows. The grade is that of the remedy: what a fault looks like and where it comes from is shop knowledge unless the document says it. A fault without numbers is no weld imperfection in ISO 6520-1.</source>
        <translation>Eine Änderung, die einer Ursache eines Fehlers begegnet; eine Ursache mit mehreren Änderungen hat mehrere Zeilen. Die Belegstufe ist die der Abhilfe: wie ein Fehler aussieht und woher er kommt, ist Werkstattwissen, wenn das Dokument es nicht sagt. Ein Fehler ohne Nummern ist keine Unregelmäßigkeit nach ISO 6520-1.</translation>
    </message>
    <message>
        <source>pinholes, worm holes or foamy bead</source>
        <translation>feine Löcher, Schlauchporen oder schaumige Raupe</translation>
    </message>
    <message>
        <source>Oil, paint, rust, moisture or oxide left on the joint</source>
        <translation>Öl, Farbe, Rost, Feuchtigkeit oder Oxid am Stoß geblieben</translation>
    </message>
    <message>
        <source>Clean wider, dry, and start again on bare metal.</source>
        <translation>Breiter reinigen, trocknen und auf blankem Metall neu beginnen.</translation>
    </message>
    <message>
        <source>Wind or fan across the joint</source>
        <translation>Wind oder Lüfter quer über den Stoß</translation>
    </message>
    <message>
        <source>Screen the joint; more than 2.2 m/s of moving air is too much.</source>
        <translation>Stoß abschirmen; mehr als 2,2 m/s Luftbewegung ist zu viel.</translation>
    </message>
    <message>
        <source>Gas off, leak, wet hose or empty bottle</source>
        <translation>Gas zu, Leck, nasser Schlauch oder leere Flasche</translation>
    </message>
    <message>
        <source>Purge the line, soap-test the joints and check the flow at the cup.</source>
        <translation>Leitung spülen, Anschlüsse mit Seifenwasser prüfen und den Durchfluss an der Gasdüse messen.</translation>
    </message>
    <message>
        <source>Flow too high for the cup so the shield turns rough</source>
        <translation>Durchfluss zu hoch für die Gasdüse, Gasstrom wird turbulent</translation>
    </message>
    <message>
        <source>Lower the flow.</source>
        <translation>Durchfluss senken.</translation>
    </message>
    <message>
        <source>Or fit a larger cup.</source>
        <translation>Oder größere Gasdüse einsetzen.</translation>
    </message>
    <message>
        <source>Or fit a gas lens.</source>
        <translation>Oder Gaslinse einsetzen.</translation>
    </message>
    <message>
        <source>Arc too long or cup held too far away</source>
        <translation>Lichtbogen zu lang oder Gasdüse zu weit weg gehalten</translation>
    </message>
    <message>
        <source>Hold the tungsten about 1.5 to 3 mm off the work.</source>
        <translation>Wolframelektrode etwa 1,5 bis 3 mm über dem Werkstück halten.</translation>
    </message>
    <message>
        <source>Post-flow too short, pores only at the stop</source>
        <translation>Gasnachströmzeit zu kurz, Poren nur am Ende</translation>
    </message>
    <message>
        <source>Lengthen the post-flow and hold the torch still through it.</source>
        <translation>Gasnachströmzeit verlängern und den Brenner so lange stillhalten.</translation>
    </message>
    <message>
        <source>Nozzle clogged with spatter or held too far off</source>
        <translation>Gasdüse voller Spritzer oder zu weit weg gehalten</translation>
    </message>
    <message>
        <source>Hold the gun closer.</source>
        <translation>Brenner näher halten.</translation>
    </message>
    <message>
        <source>Clean the nozzle.</source>
        <translation>Gasdüse reinigen.</translation>
    </message>
    <message>
        <source>Nozzle gap wrong</source>
        <translation>Düsenabstand falsch</translation>
    </message>
    <message>
        <source>Keep 13 to 16 mm from nozzle to work.</source>
        <translation>13 bis 16 mm von der Gasdüse zum Werkstück halten.</translation>
    </message>
    <message>
        <source>Dirty, oily or damp wire</source>
        <translation>Schmutziger, öliger oder feuchter Draht</translation>
    </message>
    <message>
        <source>Fit fresh wire that was kept covered; cut off what stood exposed.</source>
        <translation>Frischen, abgedeckt gelagerten Draht einsetzen; was offen lag, abschneiden.</translation>
    </message>
    <message>
        <source>Voltage too high, arc long</source>
        <translation>Spannung zu hoch, Lichtbogen lang</translation>
    </message>
    <message>
        <source>Drop the voltage a little.</source>
        <translation>Spannung etwas senken.</translation>
    </message>
    <message>
        <source>Wire polarity or gas wrong for the wire (gasless on gas setting and the reverse)</source>
        <translation>Polung oder Gas passt nicht zum Draht (gaslos auf Gaseinstellung und umgekehrt)</translation>
    </message>
    <message>
        <source>Match the polarity to the wire.</source>
        <translation>Polung dem Draht anpassen.</translation>
    </message>
    <message>
        <source>Match the gas to the wire.</source>
        <translation>Gas dem Draht anpassen.</translation>
    </message>
    <message>
        <source>groove melted along the bead edge</source>
        <translation>Kerbe entlang des Raupenrands eingeschmolzen</translation>
    </message>
    <message>
        <source>Current too high</source>
        <translation>Strom zu hoch</translation>
    </message>
    <message>
        <source>Lower the current.</source>
        <translation>Strom senken.</translation>
    </message>
    <message>
        <source>Travel too fast to fill the edge</source>
        <translation>Zu schnell geführt, um den Rand zu füllen</translation>
    </message>
    <message>
        <source>Slow down and pause at the edges.</source>
        <translation>Langsamer werden und an den Rändern verweilen.</translation>
    </message>
    <message>
        <source>Too little filler, long arc</source>
        <translation>Zu wenig Zusatz, langer Lichtbogen</translation>
    </message>
    <message>
        <source>Shorten the arc and dab more filler.</source>
        <translation>Lichtbogen verkürzen und mehr Zusatz zutupfen.</translation>
    </message>
    <message>
        <source>Voltage too high or gun tilted at one plate</source>
        <translation>Spannung zu hoch oder Brenner zu einem Blech geneigt</translation>
    </message>
    <message>
        <source>Drop the voltage.</source>
        <translation>Spannung senken.</translation>
    </message>
    <message>
        <source>Aim into the root, square to both plates.</source>
        <translation>In die Wurzel zielen, gleicher Winkel zu beiden Blechen.</translation>
    </message>
    <message>
        <source>hole or drooping pool</source>
        <translation>Loch oder durchhängendes Schmelzbad</translation>
    </message>
    <message>
        <source>Too much heat for the thickness</source>
        <translation>Zu viel Wärme für die Dicke</translation>
    </message>
    <message>
        <source>Lower the current; with MIG the wire feed.</source>
        <translation>Strom senken; bei MIG/MAG den Drahtvorschub.</translation>
    </message>
    <message>
        <source>Travel faster.</source>
        <translation>Schneller führen.</translation>
    </message>
    <message>
        <source>Gap too wide or edges thin</source>
        <translation>Spalt zu breit oder Kanten dünn</translation>
    </message>
    <message>
        <source>Put a backing bar behind it.</source>
        <translation>Badsicherung dahinterlegen.</translation>
    </message>
    <message>
        <source>Close the gap; stitch and let it cool.</source>
        <translation>Spalt schließen; in kurzen Stücken schweißen und abkühlen lassen.</translation>
    </message>
    <message>
        <source>Heat builds along the run</source>
        <translation>Wärme staut sich im Lauf der Naht</translation>
    </message>
    <message>
        <source>Ease the pedal back as the part warms.</source>
        <translation>Fußregler zurücknehmen, während das Teil warm wird.</translation>
    </message>
    <message>
        <source>Or pulse.</source>
        <translation>Oder Impuls.</translation>
    </message>
    <message>
        <source>unequal thickness</source>
        <translation>ungleiche Dicke</translation>
    </message>
    <message>
        <source>Arc on the thin side</source>
        <translation>Lichtbogen auf der dünnen Seite</translation>
    </message>
    <message>
        <source>Aim at the thicker piece.</source>
        <translation>Auf das dickere Teil zielen.</translation>
    </message>
    <message>
        <source>bead sits on top, rounded edge, rolls over the plate</source>
        <translation>Raupe liegt obenauf, runder Rand, rollt über das Blech</translation>
    </message>
    <message>
        <source>Current too low for the thickness</source>
        <translation>Strom zu niedrig für die Dicke</translation>
    </message>
    <message>
        <source>Raise the current.</source>
        <translation>Strom erhöhen.</translation>
    </message>
    <message>
        <source>Or preheat thick aluminium.</source>
        <translation>Oder dickes Aluminium vorwärmen.</translation>
    </message>
    <message>
        <source>Filler added before a pool forms</source>
        <translation>Zusatz zugegeben, bevor sich ein Bad bildet</translation>
    </message>
    <message>
        <source>Wait for a wet pool, then add.</source>
        <translation>Auf ein flüssiges Bad warten, dann zugeben.</translation>
    </message>
    <message>
        <source>Oxide skin left on</source>
        <translation>Oxidhaut nicht entfernt</translation>
    </message>
    <message>
        <source>Give a little more cleaning.</source>
        <translation>Etwas mehr Reinigungswirkung geben.</translation>
    </message>
    <message>
        <source>Degrease and brush again first.</source>
        <translation>Zuerst nochmals entfetten und bürsten.</translation>
    </message>
    <message>
        <source>Short-arc on thick plate</source>
        <translation>Kurzlichtbogen auf Grobblech</translation>
    </message>
    <message>
        <source>Raise the voltage.</source>
        <translation>Spannung erhöhen.</translation>
    </message>
    <message>
        <source>Raise the wire feed with it.</source>
        <translation>Drahtvorschub mit erhöhen.</translation>
    </message>
    <message>
        <source>Or bevel, or use a larger machine.</source>
        <translation>Oder anfasen oder ein größeres Gerät nehmen.</translation>
    </message>
    <message>
        <source>Travel too slow, pool runs ahead of the arc</source>
        <translation>Zu langsam geführt, Bad läuft dem Lichtbogen voraus</translation>
    </message>
    <message>
        <source>Speed up and keep the arc on the front of the pool.</source>
        <translation>Schneller werden und den Lichtbogen vorn am Bad halten.</translation>
    </message>
    <message>
        <source>Stick-out too long so current falls</source>
        <translation>Freies Drahtende zu lang, Strom fällt ab</translation>
    </message>
    <message>
        <source>Shorten the stick-out.</source>
        <translation>Freies Drahtende verkürzen.</translation>
    </message>
    <message>
        <source>Cold start</source>
        <translation>Kalter Start</translation>
    </message>
    <message>
        <source>Preheat, or start hotter.</source>
        <translation>Vorwärmen oder heißer beginnen.</translation>
    </message>
    <message>
        <source>Start on a run-on tab.</source>
        <translation>Auf einem Anlaufblech beginnen.</translation>
    </message>
    <message>
        <source>root line still visible underneath</source>
        <translation>Wurzellinie von unten noch zu sehen</translation>
    </message>
    <message>
        <source>Joint too tight, no bevel, current low</source>
        <translation>Stoß zu dicht, keine Fase, Strom niedrig</translation>
    </message>
    <message>
        <source>Open a gap or bevel the edges.</source>
        <translation>Spalt öffnen oder Kanten anfasen.</translation>
    </message>
    <message>
        <source>Not looked at</source>
        <translation>Nicht nachgesehen</translation>
    </message>
    <message>
        <source>Look at the back of the joint every time.</source>
        <translation>Jedes Mal die Rückseite des Stoßes ansehen.</translation>
    </message>
    <message>
        <source>heavy drip under the joint</source>
        <translation>starker Durchhang unter dem Stoß</translation>
    </message>
    <message>
        <source>Too hot or too slow</source>
        <translation>Zu heiß oder zu langsam</translation>
    </message>
    <message>
        <source>dark dust on or beside the bead; wipes off</source>
        <translation>dunkler Staub auf oder neben der Raupe; lässt sich abwischen</translation>
    </message>
    <message>
        <source>Gun dragged</source>
        <translation>Brenner schleppend geführt</translation>
    </message>
    <message>
        <source>Push the gun with 10 to 15 degrees of lead.</source>
        <translation>Brenner stechend führen, 10 bis 15 Grad geneigt.</translation>
    </message>
    <message>
        <source>Voltage too high / long arc</source>
        <translation>Spannung zu hoch / langer Lichtbogen</translation>
    </message>
    <message>
        <source>Lower the voltage and with it the arc length.</source>
        <translation>Spannung und damit die Lichtbogenlänge senken.</translation>
    </message>
    <message>
        <source>5xxx wire</source>
        <translation>5xxx-Draht</translation>
    </message>
    <message>
        <source>Magnesium vapour, light soot is normal</source>
        <translation>Magnesiumdampf, leichter Ruß ist normal</translation>
    </message>
    <message>
        <source>Wipe it off; act only if it is heavy.</source>
        <translation>Abwischen; nur bei viel Ruß etwas ändern.</translation>
    </message>
    <message>
        <source>Poor gas cover</source>
        <translation>Schlechte Gasabdeckung</translation>
    </message>
    <message>
        <source>Check flow and nozzle.</source>
        <translation>Durchfluss und Gasdüse prüfen.</translation>
    </message>
    <message>
        <source>Air in the gas, dirty metal or dirty tungsten</source>
        <translation>Luft im Gas, schmutziges Metall oder schmutzige Wolframelektrode</translation>
    </message>
    <message>
        <source>Find the leak.</source>
        <translation>Leck suchen.</translation>
    </message>
    <message>
        <source>Regrind the tungsten.</source>
        <translation>Wolframelektrode neu anschleifen.</translation>
    </message>
    <message>
        <source>Clean the metal again.</source>
        <translation>Metall nochmals reinigen.</translation>
    </message>
    <message>
        <source>bright speck or hard spot; tip has a bite out of it</source>
        <translation>heller Punkt oder harte Stelle; aus der Spitze fehlt ein Stück</translation>
    </message>
    <message>
        <source>Tungsten touched pool or rod</source>
        <translation>Wolframelektrode hat Bad oder Stab berührt</translation>
    </message>
    <message>
        <source>Cut back and regrind the tip.</source>
        <translation>Spitze kürzen und neu anschleifen.</translation>
    </message>
    <message>
        <source>Grind the speck out; hold the tungsten 1.5 to 3 mm off.</source>
        <translation>Einschluss ausschleifen; Wolframelektrode 1,5 bis 3 mm Abstand halten.</translation>
    </message>
    <message>
        <source>Current too high for the diameter</source>
        <translation>Strom zu hoch für den Durchmesser</translation>
    </message>
    <message>
        <source>Use a thicker tungsten.</source>
        <translation>Dickere Wolframelektrode nehmen.</translation>
    </message>
    <message>
        <source>Or less current.</source>
        <translation>Oder weniger Strom.</translation>
    </message>
    <message>
        <source>Too much electrode-positive time, tip melts and spits</source>
        <translation>Elektrode zu lange positiv, Spitze schmilzt und spritzt</translation>
    </message>
    <message>
        <source>Raise the electrode-negative share.</source>
        <translation>Anteil Elektrode negativ erhöhen.</translation>
    </message>
    <message>
        <source>Oxygen or CO2 in the gas</source>
        <translation>Sauerstoff oder CO2 im Gas</translation>
    </message>
    <message>
        <source>Argon or argon-helium only.</source>
        <translation>Nur Argon oder Argon-Helium.</translation>
    </message>
    <message>
        <source>Torch on electrode-positive</source>
        <translation>Brenner am Pluspol</translation>
    </message>
    <message>
        <source>Switch to electrode negative.</source>
        <translation>Auf Elektrode negativ umstellen.</translation>
    </message>
    <message>
        <source>worst on aluminium</source>
        <translation>am stärksten bei Aluminium</translation>
    </message>
    <message>
        <source>star crack in the end dimple</source>
        <translation>sternförmiger Riss in der Endmulde</translation>
    </message>
    <message>
        <source>Stopped suddenly with a hollow end</source>
        <translation>Plötzlich aufgehört, Ende hohl</translation>
    </message>
    <message>
        <source>Ease the current down and add filler, or back up over the bead.</source>
        <translation>Strom absenken und Zusatz zugeben, oder über die Raupe zurückfahren.</translation>
    </message>
    <message>
        <source>No crater fill</source>
        <translation>Keine Kraterfüllung</translation>
    </message>
    <message>
        <source>Use crater fill or a run-off tab; dress the star out before rewelding.</source>
        <translation>Kraterfüllung oder Auslaufblech benutzen; den Stern vor dem Nachschweißen ausschleifen.</translation>
    </message>
    <message>
        <source>Gas cut before it froze</source>
        <translation>Gas weggenommen, bevor es erstarrt war</translation>
    </message>
    <message>
        <source>Hold the torch over the end through the post-flow.</source>
        <translation>Brenner während der Gasnachströmzeit über dem Ende halten.</translation>
    </message>
    <message>
        <source>6xxx</source>
        <translation>6xxx</translation>
    </message>
    <message>
        <source>straight crack down the middle, often at once</source>
        <translation>gerader Riss mittendurch, oft sofort</translation>
    </message>
    <message>
        <source>Welded with no or wrong filler</source>
        <translation>Ohne oder mit falschem Zusatz geschweißt</translation>
    </message>
    <message>
        <source>Use a silicon or magnesium filler and leave the bead proud.</source>
        <translation>Zusatz mit Silizium oder Magnesium nehmen und die Raupe überhöht lassen.</translation>
    </message>
    <message>
        <source>Too slow, too hot; shrinkage tears it</source>
        <translation>Zu langsam, zu heiß; die Schrumpfung reißt sie auf</translation>
    </message>
    <message>
        <source>Weld quicker, with less restraint.</source>
        <translation>Zügiger schweißen, weniger eingespannt.</translation>
    </message>
    <message>
        <source>Restraint, high carbon, concave bead</source>
        <translation>Einspannung, hoher Kohlenstoff, hohle Raupe</translation>
    </message>
    <message>
        <source>Preheat.</source>
        <translation>Vorwärmen.</translation>
    </message>
    <message>
        <source>Lay a bigger bead and leave one side free.</source>
        <translation>Größere Raupe legen und eine Seite frei lassen.</translation>
    </message>
    <message>
        <source>arc jumps side to side or will not settle</source>
        <translation>Lichtbogen springt hin und her oder kommt nicht zur Ruhe</translation>
    </message>
    <message>
        <source>Tip blunt, dirty, or ground crosswise</source>
        <translation>Spitze stumpf, schmutzig oder quer geschliffen</translation>
    </message>
    <message>
        <source>Regrind lengthwise to a point.</source>
        <translation>Längs zu einer Spitze neu anschleifen.</translation>
    </message>
    <message>
        <source>Tungsten too thick for a low current</source>
        <translation>Wolframelektrode zu dick für kleinen Strom</translation>
    </message>
    <message>
        <source>Use a thinner tungsten.</source>
        <translation>Dünnere Wolframelektrode nehmen.</translation>
    </message>
    <message>
        <source>Or a finer taper.</source>
        <translation>Oder schlankere Spitze.</translation>
    </message>
    <message>
        <source>Arc blow from magnetism</source>
        <translation>Blaswirkung durch Magnetismus</translation>
    </message>
    <message>
        <source>Move the clamp, shorten the arc, weld towards the heavy tack; with TIG try alternating current.</source>
        <translation>Masseklemme umsetzen, Lichtbogen verkürzen, auf die kräftige Heftstelle zu schweißen; bei WIG Wechselstrom versuchen.</translation>
    </message>
    <message>
        <source>Poor work clamp contact</source>
        <translation>Masseklemme mit schlechtem Kontakt</translation>
    </message>
    <message>
        <source>Clean the metal under the clamp.</source>
        <translation>Metall unter der Klemme reinigen.</translation>
    </message>
    <message>
        <source>Worn contact tip or kinked liner</source>
        <translation>Stromdüse verschlissen oder Drahtseele geknickt</translation>
    </message>
    <message>
        <source>Replace the contact tip; straighten the gun lead.</source>
        <translation>Stromdüse ersetzen; Schlauchpaket gerade legen.</translation>
    </message>
    <message>
        <source>No AC high-frequency or tip balled too large</source>
        <translation>Keine AC-Hochfrequenz oder Kugel an der Spitze zu groß</translation>
    </message>
    <message>
        <source>Use a smaller ball, or a point with a higher frequency.</source>
        <translation>Kleinere Kugel, oder eine Spitze mit höherer Frequenz.</translation>
    </message>
    <message>
        <source>Check that high-frequency starting works.</source>
        <translation>Prüfen, ob die Hochfrequenzzündung arbeitet.</translation>
    </message>
    <message>
        <source>black or grey specks, wrinkled dull pool</source>
        <translation>schwarze oder graue Punkte, runzliges mattes Bad</translation>
    </message>
    <message>
        <source>Cleaning share too small</source>
        <translation>Reinigungsanteil zu klein</translation>
    </message>
    <message>
        <source>Lower the electrode-negative share a few points.</source>
        <translation>Anteil Elektrode negativ um ein paar Punkte senken.</translation>
    </message>
    <message>
        <source>Rod end pulled out of the gas between dabs</source>
        <translation>Stabende zwischen den Tropfen aus dem Gas gezogen</translation>
    </message>
    <message>
        <source>Keep the hot end of the rod under the cup.</source>
        <translation>Heißes Stabende unter der Gasdüse halten.</translation>
    </message>
    <message>
        <source>Old oxide, dirty brush</source>
        <translation>Altes Oxid, schmutzige Bürste</translation>
    </message>
    <message>
        <source>Degrease again and brush with a clean stainless brush.</source>
        <translation>Nochmals entfetten und mit sauberer Edelstahlbürste bürsten.</translation>
    </message>
    <message>
        <source>Nozzle gap wrong: oxide in bead, no cleaning ahead</source>
        <translation>Düsenabstand falsch: Oxid in der Raupe, keine Reinigung voraus</translation>
    </message>
    <message>
        <source>No brushing between passes</source>
        <translation>Zwischen den Lagen nicht gebürstet</translation>
    </message>
    <message>
        <source>Brush every pass with stainless.</source>
        <translation>Jede Lage mit Edelstahl bürsten.</translation>
    </message>
    <message>
        <source>broad frosty white band each side</source>
        <translation>breiter mattweißer Streifen auf jeder Seite</translation>
    </message>
    <message>
        <source>Too much electrode-positive time</source>
        <translation>Elektrode zu lange positiv</translation>
    </message>
    <message>
        <source>Arc too long</source>
        <translation>Lichtbogen zu lang</translation>
    </message>
    <message>
        <source>Shorten the arc.</source>
        <translation>Lichtbogen verkürzen.</translation>
    </message>
    <message>
        <source>Low AC frequency</source>
        <translation>AC-Frequenz niedrig</translation>
    </message>
    <message>
        <source>Raise the frequency to narrow the arc.</source>
        <translation>Frequenz erhöhen, um den Lichtbogen schmaler zu machen.</translation>
    </message>
    <message>
        <source>beads of metal stuck around the weld</source>
        <translation>Metallperlen haften um die Naht</translation>
    </message>
    <message>
        <source>Voltage too low for the wire speed (stubbing)</source>
        <translation>Spannung zu niedrig für den Drahtvorschub (Draht stößt an)</translation>
    </message>
    <message>
        <source>Or lower the wire feed.</source>
        <translation>Oder Drahtvorschub senken.</translation>
    </message>
    <message>
        <source>Voltage too high (large popping drops)</source>
        <translation>Spannung zu hoch (große, platzende Tropfen)</translation>
    </message>
    <message>
        <source>Lower the voltage.</source>
        <translation>Spannung senken.</translation>
    </message>
    <message>
        <source>Pure CO2 gas</source>
        <translation>Reines CO2</translation>
    </message>
    <message>
        <source>Change to an argon mix.</source>
        <translation>Auf ein Argon-Mischgas wechseln.</translation>
    </message>
    <message>
        <source>Or add inductance.</source>
        <translation>Oder mehr Drossel geben.</translation>
    </message>
    <message>
        <source>Wrong polarity</source>
        <translation>Falsche Polung</translation>
    </message>
    <message>
        <source>Solid wire wants electrode positive.</source>
        <translation>Massivdraht braucht Elektrode positiv.</translation>
    </message>
    <message>
        <source>Rust, paint, zinc</source>
        <translation>Rost, Farbe, Zink</translation>
    </message>
    <message>
        <source>Clean to metal.</source>
        <translation>Bis aufs Metall reinigen.</translation>
    </message>
    <message>
        <source>Stick-out too long or gun too flat</source>
        <translation>Freies Drahtende zu lang oder Brenner zu flach</translation>
    </message>
    <message>
        <source>Stand the gun up.</source>
        <translation>Brenner steiler halten.</translation>
    </message>
    <message>
        <source>tall narrow bead, sharp edge</source>
        <translation>hohe schmale Raupe, scharfer Rand</translation>
    </message>
    <message>
        <source>Voltage too low or travel too slow for the wire</source>
        <translation>Spannung zu niedrig oder zu langsam für den Draht</translation>
    </message>
    <message>
        <source>Travel a touch faster.</source>
        <translation>Eine Spur schneller führen.</translation>
    </message>
    <message>
        <source>Too much filler or too little current</source>
        <translation>Zu viel Zusatz oder zu wenig Strom</translation>
    </message>
    <message>
        <source>Add less filler.</source>
        <translation>Weniger Zusatz zugeben.</translation>
    </message>
    <message>
        <source>panel pulled, buckled or twisted</source>
        <translation>Blech verzogen, gebeult oder verwunden</translation>
    </message>
    <message>
        <source>Shrinkage unopposed</source>
        <translation>Schrumpfung ohne Gegenhalt</translation>
    </message>
    <message>
        <source>Tack more closely and clamp, or preset the other way.</source>
        <translation>Dichter heften und spannen, oder entgegen vorbiegen.</translation>
    </message>
    <message>
        <source>Too much heat in one place</source>
        <translation>Zu viel Wärme an einer Stelle</translation>
    </message>
    <message>
        <source>Weld fast.</source>
        <translation>Schnell schweißen.</translation>
    </message>
    <message>
        <source>With the least heat that fuses.</source>
        <translation>Mit der geringsten Wärme, die noch bindet.</translation>
    </message>
    <message>
        <source>Skip or step back; draw heat off with bars.</source>
        <translation>Mit Sprüngen oder im Pilgerschritt; Wärme mit Schienen abziehen.</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>Grobblech</translation>
    </message>
    <message>
        <source>Too many passes or one-sided</source>
        <translation>Zu viele Lagen oder einseitig</translation>
    </message>
    <message>
        <source>As few passes as will do; balance the sides.</source>
        <translation>So wenige Lagen wie möglich; Seiten ausgleichen.</translation>
    </message>
    <message>
        <source>bead below the plate or hollow fillet</source>
        <translation>Raupe unter Blechoberfläche oder hohle Kehlnaht</translation>
    </message>
    <message>
        <source>Travel too fast or too little filler</source>
        <translation>Zu schnell geführt oder zu wenig Zusatz</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>Langsamer werden.</translation>
    </message>
    <message>
        <source>Add filler.</source>
        <translation>Zusatz zugeben.</translation>
    </message>
    <message>
        <source>blue-grey-black bead, crusty back side</source>
        <translation>blau-grau-schwarze Raupe, krustige Rückseite</translation>
    </message>
    <message>
        <source>Gas cover poor or heat too high</source>
        <translation>Gasabdeckung schlecht oder zu viel Wärme</translation>
    </message>
    <message>
        <source>Use a bigger cup.</source>
        <translation>Größere Gasdüse nehmen.</translation>
    </message>
    <message>
        <source>Less heat.</source>
        <translation>Weniger Wärme.</translation>
    </message>
    <message>
        <source>Longer post-flow.</source>
        <translation>Längere Gasnachströmzeit.</translation>
    </message>
    <message>
        <source>No back purge</source>
        <translation>Rückseite nicht formiert</translation>
    </message>
    <message>
        <source>Purge the back with argon, and mind the purge cautions.</source>
        <translation>Rückseite mit Argon formieren und die Warnhinweise dazu beachten.</translation>
    </message>
    <message>
        <source>tip oxidised after stopping</source>
        <translation>Spitze nach dem Aufhören oxidiert</translation>
    </message>
    <message>
        <source>Post-flow too short or leak</source>
        <translation>Gasnachströmzeit zu kurz oder Leck</translation>
    </message>
    <message>
        <source>Lengthen the post-flow.</source>
        <translation>Gasnachströmzeit verlängern.</translation>
    </message>
    <message>
        <source>Fix the seal of the back cap.</source>
        <translation>Dichtung der Brennerkappe instand setzen.</translation>
    </message>
    <message>
        <source>wire fuses to tip or tangles</source>
        <translation>Draht brennt an der Stromdüse fest oder verheddert sich</translation>
    </message>
    <message>
        <source>Voltage high or wire slow; worn tip</source>
        <translation>Spannung hoch oder Draht langsam; Stromdüse verschlissen</translation>
    </message>
    <message>
        <source>Or raise the wire feed.</source>
        <translation>Oder Drahtvorschub erhöhen.</translation>
    </message>
    <message>
        <source>Fit a new contact tip.</source>
        <translation>Neue Stromdüse einsetzen.</translation>
    </message>
    <message>
        <source>Soft wire in a steel liner or tight rolls</source>
        <translation>Weicher Draht in Stahlseele oder zu fest gespannte Rollen</translation>
    </message>
    <message>
        <source>U-groove rolls, plastic liner, light tension, straight lead.</source>
        <translation>U-Nut-Rollen, Kunststoffseele, leichter Druck, gerades Schlauchpaket.</translation>
    </message>
    <message>
        <source>lump or dip where the bead was restarted</source>
        <translation>Höcker oder Mulde, wo die Raupe neu begann</translation>
    </message>
    <message>
        <source>Started on top of the crater</source>
        <translation>Auf dem Krater begonnen</translation>
    </message>
    <message>
        <source>Grind the stop, start ahead of it and run back over it.</source>
        <translation>Ende anschleifen, davor beginnen und darüber zurückfahren.</translation>
    </message>
    <message>
        <source>hardenable steel</source>
        <translation>härtbarer Stahl</translation>
    </message>
    <message>
        <source>small burn spot on the part</source>
        <translation>kleine Brandstelle auf dem Teil</translation>
    </message>
    <message>
        <source>Struck outside the groove</source>
        <translation>Außerhalb der Fuge gezündet</translation>
    </message>
    <message>
        <source>Strike in the joint; grind the spot smooth and check it for cracks.</source>
        <translation>Im Stoß zünden; die Stelle glatt schleifen und auf Risse prüfen.</translation>
    </message>
    <message>
        <source>width and height wander</source>
        <translation>Breite und Höhe schwanken</translation>
    </message>
    <message>
        <source>Uneven travel or arc length</source>
        <translation>Ungleichmäßige Führung oder Lichtbogenlänge</translation>
    </message>
    <message>
        <source>Brace the hand and keep a steady pace.</source>
        <translation>Hand abstützen und gleichmäßig führen.</translation>
    </message>
    <message>
        <source>Filler by base-metal pair and goal</source>
        <translation>Zusatz nach Grundwerkstoffpaar und Ziel</translation>
    </message>
    <message>
        <source>The filler for one pair of base metals and one goal. A side is an alloy, a group or a family; the most specific row decides, and the sides may be swapped. A row without a first choice is a refusal, and its why says the reason.</source>
        <translation>Der Zusatz für ein Paar von Grundwerkstoffen und ein Ziel. Eine Seite ist eine Legierung, eine Gruppe oder eine Familie; die genaueste Zeile entscheidet, und die Seiten dürfen vertauscht werden. Eine Zeile ohne erste Wahl ist eine Ablehnung, und ihr Warum nennt den Grund.</translation>
    </message>
    <message>
        <source>the strongest bead on this alloy</source>
        <translation>die festeste Raupe an dieser Legierung</translation>
    </message>
    <message>
        <source>the bead that bends furthest</source>
        <translation>die Raupe, die sich am weitesten biegen lässt</translation>
    </message>
    <message>
        <source>the table prints 1050 (99.5 % aluminium), which is no class sold as rod everywhere; 1100 is the nearest</source>
        <translation>die Tabelle nennt 1050 (99,5 % Aluminium), das nicht überall als Schweißstab zu kaufen ist; 1100 kommt ihm am nächsten</translation>
    </message>
    <message>
        <source>nearest to the base metal in sea water</source>
        <translation>dem Grundwerkstoff in Seewasser am nächsten</translation>
    </message>
    <message>
        <source>runs furthest from the crack-prone mixtures</source>
        <translation>am weitesten weg von den rissanfälligen Gemischen</translation>
    </message>
    <message>
        <source>nearest in colour after anodising</source>
        <translation>nach dem Eloxieren in der Farbe am nächsten</translation>
    </message>
    <message>
        <source>the table names 3103, the near twin of 3003</source>
        <translation>die Tabelle nennt 3103, den nahen Zwilling von 3003</translation>
    </message>
    <message>
        <source>the table names 3103, the near twin of 3003; the table prints 1050 (99.5 % aluminium), which is no class sold as rod everywhere; 1100 is the nearest</source>
        <translation>die Tabelle nennt 3103, den nahen Zwilling von 3003; die Tabelle nennt 1050 (99,5 % Aluminium), das nicht überall als Schweißstab zu kaufen ist; 1100 kommt ihm am nächsten</translation>
    </message>
    <message>
        <source>the table prints 6356, which is no filler class; read as 5356</source>
        <translation>die Tabelle nennt 6356, das keine Zusatzklasse ist; als 5356 gelesen</translation>
    </message>
    <message>
        <source>lifts the bead out of the crack-prone low-magnesium mixture</source>
        <translation>hebt die Raupe aus dem rissanfälligen magnesiumarmen Gemisch</translation>
    </message>
    <message>
        <source>not in the table; a base metal with less than 2 % magnesium is to be given the Al-Mg5 type</source>
        <translation>nicht in der Tabelle; ein Grundwerkstoff mit weniger als 2 % Magnesium soll den Typ Al-Mg5 bekommen</translation>
    </message>
    <message>
        <source>stays light after anodising, as the sheet does</source>
        <translation>bleibt nach dem Eloxieren hell, wie das Blech</translation>
    </message>
    <message>
        <source>from the colours of the fillers in the fillers table</source>
        <translation>aus den Farben der Zusätze in der Zusatztabelle</translation>
    </message>
    <message>
        <source>keeps the sheet soft and its colour; 4043 where cracking worries more</source>
        <translation>hält das Blech weich und seine Farbe; 4043, wo Risse mehr Sorge machen</translation>
    </message>
    <message>
        <source>pure filler answers three of the five goals printed for 1100, 4043 the other two</source>
        <translation>reiner Zusatz erfüllt drei der fünf für 1100 gedruckten Ziele, 4043 die anderen zwei</translation>
    </message>
    <message>
        <source>answers strength and least cracking alike; 1100 where it must bend or keep colour</source>
        <translation>erfüllt Festigkeit und wenigste Risse gleichermaßen; 1100, wo es sich biegen oder Farbe halten muss</translation>
    </message>
    <message>
        <source>the table names 3103; table 3.2 of the same book puts 5356 first</source>
        <translation>die Tabelle nennt 3103; Tabelle 3.2 desselben Buchs stellt 5356 an die erste Stelle</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; 4043 second is from memory of filler charts</source>
        <translation>Spaltenlage in der Tabelle nach den Abständen beurteilt; 4043 als zweites aus dem Gedächtnis von Zusatztafeln</translation>
    </message>
    <message>
        <source>answers strength, bending, cracking and colour alike; 4043 is a poor second here</source>
        <translation>erfüllt Festigkeit, Biegen, Rissfreiheit und Farbe gleichermaßen; 4043 ist hier eine schwache zweite Wahl</translation>
    </message>
    <message>
        <source>four of the five goals printed for 5052 are answered by 5356</source>
        <translation>vier der fünf für 5052 gedruckten Ziele erfüllt 5356</translation>
    </message>
    <message>
        <source>keeps the strength of the plate; silicon fillers make it brittle</source>
        <translation>erhält die Festigkeit der Platte; Siliziumzusätze machen sie spröde</translation>
    </message>
    <message>
        <source>5183 answers strength and sea water; table 3.2 of the same book puts 5356 first</source>
        <translation>5183 erfüllt Festigkeit und Seewasser; Tabelle 3.2 desselben Buchs stellt 5356 an die erste Stelle</translation>
    </message>
    <message>
        <source>answers most goals; silicon fillers make the bead brittle</source>
        <translation>erfüllt die meisten Ziele; Siliziumzusätze machen die Raupe spröde</translation>
    </message>
    <message>
        <source>four of the five goals printed for 5086 are answered by 5356</source>
        <translation>vier der fünf für 5086 gedruckten Ziele erfüllt 5356</translation>
    </message>
    <message>
        <source>matches the alloy and may run warm</source>
        <translation>artgleich zur Legierung und darf warm laufen</translation>
    </message>
    <message>
        <source>5554 answers three of the five goals printed for 5454</source>
        <translation>5554 erfüllt drei der fünf für 5454 gedruckten Ziele</translation>
    </message>
    <message>
        <source>cracks least and runs easily; 5356 makes the stronger fillet and the better colour</source>
        <translation>reißt am wenigsten und fließt leicht; 5356 gibt die festere Kehlnaht und die bessere Farbe</translation>
    </message>
    <message>
        <source>4043 answers cracking and sea water, 5356 strength and bending; table 3.2 of the same book puts 5556 first</source>
        <translation>4043 erfüllt Rissfreiheit und Seewasser, 5356 Festigkeit und Biegen; Tabelle 3.2 desselben Buchs stellt 5556 an die erste Stelle</translation>
    </message>
    <message>
        <source>4043 answers cracking and sea water, 5356 strength and bending</source>
        <translation>4043 erfüllt Rissfreiheit und Seewasser, 5356 Festigkeit und Biegen</translation>
    </message>
    <message>
        <source>matches the silicon of the casting; magnesium fillers turn it brittle</source>
        <translation>entspricht dem Silizium des Gussteils; Magnesiumzusätze machen es spröde</translation>
    </message>
    <message>
        <source>the ban on 5xxx fillers above 2 % silicon is printed in MATHERS p. 49</source>
        <translation>das Verbot von 5xxx-Zusätzen über 2 % Silizium ist gedruckt in MATHERS S. 49</translation>
    </message>
    <message>
        <source>from the goals printed for 6061 and for 6063; table 3.2 puts 5556 first</source>
        <translation>aus den für 6061 und für 6063 gedruckten Zielen; Tabelle 3.2 stellt 5556 an die erste Stelle</translation>
    </message>
    <message>
        <source>suits every pair of 5xxx alloys; silicon fillers make a bead with this much magnesium brittle</source>
        <translation>passt zu jedem Paar von 5xxx-Legierungen; Siliziumzusätze machen eine Raupe mit so viel Magnesium spröde</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the table names 5005, 5083, 5251 and 5454; second choices from memory of filler charts</source>
        <translation>Spaltenlage in der Tabelle nach den Abständen beurteilt; die Tabelle nennt 5005, 5083, 5251 und 5454; zweite Wahl aus dem Gedächtnis von Zusatztafeln</translation>
    </message>
    <message>
        <source>lifts the lean side out of the crack-prone mixture</source>
        <translation>hebt die magere Seite aus dem rissanfälligen Gemisch</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing</source>
        <translation>Spaltenlage in der Tabelle nach den Abständen beurteilt</translation>
    </message>
    <message>
        <source>strong and crack-safe; 5554 where the part runs warm</source>
        <translation>fest und risssicher; 5554, wo das Teil warm läuft</translation>
    </message>
    <message>
        <source>the table names 5251 and 5454, not 5052</source>
        <translation>die Tabelle nennt 5251 und 5454, nicht 5052</translation>
    </message>
    <message>
        <source>answers strength and colour on both sides</source>
        <translation>erfüllt Festigkeit und Farbe auf beiden Seiten</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the table names 5005, 5083, 5251 and 5454 with 6061, 6063 and 6082; second choices from memory of filler charts</source>
        <translation>Spaltenlage in der Tabelle nach den Abständen beurteilt; die Tabelle nennt 5005, 5083, 5251 und 5454 mit 6061, 6063 und 6082; zweite Wahl aus dem Gedächtnis von Zusatztafeln</translation>
    </message>
    <message>
        <source>answers both sides; 4043 cracks as little and runs easier</source>
        <translation>passt zu beiden Seiten; 4043 reißt ebenso wenig und fließt leichter</translation>
    </message>
    <message>
        <source>stronger and a better colour than 4043, which is accepted as second where cracking decides</source>
        <translation>fester und bessere Farbe als 4043, das als zweite Wahl gilt, wo Risse entscheiden</translation>
    </message>
    <message>
        <source>the table names 5251, not 5052; the seconds are from memory of filler charts</source>
        <translation>die Tabelle nennt 5251, nicht 5052; die zweite Wahl ist aus dem Gedächtnis von Zusatztafeln</translation>
    </message>
    <message>
        <source>enough magnesium for the plate; silicon fillers make its side brittle</source>
        <translation>genug Magnesium für die Platte; Siliziumzusätze machen ihre Seite spröde</translation>
    </message>
    <message>
        <source>the table names 5083, not 5086</source>
        <translation>die Tabelle nennt 5083, nicht 5086</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the second choice is from memory of filler charts</source>
        <translation>Spaltenlage in der Tabelle nach den Abständen beurteilt; die zweite Wahl ist aus dem Gedächtnis von Zusatztafeln</translation>
    </message>
    <message>
        <source>brings the magnesium the pure side lacks</source>
        <translation>bringt das Magnesium, das der reinen Seite fehlt</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the table names 1050, 1080 and 1200</source>
        <translation>Spaltenlage in der Tabelle nach den Abständen beurteilt; die Tabelle nennt 1050, 1080 und 1200</translation>
    </message>
    <message>
        <source>brings the magnesium the pure side lacks; silicon fillers make the plate side brittle</source>
        <translation>bringt das Magnesium, das der reinen Seite fehlt; Siliziumzusätze machen die Seite der Platte spröde</translation>
    </message>
    <message>
        <source>the table names 1050, 1080 and 1200 with 5083</source>
        <translation>die Tabelle nennt 1050, 1080 und 1200 mit 5083</translation>
    </message>
    <message>
        <source>strong and a good colour; 4043 cracks as little</source>
        <translation>fest und eine gute Farbe; 4043 reißt ebenso wenig</translation>
    </message>
    <message>
        <source>runs easily and cracks least on both</source>
        <translation>fließt leicht und reißt an beiden am wenigsten</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the table puts 5356 first and 4043 second; 4043 is also the one both metals share in table 3.3</source>
        <translation>Spaltenlage in der Tabelle nach den Abständen beurteilt; die Tabelle stellt 5356 an die erste und 4043 an die zweite Stelle; 4043 ist auch das, was beide Metalle in Tabelle 3.3 gemeinsam haben</translation>
    </message>
    <message>
        <source>brings the magnesium the manganese side lacks</source>
        <translation>bringt das Magnesium, das der Manganseite fehlt</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the table names 3103 and 3105; 4043 second is from memory of filler charts</source>
        <translation>Spaltenlage in der Tabelle nach den Abständen beurteilt; die Tabelle nennt 3103 und 3105; 4043 als zweites aus dem Gedächtnis von Zusatztafeln</translation>
    </message>
    <message>
        <source>brings the magnesium the manganese side lacks; silicon fillers make the plate side brittle</source>
        <translation>bringt das Magnesium, das der Manganseite fehlt; Siliziumzusätze machen die Seite der Platte spröde</translation>
    </message>
    <message>
        <source>the table names 3103 and 3105 with 5083</source>
        <translation>die Tabelle nennt 3103 und 3105 mit 5083</translation>
    </message>
    <message>
        <source>cracks least on both</source>
        <translation>reißt an beiden am wenigsten</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the table names 3103 and 3105</source>
        <translation>Spaltenlage in der Tabelle nach den Abständen beurteilt; die Tabelle nennt 3103 und 3105</translation>
    </message>
    <message>
        <source>matches the silicon of the casting</source>
        <translation>entspricht dem Silizium des Gussteils</translation>
    </message>
    <message>
        <source>the casting asks for silicon, the sheet for magnesium: a compromise, not for joints that carry much</source>
        <translation>das Gussteil verlangt Silizium, das Blech Magnesium: ein Kompromiss, nicht für Stöße, die viel tragen</translation>
    </message>
    <message>
        <source>brittle either way: the casting asks for silicon and the plate forbids it; not for joints that carry load</source>
        <translation>so oder so spröde: das Gussteil verlangt Silizium und die Platte verbietet es; nicht für Stöße, die Last tragen</translation>
    </message>
    <message>
        <source>stronger fillets than 4043 on both</source>
        <translation>festere Kehlnähte als 4043 an beiden</translation>
    </message>
    <message>
        <source>both alloys have the same answer in the table</source>
        <translation>beide Legierungen haben in der Tabelle dieselbe Antwort</translation>
    </message>
    <message>
        <source>bends further than 4043</source>
        <translation>lässt sich weiter biegen als 4043</translation>
    </message>
    <message>
        <source>printed for 6061 and for 6063 in sea water</source>
        <translation>gedruckt für 6061 und für 6063 in Seewasser</translation>
    </message>
    <message>
        <source>printed for 6061 and for 6063 as the one that cracks least</source>
        <translation>gedruckt für 6061 und für 6063 als der, der am wenigsten reißt</translation>
    </message>
    <message>
        <source>stays light after anodising; 4043 turns grey</source>
        <translation>bleibt nach dem Eloxieren hell; 4043 wird grau</translation>
    </message>
    <message>
        <source>the table prints 5654 for 6061 and 6356, read as 5356, for 6063</source>
        <translation>die Tabelle nennt 5654 für 6061 und 6356, als 5356 gelesen, für 6063</translation>
    </message>
    <message>
        <source>printed for most 5xxx alloys</source>
        <translation>gedruckt für die meisten 5xxx-Legierungen</translation>
    </message>
    <message>
        <source>from the answers printed for the single alloys</source>
        <translation>aus den für die einzelnen Legierungen gedruckten Antworten</translation>
    </message>
    <message>
        <source>nearest to the richer of the two alloys in sea water</source>
        <translation>der reicheren der beiden Legierungen in Seewasser am nächsten</translation>
    </message>
    <message>
        <source>printed for every 5xxx alloy as the one that cracks least</source>
        <translation>gedruckt für jede 5xxx-Legierung als der, der am wenigsten reißt</translation>
    </message>
    <message>
        <source>stays light after anodising, as both sheets do</source>
        <translation>bleibt nach dem Eloxieren hell, wie beide Bleche</translation>
    </message>
    <message>
        <source>printed for both alloys in sea water</source>
        <translation>gedruckt für beide Legierungen in Seewasser</translation>
    </message>
    <message>
        <source>stronger than 4043, and silicon is unwelcome on the 5xxx side</source>
        <translation>fester als 4043, und Silizium ist auf der 5xxx-Seite unerwünscht</translation>
    </message>
    <message>
        <source>enough magnesium to pass the crack-prone mixture on both sides</source>
        <translation>genug Magnesium, um auf beiden Seiten über das rissanfällige Gemisch hinauszukommen</translation>
    </message>
    <message>
        <source>5xxx fillers stay light after anodising; silicon fillers turn grey to black</source>
        <translation>5xxx-Zusätze bleiben nach dem Eloxieren hell; Siliziumzusätze werden grau bis schwarz</translation>
    </message>
    <message>
        <source>no filler matches: the casting itself turns grey, and so does the bead</source>
        <translation>kein Zusatz trifft die Farbe: das Gussteil selbst wird grau, und die Raupe ebenso</translation>
    </message>
    <message>
        <source>from the colours of the fillers and the ban on 5xxx fillers above 2 % silicon</source>
        <translation>aus den Farben der Zusätze und dem Verbot von 5xxx-Zusätzen über 2 % Silizium</translation>
    </message>
    <message>
        <source>no filler matches both sides; see the general choice for how brittle this pair is</source>
        <translation>kein Zusatz trifft beide Seiten; wie spröde dieses Paar ist, steht bei der allgemeinen Wahl</translation>
    </message>
    <message>
        <source>follows the general row of the pair, which is from memory</source>
        <translation>folgt der allgemeinen Zeile des Paars, die aus dem Gedächtnis stammt</translation>
    </message>
    <message>
        <source>carries no magnesium to speak of, so warmth does not open it to stress corrosion</source>
        <translation>enthält kaum Magnesium, darum macht Wärme es nicht anfällig für Spannungsrisskorrosion</translation>
    </message>
    <message>
        <source>from the printed rule: no lasting service above 65 degC for weld metal rich in magnesium, 5554 allowed; 3 % is taken as the line</source>
        <translation>aus der gedruckten Regel: kein Dauereinsatz über 65 degC für magnesiumreiches Schweißgut, 5554 erlaubt; 3 % gilt als Grenze</translation>
    </message>
    <message>
        <source>as pure as the sheet, so warmth does it no harm</source>
        <translation>so rein wie das Blech, darum schadet ihm Wärme nicht</translation>
    </message>
    <message>
        <source>the 5xxx filler that stays below 3 % magnesium</source>
        <translation>der 5xxx-Zusatz, der unter 3 % Magnesium bleibt</translation>
    </message>
    <message>
        <source>the casting forbids magnesium fillers; a compromise, not for joints that carry much</source>
        <translation>das Gussteil verbietet Magnesiumzusätze; ein Kompromiss, nicht für Stöße, die viel tragen</translation>
    </message>
    <message>
        <source>5083 itself carries more than 3 % magnesium and must not stay above 65 degC, whatever the filler: make the part in 5454 with 5554, or in 6061 with 4043</source>
        <translation>5083 selbst enthält mehr als 3 % Magnesium und darf nicht dauernd über 65 degC bleiben, gleich mit welchem Zusatz: das Teil aus 5454 mit 5554 oder aus 6061 mit 4043 machen</translation>
    </message>
    <message>
        <source>5086 itself carries more than 3 % magnesium and must not stay above 65 degC, whatever the filler: make the part in 5454 with 5554, or in 6061 with 4043</source>
        <translation>5086 selbst enthält mehr als 3 % Magnesium und darf nicht dauernd über 65 degC bleiben, gleich mit welchem Zusatz: das Teil aus 5454 mit 5554 oder aus 6061 mit 4043 machen</translation>
    </message>
    <message>
        <source>2024 is not to be arc welded: it cracks as it freezes and corrodes beside the bead; rivet or bolt the joint</source>
        <translation>2024 darf nicht lichtbogengeschweißt werden: es reißt beim Erstarren und korrodiert neben der Raupe; den Stoß nieten oder schrauben</translation>
    </message>
    <message>
        <source>7075 is not to be arc welded: it cracks as it freezes, or later from stress corrosion; rivet or bolt the joint</source>
        <translation>7075 darf nicht lichtbogengeschweißt werden: es reißt beim Erstarren, oder später durch Spannungsrisskorrosion; den Stoß nieten oder schrauben</translation>
    </message>
    <message>
        <source>the everyday wire and rod for plain steel</source>
        <translation>der Alltagsdraht und -stab für einfachen Stahl</translation>
    </message>
    <message>
        <source>matches steel to S355; the nickel type where cold toughness counts</source>
        <translation>passt zu Stahl bis S355; der Nickeltyp, wo Kaltzähigkeit zählt</translation>
    </message>
    <message>
        <source>with the zinc taken off; braze welding with silicon bronze melts less zinc</source>
        <translation>mit entferntem Zink; Lichtbogenlöten mit Siliziumbronze schmilzt weniger Zink</translation>
    </message>
    <message>
        <source>70S-2 through zinc blows holes</source>
        <translation>70S-2 durch Zink bläst Löcher</translation>
    </message>
    <message>
        <source>with the zinc taken off</source>
        <translation>mit entferntem Zink</translation>
    </message>
    <message>
        <source>near the strength of normalised tube; 70S-2 is tougher and serves walls below 3 mm</source>
        <translation>nahe der Festigkeit von normalgeglühtem Rohr; 70S-2 ist zäher und reicht für Wände unter 3 mm</translation>
    </message>
    <message>
        <source>matching 4130 filler only for parts that are heat treated afterwards</source>
        <translation>artgleicher 4130-Zusatz nur für Teile, die danach wärmebehandelt werden</translation>
    </message>
    <message>
        <source>soft enough not to crack beside the hard side</source>
        <translation>weich genug, um neben der harten Seite nicht zu reißen</translation>
    </message>
    <message>
        <source>with the zinc taken off; soft enough not to crack beside the hard side</source>
        <translation>mit entferntem Zink; weich genug, um neben der harten Seite nicht zu reißen</translation>
    </message>
    <message>
        <source>soft enough not to crack beside the hard side; it will not rust to the same colour</source>
        <translation>weich genug, um neben der harten Seite nicht zu reißen; rostet nicht zur gleichen Farbe</translation>
    </message>
    <message>
        <source>rusts to the same colour; plain wire will do for a single run that picks up enough of the sheet</source>
        <translation>rostet zur gleichen Farbe; einfacher Draht genügt für eine einzelne Raupe, die genug vom Blech aufnimmt</translation>
    </message>
    <message>
        <source>plain wire matches the plain side</source>
        <translation>einfacher Draht passt zur einfachen Seite</translation>
    </message>
    <message>
        <source>matches 304 and 304L</source>
        <translation>passt zu 304 und 304L</translation>
    </message>
    <message>
        <source>keeps the molybdenum that resists pitting</source>
        <translation>erhält das Molybdän, das gegen Lochfraß schützt</translation>
    </message>
    <message>
        <source>suits both; 308L where only the 304 side sees the weather</source>
        <translation>passt zu beiden; 308L, wo nur die 304-Seite der Witterung ausgesetzt ist</translation>
    </message>
    <message>
        <source>matches the sheet and moves with it when hot</source>
        <translation>passt zum Blech und dehnt sich heiß mit ihm</translation>
    </message>
    <message>
        <source>matches in colour and expansion; the austenitic ones give a tougher bead</source>
        <translation>passt in Farbe und Dehnung; die austenitischen geben eine zähere Raupe</translation>
    </message>
    <message>
        <source>a tough bead between two brittle edges</source>
        <translation>eine zähe Raupe zwischen zwei spröden Kanten</translation>
    </message>
    <message>
        <source>stays tough whatever it picks up from either side</source>
        <translation>bleibt zäh, was auch immer sie von beiden Seiten aufnimmt</translation>
    </message>
    <message>
        <source>rich enough to stay crack-free when the plain side thins it</source>
        <translation>reich genug legiert, um rissfrei zu bleiben, wenn die einfache Seite sie verdünnt</translation>
    </message>
    <message>
        <source>only with every trace of zinc taken off well back: molten zinc cracks stainless on contact</source>
        <translation>nur wenn jede Spur Zink weit zurück entfernt ist: flüssiges Zink lässt nichtrostenden Stahl bei Berührung reißen</translation>
    </message>
    <message>
        <source>a tough bead between the two</source>
        <translation>eine zähe Raupe zwischen beiden</translation>
    </message>
    <message>
        <source>with the zinc taken off; a tough bead between the two</source>
        <translation>mit entferntem Zink; eine zähe Raupe zwischen beiden</translation>
    </message>
    <message>
        <source>matches deoxidised copper; silicon bronze needs less heat but conducts poorly</source>
        <translation>passt zu desoxidiertem Kupfer; Siliziumbronze braucht weniger Wärme, leitet aber schlecht</translation>
    </message>
    <message>
        <source>matches</source>
        <translation>artgleich</translation>
    </message>
    <message>
        <source>runs at less heat and suits both</source>
        <translation>braucht weniger Wärme und passt zu beiden</translation>
    </message>
    <message>
        <source>matches grade 2; nothing but titanium may go into the pool</source>
        <translation>passt zu Grade 2; nichts als Titan darf ins Bad gelangen</translation>
    </message>
    <message>
        <source>matches wrought AZ31; AZ92A freezes later and cracks less</source>
        <translation>passt zu gewalztem AZ31; AZ92A erstarrt später und reißt weniger</translation>
    </message>
    <message>
        <source>aluminium and steel form a brittle compound where they melt together, so no filler makes a sound fused joint: bolt them with insulation between, or use a bought transition strip</source>
        <translation>Aluminium und Stahl bilden eine spröde Verbindung, wo sie zusammenschmelzen, darum gibt kein Zusatz eine gesunde Schmelzverbindung: mit Isolierung dazwischen verschrauben oder ein gekauftes Übergangsstück nehmen</translation>
    </message>
    <message>
        <source>aluminium and stainless steel form a brittle compound where they melt together, so no filler makes a sound fused joint: bolt them with insulation between, or use a bought transition strip</source>
        <translation>Aluminium und nichtrostender Stahl bilden eine spröde Verbindung, wo sie zusammenschmelzen, darum gibt kein Zusatz eine gesunde Schmelzverbindung: mit Isolierung dazwischen verschrauben oder ein gekauftes Übergangsstück nehmen</translation>
    </message>
    <message>
        <source>aluminium and copper form a brittle compound where they melt together, so no filler makes a sound fused joint: bolt them with insulation between, or use a bought transition strip</source>
        <translation>Aluminium und Kupfer bilden eine spröde Verbindung, wo sie zusammenschmelzen, darum gibt kein Zusatz eine gesunde Schmelzverbindung: mit Isolierung dazwischen verschrauben oder ein gekauftes Übergangsstück nehmen</translation>
    </message>
    <message>
        <source>aluminium and magnesium form a brittle compound where they melt together, so no filler makes a sound fused joint: bolt them with insulation between, or use a bought transition strip</source>
        <translation>Aluminium und Magnesium bilden eine spröde Verbindung, wo sie zusammenschmelzen, darum gibt kein Zusatz eine gesunde Schmelzverbindung: mit Isolierung dazwischen verschrauben oder ein gekauftes Übergangsstück nehmen</translation>
    </message>
    <message>
        <source>titanium and aluminium form brittle compounds where they melt together, so no filler makes a sound fused joint: bolt or bond them</source>
        <translation>Titan und Aluminium bilden spröde Verbindungen, wo sie zusammenschmelzen, darum gibt kein Zusatz eine gesunde Schmelzverbindung: verschrauben oder kleben</translation>
    </message>
    <message>
        <source>titanium and steel form brittle compounds where they melt together, so no filler makes a sound fused joint: bolt or bond them</source>
        <translation>Titan und Stahl bilden spröde Verbindungen, wo sie zusammenschmelzen, darum gibt kein Zusatz eine gesunde Schmelzverbindung: verschrauben oder kleben</translation>
    </message>
    <message>
        <source>titanium and stainless steel form brittle compounds where they melt together, so no filler makes a sound fused joint: bolt or bond them</source>
        <translation>Titan und nichtrostender Stahl bilden spröde Verbindungen, wo sie zusammenschmelzen, darum gibt kein Zusatz eine gesunde Schmelzverbindung: verschrauben oder kleben</translation>
    </message>
    <message>
        <source>titanium and copper form brittle compounds where they melt together, so no filler makes a sound fused joint: bolt or bond them</source>
        <translation>Titan und Kupfer bilden spröde Verbindungen, wo sie zusammenschmelzen, darum gibt kein Zusatz eine gesunde Schmelzverbindung: verschrauben oder kleben</translation>
    </message>
    <message>
        <source>titanium and magnesium form brittle compounds where they melt together, so no filler makes a sound fused joint: bolt or bond them</source>
        <translation>Titan und Magnesium bilden spröde Verbindungen, wo sie zusammenschmelzen, darum gibt kein Zusatz eine gesunde Schmelzverbindung: verschrauben oder kleben</translation>
    </message>
    <message>
        <source>magnesium and steel do not fuse into a sound joint and corrode each other: bolt them with insulation between</source>
        <translation>Magnesium und Stahl verschmelzen nicht zu einer gesunden Verbindung und korrodieren einander: mit Isolierung dazwischen verschrauben</translation>
    </message>
    <message>
        <source>magnesium and stainless steel do not fuse into a sound joint and corrode each other: bolt them with insulation between</source>
        <translation>Magnesium und nichtrostender Stahl verschmelzen nicht zu einer gesunden Verbindung und korrodieren einander: mit Isolierung dazwischen verschrauben</translation>
    </message>
    <message>
        <source>magnesium and copper do not fuse into a sound joint and corrode each other: bolt them with insulation between</source>
        <translation>Magnesium und Kupfer verschmelzen nicht zu einer gesunden Verbindung und korrodieren einander: mit Isolierung dazwischen verschrauben</translation>
    </message>
    <message>
        <source>copper and steel are joined by brazing or bronze welding, for which there is no set-up in these tables</source>
        <translation>Kupfer und Stahl werden durch Hartlöten oder Fugenlöten mit Bronze verbunden, wofür es in diesen Tabellen keine Einstellung gibt</translation>
    </message>
    <message>
        <source>copper and stainless steel are joined by brazing or bronze welding, for which there is no set-up in these tables</source>
        <translation>Kupfer und nichtrostender Stahl werden durch Hartlöten oder Fugenlöten mit Bronze verbunden, wofür es in diesen Tabellen keine Einstellung gibt</translation>
    </message>
    <message>
        <source>Filler metals</source>
        <translation>Schweißzusätze</translation>
    </message>
    <message>
        <source>One filler metal by its AWS class, with the ISO designation beside it, what it is for and what it looks like after anodising.</source>
        <translation>Ein Schweißzusatz nach seiner AWS-Klasse, daneben die ISO-Bezeichnung, wofür er ist und wie er nach dem Eloxieren aussieht.</translation>
    </message>
    <message>
        <source>light golden</source>
        <translation>hellgolden</translation>
    </message>
    <message>
        <source>pure sheet and 3xxx where the bead should bend or keep its colour</source>
        <translation>Reinaluminiumblech und 3xxx, wo die Raupe sich biegen oder ihre Farbe halten soll</translation>
    </message>
    <message>
        <source>golden</source>
        <translation>golden</translation>
    </message>
    <message>
        <source>2219 and copper-bearing castings; nothing in the usual small shop</source>
        <translation>2219 und kupferhaltige Gussteile; nichts aus der üblichen kleinen Werkstatt</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>grau</translation>
    </message>
    <message>
        <source>6xxx, 3xxx and castings; flows easily, cracks least, turns grey when anodised</source>
        <translation>6xxx, 3xxx und Gussteile; fließt leicht, reißt am wenigsten, wird beim Eloxieren grau</translation>
    </message>
    <message>
        <source>grey-black</source>
        <translation>grauschwarz</translation>
    </message>
    <message>
        <source>thin sheet, castings and leak-tight joints; the most fluid of all</source>
        <translation>dünnes Blech, Gussteile und dichte Nähte; der dünnflüssigste von allen</translation>
    </message>
    <message>
        <source>6xxx over 12 mm that is solution treated and aged after welding</source>
        <translation>6xxx über 12 mm, das nach dem Schweißen lösungsgeglüht und ausgelagert wird</translation>
    </message>
    <message>
        <source>white</source>
        <translation>weiß</translation>
    </message>
    <message>
        <source>5083 and 5086 where strength and sea water count</source>
        <translation>5083 und 5086, wo Festigkeit und Seewasser zählen</translation>
    </message>
    <message>
        <source>the everyday 5xxx filler: stronger fillets and a good match after anodising</source>
        <translation>der alltägliche 5xxx-Zusatz: festere Kehlnähte und nach dem Eloxieren gut passend</translation>
    </message>
    <message>
        <source>5454 and 5052 in warm service</source>
        <translation>5454 und 5052 im warmen Betrieb</translation>
    </message>
    <message>
        <source>the strongest of the common 5xxx fillers</source>
        <translation>der festeste der gängigen 5xxx-Zusätze</translation>
    </message>
    <message>
        <source>5154, 5254 and colour matching on 6061</source>
        <translation>5154, 5254 und passende Farbe an 6061</translation>
    </message>
    <message>
        <source>casting 356 and A356, matching, may be aged afterwards</source>
        <translation>Guss 356 und A356, artgleich, kann danach ausgelagert werden</translation>
    </message>
    <message>
        <source>TIG on low-carbon steel and thin 4130; forgives some rust</source>
        <translation>WIG an unlegiertem Stahl und dünnem 4130; verzeiht etwas Rost</translation>
    </message>
    <message>
        <source>clean low-carbon steel</source>
        <translation>sauberer unlegierter Stahl</translation>
    </message>
    <message>
        <source>low-carbon and structural steel to S355; forgives some scale, wets well on sheet</source>
        <translation>unlegierter Stahl und Baustahl bis S355; verzeiht etwas Zunder, benetzt Blech gut</translation>
    </message>
    <message>
        <source>4130 and other low-alloy steel of about 550 MPa</source>
        <translation>4130 und anderer niedriglegierter Stahl um 550 MPa</translation>
    </message>
    <message>
        <source>weathering steel and cold-tough structural work</source>
        <translation>wetterfester Stahl und kaltzähe Bauteile</translation>
    </message>
    <message>
        <source>304 and 304L</source>
        <translation>304 und 304L</translation>
    </message>
    <message>
        <source>304 and 304L by MIG; wets better</source>
        <translation>304 und 304L mit MIG/MAG; benetzt besser</translation>
    </message>
    <message>
        <source>stainless to carbon steel</source>
        <translation>nichtrostender an unlegierten Stahl</translation>
    </message>
    <message>
        <source>stainless to carbon steel by MIG; wets better</source>
        <translation>nichtrostender an unlegierten Stahl mit MIG/MAG; benetzt besser</translation>
    </message>
    <message>
        <source>316 and 316L</source>
        <translation>316 und 316L</translation>
    </message>
    <message>
        <source>316 and 316L by MIG; wets better</source>
        <translation>316 und 316L mit MIG/MAG; benetzt besser</translation>
    </message>
    <message>
        <source>409 exhaust sheet</source>
        <translation>409-Auspuffblech</translation>
    </message>
    <message>
        <source>409 and like exhaust grades; niobium keeps the grain tame</source>
        <translation>409 und ähnliche Auspuffsorten; Niob hält das Korn im Zaum</translation>
    </message>
    <message>
        <source>430, matching</source>
        <translation>430, artgleich</translation>
    </message>
    <message>
        <source>unlike or unknown steels; stays crack-free under much dilution</source>
        <translation>ungleiche oder unbekannte Stähle; bleibt bei starker Aufmischung rissfrei</translation>
    </message>
    <message>
        <source>silicon bronze; braze welding of galvanised sheet</source>
        <translation>Siliziumbronze; Lichtbogenlöten von verzinktem Blech</translation>
    </message>
    <message>
        <source>deoxidised copper</source>
        <translation>desoxidiertes Kupfer</translation>
    </message>
    <message>
        <source>softest commercially pure titanium</source>
        <translation>weichstes Reintitan</translation>
    </message>
    <message>
        <source>titanium grade 2</source>
        <translation>Titan Grade 2</translation>
    </message>
    <message>
        <source>AZ31 and other wrought magnesium</source>
        <translation>AZ31 und anderes Knetmagnesium</translation>
    </message>
    <message>
        <source>magnesium castings and AZ31; melts lower</source>
        <translation>Magnesiumguss und AZ31; schmilzt niedriger</translation>
    </message>
    <message>
        <source>Filter shades</source>
        <translation>Schutzstufen</translation>
    </message>
    <message>
        <source>One band of current in one document: the least shade it allows, the shade it suggests, or both. The federal rule sets the floor; the guide&apos;s suggestion is the comfort column. Begin too dark to see the pool and step lighter until it is clear, never below the floor. The European bands suppose the eye half a metre from the pool, and have none for MIG below 80 A.</source>
        <translation>Ein Strombereich in einem Dokument: die kleinste Schutzstufe, die es erlaubt, die empfohlene oder beide. Die US-Bundesvorschrift setzt die Untergrenze; die Empfehlung des Leitfadens ist die Komfortspalte. So dunkel beginnen, dass das Bad nicht zu sehen ist, und heller gehen, bis es klar ist, niemals unter die Untergrenze. Die europäischen Bereiche setzen das Auge einen halben Meter vom Bad voraus und haben keinen für MIG/MAG unter 80 A.</translation>
    </message>
    <message>
        <source>Gas flows</source>
        <translation>Gasdurchflüsse</translation>
    </message>
    <message>
        <source>One flow, or one cup for an electrode, as a document gives it: by thickness, by current or as a plain range. Flows printed in cubic feet an hour are converted beside. Flows that belong to a whole set-up stand with it, in the schedules.</source>
        <translation>Ein Durchfluss, oder eine Gasdüse zu einer Elektrode, wie ein Dokument sie nennt: nach Dicke, nach Strom oder als einfacher Bereich. In Kubikfuß je Stunde gedruckte Durchflüsse sind daneben umgerechnet. Durchflüsse, die zu einer ganzen Einstellung gehören, stehen bei ihr, in den Schweißtabellen.</translation>
    </message>
    <message>
        <source>Shielding gas groups of ISO 14175</source>
        <translation>Schutzgasgruppen der ISO 14175</translation>
    </message>
    <message>
        <source>One group of one edition: the base gas and what is mixed into it, in percent of volume. A share lies above its lower limit and up to its upper one; the lowest limit of the 2008 edition, 0.5, itself belongs to the group. Helium may stand in for argon in the groups based on argon. What fits no group is called Z.</source>
        <translation>Eine Gruppe einer Ausgabe: das Grundgas und was ihm beigemischt ist, in Volumenprozent. Ein Anteil liegt über seiner unteren Grenze und reicht bis zur oberen; die niedrigste Grenze der Ausgabe 2008, 0,5, gehört selbst zur Gruppe. In den Gruppen auf Argonbasis darf Helium das Argon ersetzen. Was in keine Gruppe passt, heißt Z.</translation>
    </message>
    <message>
        <source>Gas uses</source>
        <translation>Gasverwendung</translation>
    </message>
    <message>
        <source>One gas with one process on one family of metal. Standing is our order of preference, 1 first.</source>
        <translation>Ein Gas mit einem Verfahren an einer Metallfamilie. Der Rang ist die eigene Reihenfolge, 1 zuerst.</translation>
    </message>
    <message>
        <source>Shielding gases</source>
        <translation>Schutzgase</translation>
    </message>
    <message>
        <source>One gas or mix: what is in it, in percent of volume, and its groups in ISO 14175. Processes, families and transfers sum up the gas uses table, which says what goes with what.</source>
        <translation>Ein Gas oder Mischgas: was darin ist, in Volumenprozent, und seine Gruppen in ISO 14175. Verfahren, Familien und Lichtbogenarten fassen die Tabelle der Gasverwendung zusammen, die sagt, was wozu passt.</translation>
    </message>
    <message>
        <source>argon with 25 % helium</source>
        <translation>Argon mit 25 % Helium</translation>
    </message>
    <message>
        <source>argon with 50 % helium</source>
        <translation>Argon mit 50 % Helium</translation>
    </message>
    <message>
        <source>argon with 75 % helium</source>
        <translation>Argon mit 75 % Helium</translation>
    </message>
    <message>
        <source>argon with 25 % carbon dioxide</source>
        <translation>Argon mit 25 % Kohlendioxid</translation>
    </message>
    <message>
        <source>argon with 18 % carbon dioxide</source>
        <translation>Argon mit 18 % Kohlendioxid</translation>
    </message>
    <message>
        <source>argon with 10 % carbon dioxide</source>
        <translation>Argon mit 10 % Kohlendioxid</translation>
    </message>
    <message>
        <source>argon with 5 % oxygen</source>
        <translation>Argon mit 5 % Sauerstoff</translation>
    </message>
    <message>
        <source>argon with 2 % oxygen</source>
        <translation>Argon mit 2 % Sauerstoff</translation>
    </message>
    <message>
        <source>argon with 2 % carbon dioxide</source>
        <translation>Argon mit 2 % Kohlendioxid</translation>
    </message>
    <message>
        <source>helium with 7.5 % argon and 2.5 % carbon dioxide</source>
        <translation>Helium mit 7,5 % Argon und 2,5 % Kohlendioxid</translation>
    </message>
    <message>
        <source>Sheet and tube gauges</source>
        <translation>Blech- und Rohrlehren (gauge)</translation>
    </message>
    <message>
        <source>The thickness that one gauge number stands for in one system. MSG is plain steel sheet, GSG galvanised sheet with its zinc, USG (15 USC 206) stainless, AWG aluminium and copper alloys, BWG tube walls.</source>
        <translation>Die Dicke, für die eine Gauge-Nummer in einem System steht. MSG ist unlegiertes Stahlblech, GSG verzinktes Blech samt Zink, USG (15 USC 206) nichtrostender Stahl, AWG Aluminium und Kupferlegierungen, BWG Rohrwände.</translation>
    </message>
    <message>
        <source>Hot and liquid metals</source>
        <translation>Heiße und flüssige Metalle</translation>
    </message>
    <message>
        <source>What changes between room temperature and melting, by family: ratios of the mean to the value near 20 degC where no standard gives a formula, the liquid&apos;s own density and surface tension at its melting point, and how well the hot face radiates.</source>
        <translation>Was sich zwischen Raumtemperatur und Schmelzen ändert, je Familie: Verhältnisse des Mittelwerts zum Wert bei etwa 20 degC, wo keine Norm eine Formel gibt, Dichte und Oberflächenspannung der Schmelze am Schmelzpunkt und wie gut die heiße Fläche strahlt.</translation>
    </message>
    <message>
        <source>Weld imperfections</source>
        <translation>Unregelmäßigkeiten</translation>
    </message>
    <message>
        <source>One imperfection with its number in ISO 6520-1. The first digit gives the group.</source>
        <translation>Eine Unregelmäßigkeit mit ihrer Nummer in ISO 6520-1. Die erste Ziffer gibt die Gruppe an.</translation>
    </message>
    <message>
        <source>longitudinal crack</source>
        <translation>Längsriss</translation>
    </message>
    <message>
        <source>longitudinal crack in the weld metal</source>
        <translation>Längsriss im Schweißgut</translation>
    </message>
    <message>
        <source>transverse crack</source>
        <translation>Querriss</translation>
    </message>
    <message>
        <source>gas pore</source>
        <translation>Pore</translation>
    </message>
    <message>
        <source>uniformly distributed porosity</source>
        <translation>gleichmäßig verteilte Porosität</translation>
    </message>
    <message>
        <source>clustered porosity</source>
        <translation>Porennest</translation>
    </message>
    <message>
        <source>linear porosity</source>
        <translation>Porenzeile</translation>
    </message>
    <message>
        <source>elongated cavity</source>
        <translation>Gaskanal</translation>
    </message>
    <message>
        <source>worm-hole</source>
        <translation>Schlauchpore</translation>
    </message>
    <message>
        <source>surface pore</source>
        <translation>Oberflächenpore</translation>
    </message>
    <message>
        <source>crater pipe</source>
        <translation>Endkraterlunker</translation>
    </message>
    <message>
        <source>end crater pipe</source>
        <translation>offener Endkraterlunker</translation>
    </message>
    <message>
        <source>solid inclusion</source>
        <translation>fester Einschluss</translation>
    </message>
    <message>
        <source>slag inclusion</source>
        <translation>Schlackeneinschluss</translation>
    </message>
    <message>
        <source>puckering</source>
        <translation>Oxidhaut (Wirbelung)</translation>
    </message>
    <message>
        <source>metallic inclusion</source>
        <translation>metallischer Einschluss</translation>
    </message>
    <message>
        <source>copper inclusion</source>
        <translation>Kupfereinschluss</translation>
    </message>
    <message>
        <source>lack of side-wall fusion</source>
        <translation>Flankenbindefehler</translation>
    </message>
    <message>
        <source>lack of inter-run fusion</source>
        <translation>Lagenbindefehler</translation>
    </message>
    <message>
        <source>lack of root fusion</source>
        <translation>Wurzelbindefehler</translation>
    </message>
    <message>
        <source>incomplete root penetration</source>
        <translation>ungenügender Wurzeleinbrand</translation>
    </message>
    <message>
        <source>continuous undercut</source>
        <translation>durchlaufende Einbrandkerbe</translation>
    </message>
    <message>
        <source>intermittent undercut</source>
        <translation>nicht durchlaufende Einbrandkerbe</translation>
    </message>
    <message>
        <source>shrinkage groove</source>
        <translation>Wurzelkerbe (Schrumpfkerbe)</translation>
    </message>
    <message>
        <source>excess weld metal on a butt weld</source>
        <translation>zu große Nahtüberhöhung (Stumpfnaht)</translation>
    </message>
    <message>
        <source>excessive convexity of a fillet weld</source>
        <translation>zu große Nahtüberhöhung (Kehlnaht)</translation>
    </message>
    <message>
        <source>excessive penetration</source>
        <translation>zu große Wurzelüberhöhung</translation>
    </message>
    <message>
        <source>incorrect weld toe</source>
        <translation>schroffer Nahtübergang</translation>
    </message>
    <message>
        <source>overlap</source>
        <translation>Schweißgutüberlauf</translation>
    </message>
    <message>
        <source>linear misalignment</source>
        <translation>Kantenversatz</translation>
    </message>
    <message>
        <source>angular misalignment</source>
        <translation>Winkelversatz</translation>
    </message>
    <message>
        <source>sagging</source>
        <translation>verlaufenes Schweißgut</translation>
    </message>
    <message>
        <source>burn-through</source>
        <translation>Durchbrand</translation>
    </message>
    <message>
        <source>incompletely filled groove</source>
        <translation>Decklagenunterwölbung</translation>
    </message>
    <message>
        <source>excessive asymmetry of fillet</source>
        <translation>übermäßige Ungleichschenkligkeit (Kehlnaht)</translation>
    </message>
    <message>
        <source>irregular width</source>
        <translation>unregelmäßige Breite</translation>
    </message>
    <message>
        <source>irregular surface</source>
        <translation>unregelmäßige Oberfläche</translation>
    </message>
    <message>
        <source>root concavity</source>
        <translation>Wurzelrückfall</translation>
    </message>
    <message>
        <source>root porosity</source>
        <translation>Wurzelporosität</translation>
    </message>
    <message>
        <source>excessive distortion</source>
        <translation>zu großer Verzug</translation>
    </message>
    <message>
        <source>insufficient throat thickness</source>
        <translation>zu kleine Kehlnahtdicke</translation>
    </message>
    <message>
        <source>excessive throat thickness</source>
        <translation>zu große Kehlnahtdicke</translation>
    </message>
    <message>
        <source>tungsten spatter</source>
        <translation>Wolframspritzer</translation>
    </message>
    <message>
        <source>temper colours</source>
        <translation>Anlauffarben</translation>
    </message>
    <message>
        <source>incorrect root gap of a fillet weld</source>
        <translation>schlechte Passung (Kehlnaht)</translation>
    </message>
    <message>
        <source>Joint factors</source>
        <translation>Stoßfaktoren</translation>
    </message>
    <message>
        <source>What a change of joint does to the current, against a butt joint of the same sheet. Most rows are the quotient of two schedule rows of one document; the rest is shop practice.</source>
        <translation>Was ein anderer Stoß am Strom ändert, gegenüber einem Stumpfstoß im gleichen Blech. Die meisten Zeilen sind der Quotient zweier Tabellenzeilen eines Dokuments; der Rest ist Werkstattpraxis.</translation>
    </message>
    <message>
        <source>helium on DCEN; travel and volts differ between the two rows</source>
        <translation>Helium bei DCEN; Geschwindigkeit und Spannung der beiden Zeilen unterscheiden sich</translation>
    </message>
    <message>
        <source>corner also welded slower than the butt</source>
        <translation>Ecke auch langsamer geschweißt als der Stumpfstoß</translation>
    </message>
    <message>
        <source>one more plate takes the heat</source>
        <translation>ein Blech mehr nimmt die Wärme auf</translation>
    </message>
    <message>
        <source>between a butt and a T-joint</source>
        <translation>zwischen Stumpfstoß und T-Stoß</translation>
    </message>
    <message>
        <source>the lower sheet runs on under the joint</source>
        <translation>das untere Blech läuft unter dem Stoß weiter</translation>
    </message>
    <message>
        <source>heat has fewer ways out and the full edge has to melt: no more current, a wider arc</source>
        <translation>Wärme hat weniger Wege hinaus, und die volle Kante muss schmelzen: nicht mehr Strom, breiterer Lichtbogen</translation>
    </message>
    <message>
        <source>two edges side by side, little metal behind them</source>
        <translation>zwei Kanten nebeneinander, wenig Metall dahinter</translation>
    </message>
    <message>
        <source>Where the neutral line lies in a bend</source>
        <translation>Wo die neutrale Faser in einer Biegung liegt</translation>
    </message>
    <message>
        <source>The share of the thickness, counted from the inside face, at which a bend neither stretches nor shortens. For steel the factor of DIN 6935 is computed instead; one test bend on the person&apos;s own brake is better than any row.</source>
        <translation>Der Anteil der Dicke, von der Innenfläche gezählt, bei dem eine Biegung weder streckt noch staucht. Für Stahl wird stattdessen der Faktor der DIN 6935 berechnet; eine Probebiegung an der eigenen Abkantbank ist besser als jede Zeile.</translation>
    </message>
    <message>
        <source>Base metals</source>
        <translation>Grundwerkstoffe</translation>
    </message>
    <message>
        <source>One metal as it stands in the rack: physical properties near 20 degC, what the arc does to it, and what people call it. The class, the risks and the sentences are our own, from common practice; the grade of the row is that of its figures.</source>
        <translation>Ein Metall, wie es im Regal steht: physikalische Eigenschaften bei etwa 20 degC, was der Lichtbogen mit ihm macht und wie man es nennt. Die Klasse, die Risiken und die Sätze sind eigene, aus gängiger Praxis; die Belegstufe der Zeile ist die ihrer Werte.</translation>
    </message>
    <message>
        <source>aluminium 1100, 99 % pure</source>
        <translation>Aluminium 1100, 99 % rein</translation>
    </message>
    <message>
        <source>The arc takes the sheet back to soft beside the bead: size the joint for annealed strength.</source>
        <translation>Der Lichtbogen macht das Blech neben der Raupe wieder weich: den Stoß nach der weichgeglühten Festigkeit bemessen.</translation>
    </message>
    <message>
        <source>aluminium 3003, manganese</source>
        <translation>Aluminium 3003, Mangan</translation>
    </message>
    <message>
        <source>aluminium 5005, 0.8 % magnesium</source>
        <translation>Aluminium 5005, 0,8 % Magnesium</translation>
    </message>
    <message>
        <source>Low magnesium sits near the crack-prone mixture: always add filler, never wash the edges together alone.</source>
        <translation>Wenig Magnesium liegt nahe am rissanfälligen Gemisch: immer Zusatz zugeben, niemals nur die Kanten zusammenfließen lassen.</translation>
    </message>
    <message>
        <source>aluminium 5052, 2.5 % magnesium</source>
        <translation>Aluminium 5052, 2,5 % Magnesium</translation>
    </message>
    <message>
        <source>Cracks when fused without filler or with rod cut from the sheet: 5356 carries the bead past the crack-prone mixture.</source>
        <translation>Reißt, wenn ohne Zusatz oder mit aus dem Blech geschnittenem Streifen geschweißt: 5356 bringt die Raupe über das rissanfällige Gemisch hinaus.</translation>
    </message>
    <message>
        <source>aluminium 5083, 4.5 % magnesium, marine plate</source>
        <translation>Aluminium 5083, 4,5 % Magnesium, Schiffbauplatte</translation>
    </message>
    <message>
        <source>Keep welded parts out of lasting service above 65 degC, and keep 4043 and 4047 away from it.</source>
        <translation>Geschweißte Teile nicht dauernd über 65 degC einsetzen, und 4043 und 4047 davon fernhalten.</translation>
    </message>
    <message>
        <source>aluminium 5086, 4 % magnesium, marine sheet</source>
        <translation>Aluminium 5086, 4 % Magnesium, Schiffbaublech</translation>
    </message>
    <message>
        <source>aluminium 5454, 2.7 % magnesium, for warm service</source>
        <translation>Aluminium 5454, 2,7 % Magnesium, für warmen Betrieb</translation>
    </message>
    <message>
        <source>The 5xxx alloy for warm parts: with 5554 filler it may stay in service above 65 degC.</source>
        <translation>Die 5xxx-Legierung für warme Teile: mit Zusatz 5554 darf sie über 65 degC im Betrieb bleiben.</translation>
    </message>
    <message>
        <source>aluminium 6061, magnesium and silicon</source>
        <translation>Aluminium 6061, Magnesium und Silizium</translation>
    </message>
    <message>
        <source>Never fuse it without filler. T6 falls to about the strength of T4 or less beside the bead; long heat above 120 degC costs more.</source>
        <translation>Niemals ohne Zusatz schmelzen. T6 fällt neben der Raupe etwa auf die Festigkeit von T4 oder darunter; lange Wärme über 120 degC kostet mehr.</translation>
    </message>
    <message>
        <source>aluminium 6063, extrusions</source>
        <translation>Aluminium 6063, Strangpressprofile</translation>
    </message>
    <message>
        <source>Never fuse it without filler. The aged temper is lost beside the bead.</source>
        <translation>Niemals ohne Zusatz schmelzen. Der ausgelagerte Zustand geht neben der Raupe verloren.</translation>
    </message>
    <message>
        <source>aluminium casting 356 and A356, 7 % silicon</source>
        <translation>Aluminiumguss 356 und A356, 7 % Silizium</translation>
    </message>
    <message>
        <source>Castings hold oil and gas: clean deep, try a small bead first, and keep 5xxx fillers away from all this silicon.</source>
        <translation>Gussteile halten Öl und Gas: tief reinigen, erst eine kleine Raupe probieren, und 5xxx-Zusätze von so viel Silizium fernhalten.</translation>
    </message>
    <message>
        <source>aluminium 2024, copper</source>
        <translation>Aluminium 2024, Kupfer</translation>
    </message>
    <message>
        <source>2024 freezes over so wide a range that an arc weld cracks, and what holds is weak and corrodes beside the bead: rivet or bolt it, or make the part anew in 5052 or 6061.</source>
        <translation>2024 erstarrt über einen so weiten Bereich, dass eine Lichtbogenschweißung reißt, und was hält, ist schwach und korrodiert neben der Raupe: nieten oder schrauben, oder das Teil neu aus 5052 oder 6061 machen.</translation>
    </message>
    <message>
        <source>aluminium 7075, zinc and copper</source>
        <translation>Aluminium 7075, Zink und Kupfer</translation>
    </message>
    <message>
        <source>7075 cracks as it freezes, and a weld that looks sound can crack later from stress corrosion: rivet or bolt it, or make the part anew in 6061.</source>
        <translation>7075 reißt beim Erstarren, und eine Naht, die gesund aussieht, kann später durch Spannungsrisskorrosion reißen: nieten oder schrauben, oder das Teil neu aus 6061 machen.</translation>
    </message>
    <message>
        <source>1008 to 1010</source>
        <translation>1008 bis 1010</translation>
    </message>
    <message>
        <source>low-carbon sheet steel (1008, 1010, DC01)</source>
        <translation>unlegiertes Stahlblech (1008, 1010, DC01)</translation>
    </message>
    <message>
        <source>Thin sheet burns through and buckles before it cracks: short runs, close fit, let it cool.</source>
        <translation>Dünnes Blech brennt durch und beult, bevor es reißt: kurze Raupen, enge Passung, abkühlen lassen.</translation>
    </message>
    <message>
        <source>A36, S235 to S355</source>
        <translation>A36, S235 bis S355</translation>
    </message>
    <message>
        <source>structural steel (A36, S235 to S355)</source>
        <translation>Baustahl (A36, S235 bis S355)</translation>
    </message>
    <message>
        <source>Grind off mill scale where the bead goes; above about 25 mm combined thickness look up preheat in the code that governs the job.</source>
        <translation>Walzzunder abschleifen, wo die Raupe liegt; über etwa 25 mm Gesamtdicke das Vorwärmen im Regelwerk nachsehen, das für die Arbeit gilt.</translation>
    </message>
    <message>
        <source>1020 tube and bar</source>
        <translation>1020 Rohr und Stab</translation>
    </message>
    <message>
        <source>1026 drawn tube</source>
        <translation>1026 gezogenes Rohr</translation>
    </message>
    <message>
        <source>Drawn tube owes part of its strength to cold work; a band beside the bead loses it.</source>
        <translation>Gezogenes Rohr verdankt einen Teil seiner Festigkeit der Kaltverformung; ein Streifen neben der Raupe verliert sie.</translation>
    </message>
    <message>
        <source>4130 chromium-molybdenum tube and sheet</source>
        <translation>4130 Chrom-Molybdän-Rohr und -Blech</translation>
    </message>
    <message>
        <source>It hardens beside the bead: dry filler, no draught, no quenching, and preheat walls above about 3 mm.</source>
        <translation>Es härtet neben der Raupe auf: trockener Zusatz, kein Zug, kein Abschrecken, und Wände über etwa 3 mm vorwärmen.</translation>
    </message>
    <message>
        <source>galvanised 1008</source>
        <translation>verzinktes 1008</translation>
    </message>
    <message>
        <source>galvanised low-carbon sheet</source>
        <translation>verzinktes unlegiertes Blech</translation>
    </message>
    <message>
        <source>Take the zinc off at least 25 mm back on both faces; what stays boils at 907 degC, makes fume and blows holes in the bead. Braze welding with silicon bronze at low current keeps more of it.</source>
        <translation>Zink auf beiden Flächen mindestens 25 mm zurück entfernen; was bleibt, siedet bei 907 degC, macht Rauch und bläst Löcher in die Raupe. Lichtbogenlöten mit Siliziumbronze bei kleinem Strom erhält mehr davon.</translation>
    </message>
    <message>
        <source>A588, S355J2W</source>
        <translation>A588, S355J2W</translation>
    </message>
    <message>
        <source>weathering steel</source>
        <translation>wetterfester Stahl</translation>
    </message>
    <message>
        <source>Bare parts need a weathering filler in the last runs so that the bead rusts to the same colour.</source>
        <translation>Blanke Teile brauchen in den letzten Raupen einen wetterfesten Zusatz, damit die Naht zur gleichen Farbe rostet.</translation>
    </message>
    <message>
        <source>stainless 304</source>
        <translation>Edelstahl 304</translation>
    </message>
    <message>
        <source>Holds heat and moves a lot: tack close, keep the part below 150 degC between runs, shield the root.</source>
        <translation>Hält die Wärme und verzieht sich stark: dicht heften, das Teil zwischen den Raupen unter 150 degC halten, Wurzel schützen.</translation>
    </message>
    <message>
        <source>304L</source>
        <translation>304L</translation>
    </message>
    <message>
        <source>stainless 304L, low carbon</source>
        <translation>Edelstahl 304L, kohlenstoffarm</translation>
    </message>
    <message>
        <source>stainless 316, molybdenum</source>
        <translation>Edelstahl 316, Molybdän</translation>
    </message>
    <message>
        <source>316L</source>
        <translation>316L</translation>
    </message>
    <message>
        <source>stainless 316L, molybdenum, low carbon</source>
        <translation>Edelstahl 316L, Molybdän, kohlenstoffarm</translation>
    </message>
    <message>
        <source>stainless 409, exhaust sheet</source>
        <translation>Edelstahl 409, Auspuffblech</translation>
    </message>
    <message>
        <source>Grain grows where it stays hot: least heat that fuses, below 150 degC between runs.</source>
        <translation>Das Korn wächst, wo es heiß bleibt: geringste Wärme, die bindet, unter 150 degC zwischen den Raupen.</translation>
    </message>
    <message>
        <source>stainless 430</source>
        <translation>Edelstahl 430</translation>
    </message>
    <message>
        <source>The zone beside the bead stays brittle as welded: least heat that fuses, and no use where it must bend or take shock.</source>
        <translation>Die Zone neben der Raupe bleibt nach dem Schweißen spröde: geringste Wärme, die bindet, und kein Einsatz, wo es sich biegen oder Schläge aushalten muss.</translation>
    </message>
    <message>
        <source>C12200</source>
        <translation>C12200</translation>
    </message>
    <message>
        <source>It drinks heat: preheat anything above about 3 mm. Tough-pitch copper (C11000) turns brittle when welded; use the deoxidised grade.</source>
        <translation>Es schluckt Wärme: alles über etwa 3 mm vorwärmen. Sauerstoffhaltiges Kupfer (C11000) wird beim Schweißen spröde; die desoxidierte Sorte nehmen.</translation>
    </message>
    <message>
        <source>C65500</source>
        <translation>C65500</translation>
    </message>
    <message>
        <source>Hot-short between about 800 and 950 degC: small pool, loose clamps, let it cool below 65 to 100 degC between runs.</source>
        <translation>Warmbrüchig zwischen etwa 800 und 950 degC: kleines Bad, lose spannen, zwischen den Raupen unter 65 bis 100 degC abkühlen lassen.</translation>
    </message>
    <message>
        <source>titanium grade 2, commercially pure</source>
        <translation>Titan Grade 2, Reintitan</translation>
    </message>
    <message>
        <source>Air spoils it while it is hot: argon on face, root and trailing bead until below 425 degC. Silver or light straw is sound; blue, grey or white is scrap.</source>
        <translation>Luft verdirbt es, solange es heiß ist: Argon auf Oberseite, Wurzel und die Raupe hinter dem Brenner bis unter 425 degC. Silbern oder hell strohgelb ist gesund; blau, grau oder weiß ist Ausschuss.</translation>
    </message>
    <message>
        <source>AZ31B</source>
        <translation>AZ31B</translation>
    </message>
    <message>
        <source>magnesium AZ31B sheet</source>
        <translation>Magnesiumblech AZ31B</translation>
    </message>
    <message>
        <source>Chips and dust burn and water feeds the fire: keep a dry powder or sand for metal fires at hand. Relieve the stress of a finished weld.</source>
        <translation>Späne und Staub brennen, und Wasser nährt das Feuer: trockenes Metallbrandpulver oder Sand griffbereit halten. Fertige Naht spannungsarm glühen.</translation>
    </message>
    <message>
        <source>MIG schedules</source>
        <translation>MIG/MAG-Schweißtabellen</translation>
    </message>
    <message>
        <source>One line of a MIG or MAG schedule, seam, plug or arc spot. Rows in use pooled carry the advice; rows in use shown are kept for reading, and their note says why.</source>
        <translation>Eine Zeile einer MIG- oder MAG-Schweißtabelle, Naht, Lochnaht oder Lichtbogenpunkt. Zeilen mit Verwendung pooled tragen den Rat; Zeilen mit Verwendung shown stehen zum Nachlesen da, und ihre Anmerkung sagt, warum.</translation>
    </message>
    <message>
        <source>Plug weld holes</source>
        <translation>Löcher für Lochnähte</translation>
    </message>
    <message>
        <source>Hole to drill in the top sheet for a plug weld.</source>
        <translation>Das Loch, das für eine Lochnaht ins obere Blech zu bohren ist.</translation>
    </message>
    <message>
        <source>sheet repair practice</source>
        <translation>Praxis der Blechreparatur</translation>
    </message>
    <message>
        <source>printed for carbon steel sheet; taken over</source>
        <translation>gedruckt für Blech aus unlegiertem Stahl; übernommen</translation>
    </message>
    <message>
        <source>2.5 on 2.5 mm</source>
        <translation>2,5 auf 2,5 mm</translation>
    </message>
    <message>
        <source>3.2 on 3.2 mm</source>
        <translation>3,2 auf 3,2 mm</translation>
    </message>
    <message>
        <source>6.4 on 12.5 mm</source>
        <translation>6,4 auf 12,5 mm</translation>
    </message>
    <message>
        <source>thickness plus 8 mm at least; at most that plus 3 mm, or 2.25 times the weld</source>
        <translation>mindestens Dicke plus 8 mm; höchstens das plus 3 mm oder die 2,25-fache Nahtdicke</translation>
    </message>
    <message>
        <source>Plug weld rules</source>
        <translation>Regeln für Lochnähte</translation>
    </message>
    <message>
        <source>Single figures that plug welds are laid out by.</source>
        <translation>Einzelwerte, nach denen Lochnähte ausgelegt werden.</translation>
    </message>
    <message>
        <source>hole diameters between centres</source>
        <translation>Lochdurchmesser von Mitte zu Mitte</translation>
    </message>
    <message>
        <source>structural rule; kept for sheet as well</source>
        <translation>Stahlbauregel; auch für Blech beibehalten</translation>
    </message>
    <message>
        <source>mm above the thickness</source>
        <translation>mm über der Dicke</translation>
    </message>
    <message>
        <source>least hole for a structural plug</source>
        <translation>kleinstes Loch für eine tragende Lochnaht</translation>
    </message>
    <message>
        <source>times the weld thickness</source>
        <translation>mal Nahtdicke</translation>
    </message>
    <message>
        <source>or the least hole plus 3 mm, whichever is more</source>
        <translation>oder das kleinste Loch plus 3 mm, je nachdem, was größer ist</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>filled to full depth up to this thickness</source>
        <translation>bis zu dieser Dicke auf volle Tiefe gefüllt</translation>
    </message>
    <message>
        <source>top sheet that an arc spot can go through</source>
        <translation>oberes Blech, durch das ein Lichtbogenpunkt geht</translation>
    </message>
    <message>
        <source>MPa</source>
        <translation>MPa</translation>
    </message>
    <message>
        <source>no plug welds in quenched and tempered steel of higher yield</source>
        <translation>keine Lochnähte in vergütetem Stahl mit höherer Streckgrenze</translation>
    </message>
    <message>
        <source>times the seam current</source>
        <translation>mal Nahtstrom</translation>
    </message>
    <message>
        <source>the plug has to bite into the lower sheet before it fills</source>
        <translation>die Lochnaht muss ins untere Blech einbrennen, bevor sie füllt</translation>
    </message>
    <message>
        <source>Position factors</source>
        <translation>Positionsfaktoren</translation>
    </message>
    <message>
        <source>What a change of position does to the current, against flat. Either a factor or a difference in amperes.</source>
        <translation>Was eine andere Position am Strom ändert, gegenüber Wannenlage. Entweder ein Faktor oder ein Unterschied in Ampere.</translation>
    </message>
    <message>
        <source>overhead against flat; keep the pool small</source>
        <translation>Überkopf gegen Wannenlage; Bad klein halten</translation>
    </message>
    <message>
        <source>fillets printed in PB are the base</source>
        <translation>in PB gedruckte Kehlnähte sind die Basis</translation>
    </message>
    <message>
        <source>the pool sags towards the lower plate</source>
        <translation>das Bad sackt zum unteren Blech hin</translation>
    </message>
    <message>
        <source>as overhead, a little less strict</source>
        <translation>wie Überkopf, etwas weniger streng</translation>
    </message>
    <message>
        <source>small pool, or it drips</source>
        <translation>kleines Bad, sonst tropft es</translation>
    </message>
    <message>
        <source>the pool runs back down the joint</source>
        <translation>das Bad läuft im Stoß zurück</translation>
    </message>
    <message>
        <source>travel downhill is quick; thin sheet only</source>
        <translation>fallend geht es schnell; nur dünnes Blech</translation>
    </message>
    <message>
        <source>pipe uphill: as PF</source>
        <translation>Rohr steigend: wie PF</translation>
    </message>
    <message>
        <source>pipe downhill: as PG</source>
        <translation>Rohr fallend: wie PG</translation>
    </message>
    <message>
        <source>orbital: the worst place rules</source>
        <translation>orbital: die schlechteste Stelle bestimmt</translation>
    </message>
    <message>
        <source>Welding positions</source>
        <translation>Schweißpositionen</translation>
    </message>
    <message>
        <source>One position by its letters in ISO 6947, with the AWS numbers and the words people use. A word that stands with more than one position is asked back.</source>
        <translation>Eine Position mit ihren Buchstaben nach ISO 6947, den AWS-Nummern und den gebräuchlichen Wörtern. Bei einem Wort, das zu mehr als einer Position gehört, wird nachgefragt.</translation>
    </message>
    <message>
        <source>fillet on a level plate</source>
        <translation>Kehlnaht auf liegendem Blech</translation>
    </message>
    <message>
        <source>level seam on an upright face</source>
        <translation>waagerechte Naht an senkrechter Fläche</translation>
    </message>
    <message>
        <source>fillet overhead</source>
        <translation>Kehlnaht Überkopf</translation>
    </message>
    <message>
        <source>overhead</source>
        <translation>Überkopf</translation>
    </message>
    <message>
        <source>upright seam, welded upward</source>
        <translation>senkrechte Naht, steigend geschweißt</translation>
    </message>
    <message>
        <source>upright seam, welded downward</source>
        <translation>senkrechte Naht, fallend geschweißt</translation>
    </message>
    <message>
        <source>level pipe that stays put, welded upward</source>
        <translation>waagerechtes Rohr, fest, steigend geschweißt</translation>
    </message>
    <message>
        <source>level pipe that stays put, welded downward</source>
        <translation>waagerechtes Rohr, fest, fallend geschweißt</translation>
    </message>
    <message>
        <source>level pipe, welded right round</source>
        <translation>waagerechtes Rohr, ringsum geschweißt</translation>
    </message>
    <message>
        <source>pipe at 45 degrees, welded upward</source>
        <translation>Rohr unter 45 Grad, steigend geschweißt</translation>
    </message>
    <message>
        <source>pipe at 45 degrees, welded downward</source>
        <translation>Rohr unter 45 Grad, fallend geschweißt</translation>
    </message>
    <message>
        <source>Preheat and interpass limits</source>
        <translation>Vorwärm- und Zwischenlagengrenzen</translation>
    </message>
    <message>
        <source>What to warm a metal to before the first run and what it may not exceed between runs. An empty temperature means that no such limit is stated. A row holds above its lower thickness, up to and including the upper.</source>
        <translation>Worauf ein Metall vor der ersten Raupe anzuwärmen ist und was es zwischen den Raupen nicht überschreiten darf. Eine leere Temperatur heißt, dass keine solche Grenze angegeben ist. Eine Zeile gilt oberhalb ihrer unteren Dicke bis einschließlich der oberen.</translation>
    </message>
    <message>
        <source>warmth takes the damp off and helps the root start; more than this softens the sheet for nothing</source>
        <translation>Wärme nimmt die Feuchtigkeit weg und hilft der Wurzel beim Start; mehr als das macht das Blech nutzlos weich</translation>
    </message>
    <message>
        <source>warmth takes the damp off and helps the root start; more than this softens the sheet for nothing; above 65 degC alloys rich in magnesium must not be held for long</source>
        <translation>Wärme nimmt die Feuchtigkeit weg und hilft der Wurzel beim Start; mehr als das macht das Blech nutzlos weich; über 65 degC dürfen magnesiumreiche Legierungen nicht lange gehalten werden</translation>
    </message>
    <message>
        <source>every minute of warmth overages the aged temper: short, and cooler between runs</source>
        <translation>jede Minute Wärme überaltert den ausgelagerten Zustand: kurz, und zwischen den Raupen kühler</translation>
    </message>
    <message>
        <source>slow, even warming keeps a casting from cracking; the aged temper suffers above this</source>
        <translation>langsames, gleichmäßiges Anwärmen bewahrt ein Gussteil vor Rissen; darüber leidet der ausgelagerte Zustand</translation>
    </message>
    <message>
        <source>no preheat needed with dry solid wire or rod; warm cold or damp steel until it is dry</source>
        <translation>kein Vorwärmen nötig mit trockenem Massivdraht oder Stab; kalten oder feuchten Stahl anwärmen, bis er trocken ist</translation>
    </message>
    <message>
        <source>thick plate: work out the preheat from the code that governs the job</source>
        <translation>Grobblech: das Vorwärmen nach dem Regelwerk ermitteln, das für die Arbeit gilt</translation>
    </message>
    <message>
        <source>thin tube needs none above 15 degC; keep draughts off and let it cool slowly</source>
        <translation>dünnes Rohr braucht über 15 degC keines; Zug fernhalten und langsam abkühlen lassen</translation>
    </message>
    <message>
        <source>slows the cooling so that the zone beside the bead does not turn hard</source>
        <translation>verlangsamt das Abkühlen, damit die Zone neben der Raupe nicht hart wird</translation>
    </message>
    <message>
        <source>no preheat; heat held between runs costs corrosion resistance and shape</source>
        <translation>kein Vorwärmen; zwischen den Raupen gehaltene Wärme kostet Korrosionsbeständigkeit und Maßhaltigkeit</translation>
    </message>
    <message>
        <source>no preheat; grain grows while it stays hot</source>
        <translation>kein Vorwärmen; das Korn wächst, solange es heiß bleibt</translation>
    </message>
    <message>
        <source>keeps the brittle zone of 430 from cracking; 409 does without</source>
        <translation>bewahrt die spröde Zone von 430 vor Rissen; 409 kommt ohne aus</translation>
    </message>
    <message>
        <source>thin copper can be welded from cold</source>
        <translation>dünnes Kupfer lässt sich kalt schweißen</translation>
    </message>
    <message>
        <source>copper carries the heat off faster than the arc brings it</source>
        <translation>Kupfer führt die Wärme schneller ab, als der Lichtbogen sie bringt</translation>
    </message>
    <message>
        <source>no preheat; hot-short, so let it cool between runs</source>
        <translation>kein Vorwärmen; warmbrüchig, darum zwischen den Raupen abkühlen lassen</translation>
    </message>
    <message>
        <source>no preheat; the hotter it stays the longer it must be kept under argon</source>
        <translation>kein Vorwärmen; je heißer es bleibt, desto länger muss es unter Argon gehalten werden</translation>
    </message>
    <message>
        <source>Process numbers</source>
        <translation>Prozessnummern</translation>
    </message>
    <message>
        <source>One process with its number in ISO 4063 and the letters AWS uses for it.</source>
        <translation>Ein Prozess mit seiner Nummer in ISO 4063 und den Buchstaben, die AWS dafür benutzt.</translation>
    </message>
    <message>
        <source>manual metal arc</source>
        <translation>Lichtbogenhandschweißen</translation>
    </message>
    <message>
        <source>self-shielded tubular cored arc</source>
        <translation>Metall-Lichtbogen mit selbstschützendem Fülldraht</translation>
    </message>
    <message>
        <source>submerged arc</source>
        <translation>Unterpulver</translation>
    </message>
    <message>
        <source>submerged arc, solid wire</source>
        <translation>Unterpulver, Massivdraht</translation>
    </message>
    <message>
        <source>submerged arc, tubular cored</source>
        <translation>Unterpulver, Fülldraht</translation>
    </message>
    <message>
        <source>gas-shielded metal arc, the whole group</source>
        <translation>Metall-Schutzgasschweißen, ganze Gruppe</translation>
    </message>
    <message>
        <source>MIG: inert gas, solid wire</source>
        <translation>MIG: inertes Gas, Massivdraht</translation>
    </message>
    <message>
        <source>MIG, inert gas, flux cored</source>
        <translation>MIG, inertes Gas, schweißpulvergefüllter Draht</translation>
    </message>
    <message>
        <source>MIG, inert gas, metal cored</source>
        <translation>MIG, inertes Gas, metallpulvergefüllter Draht</translation>
    </message>
    <message>
        <source>MAG: active gas, solid wire</source>
        <translation>MAG: aktives Gas, Massivdraht</translation>
    </message>
    <message>
        <source>MAG, active gas, flux cored</source>
        <translation>MAG, aktives Gas, schweißpulvergefüllter Draht</translation>
    </message>
    <message>
        <source>MAG, active gas, metal cored</source>
        <translation>MAG, aktives Gas, metallpulvergefüllter Draht</translation>
    </message>
    <message>
        <source>TIG: inert gas, solid filler</source>
        <translation>WIG: inertes Gas, massiver Zusatz</translation>
    </message>
    <message>
        <source>TIG without filler, inert gas</source>
        <translation>WIG ohne Zusatz, inertes Gas</translation>
    </message>
    <message>
        <source>TIG, tubular cored filler</source>
        <translation>WIG, Fülldraht oder Füllstab</translation>
    </message>
    <message>
        <source>TIG, reducing gas, solid filler</source>
        <translation>WIG, reduzierendes Gas, massiver Zusatz</translation>
    </message>
    <message>
        <source>TIG, reducing gas, tubular cored</source>
        <translation>WIG, reduzierendes Gas, Fülldraht oder Füllstab</translation>
    </message>
    <message>
        <source>TIG, active gas</source>
        <translation>WIG, aktives Gas</translation>
    </message>
    <message>
        <source>plasma arc</source>
        <translation>Plasma</translation>
    </message>
    <message>
        <source>resistance spot</source>
        <translation>Widerstandspunkt</translation>
    </message>
    <message>
        <source>oxy-acetylene</source>
        <translation>Gas, Sauerstoff-Acetylen</translation>
    </message>
    <message>
        <source>friction</source>
        <translation>Reib</translation>
    </message>
    <message>
        <source>friction stir</source>
        <translation>Rührreib</translation>
    </message>
    <message>
        <source>laser beam</source>
        <translation>Laserstrahl</translation>
    </message>
    <message>
        <source>drawn arc stud, ferrule or gas</source>
        <translation>Hubzündungs-Bolzen, Keramikring oder Gas</translation>
    </message>
    <message>
        <source>braze welding</source>
        <translation>Fugenlöten</translation>
    </message>
    <message>
        <source>Rules for repairing sheet</source>
        <translation>Regeln für Blechreparaturen</translation>
    </message>
    <message>
        <source>Single figures that decide between filling holes, letting in a patch and replacing the panel, and that a patch is laid out by.</source>
        <translation>Einzelwerte, die zwischen Löcherfüllen, Einsetzen eines Flickens und Ersetzen des Blechfelds entscheiden und nach denen ein Flicken ausgelegt wird.</translation>
    </message>
    <message>
        <source>What each setting does</source>
        <translation>Was jede Einstellung bewirkt</translation>
    </message>
    <message>
        <source>What a setting of the card does, and what too little and too much of it look like, in our words from common practice.</source>
        <translation>Was eine Einstellung der Karte bewirkt, und wie zu wenig und zu viel davon aussieht, in eigenen Worten aus gängiger Praxis.</translation>
    </message>
    <message>
        <source>Melts the joint: more makes the pool wider and deeper, and faster.</source>
        <translation>Schmilzt den Stoß auf: mehr macht das Bad breiter und tiefer, und schneller.</translation>
    </message>
    <message>
        <source>The pool takes long to form and stays small; the rod balls up on top; the root stays open.</source>
        <translation>Das Bad bildet sich langsam und bleibt klein; der Stab perlt obenauf; die Wurzel bleibt offen.</translation>
    </message>
    <message>
        <source>The pool sags and drops through; undercut at the edges; a wide white band on aluminium, blue or grey stainless.</source>
        <translation>Das Bad sackt und fällt durch; Einbrandkerben an den Rändern; breiter weißer Streifen bei Aluminium, blauer oder grauer Edelstahl.</translation>
    </message>
    <message>
        <source>Burns the wire off and digs into the joint. It follows the wire feed: the two are one knob.</source>
        <translation>Schmilzt den Draht ab und gräbt sich in den Stoß. Er folgt dem Drahtvorschub: beide sind ein Knopf.</translation>
    </message>
    <message>
        <source>The bead sits on top, tall and narrow, and lets go of the sheet.</source>
        <translation>Die Raupe liegt obenauf, hoch und schmal, und löst sich vom Blech.</translation>
    </message>
    <message>
        <source>The hole opens before the bead is laid; undercut; heavy drip behind.</source>
        <translation>Das Loch öffnet sich, bevor die Raupe liegt; Einbrandkerbe; starker Durchhang hinten.</translation>
    </message>
    <message>
        <source>How far a pressed pedal can go: the welding current plus room to start a cold edge.</source>
        <translation>Wie weit ein durchgetretener Fußregler reicht: der Schweißstrom plus Reserve, um an einer kalten Kante zu beginnen.</translation>
    </message>
    <message>
        <source>The edge does not wet when the part is cold, and thick ends stay cold.</source>
        <translation>Die Kante benetzt nicht, wenn das Teil kalt ist, und dicke Enden bleiben kalt.</translation>
    </message>
    <message>
        <source>The pedal grows coarse: a small move of the foot is a big change of heat.</source>
        <translation>Der Fußregler wird grob: eine kleine Fußbewegung ändert die Wärme stark.</translation>
    </message>
    <message>
        <source>Which way the current runs: AC breaks up the oxide on aluminium and magnesium; electrode negative puts the heat into the work.</source>
        <translation>Wie herum der Strom fließt: AC bricht das Oxid auf Aluminium und Magnesium auf; Elektrode negativ bringt die Wärme ins Werkstück.</translation>
    </message>
    <message>
        <source>On electrode negative, aluminium keeps its skin: the pool is grey and will not flow together.</source>
        <translation>Bei Elektrode negativ behält Aluminium seine Haut: das Bad ist grau und fließt nicht zusammen.</translation>
    </message>
    <message>
        <source>On electrode positive the tungsten melts.</source>
        <translation>Bei Elektrode positiv schmilzt die Wolframelektrode.</translation>
    </message>
    <message>
        <source>Which way the current runs: solid wire wants the gun positive, gasless cored wire mostly negative (its spool says so).</source>
        <translation>Wie herum der Strom fließt: Massivdraht will den Brenner am Pluspol, selbstschützender Fülldraht meist am Minuspol (auf der Spule steht es).</translation>
    </message>
    <message>
        <source>Wrong way round: spatter, a rough arc, little fusion.</source>
        <translation>Verkehrt herum: Spritzer, rauer Lichtbogen, wenig Einbrand.</translation>
    </message>
    <message>
        <source>There is no more or less here, only right or wrong.</source>
        <translation>Hier gibt es kein Mehr oder Weniger, nur richtig oder falsch.</translation>
    </message>
    <message>
        <source>How often the AC wave turns round: higher draws the arc together to a narrow, stiff cone.</source>
        <translation>Wie oft die AC-Welle umschlägt: höher zieht den Lichtbogen zu einem schmalen, steifen Kegel zusammen.</translation>
    </message>
    <message>
        <source>A soft wide arc that wanders off the edge and warms more sheet than it melts.</source>
        <translation>Ein weicher, breiter Lichtbogen, der von der Kante wandert und mehr Blech erwärmt, als er schmilzt.</translation>
    </message>
    <message>
        <source>A harsh whine; a bead so narrow that it bridges a gap badly.</source>
        <translation>Ein scharfes Pfeifen; eine Raupe, so schmal, dass sie einen Spalt schlecht überbrückt.</translation>
    </message>
    <message>
        <source>The share of the AC wave that heats the work; the rest lifts the oxide and heats the tungsten.</source>
        <translation>Der Anteil der AC-Welle, der das Werkstück erwärmt; der Rest löst das Oxid und erwärmt die Wolframelektrode.</translation>
    </message>
    <message>
        <source>The tungsten swells to a big ball and spits; a wide frosty band beside the bead.</source>
        <translation>Die Wolframelektrode schwillt zu einer großen Kugel an und spuckt; ein breiter matter Streifen neben der Raupe.</translation>
    </message>
    <message>
        <source>Black specks and a dull, wrinkled pool that does not wet: the oxide stays.</source>
        <translation>Schwarze Punkte und ein stumpfes, runzliges Bad, das nicht benetzt: das Oxid bleibt.</translation>
    </message>
    <message>
        <source>Beats between a high and a low current: the pool freezes a little between beats.</source>
        <translation>Wechselt im Takt zwischen hohem und niedrigem Strom: zwischen den Impulsen erstarrt das Bad ein wenig.</translation>
    </message>
    <message>
        <source>Without it, thin sheet gets hotter and hotter along the run.</source>
        <translation>Ohne ihn wird dünnes Blech entlang der Naht immer heißer.</translation>
    </message>
    <message>
        <source>Beats too hard or too slow leave a chain of separate spots.</source>
        <translation>Zu harte oder zu langsame Impulse hinterlassen eine Kette einzelner Punkte.</translation>
    </message>
    <message>
        <source>What is mixed into the tungsten: it eases starting and lets the tip carry more current.</source>
        <translation>Was dem Wolfram beigemischt ist: es erleichtert das Zünden und lässt die Spitze mehr Strom tragen.</translation>
    </message>
    <message>
        <source>A type that does not suit the current type starts badly and the tip splits.</source>
        <translation>Eine Sorte, die nicht zur Stromart passt, zündet schlecht, und die Spitze reißt auf.</translation>
    </message>
    <message>
        <source>There is no more or less here; keep thoriated dust out of lungs, or choose another type.</source>
        <translation>Hier gibt es kein Mehr oder Weniger; thoriumhaltigen Staub von der Lunge fernhalten oder eine andere Sorte wählen.</translation>
    </message>
    <message>
        <source>How much current the electrode stands: thick ones stay cool, thin ones start and point better.</source>
        <translation>Wie viel Strom die Elektrode aushält: dicke bleiben kühl, dünne zünden und zielen besser.</translation>
    </message>
    <message>
        <source>The tip melts, balls and drops specks of tungsten into the weld.</source>
        <translation>Die Spitze schmilzt, wird zur Kugel und lässt Wolframteilchen in die Schweißung fallen.</translation>
    </message>
    <message>
        <source>The arc wanders about a cold blunt tip and is hard to start at low current.</source>
        <translation>Der Lichtbogen wandert um eine kalte, stumpfe Spitze und zündet bei kleinem Strom schwer.</translation>
    </message>
    <message>
        <source>How the end is ground: the cone aims the arc; a small flat keeps the point from breaking off.</source>
        <translation>Wie das Ende geschliffen ist: der Kegel richtet den Lichtbogen; eine kleine Abflachung bewahrt die Spitze vor dem Abbrechen.</translation>
    </message>
    <message>
        <source>A needle point burns off into the pool.</source>
        <translation>Eine Nadelspitze brennt ins Bad ab.</translation>
    </message>
    <message>
        <source>A blunt or crossways ground tip lets the arc wander.</source>
        <translation>Eine stumpfe oder quer geschliffene Spitze lässt den Lichtbogen wandern.</translation>
    </message>
    <message>
        <source>What the bead is made of: chosen for the metal pair, against cracking and for strength or colour.</source>
        <translation>Woraus die Raupe besteht: gewählt für die Metallpaarung, gegen Risse und nach Festigkeit oder Farbe.</translation>
    </message>
    <message>
        <source>Without filler, or with the wrong one, 6xxx aluminium and some stainless crack down the middle.</source>
        <translation>Ohne Schweißzusatz oder mit dem falschen reißen 6xxx-Aluminium und mancher nichtrostende Stahl in der Mitte.</translation>
    </message>
    <message>
        <source>A far stronger filler than the sheet moves the crack beside the bead.</source>
        <translation>Ein viel festerer Schweißzusatz als das Blech verlegt den Riss neben die Raupe.</translation>
    </message>
    <message>
        <source>How much metal each dab adds, and how much heat it takes out of the pool.</source>
        <translation>Wie viel Metall jedes Eintupfen bringt und wie viel Wärme es dem Bad entzieht.</translation>
    </message>
    <message>
        <source>Endless dabbing; the rod melts before it reaches the pool.</source>
        <translation>Endloses Eintupfen; der Schweißstab schmilzt, bevor er das Bad erreicht.</translation>
    </message>
    <message>
        <source>Each dab chills the pool; the rod sticks and knocks the tungsten.</source>
        <translation>Jedes Eintupfen kühlt das Bad ab; der Stab klebt fest und stößt an die Wolframelektrode.</translation>
    </message>
    <message>
        <source>What the bead is made of; the spool&apos;s class must suit the metal.</source>
        <translation>Woraus die Raupe besteht; die Klasse auf der Spule muss zum Metall passen.</translation>
    </message>
    <message>
        <source>A wire without deoxidisers on rusty steel leaves pores.</source>
        <translation>Ein Draht ohne Desoxidationsmittel hinterlässt auf rostigem Stahl Poren.</translation>
    </message>
    <message>
        <source>A wire for another metal cracks or does not hold.</source>
        <translation>Ein Draht für ein anderes Metall reißt oder hält nicht.</translation>
    </message>
    <message>
        <source>How much metal comes at a current: thin wires suit thin sheet and low current.</source>
        <translation>Wie viel Metall bei einem Strom kommt: dünne Drähte passen zu dünnem Blech und kleinem Strom.</translation>
    </message>
    <message>
        <source>The feed runs at its end and the arc is harsh.</source>
        <translation>Der Vorschub läuft am Anschlag, und der Lichtbogen ist hart.</translation>
    </message>
    <message>
        <source>The arc stutters and the sheet burns through before the wire melts.</source>
        <translation>Der Lichtbogen stottert, und das Blech brennt durch, bevor der Draht schmilzt.</translation>
    </message>
    <message>
        <source>How fast wire arrives, and with it the current.</source>
        <translation>Wie schnell Draht nachkommt, und damit der Strom.</translation>
    </message>
    <message>
        <source>The arc hisses, burns back to the tip, and the bead is thin.</source>
        <translation>Der Lichtbogen zischt, brennt zur Stromdüse zurück, und die Raupe ist dünn.</translation>
    </message>
    <message>
        <source>The wire stubs and pushes the gun; a tall bead that sits on top.</source>
        <translation>Der Draht stößt auf und drückt den Brenner weg; eine hohe Raupe, die nur aufliegt.</translation>
    </message>
    <message>
        <source>Arc length: more widens and flattens the bead.</source>
        <translation>Lichtbogenlänge: mehr macht die Raupe breiter und flacher.</translation>
    </message>
    <message>
        <source>The wire stubs and pops; a tall narrow bead.</source>
        <translation>Der Draht stößt auf und knallt; eine hohe, schmale Raupe.</translation>
    </message>
    <message>
        <source>A long hissing arc, spatter, pores, undercut.</source>
        <translation>Ein langer, zischender Lichtbogen, Spritzer, Poren, Einbrandkerben.</translation>
    </message>
    <message>
        <source>How the metal crosses the arc: in short circuits, in big drops, as a fine spray, or in pulses.</source>
        <translation>Wie das Metall durch den Lichtbogen geht: in Kurzschlüssen, in großen Tropfen, als feiner Sprühstrahl oder in Impulsen.</translation>
    </message>
    <message>
        <source>Short circuits on thick metal: the bead does not fuse.</source>
        <translation>Kurzschlüsse an dickem Metall: die Raupe bindet nicht.</translation>
    </message>
    <message>
        <source>Spray on thin sheet or uphill: the pool falls out.</source>
        <translation>Sprühlichtbogen an dünnem Blech oder steigend: das Bad läuft heraus.</translation>
    </message>
    <message>
        <source>Keeps air off the pool, the wire and the hot bead.</source>
        <translation>Hält die Luft von Bad, Draht und heißer Raupe fern.</translation>
    </message>
    <message>
        <source>Without the right gas: pores, soot, brittle or grey metal.</source>
        <translation>Ohne das richtige Gas: Poren, Ruß, sprödes oder graues Metall.</translation>
    </message>
    <message>
        <source>Helium or more active gas heats more than the sheet wants; active gas ruins a tungsten.</source>
        <translation>Helium oder mehr Aktivgas erwärmt mehr, als das Blech will; Aktivgas zerstört eine Wolframelektrode.</translation>
    </message>
    <message>
        <source>How much gas covers the pool.</source>
        <translation>Wie viel Gas das Bad abdeckt.</translation>
    </message>
    <message>
        <source>Pores, a grey bead, a blue or black tungsten.</source>
        <translation>Poren, eine graue Raupe, eine blaue oder schwarze Wolframelektrode.</translation>
    </message>
    <message>
        <source>The stream turns rough and pulls air in: pores again, and an unsteady arc.</source>
        <translation>Der Strom wird turbulent und zieht Luft ein: wieder Poren und ein unruhiger Lichtbogen.</translation>
    </message>
    <message>
        <source>A screen in the torch that makes the stream smooth, so that the tungsten may stand out further.</source>
        <translation>Ein Sieb im Brenner, das den Gasstrom beruhigt, damit die Wolframelektrode weiter herausstehen darf.</translation>
    </message>
    <message>
        <source>Without it a long stick-out loses its cover.</source>
        <translation>Ohne sie verliert ein langer Überstand seinen Gasschutz.</translation>
    </message>
    <message>
        <source>Nothing is lost but its price; a clogged screen is worse than none.</source>
        <translation>Nichts geht verloren außer dem Preis; ein verstopftes Sieb ist schlechter als keins.</translation>
    </message>
    <message>
        <source>How wide the gas covers.</source>
        <translation>Wie breit das Gas abdeckt.</translation>
    </message>
    <message>
        <source>The hot bead beside the cup turns grey; the tungsten blackens.</source>
        <translation>Die heiße Raupe neben der Gasdüse wird grau; die Wolframelektrode wird schwarz.</translation>
    </message>
    <message>
        <source>The torch does not get into the corner, and the same flow covers thinly.</source>
        <translation>Der Brenner kommt nicht in die Ecke, und derselbe Durchfluss deckt nur dünn ab.</translation>
    </message>
    <message>
        <source>How far the tungsten stands out of the cup: far enough to see and to reach the root.</source>
        <translation>Wie weit die Wolframelektrode aus der Gasdüse steht: weit genug, um zu sehen und die Wurzel zu erreichen.</translation>
    </message>
    <message>
        <source>The cup hides the pool and touches the sides.</source>
        <translation>Die Gasdüse verdeckt das Bad und berührt die Flanken.</translation>
    </message>
    <message>
        <source>The gas no longer reaches the pool: pores and a blue tungsten.</source>
        <translation>Das Gas erreicht das Bad nicht mehr: Poren und eine blaue Wolframelektrode.</translation>
    </message>
    <message>
        <source>How far the gun&apos;s contact tip is from the work; the wire between them warms.</source>
        <translation>Wie weit die Stromdüse des Brenners vom Werkstück entfernt ist; der Draht dazwischen erwärmt sich.</translation>
    </message>
    <message>
        <source>Spatter fills the nozzle; the wire burns back.</source>
        <translation>Spritzer setzen die Gasdüse zu; der Draht brennt zurück.</translation>
    </message>
    <message>
        <source>The current falls, the cover thins: cold beads and pores.</source>
        <translation>Der Strom fällt, der Gasschutz wird dünn: kalte Raupen und Poren.</translation>
    </message>
    <message>
        <source>Gas before the arc clears the air from hose and cup.</source>
        <translation>Gas vor dem Lichtbogen spült die Luft aus Schlauch und Gasdüse.</translation>
    </message>
    <message>
        <source>The start is porous and the tip blackens.</source>
        <translation>Der Anfang ist porig, und die Spitze wird schwarz.</translation>
    </message>
    <message>
        <source>Gas and time are lost.</source>
        <translation>Gas und Zeit gehen verloren.</translation>
    </message>
    <message>
        <source>Gas after the arc covers the hot tungsten and the end of the bead.</source>
        <translation>Gas nach dem Lichtbogen deckt die heiße Wolframelektrode und das Raupenende ab.</translation>
    </message>
    <message>
        <source>A blue or black tungsten, a porous or cracked end.</source>
        <translation>Eine blaue oder schwarze Wolframelektrode, ein poriges oder rissiges Ende.</translation>
    </message>
    <message>
        <source>Gas is lost.</source>
        <translation>Gas geht verloren.</translation>
    </message>
    <message>
        <source>What stands behind the joint: a copper bar draws heat and holds the pool, gas keeps the back bright.</source>
        <translation>Was hinter dem Stoß steht: eine Kupferschiene zieht Wärme ab und hält das Bad, Gas hält die Rückseite blank.</translation>
    </message>
    <message>
        <source>Thin sheet drops through; the back of stainless burns to crust.</source>
        <translation>Dünnes Blech fällt durch; die Rückseite von nichtrostendem Stahl verbrennt zu Kruste.</translation>
    </message>
    <message>
        <source>A bar pressed on too hard or too wide leaves the root cold.</source>
        <translation>Eine zu fest angedrückte oder zu breite Schiene lässt die Wurzel kalt.</translation>
    </message>
    <message>
        <source>The hole in the top sheet, through which the plug fuses to the sheet below.</source>
        <translation>Das Loch im oberen Blech, durch das die Lochnaht mit dem unteren Blech verschmilzt.</translation>
    </message>
    <message>
        <source>The plug fills the hole without holding the sheet below.</source>
        <translation>Das Schweißgut füllt das Loch, ohne das untere Blech zu fassen.</translation>
    </message>
    <message>
        <source>More to fill, more heat, more warping.</source>
        <translation>Mehr zu füllen, mehr Wärme, mehr Verzug.</translation>
    </message>
    <message>
        <source>How long the arc stays in one hole.</source>
        <translation>Wie lange der Lichtbogen in einem Loch bleibt.</translation>
    </message>
    <message>
        <source>A lump that sits on top.</source>
        <translation>Ein Klumpen, der nur aufliegt.</translation>
    </message>
    <message>
        <source>A hole in the sheet behind.</source>
        <translation>Ein Loch im Blech dahinter.</translation>
    </message>
    <message>
        <source>Follows from the length of the arc: hold it short.</source>
        <translation>Folgt aus der Lichtbogenlänge: kurz halten.</translation>
    </message>
    <message>
        <source>The tungsten dips into the pool.</source>
        <translation>Die Wolframelektrode taucht ins Bad.</translation>
    </message>
    <message>
        <source>The arc spreads and wanders, and the heat goes into the air.</source>
        <translation>Der Lichtbogen wird breit und wandert, und die Wärme geht in die Luft.</translation>
    </message>
    <message>
        <source>What is across the arc itself; the machine&apos;s own display shows a little more.</source>
        <translation>Was am Lichtbogen selbst anliegt; die Anzeige des Geräts zeigt etwas mehr.</translation>
    </message>
    <message>
        <source>As with the voltage: stubbing.</source>
        <translation>Wie bei der Spannung: der Draht stößt auf.</translation>
    </message>
    <message>
        <source>As with the voltage: a long arc.</source>
        <translation>Wie bei der Spannung: ein langer Lichtbogen.</translation>
    </message>
    <message>
        <source>How long each spot is heated.</source>
        <translation>Wie lange jede Stelle erwärmt wird.</translation>
    </message>
    <message>
        <source>The pool grows, sags and drops through; the part warps.</source>
        <translation>Das Bad wächst, sackt durch und fällt durch; das Teil verzieht sich.</translation>
    </message>
    <message>
        <source>A thin ropy bead, undercut, a root that is not melted.</source>
        <translation>Eine dünne, wulstige Raupe, Einbrandkerben, eine nicht aufgeschmolzene Wurzel.</translation>
    </message>
    <message>
        <source>Energy for each length of weld: what softens, warps and cools slowly.</source>
        <translation>Energie je Nahtlänge: was erweicht, sich verzieht und langsam abkühlt.</translation>
    </message>
    <message>
        <source>Cools fast: hardenable steel may crack beside the bead.</source>
        <translation>Kühlt schnell ab: härtbarer Stahl kann neben der Raupe reißen.</translation>
    </message>
    <message>
        <source>More warping, a wider soft or coarse zone, stainless that loses its resistance.</source>
        <translation>Mehr Verzug, eine breitere weiche oder grobkörnige Zone, nichtrostender Stahl, der seine Beständigkeit verliert.</translation>
    </message>
    <message>
        <source>How many beads fill the joint.</source>
        <translation>Wie viele Raupen den Stoß füllen.</translation>
    </message>
    <message>
        <source>One bead too large for its heat: cold sides, sagging.</source>
        <translation>Eine Raupe, zu groß für ihre Wärme: kalte Flanken, Durchsacken.</translation>
    </message>
    <message>
        <source>Each pass adds heat and pull.</source>
        <translation>Jede Lage bringt mehr Wärme und Zug.</translation>
    </message>
    <message>
        <source>How dark the helmet&apos;s glass is; the floor is a rule, the start is for comfort.</source>
        <translation>Wie dunkel das Glas des Helms ist; die Untergrenze ist Vorschrift, der Startwert dient dem Komfort.</translation>
    </message>
    <message>
        <source>Burnt eyes, hours later. Never below the floor.</source>
        <translation>Verblitzte Augen, Stunden später. Niemals unter die Untergrenze.</translation>
    </message>
    <message>
        <source>The pool cannot be seen, and the bead goes astray.</source>
        <translation>Das Bad ist nicht zu sehen, und die Raupe verläuft.</translation>
    </message>
    <message>
        <source>Warms the joint before the arc, so that thick or hardenable metal does not chill it.</source>
        <translation>Erwärmt den Stoß vor dem Lichtbogen, damit dickes oder härtbares Metall ihn nicht abschreckt.</translation>
    </message>
    <message>
        <source>Cold starts on thick aluminium; cracks beside the bead in hardenable steel.</source>
        <translation>Kalte Ansätze an dickem Aluminium; Risse neben der Raupe in härtbarem Stahl.</translation>
    </message>
    <message>
        <source>Tempered and work-hardened metal softens; thin sheet burns through.</source>
        <translation>Ausgehärtetes und kaltverfestigtes Metall erweicht; dünnes Blech brennt durch.</translation>
    </message>
    <message>
        <source>How hot the part may be when the next bead begins.</source>
        <translation>Wie heiß das Teil sein darf, wenn die nächste Raupe beginnt.</translation>
    </message>
    <message>
        <source>Below it there is nothing to fear but time.</source>
        <translation>Darunter ist nichts zu befürchten außer Zeitverlust.</translation>
    </message>
    <message>
        <source>Softening, coarse grain, burn-through; stainless loses its resistance.</source>
        <translation>Erweichen, grobes Korn, Durchbrand; nichtrostender Stahl verliert seine Beständigkeit.</translation>
    </message>
    <message>
        <source>Small beads that hold the fit while the seam pulls.</source>
        <translation>Kleine Raupen, die die Passung halten, während die Naht zieht.</translation>
    </message>
    <message>
        <source>The gap opens or closes ahead of the arc and the panel walks.</source>
        <translation>Der Spalt öffnet oder schließt sich vor dem Lichtbogen, und das Blech wandert.</translation>
    </message>
    <message>
        <source>Many lumps to melt in again, each a place for a fault.</source>
        <translation>Viele Klumpen, die wieder einzuschmelzen sind, jeder eine Stelle für einen Fehler.</translation>
    </message>
    <message>
        <source>Torch and shielding rules</source>
        <translation>Regeln zu Brenner und Gasschutz</translation>
    </message>
    <message>
        <source>Single figures for the torch and its gas. A row without a figure says that a thing is wanted, not how much of it.</source>
        <translation>Einzelne Werte für den Brenner und sein Gas. Eine Zeile ohne Wert sagt, dass etwas nötig ist, nicht wie viel davon.</translation>
    </message>
    <message>
        <source>What a weld pulls</source>
        <translation>Wie eine Schweißung zieht</translation>
    </message>
    <message>
        <source>First estimates of how much a weld shortens what it joins, unrestrained, in carbon steel. Aluminium and stainless steel pull more.</source>
        <translation>Erste Schätzungen, wie stark eine Schweißung das Verbundene verkürzt, ohne Einspannung, in unlegiertem Stahl. Aluminium und nichtrostender Stahl ziehen mehr.</translation>
    </message>
    <message>
        <source>Power source and supply</source>
        <translation>Stromquelle und Netz</translation>
    </message>
    <message>
        <source>What a power source takes from the mains beyond what it gives the arc, the share of the supply current that conductors are sized for at a duty cycle, and the open-circuit limits in places with more risk of shock.</source>
        <translation>Was eine Stromquelle dem Netz über die Leistung am Lichtbogen hinaus entnimmt, der Anteil des Netzstroms, für den Leiter bei einer Einschaltdauer bemessen werden, und die Grenzen der Leerlaufspannung an Orten mit erhöhter elektrischer Gefährdung.</translation>
    </message>
    <message>
        <source>Tack spacing and length</source>
        <translation>Abstand und Länge der Heftstellen</translation>
    </message>
    <message>
        <source>How far apart tacks go along a seam in sheet and plate, and how long each is. A row holds above its lower thickness, up to and including the upper.</source>
        <translation>Wie weit Heftstellen entlang einer Naht in Blech und Grobblech auseinanderliegen und wie lang jede ist. Eine Zeile gilt über ihrer unteren Dicke bis einschließlich der oberen.</translation>
    </message>
    <message>
        <source>Thermal efficiency</source>
        <translation>Thermischer Wirkungsgrad</translation>
    </message>
    <message>
        <source>Share of the arc&apos;s power that reaches the work, as one document gives it for one process and condition. Rows in use heat carry the heat picture; rows in use shown are kept for reading. The factors of EN 1011-1 belong to its own formulas only.</source>
        <translation>Anteil der Lichtbogenleistung, der das Werkstück erreicht, wie ein Dokument ihn für ein Verfahren und eine Bedingung nennt. Zeilen mit Verwendung heat tragen das Wärmebild; Zeilen mit Verwendung shown bleiben zum Nachlesen. Die Faktoren der EN 1011-1 gehören nur zu deren eigenen Formeln.</translation>
    </message>
    <message>
        <source>TIG schedules</source>
        <translation>WIG-Schweißtabellen</translation>
    </message>
    <message>
        <source>One printed, quoted or recalled line of a TIG schedule: what current a document gives for one metal, thickness and joint. Rows in use pooled carry the advice; rows in use shown are kept for reading, and their note says why.</source>
        <translation>Eine gedruckte, zitierte oder aus dem Gedächtnis notierte Zeile einer WIG-Schweißtabelle: welchen Strom ein Dokument für Metall, Dicke und Stoß nennt. Zeilen mit Verwendung pooled tragen die Empfehlung; Zeilen mit Verwendung shown bleiben zum Nachlesen, und ihre Anmerkung sagt warum.</translation>
    </message>
    <message>
        <source>AWS tungsten classes</source>
        <translation>AWS-Klassen der Wolframelektroden</translation>
    </message>
    <message>
        <source>One AWS A5.12 class with the colour of its 1998 edition, which is not everywhere that of ISO 6848.</source>
        <translation>Eine Klasse nach AWS A5.12 mit der Farbe ihrer Ausgabe 1998, die nicht überall die der ISO 6848 ist.</translation>
    </message>
    <message>
        <source>green</source>
        <translation>grün</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>gelb</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rot</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>braun</translation>
    </message>
    <message>
        <source>black</source>
        <translation>schwarz</translation>
    </message>
    <message>
        <source>gold</source>
        <translation>gold</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>blau</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>orange</translation>
    </message>
    <message>
        <source>Tungsten current ranges</source>
        <translation>Strombereiche der Wolframelektroden</translation>
    </message>
    <message>
        <source>The current one electrode diameter carries in one document. Printed square-wave rows and recalled rows of two standards stand side by side; they disagree, and the notes of the printed rows say by how much.</source>
        <translation>Der Strom, den ein Elektrodendurchmesser in einem Dokument trägt. Gedruckte Rechteckwellen-Zeilen und aus dem Gedächtnis notierte Zeilen zweier Normen stehen nebeneinander; sie widersprechen sich, und die Anmerkungen der gedruckten Zeilen sagen, um wie viel.</translation>
    </message>
    <message>
        <source>Tungsten tip shapes</source>
        <translation>Spitzenformen der Wolframelektroden</translation>
    </message>
    <message>
        <source>One ground tip on direct current: flat at the end, full angle of the cone, and the current it holds its shape at.</source>
        <translation>Eine geschliffene Spitze bei Gleichstrom: Abflachung am Ende, voller Kegelwinkel und der Strom, bei dem sie ihre Form hält.</translation>
    </message>
    <message>
        <source>Tungsten electrode types</source>
        <translation>Sorten der Wolframelektroden</translation>
    </message>
    <message>
        <source>One electrode type, by its ISO 6848 code. Standing is our order of preference, 1 first, where several suit.</source>
        <translation>Eine Elektrodensorte, nach ihrem Kurzzeichen in ISO 6848. Der Rang ist die eigene Reihenfolge, 1 zuerst, wo mehrere passen.</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violett</translation>
    </message>
    <message>
        <source>Ventilation rules</source>
        <translation>Lüftungsregeln</translation>
    </message>
    <message>
        <source>One rule on the air around the weld: when it applies, the figure, and what to do.</source>
        <translation>Eine Regel zur Luft um die Schweißung: wann sie gilt, der Wert und was zu tun ist.</translation>
    </message>
    <message>
        <source>space per welder</source>
        <translation>Raum je Schweißer</translation>
    </message>
    <message>
        <source>room volume below value</source>
        <translation>Raumvolumen unter dem Wert</translation>
    </message>
    <message>
        <source>mechanical ventilation required</source>
        <translation>mechanische Lüftung vorgeschrieben</translation>
    </message>
    <message>
        <source>ceiling height</source>
        <translation>Deckenhöhe</translation>
    </message>
    <message>
        <source>below value</source>
        <translation>unter dem Wert</translation>
    </message>
    <message>
        <source>blocked cross-flow</source>
        <translation>behinderte Querlüftung</translation>
    </message>
    <message>
        <source>confined space, partitions, balconies</source>
        <translation>enger Raum, Trennwände, Emporen</translation>
    </message>
    <message>
        <source>general airflow</source>
        <translation>allgemeiner Luftstrom</translation>
    </message>
    <message>
        <source>any of the three triggers, no hood or supplied air</source>
        <translation>einer der drei Auslöser, keine Absaughaube oder Frischluftversorgung</translation>
    </message>
    <message>
        <source>minimum rate for each welder</source>
        <translation>Mindestmenge für jeden Schweißer</translation>
    </message>
    <message>
        <source>natural ventilation</source>
        <translation>natürliche Lüftung</translation>
    </message>
    <message>
        <source>none of the triggers and metal not on the toxic list</source>
        <translation>keiner der Auslöser, und Metall nicht auf der Giftliste</translation>
    </message>
    <message>
        <source>accepted by the federal rule, not by the UK regulator</source>
        <translation>von der US-Bundesvorschrift anerkannt, von der britischen Aufsicht nicht</translation>
    </message>
    <message>
        <source>capture velocity, movable hood</source>
        <translation>Erfassungsgeschwindigkeit, bewegliche Haube</translation>
    </message>
    <message>
        <source>at the weld zone with the hood at its farthest</source>
        <translation>im Schweißbereich, bei der größten Entfernung der Haube</translation>
    </message>
    <message>
        <source>minimum, flow toward the hood</source>
        <translation>Mindestwert, Strömung zur Haube hin</translation>
    </message>
    <message>
        <source>hood airflow</source>
        <translation>Luftstrom der Haube</translation>
    </message>
    <message>
        <source>movable hood this far from the arc, with a flanged slot 76 mm wide</source>
        <translation>bewegliche Haube in diesem Abstand vom Lichtbogen, mit Flanschschlitz 76 mm breit</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>Mindestwert</translation>
    </message>
    <message>
        <source>fixed booth</source>
        <translation>feste Kabine</translation>
    </message>
    <message>
        <source>top and at least two sides</source>
        <translation>oben und mindestens zwei Seiten</translation>
    </message>
    <message>
        <source>minimum, flow away from the welder</source>
        <translation>Mindestwert, Strömung vom Schweißer weg</translation>
    </message>
    <message>
        <source>screens</source>
        <translation>Schutzwände</translation>
    </message>
    <message>
        <source>bay screened all round</source>
        <translation>Platz ringsum abgeschirmt</translation>
    </message>
    <message>
        <source>leave this gap under the screens</source>
        <translation>diesen Spalt unter den Schutzwänden lassen</translation>
    </message>
    <message>
        <source>toxic metals or stainless MIG in an enclosed space</source>
        <translation>giftige Metalle oder nichtrostender Stahl mit MIG/MAG in umschlossenem Raum</translation>
    </message>
    <message>
        <source>Be, Cd, Cr, F, Pb, Hg, Zn or stainless by gas-shielded arc</source>
        <translation>Be, Cd, Cr, F, Pb, Hg, Zn oder nichtrostender Stahl mit Schutzgasschweißen</translation>
    </message>
    <message>
        <source>local extraction, else supplied air</source>
        <translation>örtliche Absaugung, sonst Frischluftversorgung</translation>
    </message>
    <message>
        <source>beryllium outdoors</source>
        <translation>Beryllium im Freien</translation>
    </message>
    <message>
        <source>supplied-air respirator only</source>
        <translation>nur Atemschutz mit Frischluftversorgung</translation>
    </message>
    <message>
        <source>lead indoors</source>
        <translation>Blei in Innenräumen</translation>
    </message>
    <message>
        <source>lead in metal or coating</source>
        <translation>Blei im Metall oder in der Beschichtung</translation>
    </message>
    <message>
        <source>local extraction or air-line; outdoors a certified respirator</source>
        <translation>örtliche Absaugung oder Druckluft-Schlauchgerät; im Freien zugelassener Atemschutz</translation>
    </message>
    <message>
        <source>stainless by GMAW</source>
        <translation>nichtrostender Stahl mit GMAW</translation>
    </message>
    <message>
        <source>extraction; argon-rich gas (above 75 % argon) named as a way to cut chromium VI</source>
        <translation>Absaugung; argonreiches Gas (über 75 % Argon) ist als Weg genannt, Chrom(VI) zu verringern</translation>
    </message>
    <message>
        <source>confined space air</source>
        <translation>Luft in engen Räumen</translation>
    </message>
    <message>
        <source>always</source>
        <translation>immer</translation>
    </message>
    <message>
        <source>replace air with clean air; never with oxygen; else air-line</source>
        <translation>Luft durch saubere Luft ersetzen; niemals durch Sauerstoff; sonst Druckluft-Schlauchgerät</translation>
    </message>
    <message>
        <source>confined space watcher</source>
        <translation>Sicherungsposten bei engen Räumen</translation>
    </message>
    <message>
        <source>respirators with remote air in use</source>
        <translation>Atemschutz mit Luftzufuhr von außen in Gebrauch</translation>
    </message>
    <message>
        <source>one person posted outside</source>
        <translation>eine Person als Posten draußen</translation>
    </message>
    <message>
        <source>oxygen floor</source>
        <translation>Sauerstoff-Untergrenze</translation>
    </message>
    <message>
        <source>enclosed space</source>
        <translation>umschlossener Raum</translation>
    </message>
    <message>
        <source>do not enter below</source>
        <translation>darunter nicht betreten</translation>
    </message>
    <message>
        <source>UK: any indoor welding</source>
        <translation>UK: jedes Schweißen in Innenräumen</translation>
    </message>
    <message>
        <source>any duration</source>
        <translation>jede Dauer</translation>
    </message>
    <message>
        <source>extraction at source; add a mask if fume remains</source>
        <translation>Absaugung an der Quelle; dazu Maske, wenn Rauch bleibt</translation>
    </message>
    <message>
        <source>UK: outdoor welding</source>
        <translation>UK: Schweißen im Freien</translation>
    </message>
    <message>
        <source>extraction not practical</source>
        <translation>Absaugung nicht machbar</translation>
    </message>
    <message>
        <source>wear a mask</source>
        <translation>Maske tragen</translation>
    </message>
    <message>
        <source>UK: mask factor</source>
        <translation>UK: Schutzfaktor der Maske</translation>
    </message>
    <message>
        <source>welding over about an hour a day or outdoors</source>
        <translation>Schweißen über etwa eine Stunde am Tag oder im Freien</translation>
    </message>
    <message>
        <source>usual minimum protection factor</source>
        <translation>üblicher Mindestschutzfaktor</translation>
    </message>
    <message>
        <source>UK: extraction check</source>
        <translation>UK: Prüfung der Absaugung</translation>
    </message>
    <message>
        <source>LEV in use</source>
        <translation>örtliche Absaugung (LEV) in Gebrauch</translation>
    </message>
    <message>
        <source>longest gap between examinations</source>
        <translation>längster Abstand zwischen Prüfungen</translation>
    </message>
    <message>
        <source>shield gas wind limit</source>
        <translation>Windgrenze für Schutzgas</translation>
    </message>
    <message>
        <source>GMAW, GTAW, FCAW-G, EGW</source>
        <translation>GMAW, GTAW, FCAW-G, EGW</translation>
    </message>
    <message>
        <source>shelter the weld above this</source>
        <translation>darüber die Schweißstelle abschirmen</translation>
    </message>
    <message>
        <source>hood speed versus shield gas</source>
        <translation>Haubenluft gegen Schutzgas</translation>
    </message>
    <message>
        <source>hood at 100 ft/min</source>
        <translation>Haube mit 100 ft/min</translation>
    </message>
    <message>
        <source>well under the 5 mile/h limit, so extraction at the rule value need not spoil the shield</source>
        <translation>weit unter der Grenze von 5 mile/h; Absaugung mit dem Vorschriftswert muss den Gasschutz also nicht stören</translation>
    </message>
    <message>
        <source>cold or wet work</source>
        <translation>Arbeit bei Kälte oder Nässe</translation>
    </message>
    <message>
        <source>metal near weld below value, or wet, or high wind</source>
        <translation>Metall nahe der Schweißung unter dem Wert, oder nass, oder starker Wind</translation>
    </message>
    <message>
        <source>do not weld (structural code)</source>
        <translation>nicht schweißen (Stahlbauregelwerk)</translation>
    </message>
    <message>
        <source>home garage example</source>
        <translation>Beispiel Garage zu Hause</translation>
    </message>
    <message>
        <source>6 x 3 x 2.4 m one-car garage</source>
        <translation>Einzelgarage 6 x 3 x 2,4 m</translation>
    </message>
    <message>
        <source>fails both the volume and height test, so fan or hood needed</source>
        <translation>verfehlt sowohl das Volumen als auch die Höhe, also Lüfter oder Haube nötig</translation>
    </message>
    <message>
        <source>small hood example</source>
        <translation>Beispiel kleine Haube</translation>
    </message>
    <message>
        <source>hood within 150 mm of arc</source>
        <translation>Haube höchstens 150 mm vom Lichtbogen</translation>
    </message>
    <message>
        <source>about 13 times less air than the room rule</source>
        <translation>etwa 13-mal weniger Luft als nach der Raumregel</translation>
    </message>
    <message>
        <source>AC wave</source>
        <translation>AC-Welle</translation>
    </message>
    <message>
        <source>Where to start with AC frequency and with the share of time the electrode is negative.</source>
        <translation>Womit bei AC-Frequenz und beim Zeitanteil mit negativer Elektrode zu beginnen ist.</translation>
    </message>
    <message>
        <source>usual default</source>
        <translation>üblicher Standard</translation>
    </message>
    <message>
        <source>both edges have to melt</source>
        <translation>beide Kanten müssen schmelzen</translation>
    </message>
    <message>
        <source>a wider arc melts the full edge without more current</source>
        <translation>ein breiterer Lichtbogen schmilzt die ganze Kante ohne mehr Strom</translation>
    </message>
    <message>
        <source>a narrower arc reaches the step</source>
        <translation>ein schmalerer Lichtbogen erreicht die Stufe</translation>
    </message>
    <message>
        <source>a narrower arc reaches the root; 120 to 130 usual</source>
        <translation>ein schmalerer Lichtbogen erreicht die Wurzel; 120 bis 130 üblich</translation>
    </message>
    <message>
        <source>a narrower arc reaches the root</source>
        <translation>ein schmalerer Lichtbogen erreicht die Wurzel</translation>
    </message>
    <message>
        <source>wider, softer arc on thick plate and build-up</source>
        <translation>breiterer, weicherer Lichtbogen auf dicker Platte und beim Auftragen</translation>
    </message>
    <message>
        <source>machines tied to the mains frequency</source>
        <translation>an die Netzfrequenz gebundene Geräte</translation>
    </message>
    <message>
        <source>clean new sheet: narrower etch, more melting</source>
        <translation>sauberes neues Blech: schmalere Ätzzone, mehr Aufschmelzen</translation>
    </message>
    <message>
        <source>usual starting band</source>
        <translation>üblicher Startbereich</translation>
    </message>
    <message>
        <source>castings, weathered or anodised metal: more cleaning</source>
        <translation>Gussteile, verwittertes oder eloxiertes Metall: mehr Reinigung</translation>
    </message>
    <message>
        <source>equal halves preferred where oxide is heavy</source>
        <translation>gleiche Hälften bevorzugt, wo das Oxid dick ist</translation>
    </message>
    <message>
        <source>about the most that still cleans; a pointed tip can be kept</source>
        <translation>etwa das Höchste, das noch reinigt; eine spitze Elektrode lässt sich halten</translation>
    </message>
    <message>
        <source>about a tenth electrode positive still cleans</source>
        <translation>etwa ein Zehntel Elektrode positiv reinigt noch</translation>
    </message>
    <message>
        <source>electrode rating on a balanced sine wave against a square wave, about a quarter less</source>
        <translation>Belastbarkeit der Elektrode bei symmetrischer Sinuswelle gegen Rechteckwelle, etwa ein Viertel weniger</translation>
    </message>
    <message>
        <source>Length of a run</source>
        <translation>Länge eines Abschnitts</translation>
    </message>
    <message>
        <source>How long a seam is welded at a time, each run against the general direction, so that the sheet stays flat.</source>
        <translation>Wie lang eine Naht am Stück geschweißt wird, jeder Abschnitt gegen die allgemeine Richtung, damit das Blech eben bleibt.</translation>
    </message>
    <message>
        <source>Spray transition currents</source>
        <translation>Übergangsströme zum Sprühlichtbogen</translation>
    </message>
    <message>
        <source>The current at which drops change from large and slow to a fine spray, by metal, wire and gas.</source>
        <translation>Der Strom, bei dem die Tropfen von groß und langsam zu feinem Sprühen wechseln, nach Metall, Draht und Gas.</translation>
    </message>
    <message>
        <source>Wire current ranges</source>
        <translation>Strombereiche der Drähte</translation>
    </message>
    <message>
        <source>The current range one wire diameter is used at, by metal and transfer.</source>
        <translation>Der Strombereich, in dem ein Drahtdurchmesser benutzt wird, nach Metall und Lichtbogenart.</translation>
    </message>
    <message>
        <source>Strip the zinc first, both faces, 25 to 100 mm on each side, and extract at the arc. Shivers hours later mean metal fume fever: get medical help.</source>
        <translation>Zuerst das Zink entfernen, beide Seiten, 25 bis 100 mm auf jeder Seite der Naht, und am Lichtbogen absaugen. Schüttelfrost Stunden später bedeutet Metallrauchfieber: ärztliche Hilfe holen.</translation>
    </message>
    <message>
        <source>Room air alone is not enough for zinc. Use a hood at the arc, or move outside with a fume mask.</source>
        <translation>Raumluft allein reicht bei Zink nicht. Haube am Lichtbogen benutzen oder mit Rauchmaske ins Freie gehen.</translation>
    </message>
    <message>
        <source>Never heat cadmium: one session&apos;s fume can kill a day later with little warning. Swap the part, or have the plating stripped chemically.</source>
        <translation>Cadmium niemals erhitzen: der Rauch eines einzigen Einsatzes kann einen Tag später fast ohne Warnung töten. Teil austauschen oder die Beschichtung chemisch entfernen lassen.</translation>
    </message>
    <message>
        <source>Test old paint for lead before any heat. Strip it wet or chemically, 100 mm back from the joint, with a rated mask on.</source>
        <translation>Alte Farbe vor jeder Erwärmung auf Blei prüfen. Nass oder chemisch entfernen, 100 mm vom Stoß zurück, mit zugelassener Maske.</translation>
    </message>
    <message>
        <source>Take it to bare metal 50 mm all round, farther if the heat reaches farther. What is left burns, fumes and makes pores.</source>
        <translation>Ringsum 50 mm bis aufs blanke Metall entfernen, weiter, wenn die Wärme weiter reicht. Was bleibt, brennt, raucht und macht Poren.</translation>
    </message>
    <message>
        <source>Scrape some off and test it away from the job. If it flares up, or lead or cadmium cannot be ruled out, strip it all first.</source>
        <translation>Etwas abkratzen und abseits der Arbeit prüfen. Flammt es auf oder lässt sich Blei oder Cadmium nicht ausschließen, zuerst alles entfernen.</translation>
    </message>
    <message>
        <source>Degrease, dry, then brush. Oily metal smokes, can flash, and gives a porous bead.</source>
        <translation>Entfetten, trocknen, dann bürsten. Öliges Metall qualmt, kann auflodern und gibt eine porige Raupe.</translation>
    </message>
    <message>
        <source>Cut sealer, adhesive and foam well back; heated polyurethane gives off isocyanates, which can leave asthma for life. Never weld on a foam-filled part.</source>
        <translation>Dichtmasse, Kleber und Schaum weit zurückschneiden; erhitztes Polyurethan gibt Isocyanate ab, die lebenslanges Asthma hinterlassen können. Niemals an einem ausgeschäumten Teil schweißen.</translation>
    </message>
    <message>
        <source>Grind the chrome and the nickel under it off first, with extraction and a mask. Welded chrome gives off chromium VI.</source>
        <translation>Das Chrom und das Nickel darunter zuerst abschleifen, mit Absaugung und Maske. Geschweißtes Chrom gibt Chrom(VI) ab.</translation>
    </message>
    <message>
        <source>Arc light and heat turn chlorinated cleaner into phosgene. Ban it within 61 m (200 ft), clean again with a chlorine-free one, and let it dry.</source>
        <translation>Licht und Hitze des Lichtbogens machen aus chlorhaltigem Reiniger Phosgen. Im Umkreis von 61 m (200 ft) verbieten, mit einem chlorfreien nachreinigen und trocknen lassen.</translation>
    </message>
    <message>
        <source>Read the can: if it is chlorinated, arc light turns its vapour into phosgene. Until you know, clean again with a chlorine-free cleaner and let it dry.</source>
        <translation>Dose lesen: ist er chlorhaltig, macht das Lichtbogenlicht aus seinem Dampf Phosgen. Solange das nicht klar ist, mit chlorfreiem Reiniger nachreinigen und trocknen lassen.</translation>
    </message>
    <message>
        <source>If it was welded over, or you smell something choking: leave, rest, and get emergency care even if you feel fine. Lung damage can show hours later.</source>
        <translation>Wurde darüber geschweißt oder riecht es erstickend: weggehen, ruhen und in die Notaufnahme, auch bei Wohlbefinden. Lungenschäden können sich erst Stunden später zeigen.</translation>
    </message>
    <message>
        <source>Wipe, do not pour, and let it flash off fully. Take the can and the rags out of the bay, then weld.</source>
        <translation>Wischen, nicht gießen, und vollständig ablüften lassen. Dose und Lappen aus dem Schweißplatz bringen, dann schweißen.</translation>
    </message>
    <message>
        <source>Blow the gap out and warm the part until dry. Trapped cleaner can ignite, burst out or gas the weld.</source>
        <translation>Spalt ausblasen und das Teil erwärmen, bis es trocken ist. Eingeschlossener Reiniger kann sich entzünden, herausplatzen oder die Schweißung mit Gas durchsetzen.</translation>
    </message>
    <message>
        <source>The fume carries chromium VI and nickel, both of which cause cancer. Extract at the arc; for MIG wear a mask as well.</source>
        <translation>Der Rauch enthält Chrom(VI) und Nickel, die beide Krebs erzeugen. Am Lichtbogen absaugen; bei MIG/MAG zusätzlich eine Maske tragen.</translation>
    </message>
    <message>
        <source>Steel fume carries manganese, which harms the nerves. Keep your head out of the plume and extract even for short jobs.</source>
        <translation>Stahlrauch enthält Mangan, das die Nerven schädigt. Den Kopf aus der Rauchfahne halten und auch bei kurzen Arbeiten absaugen.</translation>
    </message>
    <message>
        <source>Argon arcs on aluminium make ozone, beyond the plume too, most of all with MIG. Extract, and stop if throat or chest stings.</source>
        <translation>Argon-Lichtbögen auf Aluminium erzeugen Ozon, auch außerhalb der Rauchfahne, am meisten bei MIG. Absaugen, und aufhören, wenn es in Hals oder Brust brennt.</translation>
    </message>
    <message>
        <source>Hot aluminium looks cold. Mark it hot and keep gloves on.</source>
        <translation>Heißes Aluminium sieht kalt aus. Als heiß kennzeichnen und Handschuhe anbehalten.</translation>
    </message>
    <message>
        <source>Bright metal throws ultraviolet up under the helmet: cover neck and wrists. Half a metre from a TIG arc on aluminium bare skin has 3.3 to 33 seconds a day.</source>
        <translation>Blankes Metall wirft Ultraviolett unter den Helm: Hals und Handgelenke bedecken. Einen halben Meter vom WIG-Lichtbogen auf Aluminium hat bloße Haut 3,3 bis 33 Sekunden am Tag.</translation>
    </message>
    <message>
        <source>Clear away all dust and swarf: magnesium burns. Dry sand or a class D extinguisher to hand; no water, foam or carbon dioxide.</source>
        <translation>Allen Staub und alle Späne wegräumen: Magnesium brennt. Trockener Sand oder Löscher der Brandklasse D griffbereit; kein Wasser, kein Schaum, kein Kohlendioxid.</translation>
    </message>
    <message>
        <source>Fine titanium dust burns or explodes. Sweep it up and keep it away from grinding sparks.</source>
        <translation>Feiner Titanstaub brennt oder explodiert. Aufkehren und von Schleiffunken fernhalten.</translation>
    </message>
    <message>
        <source>Copper and zinc fume give metal fume fever; brass boils its zinc off. Extract at the arc.</source>
        <translation>Kupfer- und Zinkrauch machen Metallrauchfieber; aus Messing siedet das Zink heraus. Am Lichtbogen absaugen.</translation>
    </message>
    <message>
        <source>Spring bronze and non-sparking tools may hold beryllium: traces of its dust scar the lungs for life. Unless you are sure it is free of it, do not weld, grind or sand it.</source>
        <translation>Federbronze und funkenfreies Werkzeug können Beryllium enthalten: Spuren seines Staubs vernarben die Lunge lebenslang. Solange nicht sicher ist, dass keins darin ist, nicht schweißen, schleifen oder schmirgeln.</translation>
    </message>
    <message>
        <source>Keep marked brushes, discs and files for each metal. Steel traces rust stainless and spoil aluminium welds.</source>
        <translation>Gekennzeichnete Bürsten, Scheiben und Feilen für jedes Metall bereithalten. Stahlspuren lassen nichtrostenden Stahl rosten und verderben Aluminiumschweißungen.</translation>
    </message>
    <message>
        <source>Aluminium clogs plain grinding wheels until they burst. Use discs made for it, or a file.</source>
        <translation>Aluminium setzt gewöhnliche Schleifscheiben zu, bis sie platzen. Dafür gemachte Scheiben oder eine Feile benutzen.</translation>
    </message>
    <message>
        <source>The arc softens or embrittles metal that was heat-treated. Check that the part may be welded at all before the first tack.</source>
        <translation>Der Lichtbogen erweicht oder versprödet wärmebehandeltes Metall. Vor der ersten Heftstelle prüfen, ob das Teil überhaupt geschweißt werden darf.</translation>
    </message>
    <message>
        <source>Its grinding dust is radioactive and must not be breathed or eaten. Grind with extraction, bag the dust, wash hands; better, change to a lanthanated or ceriated type.</source>
        <translation>Der Schleifstaub ist radioaktiv und darf nicht eingeatmet oder verschluckt werden. Mit Absaugung schleifen, Staub in Beutel verpacken, Hände waschen; besser zu einer Sorte mit Lanthan oder Cer wechseln.</translation>
    </message>
    <message>
        <source>TIG needs an inert gas. Oxygen or carbon dioxide burns the tungsten at once.</source>
        <translation>WIG braucht ein inertes Gas. Sauerstoff oder Kohlendioxid verbrennt die Wolframelektrode sofort.</translation>
    </message>
    <message>
        <source>Carbon dioxide shielding makes some carbon monoxide. Extract; a headache means get out.</source>
        <translation>Kohlendioxid als Schutzgas bildet etwas Kohlenmonoxid. Absaugen; Kopfschmerzen heißen: raus.</translation>
    </message>
    <message>
        <source>If you purge the back, lead the gas to open air. Never put your head near a purge outlet or into a purged part before it is flushed.</source>
        <translation>Beim Formieren der Rückseite das Gas ins Freie leiten. Niemals den Kopf nahe an einen Formiergasaustritt oder in ein formiertes Teil halten, bevor es durchgespült ist.</translation>
    </message>
    <message>
        <source>All welding fume counts as cancer-causing. Extract at the arc even for a tack; open doors alone do not count.</source>
        <translation>Aller Schweißrauch gilt als krebserzeugend. Am Lichtbogen absaugen, auch bei einer einzelnen Heftstelle; offene Türen allein zählen nicht.</translation>
    </message>
    <message>
        <source>Shielding gas sinks and gives no warning: a few breaths can drop you. Ventilate from low down, meter the oxygen (19.5 % at least), and never go in after a casualty.</source>
        <translation>Schutzgas sinkt ab und warnt nicht: schon wenige Atemzüge können bewusstlos machen. Von unten her lüften, den Sauerstoff messen (mindestens 19,5 %) und niemals einem Verunglückten hinterhergehen.</translation>
    </message>
    <message>
        <source>A confined space needs a written plan, clean air supplied, a trained watcher outside and a way to pull you out. Cylinders and machine stay outside; never freshen the air with oxygen.</source>
        <translation>Ein enger Raum braucht einen schriftlichen Plan, zugeführte saubere Luft, einen ausgebildeten Sicherungsposten draußen und eine Möglichkeit, den Schweißer herauszuziehen. Flaschen und Gerät bleiben draußen; niemals die Luft mit Sauerstoff auffrischen.</translation>
    </message>
    <message>
        <source>Above 2.2 m/s (5 mph) of wind the gas shield fails. Screen the joint; more flow will not fix it.</source>
        <translation>Über 2,2 m/s (5 mph) Wind versagt der Gasschutz. Stoß abschirmen; mehr Durchfluss hilft nicht.</translation>
    </message>
    <message>
        <source>Do not weld or cut a tank, drum or can: emptied and rinsed ones still explode. Leave it to a tank specialist or fit a new one.</source>
        <translation>Keinen Tank, kein Fass, keinen Kanister und keine Dose schweißen oder schneiden: auch entleerte und ausgespülte explodieren. Einem Tankfachbetrieb überlassen oder einen neuen einbauen.</translation>
    </message>
    <message>
        <source>Never weld on or heat a sealed or pressurised item: cylinder, damper, gas strut, inflator, air tank, wheel with its tyre on. Take it off the job first.</source>
        <translation>Niemals an einem verschlossenen oder unter Druck stehenden Gegenstand schweißen oder ihn erhitzen: Gasflasche, Dämpfer, Gasfeder, Airbag-Gasgenerator, Luftbehälter, Rad mit aufgezogenem Reifen. Zuerst vom Werkstück abbauen.</translation>
    </message>
    <message>
        <source>Vent every closed cavity before heat, with a hole clear of the joint. Trapped air or moisture can burst it or blow out the last of the bead.</source>
        <translation>Jeden geschlossenen Hohlraum vor dem Erwärmen entlüften, mit einem Loch abseits des Stoßes. Eingeschlossene Luft oder Feuchte kann ihn platzen lassen oder das Ende der Raupe herausblasen.</translation>
    </message>
    <message>
        <source>Ignition off, both battery leads off, negative first, and kept apart. Clamp bare metal by the joint so that no bearing, module or wire lies in the path.</source>
        <translation>Zündung aus, beide Batteriekabel ab, Minus zuerst, und auseinanderhalten. Masseklemme auf blankes Metall am Stoß, damit kein Lager, Steuergerät oder Kabel im Stromweg liegt.</translation>
    </message>
    <message>
        <source>Airbags, belt tensioners, fuel lines, brake lines and charged air conditioning near the weld come off or are made safe first, as the vehicle&apos;s manual says. Hybrid or electric: a trained person isolates the battery.</source>
        <translation>Airbags, Gurtstraffer, Kraftstoffleitungen, Bremsleitungen und gefüllte Klimaanlagen nahe der Schweißung kommen zuerst ab oder werden gesichert, wie es das Handbuch des Fahrzeugs sagt. Hybrid oder elektrisch: eine geschulte Person trennt die Batterie.</translation>
    </message>
    <message>
        <source>Rails, sills, pillars, seat and belt mountings: the maker&apos;s repair method or a licensed shop only. Heat ruins high-strength steel and a neat bead proves nothing.</source>
        <translation>Längsträger, Schweller, Säulen, Sitz- und Gurtbefestigungen: nur nach der Reparaturmethode des Herstellers oder in einer zugelassenen Werkstatt. Hitze verdirbt hochfesten Stahl, und eine saubere Raupe beweist nichts.</translation>
    </message>
    <message>
        <source>Take out trim, carpet and sound deadening, lay a fire blanket, and post a watcher behind the panel.</source>
        <translation>Verkleidung, Teppich und Dämmmatten ausbauen, eine Brandschutzdecke auslegen und eine Brandwache hinter das Blech stellen.</translation>
    </message>
    <message>
        <source>A high-frequency start can kill electronics nearby. Use a lift start near a vehicle&apos;s modules.</source>
        <translation>Hochfrequenzzündung kann Elektronik in der Nähe zerstören. Nahe den Steuergeräten eines Fahrzeugs mit Lift-Zündung (Abheben) zünden.</translation>
    </message>
    <message>
        <source>If this weld fails it can hurt someone: advised settings alone are not enough. Have a qualified welder do it to a written procedure and have it inspected.</source>
        <translation>Versagt diese Schweißung, kann sie jemanden verletzen: empfohlene Einstellungen allein genügen nicht. Von einem geprüften Schweißer nach schriftlicher Schweißanweisung ausführen und prüfen lassen.</translation>
    </message>
    <message>
        <source>Never weld rated hooks, shackles, chains, jacks or stands. Replace them.</source>
        <translation>Niemals Haken, Schäkel, Ketten, Wagenheber oder Unterstellböcke mit Nennlast schweißen. Ersetzen.</translation>
    </message>
    <message>
        <source>Follow the rulebook of the event: tube, steel, fully penetrated gas-shielded welds right round, inspection. Good looks are not proof.</source>
        <translation>Dem Regelwerk der Veranstaltung folgen: Rohr, Stahl, voll durchgeschweißte Schutzgasnähte ringsum, Prüfung. Gutes Aussehen ist kein Beweis.</translation>
    </message>
    <message>
        <source>Helmet at or above the filter floor, safety glasses under it, all skin covered, others screened from the arc. Gritty eyes hours later are arc eye: see a doctor if it does not fade in a day.</source>
        <translation>Helm mit Schutzstufe an oder über der Untergrenze, Schutzbrille darunter, alle Haut bedeckt, andere vom Lichtbogen abgeschirmt. Sandgefühl in den Augen Stunden später heißt verblitzt: zum Arzt, wenn es nicht binnen eines Tages nachlässt.</translation>
    </message>
    <message>
        <source>Clear or cover everything that burns within 11 m (35 ft), also behind the panel, with an extinguisher in reach. Stay at least half an hour after the last arc, better a whole one, and look for smoulder.</source>
        <translation>Alles Brennbare im Umkreis von 11 m (35 ft) wegräumen oder abdecken, auch hinter dem Blech, mit einem Feuerlöscher in Reichweite. Nach dem letzten Lichtbogen mindestens eine halbe Stunde bleiben, besser eine ganze, und nach Schwelbrand sehen.</translation>
    </message>
    <message>
        <source>No welding in rain, on a wet floor, or in wet gloves or clothes. Stand dry and insulated, and switch off before touching tungsten, tip or wire.</source>
        <translation>Nicht schweißen bei Regen, auf nassem Boden oder in nassen Handschuhen oder nasser Kleidung. Trocken und isoliert stehen, und ausschalten, bevor Wolframelektrode, Stromdüse oder Draht berührt wird.</translation>
    </message>
    <message>
        <source>Chain the cylinder upright, away from sparks and out of the welding circuit. Shut its valve whenever work stops.</source>
        <translation>Flasche aufrecht anketten, weg von Funken und außerhalb des Schweißstromkreises. Flaschenventil bei jeder Arbeitsunterbrechung schließen.</translation>
    </message>
    <message>
        <source>With a pacemaker, defibrillator or pump, yours or a helper&apos;s: no arc before the implant clinic has agreed.</source>
        <translation>Mit Herzschrittmacher, Defibrillator oder Pumpe, eigenem oder dem eines Helfers: kein Lichtbogen, bevor die Implantat-Klinik zugestimmt hat.</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Drawings</source>
        <translation>Zeichnungen</translation>
    </message>
</context>
<context>
    <name>Actions</name>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation>Als &amp;PDF speichern…</translation>
    </message>
    <message>
        <source>&amp;Copy as text</source>
        <translation>Als &amp;Text kopieren</translation>
    </message>
    <message>
        <source>&amp;Start over</source>
        <translation>&amp;Neu beginnen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Einheiten</translation>
    </message>
    <message>
        <source>&amp;Larger text</source>
        <translation>&amp;Größerer Text</translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation>&amp;Kleinerer Text</translation>
    </message>
    <message>
        <source>&amp;Usual text size</source>
        <translation>&amp;Normale Textgröße</translation>
    </message>
    <message>
        <source>&amp;Go to…</source>
        <translation>Ge&amp;he zu…</translation>
    </message>
    <message>
        <source>Go to the &amp;metal</source>
        <translation>Zum &amp;Metall</translation>
    </message>
    <message>
        <source>Go to the &amp;thickness</source>
        <translation>Zur &amp;Dicke</translation>
    </message>
    <message>
        <source>Between request and &amp;card</source>
        <translation>Angaben/Karte &amp;wechseln</translation>
    </message>
    <message>
        <source>What went &amp;wrong…</source>
        <translation>Was ging s&amp;chief…</translation>
    </message>
    <message>
        <source>Large &amp;figures</source>
        <translation>Große &amp;Zahlen</translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Text +</source>
        <translation>Text +</translation>
    </message>
    <message>
        <source>Text −</source>
        <translation>Text −</translation>
    </message>
    <message>
        <source>&amp;Shortcuts</source>
        <translation>Tasten&amp;kürzel</translation>
    </message>
    <message>
        <source>&amp;Guide</source>
        <translation>An&amp;leitung</translation>
    </message>
    <message>
        <source>&amp;How figures are made</source>
        <translation>&amp;Wie Werte entstehen</translation>
    </message>
    <message>
        <source>Open the &amp;demo job</source>
        <translation>&amp;Demo-Auftrag öffnen</translation>
    </message>
    <message>
        <source>&amp;About Welds</source>
        <translation>Ü&amp;ber Welds</translation>
    </message>
    <message>
        <source>&amp;Units: {words}</source>
        <translation>&amp;Einheiten: {words}</translation>
    </message>
    <message>
        <source>&amp;Follow the system</source>
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
        <source>&amp;High contrast</source>
        <translation>Hoher &amp;Kontrast</translation>
    </message>
    <message>
        <source>The &amp;system&apos;s language</source>
        <translation>&amp;Systemsprache</translation>
    </message>
    <message>
        <source>&amp;Card</source>
        <translation>&amp;Karte</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <source>L&amp;anguage</source>
        <translation>Sp&amp;rache</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
</context>
<context>
    <name>BandPair</name>
    <message>
        <source>Tables {table}; learned from your welds {learned}</source>
        <translation>Tabellen {table}; aus eigenen Schweißungen gelernt {learned}</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tabellen</translation>
    </message>
    <message>
        <source>Your welds</source>
        <translation>Eigene Schweißungen</translation>
    </message>
</context>
<context>
    <name>BenchPresenter</name>
    <message>
        <source>No machine yet: no card is limited. Add one: it starts as a common kind.</source>
        <translation>Noch kein Gerät: keine Karte wird begrenzt. Eins hinzufügen: es beginnt als gängige Bauart.</translation>
    </message>
    <message>
        <source>Not saved yet: the cards still follow the bench as it was.</source>
        <translation>Noch nicht gespeichert: die Karten folgen noch der Werkbank, wie sie war.</translation>
    </message>
    <message>
        <source>Saved. Every card follows this bench.</source>
        <translation>Gespeichert. Jede Karte folgt dieser Werkbank.</translation>
    </message>
    <message>
        <source>Put right what is marked, then it shows here.</source>
        <translation>Markiertes berichtigen, dann steht es hier.</translation>
    </message>
    <message>
        <source>The set-up page holds no request that can be read.</source>
        <translation>Auf der Seite Einstellung stehen keine lesbaren Angaben.</translation>
    </message>
    <message>
        <source>In the way:</source>
        <translation>Dem steht im Weg:</translation>
    </message>
</context>
<context>
    <name>BenchView</name>
    <message>
        <source>Machines</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>&amp;Use this machine</source>
        <translation>Dieses Gerät &amp;nutzen</translation>
    </message>
    <message>
        <source>&amp;Remove it</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Kind to add</source>
        <translation>Art zum Hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>Hin&amp;zufügen</translation>
    </message>
    <message>
        <source>U&amp;ndo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Take the last change back (Ctrl+Z)</source>
        <translation>Letzte Änderung zurücknehmen (Strg+Z)</translation>
    </message>
    <message>
        <source>&amp;Save the bench</source>
        <translation>Werkbank &amp;speichern</translation>
    </message>
    <message>
        <source>What the card would say now</source>
        <translation>Was die Karte jetzt sagen würde</translation>
    </message>
    <message>
        <source>{name}, in use</source>
        <translation>{name}, in Gebrauch</translation>
    </message>
</context>
<context>
    <name>BenchWords</name>
    <message>
        <source>Machine</source>
        <translation>Schweißgerät</translation>
    </message>
    <message>
        <source>Current and duty cycle</source>
        <translation>Strom und Einschaltdauer</translation>
    </message>
    <message>
        <source>AC: frequency and balance</source>
        <translation>AC: Frequenz und Balance</translation>
    </message>
    <message>
        <source>Wire and voltage</source>
        <translation>Draht und Spannung</translation>
    </message>
    <message>
        <source>Own dials and switches</source>
        <translation>Eigene Skalen und Schalter</translation>
    </message>
    <message>
        <source>Torch or gun</source>
        <translation>WIG-/MIG-Brenner</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Netzanschluss</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Processes</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Pedal</source>
        <translation>Fußregler</translation>
    </message>
    <message>
        <source>Pulse</source>
        <translation>Impuls</translation>
    </message>
    <message>
        <source>Hot start</source>
        <translation>Hotstart</translation>
    </message>
    <message>
        <source>Lowest [A]</source>
        <translation>Min. [A]</translation>
    </message>
    <message>
        <source>Highest [A]</source>
        <translation>Max. [A]</translation>
    </message>
    <message>
        <source>Step [A]</source>
        <translation>Stufe [A]</translation>
    </message>
    <message>
        <source>Only these [A]</source>
        <translation>Nur diese [A]</translation>
    </message>
    <message>
        <source>Duty cycle</source>
        <translation>Einschaltdauer</translation>
    </message>
    <message>
        <source>Open, DC [V]</source>
        <translation>Leerlauf, DC [V]</translation>
    </message>
    <message>
        <source>Open, AC [V]</source>
        <translation>Leerlauf, AC [V]</translation>
    </message>
    <message>
        <source>Welds on AC</source>
        <translation>Schweißt mit AC</translation>
    </message>
    <message>
        <source>Wave</source>
        <translation>Wellenform</translation>
    </message>
    <message>
        <source>Lowest [Hz]</source>
        <translation>Min. [Hz]</translation>
    </message>
    <message>
        <source>Highest [Hz]</source>
        <translation>Max. [Hz]</translation>
    </message>
    <message>
        <source>Step [Hz]</source>
        <translation>Stufe [Hz]</translation>
    </message>
    <message>
        <source>Only these [Hz]</source>
        <translation>Nur diese [Hz]</translation>
    </message>
    <message>
        <source>Least negative [%]</source>
        <translation>Negativ min. [%]</translation>
    </message>
    <message>
        <source>Most negative [%]</source>
        <translation>Negativ max. [%]</translation>
    </message>
    <message>
        <source>Step [%]</source>
        <translation>Stufe [%]</translation>
    </message>
    <message>
        <source>Only these [%]</source>
        <translation>Nur diese [%]</translation>
    </message>
    <message>
        <source>Feed from [{unit}]</source>
        <translation>Vorschub von [{unit}]</translation>
    </message>
    <message>
        <source>Feed to [{unit}]</source>
        <translation>Vorschub bis [{unit}]</translation>
    </message>
    <message>
        <source>Voltage from [V]</source>
        <translation>Spannung von [V]</translation>
    </message>
    <message>
        <source>Voltage to [V]</source>
        <translation>Spannung bis [V]</translation>
    </message>
    <message>
        <source>Only these [V]</source>
        <translation>Nur diese [V]</translation>
    </message>
    <message>
        <source>Wires it takes</source>
        <translation>Passende Drähte</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Schweißstrom</translation>
    </message>
    <message>
        <source>AC frequency</source>
        <translation>AC-Frequenz</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Balance</translation>
    </message>
    <message>
        <source>Wire feed</source>
        <translation>Drahtvorschub</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Cooling</source>
        <translation>Kühlung</translation>
    </message>
    <message>
        <source>Rated [A]</source>
        <translation>Nennstrom [A]</translation>
    </message>
    <message>
        <source>Rated on AC [A]</source>
        <translation>Nennstrom AC [A]</translation>
    </message>
    <message>
        <source>At duty [%]</source>
        <translation>Bei ED [%]</translation>
    </message>
    <message>
        <source>Your outlet [V]</source>
        <translation>Eigene Steckdose [V]</translation>
    </message>
    <message>
        <source>Phases</source>
        <translation>Phasen</translation>
    </message>
    <message>
        <source>Breaker or fuse [A]</source>
        <translation>Automat/Sicherung [A]</translation>
    </message>
    <message>
        <source>Cord rated [A]</source>
        <translation>Kabel belastbar [A]</translation>
    </message>
    <message>
        <source>Cord [mm²]</source>
        <translation>Kabel [mm²]</translation>
    </message>
    <message>
        <source>Cord length [{unit}]</source>
        <translation>Kabellänge [{unit}]</translation>
    </message>
    <message>
        <source>Generator [kVA]</source>
        <translation>Generator [kVA]</translation>
    </message>
    <message>
        <source>Made for [V]</source>
        <translation>Ausgelegt für [V]</translation>
    </message>
    <message>
        <source>Mains plug</source>
        <translation>Netzstecker</translation>
    </message>
    <message>
        <source>Efficiency</source>
        <translation>Wirkungsgrad</translation>
    </message>
    <message>
        <source>Power factor</source>
        <translation>Leistungsfaktor</translation>
    </message>
    <message>
        <source>12 AWG is 3.31</source>
        <translation>12 AWG sind 3.31</translation>
    </message>
    <message>
        <source>{gas}, {unit} left</source>
        <translation>{gas}, Rest in {unit}</translation>
    </message>
    <message>
        <source>full bottle times psi over full psi</source>
        <translation>volle Flasche mal psi durch psi voll</translation>
    </message>
    <message>
        <source>water volume times bar</source>
        <translation>Flaschenvolumen (Wasser) mal bar</translation>
    </message>
    <message>
        <source>Tungsten</source>
        <translation>Wolframelektrode</translation>
    </message>
    <message>
        <source>Filler rods</source>
        <translation>Schweißstäbe</translation>
    </message>
    <message>
        <source>Wire spools</source>
        <translation>Drahtspulen</translation>
    </message>
    <message>
        <source>Gases</source>
        <translation>Gase</translation>
    </message>
    <message>
        <source>Cups</source>
        <translation>Gasdüsen</translation>
    </message>
    <message>
        <source>Cups for a gas lens</source>
        <translation>Gasdüsen für Gaslinse</translation>
    </message>
    <message>
        <source>Gas lenses, by tungsten</source>
        <translation>Gaslinsen, je Elektrode</translation>
    </message>
    <message>
        <source>Collets, by tungsten</source>
        <translation>Spannhülsen, je Elektrode</translation>
    </message>
    <message>
        <source>Backing bars</source>
        <translation>Badsicherungen</translation>
    </message>
    <message>
        <source>Brushes kept for</source>
        <translation>Bürsten nur für</translation>
    </message>
    <message>
        <source>Grinding wheels kept for</source>
        <translation>Schleifscheiben nur für</translation>
    </message>
    <message>
        <source>Helmet shades</source>
        <translation>Schutzstufen (Helm)</translation>
    </message>
    <message>
        <source>Gas lens there</source>
        <translation>Gaslinse vorhanden</translation>
    </message>
</context>
<context>
    <name>CardOutput</name>
    <message>
        <source>The card is on its way to the printer.</source>
        <translation>Die Karte ist auf dem Weg zum Drucker.</translation>
    </message>
    <message>
        <source>Save the card as PDF</source>
        <translation>Karte als PDF speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The PDF was not written</source>
        <translation>Das PDF wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation>Gespeichert als {path}.</translation>
    </message>
    <message>
        <source>The card is on the clipboard as text.</source>
        <translation>Die Karte liegt als Text in der Zwischenablage.</translation>
    </message>
    <message>
        <source>Its stop cautions are not ticked yet: the boxes stand open on it.</source>
        <translation>Die HALT-Hinweise sind noch nicht abgehakt: die Kästchen darauf stehen offen.</translation>
    </message>
</context>
<context>
    <name>CardPanel</name>
    <message>
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>The card below is for the request before this one.</source>
        <translation>Die Karte unten gehört zu den Angaben vor diesen.</translation>
    </message>
    <message>
        <source>OLD CARD</source>
        <translation>ALTE KARTE</translation>
    </message>
    <message>
        <source>NO CARD</source>
        <translation>KEINE KARTE</translation>
    </message>
    <message>
        <source>NOT READY: {count} to tick</source>
        <translation>NICHT BEREIT: noch {count} abhaken</translation>
    </message>
    <message>
        <source>READY</source>
        <translation>BEREIT</translation>
    </message>
    <message>
        <source>State of the card: {words}</source>
        <translation>Stand der Karte: {words}</translation>
    </message>
    <message>
        <source>Log this weld…</source>
        <translation>Schweißung eintragen…</translation>
    </message>
    <message>
        <source>Write down what was set and what came of it (Ctrl+L)</source>
        <translation>Aufschreiben, was eingestellt war und was dabei herauskam (Strg+L)</translation>
    </message>
    <message>
        <source>What went wrong…</source>
        <translation>Was ging schief…</translation>
    </message>
    <message>
        <source>From the looks of a bead to its cause and the change of setting (F7)</source>
        <translation>Vom Aussehen der Raupe zur Ursache und zur Änderung der Einstellung (F7)</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>The joint with the torch</source>
        <translation>Der Stoß mit dem Brenner</translation>
    </message>
    <message>
        <source>The AC wave</source>
        <translation>Die AC-Welle</translation>
    </message>
    <message>
        <source>Before the arc, in this order</source>
        <translation>Vor dem Zünden, in dieser Folge</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Anmerkungen</translation>
    </message>
    <message>
        <source>Time runs to the right; up is electrode positive.</source>
        <translation>Zeit läuft nach rechts; oben ist Elektrode positiv.</translation>
    </message>
    <message>
        <source>{weak} of {all} figures have no published source behind them and say so: common practice or memory. Try them on scrap first.</source>
        <translation>{weak} von {all} Werten haben keine veröffentlichte Quelle hinter sich und sagen das: gängige Praxis oder aus dem Gedächtnis. Erst an Abfallstücken probieren.</translation>
    </message>
</context>
<context>
    <name>CautionBar</name>
    <message>
        <source>STOP. Tick each of these before you strike an arc.</source>
        <translation>HALT. Jeden Punkt abhaken, bevor der Lichtbogen gezündet wird.</translation>
    </message>
    <message>
        <source>Done / seen</source>
        <translation>Erledigt / gesehen</translation>
    </message>
    <message>
        <source>Done or seen: {text}</source>
        <translation>Erledigt oder gesehen: {text}</translation>
    </message>
</context>
<context>
    <name>CautionFold</name>
    <message>
        <source>In full</source>
        <translation>Vollständig</translation>
    </message>
    <message>
        <source>{name} in full</source>
        <translation>{name} vollständig</translation>
    </message>
</context>
<context>
    <name>CautionStrip</name>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>In full</source>
        <translation>Vollständig</translation>
    </message>
    <message>
        <source>Cautions in full</source>
        <translation>Warnhinweise vollständig</translation>
    </message>
    <message>
        <source>STOP: {text}</source>
        <translation>HALT: {text}</translation>
    </message>
    <message>
        <source>Take care: {first}</source>
        <translation>VORSICHT: {first}</translation>
    </message>
</context>
<context>
    <name>ColumnHeader</name>
    <message>
        <source>base</source>
        <translation>Basis</translation>
    </message>
    <message>
        <source>no card</source>
        <translation>keine Karte</translation>
    </message>
</context>
<context>
    <name>CompareOutput</name>
    <message>
        <source>Save the comparison</source>
        <translation>Vergleich speichern</translation>
    </message>
    <message>
        <source>The comparison is on the clipboard as text.</source>
        <translation>Der Vergleich liegt als Text in der Zwischenablage.</translation>
    </message>
    <message>
        <source>Save this column&apos;s card</source>
        <translation>Karte dieser Spalte speichern</translation>
    </message>
    <message>
        <source>Save the picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>Save the wall chart</source>
        <translation>Wandtafel speichern</translation>
    </message>
    <message>
        <source>The file was not written</source>
        <translation>Die Datei wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>{name}: its ending has to be one of {allowed}.</source>
        <translation>{name}: erlaubte Endungen sind {allowed}.</translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation>Gespeichert als {path}.</translation>
    </message>
    <message>
        <source>The page is on its way to the printer.</source>
        <translation>Die Seite ist auf dem Weg zum Drucker.</translation>
    </message>
</context>
<context>
    <name>ComparePresenter</name>
    <message>
        <source>Eight columns are on show; remove one first.</source>
        <translation>Acht Spalten sind zu sehen; erst eine entfernen.</translation>
    </message>
</context>
<context>
    <name>CompareView</name>
    <message>
        <source>Show as</source>
        <translation>Zeigen als</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Current over thickness</source>
        <translation>Strom über Dicke</translation>
    </message>
    <message>
        <source>AC waves</source>
        <translation>AC-Wellen</translation>
    </message>
    <message>
        <source>Save this &amp;view…</source>
        <translation>Ansi&amp;cht speichern…</translation>
    </message>
    <message>
        <source>&amp;Wall chart…</source>
        <translation>&amp;Wandtafel…</translation>
    </message>
    <message>
        <source>Thickness down, joint across, for the base&apos;s metal and process</source>
        <translation>Dicke nach unten, Stoß quer, für Metall und Verfahren der Basis</translation>
    </message>
    <message>
        <source>Your machine and shelf</source>
        <translation>Eigenes Gerät und Regal</translation>
    </message>
    <message>
        <source>Machine (*.yaml *.yml)</source>
        <translation>Schweißgerät (*.yaml *.yml)</translation>
    </message>
    <message>
        <source>Fold {count} equal rows</source>
        <translation>Gleiche Zeilen einklappen: {count}</translation>
    </message>
    <message>
        <source>Show {count} equal rows</source>
        <translation>Gleiche Zeilen zeigen: {count}</translation>
    </message>
</context>
<context>
    <name>ComparisonModel</name>
    <message>
        <source>the base</source>
        <translation>die Basis</translation>
    </message>
    <message>
        <source>the same as the base</source>
        <translation>wie die Basis</translation>
    </message>
    <message>
        <source>more than the base: {change}</source>
        <translation>mehr als die Basis: {change}</translation>
    </message>
    <message>
        <source>less than the base: {change}</source>
        <translation>weniger als die Basis: {change}</translation>
    </message>
    <message>
        <source>other than the base: {change}</source>
        <translation>anders als die Basis: {change}</translation>
    </message>
    <message>
        <source>not used here, {change}</source>
        <translation>hier nicht verwendet, {change}</translation>
    </message>
</context>
<context>
    <name>ComparisonTable</name>
    <message>
        <source>Settings side by side</source>
        <translation>Einstellungen nebeneinander</translation>
    </message>
</context>
<context>
    <name>CurvePage</name>
    <message>
        <source>Point at the picture, or use the arrow keys in it, to read values.</source>
        <translation>Ins Bild zeigen oder darin die Pfeiltasten benutzen, um Werte abzulesen.</translation>
    </message>
    <message>
        <source>&amp;Show everything</source>
        <translation>All&amp;es zeigen</translation>
    </message>
    <message>
        <source>&amp;Around the base</source>
        <translation>&amp;Um die Basis</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Schweißstrom</translation>
    </message>
    <message>
        <source>no answer in the tables at this thickness</source>
        <translation>keine Antwort in den Tabellen bei dieser Dicke</translation>
    </message>
    <message>
        <source>Current over thickness, a band for each column</source>
        <translation>Strom über Dicke, ein Band je Spalte</translation>
    </message>
</context>
<context>
    <name>DetailPanel</name>
    <message>
        <source>The weld in hand</source>
        <translation>Die gewählte Schweißung</translation>
    </message>
    <message>
        <source>see it in full</source>
        <translation>ganz ansehen</translation>
    </message>
    <message>
        <source>No weld in hand.</source>
        <translation>Keine Schweißung gewählt.</translation>
    </message>
    <message>
        <source>Faults: {faults}</source>
        <translation>Fehler: {faults}</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>Ä&amp;ndern…</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>Entfe&amp;rnen</translation>
    </message>
    <message>
        <source>Procedure &amp;sheet…</source>
        <translation>&amp;Schweißanweisung…</translation>
    </message>
    <message>
        <source>To the set-&amp;up page</source>
        <translation>Z&amp;ur Einstellung</translation>
    </message>
</context>
<context>
    <name>EditTab</name>
    <message>
        <source>All of the job</source>
        <translation>Ganzer Auftrag</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>Hin&amp;zufügen</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Take it &amp;out</source>
        <translation>Hera&amp;usnehmen</translation>
    </message>
    <message>
        <source>Values</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source> (not saved)</source>
        <translation> (nicht gespeichert)</translation>
    </message>
</context>
<context>
    <name>Entering</name>
    <message>
        <source>Kept as a draft; the page of the log has it.</source>
        <translation>Als Entwurf behalten; er steht auf der Seite Schweißbuch.</translation>
    </message>
    <message>
        <source>The weld waits on this computer</source>
        <translation>Die Schweißung wartet auf diesem Rechner</translation>
    </message>
    <message>
        <source>Changed number {number}: {metal}, {figure}{outcome}.</source>
        <translation>Nummer {number} geändert: {metal}, {figure}{outcome}.</translation>
    </message>
    <message>
        <source>Logged as number {number}: {metal}, {figure}{outcome}.</source>
        <translation>Eingetragen als Nummer {number}: {metal}, {figure}{outcome}.</translation>
    </message>
</context>
<context>
    <name>EntryDialog</name>
    <message>
        <source>Change a logged weld</source>
        <translation>Eingetragene Schweißung ändern</translation>
    </message>
    <message>
        <source>Log a weld</source>
        <translation>Schweißung eintragen</translation>
    </message>
    <message>
        <source>What was welded</source>
        <translation>Was geschweißt wurde</translation>
    </message>
    <message>
        <source>&amp;Process</source>
        <translation>&amp;Verfahren</translation>
    </message>
    <message>
        <source>Process</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>&amp;Metal</source>
        <translation>&amp;Metall</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>&amp;Dicke</translation>
    </message>
    <message>
        <source>Other metal</source>
        <translation>Anderes Metall</translation>
    </message>
    <message>
        <source>Other piece</source>
        <translation>Anderes Teil</translation>
    </message>
    <message>
        <source>as thick</source>
        <translation>gleich dick</translation>
    </message>
    <message>
        <source>&amp;Joint</source>
        <translation>&amp;Stoß</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Stoß</translation>
    </message>
    <message>
        <source>Po&amp;sition</source>
        <translation>Posi&amp;tion</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>&amp;Gap</source>
        <translation>S&amp;palt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>&amp;Hand</source>
        <translation>Ha&amp;nd</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Hand</translation>
    </message>
    <message>
        <source>Wh&amp;en</source>
        <translation>&amp;Wann</translation>
    </message>
    <message>
        <source>Wh&amp;o</source>
        <translation>W&amp;er</translation>
    </message>
    <message>
        <source>M&amp;achine</source>
        <translation>Schweiß&amp;gerät</translation>
    </message>
    <message>
        <source>Material &amp;lot</source>
        <translation>Ch&amp;arge</translation>
    </message>
    <message>
        <source>What was set (correct what you changed)</source>
        <translation>Was eingestellt war (Geändertes berichtigen)</translation>
    </message>
    <message>
        <source>What came of it</source>
        <translation>Was dabei herauskam</translation>
    </message>
    <message>
        <source>Faults, where there are any</source>
        <translation>Fehler, falls vorhanden</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Anmerkungen</translation>
    </message>
    <message>
        <source>&amp;Notes on the bead</source>
        <translation>Anmerkungen zur &amp;Raupe</translation>
    </message>
    <message>
        <source>take it off this weld</source>
        <translation>von dieser Schweißung entfernen</translation>
    </message>
    <message>
        <source>Add p&amp;ictures…</source>
        <translation>&amp;Bilder hinzufügen…</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Keep for later</source>
        <translation>Für später behalten</translation>
    </message>
    <message>
        <source>How did it come out? One click logs it:</source>
        <translation>Wie ist es geworden? Ein Klick trägt es ein:</translation>
    </message>
    <message>
        <source>Worked &amp;well</source>
        <translation>Gut gel&amp;ungen</translation>
    </message>
    <message>
        <source>Wor&amp;ked</source>
        <translation>Ge&amp;lungen</translation>
    </message>
    <message>
        <source>&amp;Failed</source>
        <translation>M&amp;isslungen</translation>
    </message>
    <message>
        <source>Log it: {words}</source>
        <translation>Eintragen: {words}</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>Pictures of this weld</source>
        <translation>Bilder dieser Schweißung</translation>
    </message>
    <message>
        <source>Pictures ({kinds})</source>
        <translation>Bilder ({kinds})</translation>
    </message>
</context>
<context>
    <name>EntryForm</name>
    <message>
        <source>short, such as left-mudguard</source>
        <translation>kurz, etwa schutzblech-links</translation>
    </message>
    <message>
        <source>Short name</source>
        <translation>Kurzname</translation>
    </message>
</context>
<context>
    <name>EntryModel</name>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Process</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metall</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Stoß</translation>
    </message>
    <message>
        <source>Pos.</source>
        <translation>Pos.</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Schweißstrom</translation>
    </message>
    <message>
        <source>Came out</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Schweißgerät</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Anmerkungen</translation>
    </message>
</context>
<context>
    <name>EntryTable</name>
    <message>
        <source>Logged welds</source>
        <translation>Eingetragene Schweißungen</translation>
    </message>
</context>
<context>
    <name>FaultDialog</name>
    <message>
        <source>What went wrong</source>
        <translation>Was ging schief</translation>
    </message>
    <message>
        <source>What the bead looks like</source>
        <translation>Wie die Raupe aussieht</translation>
    </message>
    <message>
        <source>What does the bead &amp;look like?</source>
        <translation>Wie sieht die Raupe &amp;aus?</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>For {title}. Change one thing at a time, on scrap. A crack in anything that carries load is a qualified welder&apos;s.</source>
        <translation>Für: {title}. Immer nur eines ändern, an Abfallstücken. Ein Riss in etwas, das Last trägt, ist Sache eines geprüften Schweißers.</translation>
    </message>
    <message>
        <source>No imperfection of the standard: a trouble at the bench.</source>
        <translation>Keine Unregelmäßigkeit der Norm: eine Störung an der Werkbank.</translation>
    </message>
    <message>
        <source>Let the card take this change</source>
        <translation>Diese Änderung in die Karte übernehmen</translation>
    </message>
    <message>
        <source>Let the card take this change: {change}</source>
        <translation>Diese Änderung in die Karte übernehmen: {change}</translation>
    </message>
</context>
<context>
    <name>FaultPicker</name>
    <message>
        <source>Faults</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Another fault by ISO 6520-1</source>
        <translation>Anderer Fehler nach ISO 6520-1</translation>
    </message>
    <message>
        <source>Another, by ISO 6520-1…</source>
        <translation>Anderer, nach ISO 6520-1…</translation>
    </message>
</context>
<context>
    <name>FigureSheet</name>
    <message>
        <source>Figures</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source>kept: {value}</source>
        <translation>gemerkt: {value}</translation>
    </message>
</context>
<context>
    <name>FigureTile</name>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Why {label}</source>
        <translation>Warum: {label}</translation>
    </message>
</context>
<context>
    <name>FilterBar</name>
    <message>
        <source>search: bait tank 5052</source>
        <translation>suchen: Ködertank 5052</translation>
    </message>
    <message>
        <source>Search the log</source>
        <translation>Schweißbuch durchsuchen</translation>
    </message>
    <message>
        <source>Nearest to the card</source>
        <translation>Nahe der Karte</translation>
    </message>
    <message>
        <source>Kept filters</source>
        <translation>Gemerkte Filter</translation>
    </message>
    <message>
        <source>More filters</source>
        <translation>Mehr Filter</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Alle zeigen</translation>
    </message>
    <message>
        <source>Process</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Stoß</translation>
    </message>
    <message>
        <source>Came out</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Keep this filter…</source>
        <translation>Diesen Filter merken…</translation>
    </message>
    <message>
        <source>Forget a filter…</source>
        <translation>Filter löschen…</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metall</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>Fault</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Thickness from</source>
        <translation>Dicke von</translation>
    </message>
    <message>
        <source>Thickness to</source>
        <translation>Dicke bis</translation>
    </message>
    <message>
        <source>Current from (A)</source>
        <translation>Strom von (A)</translation>
    </message>
    <message>
        <source>Current to (A)</source>
        <translation>Strom bis (A)</translation>
    </message>
    <message>
        <source>Since (2026-03-01)</source>
        <translation>Seit (2026-03-01)</translation>
    </message>
    <message>
        <source>Until (2026-04-30)</source>
        <translation>Bis (2026-04-30)</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Schweißgerät</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Material lot</source>
        <translation>Werkstoffcharge</translation>
    </message>
    <message>
        <source>with pictures</source>
        <translation>mit Bildern</translation>
    </message>
    <message>
        <source>without pictures</source>
        <translation>ohne Bilder</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <source>{words}: any</source>
        <translation>{words}: alle</translation>
    </message>
</context>
<context>
    <name>FindDialog</name>
    <message>
        <source>Go to</source>
        <translation>Gehe zu</translation>
    </message>
    <message>
        <source>A joint, a page, a command or a fault</source>
        <translation>Ein Stoß, eine Seite, ein Befehl oder ein Fehler</translation>
    </message>
    <message>
        <source>5052 corner 0.080, bench, undercut</source>
        <translation>5052 corner 0.080, Werkbank, Einbrandkerbe</translation>
    </message>
    <message>
        <source>What answers it</source>
        <translation>Was dazu passt</translation>
    </message>
    <message>
        <source>Nothing goes by that name.</source>
        <translation>Nichts heißt so.</translation>
    </message>
</context>
<context>
    <name>Finder</name>
    <message>
        <source>Recent</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>Befehl</translation>
    </message>
    <message>
        <source>Fault</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metall</translation>
    </message>
    <message>
        <source>Set up</source>
        <translation>Einstellen</translation>
    </message>
    <message>
        <source>to {other}</source>
        <translation>an {other}</translation>
    </message>
</context>
<context>
    <name>FormPanel</name>
    <message>
        <source>not stated</source>
        <translation>keine Angabe</translation>
    </message>
</context>
<context>
    <name>HeatOutput</name>
    <message>
        <source>Save the picture or its numbers</source>
        <translation>Bild oder seine Zahlen speichern</translation>
    </message>
    <message>
        <source>Save the preview as PDF</source>
        <translation>Vorschau als PDF speichern</translation>
    </message>
    <message>
        <source>The page is on its way to the printer.</source>
        <translation>Die Seite ist auf dem Weg zum Drucker.</translation>
    </message>
    <message>
        <source>The figures are on the clipboard as text.</source>
        <translation>Die Werte liegen als Text in der Zwischenablage.</translation>
    </message>
    <message>
        <source>Conduction only, give or take its error: to think with, not a procedure.</source>
        <translation>Nur Wärmeleitung, samt ihrem Fehler: zum Nachdenken, keine Schweißanweisung.</translation>
    </message>
    <message>
        <source>The file was not written</source>
        <translation>Die Datei wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>{name}: its ending has to be one of {allowed}.</source>
        <translation>{name}: erlaubte Endungen sind {allowed}.</translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation>Gespeichert als {path}.</translation>
    </message>
</context>
<context>
    <name>HeatPresenter</name>
    <message>
        <source>to {metal}</source>
        <translation>an {metal}</translation>
    </message>
    <message>
        <source>There is no card yet: finish the request on the set-up page.</source>
        <translation>Noch keine Karte: erst die Angaben auf der Seite Einstellung vervollständigen.</translation>
    </message>
    <message>
        <source>A plug weld does not travel, and this picture is of a seam. Choose another joint on the set-up page, or set the plug up by hole and time as the card says.</source>
        <translation>Eine Lochnaht wandert nicht, und dieses Bild gilt für eine fortlaufende Naht. Auf der Seite Einstellung einen anderen Stoß wählen oder die Lochnaht nach Loch und Zeit einstellen, wie die Karte sagt.</translation>
    </message>
    <message>
        <source>This card states no travel speed, and without one there is no picture.</source>
        <translation>Diese Karte nennt keine Schweißgeschwindigkeit, und ohne sie gibt es kein Bild.</translation>
    </message>
</context>
<context>
    <name>HeatView</name>
    <message>
        <source>Back to the c&amp;ard</source>
        <translation>&amp;Zurück zur Karte</translation>
    </message>
    <message>
        <source>Save &amp;picture or numbers…</source>
        <translation>&amp;Bild oder Zahlen speichern…</translation>
    </message>
    <message>
        <source>What this &amp;rests on…</source>
        <translation>W&amp;orauf das beruht…</translation>
    </message>
    <message>
        <source>From cold to burning through</source>
        <translation>Von kalt bis Durchbrand</translation>
    </message>
    <message>
        <source>The joint cut across</source>
        <translation>Der Stoß im Querschnitt</translation>
    </message>
    <message>
        <source>The pool from above</source>
        <translation>Das Schmelzbad von oben</translation>
    </message>
    <message>
        <source>seen from above; ring: the arc&apos;s spot</source>
        <translation>von oben; Ring: Brennfleck</translation>
    </message>
    <message>
        <source>C&amp;urrent</source>
        <translation>&amp;Schweißstrom</translation>
    </message>
    <message>
        <source>&amp;Travel speed</source>
        <translation>Schweiß&amp;geschw.</translation>
    </message>
    <message>
        <source>Arc vo&amp;ltage</source>
        <translation>Bogens&amp;pannung</translation>
    </message>
    <message>
        <source>Thick&amp;ness</source>
        <translation>&amp;Dicke</translation>
    </message>
    <message>
        <source>&amp;Metal starts at</source>
        <translation>Start&amp;temperatur</translation>
    </message>
    <message>
        <source>AC &amp;frequency</source>
        <translation>AC-&amp;Frequenz</translation>
    </message>
    <message>
        <source>&amp;Electrode negative</source>
        <translation>&amp;Elektrode negativ</translation>
    </message>
    <message>
        <source>trend</source>
        <translation>Tendenz</translation>
    </message>
    <message>
        <source>follows the current</source>
        <translation>folgt dem Strom</translation>
    </message>
    <message>
        <source>card: {band}</source>
        <translation>Karte: {band}</translation>
    </message>
    <message>
        <source>Drop the &amp;kept setting</source>
        <translation>Gemerktes &amp;verwerfen</translation>
    </message>
    <message>
        <source>&amp;Keep this one to compare</source>
        <translation>Zum &amp;Vergleich merken</translation>
    </message>
    <message>
        <source>To think with: what the picture leaves out, how far it may be off, where figures come from.</source>
        <translation>Zum Nachdenken: was das Bild weglässt, wie weit es danebenliegen kann, woher die Werte kommen.</translation>
    </message>
    <message>
        <source>What the picture rests on</source>
        <translation>Worauf das Bild beruht</translation>
    </message>
</context>
<context>
    <name>Helping</name>
    <message>
        <source>Guide</source>
        <translation>Anleitung</translation>
    </message>
    <message>
        <source>The everyday uses, step by step.</source>
        <translation>Die täglichen Handgriffe, Schritt für Schritt.</translation>
    </message>
    <message>
        <source>Every figure is a range with a start, a reason, a source and a grade.</source>
        <translation>Jeder Wert ist ein Bereich mit Startwert, Begründung, Quelle und Belegstufe.</translation>
    </message>
    <message>
        <source>How figures are made</source>
        <translation>Wie Werte entstehen</translation>
    </message>
    <message>
        <source>Everything can be reached with the keyboard.</source>
        <translation>Alles ist mit der Tastatur erreichbar.</translation>
    </message>
    <message>
        <source>Shortcuts</source>
        <translation>Tastenkürzel</translation>
    </message>
    <message>
        <source>Set-ups for TIG and MIG, with reasons and sources.</source>
        <translation>Einstellungen für WIG und MIG/MAG, mit Begründungen und Quellen.</translation>
    </message>
    <message>
        <source>About Welds</source>
        <translation>Über Welds</translation>
    </message>
</context>
<context>
    <name>HoleCanvas</name>
    <message>
        <source>Picture with holes</source>
        <translation>Bild mit Löchern</translation>
    </message>
    <message>
        <source>Arrow keys move the cross, Shift makes small steps, Space marks.</source>
        <translation>Pfeiltasten bewegen das Kreuz, mit Umschalttaste in kleinen Schritten, Leertaste markiert.</translation>
    </message>
    <message>
        <source>No picture yet</source>
        <translation>Noch kein Bild</translation>
    </message>
</context>
<context>
    <name>HolesDialog</name>
    <message>
        <source>Holes</source>
        <translation>Löcher</translation>
    </message>
    <message>
        <source>&amp;Picture…</source>
        <translation>&amp;Bild…</translation>
    </message>
    <message>
        <source>&amp;Scale: mark two points</source>
        <translation>&amp;Maßstab: zwei Punkte setzen</translation>
    </message>
    <message>
        <source>&amp;Holes: mark each, once more to take it out</source>
        <translation>&amp;Löcher: jedes markieren, nochmals zum Entfernen</translation>
    </message>
    <message>
        <source>&amp;Repair</source>
        <translation>&amp;Reparatur</translation>
    </message>
    <message>
        <source>&amp;Length between them</source>
        <translation>Län&amp;ge dazwischen</translation>
    </message>
    <message>
        <source>&amp;Diameter</source>
        <translation>&amp;Durchmesser</translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translation>Ras&amp;ter</translation>
    </message>
    <message>
        <source>The picture cannot be shown</source>
        <translation>Das Bild lässt sich nicht zeigen</translation>
    </message>
    <message>
        <source>The drawing cannot be read</source>
        <translation>Die Zeichnung ist nicht lesbar</translation>
    </message>
    <message>
        <source>Pictures ({kinds})</source>
        <translation>Bilder ({kinds})</translation>
    </message>
    <message>
        <source>A picture of the holes, taken square on</source>
        <translation>Ein Bild der Löcher, gerade von vorn</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>grid</source>
        <translation>Raster</translation>
    </message>
    <message>
        <source>{holes}
within {size}, rim to rim</source>
        <translation>{holes}
innerhalb {size}, Rand zu Rand</translation>
    </message>
    <message>
        <source>Choose a picture taken square on, with a ruler in it.</source>
        <translation>Ein gerade von vorn aufgenommenes Bild mit einem Lineal darin wählen.</translation>
    </message>
    <message>
        <source>Mark both ends of a length that you know.</source>
        <translation>Beide Enden einer bekannten Länge markieren.</translation>
    </message>
    <message>
        <source>Now mark the holes.</source>
        <translation>Jetzt die Löcher markieren.</translation>
    </message>
    <message>
        <source>The holes were not written</source>
        <translation>Die Löcher wurden nicht geschrieben</translation>
    </message>
</context>
<context>
    <name>ImportModel</name>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Weld</source>
        <translation>Schweißung</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>known</source>
        <translation>bekannt</translation>
    </message>
    <message>
        <source>bad</source>
        <translation>fehlerhaft</translation>
    </message>
</context>
<context>
    <name>ImportView</name>
    <message>
        <source>Rows of the file</source>
        <translation>Zeilen der Datei</translation>
    </message>
    <message>
        <source>Leave it, write nothing</source>
        <translation>Lassen, nichts schreiben</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>Noch ist nichts geschrieben.</translation>
    </message>
    <message>
        <source>{name}: {new} new, {known} known already, {bad} bad.</source>
        <translation>{name}: {new} neu, {known} schon bekannt, {bad} fehlerhaft.</translation>
    </message>
    <message>
        <source>Put the bad rows right in the file first: it is all or nothing.</source>
        <translation>Erst die fehlerhaften Zeilen in der Datei berichtigen: es gilt alles oder nichts.</translation>
    </message>
    <message>
        <source>Write {count} new welds</source>
        <translation>Neue Schweißungen eintragen: {count}</translation>
    </message>
</context>
<context>
    <name>JobOutput</name>
    <message>
        <source>Sent to the printer: {count} pages.</source>
        <translation>Zum Drucker geschickt, Seiten: {count}.</translation>
    </message>
    <message>
        <source>Save the packet</source>
        <translation>Mappe speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The packet was not written</source>
        <translation>Die Mappe wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation>Gespeichert als {path}.</translation>
    </message>
    <message>
        <source>The plan is on the clipboard.</source>
        <translation>Der Plan liegt in der Zwischenablage.</translation>
    </message>
</context>
<context>
    <name>JobPresenter</name>
    <message>
        <source>There is a {key} already: choose another short name.</source>
        <translation>Gibt es schon: {key}. Anderen Kurznamen wählen.</translation>
    </message>
    <message>
        <source>The file was changed by another program since; nothing was taken back.</source>
        <translation>Ein anderes Programm hat die Datei inzwischen geändert; nichts wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>The demo is not changed: keep a copy of it first.</source>
        <translation>Die Demo wird nicht geändert: erst eine Kopie davon anlegen.</translation>
    </message>
</context>
<context>
    <name>JobView</name>
    <message>
        <source>&amp;New job…</source>
        <translation>&amp;Neuer Auftrag…</translation>
    </message>
    <message>
        <source>&amp;Open a job file…</source>
        <translation>Auftrag ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open the &amp;demo (invented)</source>
        <translation>&amp;Demo öffnen (erfunden)</translation>
    </message>
    <message>
        <source>&amp;Read it again</source>
        <translation>Neu &amp;einlesen</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Take the last change of this file back (Ctrl+Z)</source>
        <translation>Letzte Änderung dieser Datei zurücknehmen (Strg+Z)</translation>
    </message>
    <message>
        <source>&amp;Keep a copy…</source>
        <translation>Kopie an&amp;legen…</translation>
    </message>
    <message>
        <source>&amp;Packet as PDF…</source>
        <translation>Mappe als &amp;PDF…</translation>
    </message>
    <message>
        <source>The job</source>
        <translation>Der Auftrag</translation>
    </message>
    <message>
        <source>Parts of the job</source>
        <translation>Teile des Auftrags</translation>
    </message>
    <message>
        <source>No job is open. Begin a new one, or open the demo to see what a job can hold.</source>
        <translation>Kein Auftrag ist offen. Einen neuen beginnen oder die Demo öffnen, um zu sehen, was ein Auftrag enthalten kann.</translation>
    </message>
    <message>
        <source>{name} has faults:</source>
        <translation>Fehler in {name}:</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>{name}: {done} of {all} tasks done, for {machine}</source>
        <translation>{name}: {done} von {all} Aufgaben erledigt, für {machine}</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Bearbeiten</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>What waits</source>
        <translation>Was wartet</translation>
    </message>
    <message>
        <source>Repairs</source>
        <translation>Reparaturen</translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation>Zuschnittliste</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Bleche</translation>
    </message>
    <message>
        <source>Blanks</source>
        <translation>Zuschnitte</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Karten</translation>
    </message>
    <message>
        <source>Tacks</source>
        <translation>Heftstellen</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Werkstoffe</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>&amp;Test bend…</source>
        <translation>Probe&amp;biegung…</translation>
    </message>
    <message>
        <source>PDF at full size (*.pdf);;DXF for a cutter (*.dxf);;SVG (*.svg)</source>
        <translation>PDF in Originalgröße (*.pdf);;DXF für Schneidanlage (*.dxf);;SVG (*.svg)</translation>
    </message>
    <message>
        <source>Save the drawing</source>
        <translation>Zeichnung speichern</translation>
    </message>
    <message>
        <source>The drawing was not written</source>
        <translation>Die Zeichnung wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation>Gespeichert als {path}.</translation>
    </message>
    <message>
        <source>{key} and what was typed for it goes out of the job file.</source>
        <translation>{key} und alles dazu Eingetippte wird aus der Auftragsdatei entfernt.</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Begin a job</source>
        <translation>Auftrag beginnen</translation>
    </message>
    <message>
        <source>Open a job</source>
        <translation>Auftrag öffnen</translation>
    </message>
    <message>
        <source>Keep a copy</source>
        <translation>Kopie anlegen</translation>
    </message>
    <message>
        <source>Job files (*.yaml *.yml)</source>
        <translation>Auftragsdateien (*.yaml *.yml)</translation>
    </message>
    <message>
        <source>Nothing was written</source>
        <translation>Nichts wurde geschrieben</translation>
    </message>
    <message>
        <source>Planning…</source>
        <translation>Wird geplant…</translation>
    </message>
</context>
<context>
    <name>KnobRow</name>
    <message>
        <source>Only the direction is known: no document puts a number on it</source>
        <translation>Nur die Richtung ist bekannt: kein Dokument gibt eine Zahl dafür</translation>
    </message>
</context>
<context>
    <name>LargeFigures</name>
    <message>
        <source>Large figures</source>
        <translation>Große Zahlen</translation>
    </message>
    <message>
        <source>Escape goes back.  {notice}</source>
        <translation>Esc führt zurück.  {notice}</translation>
    </message>
    <message>
        <source>OLD CARD: it belongs to the request before this one.</source>
        <translation>ALTE KARTE: sie gehört zu den Angaben vor diesen.</translation>
    </message>
    <message>
        <source>STOP: {cautions}</source>
        <translation>HALT: {cautions}</translation>
    </message>
</context>
<context>
    <name>ListTab</name>
    <message>
        <source>What there is to say</source>
        <translation>Was zu sagen ist</translation>
    </message>
    <message>
        <source>&amp;Save the drawing…</source>
        <translation>&amp;Zeichnung speichern…</translation>
    </message>
</context>
<context>
    <name>LogFiles</name>
    <message>
        <source>Export the log</source>
        <translation>Schweißbuch exportieren</translation>
    </message>
    <message>
        <source>CSV (*.csv);;JSON (*.json)</source>
        <translation>CSV (*.csv);;JSON (*.json)</translation>
    </message>
    <message>
        <source>{count} welds written to {file}.</source>
        <translation>Geschriebene Schweißungen: {count}, in {file}.</translation>
    </message>
    <message>
        <source>The log was not exported</source>
        <translation>Das Schweißbuch wurde nicht exportiert</translation>
    </message>
    <message>
        <source>Back up the log</source>
        <translation>Schweißbuch sichern</translation>
    </message>
    <message>
        <source>Backup of a log (*.zip)</source>
        <translation>Sicherung eines Schweißbuchs (*.zip)</translation>
    </message>
    <message>
        <source>{count} welds with their pictures are backed up in {file}.</source>
        <translation>Schweißungen samt Bildern gesichert: {count}, in {file}.</translation>
    </message>
    <message>
        <source>The backup was not made</source>
        <translation>Die Sicherung wurde nicht gemacht</translation>
    </message>
    <message>
        <source>Import welds</source>
        <translation>Schweißungen importieren</translation>
    </message>
    <message>
        <source>Exported welds (*.csv *.json);;All files (*)</source>
        <translation>Exportierte Schweißungen (*.csv *.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The file was not read</source>
        <translation>Die Datei wurde nicht gelesen</translation>
    </message>
    <message>
        <source>{count} welds imported from {name}.</source>
        <translation>Aus {name} importierte Schweißungen: {count}.</translation>
    </message>
    <message>
        <source>Nothing was imported</source>
        <translation>Nichts wurde importiert</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>Backups (*.zip *.db);;All files (*)</source>
        <translation>Sicherungen (*.zip *.db);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The log becomes what {name} holds. The log as it is now is not deleted: it is put aside under another name, beside the new one.</source>
        <translation>Das Schweißbuch wird zu dem, was {name} enthält. Das jetzige Schweißbuch wird nicht gelöscht: es wird unter anderem Namen neben dem neuen abgelegt.</translation>
    </message>
    <message>
        <source>Restore the log</source>
        <translation>Schweißbuch wiederherstellen</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Restored: {count} welds.</source>
        <translation>Wiederhergestellte Schweißungen: {count}.</translation>
    </message>
    <message>
        <source>The log that was there is now {name}.</source>
        <translation>Das bisherige Schweißbuch heißt jetzt {name}.</translation>
    </message>
    <message>
        <source>The backup was not restored</source>
        <translation>Die Sicherung wurde nicht wiederhergestellt</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Nochmals versuchen</translation>
    </message>
    <message>
        <source>Open to read only</source>
        <translation>Nur zum Lesen öffnen</translation>
    </message>
    <message>
        <source>Restore {name}</source>
        <translation>{name} wiederherstellen</translation>
    </message>
    <message>
        <source>Restore a backup…</source>
        <translation>Sicherung wiederherstellen…</translation>
    </message>
    <message>
        <source>Use another log…</source>
        <translation>Anderes Schweißbuch…</translation>
    </message>
    <message>
        <source>Bring it up to date</source>
        <translation>Auf den neuen Stand bringen</translation>
    </message>
    <message>
        <source>Use another log</source>
        <translation>Anderes Schweißbuch benutzen</translation>
    </message>
    <message>
        <source>Logs (*.db);;All files (*)</source>
        <translation>Schweißbücher (*.db);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Use a log on a server</source>
        <translation>Schweißbuch auf einem Server benutzen</translation>
    </message>
    <message>
        <source>Its address: postgresql+psycopg://USER@HOST/DATABASE
The password is better kept in the password file ~/.pgpass than written here.</source>
        <translation>Seine Adresse: postgresql+psycopg://USER@HOST/DATABASE
Das Passwort steht besser in der Passwortdatei ~/.pgpass als hier.</translation>
    </message>
    <message>
        <source>Not an address of a log</source>
        <translation>Keine Adresse eines Schweißbuchs</translation>
    </message>
    <message>
        <source>This address holds a password: it is used now and not remembered.</source>
        <translation>Diese Adresse enthält ein Passwort: sie wird jetzt benutzt und nicht gemerkt.</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Angehalten. Nichts wurde geschrieben.</translation>
    </message>
</context>
<context>
    <name>LogOutput</name>
    <message>
        <source>The procedure sheet is on its way to the printer.</source>
        <translation>Die Schweißanweisung ist auf dem Weg zum Drucker.</translation>
    </message>
    <message>
        <source>Preliminary procedure sheet</source>
        <translation>Vorläufige Schweißanweisung</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The sheet was not written</source>
        <translation>Das Blatt wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation>Gespeichert als {path}.</translation>
    </message>
    <message>
        <source>The procedure sheet is on the clipboard as text.</source>
        <translation>Die Schweißanweisung liegt als Text in der Zwischenablage.</translation>
    </message>
</context>
<context>
    <name>LogParts</name>
    <message>
        <source>Log this weld</source>
        <translation>Schweißung eintragen</translation>
    </message>
</context>
<context>
    <name>LogPresenter</name>
    <message>
        <source>Filter kept: {name}</source>
        <translation>Filter gemerkt: {name}</translation>
    </message>
    <message>
        <source>Filter forgotten: {name}</source>
        <translation>Filter gelöscht: {name}</translation>
    </message>
    <message>
        <source>The weld was not removed</source>
        <translation>Die Schweißung wurde nicht entfernt</translation>
    </message>
    <message>
        <source>Removed: {what}</source>
        <translation>Entfernt: {what}</translation>
    </message>
    <message>
        <source>It was not taken back</source>
        <translation>Es wurde nicht zurückgenommen</translation>
    </message>
    <message>
        <source>Done again.</source>
        <translation>Wiederholt.</translation>
    </message>
    <message>
        <source>Taken back.</source>
        <translation>Zurückgenommen.</translation>
    </message>
    <message>
        <source>The filter was not changed</source>
        <translation>Der Filter wurde nicht geändert</translation>
    </message>
</context>
<context>
    <name>LogView</name>
    <message>
        <source>&amp;Log a weld…</source>
        <translation>Schweißung &amp;eintragen…</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Importieren…</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>E&amp;xportieren…</translation>
    </message>
    <message>
        <source>&amp;Back up…</source>
        <translation>Si&amp;chern…</translation>
    </message>
    <message>
        <source>Res&amp;tore…</source>
        <translation>&amp;Wiederherstellen…</translation>
    </message>
    <message>
        <source>Which lo&amp;g</source>
        <translation>Welches &amp;Buch</translation>
    </message>
    <message>
        <source>Use another log…</source>
        <translation>Anderes Schweißbuch…</translation>
    </message>
    <message>
        <source>Use a log on a server…</source>
        <translation>Schweißbuch auf Server…</translation>
    </message>
    <message>
        <source>Use my own log</source>
        <translation>Eigenes Schweißbuch</translation>
    </message>
    <message>
        <source>{count} welds nearest to the card, nearest first</source>
        <translation>Schweißungen nahe der Karte: {count}, nächste zuerst</translation>
    </message>
    <message>
        <source>counting…</source>
        <translation>wird gezählt…</translation>
    </message>
    <message>
        <source>{count} welds fit</source>
        <translation>Passende Schweißungen: {count}</translation>
    </message>
    <message>
        <source>{count} welds</source>
        <translation>Schweißungen: {count}</translation>
    </message>
    <message>
        <source> in {log}</source>
        <translation> in {log}</translation>
    </message>
    <message>
        <source>No logged weld comes near the card on the set-up page.</source>
        <translation>Keine eingetragene Schweißung kommt der Karte auf der Seite Einstellung nahe.</translation>
    </message>
    <message>
        <source>No logged weld fits. “Show all” takes the filter away.</source>
        <translation>Keine eingetragene Schweißung passt. „Alle zeigen“ nimmt den Filter weg.</translation>
    </message>
    <message>
        <source>Nothing is logged yet. After a weld, “Log this weld” on the set-up page writes down what was set and what came of it; the next card for a like joint learns from it.</source>
        <translation>Noch ist nichts eingetragen. Nach dem Schweißen schreibt „Schweißung eintragen“ auf der Seite Einstellung auf, was eingestellt war und was dabei herauskam; die nächste Karte für einen ähnlichen Stoß lernt daraus.</translation>
    </message>
    <message>
        <source>Keep this filter</source>
        <translation>Diesen Filter merken</translation>
    </message>
    <message>
        <source>A name for it:</source>
        <translation>Ein Name dafür:</translation>
    </message>
    <message>
        <source>Forget a filter</source>
        <translation>Filter löschen</translation>
    </message>
    <message>
        <source>Which one?</source>
        <translation>Welcher?</translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>Welds</source>
        <translation>Welds</translation>
    </message>
    <message>
        <source>This is a mistake in the program, not yours. Your request is kept and the window stays open. Please copy the text below into a report.</source>
        <translation>Das ist ein Fehler im Programm, nicht beim Benutzer. Die Angaben bleiben erhalten, das Fenster bleibt offen. Bitte den Text unten in eine Meldung kopieren.</translation>
    </message>
    <message>
        <source>Something went wrong in the program</source>
        <translation>Im Programm ging etwas schief</translation>
    </message>
    <message>
        <source>Getting the tables ready…</source>
        <translation>Tabellen werden vorbereitet…</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Schweißbuch</translation>
    </message>
    <message>
        <source>Weld preview</source>
        <translation>Nahtvorschau</translation>
    </message>
    <message>
        <source>a mistake in the program</source>
        <translation>ein Fehler im Programm</translation>
    </message>
    <message>
        <source>The tables cannot be used:

{reason}</source>
        <translation>Die Tabellen sind nicht benutzbar:

{reason}</translation>
    </message>
    <message>
        <source>inch</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>metric</source>
        <translation>metrisch</translation>
    </message>
</context>
<context>
    <name>MetalPicker</name>
    <message>
        <source>type a number or a name: 5052, 304, galvanised</source>
        <translation>Nummer oder Namen eingeben: 5052, 304, galvanised</translation>
    </message>
    <message>
        <source>{name}: show the list</source>
        <translation>{name}: Liste zeigen</translation>
    </message>
</context>
<context>
    <name>Notices</name>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>The log is being brought up to date, {done} of {total} steps…</source>
        <translation>Das Schweißbuch wird auf den neuen Stand gebracht, Schritt {done} von {total}…</translation>
    </message>
    <message>
        <source>Reading the file, {done} of about {total} rows…</source>
        <translation>Datei wird gelesen, {done} von etwa {total} Zeilen…</translation>
    </message>
    <message>
        <source>Writing the file, {done} of {total} welds…</source>
        <translation>Datei wird geschrieben, {done} von {total} Schweißungen…</translation>
    </message>
    <message>
        <source>Reading the backup, {done} of {total} welds…</source>
        <translation>Sicherung wird gelesen, {done} von {total} Schweißungen…</translation>
    </message>
    <message>
        <source>Writing the welds, {done} of {total}…</source>
        <translation>Schweißungen werden geschrieben, {done} von {total}…</translation>
    </message>
    <message>
        <source>This log was opened to read only: nothing can be written.</source>
        <translation>Dieses Schweißbuch ist nur zum Lesen geöffnet: nichts kann geschrieben werden.</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Verstanden</translation>
    </message>
    <message>
        <source>Do it again</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Begun and not logged: {what}.</source>
        <translation>Begonnen und nicht eingetragen: {what}.</translation>
    </message>
    <message>
        <source>Begun and not logged: {what} and {count} more.</source>
        <translation>Begonnen und nicht eingetragen: {what} und {count} weitere.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Wird angehalten…</translation>
    </message>
</context>
<context>
    <name>OptionWords</name>
    <message>
        <source>TIG</source>
        <translation>WIG</translation>
    </message>
    <message>
        <source>MIG</source>
        <translation>MIG/MAG</translation>
    </message>
    <message>
        <source>Butt</source>
        <translation>Stumpfstoß</translation>
    </message>
    <message>
        <source>Tee</source>
        <translation>T-Stoß</translation>
    </message>
    <message>
        <source>Lap</source>
        <translation>Überlappstoß</translation>
    </message>
    <message>
        <source>Outside corner</source>
        <translation>Außenecke</translation>
    </message>
    <message>
        <source>Inside corner</source>
        <translation>Innenecke</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Stirnstoß</translation>
    </message>
    <message>
        <source>Plug</source>
        <translation>Lochnaht</translation>
    </message>
    <message>
        <source>Galvanised</source>
        <translation>Verzinkt</translation>
    </message>
    <message>
        <source>Zinc plate</source>
        <translation>Galv. verzinkt</translation>
    </message>
    <message>
        <source>Zinc primer</source>
        <translation>Zinkgrundierung</translation>
    </message>
    <message>
        <source>Cadmium</source>
        <translation>Cadmium</translation>
    </message>
    <message>
        <source>Chrome</source>
        <translation>Chrom</translation>
    </message>
    <message>
        <source>Paint</source>
        <translation>Anstrich</translation>
    </message>
    <message>
        <source>Old paint</source>
        <translation>Alter Anstrich</translation>
    </message>
    <message>
        <source>Powder coat</source>
        <translation>Pulverlack</translation>
    </message>
    <message>
        <source>Sealer</source>
        <translation>Dichtmasse</translation>
    </message>
    <message>
        <source>Oil, grease</source>
        <translation>Öl, Fett</translation>
    </message>
    <message>
        <source>Anodised</source>
        <translation>Eloxiert</translation>
    </message>
    <message>
        <source>Mill scale</source>
        <translation>Walzzunder</translation>
    </message>
    <message>
        <source>Rust</source>
        <translation>Rost</translation>
    </message>
    <message>
        <source>Not sure</source>
        <translation>Unklar</translation>
    </message>
    <message>
        <source>Nothing, or water</source>
        <translation>Nichts oder Wasser</translation>
    </message>
    <message>
        <source>Acetone</source>
        <translation>Aceton</translation>
    </message>
    <message>
        <source>Alcohol</source>
        <translation>Alkohol</translation>
    </message>
    <message>
        <source>Chlorinated cleaner</source>
        <translation>Chlorhaltiger Reiniger</translation>
    </message>
    <message>
        <source>A spray, contents unknown</source>
        <translation>Spray, Inhalt unbekannt</translation>
    </message>
    <message>
        <source>Loose sheet or test piece</source>
        <translation>Loses Blech oder Probestück</translation>
    </message>
    <message>
        <source>Bracket or cover</source>
        <translation>Halter oder Abdeckung</translation>
    </message>
    <message>
        <source>On a vehicle or boat</source>
        <translation>An Fahrzeug oder Boot</translation>
    </message>
    <message>
        <source>Tube or closed section</source>
        <translation>Rohr oder Hohlprofil</translation>
    </message>
    <message>
        <source>Tank or drum</source>
        <translation>Tank oder Fass</translation>
    </message>
    <message>
        <source>Holds pressure</source>
        <translation>Druckführendes Teil</translation>
    </message>
    <message>
        <source>Steering or suspension</source>
        <translation>Lenkung oder Fahrwerk</translation>
    </message>
    <message>
        <source>Towing part</source>
        <translation>Zugvorrichtung</translation>
    </message>
    <message>
        <source>Lifting part</source>
        <translation>Teil zum Heben</translation>
    </message>
    <message>
        <source>Roll-over structure</source>
        <translation>Überrollschutz</translation>
    </message>
    <message>
        <source>Sealed item, shock absorber</source>
        <translation>Verschlossenes Teil, Stoßdämpfer</translation>
    </message>
    <message>
        <source>Indoors</source>
        <translation>Innen</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation>Im Freien</translation>
    </message>
    <message>
        <source>Cramped, closed</source>
        <translation>Eng, geschlossen</translation>
    </message>
    <message>
        <source>Unhurried</source>
        <translation>Ruhig</translation>
    </message>
    <message>
        <source>Brisk</source>
        <translation>Zügig</translation>
    </message>
    <message>
        <source>General work</source>
        <translation>Allgemeine Arbeit</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Festigkeit</translation>
    </message>
    <message>
        <source>Bends without cracking</source>
        <translation>Biegt sich ohne Riss</translation>
    </message>
    <message>
        <source>Least hot cracking</source>
        <translation>Wenigste Heißrisse</translation>
    </message>
    <message>
        <source>Colour after anodising</source>
        <translation>Farbe nach dem Eloxieren</translation>
    </message>
    <message>
        <source>Warm in service</source>
        <translation>Warm im Betrieb</translation>
    </message>
    <message>
        <source>Salt water</source>
        <translation>Salzwasser</translation>
    </message>
    <message>
        <source>PA  flat</source>
        <translation>PA  Wannenlage</translation>
    </message>
    <message>
        <source>PB  fillet, one leg upright</source>
        <translation>PB  Kehlnaht, ein Schenkel senkrecht</translation>
    </message>
    <message>
        <source>PC  along a wall</source>
        <translation>PC  quer an der Wand</translation>
    </message>
    <message>
        <source>PF  upwards</source>
        <translation>PF  steigend</translation>
    </message>
    <message>
        <source>PG  downwards</source>
        <translation>PG  fallend</translation>
    </message>
    <message>
        <source>PE  overhead</source>
        <translation>PE  Überkopf</translation>
    </message>
    <message>
        <source>PD  overhead fillet</source>
        <translation>PD  Kehlnaht Überkopf</translation>
    </message>
    <message>
        <source>Let the card choose</source>
        <translation>Karte wählen lassen</translation>
    </message>
    <message>
        <source>Short circuit</source>
        <translation>Kurzlichtbogen</translation>
    </message>
    <message>
        <source>Globular</source>
        <translation>Übergangslichtbogen</translation>
    </message>
    <message>
        <source>Spray</source>
        <translation>Sprühlichtbogen</translation>
    </message>
    <message>
        <source>Pulsed</source>
        <translation>Impulslichtbogen</translation>
    </message>
    <message>
        <source>{mm} mm ({inch} in)</source>
        <translation>{mm} mm ({inch} in)</translation>
    </message>
</context>
<context>
    <name>PageSwitch</name>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
</context>
<context>
    <name>PairList</name>
    <message>
        <source>Nothing ticked: nothing is ruled out.</source>
        <translation>Nichts angekreuzt: nichts ist ausgeschlossen.</translation>
    </message>
</context>
<context>
    <name>PastStrip</name>
    <message>
        <source>From your log</source>
        <translation>Aus dem Schweißbuch</translation>
    </message>
    <message>
        <source>Learn from my welds</source>
        <translation>Aus meinen Schweißungen lernen</translation>
    </message>
    <message>
        <source>Untick it to see the tables&apos; own figures.</source>
        <translation>Häkchen entfernen, um die reinen Tabellenwerte zu sehen.</translation>
    </message>
    <message>
        <source>More…</source>
        <translation>Mehr…</translation>
    </message>
    <message>
        <source>The welds nearest to this card in the log</source>
        <translation>Die dieser Karte nächsten Schweißungen im Schweißbuch</translation>
    </message>
    <message>
        <source>Nearest welds in your log</source>
        <translation>Nächste Schweißungen im Schweißbuch</translation>
    </message>
    <message>
        <source>Current, learned</source>
        <translation>Strom, gelernt</translation>
    </message>
    <message>
        <source>None near this joint.</source>
        <translation>Keine nahe diesem Stoß.</translation>
    </message>
    <message>
        <source>Off: the card shows the tables&apos; own figures.</source>
        <translation>Aus: die Karte zeigt die reinen Tabellenwerte.</translation>
    </message>
    <message>
        <source>No past weld says anything about this current yet.</source>
        <translation>Noch sagt keine frühere Schweißung etwas über diesen Strom.</translation>
    </message>
</context>
<context>
    <name>PictureRow</name>
    <message>
        <source>Picture {name}</source>
        <translation>Bild {name}</translation>
    </message>
    <message>
        <source>This picture cannot be shown: its file is gone, or of a kind that cannot be drawn.</source>
        <translation>Dieses Bild lässt sich nicht zeigen: seine Datei fehlt oder ist von einer Art, die sich nicht darstellen lässt.</translation>
    </message>
</context>
<context>
    <name>QuantityEdit</name>
    <message>
        <source>{name}: {reading}</source>
        <translation>{name}: {reading}</translation>
    </message>
</context>
<context>
    <name>ReasonList</name>
    <message>
        <source>Reasons for {label}</source>
        <translation>Gründe: {label}</translation>
    </message>
    <message>
        <source>Grade: {grade}, {meaning}.</source>
        <translation>Belegstufe: {grade}, {meaning}.</translation>
    </message>
    <message>
        <source>Also from:</source>
        <translation>Auch aus:</translation>
    </message>
    <message>
        <source>Instead:</source>
        <translation>Stattdessen:</translation>
    </message>
    <message>
        <source>Too little, or wrong: {looks}</source>
        <translation>Zu wenig oder falsch: {looks}</translation>
    </message>
    <message>
        <source>Too much: {looks}</source>
        <translation>Zu viel: {looks}</translation>
    </message>
    <message>
        <source>What it does (shop practice): {words}</source>
        <translation>Was es bewirkt (Werkstattpraxis): {words}</translation>
    </message>
</context>
<context>
    <name>RepairsTab</name>
    <message>
        <source>Repairs</source>
        <translation>Reparaturen</translation>
    </message>
    <message>
        <source>&amp;Holes on a photo…</source>
        <translation>Lö&amp;cher im Foto…</translation>
    </message>
    <message>
        <source>&amp;Change its values</source>
        <translation>&amp;Werte ändern</translation>
    </message>
</context>
<context>
    <name>RequestPanel</name>
    <message>
        <source>Let the card choose</source>
        <translation>Karte wählen lassen</translation>
    </message>
    <message>
        <source>Which one is meant?</source>
        <translation>Welches ist gemeint?</translation>
    </message>
    <message>
        <source>Process</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metall</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>0.080 in, 14 ga, 2 mm</source>
        <translation>0.080 in, 14 ga, 2 mm</translation>
    </message>
    <message>
        <source>Thickness slider</source>
        <translation>Schieber für die Dicke</translation>
    </message>
    <message>
        <source>The other piece is different</source>
        <translation>Das andere Teil ist anders</translation>
    </message>
    <message>
        <source>&amp;Process</source>
        <translation>&amp;Verfahren</translation>
    </message>
    <message>
        <source>&amp;Metal</source>
        <translation>&amp;Metall</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>&amp;Dicke</translation>
    </message>
    <message>
        <source>Other metal</source>
        <translation>Anderes Metall</translation>
    </message>
    <message>
        <source>same metal</source>
        <translation>gleiches Metall</translation>
    </message>
    <message>
        <source>Other thickness</source>
        <translation>Andere Dicke</translation>
    </message>
    <message>
        <source>same thickness</source>
        <translation>gleiche Dicke</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Stoß</translation>
    </message>
    <message>
        <source>&amp;Joint, cut across</source>
        <translation>&amp;Stoß, im Querschnitt</translation>
    </message>
    <message>
        <source>On the metal</source>
        <translation>Auf dem Metall</translation>
    </message>
    <message>
        <source>&amp;On the metal (tick all that may be there, inside too)</source>
        <translation>Au&amp;f dem Metall (alles ankreuzen, was da sein kann, auch innen)</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Bauteil</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Wiped with</source>
        <translation>Abgewischt mit</translation>
    </message>
    <message>
        <source>P&amp;art</source>
        <translation>&amp;Bauteil</translation>
    </message>
    <message>
        <source>P&amp;lace</source>
        <translation>&amp;Ort</translation>
    </message>
    <message>
        <source>&amp;Wiped with</source>
        <translation>Abge&amp;wischt mit</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>Your hand</source>
        <translation>Eigene Hand</translation>
    </message>
    <message>
        <source>Po&amp;sition</source>
        <translation>Posi&amp;tion</translation>
    </message>
    <message>
        <source>Your ha&amp;nd</source>
        <translation>Eige&amp;ne Hand</translation>
    </message>
    <message>
        <source>More: filler goal, gap, length, machine</source>
        <translation>Mehr: Zusatzziel, Spalt, Länge, Gerät</translation>
    </message>
    <message>
        <source>Filler goal</source>
        <translation>Ziel beim Zusatz</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Spalt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>Weld length</source>
        <translation>Nahtlänge</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>Gas on the machine</source>
        <translation>Gas am Gerät</translation>
    </message>
    <message>
        <source>Wire on the machine</source>
        <translation>Draht am Gerät</translation>
    </message>
    <message>
        <source>Transfer</source>
        <translation>Lichtbogenart</translation>
    </message>
    <message>
        <source>Filler &amp;goal</source>
        <translation>Zi&amp;el beim Zusatz</translation>
    </message>
    <message>
        <source>Gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Draht</translation>
    </message>
</context>
<context>
    <name>SettingGrid</name>
    <message>
        <source>Add a setting</source>
        <translation>Einstellwert hinzufügen</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>nicht notiert</translation>
    </message>
    <message>
        <source>Add a setting…</source>
        <translation>Einstellwert hinzufügen…</translation>
    </message>
</context>
<context>
    <name>SettingRow</name>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Why {label}</source>
        <translation>Warum: {label}</translation>
    </message>
</context>
<context>
    <name>SetupView</name>
    <message>
        <source>Go to {nearest}</source>
        <translation>Gehe zu: {nearest}</translation>
    </message>
    <message>
        <source>Use {nearest}</source>
        <translation>Nehmen: {nearest}</translation>
    </message>
    <message>
        <source>The {field} can be read in more than one way: {readings}.</source>
        <translation>Mehrdeutig: {field}, lesbar als {readings}.</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
</context>
<context>
    <name>ShelfPanel</name>
    <message>
        <source>not stated</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
</context>
<context>
    <name>TestBendDialog</name>
    <message>
        <source>Test bend</source>
        <translation>Probebiegung</translation>
    </message>
    <message>
        <source>a name for it, such as yard brake</source>
        <translation>ein Name dafür, etwa Abkantbank Hof</translation>
    </message>
    <message>
        <source>Cut a strip of {sheet}, measure it, bend it once, measure both legs outside.</source>
        <translation>Streifen abschneiden ({sheet}), messen, einmal biegen, beide Schenkel außen messen.</translation>
    </message>
    <message>
        <source>&amp;Brake</source>
        <translation>Abkant&amp;bank</translation>
    </message>
    <message>
        <source>Strip, &amp;flat</source>
        <translation>Streifen, &amp;flach</translation>
    </message>
    <message>
        <source>&amp;One leg, outside</source>
        <translation>&amp;Ein Schenkel, außen</translation>
    </message>
    <message>
        <source>Othe&amp;r leg, outside</source>
        <translation>Ande&amp;rer Schenkel, außen</translation>
    </message>
    <message>
        <source>&amp;Angle turned through</source>
        <translation>Gebogen um &amp;Winkel</translation>
    </message>
    <message>
        <source>&amp;Inside radius</source>
        <translation>&amp;Innenradius</translation>
    </message>
    <message>
        <source>The K follows from all of these.</source>
        <translation>Der K-Faktor folgt aus all diesem.</translation>
    </message>
    <message>
        <source>The test bend was not kept</source>
        <translation>Die Probebiegung wurde nicht behalten</translation>
    </message>
</context>
<context>
    <name>TextDialog</name>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
</context>
<context>
    <name>Vary</name>
    <message>
        <source>Joints</source>
        <translation>Stöße</translation>
    </message>
    <message>
        <source>Thicknesses</source>
        <translation>Dicken</translation>
    </message>
    <message>
        <source>TIG and MIG</source>
        <translation>WIG und MIG/MAG</translation>
    </message>
    <message>
        <source>Metals</source>
        <translation>Metalle</translation>
    </message>
    <message>
        <source>Positions</source>
        <translation>Positionen</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Tables and log</source>
        <translation>Tabellen und Buch</translation>
    </message>
    <message>
        <source>Tables and log (no weld speaks)</source>
        <translation>Tabellen und Buch (keine passende Schweißung)</translation>
    </message>
    <message>
        <source>Tables alone</source>
        <translation>Nur Tabellen</translation>
    </message>
</context>
<context>
    <name>VaryBar</name>
    <message>
        <source>What varies</source>
        <translation>Was variiert</translation>
    </message>
    <message>
        <source>Keep columns</source>
        <translation>Spalten behalten</translation>
    </message>
    <message>
        <source>Thickness of the base</source>
        <translation>Dicke der Basis</translation>
    </message>
    <message>
        <source>What &amp;varies</source>
        <translation>Was &amp;variiert</translation>
    </message>
    <message>
        <source>&amp;Base thickness</source>
        <translation>&amp;Dicke der Basis</translation>
    </message>
    <message>
        <source>Column for {words}</source>
        <translation>Spalte für {words}</translation>
    </message>
    <message>
        <source>another: 2.5 mm, 1/8</source>
        <translation>andere: 2.5 mm, 1/8</translation>
    </message>
    <message>
        <source>Add a thickness</source>
        <translation>Dicke hinzufügen</translation>
    </message>
    <message>
        <source>Add a metal</source>
        <translation>Metall hinzufügen</translation>
    </message>
    <message>
        <source>Add a &amp;machine from its file…</source>
        <translation>&amp;Gerät aus Datei…</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>Hin&amp;zufügen</translation>
    </message>
    <message>
        <source>Add this column</source>
        <translation>Diese Spalte hinzufügen</translation>
    </message>
</context>
<context>
    <name>WavePage</name>
    <message>
        <source>None of the columns uses AC.</source>
        <translation>Keine der Spalten arbeitet mit AC.</translation>
    </message>
    <message>
        <source>milliseconds; electrode positive above the line, negative below</source>
        <translation>Millisekunden; Elektrode positiv über der Linie, negativ darunter</translation>
    </message>
    <message>
        <source>wider arc</source>
        <translation>breiterer Bogen</translation>
    </message>
    <message>
        <source>narrower arc</source>
        <translation>schmalerer Bogen</translation>
    </message>
    <message>
        <source>A trend: no published figure ties the arc&apos;s width to hertz.</source>
        <translation>Eine Tendenz: kein veröffentlichter Wert knüpft die Lichtbogenbreite an Hertz.</translation>
    </message>
</context>
<context>
    <name>WelcomeDialog</name>
    <message>
        <source>Before the first weld</source>
        <translation>Vor der ersten Schweißung</translation>
    </message>
    <message>
        <source>mm, L/min</source>
        <translation>mm, L/min</translation>
    </message>
    <message>
        <source>inch, cfh</source>
        <translation>Zoll, cfh</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Which units do you &amp;read?</source>
        <translation>In welchen &amp;Einheiten lesen?</translation>
    </message>
    <message>
        <source>Which machines stand at your &amp;bench? (none: no card is limited)</source>
        <translation>Welche Geräte stehen an der Werk&amp;bank? (keins: keine Karte wird begrenzt)</translation>
    </message>
    <message>
        <source>The page Bench has all of it, and your shelf; the page Job has the demo job, invented.</source>
        <translation>Die Seite Werkbank hat alles davon und das Regal; die Seite Auftrag hat den Demo-Auftrag, erfunden.</translation>
    </message>
    <message>
        <source>Be&amp;gin</source>
        <translation>Be&amp;ginnen</translation>
    </message>
    <message>
        <source>Begin with the &amp;demo job</source>
        <translation>Mit &amp;Demo-Auftrag beginnen</translation>
    </message>
</context>
<context>
    <name>WhyPanel</name>
    <message>
        <source>Why the settings differ</source>
        <translation>Warum die Einstellungen abweichen</translation>
    </message>
    <message>
        <source>Why: {label}</source>
        <translation>Warum: {label}</translation>
    </message>
    <message>
        <source>The same in all columns.</source>
        <translation>In allen Spalten gleich.</translation>
    </message>
    <message>
        <source>&amp;Hold others against it</source>
        <translation>Zur &amp;Basis machen</translation>
    </message>
    <message>
        <source>Move the column left</source>
        <translation>Spalte nach links rücken</translation>
    </message>
    <message>
        <source>Move the column right</source>
        <translation>Spalte nach rechts rücken</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>Entfe&amp;rnen</translation>
    </message>
    <message>
        <source>&amp;Open on the set-up page</source>
        <translation>In Ein&amp;stellung öffnen</translation>
    </message>
    <message>
        <source>Lo&amp;g it…</source>
        <translation>E&amp;intragen…</translation>
    </message>
    <message>
        <source>Pr&amp;int its card…</source>
        <translation>Kar&amp;te drucken…</translation>
    </message>
    <message>
        <source>Its card as PD&amp;F…</source>
        <translation>Karte als PD&amp;F…</translation>
    </message>
</context>
<context>
    <name>presenter</name>
    <message>
        <source>AC waves of all columns</source>
        <translation>AC-Wellen aller Spalten</translation>
    </message>
</context>
</TS>
