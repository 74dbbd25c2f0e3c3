package drawwell.desktop.pictures

import drawwell.desktop.DesktopTypefaces
import drawwell.surface.Appearance
import drawwell.surface.Hand
import drawwell.surface.Palette
import drawwell.surface.Screen
import drawwell.ui.ScreenView
import drawwell.ui.caseload.CaseloadView
import org.jetbrains.skia.Image

/** Draws every screen of a walk through the app, in every look; of these names, or all where there are none. */
class Pictures(private val wanted: List<String> = emptyList(), private val drawn: (name: String, picture: Image) -> Unit) {
    private val typefaces = DesktopTypefaces.load()

    fun take() {
        if (wanted.isEmpty() || wanted.any { it.startsWith(CASELOAD) }) desks()
        if (wanted.any { it.startsWith(CASELOAD) } && wanted.all { it.startsWith(CASELOAD) }) return
        Walk.screens().forEach { (name, shown) ->
            take(name, "light", shown, Way(Appearance(Hand.RIGHT, Palette.LIGHT)))
            take(name, "night", shown, Way(Appearance(Hand.RIGHT, Palette.NIGHT)))
            take(name, "contrast", shown, Way(Appearance(Hand.RIGHT, Palette.LIGHT), higherContrast = true))
            take(name, "contrast-night", shown, Way(Appearance(Hand.RIGHT, Palette.NIGHT), higherContrast = true))
            take(name, "left-hand", shown, Way(Appearance(Hand.LEFT, Palette.LIGHT)))
            take(name, "large", shown, Way(Appearance(Hand.RIGHT, Palette.LIGHT), LARGE))
            take(name, "large-end", shown, Way(Appearance(Hand.RIGHT, Palette.LIGHT), LARGE, scrolled = true))
            take(name, "small", shown, Way(Appearance(Hand.RIGHT, Palette.LIGHT), window = Window.SmallPhone))
            take(name, "tablet", shown, Way(Appearance(Hand.RIGHT, Palette.LIGHT), window = Window.Tablet))
            looks(name, shown)
            if (shown.screen is Screen.Supply || shown.screen is Screen.Findings || shown.screen is Screen.Tonight || shown.screen is Screen.Sheet) {
                take(name, "whole", shown, Way(Appearance(Hand.RIGHT, Palette.LIGHT), whole = true))
                take(name, "whole-night", shown, Way(Appearance(Hand.RIGHT, Palette.NIGHT), whole = true))
                take(name, "whole-large", shown, Way(Appearance(Hand.RIGHT, Palette.LIGHT), LARGE, whole = true))
            }
            if (shown.screen.scrolls()) take(name, "light-end", shown, Way(Appearance(Hand.RIGHT, Palette.LIGHT), scrolled = true))
        }
    }

    private fun desks() = CaseloadWalk.screens().forEach { (name, shown) ->
        desk(name, "light", shown, Palette.LIGHT)
        desk(name, "night", shown, Palette.NIGHT)
        desk(name, "large", shown, Palette.LIGHT, LARGE)
    }

    /** A whole name has a dot in it: `now-ready.light`; `now` is how several begin. */
    private fun isWanted(screen: String, look: String) =
        wanted.isEmpty() || wanted.any { if ('.' in it) it == "$screen.$look" else screen.startsWith(it) }

    private fun desk(name: String, look: String, shown: ShownAtDesk, palette: Palette, fontScale: Float = 1f) {
        if (!isWanted(name, look)) return
        val image = Rendering.desk(fontScale) {
            CaseloadView(shown.caseload.dressed(Appearance(Hand.RIGHT, palette)), typefaces, reducedMotion = true, trouble = shown.trouble) {}
        }
        drawn("$name.$look", image)
    }

    private fun take(name: String, called: String, shown: Shown, way: Way) {
        if (!isWanted(name, called)) return
        drawn("$name.$called", image(shown, way))
    }

    /** One place in every look, side by side: what a page shows of it. */
    private fun looks(name: String, shown: Shown) {
        if (!isWanted(name, "looks")) return
        val light = Appearance(Hand.RIGHT, Palette.LIGHT)
        val looks = listOf(
            image(shown, Way(light)),
            image(shown, Way(Appearance(Hand.RIGHT, Palette.NIGHT))),
            image(shown, Way(light, higherContrast = true)),
            image(shown, Way(light, LARGE)),
            image(shown, Way(Appearance(Hand.LEFT, Palette.LIGHT))),
            image(shown, Way(light, window = Window.SmallPhone)),
            image(shown, Way(light, window = Window.Tablet)),
        )
        drawn("$name.looks", ContactSheet.of(looks))
    }

    private fun image(shown: Shown, way: Way) = Rendering.image(way.fontScale, way.scrolled, way.whole, way.window) {
        ScreenView(shown.screen.dressed(way.look), typefaces, reducedMotion = true, way.higherContrast, shown.trouble) {}
    }

    /** How a screen is drawn. */
    private class Way(
        val look: Appearance,
        val fontScale: Float = 1f,
        val scrolled: Boolean = false,
        val whole: Boolean = false,
        val higherContrast: Boolean = false,
        val window: Window = Window.Phone,
    )

    private fun Screen.scrolls() = when (this) {
        is Screen.Day, is Screen.Tonight, is Screen.Supply, is Screen.Findings, is Screen.Check, is Screen.Form, is Screen.List, is Screen.Sheet -> true
        else -> false
    }

    private companion object {
        const val LARGE = 2f
        const val CASELOAD = "caseload"
    }
}
