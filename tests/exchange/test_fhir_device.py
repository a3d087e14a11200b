"""Which pose model measured what, in the bundle, judged by an independent model of FHIR R4B."""

from __future__ import annotations

import json

from fhir.resources.R4B.bundle import Bundle
from msgspec import structs

from coach.exchange.fhir import bundle, bundle_bytes
from tests.exchange.records import full_session
from tests.exchange.test_fhir import WRITTEN, resources
from tests.review.conftest import make_session

BEGAN_WITH, OTHER = "a" * 64, "b" * 64
"""``make_session`` says the first."""


def measured_by(document, *models):
    exercises = (
        structs.replace(record, model_sha256=model)
        for record, model in zip(document.exercises, models, strict=True)
    )
    return structs.replace(document, exercises=tuple(exercises))


def models_of(found):
    """The pose model of each Device, by how it is pointed at."""
    return {
        f"urn:uuid:{device['id']}": next(
            v["value"] for v in device["version"] if v["type"]["text"].startswith("pose model")
        )
        for device in resources(found, "Device")
    }


def named(found):
    """The words and the pose model of each observation that has a device."""
    models = models_of(found)
    return {
        (o["code"]["text"], models[o["device"]["reference"]])
        for o in resources(found, "Observation")
        if "device" in o
    }


def test_each_exercise_names_the_model_that_measured_it():
    document = measured_by(full_session(), None, None, OTHER)
    found = json.loads(bundle_bytes([document], written_at=WRITTEN))
    Bundle.model_validate_json(json.dumps(found))
    assert sorted(models_of(found).values()) == [BEGAN_WITH, OTHER]
    ways = ("External rotation at side, left", BEGAN_WITH), ("Hand behind back, left", OTHER)
    kinds = "range in one hold", "range of a sitting, median of the holds that count"
    assert {(words, model) for words, model in named(found) if ": range" in words} == {
        (f"{name}: {kind}", model) for name, model in ways for kind in kinds
    }
    (procedure,) = resources(found, "Procedure")
    used = [models_of(found)[each["reference"]] for each in procedure["usedReference"]]
    assert used == [BEGAN_WITH, OTHER]


def test_a_model_that_measured_nothing_is_not_named():
    found = bundle([measured_by(full_session(), OTHER, OTHER, OTHER)])
    assert list(models_of(found).values()) == [OTHER]
    assert {model for _, model in named(found)} == {OTHER}


def test_a_value_of_two_models_names_neither_and_says_so():
    first = make_session(values=(100.0, 102.0))
    record = first.exercises[0]
    later = structs.replace(record, model_sha256=OTHER)
    document = structs.replace(first, exercises=(record, later))
    found = json.loads(bundle_bytes([document], written_at=WRITTEN))
    Bundle.model_validate_json(json.dumps(found))
    (value,) = [o for o in resources(found, "Observation") if "of a sitting" in o["code"]["text"]]
    assert "device" not in value
    assert any("different pose models" in note["text"] for note in value["note"])
    assert {m for words, m in named(found) if "in one hold" in words} == {BEGAN_WITH, OTHER}


def test_a_device_of_one_model_has_the_id_it_always_had():
    """A receiver leaves out by id what it has from an earlier export."""
    (device,) = resources(bundle([full_session()]), "Device")
    assert device["id"] == "80bfdaab-476d-549c-9b0a-951b04fb2eeb"
