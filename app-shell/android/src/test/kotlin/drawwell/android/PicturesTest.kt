package drawwell.android

import android.app.UiModeManager
import android.graphics.Bitmap
import android.graphics.BitmapFactory
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.luminance
import androidx.compose.ui.test.junit4.v2.createEmptyComposeRule
import drawwell.surface.Deed
import drawwell.surface.Event
import drawwell.surface.Part
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.ui.pictures.Older
import drawwell.ui.pictures.drawing
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config
import java.io.File

/** The activity as it is really drawn by Android: kept in `target/pictures`, to be looked at beside the desk's. */
@RunWith(RobolectricTestRunner::class)
@Config(qualifiers = "w412dp-h892dp-xhdpi")
class PicturesTest {
    @get:Rule
    val rule = createEmptyComposeRule()

    private val phone by lazy { Phone(rule) }

    @Test
    fun light() = walk("light") { light -> assertTrue("too dark: $light", light.average() > DAY) }

    @Test
    @Config(qualifiers = "+night")
    fun night() = walk("night") { light ->
        assertTrue("glares: ${light.max()}", light.max() <= BRIGHTEST)
        assertTrue("shines: ${light.average()}", light.average() <= WHOLE)
    }

    @Test
    fun contrast() {
        askForContrast()
        walk("contrast") { light -> assertTrue("too dark: $light", light.average() > DAY) }
    }

    @Test
    @Config(qualifiers = "+night")
    fun contrastByNight() {
        askForContrast()
        walk("contrast-night") { light ->
            assertTrue("glares: ${light.max()}", light.max() <= BRIGHTEST)
            assertTrue("shines: ${light.average()}", light.average() <= WHOLE)
        }
    }

    private fun askForContrast() = shadowOf(phone.app.getSystemService(UiModeManager::class.java)).setContrast(1f)

    @Test
    fun large() {
        RuntimeEnvironment.setFontScale(2f)
        walk("large") { light -> assertTrue("too dark: $light", light.average() > DAY) }
    }

    private fun walk(look: String, holds: (List<Float>) -> Unit) {
        phone.begin()
        phone.say(Event.LookAround)
        keep("ready-$look", holds)
        phone.tap("start")
        phone.say(Event.Mark(Deed.LETDOWN_PHASE))
        repeat(3) { phone.say(Event.Mark(Deed.STRONGER)) }
        phone.pass(95)
        phone.say(Event.Mark(Deed.LETDOWN))
        phone.say(Event.Mark(Deed.EXPRESSION_PHASE))
        phone.pass(400)
        phone.say(Event.Mark(Deed.SLOWER))
        keep("running-$look", holds)
        phone.say(Event.Finish)
        val session = (phone.screen as Screen.Amounts).amounts.session
        phone.say(phone.screen.drawing(Part.LEFT, 0.55f))
        phone.say(phone.screen.drawing(Part.RIGHT, 0.7f))
        keep("amounts-$look", holds)
        phone.say(Event.AmountsDone(session))
        phone.say(Event.Go(Place.Day(1u)))
        keep("day-$look", holds)
        phone.say(Event.Go(Place.Tonight))
        keep("tonight-$look", holds)
        phone.say(Event.Go(Place.Supply(28u)))
        keep("supply-$look", holds)
        phone.say(Event.Go(Place.Kit))
        phone.say((phone.screen as Screen.List).list.groups.first().rows.firstNotNullOf { it.open }.event)
        keep("pump-$look", holds)
        phone.say((phone.screen as Screen.Findings).findings.actions.first().event)
        listOf("262", "264").forEach { figure ->
            val reading = (phone.screen as Screen.Check).check.reading
            phone.say(Event.Enter(reading.id, reading.field, figure))
        }
        keep("check-$look", holds)
    }

    private fun keep(name: String, holds: (List<Float>) -> Unit) {
        phone.activity { activity ->
            val view = activity.window.decorView
            val picture = view.drawn()
            val file = File(System.getProperty("drawwell.pictures"), "$name.png").apply { parentFile?.mkdirs() }
            file.outputStream().use { picture.compress(Bitmap.CompressFormat.PNG, 100, it) }
            val dots = IntArray(picture.width * picture.height)
            picture.getPixels(dots, 0, picture.width, 0, 0, picture.width, picture.height)
            assertTrue("$name is blank", dots.toSet().size > 50)
            shown(name)?.let { assertFalse("$name is older than its screen: cargo xtask pictures --docs", Older.than(it, dots)) }
            holds(dots.map { Color(it).luminance() })
        }
    }

    /** The dots of the picture that a page shows, if one does. */
    private fun shown(name: String): IntArray? {
        val kept = BitmapFactory.decodeFile(File(System.getProperty("drawwell.shown"), "$name.png").path) ?: return null
        return IntArray(kept.width * kept.height).also { kept.getPixels(it, 0, kept.width, 0, 0, kept.width, kept.height) }
    }

    private companion object {
        const val DAY = 0.4

        /** As the desk's night is held to. */
        const val BRIGHTEST = 0.37f
        const val WHOLE = 0.03
    }
}
