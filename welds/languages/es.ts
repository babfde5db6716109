<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name></name>
    <message>
        <source>{fault} seen: {remedy}</source>
        <translation>defecto visto ({fault}): {remedy}</translation>
    </message>
    <message>
        <source>Advice, not a procedure: local codes, the equipment&apos;s and the vehicle&apos;s own manuals and your own test pieces come first. Anything whose failure can hurt someone belongs to a qualified welder.</source>
        <translation>Consejo, no procedimiento: van primero las normas locales, los manuales propios del equipo y del vehículo y las probetas propias. Todo aquello cuyo fallo pueda herir a alguien es asunto de un soldador cualificado.</translation>
    </message>
    <message>
        <source>other thickness</source>
        <translation>otro espesor</translation>
    </message>
    <message>
        <source>above 0 to 1000 m</source>
        <translation>más de 0 hasta 1000 m</translation>
    </message>
    <message>
        <source>{joints}; plug with mig</source>
        <translation>{joints}; plug con mig</translation>
    </message>
    <message>
        <source>plug with mig</source>
        <translation>plug con mig</translation>
    </message>
    <message>
        <source>plug with tig</source>
        <translation>plug con tig</translation>
    </message>
    <message>
        <source>{thin} on {thick}</source>
        <translation>{thin} sobre {thick}</translation>
    </message>
    <message>
        <source>the thin edge melts away before the thick piece does (more than {ratio:g} to 1); thin the thick edge down or fasten another way</source>
        <translation>el borde fino se derrite antes que la pieza gruesa (más de {ratio:g} a 1); rebajar el borde grueso o unir de otra manera</translation>
    </message>
    <message>
        <source>{first} to {other}</source>
        <translation>{first} con {other}</translation>
    </message>
    <message>
        <source>bench file</source>
        <translation>archivo del taller</translation>
    </message>
    <message>
        <source>tungsten</source>
        <translation>tungsteno</translation>
    </message>
    <message>
        <source>{diameter:g} mm tungsten stands {high:.0f} A</source>
        <translation>el tungsteno de {diameter:g} mm aguanta {high:.0f} A</translation>
    </message>
    <message>
        <source>, less than the {wanted:.0f} A wanted: get a thicker one</source>
        <translation>, menos que los {wanted:.0f} A necesarios: conseguir uno más grueso</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>separación</translation>
    </message>
    <message>
        <source>gap {gap:.1f} mm; up to {widest:.1f} mm bridges without help</source>
        <translation>separación {gap:.1f} mm; hasta {widest:.1f} mm se puentea sin ayuda</translation>
    </message>
    <message>
        <source>: close it, or back it with copper and start at the low end</source>
        <translation>: cerrarla, o respaldar con cobre y empezar por el extremo bajo</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>escala</translation>
    </message>
    <message>
        <source>any machine</source>
        <translation>cualquier máquina</translation>
    </message>
    <message>
        <source>the tables hold no gas for it</source>
        <translation>las tablas no tienen gas para ello</translation>
    </message>
    <message>
        <source>{gases} for {asked}</source>
        <translation>{gases} para {asked}</translation>
    </message>
    <message>
        <source>the gas on the machine</source>
        <translation>el gas de la máquina</translation>
    </message>
    <message>
        <source>{name} is not on the shelf; this one suits too</source>
        <translation>{name}: no está en el estante; este también sirve</translation>
    </message>
    <message>
        <source>the usual gas for this metal and process</source>
        <translation>el gas habitual para este metal y proceso</translation>
    </message>
    <message>
        <source>{process} on {metal}</source>
        <translation>{process} sobre {metal}</translation>
    </message>
    <message>
        <source>, {transfer} transfer</source>
        <translation>, transferencia: {transfer}</translation>
    </message>
    <message>
        <source>too few rows print a wire feed</source>
        <translation>muy pocas filas indican una velocidad de hilo</translation>
    </message>
    <message>
        <source>AC frequency: a higher one narrows the arc; no document puts a number on it</source>
        <translation>frecuencia CA: una más alta estrecha el arco; ningún documento le pone un número</translation>
    </message>
    <message>
        <source>AC balance: more electrode negative heats the work more; the size is not published</source>
        <translation>balance CA: más electrodo negativo calienta más la pieza; la magnitud no está publicada</translation>
    </message>
    <message>
        <source>backing bar: it draws heat off, how much depends on the clamping</source>
        <translation>pletina de respaldo: se lleva calor; cuánto depende de la sujeción</translation>
    </message>
    <message>
        <source>corner and edge: the bare edge melts away sooner than the model, which sees a sheet, says</source>
        <translation>esquina y canto: el borde libre se derrite antes de lo que dice el modelo, que ve una chapa</translation>
    </message>
    <message>
        <source>plug</source>
        <translation>tapón</translation>
    </message>
    <message>
        <source>a plug weld does not travel, and the heat picture is of a seam</source>
        <translation>una soldadura de tapón no avanza, y la imagen térmica es de una costura</translation>
    </message>
    <message>
        <source>lap</source>
        <translation>a solape</translation>
    </message>
    <message>
        <source>current</source>
        <translation>corriente</translation>
    </message>
    <message>
        <source>travel</source>
        <translation>avance</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tensión</translation>
    </message>
    <message>
        <source>preheat</source>
        <translation>precalentamiento</translation>
    </message>
    <message>
        <source>frequency</source>
        <translation>frecuencia</translation>
    </message>
    <message>
        <source>electrode negative</source>
        <translation>electrodo negativo</translation>
    </message>
    <message>
        <source>only with TIG on aluminium or magnesium, which runs on AC</source>
        <translation>solo con TIG en aluminio o magnesio, que va en CA</translation>
    </message>
    <message>
        <source>heat picture</source>
        <translation>imagen térmica</translation>
    </message>
    <message>
        <source>The heat picture disagrees: at {travel:.1f} mm/s it has the tables&apos; {low:.0f} to {high:.0f} A stay cold, and expects {least:.0f} to {most:.0f} A. Both are shown; try it on scrap.</source>
        <translation>La imagen térmica discrepa: a {travel:.1f} mm/s, con los {low:.0f} a {high:.0f} A de las tablas queda frío, y espera {least:.0f} a {most:.0f} A. Se muestran ambos; probar en recortes.</translation>
    </message>
    <message>
        <source>The heat picture disagrees: at {travel:.1f} mm/s it has the tables&apos; {low:.0f} to {high:.0f} A fall through, and expects {least:.0f} to {most:.0f} A. Both are shown; try it on scrap.</source>
        <translation>La imagen térmica discrepa: a {travel:.1f} mm/s, con los {low:.0f} a {high:.0f} A de las tablas el baño se cae, y espera {least:.0f} a {most:.0f} A. Se muestran ambos; probar en recortes.</translation>
    </message>
    <message>
        <source>{polarity} under {gas} gas</source>
        <translation>{polarity} bajo gas {gas}</translation>
    </message>
    <message>
        <source>AC under argon, fitted to sheet schedules; published 22 to 48 %</source>
        <translation>CA bajo argón, ajustado a tablas de parámetros de chapa; publicado 22 a 48 %</translation>
    </message>
    <message>
        <source>; its change with balance is a trend only</source>
        <translation>; su variación con el balance es solo una tendencia</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>seguro</translation>
    </message>
    <message>
        <source>fairly sure</source>
        <translation>bastante seguro</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>probable</translation>
    </message>
    <message>
        <source>no more than a hint</source>
        <translation>no más que un indicio</translation>
    </message>
    <message>
        <source>1 past weld</source>
        <translation>1 soldadura anterior</translation>
    </message>
    <message>
        <source>{welds} past welds</source>
        <translation>{welds} soldaduras anteriores</translation>
    </message>
    <message>
        <source>your log: {welds}, {alike} on this kind of joint ({sureness}; nine in ten that it lies between {low:.2f} and {high:.2f} times the tables)</source>
        <translation>registro propio: {welds}, {alike} en este tipo de unión ({sureness}; nueve de diez a que está entre {low:.2f} y {high:.2f} veces las tablas)</translation>
    </message>
    <message>
        <source>a like weld burned through at what would be {burnt:.0f} A here: stay below</source>
        <translation>una soldadura parecida perforó a lo que aquí serían {burnt:.0f} A: quedar por debajo</translation>
    </message>
    <message>
        <source>a like weld stayed cold at what would be {cold:.0f} A here: stay above</source>
        <translation>una soldadura parecida quedó fría a lo que aquí serían {cold:.0f} A: quedar por encima</translation>
    </message>
    <message>
        <source>the thickest tungsten on hand</source>
        <translation>el tungsteno más grueso disponible</translation>
    </message>
    <message>
        <source>snapped to {start:g} {unit}: {ways}</source>
        <translation>llevado al punto más próximo, {start:g} {unit}: {ways}</translation>
    </message>
    <message>
        <source>clipped: {name} has {lowest:g} {unit} and no other</source>
        <translation>limitado: {name} tiene {lowest:g} {unit} y nada más</translation>
    </message>
    <message>
        <source>clipped: {name} stops at {highest:g} {unit}</source>
        <translation>limitado: {name} llega hasta {highest:g} {unit}</translation>
    </message>
    <message>
        <source>clipped: {name} starts at {lowest:g} {unit}</source>
        <translation>limitado: {name} empieza en {lowest:g} {unit}</translation>
    </message>
    <message>
        <source>{name} goes in steps of {step:g} {unit}</source>
        <translation>{name} va en pasos de {step:g} {unit}</translation>
    </message>
    <message>
        <source>{name} has {number} positions from {lowest:g} to {highest:g} {unit}</source>
        <translation>{name} tiene {number} posiciones de {lowest:g} a {highest:g} {unit}</translation>
    </message>
    <message>
        <source>{name} has {positions} {unit} only</source>
        <translation>{name} tiene solo {positions} {unit}</translation>
    </message>
    <message>
        <source>; the range is {low} to {high}</source>
        <translation>; el margen es {low} a {high}</translation>
    </message>
    <message>
        <source>set {reading}{span}</source>
        <translation>poner {reading}{span}</translation>
    </message>
    <message>
        <source>{read} on this machine&apos;s {scale}</source>
        <translation>{read} en la escala de esta máquina: {scale}</translation>
    </message>
    <message>
        <source>tig; gtaw</source>
        <translation>tig; gtaw</translation>
    </message>
    <message>
        <source>mig; gmaw; mag</source>
        <translation>mig; gmaw; mag; mig/mag</translation>
    </message>
    <message>
        <source>butt</source>
        <translation>a tope</translation>
    </message>
    <message>
        <source>tee; t; t joint; fillet</source>
        <translation>en t; t; unión en t; union en t; te; en ángulo; en angulo; ángulo; angulo</translation>
    </message>
    <message>
        <source>outside corner; corner</source>
        <translation>esquina exterior; esquina</translation>
    </message>
    <message>
        <source>inside corner</source>
        <translation>esquina interior</translation>
    </message>
    <message>
        <source>edge</source>
        <translation>canto</translation>
    </message>
    <message>
        <source>indoors</source>
        <translation>interior</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>exterior</translation>
    </message>
    <message>
        <source>enclosed</source>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>unhurried</source>
        <translation>pausada</translation>
    </message>
    <message>
        <source>brisk</source>
        <translation>rápida</translation>
    </message>
    <message>
        <source>low-carbon; mild; mild steel</source>
        <translation>bajo en carbono; acero al carbono; acero dulce; acero suave</translation>
    </message>
    <message>
        <source>galvanised; galvanized</source>
        <translation>galvanizado; acero galvanizado; chapa galvanizada</translation>
    </message>
    <message>
        <source>structural; hot-rolled</source>
        <translation>estructural; acero estructural; laminado en caliente</translation>
    </message>
    <message>
        <source>weathering</source>
        <translation>corten; acero corten; acero patinable</translation>
    </message>
    <message>
        <source>copper</source>
        <translation>cobre</translation>
    </message>
    <message>
        <source>titanium</source>
        <translation>titanio</translation>
    </message>
    <message>
        <source>magnesium</source>
        <translation>magnesio</translation>
    </message>
    <message>
        <source>silicon bronze</source>
        <translation>bronce al silicio</translation>
    </message>
    <message>
        <source>flat; downhand</source>
        <translation>plana; plano; posición plana; posicion plana</translation>
    </message>
    <message>
        <source>overhead; upside down</source>
        <translation>bajo techo; techo; sobrecabeza; sobre cabeza</translation>
    </message>
    <message>
        <source>vertical up; uphill; upward</source>
        <translation>vertical ascendente; ascendente; hacia arriba</translation>
    </message>
    <message>
        <source>vertical down; downhill; downward</source>
        <translation>vertical descendente; descendente; hacia abajo</translation>
    </message>
    <message>
        <source>plug in {metal}, top sheet {top}</source>
        <translation>tapón en {metal}, chapa superior {top}</translation>
    </message>
    <message>
        <source>the rows cover {thinnest} to {thickest}</source>
        <translation>las filas cubren de {thinnest} a {thickest}</translation>
    </message>
    <message>
        <source>duty cycle</source>
        <translation>factor de marcha</translation>
    </message>
    <message>
        <source>the plate of {name} says nothing above {top:g} A</source>
        <translation>la placa de características de {name} no dice nada por encima de {top:g} A</translation>
    </message>
    <message>
        <source>{minutes:.1f} minutes of arc in ten at {amps:.0f} A</source>
        <translation>{minutes:.1f} minutos de arco de cada diez a {amps:.0f} A</translation>
    </message>
    <message>
        <source>{text}: pause {pause:.1f} minutes before it trips</source>
        <translation>{text}: pausa de {pause:.1f} minutos antes de que corte</translation>
    </message>
    <message>
        <source>{text}; this weld takes {needed:.1f}</source>
        <translation>{text}; esta soldadura necesita {needed:.1f}</translation>
    </message>
    <message>
        <source>{text}, this weld takes {needed:.1f}: it trips after {minutes:.1f}; stop before that and let it cool {pause:.1f} minutes</source>
        <translation>{text}, esta soldadura necesita {needed:.1f}: corta a los {minutes:.1f}; parar antes y dejarla enfriar {pause:.1f} minutos</translation>
    </message>
    <message>
        <source>the torch is air-cooled</source>
        <translation>la antorcha es refrigerada por aire</translation>
    </message>
    <message>
        <source>no torch stated</source>
        <translation>ninguna antorcha indicada</translation>
    </message>
    <message>
        <source>torch cooling</source>
        <translation>refrigeración de la antorcha</translation>
    </message>
    <message>
        <source>above {limit:g} A a water-cooled torch [{source}]; {torch}</source>
        <translation>por encima de {limit:g} A, antorcha refrigerada por agua [{source}]; {torch}</translation>
    </message>
    <message>
        <source>torch</source>
        <translation>antorcha</translation>
    </message>
    <message>
        <source>gun</source>
        <translation>pistola</translation>
    </message>
    <message>
        <source>{what} is rated {rated:g} A, {start:.0f} A wanted: it overheats</source>
        <translation>{what}: nominal {rated:g} A, hacen falta {start:.0f} A: se sobrecalienta</translation>
    </message>
    <message>
        <source>{what} rated {rated:g} A at {duty_percent:g} %: {duty:.1f} minutes in ten here</source>
        <translation>{what}: nominal {rated:g} A al {duty_percent:g} %: aquí {duty:.1f} minutos de cada diez</translation>
    </message>
    <message>
        <source>open circuit {volts:g} V {output}; where shock is likelier than usual {high:g} V at most</source>
        <translation>vacío {volts:g} V {output}; donde la descarga es más probable de lo normal, {high:g} V como máximo</translation>
    </message>
    <message>
        <source>open circuit</source>
        <translation>tensión en vacío</translation>
    </message>
    <message>
        <source>{text} ({grade} of the standard; {kind})</source>
        <translation>{text} ({grade} de la norma; {kind})</translation>
    </message>
    <message>
        <source>rms</source>
        <translation>eficaz</translation>
    </message>
    <message>
        <source>peak</source>
        <translation>pico</translation>
    </message>
    <message>
        <source>: not this machine in here</source>
        <translation>: no usar esta máquina aquí dentro</translation>
    </message>
    <message>
        <source>Look behind: plug only where the sheet behind is sound. Step-drill to round, take the burr off behind.</source>
        <translation>Mirar detrás: tapones solo donde la chapa de detrás esté sana. Taladrar con broca escalonada hasta dejarlo redondo, quitar la rebaba por detrás.</translation>
    </message>
    <message>
        <source>Deburr, fit tight and clamp; return clamp on bare metal beside the joint.</source>
        <translation>Desbarbar, ajustar sin holgura y sujetar; pinza de masa en metal limpio junto a la unión.</translation>
    </message>
    <message>
        <source>Back it with copper, clamped tight.</source>
        <translation>Respaldar con cobre, bien apretado.</translation>
    </message>
    <message>
        <source>Run a test bead on scrap of the same sheet.</source>
        <translation>Hacer un cordón de prueba en un recorte de la misma chapa.</translation>
    </message>
    <message>
        <source>thinner sheet, or another machine</source>
        <translation>chapa más fina, u otra máquina</translation>
    </message>
    <message>
        <source>a smaller fillet from both sides</source>
        <translation>un cordón en ángulo más pequeño por ambos lados</translation>
    </message>
    <message>
        <source>a smaller fillet</source>
        <translation>un cordón en ángulo más pequeño</translation>
    </message>
    <message>
        <source>{process} on {metal} with {machine}</source>
        <translation>{process} sobre {metal} con {machine}</translation>
    </message>
    <message>
        <source>the joint wants at least {low:.0f} A, the machine ends at {highest:g} A: it would lie cold on the surface</source>
        <translation>la unión pide al menos {low:.0f} A, la máquina acaba en {highest:g} A: quedaría frío sobre la superficie</translation>
    </message>
    <message>
        <source>the joint stands at most {high:.0f} A, the machine starts at {lowest:g} A: it would burn through</source>
        <translation>la unión aguanta como máximo {high:.0f} A, la máquina empieza en {lowest:g} A: perforaría</translation>
    </message>
    <message>
        <source>thicker sheet, or a machine that goes lower</source>
        <translation>chapa más gruesa, o una máquina que baje más</translation>
    </message>
    <message>
        <source>warm the parts, {most:g} degC at most</source>
        <translation>calentar las piezas, {most:g} °C como máximo</translation>
    </message>
    <message>
        <source>preheat within what the metal and its code allow</source>
        <translation>precalentar dentro de lo que permitan el metal y su norma</translation>
    </message>
    <message>
        <source>a gas with helium ({gas}) makes the arc hotter</source>
        <translation>un gas con helio ({gas}) hace el arco más caliente</translation>
    </message>
    <message>
        <source>bevel and take more, smaller runs</source>
        <translation>biselar y dar más pasadas, más pequeñas</translation>
    </message>
    <message>
        <source>ask for a card by {processes}: {name} is there</source>
        <translation>pedir una ficha con {processes}: hay {name}</translation>
    </message>
    <message>
        <source>use {name}</source>
        <translation>usar {name}</translation>
    </message>
    <message>
        <source>wire feed</source>
        <translation>velocidad de hilo</translation>
    </message>
    <message>
        <source>the arc will not burn as the card says: change wire diameter or current</source>
        <translation>el arco no arderá como dice la ficha: cambiar diámetro de hilo o corriente</translation>
    </message>
    <message>
        <source>expect a bead that lies wrong: choose current and wire to suit the nearest tap</source>
        <translation>es de esperar un cordón mal asentado: elegir corriente e hilo según la toma más cercana</translation>
    </message>
    <message>
        <source>watch the oxide and the tip of the tungsten</source>
        <translation>vigilar el óxido y la punta del tungsteno</translation>
    </message>
    <message>
        <source>ac frequency</source>
        <translation>frecuencia ca</translation>
    </message>
    <message>
        <source>only the width of the arc changes: hold it shorter or move a little slower</source>
        <translation>solo cambia el ancho del arco: llevarlo más corto o avanzar un poco más despacio</translation>
    </message>
    <message>
        <source>process</source>
        <translation>proceso</translation>
    </message>
    <message>
        <source>{name} does not do {process}</source>
        <translation>{name} no hace {process}</translation>
    </message>
    <message>
        <source>reach</source>
        <translation>alcance</translation>
    </message>
    <message>
        <source>no machine stated: nothing was clipped to its limits</source>
        <translation>ninguna máquina indicada: no se limitó nada a su alcance</translation>
    </message>
    <message>
        <source>the joint asks for {start:.0f} A, {name} gives {highest:g} A: {offers}</source>
        <translation>la unión pide {start:.0f} A, {name} da {highest:g} A: {offers}</translation>
    </message>
    <message>
        <source>the joint asks for {start:.0f} A, below the {lowest:g} A that {name} holds</source>
        <translation>la unión pide {start:.0f} A, por debajo de los {lowest:g} A que {name} mantiene</translation>
    </message>
    <message>
        <source>{text}: back it with copper and travel faster, or use thicker sheet</source>
        <translation>{text}: respaldar con cobre y avanzar más rápido, o usar chapa más gruesa</translation>
    </message>
    <message>
        <source>{name} reaches it</source>
        <translation>{name} lo alcanza</translation>
    </message>
    <message>
        <source>{name} has no AC; this metal needs it under argon</source>
        <translation>{name} no tiene CA; este metal la necesita bajo argón</translation>
    </message>
    <message>
        <source>helium on electrode negative is the other way</source>
        <translation>la otra vía es helio con electrodo negativo</translation>
    </message>
    <message>
        <source>current type</source>
        <translation>tipo de corriente</translation>
    </message>
    <message>
        <source>{current} is there</source>
        <translation>hay {current}</translation>
    </message>
    <message>
        <source>rolls</source>
        <translation>rodillos</translation>
    </message>
    <message>
        <source>rolls and gun take {wire:g} mm wire</source>
        <translation>rodillos y pistola admiten hilo de {wire:g} mm</translation>
    </message>
    <message>
        <source>rolls and gun of {name} take {takes} mm, not {wire:g} mm</source>
        <translation>rodillos y pistola de {name} admiten {takes} mm, no {wire:g} mm</translation>
    </message>
    <message>
        <source>no pedal: the arc has the set current from the first moment; start at the low end, break off to let the pool freeze, and fill the crater by hand</source>
        <translation>sin pedal: el arco tiene la corriente ajustada desde el primer momento; empezar por el extremo bajo, cortar para que el baño solidifique y llenar el cráter a mano</translation>
    </message>
    <message>
        <source>pedal</source>
        <translation>pedal</translation>
    </message>
    <message>
        <source>start</source>
        <translation>inicio</translation>
    </message>
    <message>
        <source>no hot start: begin on a run-on tab or wait for the pool to form</source>
        <translation>sin hot start: empezar en una chapa de arranque o esperar a que se forme el baño</translation>
    </message>
    <message>
        <source>{setting}: {low:g} to {high:g} {unit} suits the joint, {name} gives {got:g} {unit}: {cost}</source>
        <translation>{setting}: a la unión le va {low:g} a {high:g} {unit}, {name} da {got:g} {unit}: {cost}</translation>
    </message>
    <message>
        <source>from {rows} rows of 1 document</source>
        <translation>de {rows} filas de 1 documento</translation>
    </message>
    <message>
        <source>from {rows} rows of {documents} documents</source>
        <translation>de {rows} filas de {documents} documentos</translation>
    </message>
    <message>
        <source>this document by itself says {current:.0f} A</source>
        <translation>este documento por sí solo dice {current:.0f} A</translation>
    </message>
    <message>
        <source>lower frequency widens the arc, higher narrows it (a trend: no published figure ties width to hertz)</source>
        <translation>una frecuencia más baja ensancha el arco, una más alta lo estrecha (una tendencia: ninguna cifra publicada liga el ancho a los hercios)</translation>
    </message>
    <message>
        <source>thick plate: {note}</source>
        <translation>placa gruesa: {note}</translation>
    </message>
    <message>
        <source>as set, less what the leads take</source>
        <translation>según el ajuste, menos lo que se pierde en los cables</translation>
    </message>
    <message>
        <source>conventional load line 10 V + 0.04 V/A</source>
        <translation>recta de carga convencional 10 V + 0,04 V/A</translation>
    </message>
    <message>
        <source>helium adds about {volts:g} V</source>
        <translation>el helio añade unos {volts:g} V</translation>
    </message>
    <message>
        <source>not set on the machine: it follows the arc length, about one tungsten diameter</source>
        <translation>no se ajusta en la máquina: sigue la longitud de arco, más o menos un diámetro del tungsteno</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>copper bar</source>
        <translation>pletina de cobre</translation>
    </message>
    <message>
        <source>argon purge, 5 L/min</source>
        <translation>purga de argón, 5 L/min</translation>
    </message>
    <message>
        <source>stainless or copper bar, clean and dry</source>
        <translation>pletina de inoxidable o de cobre, limpia y seca</translation>
    </message>
    <message>
        <source>titanium takes up air on every hot face: purge the back and trail the bead</source>
        <translation>el titanio absorbe aire en toda cara caliente: purgar el reverso y proteger el cordón por detrás de la antorcha</translation>
    </message>
    <message>
        <source>a copper bar behind the hole holds the pool and takes the heat</source>
        <translation>una pletina de cobre detrás del agujero sostiene el baño y se lleva el calor</translation>
    </message>
    <message>
        <source>the root is closed by the other plate</source>
        <translation>la otra placa cierra la raíz</translation>
    </message>
    <message>
        <source>the root of stainless sugars in air</source>
        <translation>la raíz del inoxidable se quema al aire (azucarado)</translation>
    </message>
    <message>
        <source>thin sheet clamped tight: the bar shields most of the root</source>
        <translation>chapa fina bien sujeta: la pletina protege la mayor parte de la raíz</translation>
    </message>
    <message>
        <source>thin butt: a removable bar stops the root falling out</source>
        <translation>a tope fino: una pletina desmontable evita que se caiga la raíz</translation>
    </message>
    <message>
        <source>with a tight fit and a light pedal</source>
        <translation>con ajuste sin holgura y pedal suave</translation>
    </message>
    <message>
        <source>thick enough to carry its own root, or nothing can reach behind</source>
        <translation>bastante grueso para sostener su propia raíz, o no hay acceso por detrás</translation>
    </message>
    <message>
        <source>where the edge drops through</source>
        <translation>donde el borde se descuelga</translation>
    </message>
    <message>
        <source>; no {bar} on the shelf, so none</source>
        <translation>; en el estante no hay {bar}, así que ninguno</translation>
    </message>
    <message>
        <source>once it is there</source>
        <translation>cuando la haya</translation>
    </message>
    <message>
        <source>bore at least {least:g} tungsten diameters</source>
        <translation>diámetro interior de al menos {least:g} diámetros del tungsteno</translation>
    </message>
    <message>
        <source>{low:g} to {high:g} mm bore printed for this current</source>
        <translation>para esta corriente se publica un diámetro interior de {low:g} a {high:g} mm</translation>
    </message>
    <message>
        <source>with the lens two sizes larger: more cover, same flow</source>
        <translation>con difusor, dos tamaños más: más cobertura, mismo caudal</translation>
    </message>
    <message>
        <source>one size smaller reaches into the joint</source>
        <translation>un tamaño menor llega dentro de la unión</translation>
    </message>
    <message>
        <source>{bore:.1f} mm bore</source>
        <translation>{bore:.1f} mm de diámetro interior</translation>
    </message>
    <message>
        <source>more electrode negative melts deeper and spares the tungsten; more electrode positive lifts more oxide and rounds the tip (a trend; papers disagree on how much)</source>
        <translation>más electrodo negativo funde más hondo y cuida el tungsteno; más electrodo positivo levanta más óxido y redondea la punta (una tendencia; los trabajos publicados discrepan en cuánto)</translation>
    </message>
    <message>
        <source>cleaning fades above about {high:g} % electrode negative</source>
        <translation>la limpieza se pierde por encima de un {high:g} % de electrodo negativo</translation>
    </message>
    <message>
        <source>up to {high:g} %: {note}</source>
        <translation>hasta {high:g} %: {note}</translation>
    </message>
    <message>
        <source>rods printed for sheet of about this thickness, nearest sold size</source>
        <translation>varillas publicadas para chapa de más o menos este espesor, el tamaño comercial más cercano</translation>
    </message>
    <message>
        <source>about three quarters of the sheet</source>
        <translation>unas tres cuartas partes de la chapa</translation>
    </message>
    <message>
        <source>the shelf has no {free:g} mm {metal} rod: feed {pace}</source>
        <translation>el estante no tiene varilla de {free:g} mm para {metal}: aportar {pace}</translation>
    </message>
    <message>
        <source>a thinner one faster</source>
        <translation>una más fina, más rápido</translation>
    </message>
    <message>
        <source>a thicker one slower, it cools the pool more</source>
        <translation>una más gruesa, más despacio: enfría más el baño</translation>
    </message>
    <message>
        <source>edges of a corner can be tacked without filler but do not always fuse: keep the rod at hand</source>
        <translation>los bordes de una esquina se pueden puntear sin aporte, pero no siempre se funden: tener la varilla a mano</translation>
    </message>
    <message>
        <source>{chosen} is not on the shelf, nor is a second choice: buy it</source>
        <translation>{chosen}: no está en el estante, tampoco una segunda opción: comprar</translation>
    </message>
    <message>
        <source>{chosen} is not on the shelf; {swap} will do, but: {cost}</source>
        <translation>{chosen}: no está en el estante; sirve {swap}, pero: {cost}</translation>
    </message>
    <message>
        <source>avoid {filler}</source>
        <translation>evitar {filler}</translation>
    </message>
    <message>
        <source>the bead turns {colour} when anodised ({other_colour} before)</source>
        <translation>color del cordón al anodizar: {colour} (antes: {other_colour})</translation>
    </message>
    <message>
        <source>not for service above {hottest:g} degC</source>
        <translation>no para servicio por encima de {hottest:g} °C</translation>
    </message>
    <message>
        <source>it is for {use}</source>
        <translation>es para {use}</translation>
    </message>
    <message>
        <source>{colour} after anodising</source>
        <translation>tras anodizar: {colour}</translation>
    </message>
    <message>
        <source>never lighter than {floor}: the regulation&apos;s minimum</source>
        <translation>nunca más claro que {floor}: el mínimo del reglamento</translation>
    </message>
    <message>
        <source>start at {start}; begin too dark, go lighter until the pool is clear, not below {floor}</source>
        <translation>empezar con {start}; empezar demasiado oscuro, ir aclarando hasta ver bien el baño, sin bajar de {floor}</translation>
    </message>
    <message>
        <source>{rows} rows of about this thickness; documents differ by up to a factor of two</source>
        <translation>{rows} filas de más o menos este espesor; los documentos difieren hasta en un factor de dos</translation>
    </message>
    <message>
        <source>usual flow for this process</source>
        <translation>caudal habitual para este proceso</translation>
    </message>
    <message>
        <source>open joint: nothing holds the gas</source>
        <translation>unión abierta: nada retiene el gas</translation>
    </message>
    <message>
        <source>outdoors; screen the joint first, flow alone does not help</source>
        <translation>al aire libre; primero apantallar la unión, el caudal solo no ayuda</translation>
    </message>
    <message>
        <source>helium is light: more flow for the same cover</source>
        <translation>el helio es ligero: más caudal para la misma cobertura</translation>
    </message>
    <message>
        <source>more is not better: above the band the stream turns rough and pulls air in</source>
        <translation>más no es mejor: por encima del margen el chorro se vuelve turbulento y arrastra aire</translation>
    </message>
    <message>
        <source>the joint falls away from the arc, so argon does not pool: a lens keeps the stream whole</source>
        <translation>la unión cae alejándose del arco, así que el argón no se acumula: un difusor mantiene entero el chorro</translation>
    </message>
    <message>
        <source>this metal colours where cover is thin</source>
        <translation>este metal se colorea donde la cobertura es escasa</translation>
    </message>
    <message>
        <source>moving air: a lens stands it a little better</source>
        <translation>aire en movimiento: con difusor se aguanta algo mejor</translation>
    </message>
    <message>
        <source>a standard cup serves, the plates hold the argon; a lens does no harm where fitted</source>
        <translation>una tobera estándar basta, las placas retienen el argón; un difusor, si está puesto, no estorba</translation>
    </message>
    <message>
        <source>no lens on the shelf</source>
        <translation>ningún difusor en el estante</translation>
    </message>
    <message>
        <source>no lens for {tungsten:g} mm tungsten</source>
        <translation>ningún difusor para tungsteno de {tungsten:g} mm</translation>
    </message>
    <message>
        <source>{missing}: use the largest cup that goes in and shorten the stick-out</source>
        <translation>{missing}: usar la tobera más grande que quepa y acortar el saliente</translation>
    </message>
    <message>
        <source>process factor times volts times amperes over travel</source>
        <translation>factor del proceso por voltios por amperios entre velocidad de avance</translation>
    </message>
    <message>
        <source>no limit stated for this metal; sheet keeps its shape better below this</source>
        <translation>ningún límite indicado para este metal; por debajo de esto la chapa conserva mejor la forma</translation>
    </message>
    <message>
        <source>at most, measured beside the bead before the next run</source>
        <translation>como máximo, medido junto al cordón antes de la pasada siguiente</translation>
    </message>
    <message>
        <source>set the machine as for about {thickness} and let the pedal take it down</source>
        <translation>ajustar la máquina como para unos {thickness} y bajar con el pedal</translation>
    </message>
    <message>
        <source>kept between {least:g} and {most:g} times the working current, or the pedal gets too coarse</source>
        <translation>entre {least:g} y {most:g} veces la corriente de trabajo, o el pedal se vuelve demasiado brusco</translation>
    </message>
    <message>
        <source>butt in {metal}, flat, {thickness}, {transfer}, {wire:g} mm wire: {current:.0f} A {where}</source>
        <translation>a tope en {metal}, plana, {thickness}, {transfer}, hilo de {wire:g} mm: {current:.0f} A {where}</translation>
    </message>
    <message>
        <source>{wire:g} mm wire instead of {usual:g} mm</source>
        <translation>hilo de {wire:g} mm en vez de {usual:g} mm</translation>
    </message>
    <message>
        <source>{alloy} against the family: conductivity, heat capacity and melting range (a third of the computed difference)</source>
        <translation>{alloy} frente a su familia: conductividad, capacidad calorífica e intervalo de fusión (un tercio de la diferencia calculada)</translation>
    </message>
    <message>
        <source>position {position}: {why}</source>
        <translation>posición {position}: {why}</translation>
    </message>
    <message>
        <source>{wire:g} mm wire</source>
        <translation>hilo de {wire:g} mm</translation>
    </message>
    <message>
        <source>{wire:g} mm wire is usual from {lowest:g} A: a thinner one burns steadier here</source>
        <translation>el hilo de {wire:g} mm es habitual desde {lowest:g} A: uno más fino arde aquí más estable</translation>
    </message>
    <message>
        <source>plug rows for top sheets of {ends}</source>
        <translation>filas de tapón para chapas superiores de {ends}</translation>
    </message>
    <message>
        <source>filled in one go, from the middle outward</source>
        <translation>llenado de una vez, del centro hacia fuera</translation>
    </message>
    <message>
        <source>one run up to this sheet</source>
        <translation>una pasada hasta esta chapa</translation>
    </message>
    <message>
        <source>one run more for every few millimetres</source>
        <translation>una pasada más por cada pocos milímetros</translation>
    </message>
    <message>
        <source>bevel to a V of about 60 degrees, or weld from both sides</source>
        <translation>biselar en V de unos 60 grados, o soldar por ambos lados</translation>
    </message>
    <message>
        <source>smaller runs, less heat each</source>
        <translation>pasadas más pequeñas, menos calor en cada una</translation>
    </message>
    <message>
        <source>sheet plug</source>
        <translation>tapón de chapa</translation>
    </message>
    <message>
        <source>structural plug</source>
        <translation>tapón estructural</translation>
    </message>
    <message>
        <source>plug in {metal}</source>
        <translation>tapón en {metal}</translation>
    </message>
    <message>
        <source>no row gives a hole</source>
        <translation>ninguna fila da un agujero</translation>
    </message>
    <message>
        <source>hole rows cover {thinnest} to {thickest}</source>
        <translation>las filas de agujeros cubren de {thinnest} a {thickest}</translation>
    </message>
    <message>
        <source>centres at least {distance} apart: {times:g} {unit}</source>
        <translation>centros separados al menos {distance}: {times:g} {unit}</translation>
    </message>
    <message>
        <source>bright metal, drill to round, take the burr off behind, copper behind, weld from the front; only where the sheet behind is sound</source>
        <translation>metal brillante, taladrar hasta dejarlo redondo, quitar la rebaba por detrás, cobre detrás, soldar por delante; solo donde la chapa de detrás esté sana</translation>
    </message>
    <message>
        <source>hole volume over wire volume at the start feed</source>
        <translation>volumen del agujero entre volumen de hilo a la velocidad de inicio</translation>
    </message>
    <message>
        <source>longer to bite into the sheet behind</source>
        <translation>más tiempo, para agarrar en la chapa de detrás</translation>
    </message>
    <message>
        <source>solid wire under gas runs electrode positive: steady arc, deep melting</source>
        <translation>el hilo macizo con gas va con electrodo positivo: arco estable, fusión profunda</translation>
    </message>
    <message>
        <source>electrode negative puts most of the heat into the work and keeps the tungsten sharp</source>
        <translation>el electrodo negativo pone la mayor parte del calor en la pieza y mantiene afilado el tungsteno</translation>
    </message>
    <message>
        <source>helium is hot enough to melt through the oxide on electrode negative; it lifts none of it, so the joint must be freshly brushed</source>
        <translation>el helio es bastante caliente para fundir a través del óxido con electrodo negativo; no levanta nada de óxido, así que la unión tiene que estar recién cepillada</translation>
    </message>
    <message>
        <source>AC: the electrode-positive half lifts the oxide, the electrode-negative half melts the metal</source>
        <translation>CA: el semiciclo de electrodo positivo levanta el óxido, el de electrodo negativo funde el metal</translation>
    </message>
    <message>
        <source>a second for every ten amperes, never under {least:g} s; hold the torch still</source>
        <translation>un segundo por cada diez amperios, nunca menos de {least:g} s; mantener quieta la antorcha</translation>
    </message>
    <message>
        <source>titanium: until it is below {safe:g} degC, with a trailing shield</source>
        <translation>titanio: hasta que esté por debajo de {safe:g} °C, con protección de arrastre</translation>
    </message>
    <message>
        <source>clears air from the torch before the arc</source>
        <translation>purga el aire de la antorcha antes del arco</translation>
    </message>
    <message>
        <source>by the code that governs the job</source>
        <translation>según la norma que rige el trabajo</translation>
    </message>
    <message>
        <source>no row for this metal at this thickness: dry the joint and warm it to the hand</source>
        <translation>ninguna fila para este metal con este espesor: secar la unión y calentarla hasta sentirla tibia con la mano</translation>
    </message>
    <message>
        <source>none needed; if you warm it, not above {ceiling:g} degC</source>
        <translation>no hace falta; si se calienta, no por encima de {ceiling:g} °C</translation>
    </message>
    <message>
        <source>the other metal stands {ceiling:g} degC at most: warm this side only</source>
        <translation>el otro metal aguanta {ceiling:g} °C como máximo: calentar solo este lado</translation>
    </message>
    <message>
        <source>off</source>
        <translation>desactivado</translation>
    </message>
    <message>
        <source>1 to 2 pulses per second, background 30 to 40 %</source>
        <translation>1 a 2 pulsos por segundo, corriente de base 30 a 40 %</translation>
    </message>
    <message>
        <source>thick enough to carry a steady arc</source>
        <translation>bastante grueso para llevar un arco continuo</translation>
    </message>
    <message>
        <source>to pace the dabbing hand</source>
        <translation>para marcar el ritmo de la mano que aporta</translation>
    </message>
    <message>
        <source>thin sheet overheats: a slow pulse lets the pool freeze a little between dabs</source>
        <translation>la chapa fina se sobrecalienta: un pulsado lento deja que el baño solidifique un poco entre aportes</translation>
    </message>
    <message>
        <source>{name} has no pulse: blip the current by hand</source>
        <translation>{name} no tiene pulsado: dar los impulsos de corriente a mano</translation>
    </message>
    <message>
        <source>with a pedal and a quick hand</source>
        <translation>con pedal y mano rápida</translation>
    </message>
    <message>
        <source>inert gas only: oxygen or carbon dioxide burns the tungsten at once</source>
        <translation>solo gas inerte: el oxígeno o el dióxido de carbono queman el tungsteno al instante</translation>
    </message>
    <message>
        <source>long enough to see and reach the root</source>
        <translation>bastante largo para ver y alcanzar la raíz</translation>
    </message>
    <message>
        <source>short: best cover</source>
        <translation>corto: mejor cobertura</translation>
    </message>
    <message>
        <source>at most {most:g} mm with a gas lens</source>
        <translation>como máximo {most:g} mm con difusor</translation>
    </message>
    <message>
        <source>at most {most:g} mm without a gas lens</source>
        <translation>como máximo {most:g} mm sin difusor</translation>
    </message>
    <message>
        <source>ends first, then the middle, then halve each gap</source>
        <translation>primero los extremos, luego el centro, luego partir cada tramo por la mitad</translation>
    </message>
    <message>
        <source>20 to 30 sheet thicknesses apart</source>
        <translation>cada 20 a 30 espesores de chapa</translation>
    </message>
    <message>
        <source>every {low:.0f} to {high:.0f} mm ({low_in:g} to {high_in:g} in), {shortest:.0f} to {longest:.0f} mm long</source>
        <translation>cada {low:.0f} a {high:.0f} mm ({low_in:g} a {high_in:g} in), de {shortest:.0f} a {longest:.0f} mm de largo</translation>
    </message>
    <message>
        <source>spacing for this sheet; closer where the joint pulls open</source>
        <translation>distancia para esta chapa; más juntos donde la unión se abre</translation>
    </message>
    <message>
        <source>unlike metals: the middle between the two</source>
        <translation>metales distintos: el punto medio entre los dos</translation>
    </message>
    <message>
        <source>brisk hand: start in the upper half of the band</source>
        <translation>mano rápida: empezar en la mitad superior del margen</translation>
    </message>
    <message>
        <source>{joint} in {metal}, flat, {thickness}{hand}: {current:.0f} A {where}</source>
        <translation>{joint} en {metal}, plana, {thickness}{hand}: {current:.0f} A {where}</translation>
    </message>
    <message>
        <source>{hand} hand at the nearest thickness both hands&apos; rows cover</source>
        <translation>mano {hand} en el espesor más cercano que cubren las filas de ambas manos</translation>
    </message>
    <message>
        <source>{hand} hand: these rows go with this travel</source>
        <translation>mano {hand}: estas filas van con este avance</translation>
    </message>
    <message>
        <source>; a {hand} one would take about {ratio:.2f} times the current</source>
        <translation>; una mano {hand} llevaría unas {ratio:.2f} veces la corriente</translation>
    </message>
    <message>
        <source>{polarity} TIG on {metal}</source>
        <translation>TIG {polarity} sobre {metal}</translation>
    </message>
    <message>
        <source>no schedule is held; held are {held}</source>
        <translation>no hay tabla de parámetros; las hay para {held}</translation>
    </message>
    <message>
        <source>the schedules cover {thinnest} to {thickest}</source>
        <translation>las tablas de parámetros cubren de {thinnest} a {thickest}</translation>
    </message>
    <message>
        <source>T-joint</source>
        <translation>unión en T</translation>
    </message>
    <message>
        <source>, unhurried hand</source>
        <translation>, mano pausada</translation>
    </message>
    <message>
        <source>, brisk hand</source>
        <translation>, mano rápida</translation>
    </message>
    <message>
        <source>30 to 45 deg cone, small flat</source>
        <translation>cono de 30 a 45 grados, plano pequeño</translation>
    </message>
    <message>
        <source>20 to 30 deg cone, small flat</source>
        <translation>cono de 20 a 30 grados, plano pequeño</translation>
    </message>
    <message>
        <source>{angle:.0f} deg cone, {flat:g} mm flat</source>
        <translation>cono de {angle:.0f} grados, plano de {flat:g} mm</translation>
    </message>
    <message>
        <source>a blunted point keeps its shape on a square wave; a large ball wanders and is for pure tungsten</source>
        <translation>una punta achatada conserva la forma con onda cuadrada; una bola grande vaga y es para tungsteno puro</translation>
    </message>
    <message>
        <source>flat of about a third of the diameter, ground lengthwise</source>
        <translation>plano de un tercio del diámetro, más o menos, afilado a lo largo</translation>
    </message>
    <message>
        <source>about two and a half diameters long</source>
        <translation>unos dos diámetros y medio de largo</translation>
    </message>
    <message>
        <source>this cone is rated {low:.0f} to {high:.0f} A; a sharper one is softer on thin edges, a blunter one lasts</source>
        <translation>este cono es para {low:.0f} a {high:.0f} A nominales; uno más agudo es más suave en bordes finos, uno más romo dura más</translation>
    </message>
    <message>
        <source>nozzle 13 to 16 mm off; the tip a little inside it</source>
        <translation>tobera a 13 a 16 mm; el tubo de contacto un poco metido en ella</translation>
    </message>
    <message>
        <source>close: the wire heats less before it melts, the current stays up</source>
        <translation>cerca: el hilo se calienta menos antes de fundir, la corriente se mantiene alta</translation>
    </message>
    <message>
        <source>farther: the tip must not melt</source>
        <translation>más lejos: el tubo de contacto no debe fundirse</translation>
    </message>
    <message>
        <source>the wire touches and melts off many times a second: little heat, all positions</source>
        <translation>el hilo toca y se funde muchas veces por segundo: poco calor, todas las posiciones</translation>
    </message>
    <message>
        <source>large drops: hot and spattery</source>
        <translation>gotas grandes: caliente y con proyecciones</translation>
    </message>
    <message>
        <source>a fine spray of drops: hot, smooth</source>
        <translation>fina lluvia de gotas: caliente, suave</translation>
    </message>
    <message>
        <source>one drop a pulse</source>
        <translation>una gota por pulso</translation>
    </message>
    <message>
        <source>as asked</source>
        <translation>como se pidió</translation>
    </message>
    <message>
        <source>aluminium: short circuit stays cold on it, so spray</source>
        <translation>aluminio: en él el cortocircuito queda frío, por eso pulverización (spray)</translation>
    </message>
    <message>
        <source>above {thickness} and flat: spray melts in deeper</source>
        <translation>por encima de {thickness} y en plana: la pulverización (spray) funde más hondo</translation>
    </message>
    <message>
        <source>sheet and out-of-position work: short circuit</source>
        <translation>chapa y trabajo fuera de posición: cortocircuito</translation>
    </message>
    <message>
        <source>thicker than the short-circuit schedules reach</source>
        <translation>más grueso de lo que alcanzan las tablas de cortocircuito</translation>
    </message>
    <message>
        <source>MIG on {metal}, {thickness}</source>
        <translation>MIG/MAG sobre {metal}, {thickness}</translation>
    </message>
    <message>
        <source>TIG, as a lap</source>
        <translation>TIG, como a solape</translation>
    </message>
    <message>
        <source>no schedule is held for this metal</source>
        <translation>no hay tabla de parámetros para este metal</translation>
    </message>
    <message>
        <source>schedules are held for {transfers}</source>
        <translation>hay tablas de parámetros para {transfers}</translation>
    </message>
    <message>
        <source> by MIG, or {other}</source>
        <translation> con MIG/MAG, o {other}</translation>
    </message>
    <message>
        <source>no row prints a travel here: a hand&apos;s usual pace</source>
        <translation>ninguna fila indica aquí un avance: el ritmo habitual de la mano</translation>
    </message>
    <message>
        <source>{rows} rows of about this thickness</source>
        <translation>{rows} filas de más o menos este espesor</translation>
    </message>
    <message>
        <source>{rows} rows print {speed:.1f} mm/s for a brisk hand</source>
        <translation>{rows} filas indican {speed:.1f} mm/s para una mano rápida</translation>
    </message>
    <message>
        <source>an unhurried hand has this share of their current, so by the thin-plate heat balance it travels slower over the same melted width</source>
        <translation>una mano pausada tiene esta fracción de su corriente, así que, por el balance térmico de placa fina, avanza más despacio con el mismo ancho fundido</translation>
    </message>
    <message>
        <source>AC balanced</source>
        <translation>CA equilibrada</translation>
    </message>
    <message>
        <source>nearest to what schedules of this sheet print</source>
        <translation>lo más cercano a lo que indican las tablas de parámetros de esta chapa</translation>
    </message>
    <message>
        <source>the thickest on hand; its rating ends at {highest:.0f} A: it will spit above that</source>
        <translation>el más grueso disponible; su valor nominal acaba en {highest:.0f} A: por encima escupirá</translation>
    </message>
    <message>
        <source>rated {lowest:.0f} to {highest:.0f} A on {polarity}; wanted {start:.0f} A, up to {high:.0f} A</source>
        <translation>nominal {lowest:.0f} a {highest:.0f} A en {polarity}; hacen falta {start:.0f} A, hasta {high:.0f} A</translation>
    </message>
    <message>
        <source>a sine wave</source>
        <translation>una onda senoidal</translation>
    </message>
    <message>
        <source>only {negative:.0f} % electrode negative</source>
        <translation>solo {negative:.0f} % de electrodo negativo</translation>
    </message>
    <message>
        <source>{what} heats the tungsten more than a balanced square wave: the printed rating less about a quarter is the bound; the farther towards electrode positive, the less it stands</source>
        <translation>{what} calienta el tungsteno más que una onda cuadrada equilibrada: el límite es el valor nominal publicado menos una cuarta parte, más o menos; cuanto más hacia electrodo positivo, menos aguanta</translation>
    </message>
    <message>
        <source>{negative:.0f} % electrode negative: only what balanced waves are rated for counts</source>
        <translation>{negative:.0f} % de electrodo negativo: solo cuenta el valor nominal con ondas equilibradas</translation>
    </message>
    <message>
        <source>{oxide} serves AC and DC alike, starts well and is not radioactive</source>
        <translation>{oxide} sirve por igual para CA y CC, ceba bien y no es radiactivo</translation>
    </message>
    <message>
        <source>{oxide} is radioactive when ground: keep the dust out of you</source>
        <translation>{oxide}: radiactivo al afilar; no respirar ni tragar el polvo</translation>
    </message>
    <message>
        <source>on the shelf; {tungsten} would be first choice</source>
        <translation>en el estante; la primera opción sería {tungsten}</translation>
    </message>
    <message>
        <source>{colour} band, {code}</source>
        <translation>banda de color {colour}, {code}</translation>
    </message>
    <message>
        <source>{colour} band</source>
        <translation>banda de color {colour}</translation>
    </message>
    <message>
        <source>, radioactive dust</source>
        <translation>, polvo radiactivo</translation>
    </message>
    <message>
        <source>{volts:.1f} V and {slope:.1f} V per 100 A, a line through {rows} schedule rows for {transfer} transfer</source>
        <translation>{volts:.1f} V y {slope:.1f} V por 100 A, una recta por {rows} filas de las tablas para transferencia: {transfer}</translation>
    </message>
    <message>
        <source>set by ear from there: crackle with too little, hiss and undercut with too much</source>
        <translation>desde ahí, ajustar de oído: crepita si es poco, silba y muerde si es demasiado</translation>
    </message>
    <message>
        <source>as printed for plugs</source>
        <translation>como se publica para tapones</translation>
    </message>
    <message>
        <source>no row prints a voltage</source>
        <translation>ninguna fila indica una tensión</translation>
    </message>
    <message>
        <source>rows are for {printed}; {gas} runs about {shift:+.1f} V from there</source>
        <translation>las filas son para {printed}; {gas} va unos {shift:+.1f} V respecto a ahí</translation>
    </message>
    <message>
        <source>{sizes} mm for {transfer} on {metal}</source>
        <translation>{sizes} mm para {transfer} sobre {metal}</translation>
    </message>
    <message>
        <source>the wire on the machine</source>
        <translation>el hilo de la máquina</translation>
    </message>
    <message>
        <source>the size that schedules of about this thickness use most</source>
        <translation>el tamaño que más usan las tablas de más o menos este espesor</translation>
    </message>
    <message>
        <source>schedules of about this thickness use {usual:g} mm; this one is there</source>
        <translation>las tablas de más o menos este espesor usan {usual:g} mm; hay este</translation>
    </message>
    <message>
        <source>melting law fitted to {rows} {transfer} rows: {arc:.2f} mm3 per ampere second and {resistance:.1e} mm4 per A2 s over {extension:g} mm of wire</source>
        <translation>ley de fusión ajustada a {rows} filas ({transfer}): {arc:.2f} mm3 por amperio segundo y {resistance:.1e} mm4 por A2 s en {extension:g} mm de hilo</translation>
    </message>
    <message>
        <source>at the start current; give or take {spread:.0%}, more with a longer stick-out</source>
        <translation>a la corriente de inicio; más o menos {spread:.0%}, más con un saliente mayor</translation>
    </message>
    <message>
        <source>brush</source>
        <translation>cepillo</translation>
    </message>
    <message>
        <source>wheel</source>
        <translation>muela</translation>
    </message>
    <message>
        <source>{left:.0f} L of {name} left: {minutes:.0f} minutes at {flow:g} L/min</source>
        <translation>quedan {left:.0f} L de {name}: {minutes:.0f} minutos a {flow:g} L/min</translation>
    </message>
    <message>
        <source>gas left</source>
        <translation>gas restante</translation>
    </message>
    <message>
        <source>{text}, this weld takes {needed:.0f}: refill first</source>
        <translation>{text}, esta soldadura necesita {needed:.0f}: rellenar antes la botella</translation>
    </message>
    <message>
        <source>{text}: get it refilled</source>
        <translation>{text}: llevar la botella a rellenar</translation>
    </message>
    <message>
        <source>torch parts</source>
        <translation>piezas de la antorcha</translation>
    </message>
    <message>
        <source>a collet for {tungsten:g} mm tungsten</source>
        <translation>una pinza para tungsteno de {tungsten:g} mm</translation>
    </message>
    <message>
        <source>no collet for {tungsten:g} mm tungsten</source>
        <translation>ninguna pinza para tungsteno de {tungsten:g} mm</translation>
    </message>
    <message>
        <source>no helmet is as dark as shade {low:.0f}: do not strike this arc</source>
        <translation>ninguna careta es tan oscura como el tono {low:.0f}: no cebar este arco</translation>
    </message>
    <message>
        <source>helmet</source>
        <translation>careta</translation>
    </message>
    <message>
        <source>a helmet has shade {start:.0f}</source>
        <translation>una careta tiene el tono {start:.0f}</translation>
    </message>
    <message>
        <source>no helmet has shade {start:.0f}: use {nearest}, never lighter than {low:.0f}</source>
        <translation>ninguna careta tiene el tono {start:.0f}: usar {nearest}, nunca más claro que {low:.0f}</translation>
    </message>
    <message>
        <source>no {kind} kept for {metals}: one used on another metal dirties the joint</source>
        <translation>reservado para {metals}: falta {kind}; lo usado en otro metal ensucia la unión</translation>
    </message>
    <message>
        <source>a {kind} kept for {metals} is there</source>
        <translation>reservado para {metals}: hay {kind}</translation>
    </message>
    <message>
        <source>not on the shelf: {items}</source>
        <translation>no está en el estante: {items}</translation>
    </message>
    <message>
        <source>the shelf serves</source>
        <translation>lo del estante basta</translation>
    </message>
    <message>
        <source>better, when you buy: {items}</source>
        <translation>mejor, al comprar: {items}</translation>
    </message>
    <message>
        <source>shelf</source>
        <translation>estante</translation>
    </message>
    <message>
        <source>tungsten {name}, {size:g} mm</source>
        <translation>tungsteno {name}, {size:g} mm</translation>
    </message>
    <message>
        <source>rod {name}, {size:g} mm</source>
        <translation>varilla {name}, {size:g} mm</translation>
    </message>
    <message>
        <source>wire {name}, {size:g} mm</source>
        <translation>hilo {name}, {size:g} mm</translation>
    </message>
    <message>
        <source>gas: {name}</source>
        <translation>gas: {name}</translation>
    </message>
    <message>
        <source>a gas lens</source>
        <translation>un difusor</translation>
    </message>
    <message>
        <source>cup {number}</source>
        <translation>tobera {number}</translation>
    </message>
    <message>
        <source>who wires it goes by the local electrical code and the machine&apos;s own plate</source>
        <translation>quien hace la instalación sigue el reglamento eléctrico local y la placa de características de la propia máquina</translation>
    </message>
    <message>
        <source>{share} {plate:g} as entered</source>
        <translation>{share} {plate:g} según lo introducido</translation>
    </message>
    <message>
        <source>{share} {low:g} to {high:g} ({grade})</source>
        <translation>{share} {low:g} a {high:g} ({grade})</translation>
    </message>
    <message>
        <source>{share} {low:g} ({low_grade}) to {high:g} ({high_grade})</source>
        <translation>{share} {low:g} ({low_grade}) a {high:g} ({high_grade})</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} a {high}</translation>
    </message>
    <message>
        <source> in each phase</source>
        <translation> en cada fase</translation>
    </message>
    <message>
        <source>about {taken} A{phases} from {volts:g} V at {amps:.0f} A ({known})</source>
        <translation>unos {taken} A{phases} de {volts:g} V a {amps:.0f} A ({known})</translation>
    </message>
    <message>
        <source>; {name} is made for {made_for} V</source>
        <translation>; {name} está hecha para {made_for} V</translation>
    </message>
    <message>
        <source>supply</source>
        <translation>alimentación</translation>
    </message>
    <message>
        <source>{rated:g} A breaker carries up to {taken:.0f} A at {top:.0f} A of arc</source>
        <translation>el disyuntor de {rated:g} A lleva hasta {taken:.0f} A con {top:.0f} A de arco</translation>
    </message>
    <message>
        <source>{rated:g} A breaker: up to {taken:.0f} A at {top:.0f} A of arc is more, {steady:.0f} A over a cycle of ten minutes is not: short beads run, a long one trips it</source>
        <translation>disyuntor de {rated:g} A: hasta {taken:.0f} A con {top:.0f} A de arco es más, {steady:.0f} A en un ciclo de diez minutos no lo es: los cordones cortos van, uno largo lo dispara</translation>
    </message>
    <message>
        <source>{rated:g} A breaker trips: {steady:.0f} A over a cycle of ten minutes; less current, or a larger circuit</source>
        <translation>el disyuntor de {rated:g} A se dispara: {steady:.0f} A en un ciclo de diez minutos; menos corriente, o un circuito mayor</translation>
    </message>
    <message>
        <source>breaker</source>
        <translation>disyuntor</translation>
    </message>
    <message>
        <source>cord</source>
        <translation>cable</translation>
    </message>
    <message>
        <source>cord rated {rated:g} A; {taken:.0f} A x {factor:g} for this duty cycle = {needed:.0f} A [{source}]</source>
        <translation>cable nominal {rated:g} A; {taken:.0f} A x {factor:g} para este factor de marcha = {needed:.0f} A [{source}]</translation>
    </message>
    <message>
        <source>: take a thicker one, fully unrolled</source>
        <translation>: usar uno más grueso, desenrollado del todo</translation>
    </message>
    <message>
        <source>cord drop</source>
        <translation>caída en el cable</translation>
    </message>
    <message>
        <source>{length:g} m of {area:g} mm2 takes {lost:.1f} V, {percent:.1f} %</source>
        <translation>{length:g} m de {area:g} mm2 pierden {lost:.1f} V, {percent:.1f} %</translation>
    </message>
    <message>
        <source>: the machine starves; shorter or thicker</source>
        <translation>: la máquina queda corta de tensión; más corto o más grueso</translation>
    </message>
    <message>
        <source>generator: {kva:.1f} kVA at {top:.0f} A, it gives {given:g} kVA; some sets do not stand a generator at all: see the machine&apos;s manual, and run nothing else on it</source>
        <translation>generador: {kva:.1f} kVA a {top:.0f} A, da {given:g} kVA; algunas máquinas no admiten ningún generador: ver el manual de la máquina, y no conectar nada más a él</translation>
    </message>
    <message>
        <source>generator</source>
        <translation>generador</translation>
    </message>
    <message>
        <source>{thin} on {thick} draws heat like two pieces of {equal}; aim at the thicker one</source>
        <translation>{thin} sobre {thick} se lleva calor como dos piezas de {equal}; apuntar a la más gruesa</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>metal</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>espesor</translation>
    </message>
    <message>
        <source>other_metal</source>
        <translation>otro_metal</translation>
    </message>
    <message>
        <source>other_thickness</source>
        <translation>otro_espesor</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>unión</translation>
    </message>
    <message>
        <source>position</source>
        <translation>posición</translation>
    </message>
    <message>
        <source>goal</source>
        <translation>objetivo</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>recubrimiento</translation>
    </message>
    <message>
        <source>solvent</source>
        <translation>disolvente</translation>
    </message>
    <message>
        <source>part</source>
        <translation>pieza</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>mano</translation>
    </message>
    <message>
        <source>gas</source>
        <translation>gas</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>hilo</translation>
    </message>
    <message>
        <source>transfer</source>
        <translation>transferencia</translation>
    </message>
    <message>
        <source>field</source>
        <translation>campo</translation>
    </message>
    <message>
        <source>{field} once, under one name</source>
        <translation>{field} una vez, con un solo nombre</translation>
    </message>
    <message>
        <source>a metal such as 5052, low-carbon, 304</source>
        <translation>un metal, p. ej. 5052, low-carbon, 304</translation>
    </message>
    <message>
        <source>a length such as 2 mm, 0.080 in, 14 ga</source>
        <translation>una longitud, p. ej. 2 mm, 0.080 in, 14 ga</translation>
    </message>
    <message>
        <source>a value</source>
        <translation>un valor</translation>
    </message>
    <message>
        <source>only with process mig</source>
        <translation>solo con process mig</translation>
    </message>
    <message>
        <source>a position such as PA, 1G, flat</source>
        <translation>una posición, p. ej. PA, 1G, flat</translation>
    </message>
    <message>
        <source>a gas such as argon, ar-18co2</source>
        <translation>un gas, p. ej. argon, ar-18co2</translation>
    </message>
    <message>
        <source>either {field} or {in_mm}, not both</source>
        <translation>o {field} o {in_mm}, no ambos</translation>
    </message>
    <message>
        <source>a number from {lowest:g} to {highest:g}, in mm</source>
        <translation>un número de {lowest:g} a {highest:g}, en mm</translation>
    </message>
    <message>
        <source>{low:g} to {high:g} {unit}</source>
        <translation>{low:g} a {high:g} {unit}</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de memoria</translation>
    </message>
    <message>
        <source>{error}; there is no last good copy, so no machine is stated</source>
        <translation>{error}; no hay última copia buena, así que no hay ninguna máquina indicada</translation>
    </message>
    <message>
        <source>{error}; the last good bench, of {day}, stays in use</source>
        <translation>{error}; el último taller bueno, del {day}, sigue en uso</translation>
    </message>
    <message>
        <source>was changed while it was read; try again</source>
        <translation>cambió mientras se leía; intentarlo de nuevo</translation>
    </message>
    <message>
        <source>cannot be read: {error}</source>
        <translation>no se puede leer: {error}</translation>
    </message>
    <message>
        <source>; nearest: {near}</source>
        <translation>; lo más cercano: {near}</translation>
    </message>
    <message>
        <source>unknown field {field}; allowed: {allowed}{hint}</source>
        <translation>campo desconocido: {field}; se admite: {allowed}{hint}</translation>
    </message>
    <message>
        <source>machines: at least one, with name and processes</source>
        <translation>machines: al menos una, con name y processes</translation>
    </message>
    <message>
        <source>two machines are called {name}</source>
        <translation>dos máquinas se llaman {name}</translation>
    </message>
    <message>
        <source>lines such as - {current_a: 200, percent: 30}</source>
        <translation>líneas como - {current_a: 200, percent: 30}</translation>
    </message>
    <message>
        <source>expected {example}</source>
        <translation>se esperaba {example}</translation>
    </message>
    <message>
        <source>is missing: a few words, such as 200 A AC/DC TIG, 230 V</source>
        <translation>falta: unas palabras, p. ej. 200 A AC/DC TIG, 230 V</translation>
    </message>
    <message>
        <source>{field}.name {words}</source>
        <translation>{field}.name {words}</translation>
    </message>
    <message>
        <source>missing; allowed: [tig], [mig] or [tig, mig]</source>
        <translation>falta; se admite: [tig], [mig] o [tig, mig]</translation>
    </message>
    <message>
        <source>{field}.processes is {words}</source>
        <translation>{field}.processes: {words}</translation>
    </message>
    <message>
        <source>{field}.{low_field} {low:g} is above {high_field} {high:g}</source>
        <translation>{field}.{low_field} {low:g} está por encima de {high_field} {high:g}</translation>
    </message>
    <message>
        <source>{field} is missing</source>
        <translation>falta {field}</translation>
    </message>
    <message>
        <source>a few words, please</source>
        <translation>unas palabras, por favor</translation>
    </message>
    <message>
        <source>{shown} is not usable; allowed: yes, no</source>
        <translation>{shown} no vale; se admite: yes, no</translation>
    </message>
    <message>
        <source>a number from {lowest:g} to {highest:g}</source>
        <translation>un número de {lowest:g} a {highest:g}</translation>
    </message>
    <message>
        <source>{shown} is not usable; allowed: {allowed}</source>
        <translation>{shown} no vale; se admite: {allowed}</translation>
    </message>
    <message>
        <source>{value} is not usable; allowed: {allowed}</source>
        <translation>{value} no vale; se admite: {allowed}</translation>
    </message>
    <message>
        <source>{value} is not usable; allowed: a whole {what}</source>
        <translation>{value} no vale; se admite, entero: {what}</translation>
    </message>
    <message>
        <source>expected a list in brackets, such as [a, b]</source>
        <translation>se esperaba una lista entre corchetes, como [a, b]</translation>
    </message>
    <message>
        <source>{value} is not sold; allowed: {sold}; nearest: {near} mm</source>
        <translation>{value} no se vende; se admite: {sold}; lo más cercano: {near} mm</translation>
    </message>
    <message>
        <source>&apos;name: value&apos; lines below it</source>
        <translation>líneas &apos;name: value&apos; debajo</translation>
    </message>
    <message>
        <source>unknown field {field}; {allowed}</source>
        <translation>campo desconocido: {field}; {allowed}</translation>
    </message>
    <message>
        <source>{shown} is not usable; {allowed}</source>
        <translation>{shown} no vale; {allowed}</translation>
    </message>
    <message>
        <source>allowed: {words}</source>
        <translation>se admite: {words}</translation>
    </message>
    <message>
        <source>such as {name: dial, marks: {1: 1.5, 10: 12}}</source>
        <translation>p. ej. {name: dial, marks: {1: 1.5, 10: 12}}</translation>
    </message>
    <message>
        <source>marks are missing, {example}</source>
        <translation>faltan las marcas (marks), {example}</translation>
    </message>
    <message>
        <source>only wire_feed has a choice of units</source>
        <translation>solo wire_feed permite elegir unidades</translation>
    </message>
    <message>
        <source>{value} is not usable; allowed: {lowest:g} to {highest:g} {unit}</source>
        <translation>{value} no vale; se admite: {lowest:g} a {highest:g} {unit}</translation>
    </message>
    <message>
        <source>at least two marks, so that what lies between can be read</source>
        <translation>al menos dos marcas, para poder leer lo que queda entre ellas</translation>
    </message>
    <message>
        <source>two marks mean the same figure</source>
        <translation>dos marcas significan la misma cifra</translation>
    </message>
    <message>
        <source>figures must rise or fall all the way along a numbered scale</source>
        <translation>las cifras tienen que subir o bajar a lo largo de toda una escala numerada</translation>
    </message>
    <message>
        <source>cup number</source>
        <translation>número de tobera</translation>
    </message>
    <message>
        <source>shade</source>
        <translation>tono</translation>
    </message>
    <message>
        <source>{value!s:.40} is not usable; allowed: a shade such as 10, or a range such as 9-13</source>
        <translation>{value!s:.40} no vale; se admite: un tono, p. ej. 10, o un margen, p. ej. 9-13</translation>
    </message>
    <message>
        <source>{value} runs backwards</source>
        <translation>{value} va al revés</translation>
    </message>
    <message>
        <source>options with their values; one with a blank in it in quotes, as in --thickness &quot;2 mm&quot;</source>
        <translation>opciones con sus valores; el que lleve un espacio, entre comillas, como en --thickness &quot;2 mm&quot;</translation>
    </message>
    <message>
        <source>usage: </source>
        <translation>uso: </translation>
    </message>
    <message>
        <source>positional arguments</source>
        <translation>argumentos posicionales</translation>
    </message>
    <message>
        <source>options</source>
        <translation>opciones</translation>
    </message>
    <message>
        <source>show this help message and exit</source>
        <translation>mostrar esta ayuda y salir</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>(vacío)</translation>
    </message>
    <message>
        <source>one value, as in {option}=VALUE</source>
        <translation>un valor, como en {option}=VALUE</translation>
    </message>
    <message>
        <source>argument {option}: ignored explicit argument {value}</source>
        <translation>argumento {option}: valor explícito ignorado: {value}</translation>
    </message>
    <message>
        <source>the following arguments are required: {names}</source>
        <translation>faltan los argumentos siguientes: {names}</translation>
    </message>
    <message>
        <source>command line</source>
        <translation>línea de comandos</translation>
    </message>
    <message>
        <source>{prog} --help lists what it takes</source>
        <translation>{prog} --help muestra qué admite</translation>
    </message>
    <message>
        <source>one of its options (--help lists them)</source>
        <translation>una de sus opciones (--help las muestra)</translation>
    </message>
    <message>
        <source>given once</source>
        <translation>dado una vez</translation>
    </message>
    <message>
        <source>for every command</source>
        <translation>para todos los comandos</translation>
    </message>
    <message>
        <source>print JSON, always metric</source>
        <translation>escribir JSON, siempre métrico</translation>
    </message>
    <message>
        <source>units to read bare numbers in and to show</source>
        <translation>unidades para leer números solos y para mostrar</translation>
    </message>
    <message>
        <source>your machine and shelf, a YAML file</source>
        <translation>máquina y estante propios, un archivo YAML</translation>
    </message>
    <message>
        <source>another log than your own</source>
        <translation>otro registro en vez del propio</translation>
    </message>
    <message>
        <source>language of the words</source>
        <translation>idioma de los textos</translation>
    </message>
    <message>
        <source>one JSON object, such as {&quot;process&quot;: &quot;tig&quot;, &quot;metal&quot;: &quot;5052&quot;, &quot;thickness_mm&quot;: 2, &quot;joint&quot;: &quot;butt&quot;}</source>
        <translation>un objeto JSON, p. ej. {&quot;process&quot;: &quot;tig&quot;, &quot;metal&quot;: &quot;5052&quot;, &quot;thickness_mm&quot;: 2, &quot;joint&quot;: &quot;butt&quot;}</translation>
    </message>
    <message>
        <source>line</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>more than {longest_bytes} MB</source>
        <translation>más de {longest_bytes} MB</translation>
    </message>
    <message>
        <source>a byte that is not UTF-8 (byte {place})</source>
        <translation>un byte que no es UTF-8 (byte {place})</translation>
    </message>
    <message>
        <source>JSON nested too deeply</source>
        <translation>JSON anidado demasiado hondo</translation>
    </message>
    <message>
        <source>not JSON ({error})</source>
        <translation>no es JSON ({error})</translation>
    </message>
    <message>
        <source>standard input</source>
        <translation>entrada estándar</translation>
    </message>
    <message>
        <source>is closed</source>
        <translation>está cerrada</translation>
    </message>
    <message>
        <source>the same key twice</source>
        <translation>la misma clave dos veces</translation>
    </message>
    <message>
        <source>each key once</source>
        <translation>cada clave una vez</translation>
    </message>
    <message>
        <source>finite numbers</source>
        <translation>números finitos</translation>
    </message>
    <message>
        <source>How wide and deep given settings melt in a joint, how near they are to burning through, and how fast the weld cools. Conduction only, with its error.</source>
        <translation>Con qué ancho y profundidad funden en una unión los ajustes dados, lo cerca que están de perforar y lo rápido que enfría la soldadura. Solo conducción, con su error.</translation>
    </message>
    <message>
        <source>a current such as 90 A</source>
        <translation>una corriente, p. ej. 90 A</translation>
    </message>
    <message>
        <source>a voltage such as 12.5 V</source>
        <translation>una tensión, p. ej. 12.5 V</translation>
    </message>
    <message>
        <source>a temperature such as 100 C</source>
        <translation>una temperatura, p. ej. 100 C</translation>
    </message>
    <message>
        <source>a frequency such as 120 Hz</source>
        <translation>una frecuencia, p. ej. 120 Hz</translation>
    </message>
    <message>
        <source>percent electrode negative, such as 70 %</source>
        <translation>porcentaje de electrodo negativo, p. ej. 70 %</translation>
    </message>
    <message>
        <source>settings</source>
        <translation>ajustes</translation>
    </message>
    <message>
        <source>amperes</source>
        <translation>amperios</translation>
    </message>
    <message>
        <source>travel speed: 5 mm/s, 12 ipm, 300 mm/min</source>
        <translation>velocidad de avance: 5 mm/s, 12 ipm, 300 mm/min</translation>
    </message>
    <message>
        <source>arc voltage (left out: the process&apos;s conventional load line)</source>
        <translation>tensión de arco (si se omite: la recta de carga convencional del proceso)</translation>
    </message>
    <message>
        <source>temperature of the parts, in degrees C unless F is said (default 20 C)</source>
        <translation>temperatura de las piezas, en grados C si no se dice F (por defecto 20 C)</translation>
    </message>
    <message>
        <source>none, or bar: a metal bar clamped behind the joint; a trend only</source>
        <translation>none, o bar: una pletina de metal sujeta detrás de la unión; solo una tendencia</translation>
    </message>
    <message>
        <source>AC frequency, hertz; a trend only</source>
        <translation>frecuencia CA, hercios; solo una tendencia</translation>
    </message>
    <message>
        <source>AC balance, percent electrode negative; a trend only</source>
        <translation>balance CA, porcentaje de electrodo negativo; solo una tendencia</translation>
    </message>
    <message>
        <source>a travel speed such as 5 mm/s, 12 ipm, 300 mm/min</source>
        <translation>una velocidad de avance, p. ej. 5 mm/s, 12 ipm, 300 mm/min</translation>
    </message>
    <message>
        <source>Your machines and shelf: init, show, check. Every card is fitted to the machine in use.</source>
        <translation>Máquinas y estante propios: init, show, check. Cada ficha se adapta a la máquina en uso.</translation>
    </message>
    <message>
        <source>with init: a machine to start from; may be given more than once (a wrong name lists them)</source>
        <translation>con init: una máquina de partida; puede darse más de una vez (un nombre erróneo las muestra)</translation>
    </message>
    <message>
        <source>only with init</source>
        <translation>solo con init</translation>
    </message>
    <message>
        <source>a file that is not there yet; yours is left as it is</source>
        <translation>un archivo que aún no exista; el propio queda como está</translation>
    </message>
    <message>
        <source>written: {path}
Edit it to match your rating plates and shelf, then: welds bench check</source>
        <translation>escrito: {path}
Adaptarlo a las placas de características y al estante propios, luego: welds bench check</translation>
    </message>
    <message>
        <source>no bench yet, so no machine limits a card; welds bench init writes {path}</source>
        <translation>aún no hay taller, así que ninguna máquina limita una ficha; welds bench init escribe {path}</translation>
    </message>
    <message>
        <source>no mistakes found: {path}</source>
        <translation>no se encontraron errores: {path}</translation>
    </message>
    <message>
        <source>Flat length of any sequence of bends, with bend lines, allowances and the least radius. Angles are turned through: 90 is a square bend, a minus bends the other way.</source>
        <translation>Desarrollo de cualquier serie de plegados, con líneas de plegado, tolerancias y radio mínimo. Los ángulos son los plegados: 90 es un plegado a escuadra, un menos pliega hacia el otro lado.</translation>
    </message>
    <message>
        <source>written: {file}</source>
        <translation>escrito: {file}</translation>
    </message>
    <message>
        <source>the part</source>
        <translation>la pieza</translation>
    </message>
    <message>
        <source>catalogue id with its temper: 5052-H32, 6061-T6, low-carbon, 304</source>
        <translation>id del catálogo con su temple: 5052-H32, 6061-T6, low-carbon, 304</translation>
    </message>
    <message>
        <source>2 mm, 0.080 in, 14 ga</source>
        <translation>2 mm, 0.080 in, 14 ga</translation>
    </message>
    <message>
        <source>inside radius, one for all bends or one each: 3 mm or 3,3,5 mm</source>
        <translation>radio interior, uno para todos los plegados o uno para cada uno: 3 mm o 3,3,5 mm</translation>
    </message>
    <message>
        <source>lengths in order: 30,300,30 mm</source>
        <translation>longitudes en orden: 30,300,30 mm</translation>
    </message>
    <message>
        <source>angles in order: 90,90; a minus bends the other way</source>
        <translation>ángulos en orden: 90,90; un menos pliega hacia el otro lado</translation>
    </message>
    <message>
        <source>what the legs are measured to: outside, inside, overall (default outside)</source>
        <translation>hasta dónde se miden las alas: outside, inside, overall (por defecto outside)</translation>
    </message>
    <message>
        <source>the side that is not folded, for the drawing</source>
        <translation>el lado que no se pliega, para el dibujo</translation>
    </message>
    <message>
        <source>bend line to the rolling direction: across or along (default across)</source>
        <translation>línea de plegado respecto al sentido de laminación: across o along (por defecto across)</translation>
    </message>
    <message>
        <source>K, where you know it</source>
        <translation>K, si se conoce</translation>
    </message>
    <message>
        <source>one bend measured on your brake: flat=100 mm; legs=52 x 51.5 mm; angle=90; radius=2 mm</source>
        <translation>un plegado medido en la plegadora propia: flat=100 mm; legs=52 x 51.5 mm; angle=90; radius=2 mm</translation>
    </message>
    <message>
        <source>a name for your brake: keeps the K of --test-bend, or uses the one kept</source>
        <translation>un nombre para la plegadora propia: guarda la K de --test-bend, o usa la guardada</translation>
    </message>
    <message>
        <source>how the blank comes out</source>
        <translation>cómo sale el desarrollo</translation>
    </message>
    <message>
        <source>a page with every figure</source>
        <translation>una página con todas las cifras</translation>
    </message>
    <message>
        <source>drawing at full size for a cutter</source>
        <translation>dibujo a tamaño real para una cortadora</translation>
    </message>
    <message>
        <source>drawing at full size, with a ruler to check the print by</source>
        <translation>dibujo a tamaño real, con una regla para comprobar la impresión</translation>
    </message>
    <message>
        <source>the same on one sheet as large as it needs</source>
        <translation>lo mismo en una sola hoja tan grande como haga falta</translation>
    </message>
    <message>
        <source>metal, thickness, legs; and angles and radius for a bend</source>
        <translation>metal, espesor, alas; y ángulos y radio si hay plegado</translation>
    </message>
    <message>
        <source>{angles} for {legs} legs, such as 90</source>
        <translation>{angles} para {legs} alas, p. ej. 90</translation>
    </message>
    <message>
        <source>the inside radius of the bends, such as 3 mm</source>
        <translation>el radio interior de los plegados, p. ej. 3 mm</translation>
    </message>
    <message>
        <source>{number} radii</source>
        <translation>{number} radios</translation>
    </message>
    <message>
        <source>one for all, or one for each of {number} bends</source>
        <translation>uno para todos, o uno para cada uno de {number} plegados</translation>
    </message>
    <message>
        <source>K, or a test bend or brake, not both</source>
        <translation>K, o un plegado de prueba o una plegadora, no ambos</translation>
    </message>
    <message>
        <source>given</source>
        <translation>dado</translation>
    </message>
    <message>
        <source>a number such as 0.42</source>
        <translation>un número, p. ej. 0.42</translation>
    </message>
    <message>
        <source>test bend</source>
        <translation>plegado de prueba</translation>
    </message>
    <message>
        <source>test bend on {brake}</source>
        <translation>plegado de prueba en {brake}</translation>
    </message>
    <message>
        <source>A set-up for one joint, with ranges, reasons and sources. Read the cautions first.</source>
        <translation>Un ajuste para una unión, con márgenes, razones y fuentes. Leer primero las advertencias.</translation>
    </message>
    <message>
        <source>requests on standard input only; leave that option out</source>
        <translation>peticiones solo por la entrada estándar; quitar esa opción</translation>
    </message>
    <message>
        <source>how the card comes out</source>
        <translation>cómo sale la ficha</translation>
    </message>
    <message>
        <source>print plain text (what happens by itself)</source>
        <translation>escribir texto sencillo (lo que ocurre por sí solo)</translation>
    </message>
    <message>
        <source>with the chain of reasons below each figure</source>
        <translation>con la cadena de razones bajo cada cifra</translation>
    </message>
    <message>
        <source>write one page to tape to the machine</source>
        <translation>escribir una página para pegar en la máquina</translation>
    </message>
    <message>
        <source>write Markdown</source>
        <translation>escribir Markdown</translation>
    </message>
    <message>
        <source>one JSON request a line on standard input, one answer a line out</source>
        <translation>una petición JSON por línea en la entrada estándar, una respuesta por línea en la salida</translation>
    </message>
    <message>
        <source>Start and range of current for one metal and process: thickness down, joint across.</source>
        <translation>Inicio y margen de corriente para un metal y un proceso: espesor hacia abajo, unión a lo ancho.</translation>
    </message>
    <message>
        <source>how the chart comes out</source>
        <translation>cómo sale la tabla de pared</translation>
    </message>
    <message>
        <source>one line a cell, metric</source>
        <translation>una línea por celda, métrico</translation>
    </message>
    <message>
        <source>a page to hang on the wall</source>
        <translation>una página para colgar en la pared</translation>
    </message>
    <message>
        <source>a Markdown table</source>
        <translation>una tabla Markdown</translation>
    </message>
    <message>
        <source>Set-ups side by side: any option given more than once makes columns, as in --joint butt --joint tee. The first column is the base that the others are held against.</source>
        <translation>Ajustes lado a lado: toda opción dada más de una vez forma columnas, como en --joint butt --joint tee. La primera columna es la base con la que se comparan las demás.</translation>
    </message>
    <message>
        <source>how the comparison comes out</source>
        <translation>cómo sale la comparación</translation>
    </message>
    <message>
        <source>leave out what is the same in all</source>
        <translation>omitir lo que es igual en todas</translation>
    </message>
    <message>
        <source>one line a setting and column, metric</source>
        <translation>una línea por ajuste y columna, métrico</translation>
    </message>
    <message>
        <source>one page</source>
        <translation>una página</translation>
    </message>
    <message>
        <source>Markdown tables</source>
        <translation>tablas Markdown</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>columnas</translation>
    </message>
    <message>
        <source>2 or more: give an option twice, as in --joint butt --joint tee</source>
        <translation>2 o más: dar una opción dos veces, como en --joint butt --joint tee</translation>
    </message>
    <message>
        <source>at most {most} side by side; any number with --json or --csv</source>
        <translation>como máximo {most} lado a lado; cualquier número con --json o --csv</translation>
    </message>
    <message>
        <source>Without a name, the faults that a weld can have and what they look like; with one, causes and remedies, and what each would change on the card. A crack in what carries load is a qualified welder&apos;s.</source>
        <translation>Sin nombre, los defectos que puede tener una soldadura y su aspecto; con uno, causas y remedios, y qué cambiaría cada uno en la ficha. Una grieta en lo que soporta carga es asunto de un soldador cualificado.</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>defecto</translation>
    </message>
    <message>
        <source>with {process}: {allowed}</source>
        <translation>con {process}: {allowed}</translation>
    </message>
    <message>
        <source>A whole job from a YAML file: pieces, joints, repairs, in the order to do them.</source>
        <translation>Un trabajo entero de un archivo YAML: piezas, uniones, reparaciones, en el orden en que se hacen.</translation>
    </message>
    <message>
        <source>say what is wrong in a job file</source>
        <translation>decir qué está mal en un archivo de trabajo</translation>
    </message>
    <message>
        <source>order, cut list, blanks, cards, tack plans, materials; --pdf writes the packet</source>
        <translation>orden, lista de corte, desarrollos, fichas, planes de puntos, materiales; --pdf escribe el paquete</translation>
    </message>
    <message>
        <source>filler, gas, discs, time, power and cost</source>
        <translation>aporte, gas, discos, tiempo, energía y coste</translation>
    </message>
    <message>
        <source>print the demo job (invented), or write it to FILE</source>
        <translation>mostrar el trabajo demo (inventado), o escribirlo en FILE</translation>
    </message>
    <message>
        <source>a file that is not there yet</source>
        <translation>un archivo que aún no exista</translation>
    </message>
    <message>
        <source>no faults found</source>
        <translation>no se encontraron errores</translation>
    </message>
    <message>
        <source>how the plan comes out</source>
        <translation>cómo sale el plan</translation>
    </message>
    <message>
        <source>one page without the cards</source>
        <translation>una página sin las fichas</translation>
    </message>
    <message>
        <source>the packet: everything, with cards and drawings</source>
        <translation>el paquete: todo, con fichas y dibujos</translation>
    </message>
    <message>
        <source>how the list comes out</source>
        <translation>cómo sale la lista</translation>
    </message>
    <message>
        <source>a shopping list</source>
        <translation>una lista de compra</translation>
    </message>
    <message>
        <source>the job, a YAML file</source>
        <translation>el trabajo, un archivo YAML</translation>
    </message>
    <message>
        <source>a job file; welds job demo prints one to begin with</source>
        <translation>un archivo de trabajo; welds job demo muestra uno para empezar</translation>
    </message>
    <message>
        <source>log a weld: options, or JSON on standard input</source>
        <translation>registrar una soldadura: opciones, o JSON por la entrada estándar</translation>
    </message>
    <message>
        <source>the welds, newest first; filter and page</source>
        <translation>las soldaduras, primero las más nuevas; con filtro y por páginas</translation>
    </message>
    <message>
        <source>one weld by number or uid</source>
        <translation>una soldadura por número o uid</translation>
    </message>
    <message>
        <source>change fields of one weld</source>
        <translation>cambiar campos de una soldadura</translation>
    </message>
    <message>
        <source>take one weld out; answers with how to undo it</source>
        <translation>quitar una soldadura; responde cómo deshacerlo</translation>
    </message>
    <message>
        <source>take a change back by its token</source>
        <translation>deshacer un cambio por su token</translation>
    </message>
    <message>
        <source>the past welds most like a request</source>
        <translation>las soldaduras anteriores más parecidas a una petición</translation>
    </message>
    <message>
        <source>a preliminary procedure sheet of one weld</source>
        <translation>una hoja de procedimiento preliminar de una soldadura</translation>
    </message>
    <message>
        <source>every weld into FILE.csv or FILE.json</source>
        <translation>todas las soldaduras a FILE.csv o FILE.json</translation>
    </message>
    <message>
        <source>look at a CSV or JSON file; --accept writes it, all or nothing</source>
        <translation>mirar un archivo CSV o JSON; --accept lo escribe, todo o nada</translation>
    </message>
    <message>
        <source>the whole log with its pictures into one FILE</source>
        <translation>el registro entero con sus imágenes en un solo FILE</translation>
    </message>
    <message>
        <source>make the log what a backup FILE holds; the old one is moved aside</source>
        <translation>hacer que el registro sea lo que contiene una copia de seguridad FILE; el viejo se aparta</translation>
    </message>
    <message>
        <source>is the log whole, and what waits to go in</source>
        <translation>si el registro está íntegro, y qué espera para entrar</translation>
    </message>
    <message>
        <source>The log of welds that were made:</source>
        <translation>El registro de las soldaduras hechas:</translation>
    </message>
    <message>
        <source>welds log ACTION --help says more.</source>
        <translation>welds log ACTION --help dice más.</translation>
    </message>
    <message>
        <source>there is no log here yet</source>
        <translation>aquí aún no hay registro</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nueva</translation>
    </message>
    <message>
        <source>duplicate</source>
        <translation>duplicada</translation>
    </message>
    <message>
        <source>bad</source>
        <translation>errónea</translation>
    </message>
    <message>
        <source>written: {file} ({count} welds)</source>
        <translation>escrito: {file} ({count} soldaduras)</translation>
    </message>
    <message>
        <source>row {place}: {standing}: {reason}</source>
        <translation>fila {place}: {standing}: {reason}</translation>
    </message>
    <message>
        <source>nothing written: put the bad rows right first</source>
        <translation>no se escribió nada: corregir antes las filas erróneas</translation>
    </message>
    <message>
        <source>nothing written yet: repeat with --accept</source>
        <translation>aún no se escribió nada: repetir con --accept</translation>
    </message>
    <message>
        <source>written; welds log undo {token} takes them out again</source>
        <translation>escrito; welds log undo {token} las vuelve a quitar</translation>
    </message>
    <message>
        <source>nothing to write</source>
        <translation>nada que escribir</translation>
    </message>
    <message>
        <source>with restore</source>
        <translation>con restore</translation>
    </message>
    <message>
        <source>without it</source>
        <translation>sin ello</translation>
    </message>
    <message>
        <source>restored: {count} welds</source>
        <translation>restaurado: {count} soldaduras</translation>
    </message>
    <message>
        <source>the log that was there is now {file}</source>
        <translation>el registro que había es ahora {file}</translation>
    </message>
    <message>
        <source>backup made: {file}</source>
        <translation>copia de seguridad hecha: {file}</translation>
    </message>
    <message>
        <source>{first} to {last} of {total}</source>
        <translation>{first} a {last} de {total}</translation>
    </message>
    <message>
        <source>none of {total}</source>
        <translation>ninguna de {total}</translation>
    </message>
    <message>
        <source>nothing alike in the log; {stated}</source>
        <translation>nada parecido en el registro; {stated}</translation>
    </message>
    <message>
        <source>family</source>
        <translation>familia</translation>
    </message>
    <message>
        <source>worked-well, worked, failed</source>
        <translation>worked-well, worked, failed</translation>
    </message>
    <message>
        <source>what the bead looked like, what you would change</source>
        <translation>qué aspecto tenía el cordón, qué se cambiaría</translation>
    </message>
    <message>
        <source>when: 2026-03-03 or 2026-03-03T14:05 (now)</source>
        <translation>cuándo: 2026-03-03 o 2026-03-03T14:05 (ahora)</translation>
    </message>
    <message>
        <source>which machine</source>
        <translation>qué máquina</translation>
    </message>
    <message>
        <source>who</source>
        <translation>quién</translation>
    </message>
    <message>
        <source>lot or heat number of the material</source>
        <translation>número de lote o de colada del material</translation>
    </message>
    <message>
        <source>words that have to occur anywhere</source>
        <translation>palabras que tienen que aparecer en algún sitio</translation>
    </message>
    <message>
        <source>tig or mig</source>
        <translation>tig o mig</translation>
    </message>
    <message>
        <source>aluminium, carbon-steel, stainless, ...</source>
        <translation>aluminium, carbon-steel, stainless, ...</translation>
    </message>
    <message>
        <source>part of the metal&apos;s name</source>
        <translation>parte del nombre del metal</translation>
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
        <translation>nombre corriente o número ISO 6520-1</translation>
    </message>
    <message>
        <source>part of the machine&apos;s name</source>
        <translation>parte del nombre de la máquina</translation>
    </message>
    <message>
        <source>part of the welder&apos;s name</source>
        <translation>parte del nombre del soldador</translation>
    </message>
    <message>
        <source>part of the lot</source>
        <translation>parte del lote</translation>
    </message>
    <message>
        <source>a date, this day included</source>
        <translation>una fecha, este día incluido</translation>
    </message>
    <message>
        <source>at least so thick</source>
        <translation>al menos de este espesor</translation>
    </message>
    <message>
        <source>at most so thick</source>
        <translation>como máximo de este espesor</translation>
    </message>
    <message>
        <source>amperes, at least</source>
        <translation>amperios, al menos</translation>
    </message>
    <message>
        <source>amperes, at most</source>
        <translation>amperios, como máximo</translation>
    </message>
    <message>
        <source>yes: with pictures, no: without</source>
        <translation>yes: con imágenes, no: sin ellas</translation>
    </message>
    <message>
        <source>which log</source>
        <translation>qué registro</translation>
    </message>
    <message>
        <source>open it to read, change nothing</source>
        <translation>abrirlo para leer, no cambiar nada</translation>
    </message>
    <message>
        <source>what was set and what came of it</source>
        <translation>qué se ajustó y qué resultó</translation>
    </message>
    <message>
        <source>one setting, as the card names it</source>
        <translation>un ajuste, con el nombre que le da la ficha</translation>
    </message>
    <message>
        <source>short for --set current=A</source>
        <translation>forma corta de --set current=A</translation>
    </message>
    <message>
        <source>burn-through, 401, ...</source>
        <translation>burn-through, 401, ...</translation>
    </message>
    <message>
        <source>a picture, copied</source>
        <translation>una imagen, copiada</translation>
    </message>
    <message>
        <source>which welds</source>
        <translation>qué soldaduras</translation>
    </message>
    <message>
        <source>made_at (newest first), current_a, ...</source>
        <translation>made_at (primero las más nuevas), current_a, ...</translation>
    </message>
    <message>
        <source>smallest or oldest first</source>
        <translation>primero lo más pequeño o lo más antiguo</translation>
    </message>
    <message>
        <source>skip so many (0)</source>
        <translation>saltar tantas (0)</translation>
    </message>
    <message>
        <source>at most so many ({usual})</source>
        <translation>como máximo tantas ({usual})</translation>
    </message>
    <message>
        <source>write one page</source>
        <translation>escribir una página</translation>
    </message>
    <message>
        <source>write it, if no row is bad</source>
        <translation>escribirlo, si ninguna fila es errónea</translation>
    </message>
    <message>
        <source>a whole number from {least} on</source>
        <translation>un número entero desde {least}</translation>
    </message>
    <message>
        <source>uid {uid}, version {version}</source>
        <translation>uid {uid}, versión {version}</translation>
    </message>
    <message>
        <source>to {metal}, {thickness}</source>
        <translation>con {metal}, {thickness}</translation>
    </message>
    <message>
        <source>machine</source>
        <translation>máquina</translation>
    </message>
    <message>
        <source>welder</source>
        <translation>soldador</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>notas</translation>
    </message>
    <message>
        <source>picture: {name}</source>
        <translation>imagen: {name}</translation>
    </message>
    <message>
        <source>already in the log as number {number}</source>
        <translation>ya está en el registro con el número {number}</translation>
    </message>
    <message>
        <source>logged: {weld}</source>
        <translation>registrada: {weld}</translation>
    </message>
    <message>
        <source>changed: {weld}</source>
        <translation>cambiada: {weld}</translation>
    </message>
    <message>
        <source>removed: {weld}</source>
        <translation>quitada: {weld}</translation>
    </message>
    <message>
        <source>taken back; welds log undo {token} brings it again</source>
        <translation>deshecho; welds log undo {token} lo rehace</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>fotos</translation>
    </message>
    <message>
        <source>new pictures</source>
        <translation>imágenes nuevas</translation>
    </message>
    <message>
        <source>none in a list: log those entries one by one</source>
        <translation>ninguna en una lista: registrar esas entradas una por una</translation>
    </message>
    <message>
        <source>an empty list</source>
        <translation>una lista vacía</translation>
    </message>
    <message>
        <source>one entry, or a list of some</source>
        <translation>una entrada, o una lista de varias</translation>
    </message>
    <message>
        <source>logged {number} welds; welds log undo {token} takes them out again</source>
        <translation>registradas {number} soldaduras; welds log undo {token} las vuelve a quitar</translation>
    </message>
    <message>
        <source>to undo: welds log undo {token}</source>
        <translation>para deshacer: welds log undo {token}</translation>
    </message>
    <message>
        <source>NAME=VALUE, as in --set current=112</source>
        <translation>NAME=VALUE, como en --set current=112</translation>
    </message>
    <message>
        <source>options, or JSON on standard input</source>
        <translation>opciones, o JSON por la entrada estándar</translation>
    </message>
    <message>
        <source>more than {size} MB</source>
        <translation>más de {size} MB</translation>
    </message>
    <message>
        <source>a set-up for one joint</source>
        <translation>un ajuste para una unión</translation>
    </message>
    <message>
        <source>set-ups side by side: joints, metals, thicknesses, processes</source>
        <translation>ajustes lado a lado: uniones, metales, espesores, procesos</translation>
    </message>
    <message>
        <source>a wall chart for one metal and process</source>
        <translation>una tabla de pared para un metal y un proceso</translation>
    </message>
    <message>
        <source>what given settings melt in a joint: width, depth, burn-through, cooling</source>
        <translation>qué funden en una unión los ajustes dados: ancho, profundidad, perforación, enfriamiento</translation>
    </message>
    <message>
        <source>from the looks of a bead to causes and the change of setting</source>
        <translation>del aspecto de un cordón a sus causas y al cambio de ajuste</translation>
    </message>
    <message>
        <source>flat length of a folded part: bends, least radius, drawing</source>
        <translation>desarrollo de una pieza plegada: plegados, radio mínimo, dibujo</translation>
    </message>
    <message>
        <source>plug, patch or replace: with the arithmetic</source>
        <translation>tapón, parche o sustitución: con las cuentas</translation>
    </message>
    <message>
        <source>a whole job from a file: check, plan, materials, demo</source>
        <translation>un trabajo entero de un archivo: check, plan, materials, demo</translation>
    </message>
    <message>
        <source>your machines and shelf: init, show, check</source>
        <translation>máquinas y estante propios: init, show, check</translation>
    </message>
    <message>
        <source>the log of welds made: add, list, show, edit, similar, export, backup, ...</source>
        <translation>el registro de soldaduras hechas: add, list, show, edit, similar, export, backup, ...</translation>
    </message>
    <message>
        <source>the reference tables: list, show NAME, check [DIR], sources</source>
        <translation>las tablas de referencia: list, show NAME, check [DIR], sources</translation>
    </message>
    <message>
        <source>standard output</source>
        <translation>salida estándar</translation>
    </message>
    <message>
        <source>{fault} at {place}</source>
        <translation>{fault} en {place}</translation>
    </message>
    <message>
        <source>a fault of the program itself, please report it: {fault}</source>
        <translation>un fallo del propio programa, por favor avisar: {fault}</translation>
    </message>
    <message>
        <source>tables {edition}</source>
        <translation>tablas {edition}</translation>
    </message>
    <message>
        <source>command</source>
        <translation>comando</translation>
    </message>
    <message>
        <source>Open the window.</source>
        <translation>Abrir la ventana.</translation>
    </message>
    <message>
        <source>welds opens the window (--log FILE|URL: on another log); with a command it answers here:</source>
        <translation>welds abre la ventana (--log FILE|URL: con otro registro); con un comando responde aquí:</translation>
    </message>
    <message>
        <source>welds COMMAND --help says more.</source>
        <translation>welds COMMAND --help dice más.</translation>
    </message>
    <message>
        <source>{some} and {one}</source>
        <translation>{some} y {one}</translation>
    </message>
    <message>
        <source>output</source>
        <translation>salida</translation>
    </message>
    <message>
        <source>one of them; give the others a FILE</source>
        <translation>una de ellas; dar a las otras un FILE</translation>
    </message>
    <message>
        <source>Fill the holes, let in a patch or replace the panel: decided with its reasons and the arithmetic. Parts that carry load or whose failure can hurt someone are refused.</source>
        <translation>Llenar los agujeros, poner un parche o sustituir el panel: decidido con sus razones y las cuentas. Se rechazan las piezas que soportan carga o cuyo fallo puede herir a alguien.</translation>
    </message>
    <message>
        <source>what is wrong</source>
        <translation>qué está mal</translation>
    </message>
    <message>
        <source>catalogue id: low-carbon, galvanised, 5052, 304</source>
        <translation>id del catálogo: low-carbon, galvanised, 5052, 304</translation>
    </message>
    <message>
        <source>what the sheet was: 1.2 mm, 0.048 in, 18 ga</source>
        <translation>qué chapa era: 1.2 mm, 0.048 in, 18 ga</translation>
    </message>
    <message>
        <source>what is left of it beside the holes, by micrometer or ultrasound</source>
        <translation>lo que queda de ella junto a los agujeros, medido con micrómetro o ultrasonidos</translation>
    </message>
    <message>
        <source>what the holes lie in: 120 x 80 mm</source>
        <translation>en qué zona están los agujeros: 120 x 80 mm</translation>
    </message>
    <message>
        <source>sheet behind the holes: sound, thin, none (default none)</source>
        <translation>chapa detrás de los agujeros: sound, thin, none (por defecto none)</translation>
    </message>
    <message>
        <source>the whole panel&apos;s size, to weigh a patch against a new one</source>
        <translation>tamaño del panel entero, para sopesar un parche frente a uno nuevo</translation>
    </message>
    <message>
        <source>what it belongs to: bracket, tank, towing, ...</source>
        <translation>a qué pertenece: bracket, tank, towing, ...</translation>
    </message>
    <message>
        <source>process for the seam of a patch: tig or mig</source>
        <translation>proceso para la costura de un parche: tig o mig</translation>
    </message>
    <message>
        <source>what is on the metal: galvanised, old-paint, sealer, ...; may be given more than once</source>
        <translation>qué hay sobre el metal: galvanised, old-paint, sealer, ...; puede darse más de una vez</translation>
    </message>
    <message>
        <source>it carries load</source>
        <translation>soporta carga</translation>
    </message>
    <message>
        <source>water stands in or behind it</source>
        <translation>hay agua estancada dentro o detrás</translation>
    </message>
    <message>
        <source>how the answer comes out</source>
        <translation>cómo sale la respuesta</translation>
    </message>
    <message>
        <source>a page for the bench</source>
        <translation>una página para el taller</translation>
    </message>
    <message>
        <source>the cut-out at full size, for a cutter</source>
        <translation>el recorte a tamaño real, para una cortadora</translation>
    </message>
    <message>
        <source>holes, cut-out and tacks at full size, with a ruler to check the print by</source>
        <translation>agujeros, recorte y puntos a tamaño real, con una regla para comprobar la impresión</translation>
    </message>
    <message>
        <source>metal, thickness, holes and region</source>
        <translation>metal, espesor, agujeros y zona</translation>
    </message>
    <message>
        <source>catalogue id, with or without temper: 5052, 6061-T6, low-carbon, 304</source>
        <translation>id del catálogo, con o sin temple: 5052, 6061-T6, low-carbon, 304</translation>
    </message>
    <message>
        <source>2 mm, 0.080 in, 1/8 in, 14 ga</source>
        <translation>2 mm, 0.080 in, 1/8 in, 14 ga</translation>
    </message>
    <message>
        <source>metal of the second piece, where it differs</source>
        <translation>metal de la segunda pieza, si es distinto</translation>
    </message>
    <message>
        <source>thickness of the second piece, where it differs</source>
        <translation>espesor de la segunda pieza, si es distinto</translation>
    </message>
    <message>
        <source>butt, tee, lap, outside-corner, inside-corner, edge, plug</source>
        <translation>butt, tee, lap, outside-corner, inside-corner, edge, plug</translation>
    </message>
    <message>
        <source>PA, 1G, flat, ... (default PA)</source>
        <translation>PA, 1G, flat, ... (por defecto PA)</translation>
    </message>
    <message>
        <source>gap between the pieces</source>
        <translation>separación entre las piezas</translation>
    </message>
    <message>
        <source>what the filler should favour: strength, ductility, least-cracking, ...</source>
        <translation>qué debe favorecer el aporte: strength, ductility, least-cracking, ...</translation>
    </message>
    <message>
        <source>what is on the metal: galvanised, paint, oil, ...; may be given more than once</source>
        <translation>qué hay sobre el metal: galvanised, paint, oil, ...; puede darse más de una vez</translation>
    </message>
    <message>
        <source>what it was or will be wiped with: acetone, alcohol, chlorinated, unknown-spray</source>
        <translation>con qué se limpió o se limpiará: acetone, alcohol, chlorinated, unknown-spray</translation>
    </message>
    <message>
        <source>what the joint belongs to: bracket, tank, towing, ...</source>
        <translation>a qué pertenece la unión: bracket, tank, towing, ...</translation>
    </message>
    <message>
        <source>indoors, outdoors, enclosed (default indoors)</source>
        <translation>indoors, outdoors, enclosed (por defecto indoors)</translation>
    </message>
    <message>
        <source>length of the weld</source>
        <translation>longitud de la soldadura</translation>
    </message>
    <message>
        <source>unhurried or brisk (default unhurried)</source>
        <translation>unhurried o brisk (por defecto unhurried)</translation>
    </message>
    <message>
        <source>the MIG wire on the machine</source>
        <translation>el hilo MIG/MAG de la máquina</translation>
    </message>
    <message>
        <source>short-circuit, spray, globular, pulsed</source>
        <translation>short-circuit, spray, globular, pulsed</translation>
    </message>
    <message>
        <source>what is to be welded</source>
        <translation>qué se va a soldar</translation>
    </message>
    <message>
        <source>The reference tables: list, show NAME, check [DIR], sources [ID].</source>
        <translation>Las tablas de referencia: list, show NAME, check [DIR], sources [ID].</translation>
    </message>
    <message>
        <source>a table&apos;s name, a folder for check, a source&apos;s id</source>
        <translation>el nombre de una tabla, una carpeta para check, el id de una fuente</translation>
    </message>
    <message>
        <source>with show: every column, as CSV</source>
        <translation>con show: todas las columnas, como CSV</translation>
    </message>
    <message>
        <source>table</source>
        <translation>tabla</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>filas</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>a table&apos;s name: {names}</source>
        <translation>el nombre de una tabla: {names}</translation>
    </message>
    <message>
        <source>source</source>
        <translation>fuente</translation>
    </message>
    <message>
        <source>an id that `welds tables sources` lists</source>
        <translation>un id de los que muestra `welds tables sources`</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leído</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>Rests on it</source>
        <translation>Se basa en ella</translation>
    </message>
    <message>
        <source>nothing more</source>
        <translation>nada más</translation>
    </message>
    <message>
        <source>; nearest: {nearest}</source>
        <translation>; lo más cercano: {nearest}</translation>
    </message>
    <message>
        <source>{field}: {given!s:.80} is not usable; allowed: {allowed}{hint}</source>
        <translation>{field}: {given!s:.80} no vale; se admite: {allowed}{hint}</translation>
    </message>
    <message>
        <source>one reading: {readings}</source>
        <translation>una sola lectura: {readings}</translation>
    </message>
    <message>
        <source>; nearest that can be answered: {nearest}</source>
        <translation>; lo más cercano que se puede responder: {nearest}</translation>
    </message>
    <message>
        <source>stopped; nothing was changed</source>
        <translation>detenido; no se cambió nada</translation>
    </message>
    <message>
        <source>{quantity}: {given} is outside the formula&apos;s range; allowed: {allowed}</source>
        <translation>{quantity}: {given} está fuera del alcance de la fórmula; se admite: {allowed}</translation>
    </message>
    <message>
        <source>, row {row}</source>
        <translation>, fila {row}</translation>
    </message>
    <message>
        <source>, column {column}</source>
        <translation>, columna {column}</translation>
    </message>
    <message>
        <source>; what can be done: {offers}</source>
        <translation>; qué se puede hacer: {offers}</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Mayús+Tab</translation>
    </message>
    <message>
        <source>Next input, previous input</source>
        <translation>Campo siguiente, campo anterior</translation>
    </message>
    <message>
        <source>Arrow keys</source>
        <translation>Flechas</translation>
    </message>
    <message>
        <source>Another joint, process, place or hand; a little more or less on the slider</source>
        <translation>Otra unión, proceso, lugar o mano; un poco más o menos en el deslizador</translation>
    </message>
    <message>
        <source>Up, Down on the slider</source>
        <translation>Arriba, Abajo en el deslizador</translation>
    </message>
    <message>
        <source>Next gauge mark</source>
        <translation>Marca de calibre siguiente</translation>
    </message>
    <message>
        <source>Down in the metal field</source>
        <translation>Abajo en el campo del metal</translation>
    </message>
    <message>
        <source>Open the list, go into it</source>
        <translation>Abrir la lista, entrar en ella</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Tick a box, open or close a Why</source>
        <translation>Marcar una casilla, abrir o cerrar un «Por qué»</translation>
    </message>
    <message>
        <source>Alt with an underlined letter</source>
        <translation>Alt con una letra subrayada</translation>
    </message>
    <message>
        <source>Straight to that input</source>
        <translation>Directo a ese campo</translation>
    </message>
    <message>
        <source>Program: welds {version}</source>
        <translation>Programa: welds {version}</translation>
    </message>
    <message>
        <source>Python {python}, Qt {qt}</source>
        <translation>Python {python}, Qt {qt}</translation>
    </message>
    <message>
        <source>Licence: Apache-2.0. Qt and PySide6 are used under the LGPL version 3.</source>
        <translation>Licencia: Apache-2.0. Qt y PySide6 se usan bajo la LGPL versión 3.</translation>
    </message>
    <message>
        <source>Tables: {tables} with {rows} rows from {sources} sources</source>
        <translation>Tablas: {tables} con {rows} filas de {sources} fuentes</translation>
    </message>
    <message>
        <source>Tables as shipped: {edition}</source>
        <translation>Tablas tal como se entregan: {edition}</translation>
    </message>
    <message>
        <source>printed source</source>
        <translation>fuente impresa</translation>
    </message>
    <message>
        <source>quoted source</source>
        <translation>fuente citada</translation>
    </message>
    <message>
        <source>worked out</source>
        <translation>calculado</translation>
    </message>
    <message>
        <source>shop practice</source>
        <translation>práctica de taller</translation>
    </message>
    <message>
        <source>{setting} now {figure}</source>
        <translation>{setting}: ahora {figure}</translation>
    </message>
    <message>
        <source>Changed for {faults}: {moved}.</source>
        <translation>Cambiado por {faults}: {moved}.</translation>
    </message>
    <message>
        <source>picture file</source>
        <translation>archivo de imagen</translation>
    </message>
    <message>
        <source>a name that ends in .png or .svg</source>
        <translation>un nombre que acabe en .png o .svg</translation>
    </message>
    <message>
        <source>stick-out</source>
        <translation>saliente</translation>
    </message>
    <message>
        <source>arc length</source>
        <translation>long. de arco</translation>
    </message>
    <message>
        <source>cup, {size}</source>
        <translation>tobera, {size}</translation>
    </message>
    <message>
        <source>no. {number}</source>
        <translation>n.º {number}</translation>
    </message>
    <message>
        <source>gas lens</source>
        <translation>difusor</translation>
    </message>
    <message>
        <source>tungsten, {angle}°</source>
        <translation>tungsteno, {angle}°</translation>
    </message>
    <message>
        <source>tip to work</source>
        <translation>tubo a pieza</translation>
    </message>
    <message>
        <source>nozzle</source>
        <translation>tobera</translation>
    </message>
    <message>
        <source>contact tip</source>
        <translation>tubo de contacto</translation>
    </message>
    <message>
        <source>hole</source>
        <translation>agujero</translation>
    </message>
    <message>
        <source>backing bar</source>
        <translation>pletina de respaldo</translation>
    </message>
    <message>
        <source>argon</source>
        <translation>argón</translation>
    </message>
    <message>
        <source>behind the joint</source>
        <translation>detrás de la unión</translation>
    </message>
    <message>
        <source>filler, at {angle}°</source>
        <translation>aporte, a {angle}°</translation>
    </message>
    <message>
        <source>{tool} leans back</source>
        <translation>{tool}: inclinación hacia atrás</translation>
    </message>
    <message>
        <source>{tool} leans ahead</source>
        <translation>{tool}: inclinación hacia delante</translation>
    </message>
    <message>
        <source>{angle}°, push</source>
        <translation>{angle}°, empujando</translation>
    </message>
    <message>
        <source>{angle}°, drag</source>
        <translation>{angle}°, arrastrando</translation>
    </message>
    <message>
        <source>upright</source>
        <translation>vertical</translation>
    </message>
    <message>
        <source>to the face</source>
        <translation>a la cara</translation>
    </message>
    <message>
        <source>to the base</source>
        <translation>a la base</translation>
    </message>
    <message>
        <source>to lower sheet</source>
        <translation>a la chapa inferior</translation>
    </message>
    <message>
        <source>at the edge</source>
        <translation>al canto</translation>
    </message>
    <message>
        <source>halfway</source>
        <translation>bisectriz</translation>
    </message>
    <message>
        <source>{angle}° off halfway</source>
        <translation>{angle}° desde la bisectriz</translation>
    </message>
    <message>
        <source>Leans so that the thicker side gets more of the heat.</source>
        <translation>Inclinada para que el lado más grueso reciba más calor.</translation>
    </message>
    <message>
        <source>Drawn with {drawn} stick-out: at {given} the cup would touch the metal.</source>
        <translation>Dibujado con saliente de {drawn}: con {given} la tobera tocaría el metal.</translation>
    </message>
    <message>
        <source>Nozzle drawn back: it would touch the metal.</source>
        <translation>Tobera dibujada más atrás: tocaría el metal.</translation>
    </message>
    <message>
        <source>Edges bevelled to {angle}°.</source>
        <translation>Bordes biselados a {angle}°.</translation>
    </message>
    <message>
        <source>seen from above</source>
        <translation>visto desde arriba</translation>
    </message>
    <message>
        <source>across the weld</source>
        <translation>a través del cordón</translation>
    </message>
    <message>
        <source>along the weld</source>
        <translation>a lo largo del cordón</translation>
    </message>
    <message>
        <source>EN: melts the work</source>
        <translation>EN: funde la pieza</translation>
    </message>
    <message>
        <source>EP: lifts the oxide</source>
        <translation>EP: levanta el óxido</translation>
    </message>
    <message>
        <source>DC, electrode negative: steady</source>
        <translation>CC, electrodo negativo: continua</translation>
    </message>
    <message>
        <source>DC, electrode positive: steady</source>
        <translation>CC, electrodo positivo: continua</translation>
    </message>
    <message>
        <source>ms</source>
        <translation>ms</translation>
    </message>
    <message>
        <source>{time:.3g} ms a cycle, {frequency:.0f} Hz</source>
        <translation>{time:.3g} ms por ciclo, {frequency:.0f} Hz</translation>
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
        <translation>PA, plana</translation>
    </message>
    <message>
        <source>PB, horizontal</source>
        <translation>PB, horizontal</translation>
    </message>
    <message>
        <source>PC, on a wall, level</source>
        <translation>PC, cornisa</translation>
    </message>
    <message>
        <source>PD, overhead corner</source>
        <translation>PD, en ángulo bajo techo</translation>
    </message>
    <message>
        <source>PE, overhead</source>
        <translation>PE, bajo techo</translation>
    </message>
    <message>
        <source>PF, vertical up</source>
        <translation>PF, vertical ascendente</translation>
    </message>
    <message>
        <source>PG, vertical down</source>
        <translation>PG, vertical descendente</translation>
    </message>
    <message>
        <source>SET UP BEFORE WELDING ALUMINIUM CORNERS
1. Page Set-up: choose the metal, type the thickness as you would say it (0.080, 14 ga, 2 mm), click the joint.
2. Tick whatever may be on the metal, and what the part belongs to. Read what comes up on top; a red one has to be ticked before the card is ready.
3. Set the machine to the large figures; the range beside each is where to look if the first bead does not please. Why says where a figure comes from.
4. Print (Ctrl+P) puts it on one page; F9 shows the main figures across the bench.
5. Run a bead on scrap of the same sheet first.</source>
        <translation>AJUSTAR ANTES DE SOLDAR ESQUINAS DE ALUMINIO
1. Página Ajuste: elegir el metal, escribir el espesor tal como se dice (0.080, 14 ga, 2 mm), hacer clic en la unión.
2. Marcar todo lo que pueda haber sobre el metal y a qué pertenece la pieza. Leer lo que aparece arriba; lo rojo tiene que marcarse antes de que la ficha esté lista.
3. Poner la máquina en las cifras grandes; el margen junto a cada una es donde buscar si el primer cordón no gusta. «Por qué» dice de dónde viene una cifra.
4. Imprimir (Ctrl+P) lo pone en una página; F9 muestra las cifras principales para verlas desde el otro lado del taller.
5. Hacer primero un cordón en un recorte de la misma chapa.</translation>
    </message>
    <message>
        <source>LOG A SUCCESSFUL SETTING
1. With the card in front press Log this weld (Ctrl+L). It is filled in from the card.
2. Put right what you changed at the machine, add a picture if you like.
3. Press how it came out: that logs it, and the page Log can take it back. The next card for a like joint shows the weld and has learned from it.</source>
        <translation>REGISTRAR UN AJUSTE QUE SALIÓ BIEN
1. Con la ficha delante, pulsar «Registrar soldadura» (Ctrl+L). Viene rellenado con la ficha.
2. Corregir lo que se cambió en la máquina; añadir una imagen si se quiere.
3. Pulsar cómo salió: eso la registra, y la página Registro puede deshacerlo. La próxima ficha para una unión parecida muestra la soldadura y ha aprendido de ella.</translation>
    </message>
    <message>
        <source>COMPARE JOINT TYPES SIDE BY SIDE
1. Page Side by side (Ctrl+2) starts with the card you came from.
2. Add columns: another joint, metal, thickness or process. Rows that differ stand out and say why.
3. Move the thickness slider: all columns follow, and the curve shows current over thickness.
4. A column can be opened as a card, logged or printed.</source>
        <translation>COMPARAR TIPOS DE UNIÓN LADO A LADO
1. La página Lado a lado (Ctrl+2) empieza con la ficha de la que se viene.
2. Añadir columnas: otra unión, otro metal, espesor o proceso. Las filas que difieren resaltan y dicen por qué.
3. Mover el deslizador de espesor: todas las columnas lo siguen, y la curva muestra la corriente según el espesor.
4. Una columna se puede abrir como ficha, registrar o imprimir.</translation>
    </message>
    <message>
        <source>WHEN A BEAD WENT WRONG
Press What went wrong (F7), pick what it looks like, read the cause, and let the card take the change. Ctrl+K leads anywhere: type 5052 corner, bench, or undercut.</source>
        <translation>CUANDO UN CORDÓN SALIÓ MAL
Pulsar «Qué salió mal» (F7), elegir el aspecto, leer la causa y pasar el cambio a la ficha. Ctrl+K lleva a cualquier sitio: escribir 5052 corner, taller o mordedura.</translation>
    </message>
    <message>
        <source>WHERE A FIGURE COMES FROM
Schedules out of handbooks and standards are brought to one case and pooled: better grades count more, each document has one vote, and the band is what the documents print for themselves together with how far they lie apart. Factors for joint, position, alloy and hand follow, each a line under Why. Then come your log, and the limits of your machine, wire and tungsten.</source>
        <translation>DE DÓNDE VIENE UNA CIFRA
Las tablas de parámetros de manuales y normas se llevan a un mismo caso y se juntan: los mejores grados cuentan más, cada documento tiene un voto, y la franja es lo que los documentos indican por sí mismos junto con lo que distan entre ellos. Siguen los factores de unión, posición, aleación y mano, cada uno una línea en «Por qué». Luego vienen el registro propio y los límites de la máquina, el hilo y el tungsteno propios.</translation>
    </message>
    <message>
        <source>GRADES
Printed: read in the document itself. Quoted: read where another document cites it. Worked out: computed from such figures. Shop practice: common, with no published source. From memory: to be checked against print. The last two have a dashed edge.</source>
        <translation>GRADOS
Impreso: leído en el propio documento. Citado: leído donde otro documento lo cita. Calculado: obtenido de tales cifras. Práctica de taller: común, sin fuente publicada. De memoria: por comprobar con el impreso. Los dos últimos llevan borde discontinuo.</translation>
    </message>
    <message>
        <source>HOW GOOD IT IS
The starting current lies within 4 % of the schedule rows at the median and within 13 % for nine in ten; a document left out and predicted from the others, within 6 and 17 %. Many MIG rows for thin sheet are from memory. The heat picture carries its own error as a band. The method, its assumptions and all scores stand in DEVELOPERS.md.</source>
        <translation>QUÉ FIABILIDAD TIENE
La corriente de inicio queda dentro de un 4 % de las filas de las tablas en la mediana y dentro de un 13 % en nueve de cada diez; un documento dejado fuera y predicho con los demás, dentro de un 6 y un 17 %. Muchas filas MIG/MAG para chapa fina son de memoria. La imagen térmica lleva su propio error como franja. El método, sus supuestos y todos los resultados están en DEVELOPERS.md.</translation>
    </message>
    <message>
        <source>WHAT IT IS NOT
It is no welding procedure. Local codes, the equipment&apos;s and the vehicle&apos;s own manuals and your test pieces come first; what can hurt someone when it fails belongs to a qualified welder.</source>
        <translation>QUÉ NO ES
No es un procedimiento de soldadura. Van primero las normas locales, los manuales propios del equipo y del vehículo y las probetas propias; lo que puede herir a alguien si falla es asunto de un soldador cualificado.</translation>
    </message>
    <message>
        <source>it is not text</source>
        <translation>no es texto</translation>
    </message>
    <message>
        <source>The last request could not be read ({reason}); starting fresh.</source>
        <translation>No se pudo leer la última petición ({reason}); se empieza de nuevo.</translation>
    </message>
    <message>
        <source>This request will not be remembered: {reason}.</source>
        <translation>Esta petición no se recordará: {reason}.</translation>
    </message>
    <message>
        <source>The last request is unreadable ({problem}) and stays where it is: {reason}.</source>
        <translation>La última petición es ilegible ({problem}) y se queda donde está: {reason}.</translation>
    </message>
    <message>
        <source>The last request was unreadable ({problem}); starting fresh. Kept as {name}.</source>
        <translation>La última petición era ilegible ({problem}); se empieza de nuevo. Guardada como {name}.</translation>
    </message>
    <message>
        <source>not a file of this program&apos;s version</source>
        <translation>no es un archivo de esta versión del programa</translation>
    </message>
    <message>
        <source>the recent requests are not a list</source>
        <translation>las peticiones recientes no son una lista</translation>
    </message>
    <message>
        <source>units are {units!r:.40}</source>
        <translation>las unidades son {units!r:.40}</translation>
    </message>
    <message>
        <source>the request is not a list of named texts</source>
        <translation>la petición no es una lista de textos con nombre</translation>
    </message>
    <message>
        <source>the request holds something that is not text</source>
        <translation>la petición contiene algo que no es texto</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>litros</translation>
    </message>
    <message>
        <source>cubic feet</source>
        <translation>pies cúbicos</translation>
    </message>
    <message>
        <source>{given} is not usable; allowed: a number from {low} to {high} {unit}</source>
        <translation>{given} no vale; se admite: un número de {low} a {high} {unit}</translation>
    </message>
    <message>
        <source>{feed} {unit} is above the highest feed</source>
        <translation>{feed} {unit} está por encima de la velocidad de hilo más alta</translation>
    </message>
    <message>
        <source>schedule row, {grade}</source>
        <translation>fila de tabla, {grade}</translation>
    </message>
    <message>
        <source>your weld, {outcome}</source>
        <translation>soldadura propia, {outcome}</translation>
    </message>
    <message>
        <source>worked well</source>
        <translation>muy bien</translation>
    </message>
    <message>
        <source>worked</source>
        <translation>bien</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>falló</translation>
    </message>
    <message>
        <source>{title} {start:.0f} A ({low:.0f} to {high:.0f})</source>
        <translation>{title} {start:.0f} A ({low:.0f} a {high:.0f})</translation>
    </message>
    <message>
        <source>{title}, {thickness}: {low:.0f} to {high:.0f} A, {grade}, {source}</source>
        <translation>{title}, {thickness}: {low:.0f} a {high:.0f} A, {grade}, {source}</translation>
    </message>
    <message>
        <source>{current:.0f} A by its wire feed</source>
        <translation>{current:.0f} A según su velocidad de hilo</translation>
    </message>
    <message>
        <source>your weld of {made_on}</source>
        <translation>soldadura propia del {made_on}</translation>
    </message>
    <message>
        <source>your weld</source>
        <translation>soldadura propia</translation>
    </message>
    <message>
        <source>{metal} {thickness}, position {position}</source>
        <translation>{metal} {thickness}, posición {position}</translation>
    </message>
    <message>
        <source>{title}: {frequency}, {percent:.0f} % EN, {current}</source>
        <translation>{title}: {frequency}, {percent:.0f} % EN, {current}</translation>
    </message>
    <message>
        <source>kept: {figures}</source>
        <translation>guardado: {figures}</translation>
    </message>
    <message>
        <source>Conduction only, give or take its error: to think with, not a procedure.</source>
        <translation>Solo conducción, con su margen de error: para pensar, no es un procedimiento.</translation>
    </message>
    <message>
        <source>seen from above; ring: the arc&apos;s spot</source>
        <translation>desde arriba; anillo: el arco</translation>
    </message>
    <message>
        <source>pool {length}</source>
        <translation>baño {length}</translation>
    </message>
    <message>
        <source>nothing melts</source>
        <translation>no funde nada</translation>
    </message>
    <message>
        <source>stays cold</source>
        <translation>queda frío</translation>
    </message>
    <message>
        <source>melts the face</source>
        <translation>funde la cara</translation>
    </message>
    <message>
        <source>melts through</source>
        <translation>funde del todo</translation>
    </message>
    <message>
        <source>burns through</source>
        <translation>perfora</translation>
    </message>
    <message>
        <source>the card&apos;s band</source>
        <translation>la franja de la ficha</translation>
    </message>
    <message>
        <source>heat-affected, above {limit}</source>
        <translation>afectado por el calor, por encima de {limit}</translation>
    </message>
    <message>
        <source>melted, above {melting}</source>
        <translation>fundido, por encima de {melting}</translation>
    </message>
    <message>
        <source>edge if the heat is {error:.0%} off</source>
        <translation>borde si el calor se desvía un {error:.0%}</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>guardado</translation>
    </message>
    <message>
        <source>added metal, by the wire feed</source>
        <translation>metal añadido, según la velocidad de hilo</translation>
    </message>
    <message>
        <source>added metal, at a usual size</source>
        <translation>metal añadido, de tamaño habitual</translation>
    </message>
    <message>
        <source>Pool</source>
        <translation>Baño</translation>
    </message>
    <message>
        <source>{length} long</source>
        <translation>{length} de largo</translation>
    </message>
    <message>
        <source>real pools trail longer</source>
        <translation>los baños reales dejan más cola</translation>
    </message>
    <message>
        <source>Heat-affected</source>
        <translation>Zona afectada</translation>
    </message>
    <message>
        <source>{length} to each side</source>
        <translation>{length} a cada lado</translation>
    </message>
    <message>
        <source>beside the melted metal, above {limit}</source>
        <translation>junto al metal fundido, por encima de {limit}</translation>
    </message>
    <message>
        <source>Heat input</source>
        <translation>Aporte térmico</translation>
    </message>
    <message>
        <source>EN 1011-1, arc energy times process factor</source>
        <translation>EN 1011-1, energía de arco por factor del proceso</translation>
    </message>
    <message>
        <source>Cooling t8/5</source>
        <translation>Enfriamiento t8/5</translation>
    </message>
    <message>
        <source>from 800 to 500 °C, EN 1011-2</source>
        <translation>de 800 a 500 °C, EN 1011-2</translation>
    </message>
    <message>
        <source>melts from {melts_a:.0f} A, falls out from {falls_a:.0f} A</source>
        <translation>funde desde {melts_a:.0f} A, se cae desde {falls_a:.0f} A</translation>
    </message>
    <message>
        <source>melts through from {through_a:.0f} A</source>
        <translation>funde del todo desde {through_a:.0f} A</translation>
    </message>
    <message>
        <source>; the card&apos;s band is {low:.0f} to {high:.0f} A</source>
        <translation>; la franja de la ficha es {low:.0f} a {high:.0f} A</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Burns through: the pool falls out. {share:.0%} less current would hold it.</source>
        <translation>Perfora: el baño se cae. Con un {share:.0%} menos de corriente aguantaría.</translation>
    </message>
    <message>
        <source>Likely burns through: the pool falls out. {share:.0%} less current would hold it.</source>
        <translation>Probablemente perfora: el baño se cae. Con un {share:.0%} menos de corriente aguantaría.</translation>
    </message>
    <message>
        <source>Stays cold: at least one piece does not melt.</source>
        <translation>Queda frío: al menos una pieza no funde.</translation>
    </message>
    <message>
        <source>Near burning through: {near:.0%} more current and the pool falls out.</source>
        <translation>Cerca de perforar: con un {near:.0%} más de corriente el baño se cae.</translation>
    </message>
    <message>
        <source>Melts, but not through to the root.</source>
        <translation>Funde, pero no hasta la raíz.</translation>
    </message>
    <message>
        <source>Just melts through: within the model&apos;s error it may stay cold.</source>
        <translation>Funde justo del todo: dentro del error del modelo puede quedar frío.</translation>
    </message>
    <message>
        <source>Just melts both pieces: within the model&apos;s error it may stay cold.</source>
        <translation>Funde justo ambas piezas: dentro del error del modelo puede quedar frío.</translation>
    </message>
    <message>
        <source>Melts right through and holds: {room:.0%} more current before the pool falls out.</source>
        <translation>Funde del todo y aguanta: un {room:.0%} más de corriente antes de que el baño se caiga.</translation>
    </message>
    <message>
        <source>Melts and holds: {room:.0%} more current before the pool falls out.</source>
        <translation>Funde y aguanta: un {room:.0%} más de corriente antes de que el baño se caiga.</translation>
    </message>
    <message>
        <source>up to {length} at the hot end of the error</source>
        <translation>hasta {length} en el extremo caliente del error</translation>
    </message>
    <message>
        <source>{length} to right through</source>
        <translation>{length} hasta fundir del todo</translation>
    </message>
    <message>
        <source>give or take {share:.0%}</source>
        <translation>más o menos {share:.0%}</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>Depth into the sheet</source>
        <translation>Profundidad en la chapa</translation>
    </message>
    <message>
        <source>right through, {length} at the root</source>
        <translation>del todo, {length} en la raíz</translation>
    </message>
    <message>
        <source>right through, {length} on the back</source>
        <translation>del todo, {length} en el reverso</translation>
    </message>
    <message>
        <source>at the cold end of the error only {length} deep</source>
        <translation>en el extremo frío del error, solo {length} de profundidad</translation>
    </message>
    <message>
        <source>over the whole of the error</source>
        <translation>en todo el margen de error</translation>
    </message>
    <message>
        <source>Width on the face</source>
        <translation>Ancho en la cara</translation>
    </message>
    <message>
        <source>From the edge</source>
        <translation>Desde el canto</translation>
    </message>
    <message>
        <source>From the root</source>
        <translation>Desde la raíz</translation>
    </message>
    <message>
        <source>{length} along the face</source>
        <translation>{length} a lo largo de la cara</translation>
    </message>
    <message>
        <source>{melted} melted, {leg} leg</source>
        <translation>{melted} fundido, cateto {leg}</translation>
    </message>
    <message>
        <source>; the leg is the wire&apos;s metal, which fuses more beneath it</source>
        <translation>; el cateto es metal del hilo, que debajo funde más</translation>
    </message>
    <message>
        <source>{length} deep</source>
        <translation>{length} de profundidad</translation>
    </message>
    <message>
        <source>read in the document itself</source>
        <translation>leído en el propio documento</translation>
    </message>
    <message>
        <source>read in another document that cites it</source>
        <translation>leído en otro documento que lo cita</translation>
    </message>
    <message>
        <source>worked out from printed values</source>
        <translation>calculado a partir de valores impresos</translation>
    </message>
    <message>
        <source>shop practice, no document</source>
        <translation>práctica de taller, sin documento</translation>
    </message>
    <message>
        <source>from memory, not checked against print</source>
        <translation>de memoria, sin comprobar con el impreso</translation>
    </message>
    <message>
        <source>this program&apos;s own fit</source>
        <translation>ajuste propio de este programa</translation>
    </message>
    <message>
        <source>WHAT IS RECKONED</source>
        <translation>QUÉ SE CALCULA</translation>
    </message>
    <message>
        <source>- Arc: {voltage:.1f} V times {current:.0f} A. Of that {middle:.0%} ({low:.0%} to {high:.0%}) reaches the work ({text}).</source>
        <translation>- Arco: {voltage:.1f} V por {current:.0f} A. De eso, {middle:.0%} ({low:.0%} a {high:.0%}) llega a la pieza ({text}).</translation>
    </message>
    <message>
        <source>  Grade: {grade}. Source: {citation}.</source>
        <translation>  Grado: {grade}. Fuente: {citation}.</translation>
    </message>
    <message>
        <source>- The heat spreads by conduction only, from a round spot that travels steadily over a plate of finite thickness. Stirring in the pool is left out.</source>
        <translation>- El calor se propaga solo por conducción, desde una mancha redonda que avanza uniformemente sobre una placa de espesor finito. La agitación del baño se deja fuera.</translation>
    </message>
    <message>
        <source>- The metal&apos;s properties are means from room temperature to melting; the heat of fusion is spread over that rise. What melts is drawn at the solidus, {melting}: {conductivity:.0f} W/(m K), {density:.0f} kg/m3.</source>
        <translation>- Las propiedades del metal son medias desde temperatura ambiente hasta la fusión; el calor de fusión se reparte en esa subida. Lo que funde se dibuja en el sólidus, {melting}: {conductivity:.0f} W/(m K), {density:.0f} kg/m3.</translation>
    </message>
    <message>
        <source>- Each piece is seen as a plate of its own that takes a share of the heat by its ways out and its thickness; here {shares}. The figures below the picture are of the piece that melts through first.</source>
        <translation>- Cada pieza se ve como una placa propia que toma una parte del calor según sus vías de salida y su espesor; aquí {shares}. Las cifras bajo la imagen son de la pieza que primero funde del todo.</translation>
    </message>
    <message>
        <source>- Falling out: the sag of the liquid under its own weight over the open root, plus what arc and drops press in, against a quarter of the thickness (the limit of ISO 5817 level D).</source>
        <translation>- Caída: la flecha del líquido por su propio peso sobre la raíz abierta, más lo que empujan el arco y las gotas, frente a una cuarta parte del espesor (el límite de ISO 5817 nivel D).</translation>
    </message>
    <message>
        <source>- Added metal: for MIG its section follows from the wire feed that the current melts, and the heat the wire takes is left out of the plate; for TIG, corner and edge it is drawn at a usual size.</source>
        <translation>- Metal añadido: en MIG/MAG su sección sale de la velocidad de hilo que funde la corriente, y el calor que se lleva el hilo no se cuenta en la placa; en TIG, esquina y canto se dibuja de un tamaño habitual.</translation>
    </message>
    <message>
        <source>HOW GOOD IT IS</source>
        <translation>QUÉ FIABILIDAD TIENE</translation>
    </message>
    <message>
        <source>- Error: {error:.0%} in the heat is typical. Two in three of 108 printed butts lie this near. The dotted lines and the smeared borders of the gauge show it.</source>
        <translation>- Error: lo típico es un {error:.0%} del calor. Dos de cada tres de 108 uniones a tope publicadas quedan así de cerca. Lo muestran las líneas de puntos y los bordes difuminados del indicador.</translation>
    </message>
    <message>
        <source>- Fitted, once for all metals, on printed single-pass butt rows: AC efficiency {efficiency:g} (give or take {spread:g}; published values lie lower), spot {tig_spot:g} mm for TIG and {mig_spot:g} mm for MIG, dent of a MIG arc {mig_dent:g} mm at 100 A.</source>
        <translation>- Ajustado, una vez para todos los metales, a filas publicadas de uniones a tope de una pasada: rendimiento CA {efficiency:g} (más o menos {spread:g}; los valores publicados son más bajos), mancha {tig_spot:g} mm para TIG y {mig_spot:g} mm para MIG/MAG, hundimiento de un arco MIG/MAG {mig_dent:g} mm a 100 A.</translation>
    </message>
    <message>
        <source>- Fillet, corner and edge joints were not fitted: the error there is not known and may be larger.</source>
        <translation>- Las uniones en ángulo, de esquina y de canto no se ajustaron: ahí el error no se conoce y puede ser mayor.</translation>
    </message>
    <message>
        <source>TRENDS ONLY (a direction, no published size)</source>
        <translation>SOLO TENDENCIAS (un sentido, ninguna magnitud publicada)</translation>
    </message>
    <message>
        <source>- AC frequency and balance, counted from the card&apos;s own figures: a higher frequency narrows the arc, more electrode negative leaves less heat in the tungsten and more in the work.</source>
        <translation>- Frecuencia y balance CA, contados desde las cifras propias de la ficha: una frecuencia más alta estrecha el arco, más electrodo negativo deja menos calor en el tungsteno y más en la pieza.</translation>
    </message>
    <message>
        <source>- Voltage: until it is moved by hand it follows the current along the load line of IEC 60974-1.</source>
        <translation>- Tensión: hasta que se mueve a mano, sigue a la corriente por la recta de carga de IEC 60974-1.</translation>
    </message>
    <message>
        <source>STANDARDS USED</source>
        <translation>NORMAS USADAS</translation>
    </message>
    <message>
        <source>- Heat input: EN 1011-1. Cooling time t8/5 (carbon steel only): EN 1011-2, shape factors from memory.</source>
        <translation>- Aporte térmico: EN 1011-1. Tiempo de enfriamiento t8/5 (solo acero al carbono): EN 1011-2, factores de forma de memoria.</translation>
    </message>
    <message>
        <source>To think with, not a procedure. Try it on scrap of the same metal and thickness, cut it and look.</source>
        <translation>Para pensar, no es un procedimiento. Probarlo en un recorte del mismo metal y espesor, cortarlo y mirar.</translation>
    </message>
    <message>
        <source>- Gap: the wire fills it, both edges melt back beside it, and the part of the spot that falls into it heats them over the whole thickness.</source>
        <translation>- Separación: el hilo la llena, ambos bordes se derriten junto a ella, y la parte de la mancha que cae dentro los calienta en todo el espesor.</translation>
    </message>
    <message>
        <source>- The parts start at {warm}.</source>
        <translation>- Las piezas empiezan a {warm}.</translation>
    </message>
    <message>
        <source>both the same</source>
        <translation>ambas igual</translation>
    </message>
    <message>
        <source>the first piece ({thickness:.2f} mm) {share:.0%} for each way out, the other ({other_thickness:.2f} mm) {other_share:.0%}</source>
        <translation>la primera pieza ({thickness:.2f} mm) {share:.0%} por cada vía de salida, la otra ({other_thickness:.2f} mm) {other_share:.0%}</translation>
    </message>
    <message>
        <source>- Corner and edge: a bare edge melts away sooner than this picture, which sees a sheet, says.</source>
        <translation>- Esquina y canto: un borde libre se derrite antes de lo que dice esta imagen, que ve una chapa.</translation>
    </message>
    <message>
        <source>- Fillets: what the arc itself melts is drawn. Liquid metal that flows out from under it fuses a little further, which is not reckoned.</source>
        <translation>- Cordones en ángulo: se dibuja lo que funde el arco mismo. El metal líquido que fluye desde debajo de él funde un poco más allá, y eso no se calcula.</translation>
    </message>
    <message>
        <source>- Lap: the upper edge meets the arc from two sides and melts back sooner than drawn.</source>
        <translation>- A solape: el borde superior recibe el arco por dos lados y se derrite antes de lo dibujado.</translation>
    </message>
    <message>
        <source>- No temperature is stated from which this metal changes: no heat-affected zone is drawn.</source>
        <translation>- No se indica ninguna temperatura a partir de la cual cambie este metal: no se dibuja zona afectada por el calor.</translation>
    </message>
    <message>
        <source>- Heat-affected: above {limit}, the metal is no longer what it was (limits from memory).</source>
        <translation>- Zona afectada por el calor: por encima de {limit} el metal ya no es lo que era (límites de memoria).</translation>
    </message>
    <message>
        <source>metal temperature</source>
        <translation>temperatura del metal</translation>
    </message>
    <message>
        <source>AC frequency</source>
        <translation>Frecuencia CA</translation>
    </message>
    <message>
        <source>a name ending in {kinds}</source>
        <translation>un nombre que acabe en {kinds}</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>{waste:.0%} left over</source>
        <translation>{waste:.0%} sobrante</translation>
    </message>
    <message>
        <source>{length} flat</source>
        <translation>{length} sin plegar</translation>
    </message>
    <message>
        <source>{count} tacks</source>
        <translation>{count} puntos</translation>
    </message>
    <message>
        <source>log, {joint}: {words}</source>
        <translation>registro, {joint}: {words}</translation>
    </message>
    <message>
        <source>for {joints}</source>
        <translation>para {joints}</translation>
    </message>
    <message>
        <source>{name}, line {line}: {problem}</source>
        <translation>{name}, línea {line}: {problem}</translation>
    </message>
    <message>
        <source>not answered</source>
        <translation>sin respuesta</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>tira</translation>
    </message>
    <message>
        <source>one leg</source>
        <translation>un ala</translation>
    </message>
    <message>
        <source>other leg</source>
        <translation>otra ala</translation>
    </message>
    <message>
        <source>inside radius</source>
        <translation>radio interior</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>ángulo</translation>
    </message>
    <message>
        <source>ISO 6520-1: {meant}</source>
        <translation>ISO 6520-1: {meant}</translation>
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
        <source>short-circuit</source>
        <translation>cortocircuito</translation>
    </message>
    <message>
        <source>spray</source>
        <translation>pulverización (spray)</translation>
    </message>
    <message>
        <source>globular</source>
        <translation>globular</translation>
    </message>
    <message>
        <source>pulsed</source>
        <translation>pulsado</translation>
    </message>
    <message>
        <source>a figure, as in {example}</source>
        <translation>una cifra, como en {example}</translation>
    </message>
    <message>
        <source>January</source>
        <translation>enero</translation>
    </message>
    <message>
        <source>February</source>
        <translation>febrero</translation>
    </message>
    <message>
        <source>March</source>
        <translation>marzo</translation>
    </message>
    <message>
        <source>April</source>
        <translation>abril</translation>
    </message>
    <message>
        <source>May</source>
        <translation>mayo</translation>
    </message>
    <message>
        <source>June</source>
        <translation>junio</translation>
    </message>
    <message>
        <source>July</source>
        <translation>julio</translation>
    </message>
    <message>
        <source>August</source>
        <translation>agosto</translation>
    </message>
    <message>
        <source>September</source>
        <translation>septiembre</translation>
    </message>
    <message>
        <source>October</source>
        <translation>octubre</translation>
    </message>
    <message>
        <source>November</source>
        <translation>noviembre</translation>
    </message>
    <message>
        <source>December</source>
        <translation>diciembre</translation>
    </message>
    <message>
        <source>{day} {month}</source>
        <translation>{day} de {month}</translation>
    </message>
    <message>
        <source>{day} {month} {year}</source>
        <translation>{day} de {month} de {year}</translation>
    </message>
    <message>
        <source>{current:g} A</source>
        <translation>{current:g} A</translation>
    </message>
    <message>
        <source>{sheet} to {other}</source>
        <translation>{sheet} con {other}</translation>
    </message>
    <message>
        <source>{feed:g} m/min</source>
        <translation>{feed:g} m/min</translation>
    </message>
    <message>
        <source>You welded this on {day}: {outcome}</source>
        <translation>Se soldó así el {day}: {outcome}</translation>
    </message>
    <message>
        <source>You ran this at {figure} on {day}: {outcome}</source>
        <translation>Se soldó a {figure} el {day}: {outcome}</translation>
    </message>
    <message>
        <source>Welded</source>
        <translation>Soldado</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Separación</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Máquina</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>1 past weld speaks</source>
        <translation>Cuenta 1 soldadura anterior</translation>
    </message>
    <message>
        <source>{welds} past welds speak</source>
        <translation>Cuentan {welds} soldaduras anteriores</translation>
    </message>
    <message>
        <source>as the tables say</source>
        <translation>como dicen las tablas</translation>
    </message>
    <message>
        <source>{percent} % above the tables</source>
        <translation>{percent} % por encima de las tablas</translation>
    </message>
    <message>
        <source>{percent} % below the tables</source>
        <translation>{percent} % por debajo de las tablas</translation>
    </message>
    <message>
        <source>{spoke}, {alike} on this kind of joint. This bench runs {side}: {sureness}. Nine in ten that the right start lies between {low:.0f} and {high:.0f} {unit}.</source>
        <translation>{spoke}, {alike} en este tipo de unión. Este taller trabaja {side}: {sureness}. Nueve de diez a que el inicio correcto está entre {low:.0f} y {high:.0f} {unit}.</translation>
    </message>
    <message>
        <source>{start:.0f} {unit} ({low:.0f} to {high:.0f})</source>
        <translation>{start:.0f} {unit} ({low:.0f} a {high:.0f})</translation>
    </message>
    <message>
        <source>From its next start on the window speaks this language.</source>
        <translation>Desde el próximo inicio la ventana habla este idioma.</translation>
    </message>
    <message>
        <source>no plug time in the tables: time, gas and power are without it</source>
        <translation>no hay tiempo de tapón en las tablas: tiempo, gas y energía van sin él</translation>
    </message>
    <message>
        <source>no travel speed in the tables: time, gas and power are without it</source>
        <translation>no hay velocidad de avance en las tablas: tiempo, gas y energía van sin ella</translation>
    </message>
    <message>
        <source>{legs} legs and {bends} bends</source>
        <translation>{legs} alas y {bends} plegados</translation>
    </message>
    <message>
        <source>one leg more than there are angles</source>
        <translation>un ala más que ángulos</translation>
    </message>
    <message>
        <source>above 0 to {largest:g} degrees turned through; a minus bends the other way</source>
        <translation>más de 0 hasta {largest:g} grados plegados; un menos pliega hacia el otro lado</translation>
    </message>
    <message>
        <source>{least:.2f} mm or more, or a smaller radius: the bends beside it take that much</source>
        <translation>{least:.2f} mm o más, o un radio menor: los plegados de al lado ocupan eso</translation>
    </message>
    <message>
        <source>leg {number}</source>
        <translation>ala {number}</translation>
    </message>
    <message>
        <source>{least} to {most}, from the inside face</source>
        <translation>{least} a {most}, desde la cara interior</translation>
    </message>
    <message>
        <source>drawing school&apos;s rule</source>
        <translation>regla de escuela de dibujo</translation>
    </message>
    <message>
        <source>No table has a least radius for {metal} this thick: bend a test strip and look for cracks.</source>
        <translation>Ninguna tabla tiene un radio mínimo para este espesor de {metal}: plegar una tira de prueba y buscar grietas.</translation>
    </message>
    <message>
        <source>The table advises against a cold bend in this thickness: have it formed, or weld the corner.</source>
        <translation>La tabla desaconseja plegar en frío este espesor: encargar el conformado, o soldar la esquina.</translation>
    </message>
    <message>
        <source>Another document asks for {radius}: bend a test strip first and look at the bend&apos;s outside.</source>
        <translation>Otro documento pide {radius}: plegar antes una tira de prueba y mirar el exterior del plegado.</translation>
    </message>
    <message>
        <source>{temperature:.0f} degC, {hold}, cooled {cooling}</source>
        <translation>{temperature:.0f} °C, {hold}, enfriamiento: {cooling}</translation>
    </message>
    <message>
        <source>Annealed first ({how}) it bends tighter, at a cost: yield strength falls from about {before:.0f} to {after:.0f} MPa ({temper} to O, {grade}). A larger radius keeps the strength.</source>
        <translation>Recocido antes ({how}) admite un plegado más cerrado, a un precio: el límite elástico baja de unos {before:.0f} a {after:.0f} MPa ({temper} a O, {grade}). Un radio mayor conserva la resistencia.</translation>
    </message>
    <message>
        <source>Where two bend lines cross, drill {hole} through the crossing before bending.</source>
        <translation>Donde se cruzan dos líneas de plegado, taladrar {hole} en el cruce antes de plegar.</translation>
    </message>
    <message>
        <source>Bend lines across the rolling direction; along it the sheet cracks sooner and wants half as much radius again.</source>
        <translation>Líneas de plegado a través del sentido de laminación; a lo largo de él la chapa se agrieta antes y pide la mitad más de radio.</translation>
    </message>
    <message>
        <source>{angle:g} deg up, r {radius}</source>
        <translation>{angle:g} grados arriba, r {radius}</translation>
    </message>
    <message>
        <source>{angle:g} deg down, r {radius}</source>
        <translation>{angle:g} grados abajo, r {radius}</translation>
    </message>
    <message>
        <source>check ruler, {length:g} mm long when printed at full size</source>
        <translation>regla de control, {length:g} mm de largo si se imprime a tamaño real</translation>
    </message>
    <message>
        <source>not as it was written ({error}); mend it or move it away</source>
        <translation>no está como se escribió ({error}); arreglarlo o moverlo a otro sitio</translation>
    </message>
    <message>
        <source>one that a test bend was kept for (--test-bend with --brake keeps it)</source>
        <translation>una de la que se guardó un plegado de prueba (--test-bend con --brake lo guarda)</translation>
    </message>
    <message>
        <source>brake {brake}</source>
        <translation>plegadora {brake}</translation>
    </message>
    <message>
        <source>{tried}; or bend a test strip</source>
        <translation>{tried}; o plegar una tira de prueba</translation>
    </message>
    <message>
        <source>measurements that give {least} to {most}: measure strip and legs again, outside</source>
        <translation>medidas que den de {least} a {most}: medir de nuevo tira y alas, por fuera</translation>
    </message>
    <message>
        <source>{form} (missing: {names})</source>
        <translation>{form} (falta: {names})</translation>
    </message>
    <message>
        <source>degrees turned through, up to {largest:g}; 90 for a square bend</source>
        <translation>grados plegados, hasta {largest:g}; 90 para un plegado a escuadra</translation>
    </message>
    <message>
        <source>diameter and number, such as &quot;4 mm x 12&quot;, several separated by commas</source>
        <translation>diámetro y número, p. ej. &quot;4 mm x 12&quot;, varios separados por comas</translation>
    </message>
    <message>
        <source>steering-suspension</source>
        <translation>dirección o suspensión</translation>
    </message>
    <message>
        <source>towing</source>
        <translation>remolque</translation>
    </message>
    <message>
        <source>lifting</source>
        <translation>izado</translation>
    </message>
    <message>
        <source>rollover</source>
        <translation>antivuelco</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>presión</translation>
    </message>
    <message>
        <source>sealed-item</source>
        <translation>pieza sellada</translation>
    </message>
    <message>
        <source>a region that the holes fit into</source>
        <translation>una zona donde quepan los agujeros</translation>
    </message>
    <message>
        <source>at most a quarter over the nominal {nominal:g} mm</source>
        <translation>como máximo una cuarta parte sobre los {nominal:g} mm nominales</translation>
    </message>
    <message>
        <source>{task}: its drawing cannot be read: {problem}</source>
        <translation>{task}: no se puede leer su dibujo: {problem}</translation>
    </message>
    <message>
        <source>{task}: the photo of its drawing, {name}, is not beside the job file</source>
        <translation>{task}: la foto de su dibujo, {name}, no está junto al archivo de trabajo</translation>
    </message>
    <message>
        <source>the drawing has {holes}, the job file other holes; the file counts</source>
        <translation>el dibujo tiene {holes}, el archivo de trabajo otros agujeros; vale el archivo</translation>
    </message>
    <message>
        <source>the drawn holes take up {size} mm, more than the region in the job file</source>
        <translation>los agujeros dibujados ocupan {size} mm, más que la zona en el archivo de trabajo</translation>
    </message>
    <message>
        <source>{file}, line {line}</source>
        <translation>{file}, línea {line}</translation>
    </message>
    <message>
        <source> (and {number} more; `welds job check` lists all)</source>
        <translation> (y {number} más; `welds job check` los muestra todos)</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>otra cosa</translation>
    </message>
    <message>
        <source>picture, scale and holes, as the Job page writes them</source>
        <translation>imagen, escala y agujeros, tal como los escribe la página Trabajo</translation>
    </message>
    <message>
        <source>a scale without length</source>
        <translation>una escala sin longitud</translation>
    </message>
    <message>
        <source>two points that differ</source>
        <translation>dos puntos distintos</translation>
    </message>
    <message>
        <source>points such as [120.0, 84.5]</source>
        <translation>puntos, p. ej. [120.0, 84.5]</translation>
    </message>
    <message>
        <source>a length above zero</source>
        <translation>una longitud mayor que cero</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>a job file that can be read; welds job check says where it cannot</source>
        <translation>un archivo de trabajo que se pueda leer; welds job check dice dónde no se puede</translation>
    </message>
    <message>
        <source>job file</source>
        <translation>archivo de trabajo</translation>
    </message>
    <message>
        <source>no YAML any more</source>
        <translation>ya no sería YAML</translation>
    </message>
    <message>
        <source>an entry of this job</source>
        <translation>una entrada de este trabajo</translation>
    </message>
    <message>
        <source>a repair of this job that has its holes written down</source>
        <translation>una reparación de este trabajo que tenga anotados sus agujeros</translation>
    </message>
    <message>
        <source>a UTF-8 text file</source>
        <translation>un archivo de texto UTF-8</translation>
    </message>
    <message>
        <source>written in an unusual way</source>
        <translation>escrito de una forma poco común</translation>
    </message>
    <message>
        <source>this change by hand, in a text editor</source>
        <translation>este cambio a mano, en un editor de texto</translation>
    </message>
    <message>
        <source>either size (flat) or legs with angles and radius (folded)</source>
        <translation>o size (sin plegar) o legs con angles y radius (plegado)</translation>
    </message>
    <message>
        <source>width is missing: the side that is not folded</source>
        <translation>falta width: el lado que no se pliega</translation>
    </message>
    <message>
        <source>k, or the brake whose test bend has it, not both</source>
        <translation>k, o la plegadora (brake) cuyo plegado de prueba la tiene, no ambos</translation>
    </message>
    <message>
        <source>length is missing: how long the seam is</source>
        <translation>falta length: qué largo tiene la costura</translation>
    </message>
    <message>
        <source>&apos;name: price&apos; lines below it</source>
        <translation>líneas &apos;name: price&apos; debajo</translation>
    </message>
    <message>
        <source>{name} is missing, here and in defaults</source>
        <translation>falta {name}, aquí y en defaults</translation>
    </message>
    <message>
        <source>{radii} radii for {angles} angles; allowed: one for all or one each</source>
        <translation>{radii} radios para {angles} ángulos; se admite: uno para todos o uno para cada uno</translation>
    </message>
    <message>
        <source>an id from the stock section</source>
        <translation>un id de la sección stock</translation>
    </message>
    <message>
        <source>{name} is not in stock; allowed: {allowed}</source>
        <translation>{name} no está en stock; se admite: {allowed}</translation>
    </message>
    <message>
        <source>unknown field; allowed: {names}{hint}</source>
        <translation>campo desconocido; se admite: {names}{hint}</translation>
    </message>
    <message>
        <source>{name} is missing</source>
        <translation>falta {name}</translation>
    </message>
    <message>
        <source>{given!s:.60} is not usable; allowed: {allowed}</source>
        <translation>{given!s:.60} no vale; se admite: {allowed}</translation>
    </message>
    <message>
        <source>{section}: expected a list of entries, each with &apos;- id:&apos;</source>
        <translation>{section}: se esperaba una lista de entradas, cada una con &apos;- id:&apos;</translation>
    </message>
    <message>
        <source>{section}[{number}]: expected &apos;name: value&apos; lines with an id</source>
        <translation>{section}[{number}]: se esperaban líneas &apos;name: value&apos; con un id</translation>
    </message>
    <message>
        <source>id: small letters, digits and dashes are allowed, such as front-panel</source>
        <translation>id: se admiten minúsculas, cifras y guiones, p. ej. front-panel</translation>
    </message>
    <message>
        <source>a number such as 12.50</source>
        <translation>un número, p. ej. 12.50</translation>
    </message>
    <message>
        <source>a few words</source>
        <translation>unas palabras</translation>
    </message>
    <message>
        <source>a whole number from 1 to {most}</source>
        <translation>un número entero de 1 a {most}</translation>
    </message>
    <message>
        <source>ids in brackets, such as [front, back]</source>
        <translation>ids entre corchetes, p. ej. [front, back]</translation>
    </message>
    <message>
        <source>is not there, or is not a file</source>
        <translation>no está, o no es un archivo</translation>
    </message>
    <message>
        <source>job is missing: the name of the job</source>
        <translation>falta job: el nombre del trabajo</translation>
    </message>
    <message>
        <source>{name}: expected &apos;name: value&apos; lines below it</source>
        <translation>{name}: se esperaban líneas &apos;name: value&apos; debajo</translation>
    </message>
    <message>
        <source>this id comes twice in the file</source>
        <translation>este id aparece dos veces en el archivo</translation>
    </message>
    <message>
        <source>{name} is no piece of this job{hint}</source>
        <translation>{name} no es ninguna pieza de este trabajo{hint}</translation>
    </message>
    <message>
        <source>{name} is no task of this job{hint}</source>
        <translation>{name} no es ninguna tarea de este trabajo{hint}</translation>
    </message>
    <message>
        <source>{name} names itself</source>
        <translation>{name} se nombra a sí misma</translation>
    </message>
    <message>
        <source>tee</source>
        <translation>en T</translation>
    </message>
    <message>
        <source>outside corner</source>
        <translation>esquina exterior</translation>
    </message>
    <message>
        <source>strength</source>
        <translation>resistencia</translation>
    </message>
    <message>
        <source>ductility</source>
        <translation>ductilidad</translation>
    </message>
    <message>
        <source>least cracking</source>
        <translation>mínimas grietas</translation>
    </message>
    <message>
        <source>anodised colour</source>
        <translation>color al anodizar</translation>
    </message>
    <message>
        <source>warm service</source>
        <translation>servicio en caliente</translation>
    </message>
    <message>
        <source>salt water</source>
        <translation>agua salada</translation>
    </message>
    <message>
        <source>acetone</source>
        <translation>acetona</translation>
    </message>
    <message>
        <source>alcohol</source>
        <translation>alcohol</translation>
    </message>
    <message>
        <source>chlorinated</source>
        <translation>limpiador clorado</translation>
    </message>
    <message>
        <source>unknown spray</source>
        <translation>spray desconocido</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>soporte</translation>
    </message>
    <message>
        <source>vehicle</source>
        <translation>vehículo</translation>
    </message>
    <message>
        <source>closed section</source>
        <translation>perfil cerrado</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>tanque</translation>
    </message>
    <message>
        <source>steering suspension</source>
        <translation>dirección o suspensión</translation>
    </message>
    <message>
        <source>sealed item</source>
        <translation>pieza sellada</translation>
    </message>
    <message>
        <source>short circuit</source>
        <translation>cortocircuito</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>por fuera</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>por dentro</translation>
    </message>
    <message>
        <source>overall</source>
        <translation>en total</translation>
    </message>
    <message>
        <source>across</source>
        <translation>a través</translation>
    </message>
    <message>
        <source>along</source>
        <translation>a lo largo</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>sana</translation>
    </message>
    <message>
        <source>thin</source>
        <translation>fina</translation>
    </message>
    <message>
        <source>piece to cut</source>
        <translation>pieza a cortar</translation>
    </message>
    <message>
        <source>joint to weld</source>
        <translation>unión a soldar</translation>
    </message>
    <message>
        <source>repair</source>
        <translation>reparación</translation>
    </message>
    <message>
        <source>other step</source>
        <translation>otro paso</translation>
    </message>
    <message>
        <source>sheet in stock</source>
        <translation>chapa en stock</translation>
    </message>
    <message>
        <source>Piece to cut</source>
        <translation>Pieza a cortar</translation>
    </message>
    <message>
        <source>Joint to weld</source>
        <translation>Unión a soldar</translation>
    </message>
    <message>
        <source>Repair</source>
        <translation>Reparación</translation>
    </message>
    <message>
        <source>Other step</source>
        <translation>Otro paso</translation>
    </message>
    <message>
        <source>Sheet in stock</source>
        <translation>Chapa en stock</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>left mudguard, pinholes</source>
        <translation>guardabarros izq., picaduras</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metal</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>How many alike</source>
        <translation>Cuántas iguales</translation>
    </message>
    <message>
        <source>Size, where it is flat</source>
        <translation>Tamaño, si va sin plegar</translation>
    </message>
    <message>
        <source>Process</source>
        <translation>Proceso</translation>
    </message>
    <message>
        <source>Belongs to</source>
        <translation>Pertenece a</translation>
    </message>
    <message>
        <source>Coatings</source>
        <translation>Recubrimientos</translation>
    </message>
    <message>
        <source>Comes after</source>
        <translation>Va después de</translation>
    </message>
    <message>
        <source>short names: console-front, tank-wrap</source>
        <translation>nombres cortos: console-front, tank-wrap</translation>
    </message>
    <message>
        <source>Covers up</source>
        <translation>Tapa</translation>
    </message>
    <message>
        <source>short names of what is then out of reach</source>
        <translation>nombres cortos de lo que queda sin acceso</translation>
    </message>
    <message>
        <source>Needs access before</source>
        <translation>Necesita acceso antes de</translation>
    </message>
    <message>
        <source>short names of what closes it</source>
        <translation>nombres cortos de lo que lo cierra</translation>
    </message>
    <message>
        <source>Can wait</source>
        <translation>Puede esperar</translation>
    </message>
    <message>
        <source>Welds in the log</source>
        <translation>Soldaduras del registro</translation>
    </message>
    <message>
        <source>names or numbers of log entries</source>
        <translation>nombres o números de entradas del registro</translation>
    </message>
    <message>
        <source>Cut from</source>
        <translation>Cortado de</translation>
    </message>
    <message>
        <source>short name of a sheet in stock</source>
        <translation>nombre corto de una chapa en stock</translation>
    </message>
    <message>
        <source>Legs, where it is folded</source>
        <translation>Alas, si va plegado</translation>
    </message>
    <message>
        <source>Angles turned through</source>
        <translation>Ángulos plegados</translation>
    </message>
    <message>
        <source>90, 90; a minus bends down</source>
        <translation>90, 90; un menos pliega hacia abajo</translation>
    </message>
    <message>
        <source>Inside radius</source>
        <translation>Radio interior</translation>
    </message>
    <message>
        <source>3.2, or one each</source>
        <translation>3.2, o uno para cada uno</translation>
    </message>
    <message>
        <source>Width, not folded</source>
        <translation>Ancho, sin plegar</translation>
    </message>
    <message>
        <source>Legs are measured</source>
        <translation>Las alas se miden</translation>
    </message>
    <message>
        <source>Brake with a test bend</source>
        <translation>Plegadora con prueba</translation>
    </message>
    <message>
        <source>its name, as kept</source>
        <translation>su nombre, tal como se guardó</translation>
    </message>
    <message>
        <source>Bend line to the grain</source>
        <translation>Plegado y laminación</translation>
    </message>
    <message>
        <source>Pieces it joins</source>
        <translation>Piezas que une</translation>
    </message>
    <message>
        <source>short names: tank-wrap, tank-end</source>
        <translation>nombres cortos: tank-wrap, tank-end</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Unión</translation>
    </message>
    <message>
        <source>Other metal</source>
        <translation>Otro metal</translation>
    </message>
    <message>
        <source>Other thickness</source>
        <translation>Otro espesor</translation>
    </message>
    <message>
        <source>Length of one seam</source>
        <translation>Longitud de una costura</translation>
    </message>
    <message>
        <source>Seam closes on itself</source>
        <translation>Costura cerrada</translation>
    </message>
    <message>
        <source>Dry fit first</source>
        <translation>Antes, montaje en seco</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>Goal</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>Solvent used</source>
        <translation>Disolvente usado</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Mano</translation>
    </message>
    <message>
        <source>Gas on the machine</source>
        <translation>Gas en la máquina</translation>
    </message>
    <message>
        <source>Wire diameter</source>
        <translation>Diámetro del hilo</translation>
    </message>
    <message>
        <source>Transfer</source>
        <translation>Transferencia</translation>
    </message>
    <message>
        <source>Thickness when new</source>
        <translation>Espesor de nueva</translation>
    </message>
    <message>
        <source>Measured beside the holes</source>
        <translation>Medido junto a los agujeros</translation>
    </message>
    <message>
        <source>Holes</source>
        <translation>Agujeros</translation>
    </message>
    <message>
        <source>Region they lie in</source>
        <translation>Zona en que están</translation>
    </message>
    <message>
        <source>Sheet behind</source>
        <translation>Chapa de detrás</translation>
    </message>
    <message>
        <source>Whole panel</source>
        <translation>Panel entero</translation>
    </message>
    <message>
        <source>Carries load</source>
        <translation>Soporta carga</translation>
    </message>
    <message>
        <source>Water stands there</source>
        <translation>Hay agua estancada</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>two lengths with an x between, such as 120 x 80 mm</source>
        <translation>dos longitudes con una x en medio, p. ej. 120 x 80 mm</translation>
    </message>
    <message>
        <source>two lengths above zero</source>
        <translation>dos longitudes mayores que cero</translation>
    </message>
    <message>
        <source>filler {filler}</source>
        <translation>aporte {filler}</translation>
    </message>
    <message>
        <source>gas {gas}</source>
        <translation>gas {gas}</translation>
    </message>
    <message>
        <source>discs</source>
        <translation>discos</translation>
    </message>
    <message>
        <source>power</source>
        <translation>energía</translation>
    </message>
    <message>
        <source>time at the bench</source>
        <translation>tiempo de taller</translation>
    </message>
    <message>
        <source>shop rule by radius</source>
        <translation>regla de taller según radio</translation>
    </message>
    <message>
        <source>airframe handbook</source>
        <translation>manual aeronáutico</translation>
    </message>
    <message>
        <source>middle of the sheet</source>
        <translation>mitad de la chapa</translation>
    </message>
    <message>
        <source>fit {name} together dry, mark, take apart</source>
        <translation>montar en seco {name}, marcar, desmontar</translation>
    </message>
    <message>
        <source>{task} covers it up</source>
        <translation>{task} lo tapa</translation>
    </message>
    <message>
        <source>{later} closes the access to {task}</source>
        <translation>{later} cierra el acceso a {task}</translation>
    </message>
    <message>
        <source>said to come first</source>
        <translation>indicado como previo</translation>
    </message>
    <message>
        <source>has to be cut before it is fitted</source>
        <translation>hay que cortarlo antes de montarlo</translation>
    </message>
    <message>
        <source>has to be cut</source>
        <translation>hay que cortarlo</translation>
    </message>
    <message>
        <source>welded only after a dry fit</source>
        <translation>se suelda solo después de un montaje en seco</translation>
    </message>
    <message>
        <source> before </source>
        <translation> antes que </translation>
    </message>
    <message>
        <source>no circle: take one of these links out</source>
        <translation>ningún círculo: quitar uno de estos enlaces</translation>
    </message>
    <message>
        <source> (done)</source>
        <translation> (hecho)</translation>
    </message>
    <message>
        <source>What waits for what</source>
        <translation>Qué espera a qué</translation>
    </message>
    <message>
        <source>{task}: no card: {problem}</source>
        <translation>{task}: sin ficha: {problem}</translation>
    </message>
    <message>
        <source>{task}: no blank: {problem}</source>
        <translation>{task}: sin desarrollo: {problem}</translation>
    </message>
    <message>
        <source>{piece}: no room on {sheet}</source>
        <translation>{piece}: no cabe en {sheet}</translation>
    </message>
    <message>
        <source>{task}: the log has no entry {word}</source>
        <translation>{task}: el registro no tiene la entrada {word}</translation>
    </message>
    <message>
        <source>holes are filled by MIG, and no machine on the bench does that</source>
        <translation>los agujeros se llenan con MIG/MAG, y ninguna máquina del taller lo hace</translation>
    </message>
    <message>
        <source>no figures for filling a hole in this sheet: {problem}</source>
        <translation>no hay cifras para llenar un agujero en esta chapa: {problem}</translation>
    </message>
    <message>
        <source>with a bar behind</source>
        <translation>con una pletina detrás</translation>
    </message>
    <message>
        <source>onto the sheet behind</source>
        <translation>contra la chapa de detrás</translation>
    </message>
    <message>
        <source>repair in {metal}</source>
        <translation>reparación en {metal}</translation>
    </message>
    <message>
        <source>patch in {metal}</source>
        <translation>parche en {metal}</translation>
    </message>
    <message>
        <source>a load-bearing part</source>
        <translation>una pieza que soporta carga</translation>
    </message>
    <message>
        <source>repair of {part}</source>
        <translation>reparación: {part}</translation>
    </message>
    <message>
        <source>its failure can hurt someone: the maker&apos;s manual, local rules and a qualified welder decide</source>
        <translation>su fallo puede herir a alguien: deciden el manual del fabricante, las normas locales y un soldador cualificado</translation>
    </message>
    <message>
        <source>the same damage in sheet that carries nothing</source>
        <translation>el mismo daño en chapa que no soporta nada</translation>
    </message>
    <message>
        <source>{left} is left of {nominal}, less than {share:.0%}: the holes are only where it broke through first</source>
        <translation>quedan {left} de {nominal}, menos del {share:.0%}: los agujeros son solo donde se picó primero</translation>
    </message>
    <message>
        <source>{left} all round burns away beside a weld (least {least}): no edge to join a patch to</source>
        <translation>{left} en todo el contorno se quema junto a una soldadura (mínimo {least}): no hay borde al que unir un parche</translation>
    </message>
    <message>
        <source>the sheet behind is thin too: cut out, look, and mend that first, as it gets covered up</source>
        <translation>la chapa de detrás también está fina: recortar, mirar y reparar antes esa, pues queda tapada</translation>
    </message>
    <message>
        <source>the cut-out takes {part:.0%} of the panel; above {most:.0%} a new panel is less work</source>
        <translation>el recorte se lleva el {part:.0%} del panel; por encima del {most:.0%} da menos trabajo un panel nuevo</translation>
    </message>
    <message>
        <source>what is too much for a patch is too much for plugs</source>
        <translation>lo que es demasiado para un parche es demasiado para tapones</translation>
    </message>
    <message>
        <source>the largest hole, {largest}, is drilled to {drilled}; up to {limit} can be filled {onto}</source>
        <translation>el agujero más grande, {largest}, se taladra a {drilled}; se pueden llenar hasta {limit} {onto}</translation>
    </message>
    <message>
        <source>the two nearest of {count} holes, as drawn, stand {distance} apart</source>
        <translation>los dos más cercanos de {count} agujeros, según el dibujo, distan {distance}</translation>
    </message>
    <message>
        <source>{count} holes in the region stand about {distance} apart</source>
        <translation>{count} agujeros en la zona distan unos {distance}</translation>
    </message>
    <message>
        <source>leaving {width} of sheet between</source>
        <translation>y dejan {width} de chapa en medio</translation>
    </message>
    <message>
        <source>and run into each other when drilled</source>
        <translation>y se juntan al taladrarlos</translation>
    </message>
    <message>
        <source>{stand}, {between}; plugs want {distance} between middles</source>
        <translation>{stand}, {between}; los tapones piden {distance} entre centros</translation>
    </message>
    <message>
        <source>{plugs:.1f} kJ of arc in the region ({per_area:.1f} J/mm2) for the plugs against {patch:.1f} kJ along the edge of a patch: the plugs would warp it more</source>
        <translation>{plugs:.1f} kJ de arco en la zona ({per_area:.1f} J/mm2) para los tapones frente a {patch:.1f} kJ a lo largo del borde de un parche: los tapones la deformarían más</translation>
    </message>
    <message>
        <source>{plugs:.1f} kJ of arc in the region ({per_area:.1f} J/mm2) for the plugs against {patch:.1f} kJ along the edge of a patch: the patch would warp it more</source>
        <translation>{plugs:.1f} kJ de arco en la zona ({per_area:.1f} J/mm2) para los tapones frente a {patch:.1f} kJ a lo largo del borde de un parche: el parche la deformaría más</translation>
    </message>
    <message>
        <source>about {plugs:.0f} min for the plugs, {patch:.0f} min for a patch</source>
        <translation>unos {plugs:.0f} min para los tapones, {patch:.0f} min para un parche</translation>
    </message>
    <message>
        <source>Tap and prick all round before cutting: mark where the metal is bright and full thickness.</source>
        <translation>Golpear y pinchar todo alrededor antes de cortar: marcar donde el metal está brillante y con todo su espesor.</translation>
    </message>
    <message>
        <source>Shine a lamp from behind in the dark: light through the seam is a missed spot.</source>
        <translation>Alumbrar con una lámpara desde detrás, a oscuras: si pasa luz por la costura, quedó un punto sin soldar.</translation>
    </message>
    <message>
        <source>Water stands here: open a drain, and seal and paint the inside, or it comes back.</source>
        <translation>Aquí hay agua estancada: abrir un desagüe, y sellar y pintar el interior, o volverá.</translation>
    </message>
    <message>
        <source>Nothing behind: hold a copper bar tight against the back while filling.</source>
        <translation>Nada detrás: sujetar una pletina de cobre apretada contra el reverso mientras se llena.</translation>
    </message>
    <message>
        <source>Clamp the sheet tight to what is behind: a gap blows the plug out.</source>
        <translation>Apretar la chapa contra lo que hay detrás: una separación expulsa el tapón.</translation>
    </message>
    <message>
        <source>A vehicle&apos;s own rules may ask for a seam all round or forbid the repair: read them first.</source>
        <translation>Las normas propias de un vehículo pueden pedir una costura en todo el contorno o prohibir la reparación: leerlas antes.</translation>
    </message>
    <message>
        <source>region {size} (dotted)</source>
        <translation>zona {size} (línea de puntos)</translation>
    </message>
    <message>
        <source>drill each hole to {diameter}</source>
        <translation>taladrar cada agujero a {diameter}</translation>
    </message>
    <message>
        <source>fill them in the order of the numbers</source>
        <translation>llenarlos en el orden de los números</translation>
    </message>
    <message>
        <source>holes spread evenly: their places were not drawn</source>
        <translation>agujeros repartidos por igual: no se dibujó su sitio</translation>
    </message>
    <message>
        <source>cut out {size}, corners {radius}</source>
        <translation>recortar {size}, esquinas {radius}</translation>
    </message>
    <message>
        <source>{lap} over the edge (dashed)</source>
        <translation>{lap} sobre el borde (línea de trazos)</translation>
    </message>
    <message>
        <source>ground to fit</source>
        <translation>amolado a medida</translation>
    </message>
    <message>
        <source>patch {size}, {lap}</source>
        <translation>parche {size}, {lap}</translation>
    </message>
    <message>
        <source>tacks outside, runs inside, by number in their order</source>
        <translation>puntos por fuera, tramos por dentro, numerados en su orden</translation>
    </message>
    <message>
        <source>{stock}, sheet {number}, {waste:.0%} left over</source>
        <translation>{stock}, chapa {number}, {waste:.0%} sobrante</translation>
    </message>
    <message>
        <source>back at the start</source>
        <translation>de vuelta al inicio</translation>
    </message>
    <message>
        <source>The gap closes ahead of the torch: wedge it or set it wider at the far end, and lay weights on both sides of the seam.</source>
        <translation>La separación se cierra por delante de la antorcha: acuñarla o dejarla mayor en el extremo lejano, y poner pesos a ambos lados de la costura.</translation>
    </message>
    <message>
        <source>The upright leans towards the first bead: prop it square, tack both sides in turn, weld them by turns.</source>
        <translation>La chapa vertical se inclina hacia el primer cordón: apuntalarla a escuadra, puntear ambos lados por turnos, soldarlos por turnos.</translation>
    </message>
    <message>
        <source>The upper edge lifts between tacks: clamp or weight it down beside each one.</source>
        <translation>El borde superior se levanta entre puntos: sujetarlo o ponerle peso junto a cada uno.</translation>
    </message>
    <message>
        <source>The bead sits outside and opens the corner: hold it square from inside with a block until every run is cold.</source>
        <translation>El cordón queda por fuera y abre la esquina: mantenerla a escuadra desde dentro con un bloque hasta que todos los tramos estén fríos.</translation>
    </message>
    <message>
        <source>The bead sits inside and closes the corner: hold it square, or a degree open.</source>
        <translation>El cordón queda por dentro y cierra la esquina: mantenerla a escuadra, o un grado abierta.</translation>
    </message>
    <message>
        <source>Both edges bow along the seam: clamp them to something straight.</source>
        <translation>Ambos bordes se arquean a lo largo de la costura: sujetarlos a algo recto.</translation>
    </message>
    <message>
        <source>The sheet dishes round each plug: do opposite plugs by turns, and let each cool.</source>
        <translation>La chapa se hunde alrededor de cada tapón: hacer por turnos tapones opuestos, y dejar enfriar cada uno.</translation>
    </message>
    <message>
        <source>{first} or {other}</source>
        <translation>{first} o {other}</translation>
    </message>
    <message>
        <source>distance: 1 for every quarter that one sheet is thicker than the other, 1 for another kind of joint (half of it among fillets), half for another position, 3 for another family of metal; another process is never alike</source>
        <translation>distancia: 1 por cada cuarta parte en que una chapa es más gruesa que la otra, 1 por otro tipo de unión (la mitad entre uniones en ángulo), media por otra posición, 3 por otra familia de metal; otro proceso nunca es parecido</translation>
    </message>
    <message>
        <source>1 to {most}, from an offset of 0 on</source>
        <translation>1 a {most}, desde un desplazamiento (offset) de 0</translation>
    </message>
    <message>
        <source>a name of 1 to 80 characters</source>
        <translation>un nombre de 1 a 80 caracteres</translation>
    </message>
    <message>
        <source>the token that a change was answered with</source>
        <translation>el token con que se respondió a un cambio</translation>
    </message>
    <message>
        <source>{log} (tables at {version})</source>
        <translation>{log} (tablas en la versión {version})</translation>
    </message>
    <message>
        <source>damaged: {damage}</source>
        <translation>dañado: {damage}</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>íntegro</translation>
    </message>
    <message>
        <source>{welds} welds, {pictures} pictures</source>
        <translation>{welds} soldaduras, {pictures} imágenes</translation>
    </message>
    <message>
        <source>{pictures} pictures are missing; a backup may hold them</source>
        <translation>faltan {pictures} imágenes; puede que una copia de seguridad las tenga</translation>
    </message>
    <message>
        <source>{welds} welds wait on this computer to go in</source>
        <translation>{welds} soldaduras esperan en este equipo para entrar</translation>
    </message>
    <message>
        <source>{backups} dated backups, newest {name}</source>
        <translation>{backups} copias de seguridad fechadas, la más nueva {name}</translation>
    </message>
    <message>
        <source>{backups} dated backups</source>
        <translation>{backups} copias de seguridad fechadas</translation>
    </message>
    <message>
        <source>the columns {names}</source>
        <translation>las columnas {names}</translation>
    </message>
    <message>
        <source>line {line}: {problem}</source>
        <translation>línea {line}: {problem}</translation>
    </message>
    <message>
        <source>comma-separated values, UTF-8</source>
        <translation>valores separados por comas, UTF-8</translation>
    </message>
    <message>
        <source>a number from the list, or the first six characters of its uid</source>
        <translation>un número de la lista, o los seis primeros caracteres de su uid</translation>
    </message>
    <message>
        <source>an entry of this log; welds log list shows them</source>
        <translation>una entrada de este registro; welds log list las muestra</translation>
    </message>
    <message>
        <source>an entry of this log; it may have been removed meanwhile</source>
        <translation>una entrada de este registro; puede que entretanto se haya quitado</translation>
    </message>
    <message>
        <source>a file ending in .csv or .json</source>
        <translation>un archivo que acabe en .csv o .json</translation>
    </message>
    <message>
        <source>settings and outcome (worked-well, worked, failed)</source>
        <translation>ajustes y resultado (worked-well, worked, failed)</translation>
    </message>
    <message>
        <source>unchanged: it names the entry for ever</source>
        <translation>sin cambios: identifica la entrada para siempre</translation>
    </message>
    <message>
        <source>a UUID, or nothing for a new entry</source>
        <translation>un UUID, o nada para una entrada nueva</translation>
    </message>
    <message>
        <source>the SHA-256 of a picture: 64 hexadecimal digits</source>
        <translation>el SHA-256 de una imagen: 64 cifras hexadecimales</translation>
    </message>
    <message>
        <source>names of picture files, or {&quot;name&quot;: ..., &quot;sha256&quot;: ...}</source>
        <translation>nombres de archivos de imagen, o {&quot;name&quot;: ..., &quot;sha256&quot;: ...}</translation>
    </message>
    <message>
        <source>amperes, as in 80</source>
        <translation>amperios, como en 80</translation>
    </message>
    <message>
        <source>this is a folder, not a log</source>
        <translation>esto es una carpeta, no un registro</translation>
    </message>
    <message>
        <source>the log is empty, but backups are there (newest: {name})</source>
        <translation>el registro está vacío, pero hay copias de seguridad (la más nueva: {name})</translation>
    </message>
    <message>
        <source>the log is missing, but backups are there (newest: {name})</source>
        <translation>falta el registro, pero hay copias de seguridad (la más nueva: {name})</translation>
    </message>
    <message>
        <source>the file is not a log</source>
        <translation>el archivo no es un registro</translation>
    </message>
    <message>
        <source>its folder cannot be made: {reason}</source>
        <translation>no se puede crear su carpeta: {reason}</translation>
    </message>
    <message>
        <source>the file is damaged ({found})</source>
        <translation>el archivo está dañado ({found})</translation>
    </message>
    <message>
        <source>a file of up to {size} MB; a larger log moves by backup and restore</source>
        <translation>un archivo de hasta {size} MB; un registro mayor se traslada con backup y restore</translation>
    </message>
    <message>
        <source>a file in UTF-8</source>
        <translation>un archivo en UTF-8</translation>
    </message>
    <message>
        <source>row {row} ({reason})</source>
        <translation>fila {row} ({reason})</translation>
    </message>
    <message>
        <source>a file without bad rows; nothing was written</source>
        <translation>un archivo sin filas erróneas; no se escribió nada</translation>
    </message>
    <message>
        <source>pictures the log holds (by SHA-256)</source>
        <translation>imágenes que el registro tenga (por SHA-256)</translation>
    </message>
    <message>
        <source>the log holds an entry of this uid ({uid}) with another content; edit it there</source>
        <translation>el registro tiene una entrada con este uid ({uid}) y otro contenido; editarla allí</translation>
    </message>
    <message>
        <source>already number {number} in the log</source>
        <translation>ya está en el registro con el número {number}</translation>
    </message>
    <message>
        <source>the same uid as row {row}</source>
        <translation>el mismo uid que la fila {row}</translation>
    </message>
    <message>
        <source>the same as row {row}</source>
        <translation>igual que la fila {row}</translation>
    </message>
    <message>
        <source>not JSON ({problem})</source>
        <translation>no es JSON ({problem})</translation>
    </message>
    <message>
        <source>a file with &quot;schema&quot;: &quot;{schema}&quot;</source>
        <translation>un archivo con &quot;schema&quot;: &quot;{schema}&quot;</translation>
    </message>
    <message>
        <source>a file with &quot;schema&quot;: &quot;{schema}&quot;, or a list of entries</source>
        <translation>un archivo con &quot;schema&quot;: &quot;{schema}&quot;, o una lista de entradas</translation>
    </message>
    <message>
        <source>it was opened to read only</source>
        <translation>se abrió solo para leer</translation>
    </message>
    <message>
        <source>an entry the log does not hold yet (it holds {number} with another content: edit that, or leave the uid out)</source>
        <translation>una entrada que el registro aún no tenga (tiene {number} con otro contenido: editar esa, u omitir el uid)</translation>
    </message>
    <message>
        <source>a change after which the entry was left alone</source>
        <translation>un cambio tras el cual no se tocó la entrada</translation>
    </message>
    <message>
        <source>a change that can be taken back</source>
        <translation>un cambio que se pueda deshacer</translation>
    </message>
    <message>
        <source>one that no other bench has changed meanwhile; show it again and repeat</source>
        <translation>una que ningún otro taller haya cambiado entretanto; mostrarla otra vez y repetir</translation>
    </message>
    <message>
        <source>the log was written by a newer version of the program (its tables: {version}, known: {known})</source>
        <translation>el registro lo escribió una versión más nueva del programa (sus tablas: {version}, conocidas: {known})</translation>
    </message>
    <message>
        <source>the database holds something else than a log</source>
        <translation>la base de datos contiene algo que no es un registro</translation>
    </message>
    <message>
        <source>restore a backup (welds log restore)</source>
        <translation>restaurar una copia de seguridad (welds log restore)</translation>
    </message>
    <message>
        <source>open it to read only (--read-only)</source>
        <translation>abrirlo solo para leer (--read-only)</translation>
    </message>
    <message>
        <source>try again</source>
        <translation>intentarlo de nuevo</translation>
    </message>
    <message>
        <source>use the newer version of the program</source>
        <translation>usar la versión más nueva del programa</translation>
    </message>
    <message>
        <source>bring it up to date</source>
        <translation>ponerlo al día</translation>
    </message>
    <message>
        <source>name another log (--log)</source>
        <translation>indicar otro registro (--log)</translation>
    </message>
    <message>
        <source>no backup today: {problem}</source>
        <translation>hoy sin copia de seguridad: {problem}</translation>
    </message>
    <message>
        <source>bringing it up to date was stopped; the log is as it was</source>
        <translation>la puesta al día se detuvo; el registro está como estaba</translation>
    </message>
    <message>
        <source>1 weld that waited on this computer went into the log</source>
        <translation>1 soldadura que esperaba en este equipo entró en el registro</translation>
    </message>
    <message>
        <source>{count} welds that waited on this computer went into the log</source>
        <translation>{count} soldaduras que esperaban en este equipo entraron en el registro</translation>
    </message>
    <message>
        <source>{count} welds still wait on this computer: {problem}</source>
        <translation>{count} soldaduras siguen esperando en este equipo: {problem}</translation>
    </message>
    <message>
        <source>there is no log to read</source>
        <translation>no hay registro que leer</translation>
    </message>
    <message>
        <source>read as the file stands: what was written last may be missing</source>
        <translation>leído tal como está el archivo: puede faltar lo último que se escribió</translation>
    </message>
    <message>
        <source>the log holds nothing yet</source>
        <translation>el registro aún no contiene nada</translation>
    </message>
    <message>
        <source>a log at version {version}; open it once to write</source>
        <translation>un registro en la versión {version}; abrirlo una vez para escribir</translation>
    </message>
    <message>
        <source>{problem}; the entry could not be kept on this computer either ({other})</source>
        <translation>{problem}; tampoco se pudo guardar la entrada en este equipo ({other})</translation>
    </message>
    <message>
        <source>{problem}; the entry is kept in {folder} and goes in when the log can be written again</source>
        <translation>{problem}; la entrada queda guardada en {folder} y entra cuando se pueda escribir de nuevo en el registro</translation>
    </message>
    <message>
        <source>a picture cannot be kept: {reason}</source>
        <translation>no se puede guardar una imagen: {reason}</translation>
    </message>
    <message>
        <source>a picture of up to {size} MB</source>
        <translation>una imagen de hasta {size} MB</translation>
    </message>
    <message>
        <source>a picture: JPEG, PNG, WebP, TIFF, GIF, BMP or HEIC</source>
        <translation>una imagen: JPEG, PNG, WebP, TIFF, GIF, BMP o HEIC</translation>
    </message>
    <message>
        <source>a picture of up to {size} million points</source>
        <translation>una imagen de hasta {size} millones de puntos</translation>
    </message>
    <message>
        <source>a file, or postgresql+psycopg://USER@HOST/DATABASE</source>
        <translation>un archivo, o postgresql+psycopg://USER@HOST/DATABASE</translation>
    </message>
    <message>
        <source>a file of `welds log backup`: this log is on a server</source>
        <translation>un archivo de `welds log backup`: este registro está en un servidor</translation>
    </message>
    <message>
        <source>a file of `welds log backup`, whole</source>
        <translation>un archivo de `welds log backup`, íntegro</translation>
    </message>
    <message>
        <source>the backup failed ({problem})</source>
        <translation>falló la copia de seguridad ({problem})</translation>
    </message>
    <message>
        <source>names and values, as in {&quot;current&quot;: 112, &quot;polarity&quot;: &quot;AC&quot;}</source>
        <translation>nombres y valores, como en {&quot;current&quot;: 112, &quot;polarity&quot;: &quot;AC&quot;}</translation>
    </message>
    <message>
        <source>a number from 0 to {largest:g}, in {unit}</source>
        <translation>un número de 0 a {largest:g}, en {unit}</translation>
    </message>
    <message>
        <source>a number from 0 to {largest:g}</source>
        <translation>un número de 0 a {largest:g}</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>el disco está lleno</translation>
    </message>
    <message>
        <source>it cannot be written: the file or its folder is read-only</source>
        <translation>no se puede escribir: el archivo o su carpeta son de solo lectura</translation>
    </message>
    <message>
        <source>it cannot be opened: folder or permission</source>
        <translation>no se puede abrir: carpeta o permiso</translation>
    </message>
    <message>
        <source>the file is damaged</source>
        <translation>el archivo está dañado</translation>
    </message>
    <message>
        <source>another bench has been writing for too long</source>
        <translation>otro taller lleva demasiado tiempo escribiendo</translation>
    </message>
    <message>
        <source>the disk does not read or write</source>
        <translation>el disco no lee o no escribe</translation>
    </message>
    <message>
        <source>permission is missing</source>
        <translation>falta permiso</translation>
    </message>
    <message>
        <source>the server cannot be used ({problem})</source>
        <translation>no se puede usar el servidor ({problem})</translation>
    </message>
    <message>
        <source>a log on a server needs psycopg: pip install &apos;welds[shop]&apos;</source>
        <translation>un registro en un servidor necesita psycopg: pip install &apos;welds[shop]&apos;</translation>
    </message>
    <message>
        <source>not an address of a log: {problem}</source>
        <translation>no es la dirección de un registro: {problem}</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texto</translation>
    </message>
    <message>
        <source>{count} characters</source>
        <translation>{count} caracteres</translation>
    </message>
    <message>
        <source>up to {most}</source>
        <translation>hasta {most}</translation>
    </message>
    <message>
        <source>a control character (code {code})</source>
        <translation>un carácter de control (código {code})</translation>
    </message>
    <message>
        <source>readable text</source>
        <translation>texto legible</translation>
    </message>
    <message>
        <source>a date such as 2026-03-03, or with a time: 2026-03-03T14:05</source>
        <translation>una fecha, p. ej. 2026-03-03, o con hora: 2026-03-03T14:05</translation>
    </message>
    <message>
        <source>plain names such as burn-through, or numbers of ISO 6520-1</source>
        <translation>nombres corrientes, p. ej. burn-through, o números de ISO 6520-1</translation>
    </message>
    <message>
        <source>above zero</source>
        <translation>mayor que cero</translation>
    </message>
    <message>
        <source>above 0 to 1</source>
        <translation>más de 0 hasta 1</translation>
    </message>
    <message>
        <source>above 0, up to 180</source>
        <translation>más de 0, hasta 180</translation>
    </message>
    <message>
        <source>above 0, up to {largest:g}</source>
        <translation>más de 0, hasta {largest:g}</translation>
    </message>
    <message>
        <source>a tenth of the thickness or more</source>
        <translation>una décima parte del espesor o más</translation>
    </message>
    <message>
        <source>zero or above</source>
        <translation>cero o más</translation>
    </message>
    <message>
        <source>below {hottest:g} degC</source>
        <translation>por debajo de {hottest:g} °C</translation>
    </message>
    <message>
        <source>above {lowest:g} to {highest:g} degC</source>
        <translation>más de {lowest:g} hasta {highest:g} °C</translation>
    </message>
    <message>
        <source>1 and above</source>
        <translation>1 y más</translation>
    </message>
    <message>
        <source>above zero to {highest:g} A</source>
        <translation>más de cero hasta {highest:g} A</translation>
    </message>
    <message>
        <source>{reach:.3g} mm and above</source>
        <translation>{reach:.3g} mm y más</translation>
    </message>
    <message>
        <source>zero or more</source>
        <translation>cero o más</translation>
    </message>
    <message>
        <source>0 to 300 bar</source>
        <translation>0 a 300 bar</translation>
    </message>
    <message>
        <source>a length such as 2 mm, 0.080 in, 1/8 in</source>
        <translation>una longitud, p. ej. 2 mm, 0.080 in, 1/8 in</translation>
    </message>
    <message>
        <source>, 14 ga</source>
        <translation>, 14 ga</translation>
    </message>
    <message>
        <source>, not negative</source>
        <translation>, no negativa</translation>
    </message>
    <message>
        <source>{lowest:g} mm to {highest:g} mm</source>
        <translation>{lowest:g} mm a {highest:g} mm</translation>
    </message>
    <message>
        <source>a whole gauge number such as 14 ga</source>
        <translation>un número de calibre entero, p. ej. 14 ga</translation>
    </message>
    <message>
        <source>a gauge number only for a known metal (gauges differ by metal), mm or in</source>
        <translation>un número de calibre solo para un metal conocido (los calibres difieren según el metal), mm o in</translation>
    </message>
    <message>
        <source>{allowed}; a number without unit from {low:g} to {high:g} mm</source>
        <translation>{allowed}; un número sin unidad de {low:g} a {high:g} mm</translation>
    </message>
    <message>
        <source>a travel speed such as 12 ipm, 5 mm/s, 300 mm/min</source>
        <translation>una velocidad de avance, p. ej. 12 ipm, 5 mm/s, 300 mm/min</translation>
    </message>
    <message>
        <source>printed</source>
        <translation>impreso</translation>
    </message>
    <message>
        <source>quoted</source>
        <translation>citado</translation>
    </message>
    <message>
        <source>derived</source>
        <translation>derivado</translation>
    </message>
    <message>
        <source>practice</source>
        <translation>práctica</translation>
    </message>
    <message>
        <source>recalled</source>
        <translation>de memoria</translation>
    </message>
    <message>
        <source>worked out from published figures</source>
        <translation>calculado a partir de cifras publicadas</translation>
    </message>
    <message>
        <source>common practice, no published source</source>
        <translation>práctica común, sin fuente publicada</translation>
    </message>
    <message>
        <source>{text!r} is not a number (digits and a decimal point, no unit)</source>
        <translation>{text!r} no es un número (cifras y punto decimal, sin unidad)</translation>
    </message>
    <message>
        <source>{text!r} is too large</source>
        <translation>{text!r} es demasiado grande</translation>
    </message>
    <message>
        <source>{text!r} is not a whole number</source>
        <translation>{text!r} no es un número entero</translation>
    </message>
    <message>
        <source>{text!r} is neither yes nor no</source>
        <translation>{text!r} no es ni yes ni no</translation>
    </message>
    <message>
        <source>{text!r} has an empty entry between its semicolons</source>
        <translation>{text!r} tiene una entrada vacía entre sus puntos y comas</translation>
    </message>
    <message>
        <source>{text!r} names an entry twice</source>
        <translation>{text!r} nombra una entrada dos veces</translation>
    </message>
    <message>
        <source>{text} is not believable; allowed: {lowest:g} to {highest:g} {unit}</source>
        <translation>{text} no es creíble; se admite: {lowest:g} a {highest:g} {unit}</translation>
    </message>
    <message>
        <source>{text!r} is not one of {choices}</source>
        <translation>{text!r} no está entre {choices}</translation>
    </message>
    <message>
        <source>; nearest: {hint}</source>
        <translation>; lo más cercano: {hint}</translation>
    </message>
    <message>
        <source>no such folder</source>
        <translation>no existe esa carpeta</translation>
    </message>
    <message>
        <source>no tables here (files named like metals.csv)</source>
        <translation>aquí no hay tablas (archivos con nombres como metals.csv)</translation>
    </message>
    <message>
        <source>only a header, no rows</source>
        <translation>solo un encabezado, ninguna fila</translation>
    </message>
    <message>
        <source>not readable as CSV: {error}</source>
        <translation>no se puede leer como CSV: {error}</translation>
    </message>
    <message>
        <source>cells are separated by semicolons here; use commas</source>
        <translation>aquí las celdas están separadas por punto y coma; usar comas</translation>
    </message>
    <message>
        <source>unknown column</source>
        <translation>columna desconocida</translation>
    </message>
    <message>
        <source>the column comes {count} times</source>
        <translation>la columna aparece {count} veces</translation>
    </message>
    <message>
        <source>the column is missing</source>
        <translation>falta la columna</translation>
    </message>
    <message>
        <source>columns are missing: {names}</source>
        <translation>faltan columnas: {names}</translation>
    </message>
    <message>
        <source>{named} comes twice (first in row {first_line})</source>
        <translation>{named} aparece dos veces (primero en la fila {first_line})</translation>
    </message>
    <message>
        <source>{cells} cells, but the header has {columns}</source>
        <translation>{cells} celdas, pero el encabezado tiene {columns}</translation>
    </message>
    <message>
        <source>the cell is empty</source>
        <translation>la celda está vacía</translation>
    </message>
    <message>
        <source>source {source_id!r} is not in sources.yaml</source>
        <translation>la fuente {source_id!r} no está en sources.yaml</translation>
    </message>
    <message>
        <source>{low_column} {low:g} is above {high_column} {high:g}</source>
        <translation>{low_column} {low:g} está por encima de {high_column} {high:g}</translation>
    </message>
    <message>
        <source>{column!r} is not a column of this table</source>
        <translation>{column!r} no es una columna de esta tabla</translation>
    </message>
    <message>
        <source>{day}, digest {digest}</source>
        <translation>{day}, digest {digest}</translation>
    </message>
    <message>
        <source>not a date like 2026-01-31: {text!r}</source>
        <translation>no es una fecha como 2026-01-31: {text!r}</translation>
    </message>
    <message>
        <source>{names}, or a number of ISO 6520-1</source>
        <translation>{names}, o un número de ISO 6520-1</translation>
    </message>
    <message>
        <source>the tables hold no filler for this pair</source>
        <translation>las tablas no tienen aporte para este par</translation>
    </message>
    <message>
        <source>{pair} for {goal}</source>
        <translation>{pair} para {goal}</translation>
    </message>
    <message>
        <source>the same joint without this goal</source>
        <translation>la misma unión sin este objetivo</translation>
    </message>
    <message>
        <source>no row answers {goal} for this pair; this is the general choice</source>
        <translation>ninguna fila responde para este par a: {goal}; esta es la elección general</translation>
    </message>
    <message>
        <source>above 0 A</source>
        <translation>más de 0 A</translation>
    </message>
    <message>
        <source>filter shade for {process} at {current_a:g} A</source>
        <translation>tono del filtro para {process} a {current_a:g} A</translation>
    </message>
    <message>
        <source>the regulation&apos;s table ends below this current</source>
        <translation>la tabla del reglamento acaba por debajo de esta corriente</translation>
    </message>
    <message>
        <source>gauge system</source>
        <translation>sistema de calibres</translation>
    </message>
    <message>
        <source>{system} {lowest} to {highest}</source>
        <translation>{system} {lowest} a {highest}</translation>
    </message>
    <message>
        <source>expected {fields}</source>
        <translation>se esperaba {fields}</translation>
    </message>
    <message>
        <source>unknown entry {unknown}</source>
        <translation>entrada desconocida: {unknown}</translation>
    </message>
    <message>
        <source>{key!r} must be one text</source>
        <translation>{key!r} tiene que ser un solo texto</translation>
    </message>
    <message>
        <source>{key!r} is missing or empty</source>
        <translation>{key!r} falta o está vacío</translation>
    </message>
    <message>
        <source>&apos;when&apos; is {always!r} or a list of cases</source>
        <translation>&apos;when&apos; es {always!r} o una lista de casos</translation>
    </message>
    <message>
        <source>a case is {attribute: [values]}</source>
        <translation>un caso es {attribute: [values]}</translation>
    </message>
    <message>
        <source>nothing in a request is called {unknown}</source>
        <translation>nada en una petición se llama {unknown}</translation>
    </message>
    <message>
        <source>{attribute!r} needs a list of words</source>
        <translation>{attribute!r} necesita una lista de palabras</translation>
    </message>
    <message>
        <source>{given!r}; allowed: {allowed}</source>
        <translation>{given!r}; se admite: {allowed}</translation>
    </message>
    <message>
        <source> (and {number} more; `welds tables check` lists all)</source>
        <translation> (y {number} más; `welds tables check` los muestra todos)</translation>
    </message>
    <message>
        <source>its column sheet {name}.yaml is missing</source>
        <translation>falta su hoja de columnas {name}.yaml</translation>
    </message>
    <message>
        <source>no table has this name</source>
        <translation>ninguna tabla tiene este nombre</translation>
    </message>
    <message>
        <source>column sheets are fixed; own tables are CSV only</source>
        <translation>las hojas de columnas son fijas; las tablas propias son solo CSV</translation>
    </message>
    <message>
        <source>{alloy} in temper {tempers}</source>
        <translation>{alloy} en temple {tempers}</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>aluminio</translation>
    </message>
    <message>
        <source>carbon steel</source>
        <translation>acero al carbono</translation>
    </message>
    <message>
        <source>stainless</source>
        <translation>inoxidable</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>acero</translation>
    </message>
    <message>
        <source>any</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>general</source>
        <translation>general</translation>
    </message>
    <message>
        <source>galvanised</source>
        <translation>galvanizado</translation>
    </message>
    <message>
        <source>zinc plated</source>
        <translation>cincado</translation>
    </message>
    <message>
        <source>zinc primer</source>
        <translation>imprimación de cinc</translation>
    </message>
    <message>
        <source>cadmium</source>
        <translation>cadmio</translation>
    </message>
    <message>
        <source>chrome</source>
        <translation>cromado</translation>
    </message>
    <message>
        <source>paint</source>
        <translation>pintura</translation>
    </message>
    <message>
        <source>old paint</source>
        <translation>pintura vieja</translation>
    </message>
    <message>
        <source>powder coat</source>
        <translation>pintura en polvo</translation>
    </message>
    <message>
        <source>sealer</source>
        <translation>sellador</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>aceite</translation>
    </message>
    <message>
        <source>anodised</source>
        <translation>anodizado</translation>
    </message>
    <message>
        <source>mill scale</source>
        <translation>cascarilla de laminación</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>óxido</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>lanthana</source>
        <translation>óxido de lantano</translation>
    </message>
    <message>
        <source>ceria</source>
        <translation>óxido de cerio</translation>
    </message>
    <message>
        <source>thoria</source>
        <translation>óxido de torio</translation>
    </message>
    <message>
        <source>zirconia</source>
        <translation>óxido de circonio</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>helium</source>
        <translation>helio</translation>
    </message>
    <message>
        <source>argon helium</source>
        <translation>argón-helio</translation>
    </message>
    <message>
        <source>active</source>
        <translation>activo</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>por ciento</translation>
    </message>
    <message>
        <source>efficiency</source>
        <translation>rendimiento</translation>
    </message>
    <message>
        <source>power factor</source>
        <translation>factor de potencia</translation>
    </message>
    <message>
        <source>inverter</source>
        <translation>inversor</translation>
    </message>
    <message>
        <source>corrected inverter</source>
        <translation>inversor con corrección</translation>
    </message>
    <message>
        <source>transformer</source>
        <translation>transformador</translation>
    </message>
    <message>
        <source>motor generator</source>
        <translation>motogenerador</translation>
    </message>
    <message>
        <source>air</source>
        <translation>aire</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>square</source>
        <translation>cuadrada</translation>
    </message>
    <message>
        <source>sine</source>
        <translation>senoidal</translation>
    </message>
    <message>
        <source>sheet</source>
        <translation>chapa</translation>
    </message>
    <message>
        <source>structural</source>
        <translation>estructural</translation>
    </message>
    <message>
        <source>blackened tungsten</source>
        <translation>tungsteno ennegrecido</translation>
    </message>
    <message>
        <source>burn through</source>
        <translation>perforación</translation>
    </message>
    <message>
        <source>convex bead</source>
        <translation>cordón convexo</translation>
    </message>
    <message>
        <source>crack</source>
        <translation>grieta</translation>
    </message>
    <message>
        <source>crater crack</source>
        <translation>grieta de cráter</translation>
    </message>
    <message>
        <source>distortion</source>
        <translation>deformación</translation>
    </message>
    <message>
        <source>excess penetration</source>
        <translation>exceso de penetración</translation>
    </message>
    <message>
        <source>heat tint</source>
        <translation>coloración por calor</translation>
    </message>
    <message>
        <source>incomplete penetration</source>
        <translation>falta de penetración</translation>
    </message>
    <message>
        <source>lack of fusion</source>
        <translation>falta de fusión</translation>
    </message>
    <message>
        <source>oxide inclusion</source>
        <translation>inclusión de óxido</translation>
    </message>
    <message>
        <source>poor restart</source>
        <translation>empalme defectuoso</translation>
    </message>
    <message>
        <source>porosity</source>
        <translation>porosidad</translation>
    </message>
    <message>
        <source>soot</source>
        <translation>hollín</translation>
    </message>
    <message>
        <source>spatter</source>
        <translation>proyecciones</translation>
    </message>
    <message>
        <source>stray arc</source>
        <translation>cebado de arco fuera de la costura</translation>
    </message>
    <message>
        <source>tungsten inclusion</source>
        <translation>incl. de tungsteno</translation>
    </message>
    <message>
        <source>undercut</source>
        <translation>mordedura</translation>
    </message>
    <message>
        <source>underfill</source>
        <translation>falta de relleno</translation>
    </message>
    <message>
        <source>uneven bead</source>
        <translation>cordón irregular</translation>
    </message>
    <message>
        <source>wandering arc</source>
        <translation>arco errante</translation>
    </message>
    <message>
        <source>wide etch band</source>
        <translation>banda de limpieza ancha</translation>
    </message>
    <message>
        <source>wire feed trouble</source>
        <translation>problema de alimentación de hilo</translation>
    </message>
    <message>
        <source>{words} and {last}</source>
        <translation>{words} y {last}</translation>
    </message>
    <message>
        <source>{words} or {last}</source>
        <translation>{words} o {last}</translation>
    </message>
    <message>
        <source>the data folder is missing; install the program again</source>
        <translation>falta la carpeta de datos; instalar de nuevo el programa</translation>
    </message>
    <message>
        <source>{letters}, an AWS number such as 1G, or words such as flat</source>
        <translation>{letters}, un número AWS, p. ej. 1G, o palabras, p. ej. flat</translation>
    </message>
    <message>
        <source>{part!r} is missing or empty</source>
        <translation>{part!r} falta o está vacío</translation>
    </message>
    <message>
        <source>&apos;columns&apos; is missing</source>
        <translation>falta &apos;columns&apos;</translation>
    </message>
    <message>
        <source>this closing column is always of type {kind}</source>
        <translation>esta columna de cierre es siempre del tipo {kind}</translation>
    </message>
    <message>
        <source>a key column cannot be optional</source>
        <translation>una columna clave no puede ser opcional</translation>
    </message>
    <message>
        <source>&apos;order&apos; is a list of pairs of columns</source>
        <translation>&apos;order&apos; es una lista de pares de columnas</translation>
    </message>
    <message>
        <source>&apos;order&apos; names no number column</source>
        <translation>&apos;order&apos; no nombra ninguna columna numérica</translation>
    </message>
    <message>
        <source>expected {type: ..., meaning: ...}</source>
        <translation>se esperaba {type: ..., meaning: ...}</translation>
    </message>
    <message>
        <source>&apos;meaning&apos; is missing</source>
        <translation>falta &apos;meaning&apos;</translation>
    </message>
    <message>
        <source>&apos;choices&apos; must be a list of words</source>
        <translation>&apos;choices&apos; tiene que ser una lista de palabras</translation>
    </message>
    <message>
        <source>&apos;choices&apos; belongs to a choice or a list</source>
        <translation>&apos;choices&apos; va con una elección o una lista</translation>
    </message>
    <message>
        <source>optional, min or max: {error}</source>
        <translation>optional, min o max: {error}</translation>
    </message>
    <message>
        <source>a number needs its &apos;unit&apos; (1 for a plain ratio)</source>
        <translation>un número necesita su &apos;unit&apos; (1 para una relación simple)</translation>
    </message>
    <message>
        <source>&apos;min&apos; must be below &apos;max&apos;</source>
        <translation>&apos;min&apos; tiene que estar por debajo de &apos;max&apos;</translation>
    </message>
    <message>
        <source>&apos;min&apos; and &apos;max&apos; belong to a number or an integer</source>
        <translation>&apos;min&apos; y &apos;max&apos; van con un número o un entero</translation>
    </message>
    <message>
        <source>{part!r} is missing; it lists column names</source>
        <translation>falta {part!r}; contiene nombres de columnas</translation>
    </message>
    <message>
        <source>{part!r} names no column of this sheet</source>
        <translation>{part!r} no nombra ninguna columna de esta hoja</translation>
    </message>
    <message>
        <source>unknown entry {key!r}; allowed: {allowed}</source>
        <translation>entrada desconocida {key!r}; se admite: {allowed}</translation>
    </message>
    <message>
        <source>source {key}: expected citation, status, how_read</source>
        <translation>fuente {key}: se esperaba citation, status, how_read</translation>
    </message>
    <message>
        <source>source {key}: {problem}</source>
        <translation>fuente {key}: {problem}</translation>
    </message>
    <message>
        <source>{name!r} is missing or empty</source>
        <translation>{name!r} falta o está vacío</translation>
    </message>
    <message>
        <source>unknown entry {name!r}</source>
        <translation>entrada desconocida {name!r}</translation>
    </message>
    <message>
        <source>{name!r} must be one text</source>
        <translation>{name!r} tiene que ser un solo texto</translation>
    </message>
    <message>
        <source>expected &apos;name: value&apos; lines at the top</source>
        <translation>se esperaban líneas &apos;name: value&apos; al principio</translation>
    </message>
    <message>
        <source>not readable as YAML: {problem}</source>
        <translation>no se puede leer como YAML: {problem}</translation>
    </message>
    <message>
        <source>not readable as YAML: nested too deeply</source>
        <translation>no se puede leer como YAML: anidado demasiado hondo</translation>
    </message>
    <message>
        <source>tags (!) are not used here</source>
        <translation>aquí no se usan etiquetas (!)</translation>
    </message>
    <message>
        <source>anchors and aliases (&amp; and *) are not used here; write it out</source>
        <translation>aquí no se usan anclas ni alias (&amp; y *); escribirlo entero</translation>
    </message>
    <message>
        <source>a key must be a plain word</source>
        <translation>una clave tiene que ser una palabra sencilla</translation>
    </message>
    <message>
        <source>key {key!r} comes twice (first on line {line})</source>
        <translation>la clave {key!r} aparece dos veces (primero en la línea {line})</translation>
    </message>
    <message>
        <source>cannot be read: {problem}</source>
        <translation>no se puede leer: {problem}</translation>
    </message>
    <message>
        <source>larger than {size} MB; no table is</source>
        <translation>mayor que {size} MB; ninguna tabla lo es</translation>
    </message>
    <message>
        <source>not a UTF-8 text file (byte {start})</source>
        <translation>no es un archivo de texto UTF-8 (byte {start})</translation>
    </message>
    <message>
        <source>not a text file: it holds zero bytes</source>
        <translation>no es un archivo de texto: contiene bytes cero</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>el archivo está vacío</translation>
    </message>
    <message>
        <source>melts right through ({width} wide at the root)</source>
        <translation>funde del todo (ancho {width} en la raíz)</translation>
    </message>
    <message>
        <source>Fused width    {length}</source>
        <translation>Ancho fundido  {length}</translation>
    </message>
    <message>
        <source>Fused depth    {depth}</source>
        <translation>Prof. fundida  {depth}</translation>
    </message>
    <message>
        <source>Burn-through   {margin}</source>
        <translation>Perforación    {margin}</translation>
    </message>
    <message>
        <source>Current        {through:.0f} A just melts through, {collapse:.0f} A falls out</source>
        <translation>Corriente      con {through:.0f} A funde justo del todo, con {collapse:.0f} A se cae</translation>
    </message>
    <message>
        <source>Pool           {length} long</source>
        <translation>Baño           {length} de largo</translation>
    </message>
    <message>
        <source>Heat input     {heat} (EN 1011-1)</source>
        <translation>Aporte térmico {heat} (EN 1011-1)</translation>
    </message>
    <message>
        <source>Added metal    {area} by the wire feed</source>
        <translation>Metal añadido  {area} según la velocidad de hilo</translation>
    </message>
    <message>
        <source>a fillet of {length} leg</source>
        <translation>un cordón en ángulo de cateto {length}</translation>
    </message>
    <message>
        <source>Cooling        {time:.1f} s from 800 to 500 degC (EN 1011-2)</source>
        <translation>Enfriamiento   {time:.1f} s de 800 a 500 °C (EN 1011-2)</translation>
    </message>
    <message>
        <source>Heat-affected  {wide} beside the bead, above {limit}</source>
        <translation>Zona afectada  {wide} junto al cordón, por encima de {limit}</translation>
    </message>
    <message>
        <source>Reckoned with  {voltage:.1f} V, of which {middle:.0%} reach the work ({low:.0%} to {high:.0%}): {text}</source>
        <translation>Calculado con  {voltage:.1f} V, de los que llega a la pieza {middle:.0%} ({low:.0%} a {high:.0%}): {text}</translation>
    </message>
    <message>
        <source>Conduction only, give or take {error:.0%} in the heat: to think with, not a procedure.</source>
        <translation>Solo conducción, con un error de más o menos {error:.0%} del calor: para pensar, no es un procedimiento.</translation>
    </message>
    <message>
        <source>Trend only: {text}</source>
        <translation>Solo tendencia: {text}</translation>
    </message>
    <message>
        <source>falls out: {share:.0%} less current would hold it</source>
        <translation>se cae: con un {share:.0%} menos de corriente aguantaría</translation>
    </message>
    <message>
        <source>{margin:.0%} more current before it falls out</source>
        <translation>un {margin:.0%} más de corriente antes de que se caiga</translation>
    </message>
    <message>
        <source>{middle} ({low} to {high})</source>
        <translation>{middle} ({low} a {high})</translation>
    </message>
    <message>
        <source>mig</source>
        <translation>mig</translation>
    </message>
    <message>
        <source>tig</source>
        <translation>tig</translation>
    </message>
    <message>
        <source>air-cooled</source>
        <translation>refrigerada por aire</translation>
    </message>
    <message>
        <source>water-cooled</source>
        <translation>refrigerada por agua</translation>
    </message>
    <message>
        <source>{name}  (in use)</source>
        <translation>{name}  (en uso)</translation>
    </message>
    <message>
        <source>all at once</source>
        <translation>todo a la vez</translation>
    </message>
    <message>
        <source>conductors for about {current:.0f} A [NEC_630_2008]; who wires it goes by the local code</source>
        <translation>conductores para unos {current:.0f} A [NEC_630_2008]; quien hace la instalación sigue el reglamento local</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>En el estante</translation>
    </message>
    <message>
        <source>nothing stated, so nothing is ruled out</source>
        <translation>nada indicado, así que nada queda excluido</translation>
    </message>
    <message>
        <source>processes</source>
        <translation>procesos</translation>
    </message>
    <message>
        <source>AC</source>
        <translation>CA</translation>
    </message>
    <message>
        <source>no AC</source>
        <translation>sin CA</translation>
    </message>
    <message>
        <source>pulse</source>
        <translation>pulsado</translation>
    </message>
    <message>
        <source>no pulse</source>
        <translation>sin pulsado</translation>
    </message>
    <message>
        <source>no pedal</source>
        <translation>sin pedal</translation>
    </message>
    <message>
        <source>has</source>
        <translation>tiene</translation>
    </message>
    <message>
        <source>wires</source>
        <translation>hilos</translation>
    </message>
    <message>
        <source>{minutes:g} minutes in ten at {amps:g} A</source>
        <translation>{minutes:g} minutos de cada diez a {amps:g} A</translation>
    </message>
    <message>
        <source>{amps:g} A at {duty:g} %</source>
        <translation>{amps:g} A al {duty:g} %</translation>
    </message>
    <message>
        <source>{amps:g} A on AC</source>
        <translation>{amps:g} A en CA</translation>
    </message>
    <message>
        <source>up to {drawn:.0f} A from {volts:g} V at {current:g} A ({known})</source>
        <translation>hasta {drawn:.0f} A de {volts:g} V a {current:g} A ({known})</translation>
    </message>
    <message>
        <source>{figures} {unit} only</source>
        <translation>solo {figures} {unit}</translation>
    </message>
    <message>
        <source>{low:g} {unit}, fixed</source>
        <translation>{low:g} {unit}, fijo</translation>
    </message>
    <message>
        <source>{low} to {high} {unit}</source>
        <translation>{low} a {high} {unit}</translation>
    </message>
    <message>
        <source>in steps of {step:g}</source>
        <translation>en pasos de {step:g}</translation>
    </message>
    <message>
        <source>rods</source>
        <translation>varillas</translation>
    </message>
    <message>
        <source>{gas}, {litres:g} L left</source>
        <translation>{gas}, quedan {litres:g} L</translation>
    </message>
    <message>
        <source>cups</source>
        <translation>toberas</translation>
    </message>
    <message>
        <source>cups for a lens</source>
        <translation>toberas para difusor</translation>
    </message>
    <message>
        <source>gas lenses</source>
        <translation>difusores</translation>
    </message>
    <message>
        <source>collets</source>
        <translation>pinzas</translation>
    </message>
    <message>
        <source>backing bars</source>
        <translation>pletinas de respaldo</translation>
    </message>
    <message>
        <source>brushes for</source>
        <translation>cepillos para</translation>
    </message>
    <message>
        <source>wheels for</source>
        <translation>muelas para</translation>
    </message>
    <message>
        <source>tungsten types</source>
        <translation>tipos de tungsteno</translation>
    </message>
    <message>
        <source>tungsten sizes</source>
        <translation>tamaños de tungsteno</translation>
    </message>
    <message>
        <source>filler metals</source>
        <translation>metales de aporte</translation>
    </message>
    <message>
        <source>rod sizes</source>
        <translation>tamaños de varilla</translation>
    </message>
    <message>
        <source>wire sizes</source>
        <translation>tamaños de hilo</translation>
    </message>
    <message>
        <source>shade {low}</source>
        <translation>tono {low}</translation>
    </message>
    <message>
        <source>shades {low} to {high}</source>
        <translation>tonos {low} a {high}</translation>
    </message>
    <message>
        <source>{first} and {second}</source>
        <translation>{first} y {second}</translation>
    </message>
    <message>
        <source>association&apos;s table</source>
        <translation>tabla de asociación</translation>
    </message>
    <message>
        <source>design handbook, inches</source>
        <translation>manual de diseño, pulgadas</translation>
    </message>
    <message>
        <source>{number} legs</source>
        <translation>{number} alas</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>sin plegar</translation>
    </message>
    <message>
        <source>Blank, {metal}, {thickness}, {legs}</source>
        <translation>Desarrollo, {metal}, {thickness}, {legs}</translation>
    </message>
    <message>
        <source>legs measured {where}</source>
        <translation>alas medidas {where}</translation>
    </message>
    <message>
        <source>Other methods</source>
        <translation>Otros métodos</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Fuentes</translation>
    </message>
    <message>
        <source>Flat length {length}</source>
        <translation>Longitud del desarrollo {length}</translation>
    </message>
    <message>
        <source>  between {low} and {high} by the methods in use; one test bend on your brake narrows that</source>
        <translation>  entre {low} y {high} según los métodos en uso; un plegado de prueba en la plegadora propia lo acota</translation>
    </message>
    <message>
        <source>Width {length}</source>
        <translation>Ancho {length}</translation>
    </message>
    <message>
        <source>up</source>
        <translation>hacia arriba</translation>
    </message>
    <message>
        <source>down</source>
        <translation>hacia abajo</translation>
    </message>
    <message>
        <source>Bend {number}: {angle:g} deg {way}, line at {line}, inside radius {radius}, allowance {allowance}, deduction {deduction}, K {k:.3f} ({method}, {grade})</source>
        <translation>Plegado {number}: {angle:g} grados {way}, línea en {line}, radio interior {radius}, tolerancia {allowance}, descuento {deduction}, K {k:.3f} ({method}, {grade})</translation>
    </message>
    <message>
        <source>Least inside radius, {verdict}: {radius} asked</source>
        <translation>Radio interior mínimo, {verdict}: se pide {radius}</translation>
    </message>
    <message>
        <source>bend line along the rolling direction</source>
        <translation>línea de plegado a lo largo del laminado</translation>
    </message>
    <message>
        <source>advises against it</source>
        <translation>lo desaconseja</translation>
    </message>
    <message>
        <source>joint wants {current}</source>
        <translation>la unión pide {current}</translation>
    </message>
    <message>
        <source>wire {figure}</source>
        <translation>hilo {figure}</translation>
    </message>
    <message>
        <source>Sources: {ids}; `welds tables sources` describes them</source>
        <translation>Fuentes: {ids}; `welds tables sources` las describe</translation>
    </message>
    <message>
        <source>Joint wants: more or less than the machine gives; its card says what can be done</source>
        <translation>La unión pide: más o menos de lo que da la máquina; su ficha dice qué se puede hacer</translation>
    </message>
    <message>
        <source>* rests on practice or memory: no published source covers it</source>
        <translation>* se apoya en práctica o memoria: ninguna fuente publicada lo cubre</translation>
    </message>
    <message>
        <source>{metal} to {other}</source>
        <translation>{metal} con {other}</translation>
    </message>
    <message>
        <source>position {position}</source>
        <translation>posición {position}</translation>
    </message>
    <message>
        <source>For {machine}</source>
        <translation>Para {machine}</translation>
    </message>
    <message>
        <source>For {machine}.</source>
        <translation>Para {machine}.</translation>
    </message>
    <message>
        <source>{thickness} on {other}</source>
        <translation>{thickness} sobre {other}</translation>
    </message>
    <message>
        <source>gap {length}</source>
        <translation>separación {length}</translation>
    </message>
    <message>
        <source>gap 0 mm</source>
        <translation>separación 0 mm</translation>
    </message>
    <message>
        <source>usual gas</source>
        <translation>gas habitual</translation>
    </message>
    <message>
        <source>{length} wire</source>
        <translation>hilo de {length}</translation>
    </message>
    <message>
        <source>usual wire</source>
        <translation>hilo habitual</translation>
    </message>
    <message>
        <source>usual transfer</source>
        <translation>transferencia habitual</translation>
    </message>
    <message>
        <source>goal: {goal}</source>
        <translation>objetivo: {goal}</translation>
    </message>
    <message>
        <source>no goal</source>
        <translation>sin objetivo</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>sin recubrir</translation>
    </message>
    <message>
        <source>wiped with {solvent}</source>
        <translation>limpiado con {solvent}</translation>
    </message>
    <message>
        <source>no solvent</source>
        <translation>sin disolvente</translation>
    </message>
    <message>
        <source>loose piece</source>
        <translation>pieza suelta</translation>
    </message>
    <message>
        <source>any length</source>
        <translation>cualquier longitud</translation>
    </message>
    <message>
        <source>{this} instead of {base}</source>
        <translation>{this} en vez de {base}</translation>
    </message>
    <message>
        <source>Figures are rounded as on the card; distances from the base are not.</source>
        <translation>Las cifras van redondeadas como en la ficha; las diferencias con la base, no.</translation>
    </message>
    <message>
        <source>tables alone</source>
        <translation>solo tablas</translation>
    </message>
    <message>
        <source>Tables alone</source>
        <translation>Solo tablas</translation>
    </message>
    <message>
        <source>tables and log</source>
        <translation>tablas y registro</translation>
    </message>
    <message>
        <source>Tables and log</source>
        <translation>Tablas y registro</translation>
    </message>
    <message>
        <source>{words}; for {machine}</source>
        <translation>{words}; para {machine}</translation>
    </message>
    <message>
        <source>{text} (For {columns})</source>
        <translation>{text} (Para {columns})</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>no se usa</translation>
    </message>
    <message>
        <source>instead of {base}</source>
        <translation>en vez de {base}</translation>
    </message>
    <message>
        <source>base {base}</source>
        <translation>base {base}</translation>
    </message>
    <message>
        <source>points</source>
        <translation>puntos</translation>
    </message>
    <message>
        <source>follows {setting}: {this} instead of {base}</source>
        <translation>sigue a {setting}: {this} en vez de {base}</translation>
    </message>
    <message>
        <source>follows the machine: {this} instead of {base}</source>
        <translation>sigue a la máquina: {this} en vez de {base}</translation>
    </message>
    <message>
        <source>follows what is asked: {change}</source>
        <translation>sigue a lo pedido: {change}</translation>
    </message>
    <message>
        <source>no card</source>
        <translation>sin ficha</translation>
    </message>
    <message>
        <source>All columns agree.</source>
        <translation>Todas las columnas coinciden.</translation>
    </message>
    <message>
        <source>Side by side: {columns}</source>
        <translation>Lado a lado: {columns}</translation>
    </message>
    <message>
        <source>(base)</source>
        <translation>(base)</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>The same in all</source>
        <translation>Igual en todas</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nada</translation>
    </message>
    <message>
        <source>{title} (base)</source>
        <translation>{title} (base)</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Do first</source>
        <translation>Hacer antes</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Comprobado</translation>
    </message>
    <message>
        <source>task</source>
        <translation>tarea</translation>
    </message>
    <message>
        <source>when</source>
        <translation>cuándo</translation>
    </message>
    <message>
        <source>why</source>
        <translation>por qué</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>pieza</translation>
    </message>
    <message>
        <source>number</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>card</source>
        <translation>ficha</translation>
    </message>
    <message>
        <source>set-up</source>
        <translation>ajuste</translation>
    </message>
    <message>
        <source>joints</source>
        <translation>uniones</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>habitual</translation>
    </message>
    <message>
        <source>range</source>
        <translation>margen</translation>
    </message>
    <message>
        <source>Not answered</source>
        <translation>Sin contestar</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation>Lista de corte</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Fichas</translation>
    </message>
    <message>
        <source>Pauses</source>
        <translation>Pausas</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Controles</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Chapas</translation>
    </message>
    <message>
        <source>Tacks: {key}</source>
        <translation>Puntos: {key}</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Materiales</translation>
    </message>
    <message>
        <source>{done} of {number} tasks done</source>
        <translation>{done} de {number} tareas hechas</translation>
    </message>
    <message>
        <source>Repair: {key}</source>
        <translation>Reparación: {key}</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>cortar</translation>
    </message>
    <message>
        <source>mend</source>
        <translation>reparar</translation>
    </message>
    <message>
        <source>weld</source>
        <translation>soldar</translation>
    </message>
    <message>
        <source>do</source>
        <translation>hacer</translation>
    </message>
    <message>
        <source>fit</source>
        <translation>montar</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>can wait</source>
        <translation>puede esperar</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>later</source>
        <translation>después</translation>
    </message>
    <message>
        <source>{task} (log {welds})</source>
        <translation>{task} (registro {welds})</translation>
    </message>
    <message>
        <source>no blank</source>
        <translation>sin desarrollo</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>plegado</translation>
    </message>
    <message>
        <source>{stock}, sheet {number}: {blanks} blanks, {waste:.0%} left over</source>
        <translation>{stock}, chapa {number}: desarrollos: {blanks}, {waste:.0%} sobrante</translation>
    </message>
    <message>
        <source>no card: {problem}</source>
        <translation>sin ficha: {problem}</translation>
    </message>
    <message>
        <source>(learned from 1 past weld)</source>
        <translation>(aprendido de 1 soldadura)</translation>
    </message>
    <message>
        <source>(learned from {welds} past welds)</source>
        <translation>(aprendido de {welds} soldaduras)</translation>
    </message>
    <message>
        <source>Card {number}: wait between runs until it is below {temperature}</source>
        <translation>Ficha {number}: entre pasadas, esperar hasta que esté por debajo de {temperature}</translation>
    </message>
    <message>
        <source>Card {number}: {text}</source>
        <translation>Ficha {number}: {text}</translation>
    </message>
    <message>
        <source>on the shelf</source>
        <translation>en el estante</translation>
    </message>
    <message>
        <source>not on the shelf: buy</source>
        <translation>no está en el estante: comprar</translation>
    </message>
    <message>
        <source>{litres:.0f} L left</source>
        <translation>quedan {litres:.0f} L</translation>
    </message>
    <message>
        <source>buy up to {litres:.0f} L</source>
        <translation>comprar hasta {litres:.0f} L</translation>
    </message>
    <message>
        <source>arc time</source>
        <translation>tiempo de arco</translation>
    </message>
    <message>
        <source>welding time at the bench</source>
        <translation>tiempo de soldeo en el taller</translation>
    </message>
    <message>
        <source>power from the mains</source>
        <translation>energía de la red</translation>
    </message>
    <message>
        <source>cost of {what}</source>
        <translation>coste de {what}</translation>
    </message>
    <message>
        <source>cost of all of that</source>
        <translation>coste de todo ello</translation>
    </message>
    <message>
        <source>Sums of the drawn sections with what is lost and what welds come out over; lows and highs are added up by themselves. Cutting, folding, repairs and painting are in none of them; a patch&apos;s seam is where it stands as a joint of its own.</source>
        <translation>Sumas de las secciones dibujadas, con lo que se pierde y lo que a las soldaduras les sobra de sección; mínimos y máximos se suman cada uno por su lado. Corte, plegado, reparaciones y pintura no entran en ninguna; la costura de un parche está donde figura como unión propia.</translation>
    </message>
    <message>
        <source>Without a price in the file: {names}</source>
        <translation>Sin precio en el archivo: {names}</translation>
    </message>
    <message>
        <source>Buy: {item}</source>
        <translation>Comprar: {item}</translation>
    </message>
    <message>
        <source>Better with: {item}</source>
        <translation>Mejor con: {item}</translation>
    </message>
    <message>
        <source>Light test: shine a lamp from behind in the dark; light through a seam is a missed spot.</source>
        <translation>Prueba de luz: a oscuras, alumbrar con una lámpara por detrás; si pasa luz por una costura, es un punto sin soldar.</translation>
    </message>
    <message>
        <source>Look at every crater, start and corner; mend cracks and holes before anything is covered up.</source>
        <translation>Mirar cada cráter, inicio y esquina; reparar grietas y agujeros antes de tapar nada.</translation>
    </message>
    <message>
        <source>card {number}: {text}</source>
        <translation>ficha {number}: {text}</translation>
    </message>
    <message>
        <source>{thickness} to {other}</source>
        <translation>{thickness} con {other}</translation>
    </message>
    <message>
        <source>{conditions}. For {machine}.</source>
        <translation>{conditions}. Para {machine}.</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Margen</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Grado</translation>
    </message>
    <message>
        <source>Sources and grades</source>
        <translation>Fuentes y grados</translation>
    </message>
    <message>
        <source>Overview</source>
        <translation>Resumen</translation>
    </message>
    <message>
        <source>What the sums leave out, and what to buy</source>
        <translation>Qué dejan fuera las sumas, y qué comprar</translation>
    </message>
    <message>
        <source>Order of work</source>
        <translation>Orden de trabajo</translation>
    </message>
    <message>
        <source>Blanks on their sheets</source>
        <translation>Desarrollos en sus chapas</translation>
    </message>
    <message>
        <source>Blank: {key}</source>
        <translation>Desarrollo: {key}</translation>
    </message>
    <message>
        <source>Holes and cuts: {key}</source>
        <translation>Agujeros y cortes: {key}</translation>
    </message>
    <message>
        <source>Card for repair: {key}</source>
        <translation>Ficha de la reparación: {key}</translation>
    </message>
    <message>
        <source>Cards and their joints</source>
        <translation>Fichas y sus uniones</translation>
    </message>
    <message>
        <source>Card {number}</source>
        <translation>Ficha {number}</translation>
    </message>
    <message>
        <source>Tacks for card {number}: {joint}, {count} alike</source>
        <translation>Puntos de la ficha {number}: {joint}, {count} iguales</translation>
    </message>
    <message>
        <source>Tacks for card {number}</source>
        <translation>Puntos de la ficha {number}</translation>
    </message>
    <message>
        <source>Preliminary: what was done once, not a qualified procedure. Where a code, a customer or safety asks for a qualified one, it has to be qualified by test under the rules that apply.</source>
        <translation>Preliminar: lo que se hizo una vez, no un procedimiento cualificado. Donde un código, un cliente o la seguridad pidan uno cualificado, hay que cualificarlo mediante ensayo según las normas aplicables.</translation>
    </message>
    <message>
        <source>Preliminary welding procedure specification, log entry {which}</source>
        <translation>Especificación preliminar del procedimiento de soldeo, entrada de registro {which}</translation>
    </message>
    <message>
        <source>General</source>
        <translation>General</translation>
    </message>
    <message>
        <source>Manufacturer</source>
        <translation>Fabricante</translation>
    </message>
    <message>
        <source>Number of this specification</source>
        <translation>Número de esta especificación</translation>
    </message>
    <message>
        <source>log {entry}</source>
        <translation>registro {entry}</translation>
    </message>
    <message>
        <source>Welding procedure qualification record</source>
        <translation>Registro de cualificación del procedimiento de soldeo</translation>
    </message>
    <message>
        <source>none: preliminary</source>
        <translation>ninguno: preliminar</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Welder</source>
        <translation>Soldador</translation>
    </message>
    <message>
        <source>Parent metal</source>
        <translation>Metal base</translation>
    </message>
    <message>
        <source>Designation</source>
        <translation>Designación</translation>
    </message>
    <message>
        <source>Group (ISO/TR 15608)</source>
        <translation>Grupo (ISO/TR 15608)</translation>
    </message>
    <message>
        <source>Heat or lot</source>
        <translation>Colada o lote</translation>
    </message>
    <message>
        <source>Thickness, other piece</source>
        <translation>Espesor, otra pieza</translation>
    </message>
    <message>
        <source>Outside diameter</source>
        <translation>Diámetro exterior</translation>
    </message>
    <message>
        <source>Welding process (ISO 4063)</source>
        <translation>Proceso de soldeo (ISO 4063)</translation>
    </message>
    <message>
        <source>Type of joint and weld</source>
        <translation>Tipo de unión y de soldadura</translation>
    </message>
    <message>
        <source>Welding position (ISO 6947)</source>
        <translation>Posición de soldeo (ISO 6947)</translation>
    </message>
    <message>
        <source>Preparation, edges and gap</source>
        <translation>Preparación, bordes y separación</translation>
    </message>
    <message>
        <source>Method of preparation and cleaning</source>
        <translation>Método de preparación y limpieza</translation>
    </message>
    <message>
        <source>Jigging, tack welds</source>
        <translation>Utillaje, puntos de soldadura</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>Back gouging, backing</source>
        <translation>Resanado de raíz, respaldo</translation>
    </message>
    <message>
        <source>Filler and gas</source>
        <translation>Aporte y gas</translation>
    </message>
    <message>
        <source>Filler, designation</source>
        <translation>Aporte, designación</translation>
    </message>
    <message>
        <source>Filler, size</source>
        <translation>Aporte, medida</translation>
    </message>
    <message>
        <source>Filler, maker and lot, handling</source>
        <translation>Aporte, fabricante y lote, manejo</translation>
    </message>
    <message>
        <source>Shielding gas (ISO 14175)</source>
        <translation>Gas de protección (ISO 14175)</translation>
    </message>
    <message>
        <source>Shielding gas flow</source>
        <translation>Caudal de gas de protección</translation>
    </message>
    <message>
        <source>Backing gas</source>
        <translation>Gas de respaldo</translation>
    </message>
    <message>
        <source>Electrical</source>
        <translation>Parámetros eléctricos</translation>
    </message>
    <message>
        <source>Current and polarity</source>
        <translation>Corriente y polaridad</translation>
    </message>
    <message>
        <source>Arc voltage</source>
        <translation>Tensión de arco</translation>
    </message>
    <message>
        <source>Balance, frequency, pulse</source>
        <translation>Balance, frecuencia, pulsado</translation>
    </message>
    <message>
        <source>Wire feed speed</source>
        <translation>Velocidad de hilo</translation>
    </message>
    <message>
        <source>Mode of metal transfer</source>
        <translation>Modo de transferencia del metal</translation>
    </message>
    <message>
        <source>Tungsten electrode, type and size</source>
        <translation>Electrodo de tungsteno, tipo y medida</translation>
    </message>
    <message>
        <source>Nozzle</source>
        <translation>Tobera</translation>
    </message>
    <message>
        <source>Contact tip to work, stick-out</source>
        <translation>Distancia tubo-pieza, saliente</translation>
    </message>
    <message>
        <source>Technique and heat</source>
        <translation>Técnica y calor</translation>
    </message>
    <message>
        <source>Travel speed</source>
        <translation>Velocidad de avance</translation>
    </message>
    <message>
        <source>Weave, torch angle</source>
        <translation>Oscilación, ángulo de antorcha</translation>
    </message>
    <message>
        <source>Sketch of the joint, order of runs</source>
        <translation>Croquis de la unión, orden de pasadas</translation>
    </message>
    <message>
        <source>Preheat temperature</source>
        <translation>Temperatura de precalentamiento</translation>
    </message>
    <message>
        <source>Interpass temperature</source>
        <translation>Temperatura entre pasadas</translation>
    </message>
    <message>
        <source>Post-heating</source>
        <translation>Poscalentamiento</translation>
    </message>
    <message>
        <source>Post-weld heat treatment</source>
        <translation>Tratamiento térmico posterior</translation>
    </message>
    <message>
        <source>What came of it</source>
        <translation>Qué resultó</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Imperfections (ISO 6520-1)</source>
        <translation>Imperfecciones (ISO 6520-1)</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>141, tungsten inert gas</source>
        <translation>141, TIG (tungsteno con gas inerte)</translation>
    </message>
    <message>
        <source>131 or 135, by the gas</source>
        <translation>131 o 135, según el gas</translation>
    </message>
    <message>
        <source>131, metal inert gas</source>
        <translation>131, MIG (gas inerte)</translation>
    </message>
    <message>
        <source>135, metal active gas</source>
        <translation>135, MAG (gas activo)</translation>
    </message>
    <message>
        <source>not here: {text}{effect}</source>
        <translation>aquí no: {text}{effect}</translation>
    </message>
    <message>
        <source>{text} ({factor}, base {base_factor})</source>
        <translation>{text} ({factor}, base {base_factor})</translation>
    </message>
    <message>
        <source>{text}{effect} (base: {base_text}{base_effect})</source>
        <translation>{text}{effect} (base: {base_text}{base_effect})</translation>
    </message>
    <message>
        <source>Drill and fill the holes</source>
        <translation>Taladrar y rellenar los agujeros</translation>
    </message>
    <message>
        <source>Cut out and let in a patch</source>
        <translation>Recortar y encajar un parche</translation>
    </message>
    <message>
        <source>Replace the panel</source>
        <translation>Sustituir el panel</translation>
    </message>
    <message>
        <source>patch</source>
        <translation>parche</translation>
    </message>
    <message>
        <source>replace</source>
        <translation>sustituir</translation>
    </message>
    <message>
        <source>Plugs</source>
        <translation>Tapones</translation>
    </message>
    <message>
        <source>plugs</source>
        <translation>tapones</translation>
    </message>
    <message>
        <source>Patch</source>
        <translation>Parche</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panel</translation>
    </message>
    <message>
        <source>panel</source>
        <translation>panel</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>checks</source>
        <translation>controles</translation>
    </message>
    <message>
        <source>{choice}: {sheet}, region {region}</source>
        <translation>{choice}: {sheet}, zona {region}</translation>
    </message>
    <message>
        <source>Drill {diameter}, deburr, {count} holes</source>
        <translation>Taladrar a {diameter}, desbarbar, {count} agujeros</translation>
    </message>
    <message>
        <source>About {time:.1f} s of arc each; opposite ends of the region by turns</source>
        <translation>Unos {time:.1f} s de arco en cada uno; por turnos en extremos opuestos de la zona</translation>
    </message>
    <message>
        <source>Cut the new panel by the old one&apos;s edges; set up its seams with welds card</source>
        <translation>Cortar el panel nuevo según los bordes del viejo; ajustar sus costuras con welds card</translation>
    </message>
    <message>
        <source>against {choice}: {reason}</source>
        <translation>en contra de {choice}: {reason}</translation>
    </message>
    <message>
        <source>Cut out {cut}, corners with {radius} radius</source>
        <translation>Recortar {cut}, esquinas con radio {radius}</translation>
    </message>
    <message>
        <source>Cut the patch {blank}, corners alike, and grind it to fit</source>
        <translation>Cortar el parche a {blank}, con esquinas iguales, y amolarlo hasta que encaje</translation>
    </message>
    <message>
        <source>Lap joint, {overlap} over the edge all round</source>
        <translation>Unión a solape, {overlap} sobre el borde en todo el contorno</translation>
    </message>
    <message>
        <source>Butt joint, gap up to {gap}</source>
        <translation>Unión a tope, separación de hasta {gap}</translation>
    </message>
    <message>
        <source>round the seam</source>
        <translation>siguiendo el contorno</translation>
    </message>
    <message>
        <source>from one end</source>
        <translation>desde un extremo</translation>
    </message>
    <message>
        <source>{number} tacks, {low:.0f} to {high:.0f} mm long, about {spacing} apart, in this order (places {where}, {unit}): {places} ({grade})</source>
        <translation>{number} puntos, de {low:.0f} a {high:.0f} mm de largo, a unos {spacing} entre sí, en este orden (posiciones {where}, {unit}): {places} ({grade})</translation>
    </message>
    <message>
        <source>{start} to {end}</source>
        <translation>{start} a {end}</translation>
    </message>
    <message>
        <source>Weld in {number} runs, in this order and direction ({unit}): {runs}</source>
        <translation>Soldar en {number} tramos, en este orden y sentido ({unit}): {runs}</translation>
    </message>
    <message>
        <source>Weld in one run</source>
        <translation>Soldar en un solo tramo</translation>
    </message>
    <message>
        <source>Free shrinkage about {across} mm across and {along} mm along (carbon steel; aluminium and stainless steel pull more)</source>
        <translation>Contracción libre de unos {across} mm a través y {along} mm a lo largo (acero al carbono; aluminio e inoxidable tiran más)</translation>
    </message>
    <message>
        <source>Grades</source>
        <translation>Grados</translation>
    </message>
    <message>
        <source>no citation</source>
        <translation>sin cita</translation>
    </message>
    <message>
        <source>or {alternative}</source>
        <translation>o {alternative}</translation>
    </message>
    <message>
        <source>Machine maximum (pedal)</source>
        <translation>Máximo (pedal)</translation>
    </message>
    <message>
        <source>Polarity</source>
        <translation>Polaridad</translation>
    </message>
    <message>
        <source>Balance (electrode negative)</source>
        <translation>Balance (el. neg.)</translation>
    </message>
    <message>
        <source>Pulse</source>
        <translation>Pulsado</translation>
    </message>
    <message>
        <source>Wire feed</source>
        <translation>Vel. de hilo</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Tensión</translation>
    </message>
    <message>
        <source>Metal transfer</source>
        <translation>Transferencia</translation>
    </message>
    <message>
        <source>Tungsten</source>
        <translation>Tungsteno</translation>
    </message>
    <message>
        <source>Tungsten diameter</source>
        <translation>Diám. tungsteno</translation>
    </message>
    <message>
        <source>Tip</source>
        <translation>Punta</translation>
    </message>
    <message>
        <source>Stick-out</source>
        <translation>Saliente</translation>
    </message>
    <message>
        <source>Filler rod</source>
        <translation>Varilla de aporte</translation>
    </message>
    <message>
        <source>Rod diameter</source>
        <translation>Diám. varilla</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Hilo</translation>
    </message>
    <message>
        <source>Contact tip to work</source>
        <translation>Distancia tubo-pieza</translation>
    </message>
    <message>
        <source>Shielding gas</source>
        <translation>Gas de protección</translation>
    </message>
    <message>
        <source>Gas flow</source>
        <translation>Caudal de gas</translation>
    </message>
    <message>
        <source>Cup number</source>
        <translation>Número de tobera</translation>
    </message>
    <message>
        <source>Gas lens</source>
        <translation>Difusor</translation>
    </message>
    <message>
        <source>Gas before the arc</source>
        <translation>Gas antes del arco</translation>
    </message>
    <message>
        <source>Gas after the arc</source>
        <translation>Gas después del arco</translation>
    </message>
    <message>
        <source>Back of the joint</source>
        <translation>Reverso de la unión</translation>
    </message>
    <message>
        <source>Hole diameter</source>
        <translation>Diám. agujero</translation>
    </message>
    <message>
        <source>Time in each hole</source>
        <translation>Tiempo en cada agujero</translation>
    </message>
    <message>
        <source>Filter shade</source>
        <translation>Tono del filtro</translation>
    </message>
    <message>
        <source>Preheat</source>
        <translation>Precalentamiento</translation>
    </message>
    <message>
        <source>Between passes at most</source>
        <translation>Entre pasadas, como máximo</translation>
    </message>
    <message>
        <source>Tacks</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>Passes</source>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>machine maximum (pedal)</source>
        <translation>máximo (pedal)</translation>
    </message>
    <message>
        <source>polarity</source>
        <translation>polaridad</translation>
    </message>
    <message>
        <source>balance (electrode negative)</source>
        <translation>balance (el. neg.)</translation>
    </message>
    <message>
        <source>metal transfer</source>
        <translation>transferencia</translation>
    </message>
    <message>
        <source>tungsten diameter</source>
        <translation>diámetro del tungsteno</translation>
    </message>
    <message>
        <source>filler rod</source>
        <translation>varilla de aporte</translation>
    </message>
    <message>
        <source>rod diameter</source>
        <translation>diámetro de varilla</translation>
    </message>
    <message>
        <source>wire diameter</source>
        <translation>diámetro del hilo</translation>
    </message>
    <message>
        <source>gas flow</source>
        <translation>caudal de gas</translation>
    </message>
    <message>
        <source>hole diameter</source>
        <translation>diámetro del agujero</translation>
    </message>
    <message>
        <source>time in each hole</source>
        <translation>tiempo en cada agujero</translation>
    </message>
    <message>
        <source>travel speed</source>
        <translation>velocidad de avance</translation>
    </message>
    <message>
        <source>arc voltage</source>
        <translation>tensión de arco</translation>
    </message>
    <message>
        <source>Before the arc</source>
        <translation>Antes del arco</translation>
    </message>
    <message>
        <source>At the machine</source>
        <translation>En la máquina</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Aporte</translation>
    </message>
    <message>
        <source>Plug</source>
        <translation>Tapón</translation>
    </message>
    <message>
        <source>Gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>Along the joint</source>
        <translation>A lo largo de la unión</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>TIG</source>
        <translation>TIG</translation>
    </message>
    <message>
        <source>MIG</source>
        <translation>MIG/MAG</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation>ALTO</translation>
    </message>
    <message>
        <source>TAKE CARE</source>
        <translation>CUIDADO</translation>
    </message>
    <message>
        <source>NOTE</source>
        <translation>NOTA</translation>
    </message>
    <message>
        <source>unhurried hand</source>
        <translation>mano pausada</translation>
    </message>
    <message>
        <source>brisk hand</source>
        <translation>mano rápida</translation>
    </message>
    <message>
        <source>DC, torch on minus</source>
        <translation>CC, antorcha al negativo</translation>
    </message>
    <message>
        <source>DC, torch on plus</source>
        <translation>CC, antorcha al positivo</translation>
    </message>
    <message>
        <source>DC, gun on plus</source>
        <translation>CC, pistola al positivo</translation>
    </message>
    <message>
        <source>DC, gun on minus</source>
        <translation>CC, pistola al negativo</translation>
    </message>
    <message>
        <source>ok</source>
        <translation>bien</translation>
    </message>
    <message>
        <source>NOT OK</source>
        <translation>NO CORRECTO</translation>
    </message>
    <message>
        <source>Annealing before a bend</source>
        <translation>Recocido antes de plegar</translation>
    </message>
    <message>
        <source>How a work-hardened or heat-treated aluminium sheet is softened so that it takes a tighter bend, and what that costs: the yield strength before and after. Heat-treated alloys do not get their strength back without a furnace and a quench.</source>
        <translation>Cómo se ablanda una chapa de aluminio endurecida por deformación o tratada térmicamente para que admita un plegado más cerrado, y qué cuesta: el límite elástico antes y después. Las aleaciones tratadas térmicamente no recuperan su resistencia sin horno y temple.</translation>
    </message>
    <message>
        <source>until it is warm through</source>
        <translation>hasta que esté caliente por completo</translation>
    </message>
    <message>
        <source>at any rate</source>
        <translation>a cualquier velocidad</translation>
    </message>
    <message>
        <source>2 to 3 h</source>
        <translation>2 a 3 h</translation>
    </message>
    <message>
        <source>28 K an hour down to 260 degC then in air</source>
        <translation>28 K por hora hasta 260 °C, luego al aire</translation>
    </message>
    <message>
        <source>2 h</source>
        <translation>2 h</translation>
    </message>
    <message>
        <source>28 K an hour down to 230 degC and hold 6 h</source>
        <translation>28 K por hora hasta 230 °C y mantener 6 h</translation>
    </message>
    <message>
        <source>Least inside radius of a bend</source>
        <translation>Radio interior mínimo de un plegado</translation>
    </message>
    <message>
        <source>How tight sheet may be bent cold by 90 degrees across the rolling direction. A row holds above the next thinner row of its document, up to its own thickness. Rows for alloys and tempers the catalogue does not have are left out, and one row of the inch table is dropped as it cannot be right: soft sheet of 0.020 in asked for twice the radius of 0.025 to 0.032 in.</source>
        <translation>Con qué radio se puede plegar la chapa en frío a 90 grados a través del sentido de laminación. Una fila vale por encima de la fila inmediatamente más fina de su documento y hasta su propio espesor. Se omiten las filas de aleaciones y temples que el catálogo no tiene, y se descarta una fila de la tabla en pulgadas porque no puede ser correcta: para chapa blanda de 0,020 in pedía el doble de radio que para 0,025 a 0,032 in.</translation>
    </message>
    <message>
        <source>two copies agree</source>
        <translation>dos copias coinciden</translation>
    </message>
    <message>
        <source>one copy seen</source>
        <translation>vista una sola copia</translation>
    </message>
    <message>
        <source>taken over from H321, which has the same least strength</source>
        <translation>tomado de H321, que tiene la misma resistencia mínima</translation>
    </message>
    <message>
        <source>taken over from H32, which has nearly the same strength</source>
        <translation>tomado de H32, que tiene casi la misma resistencia</translation>
    </message>
    <message>
        <source>taken over from T6; stretching after quenching does not matter to a bend</source>
        <translation>tomado de T6; el estirado tras el temple no importa para un plegado</translation>
    </message>
    <message>
        <source>usable at 1.5 thicknesses where necessary</source>
        <translation>utilizable a 1,5 espesores donde sea necesario</translation>
    </message>
    <message>
        <source>usable at 1 thickness where necessary</source>
        <translation>utilizable a 1 espesor donde sea necesario</translation>
    </message>
    <message>
        <source>printed for 1020 and 1025; zinc may flake at a tight radius</source>
        <translation>impreso para 1020 y 1025; con radio cerrado el cinc puede desprenderse en escamas</translation>
    </message>
    <message>
        <source>normalised</source>
        <translation>normalizado</translation>
    </message>
    <message>
        <source>annealed</source>
        <translation>recocido</translation>
    </message>
    <message>
        <source>printed for annealed 304</source>
        <translation>impreso para 304 recocido</translation>
    </message>
    <message>
        <source>shop practice: 0.5 to 1 thickness</source>
        <translation>práctica de taller: 0,5 a 1 espesor</translation>
    </message>
    <message>
        <source>shop practice, annealed: 0.5 to 1 thickness</source>
        <translation>práctica de taller, recocido: 0,5 a 1 espesor</translation>
    </message>
    <message>
        <source>shop practice for 340 to 420 MPa: 1 to 2 thicknesses</source>
        <translation>práctica de taller para 340 a 420 MPa: 1 a 2 espesores</translation>
    </message>
    <message>
        <source>shop practice, normalised</source>
        <translation>práctica de taller, normalizado</translation>
    </message>
    <message>
        <source>Relief holes where bends meet</source>
        <translation>Agujeros de alivio donde se cruzan plegados</translation>
    </message>
    <message>
        <source>The hole to drill where two bend lines cross, so that the corner neither tears nor buckles: twice the inside radius, and at least this.</source>
        <translation>El agujero que hay que taladrar donde se cruzan dos líneas de plegado, para que la esquina ni se rasgue ni se arrugue: el doble del radio interior, y al menos esto.</translation>
    </message>
    <message>
        <source>Cleaning and preparation</source>
        <translation>Limpieza y preparación</translation>
    </message>
    <message>
        <source>One thing to do to the metal before, between or after welding, in our words. Steps with a case come on top of the plain steps of the family when the part has that coating or is a casting; where the order ties, the case comes first.</source>
        <translation>Una cosa que hay que hacerle al metal antes, entre o después de soldar, con nuestras palabras. Los pasos con un caso se añaden a los pasos simples de la familia cuando la pieza tiene ese recubrimiento o es de fundición; donde el orden empata, va primero el caso.</translation>
    </message>
    <message>
        <source>Take paint off around the repair, 50 mm wide on every side.</source>
        <translation>Quitar la pintura alrededor de la reparación, 50 mm de ancho por cada lado.</translation>
    </message>
    <message>
        <source>Peel off the protective film; there is oxide under it too.</source>
        <translation>Retirar la película protectora; debajo también hay óxido.</translation>
    </message>
    <message>
        <source>Degrease before any brushing or scraping.</source>
        <translation>Desengrasar antes de cualquier cepillado o rascado.</translation>
    </message>
    <message>
        <source>brushing first rubs the oil into the metal and into the brush</source>
        <translation>cepillar primero mete el aceite en el metal y en el cepillo</translation>
    </message>
    <message>
        <source>Brush or scrape the oxide off with stainless tools kept for aluminium.</source>
        <translation>Quitar el óxido cepillando o rascando con herramientas de acero inoxidable reservadas para aluminio.</translation>
    </message>
    <message>
        <source>carbon steel, brass and copper leave traces behind</source>
        <translation>el acero al carbono, el latón y el cobre dejan restos</translation>
    </message>
    <message>
        <source>Wipe the dust off with acetone or alcohol and let it dry fully before the arc.</source>
        <translation>Quitar el polvo con acetona o alcohol y dejar secar del todo antes del arco.</translation>
    </message>
    <message>
        <source>Weld within about 4 hours; left overnight, clean again.</source>
        <translation>Soldar dentro de unas 4 horas; si queda de un día para otro, limpiar de nuevo.</translation>
    </message>
    <message>
        <source>the oxide grows again, faster in damp air</source>
        <translation>el óxido vuelve a crecer, más rápido con aire húmedo</translation>
    </message>
    <message>
        <source>Brush each pass with stainless before the next.</source>
        <translation>Cepillar cada pasada con cepillo de inoxidable antes de la siguiente.</translation>
    </message>
    <message>
        <source>Brush the weld zone only, and stop when it is bright.</source>
        <translation>Cepillar solo la zona de soldadura, y parar cuando brille.</translation>
    </message>
    <message>
        <source>Keep strong alkaline cleaners away.</source>
        <translation>Mantener lejos los limpiadores muy alcalinos.</translation>
    </message>
    <message>
        <source>The oxide melts far above the metal.</source>
        <translation>El óxido funde muy por encima del metal.</translation>
    </message>
    <message>
        <source>The metal itself melts here.</source>
        <translation>El propio metal funde aquí.</translation>
    </message>
    <message>
        <source>Wipe the TIG rod before use.</source>
        <translation>Limpiar la varilla TIG con un paño antes de usarla.</translation>
    </message>
    <message>
        <source>Keep the wire spool covered and throw away the turns that stood exposed.</source>
        <translation>Mantener tapada la bobina de hilo y tirar las vueltas que quedaron expuestas.</translation>
    </message>
    <message>
        <source>Grind or etch the anodising off the joint and off the spot for the clamp.</source>
        <translation>Quitar el anodizado de la unión y del lugar de la pinza de masa, amolando o con ataque químico.</translation>
    </message>
    <message>
        <source>anodising neither conducts nor melts</source>
        <translation>el anodizado ni conduce ni funde</translation>
    </message>
    <message>
        <source>Degrease hot, grind out, and repeat until nothing black weeps out.</source>
        <translation>Desengrasar en caliente, sanear amolando y repetir hasta que no rezume nada negro.</translation>
    </message>
    <message>
        <source>soaked-in oil makes pores</source>
        <translation>el aceite embebido hace poros</translation>
    </message>
    <message>
        <source>Degrease first.</source>
        <translation>Desengrasar primero.</translation>
    </message>
    <message>
        <source>Take rust and loose scale off by brush or grinder.</source>
        <translation>Quitar el óxido y la cascarilla suelta con cepillo o amoladora.</translation>
    </message>
    <message>
        <source>Bright metal for 25 mm on each side of the joint.</source>
        <translation>Metal brillante en 25 mm a cada lado de la unión.</translation>
    </message>
    <message>
        <source>Grind all mill scale to bright metal for 25 mm on each side, both faces.</source>
        <translation>Amolar toda la cascarilla de laminación hasta metal brillante en 25 mm a cada lado, por ambas caras.</translation>
    </message>
    <message>
        <source>Bring fillet parts into close contact; no gap above 4.8 mm without bridging it first.</source>
        <translation>Poner las piezas en ángulo en contacto estrecho; ninguna separación mayor de 4,8 mm sin puentearla antes.</translation>
    </message>
    <message>
        <source>No brass or bronze brush on steel.</source>
        <translation>Nada de cepillo de latón o bronce sobre acero.</translation>
    </message>
    <message>
        <source>traces left behind harm the weld</source>
        <translation>los restos que quedan dañan la soldadura</translation>
    </message>
    <message>
        <source>Grind the zinc off both faces, 25 to 100 mm on each side of the joint.</source>
        <translation>Quitar el cinc amolando por ambas caras, de 25 a 100 mm a cada lado de la unión.</translation>
    </message>
    <message>
        <source>Put zinc paint back on once it is cold.</source>
        <translation>Volver a dar pintura de cinc cuando esté frío.</translation>
    </message>
    <message>
        <source>Degrease with a cleaner free of chlorine; leave no chlorides behind.</source>
        <translation>Desengrasar con un limpiador sin cloro; no dejar cloruros.</translation>
    </message>
    <message>
        <source>Brush with stainless bristles used on nothing else.</source>
        <translation>Cepillar con cerdas de inoxidable que no se usen para nada más.</translation>
    </message>
    <message>
        <source>iron dust, also from grinding nearby, starts rust</source>
        <translation>el polvo de hierro, también el de amolar cerca, provoca óxido</translation>
    </message>
    <message>
        <source>Take the heat tint off with pickling gel, electro-cleaning or a fine abrasive.</source>
        <translation>Quitar el color del calor con gel decapante, limpieza electroquímica o un abrasivo fino.</translation>
    </message>
    <message>
        <source>Degrease.</source>
        <translation>Desengrasar.</translation>
    </message>
    <message>
        <source>Brush bright.</source>
        <translation>Cepillar hasta que brille.</translation>
    </message>
    <message>
        <source>Strip the coating and degrease.</source>
        <translation>Quitar el recubrimiento y desengrasar.</translation>
    </message>
    <message>
        <source>Brush with stainless, or rub with aluminium wool.</source>
        <translation>Cepillar con inoxidable, o frotar con lana de aluminio.</translation>
    </message>
    <message>
        <source>Collect the dust at once; never wet it.</source>
        <translation>Recoger el polvo enseguida; no mojarlo nunca.</translation>
    </message>
    <message>
        <source>Wipe with a solvent free of chlorides, with clean gloves on.</source>
        <translation>Limpiar con un disolvente sin cloruros, con guantes limpios puestos.</translation>
    </message>
    <message>
        <source>Use a new stainless brush or file kept for titanium.</source>
        <translation>Usar un cepillo de inoxidable o una lima nuevos, reservados para titanio.</translation>
    </message>
    <message>
        <source>Weld in the same shift.</source>
        <translation>Soldar en el mismo turno.</translation>
    </message>
    <message>
        <source>Clean to sound metal for at least 13 mm beside the joint.</source>
        <translation>Limpiar hasta metal sano al menos 13 mm junto a la unión.</translation>
    </message>
    <message>
        <source>In an enclosed place strip a toxic coating 100 mm back from the heated line, or breathe supplied air.</source>
        <translation>En un lugar cerrado, quitar el recubrimiento tóxico hasta 100 mm por detrás de la línea calentada, o respirar aire suministrado.</translation>
    </message>
    <message>
        <source>Strip paint so far back that what is left does not get hot.</source>
        <translation>Quitar la pintura hasta una distancia tal que la que quede no se caliente.</translation>
    </message>
    <message>
        <source>No chlorinated cleaner within 61 m of the arc unless it is shielded; surfaces bone dry.</source>
        <translation>Ningún limpiador clorado a menos de 61 m del arco, salvo que este esté apantallado; superficies totalmente secas.</translation>
    </message>
    <message>
        <source>Let a flammable cleaner dry, and take can and rags at least 11 m away.</source>
        <translation>Dejar secar un limpiador inflamable, y llevar bote y trapos al menos a 11 m.</translation>
    </message>
    <message>
        <source>Degrease the brushes too.</source>
        <translation>Desengrasar también los cepillos.</translation>
    </message>
    <message>
        <source>Grind crater cracks out before rewelding, and only the crack.</source>
        <translation>Eliminar amolando las grietas de cráter antes de volver a soldar, y solo la grieta.</translation>
    </message>
    <message>
        <source>each repair leaves fewer that can follow</source>
        <translation>cada reparación deja menos que puedan seguir</translation>
    </message>
    <message>
        <source>Take the whole crack out, prove it gone with dye or magnetic powder, then weld.</source>
        <translation>Eliminar la grieta entera, demostrar con líquidos penetrantes o partículas magnéticas que ya no está, y después soldar.</translation>
    </message>
    <message>
        <source>what is left of it grows under repeated load</source>
        <translation>lo que quede de ella crece con la carga repetida</translation>
    </message>
    <message>
        <source>What a weld uses up</source>
        <translation>Qué consume una soldadura</translation>
    </message>
    <message>
        <source>Shares for the shopping list: how much of the filler bought ends in the weld, how much of the time at the bench the arc burns, and how far a disc or a tungsten goes.</source>
        <translation>Proporciones para la lista de compra: qué parte del aporte comprado acaba en la soldadura, qué parte del tiempo en el taller está encendido el arco, y cuánto dura un disco o un tungsteno.</translation>
    </message>
    <message>
        <source>Gas cups</source>
        <translation>Toberas de gas</translation>
    </message>
    <message>
        <source>One cup number and the bore it stands for: the number counts sixteenths of an inch.</source>
        <translation>Un número de tobera y el diámetro interior que representa: el número cuenta dieciseisavos de pulgada.</translation>
    </message>
    <message>
        <source>Limits for what is breathed and seen</source>
        <translation>Límites de lo que se respira y se ve</translation>
    </message>
    <message>
        <source>One limit of one authority for one substance, or a statement where the authority gives no figure. Limits change and differ between countries: the local one rules.</source>
        <translation>Un límite de una autoridad para una sustancia, o una declaración donde la autoridad no da cifra. Los límites cambian y difieren entre países: rige el local.</translation>
    </message>
    <message>
        <source>welding fume, total</source>
        <translation>humo de soldadura, total</translation>
    </message>
    <message>
        <source>no limit for the fume as a whole</source>
        <translation>sin límite para el humo en conjunto</translation>
    </message>
    <message>
        <source>in force</source>
        <translation>en vigor</translation>
    </message>
    <message>
        <source>total dust</source>
        <translation>polvo total</translation>
    </message>
    <message>
        <source>respirable</source>
        <translation>respirable</translation>
    </message>
    <message>
        <source>potential carcinogen</source>
        <translation>carcinógeno potencial</translation>
    </message>
    <message>
        <source>as low as can be reached</source>
        <translation>tan bajo como se pueda alcanzar</translation>
    </message>
    <message>
        <source>total particulate</source>
        <translation>partículas totales</translation>
    </message>
    <message>
        <source>withdrawn (about 2004)</source>
        <translation>retirado (hacia 2004)</translation>
    </message>
    <message>
        <source>all welding fume</source>
        <translation>todo humo de soldadura</translation>
    </message>
    <message>
        <source>no safe level is assumed</source>
        <translation>no se supone ningún nivel seguro</translation>
    </message>
    <message>
        <source>fume and arc UV</source>
        <translation>humo y UV del arco</translation>
    </message>
    <message>
        <source>causes cancer in people (group 1)</source>
        <translation>causa cáncer en personas (grupo 1)</translation>
    </message>
    <message>
        <source>2018 (vol. 118)</source>
        <translation>2018 (vol. 118)</translation>
    </message>
    <message>
        <source>manganese fume (as Mn)</source>
        <translation>humo de manganeso (como Mn)</translation>
    </message>
    <message>
        <source>fume</source>
        <translation>humo</translation>
    </message>
    <message>
        <source>inhalable</source>
        <translation>inhalable</translation>
    </message>
    <message>
        <source>2018 on</source>
        <translation>desde 2018</translation>
    </message>
    <message>
        <source>chromium VI</source>
        <translation>cromo VI</translation>
    </message>
    <message>
        <source>as Cr(VI)</source>
        <translation>como Cr(VI)</translation>
    </message>
    <message>
        <source>nickel, metal and insoluble</source>
        <translation>níquel, metal e insoluble</translation>
    </message>
    <message>
        <source>as Ni</source>
        <translation>como Ni</translation>
    </message>
    <message>
        <source>nickel</source>
        <translation>níquel</translation>
    </message>
    <message>
        <source>as Ni, carcinogen</source>
        <translation>como Ni, carcinógeno</translation>
    </message>
    <message>
        <source>nickel, elemental</source>
        <translation>níquel elemental</translation>
    </message>
    <message>
        <source>nickel, insoluble compounds</source>
        <translation>níquel, compuestos insolubles</translation>
    </message>
    <message>
        <source>zinc oxide fume</source>
        <translation>humo de óxido de cinc</translation>
    </message>
    <message>
        <source>delay before metal fume fever, after 320 to 580 mg/m3</source>
        <translation>demora hasta la fiebre de los metales, tras 320 a 580 mg/m3</translation>
    </message>
    <message>
        <source>historic study</source>
        <translation>estudio histórico</translation>
    </message>
    <message>
        <source>total</source>
        <translation>total</translation>
    </message>
    <message>
        <source>welding fume as Al</source>
        <translation>humo de soldadura como Al</translation>
    </message>
    <message>
        <source>iron oxide fume</source>
        <translation>humo de óxido de hierro</translation>
    </message>
    <message>
        <source>as Fe</source>
        <translation>como Fe</translation>
    </message>
    <message>
        <source>iron oxide</source>
        <translation>óxido de hierro</translation>
    </message>
    <message>
        <source>copper fume</source>
        <translation>humo de cobre</translation>
    </message>
    <message>
        <source>as Cu</source>
        <translation>como Cu</translation>
    </message>
    <message>
        <source>since 1975</source>
        <translation>desde 1975</translation>
    </message>
    <message>
        <source>fluorides (as F)</source>
        <translation>fluoruros (como F)</translation>
    </message>
    <message>
        <source>as F</source>
        <translation>como F</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>plomo</translation>
    </message>
    <message>
        <source>as Pb</source>
        <translation>como Pb</translation>
    </message>
    <message>
        <source>as Cd</source>
        <translation>como Cd</translation>
    </message>
    <message>
        <source>carcinogen</source>
        <translation>carcinógeno</translation>
    </message>
    <message>
        <source>beryllium</source>
        <translation>berilio</translation>
    </message>
    <message>
        <source>as Be</source>
        <translation>como Be</translation>
    </message>
    <message>
        <source>ozone</source>
        <translation>ozono</translation>
    </message>
    <message>
        <source>gas (0.2 mg/m3)</source>
        <translation>gas (0,2 mg/m3)</translation>
    </message>
    <message>
        <source>gas, heavy work</source>
        <translation>gas, trabajo pesado</translation>
    </message>
    <message>
        <source>gas, moderate work</source>
        <translation>gas, trabajo moderado</translation>
    </message>
    <message>
        <source>gas, light work</source>
        <translation>gas, trabajo ligero</translation>
    </message>
    <message>
        <source>gas, any work</source>
        <translation>gas, cualquier trabajo</translation>
    </message>
    <message>
        <source>nitrogen dioxide</source>
        <translation>dióxido de nitrógeno</translation>
    </message>
    <message>
        <source>gas (9 mg/m3)</source>
        <translation>gas (9 mg/m3)</translation>
    </message>
    <message>
        <source>gas (1.8 mg/m3)</source>
        <translation>gas (1,8 mg/m3)</translation>
    </message>
    <message>
        <source>as archived 2008</source>
        <translation>según archivo de 2008</translation>
    </message>
    <message>
        <source>carbon monoxide</source>
        <translation>monóxido de carbono</translation>
    </message>
    <message>
        <source>carbon dioxide</source>
        <translation>dióxido de carbono</translation>
    </message>
    <message>
        <source>phosgene</source>
        <translation>fosgeno</translation>
    </message>
    <message>
        <source>gas (0.4 mg/m3)</source>
        <translation>gas (0,4 mg/m3)</translation>
    </message>
    <message>
        <source>as of 1994</source>
        <translation>según edición de 1994</translation>
    </message>
    <message>
        <source>first smelt; once used to it, known only near 1.5 ppm</source>
        <translation>primer olor; ya habituado, se nota solo cerca de 1,5 ppm</translation>
    </message>
    <message>
        <source>thorium (thoriated tungsten)</source>
        <translation>torio (tungsteno toriado)</translation>
    </message>
    <message>
        <source>any quantity in welding rods</source>
        <translation>cualquier cantidad en electrodos para soldadura</translation>
    </message>
    <message>
        <source>no licence is needed</source>
        <translation>no hace falta licencia</translation>
    </message>
    <message>
        <source>no limit of its own</source>
        <translation>sin límite propio</translation>
    </message>
    <message>
        <source>control by oxygen</source>
        <translation>control por el oxígeno</translation>
    </message>
    <message>
        <source>no figure; judged by the oxygen left</source>
        <translation>sin cifra; se juzga por el oxígeno que queda</translation>
    </message>
    <message>
        <source>oxygen in air</source>
        <translation>oxígeno en el aire</translation>
    </message>
    <message>
        <source>too little below this</source>
        <translation>por debajo de esto, demasiado poco</translation>
    </message>
    <message>
        <source>helium, nitrogen (purge gas)</source>
        <translation>helio, nitrógeno (gas de purga)</translation>
    </message>
    <message>
        <source>isocyanates (heated polyurethane)</source>
        <translation>isocianatos (poliuretano calentado)</translation>
    </message>
    <message>
        <source>as NCO</source>
        <translation>como NCO</translation>
    </message>
    <message>
        <source>acetone vapour</source>
        <translation>vapor de acetona</translation>
    </message>
    <message>
        <source>vapour</source>
        <translation>vapor</translation>
    </message>
    <message>
        <source>magnesium oxide fume</source>
        <translation>humo de óxido de magnesio</translation>
    </message>
    <message>
        <source>arc UV, GTAW of aluminium</source>
        <translation>UV del arco, TIG de aluminio</translation>
    </message>
    <message>
        <source>longest bare exposure a day, 0.5 m from the arc</source>
        <translation>exposición máxima al día sin protección, a 0,5 m del arco</translation>
    </message>
    <message>
        <source>Faults and remedies</source>
        <translation>Defectos y remedios</translation>
    </message>
    <message>
        <source>One change that answers one cause of one fault; a cause with several changes has several rows. The grade is that of the remedy: what a fault looks like and where it comes from is shop knowledge unless the document says it. A fault without numbers is no weld imperfection in ISO 6520-1.</source>
        <translation>Un cambio que responde a una causa de un defecto; una causa con varios cambios tiene varias filas. El grado es el del remedio: qué aspecto tiene un defecto y de dónde viene es saber de taller, salvo que el documento lo diga. Un defecto sin números no es una imperfección de soldadura de ISO 6520-1.</translation>
    </message>
    <message>
        <source>pinholes, worm holes or foamy bead</source>
        <translation>poros finos, poros vermiculares o cordón espumoso</translation>
    </message>
    <message>
        <source>Oil, paint, rust, moisture or oxide left on the joint</source>
        <translation>Aceite, pintura, óxido o humedad dejados en la unión</translation>
    </message>
    <message>
        <source>Clean wider, dry, and start again on bare metal.</source>
        <translation>Limpiar más ancho, secar y volver a empezar sobre metal desnudo.</translation>
    </message>
    <message>
        <source>Wind or fan across the joint</source>
        <translation>Viento o ventilador a través de la unión</translation>
    </message>
    <message>
        <source>Screen the joint; more than 2.2 m/s of moving air is too much.</source>
        <translation>Proteger la unión con una pantalla; más de 2,2 m/s de aire en movimiento es demasiado.</translation>
    </message>
    <message>
        <source>Gas off, leak, wet hose or empty bottle</source>
        <translation>Gas cerrado, fuga, manguera húmeda o botella vacía</translation>
    </message>
    <message>
        <source>Purge the line, soap-test the joints and check the flow at the cup.</source>
        <translation>Purgar la línea, probar las conexiones con agua jabonosa y comprobar el caudal en la tobera.</translation>
    </message>
    <message>
        <source>Flow too high for the cup so the shield turns rough</source>
        <translation>Caudal demasiado alto para la tobera: el gas se vuelve turbulento</translation>
    </message>
    <message>
        <source>Lower the flow.</source>
        <translation>Bajar el caudal.</translation>
    </message>
    <message>
        <source>Or fit a larger cup.</source>
        <translation>O montar una tobera mayor.</translation>
    </message>
    <message>
        <source>Or fit a gas lens.</source>
        <translation>O montar un difusor.</translation>
    </message>
    <message>
        <source>Arc too long or cup held too far away</source>
        <translation>Arco demasiado largo o tobera demasiado lejos</translation>
    </message>
    <message>
        <source>Hold the tungsten about 1.5 to 3 mm off the work.</source>
        <translation>Mantener el tungsteno a unos 1,5 a 3 mm de la pieza.</translation>
    </message>
    <message>
        <source>Post-flow too short, pores only at the stop</source>
        <translation>Posgás demasiado corto, poros solo en el final</translation>
    </message>
    <message>
        <source>Lengthen the post-flow and hold the torch still through it.</source>
        <translation>Alargar el posgás y mantener quieta la antorcha mientras dura.</translation>
    </message>
    <message>
        <source>Nozzle clogged with spatter or held too far off</source>
        <translation>Tobera obstruida por proyecciones o demasiado alejada</translation>
    </message>
    <message>
        <source>Hold the gun closer.</source>
        <translation>Acercar la pistola.</translation>
    </message>
    <message>
        <source>Clean the nozzle.</source>
        <translation>Limpiar la tobera.</translation>
    </message>
    <message>
        <source>Nozzle gap wrong</source>
        <translation>Distancia de tobera incorrecta</translation>
    </message>
    <message>
        <source>Keep 13 to 16 mm from nozzle to work.</source>
        <translation>Mantener de 13 a 16 mm de la tobera a la pieza.</translation>
    </message>
    <message>
        <source>Dirty, oily or damp wire</source>
        <translation>Hilo sucio, aceitoso o húmedo</translation>
    </message>
    <message>
        <source>Fit fresh wire that was kept covered; cut off what stood exposed.</source>
        <translation>Poner hilo nuevo que haya estado tapado; cortar lo que quedó expuesto.</translation>
    </message>
    <message>
        <source>Voltage too high, arc long</source>
        <translation>Tensión demasiado alta, arco largo</translation>
    </message>
    <message>
        <source>Drop the voltage a little.</source>
        <translation>Bajar un poco la tensión.</translation>
    </message>
    <message>
        <source>Wire polarity or gas wrong for the wire (gasless on gas setting and the reverse)</source>
        <translation>Polaridad o gas que no van con el hilo (hilo sin gas con ajuste de gas, y al revés)</translation>
    </message>
    <message>
        <source>Match the polarity to the wire.</source>
        <translation>Ajustar la polaridad al hilo.</translation>
    </message>
    <message>
        <source>Match the gas to the wire.</source>
        <translation>Ajustar el gas al hilo.</translation>
    </message>
    <message>
        <source>groove melted along the bead edge</source>
        <translation>surco fundido a lo largo del borde del cordón</translation>
    </message>
    <message>
        <source>Current too high</source>
        <translation>Corriente demasiado alta</translation>
    </message>
    <message>
        <source>Lower the current.</source>
        <translation>Bajar la corriente.</translation>
    </message>
    <message>
        <source>Travel too fast to fill the edge</source>
        <translation>Avance demasiado rápido para llenar el borde</translation>
    </message>
    <message>
        <source>Slow down and pause at the edges.</source>
        <translation>Ir más despacio y detenerse en los bordes.</translation>
    </message>
    <message>
        <source>Too little filler, long arc</source>
        <translation>Poco aporte, arco largo</translation>
    </message>
    <message>
        <source>Shorten the arc and dab more filler.</source>
        <translation>Acortar el arco y dar más toques de aporte.</translation>
    </message>
    <message>
        <source>Voltage too high or gun tilted at one plate</source>
        <translation>Tensión demasiado alta o pistola inclinada hacia una de las placas</translation>
    </message>
    <message>
        <source>Drop the voltage.</source>
        <translation>Bajar la tensión.</translation>
    </message>
    <message>
        <source>Aim into the root, square to both plates.</source>
        <translation>Apuntar a la raíz, centrado entre ambas placas.</translation>
    </message>
    <message>
        <source>hole or drooping pool</source>
        <translation>agujero o baño que se descuelga</translation>
    </message>
    <message>
        <source>Too much heat for the thickness</source>
        <translation>Demasiado calor para el espesor</translation>
    </message>
    <message>
        <source>Lower the current; with MIG the wire feed.</source>
        <translation>Bajar la corriente; con MIG/MAG, la velocidad de hilo.</translation>
    </message>
    <message>
        <source>Travel faster.</source>
        <translation>Avanzar más rápido.</translation>
    </message>
    <message>
        <source>Gap too wide or edges thin</source>
        <translation>Separación demasiado ancha o bordes finos</translation>
    </message>
    <message>
        <source>Put a backing bar behind it.</source>
        <translation>Poner detrás una pletina de respaldo.</translation>
    </message>
    <message>
        <source>Close the gap; stitch and let it cool.</source>
        <translation>Cerrar la separación; soldar a tramos cortos y dejar enfriar.</translation>
    </message>
    <message>
        <source>Heat builds along the run</source>
        <translation>El calor se acumula a lo largo del cordón</translation>
    </message>
    <message>
        <source>Ease the pedal back as the part warms.</source>
        <translation>Aflojar el pedal conforme la pieza se calienta.</translation>
    </message>
    <message>
        <source>Or pulse.</source>
        <translation>O usar pulsado.</translation>
    </message>
    <message>
        <source>unequal thickness</source>
        <translation>espesores desiguales</translation>
    </message>
    <message>
        <source>Arc on the thin side</source>
        <translation>Arco sobre el lado fino</translation>
    </message>
    <message>
        <source>Aim at the thicker piece.</source>
        <translation>Apuntar a la pieza más gruesa.</translation>
    </message>
    <message>
        <source>bead sits on top, rounded edge, rolls over the plate</source>
        <translation>el cordón queda encima, con borde redondeado, y rebosa sobre la placa</translation>
    </message>
    <message>
        <source>Current too low for the thickness</source>
        <translation>Corriente demasiado baja para el espesor</translation>
    </message>
    <message>
        <source>Raise the current.</source>
        <translation>Subir la corriente.</translation>
    </message>
    <message>
        <source>Or preheat thick aluminium.</source>
        <translation>O precalentar el aluminio grueso.</translation>
    </message>
    <message>
        <source>Filler added before a pool forms</source>
        <translation>Aporte añadido antes de que se forme el baño</translation>
    </message>
    <message>
        <source>Wait for a wet pool, then add.</source>
        <translation>Esperar a que el baño moje y entonces aportar.</translation>
    </message>
    <message>
        <source>Oxide skin left on</source>
        <translation>Película de óxido sin quitar</translation>
    </message>
    <message>
        <source>Give a little more cleaning.</source>
        <translation>Dar un poco más de limpieza.</translation>
    </message>
    <message>
        <source>Degrease and brush again first.</source>
        <translation>Antes, desengrasar y cepillar de nuevo.</translation>
    </message>
    <message>
        <source>Short-arc on thick plate</source>
        <translation>Cortocircuito sobre placa gruesa</translation>
    </message>
    <message>
        <source>Raise the voltage.</source>
        <translation>Subir la tensión.</translation>
    </message>
    <message>
        <source>Raise the wire feed with it.</source>
        <translation>Subir con ella la velocidad de hilo.</translation>
    </message>
    <message>
        <source>Or bevel, or use a larger machine.</source>
        <translation>O biselar, o usar una máquina mayor.</translation>
    </message>
    <message>
        <source>Travel too slow, pool runs ahead of the arc</source>
        <translation>Avance demasiado lento, el baño se adelanta al arco</translation>
    </message>
    <message>
        <source>Speed up and keep the arc on the front of the pool.</source>
        <translation>Ir más rápido y mantener el arco en el frente del baño.</translation>
    </message>
    <message>
        <source>Stick-out too long so current falls</source>
        <translation>Saliente demasiado largo, por lo que cae la corriente</translation>
    </message>
    <message>
        <source>Shorten the stick-out.</source>
        <translation>Acortar el saliente.</translation>
    </message>
    <message>
        <source>Cold start</source>
        <translation>Arranque en frío</translation>
    </message>
    <message>
        <source>Preheat, or start hotter.</source>
        <translation>Precalentar, o arrancar más caliente.</translation>
    </message>
    <message>
        <source>Start on a run-on tab.</source>
        <translation>Empezar en una chapa de arranque.</translation>
    </message>
    <message>
        <source>root line still visible underneath</source>
        <translation>la línea de la raíz se sigue viendo por debajo</translation>
    </message>
    <message>
        <source>Joint too tight, no bevel, current low</source>
        <translation>Unión demasiado cerrada, sin bisel, corriente baja</translation>
    </message>
    <message>
        <source>Open a gap or bevel the edges.</source>
        <translation>Abrir una separación o biselar los bordes.</translation>
    </message>
    <message>
        <source>Not looked at</source>
        <translation>No se miró</translation>
    </message>
    <message>
        <source>Look at the back of the joint every time.</source>
        <translation>Mirar el reverso de la unión todas las veces.</translation>
    </message>
    <message>
        <source>heavy drip under the joint</source>
        <translation>goterón grueso bajo la unión</translation>
    </message>
    <message>
        <source>Too hot or too slow</source>
        <translation>Demasiado caliente o demasiado lento</translation>
    </message>
    <message>
        <source>dark dust on or beside the bead; wipes off</source>
        <translation>polvo oscuro sobre el cordón o junto a él; se quita con un trapo</translation>
    </message>
    <message>
        <source>Gun dragged</source>
        <translation>Pistola arrastrada</translation>
    </message>
    <message>
        <source>Push the gun with 10 to 15 degrees of lead.</source>
        <translation>Empujar la pistola con 10 a 15 grados de inclinación.</translation>
    </message>
    <message>
        <source>Voltage too high / long arc</source>
        <translation>Tensión demasiado alta / arco largo</translation>
    </message>
    <message>
        <source>Lower the voltage and with it the arc length.</source>
        <translation>Bajar la tensión y con ella la longitud de arco.</translation>
    </message>
    <message>
        <source>5xxx wire</source>
        <translation>hilo 5xxx</translation>
    </message>
    <message>
        <source>Magnesium vapour, light soot is normal</source>
        <translation>Vapor de magnesio; un hollín ligero es normal</translation>
    </message>
    <message>
        <source>Wipe it off; act only if it is heavy.</source>
        <translation>Limpiarlo con un trapo; actuar solo si es abundante.</translation>
    </message>
    <message>
        <source>Poor gas cover</source>
        <translation>Mala protección de gas</translation>
    </message>
    <message>
        <source>Check flow and nozzle.</source>
        <translation>Comprobar caudal y tobera.</translation>
    </message>
    <message>
        <source>Air in the gas, dirty metal or dirty tungsten</source>
        <translation>Aire en el gas, metal sucio o tungsteno sucio</translation>
    </message>
    <message>
        <source>Find the leak.</source>
        <translation>Encontrar la fuga.</translation>
    </message>
    <message>
        <source>Regrind the tungsten.</source>
        <translation>Reafilar el tungsteno.</translation>
    </message>
    <message>
        <source>Clean the metal again.</source>
        <translation>Limpiar de nuevo el metal.</translation>
    </message>
    <message>
        <source>bright speck or hard spot; tip has a bite out of it</source>
        <translation>mota brillante o punto duro; a la punta le falta un trozo</translation>
    </message>
    <message>
        <source>Tungsten touched pool or rod</source>
        <translation>El tungsteno tocó el baño o la varilla</translation>
    </message>
    <message>
        <source>Cut back and regrind the tip.</source>
        <translation>Cortar la punta y reafilar.</translation>
    </message>
    <message>
        <source>Grind the speck out; hold the tungsten 1.5 to 3 mm off.</source>
        <translation>Sacar la mota con la amoladora; mantener el tungsteno a 1,5 a 3 mm.</translation>
    </message>
    <message>
        <source>Current too high for the diameter</source>
        <translation>Corriente demasiado alta para el diámetro</translation>
    </message>
    <message>
        <source>Use a thicker tungsten.</source>
        <translation>Usar un tungsteno más grueso.</translation>
    </message>
    <message>
        <source>Or less current.</source>
        <translation>O menos corriente.</translation>
    </message>
    <message>
        <source>Too much electrode-positive time, tip melts and spits</source>
        <translation>Demasiado tiempo de electrodo positivo, la punta funde y salpica</translation>
    </message>
    <message>
        <source>Raise the electrode-negative share.</source>
        <translation>Subir la parte de electrodo negativo.</translation>
    </message>
    <message>
        <source>Oxygen or CO2 in the gas</source>
        <translation>Oxígeno o CO2 en el gas</translation>
    </message>
    <message>
        <source>Argon or argon-helium only.</source>
        <translation>Solo argón o argón-helio.</translation>
    </message>
    <message>
        <source>Torch on electrode-positive</source>
        <translation>Antorcha al positivo</translation>
    </message>
    <message>
        <source>Switch to electrode negative.</source>
        <translation>Pasar a electrodo negativo.</translation>
    </message>
    <message>
        <source>worst on aluminium</source>
        <translation>peor en aluminio</translation>
    </message>
    <message>
        <source>star crack in the end dimple</source>
        <translation>grieta en estrella en el hoyuelo del final</translation>
    </message>
    <message>
        <source>Stopped suddenly with a hollow end</source>
        <translation>Parada brusca con el final hueco</translation>
    </message>
    <message>
        <source>Ease the current down and add filler, or back up over the bead.</source>
        <translation>Bajar la corriente poco a poco y aportar, o retroceder sobre el cordón.</translation>
    </message>
    <message>
        <source>No crater fill</source>
        <translation>Sin llenado de cráter</translation>
    </message>
    <message>
        <source>Use crater fill or a run-off tab; dress the star out before rewelding.</source>
        <translation>Usar llenado de cráter o chapa de salida; eliminar la estrella amolando antes de volver a soldar.</translation>
    </message>
    <message>
        <source>Gas cut before it froze</source>
        <translation>Gas cortado antes de solidificar</translation>
    </message>
    <message>
        <source>Hold the torch over the end through the post-flow.</source>
        <translation>Mantener la antorcha sobre el final durante el posgás.</translation>
    </message>
    <message>
        <source>6xxx</source>
        <translation>6xxx</translation>
    </message>
    <message>
        <source>straight crack down the middle, often at once</source>
        <translation>grieta recta por el centro, a menudo al instante</translation>
    </message>
    <message>
        <source>Welded with no or wrong filler</source>
        <translation>Soldado sin aporte o con el equivocado</translation>
    </message>
    <message>
        <source>Use a silicon or magnesium filler and leave the bead proud.</source>
        <translation>Usar un aporte con silicio o magnesio y dejar el cordón abombado.</translation>
    </message>
    <message>
        <source>Too slow, too hot; shrinkage tears it</source>
        <translation>Demasiado lento, demasiado caliente; la contracción lo rasga</translation>
    </message>
    <message>
        <source>Weld quicker, with less restraint.</source>
        <translation>Soldar más rápido, con menos embridado.</translation>
    </message>
    <message>
        <source>Restraint, high carbon, concave bead</source>
        <translation>Embridado, mucho carbono, cordón cóncavo</translation>
    </message>
    <message>
        <source>Preheat.</source>
        <translation>Precalentar.</translation>
    </message>
    <message>
        <source>Lay a bigger bead and leave one side free.</source>
        <translation>Depositar un cordón mayor y dejar un lado libre.</translation>
    </message>
    <message>
        <source>arc jumps side to side or will not settle</source>
        <translation>el arco salta de un lado a otro o no se estabiliza</translation>
    </message>
    <message>
        <source>Tip blunt, dirty, or ground crosswise</source>
        <translation>Punta roma, sucia o afilada de través</translation>
    </message>
    <message>
        <source>Regrind lengthwise to a point.</source>
        <translation>Reafilar a lo largo, en punta.</translation>
    </message>
    <message>
        <source>Tungsten too thick for a low current</source>
        <translation>Tungsteno demasiado grueso para una corriente baja</translation>
    </message>
    <message>
        <source>Use a thinner tungsten.</source>
        <translation>Usar un tungsteno más fino.</translation>
    </message>
    <message>
        <source>Or a finer taper.</source>
        <translation>O un cono más agudo.</translation>
    </message>
    <message>
        <source>Arc blow from magnetism</source>
        <translation>Soplo magnético del arco</translation>
    </message>
    <message>
        <source>Move the clamp, shorten the arc, weld towards the heavy tack; with TIG try alternating current.</source>
        <translation>Mover la pinza, acortar el arco, soldar hacia el punto grueso; con TIG, probar corriente alterna.</translation>
    </message>
    <message>
        <source>Poor work clamp contact</source>
        <translation>Mal contacto de la pinza de masa</translation>
    </message>
    <message>
        <source>Clean the metal under the clamp.</source>
        <translation>Limpiar el metal bajo la pinza.</translation>
    </message>
    <message>
        <source>Worn contact tip or kinked liner</source>
        <translation>Tubo de contacto gastado o sirga doblada</translation>
    </message>
    <message>
        <source>Replace the contact tip; straighten the gun lead.</source>
        <translation>Cambiar el tubo de contacto; enderezar la manguera de la pistola.</translation>
    </message>
    <message>
        <source>No AC high-frequency or tip balled too large</source>
        <translation>Sin alta frecuencia en CA o bola de la punta demasiado grande</translation>
    </message>
    <message>
        <source>Use a smaller ball, or a point with a higher frequency.</source>
        <translation>Usar una bola menor, o una punta con frecuencia más alta.</translation>
    </message>
    <message>
        <source>Check that high-frequency starting works.</source>
        <translation>Comprobar que funciona el cebado por alta frecuencia.</translation>
    </message>
    <message>
        <source>black or grey specks, wrinkled dull pool</source>
        <translation>motas negras o grises, baño arrugado y mate</translation>
    </message>
    <message>
        <source>Cleaning share too small</source>
        <translation>Parte de limpieza demasiado pequeña</translation>
    </message>
    <message>
        <source>Lower the electrode-negative share a few points.</source>
        <translation>Bajar unos puntos la parte de electrodo negativo.</translation>
    </message>
    <message>
        <source>Rod end pulled out of the gas between dabs</source>
        <translation>Extremo de la varilla fuera del gas entre toques</translation>
    </message>
    <message>
        <source>Keep the hot end of the rod under the cup.</source>
        <translation>Mantener el extremo caliente de la varilla bajo la tobera.</translation>
    </message>
    <message>
        <source>Old oxide, dirty brush</source>
        <translation>Óxido viejo, cepillo sucio</translation>
    </message>
    <message>
        <source>Degrease again and brush with a clean stainless brush.</source>
        <translation>Desengrasar de nuevo y cepillar con un cepillo inoxidable limpio.</translation>
    </message>
    <message>
        <source>Nozzle gap wrong: oxide in bead, no cleaning ahead</source>
        <translation>Distancia de tobera incorrecta: óxido en el cordón, sin limpieza por delante</translation>
    </message>
    <message>
        <source>No brushing between passes</source>
        <translation>Sin cepillar entre pasadas</translation>
    </message>
    <message>
        <source>Brush every pass with stainless.</source>
        <translation>Cepillar cada pasada con cepillo inoxidable.</translation>
    </message>
    <message>
        <source>broad frosty white band each side</source>
        <translation>banda ancha, blanca y mate a cada lado</translation>
    </message>
    <message>
        <source>Too much electrode-positive time</source>
        <translation>Demasiado tiempo de electrodo positivo</translation>
    </message>
    <message>
        <source>Arc too long</source>
        <translation>Arco demasiado largo</translation>
    </message>
    <message>
        <source>Shorten the arc.</source>
        <translation>Acortar el arco.</translation>
    </message>
    <message>
        <source>Low AC frequency</source>
        <translation>Frecuencia CA baja</translation>
    </message>
    <message>
        <source>Raise the frequency to narrow the arc.</source>
        <translation>Subir la frecuencia para estrechar el arco.</translation>
    </message>
    <message>
        <source>beads of metal stuck around the weld</source>
        <translation>gotas de metal pegadas alrededor de la soldadura</translation>
    </message>
    <message>
        <source>Voltage too low for the wire speed (stubbing)</source>
        <translation>Tensión demasiado baja para la velocidad de hilo (el hilo choca)</translation>
    </message>
    <message>
        <source>Or lower the wire feed.</source>
        <translation>O bajar la velocidad de hilo.</translation>
    </message>
    <message>
        <source>Voltage too high (large popping drops)</source>
        <translation>Tensión demasiado alta (gotas grandes que estallan)</translation>
    </message>
    <message>
        <source>Lower the voltage.</source>
        <translation>Bajar la tensión.</translation>
    </message>
    <message>
        <source>Pure CO2 gas</source>
        <translation>Gas CO2 puro</translation>
    </message>
    <message>
        <source>Change to an argon mix.</source>
        <translation>Cambiar a una mezcla de argón.</translation>
    </message>
    <message>
        <source>Or add inductance.</source>
        <translation>O añadir inductancia.</translation>
    </message>
    <message>
        <source>Wrong polarity</source>
        <translation>Polaridad equivocada</translation>
    </message>
    <message>
        <source>Solid wire wants electrode positive.</source>
        <translation>El hilo macizo pide electrodo positivo.</translation>
    </message>
    <message>
        <source>Rust, paint, zinc</source>
        <translation>Óxido, pintura, cinc</translation>
    </message>
    <message>
        <source>Clean to metal.</source>
        <translation>Limpiar hasta el metal.</translation>
    </message>
    <message>
        <source>Stick-out too long or gun too flat</source>
        <translation>Saliente demasiado largo o pistola demasiado tumbada</translation>
    </message>
    <message>
        <source>Stand the gun up.</source>
        <translation>Poner la pistola más vertical.</translation>
    </message>
    <message>
        <source>tall narrow bead, sharp edge</source>
        <translation>cordón alto y estrecho, borde abrupto</translation>
    </message>
    <message>
        <source>Voltage too low or travel too slow for the wire</source>
        <translation>Tensión demasiado baja o avance demasiado lento para el hilo</translation>
    </message>
    <message>
        <source>Travel a touch faster.</source>
        <translation>Avanzar una pizca más rápido.</translation>
    </message>
    <message>
        <source>Too much filler or too little current</source>
        <translation>Demasiado aporte o muy poca corriente</translation>
    </message>
    <message>
        <source>Add less filler.</source>
        <translation>Añadir menos aporte.</translation>
    </message>
    <message>
        <source>panel pulled, buckled or twisted</source>
        <translation>panel tirado, abombado o torcido</translation>
    </message>
    <message>
        <source>Shrinkage unopposed</source>
        <translation>Contracción sin oposición</translation>
    </message>
    <message>
        <source>Tack more closely and clamp, or preset the other way.</source>
        <translation>Puntear más junto y sujetar, o predeformar al contrario.</translation>
    </message>
    <message>
        <source>Too much heat in one place</source>
        <translation>Demasiado calor en un solo sitio</translation>
    </message>
    <message>
        <source>Weld fast.</source>
        <translation>Soldar rápido.</translation>
    </message>
    <message>
        <source>With the least heat that fuses.</source>
        <translation>Con el menor calor que funda.</translation>
    </message>
    <message>
        <source>Skip or step back; draw heat off with bars.</source>
        <translation>Soldar a saltos o a paso de peregrino; sacar calor con pletinas.</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>placa</translation>
    </message>
    <message>
        <source>Too many passes or one-sided</source>
        <translation>Demasiadas pasadas o por un solo lado</translation>
    </message>
    <message>
        <source>As few passes as will do; balance the sides.</source>
        <translation>Las mínimas pasadas que basten; equilibrar los lados.</translation>
    </message>
    <message>
        <source>bead below the plate or hollow fillet</source>
        <translation>cordón por debajo de la placa o cordón en ángulo hueco</translation>
    </message>
    <message>
        <source>Travel too fast or too little filler</source>
        <translation>Avance demasiado rápido o poco aporte</translation>
    </message>
    <message>
        <source>Slow down.</source>
        <translation>Ir más despacio.</translation>
    </message>
    <message>
        <source>Add filler.</source>
        <translation>Añadir aporte.</translation>
    </message>
    <message>
        <source>blue-grey-black bead, crusty back side</source>
        <translation>cordón azul-gris-negro, reverso costroso</translation>
    </message>
    <message>
        <source>Gas cover poor or heat too high</source>
        <translation>Mala protección de gas o demasiado calor</translation>
    </message>
    <message>
        <source>Use a bigger cup.</source>
        <translation>Usar una tobera mayor.</translation>
    </message>
    <message>
        <source>Less heat.</source>
        <translation>Menos calor.</translation>
    </message>
    <message>
        <source>Longer post-flow.</source>
        <translation>Posgás más largo.</translation>
    </message>
    <message>
        <source>No back purge</source>
        <translation>Sin purga del reverso</translation>
    </message>
    <message>
        <source>Purge the back with argon, and mind the purge cautions.</source>
        <translation>Purgar el reverso con argón, y respetar las advertencias de la purga.</translation>
    </message>
    <message>
        <source>tip oxidised after stopping</source>
        <translation>punta oxidada después de parar</translation>
    </message>
    <message>
        <source>Post-flow too short or leak</source>
        <translation>Posgás demasiado corto o fuga</translation>
    </message>
    <message>
        <source>Lengthen the post-flow.</source>
        <translation>Alargar el posgás.</translation>
    </message>
    <message>
        <source>Fix the seal of the back cap.</source>
        <translation>Arreglar la junta de la tapa trasera de la antorcha.</translation>
    </message>
    <message>
        <source>wire fuses to tip or tangles</source>
        <translation>el hilo se funde con el tubo de contacto o se enreda</translation>
    </message>
    <message>
        <source>Voltage high or wire slow; worn tip</source>
        <translation>Tensión alta o hilo lento; tubo de contacto gastado</translation>
    </message>
    <message>
        <source>Or raise the wire feed.</source>
        <translation>O subir la velocidad de hilo.</translation>
    </message>
    <message>
        <source>Fit a new contact tip.</source>
        <translation>Montar un tubo de contacto nuevo.</translation>
    </message>
    <message>
        <source>Soft wire in a steel liner or tight rolls</source>
        <translation>Hilo blando en sirga de acero o rodillos apretados</translation>
    </message>
    <message>
        <source>U-groove rolls, plastic liner, light tension, straight lead.</source>
        <translation>Rodillos de ranura en U, sirga de plástico, poca presión, manguera recta.</translation>
    </message>
    <message>
        <source>lump or dip where the bead was restarted</source>
        <translation>bulto o hundimiento donde se reanudó el cordón</translation>
    </message>
    <message>
        <source>Started on top of the crater</source>
        <translation>Arranque encima del cráter</translation>
    </message>
    <message>
        <source>Grind the stop, start ahead of it and run back over it.</source>
        <translation>Amolar el final, empezar por delante de él y volver por encima.</translation>
    </message>
    <message>
        <source>hardenable steel</source>
        <translation>acero templable</translation>
    </message>
    <message>
        <source>small burn spot on the part</source>
        <translation>pequeña quemadura puntual en la pieza</translation>
    </message>
    <message>
        <source>Struck outside the groove</source>
        <translation>Cebado fuera de la junta</translation>
    </message>
    <message>
        <source>Strike in the joint; grind the spot smooth and check it for cracks.</source>
        <translation>Cebar dentro de la unión; alisar la marca con la amoladora y comprobar que no tenga grietas.</translation>
    </message>
    <message>
        <source>width and height wander</source>
        <translation>ancho y altura irregulares</translation>
    </message>
    <message>
        <source>Uneven travel or arc length</source>
        <translation>Avance o longitud de arco irregulares</translation>
    </message>
    <message>
        <source>Brace the hand and keep a steady pace.</source>
        <translation>Apoyar la mano y mantener un ritmo constante.</translation>
    </message>
    <message>
        <source>Filler by base-metal pair and goal</source>
        <translation>Aporte por par de metales base y objetivo</translation>
    </message>
    <message>
        <source>The filler for one pair of base metals and one goal. A side is an alloy, a group or a family; the most specific row decides, and the sides may be swapped. A row without a first choice is a refusal, and its why says the reason.</source>
        <translation>El aporte para un par de metales base y un objetivo. Un lado es una aleación, un grupo o una familia; decide la fila más específica, y los lados se pueden intercambiar. Una fila sin primera opción es un rechazo, y su porqué da la razón.</translation>
    </message>
    <message>
        <source>the strongest bead on this alloy</source>
        <translation>el cordón más resistente en esta aleación</translation>
    </message>
    <message>
        <source>the bead that bends furthest</source>
        <translation>el cordón que más se dobla</translation>
    </message>
    <message>
        <source>the table prints 1050 (99.5 % aluminium), which is no class sold as rod everywhere; 1100 is the nearest</source>
        <translation>la tabla imprime 1050 (99,5 % de aluminio), que no es una clase que se venda como varilla en todas partes; 1100 es lo más cercano</translation>
    </message>
    <message>
        <source>nearest to the base metal in sea water</source>
        <translation>lo más cercano al metal base en agua de mar</translation>
    </message>
    <message>
        <source>runs furthest from the crack-prone mixtures</source>
        <translation>el que más se aleja de las mezclas propensas a grietas</translation>
    </message>
    <message>
        <source>nearest in colour after anodising</source>
        <translation>lo más cercano en color tras anodizar</translation>
    </message>
    <message>
        <source>the table names 3103, the near twin of 3003</source>
        <translation>la tabla nombra 3103, casi gemelo de 3003</translation>
    </message>
    <message>
        <source>the table names 3103, the near twin of 3003; the table prints 1050 (99.5 % aluminium), which is no class sold as rod everywhere; 1100 is the nearest</source>
        <translation>la tabla nombra 3103, casi gemelo de 3003; la tabla imprime 1050 (99,5 % de aluminio), que no es una clase que se venda como varilla en todas partes; 1100 es lo más cercano</translation>
    </message>
    <message>
        <source>the table prints 6356, which is no filler class; read as 5356</source>
        <translation>la tabla imprime 6356, que no es una clase de aporte; leído como 5356</translation>
    </message>
    <message>
        <source>lifts the bead out of the crack-prone low-magnesium mixture</source>
        <translation>saca el cordón de la mezcla pobre en magnesio, propensa a grietas</translation>
    </message>
    <message>
        <source>not in the table; a base metal with less than 2 % magnesium is to be given the Al-Mg5 type</source>
        <translation>no está en la tabla; a un metal base con menos del 2 % de magnesio hay que darle el tipo Al-Mg5</translation>
    </message>
    <message>
        <source>stays light after anodising, as the sheet does</source>
        <translation>queda claro tras anodizar, igual que la chapa</translation>
    </message>
    <message>
        <source>from the colours of the fillers in the fillers table</source>
        <translation>según los colores de los aportes en la tabla de aportes</translation>
    </message>
    <message>
        <source>keeps the sheet soft and its colour; 4043 where cracking worries more</source>
        <translation>conserva la chapa blanda y su color; 4043 donde preocupe más la grieta</translation>
    </message>
    <message>
        <source>pure filler answers three of the five goals printed for 1100, 4043 the other two</source>
        <translation>el aporte puro responde a tres de los cinco objetivos impresos para 1100, 4043 a los otros dos</translation>
    </message>
    <message>
        <source>answers strength and least cracking alike; 1100 where it must bend or keep colour</source>
        <translation>responde a la vez a resistencia y mínimo agrietamiento; 1100 donde deba doblarse o conservar el color</translation>
    </message>
    <message>
        <source>the table names 3103; table 3.2 of the same book puts 5356 first</source>
        <translation>la tabla nombra 3103; la tabla 3.2 del mismo libro pone 5356 primero</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; 4043 second is from memory of filler charts</source>
        <translation>las columnas de la tabla se dedujeron por su espaciado; 4043 como segundo es de memoria, de tablas de aportes</translation>
    </message>
    <message>
        <source>answers strength, bending, cracking and colour alike; 4043 is a poor second here</source>
        <translation>responde a la vez a resistencia, doblado, grietas y color; 4043 es aquí un segundo flojo</translation>
    </message>
    <message>
        <source>four of the five goals printed for 5052 are answered by 5356</source>
        <translation>a cuatro de los cinco objetivos impresos para 5052 responde 5356</translation>
    </message>
    <message>
        <source>keeps the strength of the plate; silicon fillers make it brittle</source>
        <translation>conserva la resistencia de la placa; los aportes con silicio la vuelven frágil</translation>
    </message>
    <message>
        <source>5183 answers strength and sea water; table 3.2 of the same book puts 5356 first</source>
        <translation>5183 responde a resistencia y agua de mar; la tabla 3.2 del mismo libro pone 5356 primero</translation>
    </message>
    <message>
        <source>answers most goals; silicon fillers make the bead brittle</source>
        <translation>responde a la mayoría de los objetivos; los aportes con silicio vuelven frágil el cordón</translation>
    </message>
    <message>
        <source>four of the five goals printed for 5086 are answered by 5356</source>
        <translation>a cuatro de los cinco objetivos impresos para 5086 responde 5356</translation>
    </message>
    <message>
        <source>matches the alloy and may run warm</source>
        <translation>iguala a la aleación y admite servicio en caliente</translation>
    </message>
    <message>
        <source>5554 answers three of the five goals printed for 5454</source>
        <translation>5554 responde a tres de los cinco objetivos impresos para 5454</translation>
    </message>
    <message>
        <source>cracks least and runs easily; 5356 makes the stronger fillet and the better colour</source>
        <translation>se agrieta menos que ninguno y fluye con facilidad; 5356 da el cordón en ángulo más resistente y mejor color</translation>
    </message>
    <message>
        <source>4043 answers cracking and sea water, 5356 strength and bending; table 3.2 of the same book puts 5556 first</source>
        <translation>4043 responde a grietas y agua de mar, 5356 a resistencia y doblado; la tabla 3.2 del mismo libro pone 5556 primero</translation>
    </message>
    <message>
        <source>4043 answers cracking and sea water, 5356 strength and bending</source>
        <translation>4043 responde a grietas y agua de mar, 5356 a resistencia y doblado</translation>
    </message>
    <message>
        <source>matches the silicon of the casting; magnesium fillers turn it brittle</source>
        <translation>iguala el silicio de la fundición; los aportes con magnesio la vuelven frágil</translation>
    </message>
    <message>
        <source>the ban on 5xxx fillers above 2 % silicon is printed in MATHERS p. 49</source>
        <translation>la prohibición de aportes 5xxx por encima del 2 % de silicio está impresa en MATHERS p. 49</translation>
    </message>
    <message>
        <source>from the goals printed for 6061 and for 6063; table 3.2 puts 5556 first</source>
        <translation>de los objetivos impresos para 6061 y para 6063; la tabla 3.2 pone 5556 primero</translation>
    </message>
    <message>
        <source>suits every pair of 5xxx alloys; silicon fillers make a bead with this much magnesium brittle</source>
        <translation>sirve para todo par de aleaciones 5xxx; los aportes con silicio vuelven frágil un cordón con tanto magnesio</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the table names 5005, 5083, 5251 and 5454; second choices from memory of filler charts</source>
        <translation>las columnas de la tabla se dedujeron por su espaciado; la tabla nombra 5005, 5083, 5251 y 5454; las segundas opciones son de memoria, de tablas de aportes</translation>
    </message>
    <message>
        <source>lifts the lean side out of the crack-prone mixture</source>
        <translation>saca el lado pobre de la mezcla propensa a grietas</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing</source>
        <translation>las columnas de la tabla se dedujeron por su espaciado</translation>
    </message>
    <message>
        <source>strong and crack-safe; 5554 where the part runs warm</source>
        <translation>resistente y seguro frente a grietas; 5554 donde la pieza trabaje en caliente</translation>
    </message>
    <message>
        <source>the table names 5251 and 5454, not 5052</source>
        <translation>la tabla nombra 5251 y 5454, no 5052</translation>
    </message>
    <message>
        <source>answers strength and colour on both sides</source>
        <translation>responde a resistencia y color en ambos lados</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the table names 5005, 5083, 5251 and 5454 with 6061, 6063 and 6082; second choices from memory of filler charts</source>
        <translation>las columnas de la tabla se dedujeron por su espaciado; la tabla nombra 5005, 5083, 5251 y 5454 con 6061, 6063 y 6082; las segundas opciones son de memoria, de tablas de aportes</translation>
    </message>
    <message>
        <source>answers both sides; 4043 cracks as little and runs easier</source>
        <translation>responde a ambos lados; 4043 se agrieta igual de poco y fluye mejor</translation>
    </message>
    <message>
        <source>stronger and a better colour than 4043, which is accepted as second where cracking decides</source>
        <translation>más resistente y de mejor color que 4043, que se acepta como segundo donde deciden las grietas</translation>
    </message>
    <message>
        <source>the table names 5251, not 5052; the seconds are from memory of filler charts</source>
        <translation>la tabla nombra 5251, no 5052; los segundos son de memoria, de tablas de aportes</translation>
    </message>
    <message>
        <source>enough magnesium for the plate; silicon fillers make its side brittle</source>
        <translation>suficiente magnesio para la placa; los aportes con silicio vuelven frágil ese lado</translation>
    </message>
    <message>
        <source>the table names 5083, not 5086</source>
        <translation>la tabla nombra 5083, no 5086</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the second choice is from memory of filler charts</source>
        <translation>las columnas de la tabla se dedujeron por su espaciado; la segunda opción es de memoria, de tablas de aportes</translation>
    </message>
    <message>
        <source>brings the magnesium the pure side lacks</source>
        <translation>aporta el magnesio que le falta al lado puro</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the table names 1050, 1080 and 1200</source>
        <translation>las columnas de la tabla se dedujeron por su espaciado; la tabla nombra 1050, 1080 y 1200</translation>
    </message>
    <message>
        <source>brings the magnesium the pure side lacks; silicon fillers make the plate side brittle</source>
        <translation>aporta el magnesio que le falta al lado puro; los aportes con silicio vuelven frágil el lado de la placa</translation>
    </message>
    <message>
        <source>the table names 1050, 1080 and 1200 with 5083</source>
        <translation>la tabla nombra 1050, 1080 y 1200 con 5083</translation>
    </message>
    <message>
        <source>strong and a good colour; 4043 cracks as little</source>
        <translation>resistente y de buen color; 4043 se agrieta igual de poco</translation>
    </message>
    <message>
        <source>runs easily and cracks least on both</source>
        <translation>fluye con facilidad y se agrieta menos que ninguno en ambos</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the table puts 5356 first and 4043 second; 4043 is also the one both metals share in table 3.3</source>
        <translation>las columnas de la tabla se dedujeron por su espaciado; la tabla pone 5356 primero y 4043 segundo; 4043 es además el que ambos metales comparten en la tabla 3.3</translation>
    </message>
    <message>
        <source>brings the magnesium the manganese side lacks</source>
        <translation>aporta el magnesio que le falta al lado del manganeso</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the table names 3103 and 3105; 4043 second is from memory of filler charts</source>
        <translation>las columnas de la tabla se dedujeron por su espaciado; la tabla nombra 3103 y 3105; 4043 como segundo es de memoria, de tablas de aportes</translation>
    </message>
    <message>
        <source>brings the magnesium the manganese side lacks; silicon fillers make the plate side brittle</source>
        <translation>aporta el magnesio que le falta al lado del manganeso; los aportes con silicio vuelven frágil el lado de la placa</translation>
    </message>
    <message>
        <source>the table names 3103 and 3105 with 5083</source>
        <translation>la tabla nombra 3103 y 3105 con 5083</translation>
    </message>
    <message>
        <source>cracks least on both</source>
        <translation>se agrieta menos que ninguno en ambos</translation>
    </message>
    <message>
        <source>column positions in the table were judged by their spacing; the table names 3103 and 3105</source>
        <translation>las columnas de la tabla se dedujeron por su espaciado; la tabla nombra 3103 y 3105</translation>
    </message>
    <message>
        <source>matches the silicon of the casting</source>
        <translation>iguala el silicio de la fundición</translation>
    </message>
    <message>
        <source>the casting asks for silicon, the sheet for magnesium: a compromise, not for joints that carry much</source>
        <translation>la fundición pide silicio, la chapa magnesio: un compromiso, no para uniones que soporten mucho</translation>
    </message>
    <message>
        <source>brittle either way: the casting asks for silicon and the plate forbids it; not for joints that carry load</source>
        <translation>frágil de las dos maneras: la fundición pide silicio y la placa lo prohíbe; no para uniones que soporten carga</translation>
    </message>
    <message>
        <source>stronger fillets than 4043 on both</source>
        <translation>cordones en ángulo más resistentes que con 4043 en ambos</translation>
    </message>
    <message>
        <source>both alloys have the same answer in the table</source>
        <translation>ambas aleaciones tienen la misma respuesta en la tabla</translation>
    </message>
    <message>
        <source>bends further than 4043</source>
        <translation>se dobla más que 4043</translation>
    </message>
    <message>
        <source>printed for 6061 and for 6063 in sea water</source>
        <translation>impreso para 6061 y para 6063 en agua de mar</translation>
    </message>
    <message>
        <source>printed for 6061 and for 6063 as the one that cracks least</source>
        <translation>impreso para 6061 y para 6063 como el que menos se agrieta</translation>
    </message>
    <message>
        <source>stays light after anodising; 4043 turns grey</source>
        <translation>queda claro tras anodizar; 4043 se vuelve gris</translation>
    </message>
    <message>
        <source>the table prints 5654 for 6061 and 6356, read as 5356, for 6063</source>
        <translation>la tabla imprime 5654 para 6061 y 6356, leído como 5356, para 6063</translation>
    </message>
    <message>
        <source>printed for most 5xxx alloys</source>
        <translation>impreso para la mayoría de las aleaciones 5xxx</translation>
    </message>
    <message>
        <source>from the answers printed for the single alloys</source>
        <translation>de las respuestas impresas para las aleaciones por separado</translation>
    </message>
    <message>
        <source>nearest to the richer of the two alloys in sea water</source>
        <translation>lo más cercano a la más rica de las dos aleaciones en agua de mar</translation>
    </message>
    <message>
        <source>printed for every 5xxx alloy as the one that cracks least</source>
        <translation>impreso para todas las aleaciones 5xxx como el que menos se agrieta</translation>
    </message>
    <message>
        <source>stays light after anodising, as both sheets do</source>
        <translation>queda claro tras anodizar, igual que ambas chapas</translation>
    </message>
    <message>
        <source>printed for both alloys in sea water</source>
        <translation>impreso para ambas aleaciones en agua de mar</translation>
    </message>
    <message>
        <source>stronger than 4043, and silicon is unwelcome on the 5xxx side</source>
        <translation>más resistente que 4043, y el silicio no conviene en el lado 5xxx</translation>
    </message>
    <message>
        <source>enough magnesium to pass the crack-prone mixture on both sides</source>
        <translation>suficiente magnesio para superar en ambos lados la mezcla propensa a grietas</translation>
    </message>
    <message>
        <source>5xxx fillers stay light after anodising; silicon fillers turn grey to black</source>
        <translation>los aportes 5xxx quedan claros tras anodizar; los aportes con silicio se vuelven de gris a negro</translation>
    </message>
    <message>
        <source>no filler matches: the casting itself turns grey, and so does the bead</source>
        <translation>ningún aporte iguala el color: la propia fundición se vuelve gris, y el cordón también</translation>
    </message>
    <message>
        <source>from the colours of the fillers and the ban on 5xxx fillers above 2 % silicon</source>
        <translation>de los colores de los aportes y de la prohibición de aportes 5xxx por encima del 2 % de silicio</translation>
    </message>
    <message>
        <source>no filler matches both sides; see the general choice for how brittle this pair is</source>
        <translation>ningún aporte iguala a ambos lados; ver en la opción general lo frágil que es este par</translation>
    </message>
    <message>
        <source>follows the general row of the pair, which is from memory</source>
        <translation>sigue la fila general del par, que es de memoria</translation>
    </message>
    <message>
        <source>carries no magnesium to speak of, so warmth does not open it to stress corrosion</source>
        <translation>apenas lleva magnesio, así que el calor no lo expone a la corrosión bajo tensión</translation>
    </message>
    <message>
        <source>from the printed rule: no lasting service above 65 degC for weld metal rich in magnesium, 5554 allowed; 3 % is taken as the line</source>
        <translation>de la regla impresa: ningún servicio prolongado por encima de 65 °C con metal de soldadura rico en magnesio, 5554 permitido; se toma el 3 % como límite</translation>
    </message>
    <message>
        <source>as pure as the sheet, so warmth does it no harm</source>
        <translation>tan puro como la chapa, así que el calor no lo perjudica</translation>
    </message>
    <message>
        <source>the 5xxx filler that stays below 3 % magnesium</source>
        <translation>el aporte 5xxx que queda por debajo del 3 % de magnesio</translation>
    </message>
    <message>
        <source>the casting forbids magnesium fillers; a compromise, not for joints that carry much</source>
        <translation>la fundición prohíbe los aportes con magnesio; un compromiso, no para uniones que soporten mucho</translation>
    </message>
    <message>
        <source>5083 itself carries more than 3 % magnesium and must not stay above 65 degC, whatever the filler: make the part in 5454 with 5554, or in 6061 with 4043</source>
        <translation>el propio 5083 lleva más del 3 % de magnesio y no debe permanecer por encima de 65 °C, sea cual sea el aporte: hacer la pieza en 5454 con 5554, o en 6061 con 4043</translation>
    </message>
    <message>
        <source>5086 itself carries more than 3 % magnesium and must not stay above 65 degC, whatever the filler: make the part in 5454 with 5554, or in 6061 with 4043</source>
        <translation>el propio 5086 lleva más del 3 % de magnesio y no debe permanecer por encima de 65 °C, sea cual sea el aporte: hacer la pieza en 5454 con 5554, o en 6061 con 4043</translation>
    </message>
    <message>
        <source>2024 is not to be arc welded: it cracks as it freezes and corrodes beside the bead; rivet or bolt the joint</source>
        <translation>2024 no se debe soldar por arco: se agrieta al solidificar y se corroe junto al cordón; remachar o atornillar la unión</translation>
    </message>
    <message>
        <source>7075 is not to be arc welded: it cracks as it freezes, or later from stress corrosion; rivet or bolt the joint</source>
        <translation>7075 no se debe soldar por arco: se agrieta al solidificar, o más tarde por corrosión bajo tensión; remachar o atornillar la unión</translation>
    </message>
    <message>
        <source>the everyday wire and rod for plain steel</source>
        <translation>el hilo y la varilla de cada día para acero corriente</translation>
    </message>
    <message>
        <source>matches steel to S355; the nickel type where cold toughness counts</source>
        <translation>iguala a los aceros hasta S355; el tipo con níquel donde cuente la tenacidad en frío</translation>
    </message>
    <message>
        <source>with the zinc taken off; braze welding with silicon bronze melts less zinc</source>
        <translation>con el cinc quitado; el cobresoldeo con bronce al silicio funde menos cinc</translation>
    </message>
    <message>
        <source>70S-2 through zinc blows holes</source>
        <translation>70S-2 a través del cinc abre agujeros</translation>
    </message>
    <message>
        <source>with the zinc taken off</source>
        <translation>con el cinc quitado</translation>
    </message>
    <message>
        <source>near the strength of normalised tube; 70S-2 is tougher and serves walls below 3 mm</source>
        <translation>cerca de la resistencia del tubo normalizado; 70S-2 es más tenaz y sirve para paredes de menos de 3 mm</translation>
    </message>
    <message>
        <source>matching 4130 filler only for parts that are heat treated afterwards</source>
        <translation>aporte igual a 4130 solo para piezas que se traten térmicamente después</translation>
    </message>
    <message>
        <source>soft enough not to crack beside the hard side</source>
        <translation>bastante blando para no agrietarse junto al lado duro</translation>
    </message>
    <message>
        <source>with the zinc taken off; soft enough not to crack beside the hard side</source>
        <translation>con el cinc quitado; bastante blando para no agrietarse junto al lado duro</translation>
    </message>
    <message>
        <source>soft enough not to crack beside the hard side; it will not rust to the same colour</source>
        <translation>bastante blando para no agrietarse junto al lado duro; al oxidarse no tomará el mismo color</translation>
    </message>
    <message>
        <source>rusts to the same colour; plain wire will do for a single run that picks up enough of the sheet</source>
        <translation>se oxida con el mismo color; el hilo corriente basta para una sola pasada que recoja suficiente chapa</translation>
    </message>
    <message>
        <source>plain wire matches the plain side</source>
        <translation>el hilo corriente iguala al lado corriente</translation>
    </message>
    <message>
        <source>matches 304 and 304L</source>
        <translation>iguala a 304 y 304L</translation>
    </message>
    <message>
        <source>keeps the molybdenum that resists pitting</source>
        <translation>conserva el molibdeno que resiste las picaduras</translation>
    </message>
    <message>
        <source>suits both; 308L where only the 304 side sees the weather</source>
        <translation>sirve para ambos; 308L donde solo el lado 304 quede a la intemperie</translation>
    </message>
    <message>
        <source>matches the sheet and moves with it when hot</source>
        <translation>iguala a la chapa y se dilata con ella en caliente</translation>
    </message>
    <message>
        <source>matches in colour and expansion; the austenitic ones give a tougher bead</source>
        <translation>iguala en color y dilatación; los austeníticos dan un cordón más tenaz</translation>
    </message>
    <message>
        <source>a tough bead between two brittle edges</source>
        <translation>un cordón tenaz entre dos bordes frágiles</translation>
    </message>
    <message>
        <source>stays tough whatever it picks up from either side</source>
        <translation>sigue tenaz recoja lo que recoja de uno u otro lado</translation>
    </message>
    <message>
        <source>rich enough to stay crack-free when the plain side thins it</source>
        <translation>bastante rico para seguir sin grietas cuando el lado corriente lo diluye</translation>
    </message>
    <message>
        <source>only with every trace of zinc taken off well back: molten zinc cracks stainless on contact</source>
        <translation>solo con todo rastro de cinc quitado hasta bien lejos: el cinc fundido agrieta el inoxidable al contacto</translation>
    </message>
    <message>
        <source>a tough bead between the two</source>
        <translation>un cordón tenaz entre los dos</translation>
    </message>
    <message>
        <source>with the zinc taken off; a tough bead between the two</source>
        <translation>con el cinc quitado; un cordón tenaz entre los dos</translation>
    </message>
    <message>
        <source>matches deoxidised copper; silicon bronze needs less heat but conducts poorly</source>
        <translation>iguala al cobre desoxidado; el bronce al silicio necesita menos calor pero conduce mal</translation>
    </message>
    <message>
        <source>matches</source>
        <translation>iguala</translation>
    </message>
    <message>
        <source>runs at less heat and suits both</source>
        <translation>fluye con menos calor y sirve para ambos</translation>
    </message>
    <message>
        <source>matches grade 2; nothing but titanium may go into the pool</source>
        <translation>iguala al grado 2; en el baño no puede entrar nada más que titanio</translation>
    </message>
    <message>
        <source>matches wrought AZ31; AZ92A freezes later and cracks less</source>
        <translation>iguala al AZ31 forjado; AZ92A solidifica más tarde y se agrieta menos</translation>
    </message>
    <message>
        <source>aluminium and steel form a brittle compound where they melt together, so no filler makes a sound fused joint: bolt them with insulation between, or use a bought transition strip</source>
        <translation>el aluminio y el acero forman un compuesto frágil donde se funden juntos, así que ningún aporte da una unión fundida sana: atornillarlos con aislamiento en medio, o usar una pletina de transición comprada</translation>
    </message>
    <message>
        <source>aluminium and stainless steel form a brittle compound where they melt together, so no filler makes a sound fused joint: bolt them with insulation between, or use a bought transition strip</source>
        <translation>el aluminio y el acero inoxidable forman un compuesto frágil donde se funden juntos, así que ningún aporte da una unión fundida sana: atornillarlos con aislamiento en medio, o usar una pletina de transición comprada</translation>
    </message>
    <message>
        <source>aluminium and copper form a brittle compound where they melt together, so no filler makes a sound fused joint: bolt them with insulation between, or use a bought transition strip</source>
        <translation>el aluminio y el cobre forman un compuesto frágil donde se funden juntos, así que ningún aporte da una unión fundida sana: atornillarlos con aislamiento en medio, o usar una pletina de transición comprada</translation>
    </message>
    <message>
        <source>aluminium and magnesium form a brittle compound where they melt together, so no filler makes a sound fused joint: bolt them with insulation between, or use a bought transition strip</source>
        <translation>el aluminio y el magnesio forman un compuesto frágil donde se funden juntos, así que ningún aporte da una unión fundida sana: atornillarlos con aislamiento en medio, o usar una pletina de transición comprada</translation>
    </message>
    <message>
        <source>titanium and aluminium form brittle compounds where they melt together, so no filler makes a sound fused joint: bolt or bond them</source>
        <translation>el titanio y el aluminio forman compuestos frágiles donde se funden juntos, así que ningún aporte da una unión fundida sana: atornillarlos o pegarlos</translation>
    </message>
    <message>
        <source>titanium and steel form brittle compounds where they melt together, so no filler makes a sound fused joint: bolt or bond them</source>
        <translation>el titanio y el acero forman compuestos frágiles donde se funden juntos, así que ningún aporte da una unión fundida sana: atornillarlos o pegarlos</translation>
    </message>
    <message>
        <source>titanium and stainless steel form brittle compounds where they melt together, so no filler makes a sound fused joint: bolt or bond them</source>
        <translation>el titanio y el acero inoxidable forman compuestos frágiles donde se funden juntos, así que ningún aporte da una unión fundida sana: atornillarlos o pegarlos</translation>
    </message>
    <message>
        <source>titanium and copper form brittle compounds where they melt together, so no filler makes a sound fused joint: bolt or bond them</source>
        <translation>el titanio y el cobre forman compuestos frágiles donde se funden juntos, así que ningún aporte da una unión fundida sana: atornillarlos o pegarlos</translation>
    </message>
    <message>
        <source>titanium and magnesium form brittle compounds where they melt together, so no filler makes a sound fused joint: bolt or bond them</source>
        <translation>el titanio y el magnesio forman compuestos frágiles donde se funden juntos, así que ningún aporte da una unión fundida sana: atornillarlos o pegarlos</translation>
    </message>
    <message>
        <source>magnesium and steel do not fuse into a sound joint and corrode each other: bolt them with insulation between</source>
        <translation>el magnesio y el acero no se funden en una unión sana y se corroen mutuamente: atornillarlos con aislamiento en medio</translation>
    </message>
    <message>
        <source>magnesium and stainless steel do not fuse into a sound joint and corrode each other: bolt them with insulation between</source>
        <translation>el magnesio y el acero inoxidable no se funden en una unión sana y se corroen mutuamente: atornillarlos con aislamiento en medio</translation>
    </message>
    <message>
        <source>magnesium and copper do not fuse into a sound joint and corrode each other: bolt them with insulation between</source>
        <translation>el magnesio y el cobre no se funden en una unión sana y se corroen mutuamente: atornillarlos con aislamiento en medio</translation>
    </message>
    <message>
        <source>copper and steel are joined by brazing or bronze welding, for which there is no set-up in these tables</source>
        <translation>el cobre y el acero se unen por soldeo fuerte o cobresoldeo, para los que estas tablas no tienen ningún ajuste</translation>
    </message>
    <message>
        <source>copper and stainless steel are joined by brazing or bronze welding, for which there is no set-up in these tables</source>
        <translation>el cobre y el acero inoxidable se unen por soldeo fuerte o cobresoldeo, para los que estas tablas no tienen ningún ajuste</translation>
    </message>
    <message>
        <source>Filler metals</source>
        <translation>Metales de aporte</translation>
    </message>
    <message>
        <source>One filler metal by its AWS class, with the ISO designation beside it, what it is for and what it looks like after anodising.</source>
        <translation>Un metal de aporte por su clase AWS, con la designación ISO al lado, para qué sirve y qué aspecto tiene tras anodizar.</translation>
    </message>
    <message>
        <source>light golden</source>
        <translation>dorado claro</translation>
    </message>
    <message>
        <source>pure sheet and 3xxx where the bead should bend or keep its colour</source>
        <translation>chapa pura y 3xxx donde el cordón deba doblarse o conservar el color</translation>
    </message>
    <message>
        <source>golden</source>
        <translation>dorado</translation>
    </message>
    <message>
        <source>2219 and copper-bearing castings; nothing in the usual small shop</source>
        <translation>2219 y fundiciones con cobre; nada del pequeño taller corriente</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>6xxx, 3xxx and castings; flows easily, cracks least, turns grey when anodised</source>
        <translation>6xxx, 3xxx y fundiciones; fluye con facilidad, se agrieta menos que ninguno, queda gris al anodizar</translation>
    </message>
    <message>
        <source>grey-black</source>
        <translation>gris negruzco</translation>
    </message>
    <message>
        <source>thin sheet, castings and leak-tight joints; the most fluid of all</source>
        <translation>chapa fina, fundiciones y uniones estancas; el más fluido de todos</translation>
    </message>
    <message>
        <source>6xxx over 12 mm that is solution treated and aged after welding</source>
        <translation>6xxx de más de 12 mm que se solubiliza y envejece después de soldar</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanco</translation>
    </message>
    <message>
        <source>5083 and 5086 where strength and sea water count</source>
        <translation>5083 y 5086 donde cuenten resistencia y agua de mar</translation>
    </message>
    <message>
        <source>the everyday 5xxx filler: stronger fillets and a good match after anodising</source>
        <translation>el aporte 5xxx de cada día: cordones en ángulo más resistentes y buen color tras anodizar</translation>
    </message>
    <message>
        <source>5454 and 5052 in warm service</source>
        <translation>5454 y 5052 con servicio en caliente</translation>
    </message>
    <message>
        <source>the strongest of the common 5xxx fillers</source>
        <translation>el más resistente de los aportes 5xxx corrientes</translation>
    </message>
    <message>
        <source>5154, 5254 and colour matching on 6061</source>
        <translation>5154, 5254 y para igualar el color en 6061</translation>
    </message>
    <message>
        <source>casting 356 and A356, matching, may be aged afterwards</source>
        <translation>fundición 356 y A356, igual al metal base, se puede envejecer después</translation>
    </message>
    <message>
        <source>TIG on low-carbon steel and thin 4130; forgives some rust</source>
        <translation>TIG sobre acero bajo en carbono y 4130 fino; tolera algo de óxido</translation>
    </message>
    <message>
        <source>clean low-carbon steel</source>
        <translation>acero bajo en carbono limpio</translation>
    </message>
    <message>
        <source>low-carbon and structural steel to S355; forgives some scale, wets well on sheet</source>
        <translation>acero bajo en carbono y estructural hasta S355; tolera algo de cascarilla, moja bien en chapa</translation>
    </message>
    <message>
        <source>4130 and other low-alloy steel of about 550 MPa</source>
        <translation>4130 y otros aceros de baja aleación de unos 550 MPa</translation>
    </message>
    <message>
        <source>weathering steel and cold-tough structural work</source>
        <translation>acero patinable (corten) y estructuras con tenacidad en frío</translation>
    </message>
    <message>
        <source>304 and 304L</source>
        <translation>304 y 304L</translation>
    </message>
    <message>
        <source>304 and 304L by MIG; wets better</source>
        <translation>304 y 304L con MIG/MAG; moja mejor</translation>
    </message>
    <message>
        <source>stainless to carbon steel</source>
        <translation>inoxidable con acero al carbono</translation>
    </message>
    <message>
        <source>stainless to carbon steel by MIG; wets better</source>
        <translation>inoxidable con acero al carbono con MIG/MAG; moja mejor</translation>
    </message>
    <message>
        <source>316 and 316L</source>
        <translation>316 y 316L</translation>
    </message>
    <message>
        <source>316 and 316L by MIG; wets better</source>
        <translation>316 y 316L con MIG/MAG; moja mejor</translation>
    </message>
    <message>
        <source>409 exhaust sheet</source>
        <translation>chapa de escape 409</translation>
    </message>
    <message>
        <source>409 and like exhaust grades; niobium keeps the grain tame</source>
        <translation>409 y grados de escape parecidos; el niobio mantiene fino el grano</translation>
    </message>
    <message>
        <source>430, matching</source>
        <translation>430, igual al metal base</translation>
    </message>
    <message>
        <source>unlike or unknown steels; stays crack-free under much dilution</source>
        <translation>aceros distintos o desconocidos; sigue sin grietas con mucha dilución</translation>
    </message>
    <message>
        <source>silicon bronze; braze welding of galvanised sheet</source>
        <translation>bronce al silicio; cobresoldeo de chapa galvanizada</translation>
    </message>
    <message>
        <source>deoxidised copper</source>
        <translation>cobre desoxidado</translation>
    </message>
    <message>
        <source>softest commercially pure titanium</source>
        <translation>el titanio comercialmente puro más blando</translation>
    </message>
    <message>
        <source>titanium grade 2</source>
        <translation>titanio grado 2</translation>
    </message>
    <message>
        <source>AZ31 and other wrought magnesium</source>
        <translation>AZ31 y otras aleaciones de magnesio de forja</translation>
    </message>
    <message>
        <source>magnesium castings and AZ31; melts lower</source>
        <translation>fundiciones de magnesio y AZ31; funde a menor temperatura</translation>
    </message>
    <message>
        <source>Filter shades</source>
        <translation>Tonos de filtro</translation>
    </message>
    <message>
        <source>One band of current in one document: the least shade it allows, the shade it suggests, or both. The federal rule sets the floor; the guide&apos;s suggestion is the comfort column. Begin too dark to see the pool and step lighter until it is clear, never below the floor. The European bands suppose the eye half a metre from the pool, and have none for MIG below 80 A.</source>
        <translation>Un intervalo de corriente en un documento: el tono mínimo que permite, el tono que sugiere, o ambos. La norma federal pone el mínimo; la sugerencia de la guía es la columna de comodidad. Empezar demasiado oscuro para ver el baño e ir aclarando paso a paso hasta verlo bien, nunca por debajo del mínimo. Los intervalos europeos suponen el ojo a medio metro del baño, y no los hay para MIG/MAG por debajo de 80 A.</translation>
    </message>
    <message>
        <source>Gas flows</source>
        <translation>Caudales de gas</translation>
    </message>
    <message>
        <source>One flow, or one cup for an electrode, as a document gives it: by thickness, by current or as a plain range. Flows printed in cubic feet an hour are converted beside. Flows that belong to a whole set-up stand with it, in the schedules.</source>
        <translation>Un caudal, o una tobera para un electrodo, tal como lo da un documento: por espesor, por corriente o como simple margen. Los caudales impresos en pies cúbicos por hora van convertidos al lado. Los caudales que pertenecen a un ajuste completo están con él, en las tablas de parámetros.</translation>
    </message>
    <message>
        <source>Shielding gas groups of ISO 14175</source>
        <translation>Grupos de gases de protección de ISO 14175</translation>
    </message>
    <message>
        <source>One group of one edition: the base gas and what is mixed into it, in percent of volume. A share lies above its lower limit and up to its upper one; the lowest limit of the 2008 edition, 0.5, itself belongs to the group. Helium may stand in for argon in the groups based on argon. What fits no group is called Z.</source>
        <translation>Un grupo de una edición: el gas base y lo que se le mezcla, en tanto por ciento de volumen. Una proporción está por encima de su límite inferior y llega hasta el superior inclusive; el límite más bajo de la edición de 2008, 0,5, pertenece él mismo al grupo. El helio puede sustituir al argón en los grupos basados en argón. Lo que no encaja en ningún grupo se llama Z.</translation>
    </message>
    <message>
        <source>Gas uses</source>
        <translation>Usos de los gases</translation>
    </message>
    <message>
        <source>One gas with one process on one family of metal. Standing is our order of preference, 1 first.</source>
        <translation>Un gas con un proceso sobre una familia de metal. El puesto es nuestro orden de preferencia, primero el 1.</translation>
    </message>
    <message>
        <source>Shielding gases</source>
        <translation>Gases de protección</translation>
    </message>
    <message>
        <source>One gas or mix: what is in it, in percent of volume, and its groups in ISO 14175. Processes, families and transfers sum up the gas uses table, which says what goes with what.</source>
        <translation>Un gas o mezcla: qué contiene, en tanto por ciento de volumen, y sus grupos en ISO 14175. Procesos, familias y transferencias resumen la tabla de usos de los gases, que dice qué va con qué.</translation>
    </message>
    <message>
        <source>argon with 25 % helium</source>
        <translation>argón con 25 % de helio</translation>
    </message>
    <message>
        <source>argon with 50 % helium</source>
        <translation>argón con 50 % de helio</translation>
    </message>
    <message>
        <source>argon with 75 % helium</source>
        <translation>argón con 75 % de helio</translation>
    </message>
    <message>
        <source>argon with 25 % carbon dioxide</source>
        <translation>argón con 25 % de dióxido de carbono</translation>
    </message>
    <message>
        <source>argon with 18 % carbon dioxide</source>
        <translation>argón con 18 % de dióxido de carbono</translation>
    </message>
    <message>
        <source>argon with 10 % carbon dioxide</source>
        <translation>argón con 10 % de dióxido de carbono</translation>
    </message>
    <message>
        <source>argon with 5 % oxygen</source>
        <translation>argón con 5 % de oxígeno</translation>
    </message>
    <message>
        <source>argon with 2 % oxygen</source>
        <translation>argón con 2 % de oxígeno</translation>
    </message>
    <message>
        <source>argon with 2 % carbon dioxide</source>
        <translation>argón con 2 % de dióxido de carbono</translation>
    </message>
    <message>
        <source>helium with 7.5 % argon and 2.5 % carbon dioxide</source>
        <translation>helio con 7,5 % de argón y 2,5 % de dióxido de carbono</translation>
    </message>
    <message>
        <source>Sheet and tube gauges</source>
        <translation>Calibres de chapa y tubo</translation>
    </message>
    <message>
        <source>The thickness that one gauge number stands for in one system. MSG is plain steel sheet, GSG galvanised sheet with its zinc, USG (15 USC 206) stainless, AWG aluminium and copper alloys, BWG tube walls.</source>
        <translation>El espesor que representa un número de calibre en un sistema. MSG es chapa de acero corriente, GSG chapa galvanizada con su cinc, USG (15 USC 206) inoxidable, AWG aluminio y aleaciones de cobre, BWG paredes de tubo.</translation>
    </message>
    <message>
        <source>Hot and liquid metals</source>
        <translation>Metales calientes y líquidos</translation>
    </message>
    <message>
        <source>What changes between room temperature and melting, by family: ratios of the mean to the value near 20 degC where no standard gives a formula, the liquid&apos;s own density and surface tension at its melting point, and how well the hot face radiates.</source>
        <translation>Qué cambia entre la temperatura ambiente y la fusión, por familia: relaciones entre la media y el valor cerca de 20 °C donde ninguna norma da una fórmula, la densidad y la tensión superficial propias del líquido en su punto de fusión, y lo bien que radia la cara caliente.</translation>
    </message>
    <message>
        <source>Weld imperfections</source>
        <translation>Imperfecciones de soldadura</translation>
    </message>
    <message>
        <source>One imperfection with its number in ISO 6520-1. The first digit gives the group.</source>
        <translation>Una imperfección con su número en ISO 6520-1. La primera cifra da el grupo.</translation>
    </message>
    <message>
        <source>longitudinal crack</source>
        <translation>grieta longitudinal</translation>
    </message>
    <message>
        <source>longitudinal crack in the weld metal</source>
        <translation>grieta longitudinal en el metal de soldadura</translation>
    </message>
    <message>
        <source>transverse crack</source>
        <translation>grieta transversal</translation>
    </message>
    <message>
        <source>gas pore</source>
        <translation>poro de gas</translation>
    </message>
    <message>
        <source>uniformly distributed porosity</source>
        <translation>porosidad uniformemente distribuida</translation>
    </message>
    <message>
        <source>clustered porosity</source>
        <translation>porosidad agrupada</translation>
    </message>
    <message>
        <source>linear porosity</source>
        <translation>porosidad alineada</translation>
    </message>
    <message>
        <source>elongated cavity</source>
        <translation>cavidad alargada</translation>
    </message>
    <message>
        <source>worm-hole</source>
        <translation>poro vermicular</translation>
    </message>
    <message>
        <source>surface pore</source>
        <translation>poro superficial</translation>
    </message>
    <message>
        <source>crater pipe</source>
        <translation>rechupe de cráter</translation>
    </message>
    <message>
        <source>end crater pipe</source>
        <translation>rechupe de cráter final</translation>
    </message>
    <message>
        <source>solid inclusion</source>
        <translation>inclusión sólida</translation>
    </message>
    <message>
        <source>slag inclusion</source>
        <translation>inclusión de escoria</translation>
    </message>
    <message>
        <source>puckering</source>
        <translation>pliegue de óxido</translation>
    </message>
    <message>
        <source>metallic inclusion</source>
        <translation>inclusión metálica</translation>
    </message>
    <message>
        <source>copper inclusion</source>
        <translation>inclusión de cobre</translation>
    </message>
    <message>
        <source>lack of side-wall fusion</source>
        <translation>falta de fusión lateral</translation>
    </message>
    <message>
        <source>lack of inter-run fusion</source>
        <translation>falta de fusión entre pasadas</translation>
    </message>
    <message>
        <source>lack of root fusion</source>
        <translation>falta de fusión en la raíz</translation>
    </message>
    <message>
        <source>incomplete root penetration</source>
        <translation>penetración incompleta de la raíz</translation>
    </message>
    <message>
        <source>continuous undercut</source>
        <translation>mordedura continua</translation>
    </message>
    <message>
        <source>intermittent undercut</source>
        <translation>mordedura intermitente</translation>
    </message>
    <message>
        <source>shrinkage groove</source>
        <translation>surco de contracción</translation>
    </message>
    <message>
        <source>excess weld metal on a butt weld</source>
        <translation>exceso de metal de soldadura en soldadura a tope</translation>
    </message>
    <message>
        <source>excessive convexity of a fillet weld</source>
        <translation>convexidad excesiva de cordón en ángulo</translation>
    </message>
    <message>
        <source>excessive penetration</source>
        <translation>exceso de penetración</translation>
    </message>
    <message>
        <source>incorrect weld toe</source>
        <translation>pie de cordón incorrecto</translation>
    </message>
    <message>
        <source>overlap</source>
        <translation>solapamiento</translation>
    </message>
    <message>
        <source>linear misalignment</source>
        <translation>desalineación lineal</translation>
    </message>
    <message>
        <source>angular misalignment</source>
        <translation>desalineación angular</translation>
    </message>
    <message>
        <source>sagging</source>
        <translation>descolgado</translation>
    </message>
    <message>
        <source>burn-through</source>
        <translation>perforación</translation>
    </message>
    <message>
        <source>incompletely filled groove</source>
        <translation>falta de llenado de la junta</translation>
    </message>
    <message>
        <source>excessive asymmetry of fillet</source>
        <translation>asimetría excesiva de cordón en ángulo</translation>
    </message>
    <message>
        <source>irregular width</source>
        <translation>ancho irregular</translation>
    </message>
    <message>
        <source>irregular surface</source>
        <translation>superficie irregular</translation>
    </message>
    <message>
        <source>root concavity</source>
        <translation>concavidad de raíz</translation>
    </message>
    <message>
        <source>root porosity</source>
        <translation>porosidad de raíz</translation>
    </message>
    <message>
        <source>excessive distortion</source>
        <translation>deformación excesiva</translation>
    </message>
    <message>
        <source>insufficient throat thickness</source>
        <translation>garganta insuficiente</translation>
    </message>
    <message>
        <source>excessive throat thickness</source>
        <translation>garganta excesiva</translation>
    </message>
    <message>
        <source>tungsten spatter</source>
        <translation>proyección de tungsteno</translation>
    </message>
    <message>
        <source>temper colours</source>
        <translation>colores de revenido</translation>
    </message>
    <message>
        <source>incorrect root gap of a fillet weld</source>
        <translation>separación de raíz incorrecta en cordón en ángulo</translation>
    </message>
    <message>
        <source>Joint factors</source>
        <translation>Factores de unión</translation>
    </message>
    <message>
        <source>What a change of joint does to the current, against a butt joint of the same sheet. Most rows are the quotient of two schedule rows of one document; the rest is shop practice.</source>
        <translation>Qué efecto tiene en la corriente un cambio de unión, frente a una unión a tope de la misma chapa. La mayoría de las filas son el cociente de dos filas de tabla de un mismo documento; el resto es práctica de taller.</translation>
    </message>
    <message>
        <source>helium on DCEN; travel and volts differ between the two rows</source>
        <translation>helio con electrodo negativo (DCEN); avance y voltios difieren entre las dos filas</translation>
    </message>
    <message>
        <source>corner also welded slower than the butt</source>
        <translation>la esquina se suelda además más despacio que a tope</translation>
    </message>
    <message>
        <source>one more plate takes the heat</source>
        <translation>una placa más se lleva el calor</translation>
    </message>
    <message>
        <source>between a butt and a T-joint</source>
        <translation>entre a tope y en T</translation>
    </message>
    <message>
        <source>the lower sheet runs on under the joint</source>
        <translation>la chapa inferior continúa bajo la unión</translation>
    </message>
    <message>
        <source>heat has fewer ways out and the full edge has to melt: no more current, a wider arc</source>
        <translation>el calor tiene menos salidas y tiene que fundirse el borde entero: no más corriente, un arco más ancho</translation>
    </message>
    <message>
        <source>two edges side by side, little metal behind them</source>
        <translation>dos bordes lado a lado, poco metal detrás</translation>
    </message>
    <message>
        <source>Where the neutral line lies in a bend</source>
        <translation>Dónde está la línea neutra en un plegado</translation>
    </message>
    <message>
        <source>The share of the thickness, counted from the inside face, at which a bend neither stretches nor shortens. For steel the factor of DIN 6935 is computed instead; one test bend on the person&apos;s own brake is better than any row.</source>
        <translation>La parte del espesor, contada desde la cara interior, a la que un plegado ni se alarga ni se acorta. Para acero se calcula en su lugar el factor de DIN 6935; un plegado de prueba en la plegadora propia vale más que cualquier fila.</translation>
    </message>
    <message>
        <source>Base metals</source>
        <translation>Metales base</translation>
    </message>
    <message>
        <source>One metal as it stands in the rack: physical properties near 20 degC, what the arc does to it, and what people call it. The class, the risks and the sentences are our own, from common practice; the grade of the row is that of its figures.</source>
        <translation>Un metal tal como está en el estante: propiedades físicas cerca de 20 °C, qué le hace el arco, y cómo lo llama la gente. La clase, los riesgos y las frases son nuestros, de la práctica común; el grado de la fila es el de sus cifras.</translation>
    </message>
    <message>
        <source>aluminium 1100, 99 % pure</source>
        <translation>aluminio 1100, 99 % puro</translation>
    </message>
    <message>
        <source>The arc takes the sheet back to soft beside the bead: size the joint for annealed strength.</source>
        <translation>El arco devuelve la chapa al estado blando junto al cordón: dimensionar la unión con la resistencia del recocido.</translation>
    </message>
    <message>
        <source>aluminium 3003, manganese</source>
        <translation>aluminio 3003, manganeso</translation>
    </message>
    <message>
        <source>aluminium 5005, 0.8 % magnesium</source>
        <translation>aluminio 5005, 0,8 % de magnesio</translation>
    </message>
    <message>
        <source>Low magnesium sits near the crack-prone mixture: always add filler, never wash the edges together alone.</source>
        <translation>Con poco magnesio queda cerca de la mezcla propensa a grietas: añadir siempre aporte, nunca unir los bordes fundiéndolos sin él.</translation>
    </message>
    <message>
        <source>aluminium 5052, 2.5 % magnesium</source>
        <translation>aluminio 5052, 2,5 % de magnesio</translation>
    </message>
    <message>
        <source>Cracks when fused without filler or with rod cut from the sheet: 5356 carries the bead past the crack-prone mixture.</source>
        <translation>Se agrieta al fundirlo sin aporte o con varilla cortada de la chapa: 5356 lleva el cordón más allá de la mezcla propensa a grietas.</translation>
    </message>
    <message>
        <source>aluminium 5083, 4.5 % magnesium, marine plate</source>
        <translation>aluminio 5083, 4,5 % de magnesio, placa naval</translation>
    </message>
    <message>
        <source>Keep welded parts out of lasting service above 65 degC, and keep 4043 and 4047 away from it.</source>
        <translation>No mantener piezas soldadas en servicio prolongado por encima de 65 °C, y no acercarle 4043 ni 4047.</translation>
    </message>
    <message>
        <source>aluminium 5086, 4 % magnesium, marine sheet</source>
        <translation>aluminio 5086, 4 % de magnesio, chapa naval</translation>
    </message>
    <message>
        <source>aluminium 5454, 2.7 % magnesium, for warm service</source>
        <translation>aluminio 5454, 2,7 % de magnesio, para servicio en caliente</translation>
    </message>
    <message>
        <source>The 5xxx alloy for warm parts: with 5554 filler it may stay in service above 65 degC.</source>
        <translation>La aleación 5xxx para piezas calientes: con aporte 5554 puede permanecer en servicio por encima de 65 °C.</translation>
    </message>
    <message>
        <source>aluminium 6061, magnesium and silicon</source>
        <translation>aluminio 6061, magnesio y silicio</translation>
    </message>
    <message>
        <source>Never fuse it without filler. T6 falls to about the strength of T4 or less beside the bead; long heat above 120 degC costs more.</source>
        <translation>No fundirlo nunca sin aporte. T6 cae junto al cordón a más o menos la resistencia de T4 o menos; calor prolongado por encima de 120 °C cuesta más.</translation>
    </message>
    <message>
        <source>aluminium 6063, extrusions</source>
        <translation>aluminio 6063, perfiles extruidos</translation>
    </message>
    <message>
        <source>Never fuse it without filler. The aged temper is lost beside the bead.</source>
        <translation>No fundirlo nunca sin aporte. El temple de envejecido se pierde junto al cordón.</translation>
    </message>
    <message>
        <source>aluminium casting 356 and A356, 7 % silicon</source>
        <translation>fundición de aluminio 356 y A356, 7 % de silicio</translation>
    </message>
    <message>
        <source>Castings hold oil and gas: clean deep, try a small bead first, and keep 5xxx fillers away from all this silicon.</source>
        <translation>Las fundiciones retienen aceite y gas: limpiar a fondo, probar antes un cordón pequeño, y no acercar aportes 5xxx a tanto silicio.</translation>
    </message>
    <message>
        <source>aluminium 2024, copper</source>
        <translation>aluminio 2024, cobre</translation>
    </message>
    <message>
        <source>2024 freezes over so wide a range that an arc weld cracks, and what holds is weak and corrodes beside the bead: rivet or bolt it, or make the part anew in 5052 or 6061.</source>
        <translation>2024 solidifica en un intervalo tan amplio que una soldadura por arco se agrieta, y lo que aguanta es débil y se corroe junto al cordón: remachar o atornillar, o hacer la pieza de nuevo en 5052 o 6061.</translation>
    </message>
    <message>
        <source>aluminium 7075, zinc and copper</source>
        <translation>aluminio 7075, cinc y cobre</translation>
    </message>
    <message>
        <source>7075 cracks as it freezes, and a weld that looks sound can crack later from stress corrosion: rivet or bolt it, or make the part anew in 6061.</source>
        <translation>7075 se agrieta al solidificar, y una soldadura que parece sana puede agrietarse más tarde por corrosión bajo tensión: remachar o atornillar, o hacer la pieza de nuevo en 6061.</translation>
    </message>
    <message>
        <source>1008 to 1010</source>
        <translation>1008 a 1010</translation>
    </message>
    <message>
        <source>low-carbon sheet steel (1008, 1010, DC01)</source>
        <translation>chapa de acero bajo en carbono (1008, 1010, DC01)</translation>
    </message>
    <message>
        <source>Thin sheet burns through and buckles before it cracks: short runs, close fit, let it cool.</source>
        <translation>La chapa fina se perfora y se abomba antes de agrietarse: tramos cortos, ajuste sin holgura, dejar enfriar.</translation>
    </message>
    <message>
        <source>A36, S235 to S355</source>
        <translation>A36, S235 a S355</translation>
    </message>
    <message>
        <source>structural steel (A36, S235 to S355)</source>
        <translation>acero estructural (A36, S235 a S355)</translation>
    </message>
    <message>
        <source>Grind off mill scale where the bead goes; above about 25 mm combined thickness look up preheat in the code that governs the job.</source>
        <translation>Quitar la cascarilla amolando donde va el cordón; por encima de unos 25 mm de espesor combinado, consultar el precalentamiento en el código que rige el trabajo.</translation>
    </message>
    <message>
        <source>1020 tube and bar</source>
        <translation>tubo y barra 1020</translation>
    </message>
    <message>
        <source>1026 drawn tube</source>
        <translation>tubo estirado 1026</translation>
    </message>
    <message>
        <source>Drawn tube owes part of its strength to cold work; a band beside the bead loses it.</source>
        <translation>El tubo estirado debe parte de su resistencia a la deformación en frío; una banda junto al cordón la pierde.</translation>
    </message>
    <message>
        <source>4130 chromium-molybdenum tube and sheet</source>
        <translation>tubo y chapa 4130 al cromo-molibdeno</translation>
    </message>
    <message>
        <source>It hardens beside the bead: dry filler, no draught, no quenching, and preheat walls above about 3 mm.</source>
        <translation>Se endurece junto al cordón: aporte seco, sin corrientes de aire, sin enfriado brusco, y precalentar paredes de más de unos 3 mm.</translation>
    </message>
    <message>
        <source>galvanised 1008</source>
        <translation>1008 galvanizado</translation>
    </message>
    <message>
        <source>galvanised low-carbon sheet</source>
        <translation>chapa galvanizada de acero bajo en carbono</translation>
    </message>
    <message>
        <source>Take the zinc off at least 25 mm back on both faces; what stays boils at 907 degC, makes fume and blows holes in the bead. Braze welding with silicon bronze at low current keeps more of it.</source>
        <translation>Quitar el cinc al menos 25 mm hacia atrás en ambas caras; el que queda hierve a 907 °C, hace humo y abre agujeros en el cordón. El cobresoldeo con bronce al silicio a corriente baja conserva más.</translation>
    </message>
    <message>
        <source>A588, S355J2W</source>
        <translation>A588, S355J2W</translation>
    </message>
    <message>
        <source>weathering steel</source>
        <translation>acero patinable (corten)</translation>
    </message>
    <message>
        <source>Bare parts need a weathering filler in the last runs so that the bead rusts to the same colour.</source>
        <translation>Las piezas sin pintar necesitan un aporte para acero patinable en las últimas pasadas, para que el cordón se oxide con el mismo color.</translation>
    </message>
    <message>
        <source>stainless 304</source>
        <translation>inoxidable 304</translation>
    </message>
    <message>
        <source>Holds heat and moves a lot: tack close, keep the part below 150 degC between runs, shield the root.</source>
        <translation>Retiene el calor y se deforma mucho: puntear muy junto, mantener la pieza por debajo de 150 °C entre pasadas, proteger la raíz.</translation>
    </message>
    <message>
        <source>304L</source>
        <translation>304L</translation>
    </message>
    <message>
        <source>stainless 304L, low carbon</source>
        <translation>inoxidable 304L, bajo en carbono</translation>
    </message>
    <message>
        <source>stainless 316, molybdenum</source>
        <translation>inoxidable 316, molibdeno</translation>
    </message>
    <message>
        <source>316L</source>
        <translation>316L</translation>
    </message>
    <message>
        <source>stainless 316L, molybdenum, low carbon</source>
        <translation>inoxidable 316L, molibdeno, bajo en carbono</translation>
    </message>
    <message>
        <source>stainless 409, exhaust sheet</source>
        <translation>inoxidable 409, chapa de escape</translation>
    </message>
    <message>
        <source>Grain grows where it stays hot: least heat that fuses, below 150 degC between runs.</source>
        <translation>El grano crece donde sigue caliente: el menor calor que funda, por debajo de 150 °C entre pasadas.</translation>
    </message>
    <message>
        <source>stainless 430</source>
        <translation>inoxidable 430</translation>
    </message>
    <message>
        <source>The zone beside the bead stays brittle as welded: least heat that fuses, and no use where it must bend or take shock.</source>
        <translation>La zona junto al cordón queda frágil tal como se suelda: el menor calor que funda, y no usarlo donde tenga que doblarse o soportar golpes.</translation>
    </message>
    <message>
        <source>C12200</source>
        <translation>C12200</translation>
    </message>
    <message>
        <source>It drinks heat: preheat anything above about 3 mm. Tough-pitch copper (C11000) turns brittle when welded; use the deoxidised grade.</source>
        <translation>Se bebe el calor: precalentar todo lo que pase de unos 3 mm. El cobre con oxígeno (tough-pitch, C11000) se vuelve frágil al soldarlo; usar el grado desoxidado.</translation>
    </message>
    <message>
        <source>C65500</source>
        <translation>C65500</translation>
    </message>
    <message>
        <source>Hot-short between about 800 and 950 degC: small pool, loose clamps, let it cool below 65 to 100 degC between runs.</source>
        <translation>Frágil en caliente entre unos 800 y 950 °C: baño pequeño, sujeción floja, dejar enfriar por debajo de 65 a 100 °C entre pasadas.</translation>
    </message>
    <message>
        <source>titanium grade 2, commercially pure</source>
        <translation>titanio grado 2, comercialmente puro</translation>
    </message>
    <message>
        <source>Air spoils it while it is hot: argon on face, root and trailing bead until below 425 degC. Silver or light straw is sound; blue, grey or white is scrap.</source>
        <translation>El aire lo estropea mientras está caliente: argón en la cara, la raíz y el cordón que va quedando detrás hasta bajar de 425 °C. Plateado o paja claro es sano; azul, gris o blanco es chatarra.</translation>
    </message>
    <message>
        <source>AZ31B</source>
        <translation>AZ31B</translation>
    </message>
    <message>
        <source>magnesium AZ31B sheet</source>
        <translation>chapa de magnesio AZ31B</translation>
    </message>
    <message>
        <source>Chips and dust burn and water feeds the fire: keep a dry powder or sand for metal fires at hand. Relieve the stress of a finished weld.</source>
        <translation>Las virutas y el polvo arden y el agua aviva el fuego: tener a mano polvo seco o arena para fuegos de metales. Aliviar las tensiones de la soldadura terminada.</translation>
    </message>
    <message>
        <source>MIG schedules</source>
        <translation>Tablas de parámetros MIG/MAG</translation>
    </message>
    <message>
        <source>One line of a MIG or MAG schedule, seam, plug or arc spot. Rows in use pooled carry the advice; rows in use shown are kept for reading, and their note says why.</source>
        <translation>Una línea de una tabla de parámetros MIG o MAG, de costura, tapón o punto por arco. Las filas de uso «pooled» sostienen el consejo; las de uso «shown» se conservan para leerlas, y su nota dice por qué.</translation>
    </message>
    <message>
        <source>Plug weld holes</source>
        <translation>Agujeros para soldadura de tapón</translation>
    </message>
    <message>
        <source>Hole to drill in the top sheet for a plug weld.</source>
        <translation>Agujero que hay que taladrar en la chapa superior para una soldadura de tapón.</translation>
    </message>
    <message>
        <source>sheet repair practice</source>
        <translation>práctica de reparación de chapa</translation>
    </message>
    <message>
        <source>printed for carbon steel sheet; taken over</source>
        <translation>impreso para chapa de acero al carbono; adoptado aquí</translation>
    </message>
    <message>
        <source>2.5 on 2.5 mm</source>
        <translation>2,5 sobre 2,5 mm</translation>
    </message>
    <message>
        <source>3.2 on 3.2 mm</source>
        <translation>3,2 sobre 3,2 mm</translation>
    </message>
    <message>
        <source>6.4 on 12.5 mm</source>
        <translation>6,4 sobre 12,5 mm</translation>
    </message>
    <message>
        <source>thickness plus 8 mm at least; at most that plus 3 mm, or 2.25 times the weld</source>
        <translation>al menos espesor más 8 mm; como máximo eso más 3 mm, o 2,25 veces la soldadura</translation>
    </message>
    <message>
        <source>Plug weld rules</source>
        <translation>Reglas para soldadura de tapón</translation>
    </message>
    <message>
        <source>Single figures that plug welds are laid out by.</source>
        <translation>Cifras sueltas con las que se disponen las soldaduras de tapón.</translation>
    </message>
    <message>
        <source>hole diameters between centres</source>
        <translation>diámetros de agujero entre centros</translation>
    </message>
    <message>
        <source>structural rule; kept for sheet as well</source>
        <translation>regla estructural; se mantiene también para chapa</translation>
    </message>
    <message>
        <source>mm above the thickness</source>
        <translation>mm por encima del espesor</translation>
    </message>
    <message>
        <source>least hole for a structural plug</source>
        <translation>agujero mínimo para un tapón estructural</translation>
    </message>
    <message>
        <source>times the weld thickness</source>
        <translation>veces el espesor de la soldadura</translation>
    </message>
    <message>
        <source>or the least hole plus 3 mm, whichever is more</source>
        <translation>o el agujero mínimo más 3 mm, lo que sea mayor</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>filled to full depth up to this thickness</source>
        <translation>lleno en toda su profundidad hasta este espesor</translation>
    </message>
    <message>
        <source>top sheet that an arc spot can go through</source>
        <translation>chapa superior que un punto por arco puede atravesar</translation>
    </message>
    <message>
        <source>MPa</source>
        <translation>MPa</translation>
    </message>
    <message>
        <source>no plug welds in quenched and tempered steel of higher yield</source>
        <translation>sin soldaduras de tapón en acero templado y revenido de mayor límite elástico</translation>
    </message>
    <message>
        <source>times the seam current</source>
        <translation>veces la corriente de costura</translation>
    </message>
    <message>
        <source>the plug has to bite into the lower sheet before it fills</source>
        <translation>el tapón tiene que agarrar en la chapa inferior antes de llenarse</translation>
    </message>
    <message>
        <source>Position factors</source>
        <translation>Factores de posición</translation>
    </message>
    <message>
        <source>What a change of position does to the current, against flat. Either a factor or a difference in amperes.</source>
        <translation>Qué efecto tiene en la corriente un cambio de posición, frente a la plana. O un factor o una diferencia en amperios.</translation>
    </message>
    <message>
        <source>overhead against flat; keep the pool small</source>
        <translation>bajo techo frente a plana; mantener pequeño el baño</translation>
    </message>
    <message>
        <source>fillets printed in PB are the base</source>
        <translation>los cordones en ángulo impresos en PB son la base</translation>
    </message>
    <message>
        <source>the pool sags towards the lower plate</source>
        <translation>el baño se descuelga hacia la placa inferior</translation>
    </message>
    <message>
        <source>as overhead, a little less strict</source>
        <translation>como bajo techo, algo menos estricto</translation>
    </message>
    <message>
        <source>small pool, or it drips</source>
        <translation>baño pequeño, o gotea</translation>
    </message>
    <message>
        <source>the pool runs back down the joint</source>
        <translation>el baño corre hacia abajo por la unión</translation>
    </message>
    <message>
        <source>travel downhill is quick; thin sheet only</source>
        <translation>el avance descendente es rápido; solo chapa fina</translation>
    </message>
    <message>
        <source>pipe uphill: as PF</source>
        <translation>tubo ascendente: como PF</translation>
    </message>
    <message>
        <source>pipe downhill: as PG</source>
        <translation>tubo descendente: como PG</translation>
    </message>
    <message>
        <source>orbital: the worst place rules</source>
        <translation>orbital: manda el peor lugar</translation>
    </message>
    <message>
        <source>Welding positions</source>
        <translation>Posiciones de soldeo</translation>
    </message>
    <message>
        <source>One position by its letters in ISO 6947, with the AWS numbers and the words people use. A word that stands with more than one position is asked back.</source>
        <translation>Una posición por sus letras en ISO 6947, con los números AWS y las palabras que usa la gente. Ante una palabra que figura en más de una posición, se pregunta cuál.</translation>
    </message>
    <message>
        <source>fillet on a level plate</source>
        <translation>cordón en ángulo sobre placa horizontal</translation>
    </message>
    <message>
        <source>level seam on an upright face</source>
        <translation>cornisa: costura horizontal en una cara vertical</translation>
    </message>
    <message>
        <source>fillet overhead</source>
        <translation>cordón en ángulo bajo techo</translation>
    </message>
    <message>
        <source>overhead</source>
        <translation>bajo techo</translation>
    </message>
    <message>
        <source>upright seam, welded upward</source>
        <translation>costura vertical, soldada hacia arriba</translation>
    </message>
    <message>
        <source>upright seam, welded downward</source>
        <translation>costura vertical, soldada hacia abajo</translation>
    </message>
    <message>
        <source>level pipe that stays put, welded upward</source>
        <translation>tubo horizontal fijo, soldado hacia arriba</translation>
    </message>
    <message>
        <source>level pipe that stays put, welded downward</source>
        <translation>tubo horizontal fijo, soldado hacia abajo</translation>
    </message>
    <message>
        <source>level pipe, welded right round</source>
        <translation>tubo horizontal, soldado todo alrededor</translation>
    </message>
    <message>
        <source>pipe at 45 degrees, welded upward</source>
        <translation>tubo a 45 grados, soldado hacia arriba</translation>
    </message>
    <message>
        <source>pipe at 45 degrees, welded downward</source>
        <translation>tubo a 45 grados, soldado hacia abajo</translation>
    </message>
    <message>
        <source>Preheat and interpass limits</source>
        <translation>Límites de precalentamiento y entre pasadas</translation>
    </message>
    <message>
        <source>What to warm a metal to before the first run and what it may not exceed between runs. An empty temperature means that no such limit is stated. A row holds above its lower thickness, up to and including the upper.</source>
        <translation>A qué calentar un metal antes de la primera pasada y qué no puede superar entre pasadas. Una temperatura vacía significa que no se indica tal límite. Una fila vale por encima de su espesor inferior, hasta el superior inclusive.</translation>
    </message>
    <message>
        <source>warmth takes the damp off and helps the root start; more than this softens the sheet for nothing</source>
        <translation>calentarla un poco quita la humedad y ayuda a arrancar la raíz; más que esto ablanda la chapa para nada</translation>
    </message>
    <message>
        <source>warmth takes the damp off and helps the root start; more than this softens the sheet for nothing; above 65 degC alloys rich in magnesium must not be held for long</source>
        <translation>calentarla un poco quita la humedad y ayuda a arrancar la raíz; más que esto ablanda la chapa para nada; por encima de 65 °C no se deben mantener mucho tiempo las aleaciones ricas en magnesio</translation>
    </message>
    <message>
        <source>every minute of warmth overages the aged temper: short, and cooler between runs</source>
        <translation>cada minuto de calor sobreenvejece el temple: breve, y más frío entre pasadas</translation>
    </message>
    <message>
        <source>slow, even warming keeps a casting from cracking; the aged temper suffers above this</source>
        <translation>calentar despacio y por igual evita que una fundición se agriete; el temple de envejecido sufre por encima de esto</translation>
    </message>
    <message>
        <source>no preheat needed with dry solid wire or rod; warm cold or damp steel until it is dry</source>
        <translation>no hace falta precalentar con hilo macizo o varilla secos; calentar un poco el acero frío o húmedo hasta que esté seco</translation>
    </message>
    <message>
        <source>thick plate: work out the preheat from the code that governs the job</source>
        <translation>placa gruesa: calcular el precalentamiento según el código que rige el trabajo</translation>
    </message>
    <message>
        <source>thin tube needs none above 15 degC; keep draughts off and let it cool slowly</source>
        <translation>el tubo fino no lo necesita por encima de 15 °C; evitar corrientes de aire y dejar enfriar despacio</translation>
    </message>
    <message>
        <source>slows the cooling so that the zone beside the bead does not turn hard</source>
        <translation>enfría más despacio, para que la zona junto al cordón no se endurezca</translation>
    </message>
    <message>
        <source>no preheat; heat held between runs costs corrosion resistance and shape</source>
        <translation>sin precalentar; el calor mantenido entre pasadas cuesta resistencia a la corrosión y forma</translation>
    </message>
    <message>
        <source>no preheat; grain grows while it stays hot</source>
        <translation>sin precalentar; el grano crece mientras sigue caliente</translation>
    </message>
    <message>
        <source>keeps the brittle zone of 430 from cracking; 409 does without</source>
        <translation>evita que se agriete la zona frágil de 430; 409 no lo necesita</translation>
    </message>
    <message>
        <source>thin copper can be welded from cold</source>
        <translation>el cobre fino se puede soldar en frío</translation>
    </message>
    <message>
        <source>copper carries the heat off faster than the arc brings it</source>
        <translation>el cobre se lleva el calor más rápido de lo que lo aporta el arco</translation>
    </message>
    <message>
        <source>no preheat; hot-short, so let it cool between runs</source>
        <translation>sin precalentar; frágil en caliente, así que dejar enfriar entre pasadas</translation>
    </message>
    <message>
        <source>no preheat; the hotter it stays the longer it must be kept under argon</source>
        <translation>sin precalentar; cuanto más caliente siga, más tiempo hay que mantenerlo bajo argón</translation>
    </message>
    <message>
        <source>Process numbers</source>
        <translation>Números de proceso</translation>
    </message>
    <message>
        <source>One process with its number in ISO 4063 and the letters AWS uses for it.</source>
        <translation>Un proceso con su número en ISO 4063 y las letras que usa AWS para él.</translation>
    </message>
    <message>
        <source>manual metal arc</source>
        <translation>arco manual con electrodo revestido</translation>
    </message>
    <message>
        <source>self-shielded tubular cored arc</source>
        <translation>hilo tubular autoprotegido</translation>
    </message>
    <message>
        <source>submerged arc</source>
        <translation>arco sumergido</translation>
    </message>
    <message>
        <source>submerged arc, solid wire</source>
        <translation>arco sumergido, hilo macizo</translation>
    </message>
    <message>
        <source>submerged arc, tubular cored</source>
        <translation>arco sumergido, hilo tubular</translation>
    </message>
    <message>
        <source>gas-shielded metal arc, the whole group</source>
        <translation>arco con hilo y gas de protección, todo el grupo</translation>
    </message>
    <message>
        <source>MIG: inert gas, solid wire</source>
        <translation>MIG: gas inerte, hilo macizo</translation>
    </message>
    <message>
        <source>MIG, inert gas, flux cored</source>
        <translation>MIG, gas inerte, hilo tubular con fundente</translation>
    </message>
    <message>
        <source>MIG, inert gas, metal cored</source>
        <translation>MIG, gas inerte, hilo tubular con polvo metálico</translation>
    </message>
    <message>
        <source>MAG: active gas, solid wire</source>
        <translation>MAG: gas activo, hilo macizo</translation>
    </message>
    <message>
        <source>MAG, active gas, flux cored</source>
        <translation>MAG, gas activo, hilo tubular con fundente</translation>
    </message>
    <message>
        <source>MAG, active gas, metal cored</source>
        <translation>MAG, gas activo, hilo tubular con polvo metálico</translation>
    </message>
    <message>
        <source>TIG: inert gas, solid filler</source>
        <translation>TIG: gas inerte, aporte macizo</translation>
    </message>
    <message>
        <source>TIG without filler, inert gas</source>
        <translation>TIG sin aporte, gas inerte</translation>
    </message>
    <message>
        <source>TIG, tubular cored filler</source>
        <translation>TIG, aporte tubular</translation>
    </message>
    <message>
        <source>TIG, reducing gas, solid filler</source>
        <translation>TIG, gas reductor, aporte macizo</translation>
    </message>
    <message>
        <source>TIG, reducing gas, tubular cored</source>
        <translation>TIG, gas reductor, aporte tubular</translation>
    </message>
    <message>
        <source>TIG, active gas</source>
        <translation>TIG, gas activo</translation>
    </message>
    <message>
        <source>plasma arc</source>
        <translation>arco de plasma</translation>
    </message>
    <message>
        <source>resistance spot</source>
        <translation>resistencia por puntos</translation>
    </message>
    <message>
        <source>oxy-acetylene</source>
        <translation>oxiacetilénico</translation>
    </message>
    <message>
        <source>friction</source>
        <translation>fricción</translation>
    </message>
    <message>
        <source>friction stir</source>
        <translation>fricción-agitación</translation>
    </message>
    <message>
        <source>laser beam</source>
        <translation>rayo láser</translation>
    </message>
    <message>
        <source>drawn arc stud, ferrule or gas</source>
        <translation>espárragos por arco, con férula o gas</translation>
    </message>
    <message>
        <source>braze welding</source>
        <translation>cobresoldeo</translation>
    </message>
    <message>
        <source>Rules for repairing sheet</source>
        <translation>Reglas para reparar chapa</translation>
    </message>
    <message>
        <source>Single figures that decide between filling holes, letting in a patch and replacing the panel, and that a patch is laid out by.</source>
        <translation>Cifras sueltas que deciden entre llenar agujeros, encajar un parche y sustituir el panel, y con las que se traza un parche.</translation>
    </message>
    <message>
        <source>What each setting does</source>
        <translation>Qué hace cada ajuste</translation>
    </message>
    <message>
        <source>What a setting of the card does, and what too little and too much of it look like, in our words from common practice.</source>
        <translation>Qué hace un ajuste de la ficha, y qué aspecto tiene cuando es demasiado poco o demasiado, con nuestras palabras, de la práctica común.</translation>
    </message>
    <message>
        <source>Melts the joint: more makes the pool wider and deeper, and faster.</source>
        <translation>Funde la unión: más hace el baño más ancho y más hondo, y más rápido.</translation>
    </message>
    <message>
        <source>The pool takes long to form and stays small; the rod balls up on top; the root stays open.</source>
        <translation>El baño tarda en formarse y queda pequeño; la varilla se hace bola encima; la raíz queda abierta.</translation>
    </message>
    <message>
        <source>The pool sags and drops through; undercut at the edges; a wide white band on aluminium, blue or grey stainless.</source>
        <translation>El baño se descuelga y cae a través; mordeduras en los bordes; una banda blanca ancha en aluminio, inoxidable azul o gris.</translation>
    </message>
    <message>
        <source>Burns the wire off and digs into the joint. It follows the wire feed: the two are one knob.</source>
        <translation>Funde el hilo y penetra en la unión. Sigue a la velocidad de hilo: las dos son un mismo mando.</translation>
    </message>
    <message>
        <source>The bead sits on top, tall and narrow, and lets go of the sheet.</source>
        <translation>El cordón queda encima, alto y estrecho, y se suelta de la chapa.</translation>
    </message>
    <message>
        <source>The hole opens before the bead is laid; undercut; heavy drip behind.</source>
        <translation>El agujero se abre antes de depositar el cordón; mordeduras; goterón grueso por detrás.</translation>
    </message>
    <message>
        <source>How far a pressed pedal can go: the welding current plus room to start a cold edge.</source>
        <translation>Hasta dónde llega el pedal pisado: la corriente de soldeo más margen para arrancar un borde frío.</translation>
    </message>
    <message>
        <source>The edge does not wet when the part is cold, and thick ends stay cold.</source>
        <translation>El borde no moja con la pieza fría, y los extremos gruesos siguen fríos.</translation>
    </message>
    <message>
        <source>The pedal grows coarse: a small move of the foot is a big change of heat.</source>
        <translation>El pedal se vuelve brusco: un pequeño movimiento del pie es un gran cambio de calor.</translation>
    </message>
    <message>
        <source>Which way the current runs: AC breaks up the oxide on aluminium and magnesium; electrode negative puts the heat into the work.</source>
        <translation>En qué sentido va la corriente: la CA rompe el óxido en aluminio y magnesio; el electrodo negativo lleva el calor a la pieza.</translation>
    </message>
    <message>
        <source>On electrode negative, aluminium keeps its skin: the pool is grey and will not flow together.</source>
        <translation>Con electrodo negativo, el aluminio conserva su película: el baño es gris y no se une.</translation>
    </message>
    <message>
        <source>On electrode positive the tungsten melts.</source>
        <translation>Con electrodo positivo se funde el tungsteno.</translation>
    </message>
    <message>
        <source>Which way the current runs: solid wire wants the gun positive, gasless cored wire mostly negative (its spool says so).</source>
        <translation>En qué sentido va la corriente: el hilo macizo pide la pistola al positivo, el tubular sin gas casi siempre al negativo (lo dice su bobina).</translation>
    </message>
    <message>
        <source>Wrong way round: spatter, a rough arc, little fusion.</source>
        <translation>Al revés: proyecciones, arco áspero, poca fusión.</translation>
    </message>
    <message>
        <source>There is no more or less here, only right or wrong.</source>
        <translation>Aquí no hay más ni menos, solo bien o mal.</translation>
    </message>
    <message>
        <source>How often the AC wave turns round: higher draws the arc together to a narrow, stiff cone.</source>
        <translation>Cuántas veces se invierte la onda de CA: más alta recoge el arco en un cono estrecho y rígido.</translation>
    </message>
    <message>
        <source>A soft wide arc that wanders off the edge and warms more sheet than it melts.</source>
        <translation>Un arco ancho y blando que se va del borde y calienta más chapa de la que funde.</translation>
    </message>
    <message>
        <source>A harsh whine; a bead so narrow that it bridges a gap badly.</source>
        <translation>Un zumbido áspero; un cordón tan estrecho que puentea mal una separación.</translation>
    </message>
    <message>
        <source>The share of the AC wave that heats the work; the rest lifts the oxide and heats the tungsten.</source>
        <translation>La parte de la onda de CA que calienta la pieza; el resto levanta el óxido y calienta el tungsteno.</translation>
    </message>
    <message>
        <source>The tungsten swells to a big ball and spits; a wide frosty band beside the bead.</source>
        <translation>El tungsteno se hincha en una bola grande y salpica; una banda ancha, blanca y mate junto al cordón.</translation>
    </message>
    <message>
        <source>Black specks and a dull, wrinkled pool that does not wet: the oxide stays.</source>
        <translation>Motas negras y un baño mate y arrugado que no moja: el óxido se queda.</translation>
    </message>
    <message>
        <source>Beats between a high and a low current: the pool freezes a little between beats.</source>
        <translation>Alterna entre una corriente alta y una baja: el baño solidifica un poco entre pulsos.</translation>
    </message>
    <message>
        <source>Without it, thin sheet gets hotter and hotter along the run.</source>
        <translation>Sin él, la chapa fina se calienta cada vez más a lo largo del cordón.</translation>
    </message>
    <message>
        <source>Beats too hard or too slow leave a chain of separate spots.</source>
        <translation>Pulsos demasiado fuertes o demasiado lentos dejan una cadena de puntos sueltos.</translation>
    </message>
    <message>
        <source>What is mixed into the tungsten: it eases starting and lets the tip carry more current.</source>
        <translation>Qué lleva mezclado el tungsteno: facilita el arranque y permite que la punta lleve más corriente.</translation>
    </message>
    <message>
        <source>A type that does not suit the current type starts badly and the tip splits.</source>
        <translation>Un tipo que no va con el tipo de corriente arranca mal y la punta se parte.</translation>
    </message>
    <message>
        <source>There is no more or less here; keep thoriated dust out of lungs, or choose another type.</source>
        <translation>Aquí no hay más ni menos; no respirar el polvo toriado, o elegir otro tipo.</translation>
    </message>
    <message>
        <source>How much current the electrode stands: thick ones stay cool, thin ones start and point better.</source>
        <translation>Cuánta corriente aguanta el electrodo: los gruesos siguen fríos, los finos arrancan y apuntan mejor.</translation>
    </message>
    <message>
        <source>The tip melts, balls and drops specks of tungsten into the weld.</source>
        <translation>La punta funde, se hace bola y suelta motas de tungsteno en la soldadura.</translation>
    </message>
    <message>
        <source>The arc wanders about a cold blunt tip and is hard to start at low current.</source>
        <translation>El arco vaga por una punta fría y roma y cuesta arrancarlo a corriente baja.</translation>
    </message>
    <message>
        <source>How the end is ground: the cone aims the arc; a small flat keeps the point from breaking off.</source>
        <translation>Cómo se afila el extremo: el cono dirige el arco; un pequeño plano evita que se rompa la punta.</translation>
    </message>
    <message>
        <source>A needle point burns off into the pool.</source>
        <translation>Una punta de aguja se quema y cae al baño.</translation>
    </message>
    <message>
        <source>A blunt or crossways ground tip lets the arc wander.</source>
        <translation>Una punta roma o afilada de través deja vagar el arco.</translation>
    </message>
    <message>
        <source>What the bead is made of: chosen for the metal pair, against cracking and for strength or colour.</source>
        <translation>De qué se hace el cordón: elegido según el par de metales, contra las grietas y por resistencia o color.</translation>
    </message>
    <message>
        <source>Without filler, or with the wrong one, 6xxx aluminium and some stainless crack down the middle.</source>
        <translation>Sin aporte, o con el equivocado, el aluminio 6xxx y algunos inoxidables se agrietan por el centro.</translation>
    </message>
    <message>
        <source>A far stronger filler than the sheet moves the crack beside the bead.</source>
        <translation>Un aporte mucho más resistente que la chapa traslada la grieta junto al cordón.</translation>
    </message>
    <message>
        <source>How much metal each dab adds, and how much heat it takes out of the pool.</source>
        <translation>Cuánto metal añade cada toque, y cuánto calor le quita al baño.</translation>
    </message>
    <message>
        <source>Endless dabbing; the rod melts before it reaches the pool.</source>
        <translation>Un sinfín de toques; la varilla funde antes de llegar al baño.</translation>
    </message>
    <message>
        <source>Each dab chills the pool; the rod sticks and knocks the tungsten.</source>
        <translation>Cada toque enfría el baño; la varilla se pega y golpea el tungsteno.</translation>
    </message>
    <message>
        <source>What the bead is made of; the spool&apos;s class must suit the metal.</source>
        <translation>De qué se hace el cordón; la clase de la bobina debe ir con el metal.</translation>
    </message>
    <message>
        <source>A wire without deoxidisers on rusty steel leaves pores.</source>
        <translation>Un hilo sin desoxidantes en acero oxidado deja poros.</translation>
    </message>
    <message>
        <source>A wire for another metal cracks or does not hold.</source>
        <translation>Un hilo para otro metal se agrieta o no aguanta.</translation>
    </message>
    <message>
        <source>How much metal comes at a current: thin wires suit thin sheet and low current.</source>
        <translation>Cuánto metal llega con una corriente: los hilos finos van con chapa fina y corriente baja.</translation>
    </message>
    <message>
        <source>The feed runs at its end and the arc is harsh.</source>
        <translation>La velocidad de hilo llega a su tope y el arco es áspero.</translation>
    </message>
    <message>
        <source>The arc stutters and the sheet burns through before the wire melts.</source>
        <translation>El arco va a tirones y la chapa se perfora antes de que funda el hilo.</translation>
    </message>
    <message>
        <source>How fast wire arrives, and with it the current.</source>
        <translation>A qué velocidad llega el hilo, y con ella la corriente.</translation>
    </message>
    <message>
        <source>The arc hisses, burns back to the tip, and the bead is thin.</source>
        <translation>El arco silba, el hilo se quema hacia el tubo de contacto y el cordón es fino.</translation>
    </message>
    <message>
        <source>The wire stubs and pushes the gun; a tall bead that sits on top.</source>
        <translation>El hilo choca y empuja la pistola; un cordón alto que queda encima.</translation>
    </message>
    <message>
        <source>Arc length: more widens and flattens the bead.</source>
        <translation>Longitud de arco: más ensancha y aplana el cordón.</translation>
    </message>
    <message>
        <source>The wire stubs and pops; a tall narrow bead.</source>
        <translation>El hilo choca y chasquea; un cordón alto y estrecho.</translation>
    </message>
    <message>
        <source>A long hissing arc, spatter, pores, undercut.</source>
        <translation>Un arco largo que silba, proyecciones, poros, mordeduras.</translation>
    </message>
    <message>
        <source>How the metal crosses the arc: in short circuits, in big drops, as a fine spray, or in pulses.</source>
        <translation>Cómo cruza el metal el arco: en cortocircuitos, en gotas grandes, en pulverización fina o en pulsos.</translation>
    </message>
    <message>
        <source>Short circuits on thick metal: the bead does not fuse.</source>
        <translation>Cortocircuitos en metal grueso: el cordón no funde con la pieza.</translation>
    </message>
    <message>
        <source>Spray on thin sheet or uphill: the pool falls out.</source>
        <translation>Spray en chapa fina o en ascendente: el baño se cae.</translation>
    </message>
    <message>
        <source>Keeps air off the pool, the wire and the hot bead.</source>
        <translation>Mantiene el aire lejos del baño, el hilo y el cordón caliente.</translation>
    </message>
    <message>
        <source>Without the right gas: pores, soot, brittle or grey metal.</source>
        <translation>Sin el gas correcto: poros, hollín, metal frágil o gris.</translation>
    </message>
    <message>
        <source>Helium or more active gas heats more than the sheet wants; active gas ruins a tungsten.</source>
        <translation>El helio o más gas activo calientan más de lo que pide la chapa; el gas activo arruina un tungsteno.</translation>
    </message>
    <message>
        <source>How much gas covers the pool.</source>
        <translation>Cuánto gas cubre el baño.</translation>
    </message>
    <message>
        <source>Pores, a grey bead, a blue or black tungsten.</source>
        <translation>Poros, un cordón gris, un tungsteno azul o negro.</translation>
    </message>
    <message>
        <source>The stream turns rough and pulls air in: pores again, and an unsteady arc.</source>
        <translation>El chorro se vuelve turbulento y arrastra aire: otra vez poros, y un arco inestable.</translation>
    </message>
    <message>
        <source>A screen in the torch that makes the stream smooth, so that the tungsten may stand out further.</source>
        <translation>Una malla en la antorcha que alisa el chorro, para que el tungsteno pueda sobresalir más.</translation>
    </message>
    <message>
        <source>Without it a long stick-out loses its cover.</source>
        <translation>Sin él, un saliente largo pierde su protección.</translation>
    </message>
    <message>
        <source>Nothing is lost but its price; a clogged screen is worse than none.</source>
        <translation>No se pierde nada salvo su precio; una malla obstruida es peor que ninguna.</translation>
    </message>
    <message>
        <source>How wide the gas covers.</source>
        <translation>Hasta qué ancho cubre el gas.</translation>
    </message>
    <message>
        <source>The hot bead beside the cup turns grey; the tungsten blackens.</source>
        <translation>El cordón caliente junto a la tobera queda gris; el tungsteno ennegrece.</translation>
    </message>
    <message>
        <source>The torch does not get into the corner, and the same flow covers thinly.</source>
        <translation>La antorcha no entra en la esquina, y el mismo caudal cubre poco.</translation>
    </message>
    <message>
        <source>How far the tungsten stands out of the cup: far enough to see and to reach the root.</source>
        <translation>Cuánto sobresale el tungsteno de la tobera: lo bastante para ver y llegar a la raíz.</translation>
    </message>
    <message>
        <source>The cup hides the pool and touches the sides.</source>
        <translation>La tobera tapa el baño y toca los lados.</translation>
    </message>
    <message>
        <source>The gas no longer reaches the pool: pores and a blue tungsten.</source>
        <translation>El gas ya no llega al baño: poros y un tungsteno azul.</translation>
    </message>
    <message>
        <source>How far the gun&apos;s contact tip is from the work; the wire between them warms.</source>
        <translation>A qué distancia de la pieza está el tubo de contacto de la pistola; el hilo entre ambos se calienta.</translation>
    </message>
    <message>
        <source>Spatter fills the nozzle; the wire burns back.</source>
        <translation>Las proyecciones llenan la tobera; el hilo se quema hacia el tubo.</translation>
    </message>
    <message>
        <source>The current falls, the cover thins: cold beads and pores.</source>
        <translation>La corriente cae, la protección se debilita: cordones fríos y poros.</translation>
    </message>
    <message>
        <source>Gas before the arc clears the air from hose and cup.</source>
        <translation>El gas antes del arco saca el aire de la manguera y la tobera.</translation>
    </message>
    <message>
        <source>The start is porous and the tip blackens.</source>
        <translation>El inicio sale poroso y la punta ennegrece.</translation>
    </message>
    <message>
        <source>Gas and time are lost.</source>
        <translation>Se pierden gas y tiempo.</translation>
    </message>
    <message>
        <source>Gas after the arc covers the hot tungsten and the end of the bead.</source>
        <translation>El gas después del arco cubre el tungsteno caliente y el final del cordón.</translation>
    </message>
    <message>
        <source>A blue or black tungsten, a porous or cracked end.</source>
        <translation>Un tungsteno azul o negro, un final poroso o agrietado.</translation>
    </message>
    <message>
        <source>Gas is lost.</source>
        <translation>Se pierde gas.</translation>
    </message>
    <message>
        <source>What stands behind the joint: a copper bar draws heat and holds the pool, gas keeps the back bright.</source>
        <translation>Qué hay detrás de la unión: una pletina de cobre saca calor y sujeta el baño, el gas mantiene brillante el reverso.</translation>
    </message>
    <message>
        <source>Thin sheet drops through; the back of stainless burns to crust.</source>
        <translation>La chapa fina se cae a través; el reverso del inoxidable se quema hasta hacer costra.</translation>
    </message>
    <message>
        <source>A bar pressed on too hard or too wide leaves the root cold.</source>
        <translation>Una pletina demasiado apretada o demasiado ancha deja fría la raíz.</translation>
    </message>
    <message>
        <source>The hole in the top sheet, through which the plug fuses to the sheet below.</source>
        <translation>El agujero en la chapa superior, a través del cual el tapón se funde con la chapa de debajo.</translation>
    </message>
    <message>
        <source>The plug fills the hole without holding the sheet below.</source>
        <translation>El tapón llena el agujero sin agarrar la chapa de debajo.</translation>
    </message>
    <message>
        <source>More to fill, more heat, more warping.</source>
        <translation>Más que llenar, más calor, más deformación.</translation>
    </message>
    <message>
        <source>How long the arc stays in one hole.</source>
        <translation>Cuánto tiempo se queda el arco en un agujero.</translation>
    </message>
    <message>
        <source>A lump that sits on top.</source>
        <translation>Un bulto que queda encima.</translation>
    </message>
    <message>
        <source>A hole in the sheet behind.</source>
        <translation>Un agujero en la chapa de detrás.</translation>
    </message>
    <message>
        <source>Follows from the length of the arc: hold it short.</source>
        <translation>Resulta de la longitud de arco: llevarlo corto.</translation>
    </message>
    <message>
        <source>The tungsten dips into the pool.</source>
        <translation>El tungsteno se mete en el baño.</translation>
    </message>
    <message>
        <source>The arc spreads and wanders, and the heat goes into the air.</source>
        <translation>El arco se abre y vaga, y el calor se va al aire.</translation>
    </message>
    <message>
        <source>What is across the arc itself; the machine&apos;s own display shows a little more.</source>
        <translation>Lo que hay en el propio arco; la pantalla de la máquina muestra algo más.</translation>
    </message>
    <message>
        <source>As with the voltage: stubbing.</source>
        <translation>Como con la tensión: el hilo choca.</translation>
    </message>
    <message>
        <source>As with the voltage: a long arc.</source>
        <translation>Como con la tensión: un arco largo.</translation>
    </message>
    <message>
        <source>How long each spot is heated.</source>
        <translation>Cuánto tiempo se calienta cada punto.</translation>
    </message>
    <message>
        <source>The pool grows, sags and drops through; the part warps.</source>
        <translation>El baño crece, se descuelga y cae a través; la pieza se deforma.</translation>
    </message>
    <message>
        <source>A thin ropy bead, undercut, a root that is not melted.</source>
        <translation>Un cordón fino y abultado, mordeduras, una raíz sin fundir.</translation>
    </message>
    <message>
        <source>Energy for each length of weld: what softens, warps and cools slowly.</source>
        <translation>Energía por cada longitud de soldadura: lo que ablanda, deforma y enfría despacio.</translation>
    </message>
    <message>
        <source>Cools fast: hardenable steel may crack beside the bead.</source>
        <translation>Enfría rápido: el acero templable puede agrietarse junto al cordón.</translation>
    </message>
    <message>
        <source>More warping, a wider soft or coarse zone, stainless that loses its resistance.</source>
        <translation>Más deformación, una zona blanda o de grano grueso más ancha, inoxidable que pierde su resistencia a la corrosión.</translation>
    </message>
    <message>
        <source>How many beads fill the joint.</source>
        <translation>Cuántos cordones llenan la unión.</translation>
    </message>
    <message>
        <source>One bead too large for its heat: cold sides, sagging.</source>
        <translation>Un cordón demasiado grande para su calor: lados fríos, descolgado.</translation>
    </message>
    <message>
        <source>Each pass adds heat and pull.</source>
        <translation>Cada pasada añade calor y tirón.</translation>
    </message>
    <message>
        <source>How dark the helmet&apos;s glass is; the floor is a rule, the start is for comfort.</source>
        <translation>Lo oscuro que es el filtro de la careta; el mínimo es una norma, el inicio es por comodidad.</translation>
    </message>
    <message>
        <source>Burnt eyes, hours later. Never below the floor.</source>
        <translation>Ojos quemados, horas después. Nunca por debajo del mínimo.</translation>
    </message>
    <message>
        <source>The pool cannot be seen, and the bead goes astray.</source>
        <translation>No se ve el baño, y el cordón se desvía.</translation>
    </message>
    <message>
        <source>Warms the joint before the arc, so that thick or hardenable metal does not chill it.</source>
        <translation>Calienta la unión antes del arco, para que el metal grueso o templable no lo enfríe.</translation>
    </message>
    <message>
        <source>Cold starts on thick aluminium; cracks beside the bead in hardenable steel.</source>
        <translation>Arranques en frío en aluminio grueso; grietas junto al cordón en acero templable.</translation>
    </message>
    <message>
        <source>Tempered and work-hardened metal softens; thin sheet burns through.</source>
        <translation>El metal con temple o endurecido por deformación se ablanda; la chapa fina se perfora.</translation>
    </message>
    <message>
        <source>How hot the part may be when the next bead begins.</source>
        <translation>Lo caliente que puede estar la pieza cuando empieza el siguiente cordón.</translation>
    </message>
    <message>
        <source>Below it there is nothing to fear but time.</source>
        <translation>Por debajo no hay nada que temer salvo el tiempo.</translation>
    </message>
    <message>
        <source>Softening, coarse grain, burn-through; stainless loses its resistance.</source>
        <translation>Ablandamiento, grano grueso, perforación; el inoxidable pierde su resistencia a la corrosión.</translation>
    </message>
    <message>
        <source>Small beads that hold the fit while the seam pulls.</source>
        <translation>Cordones pequeños que mantienen las piezas en su sitio mientras la costura tira.</translation>
    </message>
    <message>
        <source>The gap opens or closes ahead of the arc and the panel walks.</source>
        <translation>La separación se abre o se cierra por delante del arco y el panel se desplaza.</translation>
    </message>
    <message>
        <source>Many lumps to melt in again, each a place for a fault.</source>
        <translation>Muchos bultos que volver a fundir, cada uno un sitio para un defecto.</translation>
    </message>
    <message>
        <source>Torch and shielding rules</source>
        <translation>Reglas de antorcha y protección</translation>
    </message>
    <message>
        <source>Single figures for the torch and its gas. A row without a figure says that a thing is wanted, not how much of it.</source>
        <translation>Cifras sueltas para la antorcha y su gas. Una fila sin cifra dice que algo hace falta, no cuánto.</translation>
    </message>
    <message>
        <source>What a weld pulls</source>
        <translation>Cuánto tira una soldadura</translation>
    </message>
    <message>
        <source>First estimates of how much a weld shortens what it joins, unrestrained, in carbon steel. Aluminium and stainless steel pull more.</source>
        <translation>Primeras estimaciones de cuánto acorta una soldadura lo que une, sin embridar, en acero al carbono. El aluminio y el inoxidable tiran más.</translation>
    </message>
    <message>
        <source>Power source and supply</source>
        <translation>Fuente de corriente y alimentación</translation>
    </message>
    <message>
        <source>What a power source takes from the mains beyond what it gives the arc, the share of the supply current that conductors are sized for at a duty cycle, and the open-circuit limits in places with more risk of shock.</source>
        <translation>Lo que una fuente de corriente toma de la red más allá de lo que da al arco, la parte de la corriente de alimentación para la que se dimensionan los conductores con un factor de marcha, y los límites de tensión en vacío en lugares con mayor riesgo de descarga eléctrica.</translation>
    </message>
    <message>
        <source>Tack spacing and length</source>
        <translation>Distancia y longitud de los puntos</translation>
    </message>
    <message>
        <source>How far apart tacks go along a seam in sheet and plate, and how long each is. A row holds above its lower thickness, up to and including the upper.</source>
        <translation>A qué distancia van los puntos a lo largo de una costura en chapa y placa, y qué largo tiene cada uno. Una fila vale por encima de su espesor inferior, hasta el superior inclusive.</translation>
    </message>
    <message>
        <source>Thermal efficiency</source>
        <translation>Rendimiento térmico</translation>
    </message>
    <message>
        <source>Share of the arc&apos;s power that reaches the work, as one document gives it for one process and condition. Rows in use heat carry the heat picture; rows in use shown are kept for reading. The factors of EN 1011-1 belong to its own formulas only.</source>
        <translation>Parte de la potencia del arco que llega a la pieza, tal como la da un documento para un proceso y una condición. Las filas de uso «heat» sostienen la imagen térmica; las de uso «shown» se conservan para leerlas. Los factores de EN 1011-1 pertenecen solo a sus propias fórmulas.</translation>
    </message>
    <message>
        <source>TIG schedules</source>
        <translation>Tablas de parámetros TIG</translation>
    </message>
    <message>
        <source>One printed, quoted or recalled line of a TIG schedule: what current a document gives for one metal, thickness and joint. Rows in use pooled carry the advice; rows in use shown are kept for reading, and their note says why.</source>
        <translation>Una línea impresa, citada o de memoria de una tabla de parámetros TIG: qué corriente da un documento para un metal, un espesor y una unión. Las filas de uso «pooled» sostienen el consejo; las de uso «shown» se conservan para leerlas, y su nota dice por qué.</translation>
    </message>
    <message>
        <source>AWS tungsten classes</source>
        <translation>Clases AWS de tungsteno</translation>
    </message>
    <message>
        <source>One AWS A5.12 class with the colour of its 1998 edition, which is not everywhere that of ISO 6848.</source>
        <translation>Una clase AWS A5.12 con el color de su edición de 1998, que no coincide en todas partes con el de ISO 6848.</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>amarillo</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rojo</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>marrón</translation>
    </message>
    <message>
        <source>black</source>
        <translation>negro</translation>
    </message>
    <message>
        <source>gold</source>
        <translation>dorado</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>azul</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>naranja</translation>
    </message>
    <message>
        <source>Tungsten current ranges</source>
        <translation>Márgenes de corriente del tungsteno</translation>
    </message>
    <message>
        <source>The current one electrode diameter carries in one document. Printed square-wave rows and recalled rows of two standards stand side by side; they disagree, and the notes of the printed rows say by how much.</source>
        <translation>La corriente que lleva un diámetro de electrodo en un documento. Las filas impresas de onda cuadrada y las filas de memoria de dos normas están lado a lado; discrepan, y las notas de las filas impresas dicen cuánto.</translation>
    </message>
    <message>
        <source>Tungsten tip shapes</source>
        <translation>Formas de punta del tungsteno</translation>
    </message>
    <message>
        <source>One ground tip on direct current: flat at the end, full angle of the cone, and the current it holds its shape at.</source>
        <translation>Una punta afilada con corriente continua: plano del extremo, ángulo total del cono, y la corriente a la que conserva su forma.</translation>
    </message>
    <message>
        <source>Tungsten electrode types</source>
        <translation>Tipos de electrodo de tungsteno</translation>
    </message>
    <message>
        <source>One electrode type, by its ISO 6848 code. Standing is our order of preference, 1 first, where several suit.</source>
        <translation>Un tipo de electrodo, por su código ISO 6848. La posición es nuestro orden de preferencia, primero 1, cuando sirven varios.</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violeta</translation>
    </message>
    <message>
        <source>Ventilation rules</source>
        <translation>Reglas de ventilación</translation>
    </message>
    <message>
        <source>One rule on the air around the weld: when it applies, the figure, and what to do.</source>
        <translation>Una regla sobre el aire alrededor de la soldadura: cuándo se aplica, la cifra, y qué hacer.</translation>
    </message>
    <message>
        <source>space per welder</source>
        <translation>espacio por soldador</translation>
    </message>
    <message>
        <source>room volume below value</source>
        <translation>volumen del local por debajo del valor</translation>
    </message>
    <message>
        <source>mechanical ventilation required</source>
        <translation>ventilación mecánica obligatoria</translation>
    </message>
    <message>
        <source>ceiling height</source>
        <translation>altura del techo</translation>
    </message>
    <message>
        <source>below value</source>
        <translation>por debajo del valor</translation>
    </message>
    <message>
        <source>blocked cross-flow</source>
        <translation>corriente transversal bloqueada</translation>
    </message>
    <message>
        <source>confined space, partitions, balconies</source>
        <translation>espacio confinado, tabiques, balcones</translation>
    </message>
    <message>
        <source>general airflow</source>
        <translation>caudal de aire general</translation>
    </message>
    <message>
        <source>any of the three triggers, no hood or supplied air</source>
        <translation>cualquiera de los tres desencadenantes, sin campana ni aire suministrado</translation>
    </message>
    <message>
        <source>minimum rate for each welder</source>
        <translation>caudal mínimo por cada soldador</translation>
    </message>
    <message>
        <source>natural ventilation</source>
        <translation>ventilación natural</translation>
    </message>
    <message>
        <source>none of the triggers and metal not on the toxic list</source>
        <translation>ninguno de los desencadenantes y metal fuera de la lista de tóxicos</translation>
    </message>
    <message>
        <source>accepted by the federal rule, not by the UK regulator</source>
        <translation>aceptado por la norma federal, no por la autoridad del Reino Unido</translation>
    </message>
    <message>
        <source>capture velocity, movable hood</source>
        <translation>velocidad de captación, campana móvil</translation>
    </message>
    <message>
        <source>at the weld zone with the hood at its farthest</source>
        <translation>en la zona de soldadura con la campana en su punto más lejano</translation>
    </message>
    <message>
        <source>minimum, flow toward the hood</source>
        <translation>mínimo, flujo hacia la campana</translation>
    </message>
    <message>
        <source>hood airflow</source>
        <translation>caudal de aire de la campana</translation>
    </message>
    <message>
        <source>movable hood this far from the arc, with a flanged slot 76 mm wide</source>
        <translation>campana móvil a esta distancia del arco, con una ranura con pestaña de 76 mm de ancho</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>mínimo</translation>
    </message>
    <message>
        <source>fixed booth</source>
        <translation>cabina fija</translation>
    </message>
    <message>
        <source>top and at least two sides</source>
        <translation>techo y al menos dos lados</translation>
    </message>
    <message>
        <source>minimum, flow away from the welder</source>
        <translation>mínimo, flujo alejándose del soldador</translation>
    </message>
    <message>
        <source>screens</source>
        <translation>pantallas</translation>
    </message>
    <message>
        <source>bay screened all round</source>
        <translation>puesto apantallado todo alrededor</translation>
    </message>
    <message>
        <source>leave this gap under the screens</source>
        <translation>dejar este hueco bajo las pantallas</translation>
    </message>
    <message>
        <source>toxic metals or stainless MIG in an enclosed space</source>
        <translation>metales tóxicos o inoxidable con MIG en un espacio cerrado</translation>
    </message>
    <message>
        <source>Be, Cd, Cr, F, Pb, Hg, Zn or stainless by gas-shielded arc</source>
        <translation>Be, Cd, Cr, F, Pb, Hg, Zn o inoxidable con arco bajo gas</translation>
    </message>
    <message>
        <source>local extraction, else supplied air</source>
        <translation>extracción localizada; si no, aire suministrado</translation>
    </message>
    <message>
        <source>beryllium outdoors</source>
        <translation>berilio al exterior</translation>
    </message>
    <message>
        <source>supplied-air respirator only</source>
        <translation>solo con equipo respiratorio de aire suministrado</translation>
    </message>
    <message>
        <source>lead indoors</source>
        <translation>plomo en interior</translation>
    </message>
    <message>
        <source>lead in metal or coating</source>
        <translation>plomo en el metal o en el recubrimiento</translation>
    </message>
    <message>
        <source>local extraction or air-line; outdoors a certified respirator</source>
        <translation>extracción localizada o equipo con línea de aire; al exterior, un equipo respiratorio certificado</translation>
    </message>
    <message>
        <source>stainless by GMAW</source>
        <translation>inoxidable con GMAW</translation>
    </message>
    <message>
        <source>extraction; argon-rich gas (above 75 % argon) named as a way to cut chromium VI</source>
        <translation>extracción; gas rico en argón (más de 75 % de argón) citado como medio para reducir el cromo VI</translation>
    </message>
    <message>
        <source>confined space air</source>
        <translation>aire en espacio confinado</translation>
    </message>
    <message>
        <source>always</source>
        <translation>siempre</translation>
    </message>
    <message>
        <source>replace air with clean air; never with oxygen; else air-line</source>
        <translation>reponer el aire con aire limpio; nunca con oxígeno; si no, equipo con línea de aire</translation>
    </message>
    <message>
        <source>confined space watcher</source>
        <translation>vigilante de espacio confinado</translation>
    </message>
    <message>
        <source>respirators with remote air in use</source>
        <translation>equipos respiratorios con aire a distancia en uso</translation>
    </message>
    <message>
        <source>one person posted outside</source>
        <translation>una persona apostada fuera</translation>
    </message>
    <message>
        <source>oxygen floor</source>
        <translation>mínimo de oxígeno</translation>
    </message>
    <message>
        <source>enclosed space</source>
        <translation>espacio cerrado</translation>
    </message>
    <message>
        <source>do not enter below</source>
        <translation>no entrar por debajo</translation>
    </message>
    <message>
        <source>UK: any indoor welding</source>
        <translation>Reino Unido: todo soldeo en interior</translation>
    </message>
    <message>
        <source>any duration</source>
        <translation>cualquier duración</translation>
    </message>
    <message>
        <source>extraction at source; add a mask if fume remains</source>
        <translation>extracción en el foco; añadir mascarilla si queda humo</translation>
    </message>
    <message>
        <source>UK: outdoor welding</source>
        <translation>Reino Unido: soldeo al exterior</translation>
    </message>
    <message>
        <source>extraction not practical</source>
        <translation>extracción no viable</translation>
    </message>
    <message>
        <source>wear a mask</source>
        <translation>llevar mascarilla</translation>
    </message>
    <message>
        <source>UK: mask factor</source>
        <translation>Reino Unido: factor de la mascarilla</translation>
    </message>
    <message>
        <source>welding over about an hour a day or outdoors</source>
        <translation>soldar más de una hora al día, aproximadamente, o al exterior</translation>
    </message>
    <message>
        <source>usual minimum protection factor</source>
        <translation>factor de protección mínimo habitual</translation>
    </message>
    <message>
        <source>UK: extraction check</source>
        <translation>Reino Unido: revisión de la extracción</translation>
    </message>
    <message>
        <source>LEV in use</source>
        <translation>extracción localizada (LEV) en uso</translation>
    </message>
    <message>
        <source>longest gap between examinations</source>
        <translation>intervalo máximo entre revisiones</translation>
    </message>
    <message>
        <source>shield gas wind limit</source>
        <translation>límite de viento para el gas de protección</translation>
    </message>
    <message>
        <source>GMAW, GTAW, FCAW-G, EGW</source>
        <translation>GMAW, GTAW, FCAW-G, EGW</translation>
    </message>
    <message>
        <source>shelter the weld above this</source>
        <translation>por encima de esto, proteger del viento la soldadura</translation>
    </message>
    <message>
        <source>hood speed versus shield gas</source>
        <translation>velocidad en la campana frente al gas de protección</translation>
    </message>
    <message>
        <source>hood at 100 ft/min</source>
        <translation>campana a 100 ft/min</translation>
    </message>
    <message>
        <source>well under the 5 mile/h limit, so extraction at the rule value need not spoil the shield</source>
        <translation>muy por debajo del límite de 5 mile/h, así que la extracción al valor de la norma no tiene por qué estropear la protección</translation>
    </message>
    <message>
        <source>cold or wet work</source>
        <translation>trabajo con frío o mojado</translation>
    </message>
    <message>
        <source>metal near weld below value, or wet, or high wind</source>
        <translation>metal junto a la soldadura por debajo del valor, o mojado, o viento fuerte</translation>
    </message>
    <message>
        <source>do not weld (structural code)</source>
        <translation>no soldar (código estructural)</translation>
    </message>
    <message>
        <source>home garage example</source>
        <translation>ejemplo de garaje doméstico</translation>
    </message>
    <message>
        <source>6 x 3 x 2.4 m one-car garage</source>
        <translation>garaje de un coche, 6 x 3 x 2,4 m</translation>
    </message>
    <message>
        <source>fails both the volume and height test, so fan or hood needed</source>
        <translation>no cumple ni el volumen ni la altura, así que hace falta ventilador o campana</translation>
    </message>
    <message>
        <source>small hood example</source>
        <translation>ejemplo de campana pequeña</translation>
    </message>
    <message>
        <source>hood within 150 mm of arc</source>
        <translation>campana a menos de 150 mm del arco</translation>
    </message>
    <message>
        <source>about 13 times less air than the room rule</source>
        <translation>unas 13 veces menos aire que la regla del local</translation>
    </message>
    <message>
        <source>AC wave</source>
        <translation>Onda de CA</translation>
    </message>
    <message>
        <source>Where to start with AC frequency and with the share of time the electrode is negative.</source>
        <translation>Dónde empezar con la frecuencia CA y con la parte del tiempo en que el electrodo es negativo.</translation>
    </message>
    <message>
        <source>usual default</source>
        <translation>valor inicial habitual</translation>
    </message>
    <message>
        <source>both edges have to melt</source>
        <translation>tienen que fundirse ambos bordes</translation>
    </message>
    <message>
        <source>a wider arc melts the full edge without more current</source>
        <translation>un arco más ancho funde el borde entero sin más corriente</translation>
    </message>
    <message>
        <source>a narrower arc reaches the step</source>
        <translation>un arco más estrecho llega al escalón</translation>
    </message>
    <message>
        <source>a narrower arc reaches the root; 120 to 130 usual</source>
        <translation>un arco más estrecho llega a la raíz; 120 a 130 habitual</translation>
    </message>
    <message>
        <source>a narrower arc reaches the root</source>
        <translation>un arco más estrecho llega a la raíz</translation>
    </message>
    <message>
        <source>wider, softer arc on thick plate and build-up</source>
        <translation>arco más ancho y blando en placa gruesa y recargue</translation>
    </message>
    <message>
        <source>machines tied to the mains frequency</source>
        <translation>máquinas ligadas a la frecuencia de red</translation>
    </message>
    <message>
        <source>clean new sheet: narrower etch, more melting</source>
        <translation>chapa nueva y limpia: banda decapada más estrecha, más fusión</translation>
    </message>
    <message>
        <source>usual starting band</source>
        <translation>margen de inicio habitual</translation>
    </message>
    <message>
        <source>castings, weathered or anodised metal: more cleaning</source>
        <translation>fundiciones, metal envejecido a la intemperie o anodizado: más limpieza</translation>
    </message>
    <message>
        <source>equal halves preferred where oxide is heavy</source>
        <translation>mitades iguales preferidas donde hay mucho óxido</translation>
    </message>
    <message>
        <source>about the most that still cleans; a pointed tip can be kept</source>
        <translation>más o menos el máximo que aún limpia; se puede conservar una punta aguda</translation>
    </message>
    <message>
        <source>about a tenth electrode positive still cleans</source>
        <translation>más o menos una décima parte de electrodo positivo aún limpia</translation>
    </message>
    <message>
        <source>electrode rating on a balanced sine wave against a square wave, about a quarter less</source>
        <translation>valor nominal del electrodo con onda senoidal equilibrada frente a onda cuadrada, más o menos un cuarto menos</translation>
    </message>
    <message>
        <source>Length of a run</source>
        <translation>Longitud de un tramo</translation>
    </message>
    <message>
        <source>How long a seam is welded at a time, each run against the general direction, so that the sheet stays flat.</source>
        <translation>Qué longitud de una costura se suelda de cada vez, cada tramo en contra del sentido general, para que la chapa quede plana.</translation>
    </message>
    <message>
        <source>Spray transition currents</source>
        <translation>Corrientes de transición a pulverización (spray)</translation>
    </message>
    <message>
        <source>The current at which drops change from large and slow to a fine spray, by metal, wire and gas.</source>
        <translation>La corriente a la que las gotas pasan de grandes y lentas a una pulverización fina, por metal, hilo y gas.</translation>
    </message>
    <message>
        <source>Wire current ranges</source>
        <translation>Márgenes de corriente del hilo</translation>
    </message>
    <message>
        <source>The current range one wire diameter is used at, by metal and transfer.</source>
        <translation>El margen de corriente en que se usa un diámetro de hilo, por metal y transferencia.</translation>
    </message>
    <message>
        <source>Strip the zinc first, both faces, 25 to 100 mm on each side, and extract at the arc. Shivers hours later mean metal fume fever: get medical help.</source>
        <translation>Quitar antes el cinc, por ambas caras, de 25 a 100 mm a cada lado, y extraer el humo junto al arco. Escalofríos horas después significan fiebre de los metales: acudir al médico.</translation>
    </message>
    <message>
        <source>Room air alone is not enough for zinc. Use a hood at the arc, or move outside with a fume mask.</source>
        <translation>El aire del local por sí solo no basta para el cinc. Usar una campana junto al arco, o salir al exterior con mascarilla para humos.</translation>
    </message>
    <message>
        <source>Never heat cadmium: one session&apos;s fume can kill a day later with little warning. Swap the part, or have the plating stripped chemically.</source>
        <translation>No calentar nunca cadmio: el humo de una sola sesión puede matar un día después casi sin aviso. Cambiar la pieza, o hacer quitar el cadmiado por vía química.</translation>
    </message>
    <message>
        <source>Test old paint for lead before any heat. Strip it wet or chemically, 100 mm back from the joint, with a rated mask on.</source>
        <translation>Comprobar si la pintura vieja tiene plomo antes de cualquier calor. Quitarla en húmedo o con química, hasta 100 mm de la unión, con una mascarilla homologada puesta.</translation>
    </message>
    <message>
        <source>Take it to bare metal 50 mm all round, farther if the heat reaches farther. What is left burns, fumes and makes pores.</source>
        <translation>Llevarlo a metal desnudo 50 mm todo alrededor, más lejos si el calor llega más lejos. Lo que queda arde, echa humo y hace poros.</translation>
    </message>
    <message>
        <source>Scrape some off and test it away from the job. If it flares up, or lead or cadmium cannot be ruled out, strip it all first.</source>
        <translation>Rascar un poco y probarlo lejos del trabajo. Si se inflama, o no se puede descartar plomo o cadmio, quitarlo todo antes.</translation>
    </message>
    <message>
        <source>Degrease, dry, then brush. Oily metal smokes, can flash, and gives a porous bead.</source>
        <translation>Desengrasar, secar y después cepillar. El metal aceitoso humea, puede inflamarse de golpe y da un cordón poroso.</translation>
    </message>
    <message>
        <source>Cut sealer, adhesive and foam well back; heated polyurethane gives off isocyanates, which can leave asthma for life. Never weld on a foam-filled part.</source>
        <translation>Recortar sellador, adhesivo y espuma hasta bien lejos; el poliuretano calentado desprende isocianatos, que pueden dejar asma de por vida. No soldar nunca en una pieza rellena de espuma.</translation>
    </message>
    <message>
        <source>Grind the chrome and the nickel under it off first, with extraction and a mask. Welded chrome gives off chromium VI.</source>
        <translation>Quitar antes, amolando, el cromo y el níquel de debajo, con extracción y mascarilla. El cromo soldado desprende cromo VI.</translation>
    </message>
    <message>
        <source>Arc light and heat turn chlorinated cleaner into phosgene. Ban it within 61 m (200 ft), clean again with a chlorine-free one, and let it dry.</source>
        <translation>La luz y el calor del arco convierten el limpiador clorado en fosgeno. Prohibirlo a menos de 61 m (200 ft), limpiar de nuevo con uno sin cloro y dejar secar.</translation>
    </message>
    <message>
        <source>Read the can: if it is chlorinated, arc light turns its vapour into phosgene. Until you know, clean again with a chlorine-free cleaner and let it dry.</source>
        <translation>Leer el bote: si es clorado, la luz del arco convierte su vapor en fosgeno. Mientras no se sepa, limpiar de nuevo con un limpiador sin cloro y dejar secar.</translation>
    </message>
    <message>
        <source>If it was welded over, or you smell something choking: leave, rest, and get emergency care even if you feel fine. Lung damage can show hours later.</source>
        <translation>Si se soldó encima, o si se huele algo asfixiante: salir, guardar reposo y acudir a urgencias aunque uno se sienta bien. El daño pulmonar puede aparecer horas después.</translation>
    </message>
    <message>
        <source>Wipe, do not pour, and let it flash off fully. Take the can and the rags out of the bay, then weld.</source>
        <translation>Aplicar con trapo, no verter, y dejar evaporar del todo. Sacar del puesto el bote y los trapos, y después soldar.</translation>
    </message>
    <message>
        <source>Blow the gap out and warm the part until dry. Trapped cleaner can ignite, burst out or gas the weld.</source>
        <translation>Soplar la separación y calentar la pieza hasta que esté seca. El limpiador atrapado puede inflamarse, salir de golpe o llenar de gas la soldadura.</translation>
    </message>
    <message>
        <source>The fume carries chromium VI and nickel, both of which cause cancer. Extract at the arc; for MIG wear a mask as well.</source>
        <translation>El humo lleva cromo VI y níquel, y ambos causan cáncer. Extraer el humo junto al arco; con MIG/MAG, llevar además mascarilla.</translation>
    </message>
    <message>
        <source>Steel fume carries manganese, which harms the nerves. Keep your head out of the plume and extract even for short jobs.</source>
        <translation>El humo del acero lleva manganeso, que daña los nervios. Mantener la cabeza fuera de la columna de humo y extraer el humo incluso en trabajos cortos.</translation>
    </message>
    <message>
        <source>Argon arcs on aluminium make ozone, beyond the plume too, most of all with MIG. Extract, and stop if throat or chest stings.</source>
        <translation>Los arcos con argón sobre aluminio hacen ozono, también más allá de la columna de humo, sobre todo con MIG. Usar extracción, y parar si pican la garganta o el pecho.</translation>
    </message>
    <message>
        <source>Hot aluminium looks cold. Mark it hot and keep gloves on.</source>
        <translation>El aluminio caliente parece frío. Marcarlo como caliente y no quitarse los guantes.</translation>
    </message>
    <message>
        <source>Bright metal throws ultraviolet up under the helmet: cover neck and wrists. Half a metre from a TIG arc on aluminium bare skin has 3.3 to 33 seconds a day.</source>
        <translation>El metal brillante refleja ultravioleta hacia arriba, bajo la careta: cubrir cuello y muñecas. A medio metro de un arco TIG sobre aluminio, la piel desnuda tiene de 3,3 a 33 segundos al día.</translation>
    </message>
    <message>
        <source>Clear away all dust and swarf: magnesium burns. Dry sand or a class D extinguisher to hand; no water, foam or carbon dioxide.</source>
        <translation>Retirar todo el polvo y las virutas: el magnesio arde. Arena seca o un extintor de clase D a mano; nada de agua, espuma ni dióxido de carbono.</translation>
    </message>
    <message>
        <source>Fine titanium dust burns or explodes. Sweep it up and keep it away from grinding sparks.</source>
        <translation>El polvo fino de titanio arde o explota. Barrerlo y mantenerlo lejos de las chispas de amolar.</translation>
    </message>
    <message>
        <source>Copper and zinc fume give metal fume fever; brass boils its zinc off. Extract at the arc.</source>
        <translation>El humo de cobre y de cinc da fiebre de los metales; el latón desprende su cinc hirviendo. Extraer el humo junto al arco.</translation>
    </message>
    <message>
        <source>Spring bronze and non-sparking tools may hold beryllium: traces of its dust scar the lungs for life. Unless you are sure it is free of it, do not weld, grind or sand it.</source>
        <translation>El bronce para muelles y las herramientas antichispa pueden contener berilio: trazas de su polvo dejan cicatrices en los pulmones de por vida. Si no hay certeza de que no lo contienen, no soldarlos, amolarlos ni lijarlos.</translation>
    </message>
    <message>
        <source>Keep marked brushes, discs and files for each metal. Steel traces rust stainless and spoil aluminium welds.</source>
        <translation>Tener cepillos, discos y limas marcados para cada metal. Los restos de acero oxidan el inoxidable y estropean las soldaduras de aluminio.</translation>
    </message>
    <message>
        <source>Aluminium clogs plain grinding wheels until they burst. Use discs made for it, or a file.</source>
        <translation>El aluminio emboza las muelas corrientes hasta que revientan. Usar discos hechos para él, o una lima.</translation>
    </message>
    <message>
        <source>The arc softens or embrittles metal that was heat-treated. Check that the part may be welded at all before the first tack.</source>
        <translation>El arco ablanda o vuelve frágil el metal tratado térmicamente. Comprobar que la pieza se puede soldar siquiera, antes del primer punto.</translation>
    </message>
    <message>
        <source>Its grinding dust is radioactive and must not be breathed or eaten. Grind with extraction, bag the dust, wash hands; better, change to a lanthanated or ceriated type.</source>
        <translation>Su polvo de afilado es radiactivo y no se debe respirar ni tragar. Afilar con extracción, meter el polvo en una bolsa, lavarse las manos; mejor, cambiar a un tipo con lantano o cerio.</translation>
    </message>
    <message>
        <source>TIG needs an inert gas. Oxygen or carbon dioxide burns the tungsten at once.</source>
        <translation>TIG necesita un gas inerte. El oxígeno o el dióxido de carbono queman el tungsteno al instante.</translation>
    </message>
    <message>
        <source>Carbon dioxide shielding makes some carbon monoxide. Extract; a headache means get out.</source>
        <translation>El gas de dióxido de carbono forma algo de monóxido de carbono. Usar extracción; un dolor de cabeza significa salir de ahí.</translation>
    </message>
    <message>
        <source>If you purge the back, lead the gas to open air. Never put your head near a purge outlet or into a purged part before it is flushed.</source>
        <translation>Si se purga el reverso, llevar el gas al aire libre. No poner nunca la cabeza junto a una salida de purga ni dentro de una pieza purgada antes de ventilarla.</translation>
    </message>
    <message>
        <source>All welding fume counts as cancer-causing. Extract at the arc even for a tack; open doors alone do not count.</source>
        <translation>Todo humo de soldadura cuenta como cancerígeno. Extraer el humo junto al arco incluso para un punto; las puertas abiertas por sí solas no cuentan.</translation>
    </message>
    <message>
        <source>Shielding gas sinks and gives no warning: a few breaths can drop you. Ventilate from low down, meter the oxygen (19.5 % at least), and never go in after a casualty.</source>
        <translation>El gas de protección se hunde y no avisa: unas pocas respiraciones pueden derribar a cualquiera. Ventilar desde lo más bajo, medir el oxígeno (al menos 19,5 %) y no entrar nunca a rescatar a una víctima.</translation>
    </message>
    <message>
        <source>A confined space needs a written plan, clean air supplied, a trained watcher outside and a way to pull you out. Cylinders and machine stay outside; never freshen the air with oxygen.</source>
        <translation>Un espacio confinado exige un plan escrito, aire limpio suministrado, un vigilante instruido fuera y un medio para sacar a quien está dentro. Las botellas y la máquina quedan fuera; no renovar nunca el aire con oxígeno.</translation>
    </message>
    <message>
        <source>Above 2.2 m/s (5 mph) of wind the gas shield fails. Screen the joint; more flow will not fix it.</source>
        <translation>Por encima de 2,2 m/s (5 mph) de viento falla la protección de gas. Poner pantallas a la unión; más caudal no lo arregla.</translation>
    </message>
    <message>
        <source>Do not weld or cut a tank, drum or can: emptied and rinsed ones still explode. Leave it to a tank specialist or fit a new one.</source>
        <translation>No soldar ni cortar un tanque, bidón o lata: también vacíos y enjuagados explotan. Dejarlo a un especialista en tanques o montar uno nuevo.</translation>
    </message>
    <message>
        <source>Never weld on or heat a sealed or pressurised item: cylinder, damper, gas strut, inflator, air tank, wheel with its tyre on. Take it off the job first.</source>
        <translation>No soldar ni calentar nunca una pieza sellada o a presión: botella, amortiguador, muelle de gas, inflador, depósito de aire, rueda con el neumático puesto. Desmontarla antes de empezar.</translation>
    </message>
    <message>
        <source>Vent every closed cavity before heat, with a hole clear of the joint. Trapped air or moisture can burst it or blow out the last of the bead.</source>
        <translation>Dar salida de aire a toda cavidad cerrada antes del calor, con un agujero apartado de la unión. El aire o la humedad atrapados pueden reventarla o expulsar el final del cordón.</translation>
    </message>
    <message>
        <source>Ignition off, both battery leads off, negative first, and kept apart. Clamp bare metal by the joint so that no bearing, module or wire lies in the path.</source>
        <translation>Contacto quitado, los dos cables de la batería desconectados, primero el negativo, y apartados. Poner la pinza en metal desnudo junto a la unión, para que ningún rodamiento, módulo ni cable quede en el camino.</translation>
    </message>
    <message>
        <source>Airbags, belt tensioners, fuel lines, brake lines and charged air conditioning near the weld come off or are made safe first, as the vehicle&apos;s manual says. Hybrid or electric: a trained person isolates the battery.</source>
        <translation>Airbags, tensores de cinturón, tuberías de combustible, tuberías de freno y aire acondicionado cargado cerca de la soldadura se desmontan o se aseguran antes, como dice el manual del vehículo. Híbrido o eléctrico: una persona formada aísla la batería.</translation>
    </message>
    <message>
        <source>Rails, sills, pillars, seat and belt mountings: the maker&apos;s repair method or a licensed shop only. Heat ruins high-strength steel and a neat bead proves nothing.</source>
        <translation>Largueros, estribos, pilares, anclajes de asientos y cinturones: solo el método de reparación del fabricante o un taller autorizado. El calor arruina el acero de alta resistencia y un cordón bonito no prueba nada.</translation>
    </message>
    <message>
        <source>Take out trim, carpet and sound deadening, lay a fire blanket, and post a watcher behind the panel.</source>
        <translation>Quitar guarnecidos, moqueta e insonorizante, tender una manta ignífuga y apostar un vigilante detrás del panel.</translation>
    </message>
    <message>
        <source>A high-frequency start can kill electronics nearby. Use a lift start near a vehicle&apos;s modules.</source>
        <translation>Un cebado por alta frecuencia puede destruir la electrónica cercana. Usar cebado por contacto (lift) cerca de los módulos de un vehículo.</translation>
    </message>
    <message>
        <source>If this weld fails it can hurt someone: advised settings alone are not enough. Have a qualified welder do it to a written procedure and have it inspected.</source>
        <translation>Si esta soldadura falla puede herir a alguien: los ajustes aconsejados por sí solos no bastan. Que la haga un soldador cualificado según un procedimiento escrito, y hacerla inspeccionar.</translation>
    </message>
    <message>
        <source>Never weld rated hooks, shackles, chains, jacks or stands. Replace them.</source>
        <translation>No soldar nunca ganchos, grilletes, cadenas, gatos o caballetes con carga nominal. Sustituirlos.</translation>
    </message>
    <message>
        <source>Follow the rulebook of the event: tube, steel, fully penetrated gas-shielded welds right round, inspection. Good looks are not proof.</source>
        <translation>Seguir el reglamento de la competición: tubo, acero, soldaduras bajo gas con penetración completa todo alrededor, inspección. El buen aspecto no es prueba.</translation>
    </message>
    <message>
        <source>Helmet at or above the filter floor, safety glasses under it, all skin covered, others screened from the arc. Gritty eyes hours later are arc eye: see a doctor if it does not fade in a day.</source>
        <translation>Careta con el tono mínimo del filtro o más oscura, gafas de seguridad debajo, toda la piel cubierta, los demás protegidos del arco con pantallas. Ojos con sensación de arena horas después son oftalmía por arco: ir al médico si no se pasa en un día.</translation>
    </message>
    <message>
        <source>Clear or cover everything that burns within 11 m (35 ft), also behind the panel, with an extinguisher in reach. Stay at least half an hour after the last arc, better a whole one, and look for smoulder.</source>
        <translation>Retirar o cubrir todo lo que arde a menos de 11 m (35 ft), también detrás del panel, con un extintor al alcance. Quedarse al menos media hora tras el último arco, mejor una entera, y buscar rescoldos.</translation>
    </message>
    <message>
        <source>No welding in rain, on a wet floor, or in wet gloves or clothes. Stand dry and insulated, and switch off before touching tungsten, tip or wire.</source>
        <translation>Nada de soldar con lluvia, en suelo mojado, ni con guantes o ropa mojados. Estar en seco y aislado, y apagar antes de tocar tungsteno, tubo de contacto o hilo.</translation>
    </message>
    <message>
        <source>Chain the cylinder upright, away from sparks and out of the welding circuit. Shut its valve whenever work stops.</source>
        <translation>Encadenar la botella de pie, lejos de chispas y fuera del circuito de soldeo. Cerrar su válvula siempre que se pare el trabajo.</translation>
    </message>
    <message>
        <source>With a pacemaker, defibrillator or pump, yours or a helper&apos;s: no arc before the implant clinic has agreed.</source>
        <translation>Con marcapasos, desfibrilador o bomba, propios o de un ayudante: ningún arco antes de que la clínica del implante lo haya aceptado.</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texto</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>Drawings</source>
        <translation>Dibujos</translation>
    </message>
</context>
<context>
    <name>Actions</name>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation>Guardar como P&amp;DF…</translation>
    </message>
    <message>
        <source>&amp;Copy as text</source>
        <translation>&amp;Copiar como texto</translation>
    </message>
    <message>
        <source>&amp;Start over</source>
        <translation>&amp;Empezar de nuevo</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unidades</translation>
    </message>
    <message>
        <source>&amp;Larger text</source>
        <translation>Texto más &amp;grande</translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation>Texto más &amp;pequeño</translation>
    </message>
    <message>
        <source>&amp;Usual text size</source>
        <translation>Tamaño de texto &amp;normal</translation>
    </message>
    <message>
        <source>&amp;Go to…</source>
        <translation>&amp;Ir a…</translation>
    </message>
    <message>
        <source>Go to the &amp;metal</source>
        <translation>Ir al &amp;metal</translation>
    </message>
    <message>
        <source>Go to the &amp;thickness</source>
        <translation>Ir al &amp;espesor</translation>
    </message>
    <message>
        <source>Between request and &amp;card</source>
        <translation>Entre pe&amp;tición y ficha</translation>
    </message>
    <message>
        <source>What went &amp;wrong…</source>
        <translation>Qué salió &amp;mal…</translation>
    </message>
    <message>
        <source>Large &amp;figures</source>
        <translation>Ci&amp;fras grandes</translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Text +</source>
        <translation>Texto +</translation>
    </message>
    <message>
        <source>Text −</source>
        <translation>Texto −</translation>
    </message>
    <message>
        <source>&amp;Shortcuts</source>
        <translation>&amp;Atajos</translation>
    </message>
    <message>
        <source>&amp;Guide</source>
        <translation>&amp;Guía</translation>
    </message>
    <message>
        <source>&amp;How figures are made</source>
        <translation>&amp;Cómo se hacen las cifras</translation>
    </message>
    <message>
        <source>Open the &amp;demo job</source>
        <translation>Abrir el trabajo &amp;demo</translation>
    </message>
    <message>
        <source>&amp;About Welds</source>
        <translation>Acerca de &amp;Welds</translation>
    </message>
    <message>
        <source>&amp;Units: {words}</source>
        <translation>&amp;Unidades: {words}</translation>
    </message>
    <message>
        <source>&amp;Follow the system</source>
        <translation>&amp;Según el sistema</translation>
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
        <source>&amp;High contrast</source>
        <translation>&amp;Alto contraste</translation>
    </message>
    <message>
        <source>The &amp;system&apos;s language</source>
        <translation>El idioma del &amp;sistema</translation>
    </message>
    <message>
        <source>&amp;Card</source>
        <translation>&amp;Ficha</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Colores</translation>
    </message>
    <message>
        <source>L&amp;anguage</source>
        <translation>I&amp;dioma</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
</context>
<context>
    <name>BandPair</name>
    <message>
        <source>Tables {table}; learned from your welds {learned}</source>
        <translation>Tablas: {table}; aprendido de las soldaduras propias: {learned}</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tablas</translation>
    </message>
    <message>
        <source>Your welds</source>
        <translation>Registro</translation>
    </message>
</context>
<context>
    <name>BenchPresenter</name>
    <message>
        <source>No machine yet: no card is limited. Add one: it starts as a common kind.</source>
        <translation>Aún no hay máquina: ninguna ficha queda limitada. Añadir una: empieza como un tipo corriente.</translation>
    </message>
    <message>
        <source>Not saved yet: the cards still follow the bench as it was.</source>
        <translation>Aún sin guardar: las fichas siguen el taller tal como estaba.</translation>
    </message>
    <message>
        <source>Saved. Every card follows this bench.</source>
        <translation>Guardado. Todas las fichas siguen este taller.</translation>
    </message>
    <message>
        <source>Put right what is marked, then it shows here.</source>
        <translation>Corregir lo marcado; entonces aparece aquí.</translation>
    </message>
    <message>
        <source>The set-up page holds no request that can be read.</source>
        <translation>La página de ajuste no tiene ninguna petición que se pueda leer.</translation>
    </message>
    <message>
        <source>In the way:</source>
        <translation>Lo impide:</translation>
    </message>
</context>
<context>
    <name>BenchView</name>
    <message>
        <source>Machines</source>
        <translation>Máquinas</translation>
    </message>
    <message>
        <source>&amp;Use this machine</source>
        <translation>&amp;Usar esta máquina</translation>
    </message>
    <message>
        <source>&amp;Remove it</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>Kind to add</source>
        <translation>Tipo a añadir</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>&amp;Añadir</translation>
    </message>
    <message>
        <source>U&amp;ndo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>Take the last change back (Ctrl+Z)</source>
        <translation>Deshacer el último cambio (Ctrl+Z)</translation>
    </message>
    <message>
        <source>&amp;Save the bench</source>
        <translation>&amp;Guardar el taller</translation>
    </message>
    <message>
        <source>What the card would say now</source>
        <translation>Qué diría ahora la ficha</translation>
    </message>
    <message>
        <source>{name}, in use</source>
        <translation>{name}, en uso</translation>
    </message>
</context>
<context>
    <name>BenchWords</name>
    <message>
        <source>Machine</source>
        <translation>Máquina</translation>
    </message>
    <message>
        <source>Current and duty cycle</source>
        <translation>Corriente y factor de marcha</translation>
    </message>
    <message>
        <source>AC: frequency and balance</source>
        <translation>CA: frecuencia y balance</translation>
    </message>
    <message>
        <source>Wire and voltage</source>
        <translation>Hilo y tensión</translation>
    </message>
    <message>
        <source>Own dials and switches</source>
        <translation>Mandos y selectores propios</translation>
    </message>
    <message>
        <source>Torch or gun</source>
        <translation>Antorcha o pistola</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Alimentación</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Processes</source>
        <translation>Procesos</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Pedal</source>
        <translation>Pedal</translation>
    </message>
    <message>
        <source>Pulse</source>
        <translation>Pulsado</translation>
    </message>
    <message>
        <source>Hot start</source>
        <translation>Hot start</translation>
    </message>
    <message>
        <source>Lowest [A]</source>
        <translation>Mínima [A]</translation>
    </message>
    <message>
        <source>Highest [A]</source>
        <translation>Máxima [A]</translation>
    </message>
    <message>
        <source>Step [A]</source>
        <translation>Paso [A]</translation>
    </message>
    <message>
        <source>Only these [A]</source>
        <translation>Solo estos [A]</translation>
    </message>
    <message>
        <source>Duty cycle</source>
        <translation>Fact. de marcha</translation>
    </message>
    <message>
        <source>Open, DC [V]</source>
        <translation>Vacío, CC [V]</translation>
    </message>
    <message>
        <source>Open, AC [V]</source>
        <translation>Vacío, CA [V]</translation>
    </message>
    <message>
        <source>Welds on AC</source>
        <translation>Suelda en CA</translation>
    </message>
    <message>
        <source>Wave</source>
        <translation>Onda</translation>
    </message>
    <message>
        <source>Lowest [Hz]</source>
        <translation>Mínima [Hz]</translation>
    </message>
    <message>
        <source>Highest [Hz]</source>
        <translation>Máxima [Hz]</translation>
    </message>
    <message>
        <source>Step [Hz]</source>
        <translation>Paso [Hz]</translation>
    </message>
    <message>
        <source>Only these [Hz]</source>
        <translation>Solo estos [Hz]</translation>
    </message>
    <message>
        <source>Least negative [%]</source>
        <translation>Negativo mín. [%]</translation>
    </message>
    <message>
        <source>Most negative [%]</source>
        <translation>Negativo máx. [%]</translation>
    </message>
    <message>
        <source>Step [%]</source>
        <translation>Paso [%]</translation>
    </message>
    <message>
        <source>Only these [%]</source>
        <translation>Solo estos [%]</translation>
    </message>
    <message>
        <source>Feed from [{unit}]</source>
        <translation>Hilo desde [{unit}]</translation>
    </message>
    <message>
        <source>Feed to [{unit}]</source>
        <translation>Hilo hasta [{unit}]</translation>
    </message>
    <message>
        <source>Voltage from [V]</source>
        <translation>Tensión desde [V]</translation>
    </message>
    <message>
        <source>Voltage to [V]</source>
        <translation>Tensión hasta [V]</translation>
    </message>
    <message>
        <source>Only these [V]</source>
        <translation>Solo estos [V]</translation>
    </message>
    <message>
        <source>Wires it takes</source>
        <translation>Hilos que admite</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>AC frequency</source>
        <translation>Frecuencia CA</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Balance</translation>
    </message>
    <message>
        <source>Wire feed</source>
        <translation>Vel. de hilo</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Tensión</translation>
    </message>
    <message>
        <source>Cooling</source>
        <translation>Refrigeración</translation>
    </message>
    <message>
        <source>Rated [A]</source>
        <translation>Nominal [A]</translation>
    </message>
    <message>
        <source>Rated on AC [A]</source>
        <translation>Nominal en CA [A]</translation>
    </message>
    <message>
        <source>At duty [%]</source>
        <translation>F. de marcha [%]</translation>
    </message>
    <message>
        <source>Your outlet [V]</source>
        <translation>Toma de red [V]</translation>
    </message>
    <message>
        <source>Phases</source>
        <translation>Fases</translation>
    </message>
    <message>
        <source>Breaker or fuse [A]</source>
        <translation>Disy./fusible [A]</translation>
    </message>
    <message>
        <source>Cord rated [A]</source>
        <translation>Cable, nominal [A]</translation>
    </message>
    <message>
        <source>Cord [mm²]</source>
        <translation>Cable [mm²]</translation>
    </message>
    <message>
        <source>Cord length [{unit}]</source>
        <translation>Long. del cable [{unit}]</translation>
    </message>
    <message>
        <source>Generator [kVA]</source>
        <translation>Generador [kVA]</translation>
    </message>
    <message>
        <source>Made for [V]</source>
        <translation>Hecha para [V]</translation>
    </message>
    <message>
        <source>Mains plug</source>
        <translation>Enchufe de red</translation>
    </message>
    <message>
        <source>Efficiency</source>
        <translation>Rendimiento</translation>
    </message>
    <message>
        <source>Power factor</source>
        <translation>Factor de potencia</translation>
    </message>
    <message>
        <source>12 AWG is 3.31</source>
        <translation>12 AWG son 3.31</translation>
    </message>
    <message>
        <source>{gas}, {unit} left</source>
        <translation>{gas}, quedan {unit}</translation>
    </message>
    <message>
        <source>full bottle times psi over full psi</source>
        <translation>botella llena por psi entre psi de llena</translation>
    </message>
    <message>
        <source>water volume times bar</source>
        <translation>volumen de agua por bar</translation>
    </message>
    <message>
        <source>Tungsten</source>
        <translation>Tungsteno</translation>
    </message>
    <message>
        <source>Filler rods</source>
        <translation>Varillas de aporte</translation>
    </message>
    <message>
        <source>Wire spools</source>
        <translation>Bobinas de hilo</translation>
    </message>
    <message>
        <source>Gases</source>
        <translation>Gases</translation>
    </message>
    <message>
        <source>Cups</source>
        <translation>Toberas</translation>
    </message>
    <message>
        <source>Cups for a gas lens</source>
        <translation>Toberas para difusor</translation>
    </message>
    <message>
        <source>Gas lenses, by tungsten</source>
        <translation>Difusores, por tungsteno</translation>
    </message>
    <message>
        <source>Collets, by tungsten</source>
        <translation>Pinzas, por tungsteno</translation>
    </message>
    <message>
        <source>Backing bars</source>
        <translation>Pletinas de respaldo</translation>
    </message>
    <message>
        <source>Brushes kept for</source>
        <translation>Cepillos reservados para</translation>
    </message>
    <message>
        <source>Grinding wheels kept for</source>
        <translation>Muelas reservadas para</translation>
    </message>
    <message>
        <source>Helmet shades</source>
        <translation>Tonos de careta</translation>
    </message>
    <message>
        <source>Gas lens there</source>
        <translation>Hay difusor</translation>
    </message>
</context>
<context>
    <name>CardOutput</name>
    <message>
        <source>The card is on its way to the printer.</source>
        <translation>La ficha va camino de la impresora.</translation>
    </message>
    <message>
        <source>Save the card as PDF</source>
        <translation>Guardar la ficha como PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The PDF was not written</source>
        <translation>No se escribió el PDF</translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation>Guardado como {path}.</translation>
    </message>
    <message>
        <source>The card is on the clipboard as text.</source>
        <translation>La ficha está en el portapapeles como texto.</translation>
    </message>
    <message>
        <source>Its stop cautions are not ticked yet: the boxes stand open on it.</source>
        <translation>Sus advertencias de ALTO aún no están marcadas: en ella las casillas van vacías.</translation>
    </message>
</context>
<context>
    <name>CardPanel</name>
    <message>
        <source>Take it back</source>
        <translation>Deshacerlo</translation>
    </message>
    <message>
        <source>The card below is for the request before this one.</source>
        <translation>La ficha de abajo es de la petición anterior a esta.</translation>
    </message>
    <message>
        <source>OLD CARD</source>
        <translation>FICHA VIEJA</translation>
    </message>
    <message>
        <source>NO CARD</source>
        <translation>SIN FICHA</translation>
    </message>
    <message>
        <source>NOT READY: {count} to tick</source>
        <translation>NO LISTO: {count} por marcar</translation>
    </message>
    <message>
        <source>READY</source>
        <translation>LISTO</translation>
    </message>
    <message>
        <source>State of the card: {words}</source>
        <translation>Estado de la ficha: {words}</translation>
    </message>
    <message>
        <source>Log this weld…</source>
        <translation>Registrar soldadura…</translation>
    </message>
    <message>
        <source>Write down what was set and what came of it (Ctrl+L)</source>
        <translation>Anotar qué se ajustó y qué resultó (Ctrl+L)</translation>
    </message>
    <message>
        <source>What went wrong…</source>
        <translation>Qué salió mal…</translation>
    </message>
    <message>
        <source>From the looks of a bead to its cause and the change of setting (F7)</source>
        <translation>Del aspecto de un cordón a su causa y al cambio de ajuste (F7)</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Advertencias</translation>
    </message>
    <message>
        <source>The joint with the torch</source>
        <translation>La unión con la antorcha</translation>
    </message>
    <message>
        <source>The AC wave</source>
        <translation>La onda de CA</translation>
    </message>
    <message>
        <source>Before the arc, in this order</source>
        <translation>Antes del arco, en este orden</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Comprobado</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Time runs to the right; up is electrode positive.</source>
        <translation>El tiempo va hacia la derecha; arriba es electrodo positivo.</translation>
    </message>
    <message>
        <source>{weak} of {all} figures have no published source behind them and say so: common practice or memory. Try them on scrap first.</source>
        <translation>{weak} de {all} cifras no tienen detrás ninguna fuente publicada y así lo dicen: práctica común o memoria. Probarlas antes en recortes.</translation>
    </message>
</context>
<context>
    <name>CautionBar</name>
    <message>
        <source>STOP. Tick each of these before you strike an arc.</source>
        <translation>ALTO. Marcar cada una de estas advertencias antes de cebar el arco.</translation>
    </message>
    <message>
        <source>Done / seen</source>
        <translation>Hecho / visto</translation>
    </message>
    <message>
        <source>Done or seen: {text}</source>
        <translation>Hecho o visto: {text}</translation>
    </message>
</context>
<context>
    <name>CautionFold</name>
    <message>
        <source>In full</source>
        <translation>Completo</translation>
    </message>
    <message>
        <source>{name} in full</source>
        <translation>{name}: completo</translation>
    </message>
</context>
<context>
    <name>CautionStrip</name>
    <message>
        <source>Cautions</source>
        <translation>Advertencias</translation>
    </message>
    <message>
        <source>In full</source>
        <translation>Completo</translation>
    </message>
    <message>
        <source>Cautions in full</source>
        <translation>Advertencias: completo</translation>
    </message>
    <message>
        <source>STOP: {text}</source>
        <translation>ALTO: {text}</translation>
    </message>
    <message>
        <source>Take care: {first}</source>
        <translation>Cuidado: {first}</translation>
    </message>
</context>
<context>
    <name>ColumnHeader</name>
    <message>
        <source>base</source>
        <translation>base</translation>
    </message>
    <message>
        <source>no card</source>
        <translation>sin ficha</translation>
    </message>
</context>
<context>
    <name>CompareOutput</name>
    <message>
        <source>Save the comparison</source>
        <translation>Guardar la comparación</translation>
    </message>
    <message>
        <source>The comparison is on the clipboard as text.</source>
        <translation>La comparación está en el portapapeles como texto.</translation>
    </message>
    <message>
        <source>Save this column&apos;s card</source>
        <translation>Guardar la ficha de esta columna</translation>
    </message>
    <message>
        <source>Save the picture</source>
        <translation>Guardar la imagen</translation>
    </message>
    <message>
        <source>Save the wall chart</source>
        <translation>Guardar la tabla de pared</translation>
    </message>
    <message>
        <source>The file was not written</source>
        <translation>No se escribió el archivo</translation>
    </message>
    <message>
        <source>{name}: its ending has to be one of {allowed}.</source>
        <translation>{name}: su extensión tiene que ser una de estas: {allowed}.</translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation>Guardado como {path}.</translation>
    </message>
    <message>
        <source>The page is on its way to the printer.</source>
        <translation>La página va camino de la impresora.</translation>
    </message>
</context>
<context>
    <name>ComparePresenter</name>
    <message>
        <source>Eight columns are on show; remove one first.</source>
        <translation>Se muestran ocho columnas; quitar antes una.</translation>
    </message>
</context>
<context>
    <name>CompareView</name>
    <message>
        <source>Show as</source>
        <translation>Mostrar como</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Current over thickness</source>
        <translation>Corriente/espesor</translation>
    </message>
    <message>
        <source>AC waves</source>
        <translation>Ondas de CA</translation>
    </message>
    <message>
        <source>Save this &amp;view…</source>
        <translation>Guardar vis&amp;ta…</translation>
    </message>
    <message>
        <source>&amp;Wall chart…</source>
        <translation>Tabla de &amp;pared…</translation>
    </message>
    <message>
        <source>Thickness down, joint across, for the base&apos;s metal and process</source>
        <translation>Espesor hacia abajo, unión a lo ancho, para el metal y el proceso de la base</translation>
    </message>
    <message>
        <source>Your machine and shelf</source>
        <translation>Máquina y estante propios</translation>
    </message>
    <message>
        <source>Machine (*.yaml *.yml)</source>
        <translation>Máquina (*.yaml *.yml)</translation>
    </message>
    <message>
        <source>Fold {count} equal rows</source>
        <translation>Plegar {count} filas iguales</translation>
    </message>
    <message>
        <source>Show {count} equal rows</source>
        <translation>Mostrar {count} filas iguales</translation>
    </message>
</context>
<context>
    <name>ComparisonModel</name>
    <message>
        <source>the base</source>
        <translation>la base</translation>
    </message>
    <message>
        <source>the same as the base</source>
        <translation>igual que la base</translation>
    </message>
    <message>
        <source>more than the base: {change}</source>
        <translation>más que la base: {change}</translation>
    </message>
    <message>
        <source>less than the base: {change}</source>
        <translation>menos que la base: {change}</translation>
    </message>
    <message>
        <source>other than the base: {change}</source>
        <translation>distinto de la base: {change}</translation>
    </message>
    <message>
        <source>not used here, {change}</source>
        <translation>no se usa aquí, {change}</translation>
    </message>
</context>
<context>
    <name>ComparisonTable</name>
    <message>
        <source>Settings side by side</source>
        <translation>Ajustes lado a lado</translation>
    </message>
</context>
<context>
    <name>CurvePage</name>
    <message>
        <source>Point at the picture, or use the arrow keys in it, to read values.</source>
        <translation>Para leer valores, señalar en la imagen o usar en ella las flechas.</translation>
    </message>
    <message>
        <source>&amp;Show everything</source>
        <translation>Mostrar t&amp;odo</translation>
    </message>
    <message>
        <source>&amp;Around the base</source>
        <translation>En torno a la ba&amp;se</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>no answer in the tables at this thickness</source>
        <translation>sin respuesta en las tablas para este espesor</translation>
    </message>
    <message>
        <source>Current over thickness, a band for each column</source>
        <translation>Corriente según espesor, una franja por columna</translation>
    </message>
</context>
<context>
    <name>DetailPanel</name>
    <message>
        <source>The weld in hand</source>
        <translation>La soldadura elegida</translation>
    </message>
    <message>
        <source>see it in full</source>
        <translation>verla entera</translation>
    </message>
    <message>
        <source>No weld in hand.</source>
        <translation>Ninguna soldadura elegida.</translation>
    </message>
    <message>
        <source>Faults: {faults}</source>
        <translation>Defectos: {faults}</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>&amp;Cambiar…</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>Procedure &amp;sheet…</source>
        <translation>Proce&amp;dimiento…</translation>
    </message>
    <message>
        <source>To the set-&amp;up page</source>
        <translation>A la página de a&amp;juste</translation>
    </message>
</context>
<context>
    <name>EditTab</name>
    <message>
        <source>All of the job</source>
        <translation>Todo el trabajo</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>&amp;Añadir</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>Take it &amp;out</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>Values</source>
        <translation>Valores</translation>
    </message>
    <message>
        <source> (not saved)</source>
        <translation> (sin guardar)</translation>
    </message>
</context>
<context>
    <name>Entering</name>
    <message>
        <source>Kept as a draft; the page of the log has it.</source>
        <translation>Guardado como borrador; está en la página del registro.</translation>
    </message>
    <message>
        <source>The weld waits on this computer</source>
        <translation>La soldadura espera en este equipo</translation>
    </message>
    <message>
        <source>Changed number {number}: {metal}, {figure}{outcome}.</source>
        <translation>Cambiada la n.º {number}: {metal}, {figure}{outcome}.</translation>
    </message>
    <message>
        <source>Logged as number {number}: {metal}, {figure}{outcome}.</source>
        <translation>Registrada con el n.º {number}: {metal}, {figure}{outcome}.</translation>
    </message>
</context>
<context>
    <name>EntryDialog</name>
    <message>
        <source>Change a logged weld</source>
        <translation>Cambiar una soldadura registrada</translation>
    </message>
    <message>
        <source>Log a weld</source>
        <translation>Registrar una soldadura</translation>
    </message>
    <message>
        <source>What was welded</source>
        <translation>Qué se soldó</translation>
    </message>
    <message>
        <source>&amp;Process</source>
        <translation>&amp;Proceso</translation>
    </message>
    <message>
        <source>Process</source>
        <translation>Proceso</translation>
    </message>
    <message>
        <source>&amp;Metal</source>
        <translation>&amp;Metal</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>&amp;Espesor</translation>
    </message>
    <message>
        <source>Other metal</source>
        <translation>Otro metal</translation>
    </message>
    <message>
        <source>Other piece</source>
        <translation>Otra pieza</translation>
    </message>
    <message>
        <source>as thick</source>
        <translation>igual de gruesa</translation>
    </message>
    <message>
        <source>&amp;Joint</source>
        <translation>&amp;Unión</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Unión</translation>
    </message>
    <message>
        <source>Po&amp;sition</source>
        <translation>Po&amp;sición</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>&amp;Gap</source>
        <translation>Sepa&amp;ración</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>&amp;Hand</source>
        <translation>Ma&amp;no</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Mano</translation>
    </message>
    <message>
        <source>Wh&amp;en</source>
        <translation>Cuán&amp;do</translation>
    </message>
    <message>
        <source>Wh&amp;o</source>
        <translation>&amp;Quién</translation>
    </message>
    <message>
        <source>M&amp;achine</source>
        <translation>Máqu&amp;ina</translation>
    </message>
    <message>
        <source>Material &amp;lot</source>
        <translation>&amp;Lote de material</translation>
    </message>
    <message>
        <source>What was set (correct what you changed)</source>
        <translation>Qué se ajustó (corregir lo que se cambió)</translation>
    </message>
    <message>
        <source>What came of it</source>
        <translation>Qué resultó</translation>
    </message>
    <message>
        <source>Faults, where there are any</source>
        <translation>Defectos, si los hay</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>&amp;Notes on the bead</source>
        <translation>Notas sobre el c&amp;ordón</translation>
    </message>
    <message>
        <source>take it off this weld</source>
        <translation>quitarla de esta soldadura</translation>
    </message>
    <message>
        <source>Add p&amp;ictures…</source>
        <translation>&amp;Añadir imágenes…</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Descartar</translation>
    </message>
    <message>
        <source>Keep for later</source>
        <translation>Guardar para luego</translation>
    </message>
    <message>
        <source>How did it come out? One click logs it:</source>
        <translation>¿Cómo salió? Un clic la registra:</translation>
    </message>
    <message>
        <source>Worked &amp;well</source>
        <translation>Mu&amp;y bien</translation>
    </message>
    <message>
        <source>Wor&amp;ked</source>
        <translation>&amp;Bien</translation>
    </message>
    <message>
        <source>&amp;Failed</source>
        <translation>&amp;Falló</translation>
    </message>
    <message>
        <source>Log it: {words}</source>
        <translation>Registrar: {words}</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>igual</translation>
    </message>
    <message>
        <source>Pictures of this weld</source>
        <translation>Imágenes de esta soldadura</translation>
    </message>
    <message>
        <source>Pictures ({kinds})</source>
        <translation>Imágenes ({kinds})</translation>
    </message>
</context>
<context>
    <name>EntryForm</name>
    <message>
        <source>short, such as left-mudguard</source>
        <translation>corto, p. ej. guardabarros-izq</translation>
    </message>
    <message>
        <source>Short name</source>
        <translation>Nombre corto</translation>
    </message>
</context>
<context>
    <name>EntryModel</name>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Process</source>
        <translation>Proceso</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metal</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Unión</translation>
    </message>
    <message>
        <source>Pos.</source>
        <translation>Pos.</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Came out</source>
        <translation>Salió</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Defectos</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Máquina</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
</context>
<context>
    <name>EntryTable</name>
    <message>
        <source>Logged welds</source>
        <translation>Soldaduras registradas</translation>
    </message>
</context>
<context>
    <name>FaultDialog</name>
    <message>
        <source>What went wrong</source>
        <translation>Qué salió mal</translation>
    </message>
    <message>
        <source>What the bead looks like</source>
        <translation>Aspecto del cordón</translation>
    </message>
    <message>
        <source>What does the bead &amp;look like?</source>
        <translation>¿Qué &amp;aspecto tiene el cordón?</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>For {title}. Change one thing at a time, on scrap. A crack in anything that carries load is a qualified welder&apos;s.</source>
        <translation>Para: {title}. Cambiar una sola cosa cada vez, en recortes. Una grieta en cualquier cosa que soporte carga es asunto de un soldador cualificado.</translation>
    </message>
    <message>
        <source>No imperfection of the standard: a trouble at the bench.</source>
        <translation>No es una imperfección de la norma: es un problema del taller.</translation>
    </message>
    <message>
        <source>Let the card take this change</source>
        <translation>Pasar este cambio a la ficha</translation>
    </message>
    <message>
        <source>Let the card take this change: {change}</source>
        <translation>Pasar este cambio a la ficha: {change}</translation>
    </message>
</context>
<context>
    <name>FaultPicker</name>
    <message>
        <source>Faults</source>
        <translation>Defectos</translation>
    </message>
    <message>
        <source>Another fault by ISO 6520-1</source>
        <translation>Otro defecto según ISO 6520-1</translation>
    </message>
    <message>
        <source>Another, by ISO 6520-1…</source>
        <translation>Otro, según ISO 6520-1…</translation>
    </message>
</context>
<context>
    <name>FigureSheet</name>
    <message>
        <source>Figures</source>
        <translation>Cifras</translation>
    </message>
    <message>
        <source>kept: {value}</source>
        <translation>guardado: {value}</translation>
    </message>
</context>
<context>
    <name>FigureTile</name>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Why {label}</source>
        <translation>Por qué: {label}</translation>
    </message>
</context>
<context>
    <name>FilterBar</name>
    <message>
        <source>search: bait tank 5052</source>
        <translation>buscar: vivero de cebo 5052</translation>
    </message>
    <message>
        <source>Search the log</source>
        <translation>Buscar en el registro</translation>
    </message>
    <message>
        <source>Nearest to the card</source>
        <translation>Cercanas a la ficha</translation>
    </message>
    <message>
        <source>Kept filters</source>
        <translation>Filtros guardados</translation>
    </message>
    <message>
        <source>More filters</source>
        <translation>Más filtros</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Mostrar todo</translation>
    </message>
    <message>
        <source>Process</source>
        <translation>Proceso</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Unión</translation>
    </message>
    <message>
        <source>Came out</source>
        <translation>Salió</translation>
    </message>
    <message>
        <source>Keep this filter…</source>
        <translation>Guardar este filtro…</translation>
    </message>
    <message>
        <source>Forget a filter…</source>
        <translation>Olvidar un filtro…</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familia</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metal</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>Fault</source>
        <translation>Defecto</translation>
    </message>
    <message>
        <source>Thickness from</source>
        <translation>Espesor desde</translation>
    </message>
    <message>
        <source>Thickness to</source>
        <translation>Espesor hasta</translation>
    </message>
    <message>
        <source>Current from (A)</source>
        <translation>Corriente desde (A)</translation>
    </message>
    <message>
        <source>Current to (A)</source>
        <translation>Corriente hasta (A)</translation>
    </message>
    <message>
        <source>Since (2026-03-01)</source>
        <translation>Desde (2026-03-01)</translation>
    </message>
    <message>
        <source>Until (2026-04-30)</source>
        <translation>Hasta (2026-04-30)</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Máquina</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Material lot</source>
        <translation>Lote de material</translation>
    </message>
    <message>
        <source>with pictures</source>
        <translation>con imágenes</translation>
    </message>
    <message>
        <source>without pictures</source>
        <translation>sin imágenes</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Imágenes</translation>
    </message>
    <message>
        <source>{words}: any</source>
        <translation>{words}: todo</translation>
    </message>
</context>
<context>
    <name>FindDialog</name>
    <message>
        <source>Go to</source>
        <translation>Ir a</translation>
    </message>
    <message>
        <source>A joint, a page, a command or a fault</source>
        <translation>Una unión, una página, un comando o un defecto</translation>
    </message>
    <message>
        <source>5052 corner 0.080, bench, undercut</source>
        <translation>5052 corner 0.080, taller, mordedura</translation>
    </message>
    <message>
        <source>What answers it</source>
        <translation>Qué responde a eso</translation>
    </message>
    <message>
        <source>Nothing goes by that name.</source>
        <translation>Nada se llama así.</translation>
    </message>
</context>
<context>
    <name>Finder</name>
    <message>
        <source>Recent</source>
        <translation>Reciente</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Página</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>Comando</translation>
    </message>
    <message>
        <source>Fault</source>
        <translation>Defecto</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metal</translation>
    </message>
    <message>
        <source>Set up</source>
        <translation>Ajustar</translation>
    </message>
    <message>
        <source>to {other}</source>
        <translation>con {other}</translation>
    </message>
</context>
<context>
    <name>FormPanel</name>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
</context>
<context>
    <name>HeatOutput</name>
    <message>
        <source>Save the picture or its numbers</source>
        <translation>Guardar la imagen o sus números</translation>
    </message>
    <message>
        <source>Save the preview as PDF</source>
        <translation>Guardar la vista previa como PDF</translation>
    </message>
    <message>
        <source>The page is on its way to the printer.</source>
        <translation>La página va camino de la impresora.</translation>
    </message>
    <message>
        <source>The figures are on the clipboard as text.</source>
        <translation>Las cifras están en el portapapeles como texto.</translation>
    </message>
    <message>
        <source>Conduction only, give or take its error: to think with, not a procedure.</source>
        <translation>Solo conducción, con su margen de error: para pensar, no es un procedimiento.</translation>
    </message>
    <message>
        <source>The file was not written</source>
        <translation>No se escribió el archivo</translation>
    </message>
    <message>
        <source>{name}: its ending has to be one of {allowed}.</source>
        <translation>{name}: su extensión tiene que ser una de estas: {allowed}.</translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation>Guardado como {path}.</translation>
    </message>
</context>
<context>
    <name>HeatPresenter</name>
    <message>
        <source>to {metal}</source>
        <translation>con {metal}</translation>
    </message>
    <message>
        <source>There is no card yet: finish the request on the set-up page.</source>
        <translation>Aún no hay ficha: completar la petición en la página de ajuste.</translation>
    </message>
    <message>
        <source>A plug weld does not travel, and this picture is of a seam. Choose another joint on the set-up page, or set the plug up by hole and time as the card says.</source>
        <translation>Una soldadura de tapón no avanza, y esta imagen es de una costura. Elegir otra unión en la página de ajuste, o ajustar el tapón por agujero y tiempo como dice la ficha.</translation>
    </message>
    <message>
        <source>This card states no travel speed, and without one there is no picture.</source>
        <translation>Esta ficha no indica velocidad de avance, y sin ella no hay imagen.</translation>
    </message>
</context>
<context>
    <name>HeatView</name>
    <message>
        <source>Back to the c&amp;ard</source>
        <translation>Volver a la fich&amp;a</translation>
    </message>
    <message>
        <source>Save &amp;picture or numbers…</source>
        <translation>Guardar &amp;imagen o números…</translation>
    </message>
    <message>
        <source>What this &amp;rests on…</source>
        <translation>En qué se &amp;basa…</translation>
    </message>
    <message>
        <source>From cold to burning through</source>
        <translation>De frío a perforación</translation>
    </message>
    <message>
        <source>The joint cut across</source>
        <translation>La unión en corte</translation>
    </message>
    <message>
        <source>The pool from above</source>
        <translation>El baño desde arriba</translation>
    </message>
    <message>
        <source>seen from above; ring: the arc&apos;s spot</source>
        <translation>desde arriba; anillo: el arco</translation>
    </message>
    <message>
        <source>C&amp;urrent</source>
        <translation>&amp;Corriente</translation>
    </message>
    <message>
        <source>&amp;Travel speed</source>
        <translation>Vel. &amp;de avance</translation>
    </message>
    <message>
        <source>Arc vo&amp;ltage</source>
        <translation>Tensión de a&amp;rco</translation>
    </message>
    <message>
        <source>Thick&amp;ness</source>
        <translation>&amp;Espesor</translation>
    </message>
    <message>
        <source>&amp;Metal starts at</source>
        <translation>Metal, te&amp;mp. inic.</translation>
    </message>
    <message>
        <source>AC &amp;frequency</source>
        <translation>Frec&amp;uencia CA</translation>
    </message>
    <message>
        <source>&amp;Electrode negative</source>
        <translation>Electrodo &amp;negativo</translation>
    </message>
    <message>
        <source>trend</source>
        <translation>tendencia</translation>
    </message>
    <message>
        <source>follows the current</source>
        <translation>sigue la corriente</translation>
    </message>
    <message>
        <source>card: {band}</source>
        <translation>ficha: {band}</translation>
    </message>
    <message>
        <source>Drop the &amp;kept setting</source>
        <translation>Soltar el ajuste &amp;guardado</translation>
    </message>
    <message>
        <source>&amp;Keep this one to compare</source>
        <translation>&amp;Guardar este para comparar</translation>
    </message>
    <message>
        <source>To think with: what the picture leaves out, how far it may be off, where figures come from.</source>
        <translation>Para pensar: qué deja fuera la imagen, cuánto puede desviarse, de dónde vienen las cifras.</translation>
    </message>
    <message>
        <source>What the picture rests on</source>
        <translation>En qué se basa la imagen</translation>
    </message>
</context>
<context>
    <name>Helping</name>
    <message>
        <source>Guide</source>
        <translation>Guía</translation>
    </message>
    <message>
        <source>The everyday uses, step by step.</source>
        <translation>Los usos de cada día, paso a paso.</translation>
    </message>
    <message>
        <source>Every figure is a range with a start, a reason, a source and a grade.</source>
        <translation>Cada cifra es un margen con un valor inicial, una razón, una fuente y un grado.</translation>
    </message>
    <message>
        <source>How figures are made</source>
        <translation>Cómo se hacen las cifras</translation>
    </message>
    <message>
        <source>Everything can be reached with the keyboard.</source>
        <translation>A todo se llega con el teclado.</translation>
    </message>
    <message>
        <source>Shortcuts</source>
        <translation>Atajos</translation>
    </message>
    <message>
        <source>Set-ups for TIG and MIG, with reasons and sources.</source>
        <translation>Ajustes para TIG y MIG/MAG, con razones y fuentes.</translation>
    </message>
    <message>
        <source>About Welds</source>
        <translation>Acerca de Welds</translation>
    </message>
</context>
<context>
    <name>HoleCanvas</name>
    <message>
        <source>Picture with holes</source>
        <translation>Imagen con agujeros</translation>
    </message>
    <message>
        <source>Arrow keys move the cross, Shift makes small steps, Space marks.</source>
        <translation>Las flechas mueven la cruz, Mayús da pasos pequeños, Espacio marca.</translation>
    </message>
    <message>
        <source>No picture yet</source>
        <translation>Aún no hay imagen</translation>
    </message>
</context>
<context>
    <name>HolesDialog</name>
    <message>
        <source>Holes</source>
        <translation>Agujeros</translation>
    </message>
    <message>
        <source>&amp;Picture…</source>
        <translation>&amp;Imagen…</translation>
    </message>
    <message>
        <source>&amp;Scale: mark two points</source>
        <translation>&amp;Escala: marcar dos puntos</translation>
    </message>
    <message>
        <source>&amp;Holes: mark each, once more to take it out</source>
        <translation>&amp;Agujeros: marcar cada uno, otra vez para quitarlo</translation>
    </message>
    <message>
        <source>&amp;Repair</source>
        <translation>&amp;Reparación</translation>
    </message>
    <message>
        <source>&amp;Length between them</source>
        <translation>&amp;Longitud entre ellos</translation>
    </message>
    <message>
        <source>&amp;Diameter</source>
        <translation>&amp;Diámetro</translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translation>&amp;Cuadrícula</translation>
    </message>
    <message>
        <source>The picture cannot be shown</source>
        <translation>No se puede mostrar la imagen</translation>
    </message>
    <message>
        <source>The drawing cannot be read</source>
        <translation>No se puede leer el dibujo</translation>
    </message>
    <message>
        <source>Pictures ({kinds})</source>
        <translation>Imágenes ({kinds})</translation>
    </message>
    <message>
        <source>A picture of the holes, taken square on</source>
        <translation>Una imagen de los agujeros, tomada en perpendicular</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>diámetro</translation>
    </message>
    <message>
        <source>grid</source>
        <translation>cuadrícula</translation>
    </message>
    <message>
        <source>{holes}
within {size}, rim to rim</source>
        <translation>{holes}
dentro de {size}, de borde a borde</translation>
    </message>
    <message>
        <source>Choose a picture taken square on, with a ruler in it.</source>
        <translation>Elegir una imagen tomada en perpendicular, con una regla en ella.</translation>
    </message>
    <message>
        <source>Mark both ends of a length that you know.</source>
        <translation>Marcar los dos extremos de una longitud conocida.</translation>
    </message>
    <message>
        <source>Now mark the holes.</source>
        <translation>Ahora marcar los agujeros.</translation>
    </message>
    <message>
        <source>The holes were not written</source>
        <translation>No se escribieron los agujeros</translation>
    </message>
</context>
<context>
    <name>ImportModel</name>
    <message>
        <source>Row</source>
        <translation>Fila</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Weld</source>
        <translation>Soldadura</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nueva</translation>
    </message>
    <message>
        <source>known</source>
        <translation>ya está</translation>
    </message>
    <message>
        <source>bad</source>
        <translation>errónea</translation>
    </message>
</context>
<context>
    <name>ImportView</name>
    <message>
        <source>Rows of the file</source>
        <translation>Filas del archivo</translation>
    </message>
    <message>
        <source>Leave it, write nothing</source>
        <translation>Dejarlo, no escribir nada</translation>
    </message>
    <message>
        <source>Nothing has been written yet.</source>
        <translation>Aún no se ha escrito nada.</translation>
    </message>
    <message>
        <source>{name}: {new} new, {known} known already, {bad} bad.</source>
        <translation>{name}: {new} nuevas, {known} ya conocidas, {bad} erróneas.</translation>
    </message>
    <message>
        <source>Put the bad rows right in the file first: it is all or nothing.</source>
        <translation>Corregir antes en el archivo las filas erróneas: es todo o nada.</translation>
    </message>
    <message>
        <source>Write {count} new welds</source>
        <translation>Escribir {count} soldaduras nuevas</translation>
    </message>
</context>
<context>
    <name>JobOutput</name>
    <message>
        <source>Sent to the printer: {count} pages.</source>
        <translation>Enviado a la impresora: {count} páginas.</translation>
    </message>
    <message>
        <source>Save the packet</source>
        <translation>Guardar el paquete</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The packet was not written</source>
        <translation>No se escribió el paquete</translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation>Guardado como {path}.</translation>
    </message>
    <message>
        <source>The plan is on the clipboard.</source>
        <translation>El plan está en el portapapeles.</translation>
    </message>
</context>
<context>
    <name>JobPresenter</name>
    <message>
        <source>There is a {key} already: choose another short name.</source>
        <translation>Ya existe {key}: elegir otro nombre corto.</translation>
    </message>
    <message>
        <source>The file was changed by another program since; nothing was taken back.</source>
        <translation>Entretanto otro programa cambió el archivo; no se deshizo nada.</translation>
    </message>
    <message>
        <source>The demo is not changed: keep a copy of it first.</source>
        <translation>La demo no se cambia: guardar antes una copia.</translation>
    </message>
</context>
<context>
    <name>JobView</name>
    <message>
        <source>&amp;New job…</source>
        <translation>Trabajo &amp;nuevo…</translation>
    </message>
    <message>
        <source>&amp;Open a job file…</source>
        <translation>Abrir &amp;trabajo…</translation>
    </message>
    <message>
        <source>Open the &amp;demo (invented)</source>
        <translation>Abrir la &amp;demo (inventada)</translation>
    </message>
    <message>
        <source>&amp;Read it again</source>
        <translation>&amp;Releer</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>Des&amp;hacer</translation>
    </message>
    <message>
        <source>Take the last change of this file back (Ctrl+Z)</source>
        <translation>Deshacer el último cambio de este archivo (Ctrl+Z)</translation>
    </message>
    <message>
        <source>&amp;Keep a copy…</source>
        <translation>Guardar &amp;copia…</translation>
    </message>
    <message>
        <source>&amp;Packet as PDF…</source>
        <translation>&amp;Paquete como PDF…</translation>
    </message>
    <message>
        <source>The job</source>
        <translation>El trabajo</translation>
    </message>
    <message>
        <source>Parts of the job</source>
        <translation>Partes del trabajo</translation>
    </message>
    <message>
        <source>No job is open. Begin a new one, or open the demo to see what a job can hold.</source>
        <translation>No hay ningún trabajo abierto. Empezar uno nuevo, o abrir la demo para ver qué puede contener un trabajo.</translation>
    </message>
    <message>
        <source>{name} has faults:</source>
        <translation>{name} tiene errores:</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Defectos</translation>
    </message>
    <message>
        <source>{name}: {done} of {all} tasks done, for {machine}</source>
        <translation>{name}: {done} de {all} tareas hechas, para {machine}</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Editar</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Advertencias</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>What waits</source>
        <translation>Qué espera</translation>
    </message>
    <message>
        <source>Repairs</source>
        <translation>Reparaciones</translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation>Lista de corte</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Chapas</translation>
    </message>
    <message>
        <source>Blanks</source>
        <translation>Desarrollos</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Fichas</translation>
    </message>
    <message>
        <source>Tacks</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Materiales</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Controles</translation>
    </message>
    <message>
        <source>&amp;Test bend…</source>
        <translation>Pl&amp;egado de prueba…</translation>
    </message>
    <message>
        <source>PDF at full size (*.pdf);;DXF for a cutter (*.dxf);;SVG (*.svg)</source>
        <translation>PDF a tamaño real (*.pdf);;DXF para cortadora (*.dxf);;SVG (*.svg)</translation>
    </message>
    <message>
        <source>Save the drawing</source>
        <translation>Guardar el dibujo</translation>
    </message>
    <message>
        <source>The drawing was not written</source>
        <translation>No se escribió el dibujo</translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation>Guardado como {path}.</translation>
    </message>
    <message>
        <source>{key} and what was typed for it goes out of the job file.</source>
        <translation>{key} y lo que se escribió para ello salen del archivo de trabajo.</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Begin a job</source>
        <translation>Empezar un trabajo</translation>
    </message>
    <message>
        <source>Open a job</source>
        <translation>Abrir un trabajo</translation>
    </message>
    <message>
        <source>Keep a copy</source>
        <translation>Guardar una copia</translation>
    </message>
    <message>
        <source>Job files (*.yaml *.yml)</source>
        <translation>Archivos de trabajo (*.yaml *.yml)</translation>
    </message>
    <message>
        <source>Nothing was written</source>
        <translation>No se escribió nada</translation>
    </message>
    <message>
        <source>Planning…</source>
        <translation>Planificando…</translation>
    </message>
</context>
<context>
    <name>KnobRow</name>
    <message>
        <source>Only the direction is known: no document puts a number on it</source>
        <translation>Solo se conoce el sentido: ningún documento le pone un número</translation>
    </message>
</context>
<context>
    <name>LargeFigures</name>
    <message>
        <source>Large figures</source>
        <translation>Cifras grandes</translation>
    </message>
    <message>
        <source>Escape goes back.  {notice}</source>
        <translation>Escape vuelve atrás.  {notice}</translation>
    </message>
    <message>
        <source>OLD CARD: it belongs to the request before this one.</source>
        <translation>FICHA VIEJA: es de la petición anterior a esta.</translation>
    </message>
    <message>
        <source>STOP: {cautions}</source>
        <translation>ALTO: {cautions}</translation>
    </message>
</context>
<context>
    <name>ListTab</name>
    <message>
        <source>What there is to say</source>
        <translation>Lo que hay que decir</translation>
    </message>
    <message>
        <source>&amp;Save the drawing…</source>
        <translation>Guardar el di&amp;bujo…</translation>
    </message>
</context>
<context>
    <name>LogFiles</name>
    <message>
        <source>Export the log</source>
        <translation>Exportar el registro</translation>
    </message>
    <message>
        <source>CSV (*.csv);;JSON (*.json)</source>
        <translation>CSV (*.csv);;JSON (*.json)</translation>
    </message>
    <message>
        <source>{count} welds written to {file}.</source>
        <translation>{count} soldaduras escritas en {file}.</translation>
    </message>
    <message>
        <source>The log was not exported</source>
        <translation>No se exportó el registro</translation>
    </message>
    <message>
        <source>Back up the log</source>
        <translation>Copia de seguridad del registro</translation>
    </message>
    <message>
        <source>Backup of a log (*.zip)</source>
        <translation>Copia de seguridad de un registro (*.zip)</translation>
    </message>
    <message>
        <source>{count} welds with their pictures are backed up in {file}.</source>
        <translation>Copia de seguridad de {count} soldaduras con sus imágenes en {file}.</translation>
    </message>
    <message>
        <source>The backup was not made</source>
        <translation>No se hizo la copia de seguridad</translation>
    </message>
    <message>
        <source>Import welds</source>
        <translation>Importar soldaduras</translation>
    </message>
    <message>
        <source>Exported welds (*.csv *.json);;All files (*)</source>
        <translation>Soldaduras exportadas (*.csv *.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>The file was not read</source>
        <translation>No se leyó el archivo</translation>
    </message>
    <message>
        <source>{count} welds imported from {name}.</source>
        <translation>{count} soldaduras importadas de {name}.</translation>
    </message>
    <message>
        <source>Nothing was imported</source>
        <translation>No se importó nada</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurar una copia de seguridad</translation>
    </message>
    <message>
        <source>Backups (*.zip *.db);;All files (*)</source>
        <translation>Copias de seguridad (*.zip *.db);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>The log becomes what {name} holds. The log as it is now is not deleted: it is put aside under another name, beside the new one.</source>
        <translation>El registro pasa a ser lo que contiene {name}. El registro tal como está ahora no se borra: se aparta con otro nombre, junto al nuevo.</translation>
    </message>
    <message>
        <source>Restore the log</source>
        <translation>Restaurar el registro</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Restaurar</translation>
    </message>
    <message>
        <source>Restored: {count} welds.</source>
        <translation>Restaurado: {count} soldaduras.</translation>
    </message>
    <message>
        <source>The log that was there is now {name}.</source>
        <translation>El registro que había es ahora {name}.</translation>
    </message>
    <message>
        <source>The backup was not restored</source>
        <translation>No se restauró la copia de seguridad</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Reintentar</translation>
    </message>
    <message>
        <source>Open to read only</source>
        <translation>Abrir solo para leer</translation>
    </message>
    <message>
        <source>Restore {name}</source>
        <translation>Restaurar {name}</translation>
    </message>
    <message>
        <source>Restore a backup…</source>
        <translation>Restaurar una copia…</translation>
    </message>
    <message>
        <source>Use another log…</source>
        <translation>Usar otro registro…</translation>
    </message>
    <message>
        <source>Bring it up to date</source>
        <translation>Poner al día</translation>
    </message>
    <message>
        <source>Use another log</source>
        <translation>Usar otro registro</translation>
    </message>
    <message>
        <source>Logs (*.db);;All files (*)</source>
        <translation>Registros (*.db);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Use a log on a server</source>
        <translation>Usar un registro en un servidor</translation>
    </message>
    <message>
        <source>Its address: postgresql+psycopg://USER@HOST/DATABASE
The password is better kept in the password file ~/.pgpass than written here.</source>
        <translation>Su dirección: postgresql+psycopg://USUARIO@EQUIPO/BASE
La contraseña está mejor guardada en el archivo de contraseñas ~/.pgpass que escrita aquí.</translation>
    </message>
    <message>
        <source>Not an address of a log</source>
        <translation>No es la dirección de un registro</translation>
    </message>
    <message>
        <source>This address holds a password: it is used now and not remembered.</source>
        <translation>Esta dirección contiene una contraseña: se usa ahora y no se recuerda.</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Detenido. No se escribió nada.</translation>
    </message>
</context>
<context>
    <name>LogOutput</name>
    <message>
        <source>The procedure sheet is on its way to the printer.</source>
        <translation>La hoja de procedimiento va camino de la impresora.</translation>
    </message>
    <message>
        <source>Preliminary procedure sheet</source>
        <translation>Hoja de procedimiento preliminar</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The sheet was not written</source>
        <translation>No se escribió la hoja</translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation>Guardado como {path}.</translation>
    </message>
    <message>
        <source>The procedure sheet is on the clipboard as text.</source>
        <translation>La hoja de procedimiento está en el portapapeles como texto.</translation>
    </message>
</context>
<context>
    <name>LogParts</name>
    <message>
        <source>Log this weld</source>
        <translation>Registrar esta soldadura</translation>
    </message>
</context>
<context>
    <name>LogPresenter</name>
    <message>
        <source>Filter kept: {name}</source>
        <translation>Filtro guardado: {name}</translation>
    </message>
    <message>
        <source>Filter forgotten: {name}</source>
        <translation>Filtro olvidado: {name}</translation>
    </message>
    <message>
        <source>The weld was not removed</source>
        <translation>No se quitó la soldadura</translation>
    </message>
    <message>
        <source>Removed: {what}</source>
        <translation>Quitado: {what}</translation>
    </message>
    <message>
        <source>It was not taken back</source>
        <translation>No se deshizo</translation>
    </message>
    <message>
        <source>Done again.</source>
        <translation>Rehecho.</translation>
    </message>
    <message>
        <source>Taken back.</source>
        <translation>Deshecho.</translation>
    </message>
    <message>
        <source>The filter was not changed</source>
        <translation>No se cambió el filtro</translation>
    </message>
</context>
<context>
    <name>LogView</name>
    <message>
        <source>&amp;Log a weld…</source>
        <translation>&amp;Registrar soldadura…</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Importar…</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>&amp;Exportar…</translation>
    </message>
    <message>
        <source>&amp;Back up…</source>
        <translation>Copia de &amp;seg.…</translation>
    </message>
    <message>
        <source>Res&amp;tore…</source>
        <translation>Res&amp;taurar…</translation>
    </message>
    <message>
        <source>Which lo&amp;g</source>
        <translation>Qué re&amp;gistro</translation>
    </message>
    <message>
        <source>Use another log…</source>
        <translation>Usar otro registro…</translation>
    </message>
    <message>
        <source>Use a log on a server…</source>
        <translation>Usar un registro en un servidor…</translation>
    </message>
    <message>
        <source>Use my own log</source>
        <translation>Usar el registro propio</translation>
    </message>
    <message>
        <source>{count} welds nearest to the card, nearest first</source>
        <translation>{count} soldaduras cercanas a la ficha, primero la más cercana</translation>
    </message>
    <message>
        <source>counting…</source>
        <translation>contando…</translation>
    </message>
    <message>
        <source>{count} welds fit</source>
        <translation>{count} soldaduras coinciden</translation>
    </message>
    <message>
        <source>{count} welds</source>
        <translation>{count} soldaduras</translation>
    </message>
    <message>
        <source> in {log}</source>
        <translation> en {log}</translation>
    </message>
    <message>
        <source>No logged weld comes near the card on the set-up page.</source>
        <translation>Ninguna soldadura registrada se acerca a la ficha de la página de ajuste.</translation>
    </message>
    <message>
        <source>No logged weld fits. “Show all” takes the filter away.</source>
        <translation>Ninguna soldadura registrada coincide. «Mostrar todo» quita el filtro.</translation>
    </message>
    <message>
        <source>Nothing is logged yet. After a weld, “Log this weld” on the set-up page writes down what was set and what came of it; the next card for a like joint learns from it.</source>
        <translation>Aún no hay nada registrado. Después de soldar, «Registrar soldadura» en la página de ajuste anota qué se ajustó y qué resultó; la próxima ficha para una unión parecida aprende de ello.</translation>
    </message>
    <message>
        <source>Keep this filter</source>
        <translation>Guardar este filtro</translation>
    </message>
    <message>
        <source>A name for it:</source>
        <translation>Un nombre para él:</translation>
    </message>
    <message>
        <source>Forget a filter</source>
        <translation>Olvidar un filtro</translation>
    </message>
    <message>
        <source>Which one?</source>
        <translation>¿Cuál?</translation>
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
        <translation>Esto es un error del programa, no de quien lo usa. La petición queda guardada y la ventana sigue abierta. Por favor, copiar el texto de abajo en un informe.</translation>
    </message>
    <message>
        <source>Something went wrong in the program</source>
        <translation>Algo falló en el programa</translation>
    </message>
    <message>
        <source>Getting the tables ready…</source>
        <translation>Preparando las tablas…</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Lado a lado</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Taller</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>Weld preview</source>
        <translation>Vista previa</translation>
    </message>
    <message>
        <source>a mistake in the program</source>
        <translation>un error del programa</translation>
    </message>
    <message>
        <source>The tables cannot be used:

{reason}</source>
        <translation>No se pueden usar las tablas:

{reason}</translation>
    </message>
    <message>
        <source>inch</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>metric</source>
        <translation>métricas</translation>
    </message>
</context>
<context>
    <name>MetalPicker</name>
    <message>
        <source>type a number or a name: 5052, 304, galvanised</source>
        <translation>escribir número o nombre: 5052, 304, galvanised</translation>
    </message>
    <message>
        <source>{name}: show the list</source>
        <translation>{name}: mostrar la lista</translation>
    </message>
</context>
<context>
    <name>Notices</name>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>The log is being brought up to date, {done} of {total} steps…</source>
        <translation>Poniendo el registro al día, paso {done} de {total}…</translation>
    </message>
    <message>
        <source>Reading the file, {done} of about {total} rows…</source>
        <translation>Leyendo el archivo, {done} de unas {total} filas…</translation>
    </message>
    <message>
        <source>Writing the file, {done} of {total} welds…</source>
        <translation>Escribiendo el archivo, {done} de {total} soldaduras…</translation>
    </message>
    <message>
        <source>Reading the backup, {done} of {total} welds…</source>
        <translation>Leyendo la copia, {done} de {total} soldaduras…</translation>
    </message>
    <message>
        <source>Writing the welds, {done} of {total}…</source>
        <translation>Escribiendo las soldaduras, {done} de {total}…</translation>
    </message>
    <message>
        <source>This log was opened to read only: nothing can be written.</source>
        <translation>Este registro se abrió solo para leer: no se puede escribir nada.</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Entendido</translation>
    </message>
    <message>
        <source>Do it again</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Begun and not logged: {what}.</source>
        <translation>Empezado y sin registrar: {what}.</translation>
    </message>
    <message>
        <source>Begun and not logged: {what} and {count} more.</source>
        <translation>Empezado y sin registrar: {what} y {count} más.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Descartar</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Deteniendo…</translation>
    </message>
</context>
<context>
    <name>OptionWords</name>
    <message>
        <source>TIG</source>
        <translation>TIG</translation>
    </message>
    <message>
        <source>MIG</source>
        <translation>MIG/MAG</translation>
    </message>
    <message>
        <source>Butt</source>
        <translation>A tope</translation>
    </message>
    <message>
        <source>Tee</source>
        <translation>En T</translation>
    </message>
    <message>
        <source>Lap</source>
        <translation>A solape</translation>
    </message>
    <message>
        <source>Outside corner</source>
        <translation>Esquina exterior</translation>
    </message>
    <message>
        <source>Inside corner</source>
        <translation>Esquina interior</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Canto</translation>
    </message>
    <message>
        <source>Plug</source>
        <translation>Tapón</translation>
    </message>
    <message>
        <source>Galvanised</source>
        <translation>Galvanizado</translation>
    </message>
    <message>
        <source>Zinc plate</source>
        <translation>Cincado</translation>
    </message>
    <message>
        <source>Zinc primer</source>
        <translation>Imprim. de cinc</translation>
    </message>
    <message>
        <source>Cadmium</source>
        <translation>Cadmio</translation>
    </message>
    <message>
        <source>Chrome</source>
        <translation>Cromado</translation>
    </message>
    <message>
        <source>Paint</source>
        <translation>Pintura</translation>
    </message>
    <message>
        <source>Old paint</source>
        <translation>Pintura vieja</translation>
    </message>
    <message>
        <source>Powder coat</source>
        <translation>Pintura polvo</translation>
    </message>
    <message>
        <source>Sealer</source>
        <translation>Sellador</translation>
    </message>
    <message>
        <source>Oil, grease</source>
        <translation>Aceite, grasa</translation>
    </message>
    <message>
        <source>Anodised</source>
        <translation>Anodizado</translation>
    </message>
    <message>
        <source>Mill scale</source>
        <translation>Cascarilla</translation>
    </message>
    <message>
        <source>Rust</source>
        <translation>Óxido</translation>
    </message>
    <message>
        <source>Not sure</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>Nothing, or water</source>
        <translation>Nada, o agua</translation>
    </message>
    <message>
        <source>Acetone</source>
        <translation>Acetona</translation>
    </message>
    <message>
        <source>Alcohol</source>
        <translation>Alcohol</translation>
    </message>
    <message>
        <source>Chlorinated cleaner</source>
        <translation>Limpiador clorado</translation>
    </message>
    <message>
        <source>A spray, contents unknown</source>
        <translation>Un spray, contenido desconocido</translation>
    </message>
    <message>
        <source>Loose sheet or test piece</source>
        <translation>Chapa suelta o probeta</translation>
    </message>
    <message>
        <source>Bracket or cover</source>
        <translation>Soporte o tapa</translation>
    </message>
    <message>
        <source>On a vehicle or boat</source>
        <translation>En vehículo o barco</translation>
    </message>
    <message>
        <source>Tube or closed section</source>
        <translation>Tubo o perfil cerrado</translation>
    </message>
    <message>
        <source>Tank or drum</source>
        <translation>Tanque o bidón</translation>
    </message>
    <message>
        <source>Holds pressure</source>
        <translation>Soporta presión</translation>
    </message>
    <message>
        <source>Steering or suspension</source>
        <translation>Dirección o suspensión</translation>
    </message>
    <message>
        <source>Towing part</source>
        <translation>Pieza de remolque</translation>
    </message>
    <message>
        <source>Lifting part</source>
        <translation>Pieza de izado</translation>
    </message>
    <message>
        <source>Roll-over structure</source>
        <translation>Estructura antivuelco</translation>
    </message>
    <message>
        <source>Sealed item, shock absorber</source>
        <translation>Pieza sellada, amortiguador</translation>
    </message>
    <message>
        <source>Indoors</source>
        <translation>Interior</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation>Exterior</translation>
    </message>
    <message>
        <source>Cramped, closed</source>
        <translation>Estrecho, cerrado</translation>
    </message>
    <message>
        <source>Unhurried</source>
        <translation>Pausada</translation>
    </message>
    <message>
        <source>Brisk</source>
        <translation>Rápida</translation>
    </message>
    <message>
        <source>General work</source>
        <translation>Trabajo general</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Resistencia</translation>
    </message>
    <message>
        <source>Bends without cracking</source>
        <translation>Dobla sin agrietarse</translation>
    </message>
    <message>
        <source>Least hot cracking</source>
        <translation>Mínimas grietas en caliente</translation>
    </message>
    <message>
        <source>Colour after anodising</source>
        <translation>Color tras anodizar</translation>
    </message>
    <message>
        <source>Warm in service</source>
        <translation>Caliente en servicio</translation>
    </message>
    <message>
        <source>Salt water</source>
        <translation>Agua salada</translation>
    </message>
    <message>
        <source>PA  flat</source>
        <translation>PA  plana</translation>
    </message>
    <message>
        <source>PB  fillet, one leg upright</source>
        <translation>PB  en ángulo, un ala vertical</translation>
    </message>
    <message>
        <source>PC  along a wall</source>
        <translation>PC  cornisa (en pared)</translation>
    </message>
    <message>
        <source>PF  upwards</source>
        <translation>PF  ascendente</translation>
    </message>
    <message>
        <source>PG  downwards</source>
        <translation>PG  descendente</translation>
    </message>
    <message>
        <source>PE  overhead</source>
        <translation>PE  bajo techo</translation>
    </message>
    <message>
        <source>PD  overhead fillet</source>
        <translation>PD  en ángulo bajo techo</translation>
    </message>
    <message>
        <source>Let the card choose</source>
        <translation>Que elija la ficha</translation>
    </message>
    <message>
        <source>Short circuit</source>
        <translation>Cortocircuito</translation>
    </message>
    <message>
        <source>Globular</source>
        <translation>Globular</translation>
    </message>
    <message>
        <source>Spray</source>
        <translation>Pulver. (spray)</translation>
    </message>
    <message>
        <source>Pulsed</source>
        <translation>Pulsado</translation>
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
        <translation>Páginas</translation>
    </message>
</context>
<context>
    <name>PairList</name>
    <message>
        <source>Nothing ticked: nothing is ruled out.</source>
        <translation>Nada marcado: nada queda excluido.</translation>
    </message>
</context>
<context>
    <name>PastStrip</name>
    <message>
        <source>From your log</source>
        <translation>Del registro propio</translation>
    </message>
    <message>
        <source>Learn from my welds</source>
        <translation>Aprender de mis soldaduras</translation>
    </message>
    <message>
        <source>Untick it to see the tables&apos; own figures.</source>
        <translation>Desmarcar para ver las cifras de las propias tablas.</translation>
    </message>
    <message>
        <source>More…</source>
        <translation>Más…</translation>
    </message>
    <message>
        <source>The welds nearest to this card in the log</source>
        <translation>Las soldaduras del registro más cercanas a esta ficha</translation>
    </message>
    <message>
        <source>Nearest welds in your log</source>
        <translation>Soldaduras más cercanas del registro</translation>
    </message>
    <message>
        <source>Current, learned</source>
        <translation>Corriente, aprendida</translation>
    </message>
    <message>
        <source>None near this joint.</source>
        <translation>Ninguna cerca de esta unión.</translation>
    </message>
    <message>
        <source>Off: the card shows the tables&apos; own figures.</source>
        <translation>Desactivado: la ficha muestra las cifras de las propias tablas.</translation>
    </message>
    <message>
        <source>No past weld says anything about this current yet.</source>
        <translation>Ninguna soldadura anterior dice aún nada de esta corriente.</translation>
    </message>
</context>
<context>
    <name>PictureRow</name>
    <message>
        <source>Picture {name}</source>
        <translation>Imagen {name}</translation>
    </message>
    <message>
        <source>This picture cannot be shown: its file is gone, or of a kind that cannot be drawn.</source>
        <translation>No se puede mostrar esta imagen: su archivo ya no está, o es de un tipo que no se puede dibujar.</translation>
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
        <translation>Razones: {label}</translation>
    </message>
    <message>
        <source>Grade: {grade}, {meaning}.</source>
        <translation>Grado: {grade}, {meaning}.</translation>
    </message>
    <message>
        <source>Also from:</source>
        <translation>También de:</translation>
    </message>
    <message>
        <source>Instead:</source>
        <translation>En su lugar:</translation>
    </message>
    <message>
        <source>Too little, or wrong: {looks}</source>
        <translation>Demasiado poco, o mal: {looks}</translation>
    </message>
    <message>
        <source>Too much: {looks}</source>
        <translation>Demasiado: {looks}</translation>
    </message>
    <message>
        <source>What it does (shop practice): {words}</source>
        <translation>Qué hace (práctica de taller): {words}</translation>
    </message>
</context>
<context>
    <name>RepairsTab</name>
    <message>
        <source>Repairs</source>
        <translation>Reparaciones</translation>
    </message>
    <message>
        <source>&amp;Holes on a photo…</source>
        <translation>Agu&amp;jeros en una foto…</translation>
    </message>
    <message>
        <source>&amp;Change its values</source>
        <translation>Ca&amp;mbiar sus valores</translation>
    </message>
</context>
<context>
    <name>RequestPanel</name>
    <message>
        <source>Let the card choose</source>
        <translation>Que elija la ficha</translation>
    </message>
    <message>
        <source>Which one is meant?</source>
        <translation>¿Cuál es?</translation>
    </message>
    <message>
        <source>Process</source>
        <translation>Proceso</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metal</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>0.080 in, 14 ga, 2 mm</source>
        <translation>0.080 in, 14 ga, 2 mm</translation>
    </message>
    <message>
        <source>Thickness slider</source>
        <translation>Deslizador de espesor</translation>
    </message>
    <message>
        <source>The other piece is different</source>
        <translation>La otra pieza es distinta</translation>
    </message>
    <message>
        <source>&amp;Process</source>
        <translation>&amp;Proceso</translation>
    </message>
    <message>
        <source>&amp;Metal</source>
        <translation>&amp;Metal</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>&amp;Espesor</translation>
    </message>
    <message>
        <source>Other metal</source>
        <translation>Otro metal</translation>
    </message>
    <message>
        <source>same metal</source>
        <translation>mismo metal</translation>
    </message>
    <message>
        <source>Other thickness</source>
        <translation>Otro espesor</translation>
    </message>
    <message>
        <source>same thickness</source>
        <translation>mismo espesor</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Unión</translation>
    </message>
    <message>
        <source>&amp;Joint, cut across</source>
        <translation>&amp;Unión, en corte</translation>
    </message>
    <message>
        <source>On the metal</source>
        <translation>Sobre el metal</translation>
    </message>
    <message>
        <source>&amp;On the metal (tick all that may be there, inside too)</source>
        <translation>S&amp;obre el metal (marcar todo lo que pueda haber, también por dentro)</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Wiped with</source>
        <translation>Limpiado con</translation>
    </message>
    <message>
        <source>P&amp;art</source>
        <translation>P&amp;ieza</translation>
    </message>
    <message>
        <source>P&amp;lace</source>
        <translation>&amp;Lugar</translation>
    </message>
    <message>
        <source>&amp;Wiped with</source>
        <translation>Limpiado &amp;con</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>Your hand</source>
        <translation>Mano</translation>
    </message>
    <message>
        <source>Po&amp;sition</source>
        <translation>Po&amp;sición</translation>
    </message>
    <message>
        <source>Your ha&amp;nd</source>
        <translation>Ma&amp;no</translation>
    </message>
    <message>
        <source>More: filler goal, gap, length, machine</source>
        <translation>Más: objetivo del aporte, separación, longitud, máquina</translation>
    </message>
    <message>
        <source>Filler goal</source>
        <translation>Objetivo aporte</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Separación</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>Weld length</source>
        <translation>Long. de costura</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Gas on the machine</source>
        <translation>Gas en la máquina</translation>
    </message>
    <message>
        <source>Wire on the machine</source>
        <translation>Hilo en la máquina</translation>
    </message>
    <message>
        <source>Transfer</source>
        <translation>Transferencia</translation>
    </message>
    <message>
        <source>Filler &amp;goal</source>
        <translation>Objetivo &amp;aporte</translation>
    </message>
    <message>
        <source>Gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Hilo</translation>
    </message>
</context>
<context>
    <name>SettingGrid</name>
    <message>
        <source>Add a setting</source>
        <translation>Añadir un ajuste</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>sin anotar</translation>
    </message>
    <message>
        <source>Add a setting…</source>
        <translation>Añadir un ajuste…</translation>
    </message>
</context>
<context>
    <name>SettingRow</name>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Why {label}</source>
        <translation>Por qué: {label}</translation>
    </message>
</context>
<context>
    <name>SetupView</name>
    <message>
        <source>Go to {nearest}</source>
        <translation>Ir a: {nearest}</translation>
    </message>
    <message>
        <source>Use {nearest}</source>
        <translation>Usar: {nearest}</translation>
    </message>
    <message>
        <source>The {field} can be read in more than one way: {readings}.</source>
        <translation>El campo «{field}» se puede leer de más de una manera: {readings}.</translation>
    </message>
    <message>
        <source> or </source>
        <translation> o </translation>
    </message>
</context>
<context>
    <name>ShelfPanel</name>
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
</context>
<context>
    <name>TestBendDialog</name>
    <message>
        <source>Test bend</source>
        <translation>Plegado de prueba</translation>
    </message>
    <message>
        <source>a name for it, such as yard brake</source>
        <translation>p. ej. patio</translation>
    </message>
    <message>
        <source>Cut a strip of {sheet}, measure it, bend it once, measure both legs outside.</source>
        <translation>Cortar una tira de {sheet}, medirla, plegarla una vez, medir ambas alas por fuera.</translation>
    </message>
    <message>
        <source>&amp;Brake</source>
        <translation>&amp;Plegadora</translation>
    </message>
    <message>
        <source>Strip, &amp;flat</source>
        <translation>&amp;Tira sin plegar</translation>
    </message>
    <message>
        <source>&amp;One leg, outside</source>
        <translation>&amp;Un ala, por fuera</translation>
    </message>
    <message>
        <source>Othe&amp;r leg, outside</source>
        <translation>&amp;Otra ala, por fuera</translation>
    </message>
    <message>
        <source>&amp;Angle turned through</source>
        <translation>Án&amp;gulo plegado</translation>
    </message>
    <message>
        <source>&amp;Inside radius</source>
        <translation>Radio &amp;interior</translation>
    </message>
    <message>
        <source>The K follows from all of these.</source>
        <translation>El factor K sale de todo esto.</translation>
    </message>
    <message>
        <source>The test bend was not kept</source>
        <translation>No se guardó el plegado de prueba</translation>
    </message>
</context>
<context>
    <name>TextDialog</name>
    <message>
        <source>&amp;Copy</source>
        <translation>Co&amp;piar</translation>
    </message>
</context>
<context>
    <name>Vary</name>
    <message>
        <source>Joints</source>
        <translation>Uniones</translation>
    </message>
    <message>
        <source>Thicknesses</source>
        <translation>Espesores</translation>
    </message>
    <message>
        <source>TIG and MIG</source>
        <translation>TIG y MIG/MAG</translation>
    </message>
    <message>
        <source>Metals</source>
        <translation>Metales</translation>
    </message>
    <message>
        <source>Positions</source>
        <translation>Posiciones</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Manos</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Máquinas</translation>
    </message>
    <message>
        <source>Tables and log</source>
        <translation>Tablas y registro</translation>
    </message>
    <message>
        <source>Tables and log (no weld speaks)</source>
        <translation>Tablas y registro (ninguna soldadura dice nada)</translation>
    </message>
    <message>
        <source>Tables alone</source>
        <translation>Solo tablas</translation>
    </message>
</context>
<context>
    <name>VaryBar</name>
    <message>
        <source>What varies</source>
        <translation>Qué varía</translation>
    </message>
    <message>
        <source>Keep columns</source>
        <translation>Conservar columnas</translation>
    </message>
    <message>
        <source>Thickness of the base</source>
        <translation>Espesor de la base</translation>
    </message>
    <message>
        <source>What &amp;varies</source>
        <translation>Q&amp;ué varía</translation>
    </message>
    <message>
        <source>&amp;Base thickness</source>
        <translation>Espesor &amp;base</translation>
    </message>
    <message>
        <source>Column for {words}</source>
        <translation>Columna: {words}</translation>
    </message>
    <message>
        <source>another: 2.5 mm, 1/8</source>
        <translation>otro: 2.5 mm, 1/8</translation>
    </message>
    <message>
        <source>Add a thickness</source>
        <translation>Añadir un espesor</translation>
    </message>
    <message>
        <source>Add a metal</source>
        <translation>Añadir un metal</translation>
    </message>
    <message>
        <source>Add a &amp;machine from its file…</source>
        <translation>Añadir &amp;máquina de su archivo…</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>&amp;Añadir</translation>
    </message>
    <message>
        <source>Add this column</source>
        <translation>Añadir esta columna</translation>
    </message>
</context>
<context>
    <name>WavePage</name>
    <message>
        <source>None of the columns uses AC.</source>
        <translation>Ninguna de las columnas usa CA.</translation>
    </message>
    <message>
        <source>milliseconds; electrode positive above the line, negative below</source>
        <translation>milisegundos; electrodo positivo sobre la línea, negativo debajo</translation>
    </message>
    <message>
        <source>wider arc</source>
        <translation>más ancho</translation>
    </message>
    <message>
        <source>narrower arc</source>
        <translation>más estrecho</translation>
    </message>
    <message>
        <source>A trend: no published figure ties the arc&apos;s width to hertz.</source>
        <translation>Una tendencia: ninguna cifra publicada liga el ancho del arco a los hercios.</translation>
    </message>
</context>
<context>
    <name>WelcomeDialog</name>
    <message>
        <source>Before the first weld</source>
        <translation>Antes de la primera soldadura</translation>
    </message>
    <message>
        <source>mm, L/min</source>
        <translation>mm, L/min</translation>
    </message>
    <message>
        <source>inch, cfh</source>
        <translation>pulgadas, cfh</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Máquinas</translation>
    </message>
    <message>
        <source>Which units do you &amp;read?</source>
        <translation>¿En qué unidades se &amp;lee?</translation>
    </message>
    <message>
        <source>Which machines stand at your &amp;bench? (none: no card is limited)</source>
        <translation>¿Qué máquinas hay en el &amp;taller? (ninguna: ninguna ficha queda limitada)</translation>
    </message>
    <message>
        <source>The page Bench has all of it, and your shelf; the page Job has the demo job, invented.</source>
        <translation>La página Taller lo tiene todo, también el estante; la página Trabajo tiene el trabajo demo, inventado.</translation>
    </message>
    <message>
        <source>Be&amp;gin</source>
        <translation>&amp;Empezar</translation>
    </message>
    <message>
        <source>Begin with the &amp;demo job</source>
        <translation>Empezar con el trabajo &amp;demo</translation>
    </message>
</context>
<context>
    <name>WhyPanel</name>
    <message>
        <source>Why the settings differ</source>
        <translation>Por qué difieren los ajustes</translation>
    </message>
    <message>
        <source>Why: {label}</source>
        <translation>Por qué: {label}</translation>
    </message>
    <message>
        <source>The same in all columns.</source>
        <translation>Igual en todas las columnas.</translation>
    </message>
    <message>
        <source>&amp;Hold others against it</source>
        <translation>Comparar las &amp;demás con esta</translation>
    </message>
    <message>
        <source>Move the column left</source>
        <translation>Mover la columna a la izquierda</translation>
    </message>
    <message>
        <source>Move the column right</source>
        <translation>Mover la columna a la derecha</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>&amp;Open on the set-up page</source>
        <translation>Abrir en la página de a&amp;juste</translation>
    </message>
    <message>
        <source>Lo&amp;g it…</source>
        <translation>Re&amp;gistrar…</translation>
    </message>
    <message>
        <source>Pr&amp;int its card…</source>
        <translation>&amp;Imprimir su ficha…</translation>
    </message>
    <message>
        <source>Its card as PD&amp;F…</source>
        <translation>Su fi&amp;cha como PDF…</translation>
    </message>
</context>
<context>
    <name>presenter</name>
    <message>
        <source>AC waves of all columns</source>
        <translation>Ondas de CA de todas las columnas</translation>
    </message>
</context>
</TS>
