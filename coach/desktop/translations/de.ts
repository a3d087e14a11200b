<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en_GB">
<context>
    <name>CautionsPage</name>
    <message>
        <location filename="../patient/cautions_page.py" line="35" />
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="38" />
        <source>I have read all of this</source>
        <translation>Ich habe alles gelesen</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="38" />
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
</context><context>
    <name>ExercisePage</name>
    <message>
        <location filename="../patient/exercise_page.py" line="119" />
        <location filename="../patient/exercise_page.py" line="68" />
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="68" />
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="69" />
        <source>Skip</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="70" />
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
        <location filename="../patient/exercise_page.py" line="236" />
        <source>Then: hold {number} of {asked}</source>
        <translation>Dann: Nummer {number} von {asked}</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="239" />
        <source>Then: rest for {rest_s} seconds</source>
        <translation>Dann: {rest_s} Sekunden ruhen</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="241" />
        <source>Then: {name}</source>
        <translation>Dann: {name}</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="242" />
        <source>Then: you are done for today</source>
        <translation>Dann: fertig für heute</translation>
    </message>
</context><context>
    <name>FaultBanner</name>
    <message>
        <location filename="../patient/fault_banner.py" line="26" />
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
</context><context>
    <name>HandGauge</name>
    <message>
        <location filename="../patient/hand_gauge.py" line="55" />
        <source>Hand up: begin</source>
        <translation>Hand hoch: beginnen</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="57" />
        <source>Hand up: choose</source>
        <translation>Hand hoch: wählen</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="63" />
        <location filename="../patient/hand_gauge.py" line="61" />
        <location filename="../patient/hand_gauge.py" line="59" />
        <source>Keep it up to stop</source>
        <translation>Oben lassen: aufhören</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="59" />
        <source>Hand up: pause</source>
        <translation>Hand hoch: Pause</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="61" />
        <source>Hand up: go on</source>
        <translation>Hand hoch: weiter</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="63" />
        <source>Hand up: easier one</source>
        <translation>Hand hoch: leichtere Übung</translation>
    </message>
</context><context>
    <name>HoldCount</name>
    <message>
        <location filename="../patient/readouts.py" line="146" />
        <source>Holds done: {done} of {asked}</source>
        <translation>Geschafft: {done} von {asked}</translation>
    </message>
    <message>
        <location filename="../patient/readouts.py" line="163" />
        <source>of {asked} holds</source>
        <translation>von {asked} Mal</translation>
    </message>
</context><context>
    <name>KeyButton</name>
    <message>
        <location filename="../patient/controls.py" line="44" />
        <source>Key: {key}</source>
        <translation>Taste: {key}</translation>
    </message>
</context><context>
    <name>LeavesPage</name>
    <message>
        <location filename="../patient/leaves.py" line="38" />
        <source>Go back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <location filename="../patient/leaves.py" line="38" />
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <location filename="../patient/leaves.py" line="40" />
        <source>Page before</source>
        <translation>Seite davor</translation>
    </message>
    <message>
        <location filename="../patient/leaves.py" line="42" />
        <source>Next page</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <location filename="../patient/leaves.py" line="107" />
        <source>{at} of {count}</source>
        <translation>{at} von {count}</translation>
    </message>
</context><context>
    <name>OfferPage</name>
    <message>
        <location filename="../patient/offer_page.py" line="29" />
        <source>Try the easier one</source>
        <translation>Die leichtere versuchen</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="29" />
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="31" />
        <source>Go on without it</source>
        <translation>Ohne sie weiter</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="32" />
        <source>Stop for today</source>
        <translation>Schluss für heute</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="40" />
        <source>That hurt more than your plan allows. This one stops here.</source>
        <translation>Das tat mehr weh, als Ihr Plan erlaubt. Diese Übung endet hier.</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="48" />
        <source>There is an easier one:</source>
        <translation>Es gibt eine leichtere:</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="53" />
        <source>Raise your good hand, or press Space, to try it.</source>
        <translation>Gute Hand heben oder Leertaste drücken, um sie zu versuchen.</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="76" />
        <source>Ask your therapist before you do it again: {name}</source>
        <translation>Fragen Sie in der Praxis, bevor Sie sie wieder machen: {name}</translation>
    </message>
</context><context>
    <name>PainPage</name>
    <message>
        <location filename="../patient/pain_page.py" line="44" />
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="44" />
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="45" />
        <source>Stop for today</source>
        <translation>Schluss für heute</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="56" />
        <source>no pain</source>
        <translation>kein Schmerz</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="58" />
        <source>worst pain you can think of</source>
        <translation>schlimmster Schmerz, den Sie sich denken können</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="60" />
        <source>Keys: 0 to 9, {key} for 10, or the arrows</source>
        <translation>Tasten: 0 bis 9, {key} für 10, oder die Pfeile</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="89" />
        <source>Before: {name}</source>
        <translation>Vor: {name}</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="90" />
        <source>How much does your shoulder hurt now?</source>
        <translation>Wie sehr tut Ihre Schulter jetzt weh?</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="92" />
        <source>After: {name}</source>
        <translation>Nach: {name}</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="93" />
        <source>And how much does it hurt now?</source>
        <translation>Und wie sehr tut sie jetzt weh?</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="114" />
        <source>Press Space to go on with {score}</source>
        <translation>Leertaste: weiter mit {score}</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="116" />
        <source>You chose {score}. Wrong? Raise your good hand again</source>
        <translation>{score} gewählt. Falsch? Gute Hand noch einmal heben</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="120" />
        <source>Raise your good hand at your number</source>
        <translation>Gute Hand heben bei Ihrer Zahl</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="122" />
        <source>Choose your number</source>
        <translation>Wählen Sie Ihre Zahl</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="163" />
        <source>More than the {limit} your plan allows, so this exercise is left out today. Ask your therapist.</source>
        <translation>Mehr als die {limit}, die Ihr Plan erlaubt, darum fällt diese Übung heute aus. Fragen Sie in der Praxis.</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="168" />
        <source>More than the {limit} your plan allows. Ask your therapist before you do this exercise again.</source>
        <translation>Mehr als die {limit}, die Ihr Plan erlaubt. Fragen Sie in der Praxis, bevor Sie diese Übung wieder machen.</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="173" />
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
    <message>
        <location filename="../patient/window.py" line="226" />
        <source>And {count} more of the kind.</source>
        <translation>Und {count} weitere dieser Art.</translation>
    </message>
</context><context>
    <name>Picture</name>
    <message>
        <location filename="../patient/picture.py" line="46" />
        <source>Live picture, mirrored</source>
        <translation>Livebild, gespiegelt</translation>
    </message>
</context><context>
    <name>PreparePage</name>
    <message>
        <location filename="../patient/prepare_page.py" line="37" />
        <source>New for you</source>
        <translation>Neu für Sie</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="50" />
        <source>Begin now</source>
        <translation>Jetzt beginnen</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="50" />
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="52" />
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="53" />
        <source>Skip</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="54" />
        <source>Stop</source>
        <translation>Aufhören</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="140" />
        <source>Listen: it begins by itself</source>
        <translation>Zuhören: Es beginnt von selbst</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="140" />
        <source>In place</source>
        <translation>Richtig</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="144" />
        <source>Change this first</source>
        <translation>Ändern Sie zuerst</translation>
    </message>
</context><context>
    <name>ScoreButton</name>
    <message>
        <location filename="../patient/score_button.py" line="61" />
        <source>Pain {score} of 10</source>
        <translation>Schmerz {score} von 10</translation>
    </message>
    <message>
        <location filename="../patient/score_button.py" line="63" />
        <source>Key: {key}</source>
        <translation>Taste: {key}</translation>
    </message>
</context><context>
    <name>SummaryPage</name>
    <message>
        <location filename="../patient/summary_page.py" line="32" />
        <source>The angle is that of the arm against the trunk, shoulder blade included, or of the forearm turned out; behind the back it is the tip of the thumb against the spine. Above is the middle one of the holds. ± is the 95 % error. Only your therapist can say what it means.</source>
        <translation>Der Winkel ist der des Arms gegen den Rumpf, das Schulterblatt eingeschlossen, oder der des nach außen gedrehten Unterarms; hinter dem Rücken ist es die Daumenspitze gegen die Wirbelsäule. Oben steht der mittlere Wert. ± ist der 95-%-Fehler. Nur in der Praxis kann man sagen, was er bedeutet.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="41" />
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="41" />
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="47" />
        <source>What was done</source>
        <translation>Was geschafft wurde</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="68" />
        <source>Stopped because of the pain. What you did is kept.</source>
        <translation>Wegen des Schmerzes beendet. Was Sie gemacht haben, ist gespeichert.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="70" />
        <source>Done for today</source>
        <translation>Fertig für heute</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="72" />
        <source>Stopped. What you did is kept.</source>
        <translation>Beendet. Was Sie gemacht haben, ist gespeichert.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="80" />
        <source>Saved for your therapist: {path}</source>
        <translation>Gespeichert für die Praxis: {path}</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="83" />
        <source>Nothing was saved.</source>
        <translation>Nichts wurde gespeichert.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="94" />
        <source>No exercise was begun.</source>
        <translation>Keine Übung wurde begonnen.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="105" />
        <source>Rest your arm, and ring your practice before you exercise again: {contact}</source>
        <translation>Lassen Sie den Arm ruhen, und rufen Sie in der Praxis an, bevor Sie wieder üben: {contact}</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="108" />
        <source>Rest your arm, and ring your practice before you exercise again.</source>
        <translation>Lassen Sie den Arm ruhen, und rufen Sie in der Praxis an, bevor Sie wieder üben.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="118" />
        <source>Your pain went up. If it stays up for more than half an hour, or keeps you awake, tell your therapist before the next session.</source>
        <translation>Ihr Schmerz ist gestiegen. Bleibt er über eine halbe Stunde oder hält er Sie wach, sagen Sie es in der Praxis vor dem nächsten Üben.</translation>
    </message>
</context><context>
    <name>UnderstandingPage</name>
    <message>
        <location filename="../patient/understanding_page.py" line="43" />
        <source>Read aloud</source>
        <translation>Vorlesen</translation>
    </message>
    <message>
        <location filename="../patient/understanding_page.py" line="65" />
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
        <location filename="../patient/weeks_page.py" line="67" />
        <source>The last time</source>
        <translation>Das letzte Mal</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="67" />
        <source>My weeks</source>
        <translation>Meine Wochen</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="77" />
        <source>Each session, and pain below</source>
        <translation>Jedes Üben, darunter der Schmerz</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="118" />
        <source>Your plan held until {day}. Ask your therapist for a new one.</source>
        <translation>Ihr Plan galt bis {day}. Fragen Sie in der Praxis nach einem neuen.</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="121" />
        <source>Today is a rest day.</source>
        <translation>Heute ist ein Ruhetag.</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="123" />
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="142" />
        <location filename="../patient/weeks_page.py" line="124" />
        <source>and {count} more</source>
        <translation>und {count} weitere</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="129" />
        <source>✓ {name}: done</source>
        <translation>✓ {name}: geschafft</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="131" />
        <source>• {name}</source>
        <translation>• {name}</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="132" />
        <source>• {name}: {done} of {asked} times</source>
        <translation>• {name}: {done} von {asked} Mal</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="145" />
        <source>{done} of {asked} holds</source>
        <translation>{done} von {asked} Mal</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="152" />
        <source>furthest {reached}</source>
        <translation>am weitesten {reached}</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="155" />
        <source>pain {before} before, {after} after</source>
        <translation>Schmerz {before} vorher, {after} nachher</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="162" />
        <source>The band shows how wrong each number may be. Going further is never worth more pain.</source>
        <translation>Das Band zeigt, wie falsch jede Zahl sein kann. Weiter zu kommen ist nie mehr Schmerz wert.</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="166" />
        <source>0 % is the foot of the neck and 100 % the pelvis.</source>
        <translation>0 % ist der Fuß des Nackens und 100 % das Becken.</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="174" />
        <source>Last measured on {day}: {value}, the middle one of the holds.</source>
        <translation>Zuletzt gemessen am {day}: {value}, der mittlere Wert.</translation>
    </message>
</context><context>
    <name>WelcomePage</name>
    <message>
        <location filename="../patient/welcome_page.py" line="52" />
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="53" />
        <source>All cautions</source>
        <translation>Alle Hinweise</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="54" />
        <source>My weeks</source>
        <translation>Meine Wochen</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="55" />
        <source>Understand my shoulder</source>
        <translation>Meine Schulter verstehen</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="56" />
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="78" />
        <source>Getting the camera and the measuring ready. This takes a few seconds.</source>
        <translation>Kamera und Messung werden vorbereitet. Das dauert einige Sekunden.</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="80" />
        <source>Read this while you wait</source>
        <translation>Lesen Sie das, während Sie warten</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="81" />
        <source>Not ready yet</source>
        <translation>Noch nicht bereit</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="87" />
        <source>No picture</source>
        <translation>Kein Bild</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="89" />
        <source>Cannot start without a picture</source>
        <translation>Ohne Bild geht es nicht los</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="95" />
        <source>Start</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="101" />
        <source>Raise your good hand, or press Space, to begin</source>
        <translation>Gute Hand heben oder Leertaste drücken, um zu beginnen</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="115" />
        <source>Stretch until it pulls, not until it hurts. Easing off is always right. This program does not replace your therapist.</source>
        <translation>Dehnen Sie, bis es zieht, nicht, bis es weh tut. Nachlassen ist immer richtig. Dieses Programm ersetzt keine Therapie.</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="164" />
        <source>Today: one exercise, about {minutes} min</source>
        <translation>Heute: eine Übung, etwa {minutes} min</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="165" />
        <source>Today: {count} exercises, about {minutes} min</source>
        <translation>Heute: {count} Übungen, etwa {minutes} min</translation>
    </message>
</context><context>
    <name>calendar</name>
    <message>
        <location filename="../patient/calendar.py" line="36" />
        <source>{mark}: {count}</source>
        <translation>{mark}: {count}</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="43" />
        <source>The last 12 weeks. {days}</source>
        <translation>Die letzten 12 Wochen. {days}</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="93" />
        <source>done</source>
        <translation>geschafft</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="95" />
        <source>partly done</source>
        <translation>zum Teil</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="97" />
        <source>nothing done</source>
        <translation>nichts gemacht</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="99" />
        <source>rest day</source>
        <translation>Ruhetag</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="101" />
        <source>still to do today</source>
        <translation>heute noch offen</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="103" />
        <source>before the beginning</source>
        <translation>vor dem Beginn</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="153" />
        <source>Mon</source>
        <translation>Mo</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="154" />
        <source>Tue</source>
        <translation>Di</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="155" />
        <source>Wed</source>
        <translation>Mi</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="156" />
        <source>Thu</source>
        <translation>Do</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="157" />
        <source>Fri</source>
        <translation>Fr</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="158" />
        <source>Sat</source>
        <translation>Sa</translation>
    </message>
    <message>
        <location filename="../patient/calendar.py" line="159" />
        <source>Sun</source>
        <translation>So</translation>
    </message>
</context><context>
    <name>dates</name>
    <message>
        <location filename="../../review/wording.py" line="89" />
        <source>{day} {month} {year}</source>
        <translation>{day}. {month} {year}</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="95" />
        <source>{day} {month}</source>
        <translation>{day}. {month}</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="103" />
        <source>Jan</source>
        <translation>Jan.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="105" />
        <source>Feb</source>
        <translation>Feb.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="107" />
        <source>Mar</source>
        <translation>März</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="109" />
        <source>Apr</source>
        <translation>Apr.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="111" />
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="113" />
        <source>Jun</source>
        <translation>Juni</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="115" />
        <source>Jul</source>
        <translation>Juli</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="117" />
        <source>Aug</source>
        <translation>Aug.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="119" />
        <source>Sep</source>
        <translation>Sept.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="121" />
        <source>Oct</source>
        <translation>Okt.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="123" />
        <source>Nov</source>
        <translation>Nov.</translation>
    </message>
    <message>
        <location filename="../../review/wording.py" line="125" />
        <source>Dec</source>
        <translation>Dez.</translation>
    </message>
</context><context>
    <name>diary</name>
    <message>
        <location filename="../../review/diary_wording.py" line="19" />
        <source>No hold was measured yet.</source>
        <translation>Es wurde noch nichts gemessen.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="22" />
        <source>In too few sessions the trunk kept still, so nothing can be said of a change.</source>
        <translation>Zu selten blieb der Rumpf still, darum lässt sich über eine Änderung nichts sagen.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="27" />
        <source>Measured once, on {day}: {reached}. That is too little to speak of a change.</source>
        <translation>Einmal gemessen, am {day}: {reached}. Das ist zu wenig, um von einer Änderung zu sprechen.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="42" />
        <source>Since the first sessions ({day}) there is no change larger than the error of measuring.</source>
        <translation>Seit dem Beginn ({day}) gibt es keine Änderung, die größer ist als der Messfehler.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="48" />
        <source>Since the first sessions ({day}) no change can be told from the error of measuring yet; more sessions may tell.</source>
        <translation>Seit dem Beginn ({day}) lässt sich eine Änderung noch nicht vom Messfehler unterscheiden; weitere Sitzungen können es zeigen.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="59" />
        <source>The arm goes {size} further than in the first sessions ({day}). That is more than the error of measuring.</source>
        <translation>Der Arm kommt {size} weiter als zu Beginn ({day}). Das ist mehr als der Messfehler.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="65" />
        <source>The arm goes {size} less far than in the first sessions ({day}). That is more than the error of measuring. Show this to your therapist.</source>
        <translation>Der Arm kommt {size} weniger weit als zu Beginn ({day}). Das ist mehr als der Messfehler. Zeigen Sie das in der Praxis.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="71" />
        <source>The hand goes {size} of the back's length higher than in the first sessions ({day}). That is more than the error of measuring.</source>
        <translation>Die Hand kommt {size} der Rückenlänge höher als zu Beginn ({day}). Das ist mehr als der Messfehler.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="77" />
        <source>The hand goes {size} of the back's length less high than in the first sessions ({day}). That is more than the error of measuring. Show this to your therapist.</source>
        <translation>Die Hand kommt {size} der Rückenlänge weniger hoch als zu Beginn ({day}). Das ist mehr als der Messfehler. Zeigen Sie das in der Praxis.</translation>
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="88" />
        <source>the thumb reached {levels}</source>
        <translation>der Daumen erreichte {levels}</translation>
    </message>
</context><context>
    <name>drawings</name>
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
        <location filename="../patient/drawings/course.py" line="47" />
        <source>here, as your therapist sees it now</source>
        <translation>hier, wie es die Praxis gerade sieht</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="53" />
        <source>months and years</source>
        <translation>Monate und Jahre</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="56" />
        <source>No sharp borders, and every shoulder takes its own time</source>
        <translation>Keine scharfen Grenzen, und jede Schulter braucht ihre Zeit</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="66" />
        <source>pain</source>
        <translation>Schmerz</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="67" />
        <source>session</source>
        <translation>Üben</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="68" />
        <source>half an hour</source>
        <translation>halbe Stunde</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="69" />
        <source>night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="81" />
        <source>still up: ring</source>
        <translation>noch da: anrufen</translation>
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="83" />
        <source>down again: all right</source>
        <translation>wieder unten: gut</translation>
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="26" />
        <source>A loose joint</source>
        <translation>Ein lockeres Gelenk</translation>
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="27" />
        <source>A frozen joint</source>
        <translation>Ein steifes Gelenk</translation>
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="29" />
        <location filename="../patient/drawings/joint.py" line="28" />
        <source>socket</source>
        <translation>Pfanne</translation>
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="31" />
        <location filename="../patient/drawings/joint.py" line="30" />
        <source>ball</source>
        <translation>Kugel</translation>
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="33" />
        <source>thin bag with a loose fold</source>
        <translation>dünne Hülle mit lockerer Falte</translation>
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="35" />
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
        <translation>wund: vorher umkehren</translation>
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
        <translation>Zeichnung: ein Arm, der einen Teil des Weges leicht geht und danach ein langes Stück wund ist.</translation>
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
    <name>patient</name>
    <message>
        <location filename="../../app/patient.py" line="135" />
        <source>Your last sitting ended {minutes} minutes ago. Let the shoulder rest for some hours, unless your therapist said otherwise.</source>
        <translation>Sie haben vor {minutes} Minuten zuletzt geübt. Lassen Sie die Schulter einige Stunden ruhen, wenn die Praxis nichts anderes gesagt hat.</translation>
    </message>
    <message>
        <location filename="../../app/patient.py" line="141" />
        <source>Everything for today is done. More than asked is not better.</source>
        <translation>Für heute ist alles geschafft. Mehr als gefragt ist nicht besser.</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="64" />
        <source>Before you start</source>
        <translation>Bevor Sie beginnen</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="70" />
        <source>Stop at once</source>
        <translation>Sofort aufhören</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="95" />
        <source>Pain above {limit} of 10 is more than your plan allows.</source>
        <translation>Schmerz über {limit} von 10 ist mehr, als Ihr Plan erlaubt.</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="98" />
        <source>Pain above {least} to {most} of 10, by exercise, is more than your plan allows.</source>
        <translation>Schmerz über {least} bis {most} von 10, je nach Übung, ist mehr, als Ihr Plan erlaubt.</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="107" />
        <source>Ring your practice: {contact}</source>
        <translation>Rufen Sie in der Praxis an: {contact}</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="108" />
        <source>Ring your practice</source>
        <translation>Rufen Sie in der Praxis an</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="149" />
        <source>Measured: {what}</source>
        <translation>Gemessen: {what}</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="41" />
        <source>Easier one: {name}</source>
        <translation>Leichtere Übung: {name}</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="182" />
        <location filename="../patient/record_card.py" line="56" />
        <source>by time</source>
        <translation>nach Zeit</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="56" />
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="61" />
        <source>{done} of {asked} holds</source>
        <translation>{done} von {asked} Mal</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="64" />
        <source>{held} s held, {asked} s asked</source>
        <translation>{held} s gehalten, {asked} s gefragt</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="71" />
        <source>{before} → {after}</source>
        <translation>{before} → {after}</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="74" />
        <source>pain before, after</source>
        <translation>Schmerz vorher, nachher</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="93" />
        <source>angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="95" />
        <source>thumb reached</source>
        <translation>Daumen erreichte</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="102" />
        <source>{held} s at {angle}</source>
        <translation>{held} s bei {angle}</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="107" />
        <source>Each hold: {holds}</source>
        <translation>Jedes Mal: {holds}</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="116" />
        <source>stopped by you</source>
        <translation>von Ihnen beendet</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="118" />
        <source>skipped by you</source>
        <translation>von Ihnen ausgelassen</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="120" />
        <source>ended because of the pain: ask your therapist</source>
        <translation>wegen des Schmerzes beendet: in der Praxis fragen</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="122" />
        <source>ended after several short holds: tell your therapist</source>
        <translation>nach mehrmals kurzem Halten beendet: in der Praxis sagen</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="124" />
        <source>ended because the picture ended</source>
        <translation>beendet, weil das Bild endete</translation>
    </message>
    <message>
        <location filename="../patient/record_card.py" line="126" />
        <source>broken off</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="184" />
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="186" />
        <source>NEW</source>
        <translation>NEU</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="195" />
        <source>New for you: {title}</source>
        <translation>Neu für Sie: {title}</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="199" />
        <source>What to mind with each new exercise is shown and said before it begins.</source>
        <translation>Worauf bei jeder neuen Übung zu achten ist, wird vor ihr gezeigt und gesagt.</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="27" />
        <source>{name}, sitting</source>
        <translation>{name}, im Sitzen</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="29" />
        <source>{name}, lying on your back</source>
        <translation>{name}, auf dem Rücken</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="31" />
        <source>{name}, lying face down</source>
        <translation>{name}, auf dem Bauch</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="33" />
        <source>{name}, lying on your side</source>
        <translation>{name}, auf der Seite</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="35" />
        <source>{name}, at a door frame</source>
        <translation>{name}, am Türrahmen</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="45" />
        <source>Left arm forwards and up</source>
        <translation>Linker Arm nach vorn und hinauf</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="46" />
        <source>Right arm forwards and up</source>
        <translation>Rechter Arm nach vorn und hinauf</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="49" />
        <source>Left arm backwards</source>
        <translation>Linker Arm nach hinten</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="50" />
        <source>Right arm backwards</source>
        <translation>Rechter Arm nach hinten</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="53" />
        <source>Left arm out to the side</source>
        <translation>Linker Arm zur Seite</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="54" />
        <source>Right arm out to the side</source>
        <translation>Rechter Arm zur Seite</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="57" />
        <source>Left hand turned outwards</source>
        <translation>Linke Hand nach außen gedreht</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="58" />
        <source>Right hand turned outwards</source>
        <translation>Rechte Hand nach außen gedreht</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="61" />
        <source>Left forearm turned up and back</source>
        <translation>Linker Unterarm hinauf und zurück</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="62" />
        <source>Right forearm turned up and back</source>
        <translation>Rechter Unterarm hinauf und zurück</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="65" />
        <source>Left arm across the chest</source>
        <translation>Linker Arm vor der Brust</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="66" />
        <source>Right arm across the chest</source>
        <translation>Rechter Arm vor der Brust</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="69" />
        <source>Left hand up the back</source>
        <translation>Linke Hand den Rücken hinauf</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="70" />
        <source>Right hand up the back</source>
        <translation>Rechte Hand den Rücken hinauf</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="79" />
        <source>Arm against trunk, shoulder blade included</source>
        <translation>Arm gegen den Rumpf, Schulterblatt eingeschlossen</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="81" />
        <source>Forearm turned out from straight ahead</source>
        <translation>Unterarm nach außen, von geradeaus</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="83" />
        <source>Forearm turned up from straight ahead</source>
        <translation>Unterarm hinauf, von geradeaus</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="85" />
        <source>Arm inwards from straight out to the side</source>
        <translation>Arm nach innen, von gerade zur Seite</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="87" />
        <source>Tip of the thumb, by level of the spine</source>
        <translation>Daumenspitze, nach Höhe der Wirbelsäule</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="112" />
        <source>Left arm</source>
        <translation>Linker Arm</translation>
    </message>
    <message>
        <location filename="../patient/wording.py" line="113" />
        <source>Right arm</source>
        <translation>Rechter Arm</translation>
    </message>
</context><context>
    <name>review</name>
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
</context></TS>
