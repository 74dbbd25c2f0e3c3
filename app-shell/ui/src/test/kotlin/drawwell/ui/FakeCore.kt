package drawwell.ui

import drawwell.surface.Appearance
import drawwell.surface.Clock
import drawwell.surface.DrawwellInterface
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.surface.Export
import drawwell.surface.Frame
import drawwell.surface.Hand
import drawwell.surface.Palette
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.surface.Update
import drawwell.surface.WelcomeScreen

/** A core that remembers what it was told, and answers with what the test wants. */
internal class FakeCore(private val name: String) : DrawwellInterface {
    val told = mutableListOf<Event>()
    val paths = mutableListOf<String>()
    var look = Appearance(Hand.RIGHT, Palette.LIGHT)
    var answers: (Event) -> List<Effect> = { emptyList() }

    override fun update(event: Event, now: Clock): Update {
        told += event
        return answer(answers(event))
    }

    override fun here(now: Clock): Screen = screen()

    override fun show(place: Place, now: Clock): Screen = screen()

    override fun importFile(path: String, now: Clock): Update = answer(emptyList()).also { paths += "in $path" }

    override fun export(what: Export, path: String, now: Clock): Update = answer(emptyList()).also { paths += "out $what $path" }

    override fun maintain(now: Clock): Update = answer(emptyList()).also { paths += "tended" }

    override fun key(): ByteArray? = null

    private fun answer(effects: List<Effect>) = Update(screen(), effects)

    private fun screen() = Screen.Welcome(
        Frame(name, "", emptyList(), null, null, null, emptyList(), look, false, emptyList(), null),
        WelcomeScreen("", emptyList(), emptyList()),
    )
}
