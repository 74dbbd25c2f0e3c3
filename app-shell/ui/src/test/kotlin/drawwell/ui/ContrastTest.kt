package drawwell.ui

import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.luminance
import drawwell.ui.look.Colours
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** Legible by day and by night, and by night no light in the room. */
class ContrastTest {
    private val both = mapOf("light" to Colours.Light, "night" to Colours.Night)

    @Test
    fun wordsAndShapesStandOutFromTheirGround() {
        both.forEach { (name, colours) ->
            colours.tones.forEach { (part, tone) ->
                stands("$name $part ink", tone.ink, tone.ground, WORDS)
                stands("$name $part soft", tone.soft, tone.ground, WORDS)
                stands("$name $part edge", tone.edge, tone.ground, SHAPES)
            }
        }
    }

    @Test
    fun whatIsDrawnOnOtherGroundStandsOutThereToo() {
        both.forEach { (name, colours) ->
            stands("$name water line in the shaft", colours.shaft.edge, colours.shaft.ground, SHAPES)
            stands("$name walls of the shaft on the page", colours.shaft.edge, colours.page.ground, SHAPES)
            stands("$name pain on the page", colours.careful.ink, colours.page.ground, SHAPES)
            stands("$name present moment on the strip", colours.running.edge, colours.shaft.ground, SHAPES)
            stands("$name feeds on the page", colours.page.ink, colours.page.ground, SHAPES)
            stands("$name texture on the strip", colours.texture, colours.shaft.ground, SHAPES)
            stands("$name texture on the page", colours.texture, colours.page.ground, SHAPES)
            stands("$name strip in a row", colours.careful.ink, colours.sheet.ground, SHAPES)
        }
        stands("water in the shaft", Colours.Light.water.ground, Colours.Light.shaft.ground, SHAPES)
        stands("water on the page", Colours.Light.water.ground, Colours.Light.page.ground, SHAPES)
    }

    @Test
    fun nightLightsNoRoom() {
        Colours.Night.tones.forEach { (part, tone) ->
            assertTrue("$part lights up", tone.ground.luminance() <= DARK)
            listOf(tone.ink, tone.soft, tone.edge).forEach { assertTrue("$part glares", it.luminance() <= EMBER) }
            listOf(tone.ground, tone.ink, tone.soft, tone.edge).forEach {
                assertTrue("$part is not warm: blue wakes", it.red > it.green && it.green >= it.blue)
            }
        }
    }

    @Test
    fun everyToneIsNamedOnce() {
        val declared = Colours::class.java.declaredFields.count { it.type.simpleName == "Tone" }
        assertEquals(declared, Colours.Light.tones.size)
    }

    private fun stands(what: String, colour: Color, ground: Color, least: Float) {
        val (light, dark) = listOf(colour.luminance(), ground.luminance()).sortedDescending()
        val ratio = (light + 0.05f) / (dark + 0.05f)
        assertTrue("$what: $ratio", ratio >= least)
    }

    private companion object {
        const val WORDS = 4.5f
        const val SHAPES = 3f
        const val DARK = 0.02f
        const val EMBER = 0.37f
    }
}
