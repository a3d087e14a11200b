<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1">
<context>
    <name>CautionsPage</name>
    <message>
        <location filename="../patient/cautions_page.py" line="56" />
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="58" />
        <source>Read aloud</source>
        <translation>Lire à voix haute</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="61" />
        <source>I have read all of this</source>
        <translation>J’ai tout lu</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="61" />
        <source>Space</source>
        <translation>Espace</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="85" />
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="93" />
        <source>Read all of it. Then press Space, or raise your good hand.</source>
        <translation>Lisez tout. Puis appuyez sur Espace, ou levez la bonne main.</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="134" />
        <source>First read all that stands on the screen. Press A to have it read to you. Then press the space bar, or raise your good hand.</source>
        <translation>Lisez d’abord tout ce qui est à l’écran. Appuyez sur A pour l’entendre. Puis appuyez sur la barre d’espace, ou levez la bonne main.</translation>
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
        <translation>Espace</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="67" />
        <source>Skip</source>
        <translation>Passer</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="68" />
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="119" />
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="179" />
        <location filename="../patient/exercise_page.py" line="120" />
        <source>Paused</source>
        <translation>En pause</translation>
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="143" />
        <source>Mind your body</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="150" />
        <source>By time, not measured</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="163" />
        <source>Looking for you</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="167" />
        <source>Not measured now</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="179" />
        <source>Let your arm rest</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="180" />
        <source>To go on</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="180" />
        <source>Raise your good hand, or press Space</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="197" />
        <source>The clock is waiting: seconds left</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="199" />
        <source>Rest: seconds left</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="201" />
        <source>Hold: seconds left</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="207" />
        <source>Get into place: seconds</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="211" />
        <source>Now</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="216" />
        <source>After that</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="218" />
        <source>Slowly, until you feel a stretch</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="220" />
        <source>Stay there</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="222" />
        <source>Hold</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="224" />
        <source>Slowly back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="226" />
        <source>Held long enough</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="235" />
        <source>Now: hold {number} of {asked}, for {hold_s} seconds</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="242" />
        <source>Then: hold {number} of {asked}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="244" />
        <source>Then: rest for {rest_s} seconds</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="246" />
        <source>Then: {name}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/exercise_page.py" line="247" />
        <source>Then: you are done for today</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>FaultBanner</name>
    <message>
        <location filename="../patient/fault_banner.py" line="30" />
        <source>Try again</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/fault_banner.py" line="48" />
        <source>And {count} more of the kind.</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>HandGauge</name>
    <message>
        <location filename="../patient/hand_gauge.py" line="59" />
        <source>Hand up: begin</source>
        <translation>Main levée : commencer</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="61" />
        <source>Hand up: choose</source>
        <translation>Main levée : choisir</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="67" />
        <location filename="../patient/hand_gauge.py" line="65" />
        <location filename="../patient/hand_gauge.py" line="63" />
        <source>Keep it up to stop</source>
        <translation>Gardez-la levée : arrêter</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="63" />
        <source>Hand up: pause</source>
        <translation>Main levée : pause</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="65" />
        <source>Hand up: go on</source>
        <translation>Main levée : continuer</translation>
    </message>
    <message>
        <location filename="../patient/hand_gauge.py" line="67" />
        <source>Hand up: easier one</source>
        <translation>Main levée : plus facile</translation>
    </message>
</context><context>
    <name>HoldCount</name>
    <message>
        <location filename="../patient/readouts.py" line="165" />
        <source>Holds done: {done} of {asked}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/readouts.py" line="182" />
        <source>of {asked} holds</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>KeyButton</name>
    <message>
        <location filename="../patient/controls.py" line="51" />
        <source>Key: {key}</source>
        <translation>Touche : {key}</translation>
    </message>
</context><context>
    <name>LaptopPlace</name>
    <message>
        <location filename="../patient/laptop_place.py" line="25" />
        <source>2 m, up high</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/laptop_place.py" line="27" />
        <source>2 m, chair height</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/laptop_place.py" line="50" />
        <source>Where the laptop goes</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>LeavesPage</name>
    <message>
        <location filename="../patient/leaves.py" line="40" />
        <source>Go back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/leaves.py" line="40" />
        <source>Esc</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/leaves.py" line="42" />
        <source>Page before</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/leaves.py" line="44" />
        <source>Next page</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/leaves.py" line="62" />
        <source>Page</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/leaves.py" line="115" />
        <source>{at} of {count}</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>OfferPage</name>
    <message>
        <location filename="../patient/offer_page.py" line="30" />
        <source>Try the easier one</source>
        <translation>Essayer le plus facile</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="30" />
        <source>Space</source>
        <translation>Espace</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="32" />
        <source>Go on without it</source>
        <translation>Continuer sans</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="33" />
        <source>Stop for today</source>
        <translation>Arrêter pour aujourd’hui</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="41" />
        <source>That hurt more than your plan allows. This one stops here.</source>
        <translation>Cela a fait plus mal que votre plan ne permet. Cet exercice s’arrête ici.</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="49" />
        <source>There is an easier one:</source>
        <translation>Il y en a un plus facile :</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="56" />
        <source>What is offered</source>
        <translation>Ce qui est proposé</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="68" />
        <source>Raise your good hand, or press Space, to try it.</source>
        <translation>Levez la bonne main, ou appuyez sur Espace, pour l’essayer.</translation>
    </message>
    <message>
        <location filename="../patient/offer_page.py" line="78" />
        <source>Ask your therapist before you do it again: {name}</source>
        <translation>Demandez à votre cabinet avant de le refaire : {name}</translation>
    </message>
</context><context>
    <name>PainPage</name>
    <message>
        <location filename="../patient/pain_page.py" line="45" />
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="45" />
        <source>Space</source>
        <translation>Espace</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="46" />
        <source>Stop for today</source>
        <translation>Arrêter pour aujourd’hui</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="57" />
        <source>no pain</source>
        <translation>aucune douleur</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="59" />
        <source>worst pain you can think of</source>
        <translation>la pire douleur que vous puissiez imaginer</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="61" />
        <source>Keys: 0 to 9, {key} for 10, or the arrows</source>
        <translation>Touches : 0 à 9, {key} pour 10, ou les flèches</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="90" />
        <source>Before: {name}</source>
        <translation>Avant : {name}</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="91" />
        <source>How much does your shoulder hurt now?</source>
        <translation>À combien votre épaule fait-elle mal maintenant ?</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="93" />
        <source>After: {name}</source>
        <translation>Après : {name}</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="94" />
        <source>And how much does it hurt now?</source>
        <translation>Et maintenant, à combien fait-elle mal ?</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="116" />
        <source>Press Space to go on with {score}</source>
        <translation>Espace : continuer avec {score}</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="118" />
        <source>You chose {score}. Wrong? Raise your good hand again</source>
        <translation>Vous avez choisi {score}. Faux ? Levez encore la bonne main</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="122" />
        <source>Raise your good hand at your number</source>
        <translation>Levez la bonne main à votre chiffre</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="124" />
        <source>Choose your number</source>
        <translation>Choisissez votre chiffre</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="165" />
        <source>More than the {limit} your plan allows, so this exercise is left out today. Ask your therapist.</source>
        <translation>C’est plus que les {limit} que votre plan permet, cet exercice n’est donc pas fait aujourd’hui. Demandez à votre cabinet.</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="170" />
        <source>More than the {limit} your plan allows. Ask your therapist before you do this exercise again.</source>
        <translation>C’est plus que les {limit} que votre plan permet. Demandez à votre cabinet avant de refaire cet exercice.</translation>
    </message>
    <message>
        <location filename="../patient/pain_page.py" line="175" />
        <source>That is a lot. Stop here and ask your therapist before you go on.</source>
        <translation>C’est beaucoup. Arrêtez ici et demandez à votre cabinet avant de continuer.</translation>
    </message>
</context><context>
    <name>PatientWindow</name>
    <message>
        <location filename="../patient/window.py" line="72" />
        <source>Shoulder coach</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>Picture</name>
    <message>
        <location filename="../patient/picture.py" line="47" />
        <source>Live picture, mirrored</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>PreparePage</name>
    <message>
        <location filename="../patient/prepare_page.py" line="39" />
        <source>New for you</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="48" />
        <source>Begin now</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="48" />
        <source>Space</source>
        <translation>Espace</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="50" />
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="51" />
        <source>Skip</source>
        <translation>Passer</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="52" />
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="99" />
        <source>What to do</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="139" />
        <source>Listen: it begins by itself</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="139" />
        <source>In place</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="143" />
        <source>Change this first</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>ScoreButton</name>
    <message>
        <location filename="../patient/score_button.py" line="63" />
        <source>Pain {score} of 10</source>
        <translation>Douleur {score} sur 10</translation>
    </message>
    <message>
        <location filename="../patient/score_button.py" line="65" />
        <source>Key: {key}</source>
        <translation>Touche : {key}</translation>
    </message>
</context><context>
    <name>SummaryPage</name>
    <message>
        <location filename="../patient/summary_page.py" line="34" />
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="34" />
        <source>Enter</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="36" />
        <source>Save in another folder</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="45" />
        <source>What was done</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="68" />
        <source>Done for today</source>
        <translation>Fini pour aujourd’hui</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="70" />
        <source>Stopped because of the pain. What you did is kept.</source>
        <translation>Arrêté à cause de la douleur. Ce que vous avez fait est gardé.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="72" />
        <source>Stopped because of the pain</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="74" />
        <source>Stopped. What you did is kept.</source>
        <translation>Arrêté. Ce que vous avez fait est gardé.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="76" />
        <source>Stopped</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="84" />
        <source>Saved for your therapist: {path}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="87" />
        <source>Nothing was saved.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="98" />
        <source>No exercise was begun.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="114" />
        <source>Choose a folder for the session file</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="121" />
        <source>Rest your arm, and ring your practice before you exercise again: {contact}</source>
        <translation>Reposez le bras, et appelez votre cabinet avant de refaire des exercices : {contact}</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="124" />
        <source>Rest your arm, and ring your practice before you exercise again.</source>
        <translation>Reposez le bras, et appelez votre cabinet avant de refaire des exercices.</translation>
    </message>
    <message>
        <location filename="../patient/summary_page.py" line="134" />
        <source>Your pain went up. If it stays up for more than half an hour, or keeps you awake, tell your therapist before the next session.</source>
        <translation>Votre douleur a augmenté. Si elle reste plus forte plus d’une demi-heure, ou vous empêche de dormir, dites-le à votre cabinet avant la prochaine séance.</translation>
    </message>
</context><context>
    <name>UnderstandingPage</name>
    <message>
        <location filename="../patient/understanding_page.py" line="46" />
        <source>Read aloud</source>
        <translation>Lire à voix haute</translation>
    </message>
    <message>
        <location filename="../patient/understanding_page.py" line="68" />
        <source>Common practice.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/understanding_page.py" line="70" />
        <source>From: {sources}</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>WeeksPage</name>
    <message>
        <location filename="../patient/weeks_page.py" line="36" />
        <source>Nothing has been done yet.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="66" />
        <source>The last time</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="66" />
        <source>My weeks</source>
        <translation>Mes semaines</translation>
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="76" />
        <source>Each session, and pain below</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="121" />
        <source>Your plan held until {day}. Ask your therapist for a new one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="124" />
        <source>Today is a rest day.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="126" />
        <source>Today</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="145" />
        <location filename="../patient/weeks_page.py" line="127" />
        <source>and {count} more</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="132" />
        <source>✓ {name}: done</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="134" />
        <source>• {name}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="135" />
        <source>• {name}: {done} of {asked} times</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="148" />
        <source>{done} of {asked} holds</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="155" />
        <source>furthest {reached}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="158" />
        <source>pain {before} before, {after} after</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="165" />
        <source>The band shows how wrong each number may be. Going further is never worth more pain.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="169" />
        <source>0 % is the foot of the neck and 100 % the pelvis.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="177" />
        <source>Last measured on {day}: {value}, the middle of the holds.</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>WelcomePage</name>
    <message>
        <location filename="../patient/welcome_page.py" line="59" />
        <source>Space</source>
        <translation>Espace</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="60" />
        <source>All cautions</source>
        <translation>Toutes les précautions</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="61" />
        <source>My weeks</source>
        <translation>Mes semaines</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="62" />
        <source>Understand my shoulder</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="63" />
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="85" />
        <source>Getting the camera and the measuring ready. This takes a few seconds.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="87" />
        <source>Read this while you wait</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="88" />
        <source>Not ready yet</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="94" />
        <source>No picture</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="96" />
        <source>Cannot start without a picture</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="102" />
        <source>Start</source>
        <translation>Commencer</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="109" />
        <source>Raise your good hand, or press Space, to begin</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="128" />
        <source>Stretch until it pulls, not until it hurts. Easing off is always right. This program does not replace your therapist.</source>
        <translation>Étirez jusqu’à ce que ça tire, pas jusqu’à ce que ça fasse mal. Relâcher est toujours juste. Ce programme ne remplace pas vos soins.</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="136" />
        <source>Today</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="168" />
        <source>When to stop</source>
        <translation>Quand arrêter</translation>
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="179" />
        <source>Today: one exercise, about {minutes} min</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="180" />
        <source>Today: {count} exercises, about {minutes} min</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>calendar</name>
    <message>
        <location filename="../patient/calendar.py" line="41" />
        <source>{mark}: {count}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="48" />
        <source>The last 12 weeks. {days}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="119" />
        <source>done</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="121" />
        <source>partly done</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="123" />
        <source>nothing done</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="125" />
        <source>rest day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="127" />
        <source>still to do today</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="129" />
        <source>before the beginning</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="179" />
        <source>Mon</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="180" />
        <source>Tue</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="181" />
        <source>Wed</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="182" />
        <source>Thu</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="183" />
        <source>Fri</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="184" />
        <source>Sat</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/calendar.py" line="185" />
        <source>Sun</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>card</name>
    <message>
        <location filename="../../app/lens.py" line="35" />
        <location filename="../../app/card.py" line="20" />
        <source>Written: {out}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/card.py" line="21" />
        <source>Print it at 100 % and check its size with a bank card; page 2 says how it is worn.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/board_page.py" line="35" />
        <location filename="../shared/board_page.py" line="30" />
        <source>Lens board</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/board_page.py" line="41" />
        <source>Print at 100 % on matt white paper and stick it flat on something stiff. It measures your camera, not you.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/board_page.py" line="86" />
        <source>Was it printed true? A bank card's long edge reaches from 0 to the thick mark on both lines, each 100 mm long. Where one is longer than the other, use another printer.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_drawings.py" line="21" />
        <source>Seen from above</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_drawings.py" line="28" />
        <source>chest</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_drawings.py" line="37" />
        <source>strip</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_drawings.py" line="40" />
        <source>tabs inside</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_drawings.py" line="47" />
        <source>ridge, to the front</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_drawings.py" line="56" />
        <source>Worn</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="20" />
        <source>How to make and wear the chest card</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="22" />
        <source>With this card the camera sees how far your trunk is turned, which matters most for turning the arm outward.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="34" />
        <source>Make it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="41" />
        <source>Wear it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="62" />
        <source>Take care</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="81" />
        <source>Print the first page at 100 % ('actual size', not 'fit to page') on stiff, matt, white paper. Keep this page apart.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="86" />
        <source>Check the size: a bank card fills its outline, the ruler is 100 mm long.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="90" />
        <source>Cut out the front and the strip along the solid lines.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="94" />
        <source>Fold along the dashed lines, print outside, and press the folds sharp.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="98" />
        <source>Glue the strip's tabs behind the outer edges of the front: folds on edges, both level at the top, the tongue standing out above. The front now is a tent.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="109" />
        <source>Wear it over clothes that lie close and do not slide, on the upper breastbone, its ridge upright and in the middle of the chest.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="114" />
        <source>Hold the tongue to the neckline with a clothes peg, and the strip's lower edge with tape.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="119" />
        <source>Keep hair, chin and hands off both squares.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="123" />
        <source>Set the camera to 1280 by 720 or more, 1.5 to 2.8 metres away. There is nothing to switch on: the program uses the card while it sees both squares.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="134" />
        <source>It is an extra, for use only where your therapist agrees. It measures how the trunk turns and diagnoses nothing.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="139" />
        <source>Let somebody else put it on where reaching up hurts.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="143" />
        <source>No pins: if your therapist does use one, through clothes only and away from the skin. Nothing round the neck.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="148" />
        <source>Not over a wound, a dressing, sore skin or a device under the skin.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_howto.py" line="152" />
        <source>Take it off before you lie down or lean close to a wall, and when it presses, rubs or gets in the way of the arm.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_page.py" line="63" />
        <location filename="../shared/card_page.py" line="44" />
        <source>Chest card</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_page.py" line="66" />
        <source>Print this page at 100 % on stiff, matt, white paper.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_page.py" line="70" />
        <source>cut</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_page.py" line="71" />
        <source>fold back, print outside</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_page.py" line="117" />
        <source>glue</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_page.py" line="130" />
        <source>Was it printed at full size?</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_page.py" line="131" />
        <source>Lay a bank card here:</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_page.py" line="132" />
        <source>it must fill this outline.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_page.py" line="152" />
        <source>Front, 1 piece</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_page.py" line="156" />
        <source>Strip for the back, 1 piece</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_page.py" line="160" />
        <source>Glue the tabs behind the front's outer edges,</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/card_page.py" line="161" />
        <source>fold on edge, both pieces level at the top.</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>catalogue</name>
    <message>
        <location filename="../therapist/catalogue_list.py" line="84" />
        <source>by time</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>chart</name>
    <message>
        <location filename="../shared/chart_heading.py" line="36" />
        <location filename="../shared/chart_heading.py" line="33" />
        <source>session</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="37" />
        <source>weeks' medians</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="40" />
        <source>let go early</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="41" />
        <source>95 % error</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="43" />
        <source>first, last mean</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="45" />
        <source>no real change</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="47" />
        <source>week's median</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/chart_heading.py" line="49" />
        <source>slope</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/chart_marks.py" line="40" />
        <source>other side {angle}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/chart_marks.py" line="46" />
        <source>next step from {angle}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/chart_marks.py" line="52" />
        <source>not beyond {angle}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/chart_strips.py" line="45" />
        <source>Sessions by week: done / asked for</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/chart_strips.py" line="79" />
        <source>Pain 0–10: highest of a session</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/chart_strips.py" line="81" />
        <source>Pain 0–10: ○ before, ● after</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>command</name>
    <message>
        <location filename="../../__main__.py" line="40" />
        <source>coach: stopped by Ctrl-C; what was recorded is kept.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="27" />
        <source>usage: </source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="28" />
        <source>positional arguments</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="29" />
        <source>options</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="30" />
        <source>show this help and exit</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="31" />
        <source>%(prog)s: %(message)s</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="33" />
        <source>unknown arguments: %s</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="34" />
        <source>%(option)s may be any of %(matches)s; write it out</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="37" />
        <source>%(value)r is not one of %(choices)s; name one of these</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="40" />
        <source>%(value)r is no number; write one</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="43" />
        <source>needs a value after it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="44" />
        <source>takes one value at most</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="45" />
        <source>needs at least one value after it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="46" />
        <source>still needed: %s</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="47" />
        <source>one of these is needed: %s</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="48" />
        <source>cannot be together with %s</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argparse_words.py" line="49" />
        <source>takes no value, but was given %r</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="20" />
        <source>'{text}' is no size of text; name {smallest} to {largest} per cent</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="36" />
        <source>'{text}' is no field of view; name {low:g} to {high:g} degrees</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="54" />
        <source>'{text}' is not one of {names}; name one of these</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="48" />
        <location filename="../../app/argument_types.py" line="66" />
        <source>CODE</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="68" />
        <source>en or de; by default the system's, else English</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="78" />
        <source>ground of the window; by default as last chosen, else the system's</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="87" />
        <source>PERCENT</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="88" />
        <source>100 to 200; by default as last chosen, else the system's</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/argument_types.py" line="94" />
        <source>let nothing move that need not</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/arguments.py" line="43" />
        <source>Home exercise coach for stiff shoulders. Measures and times exercises that a therapist prescribed; it does not diagnose and does not replace licensed care. Stop and ask your therapist if pain rises above the agreed limit.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/arguments.py" line="49" />
        <source>Without a command the patient's window opens.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/arguments.py" line="55" />
        <source>show the program's version and exit</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/arguments.py" line="61" />
        <source>plan file; without it the last one, else the example plan</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="218" />
        <location filename="../../app/arguments.py" line="65" />
        <source>camera number</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="223" />
        <location filename="../../app/commands.py" line="108" />
        <location filename="../../app/arguments.py" line="70" />
        <source>CLIP</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/arguments.py" line="71" />
        <source>a video file in place of the camera</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="92" />
        <location filename="../../app/arguments.py" line="76" />
        <source>FOLDER</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/arguments.py" line="77" />
        <source>where session files go</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/arguments.py" line="84" />
        <source>begin without waiting for a signal</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/arguments.py" line="88" />
        <source>which measures; by default full, and lite on a machine too slow for it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/arguments.py" line="93" />
        <source>COMMAND</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="23" />
        <source>the therapist's window</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="29" />
        <source>session files or folders to import</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="41" />
        <source>a patient's record for another system, or all holds of everybody</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="49" />
        <source>as in the plan; without it parquet holds everybody</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="59" />
        <source>the practice's key, and the lock of its store</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="65" />
        <source>what to do</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="72" />
        <source>the backup, or the store</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="77" />
        <source>make a key for new plans beside those that are there</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="86" />
        <source>the whole job on a sample clip, no screen needed</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="93" />
        <source>folder for what it makes</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="96" />
        <source>open the windows as well</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="103" />
        <source>range and holds of clips</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="109" />
        <source>a clip, or a folder of clips</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="115" />
        <source>where the camera stands; by default where the movement is measured best</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="122" />
        <source>how the person stands, sits or lies; by default standing, seen from the foot supine</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="132" />
        <source>write every frame's value; of several clips into a folder of this name</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="139" />
        <source>DEG</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="140" />
        <source>the camera's horizontal one, as 'coach lens' finds it; by default a common camera's</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="149" />
        <source>which measures a clip, by default full; or which found the points of a table, whose errors are then given: a session's own table needs only its session.json beside it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="163" />
        <source>joint centres of another recording, to a table that measure reads</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="174" />
        <location filename="../../app/commands.py" line="170" />
        <source>TABLE.csv</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="171" />
        <source>table of joint centres in metres, CSV</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="177" />
        <source>what points up</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="183" />
        <source>on which side of the person the camera stands</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="187" />
        <source>METRES</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="195" />
        <source>a card to print and wear: it shows the trunk's turn</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="208" />
        <source>a one-minute check of the camera's field of view with a printed board</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="214" />
        <source>write the board to print</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="224" />
        <source>a video of the board moved before the camera</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="237" />
        <source>FILE or URL</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/commands.py" line="238" />
        <source>where imported sessions are kept: a file, or postgresql://user@host/database</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>concern</name>
    <message>
        <location filename="../../review/cohort_reasons.py" line="44" />
        <source>high pain</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="46" />
        <source>pain rose</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="48" />
        <source>range fell</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="50" />
        <source>stopped</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="52" />
        <source>poor data</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="54" />
        <source>next step</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="56" />
        <source>range grew</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>convert</name>
    <message>
        <location filename="../../app/convert.py" line="37" />
        <source>No pose model found them, so their error is not known: 'coach measure --pose-model full' measures them with the errors of the full one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/convert.py" line="49" />
        <source>{count} frames as a camera {distance_m:g} m in front of the person sees them are in '{out}'.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/convert.py" line="55" />
        <source>{count} frames as a camera {distance_m:g} m behind the person sees them are in '{out}'.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/convert.py" line="61" />
        <source>{count} frames as a camera {distance_m:g} m to the person's left sees them are in '{out}'.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/convert.py" line="67" />
        <source>{count} frames as a camera {distance_m:g} m to the person's right sees them are in '{out}'.</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>dates</name>
    <message>
        <location filename="../therapist/plan_fields.py" line="104" />
        <source>YYYY-MM-DD</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/typed_dates.py" line="15" />
        <source>{year:04}-{month:02}-{day:02}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="17" />
        <source>Mon</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="19" />
        <source>Tue</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="21" />
        <source>Wed</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="23" />
        <source>Thu</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="25" />
        <source>Fri</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="27" />
        <source>Sat</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="29" />
        <source>Sun</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="186" />
        <source>{day} {month} {year}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="192" />
        <source>{day} {month}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="200" />
        <source>Jan</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="202" />
        <source>Feb</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="204" />
        <source>Mar</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="206" />
        <source>Apr</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="208" />
        <source>May</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="210" />
        <source>Jun</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="212" />
        <source>Jul</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="214" />
        <source>Aug</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="216" />
        <source>Sep</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="218" />
        <source>Oct</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="220" />
        <source>Nov</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="222" />
        <source>Dec</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>demo</name>
    <message>
        <location filename="../../app/demo.py" line="45" />
        <source>Sample clip of a rendered person</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/demo.py" line="99" />
        <source>Written:</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/demo.py" line="132" />
        <source>playing the sample clip</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/demo.py" line="178" />
        <source>Holds in the clip, {movement}: {count}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/demo.py" line="181" />
        <source>            truth                      measured</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/demo.py" line="182" />
        <source>  hold      held       angle           held       angle</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>diary</name>
    <message>
        <location filename="../../review/diary_wording.py" line="18" />
        <source>No hold was measured yet.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="21" />
        <source>In too few sessions the trunk kept still, so nothing can be said of a change.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="26" />
        <source>Measured once, on {day}: {reached}. That is too little to speak of a change.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="41" />
        <source>Since the first sessions ({day}) there is no change larger than the error of measuring.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="47" />
        <source>Since the first sessions ({day}) no change can be told from the error of measuring yet; more sessions may tell.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="58" />
        <source>The arm goes {size} further than in the first sessions ({day}). That is more than the error of measuring.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="64" />
        <source>The arm goes {size} less far than in the first sessions ({day}). That is more than the error of measuring. Show this to your therapist.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="70" />
        <source>The hand goes {size} of the back's length higher than in the first sessions ({day}). That is more than the error of measuring.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="76" />
        <source>The hand goes {size} of the back's length less high than in the first sessions ({day}). That is more than the error of measuring. Show this to your therapist.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/diary_wording.py" line="87" />
        <source>the thumb reached {levels}</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>dose</name>
    <message>
        <location filename="../../review/dose_sources.py" line="17" />
        <source>Common practice: 5 to 10 s, about 5 times, up to three times a day; here its least.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="21" />
        <source>Common practice: 5 to 10 s, about 5 times, up to three times a day.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="25" />
        <source>Hold: Kelley et al. 2013, J Orthop Sports Phys Ther 43:A1-A31 (from memory), high irritability, 1 to 5 s and free of pain; counts: common practice.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="31" />
        <source>Hold: Kelley et al. 2013, J Orthop Sports Phys Ther 43:A1-A31 (from memory), moderate irritability, 5 to 15 s and a mild stretch; counts: common practice.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="37" />
        <source>Common practice for a stretch at the end of the range: about 30 s, 3 to 5 times, once to three times a day; for low irritability longer holds also after Kelley et al. 2013 (from memory).</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="43" />
        <source>Common practice: small swings free of pain, half a minute at a time.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="47" />
        <source>Common practice: easy swings, up to a minute at a time.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="51" />
        <source>Common practice: short and light, free of pain.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="55" />
        <source>Common practice: about 5 s, up to ten times.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/dose_sources.py" line="59" />
        <source>Common practice: 5 to 10 s, about ten times.</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>drawings</name>
    <message>
        <location filename="../patient/demonstration.py" line="58" />
        <source>Drawing: {title}, left arm</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/demonstration.py" line="60" />
        <source>Drawing: {title}, right arm</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="26" />
        <source>painful</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="27" />
        <source>stiff</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="28" />
        <source>loosening</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="48" />
        <source>here, as your therapist sees it now</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="54" />
        <source>months and years</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="57" />
        <source>No sharp borders, and every shoulder takes its own time</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="67" />
        <source>pain</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="68" />
        <source>session</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="69" />
        <source>half an hour</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="70" />
        <source>night</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="83" />
        <source>still up: ring</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/course.py" line="87" />
        <source>down again: all right</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="25" />
        <source>A loose joint</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="26" />
        <source>A frozen joint</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="28" />
        <location filename="../patient/drawings/joint.py" line="27" />
        <source>socket</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="30" />
        <location filename="../patient/drawings/joint.py" line="29" />
        <source>ball</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="32" />
        <source>thin bag with a loose fold</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/joint.py" line="34" />
        <source>thick bag, no fold</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="19" />
        <source>nothing yet</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="20" />
        <source>it pulls</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="21" />
        <source>it hurts</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="24" />
        <source>go on slowly</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="25" />
        <source>stay here and breathe</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="26" />
        <source>too far: ease off</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/pull.py" line="45" />
        <source>the further the arm goes</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/reach.py" line="51" />
        <source>sore: turn back before</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/reach.py" line="53" />
        <source>a mild pull: stay here</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/reach.py" line="55" />
        <source>how far a free arm goes</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/reach.py" line="56" />
        <source>easy, without pain</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/reach.py" line="58" />
        <source>An example, not your arm</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="74" />
        <source>Drawing: two shoulder joints from the front. Left, a thin bag around ball and socket with a loose fold below. Right, the bag is thick and the fold is gone.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="80" />
        <source>Drawing: a line of time with three humps that overlap: painful, stiff, loosening.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="85" />
        <source>Drawing: an arm that goes a part of the way easily and is sore for a long part after it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="91" />
        <source>Drawing: an arm that stops early, with a mild pull just at the end.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="95" />
        <source>Drawing: an arm that goes further than before, with a mild pull at the end.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="100" />
        <source>Drawing: a scale with three parts, nothing yet, it pulls, it hurts. A hand points at it pulls.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/drawings/view.py" line="106" />
        <source>Drawing: pain after a session. Down again within half an hour is all right; still up after that, ring.</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>export</name>
    <message>
        <location filename="../../app/export.py" line="86" />
        <source>{out}: {sessions} of {patient_code}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/export.py" line="91" />
        <source>{day}, {done}: {doubt}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/export.py" line="110" />
        <source>{out}: 1 patient</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/export.py" line="112" />
        <source>{out}: {count} patients</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/export.py" line="120" />
        <source>left out</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/export.py" line="121" />
        <source>taken, though the doubt is not decided</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>exports</name>
    <message>
        <location filename="../therapist/export_words.py" line="33" />
        <source>PDF (*.pdf)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="34" />
        <source>Write the report</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="35" />
        <source>The report is in {path}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="41" />
        <source>FHIR as JSON (*.json)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="42" />
        <source>Write the FHIR bundle</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="43" />
        <source>The FHIR bundle is in {path}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="57" />
        <location filename="../therapist/export_words.py" line="49" />
        <source>Table (*.csv)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="50" />
        <source>Write the table of holds</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="51" />
        <source>The table of holds is in {path}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="58" />
        <source>Write the table of own measures</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="59" />
        <source>The table of own measures is in {path}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="65" />
        <source>Text (*.txt)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="66" />
        <source>Write the note</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/export_words.py" line="67" />
        <source>The note is in {path}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exports.py" line="65" />
        <source>There is no session to report on: import session files first.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exports.py" line="78" />
        <source>There is no session to export: import session files first.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exports.py" line="90" />
        <source>There is no session for a note: import session files first.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exports.py" line="99" />
        <source>The note is on the clipboard: paste it into the record.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exports.py" line="154" />
        <source>The export ended without a result: try again, and tell who keeps the program.</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>faults</name>
    <message>
        <location filename="../../app/chosen_language.py" line="18" />
        <source>The program does not speak '{asked}'; choose one of {known}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/convert.py" line="26" />
        <source>A camera at {distance_m:g} m is none of this program; name {low:g} to {high:g} m.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/demo.py" line="65" />
        <source>The sample clip '{clip}' is missing; install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/demo.py" line="156" />
        <source>Nothing was measured in '{clip}'; install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/export.py" line="38" />
        <source>A {kind} export is of one patient: name the code with --patient.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/export.py" line="47" />
        <source>There is no store at '{place}'; import files with 'coach review'.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/export.py" line="70" />
        <source>Every session of {patient_code} was left out: decide anew in 'coach review'.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/export.py" line="76" />
        <source>nobody yet</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/export.py" line="79" />
        <source>There is no patient '{patient_code}' in the store at '{store}'; it knows {named}{more}: correct the code.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/export.py" line="102" />
        <source>There is no session in the store at '{store}' to export.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="45" />
        <source>'--renew' belongs to 'coach key make', not to 'coach key {deed}'.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="65" />
        <source>There is a practice key at {path} already: 'coach key make --renew' makes one for new plans beside it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="84" />
        <source>There is no practice key here; make one with 'coach key make'.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="144" />
        <source>'coach key {deed}' needs the name of the backup file after it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure.py" line="183" />
        <source>Nobody is seen in '{clip}'; record it again with the whole upper body in the picture.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure_many.py" line="62" />
        <source>Two of the clips have the same name, so one table would replace the other; rename one, or measure them one at a time.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure_many.py" line="106" />
        <source>There is no clip in the folder '{path}'; name another.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/passphrases.py" line="20" />
        <source>The passphrase of {what} is needed; run the command where you can type it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/passphrases.py" line="33" />
        <source>The two passphrases differ; run the command again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/plan.py" line="46" />
        <source>The plan in {path} ended on {day}; ask your practice for a new one ({contact}).</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/plan.py" line="51" />
        <source>The plan in {path} ended on {day}; ask your practice for a new one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/points_of.py" line="42" />
        <source>The points of {name} were not found by the pose model {model} alone, by what {document} beside it says; leave the model out.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/review.py" line="50" />
        <source>There is no file or folder '{path}'; check its name.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/review.py" line="84" />
        <source>The store is locked and stays closed without its passphrase.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/sitting.py" line="135" />
        <source>{fault} What you did is kept, and saved when you start the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/sitting.py" line="139" />
        <source>{fault} What you did is kept as long as this window is open: make room first, then close it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/streams.py" line="40" />
        <source>What was printed could not be written ({reason}); send it to another place.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/camera.py" line="66" />
        <source>{name} gives no picture; close other programs that use it, check its cover and plug, and start again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/camera.py" line="83" />
        <source>{name} has stopped giving pictures; check its plug, close other programs that use it, and go on.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/card_watch.py" line="102" />
        <source>The printed card is in the picture, but {width} by {height} pixels are too few to measure it; set the camera to {least_width} by {least_height} or more to use it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="23" />
        <source>The board is too small in the picture to measure; hold the sheet nearer, within half a metre, and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="30" />
        <source>The board was not seen sharp and still; print it with 'coach lens --print', light it well, hold all of it in the picture with short stops, and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="39" />
        <source>Only {kept} different views of the board were seen and {least_views} are needed; move and tilt the sheet more, with short stops, and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="49" />
        <source>The board was tilted in only {tilted} views and {least_tilted} are needed, for face-on a narrow lens and a far sheet look alike; tilt it by a third of a right angle to every side and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="59" />
        <source>The views of the board do not fit one lens; stick the sheet flat on something stiff, switch zoom and autofocus off where you can, and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="68" />
        <source>The board's corners miss the best lens by {miss_px} pixels; stick the sheet flat on something stiff, give more light, and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_check.py" line="76" />
        <source>The field of view is known only to {error_deg} degrees and {most_error_deg:g} are needed; hold the sheet nearer, tilt it more to every side, and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/sources.py" line="31" />
        <source>No camera answers as number {number}; plug one in, close other programs that use it, or try another number.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/sources.py" line="37" />
        <source>Camera {number}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/sources.py" line="47" />
        <source>'{path}' cannot be read as a video; it is another kind of file or was cut off, so copy it again from where it was recorded, or choose another.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/sources.py" line="58" />
        <source>The pictures of '{path}' are {width} by {height}, too large to measure; record at 1280 by 720.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/sources.py" line="67" />
        <source>'{path}' says it has {frame_count:,} pictures, at most {max_frames:,} are measured; cut it into shorter pieces.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/sources.py" line="80" />
        <source>'{path}' is a folder; name a video file in it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/sources.py" line="86" />
        <source>'{path}' is a device or a pipe; name a video file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/sources.py" line="94" />
        <source>There is no file '{path}'; check its name and folder.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/sources.py" line="100" />
        <source>'{path}' may not be read by you; ask its owner for the right to, or copy it to a folder of yours.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/sources.py" line="109" />
        <source>'{path}' cannot be opened ({reason}); copy it to another place and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/sources.py" line="116" />
        <source>'{path}' is empty; copy it again from where it was recorded, or choose another.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/video_file.py" line="51" />
        <source>'{name}' holds no picture that can be read; copy it again from where it was recorded, or choose another video.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/video_file.py" line="62" />
        <source>'{name}' does not say when its pictures were taken; {rate:g} pictures a second are assumed, and every time rests on that.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/video_file.py" line="83" />
        <source>'{name}' has more than {most:,} pictures; the first of them were used, so cut it into shorter pieces.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/video_file.py" line="110" />
        <source>'{name}' ends after {given} s although it promises {promised} s; it may be cut off, and what it holds was used.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../catalogue/load.py" line="35" />
        <source>The catalogue has no exercise {slug!r}; the nearest names are {near}: correct the name or update the program.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../catalogue/load.py" line="77" />
        <source>The exercise files</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../catalogue/load.py" line="87" />
        <source>The exercise file {name}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../catalogue/pages.py" line="90" />
        <source>The page file {name}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../catalogue/pages.py" line="124" />
        <source>The pages to read</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../catalogue/reading.py" line="43" />
        <source>{what} are missing ({strerror}): install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../catalogue/reading.py" line="54" />
        <source>{where} cannot be used: {told}; correct it there.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../catalogue/safety.py" line="67" />
        <source>The file of stop rules {file}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../catalogue/safety.py" line="88" />
        <source>The file {file} is missing: install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../cues/language.py" line="73" />
        <source>The language files</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../cues/language.py" line="94" />
        <source>The language file {name}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/analysis.py" line="151" />
        <source>The video ended before the session was started: open a longer one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/loudspeaker.py" line="21" />
        <source>There is no sound output, so the coach goes on with captions; connect a loudspeaker to hear it speak.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/system_voice.py" line="18" />
        <source>This computer offers no voice of its own for the chosen language, so the program's own voice speaks; add one in the system's settings to hear it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/trouble.py" line="10" />
        <source>The camera's picture is black: open its cover, or switch on a light. Then go on.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/trouble.py" line="18" />
        <source>{fault} The exercise is paused until it is back; what was done is kept.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/trouble.py" line="25" />
        <source>The camera came back with pictures of another size, as another camera does; what was recorded so far is kept: close the program and start it again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/trouble.py" line="34" />
        <source>Something inside the program went wrong; what was recorded so far is kept: close the program and start it again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/application.py" line="116" />
        <source>There is no screen to open a window on: start the program from a desktop, or use a command that needs none.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/report_page.py" line="51" />
        <source>The report could not be drawn: try again, and restart the program if it fails.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/sheet.py" line="103" />
        <source>{title} could not be drawn: try again, and restart the program if it fails.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/typeface.py" line="30" />
        <source>The font file {name} is missing: install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/typeface.py" line="35" />
        <source>The font file {name} is damaged: install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/archive.py" line="119" />
        <source>{name} in {where}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/archive.py" line="136" />
        <source>{where} is too large for a session file: {count:,} bytes, at most {max_archive_bytes:,} are read; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/archive.py" line="144" />
        <source>{where} is not a session file; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/archive.py" line="156" />
        <source>{where} holds more than the {count} parts of a session file; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/archive.py" line="164" />
        <source>{where} is a zip64 file, which no session file is; ask for a new file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/archive.py" line="176" />
        <source>{where} holds {name!a}, which is no part of a session file; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/archive.py" line="184" />
        <source>{where} holds {name} twice; ask for it to be sent again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/archive.py" line="190" />
        <source>{name} in {where} is encrypted by zip; ask for a file that is not.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/archive.py" line="196" />
        <source>{name} in {where} is packed in a way that session files do not use; ask for the original file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/archive.py" line="205" />
        <source>{name} in {where} is a link or folder; ask for the original file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/archive.py" line="211" />
        <source>{name} in {where} unpacks to {file_size:,} bytes, at most {most_bytes:,} are read; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/archive.py" line="223" />
        <source>{where} has no {name} inside; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/archive.py" line="237" />
        <source>{filename} in {where} is not as long as it says; ask for it to be sent again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="133" />
        <location filename="../../documents/archive.py" line="246" />
        <source>{where} is damaged or cut short; ask for it to be sent again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/cells.py" line="86" />
        <source>{where}, line {row}, column {column}, holds {cell!a} where a number belongs; ask for the file again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/cells.py" line="93" />
        <source>{where} holds cells that are no numbers; ask for the file again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/cells.py" line="117" />
        <source>{where}, line {row}, {name} is {value:g}, allowed are {low:g} to {high:g}; ask for the file again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/cells.py" line="136" />
        <source>{where}, line {line}, has no time_s; ask for the file again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/cells.py" line="144" />
        <source>{where}, line {line}, time_s runs backwards; ask for the file again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/cells.py" line="154" />
        <source>{where} is too large: {found}, at most {allowed:,} are read; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/joints.py" line="102" />
        <source>Shoulders and hips lie above each other where {up} points up; name the axis that points to the ceiling.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/joints.py" line="155" />
        <source>{where} has no rows; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/joints.py" line="171" />
        <source>{where} never knows {lower}; the trunk must be in it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/landmarks.py" line="173" />
        <location filename="../../documents/joints.py" line="183" />
        <source>{where} names a column twice; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/joints.py" line="191" />
        <source>{where} has the unknown column {name!a}; columns are time_s and left_shoulder_x_m, left_shoulder_y_m and so on.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/joints.py" line="203" />
        <source>{where} has no column {name}; add it, empty where it is not known.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/landmarks.py" line="127" />
        <source>{where} has rows without {name}; ask for the file again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/landmarks.py" line="181" />
        <source>{where} has no column {name}; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/landmarks.py" line="193" />
        <source>{where} has the unknown column {name!a}; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="62" />
        <source>{where} names what the catalogue does not have: {unknown}; correct it or update the program.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="70" />
        <source>{where} asks for what cannot be measured: {impossible}; correct it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="76" />
        <source>{where} contradicts itself: {contradiction}; correct it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="100" />
        <source>exercise {count} is {name!r}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="104" />
        <source>exercise {count} is {name!r}; the nearest names are {nearest}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="113" />
        <source>exercise {count} is {exercise}, {found}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="119" />
        <source>exercise {count} has neither an exercise nor a movement</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="123" />
        <source>exercise {count}, {exercise}, has a target_deg, but is only timed</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="131" />
        <source>exercise {count} is {movement} in the position {position}, and {movement} is measured {ways}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="136" />
        <source>exercise {count} is {movement} in the position {position} from the {view}, and {movement} is measured {ways}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="142" />
        <source>exercise {count}, {movement}, has a target_deg, but is not an angle</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="147" />
        <source>other side {count}, {movement}, has a value_deg, but is not an angle</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="160" />
        <source>whose {field} is not measured and not {said}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="164" />
        <source>whose {field} is {meant} and not left out</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="167" />
        <source>whose {field} is {meant} and not {said}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="176" />
        <source>it is for the {side} shoulder, and exercise {count} is for the other one</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="180" />
        <source>exercise {count} names a day twice</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/plan.py" line="182" />
        <source>it is valid until {valid_until}, before it was issued on {issued_on}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/readings.py" line="77" />
        <source>{where} does not begin with the columns {columns}; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/readings.py" line="95" />
        <source>{where} has a planned_index that is no whole number; ask for it again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/readings.py" line="140" />
        <source>{where}, line {line}, must have either a value with its error or a doubt; ask for the file again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="31" />
        <source>{where} cannot be used: {explain}; correct it or ask for a new file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="47" />
        <source>{field} is missing</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="48" />
        <source>{field} is not a known field</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="51" />
        <source>the content is {value}, allowed {allowed}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="53" />
        <source>{place} is {value}, allowed {allowed}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="86" />
        <source>{allowed} or null</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="94" />
        <source>are {names}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="97" />
        <source>is {names}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="100" />
        <source>is text of the form {pattern}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="104" />
        <source>is text of {least} to {max_length} characters</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="109" />
        <source>is a list of {least} to {max_length} entries</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="113" />
        <source>is an object in braces</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="115" />
        <source>is something else</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="121" />
        <source>{place}, {inner}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="127" />
        <source>exercise {number}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="129" />
        <source>repetition {number}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="131" />
        <source>other side {number}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="133" />
        <source>entry {number}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="140" />
        <source>are whole numbers from {least} to {most}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="146" />
        <source>are {least} to {most} seconds</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="148" />
        <source>are {least} to {most} degrees</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="150" />
        <source>are {least} to {most} pixels</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="152" />
        <source>are {least} to {most} metres</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="154" />
        <source>are {least} to {most}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/refusal.py" line="159" />
        <source>any</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="88" />
        <source>{where} contradicts itself: {contradiction}; ask for a new file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="98" />
        <source>The session document</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="106" />
        <source>started_at {started_at} is no date of the calendar</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="110" />
        <source>started_at {started_at} is not from {first} to {last}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="114" />
        <source>exercise {count} is not in its plan</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="116" />
        <source>exercise {count} ends after the session</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="120" />
        <source>exercise {count}, {found}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="126" />
        <source>it ends before it starts</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="128" />
        <source>it has neither an exercise nor a movement</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="130" />
        <source>it has measured repetitions without a movement</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="133" />
        <source>timed hold {number} was held for longer than it lasted</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="137" />
        <source>timed hold {number} starts outside the exercise</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="144" />
        <source>repetition {number} of {movement} is in the unit {unit}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="148" />
        <source>repetition {number} ends before it starts</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="152" />
        <source>repetition {number} was held for longer than it lasted</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="156" />
        <source>repetition {number} starts before the exercise</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/session.py" line="160" />
        <source>repetition {number} ends after the exercise</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="30" />
        <source>{where} is too large: {count:,} bytes, at most {max_bytes:,} are read; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="40" />
        <source>{where} is not UTF-8 text (byte {start}); check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="56" />
        <source>{where} is not valid JSON (line {lineno}, column {colno}); ask for it to be sent again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="70" />
        <source>{where} is nested more than {max_depth} levels deep, which no file of this kind is; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="83" />
        <source>{where} gives {key} twice in one place, so it is not clear which counts; remove one of them.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="95" />
        <source>{where} holds {name} where a number belongs; correct that value.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="118" />
        <source>{where} holds a text with control characters or unseen ones ({value}); take them out.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="136" />
        <source>an object</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/strict_json.py" line="138" />
        <source>a list of {count}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="115" />
        <source>{where}, line {row}, {column} is {cell!a}, allowed are {known}; ask for the file again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="142" />
        <source>{count:,} bytes</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="146" />
        <source>{count:,} rows</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="152" />
        <source>{count:,} columns</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="158" />
        <source>{count:,} cells</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="191" />
        <source>{where} is not UTF-8 text; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/text_table.py" line="213" />
        <source>{where}, line {number}, has {count} cells where the header has {header}; ask for the file again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/versions.py" line="24" />
        <source>not given</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/versions.py" line="27" />
        <source>{where} is not of the format {name} (its format is {said}); check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/versions.py" line="36" />
        <source>{where} has the version {version}, allowed are whole numbers from 1 to {newest}; ask for a new file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../documents/versions.py" line="44" />
        <source>{where} was made by a newer version of this program (file version {version}, known up to {newest}); update the program to open it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../domain/movement.py" line="141" />
        <source>No place of the camera measures {movement} in the position {position}; choose {measurable}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../domain/movement.py" line="152" />
        <source>{position} from the {views}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../domain/movement.py" line="164" />
        <source>{first} or {last}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../domain/plan.py" line="88" />
        <source>The exercise {exercise} is timed and not measured.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../domain/practice.py" line="151" />
        <source>{field} is {value}, allowed are the years {first} to {last}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../domain/practice.py" line="157" />
        <source>{movement} is not an angle and has no value_deg</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../domain/practice.py" line="160" />
        <source>total is {total}, more than the maximum {maximum}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../domain/practice.py" line="164" />
        <source>maximum is 0, allowed is more</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../domain/session.py" line="89" />
        <source>The exercise {exercise} was timed and not measured.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/codes.py" line="40" />
        <source>The file of codes</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/codes.py" line="45" />
        <source>{where} cannot be used ({error}): install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/codes.py" line="53" />
        <source>{where} gives a name twice: install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/codes.py" line="72" />
        <source>The code {name!r} was never confirmed: write text in its place.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/codes.py" line="79" />
        <source>The code {name!r} {withheld}: write text in its place.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/fhir.py" line="60" />
        <source>There is no session to export: import session files first.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/parquet.py" line="41" />
        <source>Parquet is written by pyarrow, which is not installed; export another kind, or export from a program that was installed with pip install 'stiff-shoulder-coach[parquet]'.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../pose/bundle.py" line="37" />
        <source>The pose model '{name}' is missing (looked in {places}); install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../pose/bundle.py" line="55" />
        <source>The pose model '{path}' cannot be read ({reason}); install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../pose/bundle.py" line="63" />
        <source>The pose model '{path}' is not the one that belongs to this program (its SHA-256 is {found}..., {expected}... is expected), so it was not used; install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../pose/bundle.py" line="79" />
        <source>The list of pose models '{path}' cannot be read ({reason}); install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../pose/bundle.py" line="90" />
        <source>The list of pose models '{manifest_path}' is damaged; install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../pose/bundle.py" line="96" />
        <source>The pose model '{name}' is not in the list of models '{manifest_path}'; install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../pose/landmarker.py" line="56" />
        <source>The pose model cannot be started ({error}); install the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../pose/library.py" line="27" />
        <source>The pose model's library MediaPipe cannot be loaded ({error}); install what it misses, or the program again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/history.py" line="102" />
        <source>Session {session} says it began at '{time}', which is no ISO 8601 time with a zone offset: ask the patient to send the file again</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/history.py" line="141" />
        <source>Sessions of {count} patients cannot be one history: review each code alone</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay.py" line="133" />
        <source>The session of {started_at} has no repetition {number} of exercise {exercise}; choose another one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="154" />
        <source>There is no session to report on: import session files first.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../session/assemble.py" line="81" />
        <source>The session's journal has no beginning, so no session can be made of it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../session/assemble.py" line="108" />
        <source>The session's journal begins twice, so no session can be made of it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../session/assemble.py" line="182" />
        <source>The session's journal tells of an exercise that is not in its plan.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/diary_files.py" line="44" />
        <source>{name} holds more than {most_files:,} session files, and only the newest are shown; move old ones to another folder.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="19" />
        <source>{name} could not be saved</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="20" />
        <source>{name} could not be made</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="21" />
        <source>{name} could not be read</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="22" />
        <source>{name} could not be read back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="23" />
        <source>{name} could not be opened</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="24" />
        <source>{name} could not be locked</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="25" />
        <source>{name} could not be begun</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="26" />
        <source>{name} could not be written</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="27" />
        <source>{name} could not be recovered</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="35" />
        <source>the disk of {folder} is full; free some space there.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="37" />
        <source>{folder} may not be written to; choose another folder.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="39" />
        <source>{path} is not there; look whether it was moved or removed.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="41" />
        <source>{path} is not a file in a folder; choose another place.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="43" />
        <source>its name is too long; choose a shorter one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="45" />
        <source>the disk of {folder} failed; choose another disk.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/disk_fault.py" line="47" />
        <source>the folder {folder} does not let it ({reason}); try another.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="105" />
        <location filename="../../storage/disk_fault.py" line="50" />
        <source>no reason given</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/folders.py" line="63" />
        <source>'{out}' is the store itself; choose another name for the export.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/journal_lines.py" line="90" />
        <source>{where} was made by a newer version of this program; update the program to recover that session.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/key_lock.py" line="27" />
        <source>{path} asks for more memory and time to be opened than a practice key needs; take your backup.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/key_lock.py" line="42" />
        <source>{path} cannot be opened while this computer is so busy: close other programs and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/keys.py" line="74" />
        <source>The public key in {path} is missing: unlock the practice's key once to write it anew.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/keys.py" line="85" />
        <source>The public key in {path} is damaged: unlock the practice's key once to write it anew.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/keys.py" line="112" />
        <source>There is no practice key at {path}: make one with 'coach key make', or restore the one from your backup with 'coach key restore FILE'.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/keys.py" line="150" />
        <source>There is another practice key at {path} that is not in {backup}, and files may be sealed for it: take a newer backup, or move the key to a safe place first.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/keys.py" line="171" />
        <source>There is a practice key at {path} of which nobody can say whether the backup has it: unlock it once, or move it to a safe place first.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/keys.py" line="190" />
        <source>{path} does not open: type the passphrase again, and if it is right the file is damaged or no practice key, so take your backup.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/keys.py" line="201" />
        <source>More than {most_keys} practice keys cannot be kept in one file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/keys.py" line="216" />
        <source>There is a file at {path} already: choose another name.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/passphrase.py" line="20" />
        <source>The passphrase has {used} characters and needs {fewest_characters}: string four or five words together that do not belong together.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/passphrase.py" line="38" />
        <source>The passphrase has a control character or more than {most_characters:,} characters: type it anew, without line breaks.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/recovery.py" line="98" />
        <source>The session of {started} was interrupted; what was done is kept in {name}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/recovery.py" line="102" />
        <source>The session of {started} is saved now, as {name}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/recovery.py" line="115" />
        <source>A session's journal could not be read from its first line on; it is kept as {aside}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/running.py" line="36" />
        <source>The coach is running already: go to its window, or close it and start again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="61" />
        <source>The practice's key in the plan is mistyped or cut short, so that no session could be sealed: ask the practice for the plan again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="86" />
        <source>{where} is too large for a sealed session file: at most {max_sealed_bytes:,} bytes are read; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="95" />
        <source>{where} is not a sealed session file; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="102" />
        <source>{where} is cut short, or has a longer beginning than this program writes; ask for it to be sent again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="110" />
        <source>{where} was sealed for others beside this practice, which this program never does; ask for the original file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="125" />
        <source>{where} was not sealed for this practice's key or an older one of it, or was changed on its way; check that the patient's plan has this practice's key, and ask for it to be sent again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="149" />
        <source>{name} is sealed: unlock the practice's key, then import it again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/sealed.py" line="189" />
        <source>The session could not be saved: {folder} has other files of its name; choose another folder.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="43" />
        <source>The session of {started_at} could not be saved: {folder} has other files of its name; choose another folder.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="66" />
        <source>{path} is a folder or device; choose a {kind}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="68" />
        <source>{path} is not there; choose a {kind}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="76" />
        <source>{name} is too large for a {kind}: at most {max_bytes:,} bytes are read; check that this is the right file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="105" />
        <source>session file</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="106" />
        <source>plan file</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="107" />
        <source>landmark table</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="108" />
        <source>table of joint centres</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="109" />
        <source>list of lenses</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="110" />
        <source>public key</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/session_file.py" line="111" />
        <source>practice key</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store.py" line="99" />
        <source>{file_name} has {original} MB, more than a session file can have: ask the patient to send it again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store.py" line="108" />
        <source>{file_name} says it began on {date}, which cannot be: check the clock of the patient's computer.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store.py" line="123" />
        <source>{file_name} has the number of a session that is here already, but other contents: ask the patient which of the two files is right.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_backup.py" line="42" />
        <source>The store at {path} could not be copied before its upgrade ({error}): free some space there and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_backup.py" line="69" />
        <source>The store at {path} was harmed by its upgrade ({error}): put its backup copy of the folder {folder} in its place.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_checks.py" line="45" />
        <source>{field} is {on}, which is yet to come</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_checks.py" line="55" />
        <source>The {name} was not kept: {what}; correct it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_checks.py" line="66" />
        <source>{field} holds a control or unseen character ({value})</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_checks.py" line="77" />
        <source>plan is no plan of this version</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_checks.py" line="84" />
        <source>its plan has the {field} {other} and not {said}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_database.py" line="76" />
        <source>At {store} is a database, but no store of this program: choose another.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_database.py" line="83" />
        <source>The store at {store} has version {version} and this program knows up to {store_version}: install the newer program.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_doubt.py" line="27" />
        <source>The session names {patient_code}, whom the practice does not know, and it knows {alike}: make sure whose session it is.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_doubt.py" line="38" />
        <source>The session names revision {revision} of a plan and {patient_code} was given {revisions}: make sure whose session it is.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_doubt.py" line="48" />
        <source>The session is of the other side than revision {revision} of the plan of {patient_code}, which is for the {side}: make sure whose session it is.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_doubt.py" line="55" />
        <source>The session began on {day} and revision {revision} of the plan of {patient_code} was issued on {issued_on}: make sure whose session it is.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_doubts.py" line="101" />
        <source>The doubt about the session of {date} was decided at another desk meanwhile: look at it again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_engine.py" line="46" />
        <source>The store at {name} is on a server, which no passphrase of this program locks: open it without one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_engine.py" line="56" />
        <source>The store at {name} needs the driver of PostgreSQL: install it with pip install 'stiff-shoulder-coach[postgres]'.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_engine.py" line="131" />
        <source>The store's URL cannot be read: write it as postgresql://user@host/database.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_engine.py" line="138" />
        <source>A store cannot be kept behind a URL of {drivername}: name a file, or a database as postgresql://user@host/database.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_engine.py" line="159" />
        <source>The store cannot be opened at {path} ({strerror}): choose a folder in which you may write.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_fit.py" line="19" />
        <source>There is a person with the code {code} already: choose another code.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_fit.py" line="30" />
        <source>{code} was given a plan of revision {revision} already: issue it as the next revision.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_fit.py" line="52" />
        <source>The {name_of} belongs to another person than {code}: add it anew to the right one, and remove this one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_fit.py" line="64" />
        <source>The code {code} stands in the person's sessions and records and cannot become {new_code}: add a new person instead.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_fit.py" line="78" />
        <source>The {name_of} names an episode that {code} does not have: choose one of the person's own.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_fit.py" line="89" />
        <source>The {name_of} of {code} was changed or removed at another desk meanwhile: look at it again and repeat the change.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_import.py" line="60" />
        <source>There are more than {most_files} session files in {path}: import a smaller folder at a time.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="73" />
        <source>There is no person with the code {code} in the store: add the person first.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="53" />
        <source>The store at {path} is not locked: open it without a passphrase.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="83" />
        <source>There is no store at {path} to lock; open it once to make it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="90" />
        <source>The store at {path} is locked already; look which passphrase is meant.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="94" />
        <source>The store at {path} is not locked already; look which passphrase is meant.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="118" />
        <source>The store at {path} could not be locked ({error}) and is as it was: close every other program that has it open, see that there is room for a copy, and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="154" />
        <source>the copy does not read back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="171" />
        <source>The store at {path} does not open: type the passphrase again, and if it is right the file is damaged, so put a backup copy in its place.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_lock.py" line="179" />
        <source>The store at {path} cannot be opened ({error}): close every other program that has it open, and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_practice.py" line="80" />
        <source>{code} has sessions or records in the store: erase the person with all of them, or leave the person in.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_sessions.py" line="37" />
        <source>A session of {code} in the store at {store} is damaged ({fault}): put a backup copy in its place.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_sessions.py" line="51" />
        <source>There is no session {session_id} in the store at {store}: import its file.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="32" />
        <source>The store at {name} holds something that this program did not write, or is damaged ({error}): put a backup copy in its place.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="47" />
        <source>The store at {name} is in use by another program: close that one and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="52" />
        <source>There is no room left for the store at {name}: free some space and try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="76" />
        <location filename="../../storage/store_words.py" line="57" />
        <source>The store at {name} cannot be written: ask for the right to write there.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="62" />
        <source>The store at {name} is locked, damaged or no store of this program: unlock it with its passphrase, put a backup copy in its place, or move the file away to begin anew.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="68" />
        <source>The store at {name} refused ({said}): try again, and keep a copy.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="81" />
        <source>There is no room left for the store at {name}: free some space on its server.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="86" />
        <source>Another desk keeps writing to the store at {name}: try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="91" />
        <source>The store at {name} cannot be reached ({said}): see that the server runs, and that user, password and database are right.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_words.py" line="96" />
        <source>The store at {name} refused ({said}): try again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../voice/library.py" line="41" />
        <source>The voice data are missing from {data}, so the coach goes on with captions; install the package espeakng-loader again to hear it speak.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../voice/library.py" line="52" />
        <source>The voice library {library} does not load ({error}), so the coach goes on with captions; install the package espeakng-loader again to hear it speak.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../voice/library.py" line="79" />
        <source>The voice data in {data} cannot be opened, so the coach goes on with captions; move the program to a folder with a shorter name to hear it speak.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../voice/library.py" line="99" />
        <source>There is no voice for the language '{voices}', so the coach goes on with captions; choose another language to hear it speak.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../voice/library.py" line="117" />
        <source>The voice could not say '{text}', so the coach goes on with captions; start the program again to hear it speak.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../voice/library.py" line="151" />
        <source>The voice package espeakng-loader is not installed whole ({error}), so the coach goes on with captions; install it again to hear it speak.</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>hint</name>
    <message>
        <location filename="../../review/hint_words.py" line="20" />
        <source>All {count} measured directions of the left shoulder are limited against the other side: {movements}. The cause cannot be seen from it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="26" />
        <source>All {count} measured directions of the right shoulder are limited against the other side: {movements}. The cause cannot be seen from it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="34" />
        <source>Of {count} measured directions of the left shoulder only {movements} is limited against the other side; a stiff shoulder is usually limited in all, so another look may be worth it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="41" />
        <source>Of {count} measured directions of the right shoulder only {movements} is limited against the other side; a stiff shoulder is usually limited in all, so another look may be worth it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="53" />
        <source>At least {least} directions measured on both sides; limited: more than {degrees:.0f} degrees short of the other side, this side's error included.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="62" />
        <source>Common practice for all against one; the 15 degrees from a published follow-up's criterion of recovery (from memory).</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="73" />
        <source>External rotation at the side, left, is below half of the other side's: {share}, self-assisted and measured by camera.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="79" />
        <source>External rotation at the side, right, is below half of the other side's: {share}, self-assisted and measured by camera.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="87" />
        <source>External rotation at the side, left, is above half of the other side's: {share}, self-assisted and measured by camera.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="93" />
        <source>External rotation at the side, right, is above half of the other side's: {share}, self-assisted and measured by camera.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="104" />
        <source>External rotation with the arm at the side against half of the other side's, this side's error included.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="113" />
        <source>Trials of frozen shoulder took in people with passive external rotation under 50 % of the other side (Rangan et al. 2020; from memory).</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="126" />
        <source>Of the left shoulder are left external rotation {rotation} and abduction {abduction} of the other side's: in the order of the capsular pattern, as far as measured (internal rotation is not). The pattern is not universal.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="133" />
        <source>Of the right shoulder are left external rotation {rotation} and abduction {abduction} of the other side's: in the order of the capsular pattern, as far as measured (internal rotation is not). The pattern is not universal.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="142" />
        <source>Of the left shoulder are left external rotation {rotation} and abduction {abduction} of the other side's: not in the order of the capsular pattern, as far as measured (internal rotation is not). The pattern is not universal.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="149" />
        <source>Of the right shoulder are left external rotation {rotation} and abduction {abduction} of the other side's: not in the order of the capsular pattern, as far as measured (internal rotation is not). The pattern is not universal.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="163" />
        <source>Share of the other side lost in external rotation against that lost in abduction, the difference larger than both errors.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="172" />
        <source>Capsular pattern after Cyriax: external rotation more than abduction more than internal rotation (from memory).</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="183" />
        <source>pain lately {pain} of 10 (median of {sittings})</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="188" />
        <source>range grew beyond error and {painful}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="190" />
        <source>range limited and not growing, {painful}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="192" />
        <source>range limited, no real change in {weeks} weeks, {painful}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="194" />
        <source>the plan says {phase}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="196" />
        <source>the plan names none</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="198" />
        <source>This would fit the phase '{phase}' ({why}); {plan}. The phase is the therapist's to set.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="206" />
        <source>Thawing: a change for the better beyond error and median pain of the last {lately} sittings at most {low}. Painful: limited, no real change, pain {moderate} or more. Stiff: limited, no real change in {weeks} weeks, pain at most {low}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/hint_words.py" line="216" />
        <source>Phases and their usual lengths: common practice and Kelley et al. 2013, J Orthop Sports Phys Ther 43:A1-A31; bounds of pain: the same (from memory); the combination is our choice.</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>import</name>
    <message>
        <location filename="../../storage/store_import.py" line="39" />
        <source>{name}: refused. {reason}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_import.py" line="41" />
        <source>{name}: doubtful ({code}). {reason}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_import.py" line="43" />
        <source>{name}: already known ({code})</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_import.py" line="45" />
        <source>{name}: accepted ({code})</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>key</name>
    <message>
        <location filename="../../app/export.py" line="56" />
        <source>the locked store {place}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="137" />
        <location filename="../../app/key.py" line="104" />
        <location filename="../../app/key.py" line="52" />
        <source>the practice's key</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="53" />
        <source>The key for new plans in {path} is now</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="55" />
        <source>Older keys still open what was sealed for them; give out plans with the new one
and back all of them up now with 'coach key back-up FILE'.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="71" />
        <source>the new key</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="72" />
        <source>Made {path}; put this public key into plans:</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="75" />
        <source>Back it up now with 'coach key back-up FILE': without it nothing can be opened.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="91" />
        <source>made {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="93" />
        <source>made on an unknown day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="96" />
        <source>older, opens what was sealed for it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="98" />
        <source>current, for new plans</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="115" />
        <location filename="../../app/key.py" line="106" />
        <source>the backup</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="108" />
        <source>{backup}: keep it away from this machine.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="116" />
        <source>the key on this machine</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="118" />
        <source>Restored {path}; the public key for new plans is</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="123" />
        <source>the store now</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="124" />
        <source>the store</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/key.py" line="125" />
        <source>{place} is locked; the passphrase is asked for when it is opened.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/passphrases.py" line="17" />
        <source>Passphrase of {what}:</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/passphrases.py" line="29" />
        <source>{what} (15 characters or more, several words are best)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/passphrases.py" line="31" />
        <source>{what}, once more</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>lens</name>
    <message>
        <location filename="../../app/lens.py" line="36" />
        <source>Print it at 100 %, stick it flat on something stiff, then run 'coach lens --camera N'.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/lens.py" line="56" />
        <source>For recordings of this camera: coach measure CLIP --field-of-view {value:g}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/lens.py" line="73" />
        <source>Kept for camera {camera} at this shape of picture: {path}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/lens.py" line="83" />
        <source>looking for the board</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/lens.py" line="91" />
        <source>{count} views; {wish}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/lens.py" line="102" />
        <source>Horizontal field of view: {angle} ± {error} degrees (95 % interval), from {views} views; the board's corners miss by {miss} pixels.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/lens.py" line="124" />
        <source>coach: {fault} The usual field of view is assumed.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="56" />
        <source>hold the sheet so that the whole board is in the picture</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="57" />
        <source>bring the sheet nearer, until it fills half of the picture</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="60" />
        <source>hold the sheet still for a moment</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="61" />
        <source>turn the sheet's left edge away from the camera, and hold it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="64" />
        <source>turn the sheet's right edge away from the camera, and hold it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="67" />
        <source>tip the sheet's upper edge away from the camera, and hold it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="70" />
        <source>tip the sheet's lower edge away from the camera, and hold it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="73" />
        <source>move the sheet, tilted, into the other corners of the picture</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../capture/lens_views.py" line="76" />
        <source>go on moving and tilting the sheet, with short stops</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>measure</name>
    <message>
        <location filename="../../app/measure.py" line="60" />
        <source>measuring</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure.py" line="70" />
        <source>Points and errors are of the pose model {model}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure.py" line="91" />
        <source>Points and errors are of the pose model {model}, as {who} says.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure.py" line="166" />
        <source>coach: more than one person is in view; the one nearest to the camera at the start is followed.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="22" />
        <source>{what}: {usable} of {count} frames usable</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="28" />
        <source>  no hold of two seconds or more</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="30" />
        <source>  repetitions there and back: {count}, held of them: {held}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="37" />
        <source>  refused frames: {count}. {why}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="52" />
        <source>It is not known which pose model found these points, so neither is how wrong angles from them are. Put the sitting's session.json beside its landmarks.csv, or name the model with --pose-model.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="58" />
        <source>It was never measured how wrong this angle is with the pose model that found these points. Measure a clip with the full one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="66" />
        <source>  hold {number}: {start_s:.1f} to {end_s:.1f} s, held {held_s:.1f} s, {value} ({ended})</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="81" />
        <source>{value:.0f} ± {error} degrees</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="85" />
        <source>{value:.0f} ± {error} %, {levels}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="96" />
        <source>Angles are of the arm against the trunk, shoulder blade included, each with the half width of its 95 % interval.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/measure_summary.py" line="102" />
        <source>Heights are of the wrist, 0 % at C7 and 100 % at the posterior superior iliac spines, each with the half width of its 95 % interval; the levels are those of the thumb's tip.</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>note</name>
    <message>
        <location filename="../../exchange/note.py" line="50" />
        <source>S (subjective)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="52" />
        <source>O (objective)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="55" />
        <source>A (assessment)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="56" />
        <source>P (plan)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="57" />
        <source>How it was measured</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="74" />
        <source>Shoulder exercise at home, note for the record</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="75" />
        <source>Patient: {patient_code}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="77" />
        <source>Period: {period}, {sessions}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="81" />
        <source>Plan: {title}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="83" />
        <source>Written on {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="84" />
        <source>Measured with {software}; humerothoracic, self-assisted, one camera</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="94" />
        <source>Pain above {high_pain} of 10 in {sessions}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="102" />
        <source>Timed without measuring: 1 hold completed, {time} held</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="104" />
        <source>Timed without measuring: {count} holds completed, {time} held</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="107" />
        <source>Night pain, function, reaction to the last change: </source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="115" />
        <source>No movement was measured.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="123" />
        <source>no value</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="126" />
        <source>first {first}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="128" />
        <source>last {last}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="129" />
        <source>best {best}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="132" />
        <source>change {change}, detectable from {least}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="138" />
        <source>other side {value}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="140" />
        <source>other side {value} ({share} of it)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="144" />
        <source>other side not known</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="152" />
        <location filename="../../exchange/note.py" line="151" />
        <source>not set</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="153" />
        <source>Phase, as set by the therapist: {phase_said}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="156" />
        <source>Irritability, as set by the therapist: {irritable}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="164" />
        <source>Clinical judgement: </source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="172" />
        <source>Next: {step}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="175" />
        <source>{sessions} a week</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="177" />
        <source>Review: plan holds until {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note.py" line="179" />
        <source>Review: no date set</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note_records.py" line="20" />
        <source>Left shoulder, since {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note_records.py" line="22" />
        <source>Right shoulder, since {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note_records.py" line="24" />
        <source>Goals: {goals}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note_records.py" line="26" />
        <source>Of the episode: {note}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/note_records.py" line="37" />
        <source>By goniometer, {what}: {value} ({on}); {beside}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="37" />
        <source>Exercise, {side}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="54" />
        <source>hold {hold} s</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="56" />
        <source>rest {rest} s</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="57" />
        <source>every day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="59" />
        <source>pain limit {pain_limit} of 10</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="63" />
        <source>not beyond {amount}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="75" />
        <source>the therapist's choice</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="80" />
        <source>after {sittings} in a row, completed with pain at most {pain} of 10: propose {proposed}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="86" />
        <source>after {sittings} in a row, completed with {least} or further, pain at most {pain} of 10: propose {proposed}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="97" />
        <source>1 time</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="98" />
        <source>{count} times</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="103" />
        <source>1 time a day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="104" />
        <source>{count} times a day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="109" />
        <source>mon</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="110" />
        <source>tue</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="111" />
        <source>wed</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="112" />
        <source>thu</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="113" />
        <source>fri</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="114" />
        <source>sat</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../exchange/wording.py" line="115" />
        <source>sun</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>patient</name>
    <message>
        <location filename="../../app/example.py" line="28" />
        <source>Example programme</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/example.py" line="33" />
        <source>An example without a practice behind it; ask your own therapist.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/patient.py" line="142" />
        <source>Your last sitting ended {minutes} minutes ago. Let the shoulder rest for some hours, unless your therapist said otherwise.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/patient.py" line="148" />
        <source>Everything for today is done. More than asked is not better.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/beginning.py" line="38" />
        <source>Hand up: I have read it</source>
        <translation>Main levée : j’ai lu</translation>
    </message>
    <message>
        <location filename="../patient/beginning.py" line="39" />
        <source>Read all of it first</source>
        <translation>Lisez d’abord tout</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="161" />
        <source>Before you start</source>
        <translation>Avant de commencer</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="167" />
        <source>Stop at once</source>
        <translation>Arrêtez tout de suite</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="192" />
        <source>Pain above {limit} of 10 is more than your plan allows.</source>
        <translation>Une douleur de plus de {limit} sur 10, c’est plus que votre plan ne permet.</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="195" />
        <source>Pain above {least} to {most} of 10, by exercise, is more than your plan allows.</source>
        <translation>Une douleur de plus de {least} à {most} sur 10, selon l’exercice, c’est plus que votre plan ne permet.</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="204" />
        <source>Ring your practice: {contact}</source>
        <translation>Appelez votre cabinet : {contact}</translation>
    </message>
    <message>
        <location filename="../patient/cautions_page.py" line="205" />
        <source>Ring your practice</source>
        <translation>Appelez votre cabinet</translation>
    </message>
    <message>
        <location filename="../patient/prepare_page.py" line="148" />
        <source>Measured: {what}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="48" />
        <source>Easier one: {name}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="198" />
        <location filename="../patient/record_card.py" line="60" />
        <source>by time</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="60" />
        <source>not measured</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="62" />
        <source>no hold long enough</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="68" />
        <source>{done} of {asked} holds</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="71" />
        <source>{held} of {asked:g} s held</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="94" />
        <source>angle</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="96" />
        <source>thumb reached</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="103" />
        <source>{held} s at {angle}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="108" />
        <source>Each hold: {holds}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="115" />
        <source>Seconds beyond those asked for are not counted.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="119" />
        <source>The large figure is the middle of the holds; of two it is halfway between. A hold cut short, or with the body moving along, counts only if there is no other.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="127" />
        <source>± is the 95 % error.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="129" />
        <source>Only your therapist can say what it means.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="136" />
        <source>It is the arm against the trunk, shoulder blade included.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="138" />
        <source>For a turned forearm it is the turn from straight ahead.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="140" />
        <source>Across the chest it is the way in from out to the side.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="142" />
        <source>Behind the back it is the tip of the thumb at the spine.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="153" />
        <source>stopped by you</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="155" />
        <source>skipped by you</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="157" />
        <source>ended because of the pain: ask your therapist</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="159" />
        <source>ended after several short holds: tell your therapist</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="161" />
        <source>ended because the picture ended</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="163" />
        <source>broken off</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="208" />
        <source>pain not given</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="209" />
        <source>{before} → {after}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/record_card.py" line="212" />
        <source>pain before, after</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="209" />
        <source>Today, {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/weeks_page.py" line="211" />
        <source>Yesterday, {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="200" />
        <source>measured</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="202" />
        <source>NEW</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="211" />
        <source>New for you: {title}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/welcome_page.py" line="215" />
        <source>What to mind with each new exercise is shown and said before it begins.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="28" />
        <source>{name}, sitting</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="30" />
        <source>{name}, lying on your back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="32" />
        <source>{name}, lying face down</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="34" />
        <source>{name}, lying on your side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="36" />
        <source>{name}, at a door frame</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="46" />
        <source>Left arm forwards and up</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="47" />
        <source>Right arm forwards and up</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="50" />
        <source>Left arm backwards</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="51" />
        <source>Right arm backwards</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="54" />
        <source>Left arm out to the side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="55" />
        <source>Right arm out to the side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="58" />
        <source>Left hand turned outwards</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="59" />
        <source>Right hand turned outwards</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="62" />
        <source>Left forearm turned up and back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="63" />
        <source>Right forearm turned up and back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="66" />
        <source>Left arm across the chest</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="67" />
        <source>Right arm across the chest</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="70" />
        <source>Left hand up the back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="71" />
        <source>Right hand up the back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="80" />
        <source>Arm against trunk, shoulder blade included</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="82" />
        <source>Forearm turned out from straight ahead</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="84" />
        <source>Forearm turned up from straight ahead</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="86" />
        <source>Arm inwards from straight out to the side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="88" />
        <source>Tip of the thumb, by level of the spine</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="113" />
        <source>Left arm</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="114" />
        <source>Right arm</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="120" />
        <source>{title} (left arm)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../patient/wording.py" line="121" />
        <source>{title} (right arm)</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>plan</name>
    <message>
        <location filename="../../review/plan_changes.py" line="31" />
        <source>Practice key removed.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="33" />
        <source>Practice key changed.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="35" />
        <source>Practice key added.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="37" />
        <source>Range of the other side changed.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="42" />
        <source>Patient code</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="43" />
        <source>Title</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="45" />
        <source>Side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="46" />
        <source>both</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="48" />
        <source>Phase</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="50" />
        <source>Irritability</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="53" />
        <source>Sessions a week</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="54" />
        <source>Valid until</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="55" />
        <source>Contact</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="67" />
        <source>Removed: {exercise}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="70" />
        <source>Added: {exercise}, {dose}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="76" />
        <source>{exercise}: {change}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="78" />
        <source>The order of the exercises changed.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="121" />
        <source>side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="122" />
        <source>view</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="123" />
        <source>hold</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="124" />
        <source>repetitions</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="125" />
        <source>rest</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="126" />
        <source>target</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="127" />
        <source>pain limit</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="128" />
        <source>days</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="129" />
        <source>times a day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="58" />
        <location filename="../../review/plan_changes.py" line="130" />
        <source>next step</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="136" />
        <source>{name} added: {after}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="138" />
        <source>{name} removed, was {before}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="139" />
        <source>{name} from {before} to {after}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="153" />
        <source>{sittings} in a row and pain at most {pain}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="155" />
        <source>{sittings} in a row and pain at most {pain}, then {exercise}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="157" />
        <source>{sittings} in a row with {angle} or more and pain at most {pain}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_changes.py" line="159" />
        <source>{sittings} in a row with {angle} or more and pain at most {pain}, then {exercise}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="42" />
        <source>{count} × a day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="44" />
        <source>{count} × a day on {days}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="47" />
        <source>{count} × {hold} s</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="50" />
        <source>rest {rest} s</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="52" />
        <source>pain at most {pain}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="55" />
        <source>up to {angle}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plan_wording.py" line="70" />
        <source>every day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plans.py" line="51" />
        <source>Hold {value} s: usual for {irritability} irritability is {usual} s. {source}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plans.py" line="54" />
        <source>Repetitions {value}: usual for {irritability} irritability is {usual}. {source}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plans.py" line="57" />
        <source>Times a day {value}: usual for {irritability} irritability is {usual}. {source}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plans.py" line="75" />
        <source>Pain limit {value}: usual for {irritability} irritability is at most {limit}. Common practice.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plans.py" line="87" />
        <source>{least} to {most}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plans.py" line="103" />
        <source>{time} a day of holds and rests</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/plans.py" line="104" />
        <source>{least} to {most} a day of holds and rests</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>plans</name>
    <message>
        <location filename="../therapist/catalogue_list.py" line="46" />
        <source>Filter the catalogue</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="47" />
        <source>Filter ({find}), {enter} adds</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="52" />
        <source>Exercises of the catalogue by position</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="131" />
        <source>Standing</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="133" />
        <source>Sitting</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="135" />
        <source>Supine</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="137" />
        <source>Prone</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="139" />
        <source>Side-lying</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="141" />
        <source>Door frame</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="223" />
        <location filename="../therapist/catalogue_list.py" line="147" />
        <source>By time, not measured; {camera}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/catalogue_list.py" line="148" />
        <source>Measured: {movement}; {camera}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="54" />
        <source>What is unusual in this dose</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="55" />
        <source>Hold</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="56" />
        <source>Repetitions</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="57" />
        <source>Rest</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="58" />
        <source>Times a day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="59" />
        <source>Pain limit</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="60" />
        <source>Not beyond, in degrees</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="61" />
        <source>Side of this exercise</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="63" />
        <source>Ne&amp;xt step after</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="64" />
        <source>Sittings in a row</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="65" />
        <source>At least, in degrees</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="107" />
        <location filename="../therapist/exercise_editor.py" line="66" />
        <source>Pain at most</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="68" />
        <source>What to propose</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="73" />
        <source>Dose &amp;anew</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="74" />
        <source>Propose this exercise's dose anew</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="82" />
        <source>Not &amp;beyond °</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="83" />
        <source>Reaching °</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="88" />
        <source>Ho&amp;ld</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="89" />
        <source>&amp;Repetitions</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="92" />
        <source>R&amp;est</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="93" />
        <source>Times a da&amp;y</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="95" />
        <source>Pai&amp;n limit</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="36" />
        <location filename="../therapist/exercise_editor.py" line="96" />
        <source>Side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="102" />
        <source>Sittings</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="109" />
        <source>Propose</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="150" />
        <source>No exercise chosen</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="151" />
        <source>Add one from the catalogue on the left.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="189" />
        <source>what the therapist will choose</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="215" />
        <source>An exercise needs a day of the week: tick one, or remove the exercise.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/exercise_editor.py" line="248" />
        <source>Outside the usual. {reason}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="72" />
        <source>A plan has at most {most} exercises: remove one first.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="102" />
        <source>The plan has no patient code: write the practice's code for the person.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="108" />
        <source>The plan has no exercise: add one from the catalogue.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="116" />
        <source>The plan</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="146" />
        <source>Usual dose. {source}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="160" />
        <source>Outside the usual dose</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="166" />
        <source>No exercises yet. {find} to the catalogue, {enter} adds.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="169" />
        <source>{count} exercises</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="171" />
        <source>1 exercise</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="175" />
        <source>no irritability said: proposed as for high, doses not compared</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="178" />
        <source>{count} outside the usual dose</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="187" />
        <source>The practice key is mistyped or cut short: copy it again from the practice's own, or leave it empty.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_draft.py" line="203" />
        <source>Plans (*.json);;All files (*)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="69" />
        <source>none</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="87" />
        <source>{field} is '{text}': write a number from {least:g} to {most:g}, or leave it empty.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="119" />
        <source>{field} is '{text}', which is no date: write it like {example}, or leave it empty.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="157" />
        <source>Days</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="221" />
        <source>By time, not measured</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="224" />
        <source>Measured: {movement}, {position}; {camera}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="236" />
        <source>camera in front</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="238" />
        <source>camera at the stiff side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="240" />
        <source>camera behind</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_fields.py" line="242" />
        <source>camera raised at the foot end</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="33" />
        <source>not said</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="34" />
        <source>Patient code</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="35" />
        <source>Title</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="36" />
        <source>both</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="37" />
        <source>Phase</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="38" />
        <source>Irritability</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="39" />
        <source>Sessions a week</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="40" />
        <source>Valid until</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="41" />
        <source>Contact</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="42" />
        <source>Practice key</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="43" />
        <source>optional, age1…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="60" />
        <source>&amp;Patient code</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="61" />
        <source>&amp;Title</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="62" />
        <source>Si&amp;de</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="63" />
        <source>P&amp;hase</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="64" />
        <source>&amp;Irritability</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="65" />
        <source>Sessions a &amp;week</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="66" />
        <source>&amp;Valid until</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="67" />
        <source>&amp;Contact</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_head.py" line="68" />
        <source>Practice &amp;key</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_list.py" line="31" />
        <source>Exercises of the plan</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_list.py" line="44" />
        <source>&amp;Up</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_list.py" line="45" />
        <source>D&amp;own</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_list.py" line="46" />
        <source>Re&amp;move</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_page.py" line="63" />
        <source>What changed against the opened plan</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_page.py" line="164" />
        <source>Added: {exercise}, {dose}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_page.py" line="227" />
        <source>What changed against revision {revision}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_page.py" line="229" />
        <source>What changed against revision {revision} of {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_page.py" line="236" />
        <source>Nothing.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="228" />
        <location filename="../therapist/plan_window.py" line="172" />
        <location filename="../therapist/plan_window.py" line="52" />
        <source>Plan</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="57" />
        <source>Message</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="75" />
        <source>The program proposes usual doses; the licensed practitioner who examined the shoulder decides.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="109" />
        <location filename="../therapist/plan_window.py" line="90" />
        <source>New plan</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="91" />
        <source>Open plan…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="92" />
        <source>&amp;Save plan…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="109" />
        <source>Plan for {code}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="122" />
        <source>The plan shown here has changes that are not saved: save it, or begin anew with {key}, before one for {code} is made.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="152" />
        <source>Opened {file}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="162" />
        <source>The practice's key was renewed: this plan carries the new one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="173" />
        <source>The plan has changes that are not saved. Discard them?</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="187" />
        <source>Open a plan</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="203" />
        <source>Save the plan</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="212" />
        <source>Revision {revision} of the plan is in {path}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="214" />
        <source>Revision {revision} of the plan is in {path}, and in the store as given out.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/plan_window.py" line="229" />
        <source>{code} was given revision {revision} of a plan, which is newer than the one this was begun from. Give this one out as the next revision?</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>record</name>
    <message>
        <location filename="../../storage/store_kinds.py" line="51" />
        <source>person</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="53" />
        <source>episode</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="55" />
        <source>treatment</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="57" />
        <source>measure of the other side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="59" />
        <source>measure by hand</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="61" />
        <source>total score</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../storage/store_kinds.py" line="63" />
        <source>plan</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>records</name>
    <message>
        <location filename="../therapist/record_fields.py" line="68" />
        <source>{field} is empty: write something there.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="95" />
        <source>{field} has {count} characters: shorten it to at most {most}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="121" />
        <source>{field} is '{text}', which is no date: write it like {example}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="125" />
        <source>{field} is empty: write it like {example}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="131" />
        <source>{field} is {day}, which is yet to come: write the day on which it was.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="157" />
        <source>{least} to {most}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="172" />
        <source>{field} is '{text}': write a number from {least} to {most}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_fields.py" line="176" />
        <source>{field} is empty: write a number from {least} to {most}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="56" />
        <source>&amp;Date</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="48" />
        <location filename="../therapist/record_forms.py" line="60" />
        <source>&amp;Treatment</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="99" />
        <location filename="../therapist/record_forms.py" line="60" />
        <source>&amp;Note</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="66" />
        <source>&amp;Questionnaire</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="66" />
        <source>&amp;Total</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="67" />
        <source>Out &amp;of</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="73" />
        <source>&amp;Movement</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="76" />
        <source>&amp;Side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="76" />
        <source>&amp;How</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="77" />
        <source>passive</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="77" />
        <source>active</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="80" />
        <source>De&amp;grees</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="86" />
        <source>&amp;Code</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="86" />
        <source>&amp;Name</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="87" />
        <source>as it will stand in plans and files</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="88" />
        <source>optional; it stays in this practice</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="96" />
        <source>Si&amp;de</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="96" />
        <source>&amp;Began on</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="97" />
        <source>P&amp;hase</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="97" />
        <source>&amp;Irritability</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="98" />
        <source>&amp;Goals, in the person's own words</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="100" />
        <source>not said</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="146" />
        <source>What to correct</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="149" />
        <source>Save</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="152" />
        <source>{enter}, or {save} out of a text of several lines</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="200" />
        <source>{side}, since {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="47" />
        <location filename="../therapist/record_forms.py" line="204" />
        <source>&amp;Episode</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_forms.py" line="204" />
        <source>none</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="53" />
        <source>Records</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="57" />
        <source>Date</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="58" />
        <source>What</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="59" />
        <source>Value</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="60" />
        <source>Beside it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="177" />
        <source>None yet. {enter} opens the plan window ({plan}).</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_list.py" line="179" />
        <source>None yet. {enter} adds one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="22" />
        <source>Person</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="23" />
        <source>Episode</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="24" />
        <source>Treatment</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="25" />
        <source>Measure of the other side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="26" />
        <source>Goniometer reading</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="27" />
        <source>Questionnaire total</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="28" />
        <source>Plan</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="35" />
        <source>New person</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="36" />
        <source>New episode</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="37" />
        <source>New treatment</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="38" />
        <source>New measure of the other side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="39" />
        <source>New goniometer reading</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="40" />
        <source>New questionnaire total</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="49" />
        <source>&amp;Other side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="50" />
        <source>&amp;Goniometer reading</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="51" />
        <source>&amp;Questionnaire total</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="58" />
        <source>Episodes: side, course and goals</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="59" />
        <source>Treatments</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="60" />
        <source>Other side, to compare with</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="61" />
        <source>Goniometer in the practice, beside the camera at home</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="62" />
        <source>Questionnaire totals</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="63" />
        <source>Plans given</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="69" />
        <source>{record} added</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="74" />
        <source>{record} changed</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="79" />
        <source>{record} deleted</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/record_words.py" line="84" />
        <source>{enter} changes the chosen record, {insert} adds one in its section, {delete} removes it, {undo} takes the last change back. Numbers are told as they were typed in; their error is not known.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="76" />
        <source>&amp;Add…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="100" />
        <source>C&amp;hange…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="101" />
        <source>&amp;Delete</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="126" />
        <source>no name written down (Patient, Change code or name)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="170" />
        <source>{record} kept.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="196" />
        <source>{what}. {key} takes it back.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="204" />
        <source>Erase {code} with every session, record and plan? This cannot be taken back; backup copies of the store are not touched.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="211" />
        <source>Erase the patient</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="226" />
        <source>{code} is erased.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/records_page.py" line="237" />
        <source>Taken back: {what}.</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>replay</name>
    <message>
        <location filename="../therapist/replay_buttons.py" line="28" />
        <source>Play or pause</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="31" />
        <source>One picture back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="33" />
        <source>One picture on</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="43" />
        <source>Previous repetition</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="44" />
        <source>Previous</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="45" />
        <source>Next repetition</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="46" />
        <source>Next</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="47" />
        <source>Compare with another session</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="48" />
        <source>Compare…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="49" />
        <source>Close the replay</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="50" />
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="55" />
        <source>Speed</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="82" />
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="82" />
        <source>Play</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="93" />
        <source>Quarter speed</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="94" />
        <source>Half speed</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="95" />
        <source>Full speed</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_buttons.py" line="101" />
        <source>Space play or pause, Left and Right one picture, Home and End, Page Up and Page Down repetition, 1 2 3 speed, C compare, Esc close</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_figure.py" line="37" />
        <source>Stick figure</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_page.py" line="52" />
        <source>The session of {day} has no measured repetition to replay; choose another one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="49" />
        <location filename="../therapist/replay_page.py" line="69" />
        <source>Replay</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_page.py" line="81" />
        <source>Message</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_page.py" line="222" />
        <source>{exercise}, repetition {number} of {count} of the session</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="25" />
        <source>Session files (*.shoulder*.zip *.shoulder*.age *.zip);;All files (*)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="43" />
        <source>{day}, {time}, {count} repetitions</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="45" />
        <source>{day}, {time}, 1 repetition</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="49" />
        <source>Session to replay</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="50" />
        <source>A session file…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="55" />
        <source>the session of {session}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="57" />
        <source>Session file to replay</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_sessions.py" line="76" />
        <source>The session of {day} has no repetition of {exercise}; choose another one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/replay_trace.py" line="32" />
        <source>Trace of the repetition</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/trace_painting.py" line="125" />
        <source>hold</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>report</name>
    <message>
        <location filename="../shared/report_page.py" line="80" />
        <source>Shoulder report: {patient_code}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/report_page.py" line="91" />
        <source>Written on {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/report_page.py" line="94" />
        <source>{period}, {sessions}. Plan: {title}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/report_page.py" line="96" />
        <source>{period}, {sessions}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/report_page.py" line="138" />
        <source>1 more movement in the program</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/report_page.py" line="140" />
        <source>{count} more movements in the program</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/report_page.py" line="178" />
        <source>No session gave a value to draw.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/report_page.py" line="198" />
        <source>Sessions by week, done / asked for</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/report_page.py" line="203" />
        <source>What was done, pain, camera</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/report_page.py" line="225" />
        <source>Measured with {software}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../shared/report_page.py" line="239" />
        <source>How to read this</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>review</name>
    <message>
        <location filename="../therapist/trace_painting.py" line="148" />
        <source>no frame</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/chart.py" line="160" />
        <source>No session gave a value.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/chart.py" line="163" />
        <source>{count} sessions, but in too few of them the trunk kept still.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/chart.py" line="167" />
        <source>One session: {value}; too few sessions to speak of change.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/chart.py" line="170" />
        <source>{change}: {verdict} (detectable from {least}), {sessions}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/chart_context.py" line="57" />
        <source>injection</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/chart_context.py" line="59" />
        <source>hydrodilatation</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/chart_context.py" line="61" />
        <source>surgery</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/chart_context.py" line="63" />
        <source>other</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="69" />
        <source>Nothing was ever held in a sitting.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="75" />
        <source>No sitting since {day}, {pause} days; the plan asks for one at least every 1 day.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="80" />
        <source>No sitting since {day}, {pause} days; the plan asks for one at least every {pause_days} days.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="99" />
        <source>Pain {pain} of 10 on {day}, above {limit}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="112" />
        <source>Pain rose from {first} to {last} of 10 (medians of the first and the last 1 sitting); {rise} points matter.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="118" />
        <source>Pain rose from {first} to {last} of 10 (medians of the first and the last {size} sittings); {rise} points matter.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="135" />
        <source>The only measured sitting is poorly measured: {what}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="140" />
        <source>{poor} of the last {count} measured sittings are poorly measured; in the latest of them: {what}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="161" />
        <source>{movements}: the last sittings were measured with another camera set-up than the first.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="167" />
        <source>{movements}: the last sittings were measured with another pose model than the first, by the same camera set-up.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="173" />
        <source>{movements}: the last sittings were measured with another camera set-up and another pose model than the first.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="189" />
        <source>{movement}: {change} since {day}, beyond the error of measuring.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/cohort_reasons.py" line="211" />
        <source>{exercise}: {reason}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/counts.py" line="11" />
        <source>1 session</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/counts.py" line="12" />
        <source>{count} sessions</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/counts.py" line="18" />
        <source>1 sitting</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/counts.py" line="19" />
        <source>{count} sittings</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/counts.py" line="25" />
        <source>1 hold</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/counts.py" line="26" />
        <source>{count} holds</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="12" />
        <source>nobody in view</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="13" />
        <source>another person</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="14" />
        <source>somebody else in view</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="15" />
        <source>too far away</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="16" />
        <source>too close</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="17" />
        <source>too dark</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="18" />
        <source>hips out of view</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="19" />
        <source>shoulders out of view</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="20" />
        <source>arm out of view</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="21" />
        <source>no room for the arm</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="22" />
        <source>no room above for the arm</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="23" />
        <source>turn to face the camera</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="24" />
        <source>turn your side to the camera</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="25" />
        <source>turn around</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="26" />
        <source>raise the camera</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="27" />
        <source>legs in the way</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="28" />
        <source>turn your feet to the camera</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="29" />
        <source>lie on your back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="30" />
        <source>lie face down</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="31" />
        <source>stand or sit upright</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="32" />
        <source>wrong side to the camera</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="33" />
        <source>bend the elbow</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="34" />
        <source>straighten the elbow</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="35" />
        <source>other movement</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/doubt_wording.py" line="36" />
        <source>unsure</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="95" />
        <location filename="../../review/doubt_wording.py" line="37" />
        <source>error not known</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="30" />
        <source>Since {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="32" />
        <source>Since a visit</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="35" />
        <source>Since the start</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="37" />
        <source>By week</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="40" />
        <source>Real beyond</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="51" />
        <source>{change}, and more sessions alone would not</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="54" />
        <source>{change}; about {count} sessions in all might</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="62" />
        <source>{change}: {verdict}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="69" />
        <source>no visit is written down</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="71" />
        <source>that is since the start</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="74" />
        <source>no session to compare before that visit</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="75" />
        <source>no session to compare after that visit</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="76" />
        <source>{change} (detectable from {least})</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="84" />
        <source>sessions in fewer than {count} weeks: no slope yet</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="90" />
        <source>no sure direction: {low} to {high} a week ({count} weeks' medians)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="93" />
        <source>{slope} a week, {low} to {high} ({count} weeks' medians)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="168" />
        <location filename="../../review/findings.py" line="103" />
        <source>{change} down</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="170" />
        <location filename="../../review/findings.py" line="104" />
        <source>{change} up</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="109" />
        <source>by hand {amount} ({source})</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="114" />
        <source>{least}, by the scatter of these {sessions} and the camera's place; two single ones {single}, {by_hand}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="120" />
        <source>{least}: {by_hand}, widened as patients differ; this patient's own repeatability counts from {count} sessions on</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings.py" line="126" />
        <source>{least}, the error of the readings themselves; {by_hand}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="33" />
        <source>Other side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="132" />
        <location filename="../../review/findings_beside.py" line="34" />
        <source>Form</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="43" />
        <source>Met. {reason}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="45" />
        <source>Not yet. {reason}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="47" />
        <source>Next step</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="49" />
        <source>{angle}, by the plan</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="51" />
        <source>Not beyond</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="57" />
        <source>measured {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="59" />
        <source>by the plan</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="63" />
        <source>{value} ({when}); this side {missing} short, {share} of it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="65" />
        <source>{value} ({when}); this side {missing} further, {share} of it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="88" />
        <source>nothing was held</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="92" />
        <source>no fault noted in any of {holds}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="93" />
        <source>{fault} in {share}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="101" />
        <source>{shares} of {holds}; leaned and turned holds are kept out of the range</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/findings_beside.py" line="106" />
        <source>{shares} of {holds}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="13" />
        <source>trunk leaned</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="15" />
        <source>trunk turned</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="17" />
        <source>shoulder rose</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="19" />
        <source>elbow bent</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="21" />
        <source>elbow straightened</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="23" />
        <source>elbow drifted</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="29" />
        <source>Trunk leans</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="30" />
        <source>Trunk turns</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="31" />
        <source>Elbow bent</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="32" />
        <source>Shoulder rises</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/form_wording.py" line="33" />
        <source>Elbow drifts</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/levels.py" line="85" />
        <source>about {high} to {low}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/levels.py" line="101" />
        <source>buttock</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/levels.py" line="103" />
        <source>side of the thigh</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="41" />
        <source>The plan has no rule for a next step.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="45" />
        <source>The rule asks for degrees, but none are measured of it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="56" />
        <source>{met} of {sittings} in a row meet the rule: on {day} {missing}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="68" />
        <source>{met} of {sittings} so far meet the rule.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="94" />
        <source>an easier exercise was done in its place</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="96" />
        <source>it was not completed</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="98" />
        <source>no pain was given after it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="100" />
        <source>pain after it was {pain}, above {most}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="106" />
        <source>no hold was completed with a still trunk</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="109" />
        <source>{best} were reached, not {least}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="118" />
        <source>completed with pain at most {pain}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="120" />
        <source>completed with pain at most {pain} and at least {least} reached (furthest of the last sitting {best})</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="126" />
        <source>Last sitting: {done}. The therapist decides.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/next_step.py" line="128" />
        <source>Last {count} sittings in a row: {done}. The therapist decides.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/norm_words.py" line="12" />
        <source>32 people with capsulitis, goniometer by hand</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/norm_words.py" line="14" />
        <source>60 healthy people, tape by hand</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="33" />
        <source>1 value only from holds in which the trunk leaned or turned: not compared.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="38" />
        <source>{count} values only from holds in which the trunk leaned or turned: not compared.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="45" />
        <source>The definition of an angle changed: rows of the two are not compared.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="52" />
        <source>1 value from holds let go before their time (hollow dots).</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="54" />
        <source>{count} values from holds let go before their time (hollow dots).</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="61" />
        <source>1 value with the arm out of sight for over a fifth.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="63" />
        <source>{count} values with the arm out of sight for over a fifth.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="68" />
        <source>The camera does not see why a range is limited. A systematic error that stays the same cancels in the change, not in the single values.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="81" />
        <source>{movement}: the last sessions were measured with another camera set-up than the first; all of the readings' error therefore counts.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="87" />
        <source>{movement}: the last sessions were measured with another pose model than the first, by the same camera set-up; all of the readings' error therefore counts.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="93" />
        <source>{movement}: the last sessions were measured with another camera set-up and another pose model than the first; all of the readings' error therefore counts.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="108" />
        <source>{movement}: too few sessions, or days too alike, to tell a change of {matters} over the whole time from none; more sessions alone would not tell, should the change stay as it is.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="115" />
        <source>{movement}: too few sessions, or days too alike, to tell a change of {matters} over the whole time from none; about {enough} sessions in all might tell.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="127" />
        <source>Angles</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="134" />
        <source>Hand behind back: the levels are those of the thumb's tip, wide enough for what the wrist does not show; percent is of the way from C7 (0 %) to the PSIS (100 %), of the wrist.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="143" />
        <source>{what}: with few sessions a change is told only where it is large: {figure} by hand ({source}: {people}), and more because patients differ; from six sessions on the patient's own scatter decides.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="160" />
        <source>{listed}: what placing the camera anew does was never measured, so all of the readings' error counts, and no change up to {figure} is real ({source}).</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/notes.py" line="170" />
        <source>{what}: the detectable change is made of the patient's own scatter, averaged over these sessions as far as their days differ, and of the camera's place, not averaged; for two single sessions it would be up to {single} (published, by hand: {figure}, {source}).</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/overview.py" line="31" />
        <source>Since a visit: the mean of up to a week of sessions, the last ones against the last ones up to it. By week: the median of all slopes between the weeks' medians, with its 95 % interval (Theil and Sen). Days of treatments, measures, scores and plans count as visits.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/overview.py" line="72" />
        <source>Poorly measured</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/overview.py" line="74" />
        <source>{sessions}: {doubt}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/overview.py" line="76" />
        <source>Doubtful</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/overview.py" line="78" />
        <source>Episode</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/overview.py" line="80" />
        <source>none written down</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/overview.py" line="81" />
        <source>Treatments</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/overview.py" line="98" />
        <source>{concern} in {count} rows of the table.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/overview.py" line="109" />
        <source>none of {sittings}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/overview.py" line="110" />
        <source>{poor} of {sittings}; on {day} {what}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/overview.py" line="116" />
        <source>{side}, since {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="117" />
        <location filename="../../review/overview.py" line="119" />
        <source>phase {phase_words}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/overview.py" line="122" />
        <source>{irritability} irritability</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/overview.py" line="127" />
        <source>{course}. Goals: {goals}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="67" />
        <source>{value} passive</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="69" />
        <source>{value} active</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="75" />
        <source>{total} of {most}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="87" />
        <source>camera: none within {days} days</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="92" />
        <source>camera {text}, same day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="93" />
        <source>camera {text}, {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="123" />
        <source>irritability {irritability_words}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="128" />
        <source>Goals: {one_line}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="133" />
        <source>Left shoulder</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="135" />
        <source>Right shoulder</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="138" />
        <source>since {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="140" />
        <source>phase and irritability not said</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="148" />
        <source>exercises: {count}, both sides</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="150" />
        <source>exercises: {count}, left side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="152" />
        <source>exercises: {count}, right side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="156" />
        <source>Revision {revision}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="174" />
        <source>Injection</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="176" />
        <source>Hydrodilatation</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="178" />
        <source>Surgery</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/records.py" line="180" />
        <source>Other treatment</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="25" />
        <source>{day}, repetition {number}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="39" />
        <source>{value}, held {seconds} s, {ended}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="50" />
        <source>pain not given</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="51" />
        <source>pain before {before}, after {after}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="115" />
        <location filename="../../review/replay_wording.py" line="58" />
        <source>not given</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="59" />
        <source>{score} of 10</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="66" />
        <source>No compensation noted in the hold</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="67" />
        <source>Compensation in the hold: {faults}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="75" />
        <source>no frame here</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="79" />
        <source>no value: unknown</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="80" />
        <source>no value: {why}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="91" />
        <source>not seen</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="104" />
        <source>{repetition}: {moment}, {seconds} s after the hold</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="107" />
        <source>{repetition}: {moment}, {seconds} s before the hold</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/replay_wording.py" line="109" />
        <source>{repetition}: {moment}, {seconds} s into the hold</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="93" />
        <source>{done} done of {asked} asked for</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="94" />
        <source>{done} completed of {asked}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="95" />
        <source>{done} of {asked}, each hold up to the seconds asked</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="18" />
        <location filename="../../review/report.py" line="98" />
        <source>Sessions</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="102" />
        <source>Holds</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="106" />
        <source>Hold time</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="109" />
        <source>Pain 0–10</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="116" />
        <source>first {first}, last {last}, worst {worst} ({day})</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="128" />
        <source>arm seen in {seen} of hold time, {lost} of frames lost</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="129" />
        <source>Camera</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/sittings.py" line="87" />
        <location filename="../../review/report.py" line="131" />
        <source>trunk leaned or turned in {share} of holds</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="134" />
        <source>Files refused</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report.py" line="237" />
        <source>{name} {version} (angle definitions {definitions})</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="17" />
        <source>Movement</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="19" />
        <source>First</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="20" />
        <source>Last</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="21" />
        <source>Best</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="22" />
        <source>Of other side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="23" />
        <source>Change</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="24" />
        <source>Detectable from</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="25" />
        <source>Verdict</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/report_columns.py" line="31" />
        <source>Humerothoracic angle (arm against trunk, the shoulder blade's share included) measured by one camera at home in a self-assisted stretch: neither an active nor a passive range. A session's value is the median of its completed holds with a still trunk. First and last are means of up to a week of sessions. Errors are half widths of 95 % intervals; the share of the other side has only this side's error in it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/sittings.py" line="84" />
        <source>arm seen in only {share} of hold time</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/sittings.py" line="90" />
        <source>only {rate} frames measured a second</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="14" />
        <source>real change</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="16" />
        <source>within measurement error</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="18" />
        <source>cannot tell yet</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="20" />
        <source>too few sessions</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="27" />
        <source>painful</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="29" />
        <source>stiff</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="31" />
        <source>thawing</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="38" />
        <source>high</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="40" />
        <source>moderate</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/verdict_wording.py" line="42" />
        <source>low</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="36" />
        <source>Flexion</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="38" />
        <source>Extension</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="40" />
        <source>Abduction</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="42" />
        <source>External rotation at side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="44" />
        <source>External rotation at 90°</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="46" />
        <source>Horizontal adduction</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="48" />
        <source>Hand behind back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="53" />
        <source>left</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="53" />
        <source>right</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="60" />
        <source>standing</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="62" />
        <source>sitting</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="64" />
        <source>supine</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="66" />
        <source>prone</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="68" />
        <source>side-lying</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="70" />
        <source>doorway</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="77" />
        <source>front</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="79" />
        <source>side</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="81" />
        <source>back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="83" />
        <source>foot</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="88" />
        <source>{movement}, {side}, {position}, camera: {view}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="100" />
        <source>completed</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="102" />
        <source>let go</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="104" />
        <source>ended with the arm out of sight</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="106" />
        <source>stopped</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="108" />
        <source>ended with the recording</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="231" />
        <source>{begin} to {end}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../review/wording.py" line="248" />
        <source>{first} and {last}</source>
        <translation type="unfinished" />
    </message>
</context><context>
    <name>therapist</name>
    <message>
        <location filename="../therapist/window.py" line="50" />
        <location filename="../therapist/passphrase_dialog.py" line="54" />
        <location filename="../therapist/import_run.py" line="113" />
        <location filename="../../app/review.py" line="47" />
        <source>Shoulder review</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/review.py" line="70" />
        <source>The passphrase of the practice's key, to open sealed files (Cancel: go on without, and unlock it later with {key}):</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../../app/review.py" line="81" />
        <source>The passphrase of the store:</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="54" />
        <location filename="../therapist/doubts_dialog.py" line="43" />
        <source>Doubtful sessions</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="47" />
        <source>These sessions contradict what the practice knows. Until you decide, each counts as the person's whom its file names. A decision can be taken back at any time.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="55" />
        <location filename="../therapist/doubts_dialog.py" line="65" />
        <source>Message</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="77" />
        <source>&amp;Belongs to…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="78" />
        <source>&amp;Leave out</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="79" />
        <source>&amp;Take back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="80" />
        <source>&amp;Close</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="133" />
        <source>Doubtful session</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="134" />
        <source>The session of {day} belongs to</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="166" />
        <source>Not decided, session of {day}, {time}: {doubt}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="168" />
        <source>Belongs to {code}, session of {day}, {time}: {doubt}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/doubts_dialog.py" line="170" />
        <source>Left out, session of {day}, {time}: {doubt}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/drawings.py" line="28" />
        <source>Chart</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/hints_view.py" line="30" />
        <source>R&amp;ules</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/hints_view.py" line="33" />
        <source>Show the rule and the source of each hint ({key})</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/hints_view.py" line="35" />
        <source>Rules and sources of the hints</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/hints_view.py" line="37" />
        <source>Hints to weigh, no diagnosis</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/hints_view.py" line="56" />
        <source>Rule: {rule} Source: {source}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/hints_view.py" line="63" />
        <source>None: a pattern is named only where the errors leave no doubt of it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/import_progress.py" line="26" />
        <source>Files imported</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="27" />
        <location filename="../therapist/import_progress.py" line="30" />
        <source>&amp;Stop importing</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/import_progress.py" line="46" />
        <source>{done} of {total} files</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="94" />
        <source>Import session files</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="99" />
        <source>Import a folder of session files</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="110" />
        <source>Take {sessions} of the last import out again?</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="124" />
        <source>The passphrase of the practice's key:</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="132" />
        <source>The practice's key is unlocked: sealed files can be imported now.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="171" />
        <source>{count} accepted</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="172" />
        <source>{count} doubtful</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="173" />
        <source>{count} already known</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="174" />
        <source>{count} refused</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/import_run.py" line="177" />
        <source>{files}: {outcomes}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="16" />
        <source>Fil&amp;e</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="41" />
        <source>Patien&amp;t</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="51" />
        <source>E&amp;xport</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="71" />
        <source>Vie&amp;w</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="63" />
        <location filename="../therapist/menus.py" line="19" />
        <source>&amp;Import files…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="24" />
        <source>Import a &amp;folder…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="30" />
        <source>Unloc&amp;k the practice's key…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="33" />
        <source>&amp;Undo</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="36" />
        <source>&amp;Doubtful sessions…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="39" />
        <source>&amp;Quit</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="68" />
        <location filename="../therapist/menus.py" line="42" />
        <source>&amp;New patient…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="43" />
        <source>&amp;Change code or name…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="44" />
        <source>L&amp;ist of patients</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="45" />
        <source>C&amp;ourse</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="46" />
        <source>R&amp;ecords</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="47" />
        <source>P&amp;lan…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="48" />
        <source>&amp;Replay…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="49" />
        <source>Er&amp;ase the patient…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="52" />
        <source>&amp;Report as PDF…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="55" />
        <source>&amp;Note, S-O-A-P…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="58" />
        <source>&amp;Copy the note</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="61" />
        <source>&amp;Table of holds (CSV)…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="66" />
        <source>Table of own &amp;measures (CSV)…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="69" />
        <source>&amp;FHIR bundle…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="72" />
        <source>&amp;Larger text</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="73" />
        <source>&amp;Smaller text</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="74" />
        <source>&amp;Usual text</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="75" />
        <source>Light or &amp;dark</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/menus.py" line="76" />
        <source>Light or dark &amp;as the system</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/page_column.py" line="40" />
        <source>What was done, pain, camera</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/page_column.py" line="41" />
        <source>How to read this</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/page_column.py" line="58" />
        <source>Change, hints, what was done, pain, camera, and how to read this</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/page_column.py" line="82" />
        <source>Movement</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/page_column.py" line="83" />
        <source>no session gave a value</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/page_column.py" line="84" />
        <source>Change</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/passphrase_dialog.py" line="57" />
        <source>Passphrase</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/passphrase_dialog.py" line="63" />
        <source>Unlocking</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/passphrase_dialog.py" line="64" />
        <source>&amp;Unlock</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/passphrase_dialog.py" line="68" />
        <source>&amp;Cancel</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/passphrase_dialog.py" line="102" />
        <source>Unlocking, a moment please…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/patient_list.py" line="79" />
        <source>nothing stands out</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/patient_list.py" line="82" />
        <source>Patient {name}, {sessions}. {reasons}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/patient_list.py" line="91" />
        <source>no session yet</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/patient_list.py" line="92" />
        <source>{sessions}, last {day}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="61" />
        <source>Why to look at this patient</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="65" />
        <source>Range by movement</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="77" />
        <source>Write &amp;report…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="80" />
        <source>Write the one-page report as a PDF file</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="84" />
        <source>Re&amp;play…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="85" />
        <source>Replay repetitions of a session</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="145" />
        <source>{period}, {sessions}. Plan: {title}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="147" />
        <source>{period}, {sessions}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/patient_page.py" line="195" />
        <source>Nothing stands out.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="103" />
        <location filename="../therapist/side_panel.py" line="96" />
        <location filename="../therapist/side_panel.py" line="52" />
        <source>Patients</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="72" />
        <source>Make a p&amp;lan…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="78" />
        <source>Und&amp;o the last import</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="83" />
        <source>Refused files with reasons</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="89" />
        <source>&amp;Clear this list</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="146" />
        <source>Takes {sessions} out again ({key})</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="155" />
        <source>1 doubtful session…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="156" />
        <source>1 doubtful session to decide about</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="158" />
        <source>{count} doubtful sessions…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="159" />
        <source>{count} doubtful sessions to decide about</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="166" />
        <source>{files} refused</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="194" />
        <source>1 file</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/side_panel.py" line="195" />
        <source>{count} files</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/window.py" line="141" />
        <source>&amp;Undo: {what}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/window.py" line="143" />
        <source>&amp;Undo the last import…</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/window.py" line="176" />
        <source>There was no session file to import there.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/window.py" line="181" />
        <source>{sessions} taken out again.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="62" />
        <source>Course and records</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="65" />
        <source>Course or records</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="67" />
        <source>Course</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="68" />
        <source>Records</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="180" />
        <source>Nobody here yet.

Press New patient ({new}) to begin with a person, or drop session files or a folder of them into this window (Import files, {files}).
A patient's program leaves one file a session, ending in .shoulder.zip or, where it is sealed for the practice, in .shoulder.age.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <location filename="../therapist/window_parts.py" line="191" />
        <source>No sessions yet.

Write down what you know under Records ({records}), make a plan ({plan}) and send its file.
What comes back is imported with {files}.</source>
        <translation type="unfinished" />
    </message>
</context></TS>
