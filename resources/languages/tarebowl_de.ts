<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Animals</name>
    <message>
        <source>%1 · species</source>
        <translation>%1 · Tierart</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 Jahr</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 Jahre</translation>
    </message>
    <message>
        <source>1 month</source>
        <translation>1 Monat</translation>
    </message>
    <message>
        <source>%1 months</source>
        <translation>%1 Monate</translation>
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
        <source>sex unknown</source>
        <translation>Geschlecht unbekannt</translation>
    </message>
    <message>
        <source>unweaned</source>
        <translation>Säugling</translation>
    </message>
    <message>
        <source>growing</source>
        <translation>im Wachstum</translation>
    </message>
    <message>
        <source>adult</source>
        <translation>ausgewachsen</translation>
    </message>
    <message>
        <source>pregnant</source>
        <translation>trächtig</translation>
    </message>
    <message>
        <source>lactating</source>
        <translation>säugend</translation>
    </message>
    <message>
        <source>senior</source>
        <translation>alt</translation>
    </message>
    <message>
        <source>carnivore</source>
        <translation>Fleischfresser</translation>
    </message>
    <message>
        <source>piscivore: fish</source>
        <translation>Fischfresser</translation>
    </message>
    <message>
        <source>insectivore: insects</source>
        <translation>Insektenfresser</translation>
    </message>
    <message>
        <source>omnivore</source>
        <translation>Allesfresser</translation>
    </message>
    <message>
        <source>frugivore: fruit</source>
        <translation>Fruchtfresser</translation>
    </message>
    <message>
        <source>nectarivore: nectar</source>
        <translation>Nektarfresser</translation>
    </message>
    <message>
        <source>folivore: leaves</source>
        <translation>Blattfresser</translation>
    </message>
    <message>
        <source>grazer: grass</source>
        <translation>Grasfresser</translation>
    </message>
    <message>
        <source>granivore: seeds</source>
        <translation>Körnerfresser</translation>
    </message>
    <message>
        <source>on a scale</source>
        <translation>auf einer Waage</translation>
    </message>
    <message>
        <source>steps on a scale</source>
        <translation>geht auf eine Waage</translation>
    </message>
    <message>
        <source>carried, difference</source>
        <translation>getragen, Differenz</translation>
    </message>
    <message>
        <source>under anaesthesia</source>
        <translation>in Narkose</translation>
    </message>
    <message>
        <source>estimated by eye</source>
        <translation>nach Auge geschätzt</translation>
    </message>
    <message>
        <source>? animals</source>
        <translation>? Tiere</translation>
    </message>
    <message>
        <source>1 animal</source>
        <translation>1 Tier</translation>
    </message>
    <message>
        <source>%1 animals</source>
        <translation>%1 Tiere</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>erfunden</translation>
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
        <translation>noch nicht geboren</translation>
    </message>
    <message>
        <source>%1 weeks</source>
        <translation>%1 Wochen</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source> About %1 was expected.</source>
        <translation> Etwa %1 war zu erwarten.</translation>
    </message>
    <message>
        <source>A mass is above 0.</source>
        <translation>Eine Masse liegt über 0.</translation>
    </message>
    <message>
        <source>%1?%2 Were these grams, written as kilograms?</source>
        <translation>%1?%2 Waren das Gramm, als Kilogramm geschrieben?</translation>
    </message>
    <message>
        <source>%1?%2 Were these kilograms, written as grams?</source>
        <translation>%1?%2 Waren das Kilogramm, als Gramm geschrieben?</translation>
    </message>
    <message>
        <source>%1?%2 It is far from what this animal weighed before.</source>
        <translation>%1?%2 Das liegt weit von dem, was dieses Tier zuvor wog.</translation>
    </message>
    <message>
        <source>That day has not come yet.</source>
        <translation>Dieser Tag ist noch nicht gekommen.</translation>
    </message>
    <message>
        <source>An animal needs a name or number of the house.</source>
        <translation>Ein Tier braucht einen Namen oder eine Nummer des Hauses.</translation>
    </message>
    <message>
        <source>An animal needs a species.</source>
        <translation>Ein Tier braucht eine Tierart.</translation>
    </message>
    <message>
        <source>It cannot be born after it left or died.</source>
        <translation>Es kann nicht geboren sein, nachdem es ging oder starb.</translation>
    </message>
    <message>
        <source>It cannot arrive after it left or died.</source>
        <translation>Es kann nicht gekommen sein, nachdem es ging oder starb.</translation>
    </message>
    <message>
        <source>It cannot be born after it arrived.</source>
        <translation>Es kann nicht geboren sein, nachdem es kam.</translation>
    </message>
    <message>
        <source>Its life stages follow each other by date.</source>
        <translation>Seine Lebensabschnitte folgen nach Datum aufeinander.</translation>
    </message>
    <message>
        <source>No life stage begins before it was born.</source>
        <translation>Kein Lebensabschnitt beginnt, bevor es geboren war.</translation>
    </message>
    <message>
        <source>Say on which day it died.</source>
        <translation>Sagen, an welchem Tag es starb.</translation>
    </message>
</context>
<context>
    <name>Ask</name>
    <message>
        <source>Problem files (*.json);;All files (*)</source>
        <translation>Aufgabendateien (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Open a problem file</source>
        <translation>Aufgabendatei öffnen</translation>
    </message>
    <message>
        <source>Save the problem as</source>
        <translation>Aufgabe speichern unter</translation>
    </message>
    <message>
        <source>Collections (*.tarebowl);;All files (*)</source>
        <translation>Bestände (*.tarebowl);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Open a collection</source>
        <translation>Bestand öffnen</translation>
    </message>
    <message>
        <source>A new collection</source>
        <translation>Neuer Bestand</translation>
    </message>
    <message>
        <source>Import a table of foods</source>
        <translation>Futtermitteltabelle einlesen</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt *.xlsx);;All files (*)</source>
        <translation>Tabellen (*.csv *.tsv *.txt *.xlsx);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Mappings (*.json);;All files (*)</source>
        <translation>Zuordnungen (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Load a mapping</source>
        <translation>Zuordnung laden</translation>
    </message>
    <message>
        <source>Save the mapping as</source>
        <translation>Zuordnung speichern unter</translation>
    </message>
    <message>
        <source>Write the diet sheet</source>
        <translation>Rationsblatt schreiben</translation>
    </message>
    <message>
        <source>Pages (*.pdf);;Spreadsheets (*.xlsx);;Web pages (*.html);;Problem files (*.json)</source>
        <translation>Seiten (*.pdf);;Tabellen (*.xlsx);;Webseiten (*.html);;Aufgabendateien (*.json)</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>The collection cannot be read</source>
        <translation>Der Bestand ist nicht lesbar</translation>
    </message>
    <message>
        <source>Nothing is deleted. To salvage copies what can be read into a new file.</source>
        <translation>Es wird nichts gelöscht. Retten kopiert, was noch lesbar ist, in eine neue Datei.</translation>
    </message>
    <message>
        <source>%1 To restore puts the backup of %2 in its place, without what was written since, and keeps the damaged file among the backups.</source>
        <translation>%1 Wiederherstellen setzt die Sicherung vom %2 an ihre Stelle, ohne das, was danach geschrieben wurde, und behält die beschädigte Datei bei den Sicherungen.</translation>
    </message>
    <message>
        <source>Restore the backup</source>
        <translation>Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>Salvage what can be read…</source>
        <translation>Retten, was lesbar ist…</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>A picture or report beside the collection</source>
        <translation>Ein Bild oder Bericht neben dem Bestand</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Password</source>
        <translation>Passwort</translation>
    </message>
    <message>
        <source>The password for %1</source>
        <translation>Das Passwort für %1</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Persin in flesh, skin, stone and leaves damages heart muscle and mammary tissue; birds, rabbits, rodents and hoofed animals have died of little.</source>
        <translation>Persin in Fruchtfleisch, Schale, Kern und Blättern schädigt Herzmuskel und Milchdrüse; Vögel, Kaninchen, Nagetiere und Huftiere sind schon an kleinen Mengen gestorben.</translation>
    </message>
    <message>
        <source>Give none, leaves and stones included.</source>
        <translation>Nichts davon geben, auch keine Blätter und Kerne.</translation>
    </message>
    <message>
        <source>Organosulphur compounds of Allium bulbs and leaves destroy the red blood cells of mammals and birds, and are hardly studied elsewhere; cooking and drying do not remove them.</source>
        <translation>Schwefelverbindungen aus Zwiebeln und Blättern von Lauchgewächsen zerstören die roten Blutkörperchen von Säugetieren und Vögeln und sind bei anderen kaum untersucht; Kochen und Trocknen beseitigen sie nicht.</translation>
    </message>
    <message>
        <source>Give none, raw, cooked or as powder.</source>
        <translation>Nichts davon geben, weder roh noch gekocht noch als Pulver.</translation>
    </message>
    <message>
        <source>Theobromine and caffeine overstimulate heart and nerves, and are cleared slowly by many animals.</source>
        <translation>Theobromin und Koffein überreizen Herz und Nerven und werden von vielen Tieren nur langsam abgebaut.</translation>
    </message>
    <message>
        <source>Give none.</source>
        <translation>Nichts davon geben.</translation>
    </message>
    <message>
        <source>Xylitol makes insulin surge in dogs, with low blood sugar and liver failure; other animals are hardly studied.</source>
        <translation>Xylit lässt bei Hunden das Insulin hochschnellen, mit Unterzuckerung und Leberversagen; andere Tiere sind kaum untersucht.</translation>
    </message>
    <message>
        <source>Give no product that is sweetened with it.</source>
        <translation>Kein Erzeugnis geben, das damit gesüßt ist.</translation>
    </message>
    <message>
        <source>Grapes and raisins have caused acute kidney failure in dogs, in unpredictable amounts.</source>
        <translation>Trauben und Rosinen haben bei Hunden akutes Nierenversagen ausgelöst, in nicht vorhersehbaren Mengen.</translation>
    </message>
    <message>
        <source>Give none to canids.</source>
        <translation>Hundeartigen nichts davon geben.</translation>
    </message>
    <message>
        <source>Lectins of raw beans injure the gut; slow cooking below boiling does not destroy them.</source>
        <translation>Lektine roher Bohnen verletzen den Darm; langsames Garen unter dem Siedepunkt zerstört sie nicht.</translation>
    </message>
    <message>
        <source>Soak, then boil hard; give none raw or sprouted.</source>
        <translation>Einweichen, dann stark kochen; nichts davon roh oder gekeimt geben.</translation>
    </message>
    <message>
        <source>Solanine and chaconine of green and sprouting potato act on nerves and gut; cooking does not destroy them.</source>
        <translation>Solanin und Chaconin grüner und keimender Kartoffeln wirken auf Nerven und Darm; Kochen zerstört sie nicht.</translation>
    </message>
    <message>
        <source>Discard green and sprouting tubers, peel and haulm.</source>
        <translation>Grüne und keimende Knollen, Schalen und Kraut wegwerfen.</translation>
    </message>
    <message>
        <source>Lucibufagins of fireflies act on the heart; a single one has killed bearded dragons.</source>
        <translation>Lucibufagine der Leuchtkäfer wirken auf das Herz; ein einziger hat schon Bartagamen getötet.</translation>
    </message>
    <message>
        <source>Give none, and keep wild-caught ones out of the enclosure.</source>
        <translation>Nichts davon geben, und wild gefangene vom Gehege fernhalten.</translation>
    </message>
    <message>
        <source>Oxalic acid and other compounds of rhubarb leaves injure kidneys and bind calcium.</source>
        <translation>Oxalsäure und andere Stoffe der Rhabarberblätter schädigen die Nieren und binden Calcium.</translation>
    </message>
    <message>
        <source>Oxalate binds calcium: above one mole of it for one of calcium it could bind all that the food brings. Published contents of one food differ tenfold.</source>
        <translation>Oxalat bindet Calcium: über einem Mol davon auf ein Mol Calcium könnte es alles binden, was das Futtermittel bringt. Veröffentlichte Gehalte eines Futtermittels unterscheiden sich um das Zehnfache.</translation>
    </message>
    <message>
        <source>Count little on this food&apos;s calcium; vary greens, and keep such ones to a small share.</source>
        <translation>Mit dem Calcium dieses Futtermittels wenig rechnen; Grünfutter abwechseln und solches nur zu einem kleinen Anteil geben.</translation>
    </message>
    <message>
        <source>Phytate of seeds binds calcium, zinc and iron, and its phosphorus is little used by animals with a simple stomach.</source>
        <translation>Phytat aus Samen bindet Calcium, Zink und Eisen, und sein Phosphor wird von Tieren mit einfachem Magen kaum genutzt.</translation>
    </message>
    <message>
        <source>Do not count all of its phosphorus; look at zinc and calcium.</source>
        <translation>Nicht seinen ganzen Phosphor rechnen; auf Zink und Calcium achten.</translation>
    </message>
    <message>
        <source>Thiaminase of some raw and thawed fish destroys thiamin, also that of the rest of the bowl.</source>
        <translation>Thiaminase mancher rohen und aufgetauten Fische zerstört Thiamin, auch das der übrigen Schale.</translation>
    </message>
    <message>
        <source>Keep to a small share or cook; give thiamin apart from the fish. The vet decides on the dose.</source>
        <translation>Nur zu einem kleinen Anteil geben oder kochen; Thiamin getrennt vom Fisch geben. Über die Dosis entscheidet der Tierarzt.</translation>
    </message>
    <message>
        <source>Avidin of raw egg white binds biotin; boiling undoes it.</source>
        <translation>Avidin im rohen Eiklar bindet Biotin; Kochen hebt das auf.</translation>
    </message>
    <message>
        <source>Boil the egg.</source>
        <translation>Das Ei kochen.</translation>
    </message>
    <message>
        <source>Vitamin C makes iron easier to absorb, and these animals store iron.</source>
        <translation>Vitamin C erleichtert die Aufnahme von Eisen, und diese Tiere speichern Eisen.</translation>
    </message>
    <message>
        <source>Feed apart from the food that is richest in iron; ask the vet about blood values.</source>
        <translation>Getrennt vom eisenreichsten Futtermittel geben; den Tierarzt nach Blutwerten fragen.</translation>
    </message>
    <message>
        <source>Rich in iron that is easily absorbed, and these animals store iron.</source>
        <translation>Reich an leicht aufnehmbarem Eisen, und diese Tiere speichern Eisen.</translation>
    </message>
    <message>
        <source>Keep iron as low as the targets allow.</source>
        <translation>Eisen so niedrig halten, wie die Zielwerte es erlauben.</translation>
    </message>
    <message>
        <source>New World primates use vitamin D2 poorly: only D3 counts for them.</source>
        <translation>Neuweltaffen nutzen Vitamin D2 schlecht: für sie zählt nur D3.</translation>
    </message>
    <message>
        <source>Do not count its vitamin D; give D3 within the safe limit, and UV-B light where the house has it.</source>
        <translation>Sein Vitamin D nicht zählen; D3 innerhalb der sicheren Grenze geben, und UV-B-Licht, wo das Haus es hat.</translation>
    </message>
</context>
<context>
    <name>Chart</name>
    <message>
        <source>group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittelwert</translation>
    </message>
    <message>
        <source> (doubtful)</source>
        <translation> (zweifelhaft)</translation>
    </message>
    <message>
        <source> (left out)</source>
        <translation> (ausgelassen)</translation>
    </message>
    <message>
        <source>condition on %1: %2 of %3</source>
        <translation>Kondition am %1: %2 von %3</translation>
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
        <translation>Anderes Futtermittel</translation>
    </message>
    <message>
        <source>Proximates close: %1 g of 100 g.</source>
        <translation>Die Rohnährstoffe gehen auf: %1 g von 100 g.</translation>
    </message>
    <message>
        <source>Whether the proximates close is not known.</source>
        <translation>Ob die Rohnährstoffe aufgehen, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Water, protein, fat, ash and carbohydrate are needed for it.</source>
        <translation>Dafür werden Wasser, Protein, Fett, Asche und Kohlenhydrate gebraucht.</translation>
    </message>
    <message>
        <source>%1 scatters by %2.</source>
        <translation>%1 streut um %2.</translation>
    </message>
    <message>
        <source>More samples, or two foods where there are two.</source>
        <translation>Mehr Proben, oder zwei Futtermittel, wo es zwei sind.</translation>
    </message>
    <message>
        <source>Ca:P %1 is below 1.</source>
        <translation>Ca:P %1 liegt unter 1.</translation>
    </message>
    <message>
        <source>Calcium must come from elsewhere; insects can be dusted or gut-loaded.</source>
        <translation>Calcium muss von anderswo kommen; Insekten lassen sich bestäuben oder anfüttern.</translation>
    </message>
    <message>
        <source>A label guarantees a bound and no mean: %1. Diets count these as unknown.</source>
        <translation>Ein Etikett garantiert eine Grenze und kein Mittel: %1. Rationen zählen diese als unbekannt.</translation>
    </message>
    <message>
        <source>A laboratory&apos;s value would settle it.</source>
        <translation>Ein Wert eines Labors würde es klären.</translation>
    </message>
</context>
<context>
    <name>Conflict</name>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1: yours %2, now there %3</source>
        <translation>%1: Ihres %2, jetzt dort %3</translation>
    </message>
    <message>
        <source>It was removed.</source>
        <translation>Es wurde entfernt.</translation>
    </message>
</context>
<context>
    <name>Days</name>
    <message>
        <source>ddd d MMM</source>
        <comment>a day and its weekday, as Qt writes formats</comment>
        <translation>ddd d. MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>a day, as Qt writes formats</comment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>d MMM yyyy, HH:mm</source>
        <comment>a day and its time, as Qt writes formats</comment>
        <translation>d. MMM yyyy, HH:mm</translation>
    </message>
</context>
<context>
    <name>Edit</name>
    <message>
        <source>%1 to %2 g</source>
        <translation>%1 auf %2 g</translation>
    </message>
    <message>
        <source>another bowl</source>
        <translation>andere Schale</translation>
    </message>
    <message>
        <source>lock %1</source>
        <translation>%1 sperren</translation>
    </message>
    <message>
        <source>unlock %1</source>
        <translation>%1 freigeben</translation>
    </message>
    <message>
        <source>limits of %1</source>
        <translation>Grenzen von %1</translation>
    </message>
    <message>
        <source>what is sought</source>
        <translation>was gesucht wird</translation>
    </message>
    <message>
        <source>how sure</source>
        <translation>wie sicher</translation>
    </message>
    <message>
        <source>target of %1</source>
        <translation>Zielwert %1</translation>
    </message>
    <message>
        <source>add %1</source>
        <translation>%1 hinzufügen</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>preparation of %1</source>
        <translation>Zubereitung von %1</translation>
    </message>
    <message>
        <source>purpose of %1</source>
        <translation>Zweck von %1</translation>
    </message>
    <message>
        <source>allow %1</source>
        <translation>%1 erlauben</translation>
    </message>
    <message>
        <source>structure rules</source>
        <translation>Strukturregeln</translation>
    </message>
    <message>
        <source>group shares</source>
        <translation>Anteile von Gruppen</translation>
    </message>
</context>
<context>
    <name>Energy</name>
    <message>
        <source>at rest</source>
        <translation>in Ruhe</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation>Erhaltung</translation>
    </message>
    <message>
        <source>free-living</source>
        <translation>frei lebend</translation>
    </message>
    <message>
        <source>× energy at rest at 1 kg</source>
        <translation>× Energie in Ruhe bei 1 kg</translation>
    </message>
    <message>
        <source>× energy for maintenance at 1 kg</source>
        <translation>× Energie zur Erhaltung bei 1 kg</translation>
    </message>
    <message>
        <source>× energy of free life at 1 kg</source>
        <translation>× Energie des freien Lebens bei 1 kg</translation>
    </message>
    <message>
        <source>life stage</source>
        <translation>Lebensabschnitt</translation>
    </message>
    <message>
        <source>activity</source>
        <translation>Aktivität</translation>
    </message>
    <message>
        <source>season</source>
        <translation>Jahreszeit</translation>
    </message>
    <message>
        <source>aim for condition</source>
        <translation>angestrebte Kondition</translation>
    </message>
    <message>
        <source>house factor</source>
        <translation>Hausfaktor</translation>
    </message>
    <message>
        <source>This is no feeding rate: the need of an animal without body heat of its own follows its temperature. A cool animal needs far less.</source>
        <translation>Das ist keine Fütterungsmenge: der Bedarf eines Tieres ohne eigene Körperwärme folgt seiner Temperatur. Ein kühles Tier braucht weit weniger.</translation>
    </message>
    <message>
        <source>This is what a free-living animal spends; one in human care spends less.</source>
        <translation>Das verbraucht ein frei lebendes Tier; eines in Menschenobhut verbraucht weniger.</translation>
    </message>
    <message>
        <source>This animal is outside of what the source speaks of: %1.</source>
        <translation>Dieses Tier liegt außerhalb dessen, wovon die Quelle spricht: %1.</translation>
    </message>
    <message>
        <source>another range of body mass</source>
        <translation>ein anderer Bereich der Körpermasse</translation>
    </message>
    <message>
        <source>A number here is from memory and was not looked up.</source>
        <translation>Eine Zahl hier ist aus dem Gedächtnis und wurde nicht nachgeschlagen.</translation>
    </message>
    <message>
        <source>Two factors count the same thing, or one stands on a level that holds it already.</source>
        <translation>Zwei Faktoren zählen dasselbe, oder einer steht auf einer Stufe, die ihn schon enthält.</translation>
    </message>
    <message>
        <source>%1, %2: %3 × kg^%4</source>
        <translation>%1, %2: %3 × kg^%4</translation>
    </message>
    <message>
        <source>%1, %2: × %3 of %4</source>
        <translation>%1, %2: × %3 von %4</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>Files</name>
    <message>
        <source>cannot be read: %1</source>
        <translation>nicht lesbar: %1</translation>
    </message>
    <message>
        <source>model: %1</source>
        <translation>Modell: %1</translation>
    </message>
    <message>
        <source>%1 was not saved: %2</source>
        <translation>%1 wurde nicht gespeichert: %2</translation>
    </message>
    <message>
        <source>1 animal</source>
        <translation>1 Tier</translation>
    </message>
    <message>
        <source>%1 animals</source>
        <translation>%1 Tiere</translation>
    </message>
    <message>
        <source>The collection is set up</source>
        <translation>Der Bestand ist eingerichtet</translation>
    </message>
    <message>
        <source>It is empty and open, and you may do everything in it. Nobody else may open it yet. Let each person in, in their role, with the command

tarebowl server add %1 PERSON ROLE

PERSON is their name on the server. ROLE is reader, keeper, vet, nutritionist or curator.</source>
        <translation>Er ist leer und offen, und Sie dürfen darin alles. Sonst darf ihn noch niemand öffnen. Lassen Sie jede Person in ihrer Rolle ein, mit dem Befehl

tarebowl server add %1 PERSON ROLE

PERSON ist ihr Name auf dem Server. ROLE ist reader, keeper, vet, nutritionist oder curator.</translation>
    </message>
    <message numerus="yes">
        <source>This machine&apos;s clock is %n minute(s) ahead of the server&apos;s.</source>
        <translation>
            <numerusform>Die Uhr dieses Rechners geht %n Minute vor der des Servers.</numerusform>
            <numerusform>Die Uhr dieses Rechners geht %n Minuten vor der des Servers.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>This machine&apos;s clock is %n minute(s) behind the server&apos;s.</source>
        <translation>
            <numerusform>Die Uhr dieses Rechners geht %n Minute hinter der des Servers.</numerusform>
            <numerusform>Die Uhr dieses Rechners geht %n Minuten hinter der des Servers.</numerusform>
        </translation>
    </message>
    <message>
        <source>Two clocks disagree</source>
        <translation>Zwei Uhren sind sich uneinig</translation>
    </message>
    <message>
        <source>%1 What you write is dated by the server&apos;s clock, as it is for every desk. Which day is today still goes by this machine: set its clock and open the collection again, or tell whoever runs the server.</source>
        <translation>%1 Was Sie schreiben, trägt die Zeit des Servers, wie an jedem Arbeitsplatz. Welcher Tag heute ist, richtet sich weiter nach diesem Rechner: Stellen Sie seine Uhr und öffnen Sie den Bestand neu, oder sagen Sie es dem, der den Server betreibt.</translation>
    </message>
</context>
<context>
    <name>Food</name>
    <message>
        <source>(invented)</source>
        <translation>(erfunden)</translation>
    </message>
</context>
<context>
    <name>Foods</name>
    <message>
        <source>per 100 g as fed</source>
        <translation>je 100 g Frischsubstanz</translation>
    </message>
    <message>
        <source>per kg DM</source>
        <translation>je kg TS</translation>
    </message>
    <message>
        <source>per 1000 %1 ME</source>
        <translation>je 1000 %1 ME</translation>
    </message>
    <message>
        <source>trace</source>
        <translation>Spuren</translation>
    </message>
    <message>
        <source>not detected</source>
        <translation>nicht nachgewiesen</translation>
    </message>
    <message>
        <source>(n %1)</source>
        <translation>(n %1)</translation>
    </message>
    <message>
        <source>own laboratory</source>
        <translation>eigenes Labor</translation>
    </message>
    <message>
        <source>publication</source>
        <translation>Veröffentlichung</translation>
    </message>
    <message>
        <source>label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>estimate</source>
        <translation>Schätzung</translation>
    </message>
    <message>
        <source>set by hand: %1</source>
        <translation>von Hand gesetzt: %1</translation>
    </message>
    <message>
        <source>%1 set aside</source>
        <translation>%1 zurückgestellt</translation>
    </message>
    <message>
        <source>a bound, %1</source>
        <translation>eine Grenze, %1</translation>
    </message>
    <message>
        <source>worked out from the raw food</source>
        <translation>aus dem rohen Futtermittel berechnet</translation>
    </message>
    <message>
        <source>worked out from the recipe</source>
        <translation>aus dem Rezept berechnet</translation>
    </message>
    <message>
        <source>never measured</source>
        <translation>nie gemessen</translation>
    </message>
    <message>
        <source>a bound, not a mean</source>
        <translation>eine Grenze, kein Mittel</translation>
    </message>
    <message>
        <source>own laboratory, 1 sample</source>
        <translation>eigenes Labor, 1 Probe</translation>
    </message>
    <message>
        <source>own laboratory, %1 samples</source>
        <translation>eigenes Labor, %1 Proben</translation>
    </message>
    <message>
        <source>%1, newest %2</source>
        <translation>%1, neueste %2</translation>
    </message>
    <message>
        <source>batch %1</source>
        <translation>Charge %1</translation>
    </message>
    <message>
        <source>set aside: %1</source>
        <translation>zurückgestellt: %1</translation>
    </message>
    <message>
        <source>passed over: a more trusted origin goes first</source>
        <translation>übergangen: eine verlässlichere Herkunft geht vor</translation>
    </message>
    <message>
        <source>passed over: a newer one goes first</source>
        <translation>übergangen: eine neuere geht vor</translation>
    </message>
    <message>
        <source>passed over: others have a date</source>
        <translation>übergangen: andere haben ein Datum</translation>
    </message>
    <message>
        <source>not used: the water or energy it rests on is unknown</source>
        <translation>nicht verwendet: das Wasser oder die Energie, worauf es beruht, ist unbekannt</translation>
    </message>
    <message>
        <source>not used: a guarantee is no mean</source>
        <translation>nicht verwendet: eine Garantie ist kein Mittel</translation>
    </message>
    <message>
        <source>not used: outside the range of the method</source>
        <translation>nicht verwendet: außerhalb des Bereichs des Verfahrens</translation>
    </message>
    <message>
        <source>(invented)</source>
        <translation>(erfunden)</translation>
    </message>
    <message>
        <source>%1 (invented)</source>
        <translation>%1 (erfunden)</translation>
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
        <translation>IE</translation>
    </message>
    <message>
        <source>kg as fed</source>
        <translation>kg FS</translation>
    </message>
    <message>
        <source>kg DM</source>
        <translation>kg TS</translation>
    </message>
    <message>
        <source>1000 kcal</source>
        <translation>1000 kcal</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>kg body mass</source>
        <translation>kg Körpermasse</translation>
    </message>
    <message>
        <source>kg^0.75</source>
        <translation>kg^0,75</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 am Tag</translation>
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
        <translation>Eine Ernährungsfachkraft entwirft die erste Ration einer Tierart</translation>
    </message>
    <message>
        <source>The gardens took in lowland streaked tenrecs, and nobody has designed their diet yet. Type “streaked tenrecs” into *Find an animal* and press Enter. (A species of your own is begun by *Add*.)</source>
        <translation>Der Tierpark hat Streifentenreks aufgenommen, und niemand hat ihre Ration bisher entworfen. „streaked tenrecs“ in *Tier suchen* tippen und Enter drücken. (Eine eigene Tierart beginnt mit *Anlegen*.)</translation>
    </message>
    <message>
        <source>Choose *energy need*: it is worked out step by step, and each number names its source or is the house&apos;s own. Press F1 on any of them.</source>
        <translation>*Energiebedarf* wählen: er wird Schritt für Schritt berechnet, und jede Zahl nennt ihre Quelle oder ist die des Hauses. F1 auf einer davon drücken.</translation>
    </message>
    <message>
        <source>Choose *targets*: what a diet of this group is judged by. Each says where it was stated. What comes from a model species is a starting point, not a requirement.</source>
        <translation>*Zielwerte* wählen: wonach eine Ration dieser Gruppe beurteilt wird. Jeder sagt, wo er angegeben war. Was von einer Modelltierart kommt, ist ein Anfang und keine Anforderung.</translation>
    </message>
    <message>
        <source>These targets are a draft: nobody has decided on them. Press *Put in force…*; in a real house that is the nutritionist&apos;s decision.</source>
        <translation>Diese Zielwerte sind ein Entwurf: niemand hat über sie entschieden. *In Kraft setzen…* drücken; in einem wirklichen Haus entscheidet das die Ernährungsfachkraft.</translation>
    </message>
    <message>
        <source>Say why in *Reason* and press Enter. From today on the group&apos;s diets are judged by these targets.</source>
        <translation>In *Grund* sagen, warum, und Enter drücken. Ab heute werden die Rationen der Gruppe nach diesen Zielwerten beurteilt.</translation>
    </message>
    <message>
        <source>Press *Design a diet*. It opens on the desk in Diets, empty.</source>
        <translation>*Ration entwerfen* drücken. Sie öffnet sich leer auf dem Tisch unter Rationen.</translation>
    </message>
    <message>
        <source>Type part of a food&apos;s name into *Add a food* and press Enter: “cricket”. Then add “earthworm” and “limestone” in the same way. The grams follow as foods are added.</source>
        <translation>Einen Teil eines Namens in *Futtermittel hinzufügen* tippen und Enter drücken: „cricket“. Dann ebenso „earthworm“ und „limestone“ hinzufügen. Die Gramm folgen, während Futtermittel hinzukommen.</translation>
    </message>
    <message>
        <source>Look at the *Balance ladder*, at the right: what falls short comes first. A shaded stretch is a target&apos;s zone, the mark is the diet, and what nobody measured is hatched, never counted as nothing. Choose a rung to see which food brings how much.</source>
        <translation>Rechts die *Bilanzleiter* ansehen: was zu wenig ist, kommt zuerst. Die getönte Strecke ist der Bereich eines Zielwerts, die Marke ist die Ration, und was niemand gemessen hat, ist schraffiert und zählt nie als nichts. Eine Sprosse wählen, um zu sehen, welches Futtermittel wie viel bringt.</translation>
    </message>
    <message>
        <source>Type a gram of your own into *Foods of the diet*: it is locked, and the other foods give way. Ctrl+Z takes it back. The card *Why* says what cannot hold together, and offers what would settle it.</source>
        <translation>In *Futtermittel der Ration* eigene Gramm tippen: das Futtermittel ist gesperrt, und die anderen geben nach. Strg+Z nimmt es zurück. Die Karte *Warum* sagt, was nicht zusammen gelten kann, und bietet an, was es beheben würde.</translation>
    </message>
    <message>
        <source>Press *Submit…*: the diet waits for a decision, and is not edited while it waits.</source>
        <translation>*Einreichen…* drücken: die Ration wartet auf eine Entscheidung, und solange wird nichts daran geändert.</translation>
    </message>
    <message>
        <source>Say why in *Reason* and press Enter. Whoever decides presses *Approve…*, which appears now; from then on this version never changes, and the kitchen follows it. Targets and foods are only as good as their sources: the nutritionist decides.</source>
        <translation>In *Grund* sagen, warum, und Enter drücken. Wer entscheidet, drückt *Freigeben…*, das jetzt erscheint; von da an ändert sich diese Version nie mehr, und die Küche folgt ihr. Zielwerte und Futtermittel sind nur so gut wie ihre Quellen: die Ernährungsfachkraft entscheidet.</translation>
    </message>
    <message>
        <source>A keeper checks a swap and weighs</source>
        <translation>Ein Tierpfleger prüft einen Tausch und wiegt</translation>
    </message>
    <message>
        <source>*What is due today* says which sections have bowls to prepare. A row leads to its sheet; Ctrl+5 goes to the Kitchen as well.</source>
        <translation>*Was heute zu tun ist* sagt, welche Reviere Schalen zuzubereiten haben. Eine Zeile führt zu ihrem Futterzettel; Strg+5 geht ebenfalls in die Küche.</translation>
    </message>
    <message>
        <source>Choose Reptiles and Bats in *Section*. Its bowls stand below, in *Bowls of the sheet*; the first food of the first one is on the scale.</source>
        <translation>In *Revier* Reptiles and Bats wählen. Seine Schalen stehen darunter, in *Schalen des Futterzettels*; das erste Futtermittel der ersten liegt auf der Waage.</translation>
    </message>
    <message>
        <source>Suppose this food did not come. Press *Not available* (the key * does it too).</source>
        <translation>Angenommen, dieses Futtermittel kam nicht. *Nicht vorhanden* drücken (die Taste * tut es auch).</translation>
    </message>
    <message>
        <source>*What to give instead* ranks what is on hand, the nearest first, in grams, with what it does to the balance and who must approve it. Arrows choose, Enter uses. Nothing is missing this time: *Back* (Esc) goes to the bowl again.</source>
        <translation>*Was stattdessen zu geben ist* ordnet, was vorrätig ist, das Nächste zuerst, in Gramm, mit dem, was es an der Bilanz ändert und wer es gutheißen muss. Pfeile wählen, Enter nimmt. Diesmal fehlt nichts: *Zurück* (Esc) geht wieder zur Schale.</translation>
    </message>
    <message>
        <source>Type what the scale shows into *Weight in g*. The bar says under, in or over. Enter keeps the weight, and the next food is on the scale. A doubtful one is asked about first.</source>
        <translation>Was die Waage zeigt, in *Gewicht in g* tippen. Der Balken sagt darunter, im Bereich oder darüber. Enter behält das Gewicht, und das nächste Futtermittel liegt auf der Waage. Nach einem zweifelhaften wird erst gefragt.</translation>
    </message>
    <message>
        <source>Tomorrow, *Leftovers* asks what came back of each food. What nobody weighs stays unknown.</source>
        <translation>Morgen fragt *Futterreste*, was von jedem Futtermittel zurückkam. Was niemand wiegt, bleibt unbekannt.</translation>
    </message>
    <message>
        <source>A vet reviews calcium and looks back</source>
        <translation>Ein Tierarzt prüft das Calcium und blickt zurück</translation>
    </message>
    <message>
        <source>Choose the bearded dragons in *Groups and animals*. *How far back* says how many days up to today are looked at; the feeding of the sample ends on 24 November 2026.</source>
        <translation>Die Bartagamen in *Gruppen und Tiere* wählen. *Wie weit zurück* sagt, wie viele Tage bis heute angesehen werden; die Fütterung des Beispiels endet am 24. November 2026.</translation>
    </message>
    <message>
        <source>*Calcium review* sets calcium, phosphorus, Ca:P and vitamin D as eaten against their targets, in *Calcium against its targets*. Days that nobody weighed widen the range.</source>
        <translation>*Calciumprüfung* setzt Calcium, Phosphor, Ca:P und Vitamin D, wie gefressen, gegen ihre Zielwerte, in *Calcium gegen seine Zielwerte*. Tage, die niemand gewogen hat, verbreitern die Spanne.</translation>
    </message>
    <message>
        <source>Choose one in *Supplement*: the review says the least dose that brings calcium in, and whether that stays below the safe limit. Whether it is given, the vet decides.</source>
        <translation>Eines in *Ergänzungsmittel* wählen: die Prüfung nennt die kleinste Gabe, die das Calcium in den Bereich bringt, und ob sie unter der sicheren Grenze bleibt. Ob sie gegeben wird, entscheidet der Tierarzt.</translation>
    </message>
    <message>
        <source>Now the ruffed lemurs in *Groups and animals*: their faeces were soft. In *What was seen* put the hand on a line with ▲ and press Enter.</source>
        <translation>Nun die Roten Varis in *Gruppen und Tiere*: ihr Kot war weich. In *Was gesehen wurde* die Hand auf eine Zeile mit ▲ legen und Enter drücken.</translation>
    </message>
    <message>
        <source>*Look-back* shows in *Foods and the sign* which foods were in the bowls before it, against days without it. *Hours before the sign* says how far back. It shows what goes together, not what caused what.</source>
        <translation>*Rückblick* zeigt in *Futtermittel und das Zeichen*, welche Futtermittel davor in den Schalen waren, gegen Tage ohne es. *Stunden vor dem Zeichen* sagt, wie weit zurück. Es zeigt, was zusammengeht, nicht, was was verursacht hat.</translation>
    </message>
    <message>
        <source>*Look-back for the file…* writes it as one page, to print or to keep.</source>
        <translation>*Rückblick für die Akte…* schreibt es als eine Seite, zum Drucken oder Aufheben.</translation>
    </message>
</context>
<context>
    <name>Health</name>
    <message>
        <source>the group</source>
        <translation>die Gruppe</translation>
    </message>
    <message>
        <source>%1 goes from %2 to %3, formed is %4, liquid is %5</source>
        <translation>%1 geht von %2 bis %3, geformt ist %4, flüssig ist %5</translation>
    </message>
    <message>
        <source>Written down by %1</source>
        <translation>Aufgeschrieben von %1</translation>
    </message>
    <message>
        <source>A sign: Enter looks back from it</source>
        <translation>Ein Zeichen: Enter blickt davon zurück</translation>
    </message>
    <message>
        <source>Faeces</source>
        <translation>Kot</translation>
    </message>
    <message>
        <source>Appetite</source>
        <translation>Appetit</translation>
    </message>
    <message>
        <source>Vomiting</source>
        <translation>Erbrechen</translation>
    </message>
    <message>
        <source>Limping</source>
        <translation>Lahmheit</translation>
    </message>
    <message>
        <source>Fracture</source>
        <translation>Knochenbruch</translation>
    </message>
    <message>
        <source>Blood</source>
        <translation>Blut</translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation>Behandlung</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>%1, %2: %3%4</source>
        <translation>%1, %2: %3%4</translation>
    </message>
    <message>
        <source>%1 a day and animal</source>
        <translation>%1 je Tag und Tier</translation>
    </message>
    <message>
        <source>Ca:P</source>
        <translation>Ca:P</translation>
    </message>
    <message>
        <source>▲ stands out: %1</source>
        <translation>▲ fällt auf: %1</translation>
    </message>
    <message>
        <source> (new)</source>
        <translation> (neu)</translation>
    </message>
    <message>
        <source>nothing to compare</source>
        <translation>nichts zu vergleichen</translation>
    </message>
    <message>
        <source>%1 (%2 … %3)%4</source>
        <translation>%1 (%2 … %3)%4</translation>
    </message>
    <message>
        <source> ½ added</source>
        <translation> ½ hinzugezählt</translation>
    </message>
    <message>
        <source>Always eaten together with %1: they cannot be told apart.</source>
        <translation>Immer zusammen mit %1 gefressen: sie lassen sich nicht auseinanderhalten.</translation>
    </message>
    <message>
        <source>%1 of %2 on %3</source>
        <translation>%1 von %2 am %3</translation>
    </message>
    <message>
        <source>? No intake was recorded in the hours before this sign.</source>
        <translation>? In den Stunden vor diesem Zeichen ist keine Aufnahme aufgeschrieben.</translation>
    </message>
    <message>
        <source>Fed by %1, version %2, from %3.</source>
        <translation>Gefüttert nach %1, Version %2, ab %3.</translation>
    </message>
</context>
<context>
    <name>HealthPage</name>
    <message>
        <source>%1: a page for the file is written as .pdf, .html or .json</source>
        <translation>%1: eine Seite für die Akte wird als .pdf, .html oder .json geschrieben</translation>
    </message>
</context>
<context>
    <name>Hints</name>
    <message>
        <source>Begin with foods</source>
        <translation>Mit Futtermitteln beginnen</translation>
    </message>
    <message>
        <source>Import a table of foods, or add them one by one, in the room Foods.</source>
        <translation>Im Raum „Futter“ eine Futtermitteltabelle einlesen oder Futtermittel einzeln anlegen.</translation>
    </message>
    <message>
        <source>Add a species</source>
        <translation>Eine Tierart anlegen</translation>
    </message>
    <message>
        <source>With its group, energy need and targets, in the room Animals.</source>
        <translation>Mit Gruppe, Energiebedarf und Zielwerten, im Raum „Tiere“.</translation>
    </message>
    <message>
        <source>Have a diet approved</source>
        <translation>Eine Ration freigeben lassen</translation>
    </message>
    <message>
        <source>Design a diet</source>
        <translation>Eine Ration entwerfen</translation>
    </message>
    <message>
        <source>A diet is fed once it was submitted and approved, in the room Diets.</source>
        <translation>Gefüttert wird eine Ration, wenn sie eingereicht und freigegeben ist, im Raum „Rationen“.</translation>
    </message>
    <message>
        <source>For a group that has targets, in the room Diets. Once approved, it is fed.</source>
        <translation>Für eine Gruppe mit Zielwerten, im Raum „Rationen“. Nach der Freigabe wird sie gefüttert.</translation>
    </message>
    <message>
        <source>Nothing is due yet.</source>
        <translation>Noch ist nichts zu tun.</translation>
    </message>
    <message>
        <source>Today says what the house has to do: bowls to prepare and weigh, leftovers that came back, swaps and diets that wait for a decision.</source>
        <translation>„Heute“ sagt, was das Haus zu tun hat: Schalen zubereiten und wiegen, Futterreste, die zurückkamen, und Tausche und Rationen, die auf eine Entscheidung warten.</translation>
    </message>
    <message>
        <source>No diet can be designed yet.</source>
        <translation>Noch kann keine Ration entworfen werden.</translation>
    </message>
    <message>
        <source>Diets is the design desk: foods and grams, and beside them how they stand against the targets of a group. It needs foods, and animals with targets.</source>
        <translation>„Rationen“ ist der Entwurfstisch: Futtermittel und Gramm, und daneben, wie sie zu den Zielwerten einer Gruppe stehen. Er braucht Futtermittel und Tiere mit Zielwerten.</translation>
    </message>
    <message>
        <source>There is no bowl to prepare yet.</source>
        <translation>Noch ist keine Schale zuzubereiten.</translation>
    </message>
    <message>
        <source>The Kitchen prepares what the diets in force say: a sheet for each section and day, weights typed or read from a scale, and what to give instead of a food that did not come.</source>
        <translation>Die Küche bereitet zu, was die geltenden Rationen sagen: ein Futterzettel je Revier und Tag, Gewichte getippt oder von der Waage gelesen, und was statt eines Futtermittels zu geben ist, das nicht kam.</translation>
    </message>
    <message>
        <source>Nothing was fed yet.</source>
        <translation>Noch wurde nichts gefüttert.</translation>
    </message>
    <message>
        <source>Intake shows what was really eaten: what the kitchen weighed in, less what came back, over a week or over years, against the targets.</source>
        <translation>„Aufnahme“ zeigt, was wirklich gefressen wurde: was die Küche eingewogen hat, weniger was zurückkam, über eine Woche oder über Jahre, gegen die Zielwerte.</translation>
    </message>
    <message>
        <source>There is no patient yet.</source>
        <translation>Noch ist kein Patient da.</translation>
    </message>
    <message>
        <source>Health keeps what was seen of animals, sets it beside what was eaten, reviews calcium, and looks back from a sign to the bowls before it.</source>
        <translation>„Gesundheit“ bewahrt, was an Tieren gesehen wurde, stellt es neben das Gefressene, prüft das Calcium und blickt von einem Zeichen auf die Schalen davor zurück.</translation>
    </message>
</context>
<context>
    <name>Import</name>
    <message>
        <source>1 value</source>
        <translation>1 Wert</translation>
    </message>
    <message>
        <source>%1 values</source>
        <translation>%1 Werte</translation>
    </message>
    <message>
        <source>1 food new</source>
        <translation>1 Futtermittel neu</translation>
    </message>
    <message>
        <source>%1 foods new</source>
        <translation>%1 Futtermittel neu</translation>
    </message>
    <message>
        <source>1 value new</source>
        <translation>1 Wert neu</translation>
    </message>
    <message>
        <source>%1 values new</source>
        <translation>%1 Werte neu</translation>
    </message>
    <message>
        <source>1 value changed</source>
        <translation>1 Wert geändert</translation>
    </message>
    <message>
        <source>%1 values changed</source>
        <translation>%1 Werte geändert</translation>
    </message>
    <message>
        <source>“%1” is no number</source>
        <translation>„%1“ ist keine Zahl</translation>
    </message>
    <message>
        <source>“%1” does not group its thousands by three</source>
        <translation>„%1“ gruppiert seine Tausender nicht zu dreien</translation>
    </message>
    <message>
        <source>“%1” is a formula; what it was worked out to is not in the table</source>
        <translation>„%1“ ist eine Formel; was sie ergab, steht nicht in der Tabelle</translation>
    </message>
    <message>
        <source>“%1” is a spreadsheet&apos;s error</source>
        <translation>„%1“ ist ein Fehler eines Tabellenprogramms</translation>
    </message>
    <message>
        <source>“%1” is a date; a spreadsheet made one of a number</source>
        <translation>„%1“ ist ein Datum; ein Tabellenprogramm hat aus einer Zahl eines gemacht</translation>
    </message>
    <message>
        <source>“%1” is no finite number</source>
        <translation>„%1“ ist keine endliche Zahl</translation>
    </message>
    <message>
        <source>“%1” is below 0</source>
        <translation>„%1“ liegt unter 0</translation>
    </message>
    <message>
        <source>%1 stands on line %2 already, with a record of its own</source>
        <translation>%1 steht schon in Zeile %2, mit einem eigenen Eintrag</translation>
    </message>
    <message>
        <source>a second value of %1 for %2</source>
        <translation>ein zweiter Wert von %1 für %2</translation>
    </message>
    <message>
        <source>“%1” is another value than on line %2</source>
        <translation>„%1“ ist ein anderer Wert als in Zeile %2</translation>
    </message>
    <message>
        <source>%1 changed</source>
        <translation>%1 geändert</translation>
    </message>
    <message>
        <source>%1 unchanged</source>
        <translation>%1 unverändert</translation>
    </message>
    <message>
        <source>%1 of these kept under the table&apos;s own name</source>
        <translation>%1 davon unter dem eigenen Namen der Tabelle behalten</translation>
    </message>
    <message>
        <source>%1 left out</source>
        <translation>%1 ausgelassen</translation>
    </message>
    <message>
        <source> 1 cell says that nothing is known, and stays unknown.</source>
        <translation> 1 Feld sagt, dass nichts bekannt ist, und bleibt unbekannt.</translation>
    </message>
    <message>
        <source> %1 cells say that nothing is known, and stay unknown.</source>
        <translation> %1 Felder sagen, dass nichts bekannt ist, und bleiben unbekannt.</translation>
    </message>
    <message>
        <source>new: %1</source>
        <translation>neu: %1</translation>
    </message>
    <message>
        <source>as it was: %1</source>
        <translation>wie es war: %1</translation>
    </message>
    <message>
        <source>whole line</source>
        <translation>ganze Zeile</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>%1 cells, where the header has %2</source>
        <translation>%1 Felder, wo der Kopf %2 hat</translation>
    </message>
    <message>
        <source>neither name nor code of a food</source>
        <translation>weder Name noch Kürzel eines Futtermittels</translation>
    </message>
    <message>
        <source>“%1” is no unit known here</source>
        <translation>„%1“ ist keine hier bekannte Einheit</translation>
    </message>
    <message>
        <source>“%1”: this nutrient is not measured in the column&apos;s unit</source>
        <translation>„%1“: dieser Nährstoff wird nicht in der Einheit der Spalte gemessen</translation>
    </message>
    <message>
        <source>“%1” would be more than 105 g in 100 g: is the unit right?</source>
        <translation>„%1“ wären mehr als 105 g in 100 g: stimmt die Einheit?</translation>
    </message>
    <message>
        <source>“%1” is no nutrient, qualifier, basis or number of samples</source>
        <translation>„%1“ ist weder Nährstoff noch Kennzeichen, Bezug oder Zahl der Proben</translation>
    </message>
    <message>
        <source>“%1” is no name: a formula, or longer than 500 characters</source>
        <translation>„%1“ ist kein Name: eine Formel, oder länger als 500 Zeichen</translation>
    </message>
    <message>
        <source>the list of foods has no code “%1”</source>
        <translation>die Liste der Futtermittel hat kein Kürzel „%1“</translation>
    </message>
    <message>
        <source>left out: no nutrient is called “%1” here, and its unit is none known here</source>
        <translation>ausgelassen: kein Nährstoff heißt hier „%1“, und seine Einheit ist hier unbekannt</translation>
    </message>
    <message>
        <source>kept under its own name: no nutrient is called “%1” here</source>
        <translation>unter eigenem Namen behalten: kein Nährstoff heißt hier „%1“</translation>
    </message>
    <message>
        <source>left out as the mapping says: %1</source>
        <translation>ausgelassen, wie die Zuordnung sagt: %1</translation>
    </message>
    <message>
        <source>left out: the same value stands on line %1</source>
        <translation>ausgelassen: derselbe Wert steht in Zeile %1</translation>
    </message>
    <message>
        <source>left out: “%1” has no value</source>
        <translation>ausgelassen: „%1“ hat keinen Wert</translation>
    </message>
    <message>
        <source>a standard error without n says no SD; the value is taken without it</source>
        <translation>ein Standardfehler ohne n sagt keine SD; der Wert wird ohne sie genommen</translation>
    </message>
    <message>
        <source>1 place is in the way; nothing is imported while it stands as it is. Change the mapping, leave the column out, or mend the table and open it again.</source>
        <translation>1 Stelle ist im Weg; solange sie so steht, wird nichts eingelesen. Die Zuordnung ändern, die Spalte auslassen, oder die Tabelle berichtigen und neu öffnen.</translation>
    </message>
    <message>
        <source>%1 places are in the way; nothing is imported while they stand as they are. Change the mapping, leave the column out, or mend the table and open it again.</source>
        <translation>%1 Stellen sind im Weg; solange sie so stehen, wird nichts eingelesen. Die Zuordnung ändern, die Spalte auslassen, oder die Tabelle berichtigen und neu öffnen.</translation>
    </message>
    <message>
        <source>There is no value of a food in it.</source>
        <translation>Darin ist kein Wert eines Futtermittels.</translation>
    </message>
    <message>
        <source>Importing it changes nothing: its 1 value is here already.</source>
        <translation>Einlesen ändert nichts: ihr 1 Wert ist schon hier.</translation>
    </message>
    <message>
        <source>Importing it changes nothing: all of its %1 values are here already.</source>
        <translation>Einlesen ändert nichts: alle ihre %1 Werte sind schon hier.</translation>
    </message>
    <message>
        <source>This will happen: %1.</source>
        <translation>Das wird geschehen: %1.</translation>
    </message>
    <message>
        <source>Imported: %1. Undo takes all of it back.</source>
        <translation>Eingelesen: %1. Rückgängig nimmt alles zurück.</translation>
    </message>
</context>
<context>
    <name>Intake</name>
    <message>
        <source>Intake: %1, %2</source>
        <translation>Aufnahme: %1, %2</translation>
    </message>
    <message>
        <source>%1: what is shown is written as .png, .pdf or .csv</source>
        <translation>%1: was gezeigt ist, wird als .png, .pdf oder .csv geschrieben</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Days with a bowl</source>
        <translation>Tage mit Schale</translation>
    </message>
    <message>
        <source>Days known</source>
        <translation>Bekannte Tage</translation>
    </message>
    <message>
        <source>Bowls behind it</source>
        <translation>Schalen dahinter</translation>
    </message>
    <message>
        <source>%1, offered</source>
        <translation>%1, angeboten</translation>
    </message>
    <message>
        <source>%1, eaten</source>
        <translation>%1, gefressen</translation>
    </message>
    <message>
        <source>%1, sd of eaten</source>
        <translation>%1, SD des Gefressenen</translation>
    </message>
    <message>
        <source>%1, offered g a day</source>
        <translation>%1, angeboten g am Tag</translation>
    </message>
    <message>
        <source>%1, eaten g a day</source>
        <translation>%1, gefressen g am Tag</translation>
    </message>
    <message>
        <source>%1 fell, %2</source>
        <translation>%1 ging zurück, %2</translation>
    </message>
    <message>
        <source>%1 fell %2 times more before that.</source>
        <translation>%1 ging davor noch %2-mal zurück.</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tagen</translation>
    </message>
    <message>
        <source>stretches of %1 days</source>
        <translation>Abschnitten von %1 Tagen</translation>
    </message>
    <message>
        <source>%1 as eaten was in its zone on all %2 known %3.</source>
        <translation>%1 war, wie gefressen, in allen %2 bekannten %3 im Bereich.</translation>
    </message>
    <message>
        <source>%1 as eaten was short on %2 of %3 known %4.</source>
        <translation>%1 war, wie gefressen, in %2 von %3 bekannten %4 zu wenig.</translation>
    </message>
    <message>
        <source>%1 as eaten was over on %2 of %3 known %4.</source>
        <translation>%1 war, wie gefressen, in %2 von %3 bekannten %4 zu viel.</translation>
    </message>
    <message>
        <source>%1, %2: %3 g more was left than offered. Look at the entry.</source>
        <translation>%1, %2: %3 g mehr übrig als angeboten. Den Eintrag ansehen.</translation>
    </message>
    <message>
        <source>%1 leftovers were not weighed: their days are missing, not zero.</source>
        <translation>%1 Futterreste wurden nicht gewogen: ihre Tage fehlen und sind nicht null.</translation>
    </message>
    <message>
        <source>%1 leftovers had no control pan near: what was eaten is not known, at most what is gone.</source>
        <translation>%1 Futterreste hatten keine Kontrollschale in der Nähe: was gefressen wurde, ist nicht bekannt, höchstens, was weg ist.</translation>
    </message>
    <message>
        <source>%1 leftovers are corrected by pans of other days.</source>
        <translation>%1 Futterreste sind durch Kontrollschalen anderer Tage berichtigt.</translation>
    </message>
    <message>
        <source>%1 foods lie in a mixed remainder whose parts nobody estimated.</source>
        <translation>%1 Futtermittel liegen in einem Gemisch, dessen Teile niemand geschätzt hat.</translation>
    </message>
    <message>
        <source>%1 times food was spilled or stolen and nobody could say how much.</source>
        <translation>%1-mal wurde Futter verschüttet oder gestohlen, und niemand konnte sagen, wie viel.</translation>
    </message>
    <message>
        <source>%1–%2 g</source>
        <translation>%1–%2 g</translation>
    </message>
    <message>
        <source>1 bowl</source>
        <translation>1 Schale</translation>
    </message>
    <message>
        <source>%1 bowls</source>
        <translation>%1 Schalen</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1 · no bowl: missing, not zero</source>
        <translation>%1 · keine Schale: fehlt, ist nicht null</translation>
    </message>
    <message>
        <source>%1 · not all was weighed: missing, not zero</source>
        <translation>%1 · nicht alles wurde gewogen: fehlt, ist nicht null</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2 of %3 days known (%4)</source>
        <translation>%1 · %2 von %3 Tagen bekannt (%4)</translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <translation>%1 (%2–%3)</translation>
    </message>
    <message>
        <source>%1: down to %2, %3 below the usual %4 (median of %5 known days)</source>
        <translation>%1: herunter auf %2, %3 unter den üblichen %4 (Median von %5 bekannten Tagen)</translation>
    </message>
    <message>
        <source>A drop: more than %1 robust standard deviations, and at least %2, below the median of the %3 days before, of which %4 must be known (house rule).</source>
        <translation>Ein Rückgang: mehr als %1 robuste Standardabweichungen, und mindestens %2, unter dem Median der %3 Tage davor, von denen %4 bekannt sein müssen (Hausregel).</translation>
    </message>
    <message>
        <source>No bowl of these days is written down.</source>
        <translation>Von diesen Tagen ist keine Schale aufgeschrieben.</translation>
    </message>
    <message>
        <source>On %1 of %2 days with a bowl all of it is known (%3, %4 control pans); the others are missing, not zero.</source>
        <translation>An %1 von %2 Tagen mit Schale ist alles bekannt (%3, %4 Kontrollschalen); die anderen fehlen und sind nicht null.</translation>
    </message>
    <message>
        <source>What an animal eats in all (g)</source>
        <translation>Was ein Tier insgesamt frisst (g)</translation>
    </message>
    <message>
        <source>%1: the collection has no such food; nothing is counted of it.</source>
        <translation>%1: der Bestand hat kein solches Futtermittel; davon wird nichts gezählt.</translation>
    </message>
    <message>
        <source>Nothing is known of these days.</source>
        <translation>Von diesen Tagen ist nichts bekannt.</translation>
    </message>
    <message>
        <source>One animal: %1 g a day.</source>
        <translation>Ein Tier: %1 g am Tag.</translation>
    </message>
    <message>
        <source>A shared bowl does not say who ate what. Of %1 g a day, %2 g each by equal share</source>
        <translation>Eine gemeinsame Schale sagt nicht, wer was fraß. Von %1 g am Tag je %2 g bei gleichem Anteil</translation>
    </message>
    <message>
        <source>, %1 by body mass, %2 by metabolic mass</source>
        <translation>, %1 nach Körpermasse, %2 nach Stoffwechselmasse</translation>
    </message>
    <message>
        <source>; nobody can have had more than the %1 g.</source>
        <translation>; niemand kann mehr als die %1 g gehabt haben.</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Futtermittel</translation>
    </message>
    <message>
        <source>Offered g</source>
        <translation>Angeboten g</translation>
    </message>
    <message>
        <source>Eaten g</source>
        <translation>Gefressen g</translation>
    </message>
    <message>
        <source>Eaten</source>
        <translation>Gefressen</translation>
    </message>
    <message>
        <source>Bowls</source>
        <translation>Schalen</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>Picked first</source>
        <translation>Zuerst genommen</translation>
    </message>
    <message>
        <source>Picked first: Manly&apos;s alpha with its 95 % interval, from the last stretch in which it could be compared</source>
        <translation>Zuerst genommen: Manlys Alpha mit seinem 95-%-Intervall, aus dem letzten Abschnitt, in dem es zu vergleichen war</translation>
    </message>
    <message>
        <source>%1 others</source>
        <translation>%1 andere</translation>
    </message>
</context>
<context>
    <name>Kitchen</name>
    <message>
        <source>Weight in g</source>
        <translation>Gewicht in g</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>%1 by %2 at %3</source>
        <translation>%1 von %2 um %3</translation>
    </message>
    <message>
        <source> (written a second time; does not count)</source>
        <translation> (ein zweites Mal aufgeschrieben; zählt nicht)</translation>
    </message>
    <message>
        <source>%1 (not in the collection)</source>
        <translation>%1 (nicht im Bestand)</translation>
    </message>
    <message>
        <source>%1 (not in stock)</source>
        <translation>%1 (nicht vorrätig)</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) (%1)</source>
        <translation>
            <numerusform>%n Stück (%1)</numerusform>
            <numerusform>%n Stück (%1)</numerusform>
        </translation>
    </message>
    <message>
        <source>1 animal</source>
        <translation>1 Tier</translation>
    </message>
    <message>
        <source>%1 animals</source>
        <translation>%1 Tiere</translation>
    </message>
    <message>
        <source> · %1 g in all</source>
        <translation> · %1 g zusammen</translation>
    </message>
    <message>
        <source> · day %1 of %2 of a new diet</source>
        <translation> · Tag %1 von %2 einer neuen Ration</translation>
    </message>
    <message>
        <source>all weighed</source>
        <translation>alles gewogen</translation>
    </message>
    <message>
        <source>%1 of %2 weighed</source>
        <translation>%1 von %2 gewogen</translation>
    </message>
    <message>
        <source>in</source>
        <translation>im Bereich</translation>
    </message>
    <message>
        <source>under</source>
        <translation>darunter</translation>
    </message>
    <message>
        <source>over</source>
        <translation>darüber</translation>
    </message>
    <message>
        <source>Less than nothing: tare the empty bowl and weigh again.</source>
        <translation>Weniger als nichts: die leere Schale tarieren und noch einmal wiegen.</translation>
    </message>
    <message>
        <source>About ten times the plan: is the decimal point right?</source>
        <translation>Etwa das Zehnfache des Plans: sitzt das Komma richtig?</translation>
    </message>
    <message>
        <source>About a tenth of the plan: is the decimal point right?</source>
        <translation>Etwa ein Zehntel des Plans: sitzt das Komma richtig?</translation>
    </message>
    <message>
        <source>About the plan in ounces: set the scale to grams.</source>
        <translation>Etwa der Plan in Unzen: die Waage auf Gramm stellen.</translation>
    </message>
    <message>
        <source>Under the plan by more than the tolerance.</source>
        <translation>Um mehr als die Toleranz unter dem Plan.</translation>
    </message>
    <message>
        <source>Over the plan by more than the tolerance.</source>
        <translation>Um mehr als die Toleranz über dem Plan.</translation>
    </message>
    <message>
        <source>The bowl before weighed just the same a moment ago: is this another bowl?</source>
        <translation>Die Schale davor wog eben genau dasselbe: ist das eine andere Schale?</translation>
    </message>
    <message>
        <source>An earlier weight is later than now: is this machine&apos;s clock right?</source>
        <translation>Ein früheres Gewicht liegt später als jetzt: geht die Uhr dieses Rechners richtig?</translation>
    </message>
    <message>
        <source>This sheet is of a day to come.</source>
        <translation>Dieser Zettel gilt für einen kommenden Tag.</translation>
    </message>
    <message>
        <source>Enter again keeps it as it is.</source>
        <translation>Noch einmal Enter behält es, wie es ist.</translation>
    </message>
    <message>
        <source>; before that </source>
        <translation>; davor </translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 übrig</translation>
    </message>
    <message>
        <source>%1 lost</source>
        <translation>%1 verloren</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>all eaten</source>
        <translation>alles gefressen</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation>nicht gewogen</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>spilled</source>
        <translation>verschüttet</translation>
    </message>
    <message>
        <source>stolen</source>
        <translation>gestohlen</translation>
    </message>
    <message>
        <source>%1: no diet is in force</source>
        <translation>%1: keine Ration gilt</translation>
    </message>
    <message>
        <source>%1: nobody knows how many animals it has</source>
        <translation>%1: niemand weiß, wie viele Tiere sie hat</translation>
    </message>
    <message>
        <source>%1: no animal on this day</source>
        <translation>%1: an diesem Tag kein Tier</translation>
    </message>
    <message>
        <source>%1: nothing is planned for this day</source>
        <translation>%1: für diesen Tag ist nichts geplant</translation>
    </message>
    <message>
        <source>Without weighing: %1 … %2 g %3 each%4</source>
        <translation>Ohne Wiegen: %1 … %2 g %3 je Tier%4</translation>
    </message>
    <message>
        <source>raw: %1 g %2</source>
        <translation>roh: %1 g %2</translation>
    </message>
    <message>
        <source>? raw amount unknown: no cooking yield</source>
        <translation>? rohe Menge unbekannt: keine Ausbeute beim Garen</translation>
    </message>
    <message>
        <source>%1 g as bought</source>
        <translation>%1 g wie eingekauft</translation>
    </message>
    <message>
        <source>Gloves on; washed hands are not enough.</source>
        <translation>Handschuhe an; gewaschene Hände genügen nicht.</translation>
    </message>
    <message>
        <source>One bowl, one animal or group, with its label.</source>
        <translation>Eine Schale, ein Tier oder eine Gruppe, mit ihrem Schild.</translation>
    </message>
    <message>
        <source>Bowls and tools stay in their section.</source>
        <translation>Schalen und Geräte bleiben in ihrem Revier.</translation>
    </message>
    <message>
        <source>Leftovers never come back here: weigh them where dirty bowls go.</source>
        <translation>Futterreste kommen nie hierher zurück: dort wiegen, wo schmutzige Schalen hinkommen.</translation>
    </message>
</context>
<context>
    <name>KitchenExport</name>
    <message>
        <source>%1: a sheet of the kitchen is written as .pdf or .html</source>
        <translation>%1: ein Zettel der Küche wird als .pdf oder .html geschrieben</translation>
    </message>
</context>
<context>
    <name>Life</name>
    <message>
        <source>%1 on %2</source>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>%1 on %2 by %3</source>
        <translation>%1 am %2 von %3</translation>
    </message>
    <message>
        <source>sent back on %1</source>
        <translation>zurückgegeben am %1</translation>
    </message>
    <message>
        <source>sent back on %1 by %2</source>
        <translation>zurückgegeben am %1 von %2</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>Entwurf</translation>
    </message>
    <message>
        <source>submitted</source>
        <translation>eingereicht</translation>
    </message>
    <message>
        <source>approved</source>
        <translation>freigegeben</translation>
    </message>
    <message>
        <source>retired</source>
        <translation>zurückgezogen</translation>
    </message>
    <message>
        <source>begun from version %1</source>
        <translation>begonnen aus Version %1</translation>
    </message>
    <message numerus="yes">
        <source>fed from %1, phased in over %n days</source>
        <translation>
            <numerusform>gefüttert ab %1, Umstellung über %n Tag</numerusform>
            <numerusform>gefüttert ab %1, Umstellung über %n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>fed from %1</source>
        <translation>gefüttert ab %1</translation>
    </message>
    <message>
        <source>bowl</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>treat</source>
        <translation>Leckerbissen</translation>
    </message>
    <message>
        <source>training reward</source>
        <translation>Trainingsbelohnung</translation>
    </message>
    <message>
        <source>enrichment</source>
        <translation>Beschäftigung</translation>
    </message>
    <message>
        <source>browse</source>
        <translation>Laub und Zweige</translation>
    </message>
</context>
<context>
    <name>Numbers</name>
    <message>
        <source>“%1” may mean %2 or %3: type one of these, for nothing sets thousands apart here.</source>
        <translation>„%1“ kann %2 oder %3 heißen: eines davon tippen, denn Tausender werden hier nicht abgetrennt.</translation>
    </message>
    <message>
        <source>“%1” sets thousands apart: type it without, %2.</source>
        <translation>„%1“ trennt Tausender ab: ohne Trennzeichen tippen, %2.</translation>
    </message>
</context>
<context>
    <name>Nutrients</name>
    <message>
        <source>small</source>
        <comment>Translate as “small” where a noun begins with a small letter within a sentence</comment>
        <translation>groß</translation>
    </message>
    <message>
        <source>Metabolizable energy</source>
        <translation>Umsetzbare Energie</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Crude protein</source>
        <translation>Rohprotein</translation>
    </message>
    <message>
        <source>Crude fat</source>
        <translation>Rohfett</translation>
    </message>
    <message>
        <source>Crude ash</source>
        <translation>Rohasche</translation>
    </message>
    <message>
        <source>Carbohydrate by difference</source>
        <translation>Kohlenhydrate als Differenz</translation>
    </message>
    <message>
        <source>Nitrogen, total</source>
        <translation>Stickstoff, gesamt</translation>
    </message>
    <message>
        <source>Alcohol</source>
        <translation>Alkohol</translation>
    </message>
    <message>
        <source>Crude fibre</source>
        <translation>Rohfaser</translation>
    </message>
    <message>
        <source>Total dietary fibre</source>
        <translation>Gesamtballaststoffe</translation>
    </message>
    <message>
        <source>Neutral detergent fibre</source>
        <translation>Neutral-Detergenzien-Faser</translation>
    </message>
    <message>
        <source>Acid detergent fibre</source>
        <translation>Säure-Detergenzien-Faser</translation>
    </message>
    <message>
        <source>Lignin</source>
        <translation>Lignin</translation>
    </message>
    <message>
        <source>Insoluble dietary fibre</source>
        <translation>Unlösliche Ballaststoffe</translation>
    </message>
    <message>
        <source>Soluble dietary fibre</source>
        <translation>Lösliche Ballaststoffe</translation>
    </message>
    <message>
        <source>Available carbohydrate</source>
        <translation>Verfügbare Kohlenhydrate</translation>
    </message>
    <message>
        <source>Starch</source>
        <translation>Stärke</translation>
    </message>
    <message>
        <source>Sugars, total</source>
        <translation>Zucker, gesamt</translation>
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
        <translation>Phosphor</translation>
    </message>
    <message>
        <source>Magnesium</source>
        <translation>Magnesium</translation>
    </message>
    <message>
        <source>Potassium</source>
        <translation>Kalium</translation>
    </message>
    <message>
        <source>Sodium</source>
        <translation>Natrium</translation>
    </message>
    <message>
        <source>Chloride</source>
        <translation>Chlorid</translation>
    </message>
    <message>
        <source>Sulphur</source>
        <translation>Schwefel</translation>
    </message>
    <message>
        <source>Iron</source>
        <translation>Eisen</translation>
    </message>
    <message>
        <source>Zinc</source>
        <translation>Zink</translation>
    </message>
    <message>
        <source>Copper</source>
        <translation>Kupfer</translation>
    </message>
    <message>
        <source>Manganese</source>
        <translation>Mangan</translation>
    </message>
    <message>
        <source>Selenium</source>
        <translation>Selen</translation>
    </message>
    <message>
        <source>Iodine</source>
        <translation>Jod</translation>
    </message>
    <message>
        <source>Chromium</source>
        <translation>Chrom</translation>
    </message>
    <message>
        <source>Cobalt</source>
        <translation>Kobalt</translation>
    </message>
    <message>
        <source>Molybdenum</source>
        <translation>Molybdän</translation>
    </message>
    <message>
        <source>Fluoride</source>
        <translation>Fluorid</translation>
    </message>
    <message>
        <source>Vitamin A, retinol activity equivalents</source>
        <translation>Vitamin A, Retinol-Aktivitätsäquivalente</translation>
    </message>
    <message>
        <source>Retinol</source>
        <translation>Retinol</translation>
    </message>
    <message>
        <source>Beta-carotene</source>
        <translation>Beta-Carotin</translation>
    </message>
    <message>
        <source>Alpha-carotene</source>
        <translation>Alpha-Carotin</translation>
    </message>
    <message>
        <source>Beta-cryptoxanthin</source>
        <translation>Beta-Cryptoxanthin</translation>
    </message>
    <message>
        <source>Vitamin D</source>
        <translation>Vitamin D</translation>
    </message>
    <message>
        <source>Vitamin D2, ergocalciferol</source>
        <translation>Vitamin D2, Ergocalciferol</translation>
    </message>
    <message>
        <source>Vitamin D3, cholecalciferol</source>
        <translation>Vitamin D3, Cholecalciferol</translation>
    </message>
    <message>
        <source>Vitamin E, alpha-tocopherol</source>
        <translation>Vitamin E, Alpha-Tocopherol</translation>
    </message>
    <message>
        <source>Vitamin K</source>
        <translation>Vitamin K</translation>
    </message>
    <message>
        <source>Vitamin C</source>
        <translation>Vitamin C</translation>
    </message>
    <message>
        <source>Thiamin</source>
        <translation>Thiamin</translation>
    </message>
    <message>
        <source>Riboflavin</source>
        <translation>Riboflavin</translation>
    </message>
    <message>
        <source>Niacin</source>
        <translation>Niacin</translation>
    </message>
    <message>
        <source>Pantothenic acid</source>
        <translation>Pantothensäure</translation>
    </message>
    <message>
        <source>Vitamin B6</source>
        <translation>Vitamin B6</translation>
    </message>
    <message>
        <source>Biotin</source>
        <translation>Biotin</translation>
    </message>
    <message>
        <source>Folate, total</source>
        <translation>Folat, gesamt</translation>
    </message>
    <message>
        <source>Vitamin B12</source>
        <translation>Vitamin B12</translation>
    </message>
    <message>
        <source>Choline</source>
        <translation>Cholin</translation>
    </message>
    <message>
        <source>Arginine</source>
        <translation>Arginin</translation>
    </message>
    <message>
        <source>Histidine</source>
        <translation>Histidin</translation>
    </message>
    <message>
        <source>Isoleucine</source>
        <translation>Isoleucin</translation>
    </message>
    <message>
        <source>Leucine</source>
        <translation>Leucin</translation>
    </message>
    <message>
        <source>Lysine</source>
        <translation>Lysin</translation>
    </message>
    <message>
        <source>Methionine</source>
        <translation>Methionin</translation>
    </message>
    <message>
        <source>Cystine</source>
        <translation>Cystin</translation>
    </message>
    <message>
        <source>Phenylalanine</source>
        <translation>Phenylalanin</translation>
    </message>
    <message>
        <source>Tyrosine</source>
        <translation>Tyrosin</translation>
    </message>
    <message>
        <source>Threonine</source>
        <translation>Threonin</translation>
    </message>
    <message>
        <source>Tryptophan</source>
        <translation>Tryptophan</translation>
    </message>
    <message>
        <source>Valine</source>
        <translation>Valin</translation>
    </message>
    <message>
        <source>Alanine</source>
        <translation>Alanin</translation>
    </message>
    <message>
        <source>Aspartic acid</source>
        <translation>Asparaginsäure</translation>
    </message>
    <message>
        <source>Glutamic acid</source>
        <translation>Glutaminsäure</translation>
    </message>
    <message>
        <source>Glycine</source>
        <translation>Glycin</translation>
    </message>
    <message>
        <source>Proline</source>
        <translation>Prolin</translation>
    </message>
    <message>
        <source>Serine</source>
        <translation>Serin</translation>
    </message>
    <message>
        <source>Taurine</source>
        <translation>Taurin</translation>
    </message>
    <message>
        <source>Saturated fatty acids</source>
        <translation>Gesättigte Fettsäuren</translation>
    </message>
    <message>
        <source>Monounsaturated fatty acids</source>
        <translation>Einfach ungesättigte Fettsäuren</translation>
    </message>
    <message>
        <source>Polyunsaturated fatty acids</source>
        <translation>Mehrfach ungesättigte Fettsäuren</translation>
    </message>
    <message>
        <source>n-3 fatty acids, total</source>
        <translation>n-3-Fettsäuren, gesamt</translation>
    </message>
    <message>
        <source>n-6 fatty acids, total</source>
        <translation>n-6-Fettsäuren, gesamt</translation>
    </message>
    <message>
        <source>Linoleic acid</source>
        <translation>Linolsäure</translation>
    </message>
    <message>
        <source>Alpha-linolenic acid</source>
        <translation>Alpha-Linolensäure</translation>
    </message>
    <message>
        <source>Arachidonic acid</source>
        <translation>Arachidonsäure</translation>
    </message>
    <message>
        <source>Eicosapentaenoic acid</source>
        <translation>Eicosapentaensäure</translation>
    </message>
    <message>
        <source>Docosapentaenoic acid</source>
        <translation>Docosapentaensäure</translation>
    </message>
    <message>
        <source>Docosahexaenoic acid</source>
        <translation>Docosahexaensäure</translation>
    </message>
    <message>
        <source>Cholesterol</source>
        <translation>Cholesterin</translation>
    </message>
    <message>
        <source>Oxalic acid</source>
        <translation>Oxalsäure</translation>
    </message>
    <message>
        <source>Phytic acid</source>
        <translation>Phytinsäure</translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation>Koffein</translation>
    </message>
    <message>
        <source>Theobromine</source>
        <translation>Theobromin</translation>
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
        <translation>Lycopin</translation>
    </message>
    <message>
        <source>Lutein and zeaxanthin</source>
        <translation>Lutein und Zeaxanthin</translation>
    </message>
    <message>
        <source>Tocopherol, beta</source>
        <translation>Beta-Tocopherol</translation>
    </message>
    <message>
        <source>Tocopherol, gamma</source>
        <translation>Gamma-Tocopherol</translation>
    </message>
    <message>
        <source>Tocopherol, delta</source>
        <translation>Delta-Tocopherol</translation>
    </message>
    <message>
        <source>Tocotrienol, alpha</source>
        <translation>Alpha-Tocotrienol</translation>
    </message>
    <message>
        <source>Tocotrienol, beta</source>
        <translation>Beta-Tocotrienol</translation>
    </message>
    <message>
        <source>Tocotrienol, gamma</source>
        <translation>Gamma-Tocotrienol</translation>
    </message>
    <message>
        <source>Tocotrienol, delta</source>
        <translation>Delta-Tocotrienol</translation>
    </message>
    <message>
        <source>Menaquinone-4</source>
        <translation>Menachinon-4</translation>
    </message>
    <message>
        <source>Dihydrophylloquinone</source>
        <translation>Dihydrophyllochinon</translation>
    </message>
    <message>
        <source>Folic acid, added</source>
        <translation>Folsäure, zugesetzt</translation>
    </message>
    <message>
        <source>Folate, natural</source>
        <translation>Folat, natürlich</translation>
    </message>
    <message>
        <source>Folate equivalents (DFE)</source>
        <translation>Folatäquivalente (DFE)</translation>
    </message>
    <message>
        <source>Betaine</source>
        <translation>Betain</translation>
    </message>
    <message>
        <source>Hydroxyproline</source>
        <translation>Hydroxyprolin</translation>
    </message>
    <message>
        <source>Fatty acids, trans</source>
        <translation>Trans-Fettsäuren</translation>
    </message>
    <message>
        <source>Fatty acid 4:0 (butyric)</source>
        <translation>Fettsäure 4:0 (Buttersäure)</translation>
    </message>
    <message>
        <source>Fatty acid 6:0 (caproic)</source>
        <translation>Fettsäure 6:0 (Capronsäure)</translation>
    </message>
    <message>
        <source>Fatty acid 8:0 (caprylic)</source>
        <translation>Fettsäure 8:0 (Caprylsäure)</translation>
    </message>
    <message>
        <source>Fatty acid 10:0 (capric)</source>
        <translation>Fettsäure 10:0 (Caprinsäure)</translation>
    </message>
    <message>
        <source>Fatty acid 12:0 (lauric)</source>
        <translation>Fettsäure 12:0 (Laurinsäure)</translation>
    </message>
    <message>
        <source>Fatty acid 14:0 (myristic)</source>
        <translation>Fettsäure 14:0 (Myristinsäure)</translation>
    </message>
    <message>
        <source>Fatty acid 16:0 (palmitic)</source>
        <translation>Fettsäure 16:0 (Palmitinsäure)</translation>
    </message>
    <message>
        <source>Fatty acid 18:0 (stearic)</source>
        <translation>Fettsäure 18:0 (Stearinsäure)</translation>
    </message>
    <message>
        <source>Fatty acid 20:0 (arachidic)</source>
        <translation>Fettsäure 20:0 (Arachinsäure)</translation>
    </message>
    <message>
        <source>Fatty acid 18:1 undifferentiated</source>
        <translation>Fettsäure 18:1, nicht aufgetrennt</translation>
    </message>
    <message>
        <source>Fatty acid 18:2 undifferentiated</source>
        <translation>Fettsäure 18:2, nicht aufgetrennt</translation>
    </message>
    <message>
        <source>Fatty acid 18:3 undifferentiated</source>
        <translation>Fettsäure 18:3, nicht aufgetrennt</translation>
    </message>
    <message>
        <source>Fatty acid 20:4 undifferentiated</source>
        <translation>Fettsäure 20:4, nicht aufgetrennt</translation>
    </message>
    <message>
        <source>Fatty acid 22:0 (behenic)</source>
        <translation>Fettsäure 22:0 (Behensäure)</translation>
    </message>
    <message>
        <source>Fatty acid 14:1 (myristoleic)</source>
        <translation>Fettsäure 14:1 (Myristoleinsäure)</translation>
    </message>
    <message>
        <source>Fatty acid 16:1 undifferentiated</source>
        <translation>Fettsäure 16:1, nicht aufgetrennt</translation>
    </message>
    <message>
        <source>Fatty acid 18:4</source>
        <translation>Fettsäure 18:4</translation>
    </message>
    <message>
        <source>Fatty acid 20:1</source>
        <translation>Fettsäure 20:1</translation>
    </message>
    <message>
        <source>Fatty acid 22:1 undifferentiated</source>
        <translation>Fettsäure 22:1, nicht aufgetrennt</translation>
    </message>
    <message>
        <source>Phytosterols</source>
        <translation>Phytosterine</translation>
    </message>
    <message>
        <source>Stigmasterol</source>
        <translation>Stigmasterin</translation>
    </message>
    <message>
        <source>Campesterol</source>
        <translation>Campesterin</translation>
    </message>
    <message>
        <source>Beta-sitosterol</source>
        <translation>Beta-Sitosterin</translation>
    </message>
    <message>
        <source>Fatty acid 15:0 (pentadecanoic)</source>
        <translation>Fettsäure 15:0 (Pentadecansäure)</translation>
    </message>
    <message>
        <source>Fatty acid 17:0 (margaric)</source>
        <translation>Fettsäure 17:0 (Margarinsäure)</translation>
    </message>
    <message>
        <source>Fatty acid 24:0 (lignoceric)</source>
        <translation>Fettsäure 24:0 (Lignocerinsäure)</translation>
    </message>
    <message>
        <source>Fatty acid 16:1 t</source>
        <translation>Fettsäure 16:1 t</translation>
    </message>
    <message>
        <source>Fatty acid 18:1 t</source>
        <translation>Fettsäure 18:1 t</translation>
    </message>
    <message>
        <source>Fatty acid 22:1 t</source>
        <translation>Fettsäure 22:1 t</translation>
    </message>
    <message>
        <source>Fatty acid 18:2 t,t</source>
        <translation>Fettsäure 18:2 t,t</translation>
    </message>
    <message>
        <source>Fatty acid 18:2 CLAs</source>
        <translation>Fettsäure 18:2 CLA</translation>
    </message>
    <message>
        <source>Fatty acid 24:1 c</source>
        <translation>Fettsäure 24:1 c</translation>
    </message>
    <message>
        <source>Fatty acid 20:2 n-6 c,c</source>
        <translation>Fettsäure 20:2 n-6 c,c</translation>
    </message>
    <message>
        <source>Fatty acid 16:1 c</source>
        <translation>Fettsäure 16:1 c</translation>
    </message>
    <message>
        <source>Fatty acid 18:1 c</source>
        <translation>Fettsäure 18:1 c</translation>
    </message>
    <message>
        <source>Fatty acid 22:1 c</source>
        <translation>Fettsäure 22:1 c</translation>
    </message>
    <message>
        <source>Fatty acid 18:3 n-6 c,c,c</source>
        <translation>Fettsäure 18:3 n-6 c,c,c</translation>
    </message>
    <message>
        <source>Fatty acid 17:1</source>
        <translation>Fettsäure 17:1</translation>
    </message>
    <message>
        <source>Fatty acid 20:3 undifferentiated</source>
        <translation>Fettsäure 20:3, nicht aufgetrennt</translation>
    </message>
    <message>
        <source>Fatty acids, trans, one double bond</source>
        <translation>Trans-Fettsäuren, eine Doppelbindung</translation>
    </message>
    <message>
        <source>Fatty acids, trans, several double bonds</source>
        <translation>Trans-Fettsäuren, mehrere Doppelbindungen</translation>
    </message>
    <message>
        <source>Fatty acid 13:0 (tridecanoic)</source>
        <translation>Fettsäure 13:0 (Tridecansäure)</translation>
    </message>
    <message>
        <source>Fatty acid 15:1</source>
        <translation>Fettsäure 15:1</translation>
    </message>
    <message>
        <source>Fatty acid 20:3 n-3</source>
        <translation>Fettsäure 20:3 n-3</translation>
    </message>
    <message>
        <source>Fatty acid 20:3 n-6</source>
        <translation>Fettsäure 20:3 n-6</translation>
    </message>
    <message>
        <source>Fatty acid 21:5</source>
        <translation>Fettsäure 21:5</translation>
    </message>
    <message>
        <source>Fatty acid 22:4</source>
        <translation>Fettsäure 22:4</translation>
    </message>
    <message>
        <source>Fatty acid 18:1-11 t (18:1t n-7)</source>
        <translation>Fettsäure 18:1-11 t (18:1t n-7)</translation>
    </message>
    <message>
        <source>Methionine and cystine</source>
        <translation>Methionin und Cystin</translation>
    </message>
    <message>
        <source>Phenylalanine and tyrosine</source>
        <translation>Phenylalanin und Tyrosin</translation>
    </message>
    <message>
        <source>EPA and DHA</source>
        <translation>EPA und DHA</translation>
    </message>
    <message>
        <source>Phosphorus, non-phytate</source>
        <translation>Nicht-Phytat-Phosphor</translation>
    </message>
</context>
<context>
    <name>Origin</name>
    <message>
        <source>■ seen</source>
        <translation>■ gesehen</translation>
    </message>
    <message>
        <source>○ from memory</source>
        <translation>○ aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>◆ house rule</source>
        <translation>◆ Hausregel</translation>
    </message>
    <message>
        <source>▲ invented</source>
        <translation>▲ erfunden</translation>
    </message>
    <message>
        <source>□ worked out</source>
        <translation>□ berechnet</translation>
    </message>
    <message>
        <source>? not stated</source>
        <translation>? nicht angegeben</translation>
    </message>
    <message>
        <source>recalled, not looked up</source>
        <translation>erinnert, nicht nachgeschlagen</translation>
    </message>
    <message>
        <source>recalled, not looked up: said to be %1</source>
        <translation>erinnert, nicht nachgeschlagen: soll %1 sein</translation>
    </message>
    <message>
        <source>the house&apos;s own rule</source>
        <translation>die eigene Regel des Hauses</translation>
    </message>
    <message>
        <source>the house: %1</source>
        <translation>das Haus: %1</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>erfunden</translation>
    </message>
    <message>
        <source>invented: %1</source>
        <translation>erfunden: %1</translation>
    </message>
    <message>
        <source>worked out from: %1</source>
        <translation>berechnet aus: %1</translation>
    </message>
    <message>
        <source>no source stated</source>
        <translation>keine Quelle angegeben</translation>
    </message>
</context>
<context>
    <name>Pages</name>
    <message>
        <source>Draft</source>
        <translation>Entwurf</translation>
    </message>
    <message>
        <source>Submitted</source>
        <translation>Vorgelegt</translation>
    </message>
    <message>
        <source>Approved</source>
        <translation>Genehmigt</translation>
    </message>
    <message>
        <source>Retired</source>
        <translation>Abgelöst</translation>
    </message>
    <message>
        <source>{} by {} on {}</source>
        <translation>{} von {} am {}</translation>
    </message>
    <message>
        <source>Not for feeding.</source>
        <translation>Nicht zum Verfüttern.</translation>
    </message>
    <message>
        <source>Fed from {}.</source>
        <translation>Gefüttert ab {}.</translation>
    </message>
    <message>
        <source>Fed from {}, phased in over {} day.</source>
        <translation>Gefüttert ab {}, umgestellt über {} Tag.</translation>
    </message>
    <message>
        <source>Fed from {}, phased in over {} days.</source>
        <translation>Gefüttert ab {}, umgestellt über {} Tage.</translation>
    </message>
    <message>
        <source>{} of {} kg</source>
        <translation>{} zu {} kg</translation>
    </message>
    <message>
        <source>{} kcal ME ({}) per animal and day</source>
        <translation>{} kcal ME ({}) je Tier und Tag</translation>
    </message>
    <message>
        <source>; cost ?</source>
        <translation>; Kosten ?</translation>
    </message>
    <message>
        <source>; cost {} per animal, {} for {}</source>
        <translation>; Kosten {} je Tier, {} für {}</translation>
    </message>
    <message>
        <source>(without {} food that has no price)</source>
        <translation>(ohne {} Futtermittel, das keinen Preis hat)</translation>
    </message>
    <message>
        <source>(without {} foods that have no price)</source>
        <translation>(ohne {} Futtermittel, die keinen Preis haben)</translation>
    </message>
    <message>
        <source>Set otherwise than the targets say: {}.</source>
        <translation>Anders gesetzt, als die Zielwerte sagen: {}.</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>ohne Grund</translation>
    </message>
    <message>
        <source>? Not judged: {}.</source>
        <translation>? Nicht beurteilt: {}.</translation>
    </message>
    <message>
        <source>of no food is it known</source>
        <translation>von keinem Futtermittel bekannt</translation>
    </message>
    <message>
        <source>no food is of its group</source>
        <translation>kein Futtermittel gehört zu dieser Gruppe</translation>
    </message>
    <message>
        <source>the body mass is not known</source>
        <translation>die Körpermasse ist nicht bekannt</translation>
    </message>
    <message>
        <source>the need of an animal without body heat of its own is no feeding rate; state a target in its profile</source>
        <translation>der Bedarf eines Tieres ohne eigene Körperwärme ist keine Futtermenge; ein Zielwert gehört in sein Profil</translation>
    </message>
    <message>
        <source>it does not say of how dry a feed it speaks</source>
        <translation>es ist nicht gesagt, wie trocken das Futter dafür ist</translation>
    </message>
    <message>
        <source>it cannot be judged</source>
        <translation>es kann nicht beurteilt werden</translation>
    </message>
    <message>
        <source>Energy and targets are of what is eaten: {}; all else is eaten up.</source>
        <translation>Energie und Zielwerte gelten für das Gefressene: {}; alles andere wird aufgefressen.</translation>
    </message>
    <message>
        <source>What is fed, as fed, each day</source>
        <translation>Was jeden Tag gefüttert wird, frisch</translation>
    </message>
    <message>
        <source>Meal</source>
        <translation>Mahlzeit</translation>
    </message>
    <message>
        <source>g per animal</source>
        <translation>g je Tier</translation>
    </message>
    <message>
        <source>g for {}</source>
        <translation>g für {}</translation>
    </message>
    <message>
        <source>Given as</source>
        <translation>Gegeben als</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>How it stands against its targets</source>
        <translation>Wie es zu den Zielwerten steht</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Zielwert</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Bekannt</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>, hard</source>
        <translation>, hart</translation>
    </message>
    <message>
        <source>Set aside: {}</source>
        <translation>Zurückgestellt: {}</translation>
    </message>
    <message>
        <source>Known: the share of the eaten dry matter whose value is known. What is unknown could only add to a value with ≥; one with ≈ it could move either way.</source>
        <translation>Bekannt: der Anteil der gefressenen Trockensubstanz, dessen Wert bekannt ist. Unbekanntes kann zu einem Wert mit ≥ nur hinzukommen; einen mit ≈ kann es nach beiden Seiten verschieben.</translation>
    </message>
    <message>
        <source>g per animal and day</source>
        <translation>g je Tier und Tag</translation>
    </message>
    <message>
        <source>g for {} and day</source>
        <translation>g für {} und Tag</translation>
    </message>
    <message>
        <source>least g</source>
        <translation>mindestens g</translation>
    </message>
    <message>
        <source>most g</source>
        <translation>höchstens g</translation>
    </message>
    <message>
        <source>Cost per animal and day</source>
        <translation>Kosten je Tier und Tag</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mindestens</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Höchstens</translation>
    </message>
    <message>
        <source>Known (%)</source>
        <translation>Bekannt (%)</translation>
    </message>
    <message>
        <source>Hard</source>
        <translation>Hart</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Rat</translation>
    </message>
    <message>
        <source>Set aside because</source>
        <translation>Zurückgestellt, weil</translation>
    </message>
    <message>
        <source>Diet</source>
        <translation>Ration</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>begrenzt</translation>
    </message>
    <message>
        <source>consider</source>
        <translation>bedenken</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>im Original gesehen</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>house-rule</source>
        <translation>Hausregel</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>erfunden</translation>
    </message>
    <message>
        <source>derived</source>
        <translation>abgeleitet</translation>
    </message>
    <message>
        <source>for {}</source>
        <translation>für {}</translation>
    </message>
    <message>
        <source>● met</source>
        <translation>● erfüllt</translation>
    </message>
    <message>
        <source>◐ at limit</source>
        <translation>◐ an der Grenze</translation>
    </message>
    <message>
        <source>▼ short</source>
        <translation>▼ zu wenig</translation>
    </message>
    <message>
        <source>▲ over</source>
        <translation>▲ zu viel</translation>
    </message>
    <message>
        <source>? unknown</source>
        <translation>? unbekannt</translation>
    </message>
    <message>
        <source>per kg as fed</source>
        <translation>je kg frisch</translation>
    </message>
    <message>
        <source>per kg DM</source>
        <translation>je kg TS</translation>
    </message>
    <message>
        <source>per 1000 kcal ME</source>
        <translation>je 1000 kcal ME</translation>
    </message>
    <message>
        <source>per animal and day</source>
        <translation>je Tier und Tag</translation>
    </message>
    <message>
        <source>per kg body mass</source>
        <translation>je kg Körpermasse</translation>
    </message>
    <message>
        <source>per kg^0.75 body mass</source>
        <translation>je kg^0,75 Körpermasse</translation>
    </message>
    <message>
        <source>Group: {}</source>
        <translation>Gruppe: {}</translation>
    </message>
    <message>
        <source>% of as fed</source>
        <translation>% der Frischmasse</translation>
    </message>
    <message>
        <source>% of ME</source>
        <translation>% der ME</translation>
    </message>
    <message>
        <source>% of DM</source>
        <translation>% der TS</translation>
    </message>
    <message>
        <source>Grams per animal, as fed: {} to {}</source>
        <translation>Gramm je Tier, frisch: {} bis {}</translation>
    </message>
    <message>
        <source>To buy for {}</source>
        <translation>Einzukaufen für {}</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Woche</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Offered, kg</source>
        <translation>Angeboten, kg</translation>
    </message>
    <message>
        <source>To buy, kg</source>
        <translation>Einzukaufen, kg</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>zusammen</translation>
    </message>
    <message>
        <source>The mean day against the targets</source>
        <translation>Der mittlere Tag gegen die Zielwerte</translation>
    </message>
    <message>
        <source>{} animal</source>
        <translation>{} Tier</translation>
    </message>
    <message>
        <source>{} animals</source>
        <translation>{} Tiere</translation>
    </message>
    <message>
        <source>, {} g in all</source>
        <translation>, {} g zusammen</translation>
    </message>
    <message>
        <source>, a new diet is phased in: day {} of {}</source>
        <translation>, Umstellung auf eine neue Ration: Tag {} von {}</translation>
    </message>
    <message>
        <source>To weigh</source>
        <translation>Zu wiegen</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Futtermittel</translation>
    </message>
    <message>
        <source>Preparation</source>
        <translation>Zubereitung</translation>
    </message>
    <message>
        <source>Weighed, g</source>
        <translation>Gewogen, g</translation>
    </message>
    <message>
        <source> (swapped in)</source>
        <translation> (eingetauscht)</translation>
    </message>
    <message>
        <source> (not in stock)</source>
        <translation> (nicht vorrätig)</translation>
    </message>
    <message>
        <source>{} (not in the collection)</source>
        <translation>{} (nicht im Bestand)</translation>
    </message>
    <message>
        <source>{} piece ({})</source>
        <translation>{} Stück ({})</translation>
    </message>
    <message>
        <source>{} pieces ({})</source>
        <translation>{} Stück ({})</translation>
    </message>
    <message>
        <source>Without weighing, for each animal: {} … {} g {} ({}){}</source>
        <translation>Ohne Wiegen, für jedes Tier: {} … {} g {} ({}){}</translation>
    </message>
    <message>
        <source>bowl</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>treat</source>
        <translation>Leckerbissen</translation>
    </message>
    <message>
        <source>enrichment</source>
        <translation>Beschäftigung</translation>
    </message>
    <message>
        <source>browse</source>
        <translation>Laub und Zweige</translation>
    </message>
    <message>
        <source>The kitchen needs</source>
        <translation>Die Küche braucht</translation>
    </message>
    <message>
        <source>In the bowls</source>
        <translation>In den Schalen</translation>
    </message>
    <message>
        <source>Raw, bought</source>
        <translation>Roh, gekauft</translation>
    </message>
    <message>
        <source>Bowls</source>
        <translation>Schalen</translation>
    </message>
    <message>
        <source>raw: {} {}</source>
        <translation>roh: {} {}</translation>
    </message>
    <message>
        <source>? raw amount unknown: no cooking yield</source>
        <translation>? rohe Menge unbekannt: keine Ausbeute beim Garen</translation>
    </message>
    <message>
        <source>{} as bought</source>
        <translation>{} wie eingekauft</translation>
    </message>
    <message>
        <source>Out of the freezer today, for tomorrow</source>
        <translation>Heute aus dem Gefrierschrank, für morgen</translation>
    </message>
    <message>
        <source>Feed well today: live food of tomorrow</source>
        <translation>Heute gut füttern: Lebendfutter von morgen</translation>
    </message>
    <message>
        <source>No bowl for {}: {}.</source>
        <translation>Keine Schale für {}: {}.</translation>
    </message>
    <message>
        <source>no diet is in force</source>
        <translation>keine Ration gilt</translation>
    </message>
    <message>
        <source>nobody knows how many animals it has</source>
        <translation>niemand weiß, wie viele Tiere sie hat</translation>
    </message>
    <message>
        <source>it has no animal on this day</source>
        <translation>sie hat an diesem Tag kein Tier</translation>
    </message>
    <message>
        <source>nothing is planned for this day</source>
        <translation>für diesen Tag ist nichts geplant</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Immer</translation>
    </message>
    <message>
        <source>Gloves on; washed hands are not enough.</source>
        <translation>Handschuhe an; gewaschene Hände genügen nicht.</translation>
    </message>
    <message>
        <source>One bowl, one animal or group, with its label.</source>
        <translation>Eine Schale, ein Tier oder eine Gruppe, mit ihrem Schild.</translation>
    </message>
    <message>
        <source>Bowls and tools stay in their section.</source>
        <translation>Schalen und Geräte bleiben in ihrem Revier.</translation>
    </message>
    <message>
        <source>Leftovers never come back into the prep room: they are weighed where dirty bowls go.</source>
        <translation>Futterreste kommen nie in die Küche zurück: sie werden dort gewogen, wo schmutzige Schalen hinkommen.</translation>
    </message>
    <message>
        <source>Tare the empty bowl before each food.</source>
        <translation>Vor jedem Futtermittel die leere Schale tarieren.</translation>
    </message>
    <message>
        <source>Bowl labels</source>
        <translation>Schilder der Schalen</translation>
    </message>
    <message>
        <source>Invented sample: not for feeding.</source>
        <translation>Erfundenes Beispiel: nicht zum Füttern.</translation>
    </message>
    <message>
        <source>INVENTED SAMPLE: animals, masses, products and decisions on this sheet are made up. Not for feeding.</source>
        <translation>ERFUNDENES BEISPIEL: Tiere, Massen, Produkte und Entscheidungen auf diesem Zettel sind ausgedacht. Nicht zum Füttern.</translation>
    </message>
    <message>
        <source>Tarebowl supports, and does not replace, a qualified nutritionist and a licensed vet; local rules on feeding,
hygiene, live prey and medicines come first. Published requirements of a model species are a starting point.
</source>
        <translation>Tarebowl unterstützt und ersetzt keine Ernährungsfachkraft und keinen Tierarzt; örtliche Vorschriften zu Fütterung,
Hygiene, Lebendfutter und Arzneimitteln gehen vor. Veröffentlichte Anforderungen einer Modelltierart sind ein Anfang.
</translation>
    </message>
    <message>
        <source>training-reward</source>
        <translation>Trainingsbelohnung</translation>
    </message>
</context>
<context>
    <name>Pans</name>
    <message>
        <source>any %1</source>
        <translation>irgendein %1</translation>
    </message>
    <message>
        <source>still stands; it corrects no leftover until it is weighed again</source>
        <translation>steht noch; sie berichtigt keine Futterreste, bis sie wieder gewogen ist</translation>
    </message>
    <message>
        <source>neither lost nor drew water</source>
        <translation>hat weder Wasser verloren noch gezogen</translation>
    </message>
    <message>
        <source>lost %1 of its mass</source>
        <translation>hat %1 ihrer Masse verloren</translation>
    </message>
    <message>
        <source>drew %1 of its mass</source>
        <translation>hat %1 ihrer Masse gezogen</translation>
    </message>
    <message>
        <source>%1: %2 g put out, still stands%3</source>
        <translation>%1: %2 g hingestellt, steht noch%3</translation>
    </message>
    <message>
        <source>%1: %2 g → %3 g, %4%5</source>
        <translation>%1: %2 g → %3 g, %4%5</translation>
    </message>
    <message>
        <source> Enter again keeps it as it is.</source>
        <translation> Noch einmal Enter behält es, wie es ist.</translation>
    </message>
    <message>
        <source>A pan that was put out empty says nothing: weigh the food that was in it.</source>
        <translation>Eine leer hingestellte Schale sagt nichts: das Futter wiegen, das darin war.</translation>
    </message>
    <message>
        <source>Nothing is left of it: was it emptied, or eaten from? It will count for no leftover.</source>
        <translation>Es ist nichts übrig: wurde sie geleert, oder daraus gefressen? Sie wird für keine Futterreste zählen.</translation>
    </message>
    <message>
        <source>It came back more than a tenth heavier: rain, or the weights the wrong way round?</source>
        <translation>Sie kam um mehr als ein Zehntel schwerer zurück: Regen, oder die Gewichte vertauscht?</translation>
    </message>
    <message>
        <source>More than half of it is gone: did an animal reach it?</source>
        <translation>Mehr als die Hälfte davon ist weg: kam ein Tier heran?</translation>
    </message>
    <message>
        <source>There is a pan of this already: both will count, each by half. To change it choose it above.</source>
        <translation>Davon gibt es schon eine Schale: beide werden zählen, jede halb. Um sie zu ändern, sie oben wählen.</translation>
    </message>
</context>
<context>
    <name>PartTexts</name>
    <message>
        <source>Species, their groups, and the animals in each. Choose one to see its page at the right.</source>
        <translation>Tierarten, ihre Gruppen und die Tiere darin. Eines wählen, um rechts seine Seite zu sehen.</translation>
    </message>
    <message>
        <source>What the group is called, its section, and who is in it since when. How many eat is counted from this; a bowl&apos;s grams are those of one animal times the number.</source>
        <translation>Wie die Gruppe heißt, ihr Revier, und wer seit wann darin ist. Danach wird gezählt, wie viele fressen; die Gramm einer Schale sind die eines Tieres mal die Zahl der Tiere.</translation>
    </message>
    <message>
        <source>Body mass over time. Points are weighings; the mass that counts of an animal is the median of its last fortnight&apos;s, or else the newest, and a group&apos;s is the mean of its animals. One that was left out does not count. Energy need and everything per kg rest on it.</source>
        <translation>Körpermasse über die Zeit. Punkte sind Wägungen; die Masse eines Tieres, die zählt, ist der Median seiner letzten vierzehn Tage, sonst die neueste, und die einer Gruppe ist das Mittel ihrer Tiere. Eine ausgelassene zählt nicht. Energiebedarf und alles je kg beruhen darauf.</translation>
    </message>
    <message>
        <source>Each weighing and condition score with its day and who wrote it down. A first entry is never written over: a correction stands beside it, with a reason.</source>
        <translation>Jede Wägung und jede Kondition mit ihrem Tag und wer sie aufschrieb. Ein erster Eintrag wird nie überschrieben: eine Berichtigung steht daneben, mit einem Grund.</translation>
    </message>
    <message>
        <source>A weighing or a condition score of today or of another day. A mass that is far from what is known of the animal is asked about before it is kept.</source>
        <translation>Eine Wägung oder Kondition von heute oder einem anderen Tag. Nach einer Masse, die weit von dem liegt, was vom Tier bekannt ist, wird erst gefragt.</translation>
    </message>
    <message>
        <source>The energy need, worked out step by step: energy at 1 kg of body mass, the exponent, body mass, and the factor for what the animals do. A published number names its source, one that is edited is the house&apos;s own. It is where a diet starts; body mass and condition decide whether it was right.</source>
        <translation>Der Energiebedarf, Schritt für Schritt berechnet: Energie bei 1 kg Körpermasse, der Exponent, die Körpermasse, und der Faktor für das, was die Tiere tun. Eine veröffentlichte Zahl nennt ihre Quelle, eine geänderte ist die des Hauses. Damit beginnt eine Ration; Körpermasse und Kondition entscheiden, ob es richtig war.</translation>
    </message>
    <message>
        <source>The targets that this group&apos;s diets are judged by. Each names where it was stated and how it is known: a published requirement, the house&apos;s own rule, recalled, or derived from a model species, which is a starting point and not a requirement.</source>
        <translation>Die Zielwerte, nach denen die Rationen dieser Gruppe beurteilt werden. Jeder nennt, wo er angegeben war und wie er bekannt ist: eine veröffentlichte Anforderung, die eigene Regel des Hauses, erinnert, oder abgeleitet von einer Modelltierart, was ein Anfang ist und keine Anforderung.</translation>
    </message>
    <message>
        <source>The rules of the target profile, nutrient by nutrient: from, to, unit and basis, where each was stated, and whether it is a hard rule. Edit one and a draft is kept until it is put in force.</source>
        <translation>Die Regeln des Zielwertprofils, Nährstoff für Nährstoff: von, bis, Einheit und Bezug, wo jede angegeben war, und ob sie eine feste Regel ist. Wird eine geändert, entsteht ein Entwurf, bis er in Kraft gesetzt wird.</translation>
    </message>
    <message>
        <source>A further rule for this profile. State where it comes from: a rule without a source cannot be checked by anybody else.</source>
        <translation>Eine weitere Regel für dieses Profil. Sagen, woher sie kommt: eine Regel ohne Quelle kann niemand sonst prüfen.</translation>
    </message>
    <message>
        <source>Foods that are known to be dangerous to this species or need thought, from the program&apos;s list with its sources and from the house&apos;s own. The list is not complete: what is not on it is not thereby safe.</source>
        <translation>Futtermittel, die für diese Tierart als gefährlich bekannt sind oder Nachdenken brauchen, aus der Liste des Programms mit ihren Quellen und aus der des Hauses. Die Liste ist nicht vollständig: was nicht darauf steht, ist dadurch nicht sicher.</translation>
    </message>
    <message>
        <source>What changed, when, and by whom. It is read from the collection&apos;s log, which is only ever added to.</source>
        <translation>Was sich wann durch wen geändert hat. Gelesen wird es aus dem Protokoll des Bestands, zu dem nur hinzugefügt wird.</translation>
    </message>
    <message>
        <source>For a group without targets: a published profile of a model species to derive from. Say why that species stands in; the sentence is kept with every target.</source>
        <translation>Für eine Gruppe ohne Zielwerte: ein veröffentlichtes Profil einer Modelltierart, von dem abgeleitet wird. Sagen, warum diese Art dafür steht; der Satz wird bei jedem Zielwert aufbewahrt.</translation>
    </message>
    <message>
        <source>Published profiles of model species, side by side where several are ticked. Each number is that of the publication named; none was made for your species.</source>
        <translation>Veröffentlichte Profile von Modelltierarten, nebeneinander, wo mehrere angekreuzt sind. Jede Zahl ist die der genannten Veröffentlichung; keine wurde für Ihre Tierart gemacht.</translation>
    </message>
    <message>
        <source>A species that is new to the collection, with its first group, energy need and targets. The targets come from the model species that you choose, as a starting point.</source>
        <translation>Eine Tierart, die neu im Bestand ist, mit ihrer ersten Gruppe, Energiebedarf und Zielwerten. Die Zielwerte kommen von der Modelltierart, die Sie wählen, als Anfang.</translation>
    </message>
    <message>
        <source>Who the animal is: sex, birth, stages of life, coming and going. A stage is kept with the day on which it begins; the energy need and the targets of its group are the nutritionist&apos;s to change.</source>
        <translation>Wer das Tier ist: Geschlecht, Geburt, Lebensabschnitte, Kommen und Gehen. Ein Abschnitt wird mit dem Tag aufbewahrt, an dem er beginnt; Energiebedarf und Zielwerte seiner Gruppe ändert die Ernährungsfachkraft.</translation>
    </message>
    <message>
        <source>One animal: who it is, its masses and condition scores.</source>
        <translation>Ein Tier: wer es ist, seine Massen und Konditionen.</translation>
    </message>
    <message>
        <source>The species: its names, and the groups of animals that it belongs to. Cautions about foods go by these.</source>
        <translation>Die Tierart: ihre Namen, und die Tiergruppen, zu denen sie gehört. Danach richten sich Warnhinweise zu Futtermitteln.</translation>
    </message>
    <message>
        <source>What is shown below, and what can be done with it.</source>
        <translation>Was unten gezeigt wird, und was sich damit tun lässt.</translation>
    </message>
    <message>
        <source>A group: who is in it, what it needs, and what its diets are judged by.</source>
        <translation>Eine Gruppe: wer darin ist, was sie braucht, und wonach ihre Rationen beurteilt werden.</translation>
    </message>
    <message>
        <source>The diets of the collection by group, each with its versions, and the groups that have none yet. A marked one cannot be read; choosing it says why.</source>
        <translation>Die Rationen des Bestands nach Gruppen, jede mit ihren Versionen, und die Gruppen, die noch keine haben. Eine markierte ist nicht lesbar; sie zu wählen, sagt warum.</translation>
    </message>
    <message>
        <source>Which version of the diet is on the desk and what can be done next: submit it, approve it, send it back, retire it. What was approved never changes; the next idea is a new version.</source>
        <translation>Welche Version der Ration auf dem Tisch ist und was als Nächstes damit geschehen kann: einreichen, freigeben, zurückgeben, zurückziehen. Was freigegeben war, ändert sich nie; die nächste Idee ist eine neue Version.</translation>
    </message>
    <message>
        <source>Whoever approves says why, from which day it is fed and over how many days it is phased in. Grams, targets and composition are kept as they were decided on.</source>
        <translation>Wer freigibt, sagt warum, ab welchem Tag sie gefüttert und über wie viele Tage umgestellt wird. Gramm, Zielwerte und Zusammensetzung bleiben, wie über sie entschieden wurde.</translation>
    </message>
    <message>
        <source>What has happened since this version was written: foods that are gone, targets that changed, another window that was faster.</source>
        <translation>Was geschah, seit diese Version geschrieben wurde: Futtermittel, die weg sind, Zielwerte, die sich änderten, ein anderes Fenster, das schneller war.</translation>
    </message>
    <message>
        <source>The foods of the diet. Grams are as fed, for one animal and day or for the whole group, as the switch above says. They are yours where locked (Space); the others are found by the solver in whole steps of the kitchen&apos;s scale. Min and max are limits of this diet. The bar is the food&apos;s share of the dry matter.</source>
        <translation>Die Futtermittel der Ration. Gramm sind Frischsubstanz, für ein Tier und Tag oder für die ganze Gruppe, wie der Schalter darüber sagt. Gesperrte (Leertaste) sind Ihre; die anderen findet der Löser in ganzen Schritten der Küchenwaage. Min und Max sind Grenzen dieser Ration. Der Balken ist der Anteil des Futtermittels an der Trockensubstanz.</translation>
    </message>
    <message>
        <source>Foods of the collection are added here by name. A food that is given unweighed, such as browse, is stated as a range; the balance counts the middle and carries the range as uncertainty.</source>
        <translation>Hier werden Futtermittel des Bestands über ihren Namen hinzugefügt. Was ungewogen gegeben wird, etwa Laub, wird als Spanne angegeben; die Bilanz zählt die Mitte und führt die Spanne als Unsicherheit mit.</translation>
    </message>
    <message>
        <source>Something that is given unweighed, between two amounts a day. The balance counts the middle, and the range as uncertainty.</source>
        <translation>Etwas, das ungewogen gegeben wird, zwischen zwei Mengen am Tag. Die Bilanz zählt die Mitte und die Spanne als Unsicherheit.</translation>
    </message>
    <message>
        <source>More about the food that the hand is on: how the kitchen prepares it, what it is given for, and the cautions about it.</source>
        <translation>Mehr über das Futtermittel, auf dem die Hand liegt: wie die Küche es zubereitet, wofür es gegeben wird, und die Warnhinweise dazu.</translation>
    </message>
    <message>
        <source>One rung for each target, in the order that is chosen above. The number is what the bowl gives: grams of each food times its composition. The shaded stretch is the target&apos;s zone, the mark is the diet, the whisker its uncertainty from scatter between samples. The hatched part of the track rests on foods of which the value is unknown, and is never counted as nothing.</source>
        <translation>Eine Sprosse je Zielwert, in der oben gewählten Reihenfolge. Die Zahl ist, was die Schale gibt: Gramm jedes Futtermittels mal seine Zusammensetzung. Die getönte Strecke ist der Bereich des Zielwerts, die Marke die Ration, der Strich ihre Unsicherheit durch Streuung zwischen Proben. Der schraffierte Teil beruht auf Futtermitteln, deren Wert unbekannt ist, und zählt nie als nichts.</translation>
    </message>
    <message>
        <source>The rung that is open: its bounds, which can be changed for this diet, where the target was stated, and which food brings how much of it.</source>
        <translation>Die offene Sprosse: ihre Grenzen, die sich für diese Ration ändern lassen, wo der Zielwert angegeben war, und welches Futtermittel wie viel davon bringt.</translation>
    </message>
    <message>
        <source>How the diet stands against its targets. Choose a rung to see which food brings how much, and where the target comes from.</source>
        <translation>Wie die Ration zu ihren Zielwerten steht. Eine Sprosse wählen, um zu sehen, welches Futtermittel wie viel bringt und woher der Zielwert kommt.</translation>
    </message>
    <message>
        <source>Why the diet stands as it does, in sentences. They follow from the targets and foods on the desk alone; a suggestion was worked out before it is offered, and can be tried and taken back.</source>
        <translation>Warum die Ration so steht, in Sätzen. Sie folgen allein aus den Zielwerten und Futtermitteln auf dem Tisch; ein Vorschlag wurde berechnet, bevor er angeboten wird, und lässt sich versuchen und zurücknehmen.</translation>
    </message>
    <message>
        <source>What has to give while one bound moves, or one thing sought is traded for another. What is read off the chart can be tried on the diet, and taken back.</source>
        <translation>Was nachgeben muss, während eine Grenze sich bewegt oder ein Gesuchtes gegen ein anderes abgewogen wird. Was sich von der Kurve ablesen lässt, kann an der Ration versucht und zurückgenommen werden.</translation>
    </message>
    <message>
        <source>What has to give while one bound moves: foods above, what is sought and what is missed below. Each dot is where another food or target begins to give.</source>
        <translation>Was nachgeben muss, während eine Grenze sich bewegt: oben die Futtermittel, unten, was gesucht und was verfehlt wird. Jeder Punkt ist, wo ein weiteres Futtermittel oder ein weiterer Zielwert nachzugeben beginnt.</translation>
    </message>
    <message>
        <source>What is asked of the diet beside its targets: how many foods of a group, at most how much of it. Rules of the targets are shown, those of this diet can be changed.</source>
        <translation>Was von der Ration außer ihren Zielwerten verlangt wird: wie viele Futtermittel einer Gruppe, höchstens wie viel davon. Regeln der Zielwerte werden gezeigt, die dieser Ration lassen sich ändern.</translation>
    </message>
    <message>
        <source>What this version says otherwise than another: grams, balance, cost, in words and side by side. Both are as they stand in the collection.</source>
        <translation>Was diese Version anders sagt als eine andere: Gramm, Bilanz, Kosten, in Worten und nebeneinander. Beide, wie sie im Bestand stehen.</translation>
    </message>
    <message>
        <source>The diet on the desk: its foods and grams, and below them why it stands as it does.</source>
        <translation>Die Ration auf dem Tisch: ihre Futtermittel und Gramm, und darunter, warum sie so steht.</translation>
    </message>
    <message>
        <source>Days by foods. Grams are as fed for one animal; a locked cell stays as the hand left it, the others are planned so that each day keeps its rules and the period balances.</source>
        <translation>Tage mal Futtermittel. Gramm sind Frischsubstanz für ein Tier; ein gesperrtes Feld bleibt, wie die Hand es ließ, die anderen sind so geplant, dass jeder Tag seine Regeln hält und der Zeitraum ausgeglichen ist.</translation>
    </message>
    <message>
        <source>How the whole period stands against the targets, or the day that the hand is on. It is the mean of the days as planned.</source>
        <translation>Wie der ganze Zeitraum zu den Zielwerten steht, oder der Tag, auf dem die Hand liegt. Es ist das Mittel der Tage, wie geplant.</translation>
    </message>
    <message>
        <source>What the plan must keep: how many days, what varies, what may not follow upon what, days off, what is in stock.</source>
        <translation>Was der Plan einhalten muss: wie viele Tage, was wechselt, was nicht aufeinander folgen darf, freie Tage, was vorrätig ist.</translation>
    </message>
    <message>
        <source>Which days are looked at, and what can be planned.</source>
        <translation>Welche Tage angesehen werden, und was sich planen lässt.</translation>
    </message>
    <message>
        <source>What keys do in the calendar on the cell that the hand is on.</source>
        <translation>Was Tasten im Kalender an dem Feld tun, auf dem die Hand liegt.</translation>
    </message>
    <message>
        <source>A plan by the day for the diet on the desk. What was fed already stays.</source>
        <translation>Ein Plan nach Tagen für die Ration auf dem Tisch. Was schon gefüttert wurde, bleibt.</translation>
    </message>
    <message>
        <source>The foods of the collection. Each number in a column is per 100 g as fed, and is the mean that the food&apos;s samples form; ? is unknown, never nothing.</source>
        <translation>Die Futtermittel des Bestands. Jede Zahl in einer Spalte ist je 100 g Frischsubstanz und das Mittel der Proben des Futtermittels; ? ist unbekannt, nie nichts.</translation>
    </message>
    <message>
        <source>What one food is made of. A value is the mean of its laboratory samples, or a publication&apos;s; ± is the scatter between samples, n how many there are. Open a row to see them, each with its source and day. A value set by hand goes before every sample, and says who set it and why.</source>
        <translation>Woraus ein Futtermittel besteht. Ein Wert ist das Mittel seiner Laborproben, oder der einer Veröffentlichung; ± ist die Streuung zwischen Proben, n wie viele es sind. Eine Zeile öffnen, um sie zu sehen, jede mit Quelle und Tag. Ein von Hand gesetzter Wert geht jeder Probe vor und sagt, wer ihn setzte und warum.</translation>
    </message>
    <message>
        <source>Each nutrient of the food. A value is the mean of the samples under it, or one that was set by hand or worked out (cooked from raw, mixed from parts, summed from others); the Source column names where it comes from. ≥ and ≤ are bounds, such as a label&apos;s guarantee, and are not used as means. ? is unknown, and is never counted as nothing.</source>
        <translation>Jeder Nährstoff des Futtermittels. Ein Wert ist das Mittel der Proben darunter, oder einer, der von Hand gesetzt oder berechnet wurde (gekocht aus roh, gemischt aus Teilen, summiert aus anderen); die Spalte Quelle nennt, woher er kommt. ≥ und ≤ sind Grenzen, etwa die Garantie eines Etiketts, und werden nicht als Mittel verwendet. ? ist unbekannt und zählt nie als nichts.</translation>
    </message>
    <message>
        <source>What the food is called and how it is fed: its form and group, the step of the scale it is weighed in, what is edible of it, what it costs. A person of your house states these; they are kept under that name.</source>
        <translation>Wie das Futtermittel heißt und gefüttert wird: Form und Gruppe, der Waagenschritt, was davon essbar ist, was es kostet. Das sagt jemand aus Ihrem Haus; es wird unter diesem Namen aufbewahrt.</translation>
    </message>
    <message>
        <source>One laboratory sample or publication: its values as they were reported, on the basis and in the units that are chosen. The mean of all samples that count is the food&apos;s value.</source>
        <translation>Eine Laborprobe oder Veröffentlichung: ihre Werte, wie sie berichtet wurden, auf dem Bezug und in den Einheiten, die gewählt sind. Das Mittel aller Proben, die zählen, ist der Wert des Futtermittels.</translation>
    </message>
    <message>
        <source>What a house mix is made of. What nobody analysed in the mix is worked out from the grams of its parts and from what a gram of them gives once prepared; the source says who measured that.</source>
        <translation>Woraus eine Hausmischung besteht. Was niemand an der Mischung analysiert hat, wird aus den Gramm ihrer Teile berechnet und daraus, was ein Gramm davon zubereitet gibt; die Quelle sagt, wer das gemessen hat.</translation>
    </message>
    <message>
        <source>Which raw food this one is cooked from. What nobody analysed in the cooked food is worked out from the raw one: grams left of a gram, and the share of each nutrient that stays. The source says who says so.</source>
        <translation>Aus welchem rohen Futtermittel dieses gekocht ist. Was niemand am gekochten analysiert hat, wird aus dem rohen berechnet: Gramm, die von einem Gramm bleiben, und der Anteil jedes Nährstoffs, der erhalten bleibt. Die Quelle sagt, wer das sagt.</translation>
    </message>
    <message>
        <source>Which nutrients your laboratory is to look at, how often, and what is due. It is counted from the days of the samples.</source>
        <translation>Welche Nährstoffe Ihr Labor ansehen soll, wie oft, und was fällig ist. Gezählt wird ab den Tagen der Proben.</translation>
    </message>
    <message>
        <source>What a careful analyst would doubt in this food: parts that do not add up, energy that disagrees with them, a value far from the food&apos;s group. A doubt is a question, not a verdict; each says how it was found.</source>
        <translation>Was ein sorgfältiger Analytiker an diesem Futtermittel bezweifeln würde: Teile, die sich nicht summieren, Energie, die ihnen widerspricht, ein Wert weit von der Futtergruppe. Ein Zweifel ist eine Frage, kein Urteil; jeder sagt, wie er gefunden wurde.</translation>
    </message>
    <message>
        <source>What a careful analyst would doubt in all foods. Each doubt says how it was found; a line goes to its food.</source>
        <translation>Was ein sorgfältiger Analytiker an allen Futtermitteln bezweifeln würde. Jeder Zweifel sagt, wie er gefunden wurde; eine Zeile führt zu ihrem Futtermittel.</translation>
    </message>
    <message>
        <source>Foods side by side, all on one basis. The values are those of each food&apos;s own page; rest on one to see its source.</source>
        <translation>Futtermittel nebeneinander, alle auf einem Bezug. Die Werte sind die der eigenen Seite jedes Futtermittels; auf einem verweilen, um seine Quelle zu sehen.</translation>
    </message>
    <message>
        <source>A table of foods on its way into the collection. Nothing is written before you press Import; all of it is written, or where anything is wrong with it, nothing.</source>
        <translation>Eine Futtermitteltabelle auf dem Weg in den Bestand. Es wird nichts geschrieben, bevor Sie „Einlesen“ drücken; dann alles, oder wo etwas daran falsch ist, nichts.</translation>
    </message>
    <message>
        <source>How the table is read: its form, decimal sign, units and basis, and whose it is. These are guessed from the table first; change what was guessed wrongly.</source>
        <translation>Wie die Tabelle gelesen wird: ihre Form, Dezimalzeichen, Einheiten und Bezug, und wessen sie ist. Das wird zuerst aus der Tabelle vermutet; ändern, was falsch vermutet wurde.</translation>
    </message>
    <message>
        <source>What will become of each line: a new food, a new sample, a value that is left out and why. Counted by reading the whole table, without writing.</source>
        <translation>Was aus jeder Zeile wird: ein neues Futtermittel, eine neue Probe, ein Wert, der ausgelassen wird, und warum. Gezählt, indem die ganze Tabelle gelesen wird, ohne zu schreiben.</translation>
    </message>
    <message>
        <source>Goes to any food, animal or diet by part of its name.</source>
        <translation>Geht zu jedem Futtermittel, Tier oder jeder Ration über einen Teil des Namens.</translation>
    </message>
    <message>
        <source>Whether all is on the disk, the units in force, whether this is the invented sample, and who is at the keyboard: every change is kept under that name.</source>
        <translation>Ob alles auf dem Datenträger ist, die geltenden Einheiten, ob dies das erfundene Beispiel ist, und wer an der Tastatur ist: jede Änderung wird unter diesem Namen aufbewahrt.</translation>
    </message>
    <message>
        <source>The rooms of the window, Ctrl+1 to Ctrl+7, and below them the collection file and help.</source>
        <translation>Die Räume des Fensters, Strg+1 bis Strg+7, und darunter die Bestandsdatei und Hilfe.</translation>
    </message>
    <message>
        <source>No collection is open. Choose a way in.</source>
        <translation>Kein Bestand ist geöffnet. Einen Weg hinein wählen.</translation>
    </message>
    <message>
        <source>The guide leads through the invented sample, a step at a time.</source>
        <translation>Der Rundgang führt durch das erfundene Beispiel, Schritt für Schritt.</translation>
    </message>
    <message>
        <source>A reason is kept with what you do, under your name, and can be read for good.</source>
        <translation>Ein Grund wird bei dem, was Sie tun, unter Ihrem Namen aufbewahrt und ist für immer zu lesen.</translation>
    </message>
    <message>
        <source>The section, the day, and its bowls. They come from the diets in force on that day, or from the plan of a rotation, times the number of animals.</source>
        <translation>Das Revier, der Tag und seine Schalen. Sie kommen aus den Rationen, die an diesem Tag gelten, oder aus einem Wechselplan, mal die Zahl der Tiere.</translation>
    </message>
    <message>
        <source>The bowl that is prepared: its foods with planned grams, what was weighed, how each is prepared. Planned grams come from the approved diet, times the animals of the group.</source>
        <translation>Die Schale, die zubereitet wird: ihre Futtermittel mit geplanten Gramm, was gewogen wurde, wie jedes zubereitet wird. Geplante Gramm kommen aus der freigegebenen Ration, mal die Tiere der Gruppe.</translation>
    </message>
    <message>
        <source>The food on the scale. The plan is the approved diet&apos;s; ± is how far the weight may lie from it by the rule of the house. The first weight is never written over: a correction stands beside it.</source>
        <translation>Das Futtermittel auf der Waage. Der Plan ist der der freigegebenen Ration; ± ist, wie weit das Gewicht nach der Hausregel davon liegen darf. Das erste Gewicht wird nie überschrieben: eine Berichtigung steht daneben.</translation>
    </message>
    <message>
        <source>What came back of a food. What was eaten is offered less left less lost, corrected for drying by control pans: those of the day, or of days around it where there were none, which is then said.</source>
        <translation>Was von einem Futtermittel zurückkam. Gefressen ist angeboten minus übrig minus verloren, berichtigt um das Trocknen durch Kontrollschalen: die des Tages, oder der Tage darum herum, wo es keine gab, was dann gesagt wird.</translation>
    </message>
    <message>
        <source>The scale of this bench: what it shows now and where it is plugged in. Without one, weights are typed.</source>
        <translation>Die Waage dieses Tisches: was sie jetzt zeigt und wo sie eingesteckt ist. Ohne eine werden Gewichte getippt.</translation>
    </message>
    <message>
        <source>How far a weight may lie from the plan, a rule of your house, and what it comes to for the food on the scale.</source>
        <translation>Wie weit ein Gewicht vom Plan liegen darf, eine Regel Ihres Hauses, und was das für das Futtermittel auf der Waage ergibt.</translation>
    </message>
    <message>
        <source>What stands on the sheet beside the bowls: what the kitchen needs in all, what to thaw for tomorrow, cautions and hygiene.</source>
        <translation>Was auf dem Zettel neben den Schalen steht: was die Küche insgesamt braucht, was für morgen aufzutauen ist, Warnhinweise und Hygiene.</translation>
    </message>
    <message>
        <source>What to give instead of a food that is not there, the nearest first. Each line says the grams and what it does to the balance, worked out against the approved bowl; where the approved targets are no longer met, it says who must approve.</source>
        <translation>Was statt eines fehlenden Futtermittels zu geben ist, das Nächste zuerst. Jede Zeile sagt die Gramm und was sie an der Bilanz ändert, gegen die freigegebene Schale berechnet; wo die freigegebenen Zielwerte nicht mehr erfüllt sind, sagt sie, wer es gutheißen muss.</translation>
    </message>
    <message>
        <source>Control pans: the same food out of the animals&apos; reach, weighed when the bowls went out and when they came back. What they lose by drying, or gain, is taken off what came back of the same food.</source>
        <translation>Kontrollschalen: dasselbe Futter außer Reichweite der Tiere, gewogen, als die Schalen hinausgingen und als sie zurückkamen. Was sie durch Trocknen verlieren oder gewinnen, wird von dem abgezogen, was vom selben Futtermittel zurückkam.</translation>
    </message>
    <message>
        <source>The section and its groups. A group without a bowl cannot be chosen.</source>
        <translation>Das Revier und seine Gruppen. Eine Gruppe ohne Schale lässt sich nicht wählen.</translation>
    </message>
    <message>
        <source>What is followed over time: the targets of the group, then every nutrient that some food of its bowls tells.</source>
        <translation>Was über die Zeit verfolgt wird: die Zielwerte der Gruppe, dann jeder Nährstoff, den ein Futtermittel ihrer Schalen kennt.</translation>
    </message>
    <message>
        <source>What was noticed in the days in sight, and how much is known of them. A drop is told against the group&apos;s own days before; the rule of the house stands beside it.</source>
        <translation>Was in den Tagen in Sicht auffiel, und wie viel von ihnen bekannt ist. Ein Rückgang wird gegen die eigenen Tage der Gruppe davor gesagt; die Hausregel steht daneben.</translation>
    </message>
    <message>
        <source>Grams a day of each food, all animals together: what was offered, and what was eaten of it (offered less left and lost, corrected by control pans). Days without a bowl written down stay empty.</source>
        <translation>Gramm am Tag von jedem Futtermittel, alle Tiere zusammen: was angeboten und was davon gefressen wurde (angeboten minus übrig und verloren, berichtigt durch Kontrollschalen). Tage ohne aufgeschriebene Schale bleiben leer.</translation>
    </message>
    <message>
        <source>What is followed, a day and animal, offered and as eaten, against its zone; over many days each step of the line is the mean of some. Hatched is what is missing: foods whose leftovers or composition nobody knows. The band is the uncertainty.</source>
        <translation>Was verfolgt wird, je Tag und Tier, angeboten und wie gefressen, gegen seinen Bereich; über viele Tage ist jede Stufe der Linie das Mittel einiger. Schraffiert ist, was fehlt: Futtermittel, deren Reste oder Zusammensetzung niemand kennt. Das Band ist die Unsicherheit.</translation>
    </message>
    <message>
        <source>What is picked first: Manly&apos;s alpha with its 95 % interval, from what was offered and left. Above the dashed line a food is taken more than its share.</source>
        <translation>Was zuerst genommen wird: Manlys Alpha mit seinem 95-%-Intervall, aus dem, was angeboten und übrig war. Über der gestrichelten Linie wird ein Futtermittel mehr als anteilig genommen.</translation>
    </message>
    <message>
        <source>A study of what is eaten: how many days it needs for the precision wanted, by how much the group&apos;s own days differ, what is weighed, and where control pans stand.</source>
        <translation>Eine Studie dessen, was gefressen wird: wie viele Tage sie für die gewünschte Genauigkeit braucht, danach, wie sich die eigenen Tage der Gruppe unterscheiden, was gewogen wird, und wo Kontrollschalen stehen.</translation>
    </message>
    <message>
        <source>Faeces that were collected and analysed. With what was eaten on their days they say what was digested; without, nothing.</source>
        <translation>Kot, der gesammelt und analysiert wurde. Mit dem, was an seinen Tagen gefressen wurde, sagt er, was verdaut wurde; ohne nichts.</translation>
    </message>
    <message>
        <source>Yesterday&apos;s bowls as a list to fill in: what came back of each food, by weight, all eaten, or not weighed. Not weighed stays unknown.</source>
        <translation>Die Schalen von gestern als Liste zum Ausfüllen: was von jedem Futtermittel zurückkam, nach Gewicht, alles gefressen, oder nicht gewogen. Nicht gewogen bleibt unbekannt.</translation>
    </message>
    <message>
        <source>What was seen: kind, day, time, and what its kind asks for. It is kept under your name, and is never written over.</source>
        <translation>Was gesehen wurde: Art, Tag, Zeit, und was die Art verlangt. Es wird unter Ihrem Namen aufbewahrt und nie überschrieben.</translation>
    </message>
    <message>
        <source>Signs, blood values, treatments, condition, body mass, Ca:P and diets on one axis of days. Points are what was written down; lines are worked out from the bowls of each day.</source>
        <translation>Zeichen, Blutwerte, Behandlungen, Kondition, Körpermasse, Ca:P und Rationen auf einer Tagesachse. Punkte sind, was aufgeschrieben wurde; Linien sind aus den Schalen jedes Tages berechnet.</translation>
    </message>
    <message>
        <source>What this desk wrote down while its server was away, and what the server has instead. Nothing is lost: it is sent in order, each entry once, and where both disagree you choose what counts.</source>
        <translation>Was dieser Platz aufgeschrieben hat, während sein Server nicht da war, und was der Server stattdessen hat. Nichts geht verloren: Es wird der Reihe nach gesendet, jeder Eintrag einmal, und wo beide sich widersprechen, wählen Sie, was zählt.</translation>
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
        <translation>%1 und was verloren geht</translation>
    </message>
    <message>
        <source>%1: a rotation is written as .pdf, .html or .json</source>
        <translation>%1: ein Wechselplan wird als .pdf, .html oder .json geschrieben</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>zusammen</translation>
    </message>
</context>
<context>
    <name>RotationText</name>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>A better one may be there, but none below %1.</source>
        <translation>Es kann einen besseren geben, aber keinen unter %1.</translation>
    </message>
    <message>
        <source>Over the %1 every target holds.</source>
        <translation>Über die %1 ist jeder Zielwert erfüllt.</translation>
    </message>
    <message>
        <source>Over the %1 these do not hold: %2.</source>
        <translation>Über die %1 sind nicht erfüllt: %2.</translation>
    </message>
    <message>
        <source>Each day holds its own, wider zones.</source>
        <translation>Jeder Tag hält seine eigenen, weiteren Bereiche ein.</translation>
    </message>
    <message>
        <source>One day lies outside its own, wider zones: choose it to see how.</source>
        <translation>Ein Tag liegt außerhalb seiner eigenen, weiteren Bereiche: ihn wählen, um zu sehen wie.</translation>
    </message>
    <message>
        <source>%1 days lie outside their own, wider zones: choose one to see how.</source>
        <translation>%1 Tage liegen außerhalb ihrer eigenen, weiteren Bereiche: einen wählen, um zu sehen wie.</translation>
    </message>
    <message>
        <source>The %1 together do not make it up.</source>
        <translation>Die %1 zusammen gleichen es nicht aus.</translation>
    </message>
    <message>
        <source>The %1 together make it up.</source>
        <translation>Die %1 zusammen gleichen es aus.</translation>
    </message>
    <message>
        <source>dddd d MMMM</source>
        <comment>a day and its weekday in full, as Qt writes formats</comment>
        <translation>dddd, d. MMMM</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>a day without its year, as Qt writes formats</comment>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Variety that was wished for, or stock to use up, lacks by %1.</source>
        <translation>An gewünschter Abwechslung oder aufzubrauchendem Vorrat fehlen %1.</translation>
    </message>
    <message>
        <source>planned on %1</source>
        <translation>geplant am %1</translation>
    </message>
    <message>
        <source>planned by %1, %2</source>
        <translation>geplant von %1, %2</translation>
    </message>
    <message>
        <source>%1 fed, counted as eaten</source>
        <translation>%1 gefüttert, gezählt wie gefressen</translation>
    </message>
    <message>
        <source>%1 fed, counted as offered</source>
        <translation>%1 gefüttert, gezählt wie angeboten</translation>
    </message>
    <message>
        <source>%1 is %2 by %3 of the day&apos;s zone (%4).</source>
        <translation>%1: %2, um %3 des Tagesbereichs (%4).</translation>
    </message>
    <message>
        <source>Every target is within the day&apos;s own, wider zone.</source>
        <translation>Jeder Zielwert liegt im eigenen, weiteren Bereich des Tages.</translation>
    </message>
    <message>
        <source>No plan keeps all hard rules at once: free a locked cell, or let a rule be wider. Nothing was changed.</source>
        <translation>Kein Plan hält alle festen Regeln zugleich ein: ein gesperrtes Feld freigeben, oder eine Regel weiter fassen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>No plan keeps this rule: %1. Nothing was changed.</source>
        <translation>Kein Plan hält diese Regel ein: %1. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>No plan was found in the time given. Nothing was changed; try again, or let a rule be wider.</source>
        <translation>In der gegebenen Zeit fand sich kein Plan. Nichts wurde geändert; noch einmal versuchen, oder eine Regel weiter fassen.</translation>
    </message>
    <message>
        <source>Nothing was planned (%1).</source>
        <translation>Es wurde nichts geplant (%1).</translation>
    </message>
</context>
<context>
    <name>Rows</name>
    <message>
        <source>% as fed</source>
        <translation>% der FS</translation>
    </message>
    <message>
        <source>% of energy</source>
        <translation>% der Energie</translation>
    </message>
    <message>
        <source>% of DM</source>
        <translation>% der TS</translation>
    </message>
    <message>
        <source>%1 : %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>share of %1</source>
        <translation>Anteil von %1</translation>
    </message>
    <message>
        <source>foods of %1</source>
        <translation>Futtermittel aus %1</translation>
    </message>
    <message>
        <source>foods a day</source>
        <translation>Futtermittel am Tag</translation>
    </message>
    <message>
        <source>at least %1 g of each</source>
        <translation>mindestens %1 g von jedem</translation>
    </message>
    <message>
        <source>no %1</source>
        <translation>kein %1</translation>
    </message>
    <message>
        <source>not taken over: %1</source>
        <translation>nicht übernommen: %1</translation>
    </message>
    <message>
        <source>? no value</source>
        <translation>? kein Wert</translation>
    </message>
    <message>
        <source>the other %1</source>
        <translation>die anderen %1</translation>
    </message>
    <message>
        <source>%1, by food, per animal a day</source>
        <translation>%1, nach Futtermittel, je Tier und Tag</translation>
    </message>
    <message>
        <source>%1 and %2, by food, per animal a day</source>
        <translation>%1 und %2, nach Futtermittel, je Tier und Tag</translation>
    </message>
    <message>
        <source>%1, by food, %2</source>
        <translation>%1, nach Futtermittel, %2</translation>
    </message>
</context>
<context>
    <name>Rules</name>
    <message>
        <source>no food here states what it needs</source>
        <translation>von keinem Futtermittel hier ist bekannt, was sie braucht</translation>
    </message>
    <message>
        <source>no food of the group is here</source>
        <translation>kein Futtermittel der Gruppe ist hier</translation>
    </message>
    <message>
        <source>the body mass is not known</source>
        <translation>die Körpermasse ist nicht bekannt</translation>
    </message>
    <message>
        <source>of an animal without body heat of its own, it is no feeding rate</source>
        <translation>von einem Tier ohne eigene Körperwärme, es ist keine Fütterungsmenge</translation>
    </message>
    <message>
        <source>stated as fed, of a feed whose dry matter is not stated</source>
        <translation>bezogen auf Frischsubstanz, eines Futters, dessen Trockensubstanz nicht angegeben ist</translation>
    </message>
    <message>
        <source>? Not judged: %1.</source>
        <translation>? Nicht beurteilt: %1.</translation>
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
        <translation>Die Waage hat zwei Zahlen in einer Zeile geschickt (%1). Auf die nächste warten oder das Gewicht tippen.</translation>
    </message>
    <message>
        <source>The scale does not weigh in g, kg, oz or lb (%1). Set it to grams.</source>
        <translation>Die Waage wiegt nicht in g, kg, oz oder lb (%1). Sie auf Gramm stellen.</translation>
    </message>
    <message>
        <source>The scale says that its pan is overloaded or lifted. Clear it and tare again.</source>
        <translation>Die Waage sagt, dass ihre Schale überlastet oder abgehoben ist. Freimachen und neu tarieren.</translation>
    </message>
    <message>
        <source>What the scale sent was not whole; it is not used. If this goes on, check the cable and the speed of the port.</source>
        <translation>Was die Waage schickte, war nicht vollständig; es wird nicht verwendet. Geht das so weiter, Kabel und Geschwindigkeit des Anschlusses prüfen.</translation>
    </message>
    <message>
        <source>The scale sent %1 without a unit: the pan still moves, or its unit has to be chosen.</source>
        <translation>Die Waage schickte %1 ohne Einheit: sie kommt noch nicht zur Ruhe, oder ihre Einheit ist zu wählen.</translation>
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
        <translation>Die Waage an %1 ist weg: das Kabel prüfen. Gewichte lassen sich inzwischen tippen.</translation>
    </message>
    <message>
        <source>The scale at %1 cannot be reached (%2). Weights can be typed meanwhile.</source>
        <translation>Die Waage an %1 ist nicht erreichbar (%2). Gewichte lassen sich inzwischen tippen.</translation>
    </message>
</context>
<context>
    <name>Sheets</name>
    <message>
        <source>%1: a sheet is written as .pdf, .xlsx, .html or .json</source>
        <translation>%1: ein Blatt wird als .pdf, .xlsx, .html oder .json geschrieben</translation>
    </message>
</context>
<context>
    <name>Solving</name>
    <message>
        <source>solved in whole scale steps</source>
        <translation>gelöst in ganzen Waagenschritten</translation>
    </message>
    <message>
        <source>solved</source>
        <translation>gelöst</translation>
    </message>
    <message>
        <source>%1, proved best · %2</source>
        <translation>%1, nachweislich das Beste · %2</translation>
    </message>
    <message>
        <source>%1, best found in %2; the gap to the best possible is at most %3</source>
        <translation>%1, das Beste, was in %2 gefunden wurde; der Abstand zum bestmöglichen ist höchstens %3</translation>
    </message>
    <message>
        <source>to read: the grams as they were written</source>
        <translation>zum Lesen: die Gramm, wie sie aufgeschrieben wurden</translation>
    </message>
    <message>
        <source>as it was written: the solver would now give other grams</source>
        <translation>wie aufgeschrieben: heute gäbe der Löser andere Gramm</translation>
    </message>
    <message>
        <source>held: only the balance is recomputed</source>
        <translation>gehalten: nur die Bilanz wird neu berechnet</translation>
    </message>
    <message>
        <source>solving…</source>
        <translation>löst…</translation>
    </message>
    <message>
        <source>a good bowl is shown, looking for a better one…</source>
        <translation>eine gute Schale ist zu sehen, eine bessere wird gesucht…</translation>
    </message>
    <message>
        <source>no bowl keeps the hard rules</source>
        <translation>keine Schale hält die festen Regeln ein</translation>
    </message>
    <message>
        <source>nothing limits what is sought</source>
        <translation>nichts begrenzt, was gesucht wird</translation>
    </message>
    <message>
        <source>no answer in time</source>
        <translation>keine Antwort in der Zeit</translation>
    </message>
    <message>
        <source>a price is missing</source>
        <translation>ein Preis fehlt</translation>
    </message>
    <message>
        <source>the answer did not pass its check</source>
        <translation>die Antwort bestand ihre Prüfung nicht</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>Atwater</source>
        <translation>Atwater</translation>
    </message>
    <message>
        <source>modified Atwater</source>
        <translation>Atwater, angepasst</translation>
    </message>
    <message>
        <source>NRC 2006, dog</source>
        <translation>NRC 2006, Hund</translation>
    </message>
    <message>
        <source>NRC 2006, cat</source>
        <translation>NRC 2006, Katze</translation>
    </message>
    <message>
        <source>poultry AMEn</source>
        <translation>Geflügel, AMEn</translation>
    </message>
</context>
<context>
    <name>State</name>
    <message>
        <source>met</source>
        <translation>erfüllt</translation>
    </message>
    <message>
        <source>at limit</source>
        <translation>an der Grenze</translation>
    </message>
    <message>
        <source>short</source>
        <translation>zu wenig</translation>
    </message>
    <message>
        <source>over</source>
        <translation>zu viel</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message>
        <source>%1; a backup lies in %2</source>
        <translation>%1; eine Sicherung liegt in %2</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>is there already</source>
        <translation>gibt es schon</translation>
    </message>
    <message>
        <source>is a folder, not a collection</source>
        <translation>ist ein Ordner, kein Bestand</translation>
    </message>
    <message>
        <source>is no regular file</source>
        <translation>ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>is empty</source>
        <translation>ist leer</translation>
    </message>
    <message>
        <source>is no collection of Tarebowl</source>
        <translation>ist kein Bestand von Tarebowl</translation>
    </message>
    <message>
        <source>is a database of another program</source>
        <translation>ist eine Datenbank eines anderen Programms</translation>
    </message>
    <message>
        <source>is damaged</source>
        <translation>ist beschädigt</translation>
    </message>
    <message>
        <source>is damaged: it ends in its header</source>
        <translation>ist beschädigt: sie endet in ihrem Kopf</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>ist nicht lesbar</translation>
    </message>
    <message>
        <source>cannot be written</source>
        <translation>lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>cannot be made here</source>
        <translation>kann hier nicht angelegt werden</translation>
    </message>
    <message>
        <source>the file or its folder cannot be written</source>
        <translation>die Datei oder ihr Ordner lässt sich nicht beschreiben</translation>
    </message>
    <message>
        <source>was written by a newer Tarebowl; nothing was changed</source>
        <translation>wurde von einem neueren Tarebowl geschrieben; nichts wurde geändert</translation>
    </message>
    <message>
        <source>was written by a newer Tarebowl; nothing was copied</source>
        <translation>wurde von einem neueren Tarebowl geschrieben; nichts wurde kopiert</translation>
    </message>
    <message>
        <source>nothing of a collection can be found in it</source>
        <translation>darin ist nichts von einem Bestand zu finden</translation>
    </message>
    <message>
        <source>was written by an older Tarebowl and is open for reading only; copy it where it can be written and open the copy</source>
        <translation>wurde von einem älteren Tarebowl geschrieben und ist nur zum Lesen geöffnet; dorthin kopieren, wo geschrieben werden kann, und die Kopie öffnen</translation>
    </message>
    <message>
        <source>is being written by another window or command</source>
        <translation>wird gerade von einem anderen Fenster oder Befehl beschrieben</translation>
    </message>
    <message>
        <source>cannot be written: the disk is full</source>
        <translation>lässt sich nicht schreiben: der Datenträger ist voll</translation>
    </message>
    <message>
        <source>cannot be read or written: the disk reports an error</source>
        <translation>lässt sich nicht lesen oder schreiben: der Datenträger meldet einen Fehler</translation>
    </message>
    <message>
        <source>the change breaks a rule of the collection</source>
        <translation>die Änderung verletzt eine Regel des Bestands</translation>
    </message>
    <message>
        <source>the collection could not be read or written</source>
        <translation>der Bestand konnte nicht gelesen oder geschrieben werden</translation>
    </message>
    <message>
        <source>was moved, deleted or replaced while it was open; nothing was written. Put it back where it was, or open it anew</source>
        <translation>wurde verschoben, gelöscht oder ersetzt, während sie geöffnet war; nichts wurde geschrieben. Dorthin zurücklegen, wo sie war, oder neu öffnen</translation>
    </message>
    <message>
        <source>daily</source>
        <translation>täglich</translation>
    </message>
    <message>
        <source>before-upgrade</source>
        <translation>vor dem Anheben auf eine neue Fassung</translation>
    </message>
    <message>
        <source>before-restore</source>
        <translation>vor dem Wiederherstellen</translation>
    </message>
    <message>
        <source>the server asks for a password, and none was given; open it again and type it, or put it into ~/.pgpass</source>
        <translation>der Server fragt nach einem Passwort, und es wurde keines angegeben; öffnen Sie den Bestand noch einmal und tippen Sie es ein, oder tragen Sie es in ~/.pgpass ein</translation>
    </message>
    <message>
        <source>the server does not accept the password; open it again and type it anew, or look into ~/.pgpass</source>
        <translation>der Server nimmt das Passwort nicht an; öffnen Sie den Bestand noch einmal und tippen Sie es neu ein, oder sehen Sie in ~/.pgpass nach</translation>
    </message>
    <message>
        <source>the server does not let you in; ask whoever runs it</source>
        <translation>der Server lässt Sie nicht ein; fragen Sie, wer ihn betreibt</translation>
    </message>
    <message>
        <source>the server has no such database; look at its name, or ask whoever runs the server to make one</source>
        <translation>der Server hat keine solche Datenbank; prüfen Sie ihren Namen, oder lassen Sie eine anlegen von dem, der den Server betreibt</translation>
    </message>
    <message>
        <source>you may not open this database; ask whoever runs the server</source>
        <translation>Sie dürfen diese Datenbank nicht öffnen; fragen Sie, wer den Server betreibt</translation>
    </message>
    <message>
        <source>the server does not answer; look at its name, at the network, and whether it runs</source>
        <translation>der Server antwortet nicht; prüfen Sie seinen Namen, das Netz und ob er läuft</translation>
    </message>
    <message>
        <source>the database holds no collection; tarebowl server init makes one in it</source>
        <translation>die Datenbank enthält keinen Bestand; tarebowl server init legt einen darin an</translation>
    </message>
    <message>
        <source>was raised by a newer Tarebowl; install that here, too. Nothing was changed</source>
        <translation>wurde von einem neueren Tarebowl angehoben; installieren Sie dieses auch hier. Nichts wurde geändert</translation>
    </message>
    <message>
        <source>was made by an older Tarebowl; whoever set it up raises it with tarebowl server upgrade</source>
        <translation>wurde von einem älteren Tarebowl angelegt; wer ihn eingerichtet hat, hebt ihn mit tarebowl server upgrade an</translation>
    </message>
    <message>
        <source>nobody has let you into this collection; whoever runs it does so with tarebowl server add</source>
        <translation>niemand hat Sie in diesen Bestand eingelassen; wer ihn betreibt, tut das mit tarebowl server add</translation>
    </message>
    <message>
        <source>your role on the server may not do this, and nothing was written</source>
        <translation>Ihre Rolle auf dem Server darf das nicht, und nichts wurde geschrieben</translation>
    </message>
    <message>
        <source>the connection to the server was lost; what was not said to be saved was not written</source>
        <translation>die Verbindung zum Server ging verloren; was nicht als gespeichert gemeldet wurde, ist nicht geschrieben</translation>
    </message>
    <message>
        <source>the connection to the server was lost, and it does not answer</source>
        <translation>die Verbindung zum Server ging verloren, und er antwortet nicht</translation>
    </message>
    <message>
        <source>the connection to the server was lost while it was being written; nothing was kept of it</source>
        <translation>die Verbindung zum Server ging verloren, während geschrieben wurde; nichts davon wurde behalten</translation>
    </message>
    <message>
        <source>a password does not belong in an address, where others can read it; leave it out, and it is asked for, or read from ~/.pgpass</source>
        <translation>ein Passwort gehört nicht in eine Adresse, wo andere es lesen können; lassen Sie es weg, dann wird danach gefragt oder es wird aus ~/.pgpass gelesen</translation>
    </message>
    <message>
        <source>was moved or removed on the server while it was open; nothing was written. Open it where it is now</source>
        <translation>wurde auf dem Server verschoben oder entfernt, während er offen war; nichts wurde geschrieben. Öffnen Sie ihn dort, wo er jetzt ist</translation>
    </message>
    <message>
        <source>cannot be written: the server&apos;s disk is full; nothing was written. Tell whoever runs the server</source>
        <translation>kann nicht geschrieben werden: die Platte des Servers ist voll; nichts wurde geschrieben. Sagen Sie es dem, der den Server betreibt</translation>
    </message>
    <message>
        <source>cannot be read or written: the server&apos;s disk reports an error</source>
        <translation>kann nicht gelesen oder geschrieben werden: die Platte des Servers meldet einen Fehler</translation>
    </message>
    <message>
        <source>is damaged on the server; tell whoever runs it</source>
        <translation>ist auf dem Server beschädigt; sagen Sie es dem, der ihn betreibt</translation>
    </message>
    <message>
        <source>the server&apos;s certificate was not accepted: it has expired by this machine&apos;s clock, or it is signed by nobody whom this machine trusts. Look at the clock, and ask whoever runs the server for a valid one, or for the certificate of who signs for it, which belongs in ~/.postgresql/root.crt</source>
        <translation>das Zertifikat des Servers wurde nicht angenommen: nach der Uhr dieses Rechners ist es abgelaufen, oder niemand, dem dieser Rechner traut, hat es unterschrieben. Prüfen Sie die Uhr, und bitten Sie, wer den Server betreibt, um ein gültiges oder um das Zertifikat dessen, der dafür unterschreibt; es gehört nach ~/.postgresql/root.crt</translation>
    </message>
    <message>
        <source>the certificate of who signs for the server is not there; ask whoever runs the server for it and put it into ~/.postgresql/root.crt</source>
        <translation>das Zertifikat dessen, der für den Server unterschreibt, ist nicht da; bitten Sie darum, wer den Server betreibt, und legen Sie es nach ~/.postgresql/root.crt</translation>
    </message>
    <message>
        <source>the server&apos;s certificate is of another name than the address; write the server&apos;s name as it stands there, or ask whoever runs the server</source>
        <translation>das Zertifikat des Servers lautet auf einen anderen Namen als die Adresse; schreiben Sie den Namen des Servers so, wie er dort steht, oder fragen Sie, wer den Server betreibt</translation>
    </message>
    <message>
        <source>no secure connection came about; ask whoever runs the server whether it offers one</source>
        <translation>es kam keine sichere Verbindung zustande; fragen Sie, wer den Server betreibt, ob er eine anbietet</translation>
    </message>
</context>
<context>
    <name>Story</name>
    <message>
        <source>mass of %1 on %2: %3</source>
        <translation>Masse von %1 am %2: %3</translation>
    </message>
    <message>
        <source>condition of %1 on %2: %3</source>
        <translation>Kondition von %1 am %2: %3</translation>
    </message>
    <message>
        <source>%1 in %2 from %3</source>
        <translation>%1 in %2 ab %3</translation>
    </message>
    <message>
        <source>profile %1, version %2</source>
        <translation>Profil %1, Version %2</translation>
    </message>
    <message>
        <source>energy plan from %1</source>
        <translation>Energieplan ab %1</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>mass, kg</source>
        <translation>Masse, kg</translation>
    </message>
    <message>
        <source>until</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gegangen</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>why the model stands in</source>
        <translation>warum das Modell dafür steht</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation>%1 Einträge</translation>
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
        <source>%1: %2 instead of %3</source>
        <translation>%1: %2 statt %3</translation>
    </message>
    <message>
        <source>%1: added</source>
        <translation>%1: hinzugefügt</translation>
    </message>
    <message>
        <source>%1: taken away</source>
        <translation>%1: weggenommen</translation>
    </message>
    <message>
        <source>%1%2: %3 instead of %4</source>
        <translation>%1%2: %3 statt %4</translation>
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
        <translation>%1 in der Gruppe „%2“ dieses Bestands, %3</translation>
    </message>
    <message>
        <source> · %1 without a value</source>
        <translation> · %1 ohne Wert</translation>
    </message>
</context>
<context>
    <name>Study</name>
    <message>
        <source>Study of %1</source>
        <translation>Studie %1</translation>
    </message>
    <message>
        <source>%1: a plan is written as .pdf or .html</source>
        <translation>%1: ein Plan wird als .pdf oder .html geschrieben</translation>
    </message>
    <message>
        <source>%1: a study is written as .pdf, .xlsx or .html</source>
        <translation>%1: eine Studie wird als .pdf, .xlsx oder .html geschrieben</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>all food as fed</source>
        <translation>alles Futter als Frischsubstanz</translation>
    </message>
    <message>
        <source>“%1”: no nutrient is called “%2”. Write a name and a number: Ca 1850.</source>
        <translation>„%1“: kein Nährstoff heißt „%2“. Einen Namen und eine Zahl schreiben: Ca 1850.</translation>
    </message>
    <message>
        <source>“%1”: after the nutrient comes its number, and its scatter if it is known: Ca 1850 ± 90.</source>
        <translation>„%1“: nach dem Nährstoff kommt seine Zahl, und seine Streuung, wenn sie bekannt ist: Ca 1850 ± 90.</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>So that the mean of %1 is known to ± %2 %3 with %4 confidence. On %5 days from %6 to %7 it was %8 %3 per animal and day, and went up and down by %9 %3 (standard deviation).</source>
        <translation>Damit das Mittel von %1 auf ± %2 %3 mit %4 Sicherheit bekannt ist. An %5 Tagen vom %6 bis zum %7 waren es %8 %3 je Tier und Tag, und es schwankte um %9 %3 (Standardabweichung).</translation>
    </message>
    <message>
        <source> A day resembles the one before it, so that each tells less: %1 %2 is planned with.</source>
        <translation> Ein Tag gleicht dem vorigen, so dass jeder weniger sagt: geplant wird mit %1 %2.</translation>
    </message>
    <message>
        <source>Sheets: print that of %1 for each day, and weigh every food into its bowl.</source>
        <translation>Zettel: den von %1 für jeden Tag drucken, und jedes Futtermittel in seine Schale wiegen.</translation>
    </message>
    <message>
        <source>the section</source>
        <translation>das Revier</translation>
    </message>
    <message>
        <source>Weigh back, food by food: %1.</source>
        <translation>Zurückwiegen, Futtermittel für Futtermittel: %1.</translation>
    </message>
    <message>
        <source>A control pan each day in %1, any %2: one of %3.</source>
        <translation>Jeden Tag eine Kontrollschale in %1, irgendein %2: eines von %3.</translation>
    </message>
    <message>
        <source>the same place</source>
        <translation>demselben Ort</translation>
    </message>
    <message>
        <source>food</source>
        <translation>Futtermittel</translation>
    </message>
    <message>
        <source>The last leftovers and pans come back on %1.</source>
        <translation>Die letzten Reste und Kontrollschalen kommen am %1 zurück.</translation>
    </message>
    <message>
        <source>The group is no longer in the collection: choose another.</source>
        <translation>Die Gruppe ist nicht mehr im Bestand: eine andere wählen.</translation>
    </message>
    <message>
        <source>It had no bowl in the week before the first day: nobody knows what it is fed. Choose a first day that follows days which were weighed.</source>
        <translation>Sie hatte in der Woche vor dem ersten Tag keine Schale: niemand weiß, was sie gefüttert bekommt. Einen ersten Tag wählen, der auf gewogene Tage folgt.</translation>
    </message>
    <message>
        <source>Of the eight weeks before, what it ate is known on %1 of the days: weigh back at least two in full first.</source>
        <translation>Von den acht Wochen davor ist an %1 der Tage bekannt, was sie fraß: zuerst mindestens zwei ganz zurückwiegen.</translation>
    </message>
    <message>
        <source>It ate none of it in the eight weeks before: follow something else.</source>
        <translation>Sie fraß in den acht Wochen davor nichts davon: etwas anderes verfolgen.</translation>
    </message>
    <message>
        <source>More than ten years would be needed: ask for less precision.</source>
        <translation>Mehr als zehn Jahre wären nötig: weniger Genauigkeit verlangen.</translation>
    </message>
    <message>
        <source>%1: %2 g fresh, %3 g DM in 100 g</source>
        <translation>%1: %2 g frisch, %3 g TS in 100 g</translation>
    </message>
    <message>
        <source>; %1 per 100 g DM</source>
        <translation>; %1 je 100 g TS</translation>
    </message>
    <message>
        <source>The last day lies before the first: turn them round.</source>
        <translation>Der letzte Tag liegt vor dem ersten: umdrehen.</translation>
    </message>
    <message>
        <source>Faeces that weigh nothing say nothing: type the grams as found.</source>
        <translation>Kot, der nichts wiegt, sagt nichts: die Gramm tippen, wie gefunden.</translation>
    </message>
    <message>
        <source>Dry matter is more than 0 and at most 100 g in 100 g fresh.</source>
        <translation>Trockensubstanz ist mehr als 0 und höchstens 100 g in 100 g frisch.</translation>
    </message>
    <message>
        <source>A content is 0 or more.</source>
        <translation>Ein Gehalt ist 0 oder mehr.</translation>
    </message>
    <message>
        <source>A nutrient stands there twice: leave one of them out.</source>
        <translation>Ein Nährstoff steht zweimal da: einen auslassen.</translation>
    </message>
    <message>
        <source>Metabolizable energy is no property of faeces: leave energy out.</source>
        <translation>Umsetzbare Energie ist keine Eigenschaft von Kot: die Energie auslassen.</translation>
    </message>
</context>
<context>
    <name>Suggest</name>
    <message>
        <source>closes the gap</source>
        <translation>schließt die Lücke</translation>
    </message>
    <message>
        <source>helps, but the hard rules would still contradict each other</source>
        <translation>hilft, aber die festen Regeln widersprächen einander weiter</translation>
    </message>
    <message>
        <source>the hard rules would hold, and other targets be missed</source>
        <translation>die festen Regeln hielten, und andere Zielwerte wären verfehlt</translation>
    </message>
    <message>
        <source>leaves %1 of the gap</source>
        <translation>lässt %1 der Lücke</translation>
    </message>
    <message>
        <source>; its values are known for %1 of the rules</source>
        <translation>; seine Werte sind für %1 der Regeln bekannt</translation>
    </message>
    <message>
        <source>Allow %1 g %2</source>
        <translation>%1 g %2 erlauben</translation>
    </message>
    <message>
        <source>%1 g %2 in place of %3</source>
        <translation>%1 g %2 statt %3</translation>
    </message>
    <message>
        <source>Add %1 g %2</source>
        <translation>%1 g %2 hinzufügen</translation>
    </message>
    <message>
        <source>the hard rules would hold</source>
        <translation>die festen Regeln hielten</translation>
    </message>
    <message>
        <source>every target would hold</source>
        <translation>jeder Zielwert wäre erfüllt</translation>
    </message>
    <message>
        <source>these could hold together; others would still fight</source>
        <translation>diese könnten zusammen gelten; andere stritten weiter</translation>
    </message>
    <message>
        <source>, in amounts between the scale&apos;s steps</source>
        <translation>, in Mengen zwischen den Waagenschritten</translation>
    </message>
    <message>
        <source>%1 at least %2</source>
        <translation>%1 mindestens %2</translation>
    </message>
    <message>
        <source>%1 at most %2</source>
        <translation>%1 höchstens %2</translation>
    </message>
    <message>
        <source>Ask for at least %1 of the group %2</source>
        <translation>Mindestens %1 aus der Gruppe %2 verlangen</translation>
    </message>
    <message>
        <source>Ask for at most %1 of the group %2</source>
        <translation>Höchstens %1 aus der Gruppe %2 verlangen</translation>
    </message>
</context>
<context>
    <name>Swaps</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 und %n weiteres</numerusform>
            <numerusform>%1 und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>still in zone</source>
        <translation>weiter im Bereich</translation>
    </message>
    <message>
        <source>now in zone</source>
        <translation>jetzt im Bereich</translation>
    </message>
    <message>
        <source>now over</source>
        <translation>jetzt zu viel</translation>
    </message>
    <message>
        <source>over as before</source>
        <translation>zu viel wie zuvor</translation>
    </message>
    <message>
        <source>now short</source>
        <translation>jetzt zu wenig</translation>
    </message>
    <message>
        <source>short as before</source>
        <translation>zu wenig wie zuvor</translation>
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
        <translation>Energie %1 → %2 kcal</translation>
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
        <translation>mit %1</translation>
    </message>
    <message numerus="yes">
        <source>eaten %1 in %n bowls</source>
        <translation>
            <numerusform>zu %1 gefressen, aus %n Schale</numerusform>
            <numerusform>zu %1 gefressen, aus %n Schalen</numerusform>
        </translation>
    </message>
    <message>
        <source>eaten before: ?</source>
        <translation>bisher gefressen: ?</translation>
    </message>
    <message>
        <source>unknown: %1</source>
        <translation>unbekannt: %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>%1 je Tier</translation>
    </message>
    <message>
        <source> (the animal is not known)</source>
        <translation> (das Tier ist nicht bekannt)</translation>
    </message>
    <message>
        <source> (set aside: %1)</source>
        <translation> (zurückgestellt: %1)</translation>
    </message>
    <message>
        <source>Keeper may decide</source>
        <translation>Tierpfleger darf entscheiden</translation>
    </message>
    <message>
        <source>another food group</source>
        <translation>andere Futtergruppe</translation>
    </message>
    <message>
        <source>no longer met: %1</source>
        <translation>nicht mehr erfüllt: %1</translation>
    </message>
    <message>
        <source>may not be met: %1</source>
        <translation>vielleicht nicht erfüllt: %1</translation>
    </message>
    <message>
        <source>a caution</source>
        <translation>ein Warnhinweis</translation>
    </message>
    <message>
        <source>Ask the nutritionist: %1</source>
        <translation>Ernährungsfachkraft fragen: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n more would do, further off</source>
        <translation>
            <numerusform>%n weiteres ginge, aber ferner</numerusform>
            <numerusform>%n weitere gingen, aber ferner</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not for this animal</source>
        <translation>
            <numerusform>%n nicht für dieses Tier</numerusform>
            <numerusform>%n nicht für dieses Tier</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n against a structure rule</source>
        <translation>
            <numerusform>%n gegen eine Strukturregel</numerusform>
            <numerusform>%n gegen eine Strukturregel</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n in no amount within the hard rules</source>
        <translation>
            <numerusform>%n in keiner Menge innerhalb der festen Regeln</numerusform>
            <numerusform>%n in keiner Menge innerhalb der festen Regeln</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n at their limits</source>
        <translation>
            <numerusform>%n an seinen Grenzen</numerusform>
            <numerusform>%n an ihren Grenzen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of unknown water</source>
        <translation>
            <numerusform>%n mit unbekanntem Wassergehalt</numerusform>
            <numerusform>%n mit unbekanntem Wassergehalt</numerusform>
        </translation>
    </message>
    <message>
        <source>D: equal dry matter, %1</source>
        <translation>D: gleiche Trockensubstanz, %1</translation>
    </message>
    <message>
        <source>E: equal energy, %1</source>
        <translation>E: gleiche Energie, %1</translation>
    </message>
</context>
<context>
    <name>Table</name>
    <message>
        <source>Copy table</source>
        <translation>Tabelle kopieren</translation>
    </message>
</context>
<context>
    <name>Target</name>
    <message>
        <source>% as fed</source>
        <translation>% der FS</translation>
    </message>
    <message>
        <source>% of energy</source>
        <translation>% der Energie</translation>
    </message>
    <message>
        <source>% of DM</source>
        <translation>% der TS</translation>
    </message>
    <message>
        <source>from memory: verify before use</source>
        <translation>aus dem Gedächtnis: vor Gebrauch prüfen</translation>
    </message>
    <message>
        <source>house rule</source>
        <translation>Hausregel</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>erfunden</translation>
    </message>
    <message>
        <source>computed from a published value</source>
        <translation>aus einem veröffentlichten Wert berechnet</translation>
    </message>
    <message>
        <source>%1 : %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>exactly %1</source>
        <translation>genau %1</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
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
        <source>model species: %1</source>
        <translation>Modelltierart: %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>the choice among %1</source>
        <translation>die Auswahl aus %1</translation>
    </message>
</context>
<context>
    <name>Today</name>
    <message>
        <source>1 bowl to prepare</source>
        <translation>1 Schale zuzubereiten</translation>
    </message>
    <message>
        <source>%1 bowls to prepare</source>
        <translation>%1 Schalen zuzubereiten</translation>
    </message>
    <message>
        <source>no bowl to prepare</source>
        <translation>keine Schale zuzubereiten</translation>
    </message>
    <message>
        <source>%1: all foods are weighed in</source>
        <translation>%1: alle Futtermittel sind eingewogen</translation>
    </message>
    <message>
        <source>%1: %2 of %3 foods are weighed in, %4 missing</source>
        <translation>%1: %2 von %3 Futtermitteln sind eingewogen, %4 fehlen</translation>
    </message>
    <message>
        <source>No section</source>
        <translation>Kein Revier</translation>
    </message>
    <message>
        <source>%1 without a bowl: no diet in force, or nobody knows how many they are</source>
        <translation>%1 ohne Schale: keine Ration gilt, oder niemand weiß, wie viele es sind</translation>
    </message>
    <message>
        <source>1 group</source>
        <translation>1 Gruppe</translation>
    </message>
    <message>
        <source>%1 groups</source>
        <translation>%1 Gruppen</translation>
    </message>
    <message>
        <source>leftovers of 1 bowl of yesterday are not weighed</source>
        <translation>Futterreste von 1 Schale von gestern sind nicht gewogen</translation>
    </message>
    <message>
        <source>leftovers of %1 bowls of yesterday are not weighed</source>
        <translation>Futterreste von %1 Schalen von gestern sind nicht gewogen</translation>
    </message>
    <message>
        <source>%1 g %2</source>
        <translation>%1 g %2</translation>
    </message>
    <message>
        <source>%1, bowl %2 on %3: %4 in place of %5 (%6, %7)</source>
        <translation>%1, Schale %2 am %3: %4 statt %5 (%6, %7)</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>any %1</source>
        <translation>irgendein %1</translation>
    </message>
    <message>
        <source>%1: %2, %3 g put out on %4, %5</source>
        <translation>%1: %2, %3 g hingestellt am %4, %5</translation>
    </message>
    <message>
        <source>is not weighed yet</source>
        <translation>ist noch nicht gewogen</translation>
    </message>
    <message>
        <source>stands until tomorrow</source>
        <translation>steht bis morgen</translation>
    </message>
    <message>
        <source> (no section of this name: tarebowl pans takes its weight)</source>
        <translation> (kein Revier heißt so: tarebowl pans nimmt das Gewicht)</translation>
    </message>
    <message>
        <source>Control pans that still stand</source>
        <translation>Kontrollschalen, die noch stehen</translation>
    </message>
    <message>
        <source>Swaps made today</source>
        <translation>Heute getauscht</translation>
    </message>
    <message>
        <source>Waiting for a decision</source>
        <translation>Wartet auf eine Entscheidung</translation>
    </message>
    <message>
        <source>swap: %1</source>
        <translation>Tausch: %1</translation>
    </message>
    <message>
        <source>diet: %1, version %2, for %3</source>
        <translation>Ration: %1, Version %2, für %3</translation>
    </message>
</context>
<context>
    <name>Told</name>
    <message>
        <source>the species&apos; name</source>
        <translation>den Namen der Tierart</translation>
    </message>
    <message>
        <source>its scientific name</source>
        <translation>ihren wissenschaftlichen Namen</translation>
    </message>
    <message>
        <source>the groups of animals it belongs to</source>
        <translation>die Tiergruppen, zu denen sie gehört</translation>
    </message>
    <message>
        <source>a model species</source>
        <translation>eine Modelltierart</translation>
    </message>
    <message>
        <source>a sentence on why the model stands in</source>
        <translation>einen Satz, warum das Modell dafür steht</translation>
    </message>
    <message>
        <source>a name for the group</source>
        <translation>einen Namen für die Gruppe</translation>
    </message>
    <message>
        <source>how many animals there are</source>
        <translation>wie viele Tiere es sind</translation>
    </message>
    <message>
        <source>the mass of one animal</source>
        <translation>die Masse eines Tieres</translation>
    </message>
    <message>
        <source>how the energy need is worked out</source>
        <translation>wie der Energiebedarf berechnet wird</translation>
    </message>
    <message>
        <source>take in %1</source>
        <translation>%1 aufnehmen</translation>
    </message>
    <message>
        <source>start the targets of %1 from a model</source>
        <translation>die Zielwerte von %1 aus einem Modell beginnen</translation>
    </message>
</context>
<context>
    <name>TraceWords</name>
    <message>
        <source>minimum</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>maximum</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>%1 %2 g</source>
        <translation>%1 %2 g</translation>
    </message>
    <message>
        <source>%1 missed by %2</source>
        <translation>%1 verfehlt um %2</translation>
    </message>
    <message>
        <source>%1 %2 to %3 g</source>
        <translation>%1 %2 bis %3 g</translation>
    </message>
    <message>
        <source>what gives: %1</source>
        <translation>was nachgibt: %1</translation>
    </message>
    <message>
        <source>what comes in: %1</source>
        <translation>was hinzukommt: %1</translation>
    </message>
    <message>
        <source>no food changes</source>
        <translation>kein Futtermittel ändert sich</translation>
    </message>
    <message>
        <source>Over all of this range the hard rules contradict each other.</source>
        <translation>In dieser ganzen Spanne widersprechen die festen Regeln einander.</translation>
    </message>
    <message>
        <source>Nothing limits what is sought: give a maximum to a food or a target.</source>
        <translation>Nichts begrenzt, was gesucht wird: einem Futtermittel oder Zielwert ein Maximum geben.</translation>
    </message>
    <message>
        <source>No answer in time.</source>
        <translation>Keine Antwort in der Zeit.</translation>
    </message>
    <message>
        <source>No price: %1. Cost cannot be traded, for unknown is not free of charge.</source>
        <translation>Kein Preis: %1. Gegen Kosten lässt sich nicht abwägen, denn unbekannt ist nicht umsonst.</translation>
    </message>
    <message>
        <source>Nothing can be traced here (%1).</source>
        <translation>Hier lässt sich nichts verfolgen (%1).</translation>
    </message>
    <message>
        <source>%1 against %2</source>
        <translation>%1 gegen %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>cost a day</source>
        <translation>Kosten am Tag</translation>
    </message>
    <message>
        <source>distance from now</source>
        <translation>Abstand von jetzt</translation>
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
        <translation>eine leere Schale</translation>
    </message>
    <message>
        <source>At %1: %2.</source>
        <translation>Bei %1: %2.</translation>
    </message>
    <message>
        <source>%1 from %2 to %3: %4.</source>
        <translation>%1 von %2 bis %3: %4.</translation>
    </message>
    <message>
        <source>Something else begins to give at %1.</source>
        <translation>Bei %1 beginnt etwas anderes nachzugeben.</translation>
    </message>
    <message>
        <source>Below %1 the hard rules contradict each other.</source>
        <translation>Unter %1 widersprechen die festen Regeln einander.</translation>
    </message>
    <message>
        <source>Beyond %1 the hard rules contradict each other.</source>
        <translation>Über %1 widersprechen die festen Regeln einander.</translation>
    </message>
    <message>
        <source>In amounts between the scale&apos;s steps.</source>
        <translation>In Mengen zwischen den Waagenschritten.</translation>
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
        <translation>%1 übrig, %2</translation>
    </message>
    <message numerus="yes">
        <source>Cut off from the server: %n entry(ies) wait.</source>
        <translation>
            <numerusform>Vom Server getrennt: %n Eintrag wartet.</numerusform>
            <numerusform>Vom Server getrennt: %n Einträge warten.</numerusform>
        </translation>
    </message>
    <message>
        <source>Cut off from the server.</source>
        <translation>Vom Server getrennt.</translation>
    </message>
    <message>
        <source>The kitchen goes on with this desk&apos;s copy of %1; all other rooms wait for the server.</source>
        <translation>Die Küche arbeitet mit der Kopie dieses Platzes vom %1 weiter; alle anderen Räume warten auf den Server.</translation>
    </message>
    <message>
        <source>This desk has no copy yet: all rooms wait for the server.</source>
        <translation>Dieser Platz hat noch keine Kopie: Alle Räume warten auf den Server.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) wait for the server.</source>
        <translation>
            <numerusform>%n Eintrag wartet auf den Server.</numerusform>
            <numerusform>%n Einträge warten auf den Server.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n entry(ies) the server has something else: choose what counts.</source>
        <translation>
            <numerusform>Zu %n Eintrag hat der Server etwas anderes: Wählen Sie, was zählt.</numerusform>
            <numerusform>Zu %n Einträgen hat der Server etwas anderes: Wählen Sie, was zählt.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 übrig</translation>
    </message>
    <message>
        <source>all eaten</source>
        <translation>alles gefressen</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation>nicht gewogen</translation>
    </message>
    <message>
        <source>about %1 left</source>
        <translation>etwa %1 übrig</translation>
    </message>
    <message>
        <source>%1 spilled</source>
        <translation>%1 verschüttet</translation>
    </message>
    <message>
        <source>%1 stolen</source>
        <translation>%1 gestohlen</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>cannot be read any more</source>
        <translation>nicht mehr lesbar</translation>
    </message>
    <message>
        <source>%1, weighed in</source>
        <translation>%1, eingewogen</translation>
    </message>
    <message>
        <source>%1, leftover</source>
        <translation>%1, Rest</translation>
    </message>
    <message>
        <source>left of all together</source>
        <translation>von allem zusammen übrig</translation>
    </message>
    <message>
        <source>It waits, and is sent in its turn when the server answers.</source>
        <translation>Er wartet und wird gesendet, wenn er an der Reihe ist und der Server antwortet.</translation>
    </message>
    <message>
        <source>The server did not take it: %1. Yours writes it there if it can be; theirs sets it aside on this desk.</source>
        <translation>Der Server hat ihn nicht angenommen: %1. „Eigener zählt“ schreibt ihn dort hin, wenn es geht; „Anderer zählt“ legt ihn an diesem Platz beiseite.</translation>
    </message>
    <message>
        <source>The server has something else: %1. If yours counts, it corrects what is there; if theirs counts, yours is kept beside it.</source>
        <translation>Der Server hat etwas anderes: %1. Zählt der eigene, so berichtigt er, was dort steht; zählt der andere, so bleibt der eigene daneben stehen.</translation>
    </message>
</context>
<context>
    <name>WholeFile</name>
    <message>
        <source>%1 was not written: %2</source>
        <translation>%1 wurde nicht geschrieben: %2</translation>
    </message>
</context>
<context>
    <name>Why</name>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 weitere</translation>
    </message>
    <message>
        <source> (from memory: verify)</source>
        <translation> (aus dem Gedächtnis: prüfen)</translation>
    </message>
    <message>
        <source>%1 is not sure enough.</source>
        <translation>%1 ist nicht sicher genug.</translation>
    </message>
    <message>
        <source>Its mean, %1, lies in the zone, but with the scatter of the foods the target holds with a chance of only %2.</source>
        <translation>Der Mittelwert, %1, liegt im Bereich, aber bei der Streuung der Futtermittel hält der Zielwert nur mit einer Wahrscheinlichkeit von %2.</translation>
    </message>
    <message>
        <source>%1 is short by %2:</source>
        <translation>%1 ist um %2 zu wenig:</translation>
    </message>
    <message>
        <source>%1 is over by %2:</source>
        <translation>%1 ist um %2 zu viel:</translation>
    </message>
    <message>
        <source>%1 is over: none is allowed.</source>
        <translation>%1 ist zu viel: nichts davon ist erlaubt.</translation>
    </message>
    <message>
        <source>%1 instead of at least %2.</source>
        <translation>%1 statt mindestens %2.</translation>
    </message>
    <message>
        <source>%1 instead of at most %2.</source>
        <translation>%1 statt höchstens %2.</translation>
    </message>
    <message>
        <source> A hard rule.</source>
        <translation> Eine feste Regel.</translation>
    </message>
    <message>
        <source>With these foods, limits and locks</source>
        <translation>Mit diesen Futtermitteln, Grenzen und Sperren</translation>
    </message>
    <message>
        <source>With these foods and limits</source>
        <translation>Mit diesen Futtermitteln und Grenzen</translation>
    </message>
    <message>
        <source>%1, no bowl holds all of these together:</source>
        <translation>%1 hält keine Schale all dies zusammen ein:</translation>
    </message>
    <message>
        <source>%1, no bowl holds %2.</source>
        <translation>%1 hält keine Schale dies ein: %2.</translation>
    </message>
    <message>
        <source>%1, the hard rules contradict each other.</source>
        <translation>%1 widersprechen die festen Regeln einander.</translation>
    </message>
    <message>
        <source>The grams shown are the last ones and do not keep the rules.</source>
        <translation>Die gezeigten Gramm sind die letzten und halten die Regeln nicht ein.</translation>
    </message>
    <message>
        <source>Nothing limits what is sought.</source>
        <translation>Nichts begrenzt, was gesucht wird.</translation>
    </message>
    <message>
        <source>Give a maximum to a food or a target, or seek the diet closest to now.</source>
        <translation>Einem Futtermittel oder Zielwert ein Maximum geben, oder die Ration suchen, die der jetzigen am nächsten ist.</translation>
    </message>
    <message>
        <source>No answer in time.</source>
        <translation>Keine Antwort in der Zeit.</translation>
    </message>
    <message>
        <source>The grams shown are the last ones. Fewer foods or locks make it easier.</source>
        <translation>Die gezeigten Gramm sind die letzten. Weniger Futtermittel oder Sperren machen es leichter.</translation>
    </message>
    <message>
        <source>The cheapest bowl cannot be sought: no price for %1.</source>
        <translation>Die billigste Schale lässt sich nicht suchen: kein Preis für %1.</translation>
    </message>
    <message>
        <source>Unknown is not free of charge. Prices stand with the foods in the Foods room; the grams shown are the last ones.</source>
        <translation>Unbekannt ist nicht umsonst. Preise stehen bei den Futtermitteln im Raum „Futter“; die gezeigten Gramm sind die letzten.</translation>
    </message>
    <message>
        <source>The answer did not pass its own check and is not shown.</source>
        <translation>Die Antwort bestand ihre eigene Prüfung nicht und wird nicht gezeigt.</translation>
    </message>
    <message>
        <source>At least what is shown: %1.</source>
        <translation>Mindestens, was gezeigt ist: %1.</translation>
    </message>
    <message>
        <source>No value for %1, %2 of the dry matter.</source>
        <translation>Kein Wert für %1, %2 der Trockensubstanz.</translation>
    </message>
    <message>
        <source>Nobody can judge %1.</source>
        <translation>Niemand kann %1 beurteilen.</translation>
    </message>
    <message>
        <source>No food in the bowl has a value for it. Unknown is not zero.</source>
        <translation>Kein Futtermittel der Schale hat einen Wert dafür. Unbekannt ist nicht null.</translation>
    </message>
    <message>
        <source>%1 is held at %2 g.</source>
        <translation>%1 ist auf %2 g gehalten.</translation>
    </message>
    <message>
        <source>That is above its maximum of %1 g.</source>
        <translation>Das liegt über seinem Maximum von %1 g.</translation>
    </message>
    <message>
        <source>That is below its minimum of %1 g.</source>
        <translation>Das liegt unter seinem Minimum von %1 g.</translation>
    </message>
    <message>
        <source>%1 at its minimum</source>
        <translation>%1 an seinem Minimum</translation>
    </message>
    <message>
        <source>%1 at its maximum</source>
        <translation>%1 an seinem Maximum</translation>
    </message>
    <message>
        <source>No room left:</source>
        <translation>Kein Spielraum mehr:</translation>
    </message>
    <message>
        <source>No cheaper bowl meets the targets: %1 per animal a day.</source>
        <translation>Keine billigere Schale erfüllt die Zielwerte: %1 je Tier und Tag.</translation>
    </message>
    <message>
        <source>No bowl of fewer than %1 foods meets the targets; of such bowls it is the closest.</source>
        <translation>Keine Schale aus weniger als %1 Futtermitteln erfüllt die Zielwerte; von solchen Schalen ist es die nächste.</translation>
    </message>
    <message>
        <source>No bowl that meets the targets holds less %1: %2 per animal a day.</source>
        <translation>Keine Schale, die die Zielwerte erfüllt, enthält weniger %1: %2 je Tier und Tag.</translation>
    </message>
    <message>
        <source>No bowl that meets the targets holds more %1: %2 per animal a day.</source>
        <translation>Keine Schale, die die Zielwerte erfüllt, enthält mehr %1: %2 je Tier und Tag.</translation>
    </message>
    <message>
        <source>No bowl that meets the targets lies closer to the diet as it is now.</source>
        <translation>Keine Schale, die die Zielwerte erfüllt, liegt näher an der Ration, wie sie jetzt ist.</translation>
    </message>
    <message>
        <source>No bowl that meets the targets lies closer to equal grams of every food.</source>
        <translation>Keine Schale, die die Zielwerte erfüllt, liegt näher an gleichen Gramm von jedem Futtermittel.</translation>
    </message>
    <message>
        <source>Every target that can be judged holds.</source>
        <translation>Jeder Zielwert, der beurteilt werden kann, ist erfüllt.</translation>
    </message>
    <message>
        <source>Every target holds.</source>
        <translation>Jeder Zielwert ist erfüllt.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>none</source>
        <translation>keine</translation>
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
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>%1 is new: %2</source>
        <translation>%1 ist neu: %2</translation>
    </message>
    <message>
        <source>%1 is gone: it was %2</source>
        <translation>%1 ist weg: es war %2</translation>
    </message>
    <message>
        <source>%1, at least</source>
        <translation>%1, mindestens</translation>
    </message>
    <message>
        <source>%1, at most</source>
        <translation>%1, höchstens</translation>
    </message>
    <message>
        <source>%1, locked</source>
        <translation>%1, gesperrt</translation>
    </message>
    <message>
        <source>%1, given as</source>
        <translation>%1, gegeben als</translation>
    </message>
    <message>
        <source>%1, preparation</source>
        <translation>%1, Zubereitung</translation>
    </message>
    <message>
        <source>%1 may be given unweighed</source>
        <translation>%1 darf ungewogen gegeben werden</translation>
    </message>
    <message>
        <source>%1 is no longer given unweighed</source>
        <translation>%1 wird nicht mehr ungewogen gegeben</translation>
    </message>
    <message>
        <source>%1 unweighed, from</source>
        <translation>%1 ungewogen, von</translation>
    </message>
    <message>
        <source>%1 unweighed, up to</source>
        <translation>%1 ungewogen, bis</translation>
    </message>
    <message>
        <source>targets</source>
        <translation>Zielwerte</translation>
    </message>
    <message>
        <source>what is sought</source>
        <translation>was gesucht wird</translation>
    </message>
    <message>
        <source>how sure</source>
        <translation>wie sicher</translation>
    </message>
    <message>
        <source>energy method</source>
        <translation>Energieverfahren</translation>
    </message>
    <message>
        <source>whole scale steps</source>
        <translation>ganze Waagenschritte</translation>
    </message>
    <message>
        <source>group shares</source>
        <translation>Anteile von Gruppen</translation>
    </message>
    <message>
        <source>structure rules</source>
        <translation>Strukturregeln</translation>
    </message>
    <message>
        <source>fed from</source>
        <translation>gefüttert ab</translation>
    </message>
    <message>
        <source>days of phasing in</source>
        <translation>Tage der Umstellung</translation>
    </message>
    <message>
        <source>other settings</source>
        <translation>andere Einstellungen</translation>
    </message>
    <message>
        <source>%1, minimum</source>
        <translation>%1, Minimum</translation>
    </message>
    <message>
        <source>%1, maximum</source>
        <translation>%1, Maximum</translation>
    </message>
    <message>
        <source>%1 is set aside: %2</source>
        <translation>%1 ist zurückgestellt: %2</translation>
    </message>
    <message>
        <source>%1 is in force again</source>
        <translation>%1 gilt wieder</translation>
    </message>
    <message>
        <source>%1: changed</source>
        <translation>%1: geändert</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>leave out</source>
        <translation>auslassen</translation>
    </message>
    <message>
        <source>food</source>
        <translation>Futtermittel</translation>
    </message>
    <message>
        <source>food&apos;s code</source>
        <translation>Kürzel des Futtermittels</translation>
    </message>
    <message>
        <source>food group</source>
        <translation>Futtergruppe</translation>
    </message>
    <message>
        <source>form</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>nutrient</source>
        <translation>Nährstoff</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>SD</source>
        <translation>SD</translation>
    </message>
    <message>
        <source>standard error</source>
        <translation>Standardfehler</translation>
    </message>
    <message>
        <source>n</source>
        <translation>n</translation>
    </message>
    <message>
        <source>qualifier</source>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>dry matter</source>
        <translation>Trockensubstanz</translation>
    </message>
    <message>
        <source>energy (ME)</source>
        <translation>Energie (ME)</translation>
    </message>
    <message>
        <source>as fed</source>
        <translation>Frischsubstanz</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::AllowanceBar</name>
    <message>
        <source>At least so many grams a day, unweighed</source>
        <translation>Mindestens so viele Gramm am Tag, ungewogen</translation>
    </message>
    <message>
        <source>from g</source>
        <translation>von g</translation>
    </message>
    <message>
        <source>At most so many grams a day, unweighed</source>
        <translation>Höchstens so viele Gramm am Tag, ungewogen</translation>
    </message>
    <message>
        <source>to g</source>
        <translation>bis g</translation>
    </message>
    <message>
        <source>…then the food that is given unweighed</source>
        <translation>…dann das Futtermittel, das ungewogen gegeben wird</translation>
    </message>
    <message>
        <source>A food that is given unweighed, by part of its name</source>
        <translation>Ein Futtermittel, das ungewogen gegeben wird, über einen Teil des Namens</translation>
    </message>
    <message>
        <source>What is given unweighed for</source>
        <translation>Wofür es ungewogen gegeben wird</translation>
    </message>
    <message>
        <source>Allow</source>
        <translation>Erlauben</translation>
    </message>
    <message>
        <source>No food of this collection is called “%1”. Foods are added in the Foods room.</source>
        <translation>Kein Futtermittel dieses Bestands heißt „%1“. Futtermittel werden im Raum „Futter“ angelegt.</translation>
    </message>
    <message>
        <source>What is given unweighed needs a range: so many grams a day at least and at most.</source>
        <translation>Was ungewogen gegeben wird, braucht eine Spanne: so viele Gramm am Tag mindestens und höchstens.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::AnimalDesk</name>
    <message>
        <source>add %1</source>
        <translation>%1 anlegen</translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>%1 joins the group</source>
        <translation>%1 kommt in die Gruppe</translation>
    </message>
    <message>
        <source>%1 leaves the group</source>
        <translation>%1 verlässt die Gruppe</translation>
    </message>
    <message>
        <source>weigh %1</source>
        <translation>%1 wiegen</translation>
    </message>
    <message>
        <source>leave a mass out</source>
        <translation>eine Masse auslassen</translation>
    </message>
    <message>
        <source>count a mass again</source>
        <translation>eine Masse wieder zählen</translation>
    </message>
    <message>
        <source>put a mass right</source>
        <translation>eine Masse berichtigen</translation>
    </message>
    <message>
        <source>score the condition of %1</source>
        <translation>Kondition von %1 beurteilen</translation>
    </message>
    <message>
        <source>change the energy plan</source>
        <translation>den Energieplan ändern</translation>
    </message>
    <message>
        <source>throw the draft away</source>
        <translation>den Entwurf verwerfen</translation>
    </message>
    <message>
        <source>put version %1 in force</source>
        <translation>Version %1 in Kraft setzen</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::AnimalList</name>
    <message>
        <source>Add</source>
        <translation>Anlegen</translation>
    </message>
    <message>
        <source>Find a species, group or animal by part of its name</source>
        <translation>Tierart, Gruppe oder Tier über einen Teil des Namens finden</translation>
    </message>
    <message>
        <source>Find an animal…</source>
        <translation>Tier suchen…</translation>
    </message>
    <message>
        <source>A species new to the collection…</source>
        <translation>Eine Tierart, die neu im Bestand ist…</translation>
    </message>
    <message>
        <source>A group of the species shown</source>
        <translation>Eine Gruppe der gezeigten Tierart</translation>
    </message>
    <message>
        <source>An animal of the species shown</source>
        <translation>Ein Tier der gezeigten Tierart</translation>
    </message>
    <message>
        <source>Add a species, a group or an animal</source>
        <translation>Eine Tierart, eine Gruppe oder ein Tier anlegen</translation>
    </message>
    <message>
        <source>Species, groups and animals</source>
        <translation>Tierarten, Gruppen und Tiere</translation>
    </message>
    <message>
        <source>Nothing is called so. Clear the field.</source>
        <translation>Nichts heißt so. Das Feld leeren.</translation>
    </message>
    <message>
        <source>reading…</source>
        <translation>liest…</translation>
    </message>
    <message>
        <source>%1 species · %2 groups · %3 animals by name</source>
        <translation>%1 Tierarten · %2 Gruppen · %3 Tiere mit Namen</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::AnimalsRoom</name>
    <message>
        <source>Reading the animals…</source>
        <translation>Liest die Tiere…</translation>
    </message>
    <message>
        <source>There is no animal in this collection yet.</source>
        <translation>In diesem Bestand ist noch kein Tier.</translation>
    </message>
    <message>
        <source>Animals stand by species and group, with their masses, energy need and the targets that diets are judged by.</source>
        <translation>Tiere stehen nach Tierart und Gruppe, mit ihren Massen, Energiebedarf und den Zielwerten, nach denen Rationen beurteilt werden.</translation>
    </message>
    <message>
        <source>Add a species</source>
        <translation>Eine Tierart anlegen</translation>
    </message>
    <message>
        <source>With its first group, energy need and targets, from a model species where nothing is published of its own.</source>
        <translation>Mit ihrer ersten Gruppe, Energiebedarf und Zielwerten, von einer Modelltierart, wo nichts Eigenes veröffentlicht ist.</translation>
    </message>
    <message>
        <source>Find an animal</source>
        <translation>Ein Tier suchen</translation>
    </message>
    <message>
        <source>%1, new group</source>
        <translation>%1, neue Gruppe</translation>
    </message>
    <message>
        <source>body mass in g or kg · energy in kcal ME a day</source>
        <translation>Körpermasse in g oder kg · Energie in kcal ME am Tag</translation>
    </message>
    <message>
        <source>reading the animals…</source>
        <translation>liest die Tiere…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ApprovalForm</name>
    <message>
        <source>Approve</source>
        <translation>Freigeben</translation>
    </message>
    <message>
        <source>Approval of this version</source>
        <translation>Freigabe dieser Version</translation>
    </message>
    <message>
        <source>Fed from this day</source>
        <translation>Gefüttert ab diesem Tag</translation>
    </message>
    <message>
        <source>at once</source>
        <translation>sofort</translation>
    </message>
    <message>
        <source> days</source>
        <translation> Tage</translation>
    </message>
    <message>
        <source>Phased in over so many days</source>
        <translation>Umstellung über so viele Tage</translation>
    </message>
    <message>
        <source>Why? This is kept with it.</source>
        <translation>Warum? Das wird dazu aufbewahrt.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Approved, this version never changes: grams, targets and composition are kept as they are now. Local rules, a qualified nutritionist and a licensed vet come first.</source>
        <translation>Freigegeben ändert sich diese Version nie mehr: Gramm, Zielwerte und Zusammensetzung bleiben, wie sie jetzt sind. Örtliche Vorschriften, eine Ernährungsfachkraft und ein Tierarzt gehen vor.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>fed from</source>
        <translation>gefüttert ab</translation>
    </message>
    <message>
        <source>phased in</source>
        <translation>Umstellung</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::BalanceLadder</name>
    <message>
        <source>Balance ladder</source>
        <translation>Bilanzleiter</translation>
    </message>
    <message>
        <source>One row per target, those in trouble first</source>
        <translation>Eine Zeile je Zielwert, die mit Schwierigkeiten zuerst</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::BalancePane</name>
    <message>
        <source>Balance</source>
        <translation>Bilanz</translation>
    </message>
    <message>
        <source>Rules that cannot be judged</source>
        <translation>Regeln, die nicht beurteilt werden können</translation>
    </message>
    <message>
        <source>trouble first</source>
        <translation>Probleme zuerst</translation>
    </message>
    <message>
        <source>as stated</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>by name</source>
        <translation>nach Name</translation>
    </message>
    <message>
        <source>Order of the balance</source>
        <translation>Reihenfolge der Bilanz</translation>
    </message>
    <message>
        <source>own basis</source>
        <translation>eigener Bezug</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>je %1</translation>
    </message>
    <message>
        <source>Basis of the balance</source>
        <translation>Bezug der Bilanz</translation>
    </message>
    <message>
        <source>Reads every target on this basis, as it comes to in this bowl</source>
        <translation>Liest jeden Zielwert auf diesen Bezug, wie er sich in dieser Schale ergibt</translation>
    </message>
    <message>
        <source>as eaten</source>
        <translation>wie gefressen</translation>
    </message>
    <message>
        <source>as offered</source>
        <translation>wie angeboten</translation>
    </message>
    <message>
        <source>As eaten or as offered</source>
        <translation>Wie gefressen oder wie angeboten</translation>
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
        <translation>Revier</translation>
    </message>
    <message>
        <source>Day of the sheet</source>
        <translation>Tag des Futterzettels</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <comment>a day and its weekday, as Qt writes formats</comment>
        <translation>ddd d. MMM yyyy</translation>
    </message>
    <message>
        <source>Bowls of the sheet</source>
        <translation>Schalen des Futterzettels</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::BowlModel</name>
    <message>
        <source>%1: swapped for another</source>
        <translation>%1: gegen ein anderes getauscht</translation>
    </message>
    <message>
        <source>%1 (swapped in)</source>
        <translation>%1 (eingetauscht)</translation>
    </message>
    <message>
        <source>%1 g %2 %3</source>
        <translation>%1 g %2 %3</translation>
    </message>
    <message>
        <source>to weigh</source>
        <translation>zu wiegen</translation>
    </message>
    <message>
        <source>food</source>
        <translation>Futtermittel</translation>
    </message>
    <message>
        <source>preparation</source>
        <translation>Zubereitung</translation>
    </message>
    <message>
        <source>left</source>
        <translation>übrig</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>gewogen</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::BowlPane</name>
    <message>
        <source>Foods of the bowl</source>
        <translation>Futtermittel der Schale</translation>
    </message>
    <message>
        <source>The bowl</source>
        <translation>Die Schale</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CalciumReview</name>
    <message>
        <source>Calcium against its targets</source>
        <translation>Calcium gegen seine Zielwerte</translation>
    </message>
    <message>
        <source>As eaten</source>
        <translation>Wie gefressen</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Zielwert</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Offered</source>
        <translation>Angeboten</translation>
    </message>
    <message>
        <source>Eaten</source>
        <translation>Gefressen</translation>
    </message>
    <message>
        <source>With the dose</source>
        <translation>Mit der Gabe</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Supplement</source>
        <translation>Ergänzungsmittel</translation>
    </message>
    <message>
        <source>Share of a dust that reaches the mouth</source>
        <translation>Anteil eines Pulvers, der ins Maul gelangt</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>Least addition of</source>
        <translation>Kleinste Zugabe von</translation>
    </message>
    <message>
        <source>of which reaches the mouth</source>
        <translation>wovon ins Maul gelangen</translation>
    </message>
    <message>
        <source>no supplement</source>
        <translation>kein Ergänzungsmittel</translation>
    </message>
    <message>
        <source>Calcium review</source>
        <translation>Calciumprüfung</translation>
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
        <translation>Zielwert</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>not stated for this candidate</source>
        <translation>für diesen Kandidaten nicht angegeben</translation>
    </message>
    <message>
        <source>stated on another basis; what it takes to convert it is not known</source>
        <translation>auf einem anderen Bezug angegeben; was zum Umrechnen nötig ist, ist nicht bekannt</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CautionsCard</name>
    <message>
        <source>■ never</source>
        <translation>■ nie</translation>
    </message>
    <message>
        <source>▲ little</source>
        <translation>▲ wenig</translation>
    </message>
    <message>
        <source>○ consider</source>
        <translation>○ bedenken</translation>
    </message>
    <message>
        <source>how grave</source>
        <translation>wie schwer</translation>
    </message>
    <message>
        <source>food</source>
        <translation>Futtermittel</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>what to do</source>
        <translation>was tun</translation>
    </message>
    <message>
        <source>where from</source>
        <translation>woher</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Foods to be careful with</source>
        <translation>Futtermittel mit Vorsicht</translation>
    </message>
    <message>
        <source>The list is not complete. Ask a vet or nutritionist about every food that is new to the species.</source>
        <translation>Die Liste ist nicht vollständig. Zu jedem Futtermittel, das neu für die Tierart ist, einen Tierarzt oder eine Ernährungsfachkraft fragen.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ChecksCard</name>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ChoiceChart</name>
    <message>
        <source>What is picked first, over time</source>
        <translation>Was zuerst genommen wird, über die Zeit</translation>
    </message>
    <message>
        <source>%1, from %2</source>
        <translation>%1, ab %2</translation>
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
        <translation>Das wurde seit dem Lesen anderswo geändert; von Ihnen wurde nichts geschrieben.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CollectionMenu</name>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Collection file, theme and language</source>
        <translation>Bestandsdatei, Farben und Sprache</translation>
    </message>
    <message>
        <source>New, open, restore a collection; theme; language</source>
        <translation>Bestand anlegen, öffnen, wiederherstellen; Farben; Sprache</translation>
    </message>
    <message>
        <source>New collection…</source>
        <translation>Neuer Bestand…</translation>
    </message>
    <message>
        <source>Open a collection…</source>
        <translation>Bestand öffnen…</translation>
    </message>
    <message>
        <source>Open again</source>
        <translation>Wieder öffnen</translation>
    </message>
    <message>
        <source>Open the invented sample</source>
        <translation>Das erfundene Beispiel öffnen</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Wie der Schreibtisch</translation>
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
        <source>Language, from the next start on</source>
        <translation>Sprache, ab dem nächsten Start</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>%1 – in %2</source>
        <translation>%1 – in %2</translation>
    </message>
    <message>
        <source>%1 – not in %2 any more</source>
        <translation>%1 – nicht mehr in %2</translation>
    </message>
    <message>
        <source>None was open yet</source>
        <translation>Noch keiner war geöffnet</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>There is none yet: one is made every day</source>
        <translation>Noch keine: jeden Tag wird eine gemacht</translation>
    </message>
    <message>
        <source>Open on a server…</source>
        <translation>Auf einem Server öffnen…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ComparePane</name>
    <message>
        <source>What differs between the versions</source>
        <translation>Worin sich die Versionen unterscheiden</translation>
    </message>
    <message>
        <source>Two versions side by side</source>
        <translation>Zwei Versionen nebeneinander</translation>
    </message>
    <message>
        <source>Choose a version to compare with under “More”.</source>
        <translation>Unter „Mehr“ eine Version zum Vergleichen wählen.</translation>
    </message>
    <message>
        <source>Both versions say the same.</source>
        <translation>Beide Versionen sagen dasselbe.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ComparisonPane</name>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source>as fed, 100 g</source>
        <translation>Frischsubstanz, 100 g</translation>
    </message>
    <message>
        <source>kg DM</source>
        <translation>kg TS</translation>
    </message>
    <message>
        <source>1000 kcal</source>
        <translation>1000 kcal</translation>
    </message>
    <message>
        <source>Back to one food</source>
        <translation>Zurück zu einem Futtermittel</translation>
    </message>
    <message>
        <source>Foods side by side</source>
        <translation>Futtermittel nebeneinander</translation>
    </message>
    <message>
        <source>The highest of each row is bold. Ctrl+C copies the table.</source>
        <translation>Der höchste Wert jeder Zeile ist fett. Strg+C kopiert die Tabelle.</translation>
    </message>
    <message>
        <source>1000 %1</source>
        <translation>1000 %1</translation>
    </message>
    <message>
        <source>%1 foods side by side</source>
        <translation>%1 Futtermittel nebeneinander</translation>
    </message>
    <message>
        <source>The first %1 of %2 foods side by side</source>
        <translation>Die ersten %1 von %2 Futtermitteln nebeneinander</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CompositionModel</name>
    <message>
        <source>counted</source>
        <translation>zählt</translation>
    </message>
    <message>
        <source>nutrient</source>
        <translation>Nährstoff</translation>
    </message>
    <message>
        <source>scatter</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>where it comes from</source>
        <translation>woher</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CompositionView</name>
    <message>
        <source>What the food is made of</source>
        <translation>Woraus das Futtermittel besteht</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::CookingCard</name>
    <message>
        <source>share kept</source>
        <translation>bleibender Anteil</translation>
    </message>
    <message>
        <source>a share from 0 to 2 (1 keeps all of it)</source>
        <translation>ein Anteil von 0 bis 2 (1 behält alles)</translation>
    </message>
    <message>
        <source>Raw food</source>
        <translation>Rohes Futtermittel</translation>
    </message>
    <message>
        <source>Grams cooked from 1 g raw</source>
        <translation>Gramm gekocht aus 1 g roh</translation>
    </message>
    <message>
        <source>Source of yield and shares</source>
        <translation>Quelle der Ausbeute und Anteile</translation>
    </message>
    <message>
        <source>who says so</source>
        <translation>wer das sagt</translation>
    </message>
    <message>
        <source>1 g raw gives, g</source>
        <translation>1 g roh gibt, g</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Cooked from</source>
        <translation>Gekocht aus</translation>
    </message>
    <message>
        <source>Share of each nutrient that stays</source>
        <translation>Anteil jedes Nährstoffs, der bleibt</translation>
    </message>
    <message>
        <source>none: it is mixed from other foods</source>
        <translation>keines: es ist aus anderen gemischt</translation>
    </message>
    <message>
        <source>none: it is not worked out</source>
        <translation>keines: es ist nicht berechnet</translation>
    </message>
    <message>
        <source>“%1” is no yield: the grams cooked that 1 g raw gives, above 0.</source>
        <translation>„%1“ ist keine Ausbeute: die gekochten Gramm, die 1 g roh gibt, über 0.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DamageOffer</name>
    <message numerus="yes">
        <source>%n row(s) or page(s) could not be read</source>
        <translation>
            <numerusform>%n Zeile oder Seite konnte nicht gelesen werden</numerusform>
            <numerusform>%n Zeilen oder Seiten konnten nicht gelesen werden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) left out, what they belong to is lost</source>
        <translation>
            <numerusform>%n Zeile ausgelassen, wozu sie gehört, ist verloren</numerusform>
            <numerusform>%n Zeilen ausgelassen, wozu sie gehören, ist verloren</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n saved row(s) lay beside damaged ones: look at them</source>
        <translation>
            <numerusform>%n gerettete Zeile lag neben beschädigten: bitte ansehen</numerusform>
            <numerusform>%n gerettete Zeilen lagen neben beschädigten: bitte ansehen</numerusform>
        </translation>
    </message>
    <message>
        <source>its place is lost, there may have been more</source>
        <translation>ihr Platz ist verloren, es kann mehr gewesen sein</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>What was salvaged</source>
        <translation>Was gerettet wurde</translation>
    </message>
    <message>
        <source>What was written last could not be read.</source>
        <translation>Was zuletzt geschrieben wurde, war nicht lesbar.</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) could not be told to any table</source>
        <translation>
            <numerusform>%n Seite ließ sich keiner Tabelle zuordnen</numerusform>
            <numerusform>%n Seiten ließen sich keiner Tabelle zuordnen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 rows were copied into the new collection; the damaged file is as it was.</source>
        <translation>%1 Zeilen wurden in den neuen Bestand kopiert; die beschädigte Datei ist, wie sie war.</translation>
    </message>
    <message>
        <source>Nothing is missing, as far as can be told.</source>
        <translation>Es fehlt nichts, soweit es sich sagen lässt.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DeskPane</name>
    <message>
        <source>%1 kg each</source>
        <translation>je %1 kg</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>%1 kcal ME a day</source>
        <translation>%1 kcal ME am Tag</translation>
    </message>
    <message>
        <source>costs %1 a day</source>
        <translation>kostet %1 am Tag</translation>
    </message>
    <message>
        <source>Targets: %1 as model species, a starting point and not a requirement.</source>
        <translation>Zielwerte: %1 als Modelltierart, ein Anfang und keine Anforderung.</translation>
    </message>
    <message>
        <source>Some targets are from memory: verify them before use.</source>
        <translation>Einige Zielwerte sind aus dem Gedächtnis: vor Gebrauch prüfen.</translation>
    </message>
    <message>
        <source>This program supports, and does not replace, a qualified nutritionist and a licensed vet.</source>
        <translation>Dieses Programm unterstützt und ersetzt keine Ernährungsfachkraft und keinen Tierarzt.</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Gramm</translation>
    </message>
    <message>
        <source>per animal</source>
        <translation>je Tier</translation>
    </message>
    <message>
        <source>per group</source>
        <translation>je Gruppe</translation>
    </message>
    <message>
        <source>On every edit</source>
        <translation>Bei jeder Änderung</translation>
    </message>
    <message>
        <source>solve as I type</source>
        <translation>beim Tippen lösen</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>halten</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Below the foods</source>
        <translation>Unter den Futtermitteln</translation>
    </message>
    <message>
        <source>What is shown below the foods</source>
        <translation>Was unter den Futtermitteln gezeigt wird</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Diet</source>
        <translation>Ration</translation>
    </message>
    <message>
        <source>Grams for one animal a day</source>
        <translation>Gramm für ein Tier am Tag</translation>
    </message>
    <message>
        <source>Grams for the whole group a day</source>
        <translation>Gramm für die ganze Gruppe am Tag</translation>
    </message>
    <message>
        <source>What you type is held and the unlocked foods give way</source>
        <translation>Was Sie tippen, bleibt, und die nicht gesperrten Futtermittel geben nach</translation>
    </message>
    <message>
        <source>Only the balance is recomputed; no food gives way</source>
        <translation>Nur die Bilanz wird neu berechnet; kein Futtermittel gibt nach</translation>
    </message>
    <message>
        <source>The grams stand as they were written. With what is known today the solver would give others.</source>
        <translation>Die Gramm stehen, wie sie aufgeschrieben wurden. Mit dem heutigen Wissen gäbe der Löser andere.</translation>
    </message>
    <message>
        <source>Let the foods give way</source>
        <translation>Futtermittel nachgeben lassen</translation>
    </message>
    <message>
        <source>No food is in this diet yet. It is worked out as foods are added.</source>
        <translation>Noch kein Futtermittel ist in dieser Ration. Sie wird berechnet, sobald welche hinzukommen.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietChooser</name>
    <message>
        <source>This group is no longer in the collection.</source>
        <translation>Diese Gruppe ist nicht mehr im Bestand.</translation>
    </message>
    <message>
        <source>%1, daily diet</source>
        <translation>%1, Tagesration</translation>
    </message>
    <message>
        <source>diet</source>
        <translation>Ration</translation>
    </message>
    <message>
        <source>in this diet</source>
        <translation>in dieser Ration</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietDesk</name>
    <message>
        <source>let the foods give way</source>
        <translation>Futtermittel nachgeben lassen</translation>
    </message>
    <message>
        <source>Not taken: the maximum of %1 would lie below its minimum.</source>
        <translation>Nicht übernommen: das Maximum von %1 läge unter seinem Minimum.</translation>
    </message>
    <message>
        <source>Not taken: a target for %1 needs a minimum or a maximum.</source>
        <translation>Nicht übernommen: ein Zielwert für %1 braucht ein Minimum oder ein Maximum.</translation>
    </message>
    <message>
        <source>%1 is in this diet already.</source>
        <translation>%1 ist schon in dieser Ration.</translation>
    </message>
    <message>
        <source>Not changed: only a draft can be, in a collection that can be written. A new version is a draft.</source>
        <translation>Nicht geändert: nur ein Entwurf lässt sich ändern, in einem Bestand, der beschrieben werden kann. Eine neue Version ist ein Entwurf.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietList</name>
    <message>
        <source>Find a diet or food…</source>
        <translation>Ration oder Futtermittel suchen…</translation>
    </message>
    <message>
        <source>Find a diet, or a food of the diet, by part of its name</source>
        <translation>Eine Ration, oder ein Futtermittel der Ration, über einen Teil des Namens finden</translation>
    </message>
    <message>
        <source>Diets</source>
        <translation>Rationen</translation>
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
        <translation>Version %1, %2</translation>
    </message>
    <message>
        <source>nothing in it yet</source>
        <translation>noch nichts darin</translation>
    </message>
    <message>
        <source>no diet yet: design one</source>
        <translation>noch keine Ration: entwerfen</translation>
    </message>
    <message>
        <source>Problem files</source>
        <translation>Aufgabendateien</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietPapers</name>
    <message>
        <source>printed: %1</source>
        <translation>gedruckt: %1</translation>
    </message>
    <message>
        <source>written: %1</source>
        <translation>geschrieben: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DietsRoom</name>
    <message>
        <source>Explore</source>
        <translation>Erkunden</translation>
    </message>
    <message>
        <source>Structure rules</source>
        <translation>Strukturregeln</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>No diet and no food of this diet is called “%1”.</source>
        <translation>Keine Ration und kein Futtermittel dieser Ration heißt „%1“.</translation>
    </message>
    <message>
        <source>%1 is a hard rule of the targets (%2). Why may this diet go beyond it?</source>
        <translation>%1 ist eine feste Regel der Zielwerte (%2). Warum darf diese Ration darüber hinaus?</translation>
    </message>
    <message>
        <source>Loosen</source>
        <translation>Lockern</translation>
    </message>
    <message>
        <source>Put the hand on the food that is not available first.</source>
        <translation>Zuerst die Hand auf das Futtermittel legen, das fehlt.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Save as</source>
        <translation>Speichern unter</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>Add a food</source>
        <translation>Futtermittel hinzufügen</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Ctrl+I</translation>
    </message>
    <message>
        <source>Not available…</source>
        <translation>Nicht vorhanden…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>Try what is suggested first</source>
        <translation>Versuchen, was zuerst vorgeschlagen ist</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>Explore what is chosen</source>
        <translation>Das Gewählte erkunden</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>New version</source>
        <translation>Neue Version</translation>
    </message>
    <message>
        <source>Print the diet sheet</source>
        <translation>Rationsblatt drucken</translation>
    </message>
    <message>
        <source>Calendar of days that vary</source>
        <translation>Kalender der Wechseltage</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>grams as fed · energy in %1 ME, %2</source>
        <translation>Gramm Frischsubstanz · Energie in %1 ME, %2</translation>
    </message>
    <message>
        <source>saved</source>
        <translation>gespeichert</translation>
    </message>
    <message>
        <source>saving…</source>
        <translation>speichert…</translation>
    </message>
    <message>
        <source>Invented sample</source>
        <translation>Erfundenes Beispiel</translation>
    </message>
    <message>
        <source>not saved (Ctrl+S)</source>
        <translation>nicht gespeichert (Strg+S)</translation>
    </message>
    <message>
        <source>Brackenmere (invented sample)</source>
        <translation>Brackenmere (erfundenes Beispiel)</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DoubtList</name>
    <message>
        <source>Find among the doubts…</source>
        <translation>Unter den Zweifeln suchen…</translation>
    </message>
    <message>
        <source>Find a doubt by the food&apos;s name or by what is doubted</source>
        <translation>Einen Zweifel über den Namen des Futtermittels oder das Bezweifelte finden</translation>
    </message>
    <message>
        <source>All foods</source>
        <translation>Alle Futtermittel</translation>
    </message>
    <message>
        <source>Back to the list of foods</source>
        <translation>Zurück zur Liste der Futtermittel</translation>
    </message>
    <message>
        <source>What a careful analyst would doubt</source>
        <translation>Was ein sorgfältiger Analytiker bezweifeln würde</translation>
    </message>
    <message>
        <source>The foods could not be looked through: %1</source>
        <translation>Die Futtermittel konnten nicht durchgesehen werden: %1</translation>
    </message>
    <message>
        <source>looking through the foods…</source>
        <translation>sieht die Futtermittel durch…</translation>
    </message>
    <message>
        <source>Nothing in these foods would make a careful analyst doubt.</source>
        <translation>An diesen Futtermitteln würde ein sorgfältiger Analytiker nichts bezweifeln.</translation>
    </message>
    <message>
        <source>1 doubt about %1 foods</source>
        <translation>1 Zweifel zu %1 Futtermitteln</translation>
    </message>
    <message>
        <source>%1 doubts about %2 foods</source>
        <translation>%1 Zweifel zu %2 Futtermitteln</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source> · looking again…</source>
        <translation> · sieht noch einmal nach…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::EnergyCard</name>
    <message>
        <source>nothing was weighed yet</source>
        <translation>noch nichts gewogen</translation>
    </message>
    <message>
        <source>mean of %1 animals</source>
        <translation>Mittel von %1 Tieren</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>gewogen</translation>
    </message>
    <message>
        <source>%1, newest %2</source>
        <translation>%1, neueste %2</translation>
    </message>
    <message>
        <source>Energy need, step by step</source>
        <translation>Energiebedarf, Schritt für Schritt</translation>
    </message>
    <message>
        <source>Add this factor</source>
        <translation>Diesen Faktor hinzufügen</translation>
    </message>
    <message>
        <source>Take the chosen factor away</source>
        <translation>Den gewählten Faktor wegnehmen</translation>
    </message>
    <message>
        <source>A worked-out need is where a diet begins, not where it ends: body mass and condition say whether it was right.</source>
        <translation>Mit einem berechneten Bedarf beginnt eine Ration, sie endet nicht damit: Körpermasse und Kondition sagen, ob er richtig war.</translation>
    </message>
    <message>
        <source>Published energy at 1 kg of body mass</source>
        <translation>Veröffentlichte Energie bei 1 kg Körpermasse</translation>
    </message>
    <message>
        <source>Choose a published energy at 1 kg…</source>
        <translation>Eine veröffentlichte Energie bei 1 kg wählen…</translation>
    </message>
    <message>
        <source>Published factors</source>
        <translation>Veröffentlichte Faktoren</translation>
    </message>
    <message>
        <source>A house factor of 1, to be edited</source>
        <translation>Ein Hausfaktor von 1, zum Ändern</translation>
    </message>
    <message>
        <source>Nobody chose yet how the energy need of this group is worked out. Begin with a published choice.</source>
        <translation>Noch niemand hat gewählt, wie der Energiebedarf dieser Gruppe berechnet wird. Mit einer veröffentlichten Wahl beginnen.</translation>
    </message>
    <message>
        <source>In force since %1. %2</source>
        <translation>In Kraft seit %1. %2</translation>
    </message>
    <message>
        <source>The source speaks of: %1.</source>
        <translation>Die Quelle spricht von: %1.</translation>
    </message>
    <message>
        <source>house factor</source>
        <translation>Hausfaktor</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::EnergyModel</name>
    <message>
        <source>step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>up to</source>
        <translation>bis zu</translation>
    </message>
    <message>
        <source>gives</source>
        <translation>gibt</translation>
    </message>
    <message>
        <source>where it comes from</source>
        <translation>woher</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Körpermasse</translation>
    </message>
    <message>
        <source>to the power of</source>
        <translation>hoch</translation>
    </message>
    <message>
        <source>× %1</source>
        <translation>× %1</translation>
    </message>
    <message>
        <source>= per animal and day</source>
        <translation>= je Tier und Tag</translation>
    </message>
    <message>
        <source>× animals</source>
        <translation>× Tiere</translation>
    </message>
    <message>
        <source>= the group&apos;s day</source>
        <translation>= der Tag der Gruppe</translation>
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
        <translation>mit der Energie bei 1 kg</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ExplorePane</name>
    <message>
        <source>missed in all</source>
        <translation>insgesamt verfehlt</translation>
    </message>
    <message>
        <source>The range begins at</source>
        <translation>Die Spanne beginnt bei</translation>
    </message>
    <message>
        <source>The range ends at</source>
        <translation>Die Spanne endet bei</translation>
    </message>
    <message>
        <source>Try it</source>
        <translation>Versuchen</translation>
    </message>
    <message>
        <source>What moves</source>
        <translation>Was sich bewegt</translation>
    </message>
    <message>
        <source>What the chart reads</source>
        <translation>Was die Kurve sagt</translation>
    </message>
    <message>
        <source>Arrow keys read it, Ctrl with an arrow goes from breakpoint to breakpoint, Enter or a click tries what is read</source>
        <translation>Pfeiltasten lesen ab, Strg mit Pfeil geht von Knick zu Knick, Enter oder ein Klick versucht das Abgelesene</translation>
    </message>
    <message>
        <source>Tries on the diet what is read; Ctrl+Z takes it back</source>
        <translation>Versucht das Abgelesene an der Ration; Strg+Z nimmt es zurück</translation>
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
        <source>What gives: %1</source>
        <translation>Was nachgibt: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FaecesCard</name>
    <message>
        <source>None of this group are written down yet.</source>
        <translation>Von dieser Gruppe ist noch keiner aufgeschrieben.</translation>
    </message>
    <message>
        <source>First day of the collection</source>
        <translation>Erster Tag des Sammelns</translation>
    </message>
    <message>
        <source>Last day of the collection</source>
        <translation>Letzter Tag des Sammelns</translation>
    </message>
    <message>
        <source>Grams fresh, of all animals and days together</source>
        <translation>Gramm frisch, von allen Tieren und Tagen zusammen</translation>
    </message>
    <message>
        <source>g fresh</source>
        <translation>g frisch</translation>
    </message>
    <message>
        <source>Grams of dry matter in 100 g fresh</source>
        <translation>Gramm Trockensubstanz in 100 g frisch</translation>
    </message>
    <message>
        <source>g DM in 100 g</source>
        <translation>g TS in 100 g</translation>
    </message>
    <message>
        <source>Nutrients per 100 g of dry matter, each in its own unit</source>
        <translation>Nährstoffe je 100 g Trockensubstanz, jeder in seiner eigenen Einheit</translation>
    </message>
    <message>
        <source>per 100 g DM: Ca 1850 ± 90; P 1200</source>
        <translation>je 100 g TS: Ca 1850 ± 90; P 1200</translation>
    </message>
    <message>
        <source>The report that it comes from</source>
        <translation>Der Bericht, aus dem es kommt</translation>
    </message>
    <message>
        <source>report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Faeces that were collected</source>
        <translation>Gesammelter Kot</translation>
    </message>
    <message>
        <source>Faeces collected and analysed: the report of their days tells what was apparently digested</source>
        <translation>Gesammelter und analysierter Kot: der Bericht ihrer Tage sagt, was scheinbar verdaut wurde</translation>
    </message>
    <message>
        <source>How much was it? Type the grams as found, such as 412.</source>
        <translation>Wie viel war es? Die Gramm tippen, wie gefunden, etwa 412.</translation>
    </message>
    <message>
        <source>Digestibility is worked out on dry matter: type how many g of 100 g fresh it is.</source>
        <translation>Verdaulichkeit wird auf Trockensubstanz berechnet: tippen, wie viel g von 100 g frisch es ist.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Finder</name>
    <message>
        <source>Finder</source>
        <translation>Sucher</translation>
    </message>
    <message>
        <source>Go to a food, an animal or a diet: type part of its name</source>
        <translation>Zu einem Futtermittel, Tier oder einer Ration: einen Teil des Namens tippen</translation>
    </message>
    <message>
        <source>Part of a name</source>
        <translation>Teil eines Namens</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>Nothing is called so here.</source>
        <translation>Nichts heißt hier so.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodBandsChart</name>
    <message>
        <source>Grams of each food over time, offered and eaten</source>
        <translation>Gramm jedes Futtermittels über die Zeit, angeboten und gefressen</translation>
    </message>
    <message>
        <source>%1: %2 of %3 g</source>
        <translation>%1: %2 von %3 g</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodBench</name>
    <message>
        <source>No food of this collection is called “%1”. Foods are added in the Foods room.</source>
        <translation>Kein Futtermittel dieses Bestands heißt „%1“. Futtermittel werden im Raum „Futter“ angelegt.</translation>
    </message>
    <message>
        <source>Choose a diet at the left first, or design one for a group.</source>
        <translation>Zuerst links eine Ration wählen, oder eine für eine Gruppe entwerfen.</translation>
    </message>
    <message>
        <source>This food is no longer in the collection.</source>
        <translation>Dieses Futtermittel ist nicht mehr im Bestand.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodDesk</name>
    <message>
        <source>add %1</source>
        <translation>%1 anlegen</translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>add a sample of %1</source>
        <translation>eine Probe von %1 hinzufügen</translation>
    </message>
    <message>
        <source>change a sample of %1</source>
        <translation>eine Probe von %1 ändern</translation>
    </message>
    <message>
        <source>remove a sample of %1</source>
        <translation>eine Probe von %1 entfernen</translation>
    </message>
    <message>
        <source>set a sample aside</source>
        <translation>eine Probe zurückstellen</translation>
    </message>
    <message>
        <source>count a sample again</source>
        <translation>eine Probe wieder zählen</translation>
    </message>
    <message>
        <source>set %1 by hand</source>
        <translation>%1 von Hand setzen</translation>
    </message>
    <message>
        <source>leave %1 to the samples</source>
        <translation>%1 den Proben überlassen</translation>
    </message>
    <message>
        <source>change the sampling plan of %1</source>
        <translation>den Probenplan von %1 ändern</translation>
    </message>
    <message>
        <source>change what %1 is cooked from</source>
        <translation>ändern, woraus %1 gekocht ist</translation>
    </message>
    <message>
        <source>change what %1 is mixed from</source>
        <translation>ändern, woraus %1 gemischt ist</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodForm</name>
    <message>
        <source>A food needs a code: problem files name it by that.</source>
        <translation>Ein Futtermittel braucht ein Kürzel: Aufgabendateien nennen es danach.</translation>
    </message>
    <message>
        <source>A food needs a name.</source>
        <translation>Ein Futtermittel braucht einen Namen.</translation>
    </message>
    <message>
        <source>The mass of one must be above 0 g.</source>
        <translation>Die Masse eines Stücks muss über 0 g liegen.</translation>
    </message>
    <message>
        <source>The scale step must be above 0 g.</source>
        <translation>Der Waagenschritt muss über 0 g liegen.</translation>
    </message>
    <message>
        <source>The edible part lies above 0 % and up to 100 %.</source>
        <translation>Der essbare Teil liegt über 0 % und bis 100 %.</translation>
    </message>
    <message>
        <source>A price is not below 0.</source>
        <translation>Ein Preis liegt nicht unter 0.</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>in stock</source>
        <translation>vorrätig</translation>
    </message>
    <message>
        <source>How it is made</source>
        <translation>Wie es gemacht wird</translation>
    </message>
    <message>
        <source>cooked</source>
        <translation>gekocht</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>names it in problem files: kale-raw</source>
        <translation>so nennen es Aufgabendateien: kale-raw</translation>
    </message>
    <message>
        <source>One weighs, g</source>
        <translation>Eines wiegt, g</translation>
    </message>
    <message>
        <source>where it comes whole</source>
        <translation>wo es am Stück kommt</translation>
    </message>
    <message>
        <source>Scale step, g</source>
        <translation>Waagenschritt, g</translation>
    </message>
    <message>
        <source>Edible part, %</source>
        <translation>Essbarer Teil, %</translation>
    </message>
    <message>
        <source>of what is bought</source>
        <translation>vom Gekauften</translation>
    </message>
    <message>
        <source>Price a kg</source>
        <translation>Preis je kg</translation>
    </message>
    <message>
        <source>as bought</source>
        <translation>wie gekauft</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>What the food is</source>
        <translation>Was das Futtermittel ist</translation>
    </message>
    <message>
        <source>Each field is kept as soon as you leave it; undo takes it back.</source>
        <translation>Jedes Feld wird behalten, sobald Sie es verlassen; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>Back to the composition</source>
        <translation>Zurück zur Zusammensetzung</translation>
    </message>
    <message>
        <source>Worked out from one raw food</source>
        <translation>Aus einem rohen Futtermittel berechnet</translation>
    </message>
    <message>
        <source>Worked out from the parts of a house mix</source>
        <translation>Aus den Teilen einer Hausmischung berechnet</translation>
    </message>
    <message>
        <source>“%1” is not a number that can stand for: %2.</source>
        <translation>„%1“ ist keine Zahl, die hier stehen kann: %2.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodList</name>
    <message>
        <source>Import…</source>
        <translation>Einlesen…</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Anlegen</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Find a food by part of its name, form or group</source>
        <translation>Ein Futtermittel über einen Teil von Name, Form oder Gruppe finden</translation>
    </message>
    <message>
        <source>Import a table of foods (CSV, XLSX); a file can also be dropped on the window</source>
        <translation>Eine Futtermitteltabelle einlesen (CSV, XLSX); eine Datei lässt sich auch auf das Fenster ziehen</translation>
    </message>
    <message>
        <source>Add a food to the collection</source>
        <translation>Ein Futtermittel im Bestand anlegen</translation>
    </message>
    <message>
        <source>Compare the selected foods side by side (hold Ctrl to select several)</source>
        <translation>Die gewählten Futtermittel nebeneinander vergleichen (Strg halten, um mehrere zu wählen)</translation>
    </message>
    <message>
        <source>Foods</source>
        <translation>Futtermittel</translation>
    </message>
    <message>
        <source>Checks %1</source>
        <translation>Prüfungen %1</translation>
    </message>
    <message>
        <source>What a careful analyst would doubt in this collection</source>
        <translation>Was ein sorgfältiger Analytiker in diesem Bestand bezweifeln würde</translation>
    </message>
    <message>
        <source>Find in %1 foods…</source>
        <translation>In %1 Futtermitteln suchen…</translation>
    </message>
    <message>
        <source>No food is called so. Clear the field, or add the food.</source>
        <translation>Kein Futtermittel heißt so. Das Feld leeren oder das Futtermittel anlegen.</translation>
    </message>
    <message>
        <source>reading…</source>
        <translation>liest…</translation>
    </message>
    <message>
        <source>%1 foods</source>
        <translation>%1 Futtermittel</translation>
    </message>
    <message>
        <source>%1 of %2 foods</source>
        <translation>%1 von %2 Futtermitteln</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodListModel</name>
    <message>
        <source>%1, none in stock</source>
        <translation>%1, nicht vorrätig</translation>
    </message>
    <message>
        <source>food and form</source>
        <translation>Futtermittel und Form</translation>
    </message>
    <message>
        <source>group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>water
%</source>
        <translation>Wasser
%</translation>
    </message>
    <message>
        <source>protein
% DM</source>
        <translation>Protein
% TS</translation>
    </message>
    <message>
        <source>Ca
g/kg DM</source>
        <translation>Ca
g/kg TS</translation>
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
        <translation>ein erfundenes Produkt</translation>
    </message>
    <message>
        <source>one weighs %1 g</source>
        <translation>eines wiegt %1 g</translation>
    </message>
    <message>
        <source>scale step %1 g</source>
        <translation>Waagenschritt %1 g</translation>
    </message>
    <message>
        <source>%1 edible</source>
        <translation>%1 essbar</translation>
    </message>
    <message>
        <source>%1 a kg</source>
        <translation>%1 je kg</translation>
    </message>
    <message>
        <source>none in stock</source>
        <translation>nicht vorrätig</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source>as fed, 100 g</source>
        <translation>Frischsubstanz, 100 g</translation>
    </message>
    <message>
        <source>kg DM</source>
        <translation>kg TS</translation>
    </message>
    <message>
        <source>1000 kcal</source>
        <translation>1000 kcal</translation>
    </message>
    <message>
        <source>Edit sample…</source>
        <translation>Probe ändern…</translation>
    </message>
    <message>
        <source>Set aside…</source>
        <translation>Zurückstellen…</translation>
    </message>
    <message>
        <source>Set by hand…</source>
        <translation>Von Hand setzen…</translation>
    </message>
    <message>
        <source>Among its group</source>
        <translation>In seiner Gruppe</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Futtermittel</translation>
    </message>
    <message>
        <source>Per 100 g as it is fed</source>
        <translation>Je 100 g, wie es gefüttert wird</translation>
    </message>
    <message>
        <source>Per kg of its dry matter (DM)</source>
        <translation>Je kg seiner Trockensubstanz (TS)</translation>
    </message>
    <message>
        <source>Per 1000 kcal of its metabolizable energy (ME)</source>
        <translation>Je 1000 kcal seiner umsetzbaren Energie (ME)</translation>
    </message>
    <message>
        <source>Edit food…</source>
        <translation>Futtermittel ändern…</translation>
    </message>
    <message>
        <source>Remove food</source>
        <translation>Futtermittel entfernen</translation>
    </message>
    <message>
        <source>Takes the food out of the collection; undo brings it back</source>
        <translation>Nimmt das Futtermittel aus dem Bestand; Rückgängig bringt es zurück</translation>
    </message>
    <message>
        <source>Add a sample…</source>
        <translation>Probe hinzufügen…</translation>
    </message>
    <message>
        <source>1000 %1</source>
        <translation>1000 %1</translation>
    </message>
    <message>
        <source>Open a nutrient&apos;s row and choose one of its samples first</source>
        <translation>Zuerst die Zeile eines Nährstoffs öffnen und eine seiner Proben wählen</translation>
    </message>
    <message>
        <source>Change this sample</source>
        <translation>Diese Probe ändern</translation>
    </message>
    <message>
        <source>Count it again</source>
        <translation>Wieder zählen</translation>
    </message>
    <message>
        <source>Leave this sample out of the composition, with a reason</source>
        <translation>Diese Probe aus der Zusammensetzung lassen, mit einem Grund</translation>
    </message>
    <message>
        <source>Put a value of your own before every sample, with a reason</source>
        <translation>Einen eigenen Wert vor jede Probe setzen, mit einem Grund</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodPicker</name>
    <message>
        <source>Add a food: type part of its name (Ctrl+I)…</source>
        <translation>Futtermittel hinzufügen: einen Teil des Namens tippen (Strg+I)…</translation>
    </message>
    <message>
        <source>Add a food of the collection by part of its name</source>
        <translation>Ein Futtermittel des Bestands über einen Teil des Namens hinzufügen</translation>
    </message>
    <message>
        <source>Foods that match</source>
        <translation>Passende Futtermittel</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::FoodsRoom</name>
    <message>
        <source>No food is in this collection yet.</source>
        <translation>In diesem Bestand ist noch kein Futtermittel.</translation>
    </message>
    <message>
        <source>Foods are what diets are made of: each with its composition, the laboratory samples or publications that say so, and what is unknown of it.</source>
        <translation>Aus Futtermitteln bestehen Rationen: jedes mit seiner Zusammensetzung, den Laborproben oder Veröffentlichungen, die sie sagen, und was davon unbekannt ist.</translation>
    </message>
    <message>
        <source>Import a table…</source>
        <translation>Tabelle einlesen…</translation>
    </message>
    <message>
        <source>A laboratory&apos;s or publisher&apos;s table (CSV, XLSX): it shows line by line what will happen before anything is written.</source>
        <translation>Die Tabelle eines Labors oder Verlags (CSV, XLSX): sie zeigt Zeile für Zeile, was geschehen wird, bevor etwas geschrieben wird.</translation>
    </message>
    <message>
        <source>Add a food</source>
        <translation>Futtermittel anlegen</translation>
    </message>
    <message>
        <source>By hand: a name, then its values or a laboratory&apos;s sample.</source>
        <translation>Von Hand: ein Name, dann seine Werte oder die Probe eines Labors.</translation>
    </message>
    <message>
        <source>New food</source>
        <translation>Neues Futtermittel</translation>
    </message>
    <message>
        <source>Leave the whole sample “%1” out of the composition?</source>
        <translation>Die ganze Probe „%1“ aus der Zusammensetzung lassen?</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Zurückstellen</translation>
    </message>
    <message>
        <source> per 100 g as fed</source>
        <translation> je 100 g Frischsubstanz</translation>
    </message>
    <message>
        <source>A value of %1 that goes before every sample:</source>
        <translation>Ein Wert von %1, der jeder Probe vorgeht:</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Setzen</translation>
    </message>
    <message>
        <source>Leave it to the samples</source>
        <translation>Den Proben überlassen</translation>
    </message>
    <message>
        <source>Find a food</source>
        <translation>Futtermittel suchen</translation>
    </message>
    <message>
        <source>values as fed unless said · energy as ME in</source>
        <translation>Werte der Frischsubstanz, wenn nichts anderes dasteht · Energie als ME in</translation>
    </message>
    <message>
        <source>reading the foods…</source>
        <translation>liest die Futtermittel…</translation>
    </message>
    <message>
        <source>importing…</source>
        <translation>liest ein…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::GroupChoice</name>
    <message>
        <source>Section</source>
        <translation>Revier</translation>
    </message>
    <message>
        <source>Groups</source>
        <translation>Gruppen</translation>
    </message>
    <message>
        <source>All sections</source>
        <translation>Alle Reviere</translation>
    </message>
    <message>
        <source>%1 (no bowl yet)</source>
        <translation>%1 (noch keine Schale)</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::GroupPane</name>
    <message>
        <source>Of the group</source>
        <translation>Von der Gruppe</translation>
    </message>
    <message>
        <source>animals and mass</source>
        <translation>Tiere und Masse</translation>
    </message>
    <message>
        <source>energy need</source>
        <translation>Energiebedarf</translation>
    </message>
    <message>
        <source>targets</source>
        <translation>Zielwerte</translation>
    </message>
    <message>
        <source>what changed</source>
        <translation>was sich geändert hat</translation>
    </message>
    <message>
        <source>Design a diet</source>
        <translation>Ration entwerfen</translation>
    </message>
    <message>
        <source>A bowl for this group that meets its targets</source>
        <translation>Eine Schale für diese Gruppe, die ihre Zielwerte erfüllt</translation>
    </message>
    <message>
        <source>A diet is designed to targets: this group has no profile in force yet</source>
        <translation>Eine Ration wird nach Zielwerten entworfen: diese Gruppe hat noch kein Profil in Kraft</translation>
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
        <translation>dieses Futtermittel</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::GuidePanel</name>
    <message>
        <source>Show me</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>What the guide leads through</source>
        <translation>Wohin der Rundgang führt</translation>
    </message>
    <message>
        <source>Three people&apos;s work, on the invented sample</source>
        <translation>Die Arbeit dreier Menschen, am erfundenen Beispiel</translation>
    </message>
    <message>
        <source>Open the invented sample</source>
        <translation>Das erfundene Beispiel öffnen</translation>
    </message>
    <message>
        <source>The guide speaks of its animals and foods</source>
        <translation>Der Rundgang spricht von seinen Tieren und Futtermitteln</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Goes to the room, and to the control that is named first</source>
        <translation>Geht in den Raum und zu dem Element, das zuerst genannt ist</translation>
    </message>
    <message>
        <source>The step before</source>
        <translation>Der Schritt davor</translation>
    </message>
    <message>
        <source>The next step</source>
        <translation>Der nächste Schritt</translation>
    </message>
    <message>
        <source>Puts the guide away (Esc); Help brings it back</source>
        <translation>Legt den Rundgang weg (Esc); Hilfe holt ihn zurück</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HealthDesk</name>
    <message>
        <source>write down what was seen</source>
        <translation>aufschreiben, was gesehen wurde</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HealthRoom</name>
    <message>
        <source>What was seen</source>
        <translation>Was gesehen wurde</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Review for the file…</source>
        <translation>Prüfung für die Akte…</translation>
    </message>
    <message>
        <source>Invented sample</source>
        <translation>Erfundenes Beispiel</translation>
    </message>
    <message>
        <source>Calcium review</source>
        <translation>Calciumprüfung</translation>
    </message>
    <message>
        <source>Look-back</source>
        <translation>Rückblick</translation>
    </message>
    <message>
        <source>Review or look-back</source>
        <translation>Prüfung oder Rückblick</translation>
    </message>
    <message>
        <source>Groups, and under each its animals. Choose one: its signs, masses and bowls are set on one axis of days, and calcium is reviewed for it.</source>
        <translation>Gruppen, und unter jeder ihre Tiere. Eines wählen: seine Zeichen, Massen und Schalen kommen auf eine Tagesachse, und das Calcium wird dafür geprüft.</translation>
    </message>
    <message>
        <source>What was written down of it, the newest first; ▲ is a sign, from which Enter looks back to the bowls before it. Each line keeps who wrote it.</source>
        <translation>Was dazu aufgeschrieben wurde, das Neueste zuerst; ▲ ist ein Zeichen, von dem Enter auf die Schalen davor zurückblickt. Jede Zeile bewahrt, wer sie schrieb.</translation>
    </message>
    <message>
        <source>Writes what the tab in sight says as one page, to print or to keep: PDF, HTML or JSON.</source>
        <translation>Schreibt, was der gezeigte Reiter sagt, als eine Seite, zum Drucken oder Aufheben: PDF, HTML oder JSON.</translation>
    </message>
    <message>
        <source>The calcium review, or the look-back from a sign.</source>
        <translation>Die Calciumprüfung, oder der Rückblick von einem Zeichen.</translation>
    </message>
    <message>
        <source>What was eaten day by day: the kitchen&apos;s weights, less what came back, times the composition of the foods; a mean day is set against the targets of the group. A value that nobody knows stays unknown and widens the range. The least dose is worked out from the supplement&apos;s own composition, and is held below the safe limit of the targets. Whether it is given, the vet decides.</source>
        <translation>Was Tag für Tag gefressen wurde: die Gewichte der Küche, minus was zurückkam, mal die Zusammensetzung der Futtermittel; ein mittlerer Tag wird gegen die Zielwerte der Gruppe gesetzt. Ein Wert, den niemand kennt, bleibt unbekannt und verbreitert die Spanne. Die kleinste Gabe wird aus der Zusammensetzung des Ergänzungsmittels selbst berechnet und unter der sicheren Grenze der Zielwerte gehalten. Ob sie gegeben wird, entscheidet der Tierarzt.</translation>
    </message>
    <message>
        <source>Bowls in the hours before the sign against the same hours before days without it: how often the sign came with a food and without it, Fisher&apos;s exact test, the same corrected for the number of foods that were looked at, and the risk ratio with its 95 % interval. It shows what goes together, not what caused what.</source>
        <translation>Schalen in den Stunden vor dem Zeichen gegen dieselben Stunden vor Tagen ohne es: wie oft das Zeichen mit einem Futtermittel und ohne es kam, der exakte Test nach Fisher, derselbe korrigiert für die Zahl der angesehenen Futtermittel, und das Risikoverhältnis mit seinem 95-%-Intervall. Es zeigt, was zusammengeht, nicht, was was verursacht hat.</translation>
    </message>
    <message>
        <source>Groups and animals</source>
        <translation>Gruppen und Tiere</translation>
    </message>
    <message>
        <source>Write down what was seen</source>
        <translation>Gesehenes aufschreiben</translation>
    </message>
    <message>
        <source>How far back</source>
        <translation>Wie weit zurück</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>Nobody is shown</source>
        <translation>Niemand ist gezeigt</translation>
    </message>
    <message>
        <source>No collection is open</source>
        <translation>Kein Bestand ist geöffnet.</translation>
    </message>
    <message>
        <source>Look-back for the file…</source>
        <translation>Rückblick für die Akte…</translation>
    </message>
    <message>
        <source>mg and µg per animal and day · body mass in kg</source>
        <translation>mg und µg je Tier und Tag · Körpermasse in kg</translation>
    </message>
    <message>
        <source>health</source>
        <translation>Gesundheit</translation>
    </message>
    <message>
        <source>How many days are shown and reviewed: those up to today, or, where nothing was written down for more than a week, those up to the last record.</source>
        <translation>Wie viele Tage gezeigt und geprüft werden: die bis heute, oder, wo mehr als eine Woche nichts aufgeschrieben wurde, die bis zum letzten Eintrag.</translation>
    </message>
    <message>
        <source>The last record is of %1: the days up to then are shown.</source>
        <translation>Der letzte Eintrag ist vom %1: gezeigt sind die Tage bis dahin.</translation>
    </message>
    <message>
        <source>“%1” cannot be named beside the collection: put it into %2, under a name without : and \, and choose it there.</source>
        <translation>„%1“ lässt sich neben dem Bestand nicht nennen: unter einem Namen ohne : und \ in %2 legen und dort wählen.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HealthTimeline</name>
    <message>
        <source>Signs, blood, treatments, condition, body mass, Ca:P and diets over time</source>
        <translation>Zeichen, Blut, Behandlungen, Kondition, Körpermasse, Ca:P und Rationen über die Zeit</translation>
    </message>
    <message>
        <source>Drag over a stretch, or use the wheel or + and -, to look closer; 0 shows all</source>
        <translation>Über eine Strecke ziehen, oder mit Rad oder + und - näher hinsehen; 0 zeigt alles</translation>
    </message>
    <message>
        <source>Ca:P</source>
        <translation>Ca:P</translation>
    </message>
    <message>
        <source>body mass, kg</source>
        <translation>Körpermasse, kg</translation>
    </message>
    <message>
        <source>Ca:P offered</source>
        <translation>Ca:P angeboten</translation>
    </message>
    <message>
        <source>Ca:P eaten</source>
        <translation>Ca:P gefressen</translation>
    </message>
    <message>
        <source>mean of 7 days</source>
        <translation>Mittel von 7 Tagen</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>Körpermasse</translation>
    </message>
    <message>
        <source>signs</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>blood, in the lab&apos;s range</source>
        <translation>Blut, im Bereich des Labors</translation>
    </message>
    <message>
        <source>blood, outside it</source>
        <translation>Blut, außerhalb</translation>
    </message>
    <message>
        <source>blood, no range</source>
        <translation>Blut, kein Bereich</translation>
    </message>
    <message>
        <source>treatments</source>
        <translation>Behandlungen</translation>
    </message>
    <message>
        <source>%1: condition %2 of %3 … %4 (%5)</source>
        <translation>%1: Kondition %2 von %3 … %4 (%5)</translation>
    </message>
    <message>
        <source>condition score, within its scale</source>
        <translation>Kondition, innerhalb ihrer Skala</translation>
    </message>
    <message>
        <source>a diet begins</source>
        <translation>eine Ration beginnt</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Help</name>
    <message>
        <source>About Tarebowl</source>
        <translation>Über Tarebowl</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HelpMenu</name>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>A guide through the invented sample; F1 says what a control is</source>
        <translation>Ein Rundgang durch das erfundene Beispiel; F1 sagt, was ein Element ist</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>What is this?  (F1)</source>
        <translation>Was ist das?  (F1)</translation>
    </message>
    <message>
        <source>About Tarebowl</source>
        <translation>Über Tarebowl</translation>
    </message>
    <message>
        <source>Tarebowl %1 – diets weighed to the gram for animals in human care.

It advises people who decide: a nutritionist approves a diet, and a vet decides about a patient. What nobody measured stays unknown and is never counted as nothing; every number names where it comes from (F1).

Free software under the GNU General Public License, version 3 or later, without any warranty.</source>
        <translation>Tarebowl %1 – Rationen auf das Gramm gewogen, für Tiere in Menschenobhut.

Es berät Menschen, die entscheiden: Eine Ernährungsfachkraft gibt eine Ration frei, ein Tierarzt entscheidet über einen Patienten. Was niemand gemessen hat, bleibt unbekannt und wird nie als nichts gezählt; jede Zahl nennt ihre Herkunft (F1).

Freie Software unter der GNU General Public License, Version 3 oder neuer, ohne jede Gewährleistung.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::HistoryCard</name>
    <message>
        <source>What changed when</source>
        <translation>Was sich wann geändert hat</translation>
    </message>
    <message>
        <source>Changes, the newest first</source>
        <translation>Änderungen, die neuesten zuerst</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Nothing was changed yet, or it is still being read.</source>
        <translation>Noch wurde nichts geändert, oder es wird noch gelesen.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ImportDesk</name>
    <message>
        <source>The mapping could not be written to %1.</source>
        <translation>Die Zuordnung konnte nicht nach %1 geschrieben werden.</translation>
    </message>
    <message>
        <source>it is another table now than the one that was imported; import it again to see what it would do</source>
        <translation>es ist jetzt eine andere Tabelle als die eingelesene; neu einlesen, um zu sehen, was geschähe</translation>
    </message>
    <message>
        <source>importing it again would change nothing</source>
        <translation>neu einlesen würde nichts ändern</translation>
    </message>
    <message>
        <source>No collection is open that it could go into.</source>
        <translation>Kein Bestand ist geöffnet, in den sie könnte.</translation>
    </message>
    <message>
        <source>Its numbers can be read both ways, with a decimal point and with a decimal comma. Say which it is.</source>
        <translation>Ihre Zahlen lassen sich auf beide Arten lesen, mit Dezimalpunkt und mit Dezimalkomma. Sagen, welches es ist.</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Angehalten. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>import %1</source>
        <translation>%1 einlesen</translation>
    </message>
    <message>
        <source>Stopped before it was read through. Nothing was written.</source>
        <translation>Angehalten, bevor sie durchgelesen war. Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>erwartet war %1</translation>
    </message>
    <message>
        <source>The table cannot be read: %1.</source>
        <translation>Die Tabelle ist nicht lesbar: %1.</translation>
    </message>
    <message>
        <source>The table cannot be read so. %1: %2.</source>
        <translation>So ist die Tabelle nicht lesbar. %1: %2.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ImportPage</name>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <source>Another table…</source>
        <translation>Andere Tabelle…</translation>
    </message>
    <message>
        <source>Load mapping…</source>
        <translation>Zuordnung laden…</translation>
    </message>
    <message>
        <source>Save mapping…</source>
        <translation>Zuordnung speichern…</translation>
    </message>
    <message>
        <source>Back to the foods</source>
        <translation>Zurück zu den Futtermitteln</translation>
    </message>
    <message>
        <source>Read the table as a saved mapping says</source>
        <translation>Die Tabelle lesen, wie eine gespeicherte Zuordnung sagt</translation>
    </message>
    <message>
        <source>Keep how this table is read, for its next issue</source>
        <translation>Behalten, wie diese Tabelle gelesen wird, für ihre nächste Ausgabe</translation>
    </message>
    <message>
        <source>What each column becomes</source>
        <translation>Was jede Spalte wird</translation>
    </message>
    <message>
        <source>Double-click or type to change what a column becomes: a nutrient by its name or tagname, “SD of calcium”, or leave out. The preview follows at once.</source>
        <translation>Doppelklicken oder tippen, um zu ändern, was eine Spalte wird: ein Nährstoff über Namen oder Kürzel, „SD von Calcium“, oder auslassen. Die Vorschau folgt sofort.</translation>
    </message>
    <message>
        <source>What the import will do</source>
        <translation>Was das Einlesen tun wird</translation>
    </message>
    <message>
        <source>How far the table is read</source>
        <translation>Wie weit die Tabelle gelesen ist</translation>
    </message>
    <message>
        <source>Import %1</source>
        <translation>%1 einlesen</translation>
    </message>
    <message>
        <source>To the foods</source>
        <translation>Zu den Futtermitteln</translation>
    </message>
    <message>
        <source>reading the head of the table…</source>
        <translation>liest den Kopf der Tabelle…</translation>
    </message>
    <message>
        <source>looking at each line; nothing is written…</source>
        <translation>sieht jede Zeile an; nichts wird geschrieben…</translation>
    </message>
    <message>
        <source>importing; it is kept as a whole or not at all…</source>
        <translation>liest ein; behalten wird alles oder nichts…</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Nichts wurde geschrieben.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ImportPreview</name>
    <message>
        <source>1 line</source>
        <translation>1 Zeile</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 Zeilen</translation>
    </message>
    <message>
        <source>What the import will do, line by line</source>
        <translation>Was das Einlesen tun wird, Zeile für Zeile</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>unchanged</source>
        <translation>unverändert</translation>
    </message>
    <message>
        <source>noted</source>
        <translation>vermerkt</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>problems</source>
        <translation>Probleme</translation>
    </message>
    <message>
        <source>%1 shown</source>
        <translation>%1 gezeigt</translation>
    </message>
    <message>
        <source> · 1 problem</source>
        <translation> · 1 Problem</translation>
    </message>
    <message>
        <source> · %1 problems</source>
        <translation> · %1 Probleme</translation>
    </message>
    <message>
        <source> · 1 left out</source>
        <translation> · 1 ausgelassen</translation>
    </message>
    <message>
        <source> · %1 left out</source>
        <translation> · %1 ausgelassen</translation>
    </message>
    <message>
        <source> · 1 kept with a note</source>
        <translation> · 1 mit Vermerk behalten</translation>
    </message>
    <message>
        <source> · %1 kept with a note</source>
        <translation> · %1 mit Vermerk behalten</translation>
    </message>
    <message>
        <source> · %1 further lines are counted and not listed</source>
        <translation> · %1 weitere Zeilen sind gezählt und nicht aufgeführt</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ImportSettings</name>
    <message>
        <source>Layout</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>a row a food</source>
        <translation>eine Zeile je Futtermittel</translation>
    </message>
    <message>
        <source>a row a value</source>
        <translation>eine Zeile je Wert</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Dezimalzeichen</translation>
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
        <translation>0 heißt: nicht gemessen</translation>
    </message>
    <message>
        <source>units on the line after</source>
        <translation>Einheiten in der Zeile danach</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>Strichpunkt</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>Strich |</translation>
    </message>
    <message>
        <source>caret ^</source>
        <translation>Dach ^</translation>
    </message>
    <message>
        <source>as its bytes say</source>
        <translation>wie seine Bytes sagen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>By this name and a food&apos;s code the food is found again when the table comes anew</source>
        <translation>Über diesen Namen und das Kürzel eines Futtermittels wird es wiedergefunden, wenn die Tabelle neu kommt</translation>
    </message>
    <message>
        <source>Grams (for energy: kcal) that a value is per, where the column does not say</source>
        <translation>Gramm (bei Energie: kcal), auf die ein Wert bezogen ist, wo die Spalte es nicht sagt</translation>
    </message>
    <message>
        <source>One line holds all values of a food</source>
        <translation>Eine Zeile enthält alle Werte eines Futtermittels</translation>
    </message>
    <message>
        <source>One line holds one value of a food</source>
        <translation>Eine Zeile enthält einen Wert eines Futtermittels</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Values per</source>
        <translation>Werte je</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>Basis where no column says it</source>
        <translation>Bezug, wo keine Spalte ihn sagt</translation>
    </message>
    <message>
        <source>Numbers as</source>
        <translation>Zahlen als</translation>
    </message>
    <message>
        <source>Header on line</source>
        <translation>Kopf in Zeile</translation>
    </message>
    <message>
        <source>Cells parted by</source>
        <translation>Felder getrennt durch</translation>
    </message>
    <message>
        <source>Letters as</source>
        <translation>Buchstaben als</translation>
    </message>
    <message>
        <source>“%1” is nothing that values can be per: a number above 0.</source>
        <translation>„%1“ ist nichts, worauf Werte bezogen sein können: eine Zahl über 0.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IndividualForm</name>
    <message>
        <source>adult, as long as nothing else is said</source>
        <translation>ausgewachsen, solange nichts anderes gesagt ist</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 ab %2</translation>
    </message>
    <message>
        <source>an estimate</source>
        <translation>eine Schätzung</translation>
    </message>
    <message>
        <source>by death</source>
        <translation>durch Tod</translation>
    </message>
    <message>
        <source>The animal</source>
        <translation>Das Tier</translation>
    </message>
    <message>
        <source>Name or number</source>
        <translation>Name oder Nummer</translation>
    </message>
    <message>
        <source>of the house</source>
        <translation>des Hauses</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Geboren</translation>
    </message>
    <message>
        <source>2026-05-17</source>
        <translation>2026-05-17</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>Gekommen</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Gegangen</translation>
    </message>
    <message>
        <source>the first day on which it is not there</source>
        <translation>der erste Tag, an dem es nicht da ist</translation>
    </message>
    <message>
        <source>Life stages so far</source>
        <translation>Bisherige Lebensabschnitte</translation>
    </message>
    <message>
        <source>Life stages</source>
        <translation>Lebensabschnitte</translation>
    </message>
    <message>
        <source>Life stage from today on</source>
        <translation>Lebensabschnitt ab heute</translation>
    </message>
    <message>
        <source>From today</source>
        <translation>Ab heute</translation>
    </message>
    <message>
        <source>The animal is in this stage from today on</source>
        <translation>Das Tier ist ab heute in diesem Abschnitt</translation>
    </message>
    <message>
        <source>Groups it was in</source>
        <translation>Gruppen, in denen es war</translation>
    </message>
    <message>
        <source>In groups</source>
        <translation>In Gruppen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>in none</source>
        <translation>in keiner</translation>
    </message>
    <message>
        <source>%1: “%2” is no day; write it as 2026-05-17.</source>
        <translation>%1: „%2“ ist kein Tag; als 2026-05-17 schreiben.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IngredientModel</name>
    <message>
        <source>Locked foods keep their grams; the others give way</source>
        <translation>Gesperrte Futtermittel behalten ihre Gramm; die anderen geben nach</translation>
    </message>
    <message>
        <source>Share of the eaten dry matter (DM)</source>
        <translation>Anteil an der gefressenen Trockensubstanz (TS)</translation>
    </message>
    <message>
        <source>food and form</source>
        <translation>Futtermittel und Form</translation>
    </message>
    <message>
        <source>group a day</source>
        <translation>Gruppe am Tag</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>am Tag</translation>
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
        <translation>Anteil der TS</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>locked</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>group: %1</source>
        <translation>Gruppe: %1</translation>
    </message>
    <message>
        <source>%1 of it is eaten</source>
        <translation>%1 davon wird gefressen</translation>
    </message>
    <message>
        <source>invented product</source>
        <translation>erfundenes Produkt</translation>
    </message>
    <message>
        <source>%1, unweighed: %2 to %3 g</source>
        <translation>%1, ungewogen: %2 bis %3 g</translation>
    </message>
    <message>
        <source>given as %1</source>
        <translation>gegeben als %1</translation>
    </message>
    <message>
        <source>%1: %2 g %3, in steps of %4 g</source>
        <translation>%1: %2 g %3, in Schritten von %4 g</translation>
    </message>
    <message>
        <source>for the group a day</source>
        <translation>für die Gruppe am Tag</translation>
    </message>
    <message>
        <source>per animal a day</source>
        <translation>je Tier und Tag</translation>
    </message>
    <message>
        <source>%1 is locked: it keeps its grams</source>
        <translation>%1 ist gesperrt: es behält seine Gramm</translation>
    </message>
    <message>
        <source>%1 is free: it gives way when another food is held</source>
        <translation>%1 ist frei: es gibt nach, wenn ein anderes Futtermittel gehalten wird</translation>
    </message>
    <message>
        <source>%1: at least %2 g</source>
        <translation>%1: mindestens %2 g</translation>
    </message>
    <message>
        <source>%1: at most %2 g</source>
        <translation>%1: höchstens %2 g</translation>
    </message>
    <message>
        <source>%1: no maximum</source>
        <translation>%1: kein Maximum</translation>
    </message>
    <message>
        <source>%1: %2 of the dry matter</source>
        <translation>%1: %2 der Trockensubstanz</translation>
    </message>
    <message>
        <source>%1: its water is unknown</source>
        <translation>%1: sein Wassergehalt ist unbekannt</translation>
    </message>
    <message>
        <source>%1: %2 a day</source>
        <translation>%1: %2 am Tag</translation>
    </message>
    <message>
        <source>%1: no price</source>
        <translation>%1: kein Preis</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IngredientTable</name>
    <message>
        <source>Foods of the diet</source>
        <translation>Futtermittel der Ration</translation>
    </message>
    <message>
        <source>Remove from the diet</source>
        <translation>Aus der Ration entfernen</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IntakeRoom</name>
    <message>
        <source>How far back</source>
        <translation>Wie weit zurück</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Woche</translation>
    </message>
    <message>
        <source>60 days</source>
        <translation>60 Tage</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Offered or eaten</source>
        <translation>Angeboten oder gefressen</translation>
    </message>
    <message>
        <source>Offered</source>
        <translation>Angeboten</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Beides</translation>
    </message>
    <message>
        <source>Eaten</source>
        <translation>Gefressen</translation>
    </message>
    <message>
        <source>What is followed, as eaten against its zone</source>
        <translation>Was verfolgt wird, wie gefressen, gegen seinen Bereich</translation>
    </message>
    <message>
        <source>Calcium to phosphorus, offered against eaten</source>
        <translation>Calcium zu Phosphor, angeboten gegen gefressen</translation>
    </message>
    <message>
        <source>Foods, offered and eaten</source>
        <translation>Futtermittel, angeboten und gefressen</translation>
    </message>
    <message>
        <source>Invented sample</source>
        <translation>Erfundenes Beispiel</translation>
    </message>
    <message>
        <source>Over time</source>
        <translation>Über die Zeit</translation>
    </message>
    <message>
        <source>Yesterday&apos;s bowls</source>
        <translation>Schalen von gestern</translation>
    </message>
    <message>
        <source>Study</source>
        <translation>Studie</translation>
    </message>
    <message>
        <source>Over time, yesterday&apos;s bowls, or a study</source>
        <translation>Über die Zeit, Schalen von gestern, oder eine Studie</translation>
    </message>
    <message>
        <source>What was really eaten. Amounts come from the weights that the kitchen wrote down, nutrients from the foods&apos; composition; what was not weighed stays unknown.</source>
        <translation>Was wirklich gefressen wurde. Mengen kommen aus den Gewichten, die die Küche aufschrieb, Nährstoffe aus der Zusammensetzung der Futtermittel; was nicht gewogen wurde, bleibt unbekannt.</translation>
    </message>
    <message>
        <source>How many days are in sight, up to the last one with a bowl.</source>
        <translation>Wie viele Tage in Sicht sind, bis zum letzten mit einer Schale.</translation>
    </message>
    <message>
        <source>Offered is what the kitchen weighed in; eaten is that less what was left and lost, corrected by control pans.</source>
        <translation>Angeboten ist, was die Küche eingewogen hat; gefressen ist das minus übrig und verloren, berichtigt durch Kontrollschalen.</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>The numbers that are shown, for a spreadsheet</source>
        <translation>Die gezeigten Zahlen, für ein Tabellenprogramm</translation>
    </message>
    <message>
        <source>The days in sight as a file</source>
        <translation>Die Tage in Sicht als Datei</translation>
    </message>
    <message>
        <source>Study…</source>
        <translation>Studie…</translation>
    </message>
    <message>
        <source>The days in sight as the report of an intake study: PDF, XLSX or HTML</source>
        <translation>Die Tage in Sicht als Bericht einer Aufnahmestudie: PDF, XLSX oder HTML</translation>
    </message>
    <message>
        <source>Grams a day of each food, all animals together: full what was eaten, hatched what was left</source>
        <translation>Gramm am Tag je Futtermittel, alle Tiere: voll gefressen, schraffiert übrig</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>Against its zone</source>
        <translation>Gegen seinen Bereich</translation>
    </message>
    <message>
        <source>Ca : P</source>
        <translation>Ca : P</translation>
    </message>
    <message>
        <source>Picked first</source>
        <translation>Zuerst genommen</translation>
    </message>
    <message>
        <source>Foods</source>
        <translation>Futtermittel</translation>
    </message>
    <message>
        <source>What is shown below</source>
        <translation>Was unten gezeigt wird</translation>
    </message>
    <message>
        <source>The same days once more: what is followed against its zone, Ca:P, what is picked first, and the foods in numbers.</source>
        <translation>Dieselben Tage noch einmal: was verfolgt wird gegen seinen Bereich, Ca:P, was zuerst genommen wird, und die Futtermittel in Zahlen.</translation>
    </message>
    <message>
        <source>No group has a bowl yet</source>
        <translation>Noch hat keine Gruppe eine Schale</translation>
    </message>
    <message>
        <source>No collection is open</source>
        <translation>Kein Bestand ist geöffnet</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>%1%2: mean day per animal; shaded its zone, hatched what is missing, ▼ a drop</source>
        <translation>%1%2: mittlerer Tag je Tier; getönt sein Bereich, schraffiert, was fehlt, ▼ ein Rückgang</translation>
    </message>
    <message>
        <source>%1: Manly&apos;s alpha with its 95 % interval; dashed: nothing is preferred</source>
        <translation>%1: Manlys Alpha mit seinem 95-%-Intervall; gestrichelt: nichts wird bevorzugt</translation>
    </message>
    <message>
        <source>Grams a day of each food</source>
        <translation>Gramm am Tag von jedem Futtermittel</translation>
    </message>
    <message>
        <source>A study holds each of its bowls: look at a year or less, and try again.</source>
        <translation>Eine Studie hält jede ihrer Schalen: ein Jahr oder weniger ansehen und neu versuchen.</translation>
    </message>
    <message>
        <source>grams as fed a day · nutrients per animal, as offered and as eaten</source>
        <translation>Gramm Frischsubstanz am Tag · Nährstoffe je Tier, wie angeboten und wie gefressen</translation>
    </message>
    <message>
        <source>intake</source>
        <translation>Aufnahme</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::IntakeSide</name>
    <message>
        <source>Noticed, and what it means for one animal</source>
        <translation>Aufgefallen, und was es für ein Tier heißt</translation>
    </message>
    <message>
        <source>Noticed</source>
        <translation>Aufgefallen</translation>
    </message>
    <message>
        <source>How much is known</source>
        <translation>Wie viel bekannt ist</translation>
    </message>
    <message>
        <source>Per animal</source>
        <translation>Je Tier</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::KitchenRoom</name>
    <message>
        <source>What is weighed</source>
        <translation>Was gewogen wird</translation>
    </message>
    <message>
        <source>Weigh in</source>
        <translation>Einwiegen</translation>
    </message>
    <message>
        <source>Leftovers</source>
        <translation>Futterreste</translation>
    </message>
    <message>
        <source>Control pans  (P)</source>
        <translation>Kontrollschalen  (P)</translation>
    </message>
    <message>
        <source>Put out now, or come back</source>
        <translation>Jetzt hinstellen, oder zurückgekommen</translation>
    </message>
    <message>
        <source>Sheet…</source>
        <translation>Zettel…</translation>
    </message>
    <message>
        <source>Labels…</source>
        <translation>Schilder…</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>± Rule…</source>
        <translation>± Regel…</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>The sheet of this section and day, as a page to print or to keep</source>
        <translation>Der Futterzettel dieses Reviers und Tages, als Seite zum Drucken oder Aufheben</translation>
    </message>
    <message>
        <source>A label for each bowl, to print</source>
        <translation>Ein Schild für jede Schale, zum Drucken</translation>
    </message>
    <message>
        <source>How far a weight may lie from the plan</source>
        <translation>Wie weit ein Gewicht vom Plan liegen darf</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source> labels</source>
        <translation> Schilder</translation>
    </message>
    <message>
        <source>%1 is written</source>
        <translation>%1 ist geschrieben</translation>
    </message>
    <message>
        <source>g as fed, of the whole bowl</source>
        <translation>g Frischsubstanz der ganzen Schale</translation>
    </message>
    <message>
        <source>reading the sheet…</source>
        <translation>liest den Futterzettel…</translation>
    </message>
    <message>
        <source>weights stand without a name until you say who you are, at the right</source>
        <translation>Gewichte stehen ohne Namen, bis Sie rechts sagen, wer Sie sind</translation>
    </message>
    <message>
        <source>This desk&apos;s copy of the collection holds the days from %1 to %2: another day waits for the server.</source>
        <translation>Die Kopie der Sammlung an diesem Platz reicht vom %1 bis zum %2: Ein anderer Tag wartet auf den Server.</translation>
    </message>
    <message>
        <source>Swaps, control pans, lots and the rule of weighing wait for the server. Weights and leftovers go on: they are kept on this desk and sent when the server is back.</source>
        <translation>Tausch, Kontrollschalen, Chargen und die Wiegeregel warten auf den Server. Gewichte und Reste gehen weiter: Sie werden an diesem Platz aufgehoben und gesendet, wenn der Server wieder da ist.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::KitchenSwap</name>
    <message>
        <source>This bowl is fed by no diet of the collection: ask the nutritionist.</source>
        <translation>Diese Schale kommt aus keiner Ration des Bestands: die Ernährungsfachkraft fragen.</translation>
    </message>
    <message>
        <source>This food is not of the diet, it came by a swap: ask the nutritionist.</source>
        <translation>Dieses Futtermittel gehört nicht zur Ration, es kam durch einen Tausch: die Ernährungsfachkraft fragen.</translation>
    </message>
    <message>
        <source>It is weighed in already: correct its weight first.</source>
        <translation>Es ist schon eingewogen: zuerst sein Gewicht berichtigen.</translation>
    </message>
    <message>
        <source>Reading what is on hand…</source>
        <translation>Liest, was vorrätig ist…</translation>
    </message>
    <message>
        <source>not available</source>
        <translation>nicht vorhanden</translation>
    </message>
    <message>
        <source>instead of %1: %2 %3</source>
        <translation>statt %1: %2 %3</translation>
    </message>
    <message>
        <source>%1 – waits for the nutritionist, see Today</source>
        <translation>%1 – wartet auf die Ernährungsfachkraft, siehe Heute</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::LadderModel</name>
    <message>
        <source>holds with a chance of %1</source>
        <translation>hält mit einer Wahrscheinlichkeit von %1</translation>
    </message>
    <message>
        <source>holds with a chance of at least %1</source>
        <translation>hält mit einer Wahrscheinlichkeit von mindestens %1</translation>
    </message>
    <message>
        <source>holds with a chance of at most %1</source>
        <translation>hält mit einer Wahrscheinlichkeit von höchstens %1</translation>
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
        <translation>%1, in dieser Schale %2 bis %3 %4</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>Zielwert %1</translation>
    </message>
    <message>
        <source>± %1 (1 SD)</source>
        <translation>± %1 (1 SD)</translation>
    </message>
    <message>
        <source>known for %1 of the dry matter</source>
        <translation>bekannt für %1 der Trockensubstanz</translation>
    </message>
    <message>
        <source>hard rule</source>
        <translation>feste Regel</translation>
    </message>
    <message>
        <source>target</source>
        <translation>Zielwert</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Stand</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::LeftoverPane</name>
    <message>
        <source>Somebody wrote this down before: both entries are kept, and the first one counts until it is corrected.</source>
        <translation>Jemand hat das schon aufgeschrieben: beide Einträge bleiben, und der erste zählt, bis er berichtigt wird.</translation>
    </message>
    <message>
        <source>What was left</source>
        <translation>Was übrig blieb</translation>
    </message>
    <message>
        <source>g left</source>
        <translation>g übrig</translation>
    </message>
    <message>
        <source>E  of all together, by eye</source>
        <translation>E  davon, nach Auge</translation>
    </message>
    <message>
        <source>A  all eaten</source>
        <translation>A  alles gefressen</translation>
    </message>
    <message>
        <source>N  not weighed</source>
        <translation>N  nicht gewogen</translation>
    </message>
    <message>
        <source>M  all together</source>
        <translation>M  zusammen</translation>
    </message>
    <message>
        <source>P  control pans</source>
        <translation>P  Kontrollschalen</translation>
    </message>
    <message>
        <source>S  spilled</source>
        <translation>S  verschüttet</translation>
    </message>
    <message>
        <source>T  stolen</source>
        <translation>T  gestohlen</translation>
    </message>
    <message>
        <source>type what is left + what was lost, such as 3 + 4</source>
        <translation>tippen, was übrig + was verloren ist, etwa 3 + 4</translation>
    </message>
    <message>
        <source>No bowl on this sheet.</source>
        <translation>Keine Schale auf diesem Zettel.</translation>
    </message>
    <message>
        <source>This bowl was never put on a sheet: nothing can have been left.</source>
        <translation>Diese Schale kam nie auf einen Zettel: es kann nichts übrig sein.</translation>
    </message>
    <message>
        <source>%1 g went in</source>
        <translation>%1 g gingen hinein</translation>
    </message>
    <message>
        <source>%1 were planned, and nobody weighed it in</source>
        <translation>%1 waren geplant, und niemand hat es eingewogen</translation>
    </message>
    <message>
        <source> · of all together %1 g were left</source>
        <translation> · vom Gemisch blieben %1 g übrig</translation>
    </message>
    <message>
        <source>“%1” is no weight: type grams, such as 20.5; tare the empty bowl where it is below nothing.</source>
        <translation>„%1“ ist kein Gewicht: Gramm tippen, etwa 20,5; die leere Schale tarieren, wo es unter nichts liegt.</translation>
    </message>
    <message>
        <source>%1 is written already. Why is it put right? Both are kept.</source>
        <translation>%1 ist schon aufgeschrieben. Warum wird es berichtigt? Beides bleibt.</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Type what is left + what was lost in g, such as 3 + 4, or nothing.</source>
        <translation>Tippen, was übrig + was verloren ist, in g, etwa 3 + 4, oder nichts.</translation>
    </message>
    <message>
        <source>Type the grams of all foods together, then M.</source>
        <translation>Die Gramm aller Futtermittel zusammen tippen, dann M.</translation>
    </message>
    <message>
        <source>%1 g of all together is written already. Why is it put right? Both are kept.</source>
        <translation>%1 g vom Gemisch sind schon aufgeschrieben. Warum wird es berichtigt? Beides bleibt.</translation>
    </message>
    <message>
        <source>Type how many grams of what is left together are this food, by eye, then E.</source>
        <translation>Tippen, wie viele Gramm vom Gemisch nach Auge dieses Futtermittel sind, dann E.</translation>
    </message>
    <message>
        <source>Reading the sheet…</source>
        <translation>Liest den Futterzettel…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::LinePane</name>
    <message>
        <source>how the kitchen prepares it</source>
        <translation>wie die Küche es zubereitet</translation>
    </message>
    <message>
        <source>Preparation of the food</source>
        <translation>Zubereitung des Futtermittels</translation>
    </message>
    <message>
        <source>What the food is given for</source>
        <translation>Wofür das Futtermittel gegeben wird</translation>
    </message>
    <message>
        <source>All that is offered counts, whatever it is given for</source>
        <translation>Alles Angebotene zählt, wofür es auch gegeben wird</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Takes the food out of the diet (Delete)</source>
        <translation>Nimmt das Futtermittel aus der Ration (Entf)</translation>
    </message>
    <message>
        <source>Explore</source>
        <translation>Erkunden</translation>
    </message>
    <message>
        <source>Moves the food&apos;s maximum over a range and shows what has to give (Ctrl+E)</source>
        <translation>Bewegt das Maximum des Futtermittels über eine Spanne und zeigt, was nachgeben muss (Strg+E)</translation>
    </message>
    <message>
        <source>Cautions on the food</source>
        <translation>Warnhinweise zum Futtermittel</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>g a day, unweighed</source>
        <translation>g am Tag, ungewogen</translation>
    </message>
    <message>
        <source>At least so many grams a day of what is given unweighed</source>
        <translation>Mindestens so viele Gramm am Tag von dem, was ungewogen gegeben wird</translation>
    </message>
    <message>
        <source>At most so many grams a day of what is given unweighed</source>
        <translation>Höchstens so viele Gramm am Tag von dem, was ungewogen gegeben wird</translation>
    </message>
    <message>
        <source>▲ Not given to this animal: %1</source>
        <translation>▲ Nicht für dieses Tier: %1</translation>
    </message>
    <message>
        <source>◐ Caution: %1</source>
        <translation>◐ Warnhinweis: %1</translation>
    </message>
    <message>
        <source>%1, unweighed</source>
        <translation>%1, ungewogen</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::LookBackPane</name>
    <message>
        <source>Foods and the sign</source>
        <translation>Futtermittel und das Zeichen</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Futtermittel</translation>
    </message>
    <message>
        <source>Sign, with it</source>
        <translation>Zeichen, mit ihm</translation>
    </message>
    <message>
        <source>without</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>Fisher</source>
        <translation>Fisher</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>korrigiert</translation>
    </message>
    <message>
        <source>Risk ratio (95 %)</source>
        <translation>Risikoverhältnis (95 %)</translation>
    </message>
    <message>
        <source>Hours before the sign</source>
        <translation>Stunden vor dem Zeichen</translation>
    </message>
    <message>
        <source> h before</source>
        <translation> h davor</translation>
    </message>
    <message>
        <source>Bowls given in the</source>
        <translation>Schalen, gegeben in den</translation>
    </message>
    <message>
        <source>Look-back</source>
        <translation>Rückblick</translation>
    </message>
    <message>
        <source>Choose a sign (▲) at the left: what was eaten before it is compared with days without it.</source>
        <translation>Links ein Zeichen (▲) wählen: was davor gefressen wurde, wird mit Tagen ohne es verglichen.</translation>
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
        <translation>Was die Spalte wird</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source>as the table</source>
        <translation>wie die Tabelle</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MappingModel</name>
    <message>
        <source>title not understood</source>
        <translation>Titel nicht verstanden</translation>
    </message>
    <message>
        <source>a second one of this nutrient</source>
        <translation>eine zweite dieses Nährstoffs</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>(nothing)</source>
        <translation>(nichts)</translation>
    </message>
    <message>
        <source>as its value</source>
        <translation>als sein Wert</translation>
    </message>
    <message>
        <source>as the table</source>
        <translation>wie die Tabelle</translation>
    </message>
    <message>
        <source>kept where its unit is understood</source>
        <translation>behalten, wo seine Einheit verstanden wird</translation>
    </message>
    <message>
        <source>its unit is none known here</source>
        <translation>seine Einheit ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>a nutrient&apos;s name in the table</source>
        <translation>der Name eines Nährstoffs in der Tabelle</translation>
    </message>
    <message>
        <source>in 1 line</source>
        <translation>in 1 Zeile</translation>
    </message>
    <message>
        <source>in %1 lines</source>
        <translation>in %1 Zeilen</translation>
    </message>
    <message>
        <source>its own name</source>
        <translation>sein eigener Name</translation>
    </message>
    <message>
        <source>“%1” is nothing that a column can become: choose from the list, or type a nutrient.</source>
        <translation>„%1“ kann eine Spalte nicht werden: aus der Liste wählen oder einen Nährstoff tippen.</translation>
    </message>
    <message>
        <source>“%1” is no unit: write it as mg/100 g, g/kg, % or kcal.</source>
        <translation>„%1“ ist keine Einheit: als mg/100 g, g/kg, % oder kcal schreiben.</translation>
    </message>
    <message>
        <source>“%1” is no nutrient: type its name or its tagname.</source>
        <translation>„%1“ ist kein Nährstoff: Namen oder Kürzel tippen.</translation>
    </message>
    <message>
        <source>left out by hand</source>
        <translation>von Hand ausgelassen</translation>
    </message>
    <message>
        <source>column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>what stands in it</source>
        <translation>was darin steht</translation>
    </message>
    <message>
        <source>becomes</source>
        <translation>wird</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>Bezug</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MassCard</name>
    <message>
        <source>Mass today: ? Nothing was weighed yet.</source>
        <translation>Masse heute: ? Noch nichts gewogen.</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 Wägung</translation>
    </message>
    <message>
        <source>%1 readings</source>
        <translation>%1 Wägungen</translation>
    </message>
    <message>
        <source>mean of the group</source>
        <translation>Mittel der Gruppe</translation>
    </message>
    <message>
        <source>1 animal</source>
        <translation>1 Tier</translation>
    </message>
    <message>
        <source>mean of %1 animals</source>
        <translation>Mittel von %1 Tieren</translation>
    </message>
    <message>
        <source>Mass that counts today: %1 (%2, %3, newest %4)</source>
        <translation>Masse, die heute zählt: %1 (%2, %3, neueste %4)</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>each animal</source>
        <translation>jedes Tier</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>The chart begins with the first mass.</source>
        <translation>Das Diagramm beginnt mit der ersten Masse.</translation>
    </message>
    <message>
        <source>Body mass and condition</source>
        <translation>Körpermasse und Kondition</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MassChart</name>
    <message>
        <source>Body mass and condition over time</source>
        <translation>Körpermasse und Kondition über die Zeit</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>body mass, %1</source>
        <translation>Körpermasse, %1</translation>
    </message>
    <message>
        <source>condition, ideal %1</source>
        <translation>Kondition, ideal %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MassEntry</name>
    <message>
        <source>Day of the weighing</source>
        <translation>Tag der Wägung</translation>
    </message>
    <message>
        <source>2026-11-25</source>
        <translation>2026-11-25</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Körpermasse</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Body condition score</source>
        <translation>Kondition</translation>
    </message>
    <message>
        <source>score</source>
        <translation>Kondition</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Aufschreiben</translation>
    </message>
    <message>
        <source>Write down a mass or a condition score</source>
        <translation>Eine Masse oder Kondition aufschreiben</translation>
    </message>
    <message>
        <source>Who was weighed</source>
        <translation>Wer gewogen wurde</translation>
    </message>
    <message>
        <source>Unit of the mass</source>
        <translation>Einheit der Masse</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>How it was weighed</source>
        <translation>Wie gewogen wurde</translation>
    </message>
    <message>
        <source>Scale of the condition score</source>
        <translation>Skala der Kondition</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>mean of the group</source>
        <translation>Mittel der Gruppe</translation>
    </message>
    <message>
        <source>“%1” is no day; write it as 2026-11-25.</source>
        <translation>„%1“ ist kein Tag; als 2026-11-25 schreiben.</translation>
    </message>
    <message>
        <source>“%1” is no mass; a mass is a number above 0.</source>
        <translation>„%1“ ist keine Masse; eine Masse ist eine Zahl über 0.</translation>
    </message>
    <message>
        <source>“%1” is no score, or the day is none.</source>
        <translation>„%1“ ist keine Kondition, oder der Tag ist keiner.</translation>
    </message>
    <message>
        <source>The scale %1 has no score of %2.</source>
        <translation>Die Skala %1 hat keine Kondition %2.</translation>
    </message>
    <message>
        <source>Type a mass or a score first.</source>
        <translation>Zuerst eine Masse oder Kondition tippen.</translation>
    </message>
    <message>
        <source>It is %1: write it down</source>
        <translation>Es sind %1: aufschreiben</translation>
    </message>
    <message>
        <source>It was %1</source>
        <translation>Es waren %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MembersCard</name>
    <message>
        <source>Animals of the group</source>
        <translation>Tiere der Gruppe</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <source>Leaves today</source>
        <translation>Geht heute</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>The group and its animals</source>
        <translation>Die Gruppe und ihre Tiere</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Revier</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Tiere</translation>
    </message>
    <message>
        <source>How many share the bowl, for a colony whose animals are not known one by one</source>
        <translation>Wie viele sich die Schale teilen, bei einer Kolonie, deren Tiere nicht einzeln bekannt sind</translation>
    </message>
    <message>
        <source>Animals of the species that are not in this group</source>
        <translation>Tiere der Tierart, die nicht in dieser Gruppe sind</translation>
    </message>
    <message>
        <source>This animal is in the group from today on</source>
        <translation>Dieses Tier ist ab heute in der Gruppe</translation>
    </message>
    <message>
        <source>Today is the first day on which the chosen animal is not in the group any more</source>
        <translation>Heute ist der erste Tag, an dem das gewählte Tier nicht mehr in der Gruppe ist</translation>
    </message>
    <message>
        <source>Go to the chosen animal&apos;s own page</source>
        <translation>Zur eigenen Seite des gewählten Tieres</translation>
    </message>
    <message>
        <source>New animal</source>
        <translation>Neues Tier</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::MembersModel</name>
    <message>
        <source>animal</source>
        <translation>Tier</translation>
    </message>
    <message>
        <source>sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>life stage</source>
        <translation>Lebensabschnitt</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>in the group</source>
        <translation>in der Gruppe</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ModelPicker</name>
    <message>
        <source>Candidates side by side</source>
        <translation>Kandidaten nebeneinander</translation>
    </message>
    <message>
        <source>Published profiles of model species</source>
        <translation>Veröffentlichte Profile von Modelltierarten</translation>
    </message>
    <message>
        <source>%1 targets · %2</source>
        <translation>%1 Zielwerte · %2</translation>
    </message>
    <message>
        <source>Basis of the comparison</source>
        <translation>Bezug des Vergleichs</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>je %1</translation>
    </message>
    <message>
        <source>The model that stands in</source>
        <translation>Das Modell, das dafür steht</translation>
    </message>
    <message>
        <source>Stands in:</source>
        <translation>Dafür steht:</translation>
    </message>
    <message>
        <source>Tick one or more published profiles; those ticked stand side by side.</source>
        <translation>Ein oder mehrere veröffentlichte Profile ankreuzen; die angekreuzten stehen nebeneinander.</translation>
    </message>
    <message>
        <source>The first %1 are shown.</source>
        <translation>Die ersten %1 sind gezeigt.</translation>
    </message>
    <message>
        <source>◆ differs from the first candidate · ○ from memory · ? not stated, or not on this basis</source>
        <translation>◆ anders als der erste Kandidat · ○ aus dem Gedächtnis · ? nicht angegeben, oder nicht auf diesem Bezug</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ModelStart</name>
    <message>
        <source>Start from this model</source>
        <translation>Von diesem Modell beginnen</translation>
    </message>
    <message>
        <source>Why the model stands in</source>
        <translation>Warum das Modell dafür steht</translation>
    </message>
    <message>
        <source>Why does this one stand in? A sentence, which is kept with every target.</source>
        <translation>Warum steht dieses dafür? Ein Satz, der bei jedem Zielwert aufbewahrt wird.</translation>
    </message>
    <message>
        <source>A profile of the group&apos;s own, which takes over what is published for the model and is in force from today; limits and house rules are set on top of it</source>
        <translation>Ein eigenes Profil der Gruppe, das übernimmt, was für das Modell veröffentlicht ist, und ab heute in Kraft ist; Grenzen und Hausregeln kommen darauf</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::NewSpeciesPage</name>
    <message>
        <source>Take it into the collection</source>
        <translation>In den Bestand aufnehmen</translation>
    </message>
    <message>
        <source>… and design a diet</source>
        <translation>… und eine Ration entwerfen</translation>
    </message>
    <message>
        <source>1 · The species</source>
        <translation>1 · Die Tierart</translation>
    </message>
    <message>
        <source>2 · A model species: whose published targets stand in</source>
        <translation>2 · Eine Modelltierart: deren veröffentlichte Zielwerte dafür stehen</translation>
    </message>
    <message>
        <source>3 · Limits and house rules on top of it</source>
        <translation>3 · Grenzen und Hausregeln darauf</translation>
    </message>
    <message>
        <source>4 · The group, its mass and its energy need</source>
        <translation>4 · Die Gruppe, ihre Masse und ihr Energiebedarf</translation>
    </message>
    <message>
        <source>A species new to the collection</source>
        <translation>Eine Tierart, die neu im Bestand ist</translation>
    </message>
    <message>
        <source>Name of the species</source>
        <translation>Name der Tierart</translation>
    </message>
    <message>
        <source>as the house calls it</source>
        <translation>wie das Haus sie nennt</translation>
    </message>
    <message>
        <source>Scientific name</source>
        <translation>Wissenschaftlicher Name</translation>
    </message>
    <message>
        <source>Feeding type</source>
        <translation>Ernährungstyp</translation>
    </message>
    <message>
        <source>Belongs to</source>
        <translation>Gehört zu</translation>
    </message>
    <message>
        <source>mammal, tenrec: the widest first</source>
        <translation>mammal, tenrec: das Weiteste zuerst</translation>
    </message>
    <message>
        <source>Cautions, model species and energy choices go by these words</source>
        <translation>Warnhinweise, Modelltierarten und Energieangebote richten sich nach diesen Wörtern</translation>
    </message>
    <message>
        <source>Why the model stands in</source>
        <translation>Warum das Modell dafür steht</translation>
    </message>
    <message>
        <source>Why does this one stand in? A sentence, which is kept with every target.</source>
        <translation>Warum steht dieses dafür? Ein Satz, der bei jedem Zielwert aufbewahrt wird.</translation>
    </message>
    <message>
        <source>Published requirements of a model species are a starting point; the nutritionist and the vet decide.</source>
        <translation>Veröffentlichte Anforderungen einer Modelltierart sind ein Anfang; Ernährungsfachkraft und Tierarzt entscheiden.</translation>
    </message>
    <message>
        <source>Name of the group</source>
        <translation>Name der Gruppe</translation>
    </message>
    <message>
        <source>pair, trio, family …</source>
        <translation>Paar, Trio, Familie …</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Revier</translation>
    </message>
    <message>
        <source>whose keepers feed it</source>
        <translation>dessen Tierpfleger sie füttern</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Tiere</translation>
    </message>
    <message>
        <source>how many share the bowl</source>
        <translation>wie viele sich die Schale teilen</translation>
    </message>
    <message>
        <source>Mass of one animal</source>
        <translation>Masse eines Tieres</translation>
    </message>
    <message>
        <source>a mean, or what is expected</source>
        <translation>ein Mittel, oder was zu erwarten ist</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>Unit of the mass</source>
        <translation>Einheit der Masse</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>Energy at 1 kg of body mass</source>
        <translation>Energie bei 1 kg Körpermasse</translation>
    </message>
    <message>
        <source>choose…</source>
        <translation>wählen…</translation>
    </message>
    <message>
        <source>Factor on the energy</source>
        <translation>Faktor auf die Energie</translation>
    </message>
    <message>
        <source>no factor</source>
        <translation>kein Faktor</translation>
    </message>
    <message>
        <source>Energy need</source>
        <translation>Energiebedarf</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Nicht jetzt</translation>
    </message>
    <message>
        <source>Take it into the collection and go on to a diet for its group</source>
        <translation>In den Bestand aufnehmen und zu einer Ration für ihre Gruppe weitergehen</translation>
    </message>
    <message>
        <source>What is still missing</source>
        <translation>Was noch fehlt</translation>
    </message>
    <message>
        <source>● Nothing is missing.</source>
        <translation>● Es fehlt nichts.</translation>
    </message>
    <message>
        <source>? Still missing: %1.</source>
        <translation>? Noch fehlt: %1.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::NumberField</name>
    <message>
        <source>“%1” is no number.</source>
        <translation>„%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>“%1” is not between %2 and %3.</source>
        <translation>„%1“ liegt nicht zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>“%1” is no whole number, and only whole numbers count here.</source>
        <translation>„%1“ ist keine ganze Zahl, und hier zählen nur ganze.</translation>
    </message>
    <message numerus="yes">
        <source>“%1” is finer than what counts here: %n digit(s) after the decimal mark.</source>
        <translation>
            <numerusform>„%1“ ist feiner, als hier zählt: %n Stelle nach dem Komma.</numerusform>
            <numerusform>„%1“ ist feiner, als hier zählt: %n Stellen nach dem Komma.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::NutrientNumbersModel</name>
    <message>
        <source>No nutrient is called “%1”.</source>
        <translation>Kein Nährstoff heißt „%1“.</translation>
    </message>
    <message>
        <source>“%1” of %2 is not %3.</source>
        <translation>„%1“ von %2 ist nicht %3.</translation>
    </message>
    <message>
        <source>%1 stands here twice.</source>
        <translation>%1 steht hier zweimal.</translation>
    </message>
    <message>
        <source>type a nutrient…</source>
        <translation>einen Nährstoff tippen…</translation>
    </message>
    <message>
        <source>nutrient</source>
        <translation>Nährstoff</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ObservationForm</name>
    <message>
        <source>What was seen</source>
        <translation>Was gesehen wurde</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>hh:mm</source>
        <translation>hh:mm</translation>
    </message>
    <message>
        <source>Scale of the score</source>
        <translation>Skala des Werts</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>score</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Appetite</source>
        <translation>Appetit</translation>
    </message>
    <message>
        <source>Analyte</source>
        <translation>Messgröße</translation>
    </message>
    <message>
        <source>Blood value</source>
        <translation>Blutwert</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Unit of the blood value</source>
        <translation>Einheit des Blutwerts</translation>
    </message>
    <message>
        <source>Lab&apos;s range, low</source>
        <translation>Bereich des Labors, unten</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>Lab&apos;s range, high</source>
        <translation>Bereich des Labors, oben</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>File beside the collection</source>
        <translation>Datei neben dem Bestand</translation>
    </message>
    <message>
        <source>attached file</source>
        <translation>beigelegte Datei</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Keep as it is</source>
        <translation>So behalten</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Which score? %1 goes from %2 to %3.</source>
        <translation>Welcher Wert? %1 geht von %2 bis %3.</translation>
    </message>
    <message>
        <source>%1 is not on this scale: it goes from %2 to %3.</source>
        <translation>%1 ist nicht auf dieser Skala: sie geht von %2 bis %3.</translation>
    </message>
    <message>
        <source>Which blood value?</source>
        <translation>Welcher Blutwert?</translation>
    </message>
    <message>
        <source>%1 is not measured in %2, or its range is upside down.</source>
        <translation>%1 wird nicht in %2 gemessen, oder sein Bereich steht auf dem Kopf.</translation>
    </message>
    <message>
        <source>A time is hh:mm, 00:00 to 23:59.</source>
        <translation>Eine Zeit ist hh:mm, 00:00 bis 23:59.</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Choose a file beside the collection</source>
        <translation>Eine Datei neben dem Bestand wählen</translation>
    </message>
    <message>
        <source>A picture or report that lies in the collection&apos;s folder</source>
        <translation>Ein Bild oder Bericht, der im Ordner des Bestands liegt</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::OpenCollection</name>
    <message>
        <source>nothing open</source>
        <translation>nichts geöffnet</translation>
    </message>
    <message>
        <source>working…</source>
        <translation>arbeitet…</translation>
    </message>
    <message>
        <source>all saved</source>
        <translation>alles gespeichert</translation>
    </message>
    <message>
        <source>for reading only</source>
        <translation>nur zum Lesen</translation>
    </message>
    <message>
        <source>Brackenmere (invented sample)</source>
        <translation>Brackenmere (erfundenes Beispiel)</translation>
    </message>
    <message>
        <source>This collection is open for reading only: its file or its folder cannot be written. To change it, copy it into a folder of your own and open the copy.</source>
        <translation>Dieser Bestand ist nur zum Lesen geöffnet: seine Datei oder ihr Ordner lässt sich nicht beschreiben. Um ihn zu ändern, in einen eigenen Ordner kopieren und die Kopie öffnen.</translation>
    </message>
    <message>
        <source>cut off from the server</source>
        <translation>vom Server getrennt</translation>
    </message>
    <message numerus="yes">
        <source>cut off from the server: %n entry(ies) wait</source>
        <translation>
            <numerusform>vom Server getrennt: %n Eintrag wartet</numerusform>
            <numerusform>vom Server getrennt: %n Einträge warten</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::PageHeader</name>
    <message>
        <source>What is shown</source>
        <translation>Was gezeigt wird</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::PanPane</name>
    <message>
        <source>Keep  (Enter)</source>
        <translation>Behalten  (Enter)</translation>
    </message>
    <message>
        <source>Take out  (Del)</source>
        <translation>Herausnehmen  (Entf)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation>Zurück  (Esc)</translation>
    </message>
    <message>
        <source>Control pans of the day</source>
        <translation>Kontrollschalen des Tages</translation>
    </message>
    <message>
        <source>Food, or class of foods that dry alike</source>
        <translation>Futtermittel, oder Klasse von Futtermitteln, die gleich trocknen</translation>
    </message>
    <message>
        <source>g when it was put out</source>
        <translation>g beim Hinstellen</translation>
    </message>
    <message>
        <source>g when it came back</source>
        <translation>g beim Zurückkommen</translation>
    </message>
    <message>
        <source>The same food in the same place, out of the animals&apos; reach: what water it lost or drew overnight. Leftovers are put right by it. Without a second weight it still stands: Today reminds of it.</source>
        <translation>Dasselbe Futter am selben Ort, außer Reichweite der Tiere: was es über Nacht an Wasser verlor oder zog. Danach werden Futterreste berichtigt. Ohne zweites Gewicht steht sie noch: Heute erinnert daran.</translation>
    </message>
    <message>
        <source>put out</source>
        <translation>hingestellt</translation>
    </message>
    <message>
        <source>came back</source>
        <translation>zurück</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>Control pans · %1</source>
        <translation>Kontrollschalen · %1</translation>
    </message>
    <message>
        <source>This pan still stands. What came back of it?</source>
        <translation>Diese Schale steht noch. Was kam davon zurück?</translation>
    </message>
    <message>
        <source>This pan is changed:</source>
        <translation>Diese Schale wird geändert:</translation>
    </message>
    <message>
        <source>No pan of this day is written down yet. The first one:</source>
        <translation>Noch keine Schale dieses Tages ist aufgeschrieben. Die erste:</translation>
    </message>
    <message>
        <source>Another pan:</source>
        <translation>Noch eine Schale:</translation>
    </message>
    <message>
        <source>No bowl of this day holds a food: there is nothing to put out.</source>
        <translation>Keine Schale dieses Tages enthält ein Futtermittel: es gibt nichts hinzustellen.</translation>
    </message>
    <message>
        <source>What did it weigh when it was put out? Type grams, such as 100.</source>
        <translation>Was wog sie beim Hinstellen? Gramm tippen, etwa 100.</translation>
    </message>
    <message>
        <source>“%1” is no weight: type the grams that were put out, such as 100.</source>
        <translation>„%1“ ist kein Gewicht: die Gramm tippen, die hingestellt wurden, etwa 100.</translation>
    </message>
    <message>
        <source>“%1” is no weight: type the grams that came back, or nothing while it still stands.</source>
        <translation>„%1“ ist kein Gewicht: die Gramm tippen, die zurückkamen, oder nichts, solange sie noch steht.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::PlanCard</name>
    <message>
        <source>%1 (no own sample has it)</source>
        <translation>%1 (keine eigene Probe hat ihn)</translation>
    </message>
    <message>
        <source>%1 (last %2)</source>
        <translation>%1 (zuletzt %2)</translation>
    </message>
    <message>
        <source>every … months</source>
        <translation>alle … Monate</translation>
    </message>
    <message>
        <source>a whole number of months from 1 to 120</source>
        <translation>eine ganze Zahl von Monaten von 1 bis 120</translation>
    </message>
    <message>
        <source>Sampling plan</source>
        <translation>Probenplan</translation>
    </message>
    <message>
        <source>Nutrients to analyse, and how often</source>
        <translation>Zu analysierende Nährstoffe, und wie oft</translation>
    </message>
    <message>
        <source>Nothing is planned. Plan what this food can go wrong in.</source>
        <translation>Nichts ist geplant. Planen, worin dieses Futtermittel fehlgehen kann.</translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation>Nichts ist fällig.</translation>
    </message>
    <message>
        <source>Due: %1.</source>
        <translation>Fällig: %1.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::PlanModel</name>
    <message>
        <source>line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>food or place</source>
        <translation>Futtermittel oder Stelle</translation>
    </message>
    <message>
        <source>what will happen, or why not</source>
        <translation>was geschehen wird, oder warum nicht</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Rail</name>
    <message>
        <source>Rooms</source>
        <translation>Räume</translation>
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
        <translation>Massen und Konditionen</translation>
    </message>
    <message>
        <source>Leave out…</source>
        <translation>Auslassen…</translation>
    </message>
    <message>
        <source>Put right…</source>
        <translation>Berichtigen…</translation>
    </message>
    <message>
        <source>Count it again</source>
        <translation>Wieder zählen</translation>
    </message>
    <message>
        <source>Choose a mass in the list first</source>
        <translation>Zuerst eine Masse in der Liste wählen</translation>
    </message>
    <message>
        <source>It stays in the record, and does not count</source>
        <translation>Sie bleibt aufgeschrieben und zählt nicht</translation>
    </message>
    <message>
        <source>What was written first stays beside it</source>
        <translation>Was zuerst geschrieben wurde, bleibt daneben</translation>
    </message>
    <message>
        <source>Leave %1 of %2 out of what counts?</source>
        <translation>%1 vom %2 aus dem lassen, was zählt?</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>What should %1 of %2 have been?</source>
        <translation>Was hätte %1 vom %2 sein sollen?</translation>
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
        <translation>Berichtigen</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ReadingsModel</name>
    <message>
        <source>group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>▲ doubtful: %1</source>
        <translation>▲ zweifelhaft: %1</translation>
    </message>
    <message>
        <source>□ left out: %1</source>
        <translation>□ ausgelassen: %1</translation>
    </message>
    <message>
        <source> first written as %1: %2</source>
        <translation> zuerst geschrieben als %1: %2</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>Kondition</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>animal</source>
        <translation>Tier</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>how</source>
        <translation>wie</translation>
    </message>
    <message>
        <source>remark</source>
        <translation>Bemerkung</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ReasonBar</name>
    <message>
        <source>A reason is needed</source>
        <translation>Ein Grund wird gebraucht</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Standard deviation, where it is known</source>
        <translation>Standardabweichung, wo sie bekannt ist</translation>
    </message>
    <message>
        <source>± SD</source>
        <translation>± SD</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Why? This is kept with it.</source>
        <translation>Warum? Das wird dazu aufbewahrt.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RecipeCard</name>
    <message>
        <source>Parts of the mix, and their grams</source>
        <translation>Teile der Mischung und ihre Gramm</translation>
    </message>
    <message>
        <source>With this yield the dry matter of the parts would weigh more than the mix; nothing is worked out from it.</source>
        <translation>Mit dieser Ausbeute wöge die Trockensubstanz der Teile mehr als die Mischung; daraus wird nichts berechnet.</translation>
    </message>
    <message>
        <source>A share that stays lies outside 0 to 2; nothing is worked out from it.</source>
        <translation>Ein bleibender Anteil liegt außerhalb von 0 bis 2; daraus wird nichts berechnet.</translation>
    </message>
    <message>
        <source>Nothing can be worked out from this recipe.</source>
        <translation>Aus diesem Rezept lässt sich nichts berechnen.</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>No food of this collection has “%1” in its name.</source>
        <translation>Kein Futtermittel dieses Bestands hat „%1“ in seinem Namen.</translation>
    </message>
    <message>
        <source>Add a part: type part of its name…</source>
        <translation>Teil hinzufügen: einen Teil des Namens tippen…</translation>
    </message>
    <message>
        <source>Add a part of the mix by part of its name</source>
        <translation>Einen Teil der Mischung über einen Teil des Namens hinzufügen</translation>
    </message>
    <message>
        <source>Grams of the mix from 1 g weighed in</source>
        <translation>Gramm der Mischung aus 1 g eingewogen</translation>
    </message>
    <message>
        <source>Source of the recipe</source>
        <translation>Quelle des Rezepts</translation>
    </message>
    <message>
        <source>who says so</source>
        <translation>wer das sagt</translation>
    </message>
    <message>
        <source>1 g weighed in gives, g</source>
        <translation>1 g eingewogen gibt, g</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Mixed from</source>
        <translation>Gemischt aus</translation>
    </message>
    <message>
        <source>Takes the chosen part out of the mix (Delete)</source>
        <translation>Nimmt den gewählten Teil aus der Mischung (Entf)</translation>
    </message>
    <message>
        <source>It is worked out as cooked from %1 now; a recipe takes the place of that.</source>
        <translation>Es wird jetzt als aus %1 gekocht berechnet; ein Rezept tritt an dessen Stelle.</translation>
    </message>
    <message>
        <source>Not mixed from other foods. Samples of the mix itself go before a recipe.</source>
        <translation>Nicht aus anderen Futtermitteln gemischt. Proben der Mischung selbst gehen einem Rezept vor.</translation>
    </message>
    <message>
        <source>What a part does not state is “at least” in the mix.</source>
        <translation>Was ein Teil nicht angibt, ist in der Mischung „mindestens“.</translation>
    </message>
    <message>
        <source>A food is not mixed from itself.</source>
        <translation>Ein Futtermittel wird nicht aus sich selbst gemischt.</translation>
    </message>
    <message>
        <source>“%1” is no yield: the grams of the mix that 1 g weighed in gives, above 0.</source>
        <translation>„%1“ ist keine Ausbeute: die Gramm der Mischung, die 1 g eingewogen gibt, über 0.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RecipePartsModel</name>
    <message>
        <source>How many grams of %1 go in?</source>
        <translation>Wie viele Gramm %1 kommen hinein?</translation>
    </message>
    <message>
        <source>“%1” of %2 is not a number of grams above 0.</source>
        <translation>„%1“ von %2 ist keine Zahl von Gramm über 0.</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>grams</source>
        <translation>Gramm</translation>
    </message>
    <message>
        <source>share</source>
        <translation>Anteil</translation>
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
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Undo: %1 (Ctrl+Z)</source>
        <translation>Rückgängig: %1 (Strg+Z)</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Wiederholen: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::Rooms</name>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Foods</source>
        <translation>Futter</translation>
    </message>
    <message>
        <source>Animals</source>
        <translation>Tiere</translation>
    </message>
    <message>
        <source>Diets</source>
        <translation>Rationen</translation>
    </message>
    <message>
        <source>Kitchen</source>
        <translation>Küche</translation>
    </message>
    <message>
        <source>Intake</source>
        <translation>Aufnahme</translation>
    </message>
    <message>
        <source>Health</source>
        <translation>Gesundheit</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationBar</name>
    <message>
        <source>Plan days…</source>
        <translation>Tage planen…</translation>
    </message>
    <message>
        <source>Plan again from today</source>
        <translation>Ab heute neu planen</translation>
    </message>
    <message>
        <source>Days that are over count</source>
        <translation>Vergangene Tage zählen</translation>
    </message>
    <message>
        <source>as offered</source>
        <translation>wie angeboten</translation>
    </message>
    <message>
        <source>as eaten</source>
        <translation>wie gefressen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Which days</source>
        <translation>Welche Tage</translation>
    </message>
    <message>
        <source>Plan the days after those that are planned</source>
        <translation>Die Tage nach den schon geplanten planen</translation>
    </message>
    <message>
        <source>What was fed stays, and the other days balance what it brought</source>
        <translation>Was gefüttert wurde, bleibt, und die anderen Tage gleichen aus, was es brachte</translation>
    </message>
    <message>
        <source>Take the best plan that is found so far</source>
        <translation>Den besten bisher gefundenen Plan nehmen</translation>
    </message>
    <message>
        <source>All that was offered counts</source>
        <translation>Alles Angebotene zählt</translation>
    </message>
    <message>
        <source>What was weighed back does not count, where somebody weighed it</source>
        <translation>Was zurückgewogen wurde, zählt nicht, wo es jemand gewogen hat</translation>
    </message>
    <message>
        <source>planning…</source>
        <translation>plant…</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationCalendar</name>
    <message>
        <source>Calendar of the rotation</source>
        <translation>Kalender des Wechselplans</translation>
    </message>
    <message>
        <source>A row for each food, a column for each day, grams per animal</source>
        <translation>Eine Zeile je Futtermittel, eine Spalte je Tag, Gramm je Tier</translation>
    </message>
    <message>
        <source>%1 missed</source>
        <translation>%1 verfehlt</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationCalendarModel</name>
    <message>
        <source>%1: %2 g a day on the mean</source>
        <translation>%1: %2 g am Tag im Mittel</translation>
    </message>
    <message>
        <source>%1 g per animal</source>
        <translation>%1 g je Tier</translation>
    </message>
    <message>
        <source>not fed</source>
        <translation>nicht gefüttert</translation>
    </message>
    <message>
        <source>, fed</source>
        <translation>, gefüttert</translation>
    </message>
    <message>
        <source>, locked</source>
        <translation>, gesperrt</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>%1 missed</source>
        <translation>%1 verfehlt</translation>
    </message>
    <message>
        <source>targets</source>
        <translation>Zielwerte</translation>
    </message>
    <message>
        <source>mean
a day</source>
        <translation>Mittel
am Tag</translation>
    </message>
    <message>
        <source>fed</source>
        <translation>gefüttert</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationCellDelegate</name>
    <message>
        <source>Grams per animal</source>
        <translation>Gramm je Tier</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationEntry</name>
    <message>
        <source>Days are planned for a diet of a collection: choose one at the left.</source>
        <translation>Tage werden für eine Ration eines Bestands geplant: links eine wählen.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationForm</name>
    <message>
        <source>No food more days running than</source>
        <translation>Kein Futtermittel länger hintereinander als</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>keine Grenze</translation>
    </message>
    <message>
        <source>Different foods wanted</source>
        <translation>Gewünschte verschiedene Futtermittel</translation>
    </message>
    <message>
        <source>no wish</source>
        <translation>kein Wunsch</translation>
    </message>
    <message>
        <source>Different foods a day, at most</source>
        <translation>Verschiedene Futtermittel am Tag, höchstens</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planen</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>How many days</source>
        <translation>Wie viele Tage</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>A single day&apos;s zones are wider by</source>
        <translation>Die Bereiche eines einzelnen Tages sind weiter um</translation>
    </message>
    <message>
        <source>Nothing is fed on %1</source>
        <translation>Am %1 wird nichts gefüttert</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Wie lange</translation>
    </message>
    <message>
        <source>Different foods wanted over the days</source>
        <translation>Gewünschte verschiedene Futtermittel über die Tage</translation>
    </message>
    <message>
        <source>Nothing is fed on</source>
        <translation>Nichts gefüttert wird am</translation>
    </message>
    <message>
        <source>Rules from a file…</source>
        <translation>Regeln aus einer Datei…</translation>
    </message>
    <message>
        <source>Structure by the day, seasons, deliveries, stock to use up: a file of rules says them</source>
        <translation>Struktur je Tag, Jahreszeiten, Lieferungen, aufzubrauchender Vorrat: eine Datei mit Regeln sagt es</translation>
    </message>
    <message>
        <source>Plan days that vary</source>
        <translation>Wechselnde Tage planen</translation>
    </message>
    <message>
        <source>Every day another bowl of this version&apos;s foods, within their limits; over the days the targets hold. A food that may come needs a line in the version, with 0 g if it is not fed now. Its structure rules hold each day.</source>
        <translation>Jeden Tag eine andere Schale aus den Futtermitteln dieser Version, in ihren Grenzen; über die Tage gelten die Zielwerte. Ein Futtermittel, das kommen darf, braucht eine Zeile in der Version, mit 0 g, wenn es jetzt nicht gefüttert wird. Ihre Strukturregeln gelten jeden Tag.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationHandBar</name>
    <message>
        <source>A day earlier</source>
        <translation>Einen Tag früher</translation>
    </message>
    <message>
        <source>Alt+←, or drag the food to another day</source>
        <translation>Alt+←, oder das Futtermittel auf einen anderen Tag ziehen</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Einen Tag später</translation>
    </message>
    <message>
        <source>Alt+→, or drag the food to another day</source>
        <translation>Alt+→, oder das Futtermittel auf einen anderen Tag ziehen</translation>
    </message>
    <message>
        <source>Lock or free</source>
        <translation>Sperren oder freigeben</translation>
    </message>
    <message>
        <source>L: a locked cell stays as it is when the rest is planned</source>
        <translation>L: ein gesperrtes Feld bleibt, wie es ist, wenn der Rest geplant wird</translation>
    </message>
    <message>
        <source>Not on this day</source>
        <translation>Nicht an diesem Tag</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Entf</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationPane</name>
    <message>
        <source>week of</source>
        <translation>Woche vom</translation>
    </message>
    <message>
        <source>group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>food</source>
        <translation>Futtermittel</translation>
    </message>
    <message>
        <source>offered</source>
        <translation>angeboten</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation>zu kaufen</translation>
    </message>
    <message>
        <source>Purchase list</source>
        <translation>Einkaufsliste</translation>
    </message>
    <message>
        <source>Below the calendar</source>
        <translation>Unter dem Kalender</translation>
    </message>
    <message>
        <source>What is shown below the calendar</source>
        <translation>Was unter dem Kalender gezeigt wird</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Zu kaufen</translation>
    </message>
    <message>
        <source>No days are planned for this version: it is fed as it stands, the same each day.</source>
        <translation>Für diese Version sind keine Tage geplant: sie wird gefüttert, wie sie dasteht, jeden Tag gleich.</translation>
    </message>
    <message>
        <source>Diet</source>
        <translation>Ration</translation>
    </message>
    <message>
        <source>Save as a page or a file</source>
        <translation>Als Seite oder Datei speichern</translation>
    </message>
    <message>
        <source>Print the calendar</source>
        <translation>Den Kalender drucken</translation>
    </message>
    <message>
        <source>Remove this rotation</source>
        <translation>Diesen Wechselplan entfernen</translation>
    </message>
    <message>
        <source>Back to the diet</source>
        <translation>Zurück zur Ration</translation>
    </message>
    <message>
        <source>printed: %1</source>
        <translation>gedruckt: %1</translation>
    </message>
    <message>
        <source>written: %1</source>
        <translation>geschrieben: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationPlanner</name>
    <message>
        <source>Nothing was planned: the planning itself failed.</source>
        <translation>Es wurde nichts geplant: das Planen selbst ist gescheitert.</translation>
    </message>
    <message>
        <source>This version is no longer in the collection.</source>
        <translation>Diese Version ist nicht mehr im Bestand.</translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation>%1 planen</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 von %2 auf %3</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>free %1 on %2</source>
        <translation>%1 am %2 freigeben</translation>
    </message>
    <message>
        <source>lock %1 on %2</source>
        <translation>%1 am %2 sperren</translation>
    </message>
    <message>
        <source>All days of this rotation are over: plan the next ones.</source>
        <translation>Alle Tage dieses Wechselplans sind vorbei: die nächsten planen.</translation>
    </message>
    <message>
        <source>plan again from today</source>
        <translation>ab heute neu planen</translation>
    </message>
    <message>
        <source>remove the rotation</source>
        <translation>den Wechselplan entfernen</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RotationSide</name>
    <message>
        <source>What the ladder shows</source>
        <translation>Was die Leiter zeigt</translation>
    </message>
    <message>
        <source>all days</source>
        <translation>alle Tage</translation>
    </message>
    <message>
        <source>this day</source>
        <translation>dieser Tag</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Bilanz</translation>
    </message>
    <message>
        <source>How the days stand</source>
        <translation>Wie die Tage stehen</translation>
    </message>
    <message>
        <source>The mean day of the period against the targets</source>
        <translation>Der mittlere Tag des Zeitraums gegen die Zielwerte</translation>
    </message>
    <message>
        <source>The day that the hand is on, against its own, wider zones</source>
        <translation>Der Tag, auf dem die Hand liegt, gegen seine eigenen, weiteren Bereiche</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RuleAdder</name>
    <message>
        <source>Minimum of the new target</source>
        <translation>Minimum des neuen Zielwerts</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>Maximum of the new target</source>
        <translation>Maximum des neuen Zielwerts</translation>
    </message>
    <message>
        <source>max</source>
        <translation>max</translation>
    </message>
    <message>
        <source>Food group that is not given</source>
        <translation>Futtergruppe, die nicht gegeben wird</translation>
    </message>
    <message>
        <source>food group</source>
        <translation>Futtergruppe</translation>
    </message>
    <message>
        <source>Why it is not given</source>
        <translation>Warum sie nicht gegeben wird</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>Nutrient of the new target</source>
        <translation>Nährstoff des neuen Zielwerts</translation>
    </message>
    <message>
        <source>Unit of the new target</source>
        <translation>Einheit des neuen Zielwerts</translation>
    </message>
    <message>
        <source>Basis of the new target</source>
        <translation>Bezug des neuen Zielwerts</translation>
    </message>
    <message>
        <source>per %1</source>
        <translation>je %1</translation>
    </message>
    <message>
        <source>Add target</source>
        <translation>Zielwert hinzufügen</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>No nutrient is called “%1”.</source>
        <translation>Kein Nährstoff heißt „%1“.</translation>
    </message>
    <message>
        <source>A target needs a minimum or a maximum, and the minimum is not above the maximum.</source>
        <translation>Ein Zielwert braucht ein Minimum oder ein Maximum, und das Minimum liegt nicht über dem Maximum.</translation>
    </message>
    <message>
        <source>Name the food group that is not given, and say why.</source>
        <translation>Die Futtergruppe nennen, die nicht gegeben wird, und sagen warum.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RulesPane</name>
    <message>
        <source>the mass as fed</source>
        <translation>der Masse der Frischsubstanz</translation>
    </message>
    <message>
        <source>the energy</source>
        <translation>der Energie</translation>
    </message>
    <message>
        <source>the dry matter</source>
        <translation>der Trockensubstanz</translation>
    </message>
    <message>
        <source>%1 of the group %2</source>
        <translation>%1 aus der Gruppe %2</translation>
    </message>
    <message>
        <source>%1 to %2 of the group %3</source>
        <translation>%1 bis %2 aus der Gruppe %3</translation>
    </message>
    <message>
        <source>at least %1 of the group %2</source>
        <translation>mindestens %1 aus der Gruppe %2</translation>
    </message>
    <message>
        <source>, at least %1 g of each</source>
        <translation>, mindestens %1 g von jedem</translation>
    </message>
    <message>
        <source>%1 to %2 of %3 from %4</source>
        <translation>%1 bis %2 %3 aus %4</translation>
    </message>
    <message>
        <source>at most %1 of %2 from %3</source>
        <translation>höchstens %1 %2 aus %3</translation>
    </message>
    <message>
        <source>at least %1 of %2 from %3</source>
        <translation>mindestens %1 %2 aus %3</translation>
    </message>
    <message>
        <source>At least so many foods of the group</source>
        <translation>Mindestens so viele Futtermittel der Gruppe</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>At most so many foods of the group</source>
        <translation>Höchstens so viele Futtermittel der Gruppe</translation>
    </message>
    <message>
        <source>max</source>
        <translation>max</translation>
    </message>
    <message>
        <source>At least so many grams of each</source>
        <translation>Mindestens so viele Gramm von jedem</translation>
    </message>
    <message>
        <source>g each</source>
        <translation>je g</translation>
    </message>
    <message>
        <source>At least this share, in percent</source>
        <translation>Mindestens dieser Anteil, in Prozent</translation>
    </message>
    <message>
        <source>min %</source>
        <translation>min %</translation>
    </message>
    <message>
        <source>At most this share, in percent</source>
        <translation>Höchstens dieser Anteil, in Prozent</translation>
    </message>
    <message>
        <source>max %</source>
        <translation>max %</translation>
    </message>
    <message>
        <source>Food group of the structure rule</source>
        <translation>Futtergruppe der Strukturregel</translation>
    </message>
    <message>
        <source>Food group of the share</source>
        <translation>Futtergruppe des Anteils</translation>
    </message>
    <message>
        <source>What the share is of</source>
        <translation>Wovon der Anteil ist</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>Ask for it</source>
        <translation>Verlangen</translation>
    </message>
    <message>
        <source>foods of</source>
        <translation>Futtermittel aus</translation>
    </message>
    <message>
        <source>Set the share</source>
        <translation>Anteil setzen</translation>
    </message>
    <message>
        <source>share of</source>
        <translation>Anteil von</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove the rule: %1</source>
        <translation>Die Regel entfernen: %1</translation>
    </message>
    <message>
        <source>%1 (by the targets)</source>
        <translation>%1 (durch die Zielwerte)</translation>
    </message>
    <message>
        <source>Nothing is asked of the diet&apos;s structure yet.</source>
        <translation>An die Struktur der Ration ist noch nichts verlangt.</translation>
    </message>
    <message>
        <source>A structure rule needs a group, and a whole number of foods at least or at most.</source>
        <translation>Eine Strukturregel braucht eine Gruppe und eine ganze Zahl von Futtermitteln mindestens oder höchstens.</translation>
    </message>
    <message>
        <source>A share needs a group, and a percentage at least or at most, up to 100.</source>
        <translation>Ein Anteil braucht eine Gruppe und einen Prozentsatz mindestens oder höchstens, bis 100.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::RungDetail</name>
    <message>
        <source>Minimum of the target</source>
        <translation>Minimum des Zielwerts</translation>
    </message>
    <message>
        <source>Maximum of the target</source>
        <translation>Maximum des Zielwerts</translation>
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
        <translation>Erkunden</translation>
    </message>
    <message>
        <source>Moves the bound over a range and shows what has to give (Ctrl+E)</source>
        <translation>Bewegt die Grenze über eine Spanne und zeigt, was nachgeben muss (Strg+E)</translation>
    </message>
    <message>
        <source>%1: nothing in the bowl</source>
        <translation>%1: nichts in der Schale</translation>
    </message>
    <message>
        <source>“%1” is no number of at least zero: the bound stays.</source>
        <translation>„%1“ ist keine Zahl ab null: die Grenze bleibt.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SampleForm</name>
    <message>
        <source>Remove this sample</source>
        <translation>Diese Probe entfernen</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>Woher sie kommt</translation>
    </message>
    <message>
        <source>Origin</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>report number, or the publication</source>
        <translation>Nummer des Berichts, oder die Veröffentlichung</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>2026-10-03</source>
        <translation>2026-10-03</translation>
    </message>
    <message>
        <source>Laboratory</source>
        <translation>Labor</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Keep this sample</source>
        <translation>Diese Probe behalten</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Values of the sample</source>
        <translation>Werte der Probe</translation>
    </message>
    <message>
        <source>A value may be &lt; 0.05, ≥ 33, tr or n.d.; a nutrient may be typed by its tagname (CA) or by the laboratory&apos;s word for it.</source>
        <translation>Ein Wert kann &lt; 0,05, ≥ 33, tr oder n.d. sein; ein Nährstoff lässt sich über sein Kürzel (CA) oder das Wort des Labors tippen.</translation>
    </message>
    <message>
        <source>A sample of %1</source>
        <translation>Eine Probe von %1</translation>
    </message>
    <message>
        <source>“%1” is no date; write it as 2026-10-03.</source>
        <translation>„%1“ ist kein Datum; als 2026-10-03 schreiben.</translation>
    </message>
    <message>
        <source>A sample needs its source: a number with no origin helps nobody.</source>
        <translation>Eine Probe braucht ihre Quelle: eine Zahl ohne Herkunft hilft niemandem.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SampleValuesDelegate</name>
    <message>
        <source>Basis</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source>per 100 g as fed</source>
        <translation>je 100 g Frischsubstanz</translation>
    </message>
    <message>
        <source>per kg DM</source>
        <translation>je kg TS</translation>
    </message>
    <message>
        <source>per 1000 kcal</source>
        <translation>je 1000 kcal</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SampleValuesModel</name>
    <message>
        <source>per kg DM</source>
        <translation>je kg TS</translation>
    </message>
    <message>
        <source>per 1000 kcal</source>
        <translation>je 1000 kcal</translation>
    </message>
    <message>
        <source>per 100 g as fed</source>
        <translation>je 100 g Frischsubstanz</translation>
    </message>
    <message>
        <source>No nutrient is called “%1”.</source>
        <translation>Kein Nährstoff heißt „%1“.</translation>
    </message>
    <message>
        <source>“%1” is no amount of %2: a number, &lt; 0.05, ≥ 33, tr or n.d.</source>
        <translation>„%1“ ist keine Menge von %2: eine Zahl, &lt; 0,05, ≥ 33, tr oder n.d.</translation>
    </message>
    <message>
        <source>“%1” is no standard deviation of %2.</source>
        <translation>„%1“ ist keine Standardabweichung von %2.</translation>
    </message>
    <message>
        <source>n of %1 is a whole number from 1.</source>
        <translation>n von %1 ist eine ganze Zahl ab 1.</translation>
    </message>
    <message>
        <source>%1 stands here twice.</source>
        <translation>%1 steht hier zweimal.</translation>
    </message>
    <message>
        <source>A sample needs at least one value.</source>
        <translation>Eine Probe braucht mindestens einen Wert.</translation>
    </message>
    <message>
        <source>type a nutrient…</source>
        <translation>einen Nährstoff tippen…</translation>
    </message>
    <message>
        <source>nutrient</source>
        <translation>Nährstoff</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>basis</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <source>SD</source>
        <translation>SD</translation>
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
        <translation>Anschluss der Waage</translation>
    </message>
    <message>
        <source>Port of the scale</source>
        <translation>Anschluss der Waage</translation>
    </message>
    <message>
        <source>%1 baud</source>
        <translation>%1 Baud</translation>
    </message>
    <message>
        <source>Speed of the port</source>
        <translation>Geschwindigkeit des Anschlusses</translation>
    </message>
    <message>
        <source>unit as sent</source>
        <translation>Einheit wie gesendet</translation>
    </message>
    <message>
        <source>Unit of a scale that sends none</source>
        <translation>Einheit einer Waage, die keine sendet</translation>
    </message>
    <message>
        <source>The scale is connected; it has sent nothing yet.</source>
        <translation>Die Waage ist verbunden; sie hat noch nichts geschickt.</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Trennen</translation>
    </message>
    <message>
        <source>Use scale</source>
        <translation>Verbinden</translation>
    </message>
    <message>
        <source>Scale…</source>
        <translation>Waage…</translation>
    </message>
    <message>
        <source>Let go of the scale</source>
        <translation>Die Waage trennen</translation>
    </message>
    <message>
        <source>Use the scale</source>
        <translation>Die Waage verwenden</translation>
    </message>
    <message>
        <source>Choose a scale</source>
        <translation>Eine Waage wählen</translation>
    </message>
    <message>
        <source>No scale: weights are typed.</source>
        <translation>Keine Waage: Gewichte werden getippt.</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>Scale: %1, at rest</source>
        <translation>Waage: %1, in Ruhe</translation>
    </message>
    <message>
        <source>Scale: %1, moving</source>
        <translation>Waage: %1, in Bewegung</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ServerDialog</name>
    <message>
        <source>verify-full: encrypted, and the server proves its name</source>
        <translation>verify-full: verschlüsselt, und der Server beweist seinen Namen</translation>
    </message>
    <message>
        <source>verify-ca: encrypted, and the server proves whose it is</source>
        <translation>verify-ca: verschlüsselt, und der Server beweist, wessen er ist</translation>
    </message>
    <message>
        <source>require: encrypted, and the server proves nothing</source>
        <translation>require: verschlüsselt, und der Server beweist nichts</translation>
    </message>
    <message>
        <source>prefer: encrypted where the server can</source>
        <translation>prefer: verschlüsselt, wo der Server es kann</translation>
    </message>
    <message>
        <source>allow: encrypted only where the server wants it</source>
        <translation>allow: verschlüsselt nur, wo der Server es will</translation>
    </message>
    <message>
        <source>disable: not encrypted</source>
        <translation>disable: nicht verschlüsselt</translation>
    </message>
    <message>
        <source>Open a collection on a server</source>
        <translation>Einen Bestand auf einem Server öffnen</translation>
    </message>
    <message>
        <source>empty: this machine</source>
        <translation>leer: dieser Rechner</translation>
    </message>
    <message>
        <source>as is usual: verify-full, and on this machine prefer</source>
        <translation>wie üblich: verify-full, und auf diesem Rechner prefer</translation>
    </message>
    <message>
        <source>What is still needed</source>
        <translation>Was noch fehlt</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Several desks can share a collection on a PostgreSQL server. Whoever set it up can tell what belongs here. Where the server asks for a password, you are asked for it next; it is kept nowhere.</source>
        <translation>Mehrere Plätze können einen Bestand auf einem PostgreSQL-Server teilen. Was hierher gehört, weiß, wer ihn eingerichtet hat. Wo der Server ein Passwort will, werden Sie als Nächstes danach gefragt; es wird nirgends behalten.</translation>
    </message>
    <message>
        <source>another one</source>
        <translation>ein anderer</translation>
    </message>
    <message>
        <source>&amp;Was open before</source>
        <translation>&amp;War schon offen</translation>
    </message>
    <message>
        <source>Fills in what follows; passwords are not remembered</source>
        <translation>Füllt aus, was folgt; Passwörter werden nicht behalten</translation>
    </message>
    <message>
        <source>&amp;Server</source>
        <translation>&amp;Server</translation>
    </message>
    <message>
        <source>The name of the machine on which the server runs</source>
        <translation>Der Name des Rechners, auf dem der Server läuft</translation>
    </message>
    <message>
        <source>P&amp;ort</source>
        <translation>P&amp;ort</translation>
    </message>
    <message>
        <source>5432, where whoever runs the server does not say otherwise</source>
        <translation>5432, wenn der Betreiber des Servers nichts anderes sagt</translation>
    </message>
    <message>
        <source>&amp;Database</source>
        <translation>&amp;Datenbank</translation>
    </message>
    <message>
        <source>The server&apos;s name for the collection</source>
        <translation>Wie der Server den Bestand nennt</translation>
    </message>
    <message>
        <source>&amp;Person</source>
        <translation>&amp;Person</translation>
    </message>
    <message>
        <source>Your name as the server knows you</source>
        <translation>Ihr Name, wie der Server Sie kennt</translation>
    </message>
    <message>
        <source>Se&amp;curity</source>
        <translation>Si&amp;cherheit</translation>
    </message>
    <message>
        <source>How the way to the server is guarded (sslmode); less than verify-full is for networks that are nobody else&apos;s</source>
        <translation>Wie der Weg zum Server geschützt ist (sslmode); weniger als verify-full ist für Netze, in denen sonst niemand ist</translation>
    </message>
    <message>
        <source>The name of the database is still needed.</source>
        <translation>Der Name der Datenbank fehlt noch.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SheetSide</name>
    <message>
        <source>The sheet beside the bowls</source>
        <translation>Der Futterzettel neben den Schalen</translation>
    </message>
    <message>
        <source>The kitchen needs</source>
        <translation>Die Küche braucht</translation>
    </message>
    <message>
        <source>Out of the freezer today, for tomorrow</source>
        <translation>Heute aus dem Gefrierschrank, für morgen</translation>
    </message>
    <message>
        <source>Feed well today: live food of tomorrow</source>
        <translation>Heute gut füttern: Lebendfutter von morgen</translation>
    </message>
    <message>
        <source>No bowl</source>
        <translation>Keine Schale</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Immer</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SoughtButton</name>
    <message>
        <source>Closest to now</source>
        <translation>Am nächsten an jetzt</translation>
    </message>
    <message>
        <source>Lowest cost</source>
        <translation>Geringste Kosten</translation>
    </message>
    <message>
        <source>Fewest foods</source>
        <translation>Wenigste Futtermittel</translation>
    </message>
    <message>
        <source>Least %1</source>
        <translation>Am wenigsten %1</translation>
    </message>
    <message>
        <source>Most %1</source>
        <translation>Am meisten %1</translation>
    </message>
    <message>
        <source>What is sought among the bowls that come nearest to the targets</source>
        <translation>Was unter den Schalen gesucht wird, die den Zielwerten am nächsten kommen</translation>
    </message>
    <message>
        <source>What is sought: %1</source>
        <translation>Was gesucht wird: %1</translation>
    </message>
    <message>
        <source>Least of</source>
        <translation>Am wenigsten von</translation>
    </message>
    <message>
        <source>Most of</source>
        <translation>Am meisten von</translation>
    </message>
    <message>
        <source>Without a target</source>
        <translation>Ohne Zielwert</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SpeciesPane</name>
    <message>
        <source>The species</source>
        <translation>Die Tierart</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Scientific name</source>
        <translation>Wissenschaftlicher Name</translation>
    </message>
    <message>
        <source>Feeding type</source>
        <translation>Ernährungstyp</translation>
    </message>
    <message>
        <source>Belongs to</source>
        <translation>Gehört zu</translation>
    </message>
    <message>
        <source>mammal, primate, lemur: the widest first</source>
        <translation>mammal, primate, lemur: das Weiteste zuerst</translation>
    </message>
    <message>
        <source>Cautions, model species and energy choices go by these words</source>
        <translation>Warnhinweise, Modelltierarten und Energieangebote richten sich nach diesen Wörtern</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::StandingBar</name>
    <message>
        <source>%1 version %2</source>
        <translation>%1 Version %2</translation>
    </message>
    <message>
        <source>This diet has no targets: only the energy need is judged. Give the group a target profile in the Animals room.</source>
        <translation>Diese Ration hat keine Zielwerte: nur der Energiebedarf wird beurteilt. Der Gruppe im Raum „Tiere“ ein Zielwertprofil geben.</translation>
    </message>
    <message>
        <source>What was decided on cannot be read any more: shown is what the collection holds now.</source>
        <translation>Worüber entschieden wurde, ist nicht mehr lesbar: gezeigt ist, was der Bestand jetzt enthält.</translation>
    </message>
    <message>
        <source>The group is now fed by the targets %1; this version is judged by %2.</source>
        <translation>Die Gruppe wird jetzt nach den Zielwerten %1 gefüttert; diese Version wird nach %2 beurteilt.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Not in the collection any more, and not counted: %1.</source>
        <translation>Nicht mehr im Bestand und nicht gezählt: %1.</translation>
    </message>
    <message>
        <source>Since it was approved these foods have other values: %1. What is shown is what was decided on.</source>
        <translation>Seit der Freigabe haben diese Futtermittel andere Werte: %1. Gezeigt ist, worüber entschieden wurde.</translation>
    </message>
    <message>
        <source>Its own bounds on these rules hold for nothing, since the targets no longer state them: %1.</source>
        <translation>Ihre eigenen Grenzen für diese Regeln gelten für nichts, denn die Zielwerte nennen sie nicht mehr: %1.</translation>
    </message>
    <message>
        <source>Hard rules that this diet would loosen without saying why stay in force: %1.</source>
        <translation>Feste Regeln, die diese Ration ohne Begründung lockern würde, bleiben in Kraft: %1.</translation>
    </message>
    <message>
        <source>Judge by the newer targets</source>
        <translation>Nach den neueren Zielwerten beurteilen</translation>
    </message>
    <message>
        <source>Show theirs</source>
        <translation>Deren zeigen</translation>
    </message>
    <message>
        <source>Keep mine as a draft of its own</source>
        <translation>Meines als eigenen Entwurf behalten</translation>
    </message>
    <message>
        <source>What changed since this version was written</source>
        <translation>Was sich geändert hat, seit diese Version geschrieben wurde</translation>
    </message>
    <message>
        <source>Another window changed this diet while you did. Nothing of yours was written yet.</source>
        <translation>Ein anderes Fenster hat diese Ration geändert, während Sie es taten. Von Ihnen wurde noch nichts geschrieben.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::StartPage</name>
    <message>
        <source>A collection keeps your foods, animals, diets and feeding days in one file, and where each number comes from.</source>
        <translation>Ein Bestand bewahrt Ihre Futtermittel, Tiere, Rationen und Fütterungstage in einer Datei, und woher jede Zahl kommt.</translation>
    </message>
    <message>
        <source>Open the invented sample</source>
        <translation>Das erfundene Beispiel öffnen</translation>
    </message>
    <message>
        <source>The Brackenmere Animal Gardens, which do not exist: foods, animals, diets and four months of feeding. To look around and try things; Help at the foot of the rail leads through it.</source>
        <translation>Die Brackenmere Animal Gardens, die es nicht gibt: Futtermittel, Tiere, Rationen und vier Monate Fütterung. Zum Umsehen und Ausprobieren; Hilfe am Fuß der Leiste führt hindurch.</translation>
    </message>
    <message>
        <source>Import a table…</source>
        <translation>Tabelle einlesen…</translation>
    </message>
    <message>
        <source>A laboratory&apos;s or publisher&apos;s table of foods (CSV, XLSX). It asks where the new collection is to be kept, and shows line by line what will happen before anything is written.</source>
        <translation>Eine Futtermitteltabelle eines Labors oder Verlags (CSV, XLSX). Es wird gefragt, wo der neue Bestand liegen soll, und Zeile für Zeile gezeigt, was geschehen wird, bevor etwas geschrieben wird.</translation>
    </message>
    <message>
        <source>Start empty…</source>
        <translation>Leer beginnen…</translation>
    </message>
    <message>
        <source>A new collection file, to which foods, animals and diets are added one by one. Each room says what to do first.</source>
        <translation>Eine neue Bestandsdatei, in der Futtermittel, Tiere und Rationen einzeln angelegt werden. Jeder Raum sagt, was zuerst zu tun ist.</translation>
    </message>
    <message>
        <source>Or open a collection that is there already…</source>
        <translation>Oder einen Bestand öffnen, den es schon gibt…</translation>
    </message>
    <message>
        <source>Open a collection that is there already</source>
        <translation>Einen Bestand öffnen, den es schon gibt</translation>
    </message>
    <message>
        <source>Or one on a server, which several desks share…</source>
        <translation>Oder einen auf einem Server, den mehrere Plätze teilen…</translation>
    </message>
    <message>
        <source>Open a collection on a server</source>
        <translation>Einen Bestand auf einem Server öffnen</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::StatusLine</name>
    <message>
        <source>Energy in</source>
        <translation>Energie in</translation>
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
        <translation>Stand des Speicherns</translation>
    </message>
    <message>
        <source>Units in force</source>
        <translation>Geltende Einheiten</translation>
    </message>
    <message>
        <source>Collection</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>What the room does</source>
        <translation>Was der Raum tut</translation>
    </message>
    <message>
        <source>Who is at the keyboard</source>
        <translation>Wer an der Tastatur ist</translation>
    </message>
    <message>
        <source>Who is at the keyboard: every change is kept under this name</source>
        <translation>Wer an der Tastatur ist: jede Änderung wird unter diesem Namen aufbewahrt</translation>
    </message>
    <message>
        <source>who is at the keyboard?</source>
        <translation>wer ist an der Tastatur?</translation>
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
        <translation>Bericht…</translation>
    </message>
    <message>
        <source>What is to be known</source>
        <translation>Was bekannt werden soll</translation>
    </message>
    <message>
        <source>Half of the interval, in percent of the mean</source>
        <translation>Die Hälfte des Intervalls, in Prozent des Mittels</translation>
    </message>
    <message>
        <source>Confidence</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>%1 % confidence</source>
        <translation>%1 % Sicherheit</translation>
    </message>
    <message>
        <source>First day of the study</source>
        <translation>Erster Tag der Studie</translation>
    </message>
    <message>
        <source>The plan as a page for the kitchen: PDF or HTML</source>
        <translation>Der Plan als Seite für die Küche: PDF oder HTML</translation>
    </message>
    <message>
        <source>The report of these days, once they are over: PDF, XLSX or HTML</source>
        <translation>Der Bericht dieser Tage, wenn sie vorbei sind: PDF, XLSX oder HTML</translation>
    </message>
    <message>
        <source>Mean of</source>
        <translation>Mittel von</translation>
    </message>
    <message>
        <source>from</source>
        <translation>ab</translation>
    </message>
    <message>
        <source>Plan a study: how many days, by how the group&apos;s own days differ from each other</source>
        <translation>Eine Studie planen: wie viele Tage, danach, wie sich die eigenen Tage der Gruppe voneinander unterscheiden</translation>
    </message>
    <message>
        <source>Days of the study</source>
        <translation>Tage der Studie</translation>
    </message>
    <message>
        <source>Why so many days, and what is done on each</source>
        <translation>Warum so viele Tage, und was an jedem getan wird</translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>Der Plan</translation>
    </message>
    <message>
        <source>all food, g as fed</source>
        <translation>alles Futter, g Frischsubstanz</translation>
    </message>
    <message>
        <source>No group has a bowl yet</source>
        <translation>Noch hat keine Gruppe eine Schale</translation>
    </message>
    <message>
        <source>? No plan</source>
        <translation>? Kein Plan</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SubjectBox</name>
    <message>
        <source>What is followed over time</source>
        <translation>Was über die Zeit verfolgt wird</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, a day and animal</source>
        <translation>%1, je Tag und Tier</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SureButton</name>
    <message>
        <source>How sure each target has to hold, in view of the scatter of the foods&apos; values</source>
        <translation>Wie sicher jeder Zielwert halten soll, angesichts der Streuung der Werte der Futtermittel</translation>
    </message>
    <message>
        <source>%1 sure</source>
        <translation>zu %1 sicher</translation>
    </message>
    <message>
        <source>As measured</source>
        <translation>Wie gemessen</translation>
    </message>
    <message>
        <source>How sure: %1</source>
        <translation>Wie sicher: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SwapEntry</name>
    <message>
        <source>instead of %1: %2 %3 (the diet itself is as it was)</source>
        <translation>statt %1: %2 %3 (die Ration selbst ist, wie sie war)</translation>
    </message>
    <message>
        <source>This diet gives nothing of it: nothing is missing.</source>
        <translation>Diese Ration gibt nichts davon: es fehlt nichts.</translation>
    </message>
    <message>
        <source>Open a collection first: its foods are what there is.</source>
        <translation>Zuerst einen Bestand öffnen: seine Futtermittel sind, was es gibt.</translation>
    </message>
    <message>
        <source>Reading what is on hand…</source>
        <translation>Liest, was vorrätig ist…</translation>
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
        <translation>Was nahe an der freigegebenen Schale bleibt (O)</translation>
    </message>
    <message>
        <source>as offered</source>
        <translation>wie angeboten</translation>
    </message>
    <message>
        <source>as eaten  (O)</source>
        <translation>wie gefressen  (O)</translation>
    </message>
    <message>
        <source>Use this  (Enter)</source>
        <translation>Dieses nehmen  (Enter)</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation>Zurück  (Esc)</translation>
    </message>
    <message>
        <source>Not available</source>
        <translation>Nicht vorhanden</translation>
    </message>
    <message>
        <source>What to give instead</source>
        <translation>Was stattdessen zu geben ist</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <source>Amounts as they go into the bowl (O)</source>
        <translation>Mengen, wie sie in die Schale kommen (O)</translation>
    </message>
    <message>
        <source>By what this group ate of each food in eight weeks (O)</source>
        <translation>Danach, was diese Gruppe in acht Wochen von jedem Futtermittel fraß (O)</translation>
    </message>
    <message>
        <source>How far the search is</source>
        <translation>Wie weit die Suche ist</translation>
    </message>
    <message>
        <source>Looking at what is on hand…</source>
        <translation>Sieht nach, was vorrätig ist…</translation>
    </message>
    <message>
        <source>Nothing on hand will do. Ask the nutritionist.</source>
        <translation>Nichts Vorrätiges geht. Die Ernährungsfachkraft fragen.</translation>
    </message>
    <message>
        <source>The nearest first, by what is eaten of each food; one that nobody knows counts as eaten whole. Choose by arrows or number.</source>
        <translation>Das Nächste zuerst, nach dem, was von jedem Futtermittel gefressen wird; eines, das niemand kennt, zählt als ganz gefressen. Mit Pfeilen oder Zahl wählen.</translation>
    </message>
    <message>
        <source>The nearest first. Choose by arrows or number.</source>
        <translation>Das Nächste zuerst. Mit Pfeilen oder Zahl wählen.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TargetsCard</name>
    <message>
        <source>○ draft</source>
        <translation>○ Entwurf</translation>
    </message>
    <message>
        <source>◐ from %1</source>
        <translation>◐ ab %1</translation>
    </message>
    <message>
        <source>● in force since %1</source>
        <translation>● in Kraft seit %1</translation>
    </message>
    <message>
        <source>◌ replaced</source>
        <translation>◌ ersetzt</translation>
    </message>
    <message>
        <source>◌ retired</source>
        <translation>◌ zurückgezogen</translation>
    </message>
    <message>
        <source>Decided because: %1</source>
        <translation>Entschieden, weil: %1</translation>
    </message>
    <message>
        <source>Decided by %1: %2</source>
        <translation>Entschieden von %1: %2</translation>
    </message>
    <message>
        <source>Derives from %1.</source>
        <translation>Abgeleitet von %1.</translation>
    </message>
    <message>
        <source>Model species: %1.</source>
        <translation>Modelltierart: %1.</translation>
    </message>
    <message>
        <source>Model species: %1, because: %2</source>
        <translation>Modelltierart: %1, weil: %2</translation>
    </message>
    <message>
        <source>Its numbers presume %1 kcal per g of dry matter.</source>
        <translation>Seine Zahlen setzen %1 kcal je g Trockensubstanz voraus.</translation>
    </message>
    <message>
        <source>It came with the program and is derived from, not edited.</source>
        <translation>Es kam mit dem Programm; davon wird abgeleitet, es wird nicht geändert.</translation>
    </message>
    <message>
        <source>This profile derives from itself: %1.</source>
        <translation>Dieses Profil ist von sich selbst abgeleitet: %1.</translation>
    </message>
    <message>
        <source>%1 derives from %2, which is not in the collection.</source>
        <translation>%1 ist von %2 abgeleitet, das nicht im Bestand ist.</translation>
    </message>
    <message>
        <source>Put in force…</source>
        <translation>In Kraft setzen…</translation>
    </message>
    <message>
        <source>Throw the draft away</source>
        <translation>Den Entwurf verwerfen</translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Zielwerte</translation>
    </message>
    <message>
        <source>Profile that the group is fed by</source>
        <translation>Profil, nach dem die Gruppe gefüttert wird</translation>
    </message>
    <message>
        <source>Version of the profile</source>
        <translation>Version des Profils</translation>
    </message>
    <message>
        <source>From today on this version holds in place of the one before it</source>
        <translation>Ab heute gilt diese Version anstelle der vorigen</translation>
    </message>
    <message>
        <source>no profile chosen</source>
        <translation>kein Profil gewählt</translation>
    </message>
    <message>
        <source>version %1 · %2</source>
        <translation>Version %1 · %2</translation>
    </message>
    <message>
        <source>No target profile is chosen for this group. Choose one above, or start from a model species: what is published for it stands in until there is something better, and limits are set on top of it.</source>
        <translation>Für diese Gruppe ist kein Zielwertprofil gewählt. Oben eines wählen, oder von einer Modelltierart beginnen: was für sie veröffentlicht ist, steht dafür, bis es Besseres gibt, und Grenzen kommen darauf.</translation>
    </message>
    <message>
        <source>Version %1 holds from today on. Why?</source>
        <translation>Version %1 gilt ab heute. Warum?</translation>
    </message>
    <message>
        <source>Put in force</source>
        <translation>In Kraft setzen</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TargetsLadder</name>
    <message>
        <source>Targets of the profile</source>
        <translation>Zielwerte des Profils</translation>
    </message>
    <message>
        <source>Take out…</source>
        <translation>Herausnehmen…</translation>
    </message>
    <message>
        <source>About the chosen target</source>
        <translation>Über den gewählten Zielwert</translation>
    </message>
    <message>
        <source>add a target</source>
        <translation>einen Zielwert hinzufügen</translation>
    </message>
    <message>
        <source>leave %1 out</source>
        <translation>%1 auslassen</translation>
    </message>
    <message>
        <source>Only wish it</source>
        <translation>Nur wünschen</translation>
    </message>
    <message>
        <source>It must hold</source>
        <translation>Muss gelten</translation>
    </message>
    <message>
        <source>Take over again</source>
        <translation>Wieder übernehmen</translation>
    </message>
    <message>
        <source>wish %1</source>
        <translation>%1 wünschen</translation>
    </message>
    <message>
        <source>make %1 hold</source>
        <translation>%1 verlangen</translation>
    </message>
    <message>
        <source>take a rule over again</source>
        <translation>eine Regel wieder übernehmen</translation>
    </message>
    <message>
        <source>Take “%1” out of this profile?</source>
        <translation>„%1“ aus diesem Profil nehmen?</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>take %1 out</source>
        <translation>%1 herausnehmen</translation>
    </message>
    <message>
        <source>The maximum of “%1” protects from harm. Why may it be lifted? Ask the vet first.</source>
        <translation>Das Maximum von „%1“ schützt vor Schaden. Warum darf es aufgehoben werden? Zuerst den Tierarzt fragen.</translation>
    </message>
    <message>
        <source>Lift the limit</source>
        <translation>Die Grenze aufheben</translation>
    </message>
    <message>
        <source>lift the limit of %1</source>
        <translation>die Grenze von %1 aufheben</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TargetsModel</name>
    <message>
        <source>◇ limit lifted</source>
        <translation>◇ Grenze aufgehoben</translation>
    </message>
    <message>
        <source>■ safe limit</source>
        <translation>■ sichere Grenze</translation>
    </message>
    <message>
        <source>■ must hold</source>
        <translation>■ muss gelten</translation>
    </message>
    <message>
        <source>○ wished</source>
        <translation>○ gewünscht</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 bis %2 %3</translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation>mindestens %1 %2</translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation>höchstens %1 %2</translation>
    </message>
    <message>
        <source>target</source>
        <translation>Zielwert</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>preferred</source>
        <translation>bevorzugt</translation>
    </message>
    <message>
        <source>max</source>
        <translation>max</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>must</source>
        <translation>muss</translation>
    </message>
    <message>
        <source>known how</source>
        <translation>wie bekannt</translation>
    </message>
    <message>
        <source>stated in</source>
        <translation>angegeben in</translation>
    </message>
    <message>
        <source>%1, not %2</source>
        <translation>%1, nicht %2</translation>
    </message>
    <message>
        <source>preferred %1</source>
        <translation>bevorzugt %1</translation>
    </message>
    <message>
        <source>model species: %1</source>
        <translation>Modelltierart: %1</translation>
    </message>
    <message>
        <source>lifted by %1 on %2: %3</source>
        <translation>aufgehoben von %1 am %2: %3</translation>
    </message>
    <message>
        <source>stated in %1</source>
        <translation>angegeben in %1</translation>
    </message>
    <message>
        <source> in place of %1</source>
        <translation> anstelle von %1</translation>
    </message>
    <message>
        <source>“%1” is no number.</source>
        <translation>„%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>%1 is a safe upper limit: it is made soft or dropped with a reason, not left blank.</source>
        <translation>%1 ist eine sichere Obergrenze: sie wird mit einem Grund aufgeweicht oder fallengelassen, nicht leer gelassen.</translation>
    </message>
    <message>
        <source>%1: the minimum may not lie above the maximum, and the preferred value lies between them.</source>
        <translation>%1: das Minimum darf nicht über dem Maximum liegen, und der bevorzugte Wert liegt dazwischen.</translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>%1 ändern</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TodayRoom</name>
    <message>
        <source>Write down what was seen…</source>
        <translation>Gesehenes aufschreiben…</translation>
    </message>
    <message>
        <source>What is due today</source>
        <translation>Was heute zu tun ist</translation>
    </message>
    <message>
        <source>What is due: bowls to prepare and weigh, leftovers to weigh, control pans that still stand, swaps and diets that wait for a decision. It is read from the diets in force on this day and from what the kitchen wrote down; a row leads to where it is done.</source>
        <translation>Was zu tun ist: Schalen zubereiten und wiegen, Futterreste wiegen, Kontrollschalen, die noch stehen, Tausche und Rationen, die auf eine Entscheidung warten. Gelesen wird es aus den Rationen, die an diesem Tag gelten, und aus dem, was die Küche aufschrieb; eine Zeile führt dorthin, wo es getan wird.</translation>
    </message>
    <message>
        <source>Faeces, appetite, a limp, a treatment … of an animal or a group</source>
        <translation>Kot, Appetit, Lahmheit, eine Behandlung … eines Tieres oder einer Gruppe</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Liest…</translation>
    </message>
    <message>
        <source>No collection is open.</source>
        <translation>Kein Bestand ist geöffnet.</translation>
    </message>
    <message>
        <source>Refuse this swap: why?</source>
        <translation>Diesen Tausch ablehnen: warum?</translation>
    </message>
    <message>
        <source>Refuse</source>
        <translation>Ablehnen</translation>
    </message>
    <message>
        <source>Approve it</source>
        <translation>Gutheißen</translation>
    </message>
    <message>
        <source>g as fed, of the whole bowl</source>
        <translation>g Frischsubstanz der ganzen Schale</translation>
    </message>
    <message>
        <source>section</source>
        <translation>Revier</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ToleranceBar</name>
    <message>
        <source>Tolerance: %1</source>
        <translation>Toleranz: %1</translation>
    </message>
    <message>
        <source>Tolerance: no weight yet</source>
        <translation>Toleranz: noch kein Gewicht</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ToleranceForm</name>
    <message>
        <source> steps of the scale</source>
        <translation> Waagenschritte</translation>
    </message>
    <message>
        <source> % of the bowl</source>
        <translation> % der Schale</translation>
    </message>
    <message>
        <source> % of body mass</source>
        <translation> % der Körpermasse</translation>
    </message>
    <message>
        <source>How far a weight may lie from the plan: the rule of this house</source>
        <translation>Wie weit ein Gewicht vom Plan liegen darf: die Regel dieses Hauses</translation>
    </message>
    <message>
        <source>Always allowed</source>
        <translation>Immer erlaubt</translation>
    </message>
    <message>
        <source>and up to the least of</source>
        <translation>und bis zum Kleinsten aus</translation>
    </message>
    <message>
        <source>and</source>
        <translation>und</translation>
    </message>
    <message>
        <source>and, where it is known,</source>
        <translation>und, wo sie bekannt ist,</translation>
    </message>
    <message>
        <source>Keep the rule</source>
        <translation>Regel behalten</translation>
    </message>
    <message>
        <source>As it is by default</source>
        <translation>Wie voreingestellt</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>%1 in this bowl: ± %2 g</source>
        <translation>%1 in dieser Schale: ± %2 g</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TraceChart</name>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
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
            <numerusform>und %n weiteres</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::ValueChart</name>
    <message>
        <source>offered</source>
        <translation>angeboten</translation>
    </message>
    <message>
        <source>eaten ± its uncertainty</source>
        <translation>gefressen ± seine Unsicherheit</translation>
    </message>
    <message>
        <source>eaten %1 ± %2 %3</source>
        <translation>gefressen %1 ± %2 %3</translation>
    </message>
    <message>
        <source>offered %1 %2</source>
        <translation>angeboten %1 %2</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::VersionBar</name>
    <message>
        <source>Send back…</source>
        <translation>Zurückgeben…</translation>
    </message>
    <message>
        <source>New version</source>
        <translation>Neue Version</translation>
    </message>
    <message>
        <source>What became of this version</source>
        <translation>Was aus dieser Version wurde</translation>
    </message>
    <message>
        <source>Begins a draft from what is on the desk (Ctrl+N)</source>
        <translation>Beginnt einen Entwurf aus dem, was auf dem Tisch liegt (Strg+N)</translation>
    </message>
    <message>
        <source>More ▾</source>
        <translation>Mehr ▾</translation>
    </message>
    <message>
        <source>More about this version</source>
        <translation>Mehr zu dieser Version</translation>
    </message>
    <message>
        <source> · counted as eaten, as learned of %1 of its foods</source>
        <translation> · gezählt wie gefressen, wie von %1 ihrer Futtermittel gelernt</translation>
    </message>
    <message>
        <source>Submit…</source>
        <translation>Einreichen…</translation>
    </message>
    <message>
        <source>Approve…</source>
        <translation>Freigeben…</translation>
    </message>
    <message>
        <source>Retire…</source>
        <translation>Zurückziehen…</translation>
    </message>
    <message>
        <source>version %1, %2</source>
        <translation>Version %1, %2</translation>
    </message>
    <message>
        <source>Compare with version %1</source>
        <translation>Mit Version %1 vergleichen</translation>
    </message>
    <message>
        <source>Count what is eaten of it</source>
        <translation>Zählen, was davon gefressen wird</translation>
    </message>
    <message>
        <source>Targets are judged and solved by what the group ate of each food in eight weeks</source>
        <translation>Zielwerte werden danach beurteilt und gelöst, was die Gruppe in acht Wochen von jedem Futtermittel fraß</translation>
    </message>
    <message>
        <source>Diet sheet…</source>
        <translation>Rationsblatt…</translation>
    </message>
    <message>
        <source>Remove this draft</source>
        <translation>Diesen Entwurf entfernen</translation>
    </message>
    <message>
        <source>Submit this version for approval. While it waits nothing of it is edited.</source>
        <translation>Diese Version zur Freigabe einreichen. Solange sie wartet, wird nichts daran geändert.</translation>
    </message>
    <message>
        <source>Submit</source>
        <translation>Einreichen</translation>
    </message>
    <message>
        <source>Retire this version: it is no longer fed, and is kept for the record.</source>
        <translation>Diese Version zurückziehen: sie wird nicht mehr gefüttert und bleibt für die Akten.</translation>
    </message>
    <message>
        <source>Retire</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>Send this version back to be worked on.</source>
        <translation>Diese Version zur Überarbeitung zurückgeben.</translation>
    </message>
    <message>
        <source>Send back</source>
        <translation>Zurückgeben</translation>
    </message>
    <message>
        <source>On the desk: %1</source>
        <translation>Auf dem Tisch: %1</translation>
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
        <translation>Energie, kcal ME am Tag</translation>
    </message>
    <message>
        <source>Cost a day</source>
        <translation>Kosten am Tag</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>Version %1</translation>
    </message>
    <message>
        <source>change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>per animal a day</source>
        <translation>je Tier und Tag</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::VersionDocument</name>
    <message>
        <source>This version is no longer in the collection.</source>
        <translation>Diese Version ist nicht mehr im Bestand.</translation>
    </message>
    <message>
        <source>Another window changed this diet: it is shown as it is now.</source>
        <translation>Ein anderes Fenster hat diese Ration geändert: sie ist gezeigt, wie sie jetzt ist.</translation>
    </message>
    <message>
        <source>Foods or targets of this diet changed meanwhile: the balance is worked out anew, and no gram was moved.</source>
        <translation>Futtermittel oder Zielwerte dieser Ration haben sich inzwischen geändert: die Bilanz ist neu berechnet, und kein Gramm wurde bewegt.</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::WaitingBar</name>
    <message>
        <source>What waits…</source>
        <translation>Was wartet…</translation>
    </message>
    <message>
        <source>What waits for the server</source>
        <translation>Was auf den Server wartet</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Yours</source>
        <translation>Eigener</translation>
    </message>
    <message>
        <source>On the server</source>
        <translation>Auf dem Server</translation>
    </message>
    <message>
        <source>Written by</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Yours counts</source>
        <translation>Eigener zählt</translation>
    </message>
    <message>
        <source>Theirs counts</source>
        <translation>Anderer zählt</translation>
    </message>
    <message>
        <source>The server, and what waits for it</source>
        <translation>Der Server, und was auf ihn wartet</translation>
    </message>
    <message>
        <source>The entry that is chosen</source>
        <translation>Der gewählte Eintrag</translation>
    </message>
    <message>
        <source>The entries that the server does not have yet</source>
        <translation>Die Einträge, die der Server noch nicht hat</translation>
    </message>
    <message>
        <source>What this desk wrote down goes before what the server has; both stay</source>
        <translation>Was dieser Platz aufgeschrieben hat, geht vor; beides bleibt stehen</translation>
    </message>
    <message>
        <source>What the server has goes on counting; what this desk wrote down is kept</source>
        <translation>Was der Server hat, zählt weiter; was dieser Platz aufgeschrieben hat, bleibt aufgehoben</translation>
    </message>
    <message>
        <source>weighed while this desk was cut off from the server</source>
        <translation>gewogen, während dieser Platz vom Server getrennt war</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::WeighPane</name>
    <message>
        <source>Somebody weighed this in before: both weights are kept, and the first one counts until it is corrected.</source>
        <translation>Jemand hat das schon eingewogen: beide Gewichte bleiben, und das erste zählt, bis es berichtigt wird.</translation>
    </message>
    <message>
        <source>On the scale</source>
        <translation>Auf der Waage</translation>
    </message>
    <message>
        <source>Weight in g</source>
        <translation>Gewicht in g</translation>
    </message>
    <message>
        <source>Not available  *</source>
        <translation>Nicht vorhanden  *</translation>
    </message>
    <message>
        <source>Not available: what to give instead</source>
        <translation>Nicht vorhanden: was stattdessen zu geben ist</translation>
    </message>
    <message>
        <source>What to give instead (key *)</source>
        <translation>Was stattdessen zu geben ist (Taste *)</translation>
    </message>
    <message>
        <source>The lot that the house feeds this food from (key L)</source>
        <translation>Die Charge, aus der das Haus dieses Futtermittel gibt (Taste L)</translation>
    </message>
    <message>
        <source>A new lot, as the box names it</source>
        <translation>Eine neue Charge, wie der Karton sie nennt</translation>
    </message>
    <message>
        <source>A new lot from this day on: what does the box say? Enter keeps it</source>
        <translation>Eine neue Charge ab diesem Tag: was steht auf dem Karton? Enter behält es</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>Reading the sheet…</source>
        <translation>Liest den Futterzettel…</translation>
    </message>
    <message>
        <source>Nothing to weigh on this sheet.</source>
        <translation>Auf diesem Zettel ist nichts zu wiegen.</translation>
    </message>
    <message>
        <source>L  lot %1</source>
        <translation>L  Charge %1</translation>
    </message>
    <message>
        <source>L  lot ?</source>
        <translation>L  Charge ?</translation>
    </message>
    <message>
        <source>Nobody named the lot</source>
        <translation>Niemand hat die Charge genannt</translation>
    </message>
    <message>
        <source>%1 ± %2 g%3</source>
        <translation>%1 ± %2 g%3</translation>
    </message>
    <message>
        <source>“%1” is no weight: type grams, such as 20.5.</source>
        <translation>„%1“ ist kein Gewicht: Gramm tippen, etwa 20,5.</translation>
    </message>
    <message>
        <source>%1 g instead of %2 g: why? Both are kept.</source>
        <translation>%1 g statt %2 g: warum? Beides bleibt.</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>%1, %2, of %3</source>
        <translation>%1, %2, aus %3</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::WhyCard</name>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Gründe</translation>
    </message>
    <message>
        <source>What would settle it (each can be tried, and undo takes it back):</source>
        <translation>Was es beheben würde (jedes lässt sich versuchen, und Rückgängig nimmt es zurück):</translation>
    </message>
    <message>
        <source>Try: %1, %2</source>
        <translation>Versuchen: %1, %2</translation>
    </message>
    <message>
        <source>Tries it on the diet (Ctrl+T); Ctrl+Z takes it back</source>
        <translation>Versucht es an der Ration (Strg+T); Strg+Z nimmt es zurück</translation>
    </message>
    <message>
        <source>Tries it on the diet; Ctrl+Z takes it back</source>
        <translation>Versucht es an der Ration; Strg+Z nimmt es zurück</translation>
    </message>
    <message>
        <source>Notes: %1</source>
        <translation>Notizen: %1</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::YesterdayPage</name>
    <message>
        <source>No bowl was put on this sheet.</source>
        <translation>Keine Schale kam auf diesen Zettel.</translation>
    </message>
    <message>
        <source>Filled in: all %1</source>
        <translation>Ausgefüllt: alle %1</translation>
    </message>
    <message>
        <source>Still to be filled in: %1 of %2</source>
        <translation>Noch auszufüllen: %1 von %2</translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::SetUpDialog</name>
    <message>
        <source>Set up a collection on the server</source>
        <translation>Einen Bestand auf dem Server einrichten</translation>
    </message>
    <message>
        <source>The database at %1 holds no collection yet. One can be set up in it: empty, with the tables it needs and with roles, by which the database itself holds people to what they may do.</source>
        <translation>Die Datenbank unter %1 enthält noch keinen Bestand. Einer kann darin eingerichtet werden: leer, mit den Tabellen, die er braucht, und mit Rollen, durch die die Datenbank selbst darauf achtet, was jede Person darf.</translation>
    </message>
    <message>
        <source>reader</source>
        <translation>reader (Leser)</translation>
    </message>
    <message>
        <source>reads everything, writes nothing</source>
        <translation>liest alles, schreibt nichts</translation>
    </message>
    <message>
        <source>keeper</source>
        <translation>keeper (Pflege)</translation>
    </message>
    <message>
        <source>weighs in and out, swaps foods, weighs animals, notes what is seen</source>
        <translation>wiegt ein und zurück, tauscht Futter, wiegt Tiere, notiert, was zu sehen ist</translation>
    </message>
    <message>
        <source>vet</source>
        <translation>vet (Tiermedizin)</translation>
    </message>
    <message>
        <source>animals and their masses, observations, blood and faeces</source>
        <translation>Tiere und ihre Massen, Beobachtungen, Blut und Kot</translation>
    </message>
    <message>
        <source>nutritionist</source>
        <translation>nutritionist (Ernährung)</translation>
    </message>
    <message>
        <source>foods, targets, diets and their approval, and all that the kitchen does</source>
        <translation>Futter, Zielwerte, Rationen und ihre Freigabe und alles, was die Küche tut</translation>
    </message>
    <message>
        <source>curator</source>
        <translation>curator (Kuratierung)</translation>
    </message>
    <message>
        <source>animals and groups, decisions on diets and swaps</source>
        <translation>Tiere und Gruppen, Entscheidungen über Rationen und Tausche</translation>
    </message>
    <message>
        <source>You, who set it up, own it and may do everything. Nobody else may open it until you let them in. What stands in the database beside it is left alone.</source>
        <translation>Ihnen, die oder der ihn einrichtet, gehört er, und Sie dürfen alles. Sonst darf ihn niemand öffnen, bis Sie die Person einlassen. Was sonst in der Datenbank steht, bleibt unberührt.</translation>
    </message>
    <message>
        <source>Set up the collection here</source>
        <translation>Den Bestand hier einrichten</translation>
    </message>
    <message>
        <source>Makes tables and roles in the database, in one step: all of it or nothing</source>
        <translation>Legt Tabellen und Rollen in der Datenbank an, in einem Schritt: alles oder nichts</translation>
    </message>
</context>
</TS>
