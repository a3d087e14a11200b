"""The kinds of record in words, and what was done with one."""

from __future__ import annotations

from coach.desktop.therapist.keys import key_name
from coach.domain.practice import (
    Episode,
    HandMeasure,
    IssuedPlan,
    OtherSideMeasure,
    Person,
    Record,
    TotalScore,
    Treatment,
)
from coach.texts import translate


def kind_name(kind: type[Record]) -> str:
    """Name a kind of record."""
    return {
        Person: translate("records", "Person"),
        Episode: translate("records", "Episode"),
        Treatment: translate("records", "Treatment"),
        OtherSideMeasure: translate("records", "Measure of the other side"),
        HandMeasure: translate("records", "Goniometer reading"),
        TotalScore: translate("records", "Questionnaire total"),
        IssuedPlan: translate("records", "Plan"),
    }[kind]


def new_title(kind: type[Record]) -> str:
    """Give the title over the fields of a new record."""
    return {
        Person: translate("records", "New person"),
        Episode: translate("records", "New episode"),
        Treatment: translate("records", "New treatment"),
        OtherSideMeasure: translate("records", "New measure of the other side"),
        HandMeasure: translate("records", "New goniometer reading"),
        TotalScore: translate("records", "New questionnaire total"),
    }[kind]


def entries_to_add() -> dict[type[Record], str]:
    """Give what a menu offers to add, each with the letter that chooses it."""
    return {
        Episode: translate("records", "&Episode"),
        Treatment: translate("records", "&Treatment"),
        OtherSideMeasure: translate("records", "&Other side"),
        HandMeasure: translate("records", "&Goniometer reading"),
        TotalScore: translate("records", "&Questionnaire total"),
    }


def section_titles() -> dict[type[Record], str]:
    """Give the headings of a person's records, in their order."""
    return {
        Episode: translate("records", "Episodes: side, course and goals"),
        Treatment: translate("records", "Treatments"),
        OtherSideMeasure: translate("records", "Other side, to compare with"),
        HandMeasure: translate("records", "Goniometer in the practice, beside the camera at home"),
        TotalScore: translate("records", "Questionnaire totals"),
        IssuedPlan: translate("records", "Plans given"),
    }


def added(kind: type[Record]) -> str:
    """Say that a record was added."""
    return translate("records", "{record} added").format(record=kind_name(kind))


def changed(kind: type[Record]) -> str:
    """Say that a record was changed."""
    return translate("records", "{record} changed").format(record=kind_name(kind))


def deleted(kind: type[Record]) -> str:
    """Say that a record was deleted."""
    return translate("records", "{record} deleted").format(record=kind_name(kind))


def how_to() -> str:
    """Say which keys do what with records."""
    return translate(
        "records",
        "{enter} changes the chosen record, {insert} adds one in its section, {delete} removes it, "
        "{undo} takes the last change back. Numbers are told as they were typed in; their error "
        "is not known.",
    ).format(
        enter=key_name("Enter"),
        insert=key_name("Ins"),
        delete=key_name("Del"),
        undo=key_name("Ctrl+Z"),
    )
