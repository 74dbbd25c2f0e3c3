package drawwell.ui.caseload

import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.widthIn
import androidx.compose.runtime.Composable
import androidx.compose.runtime.key
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.isTraversalGroup
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.dp
import drawwell.surface.CaseloadScreen
import drawwell.surface.Event
import drawwell.ui.Placed
import drawwell.ui.Told
import drawwell.ui.frame
import drawwell.ui.look.LocalColours
import drawwell.ui.look.Theme
import drawwell.ui.look.Typefaces
import drawwell.ui.look.largeType
import drawwell.ui.parts.Ground
import drawwell.ui.parts.Pane
import drawwell.ui.sameness

/** Two panes: the families, and beside them what is open. Both in the look of the desk, whatever look a family's record asks for. */
@Composable
fun CaseloadView(
    caseload: CaseloadScreen,
    typefaces: Typefaces,
    reducedMotion: Boolean,
    higherContrast: Boolean = false,
    trouble: Told? = null,
    dismissTrouble: () -> Unit = {},
    send: (Event) -> Unit,
) {
    val families = caseload.families.frame()
    Theme(families.look, typefaces, reducedMotion, higherContrast, families.rightToLeft) {
        val colours = LocalColours.current
        val list = if (largeType()) LIST_IN_LARGE_TYPE else LIST
        Ground(colours.page, Modifier.fillMaxSize()) {
            Row(Modifier.fillMaxSize()) {
                Ground(colours.foot, Modifier.weight(list).fillMaxHeight().pane("families")) {
                    FamiliesPane(caseload.families, caseload.finding, send)
                }
                Box(Modifier.weight(1 - list).fillMaxHeight().pane("beside"), Alignment.TopCenter) {
                    Box(Modifier.widthIn(max = WIDEST)) {
                        val pane = Pane(caseload.beside.frame(), trouble, dismissTrouble, send)
                        key(caseload.beside.sameness()) { Placed(caseload.beside, pane) }
                    }
                }
            }
        }
    }
}

private fun Modifier.pane(name: String) = semantics {
    isTraversalGroup = true
    testTag = name
}

/** How much of the width the list takes. */
private const val LIST = 0.34f
private const val LIST_IN_LARGE_TYPE = 0.42f

/** The widest that what is open becomes: lines any longer are hard to read. */
private val WIDEST = 820.dp
