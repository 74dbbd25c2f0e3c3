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
            take(name, "light", shown, Appearance(Hand.RIGHT, Palette.LIGHT))
            take(name, "night", shown, Appearance(Hand.RIGHT, Palette.NIGHT))
            take(name, "contrast", shown, Appearance(Hand.RIGHT, Palette.LIGHT), higherContrast = true)
            take(name, "contrast-night", shown, Appearance(Hand.RIGHT, Palette.NIGHT), higherContrast = true)
            take(name, "left-hand", shown, Appearance(Hand.LEFT, Palette.LIGHT))
            take(name, "large", shown, Appearance(Hand.RIGHT, Palette.LIGHT), LARGE)
            take(name, "large-end", shown, Appearance(Hand.RIGHT, Palette.LIGHT), LARGE, scrolled = true)
            take(name, "small", shown, Appearance(Hand.RIGHT, Palette.LIGHT), window = Window.SmallPhone)
            take(name, "tablet", shown, Appearance(Hand.RIGHT, Palette.LIGHT), window = Window.Tablet)
            looks(name, shown)
            if (shown.screen is Screen.Supply || shown.screen is Screen.Findings || shown.screen is Screen.Tonight || shown.screen is Screen.Sheet) {
                take(name, "whole", shown, Appearance(Hand.RIGHT, Palette.LIGHT), whole = true)
                take(name, "whole-night", shown, Appearance(Hand.RIGHT, Palette.NIGHT), whole = true)
                take(name, "whole-large", shown, Appearance(Hand.RIGHT, Palette.LIGHT), LARGE, whole = true)
            }
            if (shown.screen.scrolls()) take(name, "light-end", shown, Appearance(Hand.RIGHT, Palette.LIGHT), scrolled = true)
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

    private fun take(
        name: String,
        called: String,
        shown: Shown,
        look: Appearance,
        fontScale: Float = 1f,
        scrolled: Boolean = false,
        whole: Boolean = false,
        higherContrast: Boolean = false,
        window: Window = Window.Phone,
    ) {
        if (!isWanted(name, called)) return
        drawn("$name.$called", image(shown, look, fontScale, scrolled, whole, higherContrast, window))
    }

    /** One place in every look, side by side: what a page shows of it. */
    private fun looks(name: String, shown: Shown) {
        if (!isWanted(name, "looks")) return
        val light = Appearance(Hand.RIGHT, Palette.LIGHT)
        val looks = listOf(
            image(shown, light),
            image(shown, Appearance(Hand.RIGHT, Palette.NIGHT)),
            image(shown, light, higherContrast = true),
            image(shown, light, LARGE),
            image(shown, Appearance(Hand.LEFT, Palette.LIGHT)),
            image(shown, light, window = Window.SmallPhone),
            image(shown, light, window = Window.Tablet),
        )
        drawn("$name.looks", ContactSheet.of(looks))
    }

    private fun image(
        shown: Shown,
        look: Appearance,
        fontScale: Float = 1f,
        scrolled: Boolean = false,
        whole: Boolean = false,
        higherContrast: Boolean = false,
        window: Window = Window.Phone,
    ) = Rendering.image(fontScale, scrolled, whole, window) {
        ScreenView(shown.screen.dressed(look), typefaces, reducedMotion = true, higherContrast, shown.trouble) {}
    }

    private fun Screen.scrolls() = when (this) {
        is Screen.Day, is Screen.Tonight, is Screen.Supply, is Screen.Findings, is Screen.Check, is Screen.Form, is Screen.List, is Screen.Sheet -> true
        else -> false
    }

    private companion object {
        const val LARGE = 2f
        const val CASELOAD = "caseload"
    }
}
