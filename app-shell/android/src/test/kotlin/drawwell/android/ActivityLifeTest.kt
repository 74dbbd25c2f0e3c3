package drawwell.android

import android.view.WindowManager
import androidx.compose.ui.test.assertIsDisplayed
import androidx.compose.ui.test.junit4.v2.createEmptyComposeRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performTouchInput
import drawwell.surface.Event
import drawwell.surface.Part
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.ui.pictures.drawing
import drawwell.ui.FullDisk
import org.junit.After
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertNotNull
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import java.io.RandomAccessFile
import java.util.Locale

/** A session in the activity itself, and what a phone does to it on the way. */
@RunWith(RobolectricTestRunner::class)
class ActivityLifeTest {
    @get:Rule
    val rule = createEmptyComposeRule()

    private val phone by lazy { Phone(rule) }
    private val locale = Locale.getDefault()

    @After
    fun asItWas() = Locale.setDefault(locale)

    private fun notches() = (phone.screen as Screen.Running).running.strip.notches.size

    private fun running() {
        phone.begin()
        phone.tap("start")
        phone.pass(90)
    }

    private fun staysOn(): Boolean {
        var on = false
        phone.activity { on = it.window.attributes.flags and WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON != 0 }
        return on
    }

    @Test
    fun aWholeSessionIsTappedIn() {
        running()
        phone.tap("mark-letdown")
        phone.pass(600)
        phone.tap("finish")
        phone.tap("amount-left-more")
        phone.say(phone.screen.drawing(Part.RIGHT, 0.5f))
        phone.tap("amounts-done")
        assertTrue(phone.screen is Screen.Ready)
        phone.tap("place-day")
        assertEquals(1, (phone.screen as Screen.Day).day.entries.size)
        phone.tap("place-now")
        assertTrue(phone.screen is Screen.Ready)
    }

    @Test
    fun theScreenStaysOnWhileItRuns() {
        phone.begin()
        assertFalse(staysOn())
        phone.tap("start")
        assertTrue(staysOn())
        phone.again()
        assertTrue(staysOn())
        phone.tap("finish")
        assertFalse(staysOn())
    }

    @Test
    fun anAnsweredTapIsFelt() {
        running()
        val motor = shadowOf(phone.app.getSystemService(android.os.Vibrator::class.java))
        assertNotNull(motor.effectId)
    }

    @Test
    fun aSessionRunsOnWhenTheProcessDied() {
        running()
        phone.tap("mark-letdown")
        phone.pass(30)
        phone.processDies()
        phone.again()
        assertEquals(1, notches())
        rule.onNodeWithTag("finish").assertIsDisplayed()
        assertTrue(staysOn())
        phone.tap("undo")
        assertEquals(0, notches())
    }

    @Test
    fun turnedInTheMiddleOfATapItIsNoTapAndTheNextOneIsOne() {
        running()
        rule.onNodeWithTag("mark-letdown").performTouchInput { down(center) }
        RuntimeEnvironment.setQualifiers("+land")
        phone.again()
        assertEquals(0, notches())
        RuntimeEnvironment.setQualifiers("+port")
        phone.again()
        phone.tap("mark-letdown")
        assertEquals(1, notches())
    }

    @Test
    fun turnedWhileATapIsBeingWrittenItIsOneTap() {
        running()
        val busy = BusyThread()
        phone.processDies(busy)
        phone.again()
        phone.until { busy.works(); phone.settle(); phone.conversation.screen != null && !busy.waits }
        phone.tap("mark-letdown")
        assertTrue("it was written at once", busy.waits)
        phone.again()
        phone.until { busy.works(); notches() > 0 }
        assertEquals(1, notches())
    }

    @Test
    fun turnedRightAfterATapItIsOneTap() {
        running()
        phone.tap("mark-letdown")
        phone.again()
        assertEquals(1, notches())
    }

    @Test
    fun inAnotherLanguageTheSameSessionRunsOn() {
        running()
        phone.tap("mark-letdown")
        val before = phone.app.home.records.own()
        RuntimeEnvironment.setQualifiers("+de")
        Locale.setDefault(Locale.GERMAN)
        assertTrue(phone.app.home.records.speaksAnother())
        phone.app.onConfigurationChanged(phone.app.resources.configuration)
        phone.again()
        assertFalse(phone.app.home.records.speaksAnother())
        assertNotEquals(before, phone.app.home.records.own())
        assertEquals(1, notches())
        phone.tap("mark-letdown")
        assertEquals(2, notches())
    }

    @Test
    fun onAFullDiskATapIsRefusedAndTheNextOneIsTakenWhenThereIsRoomAgain() {
        running()
        (phone.app.home.records.own().core as AutoCloseable).close()
        phone.processDies()
        phone.again()
        FullDisk.during(phone.app.filesDir.resolve("record.drawwell")) {
            phone.tap("mark-letdown")
            rule.onNodeWithTag("trouble").assertIsDisplayed()
            assertEquals(0, notches())
            phone.again()
            assertEquals(0, notches())
        }
        phone.tap("mark-letdown")
        assertNull(phone.conversation.trouble)
        assertEquals(1, notches())
        phone.processDies()
        phone.again()
        assertEquals(1, notches())
    }

    @Test
    fun theBackGestureGoesWhereTheCoreSaysAndThenOut() {
        running()
        phone.pass(600)
        phone.tap("finish")
        phone.say(Event.Go(Place.Day(0u)))
        phone.say((phone.screen as Screen.Day).day.entries.first().open.event)
        assertTrue(phone.screen is Screen.Form)
        phone.activity { it.onBackPressedDispatcher.onBackPressed() }
        assertTrue(phone.screen is Screen.Day)
        phone.activity { it.onBackPressedDispatcher.onBackPressed() }
        assertTrue(phone.screen is Screen.Amounts)
        phone.activity { it.onBackPressedDispatcher.onBackPressed() }
        phone.activity { assertTrue(it.isFinishing) }
    }

    @Test
    fun aRecordFromANewerVersionIsLeftAloneAndThatIsSaid() {
        phone.app.home.records.own().let { (it.core as AutoCloseable).close() }
        val file = phone.app.filesDir.resolve("record.drawwell")
        RandomAccessFile(file, "rw").use {
            it.seek(SCHEMA)
            it.writeInt(it.readIntAt(SCHEMA) + 1000)
        }
        val before = file.readBytes()
        phone.processDies()
        phone.open()
        assertNull(phone.conversation.screen)
        rule.onNodeWithTag("trouble").assertIsDisplayed()
        phone.tap("dismiss-trouble")
        rule.onNodeWithTag("trouble").assertIsDisplayed()
        assertArrayEquals(before, file.readBytes())
    }

    @Test
    fun theRecordIsOpenedOnAThreadOfItsOwn() {
        phone.app.home = Home(phone.app)
        phone.open()
        phone.until { phone.conversation.screen != null }
        assertTrue(phone.screen is Screen.Welcome)
    }

    @Test
    fun aPhoneThatAVersionBeforeNamedKeepsItsNameAndAnyOtherHasNoneHere() {
        assertEquals("", Device(phone.app.cacheDir).name())
        phone.app.cacheDir.resolve("device").writeText("named")
        assertEquals("it is of a record that is gone", "", Device(phone.app.cacheDir).name())
        phone.app.cacheDir.resolve("record.drawwell").writeText("")
        assertEquals("named", Device(phone.app.cacheDir).name())
    }

    private fun RandomAccessFile.readIntAt(at: Long): Int {
        seek(at)
        return readInt().also { seek(at) }
    }

    private companion object {
        /** Where a SQLite file says which schema it holds. */
        const val SCHEMA = 60L
    }
}
