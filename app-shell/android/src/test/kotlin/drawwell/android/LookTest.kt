package drawwell.android

import android.app.UiModeManager
import android.graphics.drawable.ColorDrawable
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.test.junit4.v2.createEmptyComposeRule
import androidx.compose.ui.test.onRoot
import androidx.core.view.WindowInsetsControllerCompat
import drawwell.surface.Event
import drawwell.ui.look.Colours
import drawwell.ui.look.HigherContrast
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf

/** What the phone asks for, and what the person set, is seen from the first frame on. */
@RunWith(RobolectricTestRunner::class)
class LookTest {
    @get:Rule
    val rule = createEmptyComposeRule()

    private val phone by lazy { Phone(rule) }
    private val manager by lazy { phone.app.getSystemService(UiModeManager::class.java) }

    private fun page() = rule.onRoot().corner()

    private fun ground(): Color? {
        var ground: Color? = null
        phone.activity { ground = (it.window.decorView.background as? ColorDrawable)?.let { drawn -> Color(drawn.color) } }
        return ground
    }

    private fun setTo(palette: String) = phone.say(Event.Enter("settings", "palette", palette))

    @Test
    fun aLightPhoneStartsDarkWhereTheAppIsSetToNight() {
        phone.begin()
        setTo("night")
        phone.scenario.close()
        phone.processDies(BusyThread())
        phone.open()
        assertNull(phone.conversation.screen)
        assertEquals(Colours.Night.page.ground, page())
        assertEquals(Colours.Night.page.ground, ground())
        phone.activity { assertEquals(false, WindowInsetsControllerCompat(it.window, it.window.decorView).isAppearanceLightStatusBars) }
    }

    @Test
    fun theSystemIsToldForItsOwnStartingWindow() {
        phone.begin()
        setTo("night")
        assertEquals(UiModeManager.MODE_NIGHT_YES, shadowOf(manager).applicationNightMode)
        setTo("light")
        assertEquals(UiModeManager.MODE_NIGHT_NO, shadowOf(manager).applicationNightMode)
        setTo("as_device")
        assertEquals(UiModeManager.MODE_NIGHT_AUTO, shadowOf(manager).applicationNightMode)
    }

    @Test
    fun nothingOfThePersonIsInWhatIsKeptForTheFirstFrame() {
        phone.begin()
        setTo("night")
        assertEquals("NIGHT RIGHT", phone.app.filesDir.resolve("look").readText())
    }

    @Test
    fun moreContrastComesWhenThePhoneAsksForItAndGoesAgain() {
        phone.begin()
        assertEquals(Colours.Light.page.ground, page())
        shadowOf(manager).setContrast(0.5f)
        phone.settle()
        assertEquals(HigherContrast.Light.page.ground, page())
        assertEquals(HigherContrast.Light.page.ground, ground())
        shadowOf(manager).setContrast(0f)
        phone.settle()
        assertEquals(Colours.Light.page.ground, page())
    }

    @Test
    fun aPhoneThatAsksForItAlreadyIsHeardAtTheStart() {
        shadowOf(manager).setContrast(1f)
        phone.processDies()
        phone.begin()
        assertEquals(HigherContrast.Light.page.ground, page())
    }
}
