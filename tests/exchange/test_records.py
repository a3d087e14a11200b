"""The practice's own records in the bundle and in their table, judged from outside."""

from __future__ import annotations

import io
import json
import re
from datetime import UTC, datetime

import pandas as pd
import pytest
from fhir.resources.R4B.bundle import Bundle
from hypothesis import given, settings
from hypothesis import strategies as st

from coach.exchange.export import exported
from coach.exchange.fhir import bundle
from coach.exchange.kind import Kind
from coach.exchange.measures import measures_table
from tests.exchange.records import full_session, own_records
from tests.exchange.test_fhir import ALLOWED, ID, resources, within

WRITTEN = datetime(2026, 2, 1, 9, 0, tzinfo=UTC)


@pytest.fixture(scope="module")
def found():
    return json.loads(exported([full_session()], Kind.FHIR, WRITTEN, own_records()))


def own(found, kind, words):
    (one,) = [r for r in resources(found, kind) if words in json.dumps(r)]
    return one


def test_it_is_valid_and_points_inside_itself_with_confirmed_codes_only(found):
    Bundle.model_validate_json(json.dumps(found))
    urls = [entry["fullUrl"] for entry in found["entry"]]
    assert len(set(urls)) == len(urls)
    assert all(ID.fullmatch(entry["resource"]["id"]) for entry in found["entry"])
    assert {d["reference"] for d in within(found) if "reference" in d} <= set(urls)
    assert {(d["system"], d["code"]) for d in within(found) if "system" in d} == ALLOWED
    assert "Invented Heron" not in json.dumps(found)


def test_an_episode_is_told_in_words_with_its_goals(found):
    (episode,) = resources(found, "Condition")
    assert "coding" not in episode["code"]
    assert episode["onsetDateTime"] == "2025-11-03"
    assert episode["bodySite"] == [{"text": "left shoulder"}]
    assert [s["summary"]["text"].split(": ")[1] for s in episode["stage"]] == ["stiff", "low"]
    assert episode["note"] == [{"text": "Woke at night until Christmas"}]
    (goal,) = [g for g in resources(found, "Goal") if "addresses" in g]
    assert goal["description"]["text"] == "Reach the top shelf"
    assert goal["addresses"][0]["reference"].endswith(episode["id"])


def test_a_treatment_was_done_and_one_ahead_is_only_asked_for(found):
    done = own(found, "Procedure", "Injection")
    assert (done["status"], done["performedDateTime"]) == ("completed", "2026-01-09")
    assert done["reasonReference"][0]["reference"].endswith(resources(found, "Condition")[0]["id"])
    assert done["bodySite"] == [{"text": "left shoulder"}]
    (ahead,) = resources(found, "ServiceRequest")
    assert (ahead["code"]["text"], ahead["intent"]) == ("Hydrodilatation", "plan")
    assert ahead["occurrenceDateTime"] == "2026-03-09"
    undated = bundle([full_session()], records=own_records())
    assert own(undated, "Procedure", "Hydrodilatation")["status"] == "unknown"


def test_a_goniometer_reading_is_not_taken_for_the_camera(found):
    reading = own(found, "Observation", "range by goniometer")
    assert reading["code"] == {"text": "Flexion, left: passive range by goniometer"}
    assert (reading["valueQuantity"]["value"], reading["valueQuantity"]["code"]) == (95.0, "deg")
    assert reading["effectiveDateTime"] == "2026-01-12"
    assert reading["method"]["text"].startswith("goniometer in the practitioner's hand")
    assert reading["performer"] == [{"display": "the practice"}]
    assert "device" not in reading
    other = own(found, "Observation", "range to compare with")
    assert (other["valueQuantity"]["value"], other["bodySite"]["text"]) == (165.0, "right shoulder")


def test_a_total_says_out_of_how_many(found):
    total = own(found, "Observation", "total score")
    assert (total["valueQuantity"]["value"], total["valueQuantity"]["code"]) == (61.5, "1")
    assert total["component"][0]["valueQuantity"]["value"] == 100
    assert total["category"][0]["coding"][0]["code"] == "survey"


def test_the_table_has_a_row_for_each_value():
    table = pd.read_csv(io.BytesIO(measures_table(own_records())), parse_dates=["on"])
    assert table.kind.tolist() == ["other-side", "goniometer", "questionnaire"]
    assert table.value.tolist() == [165.0, 95.0, 61.5]
    assert table.unit.tolist() == ["deg", "deg", "1"]
    assert table.side.tolist()[:2] == ["right", "left"]
    assert table.effort.tolist()[1] == "passive"
    assert table.on.dt.day.tolist() == [5, 12, 20]
    assert table.highest_possible[2] == 100


@settings(max_examples=30, deadline=None)
@given(st.text(max_size=100) | st.sampled_from(["=1+1", "\u202e", " ", "\n\n", "\x00"]))
def test_any_text_gives_a_valid_bundle_and_no_formula(said):
    records = own_records(said=said)
    data = json.dumps(bundle([full_session()], written_at=WRITTEN, records=records))
    Bundle.model_validate_json(data)
    assert all(
        not re.search("[\x00-\x1f]", d["text"]) for d in within(json.loads(data)) if "text" in d
    )
    table = measures_table(records).decode("utf-8-sig")
    assert all(c.strip()[:1] not in tuple("=+@") for c in re.split('[,;|"]', table) if c.strip())
