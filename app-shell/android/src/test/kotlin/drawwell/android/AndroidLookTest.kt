package drawwell.android

import androidx.compose.ui.test.SemanticsNodeInteraction
import drawwell.ui.LookContract
import org.junit.Rule
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

@RunWith(RobolectricTestRunner::class)
class AndroidLookTest : LookContract() {
    @get:Rule(order = 0)
    val window = EmptyWindow()

    override fun typefaces() = AndroidTypefaces.load(window.assets)

    override fun SemanticsNodeInteraction.colour() = corner()
}
