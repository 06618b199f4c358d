<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Animals</name>
    <message>
        <source>%1 · species</source>
        <translation>%1 · espèce</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 an</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 ans</translation>
    </message>
    <message>
        <source>1 month</source>
        <translation>1 mois</translation>
    </message>
    <message>
        <source>%1 months</source>
        <translation>%1 mois</translation>
    </message>
    <message>
        <source>female</source>
        <translation>femelle</translation>
    </message>
    <message>
        <source>male</source>
        <translation>mâle</translation>
    </message>
    <message>
        <source>sex unknown</source>
        <translation>sexe inconnu</translation>
    </message>
    <message>
        <source>unweaned</source>
        <translation>non sevré</translation>
    </message>
    <message>
        <source>growing</source>
        <translation>en croissance</translation>
    </message>
    <message>
        <source>adult</source>
        <translation>adulte</translation>
    </message>
    <message>
        <source>pregnant</source>
        <translation>gestante</translation>
    </message>
    <message>
        <source>lactating</source>
        <translation>allaitante</translation>
    </message>
    <message>
        <source>senior</source>
        <translation>âgé</translation>
    </message>
    <message>
        <source>carnivore</source>
        <translation>carnivore</translation>
    </message>
    <message>
        <source>piscivore: fish</source>
        <translation>piscivore&#xa0;: poissons</translation>
    </message>
    <message>
        <source>insectivore: insects</source>
        <translation>insectivore&#xa0;: insectes</translation>
    </message>
    <message>
        <source>omnivore</source>
        <translation>omnivore</translation>
    </message>
    <message>
        <source>frugivore: fruit</source>
        <translation>frugivore&#xa0;: fruits</translation>
    </message>
    <message>
        <source>nectarivore: nectar</source>
        <translation>nectarivore&#xa0;: nectar</translation>
    </message>
    <message>
        <source>folivore: leaves</source>
        <translation>folivore&#xa0;: feuilles</translation>
    </message>
    <message>
        <source>grazer: grass</source>
        <translation>herbivore&#xa0;: herbe</translation>
    </message>
    <message>
        <source>granivore: seeds</source>
        <translation>granivore&#xa0;: graines</translation>
    </message>
    <message>
        <source>on a scale</source>
        <translation>sur une balance</translation>
    </message>
    <message>
        <source>steps on a scale</source>
        <translation>monte sur une balance</translation>
    </message>
    <message>
        <source>carried, difference</source>
        <translation>porté, par différence</translation>
    </message>
    <message>
        <source>under anaesthesia</source>
        <translation>sous anesthésie</translation>
    </message>
    <message>
        <source>estimated by eye</source>
        <translation>estimé à l’œil</translation>
    </message>
    <message>
        <source>? animals</source>
        <translation>? animaux</translation>
    </message>
    <message>
        <source>1 animal</source>
        <translation>1 animal</translation>
    </message>
    <message>
        <source>%1 animals</source>
        <translation>%1 animaux</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>inventé</translation>
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
        <translation>pas encore né</translation>
    </message>
    <message>
        <source>%1 weeks</source>
        <translation>%1 semaines</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>depuis le %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 au %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source> About %1 was expected.</source>
        <translation> Environ %1 était attendu.</translation>
    </message>
    <message>
        <source>A mass is above 0.</source>
        <translation>Un poids est supérieur à 0.</translation>
    </message>
    <message>
        <source>%1?%2 Were these grams, written as kilograms?</source>
        <translation>%1&#xa0;?%2 Était-ce des grammes, écrits comme kilogrammes&#xa0;?</translation>
    </message>
    <message>
        <source>%1?%2 Were these kilograms, written as grams?</source>
        <translation>%1&#xa0;?%2 Était-ce des kilogrammes, écrits comme grammes&#xa0;?</translation>
    </message>
    <message>
        <source>%1?%2 It is far from what this animal weighed before.</source>
        <translation>%1&#xa0;?%2 C’est loin de ce que cet animal pesait avant.</translation>
    </message>
    <message>
        <source>That day has not come yet.</source>
        <translation>Ce jour n’est pas encore venu.</translation>
    </message>
    <message>
        <source>An animal needs a name or number of the house.</source>
        <translation>Un animal demande un nom ou un numéro de la maison.</translation>
    </message>
    <message>
        <source>An animal needs a species.</source>
        <translation>Un animal demande une espèce.</translation>
    </message>
    <message>
        <source>It cannot be born after it left or died.</source>
        <translation>Il ne peut être né après son départ ou sa mort.</translation>
    </message>
    <message>
        <source>It cannot arrive after it left or died.</source>
        <translation>Il ne peut être arrivé après son départ ou sa mort.</translation>
    </message>
    <message>
        <source>It cannot be born after it arrived.</source>
        <translation>Il ne peut être né après son arrivée.</translation>
    </message>
    <message>
        <source>Its life stages follow each other by date.</source>
        <translation>Ses stades de vie se suivent par date.</translation>
    </message>
    <message>
        <source>No life stage begins before it was born.</source>
        <translation>Aucun stade de vie ne commence avant sa naissance.</translation>
    </message>
    <message>
        <source>Say on which day it died.</source>
        <translation>Dites quel jour il est mort.</translation>
    </message>
</context>
<context>
    <name>Ask</name>
    <message>
        <source>Problem files (*.json);;All files (*)</source>
        <translation>Fichiers de problème (*.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Open a problem file</source>
        <translation>Ouvrir un fichier de problème</translation>
    </message>
    <message>
        <source>Save the problem as</source>
        <translation>Enregistrer le problème sous</translation>
    </message>
    <message>
        <source>Collections (*.tarebowl);;All files (*)</source>
        <translation>Collections (*.tarebowl);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Open a collection</source>
        <translation>Ouvrir une collection</translation>
    </message>
    <message>
        <source>A new collection</source>
        <translation>Nouvelle collection</translation>
    </message>
    <message>
        <source>Import a table of foods</source>
        <translation>Importer une table d’aliments</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt *.xlsx);;All files (*)</source>
        <translation>Tables (*.csv *.tsv *.txt *.xlsx);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Mappings (*.json);;All files (*)</source>
        <translation>Correspondances (*.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Load a mapping</source>
        <translation>Charger une correspondance</translation>
    </message>
    <message>
        <source>Save the mapping as</source>
        <translation>Enregistrer la correspondance sous</translation>
    </message>
    <message>
        <source>Write the diet sheet</source>
        <translation>Écrire la fiche de ration</translation>
    </message>
    <message>
        <source>Pages (*.pdf);;Spreadsheets (*.xlsx);;Web pages (*.html);;Problem files (*.json)</source>
        <translation>Pages (*.pdf);;Feuilles de calcul (*.xlsx);;Pages web (*.html);;Fichiers de problème (*.json)</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Non enregistré</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 contient des modifications non enregistrées.</translation>
    </message>
    <message>
        <source>The collection cannot be read</source>
        <translation>La collection ne peut pas être lue</translation>
    </message>
    <message>
        <source>Nothing is deleted. To salvage copies what can be read into a new file.</source>
        <translation>Rien n’est supprimé. Récupérer copie ce qui peut être lu dans un nouveau fichier.</translation>
    </message>
    <message>
        <source>%1 To restore puts the backup of %2 in its place, without what was written since, and keeps the damaged file among the backups.</source>
        <translation>%1 Restaurer met à sa place la sauvegarde du %2, sans ce qui a été écrit depuis, et garde le fichier endommagé parmi les sauvegardes.</translation>
    </message>
    <message>
        <source>Restore the backup</source>
        <translation>Restaurer la sauvegarde</translation>
    </message>
    <message>
        <source>Salvage what can be read…</source>
        <translation>Récupérer ce qui est lisible…</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Ne rien faire</translation>
    </message>
    <message>
        <source>A picture or report beside the collection</source>
        <translation>Une image ou un rapport à côté de la collection</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Password</source>
        <translation>Mot de passe</translation>
    </message>
    <message>
        <source>The password for %1</source>
        <translation>Le mot de passe pour %1</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Persin in flesh, skin, stone and leaves damages heart muscle and mammary tissue; birds, rabbits, rodents and hoofed animals have died of little.</source>
        <translation>La persine de la chair, de la peau, du noyau et des feuilles lèse le muscle cardiaque et la glande mammaire&#xa0;; des oiseaux, des lapins, des rongeurs et des ongulés sont morts de faibles quantités.</translation>
    </message>
    <message>
        <source>Give none, leaves and stones included.</source>
        <translation>Ne rien en donner, ni feuilles ni noyaux.</translation>
    </message>
    <message>
        <source>Organosulphur compounds of Allium bulbs and leaves destroy the red blood cells of mammals and birds, and are hardly studied elsewhere; cooking and drying do not remove them.</source>
        <translation>Les composés soufrés des bulbes et des feuilles d’Allium détruisent les globules rouges des mammifères et des oiseaux, et sont peu étudiés ailleurs&#xa0;; la cuisson et le séchage ne les éliminent pas.</translation>
    </message>
    <message>
        <source>Give none, raw, cooked or as powder.</source>
        <translation>Ne rien en donner, ni cru, ni cuit, ni en poudre.</translation>
    </message>
    <message>
        <source>Theobromine and caffeine overstimulate heart and nerves, and are cleared slowly by many animals.</source>
        <translation>La théobromine et la caféine surexcitent le cœur et les nerfs, et beaucoup d’animaux les éliminent lentement.</translation>
    </message>
    <message>
        <source>Give none.</source>
        <translation>Ne rien en donner.</translation>
    </message>
    <message>
        <source>Xylitol makes insulin surge in dogs, with low blood sugar and liver failure; other animals are hardly studied.</source>
        <translation>Le xylitol fait bondir l’insuline chez le chien, avec hypoglycémie et insuffisance hépatique&#xa0;; les autres animaux sont peu étudiés.</translation>
    </message>
    <message>
        <source>Give no product that is sweetened with it.</source>
        <translation>Ne donner aucun produit sucré avec lui.</translation>
    </message>
    <message>
        <source>Grapes and raisins have caused acute kidney failure in dogs, in unpredictable amounts.</source>
        <translation>Les raisins, frais ou secs, ont causé des insuffisances rénales aiguës chez le chien, à des doses imprévisibles.</translation>
    </message>
    <message>
        <source>Give none to canids.</source>
        <translation>Ne rien en donner aux canidés.</translation>
    </message>
    <message>
        <source>Lectins of raw beans injure the gut; slow cooking below boiling does not destroy them.</source>
        <translation>Les lectines des haricots crus lèsent l’intestin&#xa0;; une cuisson lente sous l’ébullition ne les détruit pas.</translation>
    </message>
    <message>
        <source>Soak, then boil hard; give none raw or sprouted.</source>
        <translation>Tremper, puis bouillir fortement&#xa0;; ne rien donner de cru ni de germé.</translation>
    </message>
    <message>
        <source>Solanine and chaconine of green and sprouting potato act on nerves and gut; cooking does not destroy them.</source>
        <translation>La solanine et la chaconine des pommes de terre vertes ou germées agissent sur les nerfs et l’intestin&#xa0;; la cuisson ne les détruit pas.</translation>
    </message>
    <message>
        <source>Discard green and sprouting tubers, peel and haulm.</source>
        <translation>Jeter les tubercules verts ou germés, les épluchures et les fanes.</translation>
    </message>
    <message>
        <source>Lucibufagins of fireflies act on the heart; a single one has killed bearded dragons.</source>
        <translation>Les lucibufagines des lucioles agissent sur le cœur&#xa0;; une seule a tué des pogonas.</translation>
    </message>
    <message>
        <source>Give none, and keep wild-caught ones out of the enclosure.</source>
        <translation>Ne rien en donner, et tenir les insectes sauvages hors de l’enclos.</translation>
    </message>
    <message>
        <source>Oxalic acid and other compounds of rhubarb leaves injure kidneys and bind calcium.</source>
        <translation>L’acide oxalique et d’autres composés des feuilles de rhubarbe lèsent les reins et fixent le calcium.</translation>
    </message>
    <message>
        <source>Oxalate binds calcium: above one mole of it for one of calcium it could bind all that the food brings. Published contents of one food differ tenfold.</source>
        <translation>L’oxalate fixe le calcium&#xa0;: au-delà d’une mole pour une mole de calcium, il pourrait fixer tout celui que l’aliment apporte. Les teneurs publiées d’un même aliment varient de un à dix.</translation>
    </message>
    <message>
        <source>Count little on this food&apos;s calcium; vary greens, and keep such ones to a small share.</source>
        <translation>Compter peu sur le calcium de cet aliment&#xa0;; varier les verdures et garder celles-ci en faible part.</translation>
    </message>
    <message>
        <source>Phytate of seeds binds calcium, zinc and iron, and its phosphorus is little used by animals with a simple stomach.</source>
        <translation>Le phytate des graines fixe le calcium, le zinc et le fer, et son phosphore est peu utilisé par les animaux à estomac simple.</translation>
    </message>
    <message>
        <source>Do not count all of its phosphorus; look at zinc and calcium.</source>
        <translation>Ne pas compter tout son phosphore&#xa0;; surveiller le zinc et le calcium.</translation>
    </message>
    <message>
        <source>Thiaminase of some raw and thawed fish destroys thiamin, also that of the rest of the bowl.</source>
        <translation>La thiaminase de certains poissons crus ou décongelés détruit la thiamine, aussi celle du reste de la gamelle.</translation>
    </message>
    <message>
        <source>Keep to a small share or cook; give thiamin apart from the fish. The vet decides on the dose.</source>
        <translation>Garder une faible part ou cuire&#xa0;; donner la thiamine séparément du poisson. Le vétérinaire décide de la dose.</translation>
    </message>
    <message>
        <source>Avidin of raw egg white binds biotin; boiling undoes it.</source>
        <translation>L’avidine du blanc d’œuf cru fixe la biotine&#xa0;; la cuisson à l’eau y remédie.</translation>
    </message>
    <message>
        <source>Boil the egg.</source>
        <translation>Cuire l’œuf à l’eau.</translation>
    </message>
    <message>
        <source>Vitamin C makes iron easier to absorb, and these animals store iron.</source>
        <translation>La vitamine C facilite l’absorption du fer, et ces animaux stockent le fer.</translation>
    </message>
    <message>
        <source>Feed apart from the food that is richest in iron; ask the vet about blood values.</source>
        <translation>Donner à part de l’aliment le plus riche en fer&#xa0;; demander au vétérinaire un bilan sanguin.</translation>
    </message>
    <message>
        <source>Rich in iron that is easily absorbed, and these animals store iron.</source>
        <translation>Riche en fer facilement absorbé, et ces animaux stockent le fer.</translation>
    </message>
    <message>
        <source>Keep iron as low as the targets allow.</source>
        <translation>Garder le fer aussi bas que les cibles le permettent.</translation>
    </message>
    <message>
        <source>New World primates use vitamin D2 poorly: only D3 counts for them.</source>
        <translation>Les primates du Nouveau Monde utilisent mal la vitamine D2&#xa0;: seule la D3 compte pour eux.</translation>
    </message>
    <message>
        <source>Do not count its vitamin D; give D3 within the safe limit, and UV-B light where the house has it.</source>
        <translation>Ne pas compter sa vitamine D&#xa0;; donner de la D3 dans la limite sûre, et de la lumière UV-B si la maison en dispose.</translation>
    </message>
</context>
<context>
    <name>Chart</name>
    <message>
        <source>group</source>
        <translation>groupe</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>moyenne</translation>
    </message>
    <message>
        <source> (doubtful)</source>
        <translation> (douteux)</translation>
    </message>
    <message>
        <source> (left out)</source>
        <translation> (écarté)</translation>
    </message>
    <message>
        <source>condition on %1: %2 of %3</source>
        <translation>état corporel le %1&#xa0;: %2 sur %3</translation>
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
        <translation>Autre aliment</translation>
    </message>
    <message>
        <source>Proximates close: %1 g of 100 g.</source>
        <translation>Le total des composants est cohérent&#xa0;: %1 g sur 100 g.</translation>
    </message>
    <message>
        <source>Whether the proximates close is not known.</source>
        <translation>On ne sait pas si le total des composants est cohérent.</translation>
    </message>
    <message>
        <source>Water, protein, fat, ash and carbohydrate are needed for it.</source>
        <translation>Il y faut eau, protéines, matières grasses, cendres et glucides.</translation>
    </message>
    <message>
        <source>%1 scatters by %2.</source>
        <translation>%1 varie de %2.</translation>
    </message>
    <message>
        <source>More samples, or two foods where there are two.</source>
        <translation>Plus d’échantillons, ou deux aliments s’il y en a deux.</translation>
    </message>
    <message>
        <source>Ca:P %1 is below 1.</source>
        <translation>Ca:P %1 est sous 1.</translation>
    </message>
    <message>
        <source>Calcium must come from elsewhere; insects can be dusted or gut-loaded.</source>
        <translation>Le calcium doit venir d’ailleurs&#xa0;; les insectes peuvent être saupoudrés ou nourris avant.</translation>
    </message>
    <message>
        <source>A label guarantees a bound and no mean: %1. Diets count these as unknown.</source>
        <translation>Une étiquette garantit une borne et non une moyenne&#xa0;: %1. Les rations les comptent comme inconnus.</translation>
    </message>
    <message>
        <source>A laboratory&apos;s value would settle it.</source>
        <translation>La valeur d’un laboratoire le réglerait.</translation>
    </message>
</context>
<context>
    <name>Conflict</name>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>%1: yours %2, now there %3</source>
        <translation>%1&#xa0;: le vôtre %2, maintenant %3</translation>
    </message>
    <message>
        <source>It was removed.</source>
        <translation>Cela a été retiré.</translation>
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
        <translation>%1 à %2 g</translation>
    </message>
    <message>
        <source>another bowl</source>
        <translation>autre gamelle</translation>
    </message>
    <message>
        <source>lock %1</source>
        <translation>verrouiller %1</translation>
    </message>
    <message>
        <source>unlock %1</source>
        <translation>déverrouiller %1</translation>
    </message>
    <message>
        <source>limits of %1</source>
        <translation>limites de %1</translation>
    </message>
    <message>
        <source>what is sought</source>
        <translation>ce qui est cherché</translation>
    </message>
    <message>
        <source>how sure</source>
        <translation>certitude</translation>
    </message>
    <message>
        <source>target of %1</source>
        <translation>cible de %1</translation>
    </message>
    <message>
        <source>add %1</source>
        <translation>ajouter %1</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>retirer %1</translation>
    </message>
    <message>
        <source>preparation of %1</source>
        <translation>préparation de %1</translation>
    </message>
    <message>
        <source>purpose of %1</source>
        <translation>but de %1</translation>
    </message>
    <message>
        <source>allow %1</source>
        <translation>permettre %1</translation>
    </message>
    <message>
        <source>structure rules</source>
        <translation>règles de structure</translation>
    </message>
    <message>
        <source>group shares</source>
        <translation>parts de groupes</translation>
    </message>
</context>
<context>
    <name>Energy</name>
    <message>
        <source>at rest</source>
        <translation>au repos</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation>entretien</translation>
    </message>
    <message>
        <source>free-living</source>
        <translation>en liberté</translation>
    </message>
    <message>
        <source>× energy at rest at 1 kg</source>
        <translation>× énergie au repos à 1 kg</translation>
    </message>
    <message>
        <source>× energy for maintenance at 1 kg</source>
        <translation>× énergie d’entretien à 1 kg</translation>
    </message>
    <message>
        <source>× energy of free life at 1 kg</source>
        <translation>× énergie de vie libre à 1 kg</translation>
    </message>
    <message>
        <source>life stage</source>
        <translation>stade de vie</translation>
    </message>
    <message>
        <source>activity</source>
        <translation>activité</translation>
    </message>
    <message>
        <source>season</source>
        <translation>saison</translation>
    </message>
    <message>
        <source>aim for condition</source>
        <translation>état visé</translation>
    </message>
    <message>
        <source>house factor</source>
        <translation>facteur de la maison</translation>
    </message>
    <message>
        <source>This is no feeding rate: the need of an animal without body heat of its own follows its temperature. A cool animal needs far less.</source>
        <translation>Ce n’est pas un taux d’alimentation&#xa0;: le besoin d’un animal sans chaleur propre suit sa température. Un animal frais demande bien moins.</translation>
    </message>
    <message>
        <source>This is what a free-living animal spends; one in human care spends less.</source>
        <translation>C’est ce que dépense un animal en liberté&#xa0;; un animal sous soins humains dépense moins.</translation>
    </message>
    <message>
        <source>This animal is outside of what the source speaks of: %1.</source>
        <translation>Cet animal est hors de ce dont parle la source&#xa0;: %1.</translation>
    </message>
    <message>
        <source>another range of body mass</source>
        <translation>une autre plage de poids vif</translation>
    </message>
    <message>
        <source>A number here is from memory and was not looked up.</source>
        <translation>Un nombre ici est de mémoire et n’a pas été vérifié.</translation>
    </message>
    <message>
        <source>Two factors count the same thing, or one stands on a level that holds it already.</source>
        <translation>Deux facteurs comptent la même chose, ou l’un repose sur un niveau qui le contient déjà.</translation>
    </message>
    <message>
        <source>%1, %2: %3 × kg^%4</source>
        <translation>%1, %2&#xa0;: %3 × kg^%4</translation>
    </message>
    <message>
        <source>%1, %2: × %3 of %4</source>
        <translation>%1, %2&#xa0;: × %3 de %4</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
</context>
<context>
    <name>Files</name>
    <message>
        <source>cannot be read: %1</source>
        <translation>illisible&#xa0;: %1</translation>
    </message>
    <message>
        <source>model: %1</source>
        <translation>modèle&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 was not saved: %2</source>
        <translation>%1 n’a pas été enregistré&#xa0;: %2</translation>
    </message>
    <message>
        <source>1 animal</source>
        <translation>1 animal</translation>
    </message>
    <message>
        <source>%1 animals</source>
        <translation>%1 animaux</translation>
    </message>
    <message>
        <source>The collection is set up</source>
        <translation>La collection est en place</translation>
    </message>
    <message>
        <source>It is empty and open, and you may do everything in it. Nobody else may open it yet. Let each person in, in their role, with the command

tarebowl server add %1 PERSON ROLE

PERSON is their name on the server. ROLE is reader, keeper, vet, nutritionist or curator.</source>
        <translation>Elle est vide et ouverte, et vous pouvez tout y faire. Personne d&apos;autre ne peut encore l&apos;ouvrir. Laissez entrer chaque personne dans son rôle, par la commande

tarebowl server add %1 PERSON ROLE

PERSON est son nom sur le serveur. ROLE est reader, keeper, vet, nutritionist ou curator.</translation>
    </message>
    <message numerus="yes">
        <source>This machine&apos;s clock is %n minute(s) ahead of the server&apos;s.</source>
        <translation>
            <numerusform>L&apos;horloge de cet ordinateur avance de %n minute sur celle du serveur.</numerusform>
            <numerusform>L&apos;horloge de cet ordinateur avance de %n minutes sur celle du serveur.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>This machine&apos;s clock is %n minute(s) behind the server&apos;s.</source>
        <translation>
            <numerusform>L&apos;horloge de cet ordinateur retarde de %n minute sur celle du serveur.</numerusform>
            <numerusform>L&apos;horloge de cet ordinateur retarde de %n minutes sur celle du serveur.</numerusform>
        </translation>
    </message>
    <message>
        <source>Two clocks disagree</source>
        <translation>Deux horloges se contredisent</translation>
    </message>
    <message>
        <source>%1 What you write is dated by the server&apos;s clock, as it is for every desk. Which day is today still goes by this machine: set its clock and open the collection again, or tell whoever runs the server.</source>
        <translation>%1 Ce que vous écrivez porte l&apos;heure du serveur, comme à chaque poste. Le jour d&apos;aujourd&apos;hui reste celui de cet ordinateur : réglez son horloge et rouvrez la collection, ou dites-le à qui gère le serveur.</translation>
    </message>
</context>
<context>
    <name>Food</name>
    <message>
        <source>(invented)</source>
        <translation>(inventé)</translation>
    </message>
</context>
<context>
    <name>Foods</name>
    <message>
        <source>per 100 g as fed</source>
        <translation>pour 100 g bruts</translation>
    </message>
    <message>
        <source>per kg DM</source>
        <translation>par kg de MS</translation>
    </message>
    <message>
        <source>per 1000 %1 ME</source>
        <translation>pour 1000 %1 EM</translation>
    </message>
    <message>
        <source>trace</source>
        <translation>traces</translation>
    </message>
    <message>
        <source>not detected</source>
        <translation>non détecté</translation>
    </message>
    <message>
        <source>(n %1)</source>
        <translation>(n %1)</translation>
    </message>
    <message>
        <source>own laboratory</source>
        <translation>laboratoire propre</translation>
    </message>
    <message>
        <source>publication</source>
        <translation>publication</translation>
    </message>
    <message>
        <source>label</source>
        <translation>étiquette</translation>
    </message>
    <message>
        <source>estimate</source>
        <translation>estimation</translation>
    </message>
    <message>
        <source>set by hand: %1</source>
        <translation>fixé à la main&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 set aside</source>
        <translation>%1 mis de côté</translation>
    </message>
    <message>
        <source>a bound, %1</source>
        <translation>une borne, %1</translation>
    </message>
    <message>
        <source>worked out from the raw food</source>
        <translation>calculé d’après l’aliment cru</translation>
    </message>
    <message>
        <source>worked out from the recipe</source>
        <translation>calculé d’après la recette</translation>
    </message>
    <message>
        <source>never measured</source>
        <translation>jamais mesuré</translation>
    </message>
    <message>
        <source>a bound, not a mean</source>
        <translation>une borne, pas une moyenne</translation>
    </message>
    <message>
        <source>own laboratory, 1 sample</source>
        <translation>laboratoire propre, 1 échantillon</translation>
    </message>
    <message>
        <source>own laboratory, %1 samples</source>
        <translation>laboratoire propre, %1 échantillons</translation>
    </message>
    <message>
        <source>%1, newest %2</source>
        <translation>%1, le plus récent %2</translation>
    </message>
    <message>
        <source>batch %1</source>
        <translation>lot %1</translation>
    </message>
    <message>
        <source>set aside: %1</source>
        <translation>mis de côté&#xa0;: %1</translation>
    </message>
    <message>
        <source>passed over: a more trusted origin goes first</source>
        <translation>non retenu&#xa0;: une origine plus fiable passe avant</translation>
    </message>
    <message>
        <source>passed over: a newer one goes first</source>
        <translation>non retenu&#xa0;: une plus récente passe avant</translation>
    </message>
    <message>
        <source>passed over: others have a date</source>
        <translation>non retenu&#xa0;: d’autres ont une date</translation>
    </message>
    <message>
        <source>not used: the water or energy it rests on is unknown</source>
        <translation>non utilisé&#xa0;: l’eau ou l’énergie dont cela dépend est inconnue</translation>
    </message>
    <message>
        <source>not used: a guarantee is no mean</source>
        <translation>non utilisé&#xa0;: une garantie n’est pas une moyenne</translation>
    </message>
    <message>
        <source>not used: outside the range of the method</source>
        <translation>non utilisé&#xa0;: hors de la plage de la méthode</translation>
    </message>
    <message>
        <source>(invented)</source>
        <translation>(inventé)</translation>
    </message>
    <message>
        <source>%1 (invented)</source>
        <translation>%1 (inventé)</translation>
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
        <translation>kg brut</translation>
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
        <translation>jour</translation>
    </message>
    <message>
        <source>kg body mass</source>
        <translation>kg de poids vif</translation>
    </message>
    <message>
        <source>kg^0.75</source>
        <translation>kg^0,75</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 par jour</translation>
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
        <translation>Un nutritionniste conçoit la première ration d’une espèce</translation>
    </message>
    <message>
        <source>The gardens took in lowland streaked tenrecs, and nobody has designed their diet yet. Type “streaked tenrecs” into *Find an animal* and press Enter. (A species of your own is begun by *Add*.)</source>
        <translation>Le parc a accueilli des tenrecs zébrés, et personne n’a encore conçu leur ration. Tapez «&#xa0;streaked tenrecs&#xa0;» dans *Chercher un animal* et appuyez sur Entrée. (Une espèce à vous se commence par *Ajouter*.)</translation>
    </message>
    <message>
        <source>Choose *energy need*: it is worked out step by step, and each number names its source or is the house&apos;s own. Press F1 on any of them.</source>
        <translation>Choisissez *besoin en énergie*&#xa0;: il est calculé pas à pas, et chaque nombre nomme sa source ou est celui de la maison. Appuyez sur F1 sur l’un d’eux.</translation>
    </message>
    <message>
        <source>Choose *targets*: what a diet of this group is judged by. Each says where it was stated. What comes from a model species is a starting point, not a requirement.</source>
        <translation>Choisissez *cibles*&#xa0;: ce par quoi une ration de ce groupe est jugée. Chacune dit où elle a été énoncée. Ce qui vient d’une espèce modèle est un point de départ, non un besoin établi.</translation>
    </message>
    <message>
        <source>These targets are a draft: nobody has decided on them. Press *Put in force…*; in a real house that is the nutritionist&apos;s decision.</source>
        <translation>Ces cibles sont un brouillon&#xa0;: personne n’en a décidé. Appuyez sur *Mettre en vigueur…*&#xa0;; dans une vraie maison, c’est la décision du nutritionniste.</translation>
    </message>
    <message>
        <source>Say why in *Reason* and press Enter. From today on the group&apos;s diets are judged by these targets.</source>
        <translation>Dites pourquoi dans *Raison* et appuyez sur Entrée. À partir d’aujourd’hui, les rations du groupe sont jugées par ces cibles.</translation>
    </message>
    <message>
        <source>Press *Design a diet*. It opens on the desk in Diets, empty.</source>
        <translation>Appuyez sur *Concevoir une ration*. Elle s’ouvre sur la table dans Rations, vide.</translation>
    </message>
    <message>
        <source>Type part of a food&apos;s name into *Add a food* and press Enter: “cricket”. Then add “earthworm” and “limestone” in the same way. The grams follow as foods are added.</source>
        <translation>Tapez une partie d’un nom dans *Ajouter un aliment* et appuyez sur Entrée&#xa0;: «&#xa0;cricket&#xa0;». Ajoutez ensuite «&#xa0;earthworm&#xa0;» et «&#xa0;limestone&#xa0;» de même. Les grammes suivent à mesure que l’on ajoute des aliments.</translation>
    </message>
    <message>
        <source>Look at the *Balance ladder*, at the right: what falls short comes first. A shaded stretch is a target&apos;s zone, the mark is the diet, and what nobody measured is hatched, never counted as nothing. Choose a rung to see which food brings how much.</source>
        <translation>Regardez l’*Échelle du bilan*, à droite&#xa0;: ce qui manque vient d’abord. Le tronçon ombré est la zone d’une cible, la marque est la ration, et ce que personne n’a mesuré est hachuré, jamais compté pour rien. Choisissez un échelon pour voir quel aliment apporte combien.</translation>
    </message>
    <message>
        <source>Type a gram of your own into *Foods of the diet*: it is locked, and the other foods give way. Ctrl+Z takes it back. The card *Why* says what cannot hold together, and offers what would settle it.</source>
        <translation>Tapez des grammes à vous dans *Aliments de la ration*&#xa0;: l’aliment est verrouillé, et les autres cèdent. Ctrl+Z l’annule. La carte *Pourquoi* dit ce qui ne peut tenir ensemble, et propose ce qui le réglerait.</translation>
    </message>
    <message>
        <source>Press *Submit…*: the diet waits for a decision, and is not edited while it waits.</source>
        <translation>Appuyez sur *Soumettre…*&#xa0;: la ration attend une décision, et n’est pas modifiée tant qu’elle attend.</translation>
    </message>
    <message>
        <source>Say why in *Reason* and press Enter. Whoever decides presses *Approve…*, which appears now; from then on this version never changes, and the kitchen follows it. Targets and foods are only as good as their sources: the nutritionist decides.</source>
        <translation>Dites pourquoi dans *Raison* et appuyez sur Entrée. Qui décide appuie sur *Approuver…*, qui apparaît maintenant&#xa0;; dès lors cette version ne change plus, et la cuisine la suit. Cibles et aliments ne valent que ce que valent leurs sources&#xa0;: le nutritionniste décide.</translation>
    </message>
    <message>
        <source>A keeper checks a swap and weighs</source>
        <translation>Un soigneur examine un remplacement et pèse</translation>
    </message>
    <message>
        <source>*What is due today* says which sections have bowls to prepare. A row leads to its sheet; Ctrl+5 goes to the Kitchen as well.</source>
        <translation>*Ce qu’il y a à faire aujourd’hui* dit quels secteurs ont des gamelles à préparer. Une ligne mène à sa fiche&#xa0;; Ctrl+5 va aussi à la Cuisine.</translation>
    </message>
    <message>
        <source>Choose Reptiles and Bats in *Section*. Its bowls stand below, in *Bowls of the sheet*; the first food of the first one is on the scale.</source>
        <translation>Choisissez Reptiles and Bats dans *Secteur*. Ses gamelles sont en dessous, dans *Gamelles de la fiche*&#xa0;; le premier aliment de la première est sur la balance.</translation>
    </message>
    <message>
        <source>Suppose this food did not come. Press *Not available* (the key * does it too).</source>
        <translation>Supposez que cet aliment ne soit pas arrivé. Appuyez sur *Non disponible* (la touche * le fait aussi).</translation>
    </message>
    <message>
        <source>*What to give instead* ranks what is on hand, the nearest first, in grams, with what it does to the balance and who must approve it. Arrows choose, Enter uses. Nothing is missing this time: *Back* (Esc) goes to the bowl again.</source>
        <translation>*Quoi donner à la place* classe ce qui est disponible, le plus proche d’abord, en grammes, avec ce que cela fait au bilan et qui doit l’approuver. Les flèches choisissent, Entrée prend. Rien ne manque cette fois&#xa0;: *Retour* (Échap) revient à la gamelle.</translation>
    </message>
    <message>
        <source>Type what the scale shows into *Weight in g*. The bar says under, in or over. Enter keeps the weight, and the next food is on the scale. A doubtful one is asked about first.</source>
        <translation>Tapez ce que montre la balance dans *Poids en g*. La barre dit dessous, juste ou dessus. Entrée garde le poids, et l’aliment suivant est sur la balance. Un poids douteux est d’abord questionné.</translation>
    </message>
    <message>
        <source>Tomorrow, *Leftovers* asks what came back of each food. What nobody weighs stays unknown.</source>
        <translation>Demain, *Refus* demande ce qui est revenu de chaque aliment. Ce que personne ne pèse reste inconnu.</translation>
    </message>
    <message>
        <source>A vet reviews calcium and looks back</source>
        <translation>Un vétérinaire examine le calcium et remonte en arrière</translation>
    </message>
    <message>
        <source>Choose the bearded dragons in *Groups and animals*. *How far back* says how many days up to today are looked at; the feeding of the sample ends on 24 November 2026.</source>
        <translation>Choisissez les pogonas dans *Groupes et animaux*. *Jusqu’où remonter* dit combien de jours jusqu’à aujourd’hui sont examinés&#xa0;; la distribution de l’exemple finit le 24 novembre 2026.</translation>
    </message>
    <message>
        <source>*Calcium review* sets calcium, phosphorus, Ca:P and vitamin D as eaten against their targets, in *Calcium against its targets*. Days that nobody weighed widen the range.</source>
        <translation>*Examen du calcium* met calcium, phosphore, Ca:P et vitamine D tels que mangés face à leurs cibles, dans *Calcium face à ses cibles*. Les jours que personne n’a pesés élargissent la plage.</translation>
    </message>
    <message>
        <source>Choose one in *Supplement*: the review says the least dose that brings calcium in, and whether that stays below the safe limit. Whether it is given, the vet decides.</source>
        <translation>Choisissez-en un dans *Complément*&#xa0;: l’examen dit la moindre dose qui ramène le calcium, et si elle reste sous la limite sûre. Le vétérinaire décide si elle est donnée.</translation>
    </message>
    <message>
        <source>Now the ruffed lemurs in *Groups and animals*: their faeces were soft. In *What was seen* put the hand on a line with ▲ and press Enter.</source>
        <translation>Maintenant les varis roux dans *Groupes et animaux*&#xa0;: leurs fèces étaient molles. Dans *Ce qui a été vu*, mettez la main sur une ligne avec ▲ et appuyez sur Entrée.</translation>
    </message>
    <message>
        <source>*Look-back* shows in *Foods and the sign* which foods were in the bowls before it, against days without it. *Hours before the sign* says how far back. It shows what goes together, not what caused what.</source>
        <translation>*Rétrospective* montre dans *Aliments et signe* quels aliments étaient dans les gamelles avant lui, face aux jours sans lui. *Heures avant le signe* dit jusqu’où. Cela montre ce qui va ensemble, non ce qui a causé quoi.</translation>
    </message>
    <message>
        <source>*Look-back for the file…* writes it as one page, to print or to keep.</source>
        <translation>*Rétrospective pour le dossier…* l’écrit en une page, à imprimer ou à garder.</translation>
    </message>
</context>
<context>
    <name>Health</name>
    <message>
        <source>the group</source>
        <translation>le groupe</translation>
    </message>
    <message>
        <source>%1 goes from %2 to %3, formed is %4, liquid is %5</source>
        <translation>%1 va de %2 à %3, moulé est %4, liquide est %5</translation>
    </message>
    <message>
        <source>Written down by %1</source>
        <translation>Noté par %1</translation>
    </message>
    <message>
        <source>A sign: Enter looks back from it</source>
        <translation>Un signe&#xa0;: Entrée remonte à partir de lui</translation>
    </message>
    <message>
        <source>Faeces</source>
        <translation>Fèces</translation>
    </message>
    <message>
        <source>Appetite</source>
        <translation>Appétit</translation>
    </message>
    <message>
        <source>Vomiting</source>
        <translation>Vomissement</translation>
    </message>
    <message>
        <source>Limping</source>
        <translation>Boiterie</translation>
    </message>
    <message>
        <source>Fracture</source>
        <translation>Fracture</translation>
    </message>
    <message>
        <source>Blood</source>
        <translation>Sang</translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation>Traitement</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Autre</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 le %2</translation>
    </message>
    <message>
        <source>%1, %2: %3%4</source>
        <translation>%1, %2&#xa0;: %3%4</translation>
    </message>
    <message>
        <source>%1 a day and animal</source>
        <translation>%1 par jour et animal</translation>
    </message>
    <message>
        <source>Ca:P</source>
        <translation>Ca:P</translation>
    </message>
    <message>
        <source>▲ stands out: %1</source>
        <translation>▲ se distingue&#xa0;: %1</translation>
    </message>
    <message>
        <source> (new)</source>
        <translation> (nouveau)</translation>
    </message>
    <message>
        <source>nothing to compare</source>
        <translation>rien à comparer</translation>
    </message>
    <message>
        <source>%1 (%2 … %3)%4</source>
        <translation>%1 (%2 … %3)%4</translation>
    </message>
    <message>
        <source> ½ added</source>
        <translation> ½ ajouté</translation>
    </message>
    <message>
        <source>Always eaten together with %1: they cannot be told apart.</source>
        <translation>Toujours mangé avec %1&#xa0;: on ne peut les distinguer.</translation>
    </message>
    <message>
        <source>%1 of %2 on %3</source>
        <translation>%1 de %2 le %3</translation>
    </message>
    <message>
        <source>? No intake was recorded in the hours before this sign.</source>
        <translation>? Aucune ingestion n’a été notée dans les heures avant ce signe.</translation>
    </message>
    <message>
        <source>Fed by %1, version %2, from %3.</source>
        <translation>Nourri selon %1, version %2, dès le %3.</translation>
    </message>
</context>
<context>
    <name>HealthPage</name>
    <message>
        <source>%1: a page for the file is written as .pdf, .html or .json</source>
        <translation>%1&#xa0;: une page pour le dossier s’écrit en .pdf, .html ou .json</translation>
    </message>
</context>
<context>
    <name>Hints</name>
    <message>
        <source>Begin with foods</source>
        <translation>Commencer par les aliments</translation>
    </message>
    <message>
        <source>Import a table of foods, or add them one by one, in the room Foods.</source>
        <translation>Importer une table d’aliments, ou les ajouter un par un, dans la salle Aliments.</translation>
    </message>
    <message>
        <source>Add a species</source>
        <translation>Ajouter une espèce</translation>
    </message>
    <message>
        <source>With its group, energy need and targets, in the room Animals.</source>
        <translation>Avec son groupe, son besoin en énergie et ses cibles, dans la salle Animaux.</translation>
    </message>
    <message>
        <source>Have a diet approved</source>
        <translation>Faire approuver une ration</translation>
    </message>
    <message>
        <source>Design a diet</source>
        <translation>Concevoir une ration</translation>
    </message>
    <message>
        <source>A diet is fed once it was submitted and approved, in the room Diets.</source>
        <translation>Une ration est distribuée une fois soumise et approuvée, dans la salle Rations.</translation>
    </message>
    <message>
        <source>For a group that has targets, in the room Diets. Once approved, it is fed.</source>
        <translation>Pour un groupe qui a des cibles, dans la salle Rations. Une fois approuvée, elle est distribuée.</translation>
    </message>
    <message>
        <source>Nothing is due yet.</source>
        <translation>Rien à faire pour l’instant.</translation>
    </message>
    <message>
        <source>Today says what the house has to do: bowls to prepare and weigh, leftovers that came back, swaps and diets that wait for a decision.</source>
        <translation>Aujourd’hui dit ce que la maison doit faire&#xa0;: gamelles à préparer et à peser, refus revenus, remplacements et rations qui attendent une décision.</translation>
    </message>
    <message>
        <source>No diet can be designed yet.</source>
        <translation>Aucune ration ne peut encore être conçue.</translation>
    </message>
    <message>
        <source>Diets is the design desk: foods and grams, and beside them how they stand against the targets of a group. It needs foods, and animals with targets.</source>
        <translation>Rations est la table de travail&#xa0;: des aliments et des grammes, et à côté leur situation face aux cibles d’un groupe. Il y faut des aliments, et des animaux avec des cibles.</translation>
    </message>
    <message>
        <source>There is no bowl to prepare yet.</source>
        <translation>Il n’y a pas encore de gamelle à préparer.</translation>
    </message>
    <message>
        <source>The Kitchen prepares what the diets in force say: a sheet for each section and day, weights typed or read from a scale, and what to give instead of a food that did not come.</source>
        <translation>La cuisine prépare ce que disent les rations en vigueur&#xa0;: une fiche par secteur et par jour, des poids tapés ou lus sur une balance, et quoi donner à la place d’un aliment qui n’est pas arrivé.</translation>
    </message>
    <message>
        <source>Nothing was fed yet.</source>
        <translation>Rien n’a encore été distribué.</translation>
    </message>
    <message>
        <source>Intake shows what was really eaten: what the kitchen weighed in, less what came back, over a week or over years, against the targets.</source>
        <translation>Ingestion montre ce qui a vraiment été mangé&#xa0;: ce que la cuisine a pesé, moins ce qui est revenu, sur une semaine ou des années, face aux cibles.</translation>
    </message>
    <message>
        <source>There is no patient yet.</source>
        <translation>Il n’y a pas encore de patient.</translation>
    </message>
    <message>
        <source>Health keeps what was seen of animals, sets it beside what was eaten, reviews calcium, and looks back from a sign to the bowls before it.</source>
        <translation>Santé garde ce qui a été observé chez les animaux, le met en regard de ce qui a été mangé, examine le calcium, et remonte d’un signe aux gamelles qui l’ont précédé.</translation>
    </message>
</context>
<context>
    <name>Import</name>
    <message>
        <source>1 value</source>
        <translation>1 valeur</translation>
    </message>
    <message>
        <source>%1 values</source>
        <translation>%1 valeurs</translation>
    </message>
    <message>
        <source>1 food new</source>
        <translation>1 aliment nouveau</translation>
    </message>
    <message>
        <source>%1 foods new</source>
        <translation>%1 aliments nouveaux</translation>
    </message>
    <message>
        <source>1 value new</source>
        <translation>1 valeur nouvelle</translation>
    </message>
    <message>
        <source>%1 values new</source>
        <translation>%1 valeurs nouvelles</translation>
    </message>
    <message>
        <source>1 value changed</source>
        <translation>1 valeur modifiée</translation>
    </message>
    <message>
        <source>%1 values changed</source>
        <translation>%1 valeurs modifiées</translation>
    </message>
    <message>
        <source>“%1” is no number</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre</translation>
    </message>
    <message>
        <source>“%1” does not group its thousands by three</source>
        <translation>«&#xa0;%1&#xa0;» ne groupe pas ses milliers par trois</translation>
    </message>
    <message>
        <source>“%1” is a formula; what it was worked out to is not in the table</source>
        <translation>«&#xa0;%1&#xa0;» est une formule&#xa0;; son résultat n’est pas dans la table</translation>
    </message>
    <message>
        <source>“%1” is a spreadsheet&apos;s error</source>
        <translation>«&#xa0;%1&#xa0;» est une erreur de tableur</translation>
    </message>
    <message>
        <source>“%1” is a date; a spreadsheet made one of a number</source>
        <translation>«&#xa0;%1&#xa0;» est une date&#xa0;; un tableur en a fait une d’un nombre</translation>
    </message>
    <message>
        <source>“%1” is no finite number</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre fini</translation>
    </message>
    <message>
        <source>“%1” is below 0</source>
        <translation>«&#xa0;%1&#xa0;» est sous 0</translation>
    </message>
    <message>
        <source>%1 stands on line %2 already, with a record of its own</source>
        <translation>%1 est déjà à la ligne %2, avec un enregistrement à lui</translation>
    </message>
    <message>
        <source>a second value of %1 for %2</source>
        <translation>une seconde valeur de %1 pour %2</translation>
    </message>
    <message>
        <source>“%1” is another value than on line %2</source>
        <translation>«&#xa0;%1&#xa0;» est une autre valeur qu’à la ligne %2</translation>
    </message>
    <message>
        <source>%1 changed</source>
        <translation>%1 modifiés</translation>
    </message>
    <message>
        <source>%1 unchanged</source>
        <translation>%1 inchangés</translation>
    </message>
    <message>
        <source>%1 of these kept under the table&apos;s own name</source>
        <translation>%1 d’entre eux gardés sous le nom de la table</translation>
    </message>
    <message>
        <source>%1 left out</source>
        <translation>%1 écartés</translation>
    </message>
    <message>
        <source> 1 cell says that nothing is known, and stays unknown.</source>
        <translation> 1 cellule dit que rien n’est connu, et reste inconnue.</translation>
    </message>
    <message>
        <source> %1 cells say that nothing is known, and stay unknown.</source>
        <translation> %1 cellules disent que rien n’est connu, et restent inconnues.</translation>
    </message>
    <message>
        <source>new: %1</source>
        <translation>nouveau&#xa0;: %1</translation>
    </message>
    <message>
        <source>as it was: %1</source>
        <translation>tel quel&#xa0;: %1</translation>
    </message>
    <message>
        <source>whole line</source>
        <translation>ligne entière</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>colonne %1</translation>
    </message>
    <message>
        <source>%1 cells, where the header has %2</source>
        <translation>%1 cellules, là où l’en-tête en a %2</translation>
    </message>
    <message>
        <source>neither name nor code of a food</source>
        <translation>ni nom ni code d’un aliment</translation>
    </message>
    <message>
        <source>“%1” is no unit known here</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une unité connue ici</translation>
    </message>
    <message>
        <source>“%1”: this nutrient is not measured in the column&apos;s unit</source>
        <translation>«&#xa0;%1&#xa0;»&#xa0;: ce nutriment ne se mesure pas dans l’unité de la colonne</translation>
    </message>
    <message>
        <source>“%1” would be more than 105 g in 100 g: is the unit right?</source>
        <translation>«&#xa0;%1&#xa0;» ferait plus de 105 g dans 100 g&#xa0;: l’unité est-elle juste&#xa0;?</translation>
    </message>
    <message>
        <source>“%1” is no nutrient, qualifier, basis or number of samples</source>
        <translation>«&#xa0;%1&#xa0;» n’est ni nutriment, ni qualificatif, ni base, ni nombre d’échantillons</translation>
    </message>
    <message>
        <source>“%1” is no name: a formula, or longer than 500 characters</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nom&#xa0;: une formule, ou plus de 500 caractères</translation>
    </message>
    <message>
        <source>the list of foods has no code “%1”</source>
        <translation>la liste des aliments n’a pas de code «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>left out: no nutrient is called “%1” here, and its unit is none known here</source>
        <translation>écarté&#xa0;: aucun nutriment ne s’appelle «&#xa0;%1&#xa0;» ici, et son unité n’est pas connue ici</translation>
    </message>
    <message>
        <source>kept under its own name: no nutrient is called “%1” here</source>
        <translation>gardé sous son propre nom&#xa0;: aucun nutriment ne s’appelle «&#xa0;%1&#xa0;» ici</translation>
    </message>
    <message>
        <source>left out as the mapping says: %1</source>
        <translation>écarté, comme le dit la correspondance&#xa0;: %1</translation>
    </message>
    <message>
        <source>left out: the same value stands on line %1</source>
        <translation>écarté&#xa0;: la même valeur est à la ligne %1</translation>
    </message>
    <message>
        <source>left out: “%1” has no value</source>
        <translation>écarté&#xa0;: «&#xa0;%1&#xa0;» n’a pas de valeur</translation>
    </message>
    <message>
        <source>a standard error without n says no SD; the value is taken without it</source>
        <translation>une erreur type sans n ne donne pas d’écart-type&#xa0;; la valeur est prise sans lui</translation>
    </message>
    <message>
        <source>1 place is in the way; nothing is imported while it stands as it is. Change the mapping, leave the column out, or mend the table and open it again.</source>
        <translation>1 endroit bloque&#xa0;; rien n’est importé tant qu’il reste ainsi. Modifiez la correspondance, écartez la colonne, ou corrigez la table et rouvrez-la.</translation>
    </message>
    <message>
        <source>%1 places are in the way; nothing is imported while they stand as they are. Change the mapping, leave the column out, or mend the table and open it again.</source>
        <translation>%1 endroits bloquent&#xa0;; rien n’est importé tant qu’ils restent ainsi. Modifiez la correspondance, écartez la colonne, ou corrigez la table et rouvrez-la.</translation>
    </message>
    <message>
        <source>There is no value of a food in it.</source>
        <translation>Il ne s’y trouve aucune valeur d’un aliment.</translation>
    </message>
    <message>
        <source>Importing it changes nothing: its 1 value is here already.</source>
        <translation>L’importer ne change rien&#xa0;: sa seule valeur est déjà ici.</translation>
    </message>
    <message>
        <source>Importing it changes nothing: all of its %1 values are here already.</source>
        <translation>L’importer ne change rien&#xa0;: toutes ses %1 valeurs sont déjà ici.</translation>
    </message>
    <message>
        <source>This will happen: %1.</source>
        <translation>Voici ce qui va se passer&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Imported: %1. Undo takes all of it back.</source>
        <translation>Importé&#xa0;: %1. Annuler reprend le tout.</translation>
    </message>
</context>
<context>
    <name>Intake</name>
    <message>
        <source>Intake: %1, %2</source>
        <translation>Ingestion&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>%1: what is shown is written as .png, .pdf or .csv</source>
        <translation>%1&#xa0;: ce qui est affiché s’écrit en .png, .pdf ou .csv</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Du</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Au</translation>
    </message>
    <message>
        <source>Days with a bowl</source>
        <translation>Jours avec gamelle</translation>
    </message>
    <message>
        <source>Days known</source>
        <translation>Jours connus</translation>
    </message>
    <message>
        <source>Bowls behind it</source>
        <translation>Gamelles derrière</translation>
    </message>
    <message>
        <source>%1, offered</source>
        <translation>%1, offert</translation>
    </message>
    <message>
        <source>%1, eaten</source>
        <translation>%1, mangé</translation>
    </message>
    <message>
        <source>%1, sd of eaten</source>
        <translation>%1, ET du mangé</translation>
    </message>
    <message>
        <source>%1, offered g a day</source>
        <translation>%1, offert g par jour</translation>
    </message>
    <message>
        <source>%1, eaten g a day</source>
        <translation>%1, mangé g par jour</translation>
    </message>
    <message>
        <source>%1 fell, %2</source>
        <translation>%1 a baissé, %2</translation>
    </message>
    <message>
        <source>%1 fell %2 times more before that.</source>
        <translation>%1 a baissé %2 fois de plus avant cela.</translation>
    </message>
    <message>
        <source>days</source>
        <translation>jours</translation>
    </message>
    <message>
        <source>stretches of %1 days</source>
        <translation>tronçons de %1 jours</translation>
    </message>
    <message>
        <source>%1 as eaten was in its zone on all %2 known %3.</source>
        <translation>%1 tel que mangé était dans sa zone sur tous les %2 %3 connus.</translation>
    </message>
    <message>
        <source>%1 as eaten was short on %2 of %3 known %4.</source>
        <translation>%1 tel que mangé était trop peu sur %2 des %3 %4 connus.</translation>
    </message>
    <message>
        <source>%1 as eaten was over on %2 of %3 known %4.</source>
        <translation>%1 tel que mangé était trop sur %2 des %3 %4 connus.</translation>
    </message>
    <message>
        <source>%1, %2: %3 g more was left than offered. Look at the entry.</source>
        <translation>%1, %2&#xa0;: %3 g restants de plus qu’offerts. Regardez l’entrée.</translation>
    </message>
    <message>
        <source>%1 leftovers were not weighed: their days are missing, not zero.</source>
        <translation>%1 refus n’ont pas été pesés&#xa0;: leurs jours manquent, ils ne sont pas zéro.</translation>
    </message>
    <message>
        <source>%1 leftovers had no control pan near: what was eaten is not known, at most what is gone.</source>
        <translation>%1 refus n’avaient pas de gamelle témoin proche&#xa0;: ce qui a été mangé n’est pas connu, au plus ce qui a disparu.</translation>
    </message>
    <message>
        <source>%1 leftovers are corrected by pans of other days.</source>
        <translation>%1 refus sont corrigés par des gamelles témoins d’autres jours.</translation>
    </message>
    <message>
        <source>%1 foods lie in a mixed remainder whose parts nobody estimated.</source>
        <translation>%1 aliments sont dans un mélange restant dont personne n’a estimé les parts.</translation>
    </message>
    <message>
        <source>%1 times food was spilled or stolen and nobody could say how much.</source>
        <translation>%1 fois de la nourriture a été renversée ou volée sans qu’on puisse dire combien.</translation>
    </message>
    <message>
        <source>%1–%2 g</source>
        <translation>%1–%2 g</translation>
    </message>
    <message>
        <source>1 bowl</source>
        <translation>1 gamelle</translation>
    </message>
    <message>
        <source>%1 bowls</source>
        <translation>%1 gamelles</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1 · no bowl: missing, not zero</source>
        <translation>%1 · pas de gamelle&#xa0;: manquant, pas zéro</translation>
    </message>
    <message>
        <source>%1 · not all was weighed: missing, not zero</source>
        <translation>%1 · tout n’a pas été pesé&#xa0;: manquant, pas zéro</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2 of %3 days known (%4)</source>
        <translation>%1 · %2 jours connus sur %3 (%4)</translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <translation>%1 (%2–%3)</translation>
    </message>
    <message>
        <source>%1: down to %2, %3 below the usual %4 (median of %5 known days)</source>
        <translation>%1&#xa0;: descendu à %2, %3 sous l’habituel %4 (médiane de %5 jours connus)</translation>
    </message>
    <message>
        <source>A drop: more than %1 robust standard deviations, and at least %2, below the median of the %3 days before, of which %4 must be known (house rule).</source>
        <translation>Une baisse&#xa0;: plus de %1 écarts-types robustes, et au moins %2, sous la médiane des %3 jours précédents, dont %4 doivent être connus (règle de la maison).</translation>
    </message>
    <message>
        <source>No bowl of these days is written down.</source>
        <translation>Aucune gamelle de ces jours n’est notée.</translation>
    </message>
    <message>
        <source>On %1 of %2 days with a bowl all of it is known (%3, %4 control pans); the others are missing, not zero.</source>
        <translation>Sur %1 des %2 jours avec gamelle tout est connu (%3, %4 gamelles témoins)&#xa0;; les autres manquent, ils ne sont pas zéro.</translation>
    </message>
    <message>
        <source>What an animal eats in all (g)</source>
        <translation>Ce qu’un animal mange en tout (g)</translation>
    </message>
    <message>
        <source>%1: the collection has no such food; nothing is counted of it.</source>
        <translation>%1&#xa0;: la collection n’a pas cet aliment&#xa0;; rien n’en est compté.</translation>
    </message>
    <message>
        <source>Nothing is known of these days.</source>
        <translation>Rien n’est connu de ces jours.</translation>
    </message>
    <message>
        <source>One animal: %1 g a day.</source>
        <translation>Un animal&#xa0;: %1 g par jour.</translation>
    </message>
    <message>
        <source>A shared bowl does not say who ate what. Of %1 g a day, %2 g each by equal share</source>
        <translation>Une gamelle partagée ne dit pas qui a mangé quoi. Sur %1 g par jour, %2 g chacun à parts égales</translation>
    </message>
    <message>
        <source>, %1 by body mass, %2 by metabolic mass</source>
        <translation>, %1 selon le poids vif, %2 selon le poids métabolique</translation>
    </message>
    <message>
        <source>; nobody can have had more than the %1 g.</source>
        <translation>; personne n’a pu avoir plus que les %1 g.</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Aliment</translation>
    </message>
    <message>
        <source>Offered g</source>
        <translation>Offert g</translation>
    </message>
    <message>
        <source>Eaten g</source>
        <translation>Mangé g</translation>
    </message>
    <message>
        <source>Eaten</source>
        <translation>Mangé</translation>
    </message>
    <message>
        <source>Bowls</source>
        <translation>Gamelles</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Non connu</translation>
    </message>
    <message>
        <source>Picked first</source>
        <translation>Pris d’abord</translation>
    </message>
    <message>
        <source>Picked first: Manly&apos;s alpha with its 95 % interval, from the last stretch in which it could be compared</source>
        <translation>Pris d’abord&#xa0;: l’alpha de Manly avec son intervalle à 95 %, du dernier tronçon où l’on pouvait comparer</translation>
    </message>
    <message>
        <source>%1 others</source>
        <translation>%1 autres</translation>
    </message>
</context>
<context>
    <name>Kitchen</name>
    <message>
        <source>Weight in g</source>
        <translation>Poids en g</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>%1 by %2 at %3</source>
        <translation>%1 par %2 à %3</translation>
    </message>
    <message>
        <source> (written a second time; does not count)</source>
        <translation> (noté une deuxième fois&#xa0;; ne compte pas)</translation>
    </message>
    <message>
        <source>%1 (not in the collection)</source>
        <translation>%1 (absent de la collection)</translation>
    </message>
    <message>
        <source>%1 (not in stock)</source>
        <translation>%1 (pas en stock)</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) (%1)</source>
        <translation>
            <numerusform>%n pièce (%1)</numerusform>
            <numerusform>%n pièces (%1)</numerusform>
        </translation>
    </message>
    <message>
        <source>1 animal</source>
        <translation>1 animal</translation>
    </message>
    <message>
        <source>%1 animals</source>
        <translation>%1 animaux</translation>
    </message>
    <message>
        <source> · %1 g in all</source>
        <translation> · %1 g en tout</translation>
    </message>
    <message>
        <source> · day %1 of %2 of a new diet</source>
        <translation> · jour %1 sur %2 d’une nouvelle ration</translation>
    </message>
    <message>
        <source>all weighed</source>
        <translation>tout est pesé</translation>
    </message>
    <message>
        <source>%1 of %2 weighed</source>
        <translation>%1 sur %2 pesés</translation>
    </message>
    <message>
        <source>in</source>
        <translation>juste</translation>
    </message>
    <message>
        <source>under</source>
        <translation>dessous</translation>
    </message>
    <message>
        <source>over</source>
        <translation>dessus</translation>
    </message>
    <message>
        <source>Less than nothing: tare the empty bowl and weigh again.</source>
        <translation>Moins que rien&#xa0;: tarez la gamelle vide et pesez de nouveau.</translation>
    </message>
    <message>
        <source>About ten times the plan: is the decimal point right?</source>
        <translation>Environ dix fois le plan&#xa0;: la virgule est-elle à sa place&#xa0;?</translation>
    </message>
    <message>
        <source>About a tenth of the plan: is the decimal point right?</source>
        <translation>Environ un dixième du plan&#xa0;: la virgule est-elle à sa place&#xa0;?</translation>
    </message>
    <message>
        <source>About the plan in ounces: set the scale to grams.</source>
        <translation>À peu près le plan en onces&#xa0;: réglez la balance sur les grammes.</translation>
    </message>
    <message>
        <source>Under the plan by more than the tolerance.</source>
        <translation>Sous le plan de plus que la tolérance.</translation>
    </message>
    <message>
        <source>Over the plan by more than the tolerance.</source>
        <translation>Au-dessus du plan de plus que la tolérance.</translation>
    </message>
    <message>
        <source>The bowl before weighed just the same a moment ago: is this another bowl?</source>
        <translation>La gamelle précédente pesait exactement pareil il y a un instant&#xa0;: est-ce bien une autre gamelle&#xa0;?</translation>
    </message>
    <message>
        <source>An earlier weight is later than now: is this machine&apos;s clock right?</source>
        <translation>Un poids antérieur est plus tardif que maintenant&#xa0;: l’horloge de cette machine est-elle à l’heure&#xa0;?</translation>
    </message>
    <message>
        <source>This sheet is of a day to come.</source>
        <translation>Cette fiche est celle d’un jour à venir.</translation>
    </message>
    <message>
        <source>Enter again keeps it as it is.</source>
        <translation>Entrée de nouveau le garde tel quel.</translation>
    </message>
    <message>
        <source>; before that </source>
        <translation>; avant cela </translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 restants</translation>
    </message>
    <message>
        <source>%1 lost</source>
        <translation>%1 perdus</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>all eaten</source>
        <translation>tout mangé</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation>non pesé</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>estimé</translation>
    </message>
    <message>
        <source>spilled</source>
        <translation>renversé</translation>
    </message>
    <message>
        <source>stolen</source>
        <translation>volé</translation>
    </message>
    <message>
        <source>%1: no diet is in force</source>
        <translation>%1&#xa0;: aucune ration en vigueur</translation>
    </message>
    <message>
        <source>%1: nobody knows how many animals it has</source>
        <translation>%1&#xa0;: personne ne sait combien il a d’animaux</translation>
    </message>
    <message>
        <source>%1: no animal on this day</source>
        <translation>%1&#xa0;: aucun animal ce jour</translation>
    </message>
    <message>
        <source>%1: nothing is planned for this day</source>
        <translation>%1&#xa0;: rien n’est prévu pour ce jour</translation>
    </message>
    <message>
        <source>Without weighing: %1 … %2 g %3 each%4</source>
        <translation>Sans peser&#xa0;: %1 … %2 g de %3 par animal%4</translation>
    </message>
    <message>
        <source>raw: %1 g %2</source>
        <translation>cru&#xa0;: %1 g de %2</translation>
    </message>
    <message>
        <source>? raw amount unknown: no cooking yield</source>
        <translation>? quantité crue inconnue&#xa0;: pas de rendement de cuisson</translation>
    </message>
    <message>
        <source>%1 g as bought</source>
        <translation>%1 g tel qu’acheté</translation>
    </message>
    <message>
        <source>Gloves on; washed hands are not enough.</source>
        <translation>Gants obligatoires&#xa0;; des mains lavées ne suffisent pas.</translation>
    </message>
    <message>
        <source>One bowl, one animal or group, with its label.</source>
        <translation>Une gamelle, un animal ou un groupe, avec son étiquette.</translation>
    </message>
    <message>
        <source>Bowls and tools stay in their section.</source>
        <translation>Gamelles et ustensiles restent dans leur secteur.</translation>
    </message>
    <message>
        <source>Leftovers never come back here: weigh them where dirty bowls go.</source>
        <translation>Les refus ne reviennent jamais ici&#xa0;: pesez-les là où vont les gamelles sales.</translation>
    </message>
</context>
<context>
    <name>KitchenExport</name>
    <message>
        <source>%1: a sheet of the kitchen is written as .pdf or .html</source>
        <translation>%1&#xa0;: une fiche de cuisine s’écrit en .pdf ou .html</translation>
    </message>
</context>
<context>
    <name>Life</name>
    <message>
        <source>%1 on %2</source>
        <translation>%1 le %2</translation>
    </message>
    <message>
        <source>%1 on %2 by %3</source>
        <translation>%1 le %2 par %3</translation>
    </message>
    <message>
        <source>sent back on %1</source>
        <translation>renvoyée le %1</translation>
    </message>
    <message>
        <source>sent back on %1 by %2</source>
        <translation>renvoyée le %1 par %2</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>brouillon</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation>soumise</translation>
    </message>
    <message>
        <source>approved</source>
        <translation>approuvée</translation>
    </message>
    <message>
        <source>retired</source>
        <translation>retirée</translation>
    </message>
    <message>
        <source>begun from version %1</source>
        <translation>commencée à partir de la version %1</translation>
    </message>
    <message numerus="yes">
        <source>fed from %1, phased in over %n days</source>
        <translation>
            <numerusform>distribuée à partir du %1, transition sur %n jour</numerusform>
            <numerusform>distribuée à partir du %1, transition sur %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>fed from %1</source>
        <translation>distribuée à partir du %1</translation>
    </message>
    <message>
        <source>bowl</source>
        <translation>gamelle</translation>
    </message>
    <message>
        <source>treat</source>
        <translation>friandise</translation>
    </message>
    <message>
        <source>training reward</source>
        <translation>récompense d’entraînement</translation>
    </message>
    <message>
        <source>enrichment</source>
        <translation>enrichissement</translation>
    </message>
    <message>
        <source>browse</source>
        <translation>feuillages et rameaux</translation>
    </message>
</context>
<context>
    <name>Numbers</name>
    <message>
        <source>“%1” may mean %2 or %3: type one of these, for nothing sets thousands apart here.</source>
        <translation>«&#xa0;%1&#xa0;» peut vouloir dire %2 ou %3&#xa0;: tapez l’un des deux, car rien ne sépare ici les milliers.</translation>
    </message>
    <message>
        <source>“%1” sets thousands apart: type it without, %2.</source>
        <translation>«&#xa0;%1&#xa0;» sépare les milliers&#xa0;: tapez-le sans séparateur, %2.</translation>
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
        <translation>Énergie métabolisable</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>Crude protein</source>
        <translation>Protéines brutes</translation>
    </message>
    <message>
        <source>Crude fat</source>
        <translation>Matières grasses brutes</translation>
    </message>
    <message>
        <source>Crude ash</source>
        <translation>Cendres brutes</translation>
    </message>
    <message>
        <source>Carbohydrate by difference</source>
        <translation>Glucides par différence</translation>
    </message>
    <message>
        <source>Nitrogen, total</source>
        <translation>Azote total</translation>
    </message>
    <message>
        <source>Alcohol</source>
        <translation>Alcool</translation>
    </message>
    <message>
        <source>Crude fibre</source>
        <translation>Cellulose brute</translation>
    </message>
    <message>
        <source>Total dietary fibre</source>
        <translation>Fibres alimentaires totales</translation>
    </message>
    <message>
        <source>Neutral detergent fibre</source>
        <translation>Fibres au détergent neutre</translation>
    </message>
    <message>
        <source>Acid detergent fibre</source>
        <translation>Fibres au détergent acide</translation>
    </message>
    <message>
        <source>Lignin</source>
        <translation>Lignine</translation>
    </message>
    <message>
        <source>Insoluble dietary fibre</source>
        <translation>Fibres alimentaires insolubles</translation>
    </message>
    <message>
        <source>Soluble dietary fibre</source>
        <translation>Fibres alimentaires solubles</translation>
    </message>
    <message>
        <source>Available carbohydrate</source>
        <translation>Glucides disponibles</translation>
    </message>
    <message>
        <source>Starch</source>
        <translation>Amidon</translation>
    </message>
    <message>
        <source>Sugars, total</source>
        <translation>Sucres totaux</translation>
    </message>
    <message>
        <source>Sucrose</source>
        <translation>Saccharose</translation>
    </message>
    <message>
        <source>Glucose</source>
        <translation>Glucose</translation>
    </message>
    <message>
        <source>Fructose</source>
        <translation>Fructose</translation>
    </message>
    <message>
        <source>Lactose</source>
        <translation>Lactose</translation>
    </message>
    <message>
        <source>Calcium</source>
        <translation>Calcium</translation>
    </message>
    <message>
        <source>Phosphorus</source>
        <translation>Phosphore</translation>
    </message>
    <message>
        <source>Magnesium</source>
        <translation>Magnésium</translation>
    </message>
    <message>
        <source>Potassium</source>
        <translation>Potassium</translation>
    </message>
    <message>
        <source>Sodium</source>
        <translation>Sodium</translation>
    </message>
    <message>
        <source>Chloride</source>
        <translation>Chlorure</translation>
    </message>
    <message>
        <source>Sulphur</source>
        <translation>Soufre</translation>
    </message>
    <message>
        <source>Iron</source>
        <translation>Fer</translation>
    </message>
    <message>
        <source>Zinc</source>
        <translation>Zinc</translation>
    </message>
    <message>
        <source>Copper</source>
        <translation>Cuivre</translation>
    </message>
    <message>
        <source>Manganese</source>
        <translation>Manganèse</translation>
    </message>
    <message>
        <source>Selenium</source>
        <translation>Sélénium</translation>
    </message>
    <message>
        <source>Iodine</source>
        <translation>Iode</translation>
    </message>
    <message>
        <source>Chromium</source>
        <translation>Chrome</translation>
    </message>
    <message>
        <source>Cobalt</source>
        <translation>Cobalt</translation>
    </message>
    <message>
        <source>Molybdenum</source>
        <translation>Molybdène</translation>
    </message>
    <message>
        <source>Fluoride</source>
        <translation>Fluorure</translation>
    </message>
    <message>
        <source>Vitamin A, retinol activity equivalents</source>
        <translation>Vitamine A, équivalents d’activité rétinol</translation>
    </message>
    <message>
        <source>Retinol</source>
        <translation>Rétinol</translation>
    </message>
    <message>
        <source>Beta-carotene</source>
        <translation>Bêta-carotène</translation>
    </message>
    <message>
        <source>Alpha-carotene</source>
        <translation>Alpha-carotène</translation>
    </message>
    <message>
        <source>Beta-cryptoxanthin</source>
        <translation>Bêta-cryptoxanthine</translation>
    </message>
    <message>
        <source>Vitamin D</source>
        <translation>Vitamine D</translation>
    </message>
    <message>
        <source>Vitamin D2, ergocalciferol</source>
        <translation>Vitamine D2, ergocalciférol</translation>
    </message>
    <message>
        <source>Vitamin D3, cholecalciferol</source>
        <translation>Vitamine D3, cholécalciférol</translation>
    </message>
    <message>
        <source>Vitamin E, alpha-tocopherol</source>
        <translation>Vitamine E, alpha-tocophérol</translation>
    </message>
    <message>
        <source>Vitamin K</source>
        <translation>Vitamine K</translation>
    </message>
    <message>
        <source>Vitamin C</source>
        <translation>Vitamine C</translation>
    </message>
    <message>
        <source>Thiamin</source>
        <translation>Thiamine</translation>
    </message>
    <message>
        <source>Riboflavin</source>
        <translation>Riboflavine</translation>
    </message>
    <message>
        <source>Niacin</source>
        <translation>Niacine</translation>
    </message>
    <message>
        <source>Pantothenic acid</source>
        <translation>Acide pantothénique</translation>
    </message>
    <message>
        <source>Vitamin B6</source>
        <translation>Vitamine B6</translation>
    </message>
    <message>
        <source>Biotin</source>
        <translation>Biotine</translation>
    </message>
    <message>
        <source>Folate, total</source>
        <translation>Folates totaux</translation>
    </message>
    <message>
        <source>Vitamin B12</source>
        <translation>Vitamine B12</translation>
    </message>
    <message>
        <source>Choline</source>
        <translation>Choline</translation>
    </message>
    <message>
        <source>Arginine</source>
        <translation>Arginine</translation>
    </message>
    <message>
        <source>Histidine</source>
        <translation>Histidine</translation>
    </message>
    <message>
        <source>Isoleucine</source>
        <translation>Isoleucine</translation>
    </message>
    <message>
        <source>Leucine</source>
        <translation>Leucine</translation>
    </message>
    <message>
        <source>Lysine</source>
        <translation>Lysine</translation>
    </message>
    <message>
        <source>Methionine</source>
        <translation>Méthionine</translation>
    </message>
    <message>
        <source>Cystine</source>
        <translation>Cystine</translation>
    </message>
    <message>
        <source>Phenylalanine</source>
        <translation>Phénylalanine</translation>
    </message>
    <message>
        <source>Tyrosine</source>
        <translation>Tyrosine</translation>
    </message>
    <message>
        <source>Threonine</source>
        <translation>Thréonine</translation>
    </message>
    <message>
        <source>Tryptophan</source>
        <translation>Tryptophane</translation>
    </message>
    <message>
        <source>Valine</source>
        <translation>Valine</translation>
    </message>
    <message>
        <source>Alanine</source>
        <translation>Alanine</translation>
    </message>
    <message>
        <source>Aspartic acid</source>
        <translation>Acide aspartique</translation>
    </message>
    <message>
        <source>Glutamic acid</source>
        <translation>Acide glutamique</translation>
    </message>
    <message>
        <source>Glycine</source>
        <translation>Glycine</translation>
    </message>
    <message>
        <source>Proline</source>
        <translation>Proline</translation>
    </message>
    <message>
        <source>Serine</source>
        <translation>Sérine</translation>
    </message>
    <message>
        <source>Taurine</source>
        <translation>Taurine</translation>
    </message>
    <message>
        <source>Saturated fatty acids</source>
        <translation>Acides gras saturés</translation>
    </message>
    <message>
        <source>Monounsaturated fatty acids</source>
        <translation>Acides gras mono-insaturés</translation>
    </message>
    <message>
        <source>Polyunsaturated fatty acids</source>
        <translation>Acides gras polyinsaturés</translation>
    </message>
    <message>
        <source>n-3 fatty acids, total</source>
        <translation>Acides gras n-3, total</translation>
    </message>
    <message>
        <source>n-6 fatty acids, total</source>
        <translation>Acides gras n-6, total</translation>
    </message>
    <message>
        <source>Linoleic acid</source>
        <translation>Acide linoléique</translation>
    </message>
    <message>
        <source>Alpha-linolenic acid</source>
        <translation>Acide alpha-linolénique</translation>
    </message>
    <message>
        <source>Arachidonic acid</source>
        <translation>Acide arachidonique</translation>
    </message>
    <message>
        <source>Eicosapentaenoic acid</source>
        <translation>Acide eicosapentaénoïque</translation>
    </message>
    <message>
        <source>Docosapentaenoic acid</source>
        <translation>Acide docosapentaénoïque</translation>
    </message>
    <message>
        <source>Docosahexaenoic acid</source>
        <translation>Acide docosahexaénoïque</translation>
    </message>
    <message>
        <source>Cholesterol</source>
        <translation>Cholestérol</translation>
    </message>
    <message>
        <source>Oxalic acid</source>
        <translation>Acide oxalique</translation>
    </message>
    <message>
        <source>Phytic acid</source>
        <translation>Acide phytique</translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation>Caféine</translation>
    </message>
    <message>
        <source>Theobromine</source>
        <translation>Théobromine</translation>
    </message>
    <message>
        <source>Maltose</source>
        <translation>Maltose</translation>
    </message>
    <message>
        <source>Galactose</source>
        <translation>Galactose</translation>
    </message>
    <message>
        <source>Lycopene</source>
        <translation>Lycopène</translation>
    </message>
    <message>
        <source>Lutein and zeaxanthin</source>
        <translation>Lutéine et zéaxanthine</translation>
    </message>
    <message>
        <source>Tocopherol, beta</source>
        <translation>Bêta-tocophérol</translation>
    </message>
    <message>
        <source>Tocopherol, gamma</source>
        <translation>Gamma-tocophérol</translation>
    </message>
    <message>
        <source>Tocopherol, delta</source>
        <translation>Delta-tocophérol</translation>
    </message>
    <message>
        <source>Tocotrienol, alpha</source>
        <translation>Alpha-tocotriénol</translation>
    </message>
    <message>
        <source>Tocotrienol, beta</source>
        <translation>Bêta-tocotriénol</translation>
    </message>
    <message>
        <source>Tocotrienol, gamma</source>
        <translation>Gamma-tocotriénol</translation>
    </message>
    <message>
        <source>Tocotrienol, delta</source>
        <translation>Delta-tocotriénol</translation>
    </message>
    <message>
        <source>Menaquinone-4</source>
        <translation>Ménaquinone-4</translation>
    </message>
    <message>
        <source>Dihydrophylloquinone</source>
        <translation>Dihydrophylloquinone</translation>
    </message>
    <message>
        <source>Folic acid, added</source>
        <translation>Acide folique ajouté</translation>
    </message>
    <message>
        <source>Folate, natural</source>
        <translation>Folates naturels</translation>
    </message>
    <message>
        <source>Folate equivalents (DFE)</source>
        <translation>Équivalents de folates (DFE)</translation>
    </message>
    <message>
        <source>Betaine</source>
        <translation>Bétaïne</translation>
    </message>
    <message>
        <source>Hydroxyproline</source>
        <translation>Hydroxyproline</translation>
    </message>
    <message>
        <source>Fatty acids, trans</source>
        <translation>Acides gras trans</translation>
    </message>
    <message>
        <source>Fatty acid 4:0 (butyric)</source>
        <translation>Acide gras 4:0 (butyrique)</translation>
    </message>
    <message>
        <source>Fatty acid 6:0 (caproic)</source>
        <translation>Acide gras 6:0 (caproïque)</translation>
    </message>
    <message>
        <source>Fatty acid 8:0 (caprylic)</source>
        <translation>Acide gras 8:0 (caprylique)</translation>
    </message>
    <message>
        <source>Fatty acid 10:0 (capric)</source>
        <translation>Acide gras 10:0 (caprique)</translation>
    </message>
    <message>
        <source>Fatty acid 12:0 (lauric)</source>
        <translation>Acide gras 12:0 (laurique)</translation>
    </message>
    <message>
        <source>Fatty acid 14:0 (myristic)</source>
        <translation>Acide gras 14:0 (myristique)</translation>
    </message>
    <message>
        <source>Fatty acid 16:0 (palmitic)</source>
        <translation>Acide gras 16:0 (palmitique)</translation>
    </message>
    <message>
        <source>Fatty acid 18:0 (stearic)</source>
        <translation>Acide gras 18:0 (stéarique)</translation>
    </message>
    <message>
        <source>Fatty acid 20:0 (arachidic)</source>
        <translation>Acide gras 20:0 (arachidique)</translation>
    </message>
    <message>
        <source>Fatty acid 18:1 undifferentiated</source>
        <translation>Acide gras 18:1, non différencié</translation>
    </message>
    <message>
        <source>Fatty acid 18:2 undifferentiated</source>
        <translation>Acide gras 18:2, non différencié</translation>
    </message>
    <message>
        <source>Fatty acid 18:3 undifferentiated</source>
        <translation>Acide gras 18:3, non différencié</translation>
    </message>
    <message>
        <source>Fatty acid 20:4 undifferentiated</source>
        <translation>Acide gras 20:4, non différencié</translation>
    </message>
    <message>
        <source>Fatty acid 22:0 (behenic)</source>
        <translation>Acide gras 22:0 (béhénique)</translation>
    </message>
    <message>
        <source>Fatty acid 14:1 (myristoleic)</source>
        <translation>Acide gras 14:1 (myristoléique)</translation>
    </message>
    <message>
        <source>Fatty acid 16:1 undifferentiated</source>
        <translation>Acide gras 16:1, non différencié</translation>
    </message>
    <message>
        <source>Fatty acid 18:4</source>
        <translation>Acide gras 18:4</translation>
    </message>
    <message>
        <source>Fatty acid 20:1</source>
        <translation>Acide gras 20:1</translation>
    </message>
    <message>
        <source>Fatty acid 22:1 undifferentiated</source>
        <translation>Acide gras 22:1, non différencié</translation>
    </message>
    <message>
        <source>Phytosterols</source>
        <translation>Phytostérols</translation>
    </message>
    <message>
        <source>Stigmasterol</source>
        <translation>Stigmastérol</translation>
    </message>
    <message>
        <source>Campesterol</source>
        <translation>Campestérol</translation>
    </message>
    <message>
        <source>Beta-sitosterol</source>
        <translation>Bêta-sitostérol</translation>
    </message>
    <message>
        <source>Fatty acid 15:0 (pentadecanoic)</source>
        <translation>Acide gras 15:0 (pentadécanoïque)</translation>
    </message>
    <message>
        <source>Fatty acid 17:0 (margaric)</source>
        <translation>Acide gras 17:0 (margarique)</translation>
    </message>
    <message>
        <source>Fatty acid 24:0 (lignoceric)</source>
        <translation>Acide gras 24:0 (lignocérique)</translation>
    </message>
    <message>
        <source>Fatty acid 16:1 t</source>
        <translation>Acide gras 16:1 t</translation>
    </message>
    <message>
        <source>Fatty acid 18:1 t</source>
        <translation>Acide gras 18:1 t</translation>
    </message>
    <message>
        <source>Fatty acid 22:1 t</source>
        <translation>Acide gras 22:1 t</translation>
    </message>
    <message>
        <source>Fatty acid 18:2 t,t</source>
        <translation>Acide gras 18:2 t,t</translation>
    </message>
    <message>
        <source>Fatty acid 18:2 CLAs</source>
        <translation>Acide gras 18:2 CLA</translation>
    </message>
    <message>
        <source>Fatty acid 24:1 c</source>
        <translation>Acide gras 24:1 c</translation>
    </message>
    <message>
        <source>Fatty acid 20:2 n-6 c,c</source>
        <translation>Acide gras 20:2 n-6 c,c</translation>
    </message>
    <message>
        <source>Fatty acid 16:1 c</source>
        <translation>Acide gras 16:1 c</translation>
    </message>
    <message>
        <source>Fatty acid 18:1 c</source>
        <translation>Acide gras 18:1 c</translation>
    </message>
    <message>
        <source>Fatty acid 22:1 c</source>
        <translation>Acide gras 22:1 c</translation>
    </message>
    <message>
        <source>Fatty acid 18:3 n-6 c,c,c</source>
        <translation>Acide gras 18:3 n-6 c,c,c</translation>
    </message>
    <message>
        <source>Fatty acid 17:1</source>
        <translation>Acide gras 17:1</translation>
    </message>
    <message>
        <source>Fatty acid 20:3 undifferentiated</source>
        <translation>Acide gras 20:3, non différencié</translation>
    </message>
    <message>
        <source>Fatty acids, trans, one double bond</source>
        <translation>Acides gras trans, une double liaison</translation>
    </message>
    <message>
        <source>Fatty acids, trans, several double bonds</source>
        <translation>Acides gras trans, plusieurs doubles liaisons</translation>
    </message>
    <message>
        <source>Fatty acid 13:0 (tridecanoic)</source>
        <translation>Acide gras 13:0 (tridécanoïque)</translation>
    </message>
    <message>
        <source>Fatty acid 15:1</source>
        <translation>Acide gras 15:1</translation>
    </message>
    <message>
        <source>Fatty acid 20:3 n-3</source>
        <translation>Acide gras 20:3 n-3</translation>
    </message>
    <message>
        <source>Fatty acid 20:3 n-6</source>
        <translation>Acide gras 20:3 n-6</translation>
    </message>
    <message>
        <source>Fatty acid 21:5</source>
        <translation>Acide gras 21:5</translation>
    </message>
    <message>
        <source>Fatty acid 22:4</source>
        <translation>Acide gras 22:4</translation>
    </message>
    <message>
        <source>Fatty acid 18:1-11 t (18:1t n-7)</source>
        <translation>Acide gras 18:1-11 t (18:1t n-7)</translation>
    </message>
    <message>
        <source>Methionine and cystine</source>
        <translation>Méthionine et cystine</translation>
    </message>
    <message>
        <source>Phenylalanine and tyrosine</source>
        <translation>Phénylalanine et tyrosine</translation>
    </message>
    <message>
        <source>EPA and DHA</source>
        <translation>EPA et DHA</translation>
    </message>
    <message>
        <source>Phosphorus, non-phytate</source>
        <translation>Phosphore non phytique</translation>
    </message>
</context>
<context>
    <name>Origin</name>
    <message>
        <source>■ seen</source>
        <translation>■ vu</translation>
    </message>
    <message>
        <source>○ from memory</source>
        <translation>○ de mémoire</translation>
    </message>
    <message>
        <source>◆ house rule</source>
        <translation>◆ règle de la maison</translation>
    </message>
    <message>
        <source>▲ invented</source>
        <translation>▲ inventé</translation>
    </message>
    <message>
        <source>□ worked out</source>
        <translation>□ calculé</translation>
    </message>
    <message>
        <source>? not stated</source>
        <translation>? non indiqué</translation>
    </message>
    <message>
        <source>recalled, not looked up</source>
        <translation>de mémoire, non vérifié</translation>
    </message>
    <message>
        <source>recalled, not looked up: said to be %1</source>
        <translation>de mémoire, non vérifié&#xa0;: serait %1</translation>
    </message>
    <message>
        <source>the house&apos;s own rule</source>
        <translation>la règle de la maison</translation>
    </message>
    <message>
        <source>the house: %1</source>
        <translation>la maison&#xa0;: %1</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>inventé</translation>
    </message>
    <message>
        <source>invented: %1</source>
        <translation>inventé&#xa0;: %1</translation>
    </message>
    <message>
        <source>worked out from: %1</source>
        <translation>calculé de&#xa0;: %1</translation>
    </message>
    <message>
        <source>no source stated</source>
        <translation>aucune source indiquée</translation>
    </message>
</context>
<context>
    <name>Pages</name>
    <message>
        <source>Draft</source>
        <translation>Brouillon</translation>
    </message>
    <message>
        <source>Submitted</source>
        <translation>Soumise</translation>
    </message>
    <message>
        <source>Approved</source>
        <translation>Approuvée</translation>
    </message>
    <message>
        <source>Retired</source>
        <translation>Retirée</translation>
    </message>
    <message>
        <source>{} by {} on {}</source>
        <translation>{} par {} le {}</translation>
    </message>
    <message>
        <source>Not for feeding.</source>
        <translation>Ne pas distribuer.</translation>
    </message>
    <message>
        <source>Fed from {}.</source>
        <translation>Distribuée à partir du {}.</translation>
    </message>
    <message>
        <source>Fed from {}, phased in over {} day.</source>
        <translation>Distribuée à partir du {}, introduite sur {} jour.</translation>
    </message>
    <message>
        <source>Fed from {}, phased in over {} days.</source>
        <translation>Distribuée à partir du {}, introduite sur {} jours.</translation>
    </message>
    <message>
        <source>{} of {} kg</source>
        <translation>{} de {} kg</translation>
    </message>
    <message>
        <source>{} kcal ME ({}) per animal and day</source>
        <translation>{} kcal d’EM ({}) par animal et par jour</translation>
    </message>
    <message>
        <source>; cost ?</source>
        <translation>; coût ?</translation>
    </message>
    <message>
        <source>; cost {} per animal, {} for {}</source>
        <translation>; coût {} par animal, {} pour {}</translation>
    </message>
    <message>
        <source>(without {} food that has no price)</source>
        <translation>(sans {} aliment qui n’a pas de prix)</translation>
    </message>
    <message>
        <source>(without {} foods that have no price)</source>
        <translation>(sans {} aliments qui n’ont pas de prix)</translation>
    </message>
    <message>
        <source>Set otherwise than the targets say: {}.</source>
        <translation>Fixé autrement que ne le disent les cibles : {}.</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>sans motif</translation>
    </message>
    <message>
        <source>? Not judged: {}.</source>
        <translation>? Non jugé : {}.</translation>
    </message>
    <message>
        <source>of no food is it known</source>
        <translation>connu d’aucun aliment</translation>
    </message>
    <message>
        <source>no food is of its group</source>
        <translation>aucun aliment n’est de son groupe</translation>
    </message>
    <message>
        <source>the body mass is not known</source>
        <translation>la masse corporelle n’est pas connue</translation>
    </message>
    <message>
        <source>the need of an animal without body heat of its own is no feeding rate; state a target in its profile</source>
        <translation>le besoin d’un animal sans chaleur corporelle propre n’est pas une ration ; indiquez une cible dans son profil</translation>
    </message>
    <message>
        <source>it does not say of how dry a feed it speaks</source>
        <translation>il n’est pas dit de quelle matière sèche il s’agit</translation>
    </message>
    <message>
        <source>it cannot be judged</source>
        <translation>cela ne peut être jugé</translation>
    </message>
    <message>
        <source>Energy and targets are of what is eaten: {}; all else is eaten up.</source>
        <translation>L’énergie et les cibles portent sur ce qui est mangé : {} ; tout le reste est mangé en entier.</translation>
    </message>
    <message>
        <source>What is fed, as fed, each day</source>
        <translation>Ce qui est distribué chaque jour, tel que distribué</translation>
    </message>
    <message>
        <source>Meal</source>
        <translation>Repas</translation>
    </message>
    <message>
        <source>g per animal</source>
        <translation>g par animal</translation>
    </message>
    <message>
        <source>g for {}</source>
        <translation>g pour {}</translation>
    </message>
    <message>
        <source>Given as</source>
        <translation>Donné comme</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>En tout</translation>
    </message>
    <message>
        <source>How it stands against its targets</source>
        <translation>Où elle en est face à ses cibles</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Connu</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>, hard</source>
        <translation>, stricte</translation>
    </message>
    <message>
        <source>Set aside: {}</source>
        <translation>Écartée : {}</translation>
    </message>
    <message>
        <source>Known: the share of the eaten dry matter whose value is known. What is unknown could only add to a value with ≥; one with ≈ it could move either way.</source>
        <translation>Connu : la part de la matière sèche mangée dont la valeur est connue. L’inconnu ne peut qu’ajouter à une valeur avec ≥ ; une valeur avec ≈ peut bouger dans les deux sens.</translation>
    </message>
    <message>
        <source>g per animal and day</source>
        <translation>g par animal et par jour</translation>
    </message>
    <message>
        <source>g for {} and day</source>
        <translation>g pour {} et par jour</translation>
    </message>
    <message>
        <source>least g</source>
        <translation>g au moins</translation>
    </message>
    <message>
        <source>most g</source>
        <translation>g au plus</translation>
    </message>
    <message>
        <source>Cost per animal and day</source>
        <translation>Coût par animal et par jour</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Au moins</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Au plus</translation>
    </message>
    <message>
        <source>Known (%)</source>
        <translation>Connu (%)</translation>
    </message>
    <message>
        <source>Hard</source>
        <translation>Stricte</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Mise en garde</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>Gravité</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Conseil</translation>
    </message>
    <message>
        <source>Set aside because</source>
        <translation>Écartée parce que</translation>
    </message>
    <message>
        <source>Diet</source>
        <translation>Ration</translation>
    </message>
    <message>
        <source>never</source>
        <translation>jamais</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>limiter</translation>
    </message>
    <message>
        <source>consider</source>
        <translation>à considérer</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>vue dans l’original</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>de mémoire</translation>
    </message>
    <message>
        <source>house-rule</source>
        <translation>règle de la maison</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>inventé</translation>
    </message>
    <message>
        <source>derived</source>
        <translation>dérivé</translation>
    </message>
    <message>
        <source>for {}</source>
        <translation>pour {}</translation>
    </message>
    <message>
        <source>● met</source>
        <translation>● atteinte</translation>
    </message>
    <message>
        <source>◐ at limit</source>
        <translation>◐ à la limite</translation>
    </message>
    <message>
        <source>▼ short</source>
        <translation>▼ manque</translation>
    </message>
    <message>
        <source>▲ over</source>
        <translation>▲ excès</translation>
    </message>
    <message>
        <source>? unknown</source>
        <translation>? inconnu</translation>
    </message>
    <message>
        <source>per kg as fed</source>
        <translation>par kg tel que distribué</translation>
    </message>
    <message>
        <source>per kg DM</source>
        <translation>par kg de MS</translation>
    </message>
    <message>
        <source>per 1000 kcal ME</source>
        <translation>par 1000 kcal d’EM</translation>
    </message>
    <message>
        <source>per animal and day</source>
        <translation>par animal et par jour</translation>
    </message>
    <message>
        <source>per kg body mass</source>
        <translation>par kg de masse corporelle</translation>
    </message>
    <message>
        <source>per kg^0.75 body mass</source>
        <translation>par kg^0,75 de masse corporelle</translation>
    </message>
    <message>
        <source>Group: {}</source>
        <translation>Groupe : {}</translation>
    </message>
    <message>
        <source>% of as fed</source>
        <translation>% du distribué</translation>
    </message>
    <message>
        <source>% of ME</source>
        <translation>% de l’EM</translation>
    </message>
    <message>
        <source>% of DM</source>
        <translation>% de la MS</translation>
    </message>
    <message>
        <source>Grams per animal, as fed: {} to {}</source>
        <translation>Grammes par animal, tels que distribués : {} au {}</translation>
    </message>
    <message>
        <source>To buy for {}</source>
        <translation>À acheter pour {}</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Semaine</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Groupe</translation>
    </message>
    <message>
        <source>Offered, kg</source>
        <translation>Distribué, kg</translation>
    </message>
    <message>
        <source>To buy, kg</source>
        <translation>À acheter, kg</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>en tout</translation>
    </message>
    <message>
        <source>The mean day against the targets</source>
        <translation>Le jour moyen face aux cibles</translation>
    </message>
    <message>
        <source>{} animal</source>
        <translation>{} animal</translation>
    </message>
    <message>
        <source>{} animals</source>
        <translation>{} animaux</translation>
    </message>
    <message>
        <source>, {} g in all</source>
        <translation>, {} g en tout</translation>
    </message>
    <message>
        <source>, a new diet is phased in: day {} of {}</source>
        <translation>, transition vers une nouvelle ration&#xa0;: jour {} sur {}</translation>
    </message>
    <message>
        <source>To weigh</source>
        <translation>À peser</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Aliment</translation>
    </message>
    <message>
        <source>Preparation</source>
        <translation>Préparation</translation>
    </message>
    <message>
        <source>Weighed, g</source>
        <translation>Pesé, g</translation>
    </message>
    <message>
        <source> (swapped in)</source>
        <translation> (en remplacement)</translation>
    </message>
    <message>
        <source> (not in stock)</source>
        <translation> (pas en stock)</translation>
    </message>
    <message>
        <source>{} (not in the collection)</source>
        <translation>{} (absent de la collection)</translation>
    </message>
    <message>
        <source>{} piece ({})</source>
        <translation>{} pièce ({})</translation>
    </message>
    <message>
        <source>{} pieces ({})</source>
        <translation>{} pièces ({})</translation>
    </message>
    <message>
        <source>Without weighing, for each animal: {} … {} g {} ({}){}</source>
        <translation>Sans peser, pour chaque animal&#xa0;: {} … {} g de {} ({}){}</translation>
    </message>
    <message>
        <source>bowl</source>
        <translation>gamelle</translation>
    </message>
    <message>
        <source>treat</source>
        <translation>friandise</translation>
    </message>
    <message>
        <source>enrichment</source>
        <translation>enrichissement</translation>
    </message>
    <message>
        <source>browse</source>
        <translation>feuillages et rameaux</translation>
    </message>
    <message>
        <source>The kitchen needs</source>
        <translation>Il faut à la cuisine</translation>
    </message>
    <message>
        <source>In the bowls</source>
        <translation>Dans les gamelles</translation>
    </message>
    <message>
        <source>Raw, bought</source>
        <translation>Cru, acheté</translation>
    </message>
    <message>
        <source>Bowls</source>
        <translation>Gamelles</translation>
    </message>
    <message>
        <source>raw: {} {}</source>
        <translation>cru&#xa0;: {} de {}</translation>
    </message>
    <message>
        <source>? raw amount unknown: no cooking yield</source>
        <translation>? quantité crue inconnue&#xa0;: pas de rendement de cuisson</translation>
    </message>
    <message>
        <source>{} as bought</source>
        <translation>{} tel qu’acheté</translation>
    </message>
    <message>
        <source>Out of the freezer today, for tomorrow</source>
        <translation>À sortir du congélateur aujourd’hui, pour demain</translation>
    </message>
    <message>
        <source>Feed well today: live food of tomorrow</source>
        <translation>À bien nourrir aujourd’hui&#xa0;: proies vivantes de demain</translation>
    </message>
    <message>
        <source>No bowl for {}: {}.</source>
        <translation>Pas de gamelle pour {}&#xa0;: {}.</translation>
    </message>
    <message>
        <source>no diet is in force</source>
        <translation>aucune ration en vigueur</translation>
    </message>
    <message>
        <source>nobody knows how many animals it has</source>
        <translation>personne ne sait combien il a d’animaux</translation>
    </message>
    <message>
        <source>it has no animal on this day</source>
        <translation>il n’a aucun animal ce jour</translation>
    </message>
    <message>
        <source>nothing is planned for this day</source>
        <translation>rien n’est prévu pour ce jour</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Mises en garde</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Toujours</translation>
    </message>
    <message>
        <source>Gloves on; washed hands are not enough.</source>
        <translation>Gants obligatoires&#xa0;; des mains lavées ne suffisent pas.</translation>
    </message>
    <message>
        <source>One bowl, one animal or group, with its label.</source>
        <translation>Une gamelle, un animal ou un groupe, avec son étiquette.</translation>
    </message>
    <message>
        <source>Bowls and tools stay in their section.</source>
        <translation>Gamelles et ustensiles restent dans leur secteur.</translation>
    </message>
    <message>
        <source>Leftovers never come back into the prep room: they are weighed where dirty bowls go.</source>
        <translation>Les refus ne reviennent jamais en cuisine&#xa0;: on les pèse là où vont les gamelles sales.</translation>
    </message>
    <message>
        <source>Tare the empty bowl before each food.</source>
        <translation>Tarez la gamelle vide avant chaque aliment.</translation>
    </message>
    <message>
        <source>Bowl labels</source>
        <translation>Étiquettes des gamelles</translation>
    </message>
    <message>
        <source>Invented sample: not for feeding.</source>
        <translation>Exemple inventé&#xa0;: ne pas distribuer.</translation>
    </message>
    <message>
        <source>INVENTED SAMPLE: animals, masses, products and decisions on this sheet are made up. Not for feeding.</source>
        <translation>EXEMPLE INVENTÉ&#xa0;: animaux, poids, produits et décisions de cette fiche sont imaginaires. Ne pas distribuer.</translation>
    </message>
    <message>
        <source>Tarebowl supports, and does not replace, a qualified nutritionist and a licensed vet; local rules on feeding,
hygiene, live prey and medicines come first. Published requirements of a model species are a starting point.
</source>
        <translation>Tarebowl aide, sans les remplacer, un nutritionniste qualifié et un vétérinaire agréé&#xa0;; les règles locales sur l’alimentation,
l’hygiène, les proies vivantes et les médicaments passent avant. Les besoins publiés d’une espèce modèle sont un point de départ.
</translation>
    </message>
    <message>
        <source>training-reward</source>
        <translation>récompense d’entraînement</translation>
    </message>
</context>
<context>
    <name>Pans</name>
    <message>
        <source>any %1</source>
        <translation>tout %1</translation>
    </message>
    <message>
        <source>still stands; it corrects no leftover until it is weighed again</source>
        <translation>encore en place&#xa0;; elle ne corrige aucun refus avant d’être pesée de nouveau</translation>
    </message>
    <message>
        <source>neither lost nor drew water</source>
        <translation>n’a ni perdu ni pris d’eau</translation>
    </message>
    <message>
        <source>lost %1 of its mass</source>
        <translation>a perdu %1 de sa masse</translation>
    </message>
    <message>
        <source>drew %1 of its mass</source>
        <translation>a pris %1 de sa masse</translation>
    </message>
    <message>
        <source>%1: %2 g put out, still stands%3</source>
        <translation>%1&#xa0;: %2 g posés, encore en place%3</translation>
    </message>
    <message>
        <source>%1: %2 g → %3 g, %4%5</source>
        <translation>%1&#xa0;: %2 g → %3 g, %4%5</translation>
    </message>
    <message>
        <source> Enter again keeps it as it is.</source>
        <translation> Entrée de nouveau la garde telle quelle.</translation>
    </message>
    <message>
        <source>A pan that was put out empty says nothing: weigh the food that was in it.</source>
        <translation>Une gamelle posée vide ne dit rien&#xa0;: pesez l’aliment qu’elle contenait.</translation>
    </message>
    <message>
        <source>Nothing is left of it: was it emptied, or eaten from? It will count for no leftover.</source>
        <translation>Il n’en reste rien&#xa0;: a-t-elle été vidée, ou a-t-on mangé dedans&#xa0;? Elle ne comptera pour aucun refus.</translation>
    </message>
    <message>
        <source>It came back more than a tenth heavier: rain, or the weights the wrong way round?</source>
        <translation>Elle est revenue plus lourde de plus d’un dixième&#xa0;: la pluie, ou les poids inversés&#xa0;?</translation>
    </message>
    <message>
        <source>More than half of it is gone: did an animal reach it?</source>
        <translation>Plus de la moitié a disparu&#xa0;: un animal l’a-t-il atteinte&#xa0;?</translation>
    </message>
    <message>
        <source>There is a pan of this already: both will count, each by half. To change it choose it above.</source>
        <translation>Il y en a déjà une gamelle&#xa0;: les deux compteront, chacune pour moitié. Pour la modifier, choisissez-la ci-dessus.</translation>
    </message>
</context>
<context>
    <name>PartTexts</name>
    <message>
        <source>Species, their groups, and the animals in each. Choose one to see its page at the right.</source>
        <translation>Les espèces, leurs groupes, et les animaux de chacun. Choisissez-en un pour voir sa page à droite.</translation>
    </message>
    <message>
        <source>What the group is called, its section, and who is in it since when. How many eat is counted from this; a bowl&apos;s grams are those of one animal times the number.</source>
        <translation>Le nom du groupe, son secteur, et qui en fait partie depuis quand. On en compte combien mangent&#xa0;; les grammes d’une gamelle sont ceux d’un animal fois leur nombre.</translation>
    </message>
    <message>
        <source>Body mass over time. Points are weighings; the mass that counts of an animal is the median of its last fortnight&apos;s, or else the newest, and a group&apos;s is the mean of its animals. One that was left out does not count. Energy need and everything per kg rest on it.</source>
        <translation>Le poids vif au fil du temps. Les points sont des pesées&#xa0;; le poids d’un animal qui compte est la médiane de sa dernière quinzaine, ou sinon le plus récent, et celui d’un groupe est la moyenne de ses animaux. Un poids écarté ne compte pas. Le besoin en énergie et tout ce qui est par kg en dépendent.</translation>
    </message>
    <message>
        <source>Each weighing and condition score with its day and who wrote it down. A first entry is never written over: a correction stands beside it, with a reason.</source>
        <translation>Chaque pesée et note d’état corporel avec son jour et qui l’a notée. Une première entrée n’est jamais écrasée&#xa0;: une correction se place à côté, avec une raison.</translation>
    </message>
    <message>
        <source>A weighing or a condition score of today or of another day. A mass that is far from what is known of the animal is asked about before it is kept.</source>
        <translation>Une pesée ou une note d’état d’aujourd’hui ou d’un autre jour. Un poids loin de ce que l’on sait de l’animal est questionné avant d’être gardé.</translation>
    </message>
    <message>
        <source>The energy need, worked out step by step: energy at 1 kg of body mass, the exponent, body mass, and the factor for what the animals do. A published number names its source, one that is edited is the house&apos;s own. It is where a diet starts; body mass and condition decide whether it was right.</source>
        <translation>Le besoin en énergie, calculé pas à pas&#xa0;: énergie à 1 kg de poids vif, exposant, poids vif, et facteur de ce que font les animaux. Un nombre publié nomme sa source, un nombre modifié est celui de la maison. C’est là qu’une ration commence&#xa0;; le poids vif et l’état corporel décident si c’était juste.</translation>
    </message>
    <message>
        <source>The targets that this group&apos;s diets are judged by. Each names where it was stated and how it is known: a published requirement, the house&apos;s own rule, recalled, or derived from a model species, which is a starting point and not a requirement.</source>
        <translation>Les cibles par lesquelles les rations de ce groupe sont jugées. Chacune nomme où elle a été énoncée et comment on la connaît&#xa0;: un besoin publié, la règle de la maison, de mémoire, ou dérivée d’une espèce modèle, ce qui est un point de départ et non un besoin établi.</translation>
    </message>
    <message>
        <source>The rules of the target profile, nutrient by nutrient: from, to, unit and basis, where each was stated, and whether it is a hard rule. Edit one and a draft is kept until it is put in force.</source>
        <translation>Les règles du profil de cibles, nutriment par nutriment&#xa0;: de, à, unité et base, où chacune a été énoncée, et si c’est une règle stricte. En modifier une garde un brouillon jusqu’à sa mise en vigueur.</translation>
    </message>
    <message>
        <source>A further rule for this profile. State where it comes from: a rule without a source cannot be checked by anybody else.</source>
        <translation>Une règle de plus pour ce profil. Dites d’où elle vient&#xa0;: une règle sans source ne peut être vérifiée par personne d’autre.</translation>
    </message>
    <message>
        <source>Foods that are known to be dangerous to this species or need thought, from the program&apos;s list with its sources and from the house&apos;s own. The list is not complete: what is not on it is not thereby safe.</source>
        <translation>Les aliments connus comme dangereux pour cette espèce ou demandant réflexion, de la liste du programme avec ses sources et de celle de la maison. La liste n’est pas complète&#xa0;: ce qui n’y est pas n’est pas sûr pour autant.</translation>
    </message>
    <message>
        <source>What changed, when, and by whom. It is read from the collection&apos;s log, which is only ever added to.</source>
        <translation>Ce qui a changé, quand, et par qui. C’est lu du journal de la collection, auquel on ne fait qu’ajouter.</translation>
    </message>
    <message>
        <source>For a group without targets: a published profile of a model species to derive from. Say why that species stands in; the sentence is kept with every target.</source>
        <translation>Pour un groupe sans cibles&#xa0;: un profil publié d’une espèce modèle dont dériver. Dites pourquoi cette espèce convient&#xa0;; la phrase est gardée avec chaque cible.</translation>
    </message>
    <message>
        <source>Published profiles of model species, side by side where several are ticked. Each number is that of the publication named; none was made for your species.</source>
        <translation>Des profils publiés d’espèces modèles, côte à côte si plusieurs sont cochés. Chaque nombre est celui de la publication nommée&#xa0;; aucun n’a été établi pour votre espèce.</translation>
    </message>
    <message>
        <source>A species that is new to the collection, with its first group, energy need and targets. The targets come from the model species that you choose, as a starting point.</source>
        <translation>Une espèce nouvelle dans la collection, avec son premier groupe, son besoin en énergie et ses cibles. Les cibles viennent de l’espèce modèle que vous choisissez, comme point de départ.</translation>
    </message>
    <message>
        <source>Who the animal is: sex, birth, stages of life, coming and going. A stage is kept with the day on which it begins; the energy need and the targets of its group are the nutritionist&apos;s to change.</source>
        <translation>Qui est l’animal&#xa0;: sexe, naissance, stades de vie, arrivées et départs. Un stade est gardé avec le jour où il commence&#xa0;; le besoin en énergie et les cibles de son groupe relèvent du nutritionniste.</translation>
    </message>
    <message>
        <source>One animal: who it is, its masses and condition scores.</source>
        <translation>Un animal&#xa0;: qui il est, ses poids et ses notes d’état.</translation>
    </message>
    <message>
        <source>The species: its names, and the groups of animals that it belongs to. Cautions about foods go by these.</source>
        <translation>L’espèce&#xa0;: ses noms, et les groupes d’animaux auxquels elle appartient. Les mises en garde sur les aliments en dépendent.</translation>
    </message>
    <message>
        <source>What is shown below, and what can be done with it.</source>
        <translation>Ce qui est affiché en dessous, et ce qu’on peut en faire.</translation>
    </message>
    <message>
        <source>A group: who is in it, what it needs, and what its diets are judged by.</source>
        <translation>Un groupe&#xa0;: qui en fait partie, ce dont il a besoin, et par quoi ses rations sont jugées.</translation>
    </message>
    <message>
        <source>The diets of the collection by group, each with its versions, and the groups that have none yet. A marked one cannot be read; choosing it says why.</source>
        <translation>Les rations de la collection par groupe, chacune avec ses versions, et les groupes qui n’en ont pas encore. Une ration marquée ne peut être lue&#xa0;; la choisir dit pourquoi.</translation>
    </message>
    <message>
        <source>Which version of the diet is on the desk and what can be done next: submit it, approve it, send it back, retire it. What was approved never changes; the next idea is a new version.</source>
        <translation>Quelle version de la ration est sur la table et ce qu’on peut en faire ensuite&#xa0;: la soumettre, l’approuver, la renvoyer, la retirer. Ce qui a été approuvé ne change jamais&#xa0;; l’idée suivante est une nouvelle version.</translation>
    </message>
    <message>
        <source>Whoever approves says why, from which day it is fed and over how many days it is phased in. Grams, targets and composition are kept as they were decided on.</source>
        <translation>Qui approuve dit pourquoi, à partir de quel jour elle est distribuée et sur combien de jours se fait la transition. Grammes, cibles et composition sont gardés tels qu’on en a décidé.</translation>
    </message>
    <message>
        <source>What has happened since this version was written: foods that are gone, targets that changed, another window that was faster.</source>
        <translation>Ce qui est arrivé depuis que cette version a été écrite&#xa0;: des aliments disparus, des cibles modifiées, une autre fenêtre plus rapide.</translation>
    </message>
    <message>
        <source>The foods of the diet. Grams are as fed, for one animal and day or for the whole group, as the switch above says. They are yours where locked (Space); the others are found by the solver in whole steps of the kitchen&apos;s scale. Min and max are limits of this diet. The bar is the food&apos;s share of the dry matter.</source>
        <translation>Les aliments de la ration. Les grammes sont bruts, pour un animal et un jour ou pour tout le groupe, selon le sélecteur au-dessus. Ceux qui sont verrouillés (Espace) sont les vôtres&#xa0;; les autres sont trouvés par le solveur en échelons entiers de la balance de cuisine. Min et max sont les limites de cette ration. La barre est la part de l’aliment dans la matière sèche.</translation>
    </message>
    <message>
        <source>Foods of the collection are added here by name. A food that is given unweighed, such as browse, is stated as a range; the balance counts the middle and carries the range as uncertainty.</source>
        <translation>Les aliments de la collection s’ajoutent ici par leur nom. Un aliment donné sans pesée, comme des feuillages, s’indique par une plage&#xa0;; le bilan en compte le milieu et porte la plage comme incertitude.</translation>
    </message>
    <message>
        <source>Something that is given unweighed, between two amounts a day. The balance counts the middle, and the range as uncertainty.</source>
        <translation>Quelque chose donné sans pesée, entre deux quantités par jour. Le bilan compte le milieu, et la plage comme incertitude.</translation>
    </message>
    <message>
        <source>More about the food that the hand is on: how the kitchen prepares it, what it is given for, and the cautions about it.</source>
        <translation>Plus sur l’aliment sous la main&#xa0;: comment la cuisine le prépare, à quoi il sert, et les mises en garde à son sujet.</translation>
    </message>
    <message>
        <source>One rung for each target, in the order that is chosen above. The number is what the bowl gives: grams of each food times its composition. The shaded stretch is the target&apos;s zone, the mark is the diet, the whisker its uncertainty from scatter between samples. The hatched part of the track rests on foods of which the value is unknown, and is never counted as nothing.</source>
        <translation>Un échelon par cible, dans l’ordre choisi au-dessus. Le nombre est ce que donne la gamelle&#xa0;: les grammes de chaque aliment fois sa composition. Le tronçon ombré est la zone de la cible, la marque est la ration, la moustache son incertitude due à la dispersion entre échantillons. La partie hachurée repose sur des aliments dont la valeur est inconnue, et n’est jamais comptée pour rien.</translation>
    </message>
    <message>
        <source>The rung that is open: its bounds, which can be changed for this diet, where the target was stated, and which food brings how much of it.</source>
        <translation>L’échelon ouvert&#xa0;: ses bornes, qui peuvent être modifiées pour cette ration, où la cible a été énoncée, et quel aliment en apporte combien.</translation>
    </message>
    <message>
        <source>How the diet stands against its targets. Choose a rung to see which food brings how much, and where the target comes from.</source>
        <translation>La situation de la ration face à ses cibles. Choisissez un échelon pour voir quel aliment apporte combien, et d’où vient la cible.</translation>
    </message>
    <message>
        <source>Why the diet stands as it does, in sentences. They follow from the targets and foods on the desk alone; a suggestion was worked out before it is offered, and can be tried and taken back.</source>
        <translation>Pourquoi la ration est dans cette situation, en phrases. Elles ne suivent que des cibles et aliments sur la table&#xa0;; une suggestion a été calculée avant d’être proposée, et peut être essayée et reprise.</translation>
    </message>
    <message>
        <source>What has to give while one bound moves, or one thing sought is traded for another. What is read off the chart can be tried on the diet, and taken back.</source>
        <translation>Ce qui doit céder quand une borne bouge, ou quand une chose cherchée est échangée contre une autre. Ce qui se lit sur la courbe peut être essayé sur la ration, et repris.</translation>
    </message>
    <message>
        <source>What has to give while one bound moves: foods above, what is sought and what is missed below. Each dot is where another food or target begins to give.</source>
        <translation>Ce qui doit céder quand une borne bouge&#xa0;: les aliments en haut, ce qui est cherché et ce qui est manqué en bas. Chaque point est là où un autre aliment ou une autre cible commence à céder.</translation>
    </message>
    <message>
        <source>What is asked of the diet beside its targets: how many foods of a group, at most how much of it. Rules of the targets are shown, those of this diet can be changed.</source>
        <translation>Ce qui est demandé à la ration outre ses cibles&#xa0;: combien d’aliments d’un groupe, au plus combien de celui-ci. Les règles des cibles sont affichées, celles de cette ration peuvent être modifiées.</translation>
    </message>
    <message>
        <source>What this version says otherwise than another: grams, balance, cost, in words and side by side. Both are as they stand in the collection.</source>
        <translation>Ce que cette version dit autrement qu’une autre&#xa0;: grammes, bilan, coût, en mots et côte à côte. Toutes deux telles qu’elles sont dans la collection.</translation>
    </message>
    <message>
        <source>The diet on the desk: its foods and grams, and below them why it stands as it does.</source>
        <translation>La ration sur la table&#xa0;: ses aliments et ses grammes, et en dessous pourquoi elle est dans cette situation.</translation>
    </message>
    <message>
        <source>Days by foods. Grams are as fed for one animal; a locked cell stays as the hand left it, the others are planned so that each day keeps its rules and the period balances.</source>
        <translation>Des jours par aliments. Les grammes sont bruts pour un animal&#xa0;; une case verrouillée reste comme la main l’a laissée, les autres sont planifiées pour que chaque jour tienne ses règles et que la période s’équilibre.</translation>
    </message>
    <message>
        <source>How the whole period stands against the targets, or the day that the hand is on. It is the mean of the days as planned.</source>
        <translation>La situation de toute la période face aux cibles, ou celle du jour sous la main. C’est la moyenne des jours tels que planifiés.</translation>
    </message>
    <message>
        <source>What the plan must keep: how many days, what varies, what may not follow upon what, days off, what is in stock.</source>
        <translation>Ce que le plan doit tenir&#xa0;: combien de jours, ce qui varie, ce qui ne peut suivre quoi, les jours sans, ce qui est en stock.</translation>
    </message>
    <message>
        <source>Which days are looked at, and what can be planned.</source>
        <translation>Quels jours sont examinés, et ce qu’on peut planifier.</translation>
    </message>
    <message>
        <source>What keys do in the calendar on the cell that the hand is on.</source>
        <translation>Ce que font les touches dans le calendrier sur la case sous la main.</translation>
    </message>
    <message>
        <source>A plan by the day for the diet on the desk. What was fed already stays.</source>
        <translation>Un plan par jour pour la ration sur la table. Ce qui a déjà été distribué reste.</translation>
    </message>
    <message>
        <source>The foods of the collection. Each number in a column is per 100 g as fed, and is the mean that the food&apos;s samples form; ? is unknown, never nothing.</source>
        <translation>Les aliments de la collection. Chaque nombre d’une colonne est pour 100 g bruts, et est la moyenne des échantillons de l’aliment&#xa0;;&#xa0;? est inconnu, jamais rien.</translation>
    </message>
    <message>
        <source>What one food is made of. A value is the mean of its laboratory samples, or a publication&apos;s; ± is the scatter between samples, n how many there are. Open a row to see them, each with its source and day. A value set by hand goes before every sample, and says who set it and why.</source>
        <translation>De quoi un aliment est fait. Une valeur est la moyenne de ses échantillons de laboratoire, ou celle d’une publication&#xa0;; ± est la dispersion entre échantillons, n leur nombre. Ouvrez une ligne pour les voir, chacun avec sa source et son jour. Une valeur fixée à la main passe avant tout échantillon, et dit qui l’a fixée et pourquoi.</translation>
    </message>
    <message>
        <source>Each nutrient of the food. A value is the mean of the samples under it, or one that was set by hand or worked out (cooked from raw, mixed from parts, summed from others); the Source column names where it comes from. ≥ and ≤ are bounds, such as a label&apos;s guarantee, and are not used as means. ? is unknown, and is never counted as nothing.</source>
        <translation>Chaque nutriment de l’aliment. Une valeur est la moyenne des échantillons en dessous, ou une valeur fixée à la main ou calculée (cuit d’après le cru, mélangé de parties, somme d’autres)&#xa0;; la colonne Source nomme d’où elle vient. ≥ et ≤ sont des bornes, comme la garantie d’une étiquette, et ne servent pas de moyennes.&#xa0;? est inconnu, et n’est jamais compté pour rien.</translation>
    </message>
    <message>
        <source>What the food is called and how it is fed: its form and group, the step of the scale it is weighed in, what is edible of it, what it costs. A person of your house states these; they are kept under that name.</source>
        <translation>Comment l’aliment s’appelle et se distribue&#xa0;: sa forme et son groupe, l’échelon de la balance, ce qui en est comestible, ce qu’il coûte. Une personne de votre maison l’indique&#xa0;; c’est gardé sous ce nom.</translation>
    </message>
    <message>
        <source>One laboratory sample or publication: its values as they were reported, on the basis and in the units that are chosen. The mean of all samples that count is the food&apos;s value.</source>
        <translation>Un échantillon de laboratoire ou une publication&#xa0;: ses valeurs telles que rapportées, sur la base et dans les unités choisies. La moyenne de tous les échantillons qui comptent est la valeur de l’aliment.</translation>
    </message>
    <message>
        <source>What a house mix is made of. What nobody analysed in the mix is worked out from the grams of its parts and from what a gram of them gives once prepared; the source says who measured that.</source>
        <translation>De quoi un mélange de la maison est fait. Ce que personne n’a analysé dans le mélange est calculé des grammes de ses parties et de ce qu’un gramme de celles-ci donne une fois préparé&#xa0;; la source dit qui l’a mesuré.</translation>
    </message>
    <message>
        <source>Which raw food this one is cooked from. What nobody analysed in the cooked food is worked out from the raw one: grams left of a gram, and the share of each nutrient that stays. The source says who says so.</source>
        <translation>De quel aliment cru celui-ci est cuit. Ce que personne n’a analysé dans l’aliment cuit est calculé du cru&#xa0;: grammes restant d’un gramme, et part de chaque nutriment qui demeure. La source dit qui l’affirme.</translation>
    </message>
    <message>
        <source>Which nutrients your laboratory is to look at, how often, and what is due. It is counted from the days of the samples.</source>
        <translation>Quels nutriments votre laboratoire doit examiner, à quelle fréquence, et ce qui est dû. C’est compté à partir des jours des échantillons.</translation>
    </message>
    <message>
        <source>What a careful analyst would doubt in this food: parts that do not add up, energy that disagrees with them, a value far from the food&apos;s group. A doubt is a question, not a verdict; each says how it was found.</source>
        <translation>Ce dont un analyste soigneux douterait dans cet aliment&#xa0;: des parties qui ne s’additionnent pas, une énergie qui les contredit, une valeur loin du groupe de l’aliment. Un doute est une question, non un verdict&#xa0;; chacun dit comment il a été trouvé.</translation>
    </message>
    <message>
        <source>What a careful analyst would doubt in all foods. Each doubt says how it was found; a line goes to its food.</source>
        <translation>Ce dont un analyste soigneux douterait dans tous les aliments. Chaque doute dit comment il a été trouvé&#xa0;; une ligne mène à son aliment.</translation>
    </message>
    <message>
        <source>Foods side by side, all on one basis. The values are those of each food&apos;s own page; rest on one to see its source.</source>
        <translation>Des aliments côte à côte, tous sur une base. Les valeurs sont celles de la page de chaque aliment&#xa0;; arrêtez-vous sur l’une pour voir sa source.</translation>
    </message>
    <message>
        <source>A table of foods on its way into the collection. Nothing is written before you press Import; all of it is written, or where anything is wrong with it, nothing.</source>
        <translation>Une table d’aliments en route vers la collection. Rien n’est écrit avant que vous n’appuyiez sur Importer&#xa0;; tout est écrit, ou, si quelque chose ne va pas, rien.</translation>
    </message>
    <message>
        <source>How the table is read: its form, decimal sign, units and basis, and whose it is. These are guessed from the table first; change what was guessed wrongly.</source>
        <translation>Comment la table est lue&#xa0;: sa forme, son signe décimal, ses unités et sa base, et à qui elle est. C’est d’abord deviné de la table&#xa0;; modifiez ce qui l’a été à tort.</translation>
    </message>
    <message>
        <source>What will become of each line: a new food, a new sample, a value that is left out and why. Counted by reading the whole table, without writing.</source>
        <translation>Ce que chaque ligne deviendra&#xa0;: un nouvel aliment, un nouvel échantillon, une valeur laissée de côté et pourquoi. Compté en lisant toute la table, sans écrire.</translation>
    </message>
    <message>
        <source>Goes to any food, animal or diet by part of its name.</source>
        <translation>Va à tout aliment, animal ou ration par une partie de son nom.</translation>
    </message>
    <message>
        <source>Whether all is on the disk, the units in force, whether this is the invented sample, and who is at the keyboard: every change is kept under that name.</source>
        <translation>Si tout est sur le disque, les unités en vigueur, si c’est l’exemple inventé, et qui est au clavier&#xa0;: chaque modification est gardée sous ce nom.</translation>
    </message>
    <message>
        <source>The rooms of the window, Ctrl+1 to Ctrl+7, and below them the collection file and help.</source>
        <translation>Les salles de la fenêtre, Ctrl+1 à Ctrl+7, et en dessous le fichier de collection et l’aide.</translation>
    </message>
    <message>
        <source>No collection is open. Choose a way in.</source>
        <translation>Aucune collection n’est ouverte. Choisissez une entrée.</translation>
    </message>
    <message>
        <source>The guide leads through the invented sample, a step at a time.</source>
        <translation>Le guide mène à travers l’exemple inventé, une étape à la fois.</translation>
    </message>
    <message>
        <source>A reason is kept with what you do, under your name, and can be read for good.</source>
        <translation>Une raison est gardée avec ce que vous faites, sous votre nom, et peut être lue pour toujours.</translation>
    </message>
    <message>
        <source>The section, the day, and its bowls. They come from the diets in force on that day, or from the plan of a rotation, times the number of animals.</source>
        <translation>Le secteur, le jour et ses gamelles. Elles viennent des rations en vigueur ce jour, ou du plan d’une rotation, fois le nombre d’animaux.</translation>
    </message>
    <message>
        <source>The bowl that is prepared: its foods with planned grams, what was weighed, how each is prepared. Planned grams come from the approved diet, times the animals of the group.</source>
        <translation>La gamelle en préparation&#xa0;: ses aliments avec les grammes prévus, ce qui a été pesé, comment chacun se prépare. Les grammes prévus viennent de la ration approuvée, fois les animaux du groupe.</translation>
    </message>
    <message>
        <source>The food on the scale. The plan is the approved diet&apos;s; ± is how far the weight may lie from it by the rule of the house. The first weight is never written over: a correction stands beside it.</source>
        <translation>L’aliment sur la balance. Le plan est celui de la ration approuvée&#xa0;; ± est l’écart permis au poids par la règle de la maison. Le premier poids n’est jamais écrasé&#xa0;: une correction se place à côté.</translation>
    </message>
    <message>
        <source>What came back of a food. What was eaten is offered less left less lost, corrected for drying by control pans: those of the day, or of days around it where there were none, which is then said.</source>
        <translation>Ce qui est revenu d’un aliment. Mangé, c’est offert moins restant moins perdu, corrigé du séchage par les gamelles témoins&#xa0;: celles du jour, ou des jours voisins s’il n’y en a pas, ce qui est alors dit.</translation>
    </message>
    <message>
        <source>The scale of this bench: what it shows now and where it is plugged in. Without one, weights are typed.</source>
        <translation>La balance de cette table&#xa0;: ce qu’elle montre maintenant et où elle est branchée. Sans elle, les poids sont tapés.</translation>
    </message>
    <message>
        <source>How far a weight may lie from the plan, a rule of your house, and what it comes to for the food on the scale.</source>
        <translation>De combien un poids peut s’écarter du plan, une règle de votre maison, et ce que cela donne pour l’aliment sur la balance.</translation>
    </message>
    <message>
        <source>What stands on the sheet beside the bowls: what the kitchen needs in all, what to thaw for tomorrow, cautions and hygiene.</source>
        <translation>Ce qui est sur la fiche à côté des gamelles&#xa0;: ce qu’il faut en tout à la cuisine, quoi décongeler pour demain, mises en garde et hygiène.</translation>
    </message>
    <message>
        <source>What to give instead of a food that is not there, the nearest first. Each line says the grams and what it does to the balance, worked out against the approved bowl; where the approved targets are no longer met, it says who must approve.</source>
        <translation>Quoi donner à la place d’un aliment qui manque, le plus proche d’abord. Chaque ligne dit les grammes et ce que cela fait au bilan, calculé face à la gamelle approuvée&#xa0;; là où les cibles approuvées ne sont plus atteintes, elle dit qui doit approuver.</translation>
    </message>
    <message>
        <source>Control pans: the same food out of the animals&apos; reach, weighed when the bowls went out and when they came back. What they lose by drying, or gain, is taken off what came back of the same food.</source>
        <translation>Gamelles témoins&#xa0;: le même aliment hors de portée des animaux, pesé quand les gamelles sont sorties et quand elles sont revenues. Ce qu’elles perdent en séchant, ou gagnent, est retiré de ce qui est revenu du même aliment.</translation>
    </message>
    <message>
        <source>The section and its groups. A group without a bowl cannot be chosen.</source>
        <translation>Le secteur et ses groupes. Un groupe sans gamelle ne peut être choisi.</translation>
    </message>
    <message>
        <source>What is followed over time: the targets of the group, then every nutrient that some food of its bowls tells.</source>
        <translation>Ce qui est suivi au fil du temps&#xa0;: les cibles du groupe, puis tout nutriment que connaît un aliment de ses gamelles.</translation>
    </message>
    <message>
        <source>What was noticed in the days in sight, and how much is known of them. A drop is told against the group&apos;s own days before; the rule of the house stands beside it.</source>
        <translation>Ce qui a été remarqué dans les jours en vue, et combien on en sait. Une baisse est dite face aux jours précédents du groupe lui-même&#xa0;; la règle de la maison est à côté.</translation>
    </message>
    <message>
        <source>Grams a day of each food, all animals together: what was offered, and what was eaten of it (offered less left and lost, corrected by control pans). Days without a bowl written down stay empty.</source>
        <translation>Grammes par jour de chaque aliment, tous animaux ensemble&#xa0;: ce qui a été offert, et ce qui en a été mangé (offert moins restant et perdu, corrigé par les gamelles témoins). Les jours sans gamelle notée restent vides.</translation>
    </message>
    <message>
        <source>What is followed, a day and animal, offered and as eaten, against its zone; over many days each step of the line is the mean of some. Hatched is what is missing: foods whose leftovers or composition nobody knows. The band is the uncertainty.</source>
        <translation>Ce qui est suivi, par jour et animal, offert et tel que mangé, face à sa zone&#xa0;; sur de nombreux jours chaque marche de la ligne est la moyenne de quelques-uns. Hachuré est ce qui manque&#xa0;: des aliments dont personne ne connaît les refus ou la composition. La bande est l’incertitude.</translation>
    </message>
    <message>
        <source>What is picked first: Manly&apos;s alpha with its 95 % interval, from what was offered and left. Above the dashed line a food is taken more than its share.</source>
        <translation>Ce qui est pris d’abord&#xa0;: l’alpha de Manly avec son intervalle à 95 %, d’après l’offert et le restant. Au-dessus de la ligne pointillée, un aliment est pris plus que sa part.</translation>
    </message>
    <message>
        <source>A study of what is eaten: how many days it needs for the precision wanted, by how much the group&apos;s own days differ, what is weighed, and where control pans stand.</source>
        <translation>Une étude de ce qui est mangé&#xa0;: combien de jours il lui faut pour la précision voulue, selon les écarts entre les jours du groupe, ce qui est pesé, et où sont les gamelles témoins.</translation>
    </message>
    <message>
        <source>Faeces that were collected and analysed. With what was eaten on their days they say what was digested; without, nothing.</source>
        <translation>Des fèces collectées et analysées. Avec ce qui a été mangé leurs jours, elles disent ce qui a été digéré&#xa0;; sans cela, rien.</translation>
    </message>
    <message>
        <source>Yesterday&apos;s bowls as a list to fill in: what came back of each food, by weight, all eaten, or not weighed. Not weighed stays unknown.</source>
        <translation>Les gamelles d’hier comme liste à remplir&#xa0;: ce qui est revenu de chaque aliment, par poids, tout mangé, ou non pesé. Non pesé reste inconnu.</translation>
    </message>
    <message>
        <source>What was seen: kind, day, time, and what its kind asks for. It is kept under your name, and is never written over.</source>
        <translation>Ce qui a été vu&#xa0;: genre, jour, heure, et ce que le genre demande. C’est gardé sous votre nom, et jamais écrasé.</translation>
    </message>
    <message>
        <source>Signs, blood values, treatments, condition, body mass, Ca:P and diets on one axis of days. Points are what was written down; lines are worked out from the bowls of each day.</source>
        <translation>Signes, valeurs sanguines, traitements, état corporel, poids vif, Ca:P et rations sur un axe de jours. Les points sont ce qui a été noté&#xa0;; les lignes sont calculées des gamelles de chaque jour.</translation>
    </message>
    <message>
        <source>What this desk wrote down while its server was away, and what the server has instead. Nothing is lost: it is sent in order, each entry once, and where both disagree you choose what counts.</source>
        <translation>Ce que ce poste a noté pendant l’absence de son serveur, et ce que le serveur a à la place. Rien ne se perd : tout est envoyé dans l’ordre, chaque note une fois, et là où les deux diffèrent vous choisissez ce qui compte.</translation>
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
        <translation>%1 et ce qui se perd</translation>
    </message>
    <message>
        <source>%1: a rotation is written as .pdf, .html or .json</source>
        <translation>%1&#xa0;: une rotation s’écrit en .pdf, .html ou .json</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>en tout</translation>
    </message>
</context>
<context>
    <name>RotationText</name>
    <message>
        <source>1 day</source>
        <translation>1 jour</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>A better one may be there, but none below %1.</source>
        <translation>Il peut y en avoir une meilleure, mais aucune sous %1.</translation>
    </message>
    <message>
        <source>Over the %1 every target holds.</source>
        <translation>Sur les %1, chaque cible est atteinte.</translation>
    </message>
    <message>
        <source>Over the %1 these do not hold: %2.</source>
        <translation>Sur les %1, ne sont pas atteintes&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Each day holds its own, wider zones.</source>
        <translation>Chaque jour tient ses propres zones, plus larges.</translation>
    </message>
    <message>
        <source>One day lies outside its own, wider zones: choose it to see how.</source>
        <translation>Un jour sort de ses propres zones, plus larges&#xa0;: choisissez-le pour voir comment.</translation>
    </message>
    <message>
        <source>%1 days lie outside their own, wider zones: choose one to see how.</source>
        <translation>%1 jours sortent de leurs propres zones, plus larges&#xa0;: choisissez-en un pour voir comment.</translation>
    </message>
    <message>
        <source>The %1 together do not make it up.</source>
        <translation>Les %1 ensemble ne le compensent pas.</translation>
    </message>
    <message>
        <source>The %1 together make it up.</source>
        <translation>Les %1 ensemble le compensent.</translation>
    </message>
    <message>
        <source>dddd d MMMM</source>
        <comment>a day and its weekday in full, as Qt writes formats</comment>
        <translation>dddd d MMMM</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>a day without its year, as Qt writes formats</comment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 au %2</translation>
    </message>
    <message>
        <source>Variety that was wished for, or stock to use up, lacks by %1.</source>
        <translation>Il manque %1 à la variété souhaitée, ou au stock à écouler.</translation>
    </message>
    <message>
        <source>planned on %1</source>
        <translation>planifiée le %1</translation>
    </message>
    <message>
        <source>planned by %1, %2</source>
        <translation>planifiée par %1, %2</translation>
    </message>
    <message>
        <source>%1 fed, counted as eaten</source>
        <translation>%1 distribués, comptés comme mangés</translation>
    </message>
    <message>
        <source>%1 fed, counted as offered</source>
        <translation>%1 distribués, comptés comme offerts</translation>
    </message>
    <message>
        <source>%1 is %2 by %3 of the day&apos;s zone (%4).</source>
        <translation>%1&#xa0;: %2, de %3 de la zone du jour (%4).</translation>
    </message>
    <message>
        <source>Every target is within the day&apos;s own, wider zone.</source>
        <translation>Chaque cible est dans la zone du jour, plus large.</translation>
    </message>
    <message>
        <source>No plan keeps all hard rules at once: free a locked cell, or let a rule be wider. Nothing was changed.</source>
        <translation>Aucun plan ne tient toutes les règles strictes à la fois&#xa0;: libérez une case verrouillée, ou élargissez une règle. Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>No plan keeps this rule: %1. Nothing was changed.</source>
        <translation>Aucun plan ne tient cette règle&#xa0;: %1. Rien n’a été modifié.</translation>
    </message>
    <message>
        <source>No plan was found in the time given. Nothing was changed; try again, or let a rule be wider.</source>
        <translation>Aucun plan n’a été trouvé dans le temps donné. Rien n’a été modifié&#xa0;; réessayez, ou élargissez une règle.</translation>
    </message>
    <message>
        <source>Nothing was planned (%1).</source>
        <translation>Rien n’a été planifié (%1).</translation>
    </message>
</context>
<context>
    <name>Rows</name>
    <message>
        <source>% as fed</source>
        <translation>% brut</translation>
    </message>
    <message>
        <source>% of energy</source>
        <translation>% de l’énergie</translation>
    </message>
    <message>
        <source>% of DM</source>
        <translation>% de la MS</translation>
    </message>
    <message>
        <source>%1 : %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>share of %1</source>
        <translation>part de %1</translation>
    </message>
    <message>
        <source>foods of %1</source>
        <translation>aliments de %1</translation>
    </message>
    <message>
        <source>foods a day</source>
        <translation>aliments par jour</translation>
    </message>
    <message>
        <source>at least %1 g of each</source>
        <translation>au moins %1 g de chacun</translation>
    </message>
    <message>
        <source>no %1</source>
        <translation>pas de %1</translation>
    </message>
    <message>
        <source>not taken over: %1</source>
        <translation>non repris&#xa0;: %1</translation>
    </message>
    <message>
        <source>? no value</source>
        <translation>? pas de valeur</translation>
    </message>
    <message>
        <source>the other %1</source>
        <translation>les %1 autres</translation>
    </message>
    <message>
        <source>%1, by food, per animal a day</source>
        <translation>%1, par aliment, par animal et par jour</translation>
    </message>
    <message>
        <source>%1 and %2, by food, per animal a day</source>
        <translation>%1 et %2, par aliment, par animal et par jour</translation>
    </message>
    <message>
        <source>%1, by food, %2</source>
        <translation>%1, par aliment, %2</translation>
    </message>
</context>
<context>
    <name>Rules</name>
    <message>
        <source>no food here states what it needs</source>
        <translation>aucun aliment ici n’indique ce qu’elle demande</translation>
    </message>
    <message>
        <source>no food of the group is here</source>
        <translation>aucun aliment du groupe n’est ici</translation>
    </message>
    <message>
        <source>the body mass is not known</source>
        <translation>le poids vif n’est pas connu</translation>
    </message>
    <message>
        <source>of an animal without body heat of its own, it is no feeding rate</source>
        <translation>d’un animal sans chaleur propre, ce n’est pas un taux d’alimentation</translation>
    </message>
    <message>
        <source>stated as fed, of a feed whose dry matter is not stated</source>
        <translation>indiqué sur matière brute, d’un aliment dont la matière sèche n’est pas indiquée</translation>
    </message>
    <message>
        <source>? Not judged: %1.</source>
        <translation>? Non jugé&#xa0;: %1.</translation>
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
        <translation>La balance a envoyé deux nombres sur une ligne (%1). Attendez la suivante, ou tapez le poids.</translation>
    </message>
    <message>
        <source>The scale does not weigh in g, kg, oz or lb (%1). Set it to grams.</source>
        <translation>La balance ne pèse pas en g, kg, oz ou lb (%1). Réglez-la sur les grammes.</translation>
    </message>
    <message>
        <source>The scale says that its pan is overloaded or lifted. Clear it and tare again.</source>
        <translation>La balance dit que son plateau est surchargé ou soulevé. Dégagez-le et tarez de nouveau.</translation>
    </message>
    <message>
        <source>What the scale sent was not whole; it is not used. If this goes on, check the cable and the speed of the port.</source>
        <translation>Ce que la balance a envoyé n’était pas complet&#xa0;; ce n’est pas utilisé. Si cela continue, vérifiez le câble et la vitesse du port.</translation>
    </message>
    <message>
        <source>The scale sent %1 without a unit: the pan still moves, or its unit has to be chosen.</source>
        <translation>La balance a envoyé %1 sans unité&#xa0;: le plateau bouge encore, ou son unité est à choisir.</translation>
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
        <translation>La balance sur %1 a disparu&#xa0;: vérifiez son câble. Les poids peuvent être tapés en attendant.</translation>
    </message>
    <message>
        <source>The scale at %1 cannot be reached (%2). Weights can be typed meanwhile.</source>
        <translation>La balance sur %1 ne peut être jointe (%2). Les poids peuvent être tapés en attendant.</translation>
    </message>
</context>
<context>
    <name>Sheets</name>
    <message>
        <source>%1: a sheet is written as .pdf, .xlsx, .html or .json</source>
        <translation>%1&#xa0;: une fiche s’écrit en .pdf, .xlsx, .html ou .json</translation>
    </message>
</context>
<context>
    <name>Solving</name>
    <message>
        <source>solved in whole scale steps</source>
        <translation>résolu en échelons entiers de la balance</translation>
    </message>
    <message>
        <source>solved</source>
        <translation>résolu</translation>
    </message>
    <message>
        <source>%1, proved best · %2</source>
        <translation>%1, prouvé le meilleur · %2</translation>
    </message>
    <message>
        <source>%1, best found in %2; the gap to the best possible is at most %3</source>
        <translation>%1, le meilleur trouvé en %2&#xa0;; l’écart au meilleur possible est d’au plus %3</translation>
    </message>
    <message>
        <source>to read: the grams as they were written</source>
        <translation>à lire&#xa0;: les grammes tels qu’ils ont été écrits</translation>
    </message>
    <message>
        <source>as it was written: the solver would now give other grams</source>
        <translation>tel qu’écrit&#xa0;: le solveur donnerait maintenant d’autres grammes</translation>
    </message>
    <message>
        <source>held: only the balance is recomputed</source>
        <translation>tenu&#xa0;: seul le bilan est recalculé</translation>
    </message>
    <message>
        <source>solving…</source>
        <translation>résolution…</translation>
    </message>
    <message>
        <source>a good bowl is shown, looking for a better one…</source>
        <translation>une bonne gamelle est affichée, recherche d’une meilleure…</translation>
    </message>
    <message>
        <source>no bowl keeps the hard rules</source>
        <translation>aucune gamelle ne tient les règles strictes</translation>
    </message>
    <message>
        <source>nothing limits what is sought</source>
        <translation>rien ne limite ce qui est cherché</translation>
    </message>
    <message>
        <source>no answer in time</source>
        <translation>pas de réponse à temps</translation>
    </message>
    <message>
        <source>a price is missing</source>
        <translation>un prix manque</translation>
    </message>
    <message>
        <source>the answer did not pass its check</source>
        <translation>la réponse n’a pas passé sa vérification</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>tel qu’indiqué</translation>
    </message>
    <message>
        <source>Atwater</source>
        <translation>Atwater</translation>
    </message>
    <message>
        <source>modified Atwater</source>
        <translation>Atwater modifié</translation>
    </message>
    <message>
        <source>NRC 2006, dog</source>
        <translation>NRC 2006, chien</translation>
    </message>
    <message>
        <source>NRC 2006, cat</source>
        <translation>NRC 2006, chat</translation>
    </message>
    <message>
        <source>poultry AMEn</source>
        <translation>volaille, EMAn</translation>
    </message>
</context>
<context>
    <name>State</name>
    <message>
        <source>met</source>
        <translation>atteint</translation>
    </message>
    <message>
        <source>at limit</source>
        <translation>à la limite</translation>
    </message>
    <message>
        <source>short</source>
        <translation>trop peu</translation>
    </message>
    <message>
        <source>over</source>
        <translation>trop</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>inconnu</translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message>
        <source>%1; a backup lies in %2</source>
        <translation>%1&#xa0;; une sauvegarde se trouve dans %2</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>ce fichier n’existe pas</translation>
    </message>
    <message>
        <source>is there already</source>
        <translation>existe déjà</translation>
    </message>
    <message>
        <source>is a folder, not a collection</source>
        <translation>est un dossier, pas une collection</translation>
    </message>
    <message>
        <source>is no regular file</source>
        <translation>n’est pas un fichier ordinaire</translation>
    </message>
    <message>
        <source>is empty</source>
        <translation>est vide</translation>
    </message>
    <message>
        <source>is no collection of Tarebowl</source>
        <translation>n’est pas une collection de Tarebowl</translation>
    </message>
    <message>
        <source>is a database of another program</source>
        <translation>est une base de données d’un autre programme</translation>
    </message>
    <message>
        <source>is damaged</source>
        <translation>est endommagé</translation>
    </message>
    <message>
        <source>is damaged: it ends in its header</source>
        <translation>est endommagé&#xa0;: il s’arrête dans son en-tête</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>ne peut pas être lu</translation>
    </message>
    <message>
        <source>cannot be written</source>
        <translation>ne peut pas être écrit</translation>
    </message>
    <message>
        <source>cannot be made here</source>
        <translation>ne peut pas être créé ici</translation>
    </message>
    <message>
        <source>the file or its folder cannot be written</source>
        <translation>le fichier ou son dossier ne peut pas être écrit</translation>
    </message>
    <message>
        <source>was written by a newer Tarebowl; nothing was changed</source>
        <translation>a été écrit par un Tarebowl plus récent&#xa0;; rien n’a été modifié</translation>
    </message>
    <message>
        <source>was written by a newer Tarebowl; nothing was copied</source>
        <translation>a été écrit par un Tarebowl plus récent&#xa0;; rien n’a été copié</translation>
    </message>
    <message>
        <source>nothing of a collection can be found in it</source>
        <translation>rien d’une collection ne s’y trouve</translation>
    </message>
    <message>
        <source>was written by an older Tarebowl and is open for reading only; copy it where it can be written and open the copy</source>
        <translation>a été écrit par un Tarebowl plus ancien et n’est ouvert qu’en lecture&#xa0;; copiez-le là où l’on peut écrire et ouvrez la copie</translation>
    </message>
    <message>
        <source>is being written by another window or command</source>
        <translation>est en cours d’écriture par une autre fenêtre ou commande</translation>
    </message>
    <message>
        <source>cannot be written: the disk is full</source>
        <translation>ne peut pas être écrit&#xa0;: le disque est plein</translation>
    </message>
    <message>
        <source>cannot be read or written: the disk reports an error</source>
        <translation>ne peut pas être lu ou écrit&#xa0;: le disque signale une erreur</translation>
    </message>
    <message>
        <source>the change breaks a rule of the collection</source>
        <translation>la modification enfreint une règle de la collection</translation>
    </message>
    <message>
        <source>the collection could not be read or written</source>
        <translation>la collection n’a pas pu être lue ou écrite</translation>
    </message>
    <message>
        <source>was moved, deleted or replaced while it was open; nothing was written. Put it back where it was, or open it anew</source>
        <translation>a été déplacé, supprimé ou remplacé pendant qu’il était ouvert&#xa0;; rien n’a été écrit. Remettez-le où il était, ou rouvrez-le</translation>
    </message>
    <message>
        <source>daily</source>
        <translation>quotidienne</translation>
    </message>
    <message>
        <source>before-upgrade</source>
        <translation>avant mise à niveau</translation>
    </message>
    <message>
        <source>before-restore</source>
        <translation>avant restauration</translation>
    </message>
    <message>
        <source>the server asks for a password, and none was given; open it again and type it, or put it into ~/.pgpass</source>
        <translation>le serveur demande un mot de passe, et aucun n’a été donné&#xa0;; ouvrez la collection de nouveau et tapez-le, ou inscrivez-le dans ~/.pgpass</translation>
    </message>
    <message>
        <source>the server does not accept the password; open it again and type it anew, or look into ~/.pgpass</source>
        <translation>le serveur n’accepte pas le mot de passe&#xa0;; ouvrez la collection de nouveau et retapez-le, ou regardez dans ~/.pgpass</translation>
    </message>
    <message>
        <source>the server does not let you in; ask whoever runs it</source>
        <translation>le serveur ne vous laisse pas entrer&#xa0;; demandez à la personne qui s’en occupe</translation>
    </message>
    <message>
        <source>the server has no such database; look at its name, or ask whoever runs the server to make one</source>
        <translation>le serveur n’a pas de telle base de données&#xa0;; vérifiez son nom, ou demandez à la personne qui s’occupe du serveur d’en créer une</translation>
    </message>
    <message>
        <source>you may not open this database; ask whoever runs the server</source>
        <translation>vous n’avez pas le droit d’ouvrir cette base de données&#xa0;; demandez à la personne qui s’occupe du serveur</translation>
    </message>
    <message>
        <source>the server does not answer; look at its name, at the network, and whether it runs</source>
        <translation>le serveur ne répond pas&#xa0;; vérifiez son nom, le réseau, et s’il est en marche</translation>
    </message>
    <message>
        <source>the database holds no collection; tarebowl server init makes one in it</source>
        <translation>la base de données ne contient pas de collection&#xa0;; tarebowl server init en crée une</translation>
    </message>
    <message>
        <source>was raised by a newer Tarebowl; install that here, too. Nothing was changed</source>
        <translation>a été mise à niveau par un Tarebowl plus récent&#xa0;; installez-le ici aussi. Rien n’a été modifié</translation>
    </message>
    <message>
        <source>was made by an older Tarebowl; whoever set it up raises it with tarebowl server upgrade</source>
        <translation>a été créée par un Tarebowl plus ancien&#xa0;; la personne qui l’a mise en place la met à niveau avec tarebowl server upgrade</translation>
    </message>
    <message>
        <source>nobody has let you into this collection; whoever runs it does so with tarebowl server add</source>
        <translation>personne ne vous a donné accès à cette collection&#xa0;; la personne qui s’en occupe le fait avec tarebowl server add</translation>
    </message>
    <message>
        <source>your role on the server may not do this, and nothing was written</source>
        <translation>votre rôle sur le serveur ne le permet pas, et rien n’a été écrit</translation>
    </message>
    <message>
        <source>the connection to the server was lost; what was not said to be saved was not written</source>
        <translation>la connexion au serveur a été perdue&#xa0;; ce qui n’a pas été dit enregistré n’a pas été écrit</translation>
    </message>
    <message>
        <source>the connection to the server was lost, and it does not answer</source>
        <translation>la connexion au serveur a été perdue, et il ne répond pas</translation>
    </message>
    <message>
        <source>the connection to the server was lost while it was being written; nothing was kept of it</source>
        <translation>la connexion au serveur a été perdue pendant l’écriture&#xa0;; rien n’en a été gardé</translation>
    </message>
    <message>
        <source>a password does not belong in an address, where others can read it; leave it out, and it is asked for, or read from ~/.pgpass</source>
        <translation>un mot de passe n’a pas sa place dans une adresse, où d’autres peuvent le lire&#xa0;; omettez-le&#xa0;: il est demandé, ou lu dans ~/.pgpass</translation>
    </message>
    <message>
        <source>was moved or removed on the server while it was open; nothing was written. Open it where it is now</source>
        <translation>a été déplacée ou retirée sur le serveur pendant qu’elle était ouverte&#xa0;; rien n’a été écrit. Ouvrez-la là où elle est maintenant</translation>
    </message>
    <message>
        <source>cannot be written: the server&apos;s disk is full; nothing was written. Tell whoever runs the server</source>
        <translation>ne peut pas être écrite&#xa0;: le disque du serveur est plein&#xa0;; rien n’a été écrit. Prévenez la personne qui s’occupe du serveur</translation>
    </message>
    <message>
        <source>cannot be read or written: the server&apos;s disk reports an error</source>
        <translation>ne peut être lue ni écrite&#xa0;: le disque du serveur signale une erreur</translation>
    </message>
    <message>
        <source>is damaged on the server; tell whoever runs it</source>
        <translation>est endommagée sur le serveur&#xa0;; prévenez la personne qui s’en occupe</translation>
    </message>
    <message>
        <source>the server&apos;s certificate was not accepted: it has expired by this machine&apos;s clock, or it is signed by nobody whom this machine trusts. Look at the clock, and ask whoever runs the server for a valid one, or for the certificate of who signs for it, which belongs in ~/.postgresql/root.crt</source>
        <translation>le certificat du serveur n&apos;a pas été accepté : d&apos;après l&apos;horloge de cet ordinateur il a expiré, ou bien personne à qui cet ordinateur fait confiance ne l&apos;a signé. Regardez l&apos;horloge, et demandez à qui gère le serveur un certificat valable, ou celui de qui le signe, qui va dans ~/.postgresql/root.crt</translation>
    </message>
    <message>
        <source>the certificate of who signs for the server is not there; ask whoever runs the server for it and put it into ~/.postgresql/root.crt</source>
        <translation>le certificat de qui signe pour le serveur n&apos;est pas là ; demandez-le à qui gère le serveur et mettez-le dans ~/.postgresql/root.crt</translation>
    </message>
    <message>
        <source>the server&apos;s certificate is of another name than the address; write the server&apos;s name as it stands there, or ask whoever runs the server</source>
        <translation>le certificat du serveur porte un autre nom que l&apos;adresse ; écrivez le nom du serveur comme il y figure, ou demandez à qui gère le serveur</translation>
    </message>
    <message>
        <source>no secure connection came about; ask whoever runs the server whether it offers one</source>
        <translation>aucune connexion sûre n&apos;a pu être établie ; demandez à qui gère le serveur s&apos;il en offre une</translation>
    </message>
</context>
<context>
    <name>Story</name>
    <message>
        <source>mass of %1 on %2: %3</source>
        <translation>poids de %1 le %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>condition of %1 on %2: %3</source>
        <translation>état corporel de %1 le %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1 in %2 from %3</source>
        <translation>%1 dans %2 dès le %3</translation>
    </message>
    <message>
        <source>profile %1, version %2</source>
        <translation>profil %1, version %2</translation>
    </message>
    <message>
        <source>energy plan from %1</source>
        <translation>plan d’énergie dès le %1</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>minimum</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>maximum</translation>
    </message>
    <message>
        <source>mass, kg</source>
        <translation>poids, kg</translation>
    </message>
    <message>
        <source>until</source>
        <translation>jusqu’à</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>écarté</translation>
    </message>
    <message>
        <source>left</source>
        <translation>parti</translation>
    </message>
    <message>
        <source>state</source>
        <translation>état</translation>
    </message>
    <message>
        <source>why the model stands in</source>
        <translation>pourquoi le modèle convient</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation>%1 entrées</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3</source>
        <translation>%1&#xa0;: %2 au lieu de %3</translation>
    </message>
    <message>
        <source>%1: added</source>
        <translation>%1&#xa0;: ajouté</translation>
    </message>
    <message>
        <source>%1: taken away</source>
        <translation>%1&#xa0;: retiré</translation>
    </message>
    <message>
        <source>%1%2: %3 instead of %4</source>
        <translation>%1%2&#xa0;: %3 au lieu de %4</translation>
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
        <translation>%1 dans le groupe «&#xa0;%2&#xa0;» de cette collection, %3</translation>
    </message>
    <message>
        <source> · %1 without a value</source>
        <translation> · %1 sans valeur</translation>
    </message>
</context>
<context>
    <name>Study</name>
    <message>
        <source>Study of %1</source>
        <translation>Étude de %1</translation>
    </message>
    <message>
        <source>%1: a plan is written as .pdf or .html</source>
        <translation>%1&#xa0;: un plan s’écrit en .pdf ou .html</translation>
    </message>
    <message>
        <source>%1: a study is written as .pdf, .xlsx or .html</source>
        <translation>%1&#xa0;: une étude s’écrit en .pdf, .xlsx ou .html</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>all food as fed</source>
        <translation>toute la nourriture brute</translation>
    </message>
    <message>
        <source>“%1”: no nutrient is called “%2”. Write a name and a number: Ca 1850.</source>
        <translation>«&#xa0;%1&#xa0;»&#xa0;: aucun nutriment ne s’appelle «&#xa0;%2&#xa0;». Écrivez un nom et un nombre&#xa0;: Ca 1850.</translation>
    </message>
    <message>
        <source>“%1”: after the nutrient comes its number, and its scatter if it is known: Ca 1850 ± 90.</source>
        <translation>«&#xa0;%1&#xa0;»&#xa0;: après le nutriment vient son nombre, et sa dispersion si elle est connue&#xa0;: Ca 1850 ± 90.</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 jour</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>So that the mean of %1 is known to ± %2 %3 with %4 confidence. On %5 days from %6 to %7 it was %8 %3 per animal and day, and went up and down by %9 %3 (standard deviation).</source>
        <translation>Pour que la moyenne de %1 soit connue à ± %2 %3 avec %4 de confiance. Sur %5 jours du %6 au %7, elle était de %8 %3 par animal et par jour, et variait de %9 %3 (écart-type).</translation>
    </message>
    <message>
        <source> A day resembles the one before it, so that each tells less: %1 %2 is planned with.</source>
        <translation> Un jour ressemble au précédent, si bien que chacun en dit moins&#xa0;: on planifie avec %1 %2.</translation>
    </message>
    <message>
        <source>Sheets: print that of %1 for each day, and weigh every food into its bowl.</source>
        <translation>Fiches&#xa0;: imprimez celle de %1 pour chaque jour, et pesez chaque aliment dans sa gamelle.</translation>
    </message>
    <message>
        <source>the section</source>
        <translation>le secteur</translation>
    </message>
    <message>
        <source>Weigh back, food by food: %1.</source>
        <translation>Repeser, aliment par aliment&#xa0;: %1.</translation>
    </message>
    <message>
        <source>A control pan each day in %1, any %2: one of %3.</source>
        <translation>Une gamelle témoin chaque jour à %1, tout %2&#xa0;: l’un de %3.</translation>
    </message>
    <message>
        <source>the same place</source>
        <translation>le même endroit</translation>
    </message>
    <message>
        <source>food</source>
        <translation>aliment</translation>
    </message>
    <message>
        <source>The last leftovers and pans come back on %1.</source>
        <translation>Les derniers refus et témoins reviennent le %1.</translation>
    </message>
    <message>
        <source>The group is no longer in the collection: choose another.</source>
        <translation>Le groupe n’est plus dans la collection&#xa0;: choisissez-en un autre.</translation>
    </message>
    <message>
        <source>It had no bowl in the week before the first day: nobody knows what it is fed. Choose a first day that follows days which were weighed.</source>
        <translation>Il n’avait pas de gamelle la semaine avant le premier jour&#xa0;: personne ne sait ce qu’il reçoit. Choisissez un premier jour qui suit des jours pesés.</translation>
    </message>
    <message>
        <source>Of the eight weeks before, what it ate is known on %1 of the days: weigh back at least two in full first.</source>
        <translation>Des huit semaines d’avant, ce qu’il a mangé est connu sur %1 des jours&#xa0;: repesez-en d’abord au moins deux en entier.</translation>
    </message>
    <message>
        <source>It ate none of it in the eight weeks before: follow something else.</source>
        <translation>Il n’en a pas mangé dans les huit semaines d’avant&#xa0;: suivez autre chose.</translation>
    </message>
    <message>
        <source>More than ten years would be needed: ask for less precision.</source>
        <translation>Il faudrait plus de dix ans&#xa0;: demandez moins de précision.</translation>
    </message>
    <message>
        <source>%1: %2 g fresh, %3 g DM in 100 g</source>
        <translation>%1&#xa0;: %2 g frais, %3 g de MS dans 100 g</translation>
    </message>
    <message>
        <source>; %1 per 100 g DM</source>
        <translation>; %1 pour 100 g de MS</translation>
    </message>
    <message>
        <source>The last day lies before the first: turn them round.</source>
        <translation>Le dernier jour est avant le premier&#xa0;: inversez-les.</translation>
    </message>
    <message>
        <source>Faeces that weigh nothing say nothing: type the grams as found.</source>
        <translation>Des fèces qui ne pèsent rien ne disent rien&#xa0;: tapez les grammes trouvés.</translation>
    </message>
    <message>
        <source>Dry matter is more than 0 and at most 100 g in 100 g fresh.</source>
        <translation>La matière sèche est de plus de 0 et d’au plus 100 g dans 100 g frais.</translation>
    </message>
    <message>
        <source>A content is 0 or more.</source>
        <translation>Une teneur est 0 ou plus.</translation>
    </message>
    <message>
        <source>A nutrient stands there twice: leave one of them out.</source>
        <translation>Un nutriment y est deux fois&#xa0;: retirez-en un.</translation>
    </message>
    <message>
        <source>Metabolizable energy is no property of faeces: leave energy out.</source>
        <translation>L’énergie métabolisable n’est pas une propriété des fèces&#xa0;: laissez l’énergie de côté.</translation>
    </message>
</context>
<context>
    <name>Suggest</name>
    <message>
        <source>closes the gap</source>
        <translation>comble le manque</translation>
    </message>
    <message>
        <source>helps, but the hard rules would still contradict each other</source>
        <translation>aide, mais les règles strictes se contrediraient encore</translation>
    </message>
    <message>
        <source>the hard rules would hold, and other targets be missed</source>
        <translation>les règles strictes tiendraient, et d’autres cibles seraient manquées</translation>
    </message>
    <message>
        <source>leaves %1 of the gap</source>
        <translation>laisse %1 du manque</translation>
    </message>
    <message>
        <source>; its values are known for %1 of the rules</source>
        <translation>; ses valeurs sont connues pour %1 des règles</translation>
    </message>
    <message>
        <source>Allow %1 g %2</source>
        <translation>Permettre %1 g de %2</translation>
    </message>
    <message>
        <source>%1 g %2 in place of %3</source>
        <translation>%1 g de %2 à la place de %3</translation>
    </message>
    <message>
        <source>Add %1 g %2</source>
        <translation>Ajouter %1 g de %2</translation>
    </message>
    <message>
        <source>the hard rules would hold</source>
        <translation>les règles strictes tiendraient</translation>
    </message>
    <message>
        <source>every target would hold</source>
        <translation>chaque cible serait atteinte</translation>
    </message>
    <message>
        <source>these could hold together; others would still fight</source>
        <translation>celles-ci pourraient tenir ensemble&#xa0;; d’autres s’opposeraient encore</translation>
    </message>
    <message>
        <source>, in amounts between the scale&apos;s steps</source>
        <translation>, en quantités entre les échelons de la balance</translation>
    </message>
    <message>
        <source>%1 at least %2</source>
        <translation>%1 au moins %2</translation>
    </message>
    <message>
        <source>%1 at most %2</source>
        <translation>%1 au plus %2</translation>
    </message>
    <message>
        <source>Ask for at least %1 of the group %2</source>
        <translation>Demander au moins %1 du groupe %2</translation>
    </message>
    <message>
        <source>Ask for at most %1 of the group %2</source>
        <translation>Demander au plus %1 du groupe %2</translation>
    </message>
</context>
<context>
    <name>Swaps</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 et %n autre</numerusform>
            <numerusform>%1 et %n autres</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>still in zone</source>
        <translation>toujours dans la zone</translation>
    </message>
    <message>
        <source>now in zone</source>
        <translation>maintenant dans la zone</translation>
    </message>
    <message>
        <source>now over</source>
        <translation>maintenant trop</translation>
    </message>
    <message>
        <source>over as before</source>
        <translation>trop comme avant</translation>
    </message>
    <message>
        <source>now short</source>
        <translation>maintenant trop peu</translation>
    </message>
    <message>
        <source>short as before</source>
        <translation>trop peu comme avant</translation>
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
        <translation>énergie %1 → %2 kcal</translation>
    </message>
    <message>
        <source>%1: %2 → %3</source>
        <translation>%1&#xa0;: %2 → %3</translation>
    </message>
    <message>
        <source>%1 %2 → %3</source>
        <translation>%1 %2 → %3</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>avec %1</translation>
    </message>
    <message numerus="yes">
        <source>eaten %1 in %n bowls</source>
        <translation>
            <numerusform>mangé à %1 dans %n gamelle</numerusform>
            <numerusform>mangé à %1 dans %n gamelles</numerusform>
        </translation>
    </message>
    <message>
        <source>eaten before: ?</source>
        <translation>mangé jusqu’ici&#xa0;:&#xa0;?</translation>
    </message>
    <message>
        <source>unknown: %1</source>
        <translation>inconnu&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>%1 chacun</translation>
    </message>
    <message>
        <source> (the animal is not known)</source>
        <translation> (l’animal n’est pas connu)</translation>
    </message>
    <message>
        <source> (set aside: %1)</source>
        <translation> (mis de côté&#xa0;: %1)</translation>
    </message>
    <message>
        <source>Keeper may decide</source>
        <translation>Le soigneur peut décider</translation>
    </message>
    <message>
        <source>another food group</source>
        <translation>autre groupe d’aliments</translation>
    </message>
    <message>
        <source>no longer met: %1</source>
        <translation>n’est plus atteint&#xa0;: %1</translation>
    </message>
    <message>
        <source>may not be met: %1</source>
        <translation>peut ne pas être atteint&#xa0;: %1</translation>
    </message>
    <message>
        <source>a caution</source>
        <translation>une mise en garde</translation>
    </message>
    <message>
        <source>Ask the nutritionist: %1</source>
        <translation>Demander au nutritionniste&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n more would do, further off</source>
        <translation>
            <numerusform>%n autre conviendrait, de plus loin</numerusform>
            <numerusform>%n autres conviendraient, de plus loin</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not for this animal</source>
        <translation>
            <numerusform>%n pas pour cet animal</numerusform>
            <numerusform>%n pas pour cet animal</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n against a structure rule</source>
        <translation>
            <numerusform>%n contre une règle de structure</numerusform>
            <numerusform>%n contre une règle de structure</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n in no amount within the hard rules</source>
        <translation>
            <numerusform>%n en aucune quantité dans les règles strictes</numerusform>
            <numerusform>%n en aucune quantité dans les règles strictes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n at their limits</source>
        <translation>
            <numerusform>%n à sa limite</numerusform>
            <numerusform>%n à leurs limites</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of unknown water</source>
        <translation>
            <numerusform>%n dont l’eau est inconnue</numerusform>
            <numerusform>%n dont l’eau est inconnue</numerusform>
        </translation>
    </message>
    <message>
        <source>D: equal dry matter, %1</source>
        <translation>D: matière sèche égale, %1</translation>
    </message>
    <message>
        <source>E: equal energy, %1</source>
        <translation>E: énergie égale, %1</translation>
    </message>
</context>
<context>
    <name>Table</name>
    <message>
        <source>Copy table</source>
        <translation>Copier le tableau</translation>
    </message>
</context>
<context>
    <name>Target</name>
    <message>
        <source>% as fed</source>
        <translation>% brut</translation>
    </message>
    <message>
        <source>% of energy</source>
        <translation>% de l’énergie</translation>
    </message>
    <message>
        <source>% of DM</source>
        <translation>% de la MS</translation>
    </message>
    <message>
        <source>from memory: verify before use</source>
        <translation>de mémoire&#xa0;: à vérifier avant usage</translation>
    </message>
    <message>
        <source>house rule</source>
        <translation>règle de la maison</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>inventé</translation>
    </message>
    <message>
        <source>computed from a published value</source>
        <translation>calculé d’une valeur publiée</translation>
    </message>
    <message>
        <source>%1 : %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>exactly %1</source>
        <translation>exactement %1</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>model species: %1</source>
        <translation>espèce modèle&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>the choice among %1</source>
        <translation>le choix parmi %1</translation>
    </message>
</context>
<context>
    <name>Today</name>
    <message>
        <source>1 bowl to prepare</source>
        <translation>1 gamelle à préparer</translation>
    </message>
    <message>
        <source>%1 bowls to prepare</source>
        <translation>%1 gamelles à préparer</translation>
    </message>
    <message>
        <source>no bowl to prepare</source>
        <translation>aucune gamelle à préparer</translation>
    </message>
    <message>
        <source>%1: all foods are weighed in</source>
        <translation>%1&#xa0;: tous les aliments sont pesés</translation>
    </message>
    <message>
        <source>%1: %2 of %3 foods are weighed in, %4 missing</source>
        <translation>%1&#xa0;: %2 aliments sur %3 sont pesés, %4 manquent</translation>
    </message>
    <message>
        <source>No section</source>
        <translation>Aucun secteur</translation>
    </message>
    <message>
        <source>%1 without a bowl: no diet in force, or nobody knows how many they are</source>
        <translation>%1 sans gamelle&#xa0;: aucune ration en vigueur, ou personne ne sait combien ils sont</translation>
    </message>
    <message>
        <source>1 group</source>
        <translation>1 groupe</translation>
    </message>
    <message>
        <source>%1 groups</source>
        <translation>%1 groupes</translation>
    </message>
    <message>
        <source>leftovers of 1 bowl of yesterday are not weighed</source>
        <translation>les refus de 1 gamelle d’hier ne sont pas pesés</translation>
    </message>
    <message>
        <source>leftovers of %1 bowls of yesterday are not weighed</source>
        <translation>les refus de %1 gamelles d’hier ne sont pas pesés</translation>
    </message>
    <message>
        <source>%1 g %2</source>
        <translation>%1 g de %2</translation>
    </message>
    <message>
        <source>%1, bowl %2 on %3: %4 in place of %5 (%6, %7)</source>
        <translation>%1, gamelle %2 le %3&#xa0;: %4 à la place de %5 (%6, %7)</translation>
    </message>
    <message>
        <source> and </source>
        <translation> et </translation>
    </message>
    <message>
        <source>any %1</source>
        <translation>tout %1</translation>
    </message>
    <message>
        <source>%1: %2, %3 g put out on %4, %5</source>
        <translation>%1&#xa0;: %2, %3 g posés le %4, %5</translation>
    </message>
    <message>
        <source>is not weighed yet</source>
        <translation>n’est pas encore pesé</translation>
    </message>
    <message>
        <source>stands until tomorrow</source>
        <translation>reste jusqu’à demain</translation>
    </message>
    <message>
        <source> (no section of this name: tarebowl pans takes its weight)</source>
        <translation> (aucun secteur de ce nom&#xa0;: tarebowl pans prend le poids)</translation>
    </message>
    <message>
        <source>Control pans that still stand</source>
        <translation>Gamelles témoins encore en place</translation>
    </message>
    <message>
        <source>Swaps made today</source>
        <translation>Remplacements du jour</translation>
    </message>
    <message>
        <source>Waiting for a decision</source>
        <translation>En attente d’une décision</translation>
    </message>
    <message>
        <source>swap: %1</source>
        <translation>remplacement&#xa0;: %1</translation>
    </message>
    <message>
        <source>diet: %1, version %2, for %3</source>
        <translation>ration&#xa0;: %1, version %2, pour %3</translation>
    </message>
</context>
<context>
    <name>Told</name>
    <message>
        <source>the species&apos; name</source>
        <translation>le nom de l’espèce</translation>
    </message>
    <message>
        <source>its scientific name</source>
        <translation>son nom scientifique</translation>
    </message>
    <message>
        <source>the groups of animals it belongs to</source>
        <translation>les groupes d’animaux auxquels elle appartient</translation>
    </message>
    <message>
        <source>a model species</source>
        <translation>une espèce modèle</translation>
    </message>
    <message>
        <source>a sentence on why the model stands in</source>
        <translation>une phrase sur la raison du modèle</translation>
    </message>
    <message>
        <source>a name for the group</source>
        <translation>un nom pour le groupe</translation>
    </message>
    <message>
        <source>how many animals there are</source>
        <translation>combien il y a d’animaux</translation>
    </message>
    <message>
        <source>the mass of one animal</source>
        <translation>la masse d’un animal</translation>
    </message>
    <message>
        <source>how the energy need is worked out</source>
        <translation>comment le besoin en énergie est calculé</translation>
    </message>
    <message>
        <source>take in %1</source>
        <translation>accueillir %1</translation>
    </message>
    <message>
        <source>start the targets of %1 from a model</source>
        <translation>commencer les cibles de %1 d’un modèle</translation>
    </message>
</context>
<context>
    <name>TraceWords</name>
    <message>
        <source>minimum</source>
        <translation>minimum</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>maximum</translation>
    </message>
    <message>
        <source>%1 %2 g</source>
        <translation>%1 %2 g</translation>
    </message>
    <message>
        <source>%1 missed by %2</source>
        <translation>%1 manqué de %2</translation>
    </message>
    <message>
        <source>%1 %2 to %3 g</source>
        <translation>%1 %2 à %3 g</translation>
    </message>
    <message>
        <source>what gives: %1</source>
        <translation>ce qui cède&#xa0;: %1</translation>
    </message>
    <message>
        <source>what comes in: %1</source>
        <translation>ce qui entre&#xa0;: %1</translation>
    </message>
    <message>
        <source>no food changes</source>
        <translation>aucun aliment ne change</translation>
    </message>
    <message>
        <source>Over all of this range the hard rules contradict each other.</source>
        <translation>Sur toute cette plage, les règles strictes se contredisent.</translation>
    </message>
    <message>
        <source>Nothing limits what is sought: give a maximum to a food or a target.</source>
        <translation>Rien ne limite ce qui est cherché&#xa0;: donnez un maximum à un aliment ou à une cible.</translation>
    </message>
    <message>
        <source>No answer in time.</source>
        <translation>Pas de réponse à temps.</translation>
    </message>
    <message>
        <source>No price: %1. Cost cannot be traded, for unknown is not free of charge.</source>
        <translation>Pas de prix&#xa0;: %1. Le coût ne peut être mis en balance, car inconnu n’est pas gratuit.</translation>
    </message>
    <message>
        <source>Nothing can be traced here (%1).</source>
        <translation>Rien ne peut être suivi ici (%1).</translation>
    </message>
    <message>
        <source>%1 against %2</source>
        <translation>%1 contre %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>cost a day</source>
        <translation>coût par jour</translation>
    </message>
    <message>
        <source>distance from now</source>
        <translation>distance de maintenant</translation>
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
        <translation>une gamelle vide</translation>
    </message>
    <message>
        <source>At %1: %2.</source>
        <translation>À %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 from %2 to %3: %4.</source>
        <translation>%1 de %2 à %3&#xa0;: %4.</translation>
    </message>
    <message>
        <source>Something else begins to give at %1.</source>
        <translation>Autre chose commence à céder à %1.</translation>
    </message>
    <message>
        <source>Below %1 the hard rules contradict each other.</source>
        <translation>Sous %1, les règles strictes se contredisent.</translation>
    </message>
    <message>
        <source>Beyond %1 the hard rules contradict each other.</source>
        <translation>Au-delà de %1, les règles strictes se contredisent.</translation>
    </message>
    <message>
        <source>In amounts between the scale&apos;s steps.</source>
        <translation>En quantités entre les échelons de la balance.</translation>
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
        <translation>%1 restants, %2</translation>
    </message>
    <message numerus="yes">
        <source>Cut off from the server: %n entry(ies) wait.</source>
        <translation>
            <numerusform>Coupé du serveur : %n note attend.</numerusform>
            <numerusform>Coupé du serveur : %n notes attendent.</numerusform>
        </translation>
    </message>
    <message>
        <source>Cut off from the server.</source>
        <translation>Coupé du serveur.</translation>
    </message>
    <message>
        <source>The kitchen goes on with this desk&apos;s copy of %1; all other rooms wait for the server.</source>
        <translation>La cuisine continue avec la copie de ce poste du %1 ; toutes les autres pièces attendent le serveur.</translation>
    </message>
    <message>
        <source>This desk has no copy yet: all rooms wait for the server.</source>
        <translation>Ce poste n’a pas encore de copie : toutes les pièces attendent le serveur.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) wait for the server.</source>
        <translation>
            <numerusform>%n note attend le serveur.</numerusform>
            <numerusform>%n notes attendent le serveur.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n entry(ies) the server has something else: choose what counts.</source>
        <translation>
            <numerusform>Pour %n note, le serveur a autre chose : choisissez ce qui compte.</numerusform>
            <numerusform>Pour %n notes, le serveur a autre chose : choisissez ce qui compte.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 restants</translation>
    </message>
    <message>
        <source>all eaten</source>
        <translation>tout mangé</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation>non pesé</translation>
    </message>
    <message>
        <source>about %1 left</source>
        <translation>environ %1 restants</translation>
    </message>
    <message>
        <source>%1 spilled</source>
        <translation>%1 renversés</translation>
    </message>
    <message>
        <source>%1 stolen</source>
        <translation>%1 volés</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>cannot be read any more</source>
        <translation>n’est plus lisible</translation>
    </message>
    <message>
        <source>%1, weighed in</source>
        <translation>%1, pesé</translation>
    </message>
    <message>
        <source>%1, leftover</source>
        <translation>%1, reste</translation>
    </message>
    <message>
        <source>left of all together</source>
        <translation>reste de tout ensemble</translation>
    </message>
    <message>
        <source>It waits, and is sent in its turn when the server answers.</source>
        <translation>Elle attend, et est envoyée à son tour quand le serveur répond.</translation>
    </message>
    <message>
        <source>The server did not take it: %1. Yours writes it there if it can be; theirs sets it aside on this desk.</source>
        <translation>Le serveur ne l’a pas prise : %1. « La vôtre compte » l’y écrit si c’est possible ; « L’autre compte » la met de côté sur ce poste.</translation>
    </message>
    <message>
        <source>The server has something else: %1. If yours counts, it corrects what is there; if theirs counts, yours is kept beside it.</source>
        <translation>Le serveur a autre chose : %1. Si la vôtre compte, elle corrige ce qui s’y trouve ; si l’autre compte, la vôtre est gardée à côté.</translation>
    </message>
</context>
<context>
    <name>WholeFile</name>
    <message>
        <source>%1 was not written: %2</source>
        <translation>%1 n’a pas été écrit&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>Why</name>
    <message>
        <source>%1 and %2</source>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 autres</translation>
    </message>
    <message>
        <source> (from memory: verify)</source>
        <translation> (de mémoire&#xa0;: à vérifier)</translation>
    </message>
    <message>
        <source>%1 is not sure enough.</source>
        <translation>%1 n’est pas assez sûr.</translation>
    </message>
    <message>
        <source>Its mean, %1, lies in the zone, but with the scatter of the foods the target holds with a chance of only %2.</source>
        <translation>Sa moyenne, %1, est dans la zone, mais avec la dispersion des aliments la cible ne tient qu’avec une probabilité de %2.</translation>
    </message>
    <message>
        <source>%1 is short by %2:</source>
        <translation>%1 manque de %2&#xa0;:</translation>
    </message>
    <message>
        <source>%1 is over by %2:</source>
        <translation>%1 dépasse de %2&#xa0;:</translation>
    </message>
    <message>
        <source>%1 is over: none is allowed.</source>
        <translation>%1 dépasse&#xa0;: rien n’en est permis.</translation>
    </message>
    <message>
        <source>%1 instead of at least %2.</source>
        <translation>%1 au lieu d’au moins %2.</translation>
    </message>
    <message>
        <source>%1 instead of at most %2.</source>
        <translation>%1 au lieu d’au plus %2.</translation>
    </message>
    <message>
        <source> A hard rule.</source>
        <translation> Une règle stricte.</translation>
    </message>
    <message>
        <source>With these foods, limits and locks</source>
        <translation>Avec ces aliments, limites et verrous</translation>
    </message>
    <message>
        <source>With these foods and limits</source>
        <translation>Avec ces aliments et limites</translation>
    </message>
    <message>
        <source>%1, no bowl holds all of these together:</source>
        <translation>%1, aucune gamelle ne tient tout ceci ensemble&#xa0;:</translation>
    </message>
    <message>
        <source>%1, no bowl holds %2.</source>
        <translation>%1, aucune gamelle ne tient %2.</translation>
    </message>
    <message>
        <source>%1, the hard rules contradict each other.</source>
        <translation>%1, les règles strictes se contredisent.</translation>
    </message>
    <message>
        <source>The grams shown are the last ones and do not keep the rules.</source>
        <translation>Les grammes affichés sont les derniers et ne tiennent pas les règles.</translation>
    </message>
    <message>
        <source>Nothing limits what is sought.</source>
        <translation>Rien ne limite ce qui est cherché.</translation>
    </message>
    <message>
        <source>Give a maximum to a food or a target, or seek the diet closest to now.</source>
        <translation>Donnez un maximum à un aliment ou à une cible, ou cherchez la ration la plus proche de l’actuelle.</translation>
    </message>
    <message>
        <source>No answer in time.</source>
        <translation>Pas de réponse à temps.</translation>
    </message>
    <message>
        <source>The grams shown are the last ones. Fewer foods or locks make it easier.</source>
        <translation>Les grammes affichés sont les derniers. Moins d’aliments ou de verrous facilitent la tâche.</translation>
    </message>
    <message>
        <source>The cheapest bowl cannot be sought: no price for %1.</source>
        <translation>La gamelle la moins chère ne peut être cherchée&#xa0;: pas de prix pour %1.</translation>
    </message>
    <message>
        <source>Unknown is not free of charge. Prices stand with the foods in the Foods room; the grams shown are the last ones.</source>
        <translation>Inconnu n’est pas gratuit. Les prix sont avec les aliments dans la salle Aliments&#xa0;; les grammes affichés sont les derniers.</translation>
    </message>
    <message>
        <source>The answer did not pass its own check and is not shown.</source>
        <translation>La réponse n’a pas passé sa propre vérification et n’est pas affichée.</translation>
    </message>
    <message>
        <source>At least what is shown: %1.</source>
        <translation>Au moins ce qui est affiché&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No value for %1, %2 of the dry matter.</source>
        <translation>Pas de valeur pour %1, %2 de la matière sèche.</translation>
    </message>
    <message>
        <source>Nobody can judge %1.</source>
        <translation>Personne ne peut juger %1.</translation>
    </message>
    <message>
        <source>No food in the bowl has a value for it. Unknown is not zero.</source>
        <translation>Aucun aliment de la gamelle n’a de valeur pour cela. Inconnu n’est pas zéro.</translation>
    </message>
    <message>
        <source>%1 is held at %2 g.</source>
        <translation>%1 est tenu à %2 g.</translation>
    </message>
    <message>
        <source>That is above its maximum of %1 g.</source>
        <translation>C’est au-dessus de son maximum de %1 g.</translation>
    </message>
    <message>
        <source>That is below its minimum of %1 g.</source>
        <translation>C’est au-dessous de son minimum de %1 g.</translation>
    </message>
    <message>
        <source>%1 at its minimum</source>
        <translation>%1 à son minimum</translation>
    </message>
    <message>
        <source>%1 at its maximum</source>
        <translation>%1 à son maximum</translation>
    </message>
    <message>
        <source>No room left:</source>
        <translation>Plus de marge&#xa0;:</translation>
    </message>
    <message>
        <source>No cheaper bowl meets the targets: %1 per animal a day.</source>
        <translation>Aucune gamelle moins chère n’atteint les cibles&#xa0;: %1 par animal et par jour.</translation>
    </message>
    <message>
        <source>No bowl of fewer than %1 foods meets the targets; of such bowls it is the closest.</source>
        <translation>Aucune gamelle de moins de %1 aliments n’atteint les cibles&#xa0;; de telles gamelles, c’est la plus proche.</translation>
    </message>
    <message>
        <source>No bowl that meets the targets holds less %1: %2 per animal a day.</source>
        <translation>Aucune gamelle qui atteint les cibles ne contient moins de %1&#xa0;: %2 par animal et par jour.</translation>
    </message>
    <message>
        <source>No bowl that meets the targets holds more %1: %2 per animal a day.</source>
        <translation>Aucune gamelle qui atteint les cibles ne contient plus de %1&#xa0;: %2 par animal et par jour.</translation>
    </message>
    <message>
        <source>No bowl that meets the targets lies closer to the diet as it is now.</source>
        <translation>Aucune gamelle qui atteint les cibles n’est plus proche de la ration actuelle.</translation>
    </message>
    <message>
        <source>No bowl that meets the targets lies closer to equal grams of every food.</source>
        <translation>Aucune gamelle qui atteint les cibles n’est plus proche de grammes égaux de chaque aliment.</translation>
    </message>
    <message>
        <source>Every target that can be judged holds.</source>
        <translation>Chaque cible qui peut être jugée est atteinte.</translation>
    </message>
    <message>
        <source>Every target holds.</source>
        <translation>Chaque cible est atteinte.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>%1: %2 → %3</source>
        <translation>%1&#xa0;: %2 → %3</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>%1 is new: %2</source>
        <translation>%1 est nouveau&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 is gone: it was %2</source>
        <translation>%1 a disparu&#xa0;: c’était %2</translation>
    </message>
    <message>
        <source>%1, at least</source>
        <translation>%1, au moins</translation>
    </message>
    <message>
        <source>%1, at most</source>
        <translation>%1, au plus</translation>
    </message>
    <message>
        <source>%1, locked</source>
        <translation>%1, verrouillé</translation>
    </message>
    <message>
        <source>%1, given as</source>
        <translation>%1, donné comme</translation>
    </message>
    <message>
        <source>%1, preparation</source>
        <translation>%1, préparation</translation>
    </message>
    <message>
        <source>%1 may be given unweighed</source>
        <translation>%1 peut être donné sans pesée</translation>
    </message>
    <message>
        <source>%1 is no longer given unweighed</source>
        <translation>%1 n’est plus donné sans pesée</translation>
    </message>
    <message>
        <source>%1 unweighed, from</source>
        <translation>%1 sans pesée, de</translation>
    </message>
    <message>
        <source>%1 unweighed, up to</source>
        <translation>%1 sans pesée, jusqu’à</translation>
    </message>
    <message>
        <source>targets</source>
        <translation>cibles</translation>
    </message>
    <message>
        <source>what is sought</source>
        <translation>ce qui est cherché</translation>
    </message>
    <message>
        <source>how sure</source>
        <translation>certitude</translation>
    </message>
    <message>
        <source>energy method</source>
        <translation>méthode d’énergie</translation>
    </message>
    <message>
        <source>whole scale steps</source>
        <translation>échelons entiers de la balance</translation>
    </message>
    <message>
        <source>group shares</source>
        <translation>parts de groupes</translation>
    </message>
    <message>
        <source>structure rules</source>
        <translation>règles de structure</translation>
    </message>
    <message>
        <source>fed from</source>
        <translation>distribuée à partir du</translation>
    </message>
    <message>
        <source>days of phasing in</source>
        <translation>jours de transition</translation>
    </message>
    <message>
        <source>other settings</source>
        <translation>autres réglages</translation>
    </message>
    <message>
        <source>%1, minimum</source>
        <translation>%1, minimum</translation>
    </message>
    <message>
        <source>%1, maximum</source>
        <translation>%1, maximum</translation>
    </message>
    <message>
        <source>%1 is set aside: %2</source>
        <translation>%1 est mis de côté&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 is in force again</source>
        <translation>%1 est de nouveau en vigueur</translation>
    </message>
    <message>
        <source>%1: changed</source>
        <translation>%1&#xa0;: modifié</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>leave out</source>
        <translation>omettre</translation>
    </message>
    <message>
        <source>food</source>
        <translation>aliment</translation>
    </message>
    <message>
        <source>food&apos;s code</source>
        <translation>code de l’aliment</translation>
    </message>
    <message>
        <source>food group</source>
        <translation>groupe d’aliments</translation>
    </message>
    <message>
        <source>form</source>
        <translation>forme</translation>
    </message>
    <message>
        <source>source</source>
        <translation>source</translation>
    </message>
    <message>
        <source>nutrient</source>
        <translation>nutriment</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>SD</source>
        <translation>ET</translation>
    </message>
    <message>
        <source>standard error</source>
        <translation>erreur type</translation>
    </message>
    <message>
        <source>n</source>
        <translation>n</translation>
    </message>
    <message>
        <source>qualifier</source>
        <translation>qualificatif</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>base</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>dry matter</source>
        <translation>matière sèche</translation>
    </message>
    <message>
        <source>energy (ME)</source>
        <translation>énergie (EM)</translation>
    </message>
    <message>
        <source>as fed</source>
        <translation>matière brute</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::AllowanceBar</name>
    <message>
        <source>At least so many grams a day, unweighed</source>
        <translation>Au moins autant de grammes par jour, sans pesée</translation>
    </message>
    <message>
        <source>from g</source>
        <translation>de g</translation>
    </message>
    <message>
        <source>At most so many grams a day, unweighed</source>
        <translation>Au plus autant de grammes par jour, sans pesée</translation>
    </message>
    <message>
        <source>to g</source>
        <translation>à g</translation>
    </message>
    <message>
        <source>…then the food that is given unweighed</source>
        <translation>…puis l’aliment donné sans pesée</translation>
    </message>
    <message>
        <source>A food that is given unweighed, by part of its name</source>
        <translation>Un aliment donné sans pesée, par une partie de son nom</translation>
    </message>
    <message>
        <source>What is given unweighed for</source>
        <translation>À quoi sert ce qui est donné sans pesée</translation>
    </message>
    <message>
        <source>Allow</source>
        <translation>Permettre</translation>
    </message>
    <message>
        <source>No food of this collection is called “%1”. Foods are added in the Foods room.</source>
        <translation>Aucun aliment de cette collection ne s’appelle «&#xa0;%1&#xa0;». Les aliments s’ajoutent dans la salle Aliments.</translation>
    </message>
    <message>
        <source>What is given unweighed needs a range: so many grams a day at least and at most.</source>
        <translation>Ce qui est donné sans pesée demande une plage&#xa0;: tant de grammes par jour au moins et au plus.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::AnimalDesk</name>
    <message>
        <source>add %1</source>
        <translation>ajouter %1</translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>modifier %1</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>retirer %1</translation>
    </message>
    <message>
        <source>%1 joins the group</source>
        <translation>%1 rejoint le groupe</translation>
    </message>
    <message>
        <source>%1 leaves the group</source>
        <translation>%1 quitte le groupe</translation>
    </message>
    <message>
        <source>weigh %1</source>
        <translation>peser %1</translation>
    </message>
    <message>
        <source>leave a mass out</source>
        <translation>écarter un poids</translation>
    </message>
    <message>
        <source>count a mass again</source>
        <translation>compter de nouveau un poids</translation>
    </message>
    <message>
        <source>put a mass right</source>
        <translation>corriger un poids</translation>
    </message>
    <message>
        <source>score the condition of %1</source>
        <translation>noter l’état de %1</translation>
    </message>
    <message>
        <source>change the energy plan</source>
        <translation>modifier le plan d’énergie</translation>
    </message>
    <message>
        <source>throw the draft away</source>
        <translation>jeter le brouillon</translation>
    </message>
    <message>
        <source>put version %1 in force</source>
        <translation>mettre en vigueur la version %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::AnimalList</name>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
    <message>
        <source>Find a species, group or animal by part of its name</source>
        <translation>Trouver une espèce, un groupe ou un animal par une partie du nom</translation>
    </message>
    <message>
        <source>Find an animal…</source>
        <translation>Chercher un animal…</translation>
    </message>
    <message>
        <source>A species new to the collection…</source>
        <translation>Une espèce nouvelle dans la collection…</translation>
    </message>
    <message>
        <source>A group of the species shown</source>
        <translation>Un groupe de l’espèce affichée</translation>
    </message>
    <message>
        <source>An animal of the species shown</source>
        <translation>Un animal de l’espèce affichée</translation>
    </message>
    <message>
        <source>Add a species, a group or an animal</source>
        <translation>Ajouter une espèce, un groupe ou un animal</translation>
    </message>
    <message>
        <source>Species, groups and animals</source>
        <translation>Espèces, groupes et animaux</translation>
    </message>
    <message>
        <source>Nothing is called so. Clear the field.</source>
        <translation>Rien ne s’appelle ainsi. Videz le champ.</translation>
    </message>
    <message>
        <source>reading…</source>
        <translation>lecture…</translation>
    </message>
    <message>
        <source>%1 species · %2 groups · %3 animals by name</source>
        <translation>%1 espèces · %2 groupes · %3 animaux nommés</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::AnimalsRoom</name>
    <message>
        <source>Reading the animals…</source>
        <translation>Lecture des animaux…</translation>
    </message>
    <message>
        <source>There is no animal in this collection yet.</source>
        <translation>Il n’y a encore aucun animal dans cette collection.</translation>
    </message>
    <message>
        <source>Animals stand by species and group, with their masses, energy need and the targets that diets are judged by.</source>
        <translation>Les animaux sont par espèce et groupe, avec leurs poids, leur besoin en énergie et les cibles par lesquelles les rations sont jugées.</translation>
    </message>
    <message>
        <source>Add a species</source>
        <translation>Ajouter une espèce</translation>
    </message>
    <message>
        <source>With its first group, energy need and targets, from a model species where nothing is published of its own.</source>
        <translation>Avec son premier groupe, son besoin en énergie et ses cibles, d’une espèce modèle là où rien n’est publié pour elle.</translation>
    </message>
    <message>
        <source>Find an animal</source>
        <translation>Chercher un animal</translation>
    </message>
    <message>
        <source>%1, new group</source>
        <translation>%1, nouveau groupe</translation>
    </message>
    <message>
        <source>body mass in g or kg · energy in kcal ME a day</source>
        <translation>poids vif en g ou kg · énergie en kcal EM par jour</translation>
    </message>
    <message>
        <source>reading the animals…</source>
        <translation>lecture des animaux…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ApprovalForm</name>
    <message>
        <source>Approve</source>
        <translation>Approuver</translation>
    </message>
    <message>
        <source>Approval of this version</source>
        <translation>Approbation de cette version</translation>
    </message>
    <message>
        <source>Fed from this day</source>
        <translation>Distribuée à partir de ce jour</translation>
    </message>
    <message>
        <source>at once</source>
        <translation>tout de suite</translation>
    </message>
    <message>
        <source> days</source>
        <translation> jours</translation>
    </message>
    <message>
        <source>Phased in over so many days</source>
        <translation>Transition sur tant de jours</translation>
    </message>
    <message>
        <source>Why? This is kept with it.</source>
        <translation>Pourquoi&#xa0;? Cela est conservé avec.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Raison</translation>
    </message>
    <message>
        <source>Approved, this version never changes: grams, targets and composition are kept as they are now. Local rules, a qualified nutritionist and a licensed vet come first.</source>
        <translation>Approuvée, cette version ne change plus jamais&#xa0;: grammes, cibles et composition sont gardés tels qu’ils sont maintenant. Les règles locales, un nutritionniste qualifié et un vétérinaire agréé passent avant.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>fed from</source>
        <translation>distribuée dès le</translation>
    </message>
    <message>
        <source>phased in</source>
        <translation>transition</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::BalanceLadder</name>
    <message>
        <source>Balance ladder</source>
        <translation>Échelle du bilan</translation>
    </message>
    <message>
        <source>One row per target, those in trouble first</source>
        <translation>Une ligne par cible, d’abord celles en difficulté</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::BalancePane</name>
    <message>
        <source>Balance</source>
        <translation>Bilan</translation>
    </message>
    <message>
        <source>Rules that cannot be judged</source>
        <translation>Règles qui ne peuvent être jugées</translation>
    </message>
    <message>
        <source>trouble first</source>
        <translation>problèmes d’abord</translation>
    </message>
    <message>
        <source>as stated</source>
        <translation>tel qu’indiqué</translation>
    </message>
    <message>
        <source>by name</source>
        <translation>par nom</translation>
    </message>
    <message>
        <source>Order of the balance</source>
        <translation>Ordre du bilan</translation>
    </message>
    <message>
        <source>own basis</source>
        <translation>base propre</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>par %1</translation>
    </message>
    <message>
        <source>Basis of the balance</source>
        <translation>Base du bilan</translation>
    </message>
    <message>
        <source>Reads every target on this basis, as it comes to in this bowl</source>
        <translation>Lit chaque cible sur cette base, comme elle revient dans cette gamelle</translation>
    </message>
    <message>
        <source>as eaten</source>
        <translation>tel que mangé</translation>
    </message>
    <message>
        <source>as offered</source>
        <translation>tel qu’offert</translation>
    </message>
    <message>
        <source>As eaten or as offered</source>
        <translation>Tel que mangé ou tel qu’offert</translation>
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
        <translation>Secteur</translation>
    </message>
    <message>
        <source>Day of the sheet</source>
        <translation>Jour de la fiche</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <comment>a day and its weekday, as Qt writes formats</comment>
        <translation>ddd d MMM yyyy</translation>
    </message>
    <message>
        <source>Bowls of the sheet</source>
        <translation>Gamelles de la fiche</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::BowlModel</name>
    <message>
        <source>%1: swapped for another</source>
        <translation>%1&#xa0;: remplacé par un autre</translation>
    </message>
    <message>
        <source>%1 (swapped in)</source>
        <translation>%1 (en remplacement)</translation>
    </message>
    <message>
        <source>%1 g %2 %3</source>
        <translation>%1 g %2 %3</translation>
    </message>
    <message>
        <source>to weigh</source>
        <translation>à peser</translation>
    </message>
    <message>
        <source>food</source>
        <translation>aliment</translation>
    </message>
    <message>
        <source>preparation</source>
        <translation>préparation</translation>
    </message>
    <message>
        <source>left</source>
        <translation>refus</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>pesé</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::BowlPane</name>
    <message>
        <source>Foods of the bowl</source>
        <translation>Aliments de la gamelle</translation>
    </message>
    <message>
        <source>The bowl</source>
        <translation>La gamelle</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CalciumReview</name>
    <message>
        <source>Calcium against its targets</source>
        <translation>Calcium face à ses cibles</translation>
    </message>
    <message>
        <source>As eaten</source>
        <translation>Tel que mangé</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Offered</source>
        <translation>Offert</translation>
    </message>
    <message>
        <source>Eaten</source>
        <translation>Mangé</translation>
    </message>
    <message>
        <source>With the dose</source>
        <translation>Avec la dose</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>Supplement</source>
        <translation>Complément</translation>
    </message>
    <message>
        <source>Share of a dust that reaches the mouth</source>
        <translation>Part d’une poudre qui atteint la bouche</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>Least addition of</source>
        <translation>Moindre ajout de</translation>
    </message>
    <message>
        <source>of which reaches the mouth</source>
        <translation>dont atteint la bouche</translation>
    </message>
    <message>
        <source>no supplement</source>
        <translation>aucun complément</translation>
    </message>
    <message>
        <source>Calcium review</source>
        <translation>Examen du calcium</translation>
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
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>target</source>
        <translation>cible</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>not stated for this candidate</source>
        <translation>non indiqué pour ce candidat</translation>
    </message>
    <message>
        <source>stated on another basis; what it takes to convert it is not known</source>
        <translation>indiqué sur une autre base&#xa0;; ce qu’il faut pour convertir n’est pas connu</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CautionsCard</name>
    <message>
        <source>■ never</source>
        <translation>■ jamais</translation>
    </message>
    <message>
        <source>▲ little</source>
        <translation>▲ peu</translation>
    </message>
    <message>
        <source>○ consider</source>
        <translation>○ à considérer</translation>
    </message>
    <message>
        <source>how grave</source>
        <translation>gravité</translation>
    </message>
    <message>
        <source>food</source>
        <translation>aliment</translation>
    </message>
    <message>
        <source>why</source>
        <translation>pourquoi</translation>
    </message>
    <message>
        <source>what to do</source>
        <translation>que faire</translation>
    </message>
    <message>
        <source>where from</source>
        <translation>d’où</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de mémoire</translation>
    </message>
    <message>
        <source>Foods to be careful with</source>
        <translation>Aliments à donner avec prudence</translation>
    </message>
    <message>
        <source>The list is not complete. Ask a vet or nutritionist about every food that is new to the species.</source>
        <translation>La liste n’est pas complète. Demandez à un vétérinaire ou nutritionniste pour tout aliment nouveau pour l’espèce.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ChecksCard</name>
    <message>
        <source>Checks</source>
        <translation>Contrôles</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ChoiceChart</name>
    <message>
        <source>What is picked first, over time</source>
        <translation>Ce qui est pris d’abord, au fil du temps</translation>
    </message>
    <message>
        <source>%1, from %2</source>
        <translation>%1, dès le %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Clerk</name>
    <message>
        <source>This was changed elsewhere since it was read; nothing of yours was written.</source>
        <translation>Cela a été modifié ailleurs depuis la lecture&#xa0;; rien de vous n’a été écrit.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CollectionMenu</name>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
    <message>
        <source>Collection file, theme and language</source>
        <translation>Fichier de collection, thème et langue</translation>
    </message>
    <message>
        <source>New, open, restore a collection; theme; language</source>
        <translation>Créer, ouvrir, restaurer une collection&#xa0;; thème&#xa0;; langue</translation>
    </message>
    <message>
        <source>New collection…</source>
        <translation>Nouvelle collection…</translation>
    </message>
    <message>
        <source>Open a collection…</source>
        <translation>Ouvrir une collection…</translation>
    </message>
    <message>
        <source>Open again</source>
        <translation>Rouvrir</translation>
    </message>
    <message>
        <source>Open the invented sample</source>
        <translation>Ouvrir l’exemple inventé</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurer une sauvegarde</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Thème</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Comme le bureau</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Clair</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Sombre</translation>
    </message>
    <message>
        <source>Language, from the next start on</source>
        <translation>Langue, à partir du prochain démarrage</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Comme le système</translation>
    </message>
    <message>
        <source>%1 – in %2</source>
        <translation>%1 – dans %2</translation>
    </message>
    <message>
        <source>%1 – not in %2 any more</source>
        <translation>%1 – n’est plus dans %2</translation>
    </message>
    <message>
        <source>None was open yet</source>
        <translation>Aucune n’a encore été ouverte</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>There is none yet: one is made every day</source>
        <translation>Aucune pour l’instant&#xa0;: une est faite chaque jour</translation>
    </message>
    <message>
        <source>Open on a server…</source>
        <translation>Ouvrir sur un serveur…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ComparePane</name>
    <message>
        <source>What differs between the versions</source>
        <translation>Ce qui diffère entre les versions</translation>
    </message>
    <message>
        <source>Two versions side by side</source>
        <translation>Deux versions côte à côte</translation>
    </message>
    <message>
        <source>Choose a version to compare with under “More”.</source>
        <translation>Choisissez sous «&#xa0;Plus&#xa0;» une version à comparer.</translation>
    </message>
    <message>
        <source>Both versions say the same.</source>
        <translation>Les deux versions disent la même chose.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ComparisonPane</name>
    <message>
        <source>Side by side</source>
        <translation>Côte à côte</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>as fed, 100 g</source>
        <translation>brut, 100 g</translation>
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
        <translation>Retour à un aliment</translation>
    </message>
    <message>
        <source>Foods side by side</source>
        <translation>Aliments côte à côte</translation>
    </message>
    <message>
        <source>The highest of each row is bold. Ctrl+C copies the table.</source>
        <translation>Le plus élevé de chaque ligne est en gras. Ctrl+C copie le tableau.</translation>
    </message>
    <message>
        <source>1000 %1</source>
        <translation>1000 %1</translation>
    </message>
    <message>
        <source>%1 foods side by side</source>
        <translation>%1 aliments côte à côte</translation>
    </message>
    <message>
        <source>The first %1 of %2 foods side by side</source>
        <translation>Les %1 premiers de %2 aliments côte à côte</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CompositionModel</name>
    <message>
        <source>counted</source>
        <translation>compté</translation>
    </message>
    <message>
        <source>nutrient</source>
        <translation>nutriment</translation>
    </message>
    <message>
        <source>scatter</source>
        <translation>dispersion</translation>
    </message>
    <message>
        <source>where it comes from</source>
        <translation>d’où cela vient</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CompositionView</name>
    <message>
        <source>What the food is made of</source>
        <translation>De quoi l’aliment est fait</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CookingCard</name>
    <message>
        <source>share kept</source>
        <translation>part gardée</translation>
    </message>
    <message>
        <source>a share from 0 to 2 (1 keeps all of it)</source>
        <translation>une part de 0 à 2 (1 garde tout)</translation>
    </message>
    <message>
        <source>Raw food</source>
        <translation>Aliment cru</translation>
    </message>
    <message>
        <source>Grams cooked from 1 g raw</source>
        <translation>Grammes cuits de 1 g cru</translation>
    </message>
    <message>
        <source>Source of yield and shares</source>
        <translation>Source du rendement et des parts</translation>
    </message>
    <message>
        <source>who says so</source>
        <translation>qui l’affirme</translation>
    </message>
    <message>
        <source>1 g raw gives, g</source>
        <translation>1 g cru donne, g</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>Cooked from</source>
        <translation>Cuit de</translation>
    </message>
    <message>
        <source>Share of each nutrient that stays</source>
        <translation>Part de chaque nutriment qui demeure</translation>
    </message>
    <message>
        <source>none: it is mixed from other foods</source>
        <translation>aucun&#xa0;: il est mélangé d’autres aliments</translation>
    </message>
    <message>
        <source>none: it is not worked out</source>
        <translation>aucun&#xa0;: il n’est pas calculé</translation>
    </message>
    <message>
        <source>“%1” is no yield: the grams cooked that 1 g raw gives, above 0.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un rendement&#xa0;: les grammes cuits que donne 1 g cru, plus de 0.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DamageOffer</name>
    <message numerus="yes">
        <source>%n row(s) or page(s) could not be read</source>
        <translation>
            <numerusform>%n ligne ou page n’a pas pu être lue</numerusform>
            <numerusform>%n lignes ou pages n’ont pas pu être lues</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) left out, what they belong to is lost</source>
        <translation>
            <numerusform>%n ligne écartée, ce à quoi elle appartient est perdu</numerusform>
            <numerusform>%n lignes écartées, ce à quoi elles appartiennent est perdu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n saved row(s) lay beside damaged ones: look at them</source>
        <translation>
            <numerusform>%n ligne récupérée était près de lignes endommagées&#xa0;: à vérifier</numerusform>
            <numerusform>%n lignes récupérées étaient près de lignes endommagées&#xa0;: à vérifier</numerusform>
        </translation>
    </message>
    <message>
        <source>its place is lost, there may have been more</source>
        <translation>leur emplacement est perdu, il y en avait peut-être plus</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>What was salvaged</source>
        <translation>Ce qui a été récupéré</translation>
    </message>
    <message>
        <source>What was written last could not be read.</source>
        <translation>Ce qui a été écrit en dernier n’a pas pu être lu.</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) could not be told to any table</source>
        <translation>
            <numerusform>%n page n’a pu être rattachée à aucune table</numerusform>
            <numerusform>%n pages n’ont pu être rattachées à aucune table</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 rows were copied into the new collection; the damaged file is as it was.</source>
        <translation>%1 lignes ont été copiées dans la nouvelle collection&#xa0;; le fichier endommagé est resté tel quel.</translation>
    </message>
    <message>
        <source>Nothing is missing, as far as can be told.</source>
        <translation>Rien ne manque, autant qu’on puisse le dire.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DeskPane</name>
    <message>
        <source>%1 kg each</source>
        <translation>%1 kg chacun</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>%1 kcal ME a day</source>
        <translation>%1 kcal EM par jour</translation>
    </message>
    <message>
        <source>costs %1 a day</source>
        <translation>coûte %1 par jour</translation>
    </message>
    <message>
        <source>Targets: %1 as model species, a starting point and not a requirement.</source>
        <translation>Cibles&#xa0;: %1 comme espèce modèle, un point de départ et non un besoin établi.</translation>
    </message>
    <message>
        <source>Some targets are from memory: verify them before use.</source>
        <translation>Certaines cibles sont de mémoire&#xa0;: vérifiez-les avant usage.</translation>
    </message>
    <message>
        <source>This program supports, and does not replace, a qualified nutritionist and a licensed vet.</source>
        <translation>Ce programme aide, sans les remplacer, un nutritionniste qualifié et un vétérinaire agréé.</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Grammes</translation>
    </message>
    <message>
        <source>per animal</source>
        <translation>par animal</translation>
    </message>
    <message>
        <source>per group</source>
        <translation>par groupe</translation>
    </message>
    <message>
        <source>On every edit</source>
        <translation>À chaque modification</translation>
    </message>
    <message>
        <source>solve as I type</source>
        <translation>résoudre en tapant</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>tenir</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Mises en garde</translation>
    </message>
    <message>
        <source>Below the foods</source>
        <translation>Sous les aliments</translation>
    </message>
    <message>
        <source>What is shown below the foods</source>
        <translation>Ce qui est affiché sous les aliments</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Diet</source>
        <translation>Ration</translation>
    </message>
    <message>
        <source>Grams for one animal a day</source>
        <translation>Grammes pour un animal par jour</translation>
    </message>
    <message>
        <source>Grams for the whole group a day</source>
        <translation>Grammes pour tout le groupe par jour</translation>
    </message>
    <message>
        <source>What you type is held and the unlocked foods give way</source>
        <translation>Ce que vous tapez est tenu et les aliments non verrouillés cèdent</translation>
    </message>
    <message>
        <source>Only the balance is recomputed; no food gives way</source>
        <translation>Seul le bilan est recalculé&#xa0;; aucun aliment ne cède</translation>
    </message>
    <message>
        <source>The grams stand as they were written. With what is known today the solver would give others.</source>
        <translation>Les grammes sont tels qu’ils ont été écrits. Avec ce que l’on sait aujourd’hui, le solveur en donnerait d’autres.</translation>
    </message>
    <message>
        <source>Let the foods give way</source>
        <translation>Laisser céder les aliments</translation>
    </message>
    <message>
        <source>No food is in this diet yet. It is worked out as foods are added.</source>
        <translation>Aucun aliment n’est encore dans cette ration. Elle se calcule à mesure qu’on en ajoute.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietChooser</name>
    <message>
        <source>This group is no longer in the collection.</source>
        <translation>Ce groupe n’est plus dans la collection.</translation>
    </message>
    <message>
        <source>%1, daily diet</source>
        <translation>%1, ration du jour</translation>
    </message>
    <message>
        <source>diet</source>
        <translation>ration</translation>
    </message>
    <message>
        <source>in this diet</source>
        <translation>dans cette ration</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietDesk</name>
    <message>
        <source>let the foods give way</source>
        <translation>laisser céder les aliments</translation>
    </message>
    <message>
        <source>Not taken: the maximum of %1 would lie below its minimum.</source>
        <translation>Non pris en compte&#xa0;: le maximum de %1 serait sous son minimum.</translation>
    </message>
    <message>
        <source>Not taken: a target for %1 needs a minimum or a maximum.</source>
        <translation>Non pris en compte&#xa0;: une cible pour %1 demande un minimum ou un maximum.</translation>
    </message>
    <message>
        <source>%1 is in this diet already.</source>
        <translation>%1 est déjà dans cette ration.</translation>
    </message>
    <message>
        <source>Not changed: only a draft can be, in a collection that can be written. A new version is a draft.</source>
        <translation>Non modifié&#xa0;: seul un brouillon peut l’être, dans une collection où l’on peut écrire. Une nouvelle version est un brouillon.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietList</name>
    <message>
        <source>Find a diet or food…</source>
        <translation>Chercher une ration ou un aliment…</translation>
    </message>
    <message>
        <source>Find a diet, or a food of the diet, by part of its name</source>
        <translation>Trouver une ration, ou un aliment de la ration, par une partie de son nom</translation>
    </message>
    <message>
        <source>Diets</source>
        <translation>Rations</translation>
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
        <translation>version %1, %2</translation>
    </message>
    <message>
        <source>nothing in it yet</source>
        <translation>encore rien dedans</translation>
    </message>
    <message>
        <source>no diet yet: design one</source>
        <translation>pas encore de ration&#xa0;: en concevoir une</translation>
    </message>
    <message>
        <source>Problem files</source>
        <translation>Fichiers de problème</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietPapers</name>
    <message>
        <source>printed: %1</source>
        <translation>imprimé&#xa0;: %1</translation>
    </message>
    <message>
        <source>written: %1</source>
        <translation>écrit&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietsRoom</name>
    <message>
        <source>Explore</source>
        <translation>Explorer</translation>
    </message>
    <message>
        <source>Structure rules</source>
        <translation>Structure</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparer</translation>
    </message>
    <message>
        <source>No diet and no food of this diet is called “%1”.</source>
        <translation>Aucune ration et aucun aliment de cette ration ne s’appelle «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>%1 is a hard rule of the targets (%2). Why may this diet go beyond it?</source>
        <translation>%1 est une règle stricte des cibles (%2). Pourquoi cette ration peut-elle la dépasser&#xa0;?</translation>
    </message>
    <message>
        <source>Loosen</source>
        <translation>Assouplir</translation>
    </message>
    <message>
        <source>Put the hand on the food that is not available first.</source>
        <translation>Mettez d’abord la main sur l’aliment qui manque.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Ouvrir</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Save as</source>
        <translation>Enregistrer sous</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>Add a food</source>
        <translation>Ajouter un aliment</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Ctrl+I</translation>
    </message>
    <message>
        <source>Not available…</source>
        <translation>Non disponible…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>Try what is suggested first</source>
        <translation>Essayer la première suggestion</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>Explore what is chosen</source>
        <translation>Explorer ce qui est choisi</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>New version</source>
        <translation>Nouvelle version</translation>
    </message>
    <message>
        <source>Print the diet sheet</source>
        <translation>Imprimer la fiche de ration</translation>
    </message>
    <message>
        <source>Calendar of days that vary</source>
        <translation>Calendrier des jours variés</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>grams as fed · energy in %1 ME, %2</source>
        <translation>grammes bruts · énergie en %1 EM, %2</translation>
    </message>
    <message>
        <source>saved</source>
        <translation>enregistré</translation>
    </message>
    <message>
        <source>saving…</source>
        <translation>enregistrement…</translation>
    </message>
    <message>
        <source>Invented sample</source>
        <translation>Exemple inventé</translation>
    </message>
    <message>
        <source>not saved (Ctrl+S)</source>
        <translation>non enregistré (Ctrl+S)</translation>
    </message>
    <message>
        <source>Brackenmere (invented sample)</source>
        <translation>Brackenmere (exemple inventé)</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DoubtList</name>
    <message>
        <source>Find among the doubts…</source>
        <translation>Chercher parmi les doutes…</translation>
    </message>
    <message>
        <source>Find a doubt by the food&apos;s name or by what is doubted</source>
        <translation>Trouver un doute par le nom de l’aliment ou par ce qui est mis en doute</translation>
    </message>
    <message>
        <source>All foods</source>
        <translation>Tous les aliments</translation>
    </message>
    <message>
        <source>Back to the list of foods</source>
        <translation>Retour à la liste des aliments</translation>
    </message>
    <message>
        <source>What a careful analyst would doubt</source>
        <translation>Ce dont un analyste soigneux douterait</translation>
    </message>
    <message>
        <source>The foods could not be looked through: %1</source>
        <translation>Les aliments n’ont pas pu être examinés&#xa0;: %1</translation>
    </message>
    <message>
        <source>looking through the foods…</source>
        <translation>examen des aliments…</translation>
    </message>
    <message>
        <source>Nothing in these foods would make a careful analyst doubt.</source>
        <translation>Rien dans ces aliments ne ferait douter un analyste soigneux.</translation>
    </message>
    <message>
        <source>1 doubt about %1 foods</source>
        <translation>1 doute sur %1 aliments</translation>
    </message>
    <message>
        <source>%1 doubts about %2 foods</source>
        <translation>%1 doutes sur %2 aliments</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source> · looking again…</source>
        <translation> · nouvel examen…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::EnergyCard</name>
    <message>
        <source>nothing was weighed yet</source>
        <translation>rien n’a encore été pesé</translation>
    </message>
    <message>
        <source>mean of %1 animals</source>
        <translation>moyenne de %1 animaux</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>pesé</translation>
    </message>
    <message>
        <source>%1, newest %2</source>
        <translation>%1, le plus récent %2</translation>
    </message>
    <message>
        <source>Energy need, step by step</source>
        <translation>Besoin en énergie, pas à pas</translation>
    </message>
    <message>
        <source>Add this factor</source>
        <translation>Ajouter ce facteur</translation>
    </message>
    <message>
        <source>Take the chosen factor away</source>
        <translation>Retirer le facteur choisi</translation>
    </message>
    <message>
        <source>A worked-out need is where a diet begins, not where it ends: body mass and condition say whether it was right.</source>
        <translation>Une ration commence à un besoin calculé, elle ne s’y arrête pas&#xa0;: le poids vif et l’état corporel disent s’il était juste.</translation>
    </message>
    <message>
        <source>Published energy at 1 kg of body mass</source>
        <translation>Énergie publiée à 1 kg de poids vif</translation>
    </message>
    <message>
        <source>Choose a published energy at 1 kg…</source>
        <translation>Choisir une énergie publiée à 1 kg…</translation>
    </message>
    <message>
        <source>Published factors</source>
        <translation>Facteurs publiés</translation>
    </message>
    <message>
        <source>A house factor of 1, to be edited</source>
        <translation>Un facteur de la maison de 1, à modifier</translation>
    </message>
    <message>
        <source>Nobody chose yet how the energy need of this group is worked out. Begin with a published choice.</source>
        <translation>Personne n’a encore choisi comment calculer le besoin en énergie de ce groupe. Commencez par un choix publié.</translation>
    </message>
    <message>
        <source>In force since %1. %2</source>
        <translation>En vigueur depuis le %1. %2</translation>
    </message>
    <message>
        <source>The source speaks of: %1.</source>
        <translation>La source parle de&#xa0;: %1.</translation>
    </message>
    <message>
        <source>house factor</source>
        <translation>facteur de la maison</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::EnergyModel</name>
    <message>
        <source>step</source>
        <translation>étape</translation>
    </message>
    <message>
        <source>number</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>up to</source>
        <translation>jusqu’à</translation>
    </message>
    <message>
        <source>gives</source>
        <translation>donne</translation>
    </message>
    <message>
        <source>where it comes from</source>
        <translation>d’où cela vient</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Poids vif</translation>
    </message>
    <message>
        <source>to the power of</source>
        <translation>à la puissance</translation>
    </message>
    <message>
        <source>× %1</source>
        <translation>× %1</translation>
    </message>
    <message>
        <source>= per animal and day</source>
        <translation>= par animal et par jour</translation>
    </message>
    <message>
        <source>× animals</source>
        <translation>× animaux</translation>
    </message>
    <message>
        <source>= the group&apos;s day</source>
        <translation>= le jour du groupe</translation>
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
        <translation>avec l’énergie à 1 kg</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ExplorePane</name>
    <message>
        <source>missed in all</source>
        <translation>manqué en tout</translation>
    </message>
    <message>
        <source>The range begins at</source>
        <translation>La plage commence à</translation>
    </message>
    <message>
        <source>The range ends at</source>
        <translation>La plage finit à</translation>
    </message>
    <message>
        <source>Try it</source>
        <translation>Essayer</translation>
    </message>
    <message>
        <source>What moves</source>
        <translation>Ce qui bouge</translation>
    </message>
    <message>
        <source>What the chart reads</source>
        <translation>Ce que dit la courbe</translation>
    </message>
    <message>
        <source>Arrow keys read it, Ctrl with an arrow goes from breakpoint to breakpoint, Enter or a click tries what is read</source>
        <translation>Les flèches lisent, Ctrl avec une flèche va de rupture en rupture, Entrée ou un clic essaie ce qui est lu</translation>
    </message>
    <message>
        <source>Tries on the diet what is read; Ctrl+Z takes it back</source>
        <translation>Essaie sur la ration ce qui est lu&#xa0;; Ctrl+Z l’annule</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>What gives: %1</source>
        <translation>Ce qui cède&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FaecesCard</name>
    <message>
        <source>None of this group are written down yet.</source>
        <translation>Aucune de ce groupe n’est encore notée.</translation>
    </message>
    <message>
        <source>First day of the collection</source>
        <translation>Premier jour de la collecte</translation>
    </message>
    <message>
        <source>Last day of the collection</source>
        <translation>Dernier jour de la collecte</translation>
    </message>
    <message>
        <source>Grams fresh, of all animals and days together</source>
        <translation>Grammes frais, de tous les animaux et jours ensemble</translation>
    </message>
    <message>
        <source>g fresh</source>
        <translation>g frais</translation>
    </message>
    <message>
        <source>Grams of dry matter in 100 g fresh</source>
        <translation>Grammes de matière sèche dans 100 g frais</translation>
    </message>
    <message>
        <source>g DM in 100 g</source>
        <translation>g de MS dans 100 g</translation>
    </message>
    <message>
        <source>Nutrients per 100 g of dry matter, each in its own unit</source>
        <translation>Nutriments pour 100 g de matière sèche, chacun dans son unité</translation>
    </message>
    <message>
        <source>per 100 g DM: Ca 1850 ± 90; P 1200</source>
        <translation>pour 100 g de MS&#xa0;: Ca 1850 ± 90; P 1200</translation>
    </message>
    <message>
        <source>The report that it comes from</source>
        <translation>Le rapport d’où cela vient</translation>
    </message>
    <message>
        <source>report</source>
        <translation>rapport</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Faeces that were collected</source>
        <translation>Fèces collectées</translation>
    </message>
    <message>
        <source>Faeces collected and analysed: the report of their days tells what was apparently digested</source>
        <translation>Fèces collectées et analysées&#xa0;: le rapport de leurs jours dit ce qui a été apparemment digéré</translation>
    </message>
    <message>
        <source>How much was it? Type the grams as found, such as 412.</source>
        <translation>Combien y en avait-il&#xa0;? Tapez les grammes trouvés, comme 412.</translation>
    </message>
    <message>
        <source>Digestibility is worked out on dry matter: type how many g of 100 g fresh it is.</source>
        <translation>La digestibilité se calcule sur matière sèche&#xa0;: tapez combien de g elle fait dans 100 g frais.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Finder</name>
    <message>
        <source>Finder</source>
        <translation>Recherche</translation>
    </message>
    <message>
        <source>Go to a food, an animal or a diet: type part of its name</source>
        <translation>Aller à un aliment, un animal ou une ration&#xa0;: tapez une partie du nom</translation>
    </message>
    <message>
        <source>Part of a name</source>
        <translation>Partie d’un nom</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ce qui a été trouvé</translation>
    </message>
    <message>
        <source>Nothing is called so here.</source>
        <translation>Rien ne s’appelle ainsi ici.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodBandsChart</name>
    <message>
        <source>Grams of each food over time, offered and eaten</source>
        <translation>Grammes de chaque aliment au fil du temps, offerts et mangés</translation>
    </message>
    <message>
        <source>%1: %2 of %3 g</source>
        <translation>%1&#xa0;: %2 sur %3 g</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodBench</name>
    <message>
        <source>No food of this collection is called “%1”. Foods are added in the Foods room.</source>
        <translation>Aucun aliment de cette collection ne s’appelle «&#xa0;%1&#xa0;». Les aliments s’ajoutent dans la salle Aliments.</translation>
    </message>
    <message>
        <source>Choose a diet at the left first, or design one for a group.</source>
        <translation>Choisissez d’abord une ration à gauche, ou concevez-en une pour un groupe.</translation>
    </message>
    <message>
        <source>This food is no longer in the collection.</source>
        <translation>Cet aliment n’est plus dans la collection.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodDesk</name>
    <message>
        <source>add %1</source>
        <translation>ajouter %1</translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>modifier %1</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>retirer %1</translation>
    </message>
    <message>
        <source>add a sample of %1</source>
        <translation>ajouter un échantillon de %1</translation>
    </message>
    <message>
        <source>change a sample of %1</source>
        <translation>modifier un échantillon de %1</translation>
    </message>
    <message>
        <source>remove a sample of %1</source>
        <translation>retirer un échantillon de %1</translation>
    </message>
    <message>
        <source>set a sample aside</source>
        <translation>mettre un échantillon de côté</translation>
    </message>
    <message>
        <source>count a sample again</source>
        <translation>compter de nouveau un échantillon</translation>
    </message>
    <message>
        <source>set %1 by hand</source>
        <translation>fixer %1 à la main</translation>
    </message>
    <message>
        <source>leave %1 to the samples</source>
        <translation>laisser %1 aux échantillons</translation>
    </message>
    <message>
        <source>change the sampling plan of %1</source>
        <translation>modifier le plan d’échantillonnage de %1</translation>
    </message>
    <message>
        <source>change what %1 is cooked from</source>
        <translation>modifier de quoi %1 est cuit</translation>
    </message>
    <message>
        <source>change what %1 is mixed from</source>
        <translation>modifier de quoi %1 est mélangé</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodForm</name>
    <message>
        <source>A food needs a code: problem files name it by that.</source>
        <translation>Un aliment demande un code&#xa0;: les fichiers de problème le nomment ainsi.</translation>
    </message>
    <message>
        <source>A food needs a name.</source>
        <translation>Un aliment demande un nom.</translation>
    </message>
    <message>
        <source>The mass of one must be above 0 g.</source>
        <translation>La masse d’une pièce doit dépasser 0 g.</translation>
    </message>
    <message>
        <source>The scale step must be above 0 g.</source>
        <translation>L’échelon de la balance doit dépasser 0 g.</translation>
    </message>
    <message>
        <source>The edible part lies above 0 % and up to 100 %.</source>
        <translation>La part comestible est de plus de 0 % et jusqu’à 100 %.</translation>
    </message>
    <message>
        <source>A price is not below 0.</source>
        <translation>Un prix n’est pas sous 0.</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Forme</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Groupe</translation>
    </message>
    <message>
        <source>in stock</source>
        <translation>en stock</translation>
    </message>
    <message>
        <source>How it is made</source>
        <translation>Comment il est fait</translation>
    </message>
    <message>
        <source>cooked</source>
        <translation>cuit</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>mélangé</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>names it in problem files: kale-raw</source>
        <translation>le nomme dans les fichiers de problème&#xa0;: kale-raw</translation>
    </message>
    <message>
        <source>One weighs, g</source>
        <translation>Une pièce pèse, g</translation>
    </message>
    <message>
        <source>where it comes whole</source>
        <translation>s’il vient entier</translation>
    </message>
    <message>
        <source>Scale step, g</source>
        <translation>Échelon de la balance, g</translation>
    </message>
    <message>
        <source>Edible part, %</source>
        <translation>Part comestible, %</translation>
    </message>
    <message>
        <source>of what is bought</source>
        <translation>de ce qui est acheté</translation>
    </message>
    <message>
        <source>Price a kg</source>
        <translation>Prix au kg</translation>
    </message>
    <message>
        <source>as bought</source>
        <translation>tel qu’acheté</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>What the food is</source>
        <translation>Ce qu’est l’aliment</translation>
    </message>
    <message>
        <source>Each field is kept as soon as you leave it; undo takes it back.</source>
        <translation>Chaque champ est gardé dès que vous le quittez&#xa0;; Annuler le reprend.</translation>
    </message>
    <message>
        <source>Back to the composition</source>
        <translation>Retour à la composition</translation>
    </message>
    <message>
        <source>Worked out from one raw food</source>
        <translation>Calculé d’un aliment cru</translation>
    </message>
    <message>
        <source>Worked out from the parts of a house mix</source>
        <translation>Calculé des parties d’un mélange de la maison</translation>
    </message>
    <message>
        <source>“%1” is not a number that can stand for: %2.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre possible pour&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodList</name>
    <message>
        <source>Import…</source>
        <translation>Importer…</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Contrôles</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparer</translation>
    </message>
    <message>
        <source>Find a food by part of its name, form or group</source>
        <translation>Trouver un aliment par une partie du nom, de la forme ou du groupe</translation>
    </message>
    <message>
        <source>Import a table of foods (CSV, XLSX); a file can also be dropped on the window</source>
        <translation>Importer une table d’aliments (CSV, XLSX)&#xa0;; un fichier peut aussi être déposé sur la fenêtre</translation>
    </message>
    <message>
        <source>Add a food to the collection</source>
        <translation>Ajouter un aliment à la collection</translation>
    </message>
    <message>
        <source>Compare the selected foods side by side (hold Ctrl to select several)</source>
        <translation>Comparer les aliments choisis côte à côte (tenez Ctrl pour en choisir plusieurs)</translation>
    </message>
    <message>
        <source>Foods</source>
        <translation>Aliments</translation>
    </message>
    <message>
        <source>Checks %1</source>
        <translation>Contrôles %1</translation>
    </message>
    <message>
        <source>What a careful analyst would doubt in this collection</source>
        <translation>Ce dont un analyste soigneux douterait dans cette collection</translation>
    </message>
    <message>
        <source>Find in %1 foods…</source>
        <translation>Chercher parmi %1 aliments…</translation>
    </message>
    <message>
        <source>No food is called so. Clear the field, or add the food.</source>
        <translation>Aucun aliment ne s’appelle ainsi. Videz le champ, ou ajoutez l’aliment.</translation>
    </message>
    <message>
        <source>reading…</source>
        <translation>lecture…</translation>
    </message>
    <message>
        <source>%1 foods</source>
        <translation>%1 aliments</translation>
    </message>
    <message>
        <source>%1 of %2 foods</source>
        <translation>%1 sur %2 aliments</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodListModel</name>
    <message>
        <source>%1, none in stock</source>
        <translation>%1, pas en stock</translation>
    </message>
    <message>
        <source>food and form</source>
        <translation>aliment et forme</translation>
    </message>
    <message>
        <source>group</source>
        <translation>groupe</translation>
    </message>
    <message>
        <source>water
%</source>
        <translation>eau
%</translation>
    </message>
    <message>
        <source>protein
% DM</source>
        <translation>protéines
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
        <translation>un produit inventé</translation>
    </message>
    <message>
        <source>one weighs %1 g</source>
        <translation>une pièce pèse %1 g</translation>
    </message>
    <message>
        <source>scale step %1 g</source>
        <translation>échelon %1 g</translation>
    </message>
    <message>
        <source>%1 edible</source>
        <translation>%1 comestible</translation>
    </message>
    <message>
        <source>%1 a kg</source>
        <translation>%1 au kg</translation>
    </message>
    <message>
        <source>none in stock</source>
        <translation>pas en stock</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>as fed, 100 g</source>
        <translation>brut, 100 g</translation>
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
        <translation>Modifier l’échantillon…</translation>
    </message>
    <message>
        <source>Set aside…</source>
        <translation>Mettre de côté…</translation>
    </message>
    <message>
        <source>Set by hand…</source>
        <translation>Fixer à la main…</translation>
    </message>
    <message>
        <source>Among its group</source>
        <translation>Dans son groupe</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Aliment</translation>
    </message>
    <message>
        <source>Per 100 g as it is fed</source>
        <translation>Pour 100 g tel que distribué</translation>
    </message>
    <message>
        <source>Per kg of its dry matter (DM)</source>
        <translation>Par kg de sa matière sèche (MS)</translation>
    </message>
    <message>
        <source>Per 1000 kcal of its metabolizable energy (ME)</source>
        <translation>Pour 1000 kcal de son énergie métabolisable (EM)</translation>
    </message>
    <message>
        <source>Edit food…</source>
        <translation>Modifier l’aliment…</translation>
    </message>
    <message>
        <source>Remove food</source>
        <translation>Retirer l’aliment</translation>
    </message>
    <message>
        <source>Takes the food out of the collection; undo brings it back</source>
        <translation>Retire l’aliment de la collection&#xa0;; Annuler le ramène</translation>
    </message>
    <message>
        <source>Add a sample…</source>
        <translation>Ajouter un échantillon…</translation>
    </message>
    <message>
        <source>1000 %1</source>
        <translation>1000 %1</translation>
    </message>
    <message>
        <source>Open a nutrient&apos;s row and choose one of its samples first</source>
        <translation>Ouvrez d’abord la ligne d’un nutriment et choisissez un de ses échantillons</translation>
    </message>
    <message>
        <source>Change this sample</source>
        <translation>Modifier cet échantillon</translation>
    </message>
    <message>
        <source>Count it again</source>
        <translation>Le compter de nouveau</translation>
    </message>
    <message>
        <source>Leave this sample out of the composition, with a reason</source>
        <translation>Laisser cet échantillon hors de la composition, avec une raison</translation>
    </message>
    <message>
        <source>Put a value of your own before every sample, with a reason</source>
        <translation>Placer une valeur à vous avant tout échantillon, avec une raison</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodPicker</name>
    <message>
        <source>Add a food: type part of its name (Ctrl+I)…</source>
        <translation>Ajouter un aliment&#xa0;: tapez une partie de son nom (Ctrl+I)…</translation>
    </message>
    <message>
        <source>Add a food of the collection by part of its name</source>
        <translation>Ajouter un aliment de la collection par une partie de son nom</translation>
    </message>
    <message>
        <source>Foods that match</source>
        <translation>Aliments correspondants</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodsRoom</name>
    <message>
        <source>No food is in this collection yet.</source>
        <translation>Aucun aliment n’est encore dans cette collection.</translation>
    </message>
    <message>
        <source>Foods are what diets are made of: each with its composition, the laboratory samples or publications that say so, and what is unknown of it.</source>
        <translation>Les aliments sont ce dont les rations sont faites&#xa0;: chacun avec sa composition, les échantillons de laboratoire ou publications qui le disent, et ce qui en est inconnu.</translation>
    </message>
    <message>
        <source>Import a table…</source>
        <translation>Importer une table…</translation>
    </message>
    <message>
        <source>A laboratory&apos;s or publisher&apos;s table (CSV, XLSX): it shows line by line what will happen before anything is written.</source>
        <translation>La table d’un laboratoire ou d’un éditeur (CSV, XLSX)&#xa0;: elle montre ligne par ligne ce qui va se passer avant que rien ne soit écrit.</translation>
    </message>
    <message>
        <source>Add a food</source>
        <translation>Ajouter un aliment</translation>
    </message>
    <message>
        <source>By hand: a name, then its values or a laboratory&apos;s sample.</source>
        <translation>À la main&#xa0;: un nom, puis ses valeurs ou l’échantillon d’un laboratoire.</translation>
    </message>
    <message>
        <source>New food</source>
        <translation>Nouvel aliment</translation>
    </message>
    <message>
        <source>Leave the whole sample “%1” out of the composition?</source>
        <translation>Laisser tout l’échantillon «&#xa0;%1&#xa0;» hors de la composition&#xa0;?</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Mettre de côté</translation>
    </message>
    <message>
        <source> per 100 g as fed</source>
        <translation> pour 100 g bruts</translation>
    </message>
    <message>
        <source>A value of %1 that goes before every sample:</source>
        <translation>Une valeur de %1 qui passe avant tout échantillon&#xa0;:</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Fixer</translation>
    </message>
    <message>
        <source>Leave it to the samples</source>
        <translation>Laisser aux échantillons</translation>
    </message>
    <message>
        <source>Find a food</source>
        <translation>Chercher un aliment</translation>
    </message>
    <message>
        <source>values as fed unless said · energy as ME in</source>
        <translation>valeurs brutes sauf mention · énergie EM en</translation>
    </message>
    <message>
        <source>reading the foods…</source>
        <translation>lecture des aliments…</translation>
    </message>
    <message>
        <source>importing…</source>
        <translation>importation…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::GroupChoice</name>
    <message>
        <source>Section</source>
        <translation>Secteur</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>Groupes</translation>
    </message>
    <message>
        <source>All sections</source>
        <translation>Tous les secteurs</translation>
    </message>
    <message>
        <source>%1 (no bowl yet)</source>
        <translation>%1 (pas encore de gamelle)</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::GroupPane</name>
    <message>
        <source>Of the group</source>
        <translation>Du groupe</translation>
    </message>
    <message>
        <source>animals and mass</source>
        <translation>animaux et poids</translation>
    </message>
    <message>
        <source>energy need</source>
        <translation>besoin en énergie</translation>
    </message>
    <message>
        <source>targets</source>
        <translation>cibles</translation>
    </message>
    <message>
        <source>what changed</source>
        <translation>ce qui a changé</translation>
    </message>
    <message>
        <source>Design a diet</source>
        <translation>Concevoir une ration</translation>
    </message>
    <message>
        <source>A bowl for this group that meets its targets</source>
        <translation>Une gamelle pour ce groupe qui atteint ses cibles</translation>
    </message>
    <message>
        <source>A diet is designed to targets: this group has no profile in force yet</source>
        <translation>Une ration se conçoit d’après des cibles&#xa0;: ce groupe n’a encore aucun profil en vigueur</translation>
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
        <translation>%1&#xa0;: %2 %3</translation>
    </message>
    <message>
        <source>this food</source>
        <translation>cet aliment</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::GuidePanel</name>
    <message>
        <source>Show me</source>
        <translation>Montrer</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Suivant</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Guide</translation>
    </message>
    <message>
        <source>What the guide leads through</source>
        <translation>Ce que le guide parcourt</translation>
    </message>
    <message>
        <source>Three people&apos;s work, on the invented sample</source>
        <translation>Le travail de trois personnes, sur l’exemple inventé</translation>
    </message>
    <message>
        <source>Open the invented sample</source>
        <translation>Ouvrir l’exemple inventé</translation>
    </message>
    <message>
        <source>The guide speaks of its animals and foods</source>
        <translation>Le guide parle de ses animaux et de ses aliments</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Goes to the room, and to the control that is named first</source>
        <translation>Va à la salle et au contrôle nommé en premier</translation>
    </message>
    <message>
        <source>The step before</source>
        <translation>L’étape précédente</translation>
    </message>
    <message>
        <source>The next step</source>
        <translation>L’étape suivante</translation>
    </message>
    <message>
        <source>Puts the guide away (Esc); Help brings it back</source>
        <translation>Range le guide (Échap)&#xa0;; Aide le ramène</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>étape %1 sur %2</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HealthDesk</name>
    <message>
        <source>write down what was seen</source>
        <translation>noter ce qui a été vu</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HealthRoom</name>
    <message>
        <source>What was seen</source>
        <translation>Ce qui a été vu</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Genre</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Review for the file…</source>
        <translation>Examen pour le dossier…</translation>
    </message>
    <message>
        <source>Invented sample</source>
        <translation>Exemple inventé</translation>
    </message>
    <message>
        <source>Calcium review</source>
        <translation>Examen du calcium</translation>
    </message>
    <message>
        <source>Look-back</source>
        <translation>Rétrospective</translation>
    </message>
    <message>
        <source>Review or look-back</source>
        <translation>Examen ou rétrospective</translation>
    </message>
    <message>
        <source>Groups, and under each its animals. Choose one: its signs, masses and bowls are set on one axis of days, and calcium is reviewed for it.</source>
        <translation>Les groupes, et sous chacun ses animaux. Choisissez-en un&#xa0;: ses signes, poids et gamelles sont mis sur un axe de jours, et le calcium est examiné pour lui.</translation>
    </message>
    <message>
        <source>What was written down of it, the newest first; ▲ is a sign, from which Enter looks back to the bowls before it. Each line keeps who wrote it.</source>
        <translation>Ce qui en a été noté, le plus récent d’abord&#xa0;; ▲ est un signe, d’où Entrée remonte aux gamelles qui l’ont précédé. Chaque ligne garde qui l’a écrite.</translation>
    </message>
    <message>
        <source>Writes what the tab in sight says as one page, to print or to keep: PDF, HTML or JSON.</source>
        <translation>Écrit ce que dit l’onglet en vue en une page, à imprimer ou à garder&#xa0;: PDF, HTML ou JSON.</translation>
    </message>
    <message>
        <source>The calcium review, or the look-back from a sign.</source>
        <translation>L’examen du calcium, ou la rétrospective d’un signe.</translation>
    </message>
    <message>
        <source>What was eaten day by day: the kitchen&apos;s weights, less what came back, times the composition of the foods; a mean day is set against the targets of the group. A value that nobody knows stays unknown and widens the range. The least dose is worked out from the supplement&apos;s own composition, and is held below the safe limit of the targets. Whether it is given, the vet decides.</source>
        <translation>Ce qui a été mangé jour par jour&#xa0;: les poids de la cuisine, moins ce qui est revenu, fois la composition des aliments&#xa0;; un jour moyen est mis face aux cibles du groupe. Une valeur que personne ne connaît reste inconnue et élargit la plage. La moindre dose est calculée de la composition du complément lui-même, et tenue sous la limite sûre des cibles. Le vétérinaire décide si elle est donnée.</translation>
    </message>
    <message>
        <source>Bowls in the hours before the sign against the same hours before days without it: how often the sign came with a food and without it, Fisher&apos;s exact test, the same corrected for the number of foods that were looked at, and the risk ratio with its 95 % interval. It shows what goes together, not what caused what.</source>
        <translation>Les gamelles des heures avant le signe face aux mêmes heures avant les jours sans lui&#xa0;: combien de fois le signe est venu avec un aliment et sans lui, le test exact de Fisher, le même corrigé du nombre d’aliments examinés, et le rapport de risques avec son intervalle à 95 %. Cela montre ce qui va ensemble, non ce qui a causé quoi.</translation>
    </message>
    <message>
        <source>Groups and animals</source>
        <translation>Groupes et animaux</translation>
    </message>
    <message>
        <source>Write down what was seen</source>
        <translation>Noter ce qui a été vu</translation>
    </message>
    <message>
        <source>How far back</source>
        <translation>Jusqu’où remonter</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>Nobody is shown</source>
        <translation>Personne n’est affiché</translation>
    </message>
    <message>
        <source>No collection is open</source>
        <translation>Aucune collection n’est ouverte.</translation>
    </message>
    <message>
        <source>Look-back for the file…</source>
        <translation>Rétrospective pour le dossier…</translation>
    </message>
    <message>
        <source>mg and µg per animal and day · body mass in kg</source>
        <translation>mg et µg par animal et jour · poids vif en kg</translation>
    </message>
    <message>
        <source>health</source>
        <translation>santé</translation>
    </message>
    <message>
        <source>How many days are shown and reviewed: those up to today, or, where nothing was written down for more than a week, those up to the last record.</source>
        <translation>Combien de jours sont affichés et examinés&#xa0;: ceux jusqu’à aujourd’hui ou, si rien n’a été noté depuis plus d’une semaine, ceux jusqu’au dernier relevé.</translation>
    </message>
    <message>
        <source>The last record is of %1: the days up to then are shown.</source>
        <translation>Le dernier relevé est du %1&#xa0;: les jours jusque-là sont affichés.</translation>
    </message>
    <message>
        <source>“%1” cannot be named beside the collection: put it into %2, under a name without : and \, and choose it there.</source>
        <translation>«&#xa0;%1&#xa0;» ne peut être nommé à côté de la collection&#xa0;: placez-le dans %2, sous un nom sans&#xa0;: ni \, et choisissez-le là.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HealthTimeline</name>
    <message>
        <source>Signs, blood, treatments, condition, body mass, Ca:P and diets over time</source>
        <translation>Signes, sang, traitements, état corporel, poids vif, Ca:P et rations au fil du temps</translation>
    </message>
    <message>
        <source>Drag over a stretch, or use the wheel or + and -, to look closer; 0 shows all</source>
        <translation>Faites glisser sur un tronçon, ou utilisez la molette ou + et -, pour voir de plus près&#xa0;; 0 montre tout</translation>
    </message>
    <message>
        <source>Ca:P</source>
        <translation>Ca:P</translation>
    </message>
    <message>
        <source>body mass, kg</source>
        <translation>poids vif, kg</translation>
    </message>
    <message>
        <source>Ca:P offered</source>
        <translation>Ca:P offert</translation>
    </message>
    <message>
        <source>Ca:P eaten</source>
        <translation>Ca:P mangé</translation>
    </message>
    <message>
        <source>mean of 7 days</source>
        <translation>moyenne de 7 jours</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>poids vif</translation>
    </message>
    <message>
        <source>signs</source>
        <translation>signes</translation>
    </message>
    <message>
        <source>blood, in the lab&apos;s range</source>
        <translation>sang, dans la plage du laboratoire</translation>
    </message>
    <message>
        <source>blood, outside it</source>
        <translation>sang, hors plage</translation>
    </message>
    <message>
        <source>blood, no range</source>
        <translation>sang, pas de plage</translation>
    </message>
    <message>
        <source>treatments</source>
        <translation>traitements</translation>
    </message>
    <message>
        <source>%1: condition %2 of %3 … %4 (%5)</source>
        <translation>%1&#xa0;: état %2 sur %3 … %4 (%5)</translation>
    </message>
    <message>
        <source>condition score, within its scale</source>
        <translation>état corporel, dans son échelle</translation>
    </message>
    <message>
        <source>a diet begins</source>
        <translation>une ration commence</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Help</name>
    <message>
        <source>About Tarebowl</source>
        <translation>À propos de Tarebowl</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HelpMenu</name>
    <message>
        <source>Help</source>
        <translation>Aide</translation>
    </message>
    <message>
        <source>A guide through the invented sample; F1 says what a control is</source>
        <translation>Un guide à travers l’exemple inventé&#xa0;; F1 dit ce qu’est un contrôle</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Guide</translation>
    </message>
    <message>
        <source>What is this?  (F1)</source>
        <translation>Qu’est-ce que c’est&#xa0;?  (F1)</translation>
    </message>
    <message>
        <source>About Tarebowl</source>
        <translation>À propos de Tarebowl</translation>
    </message>
    <message>
        <source>Tarebowl %1 – diets weighed to the gram for animals in human care.

It advises people who decide: a nutritionist approves a diet, and a vet decides about a patient. What nobody measured stays unknown and is never counted as nothing; every number names where it comes from (F1).

Free software under the GNU General Public License, version 3 or later, without any warranty.</source>
        <translation>Tarebowl %1 – des rations pesées au gramme pour les animaux sous soins humains.

Il conseille des personnes qui décident&#xa0;: un nutritionniste approuve une ration, et un vétérinaire décide d’un patient. Ce que personne n’a mesuré reste inconnu et n’est jamais compté pour rien&#xa0;; chaque nombre dit d’où il vient (F1).

Logiciel libre sous la licence publique générale GNU, version 3 ou ultérieure, sans aucune garantie.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HistoryCard</name>
    <message>
        <source>What changed when</source>
        <translation>Ce qui a changé et quand</translation>
    </message>
    <message>
        <source>Changes, the newest first</source>
        <translation>Modifications, les plus récentes d’abord</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Nothing was changed yet, or it is still being read.</source>
        <translation>Rien n’a encore été modifié, ou c’est en cours de lecture.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ImportDesk</name>
    <message>
        <source>The mapping could not be written to %1.</source>
        <translation>La correspondance n’a pas pu être écrite dans %1.</translation>
    </message>
    <message>
        <source>it is another table now than the one that was imported; import it again to see what it would do</source>
        <translation>c’est maintenant une autre table que celle importée&#xa0;; importez-la de nouveau pour voir ce qui se passerait</translation>
    </message>
    <message>
        <source>importing it again would change nothing</source>
        <translation>l’importer de nouveau ne changerait rien</translation>
    </message>
    <message>
        <source>No collection is open that it could go into.</source>
        <translation>Aucune collection n’est ouverte pour la recevoir.</translation>
    </message>
    <message>
        <source>Its numbers can be read both ways, with a decimal point and with a decimal comma. Say which it is.</source>
        <translation>Ses nombres peuvent se lire des deux façons, avec un point décimal et avec une virgule. Dites laquelle.</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Arrêté. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>import %1</source>
        <translation>importer %1</translation>
    </message>
    <message>
        <source>Stopped before it was read through. Nothing was written.</source>
        <translation>Arrêté avant la fin de la lecture. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>attendu&#xa0;: %1</translation>
    </message>
    <message>
        <source>The table cannot be read: %1.</source>
        <translation>La table ne peut être lue&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The table cannot be read so. %1: %2.</source>
        <translation>La table ne peut être lue ainsi. %1&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ImportPage</name>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importer</translation>
    </message>
    <message>
        <source>Another table…</source>
        <translation>Autre table…</translation>
    </message>
    <message>
        <source>Load mapping…</source>
        <translation>Charger une correspondance…</translation>
    </message>
    <message>
        <source>Save mapping…</source>
        <translation>Enregistrer la correspondance…</translation>
    </message>
    <message>
        <source>Back to the foods</source>
        <translation>Retour aux aliments</translation>
    </message>
    <message>
        <source>Read the table as a saved mapping says</source>
        <translation>Lire la table comme le dit une correspondance enregistrée</translation>
    </message>
    <message>
        <source>Keep how this table is read, for its next issue</source>
        <translation>Garder comment cette table est lue, pour sa prochaine édition</translation>
    </message>
    <message>
        <source>What each column becomes</source>
        <translation>Ce que devient chaque colonne</translation>
    </message>
    <message>
        <source>Double-click or type to change what a column becomes: a nutrient by its name or tagname, “SD of calcium”, or leave out. The preview follows at once.</source>
        <translation>Double-cliquez ou tapez pour changer ce que devient une colonne&#xa0;: un nutriment par son nom ou son code, «&#xa0;ET de calcium&#xa0;», ou omettre. L’aperçu suit aussitôt.</translation>
    </message>
    <message>
        <source>What the import will do</source>
        <translation>Ce que fera l’importation</translation>
    </message>
    <message>
        <source>How far the table is read</source>
        <translation>Où en est la lecture de la table</translation>
    </message>
    <message>
        <source>Import %1</source>
        <translation>Importer %1</translation>
    </message>
    <message>
        <source>To the foods</source>
        <translation>Aux aliments</translation>
    </message>
    <message>
        <source>reading the head of the table…</source>
        <translation>lecture de l’en-tête de la table…</translation>
    </message>
    <message>
        <source>looking at each line; nothing is written…</source>
        <translation>examen de chaque ligne&#xa0;; rien n’est écrit…</translation>
    </message>
    <message>
        <source>importing; it is kept as a whole or not at all…</source>
        <translation>importation&#xa0;; gardée en entier ou pas du tout…</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Rien n’a été écrit.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ImportPreview</name>
    <message>
        <source>1 line</source>
        <translation>1 ligne</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 lignes</translation>
    </message>
    <message>
        <source>What the import will do, line by line</source>
        <translation>Ce que fera l’importation, ligne par ligne</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Lignes</translation>
    </message>
    <message>
        <source>all</source>
        <translation>toutes</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nouvelles</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>modifiées</translation>
    </message>
    <message>
        <source>unchanged</source>
        <translation>inchangées</translation>
    </message>
    <message>
        <source>noted</source>
        <translation>notées</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>écartées</translation>
    </message>
    <message>
        <source>problems</source>
        <translation>problèmes</translation>
    </message>
    <message>
        <source>%1 shown</source>
        <translation>%1 affichées</translation>
    </message>
    <message>
        <source> · 1 problem</source>
        <translation> · 1 problème</translation>
    </message>
    <message>
        <source> · %1 problems</source>
        <translation> · %1 problèmes</translation>
    </message>
    <message>
        <source> · 1 left out</source>
        <translation> · 1 écartée</translation>
    </message>
    <message>
        <source> · %1 left out</source>
        <translation> · %1 écartées</translation>
    </message>
    <message>
        <source> · 1 kept with a note</source>
        <translation> · 1 gardée avec une note</translation>
    </message>
    <message>
        <source> · %1 kept with a note</source>
        <translation> · %1 gardées avec une note</translation>
    </message>
    <message>
        <source> · %1 further lines are counted and not listed</source>
        <translation> · %1 autres lignes sont comptées et non listées</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ImportSettings</name>
    <message>
        <source>Layout</source>
        <translation>Disposition</translation>
    </message>
    <message>
        <source>a row a food</source>
        <translation>une ligne par aliment</translation>
    </message>
    <message>
        <source>a row a value</source>
        <translation>une ligne par valeur</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Signe décimal</translation>
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
        <translation>0 signifie&#xa0;: non mesuré</translation>
    </message>
    <message>
        <source>units on the line after</source>
        <translation>unités à la ligne suivante</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>virgule</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>point-virgule</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulation</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>barre |</translation>
    </message>
    <message>
        <source>caret ^</source>
        <translation>accent ^</translation>
    </message>
    <message>
        <source>as its bytes say</source>
        <translation>selon ses octets</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>By this name and a food&apos;s code the food is found again when the table comes anew</source>
        <translation>Par ce nom et le code d’un aliment, l’aliment est retrouvé quand la table revient</translation>
    </message>
    <message>
        <source>Grams (for energy: kcal) that a value is per, where the column does not say</source>
        <translation>Grammes (pour l’énergie&#xa0;: kcal) auxquels se rapporte une valeur, si la colonne ne le dit pas</translation>
    </message>
    <message>
        <source>One line holds all values of a food</source>
        <translation>Une ligne contient toutes les valeurs d’un aliment</translation>
    </message>
    <message>
        <source>One line holds one value of a food</source>
        <translation>Une ligne contient une valeur d’un aliment</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>Values per</source>
        <translation>Valeurs pour</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>Basis where no column says it</source>
        <translation>Base si aucune colonne ne la dit</translation>
    </message>
    <message>
        <source>Numbers as</source>
        <translation>Nombres comme</translation>
    </message>
    <message>
        <source>Header on line</source>
        <translation>En-tête à la ligne</translation>
    </message>
    <message>
        <source>Cells parted by</source>
        <translation>Cellules séparées par</translation>
    </message>
    <message>
        <source>Letters as</source>
        <translation>Lettres comme</translation>
    </message>
    <message>
        <source>“%1” is nothing that values can be per: a number above 0.</source>
        <translation>«&#xa0;%1&#xa0;» n’est rien à quoi rapporter des valeurs&#xa0;: un nombre supérieur à 0.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IndividualForm</name>
    <message>
        <source>adult, as long as nothing else is said</source>
        <translation>adulte, tant que rien d’autre n’est dit</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 dès le %2</translation>
    </message>
    <message>
        <source>an estimate</source>
        <translation>une estimation</translation>
    </message>
    <message>
        <source>by death</source>
        <translation>par décès</translation>
    </message>
    <message>
        <source>The animal</source>
        <translation>L’animal</translation>
    </message>
    <message>
        <source>Name or number</source>
        <translation>Nom ou numéro</translation>
    </message>
    <message>
        <source>of the house</source>
        <translation>de la maison</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Sexe</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Né</translation>
    </message>
    <message>
        <source>2026-05-17</source>
        <translation>2026-05-17</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>Arrivé</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Parti</translation>
    </message>
    <message>
        <source>the first day on which it is not there</source>
        <translation>le premier jour où il n’est pas là</translation>
    </message>
    <message>
        <source>Life stages so far</source>
        <translation>Stades de vie jusqu’ici</translation>
    </message>
    <message>
        <source>Life stages</source>
        <translation>Stades de vie</translation>
    </message>
    <message>
        <source>Life stage from today on</source>
        <translation>Stade de vie dès aujourd’hui</translation>
    </message>
    <message>
        <source>From today</source>
        <translation>Dès aujourd’hui</translation>
    </message>
    <message>
        <source>The animal is in this stage from today on</source>
        <translation>L’animal est à ce stade dès aujourd’hui</translation>
    </message>
    <message>
        <source>Groups it was in</source>
        <translation>Groupes dont il a fait partie</translation>
    </message>
    <message>
        <source>In groups</source>
        <translation>Dans les groupes</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>in none</source>
        <translation>dans aucun</translation>
    </message>
    <message>
        <source>%1: “%2” is no day; write it as 2026-05-17.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’est pas un jour&#xa0;; écrivez-le comme 2026-05-17.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IngredientModel</name>
    <message>
        <source>Locked foods keep their grams; the others give way</source>
        <translation>Les aliments verrouillés gardent leurs grammes&#xa0;; les autres cèdent</translation>
    </message>
    <message>
        <source>Share of the eaten dry matter (DM)</source>
        <translation>Part de la matière sèche (MS) mangée</translation>
    </message>
    <message>
        <source>food and form</source>
        <translation>aliment et forme</translation>
    </message>
    <message>
        <source>group a day</source>
        <translation>groupe par jour</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>par jour</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>max</source>
        <translation>max</translation>
    </message>
    <message>
        <source>share of DM</source>
        <translation>part de MS</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>coût</translation>
    </message>
    <message>
        <source>locked</source>
        <translation>verrouillé</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>group: %1</source>
        <translation>groupe&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 of it is eaten</source>
        <translation>%1 en est mangé</translation>
    </message>
    <message>
        <source>invented product</source>
        <translation>produit inventé</translation>
    </message>
    <message>
        <source>%1, unweighed: %2 to %3 g</source>
        <translation>%1, sans pesée&#xa0;: %2 à %3 g</translation>
    </message>
    <message>
        <source>given as %1</source>
        <translation>donné comme %1</translation>
    </message>
    <message>
        <source>%1: %2 g %3, in steps of %4 g</source>
        <translation>%1&#xa0;: %2 g %3, par pas de %4 g</translation>
    </message>
    <message>
        <source>for the group a day</source>
        <translation>pour le groupe par jour</translation>
    </message>
    <message>
        <source>per animal a day</source>
        <translation>par animal et par jour</translation>
    </message>
    <message>
        <source>%1 is locked: it keeps its grams</source>
        <translation>%1 est verrouillé&#xa0;: il garde ses grammes</translation>
    </message>
    <message>
        <source>%1 is free: it gives way when another food is held</source>
        <translation>%1 est libre&#xa0;: il cède quand un autre aliment est tenu</translation>
    </message>
    <message>
        <source>%1: at least %2 g</source>
        <translation>%1&#xa0;: au moins %2 g</translation>
    </message>
    <message>
        <source>%1: at most %2 g</source>
        <translation>%1&#xa0;: au plus %2 g</translation>
    </message>
    <message>
        <source>%1: no maximum</source>
        <translation>%1&#xa0;: pas de maximum</translation>
    </message>
    <message>
        <source>%1: %2 of the dry matter</source>
        <translation>%1&#xa0;: %2 de la matière sèche</translation>
    </message>
    <message>
        <source>%1: its water is unknown</source>
        <translation>%1&#xa0;: son eau est inconnue</translation>
    </message>
    <message>
        <source>%1: %2 a day</source>
        <translation>%1&#xa0;: %2 par jour</translation>
    </message>
    <message>
        <source>%1: no price</source>
        <translation>%1&#xa0;: pas de prix</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IngredientTable</name>
    <message>
        <source>Foods of the diet</source>
        <translation>Aliments de la ration</translation>
    </message>
    <message>
        <source>Remove from the diet</source>
        <translation>Retirer de la ration</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IntakeRoom</name>
    <message>
        <source>How far back</source>
        <translation>Jusqu’où remonter</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Semaine</translation>
    </message>
    <message>
        <source>60 days</source>
        <translation>60 jours</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Année</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tout</translation>
    </message>
    <message>
        <source>Offered or eaten</source>
        <translation>Offert ou mangé</translation>
    </message>
    <message>
        <source>Offered</source>
        <translation>Offert</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Les deux</translation>
    </message>
    <message>
        <source>Eaten</source>
        <translation>Mangé</translation>
    </message>
    <message>
        <source>What is followed, as eaten against its zone</source>
        <translation>Ce qui est suivi, tel que mangé, face à sa zone</translation>
    </message>
    <message>
        <source>Calcium to phosphorus, offered against eaten</source>
        <translation>Calcium sur phosphore, offert contre mangé</translation>
    </message>
    <message>
        <source>Foods, offered and eaten</source>
        <translation>Aliments, offerts et mangés</translation>
    </message>
    <message>
        <source>Invented sample</source>
        <translation>Exemple inventé</translation>
    </message>
    <message>
        <source>Over time</source>
        <translation>Au fil du temps</translation>
    </message>
    <message>
        <source>Yesterday&apos;s bowls</source>
        <translation>Gamelles d’hier</translation>
    </message>
    <message>
        <source>Study</source>
        <translation>Étude</translation>
    </message>
    <message>
        <source>Over time, yesterday&apos;s bowls, or a study</source>
        <translation>Au fil du temps, gamelles d’hier, ou une étude</translation>
    </message>
    <message>
        <source>What was really eaten. Amounts come from the weights that the kitchen wrote down, nutrients from the foods&apos; composition; what was not weighed stays unknown.</source>
        <translation>Ce qui a vraiment été mangé. Les quantités viennent des poids notés par la cuisine, les nutriments de la composition des aliments&#xa0;; ce qui n’a pas été pesé reste inconnu.</translation>
    </message>
    <message>
        <source>How many days are in sight, up to the last one with a bowl.</source>
        <translation>Combien de jours sont en vue, jusqu’au dernier avec une gamelle.</translation>
    </message>
    <message>
        <source>Offered is what the kitchen weighed in; eaten is that less what was left and lost, corrected by control pans.</source>
        <translation>Offert est ce que la cuisine a pesé&#xa0;; mangé est cela moins le restant et le perdu, corrigé par les gamelles témoins.</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copier</translation>
    </message>
    <message>
        <source>The numbers that are shown, for a spreadsheet</source>
        <translation>Les nombres affichés, pour un tableur</translation>
    </message>
    <message>
        <source>The days in sight as a file</source>
        <translation>Les jours en vue comme fichier</translation>
    </message>
    <message>
        <source>Study…</source>
        <translation>Étude…</translation>
    </message>
    <message>
        <source>The days in sight as the report of an intake study: PDF, XLSX or HTML</source>
        <translation>Les jours en vue comme rapport d’une étude d’ingestion&#xa0;: PDF, XLSX ou HTML</translation>
    </message>
    <message>
        <source>Grams a day of each food, all animals together: full what was eaten, hatched what was left</source>
        <translation>Grammes par jour de chaque aliment, tous animaux&#xa0;: plein mangé, hachuré resté</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Gamelle</translation>
    </message>
    <message>
        <source>Against its zone</source>
        <translation>Face à sa zone</translation>
    </message>
    <message>
        <source>Ca : P</source>
        <translation>Ca&#xa0;: P</translation>
    </message>
    <message>
        <source>Picked first</source>
        <translation>Pris d’abord</translation>
    </message>
    <message>
        <source>Foods</source>
        <translation>Aliments</translation>
    </message>
    <message>
        <source>What is shown below</source>
        <translation>Ce qui est affiché en dessous</translation>
    </message>
    <message>
        <source>The same days once more: what is followed against its zone, Ca:P, what is picked first, and the foods in numbers.</source>
        <translation>Les mêmes jours encore&#xa0;: ce qui est suivi face à sa zone, Ca:P, ce qui est pris d’abord, et les aliments en nombres.</translation>
    </message>
    <message>
        <source>No group has a bowl yet</source>
        <translation>Aucun groupe n’a encore de gamelle</translation>
    </message>
    <message>
        <source>No collection is open</source>
        <translation>Aucune collection n’est ouverte</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>%1%2: mean day per animal; shaded its zone, hatched what is missing, ▼ a drop</source>
        <translation>%1%2&#xa0;: jour moyen par animal&#xa0;; ombrée sa zone, hachuré ce qui manque, ▼ une baisse</translation>
    </message>
    <message>
        <source>%1: Manly&apos;s alpha with its 95 % interval; dashed: nothing is preferred</source>
        <translation>%1&#xa0;: l’alpha de Manly avec son intervalle à 95 %&#xa0;; pointillé&#xa0;: rien n’est préféré</translation>
    </message>
    <message>
        <source>Grams a day of each food</source>
        <translation>Grammes par jour de chaque aliment</translation>
    </message>
    <message>
        <source>A study holds each of its bowls: look at a year or less, and try again.</source>
        <translation>Une étude contient chacune de ses gamelles&#xa0;: regardez un an ou moins, et réessayez.</translation>
    </message>
    <message>
        <source>grams as fed a day · nutrients per animal, as offered and as eaten</source>
        <translation>grammes bruts par jour · nutriments par animal, tels qu’offerts et mangés</translation>
    </message>
    <message>
        <source>intake</source>
        <translation>ingestion</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IntakeSide</name>
    <message>
        <source>Noticed, and what it means for one animal</source>
        <translation>Remarqué, et ce que cela veut dire pour un animal</translation>
    </message>
    <message>
        <source>Noticed</source>
        <translation>Remarqué</translation>
    </message>
    <message>
        <source>How much is known</source>
        <translation>Ce qu’on en sait</translation>
    </message>
    <message>
        <source>Per animal</source>
        <translation>Par animal</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::KitchenRoom</name>
    <message>
        <source>What is weighed</source>
        <translation>Ce qui est pesé</translation>
    </message>
    <message>
        <source>Weigh in</source>
        <translation>Pesée</translation>
    </message>
    <message>
        <source>Leftovers</source>
        <translation>Refus</translation>
    </message>
    <message>
        <source>Control pans  (P)</source>
        <translation>Gamelles témoins  (P)</translation>
    </message>
    <message>
        <source>Put out now, or come back</source>
        <translation>À poser maintenant, ou revenues</translation>
    </message>
    <message>
        <source>Sheet…</source>
        <translation>Fiche…</translation>
    </message>
    <message>
        <source>Labels…</source>
        <translation>Étiquettes…</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>± Rule…</source>
        <translation>± Règle…</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>The sheet of this section and day, as a page to print or to keep</source>
        <translation>La fiche de ce secteur et de ce jour, comme page à imprimer ou à garder</translation>
    </message>
    <message>
        <source>A label for each bowl, to print</source>
        <translation>Une étiquette par gamelle, à imprimer</translation>
    </message>
    <message>
        <source>How far a weight may lie from the plan</source>
        <translation>De combien un poids peut s’écarter du plan</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source> labels</source>
        <translation> étiquettes</translation>
    </message>
    <message>
        <source>%1 is written</source>
        <translation>%1 est écrit</translation>
    </message>
    <message>
        <source>g as fed, of the whole bowl</source>
        <translation>g bruts, de la gamelle entière</translation>
    </message>
    <message>
        <source>reading the sheet…</source>
        <translation>lecture de la fiche…</translation>
    </message>
    <message>
        <source>weights stand without a name until you say who you are, at the right</source>
        <translation>les poids restent sans nom tant que vous ne dites pas, à droite, qui vous êtes</translation>
    </message>
    <message>
        <source>This desk&apos;s copy of the collection holds the days from %1 to %2: another day waits for the server.</source>
        <translation>La copie de la collection sur ce poste contient les jours du %1 au %2 : un autre jour attend le serveur.</translation>
    </message>
    <message>
        <source>Swaps, control pans, lots and the rule of weighing wait for the server. Weights and leftovers go on: they are kept on this desk and sent when the server is back.</source>
        <translation>Les échanges, les bacs témoins, les lots et la règle de pesée attendent le serveur. Les poids et les restes continuent : ils sont gardés sur ce poste et envoyés quand le serveur revient.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::KitchenSwap</name>
    <message>
        <source>This bowl is fed by no diet of the collection: ask the nutritionist.</source>
        <translation>Cette gamelle ne vient d’aucune ration de la collection&#xa0;: demandez au nutritionniste.</translation>
    </message>
    <message>
        <source>This food is not of the diet, it came by a swap: ask the nutritionist.</source>
        <translation>Cet aliment n’est pas de la ration, il vient d’un remplacement&#xa0;: demandez au nutritionniste.</translation>
    </message>
    <message>
        <source>It is weighed in already: correct its weight first.</source>
        <translation>Il est déjà pesé&#xa0;: corrigez d’abord son poids.</translation>
    </message>
    <message>
        <source>Reading what is on hand…</source>
        <translation>Lecture de ce qui est disponible…</translation>
    </message>
    <message>
        <source>not available</source>
        <translation>non disponible</translation>
    </message>
    <message>
        <source>instead of %1: %2 %3</source>
        <translation>à la place de %1&#xa0;: %2 de %3</translation>
    </message>
    <message>
        <source>%1 – waits for the nutritionist, see Today</source>
        <translation>%1 – attend le nutritionniste, voir Aujourd’hui</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::LadderModel</name>
    <message>
        <source>holds with a chance of %1</source>
        <translation>tient avec une probabilité de %1</translation>
    </message>
    <message>
        <source>holds with a chance of at least %1</source>
        <translation>tient avec une probabilité d’au moins %1</translation>
    </message>
    <message>
        <source>holds with a chance of at most %1</source>
        <translation>tient avec une probabilité d’au plus %1</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>max</source>
        <translation>max</translation>
    </message>
    <message>
        <source>%1, in this bowl %2 to %3 %4</source>
        <translation>%1, dans cette gamelle %2 à %3 %4</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>cible %1</translation>
    </message>
    <message>
        <source>± %1 (1 SD)</source>
        <translation>± %1 (1 ET)</translation>
    </message>
    <message>
        <source>known for %1 of the dry matter</source>
        <translation>connu pour %1 de la matière sèche</translation>
    </message>
    <message>
        <source>hard rule</source>
        <translation>règle stricte</translation>
    </message>
    <message>
        <source>target</source>
        <translation>cible</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>zone</translation>
    </message>
    <message>
        <source>state</source>
        <translation>état</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::LeftoverPane</name>
    <message>
        <source>Somebody wrote this down before: both entries are kept, and the first one counts until it is corrected.</source>
        <translation>Quelqu’un l’a déjà noté&#xa0;: les deux entrées sont gardées, et la première compte jusqu’à correction.</translation>
    </message>
    <message>
        <source>What was left</source>
        <translation>Ce qui est resté</translation>
    </message>
    <message>
        <source>g left</source>
        <translation>g restants</translation>
    </message>
    <message>
        <source>E  of all together, by eye</source>
        <translation>E  du mélange, à l’œil</translation>
    </message>
    <message>
        <source>A  all eaten</source>
        <translation>A  tout mangé</translation>
    </message>
    <message>
        <source>N  not weighed</source>
        <translation>N  non pesé</translation>
    </message>
    <message>
        <source>M  all together</source>
        <translation>M  tout ensemble</translation>
    </message>
    <message>
        <source>P  control pans</source>
        <translation>P  gamelles témoins</translation>
    </message>
    <message>
        <source>S  spilled</source>
        <translation>S  renversé</translation>
    </message>
    <message>
        <source>T  stolen</source>
        <translation>T  volé</translation>
    </message>
    <message>
        <source>type what is left + what was lost, such as 3 + 4</source>
        <translation>tapez ce qui reste + ce qui est perdu, comme 3 + 4</translation>
    </message>
    <message>
        <source>No bowl on this sheet.</source>
        <translation>Aucune gamelle sur cette fiche.</translation>
    </message>
    <message>
        <source>This bowl was never put on a sheet: nothing can have been left.</source>
        <translation>Cette gamelle n’a jamais été sur une fiche&#xa0;: rien n’a pu rester.</translation>
    </message>
    <message>
        <source>%1 g went in</source>
        <translation>%1 g y ont été mis</translation>
    </message>
    <message>
        <source>%1 were planned, and nobody weighed it in</source>
        <translation>%1 étaient prévus, et personne ne l’a pesé</translation>
    </message>
    <message>
        <source> · of all together %1 g were left</source>
        <translation> · du mélange il est resté %1 g</translation>
    </message>
    <message>
        <source>“%1” is no weight: type grams, such as 20.5; tare the empty bowl where it is below nothing.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un poids&#xa0;: tapez des grammes, comme 20,5&#xa0;; tarez la gamelle vide s’il est sous zéro.</translation>
    </message>
    <message>
        <source>%1 is written already. Why is it put right? Both are kept.</source>
        <translation>%1 est déjà noté. Pourquoi le corriger&#xa0;? Les deux sont gardés.</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <source>Type what is left + what was lost in g, such as 3 + 4, or nothing.</source>
        <translation>Tapez ce qui reste + ce qui est perdu en g, comme 3 + 4, ou rien.</translation>
    </message>
    <message>
        <source>Type the grams of all foods together, then M.</source>
        <translation>Tapez les grammes de tous les aliments ensemble, puis M.</translation>
    </message>
    <message>
        <source>%1 g of all together is written already. Why is it put right? Both are kept.</source>
        <translation>%1 g du mélange sont déjà notés. Pourquoi le corriger&#xa0;? Les deux sont gardés.</translation>
    </message>
    <message>
        <source>Type how many grams of what is left together are this food, by eye, then E.</source>
        <translation>Tapez combien de grammes du mélange sont cet aliment, à l’œil, puis E.</translation>
    </message>
    <message>
        <source>Reading the sheet…</source>
        <translation>Lecture de la fiche…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::LinePane</name>
    <message>
        <source>how the kitchen prepares it</source>
        <translation>comment la cuisine le prépare</translation>
    </message>
    <message>
        <source>Preparation of the food</source>
        <translation>Préparation de l’aliment</translation>
    </message>
    <message>
        <source>What the food is given for</source>
        <translation>À quoi sert l’aliment</translation>
    </message>
    <message>
        <source>All that is offered counts, whatever it is given for</source>
        <translation>Tout ce qui est offert compte, quel qu’en soit le but</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Takes the food out of the diet (Delete)</source>
        <translation>Retire l’aliment de la ration (Suppr)</translation>
    </message>
    <message>
        <source>Explore</source>
        <translation>Explorer</translation>
    </message>
    <message>
        <source>Moves the food&apos;s maximum over a range and shows what has to give (Ctrl+E)</source>
        <translation>Déplace le maximum de l’aliment sur une plage et montre ce qui doit céder (Ctrl+E)</translation>
    </message>
    <message>
        <source>Cautions on the food</source>
        <translation>Mises en garde sur l’aliment</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>g a day, unweighed</source>
        <translation>g par jour, sans pesée</translation>
    </message>
    <message>
        <source>At least so many grams a day of what is given unweighed</source>
        <translation>Au moins tant de grammes par jour de ce qui est donné sans pesée</translation>
    </message>
    <message>
        <source>At most so many grams a day of what is given unweighed</source>
        <translation>Au plus tant de grammes par jour de ce qui est donné sans pesée</translation>
    </message>
    <message>
        <source>▲ Not given to this animal: %1</source>
        <translation>▲ Pas pour cet animal&#xa0;: %1</translation>
    </message>
    <message>
        <source>◐ Caution: %1</source>
        <translation>◐ Mise en garde&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1, unweighed</source>
        <translation>%1, sans pesée</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::LookBackPane</name>
    <message>
        <source>Foods and the sign</source>
        <translation>Aliments et signe</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Aliment</translation>
    </message>
    <message>
        <source>Sign, with it</source>
        <translation>Signe, avec</translation>
    </message>
    <message>
        <source>without</source>
        <translation>sans</translation>
    </message>
    <message>
        <source>Fisher</source>
        <translation>Fisher</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corrigé</translation>
    </message>
    <message>
        <source>Risk ratio (95 %)</source>
        <translation>Rapport de risques (95 %)</translation>
    </message>
    <message>
        <source>Hours before the sign</source>
        <translation>Heures avant le signe</translation>
    </message>
    <message>
        <source> h before</source>
        <translation> h avant</translation>
    </message>
    <message>
        <source>Bowls given in the</source>
        <translation>Gamelles données dans les</translation>
    </message>
    <message>
        <source>Look-back</source>
        <translation>Rétrospective</translation>
    </message>
    <message>
        <source>Choose a sign (▲) at the left: what was eaten before it is compared with days without it.</source>
        <translation>Choisissez un signe (▲) à gauche&#xa0;: ce qui a été mangé avant est comparé aux jours sans lui.</translation>
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
        <translation>Ce que devient la colonne</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>as the table</source>
        <translation>comme la table</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MappingModel</name>
    <message>
        <source>title not understood</source>
        <translation>titre non compris</translation>
    </message>
    <message>
        <source>a second one of this nutrient</source>
        <translation>une seconde de ce nutriment</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>supposé</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>colonne %1</translation>
    </message>
    <message>
        <source>(nothing)</source>
        <translation>(rien)</translation>
    </message>
    <message>
        <source>as its value</source>
        <translation>comme sa valeur</translation>
    </message>
    <message>
        <source>as the table</source>
        <translation>comme la table</translation>
    </message>
    <message>
        <source>kept where its unit is understood</source>
        <translation>gardé si son unité est comprise</translation>
    </message>
    <message>
        <source>its unit is none known here</source>
        <translation>son unité n’est pas connue ici</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>a nutrient&apos;s name in the table</source>
        <translation>le nom d’un nutriment dans la table</translation>
    </message>
    <message>
        <source>in 1 line</source>
        <translation>dans 1 ligne</translation>
    </message>
    <message>
        <source>in %1 lines</source>
        <translation>dans %1 lignes</translation>
    </message>
    <message>
        <source>its own name</source>
        <translation>son propre nom</translation>
    </message>
    <message>
        <source>“%1” is nothing that a column can become: choose from the list, or type a nutrient.</source>
        <translation>«&#xa0;%1&#xa0;» n’est rien qu’une colonne puisse devenir&#xa0;: choisissez dans la liste, ou tapez un nutriment.</translation>
    </message>
    <message>
        <source>“%1” is no unit: write it as mg/100 g, g/kg, % or kcal.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une unité&#xa0;: écrivez mg/100 g, g/kg, % ou kcal.</translation>
    </message>
    <message>
        <source>“%1” is no nutrient: type its name or its tagname.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nutriment&#xa0;: tapez son nom ou son code.</translation>
    </message>
    <message>
        <source>left out by hand</source>
        <translation>écarté à la main</translation>
    </message>
    <message>
        <source>column</source>
        <translation>colonne</translation>
    </message>
    <message>
        <source>what stands in it</source>
        <translation>ce qu’elle contient</translation>
    </message>
    <message>
        <source>becomes</source>
        <translation>devient</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
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
        <translation>Poids aujourd’hui&#xa0;:&#xa0;? Rien n’a encore été pesé.</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 pesée</translation>
    </message>
    <message>
        <source>%1 readings</source>
        <translation>%1 pesées</translation>
    </message>
    <message>
        <source>mean of the group</source>
        <translation>moyenne du groupe</translation>
    </message>
    <message>
        <source>1 animal</source>
        <translation>1 animal</translation>
    </message>
    <message>
        <source>mean of %1 animals</source>
        <translation>moyenne de %1 animaux</translation>
    </message>
    <message>
        <source>Mass that counts today: %1 (%2, %3, newest %4)</source>
        <translation>Poids qui compte aujourd’hui&#xa0;: %1 (%2, %3, le plus récent %4)</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Afficher</translation>
    </message>
    <message>
        <source>each animal</source>
        <translation>chaque animal</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>moyenne</translation>
    </message>
    <message>
        <source>The chart begins with the first mass.</source>
        <translation>Le graphique commence avec le premier poids.</translation>
    </message>
    <message>
        <source>Body mass and condition</source>
        <translation>Poids vif et état corporel</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MassChart</name>
    <message>
        <source>Body mass and condition over time</source>
        <translation>Poids vif et état corporel au fil du temps</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>douteux</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>écarté</translation>
    </message>
    <message>
        <source>body mass, %1</source>
        <translation>poids vif, %1</translation>
    </message>
    <message>
        <source>condition, ideal %1</source>
        <translation>état corporel, idéal %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MassEntry</name>
    <message>
        <source>Day of the weighing</source>
        <translation>Jour de la pesée</translation>
    </message>
    <message>
        <source>2026-11-25</source>
        <translation>2026-11-25</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Poids vif</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>poids</translation>
    </message>
    <message>
        <source>Body condition score</source>
        <translation>Note d’état corporel</translation>
    </message>
    <message>
        <source>score</source>
        <translation>note</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Noter</translation>
    </message>
    <message>
        <source>Write down a mass or a condition score</source>
        <translation>Noter un poids ou une note d’état</translation>
    </message>
    <message>
        <source>Who was weighed</source>
        <translation>Qui a été pesé</translation>
    </message>
    <message>
        <source>Unit of the mass</source>
        <translation>Unité du poids</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>How it was weighed</source>
        <translation>Comment on a pesé</translation>
    </message>
    <message>
        <source>Scale of the condition score</source>
        <translation>Échelle de la note d’état</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>mean of the group</source>
        <translation>moyenne du groupe</translation>
    </message>
    <message>
        <source>“%1” is no day; write it as 2026-11-25.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un jour&#xa0;; écrivez-le comme 2026-11-25.</translation>
    </message>
    <message>
        <source>“%1” is no mass; a mass is a number above 0.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un poids&#xa0;; un poids est un nombre supérieur à 0.</translation>
    </message>
    <message>
        <source>“%1” is no score, or the day is none.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une note, ou le jour n’en est pas un.</translation>
    </message>
    <message>
        <source>The scale %1 has no score of %2.</source>
        <translation>L’échelle %1 n’a pas de note %2.</translation>
    </message>
    <message>
        <source>Type a mass or a score first.</source>
        <translation>Tapez d’abord un poids ou une note.</translation>
    </message>
    <message>
        <source>It is %1: write it down</source>
        <translation>C’est %1&#xa0;: le noter</translation>
    </message>
    <message>
        <source>It was %1</source>
        <translation>C’était %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MembersCard</name>
    <message>
        <source>Animals of the group</source>
        <translation>Animaux du groupe</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Faire entrer</translation>
    </message>
    <message>
        <source>Leaves today</source>
        <translation>Part aujourd’hui</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Ouvrir</translation>
    </message>
    <message>
        <source>The group and its animals</source>
        <translation>Le groupe et ses animaux</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Secteur</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Animaux</translation>
    </message>
    <message>
        <source>How many share the bowl, for a colony whose animals are not known one by one</source>
        <translation>Combien partagent la gamelle, pour une colonie dont les animaux ne sont pas connus un par un</translation>
    </message>
    <message>
        <source>Animals of the species that are not in this group</source>
        <translation>Animaux de l’espèce qui ne sont pas dans ce groupe</translation>
    </message>
    <message>
        <source>This animal is in the group from today on</source>
        <translation>Cet animal est dans le groupe dès aujourd’hui</translation>
    </message>
    <message>
        <source>Today is the first day on which the chosen animal is not in the group any more</source>
        <translation>Aujourd’hui est le premier jour où l’animal choisi n’est plus dans le groupe</translation>
    </message>
    <message>
        <source>Go to the chosen animal&apos;s own page</source>
        <translation>Aller à la page de l’animal choisi</translation>
    </message>
    <message>
        <source>New animal</source>
        <translation>Nouvel animal</translation>
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
        <translation>sexe</translation>
    </message>
    <message>
        <source>age</source>
        <translation>âge</translation>
    </message>
    <message>
        <source>life stage</source>
        <translation>stade de vie</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>poids</translation>
    </message>
    <message>
        <source>in the group</source>
        <translation>dans le groupe</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ModelPicker</name>
    <message>
        <source>Candidates side by side</source>
        <translation>Candidats côte à côte</translation>
    </message>
    <message>
        <source>Published profiles of model species</source>
        <translation>Profils publiés d’espèces modèles</translation>
    </message>
    <message>
        <source>%1 targets · %2</source>
        <translation>%1 cibles · %2</translation>
    </message>
    <message>
        <source>Basis of the comparison</source>
        <translation>Base de la comparaison</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>par %1</translation>
    </message>
    <message>
        <source>The model that stands in</source>
        <translation>Le modèle retenu</translation>
    </message>
    <message>
        <source>Stands in:</source>
        <translation>Modèle retenu&#xa0;:</translation>
    </message>
    <message>
        <source>Tick one or more published profiles; those ticked stand side by side.</source>
        <translation>Cochez un ou plusieurs profils publiés&#xa0;; ceux qui sont cochés sont côte à côte.</translation>
    </message>
    <message>
        <source>The first %1 are shown.</source>
        <translation>Les %1 premiers sont affichés.</translation>
    </message>
    <message>
        <source>◆ differs from the first candidate · ○ from memory · ? not stated, or not on this basis</source>
        <translation>◆ diffère du premier candidat · ○ de mémoire ·&#xa0;? non indiqué, ou pas sur cette base</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ModelStart</name>
    <message>
        <source>Start from this model</source>
        <translation>Commencer par ce modèle</translation>
    </message>
    <message>
        <source>Why the model stands in</source>
        <translation>Pourquoi le modèle convient</translation>
    </message>
    <message>
        <source>Why does this one stand in? A sentence, which is kept with every target.</source>
        <translation>Pourquoi celui-ci convient-il&#xa0;? Une phrase, gardée avec chaque cible.</translation>
    </message>
    <message>
        <source>A profile of the group&apos;s own, which takes over what is published for the model and is in force from today; limits and house rules are set on top of it</source>
        <translation>Un profil propre au groupe, qui reprend ce qui est publié pour le modèle et est en vigueur dès aujourd’hui&#xa0;; limites et règles de la maison s’y ajoutent</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::NewSpeciesPage</name>
    <message>
        <source>Take it into the collection</source>
        <translation>L’accueillir dans la collection</translation>
    </message>
    <message>
        <source>… and design a diet</source>
        <translation>… et concevoir une ration</translation>
    </message>
    <message>
        <source>1 · The species</source>
        <translation>1 · L’espèce</translation>
    </message>
    <message>
        <source>2 · A model species: whose published targets stand in</source>
        <translation>2 · Une espèce modèle&#xa0;: dont les cibles publiées sont reprises</translation>
    </message>
    <message>
        <source>3 · Limits and house rules on top of it</source>
        <translation>3 · Limites et règles de la maison en plus</translation>
    </message>
    <message>
        <source>4 · The group, its mass and its energy need</source>
        <translation>4 · Le groupe, son poids et son besoin en énergie</translation>
    </message>
    <message>
        <source>A species new to the collection</source>
        <translation>Une espèce nouvelle dans la collection</translation>
    </message>
    <message>
        <source>Name of the species</source>
        <translation>Nom de l’espèce</translation>
    </message>
    <message>
        <source>as the house calls it</source>
        <translation>comme la maison l’appelle</translation>
    </message>
    <message>
        <source>Scientific name</source>
        <translation>Nom scientifique</translation>
    </message>
    <message>
        <source>Feeding type</source>
        <translation>Type d’alimentation</translation>
    </message>
    <message>
        <source>Belongs to</source>
        <translation>Appartient à</translation>
    </message>
    <message>
        <source>mammal, tenrec: the widest first</source>
        <translation>mammal, tenrec&#xa0;: le plus large d’abord</translation>
    </message>
    <message>
        <source>Cautions, model species and energy choices go by these words</source>
        <translation>Mises en garde, espèces modèles et choix d’énergie dépendent de ces mots</translation>
    </message>
    <message>
        <source>Why the model stands in</source>
        <translation>Pourquoi le modèle convient</translation>
    </message>
    <message>
        <source>Why does this one stand in? A sentence, which is kept with every target.</source>
        <translation>Pourquoi celui-ci convient-il&#xa0;? Une phrase, gardée avec chaque cible.</translation>
    </message>
    <message>
        <source>Published requirements of a model species are a starting point; the nutritionist and the vet decide.</source>
        <translation>Les besoins publiés d’une espèce modèle sont un point de départ&#xa0;; le nutritionniste et le vétérinaire décident.</translation>
    </message>
    <message>
        <source>Name of the group</source>
        <translation>Nom du groupe</translation>
    </message>
    <message>
        <source>pair, trio, family …</source>
        <translation>couple, trio, famille …</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Secteur</translation>
    </message>
    <message>
        <source>whose keepers feed it</source>
        <translation>dont les soigneurs le nourrissent</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Animaux</translation>
    </message>
    <message>
        <source>how many share the bowl</source>
        <translation>combien partagent la gamelle</translation>
    </message>
    <message>
        <source>Mass of one animal</source>
        <translation>Poids d’un animal</translation>
    </message>
    <message>
        <source>a mean, or what is expected</source>
        <translation>une moyenne, ou ce qui est attendu</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>Unit of the mass</source>
        <translation>Unité du poids</translation>
    </message>
    <message>
        <source>in</source>
        <translation>en</translation>
    </message>
    <message>
        <source>Energy at 1 kg of body mass</source>
        <translation>Énergie à 1 kg de poids vif</translation>
    </message>
    <message>
        <source>choose…</source>
        <translation>choisir…</translation>
    </message>
    <message>
        <source>Factor on the energy</source>
        <translation>Facteur sur l’énergie</translation>
    </message>
    <message>
        <source>no factor</source>
        <translation>aucun facteur</translation>
    </message>
    <message>
        <source>Energy need</source>
        <translation>Besoin en énergie</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>Take it into the collection and go on to a diet for its group</source>
        <translation>L’accueillir dans la collection et passer à une ration pour son groupe</translation>
    </message>
    <message>
        <source>What is still missing</source>
        <translation>Ce qui manque encore</translation>
    </message>
    <message>
        <source>● Nothing is missing.</source>
        <translation>● Rien ne manque.</translation>
    </message>
    <message>
        <source>? Still missing: %1.</source>
        <translation>? Il manque encore&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::NumberField</name>
    <message>
        <source>“%1” is no number.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre.</translation>
    </message>
    <message>
        <source>“%1” is not between %2 and %3.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas entre %2 et %3.</translation>
    </message>
    <message>
        <source>“%1” is no whole number, and only whole numbers count here.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre entier, et seuls les entiers comptent ici.</translation>
    </message>
    <message numerus="yes">
        <source>“%1” is finer than what counts here: %n digit(s) after the decimal mark.</source>
        <translation>
            <numerusform>«&#xa0;%1&#xa0;» est plus fin que ce qui compte ici&#xa0;: %n chiffre après la virgule.</numerusform>
            <numerusform>«&#xa0;%1&#xa0;» est plus fin que ce qui compte ici&#xa0;: %n chiffres après la virgule.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::NutrientNumbersModel</name>
    <message>
        <source>No nutrient is called “%1”.</source>
        <translation>Aucun nutriment ne s’appelle «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>“%1” of %2 is not %3.</source>
        <translation>«&#xa0;%1&#xa0;» de %2 n’est pas %3.</translation>
    </message>
    <message>
        <source>%1 stands here twice.</source>
        <translation>%1 est ici deux fois.</translation>
    </message>
    <message>
        <source>type a nutrient…</source>
        <translation>taper un nutriment…</translation>
    </message>
    <message>
        <source>nutrient</source>
        <translation>nutriment</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ObservationForm</name>
    <message>
        <source>What was seen</source>
        <translation>Ce qui a été vu</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>hh:mm</source>
        <translation>hh:mm</translation>
    </message>
    <message>
        <source>Scale of the score</source>
        <translation>Échelle de la note</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>score</source>
        <translation>note</translation>
    </message>
    <message>
        <source>Appetite</source>
        <translation>Appétit</translation>
    </message>
    <message>
        <source>Analyte</source>
        <translation>Analyte</translation>
    </message>
    <message>
        <source>Blood value</source>
        <translation>Valeur sanguine</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>Unit of the blood value</source>
        <translation>Unité de la valeur sanguine</translation>
    </message>
    <message>
        <source>Lab&apos;s range, low</source>
        <translation>Plage du laboratoire, bas</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>Lab&apos;s range, high</source>
        <translation>Plage du laboratoire, haut</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>File beside the collection</source>
        <translation>Fichier à côté de la collection</translation>
    </message>
    <message>
        <source>attached file</source>
        <translation>fichier joint</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Keep as it is</source>
        <translation>Garder tel quel</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Which score? %1 goes from %2 to %3.</source>
        <translation>Quelle note&#xa0;? %1 va de %2 à %3.</translation>
    </message>
    <message>
        <source>%1 is not on this scale: it goes from %2 to %3.</source>
        <translation>%1 n’est pas sur cette échelle&#xa0;: elle va de %2 à %3.</translation>
    </message>
    <message>
        <source>Which blood value?</source>
        <translation>Quelle valeur sanguine&#xa0;?</translation>
    </message>
    <message>
        <source>%1 is not measured in %2, or its range is upside down.</source>
        <translation>%1 ne se mesure pas en %2, ou sa plage est inversée.</translation>
    </message>
    <message>
        <source>A time is hh:mm, 00:00 to 23:59.</source>
        <translation>Une heure est hh:mm, de 00:00 à 23:59.</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Choisir…</translation>
    </message>
    <message>
        <source>Choose a file beside the collection</source>
        <translation>Choisir un fichier à côté de la collection</translation>
    </message>
    <message>
        <source>A picture or report that lies in the collection&apos;s folder</source>
        <translation>Une image ou un rapport qui se trouve dans le dossier de la collection</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::OpenCollection</name>
    <message>
        <source>nothing open</source>
        <translation>rien d’ouvert</translation>
    </message>
    <message>
        <source>working…</source>
        <translation>en cours…</translation>
    </message>
    <message>
        <source>all saved</source>
        <translation>tout est enregistré</translation>
    </message>
    <message>
        <source>for reading only</source>
        <translation>en lecture seule</translation>
    </message>
    <message>
        <source>Brackenmere (invented sample)</source>
        <translation>Brackenmere (exemple inventé)</translation>
    </message>
    <message>
        <source>This collection is open for reading only: its file or its folder cannot be written. To change it, copy it into a folder of your own and open the copy.</source>
        <translation>Cette collection n’est ouverte qu’en lecture&#xa0;: son fichier ou son dossier ne peut pas être écrit. Pour la modifier, copiez-la dans un dossier à vous et ouvrez la copie.</translation>
    </message>
    <message>
        <source>cut off from the server</source>
        <translation>coupé du serveur</translation>
    </message>
    <message numerus="yes">
        <source>cut off from the server: %n entry(ies) wait</source>
        <translation>
            <numerusform>coupé du serveur : %n note attend</numerusform>
            <numerusform>coupé du serveur : %n notes attendent</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::PageHeader</name>
    <message>
        <source>What is shown</source>
        <translation>Ce qui est affiché</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::PanPane</name>
    <message>
        <source>Keep  (Enter)</source>
        <translation>Garder  (Entrée)</translation>
    </message>
    <message>
        <source>Take out  (Del)</source>
        <translation>Retirer  (Suppr)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation>Retour  (Échap)</translation>
    </message>
    <message>
        <source>Control pans of the day</source>
        <translation>Gamelles témoins du jour</translation>
    </message>
    <message>
        <source>Food, or class of foods that dry alike</source>
        <translation>Aliment, ou classe d’aliments qui sèchent de même</translation>
    </message>
    <message>
        <source>g when it was put out</source>
        <translation>g au moment de la poser</translation>
    </message>
    <message>
        <source>g when it came back</source>
        <translation>g à son retour</translation>
    </message>
    <message>
        <source>The same food in the same place, out of the animals&apos; reach: what water it lost or drew overnight. Leftovers are put right by it. Without a second weight it still stands: Today reminds of it.</source>
        <translation>Le même aliment au même endroit, hors de portée des animaux&#xa0;: l’eau qu’il a perdue ou prise pendant la nuit. Les refus sont corrigés d’après elle. Sans second poids, elle est encore en place&#xa0;: Aujourd’hui le rappelle.</translation>
    </message>
    <message>
        <source>put out</source>
        <translation>posé</translation>
    </message>
    <message>
        <source>came back</source>
        <translation>revenu</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>Control pans · %1</source>
        <translation>Gamelles témoins · %1</translation>
    </message>
    <message>
        <source>This pan still stands. What came back of it?</source>
        <translation>Cette gamelle est encore en place. Qu’en est-il revenu&#xa0;?</translation>
    </message>
    <message>
        <source>This pan is changed:</source>
        <translation>Cette gamelle est modifiée&#xa0;:</translation>
    </message>
    <message>
        <source>No pan of this day is written down yet. The first one:</source>
        <translation>Aucune gamelle de ce jour n’est encore notée. La première&#xa0;:</translation>
    </message>
    <message>
        <source>Another pan:</source>
        <translation>Une autre gamelle&#xa0;:</translation>
    </message>
    <message>
        <source>No bowl of this day holds a food: there is nothing to put out.</source>
        <translation>Aucune gamelle de ce jour ne contient d’aliment&#xa0;: il n’y a rien à poser.</translation>
    </message>
    <message>
        <source>What did it weigh when it was put out? Type grams, such as 100.</source>
        <translation>Combien pesait-elle quand on l’a posée&#xa0;? Tapez des grammes, comme 100.</translation>
    </message>
    <message>
        <source>“%1” is no weight: type the grams that were put out, such as 100.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un poids&#xa0;: tapez les grammes posés, comme 100.</translation>
    </message>
    <message>
        <source>“%1” is no weight: type the grams that came back, or nothing while it still stands.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un poids&#xa0;: tapez les grammes revenus, ou rien tant qu’elle est en place.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::PlanCard</name>
    <message>
        <source>%1 (no own sample has it)</source>
        <translation>%1 (aucun échantillon propre ne l’a)</translation>
    </message>
    <message>
        <source>%1 (last %2)</source>
        <translation>%1 (dernier %2)</translation>
    </message>
    <message>
        <source>every … months</source>
        <translation>tous les … mois</translation>
    </message>
    <message>
        <source>a whole number of months from 1 to 120</source>
        <translation>un nombre entier de mois de 1 à 120</translation>
    </message>
    <message>
        <source>Sampling plan</source>
        <translation>Plan d’échantillonnage</translation>
    </message>
    <message>
        <source>Nutrients to analyse, and how often</source>
        <translation>Nutriments à analyser, et à quelle fréquence</translation>
    </message>
    <message>
        <source>Nothing is planned. Plan what this food can go wrong in.</source>
        <translation>Rien n’est prévu. Prévoyez ce en quoi cet aliment peut mal tourner.</translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation>Rien n’est dû.</translation>
    </message>
    <message>
        <source>Due: %1.</source>
        <translation>Dû&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::PlanModel</name>
    <message>
        <source>line</source>
        <translation>ligne</translation>
    </message>
    <message>
        <source>food or place</source>
        <translation>aliment ou endroit</translation>
    </message>
    <message>
        <source>what will happen, or why not</source>
        <translation>ce qui va se passer, ou pourquoi non</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Rail</name>
    <message>
        <source>Rooms</source>
        <translation>Salles</translation>
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
        <translation>Poids et notes d’état</translation>
    </message>
    <message>
        <source>Leave out…</source>
        <translation>Écarter…</translation>
    </message>
    <message>
        <source>Put right…</source>
        <translation>Corriger…</translation>
    </message>
    <message>
        <source>Count it again</source>
        <translation>Le compter de nouveau</translation>
    </message>
    <message>
        <source>Choose a mass in the list first</source>
        <translation>Choisissez d’abord un poids dans la liste</translation>
    </message>
    <message>
        <source>It stays in the record, and does not count</source>
        <translation>Il reste noté, et ne compte pas</translation>
    </message>
    <message>
        <source>What was written first stays beside it</source>
        <translation>Ce qui a été écrit d’abord reste à côté</translation>
    </message>
    <message>
        <source>Leave %1 of %2 out of what counts?</source>
        <translation>Écarter %1 du %2 de ce qui compte&#xa0;?</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Écarter</translation>
    </message>
    <message>
        <source>What should %1 of %2 have been?</source>
        <translation>Qu’aurait dû être %1 du %2&#xa0;?</translation>
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
        <translation>Corriger</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ReadingsModel</name>
    <message>
        <source>group</source>
        <translation>groupe</translation>
    </message>
    <message>
        <source>▲ doubtful: %1</source>
        <translation>▲ douteux&#xa0;: %1</translation>
    </message>
    <message>
        <source>□ left out: %1</source>
        <translation>□ écarté&#xa0;: %1</translation>
    </message>
    <message>
        <source> first written as %1: %2</source>
        <translation> d’abord écrit %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>état corporel</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>animal</source>
        <translation>animal</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>how</source>
        <translation>comment</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>remarque</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ReasonBar</name>
    <message>
        <source>A reason is needed</source>
        <translation>Une raison est nécessaire</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>Standard deviation, where it is known</source>
        <translation>Écart-type, s’il est connu</translation>
    </message>
    <message>
        <source>± SD</source>
        <translation>± ET</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Raison</translation>
    </message>
    <message>
        <source>Why? This is kept with it.</source>
        <translation>Pourquoi&#xa0;? Cela est conservé avec.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RecipeCard</name>
    <message>
        <source>Parts of the mix, and their grams</source>
        <translation>Parties du mélange et leurs grammes</translation>
    </message>
    <message>
        <source>With this yield the dry matter of the parts would weigh more than the mix; nothing is worked out from it.</source>
        <translation>Avec ce rendement la matière sèche des parties pèserait plus que le mélange&#xa0;; rien n’en est calculé.</translation>
    </message>
    <message>
        <source>A share that stays lies outside 0 to 2; nothing is worked out from it.</source>
        <translation>Une part qui demeure est hors de 0 à 2&#xa0;; rien n’en est calculé.</translation>
    </message>
    <message>
        <source>Nothing can be worked out from this recipe.</source>
        <translation>Rien ne peut être calculé de cette recette.</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>No food of this collection has “%1” in its name.</source>
        <translation>Aucun aliment de cette collection n’a «&#xa0;%1&#xa0;» dans son nom.</translation>
    </message>
    <message>
        <source>Add a part: type part of its name…</source>
        <translation>Ajouter une partie&#xa0;: tapez une partie de son nom…</translation>
    </message>
    <message>
        <source>Add a part of the mix by part of its name</source>
        <translation>Ajouter une partie du mélange par une partie de son nom</translation>
    </message>
    <message>
        <source>Grams of the mix from 1 g weighed in</source>
        <translation>Grammes du mélange de 1 g pesé</translation>
    </message>
    <message>
        <source>Source of the recipe</source>
        <translation>Source de la recette</translation>
    </message>
    <message>
        <source>who says so</source>
        <translation>qui l’affirme</translation>
    </message>
    <message>
        <source>1 g weighed in gives, g</source>
        <translation>1 g pesé donne, g</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>Mixed from</source>
        <translation>Mélangé de</translation>
    </message>
    <message>
        <source>Takes the chosen part out of the mix (Delete)</source>
        <translation>Retire la partie choisie du mélange (Suppr)</translation>
    </message>
    <message>
        <source>It is worked out as cooked from %1 now; a recipe takes the place of that.</source>
        <translation>Il est calculé maintenant comme cuit de %1&#xa0;; une recette le remplace.</translation>
    </message>
    <message>
        <source>Not mixed from other foods. Samples of the mix itself go before a recipe.</source>
        <translation>Pas mélangé d’autres aliments. Les échantillons du mélange lui-même passent avant une recette.</translation>
    </message>
    <message>
        <source>What a part does not state is “at least” in the mix.</source>
        <translation>Ce qu’une partie n’indique pas est «&#xa0;au moins&#xa0;» dans le mélange.</translation>
    </message>
    <message>
        <source>A food is not mixed from itself.</source>
        <translation>Un aliment n’est pas mélangé de lui-même.</translation>
    </message>
    <message>
        <source>“%1” is no yield: the grams of the mix that 1 g weighed in gives, above 0.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un rendement&#xa0;: les grammes du mélange que donne 1 g pesé, plus de 0.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RecipePartsModel</name>
    <message>
        <source>How many grams of %1 go in?</source>
        <translation>Combien de grammes de %1 y entrent&#xa0;?</translation>
    </message>
    <message>
        <source>“%1” of %2 is not a number of grams above 0.</source>
        <translation>«&#xa0;%1&#xa0;» de %2 n’est pas un nombre de grammes supérieur à 0.</translation>
    </message>
    <message>
        <source>part</source>
        <translation>partie</translation>
    </message>
    <message>
        <source>grams</source>
        <translation>grammes</translation>
    </message>
    <message>
        <source>share</source>
        <translation>part</translation>
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
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rétablir</translation>
    </message>
    <message>
        <source>Undo: %1 (Ctrl+Z)</source>
        <translation>Annuler&#xa0;: %1 (Ctrl+Z)</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Rétablir&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Rooms</name>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>Foods</source>
        <translation>Aliments</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Animaux</translation>
    </message>
    <message>
        <source>Diets</source>
        <translation>Rations</translation>
    </message>
    <message>
        <source>Kitchen</source>
        <translation>Cuisine</translation>
    </message>
    <message>
        <source>Intake</source>
        <translation>Ingestion</translation>
    </message>
    <message>
        <source>Health</source>
        <translation>Santé</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationBar</name>
    <message>
        <source>Plan days…</source>
        <translation>Planifier des jours…</translation>
    </message>
    <message>
        <source>Plan again from today</source>
        <translation>Replanifier dès aujourd’hui</translation>
    </message>
    <message>
        <source>Days that are over count</source>
        <translation>Les jours passés comptent</translation>
    </message>
    <message>
        <source>as offered</source>
        <translation>tels qu’offerts</translation>
    </message>
    <message>
        <source>as eaten</source>
        <translation>tels que mangés</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Which days</source>
        <translation>Quels jours</translation>
    </message>
    <message>
        <source>Plan the days after those that are planned</source>
        <translation>Planifier les jours qui suivent ceux déjà planifiés</translation>
    </message>
    <message>
        <source>What was fed stays, and the other days balance what it brought</source>
        <translation>Ce qui a été distribué reste, et les autres jours compensent ce qu’il a apporté</translation>
    </message>
    <message>
        <source>Take the best plan that is found so far</source>
        <translation>Prendre le meilleur plan trouvé jusqu’ici</translation>
    </message>
    <message>
        <source>All that was offered counts</source>
        <translation>Tout ce qui a été offert compte</translation>
    </message>
    <message>
        <source>What was weighed back does not count, where somebody weighed it</source>
        <translation>Ce qui a été repesé ne compte pas, là où quelqu’un l’a pesé</translation>
    </message>
    <message>
        <source>planning…</source>
        <translation>planification…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationCalendar</name>
    <message>
        <source>Calendar of the rotation</source>
        <translation>Calendrier de la rotation</translation>
    </message>
    <message>
        <source>A row for each food, a column for each day, grams per animal</source>
        <translation>Une ligne par aliment, une colonne par jour, grammes par animal</translation>
    </message>
    <message>
        <source>%1 missed</source>
        <translation>%1 manqués</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationCalendarModel</name>
    <message>
        <source>%1: %2 g a day on the mean</source>
        <translation>%1&#xa0;: %2 g par jour en moyenne</translation>
    </message>
    <message>
        <source>%1 g per animal</source>
        <translation>%1 g par animal</translation>
    </message>
    <message>
        <source>not fed</source>
        <translation>non distribué</translation>
    </message>
    <message>
        <source>, fed</source>
        <translation>, distribué</translation>
    </message>
    <message>
        <source>, locked</source>
        <translation>, verrouillé</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1 missed</source>
        <translation>%1 manqués</translation>
    </message>
    <message>
        <source>targets</source>
        <translation>cibles</translation>
    </message>
    <message>
        <source>mean
a day</source>
        <translation>moyenne
par jour</translation>
    </message>
    <message>
        <source>fed</source>
        <translation>distribué</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationCellDelegate</name>
    <message>
        <source>Grams per animal</source>
        <translation>Grammes par animal</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationEntry</name>
    <message>
        <source>Days are planned for a diet of a collection: choose one at the left.</source>
        <translation>On planifie des jours pour une ration d’une collection&#xa0;: choisissez-en une à gauche.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationForm</name>
    <message>
        <source>No food more days running than</source>
        <translation>Aucun aliment plus de jours d’affilée que</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>pas de limite</translation>
    </message>
    <message>
        <source>Different foods wanted</source>
        <translation>Aliments différents souhaités</translation>
    </message>
    <message>
        <source>no wish</source>
        <translation>pas de souhait</translation>
    </message>
    <message>
        <source>Different foods a day, at most</source>
        <translation>Aliments différents par jour, au plus</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planifier</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>How many days</source>
        <translation>Combien de jours</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Premier jour</translation>
    </message>
    <message>
        <source>A single day&apos;s zones are wider by</source>
        <translation>Les zones d’un seul jour sont plus larges de</translation>
    </message>
    <message>
        <source>Nothing is fed on %1</source>
        <translation>Rien n’est distribué le %1</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Combien de temps</translation>
    </message>
    <message>
        <source>Different foods wanted over the days</source>
        <translation>Aliments différents souhaités sur les jours</translation>
    </message>
    <message>
        <source>Nothing is fed on</source>
        <translation>Rien n’est distribué le</translation>
    </message>
    <message>
        <source>Rules from a file…</source>
        <translation>Règles d’un fichier…</translation>
    </message>
    <message>
        <source>Structure by the day, seasons, deliveries, stock to use up: a file of rules says them</source>
        <translation>Structure par jour, saisons, livraisons, stock à écouler&#xa0;: un fichier de règles le dit</translation>
    </message>
    <message>
        <source>Plan days that vary</source>
        <translation>Planifier des jours variés</translation>
    </message>
    <message>
        <source>Every day another bowl of this version&apos;s foods, within their limits; over the days the targets hold. A food that may come needs a line in the version, with 0 g if it is not fed now. Its structure rules hold each day.</source>
        <translation>Chaque jour une autre gamelle des aliments de cette version, dans leurs limites&#xa0;; sur les jours, les cibles tiennent. Un aliment qui peut venir demande une ligne dans la version, avec 0 g s’il n’est pas distribué maintenant. Ses règles de structure tiennent chaque jour.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationHandBar</name>
    <message>
        <source>A day earlier</source>
        <translation>Un jour plus tôt</translation>
    </message>
    <message>
        <source>Alt+←, or drag the food to another day</source>
        <translation>Alt+←, ou faites glisser l’aliment vers un autre jour</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Un jour plus tard</translation>
    </message>
    <message>
        <source>Alt+→, or drag the food to another day</source>
        <translation>Alt+→, ou faites glisser l’aliment vers un autre jour</translation>
    </message>
    <message>
        <source>Lock or free</source>
        <translation>Verrouiller ou libérer</translation>
    </message>
    <message>
        <source>L: a locked cell stays as it is when the rest is planned</source>
        <translation>L&#xa0;: une case verrouillée reste telle quelle quand le reste est planifié</translation>
    </message>
    <message>
        <source>Not on this day</source>
        <translation>Pas ce jour</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Suppr</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationPane</name>
    <message>
        <source>week of</source>
        <translation>semaine du</translation>
    </message>
    <message>
        <source>group</source>
        <translation>groupe</translation>
    </message>
    <message>
        <source>food</source>
        <translation>aliment</translation>
    </message>
    <message>
        <source>offered</source>
        <translation>offert</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation>à acheter</translation>
    </message>
    <message>
        <source>Purchase list</source>
        <translation>Liste d’achats</translation>
    </message>
    <message>
        <source>Below the calendar</source>
        <translation>Sous le calendrier</translation>
    </message>
    <message>
        <source>What is shown below the calendar</source>
        <translation>Ce qui est affiché sous le calendrier</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>À acheter</translation>
    </message>
    <message>
        <source>No days are planned for this version: it is fed as it stands, the same each day.</source>
        <translation>Aucun jour n’est planifié pour cette version&#xa0;: elle est distribuée telle quelle, la même chaque jour.</translation>
    </message>
    <message>
        <source>Diet</source>
        <translation>Ration</translation>
    </message>
    <message>
        <source>Save as a page or a file</source>
        <translation>Enregistrer comme page ou fichier</translation>
    </message>
    <message>
        <source>Print the calendar</source>
        <translation>Imprimer le calendrier</translation>
    </message>
    <message>
        <source>Remove this rotation</source>
        <translation>Retirer cette rotation</translation>
    </message>
    <message>
        <source>Back to the diet</source>
        <translation>Retour à la ration</translation>
    </message>
    <message>
        <source>printed: %1</source>
        <translation>imprimé&#xa0;: %1</translation>
    </message>
    <message>
        <source>written: %1</source>
        <translation>écrit&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationPlanner</name>
    <message>
        <source>Nothing was planned: the planning itself failed.</source>
        <translation>Rien n’a été planifié&#xa0;: la planification elle-même a échoué.</translation>
    </message>
    <message>
        <source>This version is no longer in the collection.</source>
        <translation>Cette version n’est plus dans la collection.</translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation>planifier %1</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 du %2 au %3</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 le %2</translation>
    </message>
    <message>
        <source>free %1 on %2</source>
        <translation>libérer %1 le %2</translation>
    </message>
    <message>
        <source>lock %1 on %2</source>
        <translation>verrouiller %1 le %2</translation>
    </message>
    <message>
        <source>All days of this rotation are over: plan the next ones.</source>
        <translation>Tous les jours de cette rotation sont passés&#xa0;: planifiez les suivants.</translation>
    </message>
    <message>
        <source>plan again from today</source>
        <translation>replanifier dès aujourd’hui</translation>
    </message>
    <message>
        <source>remove the rotation</source>
        <translation>retirer la rotation</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationSide</name>
    <message>
        <source>What the ladder shows</source>
        <translation>Ce que montre l’échelle</translation>
    </message>
    <message>
        <source>all days</source>
        <translation>tous les jours</translation>
    </message>
    <message>
        <source>this day</source>
        <translation>ce jour</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Bilan</translation>
    </message>
    <message>
        <source>How the days stand</source>
        <translation>Situation des jours</translation>
    </message>
    <message>
        <source>The mean day of the period against the targets</source>
        <translation>Le jour moyen de la période face aux cibles</translation>
    </message>
    <message>
        <source>The day that the hand is on, against its own, wider zones</source>
        <translation>Le jour sous la main, face à ses propres zones, plus larges</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RuleAdder</name>
    <message>
        <source>Minimum of the new target</source>
        <translation>Minimum de la nouvelle cible</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>Maximum of the new target</source>
        <translation>Maximum de la nouvelle cible</translation>
    </message>
    <message>
        <source>max</source>
        <translation>max</translation>
    </message>
    <message>
        <source>Food group that is not given</source>
        <translation>Groupe d’aliments qui n’est pas donné</translation>
    </message>
    <message>
        <source>food group</source>
        <translation>groupe d’aliments</translation>
    </message>
    <message>
        <source>Why it is not given</source>
        <translation>Pourquoi il n’est pas donné</translation>
    </message>
    <message>
        <source>why</source>
        <translation>pourquoi</translation>
    </message>
    <message>
        <source>Nutrient of the new target</source>
        <translation>Nutriment de la nouvelle cible</translation>
    </message>
    <message>
        <source>Unit of the new target</source>
        <translation>Unité de la nouvelle cible</translation>
    </message>
    <message>
        <source>Basis of the new target</source>
        <translation>Base de la nouvelle cible</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>par %1</translation>
    </message>
    <message>
        <source>Add target</source>
        <translation>Ajouter la cible</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Écarter</translation>
    </message>
    <message>
        <source>No nutrient is called “%1”.</source>
        <translation>Aucun nutriment ne s’appelle «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>A target needs a minimum or a maximum, and the minimum is not above the maximum.</source>
        <translation>Une cible demande un minimum ou un maximum, et le minimum n’est pas au-dessus du maximum.</translation>
    </message>
    <message>
        <source>Name the food group that is not given, and say why.</source>
        <translation>Nommez le groupe d’aliments qui n’est pas donné, et dites pourquoi.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RulesPane</name>
    <message>
        <source>the mass as fed</source>
        <translation>la masse brute</translation>
    </message>
    <message>
        <source>the energy</source>
        <translation>l’énergie</translation>
    </message>
    <message>
        <source>the dry matter</source>
        <translation>la matière sèche</translation>
    </message>
    <message>
        <source>%1 of the group %2</source>
        <translation>%1 du groupe %2</translation>
    </message>
    <message>
        <source>%1 to %2 of the group %3</source>
        <translation>%1 à %2 du groupe %3</translation>
    </message>
    <message>
        <source>at least %1 of the group %2</source>
        <translation>au moins %1 du groupe %2</translation>
    </message>
    <message>
        <source>, at least %1 g of each</source>
        <translation>, au moins %1 g de chacun</translation>
    </message>
    <message>
        <source>%1 to %2 of %3 from %4</source>
        <translation>%1 à %2 de %3 venant de %4</translation>
    </message>
    <message>
        <source>at most %1 of %2 from %3</source>
        <translation>au plus %1 de %2 venant de %3</translation>
    </message>
    <message>
        <source>at least %1 of %2 from %3</source>
        <translation>au moins %1 de %2 venant de %3</translation>
    </message>
    <message>
        <source>At least so many foods of the group</source>
        <translation>Au moins tant d’aliments du groupe</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>At most so many foods of the group</source>
        <translation>Au plus tant d’aliments du groupe</translation>
    </message>
    <message>
        <source>max</source>
        <translation>max</translation>
    </message>
    <message>
        <source>At least so many grams of each</source>
        <translation>Au moins tant de grammes de chacun</translation>
    </message>
    <message>
        <source>g each</source>
        <translation>g chacun</translation>
    </message>
    <message>
        <source>At least this share, in percent</source>
        <translation>Au moins cette part, en pour cent</translation>
    </message>
    <message>
        <source>min %</source>
        <translation>min %</translation>
    </message>
    <message>
        <source>At most this share, in percent</source>
        <translation>Au plus cette part, en pour cent</translation>
    </message>
    <message>
        <source>max %</source>
        <translation>max %</translation>
    </message>
    <message>
        <source>Food group of the structure rule</source>
        <translation>Groupe d’aliments de la règle de structure</translation>
    </message>
    <message>
        <source>Food group of the share</source>
        <translation>Groupe d’aliments de la part</translation>
    </message>
    <message>
        <source>What the share is of</source>
        <translation>De quoi est la part</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>Ask for it</source>
        <translation>Le demander</translation>
    </message>
    <message>
        <source>foods of</source>
        <translation>aliments de</translation>
    </message>
    <message>
        <source>Set the share</source>
        <translation>Fixer la part</translation>
    </message>
    <message>
        <source>share of</source>
        <translation>part de</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Remove the rule: %1</source>
        <translation>Retirer la règle&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 (by the targets)</source>
        <translation>%1 (par les cibles)</translation>
    </message>
    <message>
        <source>Nothing is asked of the diet&apos;s structure yet.</source>
        <translation>Rien n’est encore demandé à la structure de la ration.</translation>
    </message>
    <message>
        <source>A structure rule needs a group, and a whole number of foods at least or at most.</source>
        <translation>Une règle de structure demande un groupe, et un nombre entier d’aliments au moins ou au plus.</translation>
    </message>
    <message>
        <source>A share needs a group, and a percentage at least or at most, up to 100.</source>
        <translation>Une part demande un groupe, et un pourcentage au moins ou au plus, jusqu’à 100.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RungDetail</name>
    <message>
        <source>Minimum of the target</source>
        <translation>Minimum de la cible</translation>
    </message>
    <message>
        <source>Maximum of the target</source>
        <translation>Maximum de la cible</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>max</source>
        <translation>max</translation>
    </message>
    <message>
        <source>Explore</source>
        <translation>Explorer</translation>
    </message>
    <message>
        <source>Moves the bound over a range and shows what has to give (Ctrl+E)</source>
        <translation>Déplace la borne sur une plage et montre ce qui doit céder (Ctrl+E)</translation>
    </message>
    <message>
        <source>%1: nothing in the bowl</source>
        <translation>%1&#xa0;: rien dans la gamelle</translation>
    </message>
    <message>
        <source>“%1” is no number of at least zero: the bound stays.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre positif ou nul&#xa0;: la borne reste.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SampleForm</name>
    <message>
        <source>Remove this sample</source>
        <translation>Retirer cet échantillon</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>D’où il vient</translation>
    </message>
    <message>
        <source>Origin</source>
        <translation>Origine</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>report number, or the publication</source>
        <translation>numéro de rapport, ou la publication</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>2026-10-03</source>
        <translation>2026-10-03</translation>
    </message>
    <message>
        <source>Laboratory</source>
        <translation>Laboratoire</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Keep this sample</source>
        <translation>Garder cet échantillon</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Values of the sample</source>
        <translation>Valeurs de l’échantillon</translation>
    </message>
    <message>
        <source>A value may be &lt; 0.05, ≥ 33, tr or n.d.; a nutrient may be typed by its tagname (CA) or by the laboratory&apos;s word for it.</source>
        <translation>Une valeur peut être &lt; 0,05, ≥ 33, tr ou n.d.&#xa0;; un nutriment se tape par son code (CA) ou par le mot du laboratoire.</translation>
    </message>
    <message>
        <source>A sample of %1</source>
        <translation>Un échantillon de %1</translation>
    </message>
    <message>
        <source>“%1” is no date; write it as 2026-10-03.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une date&#xa0;; écrivez-la comme 2026-10-03.</translation>
    </message>
    <message>
        <source>A sample needs its source: a number with no origin helps nobody.</source>
        <translation>Un échantillon demande sa source&#xa0;: un nombre sans origine n’aide personne.</translation>
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
        <translation>pour 100 g bruts</translation>
    </message>
    <message>
        <source>per kg DM</source>
        <translation>par kg de MS</translation>
    </message>
    <message>
        <source>per 1000 kcal</source>
        <translation>pour 1000 kcal</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SampleValuesModel</name>
    <message>
        <source>per kg DM</source>
        <translation>par kg de MS</translation>
    </message>
    <message>
        <source>per 1000 kcal</source>
        <translation>pour 1000 kcal</translation>
    </message>
    <message>
        <source>per 100 g as fed</source>
        <translation>pour 100 g bruts</translation>
    </message>
    <message>
        <source>No nutrient is called “%1”.</source>
        <translation>Aucun nutriment ne s’appelle «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>“%1” is no amount of %2: a number, &lt; 0.05, ≥ 33, tr or n.d.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une quantité de %2&#xa0;: un nombre, &lt; 0,05, ≥ 33, tr ou n.d.</translation>
    </message>
    <message>
        <source>“%1” is no standard deviation of %2.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un écart-type de %2.</translation>
    </message>
    <message>
        <source>n of %1 is a whole number from 1.</source>
        <translation>n de %1 est un nombre entier à partir de 1.</translation>
    </message>
    <message>
        <source>%1 stands here twice.</source>
        <translation>%1 est ici deux fois.</translation>
    </message>
    <message>
        <source>A sample needs at least one value.</source>
        <translation>Un échantillon demande au moins une valeur.</translation>
    </message>
    <message>
        <source>type a nutrient…</source>
        <translation>taper un nutriment…</translation>
    </message>
    <message>
        <source>nutrient</source>
        <translation>nutriment</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>base</translation>
    </message>
    <message>
        <source>SD</source>
        <translation>ET</translation>
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
        <translation>port de la balance</translation>
    </message>
    <message>
        <source>Port of the scale</source>
        <translation>Port de la balance</translation>
    </message>
    <message>
        <source>%1 baud</source>
        <translation>%1 bauds</translation>
    </message>
    <message>
        <source>Speed of the port</source>
        <translation>Vitesse du port</translation>
    </message>
    <message>
        <source>unit as sent</source>
        <translation>unité envoyée</translation>
    </message>
    <message>
        <source>Unit of a scale that sends none</source>
        <translation>Unité d’une balance qui n’en envoie pas</translation>
    </message>
    <message>
        <source>The scale is connected; it has sent nothing yet.</source>
        <translation>La balance est connectée&#xa0;; elle n’a encore rien envoyé.</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Relâcher</translation>
    </message>
    <message>
        <source>Use scale</source>
        <translation>Utiliser</translation>
    </message>
    <message>
        <source>Scale…</source>
        <translation>Balance…</translation>
    </message>
    <message>
        <source>Let go of the scale</source>
        <translation>Relâcher la balance</translation>
    </message>
    <message>
        <source>Use the scale</source>
        <translation>Utiliser la balance</translation>
    </message>
    <message>
        <source>Choose a scale</source>
        <translation>Choisir une balance</translation>
    </message>
    <message>
        <source>No scale: weights are typed.</source>
        <translation>Pas de balance&#xa0;: les poids sont tapés.</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>Scale: %1, at rest</source>
        <translation>Balance&#xa0;: %1, au repos</translation>
    </message>
    <message>
        <source>Scale: %1, moving</source>
        <translation>Balance&#xa0;: %1, en mouvement</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ServerDialog</name>
    <message>
        <source>verify-full: encrypted, and the server proves its name</source>
        <translation>verify-full&#xa0;: chiffrée, et le serveur prouve son nom</translation>
    </message>
    <message>
        <source>verify-ca: encrypted, and the server proves whose it is</source>
        <translation>verify-ca&#xa0;: chiffrée, et le serveur prouve à qui il est</translation>
    </message>
    <message>
        <source>require: encrypted, and the server proves nothing</source>
        <translation>require&#xa0;: chiffrée, et le serveur ne prouve rien</translation>
    </message>
    <message>
        <source>prefer: encrypted where the server can</source>
        <translation>prefer&#xa0;: chiffrée si le serveur le peut</translation>
    </message>
    <message>
        <source>allow: encrypted only where the server wants it</source>
        <translation>allow&#xa0;: chiffrée seulement si le serveur le veut</translation>
    </message>
    <message>
        <source>disable: not encrypted</source>
        <translation>disable&#xa0;: non chiffrée</translation>
    </message>
    <message>
        <source>Open a collection on a server</source>
        <translation>Ouvrir une collection sur un serveur</translation>
    </message>
    <message>
        <source>empty: this machine</source>
        <translation>vide&#xa0;: cette machine</translation>
    </message>
    <message>
        <source>as is usual: verify-full, and on this machine prefer</source>
        <translation>comme d’habitude&#xa0;: verify-full, et sur cette machine prefer</translation>
    </message>
    <message>
        <source>What is still needed</source>
        <translation>Ce qui manque encore</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Ouvrir</translation>
    </message>
    <message>
        <source>Several desks can share a collection on a PostgreSQL server. Whoever set it up can tell what belongs here. Where the server asks for a password, you are asked for it next; it is kept nowhere.</source>
        <translation>Plusieurs postes peuvent partager une collection sur un serveur PostgreSQL. La personne qui l’a mise en place sait ce qu’il faut écrire ici. Si le serveur demande un mot de passe, il vous est demandé ensuite&#xa0;; il n’est gardé nulle part.</translation>
    </message>
    <message>
        <source>another one</source>
        <translation>une autre</translation>
    </message>
    <message>
        <source>&amp;Was open before</source>
        <translation>Dé&amp;jà ouverte</translation>
    </message>
    <message>
        <source>Fills in what follows; passwords are not remembered</source>
        <translation>Remplit ce qui suit&#xa0;; les mots de passe ne sont pas retenus</translation>
    </message>
    <message>
        <source>&amp;Server</source>
        <translation>&amp;Serveur</translation>
    </message>
    <message>
        <source>The name of the machine on which the server runs</source>
        <translation>Le nom de la machine sur laquelle tourne le serveur</translation>
    </message>
    <message>
        <source>P&amp;ort</source>
        <translation>P&amp;ort</translation>
    </message>
    <message>
        <source>5432, where whoever runs the server does not say otherwise</source>
        <translation>5432, si la personne qui s’occupe du serveur ne dit rien d’autre</translation>
    </message>
    <message>
        <source>&amp;Database</source>
        <translation>&amp;Base de données</translation>
    </message>
    <message>
        <source>The server&apos;s name for the collection</source>
        <translation>Le nom que le serveur donne à la collection</translation>
    </message>
    <message>
        <source>&amp;Person</source>
        <translation>&amp;Personne</translation>
    </message>
    <message>
        <source>Your name as the server knows you</source>
        <translation>Votre nom tel que le serveur vous connaît</translation>
    </message>
    <message>
        <source>Se&amp;curity</source>
        <translation>Sé&amp;curité</translation>
    </message>
    <message>
        <source>How the way to the server is guarded (sslmode); less than verify-full is for networks that are nobody else&apos;s</source>
        <translation>Comment le chemin vers le serveur est protégé (sslmode)&#xa0;; moins que verify-full est pour des réseaux où il n’y a personne d’autre</translation>
    </message>
    <message>
        <source>The name of the database is still needed.</source>
        <translation>Il manque encore le nom de la base de données.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SheetSide</name>
    <message>
        <source>The sheet beside the bowls</source>
        <translation>La fiche à côté des gamelles</translation>
    </message>
    <message>
        <source>The kitchen needs</source>
        <translation>Il faut à la cuisine</translation>
    </message>
    <message>
        <source>Out of the freezer today, for tomorrow</source>
        <translation>À sortir du congélateur aujourd’hui, pour demain</translation>
    </message>
    <message>
        <source>Feed well today: live food of tomorrow</source>
        <translation>À bien nourrir aujourd’hui&#xa0;: proies vivantes de demain</translation>
    </message>
    <message>
        <source>No bowl</source>
        <translation>Sans gamelle</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Mises en garde</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Toujours</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SoughtButton</name>
    <message>
        <source>Closest to now</source>
        <translation>Au plus près de maintenant</translation>
    </message>
    <message>
        <source>Lowest cost</source>
        <translation>Moindre coût</translation>
    </message>
    <message>
        <source>Fewest foods</source>
        <translation>Le moins d’aliments</translation>
    </message>
    <message>
        <source>Least %1</source>
        <translation>Le moins de %1</translation>
    </message>
    <message>
        <source>Most %1</source>
        <translation>Le plus de %1</translation>
    </message>
    <message>
        <source>What is sought among the bowls that come nearest to the targets</source>
        <translation>Ce qui est cherché parmi les gamelles les plus proches des cibles</translation>
    </message>
    <message>
        <source>What is sought: %1</source>
        <translation>Ce qui est cherché&#xa0;: %1</translation>
    </message>
    <message>
        <source>Least of</source>
        <translation>Le moins de</translation>
    </message>
    <message>
        <source>Most of</source>
        <translation>Le plus de</translation>
    </message>
    <message>
        <source>Without a target</source>
        <translation>Sans cible</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SpeciesPane</name>
    <message>
        <source>The species</source>
        <translation>L’espèce</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Scientific name</source>
        <translation>Nom scientifique</translation>
    </message>
    <message>
        <source>Feeding type</source>
        <translation>Type d’alimentation</translation>
    </message>
    <message>
        <source>Belongs to</source>
        <translation>Appartient à</translation>
    </message>
    <message>
        <source>mammal, primate, lemur: the widest first</source>
        <translation>mammal, primate, lemur&#xa0;: le plus large d’abord</translation>
    </message>
    <message>
        <source>Cautions, model species and energy choices go by these words</source>
        <translation>Mises en garde, espèces modèles et choix d’énergie dépendent de ces mots</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::StandingBar</name>
    <message>
        <source>%1 version %2</source>
        <translation>%1 version %2</translation>
    </message>
    <message>
        <source>This diet has no targets: only the energy need is judged. Give the group a target profile in the Animals room.</source>
        <translation>Cette ration n’a pas de cibles&#xa0;: seul le besoin en énergie est jugé. Donnez au groupe un profil de cibles dans la salle Animaux.</translation>
    </message>
    <message>
        <source>What was decided on cannot be read any more: shown is what the collection holds now.</source>
        <translation>Ce sur quoi on a décidé ne peut plus être lu&#xa0;: est affiché ce que la collection contient maintenant.</translation>
    </message>
    <message>
        <source>The group is now fed by the targets %1; this version is judged by %2.</source>
        <translation>Le groupe est maintenant nourri selon les cibles %1&#xa0;; cette version est jugée selon %2.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>Not in the collection any more, and not counted: %1.</source>
        <translation>Plus dans la collection, et non compté&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Since it was approved these foods have other values: %1. What is shown is what was decided on.</source>
        <translation>Depuis l’approbation, ces aliments ont d’autres valeurs&#xa0;: %1. Est affiché ce sur quoi on a décidé.</translation>
    </message>
    <message>
        <source>Its own bounds on these rules hold for nothing, since the targets no longer state them: %1.</source>
        <translation>Ses propres bornes sur ces règles ne valent pour rien, car les cibles ne les énoncent plus&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Hard rules that this diet would loosen without saying why stay in force: %1.</source>
        <translation>Les règles strictes que cette ration assouplirait sans dire pourquoi restent en vigueur&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Judge by the newer targets</source>
        <translation>Juger selon les cibles plus récentes</translation>
    </message>
    <message>
        <source>Show theirs</source>
        <translation>Montrer les leurs</translation>
    </message>
    <message>
        <source>Keep mine as a draft of its own</source>
        <translation>Garder la mienne comme brouillon à part</translation>
    </message>
    <message>
        <source>What changed since this version was written</source>
        <translation>Ce qui a changé depuis que cette version a été écrite</translation>
    </message>
    <message>
        <source>Another window changed this diet while you did. Nothing of yours was written yet.</source>
        <translation>Une autre fenêtre a modifié cette ration en même temps que vous. Rien de vous n’a encore été écrit.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::StartPage</name>
    <message>
        <source>A collection keeps your foods, animals, diets and feeding days in one file, and where each number comes from.</source>
        <translation>Une collection garde vos aliments, animaux, rations et jours de distribution dans un fichier, et l’origine de chaque nombre.</translation>
    </message>
    <message>
        <source>Open the invented sample</source>
        <translation>Ouvrir l’exemple inventé</translation>
    </message>
    <message>
        <source>The Brackenmere Animal Gardens, which do not exist: foods, animals, diets and four months of feeding. To look around and try things; Help at the foot of the rail leads through it.</source>
        <translation>Les Brackenmere Animal Gardens, qui n’existent pas&#xa0;: aliments, animaux, rations et quatre mois de distribution. Pour regarder et essayer&#xa0;; Aide, au pied de la barre, vous y guide.</translation>
    </message>
    <message>
        <source>Import a table…</source>
        <translation>Importer une table…</translation>
    </message>
    <message>
        <source>A laboratory&apos;s or publisher&apos;s table of foods (CSV, XLSX). It asks where the new collection is to be kept, and shows line by line what will happen before anything is written.</source>
        <translation>Une table d’aliments d’un laboratoire ou d’un éditeur (CSV, XLSX). On demande où garder la nouvelle collection, et l’on montre ligne par ligne ce qui va se passer avant que rien ne soit écrit.</translation>
    </message>
    <message>
        <source>Start empty…</source>
        <translation>Commencer à vide…</translation>
    </message>
    <message>
        <source>A new collection file, to which foods, animals and diets are added one by one. Each room says what to do first.</source>
        <translation>Un nouveau fichier de collection, où aliments, animaux et rations sont ajoutés un par un. Chaque salle dit par quoi commencer.</translation>
    </message>
    <message>
        <source>Or open a collection that is there already…</source>
        <translation>Ou ouvrir une collection qui existe déjà…</translation>
    </message>
    <message>
        <source>Open a collection that is there already</source>
        <translation>Ouvrir une collection qui existe déjà</translation>
    </message>
    <message>
        <source>Or one on a server, which several desks share…</source>
        <translation>Ou une sur un serveur, que plusieurs postes partagent…</translation>
    </message>
    <message>
        <source>Open a collection on a server</source>
        <translation>Ouvrir une collection sur un serveur</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::StatusLine</name>
    <message>
        <source>Energy in</source>
        <translation>Énergie en</translation>
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
        <translation>État de l’enregistrement</translation>
    </message>
    <message>
        <source>Units in force</source>
        <translation>Unités en vigueur</translation>
    </message>
    <message>
        <source>Collection</source>
        <translation>Collection</translation>
    </message>
    <message>
        <source>What the room does</source>
        <translation>Ce que fait la salle</translation>
    </message>
    <message>
        <source>Who is at the keyboard</source>
        <translation>Qui est au clavier</translation>
    </message>
    <message>
        <source>Who is at the keyboard: every change is kept under this name</source>
        <translation>Qui est au clavier&#xa0;: chaque modification est conservée sous ce nom</translation>
    </message>
    <message>
        <source>who is at the keyboard?</source>
        <translation>qui est au clavier&#xa0;?</translation>
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
        <translation>Rapport…</translation>
    </message>
    <message>
        <source>What is to be known</source>
        <translation>Ce qui est à connaître</translation>
    </message>
    <message>
        <source>Half of the interval, in percent of the mean</source>
        <translation>La moitié de l’intervalle, en pour cent de la moyenne</translation>
    </message>
    <message>
        <source>Confidence</source>
        <translation>Confiance</translation>
    </message>
    <message>
        <source>%1 % confidence</source>
        <translation>%1 % de confiance</translation>
    </message>
    <message>
        <source>First day of the study</source>
        <translation>Premier jour de l’étude</translation>
    </message>
    <message>
        <source>The plan as a page for the kitchen: PDF or HTML</source>
        <translation>Le plan comme page pour la cuisine&#xa0;: PDF ou HTML</translation>
    </message>
    <message>
        <source>The report of these days, once they are over: PDF, XLSX or HTML</source>
        <translation>Le rapport de ces jours, une fois passés&#xa0;: PDF, XLSX ou HTML</translation>
    </message>
    <message>
        <source>Mean of</source>
        <translation>Moyenne de</translation>
    </message>
    <message>
        <source>from</source>
        <translation>dès le</translation>
    </message>
    <message>
        <source>Plan a study: how many days, by how the group&apos;s own days differ from each other</source>
        <translation>Planifier une étude&#xa0;: combien de jours, selon les écarts entre les jours du groupe</translation>
    </message>
    <message>
        <source>Days of the study</source>
        <translation>Jours de l’étude</translation>
    </message>
    <message>
        <source>Why so many days, and what is done on each</source>
        <translation>Pourquoi tant de jours, et ce qui se fait chacun</translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>Le plan</translation>
    </message>
    <message>
        <source>all food, g as fed</source>
        <translation>toute la nourriture, g bruts</translation>
    </message>
    <message>
        <source>No group has a bowl yet</source>
        <translation>Aucun groupe n’a encore de gamelle</translation>
    </message>
    <message>
        <source>? No plan</source>
        <translation>? Pas de plan</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SubjectBox</name>
    <message>
        <source>What is followed over time</source>
        <translation>Ce qui est suivi au fil du temps</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1, a day and animal</source>
        <translation>%1, par jour et animal</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SureButton</name>
    <message>
        <source>How sure each target has to hold, in view of the scatter of the foods&apos; values</source>
        <translation>Avec quelle certitude chaque cible doit tenir, vu la dispersion des valeurs des aliments</translation>
    </message>
    <message>
        <source>%1 sure</source>
        <translation>sûr à %1</translation>
    </message>
    <message>
        <source>As measured</source>
        <translation>Tel que mesuré</translation>
    </message>
    <message>
        <source>How sure: %1</source>
        <translation>Certitude&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SwapEntry</name>
    <message>
        <source>instead of %1: %2 %3 (the diet itself is as it was)</source>
        <translation>à la place de %1&#xa0;: %2 de %3 (la ration elle-même est inchangée)</translation>
    </message>
    <message>
        <source>This diet gives nothing of it: nothing is missing.</source>
        <translation>Cette ration n’en donne pas&#xa0;: rien ne manque.</translation>
    </message>
    <message>
        <source>Open a collection first: its foods are what there is.</source>
        <translation>Ouvrez d’abord une collection&#xa0;: ses aliments sont ce qu’il y a.</translation>
    </message>
    <message>
        <source>Reading what is on hand…</source>
        <translation>Lecture de ce qui est disponible…</translation>
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
        <translation>Ce qui reste proche de la gamelle approuvée (O)</translation>
    </message>
    <message>
        <source>as offered</source>
        <translation>tel qu’offert</translation>
    </message>
    <message>
        <source>as eaten  (O)</source>
        <translation>tel que mangé  (O)</translation>
    </message>
    <message>
        <source>Use this  (Enter)</source>
        <translation>Prendre celui-ci  (Entrée)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation>Retour  (Échap)</translation>
    </message>
    <message>
        <source>Not available</source>
        <translation>Non disponible</translation>
    </message>
    <message>
        <source>What to give instead</source>
        <translation>Quoi donner à la place</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Ce qui manque</translation>
    </message>
    <message>
        <source>Amounts as they go into the bowl (O)</source>
        <translation>Quantités telles qu’elles vont dans la gamelle (O)</translation>
    </message>
    <message>
        <source>By what this group ate of each food in eight weeks (O)</source>
        <translation>D’après ce que ce groupe a mangé de chaque aliment en huit semaines (O)</translation>
    </message>
    <message>
        <source>How far the search is</source>
        <translation>Où en est la recherche</translation>
    </message>
    <message>
        <source>Looking at what is on hand…</source>
        <translation>Examen de ce qui est disponible…</translation>
    </message>
    <message>
        <source>Nothing on hand will do. Ask the nutritionist.</source>
        <translation>Rien de disponible ne convient. Demandez au nutritionniste.</translation>
    </message>
    <message>
        <source>The nearest first, by what is eaten of each food; one that nobody knows counts as eaten whole. Choose by arrows or number.</source>
        <translation>Le plus proche d’abord, d’après ce qui est mangé de chaque aliment&#xa0;; celui que personne ne connaît compte comme mangé en entier. Choisissez par flèches ou numéro.</translation>
    </message>
    <message>
        <source>The nearest first. Choose by arrows or number.</source>
        <translation>Le plus proche d’abord. Choisissez par flèches ou numéro.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TargetsCard</name>
    <message>
        <source>○ draft</source>
        <translation>○ brouillon</translation>
    </message>
    <message>
        <source>◐ from %1</source>
        <translation>◐ dès le %1</translation>
    </message>
    <message>
        <source>● in force since %1</source>
        <translation>● en vigueur depuis le %1</translation>
    </message>
    <message>
        <source>◌ replaced</source>
        <translation>◌ remplacé</translation>
    </message>
    <message>
        <source>◌ retired</source>
        <translation>◌ retiré</translation>
    </message>
    <message>
        <source>Decided because: %1</source>
        <translation>Décidé parce que&#xa0;: %1</translation>
    </message>
    <message>
        <source>Decided by %1: %2</source>
        <translation>Décidé par %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Derives from %1.</source>
        <translation>Dérive de %1.</translation>
    </message>
    <message>
        <source>Model species: %1.</source>
        <translation>Espèce modèle&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Model species: %1, because: %2</source>
        <translation>Espèce modèle&#xa0;: %1, parce que&#xa0;: %2</translation>
    </message>
    <message>
        <source>Its numbers presume %1 kcal per g of dry matter.</source>
        <translation>Ses nombres supposent %1 kcal par g de matière sèche.</translation>
    </message>
    <message>
        <source>It came with the program and is derived from, not edited.</source>
        <translation>Il est venu avec le programme&#xa0;; on en dérive, on ne le modifie pas.</translation>
    </message>
    <message>
        <source>This profile derives from itself: %1.</source>
        <translation>Ce profil dérive de lui-même&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 derives from %2, which is not in the collection.</source>
        <translation>%1 dérive de %2, qui n’est pas dans la collection.</translation>
    </message>
    <message>
        <source>Put in force…</source>
        <translation>Mettre en vigueur…</translation>
    </message>
    <message>
        <source>Throw the draft away</source>
        <translation>Jeter le brouillon</translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Cibles</translation>
    </message>
    <message>
        <source>Profile that the group is fed by</source>
        <translation>Profil selon lequel le groupe est nourri</translation>
    </message>
    <message>
        <source>Version of the profile</source>
        <translation>Version du profil</translation>
    </message>
    <message>
        <source>From today on this version holds in place of the one before it</source>
        <translation>À partir d’aujourd’hui cette version vaut à la place de la précédente</translation>
    </message>
    <message>
        <source>no profile chosen</source>
        <translation>aucun profil choisi</translation>
    </message>
    <message>
        <source>version %1 · %2</source>
        <translation>version %1 · %2</translation>
    </message>
    <message>
        <source>No target profile is chosen for this group. Choose one above, or start from a model species: what is published for it stands in until there is something better, and limits are set on top of it.</source>
        <translation>Aucun profil de cibles n’est choisi pour ce groupe. Choisissez-en un ci-dessus, ou commencez par une espèce modèle&#xa0;: ce qui est publié pour elle en tient lieu jusqu’à mieux, et des limites s’y ajoutent.</translation>
    </message>
    <message>
        <source>Version %1 holds from today on. Why?</source>
        <translation>La version %1 vaut dès aujourd’hui. Pourquoi&#xa0;?</translation>
    </message>
    <message>
        <source>Put in force</source>
        <translation>Mettre en vigueur</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TargetsLadder</name>
    <message>
        <source>Targets of the profile</source>
        <translation>Cibles du profil</translation>
    </message>
    <message>
        <source>Take out…</source>
        <translation>Retirer…</translation>
    </message>
    <message>
        <source>About the chosen target</source>
        <translation>À propos de la cible choisie</translation>
    </message>
    <message>
        <source>add a target</source>
        <translation>ajouter une cible</translation>
    </message>
    <message>
        <source>leave %1 out</source>
        <translation>écarter %1</translation>
    </message>
    <message>
        <source>Only wish it</source>
        <translation>Seulement souhaité</translation>
    </message>
    <message>
        <source>It must hold</source>
        <translation>Doit tenir</translation>
    </message>
    <message>
        <source>Take over again</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>wish %1</source>
        <translation>souhaiter %1</translation>
    </message>
    <message>
        <source>make %1 hold</source>
        <translation>exiger %1</translation>
    </message>
    <message>
        <source>take a rule over again</source>
        <translation>reprendre une règle</translation>
    </message>
    <message>
        <source>Take “%1” out of this profile?</source>
        <translation>Retirer «&#xa0;%1&#xa0;» de ce profil&#xa0;?</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>take %1 out</source>
        <translation>retirer %1</translation>
    </message>
    <message>
        <source>The maximum of “%1” protects from harm. Why may it be lifted? Ask the vet first.</source>
        <translation>Le maximum de «&#xa0;%1&#xa0;» protège d’un dommage. Pourquoi peut-il être levé&#xa0;? Demandez d’abord au vétérinaire.</translation>
    </message>
    <message>
        <source>Lift the limit</source>
        <translation>Lever la limite</translation>
    </message>
    <message>
        <source>lift the limit of %1</source>
        <translation>lever la limite de %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TargetsModel</name>
    <message>
        <source>◇ limit lifted</source>
        <translation>◇ limite levée</translation>
    </message>
    <message>
        <source>■ safe limit</source>
        <translation>■ limite sûre</translation>
    </message>
    <message>
        <source>■ must hold</source>
        <translation>■ doit tenir</translation>
    </message>
    <message>
        <source>○ wished</source>
        <translation>○ souhaité</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 à %2 %3</translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation>au moins %1 %2</translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation>au plus %1 %2</translation>
    </message>
    <message>
        <source>target</source>
        <translation>cible</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>preferred</source>
        <translation>préféré</translation>
    </message>
    <message>
        <source>max</source>
        <translation>max</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>zone</translation>
    </message>
    <message>
        <source>must</source>
        <translation>doit</translation>
    </message>
    <message>
        <source>known how</source>
        <translation>connu comment</translation>
    </message>
    <message>
        <source>stated in</source>
        <translation>énoncé dans</translation>
    </message>
    <message>
        <source>%1, not %2</source>
        <translation>%1, pas %2</translation>
    </message>
    <message>
        <source>preferred %1</source>
        <translation>préféré %1</translation>
    </message>
    <message>
        <source>model species: %1</source>
        <translation>espèce modèle&#xa0;: %1</translation>
    </message>
    <message>
        <source>lifted by %1 on %2: %3</source>
        <translation>levé par %1 le %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>stated in %1</source>
        <translation>énoncé dans %1</translation>
    </message>
    <message>
        <source> in place of %1</source>
        <translation> à la place de %1</translation>
    </message>
    <message>
        <source>“%1” is no number.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre.</translation>
    </message>
    <message>
        <source>%1 is a safe upper limit: it is made soft or dropped with a reason, not left blank.</source>
        <translation>%1 est une limite supérieure sûre&#xa0;: on l’assouplit ou l’abandonne avec une raison, on ne la laisse pas vide.</translation>
    </message>
    <message>
        <source>%1: the minimum may not lie above the maximum, and the preferred value lies between them.</source>
        <translation>%1&#xa0;: le minimum ne peut être au-dessus du maximum, et la valeur préférée est entre eux.</translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>modifier %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TodayRoom</name>
    <message>
        <source>Write down what was seen…</source>
        <translation>Noter ce qui a été vu…</translation>
    </message>
    <message>
        <source>What is due today</source>
        <translation>Ce qu’il y a à faire aujourd’hui</translation>
    </message>
    <message>
        <source>What is due: bowls to prepare and weigh, leftovers to weigh, control pans that still stand, swaps and diets that wait for a decision. It is read from the diets in force on this day and from what the kitchen wrote down; a row leads to where it is done.</source>
        <translation>Ce qu’il y a à faire&#xa0;: gamelles à préparer et à peser, refus à peser, gamelles témoins encore en place, remplacements et rations qui attendent une décision. C’est lu des rations en vigueur ce jour et de ce que la cuisine a noté&#xa0;; une ligne mène là où cela se fait.</translation>
    </message>
    <message>
        <source>Faeces, appetite, a limp, a treatment … of an animal or a group</source>
        <translation>Fèces, appétit, boiterie, traitement … d’un animal ou d’un groupe</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Lecture…</translation>
    </message>
    <message>
        <source>No collection is open.</source>
        <translation>Aucune collection n’est ouverte.</translation>
    </message>
    <message>
        <source>Refuse this swap: why?</source>
        <translation>Refuser ce remplacement&#xa0;: pourquoi&#xa0;?</translation>
    </message>
    <message>
        <source>Refuse</source>
        <translation>Refuser</translation>
    </message>
    <message>
        <source>Approve it</source>
        <translation>L’approuver</translation>
    </message>
    <message>
        <source>g as fed, of the whole bowl</source>
        <translation>g bruts, de la gamelle entière</translation>
    </message>
    <message>
        <source>section</source>
        <translation>secteur</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ToleranceBar</name>
    <message>
        <source>Tolerance: %1</source>
        <translation>Tolérance&#xa0;: %1</translation>
    </message>
    <message>
        <source>Tolerance: no weight yet</source>
        <translation>Tolérance&#xa0;: pas encore de poids</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ToleranceForm</name>
    <message>
        <source> steps of the scale</source>
        <translation> échelons de la balance</translation>
    </message>
    <message>
        <source> % of the bowl</source>
        <translation> % de la gamelle</translation>
    </message>
    <message>
        <source> % of body mass</source>
        <translation> % du poids vif</translation>
    </message>
    <message>
        <source>How far a weight may lie from the plan: the rule of this house</source>
        <translation>De combien un poids peut s’écarter du plan&#xa0;: la règle de cette maison</translation>
    </message>
    <message>
        <source>Always allowed</source>
        <translation>Toujours permis</translation>
    </message>
    <message>
        <source>and up to the least of</source>
        <translation>et jusqu’au plus petit de</translation>
    </message>
    <message>
        <source>and</source>
        <translation>et</translation>
    </message>
    <message>
        <source>and, where it is known,</source>
        <translation>et, s’il est connu,</translation>
    </message>
    <message>
        <source>Keep the rule</source>
        <translation>Garder la règle</translation>
    </message>
    <message>
        <source>As it is by default</source>
        <translation>Valeurs par défaut</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Ne rien changer</translation>
    </message>
    <message>
        <source>%1 in this bowl: ± %2 g</source>
        <translation>%1 dans cette gamelle&#xa0;: ± %2 g</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TraceChart</name>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
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
            <numerusform>et %n autre</numerusform>
            <numerusform>et %n autres</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ValueChart</name>
    <message>
        <source>offered</source>
        <translation>offert</translation>
    </message>
    <message>
        <source>eaten ± its uncertainty</source>
        <translation>mangé ± son incertitude</translation>
    </message>
    <message>
        <source>eaten %1 ± %2 %3</source>
        <translation>mangé %1 ± %2 %3</translation>
    </message>
    <message>
        <source>offered %1 %2</source>
        <translation>offert %1 %2</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::VersionBar</name>
    <message>
        <source>Send back…</source>
        <translation>Renvoyer…</translation>
    </message>
    <message>
        <source>New version</source>
        <translation>Nouvelle version</translation>
    </message>
    <message>
        <source>What became of this version</source>
        <translation>Ce qu’est devenue cette version</translation>
    </message>
    <message>
        <source>Begins a draft from what is on the desk (Ctrl+N)</source>
        <translation>Commence un brouillon à partir de ce qui est sur la table (Ctrl+N)</translation>
    </message>
    <message>
        <source>More ▾</source>
        <translation>Plus ▾</translation>
    </message>
    <message>
        <source>More about this version</source>
        <translation>Plus sur cette version</translation>
    </message>
    <message>
        <source> · counted as eaten, as learned of %1 of its foods</source>
        <translation> · comptée telle que mangée, selon ce qui est appris de %1 de ses aliments</translation>
    </message>
    <message>
        <source>Submit…</source>
        <translation>Soumettre…</translation>
    </message>
    <message>
        <source>Approve…</source>
        <translation>Approuver…</translation>
    </message>
    <message>
        <source>Retire…</source>
        <translation>Retirer…</translation>
    </message>
    <message>
        <source>version %1, %2</source>
        <translation>version %1, %2</translation>
    </message>
    <message>
        <source>Compare with version %1</source>
        <translation>Comparer avec la version %1</translation>
    </message>
    <message>
        <source>Count what is eaten of it</source>
        <translation>Compter ce qui en est mangé</translation>
    </message>
    <message>
        <source>Targets are judged and solved by what the group ate of each food in eight weeks</source>
        <translation>Les cibles sont jugées et résolues d’après ce que le groupe a mangé de chaque aliment en huit semaines</translation>
    </message>
    <message>
        <source>Diet sheet…</source>
        <translation>Fiche de ration…</translation>
    </message>
    <message>
        <source>Remove this draft</source>
        <translation>Retirer ce brouillon</translation>
    </message>
    <message>
        <source>Submit this version for approval. While it waits nothing of it is edited.</source>
        <translation>Soumettre cette version à approbation. Tant qu’elle attend, rien n’y est modifié.</translation>
    </message>
    <message>
        <source>Submit</source>
        <translation>Soumettre</translation>
    </message>
    <message>
        <source>Retire this version: it is no longer fed, and is kept for the record.</source>
        <translation>Retirer cette version&#xa0;: elle n’est plus distribuée, et est gardée pour mémoire.</translation>
    </message>
    <message>
        <source>Retire</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Send this version back to be worked on.</source>
        <translation>Renvoyer cette version pour être retravaillée.</translation>
    </message>
    <message>
        <source>Send back</source>
        <translation>Renvoyer</translation>
    </message>
    <message>
        <source>On the desk: %1</source>
        <translation>Sur la table&#xa0;: %1</translation>
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
        <translation>Énergie, kcal EM par jour</translation>
    </message>
    <message>
        <source>Cost a day</source>
        <translation>Coût par jour</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>version %1</translation>
    </message>
    <message>
        <source>change</source>
        <translation>changement</translation>
    </message>
    <message>
        <source>per animal a day</source>
        <translation>par animal et par jour</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::VersionDocument</name>
    <message>
        <source>This version is no longer in the collection.</source>
        <translation>Cette version n’est plus dans la collection.</translation>
    </message>
    <message>
        <source>Another window changed this diet: it is shown as it is now.</source>
        <translation>Une autre fenêtre a modifié cette ration&#xa0;: elle est affichée telle qu’elle est maintenant.</translation>
    </message>
    <message>
        <source>Foods or targets of this diet changed meanwhile: the balance is worked out anew, and no gram was moved.</source>
        <translation>Des aliments ou cibles de cette ration ont changé entre-temps&#xa0;: le bilan est recalculé, et aucun gramme n’a bougé.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::WaitingBar</name>
    <message>
        <source>What waits…</source>
        <translation>Ce qui attend…</translation>
    </message>
    <message>
        <source>What waits for the server</source>
        <translation>Ce qui attend le serveur</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Bol</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Yours</source>
        <translation>La vôtre</translation>
    </message>
    <message>
        <source>On the server</source>
        <translation>Sur le serveur</translation>
    </message>
    <message>
        <source>Written by</source>
        <translation>Noté par</translation>
    </message>
    <message>
        <source>Yours counts</source>
        <translation>La vôtre compte</translation>
    </message>
    <message>
        <source>Theirs counts</source>
        <translation>L’autre compte</translation>
    </message>
    <message>
        <source>The server, and what waits for it</source>
        <translation>Le serveur, et ce qui l’attend</translation>
    </message>
    <message>
        <source>The entry that is chosen</source>
        <translation>La note choisie</translation>
    </message>
    <message>
        <source>The entries that the server does not have yet</source>
        <translation>Les notes que le serveur n’a pas encore</translation>
    </message>
    <message>
        <source>What this desk wrote down goes before what the server has; both stay</source>
        <translation>Ce que ce poste a noté passe avant ce que le serveur a ; les deux restent</translation>
    </message>
    <message>
        <source>What the server has goes on counting; what this desk wrote down is kept</source>
        <translation>Ce que le serveur a continue de compter ; ce que ce poste a noté est gardé</translation>
    </message>
    <message>
        <source>weighed while this desk was cut off from the server</source>
        <translation>pesé pendant que ce poste était coupé du serveur</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::WeighPane</name>
    <message>
        <source>Somebody weighed this in before: both weights are kept, and the first one counts until it is corrected.</source>
        <translation>Quelqu’un l’a déjà pesé&#xa0;: les deux poids sont gardés, et le premier compte jusqu’à correction.</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Sur la balance</translation>
    </message>
    <message>
        <source>Weight in g</source>
        <translation>Poids en g</translation>
    </message>
    <message>
        <source>Not available  *</source>
        <translation>Non disponible  *</translation>
    </message>
    <message>
        <source>Not available: what to give instead</source>
        <translation>Non disponible&#xa0;: quoi donner à la place</translation>
    </message>
    <message>
        <source>What to give instead (key *)</source>
        <translation>Quoi donner à la place (touche *)</translation>
    </message>
    <message>
        <source>The lot that the house feeds this food from (key L)</source>
        <translation>Le lot dont la maison donne cet aliment (touche L)</translation>
    </message>
    <message>
        <source>A new lot, as the box names it</source>
        <translation>Un nouveau lot, tel que la boîte le nomme</translation>
    </message>
    <message>
        <source>A new lot from this day on: what does the box say? Enter keeps it</source>
        <translation>Un nouveau lot à partir de ce jour&#xa0;: que dit la boîte&#xa0;? Entrée le garde</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>Reading the sheet…</source>
        <translation>Lecture de la fiche…</translation>
    </message>
    <message>
        <source>Nothing to weigh on this sheet.</source>
        <translation>Rien à peser sur cette fiche.</translation>
    </message>
    <message>
        <source>L  lot %1</source>
        <translation>L  lot %1</translation>
    </message>
    <message>
        <source>L  lot ?</source>
        <translation>L  lot&#xa0;?</translation>
    </message>
    <message>
        <source>Nobody named the lot</source>
        <translation>Personne n’a nommé le lot</translation>
    </message>
    <message>
        <source>%1 ± %2 g%3</source>
        <translation>%1 ± %2 g%3</translation>
    </message>
    <message>
        <source>“%1” is no weight: type grams, such as 20.5.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un poids&#xa0;: tapez des grammes, comme 20,5.</translation>
    </message>
    <message>
        <source>%1 g instead of %2 g: why? Both are kept.</source>
        <translation>%1 g au lieu de %2 g&#xa0;: pourquoi&#xa0;? Les deux sont gardés.</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Corriger</translation>
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
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Raisons</translation>
    </message>
    <message>
        <source>What would settle it (each can be tried, and undo takes it back):</source>
        <translation>Ce qui le réglerait (chacun peut être essayé, et Annuler le reprend)&#xa0;:</translation>
    </message>
    <message>
        <source>Try: %1, %2</source>
        <translation>Essayer&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>Tries it on the diet (Ctrl+T); Ctrl+Z takes it back</source>
        <translation>L’essaie sur la ration (Ctrl+T)&#xa0;; Ctrl+Z l’annule</translation>
    </message>
    <message>
        <source>Tries it on the diet; Ctrl+Z takes it back</source>
        <translation>L’essaie sur la ration&#xa0;; Ctrl+Z l’annule</translation>
    </message>
    <message>
        <source>Notes: %1</source>
        <translation>Notes&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::YesterdayPage</name>
    <message>
        <source>No bowl was put on this sheet.</source>
        <translation>Aucune gamelle n’a été mise sur cette fiche.</translation>
    </message>
    <message>
        <source>Filled in: all %1</source>
        <translation>Rempli&#xa0;: les %1</translation>
    </message>
    <message>
        <source>Still to be filled in: %1 of %2</source>
        <translation>Encore à remplir&#xa0;: %1 sur %2</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SetUpDialog</name>
    <message>
        <source>Set up a collection on the server</source>
        <translation>Mettre en place une collection sur le serveur</translation>
    </message>
    <message>
        <source>The database at %1 holds no collection yet. One can be set up in it: empty, with the tables it needs and with roles, by which the database itself holds people to what they may do.</source>
        <translation>La base de données à %1 ne contient pas encore de collection. On peut y en mettre une en place : vide, avec les tables qu&apos;il lui faut et avec des rôles, par lesquels la base elle-même tient chacun à ce qu&apos;il a le droit de faire.</translation>
    </message>
    <message>
        <source>reader</source>
        <translation>reader (lecture)</translation>
    </message>
    <message>
        <source>reads everything, writes nothing</source>
        <translation>lit tout, n&apos;écrit rien</translation>
    </message>
    <message>
        <source>keeper</source>
        <translation>keeper (soins)</translation>
    </message>
    <message>
        <source>weighs in and out, swaps foods, weighs animals, notes what is seen</source>
        <translation>pèse ce qui est servi et ce qui reste, échange des aliments, pèse les animaux, note ce qui se voit</translation>
    </message>
    <message>
        <source>vet</source>
        <translation>vet (vétérinaire)</translation>
    </message>
    <message>
        <source>animals and their masses, observations, blood and faeces</source>
        <translation>les animaux et leurs masses, les observations, le sang et les fèces</translation>
    </message>
    <message>
        <source>nutritionist</source>
        <translation>nutritionist (nutrition)</translation>
    </message>
    <message>
        <source>foods, targets, diets and their approval, and all that the kitchen does</source>
        <translation>les aliments, les objectifs, les rations et leur approbation, et tout ce que fait la cuisine</translation>
    </message>
    <message>
        <source>curator</source>
        <translation>curator (conservation)</translation>
    </message>
    <message>
        <source>animals and groups, decisions on diets and swaps</source>
        <translation>les animaux et les groupes, les décisions sur les rations et les échanges</translation>
    </message>
    <message>
        <source>You, who set it up, own it and may do everything. Nobody else may open it until you let them in. What stands in the database beside it is left alone.</source>
        <translation>Vous qui la mettez en place, elle est à vous et vous pouvez tout faire. Personne d&apos;autre ne peut l&apos;ouvrir tant que vous ne l&apos;avez pas laissé entrer. Ce qui se trouve à côté dans la base n&apos;est pas touché.</translation>
    </message>
    <message>
        <source>Set up the collection here</source>
        <translation>Mettre la collection en place ici</translation>
    </message>
    <message>
        <source>Makes tables and roles in the database, in one step: all of it or nothing</source>
        <translation>Crée les tables et les rôles dans la base, en une seule étape : tout ou rien</translation>
    </message>
</context>
</TS>
