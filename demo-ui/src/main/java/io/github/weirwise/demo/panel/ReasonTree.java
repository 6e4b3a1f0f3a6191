package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Reason;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import javax.swing.JTree;
import javax.swing.tree.DefaultMutableTreeNode;
import javax.swing.tree.DefaultTreeCellRenderer;
import javax.swing.tree.DefaultTreeModel;
import javax.swing.tree.TreePath;

/** Reasons that unfold: the first line tells the gist, each line below supports the one over it. */
public final class ReasonTree extends JTree {
    private static final long serialVersionUID = 1L;
    private static final int INDENT_PX = 24;
    private static final int LEAST_TEXT_PX = 160;

    private int textWidth = 400;

    public ReasonTree() {
        super(new DefaultTreeModel(new DefaultMutableTreeNode("")));
        setName("reasons");
        setRootVisible(true);
        setShowsRootHandles(true);
        setOpaque(false);
        setToggleClickCount(1);
        setCellRenderer(new Wrapped());
    }

    public void show(Reason reason, Dress dress) {
        setModel(new DefaultTreeModel(node(reason, dress)));
        expandPath(new TreePath(getModel().getRoot()));
    }

    public void clear() {
        setModel(new DefaultTreeModel(new DefaultMutableTreeNode("")));
    }

    private static DefaultMutableTreeNode node(Reason reason, Dress dress) {
        DefaultMutableTreeNode node = new DefaultMutableTreeNode(dress.words().say(reason.line()));
        reason.because().forEach(child -> node.add(node(child, dress)));
        return node;
    }

    /** It wraps its lines, so it never needs more than the place's width. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        if (width > 0 && Math.abs(width - textWidth) > 4) {
            textWidth = width;
            // A model change is the plain way to make the tree measure its rows again.
            ((DefaultTreeModel) getModel())
                    .nodeStructureChanged((DefaultMutableTreeNode) getModel().getRoot());
            expandRow(0);
        }
    }

    /** Lines that wrap at the tree's width. */
    private final class Wrapped extends DefaultTreeCellRenderer {
        private static final long serialVersionUID = 1L;

        private int room = LEAST_TEXT_PX;

        Wrapped() {
            setLeafIcon(null);
            setOpenIcon(null);
            setClosedIcon(null);
        }

        @Override
        public Component getTreeCellRendererComponent(
                JTree tree, Object value, boolean selected, boolean expanded, boolean leaf, int row, boolean focused) {
            super.getTreeCellRendererComponent(tree, value, selected, expanded, leaf, row, focused);
            int depth = ((DefaultMutableTreeNode) value).getLevel() + 1;
            room = Math.max(LEAST_TEXT_PX, textWidth - INDENT_PX * depth);
            return this;
        }

        @Override
        public Dimension getPreferredSize() {
            return WrappedLine.size(this, room);
        }

        @Override
        protected void paintComponent(Graphics g) {
            WrappedLine.paint(this, g, room);
        }
    }
}
