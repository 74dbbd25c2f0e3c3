package drawwell.android

import drawwell.ui.VisitContract
import org.junit.Rule
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

@RunWith(RobolectricTestRunner::class)
class AndroidVisitTest : VisitContract() {
    @get:Rule(order = 0)
    val window = EmptyWindow()

    override fun typefaces() = AndroidTypefaces.load(window.assets)
}
