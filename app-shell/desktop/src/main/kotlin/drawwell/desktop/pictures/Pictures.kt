package drawwell.desktop.pictures

import drawwell.desktop.DesktopTypefaces
import drawwell.surface.Hand
import drawwell.surface.Look
import drawwell.surface.Palette
import drawwell.surface.Screen
import drawwell.ui.ScreenView
import drawwell.ui.caseload.CaseloadView
import java.io.File

/** Draws every screen of a walk through the app, in every look. */
class Pictures(private val folder: File) {
    private val typefaces = DesktopTypefaces.load()

    /** Those whose name begins with `only`, which is all of them where it is empty. */
    fun take(only: String) {
        if (only.startsWith(CASELOAD) || CASELOAD.startsWith(only)) desks(only)
        if (only.startsWith(CASELOAD)) return
        Walk.screens().filterKeys { it.startsWith(only) }.forEach { (name, shown) ->
            take("$name.light", shown, Look(Hand.RIGHT, Palette.LIGHT))
            take("$name.night", shown, Look(Hand.RIGHT, Palette.NIGHT))
            take("$name.contrast", shown, Look(Hand.RIGHT, Palette.LIGHT), higherContrast = true)
            take("$name.contrast-night", shown, Look(Hand.RIGHT, Palette.NIGHT), higherContrast = true)
            take("$name.left-hand", shown, Look(Hand.LEFT, Palette.LIGHT))
            take("$name.large", shown, Look(Hand.RIGHT, Palette.LIGHT), LARGE)
            take("$name.large-end", shown, Look(Hand.RIGHT, Palette.LIGHT), LARGE, scrolled = true)
            if (shown.screen is Screen.Supply || shown.screen is Screen.Findings || shown.screen is Screen.Tonight || shown.screen is Screen.Sheet) {
                take("$name.whole", shown, Look(Hand.RIGHT, Palette.LIGHT), whole = true)
                take("$name.whole-night", shown, Look(Hand.RIGHT, Palette.NIGHT), whole = true)
                take("$name.whole-large", shown, Look(Hand.RIGHT, Palette.LIGHT), LARGE, whole = true)
            }
            if (shown.screen.scrolls()) take("$name.light-end", shown, Look(Hand.RIGHT, Palette.LIGHT), scrolled = true)
        }
    }

    private fun desks(only: String) = CaseloadWalk.screens().filterKeys { it.startsWith(only) }.forEach { (name, shown) ->
        desk("$name.light", shown, Palette.LIGHT)
        desk("$name.night", shown, Palette.NIGHT)
        desk("$name.large", shown, Palette.LIGHT, LARGE)
    }

    private fun desk(name: String, shown: ShownAtDesk, palette: Palette, fontScale: Float = 1f) {
        val image = Rendering.desk(fontScale) {
            CaseloadView(shown.caseload.dressed(Look(Hand.RIGHT, palette)), typefaces, reducedMotion = true, trouble = shown.trouble) {}
        }
        Rendering.write(File(folder, "$name.png"), image)
    }

    private fun take(
        name: String,
        shown: Shown,
        look: Look,
        fontScale: Float = 1f,
        scrolled: Boolean = false,
        whole: Boolean = false,
        higherContrast: Boolean = false,
    ) {
        val image = Rendering.image(fontScale, scrolled, whole) {
            ScreenView(shown.screen.dressed(look), typefaces, reducedMotion = true, higherContrast, shown.trouble) {}
        }
        Rendering.write(File(folder, "$name.png"), image)
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
