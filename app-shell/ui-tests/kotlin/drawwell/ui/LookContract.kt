package drawwell.ui

import androidx.compose.ui.graphics.Color
import androidx.compose.ui.test.SemanticsNodeInteraction
import androidx.compose.ui.test.onNodeWithTag
import drawwell.surface.Appearance
import drawwell.surface.Event
import drawwell.surface.Hand
import drawwell.surface.Palette
import drawwell.ui.look.Colours
import drawwell.ui.look.HigherContrast
import org.junit.Assert.assertEquals
import org.junit.Test

/** The app is in the palette that is asked for, from its first frame on. */
abstract class LookContract : ShellContract() {
    @Test
    fun theFirstFrameIsInTheLookThatWasLastSeen() {
        val stage = begun(hand = "left")
        assertEquals(Colours.Light.page.ground, page())
        stage.say(Event.Enter("settings", "palette", "night"))
        assertEquals(Appearance(Hand.LEFT, Palette.NIGHT), stage.host.lastLook)
        val next = host().apply { closed = true }
        stage.startAnew(next)
        assertEquals(null, stage.conversation.screen)
        assertEquals(Colours.Night.page.ground, page())
    }

    @Test
    fun theInventedFamilyLeavesTheFirstFrameAsItIs() {
        val stage = begun()
        stage.say(Event.Enter("settings", "palette", "night"))
        stage.say(Event.LookAround)
        stage.say(Event.Enter("settings", "palette", "light"))
        assertEquals(Palette.LIGHT, stage.screen.frame().look.palette)
        assertEquals(Palette.NIGHT, stage.host.lastLook?.palette)
    }

    @Test
    fun moreContrastComesWhenTheSystemAsksForItAndGoesAgain() {
        val stage = begun()
        stage.host.higherContrast = true
        stage.settle()
        assertEquals(HigherContrast.Light.page.ground, page())
        stage.say(Event.Enter("settings", "palette", "night"))
        assertEquals(HigherContrast.Night.page.ground, page())
        stage.host.higherContrast = false
        stage.settle()
        assertEquals(Colours.Night.page.ground, page())
    }

    /** The colour that is really drawn in a corner, where nothing stands; each host looks in its own way. */
    protected abstract fun SemanticsNodeInteraction.colour(): Color

    private fun page(): Color = rule.onNodeWithTag("phone").colour()
}
