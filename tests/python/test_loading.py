"""The generated module finds its library and agrees with it.

The module checks on import that every function of the library has the shape
it was generated for; a module that is older than its library does not load.
"""

import drawwell


def test_the_surface_is_one_object_with_three_questions():
    for question in ("open", "update", "show"):
        assert callable(getattr(drawwell.Drawwell, question))


def test_trouble_is_an_exception_of_its_own():
    assert issubclass(drawwell.Trouble, Exception)
