package drawwell.android

import android.content.Intent
import androidx.compose.ui.test.assertIsDisplayed
import androidx.compose.ui.test.junit4.v2.createEmptyComposeRule
import androidx.compose.ui.test.onNodeWithTag
import org.junit.After
import org.junit.Assert.assertNull
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config

/**
 * A library that is not the one this app was built with. UniFFI compares its checksums when the library is first
 * touched, and whatever it finds ends as the same kind of error; here it finds another library altogether. The
 * package named below makes a world of its own for this class, in which the library was not touched before.
 */
@RunWith(RobolectricTestRunner::class)
@Config(instrumentedPackages = ["drawwell.a.world.of.its.own"])
class WrongLibraryTest {
    @get:Rule
    val rule = createEmptyComposeRule()

    private val phone by lazy { Phone(rule) }

    init {
        System.setProperty(OVERRIDE, "m")
    }

    @After
    fun asItWas() {
        System.clearProperty(OVERRIDE)
    }

    @Test
    fun isSaidOnTheScreenAndTheAppLives() {
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
    }

    private companion object {
        const val OVERRIDE = "uniffi.component.drawwell.libraryOverride"
    }
}
