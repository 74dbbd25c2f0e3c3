package drawwell.desktop.caseload

import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.requiredSize
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.test.junit4.ComposeContentTestRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performClick
import androidx.compose.ui.unit.Density
import androidx.compose.ui.unit.dp
import drawwell.surface.CardScreen
import drawwell.surface.DeskEvent
import drawwell.surface.Event
import drawwell.surface.ListRow
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.ui.caseload.CaseloadConversation
import drawwell.ui.caseload.CaseloadShell

/** The consultant's window on the real core. */
class CaseloadStage(private val rule: ComposeContentTestRule, val host: TestCaseloadHost, private val fontScale: Float = 1f) {
    val conversation = CaseloadConversation(host)

    val beside: Screen get() = checkNotNull(conversation.caseload) { "nothing is shown: ${conversation.trouble}" }.beside
    val rows: List<ListRow>
        get() = (conversation.caseload!!.families as Screen.List).list.groups.flatMap { it.rows }
    val names: List<String> get() = rows.map { it.title }

    fun open() {
        rule.setContent {
            CompositionLocalProvider(LocalDensity provides Density(DENSITY, fontScale)) {
                Box(Modifier.requiredSize(WIDE.dp, TALL.dp).testTag("window"), Alignment.TopStart) {
                    CaseloadShell(conversation, host)
                }
            }
        }
        rule.waitForIdle()
    }

    fun say(event: Event) {
        conversation.send(event)
        rule.waitForIdle()
    }

    fun tap(key: String) {
        rule.onNodeWithTag(key).performClick()
        rule.waitForIdle()
    }

    fun importFile(path: String) {
        conversation.importFile(path)
        rule.waitForIdle()
    }

    /** The consultant's card, as her screen shows it. */
    fun card(): CardScreen {
        say(Event.OnDesk(DeskEvent.OpenDesk(Place.OwnCard)))
        return (beside as Screen.Card).card
    }

    companion object {
        const val WIDE = 1180
        const val TALL = 860

        /** Small enough for the whole window to lie within the test's own. */
        const val DENSITY = 0.75f
    }
}
