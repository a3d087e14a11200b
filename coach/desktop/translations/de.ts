<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en_GB">
<context>
    <name>CautionsPage</name>
    <message>
        <location filename="../patient/cautions_page.py" line="56" />
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="58" />
        <source>Read aloud</source>
        <translation>Vorlesen</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="61" />
        <source>I have read all of this</source>
        <translation>Ich habe alles gelesen</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="61" />
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="85" />
        <source>Cautions</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="93" />
        <source>Read all of it. Then press Space, or raise your good hand.</source>
        <translation>Alles lesen. Dann Leertaste drücken oder gute Hand heben.</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="134" />
        <source>First read all that stands on the screen. Press A to have it read to you. Then press the space bar, or raise your good hand.</source>
        <translation>Lesen Sie zuerst alles, was auf dem Bildschirm steht. Drücken Sie A, dann wird es vorgelesen. Drücken Sie danach die Leertaste, oder heben Sie die gute Hand.</translation>
    </message>
</context><context>
    <name>ExercisePage</name>
    <message>
        <location filename="../patient/exercise_page.py" line="119" />
        <location filename="../patient/exercise_page.py" line="66" />
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="66" />
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="67" />
        <source>Skip</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="68" />
        <source>Stop</source>
        <translation>Aufhören</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="119" />
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="179" />
        <location filename="../patient/exercise_page.py" line="120" />
        <source>Paused</source>
        <translation>Pause</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="143" />
        <source>Mind your body</source>
        <translation>Achten Sie auf den Körper</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="150" />
        <source>By time, not measured</source>
        <translation>Nach Zeit, nicht gemessen</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="163" />
        <source>Looking for you</source>
        <translation>Ich suche Sie</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="167" />
        <source>Not measured now</source>
        <translation>Gerade nicht gemessen</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="179" />
        <source>Let your arm rest</source>
        <translation>Lassen Sie den Arm ruhen</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="180" />
        <source>To go on</source>
        <translation>Zum Weitermachen</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="180" />
        <source>Raise your good hand, or press Space</source>
        <translation>Gute Hand heben oder Leertaste drücken</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="197" />
        <source>The clock is waiting: seconds left</source>
        <translation>Die Uhr wartet: Sekunden übrig</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="199" />
        <source>Rest: seconds left</source>
        <translation>Ruhen: Sekunden übrig</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="201" />
        <source>Hold: seconds left</source>
        <translation>Halten: Sekunden übrig</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="207" />
        <source>Get into place: seconds</source>
        <translation>Platz einnehmen: Sekunden</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="211" />
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="216" />
        <source>After that</source>
        <translation>Danach</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="218" />
        <source>Slowly, until you feel a stretch</source>
        <translation>Langsam, bis es zieht</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="220" />
        <source>Stay there</source>
        <translation>Dort bleiben</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="222" />
        <source>Hold</source>
        <translation>Halten</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="224" />
        <source>Slowly back</source>
        <translation>Langsam zurück</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="226" />
        <source>Held long enough</source>
        <translation>Lange genug gehalten</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="235" />
        <source>Now: hold {number} of {asked}, for {hold_s} seconds</source>
        <translation>Jetzt: Nummer {number} von {asked}, {hold_s} Sekunden halten</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="242" />
        <source>Then: hold {number} of {asked}</source>
        <translation>Dann: Nummer {number} von {asked}</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="244" />
        <source>Then: rest for {rest_s} seconds</source>
        <translation>Dann: {rest_s} Sekunden ruhen</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="246" />
        <source>Then: {name}</source>
        <translation>Dann: {name}</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="247" />
        <source>Then: you are done for today</source>
        <translation>Dann: fertig für heute</translation>
    </message>
</context><context>
    <name>FaultBanner</name>
    <message>
        <location filename="../patient/fault_banner.py" line="30" />
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <location filename="../patient/fault_banner.py" line="48" />
        <source>And {count} more of the kind.</source>
        <translation>Und {count} weitere dieser Art.</translation>
    </message>
</context><context>
    <name>HandGauge</name>
    <message>
        <location filename="../patient/hand_gauge.py" line="59" />
        <source>Hand up: begin</source>
        <translation>Hand hoch: beginnen</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="61" />
        <source>Hand up: choose</source>
        <translation>Hand hoch: wählen</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="67" />
        <location filename="../patient/hand_gauge.py" line="65" />
        <location filename="../patient/hand_gauge.py" line="63" />
        <source>Keep it up to stop</source>
        <translation>Oben lassen: aufhören</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="63" />
        <source>Hand up: pause</source>
        <translation>Hand hoch: Pause</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="65" />
        <source>Hand up: go on</source>
        <translation>Hand hoch: weiter</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="67" />
        <source>Hand up: easier one</source>
        <translation>Hand hoch: leichtere Übung</translation>
    </message>
</context><context>
    <name>HoldCount</name>
    <message>
        <location filename="../patient/readouts.py" line="165" />
        <source>Holds done: {done} of {asked}</source>
        <translation>Geschafft: {done} von {asked}</translation>
    </message>
    <message>
        <location filename="../patient/readouts.py" line="182" />
        <source>of {asked} holds</source>
        <translation>von {asked} Mal</translation>
    </message>
</context><context>
    <name>KeyButton</name>
    <message>
        <location filename="../patient/controls.py" line="51" />
        <source>Key: {key}</source>
        <translation>Taste: {key}</translation>
    </message>
</context><context>
    <name>LaptopPlace</name>
    <message>
        <location filename="../patient/laptop_place.py" line="25" />
        <source>2 m, up high</source>
        <translation>2 m, hoch oben</translation>
    </message>
    <message>
        <location filename="../patient/laptop_place.py" line="27" />
        <source>2 m, chair height</source>
        <translation>2 m, Stuhlhöhe</translation>
    </message>
    <message>
        <location filename="../patient/laptop_place.py" line="50" />
        <source>Where the laptop goes</source>
        <translation>Wo der Laptop hinkommt</translation>
    </message>
</context><context>
    <name>LeavesPage</name>
    <message>
        <location filename="../patient/leaves.py" line="40" />
        <source>Go back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <location filename="../patient/leaves.py" line="40" />
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <location filename="../patient/leaves.py" line="42" />
        <source>Page before</source>
        <translation>Seite davor</translation>
    </message>
    <message>
        <location filename="../patient/leaves.py" line="44" />
        <source>Next page</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <location filename="../patient/leaves.py" line="62" />
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <location filename="../patient/leaves.py" line="115" />
        <source>{at} of {count}</source>
        <translation>{at} von {count}</translation>
    </message>
</context><context>
    <name>OfferPage</name>
    <message>
        <location filename="../patient/offer_page.py" line="30" />
        <source>Try the easier one</source>
        <translation>Die leichtere versuchen</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="30" />
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="32" />
        <source>Go on without it</source>
        <translation>Ohne sie weiter</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="33" />
        <source>Stop for today</source>
        <translation>Schluss für heute</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="41" />
        <source>That hurt more than your plan allows. This one stops here.</source>
        <translation>Das tat mehr weh, als Ihr Plan erlaubt. Diese Übung endet hier.</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="49" />
        <source>There is an easier one:</source>
        <translation>Es gibt eine leichtere:</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="56" />
        <source>What is offered</source>
        <translation>Was angeboten wird</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="68" />
        <source>Raise your good hand, or press Space, to try it.</source>
        <translation>Gute Hand heben oder Leertaste drücken, um sie zu versuchen.</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="78" />
        <source>Ask your therapist before you do it again: {name}</source>
        <translation>Fragen Sie in der Praxis, bevor Sie sie wieder machen: {name}</translation>
    </message>
</context><context>
    <name>PainPage</name>
    <message>
        <location filename="../patient/pain_page.py" line="45" />
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="45" />
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="46" />
        <source>Stop for today</source>
        <translation>Schluss für heute</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="57" />
        <source>no pain</source>
        <translation>kein Schmerz</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="59" />
        <source>worst pain you can think of</source>
        <translation>schlimmster Schmerz, den Sie sich denken können</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="61" />
        <source>Keys: 0 to 9, {key} for 10, or the arrows</source>
        <translation>Tasten: 0 bis 9, {key} für 10, oder die Pfeile</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="90" />
        <source>Before: {name}</source>
        <translation>Vor: {name}</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="91" />
        <source>How much does your shoulder hurt now?</source>
        <translation>Wie sehr tut Ihre Schulter jetzt weh?</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="93" />
        <source>After: {name}</source>
        <translation>Nach: {name}</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="94" />
        <source>And how much does it hurt now?</source>
        <translation>Und wie sehr tut sie jetzt weh?</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="116" />
        <source>Press Space to go on with {score}</source>
        <translation>Leertaste: weiter mit {score}</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="118" />
        <source>You chose {score}. Wrong? Raise your good hand again</source>
        <translation>{score} gewählt. Falsch? Gute Hand noch einmal heben</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="122" />
        <source>Raise your good hand at your number</source>
        <translation>Gute Hand heben bei Ihrer Zahl</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="124" />
        <source>Choose your number</source>
        <translation>Wählen Sie Ihre Zahl</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="165" />
        <source>More than the {limit} your plan allows, so this exercise is left out today. Ask your therapist.</source>
        <translation>Mehr als die {limit}, die Ihr Plan erlaubt, darum fällt diese Übung heute aus. Fragen Sie in der Praxis.</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="170" />
        <source>More than the {limit} your plan allows. Ask your therapist before you do this exercise again.</source>
        <translation>Mehr als die {limit}, die Ihr Plan erlaubt. Fragen Sie in der Praxis, bevor Sie diese Übung wieder machen.</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="175" />
        <source>That is a lot. Stop here and ask your therapist before you go on.</source>
        <translation>Das ist viel. Hören Sie hier auf und fragen Sie in der Praxis, bevor Sie weitermachen.</translation>
    </message>
</context><context>
    <name>PatientWindow</name>
    <message>
        <location filename="../patient/window.py" line="72" />
        <source>Shoulder coach</source>
        <translation>Schulter-Begleiter</translation>
    </message>
</context><context>
    <name>Picture</name>
    <message>
        <location filename="../patient/picture.py" line="47" />
        <source>Live picture, mirrored</source>
        <translation>Livebild, gespiegelt</translation>
    </message>
</context><context>
    <name>PreparePage</name>
    <message>
        <location filename="../patient/prepare_page.py" line="39" />
        <source>New for you</source>
        <translation>Neu für Sie</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="48" />
        <source>Begin now</source>
        <translation>Jetzt beginnen</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="48" />
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="50" />
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="51" />
        <source>Skip</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="52" />
        <source>Stop</source>
        <translation>Aufhören</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="99" />
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="139" />
        <source>Listen: it begins by itself</source>
        <translation>Zuhören: Es beginnt von selbst</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="139" />
        <source>In place</source>
        <translation>Richtig</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="143" />
        <source>Change this first</source>
        <translation>Ändern Sie zuerst</translation>
    </message>
</context><context>
    <name>ScoreButton</name>
    <message>
        <location filename="../patient/score_button.py" line="63" />
        <source>Pain {score} of 10</source>
        <translation>Schmerz {score} von 10</translation>
    </message>
    <message>
        <location filename="../patient/score_button.py" line="65" />
        <source>Key: {key}</source>
        <translation>Taste: {key}</translation>
    </message>
</context><context>
    <name>SummaryPage</name>
    <message>
        <location filename="../patient/summary_page.py" line="34" />
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="34" />
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="36" />
        <source>Save in another folder</source>
        <translation>In anderem Ordner speichern</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="45" />
        <source>What was done</source>
        <translation>Was geschafft wurde</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="68" />
        <source>Done for today</source>
        <translation>Fertig für heute</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="70" />
        <source>Stopped because of the pain. What you did is kept.</source>
        <translation>Wegen des Schmerzes beendet. Was Sie gemacht haben, ist gespeichert.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="72" />
        <source>Stopped because of the pain</source>
        <translation>Wegen des Schmerzes beendet</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="74" />
        <source>Stopped. What you did is kept.</source>
        <translation>Beendet. Was Sie gemacht haben, ist gespeichert.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="76" />
        <source>Stopped</source>
        <translation>Beendet</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="84" />
        <source>Saved for your therapist: {path}</source>
        <translation>Gespeichert für die Praxis: {path}</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="87" />
        <source>Nothing was saved.</source>
        <translation>Nichts wurde gespeichert.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="98" />
        <source>No exercise was begun.</source>
        <translation>Keine Übung wurde begonnen.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="114" />
        <source>Choose a folder for the session file</source>
        <translation>Ordner für die Sitzungsdatei wählen</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="121" />
        <source>Rest your arm, and ring your practice before you exercise again: {contact}</source>
        <translation>Lassen Sie den Arm ruhen, und rufen Sie in der Praxis an, bevor Sie wieder üben: {contact}</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="124" />
        <source>Rest your arm, and ring your practice before you exercise again.</source>
        <translation>Lassen Sie den Arm ruhen, und rufen Sie in der Praxis an, bevor Sie wieder üben.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="134" />
        <source>Your pain went up. If it stays up for more than half an hour, or keeps you awake, tell your therapist before the next session.</source>
        <translation>Ihr Schmerz ist gestiegen. Bleibt er über eine halbe Stunde oder hält er Sie wach, sagen Sie es in der Praxis vor dem nächsten Üben.</translation>
    </message>
</context><context>
    <name>UnderstandingPage</name>
    <message>
        <location filename="../patient/understanding_page.py" line="46" />
        <source>Read aloud</source>
        <translation>Vorlesen</translation>
    </message>
    <message>
        <location filename="../patient/understanding_page.py" line="68" />
        <source>Common practice.</source>
        <translation>Allgemein üblich.</translation>
    </message>
    <message>
        <location filename="../patient/understanding_page.py" line="70" />
        <source>From: {sources}</source>
        <translation>Aus: {sources}</translation>
    </message>
</context><context>
    <name>WeeksPage</name>
    <message>
        <location filename="../patient/weeks_page.py" line="36" />
        <source>Nothing has been done yet.</source>
        <translation>Es wurde noch nichts gemacht.</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="66" />
        <source>The last time</source>
        <translation>Das letzte Mal</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="66" />
        <source>My weeks</source>
        <translation>Meine Wochen</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="76" />
        <source>Each session, and pain below</source>
        <translation>Jedes Üben, darunter der Schmerz</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="121" />
        <source>Your plan held until {day}. Ask your therapist for a new one.</source>
        <translation>Ihr Plan galt bis {day}. Fragen Sie in der Praxis nach einem neuen.</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="124" />
        <source>Today is a rest day.</source>
        <translation>Heute ist ein Ruhetag.</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="126" />
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="145" />
        <location filename="../patient/weeks_page.py" line="127" />
        <source>and {count} more</source>
        <translation>und {count} weitere</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="132" />
        <source>✓ {name}: done</source>
        <translation>✓ {name}: geschafft</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="134" />
        <source>• {name}</source>
        <translation>• {name}</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="135" />
        <source>• {name}: {done} of {asked} times</source>
        <translation>• {name}: {done} von {asked} Mal</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="148" />
        <source>{done} of {asked} holds</source>
        <translation>{done} von {asked} Mal</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="155" />
        <source>furthest {reached}</source>
        <translation>am weitesten {reached}</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="158" />
        <source>pain {before} before, {after} after</source>
        <translation>Schmerz {before} vorher, {after} nachher</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="165" />
        <source>The band shows how wrong each number may be. Going further is never worth more pain.</source>
        <translation>Das Band zeigt, wie falsch jede Zahl sein kann. Weiter zu kommen ist nie mehr Schmerz wert.</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="169" />
        <source>0 % is the foot of the neck and 100 % the pelvis.</source>
        <translation>0 % ist der Fuß des Nackens und 100 % das Becken.</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="177" />
        <source>Last measured on {day}: {value}, the middle of the holds.</source>
        <translation>Zuletzt gemessen am {day}: {value}, der mittlere Wert.</translation>
    </message>
</context><context>
    <name>WelcomePage</name>
    <message>
        <location filename="../patient/welcome_page.py" line="59" />
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="60" />
        <source>All cautions</source>
        <translation>Alle Hinweise</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="61" />
        <source>My weeks</source>
        <translation>Meine Wochen</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="62" />
        <source>Understand my shoulder</source>
        <translation>Meine Schulter verstehen</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="63" />
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="85" />
        <source>Getting the camera and the measuring ready. This takes a few seconds.</source>
        <translation>Kamera und Messung werden vorbereitet. Das dauert einige Sekunden.</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="87" />
        <source>Read this while you wait</source>
        <translation>Lesen Sie das, während Sie warten</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="88" />
        <source>Not ready yet</source>
        <translation>Noch nicht bereit</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="94" />
        <source>No picture</source>
        <translation>Kein Bild</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="96" />
        <source>Cannot start without a picture</source>
        <translation>Ohne Bild geht es nicht los</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="102" />
        <source>Start</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="109" />
        <source>Raise your good hand, or press Space, to begin</source>
        <translation>Gute Hand heben oder Leertaste drücken, um zu beginnen</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="128" />
        <source>Stretch until it pulls, not until it hurts. Easing off is always right. This program does not replace your therapist.</source>
        <translation>Dehnen Sie, bis es zieht, nicht, bis es weh tut. Nachlassen ist immer richtig. Dieses Programm ersetzt keine Therapie.</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="136" />
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="168" />
        <source>When to stop</source>
        <translation>Wann Sie aufhören</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="179" />
        <source>Today: one exercise, about {minutes} min</source>
        <translation>Heute: eine Übung, etwa {minutes} min</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="180" />
        <source>Today: {count} exercises, about {minutes} min</source>
        <translation>Heute: {count} Übungen, etwa {minutes} min</translation>
    </message>
</context><context>
    <name>calendar</name>
    <message>
        <location filename="../patient/calendar.py" line="41" />
        <source>{mark}: {count}</source>
        <translation>{mark}: {count}</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="48" />
        <source>The last 12 weeks. {days}</source>
        <translation>Die letzten 12 Wochen. {days}</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="119" />
        <source>done</source>
        <translation>geschafft</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="121" />
        <source>partly done</source>
        <translation>zum Teil</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="123" />
        <source>nothing done</source>
        <translation>nichts gemacht</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="125" />
        <source>rest day</source>
        <translation>Ruhetag</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="127" />
        <source>still to do today</source>
        <translation>heute noch offen</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="129" />
        <source>before the beginning</source>
        <translation>vor dem Beginn</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="179" />
        <source>Mon</source>
        <translation>Mo</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="180" />
        <source>Tue</source>
        <translation>Di</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="181" />
        <source>Wed</source>
        <translation>Mi</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="182" />
        <source>Thu</source>
        <translation>Do</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="183" />
        <source>Fri</source>
        <translation>Fr</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="184" />
        <source>Sat</source>
        <translation>Sa</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="185" />
        <source>Sun</source>
        <translation>So</translation>
    </message>
</context><context>
    <name>card</name>
    <message>
        <location filename="../../app/lens.py" line="35" />
        <location filename="../../app/card.py" line="20" />
        <source>Written: {out}</source>
        <translation>Geschrieben: {out}</translation>
    </message>
    <message>
        <location filename="../../app/card.py" line="21" />
        <source>Print it at 100 % and check its size with a bank card; page 2 says how it is worn.</source>
        <translation>Drucken Sie sie mit 100 % und prüfen Sie die Größe mit einer Bankkarte; Seite 2 sagt, wie sie getragen wird.</translation>
    </message>
    <message>
        <location filename="../shared/board_page.py" line="35" />
        <location filename="../shared/board_page.py" line="30" />
        <source>Lens board</source>
        <translation>Kameratafel</translation>
    </message>
    <message>
        <location filename="../shared/board_page.py" line="41" />
        <source>Print at 100 % on matt white paper and stick it flat on something stiff. It measures your camera, not you.</source>
        <translation>In Originalgröße (100 %) auf mattes weißes Papier drucken, flach auf etwas Steifes kleben. Gemessen wird die Kamera, nicht Sie.</translation>
    </message>
    <message>
        <location filename="../shared/board_page.py" line="86" />
        <source>Was it printed true? A bank card's long edge reaches from 0 to the thick mark on both lines, each 100 mm long. Where one is longer than the other, use another printer.</source>
        <translation>Maßhaltig gedruckt? Die lange Kante einer Bankkarte reicht auf beiden Linien, je 100 mm lang, von 0 bis zur dicken Marke. Ist eine Linie länger, nehmen Sie einen anderen Drucker.</translation>
    </message>
    <message>
        <location filename="../shared/card_drawings.py" line="21" />
        <source>Seen from above</source>
        <translation>Von oben gesehen</translation>
    </message>
    <message>
        <location filename="../shared/card_drawings.py" line="28" />
        <source>chest</source>
        <translation>Brust</translation>
    </message>
    <message>
        <location filename="../shared/card_drawings.py" line="37" />
        <source>strip</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <location filename="../shared/card_drawings.py" line="40" />
        <source>tabs inside</source>
        <translation>Laschen innen</translation>
    </message>
    <message>
        <location filename="../shared/card_drawings.py" line="47" />
        <source>ridge, to the front</source>
        <translation>First, nach vorn</translation>
    </message>
    <message>
        <location filename="../shared/card_drawings.py" line="56" />
        <source>Worn</source>
        <translation>Getragen</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="20" />
        <source>How to make and wear the chest card</source>
        <translation>Brustkarte basteln und tragen</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="22" />
        <source>With this card the camera sees how far your trunk is turned, which matters most for turning the arm outward.</source>
        <translation>Mit dieser Karte sieht die Kamera, wie weit Ihr Rumpf gedreht ist. Das ist am wichtigsten, wenn Sie den Arm nach außen drehen.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="34" />
        <source>Make it</source>
        <translation>Basteln</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="41" />
        <source>Wear it</source>
        <translation>Tragen</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="62" />
        <source>Take care</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="81" />
        <source>Print the first page at 100 % ('actual size', not 'fit to page') on stiff, matt, white paper. Keep this page apart.</source>
        <translation>Drucken Sie die erste Seite mit 100 % („Originalgröße“, nicht „an Seite anpassen“) auf steifes, mattes, weißes Papier. Legen Sie diese Seite beiseite.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="86" />
        <source>Check the size: a bank card fills its outline, the ruler is 100 mm long.</source>
        <translation>Prüfen Sie die Größe: Eine Bankkarte füllt ihren Umriss, das Lineal ist 100 mm lang.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="90" />
        <source>Cut out the front and the strip along the solid lines.</source>
        <translation>Schneiden Sie die Front und den Streifen an den durchgezogenen Linien aus.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="94" />
        <source>Fold along the dashed lines, print outside, and press the folds sharp.</source>
        <translation>Falten Sie an den gestrichelten Linien, den Druck nach außen, und streichen Sie die Falze scharf.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="98" />
        <source>Glue the strip's tabs behind the outer edges of the front: folds on edges, both level at the top, the tongue standing out above. The front now is a tent.</source>
        <translation>Kleben Sie die Laschen des Streifens hinter die äußeren Kanten der Front: Falz auf Kante, oben beide bündig, die Zunge steht oben über. Die Front ist jetzt ein Zelt.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="109" />
        <source>Wear it over clothes that lie close and do not slide, on the upper breastbone, its ridge upright and in the middle of the chest.</source>
        <translation>Tragen Sie sie über Kleidung, die eng anliegt und nicht rutscht, oben auf dem Brustbein, den First aufrecht und in der Mitte der Brust.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="114" />
        <source>Hold the tongue to the neckline with a clothes peg, and the strip's lower edge with tape.</source>
        <translation>Befestigen Sie die Zunge mit einer Wäscheklammer am Ausschnitt und die untere Kante des Streifens mit Klebeband.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="119" />
        <source>Keep hair, chin and hands off both squares.</source>
        <translation>Haare, Kinn und Hände dürfen kein Quadrat verdecken.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="123" />
        <source>Set the camera to 1280 by 720 or more, 1.5 to 2.8 metres away. There is nothing to switch on: the program uses the card while it sees both squares.</source>
        <translation>Stellen Sie die Kamera auf 1280 mal 720 oder mehr, 1,5 bis 2,8 Meter entfernt. Einzuschalten ist nichts: Das Programm nutzt die Karte, solange es beide Quadrate sieht.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="134" />
        <source>It is an extra, for use only where your therapist agrees. It measures how the trunk turns and diagnoses nothing.</source>
        <translation>Die Karte ist ein Zusatz und nur zu nutzen, wenn die Praxis zustimmt. Sie misst, wie der Rumpf sich dreht, und stellt keine Diagnose.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="139" />
        <source>Let somebody else put it on where reaching up hurts.</source>
        <translation>Lassen Sie sie von jemand anderem anlegen, wenn das Hochgreifen weh tut.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="143" />
        <source>No pins: if your therapist does use one, through clothes only and away from the skin. Nothing round the neck.</source>
        <translation>Keine Nadeln: Nimmt die Praxis doch eine, dann nur durch die Kleidung und weg von der Haut. Nichts um den Hals.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="148" />
        <source>Not over a wound, a dressing, sore skin or a device under the skin.</source>
        <translation>Nicht über einer Wunde, einem Verband, wunder Haut oder einem Gerät unter der Haut.</translation>
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="152" />
        <source>Take it off before you lie down or lean close to a wall, and when it presses, rubs or gets in the way of the arm.</source>
        <translation>Legen Sie sie ab, bevor Sie sich hinlegen oder nah an eine Wand lehnen, und wenn sie drückt, reibt oder dem Arm im Weg ist.</translation>
    </message>
    <message>
        <location filename="../shared/card_page.py" line="63" />
        <location filename="../shared/card_page.py" line="44" />
        <source>Chest card</source>
        <translation>Brustkarte</translation>
    </message>
    <message>
        <location filename="../shared/card_page.py" line="66" />
        <source>Print this page at 100 % on stiff, matt, white paper.</source>
        <translation>Diese Seite mit 100 % auf steifes, mattes, weißes Papier drucken.</translation>
    </message>
    <message>
        <location filename="../shared/card_page.py" line="70" />
        <source>cut</source>
        <translation>schneiden</translation>
    </message>
    <message>
        <location filename="../shared/card_page.py" line="71" />
        <source>fold back, print outside</source>
        <translation>falten, Druck nach außen</translation>
    </message>
    <message>
        <location filename="../shared/card_page.py" line="117" />
        <source>glue</source>
        <translation>kleben</translation>
    </message>
    <message>
        <location filename="../shared/card_page.py" line="130" />
        <source>Was it printed at full size?</source>
        <translation>In voller Größe gedruckt?</translation>
    </message>
    <message>
        <location filename="../shared/card_page.py" line="131" />
        <source>Lay a bank card here:</source>
        <translation>Legen Sie eine Bankkarte hin:</translation>
    </message>
    <message>
        <location filename="../shared/card_page.py" line="132" />
        <source>it must fill this outline.</source>
        <translation>Sie muss den Umriss füllen.</translation>
    </message>
    <message>
        <location filename="../shared/card_page.py" line="152" />
        <source>Front, 1 piece</source>
        <translation>Front, 1 Stück</translation>
    </message>
    <message>
        <location filename="../shared/card_page.py" line="156" />
        <source>Strip for the back, 1 piece</source>
        <translation>Streifen für hinten, 1 Stück</translation>
    </message>
    <message>
        <location filename="../shared/card_page.py" line="160" />
        <source>Glue the tabs behind the front's outer edges,</source>
        <translation>Laschen hinter die Außenkanten der Front kleben,</translation>
    </message>
    <message>
        <location filename="../shared/card_page.py" line="161" />
        <source>fold on edge, both pieces level at the top.</source>
        <translation>Falz auf Kante, beide Teile oben bündig.</translation>
    </message>
</context><context>
    <name>catalogue</name>
    <message>
        <location filename="../therapist/catalogue_list.py" line="84" />
        <source>by time</source>
        <translation>nach Zeit</translation>
    </message>
</context><context>
    <name>chart</name>
    <message>
        <location filename="../shared/chart_heading.py" line="36" />
        <location filename="../shared/chart_heading.py" line="33" />
        <source>session</source>
        <translation>Sitzung</translation>
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="37" />
        <source>weeks' medians</source>
        <translation>Wochenmediane</translation>
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="40" />
        <source>let go early</source>
        <translation>vorzeitig gelöst</translation>
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="41" />
        <source>95 % error</source>
        <translation>95-%-Fehler</translation>
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="43" />
        <source>first, last mean</source>
        <translation>Mittel zuerst, zuletzt</translation>
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="45" />
        <source>no real change</source>
        <translation>keine echte Änderung</translation>
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="47" />
        <source>week's median</source>
        <translation>Wochenmedian</translation>
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="49" />
        <source>slope</source>
        <translation>Steigung</translation>
    </message>
    <message>
        <location filename="../shared/chart_marks.py" line="40" />
        <source>other side {angle}</source>
        <translation>Gegenseite {angle}</translation>
    </message>
    <message>
        <location filename="../shared/chart_marks.py" line="46" />
        <source>next step from {angle}</source>
        <translation>nächster Schritt ab {angle}</translation>
    </message>
    <message>
        <location filename="../shared/chart_marks.py" line="52" />
        <source>not beyond {angle}</source>
        <translation>nicht über {angle}</translation>
    </message>
    <message>
        <location filename="../shared/chart_strips.py" line="45" />
        <source>Sessions by week: done / asked for</source>
        <translation>Sitzungen je Woche: gemacht / vorgesehen</translation>
    </message>
    <message>
        <location filename="../shared/chart_strips.py" line="79" />
        <source>Pain 0–10: highest of a session</source>
        <translation>Schmerz 0–10: höchster einer Sitzung</translation>
    </message>
    <message>
        <location filename="../shared/chart_strips.py" line="81" />
        <source>Pain 0–10: ○ before, ● after</source>
        <translation>Schmerz 0–10: ○ vorher, ● nachher</translation>
    </message>
</context><context>
    <name>command</name>
    <message>
        <location filename="../../__main__.py" line="40" />
        <source>coach: stopped by Ctrl-C; what was recorded is kept.</source>
        <translation>coach: durch Strg+C beendet; was aufgezeichnet wurde, ist aufgehoben.</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="27" />
        <source>usage: </source>
        <translation>Aufruf: </translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="28" />
        <source>positional arguments</source>
        <translation>Angaben</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="29" />
        <source>options</source>
        <translation>Optionen</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="30" />
        <source>show this help and exit</source>
        <translation>diese Hilfe zeigen und enden</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="31" />
        <source>%(prog)s: %(message)s</source>
        <translation>%(prog)s: %(message)s</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="33" />
        <source>unknown arguments: %s</source>
        <translation>unbekannte Angaben: %s</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="34" />
        <source>%(option)s may be any of %(matches)s; write it out</source>
        <translation>%(option)s kann jedes von %(matches)s sein; schreiben Sie es aus</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="37" />
        <source>%(value)r is not one of %(choices)s; name one of these</source>
        <translation>%(value)r ist keines von %(choices)s; nennen Sie eines davon</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="40" />
        <source>%(value)r is no number; write one</source>
        <translation>%(value)r ist keine Zahl; schreiben Sie eine</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="43" />
        <source>needs a value after it</source>
        <translation>braucht einen Wert dahinter</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="44" />
        <source>takes one value at most</source>
        <translation>nimmt höchstens einen Wert</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="45" />
        <source>needs at least one value after it</source>
        <translation>braucht mindestens einen Wert dahinter</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="46" />
        <source>still needed: %s</source>
        <translation>noch nötig: %s</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="47" />
        <source>one of these is needed: %s</source>
        <translation>eines davon ist nötig: %s</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="48" />
        <source>cannot be together with %s</source>
        <translation>geht nicht zusammen mit %s</translation>
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="49" />
        <source>takes no value, but was given %r</source>
        <translation>nimmt keinen Wert, bekam aber %r</translation>
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="20" />
        <source>'{text}' is no size of text; name {smallest} to {largest} per cent</source>
        <translation>„{text}“ ist keine Schriftgröße; nennen Sie {smallest} bis {largest} Prozent</translation>
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="36" />
        <source>'{text}' is no field of view; name {low:g} to {high:g} degrees</source>
        <translation>„{text}“ ist kein Sichtfeld; nennen Sie {low:g} bis {high:g} Grad</translation>
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="54" />
        <source>'{text}' is not one of {names}; name one of these</source>
        <translation>„{text}“ ist keines von {names}; nennen Sie eines davon</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="48" />
        <location filename="../../app/argument_types.py" line="66" />
        <source>CODE</source>
        <translation>CODE</translation>
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="68" />
        <source>en or de; by default the system's, else English</source>
        <translation>en oder de; sonst die des Systems oder Englisch</translation>
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="78" />
        <source>ground of the window; by default as last chosen, else the system's</source>
        <translation>Grund des Fensters; sonst wie zuletzt gewählt oder wie das System</translation>
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="87" />
        <source>PERCENT</source>
        <translation>PROZENT</translation>
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="88" />
        <source>100 to 200; by default as last chosen, else the system's</source>
        <translation>100 bis 200; sonst wie zuletzt gewählt oder wie das System</translation>
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="94" />
        <source>let nothing move that need not</source>
        <translation>nichts bewegen, was sich nicht bewegen muss</translation>
    </message>
    <message>
        <location filename="../../app/arguments.py" line="43" />
        <source>Home exercise coach for stiff shoulders. Measures and times exercises that a therapist prescribed; it does not diagnose and does not replace licensed care. Stop and ask your therapist if pain rises above the agreed limit.</source>
        <translation>Begleitet das Üben zu Hause bei steifer Schulter. Misst Übungen, die therapeutisch verordnet sind, und nimmt ihre Zeit; stellt keine Diagnose und ersetzt keine Behandlung. Steigt der Schmerz über das Vereinbarte, hören Sie auf und fragen Sie in der Praxis.</translation>
    </message>
    <message>
        <location filename="../../app/arguments.py" line="49" />
        <source>Without a command the patient's window opens.</source>
        <translation>Ohne Befehl öffnet sich das Fenster zum Üben.</translation>
    </message>
    <message>
        <location filename="../../app/arguments.py" line="55" />
        <source>show the program's version and exit</source>
        <translation>die Version des Programms zeigen und enden</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="228" />
        <location filename="../../app/commands.py" line="199" />
        <location filename="../../app/commands.py" line="131" />
        <location filename="../../app/commands.py" line="71" />
        <location filename="../../app/commands.py" line="52" />
        <location filename="../../app/commands.py" line="28" />
        <location filename="../../app/arguments.py" line="60" />
        <source>FILE</source>
        <translation>DATEI</translation>
    </message>
    <message>
        <location filename="../../app/arguments.py" line="61" />
        <source>plan file; without it the last one, else the example plan</source>
        <translation>Plandatei; sonst die letzte oder der Beispielplan</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="218" />
        <location filename="../../app/arguments.py" line="65" />
        <source>camera number</source>
        <translation>Nummer der Kamera</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="223" />
        <location filename="../../app/commands.py" line="108" />
        <location filename="../../app/arguments.py" line="70" />
        <source>CLIP</source>
        <translation>AUFNAHME</translation>
    </message>
    <message>
        <location filename="../../app/arguments.py" line="71" />
        <source>a video file in place of the camera</source>
        <translation>eine Videodatei anstelle der Kamera</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="92" />
        <location filename="../../app/arguments.py" line="76" />
        <source>FOLDER</source>
        <translation>ORDNER</translation>
    </message>
    <message>
        <location filename="../../app/arguments.py" line="77" />
        <source>where session files go</source>
        <translation>Ordner für die Sitzungsdateien</translation>
    </message>
    <message>
        <location filename="../../app/arguments.py" line="84" />
        <source>begin without waiting for a signal</source>
        <translation>beginnen, ohne auf ein Zeichen zu warten</translation>
    </message>
    <message>
        <location filename="../../app/arguments.py" line="88" />
        <source>which measures; by default full, and lite on a machine too slow for it</source>
        <translation>welches misst; sonst full, und lite auf einem Rechner, der dafür zu langsam ist</translation>
    </message>
    <message>
        <location filename="../../app/arguments.py" line="93" />
        <source>COMMAND</source>
        <translation>BEFEHL</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="23" />
        <source>the therapist's window</source>
        <translation>das Fenster für die Praxis</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="29" />
        <source>session files or folders to import</source>
        <translation>Sitzungsdateien oder Ordner, die eingelesen werden</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="41" />
        <source>a patient's record for another system, or all holds of everybody</source>
        <translation>die Akte einer Person für ein anderes System, oder alle Haltephasen von allen</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="49" />
        <source>as in the plan; without it parquet holds everybody</source>
        <translation>wie im Plan; ohne ihn enthält parquet alle</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="59" />
        <source>the practice's key, and the lock of its store</source>
        <translation>der Praxisschlüssel, und das Sperren der Datenbank</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="65" />
        <source>what to do</source>
        <translation>was zu tun ist</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="72" />
        <source>the backup, or the store</source>
        <translation>die Sicherung oder die Datenbank</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="77" />
        <source>make a key for new plans beside those that are there</source>
        <translation>neben den vorhandenen einen Schlüssel für neue Pläne anlegen</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="86" />
        <source>the whole job on a sample clip, no screen needed</source>
        <translation>das Ganze an einer Beispielaufnahme, ohne Bildschirm</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="93" />
        <source>folder for what it makes</source>
        <translation>Ordner für das, was dabei entsteht</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="96" />
        <source>open the windows as well</source>
        <translation>auch die Fenster öffnen</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="103" />
        <source>range and holds of clips</source>
        <translation>Bewegungsausmaß und Haltephasen von Aufnahmen</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="109" />
        <source>a clip, or a folder of clips</source>
        <translation>eine Aufnahme, oder ein Ordner mit Aufnahmen</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="115" />
        <source>where the camera stands; by default where the movement is measured best</source>
        <translation>wo die Kamera steht; sonst dort, wo die Bewegung am besten gemessen wird</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="122" />
        <source>how the person stands, sits or lies; by default standing, seen from the foot supine</source>
        <translation>wie die Person steht, sitzt oder liegt; sonst standing, vom Fußende gesehen supine</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="132" />
        <source>write every frame's value; of several clips into a folder of this name</source>
        <translation>den Wert jedes Bildes schreiben; bei mehreren Aufnahmen in einen Ordner dieses Namens</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="139" />
        <source>DEG</source>
        <translation>GRAD</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="140" />
        <source>the camera's horizontal one, as 'coach lens' finds it; by default a common camera's</source>
        <translation>waagerechtes Sichtfeld der Kamera, wie „coach lens“ es findet; sonst das einer üblichen Kamera</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="149" />
        <source>which measures a clip, by default full; or which found the points of a table, whose errors are then given: a session's own table needs only its session.json beside it</source>
        <translation>welches eine Aufnahme misst, sonst full; oder welches die Punkte einer Tabelle fand, dessen Fehler dann gelten: die Tabelle einer Sitzung braucht nur ihre session.json daneben</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="163" />
        <source>joint centres of another recording, to a table that measure reads</source>
        <translation>Gelenkmitten einer anderen Aufzeichnung in eine Tabelle, die measure liest</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="174" />
        <location filename="../../app/commands.py" line="170" />
        <source>TABLE.csv</source>
        <translation>TABELLE.csv</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="171" />
        <source>table of joint centres in metres, CSV</source>
        <translation>Tabelle von Gelenkmitten in Metern, CSV</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="177" />
        <source>what points up</source>
        <translation>was nach oben zeigt</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="183" />
        <source>on which side of the person the camera stands</source>
        <translation>auf welcher Seite der Person die Kamera steht</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="187" />
        <source>METRES</source>
        <translation>METER</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="195" />
        <source>a card to print and wear: it shows the trunk's turn</source>
        <translation>eine Karte zum Drucken und Tragen: sie zeigt die Drehung des Rumpfs</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="208" />
        <source>a one-minute check of the camera's field of view with a printed board</source>
        <translation>das Sichtfeld der Kamera in einer Minute prüfen, mit einer gedruckten Tafel</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="214" />
        <source>write the board to print</source>
        <translation>die Tafel zum Drucken schreiben</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="224" />
        <source>a video of the board moved before the camera</source>
        <translation>ein Video, in dem die Tafel vor der Kamera bewegt wird</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="237" />
        <source>FILE or URL</source>
        <translation>DATEI oder URL</translation>
    </message>
    <message>
        <location filename="../../app/commands.py" line="238" />
        <source>where imported sessions are kept: a file, or postgresql://user@host/database</source>
        <translation>wo eingelesene Sitzungen liegen: eine Datei, oder postgresql://user@host/database</translation>
    </message>
</context><context>
    <name>concern</name>
    <message>
        <location filename="../../review/cohort_reasons.py" line="44" />
        <source>high pain</source>
        <translation>starker Schmerz</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="46" />
        <source>pain rose</source>
        <translation>Schmerz gestiegen</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="48" />
        <source>range fell</source>
        <translation>Bewegungsausmaß gesunken</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="50" />
        <source>stopped</source>
        <translation>hat aufgehört</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="52" />
        <source>poor data</source>
        <translation>schlechte Daten</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="54" />
        <source>next step</source>
        <translation>nächster Schritt</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="56" />
        <source>range grew</source>
        <translation>Bewegungsausmaß gewachsen</translation>
    </message>
</context><context>
    <name>convert</name>
    <message>
        <location filename="../../app/convert.py" line="37" />
        <source>No pose model found them, so their error is not known: 'coach measure --pose-model full' measures them with the errors of the full one.</source>
        <translation>Kein Posenmodell hat sie gefunden, darum ist ihr Fehler nicht bekannt: „coach measure --pose-model full“ misst sie mit den Fehlern des vollen Modells.</translation>
    </message>
    <message>
        <location filename="../../app/convert.py" line="49" />
        <source>{count} frames as a camera {distance_m:g} m in front of the person sees them are in '{out}'.</source>
        <translation>{count} Bilder, wie eine Kamera sie {distance_m:g} m vor der Person sieht, sind in „{out}“.</translation>
    </message>
    <message>
        <location filename="../../app/convert.py" line="55" />
        <source>{count} frames as a camera {distance_m:g} m behind the person sees them are in '{out}'.</source>
        <translation>{count} Bilder, wie eine Kamera sie {distance_m:g} m hinter der Person sieht, sind in „{out}“.</translation>
    </message>
    <message>
        <location filename="../../app/convert.py" line="61" />
        <source>{count} frames as a camera {distance_m:g} m to the person's left sees them are in '{out}'.</source>
        <translation>{count} Bilder, wie eine Kamera sie {distance_m:g} m links von der Person sieht, sind in „{out}“.</translation>
    </message>
    <message>
        <location filename="../../app/convert.py" line="67" />
        <source>{count} frames as a camera {distance_m:g} m to the person's right sees them are in '{out}'.</source>
        <translation>{count} Bilder, wie eine Kamera sie {distance_m:g} m rechts von der Person sieht, sind in „{out}“.</translation>
    </message>
</context><context>
    <name>dates</name>
    <message>
        <location filename="../therapist/plan_fields.py" line="104" />
        <source>YYYY-MM-DD</source>
        <translation>TT.MM.JJJJ</translation>
    </message>
    <message>
        <location filename="../therapist/typed_dates.py" line="15" />
        <source>{year:04}-{month:02}-{day:02}</source>
        <translation>{day:02}.{month:02}.{year:04}</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="17" />
        <source>Mon</source>
        <translation>Mo</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="19" />
        <source>Tue</source>
        <translation>Di</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="21" />
        <source>Wed</source>
        <translation>Mi</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="23" />
        <source>Thu</source>
        <translation>Do</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="25" />
        <source>Fri</source>
        <translation>Fr</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="27" />
        <source>Sat</source>
        <translation>Sa</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="29" />
        <source>Sun</source>
        <translation>So</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="186" />
        <source>{day} {month} {year}</source>
        <translation>{day}. {month} {year}</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="192" />
        <source>{day} {month}</source>
        <translation>{day}. {month}</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="200" />
        <source>Jan</source>
        <translation>Jan.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="202" />
        <source>Feb</source>
        <translation>Feb.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="204" />
        <source>Mar</source>
        <translation>März</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="206" />
        <source>Apr</source>
        <translation>Apr.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="208" />
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="210" />
        <source>Jun</source>
        <translation>Juni</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="212" />
        <source>Jul</source>
        <translation>Juli</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="214" />
        <source>Aug</source>
        <translation>Aug.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="216" />
        <source>Sep</source>
        <translation>Sept.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="218" />
        <source>Oct</source>
        <translation>Okt.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="220" />
        <source>Nov</source>
        <translation>Nov.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="222" />
        <source>Dec</source>
        <translation>Dez.</translation>
    </message>
</context><context>
    <name>demo</name>
    <message>
        <location filename="../../app/demo.py" line="45" />
        <source>Sample clip of a rendered person</source>
        <translation>Beispielaufnahme einer gezeichneten Person</translation>
    </message>
    <message>
        <location filename="../../app/demo.py" line="99" />
        <source>Written:</source>
        <translation>Geschrieben:</translation>
    </message>
    <message>
        <location filename="../../app/demo.py" line="132" />
        <source>playing the sample clip</source>
        <translation>die Beispielaufnahme läuft</translation>
    </message>
    <message>
        <location filename="../../app/demo.py" line="178" />
        <source>Holds in the clip, {movement}: {count}</source>
        <translation>Haltephasen der Aufnahme, {movement}: {count}</translation>
    </message>
    <message>
        <location filename="../../app/demo.py" line="181" />
        <source>            truth                      measured</source>
        <translation>            wahr                       gemessen</translation>
    </message>
    <message>
        <location filename="../../app/demo.py" line="182" />
        <source>  hold      held       angle           held       angle</source>
        <translation>  Nr.    gehalten     Winkel       gehalten     Winkel</translation>
    </message>
</context><context>
    <name>diary</name>
    <message>
        <location filename="../../review/diary_wording.py" line="18" />
        <source>No hold was measured yet.</source>
        <translation>Es wurde noch nichts gemessen.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="21" />
        <source>In too few sessions the trunk kept still, so nothing can be said of a change.</source>
        <translation>Zu selten blieb der Rumpf still, darum lässt sich über eine Änderung nichts sagen.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="26" />
        <source>Measured once, on {day}: {reached}. That is too little to speak of a change.</source>
        <translation>Einmal gemessen, am {day}: {reached}. Das ist zu wenig, um von einer Änderung zu sprechen.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="41" />
        <source>Since the first sessions ({day}) there is no change larger than the error of measuring.</source>
        <translation>Seit dem Beginn ({day}) gibt es keine Änderung, die größer ist als der Messfehler.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="47" />
        <source>Since the first sessions ({day}) no change can be told from the error of measuring yet; more sessions may tell.</source>
        <translation>Seit dem Beginn ({day}) lässt sich eine Änderung noch nicht vom Messfehler unterscheiden; weitere Sitzungen können es zeigen.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="58" />
        <source>The arm goes {size} further than in the first sessions ({day}). That is more than the error of measuring.</source>
        <translation>Der Arm kommt {size} weiter als zu Beginn ({day}). Das ist mehr als der Messfehler.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="64" />
        <source>The arm goes {size} less far than in the first sessions ({day}). That is more than the error of measuring. Show this to your therapist.</source>
        <translation>Der Arm kommt {size} weniger weit als zu Beginn ({day}). Das ist mehr als der Messfehler. Zeigen Sie das in der Praxis.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="70" />
        <source>The hand goes {size} of the back's length higher than in the first sessions ({day}). That is more than the error of measuring.</source>
        <translation>Die Hand kommt {size} der Rückenlänge höher als zu Beginn ({day}). Das ist mehr als der Messfehler.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="76" />
        <source>The hand goes {size} of the back's length less high than in the first sessions ({day}). That is more than the error of measuring. Show this to your therapist.</source>
        <translation>Die Hand kommt {size} der Rückenlänge weniger hoch als zu Beginn ({day}). Das ist mehr als der Messfehler. Zeigen Sie das in der Praxis.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="87" />
        <source>the thumb reached {levels}</source>
        <translation>der Daumen erreichte {levels}</translation>
    </message>
</context><context>
    <name>dose</name>
    <message>
        <location filename="../../review/dose_sources.py" line="17" />
        <source>Common practice: 5 to 10 s, about 5 times, up to three times a day; here its least.</source>
        <translation>Allgemein üblich: 5 bis 10 s, etwa 5-mal, bis zu dreimal am Tag; hier das Geringste davon.</translation>
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="21" />
        <source>Common practice: 5 to 10 s, about 5 times, up to three times a day.</source>
        <translation>Allgemein üblich: 5 bis 10 s, etwa 5-mal, bis zu dreimal am Tag.</translation>
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="25" />
        <source>Hold: Kelley et al. 2013, J Orthop Sports Phys Ther 43:A1-A31 (from memory), high irritability, 1 to 5 s and free of pain; counts: common practice.</source>
        <translation>Haltezeit: Kelley et al. 2013, J Orthop Sports Phys Ther 43:A1-A31 (aus dem Gedächtnis), hohe Irritierbarkeit, 1 bis 5 s und schmerzfrei; Anzahl: allgemein üblich.</translation>
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="31" />
        <source>Hold: Kelley et al. 2013, J Orthop Sports Phys Ther 43:A1-A31 (from memory), moderate irritability, 5 to 15 s and a mild stretch; counts: common practice.</source>
        <translation>Haltezeit: Kelley et al. 2013, J Orthop Sports Phys Ther 43:A1-A31 (aus dem Gedächtnis), mittlere Irritierbarkeit, 5 bis 15 s und milde Dehnung; Anzahl: allgemein üblich.</translation>
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="37" />
        <source>Common practice for a stretch at the end of the range: about 30 s, 3 to 5 times, once to three times a day; for low irritability longer holds also after Kelley et al. 2013 (from memory).</source>
        <translation>Allgemein üblich für eine endgradige Dehnung: etwa 30 s, 3- bis 5-mal, ein- bis dreimal am Tag; bei niedriger Irritierbarkeit längeres Halten auch nach Kelley et al. 2013 (aus dem Gedächtnis).</translation>
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="43" />
        <source>Common practice: small swings free of pain, half a minute at a time.</source>
        <translation>Allgemein üblich: kleine, schmerzfreie Pendelbewegungen, je eine halbe Minute.</translation>
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="47" />
        <source>Common practice: easy swings, up to a minute at a time.</source>
        <translation>Allgemein üblich: leichte Pendelbewegungen, je bis zu einer Minute.</translation>
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="51" />
        <source>Common practice: short and light, free of pain.</source>
        <translation>Allgemein üblich: kurz, leicht und schmerzfrei.</translation>
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="55" />
        <source>Common practice: about 5 s, up to ten times.</source>
        <translation>Allgemein üblich: etwa 5 s, bis zu zehnmal.</translation>
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="59" />
        <source>Common practice: 5 to 10 s, about ten times.</source>
        <translation>Allgemein üblich: 5 bis 10 s, etwa zehnmal.</translation>
    </message>
</context><context>
    <name>drawings</name>
    <message>
        <location filename="../patient/demonstration.py" line="58" />
        <source>Drawing: {title}, left arm</source>
        <translation>Zeichnung: {title}, linker Arm</translation>
    </message>
    <message>
        <location filename="../patient/demonstration.py" line="60" />
        <source>Drawing: {title}, right arm</source>
        <translation>Zeichnung: {title}, rechter Arm</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="26" />
        <source>painful</source>
        <translation>schmerzhaft</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="27" />
        <source>stiff</source>
        <translation>steif</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="28" />
        <source>loosening</source>
        <translation>lösend</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="48" />
        <source>here, as your therapist sees it now</source>
        <translation>hier, wie es die Praxis gerade sieht</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="54" />
        <source>months and years</source>
        <translation>Monate und Jahre</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="57" />
        <source>No sharp borders, and every shoulder takes its own time</source>
        <translation>Keine scharfen Grenzen, und jede Schulter braucht ihre Zeit</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="67" />
        <source>pain</source>
        <translation>Schmerz</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="68" />
        <source>session</source>
        <translation>Üben</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="69" />
        <source>half an hour</source>
        <translation>halbe Stunde</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="70" />
        <source>night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="83" />
        <source>still up: ring</source>
        <translation>noch da: anrufen</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="87" />
        <source>down again: all right</source>
        <translation>wieder unten: gut</translation>
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="25" />
        <source>A loose joint</source>
        <translation>Ein lockeres Gelenk</translation>
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="26" />
        <source>A frozen joint</source>
        <translation>Ein steifes Gelenk</translation>
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="28" />
        <location filename="../patient/drawings/joint.py" line="27" />
        <source>socket</source>
        <translation>Pfanne</translation>
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="30" />
        <location filename="../patient/drawings/joint.py" line="29" />
        <source>ball</source>
        <translation>Kugel</translation>
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="32" />
        <source>thin bag with a loose fold</source>
        <translation>dünne Hülle mit lockerer Falte</translation>
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="34" />
        <source>thick bag, no fold</source>
        <translation>dicke Hülle, keine Falte</translation>
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="19" />
        <source>nothing yet</source>
        <translation>noch nichts</translation>
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="20" />
        <source>it pulls</source>
        <translation>es zieht</translation>
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="21" />
        <source>it hurts</source>
        <translation>es tut weh</translation>
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="24" />
        <source>go on slowly</source>
        <translation>langsam weiter</translation>
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="25" />
        <source>stay here and breathe</source>
        <translation>hier bleiben und atmen</translation>
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="26" />
        <source>too far: ease off</source>
        <translation>zu weit: nachlassen</translation>
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="45" />
        <source>the further the arm goes</source>
        <translation>je weiter der Arm geht</translation>
    </message>
    <message>
        <location filename="../patient/drawings/reach.py" line="51" />
        <source>sore: turn back before</source>
        <translation>tut weh: vorher umkehren</translation>
    </message>
    <message>
        <location filename="../patient/drawings/reach.py" line="53" />
        <source>a mild pull: stay here</source>
        <translation>leichtes Ziehen: hier bleiben</translation>
    </message>
    <message>
        <location filename="../patient/drawings/reach.py" line="55" />
        <source>how far a free arm goes</source>
        <translation>so weit geht ein freier Arm</translation>
    </message>
    <message>
        <location filename="../patient/drawings/reach.py" line="56" />
        <source>easy, without pain</source>
        <translation>leicht, ohne Schmerz</translation>
    </message>
    <message>
        <location filename="../patient/drawings/reach.py" line="58" />
        <source>An example, not your arm</source>
        <translation>Ein Beispiel, nicht Ihr Arm</translation>
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="74" />
        <source>Drawing: two shoulder joints from the front. Left, a thin bag around ball and socket with a loose fold below. Right, the bag is thick and the fold is gone.</source>
        <translation>Zeichnung: zwei Schultergelenke von vorn. Links eine dünne Hülle um Kugel und Pfanne mit einer lockeren Falte unten. Rechts ist die Hülle dick und die Falte fort.</translation>
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="80" />
        <source>Drawing: a line of time with three humps that overlap: painful, stiff, loosening.</source>
        <translation>Zeichnung: eine Zeitlinie mit drei Buckeln, die sich überlappen: schmerzhaft, steif, lösend.</translation>
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="85" />
        <source>Drawing: an arm that goes a part of the way easily and is sore for a long part after it.</source>
        <translation>Zeichnung: ein Arm, der einen Teil des Weges leicht geht und danach ein langes Stück weh tut.</translation>
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="91" />
        <source>Drawing: an arm that stops early, with a mild pull just at the end.</source>
        <translation>Zeichnung: ein Arm, der früh stehen bleibt, mit leichtem Ziehen gerade am Ende.</translation>
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="95" />
        <source>Drawing: an arm that goes further than before, with a mild pull at the end.</source>
        <translation>Zeichnung: ein Arm, der weiter geht als vorher, mit leichtem Ziehen am Ende.</translation>
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="100" />
        <source>Drawing: a scale with three parts, nothing yet, it pulls, it hurts. A hand points at it pulls.</source>
        <translation>Zeichnung: eine Skala mit drei Teilen, noch nichts, es zieht, es tut weh. Eine Hand zeigt auf: es zieht.</translation>
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="106" />
        <source>Drawing: pain after a session. Down again within half an hour is all right; still up after that, ring.</source>
        <translation>Zeichnung: Schmerz nach dem Üben. Nach einer halben Stunde wieder unten ist gut; ist er dann noch da, anrufen.</translation>
    </message>
</context><context>
    <name>export</name>
    <message>
        <location filename="../../app/export.py" line="86" />
        <source>{out}: {sessions} of {patient_code}</source>
        <translation>{out}: {sessions} von {patient_code}</translation>
    </message>
    <message>
        <location filename="../../app/export.py" line="91" />
        <source>{day}, {done}: {doubt}</source>
        <translation>{day}, {done}: {doubt}</translation>
    </message>
    <message>
        <location filename="../../app/export.py" line="110" />
        <source>{out}: 1 patient</source>
        <translation>{out}: 1 Person</translation>
    </message>
    <message>
        <location filename="../../app/export.py" line="112" />
        <source>{out}: {count} patients</source>
        <translation>{out}: {count} Personen</translation>
    </message>
    <message>
        <location filename="../../app/export.py" line="120" />
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <location filename="../../app/export.py" line="121" />
        <source>taken, though the doubt is not decided</source>
        <translation>enthalten, obwohl der Zweifel nicht entschieden ist</translation>
    </message>
</context><context>
    <name>exports</name>
    <message>
        <location filename="../therapist/export_words.py" line="33" />
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="34" />
        <source>Write the report</source>
        <translation>Bericht schreiben</translation>
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="35" />
        <source>The report is in {path}.</source>
        <translation>Der Bericht steht in {path}.</translation>
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="41" />
        <source>FHIR as JSON (*.json)</source>
        <translation>FHIR als JSON (*.json)</translation>
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="42" />
        <source>Write the FHIR bundle</source>
        <translation>FHIR-Bundle schreiben</translation>
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="43" />
        <source>The FHIR bundle is in {path}.</source>
        <translation>Das FHIR-Bundle steht in {path}.</translation>
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="57" />
        <location filename="../therapist/export_words.py" line="49" />
        <source>Table (*.csv)</source>
        <translation>Tabelle (*.csv)</translation>
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="50" />
        <source>Write the table of holds</source>
        <translation>Tabelle der Haltephasen schreiben</translation>
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="51" />
        <source>The table of holds is in {path}.</source>
        <translation>Die Tabelle der Haltephasen steht in {path}.</translation>
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="58" />
        <source>Write the table of own measures</source>
        <translation>Tabelle der eigenen Messungen schreiben</translation>
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="59" />
        <source>The table of own measures is in {path}.</source>
        <translation>Die Tabelle der eigenen Messungen steht in {path}.</translation>
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="65" />
        <source>Text (*.txt)</source>
        <translation>Text (*.txt)</translation>
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="66" />
        <source>Write the note</source>
        <translation>Notiz schreiben</translation>
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="67" />
        <source>The note is in {path}.</source>
        <translation>Die Notiz steht in {path}.</translation>
    </message>
    <message>
        <location filename="../therapist/exports.py" line="65" />
        <source>There is no session to report on: import session files first.</source>
        <translation>Es gibt keine Sitzung, über die zu berichten wäre: Lesen Sie zuerst Sitzungsdateien ein.</translation>
    </message>
    <message>
        <location filename="../therapist/exports.py" line="78" />
        <source>There is no session to export: import session files first.</source>
        <translation>Es gibt keine Sitzung, die sich ausgeben ließe: Lesen Sie zuerst Sitzungsdateien ein.</translation>
    </message>
    <message>
        <location filename="../therapist/exports.py" line="90" />
        <source>There is no session for a note: import session files first.</source>
        <translation>Es gibt keine Sitzung für eine Notiz: Lesen Sie zuerst Sitzungsdateien ein.</translation>
    </message>
    <message>
        <location filename="../therapist/exports.py" line="99" />
        <source>The note is on the clipboard: paste it into the record.</source>
        <translation>Die Notiz liegt in der Zwischenablage: Fügen Sie sie in Ihre Dokumentation ein.</translation>
    </message>
    <message>
        <location filename="../therapist/exports.py" line="154" />
        <source>The export ended without a result: try again, and tell who keeps the program.</source>
        <translation>Die Ausgabe endete ohne Ergebnis: Versuchen Sie es noch einmal und sagen Sie denen Bescheid, die das Programm pflegen.</translation>
    </message>
</context><context>
    <name>faults</name>
    <message>
        <location filename="../../app/chosen_language.py" line="18" />
        <source>The program does not speak '{asked}'; choose one of {known}.</source>
        <translation>Das Programm spricht „{asked}“ nicht; wählen Sie eine von {known}.</translation>
    </message>
    <message>
        <location filename="../../app/convert.py" line="26" />
        <source>A camera at {distance_m:g} m is none of this program; name {low:g} to {high:g} m.</source>
        <translation>Eine Kamera in {distance_m:g} m gehört nicht zu diesem Programm; nennen Sie {low:g} bis {high:g} m.</translation>
    </message>
    <message>
        <location filename="../../app/demo.py" line="65" />
        <source>The sample clip '{clip}' is missing; install the program again.</source>
        <translation>Die Beispielaufnahme „{clip}“ fehlt; installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../app/demo.py" line="156" />
        <source>Nothing was measured in '{clip}'; install the program again.</source>
        <translation>In „{clip}“ wurde nichts gemessen; installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../app/export.py" line="38" />
        <source>A {kind} export is of one patient: name the code with --patient.</source>
        <translation>Eine Ausgabe als {kind} gilt einer Person: Nennen Sie deren Code mit --patient.</translation>
    </message>
    <message>
        <location filename="../../app/export.py" line="47" />
        <source>There is no store at '{place}'; import files with 'coach review'.</source>
        <translation>Unter „{place}“ ist keine Datenbank; lesen Sie Dateien mit „coach review“ ein.</translation>
    </message>
    <message>
        <location filename="../../app/export.py" line="70" />
        <source>Every session of {patient_code} was left out: decide anew in 'coach review'.</source>
        <translation>Alle Sitzungen von {patient_code} sind ausgelassen: Entscheiden Sie neu in „coach review“.</translation>
    </message>
    <message>
        <location filename="../../app/export.py" line="76" />
        <source>nobody yet</source>
        <translation>noch niemanden</translation>
    </message>
    <message>
        <location filename="../../app/export.py" line="79" />
        <source>There is no patient '{patient_code}' in the store at '{store}'; it knows {named}{more}: correct the code.</source>
        <translation>In der Datenbank unter „{store}“ gibt es den Code „{patient_code}“ nicht; sie kennt {named}{more}: Berichtigen Sie den Code.</translation>
    </message>
    <message>
        <location filename="../../app/export.py" line="102" />
        <source>There is no session in the store at '{store}' to export.</source>
        <translation>In der Datenbank unter „{store}“ ist keine Sitzung, die sich ausgeben ließe.</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="45" />
        <source>'--renew' belongs to 'coach key make', not to 'coach key {deed}'.</source>
        <translation>„--renew“ gehört zu „coach key make“, nicht zu „coach key {deed}“.</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="65" />
        <source>There is a practice key at {path} already: 'coach key make --renew' makes one for new plans beside it.</source>
        <translation>Unter {path} ist schon ein Praxisschlüssel: „coach key make --renew“ legt daneben einen für neue Pläne an.</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="84" />
        <source>There is no practice key here; make one with 'coach key make'.</source>
        <translation>Hier ist kein Praxisschlüssel; legen Sie einen mit „coach key make“ an.</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="144" />
        <source>'coach key {deed}' needs the name of the backup file after it.</source>
        <translation>„coach key {deed}“ braucht dahinter den Namen der Sicherungsdatei.</translation>
    </message>
    <message>
        <location filename="../../app/measure.py" line="183" />
        <source>Nobody is seen in '{clip}'; record it again with the whole upper body in the picture.</source>
        <translation>In „{clip}“ ist niemand zu sehen; nehmen Sie noch einmal auf, mit dem ganzen Oberkörper im Bild.</translation>
    </message>
    <message>
        <location filename="../../app/measure_many.py" line="62" />
        <source>Two of the clips have the same name, so one table would replace the other; rename one, or measure them one at a time.</source>
        <translation>Zwei der Aufnahmen heißen gleich, und eine Tabelle würde die andere ersetzen; benennen Sie eine um, oder messen Sie sie einzeln.</translation>
    </message>
    <message>
        <location filename="../../app/measure_many.py" line="106" />
        <source>There is no clip in the folder '{path}'; name another.</source>
        <translation>Im Ordner „{path}“ ist keine Aufnahme; nennen Sie einen anderen.</translation>
    </message>
    <message>
        <location filename="../../app/passphrases.py" line="20" />
        <source>The passphrase of {what} is needed; run the command where you can type it.</source>
        <translation>Gebraucht wird die Passphrase für {what}; rufen Sie den Befehl dort auf, wo Sie sie tippen können.</translation>
    </message>
    <message>
        <location filename="../../app/passphrases.py" line="33" />
        <source>The two passphrases differ; run the command again.</source>
        <translation>Die beiden Passphrasen sind verschieden; rufen Sie den Befehl noch einmal auf.</translation>
    </message>
    <message>
        <location filename="../../app/plan.py" line="46" />
        <source>The plan in {path} ended on {day}; ask your practice for a new one ({contact}).</source>
        <translation>Der Plan in {path} galt bis {day}; bitten Sie Ihre Praxis um einen neuen ({contact}).</translation>
    </message>
    <message>
        <location filename="../../app/plan.py" line="51" />
        <source>The plan in {path} ended on {day}; ask your practice for a new one.</source>
        <translation>Der Plan in {path} galt bis {day}; bitten Sie Ihre Praxis um einen neuen.</translation>
    </message>
    <message>
        <location filename="../../app/points_of.py" line="42" />
        <source>The points of {name} were not found by the pose model {model} alone, by what {document} beside it says; leave the model out.</source>
        <translation>Nach {document} daneben hat die Punkte von {name} nicht allein das Posenmodell {model} gefunden; lassen Sie das Modell weg.</translation>
    </message>
    <message>
        <location filename="../../app/review.py" line="50" />
        <source>There is no file or folder '{path}'; check its name.</source>
        <translation>Es gibt keine Datei und keinen Ordner „{path}“; prüfen Sie den Namen.</translation>
    </message>
    <message>
        <location filename="../../app/review.py" line="84" />
        <source>The store is locked and stays closed without its passphrase.</source>
        <translation>Die Datenbank ist gesperrt und bleibt es ohne ihre Passphrase.</translation>
    </message>
    <message>
        <location filename="../../app/sitting.py" line="135" />
        <source>{fault} What you did is kept, and saved when you start the program again.</source>
        <translation>{fault} Was Sie getan haben, ist aufgehoben und wird gespeichert, wenn Sie das Programm wieder starten.</translation>
    </message>
    <message>
        <location filename="../../app/sitting.py" line="139" />
        <source>{fault} What you did is kept as long as this window is open: make room first, then close it.</source>
        <translation>{fault} Was Sie getan haben, ist aufgehoben, solange dieses Fenster offen ist: Schaffen Sie erst Platz, dann schließen Sie es.</translation>
    </message>
    <message>
        <location filename="../../app/streams.py" line="40" />
        <source>What was printed could not be written ({reason}); send it to another place.</source>
        <translation>Die Ausgabe ließ sich nicht schreiben ({reason}); leiten Sie sie an einen anderen Ort.</translation>
    </message>
    <message>
        <location filename="../../capture/camera.py" line="66" />
        <source>{name} gives no picture; close other programs that use it, check its cover and plug, and start again.</source>
        <translation>{name} liefert kein Bild; schließen Sie andere Programme, die sie benutzen, prüfen Sie Abdeckung und Stecker und starten Sie neu.</translation>
    </message>
    <message>
        <location filename="../../capture/camera.py" line="83" />
        <source>{name} has stopped giving pictures; check its plug, close other programs that use it, and go on.</source>
        <translation>{name} liefert keine Bilder mehr; prüfen Sie den Stecker, schließen Sie andere Programme, die sie benutzen, und machen Sie weiter.</translation>
    </message>
    <message>
        <location filename="../../capture/card_watch.py" line="102" />
        <source>The printed card is in the picture, but {width} by {height} pixels are too few to measure it; set the camera to {least_width} by {least_height} or more to use it.</source>
        <translation>Die gedruckte Karte ist im Bild, aber {width} mal {height} Pixel reichen nicht, um sie zu messen; stellen Sie die Kamera auf {least_width} mal {least_height} oder mehr, um sie zu nutzen.</translation>
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="23" />
        <source>The board is too small in the picture to measure; hold the sheet nearer, within half a metre, and try again.</source>
        <translation>Die Tafel ist im Bild zu klein zum Messen; halten Sie das Blatt näher, auf einen halben Meter, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="30" />
        <source>The board was not seen sharp and still; print it with 'coach lens --print', light it well, hold all of it in the picture with short stops, and try again.</source>
        <translation>Die Tafel war nicht scharf und still zu sehen; drucken Sie sie mit „coach lens --print“, sorgen Sie für gutes Licht, halten Sie sie ganz und mit kurzen Pausen ins Bild, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="39" />
        <source>Only {kept} different views of the board were seen and {least_views} are needed; move and tilt the sheet more, with short stops, and try again.</source>
        <translation>Nur {kept} verschiedene Ansichten der Tafel waren zu sehen, und {least_views} sind nötig; bewegen und kippen Sie das Blatt mehr, mit kurzen Pausen, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="49" />
        <source>The board was tilted in only {tilted} views and {least_tilted} are needed, for face-on a narrow lens and a far sheet look alike; tilt it by a third of a right angle to every side and try again.</source>
        <translation>Die Tafel war nur in {tilted} Ansichten gekippt, und {least_tilted} sind nötig, denn von vorn sehen eine enge Linse und ein fernes Blatt gleich aus; kippen Sie es um ein Drittel eines rechten Winkels nach jeder Seite, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="59" />
        <source>The views of the board do not fit one lens; stick the sheet flat on something stiff, switch zoom and autofocus off where you can, and try again.</source>
        <translation>Die Ansichten der Tafel passen nicht zu einer einzigen Linse; kleben Sie das Blatt flach auf etwas Steifes, schalten Sie Zoom und Autofokus ab, wo es geht, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="68" />
        <source>The board's corners miss the best lens by {miss_px} pixels; stick the sheet flat on something stiff, give more light, and try again.</source>
        <translation>Die Ecken der Tafel weichen von der besten Linse um {miss_px} Pixel ab; kleben Sie das Blatt flach auf etwas Steifes, sorgen Sie für mehr Licht, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="76" />
        <source>The field of view is known only to {error_deg} degrees and {most_error_deg:g} are needed; hold the sheet nearer, tilt it more to every side, and try again.</source>
        <translation>Das Sichtfeld ist nur auf {error_deg} Grad bekannt, und {most_error_deg:g} sind nötig; halten Sie das Blatt näher, kippen Sie es mehr nach jeder Seite, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../capture/sources.py" line="31" />
        <source>No camera answers as number {number}; plug one in, close other programs that use it, or try another number.</source>
        <translation>Unter der Nummer {number} antwortet keine Kamera; schließen Sie eine an, beenden Sie andere Programme, die sie benutzen, oder versuchen Sie eine andere Nummer.</translation>
    </message>
    <message>
        <location filename="../../capture/sources.py" line="37" />
        <source>Camera {number}</source>
        <translation>Kamera {number}</translation>
    </message>
    <message>
        <location filename="../../capture/sources.py" line="47" />
        <source>'{path}' cannot be read as a video; it is another kind of file or was cut off, so copy it again from where it was recorded, or choose another.</source>
        <translation>„{path}“ lässt sich nicht als Video lesen; es ist eine andere Art Datei oder wurde abgeschnitten. Kopieren Sie es noch einmal von dort, wo es aufgenommen wurde, oder wählen Sie ein anderes.</translation>
    </message>
    <message>
        <location filename="../../capture/sources.py" line="58" />
        <source>The pictures of '{path}' are {width} by {height}, too large to measure; record at 1280 by 720.</source>
        <translation>Die Bilder von „{path}“ sind {width} mal {height} groß, zu groß zum Messen; nehmen Sie mit 1280 mal 720 auf.</translation>
    </message>
    <message>
        <location filename="../../capture/sources.py" line="67" />
        <source>'{path}' says it has {frame_count:,} pictures, at most {max_frames:,} are measured; cut it into shorter pieces.</source>
        <translation>„{path}“ hat nach eigener Angabe {frame_count:,} Bilder, gemessen werden höchstens {max_frames:,}; schneiden Sie das Video in kürzere Stücke.</translation>
    </message>
    <message>
        <location filename="../../capture/sources.py" line="80" />
        <source>'{path}' is a folder; name a video file in it.</source>
        <translation>„{path}“ ist ein Ordner; nennen Sie eine Videodatei darin.</translation>
    </message>
    <message>
        <location filename="../../capture/sources.py" line="86" />
        <source>'{path}' is a device or a pipe; name a video file.</source>
        <translation>„{path}“ ist ein Gerät oder eine Pipe; nennen Sie eine Videodatei.</translation>
    </message>
    <message>
        <location filename="../../capture/sources.py" line="94" />
        <source>There is no file '{path}'; check its name and folder.</source>
        <translation>Es gibt keine Datei „{path}“; prüfen Sie Namen und Ordner.</translation>
    </message>
    <message>
        <location filename="../../capture/sources.py" line="100" />
        <source>'{path}' may not be read by you; ask its owner for the right to, or copy it to a folder of yours.</source>
        <translation>Sie dürfen „{path}“ nicht lesen; lassen Sie sich das Recht dazu geben oder kopieren Sie die Datei in einen eigenen Ordner.</translation>
    </message>
    <message>
        <location filename="../../capture/sources.py" line="109" />
        <source>'{path}' cannot be opened ({reason}); copy it to another place and try again.</source>
        <translation>„{path}“ lässt sich nicht öffnen ({reason}); kopieren Sie die Datei an einen anderen Ort und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../capture/sources.py" line="116" />
        <source>'{path}' is empty; copy it again from where it was recorded, or choose another.</source>
        <translation>„{path}“ ist leer; kopieren Sie die Datei noch einmal von dort, wo sie aufgenommen wurde, oder wählen Sie eine andere.</translation>
    </message>
    <message>
        <location filename="../../capture/video_file.py" line="51" />
        <source>'{name}' holds no picture that can be read; copy it again from where it was recorded, or choose another video.</source>
        <translation>„{name}“ enthält kein lesbares Bild; kopieren Sie die Datei noch einmal von dort, wo sie aufgenommen wurde, oder wählen Sie ein anderes Video.</translation>
    </message>
    <message>
        <location filename="../../capture/video_file.py" line="62" />
        <source>'{name}' does not say when its pictures were taken; {rate:g} pictures a second are assumed, and every time rests on that.</source>
        <translation>„{name}“ sagt nicht, wann die Bilder aufgenommen wurden; angenommen werden {rate:g} Bilder pro Sekunde, und alle Zeiten beruhen darauf.</translation>
    </message>
    <message>
        <location filename="../../capture/video_file.py" line="83" />
        <source>'{name}' has more than {most:,} pictures; the first of them were used, so cut it into shorter pieces.</source>
        <translation>„{name}“ hat mehr als {most:,} Bilder; benutzt wurden die ersten davon, schneiden Sie die Datei also in kürzere Stücke.</translation>
    </message>
    <message>
        <location filename="../../capture/video_file.py" line="110" />
        <source>'{name}' ends after {given} s although it promises {promised} s; it may be cut off, and what it holds was used.</source>
        <translation>„{name}“ endet nach {given} s, obwohl {promised} s angegeben sind; die Datei ist vielleicht abgeschnitten, und benutzt wurde, was da ist.</translation>
    </message>
    <message>
        <location filename="../../catalogue/load.py" line="35" />
        <source>The catalogue has no exercise {slug!r}; the nearest names are {near}: correct the name or update the program.</source>
        <translation>Der Katalog hat keine Übung {slug!r}; die nächsten Namen sind {near}: Berichtigen Sie den Namen, oder aktualisieren Sie das Programm.</translation>
    </message>
    <message>
        <location filename="../../catalogue/load.py" line="77" />
        <source>The exercise files</source>
        <translation>Die Dateien der Übungen</translation>
    </message>
    <message>
        <location filename="../../catalogue/load.py" line="87" />
        <source>The exercise file {name}</source>
        <translation>Die Übungsdatei {name}</translation>
    </message>
    <message>
        <location filename="../../catalogue/pages.py" line="90" />
        <source>The page file {name}</source>
        <translation>Die Seitendatei {name}</translation>
    </message>
    <message>
        <location filename="../../catalogue/pages.py" line="124" />
        <source>The pages to read</source>
        <translation>Die Leseseiten</translation>
    </message>
    <message>
        <location filename="../../catalogue/reading.py" line="43" />
        <source>{what} are missing ({strerror}): install the program again.</source>
        <translation>{what} fehlen ({strerror}): Installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../catalogue/reading.py" line="54" />
        <source>{where} cannot be used: {told}; correct it there.</source>
        <translation>{where} lässt sich nicht benutzen: {told}; berichtigen Sie es dort.</translation>
    </message>
    <message>
        <location filename="../../catalogue/safety.py" line="67" />
        <source>The file of stop rules {file}</source>
        <translation>Die Datei der Stoppregeln {file}</translation>
    </message>
    <message>
        <location filename="../../catalogue/safety.py" line="88" />
        <source>The file {file} is missing: install the program again.</source>
        <translation>Die Datei {file} fehlt: Installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../cues/language.py" line="73" />
        <source>The language files</source>
        <translation>Die Sprachdateien</translation>
    </message>
    <message>
        <location filename="../../cues/language.py" line="94" />
        <source>The language file {name}</source>
        <translation>Die Sprachdatei {name}</translation>
    </message>
    <message>
        <location filename="../patient/analysis.py" line="151" />
        <source>The video ended before the session was started: open a longer one.</source>
        <translation>Das Video war zu Ende, bevor die Sitzung begonnen wurde: Öffnen Sie ein längeres.</translation>
    </message>
    <message>
        <location filename="../patient/loudspeaker.py" line="21" />
        <source>There is no sound output, so the coach goes on with captions; connect a loudspeaker to hear it speak.</source>
        <translation>Es gibt keine Tonausgabe, deshalb geht es mit Untertiteln weiter; schließen Sie einen Lautsprecher an, um die Stimme zu hören.</translation>
    </message>
    <message>
        <location filename="../patient/system_voice.py" line="18" />
        <source>This computer offers no voice of its own for the chosen language, so the program's own voice speaks; add one in the system's settings to hear it.</source>
        <translation>Dieser Rechner hat für die gewählte Sprache keine eigene Stimme, deshalb spricht die des Programms; fügen Sie in den Systemeinstellungen eine hinzu, um sie zu hören.</translation>
    </message>
    <message>
        <location filename="../patient/trouble.py" line="10" />
        <source>The camera's picture is black: open its cover, or switch on a light. Then go on.</source>
        <translation>Das Bild der Kamera ist schwarz: Öffnen Sie die Abdeckung oder machen Sie Licht. Dann machen Sie weiter.</translation>
    </message>
    <message>
        <location filename="../patient/trouble.py" line="18" />
        <source>{fault} The exercise is paused until it is back; what was done is kept.</source>
        <translation>{fault} Die Übung macht Pause, bis sie wieder da ist; was getan wurde, ist aufgehoben.</translation>
    </message>
    <message>
        <location filename="../patient/trouble.py" line="25" />
        <source>The camera came back with pictures of another size, as another camera does; what was recorded so far is kept: close the program and start it again.</source>
        <translation>Die Kamera kam mit Bildern anderer Größe zurück, wie eine andere Kamera; was bisher aufgezeichnet wurde, ist aufgehoben: Schließen Sie das Programm und starten Sie es neu.</translation>
    </message>
    <message>
        <location filename="../patient/trouble.py" line="34" />
        <source>Something inside the program went wrong; what was recorded so far is kept: close the program and start it again.</source>
        <translation>Im Programm ist etwas schiefgegangen; was bisher aufgezeichnet wurde, ist aufgehoben: Schließen Sie das Programm und starten Sie es neu.</translation>
    </message>
    <message>
        <location filename="../shared/application.py" line="116" />
        <source>There is no screen to open a window on: start the program from a desktop, or use a command that needs none.</source>
        <translation>Es gibt keinen Bildschirm für ein Fenster: Starten Sie das Programm von einer Arbeitsoberfläche aus, oder nehmen Sie einen Befehl, der keinen braucht.</translation>
    </message>
    <message>
        <location filename="../shared/report_page.py" line="51" />
        <source>The report could not be drawn: try again, and restart the program if it fails.</source>
        <translation>Der Bericht ließ sich nicht zeichnen: Versuchen Sie es noch einmal, und starten Sie das Programm neu, wenn es wieder misslingt.</translation>
    </message>
    <message>
        <location filename="../shared/sheet.py" line="103" />
        <source>{title} could not be drawn: try again, and restart the program if it fails.</source>
        <translation>„{title}“ ließ sich nicht zeichnen: Versuchen Sie es noch einmal, und starten Sie das Programm neu, wenn es wieder misslingt.</translation>
    </message>
    <message>
        <location filename="../shared/typeface.py" line="30" />
        <source>The font file {name} is missing: install the program again.</source>
        <translation>Die Schriftdatei {name} fehlt: Installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../shared/typeface.py" line="35" />
        <source>The font file {name} is damaged: install the program again.</source>
        <translation>Die Schriftdatei {name} ist beschädigt: Installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../documents/archive.py" line="119" />
        <source>{name} in {where}</source>
        <translation>{name} in {where}</translation>
    </message>
    <message>
        <location filename="../../documents/archive.py" line="136" />
        <source>{where} is too large for a session file: {count:,} bytes, at most {max_archive_bytes:,} are read; check that this is the right file.</source>
        <translation>{where} ist zu groß für eine Sitzungsdatei: {count:,} Byte, gelesen werden höchstens {max_archive_bytes:,}; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/archive.py" line="144" />
        <source>{where} is not a session file; check that this is the right file.</source>
        <translation>{where} ist keine Sitzungsdatei; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/archive.py" line="156" />
        <source>{where} holds more than the {count} parts of a session file; check that this is the right file.</source>
        <translation>{where} enthält mehr als die {count} Teile einer Sitzungsdatei; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/archive.py" line="164" />
        <source>{where} is a zip64 file, which no session file is; ask for a new file.</source>
        <translation>{where} ist eine zip64-Datei, was keine Sitzungsdatei ist; bitten Sie um eine neue Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/archive.py" line="176" />
        <source>{where} holds {name!a}, which is no part of a session file; check that this is the right file.</source>
        <translation>{where} enthält {name!a}, was kein Teil einer Sitzungsdatei ist; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/archive.py" line="184" />
        <source>{where} holds {name} twice; ask for it to be sent again.</source>
        <translation>{where} enthält {name} zweimal; lassen Sie sich die Datei noch einmal schicken.</translation>
    </message>
    <message>
        <location filename="../../documents/archive.py" line="190" />
        <source>{name} in {where} is encrypted by zip; ask for a file that is not.</source>
        <translation>{name} in {where} ist mit zip verschlüsselt; bitten Sie um eine Datei, die es nicht ist.</translation>
    </message>
    <message>
        <location filename="../../documents/archive.py" line="196" />
        <source>{name} in {where} is packed in a way that session files do not use; ask for the original file.</source>
        <translation>{name} in {where} ist auf eine Art gepackt, die Sitzungsdateien nicht verwenden; bitten Sie um die ursprüngliche Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/archive.py" line="205" />
        <source>{name} in {where} is a link or folder; ask for the original file.</source>
        <translation>{name} in {where} ist eine Verknüpfung oder ein Ordner; bitten Sie um die ursprüngliche Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/archive.py" line="211" />
        <source>{name} in {where} unpacks to {file_size:,} bytes, at most {most_bytes:,} are read; check that this is the right file.</source>
        <translation>{name} in {where} hat entpackt {file_size:,} Byte, gelesen werden höchstens {most_bytes:,}; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/archive.py" line="223" />
        <source>{where} has no {name} inside; check that this is the right file.</source>
        <translation>{where} enthält kein {name}; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/archive.py" line="237" />
        <source>{filename} in {where} is not as long as it says; ask for it to be sent again.</source>
        <translation>{filename} in {where} ist nicht so lang, wie angegeben; lassen Sie sich die Datei noch einmal schicken.</translation>
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="133" />
        <location filename="../../documents/archive.py" line="246" />
        <source>{where} is damaged or cut short; ask for it to be sent again.</source>
        <translation>{where} ist beschädigt oder abgeschnitten; lassen Sie sich die Datei noch einmal schicken.</translation>
    </message>
    <message>
        <location filename="../../documents/cells.py" line="86" />
        <source>{where}, line {row}, column {column}, holds {cell!a} where a number belongs; ask for the file again.</source>
        <translation>{where}, Zeile {row}, Spalte {column}, enthält {cell!a}, wo eine Zahl stehen muss; bitten Sie noch einmal um die Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/cells.py" line="93" />
        <source>{where} holds cells that are no numbers; ask for the file again.</source>
        <translation>{where} enthält Zellen, die keine Zahlen sind; bitten Sie noch einmal um die Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/cells.py" line="117" />
        <source>{where}, line {row}, {name} is {value:g}, allowed are {low:g} to {high:g}; ask for the file again.</source>
        <translation>{where}, Zeile {row}: {name} ist {value:g}, erlaubt sind {low:g} bis {high:g}; bitten Sie noch einmal um die Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/cells.py" line="136" />
        <source>{where}, line {line}, has no time_s; ask for the file again.</source>
        <translation>{where}, Zeile {line}, hat kein time_s; bitten Sie noch einmal um die Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/cells.py" line="144" />
        <source>{where}, line {line}, time_s runs backwards; ask for the file again.</source>
        <translation>{where}, Zeile {line}: time_s läuft rückwärts; bitten Sie noch einmal um die Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/cells.py" line="154" />
        <source>{where} is too large: {found}, at most {allowed:,} are read; check that this is the right file.</source>
        <translation>{where} ist zu groß: {found}, gelesen werden höchstens {allowed:,}; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/joints.py" line="102" />
        <source>Shoulders and hips lie above each other where {up} points up; name the axis that points to the ceiling.</source>
        <translation>Wenn {up} nach oben zeigt, liegen Schultern und Hüften nicht übereinander, wie sie sollten; nennen Sie die Achse, die zur Decke zeigt.</translation>
    </message>
    <message>
        <location filename="../../documents/joints.py" line="155" />
        <source>{where} has no rows; check that this is the right file.</source>
        <translation>{where} hat keine Zeilen; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/joints.py" line="171" />
        <source>{where} never knows {lower}; the trunk must be in it.</source>
        <translation>{where} kennt {lower} nirgends; der Rumpf muss darin sein.</translation>
    </message>
    <message>
        <location filename="../../documents/landmarks.py" line="173" />
        <location filename="../../documents/joints.py" line="183" />
        <source>{where} names a column twice; check that this is the right file.</source>
        <translation>{where} nennt eine Spalte zweimal; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/joints.py" line="191" />
        <source>{where} has the unknown column {name!a}; columns are time_s and left_shoulder_x_m, left_shoulder_y_m and so on.</source>
        <translation>{where} hat die unbekannte Spalte {name!a}; Spalten sind time_s und left_shoulder_x_m, left_shoulder_y_m und so weiter.</translation>
    </message>
    <message>
        <location filename="../../documents/joints.py" line="203" />
        <source>{where} has no column {name}; add it, empty where it is not known.</source>
        <translation>{where} hat keine Spalte {name}; ergänzen Sie sie, leer, wo sie nicht bekannt ist.</translation>
    </message>
    <message>
        <location filename="../../documents/landmarks.py" line="127" />
        <source>{where} has rows without {name}; ask for the file again.</source>
        <translation>{where} hat Zeilen ohne {name}; bitten Sie noch einmal um die Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/landmarks.py" line="181" />
        <source>{where} has no column {name}; check that this is the right file.</source>
        <translation>{where} hat keine Spalte {name}; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/landmarks.py" line="193" />
        <source>{where} has the unknown column {name!a}; check that this is the right file.</source>
        <translation>{where} hat die unbekannte Spalte {name!a}; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="62" />
        <source>{where} names what the catalogue does not have: {unknown}; correct it or update the program.</source>
        <translation>{where} nennt, was der Katalog nicht hat: {unknown}; berichtigen Sie das oder aktualisieren Sie das Programm.</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="70" />
        <source>{where} asks for what cannot be measured: {impossible}; correct it.</source>
        <translation>{where} verlangt, was sich nicht messen lässt: {impossible}; berichtigen Sie das.</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="76" />
        <source>{where} contradicts itself: {contradiction}; correct it.</source>
        <translation>{where} widerspricht sich: {contradiction}; berichtigen Sie das.</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="100" />
        <source>exercise {count} is {name!r}</source>
        <translation>Übung {count} ist {name!r}</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="104" />
        <source>exercise {count} is {name!r}; the nearest names are {nearest}</source>
        <translation>Übung {count} ist {name!r}; die ähnlichsten Namen sind {nearest}</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="113" />
        <source>exercise {count} is {exercise}, {found}</source>
        <translation>Übung {count} ist {exercise}, {found}</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="119" />
        <source>exercise {count} has neither an exercise nor a movement</source>
        <translation>Übung {count} nennt weder eine Übung (exercise) noch eine Bewegung (movement)</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="123" />
        <source>exercise {count}, {exercise}, has a target_deg, but is only timed</source>
        <translation>Übung {count}, {exercise}, hat ein target_deg, geht aber nur nach Zeit</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="131" />
        <source>exercise {count} is {movement} in the position {position}, and {movement} is measured {ways}</source>
        <translation>Übung {count} ist {movement} in der Ausgangsstellung {position}, und {movement} wird so gemessen: {ways}</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="136" />
        <source>exercise {count} is {movement} in the position {position} from the {view}, and {movement} is measured {ways}</source>
        <translation>Übung {count} ist {movement} in der Ausgangsstellung {position}, gesehen von {view}, und {movement} wird so gemessen: {ways}</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="142" />
        <source>exercise {count}, {movement}, has a target_deg, but is not an angle</source>
        <translation>Übung {count}, {movement}, hat ein target_deg, ist aber kein Winkel</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="147" />
        <source>other side {count}, {movement}, has a value_deg, but is not an angle</source>
        <translation>Gegenseite {count}, {movement}, hat ein value_deg, ist aber kein Winkel</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="160" />
        <source>whose {field} is not measured and not {said}</source>
        <translation>deren {field} nicht gemessen wird und nicht {said} ist</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="164" />
        <source>whose {field} is {meant} and not left out</source>
        <translation>deren {field} {meant} ist und nicht fehlt</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="167" />
        <source>whose {field} is {meant} and not {said}</source>
        <translation>deren {field} {meant} ist und nicht {said}</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="176" />
        <source>it is for the {side} shoulder, and exercise {count} is for the other one</source>
        <translation>er ist für die Seite {side}, Übung {count} aber für die andere</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="180" />
        <source>exercise {count} names a day twice</source>
        <translation>Übung {count} nennt einen Tag zweimal</translation>
    </message>
    <message>
        <location filename="../../documents/plan.py" line="182" />
        <source>it is valid until {valid_until}, before it was issued on {issued_on}</source>
        <translation>er gilt bis {valid_until} und wurde erst danach ausgestellt, am {issued_on}</translation>
    </message>
    <message>
        <location filename="../../documents/readings.py" line="77" />
        <source>{where} does not begin with the columns {columns}; check that this is the right file.</source>
        <translation>{where} beginnt nicht mit den Spalten {columns}; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/readings.py" line="95" />
        <source>{where} has a planned_index that is no whole number; ask for it again.</source>
        <translation>{where} hat einen planned_index, der keine ganze Zahl ist; bitten Sie noch einmal um die Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/readings.py" line="140" />
        <source>{where}, line {line}, must have either a value with its error or a doubt; ask for the file again.</source>
        <translation>{where}, Zeile {line}, muss entweder einen Wert mit seinem Fehler oder einen Zweifel haben; bitten Sie noch einmal um die Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="31" />
        <source>{where} cannot be used: {explain}; correct it or ask for a new file.</source>
        <translation>{where} ist nicht zu gebrauchen: {explain}; berichtigen Sie das oder bitten Sie um eine neue Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="47" />
        <source>{field} is missing</source>
        <translation>{field} fehlt</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="48" />
        <source>{field} is not a known field</source>
        <translation>{field} ist kein bekanntes Feld</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="51" />
        <source>the content is {value}, allowed {allowed}</source>
        <translation>der Inhalt ist {value}, erlaubt {allowed}</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="53" />
        <source>{place} is {value}, allowed {allowed}</source>
        <translation>{place} ist {value}, erlaubt {allowed}</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="86" />
        <source>{allowed} or null</source>
        <translation>{allowed} oder null</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="94" />
        <source>are {names}</source>
        <translation>sind {names}</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="97" />
        <source>is {names}</source>
        <translation>ist {names}</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="100" />
        <source>is text of the form {pattern}</source>
        <translation>ist Text der Form {pattern}</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="104" />
        <source>is text of {least} to {max_length} characters</source>
        <translation>ist Text von {least} bis {max_length} Zeichen</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="109" />
        <source>is a list of {least} to {max_length} entries</source>
        <translation>ist eine Liste von {least} bis {max_length} Einträgen</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="113" />
        <source>is an object in braces</source>
        <translation>ist ein Objekt in geschweiften Klammern</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="115" />
        <source>is something else</source>
        <translation>ist etwas anderes</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="121" />
        <source>{place}, {inner}</source>
        <translation>{place}, {inner}</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="127" />
        <source>exercise {number}</source>
        <translation>Übung {number}</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="129" />
        <source>repetition {number}</source>
        <translation>Wiederholung {number}</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="131" />
        <source>other side {number}</source>
        <translation>Gegenseite {number}</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="133" />
        <source>entry {number}</source>
        <translation>Eintrag {number}</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="140" />
        <source>are whole numbers from {least} to {most}</source>
        <translation>sind ganze Zahlen von {least} bis {most}</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="146" />
        <source>are {least} to {most} seconds</source>
        <translation>sind {least} bis {most} Sekunden</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="148" />
        <source>are {least} to {most} degrees</source>
        <translation>sind {least} bis {most} Grad</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="150" />
        <source>are {least} to {most} pixels</source>
        <translation>sind {least} bis {most} Pixel</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="152" />
        <source>are {least} to {most} metres</source>
        <translation>sind {least} bis {most} Meter</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="154" />
        <source>are {least} to {most}</source>
        <translation>sind {least} bis {most}</translation>
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="159" />
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="88" />
        <source>{where} contradicts itself: {contradiction}; ask for a new file.</source>
        <translation>{where} widerspricht sich: {contradiction}; bitten Sie um eine neue Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="98" />
        <source>The session document</source>
        <translation>Das Sitzungsdokument</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="106" />
        <source>started_at {started_at} is no date of the calendar</source>
        <translation>started_at {started_at} ist kein Datum des Kalenders</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="110" />
        <source>started_at {started_at} is not from {first} to {last}</source>
        <translation>started_at {started_at} ist nicht von {first} bis {last}</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="114" />
        <source>exercise {count} is not in its plan</source>
        <translation>Übung {count} steht nicht im Plan</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="116" />
        <source>exercise {count} ends after the session</source>
        <translation>Übung {count} endet nach der Sitzung</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="120" />
        <source>exercise {count}, {found}</source>
        <translation>Übung {count}: {found}</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="126" />
        <source>it ends before it starts</source>
        <translation>sie endet, bevor sie beginnt</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="128" />
        <source>it has neither an exercise nor a movement</source>
        <translation>sie nennt weder eine Übung (exercise) noch eine Bewegung (movement)</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="130" />
        <source>it has measured repetitions without a movement</source>
        <translation>sie hat gemessene Wiederholungen ohne Bewegung</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="133" />
        <source>timed hold {number} was held for longer than it lasted</source>
        <translation>das {number}. Halten nach Zeit wurde länger gehalten, als es dauerte</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="137" />
        <source>timed hold {number} starts outside the exercise</source>
        <translation>das {number}. Halten nach Zeit beginnt außerhalb der Übung</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="144" />
        <source>repetition {number} of {movement} is in the unit {unit}</source>
        <translation>Wiederholung {number} von {movement} hat die Einheit {unit}</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="148" />
        <source>repetition {number} ends before it starts</source>
        <translation>Wiederholung {number} endet, bevor sie beginnt</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="152" />
        <source>repetition {number} was held for longer than it lasted</source>
        <translation>Wiederholung {number} wurde länger gehalten, als sie dauerte</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="156" />
        <source>repetition {number} starts before the exercise</source>
        <translation>Wiederholung {number} beginnt vor der Übung</translation>
    </message>
    <message>
        <location filename="../../documents/session.py" line="160" />
        <source>repetition {number} ends after the exercise</source>
        <translation>Wiederholung {number} endet nach der Übung</translation>
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="30" />
        <source>{where} is too large: {count:,} bytes, at most {max_bytes:,} are read; check that this is the right file.</source>
        <translation>{where} ist zu groß: {count:,} Byte, gelesen werden höchstens {max_bytes:,}; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="40" />
        <source>{where} is not UTF-8 text (byte {start}); check that this is the right file.</source>
        <translation>{where} ist kein UTF-8-Text (Byte {start}); prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="56" />
        <source>{where} is not valid JSON (line {lineno}, column {colno}); ask for it to be sent again.</source>
        <translation>{where} ist kein gültiges JSON (Zeile {lineno}, Spalte {colno}); lassen Sie sich die Datei noch einmal schicken.</translation>
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="70" />
        <source>{where} is nested more than {max_depth} levels deep, which no file of this kind is; check that this is the right file.</source>
        <translation>{where} ist mehr als {max_depth} Ebenen tief verschachtelt, was keine Datei dieser Art ist; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="83" />
        <source>{where} gives {key} twice in one place, so it is not clear which counts; remove one of them.</source>
        <translation>{where} nennt {key} an einer Stelle zweimal, sodass nicht klar ist, was gilt; nehmen Sie eines davon heraus.</translation>
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="95" />
        <source>{where} holds {name} where a number belongs; correct that value.</source>
        <translation>In {where} steht {name}, wo eine Zahl hingehört; berichtigen Sie diesen Wert.</translation>
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="118" />
        <source>{where} holds a text with control characters or unseen ones ({value}); take them out.</source>
        <translation>{where} enthält einen Text mit Steuerzeichen oder unsichtbaren Zeichen ({value}); nehmen Sie sie heraus.</translation>
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="136" />
        <source>an object</source>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="138" />
        <source>a list of {count}</source>
        <translation>eine Liste von {count}</translation>
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="115" />
        <source>{where}, line {row}, {column} is {cell!a}, allowed are {known}; ask for the file again.</source>
        <translation>{where}, Zeile {row}: {column} ist {cell!a}, erlaubt sind {known}; bitten Sie noch einmal um die Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="142" />
        <source>{count:,} bytes</source>
        <translation>{count:,} Byte</translation>
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="146" />
        <source>{count:,} rows</source>
        <translation>{count:,} Zeilen</translation>
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="152" />
        <source>{count:,} columns</source>
        <translation>{count:,} Spalten</translation>
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="158" />
        <source>{count:,} cells</source>
        <translation>{count:,} Zellen</translation>
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="191" />
        <source>{where} is not UTF-8 text; check that this is the right file.</source>
        <translation>{where} ist kein UTF-8-Text; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="213" />
        <source>{where}, line {number}, has {count} cells where the header has {header}; ask for the file again.</source>
        <translation>{where}, Zeile {number}, hat {count} Zellen, die Kopfzeile aber {header}; bitten Sie noch einmal um die Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/versions.py" line="24" />
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <location filename="../../documents/versions.py" line="27" />
        <source>{where} is not of the format {name} (its format is {said}); check that this is the right file.</source>
        <translation>{where} hat nicht das Format {name} (sein Format: {said}); prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../documents/versions.py" line="36" />
        <source>{where} has the version {version}, allowed are whole numbers from 1 to {newest}; ask for a new file.</source>
        <translation>{where} hat die Version {version}, erlaubt sind ganze Zahlen von 1 bis {newest}; bitten Sie um eine neue Datei.</translation>
    </message>
    <message>
        <location filename="../../documents/versions.py" line="44" />
        <source>{where} was made by a newer version of this program (file version {version}, known up to {newest}); update the program to open it.</source>
        <translation>{where} stammt von einer neueren Version dieses Programms (Dateiversion {version}, bekannt bis {newest}); aktualisieren Sie das Programm, um die Datei zu öffnen.</translation>
    </message>
    <message>
        <location filename="../../domain/movement.py" line="141" />
        <source>No place of the camera measures {movement} in the position {position}; choose {measurable}.</source>
        <translation>Von keinem Platz aus misst die Kamera {movement} in der Position {position}; wählen Sie {measurable}.</translation>
    </message>
    <message>
        <location filename="../../domain/movement.py" line="152" />
        <source>{position} from the {views}</source>
        <translation>{position} von {views}</translation>
    </message>
    <message>
        <location filename="../../domain/movement.py" line="164" />
        <source>{first} or {last}</source>
        <translation>{first} oder {last}</translation>
    </message>
    <message>
        <location filename="../../domain/plan.py" line="88" />
        <source>The exercise {exercise} is timed and not measured.</source>
        <translation>Die Übung {exercise} läuft nach Zeit und wird nicht gemessen.</translation>
    </message>
    <message>
        <location filename="../../domain/practice.py" line="151" />
        <source>{field} is {value}, allowed are the years {first} to {last}</source>
        <translation>{field} ist {value}, erlaubt sind die Jahre {first} bis {last}</translation>
    </message>
    <message>
        <location filename="../../domain/practice.py" line="157" />
        <source>{movement} is not an angle and has no value_deg</source>
        <translation>{movement} ist kein Winkel und hat kein value_deg</translation>
    </message>
    <message>
        <location filename="../../domain/practice.py" line="160" />
        <source>total is {total}, more than the maximum {maximum}</source>
        <translation>die Punktzahl ist {total}, mehr als das Maximum {maximum}</translation>
    </message>
    <message>
        <location filename="../../domain/practice.py" line="164" />
        <source>maximum is 0, allowed is more</source>
        <translation>das Maximum ist 0, erlaubt ist mehr</translation>
    </message>
    <message>
        <location filename="../../domain/session.py" line="89" />
        <source>The exercise {exercise} was timed and not measured.</source>
        <translation>Die Übung {exercise} lief nach Zeit und wurde nicht gemessen.</translation>
    </message>
    <message>
        <location filename="../../exchange/codes.py" line="40" />
        <source>The file of codes</source>
        <translation>Die Datei der Codes</translation>
    </message>
    <message>
        <location filename="../../exchange/codes.py" line="45" />
        <source>{where} cannot be used ({error}): install the program again.</source>
        <translation>{where} lässt sich nicht benutzen ({error}): Installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../exchange/codes.py" line="53" />
        <source>{where} gives a name twice: install the program again.</source>
        <translation>{where} nennt einen Namen zweimal: Installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../exchange/codes.py" line="72" />
        <source>The code {name!r} was never confirmed: write text in its place.</source>
        <translation>Der Code {name!r} wurde nie bestätigt: Schreiben Sie an seiner Stelle Text.</translation>
    </message>
    <message>
        <location filename="../../exchange/codes.py" line="79" />
        <source>The code {name!r} {withheld}: write text in its place.</source>
        <translation>Der Code {name!r} wird nicht geschrieben ({withheld}): Schreiben Sie an seiner Stelle Text.</translation>
    </message>
    <message>
        <location filename="../../exchange/fhir.py" line="60" />
        <source>There is no session to export: import session files first.</source>
        <translation>Es gibt keine Sitzung, die sich ausgeben ließe: Lesen Sie zuerst Sitzungsdateien ein.</translation>
    </message>
    <message>
        <location filename="../../exchange/parquet.py" line="41" />
        <source>Parquet is written by pyarrow, which is not installed; export another kind, or export from a program that was installed with pip install 'stiff-shoulder-coach[parquet]'.</source>
        <translation>Parquet wird von pyarrow geschrieben, und das ist nicht installiert; wählen Sie eine andere Art der Ausgabe oder exportieren Sie aus einem Programm, das mit pip install 'stiff-shoulder-coach[parquet]' installiert wurde.</translation>
    </message>
    <message>
        <location filename="../../pose/bundle.py" line="37" />
        <source>The pose model '{name}' is missing (looked in {places}); install the program again.</source>
        <translation>Das Posenmodell „{name}“ fehlt (gesucht in {places}); installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../pose/bundle.py" line="55" />
        <source>The pose model '{path}' cannot be read ({reason}); install the program again.</source>
        <translation>Das Posenmodell „{path}“ lässt sich nicht lesen ({reason}); installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../pose/bundle.py" line="63" />
        <source>The pose model '{path}' is not the one that belongs to this program (its SHA-256 is {found}..., {expected}... is expected), so it was not used; install the program again.</source>
        <translation>Das Posenmodell „{path}“ ist nicht das, das zu diesem Programm gehört (sein SHA-256 ist {found}..., erwartet wird {expected}...), und wurde deshalb nicht benutzt; installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../pose/bundle.py" line="79" />
        <source>The list of pose models '{path}' cannot be read ({reason}); install the program again.</source>
        <translation>Die Liste der Posenmodelle „{path}“ lässt sich nicht lesen ({reason}); installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../pose/bundle.py" line="90" />
        <source>The list of pose models '{manifest_path}' is damaged; install the program again.</source>
        <translation>Die Liste der Posenmodelle „{manifest_path}“ ist beschädigt; installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../pose/bundle.py" line="96" />
        <source>The pose model '{name}' is not in the list of models '{manifest_path}'; install the program again.</source>
        <translation>Das Posenmodell „{name}“ steht nicht in der Liste „{manifest_path}“; installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../pose/landmarker.py" line="56" />
        <source>The pose model cannot be started ({error}); install the program again.</source>
        <translation>Das Posenmodell lässt sich nicht starten ({error}); installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../pose/library.py" line="27" />
        <source>The pose model's library MediaPipe cannot be loaded ({error}); install what it misses, or the program again.</source>
        <translation>MediaPipe, die Bibliothek des Posenmodells, lässt sich nicht laden ({error}); installieren Sie, was ihr fehlt, oder das Programm neu.</translation>
    </message>
    <message>
        <location filename="../../review/history.py" line="102" />
        <source>Session {session} says it began at '{time}', which is no ISO 8601 time with a zone offset: ask the patient to send the file again</source>
        <translation>Sitzung {session} nennt als Beginn „{time}“; das ist keine Zeit nach ISO 8601 mit Zeitzone: Bitten Sie die Person, die Datei noch einmal zu senden</translation>
    </message>
    <message>
        <location filename="../../review/history.py" line="141" />
        <source>Sessions of {count} patients cannot be one history: review each code alone</source>
        <translation>Sitzungen von {count} Personen ergeben keinen gemeinsamen Verlauf: Sehen Sie jeden Code für sich an</translation>
    </message>
    <message>
        <location filename="../../review/replay.py" line="133" />
        <source>The session of {started_at} has no repetition {number} of exercise {exercise}; choose another one.</source>
        <translation>Die Sitzung vom {started_at} hat keine Wiederholung {number} der Übung {exercise}; wählen Sie eine andere.</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="154" />
        <source>There is no session to report on: import session files first.</source>
        <translation>Es gibt keine Sitzung, über die zu berichten wäre: Lesen Sie zuerst Sitzungsdateien ein.</translation>
    </message>
    <message>
        <location filename="../../session/assemble.py" line="81" />
        <source>The session's journal has no beginning, so no session can be made of it.</source>
        <translation>Dem Protokoll der Sitzung fehlt der Anfang, deshalb lässt sich keine Sitzung daraus machen.</translation>
    </message>
    <message>
        <location filename="../../session/assemble.py" line="108" />
        <source>The session's journal begins twice, so no session can be made of it.</source>
        <translation>Das Protokoll der Sitzung beginnt zweimal, deshalb lässt sich keine Sitzung daraus machen.</translation>
    </message>
    <message>
        <location filename="../../session/assemble.py" line="182" />
        <source>The session's journal tells of an exercise that is not in its plan.</source>
        <translation>Das Protokoll der Sitzung erzählt von einer Übung, die nicht in ihrem Plan steht.</translation>
    </message>
    <message>
        <location filename="../../storage/diary_files.py" line="44" />
        <source>{name} holds more than {most_files:,} session files, and only the newest are shown; move old ones to another folder.</source>
        <translation>{name} enthält mehr als {most_files:,} Sitzungsdateien, und nur die neuesten werden gezeigt; verschieben Sie alte in einen anderen Ordner.</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="19" />
        <source>{name} could not be saved</source>
        <translation>{name} ließ sich nicht speichern</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="20" />
        <source>{name} could not be made</source>
        <translation>{name} ließ sich nicht anlegen</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="21" />
        <source>{name} could not be read</source>
        <translation>{name} ließ sich nicht lesen</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="22" />
        <source>{name} could not be read back</source>
        <translation>{name} ließ sich nicht zurücklesen</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="23" />
        <source>{name} could not be opened</source>
        <translation>{name} ließ sich nicht öffnen</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="24" />
        <source>{name} could not be locked</source>
        <translation>{name} ließ sich nicht sperren</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="25" />
        <source>{name} could not be begun</source>
        <translation>{name} ließ sich nicht beginnen</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="26" />
        <source>{name} could not be written</source>
        <translation>{name} ließ sich nicht schreiben</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="27" />
        <source>{name} could not be recovered</source>
        <translation>{name} ließ sich nicht wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="35" />
        <source>the disk of {folder} is full; free some space there.</source>
        <translation>Der Datenträger von {folder} ist voll; schaffen Sie dort Platz.</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="37" />
        <source>{folder} may not be written to; choose another folder.</source>
        <translation>In {folder} darf nicht geschrieben werden; wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="39" />
        <source>{path} is not there; look whether it was moved or removed.</source>
        <translation>{path} ist nicht da; sehen Sie nach, ob es verschoben oder entfernt wurde.</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="41" />
        <source>{path} is not a file in a folder; choose another place.</source>
        <translation>{path} ist keine Datei in einem Ordner; wählen Sie einen anderen Ort.</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="43" />
        <source>its name is too long; choose a shorter one.</source>
        <translation>Der Name ist zu lang; wählen Sie einen kürzeren.</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="45" />
        <source>the disk of {folder} failed; choose another disk.</source>
        <translation>Der Datenträger von {folder} hat versagt; wählen Sie einen anderen.</translation>
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="47" />
        <source>the folder {folder} does not let it ({reason}); try another.</source>
        <translation>Der Ordner {folder} lässt es nicht zu ({reason}); versuchen Sie einen anderen.</translation>
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="105" />
        <location filename="../../storage/disk_fault.py" line="50" />
        <source>no reason given</source>
        <translation>kein Grund angegeben</translation>
    </message>
    <message>
        <location filename="../../storage/folders.py" line="63" />
        <source>'{out}' is the store itself; choose another name for the export.</source>
        <translation>„{out}“ ist die Datenbank selbst; wählen Sie für die Ausgabe einen anderen Namen.</translation>
    </message>
    <message>
        <location filename="../../storage/journal_lines.py" line="90" />
        <source>{where} was made by a newer version of this program; update the program to recover that session.</source>
        <translation>{where} stammt von einer neueren Version dieses Programms; aktualisieren Sie das Programm, um diese Sitzung wiederherzustellen.</translation>
    </message>
    <message>
        <location filename="../../storage/key_lock.py" line="27" />
        <source>{path} asks for more memory and time to be opened than a practice key needs; take your backup.</source>
        <translation>{path} verlangt zum Öffnen mehr Arbeitsspeicher und Zeit, als ein Praxisschlüssel braucht; nehmen Sie Ihre Sicherung.</translation>
    </message>
    <message>
        <location filename="../../storage/key_lock.py" line="42" />
        <source>{path} cannot be opened while this computer is so busy: close other programs and try again.</source>
        <translation>{path} lässt sich nicht öffnen, solange dieser Rechner so beschäftigt ist: Schließen Sie andere Programme, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../storage/keys.py" line="74" />
        <source>The public key in {path} is missing: unlock the practice's key once to write it anew.</source>
        <translation>Der öffentliche Schlüssel in {path} fehlt: Entsperren Sie den Praxisschlüssel einmal, um ihn neu zu schreiben.</translation>
    </message>
    <message>
        <location filename="../../storage/keys.py" line="85" />
        <source>The public key in {path} is damaged: unlock the practice's key once to write it anew.</source>
        <translation>Der öffentliche Schlüssel in {path} ist beschädigt: Entsperren Sie den Praxisschlüssel einmal, um ihn neu zu schreiben.</translation>
    </message>
    <message>
        <location filename="../../storage/keys.py" line="112" />
        <source>There is no practice key at {path}: make one with 'coach key make', or restore the one from your backup with 'coach key restore FILE'.</source>
        <translation>Unter {path} ist kein Praxisschlüssel: Legen Sie einen mit „coach key make“ an, oder holen Sie den aus Ihrer Sicherung mit „coach key restore FILE“ zurück.</translation>
    </message>
    <message>
        <location filename="../../storage/keys.py" line="150" />
        <source>There is another practice key at {path} that is not in {backup}, and files may be sealed for it: take a newer backup, or move the key to a safe place first.</source>
        <translation>Unter {path} ist ein anderer Praxisschlüssel, der nicht in {backup} steht, und für ihn können Dateien versiegelt sein: Nehmen Sie eine neuere Sicherung, oder bringen Sie den Schlüssel zuerst an einen sicheren Ort.</translation>
    </message>
    <message>
        <location filename="../../storage/keys.py" line="171" />
        <source>There is a practice key at {path} of which nobody can say whether the backup has it: unlock it once, or move it to a safe place first.</source>
        <translation>Unter {path} ist ein Praxisschlüssel, von dem niemand sagen kann, ob die Sicherung ihn enthält: Entsperren Sie ihn einmal, oder bringen Sie ihn zuerst an einen sicheren Ort.</translation>
    </message>
    <message>
        <location filename="../../storage/keys.py" line="190" />
        <source>{path} does not open: type the passphrase again, and if it is right the file is damaged or no practice key, so take your backup.</source>
        <translation>{path} lässt sich nicht öffnen: Tippen Sie die Passphrase noch einmal; stimmt sie, dann ist die Datei beschädigt oder kein Praxisschlüssel, und Sie nehmen Ihre Sicherung.</translation>
    </message>
    <message>
        <location filename="../../storage/keys.py" line="201" />
        <source>More than {most_keys} practice keys cannot be kept in one file.</source>
        <translation>Mehr als {most_keys} Praxisschlüssel passen nicht in eine Datei.</translation>
    </message>
    <message>
        <location filename="../../storage/keys.py" line="216" />
        <source>There is a file at {path} already: choose another name.</source>
        <translation>Unter {path} ist schon eine Datei: Wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <location filename="../../storage/passphrase.py" line="20" />
        <source>The passphrase has {used} characters and needs {fewest_characters}: string four or five words together that do not belong together.</source>
        <translation>Die Passphrase hat {used} Zeichen und braucht {fewest_characters}: Reihen Sie vier oder fünf Wörter aneinander, die nicht zusammengehören.</translation>
    </message>
    <message>
        <location filename="../../storage/passphrase.py" line="38" />
        <source>The passphrase has a control character or more than {most_characters:,} characters: type it anew, without line breaks.</source>
        <translation>Die Passphrase enthält ein Steuerzeichen oder hat mehr als {most_characters:,} Zeichen: Tippen Sie sie neu, ohne Zeilenumbruch.</translation>
    </message>
    <message>
        <location filename="../../storage/recovery.py" line="98" />
        <source>The session of {started} was interrupted; what was done is kept in {name}.</source>
        <translation>Die Sitzung vom {started} wurde unterbrochen; was getan wurde, ist in {name} aufgehoben.</translation>
    </message>
    <message>
        <location filename="../../storage/recovery.py" line="102" />
        <source>The session of {started} is saved now, as {name}.</source>
        <translation>Die Sitzung vom {started} ist jetzt gespeichert, als {name}.</translation>
    </message>
    <message>
        <location filename="../../storage/recovery.py" line="115" />
        <source>A session's journal could not be read from its first line on; it is kept as {aside}.</source>
        <translation>Das Protokoll einer Sitzung ließ sich schon ab der ersten Zeile nicht lesen; es liegt nun als {aside}.</translation>
    </message>
    <message>
        <location filename="../../storage/running.py" line="36" />
        <source>The coach is running already: go to its window, or close it and start again.</source>
        <translation>Das Programm läuft schon: Gehen Sie zu seinem Fenster, oder schließen Sie es und starten Sie neu.</translation>
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="61" />
        <source>The practice's key in the plan is mistyped or cut short, so that no session could be sealed: ask the practice for the plan again.</source>
        <translation>Der Praxisschlüssel im Plan ist vertippt oder abgeschnitten, sodass sich keine Sitzung versiegeln ließe: Bitten Sie die Praxis noch einmal um den Plan.</translation>
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="86" />
        <source>{where} is too large for a sealed session file: at most {max_sealed_bytes:,} bytes are read; check that this is the right file.</source>
        <translation>{where} ist zu groß für eine versiegelte Sitzungsdatei: gelesen werden höchstens {max_sealed_bytes:,} Byte; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="95" />
        <source>{where} is not a sealed session file; check that this is the right file.</source>
        <translation>{where} ist keine versiegelte Sitzungsdatei; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="102" />
        <source>{where} is cut short, or has a longer beginning than this program writes; ask for it to be sent again.</source>
        <translation>{where} ist abgeschnitten oder hat einen längeren Anfang, als dieses Programm schreibt; lassen Sie sich die Datei noch einmal schicken.</translation>
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="110" />
        <source>{where} was sealed for others beside this practice, which this program never does; ask for the original file.</source>
        <translation>{where} wurde außer für diese Praxis auch für andere versiegelt, was dieses Programm nie tut; bitten Sie um die ursprüngliche Datei.</translation>
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="125" />
        <source>{where} was not sealed for this practice's key or an older one of it, or was changed on its way; check that the patient's plan has this practice's key, and ask for it to be sent again.</source>
        <translation>{where} wurde nicht für den Schlüssel dieser Praxis oder einen älteren von ihr versiegelt oder unterwegs verändert; prüfen Sie, ob der Plan der Person den Schlüssel dieser Praxis hat, und lassen Sie sich die Datei noch einmal schicken.</translation>
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="149" />
        <source>{name} is sealed: unlock the practice's key, then import it again.</source>
        <translation>{name} ist versiegelt: Entsperren Sie den Praxisschlüssel, und lesen Sie die Datei dann noch einmal ein.</translation>
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="189" />
        <source>The session could not be saved: {folder} has other files of its name; choose another folder.</source>
        <translation>Die Sitzung ließ sich nicht speichern: In {folder} liegen andere Dateien dieses Namens; wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="43" />
        <source>The session of {started_at} could not be saved: {folder} has other files of its name; choose another folder.</source>
        <translation>Die Sitzung vom {started_at} ließ sich nicht speichern: In {folder} liegen andere Dateien dieses Namens; wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="66" />
        <source>{path} is a folder or device; choose a {kind}.</source>
        <translation>{path} ist ein Ordner oder Gerät; gebraucht wird: {kind}.</translation>
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="68" />
        <source>{path} is not there; choose a {kind}.</source>
        <translation>{path} ist nicht da; gebraucht wird: {kind}.</translation>
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="76" />
        <source>{name} is too large for a {kind}: at most {max_bytes:,} bytes are read; check that this is the right file.</source>
        <translation>{name} ist zu groß ({kind}): gelesen werden höchstens {max_bytes:,} Byte; prüfen Sie, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="105" />
        <source>session file</source>
        <translation>Sitzungsdatei</translation>
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="106" />
        <source>plan file</source>
        <translation>Plandatei</translation>
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="107" />
        <source>landmark table</source>
        <translation>Tabelle von Körperpunkten</translation>
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="108" />
        <source>table of joint centres</source>
        <translation>Tabelle von Gelenkmitten</translation>
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="109" />
        <source>list of lenses</source>
        <translation>Liste von Linsen</translation>
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="110" />
        <source>public key</source>
        <translation>öffentlicher Schlüssel</translation>
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="111" />
        <source>practice key</source>
        <translation>Praxisschlüssel</translation>
    </message>
    <message>
        <location filename="../../storage/store.py" line="99" />
        <source>{file_name} has {original} MB, more than a session file can have: ask the patient to send it again.</source>
        <translation>{file_name} hat {original} MB, mehr als eine Sitzungsdatei haben kann: Bitten Sie die Person, sie noch einmal zu senden.</translation>
    </message>
    <message>
        <location filename="../../storage/store.py" line="108" />
        <source>{file_name} says it began on {date}, which cannot be: check the clock of the patient's computer.</source>
        <translation>{file_name} nennt als Beginn den {date}, und das kann nicht sein: Prüfen Sie die Uhr auf dem Rechner der Person.</translation>
    </message>
    <message>
        <location filename="../../storage/store.py" line="123" />
        <source>{file_name} has the number of a session that is here already, but other contents: ask the patient which of the two files is right.</source>
        <translation>{file_name} hat die Nummer einer Sitzung, die schon hier ist, aber anderen Inhalt: Fragen Sie die Person, welche der beiden Dateien die richtige ist.</translation>
    </message>
    <message>
        <location filename="../../storage/store_backup.py" line="42" />
        <source>The store at {path} could not be copied before its upgrade ({error}): free some space there and try again.</source>
        <translation>Die Datenbank unter {path} ließ sich vor der Aktualisierung nicht kopieren ({error}): Schaffen Sie dort Platz, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../storage/store_backup.py" line="69" />
        <source>The store at {path} was harmed by its upgrade ({error}): put its backup copy of the folder {folder} in its place.</source>
        <translation>Die Datenbank unter {path} wurde bei der Aktualisierung beschädigt ({error}): Setzen Sie ihre Sicherungskopie aus dem Ordner {folder} an ihre Stelle.</translation>
    </message>
    <message>
        <location filename="../../storage/store_checks.py" line="45" />
        <source>{field} is {on}, which is yet to come</source>
        <translation>{field} ist {on} und liegt in der Zukunft</translation>
    </message>
    <message>
        <location filename="../../storage/store_checks.py" line="55" />
        <source>The {name} was not kept: {what}; correct it.</source>
        <translation>Nicht gespeichert ({name}): {what}; berichtigen Sie es.</translation>
    </message>
    <message>
        <location filename="../../storage/store_checks.py" line="66" />
        <source>{field} holds a control or unseen character ({value})</source>
        <translation>{field} enthält ein Steuerzeichen oder ein unsichtbares Zeichen ({value})</translation>
    </message>
    <message>
        <location filename="../../storage/store_checks.py" line="77" />
        <source>plan is no plan of this version</source>
        <translation>plan ist kein Plan dieser Version</translation>
    </message>
    <message>
        <location filename="../../storage/store_checks.py" line="84" />
        <source>its plan has the {field} {other} and not {said}</source>
        <translation>im Plan steht {field} {other} und nicht {said}</translation>
    </message>
    <message>
        <location filename="../../storage/store_database.py" line="76" />
        <source>At {store} is a database, but no store of this program: choose another.</source>
        <translation>Unter {store} ist eine Datenbank, aber keine dieses Programms: Wählen Sie eine andere.</translation>
    </message>
    <message>
        <location filename="../../storage/store_database.py" line="83" />
        <source>The store at {store} has version {version} and this program knows up to {store_version}: install the newer program.</source>
        <translation>Die Datenbank unter {store} hat Version {version}, und dieses Programm kennt Versionen bis {store_version}: Installieren Sie das neuere Programm.</translation>
    </message>
    <message>
        <location filename="../../storage/store_doubt.py" line="27" />
        <source>The session names {patient_code}, whom the practice does not know, and it knows {alike}: make sure whose session it is.</source>
        <translation>Die Sitzung nennt {patient_code}; die Praxis kennt diesen Code nicht, wohl aber {alike}: Klären Sie, wessen Sitzung es ist.</translation>
    </message>
    <message>
        <location filename="../../storage/store_doubt.py" line="38" />
        <source>The session names revision {revision} of a plan and {patient_code} was given {revisions}: make sure whose session it is.</source>
        <translation>Die Sitzung nennt die Fassung {revision} eines Plans, und {patient_code} bekam {revisions}: Klären Sie, wessen Sitzung es ist.</translation>
    </message>
    <message>
        <location filename="../../storage/store_doubt.py" line="48" />
        <source>The session is of the other side than revision {revision} of the plan of {patient_code}, which is for the {side}: make sure whose session it is.</source>
        <translation>Die Sitzung gilt der anderen Seite als die Fassung {revision} des Plans von {patient_code} (Seite: {side}): Klären Sie, wessen Sitzung es ist.</translation>
    </message>
    <message>
        <location filename="../../storage/store_doubt.py" line="55" />
        <source>The session began on {day} and revision {revision} of the plan of {patient_code} was issued on {issued_on}: make sure whose session it is.</source>
        <translation>Die Sitzung begann am {day}, und die Fassung {revision} des Plans von {patient_code} wurde am {issued_on} ausgegeben: Klären Sie, wessen Sitzung es ist.</translation>
    </message>
    <message>
        <location filename="../../storage/store_doubts.py" line="101" />
        <source>The doubt about the session of {date} was decided at another desk meanwhile: look at it again.</source>
        <translation>Der Zweifel an der Sitzung vom {date} wurde inzwischen an einem anderen Arbeitsplatz entschieden: Sehen Sie noch einmal nach.</translation>
    </message>
    <message>
        <location filename="../../storage/store_engine.py" line="46" />
        <source>The store at {name} is on a server, which no passphrase of this program locks: open it without one.</source>
        <translation>Die Datenbank unter {name} ist auf einem Server, den keine Passphrase dieses Programms sperrt: Öffnen Sie sie ohne.</translation>
    </message>
    <message>
        <location filename="../../storage/store_engine.py" line="56" />
        <source>The store at {name} needs the driver of PostgreSQL: install it with pip install 'stiff-shoulder-coach[postgres]'.</source>
        <translation>Die Datenbank unter {name} braucht den Treiber von PostgreSQL: Installieren Sie ihn mit pip install 'stiff-shoulder-coach[postgres]'.</translation>
    </message>
    <message>
        <location filename="../../storage/store_engine.py" line="131" />
        <source>The store's URL cannot be read: write it as postgresql://user@host/database.</source>
        <translation>Die URL der Datenbank ist nicht zu lesen: Schreiben Sie sie als postgresql://user@host/database.</translation>
    </message>
    <message>
        <location filename="../../storage/store_engine.py" line="138" />
        <source>A store cannot be kept behind a URL of {drivername}: name a file, or a database as postgresql://user@host/database.</source>
        <translation>Hinter einer URL von {drivername} lässt sich keine Datenbank dieses Programms halten: Nennen Sie eine Datei, oder eine Datenbank als postgresql://user@host/database.</translation>
    </message>
    <message>
        <location filename="../../storage/store_engine.py" line="159" />
        <source>The store cannot be opened at {path} ({strerror}): choose a folder in which you may write.</source>
        <translation>Die Datenbank lässt sich unter {path} nicht öffnen ({strerror}): Wählen Sie einen Ordner, in den Sie schreiben dürfen.</translation>
    </message>
    <message>
        <location filename="../../storage/store_fit.py" line="19" />
        <source>There is a person with the code {code} already: choose another code.</source>
        <translation>Eine Person mit dem Code {code} gibt es schon: Wählen Sie einen anderen Code.</translation>
    </message>
    <message>
        <location filename="../../storage/store_fit.py" line="30" />
        <source>{code} was given a plan of revision {revision} already: issue it as the next revision.</source>
        <translation>{code} bekam schon einen Plan der Fassung {revision}: Geben Sie ihn als nächste Fassung aus.</translation>
    </message>
    <message>
        <location filename="../../storage/store_fit.py" line="52" />
        <source>The {name_of} belongs to another person than {code}: add it anew to the right one, and remove this one.</source>
        <translation>Dieser Eintrag ({name_of}) gehört einer anderen Person als {code}: Legen Sie ihn bei der richtigen neu an, und entfernen Sie diesen.</translation>
    </message>
    <message>
        <location filename="../../storage/store_fit.py" line="64" />
        <source>The code {code} stands in the person's sessions and records and cannot become {new_code}: add a new person instead.</source>
        <translation>Der Code {code} steht in Sitzungen und Einträgen der Person und kann nicht zu {new_code} werden: Legen Sie stattdessen eine neue Person an.</translation>
    </message>
    <message>
        <location filename="../../storage/store_fit.py" line="78" />
        <source>The {name_of} names an episode that {code} does not have: choose one of the person's own.</source>
        <translation>Dieser Eintrag ({name_of}) nennt eine Episode, die {code} nicht hat: Wählen Sie eine der eigenen.</translation>
    </message>
    <message>
        <location filename="../../storage/store_fit.py" line="89" />
        <source>The {name_of} of {code} was changed or removed at another desk meanwhile: look at it again and repeat the change.</source>
        <translation>Der Eintrag ({name_of}) von {code} wurde inzwischen an einem anderen Arbeitsplatz geändert oder entfernt: Sehen Sie noch einmal nach, und wiederholen Sie die Änderung.</translation>
    </message>
    <message>
        <location filename="../../storage/store_import.py" line="60" />
        <source>There are more than {most_files} session files in {path}: import a smaller folder at a time.</source>
        <translation>In {path} sind mehr als {most_files} Sitzungsdateien: Lesen Sie jeweils einen kleineren Ordner ein.</translation>
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="73" />
        <source>There is no person with the code {code} in the store: add the person first.</source>
        <translation>In der Datenbank gibt es keine Person mit dem Code {code}: Legen Sie die Person zuerst an.</translation>
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="53" />
        <source>The store at {path} is not locked: open it without a passphrase.</source>
        <translation>Die Datenbank unter {path} ist nicht gesperrt: Öffnen Sie sie ohne Passphrase.</translation>
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="83" />
        <source>There is no store at {path} to lock; open it once to make it.</source>
        <translation>Unter {path} ist keine Datenbank zum Sperren; öffnen Sie sie einmal, um sie anzulegen.</translation>
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="90" />
        <source>The store at {path} is locked already; look which passphrase is meant.</source>
        <translation>Die Datenbank unter {path} ist schon gesperrt; prüfen Sie, welche Passphrase gemeint ist.</translation>
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="94" />
        <source>The store at {path} is not locked already; look which passphrase is meant.</source>
        <translation>Die Datenbank unter {path} ist gar nicht gesperrt; prüfen Sie, welche Passphrase gemeint ist.</translation>
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="118" />
        <source>The store at {path} could not be locked ({error}) and is as it was: close every other program that has it open, see that there is room for a copy, and try again.</source>
        <translation>Die Datenbank unter {path} ließ sich nicht sperren ({error}) und ist, wie sie war: Schließen Sie jedes andere Programm, das sie offen hat, sorgen Sie für Platz für eine Kopie, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="154" />
        <source>the copy does not read back</source>
        <translation>die Kopie lässt sich nicht zurücklesen</translation>
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="171" />
        <source>The store at {path} does not open: type the passphrase again, and if it is right the file is damaged, so put a backup copy in its place.</source>
        <translation>Die Datenbank unter {path} lässt sich nicht öffnen: Tippen Sie die Passphrase noch einmal; stimmt sie, dann ist die Datei beschädigt, und Sie setzen eine Sicherungskopie an ihre Stelle.</translation>
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="179" />
        <source>The store at {path} cannot be opened ({error}): close every other program that has it open, and try again.</source>
        <translation>Die Datenbank unter {path} lässt sich nicht öffnen ({error}): Schließen Sie jedes andere Programm, das sie offen hat, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../storage/store_practice.py" line="80" />
        <source>{code} has sessions or records in the store: erase the person with all of them, or leave the person in.</source>
        <translation>{code} hat Sitzungen oder Einträge in der Datenbank: Löschen Sie die Person mit allem, oder lassen Sie sie stehen.</translation>
    </message>
    <message>
        <location filename="../../storage/store_sessions.py" line="37" />
        <source>A session of {code} in the store at {store} is damaged ({fault}): put a backup copy in its place.</source>
        <translation>Eine Sitzung von {code} in der Datenbank unter {store} ist beschädigt ({fault}): Setzen Sie eine Sicherungskopie der Datenbank an ihre Stelle.</translation>
    </message>
    <message>
        <location filename="../../storage/store_sessions.py" line="51" />
        <source>There is no session {session_id} in the store at {store}: import its file.</source>
        <translation>In der Datenbank unter {store} gibt es keine Sitzung {session_id}: Lesen Sie ihre Datei ein.</translation>
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="32" />
        <source>The store at {name} holds something that this program did not write, or is damaged ({error}): put a backup copy in its place.</source>
        <translation>Die Datenbank unter {name} enthält etwas, das dieses Programm nicht geschrieben hat, oder ist beschädigt ({error}): Setzen Sie eine Sicherungskopie an ihre Stelle.</translation>
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="47" />
        <source>The store at {name} is in use by another program: close that one and try again.</source>
        <translation>Die Datenbank unter {name} wird von einem anderen Programm benutzt: Schließen Sie das, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="52" />
        <source>There is no room left for the store at {name}: free some space and try again.</source>
        <translation>Für die Datenbank unter {name} ist kein Platz mehr: Schaffen Sie Platz, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="76" />
        <location filename="../../storage/store_words.py" line="57" />
        <source>The store at {name} cannot be written: ask for the right to write there.</source>
        <translation>In die Datenbank unter {name} lässt sich nicht schreiben: Lassen Sie sich das Recht geben, dort zu schreiben.</translation>
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="62" />
        <source>The store at {name} is locked, damaged or no store of this program: unlock it with its passphrase, put a backup copy in its place, or move the file away to begin anew.</source>
        <translation>Die Datenbank unter {name} ist gesperrt, beschädigt oder keine dieses Programms: Entsperren Sie sie mit ihrer Passphrase, setzen Sie eine Sicherungskopie an ihre Stelle, oder legen Sie die Datei weg, um neu zu beginnen.</translation>
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="68" />
        <source>The store at {name} refused ({said}): try again, and keep a copy.</source>
        <translation>Die Datenbank unter {name} meldet einen Fehler ({said}): Versuchen Sie es noch einmal, und bewahren Sie eine Kopie auf.</translation>
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="81" />
        <source>There is no room left for the store at {name}: free some space on its server.</source>
        <translation>Für die Datenbank unter {name} ist kein Platz mehr: Schaffen Sie Platz auf ihrem Server.</translation>
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="86" />
        <source>Another desk keeps writing to the store at {name}: try again.</source>
        <translation>Ein anderer Arbeitsplatz schreibt ständig in die Datenbank unter {name}: Versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="91" />
        <source>The store at {name} cannot be reached ({said}): see that the server runs, and that user, password and database are right.</source>
        <translation>Die Datenbank unter {name} ist nicht zu erreichen ({said}): Prüfen Sie, ob der Server läuft und ob Anmeldename, Passwort und Datenbank stimmen.</translation>
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="96" />
        <source>The store at {name} refused ({said}): try again.</source>
        <translation>Die Datenbank unter {name} meldet einen Fehler ({said}): Versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../voice/library.py" line="41" />
        <source>The voice data are missing from {data}, so the coach goes on with captions; install the package espeakng-loader again to hear it speak.</source>
        <translation>In {data} fehlen die Daten der Stimme, deshalb geht es mit Untertiteln weiter; installieren Sie das Paket espeakng-loader neu, um die Stimme zu hören.</translation>
    </message>
    <message>
        <location filename="../../voice/library.py" line="52" />
        <source>The voice library {library} does not load ({error}), so the coach goes on with captions; install the package espeakng-loader again to hear it speak.</source>
        <translation>Die Stimmbibliothek {library} lässt sich nicht laden ({error}), deshalb geht es mit Untertiteln weiter; installieren Sie das Paket espeakng-loader neu, um die Stimme zu hören.</translation>
    </message>
    <message>
        <location filename="../../voice/library.py" line="79" />
        <source>The voice data in {data} cannot be opened, so the coach goes on with captions; move the program to a folder with a shorter name to hear it speak.</source>
        <translation>Die Daten der Stimme in {data} lassen sich nicht öffnen, deshalb geht es mit Untertiteln weiter; verschieben Sie das Programm in einen Ordner mit kürzerem Namen, um die Stimme zu hören.</translation>
    </message>
    <message>
        <location filename="../../voice/library.py" line="99" />
        <source>There is no voice for the language '{voices}', so the coach goes on with captions; choose another language to hear it speak.</source>
        <translation>Für die Sprache „{voices}“ gibt es keine Stimme, deshalb geht es mit Untertiteln weiter; wählen Sie eine andere Sprache, um eine Stimme zu hören.</translation>
    </message>
    <message>
        <location filename="../../voice/library.py" line="117" />
        <source>The voice could not say '{text}', so the coach goes on with captions; start the program again to hear it speak.</source>
        <translation>Die Stimme konnte „{text}“ nicht sagen, deshalb geht es mit Untertiteln weiter; starten Sie das Programm neu, um die Stimme zu hören.</translation>
    </message>
    <message>
        <location filename="../../voice/library.py" line="151" />
        <source>The voice package espeakng-loader is not installed whole ({error}), so the coach goes on with captions; install it again to hear it speak.</source>
        <translation>Das Stimmpaket espeakng-loader ist nicht vollständig installiert ({error}), deshalb geht es mit Untertiteln weiter; installieren Sie es neu, um die Stimme zu hören.</translation>
    </message>
</context><context>
    <name>hint</name>
    <message>
        <location filename="../../review/hint_words.py" line="20" />
        <source>All {count} measured directions of the left shoulder are limited against the other side: {movements}. The cause cannot be seen from it.</source>
        <translation>Alle {count} gemessenen Richtungen der linken Schulter sind gegenüber der Gegenseite eingeschränkt: {movements}. Die Ursache ist daraus nicht zu erkennen.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="26" />
        <source>All {count} measured directions of the right shoulder are limited against the other side: {movements}. The cause cannot be seen from it.</source>
        <translation>Alle {count} gemessenen Richtungen der rechten Schulter sind gegenüber der Gegenseite eingeschränkt: {movements}. Die Ursache ist daraus nicht zu erkennen.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="34" />
        <source>Of {count} measured directions of the left shoulder only {movements} is limited against the other side; a stiff shoulder is usually limited in all, so another look may be worth it.</source>
        <translation>Von {count} gemessenen Richtungen der linken Schulter ist nur {movements} gegenüber der Gegenseite eingeschränkt; eine steife Schulter ist meist in allen eingeschränkt, daher kann sich ein weiterer Blick lohnen.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="41" />
        <source>Of {count} measured directions of the right shoulder only {movements} is limited against the other side; a stiff shoulder is usually limited in all, so another look may be worth it.</source>
        <translation>Von {count} gemessenen Richtungen der rechten Schulter ist nur {movements} gegenüber der Gegenseite eingeschränkt; eine steife Schulter ist meist in allen eingeschränkt, daher kann sich ein weiterer Blick lohnen.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="53" />
        <source>At least {least} directions measured on both sides; limited: more than {degrees:.0f} degrees short of the other side, this side's error included.</source>
        <translation>Mindestens {least} Richtungen auf beiden Seiten gemessen; eingeschränkt: mehr als {degrees:.0f} Grad weniger als die Gegenseite, der Fehler dieser Seite eingerechnet.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="62" />
        <source>Common practice for all against one; the 15 degrees from a published follow-up's criterion of recovery (from memory).</source>
        <translation>Allgemein üblich für „alle“ gegen „eine“; die 15 Grad stammen aus dem Genesungskriterium einer veröffentlichten Nachbeobachtung (aus dem Gedächtnis).</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="73" />
        <source>External rotation at the side, left, is below half of the other side's: {share}, self-assisted and measured by camera.</source>
        <translation>Die Außenrotation bei angelegtem Arm, links, liegt unter der Hälfte der Gegenseite: {share}, selbstassistiv und mit der Kamera gemessen.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="79" />
        <source>External rotation at the side, right, is below half of the other side's: {share}, self-assisted and measured by camera.</source>
        <translation>Die Außenrotation bei angelegtem Arm, rechts, liegt unter der Hälfte der Gegenseite: {share}, selbstassistiv und mit der Kamera gemessen.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="87" />
        <source>External rotation at the side, left, is above half of the other side's: {share}, self-assisted and measured by camera.</source>
        <translation>Die Außenrotation bei angelegtem Arm, links, liegt über der Hälfte der Gegenseite: {share}, selbstassistiv und mit der Kamera gemessen.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="93" />
        <source>External rotation at the side, right, is above half of the other side's: {share}, self-assisted and measured by camera.</source>
        <translation>Die Außenrotation bei angelegtem Arm, rechts, liegt über der Hälfte der Gegenseite: {share}, selbstassistiv und mit der Kamera gemessen.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="104" />
        <source>External rotation with the arm at the side against half of the other side's, this side's error included.</source>
        <translation>Außenrotation bei angelegtem Arm gegen die Hälfte der Gegenseite, der Fehler dieser Seite eingerechnet.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="113" />
        <source>Trials of frozen shoulder took in people with passive external rotation under 50 % of the other side (Rangan et al. 2020; from memory).</source>
        <translation>In Studien zur Frozen Shoulder wurden Personen mit einer passiven Außenrotation unter 50 % der Gegenseite aufgenommen (Rangan et al. 2020; aus dem Gedächtnis).</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="126" />
        <source>Of the left shoulder are left external rotation {rotation} and abduction {abduction} of the other side's: in the order of the capsular pattern, as far as measured (internal rotation is not). The pattern is not universal.</source>
        <translation>An der linken Schulter sind von der Gegenseite erhalten: Außenrotation {rotation}, Abduktion {abduction}. Das entspricht der Reihenfolge des Kapselmusters, soweit gemessen (die Innenrotation ist es nicht). Das Muster gilt nicht immer.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="133" />
        <source>Of the right shoulder are left external rotation {rotation} and abduction {abduction} of the other side's: in the order of the capsular pattern, as far as measured (internal rotation is not). The pattern is not universal.</source>
        <translation>An der rechten Schulter sind von der Gegenseite erhalten: Außenrotation {rotation}, Abduktion {abduction}. Das entspricht der Reihenfolge des Kapselmusters, soweit gemessen (die Innenrotation ist es nicht). Das Muster gilt nicht immer.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="142" />
        <source>Of the left shoulder are left external rotation {rotation} and abduction {abduction} of the other side's: not in the order of the capsular pattern, as far as measured (internal rotation is not). The pattern is not universal.</source>
        <translation>An der linken Schulter sind von der Gegenseite erhalten: Außenrotation {rotation}, Abduktion {abduction}. Das entspricht nicht der Reihenfolge des Kapselmusters, soweit gemessen (die Innenrotation ist es nicht). Das Muster gilt nicht immer.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="149" />
        <source>Of the right shoulder are left external rotation {rotation} and abduction {abduction} of the other side's: not in the order of the capsular pattern, as far as measured (internal rotation is not). The pattern is not universal.</source>
        <translation>An der rechten Schulter sind von der Gegenseite erhalten: Außenrotation {rotation}, Abduktion {abduction}. Das entspricht nicht der Reihenfolge des Kapselmusters, soweit gemessen (die Innenrotation ist es nicht). Das Muster gilt nicht immer.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="163" />
        <source>Share of the other side lost in external rotation against that lost in abduction, the difference larger than both errors.</source>
        <translation>Gegenüber der Gegenseite verlorener Anteil der Außenrotation gegen den der Abduktion; der Unterschied ist größer als beide Fehler.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="172" />
        <source>Capsular pattern after Cyriax: external rotation more than abduction more than internal rotation (from memory).</source>
        <translation>Kapselmuster nach Cyriax: Außenrotation stärker als Abduktion stärker als Innenrotation (aus dem Gedächtnis).</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="183" />
        <source>pain lately {pain} of 10 (median of {sittings})</source>
        <translation>Schmerz zuletzt {pain} von 10 (Median, {sittings})</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="188" />
        <source>range grew beyond error and {painful}</source>
        <translation>Bewegungsausmaß über den Messfehler hinaus gewachsen, {painful}</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="190" />
        <source>range limited and not growing, {painful}</source>
        <translation>Bewegungsausmaß eingeschränkt und nicht wachsend, {painful}</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="192" />
        <source>range limited, no real change in {weeks} weeks, {painful}</source>
        <translation>Bewegungsausmaß eingeschränkt, keine echte Änderung in {weeks} Wochen, {painful}</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="194" />
        <source>the plan says {phase}</source>
        <translation>der Plan nennt „{phase}“</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="196" />
        <source>the plan names none</source>
        <translation>der Plan nennt keine</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="198" />
        <source>This would fit the phase '{phase}' ({why}); {plan}. The phase is the therapist's to set.</source>
        <translation>Das würde zur Phase „{phase}“ passen ({why}); {plan}. Die Phase wird therapeutisch festgelegt.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="206" />
        <source>Thawing: a change for the better beyond error and median pain of the last {lately} sittings at most {low}. Painful: limited, no real change, pain {moderate} or more. Stiff: limited, no real change in {weeks} weeks, pain at most {low}.</source>
        <translation>Auftauend: eine Besserung über den Messfehler hinaus und ein Median des Schmerzes der letzten {lately} Sitzungen von höchstens {low}. Schmerzhaft: eingeschränkt, keine echte Änderung, Schmerz {moderate} oder mehr. Steif: eingeschränkt, keine echte Änderung in {weeks} Wochen, Schmerz höchstens {low}.</translation>
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="216" />
        <source>Phases and their usual lengths: common practice and Kelley et al. 2013, J Orthop Sports Phys Ther 43:A1-A31; bounds of pain: the same (from memory); the combination is our choice.</source>
        <translation>Phasen und ihre übliche Dauer: allgemein üblich und nach Kelley et al. 2013, J Orthop Sports Phys Ther 43:A1-A31; Schmerzgrenzen: ebenso (aus dem Gedächtnis); die Verbindung ist unsere Wahl.</translation>
    </message>
</context><context>
    <name>import</name>
    <message>
        <location filename="../../storage/store_import.py" line="39" />
        <source>{name}: refused. {reason}</source>
        <translation>{name}: abgewiesen. {reason}</translation>
    </message>
    <message>
        <location filename="../../storage/store_import.py" line="41" />
        <source>{name}: doubtful ({code}). {reason}</source>
        <translation>{name}: zweifelhaft ({code}). {reason}</translation>
    </message>
    <message>
        <location filename="../../storage/store_import.py" line="43" />
        <source>{name}: already known ({code})</source>
        <translation>{name}: schon bekannt ({code})</translation>
    </message>
    <message>
        <location filename="../../storage/store_import.py" line="45" />
        <source>{name}: accepted ({code})</source>
        <translation>{name}: übernommen ({code})</translation>
    </message>
</context><context>
    <name>key</name>
    <message>
        <location filename="../../app/export.py" line="56" />
        <source>the locked store {place}</source>
        <translation>die gesperrte Datenbank {place}</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="137" />
        <location filename="../../app/key.py" line="104" />
        <location filename="../../app/key.py" line="52" />
        <source>the practice's key</source>
        <translation>den Praxisschlüssel</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="53" />
        <source>The key for new plans in {path} is now</source>
        <translation>Der Schlüssel für neue Pläne in {path} ist jetzt</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="55" />
        <source>Older keys still open what was sealed for them; give out plans with the new one
and back all of them up now with 'coach key back-up FILE'.</source>
        <translation>Ältere Schlüssel öffnen weiter, was für sie versiegelt wurde; geben Sie Pläne mit dem neuen aus
und sichern Sie jetzt alle mit „coach key back-up FILE“.</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="71" />
        <source>the new key</source>
        <translation>den neuen Schlüssel</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="72" />
        <source>Made {path}; put this public key into plans:</source>
        <translation>{path} ist angelegt; setzen Sie diesen öffentlichen Schlüssel in Pläne ein:</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="75" />
        <source>Back it up now with 'coach key back-up FILE': without it nothing can be opened.</source>
        <translation>Sichern Sie ihn jetzt mit „coach key back-up FILE“: Ohne ihn lässt sich nichts öffnen.</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="91" />
        <source>made {day}</source>
        <translation>angelegt am {day}</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="93" />
        <source>made on an unknown day</source>
        <translation>an einem unbekannten Tag angelegt</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="96" />
        <source>older, opens what was sealed for it</source>
        <translation>älter, öffnet, was für ihn versiegelt wurde</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="98" />
        <source>current, for new plans</source>
        <translation>aktuell, für neue Pläne</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="115" />
        <location filename="../../app/key.py" line="106" />
        <source>the backup</source>
        <translation>die Sicherung</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="108" />
        <source>{backup}: keep it away from this machine.</source>
        <translation>{backup}: Bewahren Sie die Datei nicht auf diesem Rechner auf.</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="116" />
        <source>the key on this machine</source>
        <translation>den Schlüssel auf diesem Rechner</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="118" />
        <source>Restored {path}; the public key for new plans is</source>
        <translation>{path} ist wiederhergestellt; der öffentliche Schlüssel für neue Pläne ist</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="123" />
        <source>the store now</source>
        <translation>die Datenbank, wie sie jetzt ist</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="124" />
        <source>the store</source>
        <translation>die Datenbank</translation>
    </message>
    <message>
        <location filename="../../app/key.py" line="125" />
        <source>{place} is locked; the passphrase is asked for when it is opened.</source>
        <translation>{place} ist gesperrt; beim Öffnen wird nach der Passphrase gefragt.</translation>
    </message>
    <message>
        <location filename="../../app/passphrases.py" line="17" />
        <source>Passphrase of {what}:</source>
        <translation>Passphrase für {what}:</translation>
    </message>
    <message>
        <location filename="../../app/passphrases.py" line="29" />
        <source>{what} (15 characters or more, several words are best)</source>
        <translation>{what} (15 Zeichen oder mehr, am besten mehrere Wörter)</translation>
    </message>
    <message>
        <location filename="../../app/passphrases.py" line="31" />
        <source>{what}, once more</source>
        <translation>{what}, noch einmal</translation>
    </message>
</context><context>
    <name>lens</name>
    <message>
        <location filename="../../app/lens.py" line="36" />
        <source>Print it at 100 %, stick it flat on something stiff, then run 'coach lens --camera N'.</source>
        <translation>Drucken Sie sie mit 100 %, kleben Sie sie flach auf etwas Steifes und rufen Sie dann „coach lens --camera N“ auf.</translation>
    </message>
    <message>
        <location filename="../../app/lens.py" line="56" />
        <source>For recordings of this camera: coach measure CLIP --field-of-view {value:g}</source>
        <translation>Für Aufnahmen dieser Kamera: coach measure CLIP --field-of-view {value:g}</translation>
    </message>
    <message>
        <location filename="../../app/lens.py" line="73" />
        <source>Kept for camera {camera} at this shape of picture: {path}</source>
        <translation>Für Kamera {camera} bei diesem Bildformat aufbewahrt: {path}</translation>
    </message>
    <message>
        <location filename="../../app/lens.py" line="83" />
        <source>looking for the board</source>
        <translation>Tafel wird gesucht</translation>
    </message>
    <message>
        <location filename="../../app/lens.py" line="91" />
        <source>{count} views; {wish}</source>
        <translation>{count} Ansichten; {wish}</translation>
    </message>
    <message>
        <location filename="../../app/lens.py" line="102" />
        <source>Horizontal field of view: {angle} ± {error} degrees (95 % interval), from {views} views; the board's corners miss by {miss} pixels.</source>
        <translation>Waagerechtes Sichtfeld: {angle} ± {error} Grad (95-%-Intervall), aus {views} Ansichten; die Ecken der Tafel weichen um {miss} Pixel ab.</translation>
    </message>
    <message>
        <location filename="../../app/lens.py" line="124" />
        <source>coach: {fault} The usual field of view is assumed.</source>
        <translation>coach: {fault} Das übliche Sichtfeld wird angenommen.</translation>
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="56" />
        <source>hold the sheet so that the whole board is in the picture</source>
        <translation>halten Sie das Blatt so, dass die ganze Tafel im Bild ist</translation>
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="57" />
        <source>bring the sheet nearer, until it fills half of the picture</source>
        <translation>halten Sie das Blatt näher, bis es das halbe Bild füllt</translation>
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="60" />
        <source>hold the sheet still for a moment</source>
        <translation>halten Sie das Blatt einen Moment still</translation>
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="61" />
        <source>turn the sheet's left edge away from the camera, and hold it</source>
        <translation>drehen Sie die linke Kante des Blatts von der Kamera weg, und halten Sie es so</translation>
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="64" />
        <source>turn the sheet's right edge away from the camera, and hold it</source>
        <translation>drehen Sie die rechte Kante des Blatts von der Kamera weg, und halten Sie es so</translation>
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="67" />
        <source>tip the sheet's upper edge away from the camera, and hold it</source>
        <translation>kippen Sie die obere Kante des Blatts von der Kamera weg, und halten Sie es so</translation>
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="70" />
        <source>tip the sheet's lower edge away from the camera, and hold it</source>
        <translation>kippen Sie die untere Kante des Blatts von der Kamera weg, und halten Sie es so</translation>
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="73" />
        <source>move the sheet, tilted, into the other corners of the picture</source>
        <translation>bewegen Sie das Blatt schräg in die anderen Ecken des Bildes</translation>
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="76" />
        <source>go on moving and tilting the sheet, with short stops</source>
        <translation>bewegen und kippen Sie das Blatt weiter, mit kurzen Pausen</translation>
    </message>
</context><context>
    <name>measure</name>
    <message>
        <location filename="../../app/measure.py" line="60" />
        <source>measuring</source>
        <translation>wird gemessen</translation>
    </message>
    <message>
        <location filename="../../app/measure.py" line="70" />
        <source>Points and errors are of the pose model {model}.</source>
        <translation>Punkte und Fehler sind die des Posenmodells {model}.</translation>
    </message>
    <message>
        <location filename="../../app/measure.py" line="91" />
        <source>Points and errors are of the pose model {model}, as {who} says.</source>
        <translation>Punkte und Fehler sind die des Posenmodells {model}, laut {who}.</translation>
    </message>
    <message>
        <location filename="../../app/measure.py" line="166" />
        <source>coach: more than one person is in view; the one nearest to the camera at the start is followed.</source>
        <translation>coach: Mehr als eine Person ist im Bild; verfolgt wird die, die am Anfang der Kamera am nächsten ist.</translation>
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="22" />
        <source>{what}: {usable} of {count} frames usable</source>
        <translation>{what}: {usable} von {count} Bildern brauchbar</translation>
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="28" />
        <source>  no hold of two seconds or more</source>
        <translation>  keine Haltephase von zwei Sekunden oder mehr</translation>
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="30" />
        <source>  repetitions there and back: {count}, held of them: {held}</source>
        <translation>  Wiederholungen hin und zurück: {count}, davon gehalten: {held}</translation>
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="37" />
        <source>  refused frames: {count}. {why}</source>
        <translation>  abgelehnte Bilder: {count}. {why}</translation>
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="52" />
        <source>It is not known which pose model found these points, so neither is how wrong angles from them are. Put the sitting's session.json beside its landmarks.csv, or name the model with --pose-model.</source>
        <translation>Welches Posenmodell diese Punkte gefunden hat, ist nicht bekannt, darum auch nicht, wie falsch Winkel daraus sind. Legen Sie die session.json der Sitzung neben ihre landmarks.csv, oder nennen Sie das Modell mit --pose-model.</translation>
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="58" />
        <source>It was never measured how wrong this angle is with the pose model that found these points. Measure a clip with the full one.</source>
        <translation>Es wurde nie gemessen, wie falsch dieser Winkel mit dem Posenmodell ist, das diese Punkte gefunden hat. Messen Sie eine Aufnahme mit dem vollen.</translation>
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="66" />
        <source>  hold {number}: {start_s:.1f} to {end_s:.1f} s, held {held_s:.1f} s, {value} ({ended})</source>
        <translation>  Haltephase {number}: {start_s:.1f} bis {end_s:.1f} s, {held_s:.1f} s gehalten, {value} ({ended})</translation>
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="81" />
        <source>{value:.0f} ± {error} degrees</source>
        <translation>{value:.0f} ± {error} Grad</translation>
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="85" />
        <source>{value:.0f} ± {error} %, {levels}</source>
        <translation>{value:.0f} ± {error} %, {levels}</translation>
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="96" />
        <source>Angles are of the arm against the trunk, shoulder blade included, each with the half width of its 95 % interval.</source>
        <translation>Winkel sind die des Arms gegen den Rumpf, das Schulterblatt eingeschlossen, jeder mit der halben Breite seines 95-%-Intervalls.</translation>
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="102" />
        <source>Heights are of the wrist, 0 % at C7 and 100 % at the posterior superior iliac spines, each with the half width of its 95 % interval; the levels are those of the thumb's tip.</source>
        <translation>Höhen sind die des Handgelenks, 0 % bei C7 und 100 % bei den hinteren oberen Darmbeinstacheln (SIPS), jede mit der halben Breite ihres 95-%-Intervalls; genannt ist die Höhe der Daumenspitze.</translation>
    </message>
</context><context>
    <name>note</name>
    <message>
        <location filename="../../exchange/note.py" line="50" />
        <source>S (subjective)</source>
        <translation>S (subjektiv)</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="52" />
        <source>O (objective)</source>
        <translation>O (objektiv)</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="55" />
        <source>A (assessment)</source>
        <translation>A (Beurteilung)</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="56" />
        <source>P (plan)</source>
        <translation>P (Plan)</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="57" />
        <source>How it was measured</source>
        <translation>Wie gemessen wurde</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="74" />
        <source>Shoulder exercise at home, note for the record</source>
        <translation>Schulterübungen zu Hause, Notiz für die Akte</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="75" />
        <source>Patient: {patient_code}</source>
        <translation>Patientencode: {patient_code}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="77" />
        <source>Period: {period}, {sessions}</source>
        <translation>Zeitraum: {period}, {sessions}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="81" />
        <source>Plan: {title}</source>
        <translation>Plan: {title}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="83" />
        <source>Written on {day}</source>
        <translation>Geschrieben am {day}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="84" />
        <source>Measured with {software}; humerothoracic, self-assisted, one camera</source>
        <translation>Gemessen mit {software}; humerothorakal, selbstassistiv, eine Kamera</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="94" />
        <source>Pain above {high_pain} of 10 in {sessions}</source>
        <translation>Schmerz über {high_pain} von 10 in {sessions}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="102" />
        <source>Timed without measuring: 1 hold completed, {time} held</source>
        <translation>Nach Zeit, ohne Messung: 1-mal vollständig gehalten, insgesamt {time}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="104" />
        <source>Timed without measuring: {count} holds completed, {time} held</source>
        <translation>Nach Zeit, ohne Messung: {count}-mal vollständig gehalten, insgesamt {time}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="107" />
        <source>Night pain, function, reaction to the last change: </source>
        <translation>Nachtschmerz, Funktion, Reaktion auf die letzte Änderung:</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="115" />
        <source>No movement was measured.</source>
        <translation>Es wurde keine Bewegung gemessen.</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="123" />
        <source>no value</source>
        <translation>kein Wert</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="126" />
        <source>first {first}</source>
        <translation>zuerst {first}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="128" />
        <source>last {last}</source>
        <translation>zuletzt {last}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="129" />
        <source>best {best}</source>
        <translation>bester Wert {best}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="132" />
        <source>change {change}, detectable from {least}</source>
        <translation>Änderung {change}, nachweisbar ab {least}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="138" />
        <source>other side {value}</source>
        <translation>Gegenseite {value}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="140" />
        <source>other side {value} ({share} of it)</source>
        <translation>Gegenseite {value} (davon {share})</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="144" />
        <source>other side not known</source>
        <translation>Gegenseite nicht bekannt</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="152" />
        <location filename="../../exchange/note.py" line="151" />
        <source>not set</source>
        <translation>nicht festgelegt</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="153" />
        <source>Phase, as set by the therapist: {phase_said}</source>
        <translation>Phase laut Praxis: {phase_said}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="156" />
        <source>Irritability, as set by the therapist: {irritable}</source>
        <translation>Irritierbarkeit laut Praxis: {irritable}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="164" />
        <source>Clinical judgement: </source>
        <translation>Klinische Beurteilung:</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="172" />
        <source>Next: {step}</source>
        <translation>Nächster Schritt: {step}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="175" />
        <source>{sessions} a week</source>
        <translation>{sessions} pro Woche</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="177" />
        <source>Review: plan holds until {day}</source>
        <translation>Wiedervorstellung: der Plan gilt bis {day}</translation>
    </message>
    <message>
        <location filename="../../exchange/note.py" line="179" />
        <source>Review: no date set</source>
        <translation>Wiedervorstellung: kein Termin festgelegt</translation>
    </message>
    <message>
        <location filename="../../exchange/note_records.py" line="20" />
        <source>Left shoulder, since {day}</source>
        <translation>Linke Schulter, seit {day}</translation>
    </message>
    <message>
        <location filename="../../exchange/note_records.py" line="22" />
        <source>Right shoulder, since {day}</source>
        <translation>Rechte Schulter, seit {day}</translation>
    </message>
    <message>
        <location filename="../../exchange/note_records.py" line="24" />
        <source>Goals: {goals}</source>
        <translation>Ziele: {goals}</translation>
    </message>
    <message>
        <location filename="../../exchange/note_records.py" line="26" />
        <source>Of the episode: {note}</source>
        <translation>Zur Behandlungsepisode: {note}</translation>
    </message>
    <message>
        <location filename="../../exchange/note_records.py" line="37" />
        <source>By goniometer, {what}: {value} ({on}); {beside}</source>
        <translation>Mit dem Goniometer, {what}: {value} ({on}); {beside}</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="37" />
        <source>Exercise, {side}</source>
        <translation>Übung, {side}</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="54" />
        <source>hold {hold} s</source>
        <translation>{hold} s halten</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="56" />
        <source>rest {rest} s</source>
        <translation>{rest} s Pause</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="57" />
        <source>every day</source>
        <translation>jeden Tag</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="59" />
        <source>pain limit {pain_limit} of 10</source>
        <translation>Schmerzgrenze {pain_limit} von 10</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="63" />
        <source>not beyond {amount}</source>
        <translation>nicht über {amount} hinaus</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="75" />
        <source>the therapist's choice</source>
        <translation>nach therapeutischer Wahl</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="80" />
        <source>after {sittings} in a row, completed with pain at most {pain} of 10: propose {proposed}</source>
        <translation>nach {sittings} in Folge, vollständig und mit Schmerz von höchstens {pain} von 10: vorschlagen: {proposed}</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="86" />
        <source>after {sittings} in a row, completed with {least} or further, pain at most {pain} of 10: propose {proposed}</source>
        <translation>nach {sittings} in Folge, vollständig, mit {least} oder mehr und Schmerz von höchstens {pain} von 10: vorschlagen: {proposed}</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="97" />
        <source>1 time</source>
        <translation>1-mal</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="98" />
        <source>{count} times</source>
        <translation>{count}-mal</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="103" />
        <source>1 time a day</source>
        <translation>1-mal am Tag</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="104" />
        <source>{count} times a day</source>
        <translation>{count}-mal am Tag</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="109" />
        <source>mon</source>
        <translation>Mo</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="110" />
        <source>tue</source>
        <translation>Di</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="111" />
        <source>wed</source>
        <translation>Mi</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="112" />
        <source>thu</source>
        <translation>Do</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="113" />
        <source>fri</source>
        <translation>Fr</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="114" />
        <source>sat</source>
        <translation>Sa</translation>
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="115" />
        <source>sun</source>
        <translation>So</translation>
    </message>
</context><context>
    <name>patient</name>
    <message>
        <location filename="../../app/example.py" line="28" />
        <source>Example programme</source>
        <translation>Beispielprogramm</translation>
    </message>
    <message>
        <location filename="../../app/example.py" line="33" />
        <source>An example without a practice behind it; ask your own therapist.</source>
        <translation>Ein Beispiel ohne Praxis dahinter; fragen Sie in Ihrer eigenen Praxis.</translation>
    </message>
    <message>
        <location filename="../../app/patient.py" line="142" />
        <source>Your last sitting ended {minutes} minutes ago. Let the shoulder rest for some hours, unless your therapist said otherwise.</source>
        <translation>Sie haben vor {minutes} Minuten zuletzt geübt. Lassen Sie die Schulter einige Stunden ruhen, wenn die Praxis nichts anderes gesagt hat.</translation>
    </message>
    <message>
        <location filename="../../app/patient.py" line="148" />
        <source>Everything for today is done. More than asked is not better.</source>
        <translation>Für heute ist alles geschafft. Mehr als vorgesehen ist nicht besser.</translation>
    </message>
    <message>
        <location filename="../patient/beginning.py" line="38" />
        <source>Hand up: I have read it</source>
        <translation>Hand oben: Ich habe es gelesen</translation>
    </message>
    <message>
        <location filename="../patient/beginning.py" line="39" />
        <source>Read all of it first</source>
        <translation>Lesen Sie zuerst alles</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="161" />
        <source>Before you start</source>
        <translation>Bevor Sie beginnen</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="167" />
        <source>Stop at once</source>
        <translation>Sofort aufhören</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="192" />
        <source>Pain above {limit} of 10 is more than your plan allows.</source>
        <translation>Schmerz über {limit} von 10 ist mehr, als Ihr Plan erlaubt.</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="195" />
        <source>Pain above {least} to {most} of 10, by exercise, is more than your plan allows.</source>
        <translation>Schmerz über {least} bis {most} von 10, je nach Übung, ist mehr, als Ihr Plan erlaubt.</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="204" />
        <source>Ring your practice: {contact}</source>
        <translation>Rufen Sie in der Praxis an: {contact}</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="205" />
        <source>Ring your practice</source>
        <translation>Rufen Sie in der Praxis an</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="148" />
        <source>Measured: {what}</source>
        <translation>Gemessen: {what}</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="48" />
        <source>Easier one: {name}</source>
        <translation>Leichtere Übung: {name}</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="198" />
        <location filename="../patient/record_card.py" line="60" />
        <source>by time</source>
        <translation>nach Zeit</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="60" />
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="62" />
        <source>no hold long enough</source>
        <translation>nicht lang genug gehalten</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="68" />
        <source>{done} of {asked} holds</source>
        <translation>{done} von {asked} Mal</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="71" />
        <source>{held} of {asked:g} s held</source>
        <translation>{held} von {asked:g} s gehalten</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="94" />
        <source>angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="96" />
        <source>thumb reached</source>
        <translation>Daumen erreichte</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="103" />
        <source>{held} s at {angle}</source>
        <translation>{held} s bei {angle}</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="108" />
        <source>Each hold: {holds}</source>
        <translation>Jedes Mal: {holds}</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="115" />
        <source>Seconds beyond those asked for are not counted.</source>
        <translation>Was länger als verlangt gehalten wurde, zählt nicht mit.</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="119" />
        <source>The large figure is the middle of the holds; of two it is halfway between. A hold cut short, or with the body moving along, counts only if there is no other.</source>
        <translation>Die große Zahl ist der mittlere Wert, bei zweien die Mitte dazwischen. Was zu kurz gehalten wurde oder mit bewegtem Rumpf, zählt nur, wenn es nichts anderes gibt.</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="127" />
        <source>± is the 95 % error.</source>
        <translation>± ist der 95-%-Fehler.</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="129" />
        <source>Only your therapist can say what it means.</source>
        <translation>Was das bedeutet, kann man nur in der Praxis sagen.</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="136" />
        <source>It is the arm against the trunk, shoulder blade included.</source>
        <translation>Es ist der Arm gegen den Rumpf, das Schulterblatt eingeschlossen.</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="138" />
        <source>For a turned forearm it is the turn from straight ahead.</source>
        <translation>Beim gedrehten Unterarm ist es die Drehung von geradeaus.</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="140" />
        <source>Across the chest it is the way in from out to the side.</source>
        <translation>Vor der Brust ist es der Weg von der Seite nach innen.</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="142" />
        <source>Behind the back it is the tip of the thumb at the spine.</source>
        <translation>Hinter dem Rücken ist es die Daumenspitze an der Wirbelsäule.</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="153" />
        <source>stopped by you</source>
        <translation>von Ihnen beendet</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="155" />
        <source>skipped by you</source>
        <translation>von Ihnen ausgelassen</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="157" />
        <source>ended because of the pain: ask your therapist</source>
        <translation>wegen des Schmerzes beendet: in der Praxis fragen</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="159" />
        <source>ended after several short holds: tell your therapist</source>
        <translation>nach mehrmals kurzem Halten beendet: in der Praxis sagen</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="161" />
        <source>ended because the picture ended</source>
        <translation>beendet, weil das Bild endete</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="163" />
        <source>broken off</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="208" />
        <source>pain not given</source>
        <translation>Schmerz nicht angegeben</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="209" />
        <source>{before} → {after}</source>
        <translation>{before} → {after}</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="212" />
        <source>pain before, after</source>
        <translation>Schmerz vorher, nachher</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="209" />
        <source>Today, {day}</source>
        <translation>Heute, {day}</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="211" />
        <source>Yesterday, {day}</source>
        <translation>Gestern, {day}</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="200" />
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="202" />
        <source>NEW</source>
        <translation>NEU</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="211" />
        <source>New for you: {title}</source>
        <translation>Neu für Sie: {title}</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="215" />
        <source>What to mind with each new exercise is shown and said before it begins.</source>
        <translation>Worauf bei jeder neuen Übung zu achten ist, wird vor ihr gezeigt und gesagt.</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="28" />
        <source>{name}, sitting</source>
        <translation>{name}, im Sitzen</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="30" />
        <source>{name}, lying on your back</source>
        <translation>{name}, auf dem Rücken</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="32" />
        <source>{name}, lying face down</source>
        <translation>{name}, auf dem Bauch</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="34" />
        <source>{name}, lying on your side</source>
        <translation>{name}, auf der Seite</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="36" />
        <source>{name}, at a door frame</source>
        <translation>{name}, am Türrahmen</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="46" />
        <source>Left arm forwards and up</source>
        <translation>Linker Arm nach vorn und hinauf</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="47" />
        <source>Right arm forwards and up</source>
        <translation>Rechter Arm nach vorn und hinauf</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="50" />
        <source>Left arm backwards</source>
        <translation>Linker Arm nach hinten</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="51" />
        <source>Right arm backwards</source>
        <translation>Rechter Arm nach hinten</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="54" />
        <source>Left arm out to the side</source>
        <translation>Linker Arm zur Seite</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="55" />
        <source>Right arm out to the side</source>
        <translation>Rechter Arm zur Seite</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="58" />
        <source>Left hand turned outwards</source>
        <translation>Linke Hand nach außen gedreht</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="59" />
        <source>Right hand turned outwards</source>
        <translation>Rechte Hand nach außen gedreht</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="62" />
        <source>Left forearm turned up and back</source>
        <translation>Linker Unterarm hinauf und zurück</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="63" />
        <source>Right forearm turned up and back</source>
        <translation>Rechter Unterarm hinauf und zurück</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="66" />
        <source>Left arm across the chest</source>
        <translation>Linker Arm vor der Brust</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="67" />
        <source>Right arm across the chest</source>
        <translation>Rechter Arm vor der Brust</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="70" />
        <source>Left hand up the back</source>
        <translation>Linke Hand den Rücken hinauf</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="71" />
        <source>Right hand up the back</source>
        <translation>Rechte Hand den Rücken hinauf</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="80" />
        <source>Arm against trunk, shoulder blade included</source>
        <translation>Arm gegen den Rumpf, Schulterblatt eingeschlossen</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="82" />
        <source>Forearm turned out from straight ahead</source>
        <translation>Unterarm nach außen, von geradeaus</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="84" />
        <source>Forearm turned up from straight ahead</source>
        <translation>Unterarm hinauf, von geradeaus</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="86" />
        <source>Arm inwards from straight out to the side</source>
        <translation>Arm nach innen, von gerade zur Seite</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="88" />
        <source>Tip of the thumb, by level of the spine</source>
        <translation>Daumenspitze, nach Höhe der Wirbelsäule</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="113" />
        <source>Left arm</source>
        <translation>Linker Arm</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="114" />
        <source>Right arm</source>
        <translation>Rechter Arm</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="120" />
        <source>{title} (left arm)</source>
        <translation>{title} (linker Arm)</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="121" />
        <source>{title} (right arm)</source>
        <translation>{title} (rechter Arm)</translation>
    </message>
</context><context>
    <name>plan</name>
    <message>
        <location filename="../../review/plan_changes.py" line="31" />
        <source>Practice key removed.</source>
        <translation>Praxisschlüssel entfernt.</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="33" />
        <source>Practice key changed.</source>
        <translation>Praxisschlüssel geändert.</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="35" />
        <source>Practice key added.</source>
        <translation>Praxisschlüssel hinzugefügt.</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="37" />
        <source>Range of the other side changed.</source>
        <translation>Bewegungsausmaß der Gegenseite geändert.</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="42" />
        <source>Patient code</source>
        <translation>Patientencode</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="43" />
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="45" />
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="46" />
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="48" />
        <source>Phase</source>
        <translation>Phase</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="50" />
        <source>Irritability</source>
        <translation>Irritierbarkeit</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="53" />
        <source>Sessions a week</source>
        <translation>Sitzungen pro Woche</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="54" />
        <source>Valid until</source>
        <translation>Gültig bis</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="55" />
        <source>Contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="67" />
        <source>Removed: {exercise}.</source>
        <translation>Entfernt: {exercise}.</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="70" />
        <source>Added: {exercise}, {dose}.</source>
        <translation>Neu: {exercise}, {dose}.</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="76" />
        <source>{exercise}: {change}</source>
        <translation>{exercise}: {change}</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="78" />
        <source>The order of the exercises changed.</source>
        <translation>Die Reihenfolge der Übungen ist geändert.</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="121" />
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="122" />
        <source>view</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="123" />
        <source>hold</source>
        <translation>Haltezeit</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="124" />
        <source>repetitions</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="125" />
        <source>rest</source>
        <translation>Pause</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="126" />
        <source>target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="127" />
        <source>pain limit</source>
        <translation>Schmerzgrenze</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="128" />
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="129" />
        <source>times a day</source>
        <translation>Mal am Tag</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="58" />
        <location filename="../../review/plan_changes.py" line="130" />
        <source>next step</source>
        <translation>nächster Schritt</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="136" />
        <source>{name} added: {after}.</source>
        <translation>{name} neu: {after}.</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="138" />
        <source>{name} removed, was {before}.</source>
        <translation>{name} entfernt, bisher {before}.</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="139" />
        <source>{name} from {before} to {after}.</source>
        <translation>{name}: bisher {before}, jetzt {after}.</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="153" />
        <source>{sittings} in a row and pain at most {pain}</source>
        <translation>{sittings} in Folge und Schmerz höchstens {pain}</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="155" />
        <source>{sittings} in a row and pain at most {pain}, then {exercise}</source>
        <translation>{sittings} in Folge und Schmerz höchstens {pain}, dann {exercise}</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="157" />
        <source>{sittings} in a row with {angle} or more and pain at most {pain}</source>
        <translation>{sittings} in Folge mit {angle} oder mehr und Schmerz höchstens {pain}</translation>
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="159" />
        <source>{sittings} in a row with {angle} or more and pain at most {pain}, then {exercise}</source>
        <translation>{sittings} in Folge mit {angle} oder mehr und Schmerz höchstens {pain}, dann {exercise}</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="42" />
        <source>{count} × a day</source>
        <translation>{count} × am Tag</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="44" />
        <source>{count} × a day on {days}</source>
        <translation>{count} × am Tag ({days})</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="47" />
        <source>{count} × {hold} s</source>
        <translation>{count} × {hold} s</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="50" />
        <source>rest {rest} s</source>
        <translation>Pause {rest} s</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="52" />
        <source>pain at most {pain}</source>
        <translation>Schmerz höchstens {pain}</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="55" />
        <source>up to {angle}</source>
        <translation>bis {angle}</translation>
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="70" />
        <source>every day</source>
        <translation>jeden Tag</translation>
    </message>
    <message>
        <location filename="../../review/plans.py" line="51" />
        <source>Hold {value} s: usual for {irritability} irritability is {usual} s. {source}</source>
        <translation>Haltezeit {value} s: üblich bei Irritierbarkeit „{irritability}“ sind {usual} s. {source}</translation>
    </message>
    <message>
        <location filename="../../review/plans.py" line="54" />
        <source>Repetitions {value}: usual for {irritability} irritability is {usual}. {source}</source>
        <translation>Wiederholungen {value}: üblich bei Irritierbarkeit „{irritability}“ sind {usual}. {source}</translation>
    </message>
    <message>
        <location filename="../../review/plans.py" line="57" />
        <source>Times a day {value}: usual for {irritability} irritability is {usual}. {source}</source>
        <translation>Mal am Tag {value}: üblich bei Irritierbarkeit „{irritability}“ sind {usual}. {source}</translation>
    </message>
    <message>
        <location filename="../../review/plans.py" line="75" />
        <source>Pain limit {value}: usual for {irritability} irritability is at most {limit}. Common practice.</source>
        <translation>Schmerzgrenze {value}: üblich bei Irritierbarkeit „{irritability}“ ist höchstens {limit}. Allgemein üblich.</translation>
    </message>
    <message>
        <location filename="../../review/plans.py" line="87" />
        <source>{least} to {most}</source>
        <translation>{least} bis {most}</translation>
    </message>
    <message>
        <location filename="../../review/plans.py" line="103" />
        <source>{time} a day of holds and rests</source>
        <translation>{time} am Tag für Halten und Pausen</translation>
    </message>
    <message>
        <location filename="../../review/plans.py" line="104" />
        <source>{least} to {most} a day of holds and rests</source>
        <translation>{least} bis {most} am Tag für Halten und Pausen</translation>
    </message>
</context><context>
    <name>plans</name>
    <message>
        <location filename="../therapist/catalogue_list.py" line="46" />
        <source>Filter the catalogue</source>
        <translation>Katalog filtern</translation>
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="47" />
        <source>Filter ({find}), {enter} adds</source>
        <translation>Filtern ({find}), {enter} fügt hinzu</translation>
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="52" />
        <source>Exercises of the catalogue by position</source>
        <translation>Übungen des Katalogs nach Ausgangsstellung</translation>
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="131" />
        <source>Standing</source>
        <translation>Stand</translation>
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="133" />
        <source>Sitting</source>
        <translation>Sitz</translation>
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="135" />
        <source>Supine</source>
        <translation>Rückenlage</translation>
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="137" />
        <source>Prone</source>
        <translation>Bauchlage</translation>
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="139" />
        <source>Side-lying</source>
        <translation>Seitenlage</translation>
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="141" />
        <source>Door frame</source>
        <translation>Türrahmen</translation>
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="223" />
        <location filename="../therapist/catalogue_list.py" line="147" />
        <source>By time, not measured; {camera}</source>
        <translation>Nach Zeit, nicht gemessen; {camera}</translation>
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="148" />
        <source>Measured: {movement}; {camera}</source>
        <translation>Gemessen: {movement}; {camera}</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="54" />
        <source>What is unusual in this dose</source>
        <translation>Was an dieser Dosis unüblich ist</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="55" />
        <source>Hold</source>
        <translation>Halten</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="56" />
        <source>Repetitions</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="57" />
        <source>Rest</source>
        <translation>Pause</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="58" />
        <source>Times a day</source>
        <translation>Mal am Tag</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="59" />
        <source>Pain limit</source>
        <translation>Schmerzgrenze</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="60" />
        <source>Not beyond, in degrees</source>
        <translation>Höchstens bis, in Grad</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="61" />
        <source>Side of this exercise</source>
        <translation>Seite dieser Übung</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="63" />
        <source>Ne&amp;xt step after</source>
        <translation>&amp;Nächster Schritt nach</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="64" />
        <source>Sittings in a row</source>
        <translation>Sitzungen in Folge</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="65" />
        <source>At least, in degrees</source>
        <translation>Mindestens, in Grad</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="107" />
        <location filename="../therapist/exercise_editor.py" line="66" />
        <source>Pain at most</source>
        <translation>Schmerz höchstens</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="68" />
        <source>What to propose</source>
        <translation>Was vorgeschlagen wird</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="73" />
        <source>Dose &amp;anew</source>
        <translation>&amp;Dosis neu</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="74" />
        <source>Propose this exercise's dose anew</source>
        <translation>Dosis dieser Übung neu vorschlagen</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="82" />
        <source>Not &amp;beyond °</source>
        <translation>Höchstens &amp;bis °</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="83" />
        <source>Reaching °</source>
        <translation>Erreicht °</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="88" />
        <source>Ho&amp;ld</source>
        <translation>&amp;Halten</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="89" />
        <source>&amp;Repetitions</source>
        <translation>Wiede&amp;rholungen</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="92" />
        <source>R&amp;est</source>
        <translation>Paus&amp;e</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="93" />
        <source>Times a da&amp;y</source>
        <translation>&amp;Mal am Tag</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="95" />
        <source>Pai&amp;n limit</source>
        <translation>Schmer&amp;zgrenze</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="36" />
        <location filename="../therapist/exercise_editor.py" line="96" />
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="102" />
        <source>Sittings</source>
        <translation>Sitzungen</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="109" />
        <source>Propose</source>
        <translation>Vorschlag</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="150" />
        <source>No exercise chosen</source>
        <translation>Keine Übung gewählt</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="151" />
        <source>Add one from the catalogue on the left.</source>
        <translation>Fügen Sie links aus dem Katalog eine hinzu.</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="189" />
        <source>what the therapist will choose</source>
        <translation>wird noch entschieden</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="215" />
        <source>An exercise needs a day of the week: tick one, or remove the exercise.</source>
        <translation>Eine Übung braucht einen Wochentag: Haken Sie einen an oder entfernen Sie die Übung.</translation>
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="248" />
        <source>Outside the usual. {reason}</source>
        <translation>Unüblich. {reason}</translation>
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="72" />
        <source>A plan has at most {most} exercises: remove one first.</source>
        <translation>Ein Plan hat höchstens {most} Übungen: Entfernen Sie zuerst eine.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="102" />
        <source>The plan has no patient code: write the practice's code for the person.</source>
        <translation>Der Plan hat keinen Patientencode: Tragen Sie den Code ein, den die Praxis für die Person verwendet.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="108" />
        <source>The plan has no exercise: add one from the catalogue.</source>
        <translation>Der Plan hat keine Übung: Fügen Sie eine aus dem Katalog hinzu.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="116" />
        <source>The plan</source>
        <translation>Der Plan</translation>
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="146" />
        <source>Usual dose. {source}</source>
        <translation>Übliche Dosis. {source}</translation>
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="160" />
        <source>Outside the usual dose</source>
        <translation>Außerhalb der üblichen Dosis</translation>
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="166" />
        <source>No exercises yet. {find} to the catalogue, {enter} adds.</source>
        <translation>Noch keine Übungen. {find} führt zum Katalog, {enter} fügt hinzu.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="169" />
        <source>{count} exercises</source>
        <translation>{count} Übungen</translation>
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="171" />
        <source>1 exercise</source>
        <translation>1 Übung</translation>
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="175" />
        <source>no irritability said: proposed as for high, doses not compared</source>
        <translation>Irritierbarkeit nicht genannt: vorgeschlagen wie für hohe, Dosen nicht verglichen</translation>
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="178" />
        <source>{count} outside the usual dose</source>
        <translation>{count} außerhalb der üblichen Dosis</translation>
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="187" />
        <source>The practice key is mistyped or cut short: copy it again from the practice's own, or leave it empty.</source>
        <translation>Der Praxisschlüssel ist vertippt oder abgeschnitten: Kopieren Sie den öffentlichen Schlüssel Ihrer Praxis noch einmal, oder lassen Sie das Feld leer.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="203" />
        <source>Plans (*.json);;All files (*)</source>
        <translation>Pläne (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="69" />
        <source>none</source>
        <translation>ohne</translation>
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="87" />
        <source>{field} is '{text}': write a number from {least:g} to {most:g}, or leave it empty.</source>
        <translation>„{field}“ ist „{text}“: Schreiben Sie eine Zahl von {least:g} bis {most:g} oder lassen Sie das Feld leer.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="119" />
        <source>{field} is '{text}', which is no date: write it like {example}, or leave it empty.</source>
        <translation>„{field}“ ist „{text}“ und damit kein Datum: Schreiben Sie es wie {example} oder lassen Sie das Feld leer.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="157" />
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="221" />
        <source>By time, not measured</source>
        <translation>Nach Zeit, nicht gemessen</translation>
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="224" />
        <source>Measured: {movement}, {position}; {camera}</source>
        <translation>Gemessen: {movement}, {position}; {camera}</translation>
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="236" />
        <source>camera in front</source>
        <translation>Kamera vorn</translation>
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="238" />
        <source>camera at the stiff side</source>
        <translation>Kamera auf der steifen Seite</translation>
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="240" />
        <source>camera behind</source>
        <translation>Kamera hinten</translation>
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="242" />
        <source>camera raised at the foot end</source>
        <translation>Kamera erhöht am Fußende</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="33" />
        <source>not said</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="34" />
        <source>Patient code</source>
        <translation>Patientencode</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="35" />
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="36" />
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="37" />
        <source>Phase</source>
        <translation>Phase</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="38" />
        <source>Irritability</source>
        <translation>Irritierbarkeit</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="39" />
        <source>Sessions a week</source>
        <translation>Sitzungen pro Woche</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="40" />
        <source>Valid until</source>
        <translation>Gültig bis</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="41" />
        <source>Contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="42" />
        <source>Practice key</source>
        <translation>Praxisschlüssel</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="43" />
        <source>optional, age1…</source>
        <translation>freiwillig, age1…</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="60" />
        <source>&amp;Patient code</source>
        <translation>&amp;Patientencode</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="61" />
        <source>&amp;Title</source>
        <translation>&amp;Titel</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="62" />
        <source>Si&amp;de</source>
        <translation>&amp;Seite</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="63" />
        <source>P&amp;hase</source>
        <translation>Ph&amp;ase</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="64" />
        <source>&amp;Irritability</source>
        <translation>&amp;Irritierbarkeit</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="65" />
        <source>Sessions a &amp;week</source>
        <translation>Sitzungen pro &amp;Woche</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="66" />
        <source>&amp;Valid until</source>
        <translation>&amp;Gültig bis</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="67" />
        <source>&amp;Contact</source>
        <translation>&amp;Kontakt</translation>
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="68" />
        <source>Practice &amp;key</source>
        <translation>Praxisschlüsse&amp;l</translation>
    </message>
    <message>
        <location filename="../therapist/plan_list.py" line="31" />
        <source>Exercises of the plan</source>
        <translation>Übungen des Plans</translation>
    </message>
    <message>
        <location filename="../therapist/plan_list.py" line="44" />
        <source>&amp;Up</source>
        <translation>Nach &amp;oben</translation>
    </message>
    <message>
        <location filename="../therapist/plan_list.py" line="45" />
        <source>D&amp;own</source>
        <translation>Nach &amp;unten</translation>
    </message>
    <message>
        <location filename="../therapist/plan_list.py" line="46" />
        <source>Re&amp;move</source>
        <translation>Ent&amp;fernen</translation>
    </message>
    <message>
        <location filename="../therapist/plan_page.py" line="63" />
        <source>What changed against the opened plan</source>
        <translation>Was sich gegenüber dem geöffneten Plan geändert hat</translation>
    </message>
    <message>
        <location filename="../therapist/plan_page.py" line="164" />
        <source>Added: {exercise}, {dose}.</source>
        <translation>Hinzugefügt: {exercise}, {dose}.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_page.py" line="227" />
        <source>What changed against revision {revision}</source>
        <translation>Änderungen gegenüber Fassung {revision}</translation>
    </message>
    <message>
        <location filename="../therapist/plan_page.py" line="229" />
        <source>What changed against revision {revision} of {day}</source>
        <translation>Änderungen gegenüber Fassung {revision} vom {day}</translation>
    </message>
    <message>
        <location filename="../therapist/plan_page.py" line="236" />
        <source>Nothing.</source>
        <translation>Keine.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="228" />
        <location filename="../therapist/plan_window.py" line="172" />
        <location filename="../therapist/plan_window.py" line="52" />
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="57" />
        <source>Message</source>
        <translation>Meldung</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="75" />
        <source>The program proposes usual doses; the licensed practitioner who examined the shoulder decides.</source>
        <translation>Das Programm schlägt übliche Dosen vor; es entscheidet, wer die Schulter untersucht hat und zur Behandlung zugelassen ist.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="109" />
        <location filename="../therapist/plan_window.py" line="90" />
        <source>New plan</source>
        <translation>Neuer Plan</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="91" />
        <source>Open plan…</source>
        <translation>Plan öffnen…</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="92" />
        <source>&amp;Save plan…</source>
        <translation>Plan spei&amp;chern…</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="109" />
        <source>Plan for {code}</source>
        <translation>Plan für {code}</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="122" />
        <source>The plan shown here has changes that are not saved: save it, or begin anew with {key}, before one for {code} is made.</source>
        <translation>Der Plan hier hat Änderungen, die nicht gespeichert sind: Speichern Sie ihn oder beginnen Sie mit {key} neu, bevor einer für {code} entsteht.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="152" />
        <source>Opened {file}.</source>
        <translation>{file} ist geöffnet.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="162" />
        <source>The practice's key was renewed: this plan carries the new one.</source>
        <translation>Der Praxisschlüssel wurde erneuert: Dieser Plan trägt den neuen.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="173" />
        <source>The plan has changes that are not saved. Discard them?</source>
        <translation>Der Plan hat Änderungen, die nicht gespeichert sind. Verwerfen?</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="187" />
        <source>Open a plan</source>
        <translation>Plan öffnen</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="203" />
        <source>Save the plan</source>
        <translation>Plan speichern</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="212" />
        <source>Revision {revision} of the plan is in {path}.</source>
        <translation>Fassung {revision} des Plans steht in {path}.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="214" />
        <source>Revision {revision} of the plan is in {path}, and in the store as given out.</source>
        <translation>Fassung {revision} des Plans steht in {path} und als ausgegeben in der Datenbank.</translation>
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="229" />
        <source>{code} was given revision {revision} of a plan, which is newer than the one this was begun from. Give this one out as the next revision?</source>
        <translation>{code} hat Fassung {revision} eines Plans bekommen, die neuer ist als die, mit der dieser hier begonnen wurde. Diesen als nächste Fassung ausgeben?</translation>
    </message>
</context><context>
    <name>record</name>
    <message>
        <location filename="../../storage/store_kinds.py" line="51" />
        <source>person</source>
        <translation>Person</translation>
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="53" />
        <source>episode</source>
        <translation>Episode</translation>
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="55" />
        <source>treatment</source>
        <translation>Behandlung</translation>
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="57" />
        <source>measure of the other side</source>
        <translation>Messung der Gegenseite</translation>
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="59" />
        <source>measure by hand</source>
        <translation>Messung von Hand</translation>
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="61" />
        <source>total score</source>
        <translation>Gesamtpunktwert</translation>
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="63" />
        <source>plan</source>
        <translation>Plan</translation>
    </message>
</context><context>
    <name>records</name>
    <message>
        <location filename="../therapist/record_fields.py" line="68" />
        <source>{field} is empty: write something there.</source>
        <translation>„{field}“ ist leer: Tragen Sie etwas ein.</translation>
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="95" />
        <source>{field} has {count} characters: shorten it to at most {most}.</source>
        <translation>„{field}“ hat {count} Zeichen: Kürzen Sie auf höchstens {most}.</translation>
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="121" />
        <source>{field} is '{text}', which is no date: write it like {example}.</source>
        <translation>„{field}“ ist „{text}“ und damit kein Datum: Schreiben Sie es wie {example}.</translation>
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="125" />
        <source>{field} is empty: write it like {example}.</source>
        <translation>„{field}“ ist leer: Schreiben Sie den Tag wie {example}.</translation>
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="131" />
        <source>{field} is {day}, which is yet to come: write the day on which it was.</source>
        <translation>„{field}“ ist der {day}, der noch kommt: Tragen Sie den Tag ein, an dem es war.</translation>
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="157" />
        <source>{least} to {most}</source>
        <translation>{least} bis {most}</translation>
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="172" />
        <source>{field} is '{text}': write a number from {least} to {most}.</source>
        <translation>„{field}“ ist „{text}“: Schreiben Sie eine Zahl von {least} bis {most}.</translation>
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="176" />
        <source>{field} is empty: write a number from {least} to {most}.</source>
        <translation>„{field}“ ist leer: Schreiben Sie eine Zahl von {least} bis {most}.</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="56" />
        <source>&amp;Date</source>
        <translation>&amp;Datum</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="48" />
        <location filename="../therapist/record_forms.py" line="60" />
        <source>&amp;Treatment</source>
        <translation>&amp;Behandlung</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="99" />
        <location filename="../therapist/record_forms.py" line="60" />
        <source>&amp;Note</source>
        <translation>Be&amp;merkung</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="66" />
        <source>&amp;Questionnaire</source>
        <translation>&amp;Fragebogen</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="66" />
        <source>&amp;Total</source>
        <translation>&amp;Punktzahl</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="67" />
        <source>Out &amp;of</source>
        <translation>&amp;Von höchstens</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="73" />
        <source>&amp;Movement</source>
        <translation>&amp;Bewegung</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="76" />
        <source>&amp;Side</source>
        <translation>&amp;Seite</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="76" />
        <source>&amp;How</source>
        <translation>&amp;Ausführung</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="77" />
        <source>passive</source>
        <translation>passiv</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="77" />
        <source>active</source>
        <translation>aktiv</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="80" />
        <source>De&amp;grees</source>
        <translation>&amp;Grad</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="86" />
        <source>&amp;Code</source>
        <translation>&amp;Code</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="86" />
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="87" />
        <source>as it will stand in plans and files</source>
        <translation>wie er in Plänen und Dateien stehen soll</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="88" />
        <source>optional; it stays in this practice</source>
        <translation>freiwillig; er bleibt in dieser Praxis</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="96" />
        <source>Si&amp;de</source>
        <translation>&amp;Seite</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="96" />
        <source>&amp;Began on</source>
        <translation>&amp;Begonnen am</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="97" />
        <source>P&amp;hase</source>
        <translation>&amp;Phase</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="97" />
        <source>&amp;Irritability</source>
        <translation>&amp;Irritierbarkeit</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="98" />
        <source>&amp;Goals, in the person's own words</source>
        <translation>&amp;Ziele in eigenen Worten der Person</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="100" />
        <source>not said</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="146" />
        <source>What to correct</source>
        <translation>Was zu berichtigen ist</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="149" />
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="152" />
        <source>{enter}, or {save} out of a text of several lines</source>
        <translation>{enter}, oder {save} aus einem Text mit mehreren Zeilen</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="200" />
        <source>{side}, since {day}</source>
        <translation>{side}, seit {day}</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="47" />
        <location filename="../therapist/record_forms.py" line="204" />
        <source>&amp;Episode</source>
        <translation>&amp;Episode</translation>
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="204" />
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="53" />
        <source>Records</source>
        <translation>Akte</translation>
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="57" />
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="58" />
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="59" />
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="60" />
        <source>Beside it</source>
        <translation>Daneben</translation>
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="177" />
        <source>None yet. {enter} opens the plan window ({plan}).</source>
        <translation>Noch keine. {enter} öffnet das Planfenster ({plan}).</translation>
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="179" />
        <source>None yet. {enter} adds one.</source>
        <translation>Noch kein Eintrag. {enter} legt einen an.</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="22" />
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="23" />
        <source>Episode</source>
        <translation>Episode</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="24" />
        <source>Treatment</source>
        <translation>Behandlung</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="25" />
        <source>Measure of the other side</source>
        <translation>Messung der Gegenseite</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="26" />
        <source>Goniometer reading</source>
        <translation>Goniometermessung</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="27" />
        <source>Questionnaire total</source>
        <translation>Fragebogen-Punktzahl</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="28" />
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="35" />
        <source>New person</source>
        <translation>Neue Person</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="36" />
        <source>New episode</source>
        <translation>Neue Episode</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="37" />
        <source>New treatment</source>
        <translation>Neue Behandlung</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="38" />
        <source>New measure of the other side</source>
        <translation>Neue Messung der Gegenseite</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="39" />
        <source>New goniometer reading</source>
        <translation>Neue Goniometermessung</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="40" />
        <source>New questionnaire total</source>
        <translation>Neue Fragebogen-Punktzahl</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="49" />
        <source>&amp;Other side</source>
        <translation>Gegen&amp;seite</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="50" />
        <source>&amp;Goniometer reading</source>
        <translation>&amp;Goniometermessung</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="51" />
        <source>&amp;Questionnaire total</source>
        <translation>&amp;Fragebogen-Punktzahl</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="58" />
        <source>Episodes: side, course and goals</source>
        <translation>Episoden: Seite, Verlauf und Ziele</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="59" />
        <source>Treatments</source>
        <translation>Behandlungen</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="60" />
        <source>Other side, to compare with</source>
        <translation>Gegenseite zum Vergleich</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="61" />
        <source>Goniometer in the practice, beside the camera at home</source>
        <translation>Goniometer in der Praxis, neben der Kamera zu Hause</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="62" />
        <source>Questionnaire totals</source>
        <translation>Fragebogen-Punktzahlen</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="63" />
        <source>Plans given</source>
        <translation>Ausgegebene Pläne</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="69" />
        <source>{record} added</source>
        <translation>{record} hinzugefügt</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="74" />
        <source>{record} changed</source>
        <translation>{record} geändert</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="79" />
        <source>{record} deleted</source>
        <translation>{record} gelöscht</translation>
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="84" />
        <source>{enter} changes the chosen record, {insert} adds one in its section, {delete} removes it, {undo} takes the last change back. Numbers are told as they were typed in; their error is not known.</source>
        <translation>{enter} ändert den gewählten Eintrag, {insert} legt in seinem Abschnitt einen an, {delete} entfernt ihn, {undo} nimmt die letzte Änderung zurück. Zahlen stehen so da, wie sie eingetippt wurden; ihr Fehler ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="76" />
        <source>&amp;Add…</source>
        <translation>Hinzu&amp;fügen…</translation>
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="100" />
        <source>C&amp;hange…</source>
        <translation>&amp;Ändern…</translation>
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="101" />
        <source>&amp;Delete</source>
        <translation>Lös&amp;chen</translation>
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="126" />
        <source>no name written down (Patient, Change code or name)</source>
        <translation>kein Name eingetragen (Menü „Person“, „Code oder Namen ändern“)</translation>
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="170" />
        <source>{record} kept.</source>
        <translation>{record} gespeichert.</translation>
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="196" />
        <source>{what}. {key} takes it back.</source>
        <translation>{what}. {key} nimmt es zurück.</translation>
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="204" />
        <source>Erase {code} with every session, record and plan? This cannot be taken back; backup copies of the store are not touched.</source>
        <translation>{code} mit allen Sitzungen, Einträgen und Plänen löschen? Das lässt sich nicht zurücknehmen; Sicherungskopien der Datenbank bleiben unberührt.</translation>
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="211" />
        <source>Erase the patient</source>
        <translation>Person löschen</translation>
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="226" />
        <source>{code} is erased.</source>
        <translation>{code} ist gelöscht.</translation>
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="237" />
        <source>Taken back: {what}.</source>
        <translation>Zurückgenommen: {what}.</translation>
    </message>
</context><context>
    <name>replay</name>
    <message>
        <location filename="../therapist/replay_buttons.py" line="28" />
        <source>Play or pause</source>
        <translation>Abspielen oder anhalten</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="31" />
        <source>One picture back</source>
        <translation>Ein Bild zurück</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="33" />
        <source>One picture on</source>
        <translation>Ein Bild weiter</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="43" />
        <source>Previous repetition</source>
        <translation>Vorige Wiederholung</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="44" />
        <source>Previous</source>
        <translation>Vorige</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="45" />
        <source>Next repetition</source>
        <translation>Nächste Wiederholung</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="46" />
        <source>Next</source>
        <translation>Nächste</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="47" />
        <source>Compare with another session</source>
        <translation>Mit einer anderen Sitzung vergleichen</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="48" />
        <source>Compare…</source>
        <translation>Vergleichen…</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="49" />
        <source>Close the replay</source>
        <translation>Wiedergabe schließen</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="50" />
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="55" />
        <source>Speed</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="82" />
        <source>Pause</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="82" />
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="93" />
        <source>Quarter speed</source>
        <translation>Viertel des Tempos</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="94" />
        <source>Half speed</source>
        <translation>Halbes Tempo</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="95" />
        <source>Full speed</source>
        <translation>Volles Tempo</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="101" />
        <source>Space play or pause, Left and Right one picture, Home and End, Page Up and Page Down repetition, 1 2 3 speed, C compare, Esc close</source>
        <translation>Leertaste: abspielen oder anhalten; Links, Rechts: ein Bild; Pos1, Ende; Bild auf, Bild ab: Wiederholung; 1 2 3: Tempo; C: vergleichen; Esc: schließen</translation>
    </message>
    <message>
        <location filename="../therapist/replay_figure.py" line="37" />
        <source>Stick figure</source>
        <translation>Strichfigur</translation>
    </message>
    <message>
        <location filename="../therapist/replay_page.py" line="52" />
        <source>The session of {day} has no measured repetition to replay; choose another one.</source>
        <translation>Die Sitzung vom {day} hat keine gemessene Wiederholung, die sich wiedergeben ließe; wählen Sie eine andere.</translation>
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="49" />
        <location filename="../therapist/replay_page.py" line="69" />
        <source>Replay</source>
        <translation>Wiedergabe</translation>
    </message>
    <message>
        <location filename="../therapist/replay_page.py" line="81" />
        <source>Message</source>
        <translation>Meldung</translation>
    </message>
    <message>
        <location filename="../therapist/replay_page.py" line="222" />
        <source>{exercise}, repetition {number} of {count} of the session</source>
        <translation>{exercise}, Wiederholung {number} von {count} der Sitzung</translation>
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="25" />
        <source>Session files (*.shoulder*.zip *.shoulder*.age *.zip);;All files (*)</source>
        <translation>Sitzungsdateien (*.shoulder*.zip *.shoulder*.age *.zip);;Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="43" />
        <source>{day}, {time}, {count} repetitions</source>
        <translation>{day}, {time}, {count} Wiederholungen</translation>
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="45" />
        <source>{day}, {time}, 1 repetition</source>
        <translation>{day}, {time}, 1 Wiederholung</translation>
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="49" />
        <source>Session to replay</source>
        <translation>Sitzung, die wiedergegeben wird</translation>
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="50" />
        <source>A session file…</source>
        <translation>Eine Sitzungsdatei…</translation>
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="55" />
        <source>the session of {session}</source>
        <translation>die Sitzung vom {session}</translation>
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="57" />
        <source>Session file to replay</source>
        <translation>Sitzungsdatei, die wiedergegeben wird</translation>
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="76" />
        <source>The session of {day} has no repetition of {exercise}; choose another one.</source>
        <translation>Die Sitzung vom {day} hat keine Wiederholung von {exercise}; wählen Sie eine andere.</translation>
    </message>
    <message>
        <location filename="../therapist/replay_trace.py" line="32" />
        <source>Trace of the repetition</source>
        <translation>Verlaufskurve der Wiederholung</translation>
    </message>
    <message>
        <location filename="../therapist/trace_painting.py" line="125" />
        <source>hold</source>
        <translation>Halten</translation>
    </message>
</context><context>
    <name>report</name>
    <message>
        <location filename="../shared/report_page.py" line="80" />
        <source>Shoulder report: {patient_code}</source>
        <translation>Schulterbericht: {patient_code}</translation>
    </message>
    <message>
        <location filename="../shared/report_page.py" line="91" />
        <source>Written on {day}</source>
        <translation>Geschrieben am {day}</translation>
    </message>
    <message>
        <location filename="../shared/report_page.py" line="94" />
        <source>{period}, {sessions}. Plan: {title}</source>
        <translation>{period}, {sessions}. Plan: {title}</translation>
    </message>
    <message>
        <location filename="../shared/report_page.py" line="96" />
        <source>{period}, {sessions}</source>
        <translation>{period}, {sessions}</translation>
    </message>
    <message>
        <location filename="../shared/report_page.py" line="138" />
        <source>1 more movement in the program</source>
        <translation>1 weitere Bewegung im Programm</translation>
    </message>
    <message>
        <location filename="../shared/report_page.py" line="140" />
        <source>{count} more movements in the program</source>
        <translation>{count} weitere Bewegungen im Programm</translation>
    </message>
    <message>
        <location filename="../shared/report_page.py" line="178" />
        <source>No session gave a value to draw.</source>
        <translation>Keine Sitzung ergab einen Wert zum Zeichnen.</translation>
    </message>
    <message>
        <location filename="../shared/report_page.py" line="198" />
        <source>Sessions by week, done / asked for</source>
        <translation>Sitzungen je Woche, gemacht / vorgesehen</translation>
    </message>
    <message>
        <location filename="../shared/report_page.py" line="203" />
        <source>What was done, pain, camera</source>
        <translation>Durchführung, Schmerz, Kamera</translation>
    </message>
    <message>
        <location filename="../shared/report_page.py" line="225" />
        <source>Measured with {software}.</source>
        <translation>Gemessen mit {software}.</translation>
    </message>
    <message>
        <location filename="../shared/report_page.py" line="239" />
        <source>How to read this</source>
        <translation>Zum Lesen</translation>
    </message>
</context><context>
    <name>review</name>
    <message>
        <location filename="../therapist/trace_painting.py" line="148" />
        <source>no frame</source>
        <translation>kein Bild</translation>
    </message>
    <message>
        <location filename="../../review/chart.py" line="160" />
        <source>No session gave a value.</source>
        <translation>Keine Sitzung ergab einen Wert.</translation>
    </message>
    <message>
        <location filename="../../review/chart.py" line="163" />
        <source>{count} sessions, but in too few of them the trunk kept still.</source>
        <translation>{count} Sitzungen, aber in zu wenigen davon blieb der Rumpf ruhig.</translation>
    </message>
    <message>
        <location filename="../../review/chart.py" line="167" />
        <source>One session: {value}; too few sessions to speak of change.</source>
        <translation>Eine Sitzung: {value}; zu wenig, um von einer Änderung zu sprechen.</translation>
    </message>
    <message>
        <location filename="../../review/chart.py" line="170" />
        <source>{change}: {verdict} (detectable from {least}), {sessions}</source>
        <translation>{change}: {verdict} (nachweisbar ab {least}), {sessions}</translation>
    </message>
    <message>
        <location filename="../../review/chart_context.py" line="57" />
        <source>injection</source>
        <translation>Injektion</translation>
    </message>
    <message>
        <location filename="../../review/chart_context.py" line="59" />
        <source>hydrodilatation</source>
        <translation>Hydrodilatation</translation>
    </message>
    <message>
        <location filename="../../review/chart_context.py" line="61" />
        <source>surgery</source>
        <translation>Operation</translation>
    </message>
    <message>
        <location filename="../../review/chart_context.py" line="63" />
        <source>other</source>
        <translation>andere Behandlung</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="69" />
        <source>Nothing was ever held in a sitting.</source>
        <translation>In keiner Sitzung wurde je etwas gehalten.</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="75" />
        <source>No sitting since {day}, {pause} days; the plan asks for one at least every 1 day.</source>
        <translation>Keine Sitzung seit {day}, {pause} Tage; der Plan sieht täglich mindestens eine vor.</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="80" />
        <source>No sitting since {day}, {pause} days; the plan asks for one at least every {pause_days} days.</source>
        <translation>Keine Sitzung seit {day}, {pause} Tage; der Plan sieht mindestens alle {pause_days} Tage eine vor.</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="99" />
        <source>Pain {pain} of 10 on {day}, above {limit}.</source>
        <translation>Schmerz {pain} von 10 am {day}, über {limit}.</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="112" />
        <source>Pain rose from {first} to {last} of 10 (medians of the first and the last 1 sitting); {rise} points matter.</source>
        <translation>Schmerz von {first} auf {last} von 10 gestiegen (erste und letzte Sitzung); {rise} Punkte sind von Bedeutung.</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="118" />
        <source>Pain rose from {first} to {last} of 10 (medians of the first and the last {size} sittings); {rise} points matter.</source>
        <translation>Schmerz von {first} auf {last} von 10 gestiegen (Mediane der ersten und der letzten {size} Sitzungen); {rise} Punkte sind von Bedeutung.</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="135" />
        <source>The only measured sitting is poorly measured: {what}.</source>
        <translation>Die einzige gemessene Sitzung ist schlecht gemessen: {what}.</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="140" />
        <source>{poor} of the last {count} measured sittings are poorly measured; in the latest of them: {what}.</source>
        <translation>{poor} der letzten {count} gemessenen Sitzungen sind schlecht gemessen; in der jüngsten davon: {what}.</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="161" />
        <source>{movements}: the last sittings were measured with another camera set-up than the first.</source>
        <translation>{movements}: Die letzten Sitzungen wurden mit einem anderen Kameraaufbau gemessen als die ersten.</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="167" />
        <source>{movements}: the last sittings were measured with another pose model than the first, by the same camera set-up.</source>
        <translation>{movements}: Die letzten Sitzungen wurden bei gleichem Kameraaufbau mit einem anderen Posenmodell gemessen als die ersten.</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="173" />
        <source>{movements}: the last sittings were measured with another camera set-up and another pose model than the first.</source>
        <translation>{movements}: Die letzten Sitzungen wurden mit einem anderen Kameraaufbau und einem anderen Posenmodell gemessen als die ersten.</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="189" />
        <source>{movement}: {change} since {day}, beyond the error of measuring.</source>
        <translation>{movement}: {change} seit {day}, über den Messfehler hinaus.</translation>
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="211" />
        <source>{exercise}: {reason}</source>
        <translation>{exercise}: {reason}</translation>
    </message>
    <message>
        <location filename="../../review/counts.py" line="11" />
        <source>1 session</source>
        <translation>1 Sitzung</translation>
    </message>
    <message>
        <location filename="../../review/counts.py" line="12" />
        <source>{count} sessions</source>
        <translation>{count} Sitzungen</translation>
    </message>
    <message>
        <location filename="../../review/counts.py" line="18" />
        <source>1 sitting</source>
        <translation>1 Sitzung</translation>
    </message>
    <message>
        <location filename="../../review/counts.py" line="19" />
        <source>{count} sittings</source>
        <translation>{count} Sitzungen</translation>
    </message>
    <message>
        <location filename="../../review/counts.py" line="25" />
        <source>1 hold</source>
        <translation>1 Haltephase</translation>
    </message>
    <message>
        <location filename="../../review/counts.py" line="26" />
        <source>{count} holds</source>
        <translation>{count} Haltephasen</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="12" />
        <source>nobody in view</source>
        <translation>niemand im Bild</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="13" />
        <source>another person</source>
        <translation>eine andere Person</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="14" />
        <source>somebody else in view</source>
        <translation>noch jemand im Bild</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="15" />
        <source>too far away</source>
        <translation>zu weit weg</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="16" />
        <source>too close</source>
        <translation>zu nah</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="17" />
        <source>too dark</source>
        <translation>zu dunkel</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="18" />
        <source>hips out of view</source>
        <translation>Hüften nicht im Bild</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="19" />
        <source>shoulders out of view</source>
        <translation>Schultern nicht im Bild</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="20" />
        <source>arm out of view</source>
        <translation>Arm nicht im Bild</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="21" />
        <source>no room for the arm</source>
        <translation>kein Platz für den Arm</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="22" />
        <source>no room above for the arm</source>
        <translation>kein Platz nach oben für den Arm</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="23" />
        <source>turn to face the camera</source>
        <translation>nicht zur Kamera gewandt</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="24" />
        <source>turn your side to the camera</source>
        <translation>nicht seitlich zur Kamera</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="25" />
        <source>turn around</source>
        <translation>falsch herum</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="26" />
        <source>raise the camera</source>
        <translation>Kamera zu niedrig</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="27" />
        <source>legs in the way</source>
        <translation>Beine verdecken die Sicht</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="28" />
        <source>turn your feet to the camera</source>
        <translation>Füße nicht zur Kamera</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="29" />
        <source>lie on your back</source>
        <translation>nicht in Rückenlage</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="30" />
        <source>lie face down</source>
        <translation>nicht in Bauchlage</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="31" />
        <source>stand or sit upright</source>
        <translation>nicht aufrecht</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="32" />
        <source>wrong side to the camera</source>
        <translation>falsche Seite zur Kamera</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="33" />
        <source>bend the elbow</source>
        <translation>Ellbogen nicht gebeugt</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="34" />
        <source>straighten the elbow</source>
        <translation>Ellbogen nicht gestreckt</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="35" />
        <source>other movement</source>
        <translation>andere Bewegung</translation>
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="36" />
        <source>unsure</source>
        <translation>unsicher</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="95" />
        <location filename="../../review/doubt_wording.py" line="37" />
        <source>error not known</source>
        <translation>Fehler nicht bekannt</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="30" />
        <source>Since {day}</source>
        <translation>Seit {day}</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="32" />
        <source>Since a visit</source>
        <translation>Seit einem Termin</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="35" />
        <source>Since the start</source>
        <translation>Seit Beginn</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="37" />
        <source>By week</source>
        <translation>Je Woche</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="40" />
        <source>Real beyond</source>
        <translation>Echt ab</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="51" />
        <source>{change}, and more sessions alone would not</source>
        <translation>{change}, und mehr Sitzungen allein würden es nicht zeigen</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="54" />
        <source>{change}; about {count} sessions in all might</source>
        <translation>{change}; insgesamt etwa {count} Sitzungen könnten es zeigen</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="62" />
        <source>{change}: {verdict}</source>
        <translation>{change}: {verdict}</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="69" />
        <source>no visit is written down</source>
        <translation>kein Termin eingetragen</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="71" />
        <source>that is since the start</source>
        <translation>das ist seit Beginn</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="74" />
        <source>no session to compare before that visit</source>
        <translation>keine Sitzung vor diesem Termin zum Vergleichen</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="75" />
        <source>no session to compare after that visit</source>
        <translation>keine Sitzung nach diesem Termin zum Vergleichen</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="76" />
        <source>{change} (detectable from {least})</source>
        <translation>{change} (nachweisbar ab {least})</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="84" />
        <source>sessions in fewer than {count} weeks: no slope yet</source>
        <translation>Sitzungen in weniger als {count} Wochen: noch keine Steigung</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="90" />
        <source>no sure direction: {low} to {high} a week ({count} weeks' medians)</source>
        <translation>keine sichere Richtung: {low} bis {high} pro Woche ({count} Wochenmediane)</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="93" />
        <source>{slope} a week, {low} to {high} ({count} weeks' medians)</source>
        <translation>{slope} pro Woche, {low} bis {high} ({count} Wochenmediane)</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="168" />
        <location filename="../../review/findings.py" line="103" />
        <source>{change} down</source>
        <translation>{change} tiefer</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="170" />
        <location filename="../../review/findings.py" line="104" />
        <source>{change} up</source>
        <translation>{change} höher</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="109" />
        <source>by hand {amount} ({source})</source>
        <translation>von Hand {amount} ({source})</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="114" />
        <source>{least}, by the scatter of these {sessions} and the camera's place; two single ones {single}, {by_hand}</source>
        <translation>{least}, aus der Streuung dieser {sessions} und dem Platz der Kamera; zwei einzelne {single}, {by_hand}</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="120" />
        <source>{least}: {by_hand}, widened as patients differ; this patient's own repeatability counts from {count} sessions on</source>
        <translation>{least}: {by_hand}, erweitert, weil Menschen sich unterscheiden; die eigene Wiederholbarkeit zählt ab {count} Sitzungen</translation>
    </message>
    <message>
        <location filename="../../review/findings.py" line="126" />
        <source>{least}, the error of the readings themselves; {by_hand}</source>
        <translation>{least}, der Fehler der Messwerte selbst; {by_hand}</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="33" />
        <source>Other side</source>
        <translation>Gegenseite</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="132" />
        <location filename="../../review/findings_beside.py" line="34" />
        <source>Form</source>
        <translation>Ausführung</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="43" />
        <source>Met. {reason}</source>
        <translation>Erfüllt. {reason}</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="45" />
        <source>Not yet. {reason}</source>
        <translation>Noch nicht. {reason}</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="47" />
        <source>Next step</source>
        <translation>Nächster Schritt</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="49" />
        <source>{angle}, by the plan</source>
        <translation>{angle}, nach dem Plan</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="51" />
        <source>Not beyond</source>
        <translation>Nicht über</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="57" />
        <source>measured {day}</source>
        <translation>gemessen am {day}</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="59" />
        <source>by the plan</source>
        <translation>nach dem Plan</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="63" />
        <source>{value} ({when}); this side {missing} short, {share} of it</source>
        <translation>{value} ({when}); diese Seite {missing} weniger, {share} davon</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="65" />
        <source>{value} ({when}); this side {missing} further, {share} of it</source>
        <translation>{value} ({when}); diese Seite {missing} mehr, {share} davon</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="88" />
        <source>nothing was held</source>
        <translation>nichts gehalten</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="92" />
        <source>no fault noted in any of {holds}</source>
        <translation>kein Fehler vermerkt ({holds})</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="93" />
        <source>{fault} in {share}</source>
        <translation>{fault} in {share}</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="101" />
        <source>{shares} of {holds}; leaned and turned holds are kept out of the range</source>
        <translation>{shares} von {holds}; geneigte und gedrehte Haltephasen zählen nicht zum Bewegungsausmaß</translation>
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="106" />
        <source>{shares} of {holds}</source>
        <translation>{shares} von {holds}</translation>
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="13" />
        <source>trunk leaned</source>
        <translation>Rumpf geneigt</translation>
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="15" />
        <source>trunk turned</source>
        <translation>Rumpf gedreht</translation>
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="17" />
        <source>shoulder rose</source>
        <translation>Schulter hochgezogen</translation>
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="19" />
        <source>elbow bent</source>
        <translation>Ellbogen gebeugt</translation>
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="21" />
        <source>elbow straightened</source>
        <translation>Ellbogen gestreckt</translation>
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="23" />
        <source>elbow drifted</source>
        <translation>Ellbogen abgewichen</translation>
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="29" />
        <source>Trunk leans</source>
        <translation>Rumpfneigung</translation>
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="30" />
        <source>Trunk turns</source>
        <translation>Rumpfdrehung</translation>
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="31" />
        <source>Elbow bent</source>
        <translation>Ellbogenbeugung</translation>
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="32" />
        <source>Shoulder rises</source>
        <translation>Schulterhochzug</translation>
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="33" />
        <source>Elbow drifts</source>
        <translation>Ellbogenabweichung</translation>
    </message>
    <message>
        <location filename="../../review/levels.py" line="85" />
        <source>about {high} to {low}</source>
        <translation>etwa {high} bis {low}</translation>
    </message>
    <message>
        <location filename="../../review/levels.py" line="101" />
        <source>buttock</source>
        <translation>Gesäß</translation>
    </message>
    <message>
        <location filename="../../review/levels.py" line="103" />
        <source>side of the thigh</source>
        <translation>Seite des Oberschenkels</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="41" />
        <source>The plan has no rule for a next step.</source>
        <translation>Der Plan hat keine Regel für einen nächsten Schritt.</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="45" />
        <source>The rule asks for degrees, but none are measured of it.</source>
        <translation>Die Regel verlangt Grad, aber hier werden keine gemessen.</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="56" />
        <source>{met} of {sittings} in a row meet the rule: on {day} {missing}.</source>
        <translation>{met} von {sittings} in Folge erfüllen die Regel: Am {day} {missing}.</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="68" />
        <source>{met} of {sittings} so far meet the rule.</source>
        <translation>Bisher erfüllen {met} von {sittings} die Regel.</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="94" />
        <source>an easier exercise was done in its place</source>
        <translation>wurde stattdessen eine leichtere Übung gemacht</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="96" />
        <source>it was not completed</source>
        <translation>wurde die Übung nicht abgeschlossen</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="98" />
        <source>no pain was given after it</source>
        <translation>wurde danach kein Schmerz angegeben</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="100" />
        <source>pain after it was {pain}, above {most}</source>
        <translation>war der Schmerz danach {pain}, über {most}</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="106" />
        <source>no hold was completed with a still trunk</source>
        <translation>wurde keine Haltephase mit ruhigem Rumpf vollendet</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="109" />
        <source>{best} were reached, not {least}</source>
        <translation>wurden {best} erreicht, nicht {least}</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="118" />
        <source>completed with pain at most {pain}</source>
        <translation>vollständig, Schmerz höchstens {pain}</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="120" />
        <source>completed with pain at most {pain} and at least {least} reached (furthest of the last sitting {best})</source>
        <translation>vollständig, Schmerz höchstens {pain} und mindestens {least} erreicht (am weitesten in der letzten Sitzung: {best})</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="126" />
        <source>Last sitting: {done}. The therapist decides.</source>
        <translation>Letzte Sitzung: {done}. Entschieden wird therapeutisch.</translation>
    </message>
    <message>
        <location filename="../../review/next_step.py" line="128" />
        <source>Last {count} sittings in a row: {done}. The therapist decides.</source>
        <translation>Letzte {count} Sitzungen in Folge: {done}. Entschieden wird therapeutisch.</translation>
    </message>
    <message>
        <location filename="../../review/norm_words.py" line="12" />
        <source>32 people with capsulitis, goniometer by hand</source>
        <translation>32 Personen mit Kapsulitis, Goniometer von Hand</translation>
    </message>
    <message>
        <location filename="../../review/norm_words.py" line="14" />
        <source>60 healthy people, tape by hand</source>
        <translation>60 gesunde Personen, Maßband von Hand</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="33" />
        <source>1 value only from holds in which the trunk leaned or turned: not compared.</source>
        <translation>1 Wert nur aus Haltephasen mit geneigtem oder gedrehtem Rumpf: nicht verglichen.</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="38" />
        <source>{count} values only from holds in which the trunk leaned or turned: not compared.</source>
        <translation>{count} Werte nur aus Haltephasen mit geneigtem oder gedrehtem Rumpf: nicht verglichen.</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="45" />
        <source>The definition of an angle changed: rows of the two are not compared.</source>
        <translation>Die Definition eines Winkels hat sich geändert: Zeilen der beiden werden nicht verglichen.</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="52" />
        <source>1 value from holds let go before their time (hollow dots).</source>
        <translation>1 Wert aus vorzeitig gelösten Haltephasen (hohle Punkte).</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="54" />
        <source>{count} values from holds let go before their time (hollow dots).</source>
        <translation>{count} Werte aus vorzeitig gelösten Haltephasen (hohle Punkte).</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="61" />
        <source>1 value with the arm out of sight for over a fifth.</source>
        <translation>1 Wert, bei dem der Arm über ein Fünftel der Zeit nicht zu sehen war.</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="63" />
        <source>{count} values with the arm out of sight for over a fifth.</source>
        <translation>{count} Werte, bei denen der Arm über ein Fünftel der Zeit nicht zu sehen war.</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="68" />
        <source>The camera does not see why a range is limited. A systematic error that stays the same cancels in the change, not in the single values.</source>
        <translation>Die Kamera sieht nicht, warum ein Bewegungsausmaß eingeschränkt ist. Ein systematischer Fehler, der gleich bleibt, hebt sich in der Änderung auf, nicht in den einzelnen Werten.</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="81" />
        <source>{movement}: the last sessions were measured with another camera set-up than the first; all of the readings' error therefore counts.</source>
        <translation>{movement}: Die letzten Sitzungen wurden mit einem anderen Kameraaufbau gemessen als die ersten; deshalb zählt der ganze Fehler der Messwerte.</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="87" />
        <source>{movement}: the last sessions were measured with another pose model than the first, by the same camera set-up; all of the readings' error therefore counts.</source>
        <translation>{movement}: Die letzten Sitzungen wurden bei gleichem Kameraaufbau mit einem anderen Posenmodell gemessen als die ersten; deshalb zählt der ganze Fehler der Messwerte.</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="93" />
        <source>{movement}: the last sessions were measured with another camera set-up and another pose model than the first; all of the readings' error therefore counts.</source>
        <translation>{movement}: Die letzten Sitzungen wurden mit einem anderen Kameraaufbau und einem anderen Posenmodell gemessen als die ersten; deshalb zählt der ganze Fehler der Messwerte.</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="108" />
        <source>{movement}: too few sessions, or days too alike, to tell a change of {matters} over the whole time from none; more sessions alone would not tell, should the change stay as it is.</source>
        <translation>{movement}: zu wenige Sitzungen, oder die Tage sind sich zu ähnlich, um eine Änderung von {matters} über die ganze Zeit von keiner zu unterscheiden; mehr Sitzungen allein würden es nicht zeigen, falls die Änderung so bleibt.</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="115" />
        <source>{movement}: too few sessions, or days too alike, to tell a change of {matters} over the whole time from none; about {enough} sessions in all might tell.</source>
        <translation>{movement}: zu wenige Sitzungen, oder die Tage sind sich zu ähnlich, um eine Änderung von {matters} über die ganze Zeit von keiner zu unterscheiden; insgesamt etwa {enough} Sitzungen könnten es zeigen.</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="127" />
        <source>Angles</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="134" />
        <source>Hand behind back: the levels are those of the thumb's tip, wide enough for what the wrist does not show; percent is of the way from C7 (0 %) to the PSIS (100 %), of the wrist.</source>
        <translation>Schürzengriff: Die Höhen sind die der Daumenspitze, weit genug für das, was das Handgelenk nicht zeigt; Prozent meint den Weg des Handgelenks von C7 (0 %) bis zur SIPS (100 %).</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="143" />
        <source>{what}: with few sessions a change is told only where it is large: {figure} by hand ({source}: {people}), and more because patients differ; from six sessions on the patient's own scatter decides.</source>
        <translation>{what}: Bei wenigen Sitzungen wird eine Änderung nur genannt, wenn sie groß ist: {figure} von Hand ({source}: {people}), und mehr, weil Menschen sich unterscheiden; ab sechs Sitzungen entscheidet die eigene Streuung.</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="160" />
        <source>{listed}: what placing the camera anew does was never measured, so all of the readings' error counts, and no change up to {figure} is real ({source}).</source>
        <translation>{listed}: Was ein neues Aufstellen der Kamera bewirkt, wurde nie gemessen; deshalb zählt der ganze Fehler der Messwerte, und keine Änderung bis {figure} ist echt ({source}).</translation>
    </message>
    <message>
        <location filename="../../review/notes.py" line="170" />
        <source>{what}: the detectable change is made of the patient's own scatter, averaged over these sessions as far as their days differ, and of the camera's place, not averaged; for two single sessions it would be up to {single} (published, by hand: {figure}, {source}).</source>
        <translation>{what}: Die nachweisbare Änderung besteht aus der eigenen Streuung, gemittelt über diese Sitzungen, soweit sich ihre Tage unterscheiden, und aus dem Platz der Kamera, nicht gemittelt; für zwei einzelne Sitzungen wären es bis zu {single} (veröffentlicht, von Hand: {figure}, {source}).</translation>
    </message>
    <message>
        <location filename="../../review/overview.py" line="31" />
        <source>Since a visit: the mean of up to a week of sessions, the last ones against the last ones up to it. By week: the median of all slopes between the weeks' medians, with its 95 % interval (Theil and Sen). Days of treatments, measures, scores and plans count as visits.</source>
        <translation>Seit einem Termin: Mittel der Sitzungen von bis zu einer Woche, die letzten gegen die letzten bis zum Termin. Je Woche: Median aller Steigungen zwischen den Wochenmedianen, mit 95-%-Konfidenzintervall (Theil und Sen). Tage von Behandlungen, Messungen, Punktwerten und Plänen zählen als Termine.</translation>
    </message>
    <message>
        <location filename="../../review/overview.py" line="72" />
        <source>Poorly measured</source>
        <translation>Schlecht gemessen</translation>
    </message>
    <message>
        <location filename="../../review/overview.py" line="74" />
        <source>{sessions}: {doubt}</source>
        <translation>{sessions}: {doubt}</translation>
    </message>
    <message>
        <location filename="../../review/overview.py" line="76" />
        <source>Doubtful</source>
        <translation>Zweifelhaft</translation>
    </message>
    <message>
        <location filename="../../review/overview.py" line="78" />
        <source>Episode</source>
        <translation>Episode</translation>
    </message>
    <message>
        <location filename="../../review/overview.py" line="80" />
        <source>none written down</source>
        <translation>keine eingetragen</translation>
    </message>
    <message>
        <location filename="../../review/overview.py" line="81" />
        <source>Treatments</source>
        <translation>Behandlungen</translation>
    </message>
    <message>
        <location filename="../../review/overview.py" line="98" />
        <source>{concern} in {count} rows of the table.</source>
        <translation>{concern} in {count} Zeilen der Tabelle.</translation>
    </message>
    <message>
        <location filename="../../review/overview.py" line="109" />
        <source>none of {sittings}</source>
        <translation>keine von {sittings}</translation>
    </message>
    <message>
        <location filename="../../review/overview.py" line="110" />
        <source>{poor} of {sittings}; on {day} {what}</source>
        <translation>{poor} von {sittings}; am {day} {what}</translation>
    </message>
    <message>
        <location filename="../../review/overview.py" line="116" />
        <source>{side}, since {day}</source>
        <translation>{side}, seit {day}</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="117" />
        <location filename="../../review/overview.py" line="119" />
        <source>phase {phase_words}</source>
        <translation>Phase {phase_words}</translation>
    </message>
    <message>
        <location filename="../../review/overview.py" line="122" />
        <source>{irritability} irritability</source>
        <translation>Irritierbarkeit {irritability}</translation>
    </message>
    <message>
        <location filename="../../review/overview.py" line="127" />
        <source>{course}. Goals: {goals}</source>
        <translation>{course}. Ziele: {goals}</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="67" />
        <source>{value} passive</source>
        <translation>{value} passiv</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="69" />
        <source>{value} active</source>
        <translation>{value} aktiv</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="75" />
        <source>{total} of {most}</source>
        <translation>{total} von {most}</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="87" />
        <source>camera: none within {days} days</source>
        <translation>Kamera: kein Wert innerhalb von {days} Tagen</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="92" />
        <source>camera {text}, same day</source>
        <translation>Kamera {text}, am selben Tag</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="93" />
        <source>camera {text}, {day}</source>
        <translation>Kamera {text}, {day}</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="123" />
        <source>irritability {irritability_words}</source>
        <translation>Irritierbarkeit {irritability_words}</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="128" />
        <source>Goals: {one_line}</source>
        <translation>Ziele: {one_line}</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="133" />
        <source>Left shoulder</source>
        <translation>Linke Schulter</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="135" />
        <source>Right shoulder</source>
        <translation>Rechte Schulter</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="138" />
        <source>since {day}</source>
        <translation>seit {day}</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="140" />
        <source>phase and irritability not said</source>
        <translation>Phase und Irritierbarkeit nicht genannt</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="148" />
        <source>exercises: {count}, both sides</source>
        <translation>Übungen: {count}, beide Seiten</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="150" />
        <source>exercises: {count}, left side</source>
        <translation>Übungen: {count}, linke Seite</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="152" />
        <source>exercises: {count}, right side</source>
        <translation>Übungen: {count}, rechte Seite</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="156" />
        <source>Revision {revision}</source>
        <translation>Fassung {revision}</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="174" />
        <source>Injection</source>
        <translation>Injektion</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="176" />
        <source>Hydrodilatation</source>
        <translation>Hydrodilatation</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="178" />
        <source>Surgery</source>
        <translation>Operation</translation>
    </message>
    <message>
        <location filename="../../review/records.py" line="180" />
        <source>Other treatment</source>
        <translation>Andere Behandlung</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="25" />
        <source>{day}, repetition {number}</source>
        <translation>{day}, Wiederholung {number}</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="39" />
        <source>{value}, held {seconds} s, {ended}</source>
        <translation>{value}, {seconds} s gehalten, {ended}</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="50" />
        <source>pain not given</source>
        <translation>Schmerz nicht angegeben</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="51" />
        <source>pain before {before}, after {after}</source>
        <translation>Schmerz vorher {before}, nachher {after}</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="115" />
        <location filename="../../review/replay_wording.py" line="58" />
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="59" />
        <source>{score} of 10</source>
        <translation>{score} von 10</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="66" />
        <source>No compensation noted in the hold</source>
        <translation>Keine Ausweichbewegung in der Haltephase vermerkt</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="67" />
        <source>Compensation in the hold: {faults}</source>
        <translation>Ausweichbewegung in der Haltephase: {faults}</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="75" />
        <source>no frame here</source>
        <translation>kein Bild an dieser Stelle</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="79" />
        <source>no value: unknown</source>
        <translation>kein Wert: Grund unbekannt</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="80" />
        <source>no value: {why}</source>
        <translation>kein Wert: {why}</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="91" />
        <source>not seen</source>
        <translation>nicht gesehen</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="104" />
        <source>{repetition}: {moment}, {seconds} s after the hold</source>
        <translation>{repetition}: {moment}, {seconds} s nach der Haltephase</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="107" />
        <source>{repetition}: {moment}, {seconds} s before the hold</source>
        <translation>{repetition}: {moment}, {seconds} s vor der Haltephase</translation>
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="109" />
        <source>{repetition}: {moment}, {seconds} s into the hold</source>
        <translation>{repetition}: {moment}, {seconds} s nach Beginn der Haltephase</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="93" />
        <source>{done} done of {asked} asked for</source>
        <translation>{done} von {asked} vorgesehenen gemacht</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="94" />
        <source>{done} completed of {asked}</source>
        <translation>{done} von {asked} vollständig</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="95" />
        <source>{done} of {asked}, each hold up to the seconds asked</source>
        <translation>{done} von {asked}, jedes Halten höchstens bis zur verlangten Zeit</translation>
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="18" />
        <location filename="../../review/report.py" line="98" />
        <source>Sessions</source>
        <translation>Sitzungen</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="102" />
        <source>Holds</source>
        <translation>Haltephasen</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="106" />
        <source>Hold time</source>
        <translation>Haltezeit</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="109" />
        <source>Pain 0–10</source>
        <translation>Schmerz 0–10</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="116" />
        <source>first {first}, last {last}, worst {worst} ({day})</source>
        <translation>zuerst {first}, zuletzt {last}, höchster {worst} ({day})</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="128" />
        <source>arm seen in {seen} of hold time, {lost} of frames lost</source>
        <translation>Arm in {seen} der Haltezeit gesehen, {lost} der Bilder verloren</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="129" />
        <source>Camera</source>
        <translation>Kamera</translation>
    </message>
    <message>
        <location filename="../../review/sittings.py" line="87" />
        <location filename="../../review/report.py" line="131" />
        <source>trunk leaned or turned in {share} of holds</source>
        <translation>Rumpf in {share} der Haltephasen geneigt oder gedreht</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="134" />
        <source>Files refused</source>
        <translation>Abgewiesene Dateien</translation>
    </message>
    <message>
        <location filename="../../review/report.py" line="237" />
        <source>{name} {version} (angle definitions {definitions})</source>
        <translation>{name} {version} (Winkeldefinitionen {definitions})</translation>
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="17" />
        <source>Movement</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="19" />
        <source>First</source>
        <translation>Zuerst</translation>
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="20" />
        <source>Last</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="21" />
        <source>Best</source>
        <translation>Bester Wert</translation>
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="22" />
        <source>Of other side</source>
        <translation>Von Gegenseite</translation>
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="23" />
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="24" />
        <source>Detectable from</source>
        <translation>Nachweisbar ab</translation>
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="25" />
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="31" />
        <source>Humerothoracic angle (arm against trunk, the shoulder blade's share included) measured by one camera at home in a self-assisted stretch: neither an active nor a passive range. A session's value is the median of its completed holds with a still trunk. First and last are means of up to a week of sessions. Errors are half widths of 95 % intervals; the share of the other side has only this side's error in it.</source>
        <translation>Humerothorakaler Winkel (Arm gegen Rumpf, einschließlich des Anteils des Schulterblatts), zu Hause von einer Kamera in selbstassistiver Dehnung gemessen: weder ein aktives noch ein passives Bewegungsausmaß. Der Wert einer Sitzung ist der Median ihrer vollständigen Haltephasen mit ruhigem Rumpf. „Zuerst“ und „Zuletzt“ sind Mittel aus Sitzungen von bis zu einer Woche. Fehler sind halbe Breiten von 95-%-Intervallen; der Anteil der Gegenseite enthält nur den Fehler dieser Seite.</translation>
    </message>
    <message>
        <location filename="../../review/sittings.py" line="84" />
        <source>arm seen in only {share} of hold time</source>
        <translation>Arm nur in {share} der Haltezeit gesehen</translation>
    </message>
    <message>
        <location filename="../../review/sittings.py" line="90" />
        <source>only {rate} frames measured a second</source>
        <translation>nur {rate} Bilder pro Sekunde gemessen</translation>
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="14" />
        <source>real change</source>
        <translation>echte Änderung</translation>
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="16" />
        <source>within measurement error</source>
        <translation>innerhalb des Messfehlers</translation>
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="18" />
        <source>cannot tell yet</source>
        <translation>noch nicht zu sagen</translation>
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="20" />
        <source>too few sessions</source>
        <translation>zu wenige Sitzungen</translation>
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="27" />
        <source>painful</source>
        <translation>schmerzhaft</translation>
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="29" />
        <source>stiff</source>
        <translation>steif</translation>
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="31" />
        <source>thawing</source>
        <translation>auftauend</translation>
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="38" />
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="40" />
        <source>moderate</source>
        <translation>mittel</translation>
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="42" />
        <source>low</source>
        <translation>niedrig</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="36" />
        <source>Flexion</source>
        <translation>Flexion (Anteversion)</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="38" />
        <source>Extension</source>
        <translation>Extension (Retroversion)</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="40" />
        <source>Abduction</source>
        <translation>Abduktion</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="42" />
        <source>External rotation at side</source>
        <translation>Außenrotation bei angelegtem Arm</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="44" />
        <source>External rotation at 90°</source>
        <translation>Außenrotation bei 90° Abduktion</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="46" />
        <source>Horizontal adduction</source>
        <translation>Horizontale Adduktion</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="48" />
        <source>Hand behind back</source>
        <translation>Schürzengriff (Hand am Rücken)</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="53" />
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="53" />
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="60" />
        <source>standing</source>
        <translation>im Stehen</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="62" />
        <source>sitting</source>
        <translation>im Sitzen</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="64" />
        <source>supine</source>
        <translation>in Rückenlage</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="66" />
        <source>prone</source>
        <translation>in Bauchlage</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="68" />
        <source>side-lying</source>
        <translation>in Seitenlage</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="70" />
        <source>doorway</source>
        <translation>am Türrahmen</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="77" />
        <source>front</source>
        <translation>von vorn</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="79" />
        <source>side</source>
        <translation>von der Seite</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="81" />
        <source>back</source>
        <translation>von hinten</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="83" />
        <source>foot</source>
        <translation>vom Fußende</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="88" />
        <source>{movement}, {side}, {position}, camera: {view}</source>
        <translation>{movement}, {side}, {position}, Kamera: {view}</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="100" />
        <source>completed</source>
        <translation>vollständig</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="102" />
        <source>let go</source>
        <translation>gelöst</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="104" />
        <source>ended with the arm out of sight</source>
        <translation>beendet, als der Arm nicht zu sehen war</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="106" />
        <source>stopped</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="108" />
        <source>ended with the recording</source>
        <translation>mit der Aufnahme beendet</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="231" />
        <source>{begin} to {end}</source>
        <translation>{begin} bis {end}</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="248" />
        <source>{first} and {last}</source>
        <translation>{first} und {last}</translation>
    </message>
</context><context>
    <name>therapist</name>
    <message>
        <location filename="../therapist/window.py" line="50" />
        <location filename="../therapist/passphrase_dialog.py" line="54" />
        <location filename="../therapist/import_run.py" line="113" />
        <location filename="../../app/review.py" line="47" />
        <source>Shoulder review</source>
        <translation>Schulterverlauf</translation>
    </message>
    <message>
        <location filename="../../app/review.py" line="70" />
        <source>The passphrase of the practice's key, to open sealed files (Cancel: go on without, and unlock it later with {key}):</source>
        <translation>Die Passphrase zum Praxisschlüssel, um versiegelte Dateien zu öffnen (Abbrechen: ohne ihn weitermachen und ihn später mit {key} entsperren):</translation>
    </message>
    <message>
        <location filename="../../app/review.py" line="81" />
        <source>The passphrase of the store:</source>
        <translation>Die Passphrase der Datenbank:</translation>
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="54" />
        <location filename="../therapist/doubts_dialog.py" line="43" />
        <source>Doubtful sessions</source>
        <translation>Zweifelhafte Sitzungen</translation>
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="47" />
        <source>These sessions contradict what the practice knows. Until you decide, each counts as the person's whom its file names. A decision can be taken back at any time.</source>
        <translation>Diese Sitzungen widersprechen dem, was die Praxis weiß. Bis Sie entscheiden, zählt jede für die Person, die ihre Datei nennt. Eine Entscheidung lässt sich jederzeit zurücknehmen.</translation>
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="55" />
        <location filename="../therapist/doubts_dialog.py" line="65" />
        <source>Message</source>
        <translation>Meldung</translation>
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="77" />
        <source>&amp;Belongs to…</source>
        <translation>&amp;Gehört zu…</translation>
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="78" />
        <source>&amp;Leave out</source>
        <translation>&amp;Auslassen</translation>
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="79" />
        <source>&amp;Take back</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="80" />
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="133" />
        <source>Doubtful session</source>
        <translation>Zweifelhafte Sitzung</translation>
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="134" />
        <source>The session of {day} belongs to</source>
        <translation>Die Sitzung vom {day} gehört zu</translation>
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="166" />
        <source>Not decided, session of {day}, {time}: {doubt}</source>
        <translation>Nicht entschieden, Sitzung vom {day}, {time}: {doubt}</translation>
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="168" />
        <source>Belongs to {code}, session of {day}, {time}: {doubt}</source>
        <translation>Gehört zu {code}, Sitzung vom {day}, {time}: {doubt}</translation>
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="170" />
        <source>Left out, session of {day}, {time}: {doubt}</source>
        <translation>Ausgelassen, Sitzung vom {day}, {time}: {doubt}</translation>
    </message>
    <message>
        <location filename="../therapist/drawings.py" line="28" />
        <source>Chart</source>
        <translation>Diagramm</translation>
    </message>
    <message>
        <location filename="../therapist/hints_view.py" line="30" />
        <source>R&amp;ules</source>
        <translation>&amp;Regeln</translation>
    </message>
    <message>
        <location filename="../therapist/hints_view.py" line="33" />
        <source>Show the rule and the source of each hint ({key})</source>
        <translation>Regel und Quelle jedes Hinweises zeigen ({key})</translation>
    </message>
    <message>
        <location filename="../therapist/hints_view.py" line="35" />
        <source>Rules and sources of the hints</source>
        <translation>Regeln und Quellen der Hinweise</translation>
    </message>
    <message>
        <location filename="../therapist/hints_view.py" line="37" />
        <source>Hints to weigh, no diagnosis</source>
        <translation>Hinweise zum Abwägen, keine Diagnose</translation>
    </message>
    <message>
        <location filename="../therapist/hints_view.py" line="56" />
        <source>Rule: {rule} Source: {source}</source>
        <translation>Regel: {rule} Quelle: {source}</translation>
    </message>
    <message>
        <location filename="../therapist/hints_view.py" line="63" />
        <source>None: a pattern is named only where the errors leave no doubt of it.</source>
        <translation>Keine: Ein Muster wird nur genannt, wo die Fehler keinen Zweifel daran lassen.</translation>
    </message>
    <message>
        <location filename="../therapist/import_progress.py" line="26" />
        <source>Files imported</source>
        <translation>Eingelesene Dateien</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="27" />
        <location filename="../therapist/import_progress.py" line="30" />
        <source>&amp;Stop importing</source>
        <translation>Einlesen &amp;stoppen</translation>
    </message>
    <message>
        <location filename="../therapist/import_progress.py" line="46" />
        <source>{done} of {total} files</source>
        <translation>{done} von {total} Dateien</translation>
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="94" />
        <source>Import session files</source>
        <translation>Sitzungsdateien einlesen</translation>
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="99" />
        <source>Import a folder of session files</source>
        <translation>Ordner mit Sitzungsdateien einlesen</translation>
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="110" />
        <source>Take {sessions} of the last import out again?</source>
        <translation>{sessions} des letzten Einlesens wieder herausnehmen?</translation>
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="124" />
        <source>The passphrase of the practice's key:</source>
        <translation>Die Passphrase zum Praxisschlüssel:</translation>
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="132" />
        <source>The practice's key is unlocked: sealed files can be imported now.</source>
        <translation>Der Praxisschlüssel ist entsperrt: Versiegelte Dateien lassen sich jetzt einlesen.</translation>
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="171" />
        <source>{count} accepted</source>
        <translation>{count} angenommen</translation>
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="172" />
        <source>{count} doubtful</source>
        <translation>{count} zweifelhaft</translation>
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="173" />
        <source>{count} already known</source>
        <translation>{count} schon bekannt</translation>
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="174" />
        <source>{count} refused</source>
        <translation>{count} abgewiesen</translation>
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="177" />
        <source>{files}: {outcomes}.</source>
        <translation>{files}: {outcomes}.</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="16" />
        <source>Fil&amp;e</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="41" />
        <source>Patien&amp;t</source>
        <translation>&amp;Person</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="51" />
        <source>E&amp;xport</source>
        <translation>A&amp;usgabe</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="71" />
        <source>Vie&amp;w</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="63" />
        <location filename="../therapist/menus.py" line="19" />
        <source>&amp;Import files…</source>
        <translation>Dateien e&amp;inlesen…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="24" />
        <source>Import a &amp;folder…</source>
        <translation>&amp;Ordner einlesen…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="30" />
        <source>Unloc&amp;k the practice's key…</source>
        <translation>Praxiss&amp;chlüssel entsperren…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="33" />
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="36" />
        <source>&amp;Doubtful sessions…</source>
        <translation>&amp;Zweifelhafte Sitzungen…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="39" />
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="68" />
        <location filename="../therapist/menus.py" line="42" />
        <source>&amp;New patient…</source>
        <translation>&amp;Neu anlegen…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="43" />
        <source>&amp;Change code or name…</source>
        <translation>&amp;Code oder Namen ändern…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="44" />
        <source>L&amp;ist of patients</source>
        <translation>Personenl&amp;iste</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="45" />
        <source>C&amp;ourse</source>
        <translation>&amp;Verlauf</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="46" />
        <source>R&amp;ecords</source>
        <translation>&amp;Akte</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="47" />
        <source>P&amp;lan…</source>
        <translation>&amp;Plan…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="48" />
        <source>&amp;Replay…</source>
        <translation>&amp;Wiedergabe…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="49" />
        <source>Er&amp;ase the patient…</source>
        <translation>Person &amp;löschen…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="52" />
        <source>&amp;Report as PDF…</source>
        <translation>&amp;Bericht als PDF…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="55" />
        <source>&amp;Note, S-O-A-P…</source>
        <translation>&amp;Notiz, S-O-A-P…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="58" />
        <source>&amp;Copy the note</source>
        <translation>Notiz &amp;kopieren</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="61" />
        <source>&amp;Table of holds (CSV)…</source>
        <translation>&amp;Tabelle der Haltephasen (CSV)…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="66" />
        <source>Table of own &amp;measures (CSV)…</source>
        <translation>Tabelle der eigenen &amp;Messungen (CSV)…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="69" />
        <source>&amp;FHIR bundle…</source>
        <translation>&amp;FHIR-Bundle…</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="72" />
        <source>&amp;Larger text</source>
        <translation>&amp;Größere Schrift</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="73" />
        <source>&amp;Smaller text</source>
        <translation>&amp;Kleinere Schrift</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="74" />
        <source>&amp;Usual text</source>
        <translation>&amp;Übliche Schrift</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="75" />
        <source>Light or &amp;dark</source>
        <translation>Hell oder &amp;dunkel</translation>
    </message>
    <message>
        <location filename="../therapist/menus.py" line="76" />
        <source>Light or dark &amp;as the system</source>
        <translation>Hell oder dunkel &amp;wie das System</translation>
    </message>
    <message>
        <location filename="../therapist/page_column.py" line="40" />
        <source>What was done, pain, camera</source>
        <translation>Was gemacht wurde, Schmerz, Kamera</translation>
    </message>
    <message>
        <location filename="../therapist/page_column.py" line="41" />
        <source>How to read this</source>
        <translation>Wie das zu lesen ist</translation>
    </message>
    <message>
        <location filename="../therapist/page_column.py" line="58" />
        <source>Change, hints, what was done, pain, camera, and how to read this</source>
        <translation>Änderung, Hinweise, was gemacht wurde, Schmerz, Kamera und wie das zu lesen ist</translation>
    </message>
    <message>
        <location filename="../therapist/page_column.py" line="82" />
        <source>Movement</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <location filename="../therapist/page_column.py" line="83" />
        <source>no session gave a value</source>
        <translation>keine Sitzung ergab einen Wert</translation>
    </message>
    <message>
        <location filename="../therapist/page_column.py" line="84" />
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <location filename="../therapist/passphrase_dialog.py" line="57" />
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <location filename="../therapist/passphrase_dialog.py" line="63" />
        <source>Unlocking</source>
        <translation>Wird entsperrt</translation>
    </message>
    <message>
        <location filename="../therapist/passphrase_dialog.py" line="64" />
        <source>&amp;Unlock</source>
        <translation>Ent&amp;sperren</translation>
    </message>
    <message>
        <location filename="../therapist/passphrase_dialog.py" line="68" />
        <source>&amp;Cancel</source>
        <translation>&amp;Abbrechen</translation>
    </message>
    <message>
        <location filename="../therapist/passphrase_dialog.py" line="102" />
        <source>Unlocking, a moment please…</source>
        <translation>Wird entsperrt, einen Augenblick bitte…</translation>
    </message>
    <message>
        <location filename="../therapist/patient_list.py" line="79" />
        <source>nothing stands out</source>
        <translation>nichts fällt auf</translation>
    </message>
    <message>
        <location filename="../therapist/patient_list.py" line="82" />
        <source>Patient {name}, {sessions}. {reasons}</source>
        <translation>Person {name}, {sessions}. {reasons}</translation>
    </message>
    <message>
        <location filename="../therapist/patient_list.py" line="91" />
        <source>no session yet</source>
        <translation>noch keine Sitzung</translation>
    </message>
    <message>
        <location filename="../therapist/patient_list.py" line="92" />
        <source>{sessions}, last {day}</source>
        <translation>{sessions}, zuletzt {day}</translation>
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="61" />
        <source>Why to look at this patient</source>
        <translation>Warum Sie diese Person ansehen sollten</translation>
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="65" />
        <source>Range by movement</source>
        <translation>Bewegungsausmaß nach Bewegung</translation>
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="77" />
        <source>Write &amp;report…</source>
        <translation>&amp;Bericht schreiben…</translation>
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="80" />
        <source>Write the one-page report as a PDF file</source>
        <translation>Bericht von einer Seite als PDF-Datei schreiben</translation>
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="84" />
        <source>Re&amp;play…</source>
        <translation>Wieder&amp;gabe…</translation>
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="85" />
        <source>Replay repetitions of a session</source>
        <translation>Wiederholungen einer Sitzung wiedergeben</translation>
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="145" />
        <source>{period}, {sessions}. Plan: {title}</source>
        <translation>{period}, {sessions}. Plan: {title}</translation>
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="147" />
        <source>{period}, {sessions}</source>
        <translation>{period}, {sessions}</translation>
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="195" />
        <source>Nothing stands out.</source>
        <translation>Nichts fällt auf.</translation>
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="103" />
        <location filename="../therapist/side_panel.py" line="96" />
        <location filename="../therapist/side_panel.py" line="52" />
        <source>Patients</source>
        <translation>Personen</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="72" />
        <source>Make a p&amp;lan…</source>
        <translation>Plan &amp;erstellen…</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="78" />
        <source>Und&amp;o the last import</source>
        <translation>Einlesen &amp;zurücknehmen</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="83" />
        <source>Refused files with reasons</source>
        <translation>Abgewiesene Dateien mit Gründen</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="89" />
        <source>&amp;Clear this list</source>
        <translation>Liste &amp;leeren</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="146" />
        <source>Takes {sessions} out again ({key})</source>
        <translation>Nimmt {sessions} wieder heraus ({key})</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="155" />
        <source>1 doubtful session…</source>
        <translation>1 zweifelhafte Sitzung…</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="156" />
        <source>1 doubtful session to decide about</source>
        <translation>Über 1 zweifelhafte Sitzung ist zu entscheiden</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="158" />
        <source>{count} doubtful sessions…</source>
        <translation>{count} zweifelhafte Sitzungen…</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="159" />
        <source>{count} doubtful sessions to decide about</source>
        <translation>Über {count} zweifelhafte Sitzungen ist zu entscheiden</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="166" />
        <source>{files} refused</source>
        <translation>{files} abgewiesen</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="194" />
        <source>1 file</source>
        <translation>1 Datei</translation>
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="195" />
        <source>{count} files</source>
        <translation>{count} Dateien</translation>
    </message>
    <message>
        <location filename="../therapist/window.py" line="141" />
        <source>&amp;Undo: {what}</source>
        <translation>&amp;Rückgängig: {what}</translation>
    </message>
    <message>
        <location filename="../therapist/window.py" line="143" />
        <source>&amp;Undo the last import…</source>
        <translation>Letztes Einlesen zu&amp;rücknehmen…</translation>
    </message>
    <message>
        <location filename="../therapist/window.py" line="176" />
        <source>There was no session file to import there.</source>
        <translation>Dort war keine Sitzungsdatei, die sich einlesen ließe.</translation>
    </message>
    <message>
        <location filename="../therapist/window.py" line="181" />
        <source>{sessions} taken out again.</source>
        <translation>{sessions} wieder herausgenommen.</translation>
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="62" />
        <source>Course and records</source>
        <translation>Verlauf und Akte</translation>
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="65" />
        <source>Course or records</source>
        <translation>Verlauf oder Akte</translation>
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="67" />
        <source>Course</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="68" />
        <source>Records</source>
        <translation>Akte</translation>
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="180" />
        <source>Nobody here yet.

Press New patient ({new}) to begin with a person, or drop session files or a folder of them into this window (Import files, {files}).
A patient's program leaves one file a session, ending in .shoulder.zip or, where it is sealed for the practice, in .shoulder.age.</source>
        <translation>Noch niemand da.

Beginnen Sie mit „Neu anlegen“ ({new}) oder legen Sie Sitzungsdateien oder einen Ordner davon in dieses Fenster („Dateien einlesen“, {files}).
Das Programm zu Hause hinterlässt für jede Sitzung eine Datei, die auf .shoulder.zip endet oder, für die Praxis versiegelt, auf .shoulder.age.</translation>
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="191" />
        <source>No sessions yet.

Write down what you know under Records ({records}), make a plan ({plan}) and send its file.
What comes back is imported with {files}.</source>
        <translation>Noch keine Sitzungen.

Tragen Sie unter „Akte“ ein, was Sie wissen ({records}), erstellen Sie einen Plan ({plan}) und geben Sie dessen Datei mit.
Was zurückkommt, lesen Sie mit {files} ein.</translation>
    </message>
</context></TS>
