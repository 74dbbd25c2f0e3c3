package drawwell.android

import android.graphics.Insets
import android.view.WindowInsets
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.junit4.v2.createEmptyComposeRule
import androidx.compose.ui.semantics.SemanticsActions
import androidx.core.view.WindowInsetsControllerCompat
import drawwell.surface.Event
import drawwell.surface.Place
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

/** The window reaches from edge to edge; what is touched does not. */
@RunWith(RobolectricTestRunner::class)
class EdgesTest {
    @get:Rule
    val rule = createEmptyComposeRule()

    private val phone by lazy { Phone(rule) }

    @Test
    fun nothingLiesUnderTheBars() {
        phone.begin()
        var tall = 0
        phone.activity {
            tall = it.window.decorView.height
            val bars = WindowInsets.Builder()
                .setInsets(WindowInsets.Type.statusBars(), Insets.of(0, ABOVE, 0, 0))
                .setInsets(WindowInsets.Type.navigationBars(), Insets.of(0, 0, 0, BELOW))
                .build()
            it.window.decorView.dispatchApplyWindowInsets(bars)
        }
        listOf(Place.Now, Place.Day(0u), Place.Kit, Place.Visit, Place.Family).forEach { place ->
            phone.say(Event.Go(place))
            val touched = rule.onAllNodes(touchable).fetchSemanticsNodes().map { it.boundsInRoot }.filter { it.height > 0 }
            assertTrue("nothing to touch", touched.size > 4)
            assertTrue("$place reaches under the bars", touched.all { it.top >= ABOVE && it.bottom <= tall - BELOW })
            assertTrue("$place leaves the foot empty", touched.maxOf { it.bottom } > tall - 3 * BELOW)
        }
    }

    @Test
    fun theSignsOfTheSystemAreSeenOnThePaletteBeneath() {
        phone.begin()
        assertEquals(true, darkSigns())
        phone.say(Event.Enter("settings", "palette", "night"))
        assertEquals(false, darkSigns())
    }

    private fun darkSigns(): Boolean? {
        var dark: Boolean? = null
        phone.activity { dark = WindowInsetsControllerCompat(it.window, it.window.decorView).isAppearanceLightStatusBars }
        return dark
    }

    private companion object {
        const val ABOVE = 80
        const val BELOW = 96
        val touchable = SemanticsMatcher("can be touched") { it.config.contains(SemanticsActions.OnClick) }
    }
}
