<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Animals</name>
    <message>
        <source>%1 · species</source>
        <translation>%1 · especie</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 año</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 años</translation>
    </message>
    <message>
        <source>1 month</source>
        <translation>1 mes</translation>
    </message>
    <message>
        <source>%1 months</source>
        <translation>%1 meses</translation>
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
        <source>sex unknown</source>
        <translation>sexo desconocido</translation>
    </message>
    <message>
        <source>unweaned</source>
        <translation>lactante</translation>
    </message>
    <message>
        <source>growing</source>
        <translation>en crecimiento</translation>
    </message>
    <message>
        <source>adult</source>
        <translation>adulto</translation>
    </message>
    <message>
        <source>pregnant</source>
        <translation>gestante</translation>
    </message>
    <message>
        <source>lactating</source>
        <translation>en lactación</translation>
    </message>
    <message>
        <source>senior</source>
        <translation>senil</translation>
    </message>
    <message>
        <source>carnivore</source>
        <translation>carnívoro</translation>
    </message>
    <message>
        <source>piscivore: fish</source>
        <translation>piscívoro: peces</translation>
    </message>
    <message>
        <source>insectivore: insects</source>
        <translation>insectívoro: insectos</translation>
    </message>
    <message>
        <source>omnivore</source>
        <translation>omnívoro</translation>
    </message>
    <message>
        <source>frugivore: fruit</source>
        <translation>frugívoro: fruta</translation>
    </message>
    <message>
        <source>nectarivore: nectar</source>
        <translation>nectarívoro: néctar</translation>
    </message>
    <message>
        <source>folivore: leaves</source>
        <translation>folívoro: hojas</translation>
    </message>
    <message>
        <source>grazer: grass</source>
        <translation>herbívoro: hierba</translation>
    </message>
    <message>
        <source>granivore: seeds</source>
        <translation>granívoro: semillas</translation>
    </message>
    <message>
        <source>on a scale</source>
        <translation>en una balanza</translation>
    </message>
    <message>
        <source>steps on a scale</source>
        <translation>sube a una balanza</translation>
    </message>
    <message>
        <source>carried, difference</source>
        <translation>en brazos, por diferencia</translation>
    </message>
    <message>
        <source>under anaesthesia</source>
        <translation>bajo anestesia</translation>
    </message>
    <message>
        <source>estimated by eye</source>
        <translation>estimado a ojo</translation>
    </message>
    <message>
        <source>? animals</source>
        <translation>? animales</translation>
    </message>
    <message>
        <source>1 animal</source>
        <translation>1 animal</translation>
    </message>
    <message>
        <source>%1 animals</source>
        <translation>%1 animales</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>inventado</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>~</source>
        <translation>~</translation>
    </message>
    <message>
        <source>not born yet</source>
        <translation>aún no ha nacido</translation>
    </message>
    <message>
        <source>%1 weeks</source>
        <translation>%1 semanas</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>desde el %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source> About %1 was expected.</source>
        <translation> Se esperaba alrededor de %1.</translation>
    </message>
    <message>
        <source>A mass is above 0.</source>
        <translation>Un peso es mayor que 0.</translation>
    </message>
    <message>
        <source>%1?%2 Were these grams, written as kilograms?</source>
        <translation>¿%1?%2 ¿Eran gramos, escritos como kilogramos?</translation>
    </message>
    <message>
        <source>%1?%2 Were these kilograms, written as grams?</source>
        <translation>¿%1?%2 ¿Eran kilogramos, escritos como gramos?</translation>
    </message>
    <message>
        <source>%1?%2 It is far from what this animal weighed before.</source>
        <translation>¿%1?%2 Está lejos de lo que este animal pesaba antes.</translation>
    </message>
    <message>
        <source>That day has not come yet.</source>
        <translation>Ese día aún no ha llegado.</translation>
    </message>
    <message>
        <source>An animal needs a name or number of the house.</source>
        <translation>Un animal necesita un nombre o número de la casa.</translation>
    </message>
    <message>
        <source>An animal needs a species.</source>
        <translation>Un animal necesita una especie.</translation>
    </message>
    <message>
        <source>It cannot be born after it left or died.</source>
        <translation>No puede nacer después de irse o morir.</translation>
    </message>
    <message>
        <source>It cannot arrive after it left or died.</source>
        <translation>No puede llegar después de irse o morir.</translation>
    </message>
    <message>
        <source>It cannot be born after it arrived.</source>
        <translation>No puede nacer después de llegar.</translation>
    </message>
    <message>
        <source>Its life stages follow each other by date.</source>
        <translation>Sus etapas de vida se siguen por fecha.</translation>
    </message>
    <message>
        <source>No life stage begins before it was born.</source>
        <translation>Ninguna etapa de vida empieza antes de nacer.</translation>
    </message>
    <message>
        <source>Say on which day it died.</source>
        <translation>Diga qué día murió.</translation>
    </message>
</context>
<context>
    <name>Ask</name>
    <message>
        <source>Problem files (*.json);;All files (*)</source>
        <translation>Archivos de problema (*.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Open a problem file</source>
        <translation>Abrir un archivo de problema</translation>
    </message>
    <message>
        <source>Save the problem as</source>
        <translation>Guardar el problema como</translation>
    </message>
    <message>
        <source>Collections (*.tarebowl);;All files (*)</source>
        <translation>Colecciones (*.tarebowl);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Open a collection</source>
        <translation>Abrir una colección</translation>
    </message>
    <message>
        <source>A new collection</source>
        <translation>Colección nueva</translation>
    </message>
    <message>
        <source>Import a table of foods</source>
        <translation>Importar una tabla de alimentos</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt *.xlsx);;All files (*)</source>
        <translation>Tablas (*.csv *.tsv *.txt *.xlsx);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Mappings (*.json);;All files (*)</source>
        <translation>Correspondencias (*.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Load a mapping</source>
        <translation>Cargar una correspondencia</translation>
    </message>
    <message>
        <source>Save the mapping as</source>
        <translation>Guardar la correspondencia como</translation>
    </message>
    <message>
        <source>Write the diet sheet</source>
        <translation>Escribir la hoja de la dieta</translation>
    </message>
    <message>
        <source>Pages (*.pdf);;Spreadsheets (*.xlsx);;Web pages (*.html);;Problem files (*.json)</source>
        <translation>Páginas (*.pdf);;Hojas de cálculo (*.xlsx);;Páginas web (*.html);;Archivos de problema (*.json)</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Sin guardar</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 tiene cambios sin guardar.</translation>
    </message>
    <message>
        <source>The collection cannot be read</source>
        <translation>No se puede leer la colección</translation>
    </message>
    <message>
        <source>Nothing is deleted. To salvage copies what can be read into a new file.</source>
        <translation>No se borra nada. Rescatar copia lo que aún se puede leer en un archivo nuevo.</translation>
    </message>
    <message>
        <source>%1 To restore puts the backup of %2 in its place, without what was written since, and keeps the damaged file among the backups.</source>
        <translation>%1 Restaurar pone en su lugar la copia del %2, sin lo que se escribió después, y guarda el archivo dañado entre las copias.</translation>
    </message>
    <message>
        <source>Restore the backup</source>
        <translation>Restaurar la copia</translation>
    </message>
    <message>
        <source>Salvage what can be read…</source>
        <translation>Rescatar lo que se pueda leer…</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo así</translation>
    </message>
    <message>
        <source>A picture or report beside the collection</source>
        <translation>Una imagen o un informe junto a la colección</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Password</source>
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>The password for %1</source>
        <translation>La contraseña de %1</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Persin in flesh, skin, stone and leaves damages heart muscle and mammary tissue; birds, rabbits, rodents and hoofed animals have died of little.</source>
        <translation>La persina de la pulpa, la piel, el hueso y las hojas daña el músculo cardíaco y el tejido mamario; aves, conejos, roedores y ungulados han muerto con pequeñas cantidades.</translation>
    </message>
    <message>
        <source>Give none, leaves and stones included.</source>
        <translation>No dar nada, tampoco hojas ni huesos.</translation>
    </message>
    <message>
        <source>Organosulphur compounds of Allium bulbs and leaves destroy the red blood cells of mammals and birds, and are hardly studied elsewhere; cooking and drying do not remove them.</source>
        <translation>Los compuestos azufrados de los bulbos y hojas de Allium destruyen los glóbulos rojos de mamíferos y aves, y apenas se han estudiado en otros animales; ni la cocción ni el secado los eliminan.</translation>
    </message>
    <message>
        <source>Give none, raw, cooked or as powder.</source>
        <translation>No dar nada, ni crudo, ni cocido, ni en polvo.</translation>
    </message>
    <message>
        <source>Theobromine and caffeine overstimulate heart and nerves, and are cleared slowly by many animals.</source>
        <translation>La teobromina y la cafeína sobreexcitan el corazón y los nervios, y muchos animales las eliminan despacio.</translation>
    </message>
    <message>
        <source>Give none.</source>
        <translation>No dar nada.</translation>
    </message>
    <message>
        <source>Xylitol makes insulin surge in dogs, with low blood sugar and liver failure; other animals are hardly studied.</source>
        <translation>El xilitol dispara la insulina en los perros, con hipoglucemia e insuficiencia hepática; en otros animales apenas se ha estudiado.</translation>
    </message>
    <message>
        <source>Give no product that is sweetened with it.</source>
        <translation>No dar ningún producto endulzado con él.</translation>
    </message>
    <message>
        <source>Grapes and raisins have caused acute kidney failure in dogs, in unpredictable amounts.</source>
        <translation>Las uvas y pasas han causado insuficiencia renal aguda en perros, en cantidades imprevisibles.</translation>
    </message>
    <message>
        <source>Give none to canids.</source>
        <translation>No dar nada a los cánidos.</translation>
    </message>
    <message>
        <source>Lectins of raw beans injure the gut; slow cooking below boiling does not destroy them.</source>
        <translation>Las lectinas de las judías crudas lesionan el intestino; la cocción lenta por debajo de la ebullición no las destruye.</translation>
    </message>
    <message>
        <source>Soak, then boil hard; give none raw or sprouted.</source>
        <translation>Remojar y hervir bien; no dar nada crudo ni germinado.</translation>
    </message>
    <message>
        <source>Solanine and chaconine of green and sprouting potato act on nerves and gut; cooking does not destroy them.</source>
        <translation>La solanina y la chaconina de la patata verde y brotada actúan sobre los nervios y el intestino; la cocción no las destruye.</translation>
    </message>
    <message>
        <source>Discard green and sprouting tubers, peel and haulm.</source>
        <translation>Desechar los tubérculos verdes o brotados, las peladuras y las matas.</translation>
    </message>
    <message>
        <source>Lucibufagins of fireflies act on the heart; a single one has killed bearded dragons.</source>
        <translation>Las lucibufaginas de las luciérnagas actúan sobre el corazón; una sola ha matado a dragones barbudos.</translation>
    </message>
    <message>
        <source>Give none, and keep wild-caught ones out of the enclosure.</source>
        <translation>No dar nada, y mantener las silvestres fuera del recinto.</translation>
    </message>
    <message>
        <source>Oxalic acid and other compounds of rhubarb leaves injure kidneys and bind calcium.</source>
        <translation>El ácido oxálico y otros compuestos de las hojas de ruibarbo dañan los riñones y fijan el calcio.</translation>
    </message>
    <message>
        <source>Oxalate binds calcium: above one mole of it for one of calcium it could bind all that the food brings. Published contents of one food differ tenfold.</source>
        <translation>El oxalato fija el calcio: por encima de un mol por cada mol de calcio podría fijar todo el que aporta el alimento. Los contenidos publicados de un mismo alimento varían hasta diez veces.</translation>
    </message>
    <message>
        <source>Count little on this food&apos;s calcium; vary greens, and keep such ones to a small share.</source>
        <translation>Contar poco con el calcio de este alimento; variar las verduras y dar estas en pequeña proporción.</translation>
    </message>
    <message>
        <source>Phytate of seeds binds calcium, zinc and iron, and its phosphorus is little used by animals with a simple stomach.</source>
        <translation>El fitato de las semillas fija el calcio, el zinc y el hierro, y los animales de estómago simple aprovechan poco su fósforo.</translation>
    </message>
    <message>
        <source>Do not count all of its phosphorus; look at zinc and calcium.</source>
        <translation>No contar todo su fósforo; vigilar el zinc y el calcio.</translation>
    </message>
    <message>
        <source>Thiaminase of some raw and thawed fish destroys thiamin, also that of the rest of the bowl.</source>
        <translation>La tiaminasa de algunos pescados crudos o descongelados destruye la tiamina, también la del resto del cuenco.</translation>
    </message>
    <message>
        <source>Keep to a small share or cook; give thiamin apart from the fish. The vet decides on the dose.</source>
        <translation>Dar en pequeña proporción o cocinar; dar la tiamina aparte del pescado. El veterinario decide la dosis.</translation>
    </message>
    <message>
        <source>Avidin of raw egg white binds biotin; boiling undoes it.</source>
        <translation>La avidina de la clara cruda fija la biotina; hervirla lo evita.</translation>
    </message>
    <message>
        <source>Boil the egg.</source>
        <translation>Hervir el huevo.</translation>
    </message>
    <message>
        <source>Vitamin C makes iron easier to absorb, and these animals store iron.</source>
        <translation>La vitamina C facilita la absorción del hierro, y estos animales almacenan hierro.</translation>
    </message>
    <message>
        <source>Feed apart from the food that is richest in iron; ask the vet about blood values.</source>
        <translation>Dar aparte del alimento más rico en hierro; consultar al veterinario sobre los valores en sangre.</translation>
    </message>
    <message>
        <source>Rich in iron that is easily absorbed, and these animals store iron.</source>
        <translation>Rico en hierro que se absorbe con facilidad, y estos animales almacenan hierro.</translation>
    </message>
    <message>
        <source>Keep iron as low as the targets allow.</source>
        <translation>Mantener el hierro tan bajo como permitan los objetivos.</translation>
    </message>
    <message>
        <source>New World primates use vitamin D2 poorly: only D3 counts for them.</source>
        <translation>Los primates del Nuevo Mundo aprovechan mal la vitamina D2: para ellos solo cuenta la D3.</translation>
    </message>
    <message>
        <source>Do not count its vitamin D; give D3 within the safe limit, and UV-B light where the house has it.</source>
        <translation>No contar su vitamina D; dar D3 dentro del límite seguro, y luz UV-B donde la casa la tenga.</translation>
    </message>
</context>
<context>
    <name>Chart</name>
    <message>
        <source>group</source>
        <translation>grupo</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>media</translation>
    </message>
    <message>
        <source> (doubtful)</source>
        <translation> (dudoso)</translation>
    </message>
    <message>
        <source> (left out)</source>
        <translation> (descartado)</translation>
    </message>
    <message>
        <source>condition on %1: %2 of %3</source>
        <translation>condición el %1: %2 de %3</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
</context>
<context>
    <name>Checks</name>
    <message>
        <source>Another food</source>
        <translation>Otro alimento</translation>
    </message>
    <message>
        <source>Proximates close: %1 g of 100 g.</source>
        <translation>Los componentes cierran: %1 g de 100 g.</translation>
    </message>
    <message>
        <source>Whether the proximates close is not known.</source>
        <translation>No se sabe si los componentes cierran.</translation>
    </message>
    <message>
        <source>Water, protein, fat, ash and carbohydrate are needed for it.</source>
        <translation>Para ello hacen falta agua, proteína, grasa, ceniza e hidratos de carbono.</translation>
    </message>
    <message>
        <source>%1 scatters by %2.</source>
        <translation>%1 se dispersa en %2.</translation>
    </message>
    <message>
        <source>More samples, or two foods where there are two.</source>
        <translation>Más muestras, o dos alimentos donde haya dos.</translation>
    </message>
    <message>
        <source>Ca:P %1 is below 1.</source>
        <translation>Ca:P %1 está por debajo de 1.</translation>
    </message>
    <message>
        <source>Calcium must come from elsewhere; insects can be dusted or gut-loaded.</source>
        <translation>El calcio debe venir de otra parte; los insectos se pueden espolvorear o alimentar antes.</translation>
    </message>
    <message>
        <source>A label guarantees a bound and no mean: %1. Diets count these as unknown.</source>
        <translation>Una etiqueta garantiza un límite y no una media: %1. Las dietas los cuentan como desconocidos.</translation>
    </message>
    <message>
        <source>A laboratory&apos;s value would settle it.</source>
        <translation>El valor de un laboratorio lo resolvería.</translation>
    </message>
</context>
<context>
    <name>Conflict</name>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1: yours %2, now there %3</source>
        <translation>%1: lo suyo %2, ahora hay %3</translation>
    </message>
    <message>
        <source>It was removed.</source>
        <translation>Se ha eliminado.</translation>
    </message>
</context>
<context>
    <name>Days</name>
    <message>
        <source>ddd d MMM</source>
        <comment>a day and its weekday, as Qt writes formats</comment>
        <translation>ddd d MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>a day, as Qt writes formats</comment>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>d MMM yyyy, HH:mm</source>
        <comment>a day and its time, as Qt writes formats</comment>
        <translation>d MMM yyyy, HH:mm</translation>
    </message>
</context>
<context>
    <name>Edit</name>
    <message>
        <source>%1 to %2 g</source>
        <translation>%1 a %2 g</translation>
    </message>
    <message>
        <source>another bowl</source>
        <translation>otro cuenco</translation>
    </message>
    <message>
        <source>lock %1</source>
        <translation>bloquear %1</translation>
    </message>
    <message>
        <source>unlock %1</source>
        <translation>desbloquear %1</translation>
    </message>
    <message>
        <source>limits of %1</source>
        <translation>límites de %1</translation>
    </message>
    <message>
        <source>what is sought</source>
        <translation>lo que se busca</translation>
    </message>
    <message>
        <source>how sure</source>
        <translation>seguridad</translation>
    </message>
    <message>
        <source>target of %1</source>
        <translation>objetivo de %1</translation>
    </message>
    <message>
        <source>add %1</source>
        <translation>añadir %1</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>quitar %1</translation>
    </message>
    <message>
        <source>preparation of %1</source>
        <translation>preparación de %1</translation>
    </message>
    <message>
        <source>purpose of %1</source>
        <translation>fin de %1</translation>
    </message>
    <message>
        <source>allow %1</source>
        <translation>permitir %1</translation>
    </message>
    <message>
        <source>structure rules</source>
        <translation>reglas de estructura</translation>
    </message>
    <message>
        <source>group shares</source>
        <translation>cuotas de grupos</translation>
    </message>
</context>
<context>
    <name>Energy</name>
    <message>
        <source>at rest</source>
        <translation>en reposo</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation>mantenimiento</translation>
    </message>
    <message>
        <source>free-living</source>
        <translation>en libertad</translation>
    </message>
    <message>
        <source>× energy at rest at 1 kg</source>
        <translation>× energía en reposo a 1 kg</translation>
    </message>
    <message>
        <source>× energy for maintenance at 1 kg</source>
        <translation>× energía de mantenimiento a 1 kg</translation>
    </message>
    <message>
        <source>× energy of free life at 1 kg</source>
        <translation>× energía de vida libre a 1 kg</translation>
    </message>
    <message>
        <source>life stage</source>
        <translation>etapa de vida</translation>
    </message>
    <message>
        <source>activity</source>
        <translation>actividad</translation>
    </message>
    <message>
        <source>season</source>
        <translation>estación</translation>
    </message>
    <message>
        <source>aim for condition</source>
        <translation>condición deseada</translation>
    </message>
    <message>
        <source>house factor</source>
        <translation>factor de la casa</translation>
    </message>
    <message>
        <source>This is no feeding rate: the need of an animal without body heat of its own follows its temperature. A cool animal needs far less.</source>
        <translation>Esto no es una tasa de alimentación: la necesidad de un animal sin calor propio sigue su temperatura. Un animal frío necesita mucho menos.</translation>
    </message>
    <message>
        <source>This is what a free-living animal spends; one in human care spends less.</source>
        <translation>Es lo que gasta un animal en libertad; uno bajo cuidado humano gasta menos.</translation>
    </message>
    <message>
        <source>This animal is outside of what the source speaks of: %1.</source>
        <translation>Este animal está fuera de lo que trata la fuente: %1.</translation>
    </message>
    <message>
        <source>another range of body mass</source>
        <translation>otro intervalo de peso vivo</translation>
    </message>
    <message>
        <source>A number here is from memory and was not looked up.</source>
        <translation>Un número de aquí es de memoria y no se ha consultado.</translation>
    </message>
    <message>
        <source>Two factors count the same thing, or one stands on a level that holds it already.</source>
        <translation>Dos factores cuentan lo mismo, o uno está sobre un nivel que ya lo contiene.</translation>
    </message>
    <message>
        <source>%1, %2: %3 × kg^%4</source>
        <translation>%1, %2: %3 × kg^%4</translation>
    </message>
    <message>
        <source>%1, %2: × %3 of %4</source>
        <translation>%1, %2: × %3 de %4</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
</context>
<context>
    <name>Files</name>
    <message>
        <source>cannot be read: %1</source>
        <translation>no se puede leer: %1</translation>
    </message>
    <message>
        <source>model: %1</source>
        <translation>modelo: %1</translation>
    </message>
    <message>
        <source>%1 was not saved: %2</source>
        <translation>%1 no se guardó: %2</translation>
    </message>
    <message>
        <source>1 animal</source>
        <translation>1 animal</translation>
    </message>
    <message>
        <source>%1 animals</source>
        <translation>%1 animales</translation>
    </message>
    <message>
        <source>The collection is set up</source>
        <translation>La colección está preparada</translation>
    </message>
    <message>
        <source>It is empty and open, and you may do everything in it. Nobody else may open it yet. Let each person in, in their role, with the command

tarebowl server add %1 PERSON ROLE

PERSON is their name on the server. ROLE is reader, keeper, vet, nutritionist or curator.</source>
        <translation>Está vacía y abierta, y usted puede hacer todo en ella. Nadie más puede abrirla todavía. Deje entrar a cada persona en su función con la orden

tarebowl server add %1 PERSON ROLE

PERSON es su nombre en el servidor. ROLE es reader, keeper, vet, nutritionist o curator.</translation>
    </message>
    <message numerus="yes">
        <source>This machine&apos;s clock is %n minute(s) ahead of the server&apos;s.</source>
        <translation>
            <numerusform>El reloj de este equipo va %n minuto por delante del del servidor.</numerusform>
            <numerusform>El reloj de este equipo va %n minutos por delante del del servidor.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>This machine&apos;s clock is %n minute(s) behind the server&apos;s.</source>
        <translation>
            <numerusform>El reloj de este equipo va %n minuto por detrás del del servidor.</numerusform>
            <numerusform>El reloj de este equipo va %n minutos por detrás del del servidor.</numerusform>
        </translation>
    </message>
    <message>
        <source>Two clocks disagree</source>
        <translation>Dos relojes no coinciden</translation>
    </message>
    <message>
        <source>%1 What you write is dated by the server&apos;s clock, as it is for every desk. Which day is today still goes by this machine: set its clock and open the collection again, or tell whoever runs the server.</source>
        <translation>%1 Lo que usted escribe lleva la hora del servidor, como en todos los puestos. Qué día es hoy sigue yendo según este equipo: ponga su reloj en hora y vuelva a abrir la colección, o avise a quien lleva el servidor.</translation>
    </message>
</context>
<context>
    <name>Food</name>
    <message>
        <source>(invented)</source>
        <translation>(inventado)</translation>
    </message>
</context>
<context>
    <name>Foods</name>
    <message>
        <source>per 100 g as fed</source>
        <translation>por 100 g en fresco</translation>
    </message>
    <message>
        <source>per kg DM</source>
        <translation>por kg de MS</translation>
    </message>
    <message>
        <source>per 1000 %1 ME</source>
        <translation>por 1000 %1 EM</translation>
    </message>
    <message>
        <source>trace</source>
        <translation>trazas</translation>
    </message>
    <message>
        <source>not detected</source>
        <translation>no detectado</translation>
    </message>
    <message>
        <source>(n %1)</source>
        <translation>(n %1)</translation>
    </message>
    <message>
        <source>own laboratory</source>
        <translation>laboratorio propio</translation>
    </message>
    <message>
        <source>publication</source>
        <translation>publicación</translation>
    </message>
    <message>
        <source>label</source>
        <translation>etiqueta</translation>
    </message>
    <message>
        <source>estimate</source>
        <translation>estimación</translation>
    </message>
    <message>
        <source>set by hand: %1</source>
        <translation>puesto a mano: %1</translation>
    </message>
    <message>
        <source>%1 set aside</source>
        <translation>%1 apartados</translation>
    </message>
    <message>
        <source>a bound, %1</source>
        <translation>un límite, %1</translation>
    </message>
    <message>
        <source>worked out from the raw food</source>
        <translation>calculado del alimento crudo</translation>
    </message>
    <message>
        <source>worked out from the recipe</source>
        <translation>calculado de la receta</translation>
    </message>
    <message>
        <source>never measured</source>
        <translation>nunca medido</translation>
    </message>
    <message>
        <source>a bound, not a mean</source>
        <translation>un límite, no una media</translation>
    </message>
    <message>
        <source>own laboratory, 1 sample</source>
        <translation>laboratorio propio, 1 muestra</translation>
    </message>
    <message>
        <source>own laboratory, %1 samples</source>
        <translation>laboratorio propio, %1 muestras</translation>
    </message>
    <message>
        <source>%1, newest %2</source>
        <translation>%1, la más nueva %2</translation>
    </message>
    <message>
        <source>batch %1</source>
        <translation>lote %1</translation>
    </message>
    <message>
        <source>set aside: %1</source>
        <translation>apartado: %1</translation>
    </message>
    <message>
        <source>passed over: a more trusted origin goes first</source>
        <translation>omitido: va antes un origen más fiable</translation>
    </message>
    <message>
        <source>passed over: a newer one goes first</source>
        <translation>omitido: va antes una más nueva</translation>
    </message>
    <message>
        <source>passed over: others have a date</source>
        <translation>omitido: otras tienen fecha</translation>
    </message>
    <message>
        <source>not used: the water or energy it rests on is unknown</source>
        <translation>no se usa: se desconoce el agua o la energía en que se apoya</translation>
    </message>
    <message>
        <source>not used: a guarantee is no mean</source>
        <translation>no se usa: una garantía no es una media</translation>
    </message>
    <message>
        <source>not used: outside the range of the method</source>
        <translation>no se usa: fuera del intervalo del método</translation>
    </message>
    <message>
        <source>(invented)</source>
        <translation>(inventado)</translation>
    </message>
    <message>
        <source>%1 (invented)</source>
        <translation>%1 (inventado)</translation>
    </message>
</context>
<context>
    <name>Format</name>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>ms</source>
        <translation>ms</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>mg</source>
        <translation>mg</translation>
    </message>
    <message>
        <source>µg</source>
        <translation>µg</translation>
    </message>
    <message>
        <source>kcal</source>
        <translation>kcal</translation>
    </message>
    <message>
        <source>kJ</source>
        <translation>kJ</translation>
    </message>
    <message>
        <source>IU</source>
        <translation>UI</translation>
    </message>
    <message>
        <source>kg as fed</source>
        <translation>kg fresco</translation>
    </message>
    <message>
        <source>kg DM</source>
        <translation>kg MS</translation>
    </message>
    <message>
        <source>1000 kcal</source>
        <translation>1000 kcal</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>kg body mass</source>
        <translation>kg de peso vivo</translation>
    </message>
    <message>
        <source>kg^0.75</source>
        <translation>kg^0,75</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 al día</translation>
    </message>
    <message>
        <source>%1/%2</source>
        <translation>%1/%2</translation>
    </message>
</context>
<context>
    <name>Guide</name>
    <message>
        <source>A nutritionist designs the first diet of a species</source>
        <translation>Un nutricionista diseña la primera dieta de una especie</translation>
    </message>
    <message>
        <source>The gardens took in lowland streaked tenrecs, and nobody has designed their diet yet. Type “streaked tenrecs” into *Find an animal* and press Enter. (A species of your own is begun by *Add*.)</source>
        <translation>El parque acogió tenrecs rayados, y nadie ha diseñado aún su dieta. Escriba «streaked tenrecs» en *Buscar un animal* y pulse Intro. (Una especie propia se empieza con *Añadir*.)</translation>
    </message>
    <message>
        <source>Choose *energy need*: it is worked out step by step, and each number names its source or is the house&apos;s own. Press F1 on any of them.</source>
        <translation>Elija *necesidad de energía*: se calcula paso a paso, y cada número nombra su fuente o es de la casa. Pulse F1 en cualquiera de ellos.</translation>
    </message>
    <message>
        <source>Choose *targets*: what a diet of this group is judged by. Each says where it was stated. What comes from a model species is a starting point, not a requirement.</source>
        <translation>Elija *objetivos*: por lo que se juzga una dieta de este grupo. Cada uno dice dónde se indicó. Lo que viene de una especie modelo es un punto de partida, no un requerimiento.</translation>
    </message>
    <message>
        <source>These targets are a draft: nobody has decided on them. Press *Put in force…*; in a real house that is the nutritionist&apos;s decision.</source>
        <translation>Estos objetivos son un borrador: nadie ha decidido sobre ellos. Pulse *Poner en vigor…*; en una casa real lo decide el nutricionista.</translation>
    </message>
    <message>
        <source>Say why in *Reason* and press Enter. From today on the group&apos;s diets are judged by these targets.</source>
        <translation>Diga por qué en *Motivo* y pulse Intro. Desde hoy las dietas del grupo se juzgan por estos objetivos.</translation>
    </message>
    <message>
        <source>Press *Design a diet*. It opens on the desk in Diets, empty.</source>
        <translation>Pulse *Diseñar una dieta*. Se abre en la mesa de Dietas, vacía.</translation>
    </message>
    <message>
        <source>Type part of a food&apos;s name into *Add a food* and press Enter: “cricket”. Then add “earthworm” and “limestone” in the same way. The grams follow as foods are added.</source>
        <translation>Escriba parte de un nombre en *Añadir un alimento* y pulse Intro: «cricket». Añada después «earthworm» y «limestone» del mismo modo. Los gramos siguen según se añaden alimentos.</translation>
    </message>
    <message>
        <source>Look at the *Balance ladder*, at the right: what falls short comes first. A shaded stretch is a target&apos;s zone, the mark is the diet, and what nobody measured is hatched, never counted as nothing. Choose a rung to see which food brings how much.</source>
        <translation>Mire la *Escalera de balance*, a la derecha: lo que falta va primero. El tramo sombreado es la zona de un objetivo, la marca es la dieta, y lo que nadie midió está rayado, nunca contado como nada. Elija un peldaño para ver qué alimento aporta cuánto.</translation>
    </message>
    <message>
        <source>Type a gram of your own into *Foods of the diet*: it is locked, and the other foods give way. Ctrl+Z takes it back. The card *Why* says what cannot hold together, and offers what would settle it.</source>
        <translation>Escriba unos gramos suyos en *Alimentos de la dieta*: el alimento queda bloqueado, y los demás ceden. Ctrl+Z lo deshace. La tarjeta *Por qué* dice lo que no puede cumplirse a la vez, y ofrece lo que lo resolvería.</translation>
    </message>
    <message>
        <source>Press *Submit…*: the diet waits for a decision, and is not edited while it waits.</source>
        <translation>Pulse *Presentar…*: la dieta espera una decisión, y no se cambia mientras espera.</translation>
    </message>
    <message>
        <source>Say why in *Reason* and press Enter. Whoever decides presses *Approve…*, which appears now; from then on this version never changes, and the kitchen follows it. Targets and foods are only as good as their sources: the nutritionist decides.</source>
        <translation>Diga por qué en *Motivo* y pulse Intro. Quien decide pulsa *Aprobar…*, que aparece ahora; desde entonces esta versión no cambia nunca, y la cocina la sigue. Objetivos y alimentos solo son tan buenos como sus fuentes: decide el nutricionista.</translation>
    </message>
    <message>
        <source>A keeper checks a swap and weighs</source>
        <translation>Un cuidador comprueba un cambio y pesa</translation>
    </message>
    <message>
        <source>*What is due today* says which sections have bowls to prepare. A row leads to its sheet; Ctrl+5 goes to the Kitchen as well.</source>
        <translation>*Lo que hay que hacer hoy* dice qué secciones tienen cuencos por preparar. Una fila lleva a su hoja; Ctrl+5 también va a la Cocina.</translation>
    </message>
    <message>
        <source>Choose Reptiles and Bats in *Section*. Its bowls stand below, in *Bowls of the sheet*; the first food of the first one is on the scale.</source>
        <translation>Elija Reptiles and Bats en *Sección*. Sus cuencos están debajo, en *Cuencos de la hoja*; el primer alimento del primero está en la balanza.</translation>
    </message>
    <message>
        <source>Suppose this food did not come. Press *Not available* (the key * does it too).</source>
        <translation>Suponga que este alimento no llegó. Pulse *No disponible* (la tecla * también lo hace).</translation>
    </message>
    <message>
        <source>*What to give instead* ranks what is on hand, the nearest first, in grams, with what it does to the balance and who must approve it. Arrows choose, Enter uses. Nothing is missing this time: *Back* (Esc) goes to the bowl again.</source>
        <translation>*Qué dar en su lugar* ordena lo que hay, lo más parecido primero, en gramos, con lo que hace al balance y quién debe aprobarlo. Las flechas eligen, Intro usa. Esta vez no falta nada: *Atrás* (Esc) vuelve al cuenco.</translation>
    </message>
    <message>
        <source>Type what the scale shows into *Weight in g*. The bar says under, in or over. Enter keeps the weight, and the next food is on the scale. A doubtful one is asked about first.</source>
        <translation>Escriba lo que muestra la balanza en *Peso en g*. La barra dice por debajo, dentro o por encima. Intro guarda el peso, y el siguiente alimento está en la balanza. Si es dudoso, se pregunta antes.</translation>
    </message>
    <message>
        <source>Tomorrow, *Leftovers* asks what came back of each food. What nobody weighs stays unknown.</source>
        <translation>Mañana, *Sobras* pregunta lo que volvió de cada alimento. Lo que nadie pesa sigue siendo desconocido.</translation>
    </message>
    <message>
        <source>A vet reviews calcium and looks back</source>
        <translation>Un veterinario revisa el calcio y mira atrás</translation>
    </message>
    <message>
        <source>Choose the bearded dragons in *Groups and animals*. *How far back* says how many days up to today are looked at; the feeding of the sample ends on 24 November 2026.</source>
        <translation>Elija los dragones barbudos en *Grupos y animales*. *Cuánto hacia atrás* dice cuántos días hasta hoy se miran; la alimentación del ejemplo termina el 24 de noviembre de 2026.</translation>
    </message>
    <message>
        <source>*Calcium review* sets calcium, phosphorus, Ca:P and vitamin D as eaten against their targets, in *Calcium against its targets*. Days that nobody weighed widen the range.</source>
        <translation>*Revisión del calcio* pone calcio, fósforo, Ca:P y vitamina D como se comieron frente a sus objetivos, en *Calcio frente a sus objetivos*. Los días que nadie pesó amplían el intervalo.</translation>
    </message>
    <message>
        <source>Choose one in *Supplement*: the review says the least dose that brings calcium in, and whether that stays below the safe limit. Whether it is given, the vet decides.</source>
        <translation>Elija uno en *Suplemento*: la revisión dice la menor dosis que trae el calcio a su zona, y si queda bajo el límite seguro. Si se da, lo decide el veterinario.</translation>
    </message>
    <message>
        <source>Now the ruffed lemurs in *Groups and animals*: their faeces were soft. In *What was seen* put the hand on a line with ▲ and press Enter.</source>
        <translation>Ahora los lémures rufos en *Grupos y animales*: sus heces eran blandas. En *Lo que se vio* ponga la mano en una línea con ▲ y pulse Intro.</translation>
    </message>
    <message>
        <source>*Look-back* shows in *Foods and the sign* which foods were in the bowls before it, against days without it. *Hours before the sign* says how far back. It shows what goes together, not what caused what.</source>
        <translation>*Retrospectiva* muestra en *Alimentos y el signo* qué alimentos había en los cuencos antes de él, frente a días sin él. *Horas antes del signo* dice cuánto hacia atrás. Muestra lo que va junto, no qué causó qué.</translation>
    </message>
    <message>
        <source>*Look-back for the file…* writes it as one page, to print or to keep.</source>
        <translation>*Retrospectiva para el expediente…* lo escribe como una página, para imprimir o guardar.</translation>
    </message>
</context>
<context>
    <name>Health</name>
    <message>
        <source>the group</source>
        <translation>el grupo</translation>
    </message>
    <message>
        <source>%1 goes from %2 to %3, formed is %4, liquid is %5</source>
        <translation>%1 va de %2 a %3, formado es %4, líquido es %5</translation>
    </message>
    <message>
        <source>Written down by %1</source>
        <translation>Anotado por %1</translation>
    </message>
    <message>
        <source>A sign: Enter looks back from it</source>
        <translation>Un signo: Intro mira atrás desde él</translation>
    </message>
    <message>
        <source>Faeces</source>
        <translation>Heces</translation>
    </message>
    <message>
        <source>Appetite</source>
        <translation>Apetito</translation>
    </message>
    <message>
        <source>Vomiting</source>
        <translation>Vómito</translation>
    </message>
    <message>
        <source>Limping</source>
        <translation>Cojera</translation>
    </message>
    <message>
        <source>Fracture</source>
        <translation>Fractura</translation>
    </message>
    <message>
        <source>Blood</source>
        <translation>Sangre</translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation>Tratamiento</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Otro</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>%1, %2: %3%4</source>
        <translation>%1, %2: %3%4</translation>
    </message>
    <message>
        <source>%1 a day and animal</source>
        <translation>%1 por día y animal</translation>
    </message>
    <message>
        <source>Ca:P</source>
        <translation>Ca:P</translation>
    </message>
    <message>
        <source>▲ stands out: %1</source>
        <translation>▲ destaca: %1</translation>
    </message>
    <message>
        <source> (new)</source>
        <translation> (nuevo)</translation>
    </message>
    <message>
        <source>nothing to compare</source>
        <translation>nada que comparar</translation>
    </message>
    <message>
        <source>%1 (%2 … %3)%4</source>
        <translation>%1 (%2 … %3)%4</translation>
    </message>
    <message>
        <source> ½ added</source>
        <translation> ½ añadido</translation>
    </message>
    <message>
        <source>Always eaten together with %1: they cannot be told apart.</source>
        <translation>Siempre se come junto con %1: no se pueden distinguir.</translation>
    </message>
    <message>
        <source>%1 of %2 on %3</source>
        <translation>%1 de %2 el %3</translation>
    </message>
    <message>
        <source>? No intake was recorded in the hours before this sign.</source>
        <translation>? No se anotó ninguna ingesta en las horas antes de este signo.</translation>
    </message>
    <message>
        <source>Fed by %1, version %2, from %3.</source>
        <translation>Alimentado con %1, versión %2, desde el %3.</translation>
    </message>
</context>
<context>
    <name>HealthPage</name>
    <message>
        <source>%1: a page for the file is written as .pdf, .html or .json</source>
        <translation>%1: una página para el expediente se escribe como .pdf, .html o .json</translation>
    </message>
</context>
<context>
    <name>Hints</name>
    <message>
        <source>Begin with foods</source>
        <translation>Empezar por los alimentos</translation>
    </message>
    <message>
        <source>Import a table of foods, or add them one by one, in the room Foods.</source>
        <translation>Importar una tabla de alimentos, o añadirlos uno a uno, en la sala Alimentos.</translation>
    </message>
    <message>
        <source>Add a species</source>
        <translation>Añadir una especie</translation>
    </message>
    <message>
        <source>With its group, energy need and targets, in the room Animals.</source>
        <translation>Con su grupo, su necesidad de energía y sus objetivos, en la sala Animales.</translation>
    </message>
    <message>
        <source>Have a diet approved</source>
        <translation>Hacer aprobar una dieta</translation>
    </message>
    <message>
        <source>Design a diet</source>
        <translation>Diseñar una dieta</translation>
    </message>
    <message>
        <source>A diet is fed once it was submitted and approved, in the room Diets.</source>
        <translation>Una dieta se da cuando se ha presentado y aprobado, en la sala Dietas.</translation>
    </message>
    <message>
        <source>For a group that has targets, in the room Diets. Once approved, it is fed.</source>
        <translation>Para un grupo que tiene objetivos, en la sala Dietas. Una vez aprobada, se da.</translation>
    </message>
    <message>
        <source>Nothing is due yet.</source>
        <translation>Aún no hay nada pendiente.</translation>
    </message>
    <message>
        <source>Today says what the house has to do: bowls to prepare and weigh, leftovers that came back, swaps and diets that wait for a decision.</source>
        <translation>Hoy dice lo que la casa tiene que hacer: cuencos por preparar y pesar, sobras que volvieron, y cambios y dietas que esperan una decisión.</translation>
    </message>
    <message>
        <source>No diet can be designed yet.</source>
        <translation>Aún no se puede diseñar ninguna dieta.</translation>
    </message>
    <message>
        <source>Diets is the design desk: foods and grams, and beside them how they stand against the targets of a group. It needs foods, and animals with targets.</source>
        <translation>Dietas es la mesa de diseño: alimentos y gramos, y al lado cómo quedan frente a los objetivos de un grupo. Necesita alimentos, y animales con objetivos.</translation>
    </message>
    <message>
        <source>There is no bowl to prepare yet.</source>
        <translation>Aún no hay ningún cuenco que preparar.</translation>
    </message>
    <message>
        <source>The Kitchen prepares what the diets in force say: a sheet for each section and day, weights typed or read from a scale, and what to give instead of a food that did not come.</source>
        <translation>La cocina prepara lo que dicen las dietas vigentes: una hoja por sección y día, pesos tecleados o leídos de una balanza, y qué dar en lugar de un alimento que no llegó.</translation>
    </message>
    <message>
        <source>Nothing was fed yet.</source>
        <translation>Aún no se ha dado nada.</translation>
    </message>
    <message>
        <source>Intake shows what was really eaten: what the kitchen weighed in, less what came back, over a week or over years, against the targets.</source>
        <translation>Ingesta muestra lo que de verdad se comió: lo que pesó la cocina, menos lo que volvió, en una semana o en años, frente a los objetivos.</translation>
    </message>
    <message>
        <source>There is no patient yet.</source>
        <translation>Aún no hay ningún paciente.</translation>
    </message>
    <message>
        <source>Health keeps what was seen of animals, sets it beside what was eaten, reviews calcium, and looks back from a sign to the bowls before it.</source>
        <translation>Salud guarda lo que se vio en los animales, lo pone junto a lo comido, revisa el calcio y mira desde un signo a los cuencos anteriores.</translation>
    </message>
</context>
<context>
    <name>Import</name>
    <message>
        <source>1 value</source>
        <translation>1 valor</translation>
    </message>
    <message>
        <source>%1 values</source>
        <translation>%1 valores</translation>
    </message>
    <message>
        <source>1 food new</source>
        <translation>1 alimento nuevo</translation>
    </message>
    <message>
        <source>%1 foods new</source>
        <translation>%1 alimentos nuevos</translation>
    </message>
    <message>
        <source>1 value new</source>
        <translation>1 valor nuevo</translation>
    </message>
    <message>
        <source>%1 values new</source>
        <translation>%1 valores nuevos</translation>
    </message>
    <message>
        <source>1 value changed</source>
        <translation>1 valor cambiado</translation>
    </message>
    <message>
        <source>%1 values changed</source>
        <translation>%1 valores cambiados</translation>
    </message>
    <message>
        <source>“%1” is no number</source>
        <translation>«%1» no es un número</translation>
    </message>
    <message>
        <source>“%1” does not group its thousands by three</source>
        <translation>«%1» no agrupa sus millares de tres en tres</translation>
    </message>
    <message>
        <source>“%1” is a formula; what it was worked out to is not in the table</source>
        <translation>«%1» es una fórmula; lo que dio no está en la tabla</translation>
    </message>
    <message>
        <source>“%1” is a spreadsheet&apos;s error</source>
        <translation>«%1» es un error de hoja de cálculo</translation>
    </message>
    <message>
        <source>“%1” is a date; a spreadsheet made one of a number</source>
        <translation>«%1» es una fecha; una hoja de cálculo hizo una de un número</translation>
    </message>
    <message>
        <source>“%1” is no finite number</source>
        <translation>«%1» no es un número finito</translation>
    </message>
    <message>
        <source>“%1” is below 0</source>
        <translation>«%1» está por debajo de 0</translation>
    </message>
    <message>
        <source>%1 stands on line %2 already, with a record of its own</source>
        <translation>%1 ya está en la línea %2, con un registro propio</translation>
    </message>
    <message>
        <source>a second value of %1 for %2</source>
        <translation>un segundo valor de %1 para %2</translation>
    </message>
    <message>
        <source>“%1” is another value than on line %2</source>
        <translation>«%1» es otro valor que en la línea %2</translation>
    </message>
    <message>
        <source>%1 changed</source>
        <translation>%1 cambiados</translation>
    </message>
    <message>
        <source>%1 unchanged</source>
        <translation>%1 sin cambio</translation>
    </message>
    <message>
        <source>%1 of these kept under the table&apos;s own name</source>
        <translation>%1 de ellos guardados con el nombre de la tabla</translation>
    </message>
    <message>
        <source>%1 left out</source>
        <translation>%1 omitidos</translation>
    </message>
    <message>
        <source> 1 cell says that nothing is known, and stays unknown.</source>
        <translation> 1 celda dice que no se sabe nada, y queda desconocida.</translation>
    </message>
    <message>
        <source> %1 cells say that nothing is known, and stay unknown.</source>
        <translation> %1 celdas dicen que no se sabe nada, y quedan desconocidas.</translation>
    </message>
    <message>
        <source>new: %1</source>
        <translation>nuevo: %1</translation>
    </message>
    <message>
        <source>as it was: %1</source>
        <translation>como estaba: %1</translation>
    </message>
    <message>
        <source>whole line</source>
        <translation>línea entera</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>%1 cells, where the header has %2</source>
        <translation>%1 celdas, donde la cabecera tiene %2</translation>
    </message>
    <message>
        <source>neither name nor code of a food</source>
        <translation>ni nombre ni código de un alimento</translation>
    </message>
    <message>
        <source>“%1” is no unit known here</source>
        <translation>«%1» no es una unidad conocida aquí</translation>
    </message>
    <message>
        <source>“%1”: this nutrient is not measured in the column&apos;s unit</source>
        <translation>«%1»: este nutriente no se mide en la unidad de la columna</translation>
    </message>
    <message>
        <source>“%1” would be more than 105 g in 100 g: is the unit right?</source>
        <translation>«%1» serían más de 105 g en 100 g: ¿está bien la unidad?</translation>
    </message>
    <message>
        <source>“%1” is no nutrient, qualifier, basis or number of samples</source>
        <translation>«%1» no es nutriente, calificador, base ni número de muestras</translation>
    </message>
    <message>
        <source>“%1” is no name: a formula, or longer than 500 characters</source>
        <translation>«%1» no es un nombre: una fórmula, o más de 500 caracteres</translation>
    </message>
    <message>
        <source>the list of foods has no code “%1”</source>
        <translation>la lista de alimentos no tiene el código «%1»</translation>
    </message>
    <message>
        <source>left out: no nutrient is called “%1” here, and its unit is none known here</source>
        <translation>omitido: ningún nutriente se llama «%1» aquí, y su unidad no se conoce aquí</translation>
    </message>
    <message>
        <source>kept under its own name: no nutrient is called “%1” here</source>
        <translation>guardado con su propio nombre: ningún nutriente se llama «%1» aquí</translation>
    </message>
    <message>
        <source>left out as the mapping says: %1</source>
        <translation>omitido, como dice la correspondencia: %1</translation>
    </message>
    <message>
        <source>left out: the same value stands on line %1</source>
        <translation>omitido: el mismo valor está en la línea %1</translation>
    </message>
    <message>
        <source>left out: “%1” has no value</source>
        <translation>omitido: «%1» no tiene valor</translation>
    </message>
    <message>
        <source>a standard error without n says no SD; the value is taken without it</source>
        <translation>un error típico sin n no da desviación típica; el valor se toma sin ella</translation>
    </message>
    <message>
        <source>1 place is in the way; nothing is imported while it stands as it is. Change the mapping, leave the column out, or mend the table and open it again.</source>
        <translation>1 lugar estorba; no se importa nada mientras siga así. Cambie la correspondencia, omita la columna, o corrija la tabla y ábrala de nuevo.</translation>
    </message>
    <message>
        <source>%1 places are in the way; nothing is imported while they stand as they are. Change the mapping, leave the column out, or mend the table and open it again.</source>
        <translation>%1 lugares estorban; no se importa nada mientras sigan así. Cambie la correspondencia, omita la columna, o corrija la tabla y ábrala de nuevo.</translation>
    </message>
    <message>
        <source>There is no value of a food in it.</source>
        <translation>No hay en ella ningún valor de un alimento.</translation>
    </message>
    <message>
        <source>Importing it changes nothing: its 1 value is here already.</source>
        <translation>Importarla no cambia nada: su único valor ya está aquí.</translation>
    </message>
    <message>
        <source>Importing it changes nothing: all of its %1 values are here already.</source>
        <translation>Importarla no cambia nada: sus %1 valores ya están aquí.</translation>
    </message>
    <message>
        <source>This will happen: %1.</source>
        <translation>Esto pasará: %1.</translation>
    </message>
    <message>
        <source>Imported: %1. Undo takes all of it back.</source>
        <translation>Importado: %1. Deshacer lo quita todo.</translation>
    </message>
</context>
<context>
    <name>Intake</name>
    <message>
        <source>Intake: %1, %2</source>
        <translation>Ingesta: %1, %2</translation>
    </message>
    <message>
        <source>%1: what is shown is written as .png, .pdf or .csv</source>
        <translation>%1: lo que se muestra se escribe como .png, .pdf o .csv</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Days with a bowl</source>
        <translation>Días con cuenco</translation>
    </message>
    <message>
        <source>Days known</source>
        <translation>Días conocidos</translation>
    </message>
    <message>
        <source>Bowls behind it</source>
        <translation>Cuencos detrás</translation>
    </message>
    <message>
        <source>%1, offered</source>
        <translation>%1, ofrecido</translation>
    </message>
    <message>
        <source>%1, eaten</source>
        <translation>%1, comido</translation>
    </message>
    <message>
        <source>%1, sd of eaten</source>
        <translation>%1, DT de lo comido</translation>
    </message>
    <message>
        <source>%1, offered g a day</source>
        <translation>%1, ofrecido g al día</translation>
    </message>
    <message>
        <source>%1, eaten g a day</source>
        <translation>%1, comido g al día</translation>
    </message>
    <message>
        <source>%1 fell, %2</source>
        <translation>%1 cayó, %2</translation>
    </message>
    <message>
        <source>%1 fell %2 times more before that.</source>
        <translation>%1 cayó %2 veces más antes de eso.</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>stretches of %1 days</source>
        <translation>tramos de %1 días</translation>
    </message>
    <message>
        <source>%1 as eaten was in its zone on all %2 known %3.</source>
        <translation>%1 como se comió estuvo en su zona en todos los %2 %3 conocidos.</translation>
    </message>
    <message>
        <source>%1 as eaten was short on %2 of %3 known %4.</source>
        <translation>%1 como se comió quedó corto en %2 de %3 %4 conocidos.</translation>
    </message>
    <message>
        <source>%1 as eaten was over on %2 of %3 known %4.</source>
        <translation>%1 como se comió excedió en %2 de %3 %4 conocidos.</translation>
    </message>
    <message>
        <source>%1, %2: %3 g more was left than offered. Look at the entry.</source>
        <translation>%1, %2: sobraron %3 g más de lo ofrecido. Mire la entrada.</translation>
    </message>
    <message>
        <source>%1 leftovers were not weighed: their days are missing, not zero.</source>
        <translation>%1 sobras no se pesaron: sus días faltan, no son cero.</translation>
    </message>
    <message>
        <source>%1 leftovers had no control pan near: what was eaten is not known, at most what is gone.</source>
        <translation>%1 sobras no tenían cuenco de control cerca: no se sabe lo que se comió, como máximo lo que falta.</translation>
    </message>
    <message>
        <source>%1 leftovers are corrected by pans of other days.</source>
        <translation>%1 sobras se corrigen con cuencos de otros días.</translation>
    </message>
    <message>
        <source>%1 foods lie in a mixed remainder whose parts nobody estimated.</source>
        <translation>%1 alimentos están en una mezcla sobrante cuyas partes nadie estimó.</translation>
    </message>
    <message>
        <source>%1 times food was spilled or stolen and nobody could say how much.</source>
        <translation>%1 veces se derramó o robó comida y nadie pudo decir cuánta.</translation>
    </message>
    <message>
        <source>%1–%2 g</source>
        <translation>%1–%2 g</translation>
    </message>
    <message>
        <source>1 bowl</source>
        <translation>1 cuenco</translation>
    </message>
    <message>
        <source>%1 bowls</source>
        <translation>%1 cuencos</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1 · no bowl: missing, not zero</source>
        <translation>%1 · sin cuenco: falta, no es cero</translation>
    </message>
    <message>
        <source>%1 · not all was weighed: missing, not zero</source>
        <translation>%1 · no se pesó todo: falta, no es cero</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2 of %3 days known (%4)</source>
        <translation>%1 · %2 de %3 días conocidos (%4)</translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <translation>%1 (%2–%3)</translation>
    </message>
    <message>
        <source>%1: down to %2, %3 below the usual %4 (median of %5 known days)</source>
        <translation>%1: bajó a %2, %3 por debajo de lo habitual %4 (mediana de %5 días conocidos)</translation>
    </message>
    <message>
        <source>A drop: more than %1 robust standard deviations, and at least %2, below the median of the %3 days before, of which %4 must be known (house rule).</source>
        <translation>Una caída: más de %1 desviaciones típicas robustas, y al menos %2, por debajo de la mediana de los %3 días anteriores, de los que %4 deben ser conocidos (regla de la casa).</translation>
    </message>
    <message>
        <source>No bowl of these days is written down.</source>
        <translation>No hay ningún cuenco anotado de estos días.</translation>
    </message>
    <message>
        <source>On %1 of %2 days with a bowl all of it is known (%3, %4 control pans); the others are missing, not zero.</source>
        <translation>En %1 de %2 días con cuenco se sabe todo (%3, %4 cuencos de control); los otros faltan, no son cero.</translation>
    </message>
    <message>
        <source>What an animal eats in all (g)</source>
        <translation>Lo que come un animal en total (g)</translation>
    </message>
    <message>
        <source>%1: the collection has no such food; nothing is counted of it.</source>
        <translation>%1: la colección no tiene ese alimento; no se cuenta nada de él.</translation>
    </message>
    <message>
        <source>Nothing is known of these days.</source>
        <translation>No se sabe nada de estos días.</translation>
    </message>
    <message>
        <source>One animal: %1 g a day.</source>
        <translation>Un animal: %1 g al día.</translation>
    </message>
    <message>
        <source>A shared bowl does not say who ate what. Of %1 g a day, %2 g each by equal share</source>
        <translation>Un cuenco compartido no dice quién comió qué. De %1 g al día, %2 g cada uno a partes iguales</translation>
    </message>
    <message>
        <source>, %1 by body mass, %2 by metabolic mass</source>
        <translation>, %1 por peso vivo, %2 por peso metabólico</translation>
    </message>
    <message>
        <source>; nobody can have had more than the %1 g.</source>
        <translation>; nadie pudo tener más que los %1 g.</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Alimento</translation>
    </message>
    <message>
        <source>Offered g</source>
        <translation>Ofrecido g</translation>
    </message>
    <message>
        <source>Eaten g</source>
        <translation>Comido g</translation>
    </message>
    <message>
        <source>Eaten</source>
        <translation>Comido</translation>
    </message>
    <message>
        <source>Bowls</source>
        <translation>Cuencos</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>No conocido</translation>
    </message>
    <message>
        <source>Picked first</source>
        <translation>Tomado primero</translation>
    </message>
    <message>
        <source>Picked first: Manly&apos;s alpha with its 95 % interval, from the last stretch in which it could be compared</source>
        <translation>Tomado primero: el alfa de Manly con su intervalo del 95 %, del último tramo en que se podía comparar</translation>
    </message>
    <message>
        <source>%1 others</source>
        <translation>%1 otros</translation>
    </message>
</context>
<context>
    <name>Kitchen</name>
    <message>
        <source>Weight in g</source>
        <translation>Peso en g</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>%1 by %2 at %3</source>
        <translation>%1 por %2 a las %3</translation>
    </message>
    <message>
        <source> (written a second time; does not count)</source>
        <translation> (anotado por segunda vez; no cuenta)</translation>
    </message>
    <message>
        <source>%1 (not in the collection)</source>
        <translation>%1 (no está en la colección)</translation>
    </message>
    <message>
        <source>%1 (not in stock)</source>
        <translation>%1 (sin existencias)</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) (%1)</source>
        <translation>
            <numerusform>%n pieza (%1)</numerusform>
            <numerusform>%n piezas (%1)</numerusform>
        </translation>
    </message>
    <message>
        <source>1 animal</source>
        <translation>1 animal</translation>
    </message>
    <message>
        <source>%1 animals</source>
        <translation>%1 animales</translation>
    </message>
    <message>
        <source> · %1 g in all</source>
        <translation> · %1 g en total</translation>
    </message>
    <message>
        <source> · day %1 of %2 of a new diet</source>
        <translation> · día %1 de %2 de una dieta nueva</translation>
    </message>
    <message>
        <source>all weighed</source>
        <translation>todo pesado</translation>
    </message>
    <message>
        <source>%1 of %2 weighed</source>
        <translation>%1 de %2 pesados</translation>
    </message>
    <message>
        <source>in</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>under</source>
        <translation>por debajo</translation>
    </message>
    <message>
        <source>over</source>
        <translation>por encima</translation>
    </message>
    <message>
        <source>Less than nothing: tare the empty bowl and weigh again.</source>
        <translation>Menos que nada: tare el cuenco vacío y vuelva a pesar.</translation>
    </message>
    <message>
        <source>About ten times the plan: is the decimal point right?</source>
        <translation>Unas diez veces lo previsto: ¿está bien la coma?</translation>
    </message>
    <message>
        <source>About a tenth of the plan: is the decimal point right?</source>
        <translation>Cerca de la décima parte de lo previsto: ¿está bien la coma?</translation>
    </message>
    <message>
        <source>About the plan in ounces: set the scale to grams.</source>
        <translation>Más o menos lo previsto en onzas: ponga la balanza en gramos.</translation>
    </message>
    <message>
        <source>Under the plan by more than the tolerance.</source>
        <translation>Por debajo de lo previsto en más que la tolerancia.</translation>
    </message>
    <message>
        <source>Over the plan by more than the tolerance.</source>
        <translation>Por encima de lo previsto en más que la tolerancia.</translation>
    </message>
    <message>
        <source>The bowl before weighed just the same a moment ago: is this another bowl?</source>
        <translation>El cuenco anterior pesó lo mismo hace un momento: ¿es este otro cuenco?</translation>
    </message>
    <message>
        <source>An earlier weight is later than now: is this machine&apos;s clock right?</source>
        <translation>Un peso anterior es más tarde que ahora: ¿va bien el reloj de este equipo?</translation>
    </message>
    <message>
        <source>This sheet is of a day to come.</source>
        <translation>Esta hoja es de un día que aún no llegó.</translation>
    </message>
    <message>
        <source>Enter again keeps it as it is.</source>
        <translation>Intro otra vez lo deja como está.</translation>
    </message>
    <message>
        <source>; before that </source>
        <translation>; antes </translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>quedaron %1</translation>
    </message>
    <message>
        <source>%1 lost</source>
        <translation>se perdieron %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>all eaten</source>
        <translation>todo comido</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation>sin pesar</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>estimado</translation>
    </message>
    <message>
        <source>spilled</source>
        <translation>derramado</translation>
    </message>
    <message>
        <source>stolen</source>
        <translation>robado</translation>
    </message>
    <message>
        <source>%1: no diet is in force</source>
        <translation>%1: ninguna dieta vigente</translation>
    </message>
    <message>
        <source>%1: nobody knows how many animals it has</source>
        <translation>%1: nadie sabe cuántos animales tiene</translation>
    </message>
    <message>
        <source>%1: no animal on this day</source>
        <translation>%1: ningún animal este día</translation>
    </message>
    <message>
        <source>%1: nothing is planned for this day</source>
        <translation>%1: no hay nada previsto para este día</translation>
    </message>
    <message>
        <source>Without weighing: %1 … %2 g %3 each%4</source>
        <translation>Sin pesar: %1 … %2 g de %3 por animal%4</translation>
    </message>
    <message>
        <source>raw: %1 g %2</source>
        <translation>crudo: %1 g de %2</translation>
    </message>
    <message>
        <source>? raw amount unknown: no cooking yield</source>
        <translation>? cantidad en crudo desconocida: sin rendimiento de cocción</translation>
    </message>
    <message>
        <source>%1 g as bought</source>
        <translation>%1 g como se compra</translation>
    </message>
    <message>
        <source>Gloves on; washed hands are not enough.</source>
        <translation>Guantes puestos; no basta con lavarse las manos.</translation>
    </message>
    <message>
        <source>One bowl, one animal or group, with its label.</source>
        <translation>Un cuenco, un animal o un grupo, con su etiqueta.</translation>
    </message>
    <message>
        <source>Bowls and tools stay in their section.</source>
        <translation>Cuencos y utensilios se quedan en su sección.</translation>
    </message>
    <message>
        <source>Leftovers never come back here: weigh them where dirty bowls go.</source>
        <translation>Las sobras nunca vuelven aquí: péselas donde van los cuencos sucios.</translation>
    </message>
</context>
<context>
    <name>KitchenExport</name>
    <message>
        <source>%1: a sheet of the kitchen is written as .pdf or .html</source>
        <translation>%1: una hoja de cocina se escribe como .pdf o .html</translation>
    </message>
</context>
<context>
    <name>Life</name>
    <message>
        <source>%1 on %2</source>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>%1 on %2 by %3</source>
        <translation>%1 el %2 por %3</translation>
    </message>
    <message>
        <source>sent back on %1</source>
        <translation>devuelta el %1</translation>
    </message>
    <message>
        <source>sent back on %1 by %2</source>
        <translation>devuelta el %1 por %2</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>borrador</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation>presentada</translation>
    </message>
    <message>
        <source>approved</source>
        <translation>aprobada</translation>
    </message>
    <message>
        <source>retired</source>
        <translation>retirada</translation>
    </message>
    <message>
        <source>begun from version %1</source>
        <translation>iniciada desde la versión %1</translation>
    </message>
    <message numerus="yes">
        <source>fed from %1, phased in over %n days</source>
        <translation>
            <numerusform>se da desde el %1, transición en %n día</numerusform>
            <numerusform>se da desde el %1, transición en %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>fed from %1</source>
        <translation>se da desde el %1</translation>
    </message>
    <message>
        <source>bowl</source>
        <translation>cuenco</translation>
    </message>
    <message>
        <source>treat</source>
        <translation>golosina</translation>
    </message>
    <message>
        <source>training reward</source>
        <translation>premio de entrenamiento</translation>
    </message>
    <message>
        <source>enrichment</source>
        <translation>enriquecimiento</translation>
    </message>
    <message>
        <source>browse</source>
        <translation>ramoneo</translation>
    </message>
</context>
<context>
    <name>Numbers</name>
    <message>
        <source>“%1” may mean %2 or %3: type one of these, for nothing sets thousands apart here.</source>
        <translation>«%1» puede ser %2 o %3: escriba uno de los dos, pues aquí nada separa los millares.</translation>
    </message>
    <message>
        <source>“%1” sets thousands apart: type it without, %2.</source>
        <translation>«%1» separa los millares: escríbalo sin separador, %2.</translation>
    </message>
</context>
<context>
    <name>Nutrients</name>
    <message>
        <source>small</source>
        <comment>Translate as “small” where a noun begins with a small letter within a sentence</comment>
        <translation>small</translation>
    </message>
    <message>
        <source>Metabolizable energy</source>
        <translation>Energía metabolizable</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Crude protein</source>
        <translation>Proteína bruta</translation>
    </message>
    <message>
        <source>Crude fat</source>
        <translation>Grasa bruta</translation>
    </message>
    <message>
        <source>Crude ash</source>
        <translation>Ceniza bruta</translation>
    </message>
    <message>
        <source>Carbohydrate by difference</source>
        <translation>Hidratos de carbono por diferencia</translation>
    </message>
    <message>
        <source>Nitrogen, total</source>
        <translation>Nitrógeno total</translation>
    </message>
    <message>
        <source>Alcohol</source>
        <translation>Alcohol</translation>
    </message>
    <message>
        <source>Crude fibre</source>
        <translation>Fibra bruta</translation>
    </message>
    <message>
        <source>Total dietary fibre</source>
        <translation>Fibra alimentaria total</translation>
    </message>
    <message>
        <source>Neutral detergent fibre</source>
        <translation>Fibra detergente neutra</translation>
    </message>
    <message>
        <source>Acid detergent fibre</source>
        <translation>Fibra detergente ácida</translation>
    </message>
    <message>
        <source>Lignin</source>
        <translation>Lignina</translation>
    </message>
    <message>
        <source>Insoluble dietary fibre</source>
        <translation>Fibra alimentaria insoluble</translation>
    </message>
    <message>
        <source>Soluble dietary fibre</source>
        <translation>Fibra alimentaria soluble</translation>
    </message>
    <message>
        <source>Available carbohydrate</source>
        <translation>Hidratos de carbono disponibles</translation>
    </message>
    <message>
        <source>Starch</source>
        <translation>Almidón</translation>
    </message>
    <message>
        <source>Sugars, total</source>
        <translation>Azúcares totales</translation>
    </message>
    <message>
        <source>Sucrose</source>
        <translation>Sacarosa</translation>
    </message>
    <message>
        <source>Glucose</source>
        <translation>Glucosa</translation>
    </message>
    <message>
        <source>Fructose</source>
        <translation>Fructosa</translation>
    </message>
    <message>
        <source>Lactose</source>
        <translation>Lactosa</translation>
    </message>
    <message>
        <source>Calcium</source>
        <translation>Calcio</translation>
    </message>
    <message>
        <source>Phosphorus</source>
        <translation>Fósforo</translation>
    </message>
    <message>
        <source>Magnesium</source>
        <translation>Magnesio</translation>
    </message>
    <message>
        <source>Potassium</source>
        <translation>Potasio</translation>
    </message>
    <message>
        <source>Sodium</source>
        <translation>Sodio</translation>
    </message>
    <message>
        <source>Chloride</source>
        <translation>Cloruro</translation>
    </message>
    <message>
        <source>Sulphur</source>
        <translation>Azufre</translation>
    </message>
    <message>
        <source>Iron</source>
        <translation>Hierro</translation>
    </message>
    <message>
        <source>Zinc</source>
        <translation>Zinc</translation>
    </message>
    <message>
        <source>Copper</source>
        <translation>Cobre</translation>
    </message>
    <message>
        <source>Manganese</source>
        <translation>Manganeso</translation>
    </message>
    <message>
        <source>Selenium</source>
        <translation>Selenio</translation>
    </message>
    <message>
        <source>Iodine</source>
        <translation>Yodo</translation>
    </message>
    <message>
        <source>Chromium</source>
        <translation>Cromo</translation>
    </message>
    <message>
        <source>Cobalt</source>
        <translation>Cobalto</translation>
    </message>
    <message>
        <source>Molybdenum</source>
        <translation>Molibdeno</translation>
    </message>
    <message>
        <source>Fluoride</source>
        <translation>Fluoruro</translation>
    </message>
    <message>
        <source>Vitamin A, retinol activity equivalents</source>
        <translation>Vitamina A, equivalentes de actividad de retinol</translation>
    </message>
    <message>
        <source>Retinol</source>
        <translation>Retinol</translation>
    </message>
    <message>
        <source>Beta-carotene</source>
        <translation>Betacaroteno</translation>
    </message>
    <message>
        <source>Alpha-carotene</source>
        <translation>Alfacaroteno</translation>
    </message>
    <message>
        <source>Beta-cryptoxanthin</source>
        <translation>Betacriptoxantina</translation>
    </message>
    <message>
        <source>Vitamin D</source>
        <translation>Vitamina D</translation>
    </message>
    <message>
        <source>Vitamin D2, ergocalciferol</source>
        <translation>Vitamina D2, ergocalciferol</translation>
    </message>
    <message>
        <source>Vitamin D3, cholecalciferol</source>
        <translation>Vitamina D3, colecalciferol</translation>
    </message>
    <message>
        <source>Vitamin E, alpha-tocopherol</source>
        <translation>Vitamina E, alfatocoferol</translation>
    </message>
    <message>
        <source>Vitamin K</source>
        <translation>Vitamina K</translation>
    </message>
    <message>
        <source>Vitamin C</source>
        <translation>Vitamina C</translation>
    </message>
    <message>
        <source>Thiamin</source>
        <translation>Tiamina</translation>
    </message>
    <message>
        <source>Riboflavin</source>
        <translation>Riboflavina</translation>
    </message>
    <message>
        <source>Niacin</source>
        <translation>Niacina</translation>
    </message>
    <message>
        <source>Pantothenic acid</source>
        <translation>Ácido pantoténico</translation>
    </message>
    <message>
        <source>Vitamin B6</source>
        <translation>Vitamina B6</translation>
    </message>
    <message>
        <source>Biotin</source>
        <translation>Biotina</translation>
    </message>
    <message>
        <source>Folate, total</source>
        <translation>Folato total</translation>
    </message>
    <message>
        <source>Vitamin B12</source>
        <translation>Vitamina B12</translation>
    </message>
    <message>
        <source>Choline</source>
        <translation>Colina</translation>
    </message>
    <message>
        <source>Arginine</source>
        <translation>Arginina</translation>
    </message>
    <message>
        <source>Histidine</source>
        <translation>Histidina</translation>
    </message>
    <message>
        <source>Isoleucine</source>
        <translation>Isoleucina</translation>
    </message>
    <message>
        <source>Leucine</source>
        <translation>Leucina</translation>
    </message>
    <message>
        <source>Lysine</source>
        <translation>Lisina</translation>
    </message>
    <message>
        <source>Methionine</source>
        <translation>Metionina</translation>
    </message>
    <message>
        <source>Cystine</source>
        <translation>Cistina</translation>
    </message>
    <message>
        <source>Phenylalanine</source>
        <translation>Fenilalanina</translation>
    </message>
    <message>
        <source>Tyrosine</source>
        <translation>Tirosina</translation>
    </message>
    <message>
        <source>Threonine</source>
        <translation>Treonina</translation>
    </message>
    <message>
        <source>Tryptophan</source>
        <translation>Triptófano</translation>
    </message>
    <message>
        <source>Valine</source>
        <translation>Valina</translation>
    </message>
    <message>
        <source>Alanine</source>
        <translation>Alanina</translation>
    </message>
    <message>
        <source>Aspartic acid</source>
        <translation>Ácido aspártico</translation>
    </message>
    <message>
        <source>Glutamic acid</source>
        <translation>Ácido glutámico</translation>
    </message>
    <message>
        <source>Glycine</source>
        <translation>Glicina</translation>
    </message>
    <message>
        <source>Proline</source>
        <translation>Prolina</translation>
    </message>
    <message>
        <source>Serine</source>
        <translation>Serina</translation>
    </message>
    <message>
        <source>Taurine</source>
        <translation>Taurina</translation>
    </message>
    <message>
        <source>Saturated fatty acids</source>
        <translation>Ácidos grasos saturados</translation>
    </message>
    <message>
        <source>Monounsaturated fatty acids</source>
        <translation>Ácidos grasos monoinsaturados</translation>
    </message>
    <message>
        <source>Polyunsaturated fatty acids</source>
        <translation>Ácidos grasos poliinsaturados</translation>
    </message>
    <message>
        <source>n-3 fatty acids, total</source>
        <translation>Ácidos grasos n-3, total</translation>
    </message>
    <message>
        <source>n-6 fatty acids, total</source>
        <translation>Ácidos grasos n-6, total</translation>
    </message>
    <message>
        <source>Linoleic acid</source>
        <translation>Ácido linoleico</translation>
    </message>
    <message>
        <source>Alpha-linolenic acid</source>
        <translation>Ácido alfalinolénico</translation>
    </message>
    <message>
        <source>Arachidonic acid</source>
        <translation>Ácido araquidónico</translation>
    </message>
    <message>
        <source>Eicosapentaenoic acid</source>
        <translation>Ácido eicosapentaenoico</translation>
    </message>
    <message>
        <source>Docosapentaenoic acid</source>
        <translation>Ácido docosapentaenoico</translation>
    </message>
    <message>
        <source>Docosahexaenoic acid</source>
        <translation>Ácido docosahexaenoico</translation>
    </message>
    <message>
        <source>Cholesterol</source>
        <translation>Colesterol</translation>
    </message>
    <message>
        <source>Oxalic acid</source>
        <translation>Ácido oxálico</translation>
    </message>
    <message>
        <source>Phytic acid</source>
        <translation>Ácido fítico</translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation>Cafeína</translation>
    </message>
    <message>
        <source>Theobromine</source>
        <translation>Teobromina</translation>
    </message>
    <message>
        <source>Maltose</source>
        <translation>Maltosa</translation>
    </message>
    <message>
        <source>Galactose</source>
        <translation>Galactosa</translation>
    </message>
    <message>
        <source>Lycopene</source>
        <translation>Licopeno</translation>
    </message>
    <message>
        <source>Lutein and zeaxanthin</source>
        <translation>Luteína y zeaxantina</translation>
    </message>
    <message>
        <source>Tocopherol, beta</source>
        <translation>Betatocoferol</translation>
    </message>
    <message>
        <source>Tocopherol, gamma</source>
        <translation>Gammatocoferol</translation>
    </message>
    <message>
        <source>Tocopherol, delta</source>
        <translation>Deltatocoferol</translation>
    </message>
    <message>
        <source>Tocotrienol, alpha</source>
        <translation>Alfatocotrienol</translation>
    </message>
    <message>
        <source>Tocotrienol, beta</source>
        <translation>Betatocotrienol</translation>
    </message>
    <message>
        <source>Tocotrienol, gamma</source>
        <translation>Gammatocotrienol</translation>
    </message>
    <message>
        <source>Tocotrienol, delta</source>
        <translation>Deltatocotrienol</translation>
    </message>
    <message>
        <source>Menaquinone-4</source>
        <translation>Menaquinona-4</translation>
    </message>
    <message>
        <source>Dihydrophylloquinone</source>
        <translation>Dihidrofiloquinona</translation>
    </message>
    <message>
        <source>Folic acid, added</source>
        <translation>Ácido fólico añadido</translation>
    </message>
    <message>
        <source>Folate, natural</source>
        <translation>Folato natural</translation>
    </message>
    <message>
        <source>Folate equivalents (DFE)</source>
        <translation>Equivalentes de folato (DFE)</translation>
    </message>
    <message>
        <source>Betaine</source>
        <translation>Betaína</translation>
    </message>
    <message>
        <source>Hydroxyproline</source>
        <translation>Hidroxiprolina</translation>
    </message>
    <message>
        <source>Fatty acids, trans</source>
        <translation>Ácidos grasos trans</translation>
    </message>
    <message>
        <source>Fatty acid 4:0 (butyric)</source>
        <translation>Ácido graso 4:0 (butírico)</translation>
    </message>
    <message>
        <source>Fatty acid 6:0 (caproic)</source>
        <translation>Ácido graso 6:0 (caproico)</translation>
    </message>
    <message>
        <source>Fatty acid 8:0 (caprylic)</source>
        <translation>Ácido graso 8:0 (caprílico)</translation>
    </message>
    <message>
        <source>Fatty acid 10:0 (capric)</source>
        <translation>Ácido graso 10:0 (cáprico)</translation>
    </message>
    <message>
        <source>Fatty acid 12:0 (lauric)</source>
        <translation>Ácido graso 12:0 (láurico)</translation>
    </message>
    <message>
        <source>Fatty acid 14:0 (myristic)</source>
        <translation>Ácido graso 14:0 (mirístico)</translation>
    </message>
    <message>
        <source>Fatty acid 16:0 (palmitic)</source>
        <translation>Ácido graso 16:0 (palmítico)</translation>
    </message>
    <message>
        <source>Fatty acid 18:0 (stearic)</source>
        <translation>Ácido graso 18:0 (esteárico)</translation>
    </message>
    <message>
        <source>Fatty acid 20:0 (arachidic)</source>
        <translation>Ácido graso 20:0 (araquídico)</translation>
    </message>
    <message>
        <source>Fatty acid 18:1 undifferentiated</source>
        <translation>Ácido graso 18:1, sin diferenciar</translation>
    </message>
    <message>
        <source>Fatty acid 18:2 undifferentiated</source>
        <translation>Ácido graso 18:2, sin diferenciar</translation>
    </message>
    <message>
        <source>Fatty acid 18:3 undifferentiated</source>
        <translation>Ácido graso 18:3, sin diferenciar</translation>
    </message>
    <message>
        <source>Fatty acid 20:4 undifferentiated</source>
        <translation>Ácido graso 20:4, sin diferenciar</translation>
    </message>
    <message>
        <source>Fatty acid 22:0 (behenic)</source>
        <translation>Ácido graso 22:0 (behénico)</translation>
    </message>
    <message>
        <source>Fatty acid 14:1 (myristoleic)</source>
        <translation>Ácido graso 14:1 (miristoleico)</translation>
    </message>
    <message>
        <source>Fatty acid 16:1 undifferentiated</source>
        <translation>Ácido graso 16:1, sin diferenciar</translation>
    </message>
    <message>
        <source>Fatty acid 18:4</source>
        <translation>Ácido graso 18:4</translation>
    </message>
    <message>
        <source>Fatty acid 20:1</source>
        <translation>Ácido graso 20:1</translation>
    </message>
    <message>
        <source>Fatty acid 22:1 undifferentiated</source>
        <translation>Ácido graso 22:1, sin diferenciar</translation>
    </message>
    <message>
        <source>Phytosterols</source>
        <translation>Fitoesteroles</translation>
    </message>
    <message>
        <source>Stigmasterol</source>
        <translation>Estigmasterol</translation>
    </message>
    <message>
        <source>Campesterol</source>
        <translation>Campesterol</translation>
    </message>
    <message>
        <source>Beta-sitosterol</source>
        <translation>Betasitosterol</translation>
    </message>
    <message>
        <source>Fatty acid 15:0 (pentadecanoic)</source>
        <translation>Ácido graso 15:0 (pentadecanoico)</translation>
    </message>
    <message>
        <source>Fatty acid 17:0 (margaric)</source>
        <translation>Ácido graso 17:0 (margárico)</translation>
    </message>
    <message>
        <source>Fatty acid 24:0 (lignoceric)</source>
        <translation>Ácido graso 24:0 (lignocérico)</translation>
    </message>
    <message>
        <source>Fatty acid 16:1 t</source>
        <translation>Ácido graso 16:1 t</translation>
    </message>
    <message>
        <source>Fatty acid 18:1 t</source>
        <translation>Ácido graso 18:1 t</translation>
    </message>
    <message>
        <source>Fatty acid 22:1 t</source>
        <translation>Ácido graso 22:1 t</translation>
    </message>
    <message>
        <source>Fatty acid 18:2 t,t</source>
        <translation>Ácido graso 18:2 t,t</translation>
    </message>
    <message>
        <source>Fatty acid 18:2 CLAs</source>
        <translation>Ácido graso 18:2 CLA</translation>
    </message>
    <message>
        <source>Fatty acid 24:1 c</source>
        <translation>Ácido graso 24:1 c</translation>
    </message>
    <message>
        <source>Fatty acid 20:2 n-6 c,c</source>
        <translation>Ácido graso 20:2 n-6 c,c</translation>
    </message>
    <message>
        <source>Fatty acid 16:1 c</source>
        <translation>Ácido graso 16:1 c</translation>
    </message>
    <message>
        <source>Fatty acid 18:1 c</source>
        <translation>Ácido graso 18:1 c</translation>
    </message>
    <message>
        <source>Fatty acid 22:1 c</source>
        <translation>Ácido graso 22:1 c</translation>
    </message>
    <message>
        <source>Fatty acid 18:3 n-6 c,c,c</source>
        <translation>Ácido graso 18:3 n-6 c,c,c</translation>
    </message>
    <message>
        <source>Fatty acid 17:1</source>
        <translation>Ácido graso 17:1</translation>
    </message>
    <message>
        <source>Fatty acid 20:3 undifferentiated</source>
        <translation>Ácido graso 20:3, sin diferenciar</translation>
    </message>
    <message>
        <source>Fatty acids, trans, one double bond</source>
        <translation>Ácidos grasos trans, un doble enlace</translation>
    </message>
    <message>
        <source>Fatty acids, trans, several double bonds</source>
        <translation>Ácidos grasos trans, varios dobles enlaces</translation>
    </message>
    <message>
        <source>Fatty acid 13:0 (tridecanoic)</source>
        <translation>Ácido graso 13:0 (tridecanoico)</translation>
    </message>
    <message>
        <source>Fatty acid 15:1</source>
        <translation>Ácido graso 15:1</translation>
    </message>
    <message>
        <source>Fatty acid 20:3 n-3</source>
        <translation>Ácido graso 20:3 n-3</translation>
    </message>
    <message>
        <source>Fatty acid 20:3 n-6</source>
        <translation>Ácido graso 20:3 n-6</translation>
    </message>
    <message>
        <source>Fatty acid 21:5</source>
        <translation>Ácido graso 21:5</translation>
    </message>
    <message>
        <source>Fatty acid 22:4</source>
        <translation>Ácido graso 22:4</translation>
    </message>
    <message>
        <source>Fatty acid 18:1-11 t (18:1t n-7)</source>
        <translation>Ácido graso 18:1-11 t (18:1t n-7)</translation>
    </message>
    <message>
        <source>Methionine and cystine</source>
        <translation>Metionina y cistina</translation>
    </message>
    <message>
        <source>Phenylalanine and tyrosine</source>
        <translation>Fenilalanina y tirosina</translation>
    </message>
    <message>
        <source>EPA and DHA</source>
        <translation>EPA y DHA</translation>
    </message>
    <message>
        <source>Phosphorus, non-phytate</source>
        <translation>Fósforo no fítico</translation>
    </message>
</context>
<context>
    <name>Origin</name>
    <message>
        <source>■ seen</source>
        <translation>■ visto</translation>
    </message>
    <message>
        <source>○ from memory</source>
        <translation>○ de memoria</translation>
    </message>
    <message>
        <source>◆ house rule</source>
        <translation>◆ regla de la casa</translation>
    </message>
    <message>
        <source>▲ invented</source>
        <translation>▲ inventado</translation>
    </message>
    <message>
        <source>□ worked out</source>
        <translation>□ calculado</translation>
    </message>
    <message>
        <source>? not stated</source>
        <translation>? no indicado</translation>
    </message>
    <message>
        <source>recalled, not looked up</source>
        <translation>recordado, no consultado</translation>
    </message>
    <message>
        <source>recalled, not looked up: said to be %1</source>
        <translation>recordado, no consultado: se dice que es %1</translation>
    </message>
    <message>
        <source>the house&apos;s own rule</source>
        <translation>la regla propia de la casa</translation>
    </message>
    <message>
        <source>the house: %1</source>
        <translation>la casa: %1</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>inventado</translation>
    </message>
    <message>
        <source>invented: %1</source>
        <translation>inventado: %1</translation>
    </message>
    <message>
        <source>worked out from: %1</source>
        <translation>calculado de: %1</translation>
    </message>
    <message>
        <source>no source stated</source>
        <translation>sin fuente indicada</translation>
    </message>
</context>
<context>
    <name>Pages</name>
    <message>
        <source>Draft</source>
        <translation>Borrador</translation>
    </message>
    <message>
        <source>Submitted</source>
        <translation>Presentada</translation>
    </message>
    <message>
        <source>Approved</source>
        <translation>Aprobada</translation>
    </message>
    <message>
        <source>Retired</source>
        <translation>Retirada</translation>
    </message>
    <message>
        <source>{} by {} on {}</source>
        <translation>{} por {} el {}</translation>
    </message>
    <message>
        <source>Not for feeding.</source>
        <translation>No para alimentar.</translation>
    </message>
    <message>
        <source>Fed from {}.</source>
        <translation>Se da desde el {}.</translation>
    </message>
    <message>
        <source>Fed from {}, phased in over {} day.</source>
        <translation>Se da desde el {}, introducida en {} día.</translation>
    </message>
    <message>
        <source>Fed from {}, phased in over {} days.</source>
        <translation>Se da desde el {}, introducida en {} días.</translation>
    </message>
    <message>
        <source>{} of {} kg</source>
        <translation>{} de {} kg</translation>
    </message>
    <message>
        <source>{} kcal ME ({}) per animal and day</source>
        <translation>{} kcal de EM ({}) por animal y día</translation>
    </message>
    <message>
        <source>; cost ?</source>
        <translation>; coste ?</translation>
    </message>
    <message>
        <source>; cost {} per animal, {} for {}</source>
        <translation>; coste {} por animal, {} para {}</translation>
    </message>
    <message>
        <source>(without {} food that has no price)</source>
        <translation>(sin {} alimento que no tiene precio)</translation>
    </message>
    <message>
        <source>(without {} foods that have no price)</source>
        <translation>(sin {} alimentos que no tienen precio)</translation>
    </message>
    <message>
        <source>Set otherwise than the targets say: {}.</source>
        <translation>Fijado de otro modo que en los objetivos: {}.</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>sin motivo</translation>
    </message>
    <message>
        <source>? Not judged: {}.</source>
        <translation>? No evaluado: {}.</translation>
    </message>
    <message>
        <source>of no food is it known</source>
        <translation>no se conoce de ningún alimento</translation>
    </message>
    <message>
        <source>no food is of its group</source>
        <translation>ningún alimento es de su grupo</translation>
    </message>
    <message>
        <source>the body mass is not known</source>
        <translation>no se conoce la masa corporal</translation>
    </message>
    <message>
        <source>the need of an animal without body heat of its own is no feeding rate; state a target in its profile</source>
        <translation>la necesidad de un animal sin calor corporal propio no es una ración; indique un objetivo en su perfil</translation>
    </message>
    <message>
        <source>it does not say of how dry a feed it speaks</source>
        <translation>no dice de qué materia seca habla</translation>
    </message>
    <message>
        <source>it cannot be judged</source>
        <translation>no se puede evaluar</translation>
    </message>
    <message>
        <source>Energy and targets are of what is eaten: {}; all else is eaten up.</source>
        <translation>La energía y los objetivos son de lo que se come: {}; todo lo demás se come entero.</translation>
    </message>
    <message>
        <source>What is fed, as fed, each day</source>
        <translation>Lo que se da cada día, tal como se ofrece</translation>
    </message>
    <message>
        <source>Meal</source>
        <translation>Comida</translation>
    </message>
    <message>
        <source>g per animal</source>
        <translation>g por animal</translation>
    </message>
    <message>
        <source>g for {}</source>
        <translation>g para {}</translation>
    </message>
    <message>
        <source>Given as</source>
        <translation>Se da como</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>En total</translation>
    </message>
    <message>
        <source>How it stands against its targets</source>
        <translation>Cómo queda frente a sus objetivos</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Conocido</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>, hard</source>
        <translation>, estricto</translation>
    </message>
    <message>
        <source>Set aside: {}</source>
        <translation>Dejada de lado: {}</translation>
    </message>
    <message>
        <source>Known: the share of the eaten dry matter whose value is known. What is unknown could only add to a value with ≥; one with ≈ it could move either way.</source>
        <translation>Conocido: la parte de la materia seca comida cuyo valor se conoce. Lo desconocido solo puede sumar a un valor con ≥; uno con ≈ puede moverlo hacia ambos lados.</translation>
    </message>
    <message>
        <source>g per animal and day</source>
        <translation>g por animal y día</translation>
    </message>
    <message>
        <source>g for {} and day</source>
        <translation>g para {} y día</translation>
    </message>
    <message>
        <source>least g</source>
        <translation>g como mínimo</translation>
    </message>
    <message>
        <source>most g</source>
        <translation>g como máximo</translation>
    </message>
    <message>
        <source>Cost per animal and day</source>
        <translation>Coste por animal y día</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mínimo</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Known (%)</source>
        <translation>Conocido (%)</translation>
    </message>
    <message>
        <source>Hard</source>
        <translation>Estricto</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>Gravedad</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Consejo</translation>
    </message>
    <message>
        <source>Set aside because</source>
        <translation>Dejada de lado porque</translation>
    </message>
    <message>
        <source>Diet</source>
        <translation>Dieta</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>limitar</translation>
    </message>
    <message>
        <source>consider</source>
        <translation>considerar</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>vista en el original</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>de memoria</translation>
    </message>
    <message>
        <source>house-rule</source>
        <translation>regla de la casa</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>inventado</translation>
    </message>
    <message>
        <source>derived</source>
        <translation>derivado</translation>
    </message>
    <message>
        <source>for {}</source>
        <translation>para {}</translation>
    </message>
    <message>
        <source>● met</source>
        <translation>● cumplido</translation>
    </message>
    <message>
        <source>◐ at limit</source>
        <translation>◐ en el límite</translation>
    </message>
    <message>
        <source>▼ short</source>
        <translation>▼ falta</translation>
    </message>
    <message>
        <source>▲ over</source>
        <translation>▲ exceso</translation>
    </message>
    <message>
        <source>? unknown</source>
        <translation>? desconocido</translation>
    </message>
    <message>
        <source>per kg as fed</source>
        <translation>por kg tal como se ofrece</translation>
    </message>
    <message>
        <source>per kg DM</source>
        <translation>por kg de MS</translation>
    </message>
    <message>
        <source>per 1000 kcal ME</source>
        <translation>por 1000 kcal de EM</translation>
    </message>
    <message>
        <source>per animal and day</source>
        <translation>por animal y día</translation>
    </message>
    <message>
        <source>per kg body mass</source>
        <translation>por kg de masa corporal</translation>
    </message>
    <message>
        <source>per kg^0.75 body mass</source>
        <translation>por kg^0,75 de masa corporal</translation>
    </message>
    <message>
        <source>Group: {}</source>
        <translation>Grupo: {}</translation>
    </message>
    <message>
        <source>% of as fed</source>
        <translation>% de lo ofrecido</translation>
    </message>
    <message>
        <source>% of ME</source>
        <translation>% de la EM</translation>
    </message>
    <message>
        <source>% of DM</source>
        <translation>% de la MS</translation>
    </message>
    <message>
        <source>Grams per animal, as fed: {} to {}</source>
        <translation>Gramos por animal, tal como se ofrecen: {} a {}</translation>
    </message>
    <message>
        <source>To buy for {}</source>
        <translation>Por comprar para {}</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Semana</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Offered, kg</source>
        <translation>Ofrecido, kg</translation>
    </message>
    <message>
        <source>To buy, kg</source>
        <translation>Por comprar, kg</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>en total</translation>
    </message>
    <message>
        <source>The mean day against the targets</source>
        <translation>El día medio frente a los objetivos</translation>
    </message>
    <message>
        <source>{} animal</source>
        <translation>{} animal</translation>
    </message>
    <message>
        <source>{} animals</source>
        <translation>{} animales</translation>
    </message>
    <message>
        <source>, {} g in all</source>
        <translation>, {} g en total</translation>
    </message>
    <message>
        <source>, a new diet is phased in: day {} of {}</source>
        <translation>, transición a una dieta nueva: día {} de {}</translation>
    </message>
    <message>
        <source>To weigh</source>
        <translation>Por pesar</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Alimento</translation>
    </message>
    <message>
        <source>Preparation</source>
        <translation>Preparación</translation>
    </message>
    <message>
        <source>Weighed, g</source>
        <translation>Pesado, g</translation>
    </message>
    <message>
        <source> (swapped in)</source>
        <translation> (por cambio)</translation>
    </message>
    <message>
        <source> (not in stock)</source>
        <translation> (sin existencias)</translation>
    </message>
    <message>
        <source>{} (not in the collection)</source>
        <translation>{} (no está en la colección)</translation>
    </message>
    <message>
        <source>{} piece ({})</source>
        <translation>{} pieza ({})</translation>
    </message>
    <message>
        <source>{} pieces ({})</source>
        <translation>{} piezas ({})</translation>
    </message>
    <message>
        <source>Without weighing, for each animal: {} … {} g {} ({}){}</source>
        <translation>Sin pesar, para cada animal: {} … {} g de {} ({}){}</translation>
    </message>
    <message>
        <source>bowl</source>
        <translation>cuenco</translation>
    </message>
    <message>
        <source>treat</source>
        <translation>golosina</translation>
    </message>
    <message>
        <source>enrichment</source>
        <translation>enriquecimiento</translation>
    </message>
    <message>
        <source>browse</source>
        <translation>ramoneo</translation>
    </message>
    <message>
        <source>The kitchen needs</source>
        <translation>La cocina necesita</translation>
    </message>
    <message>
        <source>In the bowls</source>
        <translation>En los cuencos</translation>
    </message>
    <message>
        <source>Raw, bought</source>
        <translation>Crudo, comprado</translation>
    </message>
    <message>
        <source>Bowls</source>
        <translation>Cuencos</translation>
    </message>
    <message>
        <source>raw: {} {}</source>
        <translation>crudo: {} de {}</translation>
    </message>
    <message>
        <source>? raw amount unknown: no cooking yield</source>
        <translation>? cantidad en crudo desconocida: sin rendimiento de cocción</translation>
    </message>
    <message>
        <source>{} as bought</source>
        <translation>{} como se compra</translation>
    </message>
    <message>
        <source>Out of the freezer today, for tomorrow</source>
        <translation>Sacar hoy del congelador, para mañana</translation>
    </message>
    <message>
        <source>Feed well today: live food of tomorrow</source>
        <translation>Alimentar bien hoy: alimento vivo de mañana</translation>
    </message>
    <message>
        <source>No bowl for {}: {}.</source>
        <translation>Ningún cuenco para {}: {}.</translation>
    </message>
    <message>
        <source>no diet is in force</source>
        <translation>ninguna dieta vigente</translation>
    </message>
    <message>
        <source>nobody knows how many animals it has</source>
        <translation>nadie sabe cuántos animales tiene</translation>
    </message>
    <message>
        <source>it has no animal on this day</source>
        <translation>no tiene ningún animal este día</translation>
    </message>
    <message>
        <source>nothing is planned for this day</source>
        <translation>no hay nada previsto para este día</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Advertencias</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Siempre</translation>
    </message>
    <message>
        <source>Gloves on; washed hands are not enough.</source>
        <translation>Guantes puestos; no basta con lavarse las manos.</translation>
    </message>
    <message>
        <source>One bowl, one animal or group, with its label.</source>
        <translation>Un cuenco, un animal o un grupo, con su etiqueta.</translation>
    </message>
    <message>
        <source>Bowls and tools stay in their section.</source>
        <translation>Cuencos y utensilios se quedan en su sección.</translation>
    </message>
    <message>
        <source>Leftovers never come back into the prep room: they are weighed where dirty bowls go.</source>
        <translation>Las sobras nunca vuelven a la cocina: se pesan donde van los cuencos sucios.</translation>
    </message>
    <message>
        <source>Tare the empty bowl before each food.</source>
        <translation>Tare el cuenco vacío antes de cada alimento.</translation>
    </message>
    <message>
        <source>Bowl labels</source>
        <translation>Etiquetas de los cuencos</translation>
    </message>
    <message>
        <source>Invented sample: not for feeding.</source>
        <translation>Ejemplo inventado: no es para alimentar.</translation>
    </message>
    <message>
        <source>INVENTED SAMPLE: animals, masses, products and decisions on this sheet are made up. Not for feeding.</source>
        <translation>EJEMPLO INVENTADO: animales, pesos, productos y decisiones de esta hoja son inventados. No es para alimentar.</translation>
    </message>
    <message>
        <source>Tarebowl supports, and does not replace, a qualified nutritionist and a licensed vet; local rules on feeding,
hygiene, live prey and medicines come first. Published requirements of a model species are a starting point.
</source>
        <translation>Tarebowl apoya, y no sustituye, a un nutricionista cualificado y a un veterinario colegiado; las normas locales sobre alimentación,
higiene, presas vivas y medicamentos van primero. Los requerimientos publicados de una especie modelo son un punto de partida.
</translation>
    </message>
    <message>
        <source>training-reward</source>
        <translation>premio de entrenamiento</translation>
    </message>
</context>
<context>
    <name>Pans</name>
    <message>
        <source>any %1</source>
        <translation>cualquier %1</translation>
    </message>
    <message>
        <source>still stands; it corrects no leftover until it is weighed again</source>
        <translation>sigue puesto; no corrige ninguna sobra hasta que se vuelva a pesar</translation>
    </message>
    <message>
        <source>neither lost nor drew water</source>
        <translation>ni perdió ni tomó agua</translation>
    </message>
    <message>
        <source>lost %1 of its mass</source>
        <translation>perdió %1 de su masa</translation>
    </message>
    <message>
        <source>drew %1 of its mass</source>
        <translation>tomó %1 de su masa</translation>
    </message>
    <message>
        <source>%1: %2 g put out, still stands%3</source>
        <translation>%1: %2 g puestos, sigue puesto%3</translation>
    </message>
    <message>
        <source>%1: %2 g → %3 g, %4%5</source>
        <translation>%1: %2 g → %3 g, %4%5</translation>
    </message>
    <message>
        <source> Enter again keeps it as it is.</source>
        <translation> Intro otra vez lo deja como está.</translation>
    </message>
    <message>
        <source>A pan that was put out empty says nothing: weigh the food that was in it.</source>
        <translation>Un cuenco puesto vacío no dice nada: pese el alimento que tenía.</translation>
    </message>
    <message>
        <source>Nothing is left of it: was it emptied, or eaten from? It will count for no leftover.</source>
        <translation>No queda nada: ¿se vació, o comieron de él? No contará para ninguna sobra.</translation>
    </message>
    <message>
        <source>It came back more than a tenth heavier: rain, or the weights the wrong way round?</source>
        <translation>Volvió más de una décima parte más pesado: ¿lluvia, o los pesos al revés?</translation>
    </message>
    <message>
        <source>More than half of it is gone: did an animal reach it?</source>
        <translation>Falta más de la mitad: ¿llegó a él un animal?</translation>
    </message>
    <message>
        <source>There is a pan of this already: both will count, each by half. To change it choose it above.</source>
        <translation>Ya hay un cuenco de esto: contarán los dos, cada uno la mitad. Para cambiarlo, elíjalo arriba.</translation>
    </message>
</context>
<context>
    <name>PartTexts</name>
    <message>
        <source>Species, their groups, and the animals in each. Choose one to see its page at the right.</source>
        <translation>Las especies, sus grupos y los animales de cada uno. Elija uno para ver su página a la derecha.</translation>
    </message>
    <message>
        <source>What the group is called, its section, and who is in it since when. How many eat is counted from this; a bowl&apos;s grams are those of one animal times the number.</source>
        <translation>Cómo se llama el grupo, su sección, y quién está en él desde cuándo. De ahí se cuenta cuántos comen; los gramos de un cuenco son los de un animal por el número de animales.</translation>
    </message>
    <message>
        <source>Body mass over time. Points are weighings; the mass that counts of an animal is the median of its last fortnight&apos;s, or else the newest, and a group&apos;s is the mean of its animals. One that was left out does not count. Energy need and everything per kg rest on it.</source>
        <translation>El peso vivo a lo largo del tiempo. Los puntos son pesajes; el peso de un animal que cuenta es la mediana de su última quincena, o si no el más nuevo, y el de un grupo es la media de sus animales. Uno descartado no cuenta. La necesidad de energía y todo lo que es por kg se apoyan en él.</translation>
    </message>
    <message>
        <source>Each weighing and condition score with its day and who wrote it down. A first entry is never written over: a correction stands beside it, with a reason.</source>
        <translation>Cada pesaje y puntuación de condición con su día y quién la anotó. Una primera entrada nunca se sobrescribe: la corrección queda al lado, con un motivo.</translation>
    </message>
    <message>
        <source>A weighing or a condition score of today or of another day. A mass that is far from what is known of the animal is asked about before it is kept.</source>
        <translation>Un pesaje o una puntuación de condición de hoy o de otro día. Si el peso está lejos de lo que se sabe del animal, se pregunta antes de guardarlo.</translation>
    </message>
    <message>
        <source>The energy need, worked out step by step: energy at 1 kg of body mass, the exponent, body mass, and the factor for what the animals do. A published number names its source, one that is edited is the house&apos;s own. It is where a diet starts; body mass and condition decide whether it was right.</source>
        <translation>La necesidad de energía, calculada paso a paso: energía a 1 kg de peso vivo, el exponente, el peso vivo, y el factor por lo que hacen los animales. Un número publicado nombra su fuente, uno editado es de la casa. Ahí empieza una dieta; el peso vivo y la condición deciden si fue acertado.</translation>
    </message>
    <message>
        <source>The targets that this group&apos;s diets are judged by. Each names where it was stated and how it is known: a published requirement, the house&apos;s own rule, recalled, or derived from a model species, which is a starting point and not a requirement.</source>
        <translation>Los objetivos por los que se juzgan las dietas de este grupo. Cada uno nombra dónde se indicó y cómo se sabe: un requerimiento publicado, la regla de la casa, de memoria, o derivado de una especie modelo, que es un punto de partida y no un requerimiento.</translation>
    </message>
    <message>
        <source>The rules of the target profile, nutrient by nutrient: from, to, unit and basis, where each was stated, and whether it is a hard rule. Edit one and a draft is kept until it is put in force.</source>
        <translation>Las reglas del perfil de objetivos, nutriente por nutriente: de, a, unidad y base, dónde se indicó cada una, y si es una regla firme. Si edita una, se guarda un borrador hasta que se ponga en vigor.</translation>
    </message>
    <message>
        <source>A further rule for this profile. State where it comes from: a rule without a source cannot be checked by anybody else.</source>
        <translation>Otra regla para este perfil. Diga de dónde viene: una regla sin fuente no la puede comprobar nadie más.</translation>
    </message>
    <message>
        <source>Foods that are known to be dangerous to this species or need thought, from the program&apos;s list with its sources and from the house&apos;s own. The list is not complete: what is not on it is not thereby safe.</source>
        <translation>Los alimentos que se sabe que son peligrosos para esta especie o que piden reflexión, de la lista del programa con sus fuentes y de la de la casa. La lista no es completa: lo que no está en ella no por eso es seguro.</translation>
    </message>
    <message>
        <source>What changed, when, and by whom. It is read from the collection&apos;s log, which is only ever added to.</source>
        <translation>Qué cambió, cuándo y por quién. Se lee del registro de la colección, al que solo se añade.</translation>
    </message>
    <message>
        <source>For a group without targets: a published profile of a model species to derive from. Say why that species stands in; the sentence is kept with every target.</source>
        <translation>Para un grupo sin objetivos: un perfil publicado de una especie modelo del que derivar. Diga por qué sirve esa especie; la frase se guarda con cada objetivo.</translation>
    </message>
    <message>
        <source>Published profiles of model species, side by side where several are ticked. Each number is that of the publication named; none was made for your species.</source>
        <translation>Perfiles publicados de especies modelo, uno junto a otro si hay varios marcados. Cada número es el de la publicación nombrada; ninguno se hizo para su especie.</translation>
    </message>
    <message>
        <source>A species that is new to the collection, with its first group, energy need and targets. The targets come from the model species that you choose, as a starting point.</source>
        <translation>Una especie nueva en la colección, con su primer grupo, necesidad de energía y objetivos. Los objetivos vienen de la especie modelo que elija, como punto de partida.</translation>
    </message>
    <message>
        <source>Who the animal is: sex, birth, stages of life, coming and going. A stage is kept with the day on which it begins; the energy need and the targets of its group are the nutritionist&apos;s to change.</source>
        <translation>Quién es el animal: sexo, nacimiento, etapas de la vida, llegadas y salidas. Una etapa se guarda con el día en que empieza; la necesidad de energía y los objetivos de su grupo los cambia el nutricionista.</translation>
    </message>
    <message>
        <source>One animal: who it is, its masses and condition scores.</source>
        <translation>Un animal: quién es, sus pesos y puntuaciones de condición.</translation>
    </message>
    <message>
        <source>The species: its names, and the groups of animals that it belongs to. Cautions about foods go by these.</source>
        <translation>La especie: sus nombres, y los grupos de animales a los que pertenece. Las advertencias sobre alimentos van según ellos.</translation>
    </message>
    <message>
        <source>What is shown below, and what can be done with it.</source>
        <translation>Lo que se muestra debajo, y lo que se puede hacer con ello.</translation>
    </message>
    <message>
        <source>A group: who is in it, what it needs, and what its diets are judged by.</source>
        <translation>Un grupo: quién está en él, lo que necesita, y por lo que se juzgan sus dietas.</translation>
    </message>
    <message>
        <source>The diets of the collection by group, each with its versions, and the groups that have none yet. A marked one cannot be read; choosing it says why.</source>
        <translation>Las dietas de la colección por grupo, cada una con sus versiones, y los grupos que aún no tienen. Una marcada no se puede leer; al elegirla se dice por qué.</translation>
    </message>
    <message>
        <source>Which version of the diet is on the desk and what can be done next: submit it, approve it, send it back, retire it. What was approved never changes; the next idea is a new version.</source>
        <translation>Qué versión de la dieta está en la mesa y qué se puede hacer después: presentarla, aprobarla, devolverla, retirarla. Lo que se aprobó no cambia nunca; la siguiente idea es una versión nueva.</translation>
    </message>
    <message>
        <source>Whoever approves says why, from which day it is fed and over how many days it is phased in. Grams, targets and composition are kept as they were decided on.</source>
        <translation>Quien aprueba dice por qué, desde qué día se da y en cuántos días se hace la transición. Gramos, objetivos y composición se guardan como se decidieron.</translation>
    </message>
    <message>
        <source>What has happened since this version was written: foods that are gone, targets that changed, another window that was faster.</source>
        <translation>Lo que ha pasado desde que se escribió esta versión: alimentos que ya no están, objetivos que cambiaron, otra ventana que fue más rápida.</translation>
    </message>
    <message>
        <source>The foods of the diet. Grams are as fed, for one animal and day or for the whole group, as the switch above says. They are yours where locked (Space); the others are found by the solver in whole steps of the kitchen&apos;s scale. Min and max are limits of this diet. The bar is the food&apos;s share of the dry matter.</source>
        <translation>Los alimentos de la dieta. Los gramos son en fresco, para un animal y día o para todo el grupo, según el interruptor de arriba. Los bloqueados (Espacio) son suyos; los demás los halla el cálculo en divisiones enteras de la balanza de cocina. Mín y máx son límites de esta dieta. La barra es la parte del alimento en la materia seca.</translation>
    </message>
    <message>
        <source>Foods of the collection are added here by name. A food that is given unweighed, such as browse, is stated as a range; the balance counts the middle and carries the range as uncertainty.</source>
        <translation>Aquí se añaden alimentos de la colección por su nombre. Un alimento que se da sin pesar, como el ramoneo, se indica como intervalo; el balance cuenta el punto medio y lleva el intervalo como incertidumbre.</translation>
    </message>
    <message>
        <source>Something that is given unweighed, between two amounts a day. The balance counts the middle, and the range as uncertainty.</source>
        <translation>Algo que se da sin pesar, entre dos cantidades al día. El balance cuenta el punto medio, y el intervalo como incertidumbre.</translation>
    </message>
    <message>
        <source>More about the food that the hand is on: how the kitchen prepares it, what it is given for, and the cautions about it.</source>
        <translation>Más sobre el alimento bajo la mano: cómo lo prepara la cocina, para qué se da, y las advertencias sobre él.</translation>
    </message>
    <message>
        <source>One rung for each target, in the order that is chosen above. The number is what the bowl gives: grams of each food times its composition. The shaded stretch is the target&apos;s zone, the mark is the diet, the whisker its uncertainty from scatter between samples. The hatched part of the track rests on foods of which the value is unknown, and is never counted as nothing.</source>
        <translation>Un peldaño por objetivo, en el orden elegido arriba. El número es lo que da el cuenco: gramos de cada alimento por su composición. El tramo sombreado es la zona del objetivo, la marca es la dieta, el bigote su incertidumbre por la dispersión entre muestras. La parte rayada se apoya en alimentos cuyo valor es desconocido, y nunca se cuenta como nada.</translation>
    </message>
    <message>
        <source>The rung that is open: its bounds, which can be changed for this diet, where the target was stated, and which food brings how much of it.</source>
        <translation>El peldaño abierto: sus límites, que se pueden cambiar para esta dieta, dónde se indicó el objetivo, y qué alimento aporta cuánto.</translation>
    </message>
    <message>
        <source>How the diet stands against its targets. Choose a rung to see which food brings how much, and where the target comes from.</source>
        <translation>Cómo queda la dieta frente a sus objetivos. Elija un peldaño para ver qué alimento aporta cuánto, y de dónde viene el objetivo.</translation>
    </message>
    <message>
        <source>Why the diet stands as it does, in sentences. They follow from the targets and foods on the desk alone; a suggestion was worked out before it is offered, and can be tried and taken back.</source>
        <translation>Por qué la dieta queda como queda, en frases. Se siguen solo de los objetivos y alimentos de la mesa; una sugerencia se calculó antes de ofrecerse, y se puede probar y deshacer.</translation>
    </message>
    <message>
        <source>What has to give while one bound moves, or one thing sought is traded for another. What is read off the chart can be tried on the diet, and taken back.</source>
        <translation>Lo que tiene que ceder mientras se mueve un límite, o se sopesa una cosa buscada frente a otra. Lo que se lee en la curva se puede probar en la dieta, y deshacer.</translation>
    </message>
    <message>
        <source>What has to give while one bound moves: foods above, what is sought and what is missed below. Each dot is where another food or target begins to give.</source>
        <translation>Lo que tiene que ceder mientras se mueve un límite: arriba los alimentos, abajo lo que se busca y lo que se incumple. Cada punto es donde empieza a ceder otro alimento u objetivo.</translation>
    </message>
    <message>
        <source>What is asked of the diet beside its targets: how many foods of a group, at most how much of it. Rules of the targets are shown, those of this diet can be changed.</source>
        <translation>Lo que se pide a la dieta además de sus objetivos: cuántos alimentos de un grupo, como máximo cuánto de él. Las reglas de los objetivos se muestran, las de esta dieta se pueden cambiar.</translation>
    </message>
    <message>
        <source>What this version says otherwise than another: grams, balance, cost, in words and side by side. Both are as they stand in the collection.</source>
        <translation>Lo que esta versión dice de otro modo que otra: gramos, balance, coste, en palabras y una junto a otra. Ambas como están en la colección.</translation>
    </message>
    <message>
        <source>The diet on the desk: its foods and grams, and below them why it stands as it does.</source>
        <translation>La dieta en la mesa: sus alimentos y gramos, y debajo por qué queda como queda.</translation>
    </message>
    <message>
        <source>Days by foods. Grams are as fed for one animal; a locked cell stays as the hand left it, the others are planned so that each day keeps its rules and the period balances.</source>
        <translation>Días por alimentos. Los gramos son en fresco para un animal; una celda bloqueada queda como la dejó la mano, las demás se planifican para que cada día cumpla sus reglas y el período se equilibre.</translation>
    </message>
    <message>
        <source>How the whole period stands against the targets, or the day that the hand is on. It is the mean of the days as planned.</source>
        <translation>Cómo queda todo el período frente a los objetivos, o el día bajo la mano. Es la media de los días como se planificaron.</translation>
    </message>
    <message>
        <source>What the plan must keep: how many days, what varies, what may not follow upon what, days off, what is in stock.</source>
        <translation>Lo que el plan debe cumplir: cuántos días, qué varía, qué no puede seguir a qué, días libres, qué hay en existencias.</translation>
    </message>
    <message>
        <source>Which days are looked at, and what can be planned.</source>
        <translation>Qué días se miran, y qué se puede planificar.</translation>
    </message>
    <message>
        <source>What keys do in the calendar on the cell that the hand is on.</source>
        <translation>Lo que hacen las teclas en el calendario sobre la celda bajo la mano.</translation>
    </message>
    <message>
        <source>A plan by the day for the diet on the desk. What was fed already stays.</source>
        <translation>Un plan por días para la dieta en la mesa. Lo que ya se dio queda.</translation>
    </message>
    <message>
        <source>The foods of the collection. Each number in a column is per 100 g as fed, and is the mean that the food&apos;s samples form; ? is unknown, never nothing.</source>
        <translation>Los alimentos de la colección. Cada número de una columna es por 100 g en fresco, y es la media de las muestras del alimento; ? es desconocido, nunca nada.</translation>
    </message>
    <message>
        <source>What one food is made of. A value is the mean of its laboratory samples, or a publication&apos;s; ± is the scatter between samples, n how many there are. Open a row to see them, each with its source and day. A value set by hand goes before every sample, and says who set it and why.</source>
        <translation>De qué está hecho un alimento. Un valor es la media de sus muestras de laboratorio, o el de una publicación; ± es la dispersión entre muestras, n cuántas hay. Abra una fila para verlas, cada una con su fuente y día. Un valor puesto a mano va antes que toda muestra, y dice quién lo puso y por qué.</translation>
    </message>
    <message>
        <source>Each nutrient of the food. A value is the mean of the samples under it, or one that was set by hand or worked out (cooked from raw, mixed from parts, summed from others); the Source column names where it comes from. ≥ and ≤ are bounds, such as a label&apos;s guarantee, and are not used as means. ? is unknown, and is never counted as nothing.</source>
        <translation>Cada nutriente del alimento. Un valor es la media de las muestras de debajo, o uno puesto a mano o calculado (cocido desde crudo, mezclado de partes, sumado de otros); la columna Fuente nombra de dónde viene. ≥ y ≤ son límites, como la garantía de una etiqueta, y no se usan como medias. ? es desconocido, y nunca se cuenta como nada.</translation>
    </message>
    <message>
        <source>What the food is called and how it is fed: its form and group, the step of the scale it is weighed in, what is edible of it, what it costs. A person of your house states these; they are kept under that name.</source>
        <translation>Cómo se llama el alimento y cómo se da: su forma y grupo, la división de la balanza, qué parte es comestible, lo que cuesta. Lo indica una persona de su casa; se guarda con ese nombre.</translation>
    </message>
    <message>
        <source>One laboratory sample or publication: its values as they were reported, on the basis and in the units that are chosen. The mean of all samples that count is the food&apos;s value.</source>
        <translation>Una muestra de laboratorio o publicación: sus valores como se comunicaron, en la base y las unidades elegidas. La media de todas las muestras que cuentan es el valor del alimento.</translation>
    </message>
    <message>
        <source>What a house mix is made of. What nobody analysed in the mix is worked out from the grams of its parts and from what a gram of them gives once prepared; the source says who measured that.</source>
        <translation>De qué está hecha una mezcla de la casa. Lo que nadie analizó en la mezcla se calcula de los gramos de sus partes y de lo que da un gramo de ellas una vez preparado; la fuente dice quién lo midió.</translation>
    </message>
    <message>
        <source>Which raw food this one is cooked from. What nobody analysed in the cooked food is worked out from the raw one: grams left of a gram, and the share of each nutrient that stays. The source says who says so.</source>
        <translation>De qué alimento crudo se cuece este. Lo que nadie analizó en el cocido se calcula del crudo: gramos que quedan de un gramo, y la parte de cada nutriente que permanece. La fuente dice quién lo afirma.</translation>
    </message>
    <message>
        <source>Which nutrients your laboratory is to look at, how often, and what is due. It is counted from the days of the samples.</source>
        <translation>Qué nutrientes debe mirar su laboratorio, cada cuánto, y qué toca. Se cuenta desde los días de las muestras.</translation>
    </message>
    <message>
        <source>What a careful analyst would doubt in this food: parts that do not add up, energy that disagrees with them, a value far from the food&apos;s group. A doubt is a question, not a verdict; each says how it was found.</source>
        <translation>Lo que un analista cuidadoso dudaría de este alimento: partes que no suman, energía que no concuerda con ellas, un valor lejos del grupo del alimento. Una duda es una pregunta, no un veredicto; cada una dice cómo se halló.</translation>
    </message>
    <message>
        <source>What a careful analyst would doubt in all foods. Each doubt says how it was found; a line goes to its food.</source>
        <translation>Lo que un analista cuidadoso dudaría de todos los alimentos. Cada duda dice cómo se halló; una línea lleva a su alimento.</translation>
    </message>
    <message>
        <source>Foods side by side, all on one basis. The values are those of each food&apos;s own page; rest on one to see its source.</source>
        <translation>Alimentos uno junto a otro, todos en una base. Los valores son los de la página de cada alimento; deténgase en uno para ver su fuente.</translation>
    </message>
    <message>
        <source>A table of foods on its way into the collection. Nothing is written before you press Import; all of it is written, or where anything is wrong with it, nothing.</source>
        <translation>Una tabla de alimentos camino de la colección. No se escribe nada antes de que pulse Importar; se escribe todo, o si algo va mal, nada.</translation>
    </message>
    <message>
        <source>How the table is read: its form, decimal sign, units and basis, and whose it is. These are guessed from the table first; change what was guessed wrongly.</source>
        <translation>Cómo se lee la tabla: su forma, signo decimal, unidades y base, y de quién es. Primero se adivina de la tabla; cambie lo que se adivinó mal.</translation>
    </message>
    <message>
        <source>What will become of each line: a new food, a new sample, a value that is left out and why. Counted by reading the whole table, without writing.</source>
        <translation>Lo que será de cada línea: un alimento nuevo, una muestra nueva, un valor que se omite y por qué. Se cuenta leyendo toda la tabla, sin escribir.</translation>
    </message>
    <message>
        <source>Goes to any food, animal or diet by part of its name.</source>
        <translation>Va a cualquier alimento, animal o dieta por parte de su nombre.</translation>
    </message>
    <message>
        <source>Whether all is on the disk, the units in force, whether this is the invented sample, and who is at the keyboard: every change is kept under that name.</source>
        <translation>Si todo está en el disco, las unidades vigentes, si este es el ejemplo inventado, y quién está al teclado: cada cambio se guarda con ese nombre.</translation>
    </message>
    <message>
        <source>The rooms of the window, Ctrl+1 to Ctrl+7, and below them the collection file and help.</source>
        <translation>Las salas de la ventana, Ctrl+1 a Ctrl+7, y debajo el archivo de la colección y la ayuda.</translation>
    </message>
    <message>
        <source>No collection is open. Choose a way in.</source>
        <translation>No hay ninguna colección abierta. Elija un camino.</translation>
    </message>
    <message>
        <source>The guide leads through the invented sample, a step at a time.</source>
        <translation>La guía lleva por el ejemplo inventado, paso a paso.</translation>
    </message>
    <message>
        <source>A reason is kept with what you do, under your name, and can be read for good.</source>
        <translation>Con lo que hace se guarda un motivo, con su nombre, y se puede leer para siempre.</translation>
    </message>
    <message>
        <source>The section, the day, and its bowls. They come from the diets in force on that day, or from the plan of a rotation, times the number of animals.</source>
        <translation>La sección, el día y sus cuencos. Vienen de las dietas vigentes ese día, o del plan de una rotación, por el número de animales.</translation>
    </message>
    <message>
        <source>The bowl that is prepared: its foods with planned grams, what was weighed, how each is prepared. Planned grams come from the approved diet, times the animals of the group.</source>
        <translation>El cuenco que se prepara: sus alimentos con los gramos previstos, lo que se pesó, cómo se prepara cada uno. Los gramos previstos vienen de la dieta aprobada, por los animales del grupo.</translation>
    </message>
    <message>
        <source>The food on the scale. The plan is the approved diet&apos;s; ± is how far the weight may lie from it by the rule of the house. The first weight is never written over: a correction stands beside it.</source>
        <translation>El alimento en la balanza. Lo previsto es lo de la dieta aprobada; ± es cuánto puede apartarse el peso según la regla de la casa. El primer peso nunca se sobrescribe: la corrección queda al lado.</translation>
    </message>
    <message>
        <source>What came back of a food. What was eaten is offered less left less lost, corrected for drying by control pans: those of the day, or of days around it where there were none, which is then said.</source>
        <translation>Lo que volvió de un alimento. Lo comido es lo ofrecido menos lo que quedó menos lo perdido, corregido por el secado con cuencos de control: los del día, o de días cercanos donde no los hubo, lo que entonces se dice.</translation>
    </message>
    <message>
        <source>The scale of this bench: what it shows now and where it is plugged in. Without one, weights are typed.</source>
        <translation>La balanza de esta mesa: lo que muestra ahora y dónde está enchufada. Sin ella, los pesos se escriben.</translation>
    </message>
    <message>
        <source>How far a weight may lie from the plan, a rule of your house, and what it comes to for the food on the scale.</source>
        <translation>Cuánto puede apartarse un peso de lo previsto, una regla de su casa, y lo que resulta para el alimento en la balanza.</translation>
    </message>
    <message>
        <source>What stands on the sheet beside the bowls: what the kitchen needs in all, what to thaw for tomorrow, cautions and hygiene.</source>
        <translation>Lo que está en la hoja junto a los cuencos: lo que la cocina necesita en total, qué descongelar para mañana, advertencias e higiene.</translation>
    </message>
    <message>
        <source>What to give instead of a food that is not there, the nearest first. Each line says the grams and what it does to the balance, worked out against the approved bowl; where the approved targets are no longer met, it says who must approve.</source>
        <translation>Qué dar en lugar de un alimento que falta, lo más parecido primero. Cada línea dice los gramos y lo que hace al balance, calculado frente al cuenco aprobado; donde ya no se cumplen los objetivos aprobados, dice quién debe aprobarlo.</translation>
    </message>
    <message>
        <source>Control pans: the same food out of the animals&apos; reach, weighed when the bowls went out and when they came back. What they lose by drying, or gain, is taken off what came back of the same food.</source>
        <translation>Cuencos de control: el mismo alimento fuera del alcance de los animales, pesado cuando salieron los cuencos y cuando volvieron. Lo que pierden al secarse, o ganan, se descuenta de lo que volvió del mismo alimento.</translation>
    </message>
    <message>
        <source>The section and its groups. A group without a bowl cannot be chosen.</source>
        <translation>La sección y sus grupos. Un grupo sin cuenco no se puede elegir.</translation>
    </message>
    <message>
        <source>What is followed over time: the targets of the group, then every nutrient that some food of its bowls tells.</source>
        <translation>Lo que se sigue en el tiempo: los objetivos del grupo, luego cada nutriente que conoce algún alimento de sus cuencos.</translation>
    </message>
    <message>
        <source>What was noticed in the days in sight, and how much is known of them. A drop is told against the group&apos;s own days before; the rule of the house stands beside it.</source>
        <translation>Lo que se notó en los días a la vista, y cuánto se sabe de ellos. Una caída se dice frente a los propios días anteriores del grupo; la regla de la casa está al lado.</translation>
    </message>
    <message>
        <source>Grams a day of each food, all animals together: what was offered, and what was eaten of it (offered less left and lost, corrected by control pans). Days without a bowl written down stay empty.</source>
        <translation>Gramos al día de cada alimento, todos los animales juntos: lo que se ofreció, y lo que se comió (ofrecido menos lo que quedó y se perdió, corregido con cuencos de control). Los días sin cuenco anotado quedan vacíos.</translation>
    </message>
    <message>
        <source>What is followed, a day and animal, offered and as eaten, against its zone; over many days each step of the line is the mean of some. Hatched is what is missing: foods whose leftovers or composition nobody knows. The band is the uncertainty.</source>
        <translation>Lo que se sigue, por día y animal, ofrecido y como se comió, frente a su zona; en muchos días cada escalón de la línea es la media de algunos. Rayado es lo que falta: alimentos cuyas sobras o composición nadie conoce. La banda es la incertidumbre.</translation>
    </message>
    <message>
        <source>What is picked first: Manly&apos;s alpha with its 95 % interval, from what was offered and left. Above the dashed line a food is taken more than its share.</source>
        <translation>Lo que se toma primero: el alfa de Manly con su intervalo del 95 %, de lo ofrecido y lo sobrante. Por encima de la línea discontinua un alimento se toma más que su parte.</translation>
    </message>
    <message>
        <source>A study of what is eaten: how many days it needs for the precision wanted, by how much the group&apos;s own days differ, what is weighed, and where control pans stand.</source>
        <translation>Un estudio de lo que se come: cuántos días necesita para la precisión deseada, según cuánto difieren los días del propio grupo, qué se pesa, y dónde van los cuencos de control.</translation>
    </message>
    <message>
        <source>Faeces that were collected and analysed. With what was eaten on their days they say what was digested; without, nothing.</source>
        <translation>Heces que se recogieron y analizaron. Con lo que se comió en sus días dicen lo que se digirió; sin ello, nada.</translation>
    </message>
    <message>
        <source>Yesterday&apos;s bowls as a list to fill in: what came back of each food, by weight, all eaten, or not weighed. Not weighed stays unknown.</source>
        <translation>Los cuencos de ayer como lista por rellenar: lo que volvió de cada alimento, por peso, todo comido, o sin pesar. Sin pesar sigue siendo desconocido.</translation>
    </message>
    <message>
        <source>What was seen: kind, day, time, and what its kind asks for. It is kept under your name, and is never written over.</source>
        <translation>Lo que se vio: tipo, día, hora, y lo que pide su tipo. Se guarda con su nombre, y nunca se sobrescribe.</translation>
    </message>
    <message>
        <source>Signs, blood values, treatments, condition, body mass, Ca:P and diets on one axis of days. Points are what was written down; lines are worked out from the bowls of each day.</source>
        <translation>Signos, valores en sangre, tratamientos, condición, peso vivo, Ca:P y dietas en un eje de días. Los puntos son lo que se anotó; las líneas se calculan de los cuencos de cada día.</translation>
    </message>
    <message>
        <source>What this desk wrote down while its server was away, and what the server has instead. Nothing is lost: it is sent in order, each entry once, and where both disagree you choose what counts.</source>
        <translation>Lo que este puesto anotó mientras su servidor no estaba, y lo que el servidor tiene en su lugar. Nada se pierde: se envía en orden, cada anotación una vez, y donde ambos no coinciden usted elige lo que cuenta.</translation>
    </message>
</context>
<context>
    <name>RotationExport</name>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>%1 and what is lost</source>
        <translation>%1 y lo que se pierde</translation>
    </message>
    <message>
        <source>%1: a rotation is written as .pdf, .html or .json</source>
        <translation>%1: una rotación se escribe como .pdf, .html o .json</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>en total</translation>
    </message>
</context>
<context>
    <name>RotationText</name>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>A better one may be there, but none below %1.</source>
        <translation>Puede haber una mejor, pero ninguna por debajo de %1.</translation>
    </message>
    <message>
        <source>Over the %1 every target holds.</source>
        <translation>En los %1 se cumplen todos los objetivos.</translation>
    </message>
    <message>
        <source>Over the %1 these do not hold: %2.</source>
        <translation>En los %1 no se cumplen: %2.</translation>
    </message>
    <message>
        <source>Each day holds its own, wider zones.</source>
        <translation>Cada día cumple sus propias zonas, más amplias.</translation>
    </message>
    <message>
        <source>One day lies outside its own, wider zones: choose it to see how.</source>
        <translation>Un día queda fuera de sus propias zonas, más amplias: elíjalo para ver cómo.</translation>
    </message>
    <message>
        <source>%1 days lie outside their own, wider zones: choose one to see how.</source>
        <translation>%1 días quedan fuera de sus propias zonas, más amplias: elija uno para ver cómo.</translation>
    </message>
    <message>
        <source>The %1 together do not make it up.</source>
        <translation>Los %1 juntos no lo compensan.</translation>
    </message>
    <message>
        <source>The %1 together make it up.</source>
        <translation>Los %1 juntos lo compensan.</translation>
    </message>
    <message>
        <source>dddd d MMMM</source>
        <comment>a day and its weekday in full, as Qt writes formats</comment>
        <translation>dddd d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>a day without its year, as Qt writes formats</comment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Variety that was wished for, or stock to use up, lacks by %1.</source>
        <translation>Falta %1 de la variedad deseada, o de las existencias por gastar.</translation>
    </message>
    <message>
        <source>planned on %1</source>
        <translation>planificada el %1</translation>
    </message>
    <message>
        <source>planned by %1, %2</source>
        <translation>planificada por %1, %2</translation>
    </message>
    <message>
        <source>%1 fed, counted as eaten</source>
        <translation>%1 dados, contados como comidos</translation>
    </message>
    <message>
        <source>%1 fed, counted as offered</source>
        <translation>%1 dados, contados como ofrecidos</translation>
    </message>
    <message>
        <source>%1 is %2 by %3 of the day&apos;s zone (%4).</source>
        <translation>%1: %2, en %3 de la zona del día (%4).</translation>
    </message>
    <message>
        <source>Every target is within the day&apos;s own, wider zone.</source>
        <translation>Cada objetivo está en la zona propia del día, más amplia.</translation>
    </message>
    <message>
        <source>No plan keeps all hard rules at once: free a locked cell, or let a rule be wider. Nothing was changed.</source>
        <translation>Ningún plan cumple todas las reglas firmes a la vez: libere una celda bloqueada o amplíe una regla. No se cambió nada.</translation>
    </message>
    <message>
        <source>No plan keeps this rule: %1. Nothing was changed.</source>
        <translation>Ningún plan cumple esta regla: %1. No se cambió nada.</translation>
    </message>
    <message>
        <source>No plan was found in the time given. Nothing was changed; try again, or let a rule be wider.</source>
        <translation>No se encontró ningún plan en el tiempo dado. No se cambió nada; inténtelo de nuevo o amplíe una regla.</translation>
    </message>
    <message>
        <source>Nothing was planned (%1).</source>
        <translation>No se planificó nada (%1).</translation>
    </message>
</context>
<context>
    <name>Rows</name>
    <message>
        <source>% as fed</source>
        <translation>% en fresco</translation>
    </message>
    <message>
        <source>% of energy</source>
        <translation>% de la energía</translation>
    </message>
    <message>
        <source>% of DM</source>
        <translation>% de la MS</translation>
    </message>
    <message>
        <source>%1 : %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>share of %1</source>
        <translation>cuota de %1</translation>
    </message>
    <message>
        <source>foods of %1</source>
        <translation>alimentos de %1</translation>
    </message>
    <message>
        <source>foods a day</source>
        <translation>alimentos al día</translation>
    </message>
    <message>
        <source>at least %1 g of each</source>
        <translation>al menos %1 g de cada uno</translation>
    </message>
    <message>
        <source>no %1</source>
        <translation>sin %1</translation>
    </message>
    <message>
        <source>not taken over: %1</source>
        <translation>no adoptado: %1</translation>
    </message>
    <message>
        <source>? no value</source>
        <translation>? sin valor</translation>
    </message>
    <message>
        <source>the other %1</source>
        <translation>los otros %1</translation>
    </message>
    <message>
        <source>%1, by food, per animal a day</source>
        <translation>%1, por alimento, por animal y día</translation>
    </message>
    <message>
        <source>%1 and %2, by food, per animal a day</source>
        <translation>%1 y %2, por alimento, por animal y día</translation>
    </message>
    <message>
        <source>%1, by food, %2</source>
        <translation>%1, por alimento, %2</translation>
    </message>
</context>
<context>
    <name>Rules</name>
    <message>
        <source>no food here states what it needs</source>
        <translation>ningún alimento de aquí indica lo que necesita</translation>
    </message>
    <message>
        <source>no food of the group is here</source>
        <translation>no hay aquí ningún alimento del grupo</translation>
    </message>
    <message>
        <source>the body mass is not known</source>
        <translation>no se conoce el peso vivo</translation>
    </message>
    <message>
        <source>of an animal without body heat of its own, it is no feeding rate</source>
        <translation>de un animal sin calor propio, no es una tasa de alimentación</translation>
    </message>
    <message>
        <source>stated as fed, of a feed whose dry matter is not stated</source>
        <translation>indicado en fresco, de un alimento cuya materia seca no se indica</translation>
    </message>
    <message>
        <source>? Not judged: %1.</source>
        <translation>? Sin juzgar: %1.</translation>
    </message>
</context>
<context>
    <name>RungWords</name>
    <message>
        <source>%1/MJ</source>
        <translation>%1/MJ</translation>
    </message>
</context>
<context>
    <name>Scale</name>
    <message>
        <source>The scale sent two numbers in one line (%1). Wait for the next, or type the weight.</source>
        <translation>La balanza envió dos números en una línea (%1). Espere la siguiente o escriba el peso.</translation>
    </message>
    <message>
        <source>The scale does not weigh in g, kg, oz or lb (%1). Set it to grams.</source>
        <translation>La balanza no pesa en g, kg, oz o lb (%1). Póngala en gramos.</translation>
    </message>
    <message>
        <source>The scale says that its pan is overloaded or lifted. Clear it and tare again.</source>
        <translation>La balanza dice que su plato está sobrecargado o levantado. Despéjelo y vuelva a tarar.</translation>
    </message>
    <message>
        <source>What the scale sent was not whole; it is not used. If this goes on, check the cable and the speed of the port.</source>
        <translation>Lo que envió la balanza no estaba completo; no se usa. Si continúa, revise el cable y la velocidad del puerto.</translation>
    </message>
    <message>
        <source>The scale sent %1 without a unit: the pan still moves, or its unit has to be chosen.</source>
        <translation>La balanza envió %1 sin unidad: el plato aún se mueve, o hay que elegir su unidad.</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>oz</source>
        <translation>oz</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>The scale at %1 is gone: check its cable. Weights can be typed meanwhile.</source>
        <translation>La balanza en %1 ya no está: revise su cable. Mientras tanto se pueden escribir los pesos.</translation>
    </message>
    <message>
        <source>The scale at %1 cannot be reached (%2). Weights can be typed meanwhile.</source>
        <translation>No se llega a la balanza en %1 (%2). Mientras tanto se pueden escribir los pesos.</translation>
    </message>
</context>
<context>
    <name>Sheets</name>
    <message>
        <source>%1: a sheet is written as .pdf, .xlsx, .html or .json</source>
        <translation>%1: una hoja se escribe como .pdf, .xlsx, .html o .json</translation>
    </message>
</context>
<context>
    <name>Solving</name>
    <message>
        <source>solved in whole scale steps</source>
        <translation>resuelto en divisiones enteras de la balanza</translation>
    </message>
    <message>
        <source>solved</source>
        <translation>resuelto</translation>
    </message>
    <message>
        <source>%1, proved best · %2</source>
        <translation>%1, demostrado el mejor · %2</translation>
    </message>
    <message>
        <source>%1, best found in %2; the gap to the best possible is at most %3</source>
        <translation>%1, el mejor hallado en %2; la distancia al mejor posible es de %3 como máximo</translation>
    </message>
    <message>
        <source>to read: the grams as they were written</source>
        <translation>para leer: los gramos como se escribieron</translation>
    </message>
    <message>
        <source>as it was written: the solver would now give other grams</source>
        <translation>como se escribió: ahora el cálculo daría otros gramos</translation>
    </message>
    <message>
        <source>held: only the balance is recomputed</source>
        <translation>fijo: solo se recalcula el balance</translation>
    </message>
    <message>
        <source>solving…</source>
        <translation>resolviendo…</translation>
    </message>
    <message>
        <source>a good bowl is shown, looking for a better one…</source>
        <translation>se muestra un buen cuenco, se busca uno mejor…</translation>
    </message>
    <message>
        <source>no bowl keeps the hard rules</source>
        <translation>ningún cuenco cumple las reglas firmes</translation>
    </message>
    <message>
        <source>nothing limits what is sought</source>
        <translation>nada limita lo que se busca</translation>
    </message>
    <message>
        <source>no answer in time</source>
        <translation>sin respuesta a tiempo</translation>
    </message>
    <message>
        <source>a price is missing</source>
        <translation>falta un precio</translation>
    </message>
    <message>
        <source>the answer did not pass its check</source>
        <translation>la respuesta no pasó su comprobación</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>como se indica</translation>
    </message>
    <message>
        <source>Atwater</source>
        <translation>Atwater</translation>
    </message>
    <message>
        <source>modified Atwater</source>
        <translation>Atwater modificado</translation>
    </message>
    <message>
        <source>NRC 2006, dog</source>
        <translation>NRC 2006, perro</translation>
    </message>
    <message>
        <source>NRC 2006, cat</source>
        <translation>NRC 2006, gato</translation>
    </message>
    <message>
        <source>poultry AMEn</source>
        <translation>aves, EMAn</translation>
    </message>
</context>
<context>
    <name>State</name>
    <message>
        <source>met</source>
        <translation>cumplido</translation>
    </message>
    <message>
        <source>at limit</source>
        <translation>en el límite</translation>
    </message>
    <message>
        <source>short</source>
        <translation>corto</translation>
    </message>
    <message>
        <source>over</source>
        <translation>excede</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>desconocido</translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message>
        <source>%1; a backup lies in %2</source>
        <translation>%1; hay una copia de seguridad en %2</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>no existe ese archivo</translation>
    </message>
    <message>
        <source>is there already</source>
        <translation>ya existe</translation>
    </message>
    <message>
        <source>is a folder, not a collection</source>
        <translation>es una carpeta, no una colección</translation>
    </message>
    <message>
        <source>is no regular file</source>
        <translation>no es un archivo corriente</translation>
    </message>
    <message>
        <source>is empty</source>
        <translation>está vacío</translation>
    </message>
    <message>
        <source>is no collection of Tarebowl</source>
        <translation>no es una colección de Tarebowl</translation>
    </message>
    <message>
        <source>is a database of another program</source>
        <translation>es una base de datos de otro programa</translation>
    </message>
    <message>
        <source>is damaged</source>
        <translation>está dañado</translation>
    </message>
    <message>
        <source>is damaged: it ends in its header</source>
        <translation>está dañado: termina en su cabecera</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>cannot be written</source>
        <translation>no se puede escribir</translation>
    </message>
    <message>
        <source>cannot be made here</source>
        <translation>no se puede crear aquí</translation>
    </message>
    <message>
        <source>the file or its folder cannot be written</source>
        <translation>no se puede escribir en el archivo o en su carpeta</translation>
    </message>
    <message>
        <source>was written by a newer Tarebowl; nothing was changed</source>
        <translation>fue escrito por un Tarebowl más nuevo; no se cambió nada</translation>
    </message>
    <message>
        <source>was written by a newer Tarebowl; nothing was copied</source>
        <translation>fue escrito por un Tarebowl más nuevo; no se copió nada</translation>
    </message>
    <message>
        <source>nothing of a collection can be found in it</source>
        <translation>no se encuentra nada de una colección en él</translation>
    </message>
    <message>
        <source>was written by an older Tarebowl and is open for reading only; copy it where it can be written and open the copy</source>
        <translation>fue escrito por un Tarebowl más antiguo y está abierto solo para lectura; cópielo donde se pueda escribir y abra la copia</translation>
    </message>
    <message>
        <source>is being written by another window or command</source>
        <translation>lo está escribiendo otra ventana o un comando</translation>
    </message>
    <message>
        <source>cannot be written: the disk is full</source>
        <translation>no se puede escribir: el disco está lleno</translation>
    </message>
    <message>
        <source>cannot be read or written: the disk reports an error</source>
        <translation>no se puede leer o escribir: el disco informa de un error</translation>
    </message>
    <message>
        <source>the change breaks a rule of the collection</source>
        <translation>el cambio infringe una regla de la colección</translation>
    </message>
    <message>
        <source>the collection could not be read or written</source>
        <translation>no se pudo leer o escribir la colección</translation>
    </message>
    <message>
        <source>was moved, deleted or replaced while it was open; nothing was written. Put it back where it was, or open it anew</source>
        <translation>se movió, borró o sustituyó mientras estaba abierto; no se escribió nada. Devuélvalo a su sitio o ábralo de nuevo</translation>
    </message>
    <message>
        <source>daily</source>
        <translation>diaria</translation>
    </message>
    <message>
        <source>before-upgrade</source>
        <translation>antes de actualizar</translation>
    </message>
    <message>
        <source>before-restore</source>
        <translation>antes de restaurar</translation>
    </message>
    <message>
        <source>the server asks for a password, and none was given; open it again and type it, or put it into ~/.pgpass</source>
        <translation>el servidor pide una contraseña y no se dio ninguna; abra la colección otra vez y escríbala, o anótela en ~/.pgpass</translation>
    </message>
    <message>
        <source>the server does not accept the password; open it again and type it anew, or look into ~/.pgpass</source>
        <translation>el servidor no acepta la contraseña; abra la colección otra vez y escríbala de nuevo, o mire en ~/.pgpass</translation>
    </message>
    <message>
        <source>the server does not let you in; ask whoever runs it</source>
        <translation>el servidor no le deja entrar; pregunte a quien lo lleva</translation>
    </message>
    <message>
        <source>the server has no such database; look at its name, or ask whoever runs the server to make one</source>
        <translation>el servidor no tiene esa base de datos; revise su nombre, o pida a quien lleva el servidor que cree una</translation>
    </message>
    <message>
        <source>you may not open this database; ask whoever runs the server</source>
        <translation>no puede abrir esta base de datos; pregunte a quien lleva el servidor</translation>
    </message>
    <message>
        <source>the server does not answer; look at its name, at the network, and whether it runs</source>
        <translation>el servidor no responde; revise su nombre, la red y si está en marcha</translation>
    </message>
    <message>
        <source>the database holds no collection; tarebowl server init makes one in it</source>
        <translation>la base de datos no contiene ninguna colección; tarebowl server init crea una en ella</translation>
    </message>
    <message>
        <source>was raised by a newer Tarebowl; install that here, too. Nothing was changed</source>
        <translation>fue actualizada por un Tarebowl más nuevo; instálelo aquí también. No se cambió nada</translation>
    </message>
    <message>
        <source>was made by an older Tarebowl; whoever set it up raises it with tarebowl server upgrade</source>
        <translation>fue creada por un Tarebowl más antiguo; quien la instaló la actualiza con tarebowl server upgrade</translation>
    </message>
    <message>
        <source>nobody has let you into this collection; whoever runs it does so with tarebowl server add</source>
        <translation>nadie le ha dado acceso a esta colección; quien la lleva lo hace con tarebowl server add</translation>
    </message>
    <message>
        <source>your role on the server may not do this, and nothing was written</source>
        <translation>su papel en el servidor no lo permite, y no se escribió nada</translation>
    </message>
    <message>
        <source>the connection to the server was lost; what was not said to be saved was not written</source>
        <translation>se perdió la conexión con el servidor; lo que no se dio por guardado no se escribió</translation>
    </message>
    <message>
        <source>the connection to the server was lost, and it does not answer</source>
        <translation>se perdió la conexión con el servidor, y este no responde</translation>
    </message>
    <message>
        <source>the connection to the server was lost while it was being written; nothing was kept of it</source>
        <translation>se perdió la conexión con el servidor mientras se escribía; no se conservó nada de ello</translation>
    </message>
    <message>
        <source>a password does not belong in an address, where others can read it; leave it out, and it is asked for, or read from ~/.pgpass</source>
        <translation>una contraseña no debe estar en una dirección, donde otros pueden leerla; omítala: se pregunta por ella o se lee de ~/.pgpass</translation>
    </message>
    <message>
        <source>was moved or removed on the server while it was open; nothing was written. Open it where it is now</source>
        <translation>fue movida o quitada en el servidor mientras estaba abierta; no se escribió nada. Ábrala donde está ahora</translation>
    </message>
    <message>
        <source>cannot be written: the server&apos;s disk is full; nothing was written. Tell whoever runs the server</source>
        <translation>no se puede escribir: el disco del servidor está lleno; no se escribió nada. Avise a quien lleva el servidor</translation>
    </message>
    <message>
        <source>cannot be read or written: the server&apos;s disk reports an error</source>
        <translation>no se puede leer ni escribir: el disco del servidor comunica un error</translation>
    </message>
    <message>
        <source>is damaged on the server; tell whoever runs it</source>
        <translation>está dañada en el servidor; avise a quien lo lleva</translation>
    </message>
    <message>
        <source>the server&apos;s certificate was not accepted: it has expired by this machine&apos;s clock, or it is signed by nobody whom this machine trusts. Look at the clock, and ask whoever runs the server for a valid one, or for the certificate of who signs for it, which belongs in ~/.postgresql/root.crt</source>
        <translation>no se aceptó el certificado del servidor: ha caducado según el reloj de este equipo, o no lo firma nadie en quien este equipo confíe. Mire el reloj y pida a quien lleva el servidor uno válido, o el certificado de quien lo firma, que va en ~/.postgresql/root.crt</translation>
    </message>
    <message>
        <source>the certificate of who signs for the server is not there; ask whoever runs the server for it and put it into ~/.postgresql/root.crt</source>
        <translation>no está el certificado de quien firma por el servidor; pídalo a quien lleva el servidor y póngalo en ~/.postgresql/root.crt</translation>
    </message>
    <message>
        <source>the server&apos;s certificate is of another name than the address; write the server&apos;s name as it stands there, or ask whoever runs the server</source>
        <translation>el certificado del servidor es de otro nombre que la dirección; escriba el nombre del servidor como está allí, o pregunte a quien lleva el servidor</translation>
    </message>
    <message>
        <source>no secure connection came about; ask whoever runs the server whether it offers one</source>
        <translation>no se logró una conexión segura; pregunte a quien lleva el servidor si la ofrece</translation>
    </message>
</context>
<context>
    <name>Story</name>
    <message>
        <source>mass of %1 on %2: %3</source>
        <translation>peso de %1 el %2: %3</translation>
    </message>
    <message>
        <source>condition of %1 on %2: %3</source>
        <translation>condición de %1 el %2: %3</translation>
    </message>
    <message>
        <source>%1 in %2 from %3</source>
        <translation>%1 en %2 desde el %3</translation>
    </message>
    <message>
        <source>profile %1, version %2</source>
        <translation>perfil %1, versión %2</translation>
    </message>
    <message>
        <source>energy plan from %1</source>
        <translation>plan de energía desde el %1</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>mínimo</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>máximo</translation>
    </message>
    <message>
        <source>mass, kg</source>
        <translation>peso, kg</translation>
    </message>
    <message>
        <source>until</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>from</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>descartado</translation>
    </message>
    <message>
        <source>left</source>
        <translation>se fue</translation>
    </message>
    <message>
        <source>state</source>
        <translation>estado</translation>
    </message>
    <message>
        <source>why the model stands in</source>
        <translation>por qué sirve el modelo</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation>%1 entradas</translation>
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
        <source>%1: %2 instead of %3</source>
        <translation>%1: %2 en lugar de %3</translation>
    </message>
    <message>
        <source>%1: added</source>
        <translation>%1: añadido</translation>
    </message>
    <message>
        <source>%1: taken away</source>
        <translation>%1: quitado</translation>
    </message>
    <message>
        <source>%1%2: %3 instead of %4</source>
        <translation>%1%2: %3 en lugar de %4</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
</context>
<context>
    <name>Strip</name>
    <message>
        <source>%1 in this collection&apos;s group “%2”, %3</source>
        <translation>%1 en el grupo «%2» de esta colección, %3</translation>
    </message>
    <message>
        <source> · %1 without a value</source>
        <translation> · %1 sin valor</translation>
    </message>
</context>
<context>
    <name>Study</name>
    <message>
        <source>Study of %1</source>
        <translation>Estudio de %1</translation>
    </message>
    <message>
        <source>%1: a plan is written as .pdf or .html</source>
        <translation>%1: un plan se escribe como .pdf o .html</translation>
    </message>
    <message>
        <source>%1: a study is written as .pdf, .xlsx or .html</source>
        <translation>%1: un estudio se escribe como .pdf, .xlsx o .html</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>all food as fed</source>
        <translation>toda la comida en fresco</translation>
    </message>
    <message>
        <source>“%1”: no nutrient is called “%2”. Write a name and a number: Ca 1850.</source>
        <translation>«%1»: ningún nutriente se llama «%2». Escriba un nombre y un número: Ca 1850.</translation>
    </message>
    <message>
        <source>“%1”: after the nutrient comes its number, and its scatter if it is known: Ca 1850 ± 90.</source>
        <translation>«%1»: tras el nutriente va su número, y su dispersión si se conoce: Ca 1850 ± 90.</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>So that the mean of %1 is known to ± %2 %3 with %4 confidence. On %5 days from %6 to %7 it was %8 %3 per animal and day, and went up and down by %9 %3 (standard deviation).</source>
        <translation>Para que la media de %1 se conozca a ± %2 %3 con %4 de confianza. En %5 días del %6 al %7 fue de %8 %3 por animal y día, y osciló en %9 %3 (desviación típica).</translation>
    </message>
    <message>
        <source> A day resembles the one before it, so that each tells less: %1 %2 is planned with.</source>
        <translation> Un día se parece al anterior, de modo que cada uno dice menos: se planifica con %1 %2.</translation>
    </message>
    <message>
        <source>Sheets: print that of %1 for each day, and weigh every food into its bowl.</source>
        <translation>Hojas: imprima la de %1 para cada día, y pese cada alimento en su cuenco.</translation>
    </message>
    <message>
        <source>the section</source>
        <translation>la sección</translation>
    </message>
    <message>
        <source>Weigh back, food by food: %1.</source>
        <translation>Pesar de vuelta, alimento por alimento: %1.</translation>
    </message>
    <message>
        <source>A control pan each day in %1, any %2: one of %3.</source>
        <translation>Un cuenco de control cada día en %1, cualquier %2: uno de %3.</translation>
    </message>
    <message>
        <source>the same place</source>
        <translation>el mismo sitio</translation>
    </message>
    <message>
        <source>food</source>
        <translation>alimento</translation>
    </message>
    <message>
        <source>The last leftovers and pans come back on %1.</source>
        <translation>Las últimas sobras y cuencos vuelven el %1.</translation>
    </message>
    <message>
        <source>The group is no longer in the collection: choose another.</source>
        <translation>El grupo ya no está en la colección: elija otro.</translation>
    </message>
    <message>
        <source>It had no bowl in the week before the first day: nobody knows what it is fed. Choose a first day that follows days which were weighed.</source>
        <translation>No tuvo cuenco en la semana antes del primer día: nadie sabe qué se le da. Elija un primer día que siga a días pesados.</translation>
    </message>
    <message>
        <source>Of the eight weeks before, what it ate is known on %1 of the days: weigh back at least two in full first.</source>
        <translation>De las ocho semanas anteriores, lo que comió se sabe en %1 de los días: pese antes de vuelta al menos dos por completo.</translation>
    </message>
    <message>
        <source>It ate none of it in the eight weeks before: follow something else.</source>
        <translation>No comió nada de ello en las ocho semanas anteriores: siga otra cosa.</translation>
    </message>
    <message>
        <source>More than ten years would be needed: ask for less precision.</source>
        <translation>Harían falta más de diez años: pida menos precisión.</translation>
    </message>
    <message>
        <source>%1: %2 g fresh, %3 g DM in 100 g</source>
        <translation>%1: %2 g en fresco, %3 g de MS en 100 g</translation>
    </message>
    <message>
        <source>; %1 per 100 g DM</source>
        <translation>; %1 por 100 g de MS</translation>
    </message>
    <message>
        <source>The last day lies before the first: turn them round.</source>
        <translation>El último día está antes que el primero: déles la vuelta.</translation>
    </message>
    <message>
        <source>Faeces that weigh nothing say nothing: type the grams as found.</source>
        <translation>Unas heces que no pesan nada no dicen nada: escriba los gramos hallados.</translation>
    </message>
    <message>
        <source>Dry matter is more than 0 and at most 100 g in 100 g fresh.</source>
        <translation>La materia seca es más de 0 y como máximo 100 g en 100 g en fresco.</translation>
    </message>
    <message>
        <source>A content is 0 or more.</source>
        <translation>Un contenido es 0 o más.</translation>
    </message>
    <message>
        <source>A nutrient stands there twice: leave one of them out.</source>
        <translation>Un nutriente está dos veces: quite uno.</translation>
    </message>
    <message>
        <source>Metabolizable energy is no property of faeces: leave energy out.</source>
        <translation>La energía metabolizable no es propiedad de las heces: deje fuera la energía.</translation>
    </message>
</context>
<context>
    <name>Suggest</name>
    <message>
        <source>closes the gap</source>
        <translation>cierra la brecha</translation>
    </message>
    <message>
        <source>helps, but the hard rules would still contradict each other</source>
        <translation>ayuda, pero las reglas firmes seguirían contradiciéndose</translation>
    </message>
    <message>
        <source>the hard rules would hold, and other targets be missed</source>
        <translation>las reglas firmes se cumplirían, y otros objetivos no</translation>
    </message>
    <message>
        <source>leaves %1 of the gap</source>
        <translation>deja %1 de la brecha</translation>
    </message>
    <message>
        <source>; its values are known for %1 of the rules</source>
        <translation>; sus valores se conocen para %1 de las reglas</translation>
    </message>
    <message>
        <source>Allow %1 g %2</source>
        <translation>Permitir %1 g de %2</translation>
    </message>
    <message>
        <source>%1 g %2 in place of %3</source>
        <translation>%1 g de %2 en lugar de %3</translation>
    </message>
    <message>
        <source>Add %1 g %2</source>
        <translation>Añadir %1 g de %2</translation>
    </message>
    <message>
        <source>the hard rules would hold</source>
        <translation>las reglas firmes se cumplirían</translation>
    </message>
    <message>
        <source>every target would hold</source>
        <translation>se cumplirían todos los objetivos</translation>
    </message>
    <message>
        <source>these could hold together; others would still fight</source>
        <translation>estos podrían cumplirse juntos; otros seguirían chocando</translation>
    </message>
    <message>
        <source>, in amounts between the scale&apos;s steps</source>
        <translation>, en cantidades entre las divisiones de la balanza</translation>
    </message>
    <message>
        <source>%1 at least %2</source>
        <translation>%1 al menos %2</translation>
    </message>
    <message>
        <source>%1 at most %2</source>
        <translation>%1 como máximo %2</translation>
    </message>
    <message>
        <source>Ask for at least %1 of the group %2</source>
        <translation>Pedir al menos %1 del grupo %2</translation>
    </message>
    <message>
        <source>Ask for at most %1 of the group %2</source>
        <translation>Pedir como máximo %1 del grupo %2</translation>
    </message>
</context>
<context>
    <name>Swaps</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 y %n más</numerusform>
            <numerusform>%1 y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>still in zone</source>
        <translation>sigue en la zona</translation>
    </message>
    <message>
        <source>now in zone</source>
        <translation>ahora en la zona</translation>
    </message>
    <message>
        <source>now over</source>
        <translation>ahora excede</translation>
    </message>
    <message>
        <source>over as before</source>
        <translation>excede como antes</translation>
    </message>
    <message>
        <source>now short</source>
        <translation>ahora corto</translation>
    </message>
    <message>
        <source>short as before</source>
        <translation>corto como antes</translation>
    </message>
    <message>
        <source>Ca:P %1 → %2</source>
        <translation>Ca:P %1 → %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>energy %1 → %2 kcal</source>
        <translation>energía %1 → %2 kcal</translation>
    </message>
    <message>
        <source>%1: %2 → %3</source>
        <translation>%1: %2 → %3</translation>
    </message>
    <message>
        <source>%1 %2 → %3</source>
        <translation>%1 %2 → %3</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>con %1</translation>
    </message>
    <message numerus="yes">
        <source>eaten %1 in %n bowls</source>
        <translation>
            <numerusform>se comió %1 en %n cuenco</numerusform>
            <numerusform>se comió %1 en %n cuencos</numerusform>
        </translation>
    </message>
    <message>
        <source>eaten before: ?</source>
        <translation>comido antes: ?</translation>
    </message>
    <message>
        <source>unknown: %1</source>
        <translation>desconocido: %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>%1 cada uno</translation>
    </message>
    <message>
        <source> (the animal is not known)</source>
        <translation> (no se conoce el animal)</translation>
    </message>
    <message>
        <source> (set aside: %1)</source>
        <translation> (apartado: %1)</translation>
    </message>
    <message>
        <source>Keeper may decide</source>
        <translation>El cuidador puede decidir</translation>
    </message>
    <message>
        <source>another food group</source>
        <translation>otro grupo de alimentos</translation>
    </message>
    <message>
        <source>no longer met: %1</source>
        <translation>ya no se cumple: %1</translation>
    </message>
    <message>
        <source>may not be met: %1</source>
        <translation>puede no cumplirse: %1</translation>
    </message>
    <message>
        <source>a caution</source>
        <translation>una advertencia</translation>
    </message>
    <message>
        <source>Ask the nutritionist: %1</source>
        <translation>Preguntar al nutricionista: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n more would do, further off</source>
        <translation>
            <numerusform>%n más serviría, menos parecido</numerusform>
            <numerusform>%n más servirían, menos parecidos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not for this animal</source>
        <translation>
            <numerusform>%n no es para este animal</numerusform>
            <numerusform>%n no son para este animal</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n against a structure rule</source>
        <translation>
            <numerusform>%n contra una regla de estructura</numerusform>
            <numerusform>%n contra una regla de estructura</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n in no amount within the hard rules</source>
        <translation>
            <numerusform>%n en ninguna cantidad dentro de las reglas firmes</numerusform>
            <numerusform>%n en ninguna cantidad dentro de las reglas firmes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n at their limits</source>
        <translation>
            <numerusform>%n en su límite</numerusform>
            <numerusform>%n en sus límites</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of unknown water</source>
        <translation>
            <numerusform>%n de agua desconocida</numerusform>
            <numerusform>%n de agua desconocida</numerusform>
        </translation>
    </message>
    <message>
        <source>D: equal dry matter, %1</source>
        <translation>D: igual materia seca, %1</translation>
    </message>
    <message>
        <source>E: equal energy, %1</source>
        <translation>E: igual energía, %1</translation>
    </message>
</context>
<context>
    <name>Table</name>
    <message>
        <source>Copy table</source>
        <translation>Copiar la tabla</translation>
    </message>
</context>
<context>
    <name>Target</name>
    <message>
        <source>% as fed</source>
        <translation>% en fresco</translation>
    </message>
    <message>
        <source>% of energy</source>
        <translation>% de la energía</translation>
    </message>
    <message>
        <source>% of DM</source>
        <translation>% de la MS</translation>
    </message>
    <message>
        <source>from memory: verify before use</source>
        <translation>de memoria: verificar antes de usar</translation>
    </message>
    <message>
        <source>house rule</source>
        <translation>regla de la casa</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>inventado</translation>
    </message>
    <message>
        <source>computed from a published value</source>
        <translation>calculado de un valor publicado</translation>
    </message>
    <message>
        <source>%1 : %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>exactly %1</source>
        <translation>exactamente %1</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
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
        <source>model species: %1</source>
        <translation>especie modelo: %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>the choice among %1</source>
        <translation>la elección entre %1</translation>
    </message>
</context>
<context>
    <name>Today</name>
    <message>
        <source>1 bowl to prepare</source>
        <translation>1 cuenco por preparar</translation>
    </message>
    <message>
        <source>%1 bowls to prepare</source>
        <translation>%1 cuencos por preparar</translation>
    </message>
    <message>
        <source>no bowl to prepare</source>
        <translation>ningún cuenco por preparar</translation>
    </message>
    <message>
        <source>%1: all foods are weighed in</source>
        <translation>%1: todos los alimentos están pesados</translation>
    </message>
    <message>
        <source>%1: %2 of %3 foods are weighed in, %4 missing</source>
        <translation>%1: %2 de %3 alimentos están pesados, faltan %4</translation>
    </message>
    <message>
        <source>No section</source>
        <translation>Ninguna sección</translation>
    </message>
    <message>
        <source>%1 without a bowl: no diet in force, or nobody knows how many they are</source>
        <translation>%1 sin cuenco: ninguna dieta vigente, o nadie sabe cuántos son</translation>
    </message>
    <message>
        <source>1 group</source>
        <translation>1 grupo</translation>
    </message>
    <message>
        <source>%1 groups</source>
        <translation>%1 grupos</translation>
    </message>
    <message>
        <source>leftovers of 1 bowl of yesterday are not weighed</source>
        <translation>las sobras de 1 cuenco de ayer no están pesadas</translation>
    </message>
    <message>
        <source>leftovers of %1 bowls of yesterday are not weighed</source>
        <translation>las sobras de %1 cuencos de ayer no están pesadas</translation>
    </message>
    <message>
        <source>%1 g %2</source>
        <translation>%1 g de %2</translation>
    </message>
    <message>
        <source>%1, bowl %2 on %3: %4 in place of %5 (%6, %7)</source>
        <translation>%1, cuenco %2 el %3: %4 en lugar de %5 (%6, %7)</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>any %1</source>
        <translation>cualquier %1</translation>
    </message>
    <message>
        <source>%1: %2, %3 g put out on %4, %5</source>
        <translation>%1: %2, %3 g puestos el %4, %5</translation>
    </message>
    <message>
        <source>is not weighed yet</source>
        <translation>aún no está pesado</translation>
    </message>
    <message>
        <source>stands until tomorrow</source>
        <translation>queda hasta mañana</translation>
    </message>
    <message>
        <source> (no section of this name: tarebowl pans takes its weight)</source>
        <translation> (ninguna sección se llama así: tarebowl pans toma el peso)</translation>
    </message>
    <message>
        <source>Control pans that still stand</source>
        <translation>Cuencos de control que siguen puestos</translation>
    </message>
    <message>
        <source>Swaps made today</source>
        <translation>Cambios hechos hoy</translation>
    </message>
    <message>
        <source>Waiting for a decision</source>
        <translation>A la espera de una decisión</translation>
    </message>
    <message>
        <source>swap: %1</source>
        <translation>cambio: %1</translation>
    </message>
    <message>
        <source>diet: %1, version %2, for %3</source>
        <translation>dieta: %1, versión %2, para %3</translation>
    </message>
</context>
<context>
    <name>Told</name>
    <message>
        <source>the species&apos; name</source>
        <translation>el nombre de la especie</translation>
    </message>
    <message>
        <source>its scientific name</source>
        <translation>su nombre científico</translation>
    </message>
    <message>
        <source>the groups of animals it belongs to</source>
        <translation>los grupos de animales a los que pertenece</translation>
    </message>
    <message>
        <source>a model species</source>
        <translation>una especie modelo</translation>
    </message>
    <message>
        <source>a sentence on why the model stands in</source>
        <translation>una frase sobre por qué sirve el modelo</translation>
    </message>
    <message>
        <source>a name for the group</source>
        <translation>un nombre para el grupo</translation>
    </message>
    <message>
        <source>how many animals there are</source>
        <translation>cuántos animales hay</translation>
    </message>
    <message>
        <source>the mass of one animal</source>
        <translation>la masa de un animal</translation>
    </message>
    <message>
        <source>how the energy need is worked out</source>
        <translation>cómo se calcula la necesidad de energía</translation>
    </message>
    <message>
        <source>take in %1</source>
        <translation>acoger %1</translation>
    </message>
    <message>
        <source>start the targets of %1 from a model</source>
        <translation>iniciar los objetivos de %1 desde un modelo</translation>
    </message>
</context>
<context>
    <name>TraceWords</name>
    <message>
        <source>minimum</source>
        <translation>mínimo</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>máximo</translation>
    </message>
    <message>
        <source>%1 %2 g</source>
        <translation>%1 %2 g</translation>
    </message>
    <message>
        <source>%1 missed by %2</source>
        <translation>%1 falla por %2</translation>
    </message>
    <message>
        <source>%1 %2 to %3 g</source>
        <translation>%1 %2 a %3 g</translation>
    </message>
    <message>
        <source>what gives: %1</source>
        <translation>lo que cede: %1</translation>
    </message>
    <message>
        <source>what comes in: %1</source>
        <translation>lo que entra: %1</translation>
    </message>
    <message>
        <source>no food changes</source>
        <translation>no cambia ningún alimento</translation>
    </message>
    <message>
        <source>Over all of this range the hard rules contradict each other.</source>
        <translation>En todo este intervalo las reglas firmes se contradicen.</translation>
    </message>
    <message>
        <source>Nothing limits what is sought: give a maximum to a food or a target.</source>
        <translation>Nada limita lo que se busca: dé un máximo a un alimento o a un objetivo.</translation>
    </message>
    <message>
        <source>No answer in time.</source>
        <translation>Sin respuesta a tiempo.</translation>
    </message>
    <message>
        <source>No price: %1. Cost cannot be traded, for unknown is not free of charge.</source>
        <translation>Sin precio: %1. No se puede sopesar el coste, pues desconocido no es gratis.</translation>
    </message>
    <message>
        <source>Nothing can be traced here (%1).</source>
        <translation>Aquí no se puede seguir nada (%1).</translation>
    </message>
    <message>
        <source>%1 against %2</source>
        <translation>%1 frente a %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>cost a day</source>
        <translation>coste al día</translation>
    </message>
    <message>
        <source>distance from now</source>
        <translation>distancia de ahora</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>an empty bowl</source>
        <translation>un cuenco vacío</translation>
    </message>
    <message>
        <source>At %1: %2.</source>
        <translation>En %1: %2.</translation>
    </message>
    <message>
        <source>%1 from %2 to %3: %4.</source>
        <translation>%1 de %2 a %3: %4.</translation>
    </message>
    <message>
        <source>Something else begins to give at %1.</source>
        <translation>En %1 empieza a ceder otra cosa.</translation>
    </message>
    <message>
        <source>Below %1 the hard rules contradict each other.</source>
        <translation>Por debajo de %1 las reglas firmes se contradicen.</translation>
    </message>
    <message>
        <source>Beyond %1 the hard rules contradict each other.</source>
        <translation>Por encima de %1 las reglas firmes se contradicen.</translation>
    </message>
    <message>
        <source>In amounts between the scale&apos;s steps.</source>
        <translation>En cantidades entre las divisiones de la balanza.</translation>
    </message>
</context>
<context>
    <name>Waiting</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>%1 left, %2</source>
        <translation>%1 sobrantes, %2</translation>
    </message>
    <message numerus="yes">
        <source>Cut off from the server: %n entry(ies) wait.</source>
        <translation>
            <numerusform>Sin conexión con el servidor: %n anotación espera.</numerusform>
            <numerusform>Sin conexión con el servidor: %n anotaciones esperan.</numerusform>
        </translation>
    </message>
    <message>
        <source>Cut off from the server.</source>
        <translation>Sin conexión con el servidor.</translation>
    </message>
    <message>
        <source>The kitchen goes on with this desk&apos;s copy of %1; all other rooms wait for the server.</source>
        <translation>La cocina sigue con la copia de este puesto del %1; las demás salas esperan al servidor.</translation>
    </message>
    <message>
        <source>This desk has no copy yet: all rooms wait for the server.</source>
        <translation>Este puesto aún no tiene copia: todas las salas esperan al servidor.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) wait for the server.</source>
        <translation>
            <numerusform>%n anotación espera al servidor.</numerusform>
            <numerusform>%n anotaciones esperan al servidor.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n entry(ies) the server has something else: choose what counts.</source>
        <translation>
            <numerusform>De %n anotación el servidor tiene otra cosa: elija lo que cuenta.</numerusform>
            <numerusform>De %n anotaciones el servidor tiene otra cosa: elija lo que cuenta.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 sobrantes</translation>
    </message>
    <message>
        <source>all eaten</source>
        <translation>todo comido</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation>sin pesar</translation>
    </message>
    <message>
        <source>about %1 left</source>
        <translation>unos %1 sobrantes</translation>
    </message>
    <message>
        <source>%1 spilled</source>
        <translation>%1 derramados</translation>
    </message>
    <message>
        <source>%1 stolen</source>
        <translation>%1 robados</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>cannot be read any more</source>
        <translation>ya no se puede leer</translation>
    </message>
    <message>
        <source>%1, weighed in</source>
        <translation>%1, pesado</translation>
    </message>
    <message>
        <source>%1, leftover</source>
        <translation>%1, sobra</translation>
    </message>
    <message>
        <source>left of all together</source>
        <translation>sobra de todo junto</translation>
    </message>
    <message>
        <source>It waits, and is sent in its turn when the server answers.</source>
        <translation>Espera, y se envía a su turno cuando el servidor responda.</translation>
    </message>
    <message>
        <source>The server did not take it: %1. Yours writes it there if it can be; theirs sets it aside on this desk.</source>
        <translation>El servidor no la aceptó: %1. «Cuenta la propia» la escribe allí si es posible; «Cuenta la otra» la deja aparte en este puesto.</translation>
    </message>
    <message>
        <source>The server has something else: %1. If yours counts, it corrects what is there; if theirs counts, yours is kept beside it.</source>
        <translation>El servidor tiene otra cosa: %1. Si cuenta la propia, corrige lo que hay allí; si cuenta la otra, la propia se guarda a su lado.</translation>
    </message>
</context>
<context>
    <name>WholeFile</name>
    <message>
        <source>%1 was not written: %2</source>
        <translation>%1 no se escribió: %2</translation>
    </message>
</context>
<context>
    <name>Why</name>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 más</translation>
    </message>
    <message>
        <source> (from memory: verify)</source>
        <translation> (de memoria: verificar)</translation>
    </message>
    <message>
        <source>%1 is not sure enough.</source>
        <translation>%1 no es bastante seguro.</translation>
    </message>
    <message>
        <source>Its mean, %1, lies in the zone, but with the scatter of the foods the target holds with a chance of only %2.</source>
        <translation>Su media, %1, está en la zona, pero con la dispersión de los alimentos el objetivo solo se cumple con una probabilidad de %2.</translation>
    </message>
    <message>
        <source>%1 is short by %2:</source>
        <translation>A %1 le falta %2:</translation>
    </message>
    <message>
        <source>%1 is over by %2:</source>
        <translation>%1 excede en %2:</translation>
    </message>
    <message>
        <source>%1 is over: none is allowed.</source>
        <translation>%1 excede: no se permite nada.</translation>
    </message>
    <message>
        <source>%1 instead of at least %2.</source>
        <translation>%1 en lugar de al menos %2.</translation>
    </message>
    <message>
        <source>%1 instead of at most %2.</source>
        <translation>%1 en lugar de como máximo %2.</translation>
    </message>
    <message>
        <source> A hard rule.</source>
        <translation> Una regla firme.</translation>
    </message>
    <message>
        <source>With these foods, limits and locks</source>
        <translation>Con estos alimentos, límites y bloqueos</translation>
    </message>
    <message>
        <source>With these foods and limits</source>
        <translation>Con estos alimentos y límites</translation>
    </message>
    <message>
        <source>%1, no bowl holds all of these together:</source>
        <translation>%1, ningún cuenco cumple todo esto a la vez:</translation>
    </message>
    <message>
        <source>%1, no bowl holds %2.</source>
        <translation>%1, ningún cuenco cumple %2.</translation>
    </message>
    <message>
        <source>%1, the hard rules contradict each other.</source>
        <translation>%1, las reglas firmes se contradicen.</translation>
    </message>
    <message>
        <source>The grams shown are the last ones and do not keep the rules.</source>
        <translation>Los gramos que se muestran son los últimos y no cumplen las reglas.</translation>
    </message>
    <message>
        <source>Nothing limits what is sought.</source>
        <translation>Nada limita lo que se busca.</translation>
    </message>
    <message>
        <source>Give a maximum to a food or a target, or seek the diet closest to now.</source>
        <translation>Dé un máximo a un alimento o a un objetivo, o busque la dieta más cercana a la actual.</translation>
    </message>
    <message>
        <source>No answer in time.</source>
        <translation>Sin respuesta a tiempo.</translation>
    </message>
    <message>
        <source>The grams shown are the last ones. Fewer foods or locks make it easier.</source>
        <translation>Los gramos que se muestran son los últimos. Menos alimentos o bloqueos lo facilitan.</translation>
    </message>
    <message>
        <source>The cheapest bowl cannot be sought: no price for %1.</source>
        <translation>No se puede buscar el cuenco más barato: sin precio para %1.</translation>
    </message>
    <message>
        <source>Unknown is not free of charge. Prices stand with the foods in the Foods room; the grams shown are the last ones.</source>
        <translation>Desconocido no es gratis. Los precios están con los alimentos en la sala Alimentos; los gramos que se muestran son los últimos.</translation>
    </message>
    <message>
        <source>The answer did not pass its own check and is not shown.</source>
        <translation>La respuesta no pasó su propia comprobación y no se muestra.</translation>
    </message>
    <message>
        <source>At least what is shown: %1.</source>
        <translation>Al menos lo que se muestra: %1.</translation>
    </message>
    <message>
        <source>No value for %1, %2 of the dry matter.</source>
        <translation>Sin valor para %1, %2 de la materia seca.</translation>
    </message>
    <message>
        <source>Nobody can judge %1.</source>
        <translation>Nadie puede juzgar %1.</translation>
    </message>
    <message>
        <source>No food in the bowl has a value for it. Unknown is not zero.</source>
        <translation>Ningún alimento del cuenco tiene un valor para ello. Desconocido no es cero.</translation>
    </message>
    <message>
        <source>%1 is held at %2 g.</source>
        <translation>%1 se mantiene en %2 g.</translation>
    </message>
    <message>
        <source>That is above its maximum of %1 g.</source>
        <translation>Está por encima de su máximo de %1 g.</translation>
    </message>
    <message>
        <source>That is below its minimum of %1 g.</source>
        <translation>Está por debajo de su mínimo de %1 g.</translation>
    </message>
    <message>
        <source>%1 at its minimum</source>
        <translation>%1 en su mínimo</translation>
    </message>
    <message>
        <source>%1 at its maximum</source>
        <translation>%1 en su máximo</translation>
    </message>
    <message>
        <source>No room left:</source>
        <translation>Ya no hay margen:</translation>
    </message>
    <message>
        <source>No cheaper bowl meets the targets: %1 per animal a day.</source>
        <translation>Ningún cuenco más barato cumple los objetivos: %1 por animal y día.</translation>
    </message>
    <message>
        <source>No bowl of fewer than %1 foods meets the targets; of such bowls it is the closest.</source>
        <translation>Ningún cuenco de menos de %1 alimentos cumple los objetivos; de esos cuencos es el más cercano.</translation>
    </message>
    <message>
        <source>No bowl that meets the targets holds less %1: %2 per animal a day.</source>
        <translation>Ningún cuenco que cumpla los objetivos contiene menos %1: %2 por animal y día.</translation>
    </message>
    <message>
        <source>No bowl that meets the targets holds more %1: %2 per animal a day.</source>
        <translation>Ningún cuenco que cumpla los objetivos contiene más %1: %2 por animal y día.</translation>
    </message>
    <message>
        <source>No bowl that meets the targets lies closer to the diet as it is now.</source>
        <translation>Ningún cuenco que cumpla los objetivos está más cerca de la dieta actual.</translation>
    </message>
    <message>
        <source>No bowl that meets the targets lies closer to equal grams of every food.</source>
        <translation>Ningún cuenco que cumpla los objetivos está más cerca de los mismos gramos de cada alimento.</translation>
    </message>
    <message>
        <source>Every target that can be judged holds.</source>
        <translation>Se cumplen todos los objetivos que se pueden juzgar.</translation>
    </message>
    <message>
        <source>Every target holds.</source>
        <translation>Se cumplen todos los objetivos.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>%1: %2 → %3</source>
        <translation>%1: %2 → %3</translation>
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
        <source>%1 is new: %2</source>
        <translation>%1 es nuevo: %2</translation>
    </message>
    <message>
        <source>%1 is gone: it was %2</source>
        <translation>%1 ya no está: era %2</translation>
    </message>
    <message>
        <source>%1, at least</source>
        <translation>%1, como mínimo</translation>
    </message>
    <message>
        <source>%1, at most</source>
        <translation>%1, como máximo</translation>
    </message>
    <message>
        <source>%1, locked</source>
        <translation>%1, bloqueado</translation>
    </message>
    <message>
        <source>%1, given as</source>
        <translation>%1, dado como</translation>
    </message>
    <message>
        <source>%1, preparation</source>
        <translation>%1, preparación</translation>
    </message>
    <message>
        <source>%1 may be given unweighed</source>
        <translation>%1 se puede dar sin pesar</translation>
    </message>
    <message>
        <source>%1 is no longer given unweighed</source>
        <translation>%1 ya no se da sin pesar</translation>
    </message>
    <message>
        <source>%1 unweighed, from</source>
        <translation>%1 sin pesar, desde</translation>
    </message>
    <message>
        <source>%1 unweighed, up to</source>
        <translation>%1 sin pesar, hasta</translation>
    </message>
    <message>
        <source>targets</source>
        <translation>objetivos</translation>
    </message>
    <message>
        <source>what is sought</source>
        <translation>lo que se busca</translation>
    </message>
    <message>
        <source>how sure</source>
        <translation>seguridad</translation>
    </message>
    <message>
        <source>energy method</source>
        <translation>método de energía</translation>
    </message>
    <message>
        <source>whole scale steps</source>
        <translation>divisiones enteras de la balanza</translation>
    </message>
    <message>
        <source>group shares</source>
        <translation>cuotas de grupos</translation>
    </message>
    <message>
        <source>structure rules</source>
        <translation>reglas de estructura</translation>
    </message>
    <message>
        <source>fed from</source>
        <translation>se da desde</translation>
    </message>
    <message>
        <source>days of phasing in</source>
        <translation>días de transición</translation>
    </message>
    <message>
        <source>other settings</source>
        <translation>otros ajustes</translation>
    </message>
    <message>
        <source>%1, minimum</source>
        <translation>%1, mínimo</translation>
    </message>
    <message>
        <source>%1, maximum</source>
        <translation>%1, máximo</translation>
    </message>
    <message>
        <source>%1 is set aside: %2</source>
        <translation>%1 se aparta: %2</translation>
    </message>
    <message>
        <source>%1 is in force again</source>
        <translation>%1 vuelve a estar vigente</translation>
    </message>
    <message>
        <source>%1: changed</source>
        <translation>%1: cambiado</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>leave out</source>
        <translation>omitir</translation>
    </message>
    <message>
        <source>food</source>
        <translation>alimento</translation>
    </message>
    <message>
        <source>food&apos;s code</source>
        <translation>código del alimento</translation>
    </message>
    <message>
        <source>food group</source>
        <translation>grupo de alimentos</translation>
    </message>
    <message>
        <source>form</source>
        <translation>forma</translation>
    </message>
    <message>
        <source>source</source>
        <translation>fuente</translation>
    </message>
    <message>
        <source>nutrient</source>
        <translation>nutriente</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>SD</source>
        <translation>DT</translation>
    </message>
    <message>
        <source>standard error</source>
        <translation>error típico</translation>
    </message>
    <message>
        <source>n</source>
        <translation>n</translation>
    </message>
    <message>
        <source>qualifier</source>
        <translation>calificador</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>base</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>dry matter</source>
        <translation>materia seca</translation>
    </message>
    <message>
        <source>energy (ME)</source>
        <translation>energía (EM)</translation>
    </message>
    <message>
        <source>as fed</source>
        <translation>materia fresca</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::AllowanceBar</name>
    <message>
        <source>At least so many grams a day, unweighed</source>
        <translation>Al menos tantos gramos al día, sin pesar</translation>
    </message>
    <message>
        <source>from g</source>
        <translation>desde g</translation>
    </message>
    <message>
        <source>At most so many grams a day, unweighed</source>
        <translation>Como máximo tantos gramos al día, sin pesar</translation>
    </message>
    <message>
        <source>to g</source>
        <translation>hasta g</translation>
    </message>
    <message>
        <source>…then the food that is given unweighed</source>
        <translation>…luego el alimento que se da sin pesar</translation>
    </message>
    <message>
        <source>A food that is given unweighed, by part of its name</source>
        <translation>Un alimento que se da sin pesar, por parte de su nombre</translation>
    </message>
    <message>
        <source>What is given unweighed for</source>
        <translation>Para qué se da sin pesar</translation>
    </message>
    <message>
        <source>Allow</source>
        <translation>Permitir</translation>
    </message>
    <message>
        <source>No food of this collection is called “%1”. Foods are added in the Foods room.</source>
        <translation>Ningún alimento de esta colección se llama «%1». Los alimentos se añaden en la sala Alimentos.</translation>
    </message>
    <message>
        <source>What is given unweighed needs a range: so many grams a day at least and at most.</source>
        <translation>Lo que se da sin pesar necesita un intervalo: tantos gramos al día como mínimo y como máximo.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::AnimalDesk</name>
    <message>
        <source>add %1</source>
        <translation>añadir %1</translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>cambiar %1</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>quitar %1</translation>
    </message>
    <message>
        <source>%1 joins the group</source>
        <translation>%1 entra en el grupo</translation>
    </message>
    <message>
        <source>%1 leaves the group</source>
        <translation>%1 sale del grupo</translation>
    </message>
    <message>
        <source>weigh %1</source>
        <translation>pesar %1</translation>
    </message>
    <message>
        <source>leave a mass out</source>
        <translation>descartar un peso</translation>
    </message>
    <message>
        <source>count a mass again</source>
        <translation>volver a contar un peso</translation>
    </message>
    <message>
        <source>put a mass right</source>
        <translation>corregir un peso</translation>
    </message>
    <message>
        <source>score the condition of %1</source>
        <translation>puntuar la condición de %1</translation>
    </message>
    <message>
        <source>change the energy plan</source>
        <translation>cambiar el plan de energía</translation>
    </message>
    <message>
        <source>throw the draft away</source>
        <translation>desechar el borrador</translation>
    </message>
    <message>
        <source>put version %1 in force</source>
        <translation>poner en vigor la versión %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::AnimalList</name>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Find a species, group or animal by part of its name</source>
        <translation>Buscar una especie, un grupo o un animal por parte de su nombre</translation>
    </message>
    <message>
        <source>Find an animal…</source>
        <translation>Buscar un animal…</translation>
    </message>
    <message>
        <source>A species new to the collection…</source>
        <translation>Una especie nueva en la colección…</translation>
    </message>
    <message>
        <source>A group of the species shown</source>
        <translation>Un grupo de la especie mostrada</translation>
    </message>
    <message>
        <source>An animal of the species shown</source>
        <translation>Un animal de la especie mostrada</translation>
    </message>
    <message>
        <source>Add a species, a group or an animal</source>
        <translation>Añadir una especie, un grupo o un animal</translation>
    </message>
    <message>
        <source>Species, groups and animals</source>
        <translation>Especies, grupos y animales</translation>
    </message>
    <message>
        <source>Nothing is called so. Clear the field.</source>
        <translation>Nada se llama así. Vacíe el campo.</translation>
    </message>
    <message>
        <source>reading…</source>
        <translation>leyendo…</translation>
    </message>
    <message>
        <source>%1 species · %2 groups · %3 animals by name</source>
        <translation>%1 especies · %2 grupos · %3 animales con nombre</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::AnimalsRoom</name>
    <message>
        <source>Reading the animals…</source>
        <translation>Leyendo los animales…</translation>
    </message>
    <message>
        <source>There is no animal in this collection yet.</source>
        <translation>Aún no hay ningún animal en esta colección.</translation>
    </message>
    <message>
        <source>Animals stand by species and group, with their masses, energy need and the targets that diets are judged by.</source>
        <translation>Los animales están por especie y grupo, con sus pesos, necesidad de energía y los objetivos por los que se juzgan las dietas.</translation>
    </message>
    <message>
        <source>Add a species</source>
        <translation>Añadir una especie</translation>
    </message>
    <message>
        <source>With its first group, energy need and targets, from a model species where nothing is published of its own.</source>
        <translation>Con su primer grupo, necesidad de energía y objetivos, de una especie modelo donde no hay nada propio publicado.</translation>
    </message>
    <message>
        <source>Find an animal</source>
        <translation>Buscar un animal</translation>
    </message>
    <message>
        <source>%1, new group</source>
        <translation>%1, grupo nuevo</translation>
    </message>
    <message>
        <source>body mass in g or kg · energy in kcal ME a day</source>
        <translation>peso vivo en g o kg · energía en kcal EM al día</translation>
    </message>
    <message>
        <source>reading the animals…</source>
        <translation>leyendo los animales…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ApprovalForm</name>
    <message>
        <source>Approve</source>
        <translation>Aprobar</translation>
    </message>
    <message>
        <source>Approval of this version</source>
        <translation>Aprobación de esta versión</translation>
    </message>
    <message>
        <source>Fed from this day</source>
        <translation>Se da desde este día</translation>
    </message>
    <message>
        <source>at once</source>
        <translation>de inmediato</translation>
    </message>
    <message>
        <source> days</source>
        <translation> días</translation>
    </message>
    <message>
        <source>Phased in over so many days</source>
        <translation>Transición en tantos días</translation>
    </message>
    <message>
        <source>Why? This is kept with it.</source>
        <translation>¿Por qué? Se guarda junto a ello.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Approved, this version never changes: grams, targets and composition are kept as they are now. Local rules, a qualified nutritionist and a licensed vet come first.</source>
        <translation>Una vez aprobada, esta versión no cambia nunca: gramos, objetivos y composición se guardan como están ahora. Las normas locales, un nutricionista cualificado y un veterinario colegiado van primero.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>fed from</source>
        <translation>se da desde</translation>
    </message>
    <message>
        <source>phased in</source>
        <translation>transición</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::BalanceLadder</name>
    <message>
        <source>Balance ladder</source>
        <translation>Escalera de balance</translation>
    </message>
    <message>
        <source>One row per target, those in trouble first</source>
        <translation>Una fila por objetivo, primero los que tienen problemas</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::BalancePane</name>
    <message>
        <source>Balance</source>
        <translation>Balance</translation>
    </message>
    <message>
        <source>Rules that cannot be judged</source>
        <translation>Reglas que no se pueden juzgar</translation>
    </message>
    <message>
        <source>trouble first</source>
        <translation>problemas primero</translation>
    </message>
    <message>
        <source>as stated</source>
        <translation>como se indica</translation>
    </message>
    <message>
        <source>by name</source>
        <translation>por nombre</translation>
    </message>
    <message>
        <source>Order of the balance</source>
        <translation>Orden del balance</translation>
    </message>
    <message>
        <source>own basis</source>
        <translation>base propia</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>Basis of the balance</source>
        <translation>Base del balance</translation>
    </message>
    <message>
        <source>Reads every target on this basis, as it comes to in this bowl</source>
        <translation>Lee cada objetivo en esta base, como resulta en este cuenco</translation>
    </message>
    <message>
        <source>as eaten</source>
        <translation>como se come</translation>
    </message>
    <message>
        <source>as offered</source>
        <translation>como se ofrece</translation>
    </message>
    <message>
        <source>As eaten or as offered</source>
        <translation>Como se come o como se ofrece</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::BowlList</name>
    <message>
        <source>Section</source>
        <translation>Sección</translation>
    </message>
    <message>
        <source>Day of the sheet</source>
        <translation>Día de la hoja</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <comment>a day and its weekday, as Qt writes formats</comment>
        <translation>ddd d MMM yyyy</translation>
    </message>
    <message>
        <source>Bowls of the sheet</source>
        <translation>Cuencos de la hoja</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::BowlModel</name>
    <message>
        <source>%1: swapped for another</source>
        <translation>%1: cambiado por otro</translation>
    </message>
    <message>
        <source>%1 (swapped in)</source>
        <translation>%1 (por cambio)</translation>
    </message>
    <message>
        <source>%1 g %2 %3</source>
        <translation>%1 g %2 %3</translation>
    </message>
    <message>
        <source>to weigh</source>
        <translation>por pesar</translation>
    </message>
    <message>
        <source>food</source>
        <translation>alimento</translation>
    </message>
    <message>
        <source>preparation</source>
        <translation>preparación</translation>
    </message>
    <message>
        <source>left</source>
        <translation>sobras</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>pesado</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::BowlPane</name>
    <message>
        <source>Foods of the bowl</source>
        <translation>Alimentos del cuenco</translation>
    </message>
    <message>
        <source>The bowl</source>
        <translation>El cuenco</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CalciumReview</name>
    <message>
        <source>Calcium against its targets</source>
        <translation>Calcio frente a sus objetivos</translation>
    </message>
    <message>
        <source>As eaten</source>
        <translation>Como se comió</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Offered</source>
        <translation>Ofrecido</translation>
    </message>
    <message>
        <source>Eaten</source>
        <translation>Comido</translation>
    </message>
    <message>
        <source>With the dose</source>
        <translation>Con la dosis</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Supplement</source>
        <translation>Suplemento</translation>
    </message>
    <message>
        <source>Share of a dust that reaches the mouth</source>
        <translation>Parte de un polvo que llega a la boca</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>Least addition of</source>
        <translation>Menor adición de</translation>
    </message>
    <message>
        <source>of which reaches the mouth</source>
        <translation>de lo que llega a la boca</translation>
    </message>
    <message>
        <source>no supplement</source>
        <translation>ningún suplemento</translation>
    </message>
    <message>
        <source>Calcium review</source>
        <translation>Revisión del calcio</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CandidatesModel</name>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>≥ %1</source>
        <translation>≥ %1</translation>
    </message>
    <message>
        <source>≤ %1</source>
        <translation>≤ %1</translation>
    </message>
    <message>
        <source>%1 : %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>target</source>
        <translation>objetivo</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>not stated for this candidate</source>
        <translation>no indicado para este candidato</translation>
    </message>
    <message>
        <source>stated on another basis; what it takes to convert it is not known</source>
        <translation>indicado en otra base; no se conoce lo que hace falta para convertirlo</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CautionsCard</name>
    <message>
        <source>■ never</source>
        <translation>■ nunca</translation>
    </message>
    <message>
        <source>▲ little</source>
        <translation>▲ poco</translation>
    </message>
    <message>
        <source>○ consider</source>
        <translation>○ considerar</translation>
    </message>
    <message>
        <source>how grave</source>
        <translation>gravedad</translation>
    </message>
    <message>
        <source>food</source>
        <translation>alimento</translation>
    </message>
    <message>
        <source>why</source>
        <translation>por qué</translation>
    </message>
    <message>
        <source>what to do</source>
        <translation>qué hacer</translation>
    </message>
    <message>
        <source>where from</source>
        <translation>de dónde</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de memoria</translation>
    </message>
    <message>
        <source>Foods to be careful with</source>
        <translation>Alimentos con los que tener cuidado</translation>
    </message>
    <message>
        <source>The list is not complete. Ask a vet or nutritionist about every food that is new to the species.</source>
        <translation>La lista no es completa. Pregunte a un veterinario o nutricionista por cada alimento que sea nuevo para la especie.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ChecksCard</name>
    <message>
        <source>Checks</source>
        <translation>Comprobaciones</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ChoiceChart</name>
    <message>
        <source>What is picked first, over time</source>
        <translation>Lo que se toma primero, a lo largo del tiempo</translation>
    </message>
    <message>
        <source>%1, from %2</source>
        <translation>%1, desde el %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Clerk</name>
    <message>
        <source>This was changed elsewhere since it was read; nothing of yours was written.</source>
        <translation>Esto se cambió en otro lugar desde que se leyó; no se escribió nada suyo.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CollectionMenu</name>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Collection file, theme and language</source>
        <translation>Archivo de la colección, tema e idioma</translation>
    </message>
    <message>
        <source>New, open, restore a collection; theme; language</source>
        <translation>Crear, abrir, restaurar una colección; tema; idioma</translation>
    </message>
    <message>
        <source>New collection…</source>
        <translation>Colección nueva…</translation>
    </message>
    <message>
        <source>Open a collection…</source>
        <translation>Abrir una colección…</translation>
    </message>
    <message>
        <source>Open again</source>
        <translation>Volver a abrir</translation>
    </message>
    <message>
        <source>Open the invented sample</source>
        <translation>Abrir el ejemplo inventado</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurar una copia</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Tema</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Como el escritorio</translation>
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
        <source>Language, from the next start on</source>
        <translation>Idioma, desde el próximo inicio</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Como el sistema</translation>
    </message>
    <message>
        <source>%1 – in %2</source>
        <translation>%1 – en %2</translation>
    </message>
    <message>
        <source>%1 – not in %2 any more</source>
        <translation>%1 – ya no está en %2</translation>
    </message>
    <message>
        <source>None was open yet</source>
        <translation>Aún no se abrió ninguna</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>There is none yet: one is made every day</source>
        <translation>Aún no hay ninguna: se hace una cada día</translation>
    </message>
    <message>
        <source>Open on a server…</source>
        <translation>Abrir en un servidor…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ComparePane</name>
    <message>
        <source>What differs between the versions</source>
        <translation>En qué difieren las versiones</translation>
    </message>
    <message>
        <source>Two versions side by side</source>
        <translation>Dos versiones una junto a otra</translation>
    </message>
    <message>
        <source>Choose a version to compare with under “More”.</source>
        <translation>Elija en «Más» una versión con la que comparar.</translation>
    </message>
    <message>
        <source>Both versions say the same.</source>
        <translation>Ambas versiones dicen lo mismo.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ComparisonPane</name>
    <message>
        <source>Side by side</source>
        <translation>Uno junto a otro</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>as fed, 100 g</source>
        <translation>en fresco, 100 g</translation>
    </message>
    <message>
        <source>kg DM</source>
        <translation>kg MS</translation>
    </message>
    <message>
        <source>1000 kcal</source>
        <translation>1000 kcal</translation>
    </message>
    <message>
        <source>Back to one food</source>
        <translation>Volver a un alimento</translation>
    </message>
    <message>
        <source>Foods side by side</source>
        <translation>Alimentos uno junto a otro</translation>
    </message>
    <message>
        <source>The highest of each row is bold. Ctrl+C copies the table.</source>
        <translation>El más alto de cada fila está en negrita. Ctrl+C copia la tabla.</translation>
    </message>
    <message>
        <source>1000 %1</source>
        <translation>1000 %1</translation>
    </message>
    <message>
        <source>%1 foods side by side</source>
        <translation>%1 alimentos uno junto a otro</translation>
    </message>
    <message>
        <source>The first %1 of %2 foods side by side</source>
        <translation>Los primeros %1 de %2 alimentos uno junto a otro</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CompositionModel</name>
    <message>
        <source>counted</source>
        <translation>cuenta</translation>
    </message>
    <message>
        <source>nutrient</source>
        <translation>nutriente</translation>
    </message>
    <message>
        <source>scatter</source>
        <translation>dispersión</translation>
    </message>
    <message>
        <source>where it comes from</source>
        <translation>de dónde viene</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CompositionView</name>
    <message>
        <source>What the food is made of</source>
        <translation>De qué está hecho el alimento</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CookingCard</name>
    <message>
        <source>share kept</source>
        <translation>parte que queda</translation>
    </message>
    <message>
        <source>a share from 0 to 2 (1 keeps all of it)</source>
        <translation>una parte de 0 a 2 (1 conserva todo)</translation>
    </message>
    <message>
        <source>Raw food</source>
        <translation>Alimento crudo</translation>
    </message>
    <message>
        <source>Grams cooked from 1 g raw</source>
        <translation>Gramos cocidos de 1 g crudo</translation>
    </message>
    <message>
        <source>Source of yield and shares</source>
        <translation>Fuente del rendimiento y las partes</translation>
    </message>
    <message>
        <source>who says so</source>
        <translation>quién lo afirma</translation>
    </message>
    <message>
        <source>1 g raw gives, g</source>
        <translation>1 g crudo da, g</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Cooked from</source>
        <translation>Cocido de</translation>
    </message>
    <message>
        <source>Share of each nutrient that stays</source>
        <translation>Parte de cada nutriente que queda</translation>
    </message>
    <message>
        <source>none: it is mixed from other foods</source>
        <translation>ninguno: se mezcla de otros alimentos</translation>
    </message>
    <message>
        <source>none: it is not worked out</source>
        <translation>ninguno: no se calcula</translation>
    </message>
    <message>
        <source>“%1” is no yield: the grams cooked that 1 g raw gives, above 0.</source>
        <translation>«%1» no es un rendimiento: los gramos cocidos que da 1 g crudo, más de 0.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DamageOffer</name>
    <message numerus="yes">
        <source>%n row(s) or page(s) could not be read</source>
        <translation>
            <numerusform>no se pudo leer %n fila o página</numerusform>
            <numerusform>no se pudieron leer %n filas o páginas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) left out, what they belong to is lost</source>
        <translation>
            <numerusform>%n fila omitida, aquello a lo que pertenece se perdió</numerusform>
            <numerusform>%n filas omitidas, aquello a lo que pertenecen se perdió</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n saved row(s) lay beside damaged ones: look at them</source>
        <translation>
            <numerusform>%n fila rescatada estaba junto a otras dañadas: revísela</numerusform>
            <numerusform>%n filas rescatadas estaban junto a otras dañadas: revíselas</numerusform>
        </translation>
    </message>
    <message>
        <source>its place is lost, there may have been more</source>
        <translation>su lugar se perdió, puede que hubiera más</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>What was salvaged</source>
        <translation>Lo que se rescató</translation>
    </message>
    <message>
        <source>What was written last could not be read.</source>
        <translation>No se pudo leer lo último que se escribió.</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) could not be told to any table</source>
        <translation>
            <numerusform>%n página no se pudo asignar a ninguna tabla</numerusform>
            <numerusform>%n páginas no se pudieron asignar a ninguna tabla</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 rows were copied into the new collection; the damaged file is as it was.</source>
        <translation>Se copiaron %1 filas en la colección nueva; el archivo dañado está como estaba.</translation>
    </message>
    <message>
        <source>Nothing is missing, as far as can be told.</source>
        <translation>No falta nada, hasta donde se puede saber.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DeskPane</name>
    <message>
        <source>%1 kg each</source>
        <translation>%1 kg cada uno</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>%1 kcal ME a day</source>
        <translation>%1 kcal EM al día</translation>
    </message>
    <message>
        <source>costs %1 a day</source>
        <translation>cuesta %1 al día</translation>
    </message>
    <message>
        <source>Targets: %1 as model species, a starting point and not a requirement.</source>
        <translation>Objetivos: %1 como especie modelo, un punto de partida y no un requerimiento.</translation>
    </message>
    <message>
        <source>Some targets are from memory: verify them before use.</source>
        <translation>Algunos objetivos son de memoria: verifíquelos antes de usarlos.</translation>
    </message>
    <message>
        <source>This program supports, and does not replace, a qualified nutritionist and a licensed vet.</source>
        <translation>Este programa apoya, y no sustituye, a un nutricionista cualificado y a un veterinario colegiado.</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Gramos</translation>
    </message>
    <message>
        <source>per animal</source>
        <translation>por animal</translation>
    </message>
    <message>
        <source>per group</source>
        <translation>por grupo</translation>
    </message>
    <message>
        <source>On every edit</source>
        <translation>Con cada cambio</translation>
    </message>
    <message>
        <source>solve as I type</source>
        <translation>resolver al escribir</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>fijar</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Advertencias</translation>
    </message>
    <message>
        <source>Below the foods</source>
        <translation>Debajo de los alimentos</translation>
    </message>
    <message>
        <source>What is shown below the foods</source>
        <translation>Lo que se muestra debajo de los alimentos</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Diet</source>
        <translation>Dieta</translation>
    </message>
    <message>
        <source>Grams for one animal a day</source>
        <translation>Gramos para un animal al día</translation>
    </message>
    <message>
        <source>Grams for the whole group a day</source>
        <translation>Gramos para todo el grupo al día</translation>
    </message>
    <message>
        <source>What you type is held and the unlocked foods give way</source>
        <translation>Lo que escribe se mantiene y los alimentos sin bloquear ceden</translation>
    </message>
    <message>
        <source>Only the balance is recomputed; no food gives way</source>
        <translation>Solo se recalcula el balance; ningún alimento cede</translation>
    </message>
    <message>
        <source>The grams stand as they were written. With what is known today the solver would give others.</source>
        <translation>Los gramos están como se escribieron. Con lo que se sabe hoy, el cálculo daría otros.</translation>
    </message>
    <message>
        <source>Let the foods give way</source>
        <translation>Dejar ceder los alimentos</translation>
    </message>
    <message>
        <source>No food is in this diet yet. It is worked out as foods are added.</source>
        <translation>Aún no hay ningún alimento en esta dieta. Se calcula según se añaden.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietChooser</name>
    <message>
        <source>This group is no longer in the collection.</source>
        <translation>Este grupo ya no está en la colección.</translation>
    </message>
    <message>
        <source>%1, daily diet</source>
        <translation>%1, dieta diaria</translation>
    </message>
    <message>
        <source>diet</source>
        <translation>dieta</translation>
    </message>
    <message>
        <source>in this diet</source>
        <translation>en esta dieta</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietDesk</name>
    <message>
        <source>let the foods give way</source>
        <translation>dejar ceder los alimentos</translation>
    </message>
    <message>
        <source>Not taken: the maximum of %1 would lie below its minimum.</source>
        <translation>No se tomó: el máximo de %1 quedaría por debajo de su mínimo.</translation>
    </message>
    <message>
        <source>Not taken: a target for %1 needs a minimum or a maximum.</source>
        <translation>No se tomó: un objetivo para %1 necesita un mínimo o un máximo.</translation>
    </message>
    <message>
        <source>%1 is in this diet already.</source>
        <translation>%1 ya está en esta dieta.</translation>
    </message>
    <message>
        <source>Not changed: only a draft can be, in a collection that can be written. A new version is a draft.</source>
        <translation>No se cambió: solo se puede un borrador, en una colección en la que se pueda escribir. Una versión nueva es un borrador.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietList</name>
    <message>
        <source>Find a diet or food…</source>
        <translation>Buscar una dieta o un alimento…</translation>
    </message>
    <message>
        <source>Find a diet, or a food of the diet, by part of its name</source>
        <translation>Buscar una dieta, o un alimento de la dieta, por parte de su nombre</translation>
    </message>
    <message>
        <source>Diets</source>
        <translation>Dietas</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietListModel</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>version %1, %2</source>
        <translation>versión %1, %2</translation>
    </message>
    <message>
        <source>nothing in it yet</source>
        <translation>aún sin nada</translation>
    </message>
    <message>
        <source>no diet yet: design one</source>
        <translation>aún sin dieta: diseñe una</translation>
    </message>
    <message>
        <source>Problem files</source>
        <translation>Archivos de problema</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietPapers</name>
    <message>
        <source>printed: %1</source>
        <translation>impreso: %1</translation>
    </message>
    <message>
        <source>written: %1</source>
        <translation>escrito: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietsRoom</name>
    <message>
        <source>Explore</source>
        <translation>Explorar</translation>
    </message>
    <message>
        <source>Structure rules</source>
        <translation>Estructura</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>No diet and no food of this diet is called “%1”.</source>
        <translation>Ninguna dieta y ningún alimento de esta dieta se llama «%1».</translation>
    </message>
    <message>
        <source>%1 is a hard rule of the targets (%2). Why may this diet go beyond it?</source>
        <translation>%1 es una regla firme de los objetivos (%2). ¿Por qué puede esta dieta ir más allá?</translation>
    </message>
    <message>
        <source>Loosen</source>
        <translation>Relajar</translation>
    </message>
    <message>
        <source>Put the hand on the food that is not available first.</source>
        <translation>Ponga antes la mano sobre el alimento que falta.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Save as</source>
        <translation>Guardar como</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>Add a food</source>
        <translation>Añadir un alimento</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Ctrl+I</translation>
    </message>
    <message>
        <source>Not available…</source>
        <translation>No disponible…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>Try what is suggested first</source>
        <translation>Probar lo que se sugiere primero</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>Explore what is chosen</source>
        <translation>Explorar lo elegido</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>New version</source>
        <translation>Versión nueva</translation>
    </message>
    <message>
        <source>Print the diet sheet</source>
        <translation>Imprimir la hoja de la dieta</translation>
    </message>
    <message>
        <source>Calendar of days that vary</source>
        <translation>Calendario de días que varían</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>grams as fed · energy in %1 ME, %2</source>
        <translation>gramos en fresco · energía en %1 EM, %2</translation>
    </message>
    <message>
        <source>saved</source>
        <translation>guardado</translation>
    </message>
    <message>
        <source>saving…</source>
        <translation>guardando…</translation>
    </message>
    <message>
        <source>Invented sample</source>
        <translation>Ejemplo inventado</translation>
    </message>
    <message>
        <source>not saved (Ctrl+S)</source>
        <translation>sin guardar (Ctrl+S)</translation>
    </message>
    <message>
        <source>Brackenmere (invented sample)</source>
        <translation>Brackenmere (ejemplo inventado)</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DoubtList</name>
    <message>
        <source>Find among the doubts…</source>
        <translation>Buscar entre las dudas…</translation>
    </message>
    <message>
        <source>Find a doubt by the food&apos;s name or by what is doubted</source>
        <translation>Buscar una duda por el nombre del alimento o por lo dudado</translation>
    </message>
    <message>
        <source>All foods</source>
        <translation>Todos los alimentos</translation>
    </message>
    <message>
        <source>Back to the list of foods</source>
        <translation>Volver a la lista de alimentos</translation>
    </message>
    <message>
        <source>What a careful analyst would doubt</source>
        <translation>Lo que un analista cuidadoso dudaría</translation>
    </message>
    <message>
        <source>The foods could not be looked through: %1</source>
        <translation>No se pudieron revisar los alimentos: %1</translation>
    </message>
    <message>
        <source>looking through the foods…</source>
        <translation>revisando los alimentos…</translation>
    </message>
    <message>
        <source>Nothing in these foods would make a careful analyst doubt.</source>
        <translation>Nada en estos alimentos haría dudar a un analista cuidadoso.</translation>
    </message>
    <message>
        <source>1 doubt about %1 foods</source>
        <translation>1 duda sobre %1 alimentos</translation>
    </message>
    <message>
        <source>%1 doubts about %2 foods</source>
        <translation>%1 dudas sobre %2 alimentos</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source> · looking again…</source>
        <translation> · mirando otra vez…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::EnergyCard</name>
    <message>
        <source>nothing was weighed yet</source>
        <translation>aún no se pesó nada</translation>
    </message>
    <message>
        <source>mean of %1 animals</source>
        <translation>media de %1 animales</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>pesado</translation>
    </message>
    <message>
        <source>%1, newest %2</source>
        <translation>%1, el más nuevo %2</translation>
    </message>
    <message>
        <source>Energy need, step by step</source>
        <translation>Necesidad de energía, paso a paso</translation>
    </message>
    <message>
        <source>Add this factor</source>
        <translation>Añadir este factor</translation>
    </message>
    <message>
        <source>Take the chosen factor away</source>
        <translation>Quitar el factor elegido</translation>
    </message>
    <message>
        <source>A worked-out need is where a diet begins, not where it ends: body mass and condition say whether it was right.</source>
        <translation>Una dieta empieza en una necesidad calculada, no acaba en ella: el peso vivo y la condición dicen si era acertada.</translation>
    </message>
    <message>
        <source>Published energy at 1 kg of body mass</source>
        <translation>Energía publicada a 1 kg de peso vivo</translation>
    </message>
    <message>
        <source>Choose a published energy at 1 kg…</source>
        <translation>Elegir una energía publicada a 1 kg…</translation>
    </message>
    <message>
        <source>Published factors</source>
        <translation>Factores publicados</translation>
    </message>
    <message>
        <source>A house factor of 1, to be edited</source>
        <translation>Un factor de la casa de 1, para editar</translation>
    </message>
    <message>
        <source>Nobody chose yet how the energy need of this group is worked out. Begin with a published choice.</source>
        <translation>Nadie eligió aún cómo se calcula la necesidad de energía de este grupo. Empiece con una opción publicada.</translation>
    </message>
    <message>
        <source>In force since %1. %2</source>
        <translation>En vigor desde el %1. %2</translation>
    </message>
    <message>
        <source>The source speaks of: %1.</source>
        <translation>La fuente trata de: %1.</translation>
    </message>
    <message>
        <source>house factor</source>
        <translation>factor de la casa</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::EnergyModel</name>
    <message>
        <source>step</source>
        <translation>paso</translation>
    </message>
    <message>
        <source>number</source>
        <translation>número</translation>
    </message>
    <message>
        <source>up to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>gives</source>
        <translation>da</translation>
    </message>
    <message>
        <source>where it comes from</source>
        <translation>de dónde viene</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Peso vivo</translation>
    </message>
    <message>
        <source>to the power of</source>
        <translation>elevado a</translation>
    </message>
    <message>
        <source>× %1</source>
        <translation>× %1</translation>
    </message>
    <message>
        <source>= per animal and day</source>
        <translation>= por animal y día</translation>
    </message>
    <message>
        <source>× animals</source>
        <translation>× animales</translation>
    </message>
    <message>
        <source>= the group&apos;s day</source>
        <translation>= el día del grupo</translation>
    </message>
    <message>
        <source>%1 kcal</source>
        <translation>%1 kcal</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>with the energy at 1 kg</source>
        <translation>con la energía a 1 kg</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ExplorePane</name>
    <message>
        <source>missed in all</source>
        <translation>incumplido en total</translation>
    </message>
    <message>
        <source>The range begins at</source>
        <translation>El intervalo empieza en</translation>
    </message>
    <message>
        <source>The range ends at</source>
        <translation>El intervalo termina en</translation>
    </message>
    <message>
        <source>Try it</source>
        <translation>Probar</translation>
    </message>
    <message>
        <source>What moves</source>
        <translation>Lo que se mueve</translation>
    </message>
    <message>
        <source>What the chart reads</source>
        <translation>Lo que dice la curva</translation>
    </message>
    <message>
        <source>Arrow keys read it, Ctrl with an arrow goes from breakpoint to breakpoint, Enter or a click tries what is read</source>
        <translation>Las flechas leen, Ctrl con una flecha va de quiebre en quiebre, Intro o un clic prueba lo leído</translation>
    </message>
    <message>
        <source>Tries on the diet what is read; Ctrl+Z takes it back</source>
        <translation>Prueba en la dieta lo leído; Ctrl+Z lo deshace</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>What gives: %1</source>
        <translation>Lo que cede: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FaecesCard</name>
    <message>
        <source>None of this group are written down yet.</source>
        <translation>Aún no hay ninguna anotada de este grupo.</translation>
    </message>
    <message>
        <source>First day of the collection</source>
        <translation>Primer día de la recogida</translation>
    </message>
    <message>
        <source>Last day of the collection</source>
        <translation>Último día de la recogida</translation>
    </message>
    <message>
        <source>Grams fresh, of all animals and days together</source>
        <translation>Gramos en fresco, de todos los animales y días juntos</translation>
    </message>
    <message>
        <source>g fresh</source>
        <translation>g en fresco</translation>
    </message>
    <message>
        <source>Grams of dry matter in 100 g fresh</source>
        <translation>Gramos de materia seca en 100 g en fresco</translation>
    </message>
    <message>
        <source>g DM in 100 g</source>
        <translation>g de MS en 100 g</translation>
    </message>
    <message>
        <source>Nutrients per 100 g of dry matter, each in its own unit</source>
        <translation>Nutrientes por 100 g de materia seca, cada uno en su unidad</translation>
    </message>
    <message>
        <source>per 100 g DM: Ca 1850 ± 90; P 1200</source>
        <translation>por 100 g de MS: Ca 1850 ± 90; P 1200</translation>
    </message>
    <message>
        <source>The report that it comes from</source>
        <translation>El informe del que viene</translation>
    </message>
    <message>
        <source>report</source>
        <translation>informe</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Faeces that were collected</source>
        <translation>Heces recogidas</translation>
    </message>
    <message>
        <source>Faeces collected and analysed: the report of their days tells what was apparently digested</source>
        <translation>Heces recogidas y analizadas: el informe de sus días dice lo que aparentemente se digirió</translation>
    </message>
    <message>
        <source>How much was it? Type the grams as found, such as 412.</source>
        <translation>¿Cuánto era? Escriba los gramos hallados, como 412.</translation>
    </message>
    <message>
        <source>Digestibility is worked out on dry matter: type how many g of 100 g fresh it is.</source>
        <translation>La digestibilidad se calcula en materia seca: escriba cuántos g de 100 g en fresco es.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Finder</name>
    <message>
        <source>Finder</source>
        <translation>Buscador</translation>
    </message>
    <message>
        <source>Go to a food, an animal or a diet: type part of its name</source>
        <translation>Ir a un alimento, un animal o una dieta: escriba parte del nombre</translation>
    </message>
    <message>
        <source>Part of a name</source>
        <translation>Parte de un nombre</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Lo encontrado</translation>
    </message>
    <message>
        <source>Nothing is called so here.</source>
        <translation>Aquí nada se llama así.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodBandsChart</name>
    <message>
        <source>Grams of each food over time, offered and eaten</source>
        <translation>Gramos de cada alimento a lo largo del tiempo, ofrecidos y comidos</translation>
    </message>
    <message>
        <source>%1: %2 of %3 g</source>
        <translation>%1: %2 de %3 g</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodBench</name>
    <message>
        <source>No food of this collection is called “%1”. Foods are added in the Foods room.</source>
        <translation>Ningún alimento de esta colección se llama «%1». Los alimentos se añaden en la sala Alimentos.</translation>
    </message>
    <message>
        <source>Choose a diet at the left first, or design one for a group.</source>
        <translation>Elija antes una dieta a la izquierda, o diseñe una para un grupo.</translation>
    </message>
    <message>
        <source>This food is no longer in the collection.</source>
        <translation>Este alimento ya no está en la colección.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodDesk</name>
    <message>
        <source>add %1</source>
        <translation>añadir %1</translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>cambiar %1</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>quitar %1</translation>
    </message>
    <message>
        <source>add a sample of %1</source>
        <translation>añadir una muestra de %1</translation>
    </message>
    <message>
        <source>change a sample of %1</source>
        <translation>cambiar una muestra de %1</translation>
    </message>
    <message>
        <source>remove a sample of %1</source>
        <translation>quitar una muestra de %1</translation>
    </message>
    <message>
        <source>set a sample aside</source>
        <translation>apartar una muestra</translation>
    </message>
    <message>
        <source>count a sample again</source>
        <translation>volver a contar una muestra</translation>
    </message>
    <message>
        <source>set %1 by hand</source>
        <translation>poner %1 a mano</translation>
    </message>
    <message>
        <source>leave %1 to the samples</source>
        <translation>dejar %1 a las muestras</translation>
    </message>
    <message>
        <source>change the sampling plan of %1</source>
        <translation>cambiar el plan de muestreo de %1</translation>
    </message>
    <message>
        <source>change what %1 is cooked from</source>
        <translation>cambiar de qué se cuece %1</translation>
    </message>
    <message>
        <source>change what %1 is mixed from</source>
        <translation>cambiar de qué se mezcla %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodForm</name>
    <message>
        <source>A food needs a code: problem files name it by that.</source>
        <translation>Un alimento necesita un código: los archivos de problema lo nombran así.</translation>
    </message>
    <message>
        <source>A food needs a name.</source>
        <translation>Un alimento necesita un nombre.</translation>
    </message>
    <message>
        <source>The mass of one must be above 0 g.</source>
        <translation>La masa de una pieza debe ser mayor que 0 g.</translation>
    </message>
    <message>
        <source>The scale step must be above 0 g.</source>
        <translation>La división de la balanza debe ser mayor que 0 g.</translation>
    </message>
    <message>
        <source>The edible part lies above 0 % and up to 100 %.</source>
        <translation>La parte comestible es mayor que 0 % y hasta 100 %.</translation>
    </message>
    <message>
        <source>A price is not below 0.</source>
        <translation>Un precio no es menor que 0.</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>in stock</source>
        <translation>en existencias</translation>
    </message>
    <message>
        <source>How it is made</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>cooked</source>
        <translation>cocido</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>mezclado</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>names it in problem files: kale-raw</source>
        <translation>lo nombra en los archivos de problema: kale-raw</translation>
    </message>
    <message>
        <source>One weighs, g</source>
        <translation>Una pesa, g</translation>
    </message>
    <message>
        <source>where it comes whole</source>
        <translation>donde viene entero</translation>
    </message>
    <message>
        <source>Scale step, g</source>
        <translation>División de la balanza, g</translation>
    </message>
    <message>
        <source>Edible part, %</source>
        <translation>Parte comestible, %</translation>
    </message>
    <message>
        <source>of what is bought</source>
        <translation>de lo comprado</translation>
    </message>
    <message>
        <source>Price a kg</source>
        <translation>Precio por kg</translation>
    </message>
    <message>
        <source>as bought</source>
        <translation>como se compra</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>What the food is</source>
        <translation>Qué es el alimento</translation>
    </message>
    <message>
        <source>Each field is kept as soon as you leave it; undo takes it back.</source>
        <translation>Cada campo se guarda en cuanto lo deja; Deshacer lo quita.</translation>
    </message>
    <message>
        <source>Back to the composition</source>
        <translation>Volver a la composición</translation>
    </message>
    <message>
        <source>Worked out from one raw food</source>
        <translation>Calculado de un alimento crudo</translation>
    </message>
    <message>
        <source>Worked out from the parts of a house mix</source>
        <translation>Calculado de las partes de una mezcla de la casa</translation>
    </message>
    <message>
        <source>“%1” is not a number that can stand for: %2.</source>
        <translation>«%1» no es un número posible para: %2.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodList</name>
    <message>
        <source>Import…</source>
        <translation>Importar…</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Comprobaciones</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Find a food by part of its name, form or group</source>
        <translation>Buscar un alimento por parte de su nombre, forma o grupo</translation>
    </message>
    <message>
        <source>Import a table of foods (CSV, XLSX); a file can also be dropped on the window</source>
        <translation>Importar una tabla de alimentos (CSV, XLSX); también se puede soltar un archivo en la ventana</translation>
    </message>
    <message>
        <source>Add a food to the collection</source>
        <translation>Añadir un alimento a la colección</translation>
    </message>
    <message>
        <source>Compare the selected foods side by side (hold Ctrl to select several)</source>
        <translation>Comparar los alimentos elegidos uno junto a otro (mantenga Ctrl para elegir varios)</translation>
    </message>
    <message>
        <source>Foods</source>
        <translation>Alimentos</translation>
    </message>
    <message>
        <source>Checks %1</source>
        <translation>Comprobaciones %1</translation>
    </message>
    <message>
        <source>What a careful analyst would doubt in this collection</source>
        <translation>Lo que un analista cuidadoso dudaría en esta colección</translation>
    </message>
    <message>
        <source>Find in %1 foods…</source>
        <translation>Buscar entre %1 alimentos…</translation>
    </message>
    <message>
        <source>No food is called so. Clear the field, or add the food.</source>
        <translation>Ningún alimento se llama así. Vacíe el campo o añada el alimento.</translation>
    </message>
    <message>
        <source>reading…</source>
        <translation>leyendo…</translation>
    </message>
    <message>
        <source>%1 foods</source>
        <translation>%1 alimentos</translation>
    </message>
    <message>
        <source>%1 of %2 foods</source>
        <translation>%1 de %2 alimentos</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodListModel</name>
    <message>
        <source>%1, none in stock</source>
        <translation>%1, sin existencias</translation>
    </message>
    <message>
        <source>food and form</source>
        <translation>alimento y forma</translation>
    </message>
    <message>
        <source>group</source>
        <translation>grupo</translation>
    </message>
    <message>
        <source>water
%</source>
        <translation>agua
%</translation>
    </message>
    <message>
        <source>protein
% DM</source>
        <translation>proteína
% MS</translation>
    </message>
    <message>
        <source>Ca
g/kg DM</source>
        <translation>Ca
g/kg MS</translation>
    </message>
    <message>
        <source>Ca:P</source>
        <translation>Ca:P</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodPane</name>
    <message>
        <source>an invented product</source>
        <translation>un producto inventado</translation>
    </message>
    <message>
        <source>one weighs %1 g</source>
        <translation>una pesa %1 g</translation>
    </message>
    <message>
        <source>scale step %1 g</source>
        <translation>división %1 g</translation>
    </message>
    <message>
        <source>%1 edible</source>
        <translation>%1 comestible</translation>
    </message>
    <message>
        <source>%1 a kg</source>
        <translation>%1 por kg</translation>
    </message>
    <message>
        <source>none in stock</source>
        <translation>sin existencias</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>as fed, 100 g</source>
        <translation>en fresco, 100 g</translation>
    </message>
    <message>
        <source>kg DM</source>
        <translation>kg MS</translation>
    </message>
    <message>
        <source>1000 kcal</source>
        <translation>1000 kcal</translation>
    </message>
    <message>
        <source>Edit sample…</source>
        <translation>Editar la muestra…</translation>
    </message>
    <message>
        <source>Set aside…</source>
        <translation>Apartar…</translation>
    </message>
    <message>
        <source>Set by hand…</source>
        <translation>Poner a mano…</translation>
    </message>
    <message>
        <source>Among its group</source>
        <translation>En su grupo</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Alimento</translation>
    </message>
    <message>
        <source>Per 100 g as it is fed</source>
        <translation>Por 100 g como se da</translation>
    </message>
    <message>
        <source>Per kg of its dry matter (DM)</source>
        <translation>Por kg de su materia seca (MS)</translation>
    </message>
    <message>
        <source>Per 1000 kcal of its metabolizable energy (ME)</source>
        <translation>Por 1000 kcal de su energía metabolizable (EM)</translation>
    </message>
    <message>
        <source>Edit food…</source>
        <translation>Editar el alimento…</translation>
    </message>
    <message>
        <source>Remove food</source>
        <translation>Quitar el alimento</translation>
    </message>
    <message>
        <source>Takes the food out of the collection; undo brings it back</source>
        <translation>Quita el alimento de la colección; Deshacer lo trae de vuelta</translation>
    </message>
    <message>
        <source>Add a sample…</source>
        <translation>Añadir una muestra…</translation>
    </message>
    <message>
        <source>1000 %1</source>
        <translation>1000 %1</translation>
    </message>
    <message>
        <source>Open a nutrient&apos;s row and choose one of its samples first</source>
        <translation>Abra antes la fila de un nutriente y elija una de sus muestras</translation>
    </message>
    <message>
        <source>Change this sample</source>
        <translation>Cambiar esta muestra</translation>
    </message>
    <message>
        <source>Count it again</source>
        <translation>Volver a contarla</translation>
    </message>
    <message>
        <source>Leave this sample out of the composition, with a reason</source>
        <translation>Dejar esta muestra fuera de la composición, con un motivo</translation>
    </message>
    <message>
        <source>Put a value of your own before every sample, with a reason</source>
        <translation>Poner un valor propio antes que toda muestra, con un motivo</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodPicker</name>
    <message>
        <source>Add a food: type part of its name (Ctrl+I)…</source>
        <translation>Añadir un alimento: escriba parte de su nombre (Ctrl+I)…</translation>
    </message>
    <message>
        <source>Add a food of the collection by part of its name</source>
        <translation>Añadir un alimento de la colección por parte de su nombre</translation>
    </message>
    <message>
        <source>Foods that match</source>
        <translation>Alimentos que coinciden</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodsRoom</name>
    <message>
        <source>No food is in this collection yet.</source>
        <translation>Aún no hay ningún alimento en esta colección.</translation>
    </message>
    <message>
        <source>Foods are what diets are made of: each with its composition, the laboratory samples or publications that say so, and what is unknown of it.</source>
        <translation>De alimentos se hacen las dietas: cada uno con su composición, las muestras de laboratorio o publicaciones que lo dicen, y lo que se desconoce de él.</translation>
    </message>
    <message>
        <source>Import a table…</source>
        <translation>Importar una tabla…</translation>
    </message>
    <message>
        <source>A laboratory&apos;s or publisher&apos;s table (CSV, XLSX): it shows line by line what will happen before anything is written.</source>
        <translation>La tabla de un laboratorio o editorial (CSV, XLSX): muestra línea por línea lo que pasará antes de escribir nada.</translation>
    </message>
    <message>
        <source>Add a food</source>
        <translation>Añadir un alimento</translation>
    </message>
    <message>
        <source>By hand: a name, then its values or a laboratory&apos;s sample.</source>
        <translation>A mano: un nombre, luego sus valores o la muestra de un laboratorio.</translation>
    </message>
    <message>
        <source>New food</source>
        <translation>Alimento nuevo</translation>
    </message>
    <message>
        <source>Leave the whole sample “%1” out of the composition?</source>
        <translation>¿Dejar toda la muestra «%1» fuera de la composición?</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Apartar</translation>
    </message>
    <message>
        <source> per 100 g as fed</source>
        <translation> por 100 g en fresco</translation>
    </message>
    <message>
        <source>A value of %1 that goes before every sample:</source>
        <translation>Un valor de %1 que va antes que toda muestra:</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Poner</translation>
    </message>
    <message>
        <source>Leave it to the samples</source>
        <translation>Dejarlo a las muestras</translation>
    </message>
    <message>
        <source>Find a food</source>
        <translation>Buscar un alimento</translation>
    </message>
    <message>
        <source>values as fed unless said · energy as ME in</source>
        <translation>valores en fresco salvo que se diga · energía EM en</translation>
    </message>
    <message>
        <source>reading the foods…</source>
        <translation>leyendo los alimentos…</translation>
    </message>
    <message>
        <source>importing…</source>
        <translation>importando…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::GroupChoice</name>
    <message>
        <source>Section</source>
        <translation>Sección</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>Grupos</translation>
    </message>
    <message>
        <source>All sections</source>
        <translation>Todas las secciones</translation>
    </message>
    <message>
        <source>%1 (no bowl yet)</source>
        <translation>%1 (aún sin cuenco)</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::GroupPane</name>
    <message>
        <source>Of the group</source>
        <translation>Del grupo</translation>
    </message>
    <message>
        <source>animals and mass</source>
        <translation>animales y peso</translation>
    </message>
    <message>
        <source>energy need</source>
        <translation>necesidad de energía</translation>
    </message>
    <message>
        <source>targets</source>
        <translation>objetivos</translation>
    </message>
    <message>
        <source>what changed</source>
        <translation>lo que cambió</translation>
    </message>
    <message>
        <source>Design a diet</source>
        <translation>Diseñar una dieta</translation>
    </message>
    <message>
        <source>A bowl for this group that meets its targets</source>
        <translation>Un cuenco para este grupo que cumpla sus objetivos</translation>
    </message>
    <message>
        <source>A diet is designed to targets: this group has no profile in force yet</source>
        <translation>Una dieta se diseña según objetivos: este grupo aún no tiene ningún perfil en vigor</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::GroupStrip</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>this food</source>
        <translation>este alimento</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::GuidePanel</name>
    <message>
        <source>Show me</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Guía</translation>
    </message>
    <message>
        <source>What the guide leads through</source>
        <translation>Lo que recorre la guía</translation>
    </message>
    <message>
        <source>Three people&apos;s work, on the invented sample</source>
        <translation>El trabajo de tres personas, en el ejemplo inventado</translation>
    </message>
    <message>
        <source>Open the invented sample</source>
        <translation>Abrir el ejemplo inventado</translation>
    </message>
    <message>
        <source>The guide speaks of its animals and foods</source>
        <translation>La guía habla de sus animales y alimentos</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Goes to the room, and to the control that is named first</source>
        <translation>Va a la sala y al control que se nombra primero</translation>
    </message>
    <message>
        <source>The step before</source>
        <translation>El paso anterior</translation>
    </message>
    <message>
        <source>The next step</source>
        <translation>El paso siguiente</translation>
    </message>
    <message>
        <source>Puts the guide away (Esc); Help brings it back</source>
        <translation>Guarda la guía (Esc); Ayuda la trae de vuelta</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>paso %1 de %2</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HealthDesk</name>
    <message>
        <source>write down what was seen</source>
        <translation>anotar lo que se vio</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HealthRoom</name>
    <message>
        <source>What was seen</source>
        <translation>Lo que se vio</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Review for the file…</source>
        <translation>Revisión para el expediente…</translation>
    </message>
    <message>
        <source>Invented sample</source>
        <translation>Ejemplo inventado</translation>
    </message>
    <message>
        <source>Calcium review</source>
        <translation>Revisión del calcio</translation>
    </message>
    <message>
        <source>Look-back</source>
        <translation>Retrospectiva</translation>
    </message>
    <message>
        <source>Review or look-back</source>
        <translation>Revisión o retrospectiva</translation>
    </message>
    <message>
        <source>Groups, and under each its animals. Choose one: its signs, masses and bowls are set on one axis of days, and calcium is reviewed for it.</source>
        <translation>Los grupos, y bajo cada uno sus animales. Elija uno: sus signos, pesos y cuencos se ponen en un eje de días, y se revisa su calcio.</translation>
    </message>
    <message>
        <source>What was written down of it, the newest first; ▲ is a sign, from which Enter looks back to the bowls before it. Each line keeps who wrote it.</source>
        <translation>Lo que se anotó, lo más nuevo primero; ▲ es un signo, desde el que Intro mira a los cuencos anteriores. Cada línea guarda quién la escribió.</translation>
    </message>
    <message>
        <source>Writes what the tab in sight says as one page, to print or to keep: PDF, HTML or JSON.</source>
        <translation>Escribe lo que dice la pestaña a la vista como una página, para imprimir o guardar: PDF, HTML o JSON.</translation>
    </message>
    <message>
        <source>The calcium review, or the look-back from a sign.</source>
        <translation>La revisión del calcio, o la retrospectiva desde un signo.</translation>
    </message>
    <message>
        <source>What was eaten day by day: the kitchen&apos;s weights, less what came back, times the composition of the foods; a mean day is set against the targets of the group. A value that nobody knows stays unknown and widens the range. The least dose is worked out from the supplement&apos;s own composition, and is held below the safe limit of the targets. Whether it is given, the vet decides.</source>
        <translation>Lo que se comió día a día: los pesos de la cocina, menos lo que volvió, por la composición de los alimentos; un día medio se pone frente a los objetivos del grupo. Un valor que nadie conoce queda desconocido y amplía el intervalo. La menor dosis se calcula de la composición del propio suplemento, y se mantiene bajo el límite seguro de los objetivos. Si se da, lo decide el veterinario.</translation>
    </message>
    <message>
        <source>Bowls in the hours before the sign against the same hours before days without it: how often the sign came with a food and without it, Fisher&apos;s exact test, the same corrected for the number of foods that were looked at, and the risk ratio with its 95 % interval. It shows what goes together, not what caused what.</source>
        <translation>Cuencos en las horas antes del signo frente a las mismas horas antes de días sin él: cuántas veces vino el signo con un alimento y sin él, la prueba exacta de Fisher, la misma corregida por el número de alimentos mirados, y la razón de riesgos con su intervalo del 95 %. Muestra lo que va junto, no qué causó qué.</translation>
    </message>
    <message>
        <source>Groups and animals</source>
        <translation>Grupos y animales</translation>
    </message>
    <message>
        <source>Write down what was seen</source>
        <translation>Anotar lo que se vio</translation>
    </message>
    <message>
        <source>How far back</source>
        <translation>Cuánto hacia atrás</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>Nobody is shown</source>
        <translation>No se muestra a nadie</translation>
    </message>
    <message>
        <source>No collection is open</source>
        <translation>No hay ninguna colección abierta.</translation>
    </message>
    <message>
        <source>Look-back for the file…</source>
        <translation>Retrospectiva para el expediente…</translation>
    </message>
    <message>
        <source>mg and µg per animal and day · body mass in kg</source>
        <translation>mg y µg por animal y día · peso vivo en kg</translation>
    </message>
    <message>
        <source>health</source>
        <translation>salud</translation>
    </message>
    <message>
        <source>How many days are shown and reviewed: those up to today, or, where nothing was written down for more than a week, those up to the last record.</source>
        <translation>Cuántos días se muestran y revisan: hasta hoy o, si no se anotó nada en más de una semana, hasta la última anotación.</translation>
    </message>
    <message>
        <source>The last record is of %1: the days up to then are shown.</source>
        <translation>La última anotación es del %1: se muestran los días hasta entonces.</translation>
    </message>
    <message>
        <source>“%1” cannot be named beside the collection: put it into %2, under a name without : and \, and choose it there.</source>
        <translation>«%1» no se puede nombrar junto a la colección: póngalo en %2, con un nombre sin : ni \, y elíjalo allí.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HealthTimeline</name>
    <message>
        <source>Signs, blood, treatments, condition, body mass, Ca:P and diets over time</source>
        <translation>Signos, sangre, tratamientos, condición, peso vivo, Ca:P y dietas a lo largo del tiempo</translation>
    </message>
    <message>
        <source>Drag over a stretch, or use the wheel or + and -, to look closer; 0 shows all</source>
        <translation>Arrastre sobre un tramo, o use la rueda o + y -, para mirar de cerca; 0 muestra todo</translation>
    </message>
    <message>
        <source>Ca:P</source>
        <translation>Ca:P</translation>
    </message>
    <message>
        <source>body mass, kg</source>
        <translation>peso vivo, kg</translation>
    </message>
    <message>
        <source>Ca:P offered</source>
        <translation>Ca:P ofrecido</translation>
    </message>
    <message>
        <source>Ca:P eaten</source>
        <translation>Ca:P comido</translation>
    </message>
    <message>
        <source>mean of 7 days</source>
        <translation>media de 7 días</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>peso vivo</translation>
    </message>
    <message>
        <source>signs</source>
        <translation>signos</translation>
    </message>
    <message>
        <source>blood, in the lab&apos;s range</source>
        <translation>sangre, en el intervalo del laboratorio</translation>
    </message>
    <message>
        <source>blood, outside it</source>
        <translation>sangre, fuera de él</translation>
    </message>
    <message>
        <source>blood, no range</source>
        <translation>sangre, sin intervalo</translation>
    </message>
    <message>
        <source>treatments</source>
        <translation>tratamientos</translation>
    </message>
    <message>
        <source>%1: condition %2 of %3 … %4 (%5)</source>
        <translation>%1: condición %2 de %3 … %4 (%5)</translation>
    </message>
    <message>
        <source>condition score, within its scale</source>
        <translation>condición, dentro de su escala</translation>
    </message>
    <message>
        <source>a diet begins</source>
        <translation>empieza una dieta</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Help</name>
    <message>
        <source>About Tarebowl</source>
        <translation>Acerca de Tarebowl</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HelpMenu</name>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>A guide through the invented sample; F1 says what a control is</source>
        <translation>Una guía por el ejemplo inventado; F1 dice qué es un control</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Guía</translation>
    </message>
    <message>
        <source>What is this?  (F1)</source>
        <translation>¿Qué es esto?  (F1)</translation>
    </message>
    <message>
        <source>About Tarebowl</source>
        <translation>Acerca de Tarebowl</translation>
    </message>
    <message>
        <source>Tarebowl %1 – diets weighed to the gram for animals in human care.

It advises people who decide: a nutritionist approves a diet, and a vet decides about a patient. What nobody measured stays unknown and is never counted as nothing; every number names where it comes from (F1).

Free software under the GNU General Public License, version 3 or later, without any warranty.</source>
        <translation>Tarebowl %1 – dietas pesadas al gramo para animales bajo cuidado humano.

Aconseja a personas que deciden: un nutricionista aprueba una dieta y un veterinario decide sobre un paciente. Lo que nadie midió sigue siendo desconocido y nunca se cuenta como nada; cada número dice de dónde viene (F1).

Software libre bajo la Licencia Pública General de GNU, versión 3 o posterior, sin ninguna garantía.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HistoryCard</name>
    <message>
        <source>What changed when</source>
        <translation>Qué cambió y cuándo</translation>
    </message>
    <message>
        <source>Changes, the newest first</source>
        <translation>Cambios, los más nuevos primero</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Nothing was changed yet, or it is still being read.</source>
        <translation>Aún no se cambió nada, o todavía se está leyendo.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ImportDesk</name>
    <message>
        <source>The mapping could not be written to %1.</source>
        <translation>No se pudo escribir la correspondencia en %1.</translation>
    </message>
    <message>
        <source>it is another table now than the one that was imported; import it again to see what it would do</source>
        <translation>ahora es otra tabla que la que se importó; impórtela de nuevo para ver qué haría</translation>
    </message>
    <message>
        <source>importing it again would change nothing</source>
        <translation>importarla de nuevo no cambiaría nada</translation>
    </message>
    <message>
        <source>No collection is open that it could go into.</source>
        <translation>No hay ninguna colección abierta a la que pueda ir.</translation>
    </message>
    <message>
        <source>Its numbers can be read both ways, with a decimal point and with a decimal comma. Say which it is.</source>
        <translation>Sus números se pueden leer de dos modos, con punto decimal y con coma decimal. Diga cuál es.</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Parado. No se escribió nada.</translation>
    </message>
    <message>
        <source>import %1</source>
        <translation>importar %1</translation>
    </message>
    <message>
        <source>Stopped before it was read through. Nothing was written.</source>
        <translation>Parado antes de leerla entera. No se escribió nada.</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>se esperaba %1</translation>
    </message>
    <message>
        <source>The table cannot be read: %1.</source>
        <translation>No se puede leer la tabla: %1.</translation>
    </message>
    <message>
        <source>The table cannot be read so. %1: %2.</source>
        <translation>La tabla no se puede leer así. %1: %2.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ImportPage</name>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importar</translation>
    </message>
    <message>
        <source>Another table…</source>
        <translation>Otra tabla…</translation>
    </message>
    <message>
        <source>Load mapping…</source>
        <translation>Cargar una correspondencia…</translation>
    </message>
    <message>
        <source>Save mapping…</source>
        <translation>Guardar la correspondencia…</translation>
    </message>
    <message>
        <source>Back to the foods</source>
        <translation>Volver a los alimentos</translation>
    </message>
    <message>
        <source>Read the table as a saved mapping says</source>
        <translation>Leer la tabla como dice una correspondencia guardada</translation>
    </message>
    <message>
        <source>Keep how this table is read, for its next issue</source>
        <translation>Guardar cómo se lee esta tabla, para su próxima edición</translation>
    </message>
    <message>
        <source>What each column becomes</source>
        <translation>Lo que será cada columna</translation>
    </message>
    <message>
        <source>Double-click or type to change what a column becomes: a nutrient by its name or tagname, “SD of calcium”, or leave out. The preview follows at once.</source>
        <translation>Haga doble clic o escriba para cambiar lo que será una columna: un nutriente por su nombre o código, «DT de calcio», u omitir. La vista previa sigue al momento.</translation>
    </message>
    <message>
        <source>What the import will do</source>
        <translation>Lo que hará la importación</translation>
    </message>
    <message>
        <source>How far the table is read</source>
        <translation>Hasta dónde se ha leído la tabla</translation>
    </message>
    <message>
        <source>Import %1</source>
        <translation>Importar %1</translation>
    </message>
    <message>
        <source>To the foods</source>
        <translation>A los alimentos</translation>
    </message>
    <message>
        <source>reading the head of the table…</source>
        <translation>leyendo la cabecera de la tabla…</translation>
    </message>
    <message>
        <source>looking at each line; nothing is written…</source>
        <translation>mirando cada línea; no se escribe nada…</translation>
    </message>
    <message>
        <source>importing; it is kept as a whole or not at all…</source>
        <translation>importando; se guarda entera o nada…</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>No se escribió nada.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ImportPreview</name>
    <message>
        <source>1 line</source>
        <translation>1 línea</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 líneas</translation>
    </message>
    <message>
        <source>What the import will do, line by line</source>
        <translation>Lo que hará la importación, línea por línea</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Líneas</translation>
    </message>
    <message>
        <source>all</source>
        <translation>todas</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nuevas</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiadas</translation>
    </message>
    <message>
        <source>unchanged</source>
        <translation>sin cambio</translation>
    </message>
    <message>
        <source>noted</source>
        <translation>anotadas</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitidas</translation>
    </message>
    <message>
        <source>problems</source>
        <translation>problemas</translation>
    </message>
    <message>
        <source>%1 shown</source>
        <translation>%1 mostradas</translation>
    </message>
    <message>
        <source> · 1 problem</source>
        <translation> · 1 problema</translation>
    </message>
    <message>
        <source> · %1 problems</source>
        <translation> · %1 problemas</translation>
    </message>
    <message>
        <source> · 1 left out</source>
        <translation> · 1 omitida</translation>
    </message>
    <message>
        <source> · %1 left out</source>
        <translation> · %1 omitidas</translation>
    </message>
    <message>
        <source> · 1 kept with a note</source>
        <translation> · 1 guardada con nota</translation>
    </message>
    <message>
        <source> · %1 kept with a note</source>
        <translation> · %1 guardadas con nota</translation>
    </message>
    <message>
        <source> · %1 further lines are counted and not listed</source>
        <translation> · %1 líneas más se cuentan y no se listan</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ImportSettings</name>
    <message>
        <source>Layout</source>
        <translation>Disposición</translation>
    </message>
    <message>
        <source>a row a food</source>
        <translation>una fila por alimento</translation>
    </message>
    <message>
        <source>a row a value</source>
        <translation>una fila por valor</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Signo decimal</translation>
    </message>
    <message>
        <source>12.5</source>
        <translation>12.5</translation>
    </message>
    <message>
        <source>12,5</source>
        <translation>12,5</translation>
    </message>
    <message>
        <source>0 means: not measured</source>
        <translation>0 significa: no medido</translation>
    </message>
    <message>
        <source>units on the line after</source>
        <translation>unidades en la línea siguiente</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>punto y coma</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulador</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>barra |</translation>
    </message>
    <message>
        <source>caret ^</source>
        <translation>circunflejo ^</translation>
    </message>
    <message>
        <source>as its bytes say</source>
        <translation>según sus bytes</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>By this name and a food&apos;s code the food is found again when the table comes anew</source>
        <translation>Por este nombre y el código de un alimento se encuentra el alimento cuando la tabla llega de nuevo</translation>
    </message>
    <message>
        <source>Grams (for energy: kcal) that a value is per, where the column does not say</source>
        <translation>Gramos (para energía: kcal) por los que es un valor, donde la columna no lo dice</translation>
    </message>
    <message>
        <source>One line holds all values of a food</source>
        <translation>Una línea tiene todos los valores de un alimento</translation>
    </message>
    <message>
        <source>One line holds one value of a food</source>
        <translation>Una línea tiene un valor de un alimento</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Values per</source>
        <translation>Valores por</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>Basis where no column says it</source>
        <translation>Base donde ninguna columna la dice</translation>
    </message>
    <message>
        <source>Numbers as</source>
        <translation>Números como</translation>
    </message>
    <message>
        <source>Header on line</source>
        <translation>Cabecera en la línea</translation>
    </message>
    <message>
        <source>Cells parted by</source>
        <translation>Celdas separadas por</translation>
    </message>
    <message>
        <source>Letters as</source>
        <translation>Letras como</translation>
    </message>
    <message>
        <source>“%1” is nothing that values can be per: a number above 0.</source>
        <translation>«%1» no es nada por lo que puedan ser valores: un número mayor que 0.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IndividualForm</name>
    <message>
        <source>adult, as long as nothing else is said</source>
        <translation>adulto, mientras no se diga otra cosa</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 desde el %2</translation>
    </message>
    <message>
        <source>an estimate</source>
        <translation>una estimación</translation>
    </message>
    <message>
        <source>by death</source>
        <translation>por muerte</translation>
    </message>
    <message>
        <source>The animal</source>
        <translation>El animal</translation>
    </message>
    <message>
        <source>Name or number</source>
        <translation>Nombre o número</translation>
    </message>
    <message>
        <source>of the house</source>
        <translation>de la casa</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Sexo</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Nacido</translation>
    </message>
    <message>
        <source>2026-05-17</source>
        <translation>2026-05-17</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>Llegó</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Se fue</translation>
    </message>
    <message>
        <source>the first day on which it is not there</source>
        <translation>el primer día en que no está</translation>
    </message>
    <message>
        <source>Life stages so far</source>
        <translation>Etapas de vida hasta ahora</translation>
    </message>
    <message>
        <source>Life stages</source>
        <translation>Etapas de vida</translation>
    </message>
    <message>
        <source>Life stage from today on</source>
        <translation>Etapa de vida desde hoy</translation>
    </message>
    <message>
        <source>From today</source>
        <translation>Desde hoy</translation>
    </message>
    <message>
        <source>The animal is in this stage from today on</source>
        <translation>El animal está en esta etapa desde hoy</translation>
    </message>
    <message>
        <source>Groups it was in</source>
        <translation>Grupos en los que estuvo</translation>
    </message>
    <message>
        <source>In groups</source>
        <translation>En grupos</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>in none</source>
        <translation>en ninguno</translation>
    </message>
    <message>
        <source>%1: “%2” is no day; write it as 2026-05-17.</source>
        <translation>%1: «%2» no es un día; escríbalo como 2026-05-17.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IngredientModel</name>
    <message>
        <source>Locked foods keep their grams; the others give way</source>
        <translation>Los alimentos bloqueados mantienen sus gramos; los demás ceden</translation>
    </message>
    <message>
        <source>Share of the eaten dry matter (DM)</source>
        <translation>Parte de la materia seca (MS) comida</translation>
    </message>
    <message>
        <source>food and form</source>
        <translation>alimento y forma</translation>
    </message>
    <message>
        <source>group a day</source>
        <translation>grupo al día</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>al día</translation>
    </message>
    <message>
        <source>min</source>
        <translation>mín</translation>
    </message>
    <message>
        <source>max</source>
        <translation>máx</translation>
    </message>
    <message>
        <source>share of DM</source>
        <translation>parte de MS</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>coste</translation>
    </message>
    <message>
        <source>locked</source>
        <translation>bloqueado</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>group: %1</source>
        <translation>grupo: %1</translation>
    </message>
    <message>
        <source>%1 of it is eaten</source>
        <translation>se come %1</translation>
    </message>
    <message>
        <source>invented product</source>
        <translation>producto inventado</translation>
    </message>
    <message>
        <source>%1, unweighed: %2 to %3 g</source>
        <translation>%1, sin pesar: %2 a %3 g</translation>
    </message>
    <message>
        <source>given as %1</source>
        <translation>dado como %1</translation>
    </message>
    <message>
        <source>%1: %2 g %3, in steps of %4 g</source>
        <translation>%1: %2 g %3, en pasos de %4 g</translation>
    </message>
    <message>
        <source>for the group a day</source>
        <translation>para el grupo al día</translation>
    </message>
    <message>
        <source>per animal a day</source>
        <translation>por animal y día</translation>
    </message>
    <message>
        <source>%1 is locked: it keeps its grams</source>
        <translation>%1 está bloqueado: mantiene sus gramos</translation>
    </message>
    <message>
        <source>%1 is free: it gives way when another food is held</source>
        <translation>%1 está libre: cede cuando se fija otro alimento</translation>
    </message>
    <message>
        <source>%1: at least %2 g</source>
        <translation>%1: al menos %2 g</translation>
    </message>
    <message>
        <source>%1: at most %2 g</source>
        <translation>%1: como máximo %2 g</translation>
    </message>
    <message>
        <source>%1: no maximum</source>
        <translation>%1: sin máximo</translation>
    </message>
    <message>
        <source>%1: %2 of the dry matter</source>
        <translation>%1: %2 de la materia seca</translation>
    </message>
    <message>
        <source>%1: its water is unknown</source>
        <translation>%1: su agua es desconocida</translation>
    </message>
    <message>
        <source>%1: %2 a day</source>
        <translation>%1: %2 al día</translation>
    </message>
    <message>
        <source>%1: no price</source>
        <translation>%1: sin precio</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IngredientTable</name>
    <message>
        <source>Foods of the diet</source>
        <translation>Alimentos de la dieta</translation>
    </message>
    <message>
        <source>Remove from the diet</source>
        <translation>Quitar de la dieta</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IntakeRoom</name>
    <message>
        <source>How far back</source>
        <translation>Cuánto hacia atrás</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Semana</translation>
    </message>
    <message>
        <source>60 days</source>
        <translation>60 días</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>Offered or eaten</source>
        <translation>Ofrecido o comido</translation>
    </message>
    <message>
        <source>Offered</source>
        <translation>Ofrecido</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Ambos</translation>
    </message>
    <message>
        <source>Eaten</source>
        <translation>Comido</translation>
    </message>
    <message>
        <source>What is followed, as eaten against its zone</source>
        <translation>Lo que se sigue, como se comió, frente a su zona</translation>
    </message>
    <message>
        <source>Calcium to phosphorus, offered against eaten</source>
        <translation>Calcio a fósforo, ofrecido frente a comido</translation>
    </message>
    <message>
        <source>Foods, offered and eaten</source>
        <translation>Alimentos, ofrecidos y comidos</translation>
    </message>
    <message>
        <source>Invented sample</source>
        <translation>Ejemplo inventado</translation>
    </message>
    <message>
        <source>Over time</source>
        <translation>En el tiempo</translation>
    </message>
    <message>
        <source>Yesterday&apos;s bowls</source>
        <translation>Cuencos de ayer</translation>
    </message>
    <message>
        <source>Study</source>
        <translation>Estudio</translation>
    </message>
    <message>
        <source>Over time, yesterday&apos;s bowls, or a study</source>
        <translation>En el tiempo, cuencos de ayer, o un estudio</translation>
    </message>
    <message>
        <source>What was really eaten. Amounts come from the weights that the kitchen wrote down, nutrients from the foods&apos; composition; what was not weighed stays unknown.</source>
        <translation>Lo que de verdad se comió. Las cantidades vienen de los pesos que anotó la cocina, los nutrientes de la composición de los alimentos; lo que no se pesó queda desconocido.</translation>
    </message>
    <message>
        <source>How many days are in sight, up to the last one with a bowl.</source>
        <translation>Cuántos días están a la vista, hasta el último con un cuenco.</translation>
    </message>
    <message>
        <source>Offered is what the kitchen weighed in; eaten is that less what was left and lost, corrected by control pans.</source>
        <translation>Ofrecido es lo que pesó la cocina; comido es eso menos lo que quedó y se perdió, corregido con cuencos de control.</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>The numbers that are shown, for a spreadsheet</source>
        <translation>Los números mostrados, para una hoja de cálculo</translation>
    </message>
    <message>
        <source>The days in sight as a file</source>
        <translation>Los días a la vista como archivo</translation>
    </message>
    <message>
        <source>Study…</source>
        <translation>Estudio…</translation>
    </message>
    <message>
        <source>The days in sight as the report of an intake study: PDF, XLSX or HTML</source>
        <translation>Los días a la vista como informe de un estudio de ingesta: PDF, XLSX o HTML</translation>
    </message>
    <message>
        <source>Grams a day of each food, all animals together: full what was eaten, hatched what was left</source>
        <translation>Gramos al día de cada alimento, todos los animales: lleno comido, rayado sobrado</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Cuenco</translation>
    </message>
    <message>
        <source>Against its zone</source>
        <translation>Frente a su zona</translation>
    </message>
    <message>
        <source>Ca : P</source>
        <translation>Ca : P</translation>
    </message>
    <message>
        <source>Picked first</source>
        <translation>Tomado primero</translation>
    </message>
    <message>
        <source>Foods</source>
        <translation>Alimentos</translation>
    </message>
    <message>
        <source>What is shown below</source>
        <translation>Lo que se muestra debajo</translation>
    </message>
    <message>
        <source>The same days once more: what is followed against its zone, Ca:P, what is picked first, and the foods in numbers.</source>
        <translation>Los mismos días otra vez: lo que se sigue frente a su zona, Ca:P, lo que se toma primero, y los alimentos en números.</translation>
    </message>
    <message>
        <source>No group has a bowl yet</source>
        <translation>Ningún grupo tiene aún un cuenco</translation>
    </message>
    <message>
        <source>No collection is open</source>
        <translation>No hay ninguna colección abierta</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>%1%2: mean day per animal; shaded its zone, hatched what is missing, ▼ a drop</source>
        <translation>%1%2: día medio por animal; sombreada su zona, rayado lo que falta, ▼ una caída</translation>
    </message>
    <message>
        <source>%1: Manly&apos;s alpha with its 95 % interval; dashed: nothing is preferred</source>
        <translation>%1: el alfa de Manly con su intervalo del 95 %; discontinua: nada se prefiere</translation>
    </message>
    <message>
        <source>Grams a day of each food</source>
        <translation>Gramos al día de cada alimento</translation>
    </message>
    <message>
        <source>A study holds each of its bowls: look at a year or less, and try again.</source>
        <translation>Un estudio contiene cada uno de sus cuencos: mire un año o menos, e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>grams as fed a day · nutrients per animal, as offered and as eaten</source>
        <translation>gramos en fresco al día · nutrientes por animal, ofrecidos y comidos</translation>
    </message>
    <message>
        <source>intake</source>
        <translation>ingesta</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IntakeSide</name>
    <message>
        <source>Noticed, and what it means for one animal</source>
        <translation>Lo notado, y lo que significa para un animal</translation>
    </message>
    <message>
        <source>Noticed</source>
        <translation>Lo notado</translation>
    </message>
    <message>
        <source>How much is known</source>
        <translation>Cuánto se sabe</translation>
    </message>
    <message>
        <source>Per animal</source>
        <translation>Por animal</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::KitchenRoom</name>
    <message>
        <source>What is weighed</source>
        <translation>Lo que se pesa</translation>
    </message>
    <message>
        <source>Weigh in</source>
        <translation>Pesar</translation>
    </message>
    <message>
        <source>Leftovers</source>
        <translation>Sobras</translation>
    </message>
    <message>
        <source>Control pans  (P)</source>
        <translation>Cuencos de control  (P)</translation>
    </message>
    <message>
        <source>Put out now, or come back</source>
        <translation>Poner ahora, o de vuelta</translation>
    </message>
    <message>
        <source>Sheet…</source>
        <translation>Hoja…</translation>
    </message>
    <message>
        <source>Labels…</source>
        <translation>Etiquetas…</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>± Rule…</source>
        <translation>± Regla…</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>The sheet of this section and day, as a page to print or to keep</source>
        <translation>La hoja de esta sección y día, como página para imprimir o guardar</translation>
    </message>
    <message>
        <source>A label for each bowl, to print</source>
        <translation>Una etiqueta por cuenco, para imprimir</translation>
    </message>
    <message>
        <source>How far a weight may lie from the plan</source>
        <translation>Cuánto puede apartarse un peso de lo previsto</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source> labels</source>
        <translation> etiquetas</translation>
    </message>
    <message>
        <source>%1 is written</source>
        <translation>%1 está escrito</translation>
    </message>
    <message>
        <source>g as fed, of the whole bowl</source>
        <translation>g en fresco, de todo el cuenco</translation>
    </message>
    <message>
        <source>reading the sheet…</source>
        <translation>leyendo la hoja…</translation>
    </message>
    <message>
        <source>weights stand without a name until you say who you are, at the right</source>
        <translation>los pesos quedan sin nombre hasta que diga quién es, a la derecha</translation>
    </message>
    <message>
        <source>This desk&apos;s copy of the collection holds the days from %1 to %2: another day waits for the server.</source>
        <translation>La copia de la colección en este puesto tiene los días del %1 al %2: otro día espera al servidor.</translation>
    </message>
    <message>
        <source>Swaps, control pans, lots and the rule of weighing wait for the server. Weights and leftovers go on: they are kept on this desk and sent when the server is back.</source>
        <translation>Los cambios, las bandejas de control, los lotes y la regla de pesaje esperan al servidor. Los pesos y las sobras siguen: se guardan en este puesto y se envían cuando vuelva el servidor.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::KitchenSwap</name>
    <message>
        <source>This bowl is fed by no diet of the collection: ask the nutritionist.</source>
        <translation>Este cuenco no viene de ninguna dieta de la colección: pregunte al nutricionista.</translation>
    </message>
    <message>
        <source>This food is not of the diet, it came by a swap: ask the nutritionist.</source>
        <translation>Este alimento no es de la dieta, llegó por un cambio: pregunte al nutricionista.</translation>
    </message>
    <message>
        <source>It is weighed in already: correct its weight first.</source>
        <translation>Ya está pesado: corrija primero su peso.</translation>
    </message>
    <message>
        <source>Reading what is on hand…</source>
        <translation>Leyendo lo que hay…</translation>
    </message>
    <message>
        <source>not available</source>
        <translation>no disponible</translation>
    </message>
    <message>
        <source>instead of %1: %2 %3</source>
        <translation>en lugar de %1: %2 de %3</translation>
    </message>
    <message>
        <source>%1 – waits for the nutritionist, see Today</source>
        <translation>%1 – espera al nutricionista, véase Hoy</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::LadderModel</name>
    <message>
        <source>holds with a chance of %1</source>
        <translation>se cumple con una probabilidad de %1</translation>
    </message>
    <message>
        <source>holds with a chance of at least %1</source>
        <translation>se cumple con una probabilidad de al menos %1</translation>
    </message>
    <message>
        <source>holds with a chance of at most %1</source>
        <translation>se cumple con una probabilidad de como máximo %1</translation>
    </message>
    <message>
        <source>min</source>
        <translation>mín</translation>
    </message>
    <message>
        <source>max</source>
        <translation>máx</translation>
    </message>
    <message>
        <source>%1, in this bowl %2 to %3 %4</source>
        <translation>%1, en este cuenco %2 a %3 %4</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>objetivo %1</translation>
    </message>
    <message>
        <source>± %1 (1 SD)</source>
        <translation>± %1 (1 DT)</translation>
    </message>
    <message>
        <source>known for %1 of the dry matter</source>
        <translation>se conoce para %1 de la materia seca</translation>
    </message>
    <message>
        <source>hard rule</source>
        <translation>regla firme</translation>
    </message>
    <message>
        <source>target</source>
        <translation>objetivo</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>zona</translation>
    </message>
    <message>
        <source>state</source>
        <translation>estado</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::LeftoverPane</name>
    <message>
        <source>Somebody wrote this down before: both entries are kept, and the first one counts until it is corrected.</source>
        <translation>Alguien ya lo anotó: se guardan ambas entradas, y la primera cuenta hasta que se corrija.</translation>
    </message>
    <message>
        <source>What was left</source>
        <translation>Lo que sobró</translation>
    </message>
    <message>
        <source>g left</source>
        <translation>g de sobra</translation>
    </message>
    <message>
        <source>E  of all together, by eye</source>
        <translation>E  de la mezcla, a ojo</translation>
    </message>
    <message>
        <source>A  all eaten</source>
        <translation>A  todo comido</translation>
    </message>
    <message>
        <source>N  not weighed</source>
        <translation>N  sin pesar</translation>
    </message>
    <message>
        <source>M  all together</source>
        <translation>M  todo junto</translation>
    </message>
    <message>
        <source>P  control pans</source>
        <translation>P  cuencos de control</translation>
    </message>
    <message>
        <source>S  spilled</source>
        <translation>S  derramado</translation>
    </message>
    <message>
        <source>T  stolen</source>
        <translation>T  robado</translation>
    </message>
    <message>
        <source>type what is left + what was lost, such as 3 + 4</source>
        <translation>escriba lo que queda + lo que se perdió, como 3 + 4</translation>
    </message>
    <message>
        <source>No bowl on this sheet.</source>
        <translation>Ningún cuenco en esta hoja.</translation>
    </message>
    <message>
        <source>This bowl was never put on a sheet: nothing can have been left.</source>
        <translation>Este cuenco nunca estuvo en una hoja: no puede haber sobrado nada.</translation>
    </message>
    <message>
        <source>%1 g went in</source>
        <translation>entraron %1 g</translation>
    </message>
    <message>
        <source>%1 were planned, and nobody weighed it in</source>
        <translation>estaban previstos %1, y nadie lo pesó</translation>
    </message>
    <message>
        <source> · of all together %1 g were left</source>
        <translation> · de la mezcla quedaron %1 g</translation>
    </message>
    <message>
        <source>“%1” is no weight: type grams, such as 20.5; tare the empty bowl where it is below nothing.</source>
        <translation>«%1» no es un peso: escriba gramos, como 20,5; tare el cuenco vacío si está por debajo de nada.</translation>
    </message>
    <message>
        <source>%1 is written already. Why is it put right? Both are kept.</source>
        <translation>%1 ya está anotado. ¿Por qué se corrige? Se guardan ambos.</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>Type what is left + what was lost in g, such as 3 + 4, or nothing.</source>
        <translation>Escriba lo que queda + lo que se perdió en g, como 3 + 4, o nada.</translation>
    </message>
    <message>
        <source>Type the grams of all foods together, then M.</source>
        <translation>Escriba los gramos de todos los alimentos juntos, luego M.</translation>
    </message>
    <message>
        <source>%1 g of all together is written already. Why is it put right? Both are kept.</source>
        <translation>%1 g de la mezcla ya están anotados. ¿Por qué se corrige? Se guardan ambos.</translation>
    </message>
    <message>
        <source>Type how many grams of what is left together are this food, by eye, then E.</source>
        <translation>Escriba cuántos gramos de la mezcla son este alimento, a ojo, luego E.</translation>
    </message>
    <message>
        <source>Reading the sheet…</source>
        <translation>Leyendo la hoja…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::LinePane</name>
    <message>
        <source>how the kitchen prepares it</source>
        <translation>cómo lo prepara la cocina</translation>
    </message>
    <message>
        <source>Preparation of the food</source>
        <translation>Preparación del alimento</translation>
    </message>
    <message>
        <source>What the food is given for</source>
        <translation>Para qué se da el alimento</translation>
    </message>
    <message>
        <source>All that is offered counts, whatever it is given for</source>
        <translation>Todo lo que se ofrece cuenta, sea cual sea su fin</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Takes the food out of the diet (Delete)</source>
        <translation>Quita el alimento de la dieta (Supr)</translation>
    </message>
    <message>
        <source>Explore</source>
        <translation>Explorar</translation>
    </message>
    <message>
        <source>Moves the food&apos;s maximum over a range and shows what has to give (Ctrl+E)</source>
        <translation>Mueve el máximo del alimento por un intervalo y muestra lo que tiene que ceder (Ctrl+E)</translation>
    </message>
    <message>
        <source>Cautions on the food</source>
        <translation>Advertencias sobre el alimento</translation>
    </message>
    <message>
        <source>to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>g a day, unweighed</source>
        <translation>g al día, sin pesar</translation>
    </message>
    <message>
        <source>At least so many grams a day of what is given unweighed</source>
        <translation>Al menos tantos gramos al día de lo que se da sin pesar</translation>
    </message>
    <message>
        <source>At most so many grams a day of what is given unweighed</source>
        <translation>Como máximo tantos gramos al día de lo que se da sin pesar</translation>
    </message>
    <message>
        <source>▲ Not given to this animal: %1</source>
        <translation>▲ No es para este animal: %1</translation>
    </message>
    <message>
        <source>◐ Caution: %1</source>
        <translation>◐ Advertencia: %1</translation>
    </message>
    <message>
        <source>%1, unweighed</source>
        <translation>%1, sin pesar</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::LookBackPane</name>
    <message>
        <source>Foods and the sign</source>
        <translation>Alimentos y el signo</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Alimento</translation>
    </message>
    <message>
        <source>Sign, with it</source>
        <translation>Signo, con él</translation>
    </message>
    <message>
        <source>without</source>
        <translation>sin</translation>
    </message>
    <message>
        <source>Fisher</source>
        <translation>Fisher</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corregido</translation>
    </message>
    <message>
        <source>Risk ratio (95 %)</source>
        <translation>Razón de riesgos (95 %)</translation>
    </message>
    <message>
        <source>Hours before the sign</source>
        <translation>Horas antes del signo</translation>
    </message>
    <message>
        <source> h before</source>
        <translation> h antes</translation>
    </message>
    <message>
        <source>Bowls given in the</source>
        <translation>Cuencos dados en las</translation>
    </message>
    <message>
        <source>Look-back</source>
        <translation>Retrospectiva</translation>
    </message>
    <message>
        <source>Choose a sign (▲) at the left: what was eaten before it is compared with days without it.</source>
        <translation>Elija un signo (▲) a la izquierda: lo que se comió antes se compara con días sin él.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MainWindow</name>
    <message>
        <source>Ctrl+K</source>
        <translation>Ctrl+K</translation>
    </message>
    <message>
        <source>Tarebowl</source>
        <translation>Tarebowl</translation>
    </message>
    <message>
        <source>%1 (%2) – Tarebowl</source>
        <translation>%1 (%2) – Tarebowl</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MappingDelegate</name>
    <message>
        <source>What the column becomes</source>
        <translation>Lo que será la columna</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>as the table</source>
        <translation>como la tabla</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MappingModel</name>
    <message>
        <source>title not understood</source>
        <translation>título no entendido</translation>
    </message>
    <message>
        <source>a second one of this nutrient</source>
        <translation>una segunda de este nutriente</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>supuesto</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>(nothing)</source>
        <translation>(nada)</translation>
    </message>
    <message>
        <source>as its value</source>
        <translation>como su valor</translation>
    </message>
    <message>
        <source>as the table</source>
        <translation>como la tabla</translation>
    </message>
    <message>
        <source>kept where its unit is understood</source>
        <translation>guardado donde se entiende su unidad</translation>
    </message>
    <message>
        <source>its unit is none known here</source>
        <translation>su unidad no se conoce aquí</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«%1»</translation>
    </message>
    <message>
        <source>a nutrient&apos;s name in the table</source>
        <translation>el nombre de un nutriente en la tabla</translation>
    </message>
    <message>
        <source>in 1 line</source>
        <translation>en 1 línea</translation>
    </message>
    <message>
        <source>in %1 lines</source>
        <translation>en %1 líneas</translation>
    </message>
    <message>
        <source>its own name</source>
        <translation>su propio nombre</translation>
    </message>
    <message>
        <source>“%1” is nothing that a column can become: choose from the list, or type a nutrient.</source>
        <translation>«%1» no es nada que pueda ser una columna: elija de la lista o escriba un nutriente.</translation>
    </message>
    <message>
        <source>“%1” is no unit: write it as mg/100 g, g/kg, % or kcal.</source>
        <translation>«%1» no es una unidad: escriba mg/100 g, g/kg, % o kcal.</translation>
    </message>
    <message>
        <source>“%1” is no nutrient: type its name or its tagname.</source>
        <translation>«%1» no es un nutriente: escriba su nombre o su código.</translation>
    </message>
    <message>
        <source>left out by hand</source>
        <translation>omitido a mano</translation>
    </message>
    <message>
        <source>column</source>
        <translation>columna</translation>
    </message>
    <message>
        <source>what stands in it</source>
        <translation>lo que hay en ella</translation>
    </message>
    <message>
        <source>becomes</source>
        <translation>será</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>base</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MassCard</name>
    <message>
        <source>Mass today: ? Nothing was weighed yet.</source>
        <translation>Peso hoy: ? Aún no se pesó nada.</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 pesaje</translation>
    </message>
    <message>
        <source>%1 readings</source>
        <translation>%1 pesajes</translation>
    </message>
    <message>
        <source>mean of the group</source>
        <translation>media del grupo</translation>
    </message>
    <message>
        <source>1 animal</source>
        <translation>1 animal</translation>
    </message>
    <message>
        <source>mean of %1 animals</source>
        <translation>media de %1 animales</translation>
    </message>
    <message>
        <source>Mass that counts today: %1 (%2, %3, newest %4)</source>
        <translation>Peso que cuenta hoy: %1 (%2, %3, el más nuevo %4)</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>each animal</source>
        <translation>cada animal</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>media</translation>
    </message>
    <message>
        <source>The chart begins with the first mass.</source>
        <translation>El gráfico empieza con el primer peso.</translation>
    </message>
    <message>
        <source>Body mass and condition</source>
        <translation>Peso vivo y condición</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MassChart</name>
    <message>
        <source>Body mass and condition over time</source>
        <translation>Peso vivo y condición a lo largo del tiempo</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>dudoso</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>descartado</translation>
    </message>
    <message>
        <source>body mass, %1</source>
        <translation>peso vivo, %1</translation>
    </message>
    <message>
        <source>condition, ideal %1</source>
        <translation>condición, ideal %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MassEntry</name>
    <message>
        <source>Day of the weighing</source>
        <translation>Día del pesaje</translation>
    </message>
    <message>
        <source>2026-11-25</source>
        <translation>2026-11-25</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Peso vivo</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>peso</translation>
    </message>
    <message>
        <source>Body condition score</source>
        <translation>Puntuación de condición</translation>
    </message>
    <message>
        <source>score</source>
        <translation>puntuación</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>Write down a mass or a condition score</source>
        <translation>Anotar un peso o una puntuación de condición</translation>
    </message>
    <message>
        <source>Who was weighed</source>
        <translation>A quién se pesó</translation>
    </message>
    <message>
        <source>Unit of the mass</source>
        <translation>Unidad del peso</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>How it was weighed</source>
        <translation>Cómo se pesó</translation>
    </message>
    <message>
        <source>Scale of the condition score</source>
        <translation>Escala de la puntuación</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>mean of the group</source>
        <translation>media del grupo</translation>
    </message>
    <message>
        <source>“%1” is no day; write it as 2026-11-25.</source>
        <translation>«%1» no es un día; escríbalo como 2026-11-25.</translation>
    </message>
    <message>
        <source>“%1” is no mass; a mass is a number above 0.</source>
        <translation>«%1» no es un peso; un peso es un número mayor que 0.</translation>
    </message>
    <message>
        <source>“%1” is no score, or the day is none.</source>
        <translation>«%1» no es una puntuación, o el día no lo es.</translation>
    </message>
    <message>
        <source>The scale %1 has no score of %2.</source>
        <translation>La escala %1 no tiene la puntuación %2.</translation>
    </message>
    <message>
        <source>Type a mass or a score first.</source>
        <translation>Escriba antes un peso o una puntuación.</translation>
    </message>
    <message>
        <source>It is %1: write it down</source>
        <translation>Es %1: anotarlo</translation>
    </message>
    <message>
        <source>It was %1</source>
        <translation>Era %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MembersCard</name>
    <message>
        <source>Animals of the group</source>
        <translation>Animales del grupo</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>Leaves today</source>
        <translation>Sale hoy</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>The group and its animals</source>
        <translation>El grupo y sus animales</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Sección</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Animales</translation>
    </message>
    <message>
        <source>How many share the bowl, for a colony whose animals are not known one by one</source>
        <translation>Cuántos comparten el cuenco, en una colonia cuyos animales no se conocen uno a uno</translation>
    </message>
    <message>
        <source>Animals of the species that are not in this group</source>
        <translation>Animales de la especie que no están en este grupo</translation>
    </message>
    <message>
        <source>This animal is in the group from today on</source>
        <translation>Este animal está en el grupo desde hoy</translation>
    </message>
    <message>
        <source>Today is the first day on which the chosen animal is not in the group any more</source>
        <translation>Hoy es el primer día en que el animal elegido ya no está en el grupo</translation>
    </message>
    <message>
        <source>Go to the chosen animal&apos;s own page</source>
        <translation>Ir a la página del animal elegido</translation>
    </message>
    <message>
        <source>New animal</source>
        <translation>Animal nuevo</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MembersModel</name>
    <message>
        <source>animal</source>
        <translation>animal</translation>
    </message>
    <message>
        <source>sex</source>
        <translation>sexo</translation>
    </message>
    <message>
        <source>age</source>
        <translation>edad</translation>
    </message>
    <message>
        <source>life stage</source>
        <translation>etapa de vida</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>peso</translation>
    </message>
    <message>
        <source>in the group</source>
        <translation>en el grupo</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ModelPicker</name>
    <message>
        <source>Candidates side by side</source>
        <translation>Candidatos uno junto a otro</translation>
    </message>
    <message>
        <source>Published profiles of model species</source>
        <translation>Perfiles publicados de especies modelo</translation>
    </message>
    <message>
        <source>%1 targets · %2</source>
        <translation>%1 objetivos · %2</translation>
    </message>
    <message>
        <source>Basis of the comparison</source>
        <translation>Base de la comparación</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>The model that stands in</source>
        <translation>El modelo que sirve</translation>
    </message>
    <message>
        <source>Stands in:</source>
        <translation>Sirve:</translation>
    </message>
    <message>
        <source>Tick one or more published profiles; those ticked stand side by side.</source>
        <translation>Marque uno o más perfiles publicados; los marcados quedan uno junto a otro.</translation>
    </message>
    <message>
        <source>The first %1 are shown.</source>
        <translation>Se muestran los primeros %1.</translation>
    </message>
    <message>
        <source>◆ differs from the first candidate · ○ from memory · ? not stated, or not on this basis</source>
        <translation>◆ difiere del primer candidato · ○ de memoria · ? no indicado, o no en esta base</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ModelStart</name>
    <message>
        <source>Start from this model</source>
        <translation>Empezar desde este modelo</translation>
    </message>
    <message>
        <source>Why the model stands in</source>
        <translation>Por qué sirve el modelo</translation>
    </message>
    <message>
        <source>Why does this one stand in? A sentence, which is kept with every target.</source>
        <translation>¿Por qué sirve este? Una frase, que se guarda con cada objetivo.</translation>
    </message>
    <message>
        <source>A profile of the group&apos;s own, which takes over what is published for the model and is in force from today; limits and house rules are set on top of it</source>
        <translation>Un perfil propio del grupo, que toma lo publicado para el modelo y está en vigor desde hoy; encima se ponen límites y reglas de la casa</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::NewSpeciesPage</name>
    <message>
        <source>Take it into the collection</source>
        <translation>Acogerla en la colección</translation>
    </message>
    <message>
        <source>… and design a diet</source>
        <translation>… y diseñar una dieta</translation>
    </message>
    <message>
        <source>1 · The species</source>
        <translation>1 · La especie</translation>
    </message>
    <message>
        <source>2 · A model species: whose published targets stand in</source>
        <translation>2 · Una especie modelo: cuyos objetivos publicados sirven</translation>
    </message>
    <message>
        <source>3 · Limits and house rules on top of it</source>
        <translation>3 · Límites y reglas de la casa encima</translation>
    </message>
    <message>
        <source>4 · The group, its mass and its energy need</source>
        <translation>4 · El grupo, su peso y su necesidad de energía</translation>
    </message>
    <message>
        <source>A species new to the collection</source>
        <translation>Una especie nueva en la colección</translation>
    </message>
    <message>
        <source>Name of the species</source>
        <translation>Nombre de la especie</translation>
    </message>
    <message>
        <source>as the house calls it</source>
        <translation>como la llama la casa</translation>
    </message>
    <message>
        <source>Scientific name</source>
        <translation>Nombre científico</translation>
    </message>
    <message>
        <source>Feeding type</source>
        <translation>Tipo de alimentación</translation>
    </message>
    <message>
        <source>Belongs to</source>
        <translation>Pertenece a</translation>
    </message>
    <message>
        <source>mammal, tenrec: the widest first</source>
        <translation>mammal, tenrec: lo más amplio primero</translation>
    </message>
    <message>
        <source>Cautions, model species and energy choices go by these words</source>
        <translation>Advertencias, especies modelo y opciones de energía van según estas palabras</translation>
    </message>
    <message>
        <source>Why the model stands in</source>
        <translation>Por qué sirve el modelo</translation>
    </message>
    <message>
        <source>Why does this one stand in? A sentence, which is kept with every target.</source>
        <translation>¿Por qué sirve este? Una frase, que se guarda con cada objetivo.</translation>
    </message>
    <message>
        <source>Published requirements of a model species are a starting point; the nutritionist and the vet decide.</source>
        <translation>Los requerimientos publicados de una especie modelo son un punto de partida; deciden el nutricionista y el veterinario.</translation>
    </message>
    <message>
        <source>Name of the group</source>
        <translation>Nombre del grupo</translation>
    </message>
    <message>
        <source>pair, trio, family …</source>
        <translation>pareja, trío, familia …</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Sección</translation>
    </message>
    <message>
        <source>whose keepers feed it</source>
        <translation>cuyos cuidadores lo alimentan</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Animales</translation>
    </message>
    <message>
        <source>how many share the bowl</source>
        <translation>cuántos comparten el cuenco</translation>
    </message>
    <message>
        <source>Mass of one animal</source>
        <translation>Peso de un animal</translation>
    </message>
    <message>
        <source>a mean, or what is expected</source>
        <translation>una media, o lo que se espera</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>Unit of the mass</source>
        <translation>Unidad del peso</translation>
    </message>
    <message>
        <source>in</source>
        <translation>en</translation>
    </message>
    <message>
        <source>Energy at 1 kg of body mass</source>
        <translation>Energía a 1 kg de peso vivo</translation>
    </message>
    <message>
        <source>choose…</source>
        <translation>elegir…</translation>
    </message>
    <message>
        <source>Factor on the energy</source>
        <translation>Factor sobre la energía</translation>
    </message>
    <message>
        <source>no factor</source>
        <translation>ningún factor</translation>
    </message>
    <message>
        <source>Energy need</source>
        <translation>Necesidad de energía</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>Take it into the collection and go on to a diet for its group</source>
        <translation>Acogerla en la colección y pasar a una dieta para su grupo</translation>
    </message>
    <message>
        <source>What is still missing</source>
        <translation>Lo que aún falta</translation>
    </message>
    <message>
        <source>● Nothing is missing.</source>
        <translation>● No falta nada.</translation>
    </message>
    <message>
        <source>? Still missing: %1.</source>
        <translation>? Aún falta: %1.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::NumberField</name>
    <message>
        <source>“%1” is no number.</source>
        <translation>«%1» no es un número.</translation>
    </message>
    <message>
        <source>“%1” is not between %2 and %3.</source>
        <translation>«%1» no está entre %2 y %3.</translation>
    </message>
    <message>
        <source>“%1” is no whole number, and only whole numbers count here.</source>
        <translation>«%1» no es un número entero, y aquí solo cuentan los enteros.</translation>
    </message>
    <message numerus="yes">
        <source>“%1” is finer than what counts here: %n digit(s) after the decimal mark.</source>
        <translation>
            <numerusform>«%1» es más fino que lo que cuenta aquí: %n cifra decimal.</numerusform>
            <numerusform>«%1» es más fino que lo que cuenta aquí: %n cifras decimales.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::NutrientNumbersModel</name>
    <message>
        <source>No nutrient is called “%1”.</source>
        <translation>Ningún nutriente se llama «%1».</translation>
    </message>
    <message>
        <source>“%1” of %2 is not %3.</source>
        <translation>«%1» de %2 no es %3.</translation>
    </message>
    <message>
        <source>%1 stands here twice.</source>
        <translation>%1 está aquí dos veces.</translation>
    </message>
    <message>
        <source>type a nutrient…</source>
        <translation>escriba un nutriente…</translation>
    </message>
    <message>
        <source>nutrient</source>
        <translation>nutriente</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ObservationForm</name>
    <message>
        <source>What was seen</source>
        <translation>Lo que se vio</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>hh:mm</source>
        <translation>hh:mm</translation>
    </message>
    <message>
        <source>Scale of the score</source>
        <translation>Escala de la puntuación</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Puntuación</translation>
    </message>
    <message>
        <source>score</source>
        <translation>puntuación</translation>
    </message>
    <message>
        <source>Appetite</source>
        <translation>Apetito</translation>
    </message>
    <message>
        <source>Analyte</source>
        <translation>Analito</translation>
    </message>
    <message>
        <source>Blood value</source>
        <translation>Valor en sangre</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>Unit of the blood value</source>
        <translation>Unidad del valor en sangre</translation>
    </message>
    <message>
        <source>Lab&apos;s range, low</source>
        <translation>Intervalo del laboratorio, bajo</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>Lab&apos;s range, high</source>
        <translation>Intervalo del laboratorio, alto</translation>
    </message>
    <message>
        <source>to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>File beside the collection</source>
        <translation>Archivo junto a la colección</translation>
    </message>
    <message>
        <source>attached file</source>
        <translation>archivo adjunto</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Keep as it is</source>
        <translation>Guardar así</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Which score? %1 goes from %2 to %3.</source>
        <translation>¿Qué puntuación? %1 va de %2 a %3.</translation>
    </message>
    <message>
        <source>%1 is not on this scale: it goes from %2 to %3.</source>
        <translation>%1 no está en esta escala: va de %2 a %3.</translation>
    </message>
    <message>
        <source>Which blood value?</source>
        <translation>¿Qué valor en sangre?</translation>
    </message>
    <message>
        <source>%1 is not measured in %2, or its range is upside down.</source>
        <translation>%1 no se mide en %2, o su intervalo está al revés.</translation>
    </message>
    <message>
        <source>A time is hh:mm, 00:00 to 23:59.</source>
        <translation>Una hora es hh:mm, de 00:00 a 23:59.</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Elegir…</translation>
    </message>
    <message>
        <source>Choose a file beside the collection</source>
        <translation>Elegir un archivo junto a la colección</translation>
    </message>
    <message>
        <source>A picture or report that lies in the collection&apos;s folder</source>
        <translation>Una imagen o un informe que está en la carpeta de la colección</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::OpenCollection</name>
    <message>
        <source>nothing open</source>
        <translation>nada abierto</translation>
    </message>
    <message>
        <source>working…</source>
        <translation>trabajando…</translation>
    </message>
    <message>
        <source>all saved</source>
        <translation>todo guardado</translation>
    </message>
    <message>
        <source>for reading only</source>
        <translation>solo lectura</translation>
    </message>
    <message>
        <source>Brackenmere (invented sample)</source>
        <translation>Brackenmere (ejemplo inventado)</translation>
    </message>
    <message>
        <source>This collection is open for reading only: its file or its folder cannot be written. To change it, copy it into a folder of your own and open the copy.</source>
        <translation>Esta colección está abierta solo para lectura: no se puede escribir en su archivo o en su carpeta. Para cambiarla, cópiela en una carpeta suya y abra la copia.</translation>
    </message>
    <message>
        <source>cut off from the server</source>
        <translation>sin conexión con el servidor</translation>
    </message>
    <message numerus="yes">
        <source>cut off from the server: %n entry(ies) wait</source>
        <translation>
            <numerusform>sin conexión con el servidor: %n anotación espera</numerusform>
            <numerusform>sin conexión con el servidor: %n anotaciones esperan</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::PageHeader</name>
    <message>
        <source>What is shown</source>
        <translation>Lo que se muestra</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::PanPane</name>
    <message>
        <source>Keep  (Enter)</source>
        <translation>Guardar  (Intro)</translation>
    </message>
    <message>
        <source>Take out  (Del)</source>
        <translation>Quitar  (Supr)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation>Atrás  (Esc)</translation>
    </message>
    <message>
        <source>Control pans of the day</source>
        <translation>Cuencos de control del día</translation>
    </message>
    <message>
        <source>Food, or class of foods that dry alike</source>
        <translation>Alimento, o clase de alimentos que se secan igual</translation>
    </message>
    <message>
        <source>g when it was put out</source>
        <translation>g al ponerlo</translation>
    </message>
    <message>
        <source>g when it came back</source>
        <translation>g al volver</translation>
    </message>
    <message>
        <source>The same food in the same place, out of the animals&apos; reach: what water it lost or drew overnight. Leftovers are put right by it. Without a second weight it still stands: Today reminds of it.</source>
        <translation>El mismo alimento en el mismo sitio, fuera del alcance de los animales: el agua que perdió o tomó por la noche. Con él se corrigen las sobras. Sin un segundo peso sigue puesto: Hoy lo recuerda.</translation>
    </message>
    <message>
        <source>put out</source>
        <translation>puesto</translation>
    </message>
    <message>
        <source>came back</source>
        <translation>de vuelta</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>Control pans · %1</source>
        <translation>Cuencos de control · %1</translation>
    </message>
    <message>
        <source>This pan still stands. What came back of it?</source>
        <translation>Este cuenco sigue puesto. ¿Cuánto volvió?</translation>
    </message>
    <message>
        <source>This pan is changed:</source>
        <translation>Este cuenco se cambia:</translation>
    </message>
    <message>
        <source>No pan of this day is written down yet. The first one:</source>
        <translation>Aún no hay ningún cuenco anotado de este día. El primero:</translation>
    </message>
    <message>
        <source>Another pan:</source>
        <translation>Otro cuenco:</translation>
    </message>
    <message>
        <source>No bowl of this day holds a food: there is nothing to put out.</source>
        <translation>Ningún cuenco de este día tiene un alimento: no hay nada que poner.</translation>
    </message>
    <message>
        <source>What did it weigh when it was put out? Type grams, such as 100.</source>
        <translation>¿Cuánto pesaba al ponerlo? Escriba gramos, como 100.</translation>
    </message>
    <message>
        <source>“%1” is no weight: type the grams that were put out, such as 100.</source>
        <translation>«%1» no es un peso: escriba los gramos que se pusieron, como 100.</translation>
    </message>
    <message>
        <source>“%1” is no weight: type the grams that came back, or nothing while it still stands.</source>
        <translation>«%1» no es un peso: escriba los gramos que volvieron, o nada mientras siga puesto.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::PlanCard</name>
    <message>
        <source>%1 (no own sample has it)</source>
        <translation>%1 (ninguna muestra propia lo tiene)</translation>
    </message>
    <message>
        <source>%1 (last %2)</source>
        <translation>%1 (última %2)</translation>
    </message>
    <message>
        <source>every … months</source>
        <translation>cada … meses</translation>
    </message>
    <message>
        <source>a whole number of months from 1 to 120</source>
        <translation>un número entero de meses de 1 a 120</translation>
    </message>
    <message>
        <source>Sampling plan</source>
        <translation>Plan de muestreo</translation>
    </message>
    <message>
        <source>Nutrients to analyse, and how often</source>
        <translation>Nutrientes por analizar, y cada cuánto</translation>
    </message>
    <message>
        <source>Nothing is planned. Plan what this food can go wrong in.</source>
        <translation>No hay nada previsto. Prevea en qué puede fallar este alimento.</translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation>No toca nada.</translation>
    </message>
    <message>
        <source>Due: %1.</source>
        <translation>Toca: %1.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::PlanModel</name>
    <message>
        <source>line</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>food or place</source>
        <translation>alimento o lugar</translation>
    </message>
    <message>
        <source>what will happen, or why not</source>
        <translation>lo que pasará, o por qué no</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Rail</name>
    <message>
        <source>Rooms</source>
        <translation>Salas</translation>
    </message>
    <message>
        <source>Tarebowl</source>
        <translation>Tarebowl</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ReadingsCard</name>
    <message>
        <source>Masses and condition scores</source>
        <translation>Pesos y puntuaciones de condición</translation>
    </message>
    <message>
        <source>Leave out…</source>
        <translation>Descartar…</translation>
    </message>
    <message>
        <source>Put right…</source>
        <translation>Corregir…</translation>
    </message>
    <message>
        <source>Count it again</source>
        <translation>Volver a contarlo</translation>
    </message>
    <message>
        <source>Choose a mass in the list first</source>
        <translation>Elija antes un peso de la lista</translation>
    </message>
    <message>
        <source>It stays in the record, and does not count</source>
        <translation>Queda anotado, y no cuenta</translation>
    </message>
    <message>
        <source>What was written first stays beside it</source>
        <translation>Lo que se escribió primero queda al lado</translation>
    </message>
    <message>
        <source>Leave %1 of %2 out of what counts?</source>
        <translation>¿Dejar %1 del %2 fuera de lo que cuenta?</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Descartar</translation>
    </message>
    <message>
        <source>What should %1 of %2 have been?</source>
        <translation>¿Qué debió ser %1 del %2?</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Corregir</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ReadingsModel</name>
    <message>
        <source>group</source>
        <translation>grupo</translation>
    </message>
    <message>
        <source>▲ doubtful: %1</source>
        <translation>▲ dudoso: %1</translation>
    </message>
    <message>
        <source>□ left out: %1</source>
        <translation>□ descartado: %1</translation>
    </message>
    <message>
        <source> first written as %1: %2</source>
        <translation> escrito antes como %1: %2</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>condición</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>animal</source>
        <translation>animal</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>how</source>
        <translation>cómo</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>observación</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ReasonBar</name>
    <message>
        <source>A reason is needed</source>
        <translation>Se necesita un motivo</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>Standard deviation, where it is known</source>
        <translation>Desviación típica, si se conoce</translation>
    </message>
    <message>
        <source>± SD</source>
        <translation>± DT</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Why? This is kept with it.</source>
        <translation>¿Por qué? Se guarda junto a ello.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RecipeCard</name>
    <message>
        <source>Parts of the mix, and their grams</source>
        <translation>Partes de la mezcla y sus gramos</translation>
    </message>
    <message>
        <source>With this yield the dry matter of the parts would weigh more than the mix; nothing is worked out from it.</source>
        <translation>Con este rendimiento la materia seca de las partes pesaría más que la mezcla; no se calcula nada de ello.</translation>
    </message>
    <message>
        <source>A share that stays lies outside 0 to 2; nothing is worked out from it.</source>
        <translation>Una parte que queda está fuera de 0 a 2; no se calcula nada de ello.</translation>
    </message>
    <message>
        <source>Nothing can be worked out from this recipe.</source>
        <translation>No se puede calcular nada de esta receta.</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>No food of this collection has “%1” in its name.</source>
        <translation>Ningún alimento de esta colección tiene «%1» en su nombre.</translation>
    </message>
    <message>
        <source>Add a part: type part of its name…</source>
        <translation>Añadir una parte: escriba parte de su nombre…</translation>
    </message>
    <message>
        <source>Add a part of the mix by part of its name</source>
        <translation>Añadir una parte de la mezcla por parte de su nombre</translation>
    </message>
    <message>
        <source>Grams of the mix from 1 g weighed in</source>
        <translation>Gramos de la mezcla de 1 g pesado</translation>
    </message>
    <message>
        <source>Source of the recipe</source>
        <translation>Fuente de la receta</translation>
    </message>
    <message>
        <source>who says so</source>
        <translation>quién lo afirma</translation>
    </message>
    <message>
        <source>1 g weighed in gives, g</source>
        <translation>1 g pesado da, g</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Mixed from</source>
        <translation>Mezclado de</translation>
    </message>
    <message>
        <source>Takes the chosen part out of the mix (Delete)</source>
        <translation>Quita la parte elegida de la mezcla (Supr)</translation>
    </message>
    <message>
        <source>It is worked out as cooked from %1 now; a recipe takes the place of that.</source>
        <translation>Ahora se calcula como cocido de %1; una receta ocupa su lugar.</translation>
    </message>
    <message>
        <source>Not mixed from other foods. Samples of the mix itself go before a recipe.</source>
        <translation>No se mezcla de otros alimentos. Las muestras de la propia mezcla van antes que una receta.</translation>
    </message>
    <message>
        <source>What a part does not state is “at least” in the mix.</source>
        <translation>Lo que una parte no indica es «al menos» en la mezcla.</translation>
    </message>
    <message>
        <source>A food is not mixed from itself.</source>
        <translation>Un alimento no se mezcla de sí mismo.</translation>
    </message>
    <message>
        <source>“%1” is no yield: the grams of the mix that 1 g weighed in gives, above 0.</source>
        <translation>«%1» no es un rendimiento: los gramos de la mezcla que da 1 g pesado, más de 0.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RecipePartsModel</name>
    <message>
        <source>How many grams of %1 go in?</source>
        <translation>¿Cuántos gramos de %1 entran?</translation>
    </message>
    <message>
        <source>“%1” of %2 is not a number of grams above 0.</source>
        <translation>«%1» de %2 no es un número de gramos mayor que 0.</translation>
    </message>
    <message>
        <source>part</source>
        <translation>parte</translation>
    </message>
    <message>
        <source>grams</source>
        <translation>gramos</translation>
    </message>
    <message>
        <source>share</source>
        <translation>cuota</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RoomActions</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Undo: %1 (Ctrl+Z)</source>
        <translation>Deshacer: %1 (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Rehacer: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Rooms</name>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Foods</source>
        <translation>Alimentos</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Animales</translation>
    </message>
    <message>
        <source>Diets</source>
        <translation>Dietas</translation>
    </message>
    <message>
        <source>Kitchen</source>
        <translation>Cocina</translation>
    </message>
    <message>
        <source>Intake</source>
        <translation>Ingesta</translation>
    </message>
    <message>
        <source>Health</source>
        <translation>Salud</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationBar</name>
    <message>
        <source>Plan days…</source>
        <translation>Planificar días…</translation>
    </message>
    <message>
        <source>Plan again from today</source>
        <translation>Replanificar desde hoy</translation>
    </message>
    <message>
        <source>Days that are over count</source>
        <translation>Los días pasados cuentan</translation>
    </message>
    <message>
        <source>as offered</source>
        <translation>como se ofrecieron</translation>
    </message>
    <message>
        <source>as eaten</source>
        <translation>como se comieron</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Which days</source>
        <translation>Qué días</translation>
    </message>
    <message>
        <source>Plan the days after those that are planned</source>
        <translation>Planificar los días que siguen a los ya planificados</translation>
    </message>
    <message>
        <source>What was fed stays, and the other days balance what it brought</source>
        <translation>Lo que se dio queda, y los otros días compensan lo que aportó</translation>
    </message>
    <message>
        <source>Take the best plan that is found so far</source>
        <translation>Tomar el mejor plan hallado hasta ahora</translation>
    </message>
    <message>
        <source>All that was offered counts</source>
        <translation>Todo lo que se ofreció cuenta</translation>
    </message>
    <message>
        <source>What was weighed back does not count, where somebody weighed it</source>
        <translation>Lo que se pesó de vuelta no cuenta, donde alguien lo pesó</translation>
    </message>
    <message>
        <source>planning…</source>
        <translation>planificando…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationCalendar</name>
    <message>
        <source>Calendar of the rotation</source>
        <translation>Calendario de la rotación</translation>
    </message>
    <message>
        <source>A row for each food, a column for each day, grams per animal</source>
        <translation>Una fila por alimento, una columna por día, gramos por animal</translation>
    </message>
    <message>
        <source>%1 missed</source>
        <translation>%1 incumplidos</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationCalendarModel</name>
    <message>
        <source>%1: %2 g a day on the mean</source>
        <translation>%1: %2 g al día de media</translation>
    </message>
    <message>
        <source>%1 g per animal</source>
        <translation>%1 g por animal</translation>
    </message>
    <message>
        <source>not fed</source>
        <translation>no se da</translation>
    </message>
    <message>
        <source>, fed</source>
        <translation>, dado</translation>
    </message>
    <message>
        <source>, locked</source>
        <translation>, bloqueado</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>%1 missed</source>
        <translation>%1 incumplidos</translation>
    </message>
    <message>
        <source>targets</source>
        <translation>objetivos</translation>
    </message>
    <message>
        <source>mean
a day</source>
        <translation>media
al día</translation>
    </message>
    <message>
        <source>fed</source>
        <translation>dado</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationCellDelegate</name>
    <message>
        <source>Grams per animal</source>
        <translation>Gramos por animal</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationEntry</name>
    <message>
        <source>Days are planned for a diet of a collection: choose one at the left.</source>
        <translation>Los días se planifican para una dieta de una colección: elija una a la izquierda.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationForm</name>
    <message>
        <source>No food more days running than</source>
        <translation>Ningún alimento más días seguidos que</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>sin límite</translation>
    </message>
    <message>
        <source>Different foods wanted</source>
        <translation>Alimentos distintos deseados</translation>
    </message>
    <message>
        <source>no wish</source>
        <translation>sin deseo</translation>
    </message>
    <message>
        <source>Different foods a day, at most</source>
        <translation>Alimentos distintos al día, como máximo</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planificar</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>How many days</source>
        <translation>Cuántos días</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Primer día</translation>
    </message>
    <message>
        <source>A single day&apos;s zones are wider by</source>
        <translation>Las zonas de un solo día son más amplias en</translation>
    </message>
    <message>
        <source>Nothing is fed on %1</source>
        <translation>No se da nada el %1</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Cuánto tiempo</translation>
    </message>
    <message>
        <source>Different foods wanted over the days</source>
        <translation>Alimentos distintos deseados en los días</translation>
    </message>
    <message>
        <source>Nothing is fed on</source>
        <translation>No se da nada el</translation>
    </message>
    <message>
        <source>Rules from a file…</source>
        <translation>Reglas de un archivo…</translation>
    </message>
    <message>
        <source>Structure by the day, seasons, deliveries, stock to use up: a file of rules says them</source>
        <translation>Estructura por día, temporadas, entregas, existencias por gastar: lo dice un archivo de reglas</translation>
    </message>
    <message>
        <source>Plan days that vary</source>
        <translation>Planificar días que varían</translation>
    </message>
    <message>
        <source>Every day another bowl of this version&apos;s foods, within their limits; over the days the targets hold. A food that may come needs a line in the version, with 0 g if it is not fed now. Its structure rules hold each day.</source>
        <translation>Cada día otro cuenco de los alimentos de esta versión, dentro de sus límites; en el conjunto de los días se cumplen los objetivos. Un alimento que puede venir necesita una línea en la versión, con 0 g si ahora no se da. Sus reglas de estructura valen cada día.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationHandBar</name>
    <message>
        <source>A day earlier</source>
        <translation>Un día antes</translation>
    </message>
    <message>
        <source>Alt+←, or drag the food to another day</source>
        <translation>Alt+←, o arrastre el alimento a otro día</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Un día después</translation>
    </message>
    <message>
        <source>Alt+→, or drag the food to another day</source>
        <translation>Alt+→, o arrastre el alimento a otro día</translation>
    </message>
    <message>
        <source>Lock or free</source>
        <translation>Bloquear o liberar</translation>
    </message>
    <message>
        <source>L: a locked cell stays as it is when the rest is planned</source>
        <translation>L: una celda bloqueada queda como está cuando se planifica el resto</translation>
    </message>
    <message>
        <source>Not on this day</source>
        <translation>No este día</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Supr</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationPane</name>
    <message>
        <source>week of</source>
        <translation>semana del</translation>
    </message>
    <message>
        <source>group</source>
        <translation>grupo</translation>
    </message>
    <message>
        <source>food</source>
        <translation>alimento</translation>
    </message>
    <message>
        <source>offered</source>
        <translation>ofrecido</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation>por comprar</translation>
    </message>
    <message>
        <source>Purchase list</source>
        <translation>Lista de compra</translation>
    </message>
    <message>
        <source>Below the calendar</source>
        <translation>Debajo del calendario</translation>
    </message>
    <message>
        <source>What is shown below the calendar</source>
        <translation>Lo que se muestra debajo del calendario</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Por comprar</translation>
    </message>
    <message>
        <source>No days are planned for this version: it is fed as it stands, the same each day.</source>
        <translation>No hay días planificados para esta versión: se da como está, igual cada día.</translation>
    </message>
    <message>
        <source>Diet</source>
        <translation>Dieta</translation>
    </message>
    <message>
        <source>Save as a page or a file</source>
        <translation>Guardar como página o archivo</translation>
    </message>
    <message>
        <source>Print the calendar</source>
        <translation>Imprimir el calendario</translation>
    </message>
    <message>
        <source>Remove this rotation</source>
        <translation>Quitar esta rotación</translation>
    </message>
    <message>
        <source>Back to the diet</source>
        <translation>Volver a la dieta</translation>
    </message>
    <message>
        <source>printed: %1</source>
        <translation>impreso: %1</translation>
    </message>
    <message>
        <source>written: %1</source>
        <translation>escrito: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationPlanner</name>
    <message>
        <source>Nothing was planned: the planning itself failed.</source>
        <translation>No se planificó nada: falló la propia planificación.</translation>
    </message>
    <message>
        <source>This version is no longer in the collection.</source>
        <translation>Esta versión ya no está en la colección.</translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation>planificar %1</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 del %2 al %3</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>free %1 on %2</source>
        <translation>liberar %1 el %2</translation>
    </message>
    <message>
        <source>lock %1 on %2</source>
        <translation>bloquear %1 el %2</translation>
    </message>
    <message>
        <source>All days of this rotation are over: plan the next ones.</source>
        <translation>Todos los días de esta rotación han pasado: planifique los siguientes.</translation>
    </message>
    <message>
        <source>plan again from today</source>
        <translation>replanificar desde hoy</translation>
    </message>
    <message>
        <source>remove the rotation</source>
        <translation>quitar la rotación</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationSide</name>
    <message>
        <source>What the ladder shows</source>
        <translation>Lo que muestra la escalera</translation>
    </message>
    <message>
        <source>all days</source>
        <translation>todos los días</translation>
    </message>
    <message>
        <source>this day</source>
        <translation>este día</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Balance</translation>
    </message>
    <message>
        <source>How the days stand</source>
        <translation>Cómo están los días</translation>
    </message>
    <message>
        <source>The mean day of the period against the targets</source>
        <translation>El día medio del período frente a los objetivos</translation>
    </message>
    <message>
        <source>The day that the hand is on, against its own, wider zones</source>
        <translation>El día bajo la mano, frente a sus propias zonas, más amplias</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RuleAdder</name>
    <message>
        <source>Minimum of the new target</source>
        <translation>Mínimo del objetivo nuevo</translation>
    </message>
    <message>
        <source>min</source>
        <translation>mín</translation>
    </message>
    <message>
        <source>Maximum of the new target</source>
        <translation>Máximo del objetivo nuevo</translation>
    </message>
    <message>
        <source>max</source>
        <translation>máx</translation>
    </message>
    <message>
        <source>Food group that is not given</source>
        <translation>Grupo de alimentos que no se da</translation>
    </message>
    <message>
        <source>food group</source>
        <translation>grupo de alimentos</translation>
    </message>
    <message>
        <source>Why it is not given</source>
        <translation>Por qué no se da</translation>
    </message>
    <message>
        <source>why</source>
        <translation>por qué</translation>
    </message>
    <message>
        <source>Nutrient of the new target</source>
        <translation>Nutriente del objetivo nuevo</translation>
    </message>
    <message>
        <source>Unit of the new target</source>
        <translation>Unidad del objetivo nuevo</translation>
    </message>
    <message>
        <source>Basis of the new target</source>
        <translation>Base del objetivo nuevo</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>Add target</source>
        <translation>Añadir objetivo</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Excluir</translation>
    </message>
    <message>
        <source>No nutrient is called “%1”.</source>
        <translation>Ningún nutriente se llama «%1».</translation>
    </message>
    <message>
        <source>A target needs a minimum or a maximum, and the minimum is not above the maximum.</source>
        <translation>Un objetivo necesita un mínimo o un máximo, y el mínimo no está por encima del máximo.</translation>
    </message>
    <message>
        <source>Name the food group that is not given, and say why.</source>
        <translation>Nombre el grupo de alimentos que no se da, y diga por qué.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RulesPane</name>
    <message>
        <source>the mass as fed</source>
        <translation>la masa en fresco</translation>
    </message>
    <message>
        <source>the energy</source>
        <translation>la energía</translation>
    </message>
    <message>
        <source>the dry matter</source>
        <translation>la materia seca</translation>
    </message>
    <message>
        <source>%1 of the group %2</source>
        <translation>%1 del grupo %2</translation>
    </message>
    <message>
        <source>%1 to %2 of the group %3</source>
        <translation>%1 a %2 del grupo %3</translation>
    </message>
    <message>
        <source>at least %1 of the group %2</source>
        <translation>al menos %1 del grupo %2</translation>
    </message>
    <message>
        <source>, at least %1 g of each</source>
        <translation>, al menos %1 g de cada uno</translation>
    </message>
    <message>
        <source>%1 to %2 of %3 from %4</source>
        <translation>%1 a %2 de %3 de %4</translation>
    </message>
    <message>
        <source>at most %1 of %2 from %3</source>
        <translation>como máximo %1 de %2 de %3</translation>
    </message>
    <message>
        <source>at least %1 of %2 from %3</source>
        <translation>al menos %1 de %2 de %3</translation>
    </message>
    <message>
        <source>At least so many foods of the group</source>
        <translation>Al menos tantos alimentos del grupo</translation>
    </message>
    <message>
        <source>min</source>
        <translation>mín</translation>
    </message>
    <message>
        <source>At most so many foods of the group</source>
        <translation>Como máximo tantos alimentos del grupo</translation>
    </message>
    <message>
        <source>max</source>
        <translation>máx</translation>
    </message>
    <message>
        <source>At least so many grams of each</source>
        <translation>Al menos tantos gramos de cada uno</translation>
    </message>
    <message>
        <source>g each</source>
        <translation>g de cada</translation>
    </message>
    <message>
        <source>At least this share, in percent</source>
        <translation>Al menos esta parte, en tanto por ciento</translation>
    </message>
    <message>
        <source>min %</source>
        <translation>mín %</translation>
    </message>
    <message>
        <source>At most this share, in percent</source>
        <translation>Como máximo esta parte, en tanto por ciento</translation>
    </message>
    <message>
        <source>max %</source>
        <translation>máx %</translation>
    </message>
    <message>
        <source>Food group of the structure rule</source>
        <translation>Grupo de alimentos de la regla de estructura</translation>
    </message>
    <message>
        <source>Food group of the share</source>
        <translation>Grupo de alimentos de la cuota</translation>
    </message>
    <message>
        <source>What the share is of</source>
        <translation>De qué es la cuota</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>Ask for it</source>
        <translation>Pedirlo</translation>
    </message>
    <message>
        <source>foods of</source>
        <translation>alimentos de</translation>
    </message>
    <message>
        <source>Set the share</source>
        <translation>Fijar la cuota</translation>
    </message>
    <message>
        <source>share of</source>
        <translation>cuota de</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove the rule: %1</source>
        <translation>Quitar la regla: %1</translation>
    </message>
    <message>
        <source>%1 (by the targets)</source>
        <translation>%1 (por los objetivos)</translation>
    </message>
    <message>
        <source>Nothing is asked of the diet&apos;s structure yet.</source>
        <translation>Aún no se pide nada a la estructura de la dieta.</translation>
    </message>
    <message>
        <source>A structure rule needs a group, and a whole number of foods at least or at most.</source>
        <translation>Una regla de estructura necesita un grupo, y un número entero de alimentos como mínimo o como máximo.</translation>
    </message>
    <message>
        <source>A share needs a group, and a percentage at least or at most, up to 100.</source>
        <translation>Una cuota necesita un grupo, y un porcentaje como mínimo o como máximo, hasta 100.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RungDetail</name>
    <message>
        <source>Minimum of the target</source>
        <translation>Mínimo del objetivo</translation>
    </message>
    <message>
        <source>Maximum of the target</source>
        <translation>Máximo del objetivo</translation>
    </message>
    <message>
        <source>min</source>
        <translation>mín</translation>
    </message>
    <message>
        <source>max</source>
        <translation>máx</translation>
    </message>
    <message>
        <source>Explore</source>
        <translation>Explorar</translation>
    </message>
    <message>
        <source>Moves the bound over a range and shows what has to give (Ctrl+E)</source>
        <translation>Mueve el límite por un intervalo y muestra lo que tiene que ceder (Ctrl+E)</translation>
    </message>
    <message>
        <source>%1: nothing in the bowl</source>
        <translation>%1: nada en el cuenco</translation>
    </message>
    <message>
        <source>“%1” is no number of at least zero: the bound stays.</source>
        <translation>«%1» no es un número desde cero: el límite queda.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SampleForm</name>
    <message>
        <source>Remove this sample</source>
        <translation>Quitar esta muestra</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>De dónde viene</translation>
    </message>
    <message>
        <source>Origin</source>
        <translation>Origen</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>report number, or the publication</source>
        <translation>número de informe, o la publicación</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>2026-10-03</source>
        <translation>2026-10-03</translation>
    </message>
    <message>
        <source>Laboratory</source>
        <translation>Laboratorio</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Keep this sample</source>
        <translation>Guardar esta muestra</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Values of the sample</source>
        <translation>Valores de la muestra</translation>
    </message>
    <message>
        <source>A value may be &lt; 0.05, ≥ 33, tr or n.d.; a nutrient may be typed by its tagname (CA) or by the laboratory&apos;s word for it.</source>
        <translation>Un valor puede ser &lt; 0,05, ≥ 33, tr o n.d.; un nutriente se escribe por su código (CA) o por la palabra del laboratorio.</translation>
    </message>
    <message>
        <source>A sample of %1</source>
        <translation>Una muestra de %1</translation>
    </message>
    <message>
        <source>“%1” is no date; write it as 2026-10-03.</source>
        <translation>«%1» no es una fecha; escríbala como 2026-10-03.</translation>
    </message>
    <message>
        <source>A sample needs its source: a number with no origin helps nobody.</source>
        <translation>Una muestra necesita su fuente: un número sin origen no ayuda a nadie.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SampleValuesDelegate</name>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>per 100 g as fed</source>
        <translation>por 100 g en fresco</translation>
    </message>
    <message>
        <source>per kg DM</source>
        <translation>por kg de MS</translation>
    </message>
    <message>
        <source>per 1000 kcal</source>
        <translation>por 1000 kcal</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SampleValuesModel</name>
    <message>
        <source>per kg DM</source>
        <translation>por kg de MS</translation>
    </message>
    <message>
        <source>per 1000 kcal</source>
        <translation>por 1000 kcal</translation>
    </message>
    <message>
        <source>per 100 g as fed</source>
        <translation>por 100 g en fresco</translation>
    </message>
    <message>
        <source>No nutrient is called “%1”.</source>
        <translation>Ningún nutriente se llama «%1».</translation>
    </message>
    <message>
        <source>“%1” is no amount of %2: a number, &lt; 0.05, ≥ 33, tr or n.d.</source>
        <translation>«%1» no es una cantidad de %2: un número, &lt; 0,05, ≥ 33, tr o n.d.</translation>
    </message>
    <message>
        <source>“%1” is no standard deviation of %2.</source>
        <translation>«%1» no es una desviación típica de %2.</translation>
    </message>
    <message>
        <source>n of %1 is a whole number from 1.</source>
        <translation>n de %1 es un número entero desde 1.</translation>
    </message>
    <message>
        <source>%1 stands here twice.</source>
        <translation>%1 está aquí dos veces.</translation>
    </message>
    <message>
        <source>A sample needs at least one value.</source>
        <translation>Una muestra necesita al menos un valor.</translation>
    </message>
    <message>
        <source>type a nutrient…</source>
        <translation>escriba un nutriente…</translation>
    </message>
    <message>
        <source>nutrient</source>
        <translation>nutriente</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>base</translation>
    </message>
    <message>
        <source>SD</source>
        <translation>DT</translation>
    </message>
    <message>
        <source>n</source>
        <translation>n</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ScaleBar</name>
    <message>
        <source>port of the scale</source>
        <translation>puerto de la balanza</translation>
    </message>
    <message>
        <source>Port of the scale</source>
        <translation>Puerto de la balanza</translation>
    </message>
    <message>
        <source>%1 baud</source>
        <translation>%1 baudios</translation>
    </message>
    <message>
        <source>Speed of the port</source>
        <translation>Velocidad del puerto</translation>
    </message>
    <message>
        <source>unit as sent</source>
        <translation>unidad enviada</translation>
    </message>
    <message>
        <source>Unit of a scale that sends none</source>
        <translation>Unidad de una balanza que no envía ninguna</translation>
    </message>
    <message>
        <source>The scale is connected; it has sent nothing yet.</source>
        <translation>La balanza está conectada; aún no ha enviado nada.</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Soltar</translation>
    </message>
    <message>
        <source>Use scale</source>
        <translation>Usar</translation>
    </message>
    <message>
        <source>Scale…</source>
        <translation>Balanza…</translation>
    </message>
    <message>
        <source>Let go of the scale</source>
        <translation>Soltar la balanza</translation>
    </message>
    <message>
        <source>Use the scale</source>
        <translation>Usar la balanza</translation>
    </message>
    <message>
        <source>Choose a scale</source>
        <translation>Elegir una balanza</translation>
    </message>
    <message>
        <source>No scale: weights are typed.</source>
        <translation>Sin balanza: los pesos se escriben.</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>Scale: %1, at rest</source>
        <translation>Balanza: %1, en reposo</translation>
    </message>
    <message>
        <source>Scale: %1, moving</source>
        <translation>Balanza: %1, en movimiento</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ServerDialog</name>
    <message>
        <source>verify-full: encrypted, and the server proves its name</source>
        <translation>verify-full: cifrada, y el servidor prueba su nombre</translation>
    </message>
    <message>
        <source>verify-ca: encrypted, and the server proves whose it is</source>
        <translation>verify-ca: cifrada, y el servidor prueba de quién es</translation>
    </message>
    <message>
        <source>require: encrypted, and the server proves nothing</source>
        <translation>require: cifrada, y el servidor no prueba nada</translation>
    </message>
    <message>
        <source>prefer: encrypted where the server can</source>
        <translation>prefer: cifrada si el servidor puede</translation>
    </message>
    <message>
        <source>allow: encrypted only where the server wants it</source>
        <translation>allow: cifrada solo si el servidor lo quiere</translation>
    </message>
    <message>
        <source>disable: not encrypted</source>
        <translation>disable: sin cifrar</translation>
    </message>
    <message>
        <source>Open a collection on a server</source>
        <translation>Abrir una colección en un servidor</translation>
    </message>
    <message>
        <source>empty: this machine</source>
        <translation>vacío: este equipo</translation>
    </message>
    <message>
        <source>as is usual: verify-full, and on this machine prefer</source>
        <translation>lo habitual: verify-full, y en este equipo prefer</translation>
    </message>
    <message>
        <source>What is still needed</source>
        <translation>Lo que aún falta</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Several desks can share a collection on a PostgreSQL server. Whoever set it up can tell what belongs here. Where the server asks for a password, you are asked for it next; it is kept nowhere.</source>
        <translation>Varios puestos pueden compartir una colección en un servidor PostgreSQL. Quien la instaló sabe qué va aquí. Si el servidor pide una contraseña, se le pregunta a continuación; no se guarda en ninguna parte.</translation>
    </message>
    <message>
        <source>another one</source>
        <translation>otra</translation>
    </message>
    <message>
        <source>&amp;Was open before</source>
        <translation>&amp;Ya abierta antes</translation>
    </message>
    <message>
        <source>Fills in what follows; passwords are not remembered</source>
        <translation>Rellena lo que sigue; las contraseñas no se recuerdan</translation>
    </message>
    <message>
        <source>&amp;Server</source>
        <translation>&amp;Servidor</translation>
    </message>
    <message>
        <source>The name of the machine on which the server runs</source>
        <translation>El nombre del equipo en el que corre el servidor</translation>
    </message>
    <message>
        <source>P&amp;ort</source>
        <translation>Puert&amp;o</translation>
    </message>
    <message>
        <source>5432, where whoever runs the server does not say otherwise</source>
        <translation>5432, si quien lleva el servidor no dice otra cosa</translation>
    </message>
    <message>
        <source>&amp;Database</source>
        <translation>&amp;Base de datos</translation>
    </message>
    <message>
        <source>The server&apos;s name for the collection</source>
        <translation>El nombre que el servidor da a la colección</translation>
    </message>
    <message>
        <source>&amp;Person</source>
        <translation>&amp;Persona</translation>
    </message>
    <message>
        <source>Your name as the server knows you</source>
        <translation>Su nombre tal como lo conoce el servidor</translation>
    </message>
    <message>
        <source>Se&amp;curity</source>
        <translation>Se&amp;guridad</translation>
    </message>
    <message>
        <source>How the way to the server is guarded (sslmode); less than verify-full is for networks that are nobody else&apos;s</source>
        <translation>Cómo se protege el camino al servidor (sslmode); menos que verify-full es para redes en las que no hay nadie más</translation>
    </message>
    <message>
        <source>The name of the database is still needed.</source>
        <translation>Aún falta el nombre de la base de datos.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SheetSide</name>
    <message>
        <source>The sheet beside the bowls</source>
        <translation>La hoja junto a los cuencos</translation>
    </message>
    <message>
        <source>The kitchen needs</source>
        <translation>La cocina necesita</translation>
    </message>
    <message>
        <source>Out of the freezer today, for tomorrow</source>
        <translation>Sacar hoy del congelador, para mañana</translation>
    </message>
    <message>
        <source>Feed well today: live food of tomorrow</source>
        <translation>Alimentar bien hoy: alimento vivo de mañana</translation>
    </message>
    <message>
        <source>No bowl</source>
        <translation>Sin cuenco</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Advertencias</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Siempre</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SoughtButton</name>
    <message>
        <source>Closest to now</source>
        <translation>Lo más cerca de ahora</translation>
    </message>
    <message>
        <source>Lowest cost</source>
        <translation>Menor coste</translation>
    </message>
    <message>
        <source>Fewest foods</source>
        <translation>Menos alimentos</translation>
    </message>
    <message>
        <source>Least %1</source>
        <translation>Lo menos de %1</translation>
    </message>
    <message>
        <source>Most %1</source>
        <translation>Lo más de %1</translation>
    </message>
    <message>
        <source>What is sought among the bowls that come nearest to the targets</source>
        <translation>Lo que se busca entre los cuencos más cercanos a los objetivos</translation>
    </message>
    <message>
        <source>What is sought: %1</source>
        <translation>Lo que se busca: %1</translation>
    </message>
    <message>
        <source>Least of</source>
        <translation>Lo menos de</translation>
    </message>
    <message>
        <source>Most of</source>
        <translation>Lo más de</translation>
    </message>
    <message>
        <source>Without a target</source>
        <translation>Sin objetivo</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SpeciesPane</name>
    <message>
        <source>The species</source>
        <translation>La especie</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Scientific name</source>
        <translation>Nombre científico</translation>
    </message>
    <message>
        <source>Feeding type</source>
        <translation>Tipo de alimentación</translation>
    </message>
    <message>
        <source>Belongs to</source>
        <translation>Pertenece a</translation>
    </message>
    <message>
        <source>mammal, primate, lemur: the widest first</source>
        <translation>mammal, primate, lemur: lo más amplio primero</translation>
    </message>
    <message>
        <source>Cautions, model species and energy choices go by these words</source>
        <translation>Advertencias, especies modelo y opciones de energía van según estas palabras</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::StandingBar</name>
    <message>
        <source>%1 version %2</source>
        <translation>%1 versión %2</translation>
    </message>
    <message>
        <source>This diet has no targets: only the energy need is judged. Give the group a target profile in the Animals room.</source>
        <translation>Esta dieta no tiene objetivos: solo se juzga la necesidad de energía. Dé al grupo un perfil de objetivos en la sala Animales.</translation>
    </message>
    <message>
        <source>What was decided on cannot be read any more: shown is what the collection holds now.</source>
        <translation>Aquello sobre lo que se decidió ya no se puede leer: se muestra lo que la colección contiene ahora.</translation>
    </message>
    <message>
        <source>The group is now fed by the targets %1; this version is judged by %2.</source>
        <translation>El grupo se alimenta ahora según los objetivos %1; esta versión se juzga según %2.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>Not in the collection any more, and not counted: %1.</source>
        <translation>Ya no está en la colección, y no se cuenta: %1.</translation>
    </message>
    <message>
        <source>Since it was approved these foods have other values: %1. What is shown is what was decided on.</source>
        <translation>Desde que se aprobó, estos alimentos tienen otros valores: %1. Se muestra aquello sobre lo que se decidió.</translation>
    </message>
    <message>
        <source>Its own bounds on these rules hold for nothing, since the targets no longer state them: %1.</source>
        <translation>Sus propios límites en estas reglas no valen para nada, pues los objetivos ya no las indican: %1.</translation>
    </message>
    <message>
        <source>Hard rules that this diet would loosen without saying why stay in force: %1.</source>
        <translation>Las reglas firmes que esta dieta relajaría sin decir por qué siguen vigentes: %1.</translation>
    </message>
    <message>
        <source>Judge by the newer targets</source>
        <translation>Juzgar según los objetivos más nuevos</translation>
    </message>
    <message>
        <source>Show theirs</source>
        <translation>Mostrar lo suyo</translation>
    </message>
    <message>
        <source>Keep mine as a draft of its own</source>
        <translation>Guardar lo mío como borrador aparte</translation>
    </message>
    <message>
        <source>What changed since this version was written</source>
        <translation>Lo que cambió desde que se escribió esta versión</translation>
    </message>
    <message>
        <source>Another window changed this diet while you did. Nothing of yours was written yet.</source>
        <translation>Otra ventana cambió esta dieta mientras usted lo hacía. Aún no se escribió nada suyo.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::StartPage</name>
    <message>
        <source>A collection keeps your foods, animals, diets and feeding days in one file, and where each number comes from.</source>
        <translation>Una colección guarda sus alimentos, animales, dietas y días de alimentación en un archivo, y de dónde viene cada número.</translation>
    </message>
    <message>
        <source>Open the invented sample</source>
        <translation>Abrir el ejemplo inventado</translation>
    </message>
    <message>
        <source>The Brackenmere Animal Gardens, which do not exist: foods, animals, diets and four months of feeding. To look around and try things; Help at the foot of the rail leads through it.</source>
        <translation>Los Brackenmere Animal Gardens, que no existen: alimentos, animales, dietas y cuatro meses de alimentación. Para mirar y probar; Ayuda, al pie de la barra, lleva por ello.</translation>
    </message>
    <message>
        <source>Import a table…</source>
        <translation>Importar una tabla…</translation>
    </message>
    <message>
        <source>A laboratory&apos;s or publisher&apos;s table of foods (CSV, XLSX). It asks where the new collection is to be kept, and shows line by line what will happen before anything is written.</source>
        <translation>Una tabla de alimentos de un laboratorio o editorial (CSV, XLSX). Pregunta dónde guardar la colección nueva y muestra línea por línea lo que pasará antes de escribir nada.</translation>
    </message>
    <message>
        <source>Start empty…</source>
        <translation>Empezar en vacío…</translation>
    </message>
    <message>
        <source>A new collection file, to which foods, animals and diets are added one by one. Each room says what to do first.</source>
        <translation>Un archivo de colección nuevo, al que se añaden alimentos, animales y dietas uno a uno. Cada sala dice qué hacer primero.</translation>
    </message>
    <message>
        <source>Or open a collection that is there already…</source>
        <translation>O abrir una colección que ya existe…</translation>
    </message>
    <message>
        <source>Open a collection that is there already</source>
        <translation>Abrir una colección que ya existe</translation>
    </message>
    <message>
        <source>Or one on a server, which several desks share…</source>
        <translation>O una en un servidor, que comparten varios puestos…</translation>
    </message>
    <message>
        <source>Open a collection on a server</source>
        <translation>Abrir una colección en un servidor</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::StatusLine</name>
    <message>
        <source>Energy in</source>
        <translation>Energía en</translation>
    </message>
    <message>
        <source>kcal</source>
        <translation>kcal</translation>
    </message>
    <message>
        <source>kJ</source>
        <translation>kJ</translation>
    </message>
    <message>
        <source>Saved state</source>
        <translation>Estado de guardado</translation>
    </message>
    <message>
        <source>Units in force</source>
        <translation>Unidades vigentes</translation>
    </message>
    <message>
        <source>Collection</source>
        <translation>Colección</translation>
    </message>
    <message>
        <source>What the room does</source>
        <translation>Lo que hace la sala</translation>
    </message>
    <message>
        <source>Who is at the keyboard</source>
        <translation>Quién está al teclado</translation>
    </message>
    <message>
        <source>Who is at the keyboard: every change is kept under this name</source>
        <translation>Quién está al teclado: cada cambio se guarda con este nombre</translation>
    </message>
    <message>
        <source>who is at the keyboard?</source>
        <translation>¿quién está al teclado?</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::StudyPage</name>
    <message>
        <source>Plan…</source>
        <translation>Plan…</translation>
    </message>
    <message>
        <source>Report…</source>
        <translation>Informe…</translation>
    </message>
    <message>
        <source>What is to be known</source>
        <translation>Lo que se quiere saber</translation>
    </message>
    <message>
        <source>Half of the interval, in percent of the mean</source>
        <translation>La mitad del intervalo, en tanto por ciento de la media</translation>
    </message>
    <message>
        <source>Confidence</source>
        <translation>Confianza</translation>
    </message>
    <message>
        <source>%1 % confidence</source>
        <translation>%1 % de confianza</translation>
    </message>
    <message>
        <source>First day of the study</source>
        <translation>Primer día del estudio</translation>
    </message>
    <message>
        <source>The plan as a page for the kitchen: PDF or HTML</source>
        <translation>El plan como página para la cocina: PDF o HTML</translation>
    </message>
    <message>
        <source>The report of these days, once they are over: PDF, XLSX or HTML</source>
        <translation>El informe de estos días, cuando hayan pasado: PDF, XLSX o HTML</translation>
    </message>
    <message>
        <source>Mean of</source>
        <translation>Media de</translation>
    </message>
    <message>
        <source>from</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>Plan a study: how many days, by how the group&apos;s own days differ from each other</source>
        <translation>Planificar un estudio: cuántos días, según cuánto difieren entre sí los días del propio grupo</translation>
    </message>
    <message>
        <source>Days of the study</source>
        <translation>Días del estudio</translation>
    </message>
    <message>
        <source>Why so many days, and what is done on each</source>
        <translation>Por qué tantos días, y qué se hace en cada uno</translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>El plan</translation>
    </message>
    <message>
        <source>all food, g as fed</source>
        <translation>toda la comida, g en fresco</translation>
    </message>
    <message>
        <source>No group has a bowl yet</source>
        <translation>Ningún grupo tiene aún un cuenco</translation>
    </message>
    <message>
        <source>? No plan</source>
        <translation>? Sin plan</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SubjectBox</name>
    <message>
        <source>What is followed over time</source>
        <translation>Lo que se sigue en el tiempo</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, a day and animal</source>
        <translation>%1, por día y animal</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SureButton</name>
    <message>
        <source>How sure each target has to hold, in view of the scatter of the foods&apos; values</source>
        <translation>Con qué seguridad debe cumplirse cada objetivo, en vista de la dispersión de los valores de los alimentos</translation>
    </message>
    <message>
        <source>%1 sure</source>
        <translation>%1 seguro</translation>
    </message>
    <message>
        <source>As measured</source>
        <translation>Como se midió</translation>
    </message>
    <message>
        <source>How sure: %1</source>
        <translation>Seguridad: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SwapEntry</name>
    <message>
        <source>instead of %1: %2 %3 (the diet itself is as it was)</source>
        <translation>en lugar de %1: %2 de %3 (la dieta misma sigue como estaba)</translation>
    </message>
    <message>
        <source>This diet gives nothing of it: nothing is missing.</source>
        <translation>Esta dieta no da nada de esto: no falta nada.</translation>
    </message>
    <message>
        <source>Open a collection first: its foods are what there is.</source>
        <translation>Abra antes una colección: sus alimentos son lo que hay.</translation>
    </message>
    <message>
        <source>Reading what is on hand…</source>
        <translation>Leyendo lo que hay…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SwapModel</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2. %3. %4.</source>
        <translation>%1 %2. %3. %4.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SwapPane</name>
    <message>
        <source>What stays near the approved bowl (O)</source>
        <translation>Lo que queda cerca del cuenco aprobado (O)</translation>
    </message>
    <message>
        <source>as offered</source>
        <translation>como se ofrece</translation>
    </message>
    <message>
        <source>as eaten  (O)</source>
        <translation>como se come  (O)</translation>
    </message>
    <message>
        <source>Use this  (Enter)</source>
        <translation>Usar este  (Intro)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation>Atrás  (Esc)</translation>
    </message>
    <message>
        <source>Not available</source>
        <translation>No disponible</translation>
    </message>
    <message>
        <source>What to give instead</source>
        <translation>Qué dar en su lugar</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Lo que falta</translation>
    </message>
    <message>
        <source>Amounts as they go into the bowl (O)</source>
        <translation>Cantidades como van al cuenco (O)</translation>
    </message>
    <message>
        <source>By what this group ate of each food in eight weeks (O)</source>
        <translation>Según lo que este grupo comió de cada alimento en ocho semanas (O)</translation>
    </message>
    <message>
        <source>How far the search is</source>
        <translation>Hasta dónde va la búsqueda</translation>
    </message>
    <message>
        <source>Looking at what is on hand…</source>
        <translation>Mirando lo que hay…</translation>
    </message>
    <message>
        <source>Nothing on hand will do. Ask the nutritionist.</source>
        <translation>Nada de lo que hay sirve. Pregunte al nutricionista.</translation>
    </message>
    <message>
        <source>The nearest first, by what is eaten of each food; one that nobody knows counts as eaten whole. Choose by arrows or number.</source>
        <translation>El más parecido primero, según lo que se come de cada alimento; uno que nadie conoce cuenta como comido entero. Elija con flechas o número.</translation>
    </message>
    <message>
        <source>The nearest first. Choose by arrows or number.</source>
        <translation>El más parecido primero. Elija con flechas o número.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TargetsCard</name>
    <message>
        <source>○ draft</source>
        <translation>○ borrador</translation>
    </message>
    <message>
        <source>◐ from %1</source>
        <translation>◐ desde el %1</translation>
    </message>
    <message>
        <source>● in force since %1</source>
        <translation>● en vigor desde el %1</translation>
    </message>
    <message>
        <source>◌ replaced</source>
        <translation>◌ sustituido</translation>
    </message>
    <message>
        <source>◌ retired</source>
        <translation>◌ retirado</translation>
    </message>
    <message>
        <source>Decided because: %1</source>
        <translation>Decidido porque: %1</translation>
    </message>
    <message>
        <source>Decided by %1: %2</source>
        <translation>Decidido por %1: %2</translation>
    </message>
    <message>
        <source>Derives from %1.</source>
        <translation>Deriva de %1.</translation>
    </message>
    <message>
        <source>Model species: %1.</source>
        <translation>Especie modelo: %1.</translation>
    </message>
    <message>
        <source>Model species: %1, because: %2</source>
        <translation>Especie modelo: %1, porque: %2</translation>
    </message>
    <message>
        <source>Its numbers presume %1 kcal per g of dry matter.</source>
        <translation>Sus números suponen %1 kcal por g de materia seca.</translation>
    </message>
    <message>
        <source>It came with the program and is derived from, not edited.</source>
        <translation>Vino con el programa; de él se deriva, no se edita.</translation>
    </message>
    <message>
        <source>This profile derives from itself: %1.</source>
        <translation>Este perfil deriva de sí mismo: %1.</translation>
    </message>
    <message>
        <source>%1 derives from %2, which is not in the collection.</source>
        <translation>%1 deriva de %2, que no está en la colección.</translation>
    </message>
    <message>
        <source>Put in force…</source>
        <translation>Poner en vigor…</translation>
    </message>
    <message>
        <source>Throw the draft away</source>
        <translation>Desechar el borrador</translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Objetivos</translation>
    </message>
    <message>
        <source>Profile that the group is fed by</source>
        <translation>Perfil según el que se alimenta el grupo</translation>
    </message>
    <message>
        <source>Version of the profile</source>
        <translation>Versión del perfil</translation>
    </message>
    <message>
        <source>From today on this version holds in place of the one before it</source>
        <translation>Desde hoy esta versión vale en lugar de la anterior</translation>
    </message>
    <message>
        <source>no profile chosen</source>
        <translation>ningún perfil elegido</translation>
    </message>
    <message>
        <source>version %1 · %2</source>
        <translation>versión %1 · %2</translation>
    </message>
    <message>
        <source>No target profile is chosen for this group. Choose one above, or start from a model species: what is published for it stands in until there is something better, and limits are set on top of it.</source>
        <translation>No hay perfil de objetivos elegido para este grupo. Elija uno arriba, o empiece desde una especie modelo: lo publicado para ella sirve hasta que haya algo mejor, y encima se ponen límites.</translation>
    </message>
    <message>
        <source>Version %1 holds from today on. Why?</source>
        <translation>La versión %1 vale desde hoy. ¿Por qué?</translation>
    </message>
    <message>
        <source>Put in force</source>
        <translation>Poner en vigor</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TargetsLadder</name>
    <message>
        <source>Targets of the profile</source>
        <translation>Objetivos del perfil</translation>
    </message>
    <message>
        <source>Take out…</source>
        <translation>Quitar…</translation>
    </message>
    <message>
        <source>About the chosen target</source>
        <translation>Sobre el objetivo elegido</translation>
    </message>
    <message>
        <source>add a target</source>
        <translation>añadir un objetivo</translation>
    </message>
    <message>
        <source>leave %1 out</source>
        <translation>excluir %1</translation>
    </message>
    <message>
        <source>Only wish it</source>
        <translation>Solo desearlo</translation>
    </message>
    <message>
        <source>It must hold</source>
        <translation>Debe cumplirse</translation>
    </message>
    <message>
        <source>Take over again</source>
        <translation>Volver a tomar</translation>
    </message>
    <message>
        <source>wish %1</source>
        <translation>desear %1</translation>
    </message>
    <message>
        <source>make %1 hold</source>
        <translation>exigir %1</translation>
    </message>
    <message>
        <source>take a rule over again</source>
        <translation>volver a tomar una regla</translation>
    </message>
    <message>
        <source>Take “%1” out of this profile?</source>
        <translation>¿Quitar «%1» de este perfil?</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>take %1 out</source>
        <translation>quitar %1</translation>
    </message>
    <message>
        <source>The maximum of “%1” protects from harm. Why may it be lifted? Ask the vet first.</source>
        <translation>El máximo de «%1» protege de un daño. ¿Por qué puede levantarse? Pregunte antes al veterinario.</translation>
    </message>
    <message>
        <source>Lift the limit</source>
        <translation>Levantar el límite</translation>
    </message>
    <message>
        <source>lift the limit of %1</source>
        <translation>levantar el límite de %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TargetsModel</name>
    <message>
        <source>◇ limit lifted</source>
        <translation>◇ límite levantado</translation>
    </message>
    <message>
        <source>■ safe limit</source>
        <translation>■ límite seguro</translation>
    </message>
    <message>
        <source>■ must hold</source>
        <translation>■ debe cumplirse</translation>
    </message>
    <message>
        <source>○ wished</source>
        <translation>○ deseado</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 a %2 %3</translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation>al menos %1 %2</translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation>como máximo %1 %2</translation>
    </message>
    <message>
        <source>target</source>
        <translation>objetivo</translation>
    </message>
    <message>
        <source>min</source>
        <translation>mín</translation>
    </message>
    <message>
        <source>preferred</source>
        <translation>preferido</translation>
    </message>
    <message>
        <source>max</source>
        <translation>máx</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>zona</translation>
    </message>
    <message>
        <source>must</source>
        <translation>debe</translation>
    </message>
    <message>
        <source>known how</source>
        <translation>cómo se sabe</translation>
    </message>
    <message>
        <source>stated in</source>
        <translation>indicado en</translation>
    </message>
    <message>
        <source>%1, not %2</source>
        <translation>%1, no %2</translation>
    </message>
    <message>
        <source>preferred %1</source>
        <translation>preferido %1</translation>
    </message>
    <message>
        <source>model species: %1</source>
        <translation>especie modelo: %1</translation>
    </message>
    <message>
        <source>lifted by %1 on %2: %3</source>
        <translation>levantado por %1 el %2: %3</translation>
    </message>
    <message>
        <source>stated in %1</source>
        <translation>indicado en %1</translation>
    </message>
    <message>
        <source> in place of %1</source>
        <translation> en lugar de %1</translation>
    </message>
    <message>
        <source>“%1” is no number.</source>
        <translation>«%1» no es un número.</translation>
    </message>
    <message>
        <source>%1 is a safe upper limit: it is made soft or dropped with a reason, not left blank.</source>
        <translation>%1 es un límite superior seguro: se relaja o se quita con un motivo, no se deja en blanco.</translation>
    </message>
    <message>
        <source>%1: the minimum may not lie above the maximum, and the preferred value lies between them.</source>
        <translation>%1: el mínimo no puede estar por encima del máximo, y el valor preferido está entre ellos.</translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>cambiar %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TodayRoom</name>
    <message>
        <source>Write down what was seen…</source>
        <translation>Anotar lo que se vio…</translation>
    </message>
    <message>
        <source>What is due today</source>
        <translation>Lo que hay que hacer hoy</translation>
    </message>
    <message>
        <source>What is due: bowls to prepare and weigh, leftovers to weigh, control pans that still stand, swaps and diets that wait for a decision. It is read from the diets in force on this day and from what the kitchen wrote down; a row leads to where it is done.</source>
        <translation>Lo que hay que hacer: cuencos por preparar y pesar, sobras por pesar, cuencos de control que siguen puestos, cambios y dietas que esperan una decisión. Se lee de las dietas vigentes ese día y de lo que anotó la cocina; una fila lleva a donde se hace.</translation>
    </message>
    <message>
        <source>Faeces, appetite, a limp, a treatment … of an animal or a group</source>
        <translation>Heces, apetito, cojera, un tratamiento … de un animal o un grupo</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Leyendo…</translation>
    </message>
    <message>
        <source>No collection is open.</source>
        <translation>No hay ninguna colección abierta.</translation>
    </message>
    <message>
        <source>Refuse this swap: why?</source>
        <translation>Rechazar este cambio: ¿por qué?</translation>
    </message>
    <message>
        <source>Refuse</source>
        <translation>Rechazar</translation>
    </message>
    <message>
        <source>Approve it</source>
        <translation>Aprobarlo</translation>
    </message>
    <message>
        <source>g as fed, of the whole bowl</source>
        <translation>g en fresco, de todo el cuenco</translation>
    </message>
    <message>
        <source>section</source>
        <translation>sección</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ToleranceBar</name>
    <message>
        <source>Tolerance: %1</source>
        <translation>Tolerancia: %1</translation>
    </message>
    <message>
        <source>Tolerance: no weight yet</source>
        <translation>Tolerancia: aún sin peso</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ToleranceForm</name>
    <message>
        <source> steps of the scale</source>
        <translation> divisiones de la balanza</translation>
    </message>
    <message>
        <source> % of the bowl</source>
        <translation> % del cuenco</translation>
    </message>
    <message>
        <source> % of body mass</source>
        <translation> % del peso vivo</translation>
    </message>
    <message>
        <source>How far a weight may lie from the plan: the rule of this house</source>
        <translation>Cuánto puede apartarse un peso de lo previsto: la regla de esta casa</translation>
    </message>
    <message>
        <source>Always allowed</source>
        <translation>Siempre permitido</translation>
    </message>
    <message>
        <source>and up to the least of</source>
        <translation>y hasta lo menor de</translation>
    </message>
    <message>
        <source>and</source>
        <translation>y</translation>
    </message>
    <message>
        <source>and, where it is known,</source>
        <translation>y, donde se conoce,</translation>
    </message>
    <message>
        <source>Keep the rule</source>
        <translation>Guardar la regla</translation>
    </message>
    <message>
        <source>As it is by default</source>
        <translation>Como viene de serie</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>%1 in this bowl: ± %2 g</source>
        <translation>%1 en este cuenco: ± %2 g</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TraceChart</name>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>0</source>
        <translation>0</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ValueChart</name>
    <message>
        <source>offered</source>
        <translation>ofrecido</translation>
    </message>
    <message>
        <source>eaten ± its uncertainty</source>
        <translation>comido ± su incertidumbre</translation>
    </message>
    <message>
        <source>eaten %1 ± %2 %3</source>
        <translation>comido %1 ± %2 %3</translation>
    </message>
    <message>
        <source>offered %1 %2</source>
        <translation>ofrecido %1 %2</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::VersionBar</name>
    <message>
        <source>Send back…</source>
        <translation>Devolver…</translation>
    </message>
    <message>
        <source>New version</source>
        <translation>Versión nueva</translation>
    </message>
    <message>
        <source>What became of this version</source>
        <translation>Lo que fue de esta versión</translation>
    </message>
    <message>
        <source>Begins a draft from what is on the desk (Ctrl+N)</source>
        <translation>Inicia un borrador con lo que está en la mesa (Ctrl+N)</translation>
    </message>
    <message>
        <source>More ▾</source>
        <translation>Más ▾</translation>
    </message>
    <message>
        <source>More about this version</source>
        <translation>Más sobre esta versión</translation>
    </message>
    <message>
        <source> · counted as eaten, as learned of %1 of its foods</source>
        <translation> · contada como se come, según lo aprendido de %1 de sus alimentos</translation>
    </message>
    <message>
        <source>Submit…</source>
        <translation>Presentar…</translation>
    </message>
    <message>
        <source>Approve…</source>
        <translation>Aprobar…</translation>
    </message>
    <message>
        <source>Retire…</source>
        <translation>Retirar…</translation>
    </message>
    <message>
        <source>version %1, %2</source>
        <translation>versión %1, %2</translation>
    </message>
    <message>
        <source>Compare with version %1</source>
        <translation>Comparar con la versión %1</translation>
    </message>
    <message>
        <source>Count what is eaten of it</source>
        <translation>Contar lo que se come de ella</translation>
    </message>
    <message>
        <source>Targets are judged and solved by what the group ate of each food in eight weeks</source>
        <translation>Los objetivos se juzgan y resuelven según lo que el grupo comió de cada alimento en ocho semanas</translation>
    </message>
    <message>
        <source>Diet sheet…</source>
        <translation>Hoja de la dieta…</translation>
    </message>
    <message>
        <source>Remove this draft</source>
        <translation>Quitar este borrador</translation>
    </message>
    <message>
        <source>Submit this version for approval. While it waits nothing of it is edited.</source>
        <translation>Presentar esta versión para su aprobación. Mientras espera, no se cambia nada en ella.</translation>
    </message>
    <message>
        <source>Submit</source>
        <translation>Presentar</translation>
    </message>
    <message>
        <source>Retire this version: it is no longer fed, and is kept for the record.</source>
        <translation>Retirar esta versión: ya no se da, y se guarda para el registro.</translation>
    </message>
    <message>
        <source>Retire</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>Send this version back to be worked on.</source>
        <translation>Devolver esta versión para trabajar en ella.</translation>
    </message>
    <message>
        <source>Send back</source>
        <translation>Devolver</translation>
    </message>
    <message>
        <source>On the desk: %1</source>
        <translation>En la mesa: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::VersionComparison</name>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>Energy, kcal ME a day</source>
        <translation>Energía, kcal EM al día</translation>
    </message>
    <message>
        <source>Cost a day</source>
        <translation>Coste al día</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>versión %1</translation>
    </message>
    <message>
        <source>change</source>
        <translation>cambio</translation>
    </message>
    <message>
        <source>per animal a day</source>
        <translation>por animal y día</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::VersionDocument</name>
    <message>
        <source>This version is no longer in the collection.</source>
        <translation>Esta versión ya no está en la colección.</translation>
    </message>
    <message>
        <source>Another window changed this diet: it is shown as it is now.</source>
        <translation>Otra ventana cambió esta dieta: se muestra como está ahora.</translation>
    </message>
    <message>
        <source>Foods or targets of this diet changed meanwhile: the balance is worked out anew, and no gram was moved.</source>
        <translation>Mientras tanto cambiaron alimentos u objetivos de esta dieta: el balance se calcula de nuevo, y no se movió ningún gramo.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::WaitingBar</name>
    <message>
        <source>What waits…</source>
        <translation>Qué espera…</translation>
    </message>
    <message>
        <source>What waits for the server</source>
        <translation>Lo que espera al servidor</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Cuenco</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Yours</source>
        <translation>Propia</translation>
    </message>
    <message>
        <source>On the server</source>
        <translation>En el servidor</translation>
    </message>
    <message>
        <source>Written by</source>
        <translation>Anotado por</translation>
    </message>
    <message>
        <source>Yours counts</source>
        <translation>Cuenta la propia</translation>
    </message>
    <message>
        <source>Theirs counts</source>
        <translation>Cuenta la otra</translation>
    </message>
    <message>
        <source>The server, and what waits for it</source>
        <translation>El servidor, y lo que le espera</translation>
    </message>
    <message>
        <source>The entry that is chosen</source>
        <translation>La anotación elegida</translation>
    </message>
    <message>
        <source>The entries that the server does not have yet</source>
        <translation>Las anotaciones que el servidor aún no tiene</translation>
    </message>
    <message>
        <source>What this desk wrote down goes before what the server has; both stay</source>
        <translation>Lo que anotó este puesto va antes que lo que tiene el servidor; ambos quedan</translation>
    </message>
    <message>
        <source>What the server has goes on counting; what this desk wrote down is kept</source>
        <translation>Lo que tiene el servidor sigue contando; lo que anotó este puesto se guarda</translation>
    </message>
    <message>
        <source>weighed while this desk was cut off from the server</source>
        <translation>pesado mientras este puesto estaba sin servidor</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::WeighPane</name>
    <message>
        <source>Somebody weighed this in before: both weights are kept, and the first one counts until it is corrected.</source>
        <translation>Alguien ya lo pesó: se guardan ambos pesos, y el primero cuenta hasta que se corrija.</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>En la balanza</translation>
    </message>
    <message>
        <source>Weight in g</source>
        <translation>Peso en g</translation>
    </message>
    <message>
        <source>Not available  *</source>
        <translation>No disponible  *</translation>
    </message>
    <message>
        <source>Not available: what to give instead</source>
        <translation>No disponible: qué dar en su lugar</translation>
    </message>
    <message>
        <source>What to give instead (key *)</source>
        <translation>Qué dar en su lugar (tecla *)</translation>
    </message>
    <message>
        <source>The lot that the house feeds this food from (key L)</source>
        <translation>El lote del que la casa da este alimento (tecla L)</translation>
    </message>
    <message>
        <source>A new lot, as the box names it</source>
        <translation>Un lote nuevo, como lo nombra la caja</translation>
    </message>
    <message>
        <source>A new lot from this day on: what does the box say? Enter keeps it</source>
        <translation>Un lote nuevo desde este día: ¿qué dice la caja? Intro lo guarda</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>Reading the sheet…</source>
        <translation>Leyendo la hoja…</translation>
    </message>
    <message>
        <source>Nothing to weigh on this sheet.</source>
        <translation>Nada que pesar en esta hoja.</translation>
    </message>
    <message>
        <source>L  lot %1</source>
        <translation>L  lote %1</translation>
    </message>
    <message>
        <source>L  lot ?</source>
        <translation>L  lote ?</translation>
    </message>
    <message>
        <source>Nobody named the lot</source>
        <translation>Nadie nombró el lote</translation>
    </message>
    <message>
        <source>%1 ± %2 g%3</source>
        <translation>%1 ± %2 g%3</translation>
    </message>
    <message>
        <source>“%1” is no weight: type grams, such as 20.5.</source>
        <translation>«%1» no es un peso: escriba gramos, como 20,5.</translation>
    </message>
    <message>
        <source>%1 g instead of %2 g: why? Both are kept.</source>
        <translation>%1 g en lugar de %2 g: ¿por qué? Se guardan ambos.</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>%1, %2, of %3</source>
        <translation>%1, %2, de %3</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::WhyCard</name>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Razones</translation>
    </message>
    <message>
        <source>What would settle it (each can be tried, and undo takes it back):</source>
        <translation>Lo que lo resolvería (cada uno se puede probar, y Deshacer lo quita):</translation>
    </message>
    <message>
        <source>Try: %1, %2</source>
        <translation>Probar: %1, %2</translation>
    </message>
    <message>
        <source>Tries it on the diet (Ctrl+T); Ctrl+Z takes it back</source>
        <translation>Lo prueba en la dieta (Ctrl+T); Ctrl+Z lo deshace</translation>
    </message>
    <message>
        <source>Tries it on the diet; Ctrl+Z takes it back</source>
        <translation>Lo prueba en la dieta; Ctrl+Z lo deshace</translation>
    </message>
    <message>
        <source>Notes: %1</source>
        <translation>Notas: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::YesterdayPage</name>
    <message>
        <source>No bowl was put on this sheet.</source>
        <translation>No se puso ningún cuenco en esta hoja.</translation>
    </message>
    <message>
        <source>Filled in: all %1</source>
        <translation>Rellenado: los %1</translation>
    </message>
    <message>
        <source>Still to be filled in: %1 of %2</source>
        <translation>Aún por rellenar: %1 de %2</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SetUpDialog</name>
    <message>
        <source>Set up a collection on the server</source>
        <translation>Preparar una colección en el servidor</translation>
    </message>
    <message>
        <source>The database at %1 holds no collection yet. One can be set up in it: empty, with the tables it needs and with roles, by which the database itself holds people to what they may do.</source>
        <translation>La base de datos en %1 no contiene todavía ninguna colección. Se puede preparar una en ella: vacía, con las tablas que necesita y con funciones, por las que la propia base de datos limita a cada persona a lo que puede hacer.</translation>
    </message>
    <message>
        <source>reader</source>
        <translation>reader (lectura)</translation>
    </message>
    <message>
        <source>reads everything, writes nothing</source>
        <translation>lee todo, no escribe nada</translation>
    </message>
    <message>
        <source>keeper</source>
        <translation>keeper (cuidado)</translation>
    </message>
    <message>
        <source>weighs in and out, swaps foods, weighs animals, notes what is seen</source>
        <translation>pesa lo servido y lo que queda, cambia alimentos, pesa animales, anota lo que se ve</translation>
    </message>
    <message>
        <source>vet</source>
        <translation>vet (veterinaria)</translation>
    </message>
    <message>
        <source>animals and their masses, observations, blood and faeces</source>
        <translation>animales y sus masas, observaciones, sangre y heces</translation>
    </message>
    <message>
        <source>nutritionist</source>
        <translation>nutritionist (nutrición)</translation>
    </message>
    <message>
        <source>foods, targets, diets and their approval, and all that the kitchen does</source>
        <translation>alimentos, objetivos, dietas y su aprobación, y todo lo que hace la cocina</translation>
    </message>
    <message>
        <source>curator</source>
        <translation>curator (dirección)</translation>
    </message>
    <message>
        <source>animals and groups, decisions on diets and swaps</source>
        <translation>animales y grupos, decisiones sobre dietas y cambios</translation>
    </message>
    <message>
        <source>You, who set it up, own it and may do everything. Nobody else may open it until you let them in. What stands in the database beside it is left alone.</source>
        <translation>Usted, que la prepara, es su dueño y puede hacer todo. Nadie más puede abrirla hasta que usted le deje entrar. Lo que hay además en la base de datos no se toca.</translation>
    </message>
    <message>
        <source>Set up the collection here</source>
        <translation>Preparar la colección aquí</translation>
    </message>
    <message>
        <source>Makes tables and roles in the database, in one step: all of it or nothing</source>
        <translation>Crea tablas y funciones en la base de datos, en un solo paso: todo o nada</translation>
    </message>
</context>
</TS>
