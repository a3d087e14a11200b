import tomllib
from importlib.resources import files

import pytest

from coach.catalogue import catalogue
from coach.catalogue.pages import pages_for
from coach.catalogue.safety import safety
from coach.cues.language import languages, parse, spoken_in
from coach.domain.fault import Fault

HEAD = b'name = "x"\nvoice = "xx"\ndecimal_sign = ","\n[sentences]\n'


def english() -> bytes:
    return files("coach.cues").joinpath("languages/en.toml").read_bytes()


@pytest.mark.parametrize("code", ["en", "de"])
def test_english_and_german_are_whole(code: str) -> None:
    assert set(languages()[code].sentences) == set(languages()["en"].sentences)
    assert all(code in exercise.telling for exercise in catalogue().all)
    assert all(code in page.telling for page in pages_for(None))
    assert all(code in rule.text for rule in safety().rules)


def test_no_german_sentence_is_the_english_one() -> None:
    english_words, german = languages()["en"].sentences, languages()["de"].sentences
    same = {key for key, texts in german.items() if texts[0] == english_words[key][0]}
    assert not same


def test_a_language_that_has_one_sentence_says_the_others_in_the_fallback() -> None:
    found = parse({"en.toml": english(), "xx.toml": HEAD + b'"hold" = ["Tien.", "Tien"]'})
    assert found["xx"].sentences == {"hold": ("Tien.", "Tien")}


@pytest.mark.parametrize(
    ("line", "wrong"),
    [
        (b'"hald" = ["Tien.", "Tien"]', "there is no sentence 'hald'"),
        (b'"count" = ["{done} of.", "{done}"]', "count must have the places"),
        (b'"count" = ["{done} {asked:9999}.", "{done} {0}"]', "count must have the places"),
        (b'"count" = ["{done.x} {asked}.", "{done}"]', "count must have the places"),
        (b'"count" = ["{done {asked}.", "{done}"]', "count must have the places"),
        (b'"hold" = ["Tien."]', "sentences"),
        (b'"hold" = ["", "Tien"]', "sentences"),
        (b'"hold" = "Tien"', "sentences"),
    ],
)
def test_a_wrong_language_file_is_refused_with_its_name_and_place(line: bytes, wrong: str) -> None:
    with pytest.raises(Fault, match=r"^The language file xx\.toml cannot be used: .*there\.$") as e:
        parse({"en.toml": english(), "xx.toml": HEAD + line})
    assert wrong in str(e.value)


def test_an_unknown_language_is_the_fallback() -> None:
    assert spoken_in("xx") is languages()["en"]


def test_the_files_are_as_toml_readers_read_them() -> None:
    raw = tomllib.loads(english().decode())
    assert raw["sentences"]["hold"] == list(languages()["en"].sentences["hold"])
