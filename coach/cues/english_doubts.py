"""The English sentences on why nothing can be measured, and what to do about it."""

from __future__ import annotations

DOUBTS: dict[str, tuple[str, str]] = {
    "doubt.nobody-in-view": (
        "I cannot see you. Step into the middle of the camera's view.",
        "Step into view",
    ),
    "doubt.another-person": (
        "I see more than one person. Ask the others to step out of view.",
        "Only one person in view, please",
    ),
    "doubt.somebody-else-in-view": (
        "Somebody else is in the picture. Ask them to step out of it.",
        "Somebody else in view",
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
    "doubt.no-room-for-the-arm.left": (
        "Your left hand would leave the picture. Step back, or move to the middle of it.",
        "No room for the left arm: step back",
    ),
    "doubt.no-room-for-the-arm.right": (
        "Your right hand would leave the picture. Step back, or move to the middle of it.",
        "No room for the right arm: step back",
    ),
    "doubt.no-room-above-for-the-arm.left": (
        "Your left hand would leave the picture at the top. Step back, or tilt the camera up.",
        "No room above: step back",
    ),
    "doubt.no-room-above-for-the-arm.right": (
        "Your right hand would leave the picture at the top. Step back, or tilt the camera up.",
        "No room above: step back",
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
    "doubt.turn-your-feet-to-the-camera": (
        "Lie with your feet toward the camera, so that it looks along your body.",
        "Feet to the camera",
    ),
    "doubt.raise-the-camera": (
        "The camera is too low. Raise it and tilt it down, so that it looks along your body.",
        "Raise the camera, tilt it down",
    ),
    "doubt.legs-in-the-way": (
        "Your legs hide your arm from the camera. Lay them flat, or raise the camera.",
        "Legs in the way: lay them flat",
    ),
    "doubt.lie-on-your-back": (
        "I measure this lying on your back. Turn onto your back.",
        "Lie on your back",
    ),
    "doubt.lie-face-down": (
        "I measure this lying face down. Turn onto your front.",
        "Lie face down",
    ),
    "doubt.stand-or-sit-upright": (
        "I measure this standing or sitting. Bring your body upright.",
        "Stand or sit upright",
    ),
    # The same for someone lying, who moves the camera rather than themselves
    "doubt.nobody-in-view.lying": (
        "I cannot see you. Move the camera until you are in the middle of its view.",
        "Out of view: move the camera",
    ),
    "doubt.too-far-away.lying": (
        "The camera is too far away. Move it closer.",
        "Camera closer",
    ),
    "doubt.too-close.lying": (
        "The camera is too close. Move it further away.",
        "Camera further away",
    ),
    "doubt.hips-out-of-view.lying": (
        "I cannot see your hips. Move the camera further away, or turn it.",
        "Hips out of view: move the camera",
    ),
    "doubt.shoulders-out-of-view.lying": (
        "I cannot see both shoulders. Move the camera further away, or turn it.",
        "Shoulders out of view: move the camera",
    ),
    "doubt.arm-out-of-view.lying.left": (
        "I cannot see all of your left arm. Move the camera further away, or turn it.",
        "Left arm out of view: move the camera",
    ),
    "doubt.arm-out-of-view.lying.right": (
        "I cannot see all of your right arm. Move the camera further away, or turn it.",
        "Right arm out of view: move the camera",
    ),
    "doubt.no-room-for-the-arm.lying.left": (
        "Your left hand would leave the picture. Move the camera further away, or turn it.",
        "No room for the left arm: move the camera",
    ),
    "doubt.no-room-for-the-arm.lying.right": (
        "Your right hand would leave the picture. Move the camera further away, or turn it.",
        "No room for the right arm: move the camera",
    ),
    "doubt.no-room-above-for-the-arm.lying.left": (
        "Your left hand would leave the picture at the top. "
        "Move the camera further away, or tilt it up.",
        "No room above: move the camera",
    ),
    "doubt.no-room-above-for-the-arm.lying.right": (
        "Your right hand would leave the picture at the top. "
        "Move the camera further away, or tilt it up.",
        "No room above: move the camera",
    ),
    "doubt.turn-to-face-the-camera.lying": (
        "Lie straight, both shoulders flat.",
        "Lie straight, shoulders flat",
    ),
    "doubt.turn-your-side-to-the-camera.lying.left": (
        "Lie so that your left side points straight at the camera.",
        "Left side to the camera",
    ),
    "doubt.turn-your-side-to-the-camera.lying.right": (
        "Lie so that your right side points straight at the camera.",
        "Right side to the camera",
    ),
    "doubt.turn-around.lying": (
        "You lie the wrong way round. Put your feet where your head is.",
        "Lie the other way round",
    ),
    "doubt.wrong-side-to-the-camera.lying.left": (
        "That is your right side. Lie the other way round, so that your left shoulder is "
        "nearer the camera.",
        "Left shoulder nearer the camera",
    ),
    "doubt.wrong-side-to-the-camera.lying.right": (
        "That is your left side. Lie the other way round, so that your right shoulder is "
        "nearer the camera.",
        "Right shoulder nearer the camera",
    ),
}
