package drawwell.desktop.pictures

import drawwell.desktop.DesktopTypefaces
import drawwell.surface.Hand
import drawwell.surface.Look
import drawwell.surface.Palette
import drawwell.surface.Screen
import drawwell.ui.ScreenView
import java.io.File

/** Draws every screen of a walk through the app, in every look. */
class Pictures(private val folder: File) {
    private val typefaces = DesktopTypefaces.load()

    fun take() {
        Walk.screens().forEach { (name, screen) ->
            take("$name.light", screen, Look(Hand.RIGHT, Palette.LIGHT))
            take("$name.night", screen, Look(Hand.RIGHT, Palette.NIGHT))
            take("$name.left-hand", screen, Look(Hand.LEFT, Palette.LIGHT))
            take("$name.large", screen, Look(Hand.RIGHT, Palette.LIGHT), LARGE)
            take("$name.large-end", screen, Look(Hand.RIGHT, Palette.LIGHT), LARGE, scrolled = true)
            if (screen.scrolls()) take("$name.light-end", screen, Look(Hand.RIGHT, Palette.LIGHT), scrolled = true)
        }
    }

    private fun take(name: String, screen: Screen, look: Look, fontScale: Float = 1f, scrolled: Boolean = false) {
        val image = Rendering.image(fontScale, scrolled) {
            ScreenView(screen.dressed(look), typefaces, reducedMotion = true) {}
        }
        Rendering.write(File(folder, "$name.png"), image)
    }

    private fun Screen.scrolls() = this is Screen.Day || this is Screen.Form || this is Screen.List

    private companion object {
        const val LARGE = 2f
    }
}
