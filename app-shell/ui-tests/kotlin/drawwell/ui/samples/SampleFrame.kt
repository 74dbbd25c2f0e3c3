package drawwell.ui.samples

import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.surface.Frame
import drawwell.surface.Hand
import drawwell.surface.Look
import drawwell.surface.Notice
import drawwell.surface.Palette
import drawwell.surface.Place
import drawwell.surface.Sign
import drawwell.surface.Weight

/** Screens made by hand, to try the drawing without a core. */
object SampleFrame {
    fun action(
        key: String,
        label: String,
        sign: Sign = Sign.NONE,
        weight: Weight = Weight.PLAIN,
        chosen: Boolean = false,
        detail: String = "",
        event: Event = Event.Wake,
    ) = Action(key, label, detail, label, event, weight, sign, chosen, true)

    fun frame(
        title: String,
        subtitle: String = "",
        palette: Palette = Palette.LIGHT,
        hand: Hand = Hand.RIGHT,
        chosen: String = "now",
        notices: List<Notice> = emptyList(),
        undo: String? = null,
        back: Boolean = false,
    ) = Frame(
        title = title,
        subtitle = subtitle,
        places = listOf("now" to Sign.NOW, "day" to Sign.DAY, "kit" to Sign.KIT, "family" to Sign.FAMILY).map { (key, sign) ->
            action("place-$key", key.replaceFirstChar { it.uppercase() }, sign, chosen = key == chosen, event = Event.Go(Place.Now))
        },
        back = if (back) action("back", "Back", Sign.BACK, Weight.QUIET) else null,
        undo = undo?.let { action("undo", it, Sign.UNDO, Weight.QUIET) },
        redo = null,
        notices = notices,
        look = Look(hand, palette),
        askAgainMilliseconds = null,
    )
}
