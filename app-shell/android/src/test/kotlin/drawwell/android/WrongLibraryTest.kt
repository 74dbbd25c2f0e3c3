package drawwell.android

import android.content.Intent
import androidx.compose.ui.test.assertIsDisplayed
import androidx.compose.ui.test.junit4.v2.createEmptyComposeRule
import androidx.compose.ui.test.onNodeWithTag
import drawwell.surface.uniffiEnsureInitialized
import org.junit.After
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertThrows
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config
import java.io.File

/**
 * A library that is not the one this app was built with: the app says so, lives, and leaves the record alone. UniFFI
 * looks when the library is first touched, so each test names a package that gives it a world of its own, in which
 * the library was not touched before.
 */
@RunWith(RobolectricTestRunner::class)
class WrongLibraryTest {
    @get:Rule
    val rule = createEmptyComposeRule()

    private val phone by lazy { Phone(rule) }

    @After
    fun asItWas() {
        System.clearProperty(OVERRIDE)
    }

    @Test
    @Config(instrumentedPackages = ["drawwell.world.of.another.build"])
    fun ofAnotherBuild() {
        System.setProperty(OVERRIDE, AnotherBuild.write(phone.app.cacheDir.resolve("another-build")).path)
        isSaidAndTheAppLives()
        assertTrue("not by its number", refusal().any { "checksum mismatch" in it.message.orEmpty() })
    }

    @Test
    @Config(instrumentedPackages = ["drawwell.world.of.another.library"])
    fun thatIsAnotherOneAltogether() {
        System.setProperty(OVERRIDE, "m")
        isSaidAndTheAppLives()
        assertTrue("not for what it lacks", refusal().any { "UnsatisfiedLinkError" in it.toString() })
    }

    private fun isSaidAndTheAppLives() {
        // Of an older version, so that any library that opens it would bring it up to date.
        val record = File(FIXTURE).copyTo(phone.app.filesDir.resolve("record.drawwell"))
        val before = record.readBytes()
        phone.open()
        repeat(2) {
            assertNull(phone.conversation.screen)
            rule.onNodeWithTag("trouble").assertIsDisplayed()
            phone.tap("dismiss-trouble")
            phone.again()
        }
        phone.app.sendBroadcast(Intent(Intent.ACTION_BOOT_COMPLETED))
        shadowOf(android.os.Looper.getMainLooper()).idle()
        rule.onNodeWithTag("trouble").assertIsDisplayed()
        assertArrayEquals(before, record.readBytes())
        assertEquals(listOf(record.name), phone.app.filesDir.list().orEmpty().filter { it.startsWith(record.name) })
    }

    private fun refusal() =
        generateSequence<Throwable>(assertThrows(LinkageError::class.java) { uniffiEnsureInitialized() }) { it.cause }.toList()

    private companion object {
        const val OVERRIDE = "uniffi.component.drawwell.libraryOverride"
        const val FIXTURE = "../../tests/fixtures/schema-1.drawwell"
    }
}
