"""What measured, as FHIR Devices: the program with one pose model each."""

from __future__ import annotations

from collections.abc import Iterable

import msgspec

from coach.domain.session import SessionDocument, Software
from coach.exchange.fhir_elements import Resource, concept, identity, text_of


def used(document: SessionDocument) -> tuple[Software, ...]:
    """Give what a sitting used, each once, in the order of use."""
    measured = dict.fromkeys(document.software_of(record) for record in document.exercises)
    return tuple(measured) or (document.software,)


def device_identity(software: Software) -> str:
    """Give the id of a program with a pose model."""
    return identity("device", msgspec.json.encode(software).decode())


def devices(documents: Iterable[SessionDocument]) -> list[Resource]:
    """Write every program and pose model that some sittings used, each once."""
    return [_device(each) for each in dict.fromkeys(s for d in documents for s in used(d))]


def _device(software: Software) -> Resource:
    versions = {
        "software": software.version,
        "definitions of the angles": str(software.definitions),
        "pose model, SHA-256": software.model_sha256,
        "estimator": software.estimator,
    }
    return {
        "resourceType": "Device",
        "id": device_identity(software),
        "deviceName": [{"name": text_of(software.name), "type": "model-name"}],
        "type": concept("program that measures shoulder angles with one camera"),
        "version": [
            {"type": concept(kind), "value": text_of(value)} for kind, value in versions.items()
        ],
    }
