package drawwell.desktop

import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.luminance
import drawwell.desktop.pictures.Rendering
import drawwell.desktop.pictures.Walk
import drawwell.desktop.pictures.dressed
import drawwell.surface.Appearance
import drawwell.surface.Hand
import drawwell.surface.Palette
import drawwell.ui.ScreenView
import org.jetbrains.skia.Bitmap
import org.jetbrains.skia.Image
import org.junit.Assert.assertTrue
import org.junit.Test

/** Every screen, as it is really drawn by night, leaves the room dark. */
class NightTest {
    private val typefaces = DesktopTypefaces.load()

    @Test
    fun noScreenLightsTheRoom() = lightsNoRoom(higherContrast = false)

    /** The same bounds: contrast by night comes from a blacker ground, not from brighter words. */
    @Test
    fun withMoreContrastNeither() = lightsNoRoom(higherContrast = true)

    private fun lightsNoRoom(higherContrast: Boolean) {
        val screens = Walk.screens()
        assertTrue("the walk saw only ${screens.keys}", screens.size >= 12)
        screens.forEach { (name, shown) ->
            val night = Appearance(Hand.RIGHT, Palette.NIGHT)
            val image = Rendering.image {
                ScreenView(shown.screen.dressed(night), typefaces, reducedMotion = true, higherContrast, shown.trouble) {}
            }
            val lights = lights(image)
            assertTrue("$name glares: ${lights.max()}", lights.max() <= BRIGHTEST)
            assertTrue("$name shines: ${lights.average()}", lights.average() <= WHOLE)
            assertTrue("$name is blank", lights.max() >= SEEN)
        }
    }

    private fun lights(image: Image): List<Float> {
        val bitmap = Bitmap.makeFromImage(image)
        return (0 until image.height step STEP).flatMap { y ->
            (0 until image.width step STEP).map { x -> Color(bitmap.getColor(x, y)).luminance() }
        }
    }

    private companion object {
        const val BRIGHTEST = 0.37f
        const val WHOLE = 0.03
        const val SEEN = 0.15f
        const val STEP = 2
    }
}
