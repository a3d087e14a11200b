"""The English sentences: what is spoken, and the short form that is shown.

Simple words, whole sentences, each clear to someone who cannot see the screen. Signs to stop at
and what to do about them are common practice in physiotherapy; they do not replace its advice.
"""

from __future__ import annotations

ENGLISH: dict[str, tuple[str, str]] = {
    # Before and after
    "welcome": (
        "Welcome. Do only the exercises your therapist gave you, and only as far as your shoulder "
        "lets you.",
        "Only the exercises your therapist gave you",
    ),
    "caution": (
        "Stop if the pain turns sharp or keeps growing, if your arm goes numb, tingles or feels "
        "weak, or if you feel dizzy. Then ask your therapist before you go on.",
        "Stop if: pain sharp or growing; arm numb or weak; dizzy",
    ),
    "emergency": (
        "If your chest hurts or you cannot breathe well, stop and call for emergency help.",
        "Chest pain or hard to breathe: stop, call for emergency help",
    ),
    "pain-before": (
        "How much does your shoulder hurt now? Choose a number from zero to ten. Zero is no pain. "
        "Ten is the worst pain you can think of.",
        "Pain now, 0 to 10?",
    ),
    "pain-after": (
        "This exercise is over. How much does your shoulder hurt now, from zero to ten?",
        "Pain now, 0 to 10?",
    ),
    "pain-limit": (
        "That is more pain than your therapist wants, so this exercise stops here. Ask your "
        "therapist before you do it again.",
        "Too much pain: ask your therapist",
    ),
    "paused": ("Paused. Let your arm rest.", "Paused"),
    "resumed": ("We go on.", "Going on"),
    "finished": (
        "That is all for today. Thank you for taking the time.",
        "Done for today",
    ),
    "finished-caution": (
        "If the pain gets worse for more than half an hour, or keeps you awake at night, tell your "
        "therapist.",
        "Worse for over half an hour, or at night: tell your therapist",
    ),
    # Where to stand
    "place.front": (
        "Face the camera. Step back until it sees you from head to hips.",
        "Face the camera, step back",
    ),
    "place.back": (
        "Turn your back to the camera. Step away until it sees you from head to hips.",
        "Back to the camera, step away",
    ),
    "place.side.left": (
        "Turn your left shoulder to the camera. Step away until it sees you from head to hips.",
        "Left shoulder to the camera",
    ),
    "place.side.right": (
        "Turn your right shoulder to the camera. Step away until it sees you from head to hips.",
        "Right shoulder to the camera",
    ),
    # What to do
    "do.flexion.left": (
        "Keep your left elbow straight. Lift your left arm forwards and up. "
        "Stay where you feel a stretch.",
        "Left arm forwards and up",
    ),
    "do.flexion.right": (
        "Keep your right elbow straight. Lift your right arm forwards and up. "
        "Stay where you feel a stretch.",
        "Right arm forwards and up",
    ),
    "do.extension.left": (
        "Stand tall, your left elbow straight. Move your left arm backwards. "
        "Stay where you feel a stretch.",
        "Left arm backwards",
    ),
    "do.extension.right": (
        "Stand tall, your right elbow straight. Move your right arm backwards. "
        "Stay where you feel a stretch.",
        "Right arm backwards",
    ),
    "do.abduction.left": (
        "Stand tall. Lift your left arm out to the side and up. Stay where you feel a stretch.",
        "Left arm out to the side and up",
    ),
    "do.abduction.right": (
        "Stand tall. Lift your right arm out to the side and up. Stay where you feel a stretch.",
        "Right arm out to the side and up",
    ),
    "do.external-rotation-0.left": (
        "Bend your left elbow to a right angle, at your side. Turn your left hand outwards. "
        "Stay where you feel a stretch.",
        "Left elbow at your side, hand outwards",
    ),
    "do.external-rotation-0.right": (
        "Bend your right elbow to a right angle, at your side. Turn your right hand outwards. "
        "Stay where you feel a stretch.",
        "Right elbow at your side, hand outwards",
    ),
    # How often, how long
    "exercise-number": ("Exercise {number} of {count}.", "Exercise {number} of {count}"),
    "dose.many": (
        "Do this {repetitions} times. Hold for {hold_s} seconds each time. I count for you.",
        "{repetitions} holds of {hold_s} s",
    ),
    "dose.once": (
        "Do this once. Hold for {hold_s} seconds. I count for you.",
        "1 hold of {hold_s} s",
    ),
    "dose.many-short": (
        "Do this {repetitions} times. Hold for one second each time.",
        "{repetitions} holds of 1 s",
    ),
    "dose.once-short": ("Do this once. Hold for one second.", "1 hold of 1 s"),
    # The hold
    "hold": ("Hold.", "Hold"),
    "number.halfway": ("Halfway.", "Halfway"),
    "number.10": ("Ten seconds.", "10 s left"),
    "number.5": ("Five.", "5"),
    "number.4": ("Four.", "4"),
    "number.3": ("Three.", "3"),
    "number.2": ("Two.", "2"),
    "number.1": ("One.", "1"),
    "rest": ("And rest. Let your arm come back slowly.", "Rest: let it come back slowly"),
    "count": ("{done} of {asked}. You held the full time.", "{done} of {asked}"),
    "count-steady": ("{done} of {asked}. Full time, and steady.", "{done} of {asked}, steady"),
    "count-last": (
        "That was the last one. All {asked} holds are done.",
        "{asked} of {asked}: done",
    ),
    "count-only": ("That was it. You held the full time.", "1 of 1: done"),
    "again": (
        "When you are ready, go again. This is hold {next} of {asked}.",
        "Ready? Hold {next} of {asked}",
    ),
    "let-go": (
        "You held for {held_s} seconds. That is all right. Try again when you are ready.",
        "{held_s} s held. Try again when ready",
    ),
    "let-go-short": (
        "That was a short one. That is all right. Try again when you are ready.",
        "Short hold. Try again when ready",
    ),
    "lost-hold": (
        "I lost sight of your arm, so this hold has ended. Try again when you are ready.",
        "Lost sight: hold ended, try again",
    ),
    "sight.lost": ("The clock is waiting. I cannot measure right now.", "Clock is waiting"),
    "sight.found": ("The clock runs again. Keep holding.", "Clock runs: keep holding"),
    "ease-off": (
        "Ease off a little. That is further than your therapist asked for.",
        "Ease off a little",
    ),
    # Why nothing can be measured, and what to do about it
    "doubt.nobody-in-view": (
        "I cannot see you. Step into the middle of the camera's view.",
        "Step into view",
    ),
    "doubt.another-person": (
        "I see more than one person. Ask the others to step out of view.",
        "Only one person in view, please",
    ),
    "doubt.too-far-away": ("You are too far away. Step closer to the camera.", "Step closer"),
    "doubt.too-close": ("You are too close. Step back from the camera.", "Step back"),
    "doubt.too-dark": ("It is too dark. Turn on a light in front of you.", "More light"),
    "doubt.hips-out-of-view": (
        "I cannot see your hips. Step back, or tilt the camera down.",
        "Hips out of view: step back",
    ),
    "doubt.shoulders-out-of-view": (
        "I cannot see both shoulders. Step back, or tilt the camera up.",
        "Shoulders out of view: step back",
    ),
    "doubt.arm-out-of-view.left": (
        "I cannot see all of your left arm. Step back, or turn a little.",
        "Left arm out of view",
    ),
    "doubt.arm-out-of-view.right": (
        "I cannot see all of your right arm. Step back, or turn a little.",
        "Right arm out of view",
    ),
    "doubt.turn-to-face-the-camera": (
        "Turn until your chest points straight at the camera.",
        "Face the camera",
    ),
    "doubt.turn-your-side-to-the-camera.left": (
        "Turn until your left shoulder points straight at the camera.",
        "Left shoulder to the camera",
    ),
    "doubt.turn-your-side-to-the-camera.right": (
        "Turn until your right shoulder points straight at the camera.",
        "Right shoulder to the camera",
    ),
    "doubt.turn-around": ("You face the wrong way. Turn right round.", "Turn right round"),
    "doubt.wrong-side-to-the-camera.left": (
        "That is your right side. Turn round so that your left shoulder is nearer the camera.",
        "Left side to the camera",
    ),
    "doubt.wrong-side-to-the-camera.right": (
        "That is your left side. Turn round so that your right shoulder is nearer the camera.",
        "Right side to the camera",
    ),
    "doubt.bend-the-elbow.left": (
        "Bend your left elbow to a right angle.",
        "Bend the left elbow",
    ),
    "doubt.bend-the-elbow.right": (
        "Bend your right elbow to a right angle.",
        "Bend the right elbow",
    ),
    "doubt.straighten-the-elbow.left": (
        "Make your left elbow straighter, as far as it lets you.",
        "Straighten the left elbow",
    ),
    "doubt.straighten-the-elbow.right": (
        "Make your right elbow straighter, as far as it lets you.",
        "Straighten the right elbow",
    ),
    "doubt.other-movement.left": (
        "Your left arm has moved off its path. Bring it back to this exercise's direction.",
        "Left arm off its path",
    ),
    "doubt.other-movement.right": (
        "Your right arm has moved off its path. Bring it back to this exercise's direction.",
        "Right arm off its path",
    ),
    "doubt.unsure": (
        "I cannot measure your arm clearly. Keep still for a moment, away from other things.",
        "Keep still for a moment",
    ),
}
