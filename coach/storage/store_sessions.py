"""Sessions of one patient, and their files, as the store keeps them."""

from __future__ import annotations

import msgspec
from sqlalchemy import select

from coach.documents.session import read_session_document
from coach.domain.fault import Fault
from coach.domain.session import SessionDocument
from coach.storage.store_database import Database
from coach.storage.store_doubts import COUNTED
from coach.storage.store_tables import files, patients, sessions
from coach.texts import translate


class Sessions(Database):
    """Gives sessions and files."""

    def sessions_of(self, code: str) -> tuple[SessionDocument, ...]:
        """Give one patient's sessions, oldest first, without those left out.

        A session that was given to another patient than it names is told as theirs.
        """
        query = (
            select(sessions.c.document)
            .join(patients, patients.c.id == sessions.c.patient_id)
            .where(patients.c.code == code, COUNTED)
            .order_by(sessions.c.started_utc, sessions.c.id)
        )
        with self._read() as connection:
            texts = connection.scalars(query).all()
        try:
            return tuple(_of(code, stored_document(text, code)) for text in texts)
        except Fault as fault:
            raise Fault(
                translate(
                    "faults",
                    "A session of {code} in the store at {store} is damaged ({fault}): "
                    "put a backup copy in its place.",
                ).format(code=code, store=self.name, fault=fault)
            ) from fault

    def original(self, session_id: str) -> bytes:
        """Give a session's file as it came."""
        query = select(files.c.content).where(files.c.session_id == session_id)
        with self._read() as connection:
            content = connection.scalar(query)
        if content is None:
            raise Fault(
                translate(
                    "faults",
                    "There is no session {session_id} in the store at {store}: import its file.",
                ).format(session_id=session_id[:8], store=self.name)
            )
        return bytes(content)


_DECODER = msgspec.json.Decoder(SessionDocument)


def stored_document(text: str, where: str) -> SessionDocument:
    """Read a session's document as the store keeps it; ``where`` names it in a refusal."""
    try:
        return _DECODER.decode(text)
    except msgspec.MsgspecError:  # of an older version, or damaged
        return read_session_document(text.encode(), where)


def _of(code: str, document: SessionDocument) -> SessionDocument:
    if document.plan.patient_code == code:
        return document
    plan = msgspec.structs.replace(document.plan, patient_code=code)
    return msgspec.structs.replace(document, plan=plan)
