"""What a raised hand does before a sitting: it says that the cautions were read, and begins."""

from __future__ import annotations

from coach.desktop.patient.pages import Pages
from coach.desktop.patient.wording import translate
from coach.domain.moment import Moment, Stage
from coach.gestures import UP_S


class Beginning:
    """Belongs to the window, which knows the page: the pipeline does not begin by hand."""

    def __init__(self, pages: Pages) -> None:
        """Wait for a hand."""
        self._pages, self._up = pages, False

    def take(self, moment: Moment) -> None:
        """Press what stands on the page once a hand has been up long enough, once for each raise.

        Cautions are confirmed only after the time that it takes to read them.
        """
        up = moment.raised_s is not None and moment.raised_s >= UP_S
        raised, self._up = up and not self._up, up
        if not raised or moment.stage is not Stage.WELCOME:
            return
        pages = self._pages
        if pages.currentWidget() is pages.welcome:
            pages.welcome.start_button.click()
        elif pages.currentWidget() is pages.cautions and pages.cautions.read_through:
            pages.cautions.read_button.click()

    def meaning(self) -> str:
        """Say what a hand does on the page shown, where the stage alone does not tell."""
        if self._pages.currentWidget() is not self._pages.cautions:
            return ""
        if self._pages.cautions.read_through:
            return translate("patient", "Hand up: I have read it")
        return translate("patient", "Read all of it first")
