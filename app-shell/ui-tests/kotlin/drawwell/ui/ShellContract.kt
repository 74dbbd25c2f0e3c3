package drawwell.ui

import androidx.compose.ui.test.junit4.v2.createComposeRule
import drawwell.surface.Event
import drawwell.ui.look.Typefaces
import org.junit.Rule
import org.junit.rules.TemporaryFolder

/** What every test of the shell stands on: a rule, a folder, and the host's letters. */
abstract class ShellContract {
    @get:Rule(order = 1)
    val rule = createComposeRule()

    @get:Rule(order = 2)
    val folder = TemporaryFolder()

    protected abstract fun typefaces(): Typefaces

    protected fun host() = TestHost(typefaces(), folder.root.resolve("record.drawwell"))

    /** The app past its welcome, before a session. */
    protected fun begun(fontScale: Float = 1f, hand: String = "right"): Stage {
        val stage = Stage(rule, host(), fontScale)
        stage.open()
        stage.say(Event.SetUp("welcomed", "true"))
        stage.say(Event.Enter("settings", "hand", hand))
        return stage
    }
}
