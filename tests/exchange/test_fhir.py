"""The bundle, judged by an independent model of HL7 FHIR R4B and by what was put in."""

from __future__ import annotations

import json
import re
from datetime import UTC, datetime, timedelta

import msgspec
import pytest
from fhir.resources.R4B.bundle import Bundle
from hypothesis import given, settings
from hypothesis import strategies as st

from coach.domain.fault import Fault
from coach.domain.form import FormFault
from coach.domain.progress import EndedBecause
from coach.exchange.fhir import bundle, bundle_bytes
from tests.exchange.records import full_session
from tests.review.conftest import make_session

WRITTEN = datetime(2026, 2, 1, 9, 0, tzinfo=UTC)
# Data types of HL7 FHIR R4 (4.0.1), dateTime and id.
DATE_TIME = re.compile(
    r"([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)-(0[1-9]|1[0-2])-(0[1-9]|[1-2][0-9]|3[0-1])"
    r"T([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\.[0-9]+)?"
    r"(Z|(\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))"
)
ID = re.compile(r"[A-Za-z0-9\-.]{1,64}")
ALLOWED = {
    ("http://loinc.org", "72514-3"),
    ("http://terminology.hl7.org/CodeSystem/observation-category", "exam"),
    ("http://terminology.hl7.org/CodeSystem/observation-category", "survey"),
    ("http://terminology.hl7.org/CodeSystem/observation-category", "therapy"),
    ("http://unitsofmeasure.org", "deg"),
    ("http://unitsofmeasure.org", "s"),
    ("http://unitsofmeasure.org", "1"),
}


def within(value):
    """Every dictionary inside a JSON value."""
    if isinstance(value, dict):
        yield value
    for inner in value.values() if isinstance(value, dict) else value:
        if isinstance(inner, dict | list):
            yield from within(inner)


def resources(found, kind):
    return [e["resource"] for e in found["entry"] if e["resource"]["resourceType"] == kind]


def observation(found, words, number=0):
    return [o for o in resources(found, "Observation") if words in o["code"]["text"]][number]


def components(resource):
    return {
        c["code"]["text"]: c.get("valueString", c.get("valueQuantity"))
        for c in resource["component"]
    }


@pytest.fixture(scope="module")
def record():
    return [full_session(n) for n in range(3)]


@pytest.fixture(scope="module")
def found(record):
    return json.loads(bundle_bytes(record, written_at=WRITTEN, names={"pendulum": "Pendulum"}))


def test_it_is_a_valid_collection(found):
    read = Bundle.model_validate_json(json.dumps(found))
    assert read.type == "collection"
    kinds = {e["resource"]["resourceType"] for e in found["entry"]}
    assert kinds == {"Patient", "Device", "Procedure", "Observation", "CarePlan", "Goal"}
    assert len(resources(found, "Procedure")) == 3


def test_the_judge_refuses_what_is_wrong(found):
    broken = json.loads(json.dumps(found))
    del resources(broken, "Observation")[0]["status"]
    with pytest.raises(ValueError, match="status"):
        Bundle.model_validate_json(json.dumps(broken))


def test_ids_are_unique_and_references_stay_inside(found):
    urls = [e["fullUrl"] for e in found["entry"]]
    assert len(set(urls)) == len(urls)
    for entry in found["entry"]:
        assert entry["fullUrl"] == f"urn:uuid:{entry['resource']['id']}"
        assert ID.fullmatch(entry["resource"]["id"])
    pointed = {d["reference"] for d in within(found) if "reference" in d}
    assert pointed
    assert pointed <= set(urls)


def test_the_same_record_gives_the_same_bytes_in_any_order(record):
    again = bundle_bytes(record[::-1], written_at=WRITTEN)
    assert again == bundle_bytes(record, written_at=WRITTEN)


def test_one_more_sitting_leaves_the_ids_of_the_others(record, found):
    fewer = bundle(record[:2])
    ids = {e["fullUrl"] for e in fewer["entry"]}
    assert ids < {e["fullUrl"] for e in found["entry"]}


def test_two_practices_with_one_code_do_not_share_a_patient():
    here, there = (bundle([make_session(n, code="7")]) for n in (0, 1))
    assert resources(here, "Patient")[0]["id"] != resources(there, "Patient")[0]["id"]


def test_only_confirmed_codes_stand_in_it(found):
    used = {(d["system"], d["code"]) for d in within(found) if "system" in d}
    assert used == ALLOWED


def test_a_hold_says_what_was_measured(found):
    hold = observation(found, "External rotation at side, left: range in one hold")
    assert hold["status"] == "final"
    assert hold["category"][0]["coding"][0]["code"] == "exam"
    assert "coding" not in hold["code"]
    assert hold["valueQuantity"] == {
        "value": -12.0,
        "unit": "\N{DEGREE SIGN}",
        "system": "http://unitsofmeasure.org",
        "code": "deg",
    }
    assert hold["bodySite"] == {"text": "left shoulder"}
    # Begun at 18:30:00 at one hour east; the hold five seconds later.
    assert hold["effectiveDateTime"] == "2026-01-05T18:30:05.000+01:00"
    for words in ("self-assisted stretch at end of range", "neither active nor passive",
                  "humerothoracic", "single camera"):  # fmt: skip
        assert words in hold["method"]["text"]
    parts = components(hold)
    half = parts["half width of the 95 % interval"]
    assert (half["value"], half["code"]) == (13.0, "deg")
    held = parts["seconds held and seen"]
    assert (held["value"], held["code"]) == (20.0, "s")
    assert parts["form"] == "trunk leans"


def test_a_sitting_has_the_median_of_its_holds():
    found = bundle([make_session(values=(90.0, 97.5, 91.0))])
    sitting = observation(found, "Flexion, left: range of a sitting")
    assert sitting["valueQuantity"]["value"] == 91.0
    count = components(sitting)["holds counted"]
    assert (count["value"], count["code"]) == (3, "1")
    assert "note" not in sitting
    held = {r["reference"] for r in sitting["hasMember"]}
    holds = [observation(found, "Flexion, left: range in one", n) for n in range(3)]
    assert held == {f"urn:uuid:{h['id']}" for h in holds}


def test_a_hold_with_a_leaning_trunk_is_written_but_does_not_count(found):
    sitting = observation(found, "External rotation at side, left: range of a sitting")
    assert sitting["valueQuantity"]["value"] == -9.5  # of -12 with a leaning trunk, and -9.5
    parts = components(sitting)
    assert parts["holds counted"]["value"] == 1
    assert parts["share of holds in which the trunk leaned or turned"]["value"] == 0.5
    assert len(sitting["hasMember"]) == 2


def test_a_value_that_is_no_range_says_why():
    document = make_session(values=(90.0,), held_s=12.0, ended=EndedBecause.LET_GO)
    (record,) = document.exercises
    leaning = msgspec.structs.replace(record.repetitions[0], faults=(FormFault.TURN,))
    record = msgspec.structs.replace(record, repetitions=(leaning,))
    found = bundle([msgspec.structs.replace(document, exercises=(record,))])
    notes = " ".join(n["text"] for n in observation(found, "of a sitting")["note"])
    assert "holds of at least half" in notes
    assert "may not pass as range" in notes


def test_the_hand_behind_the_back_is_a_share(found):
    reach = observation(found, "Hand behind back, left: range in one hold")
    assert (reach["valueQuantity"]["value"], reach["valueQuantity"]["code"]) == (0.6, "1")


def test_a_timed_hold_is_no_range(found):
    timed = observation(found, "seconds of one timed hold")
    assert (timed["valueQuantity"]["value"], timed["valueQuantity"]["code"]) == (17.5, "s")
    assert timed["category"][0]["coding"][0]["code"] == "therapy"
    assert timed["effectiveDateTime"] == "2026-01-05T18:31:52.500+01:00"
    assert "nothing of the arm was measured" in timed["method"]["text"]


def test_each_answer_on_pain_is_written_once():
    pains = [
        (o["code"]["text"], o["valueQuantity"]["value"], o["effectiveDateTime"][17:23])
        for o in resources(bundle([full_session()]), "Observation")
        if o["code"].get("coding", [{}])[0].get("code") == "72514-3"
    ]
    # 3 after the rotation is the same answer as 3 before the next; 5 before the last is another.
    assert pains == [
        ("pain 0-10 before External rotation at side, left", 2, "00.000"),
        ("pain 0-10 after External rotation at side, left", 3, "40.000"),
        ("pain 0-10 after table slide, left", 6, "30.000"),
        ("pain 0-10 before Hand behind back, left", 5, "40.000"),
        ("pain 0-10 after Hand behind back, left", 3, "20.000"),
        ("pain 0-10 at the end of the sitting", 4, "30.000"),
    ]


def test_the_sitting_says_how_it_ended(found):
    procedure = resources(found, "Procedure")[0]
    assert procedure["status"] == "stopped"
    assert "pain above the agreed limit" in procedure["statusReason"]["text"]
    assert procedure["performedPeriod"]["end"] == "2026-01-05T18:33:30.000+01:00"
    notes = [n["text"] for n in procedure["note"]]
    assert "table slide, left: done as the easier one, after too much pain." in notes


def test_a_sitting_without_any_hold_was_not_done():
    procedure = resources(bundle([make_session(values=())]), "Procedure")[0]
    assert procedure["status"] == "not-done"


def test_the_plan_is_a_care_plan_and_its_limit_no_goal(found):
    (plan,) = resources(found, "CarePlan")
    assert (plan["status"], plan["intent"]) == ("active", "plan")
    assert plan["period"] == {"start": "2026-01-02", "end": "2026-03-01"}
    assert "not beyond 40\N{DEGREE SIGN}" in plan["activity"][0]["detail"]["description"]
    repeat = plan["activity"][0]["detail"]["scheduledTiming"]["repeat"]
    assert (repeat["frequency"], repeat["period"], repeat["periodUnit"]) == (2, 1, "d")
    assert plan["activity"][1]["detail"]["code"]["text"] == "Pendulum, left"
    aims = [g["target"][0]["detailQuantity"] for g in resources(found, "Goal")]
    assert [(a.get("comparator"), a["value"], a["code"]) for a in aims] == [
        (None, 7, "1"),
        (">=", 30, "deg"),
    ]


def test_a_plan_that_was_followed_or_has_expired_is_completed(record):
    second = msgspec.structs.replace(
        record[1], plan=msgspec.structs.replace(record[1].plan, revision=2)
    )
    old, new = resources(bundle([record[0], second], written_at=WRITTEN), "CarePlan")
    assert (old["status"], new["status"]) == ("completed", "active")
    assert new["replaces"][0]["reference"].endswith(old["id"])
    later = WRITTEN + timedelta(days=29)  # 2 March, a day past the plan's last
    assert resources(bundle(record, written_at=later), "CarePlan")[0]["status"] == "completed"


@pytest.mark.parametrize("zone", ["Z", "+14:00", "-12:00", "+05:45", "+23:59", "-18:30"])
def test_every_zone_becomes_one_that_fhir_knows(zone):
    document = msgspec.structs.replace(make_session(), started_at=f"2026-01-05T18:30:00{zone}")
    written = bundle([document])
    Bundle.model_validate_json(json.dumps(written))
    at = [o["effectiveDateTime"] for o in resources(written, "Observation")]
    assert at
    assert all(DATE_TIME.fullmatch(a) for a in at)
    first = observation(written, "in one hold")["effectiveDateTime"]
    true = datetime.fromisoformat(document.started_at) + timedelta(seconds=5)
    assert datetime.fromisoformat(first) == true


@settings(max_examples=60)
@given(
    st.text(min_size=1, max_size=64) | st.sampled_from(["\u202eSH", "<b>x", '"\\', "\n\n", " "]),
    st.text(max_size=200),
)
def test_any_name_gives_a_valid_bundle(code, title):
    data = bundle_bytes([full_session(code=code, title=title)])
    Bundle.model_validate_json(data)
    written = resources(json.loads(data), "Patient")[0]["identifier"][0]["value"]
    # R4, string: no control characters but for tab and line ends; never empty.
    assert written.strip()
    assert not re.search("[\x00-\x1f]", written)
    if code.isprintable():
        assert written in (code.strip(), "-")


def test_nothing_to_export_is_said():
    with pytest.raises(Fault, match="import session files"):
        bundle([])
