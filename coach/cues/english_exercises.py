"""The English sentences on how to stand, sit or lie, and what to do with the arm.

``place.<view>`` and ``do.<movement>`` are for someone standing; a position that needs other words
has them under its own name.
"""

from __future__ import annotations

EXERCISES: dict[str, tuple[str, str]] = {
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
    "place.foot": (
        "Put the camera up high, beyond your feet, so that it looks along your body. Then lie "
        "down on your back.",
        "On your back, feet to the camera",
    ),
    "place.front.sitting": (
        "Sit on a chair without arms and face the camera. It must see you from head to hips.",
        "Sit and face the camera",
    ),
    "place.back.sitting": (
        "Sit on a stool with your back to the camera. It must see you from head to hips.",
        "Sit with your back to the camera",
    ),
    "place.side.sitting.left": (
        "Sit on a chair without arms, your left shoulder to the camera. It must see you from "
        "head to hips.",
        "Sit, left shoulder to the camera",
    ),
    "place.side.sitting.right": (
        "Sit on a chair without arms, your right shoulder to the camera. It must see you from "
        "head to hips.",
        "Sit, right shoulder to the camera",
    ),
    "place.side.supine.left": (
        "Lie on your back, your left side to the camera. It must see you from head to hips.",
        "On your back, left side to the camera",
    ),
    "place.side.supine.right": (
        "Lie on your back, your right side to the camera. It must see you from head to hips.",
        "On your back, right side to the camera",
    ),
    "place.side.prone.left": (
        "Lie face down, your left side to the camera. It must see you from head to hips.",
        "Face down, left side to the camera",
    ),
    "place.side.prone.right": (
        "Lie face down, your right side to the camera. It must see you from head to hips.",
        "Face down, right side to the camera",
    ),
    "place.front.doorway": (
        "Stand at a door frame and face the camera. It must see you from head to hips.",
        "Stand at a door frame, face the camera",
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
    "do.flexion.supine.left": (
        "Keep your left elbow straight. Lift your left arm to the ceiling and on toward your "
        "head. Stay where you feel a stretch.",
        "Left arm up and toward your head",
    ),
    "do.flexion.supine.right": (
        "Keep your right elbow straight. Lift your right arm to the ceiling and on toward "
        "your head. Stay where you feel a stretch.",
        "Right arm up and toward your head",
    ),
    "do.extension.sitting.left": (
        "Sit tall, your left elbow straight. Move your left arm backwards. Stay where you "
        "feel a stretch.",
        "Left arm backwards",
    ),
    "do.extension.sitting.right": (
        "Sit tall, your right elbow straight. Move your right arm backwards. Stay where you "
        "feel a stretch.",
        "Right arm backwards",
    ),
    "do.extension.prone.left": (
        "Keep your left elbow straight. Lift your left arm up toward the ceiling. Stay where "
        "you feel a stretch.",
        "Left arm up toward the ceiling",
    ),
    "do.extension.prone.right": (
        "Keep your right elbow straight. Lift your right arm up toward the ceiling. Stay "
        "where you feel a stretch.",
        "Right arm up toward the ceiling",
    ),
    "do.abduction.sitting.left": (
        "Sit tall. Lift your left arm out to the side and up. Stay where you feel a stretch.",
        "Left arm out to the side and up",
    ),
    "do.abduction.sitting.right": (
        "Sit tall. Lift your right arm out to the side and up. Stay where you feel a stretch.",
        "Right arm out to the side and up",
    ),
    "do.external-rotation-0.supine.left": (
        "Keep your left elbow at your side and bend it, hand to the ceiling. Let your left "
        "hand sink outwards. Stay where you feel a stretch.",
        "Left elbow at your side, hand outwards",
    ),
    "do.external-rotation-0.supine.right": (
        "Keep your right elbow at your side and bend it, hand to the ceiling. Let your right "
        "hand sink outwards. Stay where you feel a stretch.",
        "Right elbow at your side, hand outwards",
    ),
    "do.external-rotation-0.doorway.left": (
        "Keep your left elbow at your side and bend it. Put your left hand against the frame "
        "and turn your body slowly away from it. Stay where you feel a stretch.",
        "Left hand on the frame, turn your body away",
    ),
    "do.external-rotation-0.doorway.right": (
        "Keep your right elbow at your side and bend it. Put your right hand against the "
        "frame and turn your body slowly away from it. Stay where you feel a stretch.",
        "Right hand on the frame, turn your body away",
    ),
    "do.external-rotation-90.left": (
        "Lift your left elbow out to the side, as high as your shoulder, and bend it. Turn "
        "your left hand up and back. Stay where you feel a stretch.",
        "Left elbow out to the side, hand up and back",
    ),
    "do.external-rotation-90.right": (
        "Lift your right elbow out to the side, as high as your shoulder, and bend it. Turn "
        "your right hand up and back. Stay where you feel a stretch.",
        "Right elbow out to the side, hand up and back",
    ),
    "do.external-rotation-90.supine.left": (
        "Put your left elbow out to the side, level with your shoulder, hand to the ceiling. "
        "Let your left hand sink back toward your head. Stay where you feel a stretch.",
        "Left elbow out to the side, hand toward your head",
    ),
    "do.external-rotation-90.supine.right": (
        "Put your right elbow out to the side, level with your shoulder, hand to the ceiling. "
        "Let your right hand sink back toward your head. Stay where you feel a stretch.",
        "Right elbow out to the side, hand toward your head",
    ),
    "do.horizontal-adduction.left": (
        "Lift your left arm out to the side, as high as your shoulder. Bring it across your "
        "chest. Stay where you feel a stretch.",
        "Left arm across your chest",
    ),
    "do.horizontal-adduction.right": (
        "Lift your right arm out to the side, as high as your shoulder. Bring it across your "
        "chest. Stay where you feel a stretch.",
        "Right arm across your chest",
    ),
    "do.horizontal-adduction.supine.left": (
        "Put your left arm out to the side. Bring it up and across your chest. Stay where you "
        "feel a stretch.",
        "Left arm up and across your chest",
    ),
    "do.horizontal-adduction.supine.right": (
        "Put your right arm out to the side. Bring it up and across your chest. Stay where "
        "you feel a stretch.",
        "Right arm up and across your chest",
    ),
    "do.hand-behind-back.left": (
        "Put your left hand behind your back, thumb up. Slide it up along your spine. Stay "
        "where you feel a stretch.",
        "Left hand behind your back, slide it up",
    ),
    "do.hand-behind-back.right": (
        "Put your right hand behind your back, thumb up. Slide it up along your spine. Stay "
        "where you feel a stretch.",
        "Right hand behind your back, slide it up",
    ),
}
